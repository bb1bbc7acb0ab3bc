"""What stands on the prints: real text, legible type, today's count, whole pages, clear refusals."""

from __future__ import annotations

import math
from collections import Counter
from dataclasses import replace
from datetime import date, datetime
from itertools import pairwise
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from calibrator.clock import clock_text
from calibrator.model import (
    Box,
    Composition,
    Cylinder,
    FillWay,
    Mark,
    MixingRate,
    Paper,
    Poured,
    RateBasis,
    TaperedCup,
    UnitSystem,
)
from calibrator.prints import chart as wall_chart_module
from calibrator.prints import fonts
from calibrator.prints.chart import wall_chart
from calibrator.prints.chart_columns import LEAST_TYPE_MM, row_shapes
from calibrator.prints.chart_facts import ScoopPart, WallChart, WeekRow, Weeks
from calibrator.prints.chart_layout import Band, split, styles
from calibrator.prints.chart_scoopfuls import TIGHT_SUBS_MM, Style, words_below
from calibrator.prints.chart_words import fed_told, row_cells
from calibrator.prints.errors import DoesNotFit
from calibrator.prints.fit import cut_end, cut_start, fit_block, plain, wrap
from calibrator.prints.fonts import CAP_HEIGHT, width_mm
from calibrator.prints.given_names import name_told
from calibrator.prints.label_facts import LabelForm, LabelLine, LineUse, label_lines
from calibrator.prints.label_info import lay_info
from calibrator.prints.labels import scoop_labels
from calibrator.prints.languages import Words
from calibrator.prints.lot_mark import lay_lot
from calibrator.prints.output import CannotPrint, pdf_bytes, write_pdf
from calibrator.prints.page import WHITE, Document, Shape, Text, Weight
from calibrator.prints.place import spread
from calibrator.prints.record import lot_sheet
from tests.prints.geometry import ink, troubles
from tests.prints.rendered import page_image, text_of
from tests.prints.samples import (
    CONE,
    GRID,
    HUGE,
    LONG_LOT,
    LOT_OF_40,
    NASTY,
    OUNCE,
    QUART,
    RATE,
    RED,
    TINY,
    chart,
    counted,
    documents,
    label,
    level_and_line,
    record,
    row,
    several,
    sheet,
    struck_level,
    to_line,
    two_groups,
    usual,
    weighed_below,
)


def texts(document: Document) -> list[Text]:
    return [item for page in document.pages for item in page.items if isinstance(item, Text)]


def told(document: Document) -> str:
    return " ".join(item.text for item in texts(document))


def test_text_in_the_pdf_can_be_searched() -> None:
    found = text_of(pdf_bytes(wall_chart(chart(languages=("en", "es")))))
    for words in ("25-0302A", "ONLYFORTHISLOT", "SOLOPARAESTELOTE", "WindyHollowDairy", "109", "Becerras", "110°F"):
        assert words in found, words
    assert "25-0302A" in text_of(pdf_bytes(scoop_labels(sheet(label()))))
    assert "spilledsome" in text_of(pdf_bytes(lot_sheet(record())))


def test_names_stand_as_they_were_typed() -> None:
    """Markup is text, not layout; a direction override is dropped, so that it turns no other words."""
    shown = told(lot_sheet(record(name=NASTY)))
    assert "<b>Big" in shown
    assert "\u202e" not in shown


def test_figures_of_the_chart_are_legible_from_two_metres() -> None:
    """Half of normal sight (20/40) tells letters of 10 minutes of arc: Snellen's 5 minutes for 20/20, doubled."""
    least_mm = 2000 * math.tan(math.radians(10 / 60))
    assert least_mm <= LEAST_TYPE_MM * CAP_HEIGHT
    for rows in (1, 12, 60):
        figures = [t for t in texts(wall_chart(chart(range(90, 90 + rows)))) if t.figures and t.text.isdigit()]
        assert min(t.size_mm for t in figures) * CAP_HEIGHT >= least_mm


@pytest.mark.parametrize("paper", list(Paper))
@pytest.mark.parametrize("languages", [("en",), ("es",), ("en", "es")])
@pytest.mark.parametrize("rows", [3, 9, 12])
def test_the_days_row_is_larger_and_takes_no_page_more(rows: int, languages: tuple[str, ...], paper: Paper) -> None:
    """A three-hundredth of two metres (common practice, no source)."""
    counts = range(101, 101 + rows)
    framed = wall_chart(chart(counts, today=102, languages=languages, paper=paper))
    assert len(framed.pages) == len(wall_chart(chart(counts, today=0, languages=languages, paper=paper)).pages)
    sizes = {t.text: t.size_mm for t in texts(framed) if t.figures and t.text in ("101", "102")}
    assert sizes["102"] * CAP_HEIGHT >= 2000 / 300
    assert sizes["102"] >= sizes["101"]


@pytest.mark.parametrize("languages", [("en",), ("es",), ("en", "es")])
@pytest.mark.parametrize("rows", [3, 9, 12, 16])
def test_the_rate_is_read_from_where_the_rows_are_as_far_as_they_lose_nothing(
    rows: int, languages: tuple[str, ...], monkeypatch: pytest.MonkeyPatch
) -> None:
    counts = range(41, 41 + rows)

    def rate_and_rows() -> tuple[float, float, int]:
        document = wall_chart(chart(counts, today=42, languages=languages))
        told = [text for text in texts(document) if "13.0 %" in text.text]
        (figure,) = [text.size_mm for text in texts(document) if text.figures and text.text == "41"]
        return min(text.size_mm for text in told), figure, len(document.pages)

    rate, figure, pages = rate_and_rows()
    monkeypatch.setattr(wall_chart_module, "_MORE_MM", (0.0,))
    small, tight, fewest = rate_and_rows()
    assert pages == fewest
    assert rate >= small
    assert figure == tight or figure >= 9.5
    if rows == 3:
        assert rate >= 4.4 > small


def test_so_many_batches_are_for_one_feeding() -> None:
    """ "2 ×" under "Batches" was read as the morning's and the evening's."""
    for language, told in (("en", ("Batches", "a feeding")), ("es", ("Tandas", "por toma"))):
        shown = {text.text: text.size_mm for text in texts(wall_chart(chart(batches=2, languages=(language,))))}
        assert all(shown[one] >= 3.3 for one in told), shown
        assert "2 ×" in shown
    assert "a feeding" not in {text.text for text in texts(wall_chart(chart()))}


def test_powder_that_the_scale_does_not_weigh_at_once_is_told_in_portions_in_its_row() -> None:
    heavy = chart(range(20, 26), today=24)
    pounds = 16 * OUNCE
    rows = tuple(
        replace(each, portions=2, portion_g=each.powder_g / 2) if each.calves >= 24 else each
        for each in heavy.groups[0].rows
    )
    facts = replace(heavy, groups=(replace(heavy.groups[0], rows=rows),), scale_most_g=11 * pounds)
    document = wall_chart(facts)
    shown = told(document).replace("\u00a0", " ")
    assert shown.count("weigh 2 ×") == 2
    assert "weigh 2 × 7 lb 8" in shown
    assert "The scale weighs 11 lb at most" in shown
    spanish = told(wall_chart(replace(facts, languages=("es",)))).replace("\u00a0", " ")
    assert "pese 2 × 7 lb 8" in spanish
    assert "hasta 11 lb" in spanish
    assert "at most" not in told(wall_chart(heavy))
    assert len(document.pages) == 1


