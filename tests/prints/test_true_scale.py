"""Marks lie where they were reckoned: measured on the PDF as another program renders it, twice."""

from __future__ import annotations

import math
from dataclasses import replace

import numpy as np
import pytest
from PySide6.QtPrintSupport import QPrinter

from calibrator.model import Box, Cylinder, Paper, TaperedCup, UnitSystem
from calibrator.prints.label_facts import LabelForm, LabelLine, LineUse
from calibrator.prints.labels import scoop_labels
from calibrator.prints.output import page_layout, print_document
from calibrator.prints.page import Document, Go, Line, Page, PathStep, Shape, Text
from tests.prints.rendered import MM_PER_INCH, picture, render, runs_mm
from tests.prints.samples import CONE, GRID, HUGE, LOT_OF_40, OUNCE, RED, TINY, counted, label, several, sheet

ALLOWED_MM = 0.2
SCOOPS = {"50 mL": TINY, "700 mL": RED, "4 L": HUGE}


def distances_below_rim(document: Document, dpi: float, x_mm: float, top_mm: float) -> list[float]:
    """Middles of the lines down a column of the first label, from the upper border of its black edge."""
    image = picture(document, dpi)
    column = image[:, round(x_mm * dpi / MM_PER_INCH)]
    runs = [run for run in runs_mm(column, dpi) if run[0] > top_mm - 1]
    rim = runs[0][0]
    return [(a + b) / 2 - rim for a, b in runs[1:]]


@pytest.mark.parametrize("dpi", [300, 600])
@pytest.mark.parametrize("paper", list(Paper))
@pytest.mark.parametrize("name", SCOOPS)
def test_lines_of_a_strip_lie_at_their_distance(name: str, paper: Paper, dpi: float) -> None:
    one = label(SCOOPS[name])
    found = distances_below_rim(scoop_labels(sheet(one, paper=paper)), dpi, 10 + 1.2, 10)
    wanted = sorted(line.down_wall_mm for line in one.lines)
    assert found[:3] == pytest.approx(wanted, abs=ALLOWED_MM)


@pytest.mark.parametrize("name", SCOOPS)
def test_a_feeding_counted_by_other_lines_draws_none(name: str) -> None:
    one = counted(SCOOPS[name])
    found = distances_below_rim(scoop_labels(sheet(one)), 300, 10 + 1.2, 10)
    foot = [d for d in found if d > max(line.down_wall_mm for line in one.lines) + ALLOWED_MM]
    assert found[:2] == pytest.approx(sorted(line.down_wall_mm for line in one.lines), abs=ALLOWED_MM)
    plain = distances_below_rim(scoop_labels(sheet(replace(one, counts=()))), 300, 10 + 1.2, 10)
    assert len(foot) == len([d for d in plain if d > max(line.down_wall_mm for line in one.lines) + ALLOWED_MM])


@pytest.mark.parametrize("shape", [RED, HUGE])
def test_beside_each_line_stands_the_weight_that_it_holds(shape: TaperedCup | Box) -> None:
    """Where full scoops go before, the feeding's weight is not at the line: it would be filled to, and be less."""
    one = several(shape)
    document = scoop_labels(sheet(one))
    found = distances_below_rim(document, 300, 10 + 1.2, 10)
    assert found[:2] == pytest.approx(sorted(line.down_wall_mm for line in one.lines), abs=ALLOWED_MM)
    weights = [item for item in document.pages[0].items if isinstance(item, Text) and item.figures]
    for line, down in zip(one.lines, found, strict=False):
        nearest = min(weights, key=lambda item: abs(item.y_mm - 10 - down))
        assert nearest.text == f"{line.held_g / OUNCE:.1f} oz"
        assert abs(nearest.y_mm - 10 - down) < 6


@pytest.mark.parametrize("lot", [LOT_OF_40, "W" * 40])
@pytest.mark.parametrize("name", SCOOPS)
def test_lines_keep_their_distance_beside_a_lot_number_of_forty_characters(name: str, lot: str) -> None:
    one = label(SCOOPS[name], lot=lot)
    found = distances_below_rim(scoop_labels(sheet(one)), 300, 10 + 1.2, 10)
    assert found[:3] == pytest.approx(sorted(line.down_wall_mm for line in one.lines), abs=ALLOWED_MM)


@pytest.mark.parametrize("dpi", [300, 600])
def test_lines_keep_their_distance_on_ready_cut_labels(dpi: float) -> None:
    one = label(RED)
    document = scoop_labels(replace(sheet(one), grid=GRID))
    x, y = GRID.left_mm + GRID.pitch_x_mm, GRID.top_mm
    found = distances_below_rim(document, dpi, x + 1.2, y)
    assert found[:3] == pytest.approx(sorted(line.down_wall_mm for line in one.lines), abs=ALLOWED_MM)


