"""How lines are said: where to draw one, whether an old one will do, what fills to one show of it."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication

from calibrator.desk import shown
from calibrator.desk.counted import counted
from calibrator.desk.guide import Guide
from calibrator.desk.parts import Tone
from calibrator.desk.weigh_in.words import (
    MOST_PROPOSED,
    check_weight_words,
    plan_words,
    still_planned_words,
    unbroken,
)
from calibrator.model import UnitSystem
from calibrator.science.mark import Line, LineCheck, LineVerdict, MarkProblem, OldLine, OldLineVerdict

translate = QCoreApplication.translate


def where_words(line: Line, system: UnitSystem) -> str:
    """Where to draw the line, told as hands measure it."""
    down = unbroken(shown.length(line.down_wall_mm, system))
    if line.struck_level:
        return level_words(line)
    if line.to_line > 1:
        words = counted.equal_to_line(line.to_line)
    elif line.full_scoops:
        words = counted.full_scoops_first(line.full_scoops)
    else:
        words = translate("WeighInWords", "Draw the line {down} down the wall from the rim.")
    return words.format(down=down)


def level_words(line: Line) -> str:
    """That level scoopfuls alone do, and how near they come."""
    return counted.level_alone(line.full_scoops + 1).format(share=shown.signed_share(line.error_share))


def line_problem_words(line: Line, tolerance_share: float) -> str:
    """Why a line can't be used, and what to do instead; blank where it can."""
    if line.problem is None:
        return ""
    left_out = line.mass_g / line.target_g
    if line.problem is MarkProblem.TOO_NEAR_FLOOR and line.full_scoops and left_out <= tolerance_share:
        return counted.without_the_last(line.full_scoops).format(share=shown.signed_share(-left_out))
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


def old_line_words(old: OldLine, system: UnitSystem, *, moved: bool = False, fed: str = "") -> tuple[str, Tone]:
    """Keep or move the line found on the scoop, and what it would deliver from this lot. `moved` where fills to a line
    were weighed and another is to be drawn: nobody is sent to fill to the old one then. `fed` is the lot that goes on
    being fed to the old one, which stays for that long; blank for none.
    """
    delivers = translate(
        "WeighInWords", "With the old line a feeding of this lot would weigh {mass} ({share})."
    ).format(mass=shown.mass(old.delivers_g, system), share=shown.signed_share(old.share))
    delivers = _with_manner(delivers, old)
    if old.verdict == OldLineVerdict.KEEP:
        return translate("WeighInWords", "Keep the old line. {delivers}").format(delivers=delivers), "good"
    if old.verdict == OldLineVerdict.MOVE and fed:
        beside = translate(
            "WeighInWords", "Draw a new line for this lot; leave the old one until the change-over. {delivers}"
        )
        return beside.format(delivers=delivers), "warn"
    if old.verdict == OldLineVerdict.MOVE:
        return translate("WeighInWords", "Move the line. {delivers}").format(delivers=delivers), "bad"
    words = _undecided_words(old)
    if moved and fills_to_it_tell(old):
        words = translate("WeighInWords", "Draw the new line: the fills do not tell whether the old one will do.")
    return translate("WeighInWords", "{words} {delivers}").format(words=words, delivers=delivers), "warn"


def other_target_words(old: OldLine, before_g: float, target_g: float, system: UnitSystem) -> str:
    """That the old line was drawn for another weight: nothing is wrong with it or with the lot."""
    words = translate(
        "WeighInWords",
        "It was drawn for {before} at the last lot; now the target is {target}. Draw the new line. With the old line a "
        "feeding of this lot would weigh {mass}.",
    )
    before, target, mass = (shown.mass(g, system) for g in (before_g, target_g, old.delivers_g))
    return _with_manner(words.format(before=unbroken(before), target=unbroken(target), mass=unbroken(mass)), old)


def level_instead_words(old: OldLine, system: UnitSystem) -> str:
    """That the old line is not needed where the scoop is used level, and what it would have delivered."""
    words = translate(
        "WeighInWords",
        "It is not needed: use the scoop level. With the old line a feeding would weigh {mass} ({share}).",
    )
    told = words.format(mass=shown.mass(old.delivers_g, system), share=shown.signed_share(old.share))
    return _with_manner(told, old)


def _with_manner(told: str, old: OldLine) -> str:
    """How a feeding with the old line is filled, where it takes more than one scoopful."""
    if old.to_line > 1:
        manner = translate("WeighInWords", "That is {count} to the old line.").format(count=old.to_line)
        return f"{told} {manner}"
    if not old.full_scoops:
        return told
    manner = translate("WeighInWords", "That is {count} struck at the rim + 1 to the old line.").format(
        count=old.full_scoops
    )
    return f"{told} {manner}"


