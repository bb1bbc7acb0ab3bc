"""What trials of the same people say together, said kindly and as what to practise."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QCoreApplication

from calibrator.desk import shown
from calibrator.desk.counted import counted
from calibrator.desk.plain_text import on_screen
from calibrator.desk.speech import day_text
from calibrator.desk.trial.words import far, less_words, more_words
from calibrator.desk.trial.work import OverTime
from calibrator.model import FeederTrial, FillWay
from calibrator.science.feeders import Level
from calibrator.science.repeat_trials import Habit, Habits

translate = QCoreApplication.translate

PUZZLING_SHARE = 0.5
"""An interval wider than this is left out: it says no more than that nothing can be told."""


def over_finding_words(over: OverTime) -> str:
    """The sentence above what several trials say."""
    trials = counted.trials(len(over.trials))
    if any(one.level in (Level.HEAVY, Level.LIGHT) for one in over.found.people):
        return translate("Trial", "Over {trials}: a habit that lasts").format(trials=trials)
    if over.found.moved:
        return translate("Trial", "Over {trials}: hands changed").format(trials=trials)
    if all(one.level is Level.ALIKE for one in over.found.people):
        return translate("Trial", "Over {trials}: all fill alike").format(trials=trials)
    return translate("Trial", "Over {trials}: habits cannot be told yet").format(trials=trials)


def habit_words(one: Habit, trials: Sequence[FeederTrial], way: FillWay) -> str:
    """One person's share trial by trial, what lasted, what changed, and what to practise."""
    each = "; ".join(
        translate("Trial", "{share} on {day}").format(
            share=shown.signed_share(share), day=day_text(trial.started_at.astimezone().date())
        )
        for share, trial in zip(one.each, trials, strict=True)
    )
    first = translate("Trial", "{name}: {each}.").format(name=on_screen(one.name), each=each)
    return " ".join(part for part in (first, _change_words(one), _level_words(one, way)) if part)


def _change_words(one: Habit) -> str:
    if not one.change.sure:
        return ""
    low, high = sorted((abs(one.change.low), abs(one.change.high)))
    if one.nearer:
        text = translate("Trial", "Nearer to the others by {share} (between {low} and {high}): practice pays.")
    else:
        text = translate("Trial", "Moved by {share} (between {low} and {high}): go through the moves once more.")
    return text.format(
        share=shown.unsigned_share(one.change.share), low=shown.unsigned_share(low), high=shown.unsigned_share(high)
    )


def _level_words(one: Habit, way: FillWay) -> str:
    if one.level is Level.HEAVY:
        text = translate("Trial", "A heavy hand each time (between {low} and {high}).")
        return f"{_between(text, one)} {less_words(way)}"
    if one.level is Level.LIGHT:
        text = translate("Trial", "A light hand each time (between {low} and {high}).")
        return f"{_between(text, one)} {more_words(way)}"
    if one.level is Level.ALIKE:
        return translate("Trial", "Fills as the others do, each time.")
    if one.high - one.low > PUZZLING_SHARE:
        return translate("Trial", "Whether that is a habit, so few trials cannot tell.")
    text = translate("Trial", "Whether that is a habit, these trials cannot tell (between {low} and {high}).")
    return _between(text, one)


def _between(text: str, one: Habit) -> str:
    return text.format(low=shown.signed_share(one.low), high=shown.signed_share(one.high))


def over_words(found: Habits) -> str:
    """The three spreads as what they mean, and whether hands changed from trial to trial."""
    text = translate(
        "Trial",
        "Repeatability: one person's fills in one trial scatter by {repeat} ({repeat_low} to {repeat_high}). Person by "
        "trial: hands differ from one trial to the next by {by_trial} more. Reproducibility: fills by anybody in any "
        "trial scatter by {whole} ({whole_low} to {whole_high}). One standard deviation each, 95 % intervals; each "
        "trial's own scoop, line and powder are taken out.",
    )
    repeat, whole = found.repeatability, found.reproducibility
    return text.format(
        repeat=shown.share(repeat.share), repeat_low=shown.share(repeat.low), repeat_high=shown.share(repeat.high),
        by_trial=shown.unsigned_share(found.by_trial), whole=shown.share(whole.share), whole_low=shown.share(whole.low),
        whole_high=far(whole.high),
    )  # fmt: skip
