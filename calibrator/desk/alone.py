"""Going on without the server: what is kept then waits on this computer, where its copy of the records shows it."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from datetime import datetime
from typing import TYPE_CHECKING, TypeVar

from calibrator.model import MixCheck, WeighIn, new_id
from calibrator.records import Records, RecordsLocked, RecordsUnreachable
from calibrator.records.entries import Entry, Told

if TYPE_CHECKING:
    from calibrator.records.outbox import Outbox

T = TypeVar("T")
N = TypeVar("N", WeighIn, MixCheck)


def keep_or_wait(outbox: Outbox | None, keep: Callable[[], T], entry: Entry, instead: T) -> T:
    """Keep something in the records; while their server is away or busy, in the outbox, behind what waits there.

    Gives what was kept, or `instead`. Without an outbox that can show what waits there is no waiting.
    """
    if outbox is None or not outbox.ready:
        return keep()
    if not outbox.waiting:
        try:
            return keep()
        except (RecordsUnreachable, RecordsLocked) as error:
            if error.code in ("closed", "gone", "missing"):
                raise
    outbox.put(entry)
    return instead


def tell_or_wait(records: Records, outbox: Outbox | None, noun: N, at: datetime) -> N:
    """Keep a new telling of a weigh-in or a check of the mix, or the first one, or let it wait for the server."""
    told = replace(noun, revision=new_id())
    entry = Told(at, noun.by, told, replaces=noun.revision or None)
    return keep_or_wait(outbox, lambda: records.keep(noun, by=noun.by), entry, told)
