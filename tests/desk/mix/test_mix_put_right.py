"""What a check says is to be done: in view, at odds or sure, still there once kept, in the history, on Today."""

from __future__ import annotations

import re
from dataclasses import replace
from datetime import timedelta

import pytest
from herd import Herd, group
from mix_hands import NOW, bag_count_of, kept_check, own_line, refractometer, type_in, zeroed
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QLabel, QLineEdit
from pytestqt.qtbot import QtBot

from calibrator.desk.context import Desk
from calibrator.desk.needs import Need, waiting
from calibrator.desk.pages.mix_check import MixCheckPage
from calibrator.desk.pages.today import TodayPage
from calibrator.desk.standing import standing
from calibrator.model import Instrument, InstrumentKind, MixCheck, ReadingKind, UnitSystem, new_id


def test_no_field_is_cut_off_on_the_smallest_window(page: MixCheckPage) -> None:
    QApplication.processEvents()
    area = page.check._area
    assert area.widget().width() <= area.viewport().width()
    ends = [
        line.mapTo(area.viewport(), line.rect().topRight()).x()
        for line in area.findChildren(QLineEdit)
        if line.isVisible()
    ]
    assert len(ends) > 8
    assert max(ends) < area.viewport().width()


def test_what_to_do_comes_straight_beneath_the_verdict_and_stays_once_kept(
    qtbot: QtBot, sure: MixCheckPage, desk: Desk
) -> None:
    panel = sure.check
    told = panel.verdict
    type_in(qtbot, panel.readings.first.line, "9.5 9.5 9.5")
    QApplication.processEvents()
    assert told.verdict.text() == "Too thin"
    assert not told.again.isVisibleTo(sure)
    assert told.verdict_card.y() < told.correction_card.y() < told.causes_card.y() < told.way_card.y()
    fix = told.correction.text()
    assert "of powder" in fix
    panel.keep()
    assert panel.readings.first.text() == ""
    assert told.correction.text() == fix
    assert told.verdict.text() == "Too thin"
    assert told.again.isVisibleTo(sure)
    qtbot.keyClick(told.again, Qt.Key.Key_Space)
    assert not told.correction_card.isVisibleTo(sure)
    assert panel.note.text() == "after correcting"
    # The chart's powder is in it no more: the volume tells no solids, and is still there for what to add.
    type_in(qtbot, panel.readings.volume.line, "30 gal")
    type_in(qtbot, panel.readings.first.line, "11.5 11.5 11.5")
    assert not panel.found.at_odds
    assert told.verdict.text() == "As it should be"
    panel.keep()
    assert not told.again.isVisibleTo(sure)
    assert [check.verdict for check in desk.records.every(MixCheck)] == ["thin", "inside"]


def test_a_new_reading_or_clear_puts_the_kept_correction_away(qtbot: QtBot, sure: MixCheckPage) -> None:
    panel = sure.check
    for away in (panel.clear, lambda: type_in(qtbot, panel.readings.first.line, "11.5")):
        type_in(qtbot, panel.readings.first.line, "9.5 9.5 9.5")
        panel.keep()
        assert panel.verdict.again.isVisibleTo(sure)
        away()
        assert not panel.verdict.again.isVisibleTo(sure)


@pytest.mark.parametrize(
    ("drops", "verdict"), [("11.5 11.5 11.5", "As it should be"), ("10.8", "Probably too thin, not sure yet")]
)
def test_every_verdict_stays_once_kept_with_its_time_until_the_next_is_typed(
    qtbot: QtBot, sure: MixCheckPage, desk: Desk, drops: str, verdict: str
) -> None:
    panel, told = sure.check, sure.check.verdict
    assert not told.kept.isVisibleTo(sure)
    type_in(qtbot, panel.readings.mix.line, "101 F")
    type_in(qtbot, panel.readings.first.line, drops)
    parts = (told.verdict, told.today, told.solids, told.would_tell, told.warm, told.way)
    shown = [part.text() for part in parts]
    assert shown[0] == verdict
    assert not told.kept.isVisibleTo(sure)
    panel.keep()
    assert told.kept.isVisibleTo(sure)
    assert told.kept.text().startswith("Kept on Feb 11, 2026 at 9:00")
    assert [part.text() for part in parts] == shown
    assert told.bar.isVisibleTo(sure)
    assert not told.again.isVisibleTo(sure)  # nothing is to be done
    assert not panel.keep_button.isEnabled()  # nor kept twice
    assert not panel.pending()
    type_in(qtbot, panel.readings.water.line, "1")
    assert told.verdict.text() == "No verdict yet"
    assert not told.kept.isVisibleTo(sure)


