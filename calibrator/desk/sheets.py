"""From the records to a plan's table: which scoops count, what each row holds, what a new lot changed.

No window needed. Rows are computed when they are looked at, so that a number can be typed at any pace.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import replace
from datetime import date
from itertools import zip_longest
from types import MappingProxyType

from calibrator.desk.as_typed import typed_step_g
from calibrator.desk.findings import check_of
from calibrator.desk.label_lines import LineOffer
from calibrator.desk.refusals import in_words
from calibrator.desk.scoop_lines import labelled_lines
from calibrator.desk.scoop_names import names_on_paper
from calibrator.desk.sheet_lines import GroupSheet, LotInUse, SheetLine, water_step_ml
from calibrator.desk.standing import LotStanding, Standing
from calibrator.model import (
    Composition,
    Farm,
    FillWay,
    LabelledLine,
    Mark,
    Plan,
    PlanGroup,
    RateBasis,
    Scale,
    Scoop,
    Scoopfuls,
    ScoopRule,
    SignOff,
    Vessel,
    WeighIn,
)
from calibrator.prints.label_facts import LabelLine, same_weight
from calibrator.records import Records
from calibrator.science.as_fed import Rest, as_fed, day_plan
from calibrator.science.batch import BatchTable, counts_of, table
from calibrator.science.errors import CannotCompute
from calibrator.science.feeding import powder_per_calf_g, recipe_of
from calibrator.science.line import fill_line
from calibrator.science.mixing import powder_from
from calibrator.science.scale import NO_SCALE, ScaleFacts, scale_facts
from calibrator.science.scoop import same_line
from calibrator.science.scoopfuls import ScoopCount, ScoopWay, normal_u, scoop_count
from calibrator.values import dataclass

__all__ = [
    "Changed",
    "GroupSheet",
    "LotInUse",
    "Occasion",
    "PlanSheet",
    "SheetLine",
    "changes",
    "chart_plan",
    "day_sheet",
    "feeding_count",
    "label_step_g",
    "plan_sheet",
    "powder_before",
    "powder_in_use",
    "powder_of",
    "read_counts",
    "scoop_ways",
    "water_step_ml",
]


@dataclass(frozen=True, eq=False)
class PlanSheet:
    """A plan with the lot in use. `trouble` is a sentence where the plan cannot be computed."""

    plan: Plan
    vessel: Vessel | None
    powder: LotInUse
    groups: tuple[GroupSheet, ...]
    together: GroupSheet | None
    trouble: str = ""
    told: Plan | None = None  # the whole plan, where `plan` is that of one feeding of a day
    rests: tuple[Rest | None, ...] = ()  # for each group, why it is not fed then

    def kin_of(self, other: PlanSheet) -> bool:
        """Whether only counts of calves differ."""
        fed_alike = [replace(group, calves=0) for group in self.plan.groups] == [
            replace(group, calves=0) for group in other.plan.groups
        ]
        same_plan = replace(self.plan, groups=()) == replace(other.plan, groups=())
        alike = same_plan and fed_alike and (self.trouble, self.rests) == (other.trouble, other.rests)
        sheets = zip_longest(self.groups, other.groups)
        return alike and bool(self.groups) and all(mine and mine.kin_of(its) for mine, its in sheets)


def scoop_ways(
    sign_offs: Sequence[SignOff],
    marks: Sequence[Mark],
    names: dict[str, str],
    labels: Mapping[str, Sequence[LabelledLine]] = MappingProxyType({}),
    step_g: float = 0.0,
) -> tuple[ScoopWay, ...]:
    """The fills that a lot's sign-offs allow: each scoop struck level, and to each of its lines.

    `sign_offs` are those of one lot, oldest first; of each scoop the newest counts. `names` are the scoops
    in use, `labels` the lines on the label of each sign-off, whose weights are told in steps of `step_g`. A line for
    which full scoops go before counts as the part that is filled to it.
    """
    ways: list[ScoopWay] = []
    for signed in {s.scoop_id: s for s in sign_offs}.values():
        if signed.scoop_id not in names:
            continue
        name = names[signed.scoop_id]
        own = [mark for mark in marks if mark.sign_off_id == signed.id]
        level = _way(signed, name, FillWay.LEVEL, signed.level_mean_g, signed.level_u_g)
        alone = next((mark.level_scoopfuls for mark in own if mark.struck_level), 0)
        ways.append(replace(level, full_scoops=alone))
        ways += [
            replace(
                _way(signed, name, FillWay.TO_MARK, mark.mass_g, mark.mass_u_g),
                full_scoops=mark.full_scoops,
                down_wall_mm=mark.down_wall_mm,
                line_g=_named_g(labels.get(signed.id, ()), mark),
                line_step_g=step_g,
            )
            for mark in own
            if not mark.struck_level
        ]
    return tuple(ways)


def _way(signed: SignOff, name: str, way: FillWay, mass_g: float, u_g: float) -> ScoopWay:
    """Few bags leave more doubt in the mean than its standard uncertainty tells: as much more as at the sign-off."""
    half_g = (signed.level_high_g - signed.level_low_g) / 2
    wider = normal_u(half_g) / signed.level_u_g if signed.level_u_g > 0 else 1.0
    fills, bags = signed.fill_sd_share * mass_g, signed.bag_sd_share * mass_g
    return ScoopWay(signed.scoop_id, name, way, mass_g, wider * u_g, fills, bags)


def powder_in_use(records: Records, now: Standing) -> LotInUse:
    """The lot in use as it stands now; without one, a powder by its typical label and no scoops.

    Raises CannotCompute for a label that cannot be.
    """
    return powder_of(records, now, now.in_use, now.sign_offs)


def powder_before(records: Records, now: Standing) -> LotInUse | None:
    """What was in use before the newest sign-off: the lot before, or this lot as it was weighed before."""
    here = now.in_use
    if here is None or here.sign_off is None:
        return None
    other = [s for s in now.sign_offs if s.lot_id != here.lot.id and s.at < here.sign_off.at]
    earlier = other or [s for s in now.sign_offs if s.at < here.sign_off.at]
    known = now.lot(earlier[-1].lot_id) if earlier else None
    return powder_of(records, now, known, earlier) if known else None


def powder_of(records: Records, now: Standing, known: LotStanding | None, sign_offs: Sequence[SignOff]) -> LotInUse:
    """A lot's powder and scoops as these sign-offs (oldest first) tell them. Raises CannotCompute."""
    if known is None:
        return LotInUse(None, None, (), powder_from(Composition()), NO_SCALE)
    own = [s for s in sign_offs if s.lot_id == known.lot.id]
    marks = [mark for mark in now.marks if mark.lot_id == known.lot.id]
    names = names_on_paper(now.scoops)
    powder = powder_from(known.lot.composition)
    signed = own[-1] if own else None
    own_scale = records.find(Scale, signed.scale_id) if signed else None
    scale = _scale_then(records, signed, own_scale) if signed and own_scale else NO_SCALE
    newest = {s.scoop_id: s for s in own if s.scoop_id in names}
    labels = {s.id: labelled_lines(now, s.scoop_id, s.id) for s in newest.values()}
    step_g = label_step_g(records, own) if any(len(lines) > 1 for lines in labels.values()) else 0.0
    ways = scoop_ways(own, marks, names, labels, step_g)
    capacity_g = _capacity_g(records, known.lot.farm_id, own_scale)
    drawn_mm = [way.down_wall_mm for way in ways if way.down_wall_mm]
    own_lines = tuple(
        (line.target_mass_g, replace(_labelled_way(records, s, names[s.scoop_id], line), line_step_g=step_g))
        for s in newest.values()
        for line in labels[s.id]
        if not any(same_line(line.down_wall_mm, mm) for mm in drawn_mm)
    )
    return LotInUse(known.lot, signed, ways, powder, scale, capacity_g, own_lines)


