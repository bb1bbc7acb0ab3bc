"""Everything that is kept, as one documented JSON text, out and in again.

The text tells the changes in their order, so that who, when, why and what was replaced travel along:

    {"format": "calibrator records", "version": 1, "changes": [ … ]}

Each change is one of

    {"type": "told", "at": …, "by": …, "why": …, "replaces": revision or null, "noun": {"type": "lot", …}}
    {"type": "added", "at": …, "fact": {"type": "fill", "spot_fill", "trial_fill", "printed" or "sheet_ending", …}}
    {"type": "struck", "at": …, "by": …, "of": id of a fill, "reason": text, or null to let it count again}
    {"type": "signed", "at": …, "sign_off": { … }, "marks": [ … ], "fingerprint": { … } or null}

with the fields of the nouns under their own names, units in the names. `plain` tells how values are written.
"""

from __future__ import annotations

import json
from collections.abc import Iterable, Iterator
from datetime import datetime
from pathlib import Path
from typing import Any

from calibrator.model import Fill, Mark, Noun, Printed, SheetEnding, SignOff, SpotFill, TrialFill
from calibrator.model.underway import Underway, unwatched
from calibrator.records.errors import ImportRefused
from calibrator.records.fingerprints import Fingerprint
from calibrator.records.plain import to_plain
from calibrator.values import dataclass

FORMAT = "calibrator records"
VERSION = 1


@dataclass(frozen=True)
class Told:
    """A telling of a noun. `replaces` is the revision before it."""

    at: datetime
    by: str
    noun: Noun
    why: str = ""
    replaces: str | None = None


@dataclass(frozen=True)
class Added:
    """A fact."""

    at: datetime
    fact: Fill | SpotFill | TrialFill | Printed | SheetEnding


@dataclass(frozen=True)
class Struck:
    """A fill, spot fill or fill of a trial struck out, or (without a reason) counting again."""

    at: datetime
    by: str
    of: str
    reason: str | None


@dataclass(frozen=True)
class Signed:
    """A sign-off and its marks, with its fingerprint where there is one."""

    at: datetime
    sign_off: SignOff
    marks: tuple[Mark, ...]
    fingerprint: Fingerprint | None = None


Entry = Told | Added | Struck | Signed


def pieces_of(entries: Iterable[Entry]) -> Iterator[str]:
    """Changes as the JSON text that `import_season` reads, one change on each line; piece by piece."""
    return pieces_told(json.dumps(to_plain(entry), ensure_ascii=False) for entry in entries)


def pieces_told(changes: Iterable[str]) -> Iterator[str]:
    """As `pieces_of`, of changes that are JSON text already."""
    yield f'{{"format": {json.dumps(FORMAT)}, "version": {VERSION}, "changes": [\n'
    between = ""
    for told in changes:
        yield between + told
        between = ",\n"
    yield "\n]}\n"


def read_changes(file: Path, underway: Underway = unwatched) -> list[Any]:
    """The changes of a file, still as JSON values. Raises `ImportRefused` for what is not such a file."""
    told = _json(file, underway)
    if not isinstance(told, dict) or told.get("format") != FORMAT:
        raise _unreadable(file, "it is not an export of this program")
    if told.get("version") != VERSION:
        found = str(told.get("version"))[:20]
        raise ImportRefused("import_version", file=file.name, found=found, known=str(VERSION))
    if not isinstance(told.get("changes"), list):
        raise _unreadable(file, "it has no list of changes")
    return list(told["changes"])


def _json(file: Path, underway: Underway) -> Any:
    def read_on(value: dict[str, Any]) -> dict[str, Any]:
        underway(0.0)  # asked at each object, because a long text is read in one go otherwise
        return value

    if file.exists() and not file.is_file():  # a pipe or a device has no end
        raise _unreadable(file, "it is not a file")
    try:
        return json.loads(file.read_text(encoding="utf-8-sig"), object_hook=read_on)
    except OSError as error:
        raise _unreadable(file, error.strerror or "no access") from None
    except (ValueError, RecursionError):
        raise _unreadable(file, "it is not JSON text") from None
    except MemoryError:
        raise _unreadable(file, "it is too large for the memory of this computer") from None


def _unreadable(file: Path, fault: str) -> ImportRefused:
    return ImportRefused("import_unreadable", file=file.name, fault=fault)
