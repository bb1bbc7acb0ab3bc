"""A feeding planned after a label was printed: the label has no line for it, and that is said where it is planned."""

from __future__ import annotations

from dataclasses import replace

import pytest
from answers import Answers, at_noon
from herd import FIRST_DAY, OZ_G, QT_ML, Herd, group
from PySide6.QtWidgets import QWidget
from pytestqt.qtbot import QtBot

from calibrator.desk.context import Desk
from calibrator.desk.forms.plan_form import PlanForm
from calibrator.desk.label_news import label_news
from calibrator.desk.needs import Need, waiting
from calibrator.desk.pages.paper_scoops import ScoopPick
from calibrator.desk.pages.spot_card import SpotCard
from calibrator.desk.pages.what_to_do import WhatToDo
from calibrator.desk.paper_facts import Options
from calibrator.desk.paper_making import Chosen, Want, lot_paper
from calibrator.desk.sheet_words import label_words
from calibrator.desk.standing import Standing, standing
from calibrator.model import MixingRate, Paper, Plan, PrintKind, RateBasis, SignOff, UnitSystem
from calibrator.prints.page import Text
from calibrator.records import Records

DENSITY = 10.6 * OZ_G / 665.9
TODAY = FIRST_DAY.date()
pytestmark = pytest.mark.usefixtures("qapp")


@pytest.fixture
def herd(records: Records) -> Herd:
    return Herd(records)


@pytest.fixture
def plan(herd: Herd) -> Plan:
    return herd.plan("Milk", group(9))


@pytest.fixture
def labelled(herd: Herd, plan: Plan) -> SignOff:
    """A lot whose label was printed while every calf got what its line holds."""
    signed = herd.sign("A", DENSITY)
    herd.print(PrintKind.SCOOP_LABEL, signed, scoop_id=herd.red.id)
    return signed


@pytest.fixture
def desk(herd: Herd, answers: Answers) -> Desk:
    return Desk(herd.records, answers, clock=at_noon)


def ounces(mass: float) -> MixingRate:
    return MixingRate(basis=RateBasis.ON_WATER, powder_mass_g=mass * OZ_G, volume_ml=2 * QT_ML)


def feed_too(herd: Herd, plan: Plan, mass_oz: float) -> Plan:
    return herd.records.keep(replace(plan, groups=(*plan.groups, group(4, "Young", ounces(mass_oz)))))


def now_on(herd: Herd) -> Standing:
    return standing(herd.records, herd.farm, TODAY)


def lacking(herd: Herd) -> list[float]:
    return [round(offer.target_g / OZ_G, 2) for news in label_news(now_on(herd)) for offer in news.offers]


@pytest.mark.usefixtures("labelled")
def test_only_a_feeding_planned_since_that_no_line_was_weighed_for_calls_for_a_new_label(
    herd: Herd, plan: Plan
) -> None:
    assert lacking(herd) == []
    plan = feed_too(herd, plan, 10.1)  # within the farm's tolerance of the line
    assert lacking(herd) == []
    plan = feed_too(herd, plan, 0.4)  # no line for it could be read
    assert lacking(herd) == []
    feed_too(herd, plan, 8)
    assert lacking(herd) == [8.0]


def test_a_label_that_is_not_on_a_scoop_asks_for_nothing(herd: Herd, plan: Plan) -> None:
    herd.sign("A", DENSITY)
    feed_too(herd, plan, 8)
    assert lacking(herd) == []


def test_today_asks_for_the_label_until_it_is_printed_or_said_to_stay(
    herd: Herd, plan: Plan, labelled: SignOff, desk: Desk, qtbot: QtBot
) -> None:
    plan = feed_too(herd, plan, 8)
    page = QWidget()
    qtbot.addWidget(page)
    to_do, spots = WhatToDo(desk, page), SpotCard(desk)
    qtbot.addWidget(spots)
    (told,) = (told for told in to_do.every(now_on(herd), None, spots) if "older than the plan" in told.words)
    assert "8.0 oz (Milk, Young). Printed anew it has also: a line for 8.0 oz." in told.words.replace("\u00a0", " ")
    with qtbot.waitSignal(desk.go_to) as went:
        told.does[0].act()
    assert went.args == ["tables", f"label:{labelled.lot_id}"]
    told.does[1].act()
    assert lacking(herd) == []
    plan = feed_too(herd, plan, 7)
    assert lacking(herd) == [7.0]
    herd.print(PrintKind.SCOOP_LABEL, labelled, scoop_id=herd.red.id)
    assert not [one for one in waiting(now_on(herd)) if one.need is Need.LABEL]


