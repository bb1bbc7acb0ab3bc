"""Prints of an invented farm, from the ordinary to the extreme."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import replace
from datetime import UTC, date, datetime

from calibrator.model import (
    Box,
    Composition,
    Cylinder,
    Farm,
    Fill,
    FillWay,
    Lot,
    Mark,
    MixingRate,
    Paper,
    RateBasis,
    Scale,
    Scoop,
    SignOff,
    SpotFill,
    TaperedCup,
    UnitSystem,
    VolumeMeans,
    WeighIn,
)
from calibrator.prints.chart import wall_chart
from calibrator.prints.chart_facts import ChartGroup, ChartRow, ScoopPart, WallChart
from calibrator.prints.label_facts import LabelForm, LabelGrid, LabelLine, LabelSheet, LineCount, LineUse, ScoopLabel
from calibrator.prints.labels import scoop_labels
from calibrator.prints.page import Document
from calibrator.prints.record import lot_sheet
from calibrator.prints.record_facts import LotSheet
from calibrator.science.weighing import ScaleFacts, Weighed, level_result

OUNCE = 28.349523125
QUART = 946.352946
RED = TaperedCup(rim_diameter_mm=98, floor_diameter_mm=84, height_mm=102)
TINY = Cylinder(diameter_mm=48, height_mm=28)
HUGE = Box(length_mm=150, width_mm=140, height_mm=192)
CONE = TaperedCup(rim_diameter_mm=60, floor_diameter_mm=90, height_mm=70)
GRID = LabelGrid(
    columns=2,
    rows=3,
    width_mm=96.0,
    height_mm=84.7,
    left_mm=6,
    top_mm=12.7,
    pitch_x_mm=102.0,
    pitch_y_mm=84.7,
    used=1,
)
NASTY = "<b>Big & “red”</b> \u202egnirts\u202c 😀 של יום scoop by the north door of the calf barn\nno. 2"
LOT_OF_40 = "NORTH-PLANT-2026-000041887-LINE-4-B-302A"
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


def several(shape: Cylinder | TaperedCup | Box = RED, **more: object) -> ScoopLabel:
    """Full scoops before the line, with the main one and with another."""
    lines = (
        LabelLine(
            target_mass_g=15 * OUNCE,
            down_wall_mm=0.4 * shape.height_mm,
            use=LineUse.MAIN,
            full_scoops=1,
            mass_g=5 * OUNCE,
        ),
        LabelLine(
            target_mass_g=12.6 * OUNCE,
            down_wall_mm=0.75 * shape.height_mm,
            full_scoops=1,
            mass_g=2.6 * OUNCE,
            reckoned=True,
        ),
    )
    return label(shape, lines=lines, **more)


def counted(shape: Cylinder | TaperedCup | Box = RED, **more: object) -> ScoopLabel:
    """A feeding of a scoopful to the main line and one to its half, and one of two to the main line."""
    main, half, _ = label(shape).lines
    counts = (
        LineCount(target_mass_g=15 * OUNCE, to_main=1, to_half=1),
        LineCount(target_mass_g=20 * OUNCE, to_main=2, to_half=0),
    )
    return label(shape, lines=(main, half), counts=counts, **more)


def struck_level(shape: Cylinder | TaperedCup | Box = RED, full: int = 1, **more: object) -> ScoopLabel:
    """No line at all: level scoopfuls are the feeding."""
    line = LabelLine(target_mass_g=(full + 1) * 10.6 * OUNCE, down_wall_mm=0.0, use=LineUse.MAIN, full_scoops=full)
    return label(shape, lines=(line,), **more)


def sheet(
    *labels: ScoopLabel,
    languages: tuple[str, ...] = ("en",),
    paper: Paper = Paper.LETTER,
    units: UnitSystem = UnitSystem.FARM,
    form: LabelForm = LabelForm.STRIP,
) -> LabelSheet:
    return LabelSheet(labels=labels, languages=languages, paper=paper, units=units, form=form)


RATE = MixingRate(basis=RateBasis.ON_WATER, powder_mass_g=10 * OUNCE, volume_ml=2 * QUART, typed="10 oz on 2 qt")


def row(calves: int, today: bool = False, batches: int = 1, name: str = "Red scoop", **more: object) -> ChartRow:
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


def chart(counts: Iterable[int] = range(104, 116), today: int = 109, batches: int = 1, **more: object) -> WallChart:
    group = ChartGroup(
        name="All calves",
        rate=RATE,
        volume_ml=2 * QUART,
        volume_means=VolumeMeans.WATER,
        rows=tuple(row(n, n == today, batches) for n in counts),
        solids_share=0.1304,
        fed_ml=2.21 * QUART,
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


def to_line(count: float) -> ScoopPart:
    return ScoopPart(scoop_name="Red scoop", way=FillWay.TO_MARK, count=count)


def usual() -> WallChart:
    """As a plan suggests it for 24 calves: each to the line, more than can be counted better weighed."""
    facts = chart(range(20, 29), today=24)
    group = facts.groups[0]
    rows = tuple(
        replace(each, mix_ml=each.calves * 2.21 * QUART, many=each.calves > 24, scoopfuls=(to_line(each.calves),))
        for each in group.rows
    )
    return replace(facts, groups=(replace(group, rows=rows),))


def two_groups(rows: int = 9, languages: tuple[str, ...] = ("en",)) -> WallChart:
    """Younger calves that get what the line is for, and older ones with half as much again; many in several batches."""
    facts = chart(range(24 - rows // 2, 24 + (rows + 1) // 2), today=24, languages=languages)
    made = replace(RATE, basis=RateBasis.MADE_UP)
    young = replace(
        facts.groups[0], name="Younger", volume_means=VolumeMeans.FINISHED_MIX, fed_ml=2 * QUART, rate=made,
        each_g=10 * OUNCE, each_scoopfuls=(to_line(1),),
        rows=tuple(replace(each, scoopfuls=(to_line(each.calves),)) for each in facts.groups[0].rows),
    )  # fmt: skip
    old_rows = (
        row(
            n, n == 60, 2, powder_g=n * 7.5 * OUNCE, many=True, mix_ml=n * 1.5 * QUART, portions=3,
            portion_g=n * 2.5 * OUNCE, scoopfuls=(to_line(round(0.75 * n)),),
        )
        for n in range(60 - rows // 2, 60 + (rows + 1) // 2)
    )  # fmt: skip
    old = replace(
        young, name="Older", volume_ml=3 * QUART, fed_ml=3 * QUART, each_g=15 * OUNCE, each_scoopfuls=(to_line(1.5),),
        rows=tuple(old_rows),
    )  # fmt: skip
    return replace(facts, groups=(young, old), vessel_name="Big tub", scale_most_g=11 * 16 * OUNCE)


def level_and_line(size: int, languages: tuple[str, ...] = ("es",)) -> WallChart:
    """Rows that most count level, and some with a scoopful or a half to one of the label's lines besides."""
    facts = chart(range(3, 3 + size), today=4, languages=languages)
    level = ScoopPart(scoop_name="Red scoop", way=FillWay.LEVEL, count=3)
    line = replace(to_line(4), otherwise=True, line_g=10 * OUNCE)
    told = ((level,), (replace(level, count=1), line), (level, replace(line, count=0.5)), (replace(line, count=9.5),))
    rows = tuple(
        replace(each, scoopfuls=told[number % 4], mix_ml=each.calves * 3 * QUART)
        for number, each in enumerate(facts.groups[0].rows)
    )
    made = replace(RATE, basis=RateBasis.MADE_UP)
    return replace(facts, groups=(replace(facts.groups[0], rows=rows, rate=made),), resolution_g=0.1 * OUNCE)


