"""The history of checks: chart, table, file."""

from __future__ import annotations

import csv
from datetime import date, timedelta
from pathlib import Path
from unittest.mock import patch

import pytest
from answers import Answers
from herd import OZ_G, Herd, group
from mix_hands import FIRST_DAY, bag_count_of, kept_check
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from calibrator.desk.context import Desk
from calibrator.desk.mix.history_rows import check_words
from calibrator.desk.mix_history import feeders_apart, kept_checks
from calibrator.desk.pages.mix_check import MixCheckPage
from calibrator.desk.season.facts import SeasonFacts
from calibrator.desk.season_paper import season_report_facts
from calibrator.desk.speech import day_text
from calibrator.model import (
    BagCount,
    MixCheck,
)
from calibrator.prints.season_facts import MOST_CARRIED


def test_history_by_day_feeder_and_lot_and_as_a_table(
    page: MixCheckPage, herd: Herd, desk: Desk, answers: Answers, tmp_path: Path, qtbot: QtBot
) -> None:
    for day in range(8):
        kept_check(herd, day, 0.13 + 0.0005 * (day % 3), "Ana" if day % 2 else "Ben")
    kept_check(herd, 8, 0.15, "Ben", verdict="strong", note="=1+1")
    desk.changed.emit()
    page.bring_up("history")
    panel = page.history
    assert len(panel.plot.keys) == 9
    assert panel.model.rowCount() == 9
    told = "The newest check of lot 25-0202B is further off than checks scatter; together they show no shift so far."
    assert panel.finding.text() == f"{told} Check again."
    panel.feeders.setCurrentIndex(panel.feeders.findData("Ana"))
    panel.feeders.activated.emit(1)
    assert len(panel.plot.keys) == 4
    assert "Nothing unusual" in panel.finding.text()
    panel.feeders.setCurrentIndex(0)
    panel.feeders.activated.emit(0)
    answers.path = tmp_path / "checks.csv"
    qtbot.keyClick(panel.export_button, Qt.Key.Key_Space)
    with answers.path.open(encoding="utf-8-sig", newline="") as file:
        table = list(csv.DictReader(file))
    assert len(table) == 9
    assert table[-1]["solids as mixed (%)"] == "15"
    assert table[-1]["mean reading (°Brix)"] == "11.2"
    assert table[-1]["readings as typed"] == "refractometer, first pail: 11.2 11.4"
    assert table[-1]["note"] == "'=1+1"
    answers.first_paths, answers.path = [tmp_path / "nowhere" / "checks.csv"], tmp_path / "there.csv"
    qtbot.keyClick(panel.export_button, Qt.Key.Key_Space)
    assert any("is not there any more" in asked for asked in answers.asked)
    assert answers.path.is_file()


def test_a_mix_that_was_off_is_told_where_nothing_has_shifted(page: MixCheckPage, herd: Herd, desk: Desk) -> None:
    for day in range(3):
        kept_check(herd, day, 0.13, "Ana")
    kept_check(herd, 3, 0.124, "Ana", verdict="thin")
    desk.changed.emit()
    page.bring_up("history")
    panel = page.history
    assert "1 of 4 checks off target, without a lasting shift" in panel.finding.text()
    assert ":" in panel.model.index(0, 0).data()  # two feedings a day are told apart


