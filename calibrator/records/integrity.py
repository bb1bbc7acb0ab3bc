"""Whether the signed-off weigh-ins are as they were signed, and since when not."""

from __future__ import annotations

import sqlite3
from collections.abc import Callable, Iterator
from contextlib import AbstractContextManager, closing
from datetime import datetime
from enum import StrEnum
from functools import cached_property
from pathlib import Path

from sqlalchemy import Connection, select
from sqlalchemy.exc import DBAPIError

from calibrator.model import Lot, SignOff
from calibrator.model.underway import Underway, one_by_one, unwatched
from calibrator.records import backup, fingerprints, nouns
from calibrator.records.backup import Backup
from calibrator.records.engine import make_engine
from calibrator.records.fingerprints import Fingerprint
from calibrator.records.place import place_of
from calibrator.records.rows import as_value
from calibrator.records.tables import fingerprints as links_table
from calibrator.records.tables import sign_offs
from calibrator.values import dataclass


class Fault(StrEnum):
    """What is wrong with a signed-off weigh-in."""

    CHANGED = "changed"  # it, its fills, marks, lot, scoop or scale are not as they were signed
    TAKEN_AWAY = "taken_away"  # its fingerprint is there, or a copy has it, and it is not
    SLIPPED_IN = "slipped_in"  # it has no fingerprint, so this program did not sign it
    CHAIN_BROKEN = "chain_broken"  # its fingerprint does not rest on the one before
    UNLIKE_COPY = "unlike_copy"  # a dated copy has another fingerprint of it


@dataclass(frozen=True)
class Finding:
    """One signed-off weigh-in that is not as it was signed.

    `lot_number` is blank where not even that can be read. `right_until` is the newest dated copy in which it was
    still right, `wrong_since` the oldest copy after that in which it no longer was.
    """

    fault: Fault
    farm_id: str
    sign_off_id: str
    lot_number: str = ""
    signed_at: datetime | None = None
    signed_by: str = ""
    right_until: datetime | None = None
    wrong_since: datetime | None = None


@dataclass(frozen=True)
class _Link:
    """A row of the chain."""

    farm_id: str
    sign_off_id: str
    link: Fingerprint


Reading = Callable[[], AbstractContextManager[Connection]]


def check(reading: Reading, file: Path | None, underway: Underway = unwatched) -> tuple[Finding, ...]:
    """All findings, in the order of the chains; the copies beside `file` tell since when.

    Each weigh-in is looked at in a transaction of its own, so that nobody's writing waits for the whole.
    """
    copies = _Copies(file)
    with reading() as connection:
        links = _links(connection)
        found = [*_broken(links), *_slipped_in(connection, links)]
    found += [*_wrong(reading, links, underway), *copies.differing(links)]
    named = {one.sign_off_id: one for one in reversed(found)}  # of several faults of one weigh-in the first
    with reading() as connection:
        return tuple(copies.dated(_described(connection, copies, one)) for one in reversed(named.values()))


def _links(connection: Connection) -> list[_Link]:
    query = select(links_table).order_by(links_table.c.farm_id, links_table.c.number)
    rows = connection.execute(query).mappings()
    return [_Link(row["farm_id"], row["sign_off_id"], as_value(Fingerprint, row)) for row in rows]


def _wrong(reading: Reading, links: list[_Link], underway: Underway) -> Iterator[Finding]:
    for one in one_by_one(links, underway):
        with reading() as connection:
            fault = _fault_of(connection, one)
        if fault is not None:
            yield Finding(fault, one.farm_id, one.sign_off_id)


def _fault_of(connection: Connection, one: _Link) -> Fault | None:
    try:
        query = select(sign_offs).where(sign_offs.c.id == one.sign_off_id)
        row = connection.execute(query).mappings().first()
        if row is None:
            return Fault.TAKEN_AWAY
        content = fingerprints.content_of(connection, as_value(SignOff, row))
    except (ValueError, TypeError, LookupError, AttributeError):
        return Fault.CHANGED  # what cannot even be read is not what was signed
    right = fingerprints.of_content(content, one.link.previous) == one.link.sha256
    return None if right else Fault.CHANGED


def _broken(links: list[_Link]) -> Iterator[Finding]:
    before: dict[str, Fingerprint] = {}
    for one in links:
        last = before.get(one.farm_id)
        expected = (last.number + 1, last.sha256) if last else (1, "")
        if (one.link.number, one.link.previous) != expected:
            yield Finding(Fault.CHAIN_BROKEN, one.farm_id, one.sign_off_id)
        before[one.farm_id] = one.link


