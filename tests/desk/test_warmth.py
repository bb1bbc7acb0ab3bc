"""The water to draw and to blend, the hot tank, cooling and turns: from the records to the page.

Blends by conservation of mass and heat: water of 60 °C and of 10 °C makes 40 °C three to two.
"""

from __future__ import annotations

from dataclasses import replace

import pytest
from answers import Answers, at_noon
from herd import QT_ML, Herd, group
from keys import nameless
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QLineEdit
from pytestqt.qtbot import QtBot

from calibrator.desk.context import Desk
from calibrator.desk.forms.hot_water_form import HotWaterForm
from calibrator.desk.forms.plan_form import PlanForm
from calibrator.desk.forms.vessel_form import VesselForm
from calibrator.desk.pages.tables import TablesPage
from calibrator.desk.paper_facts import Options, wall_chart_facts
from calibrator.desk.sheets import PlanSheet, plan_sheet, powder_in_use
from calibrator.desk.standing import standing
from calibrator.desk.theme import Theme
from calibrator.desk.warmth import hot_needed, served, warm
from calibrator.model import CoolingReadings, Farm, HotWater, Paper, Plan, PrintKind, Vessel, Warmth
from calibrator.records import Records
from calibrator.science.heat import mix_temperature_c

TANK = HotWater(tank_ml=100_000.0, hot_c=60.0, cold_c=10.0)
COOL = CoolingReadings(first_c=40.0, later_c=35.0, minutes=20, air_c=0.0)


@pytest.fixture
def herd(qapp: QApplication, records: Records) -> Herd:
    if qapp.property("tokens") is None:
        Theme(qapp)
    return Herd(records)


def sheet_of(herd: Herd, plan: Plan, vessel: Vessel | None = None) -> PlanSheet:
    farm = herd.records.find(Farm, herd.farm.id)
    return plan_sheet(farm, plan, vessel, powder_in_use(herd.records, standing(herd.records, farm)))


def page_of(herd: Herd, qtbot: QtBot, answers: Answers) -> TablesPage:
    desk = Desk(herd.records, answers, clock=at_noon)
    page = TablesPage(desk)
    desk.changed.connect(page.reload)
    qtbot.addWidget(page)
    page.resize(828, 700)
    page.reload()
    page.show()
    return page


def put(qtbot: QtBot, line: QLineEdit, text: str) -> None:
    line.setFocus(Qt.FocusReason.OtherFocusReason)
    line.selectAll()
    qtbot.keyClick(line, Qt.Key.Key_Delete)
    qtbot.keyClicks(line, text)


def test_without_a_word_on_warmth_the_water_is_drawn_as_the_plan_says(herd: Herd) -> None:
    sheet = sheet_of(herd, herd.plan())
    known = warm(sheet, sheet.groups[0])
    assert (known.draw_c, known.lands_c, known.minutes) == (43.333, None, None)
    assert hot_needed(sheet, (known,)) is None
    assert served(sheet, (known,)) == ()


def test_cold_powder_wants_hotter_water_and_the_mix_lands_where_it_was_meant_to(herd: Herd) -> None:
    signed = herd.sign("25-1103C", 0.425)
    plan = herd.plan(warmth=Warmth(powder_c=-5.0, mix_c=41.0))
    sheet = sheet_of(herd, plan)
    known = warm(sheet, sheet.groups[0])
    mix, label = sheet.groups[0].per_calf, herd.lot_of(signed).composition
    assert known.draw_c > 43.0
    assert known.lands_c == pytest.approx(41.0, abs=1e-6)
    assert mix_temperature_c(known.draw_c, mix.water_g, mix.powder_g, label, -5.0) == pytest.approx(41.0, abs=1e-6)
    printed = herd.print(PrintKind.WALL_CHART, signed, plan_id=plan.id)
    facts = wall_chart_facts(herd.farm, sheet, signed, printed, signed.at.date(), Options(Paper.LETTER, ("en",)))
    assert facts.water_temperature_c == pytest.approx(known.draw_c)
    assert {row.water_temperature_c for row in facts.groups[0].rows} == {known.draw_c}


