"""The rows of a plan's table: what each holds, made when it is looked at, kept as long as it holds.

No window needed.
"""

from __future__ import annotations

from dataclasses import field, replace
from functools import cached_property
from math import inf

from calibrator.model import Farm, Lot, PlanGroup, Scoopfuls, ScoopRule, SignOff, UnitSystem, Vessel
from calibrator.science.batch import BatchTable, Rounded, calves_served, counted_out, moves_powder, rounded, scaled
from calibrator.science.errors import CannotCompute
from calibrator.science.feeding import powder_per_calf_g
from calibrator.science.mixing import Mix, Powder
from calibrator.science.portions import Portions, portions
from calibrator.science.scale import ScaleFacts, least_additive_g
from calibrator.science.scoops import (
    ScoopCount,
    ScoopWay,
    WaterTrim,
    manner_of,
    parts_of,
    trim_water,
    trimmed_manner,
    usual,
    usual_table,
)
from calibrator.science.vessels import Fit, fit, level_mm, usable_ml
from calibrator.values import dataclass

QUART_ML = 946.352946
LITRE_ML = 1000.0
MOST_TRIMMED_SHARE = 0.1  # more than this is another feeding: then the powder is weighed


@dataclass(frozen=True)
class LotInUse:
    """The powder that is being fed: what mixing and counting need to know of it.

    `scale` is that of the weigh-in, as its check weight told it then, `capacity_g` what the farm's largest one weighs,
    0 where none is known. `own_lines` are the lines that the scoops' labels have for other feedings, each with the
    feeding that it is for, g.
    """

    lot: Lot | None
    sign_off: SignOff | None
    ways: tuple[ScoopWay, ...]
    powder: Powder
    scale: ScaleFacts
    capacity_g: float = 0.0
    own_lines: tuple[tuple[float, ScoopWay], ...] = ()

    @property
    def resolution_g(self) -> float:
        """The step of that scale's display, g."""
        return self.scale.resolution_g

    @property
    def moisture_assumed(self) -> bool:
        """Whether the powder's own water is a usual figure, for no label told it."""
        return self.lot is None or self.lot.composition.moisture_pct is None


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
    the farm's tolerance. `trimmed_share` is how much more or less of everything whole scoopfuls make of it; None
    where the water was not trimmed to them. `shares` are those of powder and additives in what is weighed in.
    `levels` tells where a batch stands in the vessel, None without one. `portions` are those in which a batch's
    powder is weighed, None where the scale weighs it at once.
    """

    calves: int
    batches: int
    batch: Rounded
    fits: bool
    over_usable_ml: float
    overflow_ml: float
    scoops: ScoopCount | None
    levels: Levels | None = None
    trimmed_share: float | None = None
    shares: tuple[float, ...] = (1.0,)
    portions: Portions | None = None

    @property
    def powder_g(self) -> float:
        """The powder alone of a batch; additives are weighed in besides."""
        return self.batch.mix.powder_g * self.shares[0]

    @property
    def additives_g(self) -> tuple[float, ...]:
        return tuple(self.batch.mix.powder_g * share for share in self.shares[1:])

    @property
    def off_share(self) -> float | None:
        """How far the count is off the batch's powder by weight; None where powder can only be weighed.

        Where the water is trimmed to the count, how far the strength is off by rounding that.
        """
        if self.scoops is None or not self.scoops.told:
            return None
        return self.scoops.error_share if self.trimmed_share is None else self.batch.ratio_error_share


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
    rule: Scoopfuls = field(default_factory=Scoopfuls)
    shares: tuple[float, ...] = (1.0,)  # of powder and additives in what is weighed in
    additives: tuple[str, ...] = ()  # their names
    capacity_g: float = 0.0
    signed_off: bool = False  # whether the lot is, be it with scoops that are retired since
    made_up: bool = False  # the powder is filled up with water
    _lines: dict[int, SheetLine] = field(default_factory=dict, repr=False)  # by calves

    @property
    def per_calf(self) -> Mix:
        return self.table.per_calf

    def each_g(self, group: PlanGroup) -> float:
        """The powder that one calf of a group gets at a feeding, g."""
        return powder_per_calf_g(group, self.powder, self.water_temperature_c)

    @property
    def lacks_its_scoop(self) -> bool:
        """Whether the plan names the one scoop to count by, and that one has no such fill for the lot."""
        return self.rule.rule is ScoopRule.ONE_KIND and not self._kinds()

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
            self.rule,
            self.shares,
            self.additives,
            self.capacity_g,
            self.signed_off,
            self.made_up,
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

    @property
    def in_portions(self) -> bool:
        """Whether any row has more powder in a batch than the scale weighs; no row is worked out for it."""
        batches_g = self.table.powder_g / self.table.batches * self.shares[0]
        heaviest_g = float(batches_g.max(initial=0.0))
        return portions(heaviest_g, self.capacity_g, self.resolution_g) is not None

    @property
    def least_additive_g(self) -> float:
        """The lightest additive that the scale can weigh, g: less is told finer than the scale shows."""
        return least_additive_g(self.resolution_g)

    @property
    def too_light(self) -> bool:
        """Whether any row has less of an additive in a batch than the scale can weigh; no row is worked out for it."""
        lightest_g = float((self.table.powder_g / self.table.batches).min(initial=inf))
        return any(lightest_g * share < self.least_additive_g for share in self.shares[1:])

    @cached_property
    def powder_goes_by_water(self) -> bool:
        """Whether rounding moves the volume of any row so far that its powder goes by it; no row is worked out for
        it."""
        table = self.table
        step = water_step_ml(self.farm, float((table.water_ml / table.batches).min(initial=inf)))
        measured_ml = table.volume_ml if self.made_up else table.water_ml
        return self.rule.rule is not ScoopRule.ONE_KIND and moves_powder(measured_ml / table.batches, step)

    @cached_property
    def parts(self) -> tuple[float, ...]:
        """The parts of a scoopful that counts may end in: those of the plan and of its feeding, and a half where a row
        of the table has one. No row is worked out for it."""
        powder_g = self.table.powder_g / self.table.batches * self.shares[0]
        if self.rule.rule is not ScoopRule.FEWEST or not self.ways or self._feeding_g <= 0 or not len(powder_g):
            return ()
        tolerance, parts = self.farm.tolerance_share, self.fractions
        found = usual_table(powder_g, self.ways, tolerance, fractions=parts, manner=self.manner).parts
        return tuple(dict.fromkeys(part for part in (*parts, *found) if part < 1))

    def _make(self, number: int) -> SheetLine:
        row = self.table[number]
        trim = self._trim(row.per_batch) if self.rule.rule is ScoopRule.ONE_KIND else None
        batch = self._rounded(row.per_batch) if trim is None else self._trimmed(row.per_batch, trim)
        return self._line(row.calves, row.batches, batch, Fit(row.fits, row.over_usable_ml, row.overflow_ml), trim)

    def line_of_water(self, water_ml: float) -> SheetLine:
        """One batch with so much water, drawn as told; `calves` are those it serves."""
        wanted = scaled(self.per_calf, water_ml / self.per_calf.water_ml)
        trim = self._trim(wanted) if self.rule.rule is ScoopRule.ONE_KIND else None
        batch = self._rounded(wanted, 0.0) if trim is None else self._trimmed(wanted, trim)
        room = fit(batch.mix.volume_ml, self.table.vessel) if self.table.vessel else Fit(True, 0.0, 0.0)
        return self._line(calves_served(batch.mix.volume_ml, self.per_calf.volume_ml), 1, batch, room, trim)

    def _line(self, calves: int, batches: int, batch: Rounded, room: Fit, trim: WaterTrim | None) -> SheetLine:
        powder_g = batch.mix.powder_g * self.shares[0]
        return SheetLine(
            calves,
            batches,
            batch,
            room.fits,
            room.over_usable_ml,
            room.overflow_ml,
            trim.count if trim else self.count_of(powder_g),
            levels_in(self.table.vessel, batch),
            trim.change_share if trim else None,
            self.shares,
            portions(powder_g, self.capacity_g, self.resolution_g),
        )

    def _rounded(self, mix: Mix, water_step: float | None = None) -> Rounded:
        step = water_step_ml(self.farm, mix.water_ml) if water_step is None else water_step
        return rounded(
            mix,
            self.powder,
            self.water_temperature_c,
            water_step_ml=step,
            powder_step_g=self.resolution_g,
            shares=self.shares,
            made_up=self.made_up and water_step is None,
            least_additive_g=self.least_additive_g,
        )

    @cached_property
    def manner(self) -> tuple[ScoopWay, ...]:
        """The one manner of filling that the table keeps wherever it fits; () where there is none."""
        if not self.ways or self._feeding_g <= 0 or self.rule.rule is ScoopRule.WEIGH:
            return ()
        if self.rule.rule is ScoopRule.ONE_KIND:
            return trimmed_manner(self._feeding_g, tuple(self._kinds()), MOST_TRIMMED_SHARE)
        return manner_of(self._feeding_g, self.ways, self.farm.tolerance_share, self.fractions)

    def count_of(self, powder_g: float) -> ScoopCount | None:
        """The scoopfuls that people are told for so much powder; None where it is weighed or the water is trimmed."""
        return self.count_by(self.ways, powder_g) if self.rule.rule is ScoopRule.FEWEST else None

    def count_by(self, ways: tuple[ScoopWay, ...], powder_g: float) -> ScoopCount | None:
        """The same by the scoopfuls of any lot, the water as it is; None where the plan has its powder weighed."""
        if not ways or powder_g <= 0 or self.rule.rule is ScoopRule.WEIGH:
            return None
        tolerance, parts = self.farm.tolerance_share, self._fractions(ways)
        manner = manner_of(self._feeding_g, ways, tolerance, parts)
        return usual(powder_g, ways, tolerance, fractions=parts, manner=manner)

    @property
    def fractions(self) -> tuple[float, ...]:
        """The parts of a scoopful, whole ones among them, in which the table counts."""
        return self._fractions(self.ways)

    def _fractions(self, ways: tuple[ScoopWay, ...]) -> tuple[float, ...]:
        if self.rule.rule is not ScoopRule.FEWEST:
            return (1.0,)
        return parts_of(self._feeding_g, ways, self.farm.tolerance_share, self.rule.part_fills)

    @property
    def _feeding_g(self) -> float:
        return self.per_calf.powder_g * self.shares[0]

    def _trim(self, mix: Mix) -> WaterTrim | None:
        """Whole scoopfuls of the table's one kind; where that changes the amount too much, of the kind that changes it
        least. Few enough to count go first."""
        powder_g = mix.powder_g * self.shares[0]
        if powder_g <= 0:
            return None
        vessel = self.table.vessel
        room = usable_ml(vessel) / mix.volume_ml if vessel else inf
        trims = [trim_water(powder_g, mix.water_ml, way, most_share=room - 1) for way in self._kinds()]
        near = [trim for trim in trims if trim and abs(trim.change_share) <= MOST_TRIMMED_SHARE]
        kept = self.manner

        def worse(trim: WaterTrim) -> tuple[bool, bool, float]:
            (way, _), *_ = trim.count.parts
            return not trim.count.countable, way not in kept, abs(trim.change_share)

        return min(near, key=worse, default=None)

    def _kinds(self) -> list[ScoopWay]:
        wanted = self.rule.scoop_id, self.rule.way
        return [way for way in self.ways if not wanted[0] or (way.scoop_id, way.way) == wanted]

    def _trimmed(self, wanted: Mix, trim: WaterTrim) -> Rounded:
        return counted_out(
            wanted,
            trim.count.total_g / self.shares[0],
            trim.water_ml,
            self.powder,
            self.water_temperature_c,
            water_step_ml=water_step_ml(self.farm, trim.water_ml),
        )


def levels_in(vessel: Vessel | None, batch: Rounded) -> Levels | None:
    """Where a batch's drawn water and its mix stand in a vessel; None without one."""
    if vessel is None:
        return None
    mix_ml = batch.mix.volume_ml
    return Levels(_level(vessel, batch.drawn_ml), _level(vessel, mix_ml), fit(mix_ml, vessel).overflow_ml <= 0)


def _level(vessel: Vessel, volume_ml: float) -> float | None:
    try:
        return level_mm(vessel, volume_ml)
    except CannotCompute:
        return None


def water_step_ml(farm: Farm, water_ml: float) -> float:
    """The farm's step of water; none where it would be more than the whole amount."""
    step = farm.water_step_qt * QUART_ML if farm.units is UnitSystem.FARM else farm.water_step_l * LITRE_ML
    return step if step <= water_ml else 0.0
