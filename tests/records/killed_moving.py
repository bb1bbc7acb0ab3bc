"""Kill a copy being made, a copy being put back, an older file being brought up, a damaged one being rescued.

    python tests/records/killed_moving.py FOLDER --kills 250 --seed 1

Each kind of work is cut short by signal 9 before each of its steps with files (Python's audit events tell them), and
`--kills` times at a random moment. Then the old or the new file must stand in its place and open, nothing of the old
one may be lost, every copy that is listed must be whole, and the work must succeed when it is begun again.
"""

from __future__ import annotations

import argparse
import os
import random
import re
import shutil
import signal
import sqlite3
import sys
import time
from collections.abc import Callable, Iterator, Sequence
from contextlib import closing
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from pathlib import Path

import invented

from calibrator.records import Records, RecordsDamaged, backup, engine, restore_backup
from calibrator.records.salvage import salvage
from calibrator.records.tables import SCHEMA
from tests.exported import export_text

FROZEN = Path(__file__).with_name("frozen")
engine._SYNC = "OFF"  # what is written outlives a killed program without being waited for
STANDS_STILL_S = 120  # work that takes so long is ended by the system, and that is a failure
STEPS = ("open", "os.", "shutil.", "sqlite3.connect")
_TAKEN = re.compile(r'"taken_later": "[^"]*"')


@dataclass(frozen=True)
class Job:
    """Work on a file: how the file is made ready, what is done, and what must hold however far it came."""

    name: str
    ready: Callable[[Path], None]
    do: Callable[[Path], object]
    holds: Callable[[Path, Path], None]  # the folder worked in, and an untouched one


def text_of(file: Path) -> str:
    """All that a file tells when the program opens it; when fingerprints were taken later is left out."""
    with Records.open(str(file)) as records:
        return _TAKEN.sub("", export_text(records))


def cut_short(do: Callable[[Path], object], file: Path, at_step: int = 0, after_s: float | None = None) -> bool:
    """Do it in a child that is killed; tells whether it was killed before it had ended."""
    child = os.fork()
    if child == 0:
        code = 1
        signal.alarm(STANDS_STILL_S)
        try:
            if at_step:
                _kill_at(at_step, str(file.parent))
            do(file)
            code = 0
        finally:
            os._exit(code)
    if after_s is not None:
        time.sleep(after_s)
        os.kill(child, signal.SIGKILL)
    _, status = os.waitpid(child, 0)
    assert os.WIFSIGNALED(status) or os.WEXITSTATUS(status) == 0, "the work failed by itself"
    assert not os.WIFSIGNALED(status) or os.WTERMSIG(status) == signal.SIGKILL, f"it took over {STANDS_STILL_S} s"
    return os.WIFSIGNALED(status)


def _kill_at(step: int, folder: str) -> None:
    steps = 0

    def count(event: str, args: tuple[object, ...]) -> None:
        nonlocal steps
        if event.startswith(STEPS) and any(folder in str(arg) for arg in args):
            steps += 1
            if steps == step:
                os.kill(os.getpid(), signal.SIGKILL)

    sys.addaudithook(count)


def _season(file: Path) -> None:
    with Records.open(str(file)) as records:
        invented.World(records).signed()
    for copy in backup.every(file):
        copy.path.unlink()  # of the records while they were empty
    backup.make(file, "daily", datetime.now(UTC) - timedelta(days=1))
    with Records.open(str(file)) as records:
        invented.World(records, name="after the copy").signed()


def _oldest(file: Path) -> None:
    shutil.copy(FROZEN / "layout_0001.sqlite", file)


