"""Bags counted against feedings, on the page of the mix check."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta

import pytest
from herd import OZ_G, QT_ML, TEN_ON_TWO, Herd, group
from mix_hands import NOW, labels, type_in
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from calibrator.desk.context import Desk
from calibrator.desk.pages.mix_check import MixCheckPage
from calibrator.desk.standing import standing
from calibrator.model import (
    Additive,
    BagCount,
    Composition,
    FeedingStep,
    Plan,
    new_id,
)

UNTIL = NOW.astimezone().date()


def test_a_count_of_bags_by_keys(qtbot: QtBot, page: MixCheckPage, desk: Desk) -> None:
    page.bring_up("bags")
    panel = page.bags
    examples = [field.line.placeholderText() for field in (panel.bags, panel.feedings)]
    assert examples == ["like 6", "like 480"]  # a bare figure looks filled in
    type_in(qtbot, panel.bag.line, "50 lb")
    type_in(qtbot, panel.target.line, "10 oz")
    type_in(qtbot, panel.bags.line, "10")
    type_in(qtbot, panel.feedings.line, "760")
    # A 50 lb bag at 10 oz is 80 feedings; 76 means 5 % heavy (common practice, no source).
    assert panel.verdict.text() == "Too much powder"
    assert "5.3 % above" in panel.told.text()
    assert "76 feedings; it should last 80" in panel.told.text()
    # 80 calves twice a day.
    assert "With 160 feedings a day, counting for 1 day tells whether there is a drift of 2 %, in" in panel.days.text()
    type_in(qtbot, panel.bag.line, "2 lb")
    type_in(qtbot, panel.target.line, "32 oz")
    type_in(qtbot, panel.feedings.line, "10")
    assert "A bag lasted 1 feeding; it should last 1." in panel.told.text()
    for field, text in ((panel.bag, "50 lb"), (panel.target, "10 oz"), (panel.feedings, "760")):
        type_in(qtbot, field.line, text)
    qtbot.keyClick(panel.keep_button, Qt.Key.Key_Space)
    (kept,) = desk.records.every(BagCount)
    assert (kept.bags, kept.bags_typed, kept.feedings, kept.bag_mass_typed) == (10.0, "10", 760, "50 lb")
    assert kept.target_mass_g == pytest.approx(10 * OZ_G)
    assert "+5.3" in labels(panel)
    panel.ask_withdraw()
    assert desk.records.every(BagCount)[0].withdrawn_reason == "spilled some"
    assert "+5.3" not in labels(panel)


def test_bags_of_an_earlier_lot_counted_until_an_earlier_day(
    qtbot: QtBot, page: MixCheckPage, herd: Herd, desk: Desk
) -> None:
    fed = standing(herd.records, herd.farm).in_use
    assert fed is not None
    used = fed.lot
    before = herd.records.keep(
        replace(used, id=new_id(), lot_number="Z-1", arrived_on=date(2025, 6, 1), package_mass_g=25000.0,
                package_mass_typed="25 kg", finished_on=date(2025, 7, 20), revision="")
    )  # fmt: skip
    desk.changed.emit()
    page.bring_up("bags")
    panel = page.bags
    panel.occasion.lot.setCurrentIndex(panel.occasion.lot.findData(before.id))
    panel.occasion.lot.activated.emit(panel.occasion.lot.currentIndex())
    assert panel.bag.text() == "25 kg"
    assert panel.since.text() == ""  # nobody knows since when that one was counted
    type_in(qtbot, panel.occasion.day.line, "10 Jul 2025")
    type_in(qtbot, panel.since.line, "12 Jul 2025")
    for line, text in ((panel.target.line, "10 oz"), (panel.bags.line, "10"), (panel.feedings.line, "880")):
        type_in(qtbot, line, text)
    panel.keep()
    assert panel.since.message == "The count would end on Jul 10, 2025, before it began."
    type_in(qtbot, panel.since.line, "1 Jul 2025")
    assert panel.suggest_button.text().startswith("1440 by the plans of 9 days")
    panel.keep()
    (kept,) = desk.records.every(BagCount)
    assert (kept.lot_id, kept.since, kept.at.astimezone().date()) == (before.id, date(2025, 7, 1), date(2025, 7, 10))
    assert panel.occasion.chosen().lot.id == used.id  # type: ignore[union-attr]
    assert panel.bag.text() == used.package_mass_typed


def test_groups_that_get_different_portions_are_suggested_on_average(
    page: MixCheckPage, herd: Herd, desk: Desk
) -> None:
    (plan,) = herd.records.every(Plan)
    pens = replace(group(40, "pens"), volume_ml=3 * QT_ML)
    herd.records.keep(replace(plan, groups=(*plan.groups, pens)))
    desk.changed.emit()
    page.bring_up("bags")
    # 80 calves at 10 oz (on 2 qt) and 40 at 15 oz (on 3 qt): 11.7 oz a feeding, 240 feedings a day.
    assert page.bags.target.value() == pytest.approx((80 * 10 + 40 * 15) / 120 * OZ_G, rel=0.0005)
    page.bags.bag.take("50 lb")
    assert "With 240 feedings a day" in page.bags.days.text()


def _counts(page: MixCheckPage, desk: Desk, since: date, feedings: int, bags: float) -> str:
    """The verdict on bags counted since a day, the feedings taken from the plans: so many they have to be."""
    desk.changed.emit()
    page.bring_up("bags")
    panel = page.bags
    panel.bag.take("50 lb")
    panel.since.set_day(since)
    panel.work_out()
    QTest.mouseClick(panel.suggest_button, Qt.MouseButton.LeftButton)
    assert panel.feedings.value() == feedings
    panel.bags.set_text(f"{bags:g}")
    panel.work_out()
    assert "at most" not in panel.told.text()
    return panel.verdict.text()


def test_bags_of_replacer_hold_no_additive(page: MixCheckPage, herd: Herd, desk: Desk) -> None:
    """80 calves twice a day for 10 days at 10 oz of replacer: 20 bags, whatever else goes in."""
    (plan,) = herd.records.every(Plan)
    fat = Additive(name="Fat", rate=replace(TEN_ON_TWO, powder_mass_g=2 * OZ_G), composition=Composition(fat_pct=60.0))
    herd.records.keep(replace(plan, groups=tuple(replace(group, additives=(fat,)) for group in plan.groups)))
    assert _counts(page, desk, UNTIL - timedelta(days=10), 1600, 20.0) == "As it should be"
    assert page.bags.target.value() == pytest.approx(10 * OZ_G, rel=0.0005)


def test_all_plans_in_use_are_counted(page: MixCheckPage, herd: Herd, desk: Desk) -> None:
    """Beside 80 calves at 10 oz another plan's 30 at 15 oz: 220 feedings and 2500 oz a day, 28.1 bags in 9 days."""
    herd.plan("Group pen", replace(group(30), volume_ml=3 * QT_ML))
    assert _counts(page, desk, UNTIL - timedelta(days=9), 1980, 28.1) == "As it should be"
    assert "With 220 feedings a day" in page.bags.days.text()
    page.bags.keep()
    (kept,) = herd.records.every(BagCount)
    assert kept.feedings_per_day == 220


