"""What goes out from the season: the trial of feeders, every figure as tables, and the report on paper."""

from __future__ import annotations

from functools import partial
from pathlib import Path

from PySide6.QtWidgets import QHBoxLayout, QWidget

from calibrator.desk.context import Desk
from calibrator.desk.export_dialog import ExportDialog
from calibrator.desk.parts import button
from calibrator.desk.theme import SPACE
from calibrator.desk.tongues import on_paper
from calibrator.desk.trial.dialog import TrialDialog
from calibrator.model.underway import Underway
from calibrator.records import count_sign_offs


class SeasonDoors(QWidget):
    """Buttons side by side; each opens its dialog over the window."""

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self.desk = desk
        self.trial_button = button(self.tr("&Trial of feeders …"), self.open_trial)
        self.figures_button = button(self.tr("&Save all figures …"), self.open_figures)
        self.report_button = button(self.tr("Season &report …"), self._ask_report)
        line = QHBoxLayout(self)
        line.setContentsMargins(0, 0, 0, 0)
        line.setSpacing(SPACE)
        for widget in (self.trial_button, self.figures_button, self.report_button):
            line.addWidget(widget)
        line.addStretch(1)

    def open_trial(self) -> TrialDialog | None:
        """The trial in hand, or a new one."""
        farm = self.desk.farm
        if farm is None:
            return None
        dialog = TrialDialog(self.desk, farm, self.window())
        dialog.open()
        return dialog

    def open_figures(self) -> ExportDialog | None:
        """Which files, and where."""
        farm = self.desk.farm
        if farm is None:
            return None
        dialog = ExportDialog(self.desk, farm, self.window())
        dialog.open()
        return dialog

    def save_report(self, path: Path) -> None:
        """Write the report as a PDF, in the (first) language of the farm's paper."""
        from calibrator.desk.season_paper import season_report_facts
        from calibrator.prints.output import write_pdf
        from calibrator.prints.season_report import season_report

        farm, records, on = self.desk.farm, self.desk.records, self.desk.clock().date()
        if farm is None:
            return
        languages = on_paper(self.desk.settings.now.paper_languages)

        def write(underway: Underway) -> bool:
            facts = season_report_facts(records, farm, on, languages)
            if facts is not None:
                underway(0.0)
                write_pdf(season_report(facts), path, underway)
            return facts is not None

        self.desk.work(self.tr("Making the season report"), write, partial(self._saved, path), self._ask_report)

    def _saved(self, path: Path, written: bool) -> None:
        if written:
            self.desk.say_saved(self.tr("The season report is saved."), path)

    def _ask_report(self) -> None:
        farm = self.desk.farm
        if farm is None or not count_sign_offs(self.desk.records, farm.id):
            self.desk.ask.tell(self.tr("Nothing is signed off yet: a report begins with the first sign-off."))
            return
        parts = (farm.name, self.tr("season"), self.desk.clock().date().isoformat())
        title, kinds = self.tr("Save the season report"), self.tr("Report (*.pdf)")
        self.desk.save_as(title, parts, kinds, ".pdf", self.save_report)
