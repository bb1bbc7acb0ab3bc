"""What the robot does from beginning to end: a file brought in, a trial, a copy put back; by chance within each."""

from __future__ import annotations

from typing import TypeVar

from PySide6.QtCore import QCoreApplication, QItemSelectionModel, Qt
from PySide6.QtWidgets import QAbstractButton, QTableView
from shiboken6 import isValid

from calibrator.desk.bring_in.dialog import BringInDialog
from calibrator.desk.export_dialog import ExportDialog
from calibrator.desk.lot_history.dialog import LotHistoryDialog
from calibrator.desk.pages.help import HelpPage
from calibrator.desk.pages.lots import LotsPage
from calibrator.desk.pages.season import SeasonPage
from calibrator.desk.pages.setup import SetupPage
from calibrator.desk.pages.tables import TablesPage
from calibrator.desk.pages.today import TodayPage
from calibrator.desk.season.lots_panel import LotsPanel
from calibrator.desk.server.dialog import ServerDialog
from calibrator.desk.trial.dialog import TrialDialog
from tests.robot.hand import Hand, Job

DAYS = ("", "25 Nov 2026", "24 Nov 2026", "2 Nov 2026", "1 Jan 2031", "tomorrow")
NOBODY = (("127.0.0.1", "1"), ("/nowhere/at all", "5432"), ("two words", "5432"), ("", "70000"))
"""Where no server answers: a door that is shut, a socket that is not there, and what is no computer."""
P = TypeVar("P")
TAKES = QItemSelectionModel.SelectionFlag
MOST_FARMS = 3


def bring_in(hand: Hand) -> None:
    """A spreadsheet, good, faulty or none at all, through its three steps as far as they go."""
    hand.press(_setup(hand).records.table_button)
    dialog = hand.dialog(BringInDialog)
    for _ in range(hand.rng.randrange(4, 12)):
        if dialog is None or not isValid(dialog) or not dialog.isVisible():
            return
        if hand.rng.random() < 0.5:
            hand.press(dialog.next_button)
        elif hand.rng.random() < 0.5 and dialog.columns.isVisible():
            for box in (*dialog.columns.ways.values(), dialog.columns.way, *dialog.columns.scoops.values()):
                if isValid(box):
                    hand.choose(box)
            hand.put(dialog.columns.by.line, "AR", Qt.Key.Key_Tab)
        else:
            hand.fiddle(dialog, 1)


def records_in_and_out(hand: Hand) -> None:
    """Everything saved or brought in, and the sign-offs looked through."""
    form = _setup(hand).records
    buttons = (form.export_button, form.workbook_button, form.texts_button, form.import_button, form.check_button)
    hand.press(hand.rng.choice(buttons))


def put_back(hand: Hand) -> None:
    """A copy in place of the records: they are closed, and another window opens on it."""
    form = _setup(hand).records
    if form.copies.count():
        form.copies.setCurrentRow(hand.rng.randrange(form.copies.count()))
        hand.press(form.put_back_button)


def server(hand: Hand) -> None:
    """A server that does not answer, is no computer, or is not waited for."""
    hand.press(_setup(hand).records.server_button)
    dialog = hand.dialog(ServerDialog)
    if dialog is None:
        return
    computer, port = hand.rng.choice(NOBODY)
    for field, text in (
        (dialog.computer, computer),
        (dialog.port, port),
        (dialog.database, "farm"),
        (dialog.user, "x"),
    ):
        hand.put(field.line, text, Qt.Key.Key_Tab)
    hand.press(dialog.try_button)
    if hand.rng.random() < 0.2:
        hand.press(dialog.stop_button)
    elif hand.rng.random() < 0.8:
        hand.wait(lambda: not dialog._work.at_work, "an answer about the server")
        assert not dialog.use_button.isEnabled()
    hand.fiddle(dialog, hand.rng.randrange(3))


def history(hand: Hand) -> None:
    """All that was kept of a lot."""
    page = _page(hand, "lots", LotsPage)
    _take(hand, page.table, 1)
    hand.press(page.history_button)
    dialog = hand.dialog(LotHistoryDialog)
    if dialog is not None:
        hand.fiddle(dialog, 4)


def spot(hand: Hand) -> None:
    """A fill out of a bag just opened, now and then struck out."""
    card = _page(hand, "today", TodayPage).spot_card
    hand.put(card.by.line, "MK", Qt.Key.Key_Tab)
    hand.press(hand.rng.choice((card.level, card.to_mark)))
    hand.put(card.weight.line, f"{hand.rng.gauss(10, 0.2):.1f} oz", Qt.Key.Key_Return)
    if hand.rng.random() < 0.4:
        hand.press(card.strike_button)


