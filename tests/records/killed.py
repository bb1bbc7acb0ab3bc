"""Kill a program at work, again and again, and see that all it was told is kept is there.

    python tests/records/killed.py FILE --kills 1000 --seed 1

Each round forks a child that works on FILE without pause (weigh-ins, strikes, sign-offs, sheets, spot fills, checks
of the mix, counts of bags, trials of feeders, imports) and tells each piece of work after its call has returned.
After a random number of them and a random while, the child is killed by signal 9. Then the file must open as the
program opens it, all that was ever told must be there, nothing may be there by half, and SQLite must find nothing
wrong. This shows that transactions are whole and acknowledged only when committed; a power cut is beyond it.
"""

from __future__ import annotations

import argparse
import os
import random
import signal
import sqlite3
import time
from collections import Counter, defaultdict
from collections.abc import Callable
from contextlib import closing
from dataclasses import replace
from pathlib import Path

import invented

from calibrator.model import Farm, Lot, Scale, Scoop, SignOff, Step, WeighIn, new_id
from calibrator.records import Records, import_season
from calibrator.records.bringing import Past, bring_in
from calibrator.records.entries import Told, pieces_of

LOTS_IN_IMPORT = 20
FILLS_IN_FILE = 8
MOST_TOLD = 40
LONGEST_S = 0.02
STANDS_STILL_S = 120  # a child that tells nothing for so long is ended by the system, and that is a failure
CHAIN_EVERY = 50  # kills; looking through the whole chain takes as long as it is
Tell = Callable[..., None]


def work(file: Path, tell: int) -> None:
    """Work without end; each thing done is told to the file descriptor `tell`, one line each."""

    def done(*words: str) -> None:
        os.write(tell, (" ".join(words) + "\n").encode())

    with Records.open(str(file)) as records:
        done("open")
        farm = next((one for one in records.every(Farm) if one.name != "imported"), None)
        farm = farm or records.keep(invented.farm())
        scoop, scale = records.keep(invented.scoop(farm.id)), records.keep(invented.scale(farm.id))
        while True:
            lot = records.keep(invented.lot(farm.id), by="AB")
            done("kept", "lots", lot.revision)
            told = _weigh_in(records, lot, scoop, scale, done)
            _after(records, told, done)
            _check(records, lot, done)
            _try(records, lot, scoop, scale, done)
            lot = records.keep(replace(lot, note="opened", fed_from=invented.NOON.date()), by="AB")
            done("kept", "lots", lot.revision)
            done("imported", _import(records, file))
            done("brought", *_bring(records, farm, scoop, scale))


def _weigh_in(records: Records, lot: Lot, scoop: Scoop, scale: Scale, done: Tell) -> SignOff:
    weigh_in = records.keep(invented.weigh_in(lot, scoop_id=scoop.id, scale_id=scale.id), by="AB")
    done("kept", "weigh_ins", weigh_in.revision)
    for mass in range(280, 286):
        kept = records.add_fill(invented.fill(weigh_in, float(mass)))
        done("fill", kept.id)
    records.strike(kept.id, "spilled", "AB")
    done("struck", kept.id, "spilled")
    records.restore(kept.id, "AB")
    done("struck", kept.id)
    weigh_in = records.keep(replace(weigh_in, step=Step.SIGN_OFF))
    done("step", weigh_in.id, weigh_in.revision)
    told = invented.sign_off(weigh_in, scoop, scale, lot)
    marks = [invented.mark(told), invented.mark(told, target_mass_g=567.0, full_scoops=1)]
    records.sign_off(told, marks, seen_fills=records.fills(weigh_in.id))
    done("signed", told.id, *(mark.id for mark in marks))
    return told


def _after(records: Records, told: SignOff, done: Tell) -> None:
    sheet = records.record_print(invented.printed(told))
    done("printed", sheet.id)
    word = invented.ending(sheet)
    records.end_sheet(word)
    done("ended", word.id)
    spot = records.add_spot_fill(invented.spot(told))
    done("spot", spot.id)
    records.strike_spot(spot.id, "wrong bag", "AB")
    done("spot_struck", spot.id, "wrong bag")


