"""A scoop: its name, its shape and inner dimensions, and how much it holds struck level."""

from __future__ import annotations

from math import isclose

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QCheckBox, QComboBox, QHBoxLayout, QSizePolicy, QStackedWidget, QWidget

from calibrator.desk import shown
from calibrator.desk.context import Desk
from calibrator.desk.forms.amount import Amount
from calibrator.desk.forms.examples import SCOOP_SIZES, WATER_IN_SCOOP
from calibrator.desk.forms.fields import Captioned, TextField
from calibrator.desk.forms.form import Form
from calibrator.desk.forms.reach import SCOOP_ML, WATER_IN_SCOOP_G
from calibrator.desk.forms.scoop_doubts import odd_water, unlikely
from calibrator.desk.forms.shape_fields import ShapeFields
from calibrator.desk.parts import add_all, button, column, label, row, set_tone, show_if
from calibrator.desk.plain_text import on_screen
from calibrator.desk.refusals import in_words
from calibrator.desk.scoop_names import scoop_title
from calibrator.desk.scoop_volume import ScoopVolume, WaterWeighed, scoop_volume, with_known_water
from calibrator.desk.speech import decimal_comma
from calibrator.desk.theme import SPACE
from calibrator.desk.widgets.name_choice import NameChoice
from calibrator.desk.widgets.question import Question
from calibrator.desk.widgets.saying import Held
from calibrator.desk.widgets.scoop_drawing import ScoopDrawing
from calibrator.model import Scale, Scoop, Shape, new_id
from calibrator.science.errors import CannotCompute
from calibrator.science.scoop import VolumeEstimate
from calibrator.science.scoop_likeness import told_apart
from calibrator.units import Kind, show_scoop_estimate

ROOM_C = 20.0
COARSE_G = 2.8349523125  # 0.1 oz, where no scale is entered yet
WATER_WEIGHINGS = 3
WIDEST_MM = 1000.0
LONGEST_MARKING = 40
SHORTEST_CHOICE = 12
SMALLEST_DRAWING = (260, 100)
TOLD_PX = 250  # as high as three dimensions: the drawing has what the words leave of it
TOLD_LINES = 3


