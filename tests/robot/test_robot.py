"""A few minutes of the robot's day in every run: no error, no window and no timer left over."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtWidgets import QApplication

from calibrator.desk.ask import Ask
from calibrator.desk.theme import Theme
from tests.desk.answers import Answers
from tests.robot.day import spend


def test_a_short_day_leaves_nothing_over(qapp: QApplication, tmp_path: Path) -> None:
    if qapp.property("tokens") is None:
        Theme(qapp)
    answers: Ask = Answers()
    answers.path = tmp_path / "out.pdf"  # type: ignore[attr-defined]
    day = spend(0.2, 3, tmp_path, answers)
    assert day.actions > 15
    assert len(day.by_kind) > 5
    assert day.errors == ()
    assert (day.after.windows, day.after.timers) == (1, day.before.timers)
