"""What a calf gets in a day, beside what the published equations say it needs.

Equations of NASEM 2021, Nutrient Requirements of Dairy Cattle, 8th edition, chapter 10. They describe
healthy calves on average; growth goals, illness and the ration are for a veterinarian or nutritionist.
"""

from __future__ import annotations

from dataclasses import dataclass

from calibrator.model import Composition, PlanGroup
from calibrator.science.errors import CannotCompute
from calibrator.science.feeding import powder_per_calf_g
from calibrator.science.guard import between, not_negative, positive
from calibrator.science.mixing import Powder
from calibrator.science.powder import Part, parts

LIQUID_EMPTY_SHARE, MIXED_EMPTY_SHARE = 0.94, 0.93
LIQUID_EFFICIENCY, MIXED_EFFICIENCY, GAIN_EFFICIENCY = 0.723, 0.69, 0.56
YOUNG_DAYS, YOUNG_CRITICAL_C, OLDER_CRITICAL_C = 21, 15.0, 5.0
DIGESTED_PROTEIN_SHARE = 0.95
MATURE_KG = 700.0
"""Mature weight of a large dairy breed; common practice, no source."""


@dataclass(frozen=True)
class DailySupply:
    """One calf's day from the powder: as fed, dry matter, crude protein, fat in g; energy in Mcal."""

    powder_g: float
    dry_matter_g: float
    protein_g: float
    fat_g: float
    energy_mcal: float


def energy_mcal_per_kg_dm(composition: Composition) -> float:
    """Metabolizable energy of the dry matter, Mcal/kg.

    NASEM 2021: gross energy 0.0565 CP + 0.094 fat + 0.04 of the rest without ash (% of dry matter),
    digestible 0.95 of it, metabolizable 0.96 of that. Raises CannotCompute for a powder without dry matter.
    """
    whole = parts(composition)
    per_dm = 100.0 / positive(1.0 - whole.share(Part.MOISTURE), "The dry matter of the powder")
    protein, fat, ash = (whole.share(p) * per_dm for p in (Part.PROTEIN, Part.FAT, Part.ASH))
    gross = 0.0565 * protein + 0.094 * fat + 0.04 * (100.0 - ash - protein - fat)
    return gross * 0.95 * 0.96


def daily_supply(powder_g_per_day: float, composition: Composition) -> DailySupply:
    """One calf's nutrients from a day's powder, g as sold. Raises CannotCompute for a negative weight."""
    powder = not_negative(powder_g_per_day, "The weight of powder in a day")
    whole = parts(composition)
    dry = powder * (1.0 - whole.share(Part.MOISTURE))
    return DailySupply(
        powder_g=powder,
        dry_matter_g=dry,
        protein_g=powder * whole.share(Part.PROTEIN),
        fat_g=powder * whole.share(Part.FAT),
        energy_mcal=dry / 1000.0 * energy_mcal_per_kg_dm(composition),
    )


def group_supply(group: PlanGroup, composition: Composition, powder: Powder, water_temperature_c: float) -> DailySupply:
    """What one calf of a group gets in a day; the allowance for hoses and pails is not fed, so not counted,
    nor are additives.

    Raises CannotCompute for an impossible group, see `batch.mix_per_calf`.
    """
    feeding_g = powder_per_calf_g(group, powder, water_temperature_c)
    feedings = not_negative(group.feedings_per_day, "The number of feedings a day")
    return daily_supply(feeding_g * feedings, composition)


@dataclass(frozen=True)
class Calf:
    """A calf for the equations: 20–150 kg, age in days, air around it, whether it eats starter grain."""

    weight_kg: float
    age_days: int = 21
    air_c: float = 20.0
    eats_starter: bool = False


def _checked(calf: Calf) -> Calf:
    between(calf.weight_kg, 20.0, 150.0, "The weight of the calf", "44 and 330 lb (20 and 150 kg)")
    between(calf.age_days, 0, 365, "The age of the calf", "0 and 365 days")
    between(calf.air_c, -50.0, 50.0, "The air temperature", "−58 and 122 °F (−50 and 50 °C)")
    return calf


