"""The bags in the story of sample_lots/: how many are left on a morning, and how many feedings some of them lasted."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import replace
from datetime import UTC, date, datetime, timedelta
from typing import Any

from calibrator.model import BagCount, Lot, PackagesLeft, SignOff, new_id
from calibrator.science.as_fed import powder_of_day_g
from calibrator.science.mixing import powder_from
from calibrator.units import Kind, read
from tests.sample_story import Delivery

COUNTED_AFTER_DAYS = 18
EMPTIED = {"26-0523A": 36, "26-1001B": 40}
"""Lots of which bags were counted from one just opened to one just emptied, and how many."""

HEAVY_SHARE = 1.012
"""What the people together feed against the plan: one of the four fills heavy."""


class Stock:
    """Counts that follow from what the calves were fed; `season` tells farm, plan and clock."""

    def __init__(self, season: Any) -> None:
        self.season = season

    def count(self, told: Delivery, signed: SignOff) -> None:
        """The bags left on a morning of the third week, half ones included, and of some lots the bags emptied."""
        lot = self.season.records.find(Lot, signed.lot_id)
        first = signed.at.date()
        with self._clock_of(first + timedelta(days=COUNTED_AFTER_DAYS)):
            left = told.bags if not told.tote else 2
            left -= COUNTED_AFTER_DAYS * self._day_g(lot, first) / lot.package_mass_g
            left = max(0.5, round(2 * left) / 2)
            counted = PackagesLeft(packages=left, on=first + timedelta(days=COUNTED_AFTER_DAYS), typed=f"{left:g}")
            self.season.keep(replace(lot, packages_left=counted), why="bags counted", by="JT")
            if told.number in EMPTIED:
                self._emptied(lot, first, EMPTIED[told.number])

    def _day_g(self, lot: Lot, on: date) -> float:
        return HEAVY_SHARE * powder_of_day_g(self.season.plan, powder_from(lot.composition), on)

    def _emptied(self, lot: Lot, first: date, bags: int) -> None:
        """So many bags, and the feedings of one calf that the plan makes of their days."""
        daily = sum(group.calves * group.feedings_per_day for group in self.season.plan.groups)
        day_g = self._day_g(lot, first)
        target_oz = round(day_g / HEAVY_SHARE / daily / read("1 oz", Kind.MASS, self.season.farm.units).value, 1)
        fed = round(bags * lot.package_mass_g / day_g * daily)
        counted = BagCount(
            id=new_id(),
            farm_id=lot.farm_id,
            lot_id=lot.id,
            since=first,
            at=self.season.now(),
            bags=bags,
            bags_typed=str(bags),
            bag_mass_g=lot.package_mass_g,
            bag_mass_typed="50 lb",
            feedings=fed,
            target_mass_g=read(f"{target_oz} oz", Kind.MASS, self.season.farm.units).value,
            target_typed=f"{target_oz} oz",
            feedings_per_day=daily,
            by="JT",
        )
        self.season.keep(counted, by="JT")

    @contextmanager
    def _clock_of(self, day: date) -> Iterator[None]:
        """Another morning; the season's clock and its chances go on afterwards as if nobody had counted."""
        season = self.season
        at, chance = season.at, season.rng.getstate()
        season.at = datetime(day.year, day.month, day.day, 11, 0, tzinfo=UTC)
        yield
        season.at, _ = max(at, season.at), season.rng.setstate(chance)
