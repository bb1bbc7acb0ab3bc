"""Scoops that a hand takes for one another."""

from __future__ import annotations

from dataclasses import replace

import pytest

from calibrator.model import Box, Cylinder, Scoop, Shape, TaperedCup
from calibrator.science.scoop_likeness import look_alike, told_apart


def scoop(shape: Shape, name: str = "red", told_by: str = "") -> Scoop:
    return Scoop(id=name, farm_id="f", name=name, shape=shape, volume_ml=600.0, volume_u_ml=2.0, told_by=told_by)


CUP = Cylinder(diameter_mm=98.0, height_mm=88.0)


@pytest.mark.parametrize(
    ("shape", "alike"),
    [
        (Cylinder(diameter_mm=99.0, height_mm=88.0), True),
        (Cylinder(diameter_mm=102.0, height_mm=88.0), False),
        (Box(length_mm=87.0, width_mm=87.0, height_mm=88.0), False),
        (TaperedCup(rim_diameter_mm=98.0, floor_diameter_mm=98.0, height_mm=88.0), False),
    ],
)
def test_one_kind_of_shape_and_nearly_one_size_look_alike(shape: Shape, alike: bool) -> None:
    one, other = scoop(CUP), scoop(shape, "white")
    assert look_alike(one, other) is look_alike(other, one) is alike


def test_one_name_is_alike_whatever_the_size() -> None:
    assert look_alike(scoop(CUP, "Red cup"), scoop(replace(CUP, height_mm=40.0), " red  CUP"))


@pytest.mark.parametrize(("words", "apart"), [(("", ""), False), (("tape", ""), True), (("tape", " Tape "), False)])
def test_a_word_of_its_own_tells_a_scoop_apart(words: tuple[str, str], apart: bool) -> None:
    one, other = (scoop(CUP, told_by=word) for word in words)
    assert told_apart(one, other) is apart
