"""From what is kept of a weigh-in to what science makes of it, and back to a sign-off. No formula."""

from __future__ import annotations

from collections.abc import Collection, Iterable, Iterator
from dataclasses import replace
from datetime import datetime
from math import isclose
from statistics import median

from calibrator import units
from calibrator.desk.lessons import Experience
from calibrator.desk.refusals import in_words
from calibrator.model import Farm, Fill, FillWay, Lot, Mark, Scale, Scoop, SignOff, WeighIn, new_id
from calibrator.records import Records
from calibrator.science.errors import CannotCompute
from calibrator.science.mark import (
    FOR_OLD_LINE,
    Line,
    LineCheck,
    OldLine,
    OldLineVerdict,
    check_line,
    feeding_to_line,
    fraction_at,
    level_instead,
    manner_before,
    old_line,
    on_ruler,
    proposed_line,
    reach_untried_95,
    tolerance_band,
    weighed_to_line,
)
from calibrator.science.plausible import (
    Doubt,
    digits_swapped,
    likeliest,
    over_level,
    scoopfuls_meant,
    usual_g,
    weight_doubt,
    whole_feeding,
)
from calibrator.science.scale import ScaleCheck, ScaleFacts, check_scale, scale_facts, smallest_net_weight_g
from calibrator.science.scale import scoopfuls_together as together
from calibrator.science.scoop import height_from_down_wall_mm, same_line
from calibrator.science.settling import STRUCK, Settling
from calibrator.science.weighing import (
    DensityResult,
    LevelResult,
    bulk_density,
    level_result,
    tolerance_of_fills_g,
    weighed,
)
from calibrator.values import dataclass


@dataclass(frozen=True)
class Known:
    """The facts of a weigh-in, read at one moment. `scale_trusted`: it was signed when no doubt was counted for a scale
    that nobody checked, and says what it said then."""

    weigh_in: WeighIn
    farm: Farm
    lot: Lot
    scoop: Scoop | None
    scale: Scale | None
    fills: tuple[Fill, ...]
    experience: Experience
    scale_trusted: bool = False


@dataclass(frozen=True)
class Findings:
    """What science makes of the facts so far; None where they do not reach that far, `trouble` says why."""

    level: LevelResult | None = None
    density: DensityResult | None = None
    settling: Settling | None = None
    line: Line | None = None
    line_reach: tuple[float, float] = (0.0, 0.0)  # half-widths at 95 %, g and mm
    to_ruled: tuple[float, float] = (0.0, 0.0)  # a feeding to the line as the ruler has it, g, and its half-width
    line_weighed: bool = False  # whether the line rests on fills to one
    old: OldLine | None = None
    check: LineCheck | None = None
    scale: ScaleCheck | None = None
    scoopfuls_together: int = 1
    trouble: str = ""

    def result_of(self, way: FillWay) -> LevelResult | None:
        """What the fills of one way come to; those to any line of this lot together. None before there are any."""
        if way is FillWay.LEVEL:
            return self.level
        return self.check.result if self.check else None

    @property
    def line_coverage(self) -> float:
        """Half-width of the 95 % interval of a scoopful to the line ÷ its standard uncertainty; 0 where not known."""
        if self.check is not None:
            return self.check.result.half_width_g / self.check.result.u_g
        return self.line_reach[0] / self.line.mass_u_g if self.line and self.line.mass_u_g else 0.0


def read(records: Records, weigh_in_id: str, taught: Experience) -> Known:
    """Read what is known of a weigh-in."""
    weigh_in = records.find(WeighIn, weigh_in_id)
    return Known(
        weigh_in=weigh_in,
        farm=records.find(Farm, weigh_in.farm_id),
        lot=records.find(Lot, weigh_in.lot_id),
        scoop=records.find(Scoop, weigh_in.scoop_id) if weigh_in.scoop_id else None,
        scale=records.find(Scale, weigh_in.scale_id) if weigh_in.scale_id else None,
        fills=tuple(records.fills(weigh_in_id)),
        experience=taught,
    )


def as_signed(records: Records, known: Known, signed: SignOff) -> Known:
    """The facts of a signed weigh-in as they were signed: scoop, scale and lot may have been told anew since, and the
    number of bags alone makes an interval narrower."""
    then = replace(
        known,
        scoop=records.revision(Scoop, signed.scoop_revision),
        scale=records.revision(Scale, signed.scale_revision),
        lot=records.revision(Lot, signed.lot_revision),
    )
    trusting = replace(then, scale_trusted=_scale_check(then) is None)
    return trusting if _says(trusting, signed) else then


