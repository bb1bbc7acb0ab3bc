"""From a season to what its picture draws: arrays in the order of the days, in the unit of the axis."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
from numpy.typing import NDArray

from calibrator.desk.season.facts import DayOf, day_of
from calibrator.desk.season.lots_plot import PlotLots, Tag
from calibrator.desk.season.words import lot_words
from calibrator.desk.season_points import in_unit
from calibrator.model import UnitSystem
from calibrator.science.season_findings import Finding, OutOfLine, Season

MOST_TAGS = 40


def plot_lots(season: Season, of: DayOf, system: UnitSystem, tags: Sequence[Tag]) -> PlotLots:
    """The lots that have such a day; two lots of one day keep their order."""
    days = [day_of(lot, of) for lot in season.lots]
    having = [n for n, day in enumerate(days) if day is not None]
    numbers = np.asarray([day.toordinal() for day in days if day is not None], dtype=float)
    order = np.argsort(numbers, kind="stable")
    places = [having[n] for n in order]
    lots, charted = [season.lots[p] for p in places], [season.chart.lots[p] for p in places]
    unit = in_unit(1.0, system)

    def column(values: Sequence[float | None]) -> NDArray[np.float64]:
        return np.asarray([np.nan if value is None else value * unit for value in values], dtype=float)

    def words(place: int) -> str:
        lot = lots[place]
        return lot_words(lot, day_of(lot, of), system, charted[place].rules)

    return PlotLots(
        keys=[lot.lot_id for lot in lots],
        days=numbers[order],
        values=column([lot.density_g_per_ml for lot in lots]),
        lows=column([lot.density_low_g_per_ml for lot in lots]),
        highs=column([lot.density_high_g_per_ml for lot in lots]),
        marked=np.asarray([bool(one.rules) for one in charted], dtype=bool),
        series=np.asarray([one.kind for one in charted], dtype=np.intp),
        middles=column([one.middle_g_per_ml for one in charted]),
        limit_lows=column([one.low_g_per_ml for one in charted]),
        limit_highs=column([one.high_g_per_ml for one in charted]),
        running=column([one.running_g_per_ml if one.running_reach is not None else None for one in charted]),
        words=words,
        tags=tags,
    )


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
