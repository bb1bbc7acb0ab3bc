"""Which batch a check belongs to: what the chart has it to be. From the records; no window."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace
from datetime import date, datetime

from calibrator.desk.mix_occasion import known_lot
from calibrator.desk.season_points import with_line_of
from calibrator.desk.sheets import LotInUse, plan_sheet, powder_of
from calibrator.desk.standing import Standing
from calibrator.model import Farm, FillWay, Plan, PlanGroup, SeasonLot, Vessel
from calibrator.records import Records, season_lots
from calibrator.science.as_fed import day_plan
from calibrator.science.causes import Planned
from calibrator.science.errors import CannotCompute
from calibrator.science.lot_kinds import change_share, in_order, last_two
from calibrator.science.mixing import Mix, Powder
from calibrator.science.scale import least_additive_g
from calibrator.science.scoopfuls import ScoopCount, ScoopWay, filled_to_share, normal_u
from calibrator.values import dataclass

_TARGET_PLACES = 3  # of a share


@dataclass(frozen=True)
class FarmNow:
    """What all checks of a lot rest on, read once: its powder, the day's plans, vessels, the line of the lot before.

    `old_fill_g` is what one scoopful filled to that line would weigh, `old_chart_share` what level scoopfuls counted
    by the chart of the lot before would weigh ÷ what is wanted − 1; None where not known.
    """

    farm: Farm
    powder: LotInUse
    plans: tuple[Plan, ...]
    vessels: tuple[Vessel, ...]
    old_fill_g: float | None
    old_chart_share: float | None

    @property
    def least_additive_g(self) -> float:
        """The lightest additive that the scale can weigh, g."""
        return least_additive_g(self.powder.resolution_g)

    @property
    def lot_before(self) -> bool:
        """Whether a lot was fed before, whose line and chart one may still take."""
        return self.old_chart_share is not None

    def vessel(self, vessel_id: str | None) -> Vessel | None:
        return next((vessel for vessel in self.vessels if vessel.id == vessel_id), None)


@dataclass(frozen=True)
class Batch:
    """One vessel mixed at one time, as the chart has it: of one group, or of all of a plan together.

    `mix` is None without a plan that can be reckoned; `blend` is then all that is weighed in, as one powder, and
    `shares` tell how much of it is powder (first) and each of the `additives`. `manner` is how the chart has its scoops
    filled, `fractions` the parts of a scoopful in which it counts.
    """

    now: FarmNow
    plan: Plan | None
    group: PlanGroup | None
    calves: int
    vessel: Vessel | None
    mix: Mix | None = None
    scoops: ScoopCount | None = None
    manner: tuple[ScoopWay, ...] = ()
    fractions: tuple[float, ...] = (1.0,)
    trouble: str = ""
    blend: Powder | None = None
    shares: tuple[float, ...] = (1.0,)
    additives: tuple[str, ...] = ()

    @property
    def powder(self) -> Powder:
        """What is weighed in: the lot's powder, with the additives of the mix."""
        return self.blend or self.now.powder.powder

    @property
    def others_share(self) -> float:
        """How much of what is weighed in is additives."""
        return 1 - self.shares[0]

    @property
    def target_share(self) -> float | None:
        return self.mix.solids_share if self.mix else None

    @property
    def water_c(self) -> float:
        return self.plan.water_temperature_c if self.plan else Plan.water_temperature_c


def farm_now(records: Records, farm: Farm, now: Standing, at: datetime, lot_id: str = "") -> FarmNow:
    """Read what checks rest on: of the lot in use, or of another as it was weighed in by a moment.

    The plans are those of the moment's day, its steps and the cold reckoned in.

    Raises CannotCompute for a label that cannot be.
    """
    vessels = tuple(vessel for vessel in records.every(Vessel, farm.id) if vessel.retired_on is None)
    known = known_lot(now, lot_id)
    by_then = [signed for signed in now.sign_offs if signed.at <= at]
    own = [signed for signed in by_then if known and signed.lot_id == known.lot.id]
    powder = powder_of(records, now, known, by_then if own else now.sign_offs)
    every = (plan for plan in records.every(Plan, farm.id) if plan.retired_on is None)
    on = at.astimezone().date()
    plans = tuple(_of_day(plan, on, powder) for plan in every)
    pair = last_two(_until_lot(in_order(season_lots(records, farm.id)), known.lot.id if known else ""))
    if pair is None:
        return FarmNow(farm, powder, plans, vessels, None, None)
    line = with_line_of(records, *pair, farm.tolerance_share)
    fill_g = line.fill_g(pair[1].level_mean_g) if line else None
    return FarmNow(farm, powder, plans, vessels, fill_g, change_share(*pair))


def _of_day(plan: Plan, on: date, powder: LotInUse) -> Plan:
    """The plan as it is fed on a day; one that cannot be reckoned stays as told, and `batch_of` says why."""
    try:
        return day_plan(plan, on, powder.powder)
    except CannotCompute:
        return plan


