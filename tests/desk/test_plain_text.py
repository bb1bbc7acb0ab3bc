"""What a name becomes on the screen: itself, unless it would do harm there."""

from __future__ import annotations

import re
import unicodedata

import pytest
from hypothesis import example, given
from hypothesis import strategies as st
from PySide6.QtGui import QTextDocumentFragment
from PySide6.QtWidgets import QLabel
from pytestqt.qtbot import QtBot

from calibrator.desk.parts import label
from calibrator.desk.plain_text import LONGEST_LINE, LONGEST_WORD, on_screen, tip
from calibrator.units import with_units_bound


@given(st.text())
@example("\u202eloop\u2066\u200f")
def test_no_mark_turns_what_stands_beside_it(text: str) -> None:
    assert not {unicodedata.bidirectional(sign) for sign in on_screen(text)} & {
        "RLO",
        "LRO",
        "RLE",
        "LRE",
        "RLI",
        "LRI",
    }


@given(st.text(), st.integers(5, 200))
def test_nothing_grows_beyond_its_room(text: str, longest: int) -> None:
    shown = on_screen(text, longest)
    assert len(shown) <= longest
    assert all(len(word.replace("\u200b", "")) <= LONGEST_WORD for word in re.split(r"[\s/\\]", shown))


@pytest.mark.parametrize("slash", ["/", "\\"])
def test_the_place_of_a_file_is_told_to_its_end(slash: str) -> None:
    place = slash.join(
        ["", "home", "office", "Documents", "Calf feeding", "2026", "season of the second shed", "lots.csv"]
    )
    place = f"{place}{slash}{slash.join('abcdefghijklmnopqrstuvwxyz')}"
    told = on_screen(f"The folder {place} is not there any more.")
    assert told.replace("\u200b", "") == f"The folder {place} is not there any more."
    assert all(len(piece) < LONGEST_WORD for piece in re.split(r"[\s\u200b]", told))  # so that lines can end in it


def test_ordinary_names_stay_as_they_are() -> None:
    for name in ("Señora Muñoz & Söhne", "Tom <2 mo.>", "של יום", "👨\u200d👩\u200d👧 farm", "10 oz\n5 oz", "25-1103C"):
        assert on_screen(name, LONGEST_LINE) == name


@given(st.text(st.characters(codec="ascii", exclude_categories=["C"]), max_size=25))
def test_a_tip_says_the_text_and_no_markup(text: str) -> None:
    said = QTextDocumentFragment.fromHtml(tip(text)).toPlainText() if text else ""
    assert said == text


def test_words_that_are_cut_are_read_whole_in_a_tip(qtbot: QtBot) -> None:
    long = "Still needed: " + ", ".join(["the scale level and zeroed"] * 5)
    made = label("", wrap=False)
    qtbot.addWidget(made)
    made.setText(long)
    assert made.text().endswith("…")
    assert long in made.toolTip()
    made.setText("a scoop")
    assert made.toolTip() == ""
    made.setToolTip("its own")
    made.setText("a scale")
    assert made.toolTip() == "its own"


def test_a_number_keeps_its_unit_on_its_line(qtbot: QtBot) -> None:
    assert with_units_bound("10.2 oz, 1 3/8 in or 95 % of 4 bags") == (
        "10.2\u00a0oz, 1\u00a03/8\u00a0in or 95\u00a0% of 4 bags"
    )
    assert with_units_bound("0.498 ± 0.011 g/mL") == "0.498 ±\u00a00.011\u00a0g/mL"
    assert with_units_bound("22.4 fl oz as 2 × 5 lb") == "22.4\u00a0fl\u00a0oz as 2\u00a0×\u00a05\u00a0lb"
    assert with_units_bound("Print no. 30, replaces no. 27") == "Print no.\u00a030, replaces no.\u00a027"
    shown = label("Draw the line 9 mm down.")
    qtbot.addWidget(shown)
    assert shown.text() == "Draw the line 9 mm down."
    assert QLabel.text(shown) == "Draw the line 9\u00a0mm down."
