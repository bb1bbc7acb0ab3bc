"""What a scoop holds by what was typed about it: dimensions, weighed water, or both. No window needed."""

from __future__ import annotations

from collections.abc import Sequence

from calibrator.model import Poured, Shape
from calibrator.science import water
from calibrator.science.scoop import (
    DimensionCheck,
    VolumeEstimate,
    compare_with_water,
    odd_pourings,
    struck_volume,
    volume_from_dimensions,
)
from calibrator.values import dataclass


@dataclass(frozen=True)
class WaterWeighed:
    """The weighings of water behind a volume, each with the text that was typed, None where there is none: the records
    hold the volume alone.
    """

    volume_ml: float
    masses_g: tuple[tuple[float | None, str], ...]
    water_c: tuple[float | None, str]


@dataclass(frozen=True)
class ScoopVolume:
    """Both ways to the struck-level volume. Water counts where it was weighed; `odd` are the places of weighings that
    do not fit the others.
    """

    dimensions: VolumeEstimate
    water: VolumeEstimate | None = None
    check: DimensionCheck | None = None
    odd: tuple[int, ...] = ()

    @property
    def difference_pct(self) -> float | None:
        """Dimensions against water, percent of the water; None where no water was weighed."""
        return self.check.difference_share * 100 if self.check else None

    @property
    def counts(self) -> VolumeEstimate:
        return self.water or self.dimensions


def scoop_volume(
    shape: Shape, water_masses_g: Sequence[float], temperature_c: float, resolution_g: float
) -> ScoopVolume:
    """The volume by dimensions and, where water was weighed, by water. Raises CannotCompute."""
    dimensions = volume_from_dimensions(shape)
    if not water_masses_g:
        return ScoopVolume(dimensions)
    weighed = struck_volume(water_masses_g, temperature_c, resolution_g, shape=shape)
    check = compare_with_water(shape, weighed.volume_ml)
    return ScoopVolume(dimensions, weighed, check, odd_pourings(water_masses_g))


def with_known_water(shape: Shape, volume_ml: float, u_ml: float) -> ScoopVolume:
    """The same with a water volume that was kept earlier. Raises CannotCompute."""
    known = VolumeEstimate(volume_ml, u_ml, float("inf"))
    return ScoopVolume(volume_from_dimensions(shape), known, compare_with_water(shape, volume_ml))


def poured(heights_mm: Sequence[float], water_masses_g: Sequence[float], temperature_c: float) -> Poured:
    """A scoop told by water poured in steps, each step's total weighed. Raises CannotCompute."""
    volumes = tuple(water.volume_ml(mass, temperature_c) for mass in water_masses_g)
    return Poured(heights_mm=tuple(heights_mm), volumes_ml=volumes)
