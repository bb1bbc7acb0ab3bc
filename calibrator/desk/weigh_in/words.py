"""How a weigh-in's findings are said: short sentences, the figure with its unit, what to do next.

Lines have words of their own (`line_words`).
"""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication

from calibrator.desk import shown
from calibrator.desk.as_typed import as_typed
from calibrator.desk.counted import counted
from calibrator.desk.guide import BAGS_PROPOSED, FILLS_PER_BAG, FILLS_PLANNED, Guide, Missing
from calibrator.desk.parts import Tone
from calibrator.desk.words import only_to_line_words
from calibrator.model import FillWay, Step, UnitSystem, WeighIn
from calibrator.science.mark import Line, LineVerdict
from calibrator.science.plausible import USUAL_FEEDING_G, Doubt
from calibrator.science.scale import ScaleCheck
from calibrator.science.weighing import IntervalRule, LevelResult

translate = QCoreApplication.translate

MOST_PROPOSED = 12  # nobody weighs more in one go; beyond it other advice is better


def step_names() -> dict[Step, str]:
    """The steps as the strip names them."""
    return {
        Step.LOT: translate("WeighInWords", "Lot"),
        Step.SCOOP_AND_SCALE: translate("WeighInWords", "Scoop and scale"),
        Step.LEVEL_FILLS: translate("WeighInWords", "Level fills"),
        Step.MARK: translate("WeighInWords", "Mark"),
        Step.FILLS_TO_MARK: translate("WeighInWords", "Fills to the line"),
        Step.SIGN_OFF: translate("WeighInWords", "Sign-off"),
    }


def missing_words(missing: tuple[Missing, ...], *, level: bool = False) -> str:
    """What is still needed before going on, in one line; `level` where a scoop used level is proposed, and no line."""
    if level and missing == (Missing.LINE,):
        return translate("WeighInWords", "Still needed: your word that it is used level")
    words = {
        Missing.INITIALS: translate("WeighInWords", "your initials"),
        Missing.SCOOP: translate("WeighInWords", "a scoop"),
        Missing.SCALE: translate("WeighInWords", "a scale"),
        Missing.TARGET: translate("WeighInWords", "the target weight"),
        Missing.ZERO: translate("WeighInWords", "the scale level and zeroed"),
        Missing.CHECK_WEIGHT: translate("WeighInWords", "the check weight"),
        Missing.LEVEL_FILLS: translate("WeighInWords", "at least two level fills"),
        Missing.LINE: translate("WeighInWords", "the line"),
    }
    if not missing:
        return ""
    return translate("WeighInWords", "Still needed: {what}").format(what=", ".join(words[what] for what in missing))


def early_words(guide: Guide, step: Step) -> str:
    """That to go on is possible and early; blank where it is what to do next, and where it is not possible."""
    way = {Step.LEVEL_FILLS: FillWay.LEVEL, Step.FILLS_TO_MARK: FillWay.TO_MARK}.get(step)
    if way is None or guide.missing(step) or not more_fills_advised(guide, way) or guide.line_should_move:
        return ""
    result = guide.findings.result_of(way)
    if result is None and guide.line_tried and way is FillWay.TO_MARK:
        return translate("WeighInWords", "Early: two fills to this line are wanted. You can go on all the same.")
    more = still_planned_words(result, guide)
    if not more:
        return translate("WeighInWords", "Early: more fills are advised. You can go on all the same.")
    words = translate("WeighInWords", "Early: {more} are still planned. You can go on all the same.")
    return words.format(more=more)


