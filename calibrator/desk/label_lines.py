"""Which lines a scoop's label can bear: those signed off, and those for the other weights in use. No window needed."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import replace
from datetime import date

from calibrator.model import LabelledLine, Mark, Plan, PlanGroup, Scoop, SignOff
from calibrator.prints.label_facts import (
    HALF_SHARE,
    LabelLine,
    LineCount,
    LineUse,
    label_lines,
    line_count,
    same_weight,
)
from calibrator.science.as_fed import day_plan
from calibrator.science.errors import CannotCompute
from calibrator.science.feeding import powder_per_calf_g
from calibrator.science.mark import Line, MarkProblem, lines_for
from calibrator.science.mixing import Powder
from calibrator.science.scoopfuls import ScoopCount
from calibrator.values import dataclass

Way = tuple[int, int, bool]
"""How a feeding is filled, whatever the lot: level scoopfuls before the one to its line, how many to its line, whether
it is by other lines."""


@dataclass(frozen=True)
class LineOffer:
    """A line that a person may put on the label. `plans` are those that feed this weight.

    One with a `problem` lies where nobody can read it; it is told and cannot be chosen. `reckoned` is what a line rests
    on that was not signed off. One `counted` in scoopfuls to the main line and its half is told so and not drawn.
    `other_ways` are those in which the same feeding can be filled too, `count` what this way comes to; None where there
    is only one way.
    """

    line: LabelLine
    plans: tuple[str, ...] = ()
    problem: MarkProblem | None = None
    reckoned: Line | None = None
    counted: LineCount | None = None
    weighed_in: bool = False  # the lot was weighed in for it
    planned_since: bool = False  # since the label that is on the scoop was printed, or before its first one
    on_last_label: bool = False  # the label before has it too
    other_ways: tuple[LineOffer, ...] = ()
    count: ScoopCount | None = None

    @property
    def ways(self) -> tuple[LineOffer, ...]:
        """Every way to fill it, this one first."""
        return (replace(self, other_ways=()), *self.other_ways)

    @property
    def way(self) -> Way:
        """How it is filled."""
        return (0, 0, True) if self.counted else (self.line.full_scoops, self.line.to_line, False)

    def filled(self, way: Way) -> LineOffer:
        """The same feeding filled this way, where it can be; else as it is."""
        first = next((one for one in self.other_ways if one.way == way), None)
        if first is None:
            return self
        return replace(first, other_ways=tuple(one for one in self.ways if one.way != way))

    @property
    def target_g(self) -> float:
        return self.line.target_mass_g

    @property
    def use(self) -> LineUse:
        return self.line.use

    @property
    def unasked(self) -> bool:
        """Whether a label has it without a touch: a line that no table counts with is put there by whoever wants it, a
        label that is asked for anew has it."""
        wanted = not self.line.reckoned or self.planned_since or self.weighed_in or self.on_last_label
        return self.use is LineUse.MAIN or (self.problem is None and wanted)


def labelled(line: LabelLine) -> LabelledLine:
    """What the records keep of a line."""
    return LabelledLine(
        target_mass_g=line.target_mass_g,
        down_wall_mm=line.down_wall_mm,
        full_scoops=line.full_scoops,
        mass_g=line.mass_g,
    )


def weights_in_use(plans: Iterable[Plan], powder: Powder, on: date) -> Iterator[tuple[float, str]]:
    """What one calf's feeding takes of powder on a day in every group of every plan, g, with the plan's name, and the
    group's among several."""
    for _, mass_g, name in _day_feedings(plans, powder, on):
        yield mass_g, name


def usual_weight(plans: Iterable[Plan], powder: Powder, on: date) -> tuple[float, str] | None:
    """What one calf's feeding takes of powder in the largest group of all plans, g, with the name as in
    `weights_in_use`; None without a plan that can be reckoned."""
    largest = max(_day_feedings(plans, powder, on), key=lambda fed: fed[0].calves, default=None)
    return largest and largest[1:]


