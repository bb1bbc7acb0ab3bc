"""Choosing languages: of the screen at once, of the paper as a proposal; days and refusals in what was chosen."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date
from pathlib import Path
from unittest.mock import create_autospec

import pytest
from answers import Answers
from PySide6.QtCore import QLocale, Qt
from PySide6.QtWidgets import QAbstractButton, QApplication, QComboBox, QFileDialog, QLabel
from pytestqt.qtbot import QtBot
from speaking import speaking

from calibrator.desk import tongues
from calibrator.desk.app import Opener
from calibrator.desk.context import Desk
from calibrator.desk.forms.farm_form import FarmForm
from calibrator.desk.pages.paper_choice import PaperChoice
from calibrator.desk.pages.setup import SetupPage
from calibrator.desk.pages.welcome import WelcomePage
from calibrator.desk.paper_making import LotPaper
from calibrator.desk.refusals import in_words
from calibrator.desk.settings import Settings
from calibrator.desk.speech import day_text, decimal_comma
from calibrator.desk.tongues import locale_of, on_paper, spoken
from calibrator.model import Cylinder, Farm, Paper, Scoop, UnitSystem
from calibrator.prints.output import CannotPrint
from calibrator.records import Records, RecordsError
from calibrator.science.errors import CannotCompute
from calibrator.science.scoop import height_mm
from calibrator.science.water import volume_ml


def choose(box: QComboBox, row: int) -> None:
    """Take a row as a person does: the box tells that it was taken."""
    box.setCurrentIndex(row)
    box.activated.emit(row)


@pytest.fixture
def opener(qtbot: QtBot, qapp: QApplication, answers: Answers, tmp_path: Path) -> Iterator[Opener]:
    before = QLocale()
    made = Opener(qapp, answers, str(tmp_path / "farm.sqlite"), Settings(tmp_path / "settings.json"))
    made.open()
    yield made
    if made.window is not None:
        made.window._close_anyway()
    made.close()
    for translator in made._tongue._installed:
        qapp.removeTranslator(translator)
    QLocale.setDefault(before)


def welcome(opener: Opener) -> WelcomePage:
    assert opener.window is not None
    page = opener.window.page("welcome")
    assert isinstance(page, WelcomePage)
    return page


def test_spanish_from_the_first_step_on(opener: Opener, qtbot: QtBot) -> None:
    """What was typed before the language was changed goes along to the new window."""
    first = welcome(opener).farm_step
    first.name.line.setFocus()
    qtbot.keyClicks(first.name.line, "Los Álamos")
    first.metric_units.click()
    choose(first.language.box, first.language.box.findData("es"))
    second = welcome(opener).farm_step
    assert second is not first
    assert second.name.text() == "Los Álamos"
    assert second.metric_units.isChecked()
    assert welcome(opener).next_button.text() == "&Guardar y seguir"
    qtbot.keyClick(second.name.line, Qt.Key.Key_Tab)
    welcome(opener).keep()
    assert opener.desk is not None
    assert opener.desk.farm is not None
    assert (opener.desk.farm.name, opener.desk.farm.units) == ("Los Álamos", UnitSystem.METRIC)


def test_the_keys_stay_at_the_list_of_languages(opener: Opener) -> None:
    box = welcome(opener).farm_step.language.box
    box.setFocus()
    choose(box, 2)
    assert opener.window is not None
    assert opener.window.focusWidget() is welcome(opener).farm_step.language.box
    assert opener.desk is not None
    opener.desk.records.keep(Farm(id="f", name="Windy Hollow"))
    opener.desk.show_farm("f")
    opener.window.show_page("setup")
    page = opener.window.page("setup")
    assert isinstance(page, SetupPage)
    choose(page.farm.languages.screen_language.box, 1)
    page = opener.window.page("setup")
    assert isinstance(page, SetupPage)
    assert opener.window.focusWidget() is page.farm.languages.screen_language.box


def test_the_languages_are_named_in_their_own_words(opener: Opener) -> None:
    language = welcome(opener).farm_step.language
    assert [language.box.itemText(row) for row in (1, 2)] == ["English", "Español"]
    assert language.caption.text().endswith("Idioma")  # who reads no English looks for this word
    choose(language.box, 2)
    assert welcome(opener).farm_step.language.caption.text().endswith("Language")


def test_the_window_of_another_language_stands_where_the_first_stood(opener: Opener) -> None:
    before = opener.window
    assert before is not None
    before.setGeometry(40, 60, 1100, 720)
    choose(welcome(opener).farm_step.language.box, 2)
    assert opener.window is not None
    assert opener.window is not before
    assert opener.window.geometry() == before.geometry()


@pytest.mark.qt_log_ignore("This plugin does not support")
def test_an_open_list_shows_every_language(opener: Opener, qtbot: QtBot) -> None:
    """A list that scrolls hides the one that is looked for."""
    box = welcome(opener).farm_step.language.box
    box.showPopup()
    qtbot.waitUntil(box.view().isVisible)
    last = box.view().visualRect(box.model().index(box.count() - 1, 0))
    assert box.view().viewport().rect().contains(last)
    assert box.view().verticalScrollBar().maximum() == 0
    box.hidePopup()


def test_a_half_typed_scoop_is_not_lost_without_a_question(opener: Opener, answers: Answers, qtbot: QtBot) -> None:
    assert opener.desk is not None
    opener.desk.records.keep(Farm(id="f", name="Windy Hollow"))
    opener.desk.show_farm("f")
    assert opener.window is not None
    opener.window.show_page("setup", "scoop")
    page = opener.window.page("setup")
    assert isinstance(page, SetupPage)
    page.scoops.form.name.line.setFocus()
    qtbot.keyClicks(page.scoops.form.name.line, "Blue")
    answers.yes = False
    here = opener.window
    page.tabs.setCurrentIndex(0)
    choose(page.farm.languages.screen_language.box, 2)
    assert "Not kept yet: “" in answers.asked[-1]
    assert opener.window is here
    assert page.scoops.form.name.text() == "Blue"


def test_the_language_of_the_paper_is_kept_and_proposed(qtbot: QtBot, desk: Desk) -> None:
    form = FarmForm(desk)
    qtbot.addWidget(form)
    form.reload()
    assert form.languages.told.text().startswith("The paper speaks the language of the screen until you choose one")
    choose(form.languages.paper, 2)
    assert desk.settings.now.paper_languages == ("en", "es")
    assert form.languages.told.text().startswith("Screen and paper may speak different languages")
    paper = PaperChoice(desk)
    qtbot.addWidget(paper)
    lot = create_autospec(LotPaper, instance=True, plans=(), scoops=())
    paper.offer(lot, Paper.LETTER)
    assert paper.language.currentText() == "English and Spanish"


def test_paper_speaks_like_the_screen_until_somebody_chooses() -> None:
    with speaking("es"):
        assert on_paper(()) == ("es",)
        assert on_paper(("en",)) == ("en",)
    with speaking("en"):
        assert on_paper(()) == ("en",)
        assert on_paper(("fr", "nonsense")) == ("en",)


def test_days_and_decimals_follow_the_language_that_was_chosen() -> None:
    """In Mexico and the United States decimals are written with a point: CLDR, locales es_MX and en_US."""
    with speaking("es"):
        assert day_text(date(2026, 1, 2)) == "2 ene 2026"
        assert not decimal_comma()
    with speaking("en"):
        assert day_text(date(2026, 1, 2)) == "Jan 2, 2026"


def test_who_never_chose_writes_as_the_computer_does() -> None:
    assert locale_of("") == QLocale.system()
    assert spoken("fr") in ("en", "es")


def test_refusals_are_said_in_spanish() -> None:
    with speaking("es"):
        assert in_words(CannotCompute("Read one drop at least.")) == "Lea al menos una gota."
        with pytest.raises(CannotCompute) as cold:
            volume_ml(100.0, -5.0)
        told = in_words(cold.value)
        assert told.startswith("La temperatura del agua: tiene que estar entre 32 y 212 °F (0 y 100 °C)")
        with pytest.raises(CannotCompute) as full:
            height_mm(Cylinder(diameter_mm=100.0, height_mm=100.0), 2000.0)
        assert in_words(full.value) == "Es más de lo que le cabe: solo 26.6 fl oz (785 mL) hasta el borde."
        unwritten = CannotPrint("{name} cannot be written: {reason}. Choose another place.", name="a", reason="b")
        assert in_words(unwritten) == "No se puede guardar a: b. Elija otro lugar."
        assert in_words(ValueError("as it is")) == "as it is"


def test_what_the_records_refuse_is_said_in_spanish(desk: Desk, records: Records, answers: Answers) -> None:
    with speaking("es"):
        assert desk.attempt(lambda: records.find(Scoop, "nobody")) is None
        assert (
            answers.told[-1] == "En estos registros no hay nada (medida) con el nombre nobody. Abra otra vez la página."
        )
        assert "esto (llenada de control)" in in_words(RecordsError("edited_meanwhile", kind="spot fill"))


def test_the_window_that_asks_for_a_file_speaks_spanish(qtbot: QtBot) -> None:
    def words() -> set[str]:
        made = QFileDialog()
        qtbot.addWidget(made)
        made.setOption(QFileDialog.Option.DontUseNativeDialog)
        made.setAcceptMode(QFileDialog.AcceptMode.AcceptSave)
        parts = [*made.findChildren(QLabel), *made.findChildren(QAbstractButton)]
        return {said for part in parts for said in (part.text(), part.toolTip()) if said}

    english = words()
    with speaking("es"):
        spanish = words()
    assert {"&Look in:", "Files of &type:"} < english
    assert english & spanish == set()
    assert not [said for said in spanish if "fichero" in said or "irectorio" in said]


def set_country(monkeypatch: pytest.MonkeyPatch, name: str) -> None:
    """The computer is one of that language and country; "C" names none."""

    class There(QLocale):
        @staticmethod
        def system() -> QLocale:
            return QLocale(name)

    monkeypatch.setattr(tongues, "QLocale", There)


@pytest.mark.parametrize(("name", "metric"), [("es_MX", True), ("es_US", False), ("en_US", False), ("C", False)])
def test_the_first_farm_thinks_in_the_units_of_its_country(
    monkeypatch: pytest.MonkeyPatch, name: str, metric: bool
) -> None:
    set_country(monkeypatch, name)
    assert tongues.thinks_metric() is metric


@pytest.mark.parametrize(("name", "sign"), [("en_GB", "£"), ("es_MX", "$"), ("de_DE", "€"), ("C", "$")])
def test_the_first_farm_counts_in_the_money_of_its_country(
    monkeypatch: pytest.MonkeyPatch, name: str, sign: str
) -> None:
    set_country(monkeypatch, name)
    assert tongues.usual_currency() == sign
