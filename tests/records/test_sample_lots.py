"""The invented season: it comes in whole, tells its story, and agrees with the science of today."""

from __future__ import annotations

import json
from collections import Counter
from collections.abc import Iterator
from dataclasses import fields
from datetime import UTC, datetime, timedelta
from pathlib import Path
from statistics import mean

import pytest

from calibrator.desk import findings
from calibrator.desk.at_hand import at_hand
from calibrator.desk.lessons import experience
from calibrator.desk.sample import season_clock
from calibrator.desk.standing import standing
from calibrator.model import (
    BagCount,
    Farm,
    FeederTrial,
    Lot,
    MixCheck,
    PackageKind,
    Printed,
    Scoop,
    SignOff,
    Vessel,
    WeighIn,
)
from calibrator.records import Records, demo_records, import_season, sample_lots_folder
from calibrator.science.within_lot import Inside, Opened, inside_lot
from tests.exported import export_text

NAMES = {"id", "sign_off_id", "at", "program_version", "scoop_revision", "scale_revision", "lot_revision"}


@pytest.fixture(scope="module")
def season(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Records]:
    with demo_records(tmp_path_factory.mktemp("demo")) as records:
        yield records


def at_noon() -> datetime:
    return datetime(2030, 1, 31, 12, 0, tzinfo=UTC)


@pytest.fixture(scope="module")
def farm(season: Records) -> Farm:
    (only,) = season.every(Farm)
    return only


def test_the_season_comes_in_whole_and_goes_out_the_same(season: Records) -> None:
    assert export_text(season) == (sample_lots_folder() / "season.json").read_text(encoding="utf-8")


def test_the_readme_says_that_all_is_invented() -> None:
    told = (sample_lots_folder() / "README.md").read_text(encoding="utf-8")
    assert "Everything here is invented" in told


def test_bringing_it_in_counts_what_came(file: Path) -> None:
    with Records.open(str(file)) as records:
        brought = import_season(records, sample_lots_folder())
        assert (brought.counts["lot"], brought.counts["sign_off"], brought.there) == (15, 14, 0)
        assert brought.added == records.version()
        assert import_season(records, sample_lots_folder()).added == 0


def test_it_tells_its_story(season: Records, farm: Farm) -> None:
    lots = season.every(Lot, farm.id)
    signed = season.sign_offs(farm.id)
    assert len(lots) == 15
    assert [sign_off.lot_id for sign_off in signed] == [lot.id for lot in lots[:-1]]
    assert [lot.finished_on is None for lot in lots] == [False] * 13 + [True, True]
    assert {lot.package for lot in lots} == set(PackageKind)
    assert sum(lot.medicated for lot in lots) == 1
    assert len(season.every(Vessel, farm.id)) == 2
    fills = [fill for one in season.every(WeighIn, farm.id) for fill in season.fills(one.id)]
    assert len([fill for fill in fills if not fill.counts]) == 1
    assert sum(one.abandoned for one in season.every(WeighIn, farm.id)) == 1
    assert all(len(season.spot_fills(lot.id)) >= 2 for lot in lots[:-1])


def test_autumn_brings_a_lighter_product_and_spring_a_better_known_scoop(season: Records, farm: Farm) -> None:
    signed = season.sign_offs(farm.id)
    scoops = season.every(Scoop, farm.id)
    assert [scoop.retired_on is None for scoop in scoops] == [False, True]
    assert [scoop.volume_from_water for scoop in scoops] == [False, True]
    assert scoops[1].replaces_id == scoops[0].id
    assert scoops[0].retired_why
    assert [lot.agglomerated for lot in season.every(Lot, farm.id)] == [False] * 12 + [True] * 3
    lighter = {one.lot_id for one in signed if one.density_g_per_ml < 0.5}
    assert lighter == {lot.id for lot in season.every(Lot, farm.id)[12:14]}
    by_scoop = [[one.density_u_g_per_ml for one in signed if one.scoop_id == scoop.id] for scoop in scoops]
    assert min(by_scoop[0]) > max(by_scoop[1])


def test_a_trial_shows_whose_scoopfuls_are_heavy_and_that_practice_helped(season: Records, farm: Farm) -> None:
    above = []
    for trial in season.every(FeederTrial, farm.id):
        fills = season.trial_fills(trial.id)
        assert Counter(fill.person for fill in fills) == {"RO": 5, "MK": 5, "JT": 5, "LP": 5}
        assert trial.closed
        own = mean(fill.mass_g for fill in fills if fill.person == "JT")
        above.append(own / mean(fill.mass_g for fill in fills if fill.person != "JT") - 1)
    assert 0.03 < above[0] < 0.08
    assert 0 < above[1] < above[0]


