"""Verdicts, what would settle an open one, pails, cautions: by their own laws."""

from __future__ import annotations

import math
import random
from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calibrator.model import Composition
from calibrator.science import check, mix_density, mixing, own_line, solids, sucrose
from calibrator.science.check import Caution, Pails, Verdict, WouldTell
from calibrator.science.errors import CannotCompute
from calibrator.science.refractometer import (
    DROP_SD_BRIX,
    Brix,
    Checked,
    Doubt,
    Refractometer,
    brix,
    drop_spread,
    scale_error_brix,
)
from calibrator.science.scale import ScaleFacts, check_scale, scale_facts
from calibrator.science.solids import Solids, SolidsFrom

POWDER = mixing.powder_from(Composition())
FRESH = Refractometer(0.2, water=Checked(0.0, 0.0, 1.0), known=Checked(12.0, 12.0, 10.0))


def seen(share: float, u: float, **more: object) -> Solids:
    told = Solids(share, u, math.inf, SolidsFrom.OWN_LINE, 3, u * 0.5, u * 0.8, 0.01)
    return replace(told, **more)  # type: ignore[arg-type]


@pytest.mark.parametrize(
    ("share", "u", "verdict"),
    [
        (0.130, 0.001, Verdict.INSIDE),
        (0.133, 0.001, Verdict.INSIDE),
        (0.134, 0.001, Verdict.CANNOT_TELL),
        (0.138, 0.001, Verdict.STRONG),
        (0.122, 0.001, Verdict.THIN),
        (0.130, 0.004, Verdict.CANNOT_TELL),
        (0.120, 0.009, Verdict.CANNOT_TELL),
    ],
)
def test_the_verdict_counts_the_doubt(share: float, u: float, verdict: Verdict) -> None:
    assert check.judge(seen(share, u), 0.13, 0.005).verdict is verdict
    assert verdict.outside == (verdict in (Verdict.STRONG, Verdict.THIN))


def test_a_volume_surely_outside_decides_where_every_instrument_leans_its_way() -> None:
    """Wrong water that wrong powder made up for would have to show in the instrument."""
    volume = seen(0.109, 0.001, way=SolidsFrom.FINISHED_VOLUME)
    rough = seen(0.108, 0.008, way=SolidsFrom.WHOLE_MILK)
    for found in ((rough, volume), (volume, rough)):
        assert check.deciding(found, 0.122, 0.005) is volume
    for other in (
        seen(0.121, 0.008, way=SolidsFrom.WHOLE_MILK),  # as wanted: the powder may make up for the water
        seen(0.135, 0.008, way=SolidsFrom.WHOLE_MILK),  # to the other side
        seen(0.108, 0.001),  # sure by itself
    ):
        assert check.deciding((other, volume), 0.122, 0.005) is other
    inside = seen(0.122, 0.001, way=SolidsFrom.FINISHED_VOLUME)
    assert check.deciding((rough, inside), 0.122, 0.005) is rough
    assert check.deciding((volume,), 0.122, 0.005) is volume


@given(
    share=st.floats(0.05, 0.25), u=st.floats(1e-5, 0.02), target=st.floats(0.08, 0.2), tolerance=st.floats(1e-3, 0.02)
)
def test_the_verdict_is_the_intervals_place(share: float, u: float, target: float, tolerance: float) -> None:
    judged = check.judge(seen(share, u), target, tolerance)
    assert (judged.verdict is Verdict.THIN) == (judged.high < target - tolerance)
    assert (judged.verdict is Verdict.STRONG) == (judged.low > target + tolerance)
    assert (judged.would_tell is None) == (judged.verdict is not Verdict.CANNOT_TELL)


def of_drops(readings: int) -> Solids:
    u = math.hypot(0.003 / math.sqrt(readings), 0.0008)
    return seen(0.132, u, one_reading_sd=0.003, rest_u=0.0008, readings=readings)


