"""What needs doing, in words, each with the buttons that do it."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import replace
from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication
from PySide6.QtWidgets import QWidget

from calibrator.desk.at_hand import AtHand, Beside
from calibrator.desk.batch_names import whose_batch
from calibrator.desk.change_over import FedFrom, answered
from calibrator.desk.changing_over import ask_change_over, begin_lot, fed_from_now_on, is_told, keep_told, left_question
from calibrator.desk.chart_faults import Fault
from calibrator.desk.context import Desk
from calibrator.desk.counted import counted
from calibrator.desk.feeding_names import feeding_name
from calibrator.desk.marking import mark_scoop, on_the_scoop
from calibrator.desk.needs import THIN, Need, Waiting, leans, waiting
from calibrator.desk.scoop_lines import is_drawn, lines_beside, lines_to_wipe_out
from calibrator.desk.sheet_words import chart_words, label_words, outdated_words
from calibrator.desk.speech import day_text
from calibrator.desk.spots import SpotNeed
from calibrator.desk.standing import LotStanding, Standing
from calibrator.desk.words import also_to_draw_words, mark_words, old_lines_words, step_words
from calibrator.model import Ending, Lot, Mark, Plan, Printed, SheetEnding, new_id
from calibrator.science.scoop import same_line
from calibrator.values import dataclass

if TYPE_CHECKING:
    from calibrator.desk.pages.sheets_down import SheetsDown
    from calibrator.desk.pages.spot_card import SpotCard

NEW_LOT = "new"  # what the page of lots takes for an empty form
translate = QCoreApplication.translate


@dataclass(frozen=True)
class Do:
    """A button."""

    text: str
    act: Callable[[], None]


@dataclass(frozen=True)
class Told:
    """One thing that is waiting; the first button is the one that does it."""

    words: str
    does: tuple[Do, ...]


class WhatToDo:
    """Tells what is waiting, and does what can be done from the day's page."""

    def __init__(self, desk: Desk, page: QWidget) -> None:
        self.desk, self._page = desk, page
        self.down_dialog: SheetsDown | None = None

    def every(self, now: Standing, powder: AtHand | None, spots: SpotCard) -> Iterator[Told]:
        """All that is waiting; the bag in hand comes first, and the next lot has to be seen to before the last bag of
        this one is opened. Last, what more spot fills would tell."""
        asks = spots.found.asks if spots.found else None
        if asks is SpotNeed.ANEW and spots.under_way:
            asks = None  # what it asks for is begun, and waits to be gone on with
        if asks not in (None, SpotNeed.MORE):
            yield self._spot(spots)
        low, told = "", None
        if powder is not None and powder.low:
            low, told = counted.powder_for(powder.stock.days or 0).format(lot=powder.lot.lot_number), powder.next_lot
            if told is None or told.sign_off is None:
                yield self._next_lot(low, powder)
        for found in waiting(now):
            if found.need is Need.CHANGE_OVER:
                yield self._change_over(now, found, low)
            elif found.need is Need.OLD_LEFT:
                yield self._old_left(now, found, powder)
            elif not (told and found.lot == told.lot and found.need in (Need.GO_ON, Need.WEIGH_IN)):
                yield self._told(now, found)
        if asks is SpotNeed.MORE:
            yield self._spot(spots)

    def _spot(self, spots: SpotCard) -> Told:
        """What spot fills ask for; whether it was the bag or the lot, only who weighs knows."""
        assert spots.found is not None
        words = {
            SpotNeed.ANEW: translate(
                "TodayPage", "By its spot fills the lot in use is no longer as it was when weighed in."
            ),
            SpotNeed.OFF_AGAIN: translate(
                "TodayPage",
                "The last two spot fills were off to the same side. Of one bag? Weigh one of another bag. Of two bags? "
                "Weigh the lot in anew.",
            ),
            SpotNeed.OFF: translate("TodayPage", "The last spot fill was off: stir that bag and weigh it again."),
            SpotNeed.MORE: translate(
                "TodayPage", "A spot fill was off, and the whole lot is not sure yet: more spot fills are wanted."
            ),
        }
        spot = Do(translate("TodayPage", "&Weigh a spot fill"), spots.start)
        anew = Do(translate("TodayPage", "Weigh &in anew"), spots.weigh_anew)
        does = {SpotNeed.ANEW: (anew,), SpotNeed.OFF: (spot,)}
        asks = spots.found.asks
        assert asks is not None
        return Told(words[asks], does.get(asks, (spot, anew) if spots.to_weigh_anew else (spot,)))

    def leading(self, words: str, text: str, page: str, thing_id: str = "") -> Told:
        """What is done on another page."""
        return Told(words, (self._go(text, page, thing_id),))

    def _go(self, text: str, page: str, thing_id: str = "") -> Do:
        return Do(text, partial(self.desk.go_to.emit, page, thing_id))

    def _next_lot(self, low: str, powder: AtHand) -> Told:
        if powder.beside:
            return self._weigh_by_then(low, powder.beside[0])
        if powder.left_over:
            text = translate("TodayPage", "{powder} Bags of lot {lots} are left: change over to it in its table.")
            words = text.format(powder=low, lots=", ".join(old.lot.lot_number for old in powder.left_over))
            return self.leading(words, translate("TodayPage", "Open the &tables"), "tables")
        words = translate("TodayPage", "{powder} No other lot has come.").format(powder=low)
        return self.leading(words, translate("TodayPage", "&Enter a delivery"), "lots", NEW_LOT)

    def _weigh_by_then(self, low: str, follows: Beside) -> Told:
        """The powder that waits is told with what it lasts: it is there, and only to be weighed in."""
        lot = follows.known.lot
        if follows.days is None:
            text = translate("TodayPage", "Lot {lot} has to be weighed in by then.")
        else:
            text = counted.next_for(follows.days)
        begun = follows.known.open_weigh_in is not None
        act = translate("TodayPage", "Go on &weighing") if begun else translate("TodayPage", "&Weigh in")
        return self.leading(f"{low} {text.format(lot=lot.lot_number)}", act, "weigh_in", lot.id)

    def _told(self, now: Standing, found: Waiting) -> Told:
        lot_id = found.lot.id if found.lot else ""
        match found.need:
            case Need.GO_ON:
                return self.leading(_left_open(found), translate("TodayPage", "Go on &weighing"), "weigh_in", lot_id)
            case Need.MARK_SCOOP:
                return self._mark(now, found)
            case Need.LABEL:
                return self._label(found, lot_id)
            case Need.NO_SCOOP:
                return self.leading(_no_scoop(found), translate("TodayPage", "&Weigh in"), "weigh_in", lot_id)
            case Need.PLAN_VESSEL | Need.PLAN_SCOOP:
                assert found.plan is not None
                change = translate("TodayPage", "Change the &plan")
                return self.leading(_of_plan(found), change, "tables", f"change:{found.plan.id}")
            case Need.OTHER_LINE:
                return self.leading(_other_line(found), translate("TodayPage", "&Weigh in with it"), "weigh_in", lot_id)
            case Need.WEIGH_IN:
                return self.leading(_delivered(found), translate("TodayPage", "&Weigh in"), "weigh_in", lot_id)
            case Need.MIX_OFF:
                return self._check_mix(_mix_off(now, found), translate("TodayPage", "&Check again"), found)
            case Need.MIX_UNSURE:
                return self._check_mix(_mix_unsure(now, found), translate("TodayPage", "&Check again"), found)
            case Need.BAGS_OFF:
                counted_bags = self._go(translate("TodayPage", "Look at the &bags"), "mix_check", "bags")
                check = self._check_mix(_bags_off(found), translate("TodayPage", "Check the &mix"), found)
                return Told(check.words, (counted_bags, *check.does))
            case Need.CHECK_MIX:
                return self._check_mix(_unchecked(found), translate("TodayPage", "Check the &mix"), found)
        return self._sheets(now, found, lot_id)

    def _check_mix(self, words: str, text: str, found: Waiting) -> Told:
        """To the check of that batch, whichever part of the page was looked at last."""
        return self.leading(words, text, "mix_check", f"check:{found.check.id if found.check else ''}")

    def _mark(self, now: Standing, found: Waiting) -> Told:
        assert found.lot is not None
        assert found.scoop is not None
        assert found.line is not None
        printing = self._go(translate("TodayPage", "&Print the label"), "tables", f"label:{found.lot.id}")
        known = now.lot(found.lot.id)
        assert known is not None
        old = lines_to_wipe_out(now, known, found.scoop.id)
        on_it = on_the_scoop(level=found.line.struck_level, wiped=bool(old))
        done = Do(on_it, partial(mark_scoop, self.desk, now, known, found.scoop))
        if found.line.struck_level and old:
            text = translate(
                "TodayPage",
                "{scoop} is to be struck level for lot {number}. Wipe out {old} and put the label on.",
            )
        elif found.line.struck_level:
            text = translate("TodayPage", "{scoop} is to be struck level for lot {number}. Put the label on.")
        else:
            text = self._line_text(now, known, found, wiped=bool(old))
        system = self.desk.system
        words = text.format(
            scoop=found.scoop.name,
            number=found.lot.lot_number,
            line=mark_words(found.line, system),
            old=old_lines_words(old, system),
        )
        told = " ".join(filter(None, (words, also_to_draw_words(lines_beside(now, found.line), system))))
        return Told(told, (done, printing) if found.labelled else (printing, done))

    def _line_text(self, now: Standing, known: LotStanding, found: Waiting, *, wiped: bool) -> str:
        """What is to be done on a scoop with a line: one that was filled to in the weigh-in is not to be drawn anew."""
        assert found.line is not None
        assert found.scoop is not None
        if _bears_it(now, found.line) and wiped:
            return translate(
                "TodayPage",
                "{scoop}: its line stays ({line} down the wall). Wipe out {old} and put the label of lot {number} on.",
            )
        if _bears_it(now, found.line):
            return translate(
                "TodayPage", "{scoop}: its line stays ({line} down the wall). Put the label of lot {number} on."
            )
        if is_drawn(now, known, found.scoop.id) and wiped:
            return translate(
                "TodayPage",
                "{scoop}: the line of lot {number} is drawn since its weigh-in, {line} down the wall. Wipe out {old} "
                "and put the label on.",
            )
        if is_drawn(now, known, found.scoop.id):
            return translate(
                "TodayPage",
                "{scoop}: the line of lot {number} is drawn since its weigh-in, {line} down the wall. Go over it with "
                "a pen that lasts and put the label on.",
            )
        if found.labelled and wiped:
            return translate(
                "TodayPage",
                "{scoop}: wipe out {old}. Is the line of lot {number} drawn ({line} down the wall) and the label on?",
            )
        if found.labelled:
            return translate(
                "TodayPage", "{scoop}: is the line of lot {number} drawn ({line} down the wall) and the label on it?"
            )
        if wiped:
            return translate(
                "TodayPage",
                "Mark {scoop} for lot {number}: draw the line {line} down the wall, wipe out {old}, put the label on.",
            )
        return translate(
            "TodayPage", "Mark {scoop} for lot {number}: draw the line {line} down the wall, put the label on."
        )

    def _label(self, found: Waiting, lot_id: str) -> Told:
        assert found.label is not None
        printing = self._go(translate("TodayPage", "&Print the label"), "tables", f"label:{lot_id}")
        stays = Do(translate("TodayPage", "It &stays"), partial(self._let_stay, found.label.sheet))
        return Told(label_words(found.label, self.desk.system), (printing, stays))

    def _let_stay(self, sheet: Printed) -> None:
        told = SheetEnding(
            id=new_id(),
            farm_id=sheet.farm_id,
            print_id=sheet.id,
            ending=Ending.STILL_UP,
            at=self.desk.clock(),
            by=self.desk.initials,
        )
        self.desk.attempt(partial(self.desk.records.end_sheet, told))

    def _change_over(self, now: Standing, found: Waiting, powder: str) -> Told:
        assert found.lot is not None
        assert found.old_lot is not None
        names = {"number": found.lot.lot_number, "old": found.old_lot.lot_number}
        if found.lot.fed_from is None:
            text = translate("TodayPage", "Lot {number} is weighed in; change over when lot {old} is finished.")
            words = text.format(**names)
        else:
            text = translate("TodayPage", "Lot {number} is fed from {day} on, {feeding}; lot {old} until then.")
            feeding = feeding_name(now.plans, found.lot.fed_from_feeding)
            words = text.format(**names, day=day_text(found.lot.fed_from), feeding=feeding)
        ask = partial(self._ask_change_over, now, found.lot, found.old_lot)
        return Told(f"{powder} {words}".strip(), (Do(translate("TodayPage", "Change &over"), ask),))

    def _ask_change_over(self, now: Standing, lot: Lot, old: Lot) -> None:
        told = fed_from_now_on(lot.lot_number, old.lot_number)
        if lot.fed_from is not None:
            sooner = translate("TodayPage", "It was to be fed from {day} on, {feeding}: that is given up.")
            feeding = feeding_name(now.plans, lot.fed_from_feeding)
            told = f"{told} {sooner.format(day=day_text(lot.fed_from), feeding=feeding)}"
        ask_change_over(self.desk, now, told, partial(self._change_over_now, now, lot))

    def _change_over_now(self, now: Standing, lot: Lot, old_is_finished: bool) -> None:
        known = now.lot(lot.id)
        if known is None:
            return
        said = translate("TodayPage", "Lot {number} is in use.").format(number=lot.lot_number)
        begin_lot(self.desk, now, known, FedFrom(now.today), said, old_is_finished=old_is_finished)

    def _old_left(self, now: Standing, found: Waiting, powder: AtHand | None) -> Told:
        """What a change-over at once asks beforehand, once one that was planned came."""
        fed, old = found.lot, found.old_lot
        assert fed is not None
        assert fed.fed_from is not None
        assert old is not None
        over = powder.left_over if powder else ()
        left = next((each.packages for each in over if each.lot.id == old.id), None)
        text = translate("TodayPage", "Since {day} lot {number} is fed, as planned.")
        words = f"{text.format(day=day_text(fed.fed_from), number=fed.lot_number)} {left_question(old, left)}"
        stay = translate("TodayPage", "They &stay") if is_told(left) else translate("TodayPage", "&Some is left")
        gone = translate("TodayPage", "None is &left")
        say = partial(self._say_what_is_left, now, old.lot_number)
        return Told(words, (Do(stay, partial(say, False)), Do(gone, partial(say, True))))

    def _say_what_is_left(self, now: Standing, old: str, old_is_finished: bool) -> None:
        said = translate("TodayPage", "Kept: what is left of lot {old} stays.")
        if old_is_finished:
            said = translate("TodayPage", "Kept: none of lot {old} is left.")
        keep_told(self.desk, now, answered(now, old_is_finished=old_is_finished), said.format(old=old))

    def _sheets(self, now: Standing, found: Waiting, lot_id: str) -> Told:
        down = Do(translate("TodayPage", "&Taken down"), partial(self._ask_what_is_down, found))
        if found.need is Need.OLD_CHARTS:
            return Told(outdated_words(self.desk.records, found.sheets), (down,))
        if found.need is Need.LOT_SHEETS:
            printing = self._go(translate("TodayPage", "&Print the lot sheet"), "tables", f"sheet:{lot_id}")
            out = Do(translate("TodayPage", "&Taken out"), down.act)
            return Told(outdated_words(self.desk.records, found.sheets), (printing, out))
        assert found.chart is not None
        assert found.lot is not None
        printing = self._go(translate("TodayPage", "&Print the chart"), "tables", f"chart:{found.chart.plan.id}")
        words = chart_words(now, found.chart, found.lot)
        none = Do(translate("TodayPage", "&We use none"), self._ask_for_no_charts)
        usual = (printing, down) if found.sheets else (printing, none)
        if found.chart.fault is Fault.SCOOP:  # while no scoop is weighed in, the next chart goes by weight alone
            usual = down, printing
        if found.chart.again is None:
            return Told(words, usual)
        hung = Do(translate("TodayPage", "&Hung up again"), partial(self._let_stay, found.chart.again))
        return Told(words, (hung, *usual))

    def _ask_for_no_charts(self) -> None:
        farm = self.desk.farm
        assert farm is not None
        if self.desk.keep(replace(farm, asks_for_charts=False)) is not None:
            self.desk.say(translate("TodayPage", "No wall chart is asked for any more. Set-up can ask again."))

    def _ask_what_is_down(self, found: Waiting) -> None:
        # It brings all that is printed with it; the first page should not wait for that.
        from calibrator.desk.pages.sheets_down import ask_what_is_down

        self.down_dialog = ask_what_is_down(self.desk, found.sheets, self._page.window())


