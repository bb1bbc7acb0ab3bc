"""Checks of the mix in words: verdicts, ways, doubts, causes, cautions, what to do."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QCoreApplication

from calibrator.desk import shown
from calibrator.desk.mix_checks import MixFindings, RightReading
from calibrator.desk.needs import STRONG, THIN, leans
from calibrator.desk.parts import Tone
from calibrator.desk.speech import decimal_comma
from calibrator.desk.table_words import fill_text, light_words
from calibrator.model import InstrumentKind, MixCheck, UnitSystem
from calibrator.science.causes import Cause, Fits, Slip
from calibrator.science.check import Caution, Judged, Pails, Verdict, WouldTell
from calibrator.science.correction import Add, Correction
from calibrator.science.mixing import Powder
from calibrator.science.refractometer import Doubt
from calibrator.science.scoops import ScoopCount
from calibrator.science.solids import WHOLE_MILK_INTERCEPT_PCT, WHOLE_MILK_SLOPE, Solids, SolidsFrom, as_dry_matter
from calibrator.units import HUNDREDTH_OZ_G, show_mass, show_number, show_scoopfuls, show_temperature, show_volume

translate = QCoreApplication.translate
OF_RULES = (SolidsFrom.WHOLE_MILK, SolidsFrom.TRADE_RULE)
FINE_STEP = {UnitSystem.FARM: 0.25, UnitSystem.METRIC: 0.1}
FINE_G = {UnitSystem.FARM: HUNDREDTH_OZ_G, UnitSystem.METRIC: 1.0}  # 0.01 oz, 1 g


def number(value: float, digits: int = 1) -> str:
    """A plain number, such as degrees Brix."""
    return show_number(value, digits, decimal_comma=decimal_comma())


def mass(mass_g: float, system: UnitSystem, resolution_g: float = 0.0) -> str:
    return show_mass(mass_g, system, resolution_g=resolution_g or None, decimal_comma=decimal_comma())


def weighed(mass_g: float, system: UnitSystem, resolution_g: float = 0.0, grams_step_g: float = 0.0) -> str:
    """What to weigh, with the grams beside farm units, for kitchen scales that show either."""
    told = mass(mass_g, system, resolution_g)
    if system is UnitSystem.METRIC:
        return told
    return translate("MixWords", "{mass} ({grams})").format(
        mass=told, grams=mass(mass_g, UnitSystem.METRIC, grams_step_g)
    )


def volume(volume_ml: float, system: UnitSystem) -> str:
    return show_volume(volume_ml, system, step=FINE_STEP[system], decimal_comma=decimal_comma())


def verdict_words(verdict: Verdict) -> str:
    """The verdict as the largest words on the page."""
    return {
        Verdict.INSIDE: translate("MixWords", "As it should be"),
        Verdict.THIN: translate("MixWords", "Too thin"),
        Verdict.STRONG: translate("MixWords", "Too strong"),
        Verdict.CANNOT_TELL: translate("MixWords", "Cannot tell yet"),
    }[verdict]


def leaning_words(judged: Judged) -> str:
    """The verdict; where it is open, which way the reading leans if it lies outside what is wanted."""
    if judged.verdict is Verdict.CANNOT_TELL:
        if judged.deviation < -judged.tolerance:
            return translate("MixWords", "Probably too thin, not sure yet")
        if judged.deviation > judged.tolerance:
            return translate("MixWords", "Probably too strong, not sure yet")
        return translate("MixWords", "Looks right")
    return verdict_words(judged.verdict)


def kept_words(check: MixCheck) -> str:
    """The verdict of a kept check as it stood on the page, short enough for a column; a dash where it tells none."""
    if not check.verdict:
        return "–"
    if check.verdict == Verdict.CANNOT_TELL and check.solids_share is not None:
        return {
            THIN: translate("MixWords", "Probably too thin"),
            STRONG: translate("MixWords", "Probably too strong"),
        }.get(leans(check), translate("MixWords", "Looks right"))
    return verdict_words(Verdict(check.verdict))


def leaning_tone(judged: Judged) -> Tone:
    """A reading that says what is wanted is no warning, however little it proves."""
    return "" if looks_right(judged) else verdict_tone(judged.verdict)


def looks_right(judged: Judged) -> bool:
    """Whether an open verdict rests on a reading within what is wanted."""
    return judged.verdict is Verdict.CANNOT_TELL and abs(judged.deviation) <= judged.tolerance


def right_words(brix: float) -> str:
    """What the refractometer shows where all is well."""
    return translate("MixWords", "Right would be about {brix} °Brix.").format(brix=number(brix))


def right_density_words(right: RightReading, system: UnitSystem) -> str:
    """What the hydrometer shows, or the full jug holds, where all is well."""
    warmth = show_temperature(right.mix_c, system)
    if right.kind is InstrumentKind.JUG:
        text = translate("MixWords", "Right would be about {mass} of mix in the full jug, at {warmth}.")
        # A whole percent of solids is but a tenth of an ounce to the quart.
        held = weighed(right.value, system, FINE_G[system], FINE_G[UnitSystem.METRIC])
        return text.format(mass=held, warmth=warmth)
    text = translate("MixWords", "Right would be about {sg} on the hydrometer, in a mix of {warmth}.")
    return text.format(sg=number(right.value, 3), warmth=warmth)


def awaited_words(kind: InstrumentKind) -> str:
    """What is to be read first with the instrument at hand."""
    if kind is InstrumentKind.HYDROMETER:
        return translate(
            "MixWords", "Type what the hydrometer shows in the mix, and how warm the mix is: the verdict comes at once."
        )
    if kind is InstrumentKind.JUG:
        return translate(
            "MixWords", "Type what the mix in the jug weighs, and how warm it is: the verdict comes at once."
        )
    return translate("MixWords", "Type the drops of the first pail, best three: the verdict comes at once.")


def conflict_words(found: MixFindings) -> str:
    """That two ways are at odds and what to do first, short; blank where none are."""
    if not found.at_odds:
        return ""
    if not found.odds_of_volume and found.at_odds_checked:
        return translate("MixWords", "But two instruments disagree: one reads wrong. First read with both again.")
    if not found.odds_of_volume:
        return translate("MixWords", "But two instruments disagree: one reads wrong. First check both in plain water.")
    return translate(
        "MixWords", "But the instrument does not agree with the volume. First stir to the bottom and read both again."
    )


def odds_words(found: MixFindings) -> str:
    """Two ways that cannot both be right: each with its solids, and what to look at before anything is added."""
    by = translate("MixWords", "{solids} by {way}")
    one, other = (by.format(solids=shown.share(way.share), way=way_name(way.way)) for way in found.at_odds_ways)
    if found.odds_of_volume:
        return _odds_of_volume(one, other, found)
    if found.at_odds_checked:
        text = translate(
            "MixWords", "Two instruments disagree ({one}; {other}). Read with both again before you add anything."
        )
    else:
        text = translate(
            "MixWords",
            "Two instruments disagree ({one}; {other}). Check both in plain water before you add anything.",
        )
    return text.format(one=one, other=other)


def stir_words(found: MixFindings) -> str:
    """To stir and read anew, with the instrument that is at odds with the volume."""
    if found.at_odds_ways[0].way in (SolidsFrom.HYDROMETER, SolidsFrom.JUG):
        return translate("MixWords", "stir to the bottom and read again")
    return translate("MixWords", "stir to the bottom and read three fresh drops")


def _odds_of_volume(one: str, other: str, found: MixFindings) -> str:
    text = translate(
        "MixWords",
        "Two ways disagree ({one}; {other}), and wrong powder alone would not make the volume so different. Before you "
        "add anything:",
    )
    filled = translate("MixWords", "count back the scoopfuls, and look whether they were filled to the line")
    if found.lot_before:
        filled = translate(
            "MixWords",
            "count back the scoopfuls, and look whether they were filled to the line of this lot and not of the one "
            "before",
        )
    look = [stir_words(found), translate("MixWords", "read the volume again"), filled]
    if not found.at_odds_checked:
        look.insert(0, translate("MixWords", "check the instrument in plain water"))
    return "\n".join([text.format(one=one, other=other), *(f"{n}. {what}" for n, what in enumerate(look, start=1))])


def when_words(found: MixFindings) -> str:
    """When a correction may be carried out though two ways disagree."""
    if found.odds_of_volume:
        return translate("MixWords", "If both then read the same, powder and water were wrong. Only then:")
    return translate("MixWords", "Only once both agree:")


def powder_verdict_words(verdict: Verdict) -> str:
    """The verdict of a count of bags, in words of powder: it says nothing of the water."""
    return {
        Verdict.INSIDE: translate("MixWords", "As it should be"),
        Verdict.THIN: translate("MixWords", "Too little powder"),
        Verdict.STRONG: translate("MixWords", "Too much powder"),
        Verdict.CANNOT_TELL: translate("MixWords", "Cannot tell yet"),
    }[verdict]


def verdict_tone(verdict: Verdict) -> Tone:
    tones: dict[Verdict, Tone] = {Verdict.INSIDE: "good", Verdict.CANNOT_TELL: "warn"}
    return tones.get(verdict, "bad")


def solids_words(judged: Judged, solids: Solids) -> str:
    """Solids with their interval beside the aim."""
    text = translate(
        "MixWords",
        "{solids} solids as mixed (95 % interval {low} to {high}). Wanted: {target}, give or take {tolerance}.",
    )
    return text.format(
        solids=shown.share(solids.share),
        low=shown.share(judged.low),
        high=shown.share(judged.high),
        target=shown.share(judged.target),
        tolerance=shown.share(judged.tolerance),
    )


def way_name(way: SolidsFrom) -> str:
    """A way from reading to solids, short."""
    return {
        SolidsFrom.OWN_LINE: translate("MixWords", "Brix calibration"),
        SolidsFrom.WHOLE_MILK: translate("MixWords", "whole-milk conversion"),
        SolidsFrom.TRADE_RULE: translate("MixWords", "rule Brix + 2"),
        SolidsFrom.HYDROMETER: translate("MixWords", "hydrometer"),
        SolidsFrom.JUG: translate("MixWords", "weighed jug"),
        SolidsFrom.FINISHED_VOLUME: translate("MixWords", "finished volume"),
    }[way]


def way_words(way: SolidsFrom, references: int = 0) -> str:
    """Where the solids come from, with what has to be known of that way."""
    if way is SolidsFrom.OWN_LINE:
        text = translate("MixWords", "By the farm's own Brix calibration for this powder, from {count} weighed mixes.")
        return text.format(count=references)
    whole_milk = translate(
        "MixWords",
        "By a published calibration for whole milk ({slope} Brix + {intercept}). Milk replacers differ from it: "
        "make your own.",
    ).format(slope=number(WHOLE_MILK_SLOPE, 4), intercept=number(WHOLE_MILK_INTERCEPT_PCT, 2))
    return {
        SolidsFrom.WHOLE_MILK: whole_milk,
        SolidsFrom.TRADE_RULE: translate(
            "MixWords", "By the rule of thumb Brix + 2, which is rough: make your own Brix calibration."
        ),
        SolidsFrom.HYDROMETER: translate("MixWords", "By the hydrometer, through the density of the mix."),
        SolidsFrom.JUG: translate("MixWords", "By the weighed jug, through the density of the mix."),
        SolidsFrom.FINISHED_VOLUME: translate(
            "MixWords", "By the finished volume, the powder taken for right: it finds wrong water, never wrong powder."
        ),
    }[way]


def basis_words(solids: Solids, powder: Powder, *, assumed: bool = False) -> str:
    """What the percentage is of: powder as fed, with its own water (`assumed` where no label tells it), and what that
    is as dry matter.
    """
    text = (
        translate(
            "MixWords",
            "Solids here are powder as fed ÷ mix, the powder's own water counted in: {water} assumed; type the "
            "moisture from the bag under Lots. As dry matter that is {dry}.",
        )
        if assumed
        else translate(
            "MixWords",
            "Solids here are powder as fed ÷ mix, the powder's own {water} of water counted in. As dry matter "
            "that is {dry}.",
        )
    )
    told = text.format(water=shown.share(powder.water_share), dry=shown.share(as_dry_matter(solids.share, powder)))
    if solids.way is SolidsFrom.WHOLE_MILK:
        told += " " + translate(
            "MixWords",
            "The conversion for whole milk tells dry matter and was brought to powder as fed; Brix + 2 is taken for "
            "powder as fed as it stands. Hence the difference.",
        )
    return told


def jug_words(found: MixFindings) -> str:
    """That the jug's weight is corrected for the scale; blank where it is not."""
    if not found.jug_off_share:
        return ""
    text = (
        translate(
            "MixWords", "The scale showed {share} too much at the weigh-in: the jug's weight is corrected for it."
        )
        if found.jug_off_share > 0
        else translate(
            "MixWords", "The scale showed {share} too little at the weigh-in: the jug's weight is corrected for it."
        )
    )
    return text.format(share=shown.unsigned_share(found.jug_off_share))