def test_what_was_told_of_a_lot_is_gone_with_its_change_over(
    qtbot: QtBot, sure: MixCheckPage, desk: Desk, herd: Herd
) -> None:
    told = sure.check.verdict
    type_in(qtbot, sure.check.readings.first.line, "11.5 11.5 11.5")
    sure.check.keep()
    assert told.kept.isVisibleTo(sure)
    sure.open("")
    assert told.kept.isVisibleTo(sure)  # the same lot is fed
    herd.sign("25-0303C", 0.52)
    desk.changed.emit()
    sure.open("")
    assert not told.kept.isVisibleTo(sure)
    assert told.verdict.text() != "As it should be"


def test_what_was_kept_is_told_in_the_units_of_now(qtbot: QtBot, sure: MixCheckPage, desk: Desk) -> None:
    panel = sure.check
    type_in(qtbot, panel.readings.first.line, "9.5 9.5 9.5")
    panel.keep()
    assert "oz of powder" in panel.verdict.correction.text()
    assert desk.farm is not None
    desk.keep(replace(desk.farm, units=UnitSystem.METRIC))
    assert panel.verdict.kept.isVisibleTo(sure)
    assert re.search(r"Add [\d.]+ kg of powder", panel.verdict.correction.text())


def test_a_kept_check_that_is_withdrawn_is_told_no_more(qtbot: QtBot, sure: MixCheckPage, desk: Desk) -> None:
    panel = sure.check
    type_in(qtbot, panel.readings.first.line, "9.5 9.5 9.5")
    panel.keep()
    (check,) = desk.records.every(MixCheck)
    desk.keep(replace(check, withdrawn_reason="another tank"), "another tank")
    assert not panel.verdict.kept.isVisibleTo(sure)
    assert panel.verdict.verdict.text() == "No verdict yet"


def test_nothing_is_said_twice_nor_against_itself(qtbot: QtBot, sure: MixCheckPage, herd: Herd, desk: Desk) -> None:
    panel, told = sure.check, sure.check.verdict
    type_in(qtbot, panel.readings.first.line, "9.5 9.5 9.5")
    cautions = [told._cautions.itemAt(n).widget() for n in range(told._cautions.count())]
    assert not [one for one in cautions if isinstance(one, QLabel) and "Below 12 %" in one.text()]  # it is too thin
    assert len(panel.found.causes) != 1 or told.causes.text()[:2] != "1."
    panel.keep()
    assert told.now.text().endswith("Once something was added:")
    # The mean is right, and the pails are not.
    type_in(qtbot, panel.readings.first.line, "12.6 12.6 12.6")
    type_in(qtbot, panel.readings.last.line, "10.2 10.2 10.2")
    assert told.verdict.text() == "Looks right"
    assert "it can be fed" not in told.today.text()
    assert "the pails differ" in told.today.text()


def test_a_check_in_plain_water_is_ordered_once(qtbot: QtBot, page: MixCheckPage, herd: Herd, desk: Desk) -> None:
    tool = refractometer(herd)
    zeroed(herd, tool, days=10.0)
    own_line(herd, tool)
    desk.changed.emit()
    told = page.check.verdict
    type_in(qtbot, page.check.readings.first.line, "9.5 9.5 9.5")
    assert told.doubts.text() == "The instrument's last check in plain water is more than a week old: do it again."
    assert not told.to_water.isVisibleTo(page)
    type_in(qtbot, page.check.readings.volume.line, "30 gal")
    assert "1. check the instrument in plain water" in told.odds.text()
    assert told.to_water.isVisibleTo(page)
    assert told.doubts.text() == "The instrument's last check in plain water is more than a week old."


def test_drops_and_volume_that_disagree_are_said_first(qtbot: QtBot, sure: MixCheckPage) -> None:
    panel = sure.check
    batch = panel.batch_form.batch()
    assert batch is not None
    assert batch.mix is not None
    type_in(qtbot, panel.readings.first.line, "8.0 8.0 8.0")
    assert not panel.found.at_odds
    type_in(qtbot, panel.readings.volume.line, f"{0.95 * batch.mix.volume_ml / 1000:.1f} L")
    assert panel.found.at_odds
    QApplication.processEvents()
    assert "disagree (9.5 % by Brix calibration; " in panel.verdict.odds.text()
    told = panel.verdict
    assert told.odds.parentWidget() is told.correction_card
    assert told.odds.y() < told.correction.y()
    assert told.correction.text().startswith("If both then read the same, powder and water were wrong. Only then:")
    first, *look = told.odds.text().splitlines()
    assert "wrong powder alone would not make the volume so different" in first
    assert [line[:9] for line in look] == ["1. check ", "2. stir t", "3. read t", "4. count "]
    assert panel.verdict.to_water.isVisibleTo(sure)
    qtbot.keyClick(panel.verdict.to_water, Qt.Key.Key_Space)
    assert sure.tool_checks.isVisible()
    assert sure.tool_checks.tool is not None