def _bears_it(now: Standing, line: Mark) -> bool:
    """Whether the scoop bore this very line for the lot before: it was kept."""
    before = [mark for mark in now.marks if mark.scoop_id == line.scoop_id and mark.lot_id != line.lot_id]
    return bool(before) and same_line(before[-1].down_wall_mm, line.down_wall_mm)


def _left_open(found: Waiting) -> str:
    assert found.lot is not None
    assert found.weigh_in is not None
    text = translate("TodayPage", "The weigh-in of lot {number} stands at this step: {step}.")
    return text.format(number=found.lot.lot_number, step=step_words(found.weigh_in.step))


def _other_line(found: Waiting) -> str:
    assert found.lot is not None
    assert found.scoop is not None
    text = translate("TodayPage", "{scoop} still bears the line of lot {old}; lot {number} is in use.")
    old = found.old_lot.lot_number if found.old_lot else "–"
    return text.format(scoop=found.scoop.name, old=old, number=found.lot.lot_number)


def _no_scoop(found: Waiting) -> str:
    assert found.lot is not None
    text = translate("TodayPage", "No scoop in use has a line for lot {number}: weigh it in with another scoop.")
    return text.format(number=found.lot.lot_number)


def _of_plan(found: Waiting) -> str:
    assert found.plan is not None
    if found.vessel is None:
        text = translate("TodayPage", "The plan {plan} counts by a scoop that is retired: choose another one for it.")
        return text.format(plan=found.plan.name)
    text = translate("TodayPage", "The plan {plan} mixes in {vessel}, which is retired: choose another vessel for it.")
    return text.format(plan=found.plan.name, vessel=found.vessel.name)


