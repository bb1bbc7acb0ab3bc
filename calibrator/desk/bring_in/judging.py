"""A foreign table with its choices, row by row: what it adds, what is there already, and every fault. No window."""

from __future__ import annotations

from collections import Counter
from collections.abc import Mapping, Sequence
from dataclasses import field, replace
from datetime import date, datetime, time
from typing import Any

from calibrator.desk.bring_in import cells, faults, lot_cells
from calibrator.desk.bring_in.cells import NotTaken
from calibrator.desk.bring_in.choices import Bags, Choices
from calibrator.desk.bring_in.faults import Fault
from calibrator.desk.bring_in.meanings import OF_FILLS, PERCENTS, Meaning, column_name, headings_of, plain
from calibrator.desk.bring_in.orders import text_of
from calibrator.model import Farm, Fill, FillWay, Lot, Scale, Scoop, WeighIn, new_id
from calibrator.model.underway import Underway, unwatched
from calibrator.records.bringing import Past
from calibrator.records.foreign.table import ForeignTable, Value
from calibrator.science.plausible import Doubt, weight_doubt
from calibrator.values import dataclass

NOON = time(12)
"""The time of a weighing of which only the day is known."""
_TOTALS = frozenset(
    ("total", "totals", "totales", "total general", "gran total", "grand total", "subtotal", "sub total", "sum", "suma")
)
_SUMS = _TOTALS | {"average", "mean", "min", "max", "promedio", "media"}
_RULES = "-–—−_=.· "
"""What a row between others is drawn with."""
_WHOLE_PCT = 100.5
_STEP = 500
_DOWN = (Meaning.LOT, Meaning.WHEN, Meaning.SCOOP, Meaning.BY, Meaning.SESSION)


@dataclass(frozen=True)
class There:
    """What the records hold already. A fill is known by its lot, way, weight, scoopfuls and day."""

    farm: Farm
    lots: tuple[Lot, ...] = ()
    scoops: Mapping[str, Scoop] = field(default_factory=dict)
    scales: Mapping[str, Scale] = field(default_factory=dict)
    fills: Mapping[tuple[Any, ...], int] = field(default_factory=dict)


@dataclass(frozen=True)
class Judged:
    """What a table comes to. Rows are numbered from 1, as spreadsheets do."""

    past: Past = field(default_factory=Past)
    lots_there: tuple[str, ...] = ()
    fills_there: tuple[int, ...] = ()
    sums: tuple[int, ...] = ()  # rows that only add up others
    faults: tuple[Fault, ...] = ()
    formulas: tuple[str, ...] = ()  # columns whose values a spreadsheet worked out

    @property
    def adds(self) -> bool:
        return not self.faults and bool(self.past.lots or self.past.fills)


def fill_key(fill: Fill, lot: str) -> tuple[Any, ...]:
    """By what a fill is known again, whatever program told it."""
    return lot, fill.way, round(fill.mass_g, 3), fill.scoopfuls, fill.at.astimezone().date()


def lot_key(number: str) -> str:
    """Lot numbers are alike whatever their capitals and spaces."""
    return " ".join(number.split()).casefold()


def judge(table: ForeignTable, asked: Choices, there: There, today: date, underway: Underway = unwatched) -> Judged:
    """Every row in its turn; what `underway` raises ends it."""
    judging = _Judging(table, asked, there, today)
    body = range(asked.first, len(table.rows))
    for number, at in enumerate(body):
        if number % _STEP == 0:
            underway(number / len(body))
        judging.row(at)
    return judging.outcome()


@dataclass
class _Session:
    """Fills of one lot with one scoop on one day, on their way to a weigh-in."""

    weigh_in: WeighIn
    row: int  # from 0, of its earliest fill
    fills: list[Fill] = field(default_factory=list)