def test_an_open_verdict_says_how_many_readings_would_settle_it() -> None:
    judged = check.judge(of_drops(3), 0.13, 0.005)
    assert judged.would_tell is WouldTell.MORE_READINGS
    n = 3 + judged.more_readings
    assert check.judge(of_drops(n), 0.13, 0.005).verdict is Verdict.INSIDE
    assert check.judge(of_drops(n - 1), 0.13, 0.005).verdict is Verdict.CANNOT_TELL


@pytest.mark.parametrize(
    ("change", "would_tell"),
    [
        ({"way": SolidsFrom.TRADE_RULE}, WouldTell.OWN_LINE),
        ({"way": SolidsFrom.WHOLE_MILK}, WouldTell.OWN_LINE),
        ({"doubts": (Doubt.ZERO_OVERDUE,), "rest_u": 0.0028}, WouldTell.ZERO_CHECK),
        ({"doubts": (Doubt.ZERO_OVERDUE,)}, WouldTell.MORE_REFERENCES),
        # Plain water is asked for where it would settle it: the rule's own doubt leaves as much open.
        ({"doubts": (Doubt.NEVER_ZEROED,), "way": SolidsFrom.TRADE_RULE}, WouldTell.OWN_LINE),
        ({"doubts": (Doubt.NEVER_ZEROED,), "way": SolidsFrom.TRADE_RULE, "rest_u": 0.0028}, WouldTell.ZERO_CHECK),
        ({"doubts": (Doubt.KNOWN_OVERDUE,)}, WouldTell.MORE_REFERENCES),
        ({"way": SolidsFrom.JUG}, WouldTell.TOO_NEAR),
    ],
)
def test_what_else_would_tell(change: dict[str, object], would_tell: WouldTell) -> None:
    assert check.judge(seen(0.13, 0.005, **change), 0.13, 0.005).would_tell is would_tell


def test_at_the_very_limit_nothing_would_tell() -> None:
    assert check.judge(seen(0.135, 0.003), 0.13, 0.005).would_tell is WouldTell.TOO_NEAR


def test_the_surest_way_counts_and_the_finished_volume_only_alone() -> None:
    level = seen(0.12, 0.0001, way=SolidsFrom.FINISHED_VOLUME)
    jug, drops = seen(0.13, 0.003, way=SolidsFrom.JUG), seen(0.131, 0.002)
    assert check.best([level, jug, drops]) is drops
    assert check.best([level]) is level
    with pytest.raises(CannotCompute, match="one way"):
        check.best([])


def test_two_ways_that_differ_by_more_than_their_doubts() -> None:
    assert check.disagree(seen(0.13, 0.001), seen(0.14, 0.002))
    assert not check.disagree(seen(0.13, 0.001), seen(0.134, 0.002))


@pytest.mark.parametrize(
    ("first", "last", "verdict"),
    [
        ((11.0, 11.1, 11.0, 11.1), (12.0, 12.1, 12.2, 12.0), Pails.LAST_STRONGER),
        ((12.0, 12.1, 12.2, 12.0), (11.0, 11.1, 11.0, 11.1), Pails.FIRST_STRONGER),
        ((11.0, 11.1, 11.0, 11.1, 11.0), (11.1, 11.0, 11.1, 11.0, 11.0), Pails.ALIKE),
        ((11.0,), (11.3,), Pails.CANNOT_TELL),
    ],
)
def test_first_pail_beside_the_last(first: tuple[float, ...], last: tuple[float, ...], verdict: Pails) -> None:
    found = check.compare_pails(first, last, FRESH)
    assert found.verdict is verdict
    a, b = sum(first) / len(first), sum(last) / len(last)
    assert found.low <= b - a <= found.high


def test_zero_and_scale_drop_out_of_the_pails() -> None:
    unchecked = Refractometer(0.2, water=Checked(0.0, 0.7, 100.0))
    same = check.compare_pails((11.0, 11.2), (11.6, 11.4), FRESH)
    assert check.compare_pails((11.0, 11.2), (11.6, 11.4), unchecked) == pytest.approx(same)


