"""What spot fills say: whether the mark still holds, and the lot's density as it is known now. No window."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import replace
from enum import StrEnum

from calibrator.desk import findings
from calibrator.desk.findings import Findings, Known
from calibrator.desk.lessons import Experience, experience
from calibrator.model import Fill, FillWay, Mark, Shape, SignOff, SpotFill, WeighIn
from calibrator.records import Records
from calibrator.science.errors import CannotCompute
from calibrator.science.mark import (
    FOR_OLD_LINE,
    LineCheck,
    OldLine,
    OldLineVerdict,
    OneBag,
    feeding_of_fill_g,
    fits_line,
    off_in_row,
    old_line,
    one_bag,
)
from calibrator.science.plausible import Doubt
from calibrator.science.settling import STRUCK, signed_off
from calibrator.science.weighing import DensityResult, LevelResult
from calibrator.values import dataclass


class SpotNeed(StrEnum):
    """What spot fills ask for."""

    ANEW = "anew"  # the lot is no longer what it was at its weigh-in
    OFF_AGAIN = "off_again"  # the last two were off to one side: of one bag, or of the lot
    OFF = "off"  # the last one was off: the fill, or its bag
    MORE = "more"  # one was off, and those since do not tell yet that the mark holds


TWICE = 2  # off to one side: then it is not that one fill


@dataclass(frozen=True)
class SpotFindings:
    """A mark after the spot fills. Masses are of a whole feeding, g; `odd` flags the newest spot fill.

    `judged` is what the verdict rests on: fills to the line, or the line by the level fills; `volume_ml` is that of
    the scoop. `bags` is what each spot fill says of its own bag, the newest last; `taken_off_g` is what the newest was
    lessened by for the scale's error.
    """

    verdict: OldLineVerdict
    delivers_g: float
    low_g: float
    high_g: float
    more_fills: int
    density: DensityResult
    level: LevelResult
    spots: int
    way: FillWay  # of the newest spot fill, which judged
    odd: bool
    judged: LineCheck | OldLine
    volume_ml: float
    bags: tuple[OneBag, ...]
    taken_off_g: float

    @property
    def bag(self) -> OneBag:
        """What the newest spot fill says of its bag."""
        return self.bags[-1]

    @property
    def off_again(self) -> bool:
        """Whether the newest spot fill is off to the same side as the one before it."""
        return off_in_row(self.bags) >= TWICE

    @property
    def left_open(self) -> bool:
        """Whether a spot fill was off and the mark does not yet hold for the whole lot."""
        return self.verdict is not OldLineVerdict.KEEP and not all(bag.within for bag in self.bags)

    @property
    def asks(self) -> SpotNeed | None:
        """What they ask for first; None where nothing is."""
        if self.verdict is OldLineVerdict.MOVE:
            return SpotNeed.ANEW
        if self.off_again:
            return SpotNeed.OFF_AGAIN
        if not self.bag.within:
            return SpotNeed.OFF
        return SpotNeed.MORE if self.left_open else None

    @property
    def to_weigh_anew(self) -> bool:
        """Whether the lot may have to be weighed in anew: the mark has to move, or two spot fills one after the other
        were off to one side, which one good fill does not outweigh."""
        twice = any(off_in_row(self.bags[:newest]) >= TWICE for newest in range(TWICE, len(self.bags) + 1))
        return self.verdict is OldLineVerdict.MOVE or self.off_again or (self.left_open and twice)

    @property
    def came_right(self) -> bool:
        """Whether the newest lies within the tolerance and the one before it did not."""
        return self.bag.within and len(self.bags) > 1 and not self.bags[-2].within


@dataclass(frozen=True)
class SpotFacts:
    """What a mark is judged by: its weigh-in with what earlier lots teach, and all spot fills of its lot."""

    known: Known
    spots: tuple[SpotFill, ...]


def read_spots(records: Records, signed: SignOff, taught: Experience | None = None) -> SpotFacts:
    """The facts of a sign-off. `taught` saves reading the farm's earlier lots again."""
    known = findings.read(records, signed.weigh_in_id, taught or experience_of(records, signed))
    return SpotFacts(known, tuple(records.spot_fills(signed.lot_id)))


def spot_findings(facts: SpotFacts, signed: SignOff, mark: Mark) -> SpotFindings | None:
    """Judge a mark by its weigh-in and the spot fills since; None without any. Raises CannotCompute.

    Each spot fill counts as one more bag, unless the lot is a single one. A newest fill to the line judges the
    line by what was weighed to it; a level one by the density, with the settling as it was signed off.
    """
    spots = [s for s in facts.spots if s.counts and s.weigh_in_id == signed.weigh_in_id]
    if not spots:
        return None
    known = facts.known
    aimed = replace(known.weigh_in, target_mass_g=mark.target_mass_g)  # of equal scoopfuls to the line it is one
    known = replace(
        known, weigh_in=aimed, fills=(*known.fills, *_as_fills(spots, known.fills, known.lot.package_count == 1))
    )
    found = findings.work_out(known)
    if found.level is None or found.density is None or known.scoop is None:
        raise CannotCompute(found.trouble or "The fills of this weigh-in do not reach to a result.")
    judged = _judged(known, found, known.scoop.shape, signed, mark, spots[-1].way)
    return SpotFindings(
        verdict=FOR_OLD_LINE[judged.verdict] if isinstance(judged, LineCheck) else judged.verdict,
        delivers_g=judged.mean_g if isinstance(judged, LineCheck) else judged.delivers_g,
        low_g=judged.low_g,
        high_g=judged.high_g,
        more_fills=judged.more_fills,
        density=found.density,
        level=found.level,
        spots=len(spots),
        way=spots[-1].way,
        odd=_newest_is_odd(known, found, spots[-1].way),
        judged=judged,
        volume_ml=known.scoop.volume_ml,
        bags=tuple(_of_its_bag(known, fill, found.level, signed, mark) for fill in known.fills[-len(spots) :]),
        taken_off_g=spots[-1].mass_g - findings.corrected_g(known, spots[-1].mass_g),
    )