def test_one_lot_jumps_from_the_fifth_bag_on(season: Records, farm: Farm) -> None:
    told = {}
    signed = season.sign_offs(farm.id)
    bag_sd, fill_sd = mean(one.bag_sd_share for one in signed), mean(one.fill_sd_share for one in signed)
    for one in signed:
        bags = [Opened(spot.mass_g) for spot in season.spot_fills(one.lot_id)]
        told[season.find(Lot, one.lot_id).lot_number] = inside_lot(bags, one.level_mean_g, bag_sd, fill_sd, 60)
    (jumped,) = (number for number, found in told.items() if found.told is Inside.JUMP)
    assert (jumped, told[jumped].at) == ("26-0808C", 4)


def test_its_mix_checks_name_feeders_and_one_mixes_strong(season: Records, farm: Farm) -> None:
    checks = season.every(MixCheck, farm.id)
    off = {who: [c.solids_share / c.target_share - 1 for c in checks if c.feeder == who] for who in ("RO", "MK", "JT")}
    assert all(len(own) >= 5 for own in off.values())
    assert mean(off["JT"]) > 0.03 > max(abs(mean(off["RO"])), abs(mean(off["MK"])))


def test_its_powder_is_true_to_what_was_fed(season: Records, farm: Farm) -> None:
    """On the day that the demo shows, the lot in use is neither used up nor more than came."""
    lots = season.every(Lot, farm.id)
    for lot in lots[:-1]:
        assert lot.packages_left is not None
        assert lot.package_count is not None
        assert 0 < lot.packages_left.packages < lot.package_count
    today = season_clock(season, at_noon)().date()
    assert lots[-1].arrived_on == today - timedelta(days=1)
    known = at_hand(standing(season, farm), today)
    assert known is not None
    assert known.stock.days in range(1, 8)
    assert known.next_lot is not None
    assert [count.lot_id for count in season.every(BagCount, farm.id)] == [lots[8].id, lots[13].id]


def test_the_clock_of_records_without_lots_is_the_one_on_the_wall(file: Path) -> None:
    with Records.open(str(file)) as records:
        assert season_clock(records, at_noon) is at_noon


def test_its_figures_are_plausible(season: Records, farm: Farm) -> None:
    for one in season.sign_offs(farm.id):
        assert 0.45 < one.density_low_g_per_ml < one.density_high_g_per_ml < 0.60
        assert one.bag_sd_share < 0.02
        assert 0.005 < one.fill_sd_share < 0.03
        (mark,) = season.marks(one.id)
        assert mark.mass_g == pytest.approx(283.5, rel=0.02)
    assert all(500 < scoop.volume_ml < 700 for scoop in season.every(Scoop, farm.id))


def test_each_sheet_names_the_one_before_it(season: Records, farm: Farm) -> None:
    sheets: list[Printed] = season.prints(farm.id)
    assert [sheet.number for sheet in sheets] == list(range(1, 30))
    labels = [sheet for sheet in sheets if sheet.scoop_id]
    assert sum(sheet.replaces is None for sheet in labels) == 2  # one for each scoop


def test_the_sign_offs_are_what_the_science_says_today(season: Records, farm: Farm) -> None:
    """Where this fails after a change of the science, run `python tests/make_sample_lots.py`."""
    for stored in season.sign_offs(farm.id):
        weigh_in = season.find(WeighIn, stored.weigh_in_id)
        known = findings.read(season, weigh_in.id, experience(season, weigh_in))
        told, mark = findings.sign_off(known, findings.work_out(known), stored.by, stored.at, "")
        for field in fields(SignOff):
            if field.name not in NAMES:
                expected = getattr(stored, field.name)
                close = pytest.approx(expected, rel=1e-6) if isinstance(expected, float) else expected
                assert getattr(told, field.name) == close, (stored.lot_id, field.name)
        (kept,) = season.marks(stored.id)
        for name in ("full_scoops", "height_mm", "down_wall_mm", "mass_g", "mass_u_g"):
            assert getattr(mark, name) == pytest.approx(getattr(kept, name), rel=1e-6)


def test_what_was_typed_is_what_was_kept(season: Records) -> None:
    """The scale shows tenths of an ounce; 1 oz is 28.349 523 125 g (NIST Handbook 44, Appendix C)."""
    told = json.loads(export_text(season))["changes"]
    weighed = [entry["fact"] for entry in told if entry["type"] == "added" and "mass_g" in entry["fact"]]
    assert len(weighed) > 200
    for fact in weighed:
        ounces = float(fact["typed"].removesuffix(" oz"))
        assert fact["mass_g"] == pytest.approx(ounces * 28.349523125, rel=1e-12)
