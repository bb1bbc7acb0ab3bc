"""Names are text and nothing else: markup, direction marks, emoji, ten thousand characters, on every screen."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import fields, replace
from pathlib import Path
from typing import Any, cast

import pypdfium2
import pytest
from answers import Answers, at_noon
from PySide6.QtCore import QModelIndex, QPoint, Qt
from PySide6.QtGui import Qt as GuiQt
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractItemView,
    QApplication,
    QComboBox,
    QLabel,
    QLineEdit,
    QListWidget,
    QSpinBox,
    QTabBar,
    QTableView,
    QWidget,
)
from pytestqt.qtbot import QtBot
from screens import shown

from calibrator.desk.context import Desk
from calibrator.desk.pages.tables import TablesPage
from calibrator.desk.theme import Theme
from calibrator.desk.window import Window
from calibrator.model import Farm, Instrument, Lot, Plan, Scale, Scoop, Vessel
from calibrator.prints.output import write_pdf
from calibrator.records import Records
from tests.tour import tour, weigh_a_new_lot

TURNED = "\u202e"
MARKUP = f"<b>Tom</b> & <img src=x> {TURNED}drah\u2066 😀🐄 של"
NAMES = {"markup": MARKUP, "endless": "<u>" + "25-1103C" * 600 + "Z" + "\u0301" * 1_000 + " calf" * 1_000}

NAMED = ("name", "lot_number", "product", "note")


def rename_all(records: Records, name: str) -> None:
    for kind in (Farm, Lot, Scale, Scoop, Vessel, Plan, Instrument):
        for number, noun in enumerate(records.every(kind)):  # type: ignore[type-var]
            told: dict[str, Any] = {
                field.name: f"{name}{number}" for field in fields(noun) if field.name in NAMED
            }  # fmt: skip
            if isinstance(noun, Plan):
                told["groups"] = tuple(replace(group, name=name) for group in noun.groups)
            records.keep(replace(noun, **told), by=name, why=name)  # type: ignore[type-var]


@pytest.fixture(params=["markup", pytest.param("endless", marks=pytest.mark.slow)])
def window(
    request: pytest.FixtureRequest,
    qapp: QApplication,
    qtbot: QtBot,
    tmp_path: Path,
    season_in: Callable[[Path], Records],
) -> Iterator[Window]:
    if qapp.property("tokens") is None:
        Theme(qapp)
    with season_in(tmp_path) as records:
        desk = Desk(records, Answers(), clock=at_noon)
        weigh_a_new_lot(desk)
        rename_all(records, NAMES[request.param])
        made = Window(desk)
        qtbot.addWidget(made)
        made.resize(1024, 700)
        made.show()
        yield made
        made._closing = True
        made.close()


def tips(root: QWidget) -> Iterator[str]:
    for widget in shown(root):
        yield widget.toolTip()
        if isinstance(widget, QAbstractItemView) and (model := widget.model()) is not None:
            columns = model.columnCount(QModelIndex()) if isinstance(widget, QTableView) else 1
            for row in range(min(model.rowCount(QModelIndex()), 20)):
                for column in range(columns):
                    yield str(model.index(row, column).data(Qt.ItemDataRole.ToolTipRole) or "")


def said(root: QWidget) -> Iterator[str]:
    """What is drawn in words; what a screen reader says is turned by nothing."""
    for widget in shown(root):
        if isinstance(widget, QLabel | QAbstractButton):
            yield widget.text()
        elif isinstance(widget, QComboBox):
            yield from (widget.itemText(row) for row in range(widget.count()))
        elif isinstance(widget, QTabBar):
            yield from (widget.tabText(place) for place in range(widget.count()))
        elif isinstance(widget, QListWidget):
            yield from (widget.item(row).text() for row in range(widget.count()))


def pushed_off(window: Window) -> Iterator[str]:
    """Fields and buttons that a name has pushed beyond the side of their window or dialog."""
    for widget in shown(window):
        if isinstance(widget, QAbstractButton | QLineEdit | QComboBox | QSpinBox):
            left = widget.mapTo(widget.window(), QPoint(0, 0)).x()  # a dialog stands anywhere over the window
            if left + min(widget.width(), 40) > widget.window().width() + 1:
                yield f"{type(widget).__name__} “{widget.accessibleName()[:40]}” is pushed to {left} px"


def printed_words(page: TablesPage, path: Path) -> str:
    assert page.paper.document is not None, page.paper.trouble.text()
    write_pdf(page.paper.document, path)
    with pypdfium2.PdfDocument(path) as document:
        return "".join(sheet.get_textpage().get_text_range() for sheet in document)


def test_names_are_text_on_every_screen(window: Window, tmp_path: Path) -> None:
    wrong: set[str] = set()
    for name in tour(window):
        QApplication.processEvents()
        for widget in window.findChildren(QLabel):
            if widget.textFormat() != Qt.TextFormat.PlainText and GuiQt.mightBeRichText(widget.text()):
                wrong.add(f"{name}: markup is read in “{widget.text()[:60]}”")
        wrong |= {f"{name}: markup is read in the tip “{tip[:60]}”" for tip in tips(window) if _reads_markup(tip)}
        for text in said(window):
            if TURNED in text and len(text) > len(MARKUP) + 2:
                wrong.add(f"{name}: the words after the name are turned in “{text[:60]}”")
        wrong |= {f"{name}: {told}" for told in pushed_off(window)}
        if name.startswith("paper-"):
            printed = printed_words(cast(TablesPage, window.current_page), tmp_path / f"{name}.pdf")
            if not any(part in printed for part in ("<b>Tom", "<u>25-1103C", "calf calf")) or TURNED in printed:
                wrong.add(f"{name}: the paper says {printed[:60]}")
    assert not wrong, "\n".join(sorted(wrong))


def _reads_markup(tip: str) -> bool:
    return GuiQt.mightBeRichText(tip) and any(mark in tip for mark in ("<b>", "<u>", "<i>", "<img"))
