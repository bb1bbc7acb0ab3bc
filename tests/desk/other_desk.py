"""Another computer's desk, as a process of its own: it prints, and is told by a line when to print for a new lot.

python other_desk.py URL FOLDER COUNT < lines
"""

from __future__ import annotations

import sys
from pathlib import Path
from time import sleep

from answers import Answers, at_noon
from PySide6.QtPrintSupport import QPrinter  # noqa: F401 - the print support is loaded before the first print
from PySide6.QtWidgets import QApplication

from calibrator.desk import busy, watch
from calibrator.desk.app import make_application
from calibrator.desk.context import Desk
from calibrator.desk.pages.tables import TablesPage
from calibrator.desk.tongues import Tongue
from calibrator.desk.window import Window
from calibrator.model import Lot, Plan
from calibrator.records import Records


def main(url: str, folder: Path, count: int) -> int:
    watch.PATIENCE_S = busy.PATIENCE_S = 600  # a print is saved once it is made, however slow the machine
    app = make_application(["other desk"])
    Tongue(app).speak("en")
    answers = Answers()
    with Records.open(url) as records:
        desk = Desk(records, answers, clock=at_noon)
        desk.initials = "PR"
        window = Window(desk)
        window.show_page("tables")
        page = window.current_page
        assert isinstance(page, TablesPage)
        print("ready", flush=True)
        for number in range(count):
            page.paper.show_plan(records.every(Plan)[0].id)
            page.paper.save_to(folder / f"chart-{number}.pdf")
            _until_done(app, desk)
        print("printed", flush=True)
        sys.stdin.readline()
        window.watch.look()
        page.paper.show_lot(records.every(Lot)[-1].id)
        page.paper.save_to(folder / "label.pdf")
        _until_done(app, desk)
        window.replace_by_another()
    print(*answers.told, sep="\n", flush=True)
    return 0


def _until_done(app: QApplication, desk: Desk) -> None:
    # Not by waiting for more events: the last one may have ended the work, and no other comes.
    while desk.busy.at_work:
        app.processEvents()
        sleep(0.01)


if __name__ == "__main__":
    sys.exit(main(sys.argv[1], Path(sys.argv[2]), int(sys.argv[3])))
