"""The weigh-in as a plain state: what is known, which step is open, what is missing. No window needed.

Every setter keeps a new telling of the weigh-in at once, and every fill is kept before the call returns, so
that closing or killing the program at any point loses nothing. Results come from `findings`.
"""

from __future__ import annotations

from collections.abc import Callable, Collection, Iterable, Sequence
from copy import copy
from dataclasses import replace
from datetime import datetime
from enum import StrEnum
from itertools import count
from typing import TYPE_CHECKING, Any, TypeVar

from calibrator import __version__
from calibrator.desk import findings as finding
from calibrator.desk.alone import keep_or_wait, tell_or_wait
from calibrator.desk.change_over import before_sign_off
from calibrator.desk.findings import Findings, Known
from calibrator.desk.label_lines import usual_weight
from calibrator.desk.lessons import experience
from calibrator.desk.scoop_lines import LineBeside, line_on, lines_beside
from calibrator.desk.standing import Standing, standing
from calibrator.model import Farm, Fill, FillWay, Lot, Plan, Scale, Scoop, SignOff, Step, WeighIn, new_id
from calibrator.records import Records, RecordsUnreachable
from calibrator.records.entries import Added, Entry, Struck
from calibrator.science.errors import CannotCompute
from calibrator.science.mark import LineVerdict, OldLine
from calibrator.science.mixing import powder_from
from calibrator.science.plausible import Doubt, usual_g
from calibrator.science.scoop import same_line
from calibrator.science.weighing import LevelResult

if TYPE_CHECKING:
    from calibrator.records.outbox import Outbox

T = TypeVar("T")

STEPS = tuple(Step)
BAGS_PROPOSED = 4
MOST_BAGS = 999
FILLS_PER_BAG = 2
FILLS_PLANNED = BAGS_PROPOSED * FILLS_PER_BAG
LEAST_LEVEL_FILLS = 2


class Missing(StrEnum):
    """What a step still lacks before the next can be opened."""

    INITIALS = "initials"
    SCOOP = "scoop"
    SCALE = "scale"
    TARGET = "target"
    ZERO = "zero"
    CHECK_WEIGHT = "check_weight"  # what was typed of it cannot be meant
    LEVEL_FILLS = "level_fills"
    LINE = "line"


