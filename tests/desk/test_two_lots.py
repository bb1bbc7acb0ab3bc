"""Two lots open at once: each with its own marks and table, the change-over, a batch from both."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta

import pytest
from answers import Answers, at_noon
from herd import OZ_G, Herd, group
from keys import mnemonics, nameless
from PySide6.QtCore import QLocale, Qt
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from calibrator.desk.at_hand import at_hand
from calibrator.desk.both_lots import from_both
from calibrator.desk.change_over import FedFrom, change_over, with_old_finished
from calibrator.desk.context import Desk
from calibrator.desk.forms import fields
from calibrator.desk.hung import hanging, outdated_sheets
from calibrator.desk.in_use import LotState
from calibrator.desk.needs import Need, waiting
from calibrator.desk.pages.tables import TablesPage
from calibrator.desk.scoop_lines import line_on, lines_to_come, marked, may_fill_to_line
from calibrator.desk.sheet_words import chart_words
from calibrator.desk.sheets import plan_sheet, powder_in_use, powder_of
from calibrator.desk.standing import standing
from calibrator.desk.theme import Theme
from calibrator.desk.weigh_in.fed_from import FedFromQuestion
from calibrator.model import Ending, Lot, PrintKind, SheetEnding, SignOff, new_id
from calibrator.prints.page import Text
from calibrator.records import Records

TEN_OZ_LEVEL = 10 * OZ_G / 665.9
TODAY = at_noon().date()


@pytest.fixture
def herd(qapp: QApplication, records: Records) -> Herd:
    if qapp.property("tokens") is None:
        Theme(qapp)
    return Herd(records)


@pytest.fixture
def two(herd: Herd) -> tuple[SignOff, SignOff]:
    """The older lot fills the red scoop with ten ounces, the newer one with twelve."""
    return herd.sign("25-1103C", TEN_OZ_LEVEL), herd.sign("25-1204A", 1.2 * TEN_OZ_LEVEL)


def feed(herd: Herd, signed: SignOff, days_ago: int = 0) -> Lot:
    lot = herd.lot_of(signed)
    return herd.records.keep(replace(lot, fed_from=TODAY.replace(day=TODAY.day - days_ago)))


def page_of(herd: Herd, qtbot: QtBot, answers: Answers) -> TablesPage:
    desk = Desk(herd.records, answers, clock=at_noon)
    page = TablesPage(desk)
    desk.changed.connect(page.reload)
    qtbot.addWidget(page)
    page.resize(828, 700)
    page.reload()
    page.show()
    return page


def test_without_a_change_over_the_newest_sign_off_is_in_use(herd: Herd, two: tuple[SignOff, SignOff]) -> None:
    now = standing(herd.records, herd.farm)
    assert [known.lot.lot_number for known in now.open_lots] == ["25-1103C", "25-1204A"]
    assert now.in_use is not None
    assert now.in_use.lot.id == two[1].lot_id


def test_a_change_over_goes_before_the_newest_sign_off_until_its_lot_is_finished(
    herd: Herd, two: tuple[SignOff, SignOff]
) -> None:
    old = feed(herd, two[0], 1)
    now = standing(herd.records, herd.farm)
    assert now.in_use is not None
    assert now.in_use.lot.id == old.id
    feed(herd, two[1])
    assert standing(herd.records, herd.farm).in_use.lot.id == two[1].lot_id  # type: ignore[union-attr]
    herd.records.keep(replace(herd.lot_of(two[1]), finished_on=TODAY))
    assert standing(herd.records, herd.farm).in_use.lot.id == old.id  # type: ignore[union-attr]


def test_while_both_are_open_a_scoop_bears_both_lines(herd: Herd, two: tuple[SignOff, SignOff]) -> None:
    feed(herd, two[0])
    now = standing(herd.records, herd.farm)
    line = line_on(now, herd.red.id)
    assert line is not None
    assert line.lot_id == two[0].lot_id
    assert not [found for found in waiting(now) if found.need is Need.MARK_SCOOP]


def test_a_chart_of_the_lot_in_use_is_not_outdated_by_the_next_lots_sign_off(herd: Herd) -> None:
    first = herd.sign("25-1103C", TEN_OZ_LEVEL)
    plan = herd.plan()
    herd.print(PrintKind.WALL_CHART, first, plan_id=plan.id)
    feed(herd, first)
    second = herd.sign("25-1204A", 1.2 * TEN_OZ_LEVEL)
    assert outdated_sheets(standing(herd.records, herd.farm), PrintKind.WALL_CHART) == ()
    feed(herd, second)
    herd.records.keep(replace(herd.lot_of(first), fed_from=TODAY.replace(day=1)))
    assert len(outdated_sheets(standing(herd.records, herd.farm), PrintKind.WALL_CHART)) == 1


def test_a_batch_takes_the_last_of_one_lot_and_the_rest_from_the_other(
    herd: Herd, two: tuple[SignOff, SignOff]
) -> None:
    """Ten calves take 100 oz; 40 oz of the old lot are four to its line of ten, the other 60 oz six to its own."""
    now = standing(herd.records, herd.farm)
    new = powder_in_use(herd.records, now)
    old = powder_of(herd.records, now, now.lot(two[0].lot_id), now.sign_offs)
    sheet = plan_sheet(herd.farm, herd.plan("Milk", group(10)), None, new).groups[0]
    found = from_both(sheet, old, new, 40 * OZ_G, now)
    assert found is not None
    assert (found.old_g, found.new_g) == pytest.approx((40 * OZ_G, 60 * OZ_G), rel=1e-3)
    assert found.old_scoops is not None
    assert found.new_scoops is not None
    assert (found.old_scoops.scoopfuls, found.new_scoops.scoopfuls) == (4, 6)
    whole = from_both(sheet, old, new, 1000 * OZ_G, now)
    assert whole is not None
    assert (whole.new_g, whole.new_scoops) == (0.0, None)
    nobody = plan_sheet(herd.farm, herd.plan("None", group(0)), None, new).groups[0]
    assert from_both(nobody, old, new, 40 * OZ_G, now) is None


def test_no_lot_is_filled_to_a_line_that_is_off_the_scoop(
    herd: Herd, two: tuple[SignOff, SignOff], qtbot: QtBot, answers: Answers
) -> None:
    """Once the scoop bears the new lot's line, 40 oz of the old one are four level, which weigh 10.4 oz each."""
    now = standing(herd.records, herd.farm)
    known = now.lot(two[1].lot_id)
    assert known is not None
    for lot in marked(now, known, herd.red.id, TODAY):
        herd.records.keep(lot)
    herd.plan("Milk", group(10))
    page = page_of(herd, qtbot, answers)
    bar = page.view.lot_bar
    qtbot.keyClicks(bar.left.line, "40 oz")
    assert "lot 25-1103C: 40.0 oz, 4 level" in bar.both.text()
    assert "does not bear the line of lot 25-1103C: never fill that lot to the other lot's line" in bar.both.text()
    page.print.click()
    document = page.paper.document
    assert document is not None
    shown = " ".join(item.text for item in document.pages[0].items if isinstance(item, Text))
    assert "from bags of lot 25-1103C: 40.0 oz, 4 level (Red scoop)" in shown
    assert "from bags of lot 25-1204A, by its own line: 60.0 oz, 6 to the line (Red scoop)" in shown


