"""Twenty thousand lots are drawn by short ways; each is held against the long way that it stands for."""

from __future__ import annotations

from datetime import date

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from PySide6.QtCore import QRectF
from PySide6.QtGui import QColor
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from calibrator.desk.season.legend import legend
from calibrator.desk.season.lots_dense import DensePicture, Whole, joined_bars
from calibrator.desk.season.lots_item import LotsItem, _pixel, numbers_text, shared_boxes
from calibrator.desk.season.lots_lines import by_columns, joined_runs
from calibrator.desk.season.lots_plot import LotsPlot, PlotLots
from calibrator.desk.theme import Theme, tokens
from calibrator.desk.widgets.day_plot import MOST_LABELS, DayAxis, month_days

BARS = st.lists(st.tuples(st.integers(0, 5), st.integers(0, 30), st.integers(0, 8)), min_size=1, max_size=40)


@given(BARS)
def test_bars_joined_cover_what_each_bar_covers(bars: list[tuple[int, int, int]]) -> None:
    x, top, length = (np.array(part, dtype=np.intp) for part in zip(*bars, strict=True))
    wanted = {(column, row) for column, first, more in bars for row in range(first, first + more + 1)}
    joined = joined_bars(x, top, top + length)
    told = [(column, row) for column, first, last in joined for row in range(first, last + 1)]
    assert len(told) == len(set(told))
    assert set(told) == wanted


@given(st.lists(st.tuples(st.floats(0, 4), st.floats(-50, 50)), min_size=1, max_size=60))
def test_a_line_by_columns_begins_reaches_and_ends_in_each_column_as_the_whole_line(line: list) -> None:  # type: ignore[type-arg]
    x, y = (np.array(part) for part in zip(*sorted(line, key=lambda place: place[0]), strict=True))
    short_x, short_y = by_columns(x, y)
    assert len(short_x) <= len(x)
    for column in np.unique(np.floor(x)):
        own, short = y[np.floor(x) == column], short_y[np.floor(short_x) == column]
        assert (short[0], short.min(), short.max(), short[-1]) == (own[0], own.min(), own.max(), own[-1])


def test_a_line_joins_the_lots_of_one_kind_and_breaks_at_a_gap() -> None:
    days, series = np.arange(6.0), np.array([0, 1, 0, 0, 1, 0])
    values = np.array([1.0, 2.0, np.nan, 3.0, 4.0, 5.0])
    runs = [(d.tolist(), v.tolist()) for d, v in joined_runs(days, series, values)]
    assert runs == [([0.0], [1.0]), ([3.0, 5.0], [3.0, 5.0]), ([1.0, 4.0], [2.0, 4.0])]
    assert joined_runs(np.empty(0), np.empty(0, dtype=np.intp), np.empty(0)) == []


def test_every_lot_of_a_dense_picture_leaves_its_dot() -> None:
    picture, rng = DensePicture(120, 80), np.random.default_rng(3)
    x, y = rng.integers(0, 119, 3000), rng.integers(0, 79, 3000)
    picture.draw_bars(x, y - 4, y + 4, "#888888")
    picture.draw_dots(x, y, "#123456")
    assert (picture.pixels[y, x] == 0xFF123456).all()
    picture.draw_diamonds(x[:1], y[:1], 1.0, "#aa5500", "#ffffff")
    assert picture.image(1.0).pixelColor(int(x[0]), int(y[0])).name() == "#aa5500"


def pixels_of(item: LotsItem, picture: DensePicture) -> tuple[Whole, Whole]:
    """The pixels at which all lots stand in it, those out of view too."""
    frame = item.deviceTransform_().mapRect(QRectF(item.getViewBox().viewRect()))
    (x, y), scale = item._in_pixels(slice(None))[:2], round(picture.wide / frame.width())
    return _pixel(x, frame.left(), scale), _pixel(y, frame.top(), scale)


