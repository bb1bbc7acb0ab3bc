"""The codec of nested columns and of the exchange text."""

from __future__ import annotations

import json
import math
from datetime import datetime, timedelta, timezone
from typing import Any

import invented
import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from calibrator.model import Fill, Lot, Scoop
from calibrator.records.entries import Entry
from calibrator.records.plain import (
    TYPE,
    NotPlain,
    from_fields,
    from_plain,
    hints,
    kind_word,
    plain_fields,
    to_plain,
)

invented.register()
lawful = settings(max_examples=30, deadline=None, suppress_health_check=[HealthCheck.too_slow])
KINDS = (*invented.NOUNS, *invented.FACTS)
_JSON = st.recursive(
    st.none() | st.booleans() | st.integers() | st.floats() | st.text(max_size=8),
    lambda inner: st.lists(inner, max_size=3) | st.dictionaries(st.text(max_size=8), inner, max_size=3),
    max_leaves=8,
)


@pytest.mark.parametrize("kind", KINDS)
@lawful
@given(data=st.data())
def test_every_value_comes_back_the_same_through_json_text(kind: type, data: st.DataObject) -> None:
    value = data.draw(invented.any_of(kind))
    text = json.dumps(plain_fields(value), allow_nan=False)
    assert from_fields(kind, json.loads(text)) == value


@lawful
@given(kind=st.sampled_from(KINDS), data=st.data())
def test_nonsense_in_any_field_is_refused_or_read_never_worse(kind: type, data: st.DataObject) -> None:
    plain = plain_fields(data.draw(invented.any_of(kind)))
    plain[data.draw(st.sampled_from(sorted(plain)))] = data.draw(_JSON)
    try:
        value = from_fields(kind, plain)
    except NotPlain:
        return
    assert from_fields(kind, plain_fields(value)) == value


@lawful
@given(_JSON)
def test_any_json_is_refused_as_an_entry(plain: Any) -> None:
    with pytest.raises(NotPlain):
        from_plain(Entry, plain)


def _lot(**more: Any) -> dict[str, Any]:
    return plain_fields(invented.lot("f")) | more


@pytest.mark.parametrize(
    ("kind", "plain", "where", "fault"),
    [
        (Lot, _lot(lot_number=7), "lot_number", "should be text"),
        (Lot, _lot(lot_number="a\x00b"), "lot_number", "holds a character that cannot be kept"),
        (Lot, _lot(lot_number="\ud800"), "lot_number", "holds a character that cannot be kept"),
        (Lot, _lot(medicated=1), "medicated", "should be true or false"),
        (Lot, _lot(package_count=True), "package_count", "should be a whole number"),
        (Lot, _lot(package_count=1.5), "package_count", "should be a whole number"),
        (Lot, _lot(package_count=2**31), "package_count", "is too large a number"),
        (Lot, _lot(package_mass_g="1"), "package_mass_g", "should be a number"),
        (Lot, _lot(package_mass_g=math.nan), "package_mass_g", "should be a number"),
        (Lot, _lot(package_mass_g=10**400), "package_mass_g", "is too large a number"),
        (Lot, _lot(package="sack"), "package", "‘sack’ is not a package kind"),
        (Lot, _lot(made_on="07/11/2024"), "made_on", "‘07/11/2024’ is not a date"),
        (Lot, _lot(composition=[]), "composition", "should be a group of named values"),
        (Lot, _lot(composition={"type": "label"}), "composition.type", "should be one of composition"),
        (Lot, _lot(colour="white"), "colour", "is not a known field"),
        (Lot, {"farm_id": "f", "lot_number": "1"}, "id", "is missing"),
        (Lot, _lot(composition={"type": "composition", "fat_pct": "x"}), "composition.fat_pct", "should be"),
        (Scoop, {"shape": {"type": "poured", "heights_mm": 3}}, "id", "is missing"),
        (Fill, {"at": "noon"}, "id", "is missing"),
    ],
)
def test_a_fault_names_its_field(kind: type, plain: dict[str, Any], where: str, fault: str) -> None:
    with pytest.raises(NotPlain) as refused:
        from_fields(kind, plain)
    assert refused.value.where == where
    assert refused.value.fault.startswith(fault)
    assert str(refused.value).startswith(f"{where}: ")


@pytest.mark.parametrize(
    ("value", "where"),
    [
        (math.nan, ""),
        ([1.0, math.nan], "[1]"),
        (2**31, ""),
        ("\x00", ""),
        (datetime(2024, 11, 7), ""),
        (datetime(1, 1, 1, tzinfo=timezone(timedelta(hours=14))), ""),
    ],
)
def test_what_no_store_can_keep_is_refused(value: Any, where: str) -> None:
    with pytest.raises(NotPlain) as refused:
        to_plain(value)
    assert refused.value.where == where


def test_a_list_and_a_time_are_asked_for() -> None:
    with pytest.raises(NotPlain, match="should be a list"):
        from_plain(tuple[float, ...], 3.0)
    with pytest.raises(NotPlain, match="without a time zone"):
        from_plain(datetime, "2024-11-07T12:00:00")
    with pytest.raises(NotPlain, match="is not a datetime"):
        from_plain(datetime, "noon")


def test_infinity_is_told_as_text() -> None:
    assert [to_plain(math.inf), to_plain(-math.inf)] == ["Infinity", "-Infinity"]
    assert from_plain(float, "-Infinity") == -math.inf


def test_kinds_are_named_in_words() -> None:
    assert [kind_word(kind) for kind in (Lot, Scoop, Fill)] == ["lot", "scoop", "fill"]
    assert kind_word(type(invented.SHAPES[1])) == "tapered_cup"


def test_no_noun_has_a_field_that_the_codec_needs_for_itself() -> None:
    assert all(TYPE not in hints(kind) for kind in KINDS)
