"""A desk on an empty or a small store, with answers in place of dialogs."""

from __future__ import annotations

import shutil
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from answers import Answers, at_noon
from herd import delivered
from PySide6.QtCore import QCoreApplication, QEvent, QLocale
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from calibrator.desk import app, busy, watch
from calibrator.desk.context import Desk
from calibrator.desk.forms import fields
from calibrator.desk.theme import Theme
from calibrator.desk.tongues import Tongue
from calibrator.desk.window import Window
from calibrator.records import Records, demo_records


@pytest.fixture(scope="session", autouse=True)
def english(qapp: QApplication) -> None:
    """As the program starts where the system speaks English: its plurals are in place."""
    Tongue(qapp).speak("en")


@pytest.fixture(autouse=True)
def american() -> None:
    """Whatever country the computer is in that tests, and whatever a test before spoke."""
    QLocale.setDefault(QLocale("en_US"))


@pytest.fixture(autouse=True)
def of_no_country(monkeypatch: pytest.MonkeyPatch) -> None:
    """Days in figures are asked about, whatever country the computer is in that tests."""
    monkeypatch.setattr(fields, "figures_month_first", lambda: None)


@pytest.fixture(scope="session", autouse=True)
def patient() -> None:
    """Work beside the window is waited for, and none is done unasked: a slow computer tests the same as a quick one."""
    busy.PATIENCE_S = 600
    watch.PATIENCE_S = 600
    app.WARMS_UP = False


@pytest.fixture(autouse=True)
def nothing_left(qapp: QApplication) -> Iterator[None]:
    """Windows of one test are gone before the next: no event loop runs here that would delete them, and each change
    of the look would dress thousands of widgets that nobody sees."""
    yield
    QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)


@pytest.fixture
def answers() -> Answers:
    return Answers()


@pytest.fixture(scope="session")
def new_store(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Records made once, to be copied: making the tables anew for each test would take most of its time."""
    path = tmp_path_factory.mktemp("store") / "new.sqlite"
    Records.open(str(path)).close()
    return path


@pytest.fixture(scope="session")
def season_in(tmp_path_factory: pytest.TempPathFactory) -> Callable[[Path], Records]:
    """Opens the invented season in a folder: brought in once, and copied."""
    made = tmp_path_factory.mktemp("season")
    demo_records(made).close()

    def copied(folder: Path) -> Records:
        return Records.open(str(shutil.copy(made / "demo.sqlite", folder)))

    return copied


@pytest.fixture
def records(tmp_path: Path, new_store: Path) -> Iterator[Records]:
    path = tmp_path / "records.sqlite"
    shutil.copy(new_store, path)
    opened = Records.open(str(path))
    yield opened
    opened.close()


@pytest.fixture
def empty_desk(qapp: QApplication, records: Records, answers: Answers) -> Desk:
    if qapp.property("tokens") is None:
        Theme(qapp)
    return Desk(records, answers, clock=at_noon)


@pytest.fixture
def desk(qapp: QApplication, records: Records, answers: Answers) -> Desk:
    """A farm with a scale, a scoop and one lot that was delivered and not yet weighed in."""
    if qapp.property("tokens") is None:
        Theme(qapp)
    delivered(records)
    return Desk(records, answers, clock=at_noon)


@pytest.fixture
def window(qtbot: QtBot, desk: Desk) -> Iterator[Window]:
    """The program's window on that farm."""
    shown = Window(desk)
    qtbot.addWidget(shown)
    with qtbot.waitExposed(shown):
        shown.show()
    yield shown
    shown._closing = True  # whatever a test left typed
    shown.close()
