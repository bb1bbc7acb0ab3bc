"""Choices on the page of the mix check move nothing that takes typing or clicks."""

from __future__ import annotations

import pytest
from herd import Herd
from mix_hands import mix_page, refractometer, type_in
from PySide6.QtCore import QPoint
from PySide6.QtWidgets import QApplication, QComboBox, QWidget
from pytestqt.qtbot import QtBot
from speaking import speaking
from still import places

from calibrator.desk.context import Desk
from calibrator.desk.pages.mix_check import MixCheckPage


@pytest.mark.parametrize("language", ["en", "es"])
def test_no_choice_moves_another_field_of_the_form(qtbot: QtBot, herd: Herd, desk: Desk, language: str) -> None:
    refractometer(herd)
    with speaking(language):
        panel = mix_page(qtbot, desk).check
        type_in(qtbot, panel.readings.first.line, "9.5")
        QApplication.processEvents()
        form = panel.findChild(QWidget, "form")
        assert isinstance(form, QWidget)
        for box in (box for box in form.findChildren(QComboBox) if box.isVisible()):
            for place in range(box.count()):
                before = [*places(form).values()]
                box.setCurrentIndex(place)
                box.activated.emit(place)
                for _ in range(3):
                    QApplication.processEvents()
                assert [*places(form).values()] == before, box.accessibleName()


def test_a_choice_in_the_history_stays_where_it_is(sure: MixCheckPage) -> None:
    sure.bring_up("history")
    panel = sure.history
    assert panel._choices.y() < panel.finding.mapTo(panel, QPoint(0, 0)).y()