def advice_words(level: LevelResult, guide: Guide, system: UnitSystem) -> tuple[str, Tone]:
    """Whether the fills are enough, and if not, how many more and from where."""
    advice, more = level.advice, still_planned_words(level, guide)
    if advice.enough:
        known = shown.fine_mass(advice.half_width_g, system)
        if more:
            words = translate("WeighInWords", "Within ± {mass} already; the plan still asks for {more}.")
            return words.format(mass=known, more=more), ""
        words = translate("WeighInWords", "Enough: a level scoopful is known within ± {mass}.").format(mass=known)
        return words, "good"
    if more:
        return plan_words(level, guide), ""
    if not advice.within_reach or advice.more_fills > MOST_PROPOSED:
        if guide.odd_fills(FillWay.LEVEL):
            return translate("WeighInWords", "First decide about the fill that lies far from the others."), "warn"
        together = guide.findings.scoopfuls_together
        if together > max(fill.scoopfuls for fill in guide.fills_of(FillWay.LEVEL)):
            return counted.weigh_together(together), "warn"
        if level.check_weight_tells:
            return check_weight_words(guide.findings.scale), "warn"
        return translate("WeighInWords", "More fills would hardly tell it better: go on with what is known."), "warn"
    if advice.from_other_bags and advice.more_fills <= level.outlook.spare_bags(level.bags):
        return counted.more_from_other_bags(advice.more_fills), "warn"
    return counted.more_would_do(advice.more_fills), "warn"


def check_weight_words(check: ScaleCheck | None) -> str:
    """What to do where the scale leaves more doubt than fills do, for no check weight tells of it, or a light one."""
    if check is not None:
        return translate(
            "WeighInWords",
            "More fills would hardly tell it better, but a heavier check weight would: weigh that, or more scoopfuls "
            "together.",
        )
    return translate(
        "WeighInWords",
        "More fills would hardly tell it better, for the scale was not checked: weigh a check weight, or more "
        "scoopfuls together.",
    )


def unchecked_words(result: LevelResult, check: ScaleCheck | None, system: UnitSystem) -> str:
    """That nobody checked the scale, or with a light weight, and what is counted for that; blank where one tells."""
    if not result.scale_half_g:
        return ""
    words = translate(
        "WeighInWords",
        "Scale not checked: ± {mass} of doubt assumed. A check weight makes this surer.",
    )
    if check is not None:
        words = translate(
            "WeighInWords",
            "Check weight light beside the powder: ± {mass} of doubt assumed. A heavier one makes this surer.",
        )
    return words.format(mass=unbroken(shown.fine_mass(result.scale_half_g, system)))


def plan_words(result: LevelResult, guide: Guide) -> str:
    """How far the plan of fills is done; the one thing to do before it is."""
    words = translate("WeighInWords", "{fills} from {bags} so far; {all} from {planned} are planned.")
    return words.format(
        fills=counted.fills(result.fills),
        bags=counted.bags(result.bags),
        all=FILLS_PLANNED,
        planned=counted.bags(guide.bags_at_hand),
    )


def weighed_words(result: LevelResult) -> str:
    """How much was weighed, as the list beside it shows it: scoopfuls weighed together are one row there."""
    if result.scoopfuls == result.fills:
        return counted.fills(result.fills)
    words = translate("WeighInWords", "{weighings}, {scoopfuls}")
    return words.format(weighings=counted.weighings(result.fills), scoopfuls=counted.scoopfuls(result.scoopfuls))


def mean_of_words(result: LevelResult, system: UnitSystem, before: str = "") -> str:
    """What a mean is of, told apart where the list beside it does not show all of it: those `before` are counted in."""
    words = translate("WeighInWords", "mean of {bags}, {fills}")
    if before:
        words = translate("WeighInWords", "mean of {bags}, {fills}, {before}")
    told = words.format(fills=weighed_words(result), bags=counted.bags(result.bags), before=before)
    return f"{told}, {corrected_words(result.taken_off_g, system)}" if result.taken_off_g else told


def corrected_words(taken_off_g: float, system: UnitSystem) -> str:
    """What was added or taken off for the scale's error: without it a mean could lie beyond all that is listed."""
    words = (
        translate("WeighInWords", "{mass} taken off for the scale")
        if taken_off_g > 0
        else translate("WeighInWords", "{mass} added for the scale")
    )
    return words.format(mass=shown.fine_mass(abs(taken_off_g), system))


