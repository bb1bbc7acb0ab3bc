"""Draws every page to PNG: `python -m tests.draw_screens FOLDER [--light] [--farm] [--size 1280x800] [--scale 1]`.

Without options each page is drawn light and dark, in farm units and metric. The pictures show the sample
season, so that every page has something to show.
"""

from __future__ import annotations

import argparse
import os
import sys
import tempfile
from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

from calibrator.desk.app import make_application
from calibrator.desk.ask import Ask
from calibrator.desk.context import Desk
from calibrator.desk.guide import Guide
from calibrator.desk.pages.weigh_in import WeighInPage
from calibrator.desk.theme import the_theme
from calibrator.desk.tongues import Tongue
from calibrator.desk.window import PAGES, Window
from calibrator.model import FillWay, Lot, Scale, Scoop, Step, UnitSystem, WeighIn, new_id
from calibrator.records import demo_records


def main() -> None:
    options = _options()
    os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
    os.environ["QT_SCALE_FACTOR"] = str(options.scale)
    options.folder.mkdir(parents=True, exist_ok=True)
    with tempfile.TemporaryDirectory() as folder:
        _draw_all(options, folder)


def _draw_all(options: argparse.Namespace, folder: str) -> None:
    app = make_application(sys.argv[:1])
    tongue = Tongue(app)
    tongue.speak(options.language)
    records = demo_records(folder)
    desk = Desk(records, Ask(app))
    assert desk.farm is not None
    _weigh_a_new_lot(desk)
    window = Window(desk)
    width, height = (int(part) for part in options.size.split("x"))
    window.resize(width, height)
    window.show()
    for system in (UnitSystem.FARM,) if options.farm else tuple(UnitSystem):
        records.keep(replace(desk.farm, units=system))
        desk.changed.emit()
        for dark in (False,) if options.light else (False, True):
            the_theme().force(dark)
            for name in _walk(window):
                for _ in range(8):
                    app.processEvents()
                picture = options.folder / f"{name}-{system}-{'dark' if dark else 'light'}.png"
                window.grab().save(str(picture))
                print(picture)
    window.close()
    records.close()


def _walk(window: Window) -> Iterator[str]:
    """Bring up each page, and each step of a weigh-in, and give it a name."""
    for key in PAGES:
        if key != "weigh_in":
            window.show_page(key)
            yield key
            continue
        page = window.page(key)
        assert isinstance(page, WeighInPage)
        page.close_guide()
        window.show_page(key)
        yield "weigh_in-0-lots"
        window.show_page(key, window.desk.records.every(Lot)[-1].id)
        for number, step in enumerate(Step, start=1):
            page.open_step(step)
            yield f"weigh_in-{number}-{step}"


def _weigh_a_new_lot(desk: Desk) -> None:
    """A lot that came today, weighed in up to its sign-off, so that every step has something to show."""
    farm = desk.farm
    assert farm is not None
    records = desk.records
    before = records.every(Lot, farm.id)[-1]
    lot = records.keep(
        replace(before, id=new_id(), lot_number="26-1102C", arrived_on=desk.clock().date(), revision="", note="")
    )
    weigh_in = WeighIn(id=new_id(), farm_id=farm.id, lot_id=lot.id, started_at=desk.clock(), by="MK")
    guide = Guide(records, records.keep(weigh_in), desk.clock)
    scoop = next(scoop for scoop in records.every(Scoop, farm.id) if scoop.retired_on is None)
    old = records.marks(scoop_id=scoop.id)
    guide.set(
        scoop_id=scoop.id,
        scale_id=records.every(Scale, farm.id)[0].id,
        target_mass_g=283.495,
        target_typed="10 oz",
        scale_zeroed=True,
        old_line_mm=old[-1].down_wall_mm if old else None,
    )
    level = scoop.volume_ml * 0.5
    for share in (0.99, 1.0, 1.015, 1.005, 0.985, 0.995, 1.01, 1.0):
        guide.add_fill(FillWay.LEVEL, guide.next_bag(FillWay.LEVEL), round(level * share), "")
    assert guide.findings.line is not None
    guide.set(drawn_line_mm=guide.findings.line.down_wall_mm)
    for share in (1.0, 1.01, 0.99, 1.005, 0.995, 1.0, 1.005, 0.995):
        guide.add_fill(FillWay.TO_MARK, guide.next_bag(FillWay.TO_MARK), round(283.5 * share), "")


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
