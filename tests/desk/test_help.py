"""Help: pictures at the step, and a manual that says what the screens say."""

from __future__ import annotations

import re
import xml.etree.ElementTree as ElementTree
from dataclasses import replace

import pytest
from PySide6.QtCore import Qt, QUrl
from PySide6.QtGui import QTextDocument
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QPushButton
from pytestqt.qtbot import QtBot
from speaking import speaking

from calibrator.desk.context import Desk
from calibrator.desk.forms.following import drawing
from calibrator.desk.help.hands import all_of_them, of_step
from calibrator.desk.help.manual import Manual
from calibrator.desk.help.view import HandsDialog
from calibrator.desk.theme import DARK, Tokens, the_theme
from calibrator.desk.widgets.drawing import READINGS, Drawing
from calibrator.desk.window import Window
from calibrator.model import Lot, Step, UnitSystem
from calibrator.places import resource

IMAGE = QTextDocument.ResourceType.ImageResource.value


def captions(language: str) -> set[str]:
    """Everything the screens call something in a language, without keys and dots."""
    tree = ElementTree.parse(resource("translations/desk_es.ts"))
    found = set()
    for message in tree.iter("message"):
        text = message.findtext("source" if language == "en" else "translation") or ""
        found.add(text.replace("&", "").removesuffix(" …").strip())
    return found


@pytest.mark.parametrize("language", ["en", "es"])
def test_the_manual_calls_things_as_the_screens_do(language: str) -> None:
    text = resource(f"manual/{language}.md").read_text(encoding="utf-8")
    named = {part.strip() for name in re.findall(r"(?<!\*)\*([^*\n]+)\*(?!\*)", text) for part in name.split("→")}
    assert len(named) >= 8
    assert named - captions(language) == set()


@pytest.mark.parametrize("language", ["en", "es"])
def test_every_picture_of_the_manual_is_there(qtbot: QtBot, language: str) -> None:
    names = re.findall(r"!\[[^\]]+\]\(([^)]+)\)", resource(f"manual/{language}.md").read_text(encoding="utf-8"))
    assert len(names) >= 6
    with speaking(language):
        manual = Manual()
    qtbot.addWidget(manual)
    for name in names:
        assert manual.loadResource(IMAGE, QUrl(name)).width() > 300


def test_the_manual_brings_nothing_from_elsewhere(qtbot: QtBot) -> None:
    manual = Manual()
    qtbot.addWidget(manual)
    assert manual.loadResource(IMAGE, QUrl("https://example.org/pictures/a.png")).isNull()
    assert manual.loadResource(IMAGE, QUrl("../pictures/none.png")).isNull()
    assert manual.loadResource(IMAGE, QUrl("../translations/desk_es.ts")).isNull()
    assert manual.loadResource(QTextDocument.ResourceType.StyleSheetResource.value, QUrl("a.css")) is None


def test_every_drawing_takes_the_colours_in_force(qtbot: QtBot) -> None:
    known = set(Tokens.__dataclass_fields__)
    for name in {move.drawing for work in all_of_them() for move in work.moves}:
        used = set(re.findall(r"@(\w+)@", resource(f"drawings/{name}.svg").read_text(encoding="utf-8")))
        assert used & known
        assert used - known == ({"reading"} if name in READINGS else set())
    drawing = Drawing("strike", "Strike it level")
    qtbot.addWidget(drawing)
    drawing.show()
    the_theme().force(True)
    try:
        picture = drawing.grab().toImage()
        seen = {picture.pixelColor(x, y).name().upper() for x in range(0, 200, 2) for y in range(0, 150, 2)}
        assert {DARK.action, DARK.action_soft} <= seen
    finally:
        the_theme().force(None)


def test_pictures_open_at_the_step_by_keyboard(qtbot: QtBot, desk: Desk) -> None:
    window = Window(desk)
    qtbot.addWidget(window)
    window.show()
    window.show_page("weigh_in", desk.records.every(Lot)[0].id)
    page = window.page("weigh_in")
    guide = page.guide  # type: ignore[attr-defined]
    guide.set(by="MK")
    page.open_step(Step.SCOOP_AND_SCALE)  # type: ignore[attr-defined]
    link = next(b for b in window.findChildren(QPushButton) if b.isVisible() and b.text() == "Show me how")
    link.setFocus()
    QTest.keyClick(link, Qt.Key.Key_Space)
    dialog = window.findChild(HandsDialog)
    assert dialog is not None
    assert dialog.windowTitle() == "Get the scale ready"
    QTest.keyClick(dialog, Qt.Key.Key_Escape)
    qtbot.waitUntil(lambda: window.findChild(HandsDialog) is None)
    window._closing = True
    window.close()


def test_hands_are_shown_where_hands_work() -> None:
    assert [step for step in Step if of_step(step)] == [
        Step.SCOOP_AND_SCALE,
        Step.LEVEL_FILLS,
        Step.MARK,
        Step.FILLS_TO_MARK,
    ]


def test_a_scale_in_a_drawing_shows_the_farms_units(qtbot: QtBot, desk: Desk) -> None:
    assert desk.farm is not None
    made = drawing(desk, "weigh", "")
    qtbot.addWidget(made)
    shown = [made.grab().toImage()]
    assert made.reading == "11.6 oz"
    desk.keep(replace(desk.farm, units=UnitSystem.METRIC))
    desk.changed.emit()
    assert made.reading == "329 g"
    shown.append(made.grab().toImage())
    assert shown[0] != shown[1]


def test_the_jobs_are_told_in_one_form_and_the_mix_is_checked_by_any_instrument(desk: Desk) -> None:
    with speaking("es"):
        works = all_of_them()
        assert [work.title.split()[0] for work in works] == ["Prepare", "Rase", "Trace", "Llene", "Mezcle"]
        first, *_, last = works[-1].moves
        assert "sírvala" in first.words
        assert all(tool in last.words for tool in ("refractómetro", "densímetro", "jarra"))
