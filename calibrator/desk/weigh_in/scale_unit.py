"""The unit in which a scale shows its weights, and the one that was likelier meant."""

from __future__ import annotations

from calibrator.desk.as_typed import system_of, understood
from calibrator.model import Scale, UnitSystem
from calibrator.units import Kind, default_unit


def unit_of(scale: Scale | None, system: UnitSystem) -> str | None:
    """The unit of the scale's display, as its step was typed; None where that does not tell it, or tells that a
    number alone has the unit it has everywhere."""
    step = understood(scale.resolution_typed, UnitSystem.METRIC) if scale else None
    told = step.unit if step is not None and not step.bare else None
    return None if told == default_unit(Kind.MASS, system) else told


def other_unit(unit: str) -> str:
    """The unit that is likelier meant where a weight in this one cannot be right."""
    other = UnitSystem.FARM if system_of(unit) is UnitSystem.METRIC else UnitSystem.METRIC
    return default_unit(Kind.MASS, other)
