"""Going on without the server: the facts as last read, with what was done since and waits to be sent."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace
from typing import TypeVar

from calibrator.desk.findings import Known
from calibrator.model import Fill, SpotFill, WeighIn
from calibrator.records import Outbox, RecordsUnreachable
from calibrator.records.entries import Added, Entry, Struck, Told

T = TypeVar("T")
F = TypeVar("F", Fill, SpotFill)

NEEDS_SERVER = ("scoop_id", "scale_id")
"""What cannot be set alone: the thing it names would have to be read."""


def keep_or_wait(outbox: Outbox | None, keep: Callable[[], T], entry: Entry | None, instead: T) -> T:
    """Keep something in the records; while their server is away, in the outbox, behind what waits there.

    Gives what was kept, or `instead`. Without an outbox or an entry for it there is no waiting.
    """
    if outbox is None or entry is None:
        return keep()
    if not outbox.waiting:
        try:
            return keep()
        except RecordsUnreachable as error:
            if error.code in ("closed", "gone", "missing"):
                raise
    outbox.put(entry)
    return instead


def spots_with_waiting(spots: Sequence[SpotFill], lot_id: str, entries: Sequence[Entry]) -> list[SpotFill]:
    """A lot's spot fills as they will be once the entries are sent."""
    made = list(spots)
    for entry in entries:
        match entry:
            case Added(fact=SpotFill() as spot) if spot.lot_id == lot_id and all(one.id != spot.id for one in made):
                made.append(spot)
            case Struck(of=spot_id, reason=reason):
                made = [_struck(spot, spot_id, reason) for spot in made]
    return made


def with_waiting(known: Known, entries: Sequence[Entry]) -> Known:
    """The weigh-in as it will be once the entries are sent. One that is there already changes nothing."""
    for entry in entries:
        known = _with(known, entry)
    return known


def _with(known: Known, entry: Entry) -> Known:
    match entry:
        case Added(fact=Fill() as fill) if fill.weigh_in_id == known.weigh_in.id:
            there = any(one.id == fill.id for one in known.fills)
            return known if there else replace(known, fills=(*known.fills, fill))
        case Struck(of=fill_id, reason=reason):
            return replace(known, fills=tuple(_struck(fill, fill_id, reason) for fill in known.fills))
        case Told(noun=WeighIn() as told, replaces=before) if before == known.weigh_in.revision:
            return replace(known, weigh_in=told)
    return known


def _struck(fill: F, fill_id: str, reason: str | None) -> F:
    return replace(fill, struck_reason=reason) if fill.id == fill_id else fill
