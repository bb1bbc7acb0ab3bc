"""The batch table beside the same table in a spreadsheet: `python tests/bench/bench_spreadsheet.py`.

The spreadsheet has a row a count of calves: powder, water, batches and the weight of a batch by formulas, and for
each of the six kinds of fill the nearest whole number of scoopfuls and its error, the least of which is taken. That
is less than the program does, which also tries every split between two kinds. A workbook of one row is recalculated
too, and its time taken off, so that the start of the spreadsheet program does not count.

Needs openpyxl and a headless LibreOffice (`soffice` on the path); says so and ends where either is missing.
"""

from __future__ import annotations

import shutil
import subprocess
import sys
import tempfile
from pathlib import Path
from time import perf_counter

sys.path.insert(0, str(Path(__file__).resolve().parent))

from bench_scoops import CART, COUNTS, OUNCE_G, QUART_ML, WAYS, quick, seconds

TOLERANCE = 0.02
REPEATS = 3


def workbook(path: Path, rows: int) -> None:
    """The table with formulas and no values: opening it computes every cell."""
    from openpyxl import Workbook  # type: ignore[import-untyped]

    book = Workbook()
    sheet = book.active
    # Powder and water of a calf, usable volume, volume of a gram of powder; then the six scoopfuls.
    sheet.append([10 * OUNCE_G, 2 * QUART_ML, CART.rim_volume_ml * CART.usable_share, 0.7, *(w.mass_g for w in WAYS)])
    for calves in range(1, rows + 1):
        at = calves + 1
        counts = [f"=MAX(1,ROUND(F{at}/{column}$1,0))" for column in "EFGHIJ"]
        errors = [f"=ABS({count}{at}*{column}$1-F{at})/F{at}" for count, column in zip("GHIJKL", "EFGHIJ", strict=True)]
        row = [calves, f"=A{at}*$A$1", f"=A{at}*$B$1", f"=C{at}+B{at}*$D$1", f"=MAX(1,CEILING(D{at}/$C$1,1))"]
        best = [f"=MIN(M{at}:R{at})", f"=INDEX(G{at}:L{at},MATCH(S{at},M{at}:R{at},0))"]
        sheet.append([*row, f"=B{at}/E{at}", *counts, *errors, *best])
    book.save(path)


def recalculated(soffice: str, path: Path) -> float:
    """Seconds that the spreadsheet program takes to open, recalculate and write it as text."""
    start = perf_counter()
    command = [soffice, f"-env:UserInstallation=file://{path.parent}/profile", "--headless", "--convert-to", "csv"]
    subprocess.run([*command, "--outdir", str(path.parent), str(path)], check=True, capture_output=True, timeout=300)
    return perf_counter() - start


def main() -> None:
    soffice = shutil.which("soffice")
    try:
        import openpyxl  # noqa: F401
    except ImportError:
        soffice = None
    if soffice is None:
        print("No openpyxl or no soffice here: nothing to compare with. See bench_scoops.py for plain loops.")
        return
    with tempfile.TemporaryDirectory() as folder:
        one, whole = Path(folder) / "one.xlsx", Path(folder) / "whole.xlsx"
        workbook(one, 1)
        workbook(whole, len(COUNTS))
        recalculated(soffice, one)  # makes its profile
        start = min(recalculated(soffice, one) for _ in range(REPEATS))
        full = min(recalculated(soffice, whole) for _ in range(REPEATS))
        last = whole.with_suffix(".csv").read_text().splitlines()[-1].split(",")
        assert int(last[0]) == len(COUNTS)
        assert abs(float(last[1]) / (len(COUNTS) * 10 * OUNCE_G) - 1) < 1e-3
    fast = seconds(lambda: quick(TOLERANCE), 15)
    print(f"{len(COUNTS)} counts x {len(WAYS)} kinds of fill: {fast * 1e3:.2f} ms")
    print(f"spreadsheet, opened and recalculated: {full * 1e3:.0f} ms = {full / fast:.0f} x")
    print(f"without its start ({start * 1e3:.0f} ms): {(full - start) * 1e3:.0f} ms = {(full - start) / fast:.0f} x")


if __name__ == "__main__":
    main()
