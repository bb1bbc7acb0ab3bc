"""How the solids of a mix and the verdict on them came about."""

from __future__ import annotations

from calibrator.desk import shown
from calibrator.desk.how.working import GUM, Part, Working, degrees, figure, translate
from calibrator.desk.mix_checks import MixFindings
from calibrator.desk.mix_words import leaning_words, way_name
from calibrator.science.check import Judged
from calibrator.science.own_line import Line
from calibrator.science.solids import WHOLE_MILK_INTERCEPT_PCT, WHOLE_MILK_SLOPE, Solids, SolidsFrom

LINE_SOURCES = ("Miller and Miller, Statistics and Chemometrics for Analytical Chemistry, 5.6",)


def of_solids(found: MixFindings) -> tuple[Working, ...]:
    """The solids by the way that the verdict rests on; nothing before a reading tells any."""
    best = found.best
    if best is None:
        return ()
    parts = (*_reading(found), _way(found, best), *_doubts(best), *_verdict(found.judged))
    sources = (*(LINE_SOURCES if best.way is SolidsFrom.OWN_LINE else ()), f"{GUM}, 5.1.2, G.4")
    words = translate(
        "How",
        "The drops, corrected for their instrument, are turned into solids. What is not known for sure adds up to the "
        "interval, and the interval is held against the target.",
    )
    return (Working(translate("How", "Solids of the mix, as mixed"), parts, sources, words),)


def _reading(found: MixFindings) -> tuple[Part, ...]:
    if found.read is None or found.shown_brix is None:
        return ()
    working = translate("How", "mean of the drops {shown}, less {taken_off} for zero and temperature")
    taken_off = figure(found.shown_brix - found.read.value, 2)
    told = working.format(shown=figure(found.shown_brix, 2), taken_off=taken_off)
    return (Part(translate("How", "Reading"), told, figure(found.read.value, 2, "°Brix")),)


def _way(found: MixFindings, best: Solids) -> Part:
    return Part(translate("How", "Solids"), _way_words(found, best), shown.share(best.share, 2))


def _way_words(found: MixFindings, best: Solids) -> str:
    if best.way is SolidsFrom.OWN_LINE and found.line is not None:
        return _line_words(found.line)
    if best.way is SolidsFrom.WHOLE_MILK:
        text = translate("How", "whole milk: {slope} × reading + {intercept}, brought to powder as fed")
        return text.format(slope=figure(WHOLE_MILK_SLOPE, 4), intercept=figure(WHOLE_MILK_INTERCEPT_PCT, 3))
    if best.way is SolidsFrom.FINISHED_VOLUME:
        return translate("How", "powder on the chart ÷ (powder + water that leaves room for it in the volume)")
    text = translate("How", "{way}: density of the mix against that of water, by the room that the powder takes")
    return text.format(way=way_name(best.way))


def _line_words(line: Line) -> str:
    text = translate(
        "How", "Brix calibration turned round: (reading {intercept}) ÷ {slope}, from {count} weighed mixes"
    )
    return text.format(intercept=_taken_off(line.intercept), slope=figure(line.slope / 100, 3), count=line.n)


def _taken_off(intercept: float) -> str:
    return f"{'+' if intercept < 0 else '−'} {figure(abs(intercept), 2)}"


def _doubts(best: Solids) -> tuple[Part, ...]:
    readings = translate("How", "spread of one reading ÷ √{count}: {spread} ÷ √{count}")
    together = translate("How", "added as squares; {degrees} degrees of freedom")
    return (
        Part(
            translate("How", "Doubt: how the readings differ"),
            readings.format(count=best.readings, spread=shown.share(best.one_reading_sd, 2)),
            f"± {shown.share(best.readings_u, 2)}",
        ),
        Part(
            translate("How", "Doubt: instrument and way"),
            translate("How", "what more readings would not lessen: zero, scale, temperature, the way itself"),
            f"± {shown.share(best.rest_u, 2)}",
        ),
        Part(
            translate("How", "All doubts together"),
            together.format(degrees=degrees(best.degrees_of_freedom)),
            f"± {shown.share(best.u, 2)}",
        ),
        Part(
            translate("How", "95 % interval"),
            translate("How", "times Student's t for so many degrees of freedom"),
            f"± {shown.share(best.half_width, 2)}",
        ),
    )


def _verdict(judged: Judged | None) -> tuple[Part, ...]:
    if judged is None:
        return ()
    text = translate("How", "{low} to {high} against {target} ± {tolerance}")
    told = text.format(
        low=shown.share(judged.low, 2),
        high=shown.share(judged.high, 2),
        target=shown.share(judged.target, 2),
        tolerance=shown.share(judged.tolerance, 2),
    )
    return (Part(translate("How", "Verdict"), told, leaning_words(judged)),)