def test_the_hot_water_of_all_groups_is_held_against_the_tank(herd: Herd) -> None:
    """600 L at 40 °C take 360 L at 60 °C by weight: at 0.983 g/mL 366 L, of which the tank lacks 266."""
    herd.farm = herd.records.keep(replace(herd.farm, hot_water=TANK))
    each = replace(group(150), volume_ml=2000.0)
    plan = herd.plan("Milk", replace(each, name="Young"), replace(each, name="Old"), water_temperature_c=40.0)
    sheet = sheet_of(herd, plan)
    need = hot_needed(sheet, tuple(warm(sheet, part) for part in sheet.groups))
    assert need is not None
    assert need.needed_ml == pytest.approx(600_000 * 0.9922 * 0.6 / 0.98320, rel=1e-3)
    assert need.missing_ml == pytest.approx(need.needed_ml - TANK.tank_ml)


def test_the_page_tells_the_blend_the_missing_water_and_the_scald(herd: Herd, qtbot: QtBot, answers: Answers) -> None:
    herd.records.keep(replace(herd.farm, hot_water=TANK))
    herd.plan("Milk", group(10), water_temperature_c=40.0, warmth=Warmth(powder_c=20.0))
    page = page_of(herd, qtbot, answers)
    told = page.view.today.rows[0].more.text()
    assert "Draw water at 104 °F" in told
    assert "3 gal hot and 2 gal cold" in told
    assert "lands at" in told
    assert not page.view.hot_water.isVisible()
    assert page.view.scald.isVisible()
    assert "Water at 140 °F (60 °C) scalds skin within seconds." in page.view.scald.text()
    qtbot.keyClicks(page.view.today.rows[0].calves, "0")
    field = page.view.today.rows[0].calves
    put(qtbot, field, "109")
    assert page.view.hot_water.isVisible()
    assert "will not do" in page.view.hot_water.text()


def test_a_tank_too_cool_for_the_water_is_said_beside_the_group(herd: Herd, qtbot: QtBot, answers: Answers) -> None:
    herd.records.keep(replace(herd.farm, hot_water=replace(TANK, hot_c=40.0)))
    herd.plan()
    page = page_of(herd, qtbot, answers)
    assert "must lie between the cold and the hot water" in page.view.today.rows[0].more.text()


def test_changing_the_powders_warmth_is_told_though_no_row_changes(herd: Herd, qtbot: QtBot, answers: Answers) -> None:
    plan = herd.plan("Milk", group(10), warmth=Warmth(powder_c=20.0, mix_c=40.0))
    page = page_of(herd, qtbot, answers)
    before = page.view.today.rows[0].more.text()
    herd.records.keep(replace(plan, warmth=Warmth(powder_c=-20.0, mix_c=40.0)))
    page.reload()
    assert page.view.today.rows[0].more.text() != before


def test_turns_and_minutes_by_the_vessels_two_readings(herd: Herd, qtbot: QtBot, answers: Answers) -> None:
    """In air of 0 °C from 40 to 35 °C in 20 min: a mix of 40 °C has (35/40)^(t/20) of it left after t min."""
    tank = herd.records.keep(replace(herd.vessel(), cooling=COOL))
    told = Warmth(powder_c=20.0, mix_c=40.0, calves_in_ten_minutes=20)
    plan = herd.plan("Milk", group(30, "Young"), group(40, "Old"), vessel_id=tank.id, warmth=told)
    sheet = sheet_of(herd, plan, tank)
    known = tuple(warm(sheet, part) for part in sheet.groups)
    assert 40.0 * (35 / 40) ** ((known[0].minutes or 0.0) / 20) == pytest.approx(29.4)
    (_, first), (_, second) = served(sheet, known)
    assert (first.starts_min, first.ends_min, second.ends_min) == (0.0, 15.0, 35.0)
    assert first.last_calf_c == pytest.approx(40.0 * (35 / 40) ** (15 / 20))
    page = page_of(herd, qtbot, answers)
    assert "Young, minute 0 to 15" in page.view.order.text()
    assert "until it is below 85 °F" in page.view.today.rows[0].more.text()
    put(qtbot, page.view.today.rows[1].calves, "96")
    assert "too cool" not in page.view.order.text()
    assert "smaller batches" in page.view.order.text()


