"""The field is typed into as people do: slowly, wrong, mended, with units changed in the middle."""

from __future__ import annotations

import inspect
import re
from collections.abc import Callable, Iterator

import pytest
from PySide6.QtCore import QEvent, QLocale, Qt, QTranslator
from PySide6.QtGui import QColor, QKeyEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QDialog, QLabel, QLineEdit, QPushButton, QVBoxLayout, QWidget
from pytestqt.qtbot import QtBot

from calibrator.desk.context import Desk
from calibrator.desk.forms.amount import Amount
from calibrator.desk.theme import DARK, LIGHT, Theme, Tokens
from calibrator.desk.widgets import unit_sentences
from calibrator.desk.widgets.quantity_field import QuantityField
from calibrator.desk.widgets.saying import Bubble, Saying
from calibrator.desk.widgets.unit_sentences import sentence, sentences
from calibrator.model import UnitSystem
from calibrator.units import SENTENCES, Kind, NotUnderstood, Quantity

FARM, METRIC = UnitSystem.FARM, UnitSystem.METRIC
OZ_G = 28.349523125
# The offscreen platform says so of every window that is shown.
pytestmark = pytest.mark.qt_log_ignore("does not support propagateSizeHints")
MakeField = Callable[..., QuantityField]


@pytest.fixture(autouse=True)
def english() -> Iterator[None]:
    before = QLocale()
    QLocale.setDefault(QLocale(QLocale.Language.English, QLocale.Country.UnitedStates))
    yield
    QLocale.setDefault(before)


@pytest.fixture
def make(qtbot: QtBot) -> MakeField:
    def made(kind: Kind = Kind.MASS, system: UnitSystem = FARM, **how: object) -> QuantityField:
        field = QuantityField(kind, system, **how)  # type: ignore[arg-type]
        qtbot.addWidget(field)
        field.show()
        return field

    return made


class Heard:
    """What the field's signals brought, in their order."""

    def __init__(self, field: QuantityField) -> None:
        self.quantities: list[Quantity | None] = []
        self.order: list[str] = []
        field.understood.connect(self.quantities.append)
        field.editingFinished.connect(self._finished)
        field.returnPressed.connect(self._returned)

    def _finished(self) -> None:
        self.order.append("finished")

    def _returned(self) -> None:
        self.order.append("return")


def test_typing_a_weight(qtbot: QtBot, make: MakeField) -> None:
    field = make()
    qtbot.keyClicks(field.line, "10 1/4 oz")
    quantity = field.quantity()
    assert quantity is not None
    assert quantity.value == pytest.approx(10.25 * OZ_G)
    assert quantity.typed == "10 1/4 oz"
    assert field.message == "= 10.25 oz"
    assert field.line.property("state") == "ok"
    assert field.problem() == ""


def test_while_typing_nothing_is_called_wrong(qtbot: QtBot, make: MakeField) -> None:
    field = make(Kind.VOLUME)
    said = []
    for key in "2 gal 1 qt":
        qtbot.keyClicks(field.line, key)
        said.append((field.line.property("state"), field.message))
    assert all(state == "ok" for state, _ in said)
    assert said[0] == ("ok", "= 2 qt")
    assert said[6] == ("ok", "")
    assert said[-1] == ("ok", "= 2.25 gal")


def test_what_is_wrong_is_told_on_enter_and_the_text_stays(qtbot: QtBot, make: MakeField) -> None:
    field = make(Kind.VOLUME)
    qtbot.keyClicks(field.line, "2 oz")
    qtbot.keyClick(field.line, Qt.Key.Key_Return)
    assert field.text() == "2 oz"
    assert field.message == "oz is a weight. For a volume write fl oz."
    assert field.line.property("state") == "wrong"
    assert field.line.accessibleDescription() == field.message


def test_mending_is_answered_at_every_key(qtbot: QtBot, make: MakeField) -> None:
    field = make(Kind.VOLUME)
    qtbot.keyClicks(field.line, "2 oz")
    qtbot.keyClick(field.line, Qt.Key.Key_Return)
    field.line.setCursorPosition(2)
    qtbot.keyClicks(field.line, "f")
    assert field.message == "The unit “foz” is not known here. Type it like 2 qt."
    qtbot.keyClicks(field.line, "l ")
    assert field.text() == "2 fl oz"
    assert field.message == ""
    assert field.line.property("state") == "ok"