def test_counts_of_bags_stand_beside_the_checks(
    page: MixCheckPage, herd: Herd, desk: Desk, answers: Answers, tmp_path: Path, qtbot: QtBot
) -> None:
    for day in (14, 16, 18):
        kept_check(herd, day, 0.13)
    count = bag_count_of(herd, 17, 1520)
    desk.changed.emit()
    page.bring_up("history")
    panel = page.history
    assert count.id in panel.plot.keys
    assert panel.model.rowCount() == 4
    assert panel.model.row_of(count.id) == 1
    # 20 bags of 50 lb on 1520 feedings: 76 of a bag in place of 80, 5.3 % heavy (common practice, no source).
    (square,) = [point for point in panel.plot._counts if point.key == count.id]
    assert square.off_pct == pytest.approx(100 * (80 / 76 - 1))
    assert square.low_pct < square.off_pct < square.high_pct
    panel.table.setFocus()
    qtbot.keyClick(panel.table, Qt.Key.Key_Down)
    assert panel.plot.stressed == count.id
    for words in ("Jan 22, 2026 to Jan 29, 2026", "bags 20, 1520 feedings", "10.5 oz each, wanted 10.0 oz", "Too much"):
        assert words in panel.pointed.text()
    answers.path = tmp_path / "history.csv"
    qtbot.keyClick(panel.export_button, Qt.Key.Key_Space)
    with answers.path.open(encoding="utf-8-sig", newline="") as file:
        row = next(row for row in csv.DictReader(file) if row["kind"] == "Count of bags")
    assert (row["bags"], row["feedings"], row["counted since"]) == ("20", "1520", "2026-01-22")
    assert float(row["powder (g a feeding)"]) == pytest.approx(10 * OZ_G * 80 / 76, abs=0.1)
    panel.feeders.setCurrentIndex(panel.feeders.findData("Ana"))
    panel.feeders.activated.emit(1)
    assert count.id not in panel.plot.keys
    panel.feeders.setCurrentIndex(0)
    panel.feeders.activated.emit(0)
    panel.table.selectRow(1)
    qtbot.keyClick(panel.withdraw_button, Qt.Key.Key_Space)
    assert desk.records.find(BagCount, count.id).withdrawn_reason == "spilled some"
    assert panel.model.rowCount() == 3


def test_a_count_of_bags_alone_is_a_history(page: MixCheckPage, herd: Herd, desk: Desk) -> None:
    bag_count_of(herd, 17, 1600)
    desk.changed.emit()
    page.bring_up("history")
    assert page.history.model.rowCount() == 1
    assert len(page.history.plot.keys) == 1
    assert page.history.finding.text() == "No solids were read in these checks"


def test_feeders_are_told_apart(page: MixCheckPage, herd: Herd, desk: Desk) -> None:
    for day in range(14, 26):
        kept_check(herd, day, 0.1365 if day % 2 else 0.13, "Ana" if day % 2 else "Ben")
    desk.changed.emit()
    page.bring_up("history")
    told = page.history.meaning.text()
    assert "On average off target: Ana +5.0 %" in told
    assert "; Ben 0.0 %" in told
    assert "6 checks" in told
    assert told.endswith("Mixed too strong by Ana: mix a batch together.")


def test_a_shift_is_told_where_the_picture_shows_it(page: MixCheckPage, herd: Herd, desk: Desk) -> None:
    for day in range(3):
        kept_check(herd, day, 0.13)
    for day in range(3, 9):
        kept_check(herd, day, 0.145, verdict="strong")
    desk.changed.emit()
    page.bring_up("history")
    points = page.history.plot._points
    beyond = [not point.limit_low_pct <= point.running_pct <= point.limit_high_pct for point in points]
    since = beyond.index(True) + 1
    assert all(beyond[since - 1 :])
    told = f"The mix of lot 25-0202B has shifted: since check {since} its running mean is beyond the limits."
    assert page.history.finding.text() == told


def test_one_check_makes_nobody_the_cause(page: MixCheckPage, herd: Herd, desk: Desk) -> None:
    for day in range(4):
        kept_check(herd, day, 0.13, "Ana")
    kept_check(herd, 4, 0.09, "Ben", verdict="thin")
    desk.changed.emit()
    page.bring_up("history")
    assert page.history.meaning.text() == ""


def test_a_withdrawn_check_counts_no_more_and_stays_in_the_records(
    qtbot: QtBot, page: MixCheckPage, herd: Herd, desk: Desk
) -> None:
    first = kept_check(herd, 1, 0.13)
    kept_check(herd, 2, 0.131)
    desk.changed.emit()
    page.bring_up("history")
    panel = page.history
    panel.table.selectRow(panel.model.row_of(first.id))
    assert day_text(first.at.astimezone().date()) in panel.pointed.text()
    qtbot.keyClick(panel.withdraw_button, Qt.Key.Key_Space)
    assert panel.model.rowCount() == 1
    assert desk.records.find(MixCheck, first.id).withdrawn_reason == "spilled some"
    assert len(desk.records.history(MixCheck, first.id)) == 2


