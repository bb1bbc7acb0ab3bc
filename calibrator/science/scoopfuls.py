"""Scoopfuls of known weight: what so many of them weigh together, and how far that may be off."""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator, Sequence

from calibrator.model import FillWay
from calibrator.science.guard import positive
from calibrator.science.stats import NORMAL_95
from calibrator.values import dataclass

MOST_COUNTABLE = 24
PART_FILL_SD_SHARE = 0.05
"""A half or a quarter by eye spreads by this share of the whole scoop: common practice, no source."""


@dataclass(frozen=True)
class ScoopWay:
    """One kind of fill: a scoop, how it is filled, what one scoopful weighs.

    `u_mean_g` is the standard uncertainty of that weight for this lot (`normal_u`), `fill_sd_g` the spread of single
    scoopfuls of a bag, `bag_sd_g` that of the bags around it. `full_scoops` level scoopfuls go before each one to
    this line, for one feeding; of level scoopfuls, so many alone are one. `down_wall_mm` is where the line is, from the
    rim; None for level. `line_g` is the weight that stands beside the line where the scoop's label has several, g, told
    in steps of `line_step_g` there; 0 where it needs no name.
    """

    scoop_id: str
    name: str
    way: FillWay
    mass_g: float
    u_mean_g: float = 0.0
    fill_sd_g: float = 0.0
    bag_sd_g: float = 0.0
    full_scoops: int = 0
    down_wall_mm: float | None = None
    line_g: float = 0.0
    line_step_g: float = 0.0


@dataclass(frozen=True)
class ScoopCount:
    """Scoopfuls of each kind and what they weigh together.

    `parts` pairs a way with how many (3.5 is three and a half); `scoopfuls` counts fills, a part fill as one.
    `error_g` is total − target: the rounding. `spread_95_g` is the half-width at 95 % of what so many
    scoopfuls weigh: their own spread and the doubt in the lot's mean.
    """

    parts: tuple[tuple[ScoopWay, float], ...]
    scoopfuls: int
    total_g: float
    error_g: float
    error_share: float
    spread_95_g: float

    @property
    def spread_95_share(self) -> float:
        """The spread, ÷ the target."""
        return self.spread_95_g / (self.total_g - self.error_g)

    @property
    def reach_95_share(self) -> float:
        """How far it may be off the target, ÷ the target: the rounding and the spread one way."""
        return abs(self.error_share) + self.spread_95_share

    @property
    def countable(self) -> bool:
        """Few enough to be counted without losing track."""
        return self.scoopfuls <= MOST_COUNTABLE

    @property
    def by_feeding(self) -> bool:
        """Of one scoop, as its label says for one feeding: N times that for N calves."""
        counts = dict(self.parts)
        for feeding in feedings([way for way, _ in self.parts]):
            times = {counts[way] / n for way, n in feeding}
            if len(feeding) == len(counts) and len(times) == 1 and times.pop().is_integer():
                return True
        return False

    @property
    def told(self) -> bool:
        """Whether people are told it: countable, or as its label says, which is beside weighing where it is many."""
        return self.countable or self.by_feeding


def feedings(ways: Iterable[ScoopWay]) -> Iterator[tuple[tuple[ScoopWay, int], ...]]:
    """What each scoop is meant for, a feeding: so many level scoopfuls, one to its line, or both, level first."""
    ways = tuple(ways)
    level = {way.scoop_id: way for way in ways if way.way is FillWay.LEVEL}
    for way in ways:
        if way.way is FillWay.LEVEL and way.full_scoops:
            yield ((way, way.full_scoops),)
        elif way.way is FillWay.TO_MARK and not way.full_scoops:
            yield ((way, 1),)
        elif way.way is FillWay.TO_MARK and (rim := level.get(way.scoop_id)) is not None:
            yield ((rim, way.full_scoops), (way, 1))


def filled_otherwise(way: ScoopWay, manner: Sequence[ScoopWay]) -> bool:
    """Whether a scoop is filled another way than a table's one manner fills the same scoop."""
    return way not in manner and any(kept.scoop_id == way.scoop_id for kept in manner)


def filled_to_share(count: ScoopCount, mass_g: float) -> float:
    """The same count with each scoopful to a line weighing this, g, ÷ the count as it is − 1."""
    more_g = sum(n * (mass_g - way.mass_g) for way, n in count.parts if way.way is FillWay.TO_MARK)
    return more_g / count.total_g


def normal_u(half_95: float) -> float:
    """The standard deviation of a normal spread that reaches so far at 95 %: what few degrees of freedom widen stays
    as wide where it is added to normal spreads. JCGM 100:2008, 4.3.4."""
    return half_95 / NORMAL_95


def spread_95_g(parts: Sequence[tuple[ScoopWay, float]]) -> float:
    """Half-width at 95 % of the weight of these scoopfuls, g, normal.

    Single fills vary independently (their variances add); the means of a lot err together (they add as they are),
    and so do scoopfuls of one bag: a batch is scooped out of the bag in hand. A part fill adds 5 % of its whole
    scoop, by eye. JCGM 100:2008, 5.2.2, note 1.
    """
    whole = sum(n * way.fill_sd_g**2 for way, n in parts)
    by_eye = sum((PART_FILL_SD_SHARE * way.mass_g) ** 2 for way, n in parts if n != math.floor(n))
    together = sum(n * way.u_mean_g for way, n in parts)
    one_bag = sum(n * way.bag_sd_g for way, n in parts)
    return NORMAL_95 * math.sqrt(whole + by_eye + together**2 + one_bag**2)


def scoop_count(parts: Sequence[tuple[ScoopWay, float]], target_g: float) -> ScoopCount:
    """These scoopfuls beside a target weight. Raises CannotCompute unless the target is above zero."""
    target = positive(target_g, "The weight of powder")
    total = sum(n * way.mass_g for way, n in parts)
    fills = sum(math.ceil(n) for _, n in parts)
    return ScoopCount(tuple(parts), fills, total, total - target, total / target - 1, spread_95_g(parts))
