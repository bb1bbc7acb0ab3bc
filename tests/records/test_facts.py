"""Facts: kept once, in order, never changed; sign-off freezes; sheets are numbered."""

from __future__ import annotations

from concurrent.futures import ThreadPoolExecutor
from dataclasses import replace
from typing import Any

import invented
import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from invented import World
from sqlalchemy import text

from calibrator.model import Ending, Fill, Plan, PrintKind, Step, TrialFill, new_id
from calibrator.records import EditedMeanwhile, NotAllowed, Records
from calibrator.records.layout import metadata
from tests.exported import export_text

invented.register()


@pytest.fixture
def world(records: Records) -> World:
    return World(records)


def test_fills_come_back_in_order_as_they_were_kept(records: Records, world: World) -> None:
    assert records.fills(world.weigh_in.id) == world.fills
    assert records.fills("x") == []


@settings(suppress_health_check=list(HealthCheck), max_examples=15, deadline=None)
@given(data=st.data())
def test_whatever_fill_can_be_kept_comes_back_unchanged(records: Records, world: World, data: st.DataObject) -> None:
    told = data.draw(invented.any_of(Fill))
    fill = replace(told, id=new_id(), weigh_in_id=world.weigh_in.id, struck_reason=None)
    assert records.add_fill(fill) == fill
    assert records.fills(world.weigh_in.id)[-1] == fill


def test_a_fill_delivered_twice_counts_once(records: Records, world: World) -> None:
    before = records.version()
    assert records.add_fill(world.fills[0]) == world.fills[0]
    assert records.version() == before
    with pytest.raises(NotAllowed, match="different fill is already kept"):
        records.add_fill(replace(world.fills[0], mass_g=1.0))


@pytest.mark.parametrize(
    ("change", "sentence"),
    [
        ({"struck_reason": "spilled"}, "cannot be struck out already"),
        ({"weigh_in_id": "x"}, "no weigh-in with the name x"),
        ({"mass_g": float("nan")}, "mass_g: is not a number"),
        ({"bag": 2**31}, "bag: is too large"),
    ],
)
def test_an_unsound_fill_is_refused(records: Records, world: World, change: dict[str, Any], sentence: str) -> None:
    with pytest.raises(NotAllowed, match=sentence):
        records.add_fill(invented.fill(world.weigh_in, **change))
    assert records.fills(world.weigh_in.id) == world.fills


def test_a_struck_fill_stays_and_can_count_again(records: Records, world: World) -> None:
    first, second = world.fills
    struck = records.strike(first.id, "spilled", "AB")
    assert struck == replace(first, struck_reason="spilled")
    assert records.fills(world.weigh_in.id) == [struck, second]
    assert records.strike(first.id, "bumped the scale", "CD").struck_reason == "bumped the scale"
    assert records.restore(first.id, "CD") == first
    assert records.fills(world.weigh_in.id) == [first, second]


def test_taking_back_what_counts_already_changes_nothing(records: Records, world: World) -> None:
    before = records.version()
    assert records.restore(world.fills[0].id, "AB") == world.fills[0]
    assert records.version() == before


def test_striking_needs_a_reason_and_a_fill(records: Records, world: World) -> None:
    with pytest.raises(NotAllowed, match="Say why this fill is struck out"):
        records.strike(world.fills[0].id, " ", "AB")
    with pytest.raises(NotAllowed, match="no fill with the name x"):
        records.strike("x", "spilled", "AB")
    with pytest.raises(NotAllowed, match="no spot fill with the name x"):
        records.restore_spot("x", "AB")