def test_a_reading_that_cannot_be_read_gives_no_verdict_and_nothing_to_keep(
    qtbot: QtBot, page: MixCheckPage, herd: Herd, desk: Desk
) -> None:
    for kind in (InstrumentKind.HYDROMETER, InstrumentKind.JUG):
        herd.records.keep(Instrument(id=new_id(), farm_id=herd.farm.id, name=kind, kind=kind, volume_ml=1000.0))
    desk.changed.emit()
    panel = page.check
    readings = panel.readings
    readings.with_drops.click()
    given = readings.volume
    type_in(qtbot, given.line, "66 gal")
    assert panel.keep_button.isEnabled()
    assert panel.found.judged is not None
    for field in (
        readings.first,
        readings.last,
        readings.floating,
        readings.jug_mass,
        readings.water,
        readings.mix,
        readings.calf,
    ):
        type_in(qtbot, field.line, "ten")
        assert panel.verdict.verdict.text() == "No verdict yet", field.caption.text()
        assert panel.verdict.solids.text() == f"{field.caption.text()}: {field.problem()}"
        assert not panel.keep_button.isEnabled()
        field.set_text("")
        panel.work_out()
        assert panel.keep_button.isEnabled()
    type_in(qtbot, readings.first.line, "11.2")
    type_in(qtbot, given.line, "lots")
    assert panel.verdict.solids.text().startswith("Mix in the vessel: ")
    assert not panel.keep_button.isEnabled()


@pytest.mark.parametrize(("typed", "celsius"), [("43", None), ("43 C", 43.0), ("43 F", 11 / 1.8), ("110", 78 / 1.8)])
def test_a_bare_number_that_could_be_celsius_is_asked_about(
    qtbot: QtBot, page: MixCheckPage, typed: str, celsius: float | None
) -> None:
    readings = page.check.readings
    type_in(qtbot, readings.water.line, typed)
    qtbot.keyClick(readings.water.line, Qt.Key.Key_Return)
    read = [r.value for r in readings.readings() if r.kind is ReadingKind.WATER_TEMPERATURE]
    assert read == ([] if celsius is None else [pytest.approx(celsius)])
    assert (readings.first_wrong() is readings.water) == (celsius is None)
    assert ("43 °F or 43 °C?" in readings.water.message) == (celsius is None)


def test_the_history_tells_what_was_to_be_done(qtbot: QtBot, sure: MixCheckPage) -> None:
    panel = sure.check
    type_in(qtbot, panel.readings.first.line, "9.5 9.5 9.5")
    fix = panel.verdict.correction.text().splitlines()[0]
    type_in(qtbot, panel.note.line, "tank 2")
    panel.keep()
    sure.bring_up("history")
    assert f"To put it right: {fix}" in sure.history.pointed.text()
    assert "Note: tank 2." in sure.history.pointed.text()
    assert "is off since its first check" in sure.history.finding.text()


def test_a_mix_that_was_off_waits_until_a_right_one_was_read(herd: Herd) -> None:
    def needs() -> list[Need]:
        return [found.need for found in waiting(standing(herd.records, herd.farm, NOW.date()))]

    kept_check(herd, 25, 0.15, verdict="strong")
    assert Need.MIX_OFF in needs()
    kept_check(herd, 26, 0.14, verdict="cannot_tell")
    assert Need.MIX_OFF in needs()
    kept_check(herd, 27, 0.13, verdict="inside")
    assert Need.MIX_OFF not in needs()
    kept_check(herd, 28, 0.11, verdict="thin")
    (off,) = [found for found in waiting(standing(herd.records, herd.farm, NOW.date())) if found.need is Need.MIX_OFF]
    assert off.day == (NOW - timedelta(days=2)).date()


def test_a_mix_that_was_off_waits_for_a_check_of_the_same_batch(herd: Herd) -> None:
    plan = herd.plan("Hutch milk", group(30, "small"), group(20, "big"))
    kept_check(herd, 25, 0.11, verdict="thin", plan_id=plan.id, group_name="big")
    kept_check(herd, 26, 0.13, plan_id=plan.id, group_name="small")
    assert _mix_needs(herd) == [Need.MIX_OFF]
    kept_check(herd, 26, 0.12, verdict="cannot_tell", plan_id=plan.id, group_name="small")
    assert _mix_needs(herd) == [Need.MIX_OFF, Need.MIX_UNSURE]
    kept_check(herd, 27, 0.13, plan_id=plan.id, group_name="big")
    assert _mix_needs(herd) == [Need.MIX_UNSURE]