def test_an_empty_history_says_what_it_will_be(page: MixCheckPage) -> None:
    page.bring_up("history")
    assert page.history.finding.text() == "No check yet"


def by_rule(herd: Herd, day: int, share: float) -> MixCheck:
    """A check by a rule of thumb, which is two points unsure and proves nothing."""
    ends: dict[str, object] = {"solids_low": share - 0.02, "solids_high": share + 0.02}
    return kept_check(herd, day, share, way="whole_milk", verdict="cannot_tell", **ends)


def test_the_headline_claims_no_more_than_the_checks_beneath_it(page: MixCheckPage, herd: Herd, desk: Desk) -> None:
    panel = page.history

    def told() -> str:
        desk.changed.emit()
        page.bring_up("history")
        return panel.finding.text()

    by_rule(herd, 1, 0.115)
    assert told() == "The newest check of lot 25-0202B reads too thin, but is not sure. Check again."
    assert "Probably too thin." in panel.pointed.text()
    by_rule(herd, 2, 0.13)
    assert told() == "Lot 25-0202B: 1 of 2 checks on the thin side, not surely. Not enough to say."
    assert "Looks right" in panel.pointed.text()
    by_rule(herd, 3, 0.145)
    by_rule(herd, 4, 0.13)
    assert told() == "Lot 25-0202B: 2 of 4 checks to either side, not surely. Not enough to say."


def test_the_season_report_counts_checks_by_the_verdicts_of_the_page(page: MixCheckPage, herd: Herd) -> None:
    for day, share in enumerate((0.13, 0.13, 0.115)):
        by_rule(herd, day, share)
    kept_check(herd, 3, 0.15, verdict="strong")
    kept_check(herd, 4, 0.13, verdict="inside")
    report = season_report_facts(herd.records, herd.farm, date(2026, 3, 1), ("en",))
    assert report is not None
    found = report.checks
    assert (found.inside, found.likely, found.leaning, found.outside, found.count) == (1, 2, 1, 1, 5)


def test_of_many_changes_of_lot_the_report_has_the_newest_and_asks_for_no_others(herd: Herd) -> None:
    for number in range(MOST_CARRIED + 3):
        herd.sign(f"26-{number:04}", (10 + 0.1 * number) * OZ_G / 665.9)
    with patch.object(SeasonFacts, "meaning", autospec=True, side_effect=SeasonFacts.meaning) as asked:
        report = season_report_facts(herd.records, herd.farm, date(2026, 3, 1), ("en",))
    assert report is not None
    newest = [f"26-{number:04}" for number in range(3, MOST_CARRIED + 3)]
    assert [one.lot_number for one in report.carried] == newest
    assert asked.call_count == MOST_CARRIED


def test_a_shift_that_only_all_checks_together_show_is_told_so(page: MixCheckPage, herd: Herd, desk: Desk) -> None:
    for day in range(3, 20):  # each within what is wanted, all on one side
        kept_check(herd, day, 0.1345, verdict="cannot_tell")
    desk.changed.emit()
    page.bring_up("history")
    told = page.history.finding.text()
    assert told == "Taken together, the checks of lot 25-0202B show a shift; no single one is sure of it."


def test_a_lot_off_at_first_and_right_since_is_not_called_off(page: MixCheckPage, herd: Herd, desk: Desk) -> None:
    kept_check(herd, 1, 0.115, verdict="thin")
    for day in (2, 3):
        kept_check(herd, day, 0.13)
    desk.changed.emit()
    page.bring_up("history")
    assert "1 of 3 checks off target, without a lasting shift" in page.history.finding.text()


def test_a_check_of_all_groups_says_so(page: MixCheckPage, herd: Herd, desk: Desk) -> None:
    one = herd.plan("Milk")
    two = herd.plan("Calf barn", group(30, "hutches"), group(10, "barn"))
    kept_check(herd, 0, 0.13, plan_id=two.id, calves=40)
    kept_check(herd, 1, 0.13, plan_id=two.id, calves=30, group_name="hutches")
    kept_check(herd, 2, 0.13, plan_id=one.id, calves=109)  # one group without a name: there is nothing together
    kept_check(herd, 3, 0.13)
    desk.changed.emit()
    page.bring_up("history")
    batches = [page.history.model.index(row, 2).data() for row in range(4)]
    assert batches == ["–", "109 calves", "hutches 30", "all together 40"]


