"""Looking for what others kept holds nobody up, however long a server that is away takes to answer."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from functools import partial
from pathlib import Path
from threading import Event, current_thread, main_thread
from typing import cast

import pytest
from answers import Answers
from PySide6.QtCore import QSize, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QScrollArea
from pytestqt.qtbot import QtBot

from calibrator.desk import watch as watch_module
from calibrator.desk.context import Desk
from calibrator.desk.forms.records_form import RecordsForm
from calibrator.desk.trust_words import hindered_words, refused_words
from calibrator.desk.watch import LOOK_AGAIN_MS, LOOK_AT_LEAST_MS
from calibrator.desk.window import Window
from calibrator.model import Lot, new_id
from calibrator.model.underway import Underway
from calibrator.records import (
    DiskFull,
    NotAllowed,
    Records,
    RecordsError,
    RecordsLocked,
    RecordsReadOnly,
    RecordsUnreachable,
)
from calibrator.records.about import about
from calibrator.records.entries import Added, Struck, Told, read_changes
from calibrator.records.outbox import Outbox, Refused
from tests.records import invented


class Silent:
    """A server that answers, or gives up, only when it is told to."""

    def __init__(self, monkeypatch: pytest.MonkeyPatch) -> None:
        self.answer, self.away, self.asked = Event(), True, 0
        version = Records.version

        def slowly(records: Records, *, anew: bool = False) -> int:
            if current_thread() is main_thread():
                return version(records)
            self.asked += 1
            self.answer.wait()
            if self.away:
                raise RecordsUnreachable("unreachable", place="x")
            return version(records)

        monkeypatch.setattr(Records, "version", slowly)
        monkeypatch.setattr(watch_module, "PATIENCE_S", 0)


@pytest.fixture
def window(desk: Desk, qtbot: QtBot) -> Window:
    made = Window(desk)
    qtbot.addWidget(made)
    made.show()
    return made


@pytest.fixture
def silent(window: Window, monkeypatch: pytest.MonkeyPatch) -> Silent:
    return Silent(monkeypatch)


def test_the_window_lives_while_a_server_keeps_silent(window: Window, silent: Silent, qtbot: QtBot) -> None:
    window.watch.look()
    window.watch.look()  # the one underway is enough
    qtbot.keyClick(window, Qt.Key.Key_2, Qt.KeyboardModifier.ControlModifier)
    assert window.current_page.key == "lots"
    assert not window._notice.isVisible()
    silent.answer.set()
    qtbot.waitUntil(window._notice.isVisible)
    assert "cannot be reached" in window._notice.text()
    assert silent.asked == 1


def test_a_server_that_is_away_is_asked_more_and_more_seldom(window: Window, silent: Silent, qtbot: QtBot) -> None:
    timer = window.watch.timer
    silent.answer.set()
    waits = []
    for _ in range(5):
        with qtbot.waitSignal(window.watch.looked):
            window.watch.look()
        waits.append(timer.interval())
    assert waits == [10_000, 20_000, 40_000, LOOK_AT_LEAST_MS, LOOK_AT_LEAST_MS]
    silent.away = False
    with qtbot.waitSignal(window.watch.looked):
        window.watch.look()
    assert timer.interval() == LOOK_AGAIN_MS


def test_what_came_meanwhile_is_shown_once_it_answers(window: Window, silent: Silent, qtbot: QtBot) -> None:
    farm = window.desk.farm
    assert farm is not None
    silent.away = False
    window.watch.look()
    window.desk.records.keep(replace(farm, name="Windy Hollow North"))
    silent.answer.set()
    qtbot.waitUntil(lambda: window.rail.farm_name == "Windy Hollow North")


def test_a_mistake_of_our_own_in_a_look_is_not_swallowed(
    window: Window, monkeypatch: pytest.MonkeyPatch, qtbot: QtBot
) -> None:
    monkeypatch.setattr(Records, "version", lambda *given, **named: 1 // 0)
    with qtbot.captureExceptions() as raised:
        window.watch.look()
    monkeypatch.undo()
    assert [kind for kind, *_ in raised] == [ZeroDivisionError]


def test_what_was_refused_is_called_what_it_is(desk: Desk) -> None:
    lot = desk.records.every(Lot)[0]
    begun = replace(invented.weigh_in(lot), id="w", target_typed="10 oz")
    fill, check = invented.fill(begun), invented.mix_check(lot)
    entries = (
        Told(invented.NOON, "AB", check),
        Added(invented.NOON, fill),
        Struck(invented.NOON, "AB", fill.id, "spilt"),
        Told(invented.NOON, "AB", begun),
    )
    readings = ", ".join(dict.fromkeys(reading.typed for reading in check.readings))
    lot_of_it = f"lot {lot.lot_number}, "
    kinds = (
        f"check of the mix, {readings}, {lot_of_it}", f"fill, {fill.typed}, {lot_of_it}",
        f"fill struck out, {fill.typed}, spilt, {lot_of_it}AB, ", f"weigh-in, {begun.target_typed}, {lot_of_it}",
    )  # fmt: skip
    whats = about(desk.records, entries)  # neither the fill nor its weigh-in is in the records
    for entry, kind, what in zip(entries, kinds, whats, strict=True):
        told = refused_words(Refused(1, entry, NotAllowed("refers", kind="fill")), what)
        assert told.startswith(kind)
        assert "Refresh the page" in told


@pytest.fixture
def on_server(desk: Desk, qtbot: QtBot, tmp_path: Path) -> Window:
    """A window on records with an outbox, in which two fills wait: one of a weigh-in that nobody knows."""
    desk.outbox = outbox = Outbox(tmp_path / "outbox.sqlite")
    lot = desk.records.every(Lot)[0]
    begun = desk.records.keep(replace(invented.weigh_in(lot), id=new_id(), scoop_id=None, scale_id=None))
    for weigh_in in (replace(begun, id="gone"), begun):
        outbox.put(Added(invented.NOON, replace(invented.fill(weigh_in), id=new_id(), typed="11.7 oz")))
    made = Window(desk)
    qtbot.addWidget(made)
    made.show()
    return made


def test_what_was_refused_is_told_above_each_page_until_it_is_dismissed(
    on_server: Window, qtbot: QtBot, answers: Answers
) -> None:
    desk = on_server.desk
    on_server.watch.look()
    assert (desk.waiting, answers.told) == (0, [])
    assert "did not take 1 entry" in on_server._refused.text()
    form = form_on(desk, qtbot)
    assert listed(form) == ["fill, 11.7 oz, "]
    assert not form._refused_card.isHidden()
    assert form.all_seen_button.isHidden()
    form.seen_button.click()
    form.reload()
    assert (form._refused_card.isHidden(), on_server._refused.isHidden()) == (True, True)


def form_on(desk: Desk, qtbot: QtBot) -> RecordsForm:
    form = RecordsForm(desk)
    qtbot.addWidget(form)
    desk.changed.connect(form.reload)
    form.reload()
    return form


def listed(form: RecordsForm) -> list[str]:
    """How what was refused begins, up to by whom."""
    return [form.refused.item(row).text().partition("AB, ")[0] for row in range(form.refused.count())]


@pytest.fixture
def refused(desk: Desk, tmp_path: Path) -> Outbox:
    """Three fills of the farm's lot that a server refused, because their weigh-in was frozen."""
    desk.outbox = outbox = Outbox(tmp_path / "outbox.sqlite")
    begun = replace(invented.weigh_in(desk.records.every(Lot)[0]), id=new_id(), scoop_id=None, scale_id=None)
    desk.records.keep(begun)
    for typed in ("11.5 oz", "11.6 oz", "11.7 oz"):
        outbox.put(Added(invented.NOON, replace(invented.fill(begun), id=new_id(), typed=typed)))
    with pytest.MonkeyPatch.context() as patched:
        patched.setattr("calibrator.records.outbox.bring", failing_with(NotAllowed("frozen")))
        outbox.deliver(desk.records)
    return outbox


