"""Values of the nouns as plain JSON data and back, driven by the type hints of the dataclasses.

One codec serves the nested columns of the store and the exchange file, so both tell a value the same way.
Enumerations are their words, dates and times ISO 8601 (times in UTC), tuples lists, an infinite number
the text "Infinity". `type` names which dataclass a group of values is.
"""

from __future__ import annotations

import math
import re
from collections.abc import Callable, Mapping
from dataclasses import MISSING, fields, is_dataclass
from datetime import UTC, date, datetime
from enum import Enum
from functools import cache, partial
from types import NoneType, UnionType
from typing import Any, Union, get_args, get_origin, get_type_hints

TYPE = "type"
"""The key that names the dataclass; no noun has a field of this name."""

LARGEST_INTEGER = 2**31 - 1
_Reader = Callable[[Any, str], Any]
"""Takes a JSON form and where it stands, and gives the value."""

_INFINITE = {"Infinity": math.inf, "-Infinity": -math.inf}


class NotPlain(ValueError):
    """A value that cannot be kept. `where` names the field, `fault` says what is wrong with it."""

    def __init__(self, where: str, fault: str) -> None:
        super().__init__(f"{where}: {fault}" if where else fault)
        self.where = where
        self.fault = fault


_HINTS: dict[type, dict[str, Any]] = {}


def hints(kind: type) -> dict[str, Any]:
    """The resolved type hints of a dataclass, in field order."""
    if kind not in _HINTS:
        found = get_type_hints(kind)
        _HINTS[kind] = {field.name: found[field.name] for field in fields(kind)}
    return _HINTS[kind]


def kind_word(kind: type) -> str:
    """`TaperedCup` → `tapered_cup`."""
    return re.sub(r"(?<=[a-z])(?=[A-Z])", "_", kind.__name__).lower()


def to_plain(value: Any, where: str = "") -> Any:
    """The JSON form of a noun's value. Raises `NotPlain` for what no store can keep: not-a-number, text with
    broken characters, times without a time zone, whole numbers beyond ±2,147,483,647."""
    match value:
        case None | bool():
            return value
        case Enum():
            return value.value
        case str():
            return _sound_text(value, where)
        case int():
            return _sound_integer(value, where)
        case float():
            return _plain_number(value, where)
        case datetime():
            return _utc(value, where).isoformat()
        case date():
            return value.isoformat()
        case tuple() | list():
            return [to_plain(one, f"{where}[{at}]") for at, one in enumerate(value)]
    return {TYPE: kind_word(type(value))} | plain_fields(value, where)


def plain_fields(value: Any, where: str = "") -> dict[str, Any]:
    """A dataclass as a mapping from its field names to their JSON forms."""
    prefix = f"{where}." if where else ""
    return {name: to_plain(getattr(value, name), prefix + name) for name in hints(type(value))}


def from_plain(hint: Any, plain: Any, where: str = "") -> Any:
    """The value that `plain` tells, as `hint` asks. Raises `NotPlain` with the field and the fault."""
    return _reader(hint)(plain, where)


def from_fields(kind: type, plain: Mapping[str, Any], where: str = "") -> Any:
    """A dataclass from a mapping of JSON forms. Only fields with a default may be missing."""
    prefix = f"{where}." if where else ""
    readers, needed = _fields_of(kind)
    for name in plain:
        if name not in readers:
            raise NotPlain(prefix + name, "is not a known field")
    for name in needed:
        if name not in plain:
            raise NotPlain(prefix + name, "is missing")
    return kind(**{name: readers[name](told, prefix + name) for name, told in plain.items()})


@cache
def _fields_of(kind: type) -> tuple[dict[str, _Reader], tuple[str, ...]]:
    """What reads each field of a dataclass, and the fields that must be told."""
    needed = tuple(field.name for field in fields(kind) if field.default is MISSING)
    return {name: _reader(hint) for name, hint in hints(kind).items()}, needed


