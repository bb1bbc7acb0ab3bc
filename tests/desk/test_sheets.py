"""From the records to a plan's rows, without a window."""

from __future__ import annotations

from dataclasses import replace
from datetime import date

import pytest
from herd import OZ_G, QT_ML, Herd, group
from pytestqt.qtbot import QtBot

from calibrator.desk.pages.today_card import TodayRow
from calibrator.desk.paper_facts import Options, wall_chart_facts
from calibrator.desk.rate_words import group_text
from calibrator.desk.sheets import (
    changes,
    plan_sheet,
    powder_before,
    powder_in_use,
    read_counts,
    scoop_ways,
    water_step_ml,
)
from calibrator.desk.standing import standing
from calibrator.desk.table_words import error_words, parts_words, scoops_text, telling
from calibrator.model import (
    Box,
    FillWay,
    Paper,
    Plan,
    PrintKind,
    RateBasis,
    Scoopfuls,
    ScoopRule,
    UnitSystem,
    Vessel,
    VolumeMeans,
)
from calibrator.prints.chart_scoopfuls import Style, words_below
from calibrator.prints.chart_words import group_told, row_cells
from calibrator.prints.languages import Tongue, Words
from calibrator.records import Records
from calibrator.science.scoopfuls import spread_95_g
from calibrator.science.scoops import MOST_COUNTABLE

TEN_OZ_LEVEL = 10 * OZ_G / 665.9


@pytest.fixture
def herd(records: Records) -> Herd:
    return Herd(records)


def test_a_lot_offers_each_scoop_level_and_to_its_line(herd: Herd) -> None:
    signed = herd.sign("25-1103C", 1.2 * TEN_OZ_LEVEL)
    blue = herd.scoop("Blue scoop", Box(length_mm=90, width_mm=80, height_mm=92))
    herd.sign("", 0.8 * TEN_OZ_LEVEL, blue, herd.lot_of(signed))
    ways = powder_in_use(herd.records, standing(herd.records, herd.farm)).ways
    told = [(way.name, way.way, round(way.mass_g / OZ_G, 6)) for way in ways]
    assert told == [
        ("Red scoop", FillWay.LEVEL, 12.0),
        ("Red scoop", FillWay.TO_MARK, 10.0),
        ("Blue scoop", FillWay.LEVEL, 8.0),
        ("Blue scoop", FillWay.TO_MARK, 10.0),
    ]


def test_a_weighing_anew_takes_the_place_of_the_old_one(herd: Herd) -> None:
    signed = herd.sign("25-1103C", TEN_OZ_LEVEL)
    herd.sign("", 1.1 * TEN_OZ_LEVEL, lot=herd.lot_of(signed))
    now = standing(herd.records, herd.farm)
    here, before = powder_in_use(herd.records, now), powder_before(herd.records, now)
    assert before is not None
    assert [round(w.mass_g / OZ_G, 6) for w in here.ways] == [11.0, 10.0]
    assert [round(w.mass_g / OZ_G, 6) for w in before.ways] == [10.0, 10.0]


def test_a_scoop_put_away_is_not_counted_with(herd: Herd) -> None:
    signed = herd.sign("25-1103C", TEN_OZ_LEVEL)
    herd.records.keep(replace(herd.red, retired_on=signed.at.date()))
    assert powder_in_use(herd.records, standing(herd.records, herd.farm)).ways == ()


def test_without_a_lot_there_is_powder_by_its_usual_label_and_no_scoop(herd: Herd) -> None:
    here = powder_in_use(herd.records, standing(herd.records, herd.farm))
    assert (here.lot, here.ways) == (None, ())
    sheet = plan_sheet(herd.farm, herd.plan(), None, here)
    line = sheet.groups[0].today_line
    assert line is not None
    assert line.batch.mix.powder_g == pytest.approx(1090 * OZ_G)
    assert line.scoops is None


def test_every_row_keeps_the_ratio(herd: Herd) -> None:
    """10 oz of powder for every 2 qt of water, whatever the count (common practice, no source)."""
    herd.sign("25-1103C", TEN_OZ_LEVEL)
    here = powder_in_use(herd.records, standing(herd.records, herd.farm))
    (sheet,) = plan_sheet(herd.farm, herd.plan(count_from=1, count_to=60), None, here).groups
    for number in range(len(sheet)):
        mix = sheet.line(number).batch.mix
        assert mix.powder_g / OZ_G == pytest.approx(5 * mix.water_ml / QT_ML, rel=1e-3)