def test_keeping_the_plan_tells_of_the_label_and_leads_to_it(
    herd: Herd, plan: Plan, labelled: SignOff, desk: Desk, qtbot: QtBot
) -> None:
    form = PlanForm(desk)
    qtbot.addWidget(form)
    form.edit(feed_too(herd, plan, 8))
    with qtbot.waitSignal(desk.done) as said:
        form.keep()
    text, way, act = said.args or ()
    assert "is kept. The label of Red scoop" in text
    assert way == "Print the label"
    with qtbot.waitSignal(desk.go_to) as went:
        act()
    assert went.args == ["tables", f"label:{labelled.lot_id}"]


@pytest.mark.usefixtures("labelled")
@pytest.mark.parametrize(
    ("ounces", "added"), [(15, "“15.0 oz = 1 to the line + 1 to ½”"), (20, "“20.0 oz = 2 to the line”")]
)
def test_a_feeding_counted_by_the_lines_there_are_is_promised_no_line(
    herd: Herd, plan: Plan, ounces: float, added: str
) -> None:
    feed_too(herd, plan, ounces)
    (news,) = label_news(now_on(herd))
    told = label_words(news, UnitSystem.FARM).replace("\u00a0", " ")
    assert told.endswith(f"Printed anew it has also: {added}. Or let it stay.")


@pytest.mark.usefixtures("labelled")
def test_a_line_for_what_level_scoopfuls_leave_is_told_as_the_label_has_it(herd: Herd, plan: Plan) -> None:
    """“A line for 18 oz” in a scoop that holds less is not believed."""
    feed_too(herd, plan, 18)
    (news,) = label_news(now_on(herd))
    (offer,) = news.offers
    told = label_words(news, UnitSystem.FARM).replace("\u00a0", " ")
    assert offer.line.several
    assert f"also: “{offer.line.mass_g / OZ_G:.1f} oz: 1 struck at the rim + 1 to here = " in told
    assert "a line for" not in told


@pytest.mark.usefixtures("labelled")
def test_the_line_asked_for_is_on_the_new_label(herd: Herd, plan: Plan, desk: Desk, qtbot: QtBot) -> None:
    feed_too(herd, plan, 8)
    paper = lot_paper(herd.records, herd.farm, "", TODAY)
    assert paper is not None
    pick = ScoopPick(desk, herd.red)
    qtbot.addWidget(pick)
    pick.offer(paper.offers(herd.red), 0.0)
    assert [round(offer.target_g / OZ_G, 1) for offer in pick.chosen()] == [10.0, 8.0]


@pytest.mark.usefixtures("labelled")
def test_the_chart_tells_one_calf_s_feeding_as_the_label_does_and_why_batches_differ(herd: Herd, plan: Plan) -> None:
    """23 calves at one and a half are 34 1/2; a batch of whole scoopfuls is 34 or 35, within the tolerance."""
    plan = herd.records.keep(replace(plan, groups=(*plan.groups, group(23, "Older", ounces(15)))))
    paper = lot_paper(herd.records, herd.farm, "", TODAY)
    assert paper is not None
    chosen = Chosen(Want.CHART, Options(Paper.LETTER, ("en",)), plan.id, {}, {})
    job = paper.job(chosen, at_noon(), "")
    assert job is not None
    shown = " ".join(
        item.text.replace("\u00a0", " ")
        for page in job.document(job.sheets).pages
        for item in page.items
        if isinstance(item, Text)
    )
    assert "15.0 oz of powder per calf = 1 to the line + 1 to ½ (in batches: the nearest whole scoopful)" in shown
    assert "10.0 oz of powder per calf = 1 to the line ·" in shown