def test_a_scale_that_was_off_at_the_weigh_in_is_told_beside_the_weights() -> None:
    usual = chart(range(20, 26), today=24)
    for share, english, spanish in (
        (0.019, "1.9 % too much", "1.9 % de más"),
        (-0.02, "2.0 % too little", "2.0 % de menos"),
    ):
        shown = told(wall_chart(replace(usual, scale_off_share=share, languages=("en", "es")))).replace("\u00a0", " ")
        assert f"The scale showed {english} at the weigh-in" in shown
        assert f"La báscula marcó {spanish}" in shown
    assert "at the weigh-in" not in told(wall_chart(usual))


SMALL_WORDS = (
    "makes",
    "rinde",
    "mix to",
    "llene a",
    "better weighed",
    "mejor péselo",
    "to the line",
    "la línea",
)


@pytest.mark.parametrize("basis", [RateBasis.ON_WATER, RateBasis.MADE_UP])
@pytest.mark.parametrize("paper", list(Paper))
@pytest.mark.parametrize("languages", [("en",), ("es",), ("en", "es")])
@pytest.mark.parametrize("rows", [3, 6, 9, 12])
def test_the_small_words_of_a_row_are_read_at_two_metres(
    rows: int, languages: tuple[str, ...], paper: Paper, basis: RateBasis
) -> None:
    """Snellen's 5 minutes of arc, 2.9 mm: what a normal eye just tells. They are wrapped, not shrunk."""
    plain_rows = chart(range(101, 101 + rows), today=103, languages=languages, paper=paper)
    group = plain_rows.groups[0]
    many = tuple(
        replace(each, mix_ml=each.calves * 2.21 * QUART, many=True, scoopfuls=(to_line(each.calves),))
        for each in group.rows
    )
    document = wall_chart(
        replace(plain_rows, groups=(replace(group, rows=many, rate=replace(group.rate, basis=basis)),))
    )
    small = [t for t in texts(document) if t.text.startswith(SMALL_WORDS)]
    assert len(small) >= 2 * rows
    sharp = 2000 * math.tan(math.radians(5 / 60))
    assert min(t.size_mm for t in small) * CAP_HEIGHT >= (sharp if len(languages) == 1 else 0.75 * sharp)
    assert not [t.text for t in small if t.text.endswith("…")]
    assert len(document.pages) == 1 or rows > 9 or len(languages) * rows > 12


def test_the_small_words_give_way_only_where_that_saves_a_page() -> None:
    """Nine counts of a medicated powder on Letter paper, each to be filled up: one page by smaller words, or two."""
    usual = chart(range(20, 29), today=24)
    rows = tuple(
        replace(each, mix_ml=each.calves * 2 * QUART, many=True, scoopfuls=(to_line(each.calves),))
        for each in usual.groups[0].rows
    )
    made_up = replace(usual.groups[0], rows=rows, rate=replace(RATE, basis=RateBasis.MADE_UP))
    long_foot = replace(usual, groups=(made_up,), medicated=True, scale_most_g=4989.5)
    document = wall_chart(long_foot)
    assert len(document.pages) == 1
    small = {t.size_mm for t in texts(document) if t.text.startswith(SMALL_WORDS)}
    assert min(small) >= 3.29
    roomy = wall_chart(replace(long_foot, groups=(replace(made_up, rows=rows[:6]),)))
    assert min(t.size_mm for t in texts(roomy) if t.text.startswith(SMALL_WORDS)) >= 4.4


@pytest.mark.parametrize("paper", list(Paper))
@pytest.mark.parametrize("language", ["en", "es"])
@pytest.mark.parametrize("medicated", [False, True])
def test_the_rows_that_a_plan_suggests_hang_on_one_sheet_with_all_their_small_words(
    paper: Paper, language: str, medicated: bool
) -> None:
    """Four counts below today's and four above, filled up to a mark and weighed in portions."""
    usual = chart(range(20, 29), today=24, languages=(language,), paper=paper)
    rows = tuple(
        replace(each, mix_ml=3500 * each.calves, portions=3, portion_g=167 * each.calves, scoopfuls=(to_line(24),))
        for each in usual.groups[0].rows
    )
    rate = MixingRate(basis=RateBasis.MADE_UP, powder_mass_g=500, volume_ml=3500)
    group = replace(usual.groups[0], rows=rows, rate=rate)
    metric = replace(
        usual, groups=(group,), units=UnitSystem.METRIC, resolution_g=1.0, scale_most_g=5000.0, medicated=medicated
    )
    document = wall_chart(metric)
    assert len(document.pages) == 1
    assert [t.text for t in texts(document) if t.text.endswith("…")] == []
    assert min(t.size_mm for t in texts(document) if t.text.startswith(SMALL_WORDS)) >= 4.399  # none gave way


