"""What the calves get: rates, groups, plans."""

from datetime import date
from enum import StrEnum

from calibrator.model.lots import Composition
from calibrator.model.weighing import FillWay
from calibrator.values import dataclass


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
    """Something weighed into the mix besides the powder.

    `rate` is what a calf gets at each feeding, told on the group's own volume; it gets as much at a feeding or step of
    another volume. `mosmol_per_g` is a laboratory's value, None where the composition has to do.
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

    FEWEST = "fewest"  # to the line of one scoop where that comes out, else the fewest within the tolerance
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
    """Who is fed what. The table runs over `count_from … count_to` calves and always holds `counts` too.

    Without a `count_to` it runs about today's calves, whatever their number comes to be.
    """

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