class Guide:
    """One weigh-in under way, or a signed-off one looked at. What it tells is always of the facts as kept."""

    def __init__(
        self, records: Records, weigh_in: WeighIn, clock: Callable[[], datetime], outbox: Outbox | None = None
    ) -> None:
        self.records = records
        self.clock = clock
        self._outbox = outbox
        self._id = weigh_in.id
        self._looked_at: Step | None = None
        self._version = -1
        self._taught = experience(records, weigh_in)
        self._read_on: dict[str | None, tuple[float | None, str]] = {}  # the check weight, on scales chosen before
        self.known: Known
        self.findings: Findings
        self.signed_off: SignOff | None = None
        self._last_checked: dict[str, WeighIn | None] = {}  # before this one, by the id of its scale
        self.refresh()

    @property
    def weigh_in(self) -> WeighIn:
        return self.known.weigh_in

    @property
    def farm(self) -> Farm:
        return self.known.farm

    @property
    def lot(self) -> Lot:
        return self.known.lot

    @property
    def scoop(self) -> Scoop | None:
        return self.known.scoop

    @property
    def earlier_target_g(self) -> float | None:
        """What the line found on the scoop was drawn for, where that is another weight than now is wanted."""
        w, scoop = self.weigh_in, self.scoop
        own = self.signed_off.id if self.signed_off else ""
        marks = [mark for mark in self.records.marks(scoop_id=scoop.id) if mark.sign_off_id != own] if scoop else []
        if not marks or w.target_mass_g is None or not same_line(marks[-1].down_wall_mm, w.old_line_mm):
            return None
        low, high = self.wanted(w.target_mass_g)
        before_g, line = marks[-1].target_mass_g, self.findings.line
        times = {1, line.to_line} if line else {1}  # of equal scoopfuls to a line the mark tells one
        return None if any(low <= n * before_g <= high for n in times) else before_g

    @property
    def planned(self) -> tuple[float, str] | None:
        """What the plans give a calf of the largest group at one feeding, g, and whose that is; None without a plan."""
        plans = self.records.every(Plan, self.farm.id)
        in_use = [plan for plan in plans if plan.retired_on is None]
        try:
            return usual_weight(in_use, powder_from(self.lot.composition), self.clock().date())
        except CannotCompute:
            return None

    @property
    def level_about_g(self) -> float | None:
        """About what a level scoopful weighs: by the fills, else by the scoop's last lot, else of middling powder."""
        if (weighed_g := self.level_weighed_g) is not None:
            return weighed_g
        return usual_g(self.scoop.volume_ml) if self.scoop is not None else None

    @property
    def level_weighed_g(self) -> float | None:
        """What a level scoopful weighs by the fills, else by the scoop's last lot; None where none was weighed."""
        if self.findings.level is not None:
            return self.findings.level.mean_g
        scoop = self.scoop
        earlier = [one for one in self.records.sign_offs(self.farm.id) if scoop and one.scoop_id == scoop.id]
        return earlier[-1].level_mean_g if earlier else None

    @property
    def scale(self) -> Scale | None:
        return self.known.scale

    @property
    def step(self) -> Step:
        """The step in view; of a signed-off weigh-in any can be looked at."""
        return self._looked_at or (Step.SIGN_OFF if self.signed_off else self.weigh_in.step)

    def refresh(self) -> None:
        """Read the facts anew if anybody has kept something since."""
        version = self.records.version()
        if version != self._version:
            self._version = version
            self.known = finding.read(self.records, self._id, self._taught)
            self.signed_off = signed = self._sign_off()
            known = finding.as_signed(self.records, self.known, signed) if signed else self.known
            self.findings = finding.work_out(known)

    @property
    def scale_was_off(self) -> WeighIn | None:
        """The newest weigh-in before this one that had a check weight on the same scale, where it showed that off."""
        scale = self.scale
        if scale is None:
            return None
        if scale.id not in self._last_checked:  # it was asked for at each refresh, among all that were ever weighed
            self._last_checked[scale.id] = self.records.last_checked(scale.id, self.weigh_in.started_at)
        newest = self._last_checked[scale.id]
        check = finding.check_of(newest, scale) if newest else None
        return newest if check and check.taken_off else None

    def set(self, **known: Any) -> None:
        """Keep something newly known about the weigh-in; nothing is written where nothing changed."""
        before = self.weigh_in
        changed = self._on_its_scale(before, self._aimed(before, replace(before, **known)))
        if changed != before:
            tell_or_wait(self.records, self._outbox, changed, self.clock())
            self.refresh()

    def _on_its_scale(self, before: WeighIn, changed: WeighIn) -> WeighIn:
        """What one scale showed says nothing of another: that has to be zeroed and to weigh the check weight itself.
        Chosen again it has its reading back, for the check weight still named."""
        if before.scale_id in (None, changed.scale_id) or changed.check_reading_g != before.check_reading_g:
            return changed
        self._read_on[before.scale_id] = before.check_reading_g, before.check_reading_typed
        read_g, typed = self._read_on.get(changed.scale_id, (None, ""))
        return replace(changed, scale_zeroed=False, check_reading_g=read_g, check_reading_typed=typed)

    def _aimed(self, before: WeighIn, changed: WeighIn) -> WeighIn:
        """A line drawn for a weight is none for another: where the target leaves its tolerance, it is to be drawn anew.

        What was filled to it goes on teaching how the powder settles. A target only emptied stays, with its line, until
        another is told: what the line was drawn for would be lost.
        """
        old_g, new_g = before.target_mass_g, changed.target_mass_g
        if old_g is None or not same_line(before.drawn_line_mm, changed.drawn_line_mm):
            return changed
        if new_g is None and changed.drawn_line_mm is not None:
            return replace(changed, target_mass_g=old_g, target_typed=before.target_typed)
        low, high = self.wanted(old_g)
        if new_g is not None and low <= new_g <= high:
            return changed
        return replace(changed, drawn_line_mm=None, drawn_line_typed="")

    def fills_of(self, way: FillWay) -> list[Fill]:
        """The fills of one way, struck ones included; to the line only those to the line now drawn."""
        return finding.fills_of(self.known, way)

    def with_a_first_fill(self, way: FillWay) -> Guide:
        """The weigh-in as it would look with a first fill; nothing is kept of it."""
        seen = copy(self)
        seen.known = finding.with_a_first_fill(self.known, self.findings, way)
        seen.findings = finding.work_out(seen.known)
        return seen

    def add_fill(self, way: FillWay, bag: int, mass_g: float, typed: str, scoopfuls: int = 1) -> Fill:
        """Keep one weighing; it is on the disk when this returns."""
        fill = Fill(
            id=new_id(),
            weigh_in_id=self.weigh_in.id,
            way=way,
            bag=bag,
            mass_g=mass_g,
            typed=typed,
            by=self.weigh_in.by,
            at=self.clock(),
            scoopfuls=scoopfuls,
            line_mm=self.weigh_in.drawn_line_mm if way == FillWay.TO_MARK else None,
        )
        kept = self._keep(lambda: self.records.add_fill(fill), Added(fill.at, fill), fill)
        self.refresh()
        return kept

    def strike(self, fill_id: str, reason: str) -> Fill:
        """Take a fill out of the count; it stays visible with its reason."""
        return self._strike(fill_id, reason, lambda: self.records.strike(fill_id, reason, self.weigh_in.by))

    def restore(self, fill_id: str) -> Fill:
        """Count a struck-out fill again."""
        return self._strike(fill_id, None, lambda: self.records.restore(fill_id, self.weigh_in.by))

    def _strike(self, fill_id: str, reason: str | None, strike: Callable[[], Fill]) -> Fill:
        entry = Struck(self.clock(), self.weigh_in.by, fill_id, reason)
        fill = next(fill for fill in self.known.fills if fill.id == fill_id)
        struck = self._keep(strike, entry, replace(fill, struck_reason=reason))
        self.refresh()
        return struck

    def _keep(self, keep: Callable[[], T], entry: Entry, instead: T) -> T:
        return keep_or_wait(self._outbox, keep, entry, instead)

    def next_bag(self, way: FillWay) -> int:
        """The bag for the next fill: two from each in turn; then a further one each time where that helps, and the
        last one again where the plan is done and nothing more is wanted."""
        counted = [fill.bag for fill in self.fills_of(way) if fill.counts]
        if not counted:
            return 1
        beyond_plan = counted[-1] > self.bags_at_hand and self._other_bags_help(way)
        if counted.count(counted[-1]) % FILLS_PER_BAG and not beyond_plan:
            return counted[-1]
        undipped = next(bag for bag in count(1) if bag not in counted)
        if undipped <= self.bags_at_hand:
            return undipped
        if not self._more_wanted(way):
            return counted[-1]
        if self._other_bags_help(way) and undipped <= self._bags_there:
            return undipped
        return min(set(counted), key=counted.count)

    def _other_bags_help(self, way: FillWay) -> bool:
        if way is FillWay.TO_MARK and self.findings.check is not None:
            return self.findings.check.from_other_bags
        result = self.findings.result_of(way)
        return result is not None and result.advice.from_other_bags

    def _more_wanted(self, way: FillWay) -> bool:
        check, level = self.findings.check, self.findings.level
        if way == FillWay.TO_MARK:
            return check is None or check.verdict == LineVerdict.WEIGH_MORE or self.plan_is_open(check.result)
        return level is None or not level.advice.enough or self.plan_is_open(level)

    @property
    def _bags_there(self) -> int:
        return self.lot.package_count or MOST_BAGS

    @property
    def bags_at_hand(self) -> int:
        """How many bags the plan goes round: four, or as many as the lot has."""
        return min(BAGS_PROPOSED, self.lot.package_count or BAGS_PROPOSED)

    def awaited_g(self, way: FillWay) -> float | None:
        """What one more scoopful will weigh about; None before anything is known."""
        return finding.awaited_g(self.known, self.findings, way)

    def odd_fills(self, way: FillWay) -> frozenset[str]:
        """The fills that lie oddly far from the others."""
        return finding.odd_fills(self.known, self.findings, way)

    def swapped(self, way: FillWay, sent: Collection[str] = ()) -> tuple[Fill, Fill] | None:
        """A fill that was likely typed with two digits the other way round, and as it was meant; none of those that
        were `sent` by the scale itself, by their ids."""
        return finding.swapped(self.known, way, sent)

    def miscounted(self, way: FillWay) -> tuple[Fill, int] | None:
        """A fill that is likely of another number of scoopfuls than told, and of how many."""
        return finding.miscounted(self.known, way)

    def missing(self, step: Step) -> tuple[Missing, ...]:
        """What a step still lacks before the one after it can be opened."""
        w = self.weigh_in
        wanted = {
            Step.LOT: ((Missing.INITIALS, not w.by),),
            Step.SCOOP_AND_SCALE: (
                (Missing.SCOOP, self.scoop is None),
                (Missing.SCALE, self.scale is None),
                (Missing.TARGET, w.target_mass_g is None),
                (Missing.ZERO, not w.scale_zeroed),
                (Missing.CHECK_WEIGHT, self._check_hardly_meant()),
            ),
            Step.LEVEL_FILLS: ((Missing.LEVEL_FILLS, self._level_count() < LEAST_LEVEL_FILLS),),
            Step.MARK: ((Missing.LINE, w.drawn_line_mm is None),),
        }
        return tuple(what for what, lacks in wanted.get(step, ()) if lacks)

    def _check_hardly_meant(self) -> bool:
        """All weights would be corrected by it; what is signed stays as it is signed."""
        check = self.findings.scale
        return check is not None and check.hardly_meant and self.signed_off is None

    def missing_before(self, step: Step) -> tuple[Missing, ...]:
        """What keeps a step from being opened: what the first incomplete step before it lacks."""
        return next((lacks for s in STEPS[: STEPS.index(step)] if (lacks := self.missing(s))), ())

    def reachable(self) -> frozenset[Step]:
        """The steps that can be opened: each before which nothing is missing."""
        return frozenset(step for step in STEPS if not self.missing_before(step))

    def go(self, step: Step) -> bool:
        """Open a step if the ones before it are complete."""
        if step not in self.reachable():
            return False
        self.set(step=step)
        return True

    def doubt(self, way: FillWay, mass_g: float, scoopfuls: int) -> Doubt | None:
        """Why a typed weight is hardly meant; None where it can be."""
        return finding.doubt(self.known, way, mass_g, scoopfuls, self.findings)

    def likelier(self, way: FillWay, masses_g: Iterable[float], scoopfuls: int) -> float | None:
        """Which of these weights was meant instead of a doubted one, g; None where none of them can be."""
        return finding.likelier(self.known, way, masses_g, scoopfuls, self.findings)

    def wanted(self, mass_g: float) -> tuple[float, float]:
        """The farm's tolerance about a weight."""
        return finding.wanted(self.known, mass_g)

    def delivers(self, line_mm: float) -> OldLine | None:
        """What a feeding to a line would weigh, going by the level fills; None before there are any.

        Raises CannotCompute for a line that the scoop does not have.
        """
        return finding.line_delivers(self.known, self.findings, line_mm)

    @property
    def bags_opened(self) -> int:
        """How many bags were dipped, whichever way the fills were filled."""
        return len({fill.bag for fill in self.known.fills if fill.counts})

    def still_planned(self, result: LevelResult | None) -> tuple[int, int]:
        """Fills and bags that the plan has beyond those weighed: two fills from each of four bags, and as many in all
        from fewer."""
        bags = max(0, self.bags_at_hand - (result.bags if result else 0))
        return max(FILLS_PLANNED - (result.fills if result else 0), FILLS_PER_BAG * bags, 0), bags

    def plan_is_open(self, result: LevelResult) -> bool:
        """Whether fewer fills or bags were weighed than the plan has."""
        return any(self.still_planned(result))

    @property
    def on_target(self) -> bool:
        """Whether the fills to the line have shown the line to be right."""
        check = self.findings.check
        return check is not None and check.verdict == LineVerdict.ON_TARGET

    @property
    def to_earlier_line(self) -> int:
        """How many fills to a line drawn before count in the verdict too, brought to the one drawn now."""
        check = self.findings.check
        own = sum(fill.counts for fill in self.fills_of(FillWay.TO_MARK))
        return check.result.fills - own if check is not None else 0

    @property
    def earlier_line_is_own(self) -> bool:
        """Whether the fills to a line drawn before were all to one of this lot's own, and not to the lot before's."""
        old_mm = self.weigh_in.old_line_mm
        to_line = (fill for fill in self.known.fills if fill.counts and fill.way == FillWay.TO_MARK)
        return not any(same_line(fill.line_mm, old_mm) for fill in to_line)

    @property
    def line_to_wipe_mm(self) -> float | None:
        """The line on the scoop that a new one replaces: that of the fills before it was moved, else the old one."""
        return finding.line_to_wipe(self.known)

    @property
    def first_try(self) -> bool:
        """Whether the line to wipe is this lot's own, filled to and found off, and not that of the lot before."""
        wiped_mm = self.line_to_wipe_mm
        return wiped_mm is not None and not same_line(wiped_mm, self.weigh_in.old_line_mm)

    @property
    def further_old(self) -> tuple[LineBeside, ...]:
        """The lines for other feedings that the scoop bears beside its old one, by the label of that, and that are not
        this lot's."""
        now, scoop = self.standing, self.scoop
        line = line_on(now, scoop.id) if scoop else None
        signed = self.signed_off
        if line is None or (signed and line.sign_off_id == signed.id):
            return ()
        own = [mark for mark in now.marks if signed and mark.sign_off_id == signed.id]
        stay_mm = [beside.down_wall_mm for mark in own for beside in lines_beside(now, mark)]
        there = lines_beside(now, line)
        return tuple(one for one in there if not any(same_line(one.down_wall_mm, mm) for mm in stay_mm))

    @property
    def line_stays(self) -> bool:
        """Whether the line found on the scoop is the one to feed by: there is no other to draw."""
        return same_line(self.weigh_in.drawn_line_mm, self.weigh_in.old_line_mm)

    @property
    def struck_level(self) -> bool:
        """Whether no line is drawn, for level scoopfuls alone are the feeding."""
        return self.weigh_in.drawn_line_mm == 0

    @property
    def line_untried(self) -> bool:
        """Whether no fill to the line now drawn counts, while some still can be weighed."""
        if self.struck_level:
            return False
        return self.signed_off is None and not any(fill.counts for fill in self.fills_of(FillWay.TO_MARK))

    @property
    def line_tried(self) -> bool:
        """Whether a fill counts that was filled to a line, wherever that was."""
        return any(fill.counts and fill.way == FillWay.TO_MARK for fill in self.known.fills)

    @property
    def line_should_move(self) -> bool:
        """Whether the fills to the line have shown the line to be wrong."""
        check = self.findings.check
        return check is not None and check.verdict == LineVerdict.MOVE and self.signed_off is None

    def look_at(self, step: Step) -> None:
        """Bring a step of a signed-off weigh-in into view; nothing is written."""
        self._looked_at = step

    def take_next_line(self) -> None:
        """Take the line that the fills to the line call for, and go back to have it drawn."""
        check = self.findings.check
        if check is not None:
            self.set(drawn_line_mm=None, drawn_line_typed="", step=Step.MARK)

    @property
    def standing(self) -> Standing:
        """Where the farm stands."""
        return standing(self.records, self.farm, self.clock().date())

    def sign_off(self, by: str, seen: Sequence[Fill] | None = None) -> SignOff:
        """Freeze the weigh-in with its results and the line as drawn. While another lot is fed, this one waits.

        `seen` are the fills as whoever signs saw them, where they were read anew since. Raises CannotCompute where
        the facts do not reach to a mark, RecordsError where keeping fails, also while something waits for the server.
        """
        if self._outbox is not None and self._outbox.waiting:
            raise RecordsUnreachable("unreachable", place=self.records.url)
        lot = None
        if self._sign_off() is None:  # else the records say who signed it
            lot = before_sign_off(self.standing, self.lot)
        # Nothing else is read anew: what somebody else changed meanwhile was not seen by who signs, and is refused.
        made, mark = finding.sign_off(self.known, self.findings, by, self.clock(), __version__)
        seen = self.known.fills if seen is None else seen
        made = self.records.sign_off(made, [mark], seen_fills=seen, lot=lot)
        self.refresh()
        return made

    def _sign_off(self) -> SignOff | None:
        return self.records.sign_off_of(self._id)

    def _level_count(self) -> int:
        return sum(fill.counts for fill in self.fills_of(FillWay.LEVEL))
