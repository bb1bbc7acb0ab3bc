"""The words of the dialog: what columns can mean, what is still to be said, what a file comes to."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication

from calibrator.desk.bring_in.choices import Ask, Bags, Question
from calibrator.desk.bring_in.judging import Judged
from calibrator.desk.bring_in.meanings import Meaning, column_name
from calibrator.desk.bring_in.orders import DayOrder, Settled
from calibrator.desk.counted import counted
from calibrator.model import FillWay

translate = QCoreApplication.translate


def meaning_words() -> dict[Meaning, str]:
    """What a column can mean, in the order of the choice."""
    return {
        Meaning.NOTHING: translate("BringIn", "leave out"),
        Meaning.LOT: translate("BringIn", "Lot number"),
        Meaning.PRODUCT: translate("BringIn", "Product"),
        Meaning.SUPPLIER: translate("BringIn", "Supplier"),
        Meaning.PLANT: translate("BringIn", "Plant code"),
        Meaning.ARRIVED: translate("BringIn", "Day it arrived"),
        Meaning.MADE: translate("BringIn", "Day it was made"),
        Meaning.FED_FROM: translate("BringIn", "First day fed"),
        Meaning.FINISHED: translate("BringIn", "Last day fed"),
        Meaning.PACKAGE: translate("BringIn", "Bag or tote"),
        Meaning.PACKAGES: translate("BringIn", "How many bags came"),
        Meaning.PACKAGE_MASS: translate("BringIn", "Weight of a bag"),
        Meaning.PRICE: translate("BringIn", "Price of a bag"),
        Meaning.PROTEIN: translate("BringIn", "Protein, %"),
        Meaning.FAT: translate("BringIn", "Fat, %"),
        Meaning.FIBRE: translate("BringIn", "Fiber, %"),
        Meaning.ASH: translate("BringIn", "Ash, %"),
        Meaning.MOISTURE: translate("BringIn", "Moisture, %"),
        Meaning.MEDICATED: translate("BringIn", "Medicated, yes or no"),
        Meaning.AGGLOMERATED: translate("BringIn", "Agglomerated, yes or no"),
        Meaning.NOTE: translate("BringIn", "Note on the lot"),
        Meaning.WHEN: translate("BringIn", "Day of the weighing"),
        Meaning.CLOCK: translate("BringIn", "Time of the weighing"),
        Meaning.SCOOP: translate("BringIn", "Scoop"),
        Meaning.BAG: translate("BringIn", "Number of the bag"),
        Meaning.WAY: translate("BringIn", "How it was filled"),
        Meaning.NET: translate("BringIn", "Weight of the powder"),
        Meaning.GROSS: translate("BringIn", "Weight of the filled scoop"),
        Meaning.TARE: translate("BringIn", "Weight of the empty scoop"),
        Meaning.TYPED: translate("BringIn", "Weight as it was typed"),
        Meaning.SCOOPFULS: translate("BringIn", "Scoopfuls weighed together"),
        Meaning.LINE: translate("BringIn", "Line, below the rim"),
        Meaning.BY: translate("BringIn", "Who weighed"),
        Meaning.STRUCK: translate("BringIn", "Why it does not count"),
        Meaning.SESSION: translate("BringIn", "Name of the weigh-in"),
    }


def order_words() -> dict[DayOrder, str]:
    return {
        DayOrder.DAY_MONTH: translate("BringIn", "day, month, year"),
        DayOrder.MONTH_DAY: translate("BringIn", "month, day, year"),
        DayOrder.YEAR_FIRST: translate("BringIn", "year, month, day"),
    }


def decimal_words() -> dict[str, str]:
    return {
        ".": translate("BringIn", "decimal point"),
        ",": translate("BringIn", "decimal comma"),
    }


def way_words() -> dict[FillWay, str]:
    return {
        FillWay.LEVEL: translate("BringIn", "struck level"),
        FillWay.TO_MARK: translate("BringIn", "to the line"),
        FillWay.TAPPED: translate("BringIn", "packed by taps"),
    }


def bags_words() -> dict[Bags, str]:
    return {
        Bags.ONE: translate("BringIn", "all fills of a day from one bag"),
        Bags.OWN: translate("BringIn", "each fill from another bag"),
    }


def settled_words(found: Settled, heading: bool = True) -> str:
    """Which cell leaves only one way to read a column; blank where none had to."""
    if not found.answer or found.row is None:
        return ""
    return translate("BringIn", "Row {row} settles it: {text}").format(row=found.row + 1, text=found.text)


def question_words(question: Question, heads: tuple[str, ...]) -> str:
    """One thing that is still to be said."""
    head = ""
    if question.column >= 0:
        head = heads[question.column] or column_name(question.column)
    told = {
        Ask.LOT: translate("BringIn", "Say which column is the lot number."),
        Ask.WEIGHT: translate(
            "BringIn",
            "Days and bags are told, but no weight. Say which column is the weight, or leave out the bag.",
        ),
        Ask.WHEN: translate("BringIn", "Say which column is the day of the weighing."),
        Ask.UNIT: translate("BringIn", "Say in which unit “{head}” is."),
        Ask.ORDER: translate("BringIn", "Say in which order the days of “{head}” are written."),
        Ask.DECIMAL: translate("BringIn", "Say which sign “{head}” has before the decimals."),
        Ask.EPOCH: translate("BringIn", "Say from which year the days are counted."),
        Ask.WAY: translate("BringIn", "Say how the scoop was filled."),
        Ask.BAGS: translate("BringIn", "Say from how many bags the fills came."),
        Ask.SCOOP: translate("BringIn", "Say which scoop “{head}” is."),
        Ask.SCALE: translate("BringIn", "Say on which scale it was weighed."),
        Ask.TARE: translate("BringIn", "Type what the empty scoop weighs."),
        Ask.BY: translate("BringIn", "Say who weighed, or who brings this in."),
    }
    if question.ask is Ask.SCOOP and not question.name:
        return translate("BringIn", "Say which scoop was weighed.")
    return told[question.ask].format(head=question.name or head)


def outcome_words(judged: Judged) -> str:
    """What a file comes to, in a few sentences."""
    if judged.faults:
        told = [counted.cells_to_mend(len(judged.faults))]
    elif judged.adds:
        told = [counted.lots_to_add(len(judged.past.lots)), counted.fills_to_add(len(judged.past.fills))]
    else:
        told = [translate("BringIn", "There is nothing in it that is not in the records already.")]
    if judged.lots_there:
        told.append(counted.lots_there(len(judged.lots_there)))
    if judged.fills_there:
        told.append(counted.fills_there(len(judged.fills_there)))
    if judged.sums:
        text = translate("BringIn", "Rows that add up others are left out: {rows}.")
        told.append(text.format(rows=", ".join(map(str, judged.sums[:12]))))
    if judged.formulas:
        text = translate(
            "BringIn", "Worked out by formulas, taken with the value that the spreadsheet last had: {names}."
        )
        told.append(text.format(names=", ".join(judged.formulas)))
    return " ".join(told)
