"""Figures as the screens show them: those of `units`, with the decimal sign that people here write."""

from __future__ import annotations

from calibrator import units
from calibrator.desk.speech import decimal_comma
from calibrator.model import UnitSystem


def mass(mass_g: float, system: UnitSystem, *, resolution_g: float | None = None) -> str:
    """See `units.show_mass`."""
    return units.show_mass(mass_g, system, resolution_g=resolution_g, decimal_comma=decimal_comma())


def length(length_mm: float, system: UnitSystem) -> str:
    """See `units.show_length`."""
    return units.show_length(length_mm, system, decimal_comma=decimal_comma())


def percent(value: float) -> str:
    """See `units.show_percent`."""
    return units.show_percent(value, decimal_comma=decimal_comma())


def with_uncertainty(value: float, uncertainty: float, unit: str) -> str:
    """See `units.show_with_uncertainty`."""
    return units.show_with_uncertainty(value, uncertainty, unit, decimal_comma=decimal_comma())


def density(g_per_ml: float, half_width: float, system: UnitSystem) -> str:
    """Bulk density with its interval's half-width: "0.498 ± 0.011 g/mL", in farm units with "(16.6 oz/qt)" behind."""
    told = with_uncertainty(g_per_ml, half_width, "g/mL")
    if system is UnitSystem.METRIC:
        return told
    return f"{told} ({units.show_density_oz_per_qt(g_per_ml, decimal_comma=decimal_comma())})"
