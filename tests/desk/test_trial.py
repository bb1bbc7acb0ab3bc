"""The trial of feeders at the desk: every fill is kept at Enter, taken back without loss, and said kindly."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

import pytest
from answers import Answers, at_noon
from herd import OZ_G, Herd
from keys import focus, nameless
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from calibrator.desk.context import Desk
from calibrator.desk.help.view import HandsDialog
from calibrator.desk.theme import Theme
from calibrator.desk.trial.dialog import TrialDialog
from calibrator.desk.trial.over_words import habit_words
from calibrator.model import FeederTrial, FillWay, Scoop
from calibrator.records import Records
from calibrator.science.feeders import Level
from calibrator.science.repeat_trials import Change, Habit

AR, LM = (10.4, 10.5, 10.4, 10.5, 10.4), (10.0, 10.1, 9.9, 10.1, 10.0)


@pytest.fixture
def shown(qapp: QApplication, qtbot: QtBot, records: Records, answers: Answers) -> Callable[[], TrialDialog]:
    if qapp.property("tokens") is None:
        Theme(qapp)
    Herd(records).sign("26-100A", 0.45)

    def show() -> TrialDialog:
        desk = Desk(records, answers, clock=at_noon)
        assert desk.farm is not None
        dialog = TrialDialog(desk, desk.farm)
        dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose, False)
        qtbot.addWidget(dialog)
        dialog.show()
        return dialog

    return show


def fill(dialog: TrialDialog, person: str, *ounces: float) -> None:
    for mass in ounces:
        dialog.person.set_text(person)
        dialog.by.set_text("MK")
        dialog.weight.set_text(f"{mass} oz")
        dialog.enter()


def test_opening_leaves_no_trace_and_the_first_fill_begins_the_trial(
    shown: Callable[[], TrialDialog], records: Records
) -> None:
    dialog = shown()
    assert records.every(FeederTrial) == []
    fill(dialog, "AR", 10.4)
    (trial,) = records.every(FeederTrial)
    (kept,) = records.trial_fills(trial.id)
    assert (kept.person, kept.typed, kept.by, kept.number) == ("AR", "10.4 oz", "MK", 1)
    assert kept.mass_g == pytest.approx(10.4 * OZ_G)
    assert not dialog.choice.lot.isEnabled()
    assert "4 fills to go" in dialog.next.text()


def test_a_trial_left_is_there_on_return(shown: Callable[[], TrialDialog]) -> None:
    fill(shown(), "AR", *AR)
    again = shown()
    assert again.fills.count() == 5
    assert again.work.people() == {"AR": pytest.approx([OZ_G * mass for mass in AR])}


def test_enter_after_the_name_comes_to_the_weight_and_opens_nothing(
    shown: Callable[[], TrialDialog], records: Records, qtbot: QtBot
) -> None:
    dialog = shown()
    with qtbot.waitActive(dialog):
        dialog.activateWindow()
    dialog.by.set_text("MK")
    dialog.person.line.setFocus()
    qtbot.keyClicks(dialog.person.line, "AR")
    qtbot.keyClick(dialog.person.line, Qt.Key.Key_Return)
    assert dialog.findChildren(HandsDialog) == []
    assert focus() is dialog.weight.line
    qtbot.keyClicks(focus(), "10.4 oz")
    qtbot.keyClick(focus(), Qt.Key.Key_Return)
    (trial,) = records.every(FeederTrial)
    assert [kept.typed for kept in records.trial_fills(trial.id)] == ["10.4 oz"]
    assert focus() is dialog.weight.line


def test_the_heavy_hand_is_told_what_to_practise(shown: Callable[[], TrialDialog]) -> None:
    dialog = shown()
    fill(dialog, "AR", *AR)
    assert "Five fills each" in dialog.told.finding.text()
    fill(dialog, "LM", *LM)
    assert dialog.told.finding.text() == "Not all fill alike"
    assert "AR's scoops run 2.1 % heavier" in dialog.told.people.text()
    assert "back of a knife" in dialog.told.people.text()
    assert "Reproducibility" in dialog.told.figures.text()


def test_what_is_taken_back_or_struck_out_stays_and_does_not_count(
    shown: Callable[[], TrialDialog], answers: Answers
) -> None:
    dialog = shown()
    fill(dialog, "AR", 10.4, 9.0)
    dialog.take_back()
    assert [one.counts for one in dialog.work.fills] == [True, False]
    assert "does not count: taken back" in dialog.fills.item(0).text()
    dialog.fills.setCurrentRow(1)
    dialog.strike_button.click()
    assert dialog.work.people() == {"AR": []}
    assert answers.words in dialog.fills.item(1).text()
    dialog.fills.setCurrentRow(0)
    dialog.strike_button.click()
    assert dialog.work.people() == {"AR": [pytest.approx(9.0 * OZ_G)]}


@pytest.mark.parametrize(
    ("person", "typed", "told"),
    [
        ("AR", "10.4.4 oz", ""),
        ("AR", "0.1 oz", "No scoopful is as light"),
        ("AR", "40 oz", "as heavy"),
        ("", "10 oz", ""),
    ],
)
def test_what_cannot_be_meant_is_refused_and_stays_typed(
    shown: Callable[[], TrialDialog], records: Records, person: str, typed: str, told: str
) -> None:
    dialog = shown()
    dialog.person.set_text(person)
    dialog.by.set_text("MK")
    dialog.weight.set_text(typed)
    dialog.enter()
    assert records.every(FeederTrial) == []
    assert dialog.weight.text() == typed
    assert told in dialog.weight.message


def test_a_new_trial_closes_the_one_before_which_can_be_looked_at(
    shown: Callable[[], TrialDialog], records: Records
) -> None:
    dialog = shown()
    fill(dialog, "AR", 10.4)
    dialog.new_button.click()
    assert [one.closed for one in records.every(FeederTrial)] == [True]
    assert dialog.work.trial is None
    assert dialog.choice.lot.isEnabled()
    dialog.choice.way.setCurrentIndex(dialog.choice.way.findData(FillWay.TO_MARK.value))
    fill(dialog, "LM", 10.0)
    newest = records.every(FeederTrial)[-1]
    assert (newest.way, newest.line_mm is not None) == (FillWay.TO_MARK, True)
    dialog.choice.past.setCurrentIndex(1)
    dialog.choice._choose()
    assert dialog.next.text() == "This trial is closed."
    assert not dialog.enter_button.isEnabled()


def test_a_weight_typed_but_not_entered_is_asked_after(shown: Callable[[], TrialDialog], answers: Answers) -> None:
    dialog = shown()
    dialog.weight.set_text("10.2")
    answers.yes = False
    dialog.close()
    assert dialog.isVisible()
    assert "not entered" in answers.asked[-1]
    answers.yes = True
    dialog.close()
    assert not dialog.isVisible()


def test_everything_has_a_name_for_a_screen_reader(shown: Callable[[], TrialDialog]) -> None:
    assert nameless(shown()) == []


def test_a_trial_is_withdrawn_with_a_reason_looked_at_and_counted_again(
    shown: Callable[[], TrialDialog], records: Records, answers: Answers
) -> None:
    dialog = shown()
    fill(dialog, "AR", *AR)
    fill(dialog, "LM", *LM)
    dialog.withdraw_button.click()
    (kept,) = records.every(FeederTrial)
    assert kept.withdrawn_reason == answers.words
    assert (dialog.next.text(), dialog.told.figures.isVisible()) == ("This trial is withdrawn.", False)
    assert answers.words in dialog.told.people.text()
    assert "(withdrawn)" in dialog.choice.past.currentText()
    assert not dialog.enter_button.isEnabled()
    again = shown()
    assert again.work.trial is None
    again.choice.past.setCurrentIndex(1)
    again.choice.past.activated.emit(1)
    assert again.fills.count() == 10
    again.withdraw_button.click()
    assert records.every(FeederTrial)[0].counts
    assert again.told.finding.text() == "Not all fill alike"


def test_a_closed_trial_goes_on(shown: Callable[[], TrialDialog], records: Records) -> None:
    dialog = shown()
    fill(dialog, "AR", *AR)
    dialog.end_button.click()
    assert dialog.next.text() == "This trial is closed."
    assert dialog.end_button.text() == "&Go on with it"
    dialog.end_button.click()
    fill(dialog, "LM", *LM)
    (kept,) = records.every(FeederTrial)
    assert not kept.closed
    assert len(records.trial_fills(kept.id)) == 10


@pytest.mark.parametrize("how", ["leave", "close", "new", "look"])
def test_a_note_is_kept_however_it_is_left(shown: Callable[[], TrialDialog], records: Records, how: str) -> None:
    dialog = shown()
    assert not dialog.note.isEnabled()
    fill(dialog, "AR", 10.4)
    dialog.note.set_text("bag stirred twice")
    {
        "leave": dialog.note.finished.emit,
        "close": dialog.close,
        "new": dialog.new_button.click,
        "look": lambda: dialog.choice.past.activated.emit(0),
    }[how]()
    assert records.every(FeederTrial)[0].note == "bag stirred twice"
    assert records.history(FeederTrial, records.every(FeederTrial)[0].id)[-1].by == "MK"


def test_a_note_goes_over_what_another_computer_told_meanwhile(
    shown: Callable[[], TrialDialog], records: Records, answers: Answers
) -> None:
    dialog = shown()
    fill(dialog, "AR", 10.4)
    records.keep(replace(records.every(FeederTrial)[0], note="theirs"))
    dialog.note.set_text("ours")
    dialog.close()
    assert dialog.isVisible()
    assert answers.told
    dialog.close()
    assert records.every(FeederTrial)[0].note == "ours"


def test_what_is_retired_is_not_offered_and_stays_with_its_trial(
    shown: Callable[[], TrialDialog], records: Records
) -> None:
    dialog = shown()
    fill(dialog, "AR", 10.4)
    cup = records.every(Scoop)[0]
    records.keep(replace(cup, retired_on=at_noon().date()))
    dialog.refresh()
    assert (dialog.choice.scoop.currentData().id, dialog.enter_button.isEnabled()) == (cup.id, False)
    assert "begin a new trial" in dialog.next.text()
    dialog.end_button.click()
    assert not dialog.end_button.isEnabled()
    dialog.new_button.click()
    assert dialog.choice.scoop.count() == 0
    assert "Enter a lot, a scoop and a scale first" in dialog.next.text()


def test_trials_of_the_same_people_are_told_together(shown: Callable[[], TrialDialog]) -> None:
    dialog = shown()
    fill(dialog, "AR", *AR)
    fill(dialog, "LM", *LM)
    assert not dialog.told.over_finding.isVisible()
    dialog.new_button.click()
    fill(dialog, "AR", *LM)
    fill(dialog, "LM", *LM)
    assert dialog.told.over_finding.text() == "Over 2 trials: hands changed"
    assert "practice pays" in dialog.told.over_people.text()
    assert "+2.1 % on" in dialog.told.over_people.text()
    assert "Person by trial: hands differ from one trial to the next by" in dialog.told.over_figures.text()
    dialog.withdraw_button.click()
    assert not dialog.told.over_finding.isVisible()


@pytest.mark.parametrize(
    ("level", "share", "said"),
    [
        (Level.HEAVY, 0.02, "A heavy hand each time (between +1.0 % and +3.0 %). Practice: no tapping"),
        (Level.LIGHT, -0.02, "A light hand each time (between −3.0 % and −1.0 %). Practice: heap"),
        (Level.ALIKE, 0.0, "Fills as the others do, each time."),
        (Level.CANNOT_TELL, 0.005, "these trials cannot tell (between −0.5 % and +1.5 %)"),
    ],
)
def test_habits_are_said_kindly(level: Level, share: float, said: str) -> None:
    still = Habit("AR", share, share - 0.01, share + 0.01, level, (share,), Change(0.0, -0.1, 0.1))
    assert said in _told(still)


def _told(one: Habit) -> str:
    begun = FeederTrial(
        id="a", farm_id="f", lot_id="l", scoop_id="s", scale_id="w", way=FillWay.LEVEL, started_at=at_noon()
    )
    return habit_words(one, (begun,), FillWay.LEVEL)


def test_a_hand_that_moved_away_and_one_that_too_few_trials_show() -> None:
    wide = Habit("AR", 0.02, -0.4, 0.4, Level.CANNOT_TELL, (0.02,), Change(0.03, 0.01, 0.05))
    assert "Moved by 3.0 % (between 1.0 % and 5.0 %)" in _told(replace(wide, each=(0.02,)))
    assert "so few trials cannot tell" in _told(wide)