def test_cautions_come_with_the_gravest_first() -> None:
    assert check.cautions(None, POWDER) == ()
    assert check.cautions(0.13, POWDER, mix_c=38.0, calf_c=38.0) == ()
    assert check.cautions(0.13, POWDER, water_c=60.0, mix_c=44.0) == (Caution.SCALD, Caution.TOO_HOT)
    assert check.cautions(0.13, POWDER, calf_c=25.0) == (Caution.TOO_COOL,)
    assert check.cautions(0.10, POWDER) == (Caution.SOLIDS_LOW,)
    # Ordinary solids: an estimate of osmolality just above its aim is no reason for alarm.
    assert 350 < check.osmolality(0.145, POWDER)[0] < 400
    assert check.cautions(0.145, POWDER) == ()
    assert check.cautions(0.18, POWDER) == (Caution.SOLIDS_RISK, Caution.OSMOLALITY_RISK, Caution.YOUNG_CALVES)
    assert check.cautions(0.16, POWDER) == (Caution.OSMOLALITY_RISK, Caution.YOUNG_CALVES)


def test_osmolality_is_the_powders_and_not_the_readings() -> None:
    mix = mixing.mix_on_water(1000.0, 0.15, POWDER, 20.0)
    value, u = check.osmolality(mix.solids_share, POWDER)
    assert value == pytest.approx(mix.osmolality_mosm_per_kg)
    assert u == pytest.approx(mix.osmolality_u)


def test_a_reading_for_another_share() -> None:
    found = solids.by_trade_rule(brix([11.2], FRESH))
    assert check.reading_for(11.2, found, 0.13) == pytest.approx(11.0)


# The refractometer's own checks


def test_the_zero_is_taken_off() -> None:
    off = replace(FRESH, water=Checked(0.0, 0.4, 1.0), known=Checked(12.0, 12.4, 10.0))
    assert brix([11.4], off).value == pytest.approx(11.0)
    assert brix([11.4], off).doubts == ()


@pytest.mark.parametrize(
    ("instrument", "doubts"),
    [
        (Refractometer(0.2), (Doubt.NEVER_ZEROED, Doubt.NO_KNOWN_SOLUTION)),
        (replace(FRESH, water=Checked(0, 0, 8)), (Doubt.ZERO_OVERDUE,)),
        (replace(FRESH, known=Checked(12, 12, 91)), (Doubt.KNOWN_OVERDUE,)),
        (replace(FRESH, known=Checked(12, 12.5, 1)), (Doubt.SCALE_OFF,)),
        (replace(FRESH, compensated=False), (Doubt.ZERO_TEMPERATURE_UNKNOWN, Doubt.TEMPERATURE_UNKNOWN)),
    ],
)
def test_what_an_instrument_has_to_be_doubted_for(instrument: Refractometer, doubts: tuple[Doubt, ...]) -> None:
    fresh, doubted = brix([11.0, 11.2], FRESH), brix([11.0, 11.2], instrument)
    assert doubted.doubts == doubts
    assert doubted.u > fresh.u


def test_without_compensation_a_zero_at_the_same_warmth_takes_the_temperature_along() -> None:
    warm = replace(FRESH, compensated=False, water=Checked(0.0, -0.8, 0.0, 30.0))
    # Water reads −0.8 at 30 °C; the same prism at the same warmth reads 10.2 for 11.0.
    shown = 11.0 - sucrose.temperature_correction_brix(30.0)
    zero = -0.8 + sucrose.temperature_correction_brix(30.0)
    assert brix([shown], warm, 30.0).value == pytest.approx(11.0 - zero)
    assert brix([shown], replace(warm, water=Checked(0.0, 0.0, 0.0, 20.0)), 30.0).value == pytest.approx(11.0)


