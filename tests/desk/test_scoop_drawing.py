"""The cross-section is true to scale, and says in words what it shows."""

from __future__ import annotations

from functools import cache

import pytest
from PySide6.QtCore import QPointF
from PySide6.QtGui import QColor, QFontMetricsF, QImage, QPainter
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from calibrator.desk.context import Desk
from calibrator.desk.theme import tokens, ui_font
from calibrator.desk.widgets.scoop_drawing import FurtherLine, ScoopDrawing, _beside
from calibrator.model import Box, Cylinder, Poured, Shape, TaperedCup, UnitSystem

SHAPES = (
    Cylinder(diameter_mm=96, height_mm=92),
    TaperedCup(rim_diameter_mm=110, floor_diameter_mm=80, height_mm=95),
    Box(length_mm=140, width_mm=80, height_mm=60),
    Poured(heights_mm=(20, 40, 60, 80), volumes_ml=(100, 250, 450, 700)),
)


@pytest.fixture
def drawing(qtbot: QtBot, empty_desk: Desk) -> ScoopDrawing:
    made = ScoopDrawing(UnitSystem.FARM)
    qtbot.addWidget(made)
    made.resize(900, 600)
    return made


def is_near(colour: QColor, wanted: str) -> bool:
    red, green, blue = _parts_of(wanted)
    return abs(colour.red() - red) < 24 and abs(colour.green() - green) < 24 and abs(colour.blue() - blue) < 24


@cache  # asked of each pixel
def _parts_of(colour: str) -> tuple[int, int, int]:
    other = QColor(colour)
    return other.red(), other.green(), other.blue()


def rows_of(image: QImage, colour: str, least: int) -> list[int]:
    """The rows in which at least so many pixels have the colour."""
    return [
        y
        for y in range(image.height())
        if sum(is_near(image.pixelColor(x, y), colour) for x in range(0, image.width(), 3)) * 3 >= least
    ]


def test_a_box_tells_all_three_of_its_sizes_each_inside_the_picture(
    drawing: ScoopDrawing, monkeypatch: pytest.MonkeyPatch
) -> None:
    told: dict[str, QPointF] = {}
    real = QPainter.drawText

    def note(painter: QPainter, at: QPointF, text: str) -> None:
        told[text] = at
        real(painter, at, text)

    monkeypatch.setattr(QPainter, "drawText", note)
    for size in ((260, 120), (900, 600)):
        drawing.resize(*size)
        told.clear()
        drawing.set_shape(Box(length_mm=127, width_mm=76.2, height_mm=88.9))
        drawing.grab()
        assert set(told) == {"5 in", "3 in", "3 1/2 in"}
        for text, at in told.items():
            right = at.x() + QFontMetricsF(ui_font(0.95)).horizontalAdvance(text)
            assert 0 <= at.x() <= right <= size[0]
            assert 10 <= at.y() <= size[1]
        assert told["3 in"].x() > told["5 in"].x()


def test_the_line_is_drawn_at_its_height(drawing: ScoopDrawing, qapp: QApplication) -> None:
    """A line 23 mm down a 92 mm wall stands at three quarters of the height: plain geometry."""
    drawing.set_shape(SHAPES[0])
    drawing.set_lines(23.0, None)
    image = drawing.grab().toImage()
    line = rows_of(image, tokens().mark, 200)
    wall = rows_of(image, tokens().action, 200)
    walls = [
        y
        for y in range(image.height())
        if any(is_near(image.pixelColor(x, y), tokens().action) for x in range(0, image.width(), 2))
    ]
    floor, rim = sum(wall) / len(wall), min(walls) + 2
    at = sum(line) / len(line)
    assert (at - rim) / (floor - rim) == pytest.approx(0.25, abs=0.01)


