"""How a weigh-in's findings are said: short sentences, the figure with its unit, what to do next."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication

from calibrator.desk import shown
from calibrator.desk.counted import counted
from calibrator.desk.guide import BAGS_PROPOSED, FILLS_PLANNED, Guide, Missing
from calibrator.desk.parts import Tone
from calibrator.model import FillWay, Step, UnitSystem
from calibrator.science.mark import Line, LineCheck, LineVerdict, MarkProblem, OldLine, OldLineVerdict
from calibrator.science.plausible import USUAL_FEEDING_G, Doubt
from calibrator.science.scale import ScaleCheck
from calibrator.science.weighing import IntervalRule, LevelResult

translate = QCoreApplication.translate

FINE_G = 0.28349523125  # 0.01 oz
MOST_PROPOSED = 12  # nobody weighs more in one go; beyond it other advice is better


def step_names() -> dict[Step, str]:
    """The steps as the strip names them."""
    return {
        Step.LOT: translate("WeighInWords", "Lot"),
        Step.SCOOP_AND_SCALE: translate("WeighInWords", "Scoop and scale"),
        Step.LEVEL_FILLS: translate("WeighInWords", "Level fills"),
        Step.MARK: translate("WeighInWords", "Mark"),
        Step.FILLS_TO_MARK: translate("WeighInWords", "Fills to the mark"),
        Step.SIGN_OFF: translate("WeighInWords", "Sign-off"),
    }


def missing_words(missing: tuple[Missing, ...]) -> str:
    """What is still needed before going on, in one line."""
    words = {
        Missing.INITIALS: translate("WeighInWords", "your initials"),
        Missing.SCOOP: translate("WeighInWords", "a scoop"),
        Missing.SCALE: translate("WeighInWords", "a scale"),
        Missing.TARGET: translate("WeighInWords", "the target weight"),
        Missing.ZERO: translate("WeighInWords", "the scale level and zeroed"),
        Missing.LEVEL_FILLS: translate("WeighInWords", "at least two level fills"),
        Missing.LINE: translate("WeighInWords", "the line drawn on the scoop"),
    }
    if not missing:
        return ""
    return translate("WeighInWords", "Still needed: {what}").format(what=", ".join(words[what] for what in missing))


def advice_words(level: LevelResult, guide: Guide, system: UnitSystem) -> tuple[str, Tone]:
    """Whether the fills are enough, and if not, how many more and from where."""
    advice, more = level.advice, _still_planned(level, guide)
    if advice.enough:
        known = fine(advice.half_width_g, system)
        if more:
            words = translate("WeighInWords", "Within ± {mass} already; the plan asks for {more} more.")
            return words.format(mass=known, more=more), ""
        words = translate("WeighInWords", "Enough: a level scoopful is known within ± {mass}.").format(mass=known)
        return words, "good"
    if more:
        return plan_words(level, guide), ""
    if not advice.within_reach or advice.more_fills > MOST_PROPOSED:
        together = guide.findings.scoopfuls_together
        if together > max(fill.scoopfuls for fill in guide.fills_of(FillWay.LEVEL)):
            return counted.weigh_together(together), "warn"
        return translate("WeighInWords", "More fills would hardly tell it better: go on with what is known."), "warn"
    if advice.from_other_bags and advice.more_fills <= level.outlook.spare_bags(level.bags):
        return counted.more_from_other_bags(advice.more_fills), "warn"
    return counted.more_would_do(advice.more_fills), "warn"


def plan_words(result: LevelResult, guide: Guide) -> str:
    """How far the plan of fills is done; the one thing to do before it is."""
    words = translate("WeighInWords", "{fills} from {bags} so far; {all} from {planned} are planned.")
    return words.format(
        fills=counted.fills(result.fills),
        bags=counted.bags(result.bags),
        all=FILLS_PLANNED,
        planned=counted.bags(guide.bags_at_hand),
    )


def _still_planned(result: LevelResult, guide: Guide) -> str:
    """The fills, and bags, that the plan has beyond those weighed; blank once it is done."""
    fills, bags = guide.still_planned(result)
    if not fills:
        return ""
    more = counted.fills(fills)
    return translate("WeighInWords", "{fills} and {bags}").format(fills=more, bags=counted.bags(bags)) if bags else more


def level_hands(guide: Guide) -> str:
    """How level fills are taken, and how many."""
    words = translate(
        "WeighInWords",
        "Dip, heap, and strike off with a straight edge. No tapping, no pressing. {fills}: type the weight, press "
        "Enter.",
    )
    return words.format(fills=fills_planned(guide))


def mark_hands(_guide: Guide) -> str:
    """How fills to the line are taken."""
    return translate(
        "WeighInWords",
        "Fill to the line, level it with one shake, read it at eye level. Type the weight, press Enter.",
    )


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
    return translate("WeighInWords", "Known within ± {now}; within ± {wanted} is wanted.").format(
        now=fine(advice.half_width_g, system), wanted=fine(advice.wanted_half_width_g, system)
    )


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
        words = translate(
            "WeighInWords", "These two bags differ by more than would be assumed, so what they show counts."
        )
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


def line_words(line: Line, system: UnitSystem) -> str:
    """Where to draw the line, told as hands measure it."""
    down = unbroken(shown.length(line.down_wall_mm, system))
    if line.full_scoops:
        words = counted.full_scoops_first(line.full_scoops)
    else:
        words = translate("WeighInWords", "Draw the line {down} down the wall from the rim.")
    return words.format(down=down)


def line_problem_words(line: Line, tolerance_share: float) -> str:
    """Why a line can't be used, and what to do instead; blank where it can."""
    if line.problem is None:
        return ""
    left_out = line.mass_g / line.target_g
    if line.problem is MarkProblem.TOO_NEAR_FLOOR and line.full_scoops and left_out <= tolerance_share:
        return counted.without_the_last(line.full_scoops).format(share=signed_percent(-left_out))
    return {
        MarkProblem.TOO_NEAR_FLOOR: translate(
            "WeighInWords",
            "The line would be so near the floor that it cannot be read well. Use a smaller scoop.",
        ),
        MarkProblem.TOO_NEAR_RIM: translate(
            "WeighInWords",
            "The line would be so near the rim that it cannot be told from it. Use a larger scoop, "
            "or strike it level and take the weight as it is.",
        ),
    }[line.problem]


