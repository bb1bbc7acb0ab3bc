"""Freeze the present layout: a records file and what it tells, for tests to open for ever.

Run once when a layout is finished: `python tests/records/freeze.py`. It never overwrites.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import date
from pathlib import Path

import invented

from calibrator.model import (
    Composition,
    MixingRate,
    Plan,
    PlanGroup,
    PrintKind,
    RateBasis,
    VolumeMeans,
    new_id,
)
from calibrator.records import Records
from calibrator.records.tables import SCHEMA
from tests.exported import export_text

FROZEN = Path(__file__).with_name("frozen")


def freeze(file: Path) -> str:
    """Make records that use every table and every nested value; gives the text that tells them."""
    with Records.open(str(file)) as records:
        world = invented.World(records)
        told = world.signed()
        for shape in invented.SHAPES:
            records.keep(invented.scoop(world.farm.id, shape=shape))
            records.keep(invented.vessel(world.farm.id, shape=shape))
        label = Composition(protein_pct=22.0, fat_pct=20.0, ash_pct=7.5)
        lot = records.keep(
            invented.lot(world.farm.id, composition=label, made_on=date(2024, 10, 2), medicated=True), by="AB"
        )
        records.keep(replace(lot, note="Año nuevo – «ñ»"), by="CD", why="a note")
        rate = MixingRate(basis=RateBasis.ON_WATER, powder_mass_g=283.5, volume_ml=1893.0, typed="10 oz")
        group = PlanGroup(name="young", calves=9, volume_ml=1893.0, volume_means=VolumeMeans.WATER, rate=rate)
        plan = records.keep(Plan(id=new_id(), farm_id=world.farm.id, name="all", groups=(group,), counts=(9,)))
        spot = records.add_spot_fill(invented.spot(told))
        records.strike_spot(spot.id, "wrong scoop", "AB")
        open_one = records.keep(invented.weigh_in(lot))
        fill = records.add_fill(invented.fill(open_one))
        records.strike(fill.id, "spilled", "AB")
        records.restore(fill.id, "CD")
        records.record_print(invented.printed(told, lines=invented.LABELLED))
        chart = invented.printed(told, kind=PrintKind.WALL_CHART, scoop_id=None, plan_id=plan.id)
        down = records.record_print(chart)
        records.end_sheet(invented.ending(down))
        records.record_print(invented.printed(told, kind=PrintKind.LOT_SHEET))
        invented.checks_of_the_mix(records, world)
        invented.feeding(records, world)
        invented.marked_scoop(records, told)
        invented.feeders_and_prices(records, world)
        return export_text(records)


if __name__ == "__main__":
    target = FROZEN / f"layout_{SCHEMA:04}.sqlite"
    if target.exists():
        raise SystemExit(f"{target} is frozen already.")
    FROZEN.mkdir(exist_ok=True)
    target.with_suffix(".json").write_text(freeze(target), encoding="utf-8")
    Path(f"{target}.lock").unlink(missing_ok=True)