def label_step_g(records: Records, sign_offs: Iterable[SignOff]) -> float:
    """The step that weights are told in on every label of a lot, g: that of the finest scale it was weighed on, or a
    finer one where a feeding was typed finer. `sign_offs` are the lot's, oldest first, one at least."""
    newest = {signed.scoop_id: signed for signed in sign_offs}.values()
    finest_g = min(records.find(Scale, signed.scale_id).resolution_g for signed in newest)
    weigh_ins = [records.find(WeighIn, signed.weigh_in_id) for signed in newest]
    units = records.find(Farm, weigh_ins[0].farm_id).units
    targets = ((each.target_mass_g, each.target_typed) for each in weigh_ins)
    typed_g = (typed_step_g(mass_g, typed, units, finest_g) for mass_g, typed in targets if mass_g is not None)
    return min(typed_g, default=finest_g)


def _scale_then(records: Records, signed: SignOff, scale: Scale) -> ScaleFacts:
    """The scale of a weigh-in as its check weight told it."""
    return scale_facts(scale.resolution_g, check_of(records.find(WeighIn, signed.weigh_in_id), scale))


def _labelled_way(records: Records, signed: SignOff, name: str, line: LabelledLine | LabelLine) -> ScoopWay:
    """A fill to a line that a label has for another feeding, as sure as one that nobody filled to yet."""
    scoop = records.revision(Scoop, signed.scoop_revision)
    settling = signed.settling_factor, signed.settling_u
    reckoned = fill_line(scoop.shape, signed.level_mean_g, signed.level_u_g, line.mass_g, *settling)
    way = _way(signed, name, FillWay.TO_MARK, line.mass_g, reckoned.mass_u_g)
    return replace(way, full_scoops=line.full_scoops, down_wall_mm=line.down_wall_mm, line_g=line.held_g)


