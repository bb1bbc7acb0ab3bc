"""What a check's readings reach to, without a window: levels, jugs, contradictions, what cannot be."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

import pytest
from herd import FIRST_DAY, GAL_ML, QT_ML, Herd, group

from calibrator.desk.mix_batch import Batch, batch_of, farm_now
from calibrator.desk.mix_checks import Aim, MixFindings, correction_count, right_in_jug, work_out
from calibrator.desk.mix_history import kept_checks, kept_counts, names
from calibrator.desk.mix_table import history_table
from calibrator.desk.mix_tools import Tools, hydrometer, read_tools
from calibrator.desk.mix_words import jug_words
from calibrator.desk.standing import standing
from calibrator.model import (
    ColdWeather,
    Cylinder,
    FeedingStep,
    FillWay,
    Instrument,
    InstrumentCheck,
    InstrumentCheckKind,
    InstrumentKind,
    Pail,
    Plan,
    Reading,
    ReadingKind,
    Scoopfuls,
    Vessel,
    new_id,
)
from calibrator.records import Records
from calibrator.science.check import Verdict
from calibrator.science.solids import SolidsFrom

NOW = FIRST_DAY + timedelta(days=30)
AIM = Aim(0.13, 0.005)


@pytest.fixture
def herd(records: Records) -> Herd:
    made = Herd(records)
    made.sign("25-0112A", 0.50)
    made.plan("Morning milk", group(16, "hutches"))
    return made


def batch(herd: Herd, vessel: Vessel | None = None) -> Batch:
    now = farm_now(herd.records, herd.farm, standing(herd.records, herd.farm), NOW)
    return batch_of(now, now.plans[0], now.plans[0].groups[0], 16, vessel)


def tools(herd: Herd) -> Tools:
    return read_tools(herd.records, herd.farm)


def reading(kind: ReadingKind, value: float, pail: Pail = Pail.ANY, instrument_id: str = "") -> Reading:
    return Reading(kind=kind, value=value, typed=str(value), pail=pail, instrument_id=instrument_id)


def worked(herd: Herd, *readings: Reading, vessel: Vessel | None = None) -> MixFindings:
    return work_out(batch(herd, vessel), readings, AIM, tools(herd), NOW)


def tank(shape: Cylinder | None) -> Vessel:
    return Vessel(id="v", farm_id="f", name="tank", rim_volume_ml=20 * GAL_ML, shape=shape)


def test_a_level_tells_the_volume_of_a_vessel_whose_shape_is_known(herd: Herd) -> None:
    round_tank = tank(Cylinder(diameter_mm=400.0, height_mm=620.0))
    level = reading(ReadingKind.FINISHED_LEVEL, 250.0)
    by_level = worked(herd, level, vessel=round_tank)
    # A cylinder: π/4 · 40² · 25 cm³.
    volume = reading(ReadingKind.FINISHED_VOLUME, 3.141592653589793 / 4 * 40**2 * 25)
    by_volume = worked(herd, volume, vessel=round_tank)
    assert by_level.best is not None
    assert by_volume.best is not None
    assert by_level.best.share == pytest.approx(by_volume.best.share)
    assert by_level.best.way is SolidsFrom.FINISHED_VOLUME
    unknown = worked(herd, level, vessel=tank(None))
    assert unknown.best is None
    assert "shape of this vessel" in unknown.troubles[0]
    assert "shape of this vessel" in worked(herd, level).troubles[0]


def test_a_jug_that_is_not_entered_tells_nothing(herd: Herd) -> None:
    found = worked(herd, reading(ReadingKind.JUG_MASS, 1030.0), reading(ReadingKind.MIX_TEMPERATURE, 38.0))
    assert found.best is None
    assert "Enter the jug" in found.troubles[0]


def test_a_jug_on_a_scale_that_is_off_is_corrected_unless_water_on_it_told_the_jug(herd: Herd) -> None:
    """506 g shown for 500 g. A jug whose volume is printed on it weighs 1.2 % too much; one that was filled with water
    on the same scale was found as much too large, and the density comes out right as it stands."""
    herd.sign("25-0302A", 0.5, check_reading_g=506.0)
    here = batch(herd)
    warm = reading(ReadingKind.MIX_TEMPERATURE, 38.0)

    def share(typed: str, volume_ml: float, shown_g: float) -> float:
        jug = herd.records.keep(
            Instrument(
                id=new_id(), farm_id=herd.farm.id, name="jug", kind=InstrumentKind.JUG, volume_ml=volume_ml,
                volume_typed=typed,
            )
        )  # fmt: skip
        held = reading(ReadingKind.JUG_MASS, shown_g, instrument_id=jug.id)
        found = work_out(here, [warm, held], AIM, tools(herd), NOW)
        right = right_in_jug(here, AIM, tools(herd), [warm], jug.id, NOW)
        assert found.best is not None
        again = reading(ReadingKind.JUG_MASS, right.value, instrument_id=jug.id)
        read = work_out(here, [warm, again], AIM, tools(herd), NOW)
        assert read.best is not None
        assert read.best.share == pytest.approx(AIM.target_share)
        assert jug_words(found).startswith("The scale showed 1.2 % too much") is bool(typed)
        return found.best.share

    by_label = share("1 L", 1000.0, 1035.0 * 506 / 500)
    assert by_label == pytest.approx(share("", 1000.0 * 506 / 500, 1035.0 * 506 / 500))
    assert by_label != pytest.approx(share("1 L", 1000.0, 1035.0), abs=0.01)


def test_two_instruments_that_contradict_each_other(herd: Herd) -> None:
    jug = herd.records.keep(
        Instrument(id=new_id(), farm_id=herd.farm.id, name="jug", kind=InstrumentKind.JUG, volume_ml=1000.0)
    )
    float_ = herd.records.keep(
        Instrument(id=new_id(), farm_id=herd.farm.id, name="float", kind=InstrumentKind.HYDROMETER, division=0.001)
    )
    herd.records.keep(
        InstrumentCheck(
            id=new_id(), farm_id=herd.farm.id, instrument_id=float_.id, kind=InstrumentCheckKind.WATER,
            expected=1.0, reading=1.001, typed="1.001", at=NOW - timedelta(days=1),
        )
    )  # fmt: skip
    assert hydrometer(tools(herd), float_.id, NOW).offset == pytest.approx(0.001)
    warm = reading(ReadingKind.MIX_TEMPERATURE, 38.0)
    heavy = reading(ReadingKind.JUG_MASS, 1060.0, instrument_id=jug.id)
    light = reading(ReadingKind.HYDROMETER_SG, 1.020, instrument_id=float_.id)
    assert worked(herd, warm, heavy, light).at_odds
    assert not worked(herd, reading(ReadingKind.BRIX, 11.2)).at_odds


@pytest.mark.parametrize(
    ("kind", "value"),
    [
        (ReadingKind.BRIX, 50.0),
        (ReadingKind.BRIX, float("nan")),
        (ReadingKind.REFRACTOMETER_SG, 2.0),
        (ReadingKind.HYDROMETER_SG, 9.0),
        (ReadingKind.FINISHED_VOLUME, 10.0),
        (ReadingKind.FINISHED_VOLUME, -5.0),
    ],
)
def test_what_cannot_be_is_told_and_never_raised(herd: Herd, kind: ReadingKind, value: float) -> None:
    found = worked(herd, reading(kind, value, Pail.FIRST), reading(ReadingKind.MIX_TEMPERATURE, 38.0))
    assert found.best is None
    assert found.judged is None
    assert found.troubles
    assert all(text.endswith(".") for text in found.troubles)


def test_an_impossible_aim_or_vessel_is_told(herd: Herd) -> None:
    drops = [reading(ReadingKind.BRIX, 5.0)] * 8
    found = work_out(batch(herd), drops, Aim(0.9, 0.005), tools(herd), NOW)
    assert found.judged is None
    assert "target" in found.troubles[-1].lower()
    far = Aim(0.16, 0.005)
    small = tank(None)
    crowded = [*drops, reading(ReadingKind.FINISHED_VOLUME, 90 * GAL_ML)]
    told = work_out(batch(herd, small), crowded, far, tools(herd), NOW)
    assert told.judged is not None
    assert told.judged.verdict is Verdict.THIN
    assert told.correction is None
    assert any("does not hold so much" in text for text in told.troubles)


def test_a_correction_without_a_volume_takes_the_charts(herd: Herd) -> None:
    drops = [reading(ReadingKind.BRIX, 7.0)] * 8
    found = worked(herd, *drops)
    assert found.correction_planned
    assert found.correction is not None
    bare = replace(batch(herd), mix=None, scoops=None)
    without = work_out(bare, drops, AIM, tools(herd), NOW)
    assert without.correction is None
    assert without.causes == ()


def test_the_step_of_the_day_and_the_cold_tell_what_a_mix_is_to_be(herd: Herd) -> None:
    """From its eighth day on a calf gets half as much again, in the cold a tenth more powder with it."""
    on = NOW.date()
    steps = (FeedingStep(from_day=8, volume_ml=3 * QT_ML),)
    stepped = replace(group(16, "hutches"), steps=steps, day_one=on - timedelta(days=7))
    cold = ColdWeather(below_c=-5.0, more_powder_share=0.1, on=True)
    herd.plan("In the cold", stepped, cold=cold)
    was, now = (
        farm_now(herd.records, herd.farm, standing(herd.records, herd.farm), at)
        for at in (NOW - timedelta(days=1), NOW)
    )
    plain, before, after = (
        batch_of(known, plan, plan.groups[0], 16, None).mix
        for known, plan in ((now, now.plans[0]), (was, was.plans[-1]), (now, now.plans[-1]))
    )
    assert plain
    assert before
    assert after
    assert before.powder_g == pytest.approx(1.1 * plain.powder_g, rel=1e-3)
    assert after.powder_g == pytest.approx(1.5 * 1.1 * plain.powder_g, rel=1e-3)
    assert after.solids_share > 1.05 * plain.solids_share


def test_a_plan_that_cannot_be_reckoned_says_why(herd: Herd) -> None:
    now = farm_now(herd.records, herd.farm, standing(herd.records, herd.farm), NOW)
    thick = replace(now.plans[0].groups[0].rate, powder_mass_g=0.0, volume_ml=0.0)
    spoiled = replace(now.plans[0].groups[0], rate=thick)
    plan: Plan = replace(now.plans[0], groups=(spoiled,))
    found = batch_of(now, plan, spoiled, 16, None)
    assert found.mix is None
    assert found.trouble
    assert found.target_share is None


def test_no_checks_make_a_table_of_one_line(herd: Herd) -> None:
    kept, counted = kept_checks(herd.records, herd.farm), kept_counts(herd.records, herd.farm)
    table = history_table(kept, counted, names(herd.records, herd.farm))
    assert table.headings[:3] == ("at", "kind", "lot")
    assert table.rows == ()


def test_a_correction_is_counted_with_the_part_fills_of_its_chart(herd: Herd) -> None:
    of = batch(herd)
    assert of.plan is not None
    half_g = 0.5 * next(way for way in of.now.powder.ways if way.way is FillWay.TO_MARK).mass_g
    assert (bare := correction_count(half_g, of)) is None or not bare.told
    halves = replace(of.plan, scoopfuls=Scoopfuls(part_fills=(0.5,)))
    count = correction_count(half_g, batch_of(of.now, halves, halves.groups[0], 16, None))
    assert count is not None
    assert [number for _, number in count.parts] == [0.5]
    # The chart counts one and a half for each calf, and so in halves, though nobody ticked them.
    more = replace(of.plan, groups=(replace(of.plan.groups[0], volume_ml=3 * QT_ML),))
    count = correction_count(half_g, batch_of(of.now, more, more.groups[0], 16, None))
    assert count is not None
    assert [number for _, number in count.parts] == [0.5]


def test_a_correction_is_filled_as_its_chart_is(herd: Herd) -> None:
    """Seven to the line are within the tolerance of six level: which it is, the chart says."""
    of = batch(herd)
    level, line = (next(w for w in of.now.powder.ways if w.way is way) for way in (FillWay.LEVEL, FillWay.TO_MARK))
    assert of.manner in ((level,), (line,))
    for way in (level, line):
        count = correction_count(6 * level.mass_g, replace(of, manner=(way,)))
        assert count is not None
        assert [part.way for part, _ in count.parts] == [way.way]


def test_a_correction_is_counted_within_the_tolerance_where_a_mixed_count_is(herd: Herd) -> None:
    of = batch(herd)
    level, line = (next(w for w in of.now.powder.ways if w.way is way) for way in (FillWay.LEVEL, FillWay.TO_MARK))
    count = correction_count(2 * level.mass_g + line.mass_g, replace(of, manner=(level,)))
    assert count is not None
    assert dict(count.parts) == {level: 2, line: 1}  # three level ones are 5 % more
    far = correction_count(1.08 * level.mass_g, replace(of, manner=(level,)))
    assert far is not None
    assert dict(far.parts) == {level: 1}  # nothing nearer: a small part of the whole need not be finer


def test_a_line_of_the_lot_before_is_only_spoken_of_where_there_was_one(herd: Herd) -> None:
    fresh = Herd(herd.records)
    fresh.sign("first", 0.45)

    def lot_before() -> bool:
        return farm_now(fresh.records, fresh.farm, standing(fresh.records, fresh.farm), NOW).lot_before

    assert not lot_before()
    fresh.sign("second", 0.45)
    assert lot_before()
