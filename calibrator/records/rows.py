"""Between rows and nouns, and the small questions that all writing asks first."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import UTC, datetime
from typing import Any, TypeVar

from sqlalchemy import Connection, RowMapping, TableClause, func, insert, select

from calibrator.records.errors import NotAllowed
from calibrator.records.plain import NotPlain, hints, kind_word, plain_fields, to_plain
from calibrator.records.tables import changes, sign_offs, things

T = TypeVar("T")


class Writing:
    """A transaction that keeps things; all of it is kept or nothing. No other writer shares it."""

    def __init__(self, connection: Connection) -> None:
        self.connection = connection
        self.last = version(connection)
        """The number of the newest change."""

    def change(self, what: str, by: str, why: str = "", at: datetime | None = None) -> int:
        """Enter who did what and why; returns the number that orders it."""
        self.last += 1
        told = {"number": self.last, "at": at or now(), "by": by, "why": why, "what": what}
        self.connection.execute(insert(changes), told)
        return self.last

    def add(self, table: TableClause, value: Any, **extra: Any) -> None:
        """Insert a noun or fact, with columns that it does not have itself."""
        names = {column.name for column in table.columns}
        own = {name: getattr(value, name) for name in hints(type(value)) if name in names}
        self.connection.execute(insert(table), own | extra)


def now() -> datetime:
    """The time at which a change is entered."""
    return datetime.now(UTC)


def version(connection: Connection) -> int:
    """The number of the newest change; 0 in an empty store."""
    return int(connection.execute(select(func.max(changes.c.number))).scalar() or 0)


def as_value(kind: type[T], row: RowMapping | Mapping[str, Any]) -> T:
    """The noun or fact that a row tells."""
    return kind(**{name: row[name] for name in hints(kind)})


def refuse_unsound(value: Any, **also_text: str) -> None:
    """Raise `NotAllowed` for a value that not every store could keep and give back unchanged."""
    try:
        plain_fields(value)
        to_plain(list(also_text.values()))
    except NotPlain as error:
        raise NotAllowed("not_kept", kind=spoken(type(value)), fault=str(error)) from None


def refuse_missing(connection: Connection, kind: type, id: str) -> None:
    """Raise `NotAllowed` unless there is such a thing."""
    found = connection.execute(select(things.c.kind).where(things.c.id == id)).scalar()
    if found != kind_word(kind):
        raise NotAllowed("unknown", kind=spoken(kind), id=id)


def refuse_frozen(connection: Connection, weigh_in_id: str) -> None:
    """Raise `NotAllowed` when the weigh-in is signed off."""
    query = select(sign_offs.c.id).where(sign_offs.c.weigh_in_id == weigh_in_id)
    if connection.execute(query).first():
        raise NotAllowed("frozen")


def spoken(kind: type) -> str:
    """`WeighIn` → `weigh-in`, as a sentence says it."""
    return kind_word(kind).replace("_", "-" if kind.__name__ == "WeighIn" else " ")
