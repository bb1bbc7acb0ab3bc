"""Help: how it is done with the hands, what the words mean, the manual; a field finds a place in all three."""

from __future__ import annotations

from functools import partial

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import (
    QGridLayout,
    QListWidget,
    QListWidgetItem,
    QScrollArea,
    QStackedWidget,
    QVBoxLayout,
    QWidget,
)

from calibrator.desk.context import Desk
from calibrator.desk.help.glossary import glossary
from calibrator.desk.help.hands import all_of_them
from calibrator.desk.help.manual import Manual
from calibrator.desk.help.search import Topic, excerpt, found, near
from calibrator.desk.help.view import all_handiwork
from calibrator.desk.page import Page
from calibrator.desk.parts import label, read_by_keys, row, scrolled, without_letter
from calibrator.desk.theme import SPACE
from calibrator.desk.widgets.key_tabs import KeyTabs
from calibrator.desk.widgets.stray_keys import SteadyLine

HANDS, WORDS, MANUAL = range(3)
FIELD_PX, TERM_PX = 240, 200


class HelpPage(Page):
    """Pictures first: they are needed most, and with gloves on. While something is looked for, what was found."""

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(desk, self.tr("Help"), parent)
        self.finder = _Finder()
        self.finder.setFixedWidth(FIELD_PX)
        self.finder.setClearButtonEnabled(True)
        caption = label(self.tr("&Find"), wrap=False)
        caption.setBuddy(self.finder)
        self.finder.setAccessibleName(self.tr("Find in the help"))
        beside = QWidget()
        inside_beside = row(caption, self.finder)
        inside_beside.setContentsMargins(0, 0, 0, 0)
        beside.setLayout(inside_beside)
        self.beside_title(beside)
        self.tabs = KeyTabs()
        self.tabs.setAccessibleName(self.tr("Parts of the help"))
        self.tabs.tabBar().setAccessibleName(self.tabs.accessibleName())
        self._hands, self._words, self.manual = all_handiwork(all_of_them(), desk), _words(), Manual()
        for area, name in ((self._hands, self.tr("&How it is done")), (self._words, self.tr("&What the words mean"))):
            self.tabs.addTab(read_by_keys(area, without_letter(name)), name)
        self.tabs.addTab(self.manual, self.tr("&Manual"))
        self.results = QListWidget()
        self.results.setAccessibleName(self.tr("What was found"))
        self.results.setWordWrap(True)
        self.results.setSpacing(4)
        self.results.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.nothing = label("")
        seen = QWidget()
        inside = QVBoxLayout(seen)
        inside.setContentsMargins(0, 0, 0, 0)
        inside.addWidget(self.nothing)
        inside.addWidget(self.results, 1)
        inside.addStretch(0)
        self._stack = QStackedWidget()
        self._stack.addWidget(self.tabs)
        self._stack.addWidget(seen)
        self.body.addWidget(self._stack, 1)
        self._topics = self._all_topics()
        self._hits: list[Topic] = []
        self.finder.textChanged.connect(self._look)
        self.finder.returnPressed.connect(self._open_first)
        self.finder.down.connect(self._to_results)
        self.results.itemActivated.connect(self._open_item)
        self.results.itemClicked.connect(self._open_item)

    def open(self, thing_id: str) -> None:
        """The place of that title; else what was in view when the help was left."""
        topic = next((topic for topic in self._topics if topic.title == thing_id), None)
        if topic is not None:
            self._open(topic)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Escape first lets go of what is looked for; the window takes the next one."""
        if event.key() == Qt.Key.Key_Escape and self.finder.text():
            self.finder.clear()
            self.finder.setFocus(Qt.FocusReason.OtherFocusReason)
        else:
            super().keyPressEvent(event)

    def _all_topics(self) -> list[Topic]:
        hands = [
            Topic(HANDS, place, work.title, " ".join((*(move.words for move in work.moves), work.caution)))
            for place, work in enumerate(all_of_them())
        ]
        words = [Topic(WORDS, place, *told) for place, told in enumerate(glossary())]
        return hands + words + [Topic(MANUAL, *told) for told in self.manual.paragraphs()]

    def _look(self, asked: str) -> None:
        whole = found(self._topics, asked)
        self._hits = whole or near(self._topics, asked)
        self.results.clear()
        for topic in self._hits:
            part = without_letter(self.tabs.tabText(topic.tab))
            self.results.addItem(QListWidgetItem(f"{topic.title}  ·  {part}\n{excerpt(topic, asked)}"))
        self.results.setVisible(bool(self._hits))
        self.nothing.setText(
            self.tr("No place has all of these words. These have some of them:")
            if self._hits
            else self.tr("Nothing in the help has these words. Try others.")
        )
        self.nothing.setVisible(not whole)
        self._stack.setCurrentIndex(1 if asked.strip() else 0)

    def _to_results(self) -> None:
        if self._hits and self._stack.currentIndex() == 1:
            self.results.setCurrentRow(0)
            self.results.setFocus(Qt.FocusReason.OtherFocusReason)

    def _open_first(self) -> None:
        if self._hits:
            self._open(self._hits[0])

    def _open_item(self, item: QListWidgetItem) -> None:
        place = self.results.row(item)
        if 0 <= place < len(self._hits):
            self._open(self._hits[place])

    def _open(self, topic: Topic) -> None:
        self.finder.clear()
        self.tabs.setCurrentIndex(topic.tab)
        self._bring_up(topic)
        QTimer.singleShot(0, self, partial(self._bring_up, topic))  # a page new in view has its width by then
        self.tabs.currentWidget().setFocus(Qt.FocusReason.OtherFocusReason)

    def _bring_up(self, topic: Topic) -> None:
        if topic.tab == MANUAL:
            self.manual.bring_up(topic.place)
        else:
            _bring_up(self._hands if topic.tab == HANDS else self._words, topic)


class _Finder(SteadyLine):
    """Down goes on to what was found."""

    down = Signal()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Down:
            self.down.emit()
        else:
            super().keyPressEvent(event)


def _bring_up(area: QScrollArea, topic: Topic) -> None:
    """Scroll the topic to the top: for the last ones there is made room beneath, or nobody knew which is meant."""
    inner = area.widget()
    layout = inner.layout() if inner is not None else None
    if inner is None or layout is None:
        return
    layout.activate()
    item = layout.itemAtPosition(topic.place, 0) if isinstance(layout, QGridLayout) else layout.itemAt(topic.place)
    widget = item.widget() if item is not None else None
    if widget is None:
        return
    lacking = area.viewport().height() - (inner.height() - widget.y())
    if lacking > 0:
        edges = layout.contentsMargins()
        edges.setBottom(edges.bottom() + lacking)
        layout.setContentsMargins(edges)
        inner.resize(inner.width(), inner.height() + lacking)  # at once, or the scroll bar ends before it
    area.verticalScrollBar().setValue(widget.y())


def _words() -> QScrollArea:
    inner = QWidget()
    grid = QGridLayout(inner)
    grid.setContentsMargins(0, int(1.5 * SPACE), 0, 2 * SPACE)
    grid.setHorizontalSpacing(3 * SPACE)
    grid.setVerticalSpacing(int(1.5 * SPACE))
    grid.setColumnStretch(1, 1)
    words = glossary()
    for number, (word, meaning) in enumerate(words):
        term = label(word, "heading")
        term.setFixedWidth(TERM_PX)
        grid.addWidget(term, number, 0, Qt.AlignmentFlag.AlignTop)
        grid.addWidget(label(meaning), number, 1, Qt.AlignmentFlag.AlignTop)
    grid.setRowStretch(len(words), 1)
    return scrolled(inner)