@pytest.mark.parametrize("told", [(None, 30.0), (30.0, None), (None, None)])
def test_a_temperature_that_was_not_told_is_doubt_and_not_corrected_twice(
    told: tuple[float | None, float | None],
) -> None:
    """Water and a mix of 12.0 °Brix, both at 30 °C: told once or not at all, neither reads 12.8 or 11.2 for sure."""
    in_water, in_mix = told
    off = sucrose.temperature_correction_brix(30.0)
    glass = replace(FRESH, compensated=False, water=Checked(0.0, -off, 1.0, in_water), known=None)
    found = brix([12.0 - off], glass, in_mix)
    assert found.value == pytest.approx(12.0)
    assert (Doubt.ZERO_TEMPERATURE_UNKNOWN in found.doubts) == (in_water is None)
    assert (Doubt.TEMPERATURE_UNKNOWN in found.doubts) == (in_mix is None)
    # Had the other been read at 20 °C, it were off by all of the correction: a limit, so the doubt is that by √3.
    assert found.temperature_u >= (off / math.sqrt(3.0) if told != (None, None) else 0.25)
    sure = brix([12.0 - off], replace(glass, water=Checked(0.0, -off, 1.0, 30.0)), 30.0)
    assert sure.value == pytest.approx(12.0)
    assert sure.temperature_u < 0.1 < found.temperature_u


def test_a_known_solution_without_compensation_is_brought_to_20_degrees() -> None:
    off = sucrose.temperature_correction_brix(30.0)
    water = Checked(0.0, -off, 1.0, 30.0)
    glass = Refractometer(0.2, compensated=False, water=water, known=Checked(12.0, 12.0 - off, 1.0, 30.0))
    assert scale_error_brix(glass) == pytest.approx(0.0)
    untold = replace(glass, known=Checked(12.0, 12.0 - off, 1.0))
    assert scale_error_brix(untold) == pytest.approx(0.0)
    assert Doubt.SCALE_OFF not in brix([11.0], untold, 30.0).doubts
    assert brix([11.0], untold, 30.0).scale_u > brix([11.0], glass, 30.0).scale_u


def test_the_known_solution_counts_without_the_zero() -> None:
    assert scale_error_brix(Refractometer(0.2)) is None
    off = Refractometer(0.2, water=Checked(0.0, 0.3, 1.0), known=Checked(12.0, 12.4, 1.0))
    assert scale_error_brix(off) == pytest.approx(0.1)


def test_more_drops_are_surer_and_none_is_surer_than_the_division() -> None:
    widths = [brix([11.0] * n, FRESH).mean_u for n in (1, 2, 4, 8)]
    assert widths == sorted(widths, reverse=True)
    assert drop_spread([11.0] * 200, 0.5)[0] == pytest.approx(0.5 / math.sqrt(12))
    assert drop_spread([11.0], 0.1)[0] == pytest.approx(DROP_SD_BRIX)


def test_the_interval_of_brix_holds_what_it_promises() -> None:
    dice, inside = random.Random(7), 0
    for _ in range(600):
        readings = [dice.gauss(11.0, DROP_SD_BRIX) for _ in range(3)]
        found = solids.by_trade_rule(replace(brix(readings, FRESH), zero_u=0.0, scale_u=0.0))
        truth = 0.13 + dice.gauss(0.0, 0.01)
        inside += found.low <= truth <= found.high
    assert 0.93 <= inside / 600 <= 0.985


# Own line


def made_line(sd: float, dice: random.Random, mixes: int) -> own_line.Line:
    shares = [0.10 + 0.06 * n / (mixes - 1) for n in range(mixes)]
    return own_line.farm_line([own_line.Reference(s, 100 * s - 1.5 + dice.gauss(0, sd)) for s in shares])


@pytest.mark.parametrize("mixes", [2, 3, 6])
def test_the_own_line_holds_the_truth_as_often_as_it_says(mixes: int) -> None:
    dice, inside, runs = random.Random(mixes), 0, 500
    for _ in range(runs):
        line = made_line(own_line.ASSUMED_SD_BRIX, dice, mixes)
        truth = dice.uniform(0.11, 0.15)
        drops = [100 * truth - 1.5 + dice.gauss(0, 0.2) for _ in range(3)]
        lack = dice.gauss(0, math.sqrt(own_line.ASSUMED_SD_BRIX**2 - 0.2**2 / 3))
        found = solids.by_own_line(brix([d + lack for d in drops], FRESH), line)
        inside += found.low <= truth <= found.high
    assert 0.92 <= inside / runs <= 0.995


