"""The server goes away in the middle of a weigh-in: work goes on, and all of it is there later, once."""

from __future__ import annotations

import os
import signal
import subprocess
import sys
from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path
from typing import cast
from uuid import uuid4

import pytest
from answers import Answers, at_noon
from herd import OZ_G, Herd
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot
from sqlalchemy import create_engine, make_url

from calibrator.desk.context import Desk
from calibrator.desk.guide import Guide
from calibrator.desk.pages.spot_card import SpotCard
from calibrator.desk.pages.today import TodayPage
from calibrator.desk.pages.weigh_in import WeighInPage
from calibrator.desk.theme import Theme
from calibrator.desk.trust_words import refused_words
from calibrator.desk.watch import LOOK_AGAIN_MS
from calibrator.desk.weigh_in.step_fills import StepFills
from calibrator.desk.widgets.quantity_field import QuantityField
from calibrator.desk.window import Window
from calibrator.model import Fill, FillWay, Lot, SpotFill, Step, WeighIn, new_id
from calibrator.records import EditedMeanwhile, NotAllowed, Records, RecordsLocked, RecordsUnreachable, engine
from calibrator.records.outbox import Outbox
from tests.records.cluster import Cluster, NoServer

FIRST, ALONE = ("11.6", "11.7", "11.8"), ("11.6", "11.7", "11.6", "11.8", "11.7")


@pytest.fixture(scope="module")
def cluster() -> Iterator[Cluster]:
    """A server of this module's own, to be stopped and started."""
    try:
        made = Cluster.make()
    except (NoServer, ImportError) as error:
        pytest.skip(str(error))
    yield made
    made.remove()


@pytest.fixture(scope="module")
def empty(cluster: Cluster) -> str:
    """A database of empty records, to be copied."""
    _create(cluster, "empty")
    Records.open(_url_of(cluster, "empty")).close()
    return "empty"


@pytest.fixture
def server_url(cluster: Cluster, empty: str) -> str:
    name = f"away_{uuid4().hex}"
    _create(cluster, f"{name} TEMPLATE {empty}")
    return _url_of(cluster, name)


def _url_of(cluster: Cluster, database: str) -> str:
    return make_url(cluster.url).set(database=database).render_as_string(hide_password=False)


def _create(cluster: Cluster, what: str) -> None:
    admin = create_engine(make_url(cluster.url).set(drivername="postgresql+psycopg"), isolation_level="AUTOCOMMIT")
    with admin.connect() as connection:
        connection.exec_driver_sql(f"CREATE DATABASE {what}")
    admin.dispose()


@pytest.fixture
def herd(qapp: QApplication, server_url: str) -> Iterator[Herd]:
    if qapp.property("tokens") is None:
        Theme(qapp)
    with Records.open(server_url) as records:
        yield Herd(records)


def begun(herd: Herd, number: str = "25-1204A") -> WeighIn:
    lot = herd.records.keep(Lot(id=new_id(), farm_id=herd.farm.id, lot_number=number))
    return herd.records.keep(
        WeighIn(
            id=new_id(), farm_id=herd.farm.id, lot_id=lot.id, started_at=at_noon(), by="AB", scoop_id=herd.red.id,
            scale_id=herd.scale.id, target_mass_g=10 * OZ_G, target_typed="10 oz", scale_zeroed=True,
            step=Step.LEVEL_FILLS,
        )
    )  # fmt: skip


def outbox_of(herd: Herd, folder: Path) -> Outbox:
    """The outbox, with the copy of the records as it is a moment after the start."""
    outbox = Outbox.beside(folder, herd.records.url)
    herd.records.while_away(outbox)
    herd.records.follow()
    return outbox


def page_of(window: Window) -> WeighInPage:
    page = window.page("weigh_in")
    assert isinstance(page, WeighInPage)
    return page


def type_in(page: WeighInPage, weights: tuple[str, ...]) -> None:
    for text in weights:
        field = page._views[page.guide.step].first_field() if page.guide else None
        assert isinstance(field, QuantityField)
        QTest.keyClicks(field.line, text)
        QTest.keyClick(field.line, Qt.Key.Key_Return)


def fill(weigh_in: WeighIn, typed: str) -> Fill:
    return Fill(
        id=new_id(), weigh_in_id=weigh_in.id, way=FillWay.LEVEL, bag=1, mass_g=330.0, typed=typed, by="AB", at=at_noon()
    )  # fmt: skip


