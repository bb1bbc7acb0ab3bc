"""The sheets that are about somewhere, which of them are outdated, and what is wrong with a wall chart."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import replace
from datetime import datetime
from enum import StrEnum

from calibrator.desk.in_use import LotState
from calibrator.desk.standing import ChartBasis, Standing
from calibrator.model import (
    Ending,
    Farm,
    LabelledLine,
    Plan,
    PlanGroup,
    Printed,
    PrintKind,
    SheetEnding,
    UnitSystem,
    Vessel,
)
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
    if sheet.sign_off_id != _in_force(now, sheet):
        used = now.in_use.lot.id if now.in_use else ""
        return Fault.LINE if sheet.lot_id == used else Fault.LOT
    was = now.charted.get(sheet.id, ChartBasis(plan))
    made_of = was.plan
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


def labelled_lines(
    now: Standing, scoop_id: str, sign_off_id: str, up_to: int | None = None
) -> tuple[LabelledLine, ...]:
    """The lines that are drawn on the newest label of a scoop for a sign-off, of those `up_to` the print so numbered;
    none where nobody kept which."""
    told = (sheet for sheet in labels_of(now, scoop_id, sign_off_id) if up_to is None or sheet.number <= up_to)
    label = next(told, None)
    return tuple(line for line in (label.lines if label else None) or () if line.down_wall_mm)


def labels_of(now: Standing, scoop_id: str, sign_off_id: str = "") -> Iterator[Printed]:
    """The labels of a scoop that were not thrown away, of one sign-off or all, the newest first."""
    spoiled = never_up(now.endings)
    for sheet in reversed(now.prints):
        is_label = sheet.kind is PrintKind.SCOOP_LABEL and sheet.scoop_id == scoop_id
        if is_label and sheet.id not in spoiled and sign_off_id in ("", sheet.sign_off_id):
            yield sheet


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
    words = _newest_words(now.endings)
    return {plan_id for plan_id, sheet in newest.items() if words.get(sheet.id) is Ending.REPLACED}


def outdated_sheets(now: Standing, kind: PrintKind) -> tuple[Printed, ...]:
    """The sheets that are about somewhere and rest on an older sign-off than the one in force.

    A chart is outdated by any newer one of the lot in use, a lot sheet by a newer one of its lot and scoop. A sheet
    that another has replaced, or that somebody took down, counts no more.
    """
    return tuple(sheet for sheet in hanging(now, kind) if sheet.sign_off_id != _in_force(now, sheet))


def hanging(now: Standing, kind: PrintKind) -> tuple[Printed, ...]:
    """The newest sheet of each place that got up there and that nobody took down.

    What was printed ahead for a lot that waits gets there with its change-over.
    """
    waits = {known.lot.id for known in now.lots if known.state is LotState.WAITING}
    ahead = waits if kind is not PrintKind.LOT_SHEET else set()
    spoiled, gone = never_up(now.endings), _gone(now.endings)
    up = [sheet for sheet in now.prints if sheet.kind is kind and sheet.lot_id not in ahead]
    put_up = _put_up_again(now.endings)
    up.sort(key=lambda sheet: put_up.get(sheet.id, sheet.at))
    newest = {place_of(sheet): sheet for sheet in up if sheet.id not in spoiled}
    return tuple(sheet for sheet in newest.values() if sheet.id not in gone)


def place_of(sheet: Printed) -> tuple[PrintKind, str | None, str | None, str | None]:
    """What a sheet is up for: of two sheets for one place the newer replaces the older."""
    lot_id = sheet.lot_id if sheet.kind is PrintKind.LOT_SHEET else None
    return sheet.kind, sheet.scoop_id, sheet.plan_id, lot_id


def never_up(endings: Iterable[SheetEnding]) -> frozenset[str]:
    """The sheets that were thrown away unused."""
    return frozenset(id for id, ending in _newest_words(endings).items() if ending is Ending.SPOILED)


def _gone(endings: Iterable[SheetEnding]) -> frozenset[str]:
    return frozenset(id for id, ending in _newest_words(endings).items() if ending is not Ending.STILL_UP)


def _put_up_again(endings: Iterable[SheetEnding]) -> dict[str, datetime]:
    """When somebody said of a sheet that it hangs, where that is the newest word on it."""
    newest = {told.print_id: told for told in endings}
    return {id: told.at for id, told in newest.items() if told.ending is Ending.STILL_UP}


def _newest_words(endings: Iterable[SheetEnding]) -> dict[str, Ending]:
    return {told.print_id: told.ending for told in endings}


def _in_force(now: Standing, sheet: Printed) -> str:
    """The newest sign-off that a sheet of its kind has to rest on."""
    of_scoop = sheet.kind in (PrintKind.SCOOP_LABEL, PrintKind.LOT_SHEET)
    # While two lots are open, the newest sign-off is not always that of the lot that is fed.
    lot_id = sheet.lot_id if sheet.kind is PrintKind.LOT_SHEET else now.in_use.lot.id if now.in_use else ""
    ids = [
        s.id
        for s in now.sign_offs
        if (not of_scoop or s.scoop_id == sheet.scoop_id) and (not lot_id or s.lot_id == lot_id)
    ]
    return ids[-1] if ids else sheet.sign_off_id
