"""How the fill mark and the verdicts on lines came about."""

from __future__ import annotations

from calibrator import units
from calibrator.desk import shown
from calibrator.desk.how import amounts
from calibrator.desk.how.working import (
    GUM,
    Part,
    Working,
    figure,
    translate,
)
from calibrator.desk.speech import decimal_comma
from calibrator.model import UnitSystem
from calibrator.science.keep import VERDICT_LEVEL
from calibrator.science.mark import Line, LineCheck, OldLine
from calibrator.science.settling import ASSUMED_FACTOR, Settling
from calibrator.units import Kind

TWO_ONE_SIDED = "Schuirmann 1987, J. Pharmacokinet. Biopharm. 15:657"


def of_line(
    line: Line,
    level_g: float,
    settling: Settling,
    reach: tuple[float, float],
    rim_ml: float,
    system: UnitSystem,
    *,
    weighed: bool = False,
) -> Working:
    """Where the line goes, and how sure that is; `level_g` is a level scoopful. `weighed` where fills to a line tell,
    whose own mean and interval it rests on then."""
    step_mm = units.line_step_mm(system)
    parts = (
        *_full_scoops(line, level_g, system),
        _settling(settling),
        Part(
            translate("How", "Volume to the line"),
            translate("How", "volume to the rim × weight to the line ÷ (level scoopful × settling): {working}").format(
                working=f"{amounts.bare_room(rim_ml, system)} × {amounts.bare_mass(line.mass_g, system)} ÷ "
                f"({amounts.bare_mass(level_g, system)} × {figure(settling.factor, 3)})"
            ),
            amounts.room(line.volume_ml, system),
        ),
        Part(
            translate("How", "Height above the floor"),
            translate("How", "where the scoop, by its inner measures, holds that volume"),
            amounts.length(line.height_mm, system),
        ),
        Part(
            translate("How", "Down the wall from the rim"),
            translate("How", "along the wall: {exact}, told to the nearest {step}").format(
                exact=amounts.length(line.down_wall_mm, system), step=shown.length(step_mm, system)
            ),
            shown.length(line.down_wall_mm, system),
        ),
        Part(
            translate("How", "What a line off by {step} does").format(step=shown.length(step_mm, system)),
            _times(line.to_line, translate("How", "area of the powder there × its density")),
            amounts.mass(line.grams_per_mm * step_mm, system),
        ),
        Part(
            translate("How", "95 % interval"),
            _rests_on(weighed).format(mass=f"± {amounts.mass(reach[0], system)}"),
            f"± {amounts.length(reach[1], system)}",
        ),
    )
    note = translate(
        "How",
        "The scoop's volume cancels, so here it is that of its inner measures, as is the height: a scoop measured 3 % "
        "wrong gets the same line.",
    )
    words = translate("How", "The scoop is filled as high as the wanted weight needs room, at this lot's density.")
    title = translate("How", "Where the line for {target} goes").format(target=shown.mass(line.target_g, system))
    return Working(title, parts, (f"{GUM}, 5.1.2, 5.2",), f"{words} {note}")


def _rests_on(weighed: bool) -> str:
    """Where the doubt of a line comes from."""
    if weighed:
        return translate("How", "as the fills to the line have it, whose mean it rests on: {mass} of a feeding")
    return translate("How", "from the doubts in the level scoopful and in the settling: {mass} of a feeding")


def _full_scoops(line: Line, level_g: float, system: UnitSystem) -> tuple[Part, ...]:
    if line.to_line > 1:
        working = translate("How", "target in {count} equal scoopfuls: {working}").format(
            count=line.to_line, working=f"{amounts.bare_mass(line.target_g, system)} ÷ {line.to_line}"
        )
        return (Part(translate("How", "Weight to the line"), working, amounts.mass(line.mass_g, system)),)
    if not line.full_scoops:
        return ()
    return (
        Part(
            translate("How", "Weight to the line"),
            translate("How", "target less the scoopfuls struck level: {working}").format(
                working=f"{amounts.bare_mass(line.target_g, system)} − {line.full_scoops} × "
                f"{amounts.bare_mass(level_g, system)}"
            ),
            amounts.mass(line.mass_g, system),
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
    return Part(
        translate("How", "Settling"),
        translate("How", "{what}; standard uncertainty {u}").format(what=f"{ratio}, {where}", u=figure(settling.u, 3)),
        figure(settling.factor, 3),
    )


def of_old_line(old: OldLine, target_g: float, tolerance_share: float, system: UnitSystem) -> Working:
    """Keep or move: what the old line delivers from this lot."""
    parts = (
        Part(
            translate("How", "A feeding to the old line"),
            _times(old.to_line, translate("How", "level scoopful × share of the volume below the line × settling")),
            amounts.mass(old.delivers_g, system),
        ),
        Part(
            translate("How", "Against the target"),
            f"{amounts.mass(old.delivers_g, system)} ÷ {amounts.mass(target_g, system)} − 1",
            shown.signed_share(old.share),
        ),
        _wanted(target_g, tolerance_share, system),
        Part(
            translate("How", "95 % interval"),
            translate("How", "from the doubts in the level scoopful and in the settling"),
            amounts.masses(old.low_g, old.high_g, system),
        ),
        _verdict(
            translate(
                "How",
                "judged anew after each fill, therefore by the wider interval of {level}. Inside the tolerance with "
                "all of it: keep. Outside with all of it: move. Else weigh more.",
            ).format(level=shown.share(VERDICT_LEVEL))
        ),
    )
    words = translate("How", "What a feeding to the old line weighs from this lot, beside what is wanted.")
    return Working(translate("How", "Keep or move the old line"), parts, (f"{GUM}, 5.1.2",), words)


def of_check(check: LineCheck, target_g: float, tolerance_share: float, system: UnitSystem) -> Working:
    """Is the drawn line right?"""
    parts = (
        Part(
            translate("How", "A feeding to this line"),
            _times(
                check.next_line.to_line,
                translate("How", "mean of the bags, like the level fills; standard uncertainty {u}").format(
                    u=amounts.mass(check.u_g, system, 2)
                ),
            ),
            amounts.mass(check.mean_g, system),
        ),
        _wanted(target_g, tolerance_share, system),
        Part(
            translate("How", "95 % interval"),
            translate("How", "two tests of 2.5 % each, one for too light and one for too heavy"),
            amounts.masses(check.low_g, check.high_g, system),
        ),
        _verdict(
            translate(
                "How",
                "inside the tolerance with the whole interval: keep. Else, where the interval leaves out the target "
                "and another division of the ruler is nearer: move. Else weigh more.",
            )
        ),
    )
    words = translate("How", "What fills to the line weigh, beside what is wanted.")
    return Working(translate("How", "Is the line right?"), parts, (f"{GUM}, 4.2, G.4", TWO_ONE_SIDED), words)


def _times(count: int, working: str) -> str:
    """A working of one scoopful, told as that of so many equal ones."""
    return f"{count} × {working}" if count > 1 else working


def _wanted(target_g: float, tolerance_share: float, system: UnitSystem) -> Part:
    target = units.show_both(target_g, Kind.MASS, system, decimal_comma=decimal_comma())
    told = translate("How", "the target and the farm's tolerance")
    return Part(translate("How", "Wanted"), told, f"{target} ± {shown.share(tolerance_share)}")


def _verdict(rule: str) -> Part:
    return Part(translate("How", "Verdict"), rule, "")