def ways_words(found: MixFindings) -> str:
    """All ways beside each other, each with its spread: "Brix calibration 13.1 % ± 0.4"."""
    told = translate("MixWords", "{way}: {solids} ± {half}")
    pieces = [
        told.format(way=way_name(s.way), solids=shown.share(s.share), half=number(100 * s.half_width))
        for s in found.ways
    ]
    return "; ".join(pieces)


def doubt_words(doubt: Doubt, *, water_ordered: bool = False) -> str:
    """What an instrument has to be doubted for; `water_ordered` where its check in plain water is ordered already."""
    if water_ordered and doubt is Doubt.NEVER_ZEROED:
        return translate("MixWords", "The instrument was never checked in plain water: its zero may be off.")
    if water_ordered and doubt is Doubt.ZERO_OVERDUE:
        return translate("MixWords", "The instrument's last check in plain water is more than a week old.")
    return {
        Doubt.NEVER_ZEROED: translate(
            "MixWords", "Before the next check read plain water: that was never done, and the zero may be off."
        ),
        Doubt.ZERO_OVERDUE: translate(
            "MixWords", "The instrument's last check in plain water is more than a week old: do it again."
        ),
        Doubt.NO_KNOWN_SOLUTION: translate("MixWords", "The instrument was never checked in a sugar solution."),
        Doubt.KNOWN_OVERDUE: translate(
            "MixWords", "The instrument's last check in a sugar solution is more than three months old."
        ),
        Doubt.SCALE_OFF: translate(
            "MixWords",
            "The instrument read the sugar solution wrong. Do not trust it until it was cleaned and checked again.",
        ),
        Doubt.TEMPERATURE_UNKNOWN: translate(
            "MixWords", "The instrument does not compensate for temperature: type how warm it is."
        ),
        Doubt.ZERO_TEMPERATURE_UNKNOWN: translate(
            "MixWords",
            "The instrument does not compensate for temperature, and nobody told how warm it was in plain water: check "
            "it again.",
        ),
        Doubt.OUT_OF_REACH: translate(
            "MixWords", "This reading lies beyond the weighed mixes that the line was made from."
        ),
        Doubt.ADDITIVES: translate(
            "MixWords",
            "An additive is in the mix, and may show in a refractometer otherwise than powder does: this reading is "
            "less sure. Hydrometer and weighed jug go by the whole recipe.",
        ),
    }[doubt]