def old_line_words(old: OldLine, system: UnitSystem) -> tuple[str, Tone]:
    """Keep or move the line found on the scoop, and what it would deliver from this lot."""
    delivers = translate(
        "WeighInWords", "With the old line a feeding of this lot would weigh {mass} ({share})."
    ).format(mass=shown.mass(old.delivers_g, system), share=signed_percent(old.share))
    if old.verdict == OldLineVerdict.KEEP:
        return translate("WeighInWords", "Keep the old line. {delivers}").format(delivers=delivers), "good"
    if old.verdict == OldLineVerdict.MOVE:
        return translate("WeighInWords", "Move the line. {delivers}").format(delivers=delivers), "bad"
    words = _undecided_words(old)
    return translate("WeighInWords", "{words} {delivers}").format(words=words, delivers=delivers), "warn"


def moved_line_words(old: OldLine, system: UnitSystem) -> str:
    """What the old line would have delivered, once another is drawn: there is nothing left to decide."""
    words = translate("WeighInWords", "Moved. A feeding of this lot would have weighed {mass} ({share}).")
    return words.format(mass=shown.mass(old.delivers_g, system), share=signed_percent(old.share))


def _undecided_words(old: OldLine) -> str:
    """What is not known of an old line, and what would tell it."""
    if old.by_level == OldLineVerdict.MOVE:
        return translate("WeighInWords", "By the level fills it has to move: draw the new line.")
    if old.by_level == OldLineVerdict.KEEP:
        return translate(
            "WeighInWords",
            "By the level fills it would do. Only how this powder settles under the shake is not known: "
            "leave the old line, and weigh two fills to it.",
        )
    if level_fills_tell(old):
        return counted.more_level(old.more_fills)
    return translate("WeighInWords", "Draw the new line: level fills would hardly tell whether the old one will do.")


