"""The season's page with 20,000 lots and 400,000 fills, beside pyqtgraph drawing the bare points.

`python tests/bench/bench_season.py` writes such records to a throw-away folder (a minute) and prints times and
ratios of one run: from opening the page to its first painted picture, a frame while panning through all the
lots and through a year of them, memory grown, a search as one types. Times are of the processor, so that
other work on the machine counts little.
"""

from __future__ import annotations

import os
import sys
import tempfile
from dataclasses import fields
from datetime import timedelta
from pathlib import Path
from random import Random
from time import process_time
from typing import Any

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

import numpy as np
import pyqtgraph as pg
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication
from sqlalchemy import insert

from calibrator.desk.app import make_application, settle
from calibrator.desk.ask import Ask
from calibrator.desk.context import Desk
from calibrator.desk.pages.season import SeasonPage
from calibrator.model import Cylinder, Farm, Lot, Mark, Scale, Scoop, SignOff, WeighIn, new_id
from calibrator.records import Records
from calibrator.records.plain import kind_word
from calibrator.records.tables import NOUNS, changes, fills, marks, sign_offs, things
from tests.season_rows import FIRST

LOTS, FILLS_A_LOT = 20_000, 20
SIZE = 1000, 720
FRAME_MS = 1000 / 60


def write(records: Records, farm: Farm, scoop: Scoop, scale: Scale) -> None:
    """Lots a few hours apart, straight into the tables: the real way in would take hours."""
    chance, change = Random(1), records.version()
    rows: dict[Any, list[dict[str, Any]]] = {
        t: [] for t in (changes, things, NOUNS[Lot], NOUNS[WeighIn], sign_offs, fills, marks)
    }
    for n in range(LOTS):
        at = FIRST + timedelta(hours=8 * n)
        density = 0.55 * (1 + chance.gauss(0, 0.015))
        lot = Lot(id=f"l{n}", farm_id=farm.id, lot_number=f"{n:05d}", product="20-20", arrived_on=at.date())
        weigh_in = WeighIn(
            id=f"w{n}", farm_id=farm.id, lot_id=lot.id, started_at=at, scoop_id=scoop.id, scale_id=scale.id,
            room_humidity_pct=chance.uniform(30, 80),
        )  # fmt: skip
        for noun in (lot, weigh_in):
            change += 1
            rows[changes].append({"number": change, "at": at, "by": "MK", "why": "", "what": "x"})
            rows[things].append({"id": noun.id, "kind": kind_word(type(noun)), "change": change})
            rows[NOUNS[type(noun)]].append(_row(noun) | {"revision": f"r{noun.id}", "replaces": None, "change": change})
        change += 1
        rows[changes].append({"number": change, "at": at, "by": "MK", "why": "", "what": "fill"})
        for at_fill in range(FILLS_A_LOT):
            rows[fills].append({
                "id": f"f{n}-{at_fill}", "change": change, "weigh_in_id": weigh_in.id, "way": "level",
                "bag": at_fill // 4 + 1, "mass_g": 666 * density * (1 + chance.gauss(0, 0.015)), "typed": "",
                "by": "MK", "at": at, "scoopfuls": 1, "line_mm": None,
            })  # fmt: skip
        rows[sign_offs].append(_row(_signed(n, at, density, lot, scoop, scale)) | {"change": change})
        rows[marks].append(_row(_mark(n, lot, scoop, density)) | {"change": change, "position": 0})
    with records.writing("season") as writing:
        for table, told in rows.items():
            writing.connection.execute(insert(table), told)


def _row(value: Any) -> dict[str, Any]:
    return {field.name: getattr(value, field.name) for field in fields(value) if field.name != "struck_reason"}


def _signed(n: int, at: Any, density: float, lot: Lot, scoop: Scoop, scale: Scale) -> SignOff:
    level = 666 * density
    return SignOff(
        id=f"s{n}", farm_id=lot.farm_id, weigh_in_id=f"w{n}", lot_id=lot.id, scoop_id=scoop.id, scale_id=scale.id,
        by="MK", at=at, bags=5, fills=FILLS_A_LOT, level_mean_g=level, level_u_g=0.005 * level,
        level_low_g=0.99 * level, level_high_g=1.01 * level, degrees_of_freedom=20.0, density_g_per_ml=density,
        density_u_g_per_ml=0.006 * density, density_low_g_per_ml=0.988 * density,
        density_high_g_per_ml=1.012 * density, bag_sd_share=0.008, fill_sd_share=0.015, settling_factor=1.03,
        settling_u=0.004, verdict="on_target", old_line_verdict="move", scoop_revision=scoop.revision,
        scale_revision=scale.revision, lot_revision=f"rl{n}", program_version="bench",
    )  # fmt: skip


