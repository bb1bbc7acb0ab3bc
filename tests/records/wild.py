"""Files as they come from other programs, sound ones and spoiled ones, built for the tests."""

from __future__ import annotations

import zipfile
from collections.abc import Callable, Sequence
from datetime import datetime
from pathlib import Path
from typing import Any

from openpyxl import Workbook
from openpyxl.utils.datetime import CALENDAR_MAC_1904

OLE = b"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1"


def book(file: Path, rows: Sequence[Sequence[Any]], *, since_1904: bool = False, sheet: str = "Sheet1") -> Path:
    """A workbook of one sheet."""
    made = Workbook()
    if since_1904:
        made.epoch = CALENDAR_MAC_1904
    made.active.title = sheet
    for row in rows:
        made.active.append(list(row))
    made.save(file)
    return file


def repacked(file: Path, change: Callable[[str, bytes], bytes]) -> Path:
    """The same package with its parts changed."""
    with zipfile.ZipFile(file) as read:
        parts = {name: read.read(name) for name in read.namelist()}
    with zipfile.ZipFile(file, "w", zipfile.ZIP_DEFLATED) as written:
        for name, content in parts.items():
            written.writestr(name, change(name, content))
    return file


def worked_out(file: Path, of: str, value: str) -> Path:
    """The workbook with the value that a spreadsheet program worked out for a formula."""

    def put(name: str, content: bytes) -> bytes:
        plain = f"<f>{of}</f><v></v>".encode(), f"<f>{of}</f><v />".encode(), f"<f>{of}</f><v/>".encode()
        for empty in plain:
            content = content.replace(empty, f"<f>{of}</f><v>{value}</v>".encode())
        return content

    return repacked(file, put)


NOON = datetime(2024, 11, 7, 12, 0)
