"""How outdated sheets are told, and each printed sheet by itself."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication

from calibrator.desk import shown
from calibrator.desk.chart_faults import ChartFault, Fault
from calibrator.desk.counted import counted
from calibrator.desk.standing import Standing
from calibrator.model import Lot, Plan, Printed, PrintKind, Scoop, UnitSystem
from calibrator.records import Records

if TYPE_CHECKING:
    from calibrator.desk.label_lines import LineOffer
    from calibrator.desk.label_news import LabelNews

translate = QCoreApplication.translate


def outdated_words(records: Records, sheets: Sequence[Printed]) -> str:
    """ "The wall chart of Milk (print no. 3) is out of date. …" for sheets of one kind, a sentence for each plan or
    lot."""
    by_kind = {
        PrintKind.WALL_CHART: counted.charts_out_of_date,
        PrintKind.LOT_SHEET: counted.lot_sheets_out_of_date,
    }
    numbers: dict[str, list[str]] = {}
    for sheet in sheets:
        numbers.setdefault(_whose(records, sheet), []).append(str(sheet.number))
    text = by_kind[sheets[0].kind]
    return " ".join(text(len(own)).format(name=name, numbers=", ".join(own)) for name, own in numbers.items())


def _whose(records: Records, sheet: Printed) -> str:
    """The plan of a chart, the lot of any other sheet."""
    if sheet.kind is PrintKind.WALL_CHART:
        return records.find(Plan, sheet.plan_id).name if sheet.plan_id else "–"
    return records.find(Lot, sheet.lot_id).lot_number


def chart_words(now: Standing, found: ChartFault, lot: Lot) -> str:
    """What is wrong with the wall chart of a plan, while a lot is in use."""
    texts = {
        Fault.NONE: translate("SheetWords", "No wall chart of {plan} is up for lot {lot}."),
        Fault.LOT: translate(
            "SheetWords", "The wall chart of {plan} (print no. {number}) is of lot {old}; lot {lot} is in use."
        ),
        Fault.LINE: translate(
            "SheetWords", "The wall chart of {plan} (print no. {number}) is older than the last weigh-in of lot {lot}."
        ),
        Fault.SCOOP: translate(
            "SheetWords",
            "The wall chart of {plan} (print no. {number}) was printed before a scoop that it may count by was "
            "retired: take it down.",
        ),
        Fault.LABEL: translate(
            "SheetWords",
            "The wall chart of {plan} (print no. {number}) counts by other lines than the label printed since has.",
        ),
        Fault.CALVES: translate(
            "SheetWords", "The wall chart of {plan} (print no. {number}) has no row for today's calves."
        ),
        Fault.PLAN: translate(
            "SheetWords", "The wall chart of {plan} (print no. {number}) was printed before the plan was changed."
        ),
        Fault.VESSEL: translate(
            "SheetWords", "The wall chart of {plan} (print no. {number}) was printed before its vessel was changed."
        ),
        Fault.SETTINGS: translate(
            "SheetWords",
            "The wall chart of {plan} (print no. {number}) was printed before the farm's units, its step for water or "
            "its tolerance were changed.",
        ),
    }
    old = now.lot(found.sheet.lot_id) if found.sheet else None
    told = texts[found.fault].format(
        plan=found.plan.name,
        lot=lot.lot_number,
        number=found.sheet.number if found.sheet else "",
        old=old.lot.lot_number if old else "–",
    )
    if found.again is None:
        return told
    again = translate("SheetWords", "Print no. {number} of lot {lot} holds: hang it up again if you have it.")
    return f"{told} {again.format(number=found.again.number, lot=lot.lot_number)}"


def label_words(news: LabelNews, system: UnitSystem) -> str:
    """What was planned since a label was printed, and what is to be done about it."""
    text = translate(
        "SheetWords",
        "The label of {scoop} (print no. {number}) is older than the plan for {feedings}. Printed anew it has also: "
        "{added}. Or let it stay.",
    )
    feedings = (f"{shown.mass(offer.target_g, system)} ({', '.join(offer.plans)})" for offer in news.offers)
    added = "; ".join(_added_words(offer, system) for offer in news.offers)
    return text.format(scoop=news.scoop.name, number=news.sheet.number, feedings=", ".join(feedings), added=added)


def _added_words(offer: LineOffer, system: UnitSystem) -> str:
    """What a new label has for a feeding, as it stands on it: a line of its own, which may hold only what level
    scoopfuls leave of the feeding or one of equal ones, or how it is counted by the lines that are there."""
    text, count = translate("SheetWords", "a line for {mass}"), 0
    if offer.counted is not None:
        text, count = translate("SheetWords", "“{mass} = {count} to the line”"), offer.counted.to_main
        if offer.counted.to_half:
            text = translate("SheetWords", "“{mass} = {count} to the line + 1 to ½”")
    elif offer.line.several:
        text = translate("SheetWords", "“{held}: {count} struck at the rim + 1 to here = {mass}”")
        count = offer.line.full_scoops
        if not count:
            text, count = translate("SheetWords", "“{held}: {count} to here = {mass}”"), offer.line.to_line
    held = shown.mass(offer.line.held_g, system)
    return text.format(mass=shown.mass(offer.target_g, system), held=held, count=count)


def sheet_words(records: Records, sheet: Printed) -> str:
    """What a sheet is of, with its number."""
    if sheet.kind is PrintKind.WALL_CHART:
        name = records.find(Plan, sheet.plan_id).name if sheet.plan_id else translate("SheetWords", "wall chart")
        return translate("SheetWords", "{name} (wall chart, print no. {number})").format(name=name, number=sheet.number)
    name = records.find(Scoop, sheet.scoop_id).name if sheet.scoop_id else translate("SheetWords", "scoop")
    if sheet.kind is PrintKind.LOT_SHEET:
        return translate("SheetWords", "{name} (lot sheet, print no. {number})").format(name=name, number=sheet.number)
    return translate("SheetWords", "{name} (label, print no. {number})").format(name=name, number=sheet.number)
