"""Lines of scales: what is read, what is passed over, and that no line takes long or is taken wrongly."""

from __future__ import annotations

import re

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calibrator.units import MaskNotUnderstood, ScaleReading, read_mask
from calibrator.units.scale_line import LONGEST_LINE

MASK_FAULTS = {"too_long", "any", "weight", "twice", "unknown", "brace"}
STREAM = "{still:ST},{any},{weight} {unit}"


@pytest.mark.parametrize(
    ("mask", "line", "text"),
    [
        ("", "11.60 oz", "11.60 oz"),
        ("", "  +  330.5g ", "330.5 g"),
        ("", "-0.02 kg", "-0.02 kg"),
        ("", "00012 G", "12 g"),
        ("", "11,6", "11,6"),
        (STREAM, "ST,GS,+ 11.60 oz", "11.60 oz"),
        (STREAM, "ST,NT,+0000.331 kg", "0.331 kg"),
        ("N {weight}{unit}", "N   0.730LB", "0.730 lb"),
        ("{any}: {weight}", "Net: 330", "330"),
    ],
)
def test_a_line_is_read_as_sent(mask: str, line: str, text: str) -> None:
    assert read_mask(mask).read(line) == ScaleReading(text, True)


def test_a_scale_that_moves_is_heard_and_does_not_count() -> None:
    assert read_mask(STREAM).read("US,GS,+ 11.60 oz") == ScaleReading("11.60 oz", False)


@pytest.mark.parametrize(
    ("mask", "line"),
    [
        ("", ""), ("", "11.60 oz 330 g"), ("", "1.2.3 g"), ("", "11.6 stone"), ("", "OL"), ("", "٣٣٠ g"), ("", "1e3 g"),
        (STREAM, "11.60 oz"), ("N {weight}", "M 330"), ("", "9" * (LONGEST_LINE + 1)), ("", "3\x0030 g"),
    ],
)  # fmt: skip
def test_what_does_not_fit_gives_nothing(mask: str, line: str) -> None:
    assert read_mask(mask).read(line) is None


@pytest.mark.parametrize(
    ("mask", "code"),
    [
        ("ST {unit}", "weight"), ("{weight}{weight}", "weight"), ("{weight}{unit}{unit}", "twice"),
        ("{wieght}", "weight"), ("{weight}{what}", "unknown"), ("{weight} {still:}", "unknown"),
        ("{weight", "weight"), ("{weight}}", "brace"), ("{any}{any}{any}{weight}", "any"), ("x" * 200, "too_long"),
    ],
)  # fmt: skip
def test_a_mask_that_cannot_be_meant_is_refused(mask: str, code: str) -> None:
    with pytest.raises(MaskNotUnderstood) as refused:
        read_mask(mask)
    assert refused.value.code == code


@given(st.text(max_size=140), st.sampled_from(["", STREAM, "{any}{weight}{any}", "{still:ok} {weight} {unit} {any}"]))
def test_no_line_gives_a_number_that_does_not_stand_in_it(line: str, mask: str) -> None:
    reading = read_mask(mask).read(line)
    if reading is not None:
        number = reading.text.split()[0].lstrip("-")
        assert re.search(re.escape(number), line)
        assert ("-" in reading.text) <= ("-" in line)


@given(st.text(alphabet="{}weightunyslST:, a", max_size=60))
def test_any_text_is_a_mask_or_refused_in_words(mask: str) -> None:
    fault, found = "", None
    try:
        found = read_mask(mask).read("ST,GS,+ 11.60 oz")
    except MaskNotUnderstood as refused:
        fault = refused.code
    assert fault in ("", *MASK_FAULTS)
    assert found is None or found.text.split()[0] in "11.60"


@pytest.mark.parametrize("mask", ["{any}{weight}{any}", "{any} {weight} {any}", "{any}{still:ST}{any}{weight}"])
@pytest.mark.parametrize("line", [" " * LONGEST_LINE, "1" * LONGEST_LINE, "-" * LONGEST_LINE, "1 " * 59 + "x"])
def test_long_lines_come_to_an_end(mask: str, line: str) -> None:
    found = read_mask(mask).read(line)
    assert found is None or re.sub(r"[-\s]", "", found.text) in line
