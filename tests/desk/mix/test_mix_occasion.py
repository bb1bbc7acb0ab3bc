"""A check may be of another lot than the one in use and of an earlier day, never of one to come: by keys."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, date, datetime, time, timedelta

import pytest
from herd import FIRST_DAY, Herd, group
from mix_hands import type_in
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from calibrator.desk.clock_times import TimeNotUnderstood, read_time
from calibrator.desk.mix import batch_form
from calibrator.desk.mix_batch import FarmNow
from calibrator.desk.mix_occasion import Wrong, moment, wrong_with
from calibrator.desk.pages.mix_check import MixCheckPage
from calibrator.model import Lot, MixCheck, new_id
from calibrator.records import Records

NOW = FIRST_DAY + timedelta(days=30)


@pytest.fixture
def herd(records: Records) -> Herd:
    made = Herd(records)
    made.sign("25-0112A", 0.50)
    made.sign("25-0202B", 0.56)
    made.plan("Morning milk", group(80, "hutches"))
    return made


@pytest.mark.parametrize(
    ("text", "hour", "minute"),
    [
        ("6:30", 6, 30), ("18:30", 18, 30), ("6.30 pm", 18, 30), ("6 am", 6, 0), ("6:05 p.m.", 18, 5), ("0630", 6, 30),
        ("12 am", 0, 0), ("12:15 AM", 0, 15), ("12 pm", 12, 0), ("noon", 12, 0), ("6:30 p. m.", 18, 30),
        ("23:59", 23, 59),
    ],
)  # fmt: skip
def test_times_as_people_type_them(text: str, hour: int, minute: int) -> None:
    assert read_time(text) == time(hour, minute)


WRONG_TIMES = ("6", "630", "6:3", "24:00", "12:60", "13 pm", "0 am", "6 m", "morning", "6:30:15", "-6:30", "6:30 xm")


@pytest.mark.parametrize("text", WRONG_TIMES)
def test_what_is_no_time_is_refused(text: str) -> None:
    with pytest.raises(TimeNotUnderstood):
        read_time(text)


def test_no_day_is_today_no_time_is_now_and_an_earlier_day_alone_is_its_midday() -> None:
    assert read_time("  ") is None
    assert moment(None, None, NOW) == NOW
    here = NOW.astimezone().date()
    assert moment(here, None, NOW) == NOW
    assert moment(date(2026, 1, 20), None, NOW) == datetime(2026, 1, 20, 12).astimezone()
    assert moment(None, time(6, 30), NOW) == datetime.combine(here, time(6, 30)).astimezone()


def test_nothing_to_come_and_nothing_before_the_lot_came() -> None:
    lot = Lot(id="l", farm_id="f", lot_number="25-0202B", arrived_on=date(2026, 2, 2))
    assert wrong_with(NOW + timedelta(seconds=1), lot, NOW) is Wrong.TO_COME
    assert wrong_with(datetime(2026, 2, 1, 12, tzinfo=UTC), lot, NOW) is Wrong.BEFORE_LOT
    assert wrong_with(datetime(2026, 2, 2, 12, tzinfo=UTC), lot, NOW) is None
    assert wrong_with(datetime(2026, 2, 1, 12, tzinfo=UTC), None, NOW) is None


def test_a_check_of_the_lot_before_on_an_earlier_day(qtbot: QtBot, page: MixCheckPage, herd: Herd) -> None:
    panel = page.check
    assert panel.occasion.lot.currentText() == "25-0202B, in use"
    panel.occasion.lot.setFocus()
    qtbot.keyClick(panel.occasion.lot, Qt.Key.Key_Down)
    assert panel.occasion.lot.currentText() == "25-0112A, put aside"
    type_in(qtbot, panel.occasion.day.line, "20 Jan 2026")
    type_in(qtbot, panel.occasion.time.line, "6:30")
    assert "25-0112A" in panel.lot.text()
    assert "Jan 20, 2026" in panel.lot.text()
    batch = panel.batch_form.batch()
    assert batch is not None
    assert batch.now.powder.lot is not None
    assert batch.now.powder.lot.lot_number == "25-0112A"
    # The first lot has none before it whose line could have been used.
    assert batch.now.old_fill_g is None
    type_in(qtbot, panel.readings.first.line, "11.2 11.4")
    qtbot.keyClick(panel.keep_button, Qt.Key.Key_Space)
    (kept,) = herd.records.every(MixCheck)
    assert herd.records.find(Lot, kept.lot_id).lot_number == "25-0112A"
    assert kept.at == datetime(2026, 1, 20, 6, 30).astimezone()
    # The next check is of the lot in use and of now again: an old day must not be kept by mistake.
    assert panel.occasion.lot.currentText() == "25-0202B, in use"
    assert panel.occasion.is_now()
    assert "Jan 20, 2026" in panel.lot.text()  # what was kept stays in view under its own lot and day
    type_in(qtbot, panel.readings.first.line, "11.2")
    assert "25-0202B" in panel.lot.text()


@pytest.mark.parametrize(
    ("day", "clock", "says"),
    [
        ("12 Feb 2026", "", "still to come"),
        ("11 Feb 2026", "23:59", "still to come"),
        ("", "23:59", "still to come"),
        ("1 Feb 2026", "", "came only on"),
        ("31 Feb 2026", "", "no such day"),
        ("2/3/2026", "", "two ways"),
        ("soon", "", "Write the day"),
        ("Feb", "", "Write the day"),
        ("", "half past six", "Write the time"),
        ("", "25:00", "no such time"),
        ("1 Jan 1999", "", "too long ago"),
    ],
)
def test_wrong_days_and_times_are_answered_in_words(
    qtbot: QtBot, page: MixCheckPage, day: str, clock: str, says: str
) -> None:
    panel = page.check
    type_in(qtbot, panel.readings.first.line, "11.2")
    type_in(qtbot, panel.occasion.day.line, day)
    type_in(qtbot, panel.occasion.time.line, clock)
    panel.keep()
    (wrong,) = [field for field in (panel.occasion.day, panel.occasion.time) if says in field.message]
    assert page.desk.records.every(MixCheck) == []
    assert (panel.occasion.day.text(), panel.occasion.time.text()) == (day, clock)
    assert panel.readings.first.text() == "11.2"
    assert wrong.line.hasFocus()


@pytest.mark.parametrize(("day", "asked"), [("1 Feb 2026", True), ("2 Feb 2026", False), ("", False)])
def test_a_mix_from_before_its_lot_was_weighed_in_is_asked_about_and_kept(
    qtbot: QtBot, page: MixCheckPage, herd: Herd, day: str, asked: bool
) -> None:
    newest = herd.lot_of(herd.records.sign_offs(herd.farm.id)[-1])
    herd.records.keep(replace(newest, arrived_on=date(2026, 1, 20)))
    page.desk.changed.emit()
    panel = page.check
    type_in(qtbot, panel.readings.first.line, "11.2")
    type_in(qtbot, panel.occasion.day.line, day)
    said = panel.occasion.day.message
    assert ("Lot 25-0202B was weighed in only on Feb 2, 2026. Was the mix of this day really made" in said) == asked
    assert not panel.occasion.day.wrong
    panel.keep()
    assert len(herd.records.every(MixCheck)) == 1


def test_a_lot_that_is_fed_before_it_was_weighed_in(qtbot: QtBot, page: MixCheckPage, herd: Herd) -> None:
    herd.records.keep(Lot(id=new_id(), farm_id=herd.farm.id, lot_number="26-0210C", product="20-20 replacer"))
    page.desk.changed.emit()
    choice = page.check.occasion.lot
    assert [choice.itemText(n) for n in range(3)] == [
        "25-0202B, in use",
        "25-0112A, put aside",
        "26-0210C, not weighed in",
    ]
    for number in (0, 1):
        lot = herd.lot_of(herd.records.sign_offs(herd.farm.id)[number])
        herd.records.keep(replace(lot, finished_on=date(2026, 2, 10)))
    page.desk.changed.emit()
    assert page.check.occasion.chosen() is None
    assert page.check.no_lot.isVisibleTo(page)
    type_in(qtbot, page.check.readings.first.line, "11.2")
    assert not page.check.keep_button.isEnabled()
    choice.setFocus()
    qtbot.keyClick(choice, Qt.Key.Key_Down)
    assert choice.currentText() == "26-0210C, not weighed in"
    assert page.check.keep_button.isEnabled()
    page.check.keep()
    assert len(herd.records.every(MixCheck)) == 1


def test_another_lot_stays_chosen_while_something_else_is_kept(qtbot: QtBot, page: MixCheckPage, herd: Herd) -> None:
    choice = page.check.occasion.lot
    choice.setFocus()
    qtbot.keyClick(choice, Qt.Key.Key_Down)
    herd.vessel("Cart tank", 66.0)
    page.desk.changed.emit()
    assert choice.currentText() == "25-0112A, put aside"
    assert "25-0112A" in page.check.lot.text()
    qtbot.keyClick(page.check.clear_button, Qt.Key.Key_Space)
    assert "25-0202B" in page.check.lot.text()


def test_the_time_being_typed_reckons_no_plan_anew(
    qtbot: QtBot, page: MixCheckPage, monkeypatch: pytest.MonkeyPatch
) -> None:
    occasion, reckoned = page.check.occasion, list[FarmNow]()
    monkeypatch.setattr(batch_form, "aims_differ", reckoned.append)
    type_in(qtbot, occasion.time.line, "6:30")
    assert not occasion.is_now()
    assert not reckoned
    type_in(qtbot, occasion.day.line, "10 Feb 2026")
    assert reckoned, "that day's plans may be others"
