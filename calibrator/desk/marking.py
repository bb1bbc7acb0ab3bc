"""Somebody says that the line is drawn and the label on the scoop, or that they are not after all: for every page."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import partial

from PySide6.QtCore import QCoreApplication

from calibrator.desk.change_over import keep_lots
from calibrator.desk.context import Desk
from calibrator.desk.scoop_lines import as_before, line_of, line_on, marked, not_marked
from calibrator.desk.standing import LotStanding, Standing, standing
from calibrator.model import Lot, Scoop

translate = QCoreApplication.translate


def on_the_scoop(*, level: bool, wiped: bool) -> str:
    """What the button says; a scoop that is used level has no line, and an old one may have to be `wiped` out."""
    if wiped:
        return translate("Marking", "&Old line off, label on")
    return translate("Marking", "The label &is on") if level else translate("Marking", "&Line and label are on")


def mark_scoop(desk: Desk, now: Standing, known: LotStanding, scoop: Scoop) -> None:
    """Keep that a scoop bears the line of a lot."""
    told = marked(now, known, scoop.id, desk.clock().date())
    if desk.attempt(partial(keep_lots, desk.records, told, desk.initials, "")) is not None:
        text = translate("Marking", "{scoop} is marked for lot {number}.")
        if (own := line_of(known, scoop.id)) and own.struck_level:
            text = translate("Marking", "{scoop} bears the label of lot {number} and is used level.")
        changed = [(lot, other.lot) for lot in told if (other := now.lot(lot.id))]
        undo = partial(_take_back, desk, partial(_as_before, desk, changed, scoop), known, scoop)
        desk.say_undoable(text.format(scoop=scoop.name, number=known.lot.lot_number), undo)


def not_on_the_scoop(*, level: bool) -> str:
    """What the button says that takes it back, once it is too late to undo it."""
    return translate("Marking", "The label is not on") if level else translate("Marking", "Not marked after all")


def unmark_scoop(desk: Desk, now: Standing, known: LotStanding, scoop: Scoop) -> None:
    """Keep that a scoop does not bear the line of a lot, though somebody said so."""
    _take_back(desk, lambda: [not_marked(now, known, scoop.id)], known, scoop)


def _as_before(desk: Desk, changed: Sequence[tuple[Lot, Lot]], scoop: Scoop) -> list[Lot]:
    """The words on a scoop as they were; whatever else was told of the lots since stays."""
    return [as_before(desk.records.find(Lot, kept.id), kept, before, scoop.id) for kept, before in changed]


def _take_back(desk: Desk, told: Callable[[], Sequence[Lot]], known: LotStanding, scoop: Scoop) -> None:
    if desk.attempt(lambda: keep_lots(desk.records, told(), desk.initials, "")) is not None:
        text = translate("Marking", "Taken back: {scoop} is not marked for lot {number}.")
        back = text.format(scoop=scoop.name, number=known.lot.lot_number)
        desk.say(f"{back} {_what_it_bears(desk, known, scoop)}")


def _what_it_bears(desk: Desk, known: LotStanding, scoop: Scoop) -> str:
    """Whose line is on the scoop now, as far as anybody told."""
    now = standing(desk.records, desk.farm, desk.clock().date()) if desk.farm else None
    line = line_on(now, scoop.id) if now else None
    other = now.lot(line.lot_id) if now and line else None
    if other is None or other.lot.id == known.lot.id:
        return translate("Marking", "What line is on it now, nobody has told.")
    return translate("Marking", "It bears that of lot {number}.").format(number=other.lot.lot_number)
