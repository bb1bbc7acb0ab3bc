"""A label's line for another feeding: kept with the print, on the label that follows, told wherever the scoop is."""

from __future__ import annotations

from dataclasses import replace

import pytest
from answers import Answers, at_noon
from herd import FIRST_DAY, OZ_G, QT_ML, Herd, group
from PySide6.QtWidgets import QApplication, QLabel
from pytestqt.qtbot import QtBot

from calibrator.desk.chart_faults import Fault, chart_faults
from calibrator.desk.context import Desk
from calibrator.desk.guide import Guide
from calibrator.desk.label_lines import LineOffer
from calibrator.desk.pages.paper_scoops import ScoopPick
from calibrator.desk.pages.today import TodayPage
from calibrator.desk.paper_facts import Options
from calibrator.desk.paper_making import Chosen, LotPaper, Want, lot_paper
from calibrator.desk.scoop_lines import lines_beside, marked
from calibrator.desk.sheets import plan_sheet, powder_in_use
from calibrator.desk.standing import Standing, standing
from calibrator.desk.table_words import scoops_text, telling
from calibrator.desk.theme import Theme
from calibrator.desk.weigh_in.step_mark import StepMark
from calibrator.desk.words import line_words, marks_words
from calibrator.model import (
    Ending,
    FillWay,
    Lot,
    MixingRate,
    Paper,
    Plan,
    Printed,
    PrintKind,
    RateBasis,
    Scoopfuls,
    ScoopRule,
    SheetEnding,
    SignOff,
    UnitSystem,
    WeighIn,
    new_id,
)
from calibrator.prints.label_facts import LineUse
from calibrator.prints.page import Text
from calibrator.records import Records

DENSITY, DENSER = 10.6 * OZ_G / 665.9, 11.2 * OZ_G / 665.9
TODAY = FIRST_DAY.date()
MILK, YOUNG = 0, 1  # the groups of the plan
pytestmark = pytest.mark.usefixtures("qapp")


@pytest.fixture
def herd(records: Records) -> Herd:
    made = Herd(records)
    eight = MixingRate(basis=RateBasis.ON_WATER, powder_mass_g=8 * OZ_G, volume_ml=2 * QT_ML)
    made.plan("Milk", group(9), group(4, "Young", eight))
    return made


@pytest.fixture
def desk(qapp: QApplication, herd: Herd, answers: Answers) -> Desk:
    if qapp.property("tokens") is None:
        Theme(qapp)
    return Desk(herd.records, answers, clock=at_noon)


@pytest.fixture
def page(qtbot: QtBot, desk: Desk) -> TodayPage:
    made = TodayPage(desk)
    qtbot.addWidget(made)
    made.resize(1024, 700)
    made.show()
    return made


def paper_of(herd: Herd, lot_id: str) -> LotPaper:
    paper = lot_paper(herd.records, herd.farm, lot_id, TODAY)
    assert paper is not None
    return paper


def asked_for(herd: Herd, desk: Desk, qtbot: QtBot, lot_id: str) -> list[float]:
    """The lines that a new label of a lot would have, without a touch; oz."""
    pick = ScoopPick(desk, herd.red)
    qtbot.addWidget(pick)
    pick.offer(paper_of(herd, lot_id).offers(herd.red), 0.0)
    return [round(offer.target_g / OZ_G, 1) for offer in pick.chosen()]


def print_label(herd: Herd, signed: SignOff, *ounces: float) -> Printed:
    """The label with the main line and those for so many ounces."""
    paper = paper_of(herd, signed.lot_id)

    def wanted(offer: LineOffer) -> bool:
        return offer.use is LineUse.MAIN or round(offer.target_g / OZ_G, 1) in ounces

    lines = {herd.red.id: tuple(offer for offer in paper.offers(herd.red) if wanted(offer))}
    job = paper.job(Chosen(Want.LABELS, Options(Paper.LETTER, ("en",)), "", lines, {}), signed.at, "AB")
    assert job is not None
    (sheet,) = job.sheets
    return herd.records.record_print(sheet)


def now_on(herd: Herd) -> Standing:
    return standing(herd.records, herd.farm, TODAY)


def mark_it(herd: Herd, lot_id: str) -> None:
    """Somebody says that the line of a lot is on, and its label."""
    now = now_on(herd)
    known = now.lot(lot_id)
    assert known is not None
    for lot in marked(now, known, herd.red.id, TODAY):
        herd.records.keep(lot)