def weighed_below(facts: WallChart) -> ChartGroup:
    """The same rows, the last of them too many scoopfuls to count."""
    group = facts.groups[0]
    return replace(group, rows=(*group.rows[:-1], replace(group.rows[-1], scoopfuls=())))


def at(minute: int) -> datetime:
    return datetime(2026, 3, 2, 9, minute, tzinfo=UTC)


def record(fills: int = 8, name: str = "Red scoop", lot_number: str = "25-0302A", **more: object) -> LotSheet:
    """A weigh-in with `fills` level fills from four bags, one struck out, and three to the line."""
    masses = [(10.0 + 0.1 * ((7 * i) % 5)) * OUNCE * 1.4 for i in range(fills)]
    level_fills = tuple(
        Fill(
            id=f"f{i}", weigh_in_id="w", way=FillWay.LEVEL, bag=1 + i // 2 % 4, mass_g=mass, by="MR", at=at(i % 60),
            typed=f"{mass / OUNCE:.1f} oz", struck_reason="spilled some on the way" if i == 3 else None,
        )
        for i, mass in enumerate(masses)
    )  # fmt: skip
    to_line = tuple(
        Fill(
            id=f"m{i}", weigh_in_id="w", way=FillWay.TO_MARK, bag=1 + i, mass_g=10 * OUNCE + i, by="MR", at=at(40 + i),
            typed="10.0 oz", line_mm=24.5,
        )
        for i in range(3)
    )  # fmt: skip
    counted = [Weighed(f.bag, f.mass_g) for f in level_fills if f.counts]
    level = level_result(counted, ScaleFacts(resolution_g=0.1 * OUNCE), history=None, tolerance_g=0.02 * 14 * OUNCE)
    density = level.mean_g / 664
    signed = SignOff(
        id="s", farm_id="farm", weigh_in_id="w", lot_id="lot", scoop_id="scoop", scale_id="scale", by="MR", at=at(50),
        bags=level.bags, fills=level.fills, level_mean_g=level.mean_g, level_u_g=level.u_g, level_low_g=level.low_g,
        level_high_g=level.high_g, degrees_of_freedom=level.degrees_of_freedom, density_g_per_ml=density,
        density_u_g_per_ml=0.0065, density_low_g_per_ml=density - 0.02, density_high_g_per_ml=density + 0.02,
        bag_sd_share=0.011, fill_sd_share=0.013, settling_factor=1.031, settling_u=0.006, verdict="on_target",
        old_line_verdict="move", scoop_revision="a1b2c3d4e5", scale_revision="0f1e2d3c4b", lot_revision="99aa88bb",
        program_version="0.1.0",
    )  # fmt: skip
    weigh_in = WeighIn(
        id="w", farm_id="farm", lot_id="lot", started_at=at(0), by="MR",
        target_mass_g=10 * OUNCE, target_typed="10 oz",
        room_humidity_pct=61, room_temperature_c=14, scale_zeroed=True,
        check_nominal_g=500, check_nominal_typed="500 g",
        check_reading_g=499, check_reading_typed="499 g", old_line_mm=27.0, old_line_typed="27 mm", drawn_line_mm=24.5,
    )  # fmt: skip
    facts: dict[str, object] = {
        "farm": Farm(id="farm", name="Windy Hollow Dairy"),
        "lot": Lot(
            id="lot", farm_id="farm", lot_number=lot_number, product="20-20, all milk",
            made_on=date(2026, 1, 14),
            arrived_on=date(2026, 2, 27), package_count=40, package_mass_g=50 * 16 * OUNCE, package_mass_typed="50 lb",
            composition=Composition(protein_pct=20, fat_pct=20, fibre_pct=0.15, ash_pct=8), note="Dry and free flowing",
        ),
        "scoop": Scoop(
            id="scoop", farm_id="farm", name=name, shape=RED, volume_ml=664, volume_u_ml=2.4, volume_from_water=True
        ),
        "scale": Scale(
            id="scale", farm_id="farm", name="Kitchen scale", resolution_g=0.1 * OUNCE, resolution_typed="0.1 oz",
            capacity_g=4990, capacity_typed="11 lb",
        ),
        "weigh_in": weigh_in,
        "sign_off": signed,
        "fills": level_fills + to_line,
        "marks": tuple(
            Mark(
                id=f"mark{i}", farm_id="farm", sign_off_id="s", lot_id="lot", scoop_id="scoop",
                target_mass_g=ounces * OUNCE,
                full_scoops=0, height_mm=102 - down, down_wall_mm=down, mass_g=ounces * OUNCE + 0.4, mass_u_g=2.1,
            )
            for i, (ounces, down) in enumerate(((10, 24.5), (5, 65.3), (8, 40.8)))
        ),
        "spot_fills": (
            SpotFill(
                id="sp", farm_id="farm", lot_id="lot", weigh_in_id="w", way=FillWay.TO_MARK, mass_g=285.1,
                typed="10.05 oz", by="JL", at=at(59), line_mm=24.5,
            ),
        ),
        "level": level,
        "density_budget": level.budget,
        "number": 31,
        "printed_at": at(58),
    }  # fmt: skip
    return LotSheet(**(facts | more))  # type: ignore[arg-type]


