"""Any text whatever: accepted only where a second reader, written another way, reads the same.

The second reader knows nothing of tokens: it splits a text at its units and reads each number by one pattern,
with factors written down again as fractions (NIST Handbook 44, Appendix C).
"""

import re
from decimal import Decimal
from fractions import Fraction
from unicodedata import category, normalize

import pytest
from hypothesis import example, given, settings
from hypothesis import strategies as st

from calibrator.model import UnitSystem
from calibrator.units import Kind, NotUnderstood, Quantity, edit_text, read, with_unit

FARM, METRIC = UnitSystem.FARM, UnitSystem.METRIC
TYPED_KINDS = [kind for kind in Kind if kind is not Kind.DENSITY]
OZ, GAL = Fraction("28.349523125"), Fraction("3785.411784")
FACTORS = {
    Kind.MASS: {"oz": OZ, "lb": 16 * OZ, "g": Fraction(1), "kg": Fraction(1000), "#": 16 * OZ},
    Kind.VOLUME: {
        "qt": GAL / 4,
        "gal": GAL,
        "pt": GAL / 8,
        "fl oz": GAL / 128,
        "ml": Fraction(1),
        "l": Fraction(1000),
        "cc": Fraction(1),
    },
    Kind.LENGTH: {
        "in": Fraction("25.4"),
        '"': Fraction("25.4"),
        "ft": Fraction("304.8"),
        "mm": Fraction(1),
        "cm": Fraction(10),
        "m": Fraction(1000),
    },
    Kind.TEMPERATURE: {"f": Fraction(5, 9), "°f": Fraction(5, 9), "c": Fraction(1), "°c": Fraction(1)},
    Kind.PERCENT: {"%": Fraction(1)},
    Kind.COUNT: {"": Fraction(1)},
}
BARE = {
    Kind.MASS: "oz",
    Kind.VOLUME: "qt",
    Kind.LENGTH: "in",
    Kind.TEMPERATURE: "f",
    Kind.PERCENT: "%",
    Kind.COUNT: "",
}
NUMBER = re.compile(
    r"(?:(?P<whole>[0-9]+)(?: +|-))?(?P<top>[0-9]+) ?/ ?(?P<bottom>[0-9]+)"
    r"|(?P<decimal>[0-9]*\.?[0-9]+)|(?P<before>[0-9]*),(?P<after>[0-9]+)"
)
GROUPED = re.compile(r"[1-9][0-9]{0,2}(,[0-9]{3})+(\.[0-9]+)?")
OTHER_SIGNS = str.maketrans(".,", ",.")
LOOKALIKES = str.maketrans("−‐‑–⁄∕º˚″“”", '----//°°"""') | {ord("℃"): "°C", ord("℉"): "°F"}


def second_reading(text: str, kind: Kind) -> Fraction | None:
    text = "".join(f" {normalize('NFKC', sign)} " if category(sign) == "No" else sign for sign in text)
    text = " ".join(text.translate(LOOKALIKES).lower().split())
    sign = re.match(r"([-+]?) ?", text)
    assert sign is not None
    factors = FACTORS[kind]
    spellings = "|".join(re.escape(unit) for unit in sorted(factors, key=len, reverse=True) if unit)
    pieces = re.findall(rf"(.+?) ?({spellings or '(?!)'})\.?(?: |$|(?=[0-9]))", text[sign.end() :])
    told = [(number.strip(), unit) for number, unit in pieces] or [(text[sign.end() :].removesuffix("°"), BARE[kind])]
    amounts = [amount_of(number) for number, _ in told]
    if any(amount is None for amount in amounts):
        return None
    value = sum((amount or 0) * factors[unit] for amount, (_, unit) in zip(amounts, told, strict=True))
    value = Fraction(-value if sign.group(1) == "-" else value)
    return value - Fraction(160, 9) if kind is Kind.TEMPERATURE and "f" in told[0][1] else value


def amount_of(number: str) -> Fraction | None:
    number = number.strip()
    if len(re.findall("[.,]", number)) > 1:
        told = next((one for one in (number, number.translate(OTHER_SIGNS)) if GROUPED.fullmatch(one)), None)
        return None if told is None else Fraction(told.replace(",", ""))
    match = NUMBER.fullmatch(number)
    if match is None:
        return None
    if match["decimal"]:
        return Fraction(match["decimal"])
    if match["after"]:
        # Three digits behind a comma are thousands, but for those that nothing or noughts stand before.
        thousands = len(match["after"]) == 3 and int(match["before"] or 0) > 0
        return None if thousands else Fraction(f"{match['before'] or 0}.{match['after']}")
    if not 0 < int(match["top"]) < int(match["bottom"]) <= 64:
        return None
    return int(match["whole"] or 0) + Fraction(int(match["top"]), int(match["bottom"]))


