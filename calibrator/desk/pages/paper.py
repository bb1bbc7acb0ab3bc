"""Paper: scoop labels, the wall chart, the lot sheet: looked at first, then printed or saved, numbered and kept."""

from __future__ import annotations

from functools import partial
from pathlib import Path

from PySide6.QtCore import Qt, Signal
from PySide6.QtPrintSupport import QPrintDialog, QPrinter
from PySide6.QtWidgets import QDialog, QHBoxLayout, QVBoxLayout, QWidget

from calibrator.desk.context import Desk
from calibrator.desk.pages.paper_choice import PaperChoice, Want
from calibrator.desk.paper_facts import Options, lot_sheet_facts
from calibrator.desk.paper_jobs import ChartJob, Job, LabelJob, LotSheetJob, expected
from calibrator.desk.parts import button, card, label, row, scrolled
from calibrator.desk.refusals import in_words
from calibrator.desk.sheets import plan_sheet, powder_of
from calibrator.desk.standing import LotStanding, Standing, standing
from calibrator.desk.theme import SPACE
from calibrator.desk.tongues import on_paper
from calibrator.desk.widgets.page_preview import PagePreview
from calibrator.model import Farm, Plan, Printed, Scale, Scoop, Vessel, WeighIn
from calibrator.prints.errors import DoesNotFit
from calibrator.prints.output import CannotPrint, print_document, write_pdf
from calibrator.prints.page import Document
from calibrator.science.errors import CannotCompute

SIDE_WIDTH = 312
NOT_IN_FILE_NAMES = '<>:"/\\|?*·'


