"""The window: pages, leaving with something typed, what another computer kept, mistakes told in words."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

import pytest
from answers import Answers
from PySide6.QtCore import QEvent, QObject, QSize, Qt
from PySide6.QtGui import QIcon, QImage
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLineEdit, QPushButton, QScrollArea, QTabWidget, QWidget
from pytestqt.qtbot import QtBot

from calibrator.desk.context import Desk
from calibrator.desk.forms.language_form import LanguageForm
from calibrator.desk.mistakes import MistakeHook
from calibrator.desk.pages.mix_check import MixCheckPage
from calibrator.desk.pages.setup import SetupPage
from calibrator.desk.pages.tables import NEW_PLAN
from calibrator.desk.pages.today import TodayPage
from calibrator.desk.pictograms import PICTURES, SIZE, pictogram
from calibrator.desk.theme import the_theme, tokens
from calibrator.desk.window import PAGES, RAIL_PX, Window, least_size, within
from calibrator.model import Farm, Lot, Step
from calibrator.records import Records, RecordsError

TAB = Qt.FocusPolicy.TabFocus
RAIL = [key for key in PAGES if key != "welcome"]


@pytest.fixture
def window(qtbot: QtBot, desk: Desk) -> Iterator[Window]:
    shown = Window(desk)
    qtbot.addWidget(shown)
    with qtbot.waitExposed(shown):
        shown.show()
    yield shown
    shown._closing = True
    shown.close()


def test_the_framed_button_of_the_rail_is_the_lit_one(window: Window, qtbot: QtBot) -> None:
    """Whoever clicked one page and is led to another sees one button marked, not two."""
    QTest.mouseClick(window.rail.buttons["lots"], Qt.MouseButton.LeftButton)
    qtbot.waitUntil(lambda: window.current_page.key == "lots")
    window.show_page("season")
    qtbot.waitUntil(lambda: window.current_page.key == "season")
    assert window.focusWidget() is window.rail.buttons["season"]
    assert window.rail.buttons["season"].isChecked()


def test_the_tab_key_comes_from_a_page_to_its_own_button_of_the_rail(window: Window) -> None:
    """Where it came to the one pressed last, Enter led away to that page."""
    window.rail.buttons["mix_check"].setFocus()
    for key in ("mix_check", "season"):
        window.show_page(key)
        under_tab = [name for name, each in window.rail.buttons.items() if each.focusPolicy() & TAB]
        assert under_tab == [key]


@pytest.mark.parametrize("key", [key for key in RAIL if key != "today"])
def test_a_page_called_by_its_key_has_the_keys(window: Window, key: str, qtbot: QtBot) -> None:
    """What is typed next is typed there: at the rail it would be lost."""
    window.rail.buttons["today"].setFocus()
    number = Qt.Key(Qt.Key.Key_1 + RAIL.index(key))
    QTest.keyClick(window, number, Qt.KeyboardModifier.ControlModifier)
    qtbot.waitUntil(lambda: window.current_page.key == key)
    qtbot.waitUntil(lambda: window.current_page.isAncestorOf(window.focusWidget()))


def test_a_page_called_by_its_key_has_the_keys_that_a_notice_had(window: Window, qtbot: QtBot, tmp_path: Path) -> None:
    window.desk.saved.emit("Saved.", tmp_path)
    button = next(made for made in window._notice.findChildren(QPushButton) if made.isVisible())
    button.setFocus()
    QTest.keyClick(window, Qt.Key.Key_7, Qt.KeyboardModifier.ControlModifier)
    qtbot.waitUntil(lambda: window.current_page.key == "setup")
    qtbot.waitUntil(lambda: window.current_page.isAncestorOf(window.focusWidget()))


def test_arrows_go_on_along_the_rail(window: Window, qtbot: QtBot) -> None:
    window.rail.buttons["today"].setFocus()
    QTest.keyClick(window.rail.buttons["today"], Qt.Key.Key_Down)
    qtbot.waitUntil(lambda: window.current_page.key == "lots")
    qtbot.wait(1)  # past what would move it
    assert window.focusWidget() is window.rail.buttons["lots"]


def test_at_the_start_the_keys_are_at_what_waits(window: Window) -> None:
    page = window.current_page
    assert isinstance(page, TodayPage)
    assert window.focusWidget() is page.rows[0].button


def test_an_empty_store_leads_by_the_hand(qtbot: QtBot, empty_desk: Desk) -> None:
    shown = Window(empty_desk)
    qtbot.addWidget(shown)
    assert shown.current_page.key == "welcome"
    assert shown.rail.isHidden()


def test_f1_brings_up_the_help(window: Window) -> None:
    QTest.keyClick(window, Qt.Key.Key_F1)
    assert window.current_page.key == "help"


@pytest.mark.parametrize("key", RAIL)
def test_each_page_comes_up_by_its_number(window: Window, key: str) -> None:
    digit = Qt.Key.Key_1.value + RAIL.index(key)
    QTest.keyClick(window, Qt.Key(digit), Qt.KeyboardModifier.ControlModifier)
    assert window.current_page.key == key
    assert window.rail.buttons[key].isChecked()
    assert window._stack.minimumSizeHint().width() <= 1024 - RAIL_PX
    assert window._stack.minimumSizeHint().height() <= 700


def test_closing_with_a_weight_typed_asks_first(window: Window, answers: Answers) -> None:
    desk = window.desk
    window.show_page("weigh_in", desk.records.every(Lot)[0].id)
    page = window.page("weigh_in")
    page.guide.set(by="MK", scoop_id=_first(desk, "Scoop"), scale_id=_first(desk, "Scale"), target_mass_g=283.5)
    page.guide.set(scale_zeroed=True)
    page.guide.go(Step.LEVEL_FILLS)
    page.reload()
    QTest.keyClicks(page._views[Step.LEVEL_FILLS]._weight.line, "11.6")
    answers.yes = False
    window.close()
    assert window.isVisible()
    assert "11.6" in answers.asked[-1]
    answers.yes = True
    window.close()
    assert not window.isVisible()


def test_who_stays_for_what_is_typed_is_led_to_it(window: Window, answers: Answers, qtbot: QtBot) -> None:
    window.show_page("mix_check")
    mix = window.page("mix_check")
    assert isinstance(mix, MixCheckPage)
    field = mix.check.readings.first.line
    field.setFocus()
    QTest.keyClicks(field, "10.")
    mix.bring_up("bags")
    window.show_page("lots")
    window.rail.buttons["lots"].setFocus()
    answers.yes = False
    window.close()
    assert window.isVisible()
    assert window.current_page is mix
    assert field.isVisible()
    assert window.focusWidget() is field


def test_who_stays_for_a_scoop_not_kept_is_led_to_its_form(window: Window, answers: Answers) -> None:
    window.show_page("setup", "scoop")
    setup = window.page("setup")
    assert isinstance(setup, SetupPage)
    field = setup.scoops.form.name.line
    field.setFocus()
    QTest.keyClicks(field, "Blue")
    setup.tabs.setCurrentIndex(0)
    window.show_page("today")
    answers.yes = False
    window.close()
    assert window.current_page is setup
    assert window.focusWidget() is field


def _first(desk: Desk, name: str) -> str:
    from calibrator import model

    return desk.records.every(getattr(model, name))[0].id


def test_what_another_computer_kept_comes_into_view(window: Window) -> None:
    desk = window.desk
    farm = desk.farm
    assert farm is not None
    desk.records.keep(replace(farm, name="Windy Hollow North"))
    window.watch.look()
    assert window.rail.farm_name == "Windy Hollow North"


def test_records_that_went_away_are_told_in_words(window: Window, monkeypatch: pytest.MonkeyPatch) -> None:
    def gone(self: Records, *, anew: bool = False) -> int:
        raise RecordsError("unreachable", place="“x”")

    monkeypatch.setattr(Records, "version", gone)
    window.watch.look()
    assert "cannot be reached" in window._notice.text()


def test_a_mistake_of_ours_is_told_without_a_traceback(answers: Answers, qapp: QApplication) -> None:
    hook = MistakeHook(answers, Path("calibrator.log"))
    hook(ZeroDivisionError, ZeroDivisionError("division by zero"), None)
    assert "written to the log" in answers.told[0]
    assert "division" not in answers.told[0]
    hook(RecordsError, RecordsError("disk_full", place="x"), None)
    assert "is full" in answers.told[1]


def test_a_window_fits_the_screen_with_its_frame(window: Window) -> None:
    least = QSize(1024, 700)
    assert within(QSize(1280, 800), QSize(1280, 800), least) == QSize(1272, 760)
    assert within(QSize(1280, 800), QSize(1920, 1040), least) == QSize(1280, 800)
    assert within(QSize(1280, 800), QSize(800, 600), least) == QSize(1280, 800)


def test_on_a_screen_of_large_letters_the_window_fits_and_the_page_scrolls(window: Window) -> None:
    assert least_size(QSize(1920, 1040)) == QSize(1024, 700)
    assert least_size(QSize(960, 540)) == QSize(952, 500)  # 1920 by 1080 at 200 %
    assert within(QSize(1280, 800), QSize(960, 540), least_size(QSize(960, 540))) == QSize(952, 500)
    window.setMinimumSize(952, 500)
    window.resize(952, 500)
    window.show()
    window.show_page("lots")
    assert window.current_page.size() == QSize(1016 - RAIL_PX, 670)
    area = next(area for area in window.findChildren(QScrollArea) if area.isAncestorOf(window._stack))
    assert area.horizontalScrollBar().maximum() > 0
    assert area.verticalScrollBar().maximum() > 0
    for size in (QSize(1024, 700), QSize(1016, 670)):  # the second: 1024 by 768 less frame and task bar
        window.resize(size)
        for key in RAIL:
            window.show_page(key)
            assert window.current_page.size() == size - QSize(RAIL_PX, 0)
            assert area.verticalScrollBar().maximum() == 0
            assert area.horizontalScrollBar().maximum() == 0


def test_light_or_dark_can_be_chosen_and_is_remembered(empty_desk: Desk, qtbot: QtBot) -> None:
    form = LanguageForm(empty_desk)
    qtbot.addWidget(form)
    for look, dark in (("dark", True), ("light", False)):
        form.look.setCurrentIndex(form.look.findData(look))
        form.look.activated.emit(form.look.currentIndex())
        assert the_theme().dark is dark
        assert empty_desk.settings.now.look == look
    form.reload()
    assert form.look.currentData() == "light"
    the_theme().wear("")


def test_colours_follow_light_and_dark(window: Window) -> None:
    theme = the_theme()
    theme.force(True)
    dark = tokens()
    theme.force(False)
    assert tokens() != dark
    theme.force(None)


def test_a_failed_write_says_why_and_returns_none(desk: Desk, answers: Answers) -> None:
    def full() -> Farm:
        raise RecordsError("disk_full", place="x")

    assert desk.attempt(full) is None
    assert ["Free some space" in text for text in answers.told] == [True]


def test_a_page_that_comes_back_reads_only_what_may_have_changed(
    window: Window, monkeypatch: pytest.MonkeyPatch
) -> None:
    window.show_page("lots")
    read: list[str] = []
    monkeypatch.setattr(window.page("lots"), "reload", lambda: read.append("lots"))
    for key in ("help", "lots", "help", "lots"):
        window.show_page(key)
    assert read == []
    window.show_page("help")
    records = window.desk.records
    records.keep(replace(records.every(Lot)[0], product="Another"), by="MK", why="misread")
    window.show_page("lots")
    assert read == ["lots"]
    window.show_page("help")
    window.desk.changed.emit()
    window.show_page("lots")
    assert read == ["lots", "lots"]


@pytest.mark.parametrize("key", RAIL)
def test_the_picture_of_a_page_stands_apart_and_takes_up_the_colours(window: Window, key: str) -> None:
    def drawn(page: str, state: QIcon.State) -> QImage:
        return pictogram(page).pixmap(SIZE, QIcon.Mode.Normal, state).toImage()

    shown, here = (drawn(key, state) for state in (QIcon.State.Off, QIcon.State.On))
    assert shown != here
    assert all(shown != drawn(other, QIcon.State.Off) for other in PICTURES if other != key)
    the_theme().force(dark=True)
    try:
        assert drawn(key, QIcon.State.Off) != shown
        assert window.rail.buttons[key].icon().pixmap(SIZE).toImage() == drawn(key, QIcon.State.Off)
    finally:
        the_theme().force(dark=None)


def test_what_the_keys_come_to_is_scrolled_into_view(window: Window, qtbot: QtBot) -> None:
    """Tab goes round from the last field to the first, which lay above."""
    window.resize(1024, 700)
    window.show_page("tables", NEW_PLAN)
    page = window.current_page
    lines = [line for line in page.findChildren(QLineEdit) if line.isVisible()]
    for line in (lines[-1], lines[0]):
        line.setFocus()
        qtbot.waitUntil(lambda line=line: whole_in_view(line))


def whole_in_view(widget: QWidget) -> bool:
    return widget.visibleRegion().boundingRect() == widget.rect()


class Shown(QObject):
    """Notes each widget that is shown as a window of its own, however short."""

    def __init__(self) -> None:
        super().__init__()
        self.windows: list[str] = []

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if event.type() is QEvent.Type.Show and isinstance(watched, QWidget) and watched.isWindow():
            self.windows.append(type(watched).__name__)
        return False


def test_no_part_of_a_page_flashes_up_as_a_window(window: Window) -> None:
    app = QApplication.instance()
    assert app is not None
    seen = Shown()
    app.installEventFilter(seen)
    for key in PAGES:
        window.show_page(key)
        for tabs in window.current_page.findChildren(QTabWidget):
            for place in range(tabs.count()):
                tabs.setCurrentIndex(place)
                QApplication.processEvents()
    app.removeEventFilter(seen)
    assert seen.windows == []
