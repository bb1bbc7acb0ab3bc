"""The window: a rail of pages at the left, with passing notices in its gap, the page in hand at the right."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from importlib import import_module
from pathlib import Path
from typing import cast

from PySide6.QtCore import QEvent, QMargins, QPoint, QRect, QSize, Qt, QTimer
from PySide6.QtGui import QCloseEvent, QKeyEvent, QKeySequence, QResizeEvent, QShortcut
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractItemView,
    QApplication,
    QComboBox,
    QDialog,
    QHBoxLayout,
    QLineEdit,
    QMainWindow,
    QScrollArea,
    QStackedWidget,
    QStyle,
    QTextBrowser,
    QWidget,
)

from calibrator.desk import busy
from calibrator.desk.background import Background
from calibrator.desk.context import Desk
from calibrator.desk.counted import counted
from calibrator.desk.notice import Notice
from calibrator.desk.page import Page
from calibrator.desk.parts import column, label, scrolled
from calibrator.desk.rail import RAIL_PX, Rail
from calibrator.desk.refusals import in_words
from calibrator.desk.standing import first_step
from calibrator.desk.theme import SPACE, the_theme
from calibrator.desk.trust_words import hindered_words, moment, waiting_words
from calibrator.desk.watch import Watch
from calibrator.desk.widgets.fitting import FRAME
from calibrator.model import Farm
from calibrator.model.underway import Underway, unwatched
from calibrator.records import RecordsError, RecordsUnreachable

# A page is imported when it is first opened, so that the first one is up at once.
PAGES = {
    "today": "calibrator.desk.pages.today:TodayPage",
    "lots": "calibrator.desk.pages.lots:LotsPage",
    "weigh_in": "calibrator.desk.pages.weigh_in:WeighInPage",
    "tables": "calibrator.desk.pages.tables:TablesPage",
    "mix_check": "calibrator.desk.pages.mix_check:MixCheckPage",
    "season": "calibrator.desk.pages.season:SeasonPage",
    "setup": "calibrator.desk.pages.setup:SetupPage",
    "help": "calibrator.desk.pages.help:HelpPage",
    "welcome": "calibrator.desk.pages.welcome:WelcomePage",
}
WITH_PICTURES = "season"  # shows the first at once; all others when they are asked for
COMPARISON = "calibrator.desk.pages.farms_compared"
LEAST = QSize(1024, 700)  # what every page is laid out for
LEAST_WHOLE = QSize(1016, 670)  # what is left of that by a window's frame and the bar of a desktop: nothing scrolls yet
LEAST_SEEN = QSize(900, 480)  # a screen of large letters: there the page scrolls as a whole


def least_size(available: QSize) -> QSize:
    """The smallest size of the window: what the pages are laid out for, unless the screen is smaller than that."""
    free = available - FRAME
    seen = free.width() >= LEAST_SEEN.width() and free.height() >= LEAST_SEEN.height()
    return LEAST.boundedTo(free) if seen else LEAST


def within(wanted: QSize, available: QSize, least: QSize) -> QSize:
    """The size of a window that with its frame fits what the screen leaves free; as wanted where nothing would."""
    free = available - FRAME
    fits = free.width() >= least.width() and free.height() >= least.height()
    return wanted.boundedTo(free) if fits else wanted


def load_page(key: str, _underway: Underway = unwatched) -> None:
    """Load what a page is built of; by any thread."""
    import_module(_named(key)[0])
    if key == WITH_PICTURES:
        import_module("pyqtgraph")


def _named(key: str) -> tuple[str, str]:
    module, name = PAGES[key].split(":")
    return module, name


class _Whole(QWidget):
    """The pages, never smaller than they are laid out for; how high one would like to be is no matter of the window.

    What stands above takes its height from the page, which scrolls within, as far as that can be so low.
    """

    def __init__(self, pages: QStackedWidget) -> None:
        super().__init__()
        self._pages = pages
        self._above = 0
        pages.setParent(self)

    def give_way(self, height: int) -> None:
        """Leave so much of the window's height to what stands above."""
        self._above = height
        self.updateGeometry()

    def minimumSizeHint(self) -> QSize:
        least = LEAST_WHOLE - QSize(RAIL_PX, 0)
        page = self._pages.currentWidget()
        if not self._above or page is None:
            return least
        # Where the page has to scroll as a whole after all, it should not for its scroll bar scroll sideways too.
        bar = self.style().pixelMetric(QStyle.PixelMetric.PM_ScrollBarExtent)
        lower = max(least.height() - self._above, page.minimumSizeHint().height())
        return QSize(least.width() - bar, min(least.height(), lower))

    def event(self, event: QEvent) -> bool:
        if event.type() == QEvent.Type.LayoutRequest:
            self.updateGeometry()
        return super().event(event)

    def resizeEvent(self, event: QResizeEvent) -> None:
        self._pages.resize(event.size())