def test_each_day_counts_by_its_own_step(page: MixCheckPage, herd: Herd, desk: Desk) -> None:
    """40 calves, three feedings of 2 qt (10 oz) for 10 days, then two of 3 qt (15 oz) for 4: 1520 feedings and
    16,800 oz, 21 bags of 50 lb. By today's step alone they were 1120 feedings."""
    (plan,) = herd.records.every(Plan)
    stepped = replace(
        group(40),
        day_one=UNTIL - timedelta(days=14),
        steps=(
            FeedingStep(from_day=1, volume_ml=2 * QT_ML, feedings_per_day=3),
            FeedingStep(from_day=11, volume_ml=3 * QT_ML, feedings_per_day=2),
        ),
    )
    herd.records.keep(replace(plan, groups=(stepped,)))
    assert _counts(page, desk, UNTIL - timedelta(days=14), 1520, 21.0) == "As it should be"
    # The powder of a feeding is that of the days counted.
    assert page.bags.target.value() == pytest.approx(16_800 / 1520 * OZ_G, rel=0.0005)
    page.bags.since.set_day(UNTIL - timedelta(days=2))
    page.bags.work_out()
    assert page.bags.target.value() == pytest.approx(15 * OZ_G, rel=0.0005)


def test_each_day_counts_by_the_plans_as_they_were_on_it(
    page: MixCheckPage, herd: Herd, desk: Desk, monkeypatch: pytest.MonkeyPatch
) -> None:
    """80 calves for 6 days, then 40 for 4: 1280 feedings at 10 oz, 16 bags."""
    since = UNTIL - timedelta(days=10)
    (long_ago,) = herd.records.every(Plan)
    herd.records.keep(replace(long_ago, retired_on=since))
    monkeypatch.setattr("calibrator.records.rows.now", lambda: NOW - timedelta(days=10))
    plan = herd.plan("Hutches", group(80))
    monkeypatch.setattr("calibrator.records.rows.now", lambda: NOW - timedelta(days=4))
    herd.records.keep(replace(plan, groups=(group(40),)))
    assert _counts(page, desk, since, 1280, 16.0) == "As it should be"


