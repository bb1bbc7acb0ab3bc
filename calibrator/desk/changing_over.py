"""Somebody changes over to another lot, or says that one is finished, with a way back: for every page.

What becomes of the lot that was fed is asked with it: some of it stays at hand, or none is left.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace
from functools import partial

from PySide6.QtCore import QCoreApplication

from calibrator.desk.at_hand import left_of, packages_left
from calibrator.desk.change_over import FedFrom, as_before, change_over, keep_lots, with_old_finished
from calibrator.desk.context import Desk
from calibrator.desk.counted import counted
from calibrator.desk.in_use import LotState
from calibrator.desk.standing import LotStanding, Standing, standing
from calibrator.model import Lot, PackagesLeft
from calibrator.science.stock import about_packages

translate = QCoreApplication.translate


def ask_change_over(desk: Desk, now: Standing, question: str, act: Callable[[bool], None]) -> None:
    """Ask whether to change over now, and whether any of the lot fed until then is left, by count and plans told in
    bags where whole ones are; `act` is told whether it is finished. A blank question is put only about that."""
    if now.in_use is None:
        act(False)
        return
    left = packages_left(now, now.today)
    stay = translate("ChangeOver", "Change over, some is left")
    if is_told(left):
        stay = translate("ChangeOver", "Change over, they stay")
    gone = translate("ChangeOver", "Change over, none is left"), partial(act, True)
    told = f"{question} {left_question(now.in_use.lot, left)}".strip()
    desk.ask.confirm(told, stay, partial(act, False), gone)


def fed_from_now_on(number: str, old: str) -> str:
    """What a change-over now means for the feedings, and for all that is made by a lot."""
    text = translate(
        "ChangeOver",
        "Lot {number} will be fed from the next feeding on. From then its lines, labels and wall charts hold, "
        "those of lot {old} no more.",
    )
    return text.format(number=number, old=old)


def left_question(old: Lot, packages: float | None) -> str:
    """Whether any is left of a lot that is fed no more, in bags where whole ones are; None where nobody can tell."""
    asked = translate("ChangeOver", "Is any of lot {old} left?")
    if packages is not None and is_told(packages):
        asked = counted.old_bags(about_packages(packages))
    fed_later = translate("ChangeOver", "What stays is fed again under Lots: Back into use.")
    return f"{asked.format(old=old.lot_number)} {fed_later}"


def used_up_question(now: Standing, known: LotStanding) -> str:
    """Whether the last of a lot was fed, with the bags that stand against it, counted today or by count and plans."""
    count = known.lot.packages_left
    if count is not None and count.typed and count.on == now.today and is_told(count.packages):
        return counted.counted_today(about_packages(count.packages)).format(number=known.lot.lot_number)
    fed = known.state is LotState.IN_USE
    left = packages_left(now, now.today) if fed else left_of(now, known)
    if left is not None and is_told(left):
        return counted.still_left(about_packages(left)).format(number=known.lot.lot_number)
    return translate("ChangeOver", "Was the last of lot {number} fed?").format(number=known.lot.lot_number)


def is_told(packages: float | None) -> bool:
    """Whether it is asked in bags."""
    return packages is not None and packages >= 1


def begin_lot(
    desk: Desk, now: Standing, known: LotStanding, when: FedFrom, said: str, *, old_is_finished: bool, by: str = ""
) -> bool:
    """Keep from when on a lot is fed, and whether any is left of the one before. Whether that was kept."""
    told = change_over(now, known, when)
    begun, left = told[-1], left_of(now, known)
    if left is not None and begun.fed_from is not None:  # or all that came would be at hand once more
        again = PackagesLeft(packages=left, on=begun.fed_from)
        told = (*told[:-1], replace(begun, packages_left=again))
    return keep_told(desk, now, with_old_finished(now, told, when.on) if old_is_finished else told, said, by)


def keep_told(desk: Desk, now: Standing, told: Sequence[Lot], said: str, by: str = "") -> bool:
    """Keep what was told of lots, by whoever is at work unless named, say so, and offer the way back. Whether it was
    kept."""
    if desk.attempt(partial(keep_lots, desk.records, told, by or desk.initials)) is None:
        return False
    desk.say_undoable(said, partial(_take_back, desk, [known.lot for lot in told if (known := now.lot(lot.id))]))
    return True


def _take_back(desk: Desk, before: Sequence[Lot]) -> None:
    """The change-over was a slip: what else was told of the lots since stays."""
    if desk.attempt(lambda: keep_lots(desk.records, _as_they_were(desk, before), desk.initials)) is None:
        return
    now = standing(desk.records, desk.farm, desk.clock().date()) if desk.farm else None
    if now is not None and now.in_use is not None:
        text = translate("ChangeOver", "Taken back: lot {number} is in use.")
        desk.say(text.format(number=now.in_use.lot.lot_number))


def _as_they_were(desk: Desk, before: Sequence[Lot]) -> list[Lot]:
    return [as_before(desk.records.find(Lot, lot.id), lot) for lot in before]
