"""What a person settles before a table is judged, as far as the table does not settle it itself."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import field, replace
from enum import StrEnum

from calibrator.desk.bring_in import meanings
from calibrator.desk.bring_in.meanings import DAYS, MASSES, NUMBERS, Meaning
from calibrator.desk.bring_in.orders import DayOrder, Settled, commas, counts_days, day_orders
from calibrator.model import FillWay
from calibrator.records.foreign.table import ForeignTable, Value
from calibrator.units import Kind
from calibrator.values import dataclass


class Bags(StrEnum):
    """Where the fills of a weigh-in came from, when no column tells the bag."""

    ONE = "one"
    OWN = "own"


@dataclass(frozen=True)
class Choices:
    """Answers by column (from 0) or for the whole file; what is missing is asked by `questions`.

    `scoops` gives the id for each scoop's name in the file, blank for one that nobody knows; under the name "" it is
    that of rows without a name.
    """

    heading: int | None = None
    meanings: tuple[Meaning, ...] = ()
    units: Mapping[int, str] = field(default_factory=dict)
    orders: Mapping[int, DayOrder] = field(default_factory=dict)
    decimals: Mapping[int, str] = field(default_factory=dict)
    from_1904: bool | None = None
    way: FillWay | None = None
    bags: Bags | None = None
    scoops: Mapping[str, str] = field(default_factory=dict)
    scale_id: str | None = None  # blank where nobody knows
    tare_g: float | None = None
    tare_typed: str = ""
    fill_down: bool = False
    gr_is_gram: bool = False  # on a metric farm; elsewhere it may be grains, and is asked
    by: str = ""

    @property
    def first(self) -> int:
        """The first row of the table's body."""
        return 0 if self.heading is None else self.heading + 1

    def columns(self, *wanted: Meaning) -> list[int]:
        return [place for place, meaning in enumerate(self.meanings) if meaning in wanted]

    @property
    def weighs(self) -> bool:
        """Whether the table tells weights of fills, and not of lots alone."""
        return bool(self.columns(Meaning.NET, Meaning.GROSS))


class Ask(StrEnum):
    """What can be asked before a table is judged."""

    LOT = "lot"
    WEIGHT = "weight"
    WHEN = "when"
    UNIT = "unit"
    ORDER = "order"
    DECIMAL = "decimal"
    EPOCH = "epoch"
    WAY = "way"
    BAGS = "bags"
    SCOOP = "scoop"
    SCALE = "scale"
    TARE = "tare"
    BY = "by"


@dataclass(frozen=True)
class Question:
    """One thing to settle: of a column, or of a scoop's name."""

    ask: Ask
    column: int = -1
    name: str = ""


def begun(table: ForeignTable, heading: int | None, by: str, *, gr_is_gram: bool = False) -> Choices:
    """What the table tells of itself, as a beginning."""
    heads = meanings.headings_of(table, heading)
    told = meanings.meanings_of(heads)
    asked = Choices(heading=heading, meanings=told, by=by, from_1904=table.from_1904, gr_is_gram=gr_is_gram)
    return with_settled(table, asked)


def with_settled(table: ForeignTable, asked: Choices) -> Choices:
    """The same choices with what units, days and numbers settle for the meanings that columns have now."""
    heads = meanings.headings_of(table, asked.heading)
    units = {
        place: asked.units.get(place) or unit
        for place, meaning in enumerate(asked.meanings)
        if meaning in MASSES or meaning is Meaning.LINE
        if (unit := _unit_told(heads[place], meaning, asked)) or asked.units.get(place)
    }
    orders = {
        place: asked.orders.get(place) or DayOrder(answer)
        for place in asked.columns(*DAYS)
        if (answer := order_of(table, asked, place).answer) or asked.orders.get(place)
    }
    decimals = {
        place: asked.decimals.get(place) or answer
        for place in asked.columns(*NUMBERS)
        if (answer := decimal_of(table, asked, place).answer) or asked.decimals.get(place)
    }
    return replace(asked, units=units, orders=orders, decimals=decimals)


def _unit_told(head: str, meaning: Meaning, asked: Choices) -> str:
    kind = Kind.LENGTH if meaning is Meaning.LINE else Kind.MASS
    return meanings.unit_of(head, kind, gr_is_gram=asked.gr_is_gram)


def cells_of(table: ForeignTable, asked: Choices, column: int) -> Iterator[tuple[int, Value]]:
    """The cells of a column beneath its heading, with their rows from 0; empty ones are left out."""
    for at, row in enumerate(table.rows[asked.first :], start=asked.first):
        if column < len(row) and row[column] is not None:
            yield at, row[column]


def order_of(table: ForeignTable, asked: Choices, column: int) -> Settled:
    """In which order the days of a column stand."""
    return day_orders(cells_of(table, asked, column))


def decimal_of(table: ForeignTable, asked: Choices, column: int) -> Settled:
    """Which decimal sign the numbers of a column have."""
    return commas(cells_of(table, asked, column))


def names_of(table: ForeignTable, asked: Choices) -> list[str]:
    """The scoops that the table names; of one without such a column only the blank name."""
    places = asked.columns(Meaning.SCOOP)
    if not places:
        return [""]
    return list(dict.fromkeys(str(cell).strip() for _, cell in cells_of(table, asked, places[0])))


def bare_cells(table: ForeignTable, asked: Choices, column: int) -> bool:
    """Whether any cell of a column is a number without a unit of its own."""
    found = (cell for _, cell in cells_of(table, asked, column))
    return any(not isinstance(cell, str) or not any(sign.isalpha() for sign in cell) for cell in found)


def questions(table: ForeignTable, asked: Choices) -> list[Question]:
    """What still has to be settled, in the order in which it is asked."""
    found: list[Question] = []
    if not asked.columns(Meaning.LOT):
        found.append(Question(Ask.LOT))
    if asked.columns(Meaning.WHEN) and asked.columns(Meaning.BAG) and not asked.weighs:
        found.append(Question(Ask.WEIGHT))
    for place, meaning in enumerate(asked.meanings):
        if (meaning in MASSES or meaning is Meaning.LINE) and not asked.units.get(place):
            found += [Question(Ask.UNIT, place)] if bare_cells(table, asked, place) else []
        if meaning in DAYS and place not in asked.orders and order_of(table, asked, place).asks:
            found.append(Question(Ask.ORDER, place))
        if meaning in NUMBERS and place not in asked.decimals and decimal_of(table, asked, place).asks:
            found.append(Question(Ask.DECIMAL, place))
    counted = (counts_days(cells_of(table, asked, place)) for place in asked.columns(*DAYS))
    if asked.from_1904 is None and any(counted):
        found.append(Question(Ask.EPOCH))
    return [*found, *(_of_fills(table, asked) if asked.weighs else ())]


def _of_fills(table: ForeignTable, asked: Choices) -> Iterator[Question]:
    if not asked.columns(Meaning.WHEN):
        yield Question(Ask.WHEN)
    if asked.way is None and not asked.columns(Meaning.WAY):
        yield Question(Ask.WAY)
    if asked.bags is None and not asked.columns(Meaning.BAG):
        yield Question(Ask.BAGS)
    if asked.columns(Meaning.GROSS) and not asked.columns(Meaning.TARE) and asked.tare_g is None:
        yield Question(Ask.TARE)
    for name in names_of(table, asked):
        if name not in asked.scoops:
            yield Question(Ask.SCOOP, name=name)
    if asked.scale_id is None:
        yield Question(Ask.SCALE)
    if not asked.by and not asked.columns(Meaning.BY):
        yield Question(Ask.BY)
