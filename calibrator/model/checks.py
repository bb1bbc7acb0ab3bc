"""Instruments, and checks of the mix."""

from datetime import date, datetime
from enum import StrEnum

from calibrator.values import dataclass


class InstrumentKind(StrEnum):
    """What a mix is read with."""

    REFRACTOMETER = "refractometer"
    HYDROMETER = "hydrometer"
    JUG = "jug"
    THERMOMETER = "thermometer"


class ReadingKind(StrEnum):
    """What a reading of a mix tells. The two specific gravities are different things."""

    BRIX = "brix"  # refractometer, °Brix
    REFRACTOMETER_SG = "refractometer_sg"  # refractometer's SG scale: that of sugar water
    HYDROMETER_SG = "hydrometer_sg"  # hydrometer floating in the mix itself
    JUG_MASS = "jug_mass"  # mix in a jug of known volume, g, without the jug
    WATER_TEMPERATURE = "water_temperature"  # °C
    MIX_TEMPERATURE = "mix_temperature"
    CALF_TEMPERATURE = "calf_temperature"
    PRISM_TEMPERATURE = "prism_temperature"  # of a refractometer without compensation
    FINISHED_VOLUME = "finished_volume"  # mix in the vessel, mL
    FINISHED_LEVEL = "finished_level"  # mm above the floor of the vessel


class Pail(StrEnum):
    """Which pail of the batch a reading is of."""

    ANY = "any"
    FIRST = "first"
    LAST = "last"


class InstrumentCheckKind(StrEnum):
    WATER = "water"  # in plain water
    KNOWN = "known"  # in a known solution, or against a known temperature


@dataclass(frozen=True, kw_only=True)
class Instrument:
    """Something that a mix is read with.

    `division` is the step of its scale: °Brix, specific gravity, or °C. `compensated` tells whether a
    refractometer corrects for temperature by itself; `reference_c` is where a hydrometer's scale holds. A jug
    has `volume_ml` with its standard uncertainty; `volume_typed` is blank where water weighed in it told that.
    """

    id: str
    farm_id: str
    name: str
    kind: InstrumentKind
    division: float = 0.0
    division_typed: str = ""
    compensated: bool = True
    reference_c: float = 20.0
    reference_typed: str = ""
    volume_ml: float | None = None
    volume_u_ml: float = 0.0
    volume_typed: str = ""
    retired_on: date | None = None
    revision: str = ""

    @property
    def volume_by_water(self) -> bool:
        """Whether water weighed in the jug told its volume: an error of the scale is in both, and cancels."""
        return self.volume_ml is not None and not self.volume_typed


@dataclass(frozen=True, kw_only=True)
class InstrumentCheck:
    """An instrument looked at: what it should have shown and what it showed, in its own unit.

    A jug's check is water weighed in it: `reading` is the weight in g, `expected` its volume in mL. One with a
    `withdrawn_reason` no longer counts.
    """

    id: str
    farm_id: str
    instrument_id: str
    kind: InstrumentCheckKind
    expected: float
    reading: float
    typed: str
    at: datetime
    by: str = ""
    temperature_c: float | None = None
    temperature_typed: str = ""
    withdrawn_reason: str = ""
    revision: str = ""

    @property
    def counts(self) -> bool:
        return not self.withdrawn_reason


@dataclass(frozen=True, kw_only=True)
class ReferenceMix:
    """A mix weighed on the scale and read with a refractometer, a point of the farm's own line."""

    id: str
    farm_id: str
    lot_id: str
    instrument_id: str
    powder_g: float
    powder_typed: str
    water_g: float
    water_typed: str
    readings_brix: tuple[float, ...]
    readings_typed: str
    at: datetime
    by: str = ""
    temperature_c: float | None = None
    temperature_typed: str = ""
    withdrawn_reason: str = ""
    revision: str = ""

    @property
    def counts(self) -> bool:
        return not self.withdrawn_reason


@dataclass(frozen=True, kw_only=True)
class Reading:
    """One reading of a mix in the unit of its kind, with the text as typed."""

    kind: ReadingKind
    value: float
    typed: str
    pail: Pail = Pail.ANY
    instrument_id: str = ""


@dataclass(frozen=True, kw_only=True)
class MixCheck:
    """Readings of one finished batch, and what was made of them then.

    `group_name` is that of the plan's group, blank for all together; `feeder` who mixed. Solids are shares, powder
    weight ÷ mix weight, as mixed: target and tolerance as aimed at, and the outcome with its 95 % interval (None where
    the readings tell no solids). `way` and `verdict` are words of `science`. `same_batch_as` is the check before it
    of the same batch, blank where it is another batch's; None where nobody was asked.
    """

    id: str
    farm_id: str
    at: datetime
    lot_id: str
    readings: tuple[Reading, ...]
    target_share: float
    target_typed: str
    tolerance_share: float
    tolerance_typed: str
    by: str = ""
    feeder: str = ""
    plan_id: str | None = None
    group_name: str = ""
    calves: int = 0
    vessel_id: str | None = None
    solids_share: float | None = None
    solids_low: float | None = None
    solids_high: float | None = None
    way: str = ""
    verdict: str = ""
    note: str = ""
    program_version: str = ""
    withdrawn_reason: str = ""
    same_batch_as: str | None = None
    revision: str = ""

    @property
    def counts(self) -> bool:
        return not self.withdrawn_reason


@dataclass(frozen=True, kw_only=True)
class BagCount:
    """Bags emptied against feedings (of one calf each) made since a day. `sharp` tells that it ran from a
    bag just opened to a bag just emptied."""

    id: str
    farm_id: str
    lot_id: str
    since: date
    at: datetime
    bags: float
    bags_typed: str
    bag_mass_g: float
    bag_mass_typed: str
    feedings: int
    target_mass_g: float
    target_typed: str
    sharp: bool = True
    feedings_per_day: int = 0
    by: str = ""
    withdrawn_reason: str = ""
    revision: str = ""

    @property
    def counts(self) -> bool:
        return not self.withdrawn_reason
