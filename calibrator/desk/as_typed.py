"""A weight as somebody read it off a scale and typed it: never coarser, always with its unit."""

from __future__ import annotations

from math import isclose

from calibrator.desk import shown
from calibrator.desk.speech import decimal_comma
from calibrator.model import UnitSystem
from calibrator.units import HUNDREDTH_OZ_G, Kind, NotUnderstood, Quantity, edit_text, read, with_unit

SAME = 1e-3
"""What was typed is what was kept, however a file that it came from had rounded it."""
METRIC_UNITS = ("g", "kg", "mg")
_FINER_G = {UnitSystem.METRIC: (1.0, 0.1, 0.01), UnitSystem.FARM: (10 * HUNDREDTH_OZ_G, HUNDREDTH_OZ_G)}


def as_typed(mass_g: float, typed: str, system: UnitSystem, *, resolution_g: float | None = None) -> str:
    """In the farm's units, to what the scale shows or finer where finer was typed; behind it in brackets what was typed
    in other units, or is a sum out of an old table.
    """
    told = shown.mass(mass_g, system, resolution_g=resolution_g)
    # A bare number may have been typed while the farm had the other units: it means what was kept.
    for of in sorted(UnitSystem, key=lambda other: other is not system):
        found = understood(typed, of)
        if found is not None and isclose(found.value, mass_g, rel_tol=SAME):
            as_said = with_unit(typed.strip(), Kind.MASS, of, decimal_comma=decimal_comma())
            if system_of(found.unit) is not system:
                return f"{told} ({as_said})"
            fine = edit_text(found.value, Kind.MASS, system, decimal_comma=decimal_comma())
            ways = (told, as_said if "lb" in told else fine)  # who typed pounds and ounces reads them
            return next((text for text in ways if _means(text, found.value)), as_said)
    return f"{told} ({typed})" if typed else told


def typed_step_g(mass_g: float, typed: str, system: UnitSystem, resolution_g: float) -> float:
    """The step, g, in which a weight reads as it was typed in the farm's units: the scale's `resolution_g`, or the
    finer one that its places take. What was typed in other units, or not as a weight, is told to what the scale
    shows."""
    found = understood(typed, system)
    if found is None or system_of(found.unit) is not system or not isclose(found.value, mass_g, rel_tol=SAME):
        return resolution_g
    steps_g = (resolution_g, *_FINER_G[system])
    reads_so = (each for each in steps_g if _means(shown.mass(mass_g, system, resolution_g=each), mass_g))
    return next(reads_so, resolution_g)


def _means(text: str, mass_g: float) -> bool:
    found = understood(text, UnitSystem.METRIC)
    return found is not None and isclose(found.value, mass_g, rel_tol=1e-6)


def understood(text: str, system: UnitSystem) -> Quantity | None:
    """What a text says as a weight; None where it says none."""
    try:
        return read(text, Kind.MASS, system, decimal_comma=decimal_comma())
    except NotUnderstood:
        return None


def system_of(unit: str) -> UnitSystem:
    """The unit system that a unit of weight belongs to."""
    return UnitSystem.METRIC if unit in METRIC_UNITS else UnitSystem.FARM
