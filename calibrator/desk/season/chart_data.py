"""From a season to what its picture draws: arrays in the order of the days, in the unit of the axis."""

from __future__ import annotations

from collections.abc import Callable, Sequence

import numpy as np
from numpy.typing import NDArray

from calibrator.desk.in_use import LotState
from calibrator.desk.season.facts import DayOf, day_of, days_of
from calibrator.desk.season.lots_plot import PlotLots, Tag
from calibrator.desk.season.words import SHOWN_STATES, lot_words
from calibrator.desk.words import state_words
from calibrator.model import LotPoints, UnitSystem
from calibrator.science.lot_chart import FEWEST_FOR_LIMITS, LotChart
from calibrator.science.season_findings import Finding, OutOfLine
from calibrator.units import density_unit

MOST_TAGS = 40
SAME_DAY = 0.6  # of a day is what lots of one day are spread over, so that none hides another


def plot_lots(
    lots: LotPoints,
    chart: LotChart,
    of: DayOf,
    system: UnitSystem,
    tags: Sequence[Tag],
    scoop_name: Callable[[str], str],
    state: Callable[[str], LotState | None],
) -> PlotLots:
    """The lots that have such a day; two lots of one day keep their order."""
    days = np.asarray([np.nan if day is None else day.toordinal() for day in days_of(lots, of)])
    order = np.argsort(days, kind="stable")[: np.count_nonzero(np.isfinite(days))]  # those without a day come last
    days = days[order]
    unit, places, keys = density_unit(system)[1], order.tolist(), lots.column("lot_id")

    numbers = lots.column("lot_number")

    def column(name: str) -> NDArray[np.float64]:
        return unit * np.asarray(lots.column(name), dtype=float)[order]

    def words(place: int) -> str:
        lot = lots[places[place]]
        scoop, day, rules = scoop_name(lot.scoop_id), day_of(lot, of), chart.rules(places[place])
        return lot_words(lot, scoop, day, system, rules, state(lot.lot_id))

    enough = 1.0 if len(lots) >= FEWEST_FOR_LIMITS else np.nan
    running = np.where(np.isnan(chart.running_reaches), np.nan, chart.running_g_per_ml)
    return PlotLots(
        keys=[keys[place] for place in places],
        days=_spread_out(days),
        values=column("density_g_per_ml"),
        lows=column("density_low_g_per_ml"),
        highs=column("density_high_g_per_ml"),
        marked=chart.marked[order],
        hollow=~np.asarray(lots.column("signed_off"), dtype=bool)[order],
        series=chart.kinds[order],
        middles=enough * unit * chart.middles_g_per_ml[order],
        limit_lows=enough * unit * chart.lows_g_per_ml[order],
        limit_highs=enough * unit * chart.highs_g_per_ml[order],
        running=enough * unit * running[order],
        words=words,
        names=[str(numbers[place]) for place in places],
        states=[_state_text(state(keys[place])) for place in places],
        tags=tags,
    )


def _state_text(state: LotState | None) -> str:
    return state_words(state) if state in SHOWN_STATES else ""


def _spread_out(days: NDArray[np.float64]) -> NDArray[np.float64]:
    """Rising days, those of one day spread about it in their order."""
    _, place, counts = np.unique(days, return_inverse=True, return_counts=True)
    first = np.cumsum(counts) - counts
    within, of = np.arange(len(days)) - first[place], counts[place]
    return days + SAME_DAY * ((within + 0.5) / of - 0.5)


def numbered(findings: Sequence[Finding], of: DayOf) -> list[tuple[int | None, Finding]]:
    """Findings, the newest first, those with a place of their own in the picture numbered by their days."""
    events = [one for one in findings if not isinstance(one, OutOfLine) and day_of(one.at, of) is not None]
    numbers = {id(one): n for n, one in enumerate(events[-MOST_TAGS:], start=1)}
    return [(numbers.get(id(one)), one) for one in reversed(findings)]


def tags_of(told: Sequence[tuple[int | None, Finding]], of: DayOf) -> list[Tag]:
    """The numbers at the top of the picture."""
    return [
        Tag(number, float(day.toordinal()))
        for number, finding in told
        if number is not None and (day := day_of(finding.at, of)) is not None
    ]
