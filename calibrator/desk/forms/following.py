"""Fields that change units together: the farm is asked once, not once for each field."""

from __future__ import annotations

from weakref import WeakSet

from PySide6.QtCore import QObject
from shiboken6 import isValid

from calibrator.desk.context import Desk
from calibrator.desk.widgets.quantity_field import QuantityField
from calibrator.model import UnitSystem


class Following(QObject):
    """The quantity fields of a desk, told in the units of the farm in view; lives as long as the desk."""

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk)
        self._desk = desk
        self.system: UnitSystem = desk.system
        self._boxes: WeakSet[QuantityField] = WeakSet()
        desk.changed.connect(self._follow)

    @staticmethod
    def of(desk: Desk) -> Following:
        """The one of this desk."""
        return desk.findChild(Following) or Following(desk)

    def add(self, box: QuantityField) -> None:
        self._boxes.add(box)

    def _follow(self) -> None:
        system = self._desk.system
        if system is self.system:
            return
        self.system = system
        for box in list(self._boxes):
            if isValid(box):
                box.set_system(system)