def moved_line_words(old: OldLine, before_g: float | None, system: UnitSystem, *, tried: bool) -> str:
    """What the old line would deliver, once another was chosen: it may be on the scoop still, for the lot that is fed.
    `before_g` is what it was drawn for, where that was another weight; `tried` where fills to a line are in the figure.
    """
    told = _what_it_would_bring(old, before_g, system)
    if not tried:
        return told
    # The step Mark told another figure, before there were such fills.
    settled = translate("WeighInWords", "That takes in how it settled in the fills to the line.")
    return f"{told} {settled}"


def _what_it_would_bring(old: OldLine, before_g: float | None, system: UnitSystem) -> str:
    mass = shown.mass(old.delivers_g, system)
    if before_g is not None:
        words = translate(
            "WeighInWords", "Not for this lot: it was drawn for {before}. A feeding to it would weigh {mass}."
        )
        return words.format(before=shown.mass(before_g, system), mass=mass)
    words = {
        OldLineVerdict.MOVE: translate(
            "WeighInWords", "Not for this lot: a feeding to it would weigh {mass} ({share})."
        ),
        OldLineVerdict.KEEP: translate(
            "WeighInWords", "Replaced, though it could have stayed: a feeding to it would weigh {mass} ({share})."
        ),
        OldLineVerdict.WEIGH_MORE: translate(
            "WeighInWords",
            "Replaced. Whether it could have stayed, the fills do not tell: a feeding to it would weigh {mass} "
            "({share}).",
        ),
    }[old.verdict]
    return words.format(mass=mass, share=shown.signed_share(old.share))


def _undecided_words(old: OldLine) -> str:
    """What is not known of an old line, and what would tell it."""
    if old.by_level == OldLineVerdict.MOVE:
        return translate("WeighInWords", "By the level fills it does not do for this lot: draw the new line.")
    if old.by_level == OldLineVerdict.KEEP:
        return translate(
            "WeighInWords",
            "By the level fills it would do. Only how this powder settles under the shake is not known: "
            "leave the old line, and weigh two fills to it.",
        )
    if level_fills_tell(old):
        return counted.more_level(old.more_fills)
    return translate("WeighInWords", "Weigh fills to the old line first: they tell whether it can stay.")


def level_fills_tell(old: OldLine) -> bool:
    """Whether a few more level fills are what is advised for an old line, before anything is drawn."""
    unsure = old.verdict is OldLineVerdict.WEIGH_MORE and old.by_level is OldLineVerdict.WEIGH_MORE
    return unsure and old.within_reach and old.more_fills <= MOST_PROPOSED


def fills_to_it_tell(old: OldLine) -> bool:
    """Whether fills to an old line are what is advised for it: level fills do not tell whether it does."""
    unsure = old.verdict is OldLineVerdict.WEIGH_MORE and old.by_level is not OldLineVerdict.MOVE
    return unsure and not level_fills_tell(old)


def far_off_words(found: OldLine, system: UnitSystem) -> str:
    """A line far from where the target weight calls for it: what it would deliver, and the likely slip."""
    return translate(
        "WeighInWords",
        "A feeding to a line there would weigh {mass} ({share} against the target). Measure from the rim down along "
        "the wall, not from the bottom up. Is the line really there?",
    ).format(mass=shown.mass(found.delivers_g, system), share=shown.signed_share(found.share))


def would_weigh_words(
    found: OldLine, line_mm: float, band_g: tuple[float, float], system: UnitSystem
) -> tuple[str, Tone]:
    """What a feeding to a line elsewhere than proposed would weigh, and whether that lies in the tolerance's band. The
    line is named: another one, which is drawn, may stand above.
    """
    inside = band_g[0] <= found.delivers_g <= band_g[1]
    words = translate(
        "WeighInWords", "A feeding to a line at {line} would weigh {mass} ({share}): outside the tolerance."
    )
    if inside:
        words = translate(
            "WeighInWords", "A feeding to a line at {line} would weigh {mass} ({share}): within the tolerance."
        )
    told = words.format(
        line=unbroken(shown.length(line_mm, system)),
        mass=unbroken(shown.fine_mass(found.delivers_g, system)),
        share=shown.signed_share(found.share),
    )
    return told, "" if inside else "warn"


