"""Which lines a scoop's label can bear: those signed off, and those for the other weights in use. No window needed."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import replace
from datetime import date

from calibrator.model import Mark, Plan, PlanGroup, Scoop, SignOff
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
from calibrator.science.mark import Line, MarkProblem, fill_line
from calibrator.science.mixing import Powder
from calibrator.values import dataclass


@dataclass(frozen=True)
class LineOffer:
    """A line that a person may put on the label. `plans` are those that feed this weight.

    One with a `problem` lies where nobody can read it; it is told and cannot be chosen. `reckoned` is what a line rests
    on that was not signed off. One `counted` in scoopfuls to the main line and its half is told so and not drawn.
    """

    line: LabelLine
    plans: tuple[str, ...] = ()
    problem: MarkProblem | None = None
    reckoned: Line | None = None
    counted: LineCount | None = None
    weighed_in: bool = False  # the lot was weighed in for it
    planned_since: bool = False  # since the label that is on the scoop was printed, or before its first one
    on_last_label: bool = False  # the label before has it too

    @property
    def target_g(self) -> float:
        return self.line.target_mass_g

    @property
    def use(self) -> LineUse:
        return self.line.use


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
    offers = [_counted(offer, offers) for offer in offers]
    named = [
        replace(
            offer,
            plans=_plans(offer.target_g, weights),
            weighed_in=any(same_weight(offer.target_g, each_g) for each_g in feeding),
        )
        for offer in offers
    ]
    return tuple(sorted(named, key=lambda offer: (offer.use is not LineUse.MAIN, -offer.target_g)))


def _reckoned(scoop: Scoop, signed: SignOff, target_g: float, main_g: float) -> Iterator[LineOffer]:
    factor, doubt = signed.settling_factor, signed.settling_u
    try:
        line = fill_line(scoop.shape, signed.level_mean_g, signed.level_u_g, target_g, factor, doubt)
    except CannotCompute:
        return
    use = LineUse.HALF if same_weight(target_g, HALF_SHARE * main_g) else LineUse.OTHER
    told = LabelLine(
        target_mass_g=target_g,
        down_wall_mm=line.down_wall_mm,
        use=use,
        full_scoops=line.full_scoops,
        mass_g=line.mass_g,
        reckoned=True,
    )
    yield LineOffer(told, problem=line.problem, reckoned=line)


def _counted(offer: LineOffer, offers: Sequence[LineOffer]) -> LineOffer:
    """The offer as scoopfuls to lines that can be read, where it comes out so; what was signed off is drawn."""
    main = next((one.line for one in offers if one.use is LineUse.MAIN), None)
    count = line_count(main, offer.target_g) if main and offer.reckoned else None
    half = any(one.use is LineUse.HALF and one.problem is None for one in offers)
    if count is None or (count.to_half and not half):
        return offer
    return replace(offer, counted=count, problem=None, reckoned=None)


def _plans(target_g: float, weights: Sequence[tuple[float, str]]) -> tuple[str, ...]:
    return tuple(dict.fromkeys(name for mass, name in weights if same_weight(mass, target_g)))