@pytest.mark.parametrize("dpi", [300, 600])
@pytest.mark.parametrize(
    "shape", [TINY, Cylinder(diameter_mm=96, height_mm=92), Box(length_mm=90, width_mm=80, height_mm=95)]
)
def test_a_straight_wrap_is_as_long_as_the_way_around(shape: Cylinder | Box, dpi: float) -> None:
    document = scoop_labels(sheet(label(shape), form=LabelForm.WRAP))
    around = math.pi * shape.diameter_mm if isinstance(shape, Cylinder) else 2 * (shape.length_mm + shape.width_mm)
    image = picture(document, dpi)
    black = runs_mm(image[round(10.3 * dpi / MM_PER_INCH)], dpi)[0]
    pieces = round(around / (black[1] - black[0]) + 0.5)
    assert (black[1] - black[0] - 12.0) * pieces == pytest.approx(around, abs=ALLOWED_MM)


@pytest.mark.parametrize("dpi", [300, 600])
@pytest.mark.parametrize("shape", [HUGE, Cylinder(diameter_mm=96, height_mm=92)])
def test_lines_of_a_straight_wrap_lie_at_their_distance_at_its_end(shape: Cylinder | Box, dpi: float) -> None:
    """Where it overlaps nothing is written, so that each line is met alone."""
    one = label(shape)
    document = scoop_labels(sheet(one, form=LabelForm.WRAP))
    black = runs_mm(picture(document, dpi)[round(10.3 * dpi / MM_PER_INCH)], dpi)[0]
    found = distances_below_rim(document, dpi, black[1] - 2.0, 10)
    assert found[: len(one.lines)] == pytest.approx(sorted(line.down_wall_mm for line in one.lines), abs=ALLOWED_MM)


@pytest.mark.parametrize("dpi", [300, 600])
@pytest.mark.parametrize("shape", [RED, CONE])
def test_lines_of_a_tapered_wrap_are_arcs_about_the_cone_s_tip(shape: TaperedCup, dpi: float) -> None:
    """A cone's surface unrolls into a sector whose radius is the slant height: plane geometry."""
    document = scoop_labels(sheet(label(shape), form=LabelForm.WRAP))
    image = picture(document, dpi)
    slant = math.hypot(shape.height_mm, (shape.rim_diameter_mm - shape.floor_diameter_mm) / 2)
    rim_radius = shape.rim_diameter_mm / 2 * slant / (abs(shape.rim_diameter_mm - shape.floor_diameter_mm) / 2)
    points = [_rim_and_main(image, x, dpi) for x in np.linspace(12, 190, 90)]
    rims = [(x, rim) for x, rim, _ in points if rim is not None]
    x0, y0 = _centre(rims, rim_radius, 1 if shape.rim_diameter_mm > shape.floor_diameter_mm else -1)
    off = [abs(math.hypot(x - x0, rim - y0) - rim_radius) for x, rim in rims]
    assert np.median(off) < 0.05
    mains = [(x, abs(math.hypot(x - x0, main - y0) - rim_radius)) for x, _, main in points if main is not None]
    wanted = next(line.down_wall_mm for line in label(shape).lines if line.use is LineUse.MAIN)
    assert np.median([down for _, down in mains]) == pytest.approx(wanted, abs=ALLOWED_MM)
    on_it = [x for x, down in mains if abs(down - wanted) < ALLOWED_MM]  # elsewhere words cross the column
    assert len(on_it) > 15
    assert max(on_it) - min(on_it) > 40


def _rim_and_main(image: np.ndarray, x_mm: float, dpi: float) -> tuple[float, float | None, float | None]:
    """Upper border of the black edge and the middle of the main line in a column; the main one is 1 mm thick."""
    runs = runs_mm(image[: round(68 * dpi / MM_PER_INCH), round(x_mm * dpi / MM_PER_INCH)], dpi)
    if not runs or runs[0][1] - runs[0][0] < 0.45:
        return x_mm, None, None
    thick = [run for run in runs if runs[0][0] + 6 < run[0] < runs[0][0] + 40 and 0.9 < run[1] - run[0] < 1.6]
    return x_mm, runs[0][0], sum(thick[0]) / 2 if len(thick) == 1 else None


def _centre(points: list[tuple[float, float]], radius: float, side: int) -> tuple[float, float]:
    """The centre of a circle of known radius that the points lie on; `side` +1 has it below them."""
    x0 = float(np.median([x for x, _ in points]))
    y0 = float(np.median([y for _, y in points])) + side * radius
    kept = points
    for _ in range(12):
        away = np.array([(x - x0, y - y0) for x, y in kept])
        far = np.hypot(away[:, 0], away[:, 1])
        step = np.linalg.lstsq(away / far[:, None], far - radius, rcond=None)[0]
        x0, y0 = x0 + float(step[0]), y0 + float(step[1])
        off = [abs(math.hypot(x - x0, y - y0) - radius) for x, y in points]
        limit = max(0.1, 2 * float(np.median(off)))
        kept = [point for point, d in zip(points, off, strict=True) if d <= limit]
    return x0, y0


def _strokes(page: Page) -> list[float]:
    lines = [item for item in page.items if isinstance(item, Line)]
    return [round(math.hypot(line.x2_mm - line.x1_mm, line.y2_mm - line.y1_mm), 6) for line in lines]


