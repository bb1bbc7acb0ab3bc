"""What a lot does to a feeding when the line of the lot before stays: in powder, in solids, in money."""

from __future__ import annotations

import math
from dataclasses import replace
from enum import StrEnum

from calibrator.model import SeasonLot, Shape
from calibrator.science.compare import Difference, compare
from calibrator.science.guard import between, not_negative, positive
from calibrator.science.keep import FOR_OLD_LINE, VERDICT_LEVEL, OldLineVerdict, feeding_to_line, old_verdict
from calibrator.science.settling import STRUCK, Settling, signed_off
from calibrator.science.stats import two_sided_t
from calibrator.science.verify import LineCheck
from calibrator.values import dataclass


@dataclass(frozen=True)
class CarriedOver:
    """A feeding of a lot by the line of the lot before, g with its 95 % interval; `share` is how far that is from
    the target of that line (mass ÷ target − 1), `verdict` what was to be done with that line. `fills` is how many
    fills to the line it rests on; 0 where it rests on the level scoopful and the settling."""

    mass_g: float
    low_g: float
    high_g: float
    target_g: float
    verdict: OldLineVerdict
    fills: int = 0

    @property
    def share(self) -> float:
        return self.mass_g / self.target_g - 1


def carried_over(
    lot: SeasonLot, before: SeasonLot, shape: Shape, tolerance_share: float, check: LineCheck | None = None
) -> CarriedOver | None:
    """A feeding of `lot` by the line of `before`, both weighed with the scoop of this shape; None without a line.

    `check` is what fills to that line said, where there were any: they tell more than level ones. Else it rests on
    what was signed off. Raises CannotCompute for a line that the scoop does not have.
    """
    if before.down_wall_mm is None or before.target_mass_g is None:
        return None
    if check is not None:
        verdict, fills = FOR_OLD_LINE[check.verdict], check.result.fills
        return CarriedOver(check.mean_g, check.low_g, check.high_g, before.target_mass_g, verdict, fills)
    feeding = feeding_to_line(
        shape,
        lot.level_mean_g,
        ((lot.level_u_g, lot.degrees_of_freedom),),
        settling_as_before(lot, before),
        before.down_wall_mm,
        full_scoops=before.full_scoops or 0,
        to_line=before.to_line,
    )
    target = before.target_mass_g
    tolerance_g = positive(tolerance_share, "The tolerance") * target
    verdict = old_verdict(*feeding.interval(VERDICT_LEVEL), target, tolerance_g)
    return CarriedOver(feeding.mean_g, *feeding.interval(0.95), target, verdict)


def settling_as_before(lot: SeasonLot, before: SeasonLot) -> Settling:
    """How the lot settles to the line of the one before: not at all where that was used level, and where it was never
    filled to a line itself, as the one before did."""
    if before.down_wall_mm == 0:
        return STRUCK
    measured = lot if lot.settling_u > 0 or before.settling_u <= 0 else before
    return signed_off(measured.settling_factor, measured.settling_u)


def solids_with(target_share: float, powder_ratio: float) -> float:
    """Solids as mixed where `powder_ratio` times the powder goes into the same water: conservation of mass.

    Raises CannotCompute for solids outside 0 … 95 % or a negative ratio.
    """
    solids = between(target_share, 0.0, 0.95, "The solids of the mix", "0 and 95 %")
    per_water = not_negative(powder_ratio, "The powder per water") * solids / (1 - solids)
    return per_water / (1 + per_water)


class Wanting(StrEnum):
    """What has to be entered before solids or the money a day can be told."""

    PLAN = "plan"  # without it neither
    PRICE = "price"
    PACKAGE = "package"  # how heavy a bag or tote is


def wanting(lot: SeasonLot, planned: bool) -> tuple[Wanting, ...]:
    """What is not entered of a lot; `planned` whether a plan tells how much powder is fed."""
    known = ((Wanting.PLAN, planned), (Wanting.PRICE, lot.price_per_package is not None),
             (Wanting.PACKAGE, lot.package_mass_g is not None))  # fmt: skip
    return tuple(what for what, there in known if not there)


def money_of(powder_g: float, price_per_package: float, package_mass_g: float) -> float:
    """What so much powder costs, in the price's currency; below zero where it is powder that was not fed.

    Raises CannotCompute for a price below zero or a package without weight.
    """
    price = not_negative(price_per_package, "The price of a package")
    return powder_g * price / positive(package_mass_g, "The weight of a package")


def difference_share(first: SeasonLot, second: SeasonLot) -> Difference:
    """How much denser the second lot is, as a share of the first, by Welch's comparison.

    With one scoop the weights of a scoopful are compared, so that a wrong volume of it cancels; else the
    densities with all their doubt. Raises CannotCompute for a scoopful without weight.
    """
    if first.scoop_revision == second.scoop_revision and first.scoop_id == second.scoop_id:
        sides = [(math.log(one.level_mean_g), one.level_u_g / one.level_mean_g) for one in (first, second)]
    else:
        sides = [
            (math.log(one.density_g_per_ml), one.density_u_g_per_ml / one.density_g_per_ml) for one in (first, second)
        ]
    one, other = ((*side, lot.degrees_of_freedom) for side, lot in zip(sides, (first, second), strict=True))
    found = compare(one, other)
    # Compared by its logarithm, a ratio is told as the share that it is: ln 0.94 is −6.2 %, the lot 6.0 % lighter.
    return replace(
        found,
        difference=math.expm1(found.difference),
        u=found.u * math.exp(found.difference),
        low=math.expm1(found.low),
        high=math.expm1(found.high),
    )


def as_to_the_mark(lot: SeasonLot) -> SeasonLot:
    """The lot with the densities that it has in a scoop filled to the line: settled by its own factor.

    The factor's doubt is joined with that of the density in quadrature (JCGM 100:2008, 5.1.2). Raises CannotCompute
    for a factor that is not above zero.
    """
    density = lot.density_g_per_ml * positive(lot.settling_factor, "The settling factor")
    settling = lot.settling_u / lot.settling_factor
    u = math.hypot(lot.density_u_g_per_ml / lot.density_g_per_ml, settling)
    level = math.hypot(lot.level_u_g / lot.level_mean_g, settling)
    half = lot.density_half_width_g_per_ml / lot.density_g_per_ml
    reach = density * math.hypot(half, two_sided_t(0.95, math.inf) * settling)
    return lot._replace(
        density_g_per_ml=density,
        density_u_g_per_ml=density * u,
        density_low_g_per_ml=density - reach,
        density_high_g_per_ml=density + reach,
        level_u_g=lot.level_mean_g * level,
    )
