"""The rows of a plan's table: what each holds, made when it is looked at, kept as long as it holds.

No window needed.
"""

from __future__ import annotations

from dataclasses import dataclass, field, replace
from functools import cached_property

from calibrator.model import Farm, Lot, PlanGroup, SignOff, UnitSystem, Vessel
from calibrator.science.batch import BatchTable, Rounded, rounded
from calibrator.science.errors import CannotCompute
from calibrator.science.mixing import Mix, Powder
from calibrator.science.scoops import ScoopCount, ScoopWay, fewest
from calibrator.science.vessels import fit, level_mm

QUART_ML = 946.352946
LITRE_ML = 1000.0


@dataclass(frozen=True)
class LotInUse:
    """The powder that is being fed: what mixing and counting need to know of it."""

    lot: Lot | None
    sign_off: SignOff | None
    ways: tuple[ScoopWay, ...]
    powder: Powder
    resolution_g: float


@dataclass(frozen=True)
class Levels:
    """How high a batch stands above the vessel's floor, mm: its water alone, and the finished mix.

    `holds` is False where the batch as measured out runs over the rim; then there is no level of the mix.
    """

    water_mm: float | None
    mix_mm: float | None
    holds: bool


@dataclass(frozen=True)
class SheetLine:
    """One row: so many calves, in so many equal batches, and what goes into each batch.

    `batch` is rounded as people measure it out. `scoops` is None where no count of scoopfuls comes within
    the farm's tolerance. `levels` tells where a batch stands in the vessel, None without one.
    """

    calves: int
    batches: int
    batch: Rounded
    fits: bool
    over_usable_ml: float
    overflow_ml: float
    scoops: ScoopCount | None
    levels: Levels | None = None


@dataclass(frozen=True, eq=False)
class GroupSheet:
    """The table of one group, or of all groups together (`group` is None)."""

    group: PlanGroup | None
    today: int
    table: BatchTable
    farm: Farm
    powder: Powder
    ways: tuple[ScoopWay, ...]
    resolution_g: float
    water_temperature_c: float
    _lines: dict[int, SheetLine] = field(default_factory=dict, repr=False)  # by calves

    @property
    def per_calf(self) -> Mix:
        return self.table.per_calf

    @property
    def basis(self) -> tuple[object, ...]:
        """All that a row rests on besides its count of calves."""
        return (
            self.per_calf,
            self.table.vessel,
            self.farm,
            self.powder,
            self.ways,
            self.resolution_g,
            self.water_temperature_c,
        )

    def taking_over(self, earlier: GroupSheet | None) -> GroupSheet:
        """The same table with the rows that an earlier one has worked out, where they still hold."""
        if earlier is None or earlier.basis != self.basis:
            return self
        return replace(self, _lines=earlier._lines)

    def kin_of(self, other: GroupSheet | None) -> bool:
        """Whether a count of calves has the same row in both."""
        return other is not None and other._lines is self._lines

    def __len__(self) -> int:
        return len(self.table)

    def line(self, number: int) -> SheetLine:
        calves = int(self.table.calves[number])
        if calves not in self._lines:
            self._lines[calves] = self._make(number)
        return self._lines[calves]

    @cached_property
    def today_row(self) -> int | None:
        """Where today's count stands; None without calves today."""
        counts = self.table.calves.tolist()
        return counts.index(self.today) if self.today in counts else None

    @property
    def today_line(self) -> SheetLine | None:
        return None if self.today_row is None else self.line(self.today_row)

    def _make(self, number: int) -> SheetLine:
        row = self.table[number]
        batch = rounded(
            row.per_batch,
            self.powder,
            self.water_temperature_c,
            water_step_ml=water_step_ml(self.farm, row.per_batch.water_ml),
            powder_step_g=self.resolution_g,
        )
        scoops = (
            fewest(batch.mix.powder_g, self.ways, self.farm.tolerance_share)
            if self.ways and batch.mix.powder_g > 0
            else None
        )
        levels = levels_in(self.table.vessel, batch.mix)
        return SheetLine(row.calves, row.batches, batch, row.fits, row.over_usable_ml, row.overflow_ml, scoops, levels)


def levels_in(vessel: Vessel | None, mix: Mix) -> Levels | None:
    """Where a batch's water and its mix stand in a vessel; None without one."""
    if vessel is None:
        return None
    return Levels(
        _level(vessel, mix.water_ml), _level(vessel, mix.volume_ml), fit(mix.volume_ml, vessel).overflow_ml <= 0
    )


def _level(vessel: Vessel, volume_ml: float) -> float | None:
    try:
        return level_mm(vessel, volume_ml)
    except CannotCompute:
        return None


def water_step_ml(farm: Farm, water_ml: float) -> float:
    """The farm's step of water; none where it would be more than the whole amount."""
    step = farm.water_step_qt * QUART_ML if farm.units is UnitSystem.FARM else farm.water_step_l * LITRE_ML
    return step if step <= water_ml else 0.0
