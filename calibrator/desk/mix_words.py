"""Checks of the mix in words: verdicts, ways, doubts, causes, cautions, what to do."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication

from calibrator.desk.mix_checks import MixFindings
from calibrator.desk.parts import Tone
from calibrator.desk.speech import decimal_comma
from calibrator.model import FillWay, UnitSystem
from calibrator.science.causes import Cause, Fits, Slip
from calibrator.science.check import Caution, Judged, Pails, Verdict, WouldTell
from calibrator.science.correction import Add, Correction
from calibrator.science.refractometer import Doubt
from calibrator.science.scoops import ScoopCount
from calibrator.science.solids import Solids, SolidsFrom
from calibrator.units import show_mass, show_percent, show_temperature, show_volume

tr = QCoreApplication.translate
FINE_STEP = {UnitSystem.FARM: 0.25, UnitSystem.METRIC: 0.1}


def percent(share: float, digits: int = 1) -> str:
    """A share as a percentage."""
    # The sign must not be torn off at the end of a line.
    return show_percent(100 * share, digits, decimal_comma=decimal_comma()).replace(" ", "\u00a0")


def number(value: float, digits: int = 1) -> str:
    """A plain number, such as degrees Brix."""
    return show_percent(value, digits, decimal_comma=decimal_comma()).removesuffix(" %")


def mass(mass_g: float, system: UnitSystem, resolution_g: float = 0.0) -> str:
    return show_mass(mass_g, system, resolution_g=resolution_g or None, decimal_comma=decimal_comma())


def volume(volume_ml: float, system: UnitSystem) -> str:
    return show_volume(volume_ml, system, step=FINE_STEP[system], decimal_comma=decimal_comma())


def verdict_words(verdict: Verdict) -> str:
    """The verdict as the largest words on the page."""
    return {
        Verdict.INSIDE: tr("MixWords", "As it should be"),
        Verdict.THIN: tr("MixWords", "Too thin"),
        Verdict.STRONG: tr("MixWords", "Too strong"),
        Verdict.CANNOT_TELL: tr("MixWords", "Cannot tell yet"),
    }[verdict]


def verdict_tone(verdict: Verdict) -> Tone:
    tones: dict[Verdict, Tone] = {Verdict.INSIDE: "good", Verdict.CANNOT_TELL: "warn"}
    return tones.get(verdict, "bad")


def solids_words(judged: Judged, solids: Solids) -> str:
    """Solids with their interval beside the aim."""
    text = tr(
        "MixWords",
        "{solids} solids as mixed (95 % interval {low} to {high}). Wanted: {target}, give or take {tolerance}.",
    )
    return text.format(
        solids=percent(solids.share),
        low=percent(judged.low),
        high=percent(judged.high),
        target=percent(judged.target),
        tolerance=percent(judged.tolerance),
    )


def way_name(way: SolidsFrom) -> str:
    """A way from reading to solids, short."""
    return {
        SolidsFrom.OWN_LINE: tr("MixWords", "own line"),
        SolidsFrom.WHOLE_MILK: tr("MixWords", "whole milk's line"),
        SolidsFrom.TRADE_RULE: tr("MixWords", "Brix + 2"),
        SolidsFrom.HYDROMETER: tr("MixWords", "hydrometer"),
        SolidsFrom.JUG: tr("MixWords", "weighed jug"),
        SolidsFrom.FINISHED_VOLUME: tr("MixWords", "finished volume"),
    }[way]


def way_words(way: SolidsFrom, references: int = 0) -> str:
    """Where the solids come from, with what has to be known of that way."""
    if way is SolidsFrom.OWN_LINE:
        text = tr("MixWords", "By the farm's own line for this powder, from {count} weighed mixes.")
        return text.format(count=references)
    return {
        SolidsFrom.WHOLE_MILK: tr(
            "MixWords",
            "By a published line for whole milk (0.9984 Brix + 2.08). Milk replacers differ from it: make an own line.",
        ),
        SolidsFrom.TRADE_RULE: tr("MixWords", "By the rule of thumb Brix + 2, which is rough: make an own line."),
        SolidsFrom.HYDROMETER: tr("MixWords", "By the hydrometer, through the density of the mix."),
        SolidsFrom.JUG: tr("MixWords", "By the weighed jug, through the density of the mix."),
        SolidsFrom.FINISHED_VOLUME: tr(
            "MixWords", "By the finished volume, the powder taken for right: it finds wrong water, never wrong powder."
        ),
    }[way]


def ways_words(found: MixFindings) -> str:
    """All ways beside each other, each with its spread: "own line 13.1 % ± 0.4"."""
    told = tr("MixWords", "{way} {solids} ± {half}")
    pieces = [
        told.format(way=way_name(s.way), solids=percent(s.share), half=number(100 * s.half_width)) for s in found.ways
    ]
    return ", ".join(pieces)


def doubt_words(doubt: Doubt) -> str:
    """What an instrument has to be doubted for."""
    return {
        Doubt.NEVER_ZEROED: tr("MixWords", "This instrument was never checked in plain water: its zero may be off."),
        Doubt.ZERO_OVERDUE: tr("MixWords", "Its last check in plain water is more than a week old: do it again."),
        Doubt.NO_KNOWN_SOLUTION: tr("MixWords", "It was never checked in a sugar solution."),
        Doubt.KNOWN_OVERDUE: tr("MixWords", "Its last check in a sugar solution is more than three months old."),
        Doubt.SCALE_OFF: tr(
            "MixWords", "It read the sugar solution wrong. Do not trust it until it was cleaned and checked again."
        ),
        Doubt.TEMPERATURE_UNKNOWN: tr(
            "MixWords", "It does not compensate for temperature: type how warm the instrument is."
        ),
        Doubt.OUT_OF_REACH: tr("MixWords", "This reading lies beyond the weighed mixes that the line was made from."),
    }[doubt]


def would_tell_words(judged: Judged) -> str:
    """What reading would settle an open verdict."""
    if judged.would_tell is WouldTell.MORE_READINGS:
        if judged.more_readings == 1:
            return tr("MixWords", "One more drop would tell, if it reads like these.")
        text = tr("MixWords", "{count} more drops would tell, if they read like these.")
        return text.format(count=judged.more_readings)
    words = {
        WouldTell.ZERO_CHECK: tr("MixWords", "Check the instrument in plain water; then this reading tells more."),
        WouldTell.OWN_LINE: tr(
            "MixWords", "More drops do not help. An own line from weighed mixes would tell; see the tab Own line."
        ),
        WouldTell.MORE_REFERENCES: tr("MixWords", "Add weighed mixes to the own line; they make it surer."),
        WouldTell.TOO_NEAR: tr(
            "MixWords", "It is too near the limit for this instrument. Weigh the powder of the next batch instead."
        ),
    }
    return words[judged.would_tell] if judged.would_tell else ""


def inside_reading_words(low: float, high: float) -> str:
    """Which readings would surely be inside."""
    text = tr("MixWords", "A mean reading between {low} and {high} Brix would surely be right.")
    return text.format(low=number(low), high=number(high))


def pails_words(verdict: Pails) -> str:
    """The first pail beside the last, and what to do."""
    return {
        Pails.ALIKE: tr("MixWords", "The first pail and the last are alike."),
        Pails.FIRST_STRONGER: tr(
            "MixWords",
            "The first pail is stronger than the last: powder settles. Agitate gently while you feed, and feed at "
            "once after mixing.",
        ),
        Pails.LAST_STRONGER: tr(
            "MixWords",
            "The last pail is stronger than the first: fat rises, from standing or from over-mixing. Mix no longer "
            "than the label says, agitate gently, feed at once.",
        ),
        Pails.CANNOT_TELL: tr(
            "MixWords", "First pail against last: cannot tell. Read three or more drops of each, from fresh samples."
        ),
    }[verdict]


def slip_words(cause: Cause) -> str:
    """A slip with what the solids would be: the person looks, the program only reckons."""
    return tr("MixWords", "{what}: that would give {solids}").format(
        what=_slip(cause.slip), solids=percent(cause.solids_share)
    )


def _slip(slip: Slip) -> str:
    return {
        Slip.NONE: tr("MixWords", "Mixed as on the chart, the reading is off by chance"),
        Slip.OLD_LINE: tr("MixWords", "The line or the chart of the lot before was used"),
        Slip.SCOOP_LESS: tr("MixWords", "One scoopful too few"),
        Slip.SCOOP_MORE: tr("MixWords", "One scoopful too many"),
        Slip.VOLUME_AS_WATER: tr("MixWords", "The finished volume was drawn as water"),
        Slip.WATER_AS_VOLUME: tr("MixWords", "Water and powder together were filled up to the mark for the water"),
        Slip.CALF_LESS: tr("MixWords", "Powder for one calf fewer than the water"),
        Slip.CALF_MORE: tr("MixWords", "Powder for one calf more than the water"),
        Slip.RIM_NOT_LINE: tr("MixWords", "The scoop was struck level in place of filled to its line"),
    }[slip]


def fits_words(fits: Fits) -> str:
    return {
        Fits.WELL: tr("MixWords", "fits well"),
        Fits.POSSIBLE: tr("MixWords", "possible"),
        Fits.NO: tr("MixWords", "does not fit"),
    }[fits]


def caution_words(caution: Caution) -> str:
    """A caution where the hand is."""
    return {
        Caution.SCALD: tr(
            "MixWords",
            "This is hot enough to scald skin. Keep hands and children away, and never feed it before it has cooled.",
        ),
        Caution.TOO_HOT: tr("MixWords", "Too hot to drink: let it cool. Calves want it at 100 to 101 °F (38 °C)."),
        Caution.TOO_COOL: tr("MixWords", "Too cool for calves: below 85 °F (29 °C). They want 100 to 101 °F (38 °C)."),
        Caution.SOLIDS_RISK: tr("MixWords", "Above 17 % solids calves risk scours. Do not feed it like this."),
        Caution.SOLIDS_LOW: tr("MixWords", "Below 12 % solids: weaker than what is usually aimed at."),
        Caution.OSMOLALITY_RISK: tr(
            "MixWords",
            "So much powder brings the osmolality, by an estimate from the label, above 400 mOsm/kg; that can upset "
            "the gut. A refractometer does not measure it.",
        ),
        Caution.YOUNG_CALVES: tr(
            "MixWords",
            "Calves under two weeks are the first to suffer from a strong mix, and all need free water. The label and "
            "your veterinarian decide.",
        ),
    }[caution]


def grave(caution: Caution) -> bool:
    """Whether it is about harm, not about aim."""
    return caution not in (Caution.TOO_COOL, Caution.SOLIDS_LOW)


def correction_words(found: Correction, scoops: ScoopCount | None, system: UnitSystem, step_g: float) -> list[str]:
    """What to do, line by line; first the mix to take out where the vessel would run over."""
    told: list[str] = []
    if not found.fits:
        text = tr("MixWords", "The vessel would run over. First take out {volume} of mix into another vessel.")
        told.append(text.format(volume=volume(found.take_out_ml, system)))
    if found.add is Add.POWDER:
        told.append(_powder_words(found, scoops, system, step_g))
    elif found.add is Add.WATER:
        text = tr("MixWords", "Add {volume} of water at mixing temperature and stir gently.")
        told.append(text.format(volume=volume(found.water_ml, system)))
    text = tr("MixWords", "Then there are {volume} in the vessel, at about {temperature}. Read it again.")
    after = volume(found.volume_after_ml, system)
    told.append(text.format(volume=after, temperature=show_temperature(found.temperature_after_c, system)))
    return told


def _powder_words(found: Correction, scoops: ScoopCount | None, system: UnitSystem, step_g: float) -> str:
    weight = mass(found.powder_g, system, step_g)
    if scoops is None:
        return tr("MixWords", "Add {weight} of powder, weighed, and mix it in.").format(weight=weight)
    text = tr("MixWords", "Add {weight} of powder ({scoops}) and mix it in.")
    return text.format(weight=weight, scoops=count_words(scoops))


def count_words(scoops: ScoopCount) -> str:
    """Scoopfuls with how they are filled: "2 × Red scoop to the mark"."""
    how = {
        FillWay.LEVEL: tr("MixWords", "{count} × {scoop} struck level"),
        FillWay.TO_MARK: tr("MixWords", "{count} × {scoop} to the mark"),
        FillWay.TAPPED: tr("MixWords", "{count} × {scoop} tapped"),
    }
    pieces = [how[way.way].format(count=number(n, 0), scoop=way.name) for way, n in scoops.parts]
    return " + ".join(pieces)