def level_fills_tell(old: OldLine) -> bool:
    """Whether a few more level fills are what is advised for an old line, before anything is drawn."""
    unsure = old.verdict is OldLineVerdict.WEIGH_MORE and old.by_level is OldLineVerdict.WEIGH_MORE
    return unsure and old.within_reach and old.more_fills <= MOST_PROPOSED


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


def far_off_words(found: OldLine, system: UnitSystem) -> str:
    """A line far from where the target weight calls for it: what it would deliver, and the likely slip."""
    return translate(
        "WeighInWords",
        "A feeding to a line there would weigh {mass} ({share} against the target). Measure from the rim down along "
        "the wall, not from the bottom up. Is the line really there?",
    ).format(mass=shown.mass(found.delivers_g, system), share=signed_percent(found.share))


def check_words(check: LineCheck, guide: Guide, system: UnitSystem) -> tuple[str, Tone]:
    """The verdict on the drawn line."""
    stays = guide.weigh_in.drawn_line_mm == guide.weigh_in.old_line_mm
    if check.verdict == LineVerdict.ON_TARGET:
        if stays:
            return translate("WeighInWords", "Keep the line: a feeding is within the tolerance."), "good"
        return translate("WeighInWords", "The new line is right: a feeding is within the tolerance."), "good"
    if check.verdict == LineVerdict.MOVE:
        words = translate("WeighInWords", "Move the line to {down} down the wall from the rim, and weigh to it again.")
        return words.format(down=unbroken(shown.length(check.next_line.down_wall_mm, system))), "bad"
    if check.verdict == LineVerdict.AS_NEAR_AS_RULED:
        if stays:
            return translate(
                "WeighInWords",
                "Keep the line, though a feeding is outside the tolerance: no other division of the ruler is nearer. "
                "A narrower scoop would do better.",
            ), "warn"
        return translate(
            "WeighInWords",
            "The new line is as near as the ruler has it, though a feeding is outside the tolerance: no other division "
            "is nearer. A narrower scoop would do better.",
        ), "warn"
    if guide.plan_is_open(check.result):
        return plan_words(check.result, guide), ""
    if not check.within_reach or check.more_fills > MOST_PROPOSED:
        return translate("WeighInWords", "More fills would hardly tell it better: go on with what is known."), "warn"
    return counted.more_to_the_line(check.more_fills), "warn"


def check_reason(check: LineCheck, guide: Guide, system: UnitSystem) -> str:
    """What stands beneath the verdict: what it rests on, and what a line found right still asks for."""
    told = [tolerance_words(check, guide, system)]
    right = check.verdict == LineVerdict.ON_TARGET
    if right and check.bags_apart:
        words = translate(
            "WeighInWords",
            "That is the mean of the lot: out of one bag it may be {mass} more or less. Weigh a spot fill of each "
            "bag that is opened.",
        )
        told.append(words.format(mass=fine(check.bag_reach_g, system)))
    if right and (more := _still_planned(check.result, guide)):
        words = translate(
            "WeighInWords", "The plan asks for {more} more, to see how bags and fills of this lot differ."
        )
        told.append(words.format(more=more))
    return " ".join(told)


def untried_words() -> str:
    """What is not known while no fill to the line was weighed."""
    return translate(
        "WeighInWords",
        "No fill to the line was weighed yet, so how the powder settles in it is not known and the line may be some "
        "percent off. Weigh at least two fills to it, or go on without?",
    )


def wrong_line_words(guide: Guide, system: UnitSystem) -> str:
    """What would be signed although the fills to the line speak against it."""
    check, line_mm = guide.findings.check, guide.weigh_in.drawn_line_mm
    if check is None or line_mm is None:
        return ""
    words = translate(
        "WeighInWords", "{verdict} What would be signed is the line at {line}, with {mass} in a feeding. Go on with it?"
    )
    verdict, line = check_words(check, guide, system)[0], unbroken(shown.length(line_mm, system))
    return words.format(verdict=verdict, line=line, mass=fine(check.mean_g, system))