def test_what_is_wrong_is_told_on_leaving(qtbot: QtBot, make: MakeField) -> None:
    field, elsewhere = make(), make()
    with qtbot.waitActive(field):
        field.activateWindow()
    field.setFocus()
    qtbot.keyClicks(field.line, "1,283 kg")
    elsewhere.activateWindow()
    elsewhere.setFocus()
    field.line.clearFocus()
    assert field.message == "“1,283” can be 1283 or 1.283. Write the one that is meant."


def test_a_decimal_comma_is_taken_and_told(qtbot: QtBot, make: MakeField) -> None:
    field = make()
    qtbot.keyClicks(field.line, "10,25")
    assert field.message == "= 10.25 oz"


def test_passing_through_a_field_is_no_fault(qtbot: QtBot, make: MakeField) -> None:
    field = make(required=True)
    with qtbot.waitActive(field):
        field.activateWindow()
    field.setFocus()
    assert field.line.hasFocus()
    field.line.clearFocus()
    assert field.message == ""


def test_leaving_after_the_page_cleared_the_field_is_no_fault(qtbot: QtBot, make: MakeField) -> None:
    field = make(required=True)
    with qtbot.waitActive(field):
        field.activateWindow()
    field.setFocus()
    qtbot.keyClicks(field.line, "10.2")
    qtbot.keyClick(field.line, Qt.Key.Key_Return)
    field.set_typed("")
    heard = Heard(field)
    field.line.clearFocus()
    assert heard.order == ["finished"]
    assert field.message == ""


def test_a_field_not_touched_says_nothing_until_asked(qtbot: QtBot, make: MakeField) -> None:
    field = make(required=True)
    assert field.message == ""
    assert field.problem() == "Type a value, like 10.2 oz."
    assert not field.tell()
    assert field.message == "Type a value, like 10.2 oz."
    assert field.quantity() is None


def test_an_optional_field_may_stay_blank(qtbot: QtBot, make: MakeField) -> None:
    field = make(required=False)
    assert field.tell()
    assert field.problem() == ""


def test_a_size_that_cannot_be(qtbot: QtBot, make: MakeField) -> None:
    field = make(lowest=100.0, highest=1000.0)
    qtbot.keyClicks(field.line, "40")
    qtbot.keyClick(field.line, Qt.Key.Key_Enter)
    assert field.message == "Too much: at most 35 oz."
    field.set_limits(None, None)
    assert field.message == "= 40 oz"


def test_understood_brings_each_new_meaning_once(qtbot: QtBot, make: MakeField) -> None:
    field = make()
    heard = Heard(field)
    qtbot.keyClicks(field.line, "10 ")
    assert [quantity and quantity.typed for quantity in heard.quantities] == ["1", "10"]
    qtbot.keyClicks(field.line, "x")
    qtbot.keyClicks(field.line, "y")
    assert heard.quantities[2:] == [None]


def test_what_the_program_sets_is_not_heard_as_typing(qtbot: QtBot, make: MakeField) -> None:
    field = make()
    heard = Heard(field)
    field.set_value(283.0)
    field.set_typed("10 oz")
    field.set_system(METRIC)
    assert heard.quantities == []


@pytest.mark.parametrize("key", [Qt.Key.Key_Return, Qt.Key.Key_Enter])
def test_enter_is_heard_once_after_the_text_is_taken(qtbot: QtBot, make: MakeField, key: Qt.Key) -> None:
    field = make()
    heard = Heard(field)
    qtbot.keyClicks(field.line, "10.2")
    qtbot.keyClick(field.line, key)
    assert heard.order == ["finished", "return"]


def test_enter_held_down_counts_once(qtbot: QtBot, make: MakeField, qapp: QApplication) -> None:
    field = make()
    heard = Heard(field)
    qtbot.keyClick(field.line, Qt.Key.Key_Return)
    for _ in range(20):
        held = QKeyEvent(QEvent.Type.KeyPress, Qt.Key.Key_Return, Qt.KeyboardModifier.NoModifier, "\r", autorep=True)
        qapp.sendEvent(field.line, held)
    assert heard.order.count("return") == 1