def wait_for_it(herd: Herd, signed: SignOff) -> None:
    herd.records.keep(replace(herd.records.find(Lot, signed.lot_id), waits=True))


def text_of(page: TodayPage) -> str:
    page.reload()
    QApplication.processEvents()
    found = (label.text() for label in page.findChildren(QLabel) if label.isVisible())
    return "\n".join(found).replace("\u00a0", " ")


def test_the_records_keep_which_lines_a_label_has(herd: Herd) -> None:
    signed = herd.sign("A", DENSITY)
    print_label(herd, signed, 8.0)
    (sheet,) = herd.records.prints(herd.farm.id)
    assert sheet.lines is not None
    assert [round(line.target_mass_g / OZ_G, 1) for line in sheet.lines] == [10.0, 8.0]
    (mark,) = herd.records.marks(sign_off_id=signed.id)
    (beside,) = lines_beside(now_on(herd), mark)
    assert beside.down_wall_mm == sheet.lines[1].down_wall_mm


def test_the_label_that_follows_has_the_line_for_another_feeding_too(herd: Herd, desk: Desk, qtbot: QtBot) -> None:
    signed = herd.sign("A", DENSITY)
    assert asked_for(herd, desk, qtbot, "") == [10.0, 8.0]  # the plan has that group
    first = print_label(herd, signed, 8.0)
    assert asked_for(herd, desk, qtbot, "") == [10.0, 8.0]
    following = herd.sign("B", DENSER)
    assert asked_for(herd, desk, qtbot, following.lot_id) == [10.0, 8.0]
    anew = herd.sign("A", DENSER, lot=herd.records.find(Lot, signed.lot_id))
    assert asked_for(herd, desk, qtbot, anew.lot_id) == [10.0, 8.0]
    print_label(herd, anew)  # it was left out this time
    assert asked_for(herd, desk, qtbot, anew.lot_id) == [10.0]
    assert first.lines


@pytest.mark.parametrize(
    "rule", [Scoopfuls(rule=ScoopRule.WEIGH), Scoopfuls(rule=ScoopRule.ONE_KIND, scoop_id="other")]
)
def test_the_first_label_has_no_line_for_what_is_not_filled_with_its_scoop(
    herd: Herd, desk: Desk, qtbot: QtBot, rule: Scoopfuls
) -> None:
    herd.sign("A", DENSITY)
    (plan,) = herd.records.every(Plan)
    herd.records.keep(replace(plan, scoopfuls=rule))
    assert asked_for(herd, desk, qtbot, "") == [10.0]


def test_a_label_thrown_away_puts_no_line_on_the_scoop(herd: Herd, desk: Desk, qtbot: QtBot) -> None:
    signed = herd.sign("A", DENSITY)
    print_label(herd, signed)
    spoiled = print_label(herd, signed, 8.0)
    ending = SheetEnding(
        id=new_id(), farm_id=herd.farm.id, print_id=spoiled.id, ending=Ending.SPOILED, at=signed.at, by="AB"
    )
    herd.records.end_sheet(ending)
    (mark,) = herd.records.marks(sign_off_id=signed.id)
    assert lines_beside(now_on(herd), mark) == ()
    assert asked_for(herd, desk, qtbot, "") == [10.0]


def test_today_tells_and_draws_every_line_and_which_one_a_spot_fill_is_filled_to(herd: Herd, page: TodayPage) -> None:
    signed = herd.sign("A", DENSITY)
    print_label(herd, signed, 8.0)
    mark_it(herd, signed.lot_id)
    told = text_of(page)
    assert "Red scoop: 1/4 in down the wall for 10.0 oz; 15/16 in for 8.0 oz" in told
    assert "Several lines are on the scoop: fill to the one for 10.0 oz, 1/4 in down the wall." in told
    assert page.lot_card.drawing.words() == (
        "The line 1/4 in (6 mm) down the wall. 8.0 oz 15/16 in (24 mm) down the wall"
    )
    following = herd.sign("B", DENSER)
    wait_for_it(herd, following)
    assert "Red scoop bears 3 lines. Today fill to those of lot A, 1/4 in and 15/16 in down the wall; that of" in (
        text_of(page)
    )