def still_planned_words(result: LevelResult | None, guide: Guide) -> str:
    """The fills that the plan has beyond those weighed, and the bags they come from: those that are open for fills of
    the other way, or further ones. Blank once it is done.
    """
    fills, bags = guide.still_planned(result)
    more = counted.fills(fills) if fills else ""
    if not bags:
        return more
    opened = guide.bags_opened
    waiting = opened - (result.bags if result else 0)
    if bags > waiting:
        words = translate("WeighInWords", "{fills} and {bags}")
        return words.format(fills=more, bags=counted.bags(bags - waiting))
    if bags == opened:
        return counted.from_open_bags(bags).format(fills=more)
    if fills == FILLS_PER_BAG * bags:
        return translate("WeighInWords", "{fills} from {count} of the open bags").format(fills=more, count=bags)
    # Some of them come from a bag that has one already, and too few.
    words = translate("WeighInWords", "{fills} from the open bags, {count} of them without any")
    return words.format(fills=more, count=bags)


def level_hands(guide: Guide) -> str:
    """How level fills are taken, and how many."""
    words = translate(
        "WeighInWords",
        "Dip, heap, and strike off with a straight edge. No tapping, no pressing. {fills}: type the weight, press "
        "Enter.",
    )
    return words.format(fills=fills_planned(guide))


def mark_hands(guide: Guide) -> str:
    """How fills to the line are taken; where a feeding takes more than one, that one to the line is weighed alone."""
    told = translate(
        "WeighInWords",
        "Fill as at every feeding: to the line, evened with one shake, read at eye level. Type the weight, "
        "press Enter.",
    )
    line = guide.findings.line
    if line is None or not line.several:
        return told
    return f"{told} {one_to_line_words(line, guide.farm.units)}"


def one_to_line_words(line: Line, system: UnitSystem) -> str:
    """Where a feeding takes more than one scoopful: that one to the line is weighed alone, and its weight."""
    mass = unbroken(shown.fine_mass(line.mass_g, system))
    if line.to_line == 1:
        return only_to_line_words(mass)
    words = translate("WeighInWords", "Weigh one scoopful to the line at a time, about {mass}; {count} are a feeding.")
    return words.format(mass=mass, count=line.to_line)


def fills_planned(guide: Guide) -> str:
    """The fills that the plan has, and the bags that it takes them from."""
    bags = guide.bags_at_hand
    if bags == BAGS_PROPOSED:
        return translate("WeighInWords", "Two fills from each of four bags")
    if bags == 1:
        return translate("WeighInWords", "Eight fills from all over the bag")
    return translate("WeighInWords", "Eight fills, shared over the {bags} of the lot").format(bags=counted.bags(bags))


def level_reason(level: LevelResult, guide: Guide, system: UnitSystem) -> str:
    """What stands beneath the advice: how well a level scoopful is known, or why the plan goes on all the same.

    What earlier lots taught makes a few fills enough, but nothing of it is about the bags of this lot.
    """
    if not level.advice.enough:
        return wanted_words(level, system)
    if not guide.plan_is_open(level):
        return ""
    return translate(
        "WeighInWords", "That rests on earlier lots; the plan is to see how bags and fills of this one differ."
    )


def wanted_words(level: LevelResult, system: UnitSystem) -> str:
    """How well a level scoopful is known, beside how well it should be."""
    advice = level.advice
    now, wanted = shown.fine_masses((advice.half_width_g, advice.wanted_half_width_g), system)
    words = translate("WeighInWords", "Known within ± {now}; within ± {wanted} is wanted.")
    return words.format(now=now, wanted=wanted)


