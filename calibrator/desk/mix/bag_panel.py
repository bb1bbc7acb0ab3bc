"""Bags emptied against feedings made: the check that costs nothing."""

from __future__ import annotations

from datetime import date, datetime, timedelta

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QCheckBox, QVBoxLayout, QWidget

from calibrator.desk import shown
from calibrator.desk.context import Desk
from calibrator.desk.counted import counted
from calibrator.desk.days import DayNotUnderstood
from calibrator.desk.forms.amount import Amount
from calibrator.desk.forms.bare_field import BareField
from calibrator.desk.forms.enter import enter_moves_on
from calibrator.desk.forms.examples import BAG
from calibrator.desk.forms.fields import DayField
from calibrator.desk.forms.reach import FEEDING_G, PACKAGE_G
from calibrator.desk.mix.occasion_form import OccasionForm
from calibrator.desk.mix.withdrawing import ask_withdraw
from calibrator.desk.mix_batch import FarmNow
from calibrator.desk.mix_words import FINE_G, mass, number, powder_verdict_words, verdict_tone
from calibrator.desk.parts import button, card, clear, label, row, set_style_property, set_tone
from calibrator.desk.refusals import in_words
from calibrator.desk.speech import day_text
from calibrator.desk.standing import Standing, standing
from calibrator.desk.theme import SPACE
from calibrator.desk.widgets.beside import beside
from calibrator.desk.widgets.saying import keep_room
from calibrator.desk.widgets.side_by_side import SideBySide
from calibrator.desk.words import watch_words
from calibrator.model import BagCount, Composition, Lot, new_id
from calibrator.science.as_fed import Fed, fed_between
from calibrator.science.bag_count import DRIFT_SHARE, BagResult, Ends, bag_count, days_until_seen
from calibrator.science.check import Verdict
from calibrator.science.errors import CannotCompute
from calibrator.science.mixing import powder_from
from calibrator.units import Kind
from calibrator.units.bare import Bare

BAGS, FEEDINGS = Bare("6", 0.5, 5000.0), Bare("480", 1.0, 1_000_000.0)
SHOWN = 6
MOST_DAYS = 120  # a count over more days than this is not one that anybody made


