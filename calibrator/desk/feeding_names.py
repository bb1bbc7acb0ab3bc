"""What the feedings of a day are called."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date

from PySide6.QtCore import QCoreApplication

from calibrator.model import Plan
from calibrator.science.as_fed import most_feedings

translate = QCoreApplication.translate
USUAL = 2


def feeding_names(plans: Sequence[Plan], on: date) -> list[str]:
    """The names of a day's feedings, by the plans' own where they have some; at least the usual two."""
    most = max((most_feedings(plan, on) for plan in plans), default=USUAL)
    return [feeding_name(plans, number) for number in range(max(most, USUAL))]


def feeding_name(plans: Sequence[Plan], number: int) -> str:
    """The name of one feeding of a day, 0 the first, whether the plans have so many or not."""
    groups = [group for plan in plans for group in plan.groups if number < len(group.feedings)]
    own = next((group.feedings[number].name for group in groups if group.feedings[number].name), "")
    return own or translate("DayBar", "Feeding {number}").format(number=number + 1)
