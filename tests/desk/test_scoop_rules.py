"""The choices of counting: part fills, whole scoopfuls with the water trimmed, by weight; and what each does."""

from __future__ import annotations

from dataclasses import replace

import pytest
from answers import Answers, at_noon
from herd import OZ_G, QT_ML, Herd, group
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from calibrator.desk.context import Desk
from calibrator.desk.forms.plan_form import PlanForm
from calibrator.desk.pages.batch_model import BatchModel, Column
from calibrator.desk.paper_facts import Options, wall_chart_facts
from calibrator.desk.sheets import GroupSheet, plan_sheet, powder_in_use
from calibrator.desk.standing import standing
from calibrator.desk.theme import Theme
from calibrator.model import FillWay, Paper, Plan, PrintKind, Scoopfuls, ScoopRule, Vessel
from calibrator.records import Records

TEN_OZ_LEVEL = 10 * OZ_G / 665.9
TRIM = Scoopfuls(rule=ScoopRule.ONE_KIND)


@pytest.fixture
def herd(qapp: QApplication, records: Records) -> Herd:
    if qapp.property("tokens") is None:
        Theme(qapp)
    return Herd(records)


def sheet_of(herd: Herd, plan: Plan, vessel: Vessel | None = None) -> GroupSheet:
    here = powder_in_use(herd.records, standing(herd.records, herd.farm))
    return plan_sheet(herd.farm, plan, vessel, here).groups[0]


def test_part_fills_count_only_where_they_are_allowed(herd: Herd) -> None:
    """At 8 oz a calf three calves take 24 oz; a level scoop holds 16: one and a half."""
    herd.sign("25-1103C", 1.6 * TEN_OZ_LEVEL)
    eight = replace(group(3).rate, powder_mass_g=8 * OZ_G)
    plan = herd.plan("Milk", replace(group(3), rate=eight))
    without = sheet_of(herd, plan).today_line
    assert without is not None
    assert without.scoops is None  # no whole count lies near enough: weigh it
    halves = replace(plan, scoopfuls=Scoopfuls(part_fills=(0.5,)))
    line = sheet_of(herd, halves).today_line
    assert line is not None
    assert line.scoops is not None
    assert [count for _, count in line.scoops.parts] == [1.5]


def test_whole_scoopfuls_of_one_kind_keep_the_rate_by_the_water(herd: Herd) -> None:
    """13 oz level; 12 calves take 120 oz: nine scoopfuls are 117 oz, and 23.4 qt of water instead of 24."""
    herd.sign("25-1103C", 1.3 * TEN_OZ_LEVEL)
    rule = Scoopfuls(rule=ScoopRule.ONE_KIND, scoop_id=herd.red.id, way=FillWay.LEVEL)
    sheet = sheet_of(herd, herd.plan("Milk", group(12), scoopfuls=rule))
    line = sheet.today_line
    assert line is not None
    assert line.scoops is not None
    assert [(way.way, count) for way, count in line.scoops.parts] == [(FillWay.LEVEL, 9.0)]
    assert line.trimmed_share == pytest.approx(117 / 120 - 1)
    assert line.batch.mix.powder_g == pytest.approx(117 * OZ_G)
    assert line.batch.mix.water_ml == pytest.approx(23.5 * QT_ML)  # 23.4 to the quarter quart
    assert line.off_share == pytest.approx(23.4 / 23.5 - 1)
    for number in range(len(sheet)):
        row = sheet.line(number)
        assert row.scoops is not None
        assert row.batch.mix.powder_g == pytest.approx(row.scoops.total_g)
        assert abs(row.batch.ratio_error_share) <= 0.125 * QT_ML / row.batch.mix.water_ml * 1.01


def test_the_kind_that_changes_least_is_taken_where_none_is_named(herd: Herd) -> None:
    herd.sign("25-1103C", 1.3 * TEN_OZ_LEVEL)
    line = sheet_of(herd, herd.plan("Milk", group(12), scoopfuls=TRIM)).today_line
    assert line is not None
    assert line.scoops is not None
    assert [(way.way, count) for way, count in line.scoops.parts] == [(FillWay.TO_MARK, 12.0)]
    assert line.trimmed_share == pytest.approx(0.0, abs=1e-9)


