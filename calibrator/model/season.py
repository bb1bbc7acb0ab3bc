"""A season in rows: each lot as last signed off, and what its bags weighed. Made by the thousand, so tuples."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from datetime import date, datetime
from typing import Any, NamedTuple

from calibrator.model.paper import fills_to_line
from calibrator.values import dataclass


class SeasonLot(NamedTuple):
    """A lot as last signed off with one scoop, with what the records tell of lot, scoop, weigh-in and mark.

    Fields are named as in `Lot`, `SignOff`, `WeighIn` and `Mark`. What is not known is None or blank; a lot
    without a mark has a `target_mass_g` of None.
    """

    sign_off_id: str
    weigh_in_id: str
    lot_id: str
    lot_number: str
    product: str
    made_on: date | None
    arrived_on: date | None
    note: str
    plant_code: str
    agglomerated: bool | None
    price_per_package: float | None
    package_mass_g: float | None
    scoop_id: str
    scoop_name: str
    scoop_revision: str
    at: datetime
    by: str
    bags: int
    fills: int
    level_mean_g: float
    level_u_g: float
    degrees_of_freedom: float
    density_g_per_ml: float
    density_u_g_per_ml: float
    density_low_g_per_ml: float
    density_high_g_per_ml: float
    bag_sd_share: float
    fill_sd_share: float
    settling_factor: float
    settling_u: float
    humidity_pct: float | None
    temperature_c: float | None
    target_mass_g: float | None
    down_wall_mm: float | None
    full_scoops: int | None
    mark_mass_g: float | None

    @property
    def weighed_on(self) -> date:
        """The day of the weigh-in by this computer's clock: two lots of one evening are of one day there."""
        return self.at.astimezone().date()

    @property
    def signed_off(self) -> bool:
        """Not so for a past weighing out of a file: it stands under the name of its weigh-in."""
        return self.sign_off_id != self.weigh_in_id

    @property
    def density_half_width_g_per_ml(self) -> float:
        """Half of the 95 % interval of the bulk density."""
        return (self.density_high_g_per_ml - self.density_low_g_per_ml) / 2

    @property
    def to_line(self) -> int:
        """How many scoopfuls to its line a feeding takes."""
        return fills_to_line(self.target_mass_g or 0.0, self.mark_mass_g or 0.0, self.full_scoops or 0)

    @property
    def struck_level(self) -> bool:
        """Whether its scoop is used level, without a line, as in `Mark`."""
        return self.down_wall_mm == 0


class LotPoint(NamedTuple):
    """Of a `SeasonLot` only what its picture and its chart need: of many lots this is read first."""

    lot_id: str
    lot_number: str
    scoop_id: str
    product: str
    made_on: date | None
    arrived_on: date | None
    agglomerated: bool | None
    at: datetime
    level_mean_g: float
    level_u_g: float
    density_g_per_ml: float
    density_low_g_per_ml: float
    density_high_g_per_ml: float
    signed_off: bool = True

    @property
    def weighed_on(self) -> date:
        """As that of `SeasonLot`."""
        return self.at.astimezone().date()

    @property
    def density_half_width_g_per_ml(self) -> float:
        """As that of `SeasonLot`."""
        return (self.density_high_g_per_ml - self.density_low_g_per_ml) / 2


@dataclass(frozen=True, eq=False)
class LotPoints:
    """The points of many lots, a column for each field of `LotPoint`: twenty thousand are there sooner as thirteen
    columns than as so many objects."""

    columns: tuple[Sequence[Any], ...]

    @classmethod
    def of(cls, points: Iterable[LotPoint]) -> LotPoints:
        """The columns of some points."""
        columns = tuple(zip(*points, strict=True))
        return cls(columns or ((),) * len(LotPoint._fields))

    def column(self, name: str) -> Sequence[Any]:
        """One field of all of them."""
        return self.columns[LotPoint._fields.index(name)]

    def at(self, places: Sequence[int]) -> LotPoints:
        """Those at some places, in their order."""
        if list(places) == list(range(len(self))):
            return self
        return LotPoints(tuple([column[place] for place in places] for column in self.columns))

    def in_order(self) -> LotPoints:
        """By the time of their sign-off."""
        return self.at(sorted(range(len(self)), key=self.column("at").__getitem__))

    def __len__(self) -> int:
        return len(self.columns[0])

    def __getitem__(self, place: int) -> LotPoint:
        return LotPoint._make(column[place] for column in self.columns)


class LevelFill(NamedTuple):
    """A level fill that counts: the weigh-in and bag it belongs to, g of all its scoopfuls together."""

    weigh_in_id: str
    bag: int
    mass_g: float
    scoopfuls: int


class Taught(NamedTuple):
    """Of a sign-off what later weigh-ins learn from it; a `settling_u` of 0 is a factor that was only assumed."""

    weigh_in_id: str
    at: datetime
    settling_factor: float
    settling_u: float


class BagSum(NamedTuple):
    """The level fills of one bag by one person that count, in sums; masses are g of one scoopful.

    `sum_g` is Σ of scoopfuls · mass, `sum_g2` Σ of scoopfuls · mass².
    """

    weigh_in_id: str
    bag: int
    by: str
    weighings: int
    scoopfuls: int
    sum_g: float
    sum_g2: float
