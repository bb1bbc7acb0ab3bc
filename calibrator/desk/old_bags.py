"""What becomes of the bags of the lot that was fed, asked at the change-over: they stay at hand, or none is left."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial

from PySide6.QtCore import QCoreApplication

from calibrator.desk.at_hand import packages_left
from calibrator.desk.context import Desk
from calibrator.desk.counted import counted
from calibrator.desk.standing import Standing

translate = QCoreApplication.translate


def ask_change_over(desk: Desk, now: Standing, question: str, act: Callable[[bool], None]) -> None:
    """Ask whether to change over, and where whole bags of the old lot are left by count and plans, whether they stay;
    `act` is told whether the old lot is finished. A blank question is put only about bags."""
    left, yes = packages_left(desk.records, now, now.today), translate("OldBags", "Change over")
    if left is None or left < 1:
        if question:
            desk.ask.confirm(question, yes, partial(act, False))
        else:
            act(False)
        return
    old = now.in_use.lot.lot_number if now.in_use else ""
    bags = counted.old_bags(round(left)).format(old=old)
    stay, gone = translate("OldBags", "Change over, they stay"), translate("OldBags", "Change over, none is left")
    desk.ask.confirm(f"{question} {bags}".strip(), stay, partial(act, False), (gone, partial(act, True)))
