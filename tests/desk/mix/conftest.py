"""A farm that checks its mixes, its desk and the page: what most tests of the page begin with."""

from __future__ import annotations

import shutil
from collections.abc import Iterator
from pathlib import Path

import pytest
from answers import Answers
from herd import Herd
from mix_hands import mix_desk, mix_herd, mix_page, own_line, refractometer, zeroed
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from calibrator.desk.context import Desk
from calibrator.desk.pages.mix_check import MixCheckPage
from calibrator.records import Records


@pytest.fixture(scope="session")
def mixing_store(tmp_path_factory: pytest.TempPathFactory, new_store: Path) -> Path:
    """The farm's records, made once and copied for each test."""
    path = tmp_path_factory.mktemp("mixing") / "records.sqlite"
    shutil.copy(new_store, path)
    with Records.open(str(path)) as made:
        mix_herd(made)
    return path


@pytest.fixture
def herd(tmp_path: Path, mixing_store: Path) -> Iterator[Herd]:
    path = tmp_path / "mixing.sqlite"
    shutil.copy(mixing_store, path)
    with Records.open(str(path)) as opened:
        yield Herd.again(opened)


@pytest.fixture
def desk(qapp: QApplication, answers: Answers, herd: Herd) -> Desk:
    return mix_desk(qapp, herd.records, answers)


@pytest.fixture
def page(qtbot: QtBot, desk: Desk) -> MixCheckPage:
    return mix_page(qtbot, desk)


@pytest.fixture
def sure(page: MixCheckPage, herd: Herd, desk: Desk) -> MixCheckPage:
    """With a refractometer that is zeroed and calibrated."""
    tool = refractometer(herd)
    zeroed(herd, tool)
    own_line(herd, tool)
    desk.changed.emit()
    return page
