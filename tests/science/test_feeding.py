"""What one calf's feeding takes: the powder alone where there are additives, and the allowance on top."""

from __future__ import annotations

import pytest

from calibrator.model import Additive, Composition, MixingRate, PlanGroup, RateBasis, VolumeMeans
from calibrator.science.feeding import fed_ml, mix_per_calf, powder_per_calf_g
from calibrator.science.mixing import powder_from

OUNCE_G, TWO_QUARTS_ML, WARM_C = 28.349523125, 2 * 946.352946, 43.0
POWDER = powder_from(Composition())


def on_two_quarts(ounces: float) -> MixingRate:
    return MixingRate(basis=RateBasis.ON_WATER, powder_mass_g=ounces * OUNCE_G, volume_ml=TWO_QUARTS_ML)


def group(*additives: Additive) -> PlanGroup:
    return PlanGroup(
        name="all", calves=10, volume_ml=TWO_QUARTS_ML, volume_means=VolumeMeans.WATER, rate=on_two_quarts(10),
        additives=additives,
    )  # fmt: skip


def test_the_powder_of_a_feeding_is_told_without_its_additives() -> None:
    """10 oz of powder and 5 oz of fat on 2 qt of water, and a tenth more of all of it for hoses and pails."""
    fat = Additive(name="fat", rate=on_two_quarts(5), composition=Composition(protein_pct=7.0, fat_pct=60.0))
    for extra in (0.0, 0.1):
        assert powder_per_calf_g(group(fat), POWDER, WARM_C, extra) == pytest.approx(10 * OUNCE_G * (1 + extra))
        whole = mix_per_calf(group(fat), POWDER, WARM_C, extra)
        assert whole.powder_g == pytest.approx(15 * OUNCE_G * (1 + extra))
        assert fed_ml(group(fat), whole) == pytest.approx(whole.volume_ml / (1 + extra))
    assert powder_per_calf_g(group(), POWDER, WARM_C) == pytest.approx(10 * OUNCE_G)
