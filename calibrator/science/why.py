"""Why density moved from lot to lot: against humidity, age, date, time of year, plant, agglomeration, scoop.

Each cause is looked at alone, between lots of one kind (agglomeration between all): it tells what goes
together, never what a density should be corrected by. No published formula from humidity to bulk density was
found. Effects are shares of the density, from a least-squares fit to logarithms.
"""

from __future__ import annotations

import math
from collections import Counter
from collections.abc import Callable, Sequence
from dataclasses import replace
from enum import StrEnum

import numpy as np

from calibrator.model import SeasonLot
from calibrator.science.errors import CannotCompute
from calibrator.science.least_squares import Fit, Floats, fit, joint_p
from calibrator.science.lot_kinds import kind_of, log_density
from calibrator.science.spread_shares import f_quantile
from calibrator.science.stats import mean_of
from calibrator.values import dataclass

LEAST_LOTS = 5
YEAR_DAYS = 365.25
LEAST_YEAR_DAYS = 330
NEGLIGIBLE_SHARE = 0.01
"""An effect that surely stays within this over the whole range seen is called none: common practice, no source."""


class Cause(StrEnum):
    """What a density may go with."""

    HUMIDITY = "humidity"
    AGE = "age"
    DATE = "date"
    TIME_OF_YEAR = "time_of_year"
    PLANT = "plant"
    AGGLOMERATED = "agglomerated"
    SCOOP = "scoop"


class Told(StrEnum):
    """What the lots tell of a cause."""

    SEEN = "seen"  # the interval leaves zero out
    NONE_SEEN = "none_seen"  # the interval is narrow about zero
    CANNOT_TELL = "cannot_tell"  # both an effect and none agree with the lots
    TOO_FEW = "too_few"  # too few lots, or all alike in this


STEP = {Cause.HUMIDITY: 10.0, Cause.AGE: 30.0, Cause.DATE: 30.0}
"""An effect is told for this much more: points of relative humidity, days."""


@dataclass(frozen=True)
class Effect:
    """How density goes with one cause, as shares with a 95 % interval.

    For humidity, age and date `share` is for `STEP` more; for the time of year it is half the swing, with the
    day of the year of the highest density in `peak_day`; else the share of `pair[1]` above `pair[0]`, the
    two levels that differ most (Scheffé's interval where there are more than two). `points` are (value of the
    cause, share off the middle of its kind) of each lot, for the picture; places in `levels` where it has levels.
    `line` are the two ends of the fitted slope through them.
    """

    cause: Cause
    told: Told
    lots: int
    share: float = 0.0
    low: float = 0.0
    high: float = 0.0
    p: float = 1.0
    levels: tuple[str, ...] = ()
    pair: tuple[str, str] = ("", "")
    peak_day: int = 0
    points: tuple[tuple[float, float], ...] = ()
    line: tuple[tuple[float, float], ...] = ()


def why(lots: Sequence[SeasonLot]) -> tuple[Effect, ...]:
    """Every cause in turn, see `Cause`."""
    numbers = [_number(lots, cause, of) for cause, of in _NUMBERS]
    return (*numbers, _time_of_year(lots), *(_levels(lots, cause, of) for cause, of in _LEVELS))


def _humidity(lot: SeasonLot) -> float | None:
    return lot.humidity_pct


def _age(lot: SeasonLot) -> float | None:
    return None if lot.made_on is None else float((lot.weighed_on - lot.made_on).days)


def _date(lot: SeasonLot) -> float | None:
    return float(lot.weighed_on.toordinal())


def _plant(lot: SeasonLot) -> str:
    return lot.plant_code.strip()


def _agglomerated(lot: SeasonLot) -> str:
    return "" if lot.agglomerated is None else "yes" if lot.agglomerated else "no"


def _scoop(lot: SeasonLot) -> str:
    return lot.scoop_name


_NUMBERS: tuple[tuple[Cause, Callable[[SeasonLot], float | None]], ...] = (
    (Cause.HUMIDITY, _humidity),
    (Cause.AGE, _age),
    (Cause.DATE, _date),
)
_LEVELS: tuple[tuple[Cause, Callable[[SeasonLot], str]], ...] = (
    (Cause.PLANT, _plant),
    (Cause.AGGLOMERATED, _agglomerated),
    (Cause.SCOOP, _scoop),
)


def _dummies(labels: Sequence[object]) -> Floats:
    names = list(dict.fromkeys(labels))
    return np.asarray([[float(label == name) for name in names] for label in labels])


def _y(lots: Sequence[SeasonLot]) -> Floats:
    return np.asarray([log_density(lot) for lot in lots])


def _centred(lots: Sequence[SeasonLot]) -> list[float]:
    """Logarithms of density, the mean of each kind taken off."""
    sums: dict[object, list[float]] = {}
    for lot in lots:
        sums.setdefault(kind_of(lot), []).append(log_density(lot))
    means = {kind: mean_of(values) for kind, values in sums.items()}
    return [log_density(lot) - means[kind_of(lot)] for lot in lots]