def _slipped_in(connection: Connection, links: list[_Link]) -> Iterator[Finding]:
    known = {one.sign_off_id for one in links}
    for row in connection.execute(select(sign_offs.c.id, sign_offs.c.farm_id).order_by(sign_offs.c.change)):
        if row.id not in known:
            yield Finding(Fault.SLIPPED_IN, row.farm_id, row.id)


def _described(connection: Connection, copies: _Copies, finding: Finding) -> Finding:
    """With the lot and the sign-off's day, from the records or else from a copy."""
    return copies.described(finding) or _from(connection, finding) or finding


def _from(connection: Connection, finding: Finding) -> Finding | None:
    try:
        row = connection.execute(select(sign_offs).where(sign_offs.c.id == finding.sign_off_id)).mappings().first()
        lot = nouns.newest(connection, Lot, row["lot_id"]) if row else None
    except (ValueError, TypeError, LookupError):
        return None
    if row is None:
        return None
    return _told(finding, lot.lot_number if lot else "", row["at"], row["by"])


def _told(finding: Finding, lot_number: str, at: datetime | None, by: str) -> Finding:
    return Finding(finding.fault, finding.farm_id, finding.sign_off_id, lot_number, at, by)


class _Copies:
    """The dated copies of a file, opened one by one and only when they are asked."""

    def __init__(self, file: Path | None) -> None:
        self._file = file

    @cached_property
    def _all(self) -> list[Backup]:
        return backup.every(self._file) if self._file else []

    def differing(self, links: list[_Link]) -> Iterator[Finding]:
        """What the newest copy that has a chain tells otherwise."""
        known = {one.sign_off_id: one.link.sha256 for one in links}
        for id, (farm_id, sha256) in self._newest_chain.items():
            if id not in known:
                yield Finding(Fault.TAKEN_AWAY, farm_id, id)
            elif known[id] != sha256:
                yield Finding(Fault.UNLIKE_COPY, farm_id, id)

    @cached_property
    def _newest_chain(self) -> dict[str, tuple[str, str]]:
        for copy in reversed(self._all):
            rows = _asked(copy, "SELECT sign_off_id, farm_id, sha256 FROM fingerprints")
            if rows:
                return {str(id): (str(farm), str(sha256)) for id, farm, sha256 in rows}
        return {}

    def described(self, finding: Finding) -> Finding | None:
        """The lot as the newest copy that has the sign-off tells it: the records themselves were edited."""
        for copy in reversed(self._all):
            rows = _asked(copy, _DESCRIPTION, finding.sign_off_id)
            if rows:
                number, at, by = rows[0]
                return _told(finding, str(number), datetime.fromisoformat(at), str(by))
        return None

    def dated(self, finding: Finding) -> Finding:
        """With the copies between which it happened."""
        wrong_since = None
        for copy in reversed(self._all):
            right = _right_in(copy, finding.sign_off_id)
            if right:
                return _with_days(finding, copy.at, wrong_since)
            if right is False:
                wrong_since = copy.at
        return _with_days(finding, None, wrong_since)


def _with_days(finding: Finding, right_until: datetime | None, wrong_since: datetime | None) -> Finding:
    described = (finding.lot_number, finding.signed_at, finding.signed_by)
    return Finding(finding.fault, finding.farm_id, finding.sign_off_id, *described, right_until, wrong_since)


_DESCRIPTION = (
    "SELECT lots.lot_number, sign_offs.at, sign_offs.by FROM sign_offs "
    "JOIN lots ON lots.id = sign_offs.lot_id WHERE sign_offs.id = ? ORDER BY lots.change DESC LIMIT 1"
)


def _asked(copy: Backup, question: str, *about: str) -> list[tuple[str, ...]]:
    """An answer from a copy; none from one that is older than the question or cannot be read."""
    try:
        with closing(sqlite3.connect(f"{copy.path.as_uri()}?mode=ro", uri=True)) as raw:
            return list(raw.execute(question, about))
    except sqlite3.Error:
        return []


def _right_in(copy: Backup, sign_off_id: str) -> bool | None:
    """Whether a weigh-in is right in a copy; None where the copy does not know of it."""
    engine = make_engine(place_of(str(copy.path)), read_only=True)
    try:
        with engine.connect() as connection:
            its = [one for one in _links(connection) if one.sign_off_id == sign_off_id]
            return _fault_of(connection, its[0]) is None if its else None
    except (DBAPIError, ValueError):
        return None  # an older layout, or a copy that cannot be read
    finally:
        engine.dispose()
