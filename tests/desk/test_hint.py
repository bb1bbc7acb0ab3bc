"""The example in an empty line is never cut."""

from datetime import date

import pytest
from pytestqt.qtbot import QtBot

from calibrator.desk.forms.fields import DayField
from calibrator.desk.speech import day_text


@pytest.mark.parametrize(("width", "told"), [(400, "{day} or 2026-03-02"), (150, "{day}")])
def test_a_narrow_day_field_shows_one_way_whole(qtbot: QtBot, width: int, told: str) -> None:
    shown = told.format(day=day_text(date(2026, 3, 2)))
    field = DayField("Made on", lambda: date(2026, 3, 10))
    qtbot.addWidget(field)
    field.resize(width, 90)
    field.show()
    assert field.line.placeholderText() == shown
    assert field.line.fontMetrics().horizontalAdvance(shown) < field.line.width()
