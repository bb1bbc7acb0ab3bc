"""What a season report must be told: the season as science finds it."""

from __future__ import annotations

from datetime import date

from calibrator.model import Paper, UnitSystem
from calibrator.science.carried_over import Wanting
from calibrator.science.mark import OldLineVerdict
from calibrator.science.season_findings import Season
from calibrator.science.season_spread import SpreadFindings
from calibrator.values import dataclass

MOST_CARRIED = 8  # changes of lot, the newest, that the report has room for
MOST_COUNTED = 4  # lots whose bags were counted, the newest; as many of those with spot fills, and weighed in anew


@dataclass(frozen=True)
class MixChecks:
    """Batches checked, as they were mixed, by verdict as it stood on the page: `likely` look right, `leaning` are
    probably off, neither surely. `off_share` is how far off target they were on average, None for too few. Of those
    off some were put right and `read_again`, and came `right` so."""

    inside: int = 0
    likely: int = 0
    leaning: int = 0
    outside: int = 0
    off_share: float | None = None
    read_again: int = 0
    right: int = 0

    @property
    def count(self) -> int:
        return self.inside + self.likely + self.leaning + self.outside


@dataclass(frozen=True)
class Carried:
    """A feeding of a lot, the scoop filled as for the lot before (to its line, or `level`): g with its 95 % interval,
    solids as mixed, and what the powder above the target costs a day (None where what is `wanting` is not known)."""

    lot_number: str
    before: str
    mass_g: float
    low_g: float
    high_g: float
    off_share: float
    solids_share: float | None = None
    money_a_day: float | None = None
    level: bool = False
    wanting: tuple[Wanting, ...] = ()


@dataclass(frozen=True)
class LastChange:
    """The last change of lot with one scoop: how much denser the later lot is, as a share of the one before, and the
    lines of both below the rim (None without one)."""

    lot_number: str
    before: str
    share: float
    taken_off_g: float = 0.0  # of a level scoopful for the scale's error, less than 0 where it was added
    before_taken_off_g: float = 0.0
    line_mm: float | None = None
    before_line_mm: float | None = None


@dataclass(frozen=True)
class BagsCounted:
    """What a feeding of a lot got by the bags counted, over so many feedings: g, and ÷ target − 1."""

    lot_number: str
    mass_g: float
    share: float
    feedings: int


@dataclass(frozen=True)
class SpotFilled:
    """What the spot fills of a lot, `fills` of them, say of a feeding as it is filled: g, ÷ target − 1, and whether the
    mark still holds."""

    lot_number: str
    fills: int
    mass_g: float
    share: float
    verdict: OldLineVerdict


@dataclass(frozen=True)
class LineMoved:
    """A lot weighed in anew for the same feeding and what became of its line: mm below the rim, 0 for one that is used
    level."""

    lot_number: str
    on: date
    before_mm: float
    line_mm: float


@dataclass(frozen=True, kw_only=True)
class SeasonReport:
    """A farm's season. `spread` is None where the fills tell none, `change` where no scoop has two lots; `spot_fills`
    are all of the season, `spotted` the newest lots that they judge; `fed` is the number of the lot in use, blank
    without one."""

    farm_name: str
    season: Season
    spread: SpreadFindings | None
    checks: MixChecks
    tolerance_share: float
    change: LastChange | None = None
    carried: tuple[Carried, ...] = ()
    counted: tuple[BagsCounted, ...] = ()
    spot_fills: int = 0
    spotted: tuple[SpotFilled, ...] = ()
    moved: tuple[LineMoved, ...] = ()
    fed: str = ""
    currency: str = "$"
    printed_on: date
    units: UnitSystem = UnitSystem.FARM
    paper: Paper = Paper.LETTER
    languages: tuple[str, ...] = ("en",)