def test_the_old_line_for_another_feeding_is_to_be_wiped_out_too(herd: Herd, page: TodayPage) -> None:
    signed = herd.sign("A", DENSITY)
    print_label(herd, signed, 8.0)
    mark_it(herd, signed.lot_id)
    following = herd.sign("B", DENSER)
    herd.records.keep(replace(herd.records.find(Lot, following.lot_id), scoops_marked=(), fed_from=TODAY))
    told = text_of(page)
    assert "the old lines (1/4 in and 15/16 in)" in told
    assert "Red scoop still bears old lines, 1/4 in and 15/16 in down the wall: wipe them out" in told
    assert page.lot_card.drawing.words().count("Wipe out") == 2
    print_label(herd, following, 8.0)
    assert "the old lines (1/4 in and 15/16 in)" in text_of(page)
    mark_it(herd, following.lot_id)
    assert "old line" not in text_of(page)


def test_the_label_s_second_line_is_told_and_drawn_before_line_and_label_are_on(herd: Herd, page: TodayPage) -> None:
    signed = herd.sign("A", DENSITY)
    herd.records.keep(replace(herd.records.find(Lot, signed.lot_id), scoops_marked=(), fed_from=TODAY))
    assert "The label has one more line to draw: 15/16 in for 8.0 oz." in text_of(page)  # it is still to be printed
    print_label(herd, signed)  # and somebody left it out
    assert "more line" not in text_of(page)
    print_label(herd, signed, 8.0)
    assert "The label has one more line to draw: 15/16 in for 8.0 oz." in text_of(page)
    assert "8.0 oz 15/16 in (24 mm) down the wall" in page.lot_card.drawing.words()
    print_label(herd, signed, 8.0, 5.0)
    assert "The label has more lines to draw: 15/16 in for 8.0 oz, " in text_of(page)
    mark_it(herd, signed.lot_id)
    assert "to draw" not in text_of(page)


def test_a_scoop_marked_by_hand_bears_the_lines_that_the_screen_told(herd: Herd, page: TodayPage) -> None:
    """No label was ever printed; the lines are kept, whatever is planned afterwards."""
    old = herd.sign("A", DENSITY)
    print_label(herd, old, 8.0)
    mark_it(herd, old.lot_id)
    signed = herd.sign("B", DENSER)
    herd.records.keep(replace(herd.records.find(Lot, signed.lot_id), scoops_marked=(), fed_from=TODAY))
    (mark,) = herd.records.marks(sign_off_id=signed.id)
    told = lines_beside(now_on(herd), mark)
    assert [round(line.target_g / OZ_G, 1) for line in told] == [8.0]
    assert "The label has one more line to draw" in text_of(page)
    mark_it(herd, signed.lot_id)
    assert "to draw" not in text_of(page)
    assert f"; {line_words(told[0].down_wall_mm, UnitSystem.FARM)} for 8.0 oz" in text_of(page)
    (plan,) = herd.records.every(Plan)
    herd.records.keep(replace(plan, groups=plan.groups[:1]))
    assert lines_beside(now_on(herd), mark) == told
    powder = powder_in_use(herd.records, now_on(herd))
    assert [way.line_g for _, way in powder.own_lines] == [pytest.approx(8 * OZ_G)]


def test_a_group_planned_since_the_old_lot_s_label_has_its_line_on_the_next_lot_s(
    herd: Herd, desk: Desk, qtbot: QtBot
) -> None:
    old = herd.sign("A", DENSITY)
    print_label(herd, replace(old, at=at_noon()), 8.0)
    (plan,) = herd.records.every(Plan)
    seven = MixingRate(basis=RateBasis.ON_WATER, powder_mass_g=7 * OZ_G, volume_ml=2 * QT_ML)
    following = herd.sign("B", DENSER)
    assert asked_for(herd, desk, qtbot, following.lot_id) == [10.0, 8.0]
    herd.records.keep(replace(plan, groups=(*plan.groups, group(3, "New", seven))))
    assert asked_for(herd, desk, qtbot, following.lot_id) == [10.0, 8.0, 7.0]


def test_the_mark_of_the_next_lot_names_and_draws_the_old_label_s_second_line(
    herd: Herd, desk: Desk, qtbot: QtBot
) -> None:
    signed = herd.sign("A", DENSITY)
    print_label(herd, signed, 8.0)
    mark_it(herd, signed.lot_id)
    next_lot = herd.records.keep(Lot(id=new_id(), farm_id=herd.farm.id, lot_number="B", product="20-20"))
    known = WeighIn(
        id=new_id(), farm_id=herd.farm.id, lot_id=next_lot.id, started_at=at_noon(), scoop_id=herd.red.id,
        scale_id=herd.scale.id, target_mass_g=10 * OZ_G, old_line_mm=7.0,
    )  # fmt: skip
    guide = Guide(herd.records, herd.records.keep(known), at_noon)
    for bag in range(1, 5):
        guide.add_fill(FillWay.LEVEL, bag, 11.4 * OZ_G, "11.4 oz")
    view = StepMark(desk)
    qtbot.addWidget(view)
    view.show_guide(guide)
    hands = view.hands.text().replace("\u00a0", " ")
    assert "Leave the old lines (1/4 in and 15/16 in) while lot A is fed to them" in hands
    assert "Old line, 8.0 oz 15/16 in (24 mm) down the wall" in view._drawing.words()