def _check(records: Records, lot: Lot, done: Tell) -> None:
    check = records.keep(invented.mix_check(lot), by="AB")
    done("mix_check", check.revision)
    check = records.keep(replace(check, withdrawn_reason="misread"), by="AB", why="misread")
    done("mix_check", check.revision)
    count = records.keep(invented.bag_count(lot), by="AB")
    done("kept", "bag_counts", count.revision)


def _try(records: Records, lot: Lot, scoop: Scoop, scale: Scale, done: Tell) -> None:
    of = records.keep(invented.trial(lot, scoop, scale))
    for number in (1, 2):
        tried = records.add_trial_fill(invented.trial_fill(of, number=number))
        done("tried", tried.id)
    records.strike_trial_fill(tried.id, "spilled", "AB")
    done("trial_struck", tried.id, "spilled")
    closed = records.keep(replace(of, closed=True))
    done("kept", "feeder_trials", closed.revision)


def _import(records: Records, file: Path) -> str:
    farm = invented.farm(name="imported", revision=new_id())
    lots = [invented.lot(farm.id, revision=new_id()) for _ in range(LOTS_IN_IMPORT)]
    told = file.with_suffix(f".{os.getpid()}.json")
    told.write_text("".join(pieces_of(Told(invented.NOON, "", noun) for noun in (farm, *lots))), encoding="utf-8")
    import_season(records, told)
    return farm.id


def _bring(records: Records, farm: Farm, scoop: Scoop, scale: Scale) -> list[str]:
    """As out of another program's file: a lot, a past weigh-in, its fills."""
    lot = invented.lot(farm.id, lot_number=new_id())
    past = invented.weigh_in(lot, scoop_id=scoop.id, scale_id=scale.id, abandoned=True)
    weighed = [invented.fill(past, float(mass)) for mass in range(FILLS_IN_FILE)]
    bring_in(records, Past((lot,), (past,), tuple(weighed)), file="season.csv", by="AB")
    return [one.id for one in weighed]


def killed_once(file: Path, rng: random.Random) -> list[list[str]]:
    """What a child told before it was killed."""
    read, write = os.pipe()
    child = os.fork()
    if child == 0:
        os.close(read)
        signal.alarm(STANDS_STILL_S)
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
        assert os.WTERMSIG(status) == signal.SIGKILL, f"the child stood still for {STANDS_STILL_S} s"
        return [line.split() for line in (*told, *pipe.readlines())]


TABLES = {
    "fill": "fills", "spot": "spot_fills", "tried": "trial_fills", "printed": "prints", "ended": "sheet_endings",
    "mix_check": "mix_checks",
}  # fmt: skip
STRIKES = {"struck": "fill_strikes", "spot_struck": "spot_strikes", "trial_struck": "trial_strikes"}


class Ledger:
    """All that was ever told, to be looked for in the file again after each kill."""

    def __init__(self) -> None:
        self._named: dict[str, set[str]] = defaultdict(set)
        self._struck: dict[str, set[tuple[str, str | None]]] = defaultdict(set)
        self._imported: set[str] = set()

    def enter(self, told: list[list[str]]) -> None:
        for what, *names in told:
            if what in STRIKES:
                self._struck[STRIKES[what]].add((names[0], " ".join(names[1:]) or None))
            elif what == "kept":
                self._named[names[0]].add(names[1])
            elif what == "step":
                self._named["weigh_ins"].add(names[1])
            elif what == "signed":
                self._named["sign_offs"].add(names[0])
                self._named["marks"].update(names[1:])
            elif what == "imported":
                self._imported.add(names[0])
            elif what == "brought":
                self._named["fills"].update(names)
            elif what in TABLES:
                self._named[TABLES[what]].add(names[0])

    def check(self, raw: sqlite3.Connection) -> None:
        for table, names in self._named.items():
            keys = {row[1] for row in raw.execute(f"PRAGMA table_info({table})") if row[1] in ("id", "revision")}
            key = "revision" if "revision" in keys else "id"
            there = {row[0] for row in raw.execute(f"SELECT {key} FROM {table}")}
            assert names <= there, f"{table}: {names - there} told and gone"
        for table, told in self._struck.items():
            kept = set(raw.execute(f"SELECT of_id, reason FROM {table}"))
            assert told <= kept, f"{table}: {told - kept} told and gone"
        farms = {row[0] for row in raw.execute("SELECT id FROM farms")}
        assert self._imported <= farms, "an import was told and is gone"


