"""The season report: two pages at most, everything on the paper, the chart to its scale, both languages."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from datetime import UTC, date, datetime
from itertools import pairwise
from pathlib import Path

import pypdfium2
import pytest

from calibrator.model import Paper, UnitSystem
from calibrator.prints.fonts import width_mm
from calibrator.prints.output import write_pdf
from calibrator.prints.page import Anchor, Go, Line, Page, Shape, Text
from calibrator.prints.season_chart import SMALL, SpreadBar, draw_spreads
from calibrator.prints.season_facts import (
    BagsCounted,
    Carried,
    LastChange,
    LineMoved,
    MixChecks,
    SeasonReport,
    SpotFilled,
)
from calibrator.prints.season_report import season_report
from calibrator.prints.sheet import Sheet
from calibrator.science.bag_sums import by_weigh_in
from calibrator.science.carried_over import Wanting
from calibrator.science.mark import OldLineVerdict
from calibrator.science.season_findings import season
from calibrator.science.season_spread import season_spread
from tests.prints.geometry import crossed
from tests.season_rows import bags, lot

STEADY = [0.55, 0.556, 0.548, 0.553, 0.547, 0.552, 0.551, 0.549]
NASTY = "LOT-2026-NORTH-PLANT-0000418873-LINE-4 \u202egnirts\u202c 😀"


def report(densities: Sequence[float] = STEADY, **how: object) -> SeasonReport:
    lots = [lot(n, density, lot_number=f"26-{n:04d}") for n, density in enumerate(densities)]
    off = (-0.008, 0.009, 0.0)
    sums = [
        bag
        for one in lots
        for bag in bags(one, [[one.level_mean_g * (1 + a + b) for b in (-0.01, 0.012)] for a in off], by="MK")
    ]
    facts = SeasonReport(
        farm_name="Windy Hollow", season=season(lots, by_weigh_in(sums)),
        spread=season_spread(lots, sums, 0.02, 1.0), checks=MixChecks(20, 3, 2, 3, 0.012), tolerance_share=0.02,
        carried=tuple(Carried(f"26-{n:04d}", f"26-{n - 1:04d}", 284.0, 280.0, 288.0, 0.002, 0.125, 1.5)
                      for n in range(1, len(lots))),
        printed_on=date(2026, 3, 2),
    )  # fmt: skip
    return replace(facts, **how)  # type: ignore[arg-type]


def texts(page: Page) -> list[Text]:
    return [item for item in page.items if isinstance(item, Text)]


def words_of(facts: SeasonReport) -> str:
    told = " ".join(one.text for page in season_report(facts).pages for one in texts(page))
    return told.replace("\u00a0", " ").replace("\u202f", " ")


def beyond(page: Page) -> list[str]:
    """Texts that reach beyond the margins."""
    found = []
    for item in texts(page):
        wide = width_mm(item.text, item.size_mm, item.weight)
        left = item.x_mm - {Anchor.START: 0.0, Anchor.MIDDLE: wide / 2, Anchor.END: wide}[item.anchor]
        if left < 9.9 or left + wide > page.width_mm - 9.9 or not 10 < item.y_mm < page.height_mm - 9.9:
            found.append(item.text)
    return found


@pytest.mark.parametrize("paper", list(Paper))
@pytest.mark.parametrize("language", ["en", "es"])
@pytest.mark.parametrize("count", [1, 2, 8, 200])
def test_it_is_two_pages_at_most_with_everything_inside_the_margins(paper: Paper, language: str, count: int) -> None:
    made = season_report(report([STEADY[n % 8] for n in range(count)], paper=paper, languages=(language,)))
    assert len(made.pages) <= 2
    assert not any(beyond(page) for page in made.pages)


@pytest.mark.parametrize("language", ["en", "es"])
@pytest.mark.parametrize("paper", list(Paper))
def test_a_season_of_two_lots_is_one_page(paper: Paper, language: str) -> None:
    made = season_report(
        report(STEADY[:2], change=LastChange("26-2", "26-1", 0.05), paper=paper, languages=(language,))
    )
    assert len(made.pages) == 1


def test_names_from_anywhere_keep_to_their_places() -> None:
    odd = [lot(n, d, lot_number=NASTY, scoop_name=NASTY * 3, product=NASTY) for n, d in enumerate([0.5, 0.6, 0.4, 0.7])]
    counted = tuple(BagsCounted(NASTY, 284.0, 0.001, 1344) for _ in range(4))
    made = season_report(report(season=season(odd, {}), spread=None, farm_name=NASTY * 4, fed=NASTY, counted=counted))
    assert not any(beyond(page) for page in made.pages)


@pytest.mark.parametrize("language", ["en", "es"])
def test_two_lots_stay_on_one_page_with_spot_fills_and_a_moved_line(language: str) -> None:
    two = report(
        STEADY[:2], spot_fills=4, spotted=(SpotFilled("26-0001", 4, 275.0, -0.03, OldLineVerdict.MOVE),),
        moved=(LineMoved("26-0001", date(2025, 3, 12), 30.0, 35.0),), change=LastChange("26-2", "26-1", 0.05),
        languages=(language,),
    )  # fmt: skip
    assert len(season_report(two).pages) == 1


def dots(page: Page) -> list[tuple[float, float]]:
    """Where the lots stand: filled discs."""
    return [
        (item.steps[1].x_mm, item.steps[1].y_mm)
        for item in page.items
        if isinstance(item, Shape) and item.fill == 0.0 and item.steps[1].go is Go.ARC
    ]


def test_every_lot_is_drawn_and_the_chart_is_linear_in_day_and_density() -> None:
    page = season_report(report(units=UnitSystem.METRIC)).pages[0]
    found = dots(page)
    assert len(found) == len(STEADY)
    steps = {round(b[0] - a[0], 6) for a, b in pairwise(found)}
    assert len(steps) == 1  # lots 20 days apart stand equally far apart
    per = (found[1][1] - found[0][1]) / (STEADY[1] - STEADY[0])
    for (_, y), density in zip(found, STEADY, strict=True):
        assert y == pytest.approx(found[0][1] + per * (density - STEADY[0]), abs=1e-6)
    ticks = {
        t.text: t.y_mm for t in texts(page) if t.text.startswith("0.") and "%" not in t.text and t.anchor is Anchor.END
    }
    for told, y in ticks.items():
        assert y - 1.0 == pytest.approx(found[0][1] + per * (float(told) - STEADY[0]), abs=1e-6)
    assert len(ticks) >= 3


def test_no_line_runs_through_the_name_of_a_lot() -> None:
    page = season_report(report()).pages[0]
    lines = [item for item in page.items if isinstance(item, Line) and item.dash_mm]
    lines += [item for item in page.items if isinstance(item, Shape) and item.stroke_mm == 0.35]
    names = [item for item in texts(page) if item.text.startswith("26-") and item.size_mm == SMALL]
    crossing = [(name.text, line) for name in names for line in lines if crossed(name, line)]
    assert len(lines) > len(STEADY)
    assert len({name.text for name in names}) == len(STEADY)
    assert crossing == []


def test_the_bars_are_the_95_percent_intervals() -> None:
    page = season_report(report()).pages[0]
    found = dots(page)
    per = (found[1][1] - found[0][1]) / (STEADY[1] - STEADY[0])
    bar = next(i for i in page.items if isinstance(i, Line) and i.x1_mm == i.x2_mm == found[0][0] and i.width_mm == 0.3)
    assert abs(bar.y2_mm - bar.y1_mm) == pytest.approx(abs(per) * 0.024 * STEADY[0], rel=1e-6)


def test_a_lot_out_of_line_is_ringed_named_and_told() -> None:
    page, second = season_report(report([*STEADY, 0.70])).pages
    rings = [i for i in page.items if isinstance(i, Shape) and i.stroke_mm == 0.4 and i.fill is None]
    assert len(rings) >= 1
    words = " ".join(t.text for t in texts(page))
    assert "26-0008" in words
    assert "outside its limits" in words
    assert "outside its limits" in " ".join(t.text for t in texts(second))


def test_the_column_of_what_stands_out_is_there_only_where_something_does() -> None:
    said = [[item.text for page in season_report(report(of)).pages for item in texts(page)]
            for of in (STEADY[:4], [*STEADY, 0.60])]  # fmt: skip
    assert ["What stands out" in one for one in said] == [False, True]


def test_lots_without_room_in_the_table_are_counted() -> None:
    second = season_report(report([STEADY[n % 8] for n in range(200)])).pages[-1]
    lines = [t.text for t in texts(second)]
    rows = sum(text.startswith("26-") for text in lines)
    assert 10 < rows <= 40
    assert any(text.startswith(f"{200 - rows} older ones") for text in lines)


def test_a_season_that_tells_little_says_so() -> None:
    words = " ".join(
        t.text
        for page in season_report(report([0.55], spread=None, checks=MixChecks(), carried=())).pages
        for t in texts(page)
    )
    for told in ("So few lots", "too few fills", "No check of the mix", "It takes two lots"):
        assert told in words


def test_what_a_feeding_would_have_been_holds_for_lines_and_for_scoops_used_level() -> None:
    carried = [Carried(f"26-000{n}", "26-0001", 284.0, 280.0, 288.0, 0.002, level=level)
               for n, level in ((2, True), (3, False))]  # fmt: skip
    told = {item.text for page in season_report(report(carried=tuple(carried))).pages for item in texts(page)}
    assert {"26-0001, level", "26-0001"} <= told
    (heading,) = [text for text in told if text.startswith("What a feeding would weigh")]
    assert "line" not in heading


@pytest.mark.parametrize(
    ("wanting", "said"),
    [(Wanting.PLAN, "no feeding plan"), (Wanting.PRICE, "price of the lot"), (Wanting.PACKAGE, "weight of the lot's")],
)
def test_what_is_missing_for_solids_and_money_is_named(wanting: Wanting, said: str) -> None:
    carried = Carried("26-0002", "26-0001", 284.0, 280.0, 288.0, 0.002, wanting=(wanting,))
    words = " ".join(one.text for one in texts(season_report(report(carried=(carried,))).pages[0]))
    assert said in words
    assert words.count("not entered") + words.count("no feeding plan is entered") == 1


def test_the_table_of_lots_tells_the_day_of_arrival_beside_that_of_the_weigh_in() -> None:
    arrived = lot(0, 0.55, arrived_on=date(2025, 1, 3))
    told = [one.text for one in texts(season_report(report(season=season([arrived], {}))).pages[1])]
    assert {"Arrived", "Jan 3, 2025", "Weighed in"} <= set(told)


def test_the_pdf_holds_text_and_drawings_not_pictures(tmp_path: Path) -> None:
    write_pdf(season_report(report(paper=Paper.A4, languages=("es",))), tmp_path / "season.pdf")
    pdf = pypdfium2.PdfDocument(tmp_path / "season.pdf")
    kinds = {item.type for page in pdf for item in page.get_objects()}
    size = pdf[0].get_size()
    pdf.close()
    assert pypdfium2.raw.FPDF_PAGEOBJ_IMAGE not in kinds
    assert pypdfium2.raw.FPDF_PAGEOBJ_PATH in kinds
    assert size == pytest.approx((595.3, 841.9), abs=0.5)


def test_a_report_needs_a_lot() -> None:
    empty = replace(report().season, lots=())
    with pytest.raises(ValueError, match="needs a lot"):
        season_report(report(season=empty))


@pytest.mark.parametrize(("lots", "said"), [(4, "So few lots"), (8, "Nothing out of the ordinary")])
def test_few_lots_are_not_called_ordinary(lots: int, said: str) -> None:
    told = [one.text for page in season_report(report(STEADY[:lots])).pages for one in texts(page)]
    assert any(said in line for line in told)


@pytest.mark.parametrize(
    ("units", "unit", "density"), [(UnitSystem.FARM, "oz/qt", "18.36"), (UnitSystem.METRIC, "g/mL", "0.5500")]
)
def test_the_table_of_lots_speaks_the_farms_unit(units: UnitSystem, unit: str, density: str) -> None:
    told = [one.text for one in texts(season_report(report(units=units)).pages[1])]
    assert unit in told
    assert density in told


@pytest.mark.parametrize(
    ("share", "told_as"), [(-0.05, "5.0 % less than"), (0.069, "6.9 % more than"), (-0.0004, "as much as")]
)
def test_the_last_change_of_lot_is_told(share: float, told_as: str) -> None:
    page = season_report(report(change=LastChange("26-2", "26-1", share))).pages[0]
    told = " ".join(one.text for one in texts(page)).replace("\u00a0", " ").replace("\u202f", " ")
    assert f"By the scoop, lot 26-2 weighs {told_as} lot 26-1." in told


def test_scale_corrections_and_counted_bags_that_are_off_are_told() -> None:
    change = LastChange("26-2", "26-1", 0.05, taken_off_g=5.0, before_taken_off_g=-3.0)
    page = season_report(report(change=change, counted=(BagsCounted("26-2", 298.0, 0.053, 1520),))).pages[0]
    told = " ".join(one.text for one in texts(page)).replace("\u00a0", " ").replace("\u202f", " ")
    assert "Lot 26-2: 0.18 oz a level scoopful taken off for the scale." in told
    assert "Lot 26-1: 0.11 oz a level scoopful added for the scale." in told
    assert "a feeding got on average (from the target): 26-2: 10.5 oz (+5.3 %, over 1,520 feedings)." in told


@pytest.mark.parametrize(
    ("before_mm", "line_mm", "said"),
    [(9.5, 15.9, "moved from 3/8 in to 5/8 in"), (15.9, 15.9, "stayed at 5/8 in"), (None, 15.9, "")],
)
def test_the_lines_of_the_last_change_and_of_each_lot_are_told(
    before_mm: float | None, line_mm: float, said: str
) -> None:
    change = LastChange("26-2", "26-1", 0.05, line_mm=line_mm, before_line_mm=before_mm)
    told = words_of(report(change=change, fed="26-0007"))
    assert ("The line " in told) is bool(said)
    assert said in told
    assert "In use: lot 26-0007" in told
    assert told.count("1 3/16 in") == len(STEADY)  # 30 mm in the table of lots


def test_a_batch_put_right_is_told_as_one_and_a_handful_has_no_mean() -> None:
    few = words_of(report(checks=MixChecks(outside=1, read_again=1, right=1)))
    assert "Batches checked: 1." in few
    assert "Put right and read again: 1, of which right or likely right then: 1." in few
    assert "on average" not in few
    assert "only bags counted tell" in few
    many = words_of(report(checks=MixChecks(20, 3, 2, 3, -0.012)))
    assert "As mixed, on average \u22121.2 % off target." in many
    assert "read again" not in many


def test_from_few_lots_nothing_is_said_of_how_lots_differ() -> None:
    spread = report().spread
    assert spread is not None
    lots = replace(spread.components.lots, df=1)
    few = replace(spread, components=replace(spread.components, lots=lots))
    said = "How lots differ cannot be told from so few lots."
    for found, expected in ((spread, False), (few, True)):
        told = words_of(report(spread=found))
        assert (said in told) is expected
        assert ("too few to tell" in told.split("Standard deviations")[0]) is expected


@pytest.mark.parametrize(("densities", "told"), [(STEADY, False), ([*STEADY, 0.70], True)])
def test_the_ring_is_explained_where_there_is_one(densities: list[float], told: bool) -> None:
    page = season_report(report(densities)).pages[0]
    said = " ".join(one.text for one in texts(page)).replace("\u00a0", " ")
    assert ("A ring marks a lot that stands out." in said) is told


@pytest.mark.parametrize(("high", "ends"), [(0.032, 2), (0.09, 1)])
def test_an_interval_ends_with_a_stroke_unless_it_goes_beyond_the_picture(high: float, ends: int) -> None:
    sheet = Sheet(215.9, 279.4)
    bars = (SpreadBar("lots", 0.019, (0.013, high)), SpreadBar("bags", 0.01, (0.005, 0.015)))
    draw_spreads(sheet, sheet.body, bars, "")
    strokes = [i for i in sheet.page().items if isinstance(i, Line) and i.x1_mm == i.x2_mm]
    top = min(stroke.y1_mm for stroke in strokes)
    assert sum(stroke.y1_mm == pytest.approx(top) for stroke in strokes) == ends


@pytest.mark.parametrize(
    ("before_mm", "line_mm", "said"),
    [
        (30.0, 35.0, "The line moved from 1 3/16 in to 1 3/8 in below the rim."),
        (30.0, 30.1, "The line stayed at 1 3/16 in below the rim."),
        (30.0, 0.0, "The line was 1 3/16 in below the rim; now the scoop is used level."),
        (0.0, 30.0, "The scoop was used level; now its line is 1 3/16 in below the rim."),
        (0.0, 0.0, "The scoop went on being used level."),
    ],
)
def test_what_became_of_a_line_is_told(before_mm: float, line_mm: float, said: str) -> None:
    change = LastChange("26-2", "26-1", 0.05, line_mm=line_mm, before_line_mm=before_mm)
    assert said in words_of(report(change=change))
    moved = LineMoved("26-0003", date(2025, 3, 12), before_mm, line_mm)
    assert f"Lot 26-0003 was weighed in anew on Mar 12, 2025. {said}" in words_of(report(moved=(moved,)))


def test_spot_fills_are_told_with_what_they_say_of_the_mark() -> None:
    assert "pot fill" not in words_of(report()).replace("Bags counted, spot fills", "")
    assert "Spot fills from bags opened later: 2." in words_of(report(spot_fills=2))
    spotted = (SpotFilled("26-0006", 3, 284.0, 0.002, OldLineVerdict.KEEP),
               SpotFilled("26-0007", 2, 275.0, -0.03, OldLineVerdict.MOVE))  # fmt: skip
    told = words_of(report(spot_fills=5, spotted=spotted))
    assert "26-0006: 10.0 oz (+0.2 %, spot fills: 3), the mark holds" in told
    assert "26-0007: 9.7 oz (−3.0 %, spot fills: 2), the mark no longer holds: weigh the lot in anew" in told


def test_lots_of_one_day_stand_beside_each_other() -> None:
    """Two scoops, two lots, one day: one dot must not hide the other, and each keeps between its neighbours."""
    days = [datetime(2026, 1, day, 12, tzinfo=UTC) for day in (5, 20, 20, 21)]
    lots = [lot(n, 0.5, at=at) for n, at in enumerate(days)]
    xs = [x for x, _ in dots(season_report(report(season=season(lots, {}), spread=None)).pages[0])]
    assert xs == sorted(xs)
    assert xs[2] - xs[1] > 1.5  # a dot's breadth
    alone = [lot(n, 0.5, at=days[0]) for n in range(2)]
    first, second = (x for x, _ in dots(season_report(report(season=season(alone, {}), spread=None)).pages[0]))
    assert second - first > 3.0  # clear of its neighbour's interval too