def answer(text: str, kind: Kind, system: UnitSystem = FARM, *, decimal_comma: bool = False) -> Quantity | None:
    try:
        return read(text, kind, system, decimal_comma=decimal_comma)
    except NotUnderstood as refused:
        problem = str(refused)
    assert problem.endswith((".", "?"))
    assert len(problem) < 150
    return None


WORDS = "0 1 2 5 10 16 64 400 . , / - + e x _ ( # ' ¼ ½ − ٣ ² 1/4 3.4 0,5 12,05 1,234 1,250.00 12.500,5 cup"
UNITS = "oz lb g kg qt gal mL L pt in ft mm F ° °C %"
pieces = st.sampled_from([*WORDS.split(), *UNITS.split(), '"', "fl oz", *" " * 6, "\u00a0", "\u200b"])
typed_texts = st.lists(pieces, max_size=8).map("".join) | st.text(max_size=12)


@given(text=typed_texts, kind=st.sampled_from(TYPED_KINDS))
@example("1 lb.5 oz", Kind.MASS)
@example("101/4", Kind.MASS)
@example("1¼2 g", Kind.MASS)
@example("1 oz 2", Kind.MASS)
@example("1e400", Kind.MASS)
@settings(max_examples=1500, deadline=None)
def test_what_is_accepted_is_what_a_second_reader_reads(text: str, kind: Kind) -> None:
    quantity = answer(text, kind)
    if quantity is not None:
        expected = second_reading(text, kind)
        assert expected is not None
        assert quantity.value == float(expected)


@given(text=typed_texts, kind=st.sampled_from(TYPED_KINDS))
@settings(max_examples=500, deadline=None)
def test_a_decimal_comma_changes_no_text_without_one(text: str, kind: Kind) -> None:
    quantity = answer(text, kind, decimal_comma=True)
    if quantity is not None:
        # A number with both signs has groups of three, and is the same number with both turned.
        twin = answer(re.sub(r"[0-9.,]+", lambda told: with_point(told.group()), text), kind)
        assert twin is not None
        assert quantity.value == twin.value


def with_point(number: str) -> str:
    return number.translate(OTHER_SIGNS) if {".", ","} <= set(number) else number.replace(",", ".")


@given(value=st.decimals(1000, 999_999_999, places=2), sign=st.sampled_from(".,"), decimal_comma=st.booleans())
def test_groups_of_three_with_a_decimal_sign_are_read_in_every_locale(
    value: Decimal, sign: str, decimal_comma: bool
) -> None:
    text = f"{value:,}" if sign == "." else f"{value:,}".translate(OTHER_SIGNS)
    assert read(f"{text} g", Kind.MASS, FARM, decimal_comma=decimal_comma).value == float(value)
    lacks_one = text.replace("," if sign == "." else ".", "", 1)
    if value >= 1_000_000:  # 1234,567.00
        with pytest.raises(NotUnderstood):
            read(f"{lacks_one} g", Kind.MASS, FARM, decimal_comma=decimal_comma)


@given(
    text=typed_texts.filter(lambda text: "gr" not in text.lower()), grams=st.sampled_from(["gr", "GR", "grs.", "Gr."])
)
@example(text="1 lb 3", grams="gr")
@settings(max_examples=300, deadline=None)
def test_gr_is_a_gram_on_a_metric_farm_and_asked_about_on_another(text: str, grams: str) -> None:
    meant, said = answer(f"{text} g", Kind.MASS, METRIC), answer(f"{text} {grams}", Kind.MASS, METRIC)
    assert (meant and meant.value) == (said and said.value)
    assert answer(f"{text} {grams}", Kind.MASS, FARM) is None


@given(whole=st.integers(0, 99_999), decimals=st.text("0123456789", min_size=1, max_size=6))
def test_a_comma_is_a_decimal_sign_or_asked_about_never_anything_else(whole: int, decimals: str) -> None:
    text = f"{whole},{decimals} g"
    if len(decimals) == 3 and whole > 0:
        brief = f"{whole}.{decimals}".rstrip("0").rstrip(".")
        with pytest.raises(NotUnderstood, match=rf" {whole}{decimals} or {re.escape(brief)}\. "):
            read(text, Kind.MASS, METRIC)
    else:
        assert read(text, Kind.MASS, METRIC, lowest=0).value == float(Fraction(f"{whole}.{decimals}"))


