"""What a database raises becomes the right kind of error with the right sentence."""

from __future__ import annotations

import sqlite3
import string
from contextlib import closing
from pathlib import Path
from typing import Any

import pytest
from sqlalchemy.exc import DatabaseError, DBAPIError, IntegrityError, OperationalError

from calibrator.model import Farm, Lot, new_id
from calibrator.records import (
    DiskFull,
    EditedMeanwhile,
    NotAllowed,
    Records,
    RecordsDamaged,
    RecordsError,
    RecordsLocked,
    RecordsReadOnly,
    RecordsUnreachable,
)
from calibrator.records.errors import SENTENCES, told, translated


class _Raw(Exception):
    """As a driver raises it; sqlite3 names its code, psycopg gives the SQL standard's."""

    def __init__(self, text: str = "database says no", **attributes: str) -> None:
        super().__init__(text)
        self.__dict__.update(attributes)


def _wrapped(raw: Exception, kind: type[DBAPIError] = OperationalError) -> DBAPIError:
    return kind("SELECT 1", None, raw)


# Codes: https://www.sqlite.org/rescode.html and PostgreSQL's manual, appendix A.
@pytest.mark.parametrize(
    ("raw", "expected", "words"),
    [
        ({"sqlite_errorname": "SQLITE_BUSY"}, RecordsLocked, "busy"),
        ({"sqlite_errorname": "SQLITE_LOCKED"}, RecordsLocked, "busy"),
        ({"sqlite_errorname": "SQLITE_FULL"}, DiskFull, "is full"),
        ({"sqlite_errorname": "SQLITE_READONLY_DIRECTORY"}, RecordsReadOnly, "write-protected"),
        ({"sqlite_errorname": "SQLITE_CANTOPEN"}, RecordsUnreachable, "cannot be reached"),
        ({"sqlite_errorname": "SQLITE_PERM"}, RecordsReadOnly, "write-protected"),
        ({"sqlite_errorname": "SQLITE_IOERR_FSYNC"}, RecordsUnreachable, "Check the drive"),
        ({"sqlite_errorname": "SQLITE_CORRUPT"}, RecordsDamaged, "are damaged: database says no"),
        ({"sqlite_errorname": "SQLITE_NOTADB"}, RecordsDamaged, "not a records file"),
        ({"sqlite_errorname": "SQLITE_CONSTRAINT_TRIGGER"}, NotAllowed, "only ever added to"),
        ({"sqlite_errorname": "SQLITE_CONSTRAINT_FOREIGNKEY"}, NotAllowed, "This fill names something"),
        ({"sqlite_errorname": "SQLITE_ERROR"}, RecordsError, "refused this: database says no"),
        ({"sqlstate": "53100"}, DiskFull, "is full"),
        ({"sqlstate": "25006"}, RecordsReadOnly, "write-protected"),
        ({"sqlstate": "42501"}, RecordsReadOnly, "write-protected"),
        ({"sqlstate": "25P03"}, RecordsUnreachable, "cannot be reached"),
        ({"sqlstate": "55P03"}, RecordsLocked, "busy"),
        ({"sqlstate": "40P01"}, RecordsLocked, "busy"),
        ({"sqlstate": "57P01"}, RecordsUnreachable, "cannot be reached"),
        ({"sqlstate": "08006"}, RecordsUnreachable, "cannot be reached"),
        ({"sqlstate": "28P01"}, RecordsUnreachable, "cannot be reached"),
        ({"sqlstate": "3D000"}, RecordsUnreachable, "cannot be reached"),
        ({"sqlstate": "P0001"}, NotAllowed, "only ever added to"),
        ({"sqlstate": "23503"}, NotAllowed, "This fill names something"),
        ({}, RecordsUnreachable, "cannot be reached"),
    ],
)
def test_each_code_has_its_sentence(raw: dict[str, str], expected: type[RecordsError], words: str) -> None:
    error = translated(_wrapped(_Raw(**raw)), "the farm's records", "copies", "fill")
    assert type(error) is expected
    assert words in str(error)


def test_what_has_no_code_is_told_as_the_database_says_it() -> None:
    unique = translated(_wrapped(_Raw("not unique", sqlstate="23505"), IntegrityError), "x")
    assert type(unique) is NotAllowed
    assert "not unique" in str(unique)
    other = translated(_wrapped(_Raw(""), DatabaseError), "x")
    assert type(other) is RecordsError
    assert "no reason was given" in str(other)


def test_a_fault_of_the_program_is_not_disguised() -> None:
    with pytest.raises(ZeroDivisionError), told("x"):
        raise ZeroDivisionError


@pytest.mark.parametrize("code", sorted(SENTENCES))
def test_each_sentence_can_be_told_and_ends_as_one(code: str) -> None:
    names = [name for _, name, _, _ in string.Formatter().parse(SENTENCES[code]) if name]
    params: dict[str, Any] = {name: f"<{name}>" for name in names}
    error = RecordsError(code, **params)
    assert str(error).endswith((".", "<backups>.", "<place>."))
    assert all(f"<{name}>" in str(error) for name in names)
    assert (error.code, error.params) == (code, params)


def test_edited_meanwhile_brings_the_newest_along() -> None:
    error = EditedMeanwhile("scoop", "newest")
    assert error.newest == "newest"
    assert "This scoop was changed meanwhile" in str(error)


def test_a_stored_value_that_makes_no_sense_is_told_as_damage(file: Path) -> None:
    with Records.open(str(file)) as records:
        farm = records.keep(Farm(id=new_id(), name="Windy Hollow"))
        records.keep(Lot(id=new_id(), farm_id=farm.id, lot_number="25-1103C"))
    with closing(sqlite3.connect(file)) as raw, raw:
        for name in [name for (name,) in raw.execute("SELECT name FROM sqlite_master WHERE type = 'trigger'")]:
            raw.execute(f'DROP TRIGGER "{name}"')
        raw.execute("UPDATE lots SET composition = 'no JSON'")
        raw.execute("UPDATE farms SET units = 'furlongs'")
    with Records.open(str(file), read_only=True) as records:
        for kind in (Lot, Farm):
            with pytest.raises(RecordsDamaged, match="a value in them cannot be read"):
                records.every(kind)  # type: ignore[type-var]


# As PostgreSQL's library words them (libpq, fe-connect.c and the server's messages).
@pytest.mark.parametrize(
    ("words", "code"),
    [
        ('FATAL:  password authentication failed for user "barn"', "password"),
        ("fe_sendauth: no password supplied", "password"),
        ('FATAL:  database "nowhere" does not exist', "no_database"),
        ('could not translate host name "farm" to address', "no_host"),
        ("[Errno -2] Name or service not known", "no_host"),
        ('connection to server at "10.0.0.9", port 5432 failed: Connection refused', "not_listening"),
        ("connection timeout expired", "unreachable"),
    ],
)
def test_why_a_server_was_not_reached_is_told(words: str, code: str) -> None:
    error = translated(_wrapped(_Raw(words)), "the farm's records")
    assert (type(error), error.code) == (RecordsUnreachable, code)
