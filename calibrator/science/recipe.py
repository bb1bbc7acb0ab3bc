"""Additives in the same mix: a fat supplement, an electrolyte, anything weighed into the water.

Each additive has its own rate; joined with the powder they behave as one powder, so that all of `mixing` and
`batch` holds for the whole recipe. Additives change how fast a stomach empties and what a calf can stand:
the product's label and a veterinarian decide, not this arithmetic.
"""

from __future__ import annotations

from collections.abc import Sequence

from calibrator.model import MixingRate, RateBasis
from calibrator.science.errors import CannotCompute
from calibrator.science.guard import not_negative, positive
from calibrator.science.mixing import Powder, powder_per_water
from calibrator.science.water import density_g_per_ml
from calibrator.values import dataclass


@dataclass(frozen=True)
class Additive:
    """Something weighed in besides the powder, at a rate of its own."""

    name: str
    powder: Powder
    rate: MixingRate


@dataclass(frozen=True)
class Recipe:
    """Powder and additives as one: `ratio` is all of them per gram of water, `powder` their blend.

    `shares` tells of every gram weighed in how much is powder (first) and how much each additive.
    """

    ratio: float
    powder: Powder
    shares: tuple[float, ...]


def _blend(powders: Sequence[Powder], shares: Sequence[float]) -> Powder:
    def mean(values: Sequence[float]) -> float:
        return sum(value * share for value, share in zip(values, shares, strict=True))

    return Powder(
        specific_volume_ml_per_g=mean([p.specific_volume_ml_per_g for p in powders]),
        dry_matter_share=mean([p.dry_matter_share for p in powders]),
        mosmol_per_g=mean([p.mosmol_per_g for p in powders]),
        mosmol_u_per_g=mean([p.mosmol_u_per_g for p in powders]),
    )


def recipe(rate: MixingRate, powder: Powder, additives: Sequence[Additive], water_temperature_c: float) -> Recipe:
    """The powder's rate and each additive's own rate, all counted on the same water (0–100 °C).

    An additive told for a volume of finished mix counts on the whole mix, powder and all additives in it; the
    powder's own rate is that of powder and water alone. Masses, volumes and osmoles add up; uncertainties of
    osmoles add up too, as for estimates that err together. Raises CannotCompute for impossible rates or
    nothing weighed in.
    """
    powders = [powder, *(a.powder for a in additives)]
    ratios = [powder_per_water(rate, powder, water_temperature_c)]
    ratios += [0.0 if _in_mix(a) else powder_per_water(a.rate, a.powder, water_temperature_c) for a in additives]
    made_ml = _made_ml(ratios, powders, additives, water_temperature_c)
    for number, additive in enumerate(additives, start=1):
        if _in_mix(additive):
            ratios[number] = _in_each_ml(additive) * made_ml
    total = sum(ratios)
    if total <= 0:
        raise CannotCompute("Give the weight of powder in the mix.")
    shares = tuple(r / total for r in ratios)
    return Recipe(total, _blend(powders, shares), shares)


def _in_mix(additive: Additive) -> bool:
    return additive.rate.basis in (RateBasis.PER_FINISHED, RateBasis.MADE_UP)


def _in_each_ml(additive: Additive) -> float:
    mass = not_negative(additive.rate.powder_mass_g, "The weight of powder")
    return mass / positive(additive.rate.volume_ml, "The volume of finished mix")


def _made_ml(
    ratios: Sequence[float], powders: Sequence[Powder], additives: Sequence[Additive], water_temperature_c: float
) -> float:
    """Finished mix from one gram of water, those additives in it that are told by the finished mix."""
    without = 1 / density_g_per_ml(water_temperature_c)
    without += sum(r * p.specific_volume_ml_per_g for r, p in zip(ratios, powders, strict=True))
    room = 1 - sum(_in_each_ml(a) * a.powder.specific_volume_ml_per_g for a in additives if _in_mix(a))
    if room <= 0:
        raise CannotCompute("So much powder leaves no room for water in this volume of mix.")
    return without / room
