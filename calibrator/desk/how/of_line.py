"""How the fill mark and the verdicts on lines came about."""

from __future__ import annotations

from calibrator import units
from calibrator.desk.how.working import GUM, Part, Working, as_minus, grams, percent, translate
from calibrator.model import UnitSystem
from calibrator.science.mark import Line, LineCheck, OldLine
from calibrator.science.settling import ASSUMED_FACTOR, Settling
from calibrator.science.weighing import LevelResult
from calibrator.units import Kind


def of_line(
    line: Line, level: LevelResult, settling: Settling, reach: tuple[float, float], rim_ml: float, system: UnitSystem
) -> Working:
    """Where the line goes, and how sure that is."""
    parts = (
        *_full_scoops(line, level),
        _settling(settling),
        Part(
            translate("How", "Volume to the line"),
            translate("How", "volume to the rim × weight to the line ÷ (level scoopful × settling): {working}").format(
                working=f"{rim_ml:.1f} × {line.mass_g:.1f} ÷ ({level.mean_g:.1f} × {settling.factor:.3f})"
            ),
            f"{line.volume_ml:.1f} mL",
        ),
        Part(
            translate("How", "Height above the floor"),
            translate("How", "where the scoop, by its inner measures, holds that volume"),
            f"{line.height_mm:.1f} mm",
        ),
        Part(
            translate("How", "Down the wall from the rim"),
            translate("How", "along the wall: {exact}, told to the nearest {step}").format(
                exact=f"{line.down_wall_mm:.1f} mm", step=units.show_length(units.line_step_mm(system), system)
            ),
            units.show_length(line.down_wall_mm, system),
        ),
        Part(
            translate("How", "What a line off by 1 mm does"),
            translate("How", "area of the powder there × its density"),
            grams(line.grams_per_mm),
        ),
        Part(
            translate("How", "95 % interval"),
            translate("How", "from the doubts in the level scoopful and in the settling: {mass} of a feeding").format(
                mass=f"± {grams(reach[0])}"
            ),
            f"± {reach[1]:.1f} mm",
        ),
    )
    note = translate("How", "The scoop's volume cancels: a scoop measured 3 % wrong gets the same line.")
    return Working(translate("How", "Where the line goes"), parts, (f"{GUM}, 5.1.2, 5.2", note))


def _full_scoops(line: Line, level: LevelResult) -> tuple[Part, ...]:
    if not line.full_scoops:
        return ()
    return (
        Part(
            translate("How", "Weight to the line"),
            translate("How", "target less the scoopfuls struck level: {working}").format(
                working=f"{line.target_g:.1f} − {line.full_scoops} × {level.mean_g:.1f}"
            ),
            grams(line.mass_g),
        ),
    )


def _settling(settling: Settling) -> Part:
    ratio = translate("How", "density filled to the line ÷ density struck level")
    if settling.lots:
        where = translate("How", "as in this farm's earlier lots")
    elif settling.factor == ASSUMED_FACTOR:
        where = translate("How", "taken so until fills to the line show it")
    else:
        where = translate("How", "as the fills to the line show it")
    return Part(translate("How", "Settling"), f"{ratio}, {where}", f"{settling.factor:.3f} ± {settling.u:.3f}")


def of_old_line(old: OldLine, target_g: float, tolerance_share: float, system: UnitSystem) -> Working:
    """Keep or move: what the old line delivers from this lot."""
    parts = (
        Part(
            translate("How", "A feeding to the old line"),
            translate("How", "level scoopful × share of the volume below the line × settling"),
            grams(old.delivers_g),
        ),
        Part(
            translate("How", "Against the target"),
            f"{grams(old.delivers_g)} ÷ {grams(target_g)} − 1",
            as_minus(f"{100 * old.share:+.1f} %"),
        ),
        _wanted(target_g, tolerance_share, system),
        Part(
            translate("How", "95 % interval"),
            translate("How", "from the doubts in the level scoopful and in the settling"),
            translate("How", "{low} to {high}").format(low=f"{old.low_g:.1f}", high=grams(old.high_g)),
        ),
        _verdict(),
    )
    return Working(translate("How", "Keep or move the old line"), parts, (f"{GUM}, 5.1.2",))


def of_check(check: LineCheck, target_g: float, tolerance_share: float, system: UnitSystem) -> Working:
    """Is the drawn line right?"""
    parts = (
        Part(
            translate("How", "A feeding to this line"),
            translate("How", "mean of the bags, like the level fills"),
            f"{grams(check.mean_g)} ± {grams(check.u_g, 2)}",
        ),
        _wanted(target_g, tolerance_share, system),
        Part(
            translate("How", "90 % interval"),
            translate("How", "two tests of 5 % each, one for too light and one for too heavy"),
            translate("How", "{low} to {high}").format(low=f"{check.low_g:.1f}", high=grams(check.high_g)),
        ),
        _verdict(),
    )
    return Working(translate("How", "Is the line right?"), parts, (f"{GUM}, 4.2, G.4",))


def _wanted(target_g: float, tolerance_share: float, system: UnitSystem) -> Part:
    return Part(
        translate("How", "Wanted"),
        translate("How", "the target and the farm's tolerance"),
        f"{units.show_both(target_g, Kind.MASS, system)} ± {percent(tolerance_share)}",
    )


def _verdict() -> Part:
    return Part(
        translate("How", "Verdict"),
        translate(
            "How",
            "inside the tolerance with the whole 90 % interval: right. Outside with all of it: move. "
            "Astride its edge: weigh more.",
        ),
        "",
    )