def _says(known: Known, signed: SignOff) -> bool:
    """Whether the facts come to the doubt that was signed, so reckoned."""
    try:
        level = _level(known)
    except CannotCompute:
        return False
    return level is not None and isclose(level.u_g, signed.level_u_g, rel_tol=1e-6)


def fills_of(known: Known, way: FillWay, line_mm: float | None = None) -> list[Fill]:
    """The fills of one way, struck ones included; to the line only those to a line, by default that drawn."""
    line = known.weigh_in.drawn_line_mm if line_mm is None else line_mm
    return [
        fill for fill in known.fills if fill.way == way and (way != FillWay.TO_MARK or same_line(fill.line_mm, line))
    ]


def with_a_first_fill(known: Known, findings: Findings, way: FillWay) -> Known:
    """The facts as they would be with a first fill of a usual weight: what is said of one takes so much room."""
    scoop, line = known.scoop, findings.line
    level = way is FillWay.LEVEL
    if scoop is None or (line is None and not level):
        return known
    mass_g = line.mass_g if line is not None and not level else usual_g(scoop.volume_ml)
    w = known.weigh_in
    drawn_mm = None if level else w.drawn_line_mm
    fill = Fill(
        id="", weigh_in_id=w.id, way=way, bag=1, mass_g=mass_g, typed="", by="", at=w.started_at, line_mm=drawn_mm
    )
    return replace(known, fills=(*known.fills, fill))


def awaited_g(known: Known, findings: Findings, way: FillWay) -> float | None:
    """What one more scoopful will show on the display, about: the middle one of those weighed, which a slip among them
    does not move; before them what the line was drawn for. None before anything is known."""
    weighed = [fill.mass_g / fill.scoopfuls for fill in fills_of(known, way) if fill.counts]
    if weighed:
        return median(weighed)
    if (result := findings.result_of(way)) is not None:
        return result.mean_g  # by what was filled to an earlier line
    return findings.line.mass_g if way is FillWay.TO_MARK and findings.line else None


def odd_fills(known: Known, findings: Findings, way: FillWay) -> frozenset[str]:
    """The fills that the result of their way flags as odd."""
    result = findings.result_of(way)
    # Those to the line are judged together, whichever line they were filled to.
    counted = [fill for fill in known.fills if fill.way == way and fill.counts]
    return frozenset(counted[place].id for place in result.odd) if result else frozenset()


def swapped(known: Known, way: FillWay, sent: Collection[str]) -> tuple[Fill, Fill] | None:
    """The newest fill that was likely typed with two digits the other way round, and as it was meant. Those `sent` by
    the scale itself, by their ids, nobody typed."""
    for fill, others_g in _beside_others(known, way):
        meant = None if fill.id in sent else digits_swapped(fill.typed, fill.mass_g, others_g * fill.scoopfuls)
        if meant:
            return fill, replace(fill, typed=meant[0], mass_g=meant[1])
    return None


def miscounted(known: Known, way: FillWay) -> tuple[Fill, int] | None:
    """The newest fill that is likely of another number of scoopfuls than told, and of how many."""
    for fill, others_g in _beside_others(known, way):
        if meant := scoopfuls_meant(fill.mass_g, fill.scoopfuls, others_g):
            return fill, meant
    return None


def _beside_others(known: Known, way: FillWay) -> Iterator[tuple[Fill, float]]:
    """The fills that count, the newest first, each with what the middle one of the others weighs a scoopful, g; none
    where there is one alone."""
    counted = [fill for fill in fills_of(known, way) if fill.counts]
    for fill in reversed(counted if len(counted) > 1 else []):
        yield fill, median(each.mass_g / each.scoopfuls for each in counted if each is not fill)


def doubt(known: Known, way: FillWay, mass_g: float, scoopfuls: int, found: Findings | None = None) -> Doubt | None:
    """Why a typed weight is hardly meant, for this scoop, scale and lot; None where it can be."""
    if known.scoop is None or known.scale is None:
        return None
    if way == FillWay.TO_MARK and scoopfuls == 1 and found is not None and _weighs_all(found, mass_g):
        return Doubt.WHOLE_FEEDING
    filled_ml = known.scoop.volume_ml
    if way == FillWay.TO_MARK and known.weigh_in.drawn_line_mm is not None:
        filled_ml *= fraction_at(known.scoop.shape, known.weigh_in.drawn_line_mm)
    plain = weight_doubt(mass_g, scoopfuls, filled_ml, known.scale.capacity_g)
    if plain is None and way == FillWay.TO_MARK and found is not None and found.level is not None:
        return Doubt.OVER_LEVEL if over_level(mass_g, scoopfuls, found.level.next_high_g) else None
    return plain