@pytest.mark.parametrize("shape", SHAPES)
@pytest.mark.parametrize("size", [(900, 600), (380, 190), (120, 80)])
def test_every_shape_is_drawn_at_any_size(drawing: ScoopDrawing, shape: Shape, size: tuple[int, int]) -> None:
    drawing.resize(*size)
    drawing.set_shape(shape)
    blank = ScoopDrawing()
    blank.resize(*size)
    for lines in ((None, None), (20.0, 25.0), (20.0, 20.0), (None, 12.0)):
        drawing.set_lines(*lines)
        assert drawing.grab().toImage() != blank.grab().toImage()


@pytest.mark.parametrize(
    ("new", "old", "words"),
    [
        (34.0, 27.0, "moves down 1/4 in (6 mm)"),
        (27.0, 34.0, "moves up 1/4 in (6 mm)"),
        (14.8, 9.0, "moves down 3/16 in (4 mm)"),  # from 3/8 in (10 mm) to 9/16 in (14 mm), as told
        (27.0, 27.1, "stays where it is"),
    ],
)
def test_how_far_the_line_moves_is_told(drawing: ScoopDrawing, new: float, old: float, words: str) -> None:
    drawing.set_shape(SHAPES[1])
    drawing.set_lines(new, old)
    assert words in drawing.accessibleName()


def test_the_unit_in_force_comes_first(drawing: ScoopDrawing) -> None:
    drawing.set_shape(SHAPES[0])
    drawing.set_lines(33.0, None)
    assert "1 5/16 in (33 mm) down the wall" in drawing.words()
    drawing.set_system(UnitSystem.METRIC)
    assert "33 mm down the wall" in drawing.words()  # whoever measures in mm has no use for inches


def test_what_cannot_be_drawn_is_left_out(drawing: ScoopDrawing) -> None:
    drawing.set_shape(Cylinder(diameter_mm=-1, height_mm=50))
    assert drawing.words() == "No scoop to draw yet"
    drawing.set_shape(SHAPES[0])
    drawing.set_lines(500.0, float("nan"))
    assert drawing.words() == "Scoop in cross-section"
    drawing.grab()


def test_a_tapered_scoop_has_its_floor_measured_beneath(drawing: ScoopDrawing) -> None:
    """As wide as the floor is: 80 of 110 mm of the rim's arrow."""
    drawing.set_shape(SHAPES[1])
    image = drawing.grab().toImage()
    wall = rows_of(image, tokens().action, 200)
    quiet = {y: found for y in range(image.height()) if len(found := _columns(image, y)) > 150}
    above, below = [y for y in quiet if y < min(wall)], [y for y in quiet if y > max(wall)]
    assert len(quiet[below[0]]) / len(quiet[above[0]]) == pytest.approx(80 / 110, abs=0.02)


def _columns(image: QImage, y: int) -> list[int]:
    return [x for x in range(image.width()) if is_near(image.pixelColor(x, y), tokens().quiet)]


def test_a_line_to_be_wiped_out_is_crossed_out(drawing: ScoopDrawing) -> None:
    drawing.set_shape(SHAPES[0])
    drawing.set_lines(30, 20, moves=False)
    before = drawing.grab().toImage()
    drawing.set_lines(30, 20, moves=False, wiped=True)
    assert drawing.grab().toImage() != before


def test_a_long_name_of_an_old_line_leaves_the_scoop_and_its_new_line_their_room(qtbot: QtBot) -> None:
    """It stood in one line: the scoop shrank to a thumb's size, and "New line 3/4 in" was cut off."""
    drawing = ScoopDrawing()
    qtbot.addWidget(drawing)
    drawing.resize(545, 332)
    drawing.set_shape(TaperedCup(rim_diameter_mm=95, floor_diameter_mm=83, height_mm=101))
    line = FurtherLine("Old line, 14.0 oz = 1 struck at the rim + 1 to the line", 78.0, old=True)
    drawing.set_further([line])
    told = drawing._further_label(line)
    assert " ".join(text for text, _ in told[:-1]) == line.name
    assert _beside(told) <= 545 / 3
