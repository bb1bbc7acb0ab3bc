"""What a label's composition tells about a powder in water: room it takes, heat it holds, osmoles.

The label's guaranteed analysis is in percent of the powder as sold. Where it is silent, `assumed_parts` says
what is taken instead; carbohydrate (nearly all lactose) is what remains to 100 %.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping
from dataclasses import replace
from enum import StrEnum

from calibrator.model import Composition
from calibrator.science.errors import CannotCompute
from calibrator.science.guard import between
from calibrator.values import dataclass


class Part(StrEnum):
    """The parts that a powder is made of."""

    PROTEIN = "protein"
    FAT = "fat"
    FIBRE = "fibre"
    ASH = "ash"
    MOISTURE = "moisture"
    CARBOHYDRATE = "carbohydrate"


TYPICAL_PCT: Mapping[Part, float] = {
    Part.PROTEIN: 26.0,
    Part.FAT: 20.0,
    Part.FIBRE: 0.15,
    Part.ASH: 7.0,
    Part.MOISTURE: 4.0,
}
"""Taken where a label is silent. Common practice, no source."""

TYPICAL_SPREAD_PCT: Mapping[Part, float] = {
    Part.PROTEIN: 3.0,
    Part.FAT: 3.0,
    Part.FIBRE: 0.1,
    Part.ASH: 1.0,
    Part.MOISTURE: 1.0,
}
"""Standard uncertainty of a part that is taken from `TYPICAL_PCT`. Common practice, no source."""

APPARENT_DENSITY_G_PER_ML: Mapping[Part, float] = {
    Part.PROTEIN: 1.40,
    Part.FAT: 0.918,
    Part.FIBRE: 1.60,
    Part.ASH: 1.85,
    Part.MOISTURE: 0.998,
    Part.CARBOHYDRATE: 1.78,
}
"""In solution at 20 °C: Walstra et al., Dairy Science and Technology (from memory, not verified); fibre,
of which replacers hold next to none, as the middle of protein and carbohydrate."""

_CHOI_OKOS_HEAT: Mapping[Part, tuple[float, float, float]] = {
    Part.PROTEIN: (2.0082, 1.2089e-3, -1.3129e-6),
    Part.FAT: (1.9842, 1.4733e-3, -4.8008e-6),
    Part.FIBRE: (1.8459, 1.8306e-3, -4.6509e-6),
    Part.ASH: (1.0926, 1.8896e-3, -3.6817e-6),
    Part.MOISTURE: (4.1289, -9.0864e-5, 5.4731e-6),
    Part.CARBOHYDRATE: (1.5488, 1.9625e-3, -5.9399e-6),
}

MOSMOL_PER_G_LACTOSE = 1000.0 / 342.30
"""One osmole per mole of lactose, 342.30 g/mol."""

MOSMOL_PER_G_ASH = 13.0
"""Fitted, no source: with a typical powder (26 % protein, 20 % fat, 7 % ash) it gives the trade's 260 and
325 mOsm for 8 and 10 oz on 2 qt of water, and with dried whole milk the trade's 270."""

MOSMOL_PER_G_GLUCOSE = 1000.0 / 180.16
"""One osmole per mole of glucose, 180.16 g/mol: of the sugars that are fed the one that brings most by weight."""

MOSMOL_PER_G_TABLE_SALT = 2 * 1000.0 / 58.44
"""Two osmoles per mole of sodium chloride, 58.44 g/mol, wholly dissolved into ions: no salt that is fed brings more."""

MODEL_SPREAD_SHARE = 0.10
"""Standard uncertainty of the estimate itself, as a share: trade figures differ by about so much."""

LAB_SPREAD_SHARE = 0.03
"""Standard uncertainty of a laboratory value: osmometer, sample and mixing together."""


@dataclass(frozen=True)
class Parts:
    """A composition without gaps: percent of the powder as sold, summing to 100."""

    protein_pct: float
    fat_pct: float
    fibre_pct: float
    ash_pct: float
    moisture_pct: float
    carbohydrate_pct: float

    def share(self, part: Part) -> float:
        """The part as a fraction of 1."""
        return float(getattr(self, f"{part}_pct")) / 100.0


def _stated(composition: Composition) -> dict[Part, float]:
    told = {part: getattr(composition, f"{part}_pct") for part in TYPICAL_PCT}
    found = {part: float(pct) for part, pct in told.items() if pct is not None}
    for part, pct in found.items():
        between(pct, 0.0, 100.0, f"The {part} on the label", "0 and 100 %")
    if sum(found.values()) > 100.0 + 1e-9:
        raise CannotCompute("The parts on the label add up to more than 100 %.")
    return found


