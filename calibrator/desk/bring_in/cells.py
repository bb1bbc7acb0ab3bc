"""One cell as what its column means, or a fault. Nothing is guessed: what a column leaves open was settled before."""

from __future__ import annotations

import re
from collections.abc import Callable
from datetime import date, datetime
from functools import lru_cache
from typing import Any

from calibrator.desk.bring_in import faults
from calibrator.desk.bring_in.choices import Choices
from calibrator.desk.bring_in.orders import clock_in, day_in, text_of, with_point
from calibrator.desk.days import EARLIEST_YEAR, DayNotUnderstood
from calibrator.desk.forms.lot_form import MOST_PACKAGES
from calibrator.desk.money import read_price
from calibrator.desk.widgets.unit_sentences import sentence
from calibrator.model import FillWay, PackageKind, UnitSystem
from calibrator.records.foreign.table import CellError, Value
from calibrator.records.plain import NotPlain, to_plain
from calibrator.units import Kind, NotUnderstood, Quantity, read

_LEVEL = "level|struck|struck level|struck off|leveled|al ras|ras|nivelado|raso"
_TO_MARK = "to_mark|to mark|to the mark|mark|to the line|line|to line|a la linea|a la línea|hasta la línea|línea|marca"
_TAPPED = "tapped|packed|golpeado|golpeada|apretado"
_WAYS = {
    word: way
    for way, words in ((FillWay.LEVEL, _LEVEL), (FillWay.TO_MARK, _TO_MARK), (FillWay.TAPPED, _TAPPED))
    for word in words.split("|")
}
_YES = dict.fromkeys(("yes", "y", "x", "true", "1", "sí", "si", "s", "verdadero", "✓"), True)
_NO = dict.fromkeys(("no", "n", "false", "0", "falso", "-"), False)
_PACKAGES = dict.fromkeys(("bag", "bags", "saco", "sacos", "costal", "costales"), PackageKind.BAG)
_PACKAGES |= dict.fromkeys(("tote", "totes", "súper saco", "super saco", "supersaco"), PackageKind.TOTE)
LONGEST_NAME, LONGEST_NOTE, LONGEST_BY = 80, 300, 12
MOST_BAG, MOST_SCOOPFULS = 999, 20
_GRAMS_AT_MOST = 1e6
_FARM_UNITS = ("oz", "lb", "in")


class NotTaken(ValueError):
    """A cell that cannot be taken; the sentence says what to do."""


Reader = Callable[[Value, int, Choices], Any]


def words(cell: Value, most: int = LONGEST_NAME) -> str:
    """A text of one line. Raises NotTaken."""
    _refuse_error(cell)
    told = " ".join(text_of(cell).split())
    if len(told) > most:
        raise NotTaken(faults.too_long(most))
    try:
        to_plain(told)
    except NotPlain:
        raise NotTaken(faults.no_letter()) from None
    return told


def note(cell: Value, _column: int, _asked: Choices) -> str:
    return words(cell, LONGEST_NOTE)


def person(cell: Value, _column: int, _asked: Choices) -> str:
    return words(cell, LONGEST_BY)


def moment(cell: Value, column: int, asked: Choices, today: date) -> date | datetime:
    """A day, with its time where the cell has one. Raises NotTaken."""
    _refuse_error(cell)
    try:
        found = day_in(cell, asked.orders.get(column), bool(asked.from_1904))
    except DayNotUnderstood as error:
        raise NotTaken(faults.day_words(error.code, error.days)) from None
    day = found.date() if isinstance(found, datetime) else found
    if day > today:
        raise NotTaken(faults.day_words("to_come", ()))
    if day.year < EARLIEST_YEAR:
        raise NotTaken(faults.day_words("too_early", ()))
    return found


def day(cell: Value, column: int, asked: Choices, today: date) -> date:
    found = moment(cell, column, asked, today)
    return found.date() if isinstance(found, datetime) else found


def clock(cell: Value) -> tuple[int, int]:
    """Hours and minutes. Raises NotTaken."""
    found = clock_in(cell)
    if found is None:
        raise NotTaken(faults.no_clock())
    return found


def mass(cell: Value, column: int, asked: Choices) -> Quantity:
    """A weight in the unit of its column, or in its own. Raises NotTaken."""
    return _quantity(cell, column, asked, Kind.MASS)


def length(cell: Value, column: int, asked: Choices) -> Quantity:
    return _quantity(cell, column, asked, Kind.LENGTH)


def percent(cell: Value, column: int, asked: Choices, lowest: float = 0.0) -> float:
    """A share of the powder in percent. Raises NotTaken."""
    _refuse_error(cell)
    found = _understood(_number_text(cell, column, asked), Kind.PERCENT, "%", 0.0)
    if 0 < found.value < lowest:
        raise NotTaken(faults.a_share())
    return found.value


def count(cell: Value, column: int, asked: Choices, highest: int = MOST_PACKAGES) -> int:
    """A whole number from 1. Raises NotTaken."""
    _refuse_error(cell)
    text = _number_text(cell, column, asked)
    told = re.fullmatch(r"(\d{1,9})(\.0*)?", text)
    if told is None or not 1 <= int(told[1]) <= highest:
        raise NotTaken(faults.not_whole(1, highest))
    return int(told[1])


def price(cell: Value, column: int, asked: Choices, currency: str) -> float:
    """What a package costs. Raises NotTaken."""
    _refuse_error(cell)
    bare = text_of(cell).strip().removeprefix(currency).removesuffix(currency).strip()
    try:
        return read_price(with_point(bare, asked.decimals.get(column, ".")), currency)
    except NotUnderstood:
        raise NotTaken(faults.no_number()) from None


def yes(cell: Value, _column: int, _asked: Choices) -> bool:
    return bool(_one_of(cell, _YES | _NO, faults.no_yes()))


def way(cell: Value, _column: int, _asked: Choices) -> FillWay:
    return FillWay(_one_of(cell, _WAYS, faults.no_way()))


def package(cell: Value, _column: int, _asked: Choices) -> PackageKind:
    return PackageKind(_one_of(cell, _PACKAGES, faults.no_package()))


def _one_of(cell: Value, known: dict[str, Any], fault: str) -> Any:
    _refuse_error(cell)
    told = text_of(cell).casefold()
    if told not in known:
        raise NotTaken(fault)
    return known[told]


def _quantity(cell: Value, column: int, asked: Choices, kind: Kind) -> Quantity:
    _refuse_error(cell)
    found = _understood(_number_text(cell, column, asked), kind, asked.units.get(column, ""), None)
    if found.value > _GRAMS_AT_MOST:
        raise NotTaken(faults.no_number())
    return found


def _number_text(cell: Value, column: int, asked: Choices) -> str:
    if isinstance(cell, bool | date):
        raise NotTaken(faults.no_number())
    if not isinstance(cell, str):  # how a column writes its numbers is a question of its texts alone
        return text_of(cell)
    return with_point(text_of(cell), asked.decimals.get(column, "."))


@lru_cache(maxsize=8192)
def _understood(text: str, kind: Kind, unit: str, lowest: float | None) -> Quantity:
    system = UnitSystem.FARM if unit in _FARM_UNITS else UnitSystem.METRIC  # an example is told in the column's own
    try:
        return read(text, kind, system, default_unit=unit or None, lowest=lowest)
    except NotUnderstood as error:
        raise NotTaken(sentence(error)) from None


def _refuse_error(cell: Value) -> None:
    if isinstance(cell, CellError):
        raise NotTaken(faults.unworked())
