"""From the records to what the prints must be told. No window needed."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from datetime import date, datetime

from calibrator.desk.both_lots import FromBoth
from calibrator.desk.findings import as_signed, read, work_out
from calibrator.desk.label_cut import Cut
from calibrator.desk.lessons import Lessons
from calibrator.desk.scoop_names import scoop_title
from calibrator.desk.sheets import GroupSheet, LotInUse, PlanSheet, SheetLine
from calibrator.desk.warmth import composition_of, draw_c
from calibrator.model import (
    Farm,
    FillWay,
    Lot,
    Paper,
    Plan,
    Printed,
    Scale,
    Scoop,
    ScoopRule,
    SignOff,
    UnitSystem,
    WeighIn,
)
from calibrator.prints.chart_facts import ChartGroup, ChartRow, LotPart, ScoopPart, TwoLots, WallChart, WeekRow, Weeks
from calibrator.prints.label_facts import (
    LabelForm,
    LabelGrid,
    LabelLine,
    LabelSheet,
    LineCount,
    ScoopLabel,
    same_weight,
)
from calibrator.prints.record_facts import LotSheet
from calibrator.records import Records
from calibrator.science.feeding import fed_ml
from calibrator.science.mixing import Powder
from calibrator.science.scale import least_additive_g
from calibrator.science.scoopfuls import ScoopCount, ScoopWay, filled_otherwise
from calibrator.science.struck import COVERAGE_FACTOR
from calibrator.science.weeks import Phase, phases
from calibrator.values import dataclass


@dataclass(frozen=True)
class Options:
    """What a person chooses for a print."""

    paper: Paper
    languages: tuple[str, ...]
    copies: int = 1
    cut: Cut = Cut.STRIP
    grid: LabelGrid | None = None  # of ready-cut labels


@dataclass(frozen=True)
class LineNames:
    """Lines of scoops whose label bears several: the weight that stands beside each, by the scoop and what a scoopful
    to the line weighs, g; `step_g` is the step that labels tell weights in, `counts` what labels count by their lines.
    """

    held_g: Mapping[tuple[str, float], float]
    step_g: float
    counts: tuple[LineCount, ...] = ()


NO_NAMES = LineNames({}, 0.0)


def wall_chart_facts(
    farm: Farm,
    sheet: PlanSheet,
    signed: SignOff,
    printed: Printed,
    on: date,
    options: Options,
    two_lots: tuple[TwoLots, ...] = (),
    weeks: tuple[Weeks, ...] = (),
    named: LineNames = NO_NAMES,
) -> WallChart:
    """A plan's chart for the lot of a sign-off, with the number it bears; `named` tells lines apart."""
    lot = sheet.powder.lot
    manner = next((group.manner for group in sheet.groups if group.manner), ())
    farm_units, cold = farm.units is UnitSystem.FARM, sheet.plan.cold
    return WallChart(
        farm_name=farm.name,
        plan_name=sheet.plan.name,
        lot_number=lot.lot_number if lot else "",
        weighed_in_on=signed.at.astimezone().date(),
        number=printed.number,
        replaces=printed.replaces,
        groups=tuple(_group(group, _drawn_c(sheet, group), named, manner) for group in sheet.groups),
        water_temperature_c=_drawn_c(sheet, sheet.groups[0]) if sheet.groups else sheet.plan.water_temperature_c,
        by=signed.by,
        product=lot.product if lot else "",
        medicated=lot.medicated if lot else False,
        vessel_name=sheet.vessel.name if sheet.vessel else "",
        printed_on=on,
        units=farm.units,
        paper=options.paper,
        languages=options.languages,
        resolution_g=sheet.powder.resolution_g or None,
        label_step_g=named.step_g or None,
        water_step=farm.water_step_qt if farm_units else farm.water_step_l,
        cold_below_c=cold.below_c if cold and cold.on else None,
        two_lots=two_lots,
        least_additive_g=least_additive_g(sheet.powder.resolution_g),
        scale_most_g=sheet.powder.capacity_g,
        scale_off_share=sheet.powder.scale.off_share,
        weeks=weeks,
    )