def test_a_scoop_with_both_lines_is_filled_to_either(
    herd: Herd, two: tuple[SignOff, SignOff], qtbot: QtBot, answers: Answers
) -> None:
    """As Today says of a scoop on which the line of a lot that waits is drawn beside that of today."""
    now = standing(herd.records, herd.farm)
    known = now.lot(two[0].lot_id)
    assert known is not None
    for lot in marked(now, known, herd.red.id, TODAY):
        herd.records.keep(lot)
    herd.records.keep(replace(herd.lot_of(two[1]), waits=True))
    now = standing(herd.records, herd.farm)
    assert [line.lot.id for line in lines_to_come(now, herd.red.id)] == [two[1].lot_id]
    assert all(may_fill_to_line(now, signed.lot_id, herd.red.id) for signed in two)
    herd.plan("Milk", group(10))
    bar = page_of(herd, qtbot, answers).view.lot_bar
    bar.lots.setCurrentIndex(bar.lots.findText("25-1204A, waiting"))
    bar.lots.activated.emit(bar.lots.currentIndex())
    qtbot.keyClicks(bar.left.line, "40 oz")
    assert "lot 25-1204A: 60.0 oz, 6 to the line of lot 25-1204A." in bar.both.text()
    assert "never fill" not in bar.both.text()


