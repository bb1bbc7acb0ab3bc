"""A mix of powder and water: every mixing rate into every other, and what the mix then is.

The one form behind all rates is grams of powder per gram of water ("ratio" here). Volumes of water count at
the stated water temperature, so every rate converts exactly through masses. `solids` is powder weight ÷ mix
weight, as mixed; `dry matter` leaves out the powder's own moisture; grams per litre are per litre of finished
mix. Three different things: a screen says which one it shows.
"""

from __future__ import annotations

from dataclasses import replace

from calibrator.model import Composition, MixingRate, RateBasis
from calibrator.science.errors import CannotCompute
from calibrator.science.guard import between, not_negative, positive
from calibrator.science.powder import (
    LAB_SPREAD_SHARE,
    dry_matter_share,
    osmoles_of_additive_per_g,
    osmoles_per_g,
    specific_volume_ml_per_g,
)
from calibrator.science.water import density_g_per_ml
from calibrator.values import dataclass


@dataclass(frozen=True)
class Powder:
    """What mixing needs to know of a powder (or of several mixed in one recipe)."""

    specific_volume_ml_per_g: float
    dry_matter_share: float
    mosmol_per_g: float
    mosmol_u_per_g: float

    @property
    def water_share(self) -> float:
        """The powder's own moisture."""
        return 1 - self.dry_matter_share


def powder_from(composition: Composition, *, lab_mosmol_per_g: float | None = None) -> Powder:
    """A powder from its label; a laboratory's osmoles take the place of the estimate.

    Raises CannotCompute for an impossible composition or a laboratory's value that is not above zero.
    """
    volume, (osmoles, osmoles_u) = specific_volume_ml_per_g(composition), osmoles_per_g(composition)
    if lab_mosmol_per_g is not None:
        osmoles = positive(lab_mosmol_per_g, "The laboratory's osmoles")
        osmoles_u = LAB_SPREAD_SHARE * osmoles
    return Powder(volume, dry_matter_share(composition), osmoles, osmoles_u)


def additive_from(composition: Composition, lab_mosmol_per_g: float | None = None) -> Powder:
    """An additive from its label or a laboratory's osmoles; without these they are known within wide bounds only.

    Raises CannotCompute as `powder_from`.
    """
    if lab_mosmol_per_g is not None:
        return powder_from(composition, lab_mosmol_per_g=lab_mosmol_per_g)
    osmoles, osmoles_u = osmoles_of_additive_per_g(composition)
    return replace(powder_from(composition), mosmol_per_g=osmoles, mosmol_u_per_g=osmoles_u)


def _on_finished_volume(powder_g: float, volume_ml: float, powder: Powder, water_density: float) -> float:
    room_ml = volume_ml - powder_g * powder.specific_volume_ml_per_g
    if room_ml <= 0:
        raise CannotCompute("So much powder leaves no room for water in this volume of mix.")
    return powder_g / (room_ml * water_density)


def powder_per_water(rate: MixingRate, powder: Powder, water_temperature_c: float) -> float:
    """Grams of powder per gram of water that a mixing rate asks for; water at 0–100 °C.

    Conservation of mass, additive volumes. Raises CannotCompute for rates that no mix can have.
    """
    water_density = density_g_per_ml(water_temperature_c)
    match rate.basis:
        case RateBasis.ON_WATER:
            powder_g = not_negative(rate.powder_mass_g, "The weight of powder")
            return powder_g / (positive(rate.volume_ml, "The volume of water") * water_density)
        case RateBasis.MADE_UP | RateBasis.PER_FINISHED:
            powder_g = not_negative(rate.powder_mass_g, "The weight of powder")
            volume = positive(rate.volume_ml, "The volume of finished mix")
            return _on_finished_volume(powder_g, volume, powder, water_density)
        case RateBasis.SOLIDS:
            solids = between(rate.solids_share, 0.0, 0.95, "The solids of the mix", "0 and 95 %")
            return solids / (1 - solids)
        case _:
            dry = not_negative(rate.solids_share, "The dry matter of the mix")
            if dry > 0.95 * powder.dry_matter_share:
                raise CannotCompute("The powder itself does not hold so much dry matter.")
            return dry / (powder.dry_matter_share - dry)


