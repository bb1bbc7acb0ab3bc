"""Scoops that a hand takes for one another."""

from __future__ import annotations

from calibrator.model import Scoop
from calibrator.science.scoop import rim_volume_ml

ALIKE_SHARE = 0.06
"""Rim volumes closer than this look the same in the hand: two per cent on each of three dimensions. Common practice,
no source."""


def look_alike(one: Scoop, other: Scoop) -> bool:
    """Whether two scoops bear one name, or have one kind of shape and nearly one size."""
    if "".join(one.name.split()).casefold() == "".join(other.name.split()).casefold():
        return True
    if type(one.shape) is not type(other.shape):
        return False
    sizes = rim_volume_ml(one.shape), rim_volume_ml(other.shape)
    return max(sizes) <= min(sizes) * (1 + ALIKE_SHARE)


def told_apart(one: Scoop, other: Scoop) -> bool:
    """Whether each of two scoops that look alike has a word of its own to know it by."""
    words = {scoop.told_by.strip().casefold() for scoop in (one, other)}
    return len(words) == 2 or not look_alike(one, other)