def test_what_one_group_leaves_of_the_old_lot_goes_into_the_next_group_whichever_table_is_looked_at(
    herd: Herd, two: tuple[SignOff, SignOff], qtbot: QtBot, answers: Answers
) -> None:
    herd.plan("Milk", group(4, "Young"), group(6, "Older"))
    page = page_of(herd, qtbot, answers)
    bar = page.view.lot_bar
    qtbot.keyClicks(bar.left.line, "60 oz")
    told = bar.both.text()
    assert "for 4 calves (Young): lot 25-1103C: 40.0 oz, 4 to the line of lot 25-1103C." in told
    assert "for 6 calves (Older): lot 25-1103C: 20.0 oz, 2 to the line of lot 25-1103C; lot 25-1204A: 40.0 oz" in told
    assert "stay for" not in told
    for tab in range(page.view.tabs.count()):
        page.view.tabs.setCurrentIndex(tab)
        page._recompute()
        assert bar.both.text() == told
    page.print.click()
    document = page.paper.document
    assert document is not None
    shown = " ".join(item.text for item in document.pages[0].items if isinstance(item, Text))
    assert "THE LAST OF LOT 25-1103C · Young · 4 calves" in shown
    assert "ONE BATCH FROM TWO LOTS · Older · 6 calves" in shown
    bar.left.line.clear()
    qtbot.keyClicks(bar.left.line, "130 oz")
    assert "30.0 oz of lot 25-1103C stay for the next feeding." in bar.both.text()


def test_lines_at_one_place_are_told_as_the_line(herd: Herd, qtbot: QtBot, answers: Answers) -> None:
    """The new lot keeps the old line: nobody looks for a line of either lot's own, and the old lot is filled to it."""
    old, new = herd.sign("25-1103C", TEN_OZ_LEVEL), herd.sign("25-1204A", TEN_OZ_LEVEL)
    feed(herd, new)
    now = standing(herd.records, herd.farm)
    known = now.lot(new.lot_id)
    assert known is not None
    for lot in marked(now, known, herd.red.id, TODAY):
        herd.records.keep(lot)
    assert may_fill_to_line(standing(herd.records, herd.farm), old.lot_id, herd.red.id)
    herd.plan("Milk", group(10))
    page = page_of(herd, qtbot, answers)
    qtbot.keyClicks(page.view.lot_bar.left.line, "40 oz")
    told = page.view.lot_bar.both.text()
    assert "lot 25-1103C: 40.0 oz, 4 to the line" in told
    assert "at one place: fill to the line" in told
    page.print.click()
    document = page.paper.document
    assert document is not None
    shown = " ".join(item.text for item in document.pages[0].items if isinstance(item, Text))
    assert "from bags of lot 25-1204A: 60.0 oz, 6 to the line (Red scoop)" in shown
    assert "own line" not in shown


def test_one_open_lot_needs_no_bar(herd: Herd, qtbot: QtBot, answers: Answers) -> None:
    herd.sign("25-1103C", TEN_OZ_LEVEL)
    herd.plan()
    assert not page_of(herd, qtbot, answers).view.lot_bar.isVisible()


def test_the_page_shows_either_lots_table_and_changes_over(
    herd: Herd, two: tuple[SignOff, SignOff], qtbot: QtBot, answers: Answers
) -> None:
    herd.plan("Milk", group(6))
    page = page_of(herd, qtbot, answers)
    bar, row = page.view.lot_bar, page.view.today.rows[0]
    assert bar.isVisible()
    assert bar.lots.currentText() == "25-1204A, in use"
    assert bar.change.text().replace("&", "") == "Keep that day as the change-over"
    assert bar.day.line.placeholderText() == "today"
    assert row.scoops.value.text() == "6 to the line"
    assert "Bags of lot 25-1103C" in bar.words.text()
    bar.lots.setCurrentIndex(0)
    bar.lots.activated.emit(0)
    assert row.scoops.value.text() == "6 to the line"
    assert "25-1103C" in page.view.lot_number.text()
    bar.change.click()
    assert herd.lot_of(two[0]).fed_from == TODAY
    assert bar.lots.currentText() == "25-1103C, in use"
    assert row.scoops.value.text() == "6 to the line"
    assert "fed since Mar 2, 2026" in bar.words.text()
    taken = mnemonics(page)
    assert len(taken) == len(set(taken))
    assert nameless(page) == []