def test_sign_off_keeps_its_marks_and_freezes_the_weigh_in(records: Records, world: World) -> None:
    told = world.sign_off()
    marks = [invented.mark(told, target_mass_g=567.0), invented.mark(told)]
    assert records.sign_off_of(world.weigh_in.id) is None
    records.sign_off(told, marks, seen_fills=world.fills)
    assert records.sign_offs(world.farm.id) == [told]
    assert records.sign_offs(world.farm.id, world.lot.id) == [told]
    assert records.sign_offs(world.farm.id, "x") == []
    assert records.sign_off_of(world.weigh_in.id) == told
    assert records.marks(told.id) == records.marks(scoop_id=world.scoop.id) == marks
    assert records.marks(lot_id=world.lot.id) == marks
    assert records.marks(lot_id="x") == []
    for refused in (
        lambda: records.keep(replace(world.weigh_in, step=Step.SIGN_OFF)),
        lambda: records.add_fill(invented.fill(world.weigh_in)),
        lambda: records.strike(world.fills[0].id, "spilled", "AB"),
        lambda: records.restore(world.fills[0].id, "AB"),
        lambda: records.sign_off(world.sign_off(), []),
    ):
        with pytest.raises(NotAllowed, match=r"signed off (and cannot be changed|already by AB)"):
            refused()
    assert records.keep(replace(world.lot, note="the lot itself may still be corrected")).revision


def test_marks_come_with_their_own_sign_off(records: Records, world: World) -> None:
    told = world.sign_off()
    with pytest.raises(NotAllowed, match="only be kept with the sign-off it belongs to"):
        records.sign_off(told, [invented.mark(world.sign_off())])
    assert records.sign_offs(world.farm.id) == []


def test_a_sign_off_whose_marks_fail_leaves_nothing(records: Records, world: World) -> None:
    told = world.sign_off()
    good = invented.mark(told)
    with pytest.raises(NotAllowed, match="names something"):
        records.sign_off(told, [good, invented.mark(told, scoop_id="x")])
    assert records.sign_offs(world.farm.id) == []
    assert records.marks() == []
    records.sign_off(told, [good])


@pytest.mark.parametrize("kind", ["scoop", "scale", "lot"])
def test_figures_from_older_tellings_cannot_be_signed(records: Records, world: World, kind: str) -> None:
    told = world.sign_off()
    noun = getattr(world, kind)
    newest = records.keep(replace(noun, **{"lot_number" if kind == "lot" else "name": "other"}))
    with pytest.raises(EditedMeanwhile) as refused:
        records.sign_off(told, [])
    assert refused.value.newest == newest


@pytest.mark.parametrize("kind", ["scoop", "scale", "lot", "weigh_in"])
def test_a_sign_off_of_unknown_things_is_refused(records: Records, world: World, kind: str) -> None:
    with pytest.raises(NotAllowed, match=f"no {kind.replace('_', '-')} with the name x"):
        records.sign_off(world.sign_off(**{f"{kind}_id": "x"}), [])


def test_figures_that_missed_a_fill_cannot_be_signed(records: Records, world: World) -> None:
    records.add_fill(invented.fill(world.weigh_in))
    with pytest.raises(EditedMeanwhile, match="This weigh-in was changed meanwhile"):
        records.sign_off(world.sign_off(), [], seen_fills=world.fills)


def test_a_given_up_weigh_in_cannot_be_signed(records: Records, world: World) -> None:
    records.keep(replace(world.weigh_in, abandoned=True))
    with pytest.raises(NotAllowed, match="given up"):
        records.sign_off(world.sign_off(), [])


def test_spot_fills_belong_to_a_signed_lot(records: Records, world: World) -> None:
    with pytest.raises(NotAllowed, match="Sign off its weigh-in first"):
        records.add_spot_fill(invented.spot(world.sign_off()))
    told = world.signed()
    spots = [records.add_spot_fill(invented.spot(told, mass_g=mass)) for mass in (287.0, 293.0)]
    assert records.spot_fills(world.lot.id) == spots
    assert records.spot_fills("x") == []
    struck = records.strike_spot(spots[1].id, "wrong scoop", "AB")
    assert records.spot_fills(world.lot.id) == [spots[0], struck]
    assert records.restore_spot(spots[1].id, "AB") == spots[1]
    with pytest.raises(NotAllowed, match="Sign off its weigh-in first"):
        records.add_spot_fill(invented.spot(told, lot_id=records.keep(invented.lot(world.farm.id)).id))


