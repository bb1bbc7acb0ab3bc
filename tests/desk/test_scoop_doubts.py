"""A scoop that can be but is unlikely is asked about once, in the page, before it is kept; nothing typed is lost."""

from __future__ import annotations

from dataclasses import replace
from math import pi

import pytest
from answers import Answers
from keys import tab_to
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QLineEdit
from pytestqt.qtbot import QtBot

from calibrator.desk.context import Desk
from calibrator.desk.forms.scoop_form import ScoopForm
from calibrator.desk.forms.things import ThingsTab
from calibrator.desk.pages.setup import SetupPage
from calibrator.model import Scoop, UnitSystem

QUART_ML = 946.352946
"""Of 57.75 cubic inches, NIST SP 811."""


@pytest.fixture
def tab(qtbot: QtBot, desk: Desk) -> ThingsTab[Scoop]:
    page = SetupPage(desk)
    qtbot.addWidget(page)
    desk.changed.connect(page.reload)
    page.resize(1024, 700)
    page.reload()
    page.show()
    page.show_tab(Scoop)
    page.scoops.start_new()
    return page.scoops


def _form(tab: ThingsTab[Scoop]) -> ScoopForm:
    assert isinstance(tab.form, ScoopForm)
    return tab.form


def _type(line: QLineEdit, text: str) -> None:
    line.setFocus()
    line.selectAll()
    QTest.keyClicks(line, text)


def _measure(form: ScoopForm, across: str, high: str) -> None:
    _type(form.name.line, "Blue")
    _type(form.diameter.line, across)
    _type(form.inner_height.line, high)


def _kept(desk: Desk) -> list[Scoop]:
    return [scoop for scoop in desk.records.every(Scoop) if scoop.name == "Blue"]


def _asks(form: ScoopForm) -> str:
    return form.question.words if form.question.isVisible() else ""


def test_a_tiny_scoop_is_asked_about_in_both_units_and_kept_by_a_second_save(
    tab: ThingsTab[Scoop], desk: Desk, answers: Answers
) -> None:
    form = _form(tab)
    _measure(form, "50 mm", "40 mm")
    held_ml = pi * 25**2 * 40 / 1000
    QTest.mouseClick(tab.keep_button, Qt.MouseButton.LeftButton)
    assert (_kept(desk), answers.asked, answers.told) == ([], [], [])
    assert f"{held_ml / QUART_ML:.2f} qt ({held_ml:.0f} mL)" in _asks(form)
    assert "1/4 qt to 1 gal" in _asks(form)
    assert (form.diameter.text(), form.inner_height.text(), form.name.text()) == ("50 mm", "40 mm", "Blue")
    QTest.mouseClick(tab.keep_button, Qt.MouseButton.LeftButton)
    assert [round(scoop.volume_ml) for scoop in _kept(desk)] == [round(held_ml)]


def test_the_button_beside_the_question_keeps_it_too(tab: ThingsTab[Scoop], desk: Desk) -> None:
    form = _form(tab)
    _measure(form, "10 in", "4 in")
    tab.keep()
    assert "qt (" in _asks(form)
    form.name.line.setFocus()
    QTest.keyClick(tab_to("Yes, that is right"), Qt.Key.Key_Space)
    assert len(_kept(desk)) == 1
    assert not _asks(form)


def test_other_figures_are_asked_about_anew_and_likely_ones_are_not(tab: ThingsTab[Scoop], desk: Desk) -> None:
    form = _form(tab)
    _measure(form, "50 mm", "40 mm")
    tab.keep()
    _type(form.inner_height.line, "45 mm")
    assert not _asks(form)
    tab.keep()
    assert "mL)" in _asks(form)
    assert not _kept(desk)
    _type(form.diameter.line, "96 mm")
    _type(form.inner_height.line, "92 mm")
    tab.keep()
    assert len(_kept(desk)) == 1


