"""The sheets that are about somewhere, and which of them are outdated. No window needed."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from datetime import datetime

from calibrator.desk.in_use import LotState
from calibrator.desk.standing import Standing
from calibrator.model import Ending, Printed, PrintKind, SheetEnding


def labels_of(now: Standing, scoop_id: str, sign_off_id: str = "") -> Iterator[Printed]:
    """The labels of a scoop that were not thrown away, of one sign-off or all, the newest first."""
    spoiled = never_up(now.endings)
    for sheet in reversed(now.prints):
        is_label = sheet.kind is PrintKind.SCOOP_LABEL and sheet.scoop_id == scoop_id
        if is_label and sheet.id not in spoiled and sign_off_id in ("", sheet.sign_off_id):
            yield sheet


def outdated_sheets(now: Standing, kind: PrintKind) -> tuple[Printed, ...]:
    """The sheets that are about somewhere and rest on an older sign-off than the one in force.

    A chart is outdated by any newer one of the lot in use, a lot sheet by a newer one of its lot and scoop. A sheet
    that another has replaced, or that somebody took down, counts no more.
    """
    return tuple(sheet for sheet in hanging(now, kind) if sheet.sign_off_id != in_force(now, sheet))


def hanging(now: Standing, kind: PrintKind) -> tuple[Printed, ...]:
    """The newest sheet of each place that got up there and that nobody took down.

    What was printed ahead for a lot that waits gets there with its change-over.
    """
    waits = {known.lot.id for known in now.lots if known.state is LotState.WAITING}
    ahead = waits if kind is not PrintKind.LOT_SHEET else set()
    spoiled, gone = never_up(now.endings), _gone(now.endings)
    up = [sheet for sheet in now.prints if sheet.kind is kind and sheet.lot_id not in ahead]
    put_up = _put_up_again(now.endings)
    up.sort(key=lambda sheet: put_up.get(sheet.id, sheet.at))
    newest = {place_of(sheet): sheet for sheet in up if sheet.id not in spoiled}
    return tuple(sheet for sheet in newest.values() if sheet.id not in gone)


def place_of(sheet: Printed) -> tuple[PrintKind, str | None, str | None, str | None]:
    """What a sheet is up for: of two sheets for one place the newer replaces the older."""
    lot_id = sheet.lot_id if sheet.kind is PrintKind.LOT_SHEET else None
    return sheet.kind, sheet.scoop_id, sheet.plan_id, lot_id


def never_up(endings: Iterable[SheetEnding]) -> frozenset[str]:
    """The sheets that were thrown away unused."""
    return frozenset(id for id, ending in newest_words(endings).items() if ending is Ending.SPOILED)


def _gone(endings: Iterable[SheetEnding]) -> frozenset[str]:
    return frozenset(id for id, ending in newest_words(endings).items() if ending is not Ending.STILL_UP)


def _put_up_again(endings: Iterable[SheetEnding]) -> dict[str, datetime]:
    """When somebody said of a sheet that it hangs, where that is the newest word on it."""
    newest = {told.print_id: told for told in endings}
    return {id: told.at for id, told in newest.items() if told.ending is Ending.STILL_UP}


def newest_words(endings: Iterable[SheetEnding]) -> dict[str, Ending]:
    """What was last said of each sheet."""
    return {told.print_id: told.ending for told in endings}


def in_force(now: Standing, sheet: Printed) -> str:
    """The newest sign-off that a sheet of its kind has to rest on."""
    of_scoop = sheet.kind in (PrintKind.SCOOP_LABEL, PrintKind.LOT_SHEET)
    # While two lots are open, the newest sign-off is not always that of the lot that is fed.
    lot_id = sheet.lot_id if sheet.kind is PrintKind.LOT_SHEET else now.in_use.lot.id if now.in_use else ""
    ids = [
        s.id
        for s in now.sign_offs
        if (not of_scoop or s.scoop_id == sheet.scoop_id) and (not lot_id or s.lot_id == lot_id)
    ]
    return ids[-1] if ids else sheet.sign_off_id