def test_sheets_are_numbered_and_name_what_they_replace(records: Records, world: World) -> None:
    told = world.signed()
    plan = records.keep(Plan(id=new_id(), farm_id=world.farm.id, name="all", groups=()))
    label, chart = (
        invented.printed(told),
        invented.printed(told, kind=PrintKind.WALL_CHART, scoop_id=None, plan_id=plan.id),
    )
    first = records.record_print(label)
    second = records.record_print(chart)
    third = records.record_print(replace(label, id=new_id()))
    fourth = records.record_print(replace(chart, id=new_id()))
    assert [(one.number, one.replaces) for one in (first, second, third, fourth)] == [
        (1, None),
        (2, None),
        (3, 1),
        (4, 2),
    ]
    assert records.prints(world.farm.id) == [first, second, third, fourth]


def test_each_farm_numbers_its_own_sheets(records: Records, world: World) -> None:
    other = World(records, "Far Side")
    assert records.record_print(invented.printed(world.signed())).number == 1
    assert records.record_print(invented.printed(other.signed())).number == 1


def test_two_who_print_at_once_get_different_numbers(url: str, records: Records, world: World) -> None:
    told = world.signed()
    with ThreadPoolExecutor(4) as pool:
        sheets = list(pool.map(lambda _: records.record_print(invented.printed(told)), range(20)))
    assert sorted(one.number for one in sheets) == list(range(1, 21))
    assert [one.replaces for one in records.prints(world.farm.id)] == [None, *range(1, 20)]


def test_two_who_change_one_thing_at_once_do_not_both_succeed(records: Records, world: World) -> None:
    def change(name: str) -> bool:
        try:
            return bool(records.keep(replace(world.scoop, name=name)))
        except EditedMeanwhile:
            return False

    with ThreadPoolExecutor(4) as pool:
        assert sum(pool.map(change, "abcdefgh")) == 1
    assert len(records.history(type(world.scoop), world.scoop.id)) == 2


def test_the_version_grows_with_each_change_and_only_then(records: Records, world: World) -> None:
    seen = [records.version()]
    for act in (
        lambda: records.add_fill(invented.fill(world.weigh_in)),
        lambda: records.strike(world.fills[0].id, "spilled", "AB"),
        lambda: records.keep(replace(world.farm, name="x")),
        lambda: world.signed(),
    ):
        act()
        seen.append(records.version())
    assert seen == sorted(set(seen))
    records.fills(world.weigh_in.id)
    assert records.version() == seen[-1]


def test_the_database_itself_refuses_to_change_or_forget(records: Records, world: World) -> None:
    told = world.signed()
    records.strike_spot(records.add_spot_fill(invented.spot(told)).id, "spilled", "AB")
    other = records.keep(invented.weigh_in(world.lot))
    records.strike(records.add_fill(invented.fill(other)).id, "spilled", "AB")
    records.end_sheet(invented.ending(records.record_print(invented.printed(told))))
    records.keep(Plan(id=new_id(), farm_id=world.farm.id, name="all", groups=()))
    records.keep(invented.vessel(world.farm.id))
    invented.checks_of_the_mix(records, world)
    invented.feeders_and_prices(records, world)
    before = export_text(records)
    for table in sorted(metadata.tables):
        column = {"changes": "at", "fingerprints": "sha256"}.get(table, "change")
        for statement in (f"UPDATE {table} SET {column} = {column}", f"DELETE FROM {table}"):
            with pytest.raises(NotAllowed, match="only ever added to"), records.writing("record") as writing:
                writing.connection.execute(text(statement))
    assert export_text(records) == before


def test_a_lot_sheet_replaces_only_an_older_one_of_the_same_lot(records: Records, world: World) -> None:
    told = world.signed()
    of_one = [records.record_print(invented.printed(told, kind=PrintKind.LOT_SHEET)) for _ in range(2)]
    world.lot = records.keep(invented.lot(world.farm.id, lot_number="another"))
    world.weigh_in = records.keep(
        invented.weigh_in(world.lot, scoop_id=world.scoop.id, scale_id=world.scale.id), by="AB"
    )
    of_other = records.record_print(invented.printed(world.signed(), kind=PrintKind.LOT_SHEET))
    label = records.record_print(invented.printed(told))
    assert [(sheet.number, sheet.replaces) for sheet in (*of_one, of_other, label)] == [
        (1, None),
        (2, 1),
        (3, None),
        (4, None),
    ]