def test_changes_tell_what_each_group_took_before(herd: Herd) -> None:
    herd.sign("25-1103C", TEN_OZ_LEVEL)
    herd.sign("25-1204A", 2 * TEN_OZ_LEVEL)
    plan: Plan = herd.plan("Morning milk", group(10, "Young"), group(0, "Sold"), group(4, "Old"))
    now = standing(herd.records, herd.farm)
    before = powder_before(herd.records, now)
    assert before is not None
    vessels: dict[str, Vessel] = {}
    found = list(changes(herd.farm, [plan], vessels, before, powder_in_use(herd.records, now), date(2026, 3, 2)))
    assert [change.group.name for change in found] == ["Young", "Old"]
    counts = [(c.before.scoops, c.now.scoops) for c in found]
    assert [(a.scoopfuls, b.scoopfuls) for a, b in counts if a and b] == [(10, 10), (4, 4)]
    assert all(change.to_line and not change.differs for change in found)


@pytest.mark.parametrize(
    ("text", "counts"),
    [
        ("109, 111, 120", (109, 111, 120)),
        ("120 109;111  109", (109, 111, 120)),
        ("", ()),
        ("0, 5", (5,)),
        ("109.5", None),
        ("-3", None),
        ("one hundred", None),
        ("1234567", None),
        ("٣", None),
    ],
)
def test_counts_are_read_or_refused(text: str, counts: tuple[int, ...] | None) -> None:
    assert read_counts(text) == counts


def test_a_step_larger_than_the_water_is_left_out(herd: Herd) -> None:
    assert water_step_ml(herd.farm, 10 * QT_ML) == pytest.approx(0.25 * QT_ML)
    assert water_step_ml(herd.farm, 0.1 * QT_ML) == 0.0
    metric = replace(herd.farm, units=UnitSystem.METRIC)
    assert water_step_ml(metric, 5000.0) == pytest.approx(100.0)


def test_rows_are_taken_over_while_only_a_count_is_typed(herd: Herd) -> None:
    herd.sign("25-1103C", TEN_OZ_LEVEL)
    here = powder_in_use(herd.records, standing(herd.records, herd.farm))
    plan = herd.plan("Milk", group(109, "Young"), group(40, "Old"))
    before = plan_sheet(herd.farm, plan, None, here)
    row = before.groups[0].line(3)
    typed = replace(plan, groups=(replace(plan.groups[0], calves=1), plan.groups[1]))
    after = plan_sheet(herd.farm, typed, None, here, before)
    assert after.kin_of(before)
    assert after.groups[0].line(after.groups[0].table.calves.tolist().index(row.calves)) is row
    assert [sheet.today_line.calves for sheet in after.groups if sheet.today_line] == [1, 40]


@pytest.mark.parametrize(
    "how",
    [
        {"water_temperature_c": 40.0},
        {"allowance_share": 0.1},
        {"groups": (group(109, means=VolumeMeans.FINISHED_MIX),)},
    ],
)
def test_nothing_is_taken_over_from_another_recipe(herd: Herd, how: dict[str, object]) -> None:
    here = powder_in_use(herd.records, standing(herd.records, herd.farm))
    plan = herd.plan()
    before = plan_sheet(herd.farm, plan, None, here)
    after = plan_sheet(herd.farm, replace(plan, **how), None, here, before)  # type: ignore[arg-type]
    fresh = plan_sheet(herd.farm, replace(plan, **how), None, here)  # type: ignore[arg-type]
    assert before.groups[0].line(4) != fresh.groups[0].line(4)
    assert after.groups[0].line(4) == fresh.groups[0].line(4)
    assert not after.kin_of(before)


def test_another_lot_makes_every_row_anew(herd: Herd) -> None:
    """At 17 oz a calf, no number of lines of 10 oz comes out: four take 68 oz, seven of 9.7 oz level."""
    herd.sign("25-1103C", 0.97 * TEN_OZ_LEVEL)
    here = powder_in_use(herd.records, standing(herd.records, herd.farm))
    seventeen = replace(group(0).rate, powder_mass_g=17 * OZ_G)
    plan = herd.plan("Milk", group(0, rate=seventeen), count_from=4, count_to=9)
    before = plan_sheet(herd.farm, plan, None, here)
    assert [part[1] for part in before.groups[0].line(0).scoops.parts] == [7]  # type: ignore[union-attr]
    herd.sign("25-1204A", 1.7 * TEN_OZ_LEVEL)
    here = powder_in_use(herd.records, standing(herd.records, herd.farm))
    after = plan_sheet(herd.farm, plan, None, here, before)
    assert [part[1] for part in after.groups[0].line(0).scoops.parts] == [4]  # type: ignore[union-attr]


