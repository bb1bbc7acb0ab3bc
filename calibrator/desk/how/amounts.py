"""Amounts in workings: in the farm's units, each kind in one of them throughout, so that a formula can be followed.

In brackets behind it stands how the screens show a large one, or the grams and litres where a formula takes those.
"""

from __future__ import annotations

from calibrator import units
from calibrator.desk import shown
from calibrator.desk.how.working import figure, interval
from calibrator.desk.speech import decimal_comma
from calibrator.model import UnitSystem
from calibrator.units import Kind

LARGE = 10_000.0
"""From so many g or mL on, kg and L are easier to read."""
MANY = 100.0
"""From so many ounces or quarts on, a tenth is fine enough."""
_METRIC = UnitSystem.METRIC


def mass(mass_g: float, system: UnitSystem, digits: int = 1) -> str:
    """A weight of any size: "10.24 oz", "1090.2 oz (68 lb 2.2 oz)", "290.3 g", "30.901 kg"."""
    if system is _METRIC:
        return figure(mass_g / 1000, 3, "kg") if abs(mass_g) >= LARGE else figure(mass_g, digits, "g")
    told, as_shown = f"{bare_mass(mass_g, system, digits)} oz", shown.mass(mass_g, system)
    return f"{told} ({as_shown})" if "lb" in as_shown else told


def bare_mass(mass_g: float, system: UnitSystem, digits: int = 1) -> str:
    """A weight in g or oz, its unit told elsewhere."""
    return figure(mass_g, digits) if system is _METRIC else _fine(units.in_unit(mass_g, "oz"), digits + 1)


def masses(low_g: float, high_g: float, system: UnitSystem) -> str:
    """From one weight to another; none is below nought."""
    return interval(bare_mass(max(0.0, low_g), system), mass(high_g, system))


def signed_mass(mass_g: float, system: UnitSystem) -> str:
    """A weight with its sign."""
    return units.with_sign(mass(abs(mass_g), system), mass_g)


def mass_and_grams(mass_g: float, system: UnitSystem) -> str:
    """A weight with the grams that a formula takes."""
    return _and_inner(f"{bare_mass(mass_g, system)} oz", mass(mass_g, _METRIC), system)


def volume(volume_ml: float, system: UnitSystem) -> str:
    """Water or mix of any size: "2.25 qt", "218.0 qt (54 gal 2 qt)", "1892.7 mL", "206.300 L"."""
    if system is _METRIC:
        return figure(volume_ml / 1000, 3, "L") if abs(volume_ml) >= LARGE else figure(volume_ml, 1, "mL")
    told = f"{_fine(units.in_unit(volume_ml, 'qt'), 2)} qt"
    as_shown = units.show_volume(volume_ml, system, decimal_comma=decimal_comma())
    return f"{told} ({as_shown})" if "gal" in as_shown else told


def volume_and_litres(volume_ml: float, system: UnitSystem) -> str:
    """Water or mix with the litres that a formula takes."""
    told = f"{_fine(units.in_unit(volume_ml, 'qt'), 2)} qt"
    return _and_inner(told, volume(volume_ml, _METRIC), system)


def room(volume_ml: float, system: UnitSystem) -> str:
    """What a scoop holds: "20.30 fl oz", "600.3 mL"."""
    return f"{bare_room(volume_ml, system)} {'mL' if system is _METRIC else 'fl oz'}"


def bare_room(volume_ml: float, system: UnitSystem) -> str:
    """What a scoop holds in mL or fl oz, its unit told elsewhere."""
    return figure(volume_ml, 1) if system is _METRIC else figure(units.in_unit(volume_ml, "fl oz"), 2)


def room_in_quarts(volume_ml: float, system: UnitSystem) -> str:
    """What a scoop holds, as a density takes it: "0.6344 qt (20.30 fl oz)", "600.3 mL"."""
    told = room(volume_ml, system)
    return told if system is _METRIC else f"{figure(units.in_unit(volume_ml, 'qt'), 4)} qt ({told})"


def density(g_per_ml: float, system: UnitSystem) -> str:
    """A bulk density: "17.102 oz/qt (0.5121 g/mL)", "0.5121 g/mL"."""
    return _and_inner(
        f"{bare_density(g_per_ml, system)} {units.density_unit(system)[0]}", figure(g_per_ml, 4, "g/mL"), system
    )


def bare_density(g_per_ml: float, system: UnitSystem) -> str:
    """A bulk density, its unit told elsewhere."""
    return figure(g_per_ml * units.density_unit(system)[1], 4 if system is _METRIC else 3)


def densities(low: float, high: float, system: UnitSystem) -> str:
    """From one bulk density to another, both in g/mL."""
    return interval(bare_density(low, system), f"{bare_density(high, system)} {units.density_unit(system)[0]}")


def length(length_mm: float, system: UnitSystem) -> str:
    """A place on a scoop: "1.315 in (33.4 mm)", "33.4 mm"."""
    return _and_inner(f"{figure(units.in_unit(length_mm, 'in'), 3)} in", figure(length_mm, 1, "mm"), system)


def temperature(celsius: float, system: UnitSystem) -> str:
    """A temperature to a tenth of a degree."""
    unit = units.default_unit(Kind.TEMPERATURE, system)
    return figure(units.in_default_unit(celsius, Kind.TEMPERATURE, system), 1, unit)


def spread(u: float, unit: str, system: UnitSystem) -> str:
    """A doubt of a weight in g, or of a scoop's volume in mL."""
    if unit == "g":
        return mass(u, system, 2)
    return figure(u, 2, "mL") if system is _METRIC else figure(units.in_unit(u, "qt"), 5, "qt")


def rate(of: str, to: str, system: UnitSystem) -> float:
    """How many of the farm's units of one quantity to one of the other, where g, mL and g/mL stand one to one."""
    if system is _METRIC:
        return 1.0
    per = {"g": units.in_unit(1.0, "oz"), "mL": units.in_unit(1.0, "qt"), "g/mL": units.density_unit(system)[1]}
    return per[of] / per[to]


def _fine(amount: float, digits: int) -> str:
    return figure(amount, digits if abs(amount) < MANY else max(1, digits - 1))


def _and_inner(told: str, inner: str, system: UnitSystem) -> str:
    return inner if system is _METRIC else f"{told} ({inner})"
