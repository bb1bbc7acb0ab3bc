"""Paper: scoop labels, the wall chart, the lot sheet: looked at first, then printed or saved, numbered and kept."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from functools import partial
from pathlib import Path

from PySide6.QtCore import QCoreApplication, Qt, Signal
from PySide6.QtPrintSupport import QPrintDialog, QPrinter
from PySide6.QtWidgets import QDialog, QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from calibrator.clock import clock_text
from calibrator.desk import busy
from calibrator.desk.background import Background
from calibrator.desk.context import Desk
from calibrator.desk.how.of_paper import of_paper
from calibrator.desk.how.view import how_button
from calibrator.desk.how.working import Working
from calibrator.desk.in_use import LotState
from calibrator.desk.label_cut import Cut, after_printing, kept_grid
from calibrator.desk.marking import mark_scoop, unmark_scoop
from calibrator.desk.pages.paper_choice import PaperChoice
from calibrator.desk.paper_jobs import Job, LabelJob, Ready, expected, ready
from calibrator.desk.paper_making import LotPaper, Want, lot_paper
from calibrator.desk.paper_out import save_pdf, send_to_printer
from calibrator.desk.parts import button, card, label, row, scrolled
from calibrator.desk.refusals import in_words
from calibrator.desk.theme import SPACE
from calibrator.desk.widgets.page_preview import PagePreview
from calibrator.desk.widgets.preview_bar import PreviewBar
from calibrator.model import Printed, PrintKind, Scoop
from calibrator.prints.chart_facts import TwoLots
from calibrator.prints.errors import DoesNotFit
from calibrator.prints.page import Document
from calibrator.records import RecordsError
from calibrator.science.errors import CannotCompute

SIDE_WIDTH = 344


class PaperPanel(QWidget):
    """Shows what would be printed for a lot; what is printed or saved gets its number from the records."""

    left = Signal()
    wants_plan = Signal()

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self.desk = desk
        self._lot_id = ""  # blank: the lot in use
        self._two_lots: tuple[str, tuple[TwoLots, ...]] = ("", ())  # of the chart of this plan
        self._ready: Ready | None = None
        self._maker = Background(self)
        self._maker.done.connect(self._show_ready)
        self._maker.failed.connect(self._not_made)
        self._once_ready: Callable[[], None] | None = None  # asked for while the print was made
        self._made: tuple[list[Printed], Job] | None = None  # the newest from here, as it was printed or saved
        self._held: QPushButton | None = None  # had the keys while the print was made anew
        self._focus = False  # wanted once the print is there
        self._paper: LotPaper | None = None
        self._refused = ""  # why nothing can be printed for this lot
        self.dialog: QPrintDialog | None = None
        self.choice = PaperChoice(desk)
        self.choice.is_on.connect(self._mark)
        self.choice.changed.connect(self._show_other)
        self.heading = label("", "heading")
        self.not_fed = label("", "caution")
        self.number = label("")
        self.numbered = card(self.number)
        self.how = how_button(self.workings)
        self.trouble = label("", "caution")
        self.plan_button = button(self.tr("&Make a plan"), self.wants_plan.emit, "main")
        self.scale = label(
            self.tr(
                "Print at 100 %, never “fit to page”. Then lay a ruler on the two bars at the foot of the sheet: "
                "if they are off, throw it away."
            ),
            "caution",
        )
        self.print_button = button(self.tr("&Print"), self._print, "main")
        self.save_button = button(self.tr("Save as P&DF"), self._save)
        self.back = button(self.tr("&Go back"), self._leave)
        self.preview = PagePreview()
        self.bar = PreviewBar(self.preview)
        self._lay_out()

    def show_plan(self, plan_id: str, lot_id: str = "", two_lots: tuple[TwoLots, ...] = ()) -> None:
        """Offer the prints for a lot (blank: the one in use), the chart of this plan first.

        With `two_lots` that chart tells of a batch from two lots too.
        """
        self._lot_id, self._two_lots = lot_id, (plan_id, two_lots)
        self._fill(Want.CHART, plan_id)

    def show_lot(self, lot_id: str) -> None:
        """Offer the prints of one lot, its labels first; a blank id is the lot in use."""
        self._lot_id = lot_id
        self._fill(Want.LABELS, "")

    def show_lot_sheet(self, lot_id: str) -> None:
        """Offer the prints of one lot, its calibration record first."""
        self._lot_id = lot_id
        self._fill(Want.LOT_SHEET, "")

    def help_title(self) -> str:
        """The place in the help that tells of what is to be printed."""
        return {
            Want.LABELS: QCoreApplication.translate("Glossary", "Line, or fill mark"),
            Want.CHART: QCoreApplication.translate("Glossary", "Batch"),
            Want.LOT_SHEET: QCoreApplication.translate("Glossary", "Sign-off"),
        }[self.choice.wanted()]

    def reload(self) -> None:
        """Read the records anew; what was chosen stays chosen."""
        self._fill(None, "")

    @property
    def document(self) -> Document | None:
        """What the preview shows."""
        return self._ready.document if self._ready else None

    def workings(self) -> tuple[Working, ...]:
        """How the figures of the print came about."""
        chosen = self.choice.chosen()
        return of_paper(self._paper, chosen, self.desk.clock) if self._paper and chosen else ()

    def save_to(self, path: Path) -> None:
        """Save as PDF and keep that it was. A file that cannot be written takes no number."""
        path = path if path.suffix.lower() == ".pdf" else path.with_name(path.name + ".pdf")
        if self._ready is None:
            self._once_ready = partial(self.save_to, path)
            return
        job = self._ready.job
        told = partial(self._saved, job, path)
        write = partial(save_pdf, self.desk.records, job, self._ready.document, path)
        self.desk.work(self.tr("Saving as PDF"), write, told, self._save)

    def print_to(self, printer: QPrinter) -> None:
        """Send to a printer and keep that it was. What the printer did not take is kept as never used."""
        if self._ready is None:
            self._once_ready = partial(self.print_to, printer)
            return
        job, name = self._ready.job, printer.printerName() or self.tr("the printer")
        print_it = partial(send_to_printer, self.desk.records, job, printer)
        self.desk.work(self.tr("Printing"), print_it, partial(self._printed, job, name))

    def printer(self) -> QPrinter:
        """The printer that the dialog starts from."""
        return QPrinter(QPrinter.PrinterMode.HighResolution)

    def _fill(self, want: Want | None, plan_id: str) -> None:
        farm = self.desk.farm
        if farm is None:
            return
        self._refused = ""
        try:
            self._paper = paper = lot_paper(self.desk.records, farm, self._lot_id, self.desk.clock().date())
        except CannotCompute as error:
            self._paper = paper = None
            self._refused = in_words(error)
        number = paper.known.lot.lot_number if paper else ""
        self.heading.setText(self.tr("For lot {number}").format(number=number) if paper else "")
        if paper:
            self.choice.offer(paper, farm.paper)
        if want:
            self.choice.want(want, plan_id)
        self._focus = bool(want)
        self._show()

    def _mark(self, scoop: Scoop, is_on: bool) -> None:
        if self._paper is not None:
            tell = mark_scoop if is_on else unmark_scoop
            tell(self.desk, self._paper.now, self._paper.known, scoop)

    def _focus_first(self) -> None:
        """For a print just asked for: Enter prints; where nothing can be printed, it does what helps, or goes back."""
        if not self._focus:
            return
        self._focus = False
        ways = (self.print_button, self.plan_button, self.back)
        first = next(way for way in ways if way.isEnabled() and not way.isHidden())
        first.setFocus(Qt.FocusReason.OtherFocusReason)

    def _show_other(self) -> None:
        self._once_ready = None
        self._show()

    def _show(self) -> None:
        """Make the print anew, beside the window; whatever is chosen meanwhile ends that."""
        self._maker.stop()
        trouble, job = self._refused, None
        try:
            job = None if trouble else self._make_job()
        except CannotCompute as error:
            trouble = in_words(error)
        if job is None:
            self._show_none(trouble or self._missing())
            return
        self._maker.start(partial(ready, self.desk.records, job, self._made), patience_s=busy.PATIENCE_S)
        if self._maker.at_work:
            self._wait()

    def _wait(self) -> None:
        """The paper is blank until the print is there, so that nobody takes the one before for it."""
        self._ready = None
        self.trouble.hide()
        self.numbered.show()
        being_made = self.tr("Making the preview …")
        self.number.setText(being_made)
        self.preview.show_blank(being_made)
        self._offer_print(False)

    def _show_ready(self, print_: Ready) -> None:
        self._put(print_, "")
        self._focus_first()
        asked, self._once_ready = self._once_ready, None
        if asked is not None:
            asked()

    def _not_made(self, error: Exception) -> None:
        if not isinstance(error, CannotCompute | DoesNotFit | RecordsError):
            raise error
        self._show_none(in_words(error))

    def _show_none(self, trouble: str) -> None:
        self._once_ready = None
        self._put(None, trouble)
        self._focus_first()

    def _put(self, print_: Ready | None, trouble: str) -> None:
        self._ready = print_
        self.trouble.setText(trouble)
        self.trouble.setVisible(bool(trouble))
        self.scale.setVisible(not trouble and self.choice.wanted() is Want.LABELS)
        self.plan_button.setVisible(trouble == self._no_plan())
        other = self._other_powder() if print_ is not None else ""
        self.not_fed.setText(other)
        self.not_fed.setVisible(bool(other))
        self.preview.show_document(self.document)
        for part in (self.bar, self.preview):
            part.setVisible(print_ is not None)
        for widget in (self.numbered, self.how):
            widget.setVisible(print_ is not None)
        sheets = print_.sheets if print_ else ()
        self.number.setText("\n".join(self._number_words(sheet, len(sheets) > 1) for sheet in sheets))
        self._offer_print(print_ is not None)

    def _offer_print(self, there: bool) -> None:
        """What had the keys has them again once it can be pressed: Qt hands them on from what cannot."""
        ways = (self.print_button, self.save_button)
        if not there:
            self._held = next((each for each in ways if each.hasFocus()), self._held)
        for each in ways:
            each.setEnabled(there)
        if there and self._held is not None:
            held, self._held = self._held, None
            if self.back.hasFocus() or self.focusWidget() is None:
                held.setFocus(Qt.FocusReason.OtherFocusReason)

    def _make_job(self) -> Job | None:
        chosen = self.choice.chosen()
        if self._paper is None or chosen is None:
            return None
        plan_id, two_lots = self._two_lots
        if plan_id == chosen.plan_id:
            chosen = replace(chosen, two_lots=two_lots)
        return self._paper.job(chosen, self.desk.clock(), self.desk.initials)

    def _missing(self) -> str:
        if self._paper is None:
            return self.tr("No lot is signed off yet. Weigh one in and sign it off, then print.")
        if self.choice.chosen() is None:
            return self.tr("A size is missing or not understood. Correct it, then print.")
        if self.choice.wanted() is not Want.CHART:
            return self.tr("Choose at least one scoop that has a line for this lot.")
        return self._no_plan()

    def _no_plan(self) -> str:
        return self.tr("There is no plan yet. The chart is made from a plan: which calves, how much, how strong.")

    def _number_words(self, sheet: Printed, several: bool) -> str:
        if sheet.number and self._made and sheet in self._made[0]:
            made = self.tr("This is print no. {number}, made at {time}. Printed once more it takes a new number.")
            text = made.replace("{time}", clock_text(sheet.at.astimezone().time()))
        elif sheet.replaces is None:
            text = self.tr("This will be print no. {number}.")
        elif sheet.kind is not PrintKind.LOT_SHEET and self._waits():
            text = self.tr("This will be print no. {number}. It replaces no. {old} once this lot is fed.")
        elif sheet.kind is PrintKind.SCOOP_LABEL:
            text = self.tr("This will be print no. {number}. It replaces no. {old}: take that one off.")
        elif sheet.kind is PrintKind.LOT_SHEET:
            text = self.tr("This will be print no. {number}. It replaces no. {old} in the folder.")
        else:
            text = self.tr("This will be print no. {number}. It replaces no. {old}: take that one down.")
        told = text.format(number=sheet.number, old=sheet.replaces)
        if not several or sheet.scoop_id is None:
            return told
        scoop = self.desk.records.find(Scoop, sheet.scoop_id).name
        return self.tr("{scoop}: {told}").format(scoop=scoop, told=told)

    def _other_powder(self) -> str:
        """That a label or chart is not for the powder that is fed; said, not refused: it may be made ahead."""
        paper = self._paper
        fed = paper.now.in_use if paper else None
        want = self.choice.wanted()
        if paper is None or fed is None or want is Want.LOT_SHEET or fed.lot.id == paper.known.lot.id:
            return ""
        if want is Want.CHART:
            text = self.tr("This chart is not for the powder in use: that is lot {number}.")
        else:
            text = self.tr("This label is not for the powder in use: that is lot {number}.")
        return text.format(number=fed.lot.lot_number)

    def _waits(self) -> bool:
        return self._paper is not None and self._paper.known.state is LotState.WAITING

    def _printed(self, job: Job, name: str, numbered: list[Printed]) -> None:
        self._used_up(job)
        self.desk.say(self.tr("Sent to {name}.").format(name=self._told(job, name, numbered)))

    def _saved(self, job: Job, path: Path, numbered: list[Printed]) -> None:
        self.desk.say_saved(self.tr("Saved as {name}.").format(name=self._told(job, path.name, numbered)), path)

    def _used_up(self, job: Job) -> None:
        """The next print on ready-cut labels begins after these."""
        if isinstance(job, LabelJob) and job.options.cut is Cut.READY_CUT and job.options.grid is not None:
            grid = after_printing(job.options.grid, len(job.scoops) * job.options.copies)
            self.desk.settings.keep(label_grid=kept_grid(grid))
            self.choice.grid.show_kept()
            self._show()

    def _told(self, job: Job, name: str, numbered: list[Printed]) -> str:
        self._made = list(numbered), job
        self._show()
        numbers = [self.tr("print no. {number}").format(number=sheet.number) for sheet in numbered]
        return ", ".join([name, *numbers])

    def _save(self) -> None:
        if self._ready is None:
            return
        self.desk.save_as(
            self.tr("Save as PDF"),
            self._name_parts(self._ready.job),
            self.tr("PDF files (*.pdf)"),
            ".pdf",
            self.save_to,
        )

    def _name_parts(self, job: Job) -> tuple[str, ...]:
        """Whose, of which lot, what it is, of which day, and its number: or a second one of the day would be asked
        about as if it were to be written over the first."""
        what = {
            Want.LABELS: self.tr("scoop labels"),
            Want.CHART: self.tr("wall chart"),
            Want.LOT_SHEET: self.tr("lot sheet"),
        }[self.choice.wanted()]
        farm = self.desk.farm.name if self.desk.farm else ""
        lot = self._paper.known.lot.lot_number if self._paper else ""
        plan = self.choice.plan.currentText() if self.choice.wanted() is Want.CHART else ""
        return farm, lot, " ".join((what, plan)).strip(), self.desk.clock().date().isoformat(), self._number_part(job)

    def _number_part(self, job: Job) -> str:
        numbers = [sheet.number for sheet in expected(self.desk.records, job.sheets)]
        told = "-".join(str(number) for number in dict.fromkeys((numbers[0], numbers[-1])))
        return self.tr("no. {number}").format(number=told)

    def _leave(self) -> None:
        self.left.emit()

    def _print(self) -> None:
        printer = self.printer()
        self.dialog = dialog = QPrintDialog(printer, self.window())
        # A part of the pages would take numbers for sheets that were never made.
        for part in (QPrintDialog.PrintDialogOption.PrintPageRange, QPrintDialog.PrintDialogOption.PrintCurrentPage):
            dialog.setOption(part, False)
        dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        dialog.finished.connect(partial(self._answered, printer))
        QDialog.open(dialog)

    def _answered(self, printer: QPrinter, answer: int) -> None:
        self.dialog = None
        if answer == QDialog.DialogCode.Accepted:
            self.print_to(printer)

    def _lay_out(self) -> None:
        side = QWidget()
        body = QVBoxLayout(side)
        body.setContentsMargins(0, 0, 0, 0)
        body.setSpacing(int(1.5 * SPACE))
        for widget in (self.heading, self.not_fed, self.choice, self.trouble):
            body.addWidget(widget)
        body.addLayout(row(self.plan_button, None))
        body.addWidget(self.numbered)
        body.addLayout(row(self.how, None))
        body.addStretch(1)
        left = QVBoxLayout()
        left.setSpacing(SPACE)
        left.addWidget(scrolled(side), 1)
        left.addWidget(self.scale)
        left.addLayout(row(self.print_button, self.save_button, self.back))
        holder = QWidget()
        holder.setLayout(left)
        left.setContentsMargins(0, 0, 0, 0)
        holder.setFixedWidth(SIDE_WIDTH)
        pages = QWidget()  # keeps its room where there is no page
        shown = QVBoxLayout(pages)
        shown.setContentsMargins(0, 0, 0, 0)
        shown.setSpacing(SPACE)
        shown.addWidget(self.bar)
        shown.addWidget(self.preview, 1)
        layout = QHBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(2 * SPACE)
        layout.addWidget(holder)
        layout.addWidget(pages, 1)
