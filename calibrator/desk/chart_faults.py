"""What is wrong with a wall chart. No window needed."""

from __future__ import annotations

from dataclasses import replace
from enum import StrEnum

from calibrator.desk.hung import hanging, in_force, never_up, newest_words
from calibrator.desk.scoop_lines import labelled_lines
from calibrator.desk.standing import ChartBasis, Standing
from calibrator.model import Ending, Farm, Plan, PlanGroup, Printed, PrintKind, ScoopRule, UnitSystem, Vessel
from calibrator.prints.label_facts import same_weight
from calibrator.science.errors import CannotCompute
from calibrator.science.feeding import counts_of, powder_per_calf_g
from calibrator.science.mixing import powder_from
from calibrator.science.scoop import same_line
from calibrator.values import dataclass


class Fault(StrEnum):
    """Why no chart of a plan that hangs holds today."""

    NONE = "none"  # none hangs
    LOT = "lot"  # it is of another lot
    LINE = "line"  # its lot was weighed in anew
    SCOOP = "scoop"  # a scoop that it may count by was retired
    LABEL = "label"  # a label printed since has other lines for the plan's groups
    CALVES = "calves"  # it has no row for today's calves
    PLAN = "plan"  # the plan was changed
    VESSEL = "vessel"  # the plan's vessel was changed
    SETTINGS = "settings"  # the farm measures water in another step, or by other units, or allows more or less


@dataclass(frozen=True)
class ChartFault:
    """A plan without a chart that holds, the sheet that hangs, and an earlier one that holds `again`."""

    plan: Plan
    fault: Fault
    sheet: Printed | None = None
    again: Printed | None = None


def chart_faults(now: Standing) -> list[ChartFault]:
    """The plans in use that have no chart on the wall that holds for the lot in use and today's calves.

    A farm may want no charts. One that hangs there all the same has to hold: it is read.
    """
    if now.in_use is None or now.in_use.sign_off is None:
        return []
    up = {sheet.plan_id: sheet for sheet in hanging(now, PrintKind.WALL_CHART)}
    by_hand = _replaced(now)
    faults = []
    for plan in now.plans:
        sheet = up.get(plan.id)
        if sheet is not None and (fault := _fault(now, plan, sheet)):
            faults.append(ChartFault(plan, fault, sheet, _holds_again(now, plan)))
        elif sheet is None and now.asks_for_charts and plan.id not in by_hand:
            faults.append(ChartFault(plan, Fault.NONE, again=_holds_again(now, plan)))
    return faults


def _holds_again(now: Standing, plan: Plan) -> Printed | None:
    """A chart that was up before and holds: of a lot that is fed again, or taken down too soon."""
    spoiled = never_up(now.endings)
    of_plan = (one for one in now.prints if one.plan_id == plan.id and one.id in now.charted)
    return next((one for one in of_plan if one.id not in spoiled and _fault(now, plan, one) is None), None)


def _fault(now: Standing, plan: Plan, sheet: Printed) -> Fault | None:
    if sheet.sign_off_id != in_force(now, sheet):
        used = now.in_use.lot.id if now.in_use else ""
        return Fault.LINE if sheet.lot_id == used else Fault.LOT
    was = now.charted.get(sheet.id, ChartBasis(plan))
    made_of = was.plan
    if _may_count_by(was) - {scoop.id for scoop in now.scoops}:
        return Fault.SCOOP
    if _fed(made_of) != _fed(plan):
        return Fault.PLAN
    if _other_lines(now, plan, sheet):
        return Fault.LABEL
    vessel = now.vessels.get(plan.vessel_id or "")
    if was.vessel and vessel and _held(was.vessel) != _held(vessel):
        return Fault.VESSEL
    if was.farm and now.farm and _steps(was.farm) != _steps(now.farm):
        return Fault.SETTINGS
    pairs = zip(plan.groups, made_of.groups, strict=True)
    return None if all(_has_row(made_of, group, then) for group, then in pairs) else Fault.CALVES


def _may_count_by(was: ChartBasis) -> frozenset[str]:
    """The scoops that a chart may count by. Which of several it does count by no one reckons here: its rows would have
    to be worked out anew."""
    if was.plan.scoopfuls and was.plan.scoopfuls.rule is ScoopRule.WEIGH:
        return frozenset()
    named = named_scoop(was.plan)
    return was.scoops & {named} if named else was.scoops


def named_scoop(plan: Plan) -> str:
    """The id of the one scoop that a plan counts by; blank where it names none."""
    rule = plan.scoopfuls
    return rule.scoop_id if rule and rule.rule is ScoopRule.ONE_KIND else ""


def _other_lines(now: Standing, plan: Plan, sheet: Printed) -> bool:
    """Whether a label printed after a sheet has other lines beside the main one for a plan's groups than the label
    before it: rows count by them."""
    if now.in_use is None:
        return False
    try:
        powder = powder_from(now.in_use.lot.composition)
        feedings_g = [powder_per_calf_g(group, powder, plan.water_temperature_c) for group in plan.groups]
    except CannotCompute:  # such a plan has no rows
        return False
    newest = {signed.scoop_id: signed.id for signed in now.sign_offs if signed.lot_id == now.in_use.lot.id}
    main_mm = [mark.down_wall_mm for mark in now.marks if mark.sign_off_id in newest.values()]

    def own(scoop_id: str, up_to: int | None = None) -> set[tuple[float, float | None]]:
        return {
            (line.target_mass_g, line.down_wall_mm)
            for line in labelled_lines(now, scoop_id, newest[scoop_id], up_to)
            if not any(same_line(line.down_wall_mm, mm) for mm in main_mm)
            and any(same_weight(line.target_mass_g, feeding_g) for feeding_g in feedings_g)
        }

    return any(own(scoop_id) != own(scoop_id, sheet.number) for scoop_id in newest)


def _fed(plan: Plan) -> Plan:
    """All of a plan that changes the figures of a row."""
    groups = tuple(replace(group, calves=0) for group in plan.groups)
    rows = replace(plan, count_from=0, count_to=0, count_step=1, counts=())
    return replace(rows, groups=groups, name="", revision="")


def _held(vessel: Vessel) -> tuple[object, ...]:
    """All of a vessel that changes the figures of a row."""
    return vessel.rim_volume_ml, vessel.usable_share, vessel.shape


def _steps(farm: Farm) -> tuple[object, ...]:
    """All of a farm's settings that change the figures of a row."""
    step = farm.water_step_qt if farm.units is UnitSystem.FARM else farm.water_step_l
    return farm.units, step, farm.tolerance_share


def _has_row(made_of: Plan, group: PlanGroup, then: PlanGroup) -> bool:
    """Whether the chart of a plan as it was then told this group's calves; a group without calves needs none."""
    try:
        return not group.calves or group.calves in counts_of(made_of, then)
    except CannotCompute:  # no chart was ever made of such a plan here
        return False


def _replaced(now: Standing) -> set[str | None]:
    """The plans whose newest chart was replaced by hand, or by a sheet from elsewhere."""
    newest = {sheet.plan_id: sheet for sheet in now.prints if sheet.kind is PrintKind.WALL_CHART}
    words = newest_words(now.endings)
    return {plan_id for plan_id, sheet in newest.items() if words.get(sheet.id) is Ending.REPLACED}
