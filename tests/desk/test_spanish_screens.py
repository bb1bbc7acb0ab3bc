"""The whole program in Spanish and English: nothing left in English, nothing cut off, every key for one thing."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator
from dataclasses import replace
from pathlib import Path
from typing import TypeVar, cast

import pytest
from answers import Answers
from heard import unheard
from PySide6.QtCore import QCoreApplication, QEvent
from PySide6.QtWidgets import QApplication, QScrollArea
from screens import keys_twice, squeezed, texts, too_large, too_small
from speaking import speaking

from calibrator.desk.context import Desk
from calibrator.desk.pages.tables import TablesPage
from calibrator.desk.pages.weigh_in import WeighInPage
from calibrator.desk.theme import Theme
from calibrator.desk.weigh_in.step_fills import StepFills
from calibrator.desk.window import Window
from calibrator.model import Farm, FeederTrial, Instrument, Lot, Plan, Scale, Scoop, Step, Vessel
from calibrator.records import Records
from tests.tour import tour, weigh_a_new_lot

# The offscreen platform says so of every window that is shown.
pytestmark = pytest.mark.qt_log_ignore("does not support propagateSizeHints")
T = TypeVar("T")
Seen = dict[str, T]
SMALLEST = (1024, 700)
# Units, signs and names of things that are the same in both languages.
SAME = {
    "dev",
    "ttys",
    "gal",
    "brix",
    "mosm",
    "ctrl",
    "plan",
    "atc",
    "max",
    "pdf",
    "letter",
    "english",
    "español",
    "csv",
    "no",
    "manual",
}
OF_THE_FILE = {"lote", "producto", "fecha", "costal", "peso", "neto", "nota", "húmedo", "pesadas", "doce"}
"""What a foreign file says itself, in the tour's own words."""
OF_LETTERS = {"utf", "dos", "windows", "mac", "roman"}
"""Ways to write letters have one name everywhere."""


@pytest.fixture(scope="module")
def records(tmp_path_factory: pytest.TempPathFactory, season_in: Callable[[Path], Records]) -> Iterator[Records]:
    opened = season_in(tmp_path_factory.mktemp("tour"))
    yield opened
    opened.close()


@pytest.fixture(scope="module")
def desk(qapp: QApplication, records: Records) -> Desk:
    if qapp.property("tokens") is None:
        Theme(qapp)
    desk = Desk(records, Answers())
    weigh_a_new_lot(desk)
    _name_at_length(records)
    desk.changed.emit()
    return desk


def look(desk: Desk, read: Callable[[Window, str], T]) -> Seen[T]:
    """Go through every screen and read each."""
    window = Window(desk)
    window.resize(*SMALLEST)
    window.show()
    seen = {}
    for name in tour(window):
        for _ in range(6):
            QCoreApplication.processEvents()
        seen[name] = read(window, name)
    window.replace_by_another()
    QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)
    return seen


def words_of(window: Window) -> set[str]:
    return set(texts(window))


@pytest.fixture(scope="module")
def english(desk: Desk) -> Seen[tuple[set[str], list[str], list[str]]]:
    with speaking("en"):
        return look(desk, lambda window, _: (words_of(window), keys_twice(window), list(unheard(window))))


@pytest.fixture(scope="module")
def spanish(desk: Desk, english: object) -> Seen[tuple[set[str], list[str], list[str]]]:
    def read(window: Window, name: str) -> tuple[set[str], list[str], list[str]]:
        tight = [*squeezed(window), *too_small(window, name), *too_large(window)]
        return words_of(window), keys_twice(window), tight

    with speaking("es"):
        return look(desk, read)


def _name_at_length(records: Records) -> None:
    for kind, name in (
        (Farm, "name"), (Scale, "name"), (Scoop, "name"), (Vessel, "name"), (Plan, "name"), (Instrument, "name"),
    ):  # fmt: skip
        for thing in records.every(kind):
            records.keep(replace(thing, **{name: long_name(getattr(thing, name))}))
    for lot in records.every(Lot):
        records.keep(replace(lot, product=long_name(lot.product)))
    for plan in records.every(Plan):
        groups = tuple(replace(group, name=long_name(group.name)) for group in plan.groups)
        records.keep(replace(plan, groups=groups))


def long_name(name: str) -> str:
    return f"{name} Wilhelmina Featherstonehaugh Northside"[:40]