def test_after_a_change_over_elsewhere_the_lot_now_fed_is_shown(
    herd: Herd, two: tuple[SignOff, SignOff], qtbot: QtBot, answers: Answers
) -> None:
    herd.plan("Milk", group(6))
    feed(herd, two[0], 1)
    page = page_of(herd, qtbot, answers)
    bar = page.view.lot_bar
    assert bar.lots.currentText() == "25-1103C, in use"
    bar.lots.activated.emit(bar.lots.currentIndex())  # looked at on purpose, as the lot that is fed
    page.reload()
    assert bar.lots.currentText() == "25-1103C, in use"
    feed(herd, two[1])
    page.reload()
    assert bar.lots.currentText() == "25-1204A, in use"
    assert "25-1204A" in page.view.lot_number.text()
    bar.lots.activated.emit(0)
    page.reload()  # chosen beside the lot now fed: it stays
    assert bar.lots.currentText().startswith("25-1103C")


def test_today_s_figures_stay_in_view_beneath_the_change_over(
    herd: Herd, two: tuple[SignOff, SignOff], qtbot: QtBot, answers: Answers
) -> None:
    """On a window of 1280 by 800 pixels, with powder left of the old lot typed in and the changes told."""
    herd.plan("Milk", group(10))
    page = page_of(herd, qtbot, answers)
    page.resize(1060, 768)  # what such a window leaves beside the rail and its own edges
    bar = page.view.lot_bar
    bar.left.set_typed("40 oz")
    bar.left_typed.emit()
    QApplication.processEvents()
    assert bar.both.isVisible()
    assert page.view.today.visibleRegion().boundingRect() == page.view.today.rect()
    assert bar.height() < 768 * 0.3


def test_what_stands_beneath_the_change_over_stays_whichever_lot_is_chosen(
    herd: Herd, two: tuple[SignOff, SignOff], qtbot: QtBot, answers: Answers
) -> None:
    feed(herd, two[0])
    herd.records.keep(replace(herd.lot_of(two[1]), waits=True))
    herd.plan("Milk", group(10))
    page = page_of(herd, qtbot, answers)
    bar, places = page.view.lot_bar, set()
    for at in (0, 1, 0):
        bar.lots.setCurrentIndex(at)
        bar.lots.activated.emit(at)
        QApplication.processEvents()
        places.add(bar.height())
    assert len(places) == 1, places


def test_what_is_left_of_the_old_lot_is_typed_and_told(
    herd: Herd, two: tuple[SignOff, SignOff], qtbot: QtBot, answers: Answers
) -> None:
    herd.plan("Milk", group(10))
    page = page_of(herd, qtbot, answers)
    bar = page.view.lot_bar
    assert not bar.both.isVisible()
    bar.left.line.setFocus(Qt.FocusReason.OtherFocusReason)
    qtbot.keyClicks(bar.left.line, "40 oz")
    assert "lot 25-1103C: 40.0 oz, 4 to the line" in bar.both.text()
    assert "lot 25-1204A: 60.0 oz, 6 to the line of lot 25-1204A." in bar.both.text()
    assert bar.both.text().startswith("Into one batch for 10 calves: ")
    assert "by its own line; weigh the powder of lot 25-1103C if its line is wiped out." in bar.both.text()
    page.print.click()
    document = page.paper.document
    assert document is not None
    shown = " ".join(item.text for item in document.pages[0].items if isinstance(item, Text))
    assert "ONE BATCH FROM TWO LOTS · 10 calves · Mar 2, 2026" in shown
    assert "from bags of lot 25-1103C, by its own line: 40.0 oz, 4 to the line (Red scoop)" in shown
    assert "from bags of lot 25-1204A, by its own line: 60.0 oz, 6 to the line (Red scoop)" in shown
    page.paper.back.click()
    bar.left.line.clear()
    bar.left.line.textEdited.emit("")
    assert not bar.both.isVisible()
    page.print.click()
    document = page.paper.document
    assert document is not None
    assert not [item for item in document.pages[0].items if isinstance(item, Text) and "TWO LOTS" in item.text]


def lot_arrived(herd: Herd, signed: SignOff, arrived: date | None) -> Lot:
    return herd.records.keep(replace(herd.lot_of(signed), arrived_on=arrived))