def test_a_batch_put_right_counts_as_one_mix_and_for_who_mixed_it_as_mixed(
    page: MixCheckPage, herd: Herd, desk: Desk
) -> None:
    """Three thin batches of Ben's are each put right within the hour: he mixes 20 % thin all the same, not 10 %."""
    for day in range(3):
        kept_check(herd, day, 0.104, "Ben", verdict="thin")
        kept_check(herd, day, 0.130, "Ben", at=FIRST_DAY + timedelta(days=day, minutes=50))
        kept_check(herd, day, 0.130, "Ana", at=FIRST_DAY + timedelta(days=day, hours=9))
    kept = kept_checks(herd.records, herd.farm)
    assert [bool(one.told_by) for one in kept] == [False, True, False] * 3
    apart = feeders_apart(kept)
    assert {name: (round(mean.share, 3), mean.count) for name, mean in apart.items()} == {
        "Ana": (0.0, 3),
        "Ben": (-0.2, 3),
    }
    assert kept[1].watched is not None
    assert kept[1].watched.running == kept[0].watched.running  # type: ignore[union-attr]
    desk.changed.emit()
    page.bring_up("history")
    panel = page.history
    assert len(panel.plot.keys) == 9
    assert "Read again after it was put right: 3." in panel.meaning.text()
    assert "Ben \u221220.0 %" in panel.meaning.text().replace("\u00a0", " ")
    panel.table.selectRow(panel.model.row_of(kept[1].check.id))
    assert "Taken to be the same batch, put right: it was read within 2 h." in panel.pointed.text()
    report = season_report_facts(herd.records, herd.farm, date(2026, 3, 2), ("en",))
    assert report is not None
    checks = report.checks
    assert (checks.count, checks.outside, checks.read_again, checks.right) == (6, 3, 3, 3)
    assert checks.off_share is None  # six batches are no season


def test_only_a_batch_that_was_off_is_read_again_and_only_within_the_feeding(herd: Herd) -> None:
    kept_check(herd, 0, 0.13)
    kept_check(herd, 0, 0.13, at=FIRST_DAY + timedelta(minutes=20))  # nothing was put right
    kept_check(herd, 1, 0.10, verdict="thin")
    kept_check(herd, 1, 0.10, verdict="thin", group_name="newborn", at=FIRST_DAY + timedelta(days=1, minutes=20))
    kept_check(herd, 1, 0.13, at=FIRST_DAY + timedelta(days=1, hours=8))  # the next feeding
    kept_check(herd, 2, 0.10, verdict="thin")
    kept_check(herd, 2, 0.11, verdict="thin", at=FIRST_DAY + timedelta(days=2, minutes=30))
    kept_check(herd, 2, 0.13, at=FIRST_DAY + timedelta(days=2, minutes=60))
    kept = kept_checks(herd.records, herd.farm)
    assert [one.told_by for one in kept[:6]] == [""] * 6
    assert [one.told_by for one in kept[6:]] == [kept[5].check.id] * 2


def test_a_check_without_a_name_or_without_solids_is_told_without_dashes(herd: Herd) -> None:
    kept_check(herd, 0, 0.13, "")
    kept_check(herd, 1, 0.13, "Ana")
    kept_check(herd, 2, 0.0, "", solids_share=None, solids_low=None, solids_high=None, verdict="")
    nobody, ana, blind = (check_words(one).replace("\u00a0", " ") for one in kept_checks(herd.records, herd.farm))
    assert ", lot 25-0202B: 13.0 % solids, wanted " in nobody
    assert ", lot 25-0202B, Ana: 13.0 % solids, wanted " in ana
    assert ", lot 25-0202B: no solids read, wanted " in blind
    assert "–" not in nobody + ana + blind