def _day_feedings(plans: Iterable[Plan], powder: Powder, on: date) -> Iterator[tuple[PlanGroup, float, str]]:
    for plan in plans:
        try:
            groups = day_plan(plan, on, powder).groups
            weights = [powder_per_calf_g(group, powder, plan.water_temperature_c) for group in groups]
        except CannotCompute:
            continue
        names = (f"{plan.name}, {group.name}" if len(groups) > 1 and group.name else plan.name for group in groups)
        yield from zip(groups, weights, names, strict=True)


def line_offers(
    scoop: Scoop,
    signed: SignOff,
    marks: Sequence[Mark],
    main_g: float,
    weights: Sequence[tuple[float, str]],
    *,
    feeding_g: float | None = None,
) -> tuple[LineOffer, ...]:
    """The main line first, then the others by falling weight; each weight once. `feeding_g` is what the lot was weighed
    in for: of equal scoopfuls to one line a mark tells one.

    Lines that were not drawn and weighed at sign-off are reckoned from its level scoopful and settling factor.
    """
    offers = [LineOffer(line) for line in label_lines(marks, main_g)]
    feeding = () if feeding_g is None else (feeding_g,)
    for target_g in (*feeding, HALF_SHARE * main_g, *(mass for mass, _ in weights)):
        if not any(same_weight(target_g, offer.target_g) for offer in offers):
            offers += _reckoned(scoop, signed, target_g, main_g)
    counted = (_counted(offer, offers) for offer in offers)
    named = [_with_names(offer, weights, feeding) for offer in counted]
    return tuple(sorted(named, key=lambda offer: (offer.use is not LineUse.MAIN, -offer.target_g)))


def _reckoned(scoop: Scoop, signed: SignOff, target_g: float, main_g: float) -> Iterator[LineOffer]:
    factor, doubt = signed.settling_factor, signed.settling_u
    try:
        lines = lines_for(scoop.shape, signed.level_mean_g, signed.level_u_g, target_g, factor, doubt)
    except CannotCompute:
        return
    use = LineUse.HALF if same_weight(target_g, HALF_SHARE * main_g) else LineUse.OTHER
    usual, *others = [LineOffer(_drawn(line, use), problem=line.problem, reckoned=line) for line in lines]
    yield replace(usual, other_ways=tuple(one for one in others if one.problem is None))


def _drawn(line: Line, use: LineUse) -> LabelLine:
    return LabelLine(
        target_mass_g=line.target_g,
        down_wall_mm=line.down_wall_mm,
        use=use,
        full_scoops=line.full_scoops,
        mass_g=line.mass_g,
        reckoned=True,
    )


def _counted(offer: LineOffer, offers: Sequence[LineOffer]) -> LineOffer:
    """The offer as scoopfuls to lines that can be read, where it comes out so; what was signed off is drawn."""
    main = next((one.line for one in offers if one.use is LineUse.MAIN), None)
    count = line_count(main, offer.target_g) if main and offer.reckoned else None
    half = any(one.use is LineUse.HALF and one.problem is None for one in offers)
    if main is None or count is None or (count.to_half and not half):
        return offer
    own = (one for one in offer.ways if one.problem is None)
    ways = tuple(one for one in own if not same_weight(one.line.held_g, main.target_mass_g))
    return replace(offer, counted=count, problem=None, reckoned=None, other_ways=ways)


def _with_names(offer: LineOffer, weights: Sequence[tuple[float, str]], feeding: Sequence[float]) -> LineOffer:
    """Who gets it; a feeding that the lot was weighed in for is filled as it was then."""
    plans = _plans(offer.target_g, weights)
    if any(same_weight(offer.target_g, each_g) for each_g in feeding):
        return replace(offer, plans=plans, weighed_in=True, other_ways=())
    return replace(offer, plans=plans, other_ways=tuple(replace(one, plans=plans) for one in offer.other_ways))


def _plans(target_g: float, weights: Sequence[tuple[float, str]]) -> tuple[str, ...]:
    return tuple(dict.fromkeys(name for mass, name in weights if same_weight(mass, target_g)))
