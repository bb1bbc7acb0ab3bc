"""The program's interval for many balanced weigh-ins at once.

Written apart from the program, for speed; test_simulation.py shows that it gives what `level_result` gives.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from scipy.special import ndtri, stdtrit

from calibrator.science import spread as rule

from .farm import Floats


@dataclass(frozen=True)
class Squares:
    """Sums of squares of many weigh-ins of one design, relative to each one's mean."""

    mean_g: Floats
    bag_ss: Floats
    bag_df: int
    per_fill: float
    fill_ss: Floats
    fill_df: int


def squares(readings: Floats) -> Squares:
    """Sums of squares of lots × bags × fills."""
    _, bags, each = readings.shape
    means = readings.mean(axis=2)
    grand = means.mean(axis=1)
    between = ((means - grand[:, None]) ** 2).sum(axis=1) / grand**2
    within = ((readings - means[:, :, None]) ** 2).sum(axis=(1, 2)) / grand**2
    return Squares(grand, between, bags - 1, 1 / each, within, bags * (each - 1))


def pooled(parts: list[Squares]) -> Squares:
    """Several lots of each farm together; the mean is that of the last."""
    bag_df = sum(p.bag_df for p in parts)
    return Squares(
        parts[-1].mean_g,
        np.sum([p.bag_ss for p in parts], axis=0),
        bag_df,
        sum(p.per_fill * p.bag_df for p in parts) / bag_df,
        np.sum([p.fill_ss for p in parts], axis=0),
        sum(p.fill_df for p in parts),
    )


def _combined(s: Squares, per_bag: float, per_fill: float) -> tuple[Floats, Floats]:
    bag_ms, fill_ms = s.bag_ss / s.bag_df, s.fill_ss / max(1, s.fill_df)
    on_fill = per_fill - per_bag * s.per_fill
    parts = per_bag * bag_ms, on_fill * fill_ms
    doubt = parts[0] ** 2 / s.bag_df + parts[1] ** 2 / max(1, s.fill_df)
    variance = parts[0] + parts[1]
    df = variance**2 / np.maximum(doubt, 1e-300)
    if on_fill >= 0:
        return variance, np.maximum(df, min(s.bag_df, 1))
    threshold = rule.ALIKE_BELOW if s.fill_df >= rule.ALIKE_FROM_FILL_DF else 1.0
    alike = bag_ms < threshold * s.per_fill * fill_ms
    all_df = s.bag_df + s.fill_df
    together = per_fill * (s.bag_ss / s.per_fill + s.fill_ss) / all_df
    return np.where(alike, together, variance), np.where(alike, all_df, df)


def _assumed(s: Squares, bags: int, each: int) -> tuple[Floats, Floats]:
    df = rule.ASSUMED_FILL_DF + s.fill_df
    fill_ms = (rule.ASSUMED_FILL_DF * rule.ASSUMED_FILL_SD_SHARE**2 + s.fill_ss) / df
    of_fills = fill_ms / (bags * each)
    seen = s.bag_ss / s.bag_df - fill_ms / each if s.bag_df else 0.0
    variance = np.maximum(rule.ASSUMED_BAG_SD_SHARE**2, seen) / bags + of_fills
    return variance, variance**2 / (of_fills**2 / df)


def half_widths(
    readings: Floats, step_g: float, history: list[Squares] | None = None, *, tared_once: bool = False
) -> Floats:
    """Half-widths of the 95 % intervals, g."""
    _, bags, each = readings.shape
    own = squares(readings)
    if history:
        variance, df = _combined(pooled([*history, own]), 1 / bags, 1 / (bags * each))
    elif bags >= rule.LEAST_BAGS:
        variance, df = own.bag_ss / own.bag_df / bags, np.full(own.mean_g.shape, float(own.bag_df))
    else:
        variance, df = _assumed(own, bags, each)
    seen = variance * own.mean_g**2
    rounding = step_g**2 / 12
    floor = np.where(_equal(readings), rounding, (1 if tared_once else 2) * rounding / (bags * each))
    u2 = np.maximum(seen, floor)
    df = np.minimum(df * (u2 / np.maximum(seen, 1e-12)) ** 2, 1e12)
    common = ndtri(0.975) ** 2 * rounding if tared_once else 0.0
    return np.asarray(np.sqrt(stdtrit(df, 0.975) ** 2 * u2 + common))


def _equal(readings: Floats) -> NDArray[np.bool_]:
    return np.asarray(np.ptp(readings, axis=(1, 2)) <= 1e-9 * readings.mean(axis=(1, 2)))
