"""Pails, totes and tanks: what fits, what runs over, and where the water has to stand."""

from __future__ import annotations

from calibrator.model import Vessel
from calibrator.science import scoop
from calibrator.science.guard import between, not_negative, positive
from calibrator.values import dataclass


@dataclass(frozen=True)
class Fit:
    """A finished volume in a vessel: does it stay below the usable level, and what is above.

    `over_usable_ml` is what eats into the headspace, `overflow_ml` what would run over the rim. Both are 0
    where there is room.
    """

    fits: bool
    over_usable_ml: float
    overflow_ml: float


def usable_ml(vessel: Vessel) -> float:
    """Volume of a vessel that may be filled, mL. Raises CannotCompute for impossible sizes."""
    usable = between(vessel.usable_share, 0.01, 1.0, "The usable part of the vessel", "1 and 100 %")
    return positive(vessel.rim_volume_ml, "The volume of the vessel") * usable


def fit(volume_ml: float, vessel: Vessel) -> Fit:
    """Does a finished volume fit? Raises CannotCompute for a negative volume."""
    over_usable = not_negative(volume_ml, "The volume of mix") - usable_ml(vessel)
    over_rim = volume_ml - vessel.rim_volume_ml
    fits = over_usable <= 1e-9 * vessel.rim_volume_ml
    return Fit(fits, 0.0 if fits else over_usable, max(0.0, over_rim))


def level_mm(vessel: Vessel, volume_ml: float) -> float | None:
    """How high above the floor a volume stands, mm; None when the vessel's shape is not known.

    Raises CannotCompute for more than the shape holds.
    """
    return None if vessel.shape is None else scoop.height_mm(vessel.shape, volume_ml)
