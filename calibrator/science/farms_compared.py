"""The same product on several farms: its lots' densities farm by farm, and lots that two farms weighed both.

A product that differs between farms may be weighed differently there; a lot that both have under one number
tells the two apart, for its powder is the same.
"""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence

from calibrator.model import SeasonLot
from calibrator.science.compare import Difference, compare
from calibrator.science.stats import mean_of, sum_of_squares, two_sided_t
from calibrator.values import dataclass

LEAST_LOTS = 2


@dataclass(frozen=True)
class FarmDensity:
    """One farm's lots of a product: mean density, g/mL, and between-lot standard deviation as a share of it.

    The 95 % interval of the mean is by Student's t on the lots (NIST/SEMATECH e-Handbook, 1.3.5.2); spread and
    interval are None for a single lot, whose own doubt is in its `lots` entry.
    """

    farm_id: str
    lots: tuple[SeasonLot, ...]
    mean_g_per_ml: float
    low_g_per_ml: float | None
    high_g_per_ml: float | None
    sd_share: float | None


@dataclass(frozen=True)
class SharedLot:
    """A lot number that two farms weighed; `difference` is second − first density, g/mL, each with its own doubt."""

    lot_number: str
    first: SeasonLot
    second: SeasonLot
    farm_ids: tuple[str, str]
    difference: Difference


@dataclass(frozen=True)
class FarmsCompared:
    """A product on the farms that weighed it, in the order given, and the lots that two of them share."""

    product: str
    farms: tuple[FarmDensity, ...]
    shared: tuple[SharedLot, ...]


def products(lots: Mapping[str, Sequence[SeasonLot]]) -> tuple[str, ...]:
    """Names of products that two farms or more weighed, those of most lots first; case and spaces do not part them."""
    names: dict[str, str] = {}
    counts: dict[str, int] = {}
    farms: dict[str, set[str]] = {}
    for farm_id, own in lots.items():
        for lot in own:
            if key := _plain(lot.product):
                names.setdefault(key, lot.product)
                counts[key] = counts.get(key, 0) + 1
                farms.setdefault(key, set()).add(farm_id)
    several = [key for key in names if len(farms[key]) > 1]
    return tuple(names[key] for key in sorted(several, key=lambda key: -counts[key]))


def compare_farms(product: str, lots: Mapping[str, Sequence[SeasonLot]]) -> FarmsCompared:
    """One product's lots on each farm. `lots` are a farm's as last signed off, by the farm's id."""
    of_it = {farm: tuple(lot for lot in own if _plain(lot.product) == _plain(product)) for farm, own in lots.items()}
    weighed = {farm: own for farm, own in of_it.items() if own}
    farms = tuple(_density(farm, own) for farm, own in weighed.items())
    return FarmsCompared(product, farms, tuple(_shared(weighed)))


def between(first: FarmDensity, second: FarmDensity) -> Difference | None:
    """Welch's comparison of two farms' means; None where one has too few lots."""
    told = [_mean(farm) for farm in (first, second)]
    return None if None in told else compare(*[one for one in told if one is not None])


def _mean(farm: FarmDensity) -> tuple[float, float, float] | None:
    if farm.sd_share is None:
        return None
    count = len(farm.lots)
    return farm.mean_g_per_ml, farm.sd_share * farm.mean_g_per_ml / math.sqrt(count), count - 1


def _density(farm_id: str, lots: tuple[SeasonLot, ...]) -> FarmDensity:
    values = [lot.density_g_per_ml for lot in lots]
    mean = mean_of(values)
    if len(values) < LEAST_LOTS:
        return FarmDensity(farm_id, lots, mean, None, None, None)
    sd = math.sqrt(sum_of_squares(values) / (len(values) - 1))
    half = two_sided_t(0.95, len(values) - 1) * sd / math.sqrt(len(values))
    return FarmDensity(farm_id, lots, mean, mean - half, mean + half, sd / mean)


def _shared(lots: Mapping[str, Sequence[SeasonLot]]) -> list[SharedLot]:
    found = []
    farms = list(lots)
    for at, one in enumerate(farms):
        for other in farms[at + 1 :]:
            theirs = {_plain(lot.lot_number): lot for lot in lots[other]}
            for lot in lots[one]:
                if twin := theirs.get(_plain(lot.lot_number)):
                    found.append(SharedLot(lot.lot_number, lot, twin, (one, other), compare(_lot(lot), _lot(twin))))
    return found


def _lot(lot: SeasonLot) -> tuple[float, float, float]:
    return lot.density_g_per_ml, lot.density_u_g_per_ml, lot.degrees_of_freedom


def _plain(text: str) -> str:
    return " ".join(text.split()).casefold()
