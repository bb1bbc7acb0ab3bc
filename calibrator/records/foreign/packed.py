"""A look into a workbook's package before anything in it is parsed (ECMA-376 part 2: a ZIP of XML parts)."""

from __future__ import annotations

import re
import zipfile
import zlib
from pathlib import Path

from calibrator.model.underway import Underway, unwatched
from calibrator.records.errors import ForeignRefused
from calibrator.records.foreign.kinds import reading

LARGEST_UNPACKED = 600 << 20
MOST_PARTS = 5_000
MOST_TIMES, SMALL = 100, 16 << 20
"""What is larger than SMALL when unpacked may not be more than so many times as large as packed."""
_CHUNK, _OVERLAP = 1 << 20, 16
_DECLARES = re.compile(rb"<!(DOCTYPE|ENTITY)", re.IGNORECASE)
_FORMULA = re.compile(rb"<(?:\w{1,8}:)?f[ />]")


def holds_formulas(file: Path, underway: Underway = unwatched) -> bool:
    """Whether a sound workbook has formulas. Raises `ForeignRefused` for what is none, or would do harm.

    No part is unpacked before the sizes of all are found bearable; no workbook needs entities of its own.
    """
    try:
        with reading(file), zipfile.ZipFile(file) as package:
            parts = package.infolist()
            _refuse_harm(parts, file.name)
            return _looked_through(package, parts, file.name, underway)
    except (zipfile.BadZipFile, zlib.error, EOFError, NotImplementedError, RuntimeError, ValueError):
        raise ForeignRefused("foreign_broken", file=file.name) from None


def _refuse_harm(parts: list[zipfile.ZipInfo], name: str) -> None:
    if any(part.flag_bits & 1 for part in parts):
        raise ForeignRefused("foreign_password", file=name)
    unpacked, packed = sum(part.file_size for part in parts), sum(part.compress_size for part in parts)
    if len(parts) > MOST_PARTS or unpacked > LARGEST_UNPACKED or unpacked > max(SMALL, MOST_TIMES * packed):
        raise ForeignRefused("foreign_bomb", file=name)
    names = {part.filename.lower() for part in parts}
    if "xl/workbook.bin" in names or "mimetype" in names or "index/document.iwa" in names:
        raise ForeignRefused("foreign_other", file=name)
    if "[content_types].xml" not in names or not any(one.startswith("xl/") for one in names):
        raise ForeignRefused("foreign_no_table", file=name)


def _looked_through(package: zipfile.ZipFile, parts: list[zipfile.ZipInfo], name: str, underway: Underway) -> bool:
    formulas, done, whole = False, 0, max(1, sum(part.file_size for part in parts))
    for part in parts:
        if not part.filename.lower().endswith((".xml", ".rels")):
            continue
        sheet, tail = part.filename.lower().startswith("xl/worksheets/"), b""
        with package.open(part) as opened:
            while chunk := opened.read(_CHUNK):
                piece = tail + chunk
                if _DECLARES.search(piece):
                    raise ForeignRefused("foreign_entities", file=name)
                formulas = formulas or (sheet and _FORMULA.search(piece) is not None)
                tail, done = chunk[-_OVERLAP:], done + len(chunk)
                underway(min(1.0, done / whole))
    return formulas
