"""What fits a vessel, what runs over, where the water stands."""

from __future__ import annotations

import math

import pytest

from calibrator.model import Composition, Cylinder, Vessel
from calibrator.science import mixing, scoop, vessels
from calibrator.science.errors import CannotCompute

GALLON_ML, OUNCE_G = 3785.411784, 28.349523125
PAIL = Vessel(id="p", farm_id="f", name="5-gallon pail", rim_volume_ml=5 * GALLON_ML)
DRUM = Cylinder(diameter_mm=290.0, height_mm=300.0)


def mix_volume_ml(gallons: float, ounces: float) -> float:
    powder = mixing.powder_from(Composition())
    return mixing.mix_of(gallons * GALLON_ML, ounces * OUNCE_G, powder, 43.0).volume_ml


def test_five_gallons_with_a_hundred_ounces_run_over_a_five_gallon_pail() -> None:
    """Common practice, no source."""
    found = vessels.fit(mix_volume_ml(5, 100), PAIL)
    assert not found.fits
    assert found.overflow_ml == pytest.approx(mix_volume_ml(5, 100) - 5 * GALLON_ML)
    assert found.over_usable_ml == pytest.approx(found.overflow_ml + 0.1 * 5 * GALLON_ML)


def test_four_gallons_with_eighty_ounces_do_not() -> None:
    """Common practice, no source."""
    found = vessels.fit(mix_volume_ml(4, 80), PAIL)
    assert (found.fits, found.over_usable_ml, found.overflow_ml) == (True, 0.0, 0.0)


def test_headspace_can_be_eaten_into_without_running_over() -> None:
    found = vessels.fit(4.7 * GALLON_ML, PAIL)
    assert not found.fits
    assert found.over_usable_ml == pytest.approx(0.2 * GALLON_ML)
    assert found.overflow_ml == 0.0


def test_a_vessel_filled_exactly_fits() -> None:
    assert vessels.fit(vessels.usable_ml(PAIL), PAIL).fits


def test_levels_come_from_the_shape() -> None:
    shaped = Vessel(id="p", farm_id="f", name="pail", rim_volume_ml=scoop.rim_volume_ml(DRUM), shape=DRUM)
    assert vessels.level_mm(shaped, scoop.rim_volume_ml(DRUM) / 2) == pytest.approx(150.0)
    with pytest.raises(CannotCompute, match="more than it holds"):
        vessels.level_mm(shaped, 30000.0)


def test_without_a_shape_there_is_no_level() -> None:
    assert vessels.level_mm(PAIL, 1000.0) is None


@pytest.mark.parametrize(("rim", "usable"), [(0.0, 0.9), (100.0, 0.0), (100.0, 1.1), (math.nan, 0.9)])
def test_impossible_vessels_are_refused(rim: float, usable: float) -> None:
    with pytest.raises(CannotCompute, match="vessel"):
        vessels.usable_ml(Vessel(id="v", farm_id="f", name="v", rim_volume_ml=rim, usable_share=usable))


def test_a_negative_volume_is_refused() -> None:
    with pytest.raises(CannotCompute, match="volume of mix"):
        vessels.fit(-1.0, PAIL)