def likelier(
    known: Known, way: FillWay, masses_g: Iterable[float], scoopfuls: int, found: Findings | None = None
) -> float | None:
    """Which of these weights was meant instead of a doubted one, g; None where none of them can be."""
    can_be = [mass_g for mass_g in masses_g if doubt(known, way, mass_g, scoopfuls, found) is None]
    return likeliest(can_be, scoopfuls, known.scoop.volume_ml) if known.scoop else None


def _weighs_all(found: Findings, mass_g: float) -> bool:
    """Whether the level scoopfuls before the one to the line are in a weight too: more than a scoop holds."""
    line, level = found.line, found.level
    if line is None or level is None or not line.several:
        return False
    return over_level(mass_g, 1, level.next_high_g) and whole_feeding(mass_g, line.target_g)


def wanted(known: Known, mass_g: float) -> tuple[float, float]:
    """The farm's tolerance about a weight."""
    return tolerance_band(mass_g, known.farm.tolerance_share)


def work_out(known: Known) -> Findings:
    """All results that the facts reach to."""
    scale = _scale_check(known)
    try:
        return _work_out(known, scale)
    except CannotCompute as error:
        return Findings(scale=scale, trouble=in_words(error))


def _work_out(known: Known, scale: ScaleCheck | None) -> Findings:
    level = _level(known)
    if level is None or known.scoop is None:
        return Findings(scale=scale, scoopfuls_together=_together(known, None))
    density = bulk_density(level, known.scoop.volume_ml, known.scoop.volume_u_ml)
    settling = known.experience.settling.next()
    line = _line(known, known.scoop, level, settling)
    manner = (line.full_scoops, line.to_line) if line else (0, 1)
    check = _line_check(known, level, known.weigh_in.drawn_line_mm, manner)
    packs = STRUCK if line and line.struck_level else settling
    reach = reach_untried_95(line, level.mean_g, level.parts, packs) if line else (0.0, 0.0)
    tried_mm = known.weigh_in.drawn_line_mm if check else _last_line(known)
    learned = check or _line_check(known, level, tried_mm, manner)
    if learned is not None:
        settling = Settling(learned.settling_factor, learned.settling_u)
        line = _or_level(known, learned.next_line, known.scoop, level)
        as_level = line.struck_level  # then it rests on the level fills, as one to which nothing was filled
        reach = reach_untried_95(line, level.mean_g, level.parts, STRUCK) if as_level else learned.next_reach
    old = _old(known, level, settling, line)
    to_old = _line_check(known, level, known.weigh_in.old_line_mm, manner)
    if old is not None and to_old is not None:
        old = replace(old, verdict=FOR_OLD_LINE[to_old.verdict])  # fills to it say more than level ones
    return Findings(
        level=level,
        density=density,
        settling=settling,
        line=line,
        line_reach=reach,
        to_ruled=_to_ruled(known, level, settling, line, reach[0], learned),
        line_weighed=learned is not None and line is not None and not line.struck_level,
        old=old,
        check=check,
        scale=scale,
        scoopfuls_together=_together(known, level),
    )


