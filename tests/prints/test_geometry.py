"""Nothing on paper overlaps, is struck through, or leaves the page, whatever the names and numbers are."""

from __future__ import annotations

from dataclasses import replace

import pytest

from calibrator.model import Paper, UnitSystem, VolumeMeans
from calibrator.prints.chart import wall_chart
from calibrator.prints.chart_facts import ChartGroup
from calibrator.prints.label_facts import LabelForm
from calibrator.prints.labels import scoop_labels
from calibrator.prints.page import BLACK, Box, Document, Line, Page, Shape, Text, rectangle
from calibrator.prints.record import lot_sheet
from tests.prints.geometry import text_corners_mm, troubles
from tests.prints.samples import (
    CONE,
    GRID,
    HUGE,
    LONG_LOT,
    NASTY,
    QUART,
    RATE,
    RED,
    TINY,
    chart,
    documents,
    label,
    record,
    row,
    sheet,
)  # fmt: skip

LANGUAGES = [("en",), ("es",), ("en", "es")]
LOTS = {"short": "7", "usual": "25-0302A", "long": LONG_LOT, "wide": "W" * 44, "spaced": "lot no. 25 / 0302 A " * 3}
everywhere = pytest.mark.parametrize(
    ("languages", "paper", "units"), [(la, p, u) for la in LANGUAGES for p in Paper for u in UnitSystem]
)


def page_of(*items: Text | Line | Shape) -> Document:
    return Document("", (Page(200, 200, items),))


@pytest.mark.parametrize(
    ("items", "told"),
    [
        ((Text("one", 20, 20, 5), Text("two", 22, 21, 5)), "overlaps"),
        ((Text("one", 192, 20, 5),), "leaves"),
        ((Text("one", 20, 20, 5), Line(10, 18.5, 50, 18.5, 0.2)), "crossed"),
        ((Shape(rectangle(Box(10, 10, 50, 50)), fill=BLACK), Text("one", 20, 20, 5)), "cannot be told"),
        ((Text("one", 20, 20, 5, angle_deg=90), Text("two", 18, 25, 5)), "overlaps"),
    ],
)
def test_the_check_sees_what_is_wrong(items: tuple[Text | Line | Shape, ...], told: str) -> None:
    assert told in " ".join(troubles(page_of(*items)))


def test_the_check_lets_good_pages_pass() -> None:
    assert not troubles(page_of(Text("one", 20, 20, 5), Text("two", 20, 26, 5), Line(10, 22, 50, 22, 0.2)))


@everywhere
def test_strip_labels(languages: tuple[str, ...], paper: Paper, units: UnitSystem) -> None:
    labels = [label(shape, lot=LONG_LOT, name=NASTY) for shape in (TINY, RED, HUGE)]
    assert troubles(scoop_labels(sheet(*labels, languages=languages, paper=paper, units=units))) == []


@pytest.mark.parametrize("languages", LANGUAGES)
@pytest.mark.parametrize("lot", LOTS)
def test_lot_numbers_on_strips(lot: str, languages: tuple[str, ...]) -> None:
    labels = [label(shape, lot=LOTS[lot]) for shape in (TINY, RED, HUGE)]
    assert troubles(scoop_labels(sheet(*labels, languages=languages))) == []


@everywhere
def test_wrap_labels(languages: tuple[str, ...], paper: Paper, units: UnitSystem) -> None:
    for shape in (TINY, RED, HUGE, CONE):
        facts = sheet(label(shape, name=NASTY), languages=languages, paper=paper, units=units, form=LabelForm.WRAP)
        assert troubles(scoop_labels(facts)) == []


@pytest.mark.parametrize("languages", LANGUAGES)
def test_no_line_of_a_wrap_is_read_as_a_dash_before_its_words(languages: tuple[str, ...]) -> None:
    document = scoop_labels(sheet(label(HUGE), languages=languages, form=LabelForm.WRAP))
    for page in document.pages:
        ends = [
            (item.steps[1].x_mm, item.steps[1].y_mm)
            for item in page.items
            if isinstance(item, Shape) and item.stroke_mm and len(item.steps) == 2
        ]
        boxes = [text_corners_mm(item) for item in page.items if isinstance(item, Text) and not item.figures]
        gaps = [
            box[0][0] - x
            for x, y in ends
            for box in boxes
            if box[0][1] - 0.5 < y < box[2][1] + 0.5 and 0 < box[0][0] - x < 20
        ]
        assert gaps
        assert min(gaps) > 1.5


@everywhere
def test_ready_cut_labels(languages: tuple[str, ...], paper: Paper, units: UnitSystem) -> None:
    facts = sheet(label(lot=LONG_LOT, copies=9), languages=languages, paper=paper, units=units)
    assert troubles(scoop_labels(replace(facts, grid=GRID)), edge_mm=2.0) == []


@everywhere
@pytest.mark.parametrize("rows", [1, 12, 43])
def test_wall_charts(rows: int, languages: tuple[str, ...], paper: Paper, units: UnitSystem) -> None:
    facts = chart(range(90, 90 + rows), today=90, languages=languages, paper=paper, units=units)
    assert troubles(wall_chart(facts)) == []


@everywhere
def test_wall_charts_of_awkward_farms(languages: tuple[str, ...], paper: Paper, units: UnitSystem) -> None:
    """Long names, several batches, several scoops, an overflow and vessel lines, two groups."""
    first, second = row(350, True, 3, NASTY, fits=False, mix_ml=250 * QUART), row(9999, batches=7, name="Blue one")
    lined = replace(row(12, water_level_mm=190.5, mix_level_mm=170), water_temperature_c=39.0)
    group = ChartGroup(
        name=NASTY, rate=RATE, volume_ml=2 * QUART, volume_means=VolumeMeans.FINISHED_MIX, rows=(first, second, lined)
    )
    facts = chart(
        lot_number=LONG_LOT, farm_name=NASTY, plan_name=NASTY, vessel_name=NASTY, medicated=True, product=NASTY,
        groups=(group, replace(group, name="Small ones")), languages=languages, paper=paper, units=units,
    )  # fmt: skip
    assert troubles(wall_chart(facts)) == []


@pytest.mark.parametrize("lot", LOTS)
def test_lot_numbers_on_the_wall(lot: str) -> None:
    for languages in LANGUAGES:
        assert troubles(wall_chart(chart(lot_number=LOTS[lot], languages=languages, counts=(109,)))) == []


def test_a_wall_chart_of_400_counts() -> None:
    document = wall_chart(chart(range(1, 401), languages=("en", "es")))
    assert troubles(document) == []
    shown = [item.text for page in document.pages for item in page.items if isinstance(item, Text) and item.figures]
    assert all(str(count) in shown for count in range(1, 401))


@everywhere
def test_lot_sheets(languages: tuple[str, ...], paper: Paper, units: UnitSystem) -> None:
    facts = record(40, NASTY, LONG_LOT, languages=languages, paper=paper, units=units)
    assert troubles(lot_sheet(facts)) == []


def test_a_lot_sheet_of_400_fills() -> None:
    assert troubles(lot_sheet(record(400, languages=("en", "es")))) == []


def test_every_sample() -> None:
    for name, document in documents():
        assert troubles(document, 2.0 if name == "grid" else 4.0) == [], name
