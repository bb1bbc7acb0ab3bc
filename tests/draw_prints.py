"""Draws every print as PDF and PNG into a folder, for looking: `python -m tests.draw_prints FOLDER`."""

from __future__ import annotations

import argparse
import os
import sys
from pathlib import Path

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
sys.path.insert(0, str(Path(__file__).resolve().parent.parent))

from PySide6.QtCore import QLocale
from PySide6.QtGui import QGuiApplication

from calibrator.prints.output import write_pdf
from calibrator.prints.page import Document
from calibrator.prints.season_report import season_report
from tests.prints.rendered import page_image
from tests.prints.samples import documents
from tests.prints.test_season_report import report


def draw(document: Document, name: str, folder: Path, dpi: float) -> None:
    """One print as a PDF and its pages as pictures."""
    write_pdf(document, folder / f"{name}.pdf")
    for number, page in enumerate(document.pages, start=1):
        page_image(page, dpi).save(str(folder / f"{name}-{number}.png"))
    print(f"{name}: {len(document.pages)} page(s)")


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("folder", type=Path)
    folder: Path = parser.parse_args().folder
    folder.mkdir(parents=True, exist_ok=True)
    app = QGuiApplication.instance() or QGuiApplication(sys.argv[:1])
    QLocale.setDefault(QLocale("en_US"))  # the invented farm's country, wherever this runs
    for name, document in (*documents(), ("season-report", season_report(report()))):
        draw(document, name, folder, 80)
    del app


if __name__ == "__main__":
    main()
