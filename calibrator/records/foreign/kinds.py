"""What a file is, by what is in it: its name may say anything."""

from __future__ import annotations

import re
from collections.abc import Iterator
from contextlib import contextmanager
from enum import StrEnum
from pathlib import Path

from calibrator.records.errors import ForeignRefused, ImportRefused
from calibrator.records.foreign.table import LARGEST_FILE_MB

_ZIP, _OLE = b"PK\x03\x04", b"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1"
_PICTURES = (b"%PDF", b"\x89PNG", b"\xff\xd8\xff", b"GIF8", b"Rar!", b"7z\xbc\xaf", b"\x1f\x8b", b"SQLite format 3")
_PAGE = re.compile(rb"<(!doctype|html|table|\?xml|head|meta)\b", re.IGNORECASE)
_LOCKED = "EncryptedPackage".encode("utf-16-le")
_HEAD = 1 << 20


class FileKind(StrEnum):
    """The two kinds that are read."""

    TEXT = "text"
    BOOK = "book"


@contextmanager
def reading(file: Path) -> Iterator[None]:
    """What the disk refuses inside, at whatever moment, becomes `ImportRefused`."""
    try:
        yield
    except OSError as error:
        if error.errno is None:  # said by a library, not by the disk
            raise ForeignRefused("foreign_broken", file=file.name) from None
        raise ImportRefused("import_unreadable", file=file.name, fault=error.strerror or "no access") from None


def kind_of(file: Path) -> FileKind:
    """Whether a file is text or a workbook. Raises `ForeignRefused`, or `ImportRefused` where it cannot be opened."""
    if file.exists() and not file.is_file():  # a pipe or a device has no end
        raise ForeignRefused("foreign_no_table", file=file.name)
    with reading(file), file.open("rb") as opened:
        size = file.stat().st_size
        head = opened.read(_HEAD)
    if size > LARGEST_FILE_MB << 20:
        raise ForeignRefused("foreign_large", file=file.name, most=str(LARGEST_FILE_MB))
    return _by_content(head, file.name)


def _by_content(head: bytes, name: str) -> FileKind:
    if not head.strip(b"\xef\xbb\xbf\xff\xfe\x00 \t\r\n"):
        raise ForeignRefused("foreign_empty", file=name)
    if head.startswith(_ZIP):
        return FileKind.BOOK
    if head.startswith(_OLE):
        raise ForeignRefused("foreign_password" if _LOCKED in head else "foreign_other", file=name)
    if head.startswith(_PICTURES):
        raise ForeignRefused("foreign_no_table", file=name)
    if _PAGE.match(head.removeprefix(b"\xef\xbb\xbf").lstrip()):
        raise ForeignRefused("foreign_page", file=name)
    return FileKind.TEXT
