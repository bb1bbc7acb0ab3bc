"""A farm that checks its mixes, its desk and the page: what most tests of the page begin with."""

from __future__ import annotations

import pytest
from answers import Answers
from herd import Herd
from mix_hands import mix_desk, mix_herd, mix_page, own_line, refractometer, zeroed
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from calibrator.desk.context import Desk
from calibrator.desk.pages.mix_check import MixCheckPage
from calibrator.records import Records


@pytest.fixture
def herd(records: Records) -> Herd:
    return mix_herd(records)


@pytest.fixture
def desk(qapp: QApplication, records: Records, answers: Answers, herd: Herd) -> Desk:
    return mix_desk(qapp, records, answers)


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
