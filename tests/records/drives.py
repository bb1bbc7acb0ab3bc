"""What real drives do to open records: full, taken away and brought back, for reading only. As root, on Linux.

    PYTHONPATH=. .venv/bin/python tests/records/drives.py FOLDER

Small drives are mounted in FOLDER. Each case keeps a fill, lets the trouble come, tries to keep another, ends the
trouble and keeps it then. Prints the sentence of each; ends with 1 where one was lost, half kept or not refused.
"""

from __future__ import annotations

import subprocess
import sys
from collections.abc import Callable
from datetime import UTC, datetime
from pathlib import Path

from calibrator.model import Cylinder, Farm, Fill, FillWay, Lot, Scale, Scoop, WeighIn, new_id
from calibrator.records import Records, RecordsError

SIZE_KB = 2048


class Drive:
    """A small drive of its own, seen by a second path as a share is."""

    def __init__(self, folder: Path) -> None:
        self.real, self.share = folder / "real", folder / "share"
        for path in (self.real, self.share):
            path.mkdir(parents=True, exist_ok=True)
        _run("mount", "-t", "tmpfs", "-o", f"size={SIZE_KB}k", "tmpfs", self.real)
        self.attach()

    def attach(self) -> None:
        _run("mount", "--bind", self.real, self.share)

    def attach_for_reading(self) -> None:
        _run("mount", "--bind", "-o", "ro", self.real, self.share)

    def detach(self) -> None:
        _run("umount", "-l", self.share)

    def fill(self) -> None:
        with (self.real / "ballast").open("wb", buffering=0) as ballast:
            try:
                while True:
                    ballast.write(bytes(1024))
            except OSError:
                return

    def make_room(self) -> None:
        (self.real / "ballast").unlink()

    def remove(self) -> None:
        for path in (self.share, self.real):
            subprocess.run(["umount", "-l", path], check=False, stderr=subprocess.DEVNULL)


def main(folder: Path) -> int:
    failed = 0
    for name, trouble, end in (
        ("full", Drive.fill, Drive.make_room),
        ("taken away", Drive.detach, Drive.attach),
    ):
        drive = Drive(folder)
        try:
            told, lost = _case(drive, trouble, end)
        finally:
            drive.remove()
        print(f"{name}: {told or 'was not refused'}{' LOST: ' + lost if lost else ''}")
        failed += bool(lost) or not told
    drive = Drive(folder)
    try:
        told = _for_reading(drive)
    finally:
        drive.remove()
    print(f"for reading only: {told or 'was not refused'}")
    return 1 if failed or not told else 0


def _for_reading(drive: Drive) -> str:
    """Refused for writing in words, and looked at without it."""
    with Records.open(str(drive.share / "farm.sqlite")) as records:
        weigh_in = _weigh_in(records)
    drive.detach()
    drive.attach_for_reading()
    with Records.open(str(drive.share / "farm.sqlite"), read_only=True) as looking:
        there = looking.find(WeighIn, weigh_in.id) == weigh_in
    try:
        Records.open(str(drive.share / "farm.sqlite")).close()
    except RecordsError as error:
        return f"{type(error).__name__}: {error}" if there else ""
    return ""


def _case(drive: Drive, trouble: Callable[[Drive], None], end: Callable[[Drive], None]) -> tuple[str, str]:
    told = ""
    with Records.open(str(drive.share / "farm.sqlite")) as records:
        weigh_in = _weigh_in(records)
        first, second = _fill(weigh_in, 1), _fill(weigh_in, 2)
        records.add_fill(first)
        trouble(drive)
        try:
            for _ in range(40):  # a full drive may still have room in the file's last page
                records.add_fill(_fill(weigh_in, 9))
            records.add_fill(second)
        except RecordsError as error:
            told = f"{type(error).__name__}: {error}"
        end(drive)
        records.add_fill(second)
        kept = {fill.id for fill in records.fills(weigh_in.id)}
    with Records.open(str(drive.share / "farm.sqlite")) as records:
        again = {fill.id for fill in records.fills(weigh_in.id)}
    lost = "" if {first.id, second.id} <= kept == again else "a fill is not there"
    return told, lost


def _weigh_in(records: Records) -> WeighIn:
    farm = records.keep(Farm(id=new_id(), name="Windy Hollow"))
    lot = records.keep(Lot(id=new_id(), farm_id=farm.id, lot_number="25-0302A"))
    scale = Scale(
        id=new_id(), farm_id=farm.id, name="Scale", resolution_g=1, resolution_typed="1 g", capacity_g=5000,
        capacity_typed="5 kg",
    )  # fmt: skip
    cup = Cylinder(diameter_mm=96, height_mm=92)
    scoop = Scoop(id=new_id(), farm_id=farm.id, name="Red", shape=cup, volume_ml=665.9, volume_u_ml=3.0)
    scale, scoop = records.keep(scale), records.keep(scoop)
    begun = WeighIn(
        id=new_id(), farm_id=farm.id, lot_id=lot.id, started_at=datetime.now(UTC), scoop_id=scoop.id, scale_id=scale.id
    )
    return records.keep(begun)


def _fill(weigh_in: WeighIn, bag: int) -> Fill:
    return Fill(
        id=new_id(), weigh_in_id=weigh_in.id, way=FillWay.LEVEL, bag=bag, mass_g=330.0, typed="330 g" + " " * 4000,
        by="AB", at=datetime.now(UTC),
    )  # fmt: skip


def _run(*words: str | Path) -> None:
    subprocess.run(words, check=True)


if __name__ == "__main__":
    sys.exit(main(Path(sys.argv[1])))
