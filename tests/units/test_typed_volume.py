"""A volume that a person laid down is told as it is, not to the step that water is measured by."""

from __future__ import annotations

import pytest

from calibrator.model import UnitSystem
from calibrator.units import show_typed_volume

QT_ML = 946.352946  # the US liquid quart, by definition


@pytest.mark.parametrize(
    ("volume_ml", "system", "told"),
    [
        (2 * QT_ML, UnitSystem.FARM, "2 qt"),
        (2.25 * QT_ML, UnitSystem.FARM, "2.25 qt"),
        (2.5 * QT_ML, UnitSystem.FARM, "2.5 qt"),
        (2.68 * QT_ML, UnitSystem.FARM, "2.68 qt"),
        (5.25 * QT_ML, UnitSystem.FARM, "1 gal 1.25 qt"),
        (3000.0, UnitSystem.FARM, "3.17 qt"),
        (3000.0, UnitSystem.METRIC, "3.0 L"),
        (2130.0, UnitSystem.METRIC, "2.13 L"),
        (5 * QT_ML, UnitSystem.FARM, "1 gal 1 qt"),
    ],
)
def test_a_feeding_is_told_as_laid_down(volume_ml: float, system: UnitSystem, told: str) -> None:
    assert show_typed_volume(volume_ml, system) == told