def test_weighing_goes_on_alone_and_is_sent_once(
    cluster: Cluster, herd: Herd, qtbot: QtBot, answers: Answers, tmp_path: Path
) -> None:
    weigh_in = begun(herd)
    desk = Desk(herd.records, answers, clock=at_noon, outbox=outbox_of(herd, tmp_path))
    window = Window(desk)
    qtbot.addWidget(window)
    window.show()
    window.show_page("weigh_in", weigh_in.lot_id)
    page = page_of(window)
    type_in(page, FIRST)
    assert window._away.isHidden()

    cluster.stop("immediate")
    try:
        type_in(page, ALONE)
        guide = page.guide
        assert guide is not None
        guide.strike(guide.known.fills[0].id, "spilled")
        guide.strike(guide.known.fills[5].id, "bumped")
        guide.restore(guide.known.fills[5].id)
        assert guide.findings.line is not None
        guide.set(drawn_line_mm=guide.findings.line.down_wall_mm)
        window.watch.look()
        assert window.watch.timer.interval() > LOOK_AGAIN_MS
        assert guide.findings.level is not None
        assert (guide.findings.level.fills, desk.waiting) == (7, len(ALONE) + 4)
        assert "9 entries since" in window._away.text()
        assert window._away.isVisible()
        shown = page._views[Step.LEVEL_FILLS]
        assert isinstance(shown, StepFills)
        assert shown._table.rowCount() == len(FIRST) + len(ALONE)
        with pytest.raises(RecordsUnreachable):
            guide.sign_off("AB")
        window.show_page("season")
        window.show_page("weigh_in")
        assert answers.told == []
    finally:
        cluster.start()
    window.watch.look()
    assert window._away.isHidden()
    fills = herd.records.fills(weigh_in.id)
    assert [one.typed for one in fills] == [*FIRST, *ALONE]
    assert [one.struck_reason for one in fills] == ["spilled", *[None] * 7]
    assert tuple(fills) == guide.known.fills
    assert guide.weigh_in == herd.records.find(WeighIn, weigh_in.id)
    assert window.watch.timer.interval() == LOOK_AGAIN_MS
    assert guide.sign_off("AB").fills == 7
    window.replace_by_another()


def newest_of(card: SpotCard) -> SpotFill:
    assert card._newest is not None
    return card._newest


def test_a_spot_fill_is_kept_alone_judged_and_sent_once(
    cluster: Cluster, herd: Herd, qtbot: QtBot, answers: Answers, tmp_path: Path
) -> None:
    """A bag is opened while the server is away: the weight is kept, and the verdict on the mark counts it."""
    signed = herd.sign("25-1103C", 10 * OZ_G / 665.9)
    desk = Desk(herd.records, answers, clock=at_noon, outbox=outbox_of(herd, tmp_path))
    desk.initials = "AB"
    window = Window(desk)
    qtbot.addWidget(window)
    window.show()
    window.show_page("today")
    card = cast(TodayPage, window.page("today")).spot_card
    cluster.stop("immediate")
    try:
        for text in ("10.0 oz", "10.1 oz"):
            card.weight.take(text)
            card.keep()
            assert card.weight.text() == ""
        assert "10.1 oz" in card._last.text()
        assert card.numbers.text()
        assert "2 entries since" in window._away.text()
        card.weight.take("10 lb")
        card.keep()
        assert "No powder is as heavy" in card.weight.message
        card.weight.set_value(None)
        card._strike_because(newest_of(card), "bumped it")
        card.restore_button.click()
        assert "10.1 oz" in card._last.text()
        card._strike_because(newest_of(card), "spilled some")
        assert "10.0 oz" in card._last.text()
        assert (answers.told, desk.waiting) == ([], 5)
    finally:
        cluster.start()
    window.watch.look()
    spots = herd.records.spot_fills(signed.lot_id)
    assert [(spot.typed, spot.struck_reason, spot.by) for spot in spots] == [
        ("10.0 oz", None, "AB"), ("10.1 oz", "spilled some", "AB"),
    ]  # fmt: skip
    assert (desk.waiting, window._away.isHidden()) == (0, True)
    assert "10.0 oz" in card._last.text()
    window.replace_by_another()


def test_what_waits_is_sent_before_a_sign_off(cluster: Cluster, herd: Herd, tmp_path: Path) -> None:
    outbox = outbox_of(herd, tmp_path)
    guide = Guide(herd.records, begun(herd), at_noon, outbox)
    guide.add_fill(FillWay.LEVEL, 1, 330.0, "330 g")
    cluster.stop()
    try:
        guide.add_fill(FillWay.LEVEL, 1, 331.0, "331 g")
        guide.add_fill(FillWay.LEVEL, 2, 332.0, "332 g")
        guide.set(drawn_line_mm=30.0)
    finally:
        cluster.start()
    with pytest.raises(RecordsUnreachable):
        guide.sign_off("AB")
    outbox.deliver(herd.records)
    assert guide.sign_off("AB").fills == 3


