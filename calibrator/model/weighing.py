"""A weigh-in: fills, what was signed off, and the mark."""

from collections.abc import Iterable
from datetime import datetime
from enum import StrEnum
from itertools import count

from calibrator.values import dataclass


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


@dataclass(frozen=True, kw_only=True)
class WeighIn:
    """The fills of one lot with one scoop on one scale on one day, up to sign-off.

    It is filled in step by step, so most of it may be unknown yet. `old_line_mm` is the line found on the
    scoop, `drawn_line_mm` the new line as drawn; both are distances down the wall from the rim. `abandoned` is one
    that is not gone on with: given up, or a past one out of a file.
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


def standing_numbers(fills: Iterable[Fill | SpotFill]) -> list[int | None]:
    """By which number people call each fill, 1, 2, 3, …: it counts those that stand, in their order. None for one
    struck out or taken back.
    """
    numbers = count(1)
    return [next(numbers) if fill.counts else None for fill in fills]


@dataclass(frozen=True, kw_only=True)
class SignOff:
    """The frozen outcome of a weigh-in. Masses are of one scoopful; intervals are 95 %.

    `level_*` is the struck-level scoopful, `density_*` the bulk density struck level. `settling_factor` is
    the density to the line ÷ struck level. `bag_sd_share` and `fill_sd_share` are the spreads between bags
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

    @property
    def density_half_width_g_per_ml(self) -> float:
        """Half of the 95 % interval of the bulk density."""
        return (self.density_high_g_per_ml - self.density_low_g_per_ml) / 2


@dataclass(frozen=True, kw_only=True)
class Mark:
    """A line on a scoop for one lot and one target weight, as signed off.

    `full_scoops` struck-level scoopfuls go before the one filled to the line. `mass_g` is what the fills to
    the line weighed (or are expected to weigh where none were taken). A line at the rim, 0 mm down the wall, is none:
    the last scoopful is struck level too.
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

    @property
    def struck_level(self) -> bool:
        """Whether no line is needed: level scoopfuls alone are the feeding."""
        return self.down_wall_mm == 0

    @property
    def level_scoopfuls(self) -> int:
        """How many scoopfuls of a feeding are struck level."""
        return self.full_scoops + int(self.struck_level)
