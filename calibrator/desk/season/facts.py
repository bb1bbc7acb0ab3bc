"""A farm's season read at one moment; what takes longer is worked out when first asked for. No window, no formula."""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import replace
from datetime import date
from enum import StrEnum
from functools import cached_property
from operator import attrgetter

from calibrator.desk import findings
from calibrator.desk.in_use import LotState
from calibrator.desk.lessons import Lessons
from calibrator.desk.mix_history import Counted, kept_counts
from calibrator.desk.refusals import in_words
from calibrator.desk.season.past_lots import past_lots
from calibrator.desk.spots import SpotFindings, read_spots, spot_findings
from calibrator.desk.standing import standing
from calibrator.model import (
    BagSum,
    Composition,
    Farm,
    FillWay,
    LotPoint,
    LotPoints,
    Plan,
    Scale,
    Scoop,
    SeasonLot,
    SpotFill,
    WeighIn,
)
from calibrator.model.underway import Underway, one_by_one, part_of
from calibrator.records import Records, bag_sums, bag_sums_of, count_sign_offs, every_spot_fill, lot_points, season_lots
from calibrator.records.past import count_past
from calibrator.science.as_fed import powder_of_day_g
from calibrator.science.bag_sums import bag_means, by_weigh_in
from calibrator.science.carried_over import (
    CarriedOver,
    Wanting,
    as_to_the_mark,
    carried_over,
    money_of,
    solids_with,
    wanting,
)
from calibrator.science.errors import CannotCompute
from calibrator.science.feeding import mix_per_calf
from calibrator.science.lot_chart import LotChart, points_chart
from calibrator.science.lot_kinds import before, in_order
from calibrator.science.mixing import powder_from
from calibrator.science.scoop import same_line
from calibrator.science.season_findings import Season, season
from calibrator.science.season_spread import SpreadFindings, season_spread
from calibrator.science.verify import LineCheck
from calibrator.science.weighing import LevelResult
from calibrator.science.why import Effect, why
from calibrator.science.within_lot import InsideLot, Opened, as_level_g, inside_lot
from calibrator.values import dataclass

READ_AT_ONCE_LOTS, READ_AT_ONCE_FILLS, READ_AT_ONCE_PAST = 1_000, 20_000, 200
"""A season of more than one of them is looked through beside the window; what is signed off is drawn before that, past
lots out of files, whose densities have to be worked out, after."""


class Part(StrEnum):
    """What of a season is looked at, in the order in which the page shows it."""

    HAPPENED = "happened"
    LOTS = "lots"
    SPREAD = "spread"
    WHY = "why"
    INSIDE = "inside"


class DayOf(StrEnum):
    """Which day a lot stands at."""

    ARRIVED = "arrived"
    MADE = "made"
    WEIGHED = "weighed"


def day_of(lot: SeasonLot | LotPoint, of: DayOf) -> date | None:
    """The day that a lot stands at; None where its record does not tell it."""
    if of is DayOf.ARRIVED:
        return lot.arrived_on
    return lot.made_on if of is DayOf.MADE else lot.weighed_on


def points_of(lots: Iterable[SeasonLot]) -> LotPoints:
    """Lots as the picture draws them."""
    return LotPoints.of(map(LotPoint._make, map(attrgetter(*LotPoint._fields), lots)))


def days_of(points: LotPoints, of: DayOf) -> list[date | None]:
    """The days that lots stand at."""
    if of is DayOf.WEIGHED:
        return [at.astimezone().date() for at in points.column("at")]
    return list(points.column("arrived_on" if of is DayOf.ARRIVED else "made_on"))


@dataclass(frozen=True)
class Meaning:
    """What a lot did to a feeding, the scoop filled as for the lot before: powder, solids (as targeted and as they
    were, where a plan tells them), money a day above the target's (where a price is known) with the powder a day it
    rests on; what is `wanting` for the last two."""

    before: SeasonLot
    carried: CarriedOver
    target_solids: float | None = None
    solids: float | None = None
    money_a_day: float | None = None
    daily_g: float | None = None
    wanting: tuple[Wanting, ...] = ()


