"""Second step: what each column means, in which unit and order it is written; what the file as a whole leaves open."""

from __future__ import annotations

from collections.abc import Iterable
from itertools import islice

from PySide6.QtCore import QSignalBlocker, Qt, Signal
from PySide6.QtWidgets import QCheckBox, QComboBox, QGridLayout, QVBoxLayout, QWidget

from calibrator.desk.bring_in import words
from calibrator.desk.bring_in.choices import Bags, cells_of, decimal_of, names_of, order_of
from calibrator.desk.bring_in.meanings import DAYS, MASSES, NUMBERS, Meaning, column_name, headings_of
from calibrator.desk.bring_in.orders import counts_days, text_of
from calibrator.desk.bring_in.work import Bringing
from calibrator.desk.context import Desk
from calibrator.desk.forms.amount import Amount
from calibrator.desk.forms.fields import Captioned, TextField
from calibrator.desk.parts import card, clear, label, row, scrolled
from calibrator.desk.plain_text import LONGEST_LINE, on_screen
from calibrator.desk.theme import SPACE
from calibrator.desk.widgets.calm_box import CalmBox
from calibrator.desk.widgets.later import take_turn
from calibrator.model import FillWay, Scale, Scoop
from calibrator.units import Kind

EXAMPLES, MOST_SCOOPS = 3, 30
MASS_UNITS, LENGTH_UNITS = ("oz", "lb", "g", "kg"), ("mm", "cm", "in")


