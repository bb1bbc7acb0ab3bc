"""Powder at hand: from deliveries, plans and counts to the day that a new lot is needed.

A herd of 100 calves at 10 oz of powder twice a day takes 2,000 oz, 2.5 bags of 50 lb (800 oz) a day.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta

import pytest
from answers import Answers, at_noon
from herd import OZ_G, Herd, group
from keys import mnemonics, nameless
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from calibrator.desk.at_hand import AtHand, at_hand
from calibrator.desk.change_over import FedFrom, change_over, keep_lots, old_to_ask_of
from calibrator.desk.change_over import finished as lots_finished
from calibrator.desk.changing_over import begin_lot
from calibrator.desk.context import Desk
from calibrator.desk.pages.lots import LotsPage
from calibrator.desk.pages.today import TodayPage
from calibrator.desk.speech import day_text
from calibrator.desk.standing import standing
from calibrator.desk.theme import Theme
from calibrator.model import BagCount, Lot, PackagesLeft, Plan, SignOff, WeighIn, new_id
from calibrator.records import Records
from calibrator.science.errors import CannotCompute

BAG_G = 800 * OZ_G
TEN_OZ_LEVEL = 10 * OZ_G / 665.9
TODAY = at_noon().date()


@pytest.fixture
def herd(qapp: QApplication, records: Records) -> Herd:
    if qapp.property("tokens") is None:
        Theme(qapp)
    made = Herd(records)
    made.plan("Milk", group(100))
    return made


def signed_lot(herd: Herd, bags: int | None, **how: object) -> SignOff:
    signed = herd.sign("25-1103C", TEN_OZ_LEVEL)
    told = replace(herd.lot_of(signed), package_count=bags, package_mass_g=BAG_G, **how)  # type: ignore[arg-type]
    herd.records.keep(told)
    return signed


def found(herd: Herd, today: date = TODAY) -> AtHand | None:
    return at_hand(standing(herd.records, herd.farm), today)


def page_of(herd: Herd, qtbot: QtBot, answers: Answers) -> TodayPage:
    desk = Desk(herd.records, answers, clock=at_noon)
    page = TodayPage(desk)
    desk.changed.connect(page.reload)
    qtbot.addWidget(page)
    page.resize(1024, 700)
    page.reload()
    page.show()
    return page


def test_what_came_less_what_the_plans_fed_since(herd: Herd) -> None:
    """130 bags; 49 days from the sign-off on 12 January to 2 March take 122.5: 7.5 are left, three days."""
    signed = signed_lot(herd, 130)
    assert (TODAY - signed.at.date()).days == 49
    known = found(herd)
    assert known is not None
    assert known.stock.packages_left == pytest.approx(7.5)
    assert (known.stock.days, known.stock.last_full_day) == (3, TODAY + timedelta(days=2))
    assert known.needed_on == TODAY + timedelta(days=3)
    assert known.low
    assert known.counted_on is None


def test_several_plans_are_told_as_added_up_with_what_each_takes(herd: Herd, qtbot: QtBot, answers: Answers) -> None:
    """100 calves twice a day at 10 oz take 125 lb; the same calves in a second plan were counted again, unsaid."""
    signed_lot(herd, 230)
    page = page_of(herd, qtbot, answers)
    assert "added up" not in page.powder_card.basis.text()
    herd.plan("Evening milk", group(60))
    herd.plan("Nobody yet", group(0))
    page.reload()
    told = "The plans added up: Milk 125 lb, Evening milk 75.0 lb. Calves in two of them are counted twice."
    assert page.powder_card.basis.text().endswith(f"\n{told}")
    herd.plan("Of the same calves", group(100))  # then more was fed since January than came
    page.reload()
    assert page.powder_card.found is None
    assert "Evening milk 75.0 lb, Of the same calves 125 lb. Calves in two" in page.powder_card.left.text()


def test_a_count_takes_the_place_of_what_the_plans_say(herd: Herd) -> None:
    signed_lot(herd, 130, packages_left=PackagesLeft(packages=20.0, on=TODAY - timedelta(days=2), typed="20"))
    known = found(herd)
    assert known is not None
    assert known.stock.packages_left == pytest.approx(15.0)
    assert known.stock.days == 6
    assert not known.low


def emptied(herd: Herd, lot_id: str, bags: float, since_days: int, days_ago: int) -> None:
    since, at = TODAY - timedelta(days=since_days), at_noon() - timedelta(days=days_ago)
    herd.records.keep(
        BagCount(
            id=new_id(), farm_id=herd.farm.id, lot_id=lot_id, since=since, at=at, bags=bags, bags_typed=str(bags),
            bag_mass_g=BAG_G, bag_mass_typed="50 lb", feedings=200 * (since_days - days_ago), target_mass_g=10 * OZ_G,
            target_typed="10 oz",
        )
    )  # fmt: skip


def test_bags_counted_as_emptied_are_the_new_start_and_none_is_taken_off_twice(
    herd: Herd, qtbot: QtBot, answers: Answers
) -> None:
    """130 bags: 39 days take 97.5; then 15 emptied by count, of which 8 were counted before; 2 days take 5."""
    signed = signed_lot(herd, 130)
    emptied(herd, signed.lot_id, 8.0, 10, 6)
    emptied(herd, signed.lot_id, 15.0, 10, 2)
    known = found(herd)
    assert known is not None
    assert known.stock.packages_left == pytest.approx(130 - 97.5 - 15 - 5)
    assert known.counted_on == known.since == TODAY - timedelta(days=2)
    page = page_of(herd, qtbot, answers)
    assert page.powder_card.basis.text().startswith(f"Counted on {day_text(known.since)}, less")
    emptied(herd, signed.lot_id, 40.0, 2, 0)
    page.reload()
    assert "count the bags that are left" in page.powder_card.left.text()
    told = PackagesLeft(packages=11.0, on=TODAY, typed="11")  # a count of what is left begins anew
    herd.records.keep(replace(herd.lot_of(signed), packages_left=told))
    assert found(herd).stock.packages_left == pytest.approx(11.0)  # type: ignore[union-attr]


def test_the_day_it_was_first_fed_counts_from_the_change_over(herd: Herd) -> None:
    signed_lot(herd, 100, fed_from=TODAY - timedelta(days=10))
    known = found(herd)
    assert known is not None
    assert known.stock.packages_left == pytest.approx(75.0)


def test_without_bags_or_their_weight_nothing_is_made_up(herd: Herd) -> None:
    assert found(herd) is None
    signed = signed_lot(herd, None)
    assert found(herd) is None
    herd.records.keep(replace(herd.lot_of(signed), package_count=3, package_mass_g=None))
    assert found(herd) is None


def test_the_lot_to_go_on_with_is_the_next_one(herd: Herd) -> None:
    signed_lot(herd, 130)
    assert found(herd).next_lot is None  # type: ignore[union-attr]
    herd.records.keep(Lot(id=new_id(), farm_id=herd.farm.id, lot_number="26-0301A"))
    follows = found(herd).next_lot  # type: ignore[union-attr]
    assert follows is not None
    assert follows.lot.lot_number == "26-0301A"


@pytest.mark.parametrize(
    ("days", "bags", "full_days"), [(120, 10.0, 4), (121, 7.5, 3), (123, 2.5, 1), (124, 0.0, 0), (140, None, None)]
)
def test_what_was_fed_counts_however_long_ago_it_began(
    herd: Herd, days: int, bags: float | None, full_days: int | None
) -> None:
    """310 bags at 2.5 a day are 124 days."""
    signed_lot(herd, 310, fed_from=TODAY)
    on = TODAY + timedelta(days=days)
    if bags is None:
        with pytest.raises(CannotCompute, match="More powder was fed than came"):
            found(herd, on)
        return
    known = found(herd, on)
    assert known is not None
    assert known.stock.packages_left == pytest.approx(bags, abs=1e-6)
    assert known.stock.days == full_days
    assert known.low is (known.stock.days is not None and known.stock.days <= 3)


def test_a_count_of_emptied_bags_comes_after_all_that_was_fed_before_it(herd: Herd) -> None:
    """600 bags; 200 days take 500, then 20 are counted as emptied."""
    signed = signed_lot(herd, 600, fed_from=TODAY - timedelta(days=210))
    emptied(herd, signed.lot_id, 20.0, 10, 0)
    known = found(herd)
    assert known is not None
    assert known.stock.packages_left == pytest.approx(80.0)


def test_a_lot_left_long_ago_kept_no_more_than_the_plans_left_of_it(herd: Herd) -> None:
    """505 bags fed for 200 days until the next lot: 5 are left."""
    old = signed_lot(herd, 505, fed_from=TODAY - timedelta(days=200))
    new = herd.sign("26-0302A", TEN_OZ_LEVEL)
    herd.records.keep(replace(herd.lot_of(new), package_count=40, package_mass_g=BAG_G, fed_from=TODAY))
    known = found(herd)
    assert known is not None
    assert known.lot.id == new.lot_id
    assert [(over.lot.id, round(over.packages, 6)) for over in known.left_over] == [(old.lot_id, 5.0)]


def test_each_past_day_goes_by_the_plans_as_they_were_on_it(herd: Herd, monkeypatch: pytest.MonkeyPatch) -> None:
    """100 calves for 20 days take 50 bags; 60 calves for the 10 days since take 15, and today's 60 take 1.5 a day.

    A plan for 40 more calves, put away 5 days ago, took a bag on each of the 5 days before.
    """
    first = TODAY - timedelta(days=30)

    def told_on(day: date) -> None:
        monkeypatch.setattr("calibrator.records.rows.now", lambda: at_noon() + (day - TODAY))

    told_on(first + timedelta(days=3))  # the days before anybody told a plan go by the first
    again = Herd(herd.records)
    plan = again.plan("Milk", group(100))
    told_on(first + timedelta(days=20))
    plan = again.records.keep(replace(plan, groups=(group(60),)))
    other = again.plan("Late calves", group(40))
    told_on(first + timedelta(days=25))
    again.records.keep(replace(other, retired_on=first + timedelta(days=25)))
    signed_lot(again, 100, fed_from=first)
    known = found(again)
    assert known is not None
    assert known.stock.packages_left == pytest.approx(100 - 50 - 15 - 5)
    assert known.daily_g == pytest.approx(1.5 * BAG_G)
    monkeypatch.undo()
    again.records.keep(replace(again.records.find(Plan, plan.id), groups=(group(10),)))
    assert found(again).stock.packages_left == pytest.approx(30.0)  # type: ignore[union-attr]


def other_lot(herd: Herd, number: str, bags: float | None) -> Lot:
    """A lot that came and was not weighed in."""
    return herd.records.keep(
        Lot(id=new_id(), farm_id=herd.farm.id, lot_number=number, package_count=bags, package_mass_g=BAG_G)
    )


def test_what_waits_beside_the_lot_in_use_is_counted_on_from_where_that_ends(herd: Herd) -> None:
    """7.5 bags feed three days; 31 bags more make 38.5, fifteen days; another lot of 5 makes 43.5, seventeen."""
    signed_lot(herd, 130)
    other_lot(herd, "26-0301A", 31)
    other_lot(herd, "26-0301B", None)
    other_lot(herd, "26-0301C", 5)
    known = found(herd)
    assert known is not None
    told = [(each.known.lot.lot_number, each.days) for each in known.beside]
    assert told == [("26-0301A", 12), ("26-0301B", None), ("26-0301C", 2)]
    assert known.low  # the lot in use itself: the next one has to be weighed in
    other_lot(herd, "26-0301D", 1000)
    assert found(herd).beside[-1].days is None  # type: ignore[union-attr]


def test_powder_that_waits_is_told_with_the_days_it_gives(herd: Herd, qtbot: QtBot, answers: Answers) -> None:
    signed_lot(herd, 130)
    other_lot(herd, "26-0301A", 31)
    other_lot(herd, "26-0301B", None)
    page = page_of(herd, qtbot, answers)
    assert page.powder_card.days.text() == "Lot 25-1103C: enough for 3 days"
    assert page.powder_card.beside.text() == (
        "And 12 days in lot 26-0301A, not weighed in yet.\nLot 26-0301B is here too, not weighed in yet."
    )
    assert page.rows[0].words == (
        "Powder of lot 25-1103C for 3 days. Lot 26-0301A, enough for 12 days more, has to be weighed in by then."
    )
    second = herd.sign("26-0302A", TEN_OZ_LEVEL)
    herd.records.keep(replace(herd.lot_of(second), package_count=5, package_mass_g=BAG_G, waits=True))
    page.reload()
    assert page.powder_card.beside.text().startswith("And 2 days in lot 26-0302A, weighed in.\nAnd ")


def test_the_days_page_says_what_is_left_and_calls_for_the_next_lot(herd: Herd, qtbot: QtBot, answers: Answers) -> None:
    signed_lot(herd, 130)
    page = page_of(herd, qtbot, answers)
    assert "7.5 bags left" in page.powder_card.left.text()
    assert "Mar 5, 2026" in page.powder_card.needed.text()
    assert page.powder_card.left.text().endswith("bags left, 375 lb")  # whole pounds, of hundreds
    assert "125 lb" in page.powder_card.basis.text()
    first = page.rows[0]
    assert "No other lot has come" in first.words
    with qtbot.waitSignal(page.desk.go_to) as went:
        first.button.click()
    assert went.args == ["lots", "new"]
    lot = herd.records.keep(Lot(id=new_id(), farm_id=herd.farm.id, lot_number="26-0301A"))
    page.reload()
    with qtbot.waitSignal(page.desk.go_to) as went:
        page.rows[0].button.click()
    assert went.args == ["weigh_in", lot.id]


def test_the_lot_that_is_called_for_stands_there_once(herd: Herd, qtbot: QtBot, answers: Answers) -> None:
    signed_lot(herd, 130)
    lot = herd.records.keep(Lot(id=new_id(), farm_id=herd.farm.id, lot_number="26-0301A"))
    page = page_of(herd, qtbot, answers)

    def of_it() -> list[str]:
        return [row.button.text() for row in page.rows if "26-0301A" in row.words]

    assert of_it() == ["&Weigh in"]
    herd.records.keep(WeighIn(id=new_id(), farm_id=herd.farm.id, lot_id=lot.id, started_at=at_noon()))
    page.reload()
    assert of_it() == ["Go on &weighing"]


def test_bags_counted_are_kept_with_the_day(herd: Herd, qtbot: QtBot, answers: Answers) -> None:
    signed = signed_lot(herd, 130)
    page = page_of(herd, qtbot, answers)
    card = page.powder_card
    card.count.line.setFocus(Qt.FocusReason.OtherFocusReason)
    qtbot.keyClicks(card.count.line, "many")
    card.keep_button.click()
    assert card.count.message
    assert herd.lot_of(signed).packages_left is None
    card.count.line.clear()
    qtbot.keyClicks(card.count.line, "31.5")
    assert page.pending()
    qtbot.keyClick(card.count.line, Qt.Key.Key_Return)
    assert herd.lot_of(signed).packages_left == PackagesLeft(packages=31.5, on=TODAY, typed="31.5")
    assert "31.5 bags left" in card.left.text()
    assert "Counted on Mar 2, 2026" in card.basis.text()
    for plan in herd.records.every(Plan):
        herd.records.keep(replace(plan, retired_on=TODAY))
    page.reload()
    assert card.basis.text() == "Counted on Mar 2, 2026."
    assert card.count.text() == ""
    assert not page.pending()
    assert "Powder of lot" not in page.rows[0].words


def test_more_fed_than_came_asks_for_a_count(herd: Herd, qtbot: QtBot, answers: Answers) -> None:
    signed_lot(herd, 10)
    page = page_of(herd, qtbot, answers)
    assert "count the bags" in page.powder_card.left.text()
    assert page.powder_card.count.isVisible()
    assert not page.powder_card.days.isVisible()


def test_what_came_is_asked_where_it_is_not_entered(herd: Herd, qtbot: QtBot, answers: Answers) -> None:
    signed = herd.sign("25-1103C", TEN_OZ_LEVEL)
    page = page_of(herd, qtbot, answers)
    assert not page.powder_card.count.isVisible()
    assert page.powder_card.enter.text() == "Enter what came"
    herd.records.keep(replace(herd.lot_of(signed), package_count=40, package_mass_g=None))
    page.reload()
    assert page.powder_card.enter.text() == "Enter the bags' weight"
    with qtbot.waitSignal(page.desk.go_to) as went:
        page.powder_card.enter.click()
    assert went.args == ["lots", f"bags of {signed.lot_id}"]
    lots = LotsPage(page.desk)
    qtbot.addWidget(lots)
    lots.reload()
    lots.open(went.args[1])
    assert lots.form.thing is not None
    assert lots.form.thing.id == signed.lot_id
    assert lots.window().focusWidget() is lots.form.count.line


@pytest.mark.parametrize(("days", "told"), [(3, "as planned; what is left would do until"), (60, "change over sooner")])
def test_a_planned_change_over_and_the_last_bag_are_two_days_each_with_its_meaning(
    herd: Herd, qtbot: QtBot, answers: Answers, days: int, told: str
) -> None:
    signed_lot(herd, 142)
    second = herd.sign("26-0301A", TEN_OZ_LEVEL)
    begins = TODAY + timedelta(days=days)
    herd.records.keep(replace(herd.lot_of(second), package_count=30, package_mass_g=BAG_G, fed_from=begins, waits=True))
    page = page_of(herd, qtbot, answers)
    assert told in page.powder_card.needed.text()
    assert "Lot 26-0301A is needed on" not in page.powder_card.needed.text()
    assert page.powder_card.needed.text().endswith("With lot 26-0301A, a new lot is needed on Mar 21, 2026.")


def changed_over(herd: Herd, qtbot: QtBot, answers: Answers) -> tuple[TodayPage, SignOff, SignOff]:
    """Of the first lot 142 bags came: 19.5 are left after 49 days; the second one is changed over to."""
    first = signed_lot(herd, 142)
    second = herd.sign("26-0301A", TEN_OZ_LEVEL)
    told = replace(herd.lot_of(second), package_count=30, package_mass_g=BAG_G, waits=True)
    herd.records.keep(told)
    page = page_of(herd, qtbot, answers)
    assert "Lot 26-0301A is needed on" in page.powder_card.needed.text()
    # 2.5 bags a day: 19.5 and 30 bags are 19 days.
    both = "it is weighed in and can follow. With lot 26-0301A, a new lot is needed on Mar 21, 2026."
    assert page.powder_card.needed.text().endswith(both)
    (do,) = [row.button for row in page.rows if row.button.text() == "Change &over"]
    do.click()
    return page, first, second


def test_bags_left_of_the_old_lot_are_asked_about_and_stay_at_hand(herd: Herd, qtbot: QtBot, answers: Answers) -> None:
    page, first, second = changed_over(herd, qtbot, answers)
    asked = "about 20 bags of lot 25-1103C are left. Do they stay, to be fed later? What stays is fed again under Lots"
    assert asked in answers.asked[-1]
    assert herd.lot_of(first).finished_on is None
    told = "Besides, about 20 bags of lot 25-1103C are left. To feed them: Lots, Back into use."
    assert page.powder_card.over.text() == told
    known = found(herd)
    assert known is not None
    assert known.lot.id == second.lot_id
    assert known.left_over[0].packages == pytest.approx(19.5)
    # 30 days take 75 bags, 49.5 are there.
    assert known.to_order == 26
    assert known.waiting_g == pytest.approx(19.5 * BAG_G)
    later = found(herd, TODAY + timedelta(days=3))
    assert later is not None
    assert later.left_over == known.left_over
    # 2.5 bags a day: 30 bags are 12 days, with the other 19.5 they are 19.
    assert (known.needed_on, known.new_lot_on) == (TODAY + timedelta(days=12), TODAY + timedelta(days=19))
    needed = "With the bags left of lot 25-1103C a new lot is needed on Mar 21, 2026, without them on Mar 14, 2026: "
    assert page.powder_card.needed.text().startswith(needed)
    lot_that_came = other_lot(herd, "26-0401B", 40)
    page.reload()
    assert f"left of lot 25-1103C lot {lot_that_came.lot_number} is needed on Mar 21" in page.powder_card.needed.text()
    herd.records.keep(replace(herd.lot_of(second), package_count=290))
    page.reload()
    assert "the powder does for more than 120 days, without them until Jun 25, 2026." in page.powder_card.needed.text()


def test_powder_for_longer_than_days_are_told_is_not_powder_that_nobody_counted(
    herd: Herd, qtbot: QtBot, answers: Answers
) -> None:
    """A third lot waits: with 290 bags of it there is powder for more than 120 days; without a count nobody knows."""
    page, _, _ = changed_over(herd, qtbot, answers)
    third = herd.sign("26-0322A", TEN_OZ_LEVEL)
    waits = replace(herd.lot_of(third), package_mass_g=BAG_G, waits=True)
    for count, days in ((290, 120), (20, 27), (None, None)):
        waits = herd.records.keep(replace(waits, package_count=count))
        known = found(herd)
        assert known is not None
        assert (known.signed_days, known.lasts) == (days, days == 120)
        assert known.new_lot_on == (TODAY + timedelta(days=27) if days == 27 else None)
    page.reload()
    assert "more than 120 days" not in page.powder_card.needed.text()


def test_bags_left_of_an_earlier_lot_are_offered_before_a_delivery(herd: Herd, qtbot: QtBot, answers: Answers) -> None:
    page, _, second = changed_over(herd, qtbot, answers)
    herd.records.keep(replace(herd.lot_of(second), package_count=5.0))
    page.reload()
    words = [row.words for row in page.rows]
    assert any("Bags of lot 25-1103C are left" in told for told in words), words
    assert not any("No other lot has come" in told for told in words)


def test_of_a_lot_fed_again_no_more_is_at_hand_than_was_left(herd: Herd, qtbot: QtBot, answers: Answers) -> None:
    page, first, _ = changed_over(herd, qtbot, answers)
    now = standing(herd.records, herd.farm, TODAY)
    old = now.lot(first.lot_id)
    assert old is not None
    assert begin_lot(page.desk, now, old, FedFrom(TODAY), "", old_is_finished=False)
    again = found(herd)
    assert again is not None
    assert (again.lot.id, again.counted_on) == (first.lot_id, None)
    assert again.stock.packages_left == pytest.approx(19.5)
    assert page.powder_card.basis.text().startswith("What was left on")


def test_an_old_lot_of_which_none_is_left_is_finished_with_the_change_over(
    herd: Herd, qtbot: QtBot, answers: Answers
) -> None:
    answers.other = True
    page, first, second = changed_over(herd, qtbot, answers)
    assert herd.lot_of(first).finished_on == TODAY
    assert herd.lot_of(second).fed_from == TODAY
    assert not page.powder_card.over.isVisible()
    assert found(herd).to_order == 45  # type: ignore[union-attr]


def planned(herd: Herd, bags: int | None) -> tuple[SignOff, SignOff]:
    """Of the first lot 142 bags leave 19.5 after 49 days; the second was planned to be fed from this day on."""
    first, second = signed_lot(herd, bags), herd.sign("26-0301A", TEN_OZ_LEVEL)
    told = replace(herd.lot_of(second), package_count=30, package_mass_g=BAG_G, fed_from=TODAY, waits=True)
    herd.records.keep(told)
    return first, second


@pytest.mark.parametrize(("bags", "asked", "button", "finished"), [
    (142, "about 20 bags of lot 25-1103C are left. Do they stay", "They stay", None),
    (142, "about 20 bags of lot 25-1103C are left. Do they stay", "None is left", TODAY),
    (None, "Is any of lot 25-1103C left?", "Some is left", None),
])  # fmt: skip
def test_a_change_over_that_came_by_the_clock_asks_what_is_left_as_one_at_once_does(
    herd: Herd, qtbot: QtBot, answers: Answers, bags: int | None, asked: str, button: str, finished: date | None
) -> None:
    first, second = planned(herd, bags)
    page = page_of(herd, qtbot, answers)
    (row,) = [row for row in page.rows if "as planned" in row.words]
    assert asked in row.words
    told = [each for each in row.buttons if each.text().replace("&", "") == button]
    told[0].click()
    assert not [row for row in page.rows if "as planned" in row.words]
    assert herd.lot_of(first).finished_on == finished
    assert standing(herd.records, herd.farm, TODAY).in_use.lot.id == second.lot_id  # type: ignore[union-attr]


def test_an_old_lot_said_to_be_finished_and_a_day_that_is_mended_ask_no_more_and_no_less(herd: Herd) -> None:
    first, second = planned(herd, 142)
    now = standing(herd.records, herd.farm, TODAY)
    fed, old = now.lot(second.lot_id), now.lot(first.lot_id)
    assert fed is not None
    assert old is not None
    keep_lots(herd.records, change_over(now, fed, FedFrom(TODAY - timedelta(days=1))), "AB")
    now = standing(herd.records, herd.farm, TODAY)
    assert old_to_ask_of(now) == old
    keep_lots(herd.records, lots_finished(now, old, TODAY), "AB")
    assert not herd.lot_of(second).waits
    assert herd.lot_of(first).finished_on == TODAY


def test_keys_are_unique_and_every_field_has_a_name(herd: Herd, qtbot: QtBot, answers: Answers) -> None:
    signed_lot(herd, 130)
    page = page_of(herd, qtbot, answers)
    taken = mnemonics(page)
    assert len(taken) == len(set(taken))
    assert nameless(page) == []
