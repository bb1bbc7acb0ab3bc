"""The spot fill: one weight from a newly opened bag, Enter, and at once whether the mark still holds."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from functools import partial
from math import isclose

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QButtonGroup, QComboBox, QFrame, QRadioButton, QVBoxLayout

from calibrator.desk import shown
from calibrator.desk.alone import keep_or_wait
from calibrator.desk.as_typed import as_typed
from calibrator.desk.context import Desk
from calibrator.desk.counted import counted
from calibrator.desk.forms.amount import Amount
from calibrator.desk.forms.fields import Captioned, TextField
from calibrator.desk.how.view import how_button
from calibrator.desk.how.working import Working
from calibrator.desk.in_use import LotState
from calibrator.desk.needs import THIN, bags_off
from calibrator.desk.parts import Tone, button, label, row, set_style_property, set_tone
from calibrator.desk.refusals import in_words
from calibrator.desk.scoop_lines import ScoopState, lines_beside, lines_to_come, other_lines_mm, scoop_state
from calibrator.desk.speech import day_text
from calibrator.desk.spots import (
    SpotFacts,
    SpotFindings,
    SpotNeed,
    filled_to_other,
    meant_g,
    read_spots,
    spot_doubt,
    spot_findings,
    to_line_g,
)
from calibrator.desk.standing import Standing
from calibrator.desk.theme import SPACE
from calibrator.desk.weigh_in.scale_unit import doubted, meant_words
from calibrator.desk.weigh_in.words import corrected_words
from calibrator.desk.widgets.initials import select_on_entry
from calibrator.desk.widgets.name_choice import NameChoice
from calibrator.desk.words import (
    line_words,
    made_of_words,
    mark_words,
    only_to_line_words,
    usual_slips,
    watch_words,
    way_words,
)
from calibrator.model import FillWay, Mark, Scoop, SignOff, SpotFill, UnitSystem, new_id
from calibrator.records.entries import Added, Struck
from calibrator.science.errors import CannotCompute
from calibrator.science.mark import OldLineVerdict, tolerance_band
from calibrator.science.plausible import Doubt
from calibrator.units import Kind

LONGEST_INITIALS = 12
NOT_FED_YET = (LotState.DELIVERED, LotState.UNDER_WAY, LotState.WAITING)
LINES_OF_REFUSAL = 2
MOST_ASKED = 6
"""More spot fills than this nobody weighs for one answer: then it is a fill from each bag as it is opened."""


class SpotCard(QFrame):
    """Keeps a spot fill and tells what it means; a slip can be struck out, with the reason, and count again."""

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self.desk = desk
        self._now: Standing | None = None
        self._newest: SpotFill | None = None
        self._before: SpotFill | None = None  # the one that counts before the newest
        self._struck: SpotFill | None = None
        self._facts: dict[str, SpotFacts] = {}
        self.setProperty("kind", "card")
        self.scoop = NameChoice()
        self.scoop.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        self._scoop_box = Captioned(self.tr("Scoop"), self.scoop)
        self.level = QRadioButton(self.tr("Struck le&vel"))
        self.to_mark = QRadioButton(self.tr("To the li&ne"))
        self.to_mark.setChecked(True)
        self._ways = QButtonGroup(self)
        self.weight = Amount(desk, self.tr("Wei&ght of the scoopful"), Kind.MASS)
        self.by = TextField(self.tr("Your initials"), longest=LONGEST_INITIALS)
        select_on_entry(self.by.line)
        self.keep_button = button(self.tr("&Keep"), self.keep)
        self.what = label("", "quiet")
        self.bag = label("")
        self.verdict = label("")
        self.numbers = label("", "quiet")
        self._found_now: SpotFindings | None = None
        self.how = how_button(self.workings)
        self._last = label("", "quiet")
        self.strike_button = button(self.tr("St&rike it out"), self._strike, "link")
        self.strike_before_button = button("", partial(self._strike, before=True), "link")
        self.restore_button = button("", self._restore, "link")
        self.weigh_button = button(self.tr("Weigh the lot in &anew"), self.weigh_anew)
        self._lay_out()
        self.weight.entered.connect(self.keep)
        self.weight.edited.connect(self._light)
        self.weight.finished.connect(self._withdrawn)
        self.by.entered.connect(self.weight.line.setFocus)
        self.scoop.activated.connect(self._offer_ways)
        self.scoop.activated.connect(self._tell)
        self.to_mark.toggled.connect(self._tell_what)

    def show_standing(self, now: Standing) -> None:
        """Offer the scoops that are marked for the lot in use; hidden where there is none."""
        self._now = now
        self.setVisible(bool(now.in_use and now.in_use.marks))
        chosen = self.scoop.currentData()
        names = {scoop.id: scoop.name for scoop in self.desk.records.every(Scoop, now.farm_id)}
        self.scoop.clear()
        for mark in now.in_use.marks if now.in_use else ():
            self.scoop.addItem(names.get(mark.scoop_id, ""), mark.id)
        self.scoop.setCurrentIndex(max(self.scoop.findData(chosen), 0))
        self._scoop_box.setVisible(self.scoop.count() > 1)
        self._offer_ways()
        if not self.by.busy and not self.by.text():
            self.by.set_text(self.desk.initials)
        self._tell()

    def _offer_ways(self) -> None:
        """A scoop that is struck level has no line to be filled to, and while nobody said that the lot's line is on a
        scoop, what is filled to the one that is there would be judged as if it were."""
        mark = self._mark()
        without = mark is not None and (mark.struck_level or self._to_be_marked(mark))
        if without:
            self.level.setChecked(True)
        elif not self.to_mark.isVisibleTo(self):
            self.to_mark.setChecked(True)
        self.to_mark.setVisible(not without)

    def _to_be_marked(self, mark: Mark) -> bool:
        return self._state(mark) in (ScoopState.TO_MARK, ScoopState.UNDER_WAY)

    def _state(self, mark: Mark) -> ScoopState | None:
        known = self._now.in_use if self._now else None
        return scoop_state(self._now, known, mark.scoop_id) if self._now and known else None

    def go_on(self) -> None:
        """Tell anew while the server is away: of the lot as last read, with what waits."""
        if self._now is not None:
            self._tell()

    def keep(self) -> None:
        """Keep the weight; the field is free for the next one, the answer stands beneath."""
        mark, signed = self._mark(), self._signed()
        found = self.weight.quantity()
        if not self.weight.understood():
            self._refused()
            return
        if found is None or mark is None or signed is None:
            return
        if not self.by.text():
            self.by.say(self.tr("Say who weighed."), wrong=True)
            self.by.line.setFocus(Qt.FocusReason.OtherFocusReason)
            return
        self.desk.initials = self.by.text()
        way = FillWay.LEVEL if self.level.isChecked() else FillWay.TO_MARK
        if doubt := self._doubt(signed, way, found.value):
            meant = meant_words(found, partial(meant_g, self._read(signed), way))
            weight = doubted(found, self.weight.told(), self.desk.system)
            self.weight.say(f"{self._doubt_words(doubt).format(weight=weight)} {meant}".rstrip(), wrong=True)
            self._refused()
            return
        spot = SpotFill(
            id=new_id(),
            farm_id=signed.farm_id,
            lot_id=signed.lot_id,
            weigh_in_id=signed.weigh_in_id,
            way=way,
            mass_g=found.value,
            typed=self.weight.told(),
            by=self.by.text(),
            at=self.desk.clock(),
            line_mm=mark.down_wall_mm if way is FillWay.TO_MARK else None,
        )
        add = partial(self.desk.records.add_spot_fill, spot)
        if self.desk.attempt(partial(keep_or_wait, self.desk.outbox, add, Added(spot.at, spot), spot)) is not None:
            self.weight.set_value(None)
            self._light()
            self.weight.line.setFocus(Qt.FocusReason.OtherFocusReason)

    def _refused(self) -> None:
        """What is typed next takes the place of what was refused."""
        self.weight.line.selectAll()
        self._tell_refused()

    def _tell_refused(self) -> None:
        """What the fill before came to is no answer to a weight that is refused."""
        if self.weight.text() and self.weight.problem():
            for told in (self.bag, self.verdict):
                told.hide()

    def _withdrawn(self) -> None:
        """Tell again of the fill before, once what was refused is taken out."""
        if not self.weight.text() and self._found_now is not None and self.bag.isHidden():
            self._tell()

    def _light(self) -> None:
        """What stands out on the page is what waits to be done, and a typed weight that waits to be kept."""
        set_style_property(self.keep_button, "kind", "main" if self.weight.text() else "")

    def pending(self) -> str:
        """What is typed here and not kept yet; blank where all is kept."""
        return self.tr("a spot fill") if self.weight.text() else ""

    def workings(self) -> tuple[Working, ...]:
        """How the verdict on the line came about."""
        from calibrator.desk.how.of_spot import of_spot  # the day's page is up before anybody asks

        found, mark, farm = self._found_now, self._mark(), self.desk.farm
        return of_spot(found, mark, farm) if found and mark and farm else ()

    def _lay_out(self) -> None:
        for choice in (self.level, self.to_mark):
            self._ways.addButton(choice)
        how = self.tr(
            "Opened another bag? Stir it up, fill the scoop once and weigh it: a spot fill tells whether the line "
            "still holds."
        )
        layout = QVBoxLayout(self)
        layout.setContentsMargins(2 * SPACE, 2 * SPACE, 2 * SPACE, 2 * SPACE)
        layout.setSpacing(SPACE)
        layout.addWidget(label(self.tr("Spot fill"), "heading"))
        layout.addWidget(label(how, "quiet"))
        layout.addWidget(self._scoop_box)
        layout.addLayout(row(self.to_mark, self.level, None))
        layout.addWidget(self.what)
        fields = row(self.weight, self.by)
        fields.setStretch(0, 3)
        fields.setStretch(1, 2)
        layout.addLayout(fields)
        refusal = self.weight.box.say_beside("")  # as wide as the card: beneath the narrow field it would be cut off
        refusal.keep_lines(LINES_OF_REFUSAL)
        layout.addWidget(refusal)
        for line in (self.bag, self.verdict):
            layout.addWidget(line)
        layout.addLayout(row(self.keep_button, self.weigh_button, None))
        layout.addWidget(self._last)
        layout.addLayout(row(self.strike_button, self.restore_button, None))
        layout.addLayout(row(self.strike_before_button, None))
        layout.addWidget(self.numbers)
        layout.addLayout(row(self.how, None))
        layout.addStretch(1)

    def _mark(self) -> Mark | None:
        marks = self._now.in_use.marks if self._now and self._now.in_use else ()
        return next((mark for mark in marks if mark.id == self.scoop.currentData()), None)

    def _signed(self) -> SignOff | None:
        mark = self._mark()
        sign_offs = self._now.sign_offs if self._now else ()
        return next((made for made in sign_offs if mark and made.id == mark.sign_off_id), None)

    def _tell(self) -> None:
        """Say what the spot fills so far mean for the chosen scoop."""
        mark, signed = self._mark(), self._signed()
        found, trouble = None, ""
        if mark and signed:
            try:
                found = self._found(signed, mark)
            except CannotCompute as error:
                trouble = in_words(error)
        self._found_now = found
        self.weigh_button.setVisible(self.to_weigh_anew)
        words, tone = self._verdict(found, mark) if found and mark else (trouble, "bad")
        self.verdict.setText(words)
        self.verdict.setVisible(bool(words))
        set_tone(self.verdict, tone)
        self._tell_newest(signed)
        self._tell_bag(found, mark)
        self.strike_before_button.setVisible(bool(found and found.came_right and self._before))
        if self._before is not None:
            text = self.tr("Strike out {weight}")
            self.strike_before_button.setText(text.format(weight=self._as_typed(self._before)))
        for widget in (self.numbers, self.how):
            widget.setVisible(found is not None)
        if found:
            self.numbers.setText(self._numbers(found))
        self._tell_refused()
        self._tell_what()

    def _tell_what(self) -> None:
        """Where level scoopfuls go before the one to the line: that the one is weighed, and not the feeding."""
        mark, signed = self._mark(), self._signed()
        if mark and signed:
            awaited_g = to_line_g(signed, mark) if self.to_mark.isChecked() else signed.level_mean_g
            self.weight.box.set_examples({one: shown.mass(awaited_g, one) for one in UnitSystem})
        told = self._what(mark, signed) if mark and signed else []
        self.what.setVisible(bool(told))
        self.what.setText(" ".join(told))

    def _what(self, mark: Mark, signed: SignOff) -> list[str]:
        if not mark.struck_level and self._to_be_marked(mark):
            if self._state(mark) is ScoopState.UNDER_WAY:
                return [self.tr("Struck level only, until the weigh-in under way is signed off.")]
            return [self.tr("Struck level only, until it is told above that the line of this lot is on.")]
        if not self.to_mark.isChecked():
            return []
        told = []
        if self._now and lines_beside(self._now, mark):
            text = self.tr("Several lines are on the scoop: fill to the one for {target}, {line} down the wall.")
            told.append(text.format(target=self._mass(mark.target_mass_g), line=mark_words(mark, self.desk.system)))
        elif self._now and lines_to_come(self._now, mark.scoop_id):
            text = self.tr("Two lines are on the scoop: fill to the one {line} down the wall.")
            told.append(text.format(line=mark_words(mark, self.desk.system)))
        if mark.full_scoops > 0:
            told.append(only_to_line_words(self._mass(to_line_g(signed, mark))))
        return told

    def _found(self, signed: SignOff, mark: Mark) -> SpotFindings | None:
        if not self.desk.records.spot_fills(signed.lot_id):
            return None
        return spot_findings(self._read(signed), signed, mark)

    def _doubt(self, signed: SignOff, way: FillWay, mass_g: float) -> Doubt | None:
        return spot_doubt(self._read(signed), way, mass_g)

    def _read(self, signed: SignOff) -> SpotFacts:
        """The facts as they are; what earlier lots teach is read once."""
        last = self._facts.get(signed.id)
        facts = read_spots(self.desk.records, signed, last.known.experience if last else None)
        self._facts = {signed.id: facts}
        return facts

    def _verdict(self, found: SpotFindings, mark: Mark) -> tuple[str, Tone]:
        level = mark.struck_level
        if found.verdict is OldLineVerdict.KEEP:
            if by_bags := bags_off(self._now) if self._now else None:
                return self._but_bags(by_bags.side), "warn"
            holds = self.tr("For the whole lot the mark still holds.")
            does = self.tr("For the whole lot level scoopfuls still do.")
            return does if level else holds, "good" if found.bag.within and not found.odd else ""
        if found.verdict is OldLineVerdict.MOVE and self.under_way:
            return self.tr("What was signed off no longer holds: go on with the weigh-in that is under way."), "bad"
        if found.verdict is OldLineVerdict.MOVE:
            moves = self.tr("The mark no longer holds: weigh the lot in anew and move the line.")
            return self.tr("Level scoopfuls no longer do: weigh the lot in anew.") if level else moves, "bad"
        if found.way is FillWay.LEVEL and not level:
            return self.tr("Level fills leave it open. Fill the next one to the line: that tells sooner."), "warn"
        if found.more_fills > MOST_ASKED and found.level.check_weight_tells:
            return self.tr(
                "Of the whole lot nothing is sure, for no check weight told at the weigh-in how right the scale is: "
                "weigh one fill from each bag you open."
            ), "warn"
        if found.more_fills > MOST_ASKED:
            return self.tr("Of the whole lot nothing is sure yet: weigh one fill from each bag you open."), "warn"
        return counted.more_spot_fills(found.more_fills), "warn"

    def _but_bags(self, side: str) -> str:
        """A line that is right while feedings are not: then it is how it is filled to, or how many are taken."""
        text = self.tr("The spot fills came out right, yet by the bags counted each feeding gets too much powder.")
        if side == THIN:
            text = self.tr(
                "The spot fills came out right, yet by the bags counted each feeding gets too little powder."
            )
        return f"{text} {watch_words()}"

    @property
    def found(self) -> SpotFindings | None:
        """What the spot fills of the lot in use say; None without any."""
        return self._found_now

    @property
    def under_way(self) -> bool:
        """Whether the lot in use is being weighed in anew already."""
        return bool(self._now and self._now.in_use and self._now.in_use.open_weigh_in)

    @property
    def to_weigh_anew(self) -> bool:
        """Whether the lot may have to be weighed in anew, and nobody has begun."""
        return self._found_now is not None and self._found_now.to_weigh_anew and not self.under_way

    @property
    def no_longer(self) -> str:
        """The scoop whose line holds no longer by the spot fills; blank for none."""
        mark, found = self._mark(), self._found_now
        return mark.scoop_id if mark and found and found.asks is SpotNeed.ANEW else ""

    def start(self) -> None:
        """The keys to the weight of a spot fill."""
        self.weight.line.setFocus(Qt.FocusReason.OtherFocusReason)

    def _tell_bag(self, found: SpotFindings | None, mark: Mark | None) -> None:
        """First what the newest fill says of the bag in hand, and what to do with that bag now."""
        farm = self.desk.farm
        self.bag.setVisible(found is not None and mark is not None and farm is not None)
        if found is None or mark is None or farm is None:
            return
        bag = found.bag
        off, tolerance = shown.shares_beside((abs(bag.share), farm.tolerance_share))
        if bag.share < 0:
            text = self.tr("This bag: {mass}, {off} less than {target}.")
            several = self.tr("A feeding from this bag ({made_of}): {mass}, {off} less than {target}.")
        else:
            text = self.tr("This bag: {mass}, {off} more than {target}.")
            several = self.tr("A feeding from this bag ({made_of}): {mass}, {off} more than {target}.")
        text = several if mark.full_scoops else text
        if found.taken_off_g:
            text = f"{text.removesuffix('.')} ({corrected_words(found.taken_off_g, self.desk.system)})."
        mass, target = self._mass(bag.feeding_g), self._mass(mark.target_mass_g)
        if self._newest is not None and isclose(bag.feeding_g, self._newest.mass_g):
            mass = self._as_typed(self._newest)  # the share beside it is of what was typed, to its last digit
        if target in mass and bag.share:  # "313 g, 0.2 % more than 313 g" contradicts itself
            target = shown.fine_mass(mark.target_mass_g, self.desk.system)
        facts = text.format(made_of=made_of_words(mark), mass=mass, off=off, target=target)
        if bag.within:
            within = self.tr("That is within the tolerance of {tolerance}.").format(tolerance=tolerance)
            if bag.coarse_g:
                within = self.tr(
                    "The steps of this scale alone make ± {mass}, more than the tolerance of {tolerance}: one fill "
                    "cannot show this bag to be off, nor right. A scale with finer steps would tell."
                ).format(mass=self._mass(bag.coarse_g), tolerance=tolerance)
            told = [*self._if_misread(found), facts, within, *self._if_one_bag(found)]
        else:
            limit = self.tr("The tolerance is {tolerance}.").format(tolerance=tolerance)
            once = [self._off_again(), facts, limit] if found.off_again else self._off_once(found, facts, limit)
            told = [*self._if_other_line(mark), *once, *self._whose_bag()]
        self.bag.setText(" ".join(told))
        set_tone(self.bag, "bad" if not bag.within else "warn" if found.odd else "" if bag.coarse_g else "good")

    def _if_other_line(self, mark: Mark) -> list[str]:
        """Where the weight is what another line on the scoop gives: asked before anything is made of the bag."""
        signed, now = self._signed(), self._now
        if signed is None or now is None or self._newest is None:
            return []
        line_mm = filled_to_other(self._facts[signed.id], signed, other_lines_mm(now, mark))
        if line_mm is None:
            return []
        text = self.tr(
            "{weight} is what the other line gives, {other} down the wall: was it filled to that one? Then strike it "
            "out and fill to the line {line} down. If not:"
        )
        told = text.format(
            weight=self._as_typed(self._newest),
            other=line_words(line_mm, self.desk.system),
            line=mark_words(mark, self.desk.system),
        )
        return [told]

    def _off_once(self, found: SpotFindings, facts: str, limit: str) -> list[str]:
        """What to do first: whether the fill or the bag was off, the bag tells."""
        first = self.tr("Stir this bag and weigh it again.")
        then = self.tr("As far off again? Feed from this bag by the scale.")
        return [first, facts, limit, *self._if_misread(found), then]

    def _off_again(self) -> str:
        """What follows a second fill off to the same side; which bag it is of, the records do not hold."""
        return self.tr(
            "Off again to the same side. The same bag as before? Feed from it by the scale and weigh one of another "
            "bag: two fills of one bag tell no more of the lot than one. Another bag? Weigh the lot in anew: it may "
            "have changed."
        )

    def _if_misread(self, found: SpotFindings) -> list[str]:
        if not found.odd or self._newest is None:
            return []
        text = self.tr("Was {weight} read and typed rightly? If not, strike it out.")
        return [text.format(weight=self._as_typed(self._newest))]

    def _if_one_bag(self, found: SpotFindings) -> list[str]:
        """A bag that came right once it was stirred: its first fill does not stand for it."""
        if not found.came_right or self._before is None:
            return []
        text = self.tr("The same bag as before? Then strike out {weight}.")
        return [text.format(weight=self._as_typed(self._before))]

    def _whose_bag(self) -> list[str]:
        """Where another lot is here that is not fed yet: whether the bag is of that one."""
        now = self._now
        here = [known.lot.lot_number for known in now.lots if known.state in NOT_FED_YET] if now else []
        if now is None or now.in_use is None or not here:
            return []
        words = self.tr("Is it a bag of lot {lot}? Read the number on it; here too: {others}.")
        return [words.format(lot=now.in_use.lot.lot_number, others=", ".join(here))]

    def _numbers(self, found: SpotFindings) -> str:
        mark, farm = self._mark(), self.desk.farm
        if mark is None or farm is None:
            return ""
        density = shown.density(found.density.density_g_per_ml, self.desk.system, found.density.expanded)
        limits_g = tolerance_band(mark.target_mass_g, farm.tolerance_share)
        mass, low, high = shown.mass_between(
            found.delivers_g, found.low_g, found.high_g, self.desk.system, limits_g=limits_g
        )
        lines = [
            self.tr("A feeding weighs {mass}, between {low} and {high} (95 %); wanted {target} ± {tolerance}.").format(
                mass=mass,
                low=low,
                high=high,
                target=self._mass(mark.target_mass_g),
                tolerance=shown.share(farm.tolerance_share),
            ),
            self.tr("Bulk density by the level fills: {density}, from {bags}.").format(
                density=density, bags=counted.bags(found.level.bags)
            ),
        ]
        return "\n".join(lines)

    def _tell_newest(self, signed: SignOff | None) -> None:
        spots = self._facts[signed.id].spots if signed and signed.id in self._facts else ()
        own = [spot for spot in spots if signed and spot.weigh_in_id == signed.weigh_in_id]
        counting = [spot for spot in own if spot.counts]
        self._newest = counting[-1] if counting else None
        self._before = counting[-2] if len(counting) > 1 else None
        self._struck = own[-1] if own and not own[-1].counts else None
        self.restore_button.setVisible(self._struck is not None)
        if self._struck is not None:
            text = self.tr("Let {weight} count again")
            self.restore_button.setText(text.format(weight=self._as_typed(self._struck)))
        for widget in (self._last, self.strike_button):
            widget.setVisible(self._newest is not None)
        if self._newest is not None:
            self._last.setText(
                self.tr("Last: {weight}, {way}, {day}, {who}.").format(
                    weight=self._as_typed(self._newest),
                    way=way_words(self._newest.way),
                    day=day_text(self._newest.at.astimezone().date()),
                    who=self._newest.by,
                )
            )

    def _strike(self, *, before: bool = False) -> None:
        spot = self._before if before else self._newest
        if spot is not None:
            question = self.tr("Why is {weight} struck out? It stays visible with the reason.")
            told = question.format(weight=self._as_typed(spot))
            self.desk.ask.reason(told, partial(self._strike_because, spot), usual_slips(spot.way))

    def _strike_because(self, spot: SpotFill, reason: str) -> None:
        by = self._whose_word()
        strike = partial(self.desk.records.strike_spot, spot.id, reason, by)
        self._keep_struck(strike, replace(spot, struck_reason=reason), by)

    def _restore(self) -> None:
        if self._struck is not None:
            by = self._whose_word()
            restore = partial(self.desk.records.restore_spot, self._struck.id, by)
            self._keep_struck(restore, replace(self._struck, struck_reason=None), by)

    def _whose_word(self) -> str:
        return self.by.text() or self.desk.initials

    def _keep_struck(self, keep: Callable[[], SpotFill], spot: SpotFill, by: str) -> None:
        entry = Struck(self.desk.clock(), by, spot.id, spot.struck_reason)
        self.desk.attempt(partial(keep_or_wait, self.desk.outbox, keep, entry, spot))

    def weigh_anew(self) -> None:
        """To the weigh-in of the lot in use."""
        if self._now and self._now.in_use:
            self.desk.go_to.emit("weigh_in", self._now.in_use.lot.id)

    def _doubt_words(self, doubt: Doubt) -> str:
        return {
            Doubt.OVER_CAPACITY: self.tr("{weight} is more than this scale weighs. Type it again."),
            Doubt.TOO_HEAVY: self.tr("No powder is as heavy as that. Look at the unit."),
            Doubt.TOO_LIGHT: self.tr("No scoopful is as light as that. Look at the unit."),
        }[doubt]

    def _as_typed(self, spot: SpotFill) -> str:
        return as_typed(spot.mass_g, spot.typed, self.desk.system)

    def _mass(self, mass_g: float) -> str:
        return shown.mass(mass_g, self.desk.system)
