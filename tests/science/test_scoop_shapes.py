"""Shapes: volume and level undo each other, the wall's length, the wall laid flat, nothing clipped."""

from __future__ import annotations

import math
from itertools import pairwise

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from calibrator.model import Box, Cylinder, Poured, Shape, TaperedCup
from calibrator.science import scoop
from calibrator.science.errors import CannotCompute

lawful = settings(deadline=None, max_examples=150)
sizes = st.floats(10.0, 400.0)

cylinders = st.builds(Cylinder, diameter_mm=sizes, height_mm=sizes)
cups = st.builds(TaperedCup, rim_diameter_mm=sizes, floor_diameter_mm=sizes, height_mm=sizes)
boxes = st.builds(Box, length_mm=sizes, width_mm=sizes, height_mm=sizes)


@st.composite
def poured_scoops(draw: st.DrawFn) -> Poured:
    steps = draw(st.lists(st.tuples(st.floats(5.0, 40.0), st.floats(0.5, 20.0)), min_size=1, max_size=9))
    heights, volumes, height, volume = [], [], 0.0, 0.0
    for rise, area in steps:
        height, volume = height + rise, volume + rise * area
        heights.append(height)
        volumes.append(volume)
    return Poured(heights_mm=tuple(heights), volumes_ml=tuple(volumes))


shapes = st.one_of(cylinders, cups, boxes, poured_scoops())
shares = st.floats(0.0, 1.0)

CUP = TaperedCup(rim_diameter_mm=100.0, floor_diameter_mm=80.0, height_mm=120.0)
POURED = Poured(heights_mm=(12.0, 30.0, 60.0, 95.0), volumes_ml=(20.0, 90.0, 260.0, 520.0))
EACH = [
    Cylinder(diameter_mm=90.0, height_mm=100.0),
    CUP,
    TaperedCup(rim_diameter_mm=80.0, floor_diameter_mm=100.0, height_mm=120.0),
    Box(length_mm=100.0, width_mm=80.0, height_mm=60.0),
    POURED,
]


@lawful
@given(shapes, shares)
def test_level_then_volume_gives_the_volume_back(shape: Shape, part: float) -> None:
    wanted = part * scoop.rim_volume_ml(shape)
    assert scoop.volume_ml(shape, scoop.height_mm(shape, wanted)) == pytest.approx(wanted, rel=1e-9)


@lawful
@given(shapes, st.floats(1e-3, 1.0))
def test_volume_then_level_gives_the_level_back(shape: Shape, part: float) -> None:
    wanted = part * scoop.inner_height_mm(shape)
    assert scoop.height_mm(shape, scoop.volume_ml(shape, wanted)) == pytest.approx(wanted, rel=1e-9)


@lawful
@given(shapes, shares)
def test_down_the_wall_and_back(shape: Shape, part: float) -> None:
    top = scoop.inner_height_mm(shape)
    down = scoop.down_wall_mm(shape, part * top)
    assert 0 <= down <= scoop.wall_length_mm(shape) * (1 + 1e-12)
    assert scoop.height_from_down_wall_mm(shape, down) == pytest.approx(part * top, abs=1e-9 * top)


@lawful
@given(shapes, shares, shares)
def test_more_height_is_more_volume(shape: Shape, one: float, other: float) -> None:
    low, high = sorted((one, other))
    top = scoop.inner_height_mm(shape)
    assert scoop.volume_ml(shape, low * top) <= scoop.volume_ml(shape, high * top)


@lawful
@given(shapes, st.floats(0.02, 0.98))
def test_slope_is_what_one_more_millimetre_adds(shape: Shape, part: float) -> None:
    at, step = part * scoop.inner_height_mm(shape), 1e-4
    rise = scoop.volume_ml(shape, at + step) - scoop.volume_ml(shape, at - step)
    largest = max(scoop.slope_ml_per_mm(shape, at + d) for d in (-step, 0.0, step))
    assert rise / (2 * step) == pytest.approx(scoop.slope_ml_per_mm(shape, at), abs=1e-3 * largest + 1e-5)


@lawful
@given(cylinders, st.floats(0.1, 10.0))
def test_scaling_a_scoop_scales_its_volume_by_the_cube(shape: Cylinder, by: float) -> None:
    larger = Cylinder(diameter_mm=shape.diameter_mm * by, height_mm=shape.height_mm * by)
    assert scoop.rim_volume_ml(larger) == pytest.approx(scoop.rim_volume_ml(shape) * by**3, rel=1e-9)


def test_a_cup_that_hardly_tapers_is_nearly_a_cylinder() -> None:
    straight = Cylinder(diameter_mm=90.0, height_mm=100.0)
    nearly = TaperedCup(rim_diameter_mm=90.0 + 1e-9, floor_diameter_mm=90.0, height_mm=100.0)
    assert scoop.height_mm(nearly, 300.0) == pytest.approx(scoop.height_mm(straight, 300.0), rel=1e-9)


def test_poured_steps_are_met_exactly() -> None:
    for height, volume in zip(POURED.heights_mm, POURED.volumes_ml, strict=True):
        assert scoop.volume_ml(POURED, height) == pytest.approx(volume, rel=1e-12)


def test_one_poured_step_is_a_straight_wall() -> None:
    one = Poured(heights_mm=(80.0,), volumes_ml=(400.0,))
    assert scoop.height_mm(one, 100.0) == pytest.approx(20.0)
    assert scoop.slope_ml_per_mm(one, 80.0) == pytest.approx(5.0)


def test_slant_of_the_tapered_wall() -> None:
    assert scoop.wall_length_mm(CUP) == pytest.approx(math.hypot(120.0, 10.0))
    assert scoop.down_wall_mm(CUP, 60.0) == pytest.approx(math.hypot(60.0, 5.0))