def test_water_and_mix_stand_as_high_as_a_straight_tank_says(herd: Herd) -> None:
    """A box of 100 × 80 cm: 8 L stand 1 cm high."""
    tank = Vessel(
        id="t", farm_id=herd.farm.id, name="Tank", rim_volume_ml=400_000, usable_share=0.9,
        shape=Box(length_mm=1000, width_mm=800, height_mm=500),
    )  # fmt: skip
    here = powder_in_use(herd.records, standing(herd.records, herd.farm))
    (sheet,) = plan_sheet(herd.farm, herd.plan(), tank, here).groups
    line = sheet.today_line
    assert line is not None
    assert line.levels is not None
    assert line.levels.water_mm == pytest.approx(line.batch.mix.water_ml / 800)
    assert line.levels.mix_mm == pytest.approx(line.batch.mix.volume_ml / 800)
    assert line.levels.holds


def test_a_vessel_of_unknown_shape_has_no_levels(herd: Herd) -> None:
    here = powder_in_use(herd.records, standing(herd.records, herd.farm))
    line = plan_sheet(herd.farm, herd.plan(), herd.vessel(), here).groups[0].line(0)
    assert line.levels is not None
    assert (line.levels.water_mm, line.levels.mix_mm, line.levels.holds) == (None, None, True)


def test_a_batch_that_the_step_of_water_pushes_over_the_rim_is_said_to_run_over(herd: Herd) -> None:
    """2.7 qt of water are drawn as 3 qt: with 13.5 oz of powder more than a pail of 3.2 qt holds."""
    pail = Vessel(id="p", farm_id=herd.farm.id, name="Pail", rim_volume_ml=3.2 * QT_ML, usable_share=1.0)
    here = powder_in_use(herd.records, standing(herd.records, herd.farm))
    plan = herd.plan("Milk", replace(group(1), volume_ml=2.7 * QT_ML))
    holds = {}
    for step in (0.1, 1.0):
        line = plan_sheet(replace(herd.farm, water_step_qt=step), plan, pail, here).groups[0].today_line
        assert line is not None
        assert line.levels is not None
        holds[step] = line.levels.holds
    assert holds == {0.1: True, 1.0: False}


def test_a_chart_keeps_to_the_line_where_many_are_better_weighed(herd: Herd) -> None:
    """25 calves are 25 to the line, with a word that weighing is better; no row changes the manner."""
    herd.scale = herd.records.keep(replace(herd.scale, capacity_g=50_000, capacity_typed="50 kg"))  # all at once
    signed = herd.sign("25-1103C", 1.04 * TEN_OZ_LEVEL)
    here = powder_in_use(herd.records, standing(herd.records, herd.farm))
    plan = herd.plan(count_from=20, count_to=30)
    sheet = plan_sheet(herd.farm, plan, None, here)
    printed = herd.print(PrintKind.WALL_CHART, signed, plan_id=plan.id)
    facts = wall_chart_facts(herd.farm, sheet, signed, printed, signed.at.date(), Options(Paper.LETTER, ("en",)))
    for row in facts.groups[0].rows[:11]:
        assert [(part.way, part.count) for part in row.scoopfuls] == [(FillWay.TO_MARK, row.calves)]
        cells = row_cells(row, RateBasis.ON_WATER, facts, Words.of(("en",)), several_scoops=False)
        assert ("better weighed" in cells.powder_notes) == row.many == (row.calves > 24)
    lines = [sheet.groups[0].line(number) for number in range(11)]
    told = {line.calves: scoops_text(line, telling(sheet.groups[0])) for line in lines}
    assert (told[24], told[25]) == ("24 to the line", "weigh it, or 25 to the line")


