"""What is typed beside the scale: its unit, its row, what is asked about it, and where the answer stands."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from itertools import pairwise

import pytest
from answers import Answers
from herd import OZ_G, QT_ML, group
from keys import mnemonics
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLineEdit, QPushButton, QScrollArea
from pytestqt.qtbot import QtBot
from screens import keys_twice
from speaking import speaking

from calibrator.desk import shown
from calibrator.desk.context import Desk
from calibrator.desk.guide import Guide, Missing
from calibrator.desk.pages.weigh_in import WeighInPage
from calibrator.desk.weigh_in import words
from calibrator.desk.weigh_in.fill_table import REMARK, WEIGHT
from calibrator.desk.weigh_in.findings_panel import ToMarkPanel
from calibrator.desk.weigh_in.step_fills import GLOVED_ROW_PX, StepFills
from calibrator.desk.weigh_in.step_lot import StepLot
from calibrator.desk.weigh_in.step_mark import StepMark
from calibrator.desk.weigh_in.step_sign_off import StepSignOff
from calibrator.desk.weigh_in.step_tools import StepTools
from calibrator.desk.weigh_in.workings import level_workings
from calibrator.desk.widgets.question import Question
from calibrator.desk.widgets.saying import Bubble
from calibrator.desk.window import Window
from calibrator.model import Farm, FillWay, Lot, MixingRate, Plan, RateBasis, Scale, Scoop, Step, UnitSystem, new_id
from calibrator.science.plausible import over_level, unusual_feeding

HEAD_PX = 38  # of the list of fills
LEVEL = ("11.6", "11.7", "11.8", "11.6", "11.7", "11.6", "11.8", "11.7")


def without_a_line(window: Window) -> tuple[WeighInPage, Guide, StepMark]:
    """The mark's step, all weighed and no line drawn yet."""
    page, _view = opened(window, Step.FILLS_TO_MARK)
    guide = page.guide
    assert guide is not None
    guide.set(drawn_line_mm=None, drawn_line_typed="")
    page.open_step(Step.MARK)
    mark = page._views[Step.MARK]
    assert isinstance(mark, StepMark)
    return page, guide, mark


def next_lot(window: Window) -> Lot:
    """One more lot, of which nothing is weighed yet: the next case in the same window."""
    records = window.desk.records
    one = records.every(Lot)[0]
    return records.keep(replace(one, id=new_id(), lot_number=f"{one.lot_number}-{new_id()[:4]}", revision=""))


def opened(window: Window, step: Step, lot: Lot | None = None) -> tuple[WeighInPage, StepFills]:
    """A weigh-in that has all it needs for a step of fills, with that step in view."""
    records = window.desk.records
    window.desk.initials = "MK"
    window.show_page("weigh_in", (lot or records.every(Lot)[0]).id)
    page = window.page("weigh_in")
    assert isinstance(page, WeighInPage)
    guide = page.guide
    assert guide is not None
    guide.set(
        by="MK",
        scoop_id=records.every(Scoop)[0].id,
        scale_id=records.every(Scale)[0].id,
        target_mass_g=283.5,
        target_typed="10 oz",
        scale_zeroed=True,
    )
    if step is Step.FILLS_TO_MARK:
        for text in LEVEL:
            guide.add_fill(FillWay.LEVEL, guide.next_bag(FillWay.LEVEL), float(text) * 28.349523125, f"{text} oz")
        guide.set(drawn_line_mm=13.0, drawn_line_typed="13 mm")
    page.open_step(step)
    view = page._views[step]
    assert isinstance(view, StepFills)
    return page, view


def enter(text: str) -> None:
    field = QApplication.focusWidget()
    assert isinstance(field, QLineEdit)
    QTest.keyClicks(field, text)
    QTest.keyClick(field, Qt.Key.Key_Return)


def in_grams(window: Window) -> None:
    records = window.desk.records
    records.keep(replace(records.every(Scale)[0], resolution_g=1.0, resolution_typed="1 g"))


@pytest.mark.parametrize(("mass_g", "scoopfuls", "over"), [(340.0, 1, False), (341.0, 1, True), (681.0, 2, True)])
def test_to_a_line_no_scoopful_outweighs_a_level_one(mass_g: float, scoopfuls: int, over: bool) -> None:
    assert over_level(mass_g, scoopfuls, 340.0) is over


@pytest.mark.parametrize(
    ("powder_g", "unusual"), [(60.0, True), (227.0, False), (283.5, False), (454.0, False), (2800.0, True)]
)
def test_a_feeding_ten_times_too_large_or_small_is_unusual(powder_g: float, unusual: bool) -> None:
    """Labels tell 8 to 16 oz (227 to 454 g) a feeding: common practice, no source."""
    assert unusual_feeding(powder_g) is unusual


def test_the_first_target_is_that_of_the_plan_s_largest_group_and_says_so(window: Window) -> None:
    records = window.desk.records
    (farm,) = records.every(Farm)
    eight = MixingRate(basis=RateBasis.ON_WATER, powder_mass_g=8 * OZ_G, volume_ml=2 * QT_ML)
    plan = Plan(
        id=new_id(), farm_id=farm.id, name="Milk", groups=(group(9, "Young", eight), group(25, "Old")),
        count_from=1, count_to=30, water_temperature_c=43.0,
    )  # fmt: skip
    plan = records.keep(plan)
    window.show_page("weigh_in", records.every(Lot)[0].id)
    page = window.page("weigh_in")
    assert isinstance(page, WeighInPage)
    assert page.guide is not None
    page.guide.set(by="MK")
    page.open_step(Step.SCOOP_AND_SCALE)
    view = page._views[Step.SCOOP_AND_SCALE]
    assert isinstance(view, StepTools)
    assert (view._target.text(), page.guide.weigh_in.target_mass_g) == ("10 oz", pytest.approx(10 * OZ_G))
    assert "proposed from your plan (Milk, Old)" in view._planned_says.text()
    assert view._planned_says.isVisible()
    view._target.line.setFocus()
    view._target.line.selectAll()
    enter("9 oz")
    page.open_step(Step.LOT)
    records.keep(replace(plan, groups=(group(25, "Old", eight),)))
    page.open_step(Step.SCOOP_AND_SCALE)
    assert (view._target.text(), view._planned_says.isVisible()) == ("9 oz", False)  # what is typed stays


def test_a_slip_in_the_target_weight_is_told_beneath_it(window: Window) -> None:
    page, _ = opened(window, Step.LEVEL_FILLS)
    page.open_step(Step.SCOOP_AND_SCALE)
    tools = page._views[Step.SCOOP_AND_SCALE]
    assert isinstance(tools, StepTools)
    assert tools._target_says.isHidden()
    tools._target.line.setFocus()
    tools._target.line.selectAll()
    enter("100 oz")
    assert "usually gets 5 oz to 32 oz of powder" in tools._target_says.text()
    assert tools._target_says.text().endswith("Was 10 oz meant?")
    tools._target.line.setFocus()
    tools._target.line.selectAll()
    enter("0.251 lb")
    assert tools._target_says.text().endswith("Was 0.251 kg meant?")
    tools._target.line.setFocus()
    tools._target.line.selectAll()
    enter("10 lb")  # 16 oz, a tenth of it, lies as near to what is usual
    assert tools._target_says.text().endswith("Was 10 oz meant?")
    tools._target.line.setFocus()
    tools._target.line.selectAll()
    enter("10 oz")
    assert tools._target_says.isHidden()
    assert tools._several_says.isHidden()
    tools._target.line.setFocus()
    tools._target.line.selectAll()
    enter("20 oz")
    assert "usual powder" in tools._several_says.text()  # nothing was weighed in this scoop yet
    assert not tools._several_says.isHidden()


def asks(window: Window) -> str:
    """What a question in the page asks; blank where none is in view."""
    return " ".join(one.words for one in window.findChildren(Question) if one.isVisible())


