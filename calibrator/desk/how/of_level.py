"""How the weight of a scoopful, its interval and the bulk density came about."""

from __future__ import annotations

from calibrator.desk import shown
from calibrator.desk.counted import counted
from calibrator.desk.how import amounts
from calibrator.desk.how.working import (
    GUM,
    Part,
    Working,
    degrees,
    factor,
    translate,
)
from calibrator.model import UnitSystem
from calibrator.science.budget import BudgetRow, Source
from calibrator.science.weighing import DensityResult, LevelResult

MOST_BAGS_TOLD = 8
TWO_STAGES = "Cochran 1977, Sampling Techniques, 10.3"


def of_scoopful(level: LevelResult, system: UnitSystem) -> Working:
    """The mean of the fills and its interval."""
    return Working(
        translate("How", "The weight of a scoopful"),
        (
            *_mean(level, system),
            *_dipped(level),
            *(_doubt(row, "g", system) for row in level.budget),
            *_interval(level, system),
        ),
        (f"{GUM}, 4.2, 5.1.2, G.4", *((TWO_STAGES,) if level.dipped_share else ())),
        translate("How", "The mean of the bags. How far it may be off follows from how bags and fills differ."),
    )


def _dipped(level: LevelResult) -> tuple[Part, ...]:
    """How many of the lot's bags were dipped into, where that counts."""
    if not level.dipped_share:
        return ()
    return (
        Part(
            translate("How", "Bags of the lot dipped into"),
            translate("How", "they leave no doubt about themselves: how bags differ counts for the others alone"),
            f"{level.bags} ÷ {level.outlook.bags_there} = {shown.share(level.dipped_share)}",
        ),
    )


def of_density(level: LevelResult, density: DensityResult, volume_ml: float, system: UnitSystem) -> Working:
    """The bulk density and its interval."""
    quotient = Part(
        translate("How", "Bulk density"),
        translate("How", "level scoopful ÷ volume of the scoop to its rim: {mass} ÷ {volume}").format(
            mass=amounts.mass(level.mean_g, system), volume=amounts.room_in_quarts(volume_ml, system)
        ),
        amounts.density(density.density_g_per_ml, system),
    )
    doubts = (_doubt(row, "g/mL", system) for row in density.budget)
    ends = amounts.densities(density.low_g_per_ml, density.high_g_per_ml, system)
    sure = Part(
        translate("How", "95 % interval"),
        translate("How", "from the two doubts above, added as squares: standard uncertainty {u}").format(
            u=amounts.density(density.u_g_per_ml, system)
        ),
        ends,
    )
    words = translate("How", "The powder that the scoop holds struck level, by the room that it has there.")
    return Working(translate("How", "Bulk density"), (quotient, *doubts, sure), (f"{GUM}, 5.1.2",), words)


def _mean(level: LevelResult, system: UnitSystem) -> tuple[Part, ...]:
    shown = level.bag_means[:MOST_BAGS_TOLD]
    bags = tuple(
        Part(
            translate("How", "Bag {number}").format(number=bag.bag),
            translate("How", "mean of its fills ({fills})").format(fills=counted.fills(bag.weighings)),
            amounts.mass(bag.mean_g, system),
        )
        for bag in shown
    )
    summed = " + ".join(amounts.bare_mass(bag.mean_g, system) for bag in shown) + (
        " + …" if level.bags > len(shown) else ""
    )
    mean = Part(
        translate("How", "Mean of the bags"),
        translate("How", "every bag counts the same: {sum}").format(sum=f"({summed}) ÷ {level.bags}"),
        amounts.mass(level.mean_g + level.taken_off_g, system),
    )
    return (*bags, mean, *_corrected(level, system))


def _corrected(level: LevelResult, system: UnitSystem) -> tuple[Part, ...]:
    """The scale's error, where the check weight showed one that is taken off."""
    if not level.taken_off_g:
        return ()
    return (
        Part(
            translate("How", "Corrected for the scale"),
            translate("How", "less what the scale reads too much at this weight, by the check weight: {error}").format(
                error=amounts.signed_mass(level.taken_off_g, system)
            ),
            amounts.mass(level.mean_g, system),
        ),
    )


def _interval(level: LevelResult, system: UnitSystem) -> tuple[Part, ...]:
    together = Part(
        translate("How", "All doubts together"),
        translate("How", "added as squares; {degrees} degrees of freedom").format(
            degrees=degrees(level.degrees_of_freedom)
        ),
        f"± {amounts.mass(level.u_g, system, 2)}",
    )
    half = Part(
        translate("How", "95 % interval"),
        translate("How", "each doubt widened by Student's t for its degrees of freedom, then added as squares"),
        f"± {amounts.mass(level.half_width_g, system, 2)}",
    )
    more = Part(
        translate("How", "One more scoopful"),
        translate("How", "with the spread between bags ({bags}) and between fills ({fills}) on top").format(
            bags=amounts.mass(level.bag_sd_g, system, 2), fills=amounts.mass(level.fill_sd_g, system, 2)
        ),
        amounts.masses(level.next_low_g, level.next_high_g, system),
    )
    return together, half, more


def _doubt(row: BudgetRow, unit: str, system: UnitSystem) -> Part:
    """One source of doubt: how large, how it counts in the result."""
    what = translate("How", "Doubt: {source}").format(source=source_words()[row.source])
    if row.contained:
        return Part(what, translate("How", "already part of what the fills show"), "–")
    counts = factor(abs(row.sensitivity) * amounts.rate(unit, row.unit, system))
    spread = f"{amounts.spread(row.standard_uncertainty, row.unit, system)} × {counts}"
    if row.assumed:
        until = translate("How", "{spread}, assumed until fills show it")
        if row.source is Source.SCALE_ERROR:
            until = translate("How", "{spread}, assumed as of a sound scale until a check weight shows it")
        spread = until.format(spread=spread)
    told = amounts.mass(row.contribution, system, 2) if unit == "g" else amounts.density(row.contribution, system)
    return Part(what, spread, f"± {told}; {shown.share(row.share, 0)}")


def source_words() -> dict[Source, str]:
    """Where doubt comes from, in a word or two."""
    return {
        Source.BAG_MEANS: translate("How", "how the bags differ"),
        Source.BAGS: translate("How", "between bags"),
        Source.FILLS: translate("How", "between fills"),
        Source.READING: translate("How", "display step, full"),
        Source.TARE: translate("How", "display step, empty"),
        Source.SCALE_ERROR: translate("How", "the scale's own error"),
        Source.LEVEL_MEAN: translate("How", "the level scoopful"),
        Source.SCOOP_VOLUME: translate("How", "the scoop's volume"),
        Source.SETTLING: translate("How", "how the powder settles"),
    }
