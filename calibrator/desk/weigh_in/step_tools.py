"""Scoop and scale: which ones, whether the scale is right, what a scoopful should weigh, the old line."""

from __future__ import annotations

from collections.abc import Mapping

from PySide6.QtWidgets import QCheckBox, QComboBox, QWidget

from calibrator.desk import shown
from calibrator.desk.as_typed import as_typed
from calibrator.desk.context import Desk
from calibrator.desk.counted import counted
from calibrator.desk.forms.enter import on_enter
from calibrator.desk.forms.examples import CHECK_WEIGHT, CHECK_WEIGHT_READ
from calibrator.desk.guide import Guide, Missing
from calibrator.desk.parts import button, card, label, set_tone
from calibrator.desk.plain_text import on_screen
from calibrator.desk.scoop_names import scoop_title
from calibrator.desk.weigh_in import words
from calibrator.desk.weigh_in.scale_unit import meant_words, unit_of
from calibrator.desk.weigh_in.step_view import StepView, show_kept, stays_wrong
from calibrator.desk.widgets.form_rows import form_rows
from calibrator.desk.widgets.name_choice import NameChoice
from calibrator.desk.widgets.quantity_field import QuantityField
from calibrator.model import Mark, Scale, Scoop, UnitSystem, WeighIn
from calibrator.prints.label_facts import same_weight
from calibrator.science.plausible import likeliest_feeding, unusual_feeding
from calibrator.science.scoop import wall_length_mm
from calibrator.units import Kind, Quantity

FIELD_WIDTH = 320