class ColumnsStep(QWidget):
    """Each answer is taken at once; `changed` tells that the questions may be others now."""

    changed = Signal()

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self.desk = desk
        self._work: Bringing | None = None
        self._grid = QGridLayout()
        self._grid.setHorizontalSpacing(2 * SPACE)
        self._grid.setVerticalSpacing(SPACE)
        self._grid.setColumnStretch(3, 1)
        self._scoops = QGridLayout()
        self._scoops.setHorizontalSpacing(2 * SPACE)
        self._scoops.setColumnStretch(2, 1)
        self.meanings: list[QComboBox] = []
        self.ways: dict[tuple[str, int], QComboBox] = {}
        self.scoops: dict[str, QComboBox] = {}
        self.way = self._box(words.way_words().items())
        self.bags = self._box(words.bags_words().items())
        self.epoch = self._box(((False, self.tr("from 1900 (most programs)")), (True, self.tr("from 1904 (old Macs)"))))
        self.scale = CalmBox()
        self.by = TextField(self.tr("Who weighed, where no column tells"), longest=12)
        self.tare = Amount(desk, self.tr("Weight of the empty scoop"), Kind.MASS, optional=True, example=False)
        self.fill_down = QCheckBox(self.tr("An empty lot, day, scoop or name means the one above"))
        self._whole = {
            self.way: Captioned(self.tr("The scoop was filled"), self.way),
            self.bags: Captioned(self.tr("Bags"), self.bags),
            self.scale: Captioned(self.tr("Weighed on"), self.scale),
            self.epoch: Captioned(self.tr("Days are counted"), self.epoch),
        }
        self.open = label("", "quiet")
        self._columns, self._weighing = QWidget(), QWidget()
        self._wire()
        self._lay_out()

    def show_work(self, work: Bringing) -> None:
        """Show the columns with what is settled already."""
        self._work = work
        self._show_columns(work)
        self._show_whole(work)
        self.refresh()

    def refresh(self) -> None:
        """Say what is still open."""
        work = self._work
        if work is None or work.table is None:
            return
        heads = headings_of(work.table, work.choices.heading)
        found = [words.question_words(one, heads) for one in work.open_questions()]
        self.open.setText(" ".join(found) if found else self.tr("All is said. Go on to see what it comes to."))
        self._weighing.setVisible(work.choices.weighs)

    def _show_columns(self, work: Bringing) -> None:
        clear(self._grid)
        self.meanings, self.ways = [], {}
        made: list[QWidget] = []
        table, asked = work.table, work.choices
        if table is None:
            return
        for at, name in enumerate((self.tr("Column"), self.tr("Means"), self.tr("Written in"), self.tr("First cells"))):
            self._grid.addWidget(label(name, "quiet", wrap=False), 0, at)
        for place, head in enumerate(headings_of(table, asked.heading)):
            name = head or column_name(place)
            box = self._box(words.meaning_words().items(), asked.meanings[place], blank=False)
            box.setAccessibleName(self.tr("What “{name}” means").format(name=name))
            box.setProperty("column", place)
            box.activated.connect(self._choose_meaning)
            self.meanings.append(box)
            examples = islice((text_of(cell) for _, cell in cells_of(table, asked, place)), EXAMPLES)
            told = on_screen("   ".join(examples).replace("\n", " "), LONGEST_LINE)
            self._grid.addWidget(label(on_screen(name, 28), wrap=False), place + 1, 0)
            made += [box, self._ways_of(work, place, name)]
            self._grid.addWidget(box, place + 1, 1)
            self._grid.addWidget(made[-1], place + 1, 2)
            self._grid.addWidget(label(told, "quiet"), place + 1, 3)
        take_turn(self._columns, *made)

    def _ways_of(self, work: Bringing, place: int, name: str) -> QWidget:
        """The unit, order and decimal sign of a column, where it has any."""
        table, asked, meaning = work.table, work.choices, work.choices.meanings[place]
        assert table is not None
        parts: list[QWidget] = []
        if meaning in MASSES or meaning is Meaning.LINE:
            units = LENGTH_UNITS if meaning is Meaning.LINE else MASS_UNITS
            parts.append(self._way("units", place, [(unit, unit) for unit in units], asked.units.get(place), name))
        if meaning in DAYS and (found := order_of(table, asked, place)).matters:
            options = [(order, said) for order, said in words.order_words().items()]
            parts.append(self._way("orders", place, options, asked.orders.get(place), name))
            parts.append(label(words.settled_words(found), "quiet"))
        if meaning in NUMBERS and (found := decimal_of(table, asked, place)).asks:
            parts.append(self._way("decimals", place, words.decimal_words().items(), asked.decimals.get(place), name))
        holder = QWidget()
        inside = row(*parts)
        inside.setContentsMargins(0, 0, 0, 0)
        holder.setLayout(inside)
        return holder

    def _way(
        self, what: str, place: int, options: Iterable[tuple[object, str]], chosen: object, name: str
    ) -> QComboBox:
        box = self._box(options, chosen)
        box.setAccessibleName(self.tr("How “{name}” is written").format(name=name))
        box.setProperty("what", what)
        box.setProperty("column", place)
        box.activated.connect(self._choose_way)
        self.ways[what, place] = box
        return box

    def _show_whole(self, work: Bringing) -> None:
        table, asked, farm = work.table, work.choices, self.desk.farm
        if table is None or farm is None:
            return
        for box, chosen in ((self.way, asked.way), (self.bags, asked.bags), (self.epoch, asked.from_1904)):
            _choose(box, chosen)
        shown = {
            self.way: not asked.columns(Meaning.WAY), self.bags: not asked.columns(Meaning.BAG), self.scale: True,
            self.epoch: table.from_1904 is None
            and any(counts_days(cells_of(table, asked, place)) for place in asked.columns(*DAYS)),
        }  # fmt: skip
        for box, wanted in shown.items():
            self._whole[box].setVisible(wanted)
        self.tare.setVisible(bool(asked.columns(Meaning.GROSS)) and not asked.columns(Meaning.TARE))
        self.by.set_text(asked.by)
        self.fill_down.setChecked(asked.fill_down)
        scales = [(one.id, one.name) for one in self.desk.records.every(Scale, farm.id)]
        _offer(self.scale, scales or [("", self.tr("not known"))])
        _choose(self.scale, asked.scale_id)
        self._show_scoops(work, farm.id)

    def _show_scoops(self, work: Bringing, farm_id: str) -> None:
        clear(self._scoops)
        self.scoops = {}
        assert work.table is not None
        known = [(one.id, one.name) for one in self.desk.records.every(Scoop, farm_id)]
        for at, name in enumerate(names_of(work.table, work.choices)[:MOST_SCOOPS]):
            box = self._box([*known, ("", self.tr("not known: weights without a density"))])
            _choose(box, work.choices.scoops.get(name))
            caption = self.tr("Scoop “{name}” is").format(name=name) if name else self.tr("Weighed with the scoop")
            box.setAccessibleName(caption)
            box.setProperty("scoop", name)
            box.activated.connect(self._choose_scoop)
            self.scoops[name] = box
            self._scoops.addWidget(label(on_screen(caption, LONGEST_LINE), wrap=False), at, 0)
            self._scoops.addWidget(box, at, 1)
        take_turn(self.scale, *self.scoops.values())

    def _choose_meaning(self) -> None:
        if self._work is not None:
            told = tuple(Meaning(box.currentData()) for box in self.meanings)
            self._work.change(meanings=told)
            self.show_work(self._work)
            self.changed.emit()

    def _choose_way(self) -> None:
        box = self.sender()
        if self._work is not None and isinstance(box, QComboBox):
            what, place = str(box.property("what")), int(box.property("column"))
            told = dict(getattr(self._work.choices, what))
            told.pop(place, None)
            if box.currentData() is not None:
                told[place] = box.currentData()
            self._take(**{what: told})

    def _choose_scoop(self) -> None:
        box = self.sender()
        if self._work is not None and isinstance(box, QComboBox):
            self._take(scoops={**self._work.choices.scoops, str(box.property("scoop")): box.currentData()})

    def _choose_whole(self) -> None:
        if self._work is not None and self._work.table is not None:
            told = self._work.table.from_1904
            self._take(
                way=FillWay(way) if (way := self.way.currentData()) else None,
                bags=Bags(bags) if (bags := self.bags.currentData()) else None,
                scale_id=self.scale.currentData(),
                from_1904=self.epoch.currentData() if told is None else told,
                by=self.by.text(), fill_down=self.fill_down.isChecked(),
            )  # fmt: skip

    def _choose_tare(self) -> None:
        found = self.tare.quantity()
        self._take(tare_g=found.value if found else None, tare_typed=self.tare.told() if found else "")

    def _take(self, **told: object) -> None:
        if self._work is not None:
            self._work.change(**told)
            self.refresh()
            self.changed.emit()

    def _box(self, options: Iterable[tuple[object, str]], chosen: object = None, *, blank: bool = True) -> QComboBox:
        box = CalmBox()
        box.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToContents)
        box.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        _offer(box, options, blank=blank)
        _choose(box, chosen)
        return box

    def _wire(self) -> None:
        for box in (self.way, self.bags, self.scale, self.epoch):
            box.activated.connect(self._choose_whole)
        self.by.edited.connect(self._choose_whole)
        self.fill_down.clicked.connect(self._choose_whole)
        self.tare.edited.connect(self._choose_tare)

    def _lay_out(self) -> None:
        inside = QVBoxLayout(self._weighing)
        inside.setContentsMargins(0, 0, 0, 0)
        inside.addLayout(row(self._whole[self.way], self._whole[self.bags], self._whole[self.scale], None))
        inside.addLayout(self._scoops)
        inside.addLayout(row(self.tare, None))
        self._columns.setLayout(self._grid)
        holder = QWidget()
        both = QVBoxLayout(holder)
        both.setContentsMargins(0, 0, 0, 0)
        both.setSpacing(SPACE)
        both.addWidget(card(self._columns))
        both.addWidget(card(label(self.tr("The file as a whole"), "heading"), self._weighing, self._foot()))
        both.addStretch(1)
        body = QVBoxLayout(self)
        body.setContentsMargins(0, 0, 0, 0)
        body.addWidget(scrolled(holder), 1)
        body.addWidget(self.open)

    def _foot(self) -> QWidget:
        foot = QWidget()
        inside = QVBoxLayout(foot)
        inside.setContentsMargins(0, 0, 0, 0)
        inside.addLayout(row(self.by, self._whole[self.epoch], None))
        inside.addWidget(self.fill_down)
        return foot


def _offer(box: QComboBox, options: Iterable[tuple[object, str]], *, blank: bool = True) -> None:
    blocker = QSignalBlocker(box)
    box.clear()
    if blank:
        box.addItem("–", None)
    for value, said in options:
        box.addItem(on_screen(said, LONGEST_LINE), value)
    blocker.unblock()


def _choose(box: QComboBox, value: object) -> None:
    """Choose by the value itself: words of an enumeration come back from a box as plain text."""
    places = [
        at for at in range(box.count()) if box.itemData(at) == value and (box.itemData(at) is None) == (value is None)
    ]
    box.setCurrentIndex(places[0] if places else 0)