def failing_with(error: Exception) -> Callable[..., None]:
    def failing(*_given: object) -> None:
        raise error

    return failing


def test_refused_entries_name_their_lot_and_are_taken_off_one_at_a_time(
    desk: Desk, refused: Outbox, qtbot: QtBot
) -> None:
    form = form_on(desk, qtbot)
    lot = f"lot {desk.records.every(Lot)[0].lot_number}, "
    assert listed(form) == [f"fill, {typed} oz, {lot}" for typed in ("11.5", "11.6", "11.7")]
    form.refused.setCurrentRow(1)
    form.seen_button.click()
    assert listed(form) == [f"fill, {typed} oz, {lot}" for typed in ("11.5", "11.7")]
    assert form.refused.currentRow() == 1  # the next one comes up
    form.all_seen_button.click()
    assert (refused.refused, form._refused_card.isHidden()) == (0, True)


def test_refused_entries_are_saved_and_can_be_brought_in(
    desk: Desk, refused: Outbox, qtbot: QtBot, answers: Answers, tmp_path: Path
) -> None:
    form = form_on(desk, qtbot)
    answers.path = tmp_path / "not taken.json"
    form.save_refused_button.click()
    before = desk.records.version()
    form.import_button.click()
    assert desk.records.version() == before + 3
    assert refused.refused == 3  # the list is the person's to clear


def test_an_entry_that_holds_up_all_others_is_set_aside_by_a_press(
    on_server: Window, monkeypatch: pytest.MonkeyPatch, qtbot: QtBot, answers: Answers, tmp_path: Path
) -> None:
    desk = on_server.desk
    form = form_on(desk, qtbot)
    with monkeypatch.context() as faulty:
        error = RecordsError("refused", place="the barn", detail="no such table")
        faulty.setattr("calibrator.records.outbox.bring", failing_with(error))
        on_server.watch.look()
    assert "no such table" in form.stuck.text()
    assert "fill, 11.7 oz, " in form.stuck.text()
    answers.path = tmp_path / "waiting.json"
    form.save_waiting_button.click()
    assert len(read_changes(answers.path)) == 2
    form.aside_button.click()
    assert (desk.waiting, form.aside_button.isHidden(), form.stuck.isHidden()) == (0, True, True)
    assert "no such table" in form.refused.item(0).text()
    assert form.refused.count() == 1
    assert on_server._away.isHidden()