def weeks_facts(plan: Plan, powder: Powder) -> tuple[Weeks, ...]:
    """The way to weaning of every group with steps, as the plan tells it. Raises CannotCompute."""
    told = ((group, phases(plan, group, powder)) for group in plan.groups)
    return tuple(
        Weeks(
            name=group.name,
            rows=tuple(_week_row(phase, alike=not group.feedings) for phase in found),
        )
        for group, found in told
        if found
    )


def _week_row(phase: Phase, *, alike: bool) -> WeekRow:
    return WeekRow(
        from_day=phase.from_day,
        to_day=phase.to_day,
        begins=phase.begins,
        feedings=phase.feedings,
        day_ml=phase.day_ml,
        day_g=phase.day_g,
        feeding_ml=phase.feeding_ml if alike else None,
        feeding_g=phase.feeding_g if alike else None,
    )


def two_lots_facts(found: FromBoth, old: LotInUse, new: LotInUse) -> TwoLots:
    """Today's batch of a group from two lots, the old one first."""
    group = found.sheet.group
    parts = ((old, found.old_g, found.old_scoops), (new, found.new_g, found.new_scoops))
    return TwoLots(
        calves=found.calves,
        batches=found.batches,
        group_name=group.name if group else "",
        one_line=found.one_line,
        parts=tuple(
            LotPart(lot_number=of.lot.lot_number if of.lot else "", powder_g=mass_g, scoopfuls=_scoop_parts(count))
            for of, mass_g, count in parts
            if mass_g > 0
        ),
    )


def _scoop_parts(
    count: ScoopCount | None, manners: Sequence[Sequence[ScoopWay]] = (), named: LineNames = NO_NAMES
) -> tuple[ScoopPart, ...]:
    """A count as parts; `manners` are those that a reader may take it to be in, the chart's and the group's."""
    parts = count.parts if count and count.told else ()
    return tuple(
        ScoopPart(
            scoop_name=way.name,
            way=way.way,
            count=number,
            otherwise=any(filled_otherwise(way, manner) for manner in manners),
            line_g=named.held_g.get((way.scoop_id, way.mass_g), 0.0) if way.way is FillWay.TO_MARK else 0.0,
        )
        for way, number in parts
    )


def _drawn_c(sheet: PlanSheet, group: GroupSheet) -> float:
    """The water to draw for a group. Raises CannotCompute where no water would do."""
    return draw_c(sheet.plan, group.per_calf, composition_of(sheet))


def _group(sheet: GroupSheet, drawn_c: float, named: LineNames, chart: Sequence[ScoopWay]) -> ChartGroup:
    """A group of a chart whose first group keeps the manner `chart`."""
    group = sheet.group
    assert group is not None
    lines = (sheet.line(number) for number in range(len(sheet)))
    each_g, manners = sheet.each_g(group), (chart, sheet.manner)
    return ChartGroup(
        name=group.name,
        rate=group.rate,
        volume_ml=group.volume_ml,
        volume_means=group.volume_means,
        rows=tuple(_row(line, sheet, drawn_c, named, manners) for line in lines),
        solids_share=sheet.per_calf.solids_share,
        fed_ml=fed_ml(group, sheet.per_calf),
        each_g=each_g,
        each_scoopfuls=_scoop_parts(sheet.count_of(each_g), manners, named),
        each_by_lines=_by_lines(each_g, named) if sheet.rule.rule is ScoopRule.FEWEST else None,
    )


def _by_lines(each_g: float, named: LineNames) -> LineCount | None:
    """How the label tells a feeding that ends in half a scoopful; None where it needs no half."""
    return next((one for one in named.counts if one.to_half and same_weight(one.target_mass_g, each_g)), None)


