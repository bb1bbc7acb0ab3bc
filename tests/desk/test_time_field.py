"""A time of day in words: as people write it, and fit to stand before a full stop."""

from __future__ import annotations

from datetime import time

import pytest
from PySide6.QtCore import QLocale

from calibrator.clock import clock_text
from calibrator.desk.clock_times import read_time


@pytest.mark.parametrize(("at", "told"), [(time(4, 28), "4:28 am"), (time(16, 28), "4:28 pm")])
def test_in_mexico_no_point_of_a_half_day_meets_a_full_stop(at: time, told: str) -> None:
    before = QLocale()
    QLocale.setDefault(QLocale(QLocale.Language.Spanish, QLocale.Country.Mexico))
    try:
        assert clock_text(at).replace("\u00a0", " ") == told
        assert read_time(clock_text(at)) == at
    finally:
        QLocale.setDefault(before)
