"""A damaged file: what can be read is brought over row by row into a fresh one, and what is lost is told.

Everything kept is one of the numbered changes, and nothing is ever changed. So rows from the damaged file and
rows from a dated copy belong together by their names, and a number that no row bears is something lost.
"""

from __future__ import annotations

import shutil
import sqlite3
from collections.abc import Iterator
from contextlib import closing
from datetime import datetime
from pathlib import Path

from calibrator.records import backup, lock, pages, staging
from calibrator.records.errors import RecordsDamaged, RecordsError
from calibrator.records.integrity import Finding
from calibrator.records.place import place_of
from calibrator.records.readable import Readable, Row
from calibrator.records.staging import Stage
from calibrator.values import dataclass

_TRACE = b"CREATE TABLE sign_offs"
_TELLS_LOT = {"fills": "weigh_in_id", "spot_fills": "lot_id"}


@dataclass(frozen=True)
class Loss:
    """One change that could not be brought over, as far as it is known: what, when, who, of which lot."""

    number: int
    what: str = ""
    at: datetime | None = None
    by: str = ""
    lot_number: str = ""


@dataclass(frozen=True)
class Salvaged:
    """What became of a damaged file.

    `read` changes came from the file itself, `from_copy` more from the copy of `copy_at`. `last_at` is when the
    newest change that is there was kept: what came after it is lost without a trace. `findings` are signed-off
    weigh-ins of which a part is lost.
    """

    aside: Path
    read: int
    from_copy: int
    copy_at: datetime | None
    last_at: datetime | None
    lost: tuple[Loss, ...]
    findings: tuple[Finding, ...] = ()


def has_traces(url: str) -> bool:
    """Whether a file was ever one of this program's: its tables are still named in it somewhere."""
    place = place_of(url)
    try:
        return place.file is not None and _TRACE in place.file.read_bytes()
    except OSError:
        return False


def salvage(url: str) -> Salvaged:
    """Bring over what can be read of a damaged records file; the file itself is set aside whole.

    Raises `RecordsLocked` while it is open anywhere, `RecordsDamaged` where nothing at all could be read and no
    copy helps, `RecordsError` for a server; the file is then as it was.
    """
    place = place_of(url)
    if place.file is None:
        raise RecordsError("server_backups", place=place.name)
    from tempfile import TemporaryDirectory  # the first page should not wait for what only a rescue needs

    held = lock.take(place.file)
    try:
        with TemporaryDirectory(dir=place.file.parent, prefix="salvage-") as folder:
            return _salvaged(place.file, Path(folder))
    except (OSError, sqlite3.Error) as error:
        raise RecordsError("salvage_failed", place=place.name, fault=str(error)) from error
    finally:
        held.release()


def _salvaged(file: Path, folder: Path) -> Salvaged:
    fresh = folder / "fresh.sqlite"
    stage, referred = _read(file, folder, fresh)
    read = len(stage.numbers())
    copy_at = _add_copy(file, folder, stage)
    from_copy = len(stage.numbers()) - read
    stage.settle()
    if not stage.numbers():
        stage.close()
        raise RecordsDamaged("nothing_read", place=str(file))
    lost, last_at = tuple(_losses(stage, referred)), stage.newest()
    stage.close(chained=True)
    aside = backup.put_in_place(fresh, file)
    assert aside is not None  # the damaged file was just read
    return Salvaged(aside, read, from_copy, copy_at, last_at, lost)


def _read(file: Path, folder: Path, fresh: Path) -> tuple[Stage, dict[str, dict[int, str]]]:
    """A stage with the rows of the damaged file, and which lots the lost ones belonged to."""
    for work in _openable(file, folder):
        with closing(sqlite3.connect(work)) as raw:
            readable = Readable(raw)
            try:
                there = readable.tables()
            except sqlite3.Error:
                continue
            stage = staging.like(fresh, there, _told_layout(raw))
            if stage is None:
                continue
            rows, referred = _rows(readable, stage), _referred(readable)
        stage.put(rows)
        if any(rows.values()):
            stage.bring_up()
            return stage, referred
        stage.close()
    return staging.newest(fresh), {}


def _openable(file: Path, folder: Path) -> Iterator[Path]:
    """The damaged file in ways that might be opened: as it is, without its journal, with a list of tables grafted."""
    work = folder / "work.sqlite"
    journal = file.with_name(file.name + "-journal")
    if journal.exists():
        shutil.copy(file, work)
        shutil.copy(journal, work.with_name(work.name + "-journal"))
        yield work
        work.with_name(work.name + "-journal").unlink(missing_ok=True)
    shutil.copy(file, work)
    pages.fill_up(work)
    yield work
    blank = folder / "blank.sqlite"
    staging.blank(blank)
    for donor in (*(copy.path for copy in reversed(backup.every(file))), blank):
        shutil.copy(file, work)
        pages.fill_up(work)
        if donor.stat().st_size:
            pages.graft(work, donor)
            yield work


def _told_layout(raw: sqlite3.Connection) -> str:
    try:
        return str(raw.execute("SELECT version_num FROM alembic_version").fetchone()[0])
    except (sqlite3.Error, TypeError):
        return ""


def _rows(readable: Readable, stage: Stage) -> dict[str, list[Row]]:
    found: dict[str, list[Row]] = {}
    for table, columns in stage.columns().items():
        found[table] = [staging.numbered(table, number, row) for number, row in readable.rows(table, columns).items()]
    return found


def _referred(readable: Readable) -> dict[str, dict[int, str]]:
    return {table: readable.referred(table, column) for table, column in _TELLS_LOT.items()}


def _add_copy(file: Path, folder: Path, stage: Stage) -> datetime | None:
    """Add what the newest copy of the same records has besides; gives its day where there is one."""
    for copy in reversed(backup.every(file)):
        work = folder / "copy.sqlite"
        shutil.copy(copy.path, work)
        if stage.add(work):
            return copy.at
    return None


def _losses(stage: Stage, referred: dict[str, dict[int, str]]) -> Iterator[Loss]:
    there, told = stage.borne(), stage.changes()
    missing = [number for number in range(1, max((*there, *told), default=0) + 1) if number not in there]
    lots = _lots(stage, referred, [(number, told.get(number)) for number in missing])
    for number in missing:
        change = told.get(number)
        if change is None:
            yield Loss(number)
        else:
            yield Loss(number, change.what, change.at, change.by, lots.get(number, ""))


def _lots(
    stage: Stage, referred: dict[str, dict[int, str]], missing: list[tuple[int, staging.Kept | None]]
) -> dict[int, str]:
    """The lots of lost fills: both rows and changes run in one order, so the lost of both go together."""
    found: dict[int, str] = {}
    for table, what in (("fills", "fill"), ("spot_fills", "spot_fill")):
        numbers = [number for number, change in missing if change and change.what == what]
        present = stage.row_numbers(table)
        owners = [owner for row, owner in sorted(referred.get(table, {}).items()) if row not in present]
        if len(owners) == len(numbers):
            found |= {n: stage.lot_number(table, owner) for n, owner in zip(numbers, owners, strict=True)}
    return found
