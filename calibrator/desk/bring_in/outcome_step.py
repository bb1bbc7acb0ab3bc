"""Third step: what the file adds, what is there already, and every fault."""

from __future__ import annotations

from PySide6.QtWidgets import QTableView, QTabWidget, QVBoxLayout, QWidget

from calibrator.desk.bring_in import words
from calibrator.desk.bring_in.lines import Lines, lines_view
from calibrator.desk.bring_in.work import Bringing
from calibrator.desk.context import Desk
from calibrator.desk.counted import counted
from calibrator.desk.parts import label, set_tone
from calibrator.desk.speech import day_text, decimal_comma
from calibrator.desk.theme import SPACE
from calibrator.desk.widgets.later import take_turn
from calibrator.desk.words import packages_words
from calibrator.model import Fill, Scoop
from calibrator.units import show_mass

MOST_SHOWN = 2000


class OutcomeStep(QWidget):
    """Only looked at; the dialog's button adds it."""

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self.desk = desk
        self.told, self.more = label("", "heading"), label("", "quiet")
        self.tabs = QTabWidget()
        self.tabs.setAccessibleName(self.tr("What the file comes to"))
        self.tabs.tabBar().setAccessibleName(self.tabs.accessibleName())
        self.lots, self.weighed, self.faults, self.there = Lines(self), Lines(self), Lines(self), Lines(self)
        self.views: dict[Lines, QTableView] = {
            self.faults: lines_view(self.faults, self.tr("Cells to correct")),
            self.lots: lines_view(self.lots, self.tr("New lots")),
            self.weighed: lines_view(self.weighed, self.tr("New weigh-ins")),
            self.there: lines_view(self.there, self.tr("There already")),
        }
        body = QVBoxLayout(self)
        body.setContentsMargins(0, 0, 0, 0)
        body.setSpacing(SPACE)
        body.addWidget(self.told)
        body.addWidget(self.more)
        body.addWidget(self.tabs, 1)

    def show_work(self, work: Bringing) -> None:
        """Show what was judged."""
        judged = work.judged
        if judged is None:
            return
        self.told.setText(words.outcome_words(judged))
        set_tone(self.told, "bad" if judged.faults else "")
        self.more.setText(self._more(work))
        self._show_faults(work)
        self._show_lots(work)
        self._show_weighed(work)
        self._show_there(work)
        self.tabs.clear()
        captions = {
            self.faults: self.tr("To correct: {count}"),
            self.lots: self.tr("New lots: {count}"),
            self.weighed: self.tr("New weigh-ins: {count}"),
            self.there: self.tr("There already: {count}"),
        }
        for model, caption in captions.items():
            if model.rowCount():
                self.tabs.addTab(self.views[model], caption.format(count=self._count(work, model)))
        take_turn(self.tabs.tabBar(), *(self.views[model] for model in captions if model.rowCount()))
        self.tabs.setVisible(self.tabs.count() > 0)

    def _count(self, work: Bringing, model: Lines) -> int:
        judged = work.judged
        assert judged is not None
        if model is self.there:
            return len(judged.lots_there) + len(judged.fills_there)
        return len({self.faults: judged.faults, self.lots: judged.past.lots}.get(model, judged.past.weigh_ins))

    def _more(self, work: Bringing) -> str:
        judged = work.judged
        if judged is None or judged.faults or not judged.past.fills:
            return ""
        told = self.tr(
            "The weigh-ins are kept as brought in from {file}. They are not signed off and make no line; where the "
            "scoop is known the season shows their density."
        )
        return told.format(file=work.file.name)

    def _show_faults(self, work: Bringing) -> None:
        assert work.judged is not None
        heads = (self.tr("Row"), self.tr("Column"), self.tr("Found"), self.tr("What to do"))
        rows = [(f"{one.row:,}", one.column, one.found, one.words) for one in work.judged.faults[:MOST_SHOWN]]
        self.faults.show_rows(heads, rows)

    def _show_lots(self, work: Bringing) -> None:
        assert work.judged is not None
        heads = (
            self.tr("Lot"), self.tr("Product"), self.tr("Arrived"), self.tr("Made"), self.tr("Bags"),
            self.tr("Supplier"),
        )  # fmt: skip
        rows = [
            (
                lot.lot_number, lot.product, day_text(lot.arrived_on), day_text(lot.made_on),
                packages_words(lot, self.desk.system), lot.supplier,
            )
            for lot in work.judged.past.lots[:MOST_SHOWN]
        ]  # fmt: skip
        self.lots.show_rows(heads, rows)

    def _show_there(self, work: Bringing) -> None:
        """The lots by their numbers, the fills by their rows."""
        assert work.judged is not None
        lot, row = self.tr("Lot {number}"), self.tr("The fill of row {row}")
        told = [lot.format(number=number) for number in work.judged.lots_there]
        told += [row.format(row=f"{number:,}") for number in work.judged.fills_there]
        self.there.show_rows((self.tr("There already"),), [(one,) for one in told[:MOST_SHOWN]])

    def _show_weighed(self, work: Bringing) -> None:
        judged = work.judged
        assert judged is not None
        names = {one.id: one.name for one in self.desk.records.every(Scoop, work.farm.id)}
        numbers = work.lot_numbers()
        fills: dict[str, list[Fill]] = {}
        for fill in judged.past.fills:
            fills.setdefault(fill.weigh_in_id, []).append(fill)
        heads = (
            self.tr("Day"), self.tr("Lot"), self.tr("Scoop"), self.tr("Fills"), self.tr("Bags"), self.tr("Weights"),
        )  # fmt: skip
        rows = []
        for one in judged.past.weigh_ins[:MOST_SHOWN]:
            own = fills[one.id]
            rows.append((
                day_text(one.started_at.astimezone().date()), numbers.get(one.lot_id, ""),
                names.get(one.scoop_id or "", "–"), counted.fills(len(own)),
                counted.bags(len({fill.bag for fill in own})), self._range([fill.mass_g for fill in own]),
            ))  # fmt: skip
        self.weighed.show_rows(heads, rows)

    def _range(self, masses_g: list[float]) -> str:
        ends = [
            show_mass(mass, self.desk.system, decimal_comma=decimal_comma()) for mass in (min(masses_g), max(masses_g))
        ]
        return ends[0] if ends[0] == ends[1] else f"{ends[0]} – {ends[1]}"