def feeding_count(
    records: Records, signed: SignOff, ways: Sequence[ScoopWay], offer: LineOffer, half: LineOffer | None
) -> ScoopCount | None:
    """One feeding filled as a label may tell it: to the scoop's main line and its half, or to a line of its own. `ways`
    are the fills of the scoop that were signed off; None where those are not there."""
    level = next((way for way in ways if way.way is FillWay.LEVEL), None)
    main = next((way for way in ways if way.way is FillWay.TO_MARK), None)
    line, count = offer.line, offer.counted
    if level is None:
        return None
    if count is None:
        own = _labelled_way(records, signed, level.name, line)
        fills = ((level, line.full_scoops), (own, line.to_line))
        return scoop_count([(way, float(n)) for way, n in fills if n], offer.target_g)
    if main is None:
        return None
    parts = [(main, float(count.to_main))]
    if count.to_half and half is not None:
        parts.append((_labelled_way(records, signed, level.name, half.line), float(count.to_half)))
    return scoop_count(parts, offer.target_g)


def _named_g(lines: Sequence[LabelledLine], mark: Mark) -> float:
    """What stands beside a mark's line on a label with several; 0 where there is none to take it for."""
    own = (line.held_g for line in lines if same_line(line.down_wall_mm, mark.down_wall_mm))
    return next(own, 0.0) if len(lines) > 1 else 0.0


def _capacity_g(records: Records, farm_id: str, own: Scale | None) -> float:
    """What the largest scale in use weighs, so that nobody is told to weigh in portions what fits another scale."""
    in_use = (scale for scale in records.every(Scale, farm_id) if scale.retired_on is None)
    return max((scale.capacity_g for scale in (*in_use, *([own] if own else []))), default=0.0)


def plan_sheet(
    farm: Farm, plan: Plan, vessel: Vessel | None, powder: LotInUse, earlier: PlanSheet | None = None
) -> PlanSheet:
    """The plan's tables: a group each, and all together where they are mixed at one rate.

    Rows that an `earlier` sheet has worked out are taken from it where only counts of calves differ.
    """
    try:
        groups = tuple(_group_sheet(farm, plan, vessel, powder, group) for group in plan.groups)
    except CannotCompute as error:
        return PlanSheet(plan, vessel, powder, (), None, in_words(error))
    together = _together(farm, plan, vessel, powder)
    if earlier is not None:
        groups = tuple(
            sheet.taking_over(was)
            for sheet, was in zip_longest(groups, earlier.groups[: len(groups)])
            if sheet is not None
        )
        together = None if together is None else together.taking_over(earlier.together)
    return PlanSheet(plan, vessel, powder, groups, together)


@dataclass(frozen=True)
class Occasion:
    """One feeding of a day: 0 is the first."""

    on: date
    feeding: int = 0


def day_sheet(
    farm: Farm,
    plan: Plan,
    vessel: Vessel | None,
    powder: LotInUse,
    when: Occasion,
    earlier: PlanSheet | None = None,
) -> PlanSheet:
    """The plan's tables at one feeding of a day: its steps, its feedings and the cold reckoned in."""
    try:
        fed, rests = as_fed(plan, when.on, when.feeding, powder.powder)
    except CannotCompute as error:
        return PlanSheet(plan, vessel, powder, (), None, in_words(error), plan)
    return replace(plan_sheet(farm, fed, vessel, powder, earlier), told=plan, rests=rests)


def chart_plan(plan: Plan, on: date, powder: LotInUse) -> Plan:
    """A plan as its chart shows it on a day: feedings that differ are groups of their own.

    Raises CannotCompute for a rate that cannot be.
    """
    fed = day_plan(plan, on, powder.powder)
    return replace(fed, groups=tuple(group for group in fed.groups if group.calves) or fed.groups)


