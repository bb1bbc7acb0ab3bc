"""How long the window keeps a person waiting: opening each page, coming back to it, and what takes longest.

`python tests/bench/bench_waits.py` goes through the pages of the sample season, offscreen, and prints for each the
milliseconds of the processor until it is painted: first opened once all are made ready in quiet moments, with the
longest that one of the steps of that held the window up, and the median of coming back. With `--cold` each is opened
before it is ready: what it is built of is loaded beside the window, which is held up by what comes after. Then a digit
typed on the tables' page, and the work that may take long: an export, a copy, a check of the store.
"""

from __future__ import annotations

import os
import sys
import tempfile
from collections.abc import Callable
from pathlib import Path
from statistics import median
from time import process_time, thread_time

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
ROUNDS = 7
DIGITS = 400
MOMENTS = 8
FRAME_MS, BLOCK_MS = 50, 100


def ms(work: Callable[[], object], clock: Callable[[], float] = process_time) -> float:
    start = clock()
    work()
    return (clock() - start) * 1e3


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

        def held_up(until: Callable[[], bool]) -> float:
            longest = 0.0
            while not until():
                longest = max(longest, ms(app.processEvents, thread_time))
            return longest

        keys = [key for key in PAGES if key != "welcome"]
        first: dict[str, float] = {}
        if cold:
            opener._warming.stop()
            desk.busy.PATIENCE_S = 0
            for key in keys:
                opener.window.show_page(key)
                until_there = held_up(lambda key=key: opener.window.current_page.key == key)
                after = iter(range(MOMENTS))  # some of a page may be made once its frame is there
                first[key] = max(until_there, held_up(lambda after=after: next(after, None) is None))
        else:
            step = held_up(lambda: not opener._warming.at_work)
            print(f"longest step of making ready: {step:.0f} ms{' (!)' if step > BLOCK_MS else ''}")
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
    from calibrator.records import Records
    from calibrator.records.exporting import export_file

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
