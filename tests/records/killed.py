"""Kill a program at work, again and again, and see that all it was told is kept is there.

    python tests/records/killed.py FILE --kills 1000 --seed 1

Each round forks a child that works on FILE without pause (weigh-ins, strikes, sign-offs, sheets, spot fills,
imports) and tells each piece of work after its call has returned. After a random number of them and a random
while, the child is killed by signal 9. What was told must be there, the file must open, and nothing may be
there by half. This shows that transactions are whole and acknowledged only when committed; a power cut is
beyond it.
"""

from __future__ import annotations

import argparse
import os
import random
import signal
import time
from collections import Counter
from dataclasses import replace
from pathlib import Path

import invented

from calibrator.model import Farm, Lot, Step, WeighIn, new_id
from calibrator.records import Records, import_season
from calibrator.records.entries import Told, text_of

LOTS_IN_IMPORT = 20
MOST_TOLD = 25
LONGEST_S = 0.02


def work(file: Path, tell: int) -> None:
    """Work without end; each thing done is told to the file descriptor `tell`, one line each."""

    def done(*words: str) -> None:
        os.write(tell, (" ".join(words) + "\n").encode())

    with Records.open(str(file)) as records:
        done("open")
        while True:
            world = invented.World(records)
            done("fill", world.weigh_in.id, world.fills[1].id)
            for mass in range(280, 286):
                kept = records.add_fill(invented.fill(world.weigh_in, float(mass)))
                done("fill", world.weigh_in.id, kept.id)
            records.strike(kept.id, "spilled", "AB")
            done("struck", world.weigh_in.id, kept.id)
            world.weigh_in = records.keep(replace(world.weigh_in, step=Step.SIGN_OFF))
            done("step", world.weigh_in.id, world.weigh_in.revision)
            told = world.signed()
            done("signed", world.weigh_in.id, told.id)
            sheet = records.record_print(invented.printed(told))
            done("printed", world.farm.id, sheet.id)
            spot = records.add_spot_fill(invented.spot(told))
            done("spot", world.lot.id, spot.id)
            of = records.keep(invented.trial(world.lot, world.scoop, world.scale))
            tried = records.add_trial_fill(invented.trial_fill(of))
            done("tried", of.id, tried.id)
            done("imported", _import(records, file))


def _import(records: Records, file: Path) -> str:
    farm = invented.farm(name="imported", revision=new_id())
    lots = [invented.lot(farm.id, revision=new_id()) for _ in range(LOTS_IN_IMPORT)]
    told = file.with_suffix(f".{os.getpid()}.json")
    told.write_text(text_of(Told(invented.NOON, "", noun) for noun in (farm, *lots)), encoding="utf-8")
    import_season(records, told)
    return farm.id


def killed_once(file: Path, rng: random.Random) -> list[list[str]]:
    """What a child told before it was killed."""
    read, write = os.pipe()
    child = os.fork()
    if child == 0:
        os.close(read)
        try:
            work(file, write)
        finally:
            os._exit(1)
    os.close(write)
    with os.fdopen(read) as pipe:
        told = [pipe.readline() for _ in range(rng.randrange(MOST_TOLD))]
        time.sleep(rng.uniform(0, LONGEST_S))
        os.kill(child, signal.SIGKILL)
        _, status = os.waitpid(child, 0)
        assert os.WIFSIGNALED(status), "the child ended by itself"
        return [line.split() for line in (*told, *pipe.readlines())]


def check(records: Records, told: list[list[str]]) -> None:
    """Everything told is there."""
    for what, *names in told:
        match what, names:
            case "fill", [weigh_in, id]:
                assert id in [one.id for one in records.fills(weigh_in)], names
            case "struck", [weigh_in, id]:
                struck = {one.id: one.struck_reason for one in records.fills(weigh_in)}
                assert struck[id] == "spilled", names
            case "step", [weigh_in, revision]:
                assert records.find(WeighIn, weigh_in).revision == revision, names
            case "signed", [weigh_in, id]:
                found = records.sign_off_of(weigh_in)
                assert (found.id if found else "none") == id, names
            case "printed", [farm, id]:
                assert id in [one.id for one in records.prints(farm)], names
            case "spot", [lot, id]:
                assert id in [one.id for one in records.spot_fills(lot)], names
            case "tried", [trial, id]:
                assert id in [one.id for one in records.trial_fills(trial)], names
            case "imported", [farm]:
                assert len(records.every(Lot, farm)) == LOTS_IN_IMPORT, names


def check_halves(records: Records) -> None:
    """Nothing is there by half: sign-offs have their marks, imports all their lots."""
    for farm in records.every(Farm):
        if farm.name == "imported":
            assert len(records.every(Lot, farm.id)) == LOTS_IN_IMPORT, farm.id
        for sign_off in records.sign_offs(farm.id):
            assert len(records.marks(sign_off.id)) == 2, sign_off.id


def run(file: Path, kills: int, seed: int) -> Counter[str]:
    """Kill `kills` times; gives how often each kind of work was told."""
    rng = random.Random(seed)
    counts: Counter[str] = Counter()
    for at in range(kills):
        told = killed_once(file, rng)
        counts.update(what for what, *_ in told)
        counts["journals left"] += file.with_name(file.name + "-journal").exists()
        with Records.open(str(file)) as records:
            check(records, told)
            if at % 100 == 99 or at == kills - 1:
                check_halves(records)
            if at == kills - 1:
                assert records.check_fingerprints() == (), "something is half-signed"
        for left in file.parent.glob("*.json"):
            left.unlink()
    return counts


if __name__ == "__main__":
    parser = argparse.ArgumentParser(description="Kill a program at work and look for losses.")
    parser.add_argument("file", type=Path)
    parser.add_argument("--kills", type=int, default=1000)
    parser.add_argument("--seed", type=int, default=1)
    asked = parser.parse_args()
    counted = run(asked.file, asked.kills, asked.seed)
    print(f"{asked.kills} kills, nothing lost:", ", ".join(f"{n} {what}" for what, n in sorted(counted.items())))