def spot_doubt(facts: SpotFacts, way: FillWay, mass_g: float) -> Doubt | None:
    """Why a typed weight cannot be meant, for the scoop and scale of the weigh-in; None where it can."""
    return findings.doubt(facts.known, way, mass_g, 1)


def meant_g(facts: SpotFacts, way: FillWay, masses_g: Iterable[float]) -> float | None:
    """Which of these weights was likelier meant than a doubted one, g; None where none of them can be."""
    return findings.likelier(facts.known, way, masses_g, 1)


def to_line_g(signed: SignOff, mark: Mark) -> float:
    """What the one scoopful to the line is to weigh, g: the feeding less the level scoopfuls before it."""
    return mark.target_mass_g - mark.full_scoops * signed.level_mean_g


def experience_of(records: Records, signed: SignOff) -> Experience:
    """What the farm's lots before this one teach."""
    return experience(records, records.find(WeighIn, signed.weigh_in_id))


def filled_to_other(facts: SpotFacts, signed: SignOff, lines_mm: Iterable[float]) -> float | None:
    """Which of these other lines the newest spot fill weighs as if it were filled to, by the weigh-in's own fills, mm
    down the wall; None for a level fill and where none fits."""
    spots = [s for s in facts.spots if s.counts and s.weigh_in_id == signed.weigh_in_id]
    found, scoop = findings.work_out(facts.known), facts.known.scoop
    level = found.level
    if not spots or spots[-1].way is not FillWay.TO_MARK or level is None or scoop is None:
        return None
    fill_g = findings.corrected_g(facts.known, spots[-1].mass_g)
    settling = signed_off(signed.settling_factor, signed.settling_u)
    try:
        return next((mm for mm in lines_mm if fits_line(fill_g, scoop.shape, level, settling, mm)), None)
    except CannotCompute:
        return None


def _judged(
    known: Known, found: Findings, shape: Shape, signed: SignOff, mark: Mark, way: FillWay
) -> LineCheck | OldLine:
    check = found.check
    if way is FillWay.TO_MARK and check is not None:
        return check
    assert found.level is not None
    settling = signed_off(signed.settling_factor, signed.settling_u)
    if mark.struck_level:
        settling = STRUCK
    elif found.settling and check is None and not signed.settling_u:
        settling = found.settling  # what earlier lots teach
    return old_line(
        shape,
        found.level,
        settling,
        mark.down_wall_mm,
        mark.target_mass_g,
        known.farm.tolerance_share,
        full_scoops=mark.full_scoops,
    )


def _of_its_bag(known: Known, fill: Fill, level: LevelResult, signed: SignOff, mark: Mark) -> OneBag:
    """Of one fill, corrected for the scale as the fills of the weigh-in are."""
    assert known.scoop is not None
    shape, line = known.scoop.shape, (mark.down_wall_mm, mark.full_scoops)
    corrected_g, step_g = findings.corrected_g(known, fill.mass_g), known.scale.resolution_g if known.scale else 0.0
    feeding_g, a_step_more_g = (
        feeding_of_fill_g(replace(fill, mass_g=mass_g), shape, level.mean_g, signed.settling_factor, *line)
        for mass_g in (corrected_g, corrected_g + step_g)
    )
    return one_bag(feeding_g, mark.target_mass_g, known.farm.tolerance_share, a_step_more_g - feeding_g)


def _as_fills(spots: Sequence[SpotFill], fills: Sequence[Fill], one_bag: bool) -> list[Fill]:
    """Each from one more bag; all from the same where the lot is one."""
    last = max((fill.bag for fill in fills), default=0)
    return [
        Fill(
            id=spot.id,
            weigh_in_id=spot.weigh_in_id,
            way=spot.way,
            bag=last if one_bag else last + place,
            mass_g=spot.mass_g,
            typed=spot.typed,
            by=spot.by,
            at=spot.at,
            line_mm=spot.line_mm,
        )
        for place, spot in enumerate(spots, start=1)
    ]


def _newest_is_odd(known: Known, found: Findings, way: FillWay) -> bool:
    result = found.result_of(way)
    counted = [fill for fill in findings.fills_of(known, way) if fill.counts]
    return bool(result and len(counted) - 1 in result.odd)
