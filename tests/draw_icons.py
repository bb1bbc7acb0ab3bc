"""Draws the program's icon from resources/desktop/calibrator.svg in the sizes that desktops ask for.

`python -m tests.draw_icons` writes the PNGs beside it, and the one file each that the other systems' desktops take.
"""

from __future__ import annotations

import os
from pathlib import Path

from PIL import Image

from calibrator.places import resource

SIZES = (16, 24, 32, 48, 64, 128, 256, 512)
ICO_SIZES = (16, 24, 32, 48, 64, 128, 256)
STROKE, BOLDER = 9, {16: 14, 24: 12, 32: 10}
"""Of the drawing's 128: lines of one pixel and a bit would be grey where the icon is small."""


def draw(folder: Path) -> list[Path]:
    """Write every size and give the files. The sizes stand in the names."""
    from PySide6.QtCore import QByteArray, QSize, Qt
    from PySide6.QtGui import QImage, QPainter
    from PySide6.QtSvg import QSvgRenderer

    drawing = resource("desktop/calibrator.svg").read_text("utf-8")
    made = []
    for size in SIZES:
        bolder = drawing.replace(f'stroke-width="{STROKE}"', f'stroke-width="{BOLDER.get(size, STROKE)}"')
        renderer = QSvgRenderer(QByteArray(bolder.encode()))
        image = QImage(QSize(size, size), QImage.Format.Format_ARGB32)
        image.fill(Qt.GlobalColor.transparent)
        painter = QPainter(image)
        renderer.render(painter)
        painter.end()
        made.append(folder / f"calibrator_{size}.png")
        image.save(str(made[-1]))
    *smaller, largest = [Image.open(file) for file in made]
    largest.save(folder / "calibrator.ico", sizes=[(size, size) for size in ICO_SIZES], append_images=smaller)
    largest.save(folder / "calibrator.icns", append_images=smaller)
    return [*made, folder / "calibrator.ico", folder / "calibrator.icns"]


if __name__ == "__main__":
    os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
    from PySide6.QtGui import QGuiApplication

    application = QGuiApplication([])
    print(*draw(resource("desktop")), sep="\n")