def test_what_would_change_the_feeding_by_more_than_a_tenth_is_weighed(herd: Herd) -> None:
    herd.sign("25-1103C", 1.3 * TEN_OZ_LEVEL)
    rule = Scoopfuls(rule=ScoopRule.ONE_KIND, scoop_id=herd.red.id, way=FillWay.LEVEL)
    line = sheet_of(herd, herd.plan("Milk", group(1), scoopfuls=rule)).today_line
    assert line is not None
    assert (line.scoops, line.trimmed_share) == (None, None)
    assert line.batch.mix.powder_g == pytest.approx(10 * OZ_G)


def test_trimming_never_fills_a_vessel_beyond_its_usable_part(herd: Herd) -> None:
    """14 calves take 140 oz: eleven scoopfuls of 13 oz are 143, and where that is too much ten are 130."""
    herd.sign("25-1103C", 1.3 * TEN_OZ_LEVEL)
    rule = Scoopfuls(rule=ScoopRule.ONE_KIND, scoop_id=herd.red.id, way=FillWay.LEVEL)
    plan = herd.plan("Milk", group(14), scoopfuls=rule)
    free = sheet_of(herd, plan)
    wanted = 14 * free.per_calf.volume_ml
    tight = Vessel(id="v", farm_id=herd.farm.id, name="Tank", rim_volume_ml=wanted * 1.001 / 0.9, usable_share=0.9)
    lines = free.today_line, sheet_of(herd, plan, tight).today_line
    assert [line.scoops.scoopfuls for line in lines if line and line.scoops] == [11, 10]
    assert [line.batches for line in lines if line] == [1, 1]


def test_a_plan_by_weight_has_no_count(herd: Herd) -> None:
    signed = herd.sign("25-1103C", TEN_OZ_LEVEL)
    plan = herd.plan("Milk", group(9), scoopfuls=Scoopfuls(rule=ScoopRule.WEIGH))
    sheet = sheet_of(herd, plan)
    assert (sheet.ways, sheet.today_line.scoops if sheet.today_line else 0) == ((), None)
    here = powder_in_use(herd.records, standing(herd.records, herd.farm))
    printed = herd.print(PrintKind.WALL_CHART, signed, plan_id=plan.id)
    chart = plan_sheet(herd.farm, plan, None, here)
    facts = wall_chart_facts(herd.farm, chart, signed, printed, signed.at.date(), Options(Paper.LETTER, ("en",)))
    assert not any(row.scoopfuls for row in facts.groups[0].rows)


def test_a_row_says_what_the_count_makes_of_solids_and_osmolality(herd: Herd, qtbot: QtBot) -> None:
    herd.sign("25-1103C", 1.01 * TEN_OZ_LEVEL)
    rule = Scoopfuls(rule=ScoopRule.FEWEST)
    model = BatchModel()
    sheet = sheet_of(herd, herd.plan("Milk", group(12), scoopfuls=rule))
    model.show_sheet(sheet)
    tip = model.data(model.index(sheet.today_row or 0, Column.SCOOPFULS), Qt.ItemDataRole.ToolTipRole)
    for told in ("Solids 1", "Rounding of water and powder"):
        assert told in tip
    assert model.data(model.index(sheet.today_row or 0, Column.ERROR)).endswith("%")


def test_the_rule_is_chosen_under_more_about_scoopfuls(herd: Herd, qtbot: QtBot, answers: Answers) -> None:
    form = PlanForm(Desk(herd.records, answers, clock=at_noon))
    qtbot.addWidget(form)
    plan = herd.plan("Milk", group(9))
    form.edit(plan)
    form.show()
    assert not form.scoop_rule.isVisible()
    form.more_scoopfuls.link.click()
    rule = form.scoop_rule
    assert rule.halves.isVisible()
    assert not rule.kind.isVisible()
    rule.quarters.click()
    form.keep()
    kept = herd.records.find(Plan, plan.id)
    assert kept.scoopfuls == Scoopfuls(part_fills=(0.25, 0.5, 0.75))
    form.edit(kept)
    assert rule.quarters.isChecked()
    rule.one_kind.click()
    rule.kind.setCurrentIndex(rule.kind.findText("Red scoop, to the line"))
    form.keep()
    kept = herd.records.find(Plan, plan.id)
    assert kept.scoopfuls == Scoopfuls(rule=ScoopRule.ONE_KIND, scoop_id=herd.red.id, way=FillWay.TO_MARK)
    form.edit(kept)
    assert rule.kind.currentText() == "Red scoop, to the line"
    rule.fewest.click()
    rule.quarters.setChecked(False)
    form.keep()
    assert herd.records.find(Plan, plan.id).scoopfuls is None