def test_a_target_typed_by_hand_stays(qtbot: QtBot, page: MixCheckPage, herd: Herd, desk: Desk) -> None:
    page.bring_up("bags")
    type_in(qtbot, page.bags.target.line, "9 oz")
    herd.plan("Group pen", replace(group(30), volume_ml=3 * QT_ML))
    desk.changed.emit()
    type_in(qtbot, page.bags.since.line, "5 Feb 2026")
    assert page.bags.target.text() == "9 oz"
    page.bags.target.line.clear()
    desk.changed.emit()
    assert page.bags.target.value() == pytest.approx((160 * 10 + 60 * 15) / 220 * OZ_G, rel=0.0005)


def test_begun_bags_are_less_sure(qtbot: QtBot, page: MixCheckPage) -> None:
    page.bring_up("bags")
    panel = page.bags
    for line, text in ((panel.bag.line, "50 lb"), (panel.target.line, "10 oz"), (panel.bags.line, "4")):
        type_in(qtbot, line, text)
    type_in(qtbot, panel.feedings.line, "304")
    assert panel.verdict.text() == "Too much powder"
    qtbot.keyClick(panel.sharp, Qt.Key.Key_Space)
    assert panel.verdict.text() == "Cannot tell yet"


def test_more_feedings_than_the_plan_makes_in_those_days_are_asked_about(page: MixCheckPage, desk: Desk) -> None:
    page.bring_up("bags")
    panel = page.bags
    assert panel.verdict.text() == "No count yet"
    panel.since.set_day(desk.clock().astimezone().date())
    for field, text in ((panel.bag, "50 lb"), (panel.target, "10 oz")):
        field.take(text)
    panel.bags.set_text("2")
    panel.feedings.set_text("161")  # 80 calves twice a day, in one day
    panel.work_out()
    assert "the plans make 160 feedings at most: are the day and the feedings right?" in panel.told.text()
    panel.feedings.set_text("160")
    panel.work_out()
    assert "at most" not in panel.told.text()
    panel.keep()
    panel.bags.set_text("3")
    panel.work_out()
    assert panel.verdict.text() == "No new count yet"


def test_what_a_kept_count_said_stays_with_what_to_do_until_the_next_one(
    qtbot: QtBot, page: MixCheckPage, herd: Herd, desk: Desk
) -> None:
    page.bring_up("bags")
    panel = page.bags
    panel.bag.take("50 lb")
    panel.target.take("10 oz")
    type_in(qtbot, panel.bags.line, "10")
    type_in(qtbot, panel.feedings.line, "760")
    panel.keep()
    assert panel.bags.text() == ""
    assert panel.verdict.text() == "Too much powder"
    assert panel.told.text().startswith("Kept: lot 25-0202B, Feb 2, 2026 to Feb 11, 2026. It stays in view until")
    assert "Watch a batch being mixed" in panel.what_to_do.text()
    assert panel.what_to_do.isVisibleTo(page)
    type_in(qtbot, panel.bags.line, "5")
    assert panel.verdict.text() == "No new count yet"
    assert not panel.what_to_do.isVisibleTo(page)
    type_in(qtbot, panel.feedings.line, "380")
    panel.keep()
    assert panel.verdict.text() == "Too much powder"
    assert panel.since.text() == "Feb 11, 2026"  # the next one begins where this one ended
    panel.ask_withdraw()
    assert panel.verdict.text() == "No new count yet"  # what counts no more is not told


def test_the_next_count_begins_where_the_last_one_ended_with_bags_as_heavy(
    qtbot: QtBot, page: MixCheckPage, herd: Herd, desk: Desk
) -> None:
    fed = standing(herd.records, herd.farm).in_use
    assert fed is not None
    herd.records.keep(replace(fed.lot, package_mass_g=50 * 16 * OZ_G, package_mass_typed="50 lb"))
    desk.changed.emit()
    page.bring_up("bags")
    panel = page.bags
    assert (panel.since.text(), panel.bag.text()) == ("Feb 2, 2026", "50 lb")
    panel.bag.take("25 kg")
    panel.target.take("10 oz")
    type_in(qtbot, panel.occasion.day.line, "5 Feb 2026")
    type_in(qtbot, panel.bags.line, "6")
    type_in(qtbot, panel.feedings.line, "480")
    panel.keep()
    assert (panel.since.text(), panel.bag.text()) == ("Feb 5, 2026", "25 kg")
    anew = MixCheckPage(desk)
    qtbot.addWidget(anew)
    anew.reload()
    assert (anew.bags.since.text(), anew.bags.bag.text()) == ("Feb 5, 2026", "25 kg")


