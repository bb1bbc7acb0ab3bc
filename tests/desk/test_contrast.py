"""The colours can be told apart: contrast as WCAG 2.2 measures it, and the two accents through colour-blind eyes."""

from __future__ import annotations

import re
from dataclasses import fields

import numpy as np
import pytest

from calibrator.desk.theme import DARK, LIGHT, Tokens
from calibrator.places import resource

AA_TEXT = 4.5
"""WCAG 2.2, success criterion 1.4.3, for text of any size."""
AA_PARTS = 3.0
"""WCAG 2.2, success criterion 1.4.11, for what shows where an input is and whether it has the focus."""
APART = 20.0
"""CIE 1976 colour difference at which two lines of a chart are told apart at a glance: common practice, no source."""

# Machado, Oliveira and Fernandes 2009, IEEE Trans. Vis. Comput. Graphics 15:1291, severity 1.0, on linear RGB:
# from memory, not verified; their rows must add up to 1, which the test holds.
EYES = {
    "protanopia": (
        (0.152286, 1.052583, -0.204868),
        (0.114503, 0.786281, 0.099216),
        (-0.003882, -0.048116, 1.051998),
    ),
    "deuteranopia": (
        (0.367322, 0.860646, -0.227968),
        (0.280085, 0.672501, 0.047413),
        (-0.011820, 0.042940, 0.968881),
    ),
    "tritanopia": (
        (1.255528, -0.076749, -0.178779),
        (-0.078411, 0.930809, 0.147602),
        (0.004733, 0.691367, 0.303900),
    ),
}
BOTH = pytest.mark.parametrize("tokens", [LIGHT, DARK], ids=["light", "dark"])
GROUNDS = ("ground", "surface", "raised")
WORDS = ("text", "quiet", "action", "mark", "good", "warn", "bad")


def linear(colour: str) -> np.ndarray:
    """Linear RGB of #RRGGBB, as WCAG 2.2 defines relative luminance."""
    parts = np.array([int(colour[i : i + 2], 16) / 255 for i in (1, 3, 5)])
    return np.where(parts <= 0.04045, parts / 12.92, ((parts + 0.055) / 1.055) ** 2.4)


def contrast(one: str, other: str) -> float:
    """WCAG 2.2's contrast ratio of two colours."""
    low, high = sorted(float(linear(colour) @ (0.2126, 0.7152, 0.0722)) for colour in (one, other))
    return (high + 0.05) / (low + 0.05)


def lab(rgb: np.ndarray) -> np.ndarray:
    """CIE 1976 L*a*b* of linear sRGB, white D65 (IEC 61966-2-1, CIE 15)."""
    to_xyz = np.array(((0.4124, 0.3576, 0.1805), (0.2126, 0.7152, 0.0722), (0.0193, 0.1192, 0.9505)))
    share = to_xyz @ rgb / (0.9505, 1.0, 1.089)
    root = np.where(share > (6 / 29) ** 3, np.cbrt(share), share / (3 * (6 / 29) ** 2) + 4 / 29)
    return np.array((116 * root[1] - 16, 500 * (root[0] - root[1]), 200 * (root[1] - root[2])))


def test_the_measure_itself() -> None:
    # WCAG 2.2: black on white is 21 : 1; #767676 is the lightest grey that passes on white.
    assert contrast("#000000", "#FFFFFF") == pytest.approx(21.0)
    assert contrast("#767676", "#FFFFFF") > AA_TEXT > contrast("#777777", "#FFFFFF")
    # IEC 61966-2-1: white is L* = 100 without colour; primary red from memory, not verified.
    assert lab(linear("#FFFFFF")) == pytest.approx((100.0, 0.0, 0.0), abs=0.02)
    assert lab(linear("#FF0000")) == pytest.approx((53.2, 80.1, 67.2), abs=0.2)
    for rows in EYES.values():
        assert np.sum(rows, axis=1) == pytest.approx((1.0, 1.0, 1.0), abs=2e-6)


@BOTH
@pytest.mark.parametrize("ground", GROUNDS)
@pytest.mark.parametrize("words", WORDS)
def test_words_are_read_on_every_ground(tokens: Tokens, words: str, ground: str) -> None:
    assert contrast(getattr(tokens, words), getattr(tokens, ground)) >= AA_TEXT


@BOTH
def test_words_are_read_on_their_tinted_cards(tokens: Tokens) -> None:
    for tone in ("action", "mark", "good", "warn", "bad"):
        soft = getattr(tokens, f"{tone}_soft")
        for words in (tone, "text", "quiet"):
            assert contrast(getattr(tokens, words), soft) >= AA_TEXT, (words, tone)
    for button in (tokens.action, tokens.action_deep):
        assert contrast(tokens.on_action, button) >= AA_TEXT
    assert contrast(tokens.ground, tokens.text) >= AA_TEXT


def rules() -> list[tuple[str, dict[str, str]]]:
    """Selector and the tokens it sets, of each rule of the style sheet."""
    sheet = resource("style/desk.qss").read_text(encoding="utf-8")
    found = re.findall(r"([^{}]+)\{([^}]*)\}", sheet)
    return [(name.strip(), dict(re.findall(r"([\w-]+):[^;]*?@(\w+)@", body))) for name, body in found]


@BOTH
def test_every_rule_of_the_style_sheet_can_be_read(tokens: Tokens) -> None:
    known = {field.name for field in fields(tokens)}
    seen = 0
    for name, sets in rules():
        # WCAG leaves out what is switched off.
        if (
            {"color", "background"} <= sets.keys()
            and {sets["color"], sets["background"]} <= known
            and ":disabled" not in name
        ):
            seen += 1
            assert contrast(getattr(tokens, sets["color"]), getattr(tokens, sets["background"])) >= AA_TEXT, name
    assert seen >= 10


@BOTH
def test_inputs_and_the_focus_are_seen(tokens: Tokens) -> None:
    for ground in GROUNDS:
        for part in ("field_edge", "action", "bad"):
            assert contrast(getattr(tokens, part), getattr(tokens, ground)) >= AA_PARTS, (part, ground)
    inputs = [sets for name, sets in rules() if name.startswith("QLineEdit, QComboBox") and "focus" not in name]
    assert [sets["border"] for sets in inputs] == ["field_edge"]


@BOTH
@pytest.mark.parametrize("eyes", EYES)
def test_the_two_accents_stay_apart_for_colour_blind_eyes(tokens: Tokens, eyes: str) -> None:
    action, mark = (lab(np.clip(np.array(EYES[eyes]) @ linear(c), 0, 1)) for c in (tokens.action, tokens.mark))
    assert float(np.linalg.norm(action - mark)) >= APART
