"""Every phrase on paper is there in Spanish, with the same places to fill in, and the compiled file is current."""

from __future__ import annotations

import re
import subprocess
import sys
import xml.etree.ElementTree as ElementTree
from dataclasses import replace
from datetime import date
from pathlib import Path

import pytest
from PySide6.QtCore import QLocale, QTranslator

from calibrator.model import Paper, UnitSystem
from calibrator.places import resource
from calibrator.prints import words
from calibrator.prints.chart import wall_chart
from calibrator.prints.given_names import name_told
from calibrator.prints.labels import scoop_labels
from calibrator.prints.languages import CONTEXT, Tongue, Words
from calibrator.prints.page import Document, Text
from calibrator.prints.record import lot_sheet
from calibrator.prints.record_words import Teller, decision
from calibrator.science.keep import VERDICT_LEVEL
from calibrator.science.verify import JUDGED_LEVEL
from tests.prints.samples import chart, label, record, sheet

PHRASES = {name: phrase for name, phrase in vars(words).items() if name.isupper() and isinstance(phrase, str)}
SAME_IN_BOTH = {"g", "u", "no", "normal", "rectangular"}


def spanish() -> dict[str, str]:
    tree = ElementTree.parse(resource("translations/prints_es.ts"))
    found = {}
    for message in tree.iter("message"):
        translation = message.find("translation")
        assert translation is not None
        if translation.get("type") is None:
            found[message.findtext("source", "")] = translation.text or ""
    return found


def test_the_rule_of_decision_on_paper_is_that_which_decides() -> None:
    """A record tells the rule that was applied: ISO/IEC 17025:2017, 7.8.6."""
    told = decision(Tongue("en"))
    assert (JUDGED_LEVEL, VERDICT_LEVEL) == (0.95, 0.985)
    for figure in ("whole 95 % interval", "tests at 2.5 %", "by a 98.5 % interval"):
        assert figure in told


def test_every_phrase_has_its_spanish() -> None:
    assert set(PHRASES.values()) <= set(spanish())


@pytest.mark.parametrize("name", PHRASES)
def test_spanish_has_the_same_places(name: str) -> None:
    told = spanish()[PHRASES[name]]
    assert set(re.findall(r"{\w+}", told)) == set(re.findall(r"{\w+}", PHRASES[name]))


def test_the_extractor_finds_the_same_phrases(tmp_path: Path) -> None:
    """Qt's own tool sees what the catalogue holds: nothing is said that a translator would never be shown."""
    lupdate = next(Path(sys.executable).parent.glob("pyside6-lupdate*"))
    source = Path(words.__file__)
    fresh = tmp_path / "fresh.ts"
    subprocess.run([lupdate, source, "-ts", fresh], check=True, capture_output=True)
    found = {m.findtext("source", "") for m in ElementTree.parse(fresh).iter("message")}
    assert found == set(PHRASES.values()) == set(spanish())


def test_the_compiled_file_says_what_the_text_file_says() -> None:
    translator = QTranslator()
    assert translator.load(str(resource("translations/prints_es.qm")))
    assert {source: translator.translate(CONTEXT, source) for source in spanish()} == spanish()


def texts(document: Document) -> set[str]:
    return {item.text for page in document.pages for item in page.items if isinstance(item, Text)}


@pytest.mark.parametrize("paper", list(Paper))
def test_nothing_english_is_left_on_spanish_paper(paper: Paper) -> None:
    prints = (
        wall_chart(chart(languages=("es",), paper=paper, medicated=True)),
        scoop_labels(sheet(label(), languages=("es",), paper=paper)),
        lot_sheet(record(languages=("es",), paper=paper)),
    )
    told = set().union(*map(texts, prints))
    english = {phrase for phrase in PHRASES.values() if phrase not in SAME_IN_BOTH}
    assert not told & english


def test_the_words_that_feeders_say() -> None:
    """North American dairies, common practice, no source."""
    page = wall_chart(chart(languages=("es",))).pages[0]
    told = " ".join(item.text for item in page.items if isinstance(item, Text))
    for word in (
        "Tabla de pared",
        "LOTE",
        "Becerras",
        "Agua",
        "Polvo",
        "medidas",
        "al ras",
        "hasta la línea",
        "costal",
    ):
        assert word in told, word
    assert "¡Alto! Lote nuevo: pese otra vez." in told


@pytest.mark.parametrize(
    ("country", "told"),
    [("en_US", "Mar 2, 2026"), ("en_CA", "Mar 2, 2026"), ("en_GB", "2 Mar 2026"), ("de_DE", "2 Mar 2026")],
)
def test_days_are_told_in_the_order_of_the_country_with_the_month_in_letters(country: str, told: str) -> None:
    """The order of each country: Unicode Common Locale Data Repository, long form. Spanish has the day first."""
    before = QLocale()
    QLocale.setDefault(QLocale(country))
    try:
        assert Tongue("en").date(date(2026, 3, 2)) == told
        assert Tongue("es").date(date(2026, 1, 2)) == "2 ene 2026"
    finally:
        QLocale.setDefault(before)


def test_inches_have_their_spanish_name() -> None:
    assert Tongue("es").length(33.3, UnitSystem.FARM) == "1 5/16 pulg"
    assert Tongue("en").length(33.3, UnitSystem.FARM) == "1 5/16 in"
    assert Tongue("es").length(33.3, UnitSystem.METRIC) == "33 mm"


def test_what_both_languages_say_alike_is_said_once() -> None:
    said = Words.of(("en", "es", "en"))
    assert said.each(lambda t: "7") == ("7",)
    assert said.each(words.LOT) == ("LOT", "LOTE")


@pytest.mark.parametrize("languages", [(), ("fr",), ("en", "xx")])
def test_other_languages_are_refused(languages: tuple[str, ...]) -> None:
    with pytest.raises(ValueError, match="English"):
        Words.of(languages)


def test_bags_whose_weight_is_not_entered_end_in_no_dash() -> None:
    facts = record()
    unweighed = replace(facts, lot=replace(facts.lot, package_count=40, package_mass_g=None, package_mass_typed=""))
    assert ("Packages", "40 bags") in Teller(unweighed, Words([Tongue("en")])).lot()


def test_a_name_that_the_program_gave_is_in_the_language_of_the_paper_and_a_typed_one_stays() -> None:
    for typed in ("Group 1", "Grupo 1"):
        assert [name_told(typed, Tongue(code)) for code in ("en", "es")] == ["Group 1", "Grupo 1"]
    assert name_told("All calves", Tongue("es")) == "Todas las becerras"
    for typed in ("Group 1, hutches", "group 1", "Pens", ""):
        assert name_told(typed, Tongue("es")) == typed
    one = chart()
    (group,) = one.groups
    two = replace(one, plan_name="All calves", groups=(replace(group, name="Group 1"), replace(group, name="Pens")))
    shown = " ".join(texts(wall_chart(replace(two, languages=("es",)))))
    assert all(told in shown for told in ("Tabla de pared · Todas las becerras", "Grupo 1", "Pens"))
    assert "Group" not in shown


def test_the_names_are_those_that_the_screen_gives() -> None:
    screen = QTranslator()
    assert screen.load(str(resource("translations/desk_es.qm")))
    for context, phrase in (("PlanForm", words.ALL_CALVES), ("GroupEditor", words.GROUP)):
        assert screen.translate(context, phrase) == spanish()[phrase]
