"""Composition into room in the mix, warmth and osmoles; what is taken where a label is silent."""

from __future__ import annotations

import math

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from calibrator.model import Composition
from calibrator.science import powder
from calibrator.science.errors import CannotCompute
from calibrator.science.powder import Part

lawful = settings(deadline=None, max_examples=80)
FULL = Composition(protein_pct=22.0, fat_pct=20.0, fibre_pct=0.15, ash_pct=7.5, moisture_pct=4.0)

labels = st.builds(
    Composition,
    protein_pct=st.one_of(st.none(), st.floats(10, 30)),
    fat_pct=st.one_of(st.none(), st.floats(5, 30)),
    fibre_pct=st.one_of(st.none(), st.floats(0, 1)),
    ash_pct=st.one_of(st.none(), st.floats(4, 10)),
    moisture_pct=st.one_of(st.none(), st.floats(2, 6)),
)


@lawful
@given(labels)
def test_parts_make_up_the_whole(label: Composition) -> None:
    assert sum(powder.parts(label).share(part) for part in Part) == pytest.approx(1.0, abs=1e-12)


@lawful
@given(labels)
def test_stated_parts_are_kept_and_silent_ones_are_told(label: Composition) -> None:
    whole, assumed = powder.parts(label), powder.assumed_parts(label)
    for part in powder.TYPICAL_PCT:
        told = getattr(label, f"{part}_pct")
        assert (part in assumed) == (told is None)
        assert 100 * whole.share(part) == pytest.approx(assumed[part] if told is None else told)


def test_a_full_label_leaves_nothing_to_assume() -> None:
    assert powder.assumed_parts(FULL) == {}
    assert powder.parts(FULL).carbohydrate_pct == pytest.approx(46.35)
    assert powder.dry_matter_share(FULL) == pytest.approx(0.96)


def test_typical_parts_shrink_where_the_label_leaves_less_room() -> None:
    rich = Composition(fat_pct=90.0)
    assumed = powder.assumed_parts(rich)
    assert sum(assumed.values()) == pytest.approx(10.0)
    assert assumed[Part.PROTEIN] / assumed[Part.ASH] == pytest.approx(26.0 / 7.0)
    assert powder.parts(rich).carbohydrate_pct == pytest.approx(0.0, abs=1e-9)


@pytest.mark.parametrize(
    "label",
    [
        Composition(protein_pct=60.0, fat_pct=50.0),
        Composition(protein_pct=-1.0),
        Composition(fat_pct=math.nan),
        Composition(ash_pct=101.0),
    ],
)
def test_impossible_labels_are_refused(label: Composition) -> None:
    with pytest.raises(CannotCompute, match="label"):
        powder.parts(label)


def test_fat_takes_more_room_than_lactose() -> None:
    lean = Composition(protein_pct=20.0, fat_pct=10.0, fibre_pct=0.0, ash_pct=7.0, moisture_pct=4.0)
    rich = Composition(protein_pct=20.0, fat_pct=25.0, fibre_pct=0.0, ash_pct=7.0, moisture_pct=4.0)
    more = powder.specific_volume_ml_per_g(rich) - powder.specific_volume_ml_per_g(lean)
    assert more == pytest.approx(0.15 * (1 / 0.918 - 1 / 1.78))


def test_specific_heat_is_the_parts_by_weight() -> None:
    only_water = Composition(protein_pct=0, fat_pct=0, fibre_pct=0, ash_pct=0, moisture_pct=100)
    assert powder.specific_heat(only_water, 20.0) == powder.part_specific_heat(Part.MOISTURE, 20.0)
    assert 1.5 < powder.specific_heat(FULL, 20.0) < 2.2
    with pytest.raises(CannotCompute, match="temperature"):
        powder.specific_heat(FULL, 200.0)


def test_osmoles_come_from_lactose_and_ash() -> None:
    value, u = powder.osmoles_per_g(FULL)
    assert value == pytest.approx(0.4635 * 1000 / 342.30 + 0.075 * 13.0)
    assert u == pytest.approx(0.10 * value)


def test_a_silent_label_makes_osmoles_less_sure() -> None:
    _, sure = powder.osmoles_per_g(FULL)
    value, unsure = powder.osmoles_per_g(Composition(protein_pct=22.0, fat_pct=20.0))
    assert unsure > sure
    assert unsure > 0.10 * value
    lactose = 10.0 / 342.30  # one percent of the powder
    silent = math.hypot(0.13 - lactose, lactose, 0.1 * lactose)  # ash, moisture, fibre
    assert unsure == pytest.approx(math.hypot(0.10 * value, silent), rel=1e-9)


def test_osmoles_of_a_powder_without_lactose_stay_estimable() -> None:
    value, u = powder.osmoles_per_g(Composition(fat_pct=90.0))
    assert value == pytest.approx(0.10 * 7.0 / 37.15 * 13.0)
    assert u > 0.1 * value


def test_an_additive_s_osmoles_reach_from_milk_s_to_those_of_salts_that_fall_apart() -> None:
    """A rehydration salt of 3.5 g NaCl, 1.5 g KCl, 2.5 g NaHCO3 and 20 g glucose (from memory, not verified) brings 12
    mOsm a gram by the molar masses; as milk's sugar and ash it was told as 5.6 ± 0.6."""
    molar = {
        "NaCl": (58.443, 2, 3.5),
        "KCl": (74.551, 2, 1.5),
        "NaHCO3": (84.007, 2, 2.5),
        "glucose": (180.156, 1, 20.0),
    }
    grams = sum(mass for _, _, mass in molar.values())
    truth = 1000 * sum(mass / weight * ions for weight, ions, mass in molar.values()) / grams
    salts = Composition(ash_pct=100 * 7.5 / grams, fat_pct=0.0, protein_pct=0.0, fibre_pct=0.0)
    value, u = powder.osmoles_of_additive_per_g(salts)
    assert abs(truth - value) < 2 * u
    least, _ = powder.osmoles_per_g(salts)
    assert value - 2 * u == pytest.approx(least)


def test_an_additive_of_which_nothing_is_told_may_bring_nothing_or_be_salt() -> None:
    value, u = powder.osmoles_of_additive_per_g(Composition(fat_pct=0.0, protein_pct=0.0, ash_pct=0.0))
    assert (value - 2 * u, value + 2 * u) == (pytest.approx(0.0), pytest.approx(powder.MOSMOL_PER_G_TABLE_SALT))
