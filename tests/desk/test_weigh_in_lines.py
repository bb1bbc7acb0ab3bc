"""The mark step in words and picture: which line is wiped out, how sure the new one is, what is advised."""

from __future__ import annotations

from dataclasses import replace

import pytest
from answers import at_noon
from herd import printed
from PySide6.QtWidgets import QApplication, QLabel
from pytestqt.qtbot import QtBot

from calibrator import units
from calibrator.desk.context import Desk
from calibrator.desk.guide import Guide, Missing
from calibrator.desk.shown import fine_mass
from calibrator.desk.weigh_in import line_words, words
from calibrator.desk.weigh_in.findings_panel import LevelPanel, ToMarkPanel
from calibrator.desk.weigh_in.step_mark import StepMark
from calibrator.desk.weigh_in.step_sign_off import StepSignOff
from calibrator.desk.weigh_in.words import early_words, mark_hands
from calibrator.desk.weigh_in.workings import line_workings
from calibrator.model import Cylinder, FillWay, Lot, PrintKind, Scale, Scoop, Step, UnitSystem, WeighIn, new_id
from calibrator.science.advice import MOST_MORE
from calibrator.science.mark import LineVerdict, OldLine, OldLineVerdict, fill_line, fraction_at
from calibrator.science.plausible import Doubt

LEVEL_G = (331.0, 333.0, 330.0, 332.0, 334.0, 331.0, 332.0, 333.0)


@pytest.fixture
def guide(desk: Desk) -> Guide:
    assert desk.farm is not None
    records = desk.records
    begun = records.keep(
        WeighIn(
            id=new_id(), farm_id=desk.farm.id, lot_id=records.every(Lot)[0].id, started_at=at_noon(), by="MK",
            scoop_id=records.every(Scoop)[0].id, scale_id=records.every(Scale)[0].id, scale_zeroed=True,
            target_mass_g=283.5, target_typed="10 oz", step=Step.MARK,
        )
    )  # fmt: skip
    made = Guide(records, begun, at_noon)
    for mass_g in LEVEL_G:
        made.add_fill(FillWay.LEVEL, made.next_bag(FillWay.LEVEL), mass_g, f"{mass_g} g")
    return made


@pytest.fixture
def step(qtbot: QtBot, desk: Desk, qapp: QApplication) -> StepMark:
    made = StepMark(desk)
    qtbot.addWidget(made)
    return made


def test_a_fill_of_double_weight_foretells_nothing_and_is_called_wrong(
    desk: Desk, qtbot: QtBot, guide: Guide, qapp: QApplication
) -> None:
    panel = LevelPanel()
    qtbot.addWidget(panel)
    panel.show_findings(guide, UnitSystem.FARM)
    assert panel._next.text().startswith("One more scoopful may weigh")
    for fill in guide.known.fills[2:]:
        guide.strike(fill.id, "spilled")
    guide.add_fill(FillWay.LEVEL, guide.next_bag(FillWay.LEVEL), 2 * LEVEL_G[0], "double")
    panel.show_findings(guide, UnitSystem.FARM)
    level = guide.findings.level
    assert level is not None
    assert level.next_low_g < 0  # Student's t of two degrees of freedom is 4.3
    assert panel._next.text() == "The fills lie so far apart that one of them looks wrong."
    told = [one.text() for one in panel.findChildren(QLabel)]
    assert not [text for text in told if "\N{MINUS SIGN}" in text or "-" in text], told


def test_only_a_line_that_is_there_is_wiped_out(guide: Guide, step: StepMark) -> None:
    step.show_guide(guide)
    assert "Wipe out" not in step.hands.text()
    assert "Old line" not in step._drawing.words()
    guide.set(old_line_mm=20.0, old_line_typed="20 mm")
    step.show_guide(guide)
    assert step.hands.text().endswith("Wipe out the old line, or strike it through.")
    assert "Old line" in step._drawing.words()