HALVES = {
    "a sign-off without its marks": "SELECT s.id FROM sign_offs s WHERE (SELECT count(*) FROM marks m WHERE "
    "m.sign_off_id = s.id) <> 2",
    "a sign-off without its fingerprint": "SELECT id FROM sign_offs WHERE id NOT IN (SELECT sign_off_id FROM "
    "fingerprints)",
    "half an import": "SELECT f.id FROM farms f WHERE f.name = 'imported' AND (SELECT count(*) FROM lots l WHERE "
    f"l.farm_id = f.id) <> {LOTS_IN_IMPORT}",
    "half a file from elsewhere": "SELECT w.id FROM weigh_ins w WHERE w.abandoned AND (SELECT count(*) FROM fills f "
    f"WHERE f.weigh_in_id = w.id) <> {FILLS_IN_FILE}",
    "a gap in the changes": "SELECT number FROM changes WHERE number > (SELECT count(*) FROM changes)",
    "a broken chain": "SELECT a.sign_off_id FROM fingerprints a LEFT JOIN fingerprints b ON b.farm_id = a.farm_id AND "
    "b.number = a.number - 1 WHERE a.previous <> coalesce(b.sha256, '')",
}


def check_file(file: Path, ledger: Ledger) -> None:
    """SQLite finds nothing wrong, all that was ever told is there, and nothing by half."""
    with closing(sqlite3.connect(f"{file.absolute().as_uri()}?mode=ro", uri=True)) as raw:
        assert raw.execute("PRAGMA integrity_check").fetchall() == [("ok",)]
        assert raw.execute("PRAGMA foreign_key_check").fetchall() == []
        for what, question in HALVES.items():
            assert raw.execute(question).fetchall() == [], what
        ledger.check(raw)


def check_steps(records: Records, told: list[list[str]]) -> None:
    """What the program itself reads of a weigh-in is the step last told."""
    for what, *names in told:
        if what == "step":
            assert records.find(WeighIn, names[0]).revision == names[1]


def run(file: Path, kills: int, seed: int, say: Callable[[str], None] = lambda _: None) -> Counter[str]:
    """Kill `kills` times; gives how often each kind of work was told."""
    rng, ledger = random.Random(seed), Ledger()
    counts: Counter[str] = Counter()
    for at in range(1, kills + 1):
        told = killed_once(file, rng)
        ledger.enter(told)
        counts.update(what for what, *_ in told)
        counts["journals left"] += file.with_name(file.name + "-journal").exists()
        with Records.open(str(file)) as records:
            check_steps(records, told)
            if at % CHAIN_EVERY == 0 or at == kills:
                assert records.check_fingerprints() == (), "something is half-signed"
                say(f"{at} kills")
        check_file(file, ledger)
        for left in file.parent.glob("*.json"):
            left.unlink()
    return counts


if __name__ == "__main__":
    parser = argparse.ArgumentParser(description="Kill a program at work and look for losses.")
    parser.add_argument("file", type=Path)
    parser.add_argument("--kills", type=int, default=1000)
    parser.add_argument("--seed", type=int, default=1)
    asked = parser.parse_args()
    counted = run(asked.file, asked.kills, asked.seed, lambda text: print(text, flush=True))
    print(f"{asked.kills} kills, nothing lost:", ", ".join(f"{n} {what}" for what, n in sorted(counted.items())))