def _mix_off(now: Standing, found: Waiting) -> str:
    if found.check is not None and found.check.verdict == THIN:
        text = translate(
            "TodayPage",
            "The mix with lot {number} was too thin on {day}. It stays here until a check reads right, or until the "
            "lot is no longer fed.",
        )
    else:
        text = translate(
            "TodayPage",
            "The mix with lot {number} was too strong on {day}. It stays here until a check reads right, or until the "
            "lot is no longer fed.",
        )
    return _lot_and_day(text, found, now.plans)


def _bags_off(found: Waiting) -> str:
    if found.side == THIN:
        text = translate(
            "TodayPage",
            "By the bags counted until {day} each feeding of lot {number} gets too little powder. It stays here until "
            "a count comes out right, or a sure check of the mix of each group.",
        )
    else:
        text = translate(
            "TodayPage",
            "By the bags counted until {day} each feeding of lot {number} gets too much powder. It stays here until a "
            "count comes out right, or a sure check of the mix of each group.",
        )
    return _lot_and_day(text, found)


def _mix_unsure(now: Standing, found: Waiting) -> str:
    assert found.check is not None
    if leans(found.check) == THIN:
        text = translate(
            "TodayPage",
            "The mix with lot {number} was probably too thin on {day}. It stays here until a check or a count of "
            "bags comes out right, or until the lot is no longer fed.",
        )
    else:
        text = translate(
            "TodayPage",
            "The mix with lot {number} was probably too strong on {day}. It stays here until a check or a count of "
            "bags comes out right, or until the lot is no longer fed.",
        )
    return _lot_and_day(text, found, now.plans)


def _lot_and_day(text: str, found: Waiting, plans: Sequence[Plan] = ()) -> str:
    """With the plans it is told whose batch was checked, where there are several."""
    assert found.lot is not None
    assert found.day is not None
    number = found.lot.lot_number
    if found.check is not None and (whose := whose_batch(found.check, plans)):
        number = translate("TodayPage", "{lot} (batch for {whose})").format(lot=number, whose=whose)
    return text.format(number=number, day=day_text(found.day))


def _unchecked(found: Waiting) -> str:
    assert found.lot is not None
    if found.day is None:
        text = translate("TodayPage", "The mix with lot {number} was not checked yet.")
        return text.format(number=found.lot.lot_number)
    text = translate("TodayPage", "The mix with lot {number} was last checked on {day}.")
    return text.format(number=found.lot.lot_number, day=day_text(found.day))


def _delivered(found: Waiting) -> str:
    assert found.lot is not None
    if found.lot.arrived_on is None:
        text = translate("TodayPage", "Lot {number} is not weighed in.")
        return text.format(number=found.lot.lot_number)
    text = translate("TodayPage", "Lot {number} came on {day} and is not weighed in.")
    return text.format(number=found.lot.lot_number, day=day_text(found.lot.arrived_on))
