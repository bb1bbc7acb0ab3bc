"""The unit in which a scale shows its weights, and in which a weight was typed."""

from __future__ import annotations

from calibrator.desk.speech import decimal_comma
from calibrator.model import Scale, UnitSystem
from calibrator.units import Kind, NotUnderstood, Quantity, default_unit, read

_GRAMS = ("g", "kg", "mg")


def unit_of(scale: Scale | None, system: UnitSystem) -> str | None:
    """The unit of the scale's display, as its step was typed; None where that does not tell it, or tells that a
    number alone has the unit it has everywhere."""
    step = _read(scale.resolution_typed, UnitSystem.METRIC) if scale else None
    told = step.unit if step is not None and not step.bare else None
    return None if told == default_unit(Kind.MASS, system) else told


def typed_in_other_units(typed: str, system: UnitSystem) -> bool:
    """Whether a weight was typed with a unit that is not among those of a unit system."""
    found = _read(typed, system)
    return found is not None and not found.bare and (found.unit in _GRAMS) != (system is UnitSystem.METRIC)


def system_of(unit: str) -> UnitSystem:
    """The unit system that a unit of weight belongs to."""
    return UnitSystem.METRIC if unit in _GRAMS else UnitSystem.FARM


def other_unit(unit: str) -> str:
    """The unit that is likelier meant where a weight in this one cannot be right."""
    return default_unit(Kind.MASS, UnitSystem.FARM if unit in _GRAMS else UnitSystem.METRIC)


def _read(text: str, system: UnitSystem) -> Quantity | None:
    try:
        return read(text, Kind.MASS, system, decimal_comma=decimal_comma())
    except NotUnderstood:
        return None