def test_what_became_of_a_sheet_is_kept_once_with_who_and_when(records: Records, world: World) -> None:
    sheet = records.record_print(invented.printed(world.signed()))
    down = invented.ending(sheet)
    records.end_sheet(down)
    records.end_sheet(down)
    up = invented.ending(sheet, ending=Ending.STILL_UP, by="CD")
    records.end_sheet(up)
    assert records.sheet_endings(world.farm.id) == [down, up]
    with pytest.raises(NotAllowed):
        records.end_sheet(replace(down, by="EF"))


def test_of_a_sheet_that_was_never_printed_nothing_is_kept(records: Records, world: World) -> None:
    sheet = records.record_print(invented.printed(world.signed()))
    other = World(records, name="Other")
    for unknown in (replace(sheet, id="nothing"), replace(sheet, farm_id=other.farm.id)):
        with pytest.raises(NotAllowed):
            records.end_sheet(invented.ending(unknown))
    assert records.sheet_endings(world.farm.id) == []


@settings(suppress_health_check=list(HealthCheck), max_examples=15, deadline=None)
@given(data=st.data())
def test_whatever_fill_of_a_trial_can_be_kept_comes_back(records: Records, world: World, data: st.DataObject) -> None:
    of = records.keep(invented.trial(world.lot, world.scoop, world.scale))
    fill = replace(data.draw(invented.any_of(TrialFill)), id=new_id(), trial_id=of.id, struck_reason=None)
    assert records.add_trial_fill(fill) == records.add_trial_fill(fill) == fill
    assert records.trial_fills(of.id) == [fill]


def test_a_struck_fill_of_a_trial_stays_and_can_count_again(records: Records, world: World) -> None:
    of = records.keep(invented.trial(world.lot, world.scoop, world.scale))
    first, second = (records.add_trial_fill(invented.trial_fill(of, who, number=at + 1)) for at, who in enumerate("AB"))
    struck = records.strike_trial_fill(first.id, "heaped", "CD")
    assert struck == replace(first, struck_reason="heaped")
    assert not struck.counts
    assert records.trial_fills(of.id) == [struck, second]
    assert records.restore_trial_fill(first.id, "CD") == first
    assert records.trial_fills("x") == []
    with pytest.raises(NotAllowed, match="Say why this trial fill is struck out"):
        records.strike_trial_fill(first.id, "", "CD")


@pytest.mark.parametrize("end", [{"closed": True}, {"withdrawn_reason": "wrong scoop"}])
def test_a_closed_trial_takes_no_fills_until_it_is_taken_up_again(
    records: Records, world: World, end: dict[str, Any]
) -> None:
    of = records.keep(invented.trial(world.lot, world.scoop, world.scale))
    fill = records.add_trial_fill(invented.trial_fill(of))
    ended = records.keep(replace(of, **end))
    for refused in (
        lambda: records.add_trial_fill(invented.trial_fill(of)),
        lambda: records.strike_trial_fill(fill.id, "spilled", "AB"),
    ):
        with pytest.raises(NotAllowed, match="trial is closed"):
            refused()
    assert records.add_trial_fill(fill) == fill
    records.keep(replace(ended, closed=False, withdrawn_reason=""))
    assert records.strike_trial_fill(fill.id, "spilled", "AB").struck_reason == "spilled"


def test_a_fill_belongs_to_a_trial_that_is_there(records: Records, world: World) -> None:
    of = records.keep(invented.trial(world.lot, world.scoop, world.scale))
    with pytest.raises(NotAllowed, match="no feeder trial with the name x"):
        records.add_trial_fill(invented.trial_fill(of, trial_id="x"))