def empty_weight_kg(calf: Calf) -> float:
    """Weight without gut fill: 0.94 of it on milk alone, 0.93 with starter."""
    return _checked(calf).weight_kg * (MIXED_EMPTY_SHARE if calf.eats_starter else LIQUID_EMPTY_SHARE)


def maintenance_net_mcal(calf: Calf) -> float:
    """Net energy to stay alive and warm, Mcal a day.

    0.0769 EBW^0.75, and 0.00201 BW^0.75 for every °C below the lower critical temperature: 15 °C to 21 days
    of age, 5 °C after. Raises CannotCompute for a calf outside the ranges of `Calf`.
    """
    critical = YOUNG_CRITICAL_C if calf.age_days <= YOUNG_DAYS else OLDER_CRITICAL_C
    cold = 0.00201 * max(0.0, critical - calf.air_c) * calf.weight_kg**0.75
    return float(0.0769 * empty_weight_kg(calf) ** 0.75 + cold)


def maintenance_mcal(calf: Calf) -> float:
    """Metabolizable energy for maintenance, Mcal a day: net ÷ 0.723 on milk alone, ÷ 0.69 with starter."""
    return maintenance_net_mcal(calf) / (MIXED_EFFICIENCY if calf.eats_starter else LIQUID_EFFICIENCY)


def _empty_gain_kg(calf: Calf, gain_kg: float) -> float:
    return gain_kg * empty_weight_kg(calf) / calf.weight_kg


def _retained_mcal(calf: Calf, gain_kg: float) -> float:
    return float(_empty_gain_kg(calf, gain_kg) ** 1.10 * empty_weight_kg(calf) ** 0.205)


def energy_needed_mcal(calf: Calf, gain_kg_per_day: float) -> float:
    """Metabolizable energy for maintenance and a daily gain of 0–2 kg, Mcal a day.

    Retained energy EBG^1.10 · EBW^0.205 ÷ 0.56, with the gain taken empty as the body is.
    """
    gain = between(gain_kg_per_day, 0.0, 2.0, "The daily gain", "0 and 4.4 lb (0 and 2 kg)")
    return maintenance_mcal(calf) + _retained_mcal(calf, gain) / GAIN_EFFICIENCY


def gain_kg_from_energy(calf: Calf, energy_mcal: float) -> float:
    """Daily gain that an energy intake allows, kg; 0 where it does not cover maintenance."""
    spare = not_negative(energy_mcal, "The energy in a day") - maintenance_mcal(calf)
    if spare <= 0:
        return 0.0
    empty = empty_weight_kg(calf)
    gain = (spare * GAIN_EFFICIENCY / empty**0.205) ** (1 / 1.10)
    return float(gain * calf.weight_kg / empty)


def protein_needed_g(
    calf: Calf, gain_kg_per_day: float, liquid_dry_matter_g: float, mature_kg: float = MATURE_KG
) -> float:
    """Crude protein of a milk diet for maintenance and a daily gain, g a day.

    Urinary loss 2.75 BW^0.5; scurf 0.20 BW^0.60 and gut loss 11.9 g per kg of liquid dry matter, both
    ÷ 0.66; protein in gain 166.22 EBG + 6.1276 RE/EBG (from memory, not verified) ÷ (0.70 − 0.532 of the
    mature weight reached); 95 % of the diet's protein digested. Raises CannotCompute for a mature weight
    below the calf's own.
    """
    gain = between(gain_kg_per_day, 0.0, 2.0, "The daily gain", "0 and 4.4 lb (0 and 2 kg)")
    weight = _checked(calf).weight_kg
    if positive(mature_kg, "The mature weight") < weight:
        raise CannotCompute("The mature weight must be above the calf's own weight.")
    gut = 11.9 * not_negative(liquid_dry_matter_g, "The dry matter in a day") / 1000.0
    kept = 2.75 * weight**0.5 + (0.20 * weight**0.60 + gut) / 0.66
    empty_gain = _empty_gain_kg(calf, gain)
    grown = 166.22 * empty_gain + 6.1276 * _retained_mcal(calf, gain) / empty_gain if gain else 0.0
    return float(kept + grown / (0.70 - 0.532 * weight / mature_kg)) / DIGESTED_PROTEIN_SHARE
