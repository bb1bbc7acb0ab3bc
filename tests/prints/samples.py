"""Prints of an invented farm, from the ordinary to the extreme."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import replace
from datetime import date

from calibrator.model import (
    Box,
    Cylinder,
    FillWay,
    MixingRate,
    Paper,
    RateBasis,
    TaperedCup,
    UnitSystem,
    VolumeMeans,
)
from calibrator.prints.chart import wall_chart
from calibrator.prints.chart_facts import ChartGroup, ChartRow, ScoopPart, WallChart
from calibrator.prints.label_facts import LabelForm, LabelGrid, LabelLine, LabelSheet, LineUse, ScoopLabel
from calibrator.prints.labels import scoop_labels
from calibrator.prints.page import Document

OUNCE = 28.349523125
QUART = 946.352946
RED = TaperedCup(rim_diameter_mm=98, floor_diameter_mm=84, height_mm=102)
TINY = Cylinder(diameter_mm=48, height_mm=28)
HUGE = Box(length_mm=150, width_mm=140, height_mm=192)
CONE = TaperedCup(rim_diameter_mm=60, floor_diameter_mm=90, height_mm=70)
GRID = LabelGrid(
    columns=2,
    rows=3,
    width_mm=101.6,
    height_mm=84.7,
    left_mm=4,
    top_mm=12.7,
    pitch_x_mm=106.4,
    pitch_y_mm=84.7,
    used=1,
)
NASTY = "<b>Big & “red”</b> \u202egnirts\u202c 😀 של יום scoop by the north door of the calf barn\nno. 2"
LONG_LOT = "LOT-2026-NORTH-PLANT-0000418873-LINE-4-SHIFT-B-302A"


def label(
    shape: Cylinder | TaperedCup | Box = RED, lot: str = "25-0302A", name: str = "Red scoop", **more: object
) -> ScoopLabel:
    height = shape.height_mm
    lines = (
        LabelLine(target_mass_g=10 * OUNCE, down_wall_mm=0.24 * height, use=LineUse.MAIN),
        LabelLine(target_mass_g=5 * OUNCE, down_wall_mm=0.64 * height, use=LineUse.HALF),
        LabelLine(target_mass_g=8 * OUNCE, down_wall_mm=0.4 * height),
    )
    facts: dict[str, object] = {
        "scoop_name": name,
        "shape": shape,
        "lot_number": lot,
        "lines": lines,
        "weighed_in_on": date(2026, 3, 2),
        "number": 12,
        "replaces": 9,
        "made_on": date(2026, 1, 14),
        "arrived_on": date(2026, 2, 27),
    }
    return ScoopLabel(**(facts | more))  # type: ignore[arg-type]


def sheet(
    *labels: ScoopLabel,
    languages: tuple[str, ...] = ("en",),
    paper: Paper = Paper.LETTER,
    units: UnitSystem = UnitSystem.FARM,
    form: LabelForm = LabelForm.STRIP,
) -> LabelSheet:
    return LabelSheet(labels=labels, languages=languages, paper=paper, units=units, form=form)


RATE = MixingRate(
    basis=RateBasis.ON_WATER, powder_mass_g=10 * OUNCE, volume_ml=2 * QUART, typed="10 oz on 2 qt"
)


def row(
    calves: int, today: bool = False, batches: int = 1, name: str = "Red scoop", **more: object
) -> ChartRow:
    powder = calves * 10 * OUNCE / batches
    level = int(powder // (14.2 * OUNCE))
    facts: dict[str, object] = {
        "calves": calves,
        "water_ml": calves * 2 * QUART / batches,
        "powder_g": powder,
        "batches": batches,
        "today": today,
        "scoopfuls": (
            ScoopPart(scoop_name=name, way=FillWay.LEVEL, count=level),
            ScoopPart(scoop_name=name, way=FillWay.TO_MARK, count=1),
        ),
    }
    return ChartRow(**(facts | more))  # type: ignore[arg-type]


def chart(
    counts: Iterable[int] = range(104, 116), today: int = 109, batches: int = 1, **more: object
) -> WallChart:
    group = ChartGroup(
        name="All calves",
        rate=RATE,
        volume_ml=2 * QUART,
        volume_means=VolumeMeans.WATER,
        rows=tuple(row(n, n == today, batches) for n in counts),
        solids_share=0.1304,
    )
    facts: dict[str, object] = {
        "farm_name": "Windy Hollow Dairy",
        "plan_name": "Morning feeding",
        "lot_number": "25-0302A",
        "weighed_in_on": date(2026, 3, 2),
        "number": 27,
        "replaces": 24,
        "by": "MR",
        "groups": (group,),
        "water_temperature_c": 43.33,
        "printed_on": date(2026, 3, 3),
        "product": "20-20 replacer",
    }
    return WallChart(**(facts | more))  # type: ignore[arg-type]


def documents() -> Iterator[tuple[str, Document]]:
    yield "strip_en", scoop_labels(sheet(label(copies=2), label(TINY), label(HUGE)))
    yield (
        "strip_long",
        scoop_labels(sheet(label(lot=LONG_LOT, name=NASTY), label(TINY, lot=LONG_LOT, name=NASTY))),
    )
    yield "wrap_taper", scoop_labels(sheet(label(), form=LabelForm.WRAP))
    yield (
        "wrap_small",
        scoop_labels(sheet(label(TINY), label(CONE), form=LabelForm.WRAP, languages=("en", "es"))),
    )
    yield (
        "wrap_huge",
        scoop_labels(sheet(label(HUGE), form=LabelForm.WRAP, languages=("es",), paper=Paper.A4)),
    )
    yield "strip_both", scoop_labels(sheet(label(copies=2), label(TINY), languages=("es", "en")))
    yield "grid", scoop_labels(replace(sheet(label(copies=7)), grid=GRID))
    yield "chart_en", wall_chart(chart())
    yield "chart_both", wall_chart(chart(languages=("en", "es")))
    yield "chart_few", wall_chart(chart(counts=(109, 111, 120)))
    yield "chart_many", wall_chart(chart(counts=range(90, 131)))
    yield (
        "chart_long",
        wall_chart(
            chart(
                lot_number=LONG_LOT,
                plan_name=NASTY,
                farm_name=NASTY,
                counts=range(300, 312),
                batches=2,
                medicated=True,
            )
        ),
    )
