"""The inner shapes of scoops and vessels."""

from calibrator.values import dataclass


@dataclass(frozen=True, kw_only=True)
class Cylinder:
    """A straight round scoop, inner dimensions."""

    diameter_mm: float
    height_mm: float


@dataclass(frozen=True, kw_only=True)
class TaperedCup:
    """A round scoop whose rim and floor differ in diameter, inner dimensions."""

    rim_diameter_mm: float
    floor_diameter_mm: float
    height_mm: float


@dataclass(frozen=True, kw_only=True)
class Box:
    """A straight rectangular scoop, inner dimensions."""

    length_mm: float
    width_mm: float
    height_mm: float


@dataclass(frozen=True, kw_only=True)
class Poured:
    """A scoop of any shape, told by water poured in steps: level above the floor against volume.

    Both start above zero and rise; the floor itself (0 mm, 0 mL) is implied, the last pair is the rim.
    """

    heights_mm: tuple[float, ...]
    volumes_ml: tuple[float, ...]


Shape = Cylinder | TaperedCup | Box | Poured
