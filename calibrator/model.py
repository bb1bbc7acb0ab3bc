"""The nouns: frozen values that every room shares.

Plain numbers are in one unit, told by the name: g, mL, mm, °C, %, g/mL. Shares are fractions of 1. A noun
that people can correct carries `id` (which thing) and `revision` (which telling of it; blank until kept).
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, datetime
from enum import StrEnum
from uuid import uuid4


def new_id() -> str:
    """A name for a new thing, unique across computers."""
    return uuid4().hex


class UnitSystem(StrEnum):
    """What numbers are shown in; typed units are always accepted."""

    FARM = "farm"
    METRIC = "metric"


class Paper(StrEnum):
    LETTER = "letter"
    A4 = "a4"


class PackageKind(StrEnum):
    BAG = "bag"
    TOTE = "tote"


class FillWay(StrEnum):
    """How a scoop was filled: struck off at the rim, to its line, or packed by taps."""

    LEVEL = "level"
    TO_MARK = "to_mark"
    TAPPED = "tapped"


class Step(StrEnum):
    """The steps of a weigh-in, in their order."""

    LOT = "lot"
    SCOOP_AND_SCALE = "scoop_and_scale"
    LEVEL_FILLS = "level_fills"
    MARK = "mark"
    FILLS_TO_MARK = "fills_to_mark"
    SIGN_OFF = "sign_off"


class RateBasis(StrEnum):
    """What a mixing rate counts powder against."""

    ON_WATER = "on_water"  # powder added on top of a volume of water
    MADE_UP = "made_up"  # powder, then water up to a volume of finished mix
    SOLIDS = "solids"  # powder weight ÷ mix weight
    DRY_MATTER = "dry_matter"  # dry matter ÷ mix weight
    PER_FINISHED = "per_finished"  # powder in each volume of finished mix as fed


class VolumeMeans(StrEnum):
    """What a volume per calf measures."""

    FINISHED_MIX = "finished_mix"
    WATER = "water"


class PrintKind(StrEnum):
    SCOOP_LABEL = "scoop_label"
    WALL_CHART = "wall_chart"
    LOT_SHEET = "lot_sheet"


class Ending(StrEnum):
    """What became of a printed sheet, as somebody saw it."""

    TAKEN_DOWN = "taken_down"
    REPLACED = "replaced"  # by hand, or by a sheet from elsewhere
    SPOILED = "spoiled"  # never got there: jammed, off scale, thrown away
    STILL_UP = "still_up"  # said before by mistake: it is there after all


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


@dataclass(frozen=True, kw_only=True)
class Composition:
    """A label's guaranteed analysis, percent of the powder as sold; None where the label is silent."""

    protein_pct: float | None = None
    fat_pct: float | None = None
    fibre_pct: float | None = None
    ash_pct: float | None = None
    moisture_pct: float | None = None


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
    uncertainty; `volume_from_water` tells whether water was weighed or the dimensions were used."""

    id: str
    farm_id: str
    name: str
    shape: Shape
    volume_ml: float
    volume_u_ml: float
    volume_from_water: bool = False
    retired_on: date | None = None
    revision: str = ""


@dataclass(frozen=True, kw_only=True)
class PackagesLeft:
    """Packages of a lot counted at the start of a day; an open one counts as its part."""

    packages: float
    on: date
    typed: str = ""


@dataclass(frozen=True, kw_only=True)
class Lot:
    """Powder that came under one lot number. `fed_from` is the change-over: the first day that it is fed."""

    id: str
    farm_id: str
    lot_number: str
    product: str = ""
    made_on: date | None = None
    arrived_on: date | None = None
    package: PackageKind = PackageKind.BAG
    package_count: int | None = None
    package_mass_g: float | None = None
    package_mass_typed: str = ""
    composition: Composition = Composition()
    medicated: bool = False
    note: str = ""
    fed_from: date | None = None
    finished_on: date | None = None  # the day the last of it was fed
    packages_left: PackagesLeft | None = None  # the newest count
    revision: str = ""


@dataclass(frozen=True, kw_only=True)
class WeighIn:
    """The fills of one lot with one scoop on one scale on one day, up to sign-off.

    It is filled in step by step, so most of it may be unknown yet. `old_line_mm` is the line found on the
    scoop, `drawn_line_mm` the new line as drawn; both are distances down the wall from the rim.
    """

    id: str
    farm_id: str
    lot_id: str
    started_at: datetime
    step: Step = Step.LOT
    by: str = ""
    scoop_id: str | None = None
    scale_id: str | None = None
    target_mass_g: float | None = None
    target_typed: str = ""
    room_humidity_pct: float | None = None
    room_temperature_c: float | None = None
    scale_zeroed: bool = False
    check_nominal_g: float | None = None
    check_nominal_typed: str = ""
    check_reading_g: float | None = None
    check_reading_typed: str = ""
    old_line_mm: float | None = None
    old_line_typed: str = ""
    drawn_line_mm: float | None = None
    drawn_line_typed: str = ""
    abandoned: bool = False
    revision: str = ""


@dataclass(frozen=True, kw_only=True)
class Fill:
    """One weighed scoopful of a weigh-in, or several weighed together.

    `typed` is the text as typed. A struck-out fill stays, with the reason; it no longer counts.
    """

    id: str
    weigh_in_id: str
    way: FillWay
    bag: int
    mass_g: float
    typed: str
    by: str
    at: datetime
    scoopfuls: int = 1
    line_mm: float | None = None  # the line it was filled to, down the wall
    struck_reason: str | None = None

    @property
    def counts(self) -> bool:
        return self.struck_reason is None


@dataclass(frozen=True, kw_only=True)
class SpotFill:
    """One fill from a bag opened after sign-off; it belongs to the weigh-in that it keeps up to date."""

    id: str
    farm_id: str
    lot_id: str
    weigh_in_id: str
    way: FillWay
    mass_g: float
    typed: str
    by: str
    at: datetime
    line_mm: float | None = None
    struck_reason: str | None = None

    @property
    def counts(self) -> bool:
        return self.struck_reason is None


@dataclass(frozen=True, kw_only=True)
class SignOff:
    """The frozen outcome of a weigh-in. Masses are of one scoopful; intervals are 95 %.

    `level_*` is the struck-level scoopful, `density_*` the bulk density struck level. `settling_factor` is
    the density to the mark ÷ struck level. `bag_sd_share` and `fill_sd_share` are the spreads between bags
    and between fills of a bag, as shares of the mean. The revisions say which tellings of scoop, scale and
    lot it rests on.
    """

    id: str
    farm_id: str
    weigh_in_id: str
    lot_id: str
    scoop_id: str
    scale_id: str
    by: str
    at: datetime
    bags: int
    fills: int
    level_mean_g: float
    level_u_g: float
    level_low_g: float
    level_high_g: float
    degrees_of_freedom: float
    density_g_per_ml: float
    density_u_g_per_ml: float
    density_low_g_per_ml: float
    density_high_g_per_ml: float
    bag_sd_share: float
    fill_sd_share: float
    settling_factor: float
    settling_u: float
    verdict: str
    old_line_verdict: str
    scoop_revision: str
    scale_revision: str
    lot_revision: str
    program_version: str


@dataclass(frozen=True, kw_only=True)
class Mark:
    """A line on a scoop for one lot and one target weight, as signed off.

    `full_scoops` struck-level scoopfuls go before the one filled to the line. `mass_g` is what the fills to
    the line weighed (or are expected to weigh where none were taken).
    """

    id: str
    farm_id: str
    sign_off_id: str
    lot_id: str
    scoop_id: str
    target_mass_g: float
    full_scoops: int
    height_mm: float
    down_wall_mm: float
    mass_g: float
    mass_u_g: float


@dataclass(frozen=True, kw_only=True)
class MixingRate:
    """How strong the mix is to be. `powder_mass_g` on or in `volume_ml`, or `solids_share` of the mix."""

    basis: RateBasis
    powder_mass_g: float = 0.0
    volume_ml: float = 0.0
    solids_share: float = 0.0
    typed: str = ""


@dataclass(frozen=True, kw_only=True)
class Additive:
    """Something weighed into the mix besides the powder, at a rate of its own.

    `mosmol_per_g` is a laboratory's value, None where the composition has to do.
    """

    name: str
    rate: MixingRate
    composition: Composition = Composition()
    mosmol_per_g: float | None = None
    mosmol_typed: str = ""


@dataclass(frozen=True, kw_only=True)
class Feeding:
    """One of a day's feedings where they differ. A `rate` of None is the group's own."""

    name: str
    volume_ml: float
    rate: MixingRate | None = None


@dataclass(frozen=True, kw_only=True)
class FeedingStep:
    """What a group gets from one of its days on; no feedings from the day it is weaned."""

    from_day: int
    volume_ml: float
    feedings_per_day: int = 2


@dataclass(frozen=True, kw_only=True)
class PlanGroup:
    """Calves that are fed alike.

    With `feedings` the day's feedings differ, and there are as many as these. With `steps` the volume goes by
    the calves' day, counted from `day_one`; before the first step the group's own volume holds.
    """

    name: str
    calves: int
    volume_ml: float
    volume_means: VolumeMeans
    rate: MixingRate
    feedings_per_day: int = 2
    additives: tuple[Additive, ...] = ()
    feedings: tuple[Feeding, ...] = ()
    steps: tuple[FeedingStep, ...] = ()
    day_one: date | None = None


class ScoopRule(StrEnum):
    """How a weight of powder is told in scoopfuls."""

    FEWEST = "fewest"  # the fewest within the tolerance
    ONE_KIND = "one_kind"  # whole scoopfuls of one kind, the water trimmed to them
    WEIGH = "weigh"  # none: by weight


@dataclass(frozen=True, kw_only=True)
class Scoopfuls:
    """How a plan counts scoopfuls. `part_fills` are the parts of a scoop allowed besides whole ones.

    For ONE_KIND `scoop_id` and `way` say which; a blank `scoop_id` takes what changes the water least.
    """

    rule: ScoopRule = ScoopRule.FEWEST
    part_fills: tuple[float, ...] = ()
    scoop_id: str = ""
    way: FillWay = FillWay.LEVEL


@dataclass(frozen=True, kw_only=True)
class Warmth:
    """How warm powder and mix are. The mix is to land at `mix_c`; None draws water at the plan's temperature.

    `calves_in_ten_minutes` tells how fast calves are fed, 0 where it is not known.
    """

    powder_c: float
    mix_c: float | None = None
    powder_typed: str = ""
    mix_typed: str = ""
    calves_in_ten_minutes: int = 0


@dataclass(frozen=True, kw_only=True)
class ColdWeather:
    """What changes below a temperature: a share more powder, or further feedings. `on` is its switch."""

    below_c: float
    below_typed: str = ""
    more_powder_share: float = 0.0
    further_feedings: int = 0
    on: bool = False


@dataclass(frozen=True, kw_only=True)
class Plan:
    """Who is fed what. The table runs over `count_from … count_to` calves and always holds `counts` too."""

    id: str
    farm_id: str
    name: str
    groups: tuple[PlanGroup, ...]
    allowance_share: float = 0.0  # mixed on top for what stays in hoses and pails
    water_temperature_c: float = 43.0
    vessel_id: str | None = None
    count_from: int = 0
    count_to: int = 0
    count_step: int = 1
    counts: tuple[int, ...] = ()
    scoopfuls: Scoopfuls | None = None
    warmth: Warmth | None = None
    cold: ColdWeather | None = None
    retired_on: date | None = None
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


@dataclass(frozen=True, kw_only=True)
class Printed:
    """A sheet that left the printer. Numbers run per farm; an outdated sheet is known by its number."""

    id: str
    farm_id: str
    number: int
    kind: PrintKind
    lot_id: str
    sign_off_id: str
    at: datetime
    by: str = ""
    scoop_id: str | None = None
    plan_id: str | None = None
    replaces: int | None = None


@dataclass(frozen=True, kw_only=True)
class SheetEnding:
    """Somebody's word that a printed sheet is gone, or after all is not. The newest word on a sheet counts."""

    id: str
    farm_id: str
    print_id: str
    ending: Ending
    at: datetime
    by: str = ""


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
    has `volume_ml` with its standard uncertainty.
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

    `group_name` is that of the plan's group, `feeder` who mixed. Solids are shares, powder weight ÷ mix
    weight, as mixed: target and tolerance as aimed at, and the outcome with its 95 % interval (None where the
    readings tell no solids). `way` and `verdict` are words of `science`.
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
)
"""The nouns that people can correct: kept as revisions."""

Fact = Fill | SpotFill | SignOff | Mark | Printed | SheetEnding
"""What happened: kept once, never changed."""
