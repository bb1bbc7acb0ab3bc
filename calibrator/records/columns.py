"""Column types that carry the nouns' values the same way on SQLite and PostgreSQL."""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC, datetime
from enum import StrEnum
from typing import Any

from sqlalchemy import JSON, DateTime, Dialect, Text
from sqlalchemy.types import TypeDecorator, TypeEngine

from calibrator.records.plain import from_plain, to_plain


class Moment(TypeDecorator[datetime]):
    """A point in time, kept in UTC and given back in UTC.

    SQLite has no such type: there it is ISO 8601 text of fixed width, which also sorts rightly.
    """

    impl = DateTime(timezone=True)
    cache_ok = True

    def load_dialect_impl(self, dialect: Dialect) -> TypeEngine[Any]:
        return dialect.type_descriptor(Text() if dialect.name == "sqlite" else DateTime(timezone=True))

    def process_bind_param(self, value: datetime | None, dialect: Dialect) -> Any:
        if value is None:
            return None
        utc = value.astimezone(UTC)
        return utc.isoformat(timespec="microseconds") if dialect.name == "sqlite" else utc

    def process_result_value(self, value: Any, dialect: Dialect) -> datetime | None:
        return (_of_text if dialect.name == "sqlite" else _in_utc)(value)

    def result_processor(self, dialect: Dialect, coltype: object) -> Callable[[Any], datetime | None]:
        """Asked once a query, so that a row takes one call in place of three."""
        return _of_text if dialect.name == "sqlite" else _in_utc


def _of_text(value: str | None) -> datetime | None:
    return None if value is None else datetime.fromisoformat(value)


def _in_utc(value: datetime | None) -> datetime | None:
    return None if value is None else value.astimezone(UTC)


class Word(TypeDecorator[StrEnum]):
    """One of the words of an enumeration."""

    impl = Text
    cache_ok = True

    def __init__(self, words: type[StrEnum]) -> None:
        super().__init__()
        self.words = words

    def process_bind_param(self, value: StrEnum | None, dialect: Dialect) -> str | None:
        return None if value is None else str(value)

    def process_result_value(self, value: str | None, dialect: Dialect) -> StrEnum | None:
        return None if value is None else self.words(value)

    def result_processor(self, dialect: Dialect, coltype: object) -> Callable[[Any], StrEnum | None]:
        """Asked once a query: to make the word anew in each row took half as long as the row."""
        known: dict[str | None, StrEnum | None] = {str(word): word for word in self.words}
        known[None] = None

        def read(value: str | None) -> StrEnum | None:
            return known[value] if value in known else self.process_result_value(value, dialect)

        return read


class Nested(TypeDecorator[Any]):
    """A value with parts (a shape, a composition, groups), kept as JSON."""

    impl = JSON(none_as_null=True)
    cache_ok = True

    def __init__(self, hint: Any) -> None:
        super().__init__()
        self.hint = hint

    def process_bind_param(self, value: Any, dialect: Dialect) -> Any:
        return None if value is None else to_plain(value)

    def process_result_value(self, value: Any, dialect: Dialect) -> Any:
        return None if value is None else from_plain(self.hint, value)
