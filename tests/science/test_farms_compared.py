"""A product across farms: means beside each other, and lots that two farms weighed both."""

from __future__ import annotations

import pytest

from calibrator.science.farms_compared import between, compare_farms, products
from tests.season_rows import lot


def test_products_are_those_that_two_farms_weighed() -> None:
    near = [lot(1, 0.55), lot(2, 0.56, product=" 20-20 "), lot(3, 0.5, product="other")]
    far = [lot(4, 0.55, product="20-20"), lot(5, 0.5, product="")]
    assert products({"near": near, "far": far}) == ("20-20",)
    assert products({"near": near, "far": []}) == ()


def test_a_farms_interval_is_students_t_on_its_lots() -> None:
    """Confidence limits for the mean: NIST/SEMATECH e-Handbook 1.3.5.2, Ȳ ± t(0.975, n−1)·s/√n; of n = 4,
    t = 3.182446 (any printed table)."""
    values = (0.54, 0.55, 0.56, 0.57)
    (farm,) = compare_farms("20-20", {"near": [lot(n, v) for n, v in enumerate(values)]}).farms
    sd = (sum((v - 0.555) ** 2 for v in values) / 3) ** 0.5
    assert farm.mean_g_per_ml == pytest.approx(0.555)
    assert farm.sd_share == pytest.approx(sd / 0.555)
    assert farm.high_g_per_ml == pytest.approx(0.555 + 3.182446 * sd / 2, rel=1e-6)


def test_farms_apart_are_told_and_one_lot_tells_nothing() -> None:
    lots = {
        "near": [lot(n, 0.55 + 0.002 * (n % 3)) for n in range(6)],
        "far": [lot(n + 10, 0.50 + 0.002 * (n % 3)) for n in range(6)],
        "new": [lot(30, 0.52)],
    }
    near, far, new = compare_farms("20-20", lots).farms
    found = between(near, far)
    assert found is not None
    assert found.differs
    assert found.difference == pytest.approx(-0.05)
    assert between(near, new) is None
    assert new.low_g_per_ml is None


@pytest.mark.parametrize(("theirs", "differs"), [(0.553, False), (0.52, True)])
def test_a_shared_lot_tells_powder_from_weighing(theirs: float, differs: bool) -> None:
    lots = {"near": [lot(1, 0.55), lot(2, 0.56)], "far": [lot(1, theirs), lot(7, 0.55)]}
    (shared,) = compare_farms("20-20", lots).shared
    assert (shared.lot_number, shared.farm_ids) == ("1", ("near", "far"))
    assert shared.difference.differs is differs
