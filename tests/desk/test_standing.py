"""Which lot is in use, what is waiting, which sheets are outdated."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta

import pytest
from herd import group
from yard import DAY, NOON, Yard

from calibrator.desk.hung import outdated_sheets
from calibrator.desk.in_use import LotState
from calibrator.desk.needs import Need
from calibrator.desk.standing import _plans_told, standing
from calibrator.model import (
    Ending,
    Instrument,
    InstrumentKind,
    MixCheck,
    Plan,
    Printed,
    PrintKind,
    Scoopfuls,
    ScoopRule,
    SheetEnding,
    Vessel,
    new_id,
)
from calibrator.records import Change, Records


@pytest.fixture
def yard(records: Records) -> Yard:
    return Yard(records)


def test_a_new_lot_waits_until_its_weigh_in_is_begun_and_then_until_it_is_signed(yard: Yard) -> None:
    lot = yard.lot("A")
    assert [w.need for w in yard.waiting()] == [Need.WEIGH_IN]
    weigh_in = yard.start(lot)
    (left,) = yard.waiting()
    assert (left.need, left.weigh_in) == (Need.GO_ON, weigh_in)
    yard.sign(lot, yard.red, weigh_in)
    assert yard.waiting() == []


def test_an_abandoned_weigh_in_leaves_the_lot_waiting(yard: Yard) -> None:
    weigh_in = yard.start(yard.lot("A"))
    yard.records.keep(replace(weigh_in, abandoned=True))
    assert [w.need for w in yard.waiting()] == [Need.WEIGH_IN]


def test_the_lot_in_use_is_the_newest_signed_off_that_is_not_finished(yard: Yard) -> None:
    first, second = yard.lot("A"), yard.lot("B")
    yard.sign(first, yard.red)
    yard.sign(second, yard.red)
    now = standing(yard.records, yard.farm)
    assert now.in_use is not None
    assert now.in_use.lot == second
    yard.records.keep(replace(second, finished_on=date(2026, 3, 2)))
    now = standing(yard.records, yard.farm)
    assert now.in_use is not None
    assert now.in_use.lot == first
    assert now.in_use.state is LotState.IN_USE


def test_a_scoop_that_bears_the_line_of_another_lot_is_named(yard: Yard) -> None:
    first, second = yard.lot("A"), yard.lot("B")
    yard.sign(first, yard.red)
    yard.sign(first, yard.blue)
    yard.sign(second, yard.red)
    (left,) = yard.waiting()
    assert (left.need, left.scoop, left.old_lot, left.lot) == (Need.OTHER_LINE, yard.blue, first, second)


def test_once_no_scoop_in_use_is_weighed_in_with_the_lot_in_use_that_is_waiting(yard: Yard) -> None:
    lot = yard.lot("A")
    yard.sign(lot, yard.red)
    yard.sign(lot, yard.blue)
    yard.records.keep(replace(yard.red, retired_on=DAY))
    assert yard.waiting() == []
    blue = yard.records.keep(replace(yard.blue, retired_on=DAY))
    (left,) = yard.waiting()
    assert (left.need, left.lot) == (Need.NO_SCOOP, lot)
    yard.records.keep(replace(blue, retired_on=None))
    assert yard.waiting() == []


def test_where_every_plan_has_its_powder_weighed_no_scoop_is_missed(yard: Yard) -> None:
    yard.sign(yard.lot("A"), yard.red)
    yard.records.keep(replace(yard.red, retired_on=DAY))
    rule = Scoopfuls(rule=ScoopRule.WEIGH)
    yard.records.keep(Plan(id=new_id(), farm_id=yard.farm.id, name="Milk", groups=(group(3),), scoopfuls=rule))
    assert Need.NO_SCOOP not in [found.need for found in yard.waiting()]


def test_a_plan_that_goes_by_a_retired_vessel_or_scoop_is_waiting_until_it_has_another(yard: Yard) -> None:
    yard.sign(yard.lot("A"), yard.red)
    yard.records.keep(replace(yard.farm, asks_for_charts=False))
    tank = Vessel(id=new_id(), farm_id=yard.farm.id, name="Tank", rim_volume_ml=90_000, usable_share=0.9)
    tank = yard.records.keep(tank)
    rule = Scoopfuls(rule=ScoopRule.ONE_KIND, scoop_id=yard.blue.id)
    plan = Plan(id=new_id(), farm_id=yard.farm.id, name="Milk", groups=(group(3),), scoopfuls=rule, vessel_id=tank.id)
    plan = yard.records.keep(plan)
    of_plan = (Need.PLAN_VESSEL, Need.PLAN_SCOOP)

    def told() -> list[tuple[Need, Plan | None]]:
        return [(found.need, found.plan) for found in yard.waiting() if found.need in of_plan]

    assert told() == []
    yard.records.keep(replace(tank, retired_on=DAY))
    assert told() == [(Need.PLAN_VESSEL, plan)]
    yard.records.keep(replace(yard.blue, retired_on=DAY))
    assert told() == [(Need.PLAN_VESSEL, plan), (Need.PLAN_SCOOP, plan)]
    yard.records.keep(replace(plan, vessel_id=None, scoopfuls=None))
    assert told() == []


def test_a_scoop_marked_for_a_later_lot_is_named_when_the_earlier_lot_comes_back_into_use(yard: Yard) -> None:
    first, second = yard.lot("A"), yard.lot("B")
    yard.sign(first, yard.red)
    yard.sign(second, yard.red)
    yard.records.keep(replace(second, finished_on=date(2026, 3, 2)))
    (left,) = yard.waiting()
    assert (left.need, left.scoop, left.lot) == (Need.MARK_SCOOP, yard.red, first)


def test_sheets_of_earlier_versions_are_outdated_by_a_newer_sign_off_until_they_are_printed_again(yard: Yard) -> None:
    """Nobody was asked then: a printed label counted as on its scoop."""
    old = yard.sign(yard.lot("A"), yard.red)
    yard.print(PrintKind.SCOOP_LABEL, old, yard.red)
    chart = yard.print(PrintKind.WALL_CHART, old)
    assert yard.waiting() == []
    new = yard.sign(yard.lot("B"), yard.red)
    assert [(w.need, w.scoop, w.sheets) for w in yard.waiting()] == [
        (Need.MARK_SCOOP, yard.red, ()),
        (Need.OLD_CHARTS, None, (chart,)),
    ]
    yard.print(PrintKind.SCOOP_LABEL, new, yard.red)
    yard.print(PrintKind.WALL_CHART, new)
    assert yard.waiting() == []


def test_a_label_outlives_the_sign_off_of_another_scoop(yard: Yard) -> None:
    lot = yard.lot("A")
    old = yard.sign(lot, yard.red)
    yard.print(PrintKind.SCOOP_LABEL, old, yard.red)
    chart = yard.print(PrintKind.WALL_CHART, old)
    yard.sign(lot, yard.blue)
    assert outdated_sheets(standing(yard.records, yard.farm), PrintKind.WALL_CHART) == (chart,)
    assert Need.MARK_SCOOP not in [found.need for found in yard.waiting()]


def ended(yard: Yard, sheet: Printed, ending: Ending) -> None:
    told = SheetEnding(id=new_id(), farm_id=yard.farm.id, print_id=sheet.id, ending=ending, at=NOON, by="AB")
    yard.records.end_sheet(told)


@pytest.mark.parametrize("ending", [Ending.TAKEN_DOWN, Ending.REPLACED])
def test_a_sheet_that_somebody_saw_gone_is_waited_for_no_more_until_it_turns_up_again(
    yard: Yard, ending: Ending
) -> None:
    chart = yard.print(PrintKind.WALL_CHART, yard.sign(yard.lot("A"), yard.red))
    yard.sign(yard.lot("B"), yard.red)
    ended(yard, chart, ending)
    assert yard.waiting() == []
    ended(yard, chart, Ending.STILL_UP)
    assert [w.sheets for w in yard.waiting()] == [(chart,)]


def test_a_new_label_that_jammed_leaves_the_old_one_on_the_scoop(yard: Yard) -> None:
    old = yard.print(PrintKind.SCOOP_LABEL, yard.sign(yard.lot("A"), yard.red), yard.red)
    new = yard.sign(yard.lot("B"), yard.red)
    jammed = yard.print(PrintKind.SCOOP_LABEL, new, yard.red)
    assert yard.waiting() == []
    ended(yard, jammed, Ending.SPOILED)
    assert [(w.need, w.scoop) for w in yard.waiting()] == [(Need.MARK_SCOOP, yard.red)]
    assert yard.print(PrintKind.SCOOP_LABEL, new, yard.red).replaces == old.number


def test_a_lot_sheet_is_outdated_by_a_newer_sign_off_of_its_lot_and_scoop_only(yard: Yard) -> None:
    lot = yard.lot("A")
    sheet = yard.print(PrintKind.LOT_SHEET, yard.sign(lot, yard.red), yard.red)
    yard.sign(lot, yard.blue)
    yard.sign(yard.lot("B"), yard.red)
    assert outdated_sheets(standing(yard.records, yard.farm), PrintKind.LOT_SHEET) == ()
    again = yard.sign(lot, yard.red)
    assert outdated_sheets(standing(yard.records, yard.farm), PrintKind.LOT_SHEET) == (sheet,)
    assert [w.lot for w in yard.waiting() if w.need is Need.LOT_SHEETS] == [lot]
    assert yard.print(PrintKind.LOT_SHEET, again, yard.red).replaces == sheet.number
    assert outdated_sheets(standing(yard.records, yard.farm), PrintKind.LOT_SHEET) == ()


def test_a_mix_that_was_not_checked_for_a_week_waits_where_mixes_are_checked(yard: Yard) -> None:
    lot = yard.lot("A")
    yard.sign(lot, yard.red)
    day = NOON.date()
    assert yard.waiting(day + timedelta(days=30)) == []  # a farm without instruments is not nagged
    yard.records.keep(
        Instrument(id=new_id(), farm_id=yard.farm.id, name="Refractometer", kind=InstrumentKind.REFRACTOMETER)
    )
    assert yard.waiting(day + timedelta(days=1)) == []
    (left,) = yard.waiting(day + timedelta(days=2))
    assert (left.need, left.lot, left.day) == (Need.CHECK_MIX, lot, None)
    check = MixCheck(
        id=new_id(), farm_id=yard.farm.id, at=NOON + timedelta(days=2), lot_id=lot.id, readings=(),
        target_share=0.125, target_typed="12.5 %", tolerance_share=0.02, tolerance_typed="2 %",
    )  # fmt: skip
    kept = yard.records.keep(check)
    assert yard.waiting(day + timedelta(days=9)) == []
    (left,) = yard.waiting(day + timedelta(days=10))
    assert (left.need, left.day) == (Need.CHECK_MIX, day + timedelta(days=2))
    yard.records.keep(replace(kept, withdrawn_reason="wrong pail"))
    assert [found.day for found in yard.waiting(day + timedelta(days=9))] == [None]


def test_a_lot_begun_is_to_be_checked_although_the_one_before_was(yard: Yard) -> None:
    first, second = yard.lot("A"), yard.lot("B")
    yard.sign(first, yard.red)
    yard.records.keep(
        MixCheck(
            id=new_id(), farm_id=yard.farm.id, at=NOON, lot_id=first.id, readings=(),
            target_share=0.125, target_typed="12.5 %", tolerance_share=0.02, tolerance_typed="2 %",
        )
    )  # fmt: skip
    yard.sign(second, yard.red)
    needs = [(found.need, found.lot) for found in yard.waiting(NOON.date() + timedelta(days=3))]
    assert (Need.CHECK_MIX, second) in needs


def test_a_plan_told_on_a_computer_whose_clock_was_ahead_does_not_outlast_the_one_that_replaced_it() -> None:
    """A week ahead: else what was fed would go by the older telling from next week on."""
    plan = Plan(id="p", farm_id="f", name="first", groups=())
    ahead, later = replace(plan, name="of the wrong clock"), replace(plan, name="newest")
    other = Plan(id="q", farm_id="f", name="brought in from an older file", groups=())
    week, day = timedelta(days=7), timedelta(days=1)
    tellings = [
        Change(at, "AB", "", noun)
        for at, noun in ((NOON, plan), (NOON + week, ahead), (NOON + day, later), (NOON - day, other))
    ]
    told = _plans_told(tellings)
    assert [(one.on - NOON.date()).days for one in told] == [-1, 0, 1]
    assert [sorted(plan.name for plan in one.plans) for one in told] == [
        [other.name], [other.name, plan.name], [other.name, later.name],
    ]  # fmt: skip
