"""Solids by way of density: a hydrometer in the mix, a jug of known volume weighed, the finished volume.

Powder takes its own room in the mix (specific volume), so that a density tells how much of it is there. A
hydrometer reads the mix itself; the SG scale of a refractometer is something else (see `sucrose`).
"""

from __future__ import annotations

import math
from collections.abc import Sequence

from calibrator.science.errors import CannotCompute
from calibrator.science.guard import between, not_negative, positive
from calibrator.science.mixing import Powder, mix_on_water
from calibrator.science.refractometer import Doubt
from calibrator.science.scale import ScaleFacts
from calibrator.science.solids import Read, Solids, SolidsFrom, solids_read
from calibrator.science.stats import NORMAL_95, mean_of, rounding_u, sum_of_squares, two_roundings_u
from calibrator.science.water import density_g_per_ml
from calibrator.values import dataclass

SG_SD, SG_DF = 0.0005, 6.0
"""Repeated hydrometer readings are taken to spread so: common practice, no source."""

JUG_SD_SHARE, JUG_DF = 0.0015, 6.0
"""Filling a jug to the same level again: common practice, no source."""

VOLUME_U_SHARE = 0.01
"""Reading the finished volume off a vessel: common practice, no source."""

SPECIFIC_VOLUME_U = 0.012
"""Doubt in the room that a gram of powder takes, mL/g, where its label tells it: common practice, no source."""

OTHERS_VOLUME_U = 0.05
"""The same of an additive, of whose label less is typed: common practice, no source. A rehydration salt of sodium
chloride, bicarbonate and glucose takes 0.04 mL/g less than its ash and sugar are reckoned to."""

GLASS_PER_C = 25e-6
"""Glass grows by so much of its volume per °C (ISO 649-1, as widely reprinted)."""


def blend_volume_u(others_share: float) -> float:
    """Doubt in the room that a gram takes of which so much (0 … 1) is additives, mL/g."""
    return math.hypot((1 - others_share) * SPECIFIC_VOLUME_U, others_share * OTHERS_VOLUME_U)


def _share_of_density(mix_g_per_ml: float, powder: Powder, temperature_c: float) -> tuple[float, float, float]:
    """Solids, and what they change by per density and per specific volume; additive volumes."""
    water = 1 / density_g_per_ml(temperature_c)
    room = water - powder.specific_volume_ml_per_g
    if room <= 0.05:
        raise CannotCompute("This powder is nearly as light as water, so that density tells nothing of its solids.")
    share = (water - 1 / positive(mix_g_per_ml, "The density of the mix")) / room
    return share, 1 / mix_g_per_ml**2 / room, share / room


def _density_of_share(share: float, powder: Powder, temperature_c: float) -> float:
    """The density of a mix with these solids, g/mL: `_share_of_density`, the other way round."""
    dry = between(share, 0.0, 0.6, "The solids", "0 and 60 %")
    return mix_on_water(1000.0, dry / (1 - dry), powder, temperature_c).density_g_per_ml


@dataclass(frozen=True)
class Density:
    """A density of the mix, g/mL, at its temperature: spread of one reading with its degrees of freedom, how
    many readings, what all of them share, and the doubt in the temperature."""

    value: float
    temperature_c: float
    sd: float
    df: float
    count: int
    common_u: float
    temperature_u_c: float = 0.0


def by_density(
    density: Density, powder: Powder, way: SolidsFrom, specific_volume_u: float, doubts: tuple[Doubt, ...] = ()
) -> Solids:
    """Solids from a density of the mix: masses and volumes add up. Raises CannotCompute below water's."""
    share, per_density, per_volume = _share_of_density(density.value, powder, density.temperature_c)
    if share < -0.02:
        raise CannotCompute("This would be lighter than water: check the reading, and the instrument in plain water.")
    warm_u = _per_degree(density, powder) * density.temperature_u_c
    rest = math.hypot(per_density * density.common_u, per_volume * specific_volume_u, warm_u)
    read = Read(per_density * density.sd, density.df, density.count, rest, per_density)
    return solids_read(max(0.0, share), way, read, doubts)