def test_a_change_over_may_be_dated_back_and_is_refused_in_words(
    herd: Herd, two: tuple[SignOff, SignOff], qtbot: QtBot, answers: Answers
) -> None:
    """Weighed in on 12 Jan and 2 Feb; the day is 2 Mar."""
    lot_arrived(herd, two[0], date(2026, 1, 10))
    lot_arrived(herd, two[1], None)
    herd.plan("Milk", group(6))
    page = page_of(herd, qtbot, answers)
    bar = page.view.lot_bar
    for typed, words in (
        ("Feb 1, 2026", "Feb 1, 2026 is too early: lot 25-1204A was first weighed in on Feb 2, 2026."),
        ("3 Mar 2026", "still to come"),
        ("2/3/2026", "two ways"),
    ):
        bar.day.line.clear()
        qtbot.keyClicks(bar.day.line, typed)
        bar.change.click()
        assert words in bar.day.message
        assert herd.lot_of(two[1]).fed_from is None
    bar.day.line.clear()
    qtbot.keyClicks(bar.day.line, "20 Feb 2026")
    bar.change.click()
    assert herd.lot_of(two[1]).fed_from == date(2026, 2, 20)
    assert bar.day.line.placeholderText() == "Feb 20, 2026"
    assert bar.change.text() == "Change &the day"
    bar.change.click()
    assert herd.lot_of(two[1]).fed_from == date(2026, 2, 20)
    assert "fed since Feb 20, 2026" in bar.words.text()
    bar.lots.setCurrentIndex(0)
    bar.lots.activated.emit(0)
    for typed, words in (
        ("Jan 9, 2026", "Jan 9, 2026 is too early: lot 25-1103C came only on Jan 10, 2026."),
        ("Feb 19, 2026", "Feb 19, 2026 is too early: lot 25-1204A was begun on Feb 20, 2026."),
        ("9 Apr 2025", "Apr 9, 2025 is too early"),
        ("9 Apr 2027", "Apr 9, 2027 is too far ahead"),
    ):
        bar.day.line.clear()
        qtbot.keyClicks(bar.day.line, typed)
        bar.change.click()
        assert words in bar.day.message
    assert herd.lot_of(two[0]).fed_from is None


def test_a_lot_put_aside_gets_a_planned_change_over_by_its_day(
    herd: Herd, two: tuple[SignOff, SignOff], qtbot: QtBot, answers: Answers, monkeypatch: pytest.MonkeyPatch
) -> None:
    """As at sign-off: until that day the other lot is fed, and it can be planned for another one and taken back."""
    monkeypatch.setattr(fields, "figures_month_first", lambda: True)
    herd.plan("Milk", group(6))
    page = page_of(herd, qtbot, answers)
    bar = page.view.lot_bar
    bar.lots.setCurrentIndex(0)
    bar.lots.activated.emit(0)
    for typed, read, day in (("3/9", "Mar 9, 2026", date(2026, 3, 9)), ("12 mar", "Mar 12, 2026", date(2026, 3, 12))):
        qtbot.keyClicks(bar.day.line, typed)
        assert bar.day.message == QLocale().toString(day, QLocale.FormatType.LongFormat)
        bar.change.click()
        planned = herd.lot_of(two[0])
        assert (planned.fed_from, planned.fed_from_feeding, planned.waits) == (day, 0, True)
        now = standing(herd.records, herd.farm, TODAY)
        assert now.in_use is not None
        assert now.in_use.lot.id == two[1].lot_id
        assert now.next_lot is not None
        assert now.next_lot.lot.id == two[0].lot_id
        assert bar.lots.currentText() == "25-1204A, in use"
        assert f"Bags of lot 25-1103C (fed from {read} on)" in bar.words.text()
        bar.lots.setCurrentIndex(0)
        bar.lots.activated.emit(0)
    on_the_day = standing(herd.records, herd.farm, date(2026, 3, 12)).in_use
    assert on_the_day is not None
    assert on_the_day.lot.id == two[0].lot_id


def test_a_lot_that_made_way_is_not_called_fed(
    herd: Herd, two: tuple[SignOff, SignOff], qtbot: QtBot, answers: Answers
) -> None:
    feed(herd, two[0], 1)
    feed(herd, two[1])
    herd.plan("Milk", group(6))
    words = page_of(herd, qtbot, answers).view.lot_bar.words.text()
    assert "Bags of lot 25-1103C (no longer fed): " in words
    assert "Bags of lot 25-1204A (fed since Mar 2, 2026): " in words


