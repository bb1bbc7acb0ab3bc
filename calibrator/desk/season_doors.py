"""What goes out from the season: the trial of feeders, every figure as tables, and the report on paper."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QLocale
from PySide6.QtWidgets import QHBoxLayout, QWidget

from calibrator.desk.context import Desk
from calibrator.desk.export_dialog import ExportDialog
from calibrator.desk.parts import button
from calibrator.desk.refusals import in_words
from calibrator.desk.theme import SPACE
from calibrator.desk.trial.dialog import TrialDialog
from calibrator.records import RecordsError

if TYPE_CHECKING:
    from calibrator.prints.season_facts import SeasonReport

LANGUAGES = ("en", "es")  # of paper; named here so that the first page waits for no print


class SeasonDoors(QWidget):
    """Buttons side by side; each opens its dialog over the window."""

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self.desk = desk
        self.trial_button = button(self.tr("Trial of feeders …"), self.open_trial)
        self.figures_button = button(self.tr("Save all figures …"), self.open_figures)
        self.report_button = button(self.tr("Season report …"), self._ask_report)
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
        """Write the report as a PDF, in the language of the screen on the farm's paper."""
        from calibrator.prints.output import CannotPrint, write_pdf
        from calibrator.prints.season_report import season_report

        facts = self._facts()
        if facts is None:
            return
        try:
            write_pdf(season_report(facts), path)
        except CannotPrint as error:
            self.desk.ask.tell(in_words(error))
            return
        self.desk.say(self.tr("The season report is saved."))

    def _facts(self) -> SeasonReport | None:
        from calibrator.desk.season_paper import season_report_facts

        farm, language = self.desk.farm, QLocale().name()[:2]
        if farm is None:
            return None
        spoken = language if language in LANGUAGES else LANGUAGES[0]
        try:
            return season_report_facts(self.desk.records, farm, self.desk.clock().date(), (spoken,))
        except RecordsError as error:
            self.desk.ask.tell(in_words(error))
            return None

    def _ask_report(self) -> None:
        farm = self.desk.farm
        if farm is None or not self.desk.records.sign_offs(farm.id):
            self.desk.ask.tell(self.tr("Nothing is signed off yet: a report begins with the first sign-off."))
            return
        name = self.tr("season {day}").format(day=self.desk.clock().date().isoformat()) + ".pdf"
        self.desk.ask.save_path(self.tr("Save the season report"), name, self.tr("Report (*.pdf)"), self.save_report)
