"""What densities go with, in words: slope and interval, or a plain cannot tell."""

from __future__ import annotations

from datetime import date, timedelta

from PySide6.QtCore import QCoreApplication

from calibrator.clock import DayForm, day_text
from calibrator.desk import shown
from calibrator.science.why import LEAST_LOTS, Cause, Effect, Told

translate = QCoreApplication.translate


def cause_words(cause: Cause) -> str:
    """What is looked at."""
    return {
        Cause.HUMIDITY: translate("Why", "Room humidity at weigh-in"),
        Cause.AGE: translate("Why", "Age since made"),
        Cause.DATE: translate("Why", "Drift over time"),
        Cause.TIME_OF_YEAR: translate("Why", "Time of year"),
        Cause.PLANT: translate("Why", "Supplier's plant"),
        Cause.AGGLOMERATED: translate("Why", "Agglomerated or not"),
        Cause.SCOOP: translate("Why", "Scoop"),
    }[cause]


def per_words(cause: Cause) -> str:
    """For how much more of the cause an effect is told."""
    return {
        Cause.HUMIDITY: translate("Why", "for 10 points more humidity"),
        Cause.AGE: translate("Why", "for 30 days more"),
        Cause.DATE: translate("Why", "for 30 days later"),
        Cause.TIME_OF_YEAR: translate("Why", "up and down over the year"),
    }.get(cause, "")


def told_words(effect: Effect) -> str:
    """The answer in a word or two."""
    return {
        Told.SEEN: translate("Why", "goes with it"),
        Told.NONE_SEEN: translate("Why", "no effect worth a thought"),
        Told.CANNOT_TELL: translate("Why", "cannot tell"),
        Told.TOO_FEW: translate("Why", "cannot tell: too few lots"),
    }[effect.told]


def effect_words(effect: Effect) -> str:
    """The figure; a dash where there is none."""
    if effect.told is Told.TOO_FEW:
        return "–"
    return shown.signed_share(effect.share)


def interval_words(effect: Effect) -> str:
    """Its 95 % interval; a dash where there is none."""
    if effect.told is Told.TOO_FEW:
        return "–"
    return translate("Why", "{low} to {high}").format(
        low=shown.signed_share(effect.low), high=shown.signed_share(effect.high)
    )


def level_words(cause: Cause, level: str) -> str:
    """A level by name."""
    if cause is Cause.AGGLOMERATED:
        return translate("Why", "agglomerated") if level == "yes" else translate("Why", "not agglomerated")
    return level


def sentence(effect: Effect) -> str:
    """One cause in a sentence."""
    name = cause_words(effect.cause)
    if effect.told is Told.TOO_FEW:
        return translate("Why", "{cause}: cannot tell. {why}").format(cause=name, why=_lacking(effect))
    share, interval = shown.signed_share(effect.share), interval_words(effect)
    if effect.told is Told.CANNOT_TELL:
        text = translate(
            "Why", "{cause}: cannot tell. {share} {per} agrees with these lots, and so does none ({interval})."
        )
    elif effect.told is Told.NONE_SEEN:
        text = translate("Why", "{cause}: no effect worth a thought, {share} {per} ({interval}).")
    else:
        text = translate("Why", "{cause}: density goes with it, {share} {per} ({interval}).")
    told = text.format(cause=name, share=share, per=_per(effect), interval=interval)
    if effect.cause is Cause.TIME_OF_YEAR and effect.told is Told.SEEN:
        told += " " + translate("Why", "Densest about {day}.").format(day=_day(effect.peak_day))
    return told


def _per(effect: Effect) -> str:
    if not effect.pair[0]:
        return per_words(effect.cause)
    low, high = (level_words(effect.cause, level) for level in effect.pair)
    return translate("Why", "for {high} above {low}").format(high=high, low=low)


def _lacking(effect: Effect) -> str:
    if effect.cause in (Cause.HUMIDITY, Cause.AGE) and 0 < effect.lots < LEAST_LOTS:
        return translate("Why", "It takes five lots or more.")  # it was entered for those there are
    return {
        Cause.HUMIDITY: translate("Why", "Enter the room's humidity at each weigh-in."),
        Cause.AGE: translate("Why", "Enter the day on which each lot was made."),
        Cause.TIME_OF_YEAR: translate("Why", "It takes ten lots over a whole year."),
        Cause.PLANT: translate("Why", "Enter the plant code of each lot; it takes two plants."),
        Cause.AGGLOMERATED: translate("Why", "Enter for each lot whether it is agglomerated; it takes both."),
        Cause.SCOOP: translate("Why", "It takes lots weighed with two scoops."),
    }.get(effect.cause, translate("Why", "It takes five lots or more."))


def _day(day_of_year: int) -> str:
    day = date(2025, 1, 1) + timedelta(days=max(0, day_of_year - 1))
    return day_text(day, DayForm.OF_ANY_YEAR)