def test_a_moved_line_is_the_one_to_wipe_out(guide: Guide, step: StepMark) -> None:
    guide.set(old_line_mm=40.0, old_line_typed="40 mm", drawn_line_mm=22.0, drawn_line_typed="22 mm")
    step.show_guide(guide)
    assert not step._old_card.isHidden()
    for bag in (1, 2, 3, 4):
        for mass_g in (262.0, 263.0):
            guide.add_fill(FillWay.TO_MARK, bag, mass_g, f"{mass_g} g")
    assert guide.line_should_move
    assert guide.line_to_wipe_mm == 40.0  # that of the fills is the one that holds
    guide.take_next_line()
    assert guide.line_to_wipe_mm == 22.0
    step.show_guide(guide)
    assert step._old_card.isHidden()  # it tells of no line but the one in the picture
    assert step._keep_old.isHidden()
    assert "Wipe out the line drawn first for this lot." in step.hands.text()  # and not that of the lot before
    assert "First try" in step._drawing.words()
    assert "moves up" in step._drawing.words()
    guide.set(drawn_line_mm=17.0, drawn_line_typed="17 mm")
    assert early_words(guide, Step.FILLS_TO_MARK).startswith("Early: two fills to this line are wanted")


def test_why_a_line_inside_the_tolerance_is_moved_is_said(guide: Guide) -> None:
    guide.set(drawn_line_mm=16.0, drawn_line_typed="16 mm")
    for bag in (1, 2, 3, 4):
        for mass_g in (288.7, 289.1):
            guide.add_fill(FillWay.TO_MARK, bag, mass_g, f"{mass_g} g")
    check = guide.findings.check
    assert check is not None
    assert check.verdict is LineVerdict.MOVE
    assert abs(check.mean_g - 283.5) < check.tolerance_g
    told = line_words.check_reason(check, guide, UnitSystem.METRIC)
    assert "inside it, but each feeding of the lot would stay 1.9 % too much; with the new line" in told


def test_a_feeding_never_reads_as_on_the_other_side_of_the_tolerance(guide: Guide, qtbot: QtBot) -> None:
    """283.5 g ± 2 % begins at 277.8 g: 277.6 g is beneath it, and as 278 g would seem to be within."""
    guide.set(drawn_line_mm=16.0, drawn_line_typed="16 mm")
    for bag in (1, 2):
        for mass_g in (274.6, 280.6):
            guide.add_fill(FillWay.TO_MARK, bag, mass_g, f"{mass_g} g")
    panel = ToMarkPanel(lambda: None)
    qtbot.addWidget(panel)
    panel.show_findings(guide, UnitSystem.METRIC)
    assert panel._figure.text() == "277.6 g"
    check = guide.findings.check
    assert check is not None
    assert "A feeding weighs 277.6 g, between" in line_words.tolerance_words(check, guide, UnitSystem.METRIC)


def test_full_scoops_are_told_in_the_picture(guide: Guide, step: StepMark) -> None:
    guide.set(target_mass_g=510.0, target_typed="18 oz")
    step.show_guide(guide)
    assert "before it, struck level: 1" in step._drawing.words()
    guide.set(target_mass_g=283.5, target_typed="10 oz")
    step.show_guide(guide)
    assert "struck level" not in step._drawing.words()


