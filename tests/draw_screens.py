"""Draws every page to PNG: `python -m tests.draw_screens FOLDER [--light] [--farm] [--size 1280x800] [--scale 1]`.

Without options each page is drawn light and dark, in farm units and metric. The pictures show the sample
season, so that every page has something to show.
"""

from __future__ import annotations

import argparse
import os
import sys
import tempfile
from dataclasses import replace
from pathlib import Path

from PySide6.QtWidgets import QDialog

from calibrator.desk import busy
from calibrator.desk.app import make_application
from calibrator.desk.ask import Ask
from calibrator.desk.context import Desk, local_now
from calibrator.desk.sample import season_clock
from calibrator.desk.theme import the_theme
from calibrator.desk.tongues import Tongue
from calibrator.desk.window import Window
from calibrator.model import UnitSystem
from calibrator.records import demo_records
from tests.farm_in_spanish import spanish_records
from tests.tour import tour, weigh_a_new_lot


def main() -> None:
    options = _options()
    os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
    os.environ["QT_SCALE_FACTOR"] = str(options.scale)
    options.folder.mkdir(parents=True, exist_ok=True)
    with tempfile.TemporaryDirectory() as folder:
        _draw_all(options, folder)


def _draw_all(options: argparse.Namespace, folder: str) -> None:
    busy.PATIENCE_S = 600  # wait for each page
    app = make_application(sys.argv[:1])
    tongue = Tongue(app)
    tongue.speak(options.language)
    records = spanish_records(folder) if options.language == "es" else demo_records(folder)
    desk = Desk(records, Ask(app), clock=season_clock(records, local_now))
    assert desk.farm is not None
    weigh_a_new_lot(desk)
    window = Window(desk)
    width, height = (int(part) for part in options.size.split("x"))
    window.resize(width, height)
    window.show()
    for system in (UnitSystem.FARM,) if options.farm else tuple(UnitSystem):
        records.keep(replace(desk.farm, units=system))
        desk.changed.emit()
        for dark in (False,) if options.light else (False, True):
            the_theme().force(dark)
            for name in tour(window):
                for _ in range(8):
                    app.processEvents()
                picture = options.folder / f"{name}-{system}-{'dark' if dark else 'light'}.png"
                over = [window, *(dialog for dialog in window.findChildren(QDialog) if dialog.isVisible())][-1]
                over.grab().save(str(picture))
                print(picture)
    window.close()
    records.close()


def _options() -> argparse.Namespace:
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("folder", type=Path)
    parser.add_argument("--light", action="store_true", help="the light theme only")
    parser.add_argument("--farm", action="store_true", help="farm units only")
    parser.add_argument("--size", default="1280x800", help="window size in pixels")
    parser.add_argument("--language", default="en", help="the language of the screens")
    parser.add_argument("--scale", type=float, default=1.0, help="pixels for each of those")
    return parser.parse_args()


if __name__ == "__main__":
    main()
