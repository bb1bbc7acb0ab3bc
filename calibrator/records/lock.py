"""One instance of the program per records file, by a lock of the operating system beside it.

The system frees the lock when the program ends, however it ends, so that a crash never shuts anyone out.
"""

from __future__ import annotations

import errno
from pathlib import Path

from filelock import FileLock, Timeout

from calibrator.records.errors import RecordsLocked, RecordsReadOnly

_NO_LOCKS = {errno.ENOSYS, errno.ENOLCK, errno.EOPNOTSUPP}


def take(file: Path) -> FileLock:
    """Hold the lock of a records file until it is released.

    Raises `RecordsLocked` when another instance has it, `RecordsReadOnly` where no lock can be written.
    """
    # Where a drive knows no locks the library would leave a mark instead, which outlives a crash.
    lock = FileLock(file.with_name(file.name + ".lock"), timeout=0, thread_local=False, fallback_to_soft=False)
    try:
        lock.acquire()
    except Timeout:
        raise RecordsLocked("locked", place=str(file)) from None
    except OSError as error:
        if error.errno in _NO_LOCKS:
            raise RecordsLocked("no_locks", place=str(file)) from None
        raise RecordsReadOnly("read_only", place=str(file)) from None
    return lock
