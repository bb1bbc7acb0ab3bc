"""One kind of thing: the list at the left, the form of the one chosen at the right, its history beneath."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace
from datetime import date
from typing import Any, Generic, TypeVar

from PySide6.QtCore import QSignalBlocker, Qt, Signal
from PySide6.QtGui import QFocusEvent
from PySide6.QtWidgets import QCheckBox, QHBoxLayout, QListWidget, QListWidgetItem, QSizePolicy, QVBoxLayout, QWidget

from calibrator.desk.context import Desk
from calibrator.desk.forms.form import Form
from calibrator.desk.forms.history import HistoryList
from calibrator.desk.parts import add_all, button, card, column, label, row, scrolled
from calibrator.desk.plain_text import on_screen
from calibrator.desk.theme import SPACE
from calibrator.model import Instrument, Scale, Scoop, Vessel
from calibrator.records import RecordsError
from calibrator.values import dataclass

T = TypeVar("T", Scale, Scoop, Vessel, Instrument)
WIDEST = 960  # a form is read down, not across a wide screen


@dataclass(frozen=True)
class Wording:
    """What a tab calls its things; `{name}` stands for the thing's name."""

    add: str
    new: str
    kept: str
    retire: str
    really_retire: str = ""
    why_retire: str = ""  # asked instead, where the reason is kept