def known_names(records: Records) -> set[str]:
    """Words that people chose: they stay as they are in every language."""
    names = [thing.name for kind in (Farm, Scale, Scoop, Vessel, Plan, Instrument) for thing in records.every(kind)]
    names += [group.name for plan in records.every(Plan) for group in plan.groups]
    names += [text for lot in records.every(Lot) for text in (lot.product, lot.lot_number, lot.note, lot.supplier)]
    names += [text for scoop in records.every(Scoop) for text in (scoop.told_by, scoop.retired_why)]
    names += [trial.note for trial in records.every(FeederTrial)]
    names.append(records.url)
    return {word.lower() for name in names for word in re.findall(r"[^\W\d_]+", name)}


@pytest.mark.parametrize("language", ["en", "es"])
def test_the_least_window_shows_rows_by_volume_of_two_groups_and_the_key_beneath_the_fills(
    desk: Desk, language: str
) -> None:
    """Both began below the edge, and one had to know that there is more to scroll to."""
    with speaking(language):
        window = Window(desk)
        window.resize(*SMALLEST)
        window.show()
        window.show_page("tables")
        view = cast(TablesPage, window.page("tables")).view
        assert len(view.today.rows) == 2
        view.rows_by.setCurrentIndex(1)
        QApplication.processEvents()
        rows = view.volumes.table
        in_sight = rows.viewport().visibleRegion().boundingRect().height()
        assert in_sight >= 2 * rows.verticalHeader().defaultSectionSize()
        window.show_page("weigh_in", desk.records.every(Lot)[-1].id)
        page = cast(WeighInPage, window.page("weigh_in"))
        page.open_step(Step.FILLS_TO_MARK)
        for _ in range(6):
            QApplication.processEvents()
        key = cast(StepFills, page._views[Step.FILLS_TO_MARK])._plot._key
        assert key.visibleRegion().boundingRect().height() == key.height() > 0
        window.replace_by_another()
        QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)


def test_the_mark_step_is_seen_whole_while_another_lot_is_fed(desk: Desk) -> None:
    """Its words are longest then, and the page scrolled past them to the button that has the keys."""
    with speaking("es"):
        window = Window(desk)
        window.resize(*SMALLEST)
        window.show()
        window.show_page("weigh_in", desk.records.every(Lot)[-1].id)
        page = cast(WeighInPage, window.page("weigh_in"))
        page.open_step(Step.MARK)
        for _ in range(6):
            QApplication.processEvents()
        view = page._views[Step.MARK]
        assert "mientras se siga sirviendo" in view.hands.text()
        around = view.parentWidget().parentWidget()
        assert isinstance(around, QScrollArea)
        assert around.verticalScrollBar().maximum() == 0
        window.replace_by_another()
        QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)


def test_nothing_is_left_in_english(
    records: Records,
    english: Seen[tuple[set[str], list[str], list[str]]],
    spanish: Seen[tuple[set[str], list[str], list[str]]],
) -> None:
    assert english.keys() == spanish.keys()
    same = SAME | OF_THE_FILE | OF_LETTERS | known_names(records)
    # A word cut short is the end of a long name.
    left = {
        f"{name}: {text}"
        for name, (told, *_) in spanish.items()
        for text in told & english[name][0]
        if {word.lower() for word in re.findall(r"[^\W\d_]{3,}(?!\w*…)", text.replace("\u200b", ""))} - same
    }
    assert sorted(left) == []


def test_the_tour_sees_words(spanish: Seen[tuple[set[str], list[str], list[str]]]) -> None:
    """Or the test above could not fail."""
    for name, (told, *_) in spanish.items():
        assert len([text for text in told if re.search(r"[^\W\d_]{3,}", text)]) > 8, name


def test_a_screen_reader_hears_every_control_and_table(english: Seen[tuple[set[str], list[str], list[str]]]) -> None:
    assert {name: seen[2] for name, seen in english.items() if seen[2]} == {}


def test_every_key_is_for_one_thing_in_english(english: Seen[tuple[set[str], list[str], list[str]]]) -> None:
    assert {name: twice for name, (_, twice, _) in english.items() if twice} == {}


def test_every_key_is_for_one_thing_in_spanish(spanish: Seen[tuple[set[str], list[str], list[str]]]) -> None:
    assert {name: twice for name, (_, twice, _) in spanish.items() if twice} == {}


def test_nothing_is_cut_off_or_too_small_in_spanish_with_long_names(
    spanish: Seen[tuple[set[str], list[str], list[str]]],
) -> None:
    assert [f"{name}: {what}" for name, (*_, found) in spanish.items() for what in found] == []
