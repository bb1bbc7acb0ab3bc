"""One group of calves of a plan: how many, how much each, how strong."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QButtonGroup, QFrame, QRadioButton, QVBoxLayout, QWidget

from calibrator.desk.context import Desk
from calibrator.desk.forms.additive_editor import AdditiveEditor
from calibrator.desk.forms.amount import Amount
from calibrator.desk.forms.fields import Captioned, TextField
from calibrator.desk.forms.rate_editor import RateEditor
from calibrator.desk.parts import button, column, label, row, set_style_property
from calibrator.desk.speech import decimal_comma
from calibrator.desk.theme import SPACE
from calibrator.desk.widgets.count_field import CountField
from calibrator.desk.widgets.fold import Fold
from calibrator.model import MixingRate, PlanGroup, RateBasis, UnitSystem, VolumeMeans
from calibrator.science.batch import mix_per_calf
from calibrator.science.errors import CannotCompute
from calibrator.science.mixing import Powder
from calibrator.units import Kind, read, show_volume

MOST_FEEDINGS = 6
FINE_STEP = {UnitSystem.FARM: 0.05, UnitSystem.METRIC: 0.01}


def _usual(system: UnitSystem) -> PlanGroup:
    """What most farms begin with, in round figures of the farm's units."""
    farm = system is UnitSystem.FARM
    basis, powder, volume = (RateBasis.ON_WATER, "10 oz", "2 qt") if farm else (RateBasis.MADE_UP, "130 g", "1 L")
    rate = MixingRate(
        basis=basis,
        powder_mass_g=read(powder, Kind.MASS, system).value,
        volume_ml=read(volume, Kind.VOLUME, system).value,
    )
    each = read("2 qt" if farm else "2 L", Kind.VOLUME, system).value
    return PlanGroup(name="", calves=0, volume_ml=each, volume_means=VolumeMeans.FINISHED_MIX, rate=rate)