def _row(
    line: SheetLine, sheet: GroupSheet, drawn_c: float, named: LineNames, manners: Sequence[Sequence[ScoopWay]]
) -> ChartRow:
    levels = line.levels
    return ChartRow(
        calves=line.calves,
        water_ml=line.batch.drawn_ml,
        powder_g=line.powder_g,
        scoopfuls=_scoop_parts(line.scoops, manners, named),
        many=line.scoops is not None and not line.scoops.countable,
        batches=line.batches,
        water_temperature_c=drawn_c,
        mix_ml=line.batch.mix.volume_ml,
        water_level_mm=levels.water_mm if levels else None,
        mix_level_mm=levels.mix_mm if levels else None,
        fits=levels is None or levels.holds,
        today=line.calves == sheet.today,
        additives=tuple(zip(sheet.additives, line.additives_g, strict=True)),
        portions=line.portions.count if line.portions else 1,
        portion_g=line.portions.each_g if line.portions else 0.0,
        for_water=line.batch.for_water,
    )


@dataclass(frozen=True)
class LabelWanted:
    """One scoop's lines for one lot, and the number that its label bears."""

    scoop: Scoop
    lines: tuple[LabelLine, ...]
    signed: SignOff
    printed: Printed
    wall_mm: float = 0.0
    counts: tuple[LineCount, ...] = ()


def label_sheet_facts(
    farm: Farm, lot: Lot, wanted: Sequence[LabelWanted], resolution_g: float, options: Options
) -> LabelSheet:
    """The labels of a lot's scoops on one sheet."""
    return LabelSheet(
        labels=tuple(_label(lot, each, options.copies) for each in wanted),
        form=LabelForm.WRAP if options.cut is Cut.WRAP else LabelForm.STRIP,
        grid=options.grid if options.cut is Cut.READY_CUT else None,
        units=farm.units,
        paper=options.paper,
        languages=options.languages,
        resolution_g=resolution_g or None,
    )


def _label(lot: Lot, wanted: LabelWanted, copies: int) -> ScoopLabel:
    return ScoopLabel(
        scoop_name=scoop_title(wanted.scoop),
        shape=wanted.scoop.shape,
        lot_number=lot.lot_number,
        lines=wanted.lines,
        weighed_in_on=wanted.signed.at.astimezone().date(),
        number=wanted.printed.number,
        replaces=wanted.printed.replaces,
        made_on=lot.made_on,
        arrived_on=lot.arrived_on,
        medicated=lot.medicated,
        wall_thickness_mm=wanted.wall_mm,
        copies=copies,
        counts=wanted.counts,
    )


def lot_sheet_facts(
    records: Records, farm: Farm, signed: SignOff, options: Options, at: datetime, lessons: Lessons | None = None
) -> LotSheet:
    """The calibration record of one sign-off: the nouns as they stood then, the results drawn anew.

    For many sign-offs `lessons` are read once beforehand.
    """
    weigh_in = records.find(WeighIn, signed.weigh_in_id)
    taught = (lessons or Lessons(records, weigh_in.farm_id)).before(weigh_in)
    known = as_signed(records, read(records, weigh_in.id, taught), signed)
    found = work_out(known)
    return LotSheet(
        farm=farm,
        lot=known.lot,
        lot_now=records.find(Lot, signed.lot_id),
        scoop=records.revision(Scoop, signed.scoop_revision),
        scale=records.revision(Scale, signed.scale_revision),
        weigh_in=weigh_in,
        sign_off=signed,
        fills=known.fills,
        marks=tuple(records.marks(sign_off_id=signed.id)),
        spot_fills=tuple(s for s in records.spot_fills(signed.lot_id) if s.weigh_in_id == weigh_in.id),
        level=found.level,
        density_budget=found.density.budget if found.density else (),
        line_coverage=found.line_coverage or COVERAGE_FACTOR,
        printed_at=at,
        units=farm.units,
        paper=options.paper,
        languages=options.languages,
    )
