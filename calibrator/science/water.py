"""The density of water, and what volume a weighing of water stands for."""

from __future__ import annotations

import math
from functools import lru_cache

from calibrator.science.errors import CannotCompute
from calibrator.science.guard import between, not_negative, positive

AIR_DENSITY_G_PER_ML = 0.0012
"""Air near sea level in a room, the conventional value of OIML D 28 and ISO 4787."""

WEIGHT_DENSITY_G_PER_ML = 8.0
"""The steel that scales are adjusted with, the conventional value of OIML D 28."""

_JOIN_C = 40.0


def _tanaka(t: float) -> float:
    """kg/m³, 0–40 °C. Tanaka et al. 2001, Metrologia 38:301–309."""
    a1, a2, a3, a4, a5 = -3.983035, 301.797, 522528.9, 69.34881, 999.974950
    return a5 * (1 - (t + a1) ** 2 * (t + a2) / (a3 * (t + a4)))


def _kell(t: float) -> float:
    """kg/m³, 0–150 °C. Kell 1975, J. Chem. Eng. Data 20:97–105; takes the scale of 1968, so t is moved."""
    t68 = 1.00024 * t
    top = 999.83952 + t68 * (
        16.945176 + t68 * (-7.9870401e-3 + t68 * (-46.170461e-6 + t68 * (105.56302e-9 - t68 * 280.54253e-12)))
    )
    return top / (1 + 16.879850e-3 * t68)


_KELL_SCALE = _tanaka(_JOIN_C) / _kell(_JOIN_C)


@lru_cache(maxsize=256)
def density_g_per_ml(temperature_c: float) -> float:
    """Density of air-free water at one atmosphere, g/mL, 0–100 °C.

    Tanaka et al. 2001 (recommended by the CIPM) to 40 °C; above it Kell 1975, scaled by about two parts in
    a million so that the two meet at 40 °C without a step. Within 10 parts in a million of IAPWS-95.
    Raises CannotCompute outside the range.
    """
    between(temperature_c, 0.0, 100.0, "The water temperature", "32 and 212 °F (0 and 100 °C)")
    kg_per_m3 = _tanaka(temperature_c) if temperature_c <= _JOIN_C else _KELL_SCALE * _kell(temperature_c)
    return kg_per_m3 / 1000.0


def air_density_g_per_ml(temperature_c: float, pressure_hpa: float = 1013.25, humidity_pct: float = 50.0) -> float:
    """Density of moist air, g/mL, for farms high above the sea: 600–1100 hPa, 0–40 °C, 0–100 % humidity.

    The approximate CIPM formula of OIML R 111-1, E.3, good to a few parts in ten thousand in its own range.
    Raises CannotCompute outside the range.
    """
    between(temperature_c, 0.0, 40.0, "The air temperature", "32 and 104 °F (0 and 40 °C)")
    between(pressure_hpa, 600.0, 1100.0, "The air pressure", "600 and 1100 hPa")
    between(humidity_pct, 0.0, 100.0, "The humidity", "0 and 100 %")
    vapour = 0.009 * humidity_pct * math.exp(0.061 * temperature_c)
    return (0.34848 * pressure_hpa - vapour) / (273.15 + temperature_c) / 1000.0


def volume_per_gram_weighed(
    temperature_c: float,
    *,
    air_density_g_per_ml: float = AIR_DENSITY_G_PER_ML,
    weight_density_g_per_ml: float = WEIGHT_DENSITY_G_PER_ML,
) -> float:
    """mL of water per gram that a scale shows: the factor Z of ISO 8655-6 and ISO 4787.

    Z = (1 − ρ_air/ρ_weights) / (ρ_water − ρ_air). Raises CannotCompute for densities that cannot be.
    """
    water = density_g_per_ml(temperature_c)
    air = not_negative(air_density_g_per_ml, "The density of air")
    if air >= min(water, positive(weight_density_g_per_ml, "The density of the weights")):
        raise CannotCompute("The density of air must be far below that of water.")
    return (1 - air / weight_density_g_per_ml) / (water - air)


def volume_ml(
    mass_g: float,
    temperature_c: float,
    *,
    air_density_g_per_ml: float = AIR_DENSITY_G_PER_ML,
    weight_density_g_per_ml: float = WEIGHT_DENSITY_G_PER_ML,
) -> float:
    """Volume in mL of water that a scale shows as `mass_g`, at 0–100 °C, air buoyancy included.

    ISO 4787 and ISO 8655-6. Raises CannotCompute for a negative mass or a temperature out of range.
    """
    factor = volume_per_gram_weighed(
        temperature_c,
        air_density_g_per_ml=air_density_g_per_ml,
        weight_density_g_per_ml=weight_density_g_per_ml,
    )
    return not_negative(mass_g, "The weight of water") * factor