class ScoopForm(Form[Scoop]):
    """The drawing follows what is typed; weighed water counts more than dimensions, and is asked for on a press: a
    scoop can be measured with a ruler alone.
    """

    kind = Scoop

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk)
        self.name = TextField(self.tr("Name of the scoop"), self._about_its_name())
        told = self.tr("Red tape, a number burned in. May stay empty.")
        self.told_by = TextField(self.tr("What to know it by"), told, longest=LONGEST_MARKING)
        self.replaces = NameChoice()
        self.replaces.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        self.replaces.setMinimumContentsLength(SHORTEST_CHOICE)
        self._replaces = Captioned(self.tr("Takes the place of"), self.replaces)
        self.fields = ShapeFields(desk, self.tr("Shape of the scoop"), self._how_to_pour(), WIDEST_MM, SCOOP_SIZES)
        self.shapes, self.pourings = self.fields.shapes, self.fields.pourings
        self.diameter, self.rim, self.floor = self.fields.diameter, self.fields.rim, self.fields.floor
        self.inner_height = self.fields.inner_height
        self.drawing = ScoopDrawing(desk.system)
        self.drawing.setMinimumSize(*SMALLEST_DRAWING)
        self.drawing.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Ignored)
        self.waters = [self._water(number) for number in range(1, WATER_WEIGHINGS + 1)]
        temperature = self.tr("Water temperature")
        self.temperature = Amount(desk, temperature, Kind.TEMPERATURE, lowest=0, highest=100, example=False)
        self.forget_water = QCheckBox(self.tr("Leave out the earlier water weighing"))
        self._step_g = COARSE_G
        self._by_dimensions, self._by_water = Held(lines=TOLD_LINES), Held(lines=TOLD_LINES)
        self._difference = label("", "caution")
        self._earlier_g: list[float] = []
        self._trouble = label("", tone="bad")
        self.question = Question(self.tr("Yes, that is right"), narrow=True)
        self.question.answered.connect(self.ended)
        self.with_water = button(self.tr("Surer: measure it with &water as well"), self._open_water, "link")
        self._lay_out()
        self._watch()
        self.enter_moves_on()

    def fill_in(self, thing: Scoop | None) -> None:
        self.drawing.set_system(self.desk.system)
        self._step_g = self._finest_step_g()
        self.name.set_text(thing.name if thing else "")
        self.told_by.set_text(thing.told_by if thing else "")
        self._offer_replaced(thing)
        self.fields.set_shape(thing.shape if thing else None)
        self._bring_back_water(thing)
        self.forget_water.setChecked(False)
        by_water = thing is not None and thing.volume_from_water
        self.forget_water.setVisible(by_water)
        self._show_water(by_water)
        self._look()
        self.question.take_as_known(self._figures() if thing else None)

    def made(self) -> Scoop | None:
        farm = self.desk.farm
        sound = [self.name.filled(), self._shape_understood(), self._water_understood()]
        if farm is None or not all(sound):
            return None
        found = self._volume_or_trouble()
        shape = self._shape()
        if found is None or shape is None or not self._likely_or_meant(shape, found):
            return None
        made = self._typed(farm.id, shape, found)
        self.desk.water_weighed[made.id] = self._water_typed(made)
        return made

    def _likely_or_meant(self, shape: Shape, found: ScoopVolume) -> bool:
        """Asks in the page about what can be but is unlikely; to keep the same once more is a yes."""
        water_c = self._temperature_c() if self._masses() or self.fields.poured else None
        doubt = unlikely(found, self.fields.sizes(shape), water_c, self._odd(found), self.desk.system)
        if self.question.settled(doubt, self._figures()):
            return True
        self._told.setCurrentWidget(self.question)
        return False

    def _figures(self) -> object:
        """All that the volume rests on."""
        return self._shape(), self._masses(), self._temperature_c(), self.forget_water.isChecked()

    def _typed(self, farm_id: str, shape: Shape, found: ScoopVolume) -> Scoop:
        return Scoop(
            id=self.thing.id if self.thing else new_id(),
            farm_id=farm_id,
            name=self.name.text(),
            shape=shape,
            volume_ml=found.counts.volume_ml,
            volume_u_ml=found.counts.u_ml,
            volume_from_water=found.water is not None,
            told_by=self.told_by.text(),
            replaces_id=self.replaces.currentData(),
            retired_why=self.thing.retired_why if self.thing else "",
            retired_on=self.retired_on(),
            revision=self.thing.revision if self.thing else "",
        )

    def _about_its_name(self) -> str:
        return self.tr("As painted on it. What it holds is measured.")

    def _how_to_pour(self) -> str:
        return self.tr(
            "Pour water in by steps, the last one up to the rim. At each step note all the water that is "
            "in the scoop by then, and how high it stands above the floor, along the wall."
        )

    def _water(self, number: int) -> Amount:
        caption = self.tr("{number}. weighing").format(number=number)
        return Amount(self.desk, caption, Kind.MASS, optional=True, within=WATER_IN_SCOOP_G, examples=WATER_IN_SCOOP)

    def _lay_out(self) -> None:
        self.fields.beside.addWidget(self._comes_to(), 3)
        self._water_part = QWidget()
        how = self.tr(
            "Better still: bring the scale to zero with the empty scoop on it, fill it to the rim with water and "
            "weigh, three times. Without water the dimensions count."
        )
        water = column(
            label(self.tr("Volume from water"), "heading"),
            label(how, "quiet"),
            self._by_water,
            row(*self.waters, spacing=12),
            _thirds(1, self.temperature),
            self.forget_water,
        )
        water.setContentsMargins(0, 0, 0, 0)
        self._water_part.setLayout(water)
        names = row(self.name, self.told_by, spacing=24)
        parts = (names, self.fields, _thirds(2, self._replaces), self._water_part, self._difference)
        add_all(self.body, parts)

    def _comes_to(self) -> QWidget:
        """The volume and the drawing beside the dimensions that they come from: in view while these are typed."""
        self._volume_told = QWidget()
        told = column(self._by_dimensions, row(self.with_water, None), None)
        told.setContentsMargins(0, 0, 0, 0)
        self._volume_told.setLayout(told)
        # The volume, what is wrong or what is asked, in one place.
        self._told = QStackedWidget()
        for words in (self._volume_told, self._trouble, self.question):
            self._told.addWidget(words)
        beside = QWidget()
        beside.setMinimumHeight(TOLD_PX)
        layout = column(self._told, self.drawing)
        layout.setContentsMargins(3 * SPACE, 0, 0, 0)
        layout.setStretch(1, 1)
        beside.setLayout(layout)
        return beside

    def _open_water(self) -> None:
        self._show_water(True)
        self.waters[0].line.setFocus(Qt.FocusReason.OtherFocusReason)

    def _show_water(self, shown: bool) -> None:
        self._water_part.setVisible(shown)
        self.with_water.setVisible(not shown)

    def _watch(self) -> None:
        for text in (self.name, self.told_by):
            text.edited.connect(self._look)
        self.replaces.activated.connect(self._look)
        for field in (*self.waters, self.temperature):
            field.edited.connect(self._look)
        self.fields.edited.connect(self._look)
        self.forget_water.toggled.connect(self._look)

    def _shape(self) -> Shape | None:
        return self.fields.shape(self._temperature_c())

    def _shape_understood(self) -> bool:
        told = self.temperature.understood() or not self.fields.poured
        return self.fields.understood(self._temperature_c()) and told

    def _water_understood(self) -> bool:
        sound = [field.understood() for field in (*self.waters, self.temperature)]
        return all(sound)

    def _temperature_c(self) -> float:
        typed = self.temperature.value()
        return ROOM_C if typed is None else typed

    def _look(self) -> None:
        """Let drawing and volumes follow what is typed."""
        shape = self._shape()
        self.drawing.set_shape(shape)
        self.drawing.setVisible(shape is not None or not self.fields.poured)
        found = self._volume_or_trouble()
        self._tell(found)
        self._tell_likeness(shape, found)
        self.edited.emit()

    def _others(self) -> list[Scoop]:
        farm = self.desk.farm
        every = self.desk.records.every(Scoop, farm.id) if farm else []
        return [scoop for scoop in every if self.thing is None or scoop.id != self.thing.id]

    def _offer_replaced(self, thing: Scoop | None) -> None:
        self.replaces.clear()
        self.replaces.addItem(self.tr("no other scoop"), None)
        others = self._others()
        for scoop in others:
            self.replaces.addItem(on_screen(scoop_title(scoop)), scoop.id)
        self.replaces.setCurrentIndex(max(0, self.replaces.findData(thing.replaces_id if thing else None)))
        self._replaces.setVisible(bool(others))

    def _tell_likeness(self, shape: Shape | None, found: ScoopVolume | None) -> None:
        """Say which scoop in use it could be taken for, as long as no word tells them apart."""
        farm = self.desk.farm
        alike = ""
        if farm is not None and shape is not None and found is not None and self.name.text():
            here = self._typed(farm.id, shape, found)
            others = (scoop for scoop in self._others() if scoop.retired_on is None)
            alike = next((scoop_title(scoop) for scoop in others if not told_apart(here, scoop)), "")
        text = self.tr("It is easily taken for {name}. Mark one of them and type here what tells it apart.")
        self.told_by.say(text.format(name=alike) if alike else "", care=True)

    def _volume_or_trouble(self) -> ScoopVolume | None:
        self._told.setCurrentWidget(self._volume_told)
        try:
            found = self._volume()
        except CannotCompute as error:
            self._tell_trouble(in_words(error))
            return None
        if found is not None and not SCOOP_ML[0] <= found.counts.volume_ml <= SCOOP_ML[1]:
            text = self.tr("It would hold {volume}. No scoop does: look at the figures and their units.")
            self._tell_trouble(text.format(volume=self._in_words(found.counts)))
            return None
        return found

    def _tell_trouble(self, text: str) -> None:
        self._trouble.setText(text)
        self._told.setCurrentWidget(self._trouble)

    def _volume(self) -> ScoopVolume | None:
        shape = self._shape()
        if shape is None:
            return None
        masses, known = self._masses(), self.thing
        if not masses and known and known.volume_from_water and not self.forget_water.isChecked():
            return with_known_water(shape, known.volume_ml, known.volume_u_ml)
        return scoop_volume(shape, masses, self._temperature_c(), self._step_g)

    def _weighed(self) -> list[Amount]:
        """The fields in which a weighing of water stands."""
        return [field for field in self.waters if field.value() is not None]

    def _masses(self) -> list[float]:
        masses = [mass for field in self.waters if (mass := field.value()) is not None]
        return [] if self.forget_water.isChecked() and masses == self._earlier_g else masses

    def _odd(self, found: ScoopVolume) -> list[tuple[str, str]]:
        """The weighings that do not fit the others, each by the name of its field."""
        weighed = self._weighed()
        return [(weighed[place].caption.text(), weighed[place].told()) for place in found.odd]

    def _water_typed(self, made: Scoop) -> WaterWeighed:
        masses = tuple((field.value(), field.told()) for field in self.waters)
        return WaterWeighed(made.volume_ml, masses, (self.temperature.value(), self.temperature.told()))

    def _bring_back_water(self, thing: Scoop | None) -> None:
        """The weighings behind the volume as they were typed, where that was since the start: a slip can be seen."""
        typed = self.desk.water_weighed.get(thing.id) if thing and thing.volume_from_water else None
        if typed is None or thing is None or not isclose(typed.volume_ml, thing.volume_ml, rel_tol=1e-9):
            typed = WaterWeighed(0.0, ((None, ""),) * WATER_WEIGHINGS, (ROOM_C, ""))
        for field, (mass_g, told) in zip(self.waters, typed.masses_g, strict=True):
            field.set_value(mass_g, told)
        self.temperature.set_value(*typed.water_c)
        self._earlier_g = [mass_g for mass_g, _told in typed.masses_g if mass_g is not None]

    def _finest_step_g(self) -> float:
        farm = self.desk.farm
        scales = self.desk.records.every(Scale, farm.id) if farm else []
        return min((scale.resolution_g for scale in scales if scale.retired_on is None), default=COARSE_G)

    def _tell(self, found: ScoopVolume | None) -> None:
        if found is None:
            self._by_dimensions.setText(self.tr("The drawing and the volume appear once every measure is there."))
        else:
            text = self.tr("By its dimensions it holds {volume}, 95 % sure.")
            self._by_dimensions.setText(text.format(volume=self._in_words(found.dimensions)))
        self._by_water.setText(self._told_of_water(found) if found else "")
        set_tone(self._by_water, "warn" if found is not None and found.odd else "")
        apart = self._told_apart(found) if found is not None and not found.odd else ""
        self._difference.setText(apart)
        show_if(self._difference, bool(apart))

    def _told_of_water(self, found: ScoopVolume) -> str:
        """What the water says, above the fields it is typed in; while a weighing does not fit, that alone."""
        if found.water is None:
            return ""
        if found.odd:
            again = self.tr("Zero the scale with the empty scoop on it, fill to the rim and weigh again.")
            return f"{odd_water(self._odd(found))} {again}"
        text = self.tr("By water it holds {volume}, 95 % sure. This is what counts.")
        if not self._masses():
            text = self.tr("Weighed before: by water it holds {volume}, 95 % sure. It counts until weighed anew.")
        return text.format(volume=self._in_words(found.water))

    def _told_apart(self, found: ScoopVolume) -> str:
        """Beneath all fields: what comes and goes while somebody types moves none of them there."""
        if found.check is None or found.check.agrees or found.difference_pct is None:
            return ""
        text = self.tr(
            "Dimensions and water differ by {percent}. Measure the inside once more, and see that the "
            "scale was zeroed with the empty scoop on it."
        )
        return text.format(percent=shown.unsigned_share(found.difference_pct / 100))

    def _in_words(self, volume: VolumeEstimate) -> str:
        comma = decimal_comma()
        return show_scoop_estimate(volume.volume_ml, volume.expanded_ml, self.desk.system, decimal_comma=comma)


def _thirds(count: int, widget: QWidget) -> QHBoxLayout:
    """A widget in the first thirds of a line."""
    line = row(widget, None)
    line.setStretch(0, count)
    line.setStretch(1, 3 - count)
    return line