@dataclass(frozen=True)
class Bag:
    """One bag of a lot as opened: the day, g of one scoopful struck level, and what is told beside it."""

    on: date
    mass_g: float
    scoopfuls: int
    by: str
    at_weigh_in: bool


class SeasonFacts:
    """The season of a farm. Lots are in the order of their sign-offs."""

    def __init__(self, records: Records, farm: Farm, today: date = date.max) -> None:
        self._records, self._today = records, today
        self.farm = farm
        self.past_count = count_past(records, farm.id)
        """Past weigh-ins that may be lots of the season."""
        signed = count_sign_offs(records, farm.id)
        self._few_lots = self.past_count <= READ_AT_ONCE_PAST and signed + self.past_count <= READ_AT_ONCE_LOTS
        self._shapes: dict[str, Scoop] = {}
        self._meanings: dict[int, Meaning | None] = {}
        self._done: set[Part] = set()

    @cached_property
    def lots(self) -> tuple[SeasonLot, ...]:
        """Every lot with all that is told of it."""
        return tuple(in_order([*season_lots(self._records, self.farm.id), *self._past]))

    @cached_property
    def _past(self) -> list[SeasonLot]:
        return past_lots(self._records, self.farm) if self.past_count else []

    @cached_property
    def _first_points(self) -> LotPoints:
        return lot_points(self._records, self.farm.id).in_order()

    @cached_property
    def _points(self) -> LotPoints:
        return points_of(self.lots)

    @cached_property
    def _chart(self) -> LotChart:
        return points_chart(self._first_points)

    @property
    def signed_count(self) -> int:
        """How many lots are signed off, one with two scoops twice."""
        return len(self._first_points)

    def drawn(self, way: FillWay) -> tuple[LotPoints, LotChart]:
        """Every lot as the picture draws it, with limits and running mean. Of many less is read at first, past ones
        not at all, and the powder lies level; that changes once `Part.HAPPENED` is ready."""
        if not self.ready(Part.HAPPENED):
            return self._first_points, self._chart
        if way is FillWay.LEVEL:
            return self._points, self.season.chart
        return points_of(self.to_the_mark.lots), self.to_the_mark.chart

    @cached_property
    def _states(self) -> dict[str, LotState]:
        return {known.lot.id: known.state for known in standing(self._records, self.farm, self._today).lots}

    def state(self, lot_id: str) -> LotState | None:
        """Whether a lot is fed, waits or is over; None while the season is still looked through."""
        return self._states.get(lot_id) if self.few or "_states" in self.__dict__ else None

    @cached_property
    def few(self) -> bool:
        """Is all of the season read and worked out at once?"""
        return self._few_lots and sum(lot.fills for lot in self.lots) <= READ_AT_ONCE_FILLS

    def ready(self, part: Part) -> bool:
        """Does showing a part take no time?"""
        return self.few or part in self._done

    def prepare(self, part: Part, underway: Underway) -> None:
        """Read and work out what a part shows; in another thread, if need be."""
        if "_past" not in self.__dict__ and self.past_count:
            self._past = past_lots(self._records, self.farm, part_of(underway, 0.0, 0.5))
            underway = part_of(underway, 0.5, 1.0)
        steps = {
            Part.HAPPENED: ("lots", "_points", "sums", "season", "to_the_mark", "_states", "bags_counted"),
            Part.LOTS: ("lots", "_states"),
            Part.SPREAD: ("lots", "sums", "spread"),
            Part.WHY: ("lots", "effects"),
        }.get(part, ("lots",))
        for name in one_by_one(steps, underway):
            getattr(self, name)
        self._done.add(part)

    @cached_property
    def sums(self) -> list[BagSum]:
        """What every bag weighed; read once."""
        return bag_sums(self._records, self.farm.id, past=self.past_count > 0)

    @cached_property
    def _by_weigh_in(self) -> dict[str, list[BagSum]]:
        return by_weigh_in(self.sums)

    @cached_property
    def season(self) -> Season:
        """What happened."""
        return season(self.lots, self._by_weigh_in)

    @cached_property
    def to_the_mark(self) -> Season:
        """The same lots as they lie in a scoop filled to its mark."""
        return season([as_to_the_mark(lot) for lot in self.lots], {})

    @cached_property
    def spread(self) -> SpreadFindings | str:
        """Where the spread comes from, or why that cannot be told."""
        scales = self._records.every(Scale, self.farm.id)
        in_use = [scale for scale in scales if scale.retired_on is None] or scales  # the advice is for lots to come
        step = max((scale.resolution_g for scale in in_use), default=1.0)
        try:
            return season_spread(self.lots, self.sums, self.farm.tolerance_share, step)
        except CannotCompute as error:
            return in_words(error)

    @cached_property
    def effects(self) -> tuple[Effect, ...]:
        """What densities go with."""
        return why(self.lots)

    def before(self, place: int) -> SeasonLot | None:
        """The lot weighed before with the same scoop."""
        return before(self.lots, place)

    def meaning(self, place: int) -> Meaning | None:
        """What a lot did to a feeding, the scoop filled as for the lot before; None where that cannot be told."""
        if place not in self._meanings:
            self._meanings[place] = self._work_out_meaning(place)
        return self._meanings[place]

    def _work_out_meaning(self, place: int) -> Meaning | None:
        lot, before = self.lots[place], self.before(place)
        if before is None:
            return None
        try:
            check = self._fills_to_line_of(lot, before)
            carried = carried_over(lot, before, self._scoop(lot).shape, self.farm.tolerance_share, check)
            if carried is None:
                return None
            target = self._target_solids
            solids = None if target is None else solids_with(target, carried.mass_g / carried.target_g)
            money, not_told = self._money(lot, carried), wanting(lot, bool(self._plans))
            return Meaning(before, carried, target, solids, money, self._daily_g, not_told)
        except CannotCompute:
            return None

    def _fills_to_line_of(self, lot: SeasonLot, before: SeasonLot) -> LineCheck | None:
        """What a weigh-in found with the line of the lot before, before that was moved; None without fills to it."""
        if not lot.settling_u or not before.down_wall_mm or before.target_mass_g is None:
            return None  # nothing was filled to any line, or there was none
        to_it = (same_line(fill.line_mm, before.down_wall_mm) for fill in self._records.fills(lot.weigh_in_id))
        if not any(to_it):
            return None
        known = self._known(lot)
        if known is None:
            return None
        return findings.fills_to(known, before.down_wall_mm, before.target_mass_g, before.full_scoops or 0)

    def _known(self, lot: SeasonLot) -> findings.Known | None:
        """A weigh-in as it was signed; None where it was brought in, and never signed off here."""
        signed = self._records.sign_off_of(lot.weigh_in_id)
        if signed is None:
            return None
        weigh_in = self._records.find(WeighIn, lot.weigh_in_id)
        known = findings.read(self._records, lot.weigh_in_id, self._lessons.before(weigh_in))
        return replace(findings.as_signed(self._records, known, signed), farm=self.farm)

    def level_result(self, lot: SeasonLot) -> LevelResult | None:
        """What the level fills of a lot came to as it was signed; None where it was brought in."""
        known = self._known(lot)
        return findings.work_out(known).level if known else None

    @cached_property
    def bags_counted(self) -> dict[str, Counted]:
        """The newest count of bags of each lot, by its id."""
        return {one.lot.id: one for one in kept_counts(self._records, self.farm)}

    @property
    def bags_off(self) -> dict[str, Counted]:
        """Those that are surely off."""
        newest = self.bags_counted.items()
        return {lot: one for lot, one in newest if one.result is not None and one.result.verdict.outside}

    @property
    def fed(self) -> str:
        """The number of the lot in use; blank without one."""
        return next((lot.lot_number for lot in self.lots if self._states.get(lot.lot_id) is LotState.IN_USE), "")

    @cached_property
    def _lessons(self) -> Lessons:
        return Lessons(self._records, self.farm.id)

    def scoop_name(self, scoop_id: str) -> str:
        """What a scoop is called now."""
        return self._scoop_names.get(scoop_id, "")

    @cached_property
    def _scoop_names(self) -> dict[str, str]:
        return {scoop.id: scoop.name for scoop in self._records.every(Scoop, self.farm.id)}

    def _scoop(self, lot: SeasonLot) -> Scoop:
        if lot.scoop_revision not in self._shapes:
            self._shapes[lot.scoop_revision] = self._records.revision(Scoop, lot.scoop_revision)
        return self._shapes[lot.scoop_revision]

    @cached_property
    def _plans(self) -> list[Plan]:
        return [plan for plan in self._records.every(Plan, self.farm.id) if plan.retired_on is None and plan.groups]

    @cached_property
    def _target_solids(self) -> float | None:
        """Solids that the first plan's first group is to get."""
        if not self._plans:
            return None
        plan = self._plans[0]
        return mix_per_calf(plan.groups[0], powder_from(Composition()), plan.water_temperature_c).solids_share

    @cached_property
    def _daily_g(self) -> float | None:
        """Powder that all plans take today; None where nothing is fed."""
        powder = powder_from(Composition())
        return math.fsum(powder_of_day_g(plan, powder, self._today) for plan in self._plans) or None

    def _money(self, lot: SeasonLot, carried: CarriedOver) -> float | None:
        if self._daily_g is None or lot.price_per_package is None or lot.package_mass_g is None:
            return None
        return money_of(carried.share * self._daily_g, lot.price_per_package, lot.package_mass_g)

    @cached_property
    def spots(self) -> dict[str, list[SpotFill]]:
        """The spot fills that count, by the weigh-in that they keep up to date."""
        found: dict[str, list[SpotFill]] = {}
        for spot in every_spot_fill(self._records, self.farm.id):
            if spot.counts:
                found.setdefault(spot.weigh_in_id, []).append(spot)
        return found

    def bags_of(self, lot: SeasonLot) -> list[Bag]:
        """A lot's bags in the order in which they were opened: those of the weigh-in, then the spot fills; corrected
        for the scale, as the mean of the lot is."""
        own = self._by_weigh_in.get(lot.weigh_in_id, []) if self.few else self._sums_of(lot)
        known = self._known(lot)
        weighed = [Bag(lot.weighed_on, bag.mean_g, bag.scoopfuls, lot.by, True) for bag in bag_means(own, 1.0)]
        spots = [
            Bag(spot.at.astimezone().date(), mass_g, 1, spot.by, False)
            for spot in self.spots.get(lot.weigh_in_id, [])
            if (mass_g := as_level_g(spot.mass_g, spot.way, lot.level_mean_g, lot.mark_mass_g)) is not None
        ]
        shown = [*weighed, *spots]
        return [replace(bag, mass_g=findings.corrected_g(known, bag.mass_g)) for bag in shown] if known else shown

    def mark_now(self, lot: SeasonLot) -> SpotFindings | None:
        """What the spot fills since say of a lot's mark, as on the day's page; None without any, or where they do not
        reach to it."""
        signed = self._records.sign_off_of(lot.weigh_in_id) if self.spots.get(lot.weigh_in_id) else None
        marks = self._records.marks(sign_off_id=signed.id) if signed else []
        if signed is None or not marks:
            return None
        taught = self._lessons.before(self._records.find(WeighIn, lot.weigh_in_id))
        try:
            return spot_findings(read_spots(self._records, signed, taught), signed, marks[-1])
        except CannotCompute:
            return None

    def _sums_of(self, lot: SeasonLot) -> list[BagSum]:
        """Its bags alone: those of all lots would take long to read."""
        return bag_sums_of(self._records, [lot.weigh_in_id])

    def inside(self, lot: SeasonLot) -> tuple[list[Bag], InsideLot | None]:
        """A lot's bags, and what they do together; None where that cannot be judged."""
        bags = self.bags_of(lot)
        opened = [Opened(bag.mass_g, bag.scoopfuls) for bag in bags]
        try:
            return bags, inside_lot(
                opened, lot.level_mean_g, lot.bag_sd_share, lot.fill_sd_share, lot.degrees_of_freedom
            )
        except CannotCompute:
            return bags, None
