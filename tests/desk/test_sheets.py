"""From the records to a plan's rows, without a window."""

from __future__ import annotations

from dataclasses import replace

import pytest
from herd import OZ_G, QT_ML, Herd, group

from calibrator.desk.sheets import (
    changes,
    plan_sheet,
    powder_before,
    powder_in_use,
    read_counts,
    suggested_range,
    water_step_ml,
)
from calibrator.desk.standing import standing
from calibrator.model import Box, FillWay, Plan, UnitSystem, Vessel
from calibrator.records import Records

TEN_OZ_LEVEL = 10 * OZ_G / 665.9


@pytest.fixture
def herd(records: Records) -> Herd:
    return Herd(records)


def test_a_lot_offers_each_scoop_level_and_to_its_line(herd: Herd) -> None:
    signed = herd.sign("25-1103C", 1.2 * TEN_OZ_LEVEL)
    blue = herd.scoop("Blue scoop", Box(length_mm=90, width_mm=80, height_mm=92))
    herd.sign("", 0.8 * TEN_OZ_LEVEL, blue, herd.lot_of(signed))
    ways = powder_in_use(herd.records, standing(herd.records, herd.farm)).ways
    told = [(way.name, way.way, round(way.mass_g / OZ_G, 6)) for way in ways]
    assert told == [
        ("Red scoop", FillWay.LEVEL, 12.0),
        ("Red scoop", FillWay.TO_MARK, 10.0),
        ("Blue scoop", FillWay.LEVEL, 8.0),
        ("Blue scoop", FillWay.TO_MARK, 10.0),
    ]


def test_a_weighing_anew_takes_the_place_of_the_old_one(herd: Herd) -> None:
    signed = herd.sign("25-1103C", TEN_OZ_LEVEL)
    herd.sign("", 1.1 * TEN_OZ_LEVEL, lot=herd.lot_of(signed))
    now = standing(herd.records, herd.farm)
    here, before = powder_in_use(herd.records, now), powder_before(herd.records, now)
    assert before is not None
    assert [round(w.mass_g / OZ_G, 6) for w in here.ways] == [11.0, 10.0]
    assert [round(w.mass_g / OZ_G, 6) for w in before.ways] == [10.0, 10.0]


def test_a_scoop_put_away_is_not_counted_with(herd: Herd) -> None:
    signed = herd.sign("25-1103C", TEN_OZ_LEVEL)
    herd.records.keep(replace(herd.red, retired_on=signed.at.date()))
    assert powder_in_use(herd.records, standing(herd.records, herd.farm)).ways == ()


def test_without_a_lot_there_is_powder_by_its_usual_label_and_no_scoop(herd: Herd) -> None:
    here = powder_in_use(herd.records, standing(herd.records, herd.farm))
    assert (here.lot, here.ways) == (None, ())
    sheet = plan_sheet(herd.farm, herd.plan(), None, here)
    line = sheet.groups[0].today_line
    assert line is not None
    assert line.batch.mix.powder_g == pytest.approx(1090 * OZ_G)
    assert line.scoops is None


def test_every_row_keeps_the_ratio(herd: Herd) -> None:
    """10 oz of powder for every 2 qt of water, whatever the count (common practice, no source)."""
    herd.sign("25-1103C", TEN_OZ_LEVEL)
    here = powder_in_use(herd.records, standing(herd.records, herd.farm))
    (sheet,) = plan_sheet(herd.farm, herd.plan(count_from=1, count_to=60), None, here).groups
    for number in range(len(sheet)):
        mix = sheet.line(number).batch.mix
        assert mix.powder_g / OZ_G == pytest.approx(5 * mix.water_ml / QT_ML, rel=1e-3)


def test_changes_tell_what_each_group_took_before(herd: Herd) -> None:
    herd.sign("25-1103C", TEN_OZ_LEVEL)
    herd.sign("25-1204A", 2 * TEN_OZ_LEVEL)
    plan: Plan = herd.plan("Morning milk", group(10, "Young"), group(0, "Sold"), group(4, "Old"))
    now = standing(herd.records, herd.farm)
    before = powder_before(herd.records, now)
    assert before is not None
    vessels: dict[str, Vessel] = {}
    found = list(changes(herd.farm, [plan], vessels, before, powder_in_use(herd.records, now)))
    assert [change.group.name for change in found] == ["Young", "Old"]
    counts = [(c.before.scoops, c.now.scoops) for c in found]
    assert [(a.scoopfuls, b.scoopfuls) for a, b in counts if a and b] == [(10, 5), (4, 2)]
    assert all(change.differs for change in found)


@pytest.mark.parametrize(
    ("text", "counts"),
    [
        ("109, 111, 120", (109, 111, 120)),
        ("120 109;111  109", (109, 111, 120)),
        ("", ()),
        ("0, 5", (5,)),
        ("109.5", None),
        ("-3", None),
        ("one hundred", None),
        ("1234567", None),
        ("٣", None),
    ],
)
def test_counts_are_read_or_refused(text: str, counts: tuple[int, ...] | None) -> None:
    assert read_counts(text) == counts


def test_the_range_proposed_holds_tomorrows_count() -> None:
    assert suggested_range(109) == (99, 119)
    assert suggested_range(3) == (1, 13)


def test_a_step_larger_than_the_water_is_left_out(herd: Herd) -> None:
    assert water_step_ml(herd.farm, 10 * QT_ML) == pytest.approx(0.25 * QT_ML)
    assert water_step_ml(herd.farm, 0.1 * QT_ML) == 0.0
    metric = replace(herd.farm, units=UnitSystem.METRIC)
    assert water_step_ml(metric, 5000.0) == pytest.approx(100.0)