def test_today_tells_how_far_off_many_scoopfuls_are_beside_the_advice_to_weigh(herd: Herd, qtbot: QtBot) -> None:
    herd.scale = herd.records.keep(replace(herd.scale, capacity_g=50_000, capacity_typed="50 kg"))  # all at once
    herd.sign("25-1103C", 1.04 * TEN_OZ_LEVEL)
    plan = herd.plan("Milk", group(25), counts=(), count_from=20, count_to=30)
    here = powder_in_use(herd.records, standing(herd.records, herd.farm))
    sheet = plan_sheet(herd.farm, plan, None, here).groups[0]
    row = TodayRow(0, plan.groups[0], True)
    qtbot.addWidget(row)
    row.tell(sheet)
    assert sheet.today_line is not None
    off = error_words(sheet.today_line, telling(sheet))
    assert "0.05 %" in off
    assert row.scoops.value.text() == "weigh it, or 25 to the line"
    assert row.scoops.note.text() == f"{off}. Many to count: weighing is surer."


def test_where_water_is_told_a_chart_says_how_much_mix_each_calf_is_to_drink(herd: Herd) -> None:
    """10 oz take 0.2 qt of room: who poured 2 qt of the mix would leave a tenth of the powder in the vessel.

    283.5 g at about 0.70 mL/g (apparent density in solution, Walstra et al.), the allowance not counted.
    """
    signed = herd.sign("25-1103C", TEN_OZ_LEVEL)
    here = powder_in_use(herd.records, standing(herd.records, herd.farm))
    plan = replace(herd.plan("Milk", group(9)), allowance_share=0.05)
    sheet = plan_sheet(herd.farm, plan, None, here)
    printed = herd.print(PrintKind.WALL_CHART, signed, plan_id=plan.id)
    facts = wall_chart_facts(herd.farm, sheet, signed, printed, signed.at.date(), Options(Paper.LETTER, ("en",)))
    assert facts.groups[0].fed_ml == pytest.approx(2 * QT_ML + 10 * OZ_G * 0.70, rel=0.005)
    assert "each feeding: 2.21 qt of mix a calf · 10.0 oz of powder on top of every 2 qt of water" in group_told(
        facts.groups[0], facts, Tongue("en")
    )
    shown = group_text(plan.groups[0], sheet.groups[0].per_calf, herd.farm.units)
    assert shown == "2 qt of water for each calf, feed each 2.21 qt of mix"


def test_a_row_filled_otherwise_than_the_chart_says_so_in_capitals(herd: Herd) -> None:
    """13.2 oz a calf, 10 oz to the line and 11 level: three calves go to the line, five only level."""
    signed = herd.sign("25-1103C", 1.1 * TEN_OZ_LEVEL)
    here = powder_in_use(herd.records, standing(herd.records, herd.farm))
    thirteen = replace(group(3), rate=replace(group(3).rate, powder_mass_g=13.2 * OZ_G))
    plan = herd.plan("Milk", thirteen, count_from=3, count_to=5, count_step=2)
    sheet = plan_sheet(replace(herd.farm, tolerance_share=0.012), plan, None, here)
    kept, odd = (sheet.groups[0].line(number) for number in (0, 1))
    to = telling(sheet.groups[0])
    assert (scoops_text(kept, to), scoops_text(odd, to)) == ("4 to the line", "6 LEVEL")
    printed = herd.print(PrintKind.WALL_CHART, signed, plan_id=plan.id)
    facts = wall_chart_facts(herd.farm, sheet, signed, printed, signed.at.date(), Options(Paper.LETTER, ("en", "es")))
    rows = [
        row_cells(row, RateBasis.ON_WATER, facts, Words.of(("en", "es")), several_scoops=False)
        for row in facts.groups[0].rows[:2]
    ]
    assert [row.parts[0].ways for row in rows] == [("to the line", "hasta la línea"), ("LEVEL", "AL RAS")]
    bare = Style(9.0, told=False)
    assert [words_below(row.parts[0], bare) for row in rows] == [[], ["LEVEL / AL", "RAS"]]


def test_a_row_that_no_whole_count_fits_ends_in_half_a_scoopful_and_keeps_the_charts_way(herd: Herd) -> None:
    """Eleven such calves are 14 1/2 to the line: "13 LEVEL" between them was read as to the line, 10 % too little."""
    herd.sign("25-1103C", 1.1 * TEN_OZ_LEVEL)
    here = powder_in_use(herd.records, standing(herd.records, herd.farm))
    thirteen = replace(group(10), rate=replace(group(10).rate, powder_mass_g=13.2 * OZ_G))
    plan = herd.plan("Milk", thirteen, count_from=10, count_to=11)
    made = plan_sheet(herd.farm, plan, None, here).groups[0]
    told = [scoops_text(made.line(number), telling(made)) for number in (0, 1)]
    assert told == ["13 to the line", "14 1/2 to the line"]
    assert made.parts == (0.5,)
    assert "1/2 to the line" in parts_words(made)
    whole = plan_sheet(herd.farm, replace(plan, count_to=10, groups=(thirteen,)), None, here).groups[0]
    assert (whole.parts, parts_words(whole)) == ((), "")