def test_two_mixes_make_a_line_whose_spread_is_assumed() -> None:
    line = own_line.farm_line([own_line.Reference(0.10, 8.4), own_line.Reference(0.15, 13.2)])
    assert line.assumed
    assert line.residual_sd == pytest.approx(own_line.ASSUMED_SD_BRIX)
    assert line.degrees_of_freedom == own_line.ASSUMED_DF
    assert line.y(0.10) == pytest.approx(8.4)
    assert not made_line(0.1, random.Random(1), 6).assumed


def test_the_scale_error_cancels_in_the_own_line_and_the_zero_does_not() -> None:
    line = made_line(0.1, random.Random(3), 6)
    unknown = solids.by_own_line(brix([11.0], replace(FRESH, known=None)), line)
    assert unknown.u == pytest.approx(solids.by_own_line(brix([11.0], FRESH), line).u)
    stale = solids.by_own_line(brix([11.0], replace(FRESH, water=Checked(0, 0, 30))), line)
    assert stale.u > unknown.u
    off = solids.by_own_line(brix([11.0], replace(FRESH, known=Checked(12, 13, 1))), line)
    assert Doubt.SCALE_OFF in off.doubts


def test_beyond_the_reference_mixes_the_line_says_so() -> None:
    line = made_line(0.1, random.Random(3), 6)
    assert Doubt.OUT_OF_REACH in solids.by_own_line(brix([18.0], FRESH), line).doubts
    assert Doubt.OUT_OF_REACH not in solids.by_own_line(brix([11.0], FRESH), line).doubts


def test_the_walk_through_gives_grams_on_the_scales_step() -> None:
    recipes = own_line.reference_recipes(0.13, 1000.0, 1.0)
    assert [(r.powder_g, r.water_g) for r in recipes] == [(104, 896), (130, 870), (156, 844)]
    for recipe in recipes:
        assert own_line.reference_solids(recipe.powder_g, recipe.water_g) == pytest.approx(recipe.solids_share)
    with pytest.raises(CannotCompute, match="too coarse"):
        own_line.reference_recipes(0.13, 300.0, 1.0)


# Density


def test_hydrometer_and_jug_find_the_solids_that_were_mixed() -> None:
    mix = mixing.mix_of(2000.0, 290.0, POWDER, 40.0)
    jug = mix_density.by_jug([mix.density_g_per_ml * 946.4], 946.4, 1.0, ScaleFacts(1.0), POWDER, 40.0)
    assert jug.share == pytest.approx(mix.solids_share, abs=1e-9)
    meter = mix_density.Hydrometer(reference_c=15.6, offset=0.0)
    sg = mix_density.water_shows_sg(meter, 40.0) * mix.density_g_per_ml / mixing.density_g_per_ml(40.0)
    assert mix_density.by_hydrometer([sg], meter, POWDER, 40.0).share == pytest.approx(mix.solids_share, abs=1e-9)


@pytest.mark.parametrize("meter", [mix_density.Hydrometer(), mix_density.Hydrometer(15.6, 0.001, 0.002)])
def test_what_a_hydrometer_should_show_is_read_back_as_those_solids(meter: mix_density.Hydrometer) -> None:
    mix = mixing.mix_of(2000.0, 290.0, POWDER, 40.0)
    shown = mix_density.mix_shows_sg(mix.solids_share, meter, POWDER, 40.0)
    of_water = mix_density.water_shows_sg(meter, 40.0) + (meter.offset or 0.0)
    assert shown - of_water == pytest.approx(
        (mix.density_g_per_ml / mixing.density_g_per_ml(40.0) - 1) * mix_density.water_shows_sg(meter, 40.0)
    )
    assert mix_density.by_hydrometer([shown], meter, POWDER, 40.0).share == pytest.approx(mix.solids_share)


