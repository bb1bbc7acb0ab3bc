"""A few minutes of the robot's day in every run: no error, no window and no timer left over."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtWidgets import QApplication

from calibrator.desk.theme import Theme
from tests.robot.day import spend
from tests.robot.jobs import JOBS


@pytest.mark.slow
# The offscreen platform says this of a menu that pops up.
@pytest.mark.qt_log_ignore("does not support propagateSizeHints", "does not support raise", "does not support grabbing")
def test_a_short_day_leaves_nothing_over(qapp: QApplication, tmp_path: Path) -> None:
    if qapp.property("tokens") is None:
        Theme(qapp)
    day = spend(0.2, 3, tmp_path)
    assert day.actions > len(JOBS) + 15
    assert {job.__name__ for job, _ in JOBS} < set(day.by_kind)
    assert day.errors == ()
    assert (day.after.windows, day.after.timers) == (1, day.before.timers)
