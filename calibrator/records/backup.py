"""Dated copies of a records file, beside it, by SQLite's own backup.

One a day at most and one before each change of layout. Kept: all of the last two weeks, then the last of
each week for a quarter, then the last of each month for good; copies before a change of layout always. The newest
fourteen stay whatever the rule says: a clock that was once set wrong must not cost them.
"""

from __future__ import annotations

import os
import re
import shutil
import sqlite3
from collections.abc import Iterable
from contextlib import closing, suppress
from datetime import UTC, date, datetime, timedelta
from itertools import chain, count
from pathlib import Path

from calibrator.model.underway import Underway, unwatched
from calibrator.records.errors import RecordsError, RecordsUnreachable
from calibrator.records.paths import backups_folder
from calibrator.values import dataclass

DAILY = "daily"
_NAME = re.compile(r"(\d{8}T\d{6})-([a-z0-9-]+)\.sqlite")
_STAMP = "%Y%m%dT%H%M%S"
_ALL_DAYS = 14
_WEEKLY_DAYS = 92
_PAGES_AT_ONCE = 1024  # few enough to tell how far it is
_ALWAYS = 14


@dataclass(frozen=True)
class Backup:
    """One dated copy; `why` is `daily`, or what it was made before."""

    path: Path
    at: datetime
    why: str


def every(file: Path) -> list[Backup]:
    """The backups of a records file, oldest first."""
    found = (_backup(path) for path in backups_folder(file).glob("*.sqlite"))
    return sorted((one for one in found if one), key=lambda one: (one.at, one.path.name))


def make(file: Path, why: str, now: datetime | None = None, underway: Underway = unwatched) -> Backup:
    """Copy the records as they are now. Raises `RecordsError` when no whole copy could be made."""
    at = (now or datetime.now(UTC)).astimezone(UTC).replace(microsecond=0)
    folder = backups_folder(file)
    path = folder / f"{at.strftime(_STAMP)}-{why}.sqlite"
    unfinished = path.with_suffix(".part")
    try:
        folder.mkdir(exist_ok=True)
        for left in folder.glob("*.part*"):  # of a copy that was cut short
            _tidy(left)
        _copy(file, unfinished, underway)
        os.replace(unfinished, path)
    except (OSError, sqlite3.Error) as error:
        raise RecordsError("backup_failed", place=str(file), backups=str(folder), fault=_reason(error)) from error
    finally:
        _tidy(unfinished)
    return Backup(path, at, why)


def daily(file: Path, now: datetime | None = None, underway: Underway = unwatched) -> Backup | None:
    """Make today's copy unless there is one, and let go of those that the rule no longer keeps."""
    moment = now or datetime.now(UTC)
    there = every(file)
    if any(one.why == DAILY and one.at.date() == moment.astimezone(UTC).date() for one in there):
        return None
    made = make(file, DAILY, moment, underway)
    for old in to_drop([*there, made], made.at.date()):
        old.path.unlink(missing_ok=True)
    return made


def to_drop(backups: Iterable[Backup], today: date) -> list[Backup]:
    """The backups that the rule no longer keeps, oldest first."""
    last: dict[tuple[int, ...], Backup] = {}
    routine = sorted((one for one in backups if one.why == DAILY), key=lambda one: one.at)
    for one in routine:
        last[_period(one.at.date(), today)] = one
    kept = {one.path for one in (*last.values(), *routine[-_ALWAYS:])}
    return [one for one in routine if one.path not in kept]


def put_in_place(fresh: Path, file: Path, now: datetime | None = None) -> Path | None:
    """Put a whole new file in the place of a records file, which must be closed; nothing is deleted.

    What was there is kept beside it under a dated name, which is returned (None where nothing was there). Cut
    short at any moment, the old file or the new one stands in the place.
    """
    aside = _aside(file, now) if file.exists() else None
    if aside is not None:
        _keep_as(file, aside)
    journal = _journal(file)
    if journal.exists():  # a damaged file's; beside the new file it would be taken for that one's
        kept = aside or _aside(file, now)
        journal.rename(_journal(kept))
    os.replace(fresh, file)
    return aside


def restore(file: Path, chosen: Backup, underway: Underway = unwatched) -> Path | None:
    """Put a backup in the place of a records file, which must be closed.

    What was there is set aside, and its new path returned (None where nothing was there). Raises
    `RecordsUnreachable` when the backup is gone, `RecordsError` when it cannot be copied.
    """
    if not chosen.path.is_file():
        raise RecordsUnreachable("no_backup", place=str(chosen.path))
    fresh = file.with_name(file.name + ".part")
    try:
        _copy(chosen.path, fresh, underway)
        return put_in_place(fresh, file)
    except (OSError, sqlite3.Error) as error:
        raise RecordsError(
            "backup_failed", place=str(file), backups=str(chosen.path.parent), fault=_reason(error)
        ) from error
    finally:
        _tidy(fresh)


def _aside(file: Path, now: datetime | None) -> Path:
    """A dated name that is free."""
    stem = f"{file.stem}-damaged-{(now or datetime.now(UTC)).strftime(_STAMP)}"
    names = (file.with_name(f"{stem}{more}{file.suffix}") for more in chain([""], (f"-{n}" for n in count(2))))
    return next(name for name in names if not name.exists())


def _keep_as(file: Path, name: Path) -> None:
    """A second name for a file; where the drive knows no such thing a copy, so that the first never is gone."""
    try:
        os.link(file, name)
    except OSError:
        unfinished = name.with_name(name.name + ".part")
        shutil.copy2(file, unfinished)
        os.replace(unfinished, name)


def _journal(file: Path) -> Path:
    return file.with_name(file.name + "-journal")


def _period(day: date, today: date) -> tuple[int, ...]:
    age = today - day
    if age < timedelta(days=_ALL_DAYS):
        return 0, day.toordinal()
    if age < timedelta(days=_WEEKLY_DAYS):
        return 1, *day.isocalendar()[:2]
    return 2, day.year, day.month


def _copy(source: Path, target: Path, underway: Underway = unwatched) -> None:
    """Copy, and look through what was written as if it were to be opened."""

    def copied(_status: int, remaining: int, total: int) -> None:
        underway(1 - remaining / max(total, 1))

    for left in (target, _journal(target)):
        left.unlink(missing_ok=True)
    with closing(sqlite3.connect(source)) as old, closing(sqlite3.connect(target)) as new:
        old.backup(new, pages=_PAGES_AT_ONCE, progress=copied)
    with target.open("rb+") as written:
        os.fsync(written.fileno())
    with closing(sqlite3.connect(f"{target.absolute().as_uri()}?mode=ro", uri=True)) as read:
        verdict = str(read.execute("PRAGMA integrity_check(1)").fetchone()[0])
    if verdict != "ok":
        raise sqlite3.DatabaseError(verdict)


def _tidy(unfinished: Path) -> None:
    with suppress(OSError):
        unfinished.unlink(missing_ok=True)


def _backup(path: Path) -> Backup | None:
    named = _NAME.fullmatch(path.name)
    if not named:
        return None
    try:
        at = datetime.fromisoformat(named[1]).replace(tzinfo=UTC)
    except ValueError:
        return None
    return Backup(path, at, named[2])


def _reason(error: Exception) -> str:
    return getattr(error, "strerror", None) or str(error)
