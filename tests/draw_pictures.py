"""Draws the pictures of the README and of the manual anew: `python -m tests.draw_pictures`."""

from __future__ import annotations

import subprocess
import sys
import tempfile
from pathlib import Path

from PIL import Image

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


def main() -> None:
    for language, folder in (("en", PICTURES), ("es", PICTURES / "es")):
        folder.mkdir(exist_ok=True)
        with tempfile.TemporaryDirectory() as drawn:
            command = [sys.executable, "-m", "tests.draw_screens", drawn, "--light", "--farm", "--language", language]
            subprocess.run(command, check=True, stdout=subprocess.DEVNULL)
            for name, screen in SCREENS.items():
                picture = Image.open(Path(drawn) / f"{screen}-farm-light.png").convert("RGB")
                picture = picture.resize(SIZE, Image.Resampling.LANCZOS)
                # Screens have few colours: a palette keeps the pictures a third of their size.
                picture.quantize(128).save(folder / f"{name}.png", optimize=True)


if __name__ == "__main__":
    main()