def press(window: Window, text: str) -> None:
    (found,) = (b for b in window.findChildren(QPushButton) if b.isVisible() and b.text().replace("&", "") == text)
    QTest.mouseClick(found, Qt.MouseButton.LeftButton)


def test_a_fill_to_the_line_heavier_than_a_level_one_is_asked_about(window: Window) -> None:
    page, view = opened(window, Step.FILLS_TO_MARK)
    assert page.guide is not None
    for count, by in enumerate(("button", "enter", "typed again")):
        enter("13.4")  # each one is asked about anew
        assert "more than this scoop holds struck level (11.7 oz)" in asks(window), by
        assert "meant?" not in asks(window)  # neither 13.4 g nor another decimal point makes it a scoopful
        assert view._weight.problem() == ""
        assert len(page.guide.fills_of(FillWay.TO_MARK)) == count
        if by == "button":
            press(window, "It weighs that all the same")
        else:
            enter("" if by == "enter" else "13.4")
        assert [fill.typed for fill in page.guide.fills_of(FillWay.TO_MARK)] == ["13.4"] * (count + 1), by
        assert (view._weight.text(), asks(window)) == ("", ""), by


def test_the_weight_typed_after_a_question_takes_the_place_of_the_doubted_one(window: Window) -> None:
    page, _view = opened(window, Step.FILLS_TO_MARK)
    assert page.guide is not None
    enter("13.4")
    enter("10.0")
    assert asks(window) == ""
    assert [fill.typed for fill in page.guide.fills_of(FillWay.TO_MARK)] == ["10.0"]


def test_a_bare_number_is_read_in_the_unit_of_the_scale(window: Window) -> None:
    in_grams(window)
    page, view = opened(window, Step.LEVEL_FILLS)
    assert page.guide is not None
    assert view._weight.message == "A number alone is in g."
    assert view._weight.line.placeholderText() == "like 280 g"
    enter("331")
    enter("11.6 oz")
    assert [(fill.typed, round(fill.mass_g, 1)) for fill in page.guide.fills_of(FillWay.LEVEL)] == [
        ("331 g", 331.0),
        ("11.6 oz", 328.9),
    ]
    assert [view._table.index(row, WEIGHT).data() for row in (1, 0)] == ["11.68 oz (331 g)", "11.60 oz"]
    enter("16.6")
    assert view._weight.message.endswith("Was 16.6 oz meant?")


def test_after_a_fill_is_struck_out_the_next_weight_is_typed_at_once(window: Window, answers: Answers) -> None:
    """The button that was pressed goes dark: the next Enter must not press the one beside it."""
    page, view = opened(window, Step.LEVEL_FILLS)
    guide = page.guide
    assert guide is not None
    for text in ("11.6", "13.9", "11.7"):
        enter(text)
    view._view.selectRow(1)
    view._strike.setFocus()
    QTest.keyClick(view._strike, Qt.Key.Key_Space)
    assert [fill.counts for fill in guide.fills_of(FillWay.LEVEL)] == [True, False, True]
    enter("11.8")
    assert [fill.typed for fill in guide.fills_of(FillWay.LEVEL)] == ["11.6", "13.9", "11.7", "11.8"]
    assert [fill.counts for fill in guide.fills_of(FillWay.LEVEL)] == [True, False, True, True]


