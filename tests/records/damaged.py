"""Overwrite bytes of a records file at many places, one at a time, and see that all that is lost is told.

    python tests/records/damaged.py FOLDER --places 100 --seed 1

Each round writes 1 to 6,000 random bytes somewhere into a season's file (every tenth also cuts its end off), has it
rescued without any copy, and compares what is there with what was: nothing invented, nothing lost unsaid.
"""

from __future__ import annotations

import argparse
import random
import shutil
from pathlib import Path

import test_salvage as salvaging

from calibrator.records import Records, engine
from calibrator.records.errors import RecordsDamaged
from calibrator.records.paths import backups_folder
from calibrator.records.salvage import salvage


def run(folder: Path, places: int, seed: int) -> str:
    """Damage and rescue; gives the figures."""
    rng = random.Random(seed)
    whole = folder / "whole.sqlite"
    salvaging._season(whole)
    shutil.rmtree(backups_folder(whole), ignore_errors=True)
    before = salvaging._kept(whole)
    lost = []
    for at in range(places):
        file = Path(shutil.copy(whole, folder / f"{at}.sqlite"))
        start, count = rng.randrange(file.stat().st_size), rng.randint(1, 6000)
        spoilt = salvaging._overwrite(file, start, count, seed=at)
        if at % 10 == 9:
            spoilt = spoilt[: rng.randrange(len(spoilt) // 4, len(spoilt))]
            file.write_bytes(spoilt)
        lost.append(_lost(file, before, spoilt))
        for left in folder.glob(f"{at}*"):
            shutil.rmtree(left) if left.is_dir() else left.unlink()
    return (
        f"{places} damaged files of {len(before)} entries: {sum(one == 0 for one in lost)} lost nothing, "
        f"{sum(lost) / len(lost):.1f} entries lost on average, {max(lost)} at most, each of them told"
    )


def _lost(file: Path, before: dict[str, object], spoilt: bytes) -> int:
    try:
        Records.open(str(file)).close()
    except RecordsDamaged:
        return salvaging._check(file, before, spoilt, salvage(str(file)))
    return 0  # the bytes fell where nothing is kept, or changed a value only: the fingerprints look after those


if __name__ == "__main__":
    engine._SYNC = "OFF"
    parser = argparse.ArgumentParser(description="Damage a records file at many places and look for losses unsaid.")
    parser.add_argument("folder", type=Path)
    parser.add_argument("--places", type=int, default=100)
    parser.add_argument("--seed", type=int, default=1)
    asked = parser.parse_args()
    print(run(asked.folder, asked.places, asked.seed))
