"""The trial of feeders at the desk: every fill is kept at Enter, taken back without loss, and said kindly."""

from __future__ import annotations

from collections.abc import Callable

import pytest
from answers import Answers, at_noon
from herd import OZ_G, Herd
from keys import nameless
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from calibrator.desk.context import Desk
from calibrator.desk.theme import Theme
from calibrator.desk.trial.dialog import TrialDialog
from calibrator.model import FeederTrial, FillWay
from calibrator.records import Records

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
    assert not dialog.lot.isEnabled()
    assert "4 fills to go" in dialog.next.text()


def test_a_trial_left_is_there_on_return(shown: Callable[[], TrialDialog]) -> None:
    fill(shown(), "AR", *AR)
    again = shown()
    assert again.fills.count() == 5
    assert again.work.people() == {"AR": pytest.approx([OZ_G * mass for mass in AR])}


def test_the_heavy_hand_is_told_what_to_practise(shown: Callable[[], TrialDialog]) -> None:
    dialog = shown()
    fill(dialog, "AR", *AR)
    assert "Five fills each" in dialog.finding.text()
    fill(dialog, "LM", *LM)
    assert dialog.finding.text() == "Not all fill alike"
    assert "AR's scoops run 2.1 % heavier" in dialog.people.text()
    assert "back of a knife" in dialog.people.text()
    assert "Reproducibility" in dialog.figures.text()


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
    assert dialog.lot.isEnabled()
    dialog.way.setCurrentIndex(dialog.way.findData(FillWay.TO_MARK.value))
    fill(dialog, "LM", 10.0)
    newest = records.every(FeederTrial)[-1]
    assert (newest.way, newest.line_mm is not None) == (FillWay.TO_MARK, True)
    dialog.past.setCurrentIndex(1)
    dialog._choose_past()
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