class PaperPanel(QWidget):
    """Shows what would be printed for a lot; what is printed or saved gets its number from the records."""

    left = Signal()

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self.desk = desk
        self._lot_id = ""  # blank: the lot in use
        self._job: Job | None = None
        self._document: Document | None = None
        self._dialog: QPrintDialog | None = None
        self.choice = PaperChoice()
        self.choice.changed.connect(self._show)
        self.heading = label("", "heading")
        self.number = label("")
        self.trouble = label("", "caution")
        self.scale = label(
            self.tr(
                "Print at 100 %, never “fit to page”, then check the bar with a ruler. "
                "Where the bar is off, throw the sheet away."
            ),
            "caution",
        )
        self.print_button = button(self.tr("&Print"), self._print, "main")
        self.save_button = button(self.tr("Save as P&DF"), self._save)
        self.back = button(self.tr("&Go back"), self._leave)
        self.preview = PagePreview()
        self._lay_out()

    def show_plan(self, plan_id: str) -> None:
        """Offer the prints for the lot in use, the chart of this plan first."""
        self._lot_id = ""
        self._fill(Want.CHART, plan_id)

    def show_lot(self, lot_id: str) -> None:
        """Offer the prints of one lot, its labels first; a blank id is the lot in use."""
        self._lot_id = lot_id
        self._fill(Want.LABELS, "")

    def reload(self) -> None:
        """Read the records anew; what was chosen stays chosen."""
        self._fill(None, "")

    @property
    def document(self) -> Document | None:
        """What the preview shows."""
        return self._document

    def save_to(self, path: Path) -> None:
        """Save as PDF and keep that it was. A file that cannot be written takes no number."""
        path = path if path.suffix.lower() == ".pdf" else path.with_name(path.name + ".pdf")
        trial = path.with_name(path.name + ".trial")
        job, document = self._job, self._document
        if job is None or document is None:
            return
        try:
            write_pdf(document, trial)
            trial.unlink()
            numbered = self._record(job)
            if numbered is not None:
                write_pdf(job.document(numbered), path)
                self._told(self.tr("Saved as {name}."), path.name, numbered)
        except (CannotPrint, OSError) as error:
            self.desk.ask.tell(in_words(error))

    def print_to(self, printer: QPrinter) -> None:
        """Send to a printer and keep that it was."""
        if self._job is None:
            return
        job = self._job
        numbered = self._record(job)
        if numbered is None:
            return
        try:
            print_document(job.document(numbered), printer)
        except CannotPrint as error:
            self.desk.ask.tell(in_words(error))
            return
        self._told(self.tr("Sent to {name}."), printer.printerName() or self.tr("the printer"), numbered)

    def _fill(self, want: Want | None, plan_id: str) -> None:
        farm = self.desk.farm
        if farm is None:
            return
        now = standing(self.desk.records, farm)
        known = now.lot(self._lot_id) if self._lot_id else now.in_use
        plans = [plan for plan in self.desk.records.every(Plan, farm.id) if plan.retired_on is None]
        having = {mark.scoop_id for mark in known.marks} if known else set()
        scoops = [scoop for scoop in now.scoops if scoop.id in having]
        self.heading.setText(self.tr("For lot {number}").format(number=known.lot.lot_number) if known else "")
        self.choice.offer(scoops, plans, farm.paper, on_paper(self.desk.settings.now.paper_languages))
        if want:
            self.choice.want(want, plan_id)
        self._show()

    def _show(self) -> None:
        self._job, self._document = None, None
        trouble = ""
        try:
            self._job = self._make_job()
            if self._job is None:
                trouble = self._missing()
            else:
                self._document = self._job.document(expected(self.desk.records, self._job.sheets))
        except (CannotCompute, DoesNotFit) as error:
            self._job, trouble = None, in_words(error)
        self.trouble.setText(trouble)
        self.trouble.setVisible(bool(trouble))
        self.scale.setVisible(not trouble and self.choice.wanted() is not Want.LOT_SHEET)
        self.preview.show_document(self._document)
        self._tell_number()
        for each in (self.print_button, self.save_button):
            each.setEnabled(self._document is not None)

    def _make_job(self) -> Job | None:
        farm = self.desk.farm
        if farm is None:
            return None
        now = standing(self.desk.records, farm)
        known = now.lot(self._lot_id) if self._lot_id else now.in_use
        if known is None or known.sign_off is None:
            return None
        options = self.choice.options()
        if self.choice.wanted() is Want.LABELS:
            return self._label_job(farm, now, known, options)
        if self.choice.wanted() is Want.LOT_SHEET:
            return self._lot_sheet_job(farm, now, known, options)
        return self._chart_job(farm, now, known, options)

    def _lot_sheet_job(self, farm: Farm, now: Standing, known: LotStanding, options: Options) -> LotSheetJob | None:
        newest = {s.scoop_id: s for s in now.sign_offs if s.lot_id == known.lot.id}
        chosen = [newest[scoop] for scoop in newest if scoop in self.choice.scoop_ids()]
        records, at = self.desk.records, self.desk.clock()
        facts = tuple(lot_sheet_facts(records, farm, signed, options, at) for signed in chosen)
        return LotSheetJob(facts) if facts else None

    def _label_job(self, farm: Farm, now: Standing, known: LotStanding, options: Options) -> LabelJob | None:
        chosen = self.choice.scoop_ids()
        scoops = tuple(scoop for scoop in now.scoops if scoop.id in chosen)
        signed = {s.scoop_id: s for s in now.sign_offs if s.lot_id == known.lot.id}
        if not scoops:
            return None
        records = self.desk.records
        targets = {scoop.id: self._target(signed[scoop.id].weigh_in_id, known, scoop.id) for scoop in scoops}
        resolution = records.find(Scale, signed[scoops[0].id].scale_id).resolution_g
        return LabelJob(
            farm, known.lot, scoops, signed, known.marks, targets, resolution, options,
            self.desk.clock(), self.desk.initials,
        )  # fmt: skip

    def _target(self, weigh_in_id: str, known: LotStanding, scoop_id: str) -> float:
        told = self.desk.records.find(WeighIn, weigh_in_id).target_mass_g
        return told or max(mark.target_mass_g for mark in known.marks if mark.scoop_id == scoop_id)

    def _chart_job(self, farm: Farm, now: Standing, known: LotStanding, options: Options) -> ChartJob | None:
        plans = {plan.id: plan for plan in self.desk.records.every(Plan, farm.id)}
        plan = plans.get(self.choice.plan_id())
        if plan is None or known.sign_off is None:
            return None
        vessels = {vessel.id: vessel for vessel in self.desk.records.every(Vessel, farm.id)}
        powder = powder_of(self.desk.records, now, known, now.sign_offs)
        sheet = plan_sheet(farm, plan, vessels.get(plan.vessel_id or ""), powder)
        if sheet.trouble:
            raise CannotCompute(sheet.trouble)
        return ChartJob(farm, sheet, known.sign_off, options, self.desk.clock(), self.desk.initials)

    def _missing(self) -> str:
        farm = self.desk.farm
        now = standing(self.desk.records, farm) if farm else None
        known = (now.lot(self._lot_id) if self._lot_id else now.in_use) if now else None
        if known is None or known.sign_off is None:
            return self.tr("No lot is signed off yet. Weigh one in and sign it off, then print.")
        if self.choice.wanted() is not Want.CHART:
            return self.tr("Choose at least one scoop that has a line for this lot.")
        return self.tr("There is no plan yet. Make one on the page of the batch tables.")

    def _tell_number(self) -> None:
        if self._job is None or self._document is None:
            self.number.setText("")
            return
        sheets = expected(self.desk.records, self._job.sheets)
        told = [self._number_words(sheet, len(sheets) > 1) for sheet in sheets]
        self.number.setText("\n".join(told) or self.tr("A record of what was weighed; it bears no number."))

    def _number_words(self, sheet: Printed, several: bool) -> str:
        if sheet.replaces is None:
            text = self.tr("This will be no. {number}.")
        else:
            text = self.tr("This will be no. {number}. It replaces no. {old}: take that one down.")
        told = text.format(number=sheet.number, old=sheet.replaces)
        if not several or sheet.scoop_id is None:
            return told
        scoop = self.desk.records.find(Scoop, sheet.scoop_id).name
        return self.tr("{scoop}: {told}").format(scoop=scoop, told=told)

    def _record(self, job: Job) -> list[Printed] | None:
        records = self.desk.records
        return self.desk.attempt(lambda: [records.record_print(sheet) for sheet in job.sheets])

    def _told(self, text: str, name: str, numbered: list[Printed]) -> None:
        numbers = [self.tr("no. {number}").format(number=sheet.number) for sheet in numbered]
        self.desk.say(text.format(name=", ".join([name, *numbers])))

    def _save(self) -> None:
        if self._document is None:
            return
        name = "".join(" " if sign in NOT_IN_FILE_NAMES else sign for sign in self._document.title)
        suggestion = " ".join(name.split()) + ".pdf"
        self.desk.ask.save_path(self.tr("Save as PDF"), suggestion, self.tr("PDF files (*.pdf)"), self.save_to)

    def _leave(self) -> None:
        self.left.emit()

    def _print(self) -> None:
        printer = QPrinter(QPrinter.PrinterMode.HighResolution)
        dialog = QPrintDialog(printer, self.window())
        dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        dialog.accepted.connect(partial(self.print_to, printer))
        QDialog.open(dialog)

    def _lay_out(self) -> None:
        side = QWidget()
        body = QVBoxLayout(side)
        body.setContentsMargins(0, 0, SPACE, 0)
        body.setSpacing(int(1.5 * SPACE))
        for widget in (self.heading, self.choice, self.trouble, card(self.number, self.scale)):
            body.addWidget(widget)
        body.addStretch(1)
        left = QVBoxLayout()
        left.setSpacing(int(1.5 * SPACE))
        area = scrolled(side)
        area.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        left.addWidget(area, 1)
        left.addLayout(row(self.print_button, self.save_button, self.back))
        holder = QWidget()
        holder.setLayout(left)
        left.setContentsMargins(0, 0, 0, 0)
        holder.setFixedWidth(SIDE_WIDTH)
        layout = QHBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(2 * SPACE)
        layout.addWidget(holder)
        layout.addWidget(self.preview, 1)
