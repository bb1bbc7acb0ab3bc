"""What is wrong with a cell of a foreign table, and what to do: told with row, column and the text found."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date

from PySide6.QtCore import QCoreApplication

from calibrator.desk.speech import day_text
from calibrator.values import dataclass

translate = QCoreApplication.translate


@dataclass(frozen=True)
class Fault:
    """Row as the spreadsheet numbers it, from 1; the column's heading; what stands there; what to do about it."""

    row: int
    column: str
    found: str
    words: str


def no_lot() -> str:
    return translate("BringIn", "The lot number is missing. Write it, or say that an empty cell means the one above.")


def two_lots() -> str:
    return translate(
        "BringIn", "Two lots of the records have this number. Correct one of them on the page of the lots."
    )


def not_alike(row: int, other: str) -> str:
    text = translate("BringIn", "Row {row} tells {other} for the same lot. Make both alike.")
    return text.format(row=row, other=other)


def unworked() -> str:
    return translate(
        "BringIn",
        "The spreadsheet has no value here: a formula that was not worked out, or an error. Correct it there and save "
        "the file anew.",
    )


def day_words(code: str, days: Sequence[date]) -> str:
    """Why a cell is no day."""
    if code == "two_ways":
        text = translate("BringIn", "This can be {one} or {other}. Choose the order of this column's days.")
        return text.format(one=day_text(days[0]), other=day_text(days[-1]))
    if code == "to_come":
        return translate("BringIn", "This day is still to come. Correct it in the file.")
    if code == "too_early":
        return translate("BringIn", "This day is before the year 2000. Correct it in the file.")
    if code == "no_such_day":
        return translate(
            "BringIn", "There is no such day in the chosen order. Correct it in the file, or choose another order."
        )
    return translate("BringIn", "This is no day. Write it like 2026-03-02.")


def no_day() -> str:
    return translate("BringIn", "The day is missing. Write when it was weighed.")


def no_clock() -> str:
    return translate("BringIn", "This is no time of day. Write it like 14:30, or leave it empty.")


def no_number() -> str:
    return translate("BringIn", "This is no number. Write one, or leave the cell empty.")


def not_whole(lowest: int, highest: int) -> str:
    text = translate("BringIn", "This should be a whole number from {lowest} to {highest}.")
    return text.format(lowest=lowest, highest=f"{highest:,}")


def no_yes() -> str:
    return translate("BringIn", "Write yes or no, or leave the cell empty.")


def no_way() -> str:
    return translate("BringIn", "This does not say how the scoop was filled. Write level, to the line or tapped.")


def no_package() -> str:
    return translate("BringIn", "This is no kind of package. Write bag or tote.")


def a_share() -> str:
    return translate("BringIn", "That is less than one percent. Where a fifth is meant, write 20.")


def tare_too_heavy() -> str:
    return translate("BringIn", "The empty scoop weighs more than the filled one. Correct one of the two.")


def no_tare() -> str:
    return translate("BringIn", "The weight of the empty scoop is missing in this row.")


def made_later() -> str:
    return translate("BringIn", "The lot was made after it arrived. Correct one of the two days.")


def fed_early() -> str:
    return translate("BringIn", "The lot was fed before it was made or arrived. Correct one of the days.")


def finished_early() -> str:
    return translate("BringIn", "The lot was used up before it arrived or was fed. Correct one of the days.")


def weighed_early(here: date) -> str:
    text = translate("BringIn", "The lot was weighed before it was made or arrived, on {day}. Correct one of the days.")
    return text.format(day=day_text(here))


def over_whole() -> str:
    return translate("BringIn", "Protein, fat, fiber, ash and moisture together are more than 100 %. Correct them.")


def no_powder(light: bool) -> str:
    if light:
        return translate("BringIn", "No scoopful of this scoop is as light as that. Look at the unit and the scoop.")
    return translate("BringIn", "No powder is as heavy as that in this scoop. Look at the unit and the scoop.")


def over_capacity() -> str:
    return translate("BringIn", "That is more than the chosen scale weighs. Look at the unit and the scale.")


def too_long(most: int) -> str:
    return translate("BringIn", "This is longer than {most} letters. Shorten it in the file.").format(most=most)


def no_letter() -> str:
    return translate("BringIn", "There is a letter in it that cannot be kept. Write it anew.")
