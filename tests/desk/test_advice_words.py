"""What is advised while weighing: enough or the plan goes on, and hands that are never sent two ways at once."""

from __future__ import annotations

from dataclasses import replace

import pytest
from answers import at_noon
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from calibrator.desk.context import Desk
from calibrator.desk.guide import Guide
from calibrator.desk.mix_words import count_words
from calibrator.desk.spots import read_spots, spot_findings
from calibrator.desk.weigh_in import line_words, words
from calibrator.desk.weigh_in.step_mark import StepMark
from calibrator.desk.weigh_in.step_sign_off import StepSignOff
from calibrator.desk.weigh_in.workings import level_workings
from calibrator.model import FillWay, Lot, Scale, Scoop, SpotFill, Step, UnitSystem, WeighIn, new_id
from calibrator.science.mark import LineVerdict, OldLineVerdict, fill_line
from calibrator.science.scoopfuls import ScoopCount, ScoopWay

ALIKE_G = (331.0, 333.0, 330.0, 332.0, 334.0, 331.0, 332.0, 333.0)
APART_G = (322.0, 324.0, 338.0, 340.0, 329.0, 331.0, 335.0, 337.0)  # bags differ by 2 %
BAGS = (1, 1, 2, 2, 3, 3, 4, 4)


def begin(desk: Desk, lot: Lot) -> Guide:
    records = desk.records
    begun = WeighIn(
        id=new_id(), farm_id=lot.farm_id, lot_id=lot.id, started_at=at_noon(), by="MK",
        scoop_id=records.every(Scoop)[0].id, scale_id=records.every(Scale)[0].id, scale_zeroed=True,
        target_mass_g=283.5, target_typed="10 oz", step=Step.MARK,
    )  # fmt: skip
    return Guide(records, records.keep(begun), at_noon)


def weigh(guide: Guide, way: FillWay, *masses_g: float) -> None:
    for mass_g in masses_g:
        guide.add_fill(way, guide.next_bag(way), mass_g, f"{mass_g} g")


def old_line_that_delivers(guide: Guide, share: float) -> None:
    """An old line that would put `share` too much into a feeding, as far as is known."""
    level, scoop, settling = guide.findings.level, guide.scoop, guide.findings.settling
    assert level is not None
    assert scoop is not None
    assert settling is not None
    line = fill_line(scoop.shape, level.mean_g, level.u_g, 283.5 * (1 + share), settling.factor)
    guide.set(old_line_mm=line.down_wall_mm, old_line_typed="as found")


def test_a_scale_that_nobody_checked_is_told_beside_the_interval_until_a_check_weight_is(desk: Desk, lot: Lot) -> None:
    """One step of 0.1 oz, rectangular: ± 0.11 oz at 95 %."""
    guide = begin(desk, lot)
    weigh(guide, FillWay.LEVEL, *ALIKE_G)
    level = guide.findings.level
    assert level is not None
    told = words.unchecked_words(level, None, UnitSystem.FARM).replace("\u00a0", " ")
    assert told == "Scale not checked: ± 0.11 oz of doubt assumed. A check weight makes this surer."
    (row,) = [part for part in level_workings(guide)[0].parts if "scale's own error" in part.what]
    assert "assumed as of a sound scale until a check weight shows it" in row.working
    guide.set(check_nominal_g=500.0, check_reading_g=500.0)
    checked = guide.findings.level
    assert checked is not None
    assert words.unchecked_words(checked, guide.findings.scale, UnitSystem.FARM) == ""
    assert checked.half_width_g < level.half_width_g
    guide.set(check_nominal_g=50.0, check_reading_g=50.0)
    light = guide.findings.level
    assert light is not None
    assert light.half_width_g == pytest.approx(level.half_width_g)
    told = words.unchecked_words(light, guide.findings.scale, UnitSystem.FARM)
    assert told.startswith("Check weight light beside the powder: ±")