def test_what_a_jug_should_weigh_is_read_back_as_those_solids() -> None:
    mix = mixing.mix_of(2000.0, 290.0, POWDER, 40.0)
    held_g = mix_density.mix_in_jug_g(mix.solids_share, 946.4, POWDER, 40.0)
    assert held_g == pytest.approx(mix.density_g_per_ml * 946.4)
    read = mix_density.by_jug([held_g], 946.4, 1.0, ScaleFacts(1.0), POWDER, 40.0)
    assert read.share == pytest.approx(mix.solids_share)


def test_a_jug_is_corrected_for_the_scale_and_doubted_as_much() -> None:
    """A hundredth too much, by a check weight of 1 kg read as 1010 g; then a scale that nobody checked."""
    off, unchecked, right = scale_facts(1.0, check_scale(1000.0, 1010.0, 1.0)), scale_facts(1.0, None), ScaleFacts(1.0)
    mix = mixing.mix_of(2000.0, 290.0, POWDER, 40.0)
    held_g = mix_density.mix_in_jug_g(mix.solids_share, 946.4, POWDER, 40.0)
    found = mix_density.by_jug([1.01 * held_g], 946.4, 1.0, off, POWDER, 40.0)
    assert found.share == pytest.approx(mix.solids_share)
    assert off.shown_g(held_g) == pytest.approx(1.01 * held_g)
    for doubted in (off, unchecked):
        read = mix_density.by_jug([doubted.shown_g(held_g)], 946.4, 1.0, doubted, POWDER, 40.0)
        assert read.u > mix_density.by_jug([held_g], 946.4, 1.0, right, POWDER, 40.0).u


def test_the_two_sg_scales_are_far_apart() -> None:
    mix = mixing.mix_of(2000.0, 290.0, POWDER, 20.0)
    floating = mix.density_g_per_ml / mixing.density_g_per_ml(20.0)
    as_sugar = sucrose.brix_from_refractometer_sg(floating) / 100 + 0.02
    assert abs(as_sugar - mix.solids_share) > 0.01


def test_a_hydrometer_that_shows_too_much_in_water_is_put_right() -> None:
    good, off = mix_density.Hydrometer(offset=0.0), mix_density.Hydrometer(offset=0.002)
    one, two = (mix_density.by_hydrometer([1.030 + m.offset], m, POWDER, 38.0) for m in (good, off))  # type: ignore[operator]
    assert one.share == pytest.approx(two.share)
    never = mix_density.by_hydrometer([1.030], mix_density.Hydrometer(), POWDER, 38.0)
    late = mix_density.by_hydrometer([1.030], mix_density.Hydrometer(offset=0.0, overdue=True), POWDER, 38.0)
    assert never.doubts == (Doubt.NEVER_ZEROED,)
    assert late.doubts == (Doubt.ZERO_OVERDUE,)
    assert min(never.u, late.u) > one.u


def test_the_doubt_of_density_is_that_of_small_changes() -> None:
    here = mix_density.by_jug([1032.0], 1000.0, 0.0, ScaleFacts(0.0), POWDER, 20.0, specific_volume_u=0.0)
    there = mix_density.by_jug([1032.1], 1000.0, 0.0, ScaleFacts(0.0), POWDER, 20.0, specific_volume_u=0.0)
    assert here.per_unit == pytest.approx((there.share - here.share) / 0.0001, rel=1e-3)
    larger = replace(POWDER, specific_volume_ml_per_g=POWDER.specific_volume_ml_per_g + 0.001)
    moved = mix_density.by_jug([1032.0], 1000.0, 0.0, ScaleFacts(0.0), larger, 20.0, specific_volume_u=0.0)
    told = mix_density.by_jug([1032.0], 1000.0, 0.0, ScaleFacts(0.0), POWDER, 20.0, specific_volume_u=0.001)
    assert math.sqrt(told.u**2 - here.u**2) == pytest.approx(moved.share - here.share, rel=0.02)


