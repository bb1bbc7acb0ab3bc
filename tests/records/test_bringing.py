"""Past weighings into the records: on both kinds of store, all or nothing, found again as brought in."""

from __future__ import annotations

from dataclasses import replace

import pytest
from invented import World, fill, lot, weigh_in

from calibrator.model import Farm, Lot, LotPoint, Scale, Scoop, WeighIn
from calibrator.model.underway import Ended
from calibrator.records import (
    NotAllowed,
    Records,
    bag_sums,
    brought_in,
    import_season,
    lot_points,
    sample_lots_folder,
    season_lots,
)
from calibrator.records.bringing import Past, bring_in
from calibrator.records.past import count_past, lots_of_past, past_weigh_ins
from calibrator.records.season import past_fills, taught
from tests.exported import export_text


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


def test_the_season_reads_columns_and_past_weigh_ins_from_every_store(records: Records) -> None:
    import_season(records, sample_lots_folder())
    farm = records.every(Farm)[0]
    told_anew = records.keep(replace(records.every(Lot, farm.id)[0], product="told anew"))
    world = World(records)
    begun = replace(past(world), fills=())
    own = [replace(one, farm_id=farm.id) for one in (*begun.lots, *begun.weigh_ins)]
    scoop, scale = records.every(Scoop, farm.id)[0], records.every(Scale, farm.id)[0]
    of_farm = replace(own[1], scoop_id=scoop.id, scale_id=scale.id)
    weighed = tuple(fill(of_farm, 290.0 + n) for n in range(3))
    bring_in(records, Past((own[0],), (of_farm,), weighed), file="old.csv", by="MK")

    lots, points = season_lots(records, farm.id), lot_points(records, farm.id)
    assert list(points) == [LotPoint(*(getattr(lot, name) for name in LotPoint._fields)) for lot in lots]
    assert "told anew" in points.column("product")
    assert told_anew.id in points.column("lot_id")
    assert count_past(records, farm.id) == 1
    assert past_weigh_ins(records, farm.id) == [records.find(WeighIn, of_farm.id)]
    assert lots_of_past(records, farm.id) == {own[0].id: records.find(Lot, own[0].id)}
    assert [one.mass_g for one in past_fills(records, farm.id)] == [290.0, 291.0, 292.0]
    added = {bag.weigh_in_id for bag in bag_sums(records, farm.id, past=True)}
    assert added - {bag.weigh_in_id for bag in bag_sums(records, farm.id)} == {of_farm.id}
    assert [one.at for one in taught(records, farm.id)] == [one.at for one in records.sign_offs(farm.id)]
    assert (count_past(records, world.farm.id), past_weigh_ins(records, world.farm.id)) == (0, [])


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
