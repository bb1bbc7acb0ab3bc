"""Days are read as typed, in the country's order; where that is not known, what can be meant two ways is asked.

No outside source: our own rule.
"""

from __future__ import annotations

from datetime import date

import pytest
from PySide6.QtCore import QLocale

from calibrator.clock import day_text, figures_month_first
from calibrator.desk.days import DayNotUnderstood, read_day

TODAY = date(2026, 3, 15)


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        ("2026-02-28", date(2026, 2, 28)),
        ("2/14/2026", date(2026, 2, 14)),
        ("14.2.2026", date(2026, 2, 14)),
        ("14/2/26", date(2026, 2, 14)),
        ("2-14-26", date(2026, 2, 14)),
        ("25/11/25", date(2025, 11, 25)),
        ("14 feb 26", date(2026, 2, 14)),
        ("3/3/2026", date(2026, 3, 3)),
        ("Feb 3, 2026", date(2026, 2, 3)),
        ("3rd February 2026", date(2026, 2, 3)),
        ("3 de febrero de 2026", date(2026, 2, 3)),
        ("sept 3 2025", date(2025, 9, 3)),
        ("today", TODAY),
        ("Ayer", date(2026, 3, 14)),
        ("29 feb 2024", date(2024, 2, 29)),
    ],
)
def test_understood(text: str, meant: date) -> None:
    assert read_day(text, TODAY) == meant


@pytest.mark.parametrize(
    ("text", "day"),
    [
        ("1 march", date(2026, 3, 1)),
        ("Mar 2", date(2026, 3, 2)),
        ("20 de noviembre", date(2025, 11, 20)),
        ("29 feb", date(2024, 2, 29)),
        ("3rd March", date(2025, 3, 3)),
        ("3/14", date(2025, 3, 14)),
        ("14.3.", date(2025, 3, 14)),
        ("14-02", date(2026, 2, 14)),
        ("2/2", date(2026, 2, 2)),
        ("2/29", date(2024, 2, 29)),
    ],
)
def test_a_day_without_its_year_is_the_last_such_day(text: str, day: date) -> None:
    assert read_day(text, date(2026, 3, 2)) == day


def test_blank_is_no_day() -> None:
    assert read_day("  ", TODAY) is None


@pytest.mark.parametrize(
    ("text", "code"),
    [
        ("2/3/2026", "two_ways"),
        ("2/3", "two_ways"),
        ("31/31", "no_such_day"),
        ("2/30", "no_such_day"),
        ("3/2026", "no_day"),
        ("2/3/26", "two_ways"),
        ("26 mar 2", "no_day"),
        ("25/11/26", "to_come"),
        ("26-3-2", "no_day"),
        ("March 2026", "no_day"),
        ("ju 1 2025", "no_day"),
        ("29 feb 2026", "no_such_day"),
        (f"3 mar 2{'0' * 30}", "no_such_day"),
        ("31/31/2025", "no_such_day"),
        ("2026-03-16", "to_come"),
        ("1 Jan 1999", "too_early"),
        ("²/3/2026", "no_day"),
        ("٣/3/2026", "no_day"),
        ("٣/3", "no_day"),
        ("٣0 de noviembre", "no_day"),
        ("last week", "no_day"),
    ],
)
def test_refused(text: str, code: str) -> None:
    with pytest.raises(DayNotUnderstood) as told:
        read_day(text, TODAY)
    assert told.value.code == code


@pytest.mark.parametrize(
    ("text", "american", "mexican"),
    [
        ("11/5", date(2026, 11, 5), date(2026, 5, 11)),
        ("11/5/26", date(2026, 11, 5), date(2026, 5, 11)),
        ("9/8/2026", date(2026, 9, 8), date(2026, 8, 9)),
        ("12/1", date(2025, 12, 1), date(2026, 1, 12)),
        ("5.11.", date(2026, 5, 11), date(2026, 11, 5)),
    ],
)
def test_figures_are_read_in_the_order_of_the_country(text: str, american: date, mexican: date) -> None:
    today = date(2026, 11, 27)
    assert read_day(text, today, month_first=True) == american
    assert read_day(text, today, month_first=False) == mexican


@pytest.mark.parametrize(("text", "month_first"), [("13/12/2025", True), ("13/12", True), ("12/13/25", False)])
def test_what_only_the_other_order_can_mean_is_offered(text: str, month_first: bool) -> None:
    with pytest.raises(DayNotUnderstood) as told:
        read_day(text, date(2026, 11, 27), month_first=month_first)
    assert (told.value.code, told.value.days) == ("other_order", (date(2025, 12, 13),))


@pytest.mark.parametrize(
    ("text", "day"),
    [
        ("12/1", date(2026, 12, 1)),
        ("Dec 1", date(2026, 12, 1)),
        ("1 de diciembre", date(2026, 12, 1)),
        ("1/5", date(2027, 1, 5)),
        ("Nov 20", date(2026, 11, 20)),
        ("tomorrow", date(2026, 11, 28)),
        ("Oct 1", date(2026, 10, 1)),
    ],
)
def test_where_a_day_may_lie_ahead_one_without_its_year_is_the_nearest(text: str, day: date) -> None:
    assert read_day(text, date(2026, 11, 27), month_first=True, ahead=180) == day


def test_a_day_too_far_ahead_is_a_slip() -> None:
    with pytest.raises(DayNotUnderstood) as told:
        read_day("12/1/2062", date(2026, 11, 27), month_first=True, ahead=180)
    assert told.value.code == "too_far"


@pytest.mark.parametrize(
    ("system", "month_first"),
    [("en_US", True), ("es_US", True), ("es_MX", False), ("en_GB", False), ("en_CA", None), ("C", None)],
)
def test_the_order_is_that_of_the_computers_country(
    system: str, month_first: bool | None, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Short forms of the Unicode Common Locale Data Repository; whichever language the screen speaks."""
    monkeypatch.setattr(QLocale, "system", lambda: QLocale(system))
    assert figures_month_first() is month_first


def test_both_readings_are_offered() -> None:
    with pytest.raises(DayNotUnderstood) as told:
        read_day("2/3/2026", TODAY)
    assert told.value.days == (date(2026, 2, 3), date(2026, 3, 2))


@pytest.mark.parametrize(
    ("country", "told"), [("en_US", "Mar 2, 2026"), ("en_GB", "2 Mar 2026"), ("es_US", "2 mar 2026")]
)
def test_a_day_as_it_is_told_in_a_country_is_read_back(country: str, told: str) -> None:
    before = QLocale()
    QLocale.setDefault(QLocale(country))
    try:
        assert day_text(date(2026, 3, 2)) == told
        assert read_day(told, TODAY) == date(2026, 3, 2)
    finally:
        QLocale.setDefault(before)
