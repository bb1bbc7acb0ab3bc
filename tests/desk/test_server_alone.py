"""Whole work while the server is away: a new weigh-in, a check of the mix, a start of the program without it."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path
from typing import cast

import pytest
from answers import Answers
from mix_hands import NOW, mix_herd
from mix_hands import type_in as read_in
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot
from test_server_away import begun, cluster, empty, outbox_of, page_of, server_url, type_in

from calibrator.desk import app as desk_app
from calibrator.desk.app import Opener
from calibrator.desk.context import Desk
from calibrator.desk.pages.mix_check import MixCheckPage
from calibrator.desk.settings import Settings
from calibrator.desk.theme import Theme
from calibrator.desk.weigh_in.step_tools import StepTools
from calibrator.desk.window import Window
from calibrator.model import Lot, MixCheck, Step, WeighIn, new_id
from calibrator.records import Records
from calibrator.records.outbox import Outbox
from tests.records.cluster import Cluster

__all__ = ["cluster", "empty", "server_url"]


@pytest.fixture
def desk(qapp: QApplication, server_url: str, answers: Answers, tmp_path: Path) -> Iterator[Desk]:
    if qapp.property("tokens") is None:
        Theme(qapp)
    with Records.open(server_url) as records:
        herd = mix_herd(records)
        records.keep(Lot(id=new_id(), farm_id=herd.farm.id, lot_number="25-0310C"))
        made = Desk(records, answers, clock=lambda: NOW, outbox=outbox_of(herd, tmp_path))
        made.initials = "AB"
        yield made


@pytest.fixture
def window(desk: Desk, qtbot: QtBot) -> Iterator[Window]:
    made = Window(desk)
    qtbot.addWidget(made)
    made.show()
    yield made
    made.replace_by_another()


def test_a_weigh_in_begun_alone_is_on_the_server_later_once(
    cluster: Cluster, window: Window, desk: Desk, answers: Answers
) -> None:
    lot = desk.records.every(Lot)[-1]
    cluster.stop("immediate")
    try:
        window.show_page("weigh_in", lot.id)
        page = page_of(window)
        page.next_step()
        tools = page._views[Step.SCOOP_AND_SCALE]
        assert isinstance(tools, StepTools)
        tools._target.setFocus()
        QTest.keyClicks(tools._target.line, "10 oz")
        QTest.keyClick(tools._target.line, Qt.Key.Key_Return)
        tools._zeroed.setFocus()
        QTest.keyClick(tools._zeroed, Qt.Key.Key_Space)
        page.next_step()
        type_in(page, ("11.6", "11.7", "11.8"))
        assert page.guide is not None
        assert page.guide.findings.level is not None
        assert page.guide.findings.level.fills == 3
        page.close_guide()  # put aside, and taken up again
        window.show_page("weigh_in", lot.id)
        assert page.guide.step is Step.LEVEL_FILLS
        assert desk.waiting >= 7
        assert answers.told == []
    finally:
        cluster.start()
    window.watch.look()
    (kept,) = desk.records.every(WeighIn, lot_id=lot.id)
    assert (kept.by, kept.target_typed, kept.scale_zeroed) == ("AB", "10 oz", True)
    assert kept.scoop_id
    assert [fill.typed for fill in desk.records.fills(kept.id)] == ["11.6", "11.7", "11.8"]
    assert (desk.waiting, window._away.isHidden()) == (0, True)


def test_a_check_of_the_mix_is_kept_alone_and_sent_once(
    cluster: Cluster, window: Window, desk: Desk, answers: Answers, qtbot: QtBot
) -> None:
    cluster.stop("immediate")
    try:
        window.show_page("mix_check")
        page = cast(MixCheckPage, window.page("mix_check"))
        read_in(qtbot, page.check.readings.first.line, "11.4 11.6 11.5")
        page.check.keep()
        assert page.check.pending() == ""
        assert [check.by for check in desk.records.every(MixCheck)] == ["AB"]  # in the page's own history at once
        assert (desk.waiting, answers.told) == (1, [])
        assert "1 entry of" in window._away.text()
    finally:
        cluster.start()
    window.watch.look()
    (kept,) = desk.records.every(MixCheck)
    assert [reading.typed for reading in kept.readings] == ["11.4 11.6 11.5"] * 3
    assert desk.waiting == 0


def test_that_the_server_is_away_stands_over_the_page(cluster: Cluster, window: Window) -> None:
    window.watch.look()
    assert window._away.isHidden()
    cluster.stop()
    try:
        window.watch.look()
        assert "last read of it" in window._away.text()
        assert not window._notice.isVisible()
    finally:
        cluster.start()
    window.watch.look()
    assert window._away.isHidden()


def test_started_while_the_server_is_away_an_open_weigh_in_goes_on(
    cluster: Cluster, server_url: str, qtbot: QtBot, qapp: QApplication, answers: Answers, tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
) -> None:  # fmt: skip
    monkeypatch.setattr(desk_app, "data_folder", lambda: tmp_path)
    with Records.open(server_url) as records:
        herd = mix_herd(records)
        weigh_in = begun(herd)
        outbox_of(herd, tmp_path)
    cluster.stop("immediate")
    opener = Opener(qapp, answers, server_url, Settings(tmp_path / "settings.json"))
    try:
        opener.open()
        door = opener.door
        assert door is not None
        qtbot.waitUntil(lambda: not door._work.at_work)
        assert "all other changes need it" in door.about_alone.text()
        door.alone_button.click()
        window = opener.window
        assert window is not None
        assert opener.desk is not None
        assert "last read of it" in window._away.text()
        window.show_page("weigh_in", weigh_in.lot_id)
        type_in(page_of(window), ("11.6", "11.7"))
        assert opener.desk.waiting == 2
    finally:
        cluster.start()
    window.watch.look()
    assert (opener.desk.waiting, window._away.isHidden()) == (0, True)
    window._close_anyway()
    opener.close()
    with Records.open(server_url) as records:
        assert [fill.typed for fill in records.fills(weigh_in.id)] == ["11.6", "11.7"]


def test_without_a_copy_the_door_offers_no_work_alone(
    cluster: Cluster, server_url: str, qtbot: QtBot, qapp: QApplication, answers: Answers, tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
) -> None:  # fmt: skip
    monkeypatch.setattr(desk_app, "data_folder", lambda: tmp_path)
    cluster.stop("immediate")
    opener = Opener(qapp, answers, server_url, Settings(tmp_path / "settings.json"))
    try:
        opener.open()
        door = opener.door
        assert door is not None
        qtbot.waitUntil(lambda: not door._work.at_work)
        assert door.alone_button.isHidden()
        assert door.file_button.isVisible()
        door.close()
        opener.close()
    finally:
        cluster.start()
    Outbox.beside(tmp_path, "another").close()  # the door let go of everything
