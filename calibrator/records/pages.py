"""The pages of a damaged file, made such that what is whole in them can be asked for.

The layout of the file is that of https://www.sqlite.org/fileformat2.html: the header in the first 100 bytes (the
count of pages at 28), the list of tables as a tree that begins on page 1, inner pages of type 5.
"""

from __future__ import annotations

from pathlib import Path

_HEADER = 100
_COUNT_AT = 28
_INNER = 5


def fill_up(file: Path) -> None:
    """Add blank pages where the end of the file is cut off, so that the rest can be read."""
    content = file.read_bytes()
    size = page_size(content)
    told = int.from_bytes(content[_COUNT_AT : _COUNT_AT + 4], "big")
    there = -(-len(content) // size)
    wanted = told if there <= told <= 100 * there else there
    file.write_bytes(content.ljust(wanted * size, b"\x00"))


def graft(file: Path, donor: Path) -> None:
    """Take the list of tables over from another file of the same make."""
    size = page_size(donor.read_bytes())
    content, given = bytearray(file.read_bytes()), donor.read_bytes()
    content.extend(bytes(-len(content) % size))
    for page in _tables_pages(given, 1, size):
        start = (page - 1) * size
        content.extend(bytes(max(start + size - len(content), 0)))
        content[start : start + size] = given[start : start + size]
    content[_COUNT_AT : _COUNT_AT + 4] = (len(content) // size).to_bytes(4, "big")
    file.write_bytes(content)


def page_size(content: bytes) -> int:
    """The size of a page as the header tells it; where that is damaged, the one this program's files have."""
    told = int.from_bytes(content[16:18], "big")
    return told if told in (512, 1024, 2048, 4096, 8192, 16384, 32768) else 4096


def _tables_pages(content: bytes, page: int, size: int) -> list[int]:
    start = (page - 1) * size + (_HEADER if page == 1 else 0)
    if content[start] != _INNER:
        return [page]
    cells = int.from_bytes(content[start + 3 : start + 5], "big")
    children = [int.from_bytes(content[start + 8 : start + 12], "big")]
    for at in range(cells):
        place = start + 12 + 2 * at
        cell = (page - 1) * size + int.from_bytes(content[place : place + 2], "big")
        children.append(int.from_bytes(content[cell : cell + 4], "big"))
    return [page, *(found for child in children for found in _tables_pages(content, child, size))]
