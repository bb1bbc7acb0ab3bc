"""Invent the season of sample_lots/: a farm, its scoops, and a year of lots, weighed in through the real guide.

Everything is invented. Run `python tests/make_sample_lots.py` from the project's folder to write it anew; the
same seed gives the same season. Sign-offs and marks come from the program's own science, so write it anew
whenever that changes (a test tells when).
"""

from __future__ import annotations

import sys
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import replace
from datetime import UTC, date, datetime, timedelta
from pathlib import Path
from random import Random
from tempfile import TemporaryDirectory
from typing import Any
from unittest.mock import patch
from uuid import UUID

ROOT = Path(__file__).resolve().parent.parent
if __name__ == "__main__":
    sys.path.insert(0, str(ROOT))

from calibrator.desk.guide import Guide  # noqa: E402
from calibrator.desk.scoop_lines import marked  # noqa: E402
from calibrator.model import (  # noqa: E402
    Composition,
    Cylinder,
    Farm,
    FeederTrial,
    FillWay,
    Lot,
    MixingRate,
    PackageKind,
    Plan,
    PlanGroup,
    Printed,
    PrintKind,
    RateBasis,
    Scale,
    Scoop,
    SignOff,
    SpotFill,
    Step,
    TaperedCup,
    UnitSystem,
    Vessel,
    VolumeMeans,
    WeighIn,
    names,
    new_id,
)
from calibrator.records import Records, rows  # noqa: E402
from calibrator.science import scoop as shapes  # noqa: E402
from calibrator.science.struck import struck_volume, volume_from_dimensions  # noqa: E402
from calibrator.units import Kind, read, show_length  # noqa: E402
from tests.exported import export_text  # noqa: E402
from tests.sample_feeding import Feeding  # noqa: E402
from tests.sample_stock import Stock  # noqa: E402
from tests.sample_story import DELIVERIES, SUPPLIER, WEIGHERS, Bags, Delivery, ounces  # noqa: E402

SEED = 10
FILE = ROOT / "sample_lots" / "season.json"
TRIALS = {"26-0523A": "before we practised", "26-1001B": "after we practised shaking it level"}
"""The lots with which feeders tried the same scoop, and what was noted."""

FED_DAYS = 22
SETTLED_LEVEL_FILLS, MOST_LEVEL_FILLS, MOST_FILLS_TO_MARK, MOST_LINES = 8, 14, 16, 5


def mass(text: str) -> float:
    return read(text, Kind.MASS, UnitSystem.FARM).value


def length(text: str) -> float:
    return read(text, Kind.LENGTH, UnitSystem.FARM).value


def on_ruler(length_mm: float) -> str:
    """As a ruler with thirty-seconds of an inch tells it."""
    return show_length(length_mm, UnitSystem.FARM, step=1 / 32)


