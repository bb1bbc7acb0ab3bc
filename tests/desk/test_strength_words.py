"""What is said of a mix's strength. The limits are Michigan State University Extension's: aim 12–15 % solids, scours
risked above 17 %; those of osmolality are common practice, no source."""

from __future__ import annotations

from dataclasses import replace

import pytest

from calibrator.desk.strength_words import at_risk, strength_cautions
from calibrator.model import Composition
from calibrator.science.mixing import mix_on_water, powder_from

POWDER = powder_from(Composition(protein_pct=20.0, fat_pct=20.0, fibre_pct=0.15, ash_pct=7.0))


@pytest.mark.parametrize(
    ("solids", "words", "risk"),
    [
        (0.11, "11.0 % solids is below the usual aim of 12 % to 15 %.", False),
        (0.16, "16.0 % solids is above the usual aim of 12 % to 15 %.", True),
        (0.18, "18.0 % solids is above 17 %: calves may scour.", True),
    ],
)
def test_solids_outside_the_aim_are_said_with_it(solids: float, words: str, risk: bool) -> None:
    mix = mix_on_water(1000.0, solids / (1 - solids), POWDER, 40.0)
    assert strength_cautions(mix).startswith(words)
    assert strength_cautions(mix).endswith("The label and your veterinarian decide.")
    assert at_risk(mix) == risk


def test_osmolality_above_the_aim_is_said_as_the_estimate_that_it_is() -> None:
    within, above = (mix_on_water(1000.0, s / (1 - s), POWDER, 40.0) for s in (0.121, 0.133))
    assert within.osmolality_mosm_per_kg < 350 < above.osmolality_mosm_per_kg < 400
    assert strength_cautions(within) == ""
    spread = round(2 * above.osmolality_u / 5) * 5
    assert above.osmolality_mosm_per_kg - 2 * above.osmolality_u < 350
    assert f"(give or take {spread}) may be above the usual aim of 300 to 350 mOsm/kg" in strength_cautions(above)
    measured = replace(above, osmolality_u=3.0)  # a laboratory's value leaves less open
    assert "(give or take 5) is above the usual aim of 300 to 350 mOsm/kg" in strength_cautions(measured)
    assert not at_risk(above)


def test_where_osmolality_is_a_risk_and_solids_are_not_both_say_on_what_ground() -> None:
    """The limit of 400 mOsm/kg: common practice, no source; that of 600: University of California Cooperative
    Extension, Tulare, which has stronger mixes fed only where fresh water is always there."""
    told = strength_cautions(mix_on_water(1000.0, 0.16 / 0.84, POWDER, 40.0))
    assert "16.0 % solids is above the usual aim of 12 % to 15 %." in told
    assert "may be above 400 mOsm/kg: keep fresh water before the calves. By common practice scours are a risk" in told
    assert told.endswith("Other advice sees it only above 600 mOsm/kg. The label and your veterinarian decide.")


def test_above_both_limits_nobody_is_told_that_other_advice_allows_it() -> None:
    told = strength_cautions(mix_on_water(1000.0, 0.25 / 0.75, POWDER, 40.0))
    assert "above 400 mOsm/kg: keep fresh water before the calves." in told
    assert "Other advice" not in told