def would_tell_words(judged: Judged, way: SolidsFrom, kind: InstrumentKind) -> str:
    """What reading would settle an open verdict that rests on this way; `kind` is the instrument at hand."""
    if way in OF_RULES and looks_right(judged) and judged.would_tell is not WouldTell.TOO_NEAR:
        return translate(
            "MixWords",
            "This reading tells no more than {low} to {high} solids. Weighed mixes tell more, once for this powder: "
            "two make a start, six a sure verdict; see the tab Brix calibration.",
        ).format(low=shown.share(judged.low), high=shown.share(judged.high))
    if way is SolidsFrom.FINISHED_VOLUME and judged.would_tell is not None:
        return volume_alone_words(kind)
    if judged.would_tell is WouldTell.MORE_READINGS:
        if judged.more_readings == 1:
            return translate("MixWords", "One more drop would tell, if it reads like these.")
        text = translate("MixWords", "{count} more drops would tell, if they read like these.")
        return text.format(count=judged.more_readings)
    words = {
        WouldTell.ZERO_CHECK: translate(
            "MixWords", "Check the instrument in plain water; then this reading tells more."
        ),
        WouldTell.OWN_LINE: translate(
            "MixWords",
            "More drops would not settle it. Weighed mixes would, once for this powder: two make a start, six a sure "
            "verdict; see the tab Brix calibration.",
        ),
        WouldTell.MORE_REFERENCES: translate(
            "MixWords", "Add weighed mixes to the Brix calibration; they make it surer."
        ),
        WouldTell.TOO_NEAR: translate(
            "MixWords",
            "The reading is too near the limit for this instrument. Weigh the powder of the next batch instead.",
        ),
    }
    return words[judged.would_tell] if judged.would_tell else ""