def _until_lot(lots: list[SeasonLot], lot_id: str) -> list[SeasonLot]:
    """The lots up to the newest weighing of this one; none for a lot that was not weighed."""
    own = [place for place, lot in enumerate(lots) if lot.lot_id == lot_id]
    return lots[: own[-1] + 1] if own else []


def as_aimed(target_share: float) -> float:
    """Wanted solids as they are told and judged: to a tenth of a percent."""
    return round(target_share, _TARGET_PLACES)


def batch_of(now: FarmNow, plan: Plan | None, group: PlanGroup | None, calves: int, vessel: Vessel | None) -> Batch:
    """What the chart asks for, for so many calves in this vessel: of a group, or without one of all together."""
    bare = Batch(now, plan, group, calves, vessel)
    if plan is None or calves < 1:
        return bare
    if group is None:
        sheet = plan_sheet(now.farm, replace(plan, count_from=0, count_to=0, counts=(calves,)), vessel, now.powder)
        table = replace(sheet.together, today=calves) if sheet.together else None
    else:
        sheet = plan_sheet(now.farm, replace(plan, groups=(replace(group, calves=calves),)), vessel, now.powder)
        table = sheet.groups[0] if sheet.groups else None
    line = table.today_line if table else None
    if table is None or line is None:
        return replace(bare, trouble=sheet.trouble)
    return replace(
        bare,
        mix=line.batch.mix,
        scoops=line.scoops,
        manner=table.manner,
        fractions=table.fractions,
        blend=table.powder,
        shares=table.shares,
        additives=table.additives,
    )


def together(now: FarmNow, plan: Plan) -> Batch | None:
    """Today's calves of all groups in one batch; None where they are not mixed alike."""
    batch = batch_of(now, plan, None, sum(group.calves for group in plan.groups), now.vessel(plan.vessel_id))
    return batch if batch.mix else None


def others(batch: Batch) -> Iterator[Batch]:
    """What else is mixed at one time in the same vessel: each other group's batch, and all of a plan together."""
    now = batch.now
    for plan in now.plans:
        for group in (*plan.groups, None):
            if (plan, group) == (batch.plan, batch.group):
                continue
            found = together(now, plan) if group is None else batch_of(now, plan, group, group.calves, batch.vessel)
            if found is not None and found.mix is not None:
                yield found


def aims_differ(now: FarmNow) -> bool:
    """Whether what is right for one group of the farm's plans is wrong for another's."""
    each = (batch_of(now, plan, group, max(1, group.calves), None) for plan in now.plans for group in plan.groups)
    return len({as_aimed(batch.target_share) for batch in each if batch.target_share is not None}) > 1


def planned(batch: Batch) -> Planned | None:
    """The batch as the search for causes takes it; None without a mix."""
    if batch.mix is None or batch.mix.powder_g <= 0:
        return None
    way = _main_way(batch.scoops)
    return Planned(
        water_ml=batch.mix.water_ml,
        powder_g=batch.mix.powder_g * batch.shares[0],
        water_c=batch.water_c,
        powder=batch.powder,
        powder_u_g=normal_u(batch.scoops.spread_95_g) if batch.scoops else 0.0,
        count_error_g=batch.scoops.error_g if batch.scoops and batch.scoops.told else 0.0,
        scoopful_g=way.mass_g if way else None,
        scoopfuls=batch.scoops.scoopfuls if batch.scoops else 0,
        old_line_share=_old_share(batch.scoops, batch.now),
        rim_share=_rim_share(batch.scoops, way, batch.now.powder.ways),
        calves=batch.calves,
        others_g=batch.mix.powder_g * batch.others_share,
    )


def _old_share(scoops: ScoopCount | None, now: FarmNow) -> float | None:
    """What the line of the lot before brings beyond the count; of level scoopfuls alone, what its chart brings. None
    for a line that only a label has: which one it had for the lot before, nobody weighed."""
    if scoops is None or not scoops.parts or any(way not in now.powder.ways for way, _ in scoops.parts):
        return None
    if all(way.way is not FillWay.TO_MARK for way, _ in scoops.parts):
        return now.old_chart_share
    return None if now.old_fill_g is None else filled_to_share(scoops, now.old_fill_g)


def _main_way(scoops: ScoopCount | None) -> ScoopWay | None:
    """The kind of fill that most of the count is made of."""
    return max(scoops.parts, key=_count)[0] if scoops and scoops.parts else None


def _count(part: tuple[ScoopWay, float]) -> float:
    return part[1]


def _rim_share(scoops: ScoopCount | None, way: ScoopWay | None, ways: Sequence[ScoopWay]) -> float | None:
    if scoops is None or way is None or all(part.way is not FillWay.TO_MARK for part, _ in scoops.parts):
        return None
    level = next((w for w in ways if w.scoop_id == way.scoop_id and w.way is FillWay.LEVEL), None)
    return filled_to_share(scoops, level.mass_g) if level else None