def test_every_lot_in_view_stands_in_the_picture(qapp: QApplication, qtbot: QtBot) -> None:
    """Twelve hundred lots, pushed aside by steps that are no whole pixels: at each lot's place is its sign."""
    if qapp.property("tokens") is None:
        Theme(qapp)
    rng, lots = np.random.default_rng(5), 1200
    days, values = np.arange(float(lots)) + 738000, 17 + rng.normal(0, 0.3, lots)
    none, marked = np.full(lots, np.nan), rng.random(lots) < 0.02
    plot = LotsPlot()
    qtbot.addWidget(plot)
    plot.resize(900, 300)
    plot.show_lots(
        PlotLots(
            [str(n) for n in range(lots)], days, values, values - 0.2, values + 0.2, marked,
            np.zeros(lots, dtype=bool), np.zeros(lots, dtype=np.intp), none, none, none, none, str,
        ), "",
    )  # fmt: skip
    whole = plot.whole_period()
    for first in (whole[0], whole[0] + 100.37):
        plot.show_period(first, first + 900)
        plot.grab()
        assert plot.lots._dense is not None
        picture, signs = plot.lots._dense[1], {0xFF000000 | QColor(c).rgb() for c in (tokens().action, tokens().mark)}
        x, y = pixels_of(plot.lots, picture)
        seen = (x >= 0) & (x < picture.wide - 1)
        assert seen.sum() > 800
        rims = {0xFF000000 | QColor(tokens().surface).rgb()}  # a diamond set off from a lot that lies beneath it
        found = set(picture.pixels[y[seen & marked], x[seen & marked]].tolist())
        assert found <= signs | rims
        assert set(picture.pixels[y[seen], x[seen]].tolist()) <= signs | rims
        lone = seen & np.array([np.abs(days[marked] - day).min() > 12 for day in days])
        assert set(picture.pixels[y[lone], x[lone]].tolist()) == {0xFF000000 | QColor(tokens().action).rgb()}


def test_a_lot_out_of_a_file_is_hollow_among_few_and_among_many(qapp: QApplication, qtbot: QtBot) -> None:
    if qapp.property("tokens") is None:
        Theme(qapp)
    t = tokens()
    for lots in (3, 1201):
        plot = LotsPlot()
        qtbot.addWidget(plot)
        plot.resize(900, 300)
        days, none, middle = np.arange(float(lots)) + 738000, np.full(lots, np.nan), lots // 2
        values, hollow = np.where(np.arange(lots) == middle, 17.4, 17.0), np.arange(lots) == middle
        plot.show_lots(
            PlotLots(
                [str(n) for n in range(lots)], days, values, values - 0.05, values + 0.05, np.zeros(lots, dtype=bool),
                hollow, np.zeros(lots, dtype=np.intp), none, none, none, none, str,
            ), "",
        )  # fmt: skip
        drawn = plot.grab().toImage()
        down = plot.lots.deviceTransform_()
        at = [round(down.m11() * days[middle] + down.dx()), round(down.m22() * 17.4 + down.dy())]
        around = {drawn.pixelColor(at[0] + a, at[1] + b).name() for a in range(-7, 8) for b in range(-7, 8)}
        assert QColor(t.surface).name() in around
        assert QColor(t.action).name() in around
        assert drawn.pixelColor(*at).name() == QColor(t.surface).name()
        assert "out of a file, not signed off" in [entry.words for entry in legend(plot.shown)]


@pytest.mark.parametrize("span", [9, 40, 400, 4000, 9000])
def test_the_axis_names_the_firsts_of_months(span: int) -> None:
    low = float(date(2019, 2, 17).toordinal())
    plain = [day for day in range(int(low), int(low) + span + 1) if date.fromordinal(day).day == 1]
    if len(plain) < 2:
        plain = list(range(int(low) + 1, int(low) + span + 1))
    assert month_days(low, low + span) == plain[:: -(-len(plain) // MOST_LABELS)]
    assert month_days(float(date.max.toordinal()) - 20, float(date.max.toordinal()) + 900)


def test_numbers_without_room_share_a_box() -> None:
    assert shared_boxes([(300.0, 4), (10.0, 1), (20.0, 2), (60.0, 3)]) == [
        [(10.0, 1), (20.0, 2), (60.0, 3)],
        [(300.0, 4)],
    ]
    assert shared_boxes([(10.0, 1), (40.0, 2)]) == [[(10.0, 1)], [(40.0, 2)]]
    assert shared_boxes([]) == []
    assert [numbers_text(numbers) for numbers in ([4], [1, 2, 3], [1, 2, 7])] == ["4", "1–3", "1–2, 7"]


def test_no_day_is_marked_without_room_for_its_date(qapp: QApplication) -> None:
    axis = DayAxis("bottom")
    low = float(date(2026, 1, 20).toordinal())
    whole, size = month_days(low, low + 103), 515
    assert date.fromordinal(whole[-1]) == date(2026, 5, 1)
    ((_, told),) = axis.tickValues(low, low + 103, size)  # the first of May lies ten pixels from the end
    assert told == whole[:-1]
