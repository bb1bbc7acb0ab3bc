"""What happened: fills, strikes, sign-offs with their marks, printed sheets. Added once, never changed."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace
from datetime import datetime
from functools import cache
from typing import Any, TypeVar

from sqlalchemy import Connection, Select, TableClause, bindparam, func, insert, select

from calibrator.model import (
    Ending,
    FeederTrial,
    Fill,
    Lot,
    Mark,
    Printed,
    PrintKind,
    Scale,
    Scoop,
    SheetEnding,
    SignOff,
    SpotFill,
    TrialFill,
    WeighIn,
)
from calibrator.model.underway import Underway, unwatched
from calibrator.records import nouns
from calibrator.records.errors import EditedMeanwhile, NotAllowed
from calibrator.records.nouns import N
from calibrator.records.plain import kind_word
from calibrator.records.rows import (
    Writing,
    as_value,
    refuse_frozen,
    refuse_missing,
    refuse_unsound,
    spoken,
)
from calibrator.records.tables import (
    FACTS,
    NOUNS,
    STRIKES,
    marks,
    prints,
    sheet_endings,
    sign_offs,
)
from calibrator.values import dataclass

W = TypeVar("W", Fill, SpotFill, TrialFill)
F = TypeVar("F", Fill, SpotFill, TrialFill, SignOff, Mark, Printed, SheetEnding)

_SOME = 5000


@dataclass(frozen=True)
class Strike:
    """A fill struck out (with the reason) or taken back in (None)."""

    of_id: str
    reason: str | None
    by: str
    at: datetime | None = None


def add_weighed(writing: Writing, fill: W, at: datetime | None = None) -> W:
    """Keep a fill, spot fill or fill of a trial. Adding the very same one again changes nothing."""
    kind = type(fill)
    refuse_unsound(fill)
    if fill.struck_reason is not None:
        raise NotAllowed("struck_on_arrival", kind=spoken(kind))
    there = one(writing.connection, kind, fill.id)
    if there is not None:
        if replace(there, struck_reason=None) != fill:
            raise NotAllowed("already_there", kind=spoken(kind))
        return there
    _refuse_out_of_place(writing.connection, fill)
    writing.add(FACTS[kind], fill, change=writing.change(kind_word(kind), fill.by, at=at))
    return fill


def add_strike(writing: Writing, kind: type[W], strike: Strike) -> W:
    """Strike a fill out or take it back in; gives the fill as it now counts."""
    connection = writing.connection
    refuse_unsound(strike)
    fill = one(connection, kind, strike.of_id)
    if fill is None:
        raise NotAllowed("unknown", kind=spoken(kind), id=strike.of_id)
    if strike.reason is not None and not strike.reason.strip():
        raise NotAllowed("no_reason", kind=spoken(kind))
    if isinstance(fill, Fill):
        refuse_frozen(connection, fill.weigh_in_id)
    if isinstance(fill, TrialFill):
        _refuse_closed(connection, fill.trial_id)
    if fill.struck_reason != strike.reason:
        verb = "restore" if strike.reason is None else "strike"
        number = writing.change(f"{verb}_{kind_word(kind)}", strike.by, at=strike.at)
        told = {"change": number, "of_id": strike.of_id, "reason": strike.reason}
        connection.execute(insert(STRIKES[kind]), told)
    return replace(fill, struck_reason=strike.reason)


def add_sign_off(
    writing: Writing,
    sign_off: SignOff,
    its_marks: Sequence[Mark],
    seen_fills: Sequence[Fill] | None = None,
    at: datetime | None = None,
) -> None:
    """Keep a sign-off with its marks and so freeze the weigh-in."""
    connection = writing.connection
    for value in (sign_off, *its_marks):
        refuse_unsound(value)
    if any(mark.sign_off_id != sign_off.id for mark in its_marks):
        raise NotAllowed("foreign_mark")
    if before := many(connection, SignOff, {"weigh_in_id": sign_off.weigh_in_id}):
        raise NotAllowed("signed_meanwhile", who=before[0].by or "–")
    _refuse_outdated(connection, sign_off, seen_fills)
    change = writing.change("sign_off", sign_off.by, at=at)
    writing.add(sign_offs, sign_off, change=change)
    for position, mark in enumerate(its_marks):
        writing.add(marks, mark, change=change, position=position)


def add_print(writing: Writing, printed: Printed) -> Printed:
    """Keep that a sheet is printed, under the farm's next number."""
    refuse_unsound(printed)
    own = prints.c.farm_id == printed.farm_id
    last = writing.connection.execute(select(func.max(prints.c.number)).where(own)).scalar() or 0
    same = [
        prints.c.kind == printed.kind,
        prints.c.scoop_id == printed.scoop_id,
        prints.c.plan_id == printed.plan_id,
    ]
    if printed.kind is PrintKind.LOT_SHEET:  # another lot's record is no older one of this
        same.append(prints.c.lot_id == printed.lot_id)
    hung = prints.c.id.not_in(_spoiled(writing.connection, printed.farm_id))
    earlier = writing.connection.execute(select(func.max(prints.c.number)).where(own, hung, *same)).scalar()
    numbered = replace(printed, number=last + 1, replaces=earlier)
    add_numbered_print(writing, numbered)
    return numbered


def add_numbered_print(writing: Writing, printed: Printed, at: datetime | None = None) -> None:
    """Keep a printed sheet under the number it already has."""
    writing.add(prints, printed, change=writing.change("printed", printed.by, at=at))


