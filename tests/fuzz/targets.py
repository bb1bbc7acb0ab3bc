"""Every parser as a function of bytes: it may refuse in its own words, and what it accepts an oracle must read alike.

Anything else that a target raises is a finding. The oracles are written another way than the parsers.
"""

from __future__ import annotations

import json
import math
import re
import shutil
import struct
import tempfile
from collections.abc import Callable
from contextlib import suppress
from datetime import UTC, date, datetime
from functools import lru_cache
from pathlib import Path
from typing import Any

from calibrator.desk.days import DayNotUnderstood, read_day
from calibrator.model import Farm, Lot, WeighIn
from calibrator.records import ImportRefused, Records, RecordsError, sample_lots_folder
from calibrator.records.entries import Entry, read_changes
from calibrator.records.plain import NotPlain, from_plain, to_plain
from calibrator.units import MaskNotUnderstood, read_mask
from calibrator.units.scale_line import LONGEST_LINE
from tests.units.test_fuzz_units import TYPED_KINDS, answer, second_reading

_FIGURES = "1 2 0 10 / 1/2 ½ . , - + − e x 00 ² ٣ 2026 Mar 3 03 mar. T Z : today"
_UNITS = "oz lb g kg qt gal fl in ft ' \" ° F C % #"
_SIGNS = "ST US { } {weight} {unit} {any} {still:ST} | null NaN Infinity 1e400 [] {} true"
SPICE = (
    *_FIGURES.split(),
    *_UNITS.split(),
    *_SIGNS.split(),
    " ",
    "\u200b",
    "\u00a0",
    "\r",
    "\n",
    "\x00",
    "\ud83d",
    "٣",
)
STREAM = "{still:ST},{any},{weight} {unit}"
TODAY = date(2026, 3, 2)


class Feed:
    """Bytes told out one after another: numbers, and texts put together from words that parsers know."""

    def __init__(self, data: bytes) -> None:
        self._data, self._at = data, 0

    def number(self, below: int) -> int:
        self._at += 1
        return (self._data[self._at - 1] if self._at <= len(self._data) else 0) % below

    def text(self) -> str:
        """The rest as text: bytes below 128 as they are, the others as words."""
        rest = self._data[self._at :]
        self._at = len(self._data)
        return "".join(chr(byte) if byte < 128 else SPICE[byte % len(SPICE)] for byte in rest)

    def value(self) -> Any:
        """Some JSON value."""
        kind = self.number(9)
        if kind == 0:
            return self.text()
        if kind == 1:
            return struct.unpack("d", bytes(self.number(256) for _ in range(8)))[0]
        plain = (None, True, [], {}, self.number(256) - 128, 2**40, "2026-03-02T12:00:00+00:00")
        return plain[kind - 2]


def typed(data: bytes) -> bool:
    """A quantity as a person types it."""
    feed = Feed(data)
    kind = TYPED_KINDS[feed.number(len(TYPED_KINDS))]
    text = feed.text()
    quantity = answer(text, kind)
    if quantity is not None:
        expected = second_reading(text, kind)
        assert expected is not None, f"accepted: {text!r}"
        assert quantity.value == float(expected), f"{text!r} read as {quantity.value}, should be {float(expected)}"
    answer(text, kind, decimal_comma=True)
    return quantity is not None


def day(data: bytes) -> bool:
    """A day as a person types it: told in four digits of a year and its other two numbers, nothing guessed."""
    text = Feed(data).text()
    try:
        found = read_day(text, TODAY)
    except DayNotUnderstood:
        return False
    if found is None:
        assert not text.strip()
        return False
    assert date(2000, 1, 1) <= found <= TODAY, f"{text!r} read as {found}"
    assert _tells_day(text.strip().lower(), found), f"{text!r} read as {found}"
    return True


def _tells_day(text: str, found: date) -> bool:
    """Whether the figures in a text can be this day and no other; a month may be a word of either language."""
    numbers = [int(number) for number in re.findall(r"[0-9]+", text)]
    if not numbers:
        return text in ("today", "hoy", "yesterday", "ayer")
    if len(numbers) == 3:
        year_first = numbers == [found.year, found.month, found.day]
        one_way = sorted(numbers) == sorted([found.year, found.month, found.day])
        return year_first or (one_way and (found.day > 12 or found.day == found.month))
    months = ("jan ene", "feb", "mar", "apr abr", "may", "jun", "jul", "aug ago", "sep", "oct", "nov", "dec dic")
    named = any(short in text for short in months[found.month - 1].split())
    return sorted(numbers) == sorted([found.year, found.day]) and named


def scale_line(data: bytes) -> bool:
    """A line of a scale, by a mask of ours or any text as a mask."""
    feed = Feed(data)
    which = feed.number(4)
    text = feed.text()
    if which == 3:
        mask, _, line = text.partition("|")
        try:
            read_mask(mask).read(line)
        except MaskNotUnderstood:
            return False
        return True
    expected = _plain_line(text) if which < 2 else _stream_line(text)
    reading = read_mask("" if which < 2 else STREAM).read(text)
    found = (reading.text, reading.still) if reading else None
    assert found == expected, f"{text!r} read as {found}, should be {expected}"
    return reading is not None


def _plain_line(line: str, *, unit_needed: bool = False) -> tuple[str, bool] | None:
    if len(line) > LONGEST_LINE or not line.isascii():
        return None
    rest = " ".join(line.split())
    sign, rest = (rest[0], rest[1:].removeprefix(" ")) if rest[:1] in ("+", "-") else ("", rest)
    number = rest[: next((at for at, one in enumerate(rest) if one not in "0123456789.,"), len(rest))]
    unit = rest[len(number) :].removeprefix(" ").lower()
    whole, _, part = number.replace(",", ".").partition(".")
    lengths = 1 <= len(whole) <= 12 and len(part) <= 12 and ("." in part) is False
    if not lengths or bool(part) != (len(number) > len(whole)) or rest != rest.strip():
        return None
    if unit not in ("g", "kg", "oz", "lb", "") or (unit_needed and not unit):
        return None
    told = (whole.lstrip("0") or "0") + number[len(whole) :]
    return f"{'-' if sign == '-' else ''}{told} {unit}".strip(), True