def _bar(page: Page, length_mm: float) -> Line:
    """The one long stroke of that length."""
    bars = [
        item
        for item in page.items
        if isinstance(item, Line)
        and math.hypot(item.x2_mm - item.x1_mm, item.y2_mm - item.y1_mm) == pytest.approx(length_mm, abs=1e-6)
    ]
    assert len(bars) == 1
    return bars[0]


@pytest.mark.parametrize("dpi", [300, 600])
def test_check_bars_are_50_mm_and_2_inches(dpi: float) -> None:
    document = scoop_labels(sheet(label(RED)))
    image = picture(document, dpi)
    upright, flat = _bar(document.pages[0], 50.0), _bar(document.pages[0], 50.8)
    column = runs_mm(image[:, round(upright.x1_mm * dpi / MM_PER_INCH)], dpi)
    row = runs_mm(image[round(flat.y1_mm * dpi / MM_PER_INCH)], dpi)
    tall = max(b - a for a, b in column)
    wide = max(b - a for a, b in row)
    assert tall == pytest.approx(50.0, abs=ALLOWED_MM + 0.3)  # the end strokes are 0.3 mm thick
    assert wide == pytest.approx(2 * MM_PER_INCH, abs=ALLOWED_MM + 0.3)


def test_check_bars_of_a_metric_farm_are_both_50_mm() -> None:
    for facts in (metric := sheet(label(RED), units=UnitSystem.METRIC), replace(metric, languages=("es",))):
        page = scoop_labels(facts).pages[0]
        assert not [line for line in _strokes(page) if line == pytest.approx(50.8, abs=0.1)]
        assert [line for line in _strokes(page) if line == pytest.approx(50.0, abs=1e-6)] == [50.0, 50.0]
        told = " ".join(item.text for item in page.items if isinstance(item, Text))
        assert "2 in" not in told


def test_a_printer_gets_the_same_scale_as_a_file(tmp_path) -> None:  # type: ignore[no-untyped-def]
    document = scoop_labels(sheet(label(RED)))
    printer = QPrinter(QPrinter.PrinterMode.HighResolution)
    printer.setOutputFormat(QPrinter.OutputFormat.PdfFormat)
    printer.setOutputFileName(str(tmp_path / "out.pdf"))
    print_document(document, printer)
    image = render((tmp_path / "out.pdf").read_bytes(), 0, 300)
    upright = _bar(document.pages[0], 50.0)
    column = runs_mm(image[:, round(upright.x1_mm * 300 / MM_PER_INCH)], 300)
    assert max(b - a for a, b in column) == pytest.approx(50.0, abs=0.5)


@pytest.mark.parametrize("paper", list(Paper))
def test_pages_have_the_paper_s_size_and_no_margins(paper: Paper) -> None:
    """Letter is 8 1/2 by 11 in, A4 210 by 297 mm (ISO 216)."""
    page = scoop_labels(sheet(label(RED), paper=paper)).pages[0]
    assert (page.width_mm, page.height_mm) == ((215.9, 279.4) if paper is Paper.LETTER else (210.0, 297.0))
    layout = page_layout(page)
    assert layout.margins().left() == layout.margins().top() == 0


def test_a_line_half_a_millimetre_off_would_be_seen() -> None:
    """The measurement itself can fail."""
    wrong = label(lines=(LabelLine(target_mass_g=10 * OUNCE, down_wall_mm=24.98, use=LineUse.MAIN),))
    found = distances_below_rim(scoop_labels(sheet(wrong)), 300, 11.2, 10)
    assert abs(found[0] - 24.48) > ALLOWED_MM


@pytest.mark.parametrize("radius_mm", [20.0, 120.0, 700.0])
def test_an_arc_begins_and_ends_where_it_should_however_large_its_radius(radius_mm: float) -> None:
    """Plane geometry: 3 mm along a circle, drawn as the stroke of a line, measured on the rendered page."""
    dpi, first, width_mm = 300, math.radians(-97.0), 1.0
    last = first + 3.0 / radius_mm
    x_mm, y_mm = 20.0 - radius_mm * math.cos(first), 30.0 - radius_mm * math.sin(first)
    arc = PathStep(Go.ARC, x_mm, y_mm, radius_mm, math.degrees(first), math.degrees(last - first))
    shape = Shape((PathStep(Go.MOVE, 20.0, 30.0), arc), stroke_mm=width_mm)
    image = picture(Document("arc", (Page(60.0, 60.0, (shape,)),)), dpi)
    columns = np.flatnonzero((image < 128).any(axis=0)) * MM_PER_INCH / dpi
    wide = [
        x_mm + (radius_mm + side) * math.cos(angle) for angle in (first, last) for side in (-width_mm / 2, width_mm / 2)
    ]
    assert columns[0] == pytest.approx(min(wide), abs=0.1)
    assert columns[-1] == pytest.approx(max(wide), abs=0.1)
