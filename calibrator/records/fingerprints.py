"""A chain of fingerprints over the signed-off weigh-ins of each farm, by which a later edit of the file is noticed.

A fingerprint is the SHA-256 (FIPS 180-4) of three lines: `RULE`, the fingerprint before it (or nothing), and all that
a sign-off rests on as JSON with sorted keys: the weigh-in, its fills with what was struck, the sign-off, its marks,
and the tellings of lot, scoop and scale that it names. What still has the value that its field begins with is left
out, so that a field that a later layout adds does not change the fingerprints of before.

The chain finds what another program changed, took away or slipped in. It is no lock: whoever can write the file
and knows this program could make a new chain. The dated copies beside the file show that as well.
"""

from __future__ import annotations

import hashlib
import json
from collections.abc import Mapping
from dataclasses import MISSING, fields, is_dataclass
from datetime import datetime
from typing import Any

from sqlalchemy import Connection, RowMapping, insert, select

from calibrator.model import Fill, Lot, Mark, Scale, Scoop, SignOff, WeighIn
from calibrator.records import facts, nouns
from calibrator.records.plain import TYPE, hints, kind_word, to_plain
from calibrator.records.rows import as_value, now
from calibrator.records.tables import fingerprints, sign_offs
from calibrator.values import dataclass

RULE = "calibrator fingerprint 1"
"""Named in every fingerprint, so that another rule could one day stand beside this one."""


@dataclass(frozen=True)
class Fingerprint:
    """One link: its place in the farm's chain from 1, the link before it, and when it was taken if not at sign-off."""

    number: int
    previous: str
    sha256: str
    taken_later: datetime | None = None


def of_content(content: str, previous: str) -> str:
    """The fingerprint of a sign-off's content after the one before it, as 64 hexadecimal figures."""
    return hashlib.sha256(f"{RULE}\n{previous}\n{content}".encode()).hexdigest()


def content_of(connection: Connection, sign_off: SignOff) -> str:
    """All that a sign-off rests on, always written the same way. Raises `ValueError` where it cannot be read."""
    parts = {
        "sign_off": sign_off,
        "weigh_in": nouns.newest(connection, WeighIn, sign_off.weigh_in_id),
        "fills": facts.many(connection, Fill, {"weigh_in_id": sign_off.weigh_in_id}),
        "marks": facts.many(connection, Mark, {"sign_off_id": sign_off.id}),
        "scoop": nouns.revision(connection, Scoop, sign_off.scoop_revision),
        "scale": nouns.revision(connection, Scale, sign_off.scale_revision),
        "lot": nouns.revision(connection, Lot, sign_off.lot_revision),
    }
    told = {name: _told(part) for name, part in parts.items()}
    return json.dumps(told, sort_keys=True, separators=(",", ":"))


def take(
    connection: Connection, sign_off: SignOff, carried: Fingerprint | None = None, later: datetime | None = None
) -> Fingerprint:
    """Keep the fingerprint of a sign-off that is kept already: the one it brought along where that is the next link.

    Otherwise a new one is taken; `later` says when, where that is not at the sign-off itself.
    """
    last = _last(connection, sign_off.farm_id)
    number, previous = (last["number"] + 1, last["sha256"]) if last else (1, "")
    made = carried
    if carried is None or (carried.number, carried.previous) != (number, previous):
        kept = facts.one(connection, SignOff, sign_off.id) or sign_off
        made = Fingerprint(number, previous, of_content(content_of(connection, kept), previous), later)
    assert made is not None
    connection.execute(insert(fingerprints), _row(sign_off, made))
    return made


def take_missing(connection: Connection) -> int:
    """Take the fingerprints of sign-offs from before there were any, in their order; gives how many."""
    there = select(fingerprints.c.sign_off_id)
    query = select(sign_offs).where(sign_offs.c.id.not_in(there)).order_by(sign_offs.c.change)
    found = [as_value(SignOff, row) for row in connection.execute(query).mappings()]
    at = now()
    for sign_off in found:
        take(connection, sign_off, later=at)
    return len(found)


def every(connection: Connection) -> dict[str, Fingerprint]:
    """The fingerprint of each sign-off, by its id, in the order of the chains."""
    query = select(fingerprints).order_by(fingerprints.c.farm_id, fingerprints.c.number)
    return {row["sign_off_id"]: as_value(Fingerprint, row) for row in connection.execute(query).mappings()}


def of_lot(connection: Connection, lot_id: str) -> dict[str, Fingerprint]:
    """The fingerprint of each sign-off of one lot, by its id."""
    query = select(fingerprints).join(sign_offs, sign_offs.c.id == fingerprints.c.sign_off_id)
    rows = connection.execute(query.where(sign_offs.c.lot_id == lot_id)).mappings()
    return {row["sign_off_id"]: as_value(Fingerprint, row) for row in rows}


def first_watched(connection: Connection) -> datetime | None:
    """When sign-offs from before there were fingerprints got theirs; None where there are none such."""
    query = select(fingerprints.c.taken_later).where(fingerprints.c.taken_later.is_not(None))
    found: datetime | None = connection.execute(query.order_by(fingerprints.c.taken_later).limit(1)).scalar()
    return found


def _last(connection: Connection, farm_id: str) -> RowMapping | None:
    query = select(fingerprints).where(fingerprints.c.farm_id == farm_id).order_by(fingerprints.c.number.desc())
    return connection.execute(query.limit(1)).mappings().first()


def _row(sign_off: SignOff, made: Fingerprint) -> Mapping[str, Any]:
    told = {name: getattr(made, name) for name in hints(Fingerprint)}
    return {"sign_off_id": sign_off.id, "farm_id": sign_off.farm_id} | told


def _told(value: Any) -> Any:
    if isinstance(value, list | tuple):
        return [_told(one) for one in value]
    if isinstance(value, float):
        return to_plain(value + 0.0)  # −0 and 0 are one number, and not every store keeps them apart
    if not is_dataclass(value) or isinstance(value, type):
        return to_plain(value)
    told = {field.name: _told(getattr(value, field.name)) for field in fields(value) if not _as_it_begins(value, field)}
    return {TYPE: kind_word(type(value))} | told


def _as_it_begins(value: Any, field: Any) -> bool:
    return field.default is not MISSING and bool(getattr(value, field.name) == field.default)
