"""A scale by wire: its port, how its lines look, and a tester that shows what is understood. Kept on this computer."""

from __future__ import annotations

from PySide6.QtWidgets import QCheckBox, QVBoxLayout, QWidget

from calibrator.desk.context import Desk
from calibrator.desk.forms.enter import enter_moves_on
from calibrator.desk.forms.fields import Captioned, TextField
from calibrator.desk.parts import button, card, label, row
from calibrator.desk.speech import decimal_comma
from calibrator.desk.theme import SPACE
from calibrator.desk.widgets.calm_box import CalmBox
from calibrator.desk.widgets.card_columns import card_columns
from calibrator.desk.wire import SPEEDS, ports
from calibrator.model import UnitSystem
from calibrator.units import Kind, MaskNotUnderstood, NotUnderstood, read, read_mask
from calibrator.units.scale_line import LONGEST_LINE, LONGEST_MASK

SAMPLES = {UnitSystem.FARM: "ST,GS,+ 11.60 oz", UnitSystem.METRIC: "ST,GS,+ 329.0 g"}


class WireForm(QWidget):
    """Nothing changes until *Keep and listen* is pressed; without a port the program is as if no scale had a wire."""

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self.desk = desk
        self._shown = False
        self.port, self.speed = CalmBox(), CalmBox()
        self.port.setEditable(True)
        self.speed.addItems(SPEEDS)
        self.looks = TextField(self.tr("How its lines loo&k"), longest=LONGEST_MASK)
        self.enters = QCheckBox(self.tr("Enter each wei&ght at once, without the Enter key"))
        self.line = TextField(self.tr("Try a line, as the scale sen&ds it"), longest=LONGEST_LINE)
        self.understood = label("")
        self.state = label("", "quiet")
        self.last = label("", "quiet")
        self._unkept = label("", "quiet", wrap=False)
        self.listen_button = button(self.tr("Keep and l&isten"), self.listen, "main")
        self.stop_button = button(self.tr("&Use no scale"), self.stop)
        self._lay_out()
        self.looks.edited.connect(self._try)
        self.line.edited.connect(self._try)
        self.looks.edited.connect(self._tell_unkept)
        self.port.editTextChanged.connect(self._tell_unkept)
        self.speed.currentIndexChanged.connect(self._tell_unkept)
        self.enters.toggled.connect(self._tell_unkept)
        desk.wire.came.connect(self._came)
        desk.wire.trouble.connect(self._tell)

    def reload(self) -> None:
        """Show what this computer remembers, unless something is typed; the ports are looked for anew."""
        self._tell_masks()
        if not self.port.hasFocus():
            typed = self.port.currentText()
            self.port.clear()
            self.port.addItems(ports())
            self.port.setCurrentText(typed)
        if not (self._shown and self.typed):
            now = self.desk.settings.now
            self.port.setCurrentText(now.scale_port)
            self.speed.setCurrentText(now.scale_speed)
            self.looks.set_text(now.scale_mask)
            self.enters.setChecked(now.scale_enters)
            self._shown = True
        self._try()
        self._tell_unkept()
        self._tell(self.desk.wire.words)

    @property
    def typed(self) -> bool:
        """Whether something is typed that was not kept yet."""
        now = self.desk.settings.now
        kept = now.scale_port, now.scale_speed, now.scale_mask, now.scale_enters
        return self._contents() != kept

    def listen(self) -> None:
        """Remember what is typed and listen to the scale."""
        if not self._try_mask():
            return
        port, speed, mask, enters = self._contents()
        self.desk.settings.keep(scale_port=port, scale_speed=speed, scale_mask=mask, scale_enters=enters)
        self._tell_unkept()
        self.desk.wire.start()
        self._tell(self.desk.wire.words)

    def stop(self) -> None:
        """Forget the port; weights are typed."""
        self.port.setCurrentText("")
        self.desk.settings.keep(scale_port="")
        self._tell_unkept()
        self.desk.wire.stop()
        self._tell("")

    def _lay_out(self) -> None:
        hands = label(
            self.tr(
                "A scale that works as a keyboard needs nothing here: put the cursor into the weight field and press "
                "its key. If it types more than the weight, say below how its lines look. For a scale on a serial "
                "port choose the port, and its speed as its handbook says."
            )
        )
        self._masks = label("", "quiet")
        speed = Captioned(self.tr("S&peed and frame"), self.speed)
        where = row(Captioned(self.tr("Po&rt"), self.port), speed, spacing=24)
        if (typed := self.port.lineEdit()) is not None:
            typed.setAccessibleName(self.port.accessibleName())
        told = (hands, where, self.looks, self._masks, self.enters)
        listen = card(*told, row(self.listen_button, self.stop_button, self._unkept, None))
        tried = card(self.line, self.understood, self.state, self.last)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, int(1.5 * SPACE), 0, 0)
        layout.addWidget(card_columns((listen,), (tried,)))
        enter_moves_on(listen)
        self.line.entered.connect(self.line.line.selectAll)  # a scale that works as a keyboard sends the next line

    def _contents(self) -> tuple[str, str, str, bool]:
        return self.port.currentText().strip(), self.speed.currentText(), self.looks.text(), self.enters.isChecked()

    def _tell_unkept(self) -> None:
        self._unkept.setText(self.tr("Not kept yet") if self.typed else "")

    def _tell_masks(self) -> None:
        self._masks.setText(
            self.tr(
                "Leave it blank when a line holds only the number and its unit. Else write the line with names for "
                "what changes: {weight} the number, {unit} the unit, {any} anything, {still:ST} a word (here ST) that "
                "stands there only while the scale stands still. Example: {still:ST},{any},{weight} {unit} reads "
                "“{sample}”."
            ).replace("{sample}", SAMPLES[self.desk.system])
        )

    def _try(self) -> None:
        line = self.line.line.text().strip()
        self.understood.setText(self._meaning(line) if self._try_mask() and line else "")

    def _try_mask(self) -> bool:
        try:
            read_mask(self.looks.text())
        except MaskNotUnderstood as error:
            self.looks.say(self._fault(error), wrong=True)
            return False
        self.looks.say("")
        return True

    def _fault(self, error: MaskNotUnderstood) -> str:
        told = {
            "weight": self.tr("Write {weight} once, where the number stands."),
            "twice": self.tr("{part} stands there twice. Write it once."),
            "unknown": self.tr("“{part}” is no name of a place. Use weight, unit, any or still:ST."),
            "brace": self.tr("A brace is not closed. Write each place like {weight}."),
            "any": self.tr("Write {any} two times at most."),
            "too_long": self.tr("That is too long for a line of a scale."),
        }
        return told[error.code].replace("{part}", error.part)

    def _meaning(self, line: str) -> str:
        reading = read_mask(self.looks.text()).read(line)
        if reading is None:
            return self.tr("This line does not fit: it would be passed over.")
        try:
            found = read(reading.text, Kind.MASS, self.desk.system, decimal_comma=decimal_comma())
        except NotUnderstood:
            return self.tr("“{text}” is no weight: it would be passed over.").format(text=reading.text)
        if not reading.still:
            return self.tr("{weight}, but the scale moves: it would be passed over.").format(weight=found)
        return self.tr("Understood: {weight}").format(weight=found)

    def _came(self, line: str) -> None:
        self.last.setText(self.tr("Last line: “{line}”, {meaning}").format(line=line, meaning=self._meaning(line)))

    def _tell(self, words: str) -> None:
        listening = self.tr("Listening at {port}.").format(port=self.desk.settings.now.scale_port)
        self.state.setText(
            words or (listening if self.desk.settings.now.scale_port else self.tr("No scale with a cable."))
        )
