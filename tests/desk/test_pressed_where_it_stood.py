"""What words beneath a form do to what is just being pressed: nothing, also where a scroll bar comes with them."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from calibrator.desk.guide import Step
from calibrator.desk.pages.weigh_in import WeighInPage
from calibrator.desk.weigh_in.step_tools import StepTools
from calibrator.desk.window import Window
from calibrator.model import Lot, Scale, Scoop
from tests.desk.speaking import speaking


@pytest.fixture
def spanish() -> Iterator[None]:
    with speaking("es"):
        yield


def test_a_box_is_ticked_that_is_pressed_from_a_field_whose_words_come_as_it_is_left(
    spanish: None, window: Window
) -> None:
    """In Spanish, 1024 wide and 780 high, the words on the scale bring the scroll bar, and that made the form narrower
    and taller: the press went to the box, the release beside it."""
    records = window.desk.records
    records.keep(replace(records.every(Scale)[0], resolution_g=1.0, resolution_typed="1 g"))
    window.resize(1024, 780)
    window.show()
    window.show_page("weigh_in", records.every(Lot)[0].id)
    page = window.page("weigh_in")
    assert isinstance(page, WeighInPage)
    assert page.guide is not None
    page.guide.set(by="MK", scoop_id=records.every(Scoop)[0].id, scale_id=records.every(Scale)[0].id)
    page.open_step(Step.SCOOP_AND_SCALE)
    view = page._views[Step.SCOOP_AND_SCALE]
    assert isinstance(view, StepTools)
    for field, text in ((view._nominal, "500"), (view._reading, "506")):
        field.setFocus()
        QTest.keyClicks(QApplication.focusWidget(), text)
    QApplication.processEvents()
    box, handle = view._zeroed, window.windowHandle()
    there = box.mapTo(window, QPoint(10, box.height() // 2))
    QTest.mousePress(handle, Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier, there)
    QApplication.processEvents()
    QTest.mouseRelease(handle, Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier, there)
    assert view._scale_says.isVisible()
    assert box.isChecked()
