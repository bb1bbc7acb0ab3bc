"""A spreadsheet brought in by the dialog: going back and changing answers, faults, all or nothing, there already."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from pathlib import Path

import pytest
from answers import Answers
from keys import tab_through
from openpyxl import Workbook
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from calibrator.desk.bring_in.choices import Bags
from calibrator.desk.bring_in.dialog import BringInDialog
from calibrator.desk.bring_in.meanings import Meaning
from calibrator.desk.bring_in.orders import DayOrder
from calibrator.desk.bring_in.work import Bringing
from calibrator.desk.context import Desk
from calibrator.desk.forms.records_form import RecordsForm
from calibrator.model import FillWay, Lot, Scale, Scoop, WeighIn
from calibrator.model.underway import Ended, unwatched

Open = Callable[[str], BringInDialog]
FILLS = "Lot,Date,Bag,Weight (oz)\nA-1,3/4/2025,1,11.6\nA-1,3/4/2025,2,11.8\nA-2,5/6/2025,1,12.1\n"


@pytest.fixture
def opened(qtbot: QtBot, desk: Desk, tmp_path: Path) -> Open:
    """Opens the dialog on a text, and waits for it to be read."""

    def open_on(text: str, name: str = "weights.csv") -> BringInDialog:
        file = tmp_path / name
        file.write_text(text, encoding="utf-8")
        assert desk.farm is not None
        work = Bringing(desk.records, desk.farm, file)
        work.look(unwatched)
        dialog = BringInDialog(desk, work)
        qtbot.addWidget(dialog)
        dialog.show()
        return dialog

    return open_on


def wait(qtbot: QtBot, dialog: BringInDialog) -> None:
    qtbot.waitUntil(lambda: not dialog.desk.busy.at_work, timeout=20_000)


def choose(box: object, value: object) -> None:
    """Choose as a person does."""
    place = next(at for at in range(box.count()) if box.itemData(at) == value)  # type: ignore[attr-defined]
    box.setCurrentIndex(place)  # type: ignore[attr-defined]
    box.activated.emit(place)  # type: ignore[attr-defined]


def answer_all(desk: Desk, dialog: BringInDialog, order: DayOrder) -> None:
    """Say what the table of fills leaves open."""
    columns = dialog.columns
    choose(columns.ways["orders", 1], order)
    choose(columns.way, FillWay.LEVEL)
    choose(columns.scoops[""], desk.records.every(Scoop)[0].id)
    columns.by.line.setText("AR")
    columns.by.line.textEdited.emit("AR")


def test_tab_goes_through_the_columns_and_what_came_of_them_before_the_buttons(
    opened: Open, desk: Desk, qtbot: QtBot
) -> None:
    dialog = opened(FILLS)
    dialog.next_button.click()
    answer_all(desk, dialog, DayOrder.MONTH_DAY)
    QApplication.processEvents()
    dialog.cancel_button.setFocus()
    columns = dialog.columns
    way = tab_through(dialog)
    begin = way.index(columns.meanings[0])
    way = [*way[begin:], *way[:begin]]
    asked = [
        *columns.meanings,
        columns.way,
        columns.scale,
        *columns.scoops.values(),
        columns.by.line,
        columns.fill_down,
    ]
    assert [each for each in way if each in asked] == asked
    assert way.index(columns.ways["orders", 1]) == way.index(columns.meanings[1]) + 1
    assert way.index(dialog.next_button) > way.index(columns.fill_down)
    dialog.next_button.click()
    wait(qtbot, dialog)
    QApplication.processEvents()
    dialog.next_button.setFocus()
    way = tab_through(dialog)
    assert way.index(dialog.outcome.tabs.tabBar()) < way.index(dialog.outcome.views[dialog.outcome.lots])


def test_days_of_two_orders_are_asked_and_can_be_changed_on_the_way_back(
    opened: Open, desk: Desk, qtbot: QtBot, answers: Answers
) -> None:
    dialog = opened(FILLS)
    dialog.next_button.click()
    assert not dialog.next_button.isEnabled()
    assert "order the days of “Date”" in dialog.columns.open.text()
    answer_all(desk, dialog, DayOrder.MONTH_DAY)
    assert dialog.columns.open.text().startswith("All is said")
    dialog.next_button.click()
    wait(qtbot, dialog)
    first = dialog.work.judged
    assert first is not None
    assert [one.started_at.date() for one in first.past.weigh_ins] == [date(2025, 3, 4), date(2025, 5, 6)]
    dialog.back_button.click()
    choose(dialog.columns.ways["orders", 1], DayOrder.DAY_MONTH)
    dialog.next_button.click()
    wait(qtbot, dialog)
    assert dialog.outcome.told.text() == "2 new lots. 3 new fills."
    dialog.next_button.click()
    wait(qtbot, dialog)
    kept = desk.records.every(WeighIn)
    assert [one.started_at.date() for one in kept] == [date(2025, 4, 3), date(2025, 6, 5)]
    assert answers.told == ["2 lots were brought in. 3 fills were brought in."]
    assert not dialog.isVisible()
    (told,) = desk.records.history(WeighIn, kept[0].id)
    assert (told.by, told.why) == ("AR", "brought in from weights.csv")
    assert [(fill.bag, fill.typed, fill.by) for fill in desk.records.fills(kept[0].id)] == [
        (1, "11.6 oz", "AR"), (2, "11.8 oz", "AR"),
    ]  # fmt: skip
    assert desk.records.sign_offs(kept[0].farm_id) == []


def test_the_same_file_again_adds_nothing(opened: Open, desk: Desk, qtbot: QtBot) -> None:
    for turn in range(2):
        dialog = opened(FILLS)
        dialog.next_button.click()
        answer_all(desk, dialog, DayOrder.MONTH_DAY)
        dialog.next_button.click()
        wait(qtbot, dialog)
        assert dialog.next_button.isEnabled() is (turn == 0)
        if turn == 0:
            dialog.next_button.click()
            wait(qtbot, dialog)
    assert "nothing in it that is not in the records already" in dialog.outcome.told.text()
    assert "2 lots are there already" in dialog.outcome.told.text()
    assert "3 fills are there already" in dialog.outcome.told.text()
    there = dialog.outcome.there
    assert [there.data(there.index(row, 0)) for row in range(there.rowCount())] == [
        "Lot A-1", "Lot A-2", "The fill of row 2", "The fill of row 3", "The fill of row 4",
    ]  # fmt: skip
    assert dialog.outcome.tabs.tabText(0) == "There already: 5"


def test_faults_are_listed_with_row_and_column_and_nothing_is_added(opened: Open, desk: Desk, qtbot: QtBot) -> None:
    version = desk.records.version()
    dialog = opened(FILLS + "A-2,5/6/2025,1,twelve\n,5/6/2025,1,12\nA-3,31/31/2025,x,12\n")
    dialog.next_button.click()
    answer_all(desk, dialog, DayOrder.MONTH_DAY)
    dialog.next_button.click()
    wait(qtbot, dialog)
    assert not dialog.next_button.isEnabled()
    model = dialog.outcome.faults
    told = [[model.data(model.index(row, at)) for at in range(3)] for row in range(model.rowCount())]
    assert told == [
        ["5", "Weight (oz)", "twelve"], ["6", "Lot", ""], ["7", "Date", "31/31/2025"], ["7", "Bag", "x"],
    ]  # fmt: skip
    assert dialog.outcome.told.text().startswith("4 cells have to be corrected")
    dialog.close()
    assert desk.records.version() == version


def test_a_column_can_be_given_another_meaning(opened: Open, desk: Desk, qtbot: QtBot) -> None:
    dialog = opened("Lot;Got;Merk\nA-1;2025-03-04;x\n")
    dialog.next_button.click()
    assert [box.currentData() for box in dialog.columns.meanings] == [Meaning.LOT, Meaning.NOTHING, Meaning.NOTHING]
    choose(dialog.columns.meanings[1], Meaning.ARRIVED)
    choose(dialog.columns.meanings[2], Meaning.NOTE)
    dialog.next_button.click()
    wait(qtbot, dialog)
    dialog.next_button.click()
    wait(qtbot, dialog)
    lot = desk.records.every(Lot)[-1]
    assert (lot.lot_number, lot.arrived_on, lot.note) == ("A-1", date(2025, 3, 4), "x")


def test_another_heading_row_and_another_separator(opened: Open, qtbot: QtBot) -> None:
    dialog = opened("Weights of 2025\nLot,Note\nLot,a;b\n")
    assert dialog.work.choices.heading == 1
    choose(dialog.table.heading, 2)
    assert dialog.work.choices.heading == 2
    choose(dialog.table.separator, ";")
    wait(qtbot, dialog)
    assert dialog.work.table is not None
    assert dialog.work.table.rows[2] == ("Lot,a", "b")


def test_adding_can_be_ended_and_nothing_is_kept(opened: Open, desk: Desk, qtbot: QtBot, tmp_path: Path) -> None:
    dialog = opened(FILLS)
    dialog.next_button.click()
    answer_all(desk, dialog, DayOrder.MONTH_DAY)
    dialog.next_button.click()
    wait(qtbot, dialog)
    version = desk.records.version()

    def ended(share: float) -> None:
        raise Ended

    with pytest.raises(Ended):
        dialog.work.add(ended)
    assert desk.records.version() == version
    assert len(desk.records.every(Lot)) == 1


def test_the_dialog_opens_by_its_button_and_what_is_no_table_is_told(
    qtbot: QtBot, desk: Desk, answers: Answers, tmp_path: Path
) -> None:
    form = RecordsForm(desk)
    qtbot.addWidget(form)
    answers.path = tmp_path / "weights.csv"
    answers.path.write_bytes(b"\x89PNG\r\n")
    form.table_button.click()
    qtbot.waitUntil(lambda: not desk.busy.at_work)
    assert "neither text in columns nor a workbook" in answers.told[-1]
    answers.path.write_text(FILLS)
    form.table_button.click()
    qtbot.waitUntil(lambda: not desk.busy.at_work)
    (dialog,) = form.findChildren(BringInDialog)
    assert dialog.isVisible()
    dialog.cancel_button.click()
    assert not dialog.isVisible()


def test_bags_and_the_empty_scoop_are_asked(opened: Open, desk: Desk, qtbot: QtBot) -> None:
    dialog = opened("Lot,Date,Gross (g)\nA-1,2025-03-04,450\nA-1,2025-03-04,455\n")
    dialog.next_button.click()
    answered = dialog.columns
    assert "empty scoop weighs" in answered.open.text()
    choose(answered.way, FillWay.LEVEL)
    choose(answered.bags, Bags.OWN)
    choose(answered.scoops[""], desk.records.every(Scoop)[0].id)
    answered.tare.line.setText("120 g")
    answered.tare.line.textEdited.emit("120 g")
    answered.by.line.setText("AR")
    answered.by.line.textEdited.emit("AR")
    assert desk.records.every(Scale)[0].id == dialog.work.choices.scale_id
    dialog.next_button.click()
    wait(qtbot, dialog)
    judged = dialog.work.judged
    assert judged is not None
    assert judged.faults == ()
    assert [(fill.bag, fill.mass_g, fill.typed) for fill in judged.past.fills] == [
        (1, pytest.approx(330), "450 g − 120 g"), (2, pytest.approx(335), "455 g − 120 g"),
    ]  # fmt: skip


def test_of_several_sheets_the_first_table_that_is_known_stands_there_at_once(desk: Desk, tmp_path: Path) -> None:
    book = Workbook()
    book.active.append(["Notes on the season"])
    book.create_sheet("Empty")
    for name, lot in (("Lots", "A-1"), ("Old lots", "B-1")):
        sheet = book.create_sheet(name)
        for cells in (["Lot #", "Brand", "Date rec'd"], [lot, "20-20", date(2025, 3, 4)]):
            sheet.append(cells)
    book.save(tmp_path / "season.xlsx")
    assert desk.farm is not None
    work = Bringing(desk.records, desk.farm, tmp_path / "season.xlsx", "AB")
    work.look(unwatched)
    assert work.sheet == "Lots"
    assert [one.lot_number for one in work.judge(date(2026, 3, 2), unwatched).past.lots] == ["A-1"]


def test_of_sheets_that_tell_nothing_none_is_taken_for_the_table(desk: Desk, tmp_path: Path) -> None:
    book = Workbook()
    book.active.append(["Hello"])
    book.create_sheet("Empty")
    book.save(tmp_path / "notes.xlsx")
    assert desk.farm is not None
    work = Bringing(desk.records, desk.farm, tmp_path / "notes.xlsx", "AB")
    work.look(unwatched)
    assert work.table is None
    dialog = BringInDialog(desk, work)
    assert not dialog.next_button.isEnabled()
    dialog.deleteLater()