def test_the_finished_volume_tells_the_water_by_the_powder() -> None:
    mix = mixing.mix_of(2000.0, 290.0, POWDER, 40.0)
    found = mix_density.by_finished_volume(mix.volume_ml, 0.0, 290.0, 0.0, POWDER, 40.0)
    assert found.share == pytest.approx(mix.solids_share)
    more_volume = mix_density.by_finished_volume(mix.volume_ml + 1.0, 0.0, 290.0, 0.0, POWDER, 40.0)
    with_doubt = mix_density.by_finished_volume(mix.volume_ml, 1.0, 290.0, 0.0, POWDER, 40.0)
    assert with_doubt.u == pytest.approx(abs(more_volume.share - found.share), rel=1e-2)
    more_powder = mix_density.by_finished_volume(mix.volume_ml, 0.0, 290.1, 0.0, POWDER, 40.0)
    of_powder = mix_density.by_finished_volume(mix.volume_ml, 0.0, 290.0, 0.1, POWDER, 40.0)
    assert of_powder.u == pytest.approx(abs(more_powder.share - found.share), rel=1e-2)


# Nonsense is answered in words

NONSENSE = (math.nan, math.inf, -math.inf, -5.0, 33.0, 1e300)


@pytest.mark.parametrize("value", NONSENSE)
def test_impossible_brix_readings_are_refused(value: float) -> None:
    with pytest.raises(CannotCompute, match=r"^A Brix reading .*\.$"):
        brix([11.0, value], FRESH)


@pytest.mark.parametrize("value", [math.nan, math.inf, -1.0, 0.0, 0.97, 1.16, 11.2, 1030.0])
def test_impossible_hydrometer_readings_are_refused(value: float) -> None:
    with pytest.raises(CannotCompute, match="hydrometer reading"):
        mix_density.by_hydrometer([value], mix_density.Hydrometer(), POWDER, 20.0)


@pytest.mark.parametrize("value", [math.nan, math.inf, -1.0, 0.9, 1.2, 11.2])
def test_impossible_refractometer_sg_is_refused(value: float) -> None:
    with pytest.raises(CannotCompute, match="SG scale"):
        sucrose.brix_from_refractometer_sg(value)


@pytest.mark.parametrize("mass", [math.nan, math.inf, -1.0, 0.0, 500.0, 1500.0])
def test_impossible_jugs_are_refused(mass: float) -> None:
    with pytest.raises(CannotCompute):
        mix_density.by_jug([mass], 1000.0, 1.0, ScaleFacts(1.0), POWDER, 20.0)


@pytest.mark.parametrize(
    ("shares", "readings", "words"),
    [
        ((0.1,), (8.0,), "two weighed mixes"),
        ((0.1, 0.1), (8.0, 8.2), "differ in strength"),
        ((0.12, 0.13), (10.0, 11.0), "too alike"),
        ((0.10, 0.15), (13.0, 8.0), "0.5 and 1.5"),
        ((0.10, 0.15), (8.0, 8.1), "0.5 and 1.5"),
        ((0.10, math.nan), (8.0, 13.0), "ordinary number"),
        ((0.10, 0.15), (8.0, math.inf), "ordinary number"),
    ],
)
def test_lines_that_cannot_be_are_refused(shares: tuple[float, ...], readings: tuple[float, ...], words: str) -> None:
    with pytest.raises(CannotCompute, match=words):
        own_line.farm_line([own_line.Reference(s, b) for s, b in zip(shares, readings, strict=True)])


def test_a_line_lost_in_scatter_is_refused() -> None:
    line = own_line.fit([0.10, 0.12, 0.14], [8.0, 14.0, 9.0])
    with pytest.raises(CannotCompute, match="scatter so much"):
        own_line.invert(line, 10.0)
    with pytest.raises(CannotCompute, match="number of readings"):
        own_line.invert(line, 10.0, readings=0)