@pytest.mark.parametrize(("target_g", "count"), [(331.0, 1), (335.0, 1), (660.0, 2), (668.0, 2)])
def test_level_scoopfuls_alone_are_proposed_where_no_line_could_be_read(
    guide: Guide, step: StepMark, qtbot: QtBot, target_g: float, count: int
) -> None:
    """A scoop that holds the feeding, or half of it, within the tolerance: no line, and a way on."""
    guide.set(target_mass_g=target_g, target_typed=f"{target_g} g", old_line_mm=20.0, old_line_typed="20 mm")
    step.show_guide(guide)
    share = 100 * (count * 332.0 / target_g - 1)  # the mean of the fills is 332 g
    assert f"{count} level scoopful" in step._where.text()
    assert f"{abs(share):.1f}\N{NO-BREAK SPACE}%" in step._where.text() or f"{abs(share):.1f} %" in step._where.text()
    assert (step._as_proposed.text(), step._as_proposed.isEnabled()) == ("&Use it level", True)
    assert f"struck level: {count}" in step._drawing.words()
    assert "strike it level" in step.hands.text()
    with qtbot.waitSignal(step.wanted) as asked:
        step._as_proposed.click()
    assert asked.args == [Step.SIGN_OFF]
    assert guide.struck_level
    assert not guide.line_untried
    assert guide.missing(Step.MARK) == ()
    step.show_guide(guide)
    assert step._drawn.text() == "Struck level, without a line."


def test_only_the_scoopful_to_the_line_is_weighed_and_its_weight_is_told(guide: Guide) -> None:
    guide.set(drawn_line_mm=13.0, drawn_line_typed="13 mm")
    assert "Weigh only" not in mark_hands(guide)
    guide.set(target_mass_g=510.0, target_typed="18 oz")
    line = guide.findings.line
    assert line is not None
    assert line.full_scoops == 1
    told = mark_hands(guide).replace("\N{NO-BREAK SPACE}", " ")
    assert f"about {line.mass_g / 28.349523125:.2f} oz, without the level ones before it" in told


def test_before_fills_to_the_line_it_is_said_that_they_make_it_surer(guide: Guide, step: StepMark) -> None:
    step.show_guide(guide)
    assert step._why.text().endswith("Fills to the line, the next step, make it surer.")
    guide.set(drawn_line_mm=13.0, drawn_line_typed="13 mm")
    guide.add_fill(FillWay.TO_MARK, 1, 283.0, "283 g")
    step.show_guide(guide)
    assert "surer" not in step._why.text()


def test_a_moved_line_is_no_surer_than_the_fills_it_rests_on(guide: Guide, step: StepMark) -> None:
    """What a feeding to it weighs is told of the line as the ruler has it, as sure as the fills to the line are."""
    guide.set(drawn_line_mm=22.0, drawn_line_typed="22 mm")
    for bag, mass_g in ((1, 261.0), (1, 265.0), (2, 260.5), (2, 263.5)):
        guide.add_fill(FillWay.TO_MARK, bag, mass_g, f"{mass_g} g")
    check, line = guide.findings.check, guide.findings.line
    assert check is not None
    assert line is not None
    share = (check.high_g - check.low_g) / 2 / check.mean_g
    mass_g, half_g = guide.findings.to_ruled
    assert half_g == pytest.approx(share * mass_g)
    assert guide.findings.line_reach[0] == pytest.approx(share * 283.5)
    ruled_mm = units.on_line_step(line.down_wall_mm, UnitSystem.FARM)
    shape = guide.scoop.shape if guide.scoop else Cylinder(1.0, 1.0)
    assert mass_g == pytest.approx(check.mean_g * fraction_at(shape, ruled_mm) / fraction_at(shape, 22.0))
    assert abs(mass_g - 283.5) > 0.5  # the ruler has no division at the line itself
    step.show_guide(guide)
    told = step._why.text().replace("\N{NO-BREAK SPACE}", " ")
    weighs, half = (fine_mass(g, UnitSystem.FARM) for g in (mass_g, half_g))
    assert (
        f"10.0 oz a feeding is wanted. With the line there a feeding weighs {weighs}, give or take {half} at 95 %."
        in told
    )
    working = line_workings(guide)[0]
    assert any("as the fills to the line have it" in part.working for part in working.parts)


def test_a_first_line_is_told_as_the_ruler_has_it(guide: Guide) -> None:
    line = guide.findings.line
    assert line is not None
    mass_g, half_g = guide.findings.to_ruled
    ruled = guide.delivers(units.on_line_step(line.down_wall_mm, UnitSystem.FARM))
    assert ruled is not None
    assert (mass_g, 2 * half_g) == (pytest.approx(ruled.delivers_g), pytest.approx(ruled.high_g - ruled.low_g))
    assert half_g == pytest.approx(guide.findings.line_reach[0], rel=0.01)


