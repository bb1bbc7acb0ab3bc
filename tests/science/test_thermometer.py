"""A thermometer's error in ice water is taken off, and what stays of it counts."""

from __future__ import annotations

import math

import pytest

from calibrator.model import Composition
from calibrator.science import check, mix_density, mixing
from calibrator.science.check import Caution
from calibrator.science.scale import ScaleFacts
from calibrator.science.thermometer import CHECKED_U_C, UNCHECKED_U_C, Thermometer, ice_offset_c, needs_mending, warmth

POWDER = mixing.powder_from(Composition())


def test_the_error_in_ice_water_is_in_the_thermometers_own_degrees() -> None:
    # Ice melts at 32 °F and 0 °C by the definition of both scales.
    assert ice_offset_c(32.0, 33.8) == pytest.approx(1.0)
    assert ice_offset_c(0.0, -1.0) == pytest.approx(-1.0)


def test_it_is_taken_off_and_rounding_counts_twice() -> None:
    found = warmth(40.0, Thermometer(1.0, 1.5))
    assert found.celsius == pytest.approx(38.5)
    # d/√12 for each of two readings: JCGM 100:2008, F.2.2.1.
    assert found.u_c == pytest.approx(math.sqrt(2 / 12 + CHECKED_U_C**2))
    assert found.half_width_c == pytest.approx(1.959964 * found.u_c)


def test_one_that_was_never_checked_or_long_ago_is_believed_less() -> None:
    never, old = warmth(40.0, Thermometer(0.1)), warmth(40.0, Thermometer(0.1, 0.5, overdue=True))
    assert never.celsius == 40.0
    assert old.celsius == pytest.approx(39.5)
    assert min(never.u_c, old.u_c) >= UNCHECKED_U_C > warmth(40.0, Thermometer(0.1, 0.5)).u_c


@pytest.mark.parametrize(("offset", "mend"), [(None, False), (1.9, False), (-2.1, True), (5.0, True)])
def test_far_off_is_mended_not_corrected_away(offset: float | None, mend: bool) -> None:
    assert needs_mending(Thermometer(1.0, offset)) is mend


def test_a_doubtful_temperature_makes_a_density_less_sure() -> None:
    def solids(u_c: float) -> float:
        return mix_density.by_jug([1031.0], 1000.0, 1.0, ScaleFacts(1.0), POWDER, 38.0, temperature_u_c=u_c).u

    sharp, vague = solids(0.0), solids(2.0)
    share = [mix_density.by_jug([1031.0], 1000.0, 1.0, ScaleFacts(1.0), POWDER, c).share for c in (36.0, 40.0)]
    # The share per degree by two temperatures of its own, two degrees of doubt.
    assert vague == pytest.approx(math.hypot(sharp, (share[1] - share[0]) / 4 * 2.0), rel=0.01)
    floating = mix_density.Hydrometer(20.0, 0.001, 0.0)
    one, other = (mix_density.by_hydrometer([1.03], floating, POWDER, 38.0, temperature_u_c=u).u for u in (0.0, 2.0))
    assert other > one


def test_for_a_scald_the_warmest_that_it_can_be_counts() -> None:
    # 120 °F is 48.9 °C.
    assert check.cautions(None, POWDER, water_c=47.5) == ()
    assert check.cautions(None, POWDER, water_c=47.5, doubt_c=2.0) == (Caution.SCALD,)
    assert check.cautions(None, POWDER, mix_c=41.0, doubt_c=2.0) == ()
