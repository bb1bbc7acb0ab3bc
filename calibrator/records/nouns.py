"""What people can correct: each telling is kept, and names the one it replaces."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from datetime import datetime
from functools import cache
from typing import Any, Generic, TypeVar

from sqlalchemy import Connection, Select, TableClause, bindparam, column, insert, select
from sqlalchemy import table as table_clause

from calibrator.model import Farm, Noun, WeighIn, new_id
from calibrator.records.errors import EditedMeanwhile, NotAllowed
from calibrator.records.plain import kind_word
from calibrator.records.rows import Writing, as_value, refuse_frozen, refuse_unsound, spoken
from calibrator.records.tables import NOUNS, changes, things
from calibrator.values import dataclass

N = TypeVar("N", bound=Noun)


def newest_of(kind: type) -> Select[Any]:
    """The newest tellings of all things of a kind, as a question."""
    return _newest_where(NOUNS[kind])


@cache  # put together anew each time, a question takes longer than its answer
def _newest_where(
    table: TableClause, names: tuple[str, ...] = (), empty: tuple[str, ...] = (), *, ordered: bool = False
) -> Select[Any]:
    """Those whose fields `names` have the values that are given with the question, and whose fields `empty` have none.

    `ordered`: the oldest thing first.
    """
    # An alias of the whole table would copy each of its columns, at every start.
    later = table_clause(table.name, column("revision"), column("replaces")).alias("later")
    query = select(table).where(~select(later.c.revision).where(later.c.replaces == table.c.revision).exists())
    if ordered:
        query = query.join(things, things.c.id == table.c.id).order_by(things.c.change)
    query = query.where(*(table.c[name] == bindparam(name) for name in names))
    return query.where(*(table.c[name].is_(None) for name in empty))


@dataclass(frozen=True)
class Change(Generic[N]):
    """One telling of a thing: when it was kept, by whom, why, and what it said."""

    at: datetime
    by: str
    why: str
    noun: N


@dataclass(frozen=True)
class Telling(Generic[N]):
    """A noun about to be kept: who, why, and for one brought in from elsewhere, its own time."""

    noun: N
    replaces: str | None
    by: str
    why: str
    at: datetime | None = None


def keep(writing: Writing, noun: N, by: str, why: str) -> N:
    """Keep a new telling. Unchanged nouns are given back as they are, without another telling."""
    refuse_unsound(noun, by=by, why=why)
    current = newest(writing.connection, type(noun), noun.id)
    if current is None and noun.revision:
        raise NotAllowed("unknown", kind=spoken(type(noun)), id=noun.id)
    if current is not None and current.revision != noun.revision:
        raise EditedMeanwhile(spoken(type(noun)), current)
    if current == noun:
        return noun
    told = replace(noun, revision=new_id())
    add_telling(writing, Telling(told, current.revision if current else None, by, why), current)
    return told


def add_telling(writing: Writing, telling: Telling[N], current: N | None) -> None:
    """Keep a telling under the revision it already has."""
    noun = telling.noun
    kind = type(noun)
    if current is not None and _farm_of(current) != _farm_of(noun):
        raise NotAllowed("other_farm", kind=spoken(kind))
    if isinstance(noun, WeighIn):
        refuse_frozen(writing.connection, noun.id)
    change = writing.change(kind_word(kind), telling.by, telling.why, telling.at)
    if current is None:
        _refuse_taken(writing.connection, noun)
        thing = {"id": noun.id, "kind": kind_word(kind), "change": change}
        writing.connection.execute(insert(things), thing)
    writing.add(NOUNS[kind], noun, replaces=telling.replaces, change=change)


def newest(connection: Connection, kind: type[N], id: str) -> N | None:
    """The newest telling of one thing; None where there is no such thing."""
    row = connection.execute(_newest_where(NOUNS[kind], ("id",)), {"id": id}).mappings().first()
    return as_value(kind, row) if row else None


def revision(connection: Connection, kind: type[N], name: str) -> N | None:
    """One telling by its own name."""
    table = NOUNS[kind]
    row = connection.execute(select(table).where(table.c.revision == name)).mappings().first()
    return as_value(kind, row) if row else None


def every(connection: Connection, kind: type[N], farm_id: str | None, where: Mapping[str, Any]) -> list[N]:
    """The newest tellings of all things of a kind that agree with `where`, the oldest thing first."""
    table = NOUNS[kind]
    wanted = dict(where)
    if farm_id is not None:
        wanted["id" if kind is Farm else "farm_id"] = farm_id
    for name in wanted:
        if name not in table.c or name in ("replaces", "change"):
            raise TypeError(f"{kind.__name__} has no field {name}")
    given = {name: value for name, value in wanted.items() if value is not None}
    empty = tuple(name for name in wanted if name not in given)
    asked = connection.execute(_newest_where(table, tuple(given), empty, ordered=True), given)
    return [as_value(kind, row) for row in asked.mappings()]


def is_there(connection: Connection, kind: type[Noun], farm_id: str) -> bool:
    """Whether a farm has any thing of a kind."""
    table = NOUNS[kind]
    return connection.execute(select(table.c.id).where(table.c.farm_id == farm_id).limit(1)).first() is not None


def last_checked(connection: Connection, scale_id: str, before: datetime) -> WeighIn | None:
    """The newest weigh-in begun before a moment that read a check weight on a scale; None where there is none."""
    table = NOUNS[WeighIn]
    query = (
        newest_of(WeighIn)
        .where(table.c.scale_id == scale_id, table.c.check_reading_g.is_not(None), table.c.started_at < before)
        .order_by(table.c.started_at.desc())
        .limit(1)
    )
    row = connection.execute(query).mappings().first()
    return as_value(WeighIn, row) if row else None


def history(connection: Connection, kind: type[N], *, id: str = "", farm_id: str = "") -> list[Change[N]]:
    """All tellings of one thing, or of all of a kind on a farm, oldest first."""
    table = NOUNS[kind]
    who = (
        changes.c.at.label("change_at"),
        changes.c.by.label("change_by"),
        changes.c.why.label("change_why"),
    )
    query = (
        select(table, *who)
        .join(changes, changes.c.number == table.c.change)
        .where(table.c.id == id if id else table.c.farm_id == farm_id)
        .order_by(table.c.change)
    )
    return [
        Change(row["change_at"], row["change_by"], row["change_why"], as_value(kind, row))
        for row in connection.execute(query).mappings()
    ]


def _farm_of(noun: Noun) -> str:
    return noun.id if isinstance(noun, Farm) else noun.farm_id


def _refuse_taken(connection: Connection, noun: Noun) -> None:
    if connection.execute(select(things.c.id).where(things.c.id == noun.id)).first():
        raise NotAllowed("already_there", kind=spoken(type(noun)))