def _number(all_lots: Sequence[SeasonLot], cause: Cause, of: Callable[[SeasonLot], float | None]) -> Effect:
    lots = [lot for lot in all_lots if of(lot) is not None]
    x = np.asarray([of(lot) or 0.0 for lot in lots])
    points = tuple(zip((float(v) for v in x), _centred(lots), strict=True))
    if len(lots) < LEAST_LOTS:
        return Effect(cause, Told.TOO_FEW, len(lots), points=points)
    try:
        kinds = _dummies([kind_of(lot) for lot in lots])
        slope = fit(np.column_stack([(x - x.mean()) / STEP[cause], kinds]), _y(lots)).coefficient(0)
    except CannotCompute:
        return Effect(cause, Told.TOO_FEW, len(lots), points=points)
    reach = float(x.max() - x.min()) / STEP[cause]
    told = _told(slope.low, slope.high, reach)
    middle, ends = float(x.mean()), (float(x.min()), float(x.max()))
    line = tuple((end, slope.value * (end - middle) / STEP[cause]) for end in ends)
    return Effect(cause, told, len(lots), slope.value, slope.low, slope.high, slope.p, points=points, line=line)


def _told(low: float, high: float, reach: float = 1.0) -> Told:
    if not low <= 0 <= high:
        return Told.SEEN
    return Told.NONE_SEEN if max(-low, high) * reach <= NEGLIGIBLE_SHARE else Told.CANNOT_TELL


def _time_of_year(lots: Sequence[SeasonLot]) -> Effect:
    """A yearly wave beside a straight drift: without the drift a change in autumn would look like a wave."""
    cause, days = Cause.TIME_OF_YEAR, np.asarray([_date(lot) or 0.0 for lot in lots])
    in_year = [float(lot.weighed_on.timetuple().tm_yday) for lot in lots]
    points = tuple(zip(in_year, _centred(lots), strict=True))
    if len(lots) < 2 * LEAST_LOTS or days.max() - days.min() < LEAST_YEAR_DAYS:
        return Effect(cause, Told.TOO_FEW, len(lots), points=points)
    turn = 2 * math.pi * np.asarray(in_year) / YEAR_DAYS
    rest = np.column_stack([(days - days.mean()) / STEP[Cause.DATE], _dummies([kind_of(lot) for lot in lots])])
    try:
        whole = fit(np.column_stack([np.cos(turn), np.sin(turn), rest]), _y(lots))
        p = joint_p(whole, fit(rest, _y(lots)))
    except CannotCompute:
        return Effect(cause, Told.TOO_FEW, len(lots), points=points)
    a, b = whole.coefficients[:2]
    swing = math.hypot(a, b)
    crest = whole.combination([a / swing, b / swing, *[0.0] * rest.shape[1]]) if swing else whole.coefficient(0)
    half = _scheffe(whole, 2) * crest.u
    peak = round(math.atan2(b, a) % (2 * math.pi) / (2 * math.pi) * YEAR_DAYS)
    low, high = swing - half, swing + half
    told = Told.SEEN if p < 0.05 else _told(min(low, 0.0), high)
    return Effect(cause, told, len(lots), swing, low, high, p, peak_day=peak, points=points)


def _scheffe(whole: Fit, freedom: int) -> float:
    """Width of an interval, in standard uncertainties, that holds for the widest of all contrasts.

    Source: NIST/SEMATECH e-Handbook, 7.4.7.2 (Scheffé 1953, Biometrika 40:87).
    """
    return math.sqrt(freedom * f_quantile(0.95, freedom, whole.degrees_of_freedom))


def _levels(all_lots: Sequence[SeasonLot], cause: Cause, of: Callable[[SeasonLot], str]) -> Effect:
    lots = [lot for lot in all_lots if of(lot)]
    names = [name for name, _ in Counter(of(lot) for lot in lots).most_common()]
    points = tuple(zip((float(names.index(of(lot))) for lot in lots), _offs(lots, cause), strict=True))
    few = Effect(cause, Told.TOO_FEW, len(lots), levels=tuple(names), points=points)
    if len(names) < 2 or len(lots) < LEAST_LOTS:
        return few
    labels = [of(lot) for lot in lots]
    own = _dummies(labels)[:, 1:]
    others = np.ones((len(lots), 1)) if cause is Cause.AGGLOMERATED else _dummies([kind_of(lot) for lot in lots])
    try:
        whole, without = fit(np.column_stack([own, others]), _y(lots)), fit(others, _y(lots))
        return _widest(cause, whole, joint_p(whole, without), list(dict.fromkeys(labels)), few)
    except CannotCompute:
        return few


def _offs(lots: Sequence[SeasonLot], cause: Cause) -> list[float]:
    if cause is not Cause.AGGLOMERATED or not lots:
        return _centred(lots)
    middle = mean_of([log_density(lot) for lot in lots])
    return [log_density(lot) - middle for lot in lots]


def _widest(cause: Cause, whole: Fit, p: float, names: list[str], few: Effect) -> Effect:
    """The two levels that differ most."""
    values = (0.0, *whole.coefficients[: len(names) - 1])
    low_place, high_place = values.index(min(values)), values.index(max(values))
    weights = [0.0] * len(whole.coefficients)
    for place, sign in ((low_place, -1.0), (high_place, 1.0)):
        if place:
            weights[place - 1] = sign
    found = whole.combination(weights)
    half = found.high - found.value if len(names) == 2 else _scheffe(whole, len(names) - 1) * found.u
    told = _told(found.value - half, found.value + half)
    pair = (names[low_place], names[high_place])
    low, high = found.value - half, found.value + half
    return replace(few, told=told, share=found.value, low=low, high=high, p=p, pair=pair)