@pytest.mark.parametrize(
    ("bags", "feedings", "told"),
    [
        ("10", "780", "That is surely above the target; whether by more than the 2.0 % allowed, this"),
        ("10", "820", "That is surely below the target; whether by more than the 2.0 % allowed, this"),
        ("4", "320", "Whether that is within the 2.0 % allowed, this count does not tell."),
        ("10", "760", ""),
    ],
)
def test_an_open_count_says_what_is_sure_and_what_is_not(
    qtbot: QtBot, page: MixCheckPage, bags: str, feedings: str, told: str
) -> None:
    page.bring_up("bags")
    panel = page.bags
    for line, text in ((panel.bag.line, "50 lb"), (panel.target.line, "10 oz")):
        type_in(qtbot, line, text)
    type_in(qtbot, panel.bags.line, bags)
    type_in(qtbot, panel.feedings.line, feedings)
    panel.sharp.setChecked(bags != "4")  # with begun bags at both ends
    assert (panel.verdict.text() == "Cannot tell yet") == bool(told)
    assert told in panel.told.text()


@pytest.mark.parametrize(
    ("since", "told", "kept"),
    [
        ("1 Feb 2026", "Lot 25-0202B came only on Feb 2, 2026: count from that day on, or choose", 0),
        ("2 Feb 2026", "", 1),
    ],
)
def test_no_count_begins_before_its_lot_came(
    qtbot: QtBot, page: MixCheckPage, desk: Desk, since: str, told: str, kept: int
) -> None:
    _counted_since(qtbot, page, since)
    assert told in page.bags.since.message
    assert page.bags.since.wrong == bool(told)
    assert len(desk.records.every(BagCount)) == kept


@pytest.mark.parametrize(
    ("more", "told"),
    [
        ({"arrived_on": date(2026, 1, 20)}, "The line of lot 25-0202B was signed only on Feb 2, 2026. Better count"),
        ({"arrived_on": date(2026, 1, 20), "fed_from": date(2026, 2, 4)}, "is fed only since Feb 4, 2026."),
    ],
)
def test_a_count_from_before_the_lot_was_fed_by_its_line_is_asked_about_and_kept(
    qtbot: QtBot, page: MixCheckPage, herd: Herd, desk: Desk, more: dict[str, date], told: str
) -> None:
    fed = standing(herd.records, herd.farm).in_use
    assert fed is not None
    herd.records.keep(replace(fed.lot, **more))  # type: ignore[arg-type]
    desk.changed.emit()
    said: list[str] = []
    _counted_since(qtbot, page, "1 Feb 2026", said)
    assert told in said[0]
    assert len(desk.records.every(BagCount)) == 1


def _counted_since(qtbot: QtBot, page: MixCheckPage, since: str, said: list[str] | None = None) -> None:
    page.bring_up("bags")
    panel = page.bags
    type_in(qtbot, panel.since.line, since)
    for line, text in ((panel.bag.line, "50 lb"), (panel.target.line, "10 oz"), (panel.bags.line, "10")):
        type_in(qtbot, line, text)
    type_in(qtbot, panel.feedings.line, "800")
    if said is not None:
        said.append(panel.since.message)
    panel.keep()


WRONG_COUNTS = [
    ("", "760"),
    ("10", ""),
    ("0", "760"),
    ("0.1", "760"),
    ("-3", "760"),
    ("ten", "760"),
    ("10 11", "760"),
    ("10", "0"),
    ("10", "-760"),
    ("10", "76,5"),
    ("10", "7600"),
    ("10", "10"),
    ("99999", "760"),
]


def test_wrong_counts_are_answered_in_words(qtbot: QtBot, page: MixCheckPage) -> None:
    page.bring_up("bags")
    panel = page.bags
    type_in(qtbot, panel.bag.line, "50 lb")
    for bags, feedings in WRONG_COUNTS:
        type_in(qtbot, panel.bags.line, bags)
        type_in(qtbot, panel.feedings.line, feedings)
        panel.keep()
        assert page.desk.records.every(BagCount) == []
        refused = panel.told.text() if panel.verdict.text() == "This cannot be" else ""
        assert any((panel.bags.message, panel.feedings.message, refused)), (bags, feedings)