def volume_alone_words(kind: InstrumentKind) -> str:
    """What is to be read where a volume alone leaves it open."""
    if kind is InstrumentKind.HYDROMETER:
        return translate("MixWords", "The volume alone does not tell it. Float the hydrometer in the mix.")
    if kind is InstrumentKind.JUG:
        return translate("MixWords", "The volume alone does not tell it. Weigh a jug full of the mix.")
    return translate("MixWords", "The volume alone does not tell it. Read three drops of the mix with a refractometer.")


def may_be_fed_words(judged: Judged, *, alike: bool = True) -> str:
    """For a mix of which nothing is proven, with calves waiting; not `alike` where the pails differ."""
    if looks_right(judged) and not alike:
        return translate("MixWords", "On average nothing speaks against it, but the pails differ: see below.")
    if looks_right(judged):
        return translate("MixWords", "It can be fed: nothing speaks against it.")
    return translate(
        "MixWords",
        "Feed it if water and powder were measured as the chart says. This reading alone is no proof that it is wrong.",
    )


def inside_reading_words(low: float, high: float) -> str:
    """Which readings would surely be inside."""
    text = translate("MixWords", "A mean reading between {low} and {high} °Brix would surely be right.")
    return text.format(low=number(low), high=number(high))


def pails_words(verdict: Pails) -> str:
    """The first pail beside the last, and what to do."""
    return {
        Pails.ALIKE: translate("MixWords", "The first pail and the last are alike."),
        Pails.FIRST_STRONGER: translate(
            "MixWords",
            "The first pail is stronger than the last: powder settles. Agitate gently while you feed, and feed at "
            "once after mixing.",
        ),
        Pails.LAST_STRONGER: translate(
            "MixWords",
            "The last pail is stronger than the first: fat rises, from standing or from over-mixing. Mix no longer "
            "than the label says, agitate gently, feed at once.",
        ),
        Pails.CANNOT_TELL: translate(
            "MixWords", "First pail against last: cannot tell. Read three or more drops of each, from fresh samples."
        ),
    }[verdict]


