"""Today."""

from __future__ import annotations

from calibrator.desk.context import Desk
from calibrator.desk.page import Page


class TodayPage(Page):
    """Where am I needed."""

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk, "")
        self.title.setText(self.tr("Today"))
