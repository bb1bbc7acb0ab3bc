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


def draw(folder: Path) -> list[Path]:
    """Write every size and give the files. The sizes stand in the names."""
    from PySide6.QtCore import QSize, Qt
    from PySide6.QtGui import QImage, QPainter
    from PySide6.QtSvg import QSvgRenderer

    renderer = QSvgRenderer(str(resource("desktop/calibrator.svg")))
    made = []
    for size in SIZES:
        image = QImage(QSize(size, size), QImage.Format.Format_ARGB32)
        image.fill(Qt.GlobalColor.transparent)
        painter = QPainter(image)
        renderer.render(painter)
        painter.end()
        made.append(folder / f"calibrator_{size}.png")
        image.save(str(made[-1]))
    with Image.open(made[-1]) as largest:
        largest.save(folder / "calibrator.ico", sizes=[(size, size) for size in ICO_SIZES])
        largest.save(folder / "calibrator.icns")
    return [*made, folder / "calibrator.ico", folder / "calibrator.icns"]


if __name__ == "__main__":
    os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
    from PySide6.QtGui import QGuiApplication

    application = QGuiApplication([])
    print(*draw(resource("desktop")), sep="\n")
