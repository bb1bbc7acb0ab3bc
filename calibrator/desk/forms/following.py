"""Fields and drawings that change units together: the farm is asked once, not once for each."""

from __future__ import annotations

from typing import Protocol
from weakref import WeakSet

from PySide6.QtCore import QObject
from shiboken6 import isValid

from calibrator.desk.context import Desk
from calibrator.desk.widgets.drawing import Drawing
from calibrator.model import UnitSystem


class Told(Protocol):
    """A field or a drawing with figures."""

    def set_system(self, system: UnitSystem) -> None: ...


class Following(QObject):
    """What a desk tells in the units of the farm in view; lives as long as the desk."""

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk)
        self._desk = desk
        self.system: UnitSystem = desk.system
        self._told: WeakSet[Told] = WeakSet()
        desk.changed.connect(self._follow)

    @staticmethod
    def of(desk: Desk) -> Following:
        """The one of this desk."""
        return desk.findChild(Following) or Following(desk)

    def add(self, told: Told) -> None:
        self._told.add(told)

    def _follow(self) -> None:
        system = self._desk.system
        if system is self.system:
            return
        self.system = system
        for told in list(self._told):
            if isValid(told):
                told.set_system(system)


def drawing(desk: Desk, name: str, words: str) -> Drawing:
    """A drawing whose scale shows the units of the farm in view."""
    following = Following.of(desk)
    made = Drawing(name, words, following.system)
    following.add(made)
    return made
