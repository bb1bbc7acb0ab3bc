"""Backups of records that may be closed or broken: list them, put one back."""

from __future__ import annotations

from pathlib import Path

from calibrator.model.underway import Underway, unwatched
from calibrator.records import backup, lock
from calibrator.records.backup import Backup
from calibrator.records.errors import RecordsError
from calibrator.records.place import place_of


def backups_of(url: str) -> list[Backup]:
    """The dated copies of a records file, oldest first; none for a server."""
    file = place_of(url).file
    return backup.every(file) if file else []


def restore_backup(url: str, chosen: Backup, underway: Underway = unwatched) -> Path | None:
    """Put a backup in the place of a records file; what was there is set aside and its new path returned.

    Raises `RecordsLocked` while the records are open anywhere, `RecordsUnreachable` when the backup is gone,
    `RecordsError` when it is broken or cannot be copied; the records are then as they were.
    """
    place = place_of(url)
    if place.file is None:
        raise RecordsError("server_backups", place=place.name)
    held = lock.take(place.file)
    try:
        return backup.restore(place.file, chosen, underway)
    finally:
        held.release()