def _group_sheet(farm: Farm, plan: Plan, vessel: Vessel | None, powder: LotInUse, group: PlanGroup) -> GroupSheet:
    counts = counts_of(plan, group)
    rows = table(plan, powder.powder, vessel, counts, group=group)
    return _sheet(farm, plan, powder, rows, group, group.calves)


def _together(farm: Farm, plan: Plan, vessel: Vessel | None, powder: LotInUse) -> GroupSheet | None:
    if len(plan.groups) < 2:
        return None
    try:
        rows = table(plan, powder.powder, vessel, counts_of(plan))
    except CannotCompute:
        return None
    return _sheet(farm, plan, powder, rows, None, sum(group.calves for group in plan.groups))


def _sheet(
    farm: Farm, plan: Plan, powder: LotInUse, rows: BatchTable, group: PlanGroup | None, today: int
) -> GroupSheet:
    rule = plan.scoopfuls or Scoopfuls()
    ways = () if rule.rule is ScoopRule.WEIGH else (*_own_lines(plan, powder, group), *powder.ways)
    told = group or next((each for each in plan.groups if each.calves), plan.groups[0])
    whole = recipe_of(told, powder.powder, plan.water_temperature_c)
    return GroupSheet(
        group,
        today,
        rows,
        farm,
        whole.powder,
        ways,
        powder.resolution_g,
        plan.water_temperature_c,
        rule,
        whole.shares,
        tuple(additive.name for additive in told.additives),
        powder.capacity_g,
        powder.sign_off is not None,
        told.rate.basis is RateBasis.MADE_UP,
    )


def _own_lines(plan: Plan, powder: LotInUse, group: PlanGroup | None) -> tuple[ScoopWay, ...]:
    """The lines that labels have for a group's own feeding; for another's, a line would only be one more to mistake."""
    if group is None:
        return ()
    feeding_g = powder_per_calf_g(group, powder.powder, plan.water_temperature_c)
    return tuple(way for target_g, way in powder.own_lines if same_weight(target_g, feeding_g))


@dataclass(frozen=True)
class Changed:
    """What a plan's group took before and takes now, for today's calves."""

    plan: Plan
    group: PlanGroup
    before: SheetLine
    now: SheetLine

    @property
    def differs(self) -> bool:
        return _counted(self.before) != _counted(self.now)

    @property
    def to_line(self) -> bool:
        """Whether a scoop is filled to its line."""
        return bool(_lines_mm(self.now))

    @property
    def line_stays(self) -> bool:
        """Whether each line filled to is where it was before."""
        before = _lines_mm(self.before)
        return all(same_line(line_mm, before.get(scoop_id)) for scoop_id, line_mm in _lines_mm(self.now).items())

    @property
    def weighed(self) -> bool:
        """Whether it was weighed before and is weighed now: no count that a person has to learn anew."""
        return not any(line.scoops and line.scoops.countable for line in (self.before, self.now))


def changes(
    farm: Farm, plans: Sequence[Plan], vessels: dict[str, Vessel], before: LotInUse, now: LotInUse, on: date
) -> Iterator[Changed]:
    """Every plan and group with calves today, before and now, at the day's first feeding."""
    for plan in plans:
        vessel = vessels.get(plan.vessel_id or "")
        old, new = (day_sheet(farm, plan, vessel, powder, Occasion(on)).groups for powder in (before, now))
        for was, is_now in zip(old, new, strict=False):
            if was.group and was.today_line and is_now.today_line:
                yield Changed(plan, was.group, was.today_line, is_now.today_line)


def _lines_mm(line: SheetLine) -> dict[str, float | None]:
    """Where the lines filled to are, by scoop, mm down the wall."""
    parts = line.scoops.parts if line.scoops else ()
    return {way.scoop_id: way.down_wall_mm for way, _ in parts if way.way is FillWay.TO_MARK}


def _counted(line: SheetLine) -> tuple[object, ...]:
    if line.scoops is None:
        return (line.batches,)
    return (line.batches, *((way.scoop_id, way.way, count) for way, count in line.scoops.parts))


def read_counts(text: str) -> tuple[int, ...] | None:
    """The farm's own counts from a text like "109, 111, 120"; None where it is no list of counts."""
    pieces = text.replace(",", " ").replace(";", " ").split()
    if not all(piece.isascii() and piece.isdecimal() and 0 < len(piece) <= 5 for piece in pieces):
        return None
    return tuple(sorted({int(piece) for piece in pieces} - {0}))
