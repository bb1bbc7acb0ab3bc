"""The sample season tells a story, and the page finds it by itself."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from answers import Answers, at_noon
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from calibrator.desk.context import Desk
from calibrator.desk.pages.season import SeasonPage
from calibrator.desk.theme import Theme
from calibrator.records import Records


@pytest.fixture
def page(
    qapp: QApplication, qtbot: QtBot, answers: Answers, tmp_path: Path, season_in: Callable[[Path], Records]
) -> Iterator[SeasonPage]:
    if qapp.property("tokens") is None:
        Theme(qapp)
    with season_in(tmp_path) as records:
        made = SeasonPage(Desk(records, answers, clock=at_noon))
        qtbot.addWidget(made)
        made.resize(828, 700)
        made.reload()
        yield made


def found(page: SeasonPage, *words: str) -> str:
    told = [page.happened.told.item(row).text() for row in range(page.happened.told.count())]
    fitting = [text for text in told if all(word in text for word in words)]
    assert len(fitting) == 1, (words, told)
    return fitting[0]


def test_the_page_finds_what_happened_in_the_sample_season(page: SeasonPage) -> None:
    """An agglomerated product arrives in autumn, a scoop is replaced in spring, July is humid: see sample_lots/."""
    autumn = found(page, "September 2026", "agglomerated")
    assert "less than before" in autumn
    spring = found(page, "April 2026", "took the place of")
    assert "“white cup” took the place of “red cup”" in spring
    july = found(page, "July 2026", "humid air")
    assert "They weigh" in july
    assert "less than the other lots" in july
    assert "Scoopfuls scattered" in july


def test_the_lots_of_july_are_why_humidity_shows(page: SeasonPage) -> None:
    assert page.why.finding.text().startswith("Density goes with:")
    assert "room humidity" in page.why.finding.text()
    assert "never corrected by humidity" in page.why.caution.text().replace("\n", " ")