def documents() -> Iterator[tuple[str, Document]]:
    yield "strip_en", scoop_labels(sheet(label(copies=2), label(TINY), label(HUGE)))
    yield (
        "strip_long",
        scoop_labels(sheet(label(lot=LONG_LOT, name=NASTY), label(TINY, lot=LONG_LOT, name=NASTY))),
    )
    yield "strip_40", scoop_labels(sheet(label(lot=LOT_OF_40), label(TINY, lot="W" * 40), label(CONE, lot="W" * 40)))
    yield "strip_several", scoop_labels(sheet(several(), counted(), struck_level()))
    yield "strip_several_both", scoop_labels(sheet(several(), counted(), struck_level(), languages=("es", "en")))
    yield "wrap_several", scoop_labels(sheet(several(), counted(), struck_level(), form=LabelForm.WRAP))
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
    yield "lot_sheet_en", lot_sheet(record())
    yield "lot_sheet_both", lot_sheet(record(30, NASTY, LONG_LOT, languages=("en", "es"), paper=Paper.A4))
    yield "chart_en", wall_chart(chart())
    yield "chart_both", wall_chart(chart(languages=("en", "es")))
    yield "chart_few", wall_chart(chart(counts=(109, 111, 120)))
    yield "chart_usual", wall_chart(usual())
    yield "chart_groups", wall_chart(two_groups())
    yield "chart_level_and_line", wall_chart(level_and_line(7))
    yield (
        "chart_batches",
        wall_chart(
            chart(
                (40, 44, 48, 52), 48, 2, languages=("en", "es"), groups=(weighed_below(chart((40, 44, 48, 52), 48, 2)),)
            )
        ),
    )
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
