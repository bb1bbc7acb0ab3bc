"""A plan's warmth in words: what to draw and blend, how long a mix stays warm, whose turn it is."""

from __future__ import annotations

from math import inf

from PySide6.QtCore import QCoreApplication

from calibrator.desk.counted import counted
from calibrator.desk.refusals import in_words
from calibrator.desk.sheet_lines import GroupSheet, SheetLine, water_step_ml
from calibrator.desk.speech import decimal_comma
from calibrator.desk.table_words import Telling, each_text, water_text
from calibrator.desk.warmth import HotNeed, Warm, blend_of
from calibrator.model import HotWater, UnitSystem
from calibrator.science.errors import CannotCompute
from calibrator.science.heat import TOO_COOL_C, as_drawn
from calibrator.science.serving import Served
from calibrator.units import show_temperature, show_volume

translate = QCoreApplication.translate


def warm_text(line: SheetLine, known: Warm, hot: HotWater | None, to: Telling) -> str:
    """The water of a batch and what becomes of its warmth; blank where there is nothing to add."""
    told = [_blend(line, known, hot, to), _lands(known, to.system), known.trouble]
    return " ".join(text for text in told if text)


def _blend(line: SheetLine, known: Warm, hot: HotWater | None, to: Telling) -> str:
    at = temperature(known.draw_c, to.system)
    try:
        parts = blend_of(line, known.draw_c, hot)
    except CannotCompute as error:
        return translate("WarmthWords", "Draw water at {temperature}. {trouble}").format(
            temperature=at, trouble=in_words(error)
        )
    if parts is None:
        return (
            ""
            if known.lands_c is None
            else translate("WarmthWords", "Draw water at {temperature}.").format(temperature=at)
        )
    words = translate("WarmthWords", "Draw water at {temperature}: {hot} hot and {cold} cold.")
    water_ml = line.batch.drawn_ml
    drawn = as_drawn(parts, water_ml, water_step_ml(to.farm, water_ml))
    both = (each_text(line, water_text(volume, to)) for volume in drawn)
    return words.format(temperature=at, **dict(zip(("hot", "cold"), both, strict=True)))


def _lands(known: Warm, system: UnitSystem) -> str:
    if known.lands_c is None:
        return ""
    at, cool = temperature(known.lands_c, system), temperature(TOO_COOL_C, system)
    if known.minutes is None:
        return translate("WarmthWords", "The mix lands at {temperature}.").format(temperature=at)
    if known.minutes == inf:
        return translate("WarmthWords", "The mix lands at {temperature} and stays above {cool}.").format(
            temperature=at, cool=cool
        )
    words = translate("WarmthWords", "The mix lands at {temperature}; {minutes} until it is below {cool}, too cool.")
    return words.format(temperature=at, minutes=counted.minutes(int(known.minutes)), cool=cool)


def hot_text(need: HotNeed | None, hot: HotWater | None, system: UnitSystem) -> str:
    """That the tank will not do; blank where it does."""
    if need is None or hot is None or need.missing_ml <= 0:
        return ""
    words = translate(
        "WarmthWords",
        "The hot water will not do: this feeding takes {needed} at {temperature}, the tank gives {tank}. {missing} "
        "are missing; feed in two goes, or heat more first.",
    )
    volumes = {"needed": need.needed_ml, "tank": hot.tank_ml, "missing": need.missing_ml}
    told = {name: show_volume(volume, system, decimal_comma=decimal_comma()) for name, volume in volumes.items()}
    return words.format(temperature=temperature(hot.hot_c, system), **told)


def order_text(turns: tuple[tuple[GroupSheet, Served], ...], system: UnitSystem) -> str:
    """Whose turn it is when, and whether the last calf of a batch still gets it warm."""
    if not turns:
        return ""
    lines = [translate("WarmthWords", "Order of feeding:") + " " + "; ".join(_turn(*turn, system) for turn in turns)]
    if any(times.too_cool for _, times in turns):
        words = translate(
            "WarmthWords",
            "The last calves of a batch would get it below {cool}: mix smaller batches, one after another.",
        )
        lines.append(words.format(cool=temperature(TOO_COOL_C, system)))
    return "\n".join(lines)


def _turn(group: GroupSheet, times: Served, system: UnitSystem) -> str:
    name = group.group.name if group.group and group.group.name else counted.calves(group.today)
    values = {"group": name, "begin": round(times.starts_min), "end": round(times.ends_min)}
    if times.last_calf_c is None:
        return translate("WarmthWords", "{group}, minute {begin} to {end}").format(**values)
    words = translate("WarmthWords", "{group}, minute {begin} to {end}, the last calf of a batch at {temperature}")
    return words.format(**values, temperature=temperature(times.last_calf_c, system))


def temperature(celsius: float, system: UnitSystem) -> str:
    return show_temperature(celsius, system)