class Window(QMainWindow):
    """Shows one page at a time and looks after what other computers have kept meanwhile."""

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self.desk = desk
        self._theme = the_theme()
        self._theme.dress(self)
        self.setWindowTitle(self.tr("Scoop calibration"))
        self.setMinimumSize(least_size(self.screen().availableSize()))
        wanted = QSize(desk.settings.now.window_width, desk.settings.now.window_height)
        self.resize(within(wanted, self.screen().availableSize(), self.minimumSize()))
        self._pages: dict[str, Page] = {}
        self._read: dict[str, object] = {}  # as of when each page shows the records
        self._help_from = ""  # the page that was in hand before the help
        self._closing = False
        self._loading: tuple[str, str] | None = None  # page and thing
        self._loader = Background(self)
        self._loader.done.connect(self._loaded)
        self._loader.failed.connect(self._not_loaded)
        self._stack = QStackedWidget()
        self.rail = Rail(desk, self)
        self.rail.wanted.connect(self.show_page)
        self.rail.farms.wanted.connect(self.show_farm)
        self.rail.farms.comparing.connect(self._compare_farms)
        middle = QWidget()
        layout = QHBoxLayout(middle)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(0)
        layout.addWidget(self.rail)
        self._away = label("", "caution")
        self._away.hide()
        self._refused = label("", "caution")
        self._refused.hide()
        self._whole = _Whole(self._stack)
        whole = scrolled(self._whole)
        whole.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAsNeeded)
        right = column(self._refused, self._away, whole, spacing=0)
        right.setStretchFactor(whole, 1)
        layout.addLayout(right, 1)
        self.setCentralWidget(middle)
        self._notice = Notice(self)
        self._notice.not_opened.connect(self._say_not_opened)
        self._name_farm()
        self.watch = Watch(desk, self)
        self.watch.looked.connect(self._looked)
        desk.go_to.connect(self.show_page)
        desk.changed.connect(self._reload)
        desk.said.connect(self._say)
        desk.saved.connect(self._say)
        desk.done.connect(self._say_with_way)
        QShortcut(QKeySequence(QKeySequence.StandardKey.HelpContents), self, self._show_help)
        cast(QApplication, QApplication.instance()).focusChanged.connect(self._focus_moved)
        self._theme.changed.connect(self._repaint)
        self._show_away()
        self.show_page("welcome" if first_step(desk.records, desk.farm) else "today", "")
        self._into_page()

    def show_page(self, key: str, thing_id: str = "") -> None:
        """Bring up a page, unless the one in hand asks to stay. What it is built of is loaded beside the window."""
        self._stop_loading()  # whoever goes elsewhere meanwhile wants that page no more
        if key in self._pages or not self.isVisible():
            self._bring_up(self.page(key), thing_id)
        else:
            self._load(key, thing_id)

    def _show_help(self) -> None:
        """F1: the help opens where it tells of what is in hand."""
        if self.current_page.key != "help":
            self.rail.by_key = True
            self.show_page("help", self.current_page.help_title())

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Escape goes back from the help to where one was: to the same page, as it was left, and the field there.
        Elsewhere it closes the notice."""
        if event.key() == Qt.Key.Key_Escape and self.current_page.key == "help" and self._help_from:
            self.rail.by_key = True
            self._bring_up(self.page(self._help_from), None)
        elif event.key() != Qt.Key.Key_Escape or not self._notice.dismiss():
            super().keyPressEvent(event)

    def _bring_up(self, page: Page, thing_id: str | None) -> None:
        """Without a thing, not even a blank one, the page is as it was left."""
        here = self._stack.currentWidget()
        if isinstance(here, Page) and here is not page and not here.leave():
            self.rail.light(here.key)
            return
        if here is not page:
            self._notice.leave_page()
        before = here.key if isinstance(here, Page) and here is not page else ""
        if thing_id is not None:
            page.came_from = before
        if page.key == "help":
            self._help_from = before or self._help_from
        left = page.focusWidget()
        self._stack.setCurrentWidget(page)
        by_chance = page.focusWidget() if left is None else None  # Qt gives the keys to whatever it finds first
        if by_chance is not None:
            by_chance.clearFocus()
        self.rail.setVisible(page.key != "welcome")
        self.rail.light(page.key)
        try:
            self._bring_up_to_date(page)
            if thing_id is not None:
                page.open(thing_id)
        except RecordsUnreachable as error:
            if self.desk.outbox is None:
                raise
            self._say(in_words(error))
        if self.rail.by_key or by_chance is not None:
            # Afterwards: what the page has just made takes no focus before.
            QTimer.singleShot(0, self, partial(self._into_page, as_left=thing_id is None))

    def _into_page(self, *, as_left: bool = False) -> None:
        """The keys go on with the first thing on the page, unless the page has taken them to another one; on a page
        `as_left` they are where they were."""
        there, page = self.focusWidget(), self.current_page
        inside = there is page or (there is not None and page.isAncestorOf(there))
        left = page.focusWidget() if as_left and not inside else None
        if left is not None and left.isVisible() and left.isEnabled():
            left.setFocus(Qt.FocusReason.OtherFocusReason)
            return
        if there is None or not inside or there.focusPolicy() == Qt.FocusPolicy.NoFocus:
            self.rail.farms.setFocus(Qt.FocusReason.OtherFocusReason)
            self.focusNextChild()
            while (there := self.focusWidget()) is not None and self._notice.isAncestorOf(there):
                self.focusNextChild()

    def _focus_moved(self) -> None:
        if not QApplication.mouseButtons():  # a click has found its place, and must not have it moved away
            QTimer.singleShot(0, self, self._bring_into_view)  # what was just opened has no place before
        if self._notice.isVisible() and self._notice.geometry().intersects(self._focus_place()):
            self._place_notice()

    def _bring_into_view(self) -> None:
        """What the keys are at is seen: Tab goes round from the last to the first, Enter into what was folded up."""
        there = QApplication.focusWidget()
        above = there.parentWidget() if there is not None and self.isAncestorOf(there) else None
        while there is not None and above is not None and above is not self:
            if isinstance(above, QScrollArea):
                above.ensureWidgetVisible(there, SPACE, 6 * SPACE)
            above = above.parentWidget()

    def _load(self, key: str, thing_id: str) -> None:
        """A page that is not made yet takes a moment: its button lights up and a word stands there meanwhile."""
        self._loading = (key, thing_id)
        self.rail.light(key)
        self._notice.begin(self.tr("Opening …"))
        self._show_notice()
        self.repaint()
        self._loader.start(partial(load_page, key), patience_s=busy.PATIENCE_S)

    def _stop_loading(self) -> None:
        self._loader.stop()
        if self._loading is not None:
            self._loading = None
            if self._notice.end():
                self._show_notice()

    def _loaded(self) -> None:
        assert self._loading is not None
        key, thing_id = self._loading
        page = self.page(key)
        self._stop_loading()
        self._bring_up(page, thing_id)

    def _not_loaded(self, error: Exception) -> None:
        self._stop_loading()
        self.rail.light(self.current_page.key)
        raise error

    def show_farm(self, farm_id: str) -> None:
        """Bring up another farm. Every page is made anew, so that nothing of one farm shows on the other's."""
        here = self.desk.farm
        if (here is not None and here.id == farm_id) or not self._may_leave_farm(farm_id):
            return
        for page in self._pages.values():
            self._stack.removeWidget(page)
            page.deleteLater()
        self._pages.clear()
        self.desk.show_farm(farm_id)
        self.show_page("welcome" if first_step(self.desk.records, self.desk.farm) else "today")

    def _may_leave_farm(self, farm_id: str) -> bool:
        """Whether the records can be read and nothing typed would be lost or land on the other farm."""
        try:
            self.desk.records.find(Farm, farm_id)
        except RecordsError as error:
            self.desk.ask.tell(in_words(error))
            return False
        if pending := self._lead_to_typed():
            text = self.tr("Not kept yet: “{text}”. Keep it or put it back, then go to another farm.")
            self.desk.ask.tell(text.format(text=pending))
            return False
        return self.current_page.leave()

    def _bring_up_to_date(self, page: Page) -> None:
        """Read the records anew, unless nothing can have changed since this page read them."""
        desk = self.desk
        hour = desk.clock().replace(minute=0, second=0, microsecond=0)
        as_of = (desk.records.version(), desk.waiting, desk.farm, desk.settings.now, hour)
        if self._read.get(page.key) != as_of:
            self._read.pop(page.key, None)
            page.reload()
            self._read[page.key] = as_of

    def page(self, key: str) -> Page:
        """The page of that key, made when first asked for."""
        if key not in self._pages:
            module, name = _named(key)
            made = cast(Page, getattr(import_module(module), name)(self.desk, self._stack))
            made.key = key
            self._pages[key] = made
            self._stack.addWidget(made)
        return self._pages[key]

    def has_page(self, key: str) -> bool:
        """Whether that page is made already."""
        return key in self._pages

    def read_ahead(self, key: str) -> None:
        """Have a page show the records, out of sight."""
        page = self.page(key)
        if page is not self._stack.currentWidget():
            self._bring_up_to_date(page)

    def paint_ahead(self, key: str) -> None:
        """Have a page paint itself once, out of sight."""
        page = self.page(key)
        if page is not self._stack.currentWidget():
            page.resize(self._stack.size())
            page.grab()

    @property
    def current_page(self) -> Page:
        return cast(Page, self._stack.currentWidget())

    def typed(self) -> str:
        """What is typed on any page and not entered yet; blank where nothing would be lost."""
        page = self._typed_on()
        return page.pending() if page is not None else ""

    def _typed_on(self) -> Page | None:
        return next((page for page in self._pages.values() if page.pending()), None)

    def _lead_to_typed(self) -> str:
        """Bring up what is typed and not entered, its field ready to go on in; blank where nothing is."""
        page = self._typed_on()
        if page is None:
            return ""
        if page is not self.current_page:
            self._bring_up(page, None)
        at = page.typed_at()
        (at.focusWidget() or at).setFocus(Qt.FocusReason.OtherFocusReason)
        return page.pending()

    def closeEvent(self, event: QCloseEvent) -> None:
        if not self._closing:  # a window that gives way to another has nothing underway of its own
            self.desk.busy.end()
        pending = "" if self._closing else self._lead_to_typed()  # so that it is seen what would be lost
        if pending:
            question = self.tr("Not kept yet: “{text}”. Close without it?")
            self.desk.ask.confirm(question.format(text=pending), self.tr("Close without it"), self._close_anyway)
        if (pending and not self._closing) or not self.current_page.leave():
            event.ignore()
            return
        self._stop_loading()
        if self.watch.timer.isActive():
            self.watch.stop()
            self.desk.settings.keep(window_width=self.width(), window_height=self.height())
            self._theme.changed.disconnect(self._repaint)
        event.accept()

    def replace_by_another(self) -> None:
        """Go without asking: the same desk is shown in another window."""
        self.desk.go_to.disconnect(self.show_page)
        self.desk.changed.disconnect(self._reload)
        self.desk.said.disconnect(self._say)
        self.desk.saved.disconnect(self._say)
        self.desk.done.disconnect(self._say_with_way)
        self._close_anyway()
        self.deleteLater()

    def _close_anyway(self) -> None:
        self._closing = True
        self.close()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._make_way()
        if not self._notice.isHidden():  # else it is placed as it comes
            self._place_notice()

    def _reload(self) -> None:
        self._show_away()
        try:
            if not self.desk.waiting:
                self.watch.take(self.desk.records.version())
            self._name_farm()
            self._read.clear()
            if isinstance(self._stack.currentWidget(), Page):
                self._bring_up_to_date(self.current_page)
        except RecordsUnreachable as error:
            if self.desk.outbox is None:
                raise
            self._say(in_words(error))

    def _show_away(self) -> None:
        """Say that the server is away, what waits for it and why, and that something was refused."""
        outbox, waiting = self.desk.outbox, self.desk.waiting
        since = outbox.since if outbox is not None and waiting else None
        told = counted.kept_here(waiting).format(since=moment(since)) if since else ""
        if told and self.watch.hindrance is not None:
            told = f"{waiting_words(outbox)} {hindered_words(self.watch.hindrance, outbox)}"
        if not told and self.watch.alone:
            told = self.tr(
                "The server cannot be reached. You see what this computer last read of it; weighings and checks of the "
                "mix wait here and are sent when it is back."
            )
        self._away.setText(told)
        self._away.setVisible(bool(told))
        refused = outbox.refused if outbox is not None else 0
        self._refused.setText(counted.not_taken(refused) if refused else "")
        self._refused.setVisible(bool(refused))
        self._make_way()

    def _make_way(self) -> None:
        """What is said above the page takes its height from the page."""
        width = self.width() - (0 if self.rail.isHidden() else RAIL_PX)
        above = [part for part in (self._refused, self._away) if not part.isHidden()]
        self._whole.give_way(sum(part.heightForWidth(width) for part in above))

    def _name_farm(self) -> None:
        farm = self.desk.farm
        self.rail.name_farm(farm.name if farm else "")

    def _compare_farms(self) -> None:
        """How one product weighs on each farm, in a window of its own over this one."""
        made = cast(QDialog, import_module(COMPARISON).FarmsDialog(self.desk, self))
        made.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        made.open()

    def _repaint(self) -> None:
        """Pages that paint for themselves take up the colours now in force."""
        self.rail.draw_anew()
        self._read.clear()
        self._bring_up_to_date(self.current_page)

    def _looked(self, error: RecordsError | None) -> None:
        self._show_away()
        told_above = isinstance(error, RecordsUnreachable) or error is self.watch.hindrance
        if error is not None and not (told_above and self._away.isVisibleTo(self)):
            self._say(in_words(error))

    def _say(self, text: str, file: Path | None = None) -> None:
        self._notice.say(text, file)
        self._show_notice()

    def _say_with_way(self, text: str, way: str, act: Callable[[], None]) -> None:
        self._notice.say(text, way=(way, act))
        self._show_notice()

    def _show_notice(self) -> None:
        self._place_notice()
        self._notice.show()
        self._notice.raise_()

    def _say_not_opened(self, place: Path) -> None:
        told = self.tr("No program on this computer opens it. It is here: {place}")
        self.desk.ask.tell(told.format(place=place))

    def _place_notice(self) -> None:
        """In the gap of the rail, where it covers nothing; where there is no rail, at the foot."""
        gap, page = self.rail.gap(), self.rect().marginsRemoved(QMargins(SPACE, SPACE, SPACE, SPACE))
        if self.rail.isHidden():
            gap = page
        else:
            page.setLeft(self.rail.geometry().right() + 1 + SPACE)
        self._notice.place(gap, page, self._focus_place(), self._taken())

    def _taken(self) -> list[QRect]:
        """Where something on the page in hand takes typing or clicks."""
        kinds, page = (QAbstractButton, QLineEdit, QComboBox), self._stack.currentWidget()
        if page is None:  # between the pages of one farm and those of another
            return []
        every = (each for kind in kinds for each in page.findChildren(kind) if each.isVisible())
        seen = ((each, each.visibleRegion().boundingRect()) for each in every)
        return [QRect(each.mapTo(self, rect.topLeft()), rect.size()) for each, rect in seen if not rect.isEmpty()]

    def _focus_place(self) -> QRect:
        """Where the keys are; nowhere while the notice has them itself."""
        at = self.focusWidget()
        if at is None or self._notice.isAncestorOf(at) or isinstance(at, QScrollArea | QTextBrowser):  # read
            return QRect()
        if isinstance(at, QAbstractItemView):  # as large as the page may be, and the keys are in one row of it
            row, inside = at.visualRect(at.currentIndex()), at.viewport()
            return row if row.isEmpty() else QRect(inside.mapTo(self, QPoint(0, row.top())), row.size())
        return QRect(at.mapTo(self, QPoint(0, 0)), at.size())