def _damaged(file: Path) -> None:
    _season(file)
    size = file.stat().st_size
    with file.open("r+b") as raw:
        raw.seek(size // 2)
        raw.write(os.urandom(size // 8))


def _copies_hold(file: Path) -> None:
    for copy in backup.every(file):
        with closing(sqlite3.connect(f"{copy.path.as_uri()}?mode=ro", uri=True)) as raw:
            assert raw.execute("PRAGMA integrity_check").fetchall() == [("ok",)], copy


def _copied(file: Path) -> None:
    backup.make(file, "by-hand")


def _copy_holds(folder: Path, untouched: Path) -> None:
    file = folder / "records.sqlite"
    assert text_of(file) == text_of(untouched / "records.sqlite")
    _copies_hold(file)
    backup.make(file, "by-hand")
    assert not list(backup.backups_folder(file).glob("*.part*")), "what was cut short is still there"


def _put_back(file: Path) -> None:
    restore_backup(str(file), _before(file))


def _before(file: Path) -> backup.Backup:
    return backup.every(file)[0]


def _put_back_holds(folder: Path, untouched: Path) -> None:
    file = folder / "records.sqlite"
    old, new = text_of(untouched / "records.sqlite"), text_of(_before(untouched / "records.sqlite").path)
    found = text_of(file)
    assert found in (old, new)
    if found == new:
        assert old in [text_of(aside) for aside in folder.glob("records-damaged-*.sqlite")]
    _put_back(file)
    assert text_of(file) == new


def _brought_up(file: Path) -> None:
    Records.open(str(file)).close()


def _brought_up_holds(folder: Path, untouched: Path) -> None:
    file = folder / "records.sqlite"
    with closing(sqlite3.connect(file)) as raw:
        layout = int(raw.execute("SELECT version_num FROM alembic_version").fetchone()[0])
    assert layout in (1, SCHEMA), "half brought up"
    reference = untouched / "brought-up.sqlite"
    if not reference.exists():
        shutil.copy(untouched / "records.sqlite", reference)
    assert text_of(file) == text_of(reference)
    _copies_hold(file)


def _rescued(file: Path) -> None:
    salvage(str(file))


def _rescued_holds(folder: Path, untouched: Path) -> None:
    file, damaged = folder / "records.sqlite", (untouched / "records.sqlite").read_bytes()
    if file.read_bytes() != damaged:
        assert damaged in [aside.read_bytes() for aside in folder.glob("records-damaged-*.sqlite")]
    else:
        _rescued(file)
    try:
        Records.open(str(file)).close()
    except RecordsDamaged as error:
        raise AssertionError("neither the old nor the new file") from error


JOBS = (
    Job("copy", _season, _copied, _copy_holds),
    Job("put back", _season, _put_back, _put_back_holds),
    Job("brought up", _oldest, _brought_up, _brought_up_holds),
    Job("rescued", _damaged, _rescued, _rescued_holds),
)


def run(
    folder: Path, kills: int, seed: int, every: int = 1, jobs: Sequence[Job] = JOBS
) -> Iterator[tuple[str, int, int]]:
    """Cut each kind of work short; gives its name, at how many steps, and how many random moments came in time.

    Of `every` steps one is enough where the time is short.
    """
    rng = random.Random(seed)
    for job in jobs:
        untouched = folder / f"{job.name} untouched"
        untouched.mkdir(parents=True)
        job.ready(untouched / "records.sqlite")
        begun = time.monotonic()
        cut_short(job.do, _fresh(untouched, folder))
        longest = time.monotonic() - begun
        steps = in_time = 0
        while cut_short(job.do, _fresh(untouched, folder), at_step=1 + every * steps):
            job.holds(folder / "at work", untouched)
            steps += 1
        for _ in range(kills):
            in_time += cut_short(job.do, _fresh(untouched, folder), after_s=rng.uniform(0, longest))
            job.holds(folder / "at work", untouched)
        yield job.name, steps, in_time


def _fresh(untouched: Path, folder: Path) -> Path:
    at_work = folder / "at work"
    shutil.rmtree(at_work, ignore_errors=True)
    shutil.copytree(untouched, at_work, ignore=shutil.ignore_patterns("brought-up*"))
    return at_work / "records.sqlite"


if __name__ == "__main__":
    parser = argparse.ArgumentParser(description="Kill a program while it moves records files.")
    parser.add_argument("folder", type=Path)
    parser.add_argument("--kills", type=int, default=250)
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--every", type=int, default=1, help="of so many steps one")
    parser.add_argument("--only", nargs="*", default=[job.name for job in JOBS], help="these kinds of work")
    asked = parser.parse_args()
    wanted = [job for job in JOBS if job.name in asked.only]
    for name, at_steps, at_random in run(asked.folder.absolute(), asked.kills, asked.seed, asked.every, wanted):
        print(f"{name}: cut short at {at_steps} steps and {at_random} random moments, nothing lost", flush=True)
