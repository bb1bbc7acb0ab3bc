"""The nouns: frozen values that every room shares.

Plain numbers are in one unit, told by the name: g, mL, mm, °C, %, g/mL. Shares are fractions of 1. A noun
that people can correct carries `id` (which thing) and `revision` (which telling of it; blank until kept).

The hints stand as what they are, not as strings: the records read them at every start to make their tables.
"""

from calibrator.model.checks import (
    BagCount,
    Instrument,
    InstrumentCheck,
    InstrumentCheckKind,
    InstrumentKind,
    MixCheck,
    Pail,
    Reading,
    ReadingKind,
    ReferenceMix,
)
from calibrator.model.farm import CoolingReadings, Farm, HotWater, Paper, Scale, Scoop, UnitSystem, Vessel
from calibrator.model.lots import Composition, Lot, PackageKind, PackagesLeft, ScoopMarked
from calibrator.model.names import new_id
from calibrator.model.paper import Ending, LabelledLine, Printed, PrintKind, SheetEnding, fills_to_line
from calibrator.model.plans import (
    Additive,
    ColdWeather,
    Feeding,
    FeedingStep,
    MixingRate,
    Plan,
    PlanGroup,
    RateBasis,
    Scoopfuls,
    ScoopRule,
    VolumeMeans,
    Warmth,
)
from calibrator.model.season import BagSum, LevelFill, LotPoint, LotPoints, SeasonLot, Taught
from calibrator.model.shapes import Box, Cylinder, Poured, Shape, TaperedCup
from calibrator.model.trials import FeederTrial, TrialFill
from calibrator.model.weighing import Fill, FillWay, Mark, SignOff, SpotFill, Step, WeighIn, standing_numbers

Noun = (
    Farm
    | Scale
    | Scoop
    | Lot
    | WeighIn
    | Plan
    | Vessel
    | Instrument
    | InstrumentCheck
    | ReferenceMix
    | MixCheck
    | BagCount
    | FeederTrial
)
"""The nouns that people can correct: kept as revisions. All else that is kept happened, and never changes."""

__all__ = [
    "Additive",
    "BagCount",
    "BagSum",
    "Box",
    "ColdWeather",
    "Composition",
    "CoolingReadings",
    "Cylinder",
    "Ending",
    "Farm",
    "FeederTrial",
    "Feeding",
    "FeedingStep",
    "Fill",
    "FillWay",
    "HotWater",
    "Instrument",
    "InstrumentCheck",
    "InstrumentCheckKind",
    "InstrumentKind",
    "LabelledLine",
    "LevelFill",
    "Lot",
    "LotPoint",
    "LotPoints",
    "Mark",
    "MixCheck",
    "MixingRate",
    "Noun",
    "PackageKind",
    "PackagesLeft",
    "Pail",
    "Paper",
    "Plan",
    "PlanGroup",
    "Poured",
    "PrintKind",
    "Printed",
    "RateBasis",
    "Reading",
    "ReadingKind",
    "ReferenceMix",
    "Scale",
    "Scoop",
    "ScoopMarked",
    "ScoopRule",
    "Scoopfuls",
    "SeasonLot",
    "Shape",
    "SheetEnding",
    "SignOff",
    "SpotFill",
    "Step",
    "TaperedCup",
    "Taught",
    "TrialFill",
    "UnitSystem",
    "Vessel",
    "VolumeMeans",
    "Warmth",
    "WeighIn",
    "fills_to_line",
    "new_id",
    "standing_numbers",
]