def rate_in(
    basis: RateBasis, ratio: float, powder: Powder, water_temperature_c: float, volume_ml: float = 1000.0
) -> MixingRate:
    """The same mix told in another basis; `volume_ml` is the volume that a volume basis counts on.

    The exact inverse of `powder_per_water`. Raises CannotCompute for a negative ratio or no volume.
    """
    not_negative(ratio, "The powder per water")
    positive(volume_ml, "The volume that the rate counts on")
    water_density = density_g_per_ml(water_temperature_c)
    match basis:
        case RateBasis.ON_WATER:
            return MixingRate(basis=basis, powder_mass_g=ratio * volume_ml * water_density, volume_ml=volume_ml)
        case RateBasis.MADE_UP | RateBasis.PER_FINISHED:
            per_water = ratio * water_density
            powder_g = volume_ml * per_water / (1 + per_water * powder.specific_volume_ml_per_g)
            return MixingRate(basis=basis, powder_mass_g=powder_g, volume_ml=volume_ml)
        case RateBasis.SOLIDS:
            return MixingRate(basis=basis, solids_share=ratio / (1 + ratio))
        case _:
            return MixingRate(basis=basis, solids_share=ratio * powder.dry_matter_share / (1 + ratio))


@dataclass(frozen=True)
class Mix:
    """A mix of powder and water. Osmolality counts per kg of water."""

    water_g: float
    water_ml: float
    powder_g: float
    volume_ml: float
    mass_g: float
    solids_share: float
    dry_matter_share: float
    powder_g_per_l: float
    osmolality_mosm_per_kg: float
    osmolality_u: float

    @property
    def ratio(self) -> float:
        """Grams of powder per gram of water."""
        return self.powder_g / self.water_g

    @property
    def density_g_per_ml(self) -> float:
        return self.mass_g / self.volume_ml


def mix_on_water(water_ml: float, ratio: float, powder: Powder, water_temperature_c: float) -> Mix:
    """The mix from a volume of water at 0–100 °C and `ratio` grams of powder per gram of it.

    Masses and volumes add up; osmolality is proportional to powder per water. Raises CannotCompute for no
    water or a negative ratio.
    """
    water_g = positive(water_ml, "The volume of water") * density_g_per_ml(water_temperature_c)
    powder_g = not_negative(ratio, "The powder per water") * water_g
    volume, mass = water_ml + powder_g * powder.specific_volume_ml_per_g, water_g + powder_g
    osmolality = 1000.0 * ratio * powder.mosmol_per_g
    return Mix(
        water_g=water_g,
        water_ml=water_ml,
        powder_g=powder_g,
        volume_ml=volume,
        mass_g=mass,
        solids_share=powder_g / mass,
        dry_matter_share=powder_g * powder.dry_matter_share / mass,
        powder_g_per_l=1000.0 * powder_g / volume,
        osmolality_mosm_per_kg=osmolality,
        osmolality_u=1000.0 * ratio * powder.mosmol_u_per_g,
    )


def mix_to_volume(volume_ml: float, ratio: float, powder: Powder, water_temperature_c: float) -> Mix:
    """The mix whose finished volume is `volume_ml`; otherwise as `mix_on_water`."""
    positive(volume_ml, "The volume of finished mix")
    per_water = not_negative(ratio, "The powder per water") * density_g_per_ml(water_temperature_c)
    water_ml = volume_ml / (1 + per_water * powder.specific_volume_ml_per_g)
    return mix_on_water(water_ml, ratio, powder, water_temperature_c)


def mix_of(water_ml: float, powder_g: float, powder: Powder, water_temperature_c: float) -> Mix:
    """The mix that a volume of water and a weight of powder make; otherwise as `mix_on_water`."""
    water_g = positive(water_ml, "The volume of water") * density_g_per_ml(water_temperature_c)
    return mix_on_water(water_ml, not_negative(powder_g, "The weight of powder") / water_g, powder, water_temperature_c)
