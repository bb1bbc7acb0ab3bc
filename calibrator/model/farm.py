"""The farm and what stands in it: scales, scoops, vessels."""

from datetime import date
from enum import StrEnum

from calibrator.model.shapes import Shape
from calibrator.values import dataclass


class UnitSystem(StrEnum):
    """What numbers are shown in; typed units are always accepted."""

    FARM = "farm"
    METRIC = "metric"


class Paper(StrEnum):
    LETTER = "letter"
    A4 = "a4"


@dataclass(frozen=True, kw_only=True)
class HotWater:
    """The hot water that a farm has at once, and how cold its cold water is."""

    tank_ml: float
    hot_c: float
    cold_c: float
    tank_typed: str = ""
    hot_typed: str = ""
    cold_typed: str = ""


@dataclass(frozen=True, kw_only=True)
class Farm:
    """A farm and its settings."""

    id: str
    name: str
    units: UnitSystem = UnitSystem.FARM
    paper: Paper = Paper.LETTER
    tolerance_share: float = 0.02  # how far a feeding's powder may be from its target
    water_step_qt: float = 0.25  # water is rounded to this in farm units ...
    water_step_l: float = 0.1  # ... and to this in metric
    hot_water: HotWater | None = None
    currency: str = "$"  # the sign that prices are shown with
    asks_for_charts: bool = True  # whether a wall chart that is missing is something to do
    revision: str = ""


@dataclass(frozen=True, kw_only=True)
class Scale:
    """A weighing scale; resolution is the step of its display."""

    id: str
    farm_id: str
    name: str
    resolution_g: float
    resolution_typed: str
    capacity_g: float
    capacity_typed: str
    retired_on: date | None = None
    revision: str = ""


@dataclass(frozen=True, kw_only=True)
class Scoop:
    """One physical scoop. `volume_ml` is the struck-level volume that counts, `volume_u_ml` its standard
    uncertainty; `volume_from_water` tells whether water was weighed or the dimensions were used. `told_by` is
    what a hand or an eye knows it by (red tape on the handle), `replaces_id` the scoop whose place it took."""

    id: str
    farm_id: str
    name: str
    shape: Shape
    volume_ml: float
    volume_u_ml: float
    volume_from_water: bool = False
    told_by: str = ""
    replaces_id: str | None = None
    retired_on: date | None = None
    retired_why: str = ""
    revision: str = ""


@dataclass(frozen=True, kw_only=True)
class CoolingReadings:
    """A mix left in a vessel and read twice, `minutes` apart, beside the air around it."""

    first_c: float
    later_c: float
    minutes: int
    air_c: float
    first_typed: str = ""
    later_typed: str = ""
    air_typed: str = ""


@dataclass(frozen=True, kw_only=True)
class Vessel:
    """A pail, tote or tank; `usable_share` of its rim volume may be filled, the rest is headspace."""

    id: str
    farm_id: str
    name: str
    rim_volume_ml: float
    rim_volume_typed: str = ""
    usable_share: float = 0.9
    shape: Shape | None = None
    cooling: CoolingReadings | None = None
    retired_on: date | None = None
    revision: str = ""