class StepTools(StepView):
    """Everything is kept as soon as it is chosen or typed."""

    def __init__(self, desk: Desk) -> None:
        super().__init__(
            desk,
            self.tr(
                "Stand the scale level, away from drafts. Set the empty scoop on it and zero it, so that it "
                "shows the powder alone. If you have a check weight, weigh it too."
            ),
        )
        self._scoop = NameChoice()
        self._scale = NameChoice()
        self._zeroed = QCheckBox(self.tr("The scale stands le&vel and shows zero with the empty scoop on it"))
        self._target = self._quantity(Kind.MASS, self.tr("Target weight"))
        self._target.understood.connect(self.typing)
        self._nominal = self._quantity(Kind.MASS, self.tr("Check weight"), required=False, examples=CHECK_WEIGHT)
        self._reading = self._quantity(Kind.MASS, self.tr("Scale reads"), required=False, examples=CHECK_WEIGHT_READ)
        self._old_line = self._quantity(Kind.LENGTH, self.tr("Old line"), required=False, ruled=True)
        self._zero_says = label(self.tr("Press the space bar to tick it, once it is so."), "caution")
        self._zero_says.hide()
        self._target_says = label("", "caution")
        self._planned_says = label("")
        self._several_says = label("")
        self._scale_says = label("")
        self._together = label("")
        rows = (
            (self.tr("S&coop"), self._scoop, ""),
            (self.tr("Sc&ale"), self._scale, ""),
            (
                self.tr("Tar&get weight"),
                self._target,
                self.tr("all the powder a calf gets at one feeding; of several groups, what most get"),
            ),
            (self.tr("C&heck weight"), self._nominal, self.tr("if you have one: what it should weigh")),
            (self.tr("Scale &reads"), self._reading, self.tr("with the check weight on it")),
            (
                self.tr("&Old line"),
                self._old_line,
                self.tr("down the wall from the rim; empty if there is none"),
            ),
        )
        self._scoop.activated.connect(self._choose_scoop)
        self._scale.activated.connect(self._choose_scale)
        self._zeroed.toggled.connect(self._zero)
        on_enter(self._zeroed, self._past_zero)
        says = (self._planned_says, self._target_says, self._several_says, self._scale_says, self._together)
        self.body.addWidget(card(form_rows(rows, FIELD_WIDTH), self._zeroed, self._zero_says, *says))
        self.body.addWidget(button(self.tr("Set &up another scoop or scale"), self._set_up, "link"))
        self.body.addStretch(1)

    def refresh(self, guide: Guide, fresh: bool) -> None:
        self._fill_choice(self._scoop, Scoop, guide.weigh_in.scoop_id)
        self._fill_choice(self._scale, Scale, guide.weigh_in.scale_id)
        self._zeroed.setChecked(guide.weigh_in.scale_zeroed)
        for field in (self._target, self._nominal, self._reading, self._old_line):
            field.set_system(self.desk.system)
        self._follow_scale(guide)
        self._old_line.set_limits(None, wall_length_mm(guide.scoop.shape) if guide.scoop else None)
        self._show_kept(guide, fresh)
        if fresh:
            self._zero_says.hide()
            self._suggest(guide)
        self._tell_planned(guide)
        self._judge_target(guide)
        self._judge_scale(guide)

    def first_field(self) -> QWidget:
        """The first one that is still to be filled in."""
        w = self.guide.weigh_in if self.guide else None
        if w is None or w.scoop_id is None:
            return self._scoop
        if w.scale_id is None:
            return self._scale
        return self._zeroed if w.target_mass_g is not None and not w.scale_zeroed else self._target

    def _follow_scale(self, guide: Guide) -> None:
        """What is weighed on the scale is typed in the unit of its display, and is never more than it weighs."""
        for field in (self._nominal, self._reading):
            field.set_default_unit(unit_of(guide.scale, self.desk.system))
            field.set_limits(None, guide.scale.capacity_g if guide.scale else None)

    def _show_kept(self, guide: Guide, fresh: bool) -> None:
        w = guide.weigh_in
        show_kept(self._target, w.target_mass_g, w.target_typed, fresh)
        show_kept(self._nominal, w.check_nominal_g, w.check_nominal_typed, fresh)
        show_kept(self._reading, w.check_reading_g, w.check_reading_typed, fresh)
        show_kept(self._old_line, w.old_line_mm, w.old_line_typed, fresh)

    def _suggest(self, guide: Guide) -> None:
        """A lone scoop or scale is the one; the target and the old line are those of last time, or as planned."""
        w = guide.weigh_in
        known: dict[str, object] = {}
        if w.scoop_id is None and self._scoop.count() == 1:
            known["scoop_id"] = self._scoop.itemData(0)
        if w.scale_id is None and self._scale.count() == 1:
            known["scale_id"] = self._scale.itemData(0)
        if known:
            self.desk.attempt(lambda: guide.set(**known))
        self._suggest_weights(guide)

    def _suggest_weights(self, guide: Guide) -> None:
        """The target and the old line of the scoop's last mark; for a scoop that has none, what the plans feed."""
        w = guide.weigh_in
        mark = self._last_mark(w.scoop_id)
        if mark is None:
            self._suggest_from_plans(guide)
            return
        if w.target_mass_g is None and not self._target.text():
            self._target.set_value(self._feeding_g(mark))
            self._take_quantities()
        if w.old_line_mm is None and not self._old_line.text() and not mark.struck_level:
            self._old_line.set_value(mark.down_wall_mm)
            self._take_quantities()

    def _suggest_from_plans(self, guide: Guide) -> None:
        w, planned = guide.weigh_in, guide.planned
        if planned is not None and w.scoop_id and w.target_mass_g is None and not self._target.text():
            self._target.set_value(planned[0])
            self._take_quantities()

    def _fill_choice(self, box: QComboBox, kind: type[Scoop] | type[Scale], chosen: str | None) -> None:
        farm = self.desk.farm
        things = self.desk.records.every(kind, farm.id) if farm else []
        usable = [thing for thing in things if thing.retired_on is None or thing.id == chosen]
        box.blockSignals(True)
        box.clear()
        for thing in usable:
            box.addItem(on_screen(scoop_title(thing) if isinstance(thing, Scoop) else thing.name), thing.id)
        box.setCurrentIndex(next((i for i, thing in enumerate(usable) if thing.id == chosen), -1))
        box.setPlaceholderText(self.tr("choose"))
        box.blockSignals(False)

    def _judge_target(self, guide: Guide) -> None:
        target_g = guide.weigh_in.target_mass_g
        hardly_meant = target_g is not None and unusual_feeding(target_g)
        quantity = self._target.quantity() if hardly_meant else None
        meant = meant_words(quantity, likeliest_feeding, unit_first=True) if quantity is not None else ""
        told = words.target_words(self.desk.system, meant)
        self._target_says.setText(told if hardly_meant else "")
        self._target_says.setVisible(hardly_meant)
        level_g = guide.level_about_g
        several = target_g is not None and level_g is not None and target_g > level_g and not hardly_meant
        self._several_says.setVisible(several)
        if several and level_g is not None:
            told = self.tr("A level scoopful of usual powder weighs about {mass} here: two or more may be needed.")
            if guide.level_weighed_g is not None:
                told = self.tr(
                    "The target is more than this scoop holds (about {mass} level): two or more scoopfuls a feeding."
                )
            self._several_says.setText(told.format(mass=shown.mass(level_g, self.desk.system)))

    def _tell_planned(self, guide: Guide) -> None:
        """Whence the first target of a scoop comes: nobody has to wonder who typed it."""
        target_g, scoop_id = guide.weigh_in.target_mass_g, guide.weigh_in.scoop_id
        first = target_g and scoop_id and self._last_mark(scoop_id) is None
        planned = guide.planned if first else None
        told = planned is not None and target_g is not None and same_weight(planned[0], target_g)
        self._planned_says.setVisible(told)
        if planned is not None and told:
            text = self.tr("The target weight is proposed from your plan ({plan}). Type another over it if need be.")
            self._planned_says.setText(text.format(plan=planned[1]))

    def _judge_scale(self, guide: Guide) -> None:
        check = guide.findings.scale
        before = guide.scale_was_off if check is None else None
        self._scale_says.setVisible(check is not None or before is not None)
        if check is not None:
            text, tone = words.scale_words(check, guide.weigh_in, self.desk.system)
            self._scale_says.setText(text)
            set_tone(self._scale_says, tone)
        elif before is not None:
            self._scale_says.setText(words.scale_before_words(before, self.desk.system))
            set_tone(self._scale_says, "warn")
        count = guide.findings.scoopfuls_together
        self._together.setVisible(count > 1)
        if count > 1:
            text = counted.weigh_together(count)
            self._together.setText(text)

    def _feeding_g(self, mark: Mark) -> float:
        """What a line was drawn for: of equal scoopfuls to it the mark tells one, the weigh-in all."""
        records = self.desk.records
        of_it = (signed for signed in records.sign_offs(mark.farm_id, mark.lot_id) if signed.id == mark.sign_off_id)
        weighed = [records.find(WeighIn, signed.weigh_in_id).target_mass_g for signed in of_it]
        return next((target_g for target_g in weighed if target_g), mark.target_mass_g)

    def _last_mark(self, scoop_id: str | None) -> Mark | None:
        """The line that the scoop bears: its newest mark, for whatever lot."""
        marks = self.desk.records.marks(scoop_id=scoop_id) if scoop_id else []
        return marks[-1] if marks else None

    def _quantity(
        self,
        kind: Kind,
        name: str,
        required: bool = True,
        examples: Mapping[UnitSystem, str] | None = None,
        ruled: bool = False,
    ) -> QuantityField:
        field = QuantityField(kind, self.desk.system, name=name, required=required, examples=examples, ruled=ruled)
        field.editingFinished.connect(self._take_quantities)
        field.returnPressed.connect(self._onward)
        return field

    def typed_already(self) -> frozenset[Missing]:
        return frozenset({Missing.TARGET} if self._target.quantity() else ())

    def take(self) -> bool:
        self._take_quantities()
        return True

    def _take_quantities(self) -> None:
        """Keep what is understood; a text that is not stays in its field, with the reason beneath."""
        if self.guide is None:
            return
        guide = self.guide
        known: dict[str, object] = {}
        for field, name in (
            (self._target, "target"),
            (self._nominal, "check_nominal"),
            (self._reading, "check_reading"),
            (self._old_line, "old_line"),
        ):
            quantity = field.quantity()
            suffix = "_mm" if name == "old_line" else "_mass_g" if name == "target" else "_g"
            if quantity is not None or not field.text():
                known[name + suffix] = quantity.value if quantity else None
                known[name + "_typed"] = self._words_to_keep(field, quantity) if quantity else ""
        had_line, emptied = guide.weigh_in.drawn_line_mm is not None, not self._target.text()
        self.desk.attempt(lambda: guide.set(**known))
        if emptied and (stays_g := guide.weigh_in.target_mass_g) is not None:
            stays = self.tr("The target weight stays {mass}, for which the line is drawn, until another is typed.")
            self.desk.say(stays.format(mass=shown.mass(stays_g, self.desk.system)))
        if had_line and guide.weigh_in.drawn_line_mm is None:
            self.desk.say(self.tr("The line was drawn for another weight: the step Mark tells where it goes now."))

    def _words_to_keep(self, field: QuantityField, quantity: Quantity) -> str:
        """As it was typed; with its unit where that is not the one that a bare number has everywhere."""
        return field.told() if field in (self._nominal, self._reading) else quantity.typed

    def _choose_scoop(self, index: int) -> None:
        if self.guide is None or self._scoop.itemData(index) == self.guide.weigh_in.scoop_id:
            return
        guide, chosen = self.guide, self._scoop.itemData(index)
        if guide.known.fills:
            self.desk.ask.tell(
                self.tr("Fills were already weighed with this scoop. To use another scoop, start a new weigh-in.")
            )
            self.refresh(guide, False)
            return
        self.desk.attempt(lambda: guide.set(scoop_id=chosen))
        self._suggest_weights(guide)

    def _choose_scale(self, index: int) -> None:
        if self.guide is None or self._scale.itemData(index) == self.guide.weigh_in.scale_id:
            return
        guide, chosen = self.guide, self._scale.itemData(index)
        if guide.known.fills:
            self.desk.ask.tell(
                self.tr("Fills were already weighed on this scale. To use another scale, start a new weigh-in.")
            )
            self.refresh(guide, False)
            return
        before, scale = guide.weigh_in, guide.scale
        self.desk.attempt(lambda: guide.set(scale_id=chosen))
        if scale is not None and guide.weigh_in.scale_id == chosen:
            self._tell_other_scale(guide, scale.name, before)

    def _tell_other_scale(self, guide: Guide, scale: str, before: WeighIn) -> None:
        """What went with the scale before it."""
        now, system = guide.weigh_in, self.desk.system
        told = [self.tr("Zero this scale too.")] if before.scale_zeroed else []
        if now.check_reading_g is not None:
            reading = as_typed(now.check_reading_g, now.check_reading_typed, system)
            told.append(self.tr("The check weight is back as it was read on it: {reading}.").format(reading=reading))
        elif before.check_reading_g is not None:
            reading = as_typed(before.check_reading_g, before.check_reading_typed, system)
            text = self.tr("Weigh the check weight on it: {reading} was read on {scale}.")
            told.append(text.format(reading=reading, scale=on_screen(scale)))
        if told:
            self.desk.say(" ".join(told))

    def _zero(self, on: bool) -> None:
        self._zero_says.hide()
        if self.guide is not None:
            guide = self.guide
            self.desk.attempt(lambda: guide.set(scale_zeroed=on))

    def _onward(self) -> None:
        self._take_quantities()
        field = self.sender()
        if not (isinstance(field, QuantityField) and stays_wrong(field)):
            self.focusNextChild()

    def _past_zero(self) -> None:
        """Enter ticks nothing: who presses it once too often has not looked at the scale."""
        if self._zeroed.isChecked():
            self.ready.emit()
        else:
            self._zero_says.show()  # where the eyes are

    def _set_up(self) -> None:
        self.desk.go_to.emit("setup", "")
