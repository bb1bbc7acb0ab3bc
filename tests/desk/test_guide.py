"""The weigh-in as a plain state, without a window."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

import pytest
from yard import NOON, Yard

from calibrator.desk.findings import read, sign_off, work_out
from calibrator.desk.guide import Guide, Missing
from calibrator.desk.label_lines import line_offers
from calibrator.desk.season.facts import SeasonFacts
from calibrator.desk.sheets import scoop_ways
from calibrator.model import FillWay, Lot, Scoop, SpotFill, Step, new_id
from calibrator.records import EditedMeanwhile, Records
from calibrator.science.carried_over import carried_over
from calibrator.science.errors import CannotCompute
from calibrator.science.mark import LineVerdict, OldLineVerdict
from calibrator.science.plausible import Doubt, usual_g
from calibrator.science.scoops import manner_of, usual
from calibrator.science.weighing import IntervalRule

DAY = timedelta(days=1)
OUNCE_G = 28.349523125
LEVEL_G = (330.0, 333.0, 328.0, 331.0, 335.0, 332.0, 329.0, 331.0)


@pytest.fixture
def yard(records: Records) -> Yard:
    return Yard(records)


@pytest.fixture
def guide(yard: Yard) -> Guide:
    return Guide(yard.records, yard.start(yard.lot("25-0302A")), lambda: NOON)


def equip(guide: Guide, yard: Yard, target_g: float = 283.5) -> None:
    guide.set(by="MK", scoop_id=yard.red.id, scale_id=yard.scale.id, target_mass_g=target_g, scale_zeroed=True)


def weigh_level(guide: Guide, masses_g: tuple[float, ...] = LEVEL_G) -> None:
    for mass_g in masses_g:
        guide.add_fill(FillWay.LEVEL, guide.next_bag(FillWay.LEVEL), mass_g, f"{mass_g} g")


def draw_as_proposed(guide: Guide) -> float:
    line = guide.findings.line
    assert line is not None
    guide.set(drawn_line_mm=line.down_wall_mm, drawn_line_typed="as proposed")
    return line.mass_g


def test_a_step_opens_only_when_nothing_before_it_is_missing(guide: Guide, yard: Yard) -> None:
    assert guide.reachable() == {Step.LOT}
    assert guide.missing(Step.LOT) == (Missing.INITIALS,)
    assert not guide.go(Step.LEVEL_FILLS)
    assert guide.step == Step.LOT
    guide.set(by="MK")
    assert guide.reachable() == {Step.LOT, Step.SCOOP_AND_SCALE}
    assert set(guide.missing_before(Step.SIGN_OFF)) == {Missing.SCOOP, Missing.SCALE, Missing.TARGET, Missing.ZERO}
    equip(guide, yard)
    assert guide.go(Step.LEVEL_FILLS)
    assert guide.step == Step.LEVEL_FILLS


def test_another_scale_is_to_be_zeroed_and_checked_itself(guide: Guide, yard: Yard) -> None:
    """What the check weight showed on one scale would be taken off weights on the other: 512 g for 500 g, 2.4 %."""
    equip(guide, yard)
    guide.set(check_nominal_g=500.0, check_nominal_typed="500 g", check_reading_g=512.0, check_reading_typed="512 g")
    other = yard.records.keep(replace(yard.scale, id=new_id(), name="New scale", revision=""))
    guide.set(scale_id=other.id)
    w = guide.weigh_in
    assert (w.scale_zeroed, w.check_reading_g, w.check_reading_typed) == (False, None, "")
    assert w.check_nominal_typed == "500 g"
    assert guide.findings.scale is None
    guide.set(check_reading_g=500.0, check_reading_typed="500 g", scale_zeroed=True)
    guide.set(scale_id=yard.scale.id)
    assert (guide.weigh_in.check_reading_typed, guide.weigh_in.scale_zeroed) == ("512 g", False)
    guide.set(scale_id=other.id)
    assert guide.weigh_in.check_reading_typed == "500 g"


def test_a_weigh_in_signed_while_no_doubt_was_counted_for_an_unchecked_scale_says_what_it_said(
    guide: Guide, yard: Yard
) -> None:
    equip(guide, yard)
    weigh_level(guide)
    draw_as_proposed(guide)
    now = guide.findings
    before = work_out(replace(guide.known, scale_trusted=True))
    assert now.level is not None
    assert before.level is not None
    assert before.level.u_g < now.level.u_g
    made, mark = sign_off(guide.known, before, "MK", NOON, "0")
    yard.records.sign_off(made, [mark])
    again = Guide(yard.records, guide.weigh_in, lambda: NOON)
    assert again.findings.level is not None
    assert again.findings.level.u_g == pytest.approx(before.level.u_g)
    assert again.findings.level.scale_half_g == 0.0


def test_a_weigh_in_signed_with_the_doubt_of_an_unchecked_scale_keeps_it(guide: Guide, yard: Yard) -> None:
    equip(guide, yard)
    weigh_level(guide)
    draw_as_proposed(guide)
    made = guide.sign_off("MK")
    level = Guide(yard.records, guide.weigh_in, lambda: NOON).findings.level
    assert level is not None
    assert level.u_g == pytest.approx(made.level_u_g)
    assert level.scale_half_g > 0


def test_two_fills_from_each_of_four_bags_are_proposed(guide: Guide, yard: Yard) -> None:
    equip(guide, yard)
    bags = []
    for mass_g in LEVEL_G:
        bags.append(guide.next_bag(FillWay.LEVEL))
        guide.add_fill(FillWay.LEVEL, bags[-1], mass_g, "")
    assert bags == [1, 1, 2, 2, 3, 3, 4, 4]


def test_after_the_proposed_bags_a_further_one_is_proposed_where_it_helps(guide: Guide, yard: Yard) -> None:
    equip(guide, yard)
    weigh_level(guide, (310.0, 311.0, 340.0, 341.0, 325.0, 326.0, 350.0, 351.0))
    level = guide.findings.level
    assert level is not None
    assert level.advice.from_other_bags
    assert guide.next_bag(FillWay.LEVEL) == 5
    guide.add_fill(FillWay.LEVEL, 5, 330.0, "")  # "each from a bag not yet dipped" holds for the second one too
    level = guide.findings.level
    assert level is not None
    assert level.advice.from_other_bags
    assert guide.next_bag(FillWay.LEVEL) == 6


def test_a_lone_package_is_the_only_bag(guide: Guide, yard: Yard) -> None:
    from dataclasses import replace

    yard.records.keep(replace(guide.lot, package_count=1))
    guide.refresh()
    equip(guide, yard)
    weigh_level(guide, LEVEL_G[:4])
    assert guide.next_bag(FillWay.LEVEL) == 1


def test_findings_reach_as_far_as_the_facts(guide: Guide, yard: Yard) -> None:
    assert guide.findings.level is None
    equip(guide, yard)
    weigh_level(guide)
    found = guide.findings
    assert found.level is not None
    assert found.level.rule == IntervalRule.BAG_MEANS
    assert found.level.mean_g == pytest.approx(sum(LEVEL_G) / 8)
    assert found.density is not None
    assert found.density.density_g_per_ml == pytest.approx(sum(LEVEL_G) / 8 / yard.red.volume_ml)
    assert found.line is not None
    assert found.check is None


def test_a_line_that_settles_is_moved_and_the_next_fills_are_on_target(guide: Guide, yard: Yard) -> None:
    equip(guide, yard)
    weigh_level(guide)
    mass_g = draw_as_proposed(guide)
    for bag in (1, 1, 2, 2, 3, 3, 4, 4):
        guide.add_fill(FillWay.TO_MARK, bag, mass_g * 1.05, "")
    check = guide.findings.check
    assert check is not None
    assert check.verdict == LineVerdict.MOVE
    assert check.settling_factor == pytest.approx(1.05, rel=2e-3)
    assert guide.line_should_move

    guide.take_next_line()
    assert guide.step == Step.MARK
    assert guide.weigh_in.drawn_line_mm is None
    assert guide.findings.line is not None
    assert guide.findings.line.down_wall_mm == pytest.approx(check.next_line.down_wall_mm, abs=0.2)

    draw_as_proposed(guide)
    assert guide.fills_of(FillWay.TO_MARK) == []
    assert guide.findings.check is None
    guide.add_fill(FillWay.TO_MARK, 1, 283.5, "")
    assert guide.to_earlier_line > 0
    assert guide.findings.check is not None
    assert guide.findings.check.result.fills == 9
    assert guide.on_target
    for bag, wobble in zip((1, 1, 2, 2, 3, 3, 4, 4), (0.4, -0.5, 0.2, -0.3, 0.3, 0.0, -0.2, 0.1), strict=True):
        guide.add_fill(FillWay.TO_MARK, bag, 283.5 + wobble, "")
    assert guide.on_target


def test_the_old_line_is_judged_for_this_lot(guide: Guide, yard: Yard) -> None:
    equip(guide, yard)
    weigh_level(guide)
    guide.set(old_line_mm=40.0)
    assert guide.findings.old is not None
    assert guide.findings.old.verdict == OldLineVerdict.MOVE
    assert guide.findings.old.share < -0.2


def test_a_struck_fill_counts_no_more_and_stays_in_view(guide: Guide, yard: Yard) -> None:
    equip(guide, yard)
    weigh_level(guide)
    wild = guide.add_fill(FillWay.LEVEL, 1, 420.0, "420 g")
    assert wild.id in guide.odd_fills(FillWay.LEVEL)
    guide.strike(wild.id, "powder spilled on the pan")
    assert guide.findings.level is not None
    assert guide.findings.level.mean_g == pytest.approx(sum(LEVEL_G) / 8)
    assert guide.fills_of(FillWay.LEVEL)[-1].struck_reason == "powder spilled on the pan"
    guide.restore(wild.id)
    assert guide.findings.level.fills == 9


@pytest.mark.parametrize(
    ("mass_g", "doubt"),
    [(331.0, None), (33.0, Doubt.TOO_LIGHT), (3310.0, Doubt.TOO_HEAVY), (9000.0, Doubt.OVER_CAPACITY)],
)
def test_a_slip_of_the_finger_is_doubted(guide: Guide, yard: Yard, mass_g: float, doubt: Doubt | None) -> None:
    equip(guide, yard)
    assert guide.doubt(FillWay.LEVEL, mass_g, 1) == doubt


def test_sign_off_freezes_and_tells_the_line_as_drawn(guide: Guide, yard: Yard) -> None:
    equip(guide, yard)
    weigh_level(guide)
    guide.set(drawn_line_mm=12.0, drawn_line_typed="12 mm")
    made = guide.sign_off("MK")
    assert guide.signed_off == made
    mark = yard.records.marks(sign_off_id=made.id)[0]
    assert mark.down_wall_mm == 12.0
    assert made.scoop_revision == yard.red.revision
    assert guide.step == Step.SIGN_OFF
    guide.look_at(Step.LEVEL_FILLS)
    assert guide.step == Step.LEVEL_FILLS


def test_sign_off_without_a_line_says_what_to_do(guide: Guide, yard: Yard) -> None:
    equip(guide, yard)
    weigh_level(guide)
    with pytest.raises(CannotCompute, match="Draw the line"):
        guide.sign_off("MK")


def test_coming_back_finds_the_same_step_and_fills(guide: Guide, yard: Yard) -> None:
    equip(guide, yard)
    guide.go(Step.LEVEL_FILLS)
    weigh_level(guide)
    again = Guide(yard.records, guide.weigh_in, lambda: NOON)
    assert again.step == Step.LEVEL_FILLS
    assert again.fills_of(FillWay.LEVEL) == guide.fills_of(FillWay.LEVEL)


def test_what_the_farm_learned_before_is_used(yard: Yard) -> None:
    for number in range(4):
        earlier = Guide(yard.records, yard.start(yard.lot(f"old {number}")), lambda: NOON)
        equip(earlier, yard)
        weigh_level(earlier)
        mass_g = draw_as_proposed(earlier)
        for bag in (1, 2, 3):
            earlier.add_fill(FillWay.TO_MARK, bag, mass_g * 1.04, "")
        earlier.sign_off("MK")
    later = Guide(yard.records, yard.start(yard.lot("new")), lambda: NOON)
    equip(later, yard)
    weigh_level(later, LEVEL_G[:2])
    assert later.findings.level is not None
    assert later.findings.level.rule == IntervalRule.POOLED_HISTORY
    assert later.findings.settling is not None
    assert later.findings.settling.factor > 1.0


def test_an_old_line_is_judged_by_the_full_scoops_that_went_before_it(guide: Guide, yard: Yard) -> None:
    """Agglomerated powder after dense: 253 g a level scoopful, so that 10 oz take one full scoop more than before.

    The line at 20 mm of 92 held the whole feeding; with it the calves would get 253 g · 72/92 = 198 g, not 451 g.
    """
    guide.set(old_line_mm=20.0, old_line_typed="20 mm")
    equip(guide, yard)
    weigh_level(guide, (252.0, 254.0, 253.0, 253.0, 252.0, 254.0, 253.0, 253.0))
    found = guide.findings
    assert found.line is not None
    assert (found.line.full_scoops, found.line.to_line) == (0, 2)  # 30 g over: shared out to one line
    assert found.old is not None
    assert found.old.delivers_g == pytest.approx(253 * 72 / 92, rel=0.05)
    assert found.old.verdict == OldLineVerdict.MOVE


def test_a_line_with_full_scoops_before_it_stays_with_them(guide: Guide, yard: Yard) -> None:
    equip(guide, yard, target_g=500.0)
    weigh_level(guide)
    line = guide.findings.line
    assert line is not None
    assert line.full_scoops == 1
    guide.set(old_line_mm=line.down_wall_mm, old_line_typed="as it was")
    assert guide.findings.old is not None
    assert guide.findings.old.delivers_g == pytest.approx(500.0, rel=1e-3)
    assert guide.findings.old.verdict != OldLineVerdict.MOVE


WOBBLE_G = (2.0, -1.5, 1.0, -2.0, 1.5, -1.0, 0.5, -0.5)


def weigh_to_line(guide: Guide, mass_g: float, count: int = 8) -> None:
    for place, off in enumerate(WOBBLE_G[:count]):
        guide.add_fill(FillWay.TO_MARK, place // 2 + 1, mass_g + off, "")


def test_fills_to_an_old_line_judge_it_though_it_was_moved_since(yard: Yard) -> None:
    """Level fills leave it open; those to it said that it has to move, and so does the season afterwards."""
    first = Guide(yard.records, yard.start(yard.lot("25-0302A")), lambda: NOON)
    equip(first, yard)
    weigh_level(first)
    line_mm = draw_as_proposed(first) and first.weigh_in.drawn_line_mm
    weigh_to_line(first, 283.5)
    first.sign_off("MK")
    later = replace(yard.start(yard.lot("25-0411B")), started_at=NOON + DAY)
    guide = Guide(yard.records, yard.records.keep(later), lambda: NOON + DAY)
    equip(guide, yard)
    weigh_level(guide, tuple(0.965 * mass_g + 2 * off for mass_g, off in zip(LEVEL_G, WOBBLE_G, strict=True)))
    guide.set(old_line_mm=line_mm, old_line_typed="as found", drawn_line_mm=line_mm, drawn_line_typed="as found")
    weigh_to_line(guide, 0.965 * 283.5)
    assert guide.line_should_move
    guide.take_next_line()
    draw_as_proposed(guide)
    weigh_to_line(guide, 283.5, count=2)
    assert guide.findings.old is not None
    assert guide.findings.old.verdict is OldLineVerdict.MOVE
    assert guide.sign_off("MK").old_line_verdict == OldLineVerdict.MOVE
    season = SeasonFacts(yard.records, yard.farm)
    before, last = season.lots
    by_level = carried_over(last, before, yard.red.shape, yard.farm.tolerance_share)
    assert by_level is not None
    assert by_level.verdict is OldLineVerdict.WEIGH_MORE
    meaning = season.meaning(1)
    assert meaning is not None
    assert (meaning.carried.verdict, meaning.carried.fills) == (OldLineVerdict.MOVE, 10)
    assert meaning.carried.mass_g == pytest.approx(0.965 * 283.5, rel=0.003)
    assert meaning.carried.high_g - meaning.carried.low_g < by_level.high_g - by_level.low_g
    yard.records.keep(replace(yard.records.find(Lot, last.lot_id), package_count=5))  # told since: not as it was signed
    again = SeasonFacts(yard.records, yard.farm).meaning(1)
    assert again is not None
    assert again.carried == meaning.carried


def test_what_was_signed_stays_as_it_was_signed(guide: Guide, yard: Yard) -> None:
    """The number of bags, told the day after, would make the interval narrower; a scoop measured anew, the density."""
    equip(guide, yard)
    weigh_level(guide)
    draw_as_proposed(guide)
    signed = guide.sign_off("MK")
    before = guide.findings.density
    assert before is not None
    lot = yard.records.find(Lot, signed.lot_id)
    yard.records.keep(replace(lot, package_count=5))
    yard.records.keep(replace(yard.red, volume_ml=700.0))
    yard.records.add_spot_fill(
        SpotFill(
            id=new_id(), farm_id=lot.farm_id, lot_id=lot.id, weigh_in_id=guide.weigh_in.id, way=FillWay.LEVEL,
            mass_g=350.0, typed="350 g", by="MK", at=NOON + DAY,
        )
    )  # fmt: skip
    again = Guide(yard.records, guide.weigh_in, lambda: NOON + 2 * DAY)
    assert again.lot.package_count == 5
    assert again.findings.density == before
    assert before.density_g_per_ml == pytest.approx(signed.density_g_per_ml)
    unfrozen = work_out(read(yard.records, guide.weigh_in.id, again.known.experience)).density
    assert unfrozen is not None
    assert unfrozen.expanded != pytest.approx(before.expanded, rel=0.01)


def test_a_line_drawn_for_another_weight_is_known_as_such(yard: Yard) -> None:
    first = Guide(yard.records, yard.start(yard.lot("A")), lambda: NOON)
    equip(first, yard, 226.8)
    weigh_level(first)
    draw_as_proposed(first)
    first.sign_off("MK")
    assert first.earlier_target_g is None
    drawn_mm = first.weigh_in.drawn_line_mm
    second = Guide(yard.records, yard.start(yard.lot("B")), lambda: NOON + DAY)
    equip(second, yard, 283.5)
    second.set(old_line_mm=drawn_mm, old_line_typed="as found")
    assert second.earlier_target_g == 226.8
    second.set(target_mass_g=227.0)
    assert second.earlier_target_g is None
    second.set(target_mass_g=283.5, old_line_mm=drawn_mm + 5 if drawn_mm else None)
    assert second.earlier_target_g is None  # some other line


def test_a_level_scoopful_is_known_about_before_a_fill(guide: Guide, yard: Yard) -> None:
    equip(guide, yard)
    assert guide.level_about_g == pytest.approx(usual_g(yard.red.volume_ml))
    assert guide.level_weighed_g is None
    weigh_level(guide)
    assert guide.level_about_g == pytest.approx(sum(LEVEL_G) / 8)
    draw_as_proposed(guide)
    guide.sign_off("MK")
    later = Guide(yard.records, yard.start(yard.lot("B")), lambda: NOON + DAY)
    equip(later, yard)
    assert later.level_about_g == pytest.approx(sum(LEVEL_G) / 8)


def test_little_more_than_a_level_scoopful_is_two_to_one_line_everywhere(guide: Guide, yard: Yard) -> None:
    """12 oz of powder in a scoop that holds 11.6 oz struck level: two scoopfuls of 6 oz to one line."""
    target_g, level_g = 12 * OUNCE_G, 11.6 * OUNCE_G
    equip(guide, yard, target_g)
    guide.set(check_nominal_g=1000.0, check_reading_g=1000.0)  # unchecked, no weight as light would be sure enough
    weigh_level(guide, (level_g,) * 8)
    line = guide.findings.line
    assert line is not None
    assert (line.full_scoops, line.to_line, line.problem) == (0, 2, None)
    assert guide.doubt(FillWay.TO_MARK, target_g, 1) is Doubt.WHOLE_FEEDING
    guide.set(drawn_line_mm=line.down_wall_mm, drawn_line_typed="")
    for _ in range(8):
        guide.add_fill(FillWay.TO_MARK, guide.next_bag(FillWay.TO_MARK), target_g / 2, "6 oz")
    check = guide.findings.check
    assert check is not None
    assert check.mean_g == pytest.approx(target_g)
    assert check.verdict is LineVerdict.ON_TARGET
    signed = guide.sign_off("AB")
    (mark,) = guide.records.marks(sign_off_id=signed.id)
    assert (mark.target_mass_g, mark.full_scoops) == (pytest.approx(target_g / 2), 0)
    ways = scoop_ways([signed], [mark], {mark.scoop_id: "scoop"})
    for calves in (1, 7, 12):
        manner = manner_of(target_g, ways, 0.03)
        count = usual(calves * target_g, ways, 0.03, manner=manner)
        assert count is not None
        assert [(way.way, n) for way, n in count.parts] == [(FillWay.TO_MARK, 2.0 * calves)]
    offers = line_offers(guide.records.find(Scoop, mark.scoop_id), signed, [mark], target_g / 2, (), feeding_g=target_g)
    counted = [(offer.counted.to_main, offer.counted.to_half) for offer in offers if offer.counted and offer.weighed_in]
    assert counted == [(2, 0)]
    assert guide.signed_off is not None
    following = Guide(guide.records, yard.start(yard.lot("next")), guide.clock)
    equip(following, yard, target_g)
    following.set(old_line_mm=mark.down_wall_mm, old_line_typed="")
    weigh_level(following, (level_g,) * 8)
    assert following.earlier_target_g is None
    old = following.findings.old
    assert old is not None
    assert old.to_line == 2
    assert old.delivers_g == pytest.approx(target_g, rel=0.01)


def test_a_refused_sign_off_leaves_nothing_told_of_the_lot(guide: Guide, yard: Yard) -> None:
    equip(guide, yard)
    weigh_level(guide)
    draw_as_proposed(guide)
    before, seen = guide.lot, guide.known.fills[:-1]
    with pytest.raises(EditedMeanwhile):
        guide.sign_off("MK", seen)
    assert yard.records.find(Lot, before.id) == before
    made = guide.sign_off("MK")
    assert (made.lot_revision, made) == (guide.lot.revision, yard.records.sign_off_of(guide.weigh_in.id))
