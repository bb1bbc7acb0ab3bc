"""All that was ever kept of one lot, in one order: who, when, why, and what it replaced."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import replace
from datetime import datetime
from enum import StrEnum
from typing import Any

from sqlalchemy import Connection, Select, TableClause, select

from calibrator.model import (
    BagCount,
    FeederTrial,
    Fill,
    Lot,
    Mark,
    MixCheck,
    Printed,
    ReferenceMix,
    SheetEnding,
    SignOff,
    SpotFill,
    TrialFill,
    WeighIn,
)
from calibrator.records import facts, fingerprints
from calibrator.records.fingerprints import Fingerprint
from calibrator.records.repository import Records
from calibrator.records.rows import as_value
from calibrator.records.tables import FACTS, NOUNS, STRIKES, changes
from calibrator.values import dataclass


class Topic(StrEnum):
    """What an entry is about, for a person who looks for one kind."""

    LOT = "lot"
    CHANGE_OVER = "change_over"
    WEIGH_IN = "weigh_in"
    FILL = "fill"
    SIGN_OFF = "sign_off"
    MARK = "mark"
    SPOT_FILL = "spot_fill"
    SHEET = "sheet"
    MIX_CHECK = "mix_check"
    BAG_COUNT = "bag_count"
    TRIAL = "trial"


@dataclass(frozen=True)
class Happening:
    """One entry. `now` is what was kept (a struck-out fill with its reason), `before` what it replaced.

    `before` is the telling before of a corrected thing, the fill as it counted before it was struck out or taken
    back in, the sign-off of the lot before, the line that the scoop bore before (whatever lot it was for); of a word on
    a sheet it is the sheet. None where nothing was replaced.
    """

    number: int
    at: datetime
    by: str
    why: str
    topic: Topic
    now: Any
    before: Any = None
    fingerprint: Fingerprint | None = None


_TELLINGS = {
    WeighIn: Topic.WEIGH_IN,
    MixCheck: Topic.MIX_CHECK,
    ReferenceMix: Topic.MIX_CHECK,
    BagCount: Topic.BAG_COUNT,
    FeederTrial: Topic.TRIAL,
}
_WEIGHED = {Fill: Topic.FILL, SpotFill: Topic.SPOT_FILL, TrialFill: Topic.TRIAL}
_WHO = [changes.c[name].label(f"change_{name}") for name in ("at", "by", "why")]


def lot_history(records: Records, lot_id: str) -> tuple[Happening, ...]:
    """Everything that was kept of a lot, oldest first. The number of questions does not grow with what there is."""
    with records.reading() as connection:
        found = [*_lot(connection, lot_id), *_sheets(connection, lot_id), *_signed(connection, lot_id)]
        for noun, topic in _TELLINGS.items():
            found += _tellings(connection, noun, topic, NOUNS[noun].c.id.in_(_ids(noun, lot_id)))
        for kind, topic in _WEIGHED.items():
            found += _weighed(connection, kind, topic, _of_lot(kind, FACTS[kind], lot_id))
    return tuple(sorted(found, key=_number))


def fill_history(records: Records, weigh_in_id: str) -> tuple[Happening, ...]:
    """What was done to the fills of a weigh-in, oldest first."""
    with records.reading() as connection:
        own = FACTS[Fill].c.weigh_in_id == weigh_in_id
        return tuple(sorted(_weighed(connection, Fill, Topic.FILL, own), key=_number))


def _number(one: Happening) -> int:
    return one.number


def _ids(noun: type, lot_id: str) -> Select[Any]:
    return select(NOUNS[noun].c.id).where(NOUNS[noun].c.lot_id == lot_id)


def _rows(connection: Connection, table: TableClause, where: Any) -> list[Mapping[str, Any]]:
    query = select(table, *_WHO).join(changes, changes.c.number == table.c.change).where(where)
    return [dict(row) for row in connection.execute(query.order_by(table.c.change)).mappings()]


def _told(row: Mapping[str, Any], topic: Topic, now: Any, before: Any = None, **more: Any) -> Happening:
    who = (row["change"], row["change_at"], row["change_by"], row["change_why"])
    return Happening(*who, topic, now, before, **more)


def _tellings(connection: Connection, noun: type, topic: Topic, where: Any) -> Iterator[Happening]:
    by_revision: dict[str, Any] = {}
    for row in _rows(connection, NOUNS[noun], where):
        now: Any = as_value(noun, row)
        by_revision[row["revision"]] = now
        yield _told(row, topic, now, by_revision.get(row["replaces"]))


def _lot(connection: Connection, lot_id: str) -> Iterator[Happening]:
    for one in _tellings(connection, Lot, Topic.LOT, NOUNS[Lot].c.id == lot_id):
        yield replace(one, topic=_about(one)) if one.before else one


_ABOUT = {Topic.CHANGE_OVER: ("fed_from", "fed_from_feeding", "waits"), Topic.MARK: ("scoops_marked",)}


def _about(one: Happening) -> Topic:
    """What a telling of a lot that replaces another is about."""
    was, now = one.before, one.now
    told = (topic for topic, names in _ABOUT.items() if any(getattr(now, n) != getattr(was, n) for n in names))
    return next(told, Topic.LOT)


def _weighed(connection: Connection, kind: type, topic: Topic, where: Any) -> Iterator[Happening]:
    table, strikes = FACTS[kind], STRIKES[kind]
    now: dict[str, Any] = {}
    for row in _rows(connection, table, where):
        now[row["id"]] = as_value(kind, {"struck_reason": None, **row})
        yield _told(row, topic, now[row["id"]])
    for row in _rows(connection, strikes, strikes.c.of_id.in_(select(table.c.id).where(where))):
        before = now[row["of_id"]]
        now[row["of_id"]] = replace(before, struck_reason=row["reason"])
        yield _told(row, topic, now[row["of_id"]], before)


def _of_lot(kind: type, table: TableClause, lot_id: str) -> Any:
    if kind is SpotFill:
        return table.c.lot_id == lot_id
    if kind is Fill:
        return table.c.weigh_in_id.in_(_ids(WeighIn, lot_id))
    return table.c.trial_id.in_(_ids(FeederTrial, lot_id))


def _signed(connection: Connection, lot_id: str) -> Iterator[Happening]:
    links = fingerprints.of_lot(connection, lot_id)
    before: SignOff | None = None
    who: dict[str, Mapping[str, Any]] = {}
    for row in _rows(connection, FACTS[SignOff], FACTS[SignOff].c.lot_id == lot_id):
        now: SignOff = as_value(SignOff, row)
        who[now.id] = row
        yield _told(row, Topic.SIGN_OFF, now, before, fingerprint=links.get(now.id))
        before = now
    for mark in facts.many(connection, Mark, {"lot_id": lot_id}):
        row = who[mark.sign_off_id]
        yield _told(row, Topic.MARK, mark, _line_before(connection, mark, row["change"]))


def _line_before(connection: Connection, mark: Mark, change: int) -> Mark | None:
    table = FACTS[Mark]
    query = select(table).where(table.c.scoop_id == mark.scoop_id, table.c.target_mass_g == mark.target_mass_g)
    query = query.where(table.c.change < change).order_by(table.c.change.desc()).limit(1)
    row = connection.execute(query).mappings().first()
    return as_value(Mark, row) if row else None


def _sheets(connection: Connection, lot_id: str) -> Iterator[Happening]:
    table, endings = FACTS[Printed], FACTS[SheetEnding]
    where = table.c.lot_id == lot_id
    sheets: dict[str, Printed] = {}
    for row in _rows(connection, table, where):
        now = sheets[row["id"]] = as_value(Printed, row)
        yield _told(row, Topic.SHEET, now)
    for row in _rows(connection, endings, endings.c.print_id.in_(select(table.c.id).where(where))):
        ending = as_value(SheetEnding, row)
        yield _told(row, Topic.SHEET, ending, sheets[ending.print_id])