def _stream_line(line: str) -> tuple[str, bool] | None:
    if len(line) > LONGEST_LINE or not line.isascii():
        return None
    line = " ".join(line.split())
    head, comma, rest = line.partition(",")
    if not comma or len(head) > 20 or any(one in head for one in " ;:"):
        return None
    for at, one in enumerate(rest):
        if one == "," and (found := _plain_line(rest[at + 1 :], unit_needed=True)):
            return (found[0], head == "ST") if not rest[at + 1 :].startswith(" ") else None
    return None


@lru_cache(maxsize=1)
def _samples() -> list[Any]:
    file = sorted(sample_lots_folder().glob("*.json"))[0]
    kinds: dict[str, Any] = {}
    for change in read_changes(file):
        parts = [part.get("type") for part in change.values() if isinstance(part, dict)]
        kinds.setdefault(json.dumps([change["type"], *parts]), change)
    return [json.dumps(change) for change in kinds.values()]


def change(data: bytes) -> bool:
    """One change of a file to bring in: a sound one with values put in other places, or any JSON."""
    feed = Feed(data)
    plain = json.loads(_samples()[feed.number(len(_samples()))])
    for _ in range(1 + feed.number(3)):
        here, key = plain, ""
        for _ in range(3):
            keys = sorted(here) if isinstance(here, dict) else list(range(len(here))) if isinstance(here, list) else []
            if not keys:
                break
            holder, key = here, keys[feed.number(len(keys))]
            here = holder[key]
            if not isinstance(here, dict | list) or feed.number(3) == 0:
                break
        if key != "":
            holder[key] = feed.value()
    try:
        entry: Any = from_plain(Entry, plain)
        told = to_plain(entry)
    except NotPlain:
        return False
    assert from_plain(Entry, told) == entry
    assert _alike(plain, told), f"{plain} taken as {told}"
    return True


def _alike(sent: Any, kept: Any) -> bool:
    """Whether everything that was sent is kept: numbers as numbers, moments as the same moment."""
    if isinstance(sent, dict):
        return isinstance(kept, dict) and all(
            name in kept and _alike(value, kept[name]) for name, value in sent.items()
        )
    if isinstance(sent, list):
        return len(sent) == len(kept) and all(_alike(one, other) for one, other in zip(sent, kept, strict=True))
    if isinstance(sent, bool) or sent is None or isinstance(kept, bool):
        return sent is kept
    if isinstance(sent, int | float):
        return kept == (("Infinity" if sent > 0 else "-Infinity") if math.isinf(sent) else float(sent))
    if sent == kept:
        return True
    if sent in ("Infinity", "-Infinity"):
        return False
    with suppress(ValueError):
        if "T" in kept:
            return datetime.fromisoformat(sent).astimezone(UTC) == datetime.fromisoformat(kept)
        return date.fromisoformat(sent) == date.fromisoformat(kept)
    return False


@lru_cache(maxsize=1)
def _folder() -> Path:
    return Path(tempfile.mkdtemp(prefix="calibrator-fuzz-"))


def import_file(data: bytes) -> bool:
    """A whole file to bring in, of any bytes: read or refused."""
    file = _folder() / "changes.json"
    head = b'{"format": "calibrator records", "version": 1, "changes": '
    file.write_bytes(head + data[1:] if data[:1] == b"{" else data)
    try:
        read_changes(file)
    except ImportRefused:
        return False
    return True


@lru_cache(maxsize=1)
def _sound_file() -> bytes:
    file = _folder() / "sound.sqlite"
    with Records.open(str(file)) as records:
        farm = records.keep(Farm(id="f", name="Windy Hollow"))
        lot = records.keep(Lot(id="l", farm_id=farm.id, lot_number="25-1103C"))
        records.keep(WeighIn(id="w", farm_id=farm.id, lot_id=lot.id, started_at=datetime(2026, 3, 2, tzinfo=UTC)))
    return file.read_bytes()


def records_file(data: bytes) -> bool:
    """A records file with bytes of it changed: opened to look, and everything in it asked for."""
    feed = Feed(data)
    bad = bytearray(_sound_file())
    for _ in range(1 + feed.number(6)):
        at = (feed.number(256) << 16 | feed.number(256) << 8 | feed.number(256)) % len(bad)
        page = at - at % 4096 + at % 200 if feed.number(2) else at  # the beginnings of pages hold what leads on
        bad[page] = feed.number(256)
    file = _folder() / "bad.sqlite"
    file.write_bytes(bad if feed.number(8) < 7 else bad[: len(bad) * feed.number(256) // 256])
    try:
        with Records.open(str(file), read_only=True) as records:
            for kind in (Farm, Lot, WeighIn):
                records.every(kind)
            records.fills("w")
    except RecordsError:
        return False
    return True


TARGETS: dict[str, Callable[[bytes], bool]] = {
    "typed": typed,
    "day": day,
    "scale_line": scale_line,
    "change": change,
    "import_file": import_file,
    "records_file": records_file,
}
"""Each tells whether it accepted."""


def clean_up() -> None:
    """Throw away the files that targets made."""
    shutil.rmtree(_folder(), ignore_errors=True)
    for made in (_folder, _sound_file):
        made.cache_clear()
