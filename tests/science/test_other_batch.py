"""What a finished volume tells: whose batch it is, and where it cannot see what an instrument does."""

from __future__ import annotations

import math

import pytest

from calibrator.science.check import contradict, deciding
from calibrator.science.errors import CannotCompute
from calibrator.science.mix_density import cannot_see_powder
from calibrator.science.mixing import Powder
from calibrator.science.other_batch import calves_of, is_batch
from calibrator.science.solids import Solids, SolidsFrom


def seen(share: float, u: float, way: SolidsFrom = SolidsFrom.WHOLE_MILK) -> Solids:
    return Solids(share, u, math.inf, way, 3, u * 0.5, u * 0.8, 0.01)


VOLUME = seen(0.238, 0.0025, SolidsFrom.FINISHED_VOLUME)


@pytest.mark.parametrize(
    ("read_ml", "drops", "fits"),
    [
        (41_600.0, [seen(0.133, 0.008)], True),
        (42_200.0, [], True),  # nothing else was read
        (44_000.0, [seen(0.133, 0.008)], False),  # another volume
        (41_600.0, [seen(0.238, 0.008)], False),  # so strong that batch never is
        (41_600.0, [seen(0.133, 0.008), seen(0.10, 0.004)], False),  # one of two says no
    ],
)
def test_volume_and_every_instrument_have_to_fit(read_ml: float, drops: list[Solids], fits: bool) -> None:
    assert is_batch(read_ml, 0.01 * read_ml, [*drops, VOLUME], 41_500.0, 0.13, 0.005) is fits


def test_a_volume_tells_for_how_many_calves_it_would_be() -> None:
    assert calves_of(40_000.0, 80_000.0, 30) == 15
    assert calves_of(1.0, 80_000.0, 30) == 1
    with pytest.raises(CannotCompute):
        calves_of(0.0, 80_000.0, 30)


@pytest.mark.parametrize(
    ("drops", "never"),
    [
        (seen(0.133, 0.008), True),  # leans the volume's way, and is far from it
        (seen(0.125, 0.001), True),  # as wanted
        (seen(0.110, 0.002), True),  # the other side
        (seen(0.150, 0.002), False),  # surely too strong as well
        (seen(0.190, 0.030), False),  # too rough to gainsay it
    ],
)
def test_a_volume_and_an_instrument_far_from_it_cannot_both_be_true(drops: Solids, never: bool) -> None:
    assert contradict([drops, VOLUME], 0.125, 0.005) is never


def test_without_a_volume_surely_off_nothing_contradicts_it() -> None:
    assert not contradict([seen(0.110, 0.002)], 0.125, 0.005)
    right = seen(0.125, 0.002, SolidsFrom.FINISHED_VOLUME)
    assert not contradict([seen(0.110, 0.002), right], 0.125, 0.005)  # too little powder does just that
    assert not contradict([VOLUME], 0.125, 0.005)


def test_a_volume_that_the_drops_rule_out_decides_nothing() -> None:
    drops, near = seen(0.133, 0.008), seen(0.140, 0.0015, SolidsFrom.FINISHED_VOLUME)
    assert deciding([drops, VOLUME], 0.125, 0.005) is drops
    assert deciding([drops, near], 0.125, 0.005) is near


WATER_ML, POWDER = 92_000.0, Powder(0.68, 0.95, 2.6, 0.2)
"""At 4 °C, so that a milliliter of water is a gram: 13 kg of powder make 92 + 13 · 0.68 = 100.84 L."""


@pytest.mark.parametrize(
    ("read_ml", "powder_g", "blind"),
    [
        (100_840.0, 13_000.0, True),  # all as on the chart
        (100_840.0, 11_500.0, True),  # 1.5 kg too little is 1.0 L, and a liter is what the volume is read to
        (100_840.0, 14_500.0, True),
        (100_840.0, 9_500.0, False),  # 2.4 L less: that would have been seen
        (103_000.0, 11_500.0, False),  # and water too much besides
        (99_820.0, 11_500.0, True),  # just the volume of so little powder
    ],
)
def test_a_volume_that_hardly_changes_with_the_powder_gainsays_no_instrument(
    read_ml: float, powder_g: float, blind: bool
) -> None:
    drops = seen(powder_g / (powder_g + WATER_ML), 0.001)
    assert cannot_see_powder(read_ml, 1000.0, drops, WATER_ML, POWDER, 4.0) is blind


def test_a_rough_instrument_leaves_more_room_to_the_volume() -> None:
    share = 9_500.0 / (9_500.0 + WATER_ML)
    assert not cannot_see_powder(100_840.0, 1000.0, seen(share, 0.001), WATER_ML, POWDER, 4.0)
    assert cannot_see_powder(100_840.0, 1000.0, seen(share, 0.015), WATER_ML, POWDER, 4.0)
