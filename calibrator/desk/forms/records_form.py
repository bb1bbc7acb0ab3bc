"""The records themselves: where they are, their copies, whether they are as they were signed, in and out."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication, Qt
from PySide6.QtWidgets import QListWidget, QListWidgetItem, QVBoxLayout, QWidget

from calibrator.desk.context import Desk
from calibrator.desk.counted import counted
from calibrator.desk.parts import button, card, label, row
from calibrator.desk.plain_text import LONGEST_TEXT, on_screen
from calibrator.desk.speech import decimal_comma
from calibrator.desk.theme import SPACE
from calibrator.desk.trust_words import (
    MOST_TOLD,
    finding_words,
    moment,
    refused_words,
    stuck_words,
    waiting_words,
    watching_words,
    what_to_do,
)
from calibrator.desk.widgets.card_columns import card_columns
from calibrator.model.underway import Underway
from calibrator.records import Backup, Finding, Imported, Records, RecordsError, import_season
from calibrator.records.about import About, about
from calibrator.records.exporting import export_file
from calibrator.records.flat import everything
from calibrator.records.table_file import CsvStyle, write_texts
from calibrator.records.workbook import write_workbook

if TYPE_CHECKING:
    from calibrator.desk.server.dialog import ServerDialog
    from calibrator.records.outbox import Outbox, Refused

COPIES_HIGH = 190
LONGEST_VERDICT = 40_000  # a season of findings, each with its lot, day and copies


class RecordsForm(QWidget):
    """A tab of the set-up. Putting a copy back is asked of the door, which closes and opens the records."""

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self.desk = desk
        self.place = label("")
        self.waits = label("", "caution")
        self.stuck = label("")
        self.aside_button = button(self.tr("Set this entry aside"), self.set_aside)
        self.save_waiting_button = button(self.tr("Save what waits to a file"), self.save_waiting)
        self.refused = QListWidget()
        self.refused.setAccessibleName(self.tr("Entries that the server did not take"))
        self.refused.setFixedHeight(COPIES_HIGH)
        self.refused.setWordWrap(True)
        self.refused.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self._listed: Sequence[Refused] = ()
        self.seen_button = button(self.tr("Seen, take this one off"), self.take_off)
        self.all_seen_button = button(self.tr("Take all off"), self.take_all_off)
        self.save_refused_button = button(self.tr("Save these to a file"), self.save_refused)
        self.server_button = button(self.tr("Use a server …"), self.open_server)
        self.file_button = button(self.tr("Use the file on this computer"), self.use_file)
        self.copies = QListWidget()
        self.copies.setAccessibleName(self.tr("Copies of the records"))
        self.copies.setFixedHeight(COPIES_HIGH)
        self.copies.currentRowChanged.connect(self._chosen)
        self.put_back_button = button(self.tr("&Put this copy back"), self.put_back)
        self.no_copies = label("", "quiet")
        self.check_button = button(self.tr("Check now"), self.check)
        self.watching = label("", "quiet")
        self.verdict = label("", longest=LONGEST_VERDICT)
        self.verdict.hide()
        self.export_button = button(self.tr("Save everyth&ing to a file"), self.export)
        self.import_button = button(self.tr("Bring in such a file"), self.bring_in)
        self.workbook_button = button(self.tr("Save a workboo&k"), self.export_workbook)
        self.texts_button = button(self.tr("Save as CSV"), self.export_texts)
        self.table_button = button(self.tr("Bring in a spreadsheet …"), self.bring_in_table)
        self._lay_out()

    def reload(self) -> None:
        """Show the copies as they are now."""
        self.place.setText(self.desk.records.url)
        self.watching.setText(watching_words(self.desk.records.watched_since()))
        chosen = self.copies.currentRow()
        self.copies.clear()
        for copy in reversed(self.desk.records.backups()):
            item = QListWidgetItem(self._copy_words(copy))
            item.setData(Qt.ItemDataRole.UserRole, copy)
            self.copies.addItem(item)
        self.copies.setCurrentRow(min(chosen, self.copies.count() - 1))
        there = self.copies.count() > 0
        self.copies.setVisible(there)
        on_server = self.desk.records.on_server
        self._copies_card.setVisible(not on_server)
        self.server_button.setVisible(not self.desk.throw_away and not self.desk.records.read_only)
        self.server_button.setText(self.tr("Use another server …") if on_server else self.tr("Use a server …"))
        self.file_button.setVisible(on_server)
        self._about_server.setVisible(on_server)
        self.waits.setText(waiting_words(self.desk.outbox))
        self.waits.setVisible(bool(self.waits.text()))
        self.save_waiting_button.setVisible(bool(self.waits.text()))
        self._tell_stuck()
        self._list_refused()
        self.no_copies.setText("" if there else self.tr("There is no copy yet; one is made each day."))
        self.no_copies.setVisible(not there)
        self._chosen()
        for importing in (self.import_button, self.table_button):
            importing.setEnabled(not self.desk.records.read_only)

    def take_off(self) -> None:
        """The chosen one of the refused entries was read; the next one comes up."""
        self._dismiss(self._listed[self.refused.currentRow() :][:1])

    def take_all_off(self) -> None:
        """All that is listed of the refused entries was read; the rest of them comes up."""
        self._dismiss(self._listed)

    def set_aside(self) -> None:
        """The entry that holds up all others goes to the refused ones, and the others are sent."""
        outbox = self.desk.outbox
        if outbox is not None and self.desk.attempt(partial(_set_aside, outbox)):
            self.desk.send(partial(self.desk.say, self.tr("What waited was sent.")))

    def save_refused(self) -> None:
        """Write what the server did not take to a file of the documented kind."""
        outbox = self.desk.outbox
        if outbox is not None:
            named = self.tr("entries not taken")
            self._save_entries(named, partial(self._save, outbox.save_refused, self.save_refused))

    def save_waiting(self) -> None:
        """Write what waits for the server to a file of the documented kind; it waits on."""
        outbox = self.desk.outbox
        if outbox is not None:
            named = self.tr("entries that wait")
            self._save_entries(named, partial(self._save, outbox.save_waiting, self.save_waiting))

    def _save_entries(self, named: str, write: Callable[[Path], None]) -> None:
        parts = (named, self.desk.clock().date().isoformat())
        self.desk.save_as(self.tr("Save entries"), parts, self.tr("Records (*.json)"), ".json", write)

    def _save(self, write: Callable[[Path], None], again: Callable[[], None], path: Path) -> None:
        self.desk.work(self.tr("Saving entries"), partial(_save_to, write, path), partial(self._saved, path), again)

    def _dismiss(self, seen: Sequence[Refused]) -> None:
        outbox = self.desk.outbox
        if outbox is not None and seen:
            self.desk.attempt(partial(outbox.dismiss, seen))

    def _tell_stuck(self) -> None:
        outbox = self.desk.outbox
        stuck = outbox.stuck if outbox is not None else None
        if outbox is not None and stuck is not None:
            self.stuck.setText(stuck_words(stuck, self._about([stuck])[0]))
        for part in (self.stuck, self.aside_button):
            part.setVisible(stuck is not None)

    def _about(self, changes: Sequence[Refused]) -> list[About]:
        """What they are about; the records may be out of reach."""
        entries = [one.entry for one in changes]
        waiting = self.desk.outbox.entries() if self.desk.outbox is not None else []
        try:
            return about(self.desk.records, entries, waiting)
        except RecordsError:
            return [About() for _ in entries]

    def _list_refused(self) -> None:
        outbox = self.desk.outbox
        self._listed = outbox.list_refused()[:MOST_TOLD] if outbox is not None and outbox.refused else ()
        if outbox is not None and self._listed:
            self._how_many.setText(counted.refused_here(outbox.refused))
            chosen = self.refused.currentRow()
            self.refused.clear()
            for one, what in zip(self._listed, self._about(self._listed), strict=True):
                self.refused.addItem(on_screen(refused_words(one, what), LONGEST_TEXT))
            self.refused.setCurrentRow(max(0, min(chosen, len(self._listed) - 1)))
        self.all_seen_button.setVisible(len(self._listed) > 1)
        self._refused_card.setVisible(bool(self._listed))

    def open_server(self) -> ServerDialog:
        """Name a server whose records are used from now on."""
        from calibrator.desk.server.dialog import ServerDialog  # brings what is about servers

        records = self.desk.records
        dialog = ServerDialog(self.desk.settings.now.server, None if records.on_server else records, self.window())
        dialog.chosen.connect(self.desk.go_over)
        dialog.open()
        return dialog

    def use_file(self) -> None:
        """Go back to the file on this computer, after a word on what is in it."""
        question = self.tr(
            "The file on this computer holds what was there before the server was used; nothing is copied back. To "
            "take all along, first save everything to a file, and bring that in afterwards. Use the file from now on?"
        )
        self.desk.ask.confirm(question, self.tr("Use the file"), self._use_file)

    def put_back(self) -> None:
        """Ask once more, then have the records put back as they were."""
        copy = self._copy()
        if copy is None:
            return
        question = self.tr(
            "Put back the records as they were on {day}? What is there now is set aside and kept, and the program "
            "goes on with the copy. What was entered after that moment must be entered again."
        )
        ask = self.desk.ask
        ask.confirm(question.format(day=moment(copy.at)), self.tr("Put it back"), partial(self._put_back, copy))

    def check(self) -> None:
        """Look through the signed-off weigh-ins and say what is found."""
        self.desk.work(self.tr("Looking through the sign-offs"), self.desk.records.check_fingerprints, self._tell_found)

    def _tell_found(self, found: tuple[Finding, ...]) -> None:
        self.verdict.show()
        if not found:
            self.verdict.setText(self.tr("All signed-off weigh-ins are as they were signed."))
            return
        self.verdict.setText("\n\n".join([*map(finding_words, found), what_to_do(found)]))

    def export(self) -> None:
        """Write all records to one file of the documented kind."""
        self._save_as(self.tr("Save everything"), self.tr("Records (*.json)"), ".json", self._export)

    def export_workbook(self) -> None:
        """Write all records as the sheets of a workbook."""
        self._save_as(self.tr("Save a workbook"), self.tr("Workbooks (*.xlsx)"), ".xlsx", self._export_workbook)

    def export_texts(self) -> None:
        """Write all records as CSV, a text for each kind, in one ZIP."""
        self._save_as(self.tr("Save as CSV"), self.tr("ZIP (*.zip)"), ".zip", self._export_texts)

    def _save_as(self, title: str, kinds: str, ending: str, write: Callable[[Path], None]) -> None:
        """All farms are in it, so none is in its name."""
        parts = (self.tr("records"), self.desk.clock().date().isoformat())
        self.desk.save_as(title, parts, kinds, ending, write)

    def bring_in_table(self) -> None:
        """Ask for a spreadsheet of lots or weighings."""
        if self.desk.farm is None:
            self.desk.ask.tell(self.tr("Enter the farm first."))
            return
        kinds = self.tr("Tables (*.xlsx *.xlsm *.csv *.txt *.tsv);;All files (*)")
        self.desk.ask.open_path(self.tr("Bring in a spreadsheet"), kinds, self._bring_in_table)

    def _bring_in_table(self, path: Path) -> None:
        from calibrator.desk.bring_in.dialog import read_file  # only who brings something in waits for it

        read_file(self.desk, path, self.window())

    def bring_in(self) -> None:
        """Bring in a file that was saved so, all of it or nothing."""
        self.desk.ask.open_path(self.tr("Bring in records"), self.tr("Records (*.json)"), self._bring_in)

    def _use_file(self) -> None:
        self.desk.go_over.emit("")

    def _put_back(self, copy: Backup) -> None:
        self.desk.put_back.emit(copy)

    def _export(self, path: Path) -> None:
        self.desk.work(
            self.tr("Saving everything"),
            partial(export_file, self.desk.records, path),
            partial(self._saved, path),
            self.export,
        )

    def _export_workbook(self, path: Path) -> None:
        records = self.desk.records
        write, then = partial(_written, records, path), partial(self._saved, path)
        self.desk.work(self.tr("Saving a workbook"), write, then, self.export_workbook)

    def _saved(self, path: Path, _none: None) -> None:
        self.desk.say_saved(self.tr("Saved as {file}.").format(file=path.name), path)

    def _export_texts(self, path: Path) -> None:
        records = self.desk.records
        write, then = partial(_zipped, records, path), partial(self._saved, path)
        self.desk.work(self.tr("Saving as CSV"), write, then, self.export_texts)

    def _bring_in(self, path: Path) -> None:
        records = self.desk.records
        self.desk.work(
            self.tr("Bringing in {file}").format(file=path.name),
            partial(import_season, records, path),
            self._tell_brought,
        )

    def _tell_brought(self, brought: Imported) -> None:
        self.desk.ask.tell(_brought_words(brought))

    def _chosen(self) -> None:
        self.put_back_button.setEnabled(self._copy() is not None and not self.desk.records.read_only)

    def _copy(self) -> Backup | None:
        item = self.copies.currentItem()
        return item.data(Qt.ItemDataRole.UserRole) if item else None

    def _copy_words(self, copy: Backup) -> str:
        if copy.why == "daily":
            return self.tr("{day}, the day's copy").format(day=moment(copy.at))
        return self.tr("{day}, before a change of layout").format(day=moment(copy.at))

    def _lay_out(self) -> None:
        rule = self.tr(
            "A copy is made each day and before each change of layout, and looked through once it is written. All of "
            "the last two weeks are kept, then one of each week for three months, then one of each month; never "
            "fewer than the newest fourteen."
        )
        all_of_it = self.tr(
            "All that was ever kept, with who and when: as a file to take to another computer, or as a workbook or CSV "
            "to look at."
        )
        of_your_own = self.tr(
            "Lots and weighings as you noted them so far, from a workbook (.xlsx) or CSV. You see what it comes to "
            "before anything is added."
        )
        self._copies_card = card(
            label(self.tr("Copies"), "heading"),
            label(rule, "quiet"),
            self.copies,
            self.no_copies,
            row(self.put_back_button, None),
        )
        self._about_server = label(
            self.tr(
                "Several computers work on these. Copies of them are made on the server: ask whoever looks after it. "
                "While it is away, weigh-ins go on and are sent later."
            ),
            "quiet",
        )
        self._how_many = label("", "caution")
        self._refused_card = card(
            label(self.tr("Not taken by the server"), "heading"),
            self._how_many,
            self.refused,
            row(self.seen_button, self.all_seen_button, self.save_refused_button, None),
        )
        cards = (
            card(
                label(self.tr("Where the records are"), "heading"),
                self.place,
                self._about_server,
                self.waits,
                self.stuck,
                row(self.aside_button, self.save_waiting_button, None),
                row(self.server_button, self.file_button, None),
            ),
            self._refused_card,
            self._copies_card,
            card(
                label(self.tr("As they were signed"), "heading"),
                self.watching,
                self.verdict,
                row(self.check_button, None),
            ),
            card(
                label(self.tr("Everything in one file"), "heading"),
                label(all_of_it, "quiet"),
                row(self.export_button, self.import_button, None),
                row(self.workbook_button, self.texts_button, None),
            ),
            card(
                label(self.tr("From a spreadsheet of your own"), "heading"),
                label(of_your_own, "quiet"),
                row(self.table_button, None),
            ),
        )
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, int(1.5 * SPACE), 0, 0)
        layout.addWidget(card_columns(cards[:4], cards[4:]))


def _set_aside(outbox: Outbox) -> bool:
    outbox.set_aside_stuck()
    return True


def _save_to(write: Callable[[Path], None], path: Path, _underway: Underway) -> None:
    write(path)


def _written(records: Records, path: Path, underway: Underway) -> None:
    write_workbook(everything(records, underway), path, underway)


def _zipped(records: Records, path: Path, underway: Underway) -> None:
    write_texts(everything(records, underway), path, CsvStyle(decimal_comma=decimal_comma()))


def _brought_words(brought: Imported) -> str:
    told = [counted.entries_added(brought.added)]
    if brought.there:
        told.append(counted.entries_there(brought.there))
    for name in brought.stayed:
        stayed = QCoreApplication.translate(
            "RecordsForm",
            "The settings of the farm {farm} were changed here and in the file; those of this computer stay. Compare "
            "them with those of the other computer.",
        )
        told.append(stayed.format(farm=name))
    return " ".join(told)
