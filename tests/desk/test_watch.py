"""Looking for what others kept holds nobody up, however long a server that is away takes to answer."""

from __future__ import annotations

from dataclasses import replace
from threading import Event, current_thread, main_thread

import pytest
from answers import Answers
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from calibrator.desk import watch as watch_module
from calibrator.desk.context import Desk
from calibrator.desk.watch import LOOK_AGAIN_MS, LOOK_AT_LEAST_MS
from calibrator.desk.window import Window
from calibrator.model import Lot
from calibrator.records import NotAllowed, Records, RecordsUnreachable
from calibrator.records.entries import Added, Struck, Told
from calibrator.records.outbox import Refused
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


def test_what_was_refused_is_called_what_it_is(desk: Desk, answers: Answers) -> None:
    lot = desk.records.every(Lot)[0]
    begun = replace(invented.weigh_in(lot), id="w")
    fill, check = invented.fill(begun), invented.mix_check(lot)
    entries = (
        Told(invented.NOON, "AB", check),
        Added(invented.NOON, fill),
        Struck(invented.NOON, "AB", fill.id, "spilt"),
        Told(invented.NOON, "AB", begun),
    )
    desk.tell_refused([Refused(entry, NotAllowed("refers", kind="fill")) for entry in entries])
    kinds = ("check of the mix", "fill", "fill struck out", "weigh-in")
    for told, kind in zip(answers.told, kinds, strict=True):
        assert f"could not be sent: {kind}, " in told
