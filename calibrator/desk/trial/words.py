"""What a trial tells, said kindly and as what to practise."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication

from calibrator.desk import shown
from calibrator.desk.counted import counted
from calibrator.desk.plain_text import on_screen
from calibrator.model import FillWay
from calibrator.science.feeders import FILLS_EACH, Level, Person, Scatter, TrialFindings

translate = QCoreApplication.translate


def finding_words(found: TrialFindings) -> str:
    """The sentence above all the others."""
    apart = [one for one in found.people if one.level in (Level.HEAVY, Level.LIGHT)]
    if apart:
        return translate("Trial", "Not all fill alike")
    if all(one.level is Level.ALIKE for one in found.people):
        return translate("Trial", "All fill alike")
    return translate("Trial", "Cannot tell yet who fills alike")


def person_words(one: Person, way: FillWay) -> str:
    """One person's result and what follows."""
    return f"{_level_words(one, way)} {_scatter_words(one)}".strip()


def _level_words(one: Person, way: FillWay) -> str:
    name = on_screen(one.name)
    if one.level is Level.HEAVY:
        text = translate("Trial", "{name}'s scoops run {share} heavier than the mean of all.")
        return f"{text.format(name=name, share=shown.unsigned_share(one.share))} {less_words(way)}"
    if one.level is Level.LIGHT:
        text = translate("Trial", "{name}'s scoops run {share} lighter than the mean of all.")
        return f"{text.format(name=name, share=shown.unsigned_share(one.share))} {more_words(way)}"
    if one.level is Level.ALIKE:
        return translate("Trial", "{name} fills as the others do.").format(name=name)
    text = translate("Trial", "Whether {name} fills as the others do, these fills cannot tell ({low} to {high}).")
    return text.format(name=name, low=shown.signed_share(one.low), high=shown.signed_share(one.high))


def less_words(way: FillWay) -> str:
    """What a heavy hand practises."""
    if way is FillWay.TO_MARK:
        return translate("Trial", "Practice: shake once, read at eye level, take out what stands above the line.")
    return translate("Trial", "Practice: no tapping, and strike level once with the back of a knife.")


def more_words(way: FillWay) -> str:
    """What a light hand practises."""
    if way is FillWay.TO_MARK:
        return translate("Trial", "Practice: shake once, read at eye level, add until the powder stands at the line.")
    return translate("Trial", "Practice: heap the scoop well before striking it level, so that no corner stays empty.")


def _scatter_words(one: Person) -> str:
    if one.scatter is Scatter.APART:
        text = translate("Trial", "The fills scatter more than the others' ({sd}): do every move the same way.")
        return text.format(sd=shown.share(one.sd_share))
    if one.scatter is Scatter.WIDE:
        text = translate("Trial", "The fills scatter by {sd}: a few practice fills would steady the hand.")
        return text.format(sd=shown.share(one.sd_share))
    if one.scatter is Scatter.STEADY:
        return translate("Trial", "A steady hand ({sd}).").format(sd=shown.share(one.sd_share))
    return translate("Trial", "Weigh {fills} from each person to tell the scatter.").format(
        fills=counted.fills(FILLS_EACH)
    )


def figures_words(found: TrialFindings) -> str:
    """Repeatability and reproducibility, each with its interval, as what they mean."""
    text = translate(
        "Trial",
        "Repeatability: one person's fills scatter by {repeat} ({repeat_low} to {repeat_high}). Reproducibility: fills "
        "by anybody scatter by {whole} ({whole_low} to {whole_high}). One standard deviation each, 95 % intervals.",
    )
    repeat, whole = found.repeatability, found.reproducibility
    return text.format(
        repeat=shown.share(repeat.share), repeat_low=shown.share(repeat.low), repeat_high=shown.share(repeat.high),
        whole=shown.share(whole.share), whole_low=shown.share(whole.low), whole_high=far(whole.high),
    )  # fmt: skip


def far(share: float) -> str:
    """With two people the upper end is so far that a figure would only puzzle."""
    return shown.unsigned_share(share) if share < 1 else translate("Trial", "unknown: too few people")


def asked_words(person: str, missing: int) -> str:
    """What to do next."""
    if not person:
        return translate("Trial", "Say whose fills these are, then weigh the first one.")
    if missing:
        text = translate("Trial", "{name}: {fills} to go.")
        return text.format(name=on_screen(person), fills=counted.fills(missing))
    text = translate("Trial", "{name} is done. Type the next person's name.")
    return text.format(name=on_screen(person))