class Season:
    """The people, the powder and the clock of the story, at work on `records`."""

    def __init__(self, records: Records, rng: Random) -> None:
        self.records = records
        self.rng = rng
        self.at = datetime(2025, 11, 15, 15, 0, tzinfo=UTC)
        self.wall_factor = {"red cup": 1.004, "white cup": 0.998}
        self.farm = self.keep(Farm(id=new_id(), name="Thistledown Corner (invented)"))
        self.scale = self.keep(self._scale())
        self.scoop = self.keep(self._red_cup())
        self.plan = self._plans()
        self.feeding = Feeding(self)
        self.stock = Stock(self)

    def now(self) -> datetime:
        """A little later at each look."""
        self.at += timedelta(seconds=self.rng.randrange(8, 26))
        return self.at

    def keep(self, noun: Any, why: str = "", by: str = "RO") -> Any:
        self.now()
        return self.records.keep(noun, by=by, why=why)

    def _scale(self) -> Scale:
        return Scale(
            id=new_id(),
            farm_id=self.farm.id,
            name="bench scale",
            resolution_g=mass("0.1 oz"),
            resolution_typed="0.1 oz",
            capacity_g=mass("11 lb"),
            capacity_typed="11 lb",
        )

    def _red_cup(self) -> Scoop:
        shape = TaperedCup(rim_diameter_mm=109.0, floor_diameter_mm=91.0, height_mm=84.0)
        volume = volume_from_dimensions(shape)
        cup = self._new_scoop("red cup", shape, volume.volume_ml, volume.u_ml, water=False)
        return replace(cup, told_by="red handle")

    def _white_cup(self) -> Scoop:
        shape = Cylinder(diameter_mm=98.0, height_mm=88.0)
        rim = shapes.rim_volume_ml(shape)
        waters = [mass(ounces(rim * 0.998 * 0.9972 + self.rng.gauss(0, 1.0))) for _ in range(5)]
        volume = struck_volume(waters, 20.0, self.scale.resolution_g, shape=shape)
        cup = self._new_scoop("white cup", shape, volume.volume_ml, volume.u_ml, water=True)
        return replace(cup, told_by="notch in the handle", replaces_id=self.scoop.id)

    def _new_scoop(self, name: str, shape: Any, volume_ml: float, u_ml: float, *, water: bool) -> Scoop:
        return Scoop(
            id=new_id(),
            farm_id=self.farm.id,
            name=name,
            shape=shape,
            volume_ml=round(volume_ml, 1),
            volume_u_ml=round(u_ml, 2),
            volume_from_water=water,
        )

    def _plans(self) -> Plan:
        quart = read("1 qt", Kind.VOLUME, UnitSystem.FARM).value
        vessels = [
            self.keep(
                Vessel(
                    id=new_id(),
                    farm_id=self.farm.id,
                    name=name,
                    rim_volume_ml=read(size, Kind.VOLUME, UnitSystem.FARM).value,
                    rim_volume_typed=size,
                    usable_share=share,
                )
            )
            for name, size, share in (("pail", "5 gal", 0.95), ("mixing cart", "12 gal", 0.9))
        ]
        rate = MixingRate(
            basis=RateBasis.ON_WATER, powder_mass_g=mass("10 oz"), volume_ml=2 * quart, typed="10 oz / 2 qt"
        )
        groups = tuple(
            PlanGroup(name=name, calves=calves, volume_ml=quarts * quart, volume_means=VolumeMeans.WATER, rate=rate)
            for name, calves, quarts in (("hutches", 73, 2), ("group pens", 36, 3))
        )
        return self.keep(
            Plan(
                id=new_id(),
                farm_id=self.farm.id,
                name="all calves",
                groups=groups,
                allowance_share=0.01,
                vessel_id=vessels[1].id,
                count_from=30,
                count_to=80,
                count_step=10,
                counts=(),
            )
        )

    def counted(self, hutches: int, pens: int) -> None:
        """The number of calves changed."""
        groups = tuple(replace(g, calves=n) for g, n in zip(self.plan.groups, (hutches, pens), strict=True))
        self.plan = self.keep(replace(self.plan, groups=groups), why="calves counted", by="JT")

    def replace_scoop(self) -> None:
        """Spring: the red cup is cracked, a straight white one takes its place."""
        cracked = "cracked at the rim"
        self.keep(replace(self.scoop, retired_on=self.at.date(), retired_why=cracked), why=cracked)
        self.scoop = self.keep(self._white_cup(), why="five weighings of water at 20 °C")

    def deliver(self, told: Delivery) -> Lot:
        self.at = datetime(told.arrived.year, told.arrived.month, told.arrived.day, 14, 5, tzinfo=UTC)
        year, month, day = 2000 + int(told.number[:2]), int(told.number[3:5]), int(told.number[5:7])
        weight = "2000 lb" if told.tote else "50 lb"
        lot = Lot(
            id=new_id(),
            farm_id=self.farm.id,
            lot_number=told.number,
            product=told.product,
            made_on=date(year, month, day),
            arrived_on=told.arrived,
            package=PackageKind.TOTE if told.tote else PackageKind.BAG,
            package_count=2 if told.tote else told.bags,
            package_mass_g=mass(weight),
            package_mass_typed=weight,
            composition=Composition(protein_pct=22.0, fat_pct=20.0, fibre_pct=0.15, ash_pct=8.0, moisture_pct=4.0),
            medicated=told.medicated,
            note=told.note,
            supplier=SUPPLIER,
            plant_code=told.plant,
            agglomerated=told.agglomerated,
            price_per_package=float(told.price),
            price_typed=told.price,
        )
        return self.keep(lot, by="MK")

    def begin(self, lot: Lot, told: Delivery, hour: int = 6) -> Guide:
        """A weigh-in up to its first fill, on the morning after next."""
        day = told.arrived + timedelta(days=2)
        self.at = datetime(day.year, day.month, day.day, hour + 6, 10, tzinfo=UTC)
        by = told.by or self.rng.choice(WEIGHERS)
        weigh_in = self.keep(
            WeighIn(id=new_id(), farm_id=self.farm.id, lot_id=lot.id, started_at=self.now(), by=by), by=by
        )
        guide = Guide(self.records, weigh_in, self.now)
        line = next(reversed(self.records.marks(scoop_id=self.scoop.id)), None)
        guide.set(step=Step.SCOOP_AND_SCALE, scoop_id=self.scoop.id, scale_id=self.scale.id)
        shown = self.rng.choice(("32.0 oz", "32.0 oz", "32.0 oz", "32.1 oz"))
        guide.set(
            target_mass_g=mass("10 oz"),
            target_typed="10 oz",
            room_humidity_pct=told.humidity_pct,
            room_temperature_c=told.temperature_c,
            scale_zeroed=True,
            check_nominal_g=mass("2 lb"),
            check_nominal_typed="2 lb",
            check_reading_g=mass(shown),
            check_reading_typed=shown,
            old_line_mm=line.down_wall_mm if line else None,
            old_line_typed=on_ruler(line.down_wall_mm) if line else "",
        )
        guide.set(step=Step.LEVEL_FILLS)
        return guide

    def weigh(self, told: Delivery, lot: Lot) -> SignOff:
        """The whole weigh-in, as far as the program asks for it."""
        bags = Bags(told, self.rng, self.wall_factor[self.scoop.name])
        guide = self.begin(lot, told)
        self._level(guide, bags, told)
        guide.set(step=Step.MARK)
        for _ in range(MOST_LINES):
            self._draw(guide)
            self._to_mark(guide, bags)
            if not guide.line_should_move:
                break
            guide.take_next_line()
        if guide.weigh_in.drawn_line_mm is None:
            self._draw(guide)
            self._to_mark(guide, bags)
        guide.set(step=Step.SIGN_OFF)
        signed = guide.sign_off(guide.weigh_in.by)
        for kind in (PrintKind.SCOOP_LABEL, PrintKind.WALL_CHART):
            self.print(signed, kind)
        self._mark(guide)
        self._weeks(told, signed, bags)
        return signed

    def _level(self, guide: Guide, bags: Bags, told: Delivery) -> None:
        for at in range(MOST_LEVEL_FILLS):
            level = guide.findings.level
            if at >= SETTLED_LEVEL_FILLS and level is not None and level.advice.enough:
                break
            if told.together and at == 4:
                guide.set(by=next(who for who in WEIGHERS if who != guide.weigh_in.by))
            bag = guide.next_bag(FillWay.LEVEL)
            caked = told.number == "26-0306A" and at == 4
            typed = ounces(bags.scoopful(bag, self.scoop.volume_ml, guide.weigh_in.by) * (1.13 if caked else 1.0))
            fill = guide.add_fill(FillWay.LEVEL, bag, mass(typed), typed)
            if caked:
                guide.strike(fill.id, "bag not stirred up, caked lump in the scoop")

    def _draw(self, guide: Guide) -> None:
        line = guide.findings.line
        assert line is not None, guide.findings.trouble
        typed = on_ruler(line.down_wall_mm)
        guide.set(drawn_line_mm=length(typed), drawn_line_typed=typed, step=Step.FILLS_TO_MARK)

    def _to_mark(self, guide: Guide, bags: Bags) -> None:
        shape, down = self.scoop.shape, guide.weigh_in.drawn_line_mm
        volume = self.scoop.volume_ml * shapes.volume_ml(shape, shapes.height_from_down_wall_mm(shape, down))
        volume /= shapes.rim_volume_ml(shape)
        for at in range(MOST_FILLS_TO_MARK):
            if (at >= 4 and guide.on_target) or (at >= 4 and guide.line_should_move):
                break
            bag = guide.next_bag(FillWay.TO_MARK)
            typed = ounces(bags.scoopful(bag, volume, guide.weigh_in.by, settled=True))
            guide.add_fill(FillWay.TO_MARK, bag, mass(typed), typed)

    def print(self, signed: SignOff, kind: PrintKind) -> None:
        """The label of the scoop, or the chart of the plan."""
        sheet = Printed(
            id=new_id(),
            farm_id=self.farm.id,
            number=0,
            kind=kind,
            lot_id=signed.lot_id,
            sign_off_id=signed.id,
            at=self.now(),
            by=signed.by,
            scoop_id=self.scoop.id if kind is PrintKind.SCOOP_LABEL else None,
            plan_id=self.plan.id if kind is PrintKind.WALL_CHART else None,
        )
        self.records.record_print(sheet)

    def _mark(self, guide: Guide) -> None:
        """The line is drawn and the label on the scoop."""
        known = guide.standing.lot(guide.lot.id)
        for lot in marked(guide.standing, known, self.scoop.id, self.at.date()) if known else ():
            self.keep(lot, by=guide.weigh_in.by)

    def _weeks(self, told: Delivery, signed: SignOff, bags: Bags) -> None:
        """What is weighed and checked while the lot is fed, day after day."""
        spots = 9 if told.jump else self.rng.randrange(3, 7)
        days = [(day, self._spot) for day in self.rng.sample(range(1, FED_DAYS), spots)]
        days += [(day, self.feeding.check) for day in self.rng.sample(range(1, FED_DAYS), self.rng.randrange(2, 5))]
        signed_at = self.at
        opened = 0
        for day, work in sorted(days, key=lambda one: one[0]):
            self.at = max(self.at, signed_at + timedelta(days=day))
            opened += work == self._spot
            work(signed, bags, opened)
        self.stock.count(told, signed)
        if told.number in TRIALS:
            self.feeding.trial(signed, bags, TRIALS[told.number])

    def _spot(self, signed: SignOff, bags: Bags, number: int) -> None:
        by = self.rng.choice(WEIGHERS)
        typed = ounces(bags.spot(number, self.scoop.volume_ml, by))
        self.records.add_spot_fill(
            SpotFill(
                id=new_id(),
                farm_id=self.farm.id,
                lot_id=signed.lot_id,
                weigh_in_id=signed.weigh_in_id,
                way=FillWay.LEVEL,
                mass_g=mass(typed),
                typed=typed,
                by=by,
                at=self.now(),
            )
        )

    def close_trial(self, trial: FeederTrial, note: str) -> None:
        self.keep(replace(trial, closed=True, note=note))

    def finish(self, lot_id: str) -> None:
        """The last of a lot is fed."""
        self.keep(replace(self.records.find(Lot, lot_id), finished_on=self.at.date()), by="JT")

    def give_up(self, lot: Lot, told: Delivery) -> None:
        """A weigh-in begun and left because the scale would not settle."""
        guide = self.begin(lot, told, hour=-1)
        guide.add_fill(FillWay.LEVEL, 1, mass("13.1 oz"), "13.1 oz")
        guide.set(abandoned=True)


