"""Each slip, made on purpose, is told first when the reading is sure enough."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest

from calibrator.model import Composition
from calibrator.science import mixing
from calibrator.science.causes import Fits, Planned, Slip, likeliest, mixes_after, told
from calibrator.science.errors import CannotCompute
from calibrator.science.solids import Solids, SolidsFrom

POWDER = mixing.powder_from(Composition())
PLAN = Planned(
    water_ml=20_000.0,
    powder_g=2950.0,
    water_c=43.0,
    powder=POWDER,
    powder_u_g=20.0,
    scoopful_g=295.0,
    scoopfuls=10,
    old_line_share=0.05,
    rim_share=0.15,
    calves=6,
)


def solids_after(plan: Planned, count: int = 1) -> dict[Slip, float]:
    return {slip: mix.solids_share for slip, mix in mixes_after(plan, count).items()}


def reading(share: float, u: float = 0.0008) -> Solids:
    return Solids(share, u, math.inf, SolidsFrom.OWN_LINE, 3, u, u, 0.01)


@pytest.mark.parametrize("slip", list(solids_after(PLAN)))
def test_a_slip_made_on_purpose_fits_well(slip: Slip) -> None:
    causes = likeliest(reading(solids_after(PLAN)[slip]), PLAN)
    best = next(c for c in causes if c.slip is slip)
    assert best.fits is Fits.WELL
    assert best.off_sd == pytest.approx(0.0, abs=1e-9)
    assert causes.index(best) <= 1


def test_one_scoop_more_is_powder_over_one_more_tenth() -> None:
    found = solids_after(PLAN)
    assert found[Slip.SCOOP_MORE] == pytest.approx(mixing.mix_of(20_000.0, 3245.0, POWDER, 43.0).solids_share)
    assert found[Slip.SCOOP_LESS] < found[Slip.NONE] < found[Slip.OLD_LINE] < found[Slip.SCOOP_MORE]
    assert found[Slip.VOLUME_AS_WATER] < found[Slip.NONE] < found[Slip.WATER_AS_VOLUME]
    assert found[Slip.CALF_LESS] < found[Slip.NONE] < found[Slip.CALF_MORE]


def test_a_scoopful_forgotten_is_forgotten_from_the_count_and_not_from_the_weight_wanted() -> None:
    """Ten scoopfuls of 295 g for 2,900 g: nine of them are 2,655 g, as the table of batches tells them."""
    plan = replace(PLAN, powder_g=2900.0, count_error_g=50.0)
    found = solids_after(plan)
    assert found[Slip.SCOOP_LESS] == pytest.approx(mixing.mix_of(20_000.0, 9 * 295.0, POWDER, 43.0).solids_share)
    assert found[Slip.SCOOP_MORE] == pytest.approx(mixing.mix_of(20_000.0, 11 * 295.0, POWDER, 43.0).solids_share)
    assert found[Slip.NONE] == pytest.approx(mixing.mix_of(20_000.0, 2900.0, POWDER, 43.0).solids_share)


def test_water_and_volume_confused_both_ways() -> None:
    planned = mixing.mix_of(20_000.0, 2950.0, POWDER, 43.0)
    found = solids_after(PLAN)
    drawn = mixing.mix_of(planned.volume_ml, 2950.0, POWDER, 43.0)
    assert found[Slip.VOLUME_AS_WATER] == pytest.approx(drawn.solids_share)
    filled = mixing.mix_to_volume(20_000.0, 1.0, POWDER, 43.0)
    assert filled.volume_ml == pytest.approx(20_000.0)
    water = 20_000.0 - 2950.0 * POWDER.specific_volume_ml_per_g
    assert found[Slip.WATER_AS_VOLUME] == pytest.approx(mixing.mix_of(water, 2950.0, POWDER, 43.0).solids_share)


def test_only_what_can_have_happened_is_told() -> None:
    bare = Planned(water_ml=20_000.0, powder_g=2950.0, water_c=43.0, powder=POWDER)
    assert set(solids_after(bare)) == {Slip.NONE, Slip.VOLUME_AS_WATER, Slip.WATER_AS_VOLUME}
    thick = solids_after(replace(bare, water_ml=2000.0))
    assert Slip.WATER_AS_VOLUME not in thick
    one = solids_after(replace(PLAN, scoopfuls=1, calves=1))
    assert not {Slip.SCOOP_LESS, Slip.CALF_LESS, Slip.CALF_MORE} & set(one)


def test_an_unsure_reading_fits_much_and_a_wild_one_nothing() -> None:
    planned = solids_after(PLAN)[Slip.NONE]
    unsure = likeliest(reading(planned, 0.01), PLAN)
    assert unsure[0].slip is Slip.NONE
    assert sum(c.fits is not Fits.NO for c in unsure) >= 5
    assert len(told(unsure)) == 3
    assert told(likeliest(reading(0.3), PLAN)) == ()


@pytest.mark.parametrize(
    "change",
    [
        {"water_ml": 0.0},
        {"water_ml": math.nan},
        {"powder_g": 0.0},
        {"powder_g": -1.0},
        {"powder_g": math.inf},
        {"powder_u_g": -1.0},
        {"scoopful_g": 0.0},
        {"old_line_share": -1.0},
        {"old_line_share": math.nan},
        {"rim_share": 20.0},
        {"water_c": 150.0},
    ],
)
def test_impossible_plans_are_refused(change: dict[str, float]) -> None:
    with pytest.raises(CannotCompute, match=r"^[A-Z].*[.]$"):
        likeliest(reading(0.13), replace(PLAN, **change))  # type: ignore[arg-type]


def test_a_reading_without_spread_is_refused() -> None:
    with pytest.raises(CannotCompute, match="without any spread"):
        likeliest(reading(0.13, 0.0), replace(PLAN, powder_u_g=0.0))


def test_several_scoopfuls_lost_count_of_are_found_and_told_after_what_is_simpler() -> None:
    many = replace(PLAN, scoopful_g=147.5, scoopfuls=20, old_line_share=None)
    three_less = solids_after(many, 3)[Slip.SCOOP_LESS]
    assert three_less == pytest.approx(mixing.mix_of(20_000.0, 17 * 147.5, POWDER, 43.0).solids_share)
    causes = {c.slip: c for c in likeliest(reading(three_less), many)}
    assert (causes[Slip.SCOOP_LESS].count, causes[Slip.SCOOP_LESS].fits) == (3, Fits.WELL)
    line = likeliest(reading(three_less), replace(many, old_line_share=-0.152))
    assert [c.slip for c in told(line)][:2] == [Slip.OLD_LINE, Slip.SCOOP_LESS]
    # Of four scoopfuls nobody loses count of two.
    few = likeliest(reading(three_less), replace(PLAN, scoopful_g=737.5, scoopfuls=4))
    assert next(c for c in few if c.slip is Slip.SCOOP_LESS).count == 1


def test_a_volume_as_planned_rules_out_wrong_water_and_one_that_is_not_rules_out_wrong_powder() -> None:
    planned = mixing.mix_of(20_000.0, 2950.0, POWDER, 43.0)
    much = mixing.mix_of(planned.volume_ml, 2950.0, POWDER, 43.0)
    plan, thin = replace(PLAN, old_line_share=-0.1), reading(much.solids_share)
    right = (planned.volume_ml, 0.01 * planned.volume_ml)
    assert Slip.VOLUME_AS_WATER not in {c.slip for c in told(likeliest(thin, plan, right), 9)}
    assert Slip.OLD_LINE in {c.slip for c in told(likeliest(thin, plan, right), 9)}
    more = (much.volume_ml, 0.01 * much.volume_ml)
    assert {c.slip for c in told(likeliest(thin, plan, more), 9)} == {Slip.VOLUME_AS_WATER}
    with pytest.raises(CannotCompute, match="finished volume"):
        likeliest(thin, plan, (0.0, 1.0))


def test_water_that_only_the_volume_tells_is_named_where_the_reading_bears_it_out() -> None:
    """Seven liters too much of water: no usual slip gives such a volume, and the solids are what they would be."""
    much = mixing.mix_of(27_000.0, 2950.0, POWDER, 43.0)
    volume = (much.volume_ml, 0.01 * much.volume_ml)
    (cause,) = told(likeliest(reading(much.solids_share), PLAN, volume), 9)
    assert (cause.slip, cause.fits) == (Slip.OTHER_WATER, Fits.WELL)
    assert cause.water_ml == pytest.approx(7000.0)
    less = mixing.mix_of(16_000.0, 2950.0, POWDER, 43.0)
    (cause,) = told(likeliest(reading(less.solids_share), PLAN, (less.volume_ml, 0.01 * less.volume_ml)), 9)
    assert (cause.slip, cause.water_ml) == (Slip.OTHER_WATER, pytest.approx(-4000.0))
    # The solids of so much water contradict this reading: the volume was misread, and rules out nothing.
    right = [c.slip for c in told(likeliest(reading(solids_after(PLAN)[Slip.OLD_LINE]), PLAN, volume), 9)]
    assert Slip.OTHER_WATER not in right
    assert right[0] is Slip.OLD_LINE
    assert Slip.OTHER_WATER not in {c.slip for c in likeliest(reading(much.solids_share), PLAN)}
    assert Slip.OTHER_WATER not in {c.slip for c in likeliest(reading(0.13), PLAN, (1000.0, 10.0))}


LONG = replace(PLAN, scoopful_g=92.1875, scoopfuls=32, old_line_share=None, rim_share=None, calves=1)


@pytest.mark.parametrize(("count", "slip"), [(-10, Slip.SCOOP_LESS), (10, Slip.SCOOP_MORE), (-7, Slip.SCOOP_LESS)])
def test_the_scoopfuls_told_are_those_that_explain_the_reading(count: int, slip: Slip) -> None:
    """A correction adds ten for ten missing: a cause of five beside it contradicts that, however unsure the reading."""
    share = mixing.mix_of(20_000.0, 2950.0 + count * 92.1875, POWDER, 43.0).solids_share
    for u in (0.0008, 0.004, 0.02):
        (cause,) = (c for c in likeliest(reading(share, u), LONG) if c.slip is slip)
        assert (cause.count, cause.rare, cause.fits) == (abs(count), True, Fits.POSSIBLE)
        assert cause.solids_share == pytest.approx(share)


def test_more_than_half_of_the_scoopfuls_nobody_forgets() -> None:
    share = mixing.mix_of(20_000.0, 2950.0 - 17 * 92.1875, POWDER, 43.0).solids_share
    (cause,) = (c for c in likeliest(reading(share, 0.02), LONG) if c.slip is Slip.SCOOP_LESS)
    assert (cause.count, cause.fits) == (17, Fits.NO)


def test_what_people_seldom_do_is_told_after_what_they_often_do() -> None:
    share = mixing.mix_of(20_000.0, 2950.0 - 7 * 92.1875, POWDER, 43.0).solids_share
    causes = told(likeliest(reading(share, 0.02), replace(LONG, old_line_share=-0.05)), 9)
    rare = [cause.rare for cause in causes if cause.fits is Fits.POSSIBLE]
    assert rare == sorted(rare)
    assert causes[-1].rare


def test_what_is_weighed_in_besides_stays_where_powder_was_miscounted() -> None:
    """3,245 g of powder and additive as one; a scoopful less is of the powder alone."""
    plan = replace(PLAN, others_g=295.0)
    found = solids_after(plan)
    for slip, mass_g in ((Slip.NONE, 3245.0), (Slip.SCOOP_LESS, 2950.0), (Slip.NOTHING_BESIDES, 2950.0)):
        assert found[slip] == pytest.approx(mixing.mix_of(20_000.0, mass_g, POWDER, 43.0).solids_share)
    assert found[Slip.OLD_LINE] == pytest.approx(
        mixing.mix_of(20_000.0, 1.05 * 2950.0 + 295.0, POWDER, 43.0).solids_share
    )
    two_less = mixing.mix_of(20_000.0, 2655.0, POWDER, 43.0)
    best = likeliest(reading(two_less.solids_share), plan)[0]
    assert (best.slip, best.count) == (Slip.SCOOP_LESS, 2)
    assert Slip.NOTHING_BESIDES not in solids_after(PLAN)