class _Judging:
    def __init__(self, table: ForeignTable, asked: Choices, there: There, today: date) -> None:
        self.table, self.asked, self.there, self.today = table, asked, there, today
        self.heads = headings_of(table, asked.heading)
        self.lot_readers = lot_cells.readers(today, there.farm.currency)
        self.first = {meaning: place for place, meaning in reversed(list(enumerate(asked.meanings)))}
        self.weights = asked.columns(Meaning.NET, Meaning.GROSS)
        self.known: dict[str, list[Lot]] = {}
        for lot in there.lots:
            self.known.setdefault(lot_key(lot.lot_number), []).append(lot)
        self.left = Counter(there.fills)
        self.new: dict[str, Lot] = {}
        self.told_in: dict[tuple[str, Meaning], tuple[int, Any]] = {}
        self.met: dict[str, None] = {}
        self.sessions: dict[tuple[Any, ...], _Session] = {}
        self.fills_there: list[int] = []
        self.sums: list[int] = []
        self.faults: list[Fault] = []
        self.above: dict[int, Value] = {}
        self._at = 0

    def outcome(self) -> Judged:
        used = {place for place, meaning in enumerate(self.asked.meanings) if meaning is not Meaning.NOTHING}
        worked = {column for row, column in self.table.formulas if row >= self.asked.first and column in used}
        for key, lot in self.new.items():
            self._judge_lot(key, lot)
        held = [session for session in self.sessions.values() if session.fills]
        self._judge_days_weighed()
        past = Past(
            tuple(self.new.values()),
            tuple(session.weigh_in for session in held),
            tuple(fill for session in held for fill in session.fills),
        )
        return Judged(
            past, tuple(self.met), tuple(self.fills_there), tuple(self.sums), tuple(self.faults),
            tuple(self._head(column) for column in sorted(worked)),
        )  # fmt: skip

    def row(self, at: int) -> None:
        """Take in one row."""
        if _only_rules(self.table.rows[at]):
            return
        if self._is_sum(self.table.rows[at]):
            self.sums.append(at + 1)
            return
        row = self._filled_down(self.table.rows[at])
        self._at = at
        number = self._one(row, Meaning.LOT, lambda cell, _c, _a: cells.words(cell))
        if number is _WRONG:
            return
        if number is None or not _told(number):
            self._without_lot(row)
        else:
            self._with_lot(row, number)

    def _is_sum(self, row: Sequence[Value]) -> bool:
        """Whether a row only adds up others: said where the lot stands, or first of all where none does."""
        place = self.first.get(Meaning.LOT, len(row))
        lot = row[place] if place < len(row) else None
        if lot is not None:
            return plain(text_of(lot)) in _SUMS
        return plain(text_of(next(cell for cell in row if cell is not None))) in _TOTALS

    def _with_lot(self, row: Sequence[Value], number: str) -> None:
        found = self.known.get(lot_key(number), [])
        if len(found) > 1:
            self._fault(Meaning.LOT, row, faults.two_lots())
            return
        key = lot_key(number)
        if found:
            lot = found[0]
            self.met[lot.lot_number] = None
        else:
            lot = self.new.setdefault(key, Lot(id=new_id(), farm_id=self.there.farm.id, lot_number=number))
        self._lot_facts(row, key, new=not found)
        self._weighings(row, lot, key)

    def _without_lot(self, row: Sequence[Value]) -> None:
        """Rows of remarks and rules between are passed over; one that tells anything of a lot or fill is not."""
        asked = self.asked
        if any(asked.meanings[place] is not Meaning.NOTHING and cell is not None for place, cell in enumerate(row)):
            self._fault(Meaning.LOT, row, faults.no_lot())

    def _filled_down(self, row: Sequence[Value]) -> tuple[Value, ...]:
        wide = (*row, *[None] * (len(self.asked.meanings) - len(row)))
        if not self.asked.fill_down:
            return wide
        for place in self.asked.columns(*_DOWN):
            if wide[place] is not None:
                self.above[place] = wide[place]
        return tuple(self.above.get(place) if cell is None else cell for place, cell in enumerate(wide))

    # What a lot is

    def _lot_facts(self, row: Sequence[Value], key: str, *, new: bool) -> None:
        for place, meaning in enumerate(self.asked.meanings):
            if meaning in OF_FILLS or meaning in (Meaning.NOTHING, Meaning.LOT) or row[place] is None:
                continue
            value = self._taken(row, place, self.lot_readers[meaning])
            if value is _WRONG or not new:
                continue
            earlier = self.told_in.setdefault((key, meaning), (self._at, value))
            if meaning is Meaning.NOTE:  # a remark may be on one bag of many: all are kept
                self._add_note(key, value)
            elif earlier[1] != value:
                told = text_of(self._cell(earlier[0], place))
                self._fault(meaning, row, faults.not_alike(earlier[0] + 1, told), place)
            else:
                self.new[key] = lot_cells.with_told(self.new[key], meaning, value)

    def _add_note(self, key: str, note: str) -> None:
        lot = self.new[key]
        told = lot.note.split("; ") if lot.note else []
        if note not in told and len("; ".join([*told, note])) <= cells.LONGEST_NOTE:
            self.new[key] = replace(lot, note="; ".join([*told, note]))

    def _judge_lot(self, key: str, lot: Lot) -> None:
        if lot.made_on and lot.arrived_on and lot.made_on > lot.arrived_on:
            self._lot_fault(key, Meaning.MADE, faults.made_later())
        here = lot.arrived_on or lot.made_on
        if lot.fed_from and here and lot.fed_from < here:
            self._lot_fault(key, Meaning.FED_FROM, faults.fed_early())
        in_use = lot.fed_from or here
        if lot.finished_on and in_use and lot.finished_on < in_use:
            self._lot_fault(key, Meaning.FINISHED, faults.finished_early())
        parts = (getattr(lot.composition, meaning) for meaning in PERCENTS)
        if sum(part for part in parts if part is not None) > _WHOLE_PCT:
            self._lot_fault(key, next(m for m in PERCENTS if (key, m) in self.told_in), faults.over_whole())

    def _judge_days_weighed(self) -> None:
        """No powder is weighed before it is there; of a lot of the records the day is told, as the file has none."""
        for (key, *_), session in self.sessions.items():
            lot = self.new.get(key) or self.known[key][0]
            here = lot.arrived_on or lot.made_on
            if session.fills and here and session.weigh_in.started_at.date() < here:
                self._at = session.row
                self._fault(Meaning.WHEN, self.table.rows[session.row], faults.weighed_early(here))

    def _lot_fault(self, key: str, meaning: Meaning, words: str) -> None:
        self._at = self.told_in[key, meaning][0]
        place = self.asked.columns(meaning)[0]
        self._fault(meaning, self.table.rows[self._at], words, place)

    # What was weighed

    def _weighings(self, row: Sequence[Value], lot: Lot, key: str) -> None:
        weighed = [place for place in self.weights if row[place] is not None]
        if not weighed:
            return
        before = len(self.faults)
        at = self._when(row)
        shared = {
            "way": self._one(row, Meaning.WAY, cells.way) or self.asked.way or FillWay.LEVEL,
            "scoopfuls": self._one(row, Meaning.SCOOPFULS, _counts(cells.MOST_SCOOPFULS)) or 1,
            "by": self._one(row, Meaning.BY, cells.person) or ("" if Meaning.BY in self.first else self.asked.by),
            "line_mm": line.value if (line := self._one(row, Meaning.LINE, cells.length)) else None,
            "struck_reason": self._one(row, Meaning.STRUCK, cells.note),
        }
        bag = self._one(row, Meaning.BAG, _counts(cells.MOST_BAG))
        scoop = self._scoop(row)
        session_name = self._one(row, Meaning.SESSION, cells.note)
        for place in weighed:
            found = self._weight(row, place)
            if found is not None and at is not None and len(self.faults) == before:
                session = self._session(lot, key, scoop, at, session_name, shared["by"])
                self._add(session, key, place, found, {**shared, "bag": bag, "at": at})

    def _add(self, session: _Session, key: str, place: int, found: tuple[float, str], told: dict[str, Any]) -> None:
        if told["bag"] is None:
            told["bag"] = self._bag(session)
        made = Fill(id=new_id(), weigh_in_id=session.weigh_in.id, mass_g=found[0], typed=found[1], **told)
        if (doubted := self._doubt(made, session.weigh_in)) is not None:
            self._fault(Meaning.NET, self.table.rows[self._at], doubted, place)
            return
        if self.left[fill_key(made, key)] > 0:
            self.left[fill_key(made, key)] -= 1
            self.fills_there.append(self._at + 1)
            return
        session.fills.append(made)

    def _bag(self, session: _Session) -> int:
        """A bag that no column tells: each weight from a bag of its own, or all from one, as was chosen."""
        if self.asked.bags is Bags.OWN:
            return min(len(session.fills) + 1, cells.MOST_BAG)
        return 1

    def _doubt(self, made: Fill, weigh_in: WeighIn) -> str | None:
        scoop, scale = self.there.scoops.get(weigh_in.scoop_id or ""), self.there.scales.get(weigh_in.scale_id or "")
        if scoop is None:
            return None
        capacity = scale.capacity_g if scale else float("inf")
        why = weight_doubt(made.mass_g, made.scoopfuls, scoop.volume_ml, capacity)
        if why is Doubt.OVER_CAPACITY:
            return faults.over_capacity()
        if why is None or (why is Doubt.TOO_LIGHT and made.way is FillWay.TO_MARK):
            return None
        return faults.no_powder(why is Doubt.TOO_LIGHT)

    def _weight(self, row: Sequence[Value], place: int) -> tuple[float, str] | None:
        """Grams of powder, and how that was told."""
        found = self._taken(row, place, cells.mass)
        if found is _WRONG:
            return None
        told = self._one(row, Meaning.TYPED, cells.note)
        typed = lot_cells.as_typed(found)
        if self.asked.meanings[place] is Meaning.NET:
            return found.value, told or typed
        tare, tare_typed = self._tare(row)
        if tare is None:
            return None
        if found.value <= tare:
            self._fault(Meaning.GROSS, row, faults.tare_too_heavy(), place)
            return None
        return found.value - tare, told or f"{typed} − {tare_typed}"

    def _tare(self, row: Sequence[Value]) -> tuple[float | None, str]:
        if not self.asked.columns(Meaning.TARE):
            return self.asked.tare_g or 0.0, self.asked.tare_typed
        found = self._one(row, Meaning.TARE, cells.mass)
        if found is None:
            self._fault(Meaning.TARE, row, faults.no_tare())
        if found is None or found is _WRONG:
            return None, ""
        return found.value, lot_cells.as_typed(found)

    def _when(self, row: Sequence[Value]) -> datetime | None:
        found = self._one(row, Meaning.WHEN, lambda cell, c, a: cells.moment(cell, c, a, self.today))
        clock = self._one(row, Meaning.CLOCK, lambda cell, _c, _a: cells.clock(cell))
        if found is None:
            self._fault(Meaning.WHEN, row, faults.no_day())
        if not isinstance(found, date) or clock is _WRONG:
            return None
        if not isinstance(found, datetime):
            return datetime.combine(found, time(*clock) if clock else NOON).astimezone()
        return found.astimezone()

    def _scoop(self, row: Sequence[Value]) -> str:
        name = self._one(row, Meaning.SCOOP, lambda cell, _c, _a: cells.words(cell))
        return self.asked.scoops.get(name or "", "") if name is not _WRONG else ""

    def _session(self, lot: Lot, key: str, scoop_id: str, at: datetime, name: Any, by: str) -> _Session:
        place = (key, scoop_id, name if name else at.date())
        if place not in self.sessions:
            begun = WeighIn(
                id=new_id(), farm_id=lot.farm_id, lot_id=lot.id, started_at=at, by=by, abandoned=True,
                scoop_id=scoop_id or None, scale_id=self.asked.scale_id or None,
            )  # fmt: skip
            self.sessions[place] = _Session(begun, self._at)
        session = self.sessions[place]
        if at < session.weigh_in.started_at:
            session.weigh_in, session.row = replace(session.weigh_in, started_at=at), self._at
        return session

    # One cell

    def _one(self, row: Sequence[Value], meaning: Meaning, read: cells.Reader) -> Any:
        """The value of a meaning's column; None where the cell is empty, `_WRONG` after a fault."""
        place = self.first.get(meaning)
        if place is None or row[place] is None:
            return None
        return self._taken(row, place, read)

    def _taken(self, row: Sequence[Value], place: int, read: cells.Reader) -> Any:
        try:
            return read(row[place], place, self.asked)
        except NotTaken as error:
            self._fault(self.asked.meanings[place], row, str(error), place)
            return _WRONG

    def _fault(self, meaning: Meaning, row: Sequence[Value], words: str, place: int = -1) -> None:
        if place < 0:
            place = next(iter(self.asked.columns(meaning)), -1)
        found = text_of(row[place]) if 0 <= place < len(row) else ""
        self.faults.append(Fault(self._at + 1, self._head(place) if place >= 0 else "", found, words))

    def _cell(self, at: int, place: int) -> Value:
        row = self.table.rows[at]
        return row[place] if place < len(row) else None

    def _head(self, place: int) -> str:
        return self.heads[place] or column_name(place)


class _Wrong:
    """Stands for a cell that was refused: neither a value nor nothing."""

    value = 0.0

    def __bool__(self) -> bool:
        return False


_WRONG: Any = _Wrong()


def _only_rules(row: Sequence[Value]) -> bool:
    """Whether a row is empty, or has nothing but dashes and the like."""
    return not any(cell is not None and _told(text_of(cell)) for cell in row)


def _told(text: str) -> bool:
    return bool(text.strip(_RULES))


def _counts(highest: int) -> cells.Reader:
    return lambda cell, column, asked: cells.count(cell, column, asked, highest)
