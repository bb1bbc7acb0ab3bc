"""A reading is told back as it was typed, not rounded, wherever it is shown."""

from __future__ import annotations

from dataclasses import replace

import pytest
from answers import Answers
from test_weigh_in_typing import enter, opened

from calibrator.desk.as_typed import as_typed, typed_step_g
from calibrator.desk.pages.fills_table import FillsModel
from calibrator.desk.weigh_in.fill_table import WEIGHT
from calibrator.desk.window import Window
from calibrator.model import FillWay, Scale, Step, UnitSystem

OUNCE_G = 28.349523125
FARM, METRIC = UnitSystem.FARM, UnitSystem.METRIC


@pytest.mark.parametrize(
    ("mass_g", "typed", "system", "told"),
    [
        (432.5, "432.5", METRIC, "432.5 g"),
        (432.55, "432.55 g", METRIC, "432.55 g"),
        (432.5, "432.5 g", FARM, "15.3 oz (432.5 g)"),
        (432.5, "432.5", FARM, "15.3 oz (432.5 g)"),  # typed before the farm went over to pounds
        (11.65 * OUNCE_G, "11.65", FARM, "11.65 oz"),
        (11.65 * OUNCE_G, "11.65", METRIC, "330 g (11.65 oz)"),
        (11 * OUNCE_G, "11", FARM, "11.0 oz"),
        (10.1 * OUNCE_G, "10,1", FARM, "10.1 oz"),
        (332.5, "332,5 g", METRIC, "332.5 g"),
        (75.25 * OUNCE_G, "4 lb 11 1/4 oz", FARM, "4 lb 11 1/4 oz"),
        (330.0, "450 g − 120 g", METRIC, "330 g (450 g − 120 g)"),  # out of an old table
        (330.0, "", METRIC, "330 g"),
    ],
)
def test_a_reading_keeps_its_digits_and_has_its_unit(mass_g: float, typed: str, system: UnitSystem, told: str) -> None:
    assert as_typed(mass_g, typed, system) == told


@pytest.mark.parametrize(
    ("mass_g", "typed", "system", "scale_g", "step_g"),
    [
        (312.5, "312.5", METRIC, 1.0, 0.1),
        (312.5, "312,5 g", METRIC, 1.0, 0.1),
        (312.0, "312 g", METRIC, 1.0, 1.0),
        (312.0, "312 g", METRIC, 5.0, 1.0),  # a scale that counts by five does not make it 310 g
        (310.0, "310 g", METRIC, 5.0, 5.0),
        (10.25 * OUNCE_G, "10.25", FARM, 0.1 * OUNCE_G, 0.01 * OUNCE_G),
        (10 * OUNCE_G, "10 oz", METRIC, 1.0, 1.0),  # ounces have no places in grams
        (283.5, "", METRIC, 1.0, 1.0),
    ],
)
def test_a_weight_is_told_in_the_step_that_it_was_typed_in(
    mass_g: float, typed: str, system: UnitSystem, scale_g: float, step_g: float
) -> None:
    assert typed_step_g(mass_g, typed, system, scale_g) == pytest.approx(step_g)


def test_what_is_typed_finer_than_the_scale_shows_stands_so_everywhere(window: Window, answers: Answers) -> None:
    """A scale of whole grams, and half a gram typed."""
    desk = window.desk
    assert desk.farm is not None
    (scale,) = desk.records.every(Scale)
    desk.records.keep(replace(scale, resolution_g=1.0, resolution_typed="1 g"))
    desk.records.keep(replace(desk.farm, units=METRIC))
    page, view = opened(window, Step.LEVEL_FILLS)
    enter("332.5")
    assert view._table.index(0, WEIGHT).data() == "332.5 g"
    assert view._now.text().endswith("Last kept: 332.5 g")
    assert "entering 332.5 g" in view._undo.toolTip()
    view._view.selectRow(0)
    view._strike.click()
    assert answers.asked == ["Why should 332.5 g from bag 1 not count?"]
    kept = FillsModel()
    assert page.guide is not None
    kept.show(page.guide.fills_of(FillWay.LEVEL), desk.system)
    assert kept.index(0, 2).data() == "332.5 g"