def test_hot_water_is_kept_once_all_three_are_told(herd: Herd, qtbot: QtBot, answers: Answers) -> None:
    form = HotWaterForm(Desk(herd.records, answers, clock=at_noon))
    qtbot.addWidget(form)
    form.reload()
    form.show()
    put(qtbot, form.tank.line, "50 gal")
    qtbot.keyClick(form.tank.line, Qt.Key.Key_Return)
    assert herd.records.find(Farm, herd.farm.id).hot_water is None
    put(qtbot, form.hot.line, "50 F")
    put(qtbot, form.cold.line, "55 F")
    qtbot.keyClick(form.cold.line, Qt.Key.Key_Return)
    assert herd.records.find(Farm, herd.farm.id).hot_water is None
    assert "warmer" in form.hot.message
    put(qtbot, form.hot.line, "140 F")
    assert form.scald.isVisible()
    qtbot.keyClick(form.hot.line, Qt.Key.Key_Return)
    kept = herd.records.find(Farm, herd.farm.id).hot_water
    assert kept is not None
    assert (kept.tank_ml, kept.hot_c) == pytest.approx((50 * 4 * QT_ML, 60.0))
    assert kept.cold_typed == "55 F"
    for field in form.fields:
        put(qtbot, field.line, "")
    qtbot.keyClick(form.cold.line, Qt.Key.Key_Return)
    assert herd.records.find(Farm, herd.farm.id).hot_water is None
    assert nameless(form) == []


def test_a_vessels_cooling_is_read_twice(herd: Herd, qtbot: QtBot, answers: Answers) -> None:
    form = VesselForm(Desk(herd.records, answers, clock=at_noon))
    qtbot.addWidget(form)
    form.load(herd.vessel())
    form.show()
    assert not form.first.isVisible()
    form.cools.click()
    for field, text in ((form.first, "105 F"), (form.later, "105 F"), (form.air, "40 F")):
        put(qtbot, field.line, text)
    assert form.made() is None
    assert form.later.message
    put(qtbot, form.later.line, "98 F")
    put(qtbot, form.minutes, "15")
    assert "too cool for calves" in form._stays.text()
    made = form.made()
    assert made is not None
    assert made.cooling is not None
    assert (made.cooling.minutes, made.cooling.later_typed) == (15, "98 F")
    assert nameless(form) == []
    form.load(herd.records.keep(made))
    assert not form.typed


def test_a_plans_warmth_is_folded_away_and_asks_for_the_powder(herd: Herd, qtbot: QtBot, answers: Answers) -> None:
    form = PlanForm(Desk(herd.records, answers, clock=at_noon))
    qtbot.addWidget(form)
    form.edit(None)
    form.show()
    assert not form.warmth.isVisible()
    put(qtbot, form.name.line, "Milk")
    put(qtbot, form.groups[0].calves, "24")
    form.groups[0].water.click()
    form.more_warmth.link.click()
    put(qtbot, form.warmth.mix.line, "104 F")
    form.keep()
    assert herd.records.every(Plan) == []
    assert "how warm the powder is" in form.warmth.powder.message
    put(qtbot, form.warmth.powder.line, "40 F")
    put(qtbot, form.warmth.pace, "25")
    form.keep()
    (kept,) = herd.records.every(Plan)
    assert kept.warmth is not None
    assert kept.warmth.mix_c == pytest.approx(40.0)
    assert kept.warmth.calves_in_ten_minutes == 25
    form.edit(kept)
    assert form.warmth.isVisible()
    form.edit(None)
    assert not form.warmth.isVisible()