def check_words(check: LineCheck, guide: Guide, system: UnitSystem) -> tuple[str, Tone]:
    """The verdict on the drawn line."""
    if check.verdict == LineVerdict.ON_TARGET:
        if guide.line_stays:
            return translate("WeighInWords", "Keep the line: a feeding is within the tolerance."), "good"
        return translate("WeighInWords", "The new line is right: a feeding is within the tolerance."), "good"
    if check.verdict == LineVerdict.MOVE:
        line = guide.findings.line
        if line is not None and line.struck_level:
            return level_words(line), "warn"
        words = translate("WeighInWords", "Move the line to {down} down the wall from the rim, and weigh to it again.")
        if check.is_inside:
            words = translate("WeighInWords", "Better move the line to {down} down the wall, and weigh to it again.")
        down = unbroken(shown.length(check.next_line.down_wall_mm, system))
        return words.format(down=down), "warn" if check.is_inside else "bad"
    if check.verdict == LineVerdict.AS_NEAR_AS_RULED:
        if guide.line_stays:
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
        return _so_far_words(check), ""
    if not check.within_reach or check.more_fills > MOST_PROPOSED:
        if check.result.check_weight_tells:
            return check_weight_words(guide.findings.scale), "warn"
        return translate("WeighInWords", "More fills would hardly tell it better: go on with what is known."), "warn"
    result = check.result
    if check.from_other_bags and check.more_fills <= result.outlook.spare_bags(result.bags):
        return counted.more_to_the_line_from_other_bags(check.more_fills), "warn"
    return counted.more_to_the_line(check.more_fills), "warn"


def _so_far_words(check: LineCheck) -> str:
    """Where the mean of a plan that is not done yet lies; its interval reaches over an end of the tolerance."""
    if check.is_inside:
        return translate("WeighInWords", "The mean is within the tolerance, but not yet known closely enough.")
    return translate("WeighInWords", "The mean is outside the tolerance, but not yet known closely enough.")


def check_reason(check: LineCheck, guide: Guide, system: UnitSystem, *, while_filling: bool = False) -> str:
    """What stands beneath the verdict: what it rests on, and what a line found right still asks for. `while_filling`
    the mean above is not told once more where it is the feeding's, nor what the page's foot says the plan asks for."""
    result = check.result
    same = (check.mean_g, check.low_g, check.high_g) == (result.mean_g, result.low_g, result.high_g)
    told = [band_words(check, guide, system) if while_filling and same else tolerance_words(check, guide, system)]
    if check.verdict == LineVerdict.WEIGH_MORE and guide.plan_is_open(check.result):
        told.insert(0, plan_words(check.result, guide))
    line = guide.findings.line
    drawn_anew = line is not None and not line.struck_level
    if check.verdict == LineVerdict.MOVE and check.is_inside and drawn_anew:
        words = translate(
            "WeighInWords",
            "That is inside it, but each feeding of the lot would stay {share} too little; with the new line it would "
            "be about {mass}.",
        )
        if check.share > 0:
            words = translate(
                "WeighInWords",
                "That is inside it, but each feeding of the lot would stay {share} too much; with the new line it "
                "would be about {mass}.",
            )
        share = shown.unsigned_share(check.share)
        told.append(words.format(share=share, mass=unbroken(shown.fine_mass(check.moved_g, system))))
    right = check.verdict == LineVerdict.ON_TARGET
    if right and check.bags_apart:
        words = translate(
            "WeighInWords",
            "That is the mean of the lot: out of one bag it may be {mass} more or less. Weigh a spot fill of each "
            "bag that is opened.",
        )
        told.append(words.format(mass=shown.fine_mass(check.bag_reach_g, system)))
    if right and not while_filling and (more := still_planned_words(check.result, guide)):
        words = translate(
            "WeighInWords", "The plan still asks for {more}, to see how bags and fills of this lot differ."
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
    return words.format(verdict=verdict, line=line, mass=shown.fine_mass(check.mean_g, system))


def band_words(check: LineCheck, guide: Guide, system: UnitSystem) -> str:
    """What a feeding may weigh."""
    target_g = guide.weigh_in.target_mass_g or check.mean_g
    words = translate("WeighInWords", "Tolerance: {from_mass} to {to_mass} ({target} ± {share}).")
    return words.format(
        from_mass=shown.fine_mass(target_g - check.tolerance_g, system),
        to_mass=shown.fine_mass(target_g + check.tolerance_g, system),
        target=shown.mass(target_g, system),
        share=shown.share(guide.farm.tolerance_share),
    )


def tolerance_words(check: LineCheck, guide: Guide, system: UnitSystem) -> str:
    """A feeding beside the tolerance: what every verdict on a line rests on."""
    words = translate("WeighInWords", "A feeding weighs {mean}, between {low} and {high} (95 %). {tolerance}")
    limits_g = guide.wanted(guide.weigh_in.target_mass_g or check.mean_g)
    mean, low, high = shown.mass_between(check.mean_g, check.low_g, check.high_g, system, limits_g=limits_g)
    return words.format(mean=mean, low=low, high=high, tolerance=band_words(check, guide, system))


def settling_words(check: LineCheck) -> str:
    """What the shake did to the powder."""
    percent = shown.unsigned_share(check.settling_factor - 1)
    if percent == shown.share(0.0):
        return translate("WeighInWords", "Filled to the line, the powder lies as dense as struck level.")
    if check.settling_factor >= 1:
        words = translate("WeighInWords", "Evened by a shake, the powder packs {percent} denser than struck level.")
    else:
        words = translate("WeighInWords", "Filled to the line, the powder lies {percent} looser than struck level.")
    return words.format(percent=percent)