def test_enter_never_presses_a_dialogs_button(qtbot: QtBot) -> None:
    dialog = QDialog()
    field, pressed = QuantityField(Kind.MASS, FARM, name="Weight"), QPushButton("Save")
    pressed.setDefault(True)
    layout = QVBoxLayout(dialog)
    layout.addWidget(field)
    layout.addWidget(pressed)
    qtbot.addWidget(dialog)
    dialog.show()
    qtbot.keyClicks(field.line, "10.2")
    with qtbot.assertNotEmitted(pressed.clicked):
        qtbot.keyClick(field.line, Qt.Key.Key_Return)
    assert dialog.isVisible()
    # On the dialog itself the same key does press it: the check can fail.
    with qtbot.waitSignal(pressed.clicked):
        qtbot.keyClick(dialog, Qt.Key.Key_Return)


def test_other_keys_edit_as_on_any_line(qtbot: QtBot, make: MakeField) -> None:
    field = make()
    qtbot.keyClicks(field.line, "10.23")
    qtbot.keyClick(field.line, Qt.Key.Key_Backspace)
    assert field.text() == "10.2"
    qtbot.keyClick(field.line, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    assert field.text() == "10.23"


@pytest.mark.parametrize(
    ("typed", "after", "message"),
    [
        ("10.2", "10.2 oz", "= 289.2 g (10.2 oz)"),
        ("10 1/4 oz", "10 1/4 oz", "= 290.6 g (10.25 oz)"),
        ("283 g", "283 g", ""),
        ("ten", "ten", "There is no number in it. Type it like 280 g."),
        ("", "", ""),
    ],
)
def test_changing_units_in_the_middle_keeps_the_meaning(
    qtbot: QtBot, make: MakeField, typed: str, after: str, message: str
) -> None:
    field = make(required=False)
    qtbot.keyClicks(field.line, typed)
    qtbot.keyClick(field.line, Qt.Key.Key_Return)
    before = field.quantity()
    field.set_system(METRIC)
    assert (field.text(), field.message) == (after, message)
    now = field.quantity()
    assert (now and now.value) == (before and before.value)


def test_units_there_and_back(qtbot: QtBot, make: MakeField) -> None:
    field = make(Kind.TEMPERATURE)
    qtbot.keyClicks(field.line, "110")
    for system in (METRIC, FARM, METRIC, FARM, FARM):
        field.set_system(system)
    assert field.text() == "110 °F"
    assert field.message == ""
    field.set_system(METRIC)
    assert field.message == "= 43.3 °C (110 °F)"


def test_a_value_filled_in_changes_with_the_units_and_loses_nothing(make: MakeField) -> None:
    field = make()
    field.set_value(289.16)
    assert field.text() == "10.2 oz"
    for system in (METRIC, FARM, METRIC):
        field.set_system(system)
    assert field.text() == "289.2 g"
    quantity = field.quantity()
    assert quantity is not None
    assert quantity.value == 289.16


def test_a_value_filled_in_and_then_changed_by_hand(qtbot: QtBot, make: MakeField) -> None:
    field = make()
    field.set_value(289.16)
    qtbot.keyClick(field.line, Qt.Key.Key_Home)
    qtbot.keyClicks(field.line, "1")
    quantity = field.quantity()
    assert field.text() == "110.2 oz"
    assert quantity is not None
    assert quantity.value == pytest.approx(110.2 * OZ_G)
    field.set_value(None)
    assert (field.text(), field.quantity(), field.message) == ("", None, "")


def test_a_field_with_a_unit_of_its_own_in_each_system(qtbot: QtBot, make: MakeField) -> None:
    field = make(examples={FARM: "50 lb", METRIC: "25 kg"})
    qtbot.keyClicks(field.line, "50")
    field.set_system(METRIC)
    assert (field.text(), field.message) == ("50 lb", "= 22.68 kg (50 lb)")
    field.set_typed("25")
    assert field.message == "= 25 kg"
    single = make()
    single.set_default_unit("lb")
    single.set_typed("50")
    single.set_system(METRIC)
    assert single.text() == "50 lb"


@pytest.mark.parametrize(
    ("value", "typed", "shown"),
    [
        (10.2 * OZ_G, "10.2 oz", "10.2 oz"),
        (10.2 * OZ_G, "10.2", "289.2 g"),
        (283.0, "283", "283"),
        (283.0, "0,283 kg", "0,283 kg"),
        (1283.0, "1,283 kg", "1.283 kg"),
        (None, "ten", "ten"),
        (None, "", ""),
    ],
)
def test_a_kept_reading_comes_back_with_its_meaning(
    make: MakeField, value: float | None, typed: str, shown: str
) -> None:
    field = make(system=METRIC)
    field.set_kept(value, typed)
    assert field.text() == shown
    quantity = field.quantity()
    assert (quantity and quantity.value) == (None if value is None else pytest.approx(value))


def test_a_problem_of_the_pages_own_stays_until_the_text_changes(qtbot: QtBot, make: MakeField) -> None:
    field = make()
    qtbot.keyClicks(field.line, "10.2")
    field.set_problem("That is far from the other fills.")
    assert field.problem() == field.message == "That is far from the other fills."
    assert field.line.property("state") == "wrong"
    qtbot.keyClicks(field.line, "5")
    assert field.problem() == ""
    assert field.message == "= 10.25 oz"


def test_nothing_is_said_twice(qtbot: QtBot, make: MakeField) -> None:
    field = make(Kind.PERCENT)
    qtbot.keyClicks(field.line, "40 %")
    assert field.message == ""
    field.set_typed("40")
    assert field.message == "= 40 %"


def test_the_note_of_a_captioned_amount_stands_once_and_gives_way(qtbot: QtBot, desk: Desk) -> None:
    amount = Amount(desk, "Tolerance", Kind.PERCENT, "How far off a feeding may be.", optional=True)
    qtbot.addWidget(amount)
    amount.show()

    def said() -> list[str]:
        return [words.text() for words in amount.findChildren(QLabel) if words.isVisible() and words.text()]

    assert said() == ["Tolerance", "How far off a feeding may be."]
    assert amount.line.accessibleDescription() == "How far off a feeding may be."
    qtbot.keyClicks(amount.line, "many")
    qtbot.keyClick(amount.line, Qt.Key.Key_Return)
    assert len(said()) == 2
    assert said()[1].startswith("There is no number in it.")
    amount.set_text("")
    assert said() == ["Tolerance", "How far off a feeding may be."]


def test_a_locale_with_a_decimal_comma(qtbot: QtBot, make: MakeField) -> None:
    QLocale.setDefault(QLocale(QLocale.Language.Spanish, QLocale.Country.Spain))
    field = make(system=METRIC)
    assert field.line.placeholderText() == "like 280 g"
    qtbot.keyClicks(field.line, "0,283 kg")
    assert field.message == "= 283 g"
    field.set_value(1250.5)
    assert field.text() == "1,251 kg"
    assert field.problem() == ""


def test_the_label_and_the_screen_reader(qtbot: QtBot, make: MakeField) -> None:
    field = make(name="Target weight")
    caption = QLabel("&Target weight")
    qtbot.addWidget(caption)
    caption.setBuddy(field)
    assert field.line.accessibleName() == field.accessibleName() == "Target weight"
    assert field.line.focusPolicy() & Qt.FocusPolicy.TabFocus
    assert not field.focusPolicy() & Qt.FocusPolicy.TabFocus


def test_alt_and_the_letter_of_the_label_reach_the_line(qtbot: QtBot) -> None:
    dialog = QDialog()
    caption, field, other = QLabel("&Weight"), QuantityField(Kind.MASS, FARM), QPushButton("Other")
    caption.setBuddy(field)
    layout = QVBoxLayout(dialog)
    for widget in (other, caption, field):
        layout.addWidget(widget)
    qtbot.addWidget(dialog)
    with qtbot.waitActive(dialog):
        dialog.show()
        dialog.activateWindow()
    other.setFocus()
    qtbot.keyClick(dialog, Qt.Key.Key_W, Qt.KeyboardModifier.AltModifier)
    assert field.line.hasFocus()
    qtbot.keyClick(field.line, Qt.Key.Key_Tab)
    assert other.hasFocus()


@pytest.mark.parametrize(("dark", "tokens"), [(False, LIGHT), (True, DARK)])
def test_wrong_is_coloured_by_the_theme(qtbot: QtBot, qapp: QApplication, dark: bool, tokens: Tokens) -> None:
    theme = Theme(qapp)
    theme.force(dark)
    field = QuantityField(Kind.MASS, FARM)
    theme.dress(field)
    qtbot.addWidget(field)
    field.show()
    field.set_typed("2 qt")
    said = field.findChild(QLabel)
    assert said is not None
    wrong = said.palette().color(said.foregroundRole())
    field.set_typed("2 oz")
    right = said.palette().color(said.foregroundRole())
    theme.force(None)
    assert (wrong, right) == (QColor(tokens.bad), QColor(tokens.quiet))


def test_a_long_sentence_moves_nothing_and_is_read_whole_in_the_field(qtbot: QtBot, make: MakeField) -> None:
    page = QWidget()
    qtbot.addWidget(page)
    field, next_one = make(Kind.VOLUME), QLineEdit()
    beneath = QVBoxLayout(page)
    beneath.addWidget(field)
    beneath.addWidget(next_one)
    page.resize(220, 300)
    with qtbot.waitExposed(page):
        page.show()
    next_one.setFocus()
    before = next_one.geometry()
    field.set_typed("1 cup")
    said = field.findChild(Saying)
    assert said is not None
    assert not said.fits
    assert next_one.geometry() == before
    assert page.findChild(Bubble) is None
    field.line.setFocus()
    bubble = page.findChild(Bubble)
    assert bubble is not None
    assert bubble.isVisible()
    assert bubble.text() == field.message != QLabel.text(said)
    assert page.rect().contains(bubble.geometry())
    next_one.setFocus()
    assert bubble.isVisible()  # told on leaving, it can be read whole until it is mended
    field.line.setFocus()
    field.line.selectAll()
    QTest.keyClicks(field.line, "2 qt")
    assert not bubble.isVisible()
    next_one.setFocus()
    field.set_typed("1 cup")
    qtbot.mouseClick(said, Qt.MouseButton.LeftButton)  # or a finger, which brings no tip
    assert bubble.isVisible()
    assert field.line.hasFocus()


def test_where_both_units_do_not_fit_the_farms_own_stands(qtbot: QtBot, make: MakeField) -> None:
    field = make(Kind.MASS, system=METRIC)
    field.setFixedWidth(100)
    field.set_typed("50 lb")
    field.adjustSize()
    said = field.findChild(Saying)
    assert said is not None
    assert (QLabel.text(said), said.fits) == ("= 22.68 kg", True)
    assert field.message == "= 22.68 kg (50 lb)"


class Shouting(QTranslator):
    """Every text in capitals, its braces left alone."""

    def translate(self, context: str, text: str, note: str | None = None, n: int = -1) -> str:
        return re.sub(r"[^{}]+(?![^{]*\})", lambda part: part.group().upper(), text)


def test_the_sentences_change_with_the_language(qtbot: QtBot, make: MakeField, qapp: QApplication) -> None:
    field = make(Kind.VOLUME)
    field.set_typed("2 lb")
    shouting = Shouting()
    qapp.installTranslator(shouting)
    qapp.sendEvent(field, QEvent(QEvent.Type.LanguageChange))
    loud, hint = field.message, field.line.placeholderText()
    qapp.removeTranslator(shouting)
    assert loud == "lb IS A WEIGHT, AND SOMETHING ELSE BELONGS HERE. TYPE IT LIKE 2 qt."
    assert hint == "LIKE 2 qt"


def test_the_translatable_sentences_are_those_of_the_units() -> None:
    assert sentences() == dict(SENTENCES)
    refused = NotUnderstood("hidden", name="U+200B", example="10.2 oz")
    assert sentence(refused) == str(refused)


def test_every_sentence_is_a_literal_that_translators_find() -> None:
    source = inspect.getsource(unit_sentences.sentences)
    assert source.count("QCoreApplication.translate(") == len(SENTENCES)
    assert 'translate(f"' not in source


def test_a_refusal_gives_the_example_that_stood_in_the_field(qtbot: QtBot) -> None:
    examples = {FARM: "3 7/8 in", METRIC: "98 mm"}
    field = QuantityField(Kind.LENGTH, FARM, examples=examples)
    qtbot.addWidget(field)
    assert field.line.placeholderText() == "like 3 7/8 in"
    field.set_typed("wide")
    assert field.message == "There is no number in it. Type it like 3 7/8 in."
    field.set_typed("1 ft 3")  # another example says more here
    assert field.message.endswith("like 1 ft 3 in.")


def test_a_narrow_line_shows_its_example_whole_and_a_wide_one_says_like(make: MakeField) -> None:
    field = make(Kind.TEMPERATURE)
    for width, told in ((300, "like 110 °F"), (70, "110 °F"), (300, "like 110 °F")):
        field.resize(width, 60)
        QApplication.processEvents()
        assert field.line.placeholderText() == told


def test_an_amount_without_an_example_has_none_after_a_change_of_units(qtbot: QtBot, empty_desk: Desk) -> None:
    amount = Amount(empty_desk, "Target", Kind.MASS, example=False)
    qtbot.addWidget(amount)
    amount.box.set_system(METRIC)
    assert amount.line.placeholderText() == ""


def test_a_volume_without_unit_is_of_the_unit_of_its_example(qtbot: QtBot) -> None:
    """After "like 40 gal" a bare 40 is 40 gal, never quarts; and is told so."""
    field = QuantityField(Kind.VOLUME, FARM, examples={FARM: "40 gal", METRIC: "150 L"})
    qtbot.addWidget(field)
    assert field.line.placeholderText() == "like 40 gal"
    qtbot.keyClicks(field.line, "40")
    found = field.quantity()
    assert found is not None
    assert found.value == pytest.approx(40 * 3785.411784)  # NIST Handbook 44, appendix C
    assert "40 gal" in field.message
    field.set_system(METRIC)
    assert field.text() == "40 gal"


@pytest.mark.parametrize(
    ("kind", "shown", "typed", "meant"),
    [(Kind.LENGTH, "9.8 cm", "10.5", 105.0), (Kind.MASS, "5 kg", "7", 7000.0), (Kind.VOLUME, "150 L", "40", 40_000.0)],
)
def test_a_bare_number_has_the_unit_of_the_fields_own_example(
    qtbot: QtBot, kind: Kind, shown: str, typed: str, meant: float
) -> None:
    """And keeps that meaning where another example comes to stand there."""
    field = QuantityField(kind, METRIC, examples={FARM: "1", METRIC: shown})
    qtbot.addWidget(field)
    qtbot.keyClicks(field.line, typed)
    assert field.quantity().value == pytest.approx(meant)  # type: ignore[union-attr]
    other = {Kind.LENGTH: "98 mm", Kind.MASS: "10 g", Kind.VOLUME: "100 mL"}[kind]
    field.set_examples({FARM: "1", METRIC: other})
    assert field.quantity().value == pytest.approx(meant)  # type: ignore[union-attr]


@pytest.mark.parametrize("unit", ["oz", "lb", "g", "kg"])
@pytest.mark.parametrize("system", list(UnitSystem))
def test_the_example_follows_the_unit_that_a_scale_shows(make: MakeField, unit: str, system: UnitSystem) -> None:
    field = make(examples={FARM: "50 lb", METRIC: "25 kg"})
    field.set_system(system)
    field.set_default_unit(unit)
    assert field.line.placeholderText().endswith(f" {unit}")
    field.set_typed(field.example)
    meant = field.quantity()
    field.set_typed(field.example.split()[0])
    assert field.quantity() is not None
    assert meant is not None
    assert field.quantity().value == meant.value  # type: ignore[union-attr]
    field.set_typed("ten")
    assert field.tell() is False
    assert field.example in field.message
    field.set_typed("")
    field.set_default_unit(None)
    assert field.example == ("50 lb" if system is FARM else "25 kg")


def test_a_ruled_field_tells_a_line_to_the_division_that_it_has_everywhere_and_keeps_its_place(make: MakeField) -> None:
    """8.8 mm, told to a 64th, would be 11/32 in: beside it the drawing says 3/8 in."""
    field = make(Kind.LENGTH, ruled=True)
    field.set_kept(8.8, "3/8 in")
    assert field.text() == "3/8 in"
    assert (found := field.quantity()) is not None
    assert found.value == 8.8
    field.set_kept(11 / 32 * 25.4, "11/32 in")
    assert field.text() == "11/32 in"  # as a person typed it


def test_a_box_emptied_again_is_not_red(make: MakeField) -> None:
    field = make()
    line, said = field.findChildren(QLineEdit)[0], field.findChildren(Saying)[0]
    QTest.keyClicks(line, "much")
    assert field.tell() is False
    assert said.property("state") == "wrong"
    line.selectAll()
    QTest.keyClick(line, Qt.Key.Key_Delete)
    assert said.property("state") == "ok"
    line.editingFinished.emit()
    assert said.property("state") == "ok"
