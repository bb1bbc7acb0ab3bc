"""How long the window keeps a person waiting: opening each page, coming back to it, and what takes longest.

`python tests/bench/bench_waits.py` goes through the pages of the sample season, offscreen, and prints for each the
milliseconds of the processor until it is painted: first opened once all are made ready in quiet moments (before that
with `--cold`), and the median of coming back. Then a digit typed on the tables' page, and the work that may take
long: papers, an export, a copy, a check of the store.
"""

from __future__ import annotations

import os
import sys
import tempfile
from collections.abc import Callable
from pathlib import Path
from statistics import median
from time import process_time

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
ROUNDS = 7
DIGITS = 400
FRAME_MS, BLOCK_MS = 50, 100


def ms(work: Callable[[], object]) -> float:
    start = process_time()
    work()
    return (process_time() - start) * 1e3


def main(cold: bool) -> None:
    from calibrator.__main__ import load_desk

    with tempfile.TemporaryDirectory() as folder:
        os.environ["XDG_DATA_HOME"] = folder
        desk = load_desk()
        from calibrator.desk.window import PAGES
        from calibrator.records import demo_records

        app = desk.make_application(["bench"])
        opener = desk.Opener(app, desk.Ask(app), "", desk.Settings())
        opener.show(demo_records(folder))
        app.processEvents()
        desk.settle()

        def show(key: str) -> None:
            opener.window.show_page(key)
            app.processEvents()

        if not cold:
            while opener._warming.at_work:
                app.processEvents()
        keys = [key for key in PAGES if key != "welcome"]
        first = {key: ms(lambda key=key: show(key)) for key in keys}
        again: dict[str, list[float]] = {key: [] for key in keys}
        for _ in range(ROUNDS):
            for key in keys:
                again[key].append(ms(lambda key=key: show(key)))
        for key in keys:
            back = median(again[key])
            print(f"{key}: first {first[key]:.0f} ms, again {back:.0f} ms{' (!)' if back > FRAME_MS else ''}")
        show("tables")
        digits = _typed_digits(opener.window.page("tables"), app)
        print(
            f"a digit typed: {median(digits):.1f} ms, nine of ten within {sorted(digits)[9 * len(digits) // 10]:.1f} ms"
        )
        for name, work in _long(opener.desk.records, Path(folder)).items():
            took = ms(work)
            print(f"{name}: {took:.0f} ms{' (!)' if took > BLOCK_MS else ''}")
        opener.window.close()
        opener.close()


def _typed_digits(page: object, app: object) -> list[float]:
    """Counts of one to three digits, each digit until the page is painted; the first hundred are not counted."""
    from PySide6.QtTest import QTest
    from PySide6.QtWidgets import QApplication

    from calibrator.desk.pages.tables import TablesPage

    assert isinstance(page, TablesPage)
    assert isinstance(app, QApplication)
    field, taken = page.view.today.rows[0].calves, []
    for number in range(DIGITS):
        if number % 3 == 0:
            field.selectAll()

        def type_one(digit: str = str(1 + 7 * number % 9)) -> None:
            QTest.keyClick(field, digit)
            app.processEvents()

        taken.append(ms(type_one))
    return taken[100:]


def _long(records: object, folder: Path) -> dict[str, Callable[[], object]]:
    from calibrator.records import Records, export_file

    assert isinstance(records, Records)

    def reopen() -> None:
        Records.open(str(folder / "demo.sqlite"), read_only=True).close()

    return {
        "export of all records": lambda: export_file(records, folder / "all.json"),
        "copy of the store": records.backup_if_due,
        "opening and checking the store": reopen,
    }


if __name__ == "__main__":
    main(cold="--cold" in sys.argv)
