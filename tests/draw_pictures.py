"""Draws the pictures of the README and of the manual anew: `python -m tests.draw_pictures`."""

from __future__ import annotations

import argparse
import os
import subprocess
import sys
import tempfile
from pathlib import Path

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

from PIL import Image
from PySide6.QtCore import QLocale
from PySide6.QtGui import QGuiApplication

from tests.prints.rendered import page_image
from tests.prints.samples import documents

PICTURES = Path(__file__).resolve().parents[1] / "resources" / "pictures"
SIZE = (900, 563)
SCREENS = {
    "today": "today",
    "weigh_in_level_fills": "weigh_in-3-level_fills",
    "weigh_in_mark": "weigh_in-4-mark",
    "tables": "tables",
    "mix_check": "mix_check-thin",
    "season": "season",
}


PRINTS = {"scoop_label": "strip_en", "wall_chart": "chart_usual"}
WIDE_PX, DPI = 620, 73


def main() -> None:
    """The screens in both languages, in a process each that has its own; then the prints.

    Spanish in metric: most who read it weigh in grams. Each manual says beside its first picture which units they show.
    """
    argparse.ArgumentParser(description=__doc__).parse_args()
    for language, folder, units in (("en", PICTURES, "farm"), ("es", PICTURES / "es", "metric")):
        folder.mkdir(exist_ok=True)
        with tempfile.TemporaryDirectory() as drawn:
            command = [sys.executable, "-m", "tests.draw_screens", drawn, "--light", "--language", language]
            subprocess.run(command, check=True, stdout=subprocess.DEVNULL)
            for name, screen in SCREENS.items():
                picture = Image.open(Path(drawn) / f"{screen}-{units}-light.png").convert("RGB")
                picture = picture.resize(SIZE, Image.Resampling.LANCZOS)
                _save(picture, folder / f"{name}.png")
    _draw_prints()


def _draw_prints() -> None:
    app = QGuiApplication.instance() or QGuiApplication(sys.argv[:1])
    QLocale.setDefault(QLocale("en_US"))  # the invented farm's country, wherever this runs
    made = dict(documents())
    with tempfile.TemporaryDirectory() as folder:
        for name, document in PRINTS.items():
            drawn = Path(folder) / f"{name}.png"
            page_image(made[document].pages[0], 2 * DPI).save(str(drawn))
            picture = Image.open(drawn).convert("RGB")
            size = (WIDE_PX, round(WIDE_PX * picture.height / picture.width))
            _save(picture.resize(size, Image.Resampling.LANCZOS), PICTURES / f"{name}.png")
    del app


def _save(picture: Image.Image, file: Path) -> None:
    """Pictures have few colours: a palette keeps them a third of their size."""
    picture.quantize(128).save(file, optimize=True)


if __name__ == "__main__":
    main()
