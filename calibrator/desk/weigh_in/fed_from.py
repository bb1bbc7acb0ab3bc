"""The question at sign-off while another lot is fed: from which feeding on this one is."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, timedelta
from enum import StrEnum

from PySide6.QtWidgets import QWidget

from calibrator.desk.change_over import FedFrom
from calibrator.desk.feeding_names import feeding_names
from calibrator.desk.forms.enter import enter_moves_on
from calibrator.desk.parts import label, row
from calibrator.desk.plain_text import on_screen
from calibrator.desk.speech import weekday_text
from calibrator.desk.theme import SPACE
from calibrator.desk.widgets.calm_box import CalmBox
from calibrator.model import Plan

DAYS_AHEAD = 14


class Way(StrEnum):
    """How the question can be answered."""

    NEXT = "next"
    DAY = "day"
    NOT_YET = "not_yet"


class FedFromQuestion(QWidget):
    """Nothing is chosen beforehand: which powder goes into the pail is said, not taken for granted."""

    def __init__(self) -> None:
        super().__init__()
        self.ways, self.days, self.feedings = CalmBox(), CalmBox(), CalmBox()
        self.ways.setPlaceholderText(self.tr("Choose …"))
        self.ways.setAccessibleName(self.tr("Fed from which feeding?"))
        self.days.setAccessibleName(self.tr("Fed from this day on"))
        self.feedings.setAccessibleName(self.tr("Fed from this feeding on"))
        self._today = date.max
        self._offered: tuple[object, ...] = ()
        caption = label(self.tr("Fe&d from which feeding?"), "heading", wrap=False)
        caption.setBuddy(self.ways)
        line = row(caption, self.ways, self.days, self.feedings)
        line.setContentsMargins(0, 0, 0, 0)
        line.setStretch(1, 1)
        self.setLayout(line)
        self.ways.setSizeAdjustPolicy(CalmBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        self.ways.currentIndexChanged.connect(self._show_boxes)
        enter_moves_on(self)
        self._show_boxes()

    def offer(self, weigh_in_id: str, old: str, plans: Sequence[Plan], today: date) -> None:
        """Ask in a weigh-in beside a lot that is fed; what is chosen stays while it is the same weigh-in, lot and day,
        whatever feedings are planned meanwhile."""
        names = feeding_names(plans, today)
        asked = (weigh_in_id, old, today)
        if self._offered == (asked, names):
            return
        way, day_at, feeding_at = (box.currentIndex() for box in (self.ways, self.days, self.feedings))
        same = bool(self._offered) and self._offered[0] == asked
        self._offered, self._today = (asked, names), today
        for box in (self.ways, self.days, self.feedings):
            box.clear()
        not_yet = self.tr("Not yet: lot {old} is fed until it is finished").format(old=old)
        self.ways.addItem(self.tr("From the next feeding"), Way.NEXT)
        self.ways.addItem(self.tr("From a day and feeding"), Way.DAY)
        self.ways.addItem(on_screen(not_yet), Way.NOT_YET)
        self.ways.view().setMinimumWidth(self.ways.view().sizeHintForColumn(0) + 2 * SPACE)
        for ahead in range(DAYS_AHEAD):
            day = today + timedelta(days=ahead)
            self.days.addItem(weekday_text(day), day)
        self.days.setCurrentIndex(1)
        for name in names:
            self.feedings.addItem(on_screen(name))
        self.ways.setCurrentIndex(way if same else -1)
        if same:
            self.days.setCurrentIndex(day_at)
            self.feedings.setCurrentIndex(min(feeding_at, len(names) - 1))

    @property
    def answered(self) -> bool:
        return self.ways.currentIndex() >= 0

    def fed_from(self) -> FedFrom | None:
        """The change-over; None where it is not yet."""
        way = self.ways.currentData()
        if way == Way.NEXT:
            return FedFrom(self._today)
        return FedFrom(self.days.currentData(), self.feedings.currentIndex()) if way == Way.DAY else None

    def _show_boxes(self) -> None:
        for box in (self.days, self.feedings):
            box.setVisible(self.ways.currentData() == Way.DAY)