def _per_degree(density: Density, powder: Powder) -> float:
    """What the solids change by for one degree, the density staying as read."""
    warmer, cooler = (_share_of_density(density.value, powder, density.temperature_c + off)[0] for off in (0.25, -0.25))
    return (warmer - cooler) / 0.5


def _spread(values: Sequence[float], assumed_sd: float, assumed_df: float) -> tuple[float, float]:
    df = assumed_df + len(values) - 1
    return math.sqrt((assumed_df * assumed_sd**2 + sum_of_squares(values)) / df), df


@dataclass(frozen=True)
class Hydrometer:
    """A floating hydrometer: the temperature at which its scale holds, its division in SG, and what it shows
    too much in plain water (`offset`; None where that was not checked for long)."""

    reference_c: float = 20.0
    division: float = 0.001
    offset: float | None = None
    overdue: bool = False


def water_shows_sg(hydrometer: Hydrometer, temperature_c: float) -> float:
    """What a sound hydrometer shows in plain water of this temperature."""
    return density_g_per_ml(temperature_c) * _sg_per_density(hydrometer, temperature_c)


def _sg_per_density(hydrometer: Hydrometer, temperature_c: float) -> float:
    """What a sound one shows for each g/mL: its scale is the density over that of water at its own temperature, and
    the glass has grown with warmth (ISO 649-1)."""
    grown = 1 + GLASS_PER_C * (temperature_c - hydrometer.reference_c)
    return grown / density_g_per_ml(hydrometer.reference_c)


def by_hydrometer(
    readings_sg: Sequence[float],
    hydrometer: Hydrometer,
    powder: Powder,
    temperature_c: float,
    specific_volume_u: float = SPECIFIC_VOLUME_U,
    temperature_u_c: float = 0.0,
) -> Solids:
    """From a hydrometer that floats in the mix itself (0.98 … 1.15) at the temperature of the mix.

    Its reading is the mix's density ÷ that of water at the reference temperature, the glass having grown
    with warmth (ISO 649-1). Raises CannotCompute for impossible readings.
    """
    if not readings_sg:
        raise CannotCompute("Read the hydrometer once at least.")
    for sg in readings_sg:
        between(sg, 0.98, 1.15, "A hydrometer reading", "0.980 and 1.150")
    to_density = 1 / _sg_per_density(hydrometer, temperature_c)
    shown = mean_of(readings_sg) - (hydrometer.offset or 0.0)
    sd, df = _spread(readings_sg, max(SG_SD, rounding_u(hydrometer.division)), SG_DF)
    unchecked = hydrometer.offset is None or hydrometer.overdue
    common = math.hypot(rounding_u(hydrometer.division), hydrometer.division if unchecked else 0.0)
    doubts = (Doubt.NEVER_ZEROED,) if hydrometer.offset is None else (Doubt.ZERO_OVERDUE,) if hydrometer.overdue else ()
    value, count = shown * to_density, len(readings_sg)
    density = Density(value, temperature_c, sd * to_density, df, count, common * to_density, temperature_u_c)
    return by_density(density, powder, SolidsFrom.HYDROMETER, specific_volume_u, doubts)


def mix_shows_sg(share: float, hydrometer: Hydrometer, powder: Powder, temperature_c: float) -> float:
    """What a hydrometer shows in a mix with this share of solids (0 … 0.6) at this temperature: `by_hydrometer`, the
    other way round, its error in plain water with it.

    Volumes add up, and the glass has grown with warmth (ISO 649-1). Raises CannotCompute for an impossible share.
    """
    sound = _density_of_share(share, powder, temperature_c) * _sg_per_density(hydrometer, temperature_c)
    return sound + (hydrometer.offset or 0.0)