@cache
def _reader(hint: Any) -> _Reader:
    """What reads a value of this hint; found out once for each, as stores are read in thousands of values."""
    options = get_args(hint) if get_origin(hint) in (Union, UnionType) else (hint,)
    known = tuple(option for option in options if option is not NoneType)
    if len(known) > 1 or is_dataclass(known[0]):
        read: _Reader = partial(_one_of, {kind_word(option): option for option in known})
    elif get_origin(known[0]) is tuple:
        read = partial(_tuple, _reader(get_args(known[0])[0]))
    else:
        read = _SCALARS.get(known[0]) or partial(_told_in_text, known[0])
    return partial(_or_nothing, read) if len(known) < len(options) else read


def _or_nothing(read: _Reader, plain: Any, where: str) -> Any:
    return None if plain is None else read(plain, where)


def _sound_text(text: str, where: str) -> str:
    if text.isascii() and text.isprintable():
        return text
    if "\x00" in text or any("\ud800" <= sign <= "\udfff" for sign in text):
        raise NotPlain(where, "holds a character that cannot be kept")
    return text


def _sound_integer(number: int, where: str) -> int:
    if abs(number) > LARGEST_INTEGER:
        raise NotPlain(where, "is too large a number")
    return number


def _plain_number(number: float, where: str) -> float | str:
    if math.isnan(number):
        raise NotPlain(where, "is not a number")
    return number if math.isfinite(number) else ("Infinity" if number > 0 else "-Infinity")


def _utc(moment: datetime, where: str) -> datetime:
    if moment.tzinfo is None:
        raise NotPlain(where, "is a time without a time zone")
    try:
        return moment.astimezone(UTC)
    except OverflowError:
        raise NotPlain(where, "is not a time that can be kept") from None


def _one_of(kinds: Mapping[str, type], plain: Any, where: str) -> Any:
    if not isinstance(plain, Mapping):
        raise NotPlain(where, "should be a group of named values")
    kind = kinds.get(str(plain.get(TYPE)))
    if kind is None:
        raise NotPlain(f"{where}.{TYPE}" if where else TYPE, f"should be one of {', '.join(kinds)}")
    return from_fields(kind, {name: told for name, told in plain.items() if name != TYPE}, where)


def _tuple(read: _Reader, plain: Any, where: str) -> tuple[Any, ...]:
    if not isinstance(plain, list):
        raise NotPlain(where, "should be a list")
    return tuple(read(one, f"{where}[{at}]") for at, one in enumerate(plain))


def _truth(plain: Any, where: str) -> Any:
    return _expect(plain, bool, "should be true or false", where)


def _integer(plain: Any, where: str) -> int:
    if isinstance(plain, bool):
        raise NotPlain(where, "should be a whole number")
    return _sound_integer(_expect(plain, int, "should be a whole number", where), where)


def _text(plain: Any, where: str) -> str:
    return _sound_text(_expect(plain, str, "should be text", where), where)


def _told_in_text(hint: Any, plain: Any, where: str) -> Any:
    """A word of an enumeration, a day or a moment."""
    text = _text(plain, where)
    try:
        return _utc(datetime.fromisoformat(text), where) if hint is datetime else _word_or_date(hint, text)
    except NotPlain:
        raise
    except ValueError:
        raise NotPlain(where, f"‘{text[:40]}’ is not a {kind_word(hint).replace('_', ' ')}") from None


def _word_or_date(hint: Any, text: str) -> Any:
    return date.fromisoformat(text) if hint is date else hint(text)


def _number(plain: Any, where: str) -> float:
    if isinstance(plain, str) and plain in _INFINITE:
        return _INFINITE[plain]
    if isinstance(plain, bool) or not isinstance(plain, int | float) or plain != plain:
        raise NotPlain(where, "should be a number")
    try:
        return float(plain)
    except OverflowError:
        raise NotPlain(where, "is too large a number") from None


def _expect(plain: Any, kind: type, fault: str, where: str) -> Any:
    if not isinstance(plain, kind):
        raise NotPlain(where, fault)
    return plain


_SCALARS: dict[type, _Reader] = {bool: _truth, float: _number, int: _integer, str: _text}