@pytest.mark.parametrize(
    ("across", "high", "water", "warmth", "asked"),
    [
        ("11 in", "2 in", (), "68 °F", ("Diameter inside: 11 in", "1 1/2 in to 10 in")),
        ("3 in", "11 in", (), "68 °F", ("Height inside: 11 in", "1 1/2 in to 10 in")),
        ("96 mm", "92 mm", ("660 g",), "68 °C", ("Water of 154.4 °F", "39 °F to 122 °F")),
        ("96 mm", "92 mm", ("23 g",), "68 °F", ("It would hold 0.02 qt (23 mL)",)),
        ("96 mm", "92 mm", ("400 g",), "68 °F", ("differ by 66", "0.42 qt (401 mL) by water")),
        ("96 mm", "92 mm", ("660 g",), "68 °F", ()),
        ("96 mm", "92 mm", ("23.3", "1140 g", "23.4"), "68 °F", ("2. weighing: 1140 g does not fit the others.",)),
        ("96 mm", "92 mm", ("23.3", "", "1140 g"), "68 °F", ("The weighings of water do not fit each other.",)),
    ],
)
def test_whatever_is_unlikely_is_asked_in_its_own_words(
    tab: ThingsTab[Scoop],
    desk: Desk,
    across: str,
    high: str,
    water: tuple[str, ...],
    warmth: str,
    asked: tuple[str, ...],
) -> None:
    form = _form(tab)
    _measure(form, across, high)
    for field, text in zip(form.waters, water, strict=False):
        _type(field.line, text)
    _type(form.temperature.line, warmth)
    tab.keep()
    assert (not _kept(desk)) == bool(asked)
    for words in asked:
        assert words in _asks(form)
    tab.keep()
    assert len(_kept(desk)) == 1


def test_a_scoop_that_was_kept_so_is_not_asked_about_again(tab: ThingsTab[Scoop], desk: Desk) -> None:
    form = _form(tab)
    _measure(form, "50 mm", "40 mm")
    tab.keep()
    tab.keep()
    (scoop,) = _kept(desk)
    tab.start_new()
    tab.open(scoop.id)
    _type(form.told_by.line, "green tape")
    tab.keep()
    assert desk.records.find(Scoop, scoop.id).told_by == "green tape"


def test_weighings_of_water_come_back_as_they_were_typed(tab: ThingsTab[Scoop], desk: Desk) -> None:
    """Only their mean is kept in the records: a slip among them could not be seen."""
    form = _form(tab)
    _measure(form, "96 mm", "92 mm")
    for field, text in zip(form.waters, ("23.3", "23.4 oz", "42.7"), strict=True):
        _type(field.line, text)
    assert form._by_water.text().startswith("3. weighing: 42.7 oz does not fit the others. Zero the scale")
    assert "counts" not in form._by_water.text()
    tab.keep()
    tab.keep()
    (scoop,) = _kept(desk)
    tab.start_new()
    assert not any(field.text() for field in form.waters)
    tab.open(scoop.id)
    assert [field.text() for field in form.waters] == ["23.3 oz", "23.4 oz", "42.7 oz"]
    assert form._by_water.text().startswith("3. weighing: 42.7 oz")
    assert not form.typed
    _type(form.waters[2].line, "23.5")
    tab.keep()
    assert desk.records.find(Scoop, scoop.id).volume_ml == pytest.approx(23.4 * 28.349523125 * 1.0029, rel=2e-4)
    form.forget_water.setChecked(True)
    tab.keep()
    assert not desk.records.find(Scoop, scoop.id).volume_from_water


def test_changing_units_after_the_question_is_no_other_figure(tab: ThingsTab[Scoop], desk: Desk) -> None:
    form = _form(tab)
    _measure(form, "2", "1.5")
    tab.keep()
    assert _asks(form)
    assert desk.farm is not None
    metric = replace(desk.farm, units=UnitSystem.METRIC)
    desk.attempt(lambda: desk.records.keep(metric))
    assert form.diameter.text() == "2 in"
    tab.keep()
    assert len(_kept(desk)) == 1