def test_a_line_is_never_off_by_nothing(guide: Guide, step: StepMark, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(guide, "findings", replace(guide.findings, to_ruled=(283.0, 1.0)))
    step.show_guide(guide)
    assert "give or take 0.04 oz at 95 %" in step._why.text().replace("\N{NO-BREAK SPACE}", " ")


@pytest.mark.parametrize(
    ("by_level", "more", "reach", "told"),
    [
        (OldLineVerdict.MOVE, MOST_MORE, False, "does not do for this lot: draw the new line. With the old line"),
        (OldLineVerdict.KEEP, MOST_MORE, False, "it would do. Only how this powder settles"),
        (OldLineVerdict.WEIGH_MORE, 4, True, "weigh 4 more level fills"),
        (OldLineVerdict.WEIGH_MORE, 13, True, "Weigh fills to the old line first: they tell whether it can stay."),
        (
            OldLineVerdict.WEIGH_MORE,
            MOST_MORE,
            False,
            "Weigh fills to the old line first: they tell whether it can stay.",
        ),
    ],
)
def test_an_old_line_in_doubt_is_told_by_what_is_not_known(
    by_level: OldLineVerdict, more: int, reach: bool, told: str
) -> None:
    old = OldLine(269.0, 3.0, 262.0, 276.0, -0.05, OldLineVerdict.WEIGH_MORE, more, False, reach, by_level)
    text, tone = line_words.old_line_words(old, UnitSystem.METRIC)
    assert told in text
    assert str(MOST_MORE) not in text
    assert tone == "warn"


def test_at_the_sign_off_an_old_line_that_was_moved_is_not_to_be_moved_once_more(
    guide: Guide, desk: Desk, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    view = StepSignOff(desk)
    qtbot.addWidget(view)
    guide.set(old_line_mm=20.0, old_line_typed="20 mm", drawn_line_mm=20.0, drawn_line_typed="20 mm")
    assert "line" in dict(view._rows(guide, None))["Old line"]
    guide.set(drawn_line_mm=24.0, drawn_line_typed="24 mm")
    told = dict(view._rows(guide, None))["Old line"]
    assert told.startswith("Not for this lot: a feeding to it would weigh ")
    assert "ove" not in told.split(":")[0]  # it may be on the scoop still, for the lot that is fed
    assert "fills to the line" not in told
    guide.add_fill(FillWay.TO_MARK, 1, 290.0, "290 g")
    told = dict(view._rows(guide, None))["Old line"]
    assert told.endswith("That takes in how it settled in the fills to the line.")  # why it is not that of Mark
    monkeypatch.setattr(Guide, "earlier_target_g", 226.8)
    told = dict(view._rows(guide, None))["Old line"]
    assert told.startswith("Not for this lot: it was drawn for 8.0")
    assert told.endswith("That takes in how it settled in the fills to the line.")


@pytest.mark.parametrize(
    ("verdict", "told"),
    [
        (OldLineVerdict.MOVE, "Not for this lot: a feeding"),
        (OldLineVerdict.KEEP, "Replaced, though it could have stayed: a feeding"),
        (OldLineVerdict.WEIGH_MORE, "Replaced. Whether it could have stayed, the fills do not tell: a feeding"),
    ],
)
def test_a_replaced_line_is_told_by_the_verdict_on_it(verdict: OldLineVerdict, told: str) -> None:
    """The season tells it of the same line once signed."""
    old = OldLine(275.6, 3.0, 269.0, 282.0, -0.028, verdict, 4, False)
    assert line_words.moved_line_words(old, None, UnitSystem.FARM, tried=False).startswith(told)


def test_a_lot_of_one_bag_is_not_sent_for_a_third(guide: Guide) -> None:
    for fill in guide.fills_of(FillWay.LEVEL)[2:]:
        guide.strike(fill.id, "another day")
    level = guide.findings.level
    assert level is not None
    assert "third bag" in words.rule_words(level)
    alone = replace(level, outlook=replace(level.outlook, bags_there=1))
    assert "third bag" not in words.rule_words(alone)


def test_a_little_more_than_whole_scoopfuls_is_left_away(guide: Guide) -> None:
    """Three scoopfuls of 94 g are 282 g of 283.5 g: −0.5 %."""
    line = fill_line(Cylinder(diameter_mm=60, height_mm=73), 94.0, 0.3, 283.5)
    told = line_words.line_problem_words(line, 0.02)
    assert "Take 3 level scoopfuls and no more: that is −0.5 % against the target." in told
    assert line_words.line_problem_words(line, 0.004).endswith("Use a smaller scoop.")


def test_a_doubt_below_the_scale_s_step_is_no_nought(guide: Guide) -> None:
    level = guide.findings.level
    assert level is not None
    sure = replace(level, advice=replace(level.advice, enough=True, half_width_g=0.85))
    assert "within ± 0.03 oz" in words.advice_words(sure, guide, UnitSystem.FARM)[0]


def test_nobody_is_sent_to_weigh_sixty_fills(guide: Guide) -> None:
    level = guide.findings.level
    assert level is not None
    wild = replace(level, advice=replace(level.advice, enough=False, more_fills=40, within_reach=True))
    assert words.advice_words(wild, guide, UnitSystem.FARM)[0].startswith("More fills would hardly tell")


def test_while_four_bags_are_planned_no_third_is_advised_beside(guide: Guide) -> None:
    for fill in guide.fills_of(FillWay.LEVEL)[4:]:
        guide.strike(fill.id, "another day")
    level = guide.findings.level
    assert level is not None
    assert guide.plan_is_open(level)
    assert "third bag" in words.rule_words(level)
    assert "third bag" not in words.rule_words(level, planned=True)


def test_a_mixed_number_is_not_broken(guide: Guide, step: StepMark) -> None:
    guide.set(target_mass_g=510.0, target_typed="18 oz")
    step.show_guide(guide)
    assert "1\u00a011/16\u00a0in" in step._where.text()


def test_where_the_old_line_is_right_keeping_it_is_what_is_offered(guide: Guide, step: StepMark, desk: Desk) -> None:
    assert desk.farm is not None
    assert guide.findings.line is not None
    guide.set(old_line_mm=40.0, old_line_typed="40 mm")
    step.show_guide(guide)
    assert (step._as_proposed.property("kind"), step._keep_old.property("kind")) == ("main", "")
    assert step.first_field() is step._as_proposed
    guide.set(old_line_mm=guide.findings.line.down_wall_mm, old_line_typed="")
    desk.records.keep(replace(desk.farm, tolerance_share=0.08))
    guide.refresh()
    assert guide.findings.old is not None
    assert guide.findings.old.verdict is OldLineVerdict.KEEP
    step.show_guide(guide)
    assert (step._as_proposed.property("kind"), step._keep_old.property("kind")) == ("", "main")
    assert step.first_field() is step._keep_old
    assert "leave it" in step.hands.text()
    assert step._where.text().startswith("The line stays")
    assert "Wipe out" not in step.hands.text()


def test_after_signing_the_old_line_is_to_be_wiped_out(guide: Guide, desk: Desk, qtbot: QtBot) -> None:
    guide.set(old_line_mm=20.0, old_line_typed="20 mm", drawn_line_mm=16.0, drawn_line_typed="16 mm")
    for bag in (1, 2):
        guide.add_fill(FillWay.TO_MARK, bag, 283.5, "283.5 g")
    guide.sign_off("MK")
    view = StepSignOff(desk)
    qtbot.addWidget(view)
    view.show_guide(guide)
    assert "Wipe out the old line and go over the new one" in view.hands.text()


def test_after_signing_a_kept_line_is_never_to_be_wiped_out(guide: Guide, desk: Desk, qtbot: QtBot) -> None:
    guide.set(old_line_mm=16.0, old_line_typed="16 mm", drawn_line_mm=16.0, drawn_line_typed="16 mm")
    for bag in (1, 2):
        guide.add_fill(FillWay.TO_MARK, bag, 283.5, "283.5 g")
    signed = guide.sign_off("MK")
    view = StepSignOff(desk)
    qtbot.addWidget(view)
    view.show_guide(guide)
    assert "The line stays where it is. Print this lot's label and put it on." in view.hands.text()
    assert "Wipe" not in view.hands.text()
    desk.records.record_print(printed(PrintKind.SCOOP_LABEL, signed, scoop_id=signed.scoop_id))
    view.show_guide(guide)
    assert view.hands.text().startswith("Signed. The line stays where it is. Put this lot's label on.")


def test_a_line_for_another_weight_says_so_and_not_that_something_is_wrong(
    guide: Guide, step: StepMark, monkeypatch: pytest.MonkeyPatch
) -> None:
    guide.set(old_line_mm=20.0, old_line_typed="20 mm")
    step.show_guide(guide)
    assert step._old.text().startswith("Move the line.")
    monkeypatch.setattr(Guide, "earlier_target_g", 226.8)
    step.show_guide(guide)
    told = step._old.text().replace("\u00a0", " ")
    assert told.startswith("It was drawn for 8.0 oz at the last lot; now the target is 10.0 oz. Draw the new line.")
    assert "%" not in told
    assert step._old_card.property("tone") == ""


@pytest.mark.parametrize(("off_mm", "told", "tone"), [(8.0, "outside", "warn"), (1.0, "within", ""), (0.0, "", "")])
def test_a_line_elsewhere_says_what_a_feeding_would_weigh_while_it_is_typed(
    guide: Guide, step: StepMark, off_mm: float, told: str, tone: str
) -> None:
    step.show_guide(guide)
    assert step._would.text() == ""
    line = guide.findings.line
    assert line is not None
    step._field.line.setText(f"{round(line.down_wall_mm) + off_mm} mm")
    step._field.line.textEdited.emit(step._field.text())
    words = step._would.text()
    assert (told in words and words.startswith("A feeding to a line at ")) if told else words == ""
    assert step._would.property("tone") == tone
    assert guide.weigh_in.drawn_line_mm is None


def drawn_for_more(guide: Guide) -> None:
    """Two level scoopfuls and one to a line, with a fill to it."""
    guide.set(target_mass_g=764.0, target_typed="764 g")
    line = guide.findings.line
    assert line is not None
    assert line.full_scoops == 2
    guide.set(drawn_line_mm=line.down_wall_mm, drawn_line_typed="as proposed")
    guide.add_fill(FillWay.TO_MARK, 1, 100.0, "100 g")


def test_with_another_target_a_line_is_drawn_anew_and_the_scoop_can_be_used_level(guide: Guide, step: StepMark) -> None:
    """One fill to the line for 764 g; then 664 g are wanted, which are two level scoopfuls."""
    drawn_for_more(guide)
    step.show_guide(guide)
    guide.set(target_mass_g=664.0, target_typed="664 g")
    assert guide.weigh_in.drawn_line_mm is None
    assert guide.missing(Step.MARK) == (Missing.LINE,)
    step.show_guide(guide)
    assert "2 level scoopfuls" in step._where.text()
    assert (step._as_proposed.text(), step._as_proposed.isEnabled()) == ("&Use it level", True)
    assert (step._field.text(), step._drawn.isHidden(), step._problem.isHidden()) == ("", True, True)
    step._as_proposed.click()
    assert guide.struck_level
    guide.set(target_mass_g=764.0, target_typed="764 g")
    assert guide.weigh_in.drawn_line_mm is None  # used level for 664 g alone


@pytest.mark.parametrize(("target_g", "stays"), [(764.0, True), (770.0, True), (800.0, False)])
def test_a_line_stays_where_the_target_hardly_changes(guide: Guide, target_g: float, stays: bool) -> None:
    drawn_for_more(guide)
    guide.set(target_mass_g=target_g, target_typed="")
    assert (guide.weigh_in.drawn_line_mm is not None) is stays


def test_where_fills_to_a_line_call_for_one_at_the_rim_level_scoopfuls_are_named(guide: Guide) -> None:
    """Filled to a line at 4 mm the scoop holds less than the 332 g that are wanted, and less than level."""
    guide.set(target_mass_g=332.0, target_typed="332 g", drawn_line_mm=4.0, drawn_line_typed="4 mm")
    for bag in (1, 2, 3, 4):
        for mass_g in (320.0, 320.5):
            guide.add_fill(FillWay.TO_MARK, bag, mass_g, f"{mass_g} g")
    check, line = guide.findings.check, guide.findings.line
    assert check is not None
    assert line is not None
    assert (check.verdict, line.struck_level) == (LineVerdict.MOVE, True)
    assert line_words.check_words(check, guide, UnitSystem.METRIC)[0].startswith("1 level scoopful, no line needed")
    assert "with the new line" not in line_words.check_reason(check, guide, UnitSystem.METRIC)


def test_how_a_feeding_with_the_old_line_is_filled_is_said_where_it_takes_several(guide: Guide, step: StepMark) -> None:
    guide.set(old_line_mm=20.0, old_line_typed="20 mm")
    step.show_guide(guide)
    assert "level + 1" not in step._old.text()
    guide.set(target_mass_g=664.0, target_typed="664 g")
    step.show_guide(guide)
    assert step._old.text().startswith("It is not needed: use the scoop level.")
    assert step._old.text().endswith("That is 1 struck at the rim + 1 to the old line.")


@pytest.mark.parametrize(
    ("target_g", "mass_g", "doubt"),
    [
        (764.0, 764.0, Doubt.WHOLE_FEEDING),
        (764.0, 700.0, Doubt.WHOLE_FEEDING),
        (764.0, 100.0, None),
        (764.0, 640.0, Doubt.TOO_HEAVY),
        (400.0, 345.0, Doubt.WHOLE_FEEDING),
        (400.0, 330.0, None),  # heavy for this line, and yet no more than a scoop holds
        (283.5, 283.5, None),
    ],
)
def test_a_feeding_weighed_whole_is_known_as_such(
    guide: Guide, target_g: float, mass_g: float, doubt: Doubt | None
) -> None:
    """Level scoopfuls of 332 g go before the one to the line, which alone is weighed."""
    guide.set(target_mass_g=target_g, target_typed="x")
    guide.set(drawn_line_mm=40.0, drawn_line_typed="40 mm")
    assert guide.doubt(FillWay.TO_MARK, mass_g, 1) is doubt


def test_a_feeding_of_two_to_one_line_is_said_at_each_step(
    guide: Guide, step: StepMark, desk: Desk, qtbot: QtBot
) -> None:
    level = guide.findings.level
    assert level is not None
    guide.set(target_mass_g=1.04 * level.mean_g, target_typed="")
    step.show_guide(guide)
    assert step._where.text().startswith("2 equal scoopfuls to one line, ")
    assert step._as_proposed.isEnabled()
    assert "2 are a feeding" in mark_hands(guide).replace("\u00a0", " ")
    line = guide.findings.line
    assert line is not None
    guide.set(drawn_line_mm=line.down_wall_mm, drawn_line_typed="", step=Step.SIGN_OFF)
    view = StepSignOff(desk)
    qtbot.addWidget(view)
    told = dict(view._rows(guide, None))
    assert told["Fill mark"].endswith("scoopfuls to it a feeding: 2")