def test_the_tables_head_and_the_bar_of_two_lots_name_every_line(herd: Herd) -> None:
    signed = herd.sign("A", DENSITY)
    print_label(herd, signed, 8.0)
    marks = herd.records.marks(sign_off_id=signed.id)
    told = marks_words(marks, [herd.red], UnitSystem.FARM, now=now_on(herd)).replace("\u00a0", " ")
    assert told == "1/4 in; 15/16 in for 8.0 oz"


def counts_of(herd: Herd, number_of_group: int) -> list[str]:
    """What the table of a group says of 1, 2, 3 … calves on the screen."""
    powder = powder_in_use(herd.records, now_on(herd))
    (plan,) = herd.records.every(Plan)
    made = plan_sheet(herd.farm, replace(plan, count_from=1, count_to=4), None, powder)
    sheet = made.groups[number_of_group]
    told = (scoops_text(sheet.line(number), telling(sheet)) for number in range(4))
    return [text.replace("\u00a0", " ") for text in told]


def test_a_group_s_own_line_on_the_label_is_how_its_table_counts_and_both_tables_name_their_line(herd: Herd) -> None:
    signed = herd.sign("A", DENSITY)
    assert counts_of(herd, MILK)[1] == "2 to the line"
    assert not any("8.0 oz" in told for told in counts_of(herd, YOUNG))
    print_label(herd, signed, 8.0)
    assert counts_of(herd, MILK) == [f"{calves} to the 10.0 oz line" for calves in range(1, 5)]
    assert counts_of(herd, YOUNG) == [f"{calves} to the 8.0 oz line" for calves in range(1, 5)]
    print_label(herd, signed)
    assert counts_of(herd, MILK)[1] == "2 to the line"
    assert not any("8.0 oz" in told for told in counts_of(herd, YOUNG))


def test_the_chart_counts_by_a_group_s_own_line_unless_the_next_label_lacks_it(herd: Herd) -> None:
    signed = herd.sign("A", DENSITY)
    print_label(herd, signed, 8.0)
    (plan,) = herd.records.every(Plan)
    herd.records.keep(replace(plan, count_from=4, count_to=9))
    paper = paper_of(herd, "")
    main, *others = paper.offers(herd.red)
    young = next(offer for offer in others if round(offer.target_g / OZ_G, 1) == 8.0)

    def shown(*lines: LineOffer) -> set[str]:
        options = Options(Paper.LETTER, ("en",))
        chart = paper.job(Chosen(Want.CHART, options, plan.id, {herd.red.id: lines}, {}), at_noon(), "AB")
        assert chart is not None
        texts = (part for page in chart.document(chart.sheets).pages for part in page.items if isinstance(part, Text))
        return {text.text.replace("\u00a0", " ") for text in texts}

    assert {"to the 10.0 oz line", "TO THE 8.0 oz LINE"} <= shown(main, young)
    assert not any("8.0 oz LINE" in text for text in shown(main))


def test_a_chart_that_hangs_from_before_the_label_with_a_group_s_own_line_is_told(herd: Herd) -> None:
    """Its "15 1/2 to the line" filled to the other group's line, 41 % too much."""
    signed = herd.sign("A", DENSITY)
    (plan,) = herd.records.every(Plan)

    def faults() -> list[Fault]:
        return [found.fault for found in chart_faults(now_on(herd))]

    herd.print(PrintKind.WALL_CHART, signed, plan_id=plan.id)
    print_label(herd, signed)
    assert faults() == []  # a label with the main line alone changes no row
    print_label(herd, signed, 8.0)
    assert faults() == [Fault.LABEL]
    herd.print(PrintKind.WALL_CHART, signed, plan_id=plan.id)
    assert faults() == []
    print_label(herd, signed, 8.0)
    assert faults() == []
    print_label(herd, signed)
    assert faults() == [Fault.LABEL]