def live(season: Season) -> None:
    """The year."""
    in_use: SignOff | None = None
    for told in DELIVERIES[:-1]:
        lot = season.deliver(told)
        if told.number == "26-0402C":
            season.replace_scoop()
        if told.number == "26-0715A":
            season.give_up(lot, told)
        if in_use:
            season.at += timedelta(days=2)
            season.finish(in_use.lot_id)
        in_use = season.weigh(told, lot)
        season.counted(60 + season.rng.randrange(25), 30 + season.rng.randrange(14))
    season.deliver(DELIVERIES[-1])
    season.counted(73, 36)
    if in_use:
        season.print(in_use, PrintKind.WALL_CHART)


@contextmanager
def _story(rng: Random, season: list[Season]) -> Iterator[None]:
    def name() -> UUID:
        return UUID(int=rng.getrandbits(128), version=4)

    def now() -> datetime:
        return season[0].at if season else datetime(2025, 11, 15, 15, 0, tzinfo=UTC)

    with patch.object(names, "uuid4", name), patch.object(rows, "now", now):
        yield


def season_text() -> str:
    """The season as text for `import_season`."""
    rng = Random(SEED)
    named = Random(SEED + 1)
    made: list[Season] = []
    with TemporaryDirectory() as folder, Records.open(str(Path(folder) / "season.sqlite")) as records:
        with _story(named, made):
            season = Season(records, rng)
            made.append(season)
            live(season)
        return export_text(records)


if __name__ == "__main__":
    FILE.write_text(season_text(), encoding="utf-8", newline="\n")
