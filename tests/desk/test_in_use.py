"""The rule of the lot in use, and the state of a scoop, with whatever is said and in whatever order."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta
from itertools import pairwise
from pathlib import Path

import pytest
from answers import Answers, at_noon
from herd import OZ_G, Herd, group
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as some
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from calibrator.desk.change_over import FedFrom, Wrong, before_sign_off, change_over, finished, keep_lots, refused
from calibrator.desk.chart_faults import Fault, chart_faults
from calibrator.desk.context import Desk
from calibrator.desk.forms.history import changed_words
from calibrator.desk.in_use import LotState, lot_fed, state_of
from calibrator.desk.needs import Need, waiting
from calibrator.desk.pages.tables import TablesPage
from calibrator.desk.scoop_lines import ScoopState, as_before, is_drawn, marked, scoop_state
from calibrator.desk.standing import LotStanding, Standing, standing
from calibrator.desk.theme import Theme
from calibrator.model import (
    Cylinder,
    Ending,
    Lot,
    PrintKind,
    Scoopfuls,
    ScoopMarked,
    ScoopRule,
    SheetEnding,
    SignOff,
    UnitSystem,
    new_id,
)
from calibrator.records import Records
from calibrator.records.lot_history import Topic, lot_history

TODAY = date(2026, 3, 2)
DENSITY = 10 * OZ_G / 665.9
DAYS = some.none() | some.dates(TODAY - timedelta(days=5), TODAY + timedelta(days=5))
LOTS = some.lists(
    some.builds(
        Lot,
        id=some.uuids().map(str),
        farm_id=some.just("farm"),
        lot_number=some.just("A"),
        fed_from=DAYS,
        fed_from_feeding=some.integers(0, 2),
        waits=some.booleans(),
    ),
    max_size=5,
    unique_by=lambda lot: lot.id,
)


@given(LOTS)
def test_exactly_one_of_the_open_lots_is_fed_and_all_others_wait_or_are_over(lots: list[Lot]) -> None:
    fed = lot_fed(lots, TODAY)
    assert (fed is None) == (not lots)
    if fed is None:
        return
    states = [state_of(lot, fed, earlier=True, today=TODAY) for lot in lots]
    assert states.count(LotState.IN_USE) == 1
    assert set(states) <= {LotState.IN_USE, LotState.WAITING, LotState.LEFT_OVER}


@given(LOTS, some.integers(0, 2))
def test_a_lot_that_waits_is_fed_only_when_there_is_no_other(lots: list[Lot], feeding: int) -> None:
    waits = Lot(id="waits", farm_id="farm", lot_number="B", waits=True, fed_from=None, fed_from_feeding=0)
    to_come = replace(waits, fed_from=TODAY + timedelta(days=1), fed_from_feeding=feeding)
    begun = Lot(id="begun", farm_id="farm", lot_number="C")
    for late in (waits, to_come):
        fed = lot_fed([*lots, begun, late], TODAY)
        assert fed is not None
        assert fed.id != late.id
        assert lot_fed([late], TODAY) == late


@pytest.mark.parametrize(("feeding", "fed"), [(0, "next"), (1, "begun"), (2, "begun")])
def test_a_change_over_told_for_today_is_done_from_its_first_feeding_on(feeding: int, fed: str) -> None:
    begun = Lot(id="begun", farm_id="farm", lot_number="C")
    told = Lot(id="next", farm_id="farm", lot_number="D", waits=True, fed_from=TODAY, fed_from_feeding=feeding)
    found = lot_fed([begun, told], TODAY)
    assert found is not None
    assert found.id == fed


@given(LOTS)
def test_lots_of_earlier_versions_are_read_as_they_were_meant(lots: list[Lot]) -> None:
    """The newest change-over, else the newest sign-off: what the program told until then."""
    old = [replace(lot, waits=False, fed_from_feeding=0) for lot in lots]
    changed = [lot for lot in old if lot.fed_from]
    meant = max(changed, key=lambda lot: lot.fed_from or date.min) if changed else old[-1] if old else None
    assert lot_fed(old, TODAY) == meant


@pytest.mark.parametrize(("today", "number"), [(TODAY, "A"), (TODAY + timedelta(days=1), "A"),
                                               (TODAY + timedelta(days=2), "B")])  # fmt: skip
def test_from_a_later_feeding_of_a_day_on_it_is_fed_once_that_day_is_over(today: date, number: str) -> None:
    lots = [
        Lot(id="1", farm_id="farm", lot_number="A"),
        Lot(id="2", farm_id="farm", lot_number="B", waits=True, fed_from=TODAY + timedelta(days=1), fed_from_feeding=1),
    ]
    fed = lot_fed(lots, today)
    assert fed is not None
    assert fed.lot_number == number


@pytest.fixture
def herd(qapp: QApplication, records: Records) -> Herd:
    if qapp.property("tokens") is None:
        Theme(qapp)
    return Herd(records)


def now_of(herd: Herd, today: date = TODAY) -> Standing:
    return standing(herd.records, herd.farm, today)


def of(now: Standing, signed: SignOff) -> LotStanding:
    known = now.lot(signed.lot_id)
    assert known is not None
    return known


def signed_now(herd: Herd, number: str, density: float = DENSITY) -> SignOff:
    """Signed off as the program does it: the lot is asked about first."""
    lot = herd.records.keep(Lot(id=new_id(), farm_id=herd.farm.id, lot_number=number))
    lot = herd.records.keep(before_sign_off(now_of(herd), lot))
    return herd.sign(number, density, lot=lot)


def mark(herd: Herd, signed: SignOff) -> None:
    now = now_of(herd)
    keep_lots(herd.records, marked(now, of(now, signed), herd.red.id, TODAY), "AB")


def states(herd: Herd, *signed: SignOff) -> list[tuple[LotState, ScoopState]]:
    now = now_of(herd)
    return [(of(now, one).state, scoop_state(now, of(now, one), herd.red.id)) for one in signed]


def test_a_second_lot_changes_nothing_until_its_change_over_and_a_scoop_bears_one_line(herd: Herd) -> None:
    first = signed_now(herd, "A")
    assert states(herd, first) == [(LotState.IN_USE, ScoopState.TO_MARK)]
    mark(herd, first)
    assert states(herd, first) == [(LotState.IN_USE, ScoopState.MARKED)]
    second = signed_now(herd, "B", 1.2 * DENSITY)
    kept = [(LotState.IN_USE, ScoopState.MARKED), (LotState.WAITING, ScoopState.TO_MARK)]
    assert states(herd, first, second) == kept
    now = now_of(herd)
    keep_lots(herd.records, change_over(now, of(now, second), FedFrom(TODAY)), "AB")
    assert states(herd, first, second) == [
        (LotState.LEFT_OVER, ScoopState.MARKED), (LotState.IN_USE, ScoopState.TO_MARK),
    ]  # fmt: skip
    mark(herd, second)
    assert states(herd, first, second) == [
        (LotState.LEFT_OVER, ScoopState.TO_MARK), (LotState.IN_USE, ScoopState.MARKED),
    ]  # fmt: skip


def test_a_change_over_now_counts_although_the_clock_was_ahead_at_the_one_before(herd: Herd) -> None:
    first, second = signed_now(herd, "A"), signed_now(herd, "B")
    herd.records.keep(replace(herd.lot_of(first), fed_from=TODAY + timedelta(days=400)))
    now = now_of(herd)
    keep_lots(herd.records, change_over(now, of(now, second), FedFrom(TODAY)), "AB")
    assert [state for state, _ in states(herd, first, second)] == [LotState.LEFT_OVER, LotState.IN_USE]


def test_a_line_is_drawn_since_its_weigh_in_until_another_lots_takes_its_place(herd: Herd) -> None:
    first = signed_now(herd, "A")
    assert is_drawn(now_of(herd), of(now_of(herd), first), herd.red.id)
    told = ScoopMarked(scoop_id=herd.red.id, sign_off_id=first.id, on=first.at.date())
    herd.records.keep(replace(herd.lot_of(first), scoops_marked=(told,)))
    second = signed_now(herd, "B")
    now = now_of(herd)
    assert [is_drawn(now, of(now, one), herd.red.id) for one in (first, second)] == [False, True]
    later = replace(told, on=second.at.date() + timedelta(days=1))
    herd.records.keep(replace(herd.lot_of(first), scoops_marked=(later,)))  # fed again, and drawn anew
    now = now_of(herd)
    assert not is_drawn(now, of(now, second), herd.red.id)


def test_a_label_printed_is_not_yet_a_label_on_the_scoop(herd: Herd) -> None:
    first = signed_now(herd, "A")
    herd.print(PrintKind.SCOOP_LABEL, first, scoop_id=herd.red.id)
    (found,) = [each for each in waiting(now_of(herd)) if each.need is Need.MARK_SCOOP]
    assert found.labelled
    mark(herd, first)
    assert Need.MARK_SCOOP not in [each.need for each in waiting(now_of(herd))]


def test_nor_is_it_where_the_scoop_bears_the_line_of_a_lot_of_an_earlier_version(herd: Herd) -> None:
    first, second = herd.sign("A", DENSITY), signed_now(herd, "B", 1.2 * DENSITY)
    now = now_of(herd)
    keep_lots(herd.records, change_over(now, of(now, second), FedFrom(TODAY)), "AB")
    herd.print(PrintKind.SCOOP_LABEL, second, scoop_id=herd.red.id)
    assert states(herd, first, second)[1] == (LotState.IN_USE, ScoopState.TO_MARK)


def test_what_is_taken_back_of_one_scoop_leaves_what_was_told_of_another_since(herd: Herd) -> None:
    red, blue = (ScoopMarked(scoop_id=id, sign_off_id="s", on=TODAY) for id in ("red", "blue"))
    for told in (None, ()):
        before = Lot(id="lot", farm_id="farm", lot_number="A", scoops_marked=told)
        kept = replace(before, scoops_marked=(red,))
        assert as_before(replace(kept, note="Torn."), kept, before, "red") == replace(before, note="Torn.")
        both = replace(kept, scoops_marked=(red, blue))
        assert as_before(both, kept, before, "red").scoops_marked == (blue,)


def test_when_the_last_of_a_lot_is_fed_the_one_that_waits_longest_is(herd: Herd) -> None:
    first, second, third = (signed_now(herd, number) for number in "ABC")
    now = now_of(herd)
    keep_lots(herd.records, finished(now, of(now, first), TODAY), "AB")
    assert [state for state, _ in states(herd, first, second, third)] == [
        LotState.FINISHED, LotState.IN_USE, LotState.WAITING,
    ]  # fmt: skip
    assert herd.lot_of(second).fed_from == TODAY


def faults(herd: Herd) -> list[Fault]:
    return [found.fault for found in chart_faults(now_of(herd))]


def test_a_farm_that_wants_no_charts_is_told_of_those_that_hang_all_the_same(herd: Herd) -> None:
    first = herd.sign("A", DENSITY)
    plan = herd.plan("Milk", group(109))
    herd.farm = herd.records.keep(replace(herd.farm, asks_for_charts=False))
    assert faults(herd) == []
    herd.print(PrintKind.WALL_CHART, first, plan_id=plan.id)
    assert faults(herd) == []
    herd.sign("A", DENSITY, lot=herd.lot_of(first))
    assert faults(herd) == [Fault.LINE]


def test_a_chart_holds_until_lot_line_plan_or_calves_are_others(herd: Herd) -> None:
    first = herd.sign("A", DENSITY)
    plan = herd.plan("Milk", group(109), count_from=105, count_to=112, counts=())
    assert faults(herd) == [Fault.NONE]
    herd.print(PrintKind.WALL_CHART, first, plan_id=plan.id)
    assert faults(herd) == []
    plan = herd.records.keep(replace(plan, groups=(replace(plan.groups[0], calves=112),)))
    assert faults(herd) == []
    plan = herd.records.keep(replace(plan, groups=(replace(plan.groups[0], calves=113),)))
    assert faults(herd) == [Fault.CALVES]
    plan = herd.records.keep(replace(plan, groups=(replace(plan.groups[0], calves=109, volume_ml=2500.0),)))
    assert faults(herd) == [Fault.PLAN]
    sheet = herd.print(PrintKind.WALL_CHART, first, plan_id=plan.id)
    assert faults(herd) == []
    herd.sign("A", DENSITY, lot=herd.lot_of(first))
    assert faults(herd) == [Fault.LINE]
    herd.sign("B", DENSITY)
    assert faults(herd) == [Fault.LOT]
    down = SheetEnding(
        id=new_id(), farm_id=herd.farm.id, print_id=sheet.id, ending=Ending.TAKEN_DOWN, at=sheet.at, by="AB"
    )
    herd.records.end_sheet(down)
    assert faults(herd) == [Fault.NONE]
    herd.records.end_sheet(replace(down, id=new_id(), ending=Ending.REPLACED))
    assert faults(herd) == []
    herd.records.keep(replace(plan, retired_on=TODAY))
    assert faults(herd) == []


def test_a_chart_is_outdated_by_the_step_for_water_and_by_another_vessel(herd: Herd) -> None:
    signed, tank = herd.sign("A", DENSITY), herd.vessel()
    plan = herd.plan("Milk", group(109), vessel_id=tank.id)
    herd.print(PrintKind.WALL_CHART, signed, plan_id=plan.id)
    usual = herd.farm
    herd.farm = herd.records.keep(replace(usual, currency="€", water_step_l=0.5))  # no figure of this farm's charts
    assert faults(herd) == []
    herd.farm = herd.records.keep(replace(herd.farm, water_step_qt=1.0))
    assert faults(herd) == [Fault.SETTINGS]
    herd.farm = herd.records.keep(replace(herd.farm, water_step_qt=usual.water_step_qt, tolerance_share=0.04))
    assert faults(herd) == [Fault.SETTINGS]
    herd.print(PrintKind.WALL_CHART, signed, plan_id=plan.id)
    assert faults(herd) == []
    tank = herd.records.keep(replace(tank, name="Old tank"))
    assert faults(herd) == []
    herd.records.keep(replace(tank, rim_volume_ml=tank.rim_volume_ml / 2))
    assert faults(herd) == [Fault.VESSEL]
    herd.print(PrintKind.WALL_CHART, signed, plan_id=plan.id)
    assert faults(herd) == []


def test_a_chart_that_may_count_by_a_scoop_retired_since_is_to_be_taken_down(herd: Herd) -> None:
    signed = herd.sign("A", DENSITY)
    counted, weighed = herd.plan("Milk", group(109)), herd.plan("By weight", group(109))
    weighed = herd.records.keep(replace(weighed, scoopfuls=Scoopfuls(rule=ScoopRule.WEIGH)))
    for plan in (counted, weighed):
        herd.print(PrintKind.WALL_CHART, signed, plan_id=plan.id)
    retired = herd.records.keep(replace(herd.red, retired_on=TODAY))
    assert [(found.plan, found.fault) for found in chart_faults(now_of(herd))] == [(counted, Fault.SCOOP)]
    herd.print(PrintKind.WALL_CHART, signed, plan_id=counted.id)  # it has no scoopfuls
    assert faults(herd) == []
    herd.records.keep(replace(retired, retired_on=None))
    assert faults(herd) == []


def test_a_chart_of_another_named_scoop_holds_though_one_is_retired(herd: Herd) -> None:
    signed = herd.sign("A", DENSITY)
    blue = herd.scoop("Blue scoop", Cylinder(diameter_mm=80, height_mm=92))
    newest = herd.sign("A", DENSITY, blue, lot=herd.lot_of(signed))
    plan = herd.plan("Milk", group(109), scoopfuls=Scoopfuls(rule=ScoopRule.ONE_KIND, scoop_id=blue.id))
    herd.print(PrintKind.WALL_CHART, newest, plan_id=plan.id)
    herd.records.keep(replace(herd.red, retired_on=TODAY))
    assert faults(herd) == []
    herd.records.keep(replace(blue, retired_on=TODAY))
    assert faults(herd) == [Fault.SCOOP]


def test_what_is_printed_ahead_for_a_lot_that_waits_takes_no_sheets_place_before_it_is_fed(herd: Herd) -> None:
    first = signed_now(herd, "A")
    plan = herd.plan("Milk", group(109))
    herd.print(PrintKind.WALL_CHART, first, plan_id=plan.id)
    second = signed_now(herd, "B")
    herd.print(PrintKind.WALL_CHART, second, plan_id=plan.id)
    assert faults(herd) == []
    now = now_of(herd)
    keep_lots(herd.records, change_over(now, of(now, second), FedFrom(TODAY)), "AB")
    assert faults(herd) == []
    herd.records.keep(replace(plan, water_temperature_c=39.0))
    assert faults(herd) == [Fault.PLAN]


def test_the_history_of_a_lot_says_on_which_scoop_its_line_is(herd: Herd) -> None:
    first, second = signed_now(herd, "A"), signed_now(herd, "B")
    for signed in (first, second):
        mark(herd, signed)
    told = [change.noun for change in herd.records.history(Lot, first.lot_id)]
    topics = [one.topic for one in lot_history(herd.records, first.lot_id) if isinstance(one.now, Lot)]
    assert topics == [Topic.LOT, Topic.MARK, Topic.MARK, Topic.MARK]
    names = {herd.red.id: herd.red.name}
    words = [changed_words(was, now, UnitSystem.FARM, names) for was, now in pairwise(told)]
    assert words == [
        "its line is still to come on the scoop", "its line is on Red scoop", "its line is no longer on Red scoop",
    ]  # fmt: skip


def test_in_records_of_earlier_versions_too_a_label_saved_is_not_on_the_scoop(
    herd: Herd, qtbot: QtBot, answers: Answers, tmp_path: Path
) -> None:
    first = herd.sign("A", DENSITY)
    herd.print(PrintKind.SCOOP_LABEL, first, scoop_id=herd.red.id)
    assert states(herd, first) == [(LotState.IN_USE, ScoopState.MARKED)]
    herd.sign("A", 1.2 * DENSITY, lot=herd.lot_of(first))
    assert states(herd, first) == [(LotState.IN_USE, ScoopState.TO_MARK)]
    desk = Desk(herd.records, answers, clock=at_noon)
    page = TablesPage(desk)
    desk.changed.connect(page.reload)
    qtbot.addWidget(page)
    page.reload()
    page.open(f"label:{first.lot_id}")
    page.paper.save_to(tmp_path / "label.pdf")
    qtbot.waitUntil(lambda: len(herd.records.prints(herd.farm.id)) == 2)
    assert states(herd, first) == [(LotState.IN_USE, ScoopState.TO_MARK)]
    page.paper.choice.picks[0].on_button.click()
    assert states(herd, first) == [(LotState.IN_USE, ScoopState.MARKED)]


@settings(deadline=None, max_examples=8, suppress_health_check=[HealthCheck.function_scoped_fixture])
@given(doings=some.lists(some.tuples(some.sampled_from(["sign", "mark", "feed", "finish"]), some.integers(0, 2))))
def test_whatever_is_done_one_lot_is_fed_and_a_scoop_bears_the_line_of_one(
    herd: Herd, doings: list[tuple[str, int]]
) -> None:
    lots = [signed_now(herd, f"{new_id()}") for _ in range(3)]
    for what, number in doings:
        signed, now = lots[number], now_of(herd)
        known = of(now, signed)
        if what == "sign":
            herd.records.keep(before_sign_off(now, known.lot))
            lots[number] = herd.sign("", DENSITY, lot=herd.lot_of(signed))
        elif what == "mark":
            mark(herd, signed)
        elif what == "feed":
            keep_lots(herd.records, change_over(now, known, FedFrom(TODAY)), "AB")
        elif known.lot.finished_on is None:
            keep_lots(herd.records, finished(now, known, TODAY), "AB")
        then, own = now_of(herd), [scoop for _, scoop in states(herd, *lots)]
        assert [known.state for known in then.lots].count(LotState.IN_USE) == (1 if then.open_lots else 0)
        assert own.count(ScoopState.MARKED) <= 1
        if what in ("sign", "mark") and now.in_use and then.in_use:
            assert then.in_use.lot.id == now.in_use.lot.id
    for known in now_of(herd).lots:  # the next example begins without lots that are open
        herd.records.keep(replace(known.lot, finished_on=TODAY))


def test_a_plan_out_of_a_file_that_no_chart_can_be_made_of_has_none_that_holds(herd: Herd) -> None:
    first = herd.sign("A", DENSITY)
    plan = herd.plan("Milk", group(109), count_from=105, count_to=112, counts=())
    herd.print(PrintKind.WALL_CHART, first, plan_id=plan.id)
    herd.records.keep(replace(plan, count_step=0))
    assert faults(herd) == []
    herd.print(PrintKind.WALL_CHART, first, plan_id=plan.id)
    assert faults(herd) == [Fault.CALVES]


def test_the_day_a_lot_is_fed_from_is_held_against_its_arrival_its_weigh_in_and_the_lots_after_it(herd: Herd) -> None:
    first, second = signed_now(herd, "A"), signed_now(herd, "B")
    weighed = first.at.astimezone().date()
    before = weighed - timedelta(days=1)
    now = now_of(herd)
    assert refused(now, of(now, first), weighed) is None
    told = refused(now, of(now, first), before)
    assert told is not None
    assert (told.why, told.day) == (Wrong.BEFORE_WEIGHED, weighed)
    herd.records.keep(replace(herd.lot_of(first), arrived_on=before))
    now = now_of(herd)
    assert refused(now, of(now, first), before) is None  # the day it came says more than the day it was weighed
    told = refused(now, of(now, first), before - timedelta(days=1))
    assert told is not None
    assert (told.why, told.day) == (Wrong.BEFORE_ARRIVAL, before)
    keep_lots(herd.records, change_over(now, of(now, second), FedFrom(TODAY)), "AB")
    now = now_of(herd)
    assert refused(now, of(now, first), TODAY) is None
    told = refused(now, of(now, first), TODAY - timedelta(days=1))
    assert told is not None
    assert (told.why, told.lot.id, told.day) == (Wrong.BEFORE_OTHER, second.lot_id, TODAY)