def rule_words(level: LevelResult, *, planned: bool = False) -> str:
    """Where the interval comes from, in the words of a person who was there. While more bags are `planned` anyway,
    that advice stands alone.
    """
    if level.every_bag:
        return _every_bag_words(level)
    if level.rule == IntervalRule.BAG_MEANS:
        return translate("WeighInWords", "The interval rests on how these bags differ.")
    if level.rule == IntervalRule.POOLED_HISTORY:
        return translate("WeighInWords", "The interval rests on how bags differed in this farm's earlier lots.")
    if not level.bags_assumed:
        words = translate("WeighInWords", "These two bags differ more than bags usually do; the range takes that in.")
        if level.odd:  # one odd fill may be all that sets them apart: that is said beside it
            words = translate("WeighInWords", "The range rests on how these two bags differ.")
        advice = translate("WeighInWords", "Stir both, weigh them again, and dip a third bag.")
    else:
        words = translate(
            "WeighInWords",
            "With fewer than three bags, how bags differ cannot be seen: a cautious figure is assumed.",
        )
        advice = translate("WeighInWords", "Dip a third bag to do without it.")
    no_third = level.outlook.spare_bags(level.bags) == 0
    return words if planned or no_third else f"{words} {advice}"


def _every_bag_words(level: LevelResult) -> str:
    """Where the interval comes from when no bag of the lot is left that could be another."""
    if level.rule == IntervalRule.CAUTIOUS_DEFAULT:
        return translate(
            "WeighInWords",
            "Every bag of the lot was dipped, so only how fills differ counts; until more are weighed, a cautious "
            "figure is assumed for it.",
        )
    return translate(
        "WeighInWords",
        "Every bag of the lot was dipped, so the interval rests on how fills differ. Take them from all over the bag, "
        "not from its top alone.",
    )


def level_fills_advised(guide: Guide) -> bool:
    """Whether more level fills are advised than the line rests on; fills to a line tell more than they."""
    level = guide.findings.level
    if level is None or level.advice.enough or guide.line_tried:
        return False
    return guide.plan_is_open(level) or (level.advice.within_reach and level.advice.more_fills <= MOST_PROPOSED)


def more_fills_advised(guide: Guide, way: FillWay) -> bool:
    """Whether another fill is what to do next; else to go on is."""
    level, check = guide.findings.level, guide.findings.check
    if guide.signed_off is not None:
        return False
    if way == FillWay.LEVEL:
        return level is None or guide.plan_is_open(level) or level_fills_advised(guide)
    if check is None or guide.plan_is_open(check.result):
        return True
    return check.verdict == LineVerdict.WEIGH_MORE and check.within_reach and check.more_fills <= MOST_PROPOSED


def scale_before_words(before: WeighIn, system: UnitSystem) -> str:
    """That the scale was off at the weigh-in before, and what follows where nobody looks again."""
    words = translate(
        "WeighInWords",
        "At the weigh-in before, this scale showed {reading} for {nominal}. Weigh the check weight again: without it "
        "nothing is corrected here, and the two lots do not compare.",
    )
    reading = as_typed(before.check_reading_g or 0.0, before.check_reading_typed, system)
    nominal = as_typed(before.check_nominal_g or 0.0, before.check_nominal_typed, system)
    return words.format(reading=reading, nominal=nominal)


def scale_words(check: ScaleCheck, told: WeighIn, system: UnitSystem) -> tuple[str, Tone]:
    """What the check weight says about the scale."""
    error = shown.mass(abs(check.error_g), system)
    if check.hardly_meant:
        slip = translate(
            "WeighInWords",
            "Look at both figures: {reading} for {nominal} is hardly meant. If the scale does show that, weigh on "
            "another one. Without a check weight leave both empty.",
        )
        reading = as_typed(check.nominal_g + check.error_g, told.check_reading_typed, system)
        nominal = as_typed(check.nominal_g, told.check_nominal_typed, system)
        return slip.format(reading=reading, nominal=nominal), "bad"
    if not check.taken_off:
        if not check.error_g:
            right = translate("WeighInWords", "The scale reads the check weight right, as far as its display tells.")
            return right, "good"
        within = (
            translate("WeighInWords", "It shows {error} too much, within what its display tells: that counts as doubt.")
            if check.error_g > 0
            else translate(
                "WeighInWords", "It shows {error} too little, within what its display tells: that counts as doubt."
            )
        )
        return within.format(error=error), "good"
    words = (
        translate("WeighInWords", "The scale reads {error} too much ({share} of the check weight).")
        if check.error_g > 0
        else translate("WeighInWords", "The scale reads {error} too little ({share} of the check weight).")
    )
    told_off = words.format(error=error, share=shown.unsigned_share(check.error_g / check.nominal_g))
    if check.ok:
        near = translate("WeighInWords", "That is as near as good scales are; the means are corrected for it.")
        return f"{told_off} {near}", "good"
    advice = translate(
        "WeighInWords",
        "Zero it, check that it stands level, fit fresh batteries, and try again. If it stays so, the means are "
        "corrected for it.",
    )
    return f"{told_off} {advice}", "warn"