def slip_words(cause: Cause, system: UnitSystem) -> str:
    """A slip with what the solids would be: the person looks, the program only reckons."""
    if cause.slip is Slip.OTHER_WATER:
        what = _other_water(cause, system)
    else:
        what = _scoopfuls(cause) if cause.count > 1 else _slip(cause.slip)
    if cause.rare:
        what = translate("MixWords", "{what}, more than people usually lose count of").format(what=what)
    return translate("MixWords", "{what}: that would give {solids}").format(
        what=what, solids=shown.share(cause.solids_share)
    )


def counts_differ_words() -> str:
    """Why another number of scoopfuls is added than seems to be missing."""
    return translate(
        "MixWords",
        "What to add is worked out for the volume in the vessel and up to the solids wanted; what is missing, from the "
        "count on the chart to the nearest scoopful. So the two can differ a little.",
    )


def _scoopfuls(cause: Cause) -> str:
    if cause.slip is Slip.SCOOP_LESS:
        return translate("MixWords", "{count} scoopfuls too few").format(count=cause.count)
    return translate("MixWords", "{count} scoopfuls too many").format(count=cause.count)


def _other_water(cause: Cause, system: UnitSystem) -> str:
    words = (
        translate("MixWords", "{volume} of water too much, as the volume in the vessel tells")
        if cause.water_ml > 0
        else translate("MixWords", "{volume} of water too little, as the volume in the vessel tells")
    )
    return words.format(volume=volume(abs(cause.water_ml), system))