def tolerance_words(check: LineCheck, guide: Guide, system: UnitSystem) -> str:
    """A feeding beside the tolerance: what every verdict on a line rests on."""
    target_g = guide.weigh_in.target_mass_g or check.mean_g
    words = translate(
        "WeighInWords",
        "A feeding weighs {mean}, surely {low} to {high}. Tolerance: {from_mass} to {to_mass} ({target} ± {share}).",
    )
    return words.format(
        mean=fine(check.mean_g, system),
        low=fine(check.low_g, system),
        high=fine(check.high_g, system),
        from_mass=fine(target_g - check.tolerance_g, system),
        to_mass=fine(target_g + check.tolerance_g, system),
        target=shown.mass(target_g, system),
        share=shown.percent(100 * guide.farm.tolerance_share),
    )


def fine(mass_g: float, system: UnitSystem) -> str:
    """A mean or a limit, told to a digit more than a scale shows: what a verdict turns on must be seen."""
    return shown.mass(mass_g, system, resolution_g=FINE_G)


def settling_words(check: LineCheck) -> str:
    """What the shake did to the powder."""
    percent = shown.percent(100 * abs(check.settling_factor - 1))
    if check.settling_factor >= 1:
        words = translate("WeighInWords", "Levelled by a shake, the powder packs {percent} denser than struck level.")
    else:
        words = translate("WeighInWords", "Filled to the line, the powder lies {percent} looser than struck level.")
    return words.format(percent=percent)


def scale_words(check: ScaleCheck, system: UnitSystem) -> tuple[str, Tone]:
    """What the check weight says about the scale."""
    error = shown.mass(abs(check.error_g), system)
    if check.ok:
        return translate("WeighInWords", "The scale reads the check weight right."), "good"
    words = (
        translate("WeighInWords", "The scale reads {error} too much.")
        if check.error_g > 0
        else translate("WeighInWords", "The scale reads {error} too little.")
    )
    advice = translate("WeighInWords", "Zero it, check that it stands level, fit fresh batteries, and try again.")
    return f"{words.format(error=error)} {advice}", "warn"


def target_words(system: UnitSystem) -> str:
    """About a target weight that is hardly meant."""
    low, high = (shown.mass(limit, system) for limit in USUAL_FEEDING_G)
    words = translate(
        "WeighInWords",
        "One calf usually gets {low} to {high} of powder at a feeding. Look at the unit and the decimal point.",
    )
    return words.format(low=low, high=high)


def doubt_words(doubt: Doubt, guide: Guide, system: UnitSystem) -> str:
    """Why a typed weight is hardly meant."""
    if doubt == Doubt.OVER_CAPACITY and guide.scale is not None:
        words = translate("WeighInWords", "That is more than this scale weighs ({capacity}). Type it again.")
        return words.format(capacity=shown.mass(guide.scale.capacity_g, system))
    if doubt == Doubt.OVER_LEVEL and guide.findings.level is not None:
        words = translate(
            "WeighInWords",
            "That is more than this scoop holds struck level ({level}), and the line lies below its rim.",
        )
        return words.format(level=shown.mass(guide.findings.level.mean_g, system))
    if doubt == Doubt.TOO_HEAVY:
        return translate(
            "WeighInWords",
            "No powder is as heavy as that in this scoop. Look at the unit, at the zero of the scale, and at the "
            "scoop's measures in the set-up.",
        )
    return translate(
        "WeighInWords",
        "No powder is as light as that in this scoop. Look at the unit, at the zero of the scale, and at the "
        "scoop's measures in the set-up.",
    )


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


def unbroken(length: str) -> str:
    """A length that keeps to one line: 1 11/16 in, broken after the 1, would be read as 11/16 in."""
    return length.replace(" ", "\u00a0")


def signed_percent(share: float) -> str:
    """A share with its sign, as percent: +2.4 %."""
    return ("+" if share > 0 else "") + shown.percent(100 * share)


def title(guide: Guide) -> str:
    return translate("WeighInWords", "Weigh-in of lot {number}").format(number=guide.lot.lot_number)