def trial(hand: Hand) -> None:
    """A trial of feeders: fills typed, taken back, the trial ended, withdrawn and counted again, a note."""
    hand.press(_page(hand, "season", SeasonPage).doors.trial_button)
    dialog = hand.dialog(TrialDialog)
    if dialog is None:
        return
    hand.put(dialog.by.line, "MK", Qt.Key.Key_Tab)
    for _ in range(hand.rng.randrange(3, 9)):
        hand.put(dialog.person.line, hand.rng.choice(("AR", "LM", "Tom")), Qt.Key.Key_Tab)
        hand.put(dialog.weight.line, f"{hand.rng.gauss(10.2, 0.2):.1f} oz", Qt.Key.Key_Return)
    acts = (dialog.undo_button, dialog.strike_button, dialog.end_button, dialog.withdraw_button, dialog.new_button)
    for found in hand.rng.sample(acts, 3):
        if dialog.fills.count():
            dialog.fills.setCurrentRow(hand.rng.randrange(dialog.fills.count()))
        hand.press(found)
    hand.put(dialog.note.line, hand.rng.choice(("cold barn", "")), Qt.Key.Key_Return)
    hand.fiddle(dialog, 2)


def note(hand: Hand) -> None:
    """A word on a lot of the season."""
    page = _page(hand, "season", SeasonPage)
    page.tabs.setCurrentIndex(1)
    panel = page.panel
    if not isinstance(panel, LotsPanel):
        return
    _take(hand, panel.table, 1)
    hand.put(panel.note.line, hand.rng.choice(("wet bags", "fluffy", "")), Qt.Key.Key_Return)


def two_lots(hand: Hand) -> None:
    """Two lots of the season beside each other."""
    page = _page(hand, "season", SeasonPage)
    page.tabs.setCurrentIndex(1)
    panel = page.panel
    if isinstance(panel, LotsPanel):
        _take(hand, panel.table, 2)


def report(hand: Hand) -> None:
    """The season on paper."""
    hand.press(_page(hand, "season", SeasonPage).doors.report_button)


def figures(hand: Hand) -> None:
    """Every figure as tables."""
    hand.press(_page(hand, "season", SeasonPage).doors.figures_button)
    dialog = hand.dialog(ExportDialog)
    if dialog is not None:
        hand.press(hand.rng.choice((dialog.workbook, dialog.text)))
        hand.press(dialog.comma)
        hand.press(dialog.save_button)


def change_over(hand: Hand) -> None:
    """Another lot from a day on, where two are open; what is left of the old one."""
    bar = _page(hand, "tables", TablesPage).view.lot_bar
    hand.choose(bar.lots)
    hand.put(bar.day.line, hand.rng.choice(DAYS), Qt.Key.Key_Tab)
    hand.press(bar.change)
    hand.put(bar.left.line, hand.rng.choice(("12 lb", "0", "400 g", "")), Qt.Key.Key_Return)


def how(hand: Hand) -> None:
    """How a figure came about, or how the hands do it."""
    asked = (
        QCoreApplication.translate("How", "How is this computed?"), QCoreApplication.translate("Hands", "Show me how")
    )  # fmt: skip
    hand.window.show_page(hand.rng.choice(("today", "lots", "tables", "mix_check", "season", "weigh_in")))
    found = [one for one in hand.window.findChildren(QAbstractButton) if one.isVisible() and one.text() in asked]
    if found:
        hand.press(hand.rng.choice(found))


def read_help(hand: Hand) -> None:
    """The help and its manual, tab by tab."""
    page = _page(hand, "help", HelpPage)
    page.tabs.setCurrentIndex(hand.rng.randrange(page.tabs.count()))
    hand.fiddle(page, 1)


def farms(hand: Hand) -> None:
    """Another farm, mostly back to the first; a further one; all of them compared."""
    menu = hand.window.rail.farms
    menu.show_list()
    known = [action for action in menu.list.actions() if action.isCheckable()]
    others = [action for action in menu.list.actions() if not action.isCheckable() and not action.isSeparator()]
    if len(known) >= MOST_FARMS:
        del others[0]
    first = known[0] if known and hand.rng.random() < 0.7 else hand.rng.choice([*known, *others])
    first.trigger()


JOBS: tuple[tuple[Job, int], ...] = (
    (bring_in, 8), (records_in_and_out, 4), (put_back, 1), (server, 4), (history, 4), (spot, 8), (trial, 8), (note, 4),
    (two_lots, 4), (report, 4), (figures, 4), (change_over, 8), (how, 8), (read_help, 4), (farms, 2),
)  # fmt: skip


def _page(hand: Hand, key: str, kind: type[P]) -> P:
    hand.window.show_page(key)
    page = hand.window.page(key)
    assert isinstance(page, kind)
    return page


def _setup(hand: Hand) -> SetupPage:
    page = _page(hand, "setup", SetupPage)
    page.tabs.setCurrentIndex(page.tabs.count() - 1)
    return page


def _take(hand: Hand, table: QTableView, rows: int) -> None:
    """Choose so many rows, if there are so many."""
    model = table.model()
    if not table.isVisible() or model.rowCount() < rows:
        return
    first, *others = hand.rng.sample(range(model.rowCount()), rows)
    table.selectRow(first)
    for row in others:
        table.selectionModel().select(model.index(row, 0), TAKES.Select | TAKES.Rows)
