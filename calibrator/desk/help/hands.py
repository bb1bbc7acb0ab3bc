"""How it is done with the hands: a picture and a sentence for each move."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication

from calibrator.model import Step
from calibrator.values import dataclass

translate = QCoreApplication.translate


@dataclass(frozen=True)
class Move:
    """One move: which drawing, and what to do."""

    drawing: str
    words: str


@dataclass(frozen=True)
class Handiwork:
    """The moves of one job in their order, and what to mind."""

    title: str
    moves: tuple[Move, ...]
    caution: str


def dust() -> str:
    return translate(
        "Hands",
        "Powder dust irritates: pour low, keep your face away, and air the room. Medicated powder: gloves and mask as "
        "its label says, and wash your hands.",
    )


def scale_ready() -> Handiwork:
    """Before the first fill."""
    return Handiwork(
        translate("Hands", "Get the scale ready"),
        (
            Move(
                "zero",
                translate("Hands", "Stand it level, out of the draft. Empty scoop on, press zero: it reads 0."),
            ),
            Move(
                "pack",
                translate("Hands", "Put a known weight on, such as a full sealed pack. It should read what it is."),
            ),
            Move("bags", translate("Hands", "Set out four bags of the lot, from different places of the delivery.")),
        ),
        translate("Hands", "Lift with your knees; ask for a second pair of hands for heavy bags."),
    )


def level_fills() -> Handiwork:
    """Struck level."""
    return Handiwork(
        translate("Hands", "Strike a scoop level"),
        (
            Move("dip", translate("Hands", "Stir the powder up a little, dip, and lift the scoop heaped.")),
            Move(
                "strike", translate("Hands", "Draw a straight edge over the rim once: a ruler or the back of a knife.")
            ),
            Move(
                "no_tapping", translate("Hands", "No tapping, no pressing, no setting down hard: it packs the powder.")
            ),
            Move("weigh", translate("Hands", "Set the scoop on the zeroed scale, read it, type, press Enter.")),
        ),
        dust(),
    )


def draw_line() -> Handiwork:
    """The mark."""
    return Handiwork(
        translate("Hands", "Draw the line"),
        (
            Move(
                "ruler",
                translate("Hands", "Measure from the rim down along the wall, inside or outside, not straight down."),
            ),
            Move(
                "eye_level",
                translate("Hands", "Bring the scoop to eye level and draw the line all round, as thin as you can."),
            ),
            Move("bags", translate("Hands", "Write the lot on the scoop beside it, and wipe out the old line.")),
        ),
        translate("Hands", "Use a marker that the wash does not take off and that may touch feed."),
    )


def fills_to_mark() -> Handiwork:
    """Filled to the line."""
    return Handiwork(
        translate("Hands", "Fill to the line"),
        (
            Move("dip", translate("Hands", "Dip a little over the line.")),
            Move(
                "shake",
                translate("Hands", "One shake from side to side, always the same, so that the powder lies even."),
            ),
            Move(
                "eye_level",
                translate("Hands", "Read at eye level. Take out or add until the powder stands at the line."),
            ),
            Move("weigh", translate("Hands", "Set the scoop on the zeroed scale, read it, type, press Enter.")),
        ),
        dust(),
    )


def mixing() -> Handiwork:
    """The batch."""
    return Handiwork(
        translate("Hands", "Mix a batch"),
        (
            Move("pail", translate("Hands", "Draw the water first and measure its temperature.")),
            Move(
                "whisk",
                translate("Hands", "Powder on the water, whisk until no lumps are left, do not whip froth into it."),
            ),
            Move(
                "eye_level",
                translate("Hands", "Read the level, and check the mix: refractometer, hydrometer or a weighed jug."),
            ),
        ),
        translate(
            "Hands",
            "Hot water scalds: over 120 °F (49 °C) it burns skin in minutes, "
            "hotter in seconds. Feed at the temperature on "
            "the product's label. With young or sick calves ask your veterinarian.",
        ),
    )


def of_step(step: Step) -> Handiwork | None:
    """What belongs to a step of the weigh-in; None where there is nothing for the hands to do."""
    found = {
        Step.SCOOP_AND_SCALE: scale_ready,
        Step.LEVEL_FILLS: level_fills,
        Step.MARK: draw_line,
        Step.FILLS_TO_MARK: fills_to_mark,
    }.get(step)
    return found() if found else None


def all_of_them() -> tuple[Handiwork, ...]:
    """In the order in which a lot goes through them."""
    return scale_ready(), level_fills(), draw_line(), fills_to_mark(), mixing()