@pytest.mark.parametrize("shape", EACH)
def test_a_line_at_the_rim_and_at_the_floor(shape: Shape) -> None:
    assert scoop.down_wall_mm(shape, scoop.inner_height_mm(shape)) == 0.0
    assert scoop.height_from_down_wall_mm(shape, scoop.wall_length_mm(shape)) == pytest.approx(0.0, abs=1e-9)
    assert scoop.height_mm(shape, 0.0) == 0.0


@pytest.mark.parametrize("shape", EACH)
def test_nothing_is_clipped(shape: Shape) -> None:
    top, rim, wall = scoop.inner_height_mm(shape), scoop.rim_volume_ml(shape), scoop.wall_length_mm(shape)
    with pytest.raises(CannotCompute, match="above the rim"):
        scoop.volume_ml(shape, top * 1.001)
    with pytest.raises(CannotCompute, match="more than it holds"):
        scoop.height_mm(shape, rim * 1.001)
    with pytest.raises(CannotCompute, match="below the floor"):
        scoop.height_from_down_wall_mm(shape, wall * 1.001)
    for function in (scoop.volume_ml, scoop.height_mm, scoop.height_from_down_wall_mm, scoop.down_wall_mm):
        for nonsense in (-1.0, math.nan, math.inf):
            with pytest.raises(CannotCompute):
                function(shape, nonsense)


@pytest.mark.parametrize(
    "shape",
    [
        Cylinder(diameter_mm=0.0, height_mm=10.0),
        Cylinder(diameter_mm=10.0, height_mm=math.nan),
        TaperedCup(rim_diameter_mm=-1.0, floor_diameter_mm=10.0, height_mm=10.0),
        Box(length_mm=10.0, width_mm=math.inf, height_mm=10.0),
        Poured(heights_mm=(), volumes_ml=()),
        Poured(heights_mm=(1.0, 2.0), volumes_ml=(1.0,)),
        Poured(heights_mm=(2.0, 1.0), volumes_ml=(1.0, 2.0)),
        Poured(heights_mm=(0.0, 1.0), volumes_ml=(1.0, 2.0)),
        Poured(heights_mm=(1.0, 2.0), volumes_ml=(1.0, 1.0)),
        Poured(heights_mm=(1.0, 2.0), volumes_ml=(1.0, math.nan)),
        Poured(heights_mm=(50.0, 51.0), volumes_ml=(0.001, 50.0)),
    ],
)
def test_impossible_scoops_are_refused(shape: Shape) -> None:
    with pytest.raises(CannotCompute, match=r"^[A-Z].*\.$"):
        scoop.rim_volume_ml(shape)


@pytest.mark.parametrize("shape", EACH)
def test_outline_runs_from_floor_to_rim_and_turns_to_the_volume(shape: Shape) -> None:
    outline = scoop.outline_mm(shape)
    assert outline[0][0] == 0.0
    assert outline[-1][0] == pytest.approx(scoop.inner_height_mm(shape))
    assert all(half >= 0 for _, half in outline)
    if not isinstance(shape, Box):
        cones = sum(
            math.pi * (h2 - h1) * (r1 * r1 + r1 * r2 + r2 * r2) / 3000.0 for (h1, r1), (h2, r2) in pairwise(outline)
        )
        assert cones == pytest.approx(scoop.rim_volume_ml(shape), rel=2e-3)


def test_wrap_of_a_straight_scoop_is_a_strip_around_it() -> None:
    round_one = scoop.wrap(Cylinder(diameter_mm=90.0, height_mm=100.0), wall_thickness_mm=2.0)
    assert round_one.angle_deg is None
    assert round_one.rim_edge_mm == round_one.floor_edge_mm == pytest.approx(math.pi * 94.0)
    square = scoop.wrap(Box(length_mm=100.0, width_mm=80.0, height_mm=60.0), wall_thickness_mm=1.0)
    assert (square.rim_edge_mm, square.wall_length_mm) == pytest.approx((368.0, 60.0))
    poured = scoop.wrap(POURED, wall_thickness_mm=3.0)
    rim_area = 1000.0 * scoop.slope_ml_per_mm(POURED, 95.0)
    assert poured.angle_deg is None
    assert poured.rim_edge_mm == pytest.approx(2 * math.pi * (math.sqrt(rim_area / math.pi) + 3.0))
    assert scoop.wrap(TaperedCup(rim_diameter_mm=90.0, floor_diameter_mm=90.0, height_mm=50.0)).angle_deg is None


@lawful
@given(cups, st.floats(0.0, 5.0))
def test_wrap_of_a_tapered_cup_closes_around_it(shape: TaperedCup, thickness: float) -> None:
    if abs(shape.rim_diameter_mm - shape.floor_diameter_mm) < 1e-3:
        return
    ring = scoop.wrap(shape, thickness)
    assert ring.angle_deg is not None
    assert ring.angle_deg is not None
    assert ring.rim_radius_mm is not None
    assert ring.floor_radius_mm is not None
    angle = math.radians(ring.angle_deg)
    assert angle * ring.rim_radius_mm == pytest.approx(ring.rim_edge_mm, rel=1e-9)
    assert angle * ring.floor_radius_mm == pytest.approx(ring.floor_edge_mm, rel=1e-9)
    assert abs(ring.rim_radius_mm - ring.floor_radius_mm) == pytest.approx(ring.wall_length_mm, rel=1e-6)
    assert ring.rim_edge_mm == pytest.approx(math.pi * (shape.rim_diameter_mm + 2 * thickness))


def test_a_wall_of_negative_thickness_is_refused() -> None:
    with pytest.raises(CannotCompute, match="thickness"):
        scoop.wrap(CUP, -1.0)
