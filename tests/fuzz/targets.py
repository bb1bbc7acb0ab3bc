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
import zipfile
from collections.abc import Callable
from contextlib import suppress
from datetime import UTC, date, datetime, timedelta
from functools import lru_cache
from pathlib import Path
from typing import Any
from xml.sax.saxutils import escape

from openpyxl import Workbook

from calibrator.desk.days import DayNotUnderstood, read_day
from calibrator.model import Farm, Lot, WeighIn
from calibrator.records import ForeignRefused, ImportRefused, Records, RecordsError, sample_lots_folder
from calibrator.records.entries import Entry, read_changes
from calibrator.records.foreign.book import read_sheet, sheets_of
from calibrator.records.foreign.kinds import FileKind, kind_of
from calibrator.records.foreign.text import read_text, way_of
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
    """A day as a person types it: told by its numbers, the last such day where the year is left out."""
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
    if sorted(numbers) == sorted([found.year, found.day]) and named:
        return True
    # Without its year it is the last such day; a leap day may be some years back.
    last = found > TODAY - timedelta(days=366) or (found.month, found.day) == (2, 29)
    in_figures = sorted(numbers) == sorted([found.month, found.day]) and (found.day > 12 or found.day == found.month)
    return last and (in_figures or (numbers == [found.day] and named))


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


def foreign_text(data: bytes) -> bool:
    """Any bytes as a text file of another program: every cell as a reader written by hand finds it, or refused."""
    file = _folder() / "weights.csv"
    feed = Feed(data)
    how = feed.number(4)
    body = data[1:] if how < 2 else feed.text().encode("utf-16" if how == 3 else "utf-8", "replace")
    file.write_bytes(body)
    try:
        assert kind_of(file) is FileKind.TEXT or body.startswith(b"PK")
        way = way_of(file)
        table = read_text(file, way)
    except ForeignRefused:
        return False
    told = body.decode({"utf-8": "utf-8-sig"}.get(way.coding, way.coding))
    expected = [_told_cells(row) for row in _rows_of(told, way.separator)]
    if expected and expected[0] in (["sep="], [f"sep={way.separator}"]):
        expected[0] = []
    while expected and not expected[-1]:
        expected.pop()
    assert [list(row) for row in table.rows] == expected, f"{body!r} by {way} read as {table.rows}"
    return True


def _told_cells(row: list[str]) -> list[str | None]:
    told = [re.sub(r"\A'(?=[=+\-@\t\r\n'])", "", cell) if cell.strip() else None for cell in row]
    while told and told[-1] is None:
        told.pop()
    return told


def _rows_of(text: str, separator: str) -> list[list[str]]:
    """Cells by RFC 4180, one sign after another; a quotation mark counts at the beginning of a cell only."""
    rows: list[list[str]] = [[]]
    cell, at, quoted = "", 0, False
    while at < len(text):
        sign = text[at]
        if quoted:
            if sign != '"':
                cell += sign
            elif text[at + 1 : at + 2] == '"':
                cell, at = cell + '"', at + 1
            else:
                quoted = False
        elif sign == '"' and not cell and (at == 0 or text[at - 1] in f"{separator}\r\n"):
            quoted = True
        elif sign == separator:
            rows[-1].append(cell)
            cell = ""
        elif sign in "\r\n":
            at += text[at : at + 2] == "\r\n"
            rows[-1].append(cell)
            rows.append([])
            cell = ""
        else:
            cell += sign
        at += 1
    rows[-1].append(cell)
    return rows


_CELL = {
    "n": lambda told: f"<c><v>{told}</v></c>",
    "d": lambda told: f'<c s="1"><v>{told}</v></c>',
    "b": lambda told: f'<c t="b"><v>{told}</v></c>',
    "s": lambda told: f'<c t="inlineStr"><is><t xml:space="preserve">{escape(told)}</t></is></c>',
    "f": lambda told: f'<c><f>A1+1</f><v>{told}</v></c>',
    "e": lambda told: '<c t="e"><v>#DIV/0!</v></c>',
}  # fmt: skip


@lru_cache(maxsize=1)
def _parts() -> dict[str, bytes]:
    """The parts of a workbook with a style for days, as the library writes them."""
    book = Workbook()
    book.active.append(["x", datetime(2026, 3, 2)])
    file = _folder() / "parts.xlsx"
    book.save(file)
    with zipfile.ZipFile(file) as package:
        return {name: package.read(name) for name in package.namelist()}


def foreign_book(data: bytes) -> bool:
    """A workbook of any cells, spoiled or not: an unspoiled one tells them as they were written, or it is refused."""
    feed = Feed(data)
    spoils = feed.number(3) == 0
    rows: list[list[Any]] = []
    lines = []
    for _ in range(feed.number(4)):
        cells = [_cell(feed) for _ in range(feed.number(5))]
        rows.append([value for _, value in cells])
        lines.append("<row>" + "".join(told for told, _ in cells) + "</row>")
    sheet = re.sub(rb"<sheetData>.*</sheetData>", b"<sheetData>SHEET</sheetData>", _parts()[_SHEET])
    parts = _parts() | {_SHEET: sheet.replace(b"SHEET", "".join(lines).encode())}
    if spoils:
        name = sorted(parts)[feed.number(len(parts))]
        bad = bytearray(parts[name])
        for _ in range(1 + feed.number(4)):
            bad[(feed.number(256) << 8 | feed.number(256)) % len(bad)] = feed.number(256)
        parts[name] = bytes(bad)
    file = _folder() / "weights.xlsx"
    with zipfile.ZipFile(file, "w") as package:
        for name, content in parts.items():
            package.writestr(name, content)
    try:
        found = [list(row) for row in read_sheet(file, sheets_of(file)[0].name).rows]
    except ForeignRefused:
        assert spoils or not any(value is not None for row in rows for value in row), f"refused: {lines}"
        return False
    for row in rows:
        while row and row[-1] is None:
            row.pop()
    while rows and not rows[-1]:
        rows.pop()
    assert spoils or found == rows, f"{lines} read as {found}, should be {rows}"
    return True


def _cell(feed: Feed) -> tuple[str, Any]:
    """A cell of a sheet and what it means."""
    kind = "ndbsfe"[feed.number(6)]
    number = feed.number(256) * 256 + feed.number(256)
    if kind == "e":
        return _CELL[kind](""), "#DIV/0!"
    if kind == "s":
        text = "".join(chr(32 + feed.number(95)) for _ in range(feed.number(5)))
        return _CELL[kind](text), text if text.strip() else None
    if kind == "d":
        told = max(number, 61)  # before it spreadsheets count a day that never was
        return _CELL[kind](str(told)), datetime(1899, 12, 30) + timedelta(days=told)
    if kind == "b":
        return _CELL[kind](str(number % 2)), bool(number % 2)
    value = number / 8
    return _CELL[kind](repr(value)), value


_SHEET = "xl/worksheets/sheet1.xml"

TARGETS: dict[str, Callable[[bytes], bool]] = {
    "typed": typed,
    "day": day,
    "scale_line": scale_line,
    "change": change,
    "import_file": import_file,
    "records_file": records_file,
    "foreign_text": foreign_text,
    "foreign_book": foreign_book,
}
"""Each tells whether it accepted."""


def clean_up() -> None:
    """Throw away the files that targets made."""
    shutil.rmtree(_folder(), ignore_errors=True)
    for made in (_folder, _sound_file, _parts):
        made.cache_clear()
