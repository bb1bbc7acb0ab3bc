"""One instance of the program per records file, by a lock of the operating system beside it.

The system frees the lock when the program ends, however it ends, so that a crash never shuts anyone out.
"""

from __future__ import annotations

from pathlib import Path

from filelock import FileLock, Timeout

from calibrator.records.errors import RecordsLocked, RecordsReadOnly


def take(file: Path) -> FileLock:
    """Hold the lock of a records file until it is released.

    Raises `RecordsLocked` when another instance has it, `RecordsReadOnly` where no lock can be written.
    """
    lock = FileLock(file.with_name(file.name + ".lock"), timeout=0, thread_local=False)
    try:
        lock.acquire()
    except Timeout:
        raise RecordsLocked("locked", place=str(file)) from None
    except NotImplementedError:
        raise RecordsLocked("no_locks", place=str(file)) from None
    except OSError:
        raise RecordsReadOnly("read_only", place=str(file)) from None
    return lock
