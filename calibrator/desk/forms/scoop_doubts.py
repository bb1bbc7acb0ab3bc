"""What about a scoop can be but is unlikely, in the words in which it is asked before the scoop is kept."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from PySide6.QtCore import QCoreApplication

from calibrator.desk import shown
from calibrator.desk.forms.reach import USUAL_SCOOP_ML, USUAL_SCOOP_MM, USUAL_WATER_C, Reach
from calibrator.desk.scoop_volume import ScoopVolume
from calibrator.desk.speech import decimal_comma
from calibrator.model import UnitSystem
from calibrator.units import (
    Kind,
    default_unit,
    edit_text,
    in_default_unit,
    show_length,
    show_number,
    show_scoop_volume,
    show_temperature,
    show_volume,
)

translate = QCoreApplication.translate

MUCH_APART_PCT = 20.0  # dimensions against water: a unit or a digit slipped, no ruler is so far off


def odd_water(odd: Sequence[tuple[str, str]]) -> str:
    """That weighings of water do not fit: the one that is odd, by the name of its field and as it was typed, or all."""
    if len(odd) > 1:
        return translate("ScoopDoubts", "The weighings of water do not fit each other.")
    ((name, mass),) = odd
    text = translate("ScoopDoubts", "{name}: {mass} does not fit the others.")
    return text.format(name=name, mass=mass)


def unlikely(
    found: ScoopVolume,
    sizes: Iterable[tuple[str, float]],
    water_c: float | None,
    odd: Sequence[tuple[str, str]],
    system: UnitSystem,
) -> str:
    """A question about the first thing that is unlikely, blank where nothing is. `water_c` is None where no water was
    weighed; each size comes with the name of its field, and so do `odd` weighings.
    """
    comma = decimal_comma()
    if odd:
        right = translate("ScoopDoubts", "Is that right?")
        return f"{odd_water(odd)} {right}"
    if not _within(USUAL_SCOOP_ML, found.counts.volume_ml):
        low, high = (show_volume(limit, system, decimal_comma=comma) for limit in USUAL_SCOOP_ML)
        text = translate(
            "ScoopDoubts",
            "It would hold {volume}. A scoop for powder usually holds {low} to {high}. Is that right?",
        )
        return text.format(volume=_volume(found.counts.volume_ml, system), low=low, high=high)
    for name, size_mm in sizes:
        if not _within(USUAL_SCOOP_MM, size_mm):
            low, high = (show_length(limit, system, decimal_comma=comma) for limit in USUAL_SCOOP_MM)
            size = edit_text(size_mm, Kind.LENGTH, system, decimal_comma=comma)
            text = translate("ScoopDoubts", "{name}: {size}. A scoop usually has {low} to {high}. Is that right?")
            return text.format(name=name, size=size, low=low, high=high)
    if water_c is not None and not _within(USUAL_WATER_C, water_c):
        low, high = (show_temperature(limit, system) for limit in USUAL_WATER_C)
        warmth = edit_text(water_c, Kind.TEMPERATURE, system, decimal_comma=comma)
        text = translate("ScoopDoubts", "Water of {warmth} was weighed. Usual is {low} to {high}. Is that right?")
        return text.format(warmth=warmth, low=low, high=high)
    if found.difference_pct is not None and abs(found.difference_pct) > MUCH_APART_PCT:
        text = translate("ScoopDoubts", "Dimensions and water differ by {percent}. Does {volume} by water count?")
        percent = shown.unsigned_share(found.difference_pct / 100)
        return text.format(percent=percent, volume=_volume(found.counts.volume_ml, system))
    return ""


def _within(reach: Reach, value: float) -> bool:
    return reach[0] <= value <= reach[1]


def _volume(volume_ml: float, system: UnitSystem) -> str:
    """In quarts, as the usual sizes beside it are told, and in millilitres."""
    comma = decimal_comma()
    metric = show_scoop_volume(volume_ml, UnitSystem.METRIC, decimal_comma=comma)
    if system is UnitSystem.METRIC:
        return metric
    quarts = in_default_unit(volume_ml, Kind.VOLUME, system)
    return f"{show_number(quarts, 2, default_unit(Kind.VOLUME, system), decimal_comma=comma)} ({metric})"
