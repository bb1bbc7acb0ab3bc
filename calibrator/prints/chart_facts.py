"""What a wall chart must be told. Weights in g, volumes in mL, as everywhere."""

from __future__ import annotations

from datetime import date

from calibrator.model import FillWay, MixingRate, Paper, UnitSystem, VolumeMeans
from calibrator.prints.label_facts import LineCount
from calibrator.values import dataclass


@dataclass(frozen=True, kw_only=True)
class ScoopPart:
    """So many scoopfuls of one scoop, filled one way; `count` to the quarter.

    `otherwise` where most rows of the chart or of its group have the same scoop filled another way: it stands out.
    `line_g` tells which line where the scoop's label bears several, by the weight beside it; else it is 0.
    """

    scoop_name: str
    way: FillWay
    count: float
    otherwise: bool = False
    line_g: float = 0.0


@dataclass(frozen=True, kw_only=True)
class ChartRow:
    """One count of calves. With several batches, water, powder and scoopfuls are of one batch.

    Levels stand above the vessel's floor, as a stick in it reads: of the water alone, and of the finished mix.
    `fits` is False where the vessel would run over. `additives` pairs what is weighed in besides the powder with
    its weight in g. `many` scoopfuls are better weighed, and the row says so. Powder that the scale does not weigh at
    once is weighed in `portions` of `portion_g`. `for_water`: rounding moved the water so far that the powder goes by
    it.
    """

    calves: int
    water_ml: float
    powder_g: float
    scoopfuls: tuple[ScoopPart, ...] = ()
    many: bool = False
    batches: int = 1
    water_temperature_c: float | None = None  # the chart's own where None
    mix_ml: float | None = None
    water_level_mm: float | None = None
    mix_level_mm: float | None = None
    fits: bool = True
    today: bool = False
    additives: tuple[tuple[str, float], ...] = ()
    portions: int = 1
    portion_g: float = 0.0
    for_water: bool = False


@dataclass(frozen=True, kw_only=True)
class ChartGroup:
    """Calves that are fed alike. `fed_ml` is the finished mix that each is to drink, `each_g` the powder alone in it,
    `each_scoopfuls` how it is counted; none where no count comes near. `each_by_lines` is how the label tells one that
    ends in half a scoopful.
    """

    name: str
    rate: MixingRate
    volume_ml: float
    volume_means: VolumeMeans
    rows: tuple[ChartRow, ...]
    solids_share: float | None = None  # powder ÷ mix, by weight
    fed_ml: float | None = None
    each_g: float | None = None
    each_scoopfuls: tuple[ScoopPart, ...] = ()
    each_by_lines: LineCount | None = None


@dataclass(frozen=True, kw_only=True)
class LotPart:
    """What one lot gives to a batch; without `scoopfuls` it is weighed. Its lines are those for that lot."""

    lot_number: str
    powder_g: float
    scoopfuls: tuple[ScoopPart, ...] = ()


@dataclass(frozen=True, kw_only=True)
class TwoLots:
    """One of the day's equal `batches` for the `calves`: the last of one lot, the rest from the next, in this order.

    With `one_line` the lines of both lie at one place: nobody has to look for each lot's own.
    """

    calves: int
    parts: tuple[LotPart, ...]
    group_name: str = ""
    batches: int = 1
    one_line: bool = False


@dataclass(frozen=True, kw_only=True)
class WeekRow:
    """Days that one calf of a group is fed alike, volumes of finished mix.

    `to_day` is None for the last, `feedings` 0 once it is weaned.

    `feeding_ml` and `feeding_g` are None where the day's feedings differ.
    """

    from_day: int
    to_day: int | None
    begins: date
    feedings: int
    day_ml: float
    day_g: float
    feeding_ml: float | None = None
    feeding_g: float | None = None


@dataclass(frozen=True, kw_only=True)
class Weeks:
    """A group's way to weaning, a page of its own."""

    name: str
    rows: tuple[WeekRow, ...]


@dataclass(frozen=True, kw_only=True)
class WallChart:
    """A chart for one lot and one plan. `water_step` is in quarts or litres, as the farm has it.

    With `cold_below_c` it is the plan's variant for weather below that, and says so.
    """

    farm_name: str
    plan_name: str
    lot_number: str
    weighed_in_on: date
    number: int
    groups: tuple[ChartGroup, ...]
    water_temperature_c: float
    replaces: int | None = None
    by: str = ""
    product: str = ""
    medicated: bool = False
    vessel_name: str = ""
    printed_on: date | None = None
    units: UnitSystem = UnitSystem.FARM
    paper: Paper = Paper.LETTER
    languages: tuple[str, ...] = ("en",)
    resolution_g: float | None = None
    label_step_g: float | None = None  # that of weights on labels, where it is another
    water_step: float | None = None
    cold_below_c: float | None = None
    two_lots: tuple[TwoLots, ...] = ()
    least_additive_g: float = 0.0  # the lightest additive that the scale can weigh
    scale_most_g: float = 0.0  # what the scale weighs, its container included; 0 where not known
    scale_off_share: float = 0.0  # how much too much it showed at the weigh-in; 0 where it was right
    weeks: tuple[Weeks, ...] = ()
