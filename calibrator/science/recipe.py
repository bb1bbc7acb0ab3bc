"""Additives in the same mix: a fat supplement, an electrolyte, anything weighed into the water.

Each additive has its own rate; joined with the powder they behave as one powder, so that all of `mixing` and
`batch` holds for the whole recipe. Additives change how fast a stomach empties and what a calf can stand:
the product's label and a veterinarian decide, not this arithmetic.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from enum import Enum

from calibrator.model import MixingRate
from calibrator.science.errors import CannotCompute
from calibrator.science.guard import not_negative, positive
from calibrator.science.mixing import Powder, powder_per_water


class Solute(Enum):
    """What electrolyte labels list: molar mass in g/mol and particles per formula unit when dissolved."""

    SODIUM_CHLORIDE = (58.44, 2)
    POTASSIUM_CHLORIDE = (74.55, 2)
    SODIUM_BICARBONATE = (84.01, 2)
    SODIUM_ACETATE = (82.03, 2)
    TRISODIUM_CITRATE_DIHYDRATE = (294.10, 4)
    GLUCOSE = (180.16, 1)
    GLYCINE = (75.07, 1)

    @property
    def mosmol_per_g(self) -> float:
        molar_mass, particles = self.value
        return 1000.0 * particles / molar_mass


def osmoles_from_solutes(masses_g: Mapping[Solute, float], other_g: float = 0.0) -> float:
    """Milliosmoles per gram of an electrolyte whose ingredients are known by weight.

    Ideal solution: every formula unit falls apart wholly; `other_g` of the product is taken to bring none.
    Real solutions stay a few percent below. Raises CannotCompute for negative weights or nothing at all.
    """
    known = [not_negative(mass, "The weight of each ingredient") for mass in masses_g.values()]
    total = positive(sum(known) + not_negative(other_g, "The weight of the rest"), "The weight of the product")
    return sum(s.mosmol_per_g * mass for s, mass in zip(masses_g, known, strict=True)) / total


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

    Masses, volumes and osmoles add up; uncertainties of osmoles add up too, as for estimates that err
    together. Raises CannotCompute for impossible rates or nothing weighed in.
    """
    powders = [powder, *(a.powder for a in additives)]
    rates = [rate, *(a.rate for a in additives)]
    ratios = [powder_per_water(r, p, water_temperature_c) for r, p in zip(rates, powders, strict=True)]
    total = sum(ratios)
    if total <= 0:
        raise CannotCompute("Give the weight of powder in the mix.")
    shares = tuple(r / total for r in ratios)
    return Recipe(total, _blend(powders, shares), shares)