class ThingsTab(QWidget, Generic[T]):
    """Add, correct, retire. Nothing is deleted: what is retired can be shown and taken back."""

    kept = Signal(str)
    """The id of what was just kept."""

    def __init__(
        self,
        desk: Desk,
        kind: type[T],
        form: Form[T],
        wording: Wording,
        about: Callable[[T], str],
        used: Callable[[T], str] = lambda _: "",
    ) -> None:
        """`used` tells what a thing is in use for, which whoever retires it has to know."""
        super().__init__()
        self.desk = desk
        self.kind: type[T] = kind
        self.form: Form[T] = form
        self._wording = wording
        self._about: Callable[[T], str] = about
        self._used: Callable[[T], str] = used
        self.list = _ThingList()
        self.list.setAccessibleName(self.tr("What is entered"))
        self.list.setMinimumWidth(200)
        self.list.setMaximumWidth(230)
        self.list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.list.setWordWrap(True)  # a long name is read whole
        self.list.setSpacing(4)
        self.list.currentItemChanged.connect(self._chosen)
        self.add_button = button(wording.add, self.start_new)
        self.show_retired = QCheckBox(self.tr("S&how retired"))
        self.show_retired.toggled.connect(self.reload)
        self.keep_button = button(self.tr("&Keep"), self.keep, "main")
        self.put_back_button = button(self.tr("P&ut back"), self.put_back)
        self.retire_button = button(wording.retire, self._retire)
        self._unkept = label("", "quiet")
        self._unkept.setMinimumHeight(2 * self._unkept.fontMetrics().lineSpacing())  # wraps where the foot is narrow
        self._heading = label("", "heading")
        self.history = HistoryList(desk)
        form.edited.connect(self._allow)
        form.ended.connect(self.keep)
        self._lay_out()
        self._show(None)

    def reload(self) -> None:
        """Read the things anew; a form with something typed in it stays as it is."""
        chosen = self.form.thing.id if self.form.thing else ""
        blocker = QSignalBlocker(self.list)
        self.list.clear()
        for thing in self._things():
            self.list.addItem(self._item(thing))
        blocker.unblock()
        self._mark_in_list(chosen)
        if not self.form.typed:
            self._show(self._found(chosen) or self._first())

    def open(self, thing_id: str) -> bool:
        """Show one thing, unless something typed waits to be kept; tells whether it is one of these."""
        thing = self._found(thing_id)
        if thing and not self.form.typed:
            self._show(thing)
            self._begin()
        return thing is not None

    def start_new(self) -> None:
        """An empty form for a new thing."""
        self._mark_in_list("")
        self._show(None)
        self._begin()

    def put_back(self) -> None:
        """Let what is typed go."""
        self._show(self.form.thing or self._first())

    def keep(self) -> None:
        """Keep what is typed as a new telling."""
        made = self.form.take()
        if made is None:
            return
        kept = self.desk.keep(made)
        if kept is not None:
            self._show(kept)
            self.reload()
            self.desk.say(self._wording.kept.format(name=kept.name))
            self.kept.emit(kept.id)

    def pending(self) -> str:
        """The name of what is typed and not kept yet; blank where all is kept."""
        return self._heading.text() if self.form.typed else ""

    def _lay_out(self) -> None:
        """From the outside in: each place that a full form is put in would dress all of it once more."""
        layout = QHBoxLayout(self)
        layout.setContentsMargins(0, int(1.5 * SPACE), 0, 0)
        layout.setSpacing(2 * SPACE)
        self.add_button.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        layout.addLayout(column(self.list, self.add_button, self.show_retired))
        wide = QWidget()
        wide.setMaximumWidth(WIDEST)
        layout.addWidget(wide, 100)
        layout.addStretch(1)
        right = QVBoxLayout(wide)
        right.setContentsMargins(0, 0, 0, 0)
        right.setSpacing(SPACE)
        inner, frame = QWidget(), card()
        self._area = scrolled(inner)
        right.addWidget(self._area)
        inside = QVBoxLayout(inner)
        inside.setContentsMargins(0, 0, 0, 0)
        inside.setSpacing(2 * SPACE)
        inside.addWidget(frame)
        within = frame.layout()
        assert within is not None
        within.addWidget(self._heading)
        within.addWidget(self.form)
        add_all(inside, (self.history, None))
        foot = row(self.keep_button, self.put_back_button, self._unkept, self.retire_button)
        foot.setStretch(2, 1)
        right.addLayout(foot)

    def _things(self) -> Sequence[T]:
        farm = self.desk.farm
        things = self.desk.records.every(self.kind, farm.id) if farm else []
        return [thing for thing in things if thing.retired_on is None or self.show_retired.isChecked()]

    def _item(self, thing: T) -> QListWidgetItem:
        about = self._about(thing)
        if thing.retired_on is not None:
            why = thing.retired_why if isinstance(thing, Scoop) else ""
            about = self.tr("retired: {why}").format(why=on_screen(why)) if why else self.tr("retired")
        item = QListWidgetItem(f"{on_screen(thing.name)}\n{about}")
        item.setData(Qt.ItemDataRole.UserRole, thing.id)
        return item

    def _chosen(self, item: QListWidgetItem | None) -> None:
        if item is not None:
            self._show(self._found(item.data(Qt.ItemDataRole.UserRole)))

    def _mark_in_list(self, thing_id: str) -> None:
        blocker = QSignalBlocker(self.list)
        rows = [r for r in range(self.list.count()) if self._id_at(r) == thing_id]
        self.list.setCurrentRow(rows[0] if rows else -1)
        blocker.unblock()

    def _id_at(self, place: int) -> str:
        return str(self.list.item(place).data(Qt.ItemDataRole.UserRole))

    def _show(self, thing: T | None) -> None:
        other = thing is None or self.form.thing is None or thing.id != self.form.thing.id
        self.form.load(thing)
        if other:
            self._to_top()
        self._heading.setText(thing.name if thing else self._wording.new)
        self.retire_button.setVisible(thing is not None)
        retired = thing is not None and thing.retired_on is not None
        self.retire_button.setText(self.tr("Take back &into use") if retired else self._wording.retire)
        self.history.show_of(self.kind, thing.id if thing else "")
        if thing:
            self._mark_in_list(thing.id)

    def _begin(self) -> None:
        self.form.start()
        self._to_top()

    def _to_top(self) -> None:
        """It would stay where the thing before was left, its first field out of view."""
        self._area.verticalScrollBar().setValue(0)

    def _allow(self) -> None:
        typed = self.form.typed
        self.keep_button.setEnabled(typed)
        self.put_back_button.setEnabled(typed)
        self.retire_button.setEnabled(not typed)
        self._unkept.setText(self.tr("Not kept yet") if typed else "")
        # Going to another thing now would lose what is typed.
        for widget in (self.list, self.add_button, self.show_retired):
            widget.setEnabled(not typed)

    def _found(self, thing_id: str) -> T | None:
        try:
            return self.desk.records.find(self.kind, thing_id) if thing_id else None
        except RecordsError:
            return None

    def _first(self) -> T | None:
        things = self._things()
        return things[0] if things else None

    def _retire(self) -> None:
        thing = self.form.thing
        if thing is None:
            return
        if thing.retired_on is not None:
            self._keep_retired(None)
            return
        asked = (self._wording.why_retire or self._wording.really_retire).format(name=thing.name)
        question = " ".join(filter(None, (self._used(thing), asked)))
        if self._wording.why_retire:
            self.desk.ask.reason(question, self._retire_now)
            return
        self.desk.ask.confirm(question, self._wording.retire.replace("&", ""), self._retire_now)

    def _retire_now(self, why: str = "") -> None:
        self._keep_retired(self.desk.clock().date(), why)

    def _keep_retired(self, day: date | None, why: str = "") -> None:
        thing = self.form.thing
        assert thing is not None
        told: dict[str, Any] = {"retired_on": day}
        if isinstance(thing, Scoop):
            told["retired_why"] = why
        telling = replace(thing, **told)
        kept = self.desk.keep(telling)
        if kept is not None:
            self._show(kept if kept.retired_on is None or self.show_retired.isChecked() else self._first())
            self.reload()


class _ThingList(QListWidget):
    """Coming by with Tab chooses nothing: an empty form for a new thing would be gone."""

    def focusInEvent(self, event: QFocusEvent) -> None:
        if self.currentRow() >= 0:
            super().focusInEvent(event)
            return
        blocker = QSignalBlocker(self)
        super().focusInEvent(event)  # takes the first one
        self.setCurrentRow(-1)
        blocker.unblock()
