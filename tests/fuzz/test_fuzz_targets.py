"""The targets of the fuzzer, fed from hypothesis: a little of `python -m tests.fuzz` in every run."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.fuzz.targets import SPICE, TARGETS, clean_up, day, records_file, scale_line, typed

QUICK = sorted(set(TARGETS) - {"records_file"})
fed = st.binary(max_size=120) | st.lists(st.binary(max_size=2) | st.integers(128, 255).map(lambda n: bytes([n]))).map(
    b"".join
)


@pytest.fixture(scope="module", autouse=True)
def folder() -> Iterator[None]:
    yield
    clean_up()


@pytest.mark.parametrize("name", QUICK)
@given(data=fed)
@settings(max_examples=150, deadline=None)
def test_any_bytes_are_read_rightly_or_refused(name: str, data: bytes) -> None:
    TARGETS[name](data)


@given(data=fed)
@settings(max_examples=15, deadline=None)
def test_any_damage_to_a_records_file_is_told(data: bytes) -> None:
    records_file(data)


def test_the_oracles_can_accept() -> None:
    assert typed(bytes([0]) + b"10 oz")
    assert scale_line(bytes([0]) + b"+ 11.60 oz")
    for told in (b"3/14", b"14 mar", b"feb 29", b"2026-03-01"):
        assert day(told)
    assert scale_line(bytes([2]) + b"ST,GS,+ 11.60 oz")
    assert TARGETS["day"](b"2026-03-02")
    assert TARGETS["import_file"](b"{[]}")
    assert len(SPICE) > 50