def _mark(n: int, lot: Lot, scoop: Scoop, density: float) -> Mark:
    return Mark(
        id=f"m{n}", farm_id=lot.farm_id, sign_off_id=f"s{n}", lot_id=lot.id, scoop_id=scoop.id,
        target_mass_g=283.5, full_scoops=0, height_mm=70.0, down_wall_mm=22.0, mass_g=283.5, mass_u_g=1.0,
    )  # fmt: skip


def bare(app: QApplication) -> float:
    """Seconds until pyqtgraph has painted the same points and bars on an empty widget."""
    rng = np.random.default_rng(1)
    x, y = np.arange(LOTS) / 3.0, 0.55 + rng.normal(0, 0.008, LOTS)
    start = process_time()
    plot = pg.PlotWidget()
    plot.resize(*SIZE)
    plot.addItem(pg.ErrorBarItem(x=x, y=y, top=np.full(LOTS, 0.006), bottom=np.full(LOTS, 0.006), beam=0, pen="k"))
    plot.addItem(pg.ScatterPlotItem(x=x, y=y, size=9, pen=None, brush="b"))
    plot.show()
    app.processEvents()
    plot.grab()
    seconds = process_time() - start
    plot.close()
    return seconds


def frame_ms(app: QApplication, page: SeasonPage, days: float) -> float:
    """The 95th of a hundred frames while the period moves, ms."""
    plot, times = page.happened.plot, []
    first, last = plot.whole_period()
    for step in range(60):
        left = first + (last - first - days) * step / 60
        start = process_time()
        plot.show_period(left, left + days)
        app.processEvents()
        times.append(1000 * (process_time() - start))
    return float(np.percentile(times, 95))


def memory_mb() -> float:
    pages = int(Path("/proc/self/statm").read_text().split()[1])
    return pages * os.sysconf("SC_PAGE_SIZE") / 1e6


def main() -> None:
    app = make_application(sys.argv[:1])
    with tempfile.TemporaryDirectory() as folder, Records.open(str(Path(folder) / "season.sqlite")) as records:
        farm = records.keep(Farm(id=new_id(), name="bench"))
        scoop = records.keep(
            Scoop(
                id=new_id(), farm_id=farm.id, name="cup", shape=Cylinder(diameter_mm=96, height_mm=92),
                volume_ml=666.0, volume_u_ml=3.0,
            )
        )  # fmt: skip
        scale = records.keep(
            Scale(id=new_id(), farm_id=farm.id, name="scale", resolution_g=1.0, resolution_typed="1 g",
                  capacity_g=5000, capacity_typed="5 kg")
        )  # fmt: skip
        write(records, farm, scoop, scale)
        _measure(app, Desk(records, Ask(app)))


def _measure(app: QApplication, desk: Desk) -> None:
    from scipy import special  # libraries that any page brings are not the season's

    assert special
    settle()  # as the program does once its first page is up, long before the season is opened
    bare(app)
    plain = min(bare(app) for _ in range(3))
    before = memory_mb()
    start = process_time()
    page = SeasonPage(desk)
    page.resize(*SIZE)
    page.reload()
    page.show()
    app.processEvents()
    page.grab()
    opened = process_time() - start
    drawn = page.happened.plot.shown
    assert drawn is not None
    assert len(drawn.days) == LOTS
    print(f"{LOTS} lots, {LOTS * FILLS_A_LOT} fills, {os.cpu_count()} cores")
    print(f"bare points and bars {1000 * plain:.0f} ms; page open to painted {1000 * opened:.0f} ms = "
          f"{opened / plain:.2f} x; memory + {memory_mb() - before:.0f} MB")  # fmt: skip
    start = process_time()
    while page.looking.at_work:
        QTest.qWait(10)
    print(f"what happened in them told {process_time() - start:.1f} s later, all fills read; memory + "
          f"{memory_mb() - before:.0f} MB")  # fmt: skip
    whole = page.happened.plot.whole_period()
    for name, days in (("all lots", 0.9 * (whole[1] - whole[0])), ("a year of them", 365.0)):
        ms = frame_ms(app, page, days)
        print(f"panning over {name}: {ms:.1f} ms a frame, {ms / FRAME_MS:.2f} of a frame at 60 a second")
    _measure_search(app, page)


def _measure_search(app: QApplication, page: SeasonPage) -> None:
    lots, times = page.lots, []
    while page.looking.at_work:
        QTest.qWait(10)
    for text in ("1", "12", "123", "1234", "123", "12", "1", "x", ""):
        start = process_time()
        lots.search.setText(text)
        app.processEvents()
        times.append(1000 * (process_time() - start))
    print(f"search as typed: {max(times):.0f} ms at most")


if __name__ == "__main__":
    main()
