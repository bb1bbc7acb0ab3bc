"""Going on without the server: the facts as last read, with what was done since and waits to be sent."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from calibrator.desk.findings import Known
from calibrator.model import Fill, WeighIn
from calibrator.records.entries import Added, Entry, Struck, Told

NEEDS_SERVER = ("scoop_id", "scale_id")
"""What cannot be set alone: the thing it names would have to be read."""


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


def _struck(fill: Fill, fill_id: str, reason: str | None) -> Fill:
    return replace(fill, struck_reason=reason) if fill.id == fill_id else fill
