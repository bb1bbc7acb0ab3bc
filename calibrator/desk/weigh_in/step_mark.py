"""The mark: where the line goes, drawn true to the scoop, beside the line it bears now."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication, QEvent, QObject, Qt
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QApplication, QHBoxLayout, QLayout, QSizePolicy, QVBoxLayout, QWidget

from calibrator import units
from calibrator.desk import shown
from calibrator.desk.context import Desk
from calibrator.desk.guide import Guide, Missing
from calibrator.desk.how.view import how_button
from calibrator.desk.parts import Tone, button, card, column, label, row, set_style_property, set_tone
from calibrator.desk.refusals import in_words
from calibrator.desk.scoop_lines import ScoopState, scoop_state
from calibrator.desk.theme import SPACE
from calibrator.desk.weigh_in import line_words, words
from calibrator.desk.weigh_in.step_view import StepView
from calibrator.desk.weigh_in.workings import line_workings
from calibrator.desk.widgets.quantity_field import QuantityField
from calibrator.desk.widgets.question import Question
from calibrator.desk.widgets.scoop_drawing import FurtherLine, ScoopDrawing
from calibrator.desk.words import beside_target_words, lines_words
from calibrator.model import Step, UnitSystem
from calibrator.science.errors import CannotCompute
from calibrator.science.mark import Line, OldLine, OldLineVerdict
from calibrator.science.scoop import same_line
from calibrator.units import Kind, Quantity

translate = QCoreApplication.translate

FAR_OFF_SHARE = 0.1  # beyond this a slip of the ruler is likelier than a wish
WOULD_LINES = 2  # that it takes in Spanish: the field above it stays where it is while one types


class StepMark(StepView):
    """Proposes the line, takes the line as drawn, and says whether the old one will do."""

    def __init__(self, desk: Desk) -> None:
        super().__init__(
            desk,
            "",
        )
        self._drawing = ScoopDrawing(desk.system)
        self._offered = True
        self._drawn_mm: float | None = None
        self._target_g: float | None = None
        self._where = label("", "heading")
        self._why = label("", "quiet")
        self._problem = label("", tone="bad")
        self._how = how_button(lambda: line_workings(self.guide) if self.guide else ())
        self._old = label("")
        self._old_card = card(label(self.tr("The line now on the scoop"), "quiet"), self._old)
        self._field = QuantityField(Kind.LENGTH, desk.system, name=self.tr("Line as drawn"), required=True, ruled=True)
        self._field.returnPressed.connect(self._enter)
        self._field.understood.connect(self._typed_anew)
        self._question = Question(self.tr("The line is there all the same"))
        self._question.answered.connect(self._keep_asked)
        self._question.hide()
        self._as_proposed = button("", self._take_proposed, "main")
        self._keep_old = button(self.tr("Keep the &old line"), self._take_old)
        for drawn in (self._as_proposed, self._keep_old):
            drawn.installEventFilter(self)
        caption = label(self.tr("Drawn elsewhere? Distance down the wall &from the rim:"), "quiet")
        caption.setBuddy(self._field)
        self._would = label("")
        self._would.setMinimumHeight(WOULD_LINES * self._would.fontMetrics().lineSpacing())
        self._would.setAlignment(Qt.AlignmentFlag.AlignTop)
        self._drawn = label("", tone="good")
        # Made before the picture, which stands at its left: the keys come to what is proposed first.
        side = QWidget(self)
        side.setLayout(
            _part(
                card(
                    row(label(self.tr("For this lot"), "quiet", wrap=False), None, self._how),
                    self._where,
                    self._why,
                    self._problem,
                ),
                self._old_card,
                row(self._as_proposed, self._keep_old, None),
                None,
            )
        )
        enter = button(self.tr("Ente&r"), self._enter)
        # The drawing needs less height than the words beside it, and asks for no more: what is typed, and what it comes
        # to, stands in what it leaves.
        self._drawing.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Ignored)
        self._drawing.setMinimumHeight(self._drawing.minimumSizeHint().height())
        typed = row(self._field, column(enter, None))
        beneath = _part(card(self._drawing), caption, typed, self._drawn, self._would)
        beneath.setStretch(0, 1)
        picture = QWidget(self)
        picture.setLayout(beneath)
        both = QHBoxLayout()
        both.setSpacing(2 * SPACE)
        both.addWidget(picture, 7)
        both.addWidget(side, 6)
        self.body.addLayout(both, 1)
        self.body.addWidget(self._question)

    def refresh(self, guide: Guide, fresh: bool) -> None:
        system = self.desk.system
        w, found = guide.weigh_in, guide.findings
        self._drawing.set_system(system)
        self._field.set_system(system)
        self._question.withdraw()
        self._drawing.set_shape(guide.scoop.shape if guide.scoop else None)
        proposed = units.on_line_step(found.line.down_wall_mm, system) if found.line else None
        wiped = guide.line_to_wipe_mm
        self.hands.setText(_hands(guide, system))
        level = found.line is not None and found.line.struck_level and w.drawn_line_mm in (None, 0)
        new_mm = w.drawn_line_mm if w.drawn_line_mm is not None else proposed
        self._drawing.set_names(self.tr("New line"), self.tr("First try") if guide.first_try else self.tr("Old line"))
        others = [] if guide.first_try else self._other_old(guide)
        self._drawing.set_lines(0.0 if level else new_mm, wiped, moves=not others)
        self._drawing.set_further(others)
        full = found.line.full_scoops if found.line else 0
        before = self.tr("before it, struck level: {count}") if full else ""
        if level:
            before = self.tr("struck level: {count}")
        count = full + level
        if found.line is not None and found.line.to_line > 1:
            before, count = self.tr("filled to it for a feeding: {count}"), found.line.to_line
        self._drawing.set_before(before.format(count=count))
        drawn_there = self.tr("&Drawn at {where}").format(where=shown.length(proposed or 0.0, system))
        self._as_proposed.setText(self.tr("&Use it level") if level else drawn_there)
        self._show_proposal(guide)
        self._show_old(guide)
        self._keep_old.setVisible(w.old_line_mm is not None and _tells_of_old(guide))
        old_one, drawn = _keeps_old(guide), w.drawn_line_mm
        self._offered = not (old_one or _may_do(guide))
        for one, lit in ((self._as_proposed, self._offered), (self._keep_old, old_one)):
            set_style_property(one, "kind", "main" if lit and drawn is None else "")
        self._drawn.setVisible(drawn is not None)
        if drawn is not None:
            where = shown.length(drawn, system)
            told = self.tr("Drawn: {where} down the wall from the rim.").format(where=where)
            self._drawn.setText(self.tr("Struck level, without a line.") if guide.struck_level else told)
        other_target = not fresh and w.target_mass_g != self._target_g
        gone = drawn is None and (self._drawn_mm is not None or other_target)
        if (fresh and guide.line_should_move) or gone:
            self._field.set_kept(None, "")  # what stood there would be the line that is wrong, and Next would take it
        elif fresh:
            self._field.set_kept(drawn or None, w.drawn_line_typed)
        self._drawn_mm, self._target_g = drawn, w.target_mass_g
        self._say_what_it_would_weigh()

    def _other_old(self, guide: Guide) -> list[FurtherLine]:
        """What the scoop bears of the old label beside the line that the new one replaces."""
        text, system = self.tr("Old line, {target}"), self.desk.system
        return [
            FurtherLine(text.format(target=beside_target_words(one, system)), one.down_wall_mm, old=True)
            for one in guide.further_old
        ]

    def first_field(self) -> QWidget:
        if self.guide is not None and _keeps_old(self.guide):
            return self._keep_old
        return self._as_proposed if self._takes_proposed else self._field

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """A figure typed on a button goes into the field: who comes from fills to a line may type on without looking,
        and a weight is no word that the line is drawn.
        """
        if isinstance(event, QKeyEvent) and event.type() == QEvent.Type.KeyPress and event.text().isdigit():
            self._field.setFocus()
            QApplication.sendEvent(self._field.line, event.clone())
            return True
        return super().eventFilter(watched, event)

    @property
    def _takes_proposed(self) -> bool:
        return self._offered and self._as_proposed.isEnabled()

    def pending(self) -> str:
        typed = self._field.text()
        return typed if self.guide and typed != self.guide.weigh_in.drawn_line_typed else ""

    def typed_already(self) -> frozenset[Missing]:
        asked = self._question.isVisible()  # Next, pressed once too often, does not answer
        return frozenset({Missing.LINE} if self._field.quantity() is not None and not asked else ())

    def take(self) -> bool:
        """A line typed and not entered is entered; what can be taken of it leads on by itself."""
        guide = self.guide
        if guide is None or guide.signed_off is not None or not self.pending():
            return True
        if not self._question.isVisible():
            self._enter()
        return not self.pending()

    def _show_proposal(self, guide: Guide) -> None:
        system, line = self.desk.system, guide.findings.line
        usable = line is not None and line.problem is None
        self._how.setVisible(line is not None)
        self._as_proposed.setEnabled(usable)
        self._where.setText(_where(guide, line, system) if line else self.tr("Not known yet"))
        self._why.setText(_why(guide, line, system) if line else guide.findings.trouble)
        self._problem.setVisible(line is not None and not usable)
        if line is not None:
            self._problem.setText(line_words.line_problem_words(line, guide.farm.tolerance_share))

    def _show_old(self, guide: Guide) -> None:
        old = guide.findings.old
        self._old_card.setVisible(old is not None and _tells_of_old(guide))
        if old is not None:
            line = guide.findings.line
            text, tone = line_words.old_line_words(old, self.desk.system, moved=_moved(guide), fed=_fed_with_it(guide))
            if line is not None and line.struck_level and old.verdict is not OldLineVerdict.KEEP:
                text, tone = line_words.level_instead_words(old, self.desk.system), "warn"
            elif old.verdict is OldLineVerdict.MOVE and (before_g := guide.earlier_target_g) is not None:
                target_g = guide.weigh_in.target_mass_g or 0.0  # told, or there would be no earlier one beside it
                text, tone = line_words.other_target_words(old, before_g, target_g, self.desk.system), ""
            self._old.setText(text)
            set_tone(self._old_card, tone)

    def _take_proposed(self) -> None:
        guide = self.guide
        line = guide.findings.line if guide else None
        if guide is not None and line is not None and line.struck_level:
            self._field.set_typed("")
            self.desk.attempt(lambda: guide.set(drawn_line_mm=0.0, drawn_line_typed=""))
            self.wanted.emit(Step.SIGN_OFF)
        elif line is not None:
            self._field.set_typed(units.show_length(line.down_wall_mm, self.desk.system))
            self._enter()

    def _take_old(self) -> None:
        if self.guide and self.guide.weigh_in.old_line_mm is not None:
            self._field.set_kept(self.guide.weigh_in.old_line_mm, self.guide.weigh_in.old_line_typed)
            self._enter()

    def _enter(self) -> None:
        if not self._field.text() and self._takes_proposed:
            self._field.set_typed("")  # without the remark that nothing is typed
            self._as_proposed.setFocus(Qt.FocusReason.OtherFocusReason)
            return
        quantity = self._field.quantity()
        guide = self.guide
        if guide is None or quantity is None:
            return
        try:
            found = guide.delivers(quantity.value)
        except CannotCompute as error:
            self._field.set_problem(in_words(error))
            self._field.line.selectAll()
            return
        far_off = found is not None and abs(found.share) > FAR_OFF_SHARE
        doubt = line_words.far_off_words(found, self.desk.system) if found is not None and far_off else ""
        settled = self._question.settled(doubt, quantity.value)
        self._question.setVisible(not settled)
        self.typing.emit()
        if settled:
            self._keep(quantity)

    def _keep_asked(self) -> None:
        quantity = self._field.quantity()
        if quantity is not None:
            self._keep(quantity)

    def _say_what_it_would_weigh(self) -> None:
        """Of a line elsewhere than proposed: what a feeding would weigh, while it is typed."""
        guide, quantity = self.guide, self._field.quantity()
        text, tone = (
            self._would_weigh(guide, quantity.value) if guide and quantity and guide.signed_off is None else ("", "")
        )
        self._would.setText(text)
        set_tone(self._would, tone)

    def _would_weigh(self, guide: Guide, line_mm: float) -> tuple[str, Tone]:
        line, system = guide.findings.line, self.desk.system
        here = units.on_line_step(line_mm, system)
        if line is None or same_line(here, units.on_line_step(line.down_wall_mm, system)):
            return "", ""
        try:
            found = guide.delivers(line_mm)
        except CannotCompute:
            return "", ""  # said beneath the field once it is entered
        if found is None:
            return "", ""
        return line_words.would_weigh_words(found, line_mm, guide.wanted(line.target_g), system)

    def _typed_anew(self) -> None:
        self._question.hide()
        self._say_what_it_would_weigh()
        self.typing.emit()

    def _keep(self, quantity: Quantity) -> None:
        guide = self.guide
        if guide is None:
            return
        before = guide.weigh_in.drawn_line_mm
        self.desk.attempt(lambda: guide.set(drawn_line_mm=quantity.value, drawn_line_typed=quantity.typed))
        if guide.weigh_in.drawn_line_mm is not None and guide.weigh_in.drawn_line_mm != before:
            self.ready.emit()


def _old_line(guide: Guide) -> OldLine | None:
    """What is known of the old line, as long as no other was drawn."""
    return guide.findings.old if guide.weigh_in.drawn_line_mm is None or guide.line_stays else None


def _keeps_old(guide: Guide) -> bool:
    """Whether keeping the old line is what is advised: it is right, or fills to it are to tell if it does."""
    old = _old_line(guide)
    if old is None:
        return False
    if old.verdict is OldLineVerdict.KEEP:
        return True
    line = guide.findings.line
    used_level = line is not None and line.struck_level
    return line_words.fills_to_it_tell(old) and not used_level and not _moved(guide)


def _moved(guide: Guide) -> bool:
    """Whether fills to a line were weighed, and another is still to be drawn."""
    return guide.line_tried and guide.weigh_in.drawn_line_mm is None


def _may_do(guide: Guide) -> bool:
    """Whether more level fills are to tell if the old line does."""
    old = _old_line(guide)
    return old is not None and line_words.level_fills_tell(old)


def _tells_of_old(guide: Guide) -> bool:
    """Whether the old line is shown: it is in the picture, not another drawn since, or may stay all the same."""
    return not guide.first_try or _keeps_old(guide) or _may_do(guide)


def _fed_with_it(guide: Guide) -> str:
    """The lot that is fed to the line that the scoop bears, and goes on being fed; blank for none."""
    now = guide.standing
    fed, scoop = now.in_use, guide.scoop
    if scoop is None or fed is None or fed.lot.id == guide.lot.id:
        return ""
    return fed.lot.lot_number if scoop_state(now, fed, scoop.id) is ScoopState.MARKED else ""


def _where(guide: Guide, line: Line, system: UnitSystem) -> str:
    """Where the line is to be; where the old one is to be kept none is drawn, wherever this lot's own would be."""
    old, old_mm = _old_line(guide), guide.weigh_in.old_line_mm
    if old is None or old_mm is None or not _keeps_old(guide):
        return line_words.where_words(line, system)
    if old.verdict is OldLineVerdict.KEEP:
        told = translate("StepMark", "The line stays {down} down the wall from the rim.")
    else:
        told = translate("StepMark", "First try the old line, {down} down the wall from the rim.")
    return told.format(down=words.unbroken(shown.length(old_mm, system)))


