"""Who changed what and when: the tellings of one thing, newest first."""

from __future__ import annotations

from dataclasses import fields, is_dataclass
from typing import Any

from PySide6.QtCore import QCoreApplication
from PySide6.QtWidgets import QVBoxLayout, QWidget

from calibrator.desk.context import Desk
from calibrator.desk.parts import clear, label
from calibrator.desk.speech import day_text

SHOWN = 6
translate = QCoreApplication.translate


class HistoryList(QWidget):
    """A line for each telling; nothing is shown for a thing that was kept only once."""

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self.desk = desk
        self._lines = QVBoxLayout(self)
        self._lines.setContentsMargins(0, 0, 0, 0)
        self._lines.setSpacing(2)

    def show_of(self, kind: type[Any], thing_id: str) -> None:
        """Show the tellings of one thing."""
        clear(self._lines)
        changes = self.desk.records.history(kind, thing_id) if thing_id else []
        self.setVisible(bool(changes))
        if not changes:
            return
        self._lines.addWidget(label(self.tr("What was kept"), "heading"))
        earlier = [None, *changes[:-1]]
        told = [(change, before.noun if before else None) for change, before in zip(changes, earlier, strict=True)]
        for change, before in reversed(told[-SHOWN:]):
            what = changed_words(before, change.noun)
            self._lines.addWidget(label(self._line(change.at, change.by, change.why, what), "quiet"))

    def _line(self, at: Any, by: str, why: str, what: str) -> str:
        day = day_text(at.astimezone().date())
        who = self.tr("{day}, {who}").format(day=day, who=by) if by else day
        told = self.tr("{when}: {what}").format(when=who, what=what)
        return self.tr("{told} ({why})").format(told=told, why=why) if why else told


def changed_words(before: Any, after: Any) -> str:
    """Which entries a telling changed, by their captions."""
    if before is None:
        return translate("History", "entered")
    names = [name for name in _differing(before, after) if name != "revision"]
    captions = dict.fromkeys(_captions().get(name, translate("History", "other entries")) for name in names)
    return translate("History", "changed {what}").format(what=", ".join(captions)) if captions else "–"


def _differing(before: Any, after: Any) -> list[str]:
    if not is_dataclass(before):
        return []
    return [f.name for f in fields(before) if getattr(before, f.name) != getattr(after, f.name)]


def _captions() -> dict[str, str]:
    package = translate("History", "bags and their weight")
    volume = translate("History", "volume")
    return {
        "name": translate("History", "name"),
        "units": translate("History", "units"),
        "paper": translate("History", "paper"),
        "tolerance_share": translate("History", "tolerance"),
        "resolution_g": translate("History", "display step"),
        "resolution_typed": translate("History", "display step"),
        "capacity_g": translate("History", "capacity"),
        "capacity_typed": translate("History", "capacity"),
        "shape": translate("History", "shape and dimensions"),
        "volume_ml": volume,
        "volume_u_ml": volume,
        "volume_from_water": volume,
        "rim_volume_ml": volume,
        "rim_volume_typed": volume,
        "usable_share": translate("History", "how far it may be filled"),
        "retired_on": translate("History", "in use or retired"),
        "lot_number": translate("History", "lot number"),
        "product": translate("History", "product"),
        "made_on": translate("History", "made on"),
        "arrived_on": translate("History", "arrived on"),
        "package": package,
        "package_count": package,
        "package_mass_g": package,
        "package_mass_typed": package,
        "composition": translate("History", "label composition"),
        "medicated": translate("History", "medicated or not"),
        "note": translate("History", "note"),
        "finished_on": translate("History", "finished or not"),
        "fed_from": translate("History", "the change-over to it"),
        "packages_left": translate("History", "bags counted"),
        "hot_water": translate("History", "hot water"),
        "supplier": translate("History", "supplier"),
        "plant_code": translate("History", "plant code"),
        "agglomerated": translate("History", "agglomerated or not"),
        "price_per_package": translate("History", "price"),
        "price_typed": translate("History", "price"),
        "currency": translate("History", "currency"),
        "told_by": translate("History", "how it is told apart"),
        "replaces_id": translate("History", "which scoop it replaces"),
        "retired_why": translate("History", "in use or retired"),
        "cooling": translate("History", "how it cools"),
    }
