"""What needs doing on a farm, what cannot wait first. No window needed."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from datetime import date, datetime
from enum import StrEnum
from typing import TYPE_CHECKING

from calibrator.desk.batch_names import batch_checked, whose_batch
from calibrator.desk.change_over import old_to_ask_of
from calibrator.desk.chart_faults import ChartFault, chart_faults, named_scoop
from calibrator.desk.hung import outdated_sheets
from calibrator.desk.in_use import LotState
from calibrator.desk.scoop_lines import ScoopState, label_is_printed, line_of, line_on, scoop_state
from calibrator.desk.standing import LotStanding, Standing
from calibrator.model import BagCount, Lot, Mark, MixCheck, Plan, Printed, PrintKind, Scoop, ScoopRule, Vessel, WeighIn
from calibrator.values import dataclass

if TYPE_CHECKING:
    from calibrator.desk.label_news import LabelNews

CHECK_EVERY_DAYS = 7
FIRST_CHECK_DAYS = 1
"""How long a mix goes unchecked before it is asked for, and that of a lot begun: common practice, no source."""

THIN, STRONG, RIGHT = "thin", "strong", "inside"
OFF = (THIN, STRONG)
"""Verdicts of `science.check` by their words: the first page does not load it for them."""


class Need(StrEnum):
    """What can be waiting."""

    GO_ON = "go_on"  # a weigh-in was left open
    MARK_SCOOP = "mark_scoop"  # nobody said yet that the line of the lot in use is on a scoop
    OTHER_LINE = "other_line"  # a scoop still bears the line of another lot
    NO_SCOOP = "no_scoop"  # each scoop that the lot in use was weighed in with is retired
    PLAN_VESSEL = "plan_vessel"  # a plan mixes in a vessel that is retired
    PLAN_SCOOP = "plan_scoop"  # a plan counts by a scoop that is retired
    LABEL = "label"  # a plan feeds what was not planned when a label was printed: it lacks the line
    CHANGE_OVER = "change_over"  # a lot is weighed in and waits for its change-over
    OLD_LEFT = "old_left"  # a change-over planned ahead came, and nobody said whether any of the old lot is left
    WEIGH_IN = "weigh_in"  # a lot came and was not weighed in
    CHART = "chart"  # no chart of a plan that holds today hangs
    OLD_CHARTS = "old_charts"  # charts of no plan in use rest on an older sign-off
    LOT_SHEETS = "lot_sheets"  # a lot was weighed anew since its record was printed
    MIX_OFF = "mix_off"  # the last check of the mix was too thin or too strong, and none that reads right followed
    MIX_UNSURE = "mix_unsure"  # the last check of the mix leans to thin or strong, and no bags came out right since
    BAGS_OFF = "bags_off"  # the last count of bags says too little or too much powder, and not all was right since
    CHECK_MIX = "check_mix"  # the mix of the lot in use was not checked for long


@dataclass(frozen=True)
class Waiting:
    """One thing that is waiting, with what it concerns."""

    need: Need
    lot: Lot | None = None
    weigh_in: WeighIn | None = None
    scoop: Scoop | None = None
    plan: Plan | None = None
    vessel: Vessel | None = None
    old_lot: Lot | None = None
    line: Mark | None = None
    labelled: bool = False  # whether the label with that line is printed
    sheets: tuple[Printed, ...] = ()
    chart: ChartFault | None = None
    label: LabelNews | None = None
    day: date | None = None
    check: MixCheck | None = None
    side: str = ""  # of a count of bags: thin or strong


def waiting(now: Standing) -> list[Waiting]:
    """What needs doing, what cannot wait first."""
    found = [
        Waiting(Need.GO_ON, lot=known.lot, weigh_in=known.open_weigh_in) for known in now.lots if known.open_weigh_in
    ]
    found += _mix_off(now)
    found += _scoops(now)
    found += _no_scoop(now)
    found += _plans(now)
    found += _labels(now)
    found += _change_over(now)
    found += [Waiting(Need.WEIGH_IN, lot=known.lot) for known in now.lots if known.state is LotState.DELIVERED]
    found += _charts(now)
    if sheets := outdated_sheets(now, PrintKind.LOT_SHEET):
        known = now.lot(sheets[0].lot_id)
        found.append(Waiting(Need.LOT_SHEETS, lot=known.lot if known else None, sheets=sheets))
    asked = any(each.need in (Need.MIX_OFF, Need.BAGS_OFF, Need.MIX_UNSURE) for each in found)
    overdue = [] if asked else _check_overdue(now)
    return [*found, *overdue]


def _mix_off(now: Standing) -> list[Waiting]:
    """Each batch of the lot in use, where a check said that its mix was not as wanted or its last check leans that way,
    and nothing that was told of it since says that it is right. Of the powder a count of bags tells what a check does
    not, so both stand; it tells more than a check that leans."""
    lot = now.in_use.lot if now.in_use else None
    own = sorted((c for c in now.checks if lot and c.lot_id == lot.id and c.verdict), key=_moment)
    off, leaning = [], []
    for checks in _by_batch(own, now.plans):
        last = next((c for c in reversed(checks) if c.verdict in OFF or _reads_right(c)), None)
        if last is not None and last.verdict in OFF:
            off.append(last)
        elif leans(checks[-1]) and not _bags_came_right(now, checks[-1]):
            leaning.append(checks[-1])
    counted = bags_off(now)
    told = [*_told_of(Need.MIX_OFF, lot, off), *([counted] if counted else [])]
    return told if counted else [*told, *_told_of(Need.MIX_UNSURE, lot, leaning)]


def _by_batch(checks: Sequence[MixCheck], plans: Sequence[Plan]) -> list[list[MixCheck]]:
    """The checks of each batch that the plans have, in their order: of another one they tell nothing. What was checked
    of a batch that the plans do not name any more, each later check answers."""
    whose = [whose_batch(check, plans) for check in checks]
    found = []
    for batch in sorted(set(whose)):
        begun = [at for at, its in enumerate(whose) if its == batch]
        found.append([check for at, check in enumerate(checks) if at in begun or (not batch and at > begun[0])])
    return found


def _told_of(need: Need, lot: Lot | None, checks: Sequence[MixCheck]) -> list[Waiting]:
    return [Waiting(need, lot=lot, day=c.at.astimezone().date(), check=c) for c in sorted(checks, key=_moment)]


def bags_off(now: Standing) -> Waiting | None:
    """The newest count of bags of the lot in use, where it is surely off and not every batch has been checked since and
    surely read right: bags are counted of all batches together, so the check of one tells too little."""
    lot = now.in_use.lot if now.in_use else None
    counts = [count for count in now.bag_counts if lot and count.lot_id == lot.id]
    if not counts:
        return None
    last = max(counts, key=lambda count: count.at)
    side = _side_of(last, now.tolerance_share)
    right = [c for c in now.checks if c.lot_id == last.lot_id and c.verdict == RIGHT and c.at > last.at]
    if side not in OFF or _of_every_batch(right, now.plans):
        return None
    return Waiting(Need.BAGS_OFF, lot=lot, day=last.at.astimezone().date(), side=side)


def _of_every_batch(checks: Sequence[MixCheck], plans: Sequence[Plan]) -> bool:
    """Whether each group that the plans feed was checked, by itself or with all of its plan together. Where there is
    but one batch to check, each check is of it."""
    groups = {(plan.id, group.name) for plan in plans for group in plan.groups}
    if len(groups) <= 1:
        return bool(checks)
    found = [batch_checked(check, plans) for check in checks]
    checked = {(batch[0].id, batch[1]) for batch in found if batch}
    return all({(plan_id, name), (plan_id, None)} & checked for plan_id, name in groups)


def _side_of(count: BagCount, tolerance_share: float) -> str:
    """The verdict of a count of bags by its word; blank where today's rules refuse it."""
    # The science of counts comes with that of checks, which the first page is up without.
    from calibrator.desk.bags_told import bag_result

    result = bag_result(count, tolerance_share)
    return result.verdict.value if result else ""