def test_the_day_left_blank_is_the_one_in_grey(
    herd: Herd, two: tuple[SignOff, SignOff], qtbot: QtBot, answers: Answers
) -> None:
    herd.plan("Milk", group(6))
    bar = page_of(herd, qtbot, answers).view.lot_bar
    assert bar.day.line.placeholderText() == "today"
    assert bar.left.line.placeholderText() == "like 20 lb"
    bar.change.click()
    assert herd.lot_of(two[1]).fed_from == TODAY


def test_the_first_lot_of_all_has_no_change_over_to_keep(
    herd: Herd, two: tuple[SignOff, SignOff], qtbot: QtBot, answers: Answers
) -> None:
    herd.records.keep(replace(herd.lot_of(two[1]), waits=True))
    herd.plan("Milk", group(6))
    bar = page_of(herd, qtbot, answers).view.lot_bar
    assert bar.lots.currentText() == "25-1103C, in use"
    assert not bar.change.isVisible()
    assert not bar.day.isVisible()
    bar.lots.setCurrentIndex(bar.lots.findText("25-1204A, waiting"))
    bar.lots.activated.emit(bar.lots.currentIndex())
    assert bar.change.isVisible()
    assert bar.day.isVisible()


def test_one_of_two_batches_is_told_as_one(
    herd: Herd, two: tuple[SignOff, SignOff], qtbot: QtBot, answers: Answers
) -> None:
    """The twenty gallons of forty calves do not go into a tank of fifteen."""
    herd.plan("Milk", group(40), vessel_id=herd.vessel("Tank", 15.0).id)
    page = page_of(herd, qtbot, answers)
    bar, line = page.view.lot_bar, page.view.today_line()
    assert line is not None
    assert line.batches > 1
    qtbot.keyClicks(bar.left.line, "40 oz")
    assert bar.both.text().startswith(f"Into one of the {line.batches} equal batches for 40 calves: ")
    page.print.click()
    document = page.paper.document
    assert document is not None
    shown = " ".join(item.text for item in document.pages[0].items if isinstance(item, Text))
    assert f"ONE BATCH FROM TWO LOTS · one of {line.batches} batches for 40 calves" in shown


def test_the_keys_come_to_todays_row_and_leave_it_lit_by_itself(
    herd: Herd, two: tuple[SignOff, SignOff], qtbot: QtBot, answers: Answers
) -> None:
    herd.plan("Milk", group(109))
    page = page_of(herd, qtbot, answers)
    qtbot.waitUntil(page.isActiveWindow)
    table, today = page.view.table, page.view._chosen()
    assert today is not None
    assert today.today_row
    table.setFocus(Qt.FocusReason.TabFocusReason)
    assert table.chosen_row() == today.today_row
    page.print.setFocus(Qt.FocusReason.TabFocusReason)
    assert table.chosen_row() is None
    table.setFocus(Qt.FocusReason.TabFocusReason)
    qtbot.keyClick(table, Qt.Key.Key_Up)
    page.print.setFocus(Qt.FocusReason.TabFocusReason)
    assert table.chosen_row() == today.today_row - 1  # of this one is told how it came about


@pytest.mark.qt_log_ignore("This plugin does not support")
def test_an_open_list_without_a_choice_lights_its_first(herd: Herd, qtbot: QtBot) -> None:
    question = FedFromQuestion()
    qtbot.addWidget(question)
    question.offer("w", "25-1103C", (), TODAY)
    question.show()
    question.ways.showPopup()
    assert question.ways.view().currentIndex().row() == 0
    question.ways.hidePopup()
    assert not question.answered


def test_what_was_chosen_at_the_sign_off_stays_on_coming_back_to_it(herd: Herd, qtbot: QtBot) -> None:
    question = FedFromQuestion()
    qtbot.addWidget(question)
    question.offer("w", "25-1103C", (), TODAY)
    question.ways.setCurrentIndex(1)
    question.days.setCurrentIndex(3)
    question.feedings.setCurrentIndex(1)
    chosen = question.fed_from()
    question.offer("w", "25-1103C", (herd.plan("Milk", group(6)),), TODAY)  # meanwhile a plan was made
    assert question.fed_from() == chosen
    question.offer("other", "25-1103C", (), TODAY)
    assert not question.answered