class GroupEditor(QFrame):
    """Fields over one group. Whether a volume is finished mix or water is asked, never guessed."""

    edited = Signal()
    remove_wanted = Signal()
    rearranged = Signal()

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self.desk = desk
        self._powder: Powder | None = None
        self._water_c = 43.0
        self.setProperty("kind", "card")
        self.heading = label("", "heading", wrap=False)
        self.remove = button(self.tr("Leave this group out"), self._ask_remove, "link")
        self.name = TextField(self.tr("Name, like “under two weeks”"))
        self.calves, self.feedings = CountField(), CountField(1, MOST_FEEDINGS)
        self._calves = Captioned(self.tr("Calves"), self.calves)
        self._feedings = Captioned(self.tr("Feedings a day"), self.feedings)
        self.volume = Amount(desk, self.tr("Volume for each calf and feeding"), Kind.VOLUME)
        self.finished, self.water = (
            QRadioButton(self.tr("finished mix")),
            QRadioButton(self.tr("water, powder on top")),
        )
        self._means = QButtonGroup(self)
        self._means_note = label("", "quiet")
        for choice in (self.finished, self.water):
            self._means.addButton(choice)
        self.rate = RateEditor(desk)
        self.additives: list[AdditiveEditor] = []
        self.add_additive = button(self.tr("Add an additive"), self._add_additive, "link")
        self._additives = QVBoxLayout()
        self.more = Fold(
            self.tr("More about this group: additives"), self.tr("Less about this group"), self._make_more()
        )
        self._lay_out()
        self.name.edited.connect(self.edited)
        for field in (self.calves, self.feedings):
            field.counted.connect(self.edited)
        for signal in (self.volume.edited, self.rate.edited, self._means.buttonClicked):
            signal.connect(self._typed)

    def load(self, group: PlanGroup | None) -> None:
        """Show a group, or usual figures to begin with; then what the volume means is left open."""
        shown = group or _usual(self.desk.system)
        self.name.set_text(shown.name)
        self.calves.set_count(shown.calves)
        self.feedings.set_count(shown.feedings_per_day)
        self.volume.set_value(shown.volume_ml)
        self._means.setExclusive(False)
        self.finished.setChecked(group is not None and shown.volume_means is VolumeMeans.FINISHED_MIX)
        self.water.setChecked(group is not None and shown.volume_means is VolumeMeans.WATER)
        self._means.setExclusive(True)
        self.rate.load(shown.rate)
        self._load_additives(group)
        self.more.unfold(bool(self.additives))
        self._tell_means()

    def show_place(self, number: int, alone: bool) -> None:
        """Which group of the plan this is."""
        self.heading.setText(self.tr("Calves") if alone else self.tr("Group {number}").format(number=number))
        self.remove.setVisible(not alone)
        told = self.tr("Leave group {number} out").format(number=number)
        self.remove.setAccessibleName(told)

    def mixed_with(self, powder: Powder | None, water_temperature_c: float) -> None:
        self._powder, self._water_c = powder, water_temperature_c
        self.rate.mixed_with(powder, water_temperature_c)
        self._tell_means()

    def understood(self) -> bool:
        """Whether the group can be kept; what is missing is said beside the field."""
        chosen = self.means() is not None
        sound = [self.volume.understood(), chosen, self.rate.understood()]
        sound += [editor.understood() for editor in self.additives]
        if not chosen:
            self._means_note.setText(self.tr("Choose which of the two the volume is."))
            set_style_property(self._means_note, "state", "wrong")
        return all(sound)

    def means(self) -> VolumeMeans | None:
        if self.water.isChecked():
            return VolumeMeans.WATER
        return VolumeMeans.FINISHED_MIX if self.finished.isChecked() else None

    def group(self) -> PlanGroup | None:
        """The group as typed; None where something is missing."""
        volume, means, rate = self.volume.value(), self.means(), self.rate.rate()
        if volume is None or means is None or rate is None:
            return None
        return PlanGroup(
            name=self.name.text(),
            calves=self.calves.count(),
            volume_ml=volume,
            volume_means=means,
            rate=rate,
            feedings_per_day=self.feedings.count(),
            additives=tuple(made for editor in self.additives if (made := editor.made(volume, means))),
        )

    def in_order(self) -> tuple[QWidget, ...]:
        """The fields in the order in which the Tab key reaches them."""
        rate = self.rate
        figures = (rate.basis, rate.mass.line, rate.volume.line, rate.share.line)
        choices = (self.volume.line, self.finished, self.water)
        additives = [widget for editor in self.additives for widget in editor.in_order()]
        more = (self.more.link, *additives, self.add_additive)
        return (self.name.line, self.calves, self.feedings, *choices, *figures, *more, self.remove)

    def _make_more(self) -> QWidget:
        caution = self.tr(
            "Additives change how strong the mix is and how fast a stomach empties: follow the product label, and "
            "ask your veterinarian."
        )
        self.caution = label(caution, "caution")
        self.caution.hide()
        inner = QWidget()
        inside = column(self._additives, self.caution, row(self.add_additive, None), spacing=SPACE)
        inside.setContentsMargins(0, 0, 0, 0)
        inner.setLayout(inside)
        return inner

    def _load_additives(self, group: PlanGroup | None) -> None:
        for editor in list(self.additives):
            self._drop_additive(editor)
        for told in group.additives if group else ():
            self._place_additive().load(told, group.volume_ml if group else 0.0)
        self.caution.setVisible(bool(self.additives))

    def _place_additive(self) -> AdditiveEditor:
        editor = AdditiveEditor(self.desk)
        editor.edited.connect(self._typed)
        editor.remove_wanted.connect(self._remove_additive)
        self.additives.append(editor)
        self._additives.addWidget(editor)
        return editor

    def _add_additive(self) -> None:
        editor = self._place_additive()
        self.caution.show()
        self.rearranged.emit()
        self._typed()
        editor.name.line.setFocus(Qt.FocusReason.OtherFocusReason)

    def _remove_additive(self) -> None:
        editor = self.sender()
        if isinstance(editor, AdditiveEditor):
            self._drop_additive(editor)
            self.caution.setVisible(bool(self.additives))
            self.rearranged.emit()
            self._typed()
            self.add_additive.setFocus(Qt.FocusReason.OtherFocusReason)

    def _drop_additive(self, editor: AdditiveEditor) -> None:
        self.additives.remove(editor)
        self._additives.removeWidget(editor)
        editor.hide()
        editor.deleteLater()

    def _ask_remove(self) -> None:
        self.remove_wanted.emit()

    def _typed(self) -> None:
        self._tell_means()
        self.edited.emit()

    def _tell_means(self) -> None:
        """Say what the volume amounts to in the other meaning."""
        set_style_property(self._means_note, "state", "ok")
        self._means_note.setText(self._other_meaning())

    def _other_meaning(self) -> str:
        group = self.group()
        if group is None or self._powder is None:
            return ""
        try:
            mix = mix_per_calf(group, self._powder, self._water_c)
        except CannotCompute:
            return ""
        system = self.desk.system
        step, comma = FINE_STEP[system], decimal_comma()
        water = show_volume(mix.water_ml, system, step=step, decimal_comma=comma)
        whole = show_volume(mix.volume_ml, system, step=step, decimal_comma=comma)
        return self.tr("{water} of water, {mix} with its powder").format(water=water, mix=whole)

    def _lay_out(self) -> None:
        first = row(self.name, self._calves, self._feedings, spacing=2 * SPACE)
        for place, stretch in enumerate((4, 2, 2)):
            first.setStretch(place, stretch)
        choices = row(self.finished, self.water, None, spacing=2 * SPACE)
        means = QVBoxLayout()
        means.setSpacing(3)
        means.addWidget(label(self.tr("This volume is"), wrap=False))
        means.addLayout(choices)
        means.addWidget(self._means_note)
        means.addStretch(1)
        second = row(self.volume, means, spacing=2 * SPACE)
        second.setStretch(0, 3)
        second.setStretch(1, 5)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(2 * SPACE, 2 * SPACE, 2 * SPACE, 2 * SPACE)
        layout.setSpacing(int(1.5 * SPACE))
        for item in (row(self.heading, None, self.remove), first, second):
            layout.addLayout(item)
        layout.addWidget(self.rate)
        layout.addWidget(self.more)
