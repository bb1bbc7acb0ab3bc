"""Lots: the table, the search, adding and correcting as people do, double numbers, the detail."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, date, datetime
from typing import Any

import pytest
from PySide6.QtCore import QCoreApplication, QPoint, Qt
from PySide6.QtWidgets import QAbstractButton, QLineEdit
from pytestqt.modeltest import ModelTester
from pytestqt.qtbot import QtBot
from speaking import speaking
from test_name_choice import shown_text
from yard import Yard

from calibrator.desk.context import Desk
from calibrator.desk.pages.fills_table import FillsModel
from calibrator.desk.pages.lots import LotsPage
from calibrator.desk.pages.lots_table import ARRIVED, LotsModel
from calibrator.desk.standing import standing
from calibrator.desk.widgets.figure_block import FigureBlock
from calibrator.desk.widgets.saying import Saying
from calibrator.model import Fill, FillWay, Lot, PackagesLeft, SpotFill, UnitSystem, new_id
from calibrator.records import Records


def type_in(qtbot: QtBot, line: QLineEdit, text: str) -> None:
    line.setFocus()
    line.selectAll()
    qtbot.keyClicks(line, text)


@pytest.fixture
def yard(records: Records, empty_desk: Desk) -> Yard:
    made = Yard(records)
    empty_desk.show_farm(made.farm.id)
    return made


@pytest.fixture
def page(qtbot: QtBot, yard: Yard, empty_desk: Desk) -> LotsPage:
    made = LotsPage(empty_desk)
    qtbot.addWidget(made)
    empty_desk.changed.connect(made.reload)
    made.resize(1024, 700)
    made.show()
    made.reload()
    return made


def numbers(page: LotsPage) -> list[str]:
    return [str(page.sorted.index(row, 0).data()) for row in range(page.sorted.rowCount())]


def weighed_lot(yard: Yard, number: str) -> Lot:
    lot = yard.lot(number)
    weigh_in = yard.start(lot)
    for typed, mass in (("12.0 oz", 340.2), ("13.0 oz", 368.5)):
        fill = Fill(
            id=new_id(),
            weigh_in_id=weigh_in.id,
            way=FillWay.LEVEL,
            bag=1,
            mass_g=mass,
            typed=typed,
            by="AB",
            at=datetime(2026, 3, 2, 12, tzinfo=UTC),
        )
        yard.records.add_fill(fill)
    yard.records.strike(fill.id, "spilled some", "AB")
    yard.sign(lot, yard.red, weigh_in)
    yard.records.add_spot_fill(
        SpotFill(
            id=new_id(),
            farm_id=yard.farm.id,
            lot_id=lot.id,
            weigh_in_id=weigh_in.id,
            way=FillWay.LEVEL,
            mass_g=341,
            typed="12.03 oz",
            by="CD",
            at=datetime(2026, 3, 3, 12, tzinfo=UTC),
        )
    )
    return lot


def test_the_models_keep_the_rules_of_models(yard: Yard, qtmodeltester: ModelTester) -> None:
    weighed_lot(yard, "A")
    yard.lot("B")
    now = standing(yard.records, yard.farm)
    lots, fills = LotsModel(), FillsModel()
    lots.show(now.lots, now.scoops, UnitSystem.FARM)
    weigh_in = now.sign_offs[0].weigh_in_id
    fills.show([*yard.records.fills(weigh_in), *yard.records.spot_fills(now.lots[0].lot.id)], UnitSystem.FARM)
    for model in (lots, fills):
        qtmodeltester.check(model)
    assert fills.rowCount() == 3


def test_the_only_lot_weighed_in_is_said_to_be_in_use_for_that(page: LotsPage, yard: Yard) -> None:
    lot = weighed_lot(yard, "A")
    page.reload()
    now = standing(yard.records, yard.farm)
    page.detail.show_lot(now, now.lot(lot.id))
    assert page.detail.state.text() == "in use: the only lot weighed in"
    assert "say so under Today" not in page.detail.standing_words.text()
    yard.records.keep(replace(lot, scoops_marked=()))
    now = standing(yard.records, yard.farm)
    page.detail.show_lot(now, now.lot(lot.id))
    assert "Once the scoop is marked, say so under Today." in page.detail.standing_words.text()


def test_an_empty_farm_is_told_what_to_do(page: LotsPage) -> None:
    assert page._none_yet.isVisible()
    told = page.detail.nothing
    assert told.isVisible()
    assert f"Press {plain(page.add_button)} to begin." in told.text()
    assert not page.detail.tabs.isVisible()
    assert not page.weigh_button.isEnabled()


def test_a_lot_says_what_comes_next_until_it_is_signed_off(page: LotsPage, yard: Yard) -> None:
    detail = page.detail
    lot = yard.lot("A")
    page.reload()
    assert not detail.nothing.isVisible()
    assert f"Press {plain(page.weigh_button)} to weigh" in detail.standing_words.text()
    detail.tabs.setCurrentIndex(1)
    assert detail.no_fills.isVisible()
    assert not detail.fills.isVisible()
    weighed_lot(yard, "B")
    page.reload()
    page.open(yard.records.every(Lot)[1].id)
    assert detail.fills.isVisible()
    assert not detail.no_fills.isVisible()
    yard.start(lot)
    page.reload()
    page.open(lot.id)
    assert f"Press {plain(page.weigh_button)}." in detail.standing_words.text()


def test_the_buttons_beside_keep_their_places_whatever_the_first_one_bears(page: LotsPage, yard: Yard) -> None:
    page.setStyleSheet('QPushButton { padding: 7px 16px; } QPushButton[kind="main"] { font-weight: 600; }')
    yard.lot("A")
    weighed_lot(yard, "B")
    yard.start(yard.lot("C"))
    page.reload()
    seen = set()
    for lot in yard.records.every(Lot):
        page.open(lot.id)
        QCoreApplication.processEvents()
        seen.add((page.weigh_button.text(), page.correct_button.x()))
    assert len(seen) == 3
    assert len({x for _, x in seen}) == 1


def test_where_no_lot_fits_the_detail_says_so(page: LotsPage, yard: Yard) -> None:
    yard.lot("A")
    page.reload()
    page.search.setText("zzz")
    assert page.detail.nothing.text().startswith(f"Press {plain(page.show_all_button)} and choose a lot")
    page.show_all_button.click()
    assert not page.detail.nothing.isVisible()
    assert page.detail.heading.text().startswith("A")


def plain(button: QAbstractButton) -> str:
    return button.text().replace("&", "")


def test_a_lot_is_added_by_keyboard(qtbot: QtBot, page: LotsPage, empty_desk: Desk) -> None:
    page.start_new()
    form = page.form
    assert form.number.line.hasFocus()
    qtbot.keyClicks(form.number.line, "25-0302A")
    qtbot.keyClick(form.number.line, Qt.Key.Key_Return)
    assert form.product.line.hasFocus()
    qtbot.keyClicks(form.product.line, "20-20 replacer")
    type_in(qtbot, form.made_on.line, "2/14/2026")
    type_in(qtbot, form.count.line, "40")
    type_in(qtbot, form.mass.line, "50 lb")
    type_in(qtbot, form.parts["protein_pct"].line, "20")
    page.keep()
    (lot,) = empty_desk.records.every(Lot)
    assert (lot.lot_number, lot.product) == ("25-0302A", "20-20 replacer")
    assert (lot.made_on, lot.arrived_on) == (date(2026, 2, 14), date(2026, 3, 2))
    assert (lot.package_count, lot.package_mass_typed) == (40, "50 lb")
    assert lot.package_mass_g == pytest.approx(50 * 453.59237)  # NIST SP 811, appendix B
    assert (lot.composition.protein_pct, lot.composition.fat_pct) == (20.0, None)
    assert page.stack.currentIndex() == 0
    assert page.chosen is not None
    assert page.chosen.lot == lot


@pytest.mark.parametrize(
    ("field", "text", "word"),
    [
        ("made_on", "2/3/2026", "two ways"),
        ("arrived_on", "5 Mar 2026", "still to come"),
        ("mass", "50 qt", "volume"),
        ("count", "-4", "below zero"),
    ],
)
def test_what_cannot_be_meant_is_said_and_stays(
    qtbot: QtBot, page: LotsPage, empty_desk: Desk, field: str, text: str, word: str
) -> None:
    page.start_new()
    type_in(qtbot, page.form.number.line, "A1")
    wrong: Any = getattr(page.form, field)
    type_in(qtbot, wrong.line, text)
    page.keep()
    assert empty_desk.records.every(Lot) == []
    assert word in wrong.message
    assert wrong.line.text() == text


def test_the_form_opens_at_its_top_however_it_was_left(page: LotsPage, qtbot: QtBot) -> None:
    page.resize(1024, 420)
    page._show_form()
    bar = page._form_area.verticalScrollBar()
    qtbot.waitUntil(lambda: bar.maximum() > 0)
    bar.setValue(bar.maximum())
    page._go_back()
    page._show_form()
    qtbot.wait(0)
    assert bar.value() == 0


def test_a_lot_without_a_number_is_not_kept(page: LotsPage, empty_desk: Desk) -> None:
    page.start_new()
    page.keep()
    assert empty_desk.records.every(Lot) == []
    assert page.form.number.message


def test_contradictions_are_said(qtbot: QtBot, page: LotsPage, empty_desk: Desk) -> None:
    page.start_new()
    type_in(qtbot, page.form.number.line, "A1")
    type_in(qtbot, page.form.arrived_on.line, "1 Feb 2026")
    type_in(qtbot, page.form.made_on.line, "2 Feb 2026")
    page.keep()
    assert "after it arrived" in page.form._trouble.text()
    type_in(qtbot, page.form.made_on.line, "")
    page.form.made_on.line.clear()
    type_in(qtbot, page.form.parts["protein_pct"].line, "60")
    type_in(qtbot, page.form.parts["fat_pct"].line, "50")
    page.keep()
    assert "100 %" in page.form._trouble.text()
    assert empty_desk.records.every(Lot) == []


def test_a_double_number_opens_the_lot_that_has_it(
    qtbot: QtBot, page: LotsPage, yard: Yard, empty_desk: Desk, answers: Any
) -> None:
    first = yard.lot("25-0302A")
    page.reload()
    page.start_new()
    type_in(qtbot, page.form.number.line, "25-0302 a")
    page.keep()
    assert len(empty_desk.records.every(Lot)) == 1
    assert "25-0302A" in answers.asked[-1]
    assert page.stack.currentIndex() == 0
    assert page.chosen is not None
    assert page.chosen.lot == first


def test_a_correction_is_a_new_telling(qtbot: QtBot, page: LotsPage, yard: Yard, empty_desk: Desk) -> None:
    lot = yard.lot("A")
    page.reload()
    page.open(lot.id)
    page.correct()
    type_in(qtbot, page.form.product.line, "22-15 grower")
    page.keep()
    assert empty_desk.records.find(Lot, lot.id).product == "22-15 grower"
    assert len(empty_desk.records.history(Lot, lot.id)) == 2
    page.open(lot.id)
    assert "product – → “22-15 grower”" in "\n".join(
        page.detail.history._lines.itemAt(place).widget().text()  # type: ignore[union-attr]
        for place in range(page.detail.history._lines.count())
    )


def test_what_is_typed_is_there_on_return(qtbot: QtBot, page: LotsPage, empty_desk: Desk) -> None:
    page.start_new()
    type_in(qtbot, page.form.number.line, "half")
    assert page.leave()
    page.hide()
    empty_desk.changed.emit()
    page.show()
    page.open("")
    assert page.stack.currentIndex() == 1
    assert page.form.number.text() == "half"
    assert page.pending()
    page.start_new()
    assert page.form.number.text() == "half"


def test_the_search_follows_the_typing(qtbot: QtBot, page: LotsPage, yard: Yard) -> None:
    yard.records.keep(replace(yard.lot("A1"), product="grower"))
    weighed_lot(yard, "B2")
    page.reload()
    qtbot.keyClicks(page.search, "GROW")
    assert numbers(page) == ["A1"]
    assert page.chosen is not None
    assert page.chosen.lot.lot_number == "A1"
    type_in(qtbot, page.search, "in use")
    assert numbers(page) == ["B2"]
    type_in(qtbot, page.search, "nothing like it")
    assert numbers(page) == []
    assert not page.weigh_button.isEnabled()
    page.search.clear()
    assert len(numbers(page)) == 2


def test_days_are_sorted_as_days(page: LotsPage, yard: Yard) -> None:
    for number, day in (("A", date(2026, 2, 10)), ("B", date(2025, 12, 3)), ("C", date(2026, 1, 20))):
        yard.records.keep(replace(yard.lot(number), arrived_on=day))
    page.reload()
    assert numbers(page) == ["A", "C", "B"]
    page.table.sortByColumn(2, Qt.SortOrder.AscendingOrder)
    assert numbers(page) == ["B", "C", "A"]


def test_the_newest_come_first_and_the_arrow_says_so(qtbot: QtBot, page: LotsPage, yard: Yard) -> None:
    for number, day in (("A", date(2026, 2, 10)), ("B", date(2025, 12, 3)), ("C", date(2026, 1, 20))):
        yard.records.keep(replace(yard.lot(number), arrived_on=day))
    page.reload()
    header = page.table.horizontalHeader()

    def press(section: int) -> list[str]:
        at = QPoint(header.sectionViewportPosition(section) + 8, header.height() // 2)
        qtbot.mouseClick(header.viewport(), Qt.MouseButton.LeftButton, pos=at)
        return numbers(page)

    assert numbers(page) == ["A", "C", "B"]
    assert header.isSortIndicatorShown()
    assert (header.sortIndicatorSection(), header.sortIndicatorOrder()) == (ARRIVED, Qt.SortOrder.DescendingOrder)
    assert press(ARRIVED) == ["B", "C", "A"]
    assert press(0) == ["A", "B", "C"]
    assert press(ARRIVED) == ["A", "C", "B"]


def test_the_detail_tells_figures_and_struck_fills(page: LotsPage, yard: Yard) -> None:
    lot = yard.records.keep(replace(weighed_lot(yard, "A"), medicated=True))
    page.reload()
    page.open(lot.id)
    assert page.detail.caution.isVisible()
    assert "veterinarian" in page.detail.caution.text()
    model = page.detail.fills_model
    rows = [[model.index(row, col).data() for col in range(model.columnCount())] for row in range(model.rowCount())]
    assert [row[2] for row in rows] == ["12.0 oz", "13.0 oz", "12.03 oz"]
    assert rows[1][5] == "spilled some"
    assert rows[2][0] == "spot fill"
    told = [block.accessibleName() for block in page.detail.findChildren(FigureBlock)]
    assert "Red, struck level: 12.0 oz" in told[0]
    assert told[1].startswith("Bulk density: 17.06 oz/qt. 17.06 ± 0.20 oz/qt (0.511 g/mL)")
    assert told[2].startswith("Red, line down the wall: 1 1/4 in")


@pytest.mark.parametrize(
    ("arrived", "made", "told"),
    [
        (date(2026, 2, 10), date(2026, 1, 20), "Arrived Feb 10, 2026. Made Jan 20, 2026."),
        (date(2026, 2, 10), None, "Arrived Feb 10, 2026."),
        (None, date(2026, 1, 20), "Made Jan 20, 2026."),
    ],
)
def test_the_detail_tells_the_days_that_are_known(
    page: LotsPage, yard: Yard, arrived: date | None, made: date | None, told: str
) -> None:
    lot = yard.records.keep(replace(yard.lot("A"), arrived_on=arrived, made_on=made))
    page.reload()
    page.open(lot.id)
    assert page.detail.about.text().splitlines()[0] == told


def test_finished_and_back(page: LotsPage, yard: Yard, empty_desk: Desk, answers: Any) -> None:
    lot = yard.lot("A")
    page.reload()
    page.open(lot.id)
    answers.yes = False
    page.finished_button.click()
    assert empty_desk.records.find(Lot, lot.id).finished_on is None
    answers.yes = True
    page.finished_button.click()
    assert empty_desk.records.find(Lot, lot.id).finished_on == date(2026, 3, 2)
    assert not page.finished_button.isEnabled()
    page.use_button.click()
    assert empty_desk.records.find(Lot, lot.id).finished_on is None


def test_weigh_in_leads_to_the_weigh_in_of_that_lot(qtbot: QtBot, page: LotsPage, yard: Yard, empty_desk: Desk) -> None:
    lot = yard.lot("A")
    page.reload()
    page.open(lot.id)
    with qtbot.waitSignal(empty_desk.go_to) as asked:
        page.weigh_button.click()
    assert asked.args == ["weigh_in", lot.id]


@pytest.mark.parametrize(("typed", "price"), [("68.50", 68.5), ("$68.50", 68.5), (" 71 $ ", 71.0), ("", None)])
def test_what_stands_on_the_bag_and_what_it_cost_is_kept_as_typed(
    qtbot: QtBot, page: LotsPage, desk: Desk, typed: str, price: float | None
) -> None:
    page.start_new()
    form = page.form
    for field, text in (
        (form.number, "26-0811B"), (form.supplier, "The Mill"), (form.plant_code, "P2"), (form.price, typed)
    ):  # fmt: skip
        qtbot.keyClicks(field.line, text)
    form.agglomerated.setCurrentIndex(form.agglomerated.findData(True))
    page.keep()
    kept = desk.records.every(Lot)[-1]
    assert (kept.supplier, kept.plant_code, kept.agglomerated) == ("The Mill", "P2", True)
    assert (kept.price_per_package, kept.price_typed) == (price, typed.strip())
    assert ("$" in page.detail.about.text()) == (price is not None)


@pytest.mark.parametrize("typed", ["cheap", "0", "-3", "68.50.10", "68 70", "EUR 68"])
def test_a_price_that_is_none_is_answered_and_stays(qtbot: QtBot, page: LotsPage, desk: Desk, typed: str) -> None:
    before = len(desk.records.every(Lot))
    page.start_new()
    qtbot.keyClicks(page.form.number.line, "26-0811B")
    qtbot.keyClicks(page.form.price.line, typed)
    page.keep()
    assert len(desk.records.every(Lot)) == before
    assert page.form.price.message
    assert page.form.price.line.text() == typed


def test_lots_are_asked_for_by_product_year_and_state_together(page: LotsPage, yard: Yard, empty_desk: Desk) -> None:
    for number, product, came in (
        ("25-1", "plain", date(2025, 11, 1)),
        ("26-1", "plain", date(2026, 3, 1)),
        ("26-2", "fine", date(2026, 4, 1)),
    ):
        lot = yard.lot(number)
        yard.records.keep(replace(lot, product=product, arrived_on=came))
    done = next(lot for lot in yard.records.every(Lot) if lot.lot_number == "25-1")
    yard.records.keep(replace(done, finished_on=date(2025, 12, 1)))
    empty_desk.changed.emit()
    boxes = page.filters
    boxes.product.setCurrentIndex(boxes.product.findData("plain"))
    assert numbers(page) == ["26-1", "25-1"]
    boxes.year.setCurrentIndex(boxes.year.findData(2025))
    assert numbers(page) == ["25-1"]
    assert not page._none_fits.isVisible()
    boxes.state.setCurrentIndex(boxes.state.findData("delivered"))
    assert numbers(page) == []
    assert page._none_fits.isVisible()
    assert not page.weigh_button.isEnabled()
    empty_desk.changed.emit()
    assert boxes.product.currentData() == "plain"
    page.show_all_button.click()
    assert numbers(page) == ["26-2", "26-1", "25-1"]


@pytest.mark.parametrize("column", range(7))
def test_every_column_sorts_both_ways(page: LotsPage, yard: Yard, empty_desk: Desk, column: int) -> None:
    first = yard.lot("A-1")
    yard.records.keep(
        replace(first, product="alpha", arrived_on=date(2026, 1, 1), package_count=5, finished_on=date(2026, 2, 1))
    )
    weighed = weighed_lot(yard, "B-2")
    yard.records.keep(replace(weighed, product="beta", arrived_on=date(2026, 2, 2), package_count=50))
    empty_desk.changed.emit()
    page.table.sortByColumn(column, Qt.SortOrder.AscendingOrder)
    up = numbers(page)
    page.table.sortByColumn(column, Qt.SortOrder.DescendingOrder)
    assert numbers(page) == up[::-1]
    assert sorted(up) == ["A-1", "B-2"]


def test_density_is_told_in_the_farms_unit_under_its_heading(page: LotsPage, yard: Yard, empty_desk: Desk) -> None:
    weighed_lot(yard, "B-2")
    empty_desk.changed.emit()
    head, across = Qt.ItemDataRole.DisplayRole, Qt.Orientation.Horizontal
    metric = empty_desk.system is UnitSystem.METRIC
    assert page.model.headerData(5, across, head) == ("Density ±, g/mL" if metric else "Density ±, oz/qt")
    assert empty_desk.farm is not None
    yard.records.keep(replace(empty_desk.farm, units=UnitSystem.FARM if metric else UnitSystem.METRIC))
    empty_desk.changed.emit()
    assert page.model.headerData(5, across, head) == ("Density ±, oz/qt" if metric else "Density ±, g/mL")


def test_a_finished_lot_taken_back_into_use_is_the_one_that_is_fed(page: LotsPage, yard: Yard, answers: Any) -> None:
    first, second = weighed_lot(yard, "A1"), weighed_lot(yard, "B2")
    page.reload()
    page.open(first.id)
    assert "To feed it again press Back into use." in page.detail.standing_words.text()

    def states() -> list[str]:
        return [known.state for known in standing(yard.records, yard.farm).lots]

    assert states() == ["left_over", "in_use"]
    page.open(second.id)
    page.finished_button.click()
    assert states() == ["in_use", "finished"]
    page.reload()
    page.open(second.id)
    assert "To feed it again press Back into use." in page.detail.standing_words.text()
    page.use_button.click()
    assert states() == ["left_over", "in_use"]
    page.reload()
    page.open(first.id)
    assert page.weigh_button.text() == "We&igh in again …"  # in its place whatever the lot has come to
    page.use_button.click()  # what is left of it is fed without calling it finished first
    asked = answers.asked[-1]
    assert asked.startswith("Lot A1 will be fed from the next feeding on. From then its lines, labels and wall charts")
    assert "those of lot B2 no more. Its line comes on the scoop again, and its chart up" in asked
    assert "lot B2 are left" in asked or "lot B2 left?" in asked
    assert states() == ["in_use", "left_over"]  # its day stays: what was begun is not unbegun
    page.reload()
    page.open(first.id)
    assert (page.use_button.isEnabled(), page.finished_button.isEnabled()) == (False, True)


def test_bags_counted_today_are_asked_about_before_a_lot_is_finished(
    page: LotsPage, yard: Yard, answers: Any, empty_desk: Desk
) -> None:
    lot = weighed_lot(yard, "A1")
    answers.yes = False
    for left, asked in (
        (PackagesLeft(packages=33, on=date(2026, 3, 2), typed="33"), "33 bags of lot A1 were counted today. Are they"),
        (PackagesLeft(packages=1, on=date(2026, 3, 2), typed="1"), "1 bag of lot A1 was counted today. Is it used up?"),
        (PackagesLeft(packages=20, on=date(2026, 3, 1), typed="20"), "By count and plans about 20 bags of lot A1 are"),
        (PackagesLeft(packages=0, on=date(2026, 3, 2), typed="0"), "Was the last of lot A1 fed?"),
    ):
        lot = yard.records.keep(replace(lot, package_mass_g=22_680.0, packages_left=left))
        page.reload()
        page.open(lot.id)
        page.finished_button.click()
        assert answers.asked[-1].startswith(asked)


@pytest.mark.parametrize("language", ["en", "es"])
def test_the_filters_say_whole_what_they_ask_for(qtbot: QtBot, yard: Yard, empty_desk: Desk, language: str) -> None:
    yard.lot("25-1")
    with speaking(language):
        page = LotsPage(empty_desk)
        qtbot.addWidget(page)
        page.resize(828, 700)
        page.show()
        page.reload()
        boxes = page.filters
        shown = [shown_text(box) for box in (boxes.product, boxes.year, boxes.state)]
        assert shown == [box.currentText() for box in (boxes.product, boxes.year, boxes.state)]
        assert page.search.width() > page.filters.product.width() / 2


def test_a_long_lot_number_leaves_room_for_the_product(page: LotsPage, yard: Yard, empty_desk: Desk) -> None:
    yard.records.keep(replace(yard.lot("25-1 from the north plant, line 4, second shift"), product="plain 20/20"))
    page.resize(828, 700)
    empty_desk.changed.emit()
    header = page.table.horizontalHeader()
    assert header.sectionSize(1) >= header.sectionSizeHint(1)
    assert page.table.horizontalScrollBar().maximum() == 0


def test_enter_on_a_row_does_what_its_lit_button_does(qtbot: QtBot, page: LotsPage, yard: Yard) -> None:
    lot = yard.records.keep(Lot(id=new_id(), farm_id=yard.farm.id, lot_number="26-0301A"))
    page.reload()
    page.open(lot.id)
    with qtbot.waitSignal(page.desk.go_to) as went:
        qtbot.keyClick(page.table, Qt.Key.Key_Return)
    assert went.args == ["weigh_in", lot.id]


def test_the_example_of_a_price_has_the_farms_currency(page: LotsPage) -> None:
    farm = page.desk.farm
    assert farm is not None
    page.desk.keep(replace(farm, currency="£"))
    page.start_new()
    assert page.form.price.line.placeholderText() == "£68.50"


def test_a_price_in_doubt_is_asked_about_in_the_room_there_is(qtbot: QtBot, page: LotsPage) -> None:
    page.resize(1024, 700)
    page.show()
    page.start_new()
    field = page.form.price
    qtbot.keyClicks(field.line, "1,250")
    assert not field.understood()
    assert field.message == "“1,250” can be 1250 or 1.25. Write the one that is meant."
    (said,) = field.findChildren(Saying)
    assert said.fits  # no bubble over the next field
    field.set_text("$1,250.00")
    assert field.understood()
    assert field.message == "$1,250.00"
    field.set_text("1,250.00 CHF")
    assert not field.understood()
    assert field.message == "Prices are in $ here. Write the number alone; Set-up changes the currency."


def test_a_lot_no_longer_fed_says_what_finished_is_for(page: LotsPage, yard: Yard) -> None:
    first = weighed_lot(yard, "26-0811B")
    second = weighed_lot(yard, "26-0812C")
    yard.records.keep(replace(second, fed_from=date(2026, 3, 3)))
    page.reload()
    page.open(first.id)
    assert page.detail.state.text() == "put aside"
    assert "Press Finished once none of this one is left." in page.detail.standing_words.text()
