"""One instance of the program per records file, by a lock of the operating system beside it.

The system frees the lock when the program ends, however it ends, so that a crash never shuts anyone out.
"""

from __future__ import annotations

import errno
import sys
from pathlib import Path
from typing import BinaryIO

from calibrator.records.errors import RecordsLocked, RecordsReadOnly

_HELD_ELSEWHERE = {errno.EACCES, errno.EAGAIN, errno.EDEADLK}


class Held:
    """The lock of a records file, until it is released."""

    def __init__(self, beside: BinaryIO) -> None:
        self._beside = beside

    def release(self) -> None:
        """Let another instance have it. Doing so again changes nothing."""
        if not self._beside.closed:
            _unlock(self._beside.fileno())
            self._beside.close()


def take(file: Path) -> Held:
    """Hold the lock of a records file.

    Raises `RecordsLocked` when another instance has it, `RecordsReadOnly` where no lock can be written.
    """
    try:
        beside = file.with_name(file.name + ".lock").open("ab")
    except OSError:
        raise RecordsReadOnly("read_only", place=str(file)) from None
    try:
        _lock(beside.fileno())
    except OSError as error:
        beside.close()
        raise RecordsLocked("locked" if error.errno in _HELD_ELSEWHERE else "no_locks", place=str(file)) from None
    return Held(beside)


if sys.platform == "win32":
    import msvcrt

    def _lock(descriptor: int) -> None:
        msvcrt.locking(descriptor, msvcrt.LK_NBLCK, 1)

    def _unlock(descriptor: int) -> None:
        msvcrt.locking(descriptor, msvcrt.LK_UNLCK, 1)
else:
    import fcntl

    def _lock(descriptor: int) -> None:
        fcntl.flock(descriptor, fcntl.LOCK_EX | fcntl.LOCK_NB)

    def _unlock(descriptor: int) -> None:
        fcntl.flock(descriptor, fcntl.LOCK_UN)
