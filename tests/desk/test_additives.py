"""Additives of a group: typed, kept, weighed in besides the powder, and told on screen and paper."""

from __future__ import annotations

from dataclasses import replace

import pytest
from answers import Answers, at_noon
from herd import OZ_G, QT_ML, Herd, group
from keys import mnemonics, nameless
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QLineEdit
from pytestqt.qtbot import QtBot

from calibrator.desk.context import Desk
from calibrator.desk.forms.plan_form import PlanForm
from calibrator.desk.how.of_batch import of_row
from calibrator.desk.pages.batch_model import BatchModel, Column
from calibrator.desk.pages.tables import TablesPage
from calibrator.desk.pages.today_card import TodayRow
from calibrator.desk.paper_facts import Options, wall_chart_facts
from calibrator.desk.sheets import plan_sheet, powder_in_use
from calibrator.desk.standing import standing
from calibrator.desk.table_words import additives_text, telling, too_light_words
from calibrator.desk.theme import Theme
from calibrator.model import Additive, Composition, MixingRate, Paper, Plan, PrintKind, RateBasis, VolumeMeans
from calibrator.prints.chart import wall_chart
from calibrator.prints.page import Text
from calibrator.records import Records
from calibrator.science.scale import ScaleFacts

TEN_OZ_LEVEL = 10 * OZ_G / 665.9
TWO_OZ = MixingRate(basis=RateBasis.ON_WATER, powder_mass_g=2 * OZ_G, volume_ml=2 * QT_ML, typed="2 oz")
SALTS = Additive(
    name="electrolyte",
    rate=TWO_OZ,
    composition=Composition(protein_pct=0.0, fat_pct=0.0, ash_pct=40.0, fibre_pct=0.0),
    mosmol_per_g=9.0,
    mosmol_typed="9",
)


@pytest.fixture
def herd(qapp: QApplication, records: Records) -> Herd:
    if qapp.property("tokens") is None:
        Theme(qapp)
    made = Herd(records)
    made.sign("25-1103C", TEN_OZ_LEVEL)
    return made


def put(qtbot: QtBot, line: QLineEdit, text: str) -> None:
    line.setFocus(Qt.FocusReason.OtherFocusReason)
    line.selectAll()
    qtbot.keyClick(line, Qt.Key.Key_Delete)
    qtbot.keyClicks(line, text)


def test_powder_scoopfuls_and_additive_are_told_each_for_itself(herd: Herd) -> None:
    """12 calves: 120 oz of powder, twelve scoopfuls of ten, and 24 oz of electrolyte."""
    here = powder_in_use(herd.records, standing(herd.records, herd.farm))
    plan = herd.plan("Milk", replace(group(12), additives=(SALTS,)))
    (sheet,) = plan_sheet(herd.farm, plan, None, here).groups
    line = sheet.today_line
    assert line is not None
    assert line.powder_g == pytest.approx(120 * OZ_G, rel=1e-3)
    assert line.additives_g == pytest.approx((24 * OZ_G,), rel=2e-3)
    assert line.scoops is not None
    assert line.scoops.scoopfuls == 12
    plain = plan_sheet(herd.farm, replace(plan, groups=(group(12),)), None, here).groups[0]
    gained = sheet.per_calf.osmolality_mosm_per_kg - plain.per_calf.osmolality_mosm_per_kg
    assert gained == pytest.approx(1000 * 9.0 * 2 * OZ_G / plain.per_calf.water_g)
    assert sheet.per_calf.solids_share > plain.per_calf.solids_share
    model = BatchModel()
    model.show_sheet(sheet)
    told = model.data(model.index(sheet.today_row or 0, Column.POWDER))
    assert told == "7 lb 8.0 oz\nand 24.0 oz of electrolyte"


def how_much_powder(herd: Herd, plan: Plan) -> str:
    """What *How is this computed?* says of today's powder."""
    here = powder_in_use(herd.records, standing(herd.records, herd.farm))
    whole = plan_sheet(herd.farm, plan, None, here)
    line = whole.groups[0].today_line
    assert line is not None
    (told,) = (
        part.working
        for working in of_row(whole, whole.groups[0], line)
        for part in working.parts
        if part.what == "Powder in a batch"
    )
    return told


def test_how_the_powder_came_about_is_told_beside_an_additive_as_without_one(herd: Herd) -> None:
    """24 qt of water stand as they are; 2.1 qt are drawn as 2, and the powder goes by those."""
    reasons = {12: "a batch's share is", 1: "water × powder to water"}
    for calves, reason in reasons.items():
        fed = group(calves) if calves > 1 else replace(group(calves), volume_ml=2.1 * QT_ML)
        plan = herd.plan("Milk", fed)
        assert reason in how_much_powder(herd, plan)
        dosed = how_much_powder(herd, replace(plan, groups=(replace(fed, additives=(SALTS,)),)))
        assert reason in dosed
        assert "powder's share of all that is weighed in" in dosed


def test_the_chart_tells_the_additive_below_the_water(herd: Herd) -> None:
    here = powder_in_use(herd.records, standing(herd.records, herd.farm))
    plan = herd.plan("Milk", replace(group(12), additives=(SALTS,)), count_from=12, count_to=12, counts=())
    signed = standing(herd.records, herd.farm).sign_offs[-1]
    printed = herd.print(PrintKind.WALL_CHART, signed, plan_id=plan.id)
    sheet = plan_sheet(herd.farm, plan, None, here)
    facts = wall_chart_facts(herd.farm, sheet, signed, printed, signed.at.date(), Options(Paper.LETTER, ("en",)))
    texts = [item.text for item in wall_chart(facts).pages[0].items if isinstance(item, Text)]
    assert "+ 24.0 oz electrolyte" in texts
    assert "7 lb 8.0 oz" in texts