def _reads_right(check: MixCheck) -> bool:
    """Whether a check lies within what is wanted. An open one counts too: without a Brix calibration of the powder no
    reading is ever sure, and what was put right would be called off for as long as the lot is fed."""
    return check.verdict == RIGHT or (check.solids_share is not None and check.verdict not in OFF and not leans(check))


def _bags_came_right(now: Standing, check: MixCheck) -> bool:
    """Whether bags counted after a check that proves nothing say that the feedings got their powder. A check that is
    surely off they do not answer: of the water they tell nothing."""
    later = [count for count in now.bag_counts if count.lot_id == check.lot_id and count.at > check.at]
    return bool(later) and _side_of(max(later, key=lambda count: count.at), now.tolerance_share) == RIGHT


def leans(check: MixCheck) -> str:
    """To which side an open check lies outside what is wanted; blank for any other."""
    if check.solids_share is None or check.verdict in (*OFF, RIGHT, ""):
        return ""
    off = check.solids_share - check.target_share
    return "" if abs(off) <= check.tolerance_share else THIN if off < 0 else STRONG


def _moment(check: MixCheck) -> datetime:
    return check.at


def _check_overdue(now: Standing) -> list[Waiting]:
    """The mix of the lot in use, on a farm that checks its mixes, once the last check is older than a week."""
    lot = now.in_use.lot if now.in_use else None
    if lot is None or not (now.checks or now.has_instruments):
        return []
    last = max((check.at.astimezone().date() for check in now.checks if check.lot_id == lot.id), default=None)
    signed = now.in_use.sign_off.at.astimezone().date() if now.in_use and now.in_use.sign_off else now.today
    since = last or max(signed, lot.fed_from or signed)
    allowed = CHECK_EVERY_DAYS if last else FIRST_CHECK_DAYS
    return [Waiting(Need.CHECK_MIX, lot=lot, day=last)] if (now.today - since).days > allowed else []


