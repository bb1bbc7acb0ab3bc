"""Somebody says that the line is drawn and the label on the scoop: kept with the day, for every page that asks."""

from __future__ import annotations

from functools import partial

from PySide6.QtCore import QCoreApplication

from calibrator.desk.change_over import keep_lots
from calibrator.desk.context import Desk
from calibrator.desk.scoop_lines import line_of, marked
from calibrator.desk.standing import LotStanding, Standing
from calibrator.model import Scoop

translate = QCoreApplication.translate


def on_the_scoop(*, level: bool) -> str:
    """What the button says; a scoop that is used level has no line."""
    return translate("Marking", "The label is on") if level else translate("Marking", "Line and label are on")


def mark_scoop(desk: Desk, now: Standing, known: LotStanding, scoop: Scoop) -> None:
    """Keep that a scoop bears the line of a lot."""
    told = marked(now, known, scoop.id, desk.clock().date())
    if desk.attempt(partial(keep_lots, desk.records, told, desk.initials, "")) is not None:
        text = translate("Marking", "{scoop} is marked for lot {number}.")
        if (own := line_of(known, scoop.id)) and own.struck_level:
            text = translate("Marking", "{scoop} bears the label of lot {number} and is used level.")
        desk.say(text.format(scoop=scoop.name, number=known.lot.lot_number))
