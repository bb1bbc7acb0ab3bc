"""A print out of the house: its sheets get their numbers, and numbers that came to nothing are kept as never used."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager, suppress
from dataclasses import replace
from pathlib import Path

from PySide6.QtPrintSupport import QPrinter

from calibrator.desk.paper_jobs import Job, LabelJob
from calibrator.desk.scoop_lines import words_so_far
from calibrator.desk.standing import standing
from calibrator.model import Ending, Printed, SheetEnding, new_id
from calibrator.model.underway import Underway, part_of
from calibrator.prints.output import check_place, print_document, write_pdf
from calibrator.prints.page import Document
from calibrator.records import Records, RecordsError


def save_pdf(records: Records, job: Job, shown: Document, path: Path, underway: Underway) -> list[Printed]:
    """Write a PDF file and keep that it was; gives the sheets with their numbers.

    A file that cannot be written takes no number: `shown` is written to that place first, for trial. Raises
    `CannotPrint`, `DoesNotFit` or a `RecordsError`.
    """
    check_place(path)
    trial = path.with_name(path.name + ".trial")
    write_pdf(shown, trial, part_of(underway, 0.0, 0.5))
    trial.unlink(missing_ok=True)
    with _numbered(records, job) as sheets:
        write_pdf(job.document(sheets), path, part_of(underway, 0.5, 1.0))
    return sheets


def send_to_printer(records: Records, job: Job, printer: QPrinter, underway: Underway) -> list[Printed]:
    """Print and keep that it was; gives the sheets with their numbers. Raises as `save_pdf` does."""
    with _numbered(records, job) as sheets:
        print_document(job.document(sheets), printer, underway)
    return sheets


@contextmanager
def _numbered(records: Records, job: Job) -> Iterator[list[Printed]]:
    """The sheets as the records number them. Where the block fails the older ones still hang, and these are gone."""
    if isinstance(job, LabelJob):
        _ask_from_now_on(records, job)
    sheets = records.record_prints(job.sheets)
    try:
        yield sheets
    except Exception:  # whatever it was, paper that did not come is told as spoiled
        with suppress(RecordsError):  # why nothing came is what is told, and not that this could not be kept as well
            records.end_sheets([_spoiled(sheet, job) for sheet in sheets])
        raise


def _ask_from_now_on(records: Records, job: LabelJob) -> None:
    """In a lot of earlier versions a printed label counts as on its scoop; this one is first to be put there."""
    now = standing(records, job.farm, job.at.date())
    known = now.lot(job.lot.id)
    if known is not None and known.lot.scoops_marked is None:
        records.keep(replace(known.lot, scoops_marked=words_so_far(now, known.lot)), by=job.by)


def _spoiled(sheet: Printed, job: Job) -> SheetEnding:
    return SheetEnding(
        id=new_id(), farm_id=sheet.farm_id, print_id=sheet.id, ending=Ending.SPOILED, at=job.at, by=job.by
    )
