"""The icon is what its drawing says in every size, and its cup is dark enough to be seen in the smallest."""

from __future__ import annotations

from pathlib import Path

import numpy as np
import pytest
from PIL import Image
from PySide6.QtWidgets import QApplication

from calibrator.places import resource
from tests.draw_icons import ICO_SIZES, SIZES, draw

CUP_LUMA, WALL_ROWS = 100, 8  # of 255; rows of sixteen that both walls run through


def pixels(file: Path) -> np.ndarray:
    with Image.open(file) as image:
        return np.asarray(image.convert("RGBA"), dtype=int)


def test_the_icons_are_those_that_are_drawn(qapp: QApplication, tmp_path: Path) -> None:
    draw(tmp_path)
    for size in SIZES:
        name = f"calibrator_{size}.png"
        kept, drawn = pixels(resource("desktop") / name), pixels(tmp_path / name)
        assert kept.shape == drawn.shape == (size, size, 4)
        assert np.abs(kept - drawn).max() <= 8, name


@pytest.mark.parametrize("name", ["calibrator_16.png", "calibrator.ico"])
def test_both_walls_of_the_cup_are_seen_in_the_smallest(name: str) -> None:
    with Image.open(resource("desktop") / name) as image:
        if image.format == "ICO":
            assert image.info["sizes"] == {(size, size) for size in ICO_SIZES}
            image.size = (16, 16)
        grey = np.asarray(image.convert("L"), dtype=int)
        seen = np.asarray(image.convert("RGBA"), dtype=int)[..., 3] > 200
    dark = (grey < CUP_LUMA) & seen
    rows = [row for row in dark if row[:8].any() and row[8:].any()]
    assert len(rows) >= WALL_ROWS