@pytest.mark.parametrize(
    "call",
    [
        lambda: brix([], FRESH),
        lambda: mix_density.mix_shows_sg(0.61, mix_density.Hydrometer(), POWDER, 20.0),
        lambda: mix_density.mix_in_jug_g(0.13, 0.0, POWDER, 20.0),
        lambda: mix_density.by_hydrometer([], mix_density.Hydrometer(), POWDER, 20.0),
        lambda: mix_density.by_hydrometer([0.981], mix_density.Hydrometer(), POWDER, 5.0),
        lambda: mix_density.by_jug([], 1000.0, 1.0, ScaleFacts(1.0), POWDER, 20.0),
        lambda: mix_density.by_jug(
            [1010.0], 1000.0, 1.0, ScaleFacts(1.0), replace(POWDER, specific_volume_ml_per_g=0.99), 20.0
        ),
        lambda: mix_density.by_finished_volume(100.0, 1.0, 500.0, 1.0, POWDER, 20.0),
        lambda: sucrose.known_solution(10.0, 1.0),
        lambda: sucrose.known_solution(200.0, 1.0, 40.0),
        lambda: sucrose.known_solution(0.0, 1.0),
        lambda: sucrose.temperature_correction_brix(60.0),
        lambda: check.judge(seen(0.13, 0.001), 13.0, 0.005),
        lambda: check.judge(seen(0.13, 0.001), 0.13, 0.0),
        lambda: check.osmolality(0.9, POWDER),
        lambda: own_line.reference_solids(0.0, 900.0),
        lambda: own_line.reference_solids(900.0, 100.0),
        lambda: own_line.reference_recipes(0.5, 1000.0, 1.0),
        lambda: solids.by_trade_rule(Brix(90.0, 1, 0.2, 6, 0.1, 0.1, 0.0)),
        lambda: solids.by_own_line(Brix(90.0, 1, 0.2, 6, 0.1, 0.1, 0.0), own_line.fit([0.1, 0.15], [8.0, 13.0])),
    ],
)
def test_nonsense_is_answered_in_a_sentence(call: object) -> None:
    with pytest.raises(CannotCompute, match=r"^[A-Z].*[.]$"):
        call()  # type: ignore[operator]


def test_solids_are_as_sure_as_the_mean_of_the_readings_and_what_they_share() -> None:
    """Four readings that spread by 0.4 %, and 0.3 % that all share: 0.2 % and 0.3 % in quadrature."""
    found = solids.solids_read(0.13, SolidsFrom.OWN_LINE, solids.Read(0.004, math.inf, 4, 0.003, 0.01))
    assert found.readings_u == pytest.approx(0.002)
    assert found.u == pytest.approx(math.hypot(0.002, 0.003))
    assert found.half_width == pytest.approx(1.959964 * found.u, rel=1e-6)


def test_more_drops_make_the_band_of_a_line_narrower() -> None:
    line = own_line.fit([0.10, 0.12, 0.14, 0.16], [8.0, 9.9, 12.1, 14.0])
    few, many = (solids.expected_half_width(line, 0.13, FRESH, drops) for drops in (3, 12))
    assert 0 < many < few
    ((low, high),) = solids.line_band(line, [0.13], FRESH)
    assert (low, high) == pytest.approx((0.13 - few, 0.13 + few))


@pytest.mark.parametrize(("target", "low"), [(0.117, True), (0.12, False), (0.131, False)])
def test_a_plan_below_the_usual_aim_is_known_as_such(target: float, low: bool) -> None:
    assert check.judge(seen(0.115, 0.004), target, 0.005).aimed_low is low


def test_drops_of_a_mix_with_additives_are_less_sure_and_weighed_mixes_do_not_help() -> None:
    read = brix([10.0, 10.1, 10.2], FRESH, None)
    plain = solids.by_trade_rule(read)
    assert solids.with_others(plain, 0.0) == plain
    with_them = solids.with_others(plain, 0.25)
    assert with_them.share == plain.share
    assert with_them.u == pytest.approx(math.hypot(plain.u, 0.3 * 0.25 * plain.share))
    assert Doubt.ADDITIVES in with_them.doubts
    assert check.judge(plain, plain.share).would_tell is WouldTell.OWN_LINE
    assert check.judge(with_them, plain.share).would_tell is WouldTell.TOO_NEAR


def test_the_room_of_a_blend_is_less_sure_the_more_of_it_is_additives() -> None:
    rooms = [mix_density.blend_volume_u(share) for share in (0.0, 0.3, 1.0)]
    assert rooms[0] == mix_density.SPECIFIC_VOLUME_U
    assert rooms == sorted(rooms)