def _hands(guide: Guide, system: UnitSystem) -> str:
    """What the hands do: nothing is drawn or wiped out before it is known whether the old line does."""
    old = _old_line(guide)
    if old is not None and _keeps_old(guide):
        if old.verdict is OldLineVerdict.KEEP:
            return translate(
                "StepMark", "The old line is right for this lot too: leave it, and press Keep the old line."
            )
        return translate("StepMark", "Leave the old line for now: press Keep the old line, and weigh two fills to it.")
    if _may_do(guide):
        return translate(
            "StepMark",
            "Leave the old line for now, and go back to weigh more level fills.",
        )
    line, old_ones = guide.findings.line, _several_old(guide, system)
    if line is not None and line.struck_level and guide.weigh_in.drawn_line_mm in (None, 0):
        return _no_line(guide.line_to_wipe_mm is not None, _fed_with_it(guide), old_ones)
    draw = _draw(guide.line_to_wipe_mm is not None, _fed_with_it(guide), old_ones, first_try=guide.first_try)
    if not words.level_fills_advised(guide):
        return draw
    first = translate("StepMark", "More level fills are advised first; a line drawn now is preliminary.")
    return f"{first} {draw}"


def _why(guide: Guide, line: Line, system: UnitSystem) -> str:
    """What a feeding to the line weighs where the ruler has it, and how far that may be off: in weight alone, for as a
    length it would be rounded up to a division, and the two would not agree."""
    target = words.unbroken(shown.mass(line.target_g, system))
    mass, half = (words.unbroken(shown.fine_mass(g, system)) for g in guide.findings.to_ruled)
    if line.struck_level:
        level = translate(
            "StepMark",
            "{target} a feeding is wanted. Level it weighs {mass}, give or take {half} at 95 %. A line could not be "
            "read there.",
        )
        return level.format(target=target, mass=mass, half=half)
    told = translate(
        "StepMark",
        "{target} a feeding is wanted. With the line there a feeding weighs {mass}, give or take {half} at 95 %.",
    )
    if _keeps_old(guide):  # what a feeding to that one weighs is told with it
        told = translate("StepMark", "{target} a feeding is wanted.")
    step_mm = units.line_step_mm(system)
    slope = translate("StepMark", "A line {step} higher or lower makes a feeding {slope} more or less.").format(
        step=words.unbroken(shown.length(step_mm, system)),
        slope=words.unbroken(shown.fine_mass(line.grams_per_mm * step_mm, system)),
    )
    told = f"{told.format(target=target, mass=mass, half=half)} {slope}"
    narrower = translate("StepMark", "Fills to the line, the next step, make it surer.")
    return f"{told} {narrower}" if guide.line_untried else told