def as_of(connection: Connection, kind: type[N], id: str, fact: Printed | SignOff | SheetEnding) -> N | None:
    """The telling of a thing that counted when a fact was kept."""
    table, facts = NOUNS[kind], FACTS[type(fact)]
    when = select(facts.c.change).where(facts.c.id == fact.id).scalar_subquery()
    told = select(table).where(table.c.id == id, table.c.change < when)
    row = connection.execute(told.order_by(table.c.change.desc()).limit(1)).mappings().first()
    return as_value(kind, row) if row else None


def _spoiled(connection: Connection, farm_id: str) -> list[str]:
    """The sheets that by the newest word never got to where they belong."""
    newest = {told.print_id: told.ending for told in many(connection, SheetEnding, {"farm_id": farm_id})}
    return [id for id, ending in newest.items() if ending is Ending.SPOILED]


def add_ending(writing: Writing, ending: SheetEnding, at: datetime | None = None) -> None:
    """Keep what became of a printed sheet. Adding the very same word again changes nothing."""
    refuse_unsound(ending)
    there = one(writing.connection, SheetEnding, ending.id)
    if there is not None:
        if there != ending:
            raise NotAllowed("already_there", kind=spoken(SheetEnding))
        return
    sheet = one(writing.connection, Printed, ending.print_id)
    if sheet is None or sheet.farm_id != ending.farm_id:
        raise NotAllowed("unknown", kind="sheet", id=ending.print_id)
    writing.add(sheet_endings, ending, change=writing.change("sheet_ending", ending.by, at=at))


def one(connection: Connection, kind: type[F], id: str) -> F | None:
    """One fact by its name."""
    found = many(connection, kind, {"id": id})
    return found[0] if found else None


def many(connection: Connection, kind: type[F], where: Mapping[str, Any]) -> list[F]:
    """The facts that agree with `where` (None is not asked for), in the order they were kept."""
    wanted = {name: value for name, value in where.items() if value is not None}
    asked = connection.execute(_asked_where(FACTS[kind], STRIKES.get(kind), tuple(wanted)), wanted)
    return [as_value(kind, row) for row in asked.mappings()]


@cache  # put together anew each time, a question takes longer than its answer
def _asked_where(table: TableClause, strikes: TableClause | None, names: tuple[str, ...]) -> Select[Any]:
    order = [table.c.change, *([table.c.position] if table is marks else [])]
    return _asked(table, strikes).where(*(table.c[name] == bindparam(name) for name in names)).order_by(*order)


def of_any(
    connection: Connection, kind: type[F], name: str, ids: Select[Any], underway: Underway = unwatched
) -> list[F]:
    """The facts whose field `name` is among the ids that a query gives, in the order they were kept."""
    table = FACTS[kind]
    own = table.c[name].in_(ids)
    whole = connection.scalar(select(func.count()).select_from(table).where(own)) or 1
    told: list[F] = []
    for some in (
        connection.execute(_asked(table, STRIKES.get(kind)).where(own).order_by(table.c.change))
        .mappings()
        .partitions(_SOME)
    ):
        underway(len(told) / whole)
        told += [as_value(kind, row) for row in some]
    return told


def _asked(table: TableClause, strikes: TableClause | None) -> Select[Any]:
    if strikes is None:
        return select(table)
    newest = (
        select(strikes.c.reason)
        .where(strikes.c.of_id == table.c.id)
        .order_by(strikes.c.change.desc())
        .limit(1)
        .scalar_subquery()
    )
    return select(table, newest.label("struck_reason"))


def _refuse_out_of_place(connection: Connection, fill: Fill | SpotFill | TrialFill) -> None:
    if isinstance(fill, TrialFill):
        return _refuse_closed(connection, fill.trial_id)
    refuse_missing(connection, WeighIn, fill.weigh_in_id)
    if isinstance(fill, Fill):
        refuse_frozen(connection, fill.weigh_in_id)
    elif not many(connection, SignOff, {"weigh_in_id": fill.weigh_in_id, "lot_id": fill.lot_id}):
        raise NotAllowed("not_signed")
    return None


def _refuse_closed(connection: Connection, trial_id: str) -> None:
    trial = nouns.newest(connection, FeederTrial, trial_id)
    if trial is None:
        raise NotAllowed("unknown", kind=spoken(FeederTrial), id=trial_id)
    if trial.closed or not trial.counts:
        raise NotAllowed("trial_closed")


def _refuse_outdated(connection: Connection, sign_off: SignOff, seen: Sequence[Fill] | None) -> None:
    weigh_in = nouns.newest(connection, WeighIn, sign_off.weigh_in_id)
    if weigh_in is None:
        raise NotAllowed("unknown", kind="weigh-in", id=sign_off.weigh_in_id)
    if weigh_in.abandoned:
        raise NotAllowed("abandoned")
    if seen is not None and list(seen) != many(connection, Fill, {"weigh_in_id": weigh_in.id}):
        raise EditedMeanwhile("weigh-in", weigh_in)
    _refuse_older(connection, Scoop, sign_off.scoop_id, sign_off.scoop_revision)
    _refuse_older(connection, Scale, sign_off.scale_id, sign_off.scale_revision)
    _refuse_older(connection, Lot, sign_off.lot_id, sign_off.lot_revision)


def _refuse_older(connection: Connection, kind: type[nouns.N], id: str, revision: str) -> None:
    current = nouns.newest(connection, kind, id)
    if current is None:
        raise NotAllowed("unknown", kind=spoken(kind), id=id)
    if current.revision != revision:
        raise EditedMeanwhile(spoken(kind), current)