def sign_off(known: Known, findings: Findings, by: str, at: datetime, version: str) -> tuple[SignOff, Mark]:
    """The frozen outcome and the line as drawn. Raises CannotCompute where the facts do not reach that far."""
    level, density, settling, line = findings.level, findings.density, findings.settling, findings.line
    w, scoop, scale = known.weigh_in, known.scoop, known.scale
    if level is None or density is None or settling is None or line is None or scoop is None or scale is None:
        raise CannotCompute(findings.trouble or "Weigh level fills and set a target weight before signing off.")
    if w.drawn_line_mm is None or w.target_mass_g is None:
        raise CannotCompute("Draw the line on the scoop and enter where it is before signing off.")
    check, level_alone = findings.check, w.drawn_line_mm == 0
    old = findings.old.verdict if findings.old else None
    if old and level_alone:
        old = OldLineVerdict.MOVE  # whatever it would have done: it is wiped out
    made = SignOff(
        id=new_id(),
        farm_id=known.farm.id,
        weigh_in_id=w.id,
        lot_id=known.lot.id,
        scoop_id=scoop.id,
        scale_id=scale.id,
        by=by,
        at=at,
        bags=level.bags,
        fills=level.fills,
        level_mean_g=level.mean_g,
        level_u_g=level.u_g,
        level_low_g=level.low_g,
        level_high_g=level.high_g,
        degrees_of_freedom=level.degrees_of_freedom,
        density_g_per_ml=density.density_g_per_ml,
        density_u_g_per_ml=density.u_g_per_ml,
        density_low_g_per_ml=density.low_g_per_ml,
        density_high_g_per_ml=density.high_g_per_ml,
        bag_sd_share=level.bag_sd_g / level.mean_g,
        fill_sd_share=level.fill_sd_g / level.mean_g,
        settling_factor=1.0 if level_alone else settling.factor,
        settling_u=settling.u if check else 0.0,
        verdict=check.verdict.value if check else "",
        old_line_verdict=old.value if old else "",
        scoop_revision=scoop.revision,
        scale_revision=scale.revision,
        lot_revision=known.lot.revision,
        program_version=version,
    )
    return made, _mark(made, w.drawn_line_mm, scoop, line, check)


def _mark(made: SignOff, drawn_mm: float, scoop: Scoop, line: Line, check: LineCheck | None) -> Mark:
    """The mark tells the line as drawn, which may differ a little from the one computed. Of equal scoopfuls to one line
    it is for one of them: labels and charts count them then."""
    return Mark(
        id=new_id(),
        farm_id=made.farm_id,
        sign_off_id=made.id,
        lot_id=made.lot_id,
        scoop_id=made.scoop_id,
        target_mass_g=line.each_g,
        full_scoops=line.full_scoops,
        height_mm=height_from_down_wall_mm(scoop.shape, drawn_mm),
        down_wall_mm=drawn_mm,
        mass_g=check.result.mean_g if check else line.mass_g,
        mass_u_g=check.result.u_g if check else line.mass_u_g / line.to_line,
    )


def _scale_check(known: Known) -> ScaleCheck | None:
    return check_of(known.weigh_in, known.scale) if known.scale is not None else None


def check_of(weigh_in: WeighIn, scale: Scale) -> ScaleCheck | None:
    """What the check weight of a weigh-in said of its scale; None where there was none."""
    if weigh_in.check_nominal_g is None or weigh_in.check_reading_g is None:
        return None
    return check_scale(weigh_in.check_nominal_g, weigh_in.check_reading_g, scale.resolution_g)


def corrected_g(known: Known, mass_g: float) -> float:
    """A weight on the scale of the weigh-in, g, less what its check weight showed it to read too much."""
    return mass_g if known.scale is None else _scale_facts(known, known.scale).corrected_g(mass_g)


def _scale_facts(known: Known, scale: Scale) -> ScaleFacts:
    if known.scale_trusted:
        return ScaleFacts(scale.resolution_g)
    return scale_facts(scale.resolution_g, check_of(known.weigh_in, scale))


def _level(known: Known) -> LevelResult | None:
    fills = weighed(fills_of(known, FillWay.LEVEL), FillWay.LEVEL)
    if not fills or known.scale is None:
        return None
    facts = _scale_facts(known, known.scale)
    tolerance = tolerance_of_fills_g(fills, known.farm.tolerance_share)
    return level_result(
        fills, facts, history=known.experience.history, tolerance_g=tolerance, bags_there=known.lot.package_count
    )


def _line(known: Known, scoop: Scoop, level: LevelResult, settling: Settling) -> Line | None:
    target = known.weigh_in.target_mass_g
    if target is None:
        return None
    tolerance = known.farm.tolerance_share
    return proposed_line(scoop.shape, level.mean_g, level.u_g, target, tolerance, settling.factor, settling.u)


def _to_ruled(
    known: Known, level: LevelResult, settling: Settling, line: Line | None, reach_g: float, learned: LineCheck | None
) -> tuple[float, float]:
    """What a feeding to the proposed line weighs where the ruler has it, g, with half its 95 % interval."""
    if line is None or known.scoop is None:
        return 0.0, 0.0
    if line.struck_level:
        return line.feeding_g, reach_g
    if learned is not None:
        return learned.moved_g, learned.moved_half_g
    shape = known.scoop.shape
    there_mm = on_ruler(shape, line.down_wall_mm, units.line_step_mm(known.farm.units))
    manner = {"full_scoops": line.full_scoops, "to_line": line.to_line}
    fed = feeding_to_line(shape, level.mean_g, level.parts, settling, there_mm, **manner)
    return fed.mean_g, fed.half_width_g(0.95)