def test_an_additive_too_light_for_the_scale_is_told_finer_and_not_by_its_step(herd: Herd, qtbot: QtBot) -> None:
    """4 g a calf on a scale of half an ounce: 2 calves would get half an ounce, 14 g in place of 8."""
    rate = MixingRate(basis=RateBasis.ON_WATER, powder_mass_g=4, volume_ml=2 * QT_ML, typed="4 g")
    dosed = replace(group(2), additives=(Additive(name="medicine", rate=rate),))
    plan = herd.plan("Milk", dosed, count_from=1, count_to=100, counts=())
    here = powder_in_use(herd.records, standing(herd.records, herd.farm))
    coarse = replace(here, scale=ScaleFacts(OZ_G / 2))
    (sheet,) = plan_sheet(herd.farm, plan, None, coarse).groups
    to = telling(sheet)
    told = [additives_text(sheet.line(calves - 1), sheet, to) for calves in (1, 2, 100)]
    assert told == ["and 0.14 oz (4.0 g) of medicine", "and 0.28 oz (8.0 g) of medicine", "and 14.0 oz of medicine"]
    assert too_light_words(sheet).startswith("Additives lighter than 5.0\u00a0oz: ")
    card = TodayRow(1, dosed, alone=True)
    qtbot.addWidget(card)
    card.tell(sheet)
    assert "finer scale, or the product's own spoon" in card.more.text()
    many = replace(plan, count_from=90, groups=(replace(dosed, calves=100),))
    assert not plan_sheet(herd.farm, many, None, coarse).groups[0].too_light
    signed = standing(herd.records, herd.farm).sign_offs[-1]
    printed = herd.print(PrintKind.WALL_CHART, signed, plan_id=plan.id)
    for some, caution in ((replace(plan, count_to=3), True), (many, False)):
        made = plan_sheet(herd.farm, some, None, coarse)
        facts = wall_chart_facts(herd.farm, made, signed, printed, signed.at.date(), Options(Paper.LETTER, ("en",)))
        texts = " ".join(item.text for item in wall_chart(facts).pages[0].items if isinstance(item, Text))
        assert ("+ 0.28 oz (8.0 g) medicine" in texts) is caution
        assert ("Additives lighter than 5.0 oz" in texts) is caution


def test_groups_with_different_additives_have_no_table_together(herd: Herd) -> None:
    here = powder_in_use(herd.records, standing(herd.records, herd.farm))
    dosed = replace(group(5, "Young"), additives=(SALTS,))
    apart = herd.plan("Milk", dosed, group(6, "Old"))
    assert plan_sheet(herd.farm, apart, None, here).together is None
    alike = herd.plan("Milk", dosed, replace(dosed, name="Old"))
    together = plan_sheet(herd.farm, alike, None, here).together
    assert together is not None
    assert together.additives == ("electrolyte",)


@pytest.mark.parametrize("means", list(VolumeMeans))
def test_an_additive_is_typed_for_each_calf(herd: Herd, qtbot: QtBot, answers: Answers, means: VolumeMeans) -> None:
    form = PlanForm(Desk(herd.records, answers, clock=at_noon))
    qtbot.addWidget(form)
    plan = herd.plan("Milk", group(10, means=means))
    form.edit(plan)
    form.resize(780, 620)
    form.show()
    editor = form.groups[0]
    assert not editor.additives.add.isVisible()
    editor.more.link.click()
    editor.additives.add.click()
    (additive,) = editor.additives.rows
    assert form.focusWidget() is additive.name.line
    assert editor.caution.isVisible()
    form.keep()
    assert herd.records.find(Plan, plan.id).groups[0].additives == ()
    put(qtbot, additive.name.line, "electrolyte")
    put(qtbot, additive.each.line, "2 oz")
    assert additive.understood()  # nothing more need be told of it
    put(qtbot, additive.osmoles.line, "9")
    form.keep()
    (kept,) = herd.records.find(Plan, plan.id).groups[0].additives
    assert (kept.name, kept.mosmol_per_g, kept.rate.typed) == ("electrolyte", 9.0, "2 oz")
    assert kept.rate.basis is (RateBasis.ON_WATER if means is VolumeMeans.WATER else RateBasis.PER_FINISHED)
    here = powder_in_use(herd.records, standing(herd.records, herd.farm))
    sheet = plan_sheet(herd.farm, herd.records.find(Plan, plan.id), None, here).groups[0]
    assert sheet.per_calf.powder_g * sheet.shares[1] == pytest.approx(2 * OZ_G)
    form.edit(herd.records.find(Plan, plan.id))
    (again,) = form.groups[0].additives.rows
    assert again.each.text() == "2 oz"
    qtbot.waitUntil(again.isVisible)
    taken = mnemonics(form)
    assert len(taken) == len(set(taken))
    assert nameless(form) == []
    again.remove.click()
    form.keep()
    assert herd.records.find(Plan, plan.id).groups[0].additives == ()


def test_today_tells_the_additive_beside_the_powder(herd: Herd, qtbot: QtBot, answers: Answers) -> None:
    herd.plan("Milk", replace(group(12), additives=(SALTS,)))
    page = TablesPage(Desk(herd.records, answers, clock=at_noon))
    qtbot.addWidget(page)
    page.reload()
    page.show()
    assert page.view.today.rows[0].powder.note.text() == "and 24.0 oz of electrolyte"
