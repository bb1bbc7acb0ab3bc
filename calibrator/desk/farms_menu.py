"""The farms of one records store: which is in view, another one, a new one. Stands where the farm's name stands."""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtCore import QPoint, Signal
from PySide6.QtGui import QAction, QActionGroup
from PySide6.QtWidgets import QMenu, QPushButton

from calibrator.desk.context import Desk
from calibrator.desk.plain_text import LONGEST_LINE, on_screen
from calibrator.desk.refusals import in_words
from calibrator.model import Farm, new_id
from calibrator.records import RecordsError


class FarmsMenu(QPushButton):
    """A button with the farms beneath it; `wanted` asks for another one by its id."""

    wanted = Signal(str)
    comparing = Signal()

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self.desk = desk
        self.setText(self.tr("Farms"))
        self.setProperty("kind", "link")
        self.setAutoDefault(True)
        self.setAccessibleName(self.tr("Choose another farm, or add one"))
        self.setToolTip(self.accessibleName())
        self.list = QMenu(self)
        self.clicked.connect(self.show_list)

    def show_list(self) -> None:
        """The farms as they are now, the one in view marked."""
        try:
            self._fill()
        except RecordsError as error:
            self.desk.ask.tell(in_words(error))
            return
        self.list.popup(self.mapToGlobal(QPoint(0, self.height())))

    def ask_for_new(self) -> None:
        """Ask what a further farm is called; all else about it is asked on its own pages."""
        self.desk.ask.reason(self.tr("What is the further farm called?"), self._add)

    def _fill(self) -> None:
        self.list.clear()
        only_one = QActionGroup(self.list)
        farms = self.desk.records.every(Farm)
        for farm in farms:
            shown = QAction(on_screen(farm.name, LONGEST_LINE).replace("&", "&&"), self.list)
            shown.setCheckable(True)
            shown.setChecked(self.desk.farm is not None and farm.id == self.desk.farm.id)
            shown.setData(farm.id)
            shown.triggered.connect(self._chosen)
            only_one.addAction(shown)
            self.list.addAction(shown)
        self.list.addSeparator()
        self.list.addAction(self.tr("Add a farm …"), self.ask_for_new)
        if len(farms) > 1:
            self.list.addAction(self.tr("Compare a product across farms …"), self.comparing.emit)

    def _chosen(self) -> None:
        action = self.sender()
        if isinstance(action, QAction):
            self.wanted.emit(str(action.data()))

    def _add(self, name: str) -> None:
        """Keep a farm that takes over how this one reads its numbers."""
        plain = " ".join(name.split())
        same = [farm for farm in self.desk.records.every(Farm) if farm.name.casefold() == plain.casefold()]
        if same:
            text = self.tr("There is a farm named {name} already. Give the further one a name of its own.")
            self.desk.ask.tell(text.format(name=same[0].name))
            return
        here = self.desk.farm
        made = Farm(id=new_id(), name=plain)
        if here is not None:
            made = replace(made, units=here.units, paper=here.paper, currency=here.currency)
        kept = self.desk.keep(made)
        if kept is not None:
            self.wanted.emit(kept.id)
