"""The sugar scale of refractometers: degrees Brix, its specific gravity, a known solution to check it with.

A refractometer knows nothing of milk. Its °Brix is the percent of sucrose by weight that would bend light
as much, and its "SG" the specific gravity of that sugar water, not of the mix. A hydrometer floats in the
mix itself. The two must never be taken for each other.
"""

from __future__ import annotations

from calibrator.science.errors import CannotCompute
from calibrator.science.guard import between, positive
from calibrator.science.stats import two_roundings_u
from calibrator.science.steps import to_step
from calibrator.values import dataclass

HIGHEST_BRIX = 32.0
_SG_TO_BRIX = (-616.868, 1111.14, -630.272, 135.997)

MOST_U_BRIX = 0.21
"""A solution weighed less surely than this is no standard: 24 g of sugar on a 1 g scale is just enough."""

KNOWN_BRIX = 12.0
"""Near the reading of a usual mix: common practice, no source."""


def brix_from_refractometer_sg(sg: float) -> float:
    """°Brix for a reading on a refractometer's SG scale (sucrose, 20/20 °C), 0.998 … 1.135.

    Polynomial of the American Society of Brewing Chemists for sugar solutions (from memory, not verified);
    agrees with the densities of the CRC Handbook within 0.03 °Brix from 0 to 20. Raises CannotCompute
    outside the range.
    """
    between(sg, 0.998, 1.135, "The reading on the SG scale", "0.998 and 1.135")
    a, b, c, d = _SG_TO_BRIX
    return a + sg * (b + sg * (c + sg * d))


def temperature_correction_brix(temperature_c: float) -> float:
    """What is added to a reading at this prism temperature (5–40 °C) of a refractometer without
    compensation, °Brix.

    A parabola through the table for 10 to 15 % sucrose of the OIV (Compendium of International Methods of
    Analysis, OIV-MA-AS2-02, table I, seen for 5 to 17 °C), within 0.06 of it there; above 20 °C the same
    parabola goes on. Raises CannotCompute outside the range.
    """
    between(temperature_c, 5.0, 40.0, "The temperature of the refractometer", "41 and 104 °F (5 and 40 °C)")
    d = temperature_c - 20.0
    return d * (0.0705 + 0.00105 * d)


@dataclass(frozen=True)
class KnownSolution:
    """Sugar and water to weigh in, g, and the °Brix they make with its standard uncertainty."""

    sugar_g: float
    water_g: float
    brix: float
    u_brix: float


def known_solution(total_g: float, scale_step_g: float, brix: float = KNOWN_BRIX) -> KnownSolution:
    """Table sugar and water for a solution of about `brix` (1 … 30) on a scale of this step.

    °Brix is sugar by weight of the solution, so that two weighings make the standard; weights are rounded to
    the scale's step and the °Brix is that of the rounded weights. Its doubt: d/√6 in the sugar's weight
    (empty and full, JCGM 100, F.2.2.1). Raises CannotCompute where the scale is too coarse for it.
    """
    between(brix, 1.0, 30.0, "The Brix of the solution", "1 and 30")
    step = positive(scale_step_g, "The step of the scale's display")
    sugar = to_step(positive(total_g, "The weight of the solution") * brix / 100, step)
    water = to_step(total_g - sugar, step)
    if sugar < 5 * step or water <= 0:
        raise CannotCompute("This scale is too coarse for so little sugar: make more of the solution.")
    made = 100 * sugar / (sugar + water)
    u_brix = made * two_roundings_u(step) / sugar
    if u_brix > MOST_U_BRIX:
        raise CannotCompute("This scale is too coarse for so little sugar: make more of the solution.")
    return KnownSolution(sugar, water, made, u_brix)