def test_a_computer_that_holds_the_records_locked_holds_no_weighing_up(
    herd: Herd, tmp_path: Path, server_url: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Its power was cut in the middle of writing: the server takes it for alive a while longer."""
    weigh_in = begun(herd)
    monkeypatch.setattr(engine, "_WAIT_S", 1)
    with Records.open(server_url) as records, herd.records.writing("entry"):
        outbox = Outbox.beside(tmp_path, records.url)
        records.while_away(outbox)
        records.follow()
        with pytest.raises(RecordsLocked):
            records.keep(replace(herd.scale, name="other"))
        guide = Guide(records, weigh_in, at_noon, outbox)
        guide.add_fill(FillWay.LEVEL, 1, 330.0, "330 g")
        assert outbox.waiting == 1
        assert [one.typed for one in guide.known.fills] == ["330 g"]
        with pytest.raises(RecordsLocked):
            outbox.deliver(records)
    assert outbox.stuck is None
    outbox.deliver(herd.records)
    assert [one.typed for one in herd.records.fills(weigh_in.id)] == ["330 g"]


def test_what_the_rules_refuse_is_told_and_kept_apart(
    cluster: Cluster, herd: Herd, answers: Answers, tmp_path: Path, server_url: str
) -> None:
    desk = Desk(herd.records, answers, clock=at_noon, outbox=outbox_of(herd, tmp_path))
    guide = Guide(herd.records, begun(herd), at_noon, desk.outbox)
    for mass_g in (330.0, 331.0):
        guide.add_fill(FillWay.LEVEL, 1, mass_g, f"{mass_g} g")
    cluster.stop()
    try:
        guide.add_fill(FillWay.LEVEL, 2, 332.0, "332 g")
    finally:
        cluster.start()
    with Records.open(server_url) as theirs:
        other = Guide(theirs, guide.weigh_in, at_noon)
        other.set(drawn_line_mm=30.0)
        other.sign_off("CD")
    desk.send(lambda: None)
    assert answers.told == []
    assert desk.outbox is not None
    (refused,) = desk.outbox.list_refused()
    assert "signed off and cannot be changed" in refused_words(refused)
    assert (desk.waiting, len(herd.records.fills(guide.weigh_in.id))) == (0, 2)


def test_sign_off_sees_what_another_desk_added_meanwhile(cluster: Cluster, herd: Herd, tmp_path: Path) -> None:
    outbox = outbox_of(herd, tmp_path)
    guide = Guide(herd.records, begun(herd), at_noon, outbox)
    guide.set(drawn_line_mm=30.0)
    guide.add_fill(FillWay.LEVEL, 1, 330.0, "330 g")
    cluster.stop()
    try:
        guide.add_fill(FillWay.LEVEL, 2, 332.0, "332 g")
    finally:
        cluster.start()
    herd.records.add_fill(fill(guide.weigh_in, "340 g"))
    seen = guide.known.fills
    outbox.deliver(herd.records)
    guide.refresh()
    with pytest.raises(EditedMeanwhile):
        guide.sign_off("AB", seen)
    assert [one.typed for one in guide.known.fills] == ["330 g", "340 g", "332 g"]


def test_killed_alone_and_started_again(cluster: Cluster, herd: Herd, server_url: str, tmp_path: Path) -> None:
    """The process dies with the server away; the next one sends all that was acknowledged, and twice is once."""
    weigh_in = begun(herd)
    script = Path(__file__).with_name("weigh_until_killed.py")
    with subprocess.Popen(
        [sys.executable, str(script), server_url, str(tmp_path), weigh_in.id], stdin=subprocess.PIPE,
        stdout=subprocess.PIPE, text=True, env=os.environ | {"PYTHONPATH": os.pathsep.join(sys.path)},
    ) as worker:  # fmt: skip
        assert worker.stdout is not None
        assert worker.stdin is not None
        told = [worker.stdout.readline().strip() for _ in range(3)]
        cluster.stop("immediate")
        worker.stdin.write("go on\n")
        worker.stdin.flush()
        told += [worker.stdout.readline().strip() for _ in range(12)]
        worker.send_signal(signal.SIGKILL)
        told += worker.stdout.read().split()
    cluster.start()
    assert len(told) >= 15
    outbox = Outbox.beside(tmp_path, herd.records.url)
    waiting = outbox.entries()
    outbox.deliver(herd.records)
    for entry in waiting:  # as after a crash between the sending and the crossing out
        outbox.put(entry)
    outbox.deliver(herd.records)
    assert outbox.refused == 0
    kept = [one.id for one in herd.records.fills(weigh_in.id)]
    assert (len(kept), outbox.waiting) == (len(set(kept)), 0)
    assert set(told) <= set(kept)


def test_an_outbox_that_cannot_be_written_says_so(tmp_path: Path, herd: Herd) -> None:
    (tmp_path / "there").mkdir()
    with pytest.raises(Exception, match="write-protected"):
        Outbox(tmp_path / "there")


def test_without_an_outbox_an_absent_server_is_an_error(cluster: Cluster, herd: Herd) -> None:
    guide = Guide(herd.records, begun(herd), at_noon)
    cluster.stop()
    try:
        with pytest.raises(RecordsUnreachable):
            guide.add_fill(FillWay.LEVEL, 1, 330.0, "330 g")
    finally:
        cluster.start()
    with pytest.raises(NotAllowed):
        herd.records.strike(new_id(), "no such fill", "AB")
