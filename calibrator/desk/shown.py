"""Figures as the screens show them: those of `units`, with the decimal sign that people here write."""

from __future__ import annotations

from collections.abc import Sequence

from calibrator import units
from calibrator.desk.speech import decimal_comma
from calibrator.model import UnitSystem
from calibrator.science.steps import to_step


def mass(mass_g: float, system: UnitSystem, *, resolution_g: float | None = None) -> str:
    """See `units.show_mass`."""
    return units.show_mass(mass_g, system, resolution_g=resolution_g, decimal_comma=decimal_comma())


def dose(mass_g: float, system: UnitSystem, *, resolution_g: float | None, least_g: float) -> str:
    """See `units.show_dose`."""
    return units.show_dose(mass_g, system, least_g=least_g, resolution_g=resolution_g, decimal_comma=decimal_comma())


def mass_in(mass_g: float, unit: str) -> str:
    """As one number of one unit, "lb" to 0.1 or "g" to 1, whatever its size: an example of what is typed."""
    return units.show_mass(mass_g, UnitSystem.METRIC, style=unit, decimal_comma=decimal_comma())


def mass_between(
    mean_g: float, low_g: float, high_g: float, system: UnitSystem, *, limits_g: Sequence[float] = ()
) -> tuple[str, str, str]:
    """See `units.show_mass_between`."""
    return units.show_mass_between(mean_g, low_g, high_g, system, limits_g=limits_g, decimal_comma=decimal_comma())


def fine_mass(mass_g: float, system: UnitSystem) -> str:
    """A limit or half an interval, told to a digit more than a scale shows: what a verdict turns on must be seen."""
    return mass(mass_g, system, resolution_g=units.HUNDREDTH_OZ_G)


def fine_masses(masses_g: Sequence[float], system: UnitSystem) -> tuple[str, ...]:
    """As `fine_mass`, side by side: to one digit more where two that differ would else read alike."""
    told = tuple(fine_mass(mass_g, system) for mass_g in masses_g)
    if len(set(told)) == len(set(masses_g)):
        return told
    return tuple(mass(mass_g, system, resolution_g=units.HUNDREDTH_OZ_G / 10) for mass_g in masses_g)


def length(length_mm: float, system: UnitSystem) -> str:
    """See `units.show_length`."""
    return units.show_length(length_mm, system, decimal_comma=decimal_comma())


def share(of: float, digits: int = 1) -> str:
    """A share of 1 as percent: "13.0 %" for 0.13."""
    return units.show_percent(100 * of, digits, decimal_comma=decimal_comma())


def unsigned_share(of: float, digits: int = 1) -> str:
    """The same without its sign, where the words beside it tell the side."""
    return share(abs(of), digits)


def osmolality(mosm_per_kg: float) -> int:
    """To 5 mOsm/kg: an estimate is told no finer."""
    return round(to_step(mosm_per_kg, 5.0))


def shares_beside(shares: Sequence[float]) -> tuple[str, ...]:
    """Shares side by side: to one digit more where two that differ would else read alike, and it tells them."""
    told, finer = (tuple(share(of, digits) for of in shares) for digits in (1, 2))
    return finer if len(set(finer)) > len(set(told)) else told


def signed_share(of: float, digits: int = 1) -> str:
    """A share with its sign, as percent: "+2.4 %"; see `units.with_sign`."""
    return units.with_sign(unsigned_share(of, digits), of)


def density(
    g_per_ml: float,
    system: UnitSystem,
    half_width: float | None = None,
    *,
    interval: bool = True,
    brief: bool = False,
    unit: bool = True,
) -> str:
    """Bulk density, the one way of telling it on screen; see `units.show_density`."""
    return units.show_density(
        g_per_ml, system, half_width, interval=interval, brief=brief, unit=unit, decimal_comma=decimal_comma()
    )