def _scoops(now: Standing) -> list[Waiting]:
    """The scoops that the lot in use cannot be fed with as they are."""
    if now.in_use is None:
        return []
    known = now.in_use
    asked = [_scoop(now, known, scoop, scoop_state(now, known, scoop.id)) for scoop in now.scoops]
    return [each for each in asked if each is not None]


def _no_scoop(now: Standing) -> list[Waiting]:
    """The lot in use, where no scoop in use was weighed in with it and a plan counts scoopfuls."""
    known = now.in_use
    if known is None or known.open_weigh_in is not None or now.weighed_in_with(known.lot.id):
        return []
    weighed = bool(now.plans) and all(p.scoopfuls and p.scoopfuls.rule is ScoopRule.WEIGH for p in now.plans)
    return [] if weighed else [Waiting(Need.NO_SCOOP, lot=known.lot)]


def _plans(now: Standing) -> list[Waiting]:
    """The plans that go by a vessel or a scoop that is retired."""
    scoops, found = {scoop.id for scoop in now.scoops}, []
    for plan in now.plans:
        vessel = now.vessels.get(plan.vessel_id or "")
        if vessel is not None and vessel.retired_on is not None:
            found.append(Waiting(Need.PLAN_VESSEL, plan=plan, vessel=vessel))
        if named_scoop(plan) not in ("", *scoops):
            found.append(Waiting(Need.PLAN_SCOOP, plan=plan))
    return found


def _scoop(now: Standing, known: LotStanding, scoop: Scoop, state: ScoopState) -> Waiting | None:
    line, own = line_on(now, scoop.id), line_of(known, scoop.id)
    old = now.lot(line.lot_id) if line else None
    told = Waiting(Need.OTHER_LINE, lot=known.lot, scoop=scoop, old_lot=old.lot if old else None)
    if state is ScoopState.TO_MARK and own is not None:
        return replace(told, need=Need.MARK_SCOOP, line=own, labelled=label_is_printed(now, own))
    return told if state is ScoopState.OTHER_LOT else None


def _labels(now: Standing) -> list[Waiting]:
    """The labels that were printed before a feeding was planned. What reckons lines is loaded where a plan is another
    than its label knew: the first page is up without it."""
    if now.in_use is None or all(plans == now.plans for plans in now.labelled.values()):
        return []
    from calibrator.desk.label_news import label_news

    return [Waiting(Need.LABEL, lot=now.in_use.lot, scoop=news.scoop, label=news) for news in label_news(now)]


def _change_over(now: Standing) -> list[Waiting]:
    """What is to be said of the lot fed until a change-over that came; the lot that waits for its own, and which one
    is fed until then."""
    if now.in_use is not None and (old := old_to_ask_of(now)):
        return [Waiting(Need.OLD_LEFT, lot=now.in_use.lot, old_lot=old.lot), *_next_change_over(now)]
    return _next_change_over(now)


def _next_change_over(now: Standing) -> list[Waiting]:
    follows = now.next_lot
    if follows is None or now.in_use is None:
        return []
    return [Waiting(Need.CHANGE_OVER, lot=follows.lot, old_lot=now.in_use.lot)]


def _charts(now: Standing) -> list[Waiting]:
    """Charts that do not hold, and those on the wall of plans that are not in use."""
    lot = now.in_use.lot if now.in_use else None
    found = [
        Waiting(Need.CHART, lot=lot, chart=fault, sheets=(fault.sheet,) if fault.sheet else ())
        for fault in chart_faults(now)
    ]
    plans = {plan.id for plan in now.plans}
    if old := tuple(s for s in outdated_sheets(now, PrintKind.WALL_CHART) if s.plan_id not in plans):
        found.append(Waiting(Need.OLD_CHARTS, lot=lot, sheets=old))
    return found
