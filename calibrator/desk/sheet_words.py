"""How outdated sheets are told, and each printed sheet by itself."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QCoreApplication

from calibrator.desk.counted import counted
from calibrator.model import Plan, Printed, PrintKind, Scoop
from calibrator.records import Records

translate = QCoreApplication.translate


def outdated_words(records: Records, sheets: Sequence[Printed]) -> str:
    """ "2 scoops still bear the old line: Red scoop (label 3), Blue scoop (label 4)." for sheets of one kind."""
    told = ", ".join(sheet_words(records, sheet) for sheet in sheets)
    by_kind = {
        PrintKind.SCOOP_LABEL: counted.scoops_with_old_line,
        PrintKind.WALL_CHART: counted.charts_out_of_date,
        PrintKind.LOT_SHEET: counted.lot_sheets_out_of_date,
    }
    return by_kind[sheets[0].kind](len(sheets)).format(sheets=told)


def sheet_words(records: Records, sheet: Printed) -> str:
    """What a sheet is of, with its number."""
    if sheet.kind is PrintKind.WALL_CHART:
        name = records.find(Plan, sheet.plan_id).name if sheet.plan_id else translate("SheetWords", "wall chart")
        return translate("SheetWords", "{name} (wall chart, sheet no. {number})").format(name=name, number=sheet.number)
    name = records.find(Scoop, sheet.scoop_id).name if sheet.scoop_id else translate("SheetWords", "scoop")
    if sheet.kind is PrintKind.LOT_SHEET:
        return translate("SheetWords", "{name} (lot sheet, sheet no. {number})").format(name=name, number=sheet.number)
    return translate("SheetWords", "{name} (label, sheet no. {number})").format(name=name, number=sheet.number)