def test_a_check_weight_is_advised_where_fills_do_not_lessen_the_doubt(desk: Desk, lot: Lot) -> None:
    """In steps of half an ounce an unchecked scale alone leaves more than is wanted, however many fills."""
    records = desk.records
    records.keep(replace(records.every(Scale)[0], resolution_g=14.175, resolution_typed="0.5 oz"))
    guide = begin(desk, lot)
    for number in range(8):
        guide.add_fill(FillWay.LEVEL, number // 2 + 1, 992.2 + (number % 2) * 14.175, "35 oz", 3)
    level = guide.findings.level
    assert level is not None
    assert not level.advice.within_reach
    assert "weigh a check weight" in words.advice_words(level, guide, UnitSystem.FARM)[0]
    assert not words.more_fills_advised(guide, FillWay.LEVEL)
    guide.set(drawn_line_mm=20.0)
    for number in range(8):
        guide.add_fill(FillWay.TO_MARK, number // 2 + 1, 850.5, "30 oz", 3)
    check = guide.findings.check
    assert check is not None
    assert check.verdict is LineVerdict.WEIGH_MORE
    assert "weigh a check weight" in line_words.check_words(check, guide, UnitSystem.FARM)[0]


@pytest.fixture
def lot(desk: Desk) -> Lot:
    return desk.records.every(Lot)[0]


@pytest.fixture
def step(qtbot: QtBot, desk: Desk, qapp: QApplication) -> StepMark:
    made = StepMark(desk)
    qtbot.addWidget(made)
    return made


@pytest.fixture
def taught(desk: Desk, lot: Lot) -> Guide:
    """A weigh-in on a farm that has four lots behind it."""
    for number in range(4):
        earlier = begin(desk, desk.records.keep(Lot(id=new_id(), farm_id=lot.farm_id, lot_number=f"earlier {number}")))
        weigh(earlier, FillWay.LEVEL, *ALIKE_G)
        earlier.set(drawn_line_mm=12.0, drawn_line_typed="12 mm")
        earlier.sign_off("MK")
    return begin(desk, lot)


def test_enough_is_not_said_while_the_plan_asks_for_more(taught: Guide) -> None:
    weigh(taught, FillWay.LEVEL, *ALIKE_G[:3])
    level = taught.findings.level
    assert level is not None
    assert level.advice.enough
    assert taught.next_bag(FillWay.LEVEL) == 2
    told, tone = words.advice_words(level, taught, UnitSystem.FARM)
    assert told.startswith("Within ± ")
    assert told.endswith("already; the plan still asks for 5 fills and 2 bags.")
    assert tone != "good"
    assert words.level_reason(level, taught, UnitSystem.FARM).startswith("That rests on earlier lots")
    weigh(taught, FillWay.LEVEL, *ALIKE_G[3:7])
    assert taught.findings.level is not None
    assert "still asks for 1 fill." in words.advice_words(taught.findings.level, taught, UnitSystem.FARM)[0]
    weigh(taught, FillWay.LEVEL, ALIKE_G[7])
    assert taught.findings.level is not None
    assert words.advice_words(taught.findings.level, taught, UnitSystem.FARM)[0].startswith("Enough: ")
    assert words.level_reason(taught.findings.level, taught, UnitSystem.FARM) == ""


def test_what_the_plan_still_asks_for_is_what_the_proposed_bags_come_to(taught: Guide) -> None:
    """Whichever bags were dipped, as many fills as are told end the plan."""
    for bag in (1, 1, 1, 2):
        taught.add_fill(FillWay.LEVEL, bag, 332.0, "332 g")
    assert taught.findings.level is not None
    fills, bags = taught.still_planned(taught.findings.level)
    assert (fills, bags) == (4, 2)
    for bag in (3, 3, 4):
        taught.add_fill(FillWay.LEVEL, bag, 332.0, "332 g")
    assert taught.still_planned(taught.findings.level) == (1, 0)
    taught.add_fill(FillWay.LEVEL, 4, 332.0, "332 g")
    assert not taught.plan_is_open(taught.findings.level)


def test_a_line_shown_to_be_right_early_is_told_with_what_the_plan_still_asks(taught: Guide) -> None:
    weigh(taught, FillWay.LEVEL, *ALIKE_G)
    taught.set(drawn_line_mm=13.0, drawn_line_typed="13 mm")
    weigh(taught, FillWay.TO_MARK, 283.0, 284.0, 283.5)
    check = taught.findings.check
    assert check is not None
    assert check.verdict is LineVerdict.ON_TARGET
    told, tone = line_words.check_words(check, taught, UnitSystem.FARM)
    assert told == "The new line is right: a feeding is within the tolerance."
    assert tone == "good"
    reason = line_words.check_reason(check, taught, UnitSystem.FARM)
    assert " The plan still asks for 5 fills from the open bags, 2 of them without any, to see" in reason
    weigh(taught, FillWay.TO_MARK, 283.0, 284.0, 283.5, 283.0, 284.0)
    assert taught.findings.check is not None
    assert "plan" not in line_words.check_reason(taught.findings.check, taught, UnitSystem.FARM)


def test_a_mean_within_a_tolerance_that_its_interval_leaves_is_told_as_both(desk: Desk, lot: Lot) -> None:
    """Who signs after three fills reads that they are too few, not that all is well."""
    guide = begin(desk, lot)
    weigh(guide, FillWay.LEVEL, *ALIKE_G)
    guide.set(drawn_line_mm=13.0, drawn_line_typed="13 mm")
    weigh(guide, FillWay.TO_MARK, 283.0, 284.0, 283.5)
    check = guide.findings.check
    assert check is not None
    assert check.is_inside
    assert check.verdict is LineVerdict.WEIGH_MORE
    told = line_words.check_words(check, guide, UnitSystem.FARM)[0]
    assert told == "The mean is within the tolerance, but not yet known closely enough."
    view = StepSignOff(desk)
    doubt = view._doubt(guide)
    assert doubt.startswith(f"{told} 3 fills from 2 bags so far; 8 from 4 bags are planned. A feeding weighs ")
    view.close()
    view.deleteLater()


def test_an_old_line_that_fills_show_to_be_right_is_kept_by_that_word(desk: Desk, lot: Lot) -> None:
    guide = begin(desk, lot)
    weigh(guide, FillWay.LEVEL, *ALIKE_G)
    guide.set(old_line_mm=13.0, old_line_typed="13 mm", drawn_line_mm=13.0, drawn_line_typed="13 mm")
    weigh(guide, FillWay.TO_MARK, 283.0, 284.0, 283.5, 283.0, 284.0, 283.5, 283.0, 284.0)
    check = guide.findings.check
    assert check is not None
    assert check.verdict is LineVerdict.ON_TARGET
    told = line_words.check_words(check, guide, UnitSystem.FARM)[0]
    assert told == "Keep the line: a feeding is within the tolerance."


def test_a_new_line_as_near_as_the_ruler_has_it_is_not_kept_as_an_old_one(desk: Desk, lot: Lot) -> None:
    """One sixteenth of an inch on this scoop is 5 g: a feeding of 283.5 g ± 0.5 % lies between two of them."""
    guide = begin(desk, lot)
    assert desk.farm is not None
    desk.records.keep(replace(desk.farm, tolerance_share=0.005))
    desk.records.keep(replace(desk.records.every(Scale)[0], resolution_g=0.1))
    weigh(guide, FillWay.LEVEL, *ALIKE_G)
    guide.set(drawn_line_mm=12.7, drawn_line_typed="1/2 in")
    for bag, wobble_g in zip(BAGS, (0.1, -0.1, 0.0, 0.1, -0.1, 0.1, 0.0, -0.1), strict=True):
        guide.add_fill(FillWay.TO_MARK, bag, 285.6 + wobble_g, "285.6 g")
    check = guide.findings.check
    assert check is not None
    assert check.verdict is LineVerdict.AS_NEAR_AS_RULED
    told, tone = line_words.check_words(check, guide, UnitSystem.FARM)
    assert told.startswith("The new line is as near as the ruler has it, though a feeding is outside the tolerance")
    assert "Keep" not in told
    assert tone == "warn"
    guide.set(old_line_mm=12.7, old_line_typed="1/2 in")
    told = line_words.check_words(check, guide, UnitSystem.FARM)[0]
    assert told.startswith("Keep the line, though a feeding is outside the tolerance")


def test_while_level_fills_are_to_tell_nothing_is_drawn_or_wiped_out(desk: Desk, lot: Lot, step: StepMark) -> None:
    guide = begin(desk, lot)
    weigh(guide, FillWay.LEVEL, *ALIKE_G[:2])  # of one bag: how bags differ is assumed
    old_line_that_delivers(guide, 0.085)
    old = guide.findings.old
    assert old is not None
    assert line_words.level_fills_tell(old)
    step.show_guide(guide)
    assert step.hands.text() == "Leave the old line for now, and go back to weigh more level fills."
    assert "more level fill" in line_words.old_line_words(old, UnitSystem.FARM)[0]
    assert (step._as_proposed.property("kind"), step._keep_old.property("kind")) == ("", "")
    assert step.first_field() is step._field
    guide.set(drawn_line_mm=25.0, drawn_line_typed="25 mm")  # drawn all the same
    step.show_guide(guide)
    assert "Wipe out" in step.hands.text()


def test_an_old_line_that_only_the_shake_leaves_in_doubt_is_filled_to_first(
    desk: Desk, lot: Lot, step: StepMark
) -> None:
    """By the level fills the line does within 2 %; how the powder settles under the shake is not known better."""
    guide = begin(desk, lot)
    weigh(guide, FillWay.LEVEL, *ALIKE_G)
    old_line_that_delivers(guide, 0.0)
    old = guide.findings.old
    assert old is not None
    assert (old.verdict, old.by_level) == (OldLineVerdict.WEIGH_MORE, OldLineVerdict.KEEP)
    step.show_guide(guide)
    assert step.hands.text() == "Leave the old line for now: press Keep the old line, and weigh two fills to it."
    assert (step._as_proposed.property("kind"), step._keep_old.property("kind")) == ("", "main")
    assert step.first_field() is step._keep_old
    step._keep_old.click()
    assert guide.weigh_in.drawn_line_mm == guide.weigh_in.old_line_mm
    step.show_guide(guide)
    assert step.hands.text().startswith("Leave the old line for now")
    guide.set(drawn_line_mm=25.0, drawn_line_typed="25 mm")  # another was drawn: the old one is in the way
    step.show_guide(guide)
    assert step.hands.text().endswith("Wipe out the old line, or strike it through.")


def test_an_old_line_of_which_level_fills_hardly_tell_is_filled_to_first(desk: Desk, lot: Lot, step: StepMark) -> None:
    """Near an edge of the tolerance it may be right: a new line drawn there would take a right one off."""
    guide = begin(desk, lot)
    weigh(guide, FillWay.LEVEL, *APART_G)
    old_line_that_delivers(guide, -0.019)
    old = guide.findings.old
    assert old is not None
    assert (old.verdict, old.by_level) == (OldLineVerdict.WEIGH_MORE, OldLineVerdict.WEIGH_MORE)
    assert not line_words.level_fills_tell(old)
    step.show_guide(guide)
    assert step._where.text().startswith("First try the old line,")
    assert step._old.text().startswith("Weigh fills to the old line first: they tell whether it can stay. With the old")
    assert step.hands.text() == "Leave the old line for now: press Keep the old line, and weigh two fills to it."
    assert (step._as_proposed.property("kind"), step._keep_old.property("kind")) == ("", "main")
    assert step.first_field() is step._keep_old
    step._keep_old.click()
    weigh(guide, FillWay.TO_MARK, 278.0)
    guide.set(drawn_line_mm=None, drawn_line_typed="")  # the fills sent back: not in a ring
    step.show_guide(guide)
    assert step._old.text().startswith("Draw the new line: the fills do not tell whether the old one will do.")
    assert step._keep_old.property("kind") == ""


def test_fills_to_the_old_line_say_more_of_it_than_level_fills(desk: Desk, lot: Lot, step: StepMark) -> None:
    guide = begin(desk, lot)
    weigh(guide, FillWay.LEVEL, *APART_G)
    old_line_that_delivers(guide, 0.0)
    guide.set(drawn_line_mm=guide.weigh_in.old_line_mm, drawn_line_typed="as found")
    for bag, wobble_g in zip(BAGS, (1.0, -1.0, 0.0, 1.0, -1.0, 1.0, 0.0, -1.0), strict=True):
        guide.add_fill(FillWay.TO_MARK, bag, 294.0 + wobble_g, "294 g")  # 3.7 % too much
    assert guide.line_should_move
    guide.take_next_line()
    assert guide.findings.old is not None
    assert guide.findings.old.verdict is OldLineVerdict.MOVE
    assert line_words.old_line_words(guide.findings.old, UnitSystem.FARM)[0].startswith("Move the line.")
    fed = line_words.old_line_words(guide.findings.old, UnitSystem.FARM, fed="A")[0]
    assert fed.startswith("Draw a new line for this lot; leave the old one until the change-over.")
    step.show_guide(guide)
    assert step.hands.text().endswith("Wipe out the old line, or strike it through.")


def test_a_line_drawn_on_too_few_level_fills_is_called_preliminary(desk: Desk, lot: Lot, step: StepMark) -> None:
    guide = begin(desk, lot)
    weigh(guide, FillWay.LEVEL, *ALIKE_G[:4])
    step.show_guide(guide)
    assert step.hands.text().startswith("More level fills are advised first; a line drawn now is preliminary. Measure")
    weigh(guide, FillWay.LEVEL, *ALIKE_G[4:])
    step.show_guide(guide)
    assert step.hands.text().startswith("Measure")
    for fill in guide.fills_of(FillWay.LEVEL)[4:]:
        guide.strike(fill.id, "spilled")
    guide.set(drawn_line_mm=13.0, drawn_line_typed="13 mm")
    weigh(guide, FillWay.TO_MARK, 283.0)  # fills to a line tell more than level ones
    step.show_guide(guide)
    assert step.hands.text().startswith("Measure")


def few_bags(desk: Desk, lot: Lot, count: int | None) -> Guide:
    return begin(desk, desk.records.keep(replace(lot, package_count=count)))


def as_far_as_advised(guide: Guide, way: FillWay, mass_g: float) -> None:
    """Fills into whichever bag is proposed, until no more are wanted."""
    for place in range(16):
        weigh(guide, way, mass_g * (1 + 0.002 * (-1) ** place))
        told = guide.findings.level if way is FillWay.LEVEL else guide.findings.check
        assert told is not None
        if told.advice.enough if way is FillWay.LEVEL else guide.on_target:  # type: ignore[union-attr]
            return
    raise AssertionError("never enough")


@pytest.mark.parametrize("count", [1, 2, 3])
def test_a_lot_of_few_bags_gets_its_line_right(desk: Desk, lot: Lot, count: int) -> None:
    guide = few_bags(desk, lot, count)
    as_far_as_advised(guide, FillWay.LEVEL, 332.0)
    level = guide.findings.level
    assert level is not None
    assert level.bags == count
    assert words.advice_words(level, guide, UnitSystem.FARM)[0].startswith("Enough: ")
    assert words.rule_words(level).startswith("Every bag of the lot was dipped, so the interval rests on how fills")
    assert any("Bags of the lot dipped into" in part.what for part in level_workings(guide)[0].parts)
    guide.set(drawn_line_mm=13.0, drawn_line_typed="13 mm")
    as_far_as_advised(guide, FillWay.TO_MARK, 283.5)
    check = guide.findings.check
    assert check is not None
    assert {fill.bag for fill in guide.fills_of(FillWay.TO_MARK)} == set(range(1, count + 1))
    told = line_words.check_words(check, guide, UnitSystem.FARM)[0]
    assert told == "The new line is right: a feeding is within the tolerance."


@pytest.mark.parametrize(
    ("count", "planned"),
    [
        (None, "Two fills from each of four bags"),
        (84, "Two fills from each of four bags"),
        (3, "Eight fills, shared over the 3 bags of the lot"),
        (1, "Eight fills from all over the bag"),
    ],
)
def test_nobody_is_sent_to_bags_that_the_lot_does_not_have(
    desk: Desk, lot: Lot, count: int | None, planned: str
) -> None:
    guide = few_bags(desk, lot, count)
    assert f"{planned}: type the weight" in words.level_hands(guide)
    for bag in range(1, min(count or 4, 4) + 1):
        guide.add_fill(FillWay.LEVEL, bag, 332.0, "332 g")
    level = guide.findings.level
    assert level is not None
    fills, bags = guide.still_planned(level)
    assert (level.fills + fills, bags) == (8, 0)
    assert f"; 8 from {min(count or 4, 4)} bag" in words.plan_words(level, guide)


def test_a_history_does_not_keep_a_small_lot_s_fills_to_its_last_bag(taught: Guide, lot: Lot) -> None:
    taught.records.keep(replace(taught.lot, package_count=2))
    taught.refresh()
    weigh(taught, FillWay.LEVEL, *ALIKE_G)
    assert [fill.bag for fill in taught.fills_of(FillWay.LEVEL)].count(1) == 4


def test_while_fills_are_few_a_lone_bag_s_interval_is_called_assumed(desk: Desk, lot: Lot) -> None:
    guide = few_bags(desk, lot, 1)
    weigh(guide, FillWay.LEVEL, *ALIKE_G[:2])
    level = guide.findings.level
    assert level is not None
    assert "a cautious figure is assumed" in words.rule_words(level)
    assert "bag differ" not in words.rule_words(level)


def test_of_two_bags_apart_the_mean_is_right_and_that_bags_are_not_is_said(desk: Desk, lot: Lot) -> None:
    """Bags of 274 and 293 g: a lot on 283.5 g, and no bag of it within 2 %."""
    guide = few_bags(desk, lot, 2)
    weigh(guide, FillWay.LEVEL, *ALIKE_G)
    guide.set(drawn_line_mm=13.0, drawn_line_typed="13 mm")
    for bag, mass_g in ((1, 274.0), (2, 293.0)):
        for off in (-0.4, 0.0, 0.4, 0.0):
            guide.add_fill(FillWay.TO_MARK, bag, mass_g + off, f"{mass_g + off} g")
    check = guide.findings.check
    assert check is not None
    assert check.verdict is LineVerdict.ON_TARGET
    told = line_words.check_reason(check, guide, UnitSystem.METRIC)
    assert "That is the mean of the lot: out of one bag it may be 26" in told  # 1.96 · 19/√2 g
    assert told.endswith("Weigh a spot fill of each bag that is opened.")


def test_a_spot_fill_of_a_lone_bag_is_of_that_bag(desk: Desk, lot: Lot) -> None:
    guide = few_bags(desk, lot, 1)
    as_far_as_advised(guide, FillWay.LEVEL, 332.0)
    guide.set(drawn_line_mm=13.0, drawn_line_typed="13 mm")
    as_far_as_advised(guide, FillWay.TO_MARK, 283.5)
    signed = guide.sign_off("MK")
    (mark,) = desk.records.marks(sign_off_id=signed.id)
    desk.records.add_spot_fill(
        SpotFill(
            id=new_id(), farm_id=lot.farm_id, lot_id=lot.id, weigh_in_id=signed.weigh_in_id, way=FillWay.TO_MARK,
            mass_g=284.0, typed="284 g", by="MK", at=at_noon(), line_mm=mark.down_wall_mm,
        )
    )  # fmt: skip
    found = spot_findings(read_spots(desk.records, signed), signed, mark)
    assert found is not None
    assert found.verdict is OldLineVerdict.KEEP
    assert found.level.bags == 1


def test_beside_an_odd_fill_nobody_is_sent_on(desk: Desk, lot: Lot) -> None:
    guide = begin(desk, lot)
    weigh(guide, FillWay.LEVEL, 245.0, 247.0, 246.0, 245.0, 244.0, 246.0, 247.0, 276.0)
    level = guide.findings.level
    assert level is not None
    assert guide.odd_fills(FillWay.LEVEL)
    told = words.advice_words(level, guide, UnitSystem.METRIC)[0]
    assert told == "First decide about the fill that lies far from the others."
    guide.strike(guide.fills_of(FillWay.LEVEL)[-1].id, "typed wrong")
    assert "First decide" not in words.advice_words(guide.findings.level or level, guide, UnitSystem.METRIC)[0]


def test_half_a_scoopful_of_a_correction_is_told_as_half() -> None:
    """3 1/2 to the line weigh 982 g; "4" beside that weight would be 14 % too much powder."""
    way = ScoopWay("s", "Blue scoop", FillWay.TO_MARK, 280.5)
    count = ScoopCount(((way, 3.5),), 4, 981.75, 18.75, 0.02, 8.0)
    assert count_words(count, UnitSystem.METRIC) == "3 1/2 × Blue scoop to the line"


def test_a_correction_says_to_which_line_where_the_label_has_several() -> None:
    way = ScoopWay("s", "Blue scoop", FillWay.TO_MARK, 312.0, line_g=312.5, line_step_g=0.1)
    count = ScoopCount(((way, 2),), 2, 624.0, 8.0, 0.01, 8.0)
    assert count_words(count, UnitSystem.METRIC).replace("\u00a0", " ") == "2 × Blue scoop to the 312.5 g line"