def _slip(slip: Slip) -> str:
    return {
        Slip.NONE: translate("MixWords", "Mixed as on the chart, the reading is off by chance"),
        Slip.OLD_LINE: translate("MixWords", "The line or the chart of the lot before was used"),
        Slip.SCOOP_LESS: translate("MixWords", "One scoopful too few"),
        Slip.SCOOP_MORE: translate("MixWords", "One scoopful too many"),
        Slip.VOLUME_AS_WATER: translate("MixWords", "The finished volume was drawn as water"),
        Slip.WATER_AS_VOLUME: translate(
            "MixWords", "Water and powder together were filled up to the mark for the water"
        ),
        Slip.CALF_LESS: translate("MixWords", "Powder for one calf fewer than the water"),
        Slip.CALF_MORE: translate("MixWords", "Powder for one calf more than the water"),
        Slip.RIM_NOT_LINE: translate("MixWords", "The scoop was struck level in place of filled to its line"),
        Slip.NOTHING_BESIDES: translate("MixWords", "The additives were left out"),
    }[slip]


def fits_words(fits: Fits) -> str:
    return {
        Fits.WELL: translate("MixWords", "fits well"),
        Fits.POSSIBLE: translate("MixWords", "possible"),
        Fits.NO: translate("MixWords", "does not fit"),
    }[fits]


def caution_words(caution: Caution, *, unsure: bool = False) -> str:
    """A caution where the hand is; `unsure` where the verdict beside it is not known well yet."""
    if unsure and caution is Caution.SOLIDS_LOW:
        return translate("MixWords", "Perhaps below 12 % solids, which is weaker than what is usually aimed at.")
    return {
        Caution.SCALD: translate(
            "MixWords",
            "This is hot enough to scald skin. Keep hands and children away, and never feed it before it has cooled.",
        ),
        Caution.TOO_HOT: translate(
            "MixWords", "Too hot to drink: let it cool. Calves want it at 100 to 105 °F (38 to 41 °C)."
        ),
        Caution.TOO_COOL: translate(
            "MixWords", "Too cool for calves: below 85 °F (29 °C or less). They want 100 to 105 °F (38 to 41 °C)."
        ),
        Caution.SOLIDS_RISK: translate("MixWords", "Above 17 % solids calves risk scours. Do not feed it like this."),
        Caution.SOLIDS_LOW: translate("MixWords", "Below 12 % solids: weaker than what is usually aimed at."),
        Caution.OSMOLALITY_RISK: translate(
            "MixWords",
            "So much powder brings the osmolality, by an estimate from the label, above 400 mOsm/kg: keep fresh water "
            "before the calves. By common practice scours are a risk from there on; other advice sees it only above "
            "600. A refractometer does not measure it.",
        ),
        Caution.YOUNG_CALVES: translate(
            "MixWords",
            "Calves under two weeks are the first to suffer from a strong mix, and all need free water. The label and "
            "your veterinarian decide.",
        ),
    }[caution]