def mix_in_jug_g(share: float, jug_ml: float, powder: Powder, temperature_c: float) -> float:
    """What a jug of this volume, mL, holds of a mix with this share of solids (0 … 0.6) at this temperature, g:
    `by_jug`, the other way round.

    Volumes add up. Raises CannotCompute for an impossible share or volume.
    """
    return positive(jug_ml, "The volume of the jug") * _density_of_share(share, powder, temperature_c)


def by_jug(
    masses_g: Sequence[float],
    jug_ml: float,
    jug_u_ml: float,
    scale: ScaleFacts,
    powder: Powder,
    temperature_c: float,
    specific_volume_u: float = SPECIFIC_VOLUME_U,
    temperature_u_c: float = 0.0,
) -> Solids:
    """From a jug of known volume, weighed full of mix (net, g, as shown) once or several times.

    `scale` is what is known of the scale beside the jug's volume: of one that told that volume by water its error
    cancels, and its step alone is left. Raises CannotCompute for impossible weights.
    """
    if not masses_g:
        raise CannotCompute("Weigh the jug once at least.")
    volume = positive(jug_ml, "The volume of the jug")
    there_g = [scale.checked().corrected_g(positive(m, "The weight of the mix in the jug")) for m in masses_g]
    densities = [mass_g / volume for mass_g in there_g]
    for density in densities:
        between(density, 0.9, 1.2, "The weight of a liter of mix", "0.9 and 1.2 kg; was the empty jug taken off?")
    sd, df = _spread(densities, JUG_SD_SHARE, JUG_DF)
    rounding = two_roundings_u(scale.resolution_g) / volume
    of_jug_g = mean_of(densities) * not_negative(jug_u_ml, "The doubt in the jug")
    common = math.hypot(of_jug_g, scale.error_u_g(mean_of(there_g))) / volume
    value, count = mean_of(densities), len(masses_g)
    found = Density(value, temperature_c, math.hypot(sd, rounding), df, count, common, temperature_u_c)
    return by_density(found, powder, SolidsFrom.JUG, specific_volume_u)


def by_finished_volume(
    volume_ml: float,
    volume_u_ml: float,
    powder_g: float,
    powder_u_g: float,
    powder: Powder,
    temperature_c: float,
) -> Solids:
    """From the finished volume in the vessel, the powder in it taken for right within its own spread.

    It finds water that was measured wrongly, never powder that was. Raises CannotCompute for a volume that
    this much powder cannot be in.
    """
    volume, mass = positive(volume_ml, "The finished volume"), positive(powder_g, "The weight of powder")
    density = density_g_per_ml(temperature_c)
    water_g = (volume - mass * powder.specific_volume_ml_per_g) * density
    if water_g <= 0:
        raise CannotCompute("So much powder does not fit into this volume: check both.")
    share = mass / (mass + water_g)
    per_powder = share * (1 - share) / mass + share**2 * powder.specific_volume_ml_per_g * density / mass
    per_volume = share**2 * density / mass
    rest = math.hypot(per_powder * powder_u_g, per_volume * volume_u_ml)
    return solids_read(share, SolidsFrom.FINISHED_VOLUME, Read(0.0, math.inf, 1, rest, -per_volume))


def cannot_see_powder(
    read_ml: float, u_ml: float, seen: Solids, water_ml: float, powder: Powder, water_c: float
) -> bool:
    """Whether a finished volume is (95 %) what the water of the chart comes to with as much powder as an instrument saw
    in it.

    Powder takes but its own room: a kilogram too little in 100 L is 0.7 % less volume, finer than a volume is read.
    Such a volume does not gainsay an instrument, however far apart their solids are. Volumes add up. Raises
    CannotCompute for volumes not above zero.
    """
    mix = mix_on_water(water_ml, seen.share / (1 - seen.share), powder, water_c)
    per_share = mix.water_g * powder.specific_volume_ml_per_g / (1 - seen.share) ** 2
    off_ml = abs(positive(read_ml, "The finished volume") - mix.volume_ml)
    return off_ml <= NORMAL_95 * math.hypot(u_ml, per_share * seen.u)