def test_a_blank_field_leaves_undo_to_the_fills(window: Window) -> None:
    page, view = opened(window, Step.LEVEL_FILLS)
    assert page.guide is not None
    enter("11.6")
    QTest.keyClick(view._weight.line, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    assert [fill.counts for fill in page.guide.fills_of(FillWay.LEVEL)] == [False]
    QTest.keyClicks(view._weight.line, "11")
    QTest.keyClick(view._weight.line, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    assert view._weight.text() == ""  # its own typing first


@pytest.mark.parametrize("step", [Step.LEVEL_FILLS, Step.FILLS_TO_MARK])
@pytest.mark.parametrize("language", ["en", "es"])
def test_what_is_wrong_with_a_weight_is_told_once_beneath_it(
    qtbot: QtBot, desk: Desk, step: Step, language: str
) -> None:
    """Whole and where it is typed, with no bubble over the figures beside it; nothing moves for it."""
    with speaking(language):
        spoken = shown_in(qtbot, desk, (1280, 800))
        _page, view = opened(spoken, step)
        for size in ((1280, 800), (1024, 700)):
            spoken.resize(*size)
            QApplication.processEvents()
            refuses_each(spoken, view)
        spoken.replace_by_another()


def shown_in(qtbot: QtBot, desk: Desk, size: tuple[int, int]) -> Window:
    made = Window(desk)
    qtbot.addWidget(made)
    made.resize(*size)
    with qtbot.waitExposed(made):
        made.show()
    return made


def refuses_each(spoken: Window, view: StepFills) -> None:
    """Weights that cannot be, one typed over the other, are each answered in full; nothing moves for it."""
    fields = (view._bag, view._together, view._strike, view._undo, view._view)
    before = [field.geometry() for field in fields]
    for typed in ("116", "1.16", "3300 g", "50000", "0.4 g", "11.6.5", "1,234", "11.6 gal", "2.1 lb"):
        QTest.keyClick(view._weight.line, Qt.Key.Key_A, Qt.KeyboardModifier.ControlModifier)
        enter(typed)
        QApplication.processEvents()
        assert view._weight.text() == typed
        assert view._weight.problem(), typed
        assert view._says.fits, view._says.text()
        assert not [found for found in spoken.findChildren(Bubble) if found.isVisible()]
        assert [field.geometry() for field in fields] == before, typed


def test_a_weight_without_its_point_is_named_with_the_one_meant(window: Window) -> None:
    page, view = opened(window, Step.LEVEL_FILLS)
    assert page.guide is not None
    for typed, answer in (
        ("116", "No powder is so heavy in this scoop. Was 11.6 oz meant?"),
        ("1.16", "No powder is so light in this scoop. Was 11.6 oz meant?"),
        ("1160 oz", "1160 oz is more than this scale weighs (11 lb). Was 11.6 oz meant?"),
        ("3300 g", "No powder is so heavy in this scoop. Was 330 g meant?"),
        ("50000", "50000 oz is more than this scale weighs (11 lb). Type it again."),
    ):
        enter(typed)  # over the one that was refused
        assert (view._weight.text(), view._weight.message) == (typed, answer)
        assert page.guide.fills_of(FillWay.LEVEL) == []


def test_ounces_on_a_farm_that_weighs_in_grams_are_named_with_what_they_come_to(window: Window) -> None:
    """Else that more than the scale weighs would read as said of the grams that are offered."""
    farm = window.desk.farm
    assert farm is not None
    window.desk.attempt(lambda: window.desk.records.keep(replace(farm, units=UnitSystem.METRIC)))
    page, view = opened(window, Step.LEVEL_FILLS)
    enter("380 oz")
    assert page.guide is not None
    assert page.guide.fills_of(FillWay.LEVEL) == []
    assert view._weight.message == "380 oz (10.77 kg) is more than this scale weighs (4.99 kg). Was 380 g meant?"
    assert view._weight.say_beside("").fits


def test_once_enough_is_known_the_bag_stays(window: Window) -> None:
    page, view = opened(window, Step.FILLS_TO_MARK)
    guide = page.guide
    assert guide is not None
    for text in ("10.0", "10.1", "9.9", "10.0", "10.0", "10.1", "10.0", "9.9"):
        enter(text)
    assert guide.on_target
    assert view._bag.value() == 4


def test_enter_with_nothing_left_to_type_comes_to_next(window: Window) -> None:
    page, view = opened(window, Step.FILLS_TO_MARK)
    enter("10.0")
    enter("")
    assert view._weight.line.hasFocus()  # more are planned
    assert view._says.text()
    for text in ("10.1", "9.9", "10.0", "10.0", "10.1", "10.0", "9.9"):
        enter(text)
    enter("")
    assert page._next.hasFocus()
    assert not view._says.text()


def test_from_across_the_room_the_mean_is_named_the_line_can_be_moved_and_escape_leaves(window: Window) -> None:
    page, view = opened(window, Step.FILLS_TO_MARK)
    panel = view._panel
    assert isinstance(panel, ToMarkPanel)
    view._across.setChecked(True)
    assert panel._named.isVisible()
    assert "Fill to the line" in panel._named.text()
    for text in ("10.8", "10.9", "10.8", "10.9", "10.8", "10.9", "10.8", "10.9"):
        enter(text)
    assert panel._named.text().startswith("Mean of 8 fills, ± ")
    assert panel._verdict.isVisible()
    assert "Move the line" in panel._verdict.text()
    assert panel._move.isVisible()
    QTest.keyClick(view._weight.line, Qt.Key.Key_Escape)
    assert not window.desk.settings.now.large_figures
    assert not panel._named.isVisible()
    QTest.mouseClick(panel._move, Qt.MouseButton.LeftButton)
    assert page.guide is not None
    assert page.guide.step == Step.MARK


def test_next_asks_before_it_leaves_the_line_untried_and_sign_off_leads_back(window: Window) -> None:
    page, _view = opened(window, Step.FILLS_TO_MARK)
    guide = page.guide
    assert guide is not None
    page.next_step()
    page.next_step()  # once too often answers nothing
    assert "No fill to the line was weighed yet" in asks(window)
    assert guide.step == Step.FILLS_TO_MARK
    assert keys_twice(window) == []
    assert "O" in mnemonics(page)
    press(window, "Go on without")
    assert guide.step == Step.SIGN_OFF
    assert asks(window) == ""
    sign_off = page._views[Step.SIGN_OFF]
    assert isinstance(sign_off, StepSignOff)
    QTest.mouseClick(sign_off._fill_button, Qt.MouseButton.LeftButton)
    assert guide.step == Step.FILLS_TO_MARK
    enter("10.0")
    page.next_step()
    assert guide.step == Step.SIGN_OFF
    assert not sign_off._fill_button.isVisible()


def test_tab_from_the_last_field_of_the_lot_comes_to_next(window: Window) -> None:
    window.show_page("weigh_in", window.desk.records.every(Lot)[0].id)
    page = window.page("weigh_in")
    assert isinstance(page, WeighInPage)
    view = page._views[Step.LOT]
    assert isinstance(view, StepLot)
    QTest.keyClicks(view._initials, "MK")
    for field in (view._initials, view._humidity.line, view._temperature.line):
        assert field.hasFocus()
        QTest.keyClick(field, Qt.Key.Key_Tab)
    assert QApplication.focusWidget() is page._next


def test_next_lights_up_while_the_last_thing_needed_is_typed_and_takes_it_along(window: Window) -> None:
    """A mouse goes from the field straight to Next, which is not to be dead there."""
    window.desk.initials = ""
    window.show_page("weigh_in", window.desk.records.every(Lot)[0].id)
    page = window.page("weigh_in")
    assert isinstance(page, WeighInPage)
    assert page.guide is not None
    lot = page._views[Step.LOT]
    assert isinstance(lot, StepLot)
    lot._initials.clear()
    lot.take()
    assert (page._next.isEnabled(), page._missing.text()) == (False, "Still needed: your initials")
    QTest.keyClicks(lot._initials, "MK")
    assert (page._next.isEnabled(), page._missing.text()) == (True, "")
    QTest.mouseClick(page._next, Qt.MouseButton.LeftButton)
    assert (page.guide.step, page.guide.weigh_in.by) == (Step.SCOOP_AND_SCALE, "MK")
    tools = page._views[Step.SCOOP_AND_SCALE]
    assert isinstance(tools, StepTools)
    if not tools._zeroed.isChecked():
        tools._zeroed.click()
    tools._target.line.setFocus()
    tools._target.line.selectAll()
    QTest.keyClick(tools._target.line, Qt.Key.Key_Delete)
    tools.take()
    assert not page._next.isEnabled()
    QTest.keyClicks(tools._target.line, "9.5 oz")
    assert page._next.isEnabled()
    QTest.keyClick(page, Qt.Key.Key_Right, Qt.KeyboardModifier.AltModifier)
    assert page.guide.step is Step.LEVEL_FILLS
    assert page.guide.weigh_in.target_typed == "9.5 oz"


def test_a_line_that_was_found_wrong_is_not_offered_again(window: Window) -> None:
    page, _view = opened(window, Step.FILLS_TO_MARK)
    for text in ("10.9", "11.0", "10.9", "11.0", "10.9", "11.0"):
        enter(text)
    guide = page.guide
    assert guide is not None
    assert guide.line_should_move
    page.open_step(Step.MARK)
    mark = page._views[Step.MARK]
    assert isinstance(mark, StepMark)
    assert mark._field.text() == ""
    assert mark._drawn.text().startswith("Drawn: ")
    assert mark.pending() == ""


def test_a_weight_typed_while_next_asks_is_a_fill(window: Window) -> None:
    page, _view = opened(window, Step.FILLS_TO_MARK)
    assert page.guide is not None
    QTest.mouseClick(page._next, Qt.MouseButton.LeftButton)
    assert asks(window)
    enter("10.0")
    assert [fill.typed for fill in page.guide.fills_of(FillWay.TO_MARK)] == ["10.0"]
    assert asks(window) == ""


def test_each_key_is_one_button_s_in_spanish_too_while_next_asks_and_at_sign_off(qtbot: QtBot, desk: Desk) -> None:
    with speaking("es"):
        shown = Window(desk)
        qtbot.addWidget(shown)
        with qtbot.waitExposed(shown):
            shown.show()
        page, _view = opened(shown, Step.FILLS_TO_MARK)
        page.next_step()
        assert (asks(shown) != "", keys_twice(shown)) == (True, [])
        page._move_by(1)
        assert page.guide is not None
        assert (page.guide.step, keys_twice(shown)) == (Step.SIGN_OFF, [])
        shown.replace_by_another()


def test_next_asks_before_it_leaves_a_line_that_was_found_wrong(window: Window) -> None:
    """It names the line and the feeding that would be signed."""
    page, _view = opened(window, Step.FILLS_TO_MARK)
    guide = page.guide
    assert guide is not None
    for bag in (1, 1, 2, 2, 3, 3, 4, 4):
        guide.add_fill(FillWay.TO_MARK, bag, 9.0 * 28.349523125, "9.0 oz")
    assert guide.line_should_move
    page.next_step()
    assert "Move the line" in asks(window)
    assert "What would be signed is the line at 1/2 in" in asks(window).replace("\N{NO-BREAK SPACE}", " ")
    assert "9.0" in asks(window)
    assert guide.step == Step.FILLS_TO_MARK
    assert keys_twice(window) == []
    press(window, "Go on with this line")
    assert guide.step == Step.SIGN_OFF


def test_a_weight_with_two_digits_the_other_way_round_is_asked_about_beside_its_row(window: Window) -> None:
    """8 % off in a lot's first fills is no odd fill yet; that 363 would be like the other is told all the same."""
    in_grams(window)
    page, view = opened(window, Step.LEVEL_FILLS)
    assert page.guide is not None
    enter("363")
    assert not view._odd.isVisible()
    enter("336")
    assert page.guide.odd_fills(FillWay.LEVEL) == frozenset()
    told = view._odd.text().replace("\u00a0", " ")
    assert told.startswith("Look again at 11.85 oz (336 g): was 12.80 oz (363 g) meant?")
    assert [view._table.index(row, REMARK).data() for row in range(2)] == ["look again", ""]
    enter("338")
    enter("337")  # now it is the first one that is unlike the others
    assert [view._table.index(row, REMARK).data() for row in range(4)] == ["", "", "", "look again"]
    enter("345")
    page.guide.strike(page.guide.fills_of(FillWay.LEVEL)[0].id, "typed wrong")
    view.refresh(page.guide, fresh=False)
    assert not view._odd.isVisible()


def test_two_scoopfuls_told_as_one_are_asked_about_beside_their_row(window: Window) -> None:
    page, view = opened(window, Step.LEVEL_FILLS)
    assert page.guide is not None
    enter("11.8")
    enter("23.7")
    told = view._odd.text().replace("\u00a0", " ")
    assert told.startswith("23.7 oz looks like 2 scoopfuls. If so, strike it out")
    assert view._table.index(0, REMARK).data() == "look again"
    page.guide.strike(page.guide.fills_of(FillWay.LEVEL)[1].id, "typed wrong")
    page.guide.add_fill(FillWay.LEVEL, 2, 11.7 * 28.349523125, "11.7 oz", scoopfuls=2)
    view.refresh(page.guide, fresh=False)
    told = view._odd.text().replace("\u00a0", " ")
    assert told.startswith("11.7 oz looks like 1 scoopful.")


def test_an_odd_fill_is_marked_as_soon_as_it_is_typed(window: Window) -> None:
    """The first one of its bag, before anything else from that bag is weighed."""
    for before, odd in ((("11.6", "11.7"), "13.9"), (("11.6", "11.7", "11.8", "11.6"), "9.6")):
        _page, view = opened(window, Step.LEVEL_FILLS, next_lot(window))
        for text in before:
            enter(text)
            assert not view._odd.isVisible()
        enter(odd)
        told = [str(view._table.index(row, REMARK).data()) for row in range(view._table.rowCount())]
        assert told[0].startswith("odd")
        assert told[1:] == [""] * len(before)
        assert view._odd.text().startswith("A fill lies far from the others.")
        enter("11.7")
        assert [str(view._table.index(row, REMARK).data())[:3] for row in range(2)] == ["", "odd"]


def test_of_two_fills_far_apart_nobody_is_told_which_is_wrong_until_a_third_shows_it(window: Window) -> None:
    _page, view = opened(window, Step.LEVEL_FILLS)
    enter("11.6")
    enter("15.2")
    assert [str(view._table.index(row, REMARK).data())[:3] for row in range(2)] == ["odd", "odd"]
    assert "nothing tells yet which one" in view._odd.text()
    enter("11.7")
    assert [str(view._table.index(row, REMARK).data())[:3] for row in range(3)] == ["", "odd", ""]
    assert "nothing tells yet" not in view._odd.text()


def test_a_number_of_another_unit_is_offered(window: Window) -> None:
    page, view = opened(window, Step.LEVEL_FILLS)
    assert page.guide is not None
    for typed, offered in (
        ("11.8 lb", "Was 11.8 oz meant?"),
        ("332", "Was 332 g meant?"),
        ("11.65 g", "Was 11.65 oz meant?"),
        ("0.331", "Was 0.331 kg meant?"),
    ):
        enter(typed)  # over the one that was refused
        assert view._weight.text() == typed
        assert view._weight.message.endswith(offered), typed
        assert page.guide.fills_of(FillWay.LEVEL) == []


def test_the_example_in_the_field_is_what_was_weighed(window: Window) -> None:
    _page, view = opened(window, Step.LEVEL_FILLS)
    usual = view._weight.line.placeholderText()
    enter("14.4")
    assert view._weight.line.placeholderText() == usual.replace(usual.split()[1], "14.4")
    view._stack.undo()
    assert view._weight.line.placeholderText() == usual
    for text in ("12.4", "12.6", "17.9"):  # an odd one among them does not move it
        enter(text)
    assert view._weight.line.placeholderText() == usual.replace(usual.split()[1], "12.6")
    view._together.setValue(2)
    assert view._weight.line.placeholderText() == usual.replace(usual.split()[1], "25.2")


def test_enter_stays_in_a_field_whose_text_cannot_be_taken(window: Window) -> None:
    page, _view = opened(window, Step.LEVEL_FILLS)
    page.open_step(Step.SCOOP_AND_SCALE)
    view = page._views[Step.SCOOP_AND_SCALE]
    assert isinstance(view, StepTools)
    for field, wrong, right in ((view._target, "10 qt", "10 oz"), (view._old_line, "5 oz", "1/2 in")):
        field.setFocus()
        field.line.selectAll()
        enter(wrong)
        assert field.line.hasFocus()
        enter(right)
        assert field.text() == right
        assert not field.line.hasFocus()
    view._old_line.setFocus()
    view._old_line.line.selectAll()
    enter("9999 in")  # longer than any scoop's wall
    assert view._old_line.message.startswith("Too much: at most ")
    assert view._old_line.line.hasFocus()
    enter("1/2 in")
    page.open_step(Step.LOT)
    lot = page._views[Step.LOT]
    assert isinstance(lot, StepLot)
    lot._humidity.setFocus()
    enter("40 oz")
    assert page.guide is not None
    assert (page.guide.step, lot._humidity.line.hasFocus()) == (Step.LOT, True)
    enter("40")
    assert lot._temperature.line.hasFocus()
    enter("")
    assert page.guide.step is Step.SCOOP_AND_SCALE


def test_a_target_only_emptied_stays_with_the_line_drawn_for_it(window: Window) -> None:
    page, _view = opened(window, Step.FILLS_TO_MARK)
    guide = page.guide
    assert guide is not None
    page.open_step(Step.SCOOP_AND_SCALE)
    view = page._views[Step.SCOOP_AND_SCALE]
    assert isinstance(view, StepTools)
    told: list[str] = []
    window.desk.said.connect(told.append)
    view._target.setFocus()
    view._target.line.selectAll()
    QTest.keyClick(view._target.line, Qt.Key.Key_Backspace)
    view._scale.setFocus()
    assert "stays 10.0 oz" in told[-1]
    assert (view._target.text(), guide.weigh_in.target_typed, guide.weigh_in.drawn_line_mm) == ("10 oz", "10 oz", 13.0)
    view._target.setFocus()
    view._target.line.selectAll()
    enter("15 oz")
    assert (guide.weigh_in.target_typed, guide.weigh_in.drawn_line_mm) == ("15 oz", None)


def test_the_step_of_the_tools_opens_at_what_is_missing_and_enter_never_ticks(window: Window) -> None:
    page, _view = opened(window, Step.LEVEL_FILLS)
    guide = page.guide
    assert guide is not None
    guide.set(scale_zeroed=False, target_mass_g=None, target_typed="")
    page.reload()
    page.open_step(Step.SCOOP_AND_SCALE)
    view = page._views[Step.SCOOP_AND_SCALE]
    assert isinstance(view, StepTools)
    assert view._target.line.hasFocus()
    enter("10 oz")
    page.open_step(Step.LOT)
    page.open_step(Step.SCOOP_AND_SCALE)
    assert view._zeroed.hasFocus()
    assert not view._zero_says.isVisible()
    QTest.keyClick(view._zeroed, Qt.Key.Key_Return)
    assert (view._zeroed.isChecked(), guide.step) == (False, Step.SCOOP_AND_SCALE)
    assert view._zero_says.isVisible()
    QTest.keyClick(view._zeroed, Qt.Key.Key_Space)
    assert not view._zero_says.isVisible()
    QTest.keyClick(view._zeroed, Qt.Key.Key_Return)
    assert guide.step is Step.LEVEL_FILLS


def test_a_check_weight_is_a_round_one_in_the_unit_of_the_scale(window: Window) -> None:
    page, _ = opened(window, Step.LEVEL_FILLS)
    page.open_step(Step.SCOOP_AND_SCALE)
    view, guide = page._views[Step.SCOOP_AND_SCALE], page.guide
    assert isinstance(view, StepTools)
    assert guide is not None
    assert [f.line.placeholderText() for f in (view._nominal, view._reading)] == ["like 1 lb", "like 16 oz"]
    for field, text in ((view._nominal, "1"), (view._reading, "16.4")):
        field.setFocus()
        enter(text)
    assert (guide.weigh_in.check_nominal_typed, guide.weigh_in.check_reading_typed) == ("1 lb", "16.4 oz")
    assert "reads 0.4 oz too much" in view._scale_says.text()
    view._nominal.setFocus()
    view._nominal.line.selectAll()
    enter("16")  # ounces are meant; 16 lb are more than the scale weighs
    assert view._nominal.problem().startswith("Too much")
    assert guide.weigh_in.check_nominal_typed == "1 lb"


def test_a_scale_in_grams_reads_a_check_weight_in_grams(window: Window) -> None:
    in_grams(window)
    page, _ = opened(window, Step.LEVEL_FILLS)
    page.open_step(Step.SCOOP_AND_SCALE)
    view, guide = page._views[Step.SCOOP_AND_SCALE], page.guide
    assert isinstance(view, StepTools)
    assert guide is not None
    assert [f.line.placeholderText() for f in (view._nominal, view._reading)] == ["like 500 g"] * 2
    view._reading.setFocus()
    enter("499")
    assert (guide.weigh_in.check_reading_g, guide.weigh_in.check_reading_typed) == (499.0, "499 g")


def test_a_check_weight_typed_a_place_off_is_not_corrected_for(window: Window) -> None:
    """50 for 500: all weights would be told nine tenths too heavy, and the line be drawn for half the powder."""
    in_grams(window)
    page, _ = opened(window, Step.LEVEL_FILLS)
    page.open_step(Step.SCOOP_AND_SCALE)
    view, guide = page._views[Step.SCOOP_AND_SCALE], page.guide
    assert isinstance(view, StepTools)
    assert guide is not None
    view._nominal.setFocus()
    enter("500")
    view._reading.setFocus()
    enter("50")
    assert "hardly meant" in view._scale_says.text()
    assert guide.missing(Step.SCOOP_AND_SCALE) == (Missing.CHECK_WEIGHT,)
    assert Step.LEVEL_FILLS not in guide.reachable()
    view._reading.setFocus()
    view._reading.line.selectAll()
    enter("490")
    assert "too little" in view._scale_says.text()
    assert Step.LEVEL_FILLS in guide.reachable()


def test_scoopfuls_weighed_together_are_told_as_the_list_shows_them(window: Window) -> None:
    page, view = opened(window, Step.LEVEL_FILLS)
    assert page.guide is not None
    page.guide.add_fill(FillWay.LEVEL, 1, 331.0, "331 g")
    page.reload()
    assert view._panel._interval.text().startswith("mean of 1 bag, 1 fill\n")
    page.guide.add_fill(FillWay.LEVEL, 2, 662.0, "662 g", 2)
    page.reload()
    assert view._table.rowCount() == 2
    assert view._panel._interval.text().startswith("mean of 2 bags, 2 weighings, 3 scoopfuls\n")
    assert view._panel._named.text().startswith("Mean of 2 weighings, 3 scoopfuls, ±")
    assert view._panel._figure.text() == "11.7 oz"  # 331 g; its interval bears no hundredths as the scale shows


def test_fills_to_the_first_try_are_told_apart_from_those_in_the_list(window: Window) -> None:
    """By the name that the drawing of the line gives it."""
    page, view = opened(window, Step.FILLS_TO_MARK)
    guide = page.guide
    assert guide is not None
    for text in ("10.8", "10.9", "10.8", "10.9", "10.8", "10.9", "10.8", "10.9"):
        enter(text)
    assert "first try" not in view._panel._interval.text()
    guide.take_next_line()
    guide.set(drawn_line_mm=16.0, drawn_line_typed="16 mm")
    page.open_step(Step.FILLS_TO_MARK)
    enter("10.0")
    assert view._table.rowCount() == 1
    assert view._panel._interval.text().startswith("mean of 4 bags, 9 fills, 8 of them to the first try\n")


@pytest.mark.parametrize("step", [Step.LEVEL_FILLS, Step.FILLS_TO_MARK])
def test_beside_next_it_says_that_going_on_is_early(window: Window, step: Step) -> None:
    page, _view = opened(window, step)
    if step is Step.LEVEL_FILLS:
        enter("11.6")
        assert page._missing.text().startswith("Still needed: ")
        enter("11.7")
        assert page._missing.text() == "Early: 6 fills and 3 bags are still planned. You can go on all the same."
    else:
        told = "Early: 8 fills from the 4 open bags are still planned. You can go on all the same."
        assert page._missing.text() == told
        enter("10.0")
        enter("10.0")
    for text in ("11.6", "11.7", "11.6") if step is Step.LEVEL_FILLS else ("9.9", "10.0", "9.9"):
        enter(text)
    more = "3 fills and 1 bag" if step is Step.LEVEL_FILLS else "3 fills from the open bags, 1 of them without any"
    assert page._missing.text() == f"Early: {more} are still planned. You can go on all the same."
    assert page._next.property("kind") == ""
    for text in ("11.7", "11.6", "11.7") if step is Step.LEVEL_FILLS else ("10.0", "9.9", "10.0"):
        enter(text)
    assert page._missing.text() == ""
    assert page._next.property("kind") == "main"


def test_what_is_known_and_what_is_wanted_never_read_alike_while_they_differ(window: Window) -> None:
    """“1 more fill would do” beside two equal figures was not believed."""
    page, _view = opened(window, Step.LEVEL_FILLS)
    enter("11.6")
    enter("11.7")
    assert page.guide is not None
    level = page.guide.findings.level
    assert level is not None
    advice = replace(level.advice, half_width_g=0.1844 * 28.349523125, wanted_half_width_g=0.1801 * 28.349523125)
    told = words.wanted_words(replace(level, advice=advice), UnitSystem.FARM)
    assert told == "Known within ± 0.184 oz; within ± 0.180 oz is wanted."


def test_a_short_answer_beside_a_field_stands_at_its_middle(window: Window) -> None:
    page, _ = opened(window, Step.LEVEL_FILLS)
    page.open_step(Step.SCOOP_AND_SCALE)
    tools = page._views[Step.SCOOP_AND_SCALE]
    assert isinstance(tools, StepTools)
    tools._target.set_typed("250 g")
    said = tools._target._message
    assert said.text() == "= 8.82 oz (250 g)"
    picture = said.grab().toImage()
    ground = picture.pixel(0, 0)
    inked = [y for y in range(picture.height()) if any(picture.pixel(x, y) != ground for x in range(60))]
    middle = said.mapTo(tools, QPoint(0, (inked[0] + inked[-1]) // 2)).y()
    line = tools._target.line
    assert abs(middle - line.mapTo(tools, line.rect().center()).y()) <= 4


def test_the_key_of_the_plot_tells_what_the_shapes_are(window: Window) -> None:
    page, view = opened(window, Step.LEVEL_FILLS)
    assert page.guide is not None
    enter("11.6")
    assert "a shape for each bag" in view._plot._key.text()
    assert "struck out" not in view._plot._key.text()
    page.guide.strike(page.guide.fills_of(FillWay.LEVEL)[0].id, "spilled")
    page.reload()
    assert view._plot._key.text() == "struck out"
    enter("11.6")
    enter("11.7")
    assert view._plot._key.text().endswith("; struck out")
    page.guide.strike(page.guide.add_fill(FillWay.LEVEL, 2, 450.0, "450 g").id, "spilled")
    page.guide.restore(page.guide.fills_of(FillWay.LEVEL)[0].id)
    page.reload()
    assert "struck out" not in view._plot._key.text()  # 450 g lies far above all that is drawn


def test_the_reach_of_the_proposed_line_is_told_in_weight_alone(window: Window) -> None:
    """As a length it is rounded up to a division, which weighs another figure than that beside it."""
    page, _view = opened(window, Step.FILLS_TO_MARK)
    assert page.guide is not None
    records = window.desk.records
    page.open_step(Step.MARK)
    mark = page._views[Step.MARK]
    assert isinstance(mark, StepMark)
    for system in UnitSystem:
        records.keep(replace(page.guide.farm, units=system))
        window.desk.changed.emit()
        told = mark._why.text().replace("\N{NO-BREAK SPACE}", " ")
        step = "1/16 in" if system is UnitSystem.FARM else "1 mm"
        assert told.count(step) == 1
        assert f"at 95 %. A line {step} higher or lower makes a feeding " in told


@pytest.mark.parametrize("language", ["en", "es"])
def test_before_the_first_weight_it_says_what_will_stand_there_and_nothing_jumps_when_it_comes(
    qtbot: QtBot, desk: Desk, language: str
) -> None:
    with speaking(language):
        sizes = ((1280, 800), (1024, 740), (1024, 700))
        sizes = sizes if language == "en" else sizes[::-1]  # the tightest first, where nothing was in view before
        shown = shown_in(qtbot, desk, sizes[0])
        for size in sizes:
            shown.resize(*size)
            for step in (Step.LEVEL_FILLS, Step.FILLS_TO_MARK):
                first_weight_moves_nothing(qtbot, shown, step)
        shown.replace_by_another()


def first_weight_moves_nothing(qtbot: QtBot, shown: Window, step: Step) -> None:
    """In a weigh-in of its own, at the size that the window has."""
    _page, view = opened(shown, step, next_lot(shown))
    panel, plot = view._panel, view._plot
    coming = (panel._coming, panel._coming_too, plot._hint, view._listed)
    there = (panel._figure, panel._interval, plot._plot)
    qtbot.wait(10)
    assert all(one.isVisible() and one.text() for one in coming)
    assert not any(one.isVisible() for one in there)
    parts = (view._weight, view._bag, view._undo, view._view, panel, plot)
    before = [part.geometry() for part in parts]
    enter("11.7" if step is Step.LEVEL_FILLS else "10.0")
    qtbot.wait(10)
    assert [part.geometry() for part in parts] == before, (shown.size(), step)
    assert not any(one.isVisible() for one in coming)
    assert all(one.isVisible() for one in there)


def test_what_keeps_the_room_of_the_first_weight_is_kept_nowhere(window: Window) -> None:
    page, view = opened(window, Step.LEVEL_FILLS)
    assert page.guide is not None
    assert page.guide.with_a_first_fill(FillWay.LEVEL).findings.level is not None
    assert page.guide.findings.level is None
    assert page.desk.records.fills(page.guide.weigh_in.id) == []
    view._across.setChecked(True)
    assert view._panel._named.text() == "Two fills from each of four bags."
    assert not view._panel._figure.isVisible()
    enter("11.6")
    assert view._panel._figure.isVisible()
    assert view._panel._named.text().startswith("Mean of 1 fill, ±")


def test_of_a_signed_weigh_in_nothing_is_promised_where_nothing_was_weighed(window: Window) -> None:
    page, view = opened(window, Step.FILLS_TO_MARK)
    guide = page.guide
    assert guide is not None
    guide.sign_off("MK")
    page.open_step(Step.FILLS_TO_MARK)
    assert view._panel._coming.text() == "Nothing was weighed here."
    assert not view._listed.isVisible()
    assert view._plot._hint.text() == ""


def test_what_is_signed_off_looks_like_it_before_anything_is_typed(window: Window) -> None:
    page, view = opened(window, Step.FILLS_TO_MARK)
    guide = page.guide
    assert guide is not None
    assert view._entry_card.isVisible()
    assert not view.closed.isVisible()
    view._across.setChecked(True)
    guide.sign_off("MK")
    for step in (Step.SCOOP_AND_SCALE, Step.LEVEL_FILLS, Step.MARK, Step.FILLS_TO_MARK):
        page.open_step(step)
        shown = page._views[step]
        assert shown.closed.isVisible()
        assert not shown.hands.isVisible()
        assert not [line for line in shown.findChildren(QLineEdit) if line.isVisible() and line.isEnabled()]
        pressed = [one for one in shown.findChildren(QPushButton) if one.isVisible() and one.isEnabled()]
        assert all(one.property("kind") == "link" for one in pressed)
    assert view._view.isVisible()  # the fills, though the weigh-in was read from across the room
    assert window.desk.settings.now.large_figures
    page.open_step(Step.SIGN_OFF)
    assert [one for one in page._views[Step.SIGN_OFF].findChildren(QPushButton) if one.isVisible() and one.isEnabled()]


def test_the_next_weigh_in_is_open_again_after_one_that_was_signed(window: Window) -> None:
    page, _ = opened(window, Step.FILLS_TO_MARK)
    guide = page.guide
    assert guide is not None
    guide.sign_off("MK")
    page.open_step(Step.LEVEL_FILLS)
    level = page._views[Step.LEVEL_FILLS]
    assert level.closed.isVisible()
    lot = window.desk.records.keep(Lot(id=new_id(), farm_id=guide.lot.farm_id, lot_number="next"))
    page.open(lot.id)
    assert page.guide is not guide
    page.open_step(Step.SCOOP_AND_SCALE)
    tools = page._views[Step.SCOOP_AND_SCALE]
    assert tools.hands.isVisible()
    assert not tools.closed.isVisible()
    assert all(line.isEnabled() for line in tools.findChildren(QLineEdit) if line.isVisible())


def begun(window: Window) -> WeighInPage:
    window.show_page("weigh_in", window.desk.records.every(Lot)[0].id)
    page = window.page("weigh_in")
    assert isinstance(page, WeighInPage)
    return page


@pytest.mark.parametrize("way", ["next", "keys", "strip"])
def test_initials_and_a_target_just_typed_let_one_go_on(window: Window, way: str) -> None:
    """Next was dark until their field was left, and a click on a dark button leaves none."""
    page = begun(window)
    guide = page.guide
    assert guide is not None
    records = window.desk.records
    guide.set(scoop_id=records.every(Scoop)[0].id, scale_id=records.every(Scale)[0].id, scale_zeroed=True)

    def on(step: Step) -> None:
        if way == "next":
            QTest.mouseClick(page._next, Qt.MouseButton.LeftButton)
        elif way == "keys":
            QTest.keyClick(window, Qt.Key.Key_Right, Qt.KeyboardModifier.AltModifier)
        else:
            strip = page._strip
            QTest.mouseClick(strip, Qt.MouseButton.LeftButton, pos=QPoint(int(strip._x(list(Step).index(step))), 15))
        assert guide.step is step

    assert page._missing.text() == "Still needed: your initials"
    QTest.keyClicks(QApplication.focusWidget(), "MK")
    assert page._missing.text() == ""
    assert page._next.isEnabled()
    on(Step.SCOOP_AND_SCALE)
    assert guide.weigh_in.by == "MK"
    assert page._missing.text() == "Still needed: the target weight"
    tools = page._views[Step.SCOOP_AND_SCALE]
    assert isinstance(tools, StepTools)
    tools._target.setFocus()
    QTest.keyClicks(tools._target.line, "10 oz")
    assert page._missing.text() == ""
    on(Step.LEVEL_FILLS)
    assert guide.weigh_in.target_typed == "10 oz"


def test_a_click_on_a_step_that_cannot_be_opened_yet_says_why(window: Window) -> None:
    page = begun(window)
    told: list[str] = []
    window.desk.said.connect(told.append)
    strip = page._strip
    QTest.mouseClick(strip, Qt.MouseButton.LeftButton, pos=QPoint(int(strip._x(2)), 15))
    assert told == ["Still needed: your initials"]
    assert page.guide is not None
    assert page.guide.step is Step.LOT


def test_a_weight_typed_and_not_entered_is_not_left_behind(window: Window) -> None:
    page, view = opened(window, Step.LEVEL_FILLS)
    guide = page.guide
    assert guide is not None
    for text in ("11.6", "11.7", "11.6"):
        enter(text)
    QTest.keyClicks(view._weight.line, "11.7")
    page.next_step()
    assert guide.step is Step.LEVEL_FILLS
    assert view._weight.message == "Not entered yet: press Enter, or clear it."
    page.open_step(Step.MARK)
    assert guide.step is Step.LEVEL_FILLS
    enter("")
    page.next_step()
    assert guide.step is Step.MARK
    assert len(guide.fills_of(FillWay.LEVEL)) == 4


def test_a_line_typed_and_not_entered_is_taken_by_next(window: Window) -> None:
    page, guide, mark = without_a_line(window)
    assert not page._next.isEnabled()
    mark._field.setFocus()
    QTest.keyClicks(mark._field.line, "1/2 in")
    QTest.mouseClick(page._next, Qt.MouseButton.LeftButton)
    assert (guide.weigh_in.drawn_line_typed, guide.step) == ("1/2 in", Step.FILLS_TO_MARK)
    page.open_step(Step.MARK)
    mark._field.setFocus()
    mark._field.line.selectAll()
    QTest.keyClicks(mark._field.line, "20 in")
    QTest.mouseClick(page._next, Qt.MouseButton.LeftButton)
    assert (guide.weigh_in.drawn_line_typed, guide.step) == ("1/2 in", Step.MARK)
    assert mark._field.problem()


def test_the_level_fills_need_no_scrolling_on_a_small_old_monitor(window: Window) -> None:
    """Frame and task bar leave 1016 by 670 of it; the list scrolls by itself."""
    window.resize(1016, 670)
    page, view = opened(window, Step.LEVEL_FILLS)
    area = page._areas[Step.LEVEL_FILLS].content
    assert isinstance(area, QScrollArea)
    for text in ("", *LEVEL):
        if text:
            enter(text)
        QApplication.processEvents()
        assert area.verticalScrollBar().maximum() == 0
        assert view._view.height() >= 124


def test_of_a_line_that_is_wrong_no_further_scoopful_is_foretold(window: Window) -> None:
    _page, view = opened(window, Step.FILLS_TO_MARK)
    enter("10.0")
    assert view._panel._next.isVisible()
    for text in ("10.8", "10.9", "10.8", "10.9", "10.8", "10.9", "10.8", "10.9"):
        enter(text)
    assert not view._panel._next.isVisible()


def test_a_scale_that_was_off_before_is_to_be_checked_again(window: Window) -> None:
    """Else a corrected lot stands beside one that is not, and their densities differ by the scale's error."""
    page, _ = opened(window, Step.LEVEL_FILLS)
    assert page.guide is not None
    page.guide.set(
        check_nominal_g=500.0, check_nominal_typed="500 g", check_reading_g=510.0, check_reading_typed="510 g"
    )
    page, _ = opened(window, Step.LEVEL_FILLS, next_lot(window))
    guide = page.guide
    assert guide is not None
    guide.set(started_at=guide.weigh_in.started_at + timedelta(days=1))
    page.open_step(Step.SCOOP_AND_SCALE)
    view = page._views[Step.SCOOP_AND_SCALE]
    assert isinstance(view, StepTools)
    told = view._scale_says.text().replace("\u00a0", " ")
    assert told.startswith("At the weigh-in before, this scale showed 18.0 oz (510 g) for 17.6 oz (500 g).")
    guide.set(check_nominal_g=500.0, check_reading_g=500.0)
    page.reload()
    assert view._scale_says.text().startswith("The scale reads the check weight right")
    step_g = guide.scale.resolution_g if guide.scale else 0.0
    guide.set(check_nominal_g=500.0, check_reading_g=500.0 + step_g)
    page.reload()
    assert "too much, within what its display tells" in view._scale_says.text()  # "right" would be untrue


def test_a_mean_that_is_corrected_for_the_scale_says_so(window: Window) -> None:
    """16 oz shown as 15.8: 11.6 and 11.8 mean 11.85 oz, which would be wondered at beside the list."""
    page, view = opened(window, Step.LEVEL_FILLS)
    guide = page.guide
    assert guide is not None
    enter("11.6")
    sign_off = page._views[Step.SIGN_OFF]
    assert isinstance(sign_off, StepSignOff)
    assert "for the scale" not in view._panel._interval.text()
    for reading, told in (("15.8", "0.15 oz added for the scale"), ("16.2", "0.14 oz taken off for the scale")):
        grams = {name: 28.349523125 * float(text) for name, text in (("nominal", "16"), ("reading", reading))}
        guide.set(check_nominal_g=grams["nominal"], check_reading_g=grams["reading"])
        page.reload()
        assert told in view._panel._interval.text()
        assert told in dict(sign_off._rows(guide, None))["Struck level"]
        result = guide.findings.level
        assert result is not None
        (weighing, *_rest) = level_workings(guide)
        results = {part.what: part.result for part in weighing.parts}
        assert results["Mean of the bags"] == results["Bag 1"]
        assert results["Corrected for the scale"] != results["Bag 1"]
        (point,) = view._plot._points.points()
        assert point.pos().y() * 28.349523125 == pytest.approx(result.mean_g)
        assert "corrected" in view._plot._key.text()


def test_what_is_said_of_an_odd_fill_squeezes_no_field(window: Window) -> None:
    for size in ((1016, 670), (1016, 700), (1280, 800)):
        window.resize(*size)
        _page, view = opened(window, Step.LEVEL_FILLS, next_lot(window))
        parts = (view._weight.line, view._bag, view._strike)
        QApplication.processEvents()
        before = [part.size() for part in parts]
        for text in ("11.6", "11.8", "15.2"):
            enter(text)
        QApplication.processEvents()
        assert view._odd.isVisible()
        assert [part.size().height() for part in parts] == [size.height() for size in before]
        assert view._view.height() >= (124 if size[1] < 700 else HEAD_PX + 4 * GLOVED_ROW_PX)
        for above, below in pairwise((view._weight.line, view._bag, view._view, view._strike)):
            tops = [part.mapTo(view, QPoint(0, 0)).y() for part in (above, below)]
            assert tops[0] + above.height() <= tops[1], size


@pytest.mark.parametrize("step", [Step.LEVEL_FILLS, Step.FILLS_TO_MARK])
def test_what_is_told_never_makes_the_page_around_the_list_scroll(window: Window, step: Step) -> None:
    """The smallest window, a word across its top, an odd fill: the list scrolls and no page around it."""
    window.resize(1024, 700)
    page, view = opened(window, step)
    window._away.setText("The server is away; what is entered waits here.")
    window._away.show()
    for text in ("11.6", "11.8", "15.2") if step is Step.LEVEL_FILLS else ("10.0", "10.1", "7.2"):
        enter(text)
        if view._weight.text():
            enter("")  # questioned first
    QApplication.processEvents()
    area = page._areas[step].content
    assert isinstance(area, QScrollArea)
    assert view._odd.isVisible()
    assert area.verticalScrollBar().maximum() == 0
    assert view._view.height() >= 124
    assert not view._question.isVisible()


def test_the_keys_go_from_the_fields_to_the_list_and_then_to_its_buttons(window: Window) -> None:
    _page, view = opened(window, Step.LEVEL_FILLS)
    enter("11.6")
    view._view.selectRow(0)
    view._together.setFocus()
    for then in (view._view, view._strike, view._undo):
        QTest.keyClick(QApplication.focusWidget(), Qt.Key.Key_Tab)
        assert QApplication.focusWidget() is then


def test_next_does_not_answer_whether_a_line_far_off_is_really_there(window: Window) -> None:
    page, guide, mark = without_a_line(window)
    mark._field.setFocus()
    QTest.keyClicks(mark._field.line, "3 in")
    for _ in range(3):
        QTest.mouseClick(page._next, Qt.MouseButton.LeftButton)
        page.next_step()
    assert "Is the line really there?" in asks(window)
    assert not page._next.isEnabled()
    assert guide.weigh_in.drawn_line_mm is None
    press(window, "The line is there all the same")
    assert guide.weigh_in.drawn_line_typed == "3 in"
    assert guide.step is Step.FILLS_TO_MARK


def test_a_weight_that_is_asked_about_stays_in_view_with_the_question(window: Window) -> None:
    window.resize(1016, 670)
    page, view = opened(window, Step.FILLS_TO_MARK)
    enter("13.4")
    for _ in range(4):
        QApplication.processEvents()
    area = page._areas[Step.FILLS_TO_MARK].content
    assert isinstance(area, QScrollArea)
    seen = area.viewport().rect()
    for part in (view._weight.line, view._question._words, view._question._yes):
        assert seen.contains(part.rect().translated(part.mapTo(area.viewport(), QPoint(0, 0)))), part
    assert view._question._words.width() > 300


def test_a_weight_cleared_away_is_not_called_for(window: Window) -> None:
    page, view = opened(window, Step.FILLS_TO_MARK)
    QTest.keyClicks(view._weight.line, "10.1")
    page.next_step()
    assert view._weight.message.startswith("Not entered yet")
    view._weight.line.selectAll()
    QTest.keyClick(view._weight.line, Qt.Key.Key_Backspace)
    view._bag.setFocus()
    assert "Type a value" not in view._weight.message
    page.next_step()
    assert asks(window)


def test_tab_into_the_fills_chooses_the_newest(window: Window) -> None:
    _page, view = opened(window, Step.LEVEL_FILLS)
    for text in ("11.6", "11.7", "11.8"):
        enter(text)
    view._redo.setFocus()
    view._view.setFocus(Qt.FocusReason.TabFocusReason)
    assert [index.row() for index in view._view.selectionModel().selectedRows()] == [0]
    QTest.keyClick(view._view, Qt.Key.Key_Down)
    assert [index.row() for index in view._view.selectionModel().selectedRows()] == [1]
    view._weight.setFocus()
    view._view.setFocus(Qt.FocusReason.TabFocusReason)
    assert [index.row() for index in view._view.selectionModel().selectedRows()] == [1]


def found_wrong(window: Window) -> tuple[WeighInPage, Guide, StepMark]:
    """Eight fills to a line that has to move, and its place looked at, as by the key of the button."""
    page, _view = opened(window, Step.FILLS_TO_MARK)
    guide = page.guide
    assert guide is not None
    for _ in range(8):
        guide.add_fill(FillWay.TO_MARK, guide.next_bag(FillWay.TO_MARK), 9.0 * 28.349523125, "9 oz")
    page.reload()
    assert keys_twice(window) == []
    press(window, "See where to draw it")
    assert guide.step == Step.MARK
    mark = page._views[Step.MARK]
    assert isinstance(mark, StepMark)
    return page, guide, mark


def test_a_weight_typed_on_where_a_line_moves_is_kept_in_view_and_confirms_no_line(window: Window) -> None:
    _page, guide, mark = found_wrong(window)
    button = QApplication.focusWidget()
    assert button is mark._as_proposed  # the likeliest is the first stop
    QTest.keyClick(button, "8")
    enter(".1")
    assert (guide.step, guide.weigh_in.drawn_line_mm) == (Step.MARK, None)
    assert mark._field.text() == "8.1"
    assert mark._field.problem() or asks(window)


def test_enter_alone_comes_to_the_line_as_proposed_and_once_more_takes_it(window: Window) -> None:
    _page, guide, mark = found_wrong(window)
    line = guide.findings.line
    assert line is not None
    mark._field.setFocus()
    enter("")
    assert guide.weigh_in.drawn_line_mm is None
    assert mark._field.message == ""
    button = QApplication.focusWidget()
    assert isinstance(button, QPushButton)
    assert button.text() == f"&Drawn at {shown.length(line.down_wall_mm, window.desk.system)}"
    QTest.keyClick(button, Qt.Key.Key_Return)
    assert guide.weigh_in.drawn_line_mm == pytest.approx(line.down_wall_mm, abs=25.4 / 32 + 1e-9)


def test_what_was_said_of_one_lot_s_weight_is_not_said_at_the_next(window: Window) -> None:
    page, view = opened(window, Step.LEVEL_FILLS)
    enter("")
    assert view._weight.problem()
    assert view._weight.message.startswith("Type a value")
    records = window.desk.records
    other = records.keep(replace(records.every(Lot)[0], id=new_id(), lot_number="25-0409B", revision=""))
    page.open(other.id)
    assert page.guide is not None
    mk = {"by": "MK", "scoop_id": records.every(Scoop)[0].id, "scale_id": records.every(Scale)[0].id}
    page.guide.set(**mk, target_mass_g=283.5, target_typed="10 oz", scale_zeroed=True)
    page.open_step(Step.LEVEL_FILLS)
    assert not view._weight.message.startswith("Type a value")


def test_another_lot_is_chosen_by_keys_and_a_weight_not_entered_holds_that_up(window: Window) -> None:
    page, view = opened(window, Step.LEVEL_FILLS)
    QTest.keyClicks(view._weight.line, "11.6")
    press(window, "Weigh in another lot")
    assert page.guide is not None
    assert "Not entered yet" in view._weight.problem()
    view._weight.set_typed("")
    press(window, "Weigh in another lot")
    assert page.guide is None
    button = QApplication.focusWidget()
    assert isinstance(button, QPushButton)
    assert button.text() == "Go on"


@pytest.mark.parametrize("language", ["en", "es"])
def test_who_types_the_whole_feeding_is_told_to_weigh_the_last_scoopful_alone(
    qtbot: QtBot, desk: Desk, language: str
) -> None:
    with speaking(language):
        spoken = Window(desk)
        qtbot.addWidget(spoken)
        spoken.resize(1024, 700)
        with qtbot.waitExposed(spoken):
            spoken.show()
        page, view = opened(spoken, Step.FILLS_TO_MARK)
        assert page.guide is not None
        page.guide.set(target_mass_g=764.0, target_typed="764 g")
        page.guide.set(drawn_line_mm=50.0, drawn_line_typed="50 mm", step=Step.FILLS_TO_MARK)
        page.reload()
        enter("764 g")
        QApplication.processEvents()
        assert view._says.text().startswith({"en": "Weigh only the one", "es": "Pese solo la"}[language])
        assert view._says.fits, view._says.text()
        assert page.guide.fills_of(FillWay.TO_MARK) == []
        spoken.replace_by_another()


@pytest.mark.parametrize(
    ("step", "fits", "not_here"),
    [
        (Step.LEVEL_FILLS, "not struck level", "not filled to the line"),
        (Step.FILLS_TO_MARK, "not filled to the line", "not struck level"),
    ],
)
def test_the_reasons_offered_are_those_of_the_way_of_filling(
    window: Window, answers: Answers, step: Step, fits: str, not_here: str
) -> None:
    _page, view = opened(window, step)
    enter("9.9" if step is Step.FILLS_TO_MARK else "11.6")
    view._view.selectRow(0)
    view._strike.click()
    assert {fits, "was of another lot"} <= set(answers.offered[-1])
    assert not_here not in answers.offered[-1]