def test_a_batch_that_is_mixed_no_more_is_answered_by_any_check(herd: Herd) -> None:
    plan = herd.plan("Hutch milk", group(30, "small"), group(20, "big"))
    kept_check(herd, 25, 0.11, verdict="thin", plan_id=plan.id, group_name="sold")
    assert _mix_needs(herd) == [Need.MIX_OFF]
    kept_check(herd, 26, 0.13, plan_id=plan.id, group_name="small")
    assert not _mix_needs(herd)


def test_an_unsure_check_that_leans_waits_until_another_is_read(herd: Herd) -> None:
    def needs() -> list[Need]:
        return [found.need for found in waiting(standing(herd.records, herd.farm, NOW.date()))]

    kept_check(herd, 27, 0.12, verdict="cannot_tell")
    assert Need.MIX_UNSURE in needs()
    kept_check(herd, 28, 0.131, verdict="cannot_tell")
    assert Need.MIX_UNSURE not in needs()


def test_a_mix_that_was_off_waits_no_more_once_one_reads_right_though_unsure(herd: Herd) -> None:
    kept_check(herd, 25, 0.15, verdict="strong")
    kept_check(herd, 26, 0.131, verdict="cannot_tell")
    assert not _mix_needs(herd)


def test_bags_that_came_out_right_answer_a_check_that_leans_and_none_that_is_surely_off(herd: Herd) -> None:
    kept_check(herd, 26, 0.12, verdict="cannot_tell")
    bag_count_of(herd, 25, 1600)
    assert _mix_needs(herd) == [Need.MIX_UNSURE]  # they were counted before it
    bag_count_of(herd, 27, 1280)
    assert _mix_needs(herd) == [Need.BAGS_OFF]  # each feeding got a quarter too much
    bag_count_of(herd, 28, 1600)
    assert not _mix_needs(herd)
    kept_check(herd, 28, 0.11, verdict="thin")
    bag_count_of(herd, 29, 1600)
    assert _mix_needs(herd) == [Need.MIX_OFF]


def test_bags_that_are_surely_off_wait_until_a_count_or_a_sure_check_is_right(
    qtbot: QtBot, page: MixCheckPage, herd: Herd, desk: Desk
) -> None:
    kept_check(herd, 25, 0.131, verdict="cannot_tell")
    bag_count_of(herd, 26, 1280)
    assert _mix_needs(herd) == [Need.BAGS_OFF]
    desk.changed.emit()
    page.bring_up("history")
    assert page.history.finding.text() == "Lot 25-0202B, by the bags: too much powder, +25.0 % a feeding."
    today = TodayPage(desk)
    qtbot.addWidget(today)
    today.reload()
    (told,) = [line for line in today.rows if "By the bags" in line.words]
    with qtbot.waitSignal(desk.go_to) as gone:
        told.button.click()
    assert gone.args == ["mix_check", "bags"]
    page.open("bags")
    assert page.bags.isVisible()
    kept_check(herd, 27, 0.131, verdict="cannot_tell")
    assert _mix_needs(herd) == [Need.BAGS_OFF]  # of that nothing is sure
    kept_check(herd, 28, 0.13, verdict="inside")
    assert not _mix_needs(herd)


def test_bags_that_are_off_are_of_all_groups_and_the_right_check_of_one_does_not_answer_them(herd: Herd) -> None:
    plan = herd.plan("Hutch milk", group(30, "small"), group(20, "big"))
    (other,) = (found for found in standing(herd.records, herd.farm, NOW.date()).plans if found.id != plan.id)
    bag_count_of(herd, 26, 1280)
    kept_check(herd, 27, 0.13, plan_id=plan.id, group_name="big")
    kept_check(herd, 27, 0.13, plan_id=other.id)  # of all of its groups together
    assert _mix_needs(herd) == [Need.BAGS_OFF]
    kept_check(herd, 28, 0.13, plan_id=plan.id, group_name="small")
    assert not _mix_needs(herd)
    bag_count_of(herd, 29, 1280)
    assert _mix_needs(herd) == [Need.BAGS_OFF]
    bag_count_of(herd, 30, 1600)
    assert not _mix_needs(herd)


def test_bags_that_are_off_are_told_beside_a_check_that_is_off(herd: Herd) -> None:
    kept_check(herd, 26, 0.11, verdict="thin")
    bag_count_of(herd, 27, 1280)
    assert _mix_needs(herd) == [Need.MIX_OFF, Need.BAGS_OFF]


