"""What a check's readings reach to, without a window: levels, jugs, contradictions, what cannot be."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

import pytest
from herd import FIRST_DAY, GAL_ML, OZ_G, QT_ML, Herd, group

from calibrator.desk.mix_batch import Batch, batch_of, farm_now, planned
from calibrator.desk.mix_checks import Aim, MixFindings, correction_count, right_in_jug, right_sg, work_out
from calibrator.desk.mix_history import kept_checks, kept_counts, names
from calibrator.desk.mix_table import history_table
from calibrator.desk.mix_tools import Tools, hydrometer, read_tools
from calibrator.desk.mix_words import correction_words, jug_words
from calibrator.desk.standing import standing
from calibrator.model import (
    Additive,
    ColdWeather,
    Composition,
    Cylinder,
    FeedingStep,
    FillWay,
    Instrument,
    InstrumentCheck,
    InstrumentCheckKind,
    InstrumentKind,
    MixingRate,
    Pail,
    Plan,
    RateBasis,
    Reading,
    ReadingKind,
    Scoopfuls,
    UnitSystem,
    Vessel,
    new_id,
)
from calibrator.records import Records
from calibrator.science.check import Caution, Verdict
from calibrator.science.refractometer import Doubt
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


FAT = Additive(
    name="Fat supplement",
    rate=MixingRate(basis=RateBasis.ON_WATER, powder_mass_g=4 * OZ_G, volume_ml=2 * QT_ML),
    composition=Composition(protein_pct=7.0, fat_pct=60.0, fibre_pct=0.0, ash_pct=3.0, moisture_pct=3.0),
)
SALTS = replace(
    FAT,
    name="Electrolyte",
    rate=replace(FAT.rate, powder_mass_g=60.0),
    composition=Composition(protein_pct=0.0, fat_pct=0.0, fibre_pct=0.0, ash_pct=40.0),
    mosmol_per_g=11.0,
)


def with_additive(herd: Herd, additive: Additive) -> Batch:
    herd.plan("With it", replace(group(16, "hutches"), additives=(additive,)))
    now = farm_now(herd.records, herd.farm, standing(herd.records, herd.farm), NOW)
    plan = next(plan for plan in now.plans if plan.name == "With it")
    return batch_of(now, plan, plan.groups[0], 16, None)


def sound(herd: Herd, kind: InstrumentKind, **how: object) -> Instrument:
    """An instrument that shows plain water of 20 °C and ice as it should."""
    tool = Instrument(id=new_id(), farm_id=herd.farm.id, name=kind.value, kind=kind, **how)  # type: ignore[arg-type]
    herd.records.keep(tool)
    water = {InstrumentKind.HYDROMETER: (InstrumentCheckKind.WATER, 0.9982)}
    checked, shown = water.get(kind, (InstrumentCheckKind.KNOWN, 0.0))
    herd.records.keep(
        InstrumentCheck(
            id=new_id(), farm_id=herd.farm.id, instrument_id=tool.id, kind=checked, expected=shown, reading=shown,
            typed="", at=NOW - timedelta(days=1),
        )
    )  # fmt: skip
    return tool


@pytest.mark.parametrize("additive", [FAT, SALTS])
def test_a_mix_as_its_recipe_has_it_is_right_by_every_way(herd: Herd, additive: Additive) -> None:
    """Water and powder of the chart in one mix: its density by masses and volumes that add up."""
    made = with_additive(herd, additive)
    mix = made.mix
    assert mix is not None
    assert made.target_share is not None
    aim = Aim(made.target_share, 0.005)
    floats = sound(herd, InstrumentKind.HYDROMETER, division=0.001, reference_c=20.0)
    warm = sound(herd, InstrumentKind.THERMOMETER, division=0.1)
    jug = sound(herd, InstrumentKind.JUG, volume_ml=1000.0, volume_u_ml=1.0)
    at = reading(ReadingKind.MIX_TEMPERATURE, made.water_c, instrument_id=warm.id)
    shown_sg = right_sg(made, aim, tools(herd), [at], floats.id, NOW).value
    held_g = right_in_jug(made, aim, tools(herd), [at], jug.id, NOW).value
    assert held_g / 1000 == pytest.approx(mix.density_g_per_ml)
    for shown in (
        reading(ReadingKind.HYDROMETER_SG, shown_sg, instrument_id=floats.id),
        reading(ReadingKind.JUG_MASS, held_g, instrument_id=jug.id),
        reading(ReadingKind.FINISHED_VOLUME, mix.volume_ml),
    ):
        found = work_out(made, [shown, at], aim, tools(herd), NOW)
        assert found.best is not None
        assert found.best.share == pytest.approx(mix.solids_share, abs=1e-6), shown.kind
        assert found.judged is not None
        assert not found.judged.verdict.outside
    drops = work_out(made, [reading(ReadingKind.BRIX, 100 * mix.solids_share - 2.0)], aim, tools(herd), NOW)
    assert drops.best is not None
    assert Doubt.ADDITIVES in drops.best.doubts


def test_what_an_electrolyte_brings_is_cautioned_about(herd: Herd) -> None:
    """705 mOsm/kg by its laboratory's value, in a mix whose solids alone would bring about 400."""
    made = with_additive(herd, SALTS)
    assert made.mix is not None
    assert made.target_share is not None
    drops = [reading(ReadingKind.BRIX, 100 * made.target_share - 4.0)]
    assert Caution.OSMOLALITY_RISK in work_out(made, drops, Aim(0.15, 0.005), tools(herd), NOW).cautions
    bare = replace(made, blend=None, shares=(1.0,))
    assert Caution.OSMOLALITY_RISK not in work_out(bare, drops, Aim(0.15, 0.005), tools(herd), NOW).cautions


def test_a_thin_mix_is_put_right_with_all_parts_of_its_recipe(herd: Herd) -> None:
    made = with_additive(herd, FAT)
    assert made.target_share is not None
    aim = Aim(made.target_share, 0.005)
    found = work_out(made, [reading(ReadingKind.BRIX, 9.0)] * 4, aim, tools(herd), NOW)
    assert found.correction is not None
    (fat_g,) = found.correction.others_g
    assert fat_g / found.correction.powder_g == pytest.approx(0.4, rel=5e-3)
    assert found.correction_scoops is not None
    assert found.correction_scoops.total_g == pytest.approx(found.correction.powder_g, rel=0.1)
    told = correction_words(found.correction, None, UnitSystem.METRIC, 1.0, names=made.additives)
    assert any("Fat supplement" in line and "veterinarian" in line for line in told)
    assert not any("finer scale" in line for line in told)
    told = correction_words(found.correction, None, UnitSystem.FARM, 1.0, least_g=fat_g + 1, names=made.additives)
    assert any(f"({fat_g:.1f} g) Fat supplement" in line for line in told)
    assert any("Use a finer scale, or the product's own spoon." in line for line in told)


def test_slips_are_looked_for_in_the_powder_and_in_what_is_weighed_in_besides(herd: Herd) -> None:
    """160 oz of powder and 64 oz of supplement."""
    made = with_additive(herd, FAT)
    slips = planned(made)
    assert slips is not None
    assert (slips.powder_g, slips.others_g) == pytest.approx((160 * OZ_G, 64 * OZ_G), rel=2e-3)