class BagPanel(QWidget):
    """Typed as the bags are counted; the mean powder of a feeding is there at once."""

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self.desk = desk
        self._now: FarmNow | None = None
        self._standing: Standing | None = None
        self._counts: list[BagCount] = []
        self._kept: BagCount | None = None  # its verdict stays in view until the next count is typed
        self._shown_lot = ""
        self._own_target = False  # typed by hand: the plans change it no more
        self.since = DayField(self.tr("Counted since"), self._today)
        self.occasion = OccasionForm(desk, self.tr("Bags of lot"), self.tr("Counted until"), since=self.since)
        self.bags = BareField(self.tr("Bags emptied"), BAGS, 1)
        self.bag = Amount(
            desk,
            self.tr("Powder in a bag"),
            Kind.MASS,
            optional=True,
            within=PACKAGE_G,
            examples=BAG,
        )
        self.feedings = BareField(self.tr("Feedings made, one calf each"), FEEDINGS, 0)
        self.target = Amount(
            desk, self.tr("Powder of a feeding, on average"), Kind.MASS, optional=True,
            within=FEEDING_G,
        )  # fmt: skip
        self.sharp = QCheckBox(self.tr("From a bag just opened to a bag just emptied"))
        self.sharp.setChecked(True)
        self.suggest_button = button("", self._take_suggestion, "link")
        self.keep_button = button(self.tr("&Keep this count"), self.keep, "main")
        self.verdict, self.told, self.days = label("", "figure"), label(""), label("", "quiet")
        self._list = QVBoxLayout()
        self._lay_out()
        for numbers in (self.bags, self.feedings):
            numbers.understood.connect(self.work_out)
        self.bag.edited.connect(self.work_out)
        self.target.edited.connect(self._target_typed)
        self.since.edited.connect(self.work_out)
        self.occasion.edited.connect(self._other_lot)
        self.sharp.toggled.connect(self.work_out)

    def show_farm(self, now: FarmNow) -> None:
        """Read anew; what is typed stays, what is empty is filled in from lot and plan."""
        self._now = now
        self._standing = standing(self.desk.records, now.farm, self.desk.clock().date())
        self.occasion.show_lots(self._standing)
        self._fill_in()
        self._show_counts()
        self.work_out()

    def _lot(self) -> Lot | None:
        chosen = self.occasion.chosen()
        return chosen.lot if chosen else None

    def _fill_in(self) -> None:
        """What is empty is filled in from the lot that was chosen, and from the plan."""
        now, lot = self._now, self._lot()
        if now is None:
            return
        self._shown_lot = lot.id if lot else ""
        last = self._last_count()
        if lot and not self.bag.text():
            bag = (last.bag_mass_g, last.bag_mass_typed) if last else (lot.package_mass_g, lot.package_mass_typed)
            self.bag.set_value(*bag)
        if not self.since.text():
            self.since.set_day(last.at.astimezone().date() if last else self._begun())
        if not self.target.text():
            self._own_target = False
        self._fill_in_target()

    def _fill_in_target(self) -> None:
        """What the plans call for in the days counted, until another is typed."""
        wanted_g = None if self._own_target else (self._since_then() or self._a_day()).each_g
        if wanted_g is not None:
            self.target.set_value(round(wanted_g, 1))

    def _target_typed(self) -> None:
        self._own_target = True
        self.work_out()

    def _begun(self) -> date | None:
        """The day from which bags of the lot in use can have been counted; another lot's is for the person to say."""
        chosen = self.occasion.chosen()
        if chosen is None or not chosen.in_use:
            return None
        return max((day for day in (self._signed_on(), chosen.lot.fed_from) if day), default=None)

    def _signed_on(self) -> date | None:
        """The day on which the line of the chosen lot was signed, the newest where it was weighed in again."""
        lot = self._lot()
        known = self._standing.lot(lot.id) if self._standing and lot else None
        return known.sign_off.at.astimezone().date() if known and known.sign_off else None

    def _other_lot(self) -> None:
        """Another lot has bags of its own and was counted since another day; what was typed by hand stays."""
        lot = self._lot()
        if lot is not None and lot.id != self._shown_lot:
            self._kept = None
            self.bag.set_value(None)
            self.since.set_day(None)
            self._fill_in()
        self.work_out()

    def work_out(self) -> None:
        """What the count says now; with none in hand, what the one said that was kept last."""
        self._suggest()
        self._fill_in_target()
        self._judge_since()
        if self.pending():
            self._kept = None
        found = self._found()
        kept = self._kept if found is None else None
        shown = self._result_of(kept) if kept else found
        set_style_property(self.card, "tone", verdict_tone(shown.verdict) if shown else "")
        set_tone(self.verdict, verdict_tone(shown.verdict) if shown else "")
        self.what_to_do.setVisible(shown is not None and shown.verdict.outside)
        if shown is None:
            return
        self.verdict.setText(powder_verdict_words(shown.verdict))
        before = [self._kept_words(kept)] if kept else self._beyond_the_plan()
        self.told.setText(" ".join([*before, self._result_words(shown)]))

    def _kept_words(self, count: BagCount) -> str:
        lot = self._standing.lot(count.lot_id) if self._standing else None
        text = self.tr("Kept: lot {lot}, {since} to {until}. It stays in view until you type the next count.")
        return text.format(
            lot=lot.lot.lot_number if lot else "–",
            since=day_text(count.since),
            until=day_text(count.at.astimezone().date()),
        )

    def _judge_since(self) -> bool:
        """Whether the lot was there when the count began. A count that began before the lot was fed by its own line is
        asked about: it can be meant, and tells less."""
        since, lot = self._since(), self._lot()
        if since is None or lot is None:
            return True
        signed_on, told, short = self._signed_on(), "", ""
        day = lot.arrived_on
        if day and since < day:
            told = self.tr("Lot {lot} came only on {day}: count from that day on, or choose the lot fed before.")
            short = self.tr("It came on {day}.")
            self._say_since(told, short, lot, day, wrong=True)
            return False
        if lot.fed_from and since < lot.fed_from:
            day = lot.fed_from
            told = self.tr("Lot {lot} is fed only since {day}. Were these its bags? Better count from that day on.")
            short = self.tr("Fed only since {day}.")
        elif signed_on and since < signed_on:
            day = signed_on
            told = self.tr("The line of lot {lot} was signed only on {day}. Better count from that day on.")
            short = self.tr("Line signed on {day}.")
        if told and day:
            self._say_since(told, short, lot, day, wrong=False)
        return True

    def _say_since(self, told: str, short: str, lot: Lot, day: date, *, wrong: bool) -> None:
        said = day_text(day)
        self.since.say(
            told.format(lot=lot.lot_number, day=said), wrong=wrong, care=not wrong, short=short.format(day=said)
        )

    def _beyond_the_plan(self) -> list[str]:
        """More feedings than the plans make in those days, both ends counted in: asked, for the day may be wrong."""
        since, until, made = self._since(), self.occasion.at(), self.feedings.value()
        if since is None or until is None or made is None:
            return []
        most = self._by_plans(since, until.astimezone().date() + timedelta(days=1)).feedings
        if not 0 < most < made:
            return []
        text = self.tr("In those days the plans make {most} at most: are the day and the feedings right?")
        return [text.format(most=counted.feedings(most))]

    def keep(self) -> None:
        """Keep the count."""
        wrong = [field for field in (self.since, self.bags, self.feedings, self.bag, self.target) if not _sound(field)]
        if wrong:
            wrong[0].line.setFocus(Qt.FocusReason.OtherFocusReason)
            return
        count = self._made()
        if self.occasion.first_wrong() is not None:
            self.occasion.day.line.setFocus(Qt.FocusReason.OtherFocusReason)
            return
        if not self._in_order():
            return
        if count is None:
            self.bags.say(self.tr("Fill in bags, feedings and both weights."), wrong=True)
            return
        if self.desk.keep(count) is not None:
            self.bags.set_text("")
            self.feedings.set_text("")
            self.occasion.clear()
            self._shown_lot = ""  # the next count begins where this one ended
            self._other_lot()
            self._kept = count
            self.work_out()
            self.desk.say(self.tr("The count of bags is kept."))

    def _in_order(self) -> bool:
        """A count begins once its lot is there, and ends after it began."""
        since, until = self._since(), self.occasion.at()
        if not self._judge_since():
            self.since.line.setFocus(Qt.FocusReason.OtherFocusReason)
            return False
        if since is None or until is None or since <= until.astimezone().date():
            return True
        text = self.tr("The count would end on {day}, before it began.")
        self.since.say(text.format(day=day_text(until.astimezone().date())), wrong=True)
        self.since.line.setFocus(Qt.FocusReason.OtherFocusReason)
        return False

    def pending(self) -> str:
        """What is typed and not kept; blank where nothing is."""
        return self.bags.text() or self.feedings.text()

    def _today(self) -> date:
        return self.desk.clock().astimezone().date()

    def _by_plans(self, first: date, before: date) -> Fed:
        """What the plans of each of those days call for; nothing where one of them cannot be reckoned."""
        lot = self._lot()
        powder = powder_from(lot.composition if lot else Composition())
        try:
            return fed_between(self._standing.plans_told if self._standing else (), powder, first, before)
        except CannotCompute:
            return Fed()

    def _days(self) -> int:
        """How many days are counted: the one at which it ends begins the next count."""
        since, until = self._since(), self.occasion.at()
        return max(0, (until.astimezone().date() - since).days) if since and until else 0

    def _since_then(self) -> Fed | None:
        """What the plans called for in the days counted; None before these are told, and where nothing was fed."""
        since, days = self._since(), self._days()
        if since is None or days > MOST_DAYS:
            return None
        fed = self._by_plans(since, since + timedelta(days=days))
        return fed if fed.feedings else None

    def _a_day(self) -> Fed:
        """What the plans call for on the day at which the count ends."""
        until = self.occasion.at()
        day = until.astimezone().date() if until else self._today()
        return self._by_plans(day, day + timedelta(days=1))

    def _last_count(self) -> BagCount | None:
        """The count of the chosen lot that ended last."""
        lot = self._lot()
        counts = self.desk.records.every(BagCount, lot.farm_id, lot_id=lot.id) if lot else []
        return max((count for count in counts if count.counts), key=_ended, default=None)

    def _since(self) -> date | None:
        try:
            return self.since.day()
        except DayNotUnderstood:
            return None

    def _suggest(self) -> None:
        """Feedings by the plans of the days since, to take with one press."""
        days, fed = self._days(), self._since_then()
        self._suggested = fed.feedings if fed else 0
        self.suggest_button.setVisible(self._suggested > 0)
        text = self.tr("{count} by the plans of {days}")
        self.suggest_button.setText(text.format(count=self._suggested, days=counted.days(days)))

    def _take_suggestion(self) -> None:
        self.feedings.set_values(float(self._suggested))
        self.feedings.tell()
        self.work_out()

    @property
    def _ends(self) -> Ends:
        return Ends.SHARP if self.sharp.isChecked() else Ends.ROUGH

    def _found(self) -> BagResult | None:
        bags, feedings = self.bags.value(), self.feedings.value()
        bag, target = self.bag.value(), self.target.value()
        self._show_days(target, bag)
        if self._now is None or None in (bags, feedings, bag, target):
            self.verdict.setText(self.tr("No new count yet") if self._counts else self.tr("No count yet"))
            self.told.setText(self.tr("Type the bags that were emptied and the feedings made from them."))
            return None
        assert bags is not None
        assert feedings is not None
        assert bag is not None
        assert target is not None
        try:
            return bag_count(bags, bag, feedings, target, self._tolerance_share, self._ends)
        except CannotCompute as error:
            self.verdict.setText(self.tr("This cannot be"))
            self.told.setText(in_words(error))
            return None

    def _show_days(self, target: float | None, bag: float | None) -> None:
        daily = self._a_day().feedings
        if target is None or bag is None or daily < 1:
            self.days.setText("")
            return
        days = days_until_seen(daily, target, bag, self._ends)
        drift = shown.share(DRIFT_SHARE, 0)
        if days is None:
            text = self.tr("Counted like this, a drift of {drift} would never show: count from a bag just opened.")
            self.days.setText(text.format(drift=drift))
            return
        text = self.tr(
            "With {feedings} a day, counting for {days} tells whether there is a drift of {drift}, in four cases of "
            "five."
        )
        told = text.format(feedings=counted.feedings(daily), drift=drift, days=counted.days(days))
        self.days.setText(told)

    def _result_words(self, found: BagResult) -> str:
        system = self.desk.system
        text = self.tr(
            "Each feeding got {mean} of powder on average (95 % interval {low} to {high}), {share} {side} the target. "
            "A bag lasted {lasted}; it should last {should}."
        )
        side = self.tr("above") if found.share >= 0 else self.tr("below")
        fine = FINE_G[system]
        told = text.format(
            mean=mass(found.mean_g, system, fine),
            low=mass(found.low_g, system, fine),
            high=mass(found.high_g, system, fine),
            share=shown.unsigned_share(found.share),
            side=side,
            lasted=counted.feedings(round(found.feedings_per_bag)),
            should=number(found.should_be_per_bag, 0),
        )
        return f"{told} {self._open_words(found)}".rstrip()

    def _open_words(self, found: BagResult) -> str:
        """What an open verdict leaves open: off for sure and off by more than the farm lets pass are two things."""
        if found.verdict is not Verdict.CANNOT_TELL:
            return ""
        if not found.off_target:
            text = self.tr("Whether that is within the {tolerance} allowed, this count does not tell.")
        elif found.share > 0:
            text = self.tr(
                "That is surely above the target; whether by more than the {tolerance} allowed, this count does not "
                "tell."
            )
        else:
            text = self.tr(
                "That is surely below the target; whether by more than the {tolerance} allowed, this count does not "
                "tell."
            )
        return text.format(tolerance=shown.share(self._tolerance_share))

    def _made(self) -> BagCount | None:
        lot, until = self._lot(), self.occasion.at()
        bags, feedings, since = self.bags.value(), self.feedings.value(), self._since()
        bag, target = self.bag.value(), self.target.value()
        if (
            lot is None
            or until is None
            or bags is None
            or feedings is None
            or bag is None
            or target is None
            or since is None
        ):
            return None
        if self._found() is None:
            return None
        return BagCount(
            id=new_id(),
            farm_id=lot.farm_id,
            lot_id=lot.id,
            since=since,
            at=until,
            bags=bags,
            bags_typed=self.bags.text(),
            bag_mass_g=bag,
            bag_mass_typed=self.bag.told(),
            feedings=round(feedings),
            target_mass_g=target,
            target_typed=self.target.told(),
            sharp=self.sharp.isChecked(),
            feedings_per_day=self._a_day().feedings,
            by=self.desk.initials,
        )

    def _show_counts(self) -> None:
        clear(self._list)
        farm = self.desk.farm
        counts = [c for c in self.desk.records.every(BagCount, farm.id) if c.counts] if farm else []
        self._counts = list(reversed(counts[-SHOWN:]))
        if self._kept and self._kept.id not in [count.id for count in counts]:
            self._kept = None  # it was withdrawn
        if not self._counts:
            self._list.addWidget(label(self.tr("Nothing yet."), "quiet"))
            return
        for count in self._counts:
            self._list.addWidget(label(self._line(count)))
        self._list.addLayout(row(button(self.tr("With&draw the newest"), self.ask_withdraw), None))

    def _line(self, count: BagCount) -> str:
        found = self._result_of(count)
        text = self.tr("{since} to {until}: bags {bags}, {feedings}, {mean} each ({share})")
        return text.format(
            since=day_text(count.since),
            until=day_text(count.at.astimezone().date()),
            bags=count.bags_typed,
            feedings=counted.feedings(count.feedings),
            mean=mass(found.mean_g, self.desk.system),
            share=shown.signed_share(found.share),
        )

    def _result_of(self, count: BagCount) -> BagResult:
        ends = Ends.SHARP if count.sharp else Ends.ROUGH
        return bag_count(count.bags, count.bag_mass_g, count.feedings, count.target_mass_g, self._tolerance_share, ends)

    @property
    def _tolerance_share(self) -> float:
        return self._now.farm.tolerance_share if self._now else DRIFT_SHARE

    def ask_withdraw(self) -> None:
        ask_withdraw(self.desk, self._counts[0], self.tr("Why does this count of bags count no more?"))

    def _lay_out(self) -> None:
        left, right = QWidget(), QWidget()
        inside = QVBoxLayout(left)
        inside.setContentsMargins(0, 0, 0, 0)
        pairs = [SideBySide(*pair) for pair in ((self.bags, self.bag), (self.feedings, self.target))]
        keep_room(self.suggest_button)
        inside.addWidget(card(self.occasion, *pairs, self.suggest_button, self.sharp))
        inside.addStretch(1)
        self.what_to_do = label(
            self.tr("What to do: under Today weigh a spot fill of the bag in hand. {watch}").format(watch=watch_words())
        )
        self.card = card(self.verdict, self.told, self.what_to_do, self.days)
        told = QVBoxLayout(right)
        told.setContentsMargins(0, 0, 0, 0)
        told.setSpacing(int(1.5 * SPACE))
        told.addWidget(self.card)
        told.addWidget(card(label(self.tr("Counts so far"), "heading"), self._list))
        told.addStretch(1)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, int(1.5 * SPACE), 0, 0)
        layout.setSpacing(SPACE)
        layout.addWidget(beside(left, right), 1)
        layout.addLayout(row(self.keep_button, None))
        enter_moves_on(self)


def _ended(count: BagCount) -> datetime:
    return count.at


def _sound(field: DayField | BareField | Amount) -> bool:
    return field.tell() if isinstance(field, BareField) else field.understood()
