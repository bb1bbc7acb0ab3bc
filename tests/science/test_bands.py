"""Where a mix stands beside its aims."""

from __future__ import annotations

import math

import pytest

from calibrator.science.bands import OSMOLALITY_MOSM_PER_KG, SOLIDS_SHARE, Band, Limits, band
from calibrator.science.errors import CannotCompute


@pytest.mark.parametrize(
    ("mosm", "expected"),
    [
        (260, Band.BELOW),
        (300, Band.AIM),
        (325, Band.AIM),
        (350, Band.AIM),
        (380, Band.ABOVE),
        (600, Band.RISK),
    ],
)
def test_osmolality_of_the_trade(mosm: float, expected: Band) -> None:
    """Common practice, no source: 8 oz on 2 qt gives 260, 10 oz 325; aim 300–350; 400–600 is a risk."""
    assert band(mosm, OSMOLALITY_MOSM_PER_KG) is expected


@pytest.mark.parametrize(
    ("solids", "expected"), [(0.107, Band.BELOW), (0.13, Band.AIM), (0.16, Band.ABOVE), (0.18, Band.RISK)]
)
def test_solids(solids: float, expected: Band) -> None:
    assert band(solids, SOLIDS_SHARE) is expected


def test_an_aim_may_begin_at_nothing() -> None:
    assert band(0.0, Limits(0.0, 0.1, 0.2)) is Band.AIM


def test_nonsense_is_refused() -> None:
    with pytest.raises(CannotCompute, match="strength"):
        band(math.nan, SOLIDS_SHARE)
    with pytest.raises(CannotCompute, match="order"):
        band(0.1, Limits(0.2, 0.1, 0.3))
