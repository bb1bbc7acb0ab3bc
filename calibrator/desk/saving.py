"""Where a file is proposed to be saved and under which name. No window needed."""

from __future__ import annotations

import unicodedata
from collections.abc import Sequence
from pathlib import Path

from PySide6.QtCore import QStandardPaths

LONGEST_PART = 60  # bytes; a name of four stays below the 255 that file systems take
_NOT_IN_NAMES = frozenset('<>:"/\\|?*·')
_BETWEEN = " - "
_DEVICES = frozenset(
    ("con", "prn", "aux", "nul", *(f"{port}{number}" for port in ("com", "lpt") for number in range(1, 10)))
)
"""Names that one system keeps for devices, whatever follows after a dot; common practice, no source."""


def file_name(parts: Sequence[str], ending: str) -> str:
    """A name made of these parts, blank ones left out, that every usual file system takes; `ending` has its dot."""
    kept = [part for part in map(_part, parts) if part]
    name = _BETWEEN.join(kept) or "calibrator"
    return f"_{name}{ending}" if name.split(".")[0].strip().lower() in _DEVICES else name + ending


def folder_of(remembered: str) -> Path:
    """The folder to propose: the one used last while it is there, else that of documents, else that of the person."""
    documents = QStandardPaths.writableLocation(QStandardPaths.StandardLocation.DocumentsLocation)
    for place in (remembered, documents):
        if place and Path(place).is_dir():
            return Path(place)
    return Path.home()


def _part(text: str) -> str:
    """Without signs that no name may hold, and without a dot or space at either end."""
    plain = "".join(_sign(sign) for sign in unicodedata.normalize("NFC", text))
    bare = " ".join(plain.split()).strip(". -")
    return bare.encode()[:LONGEST_PART].decode(errors="ignore").strip(". -")


def _sign(sign: str) -> str:
    kind = unicodedata.category(sign)
    return " " if sign in _NOT_IN_NAMES or kind.startswith("Z") else "" if kind.startswith("C") else sign
