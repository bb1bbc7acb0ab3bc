"""How long the program takes to a usable first page beside a bare window, and what it holds in memory.

`python tests/bench/bench_start.py` starts fresh interpreters in turn, offscreen: a bare PySide6 window with one
pyqtgraph picture, and the program on the sample season at its first page and with every page opened. It prints
the medians and their ratios. Processor time is the steadier figure on a busy computer. Linux only.
"""

from __future__ import annotations

import os
import subprocess
import sys
import tempfile
from pathlib import Path
from statistics import median
from time import perf_counter

ROOT = Path(__file__).parents[2]
ROUNDS = 15
BARE = """
import sys
import pyqtgraph as pg
from PySide6.QtWidgets import QApplication, QMainWindow
app = QApplication(sys.argv[:1])
window = QMainWindow()
window.setCentralWidget(pg.PlotWidget())
window.resize(1280, 800)
window.show()
app.processEvents()
"""
OURS = """
import sys
from pathlib import Path
from calibrator.__main__ import load_desk
desk = load_desk()
desk.busy.PATIENCE_S = 600
app = desk.make_application(sys.argv[:1])
opener = desk.Opener(app, desk.Ask(app), sys.argv[1], desk.Settings(Path(sys.argv[1]).with_name("settings.json")))
opener.open()
app.processEvents()
desk.settle()
"""
EVERY_PAGE = """
from calibrator.desk.window import PAGES
for key in PAGES:
    opener.window.show_page(key)
    app.processEvents()
"""
# What is timed is over when the page is painted; taking everything apart again is not part of the start.
END = """
import os
held = int(open("/proc/self/statm").read().split()[1]) * os.sysconf("SC_PAGE_SIZE") / 1e6
print(held, flush=True)
os._exit(0)
"""


def run(program: str, store: str) -> tuple[float, float, float]:
    """Seconds by the clock, seconds of the processor, and MB held at the end."""
    start = perf_counter()
    with subprocess.Popen([sys.executable, "-c", program + END, store], cwd=ROOT, stdout=subprocess.PIPE) as process:
        assert process.stdout is not None
        held = float(process.stdout.read())
        took = perf_counter() - start
        _, status, used = os.wait4(process.pid, 0)
        process.returncode = os.waitstatus_to_exitcode(status)
    assert process.returncode == 0
    return took, used.ru_utime + used.ru_stime, held


def main() -> None:
    os.environ["QT_QPA_PLATFORM"] = "offscreen"
    os.environ["PYTHONPATH"] = str(ROOT)
    os.environ.pop("PYTHONDONTWRITEBYTECODE", None)  # an installed program is compiled ahead
    programs = {"bare window": BARE, "first page": OURS, "every page": OURS + EVERY_PAGE}
    measured: dict[str, list[tuple[float, float, float]]] = {name: [] for name in programs}
    with tempfile.TemporaryDirectory() as folder:
        os.environ["XDG_DATA_HOME"] = folder
        subprocess.run([sys.executable, "-c", _MAKE_STORE, folder], check=True, cwd=ROOT)
        for _ in range(ROUNDS):
            for name, program in programs.items():
                measured[name].append(run(program, f"{folder}/records.sqlite"))
    bare = [median(column) for column in zip(*measured["bare window"], strict=True)]
    for name, rows in measured.items():
        clock, processor, held = (median(column) for column in zip(*rows, strict=True))
        print(
            f"{name}: {clock * 1e3:.0f} ms ({clock / bare[0]:.2f} x), processor {processor * 1e3:.0f} ms "
            f"({processor / bare[1]:.2f} x), {held:.0f} MB ({held / bare[2]:.2f} x)"
        )


_MAKE_STORE = """
import sys
from pathlib import Path
from calibrator.records import demo_records
records = demo_records(sys.argv[1])
records.close()
made = Path(records.url.removeprefix("sqlite:///"))
made.rename(made.with_name("records.sqlite"))
"""

if __name__ == "__main__":
    main()
