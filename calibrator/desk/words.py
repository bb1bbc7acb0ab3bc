"""The words for the states and steps of the trade, the same on every page."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QCoreApplication

from calibrator.desk.in_use import LotState
from calibrator.desk.parts import Tone
from calibrator.desk.scoop_lines import LineBeside, ScoopState, lines_beside
from calibrator.desk.speech import decimal_comma
from calibrator.desk.standing import Standing
from calibrator.model import FillWay, Lot, Mark, PackageKind, Scoop, Step, UnitSystem
from calibrator.units import show_length, show_mass

translate = QCoreApplication.translate


def state_words(state: LotState) -> str:
    """What a lot has come to."""
    return {
        LotState.DELIVERED: translate("Words", "not weighed in"),
        LotState.BROUGHT_IN: translate("Words", "from a file"),
        LotState.UNDER_WAY: translate("Words", "being weighed"),
        LotState.WAITING: translate("Words", "waiting"),
        LotState.IN_USE: translate("Words", "in use"),
        LotState.LEFT_OVER: translate("Words", "put aside"),
        LotState.FINISHED: translate("Words", "finished"),
    }[state]


def state_tone(state: LotState) -> Tone:
    tones: dict[LotState, Tone] = {LotState.DELIVERED: "warn", LotState.IN_USE: "good"}
    return tones.get(state, "")


def scoop_words(state: ScoopState, *, level: bool = False, drawn: bool = False) -> str:
    """What a scoop is to a lot; one that is used level has no line that could be marked, and one on which the line is
    `drawn` since the weigh-in lacks only its label."""
    if drawn and state is ScoopState.TO_MARK:
        return translate("Words", "line drawn, label to come")
    if level:
        told = {
            ScoopState.MARKED: translate("Words", "used level"),
            ScoopState.TO_MARK: translate("Words", "used level, label to come"),
        }
        if state in told:
            return told[state]
    return {
        ScoopState.MARKED: translate("Words", "marked"),
        ScoopState.TO_MARK: translate("Words", "not marked yet"),
        ScoopState.UNDER_WAY: translate("Words", "being weighed in anew"),
        ScoopState.OTHER_LOT: translate("Words", "bears another lot's line now"),
        ScoopState.NO_LINE: translate("Words", "no line"),
    }[state]


def scoop_words_in_full(state: ScoopState, of: LotState, *, level: bool = False, drawn: bool = False) -> str:
    """As `scoop_words`, for where nothing can be done about it: what ends it stands beside it."""
    told = scoop_words(state, level=level, drawn=drawn)
    if state is not ScoopState.TO_MARK or of is not LotState.IN_USE:
        return told
    return translate("Words", "{state} (once that is done, say so under Today)").format(state=told)


def only_to_line_words(mass: str) -> str:
    """Where level scoopfuls go before the one to the line: that it alone is weighed."""
    text = translate(
        "Words", "Weigh only the one scoopful to the line, about {mass}, without the level ones before it."
    )
    return text.format(mass=mass)


def scoop_tone(state: ScoopState) -> Tone:
    tones: dict[ScoopState, Tone] = {ScoopState.MARKED: "good", ScoopState.NO_LINE: ""}
    return tones.get(state, "warn")


def step_words(step: Step) -> str:
    """The name of a step of the weigh-in."""
    return {
        Step.LOT: translate("Words", "the lot"),
        Step.SCOOP_AND_SCALE: translate("Words", "scoop and scale"),
        Step.LEVEL_FILLS: translate("Words", "level fills"),
        Step.MARK: translate("Words", "the mark"),
        Step.FILLS_TO_MARK: translate("Words", "fills to the line"),
        Step.SIGN_OFF: translate("Words", "sign-off"),
    }[step]


def way_words(way: FillWay) -> str:
    """How a scoop was filled."""
    return {
        FillWay.LEVEL: translate("Words", "struck level"),
        FillWay.TO_MARK: translate("Words", "to the line"),
        FillWay.TAPPED: translate("Words", "tapped"),
    }[way]


def packages_words(lot: Lot, system: UnitSystem | None = None) -> str:
    """How a lot was packed: "40 bags", and where units are given "40 bags of 50 lb"."""
    if lot.package_count is None:
        return ""
    one = lot.package_count == 1
    if lot.package is PackageKind.TOTE:
        many = translate("Words", "{count} tote") if one else translate("Words", "{count} totes")
    else:
        many = translate("Words", "{count} bag") if one else translate("Words", "{count} bags")
    counted = many.format(count=lot.package_count)
    if lot.package_mass_g is None or system is None:
        return counted
    each = lot.package_mass_typed or show_mass(lot.package_mass_g, system, decimal_comma=decimal_comma())
    return translate("Words", "{packages} of {mass}").format(packages=counted, mass=each)


def mark_words(mark: Mark, system: UnitSystem) -> str:
    """How far down the wall a line is: "1 5/16 in"; "struck level" where none is needed."""
    if mark.struck_level:
        return translate("Words", "struck level")
    return line_words(mark.down_wall_mm, system)


def line_words(down_wall_mm: float, system: UnitSystem) -> str:
    """How far down the wall a line is, by the divisions of a ruler."""
    return show_length(down_wall_mm, system, decimal_comma=decimal_comma())


def lines_words(down_wall_mm: Sequence[float], system: UnitSystem) -> str:
    """How far down several lines are: "3/8 in and 1 in"."""
    *before, last = (line_words(mm, system) for mm in down_wall_mm)
    if not before:
        return last
    return translate("Words", "{lines} and {last}").format(lines=", ".join(before), last=last)


def old_lines_words(down_wall_mm: Sequence[float], system: UnitSystem) -> str:
    """What is to be wiped out, within a sentence; blank for nothing."""
    if not down_wall_mm:
        return ""
    text = translate("Words", "the old line ({lines})")
    if len(down_wall_mm) > 1:
        text = translate("Words", "the old lines ({lines})")
    return text.format(lines=lines_words(down_wall_mm, system))


def made_of_words(mark: Mark) -> str:
    """What one feeding by a line takes; blank where that is one scoopful to it."""
    if mark.struck_level:
        return translate("Words", "{count} level").format(count=mark.level_scoopfuls)
    return full_scoops_words(mark.full_scoops)


def full_scoops_words(full_scoops: int) -> str:
    """A feeding of level scoopfuls and one to its line; blank where that one is the feeding."""
    if not full_scoops:
        return ""
    return translate("Words", "{count} struck at the rim + 1 to the line").format(count=full_scoops)


def besides_words(besides: Sequence[LineBeside], system: UnitSystem) -> tuple[str, ...]:
    """Where each line of another feeding is, and what for: "15/16 in for 8.0 oz"."""
    text = translate("Words", "{line} for {target}")
    return tuple(
        text.format(line=line_words(one.down_wall_mm, system), target=beside_target_words(one, system))
        for one in besides
    )


def beside_target_words(beside: LineBeside, system: UnitSystem) -> str:
    """What a line beside the main one is for, as `target_words`."""
    target = show_mass(beside.target_g, system, decimal_comma=decimal_comma())
    if beside.to_line > 1:  # named as on the label and in the tables
        held = show_mass(beside.held_g, system, decimal_comma=decimal_comma())
        return translate("Words", "{held} ({count} for {target})").format(
            held=held, count=beside.to_line, target=target
        )
    return " = ".join(part for part in (target, full_scoops_words(beside.full_scoops)) if part)


def also_to_draw_words(besides: Sequence[LineBeside], system: UnitSystem) -> str:
    """What a label bears beside its main line; blank for nothing."""
    if not besides:
        return ""
    text = translate("Words", "The label has one more line to draw: {lines}.")
    if len(besides) > 1:
        text = translate("Words", "The label has more lines to draw: {lines}.")
    return text.format(lines=", ".join(besides_words(besides, system)))


def target_words(mark: Mark, system: UnitSystem) -> str:
    """The weight that a line is for, and what it is made of: "15 oz = 1 struck at the rim + 1 to the line"."""
    target = show_mass(mark.target_mass_g, system, decimal_comma=decimal_comma())
    return " = ".join(part for part in (target, made_of_words(mark)) if part)


def marks_words(
    marks: Sequence[Mark],
    scoops: Sequence[Scoop],
    system: UnitSystem,
    *,
    made_of: bool = True,
    now: Standing | None = None,
) -> str:
    """The lines of a lot; the scoop is named where there are several. `made_of` tells what a feeding takes by each, and
    with `now` the other lines of its label stand beside it."""
    names = {scoop.id: scoop.name for scoop in scoops}
    lines = [(mark, mark_words(mark, system)) for mark in marks]
    if made_of:
        lines = [
            (mark, f"{line} ({made})" if (made := made_of_words(mark)) and not mark.struck_level else line)
            for mark, line in lines
        ]
    if now is not None:
        lines = [(mark, "; ".join((line, *besides_words(lines_beside(now, mark), system)))) for mark, line in lines]
    told = [(names.get(mark.scoop_id, ""), line) for mark, line in lines]
    if len({mark.scoop_id for mark in marks}) <= 1:
        return ", ".join(line for _, line in told)
    return ", ".join(f"{name} {line}" for name, line in told)


def usual_slips(way: FillWay, *, of_a_lot: bool = True) -> tuple[str, ...]:
    """Why a weighed scoopful is usually struck out; `of_a_lot` where it was out of a bag of a lot."""
    level = translate("Words", "not struck level")
    slips = (
        translate("Words", "typed wrong"),
        translate("Words", "spilled"),
        level if way is FillWay.LEVEL else translate("Words", "not filled to the line"),
        translate("Words", "scale not at zero"),
    )
    of_the_bag = translate("Words", "bag not stirred"), translate("Words", "was of another lot")
    return (*slips, *of_the_bag) if of_a_lot else slips


def watch_words() -> str:
    """Where feedings get too much or too little powder: how it is found out whether the scoop or the count is why."""
    return translate(
        "Words",
        "Watch a batch being mixed: is each scoopful filled as the label says, are as many taken as the chart says?",
    )


def medicated_caution() -> str:
    """Who decides about a medicated powder."""
    return translate(
        "Cautions",
        "Medicated powder: the product label and the feed tag say how much, for which calves and for how "
        "long; ask the veterinarian before feeding it otherwise. Keep it apart and mark the scoop.",
    )
