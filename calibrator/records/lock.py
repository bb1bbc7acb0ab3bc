"""One instance of the program per records file, by a lock of the operating system beside it.

The system frees the lock when the program ends, however it ends, so that a crash never shuts anyone out.
"""

from __future__ import annotations

import errno
import os
import sys
from pathlib import Path

from calibrator.records.errors import RecordsLocked, RecordsReadOnly

_HELD_ELSEWHERE = {errno.EACCES, errno.EAGAIN, errno.EDEADLK}


class Held:
    """The lock of a records file, until it is released or nobody has it any more."""

    def __init__(self, descriptor: int) -> None:
        self._descriptor: int | None = descriptor

    def release(self) -> None:
        """Let another instance have it. Doing so again changes nothing."""
        descriptor, self._descriptor = self._descriptor, None
        if descriptor is not None:
            _unlock(descriptor)
            os.close(descriptor)

    __del__ = release


def take(file: Path) -> Held:
    """Hold the lock of a records file.

    Raises `RecordsLocked` when another instance has it, `RecordsReadOnly` where no lock can be written.
    """
    try:
        descriptor = os.open(file.with_name(file.name + ".lock"), os.O_RDWR | os.O_CREAT, 0o666)
    except OSError:
        raise RecordsReadOnly("read_only", place=str(file)) from None
    try:
        _lock(descriptor)
    except OSError as error:
        os.close(descriptor)
        raise RecordsLocked("locked" if error.errno in _HELD_ELSEWHERE else "no_locks", place=str(file)) from None
    return Held(descriptor)


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