def test_a_change_over_taken_back_on_its_day_leaves_the_other_lot_in_use(
    herd: Herd, two: tuple[SignOff, SignOff]
) -> None:
    feed(herd, two[1])
    now = standing(herd.records, herd.farm)
    old = now.lot(two[0].lot_id)
    assert old is not None
    for lot in change_over(now, old, FedFrom(TODAY)):
        herd.records.keep(lot)
    now = standing(herd.records, herd.farm)
    assert now.in_use is not None
    assert now.in_use.lot.id == two[0].lot_id
    assert now.lot(two[1].lot_id).state is LotState.LEFT_OVER  # type: ignore[union-attr]  # its bags were opened
    assert herd.lot_of(two[1]).fed_from == TODAY
    for lot in change_over(now, now.lot(two[1].lot_id), FedFrom(TODAY)):  # type: ignore[arg-type]
        herd.records.keep(lot)
    now = standing(herd.records, herd.farm)
    assert [known.state for known in now.open_lots] == [LotState.LEFT_OVER, LotState.IN_USE]
    told = change_over(now, now.open_lots[0], FedFrom(TODAY))
    assert [lot.finished_on for lot in with_old_finished(now, told, TODAY)] == [None, TODAY]


def test_a_lot_fed_again_on_the_same_day_is_told_of_the_other_lots_chart_on_the_wall(
    herd: Herd, two: tuple[SignOff, SignOff]
) -> None:
    plan = herd.plan("Milk", group(6))
    feed(herd, two[1])
    first = herd.print(PrintKind.WALL_CHART, two[0], plan_id=plan.id)
    hangs = herd.print(PrintKind.WALL_CHART, two[1], plan_id=plan.id)
    now = standing(herd.records, herd.farm)
    for lot in change_over(now, now.lot(two[0].lot_id), FedFrom(TODAY)):  # type: ignore[arg-type]
        herd.records.keep(lot)
    now = standing(herd.records, herd.farm)
    (told,) = [each for each in waiting(now) if each.need is Need.CHART]
    assert told.sheets == (hangs,)
    assert told.chart is not None
    assert told.chart.again == first
    words = chart_words(now, told.chart, herd.lot_of(two[0]))
    assert words.endswith(f"Print no. {first.number} of lot 25-1103C holds: hang it up again if you have it.")
    again = SheetEnding(id=new_id(), farm_id=herd.farm.id, print_id=first.id, ending=Ending.STILL_UP, at=at_noon())
    herd.records.end_sheet(again)
    now = standing(herd.records, herd.farm)
    assert hanging(now, PrintKind.WALL_CHART) == (first,)
    assert not [each for each in waiting(now) if each.need is Need.CHART]


def test_powder_at_hand_counts_from_the_day_of_the_change_over(herd: Herd, two: tuple[SignOff, SignOff]) -> None:
    """Six calves take 120 oz a day: four days' worth since then."""
    herd.plan("Milk", group(6))
    told = replace(herd.lot_of(two[1]), package_count=4, package_mass_g=800 * OZ_G)
    herd.records.keep(replace(told, fed_from=TODAY - timedelta(days=4)))
    found = at_hand(standing(herd.records, herd.farm), TODAY)
    assert found is not None
    assert found.since == TODAY - timedelta(days=4)
    assert (4 * 800 * OZ_G - found.stock.left_g) / found.daily_g == pytest.approx(4.0)
    assert found.daily_g == pytest.approx(120 * OZ_G)


def test_the_last_of_a_lot_that_waits_is_asked_for_nowhere(
    herd: Herd, two: tuple[SignOff, SignOff], qtbot: QtBot, answers: Answers
) -> None:
    herd.plan("Milk", group(6))
    feed(herd, two[0])
    bar = page_of(herd, qtbot, answers).view.lot_bar
    assert bar.lots.currentText() == "25-1103C, in use"
    assert not bar.left.isVisible()
    bar.lots.setCurrentIndex(bar.lots.findText("25-1204A, waiting"))
    bar.lots.activated.emit(bar.lots.currentIndex())
    assert bar.left.isVisible()
    assert bar.other_id() == two[0].lot_id
