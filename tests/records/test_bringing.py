"""Past weighings into the records: on both kinds of store, all or nothing, found again as brought in."""

from __future__ import annotations

from dataclasses import replace

import pytest
from invented import World, fill, lot, weigh_in

from calibrator.model import Lot, WeighIn
from calibrator.model.underway import Ended
from calibrator.records import NotAllowed, Records, brought_in, export_text
from calibrator.records.bringing import Past, bring_in


def past(world: World, fills: int = 3) -> Past:
    new = lot(world.farm.id, lot_number="24-0001")
    begun = weigh_in(new, scoop_id=world.scoop.id, scale_id=world.scale.id, abandoned=True)
    return Past((new,), (begun,), tuple(fill(begun, 290.0 + n) for n in range(fills)))


def test_what_was_brought_in_is_kept_and_found_again(records: Records) -> None:
    world = World(records)
    told = past(world, fills=1200)
    shares: list[float] = []
    bring_in(records, told, file="old_100%.csv", by="MK", underway=shares.append)
    assert records.fills(told.weigh_ins[0].id) == list(told.fills)
    assert brought_in(records, Lot) == {told.lots[0].id: "old_100%.csv"}
    assert brought_in(records, WeighIn) == {told.weigh_ins[0].id: "old_100%.csv"}
    assert shares[-1] == 1
    assert shares == sorted(shares)
    assert "brought in from old_100%.csv" in export_text(records)


def test_a_fault_or_an_end_in_the_middle_keeps_nothing(records: Records) -> None:
    world = World(records)
    before = export_text(records)
    told = past(world)
    spoiled = replace(told, fills=(*told.fills, replace(told.fills[0], id="x", typed="\x00")))
    with pytest.raises(NotAllowed, match="cannot be kept"):
        bring_in(records, spoiled, file="old.csv", by="MK")

    def ended(_share: float) -> None:
        raise Ended

    with pytest.raises(Ended):
        bring_in(records, told, file="old.csv", by="MK", underway=ended)
    assert export_text(records) == before
    bring_in(records, told, file="old.csv", by="MK")
    assert len(records.every(Lot)) == 2


def test_a_past_weigh_in_is_never_signed_off(records: Records) -> None:
    world = World(records)
    told = past(world)
    bring_in(records, told, file="old.csv", by="MK")
    world.weigh_in = records.find(WeighIn, told.weigh_ins[0].id)
    world.lot = records.find(Lot, told.lots[0].id)
    with pytest.raises(NotAllowed, match="given up"):
        records.sign_off(world.sign_off(), [])