def _no_line(wipe: bool, fed: str, old_ones: str) -> str:
    """For a scoop that is struck level: what to do with a line that it bears, or with several `old_ones`."""
    told = translate("StepMark", "Fill the scoop and strike it level with a straight edge; it needs no line.")
    if wipe and fed:
        until = translate("StepMark", "Leave the old line while lot {lot} is fed to it, then wipe it out.")
        if old_ones:
            until = translate(
                "StepMark", "Leave the old lines ({lines}) while lot {lot} is fed to them, then wipe them out."
            )
        return f"{told} {until.format(lot=fed, lines=old_ones)}"
    return f"{told} {_wipe_out(old_ones)}" if wipe else told


def _draw(wipe: bool, fed: str, old_ones: str, *, first_try: bool) -> str:
    """How a line is drawn; wiping out only where there is a line to wipe out, and no lot is fed to it."""
    draw = translate(
        "StepMark",
        "Measure from the rim down along the wall and draw the line all round, at eye level; lightly at first, for "
        "fills to it may still move it.",
    )
    if wipe and first_try:
        out = translate("StepMark", "Wipe out the line drawn first for this lot.")
        leave = translate("StepMark", "Leave that of lot {lot} as long as it is fed.").format(lot=fed)
        return f"{draw} {out} {leave}" if fed else f"{draw} {out}"
    if wipe and fed:
        beside = translate(
            "StepMark", "Leave the old line while lot {lot} is fed to it, and write its lot beside each line."
        )
        if old_ones:
            beside = translate(
                "StepMark",
                "Leave the old lines ({lines}) while lot {lot} is fed to them, and write its lot beside each line.",
            )
        return f"{draw} {beside.format(lot=fed, lines=old_ones)}"
    return f"{draw} {_wipe_out(old_ones)}" if wipe else draw


def _wipe_out(old_ones: str) -> str:
    if not old_ones:
        return translate("StepMark", "Wipe out the old line, or strike it through.")
    text = translate("StepMark", "Wipe out the old lines ({lines}), or strike them through.")
    return text.format(lines=old_ones)


def _several_old(guide: Guide, system: UnitSystem) -> str:
    """Where the old lines are that go together, with those for other feedings; blank for a single one."""
    others_mm, main_mm = [one.down_wall_mm for one in guide.further_old], guide.line_to_wipe_mm
    return lines_words([main_mm, *others_mm], system) if others_mm and main_mm is not None else ""


def _part(*items: QWidget | QLayout | None) -> QVBoxLayout:
    layout = column(*items)
    layout.setContentsMargins(0, 0, 0, 0)
    return layout