def test_what_may_pass_offers_no_setting_aside(
    on_server: Window, monkeypatch: pytest.MonkeyPatch, qtbot: QtBot
) -> None:
    form = form_on(on_server.desk, qtbot)
    monkeypatch.setattr("calibrator.records.outbox.bring", failing_with(DiskFull("disk_full", place="x")))
    on_server.watch.look()
    form.reload()
    assert (form.aside_button.isHidden(), form.save_waiting_button.isHidden()) == (True, False)


@pytest.mark.parametrize(
    ("error", "told"),
    [
        (DiskFull("disk_full", place="x"), "Its disk is full"),
        (RecordsReadOnly("read_only", place="x"), "lets this user write nothing"),
        (RecordsLocked("busy", place="x"), "busy with other work"),
        (RecordsError("refused", place="x", detail="no table"), "no table"),
    ],
    ids=lambda value: getattr(value, "code", ""),
)
def test_why_a_server_that_is_there_takes_nothing_is_told_while_it_waits(
    on_server: Window, monkeypatch: pytest.MonkeyPatch, error: RecordsError, told: str
) -> None:
    def failing(*_given: object) -> None:
        raise error

    monkeypatch.setattr("calibrator.records.outbox.bring", failing)
    on_server.watch.look()
    assert "2 entries since" in on_server._away.text()
    assert told in on_server._away.text()
    assert "cannot be reached" not in on_server._away.text()
    assert not on_server._notice.isVisible()
    assert on_server.desk.waiting == 2
    monkeypatch.undo()
    on_server.watch.look()
    assert on_server._away.isHidden()


@pytest.mark.parametrize("key", ["today", "lots", "weigh_in", "tables", "mix_check", "season", "setup", "help"])
def test_what_stands_above_a_page_takes_its_height_and_never_scrolls_it_sideways(
    on_server: Window, monkeypatch: pytest.MonkeyPatch, qtbot: QtBot, key: str
) -> None:
    """On the smallest window; a page scrolls as a whole only where its own least height is not there."""
    on_server.resize(1024, 700)
    on_server.show_page(key)
    qtbot.waitUntil(lambda: on_server.current_page.key == key)
    whole = on_server._whole
    area = cast(QScrollArea, whole.parentWidget().parentWidget())
    with monkeypatch.context() as failing:
        error = RecordsError("refused", place="the barn", detail="a long reason " * 9)
        failing.setattr("calibrator.records.outbox.bring", failing_with(error))
        on_server.watch.look()
    qtbot.waitUntil(on_server._away.isVisible)
    QTest.qWait(0)
    assert on_server.size() == QSize(1024, 700)
    page = on_server.current_page
    assert area.horizontalScrollBar().maximum() == 0
    assert page.height() >= min(page.minimumSizeHint().height(), 670)
    if page.minimumSizeHint().height() <= area.height():
        assert area.verticalScrollBar().maximum() == 0


def test_a_full_disk_of_this_computer_is_told_as_such(on_server: Window) -> None:
    outbox = on_server.desk.outbox
    assert outbox is not None
    assert "Free some space" in hindered_words(DiskFull("disk_full", place=str(outbox.file)), outbox)


def test_a_window_may_close_while_something_is_sent(
    on_server: Window, monkeypatch: pytest.MonkeyPatch, qtbot: QtBot
) -> None:
    """What the server refuses meanwhile is told at the next start."""
    go_on, sent, done = Event(), Event(), Event()
    deliver = Outbox.deliver

    def slowly(outbox: Outbox, records: Records, underway: Underway) -> None:
        sent.set()
        go_on.wait()
        try:
            deliver(outbox, records)
        finally:
            done.set()

    monkeypatch.setattr(Outbox, "deliver", slowly)
    monkeypatch.setattr(watch_module, "PATIENCE_S", 0)
    monkeypatch.setattr(Records, "on_server", True)
    on_server.watch.look()
    sent.wait()
    on_server.close()
    assert not on_server.isVisible()
    go_on.set()
    done.wait()
    outbox = on_server.desk.outbox
    assert outbox is not None
    assert (outbox.waiting, outbox.refused) == (0, 1)


def test_what_waits_is_sent_beside_the_window_before_what_rests_on_it(
    on_server: Window, monkeypatch: pytest.MonkeyPatch, answers: Answers
) -> None:
    desk, came, beside = on_server.desk, [], []

    def failing(*_given: object) -> None:
        beside.append(current_thread() is not main_thread())
        raise DiskFull("disk_full", place="x")

    with monkeypatch.context() as full:
        full.setattr("calibrator.records.outbox.bring", failing)
        desk.send(partial(came.append, "sent"))
    assert (came, beside, len(answers.told)) == ([], [True], 1)
    desk.send(partial(came.append, "sent"))
    desk.send(partial(came.append, "nothing to send"))
    assert came == ["sent", "nothing to send"]
