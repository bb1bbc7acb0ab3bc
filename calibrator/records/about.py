"""What a change on its way to the records is about: its lot, and of a fill struck out, that fill."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from sqlalchemy import Connection

from calibrator.model import FeederTrial, Fill, Lot, Noun, SpotFill, TrialFill, WeighIn
from calibrator.records import facts, nouns
from calibrator.records.entries import Added, Entry, Signed, Struck, Told
from calibrator.records.repository import Records
from calibrator.values import dataclass

_FILLS = Fill, SpotFill, TrialFill
AnyFill = Fill | SpotFill | TrialFill


@dataclass(frozen=True)
class About:
    """`lot` is as it is told now, `fill` what a strike is of; None where it is known nowhere."""

    lot: Lot | None = None
    fill: AnyFill | None = None


def about(records: Records, entries: Sequence[Entry | None], others: Iterable[Entry] = ()) -> list[About]:
    """What each of the entries is about. What they rest on is looked for among themselves and `others` too.

    Raises a `RecordsError` where the records are not reached.
    """
    told = [entry for entry in (*entries, *others) if entry is not None]
    things: dict[str, Noun] = {entry.noun.id: entry.noun for entry in told if isinstance(entry, Told)}
    facts_told = (entry.fact for entry in told if isinstance(entry, Added))
    fills = {fact.id: fact for fact in facts_told if isinstance(fact, _FILLS)}
    with records.reading() as connection:
        return [_about(connection, entry, things, fills) for entry in entries]


def _about(connection: Connection, entry: Entry | None, things: dict[str, Noun], fills: dict[str, AnyFill]) -> About:
    match entry:
        case Struck(of=id):
            fill = fills.get(id) or _fill_of(connection, id)
            return About(_lot_of(connection, fill, things), fill)
        case Told(noun=thing) | Added(fact=thing) | Signed(sign_off=thing):
            return About(_lot_of(connection, thing, things))
    return About()


def _fill_of(connection: Connection, id: str) -> AnyFill | None:
    return (
        facts.one(connection, Fill, id) or facts.one(connection, SpotFill, id) or facts.one(connection, TrialFill, id)
    )


def _lot_of(connection: Connection, thing: object, things: dict[str, Noun]) -> Lot | None:
    if thing is None or isinstance(thing, Lot):
        return thing
    if lot_id := getattr(thing, "lot_id", None):
        found = nouns.newest(connection, Lot, lot_id) or things.get(lot_id)
        return found if isinstance(found, Lot) else None
    for name, kind in (("weigh_in_id", WeighIn), ("trial_id", FeederTrial)):
        if id := getattr(thing, name, None):
            return _lot_of(connection, things.get(id) or nouns.newest(connection, kind, id), things)
    return None