def test_the_day_says_whose_mix_was_off_and_leads_to_the_check_of_it(
    qtbot: QtBot, page: MixCheckPage, herd: Herd, desk: Desk
) -> None:
    plan = herd.plan("Hutch milk", group(30, "small"), group(20, "big"))
    desk.changed.emit()
    assert page.check.batch_form.group.currentText() == "Morning milk, hutches"
    page.bring_up("bags")
    kept_check(herd, 27, 0.11, verdict="thin", plan_id=plan.id, group_name="big")
    today = TodayPage(desk)
    qtbot.addWidget(today)
    today.reload()
    (told,) = [line for line in today.rows if "too thin" in line.words]
    assert told.words.startswith("The mix with lot 25-0202B (batch for Hutch milk, big) was too thin on ")
    with qtbot.waitSignal(desk.go_to) as gone:
        told.button.click()
    name, thing_id = gone.args or ()
    assert name == "mix_check"
    page.open(thing_id)
    assert page.check.isVisible()
    form = page.check.batch_form
    assert (form.group.currentText(), form.calves.count(), form.group_assumed) == ("Hutch milk, big", 20, False)
    assert page.check.readings.first.line.hasFocus()
    type_in(qtbot, page.check.readings.first.line, "9.5")
    kept = kept_check(herd, 28, 0.11, verdict="thin", plan_id=plan.id, group_name="small")
    page.open(f"check:{kept.id}")
    assert form.group.currentText() == "Hutch milk, big"  # what is being typed is of that one


def _mix_needs(herd: Herd) -> list[Need]:
    found = waiting(standing(herd.records, herd.farm, NOW.date()))
    return [each.need for each in found if each.need in (Need.MIX_OFF, Need.MIX_UNSURE, Need.BAGS_OFF)]


def test_without_an_instrument_its_checks_lead_to_entering_one(qtbot: QtBot, page: MixCheckPage) -> None:
    page.bring_up("tool_checks")
    page.tool_checks.instruments_wanted.emit()
    assert page.instruments.isVisible()


def test_the_check_in_plain_water_leads_straight_to_entering_an_instrument_where_there_is_none(
    qtbot: QtBot, page: MixCheckPage
) -> None:
    page.check.verdict.water_check_wanted.emit()
    assert page.instruments.isVisible()


def test_the_warmth_of_plain_water_has_an_example_of_its_own(page: MixCheckPage) -> None:
    page.bring_up("tool_checks")
    for field in (page.tool_checks.warmth, page.tool_checks.jug_warmth):
        assert field.line.placeholderText() == "like 68 °F"


def test_a_check_in_plain_water_that_was_made_that_day_is_ordered_no_more(
    qtbot: QtBot, sure: MixCheckPage, herd: Herd, desk: Desk
) -> None:
    panel = sure.check
    batch = panel.batch_form.batch()
    assert batch is not None
    assert batch.mix is not None
    type_in(qtbot, panel.readings.first.line, "8.0 8.0 8.0")
    type_in(qtbot, panel.readings.volume.line, f"{0.95 * batch.mix.volume_ml / 1000:.1f} L")
    assert "1. check the instrument in plain water" in panel.verdict.odds.text()
    zeroed(herd, herd.records.every(Instrument)[0], days=0.0)
    desk.changed.emit()
    assert panel.found.at_odds
    assert "plain water" not in panel.verdict.odds.text()
    assert "1. stir to the bottom and read three fresh drops" in panel.verdict.odds.text()
    assert not panel.verdict.to_water.isVisibleTo(sure)
    panel.keep()
    assert "Look at these first" in panel.verdict.now.text()
    only, first, *_ = panel.verdict.correction.text().splitlines()
    assert only == "If both then read the same, powder and water were wrong. Only then:"
    sure.bring_up("history")
    assert f"To put it right, but only if both read the same once more: {first}" in sure.history.pointed.text()


def test_what_was_kept_stays_under_the_lot_that_it_was_kept_for(
    qtbot: QtBot, sure: MixCheckPage, herd: Herd, desk: Desk
) -> None:
    panel = sure.check
    type_in(qtbot, panel.readings.first.line, "9.5 9.5 9.5")
    panel.keep()
    herd.sign("25-0303C", 0.52)
    desk.changed.emit()
    assert panel.verdict.kept.isVisibleTo(sure)
    assert "25-0202B" in panel.lot.text()
    type_in(qtbot, panel.readings.first.line, "11.5")
    assert not panel.verdict.kept.isVisibleTo(sure)
    assert "25-0303C" in panel.lot.text()
