"""What stands in an empty field to show how it is filled in: a size that such a thing really has.

Weights of scoops, pails and bags as on farms here; common practice, no source.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import NamedTuple

from calibrator.model import UnitSystem

Example = Mapping[UnitSystem, str]


class Sizes(NamedTuple):
    """Inside: across (at the rim), across the floor of what tapers, high."""

    across: Example
    floor: Example
    height: Example


SCOOP_SIZES = Sizes(
    {UnitSystem.FARM: "3 7/8 in", UnitSystem.METRIC: "98 mm"},
    {UnitSystem.FARM: "3 3/8 in", UnitSystem.METRIC: "86 mm"},
    {UnitSystem.FARM: "4 1/8 in", UnitSystem.METRIC: "105 mm"},
)
VESSEL_SIZES = Sizes(
    {UnitSystem.FARM: "22 in", UnitSystem.METRIC: "560 mm"},
    {UnitSystem.FARM: "20 in", UnitSystem.METRIC: "510 mm"},
    {UnitSystem.FARM: "26 in", UnitSystem.METRIC: "660 mm"},
)
WATER_IN_SCOOP = {UnitSystem.FARM: "23.5 oz", UnitSystem.METRIC: "665 g"}
WATER_IN_JUG = {UnitSystem.FARM: "2.2 lb", UnitSystem.METRIC: "998 g"}
JUG = {UnitSystem.FARM: "1 qt", UnitSystem.METRIC: "1 L"}
TANK = {UnitSystem.FARM: "40 gal", UnitSystem.METRIC: "150 L"}
COLD_WATER = {UnitSystem.FARM: "50 °F", UnitSystem.METRIC: "10 °C"}
HOT_WATER = {UnitSystem.FARM: "140 °F", UnitSystem.METRIC: "60 °C"}
MIXING_TANK = {UnitSystem.FARM: "30 gal", UnitSystem.METRIC: "120 L"}
MIX_IN_VESSEL = {UnitSystem.FARM: "20 gal", UnitSystem.METRIC: "75 L"}
MIX = {UnitSystem.FARM: "105 °F", UnitSystem.METRIC: "41 °C"}
AT_THE_CALF = {UnitSystem.FARM: "102 °F", UnitSystem.METRIC: "39 °C"}
PLAIN_WATER = {UnitSystem.FARM: "68 °F", UnitSystem.METRIC: "20 °C"}
LEVEL = {UnitSystem.FARM: "12 in", UnitSystem.METRIC: "300 mm"}
BAG = {UnitSystem.FARM: "50 lb", UnitSystem.METRIC: "25 kg"}
POWDER_LEFT = {UnitSystem.FARM: "20 lb", UnitSystem.METRIC: "9 kg"}
ADDITIVE = {UnitSystem.FARM: "0.5 oz", UnitSystem.METRIC: "15 g"}
STEP = {UnitSystem.FARM: "0.1 oz", UnitSystem.METRIC: "1 g"}
CHECK_WEIGHT = {UnitSystem.FARM: "1 lb", UnitSystem.METRIC: "500 g"}
CHECK_WEIGHT_READ = {UnitSystem.FARM: "16 oz", UnitSystem.METRIC: "500 g"}
CAPACITY = {UnitSystem.FARM: "11 lb", UnitSystem.METRIC: "5 kg"}
WALL = {UnitSystem.FARM: "2 mm", UnitSystem.METRIC: "2 mm"}
COLD_AIR = {UnitSystem.FARM: "40 °F", UnitSystem.METRIC: "5 °C"}
TOLERANCE = dict.fromkeys(UnitSystem, "2 %")
GIVE_OR_TAKE = dict.fromkeys(UnitSystem, "0.5 %")
IN_HOSES = dict.fromkeys(UnitSystem, "3 %")
MORE_POWDER = dict.fromkeys(UnitSystem, "10 %")
SOLIDS = dict.fromkeys(UnitSystem, "13 %")
FILLED_TO = dict.fromkeys(UnitSystem, "90 %")
