"""A whole season in few queries tells the same as thing by thing."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from sqlalchemy import event

from calibrator.model import Farm, FillWay, Lot, LotPoint, Scoop, Taught, WeighIn
from calibrator.records import (
    Records,
    bag_sums,
    bag_sums_of,
    count_sign_offs,
    demo_records,
    every_spot_fill,
    lot_points,
    season_lots,
)
from calibrator.records.season import past_fills, taught
from calibrator.science.nested import table, weighed


@pytest.fixture(scope="module")
def sample(tmp_path_factory: pytest.TempPathFactory) -> Iterator[tuple[Records, Farm]]:
    with demo_records(str(tmp_path_factory.mktemp("season"))) as records:
        yield records, records.every(Farm)[0]


def test_each_lot_is_told_as_the_records_tell_it(sample: tuple[Records, Farm]) -> None:
    records, farm = sample
    lots = season_lots(records, farm.id)
    newest = {(s.lot_id, s.scoop_id): s for s in records.sign_offs(farm.id)}
    assert [one.sign_off_id for one in lots] == [s.id for s in newest.values()]
    for one, signed in zip(lots, newest.values(), strict=True):
        lot, weigh_in = records.find(Lot, one.lot_id), records.find(WeighIn, one.weigh_in_id)
        mark = records.marks(sign_off_id=signed.id)[0]
        assert (one.lot_number, one.product, one.arrived_on) == (lot.lot_number, lot.product, lot.arrived_on)
        assert (one.density_g_per_ml, one.at, one.bags) == (signed.density_g_per_ml, signed.at, signed.bags)
        assert one.scoop_name == records.find(Scoop, signed.scoop_id).name
        assert (one.humidity_pct, one.down_wall_mm) == (weigh_in.room_humidity_pct, mark.down_wall_mm)
        assert (one.target_mass_g, one.full_scoops) == (mark.target_mass_g, mark.full_scoops)


def test_points_are_the_same_lots_with_less_of_each(sample: tuple[Records, Farm]) -> None:
    records, farm = sample
    lots, points = season_lots(records, farm.id), lot_points(records, farm.id)
    assert len(points) == len(lots) <= count_sign_offs(records, farm.id)
    assert list(points) == [LotPoint(*(getattr(lot, name) for name in LotPoint._fields)) for lot in lots]


def test_the_sums_of_one_weigh_in_are_those_among_all(sample: tuple[Records, Farm]) -> None:
    records, farm = sample
    one = season_lots(records, farm.id)[3].weigh_in_id
    own = [bag for bag in bag_sums(records, farm.id) if bag.weigh_in_id == one]
    assert len(own) > 1
    assert bag_sums_of(records, [one]) == own


def test_sums_are_of_the_level_fills_that_count(sample: tuple[Records, Farm]) -> None:
    records, farm = sample
    sums = bag_sums(records, farm.id)
    for one in season_lots(records, farm.id):
        told = table(weighed(records.fills(one.weigh_in_id), FillWay.LEVEL))
        # Two people may have dipped one bag: each has a sum of their own.
        parts = [[bag for bag in sums if (bag.weigh_in_id, bag.bag) == (one.weigh_in_id, of.bag)] for of in told.bags]
        counts, means, squares = [], [], []
        for bag in parts:
            scoopfuls, sum_g = sum(part.scoopfuls for part in bag), sum(part.sum_g for part in bag)
            counts.append(sum(part.weighings for part in bag))
            means.append(sum_g / scoopfuls)
            squares.append(sum(part.sum_g2 for part in bag) - sum_g**2 / scoopfuls)
        assert counts == [bag.weighings for bag in told.bags]
        assert sum(len(bag) for bag in parts) == sum(bag.weigh_in_id == one.weigh_in_id for bag in sums)
        assert means == pytest.approx([bag.mean_g for bag in told.bags])
        assert squares == pytest.approx([bag.sum_squares for bag in told.bags], abs=1e-6)


def test_what_each_sign_off_teaches(sample: tuple[Records, Farm]) -> None:
    records, farm = sample
    signed = records.sign_offs(farm.id)
    assert taught(records, farm.id) == [
        Taught(one.weigh_in_id, one.at, one.settling_factor, one.settling_u) for one in signed
    ]


def test_spot_fills_of_all_lots_at_once(sample: tuple[Records, Farm]) -> None:
    records, farm = sample
    one_by_one = [spot.id for lot in records.every(Lot, farm.id) for spot in records.spot_fills(lot.id)]
    assert sorted(spot.id for spot in every_spot_fill(records, farm.id)) == sorted(one_by_one)


def test_each_is_one_query(sample: tuple[Records, Farm]) -> None:
    records, farm = sample
    asked: list[str] = []
    engine = records._opened.engine
    event.listen(engine, "before_cursor_execute", lambda *told: asked.append(told[2]))
    for read in (season_lots, bag_sums, every_spot_fill, lot_points, taught, past_fills):
        read(records, farm.id)
    assert sum(text.lstrip().startswith("SELECT") for text in asked) == 6
