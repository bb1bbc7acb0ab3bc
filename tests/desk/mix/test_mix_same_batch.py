"""Whether a check after one that was off, or probably, is of the same batch is told, said otherwise and kept."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta

import pytest
from herd import FIRST_DAY, Herd
from mix_hands import NOW, kept_check, type_in
from pytestqt.qtbot import QtBot

from calibrator.desk.context import Desk
from calibrator.desk.mix.history_rows import again_words
from calibrator.desk.mix_history import feeders_apart, kept_checks, kept_counts, mixed, names
from calibrator.desk.mix_table import history_table
from calibrator.desk.pages.mix_check import MixCheckPage
from calibrator.desk.season_paper import season_report_facts
from calibrator.model import MixCheck


@pytest.fixture
def thin(sure: MixCheckPage, qtbot: QtBot, herd: Herd, desk: Desk) -> MixCheckPage:
    """A thin batch was kept an hour ago."""
    type_in(qtbot, sure.check.readings.first.line, "9.5 9.5 9.5")
    sure.check.keep()
    (off,) = herd.records.every(MixCheck)
    herd.records.keep(replace(off, at=NOW - timedelta(hours=1)))
    desk.changed.emit()
    return sure


def newest(herd: Herd) -> MixCheck:
    return herd.records.every(MixCheck)[-1]


def test_a_check_after_one_that_was_off_says_what_it_is_taken_for_and_keeps_it(
    qtbot: QtBot, thin: MixCheckPage, herd: Herd
) -> None:
    panel, (off,) = thin.check, herd.records.every(MixCheck)
    panel.clear()
    assert panel.verdict.same.isHidden()  # nothing is typed
    assert panel.verdict.not_same.isHidden()
    type_in(qtbot, panel.readings.first.line, "11.5 11.5 11.5")
    assert panel.verdict.same.text().startswith("Counted as the same batch as at ")
    panel.keep()
    assert newest(herd).same_batch_as == off.id
    assert [one.told_by for one in kept_checks(herd.records, herd.farm)] == ["", off.id]


def test_one_press_says_that_it_is_another_batch_and_another_takes_it_back(
    qtbot: QtBot, thin: MixCheckPage, herd: Herd
) -> None:
    panel, (off,) = thin.check, herd.records.every(MixCheck)
    type_in(qtbot, panel.readings.first.line, "11.5 11.5 11.5")
    panel.verdict.not_same.click()
    assert panel.verdict.same.text().startswith("Counted as another batch than that of ")
    type_in(qtbot, panel.batch_form.feeder.line, "Ana")  # what was said stays
    panel.keep()
    assert newest(herd).same_batch_as == ""
    assert [one.told_by for one in kept_checks(herd.records, herd.farm)] == ["", ""]
    for told, said in ((off.id, "Counted as the same batch"), ("", "Counted as another batch")):
        panel.verdict.not_same.click()  # once kept too
        assert newest(herd).same_batch_as == told
        assert panel.verdict.same.text().startswith(said)
    assert len(herd.records.every(MixCheck)) == 2


def test_read_again_corrected_is_the_same_batch_however_late(
    qtbot: QtBot, thin: MixCheckPage, herd: Herd, desk: Desk
) -> None:
    panel, (off,) = thin.check, herd.records.every(MixCheck)
    herd.records.keep(replace(off, at=NOW - timedelta(hours=3)))
    desk.changed.emit()
    panel.verdict.again.click()
    type_in(qtbot, panel.readings.first.line, "11.5 11.5 11.5")
    assert not panel.verdict.same.isHidden()
    panel.keep()
    assert newest(herd).same_batch_as == off.id
    assert [one.told_by for one in kept_checks(herd.records, herd.farm)] == ["", off.id]


def test_a_check_of_another_day_is_asked_nothing(qtbot: QtBot, thin: MixCheckPage, herd: Herd, desk: Desk) -> None:
    herd.records.keep(replace(newest(herd), at=NOW - timedelta(hours=3)))
    desk.changed.emit()
    panel = thin.check
    type_in(qtbot, panel.readings.first.line, "11.5 11.5 11.5")
    assert panel.verdict.same.isHidden()
    panel.keep()
    assert newest(herd).same_batch_as is None


def test_what_was_said_goes_before_the_time_between_everywhere(herd: Herd) -> None:
    """Ben mixes two thin batches within the hour: they are two, and each was read again by what was said of it."""
    first = kept_check(herd, 0, 0.104, "Ben", verdict="thin")
    second = kept_check(herd, 0, 0.105, "Ben", verdict="thin", same_batch_as="", at=FIRST_DAY + timedelta(minutes=20))
    last = kept_check(herd, 0, 0.13, "Ben", same_batch_as=first.id, at=FIRST_DAY + timedelta(hours=4))
    for day in (1, 2):
        kept_check(herd, day, 0.104, "Ben", verdict="thin")
    for day in range(3):
        kept_check(herd, day, 0.13, "Ana", at=FIRST_DAY + timedelta(days=day, hours=9))
    kept = kept_checks(herd.records, herd.farm)
    again = {one.check.id: one.told_by for one in kept}
    assert (again[first.id], again[second.id], again[last.id]) == ("", "", first.id)
    assert feeders_apart(kept)["Ben"].count == 4
    report = season_report_facts(herd.records, herd.farm, date(2026, 3, 2), ("en",))
    assert report is not None
    assert (report.checks.count, report.checks.outside, report.checks.read_again) == (7, 4, 1)
    table = history_table(kept, kept_counts(herd.records, herd.farm), names(herd.records, herd.farm))
    place = table.headings.index("counts as a batch")
    assert [row[place] for row in table.rows].count("no") == 1


def test_a_check_whose_first_is_withdrawn_or_told_no_solids_begins_a_batch(herd: Herd) -> None:
    first = kept_check(herd, 0, 0.104, verdict="thin", withdrawn_reason="wrong lot")
    second = kept_check(herd, 0, 0.13, same_batch_as=first.id, at=FIRST_DAY + timedelta(minutes=20))
    blind = kept_check(herd, 1, 0.0, solids_share=None, solids_low=None, solids_high=None, verdict="")
    fourth = kept_check(herd, 1, 0.13, same_batch_as=blind.id, at=FIRST_DAY + timedelta(days=1, minutes=20))
    kept = {one.check.id: one for one in kept_checks(herd.records, herd.farm)}
    assert [kept[check.id].told_by for check in (second, blind, fourth)] == ["", "", ""]
    assert kept[fourth.id].watched is not None


def test_the_history_says_whether_it_was_said_and_changes_it(page: MixCheckPage, herd: Herd, desk: Desk) -> None:
    first = kept_check(herd, 0, 0.104, verdict="thin")
    check = kept_check(herd, 0, 0.13, at=FIRST_DAY + timedelta(minutes=50))
    page.bring_up("history")
    desk.changed.emit()
    panel = page.history
    panel.table.selectRow(panel.model.row_of(first.id))
    assert panel.batch_button.isHidden()
    panel.table.selectRow(panel.model.row_of(check.id))
    assert "Taken to be the same batch" in panel.pointed.text()
    for told, words in (
        ("", "Another batch than the one before it."),
        (first.id, "Read again after it was put right."),
    ):
        panel.batch_button.click()
        assert herd.records.find(MixCheck, check.id).same_batch_as == told
        assert words in panel.pointed.text()
        assert panel.model.check_id(panel.table.currentIndex().row()) == check.id


@pytest.fixture
def unsure(sure: MixCheckPage, qtbot: QtBot, herd: Herd, desk: Desk) -> MixCheckPage:
    """A batch read as probably too thin twenty minutes ago."""
    type_in(qtbot, sure.check.readings.first.line, "10.8")
    sure.check.keep()
    (first,) = herd.records.every(MixCheck)
    assert first.verdict == "cannot_tell"
    herd.records.keep(replace(first, at=NOW - timedelta(minutes=20)))
    desk.changed.emit()
    return sure


def test_a_check_after_one_that_was_not_sure_is_the_same_batch_and_one_press_says_otherwise(
    qtbot: QtBot, unsure: MixCheckPage, herd: Herd
) -> None:
    panel, (first,) = unsure.check, herd.records.every(MixCheck)
    type_in(qtbot, panel.readings.first.line, "11.5 11.5 11.5")
    told = panel.verdict.same.text()
    assert told.startswith("Counted as the same batch as at ")
    assert told.endswith(", read again.")
    panel.keep()
    second = newest(herd)
    assert second.same_batch_as == first.id
    kept = kept_checks(herd.records, herd.farm)
    assert [one.check.id for one in mixed(kept)] == [second.id]  # the last reading is that batch's
    panel.verdict.not_same.click()
    assert newest(herd).same_batch_as == ""
    assert len(mixed(kept_checks(herd.records, herd.farm))) == 2


def test_of_several_readings_the_last_before_anything_was_added_is_the_batchs(herd: Herd) -> None:
    """Two readings lean, the third is sure, the fourth is of the mix put right: Ben mixed one batch, and too thin."""
    verdicts = (("cannot_tell", 0.122), ("cannot_tell", 0.123), ("thin", 0.119), ("inside", 0.13))
    for at, (verdict, share) in enumerate(verdicts):
        kept_check(herd, 0, share, "Ben", verdict=verdict, at=FIRST_DAY + timedelta(minutes=20 * at))
    kept_check(herd, 1, 0.122, "Ben", verdict="cannot_tell")
    kept_check(herd, 1, 0.13, "Ben", at=FIRST_DAY + timedelta(days=1, minutes=20))
    kept_check(herd, 2, 0.13, "Ben", verdict="cannot_tell")  # looks right: nobody reads that again
    kept_check(herd, 2, 0.13, "Ben", at=FIRST_DAY + timedelta(days=2, minutes=20))
    kept = kept_checks(herd.records, herd.farm)
    thin, right = kept[2].check.id, kept[5].check.id
    assert [one.told_by for one in kept] == [thin, thin, "", thin, right, "", "", ""]
    assert [one.put_right for one in kept] == [False] * 3 + [True] + [False] * 4
    assert kept[0].watched is not None
    assert kept[0].watched.running == kept[2].watched.running  # type: ignore[union-attr]
    report = season_report_facts(herd.records, herd.farm, date(2026, 3, 2), ("en",))
    assert report is not None
    checks = report.checks
    assert (checks.count, checks.inside, checks.leaning, checks.outside) == (4, 2, 0, 1)
    assert (checks.read_again, checks.right) == (1, 1)
    assert again_words(kept).startswith("Read again with nothing added: 3. Of such a batch the last reading counts.")
    assert "Read again after it was put right: 1." in again_words(kept)


def test_a_second_reading_that_told_no_solids_leaves_the_batch_to_the_first(herd: Herd) -> None:
    first = kept_check(herd, 0, 0.122, verdict="cannot_tell")
    blind = {"solids_share": None, "solids_low": None, "solids_high": None, "verdict": ""}
    kept_check(herd, 0, 0.0, at=FIRST_DAY + timedelta(minutes=20), **blind)
    assert [one.told_by for one in kept_checks(herd.records, herd.farm)] == ["", first.id]


def test_the_history_says_which_reading_of_a_batch_counts(page: MixCheckPage, herd: Herd, desk: Desk) -> None:
    first = kept_check(herd, 0, 0.122, verdict="cannot_tell")
    check = kept_check(herd, 0, 0.13, at=FIRST_DAY + timedelta(minutes=20))
    page.bring_up("history")
    desk.changed.emit()
    panel = page.history
    panel.table.selectRow(panel.model.row_of(first.id))
    assert "It was read again later, and that counts." in panel.pointed.text()
    assert panel.batch_button.isHidden()
    panel.table.selectRow(panel.model.row_of(check.id))
    assert "Taken to be the same batch, read again: it was read within 2 h." in panel.pointed.text()
    panel.batch_button.click()
    assert "Another batch than the one before it." in panel.pointed.text()
    panel.batch_button.click()
    assert "The same batch as the one before it, read again." in panel.pointed.text()


def test_a_reading_at_odds_that_looks_right_is_read_again_as_the_same_batch(
    qtbot: QtBot, sure: MixCheckPage, herd: Herd
) -> None:
    panel = sure.check
    mix = panel.batch_form.batch().mix
    type_in(qtbot, panel.readings.first.line, "11.5 11.5 11.5")
    type_in(qtbot, panel.readings.volume.line, f"{1.08 * mix.volume_ml / 1000:.1f} L")
    assert panel.found.at_odds
    assert not panel.found.judged.verdict.outside
    panel.keep()
    (first,) = herd.records.every(MixCheck)
    assert panel.verdict.again.text() == "Read again"
    panel.verdict.again.click()
    assert panel.note.text() == ""
    type_in(qtbot, panel.readings.first.line, "11.5 11.5 11.5")
    type_in(qtbot, panel.readings.volume.line, f"{mix.volume_ml / 1000:.1f} L")
    assert len(panel.found.ways) == 2  # nothing was added: the volume tells solids
    panel.keep()
    assert newest(herd).same_batch_as == first.id
