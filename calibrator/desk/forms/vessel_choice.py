"""The vessel that a plan is mixed in, and the way to where vessels are entered."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from calibrator.desk.context import Desk
from calibrator.desk.forms.fields import Captioned
from calibrator.desk.parts import button, label, row
from calibrator.desk.widgets.name_choice import NameChoice
from calibrator.model import Vessel


class VesselChoice(QWidget):
    """A vessel or none. `wanted` leads to where they are entered; one entered there meanwhile is chosen here.

    `several` tells how calves are fed from two vessels; it is placed where it has the width.
    """

    edited = Signal()
    wanted = Signal()

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self.desk = desk
        self._own = ""  # of the plan: offered though it may be retired
        self._awaited = False
        self.box = NameChoice()
        self.box.activated.connect(self.edited)
        self.enter = button(self.tr("Enter a &vessel"), self._want, "link")
        told = self.tr(
            "Two vessels? Make a plan for each, with only the calves that are fed from it: each gets its own table and "
            "chart."
        )
        self.several = label(told, "quiet")
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(0)
        layout.addWidget(Captioned(self.tr("Mi&xed in"), self.box, speaks=False))
        layout.addLayout(row(self.enter, None))
        layout.addStretch(1)

    def load(self, vessel_id: str | None) -> None:
        """Show a plan's vessel among those in use."""
        self._own, self._awaited = vessel_id or "", False
        self._offer(self._own)

    def chosen(self) -> str | None:
        """The vessel's id; None for none."""
        return self.box.currentData() or None

    def come_back(self) -> None:
        """The person is back from entering a vessel."""
        if self._awaited:
            self._awaited = False
            self.box.setFocus(Qt.FocusReason.OtherFocusReason)

    def reload(self) -> bool:
        """Vessels were entered or named anew meanwhile; the choice stays. Tells whether one awaited was chosen."""
        known = {self.box.itemData(at) for at in range(self.box.count())}
        new = [vessel.id for vessel in self._vessels() if vessel.id not in known]
        came = self._awaited and bool(new)
        self._offer(new[-1] if came else self.box.currentData())
        return came

    def _offer(self, chosen: str | None) -> None:
        self.box.clear()
        self.box.addItem(self.tr("None: no limit"), "")
        vessels = self._vessels()
        for vessel in vessels:
            retired = self.tr("{name} (retired)").format(name=vessel.name)
            self.box.addItem(vessel.name if vessel.retired_on is None else retired, vessel.id)
        self.box.setCurrentIndex(max(0, self.box.findData(chosen or "")))
        self.several.setVisible(len(vessels) > 1)

    def _want(self) -> None:
        self._awaited = True
        self.wanted.emit()

    def _vessels(self) -> list[Vessel]:
        farm = self.desk.farm
        every = self.desk.records.every(Vessel, farm.id) if farm else []
        return [vessel for vessel in every if vessel.retired_on is None or vessel.id == self._own]
