"""Text whose cells are parted by a comma, a semicolon, a tab or a bar (RFC 4180, and what is written in the wild)."""

from __future__ import annotations

import codecs
import csv
import os
import re
from collections import Counter
from collections.abc import Iterator
from io import TextIOWrapper
from pathlib import Path
from typing import TextIO

from calibrator.model.underway import Underway, unwatched
from calibrator.records.errors import ForeignRefused
from calibrator.records.foreign.kinds import reading
from calibrator.records.foreign.table import MOST_CELLS, MOST_COLUMNS, MOST_ROWS, ForeignTable
from calibrator.records.table_file import unguarded
from calibrator.values import dataclass

CODINGS = ("utf-8", "utf-16", "cp1252", "cp850", "mac_roman")
SEPARATORS = ("\t", ";", "|", ",")
"""Where two of them part a file equally well the earlier counts: a comma may be a decimal one."""
LONGEST_LINE = 1_000_000
_SAMPLE_LINES, _SAMPLE = 200, 1 << 16
_CHUNK = 1 << 20
_NO_LETTER = re.compile(rb"[\x81\x8d\x8f\x90\x9d]")  # bytes that Windows-1252 leaves open
_SAYS = re.compile(r'"?sep=(.)"?\s*')


@dataclass(frozen=True)
class TextWay:
    """How a text is written: its letters, and what parts its cells."""

    coding: str
    separator: str


def way_of(file: Path) -> TextWay:
    """How a text seems to be written. Raises `ForeignRefused` for what is no text."""
    coding = _coding_of(file)
    try:
        with reading(file), _opened(file, coding) as opened:
            sample = [line for _, line in zip(range(_SAMPLE_LINES), _lines(opened, file), strict=False)]
    except UnicodeError:
        raise ForeignRefused("foreign_no_table", file=file.name) from None
    return TextWay(coding, _separator_of(sample))


def read_text(file: Path, way: TextWay, underway: Underway = unwatched) -> ForeignTable:
    """All cells as text, blank ones as None, the apostrophe before what looks like a formula taken off.

    Raises `ForeignRefused` with the row for what cannot be told apart.
    """
    rows: list[tuple[str | None, ...]] = []
    held = 0
    with reading(file), _opened(file, way.coding) as opened:
        size = max(1, os.fstat(opened.fileno()).st_size)
        reader = csv.reader(_lines(opened, file), delimiter=way.separator, strict=True)
        try:
            for cells in reader:
                if len(cells) > MOST_COLUMNS:
                    raise ForeignRefused("foreign_wide", file=file.name, most=str(MOST_COLUMNS))
                rows.append(_row(cells))
                held += len(rows[-1])
                if held > MOST_CELLS:
                    raise ForeignRefused("foreign_cells", file=file.name, most=f"{MOST_CELLS:,}")
                if len(rows) > MOST_ROWS:
                    raise ForeignRefused("foreign_long", file=file.name, most=f"{MOST_ROWS:,}")
                if len(rows) % 1000 == 0:
                    underway(min(1.0, os.lseek(opened.fileno(), 0, os.SEEK_CUR) / size))
        except csv.Error:
            raise ForeignRefused("foreign_quotes", file=file.name, row=str(len(rows) + 1)) from None
        except UnicodeError:
            raise ForeignRefused("foreign_letters", file=file.name, row=str(len(rows) + 1)) from None
    if rows and rows[0] in (("sep=",), (f"sep={way.separator}",)):
        rows[0] = ()
    while rows and not rows[-1]:
        rows.pop()
    if not rows:
        raise ForeignRefused("foreign_empty", file=file.name)
    return ForeignTable(file.name, tuple(rows))


def _row(cells: list[str]) -> tuple[str | None, ...]:
    while cells and not cells[-1].strip():
        cells.pop()
    return tuple([unguarded(cell) if cell.strip() else None for cell in cells])


def _opened(file: Path, coding: str) -> TextIOWrapper:
    # A mark at the beginning is taken off; of UTF-16 it tells which of the two it is.
    marked = {"utf-8": "utf-8-sig"}.get(coding, coding)
    return TextIOWrapper(file.open("rb"), encoding=marked, newline="")


def _lines(opened: TextIO, file: Path) -> Iterator[str]:
    while line := opened.readline(LONGEST_LINE):
        if len(line) == LONGEST_LINE:
            raise ForeignRefused("foreign_no_table", file=file.name)
        yield line


def _coding_of(file: Path) -> str:
    """UTF-8 where all of it is; UTF-16 by its mark or its many noughts; else what Windows writes, or DOS."""
    decoder = codecs.getincrementaldecoder("utf-8")()
    is_utf8, of_windows = True, True
    with reading(file), file.open("rb") as opened:
        head = opened.read(_SAMPLE)
        if head.startswith((codecs.BOM_UTF16_LE, codecs.BOM_UTF16_BE)):
            return "utf-16"
        if (unmarked := _unmarked_utf16(head)) is not None:
            return unmarked
        chunk = head
        while chunk:
            if b"\x00" in chunk:
                raise ForeignRefused("foreign_no_table", file=file.name)
            is_utf8 = is_utf8 and _decodes(decoder, chunk)
            of_windows = of_windows and not _NO_LETTER.search(chunk)
            chunk = opened.read(_CHUNK)
    if is_utf8 and _decodes(decoder, b"", final=True):
        return "utf-8"
    return "cp1252" if of_windows else "cp850"


def _unmarked_utf16(head: bytes) -> str | None:
    noughts = [head[at::2].count(0) for at in (0, 1)]
    most = max(noughts)
    if 4 * most < len(head) or min(noughts) * 8 > most:
        return None
    return "utf-16-be" if noughts[0] > noughts[1] else "utf-16-le"


def _decodes(decoder: codecs.IncrementalDecoder, chunk: bytes, *, final: bool = False) -> bool:
    try:
        decoder.decode(chunk, final)
    except UnicodeDecodeError:
        return False
    return True


def _separator_of(lines: list[str]) -> str:
    """What parts the lines most evenly into two cells or more; a first line `sep=;` says it."""
    if lines and (says := _SAYS.fullmatch(lines[0])):
        return says[1]
    told = [(_evenness(lines, separator), -place) for place, separator in enumerate(SEPARATORS)]
    evenness, place = max(told)
    return SEPARATORS[-place] if evenness else ","


def _evenness(lines: list[str], separator: str) -> float:
    widths: Counter[int] = Counter()
    try:
        for cells in csv.reader(lines, delimiter=separator):
            if any(cell.strip() for cell in cells):
                widths[len(cells)] += 1
    except csv.Error:
        return 0.0
    shared = {width: rows for width, rows in widths.items() if width > 1}
    return max(shared.values()) / widths.total() if shared else 0.0
