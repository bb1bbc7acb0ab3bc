"""Lots and past weighings from a file of another program into the records: all of it, in one transaction, or nothing.

What came so says it: the reason of its first telling names the file. A past weigh-in is kept as given up, because it
is not gone on with: nobody zeroed a scale for it here or drew a line, so it is never signed off.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from itertools import islice

from sqlalchemy import insert, select

from calibrator.model import Fill, Lot, WeighIn, new_id
from calibrator.model.underway import Underway, unwatched
from calibrator.records import facts, nouns
from calibrator.records.plain import hints, kind_word
from calibrator.records.repository import Records
from calibrator.records.rows import Writing, now, refuse_unsound
from calibrator.records.tables import NOUNS, changes, fills
from calibrator.values import dataclass

BROUGHT_IN = "brought in from "
"""Before the file's name in the reason of what was brought in."""
_AT_ONCE = 500


@dataclass(frozen=True)
class Past:
    """What a file tells: new lots, past weigh-ins, their fills (a struck one with its reason)."""

    lots: tuple[Lot, ...] = ()
    weigh_ins: tuple[WeighIn, ...] = ()
    fills: tuple[Fill, ...] = ()


def bring_in(records: Records, past: Past, *, file: str, by: str, underway: Underway = unwatched) -> None:
    """Keep it all or nothing. What `underway` raises undoes everything.

    Raises `RecordsError`, as every writing does.
    """
    with records.writing("import") as writing:
        for lot in past.lots:
            _tell(writing, lot, by, file)
        for weigh_in in past.weigh_ins:
            _tell(writing, weigh_in, by, file)
        done = 0
        rest = iter(past.fills)
        while some := tuple(islice(rest, _AT_ONCE)):
            _add_fills(writing, some)
            done += len(some)
            underway(done / len(past.fills))


def brought_in(records: Records, kind: type) -> dict[str, str]:
    """The things of a kind that came out of another program's file, with the name of that file."""
    table = NOUNS[kind]
    query = (
        select(table.c.id, changes.c.why)
        .join(changes, changes.c.number == table.c.change)
        .where(table.c.replaces.is_(None), changes.c.why.startswith(BROUGHT_IN, autoescape=True))
    )
    with records.reading() as connection:
        return {row[0]: row[1].removeprefix(BROUGHT_IN) for row in connection.execute(query)}


def _tell(writing: Writing, noun: nouns.N, by: str, file: str) -> None:
    refuse_unsound(noun, by=by, why=file)
    telling = nouns.Telling(replace(noun, revision=new_id()), None, by, f"{BROUGHT_IN}{file}")
    nouns.add_telling(writing, telling, None)


def _add_fills(writing: Writing, some: Sequence[Fill]) -> None:
    """Many at once: their weigh-in is of this very transaction, so nothing has to be asked of each."""
    names = [name for name in hints(Fill) if name in fills.c]
    told, rows, at, first = [], [], now(), writing.last
    for number, fill in enumerate(some, start=first + 1):
        refuse_unsound(fill)
        told.append({"number": number, "at": at, "by": fill.by, "why": "", "what": kind_word(Fill)})
        rows.append({name: getattr(fill, name) for name in names} | {"change": number})
    writing.connection.execute(insert(changes), told)
    writing.connection.execute(insert(fills), rows)
    writing.last += len(some)
    for fill in some:
        if fill.struck_reason is not None:
            facts.add_strike(writing, Fill, facts.Strike(fill.id, fill.struck_reason, fill.by))