def target_words(system: UnitSystem, meant: str) -> str:
    """About a target weight that is hardly meant; `meant` tells what was likelier meant, where anything was."""
    whole_g = {UnitSystem.FARM: 28.349523125, UnitSystem.METRIC: 10.0}[system]
    low, high = (shown.mass(limit, system, resolution_g=whole_g) for limit in USUAL_FEEDING_G)
    words = translate(
        "WeighInWords",
        "One calf usually gets {low} to {high} of powder at a feeding. Look at the unit and the decimal point.",
    )
    return f"{words.format(low=low, high=high)} {meant}".rstrip()


def doubt_words(doubt: Doubt, weight: str, guide: Guide, system: UnitSystem, *, short: bool = False) -> str:
    """Why a typed weight is hardly meant; `short` where what was likelier meant is told behind it."""
    line = guide.findings.line
    if doubt == Doubt.WHOLE_FEEDING and line is not None:
        return one_to_line_words(line, system)
    if doubt == Doubt.OVER_CAPACITY and guide.scale is not None:
        words = translate("WeighInWords", "{weight} is more than this scale weighs ({capacity}).")
        told = words.format(weight=weight, capacity=shown.mass(guide.scale.capacity_g, system))
        again = translate("WeighInWords", "Type it again.")
        return told if short else f"{told} {again}"
    if doubt == Doubt.OVER_LEVEL and guide.findings.level is not None:
        words = translate(
            "WeighInWords",
            "That is more than this scoop holds struck level ({level}); to the line it holds less.",
        )
        return words.format(level=shown.mass(guide.findings.level.mean_g, system))
    words = (
        translate("WeighInWords", "No powder is so heavy in this scoop.")
        if doubt == Doubt.TOO_HEAVY
        else translate("WeighInWords", "No powder is so light in this scoop.")
    )
    advice = translate("WeighInWords", "Check unit, zero and the scoop's measures.")
    return words if short else f"{words} {advice}"


def odd_words(fills: int) -> str:
    """What to do about an odd fill; of two, nobody can tell which it is."""
    if fills == 2:
        return translate(
            "WeighInWords",
            "These two fills lie far apart, and nothing tells yet which one went wrong. Weigh another: it will show.",
        )
    return translate(
        "WeighInWords",
        "A fill lies far from the others. If something went wrong with it, select it and strike it out; "
        "if not, let it stand.",
    )


def swapped_words(weight: str, meant: str) -> str:
    """That two digits of a weight were likely typed the other way round."""
    words = translate(
        "WeighInWords",
        "Look again at {weight}: was {meant} meant? If so, strike it out and type it anew; if not, let it stand.",
    )
    return words.format(weight=unbroken(weight), meant=unbroken(meant))


def miscounted_words(weight: str, scoopfuls: int) -> str:
    """That a weight is likely of another number of scoopfuls than was set."""
    words = translate(
        "WeighInWords",
        "{weight} looks like {scoopfuls}. If so, strike it out, set how many were on the scale, and type it anew; if "
        "not, let it stand.",
    )
    return words.format(weight=unbroken(weight), scoopfuls=counted.scoopfuls(scoopfuls))


def unbroken(length: str) -> str:
    """A length that keeps to one line: 1 11/16 in, broken after the 1, would be read as 11/16 in."""
    return length.replace(" ", "\u00a0")


def title(guide: Guide) -> str:
    return translate("WeighInWords", "Weigh-in of lot {number}").format(number=guide.lot.lot_number)