@given(text=typed_texts, kind=st.sampled_from(TYPED_KINDS))
@settings(max_examples=500, deadline=None)
def test_both_locales_take_a_comma_alike(text: str, kind: Kind) -> None:
    here, there = answer(text, kind), answer(text, kind, decimal_comma=True)
    if here is not None and there is not None:
        assert here.value == there.value


@st.composite
def meant(draw: st.DrawFn) -> tuple[str, Kind, Fraction]:
    """A quantity as people write it, with what it means."""
    kind = draw(st.sampled_from([Kind.MASS, Kind.VOLUME, Kind.LENGTH]))
    unit = draw(st.sampled_from(sorted(FACTORS[kind])))
    whole = draw(st.integers(0, 999))
    if draw(st.booleans()):
        bottom = draw(st.sampled_from([2, 3, 4, 8, 16, 32, 64]))
        top = draw(st.integers(1, bottom - 1))
        joint = draw(st.sampled_from([" ", "-", "\u00a0", "  "]))
        number, amount = (
            (f"{whole}{joint}" if whole else "") + f"{top}/{bottom}",
            whole + Fraction(top, bottom),
        )
    else:
        thousandths = draw(st.integers(1, 999))
        number = f"{whole}.{thousandths:03d}"
        amount = Fraction(number)
    gap, around = draw(st.sampled_from(["", " ", "\u202f"])), draw(st.sampled_from(["", " ", "\u00a0"]))
    spelled = draw(st.sampled_from([unit, unit.upper()]))
    return f"{around}{number}{gap}{spelled}{around}", kind, amount * FACTORS[kind][unit]


@given(case=meant(), system=st.sampled_from(UnitSystem))
@settings(max_examples=400, deadline=None)
def test_what_people_write_is_always_read(case: tuple[str, Kind, Fraction], system: UnitSystem) -> None:
    text, kind, value = case
    assert read(text, kind, system, highest=1e9).value == float(value)


@given(pounds=st.integers(0, 9999), sixteenths=st.integers(0, 255))
def test_pounds_and_ounces(pounds: int, sixteenths: int) -> None:
    ounces = Fraction(sixteenths, 16)
    text = f"{pounds} lb {float(ounces)} oz"
    assert read(text, Kind.MASS, FARM, lowest=0).value == float((16 * pounds + ounces) * OZ)


STEPS = {
    (Kind.MASS, FARM): (1e7, float(OZ) / 10),
    (Kind.MASS, METRIC): (1e7, 1.0),
    (Kind.VOLUME, FARM): (1e7, float(GAL) / 16),
    (Kind.VOLUME, METRIC): (1e7, 100.0),
    (Kind.LENGTH, FARM): (1e4, 25.4 / 16),
    (Kind.LENGTH, METRIC): (1e4, 1.0),
    (Kind.TEMPERATURE, FARM): (120.0, 5 / 9),
    (Kind.TEMPERATURE, METRIC): (120.0, 1.0),
    (Kind.PERCENT, FARM): (100.0, 0.1),
    (Kind.PERCENT, METRIC): (100.0, 0.1),
}


@given(case=st.sampled_from(sorted(STEPS)), share=st.floats(1e-7, 1), decimal_comma=st.booleans())
@settings(max_examples=600, deadline=None)
def test_a_fields_text_brings_its_value_back(case: tuple[Kind, UnitSystem], share: float, decimal_comma: bool) -> None:
    largest, step = STEPS[case]
    value = share * largest
    text = edit_text(value, *case, decimal_comma=decimal_comma)
    again = read(text, *case, decimal_comma=decimal_comma, highest=2 * largest).value
    # Half a display step at the most, but for the last digit of a double; small values to three digits.
    assert abs(again - value) <= min(step / 2, max(0.006 * value, step / 10)) * (1 + 1e-9)
    assert edit_text(again, *case, decimal_comma=decimal_comma) == text


@given(text=typed_texts, kind=st.sampled_from(TYPED_KINDS), system=st.sampled_from(UnitSystem))
@settings(max_examples=500, deadline=None)
def test_naming_the_unit_never_changes_the_meaning(text: str, kind: Kind, system: UnitSystem) -> None:
    before = answer(text, kind, system)
    if before is not None:
        named = with_unit(text, kind, system)
        for other in UnitSystem:
            after = answer(named, kind, other)
            assert after is not None
            assert after.value == before.value