@pytest.mark.parametrize("paper", list(Paper))
@pytest.mark.parametrize("batches", [1, 2])
def test_nine_counts_to_be_filled_up_hang_on_one_page_in_both_languages(batches: int, paper: Paper) -> None:
    """24 calves, four fewer to four more: 2 L of mix each. Their small words were 2.6 mm, now 3.3."""
    usual = chart(
        range(20, 29), today=24, languages=("en", "es"), paper=paper, units=UnitSystem.METRIC, water_step=0.1,
        resolution_g=1.0, vessel_name="Tub", water_temperature_c=43.0,
    )  # fmt: skip
    rows = tuple(
        replace(
            each, batches=batches, mix_ml=each.calves * 2000 / batches, water_ml=each.calves * 1800 / batches,
            powder_g=each.calves * 283.5 / batches, scoopfuls=(to_line(each.calves // batches),),
        )
        for each in usual.groups[0].rows
    )  # fmt: skip
    made_up = replace(usual.groups[0], rows=rows, rate=replace(RATE, basis=RateBasis.MADE_UP))
    document = wall_chart(replace(usual, groups=(made_up,)))
    assert len(document.pages) == 1
    small = [t for t in texts(document) if t.text.startswith(SMALL_WORDS)]
    assert min(t.size_mm for t in small) >= 3.29
    assert f"mix to / llene a {48 / batches:.1f} L" in told(document).replace("\u00a0", " ")


@pytest.mark.parametrize("small_mm", TIGHT_SUBS_MM)
def test_the_day_s_row_is_as_high_as_its_larger_small_words_need(small_mm: float) -> None:
    """ "hasta la línea de 10.0 oz" took a line more in the framed row; it was printed through the frame."""
    facts = chart(range(20, 29), today=24, languages=("es",))
    named = replace(to_line(24), line_g=10 * OUNCE)
    rows = [
        row_cells(replace(each, scoopfuls=(named,)), RATE.basis, facts, Words.of(("es",)), several_scoops=False)
        for each in facts.groups[0].rows
    ]
    higher = 0
    for today_mm in (9.5, 10.5, 11.0, 12.0):
        (shape,) = row_shapes([rows], Style(9.0, today_mm=today_mm, small_mm=small_mm, words_mm=40.0))
        for cells in rows:
            own = shape.of(cells)
            assert own.sub_lines >= max(len(words_below(part, own.style)) for part in cells.parts)
            higher += own.sub_lines > shape.sub_lines
    assert higher  # or this could not fail


def test_two_feeders_find_their_names_from_afar_where_the_rows_leave_room() -> None:
    one = chart(range(36, 38), today=37)
    two = replace(one, groups=tuple(replace(one.groups[0], name=name) for name in ("Ana", "Luis")))
    assert [t.size_mm * CAP_HEIGHT >= 7.0 for t in texts(wall_chart(two)) if t.text in ("Ana", "Luis")] == [True, True]
    many = chart(range(90, 110))
    long = replace(many, groups=tuple(replace(many.groups[0], name=name) for name in ("Ana", "Luis")))
    names = {t.size_mm for t in texts(wall_chart(long)) if t.text in ("Ana", "Luis")}
    assert min(names) * CAP_HEIGHT >= 3.7


def test_a_quarter_is_told_from_three_quarters_from_afar() -> None:
    """Digits of a fraction are three quarters of the others: in the day's row 5 mm, where normal sight needs 2.9 mm."""
    pieces = fonts.runs("9 gal 1 1/4 qt", True)
    assert {run.scale for run in pieces if run.text in ("1", "4") and run.scale != 1.0} == {0.75}
    assert 2000 * math.tan(math.radians(5 / 60)) <= 0.75 * 10.5 * CAP_HEIGHT


def test_the_font_s_figures_are_as_high_as_its_tables_say() -> None:
    assert ink("H", Weight.BOLD).height() == pytest.approx(CAP_HEIGHT, abs=0.01)
    assert ink("0", Weight.BOLD).height() == pytest.approx(CAP_HEIGHT, abs=0.03)


def test_twelve_counts_hang_on_one_page_in_both_languages() -> None:
    assert len(wall_chart(chart()).pages) == len(wall_chart(chart(languages=("en", "es"))).pages) == 1


def test_every_page_of_a_chart_tells_its_lot_and_its_headings() -> None:
    document = wall_chart(chart(range(90, 140)))
    assert len(document.pages) > 1
    for page in document.pages:
        shown = [item.text for item in page.items if isinstance(item, Text)]
        assert {"25-0302A", "ONLY FOR THIS LOT", "Calves", "Powder", "Print no. 27"} <= set(shown)


def test_pages_are_filled_alike() -> None:
    assert [len(page) for page in split(_bands(21), 105.0)] == [7, 7, 7]


def test_a_group_begins_on_a_page_of_its_own_where_that_takes_no_page_more() -> None:
    def parted(room_mm: float, *rows: int) -> list[list[int]]:
        return [[band.group for band in page] for page in split(_bands(*rows), room_mm)]

    assert parted(55.0, 3, 4) == [[0, 0, 0], [1, 1, 1, 1]]
    assert parted(60.0, 2, 3, 6) == [[0, 0, 1, 1, 1], [2] * 6]
    assert [len(page) for page in parted(60.0, 4, 4, 4)] == [6, 6]  # three pages else


@pytest.mark.parametrize("rows", [(5, 7), (7, 5), (5, 3, 4), (13,), (6, 1), (9, 9)])
@pytest.mark.parametrize("heading_mm", [0.0, 5.0])
def test_no_row_of_a_group_is_left_alone_on_a_page(rows: tuple[int, ...], heading_mm: float) -> None:
    pages = split(_bands(*rows, heading_mm=heading_mm), 60.0)
    assert max(sum(band.height_mm for band in page) for page in pages) <= 60.0
    for page in pages:
        assert page[-1].row is not None
        assert (page[0].row is None) == (heading_mm > 0)  # each may hang alone
        shown = Counter(band.group for band in page if band.row is not None)
        assert [group for group, count in shown.items() if count == 1 < rows[group]] == []


def _bands(*rows: int, heading_mm: float = 0.0) -> list[Band]:
    """Groups of so many rows of 10 mm."""
    made = []
    for group, count in enumerate(rows):
        made += [Band(heading_mm, group=group)] if heading_mm else []
        made += [Band(10.0, row=object(), group=group)] * count  # type: ignore[arg-type]
    return made


@pytest.mark.parametrize(("languages", "sheets"), [(("en",), 2), (("en", "es"), 3)])
def test_two_groups_take_few_sheets_and_each_says_which_scoop_and_line(languages: tuple[str, ...], sheets: int) -> None:
    """Nine rows each took four sheets, six in two languages: all were as high as those with the most small words."""
    pages = wall_chart(two_groups(languages=languages)).pages
    assert len(pages) == sheets
    for page in pages:
        shown = [item for item in page.items if isinstance(item, Text)]
        said = [item.text for item in shown]
        assert ("Younger" in said) != ("Older" in said)
        assert "Red scoop" in said
        assert any(text.startswith("to the line") for text in said)
        assert min(item.size_mm for item in shown if item.text.startswith(SMALL_WORDS)) >= min(TIGHT_SUBS_MM) - 0.01
    assert any("3 × 9 lb 6.0 oz" in text.replace("\u00a0", " ") for text in said)


@pytest.mark.parametrize("paper", list(Paper))
def test_a_group_with_a_line_of_its_own_stays_on_one_page(paper: Paper) -> None:
    """Its "HASTA LA LÍNEA DE 8.0 oz" took two lines a row, with room beside it, and tore it over two pages."""
    facts = two_groups(languages=("es",))
    young, old = facts.groups
    rows = tuple(
        replace(each, batches=1, scoopfuls=(replace(to_line(each.calves), line_g=line_g, otherwise=otherwise),))
        for group, line_g, otherwise in ((young, 10 * OUNCE, False), (old, 8 * OUNCE, True))
        for each in group.rows
    )
    groups = (replace(young, rows=rows[:9]), replace(old, rows=rows[9:]))
    pages = wall_chart(replace(facts, groups=groups, paper=paper)).pages
    assert len(pages) == 2
    for page, name in zip(pages, ("Younger", "Older"), strict=True):
        said = [item.text for item in page.items if isinstance(item, Text)]
        assert [text for text in said if text in ("Younger", "Older")] == [name]


def test_words_stand_in_the_rows_where_their_pictures_do_not_tell_two_lines_apart() -> None:
    one = chart(counts=(20, 21))

    def may_stand_in_the_heading(*lines_g: float) -> bool:
        cells = [
            row_cells(
                replace(each, scoopfuls=(replace(to_line(each.calves), line_g=line_g),)),
                RateBasis.ON_WATER, one, Words.of(("en",)), several_scoops=False,
            )
            for each, line_g in zip(one.groups[0].rows, lines_g, strict=True)
        ]  # fmt: skip
        return any(not style.told for series in styles(cells) for style in series)

    assert may_stand_in_the_heading(150.0, 150.0)
    assert not may_stand_in_the_heading(150.0, 300.0)


def test_each_group_tells_what_one_of_its_calves_gets_and_the_mix_is_told_once() -> None:
    facts = two_groups()
    shown = [text.text for text in texts(wall_chart(facts))]
    assert "15.0 oz of powder per calf = 1 1/2 to the line" in shown
    assert "10.0 oz of powder per calf = 1 to the line" in shown
    assert not any("made up" in text and "per calf" in text for text in shown)
    pages = wall_chart(facts).pages
    for page in pages:
        said = [item.text for item in page.items if isinstance(item, Text)]
        assert sum("One recipe for all groups: 10.0 oz of powder made up" in text for text in said) == 1
        assert not [text for text in said if text.endswith("·")]  # nothing hangs where its line breaks
    both = told(wall_chart(replace(facts, languages=("en", "es"))))
    assert "15.0 oz de polvo por becerra = 1 1/2 hasta la línea" in both
    young, old = facts.groups
    other = replace(facts, groups=(young, replace(old, rate=replace(old.rate, powder_mass_g=9 * OUNCE))))
    assert "15.0 oz of powder per calf = 1 1/2 to the line · 9.0 oz of powder made up" in told(wall_chart(other))
    alone = replace(facts, groups=(young,))
    assert "of powder per calf" not in told(wall_chart(alone))  # its rate tells that


def test_the_temperature_stands_over_the_water_and_a_weight_is_not_torn() -> None:
    (page, *_) = wall_chart(two_groups()).pages
    at = {item.text: item.x_mm for item in page.items if isinstance(item, Text)}
    assert at["Water each"] <= at["110 °F"] + 1.0 < at["Powder each"]
    shown = [item.text for item in wall_chart(two_groups()).pages[-1].items if isinstance(item, Text)]
    assert not any(text.endswith("×") and "weigh" in text for text in shown)


def test_the_days_count_is_framed_and_bold_without_colour() -> None:
    with_today, without = wall_chart(chart(counts=(109, 110))), wall_chart(chart(counts=(108, 110)))
    thick = [i for p in with_today.pages for i in p.items if isinstance(i, Shape) and i.stroke_mm == 1.3]
    assert len(thick) == 1
    assert not [i for p in without.pages for i in p.items if isinstance(i, Shape) and i.stroke_mm == 1.3]
    weights = {t.text: t.weight for t in texts(with_today) if t.text in ("109", "110")}
    assert weights == {"109": Weight.BOLD, "110": Weight.SEMIBOLD}
    assert "TODAY" not in told(with_today)
    assert {"3", "Mar"} <= {t.text for t in texts(with_today)}
    assert "Printed Mar 3, 2026; framed: that day's calves" in told(with_today)
    assert "framed" not in told(without)


def test_a_chart_says_what_it_replaces_and_what_to_beware_of() -> None:
    shown = told(wall_chart(chart(medicated=True)))
    for words in (
        "Print no. 27",
        "Take down no. 24",
        "120 °F",
        "tube",
        "veterinarian",
        "label",
        "Feed at once",
        "MEDICATED",
        "fresh water",
    ):
        assert words in shown, words
    assert "Take down" not in told(wall_chart(chart(replaces=None)))
    assert "49 °C" in told(wall_chart(chart(units=UnitSystem.METRIC)))


def test_a_chart_says_why_a_row_is_better_weighed_or_has_no_scoopfuls() -> None:
    many, none = "Over 24 scoopfuls are easily miscounted", "A row without scoopfuls: no count comes near enough"
    shown = told(wall_chart(usual()))
    assert many in shown
    assert none not in shown
    facts = chart(range(20, 24), today=22)
    assert many not in told(wall_chart(facts))
    shown = told(wall_chart(replace(facts, groups=(weighed_below(facts),))))
    assert none in shown
    assert many not in shown


def test_a_chart_says_where_half_a_scoopful_goes_and_why_powder_goes_by_the_water() -> None:
    half, eye = "1/2 to the line: fill to the ½ line on the label", "A part of a scoopful without a line"
    water = "Volumes are rounded to 1/4 qt; in small batches the powder goes with them"
    whole = told(wall_chart(chart(range(20, 24), today=22)))
    assert not any(words in whole for words in (half, eye, water))
    for way, count, words in (
        (FillWay.TO_MARK, 13.5, half),
        (FillWay.LEVEL, 13.5, eye),
        (FillWay.TO_MARK, 13.25, eye),
    ):
        shown = told(wall_chart(of_one_row(scoopfuls=(ScoopPart(scoop_name="Red", way=way, count=count),))))
        assert [each for each in (half, eye, water) if each in shown] == [words]
    assert water in told(wall_chart(replace(of_one_row(for_water=True), water_step=0.25)))


def of_one_row(**more: object) -> WallChart:
    facts = chart((9,), today=9)
    (alone,) = facts.groups
    return replace(facts, groups=(replace(alone, rows=tuple(replace(each, **more) for each in alone.rows)),))


def test_the_rate_is_told_as_laid_down_and_not_to_the_step_of_the_scale() -> None:
    one = chart(counts=(109,), units=UnitSystem.METRIC, resolution_g=10.0)
    for grams, words in ((254.0, "254 g of powder"), (1000.0, "1.00 kg of powder")):
        rate = MixingRate(basis=RateBasis.MADE_UP, powder_mass_g=grams, volume_ml=2000.0)
        assert words in told(wall_chart(replace(one, groups=(replace(one.groups[0], rate=rate),))))


@pytest.mark.parametrize(
    ("basis", "words"),
    [
        (RateBasis.ON_WATER, "on top of every 2 qt of water"),
        (RateBasis.MADE_UP, "made up with water to 2 qt"),
        (RateBasis.PER_FINISHED, "in every 2 qt of mix"),
        (RateBasis.SOLIDS, "12.5 % solids"),
        (RateBasis.DRY_MATTER, "12.5 % dry matter"),
    ],
)
def test_the_basis_of_the_rate_is_named(basis: RateBasis, words: str) -> None:
    one = chart(counts=(109,))
    rate = MixingRate(basis=basis, powder_mass_g=10 * OUNCE, volume_ml=2 * QUART, solids_share=0.125)
    group = replace(one.groups[0], rate=rate, solids_share=None)
    assert words in told(wall_chart(replace(one, groups=(group,))))


def test_a_vessel_that_runs_over_is_said_in_words() -> None:
    one = chart(counts=(1,), vessel_name="5 gal pail")
    group = replace(one.groups[0], rows=(row(100, fits=False, water_level_mm=25.4),))
    shown = told(wall_chart(replace(one, groups=(group,))))
    assert "too much for 5 gal pail" in shown
    assert "water 1 in deep" in shown


def test_few_scoopfuls_are_drawn_one_by_one() -> None:
    def cups(count: float) -> int:
        parts = (ScoopPart(scoop_name="Red", way=FillWay.LEVEL, count=count),)
        group = replace(chart().groups[0], rows=(row(2, scoopfuls=parts),))
        items = wall_chart(chart(groups=(group,))).pages[0].items
        return sum(isinstance(i, Shape) and i.fill == 0.35 for i in items)

    assert [cups(1), cups(2), cups(3), cups(30)] == [1, 2, 3, 1]


def test_the_water_s_temperature_is_on_every_page() -> None:
    one = chart(range(60, 110))
    for groups in (one.groups, (one.groups[0], replace(one.groups[0], name="Small ones"))):
        for page in wall_chart(replace(one, groups=groups)).pages:
            assert any(isinstance(item, Text) and item.text == "110 °F" for item in page.items)


@pytest.mark.parametrize("size", [1, 2, 4, 7, 9, 14, 30])
@pytest.mark.parametrize("languages", [("en",), ("es",), ("en", "es")])
def test_which_line_a_scoop_is_filled_to_is_never_cut_off(size: int, languages: tuple[str, ...]) -> None:
    document = wall_chart(level_and_line(size, languages))
    assert [item.text for item in texts(document) if item.text.endswith("…")] == []
    assert troubles(document) == []


def test_no_words_of_the_sample_charts_are_cut_off() -> None:
    charts = [(name, told(one)) for name, one in documents() if name.startswith("chart_") and name != "chart_long"]
    assert [name for name, shown in charts if "…" in shown] == []


def test_every_row_names_its_scoop_where_there_are_several() -> None:
    one = chart(range(60, 100))
    blue = tuple(
        replace(each, scoopfuls=(replace(each.scoopfuls[0], scoop_name="Blue"),)) for each in one.groups[0].rows
    )
    mixed = replace(one.groups[0], rows=(*one.groups[0].rows, *blue))
    shown = [t.text for t in texts(wall_chart(replace(one, groups=(mixed,))))]
    assert shown.count("Blue") == 40
    assert shown.count("Red scoop") == 80


def test_a_fraction_is_not_read_as_a_division() -> None:
    runs = fonts.runs("1 5/16 in", True)
    top, bottom = (next(r for r in runs if r.text.startswith(digits)) for digits in ("5", "16"))
    assert top.scale == bottom.scale < 1
    assert top.rise > bottom.rise == 0
    assert "".join(r.text for r in runs).replace("⁄", "/").split() == ["1", "5/16", "in"]


def test_a_lot_number_stands_in_one_size_without_a_gap_and_its_end_is_never_cut() -> None:
    for room in (20.0, 40.0, 120.0):
        mark = lay_lot(LONG_LOT, room, 10.0, 5.0, 3.0)
        assert mark.lines[-1].endswith("302A")
        assert mark.width_mm <= room + 1e-6
    for lot in ("A1142", "25-0302A", "7"):
        assert lay_lot(lot, 40, 10, 5, 3).lines == (lot,)
    assert lay_lot("", 40, 10, 5, 3).lines == ("–",)
    shown = [item.text for item in texts(scoop_labels(sheet(label(RED, lot="A1142"))))]
    assert "A1142" in shown


@pytest.mark.parametrize("form", list(LabelForm))
@pytest.mark.parametrize(("languages", "phrase"), [(("en",), "below the rim"), (("es",), "desde el borde")])
def test_a_label_tells_how_far_below_the_rim_its_lines_are(
    form: LabelForm, languages: tuple[str, ...], phrase: str
) -> None:
    document = scoop_labels(sheet(label(RED), form=form, languages=languages))
    shown = " ".join(item.text for item in texts(document)).replace("\N{NO-BREAK SPACE}", " ")
    assert phrase in shown
    for line in label(RED).lines:
        assert f"{'pulg' if 'es' in languages else 'in'} ({line.down_wall_mm:.0f} mm)" in shown
    assert troubles(document) == []


def test_a_scoop_called_scoop_is_not_told_twice() -> None:
    shown = [item.text for item in texts(scoop_labels(sheet(label(RED, name="Scoop 1 quart"))))]
    assert "Scoop 1 quart" in shown


@pytest.mark.parametrize("languages", [("en",), ("es",), ("en", "es")])
@pytest.mark.parametrize("form", list(LabelForm))
@pytest.mark.parametrize("lot", [LOT_OF_40, "W" * 40, "lot no. 25 / 0302 A north line 4 B 0418A"])
def test_a_lot_number_of_forty_characters_stands_whole_on_every_label(
    lot: str, form: LabelForm, languages: tuple[str, ...]
) -> None:
    assert len(lot) == 40
    for shape in (TINY, RED, HUGE, CONE):
        document = scoop_labels(sheet(label(shape, lot=lot, name=NASTY), form=form, languages=languages))
        shown = "".join(item.text for item in texts(document)).replace(" ", "")
        assert lot.replace(" ", "") in shown, shape
        assert troubles(document) == []


@pytest.mark.parametrize("lot", [LOT_OF_40, "W" * 40])
def test_a_lot_number_of_forty_characters_stands_whole_on_chart_and_lot_sheet(lot: str) -> None:
    for document in (wall_chart(chart(lot_number=lot)), lot_sheet(record(lot_number=lot))):
        for page in document.pages[:1]:
            assert lot in "".join(item.text for item in page.items if isinstance(item, Text))


def test_the_lot_sheet_of_a_scoop_s_first_lot_tells_of_no_old_line() -> None:
    facts = record()
    assert "Old line" in told(lot_sheet(facts))
    first = replace(facts, weigh_in=replace(facts.weigh_in, old_line_mm=None, old_line_typed=""))
    assert "Old line" not in told(lot_sheet(first))


def test_main_and_half_lines_are_told_from_others() -> None:
    marks = [
        Mark(
            id=str(g), farm_id="", sign_off_id="", lot_id="", scoop_id="", target_mass_g=g, full_scoops=0,
            height_mm=50, down_wall_mm=20, mass_g=g, mass_u_g=1,
        )
        for g in (283.5, 141.75, 226.8)
    ]  # fmt: skip
    assert [line.use for line in label_lines(marks, 283.5)] == [LineUse.MAIN, LineUse.HALF, LineUse.OTHER]


def test_scoopfuls_before_the_line_stand_on_the_label() -> None:
    shown = told(scoop_labels(sheet(several()))).replace("\N{NO-BREAK SPACE}", " ")
    assert "1 struck at the rim + 1 to here = 15.0 oz" in shown  # what the feeding is made of: the line alone is less
    assert "5.0 oz: 1 5/8 in (41 mm), 2.6 oz: 3 in (76 mm)" in shown
    assert "1 struck at the rim + 1 to here = 12.6 oz" in told(scoop_labels(sheet(several(), form=LabelForm.WRAP)))


@pytest.mark.parametrize("form", list(LabelForm))
@pytest.mark.parametrize("languages", [("en",), ("es",), ("en", "es")])
@pytest.mark.parametrize("shape", [RED, HUGE], ids=["700 mL", "4 L"])
def test_no_weight_stands_large_at_a_line_that_does_not_hold_it(
    shape: TaperedCup | Box, languages: tuple[str, ...], form: LabelForm
) -> None:
    document = scoop_labels(sheet(several(shape), languages=languages, form=form))
    assert troubles(document) == []
    weights = {item.text: item.size_mm for item in texts(document) if item.figures}
    assert {text.removesuffix(" ·") for text in weights} == {"5.0 oz", "2.6 oz"}
    made_of = [item for item in texts(document) if item.text.startswith(("1 struck", "1 al ras", "= 1"))]
    assert made_of
    assert all(1.8 <= item.size_mm < min(weights.values()) for item in made_of)
    assert len(languages) > 1 or all(item.size_mm >= 2.6 for item in made_of)


@pytest.mark.parametrize("form", list(LabelForm))
@pytest.mark.parametrize(
    ("languages", "told_so"),
    [
        (("en",), {"15.0 oz = 1 to the line + 1 to ½", "20.0 oz = 2 to the line"}),
        (("es",), {"15.0 oz = 1 hasta la línea + 1 hasta ½", "20.0 oz = 2 hasta la línea"}),
    ],
)
@pytest.mark.parametrize("shape", [RED, HUGE, Cylinder(diameter_mm=60, height_mm=70)], ids=["700 mL", "4 L", "200 mL"])
def test_a_feeding_of_lines_on_the_label_is_told_in_words_at_a_readable_size(
    shape: TaperedCup | Box | Cylinder, languages: tuple[str, ...], told_so: set[str], form: LabelForm
) -> None:
    document = scoop_labels(sheet(counted(shape), languages=languages, form=form))
    assert troubles(document) == []
    shown = " ".join(item.text for item in texts(document)).replace("\N{NO-BREAK SPACE}", " ")
    assert all(words in shown for words in told_so)
    assert all(item.size_mm >= 2.3 for item in texts(document) if item.text.startswith("20.0"))


@pytest.mark.parametrize("form", list(LabelForm))
@pytest.mark.parametrize("languages", [("en",), ("en", "es")])
def test_a_scoop_used_level_says_it_as_large_as_its_lot(form: LabelForm, languages: tuple[str, ...]) -> None:
    for shape in (RED, HUGE, TINY):
        document = scoop_labels(sheet(struck_level(shape), languages=languages, form=form))
        assert troubles(document) == []
    document = scoop_labels(sheet(struck_level(), languages=languages, form=form))
    sizes = [item.size_mm for item in texts(document) if item.text == "21.2 oz"]
    assert sizes
    assert min(sizes) >= 7.0 if len(languages) == 1 else 5.4


@pytest.mark.parametrize("form", list(LabelForm))
def test_the_rim_edge_is_said_beneath_where_its_black_edge_is_too_thin(form: LabelForm) -> None:
    """A line 3 mm down, the nearest that is proposed, leaves an edge of 1.7 mm."""
    line = LabelLine(target_mass_g=283, down_wall_mm=3.0, use=LineUse.MAIN)
    document = scoop_labels(sheet(label(lines=(line,)), form=form))
    assert troubles(document) == []
    assert all(item.size_mm >= 1.8 for item in texts(document) if item.text == "RIM EDGE")
    assert "RIM EDGE" in told(document)


@pytest.mark.parametrize("form", list(LabelForm))
@pytest.mark.parametrize("languages", [("en",), ("en", "es")])
def test_a_scoop_of_medicated_powder_says_so(form: LabelForm, languages: tuple[str, ...]) -> None:
    """Whoever holds the scoop has not always the bag or the chart in view."""
    small = Cylinder(diameter_mm=55, height_mm=40)
    for one in (label(medicated=True), label(small, medicated=True)):
        shown = told(scoop_labels(sheet(one, form=form, languages=languages)))
        assert "MEDICATED" in shown
        assert ("MEDICADO" in shown) is ("es" in languages)
    assert "MEDICATED" not in told(scoop_labels(sheet(label(), form=form)))


def test_a_poured_scoop_gets_a_strip() -> None:
    shape = Poured(heights_mm=(20.0, 50.0, 90.0), volumes_ml=(90.0, 260.0, 540.0))
    line = LabelLine(target_mass_g=283, down_wall_mm=30, use=LineUse.MAIN)
    assert "RIM EDGE" in told(scoop_labels(sheet(replace(label(RED), shape=shape, lines=(line,)))))


def _line_at(mm: float) -> LabelLine:
    return LabelLine(target_mass_g=283, down_wall_mm=mm, use=LineUse.MAIN)


@pytest.mark.parametrize(
    ("facts", "sentence"),
    [
        (sheet(), "no line to print"),
        (sheet(label(lines=())), "no line to print"),
        (sheet(label(lines=(_line_at(-1.0),))), "below the rim"),
        (sheet(label(Cylinder(diameter_mm=-5, height_mm=20))), "diameter must be greater"),
        (sheet(label(Cylinder(diameter_mm=90, height_mm=400), lines=(_line_at(320.0),))), "larger paper"),
        (sheet(label(Cylinder(diameter_mm=900, height_mm=500)), form=LabelForm.WRAP), "strip label instead"),
        (replace(sheet(label()), grid=replace(GRID, columns=0)), "at least one label"),
        (replace(sheet(label()), grid=replace(GRID, width_mm=math.nan)), "at least one label"),
        (replace(sheet(label()), grid=replace(GRID, pitch_x_mm=50)), "overlap"),
        (replace(sheet(label()), grid=replace(GRID, left_mm=90)), "beyond the paper"),
        (replace(sheet(label()), grid=replace(GRID, height_mm=20, pitch_y_mm=20, rows=10)), "higher labels"),
        (replace(sheet(label()), grid=replace(GRID, columns=1, rows=1)), "no room for the bars"),
    ],
)
def test_what_cannot_be_printed_is_refused_in_a_sentence(facts: object, sentence: str) -> None:
    with pytest.raises(DoesNotFit, match=sentence):
        scoop_labels(facts)  # type: ignore[arg-type]


def test_a_chart_without_calves_is_refused() -> None:
    with pytest.raises(DoesNotFit, match="no calves"):
        wall_chart(chart(counts=()))


def test_ready_cut_labels_begin_after_the_used_ones() -> None:
    document = scoop_labels(replace(sheet(label(copies=7)), grid=GRID))
    tails = [sum(isinstance(i, Text) and i.text == "25-0302A" for i in page.items) for page in document.pages]
    assert tails == [4, 3]  # six places, one used, one taken by the check bars; then five of six


def test_a_lot_sheet_numbers_the_fills_that_stand() -> None:
    cells = list(texts(lot_sheet(record())))
    of_the_struck = cells[[cell.text for cell in cells].index("(400.86)") - 5]
    below_one_another = [cell.text for cell in cells if cell.x_mm == of_the_struck.x_mm and cell.text != "No."]
    assert below_one_another[:5] == ["1", "2", "3", "–", "4"]


def test_a_lot_sheet_holds_every_fill_and_what_it_rests_on() -> None:
    facts = record()
    shown = told(lot_sheet(facts))
    for fill in facts.fills:
        assert f"{fill.mass_g:.2f}" in shown
    for words in ("struck out", "(400.86)", "0.1 oz", "error −1.00 g", "bags and fills together", "on target", "0.1.0"):
        assert words in shown, words


def test_a_file_that_cannot_be_written_is_told_and_leaves_nothing(tmp_path: Path) -> None:
    document = scoop_labels(sheet(label()))
    with pytest.raises(CannotPrint, match="is not there any more"):
        write_pdf(document, tmp_path / "nowhere" / "label.pdf")
    write_pdf(document, tmp_path / "label.pdf")
    assert [p.name for p in tmp_path.iterdir()] == ["label.pdf"]
    assert (tmp_path / "label.pdf").read_bytes().startswith(b"%PDF")


def test_a_page_as_a_picture_has_the_paper_s_size() -> None:
    image = page_image(scoop_labels(sheet(label())).pages[0], 100)
    assert (image.width(), image.height()) == (850, 1100)


def test_printed_moments_are_told() -> None:
    """As on the screen: one clock."""
    at = datetime(2026, 3, 2, 21, 58)
    assert "Mar 2, 2026, 9:58\u00a0PM" in told(lot_sheet(replace(record(), printed_at=at)))
    assert clock_text(at.time()) == "9:58\u00a0PM"


@settings(deadline=None)  # the fonts are read in the first one
@given(st.text(max_size=60), st.floats(5, 80), st.floats(1.5, 8))
def test_wrapped_text_keeps_to_its_room_and_loses_nothing(text: str, room: float, size: float) -> None:
    clean = plain(text)
    lines = wrap(clean, room, size)
    assert _marks("".join(lines)) == _marks(clean)
    assert all(width_mm(line, size) <= room or len(line) == 1 for line in lines)


def _marks(text: str) -> str:
    """All but what a broken line may lose: room, and the dot between two parts."""
    return "".join(text.replace("·", "").split())


@given(st.text(min_size=1, max_size=60), st.floats(5, 80))
def test_cut_text_keeps_to_its_room(text: str, room: float) -> None:
    clean = plain(text)
    for cut in (cut_end(clean, room, 4.0), cut_start(clean, room, 4.0)):
        assert width_mm(cut, 4.0) <= room


@given(st.text())
def test_cleaned_text_is_one_line_that_no_printer_chokes_on(text: str) -> None:
    clean = plain(text)
    clean.encode("utf-8")
    assert clean == plain(clean)
    assert not set(clean) & set("\n\r\t\u202e\u2066\x00")


@given(st.lists(st.tuples(st.floats(0, 100), st.floats(1, 9)), min_size=1, max_size=9))
def test_words_beside_lines_never_overlap(wanted: list[tuple[float, float]]) -> None:
    wanted.sort()
    heights = [height for _, height in wanted]
    middles = spread([want for want, _ in wanted], heights, 0.0, 100.0)
    for (a, b), (ha, hb) in zip(pairwise(middles), pairwise(heights), strict=True):
        assert b - a >= (ha + hb) / 2 - 1e-6
    assert middles[0] - heights[0] / 2 >= -1e-6


def test_a_block_that_is_too_long_says_so() -> None:
    fitted = fit_block(["one two three four five six seven eight nine ten " * 5], 40, 20, 5, 4)
    assert fitted.lines[-1].endswith("…")
    assert len(fitted.lines) * fitted.size_mm * 1.2 <= 20


@pytest.mark.parametrize("groups", [1, 2])
@pytest.mark.parametrize("languages", [("en",), ("es",), ("en", "es")])
def test_a_chart_for_the_cold_says_so_whole(groups: int, languages: tuple[str, ...]) -> None:
    one = chart(range(60, 70), languages=languages, cold_below_c=-5.0)
    shown = told(wall_chart(replace(one, groups=(one.groups[0],) * groups)))
    words = {"en": "For cold weather, below 23 °F", "es": "Para tiempo frío, bajo 23 °F"}
    assert all(words[language] in shown for language in languages)
    assert "cold weather" not in told(wall_chart(replace(one, cold_below_c=None)))


@pytest.mark.parametrize(("languages", "words"), [(("en",), "cold weather"), (("es",), "tiempo frío")])
def test_the_page_of_the_weeks_says_that_it_leaves_the_cold_out(languages: tuple[str, ...], words: str) -> None:
    row = WeekRow(
        from_day=1, to_day=None, begins=date(2026, 3, 2), feedings=2, day_ml=4 * QUART, day_g=20 * OUNCE,
        feeding_ml=2 * QUART, feeding_g=10 * OUNCE,
    )  # fmt: skip
    facts = chart(range(20, 22), languages=languages, weeks=(Weeks(name="Younger", rows=(row,)),))

    def of_weeks(cold_below_c: float | None) -> str:
        document = wall_chart(replace(facts, cold_below_c=cold_below_c))
        assert troubles(document) == []
        return " ".join(item.text for item in document.pages[-1].items if isinstance(item, Text))

    usual, cold = of_weeks(None), of_weeks(-5.0)
    left_out = {"en": "without what is added for", "es": "sin lo que se agrega por el"}[languages[0]]
    assert f"{left_out} {words}" in cold
    assert left_out not in usual


def test_a_row_that_nobody_can_count_says_weigh_it_where_others_are_counted() -> None:
    """In words, and with a scale where the others have their scoops: seen before it is read."""
    one = chart(range(20, 26))
    rows = (*one.groups[0].rows, replace(one.groups[0].rows[-1], calves=99, scoopfuls=()))
    mixed = wall_chart(replace(one, groups=(replace(one.groups[0], rows=rows),)))
    assert [t.text for t in texts(mixed)].count("weigh it") == 1
    bare = tuple(replace(row, scoopfuls=()) for row in one.groups[0].rows)
    by_weight = wall_chart(replace(one, groups=(replace(one.groups[0], rows=bare),)))
    assert "weigh it" not in [t.text for t in texts(by_weight)]
    assert (_windows(mixed), _windows(by_weight), _windows(wall_chart(one))) == (1, 0, 0)


def _windows(document: Document) -> int:
    """Scales, each known by the white window of its figures."""
    return sum(isinstance(item, Shape) and item.fill == WHITE for page in document.pages for item in page.items)


def test_a_lot_sheet_tells_weights_in_the_farm_s_units_first_and_as_they_were_read() -> None:
    facts = record(8)
    bare = tuple(replace(fill, typed=fill.typed.removesuffix(" oz")) for fill in facts.fills)
    told = " ".join(text.text for text in texts(lot_sheet(replace(facts, fills=bare)))).replace("\u00a0", " ")
    assert bare[0].typed == "14.0"
    assert "14.0 oz" in told
    level = facts.level
    assert level is not None
    assert f"{level.low_g / OUNCE:.2f} oz to {level.high_g / OUNCE:.2f} oz ({level.low_g:.1f} to" in told
    metric = " ".join(text.text for text in texts(lot_sheet(replace(facts, units=UnitSystem.METRIC))))
    assert f"{level.low_g:.1f} to {level.high_g:.1f} g" in metric.replace("\u00a0", " ")


def test_a_lot_sheet_has_what_was_told_of_the_lot_after_the_sign_off() -> None:
    signed = replace(record().lot, package_count=None, composition=Composition(), note="dry")
    now = replace(signed, package_count=12, composition=Composition(fibre_pct=0.15, protein_pct=20), note="damp")
    shown = told(lot_sheet(replace(record(), lot=signed, lot_now=now)))
    for words in (
        "12 bags, 50 lb each (entered after the sign-off)",
        "protein 20 %, fiber 0.15 % (entered after the sign-off)",
        "dry; corrected after the sign-off: damp",
    ):
        assert words in shown, words
    assert "after the sign-off" not in told(lot_sheet(replace(record(), lot_now=record().lot)))


def test_a_lot_sheet_measures_the_scoop_in_the_farm_s_units_first() -> None:
    shown = told(lot_sheet(record()))
    for words in ("11 lb (4.99 kg)", "0.1 oz (2.835 g)", "10.01 ± 0.15 oz (283.9 ± 4.2 g)", "15/16 in (24.5 mm)"):
        assert words in shown, words
    cup = TaperedCup(rim_diameter_mm=88.9, floor_diameter_mm=69.85, height_mm=101.6)
    shown = told(lot_sheet(record(scoop=replace(record().scoop, shape=cup))))
    assert "tapered, rim 3 1/2 in, floor 2 3/4 in, 4 in high (88.9 mm, 69.9 mm, 101.6 mm)" in shown
    spanish = told(lot_sheet(record(languages=("es",))))
    assert " pulg de alto" in spanish
    assert " in " not in spanish
    metric = told(lot_sheet(replace(record(), units=UnitSystem.METRIC)))
    assert " in high" not in metric
    assert "24.5 mm (15/16 in)" in metric


@pytest.mark.parametrize("name", ["Group 1", "Pens", "Northwest hutches, third row by the lane"])
@pytest.mark.parametrize("languages", [("en",), ("es",), ("en", "es")])
def test_what_a_calf_of_a_group_drinks_is_told_whole(name: str, languages: tuple[str, ...]) -> None:
    one = chart(range(3, 6), plan_name="All calves", languages=languages)
    (group,) = one.groups
    shown = told(wall_chart(replace(one, groups=(replace(group, name=name), replace(group, name="Older")))))
    said = Words.of(languages)
    assert said.joined(lambda t: fed_told(group, one, t), " / ") in shown
    assert said.joined(lambda t: name_told(name, t), " / ") in shown
    assert "…" not in shown


def test_a_group_that_goes_on_over_the_page_is_named_there_again() -> None:
    """81 calves stood on two pages, and the second did not say whose."""
    facts = chart(range(60, 90))
    young, old = (replace(facts.groups[0], name=name) for name in ("Under two weeks", "Two to eight weeks"))
    document = wall_chart(replace(facts, groups=(young, old)))
    assert len(document.pages) > 2
    for page in document.pages:
        shown = [item.text for item in page.items if isinstance(item, Text)]
        assert any(name in shown for name in (young.name, old.name)), shown


def test_no_dot_hangs_at_the_end_of_a_broken_line() -> None:
    told = "10.0 oz of powder · mixed in Big tub · for the cold"
    for room in range(12, 80, 3):
        lines = wrap(told, float(room), 4.0)
        assert not [line for line in lines[:-1] if line.endswith("·")]
        assert _marks("".join(lines)) == _marks(told)


@pytest.mark.parametrize("room", [(100.0, 40.0), (35.0, 60.0), (70.0, 50.0)])
def test_a_scoop_s_name_of_40_characters_stands_whole_where_its_label_has_room(room: tuple[float, float]) -> None:
    named = label(name="Medida de 1 cuarto (blanco, mango largo)")
    info = lay_info(named, sheet(named), Words.of(("en",)), *room)
    assert info is not None
    assert "(blanco, mango largo)" in " ".join(item.text for item in info.items() if isinstance(item, Text))


@pytest.mark.parametrize("languages", [("en",), ("es",), ("en", "es")])
@pytest.mark.parametrize("rows", [3, 12, 16])
def test_the_day_on_the_flag_is_as_large_as_other_small_words_or_left_out(
    rows: int, languages: tuple[str, ...]
) -> None:
    """January has another name in each language: two of them left room for 1.7 mm."""
    framed = wall_chart(chart(range(104, 104 + rows), languages=languages, printed_on=date(2026, 1, 27), today=104))
    flag = [item for item in texts(framed) if item.angle_deg == -90 and item.ink == WHITE]
    assert {item.text for item in flag} in ({"27", "Jan"}, {"27", "ene"}, set())
    assert all(item.size_mm >= 2.4 for item in flag)
    if rows == 3:
        assert flag


def test_few_scoopfuls_are_drawn_once_where_each_of_them_would_cost_pages() -> None:
    """Two groups with two ways of filling took four sheets on their side for their pictures; they are two, upright."""
    facts = two_groups(9, ("es",))
    level, line = (ScoopPart(scoop_name="Red scoop", way=way, count=3) for way in (FillWay.LEVEL, FillWay.TO_MARK))
    parts = (level, replace(line, count=2)), (replace(line, count=12),), (level, replace(line, count=1)), (level,)
    groups = tuple(
        replace(group, rows=tuple(
            replace(row, scoopfuls=parts[n % len(parts)], batches=2, many=False) for n, row in enumerate(group.rows)
        ))
        for group in facts.groups
    )  # fmt: skip
    pages = wall_chart(replace(facts, groups=groups)).pages
    assert len(pages) == 2
    assert all(page.height_mm > page.width_mm for page in pages)


def test_evening_at_the_line_is_not_told_as_striking_at_the_rim() -> None:
    """“1 level” beside “level to the line” reads as level to the line: such a feeding is several percent short."""
    for languages in (("en",), ("es",)):
        shown = told(scoop_labels(replace(sheet(several()), languages=languages)))
        assert ("struck at the rim" in shown) or ("al ras del borde" in shown)
        assert "level" not in shown.lower()
        assert ("Even it at the line" in shown) or ("Emparéjela en la línea" in shown)


def test_a_lot_sheet_tells_day_and_time_on_one_line_and_has_no_page_of_a_signature_alone() -> None:
    late = tuple(replace(fill, at=fill.at.replace(month=9, day=28, hour=22)) for fill in record(8).fills)
    for paper in Paper:
        for language in ("en", "es"):
            made = lot_sheet(replace(record(8), fills=late, paper=paper, languages=(language,)))
            lines = [text.text for text in texts(made)]
            moments = [Words.of((language,)).tongues[0].moment(fill.at) for fill in late]
            assert [line for line in lines if line in moments] == moments
            assert len(made.pages) == 2
    for fills in range(8, 40):
        last = [item.text for item in lot_sheet(record(fills)).pages[-1].items if isinstance(item, Text)]
        assert {"What these figures mean", "Signature"} <= set(last)


@pytest.mark.parametrize(
    ("typed", "mass_g", "shown"),
    [("5 kilos", 5000.0, "5 kilos"), ("5000 gramos", 5000.0, "5000 gramos"), ("11 lb", 4990.0, "11 lb (4.99 kg)")],
)
def test_a_weight_typed_in_grams_by_any_word_is_told_once(typed: str, mass_g: float, shown: str) -> None:
    scale = replace(record().scale, capacity_typed=typed, capacity_g=mass_g)
    lines = [text.text for text in texts(lot_sheet(record(scale=scale)))]
    assert shown in lines