def test_half_a_scoopful_of_each_calf_is_counted_though_the_plan_allows_no_part_fills(herd: Herd) -> None:
    """One and a half of the line's weight a calf, as its label tells: no row mixes in level scoopfuls."""
    herd.sign("25-1103C", 1.1 * TEN_OZ_LEVEL)
    here = powder_in_use(herd.records, standing(herd.records, herd.farm))
    fifteen = replace(group(10), rate=replace(group(10).rate, powder_mass_g=15 * OZ_G))
    for counted, told in ((ScoopRule.FEWEST, "16 1/2 to the line"), (ScoopRule.WEIGH, "")):
        plan = herd.plan("Milk", fifteen, count_from=10, count_to=11, scoopfuls=Scoopfuls(rule=counted))
        one = plan_sheet(herd.farm, plan, None, here).groups[0]
        assert scoops_text(one.line(1), telling(one)).endswith(told)
        assert "LEVEL" not in scoops_text(one.line(0), telling(one))


def test_a_group_filled_otherwise_than_the_chart_says_so_in_capitals(herd: Herd) -> None:
    """Young calves get a level scoopful, the others one to the line: both hang on one sheet."""
    signed = herd.sign("25-1103C", 1.1 * TEN_OZ_LEVEL)
    here = powder_in_use(herd.records, standing(herd.records, herd.farm))
    young = replace(group(4, "Young"), rate=replace(group(4).rate, powder_mass_g=11 * OZ_G))
    plan = herd.plan("Milk", group(10, "Old"), young)
    sheet = plan_sheet(herd.farm, plan, None, here)
    assert [way.way for each in sheet.groups for way in each.manner] == [FillWay.TO_MARK, FillWay.LEVEL]
    printed = herd.print(PrintKind.WALL_CHART, signed, plan_id=plan.id)
    facts = wall_chart_facts(herd.farm, sheet, signed, printed, signed.at.date(), Options(Paper.LETTER, ("en",)))
    kept, other = facts.groups
    assert not any(part.otherwise for row in kept.rows for part in row.scoopfuls)
    assert all(part.otherwise for row in other.rows for part in row.scoopfuls)
    assert "1 LEVEL" in group_told(other, facts, Words.of(("en",)).tongues[0])


def test_a_chart_says_weigh_it_where_no_one_can_count(herd: Herd) -> None:
    signed = herd.sign("25-1103C", TEN_OZ_LEVEL)
    here = powder_in_use(herd.records, standing(herd.records, herd.farm))
    here = replace(here, ways=tuple(way for way in here.ways if way.way is FillWay.LEVEL))
    plan = herd.plan(count_from=20, count_to=30)
    sheet = plan_sheet(herd.farm, plan, None, here)
    assert MOST_COUNTABLE == 24
    printed = herd.print(PrintKind.WALL_CHART, signed, plan_id=plan.id)
    facts = wall_chart_facts(herd.farm, sheet, signed, printed, signed.at.date(), Options(Paper.LETTER, ("en",)))
    told = {row.calves: bool(row.scoopfuls) for row in facts.groups[0].rows}
    assert told == {**{calves: calves <= 24 for calves in range(20, 31)}, 109: False, 120: False}


def test_the_spread_of_many_scoopfuls_is_no_narrower_than_their_mean_was_signed_off(herd: Herd) -> None:
    """24 scoopfuls are at least as unsure as 24 times the mean of few bags, whose t goes beyond 1.96."""
    signed = herd.sign("25-1103C", 0.5)
    few = replace(signed, level_low_g=signed.level_mean_g - 10.0, level_high_g=signed.level_mean_g + 10.0)
    marks = [mark for mark in herd.records.marks() if mark.sign_off_id == signed.id]
    level = next(way for way in scoop_ways([few], marks, {signed.scoop_id: "red"}) if way.way is FillWay.LEVEL)
    assert spread_95_g([(level, 24.0)]) >= 24 * 10.0
