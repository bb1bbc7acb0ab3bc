"""Nothing that takes typing or clicks moves under the hand: every field of every screen is typed into."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from pathlib import Path
from typing import cast

import pytest
from answers import Answers
from PySide6.QtCore import QCoreApplication, QEvent
from PySide6.QtWidgets import QApplication, QDialog, QLineEdit, QVBoxLayout, QWidget
from pytestqt.qtbot import QtBot
from speaking import speaking
from still import TYPED, moves

from calibrator.desk.context import Desk
from calibrator.desk.forms.fields import TextField
from calibrator.desk.guide import Missing
from calibrator.desk.pages.weigh_in import WeighInPage
from calibrator.desk.parts import label
from calibrator.desk.theme import Theme
from calibrator.desk.weigh_in.words import missing_words
from calibrator.desk.window import Window
from calibrator.model import Lot
from calibrator.records import Records
from tests.tour import tour, weigh_a_new_lot

pytestmark = pytest.mark.qt_log_ignore("does not support propagateSizeHints")


@pytest.fixture(scope="module")
def records(tmp_path_factory: pytest.TempPathFactory, season_in: Callable[[Path], Records]) -> Iterator[Records]:
    opened = season_in(tmp_path_factory.mktemp("still"))
    yield opened
    opened.close()


@pytest.fixture(scope="module")
def desk(qapp: QApplication, records: Records) -> Desk:
    if qapp.property("tokens") is None:
        Theme(qapp)
    made = Desk(records, Answers())
    weigh_a_new_lot(made)
    return made


@pytest.mark.parametrize("texts", [TYPED[1:2], pytest.param(TYPED, marks=pytest.mark.slow)], ids=["wrong", "all"])
def test_no_field_or_button_moves_while_somebody_types(desk: Desk, texts: tuple[str, ...]) -> None:
    """In Spanish, whose sentences are the longer ones; in the usual run by what never is right, and each field on the
    first screen that shows it."""
    with speaking("es"):
        assert _moved(desk, texts, None if texts == TYPED else set()) == {}


def _moved(desk: Desk, texts: tuple[str, ...], tried: set[QLineEdit] | None) -> dict[str, str]:
    window = Window(desk)
    window.resize(1024, 700)
    window.show()
    found: dict[str, str] = {}
    for name in tour(window):
        if name == "server-found":  # another address makes what was found there void, and its button with it
            continue
        for _ in range(4):
            QCoreApplication.processEvents()
        over = next((dialog for dialog in window.findChildren(QDialog) if dialog.isVisible()), window)
        for told in moves(over, texts, tried):
            found[told] = name
    window.replace_by_another()
    QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)
    return found


@pytest.mark.parametrize("language", ["en", "es"])
def test_all_that_a_step_still_needs_is_read_whole_beside_its_buttons(desk: Desk, language: str) -> None:
    with speaking(language):
        window = Window(desk)
        window.resize(1024, 700)
        window.show_page("weigh_in", desk.records.every(Lot)[-1].id)
        window.show()  # now: a window in view loads its pages beside it, and how long that takes is not asked here
        page = cast(WeighInPage, window.page("weigh_in"))
        for _ in range(4):
            QCoreApplication.processEvents()
        before, told = page._foot.geometry(), missing_words(tuple(Missing))
        page._missing.setText(told)
        QCoreApplication.processEvents()
        assert page._missing.text() == told
        assert page._missing.heightForWidth(page._missing.width()) <= page._missing.height()
        assert page._foot.geometry() == before
        window.replace_by_another()
        QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)


def test_a_message_that_pushes_would_be_seen(qtbot: QtBot) -> None:
    """Or the test above could not fail."""
    page = QWidget()
    qtbot.addWidget(page)
    said, below, field = label(""), QLineEdit(), TextField("Name")
    said.hide()
    field.edited.connect(lambda: said.setVisible(bool(field.text())))
    beneath = QVBoxLayout(page)
    for widget in (field, said, below):
        beneath.addWidget(widget)
    beneath.addStretch(1)
    page.resize(300, 300)
    with qtbot.waitExposed(page):
        page.show()
    said.setText("A sentence")
    assert any("moves" in told for told in moves(page))