def assumed_parts(composition: Composition) -> dict[Part, float]:
    """Percent taken for each part on which the label is silent; empty when it tells all five.

    Typical values, made smaller together when the stated parts leave less room. Raises CannotCompute for
    shares outside 0 … 100 % or adding up to more than 100 %.
    """
    stated = _stated(composition)
    missing = {part: pct for part, pct in TYPICAL_PCT.items() if part not in stated}
    room = max(0.0, 100.0 - sum(stated.values()))
    fits = min(1.0, room / sum(missing.values())) if missing else 1.0
    return {part: pct * fits for part, pct in missing.items()}


def parts(composition: Composition) -> Parts:
    """The whole composition: the label's parts, typical ones where it is silent, carbohydrate as the rest."""
    known = {**assumed_parts(composition), **_stated(composition)}
    rest = max(0.0, 100.0 - sum(known.values()))
    return Parts(**{f"{part}_pct": pct for part, pct in known.items()}, carbohydrate_pct=rest)


def dry_matter_share(composition: Composition) -> float:
    """Dry matter per powder as sold: what is not moisture."""
    return 1.0 - parts(composition).share(Part.MOISTURE)


def specific_volume_ml_per_g(composition: Composition) -> float:
    """Volume that one gram of powder adds to the water it is mixed into, mL/g, about 0.6–1.1.

    Apparent specific volumes in solution add up (Walstra et al., from memory, not verified). Densities of
    the dry parts would be wrong here: dissolved lactose takes less room. Taken as the same at all mixing
    temperatures; warm fat is some 2 % larger, which moves a finished volume by less than 0.1 %.
    """
    whole = parts(composition)
    return sum(whole.share(part) / density for part, density in APPARENT_DENSITY_G_PER_ML.items())


def part_specific_heat(part: Part, temperature_c: float) -> float:
    """Specific heat of one part, kJ/(kg K), −40 … 150 °C.

    Choi and Okos 1986, as in the ASHRAE Handbook, Refrigeration, chapter 9. Raises CannotCompute outside.
    """
    t = between(temperature_c, -40.0, 150.0, "The temperature", "−40 and 302 °F (−40 and 150 °C)")
    constant, linear, square = _CHOI_OKOS_HEAT[part]
    return constant + t * (linear + t * square)


def specific_heat(composition: Composition, temperature_c: float) -> float:
    """Specific heat of the powder, kJ/(kg K): its parts by weight (Choi and Okos 1986), −40 … 150 °C."""
    whole = parts(composition)
    return sum(whole.share(part) * part_specific_heat(part, temperature_c) for part in Part)


def _osmoles(whole: Parts) -> float:
    return whole.share(Part.CARBOHYDRATE) * MOSMOL_PER_G_LACTOSE + whole.share(Part.ASH) * MOSMOL_PER_G_ASH


def _moved(composition: Composition, part: Part, to_pct: float) -> Composition:
    return replace(composition, **{f"{part}_pct": to_pct})


def _assumption_spread(composition: Composition, value_of: Callable[[Composition], float]) -> float:
    """Standard uncertainty that the silent parts of a label bring into `value_of`."""
    assumed = assumed_parts(composition)
    full = replace(composition, **{f"{part}_pct": pct for part, pct in assumed.items()})
    here = value_of(full)
    lower = [_moved(full, part, max(0.0, pct - TYPICAL_SPREAD_PCT[part])) for part, pct in assumed.items()]
    return math.hypot(0.0, *(value_of(moved) - here for moved in lower))


def osmoles_per_g(composition: Composition) -> tuple[float, float]:
    """Milliosmoles that one gram of powder brings into the water, and the standard uncertainty of that.

    An estimate: lactose as one osmole per mole, minerals by a factor fitted to figures of the trade (no
    measured table was found). The uncertainty is 10 % of the value joined with the parts on which the label
    is silent. Osmolality is this times the grams
    of powder per kilogram of water. Raises CannotCompute for an impossible composition.
    """
    value = _osmoles(parts(composition))
    silent = _assumption_spread(composition, lambda c: _osmoles(parts(c)))
    return value, math.hypot(MODEL_SPREAD_SHARE * value, silent)


def osmoles_of_additive_per_g(composition: Composition) -> tuple[float, float]:
    """The same of what need not come from milk: its sugar may be glucose and its ash salts that fall apart into ions.

    Between what milk would bring and that lies the truth: the middle, with half the reach as two standard
    uncertainties. Where neither fat nor protein nor ash is told it may be anything, from nothing to table salt. Raises
    CannotCompute for an impossible composition.
    """
    whole = parts(composition)
    least, most = _osmoles(whole), MOSMOL_PER_G_TABLE_SALT
    if composition.fat_pct or composition.protein_pct or composition.ash_pct:
        salts = whole.share(Part.ASH) * MOSMOL_PER_G_TABLE_SALT
        most = whole.share(Part.CARBOHYDRATE) * MOSMOL_PER_G_GLUCOSE + salts
    else:
        least = 0.0
    return (least + most) / 2, (most - least) / 4