def _or_level(known: Known, line: Line, scoop: Scoop, level: LevelResult) -> Line:
    return level_instead(scoop.shape, line, level.mean_g, level.u_g, known.farm.tolerance_share)


def _line_check(known: Known, level: LevelResult, line_mm: float | None, manner: tuple[int, int]) -> LineCheck | None:
    w, scoop, scale = known.weigh_in, known.scoop, known.scale
    if line_mm is None or w.target_mass_g is None or scoop is None or scale is None:
        return None
    if not weighed(fills_of(known, FillWay.TO_MARK, line_mm), FillWay.TO_MARK):
        return None  # a line is judged only once it has a fill of its own
    fills = weighed_to_line(known.fills, scoop.shape, line_mm)
    return check_line(
        scoop.shape,
        level,
        fills,
        line_mm,
        w.target_mass_g,
        known.farm.tolerance_share,
        _scale_facts(known, scale),
        known.experience.history,
        manner[0],
        to_line=manner[1],
        bags_there=known.lot.package_count,
        ruler_step_mm=units.line_step_mm(known.farm.units),
    )


def _last_line(known: Known) -> float | None:
    """The line of the newest counted fill to a mark, which may have been moved since."""
    lines = [fill.line_mm for fill in known.fills if fill.way == FillWay.TO_MARK and fill.counts]
    return lines[-1] if lines else None


def fills_to(known: Known, line_mm: float, target_g: float, full_scoops: int) -> LineCheck | None:
    """What the fills say of a line and target, whatever was drawn since; None where none was filled to that line.

    Raises CannotCompute as `check_line` does.
    """
    aimed = replace(known, weigh_in=replace(known.weigh_in, target_mass_g=target_g))
    level = _level(aimed)
    return None if level is None else _line_check(aimed, level, line_mm, (full_scoops, 1))


def line_to_wipe(known: Known) -> float | None:
    """The line last filled to where that is no longer the one drawn, else the old line, mm down the wall."""
    last, drawn = _last_line(known), known.weigh_in.drawn_line_mm
    return known.weigh_in.old_line_mm if last is None or same_line(last, drawn) else last


def line_delivers(known: Known, findings: Findings, line_mm: float) -> OldLine | None:
    """What a feeding to a line would weigh, going by the level fills; None before there are any.

    Raises CannotCompute for a line that the scoop does not have.
    """
    if findings.level is None or findings.settling is None:
        return None
    return _delivers(known, findings.level, findings.settling, findings.line, line_mm)


def _old(known: Known, level: LevelResult, settling: Settling, line: Line | None) -> OldLine | None:
    """What the line found on the scoop delivers, as it was filled then.

    Where this lot calls for other scoopfuls the line cannot stay: all would be filled another way.
    """
    found_mm, scoop = known.weigh_in.old_line_mm, known.scoop
    if line is None or found_mm is None or scoop is None:
        return None
    now = line.full_scoops, line.to_line
    before = manner_before(scoop.shape, level.mean_g, settling.factor, found_mm, line.target_g, now)
    old = _delivers(known, level, settling, replace(line, full_scoops=before[0], to_line=before[1]), found_mm)
    return old if old is None or before == now else replace(old, verdict=OldLineVerdict.MOVE)


def _delivers(
    known: Known, level: LevelResult, settling: Settling, line: Line | None, line_mm: float | None
) -> OldLine | None:
    w, scoop = known.weigh_in, known.scoop
    if line_mm is None or w.target_mass_g is None or scoop is None or line is None:
        return None
    return old_line(
        scoop.shape,
        level,
        settling,
        line_mm,
        w.target_mass_g,
        known.farm.tolerance_share,
        full_scoops=line.full_scoops,
        to_line=line.to_line,
    )


def _together(known: Known, level: LevelResult | None) -> int:
    """How many scoopfuls to weigh together on a scale as coarse as this one."""
    if known.scale is None or known.scoop is None:
        return 1
    scoopful = level.mean_g if level else known.weigh_in.target_mass_g
    if scoopful is None:
        return 1
    return together(scoopful, smallest_net_weight_g(known.scale.resolution_g, 0.0, known.farm.tolerance_share))