def thin_yet_strong_words() -> str:
    """In place of the caution for young calves, for a mix below its target and yet above the usual aim."""
    return translate(
        "MixWords",
        "Thinner than you want it, and still stronger than what is usually aimed at: calves under two weeks are the "
        "first to suffer from that, and all need free water. The label and your veterinarian decide.",
    )


def grave(caution: Caution) -> bool:
    """Whether it is about harm, not about aim."""
    return caution not in (Caution.TOO_COOL, Caution.SOLIDS_LOW)


def correction_words(
    found: Correction,
    scoops: ScoopCount | None,
    system: UnitSystem,
    step_g: float,
    *,
    least_g: float = 0.0,
    looked: bool = False,
    names: Sequence[str] = (),
) -> list[str]:
    """What to do, line by line; first the mix to take out where the vessel would run over.

    `looked`, where it is told already what to look at before anything is added; `names` are those of the additives, and
    `least_g` is the least of one that the scale can weigh.
    """
    told: list[str] = []
    if found.far_off and not looked:
        told.append(
            translate(
                "MixWords",
                "That is far off. First stir to the bottom, read again, and count what went in. Only then:",
            )
        )
    if not found.fits:
        text = translate("MixWords", "The vessel would run over. First take out {volume} of mix into another vessel.")
        told.append(text.format(volume=volume(found.take_out_ml, system)))
    if found.add is Add.POWDER:
        told.append(_powder_words(found, scoops, system, step_g))
        told += _others_words(found, names, system, step_g, least_g)
    elif found.add is Add.WATER:
        text = translate("MixWords", "Add {volume} of water at mixing temperature and stir gently.")
        told.append(text.format(volume=volume(found.water_ml, system)))
    text = translate("MixWords", "Then there are {volume} in the vessel, at about {temperature}. Read it again.")
    after = volume(found.volume_after_ml, system)
    told.append(text.format(volume=after, temperature=show_temperature(found.temperature_after_c, system)))
    return told


def _powder_words(found: Correction, scoops: ScoopCount | None, system: UnitSystem, step_g: float) -> str:
    weight = mass(found.powder_g, system, step_g)
    if scoops is None:
        return translate("MixWords", "Add {weight} of powder, weighed, and mix it in.").format(weight=weight)
    text = translate(
        "MixWords", "Add {weight} of powder, weighed, and mix it in. By the scoop: {scoops}, that is {total}."
    )
    return text.format(weight=weight, scoops=count_words(scoops, system), total=mass(scoops.total_g, system, step_g))


def _others_words(
    found: Correction, names: Sequence[str], system: UnitSystem, step_g: float, least_g: float
) -> list[str]:
    """What the additives are in proportion: too much water thins them too, forgotten powder does not."""
    if not found.others_g:
        return []
    doses = [shown.dose(each, system, resolution_g=step_g or None, least_g=least_g) for each in found.others_g]
    pieces = map(" ".join, zip(doses, names, strict=True))
    text = translate(
        "MixWords",
        "The recipe has in proportion to it: {others}. Add that only where it is missing too, and never beyond the "
        "dose on the label; about a medicine ask your veterinarian first.",
    )
    light = light_words(found.others_g, least_g, system)
    return [text.format(others=" + ".join(pieces)), *filter(None, [light])]


def count_words(scoops: ScoopCount, system: UnitSystem) -> str:
    """Scoopfuls with how they are filled, to which line where the label has several: "2 × Red scoop to the line"."""
    return " + ".join(f"{show_scoopfuls(n)} × {way.name} {fill_text(way, system)}" for way, n in scoops.parts)
