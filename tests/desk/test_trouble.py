"""Trouble with the drive amid a weigh-in: a sentence, the weight still in its field, kept by the next Enter."""

from __future__ import annotations

import os
import shutil
import sqlite3
import subprocess
import sys
from collections.abc import Callable, Iterator
from contextlib import AbstractContextManager, contextmanager, suppress
from datetime import UTC, date, datetime, timedelta
from pathlib import Path

import pytest
from answers import Answers, at_noon
from herd import OZ_G, Herd
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from calibrator.desk.app import Opener
from calibrator.desk.change_over import FedFrom, change_over, keep_lots
from calibrator.desk.context import Desk
from calibrator.desk.days import set_back
from calibrator.desk.guide import Guide
from calibrator.desk.pages.weigh_in import WeighInPage
from calibrator.desk.settings import Settings
from calibrator.desk.speech import day_text
from calibrator.desk.standing import standing
from calibrator.desk.weigh_in.step_fills import StepFills
from calibrator.desk.window import Window
from calibrator.model import Farm, Fill, FillWay, Lot, Scale, Scoop, Step, WeighIn, new_id
from calibrator.records import DiskFull, Records, engine


@pytest.fixture(autouse=True)
def no_waiting(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(engine, "_WAIT_S", 0)


@pytest.fixture
def page(desk: Desk, qtbot: QtBot) -> WeighInPage:
    made = WeighInPage(desk)
    desk.changed.connect(made.reload)
    qtbot.addWidget(made)
    made.open(desk.records.every(Lot)[0].id)
    assert made.guide is not None
    scoop, scale = desk.records.every(Scoop)[0], desk.records.every(Scale)[0]
    made.guide.set(by="AB", scoop_id=scoop.id, scale_id=scale.id, target_mass_g=283.5, scale_zeroed=True)
    made.open_step(Step.LEVEL_FILLS)
    made.show()
    return made


def pragma(records: Records, words: str) -> int:
    with records.reading() as connection:
        told = connection.exec_driver_sql(f"PRAGMA {words}")
        return int(told.scalar() or 0) if told.returns_rows else 0


@contextmanager
def disk_full(records: Records, file: Path) -> Iterator[None]:
    """No page more than there is, and the last ones full to where a fill no longer fits."""
    lot = records.every(Lot)[0]
    ballast = records.keep(WeighIn(id=new_id(), farm_id=lot.farm_id, lot_id=lot.id, started_at=at_noon()))
    pragma(records, f"max_page_count = {pragma(records, 'page_count')}")
    with suppress(DiskFull):
        while True:
            records.add_fill(
                Fill(
                    id=new_id(), weigh_in_id=ballast.id, way=FillWay.LEVEL, bag=1, mass_g=1.0, typed="", by="",
                    at=at_noon(),
                )
            )  # fmt: skip
    yield
    pragma(records, "max_page_count = 1000000")


@contextmanager
def locked(records: Records, file: Path) -> Iterator[None]:
    with sqlite3.connect(file, isolation_level=None) as other:
        other.execute("BEGIN EXCLUSIVE")
        yield
        other.execute("ROLLBACK")
    other.close()


@contextmanager
def write_protected(records: Records, file: Path) -> Iterator[None]:
    pragma(records, "query_only = ON")
    yield
    pragma(records, "query_only = OFF")


@contextmanager
def removed(records: Records, file: Path) -> Iterator[None]:
    aside = file.rename(file.with_name("put-elsewhere.sqlite"))
    yield
    aside.rename(file)


@contextmanager
def replaced(records: Records, file: Path) -> Iterator[None]:
    with removed(records, file):
        shutil.copy(file.with_name("put-elsewhere.sqlite"), file)
        yield


@contextmanager
def share_gone(records: Records, file: Path) -> Iterator[None]:
    aside = file.parent.rename(file.parent.with_name("share-away"))
    yield
    aside.rename(file.parent)


@contextmanager
def no_journal(records: Records, file: Path) -> Iterator[None]:
    """The drive makes no new file: SQLite cannot begin."""
    journal = file.with_name(file.name + "-journal")
    journal.mkdir()
    yield
    journal.rmdir()


Trouble = Callable[[Records, Path], AbstractContextManager[None]]


@pytest.mark.parametrize(
    ("trouble", "words"),
    [
        (disk_full, "is full, so this was not kept. Free some space"),
        (locked, "are busy with other work. Wait a moment"),
        (write_protected, "write-protected"),
        (removed, "no longer where they were opened"),
        (replaced, "no longer where they were opened"),
        (share_gone, "no longer where they were opened"),
        (no_journal, "cannot be reached. Check the drive"),
    ],
)
def test_the_weight_stays_and_is_kept_when_it_can_be(
    page: WeighInPage, answers: Answers, tmp_path: Path, trouble: Trouble, words: str
) -> None:
    records, guide = page.desk.records, page.guide
    assert guide is not None
    view = page._views[Step.LEVEL_FILLS]
    assert isinstance(view, StepFills)
    line = view._weight.line
    QTest.keyClicks(line, "11.6")
    with trouble(records, Path(records.url)):
        QTest.keyClick(line, Qt.Key.Key_Return)
        assert [words in told for told in answers.told] == [True]
        assert line.text() == "11.6"
        assert page.pending() == "11.6"
    QTest.keyClick(line, Qt.Key.Key_Return)
    assert [fill.typed for fill in records.fills(guide.weigh_in.id)] == ["11.6"]
    assert (line.text(), len(answers.told)) == ("", 1)


def test_a_write_protected_file_may_be_looked_at_from_the_door(
    qtbot: QtBot, qapp: QApplication, answers: Answers, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    file = tmp_path / "farm.sqlite"
    with Records.open(str(file)) as records:
        records.keep(Farm(id=new_id(), name="Windy Hollow"))
    monkeypatch.setattr(os, "access", lambda *_: False)
    opener = Opener(qapp, answers, str(file), Settings())
    opener.open()
    qtbot.waitUntil(lambda: opener.desk is not None)
    assert "write-protected" in answers.asked[-1]
    assert opener.desk is not None
    assert opener.desk.records.read_only
    assert opener.window is not None
    opener.window.close()
    opener.close()


READ_ONLY_FOLDER = """
import os, sys
from pathlib import Path
from calibrator.model import Farm, new_id
from calibrator.records import Records, RecordsError
folder, farm = Path(sys.argv[1]), Farm(id=new_id(), name="Windy Hollow")
records = Records.open(str(folder / "farm.sqlite"))
os.chmod(folder, 0o555)
try:
    records.keep(farm)
except RecordsError as error:
    print(error)
os.chmod(folder, 0o755)
records.keep(farm)
print(len(records.every(Farm)))
"""


@pytest.mark.skipif(sys.platform == "win32", reason="folders there are not protected so")
def test_a_folder_that_turns_read_only_is_told_and_work_goes_on(tmp_path: Path) -> None:
    command = [sys.executable, "-c", READ_ONLY_FOLDER, str(tmp_path)]
    if os.geteuid() == 0:  # nothing is write-protected for root, unless root does without that right
        if shutil.which("setpriv") is None:
            pytest.skip("root needs setpriv to be refused")
        command = ["setpriv", "--bounding-set", "-dac_override,-dac_read_search", *command]
    told = subprocess.run(command, capture_output=True, text=True, check=True).stdout.splitlines()
    assert "its folder is write-protected" in told[0]
    assert told[1:] == ["1"]


def test_with_the_clock_set_back_everything_stays_in_its_order(records: Records) -> None:
    """No order rests on a clock: the fills, and which lot is in use."""
    herd = Herd(records)
    herd.sign("25-1103C", 10 * OZ_G / 665.9)
    lot = records.keep(Lot(id=new_id(), farm_id=herd.farm.id, lot_number="25-1204A"))
    clock = iter(datetime(2000, 1, 1, tzinfo=UTC) - timedelta(hours=number) for number in range(1000))
    begun = WeighIn(
        id=new_id(), farm_id=herd.farm.id, lot_id=lot.id, started_at=at_noon(), by="AB", scoop_id=herd.red.id,
        scale_id=herd.scale.id, target_mass_g=10 * OZ_G, target_typed="10 oz", scale_zeroed=True,
    )  # fmt: skip
    guide = Guide(records, records.keep(begun), lambda: next(clock))
    for mass_g in (330.0, 331.0, 332.0, 331.0):
        guide.add_fill(FillWay.LEVEL, 1, mass_g, f"{mass_g} g")
    assert guide.findings.line is not None
    guide.set(drawn_line_mm=guide.findings.line.down_wall_mm)
    assert guide.sign_off("AB").fills == 4
    signed = guide.standing.lot(lot.id)
    assert signed is not None
    keep_lots(records, change_over(guide.standing, signed, FedFrom(at_noon().date())), "AB")
    assert [fill.mass_g for fill in records.fills(begun.id)] == [330.0, 331.0, 332.0, 331.0]
    in_use = standing(records, herd.farm).in_use
    assert in_use is not None
    assert in_use.lot.id == lot.id
    assert not records.check_fingerprints()


def test_a_clock_set_back_is_told_once(
    qtbot: QtBot, qapp: QApplication, answers: Answers, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    now = [at_noon()]
    monkeypatch.setattr("calibrator.desk.app.local_now", lambda: now[0])
    opener = Opener(qapp, answers, str(tmp_path / "farm.sqlite"), Settings())
    opener._watch_clock()
    for day, told in ((0, 0), (-400, 1), (-399, 1)):
        now[0] = at_noon() + timedelta(days=day)
        opener._watch_clock()
        assert len(answers.told) == told
    assert f"This computer's clock says {day_text(date(2025, 1, 26))}" in answers.told[0]
    assert day_text(date(2026, 3, 2)) in answers.told[0]


@pytest.mark.parametrize("before", ["", "yesterday", "2026-03-02T12:00:00", "2026-03-02T12:09:00+00:00"])
def test_a_clock_that_was_not_set_back(before: str) -> None:
    assert set_back(before, at_noon()) is None


def test_a_window_over_records_that_are_gone_stays_usable(
    desk: Desk, qtbot: QtBot, answers: Answers, tmp_path: Path
) -> None:
    window = Window(desk)
    qtbot.addWidget(window)
    window.show_page("weigh_in", desk.records.every(Lot)[0].id)
    with share_gone(desk.records, Path(desk.records.url)):
        window.watch.look()
        assert not desk.attempt(lambda: desk.records.keep(Lot(id=new_id(), farm_id="", lot_number="x")))
        assert "no longer where they were opened" in answers.told[-1]
    window.watch.look()
    window._close_anyway()
