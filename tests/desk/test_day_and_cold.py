"""Feedings that differ, steps to weaning and cold weather: typed, kept, switched, on screen and paper."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta

import pytest
from answers import Answers, at_noon
from herd import OZ_G, QT_ML, Herd, group
from keys import mnemonics, nameless
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QLineEdit
from pytestqt.qtbot import QtBot

from calibrator.desk.context import Desk
from calibrator.desk.forms.plan_form import PlanForm
from calibrator.desk.pages.tables import TablesPage
from calibrator.desk.paper_facts import Options, wall_chart_facts
from calibrator.desk.paper_making import Chosen, Want, lot_paper
from calibrator.desk.sheets import chart_plan, plan_sheet, powder_in_use
from calibrator.desk.standing import standing
from calibrator.desk.theme import Theme
from calibrator.model import ColdWeather, Feeding, FeedingStep, Paper, Plan, PlanGroup, PrintKind
from calibrator.prints.chart import wall_chart
from calibrator.prints.page import Text
from calibrator.records import Records

TEN_OZ_LEVEL = 10 * OZ_G / 665.9
TODAY = at_noon().date()  # 2 March 2026
COLD = ColdWeather(below_c=-5.0, more_powder_share=0.1)
THREE = (
    Feeding(name="morning", volume_ml=2 * QT_ML),
    Feeding(name="noon", volume_ml=QT_ML),
    Feeding(name="night", volume_ml=2 * QT_ML),
)
STEPS = (
    FeedingStep(from_day=8, volume_ml=3 * QT_ML),
    FeedingStep(from_day=50, volume_ml=0.0, feedings_per_day=0),
)


@pytest.fixture
def herd(qapp: QApplication, records: Records) -> Herd:
    if qapp.property("tokens") is None:
        Theme(qapp)
    made = Herd(records)
    made.sign("25-1103C", TEN_OZ_LEVEL)
    return made


def page_of(herd: Herd, qtbot: QtBot, answers: Answers) -> TablesPage:
    desk = Desk(herd.records, answers, clock=at_noon)
    page = TablesPage(desk)
    desk.changed.connect(page.reload)
    qtbot.addWidget(page)
    page.resize(828, 700)
    page.reload()
    page.show()
    return page


def form_of(herd: Herd, qtbot: QtBot, answers: Answers, plan: Plan) -> PlanForm:
    form = PlanForm(Desk(herd.records, answers, clock=at_noon))
    qtbot.addWidget(form)
    form.resize(780, 620)
    form.edit(plan)
    form.show()
    return form


def put(qtbot: QtBot, line: QLineEdit, text: str) -> None:
    line.setFocus(Qt.FocusReason.OtherFocusReason)
    line.selectAll()
    qtbot.keyClick(line, Qt.Key.Key_Delete)
    qtbot.keyClicks(line, text)


def stepped(day_one: date, calves: int = 10) -> PlanGroup:
    return replace(group(calves, "Young"), steps=STEPS, day_one=day_one)


def test_a_plain_plan_asks_nothing_about_the_day(herd: Herd, qtbot: QtBot, answers: Answers) -> None:
    herd.plan()
    assert not page_of(herd, qtbot, answers).view.day_bar.isVisible()


def test_the_feeding_chosen_is_what_the_table_tells(herd: Herd, qtbot: QtBot, answers: Answers) -> None:
    herd.plan("Milk", replace(group(10, "Young"), feedings=THREE), group(5, "Old"))
    page = page_of(herd, qtbot, answers)
    bar, rows = page.view.day_bar, page.view.today.rows
    assert [bar.feeding.itemText(n) for n in range(bar.feeding.count())] == ["morning", "noon", "night"]
    assert [row.powder.value.text() for row in rows] == ["6 lb 4.0 oz", "50.0 oz"]
    bar.feeding.setCurrentIndex(1)
    bar.feeding.activated.emit(1)
    assert [row.powder.value.text() for row in rows] == ["50.0 oz", "50.0 oz"]
    bar.feeding.setCurrentIndex(2)
    bar.feeding.activated.emit(2)
    assert rows[1].water.value.text() == "–"
    assert rows[1].water.note.text() == "not at this feeding"
    assert rows[1].calves.text() == "5"
    put(qtbot, rows[0].calves, "12")
    assert rows[0].powder.value.text() == "7 lb 8.0 oz"
    page.leave()
    (kept,) = herd.records.every(Plan)
    assert [each.calves for each in kept.groups] == [12, 5]
    assert kept.groups[0].feedings == THREE
    taken = mnemonics(page)
    assert len(taken) == len(set(taken))
    assert nameless(page) == []


@pytest.mark.parametrize(
    ("day_one", "powder"),
    [(date(2026, 2, 28), "6 lb 4.0 oz"), (date(2026, 2, 20), "9 lb 6.0 oz"), (date(2026, 1, 1), "–")],
)
def test_the_calendar_tells_which_step_holds(
    herd: Herd, qtbot: QtBot, answers: Answers, day_one: date, powder: str
) -> None:
    """Ten calves: ten ounces each in the first week, fifteen in the second, nothing once weaned."""
    herd.plan("Milk", stepped(day_one))
    page = page_of(herd, qtbot, answers)
    row = page.view.today.rows[0]
    assert row.powder.value.text() == powder
    assert (row.water.note.text() == "weaned: no more milk") == (powder == "–")


def test_the_cold_is_one_switch_away_and_kept(herd: Herd, qtbot: QtBot, answers: Answers) -> None:
    plan = herd.plan("Milk", group(10), cold=COLD)
    page = page_of(herd, qtbot, answers)
    bar = page.view.day_bar
    assert "below 23 °F: 10 % more powder" in bar.cold.text().replace("&", "").replace("10.0", "10")
    assert page.view.today.rows[0].powder.value.text() == "6 lb 4.0 oz"
    bar.cold.click()
    assert page.view.today.rows[0].powder.value.text() == "6 lb 14.0 oz"
    told = herd.records.find(Plan, plan.id)
    assert told.cold is not None
    assert told.cold.on
    bar.cold.click()
    assert page.view.today.rows[0].powder.value.text() == "6 lb 4.0 oz"


def test_the_chart_prints_each_feeding_and_says_that_it_is_for_the_cold(herd: Herd) -> None:
    here = powder_in_use(herd.records, standing(herd.records, herd.farm))
    plan = herd.plan("Milk", replace(group(10, "Young"), feedings=THREE), cold=replace(COLD, on=True))
    signed = standing(herd.records, herd.farm).sign_offs[-1]
    printed = herd.print(PrintKind.WALL_CHART, signed, plan_id=plan.id)
    shown = chart_plan(plan, TODAY, here)
    assert [each.name for each in shown.groups] == ["Young, morning", "Young, noon", "Young, night"]
    sheet = plan_sheet(herd.farm, shown, None, here)
    facts = wall_chart_facts(herd.farm, sheet, signed, printed, TODAY, Options(Paper.LETTER, ("en",)))
    assert facts.groups[1].rows[0].powder_g == pytest.approx(facts.groups[1].rows[0].calves * 5.5 * OZ_G, rel=5e-3)
    for language, words in (("en", "For cold weather, below 23 °F"), ("es", "Para tiempo frío")):
        pages = wall_chart(replace(facts, languages=(language,))).pages
        assert any(words in item.text for item in pages[0].items if isinstance(item, Text))
    warm = wall_chart_facts(
        herd.farm,
        plan_sheet(herd.farm, chart_plan(replace(plan, cold=COLD), TODAY, here), None, here),
        signed, printed, TODAY, Options(Paper.LETTER, ("en",)),
    )  # fmt: skip
    assert warm.cold_below_c is None


def test_the_chart_has_a_page_for_the_steps_to_weaning(herd: Herd) -> None:
    """As stepped above: 10 oz twice in the first week, 15 oz twice from the eighth day on."""
    plan = herd.plan("Milk", stepped(TODAY - timedelta(days=3)))
    signed = standing(herd.records, herd.farm).sign_offs[-1]
    paper = lot_paper(herd.records, herd.farm, "", TODAY)
    assert paper is not None
    for language, words in (("en", ("Steps to weaning", "weaned")), ("es", ("Pasos al destete", "destetada"))):
        job = paper.job(Chosen(Want.CHART, Options(Paper.LETTER, (language,)), plan.id, {}, {}), at_noon(), "AB")
        assert job is not None
        pages = job.document(job.sheets).pages
        told = [item.text for item in pages[-1].items if isinstance(item, Text)]
        assert all(any(word in text for text in told) for word in words)
        assert {"1–7", "10.0 oz", "15.0 oz"} <= set(told)
        assert {"2.21 qt", "3.32 qt"} <= set(told)  # what is drunk: the mix, which is more than its 2 and 3 qt of water
        assert any(f"{len(pages)}" in text for text in told)
    assert signed.lot_id == paper.known.lot.id
    plain = herd.plan("Plain", group(10))
    job = lot_paper(herd.records, herd.farm, "", TODAY).job(  # type: ignore[union-attr]
        Chosen(Want.CHART, Options(Paper.LETTER, ("en",)), plain.id, {}, {}), at_noon(), "AB"
    )
    assert job is not None
    shown = [item.text for page in job.document(job.sheets).pages for item in page.items if isinstance(item, Text)]
    assert not any("weaning" in text for text in shown)


def test_feedings_steps_and_cold_are_typed_and_kept(herd: Herd, qtbot: QtBot, answers: Answers) -> None:
    plan = herd.plan("Milk", group(10))
    form = form_of(herd, qtbot, answers, plan)
    editor = form.groups[0]
    editor.more.link.click()
    for name, volume, powder in (("morning", "2 qt", ""), ("noon", "1 qt", "12 oz")):
        editor.day_feedings.add.click()
        made = editor.day_feedings.rows[-1]
        put(qtbot, made.name.line, name)
        put(qtbot, made.volume.line, volume)
        if powder:
            put(qtbot, made.powder.line, powder)
    for day, volume, feedings in (("50", "", "0"), ("8", "3 qt", "2")):
        editor.steps.add.click()
        step = editor.steps.rows[-1]
        put(qtbot, step.day, day)
        put(qtbot, step.feedings, feedings)
        if volume:
            put(qtbot, step.volume.line, volume)
    form.keep()
    assert herd.records.find(Plan, plan.id) == plan
    assert "day 1" in editor.day_one.message
    put(qtbot, editor.day_one.line, "20 Feb 2026")
    form.more_cold.link.click()
    put(qtbot, form.cold.below.line, "23 F")
    form.keep()
    assert herd.records.find(Plan, plan.id) == plan
    assert "what changes" in form.cold.below.message
    put(qtbot, form.cold.below.line, "23 F")
    put(qtbot, form.cold.further, "1")
    form.keep()
    kept = herd.records.find(Plan, plan.id)
    (told,) = kept.groups
    assert [(f.name, f.volume_ml) for f in told.feedings] == [("morning", 2 * QT_ML), ("noon", QT_ML)]
    assert [f.rate.powder_mass_g if f.rate else None for f in told.feedings] == [None, pytest.approx(12 * OZ_G)]
    assert [(s.from_day, s.feedings_per_day) for s in told.steps] == [(8, 2), (50, 0)]
    assert told.day_one == date(2026, 2, 20)
    assert kept.cold == ColdWeather(below_c=pytest.approx(-5.0), below_typed="23 F", further_feedings=1)  # type: ignore[arg-type]
    form.edit(kept)
    again = form.groups[0]
    qtbot.waitUntil(again.day_one.isVisible)
    assert "Today is their day 11." in again._calendar.text()
    assert not again._feedings.isVisible()
    form.keep()
    assert replace(herd.records.find(Plan, plan.id), revision="") == replace(kept, revision="")
    taken = mnemonics(form)
    assert len(taken) == len(set(taken))
    assert nameless(form) == []


def test_rows_taken_out_are_gone_and_two_steps_on_one_day_are_refused(
    herd: Herd, qtbot: QtBot, answers: Answers
) -> None:
    plan = herd.plan("Milk", stepped(date(2026, 2, 20)))
    form = form_of(herd, qtbot, answers, plan)
    steps = form.groups[0].steps
    put(qtbot, steps.rows[1].day, "8")
    form.keep()
    assert herd.records.find(Plan, plan.id) == plan
    steps.rows[1].remove.click()
    form.keep()
    assert [s.from_day for s in herd.records.find(Plan, plan.id).groups[0].steps] == [8]
