"""What can go wrong with the records, each told as a sentence a person can act on.

An error carries `code` and `params`, so that a screen may tell it in another language; `str()` is English.
A failing disk, a lock, a damaged file are the world's doing and arrive as one of these; a fault of the
program itself is never disguised as one.
"""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from traceback import walk_tb
from typing import Any

from sqlalchemy.exc import DataError, DBAPIError, IntegrityError, InterfaceError, OperationalError

SENTENCES = {
    "locked": "The records {place} are open in another window of this program. Close that window first, "
    "or open them here to look without writing.",
    "busy": "The records {place} are busy with other work. Wait a moment and do it again; nothing was changed.",
    "no_locks": "The drive that holds {place} cannot tell this program whether another computer has the "
    "records open. Move them to a drive of this computer.",
    "too_new": "The records {place} were written by a newer version of this program (layout {found}; this "
    "program knows layouts up to {known}). Nothing was changed. Install the newer version to open them.",
    "too_old": "The records {place} have the older layout {found} (this program uses {known}). "
    "Open them once for writing, so that they are brought up to date after a backup.",
    "damaged": "The records {place} are damaged: {detail}. Nothing was changed. Set the file aside and "
    "restore the newest backup from {backups}.",
    "emptied": "The records {place} are empty, but backups of them exist in {backups}. Nothing was changed. "
    "Restore the newest backup, or move the backups away to start afresh.",
    "not_records": "The file {place} is not a records file of this program. Nothing was changed. Choose another file.",
    "other_tables": "The database {place} holds tables of another program. Nothing was changed. Choose another "
    "database, or have whoever looks after the server make an empty one.",
    "no_create": "The user {user} may not set up records in {place}. Have whoever looks after the server let this "
    "user make tables there, or make a database that belongs to the user.",
    "not_empty": "The records {place} hold something already, so nothing was brought over.",
    "not_alike": "Not everything of {place} came over to {target} as it was, so nothing was kept there. Save "
    "everything to a file and ask whoever looks after this program.",
    "no_password_file": "The password can be kept neither in the system's keyring nor in {place}. Let this user write "
    "there, or leave the password blank and keep it in one of the two by hand.",
    "missing": "There are no records at {place}. Check the name, and that the drive is connected.",
    "gone": "The records {place} are no longer where they were opened: the file was moved, replaced or "
    "removed. Put it back, or close and open the records again; then enter this again.",
    "unreachable": "The records {place} cannot be reached. Check the drive or the network, then do it "
    "again; what was kept before is safe.",
    "password": "The server of {place} did not take the name or the password. Check both; the password is looked"
    " for in the system's keyring and in the password file of PostgreSQL.",
    "no_database": "The server of {place} is there, but it has no database of that name. Check the name, or have "
    "whoever looks after the server make it.",
    "no_host": "There is no computer of the name in {place}. Check the address, and that the network is connected.",
    "not_listening": "The computer in {place} is there, but no server answers. Check that it is started, and the port.",
    "read_only": "The records {place} are open to look only, or the file or its folder is write-protected. "
    "Nothing was changed. Open them for writing, or ask whoever looks after this computer.",
    "disk_full": "The disk that holds {place} is full, so this was not kept. Free some space, then enter it "
    "again; what was kept before is safe.",
    "not_a_url": "‘{place}’ does not name records: give the path of a file, or an address that begins with "
    "sqlite:/// or postgresql://.",
    "no_driver": "Records on a server need an addition to this program: install it with its ‘server’ option.",
    "edited_meanwhile": "This {kind} was changed meanwhile on another page or computer. Look at the newer "
    "telling, then make your change again.",
    "unknown": "There is no {kind} with the name {id} in these records. Refresh the page.",
    "not_kept": "This {kind} cannot be kept: {fault}. Correct it and try again.",
    "refers": "This {kind} names something that is not in these records. Refresh the page and try again.",
    "other_farm": "This {kind} belongs to another farm and cannot be moved. Enter a new one instead.",
    "frozen": "This weigh-in is signed off and cannot be changed. Start a new weigh-in for the lot.",
    "signed_meanwhile": "This weigh-in was signed off already by {who}, on another page or computer. What was signed "
    "is shown now; if it is wrong, start a new weigh-in for the lot.",
    "not_signed": "A spot fill belongs to a lot that is signed off. Sign off its weigh-in first.",
    "trial_closed": "This trial is closed and its fills cannot be changed. Take it up again first.",
    "closed": "The records {place} are closed. Open them again.",
    "abandoned": "This weigh-in was given up and cannot be signed off. Take it up again first.",
    "foreign_mark": "A mark can only be kept with the sign-off it belongs to. Sign off the weigh-in again.",
    "already_there": "A different {kind} is already kept under the same name. Refresh the page and enter it anew.",
    "parted": "This {kind} was changed on two computers, each without the other: ‘{here}’ stays, ‘{there}’ was "
    "not taken.",
    "parted_alike": "This {kind} (‘{here}’) was changed on two computers, each without the other. What these "
    "records hold stays.",
    "parted_nameless": "This {kind} was changed on two computers, each without the other. What these records "
    "hold stays.",
    "struck_on_arrival": "A new {kind} cannot be struck out already. Keep it first, then strike it out.",
    "no_reason": "Say why this {kind} is struck out.",
    "append_only": "Records are only ever added to; what is kept cannot be changed or removed. "
    "Enter a correction instead.",
    "refused": "The records {place} refused this: {detail}. Nothing was changed.",
    "import_unreadable": "{file} cannot be read: {fault}. Nothing was brought in.",
    "import_version": "{file} cannot be read: it has format version {found}, and this program reads {known}. Nothing "
    "was brought in.",
    "import_fault": "{file}, entry {entry}: {fault}. Correct the file and try again; nothing was brought in.",
    "import_refused": "{file}, entry {entry}: {fault} Nothing was brought in.",
    "import_parted": "{file}, entry {entry}: {fault} Records that went different ways cannot be put "
    "together. To see what the file holds, bring it into new, empty records. Nothing was brought in.",
    "foreign_password": "{file} is locked with a password. Open it in the spreadsheet program, save it without one, "
    "and choose it again. Nothing was brought in.",
    "foreign_other": "{file} is a file of another program or an older kind (.xls, .xlsb, .ods). Open it in the "
    "spreadsheet program, save it as .xlsx or CSV, and choose that file. Nothing was brought in.",
    "foreign_page": "{file} is a web page or XML under the name of a table. Open it in the spreadsheet program, save "
    "it as .xlsx or CSV, and choose that file. Nothing was brought in.",
    "foreign_no_table": "{file} is neither text in columns nor a workbook. Choose a .csv, .txt or .xlsx file. Nothing "
    "was brought in.",
    "foreign_empty": "{file} has nothing in it here. Choose another file or sheet. Nothing was brought in.",
    "foreign_large": "{file} is larger than {most} MB. Save the rows that you need as a file of their own. Nothing was "
    "brought in.",
    "foreign_long": "{file} has more than {most} rows, perhaps far below the table. Save the rows that you need as a "
    "file of their own. Nothing was brought in.",
    "foreign_wide": "{file} has more than {most} columns, or the sign between its cells is not the one chosen. "
    "Nothing was brought in.",
    "foreign_cells": "{file} has more than {most} cells. Save only the rows and columns that you need as a file of "
    "their own. Nothing was brought in.",
    "foreign_bomb": "{file} would unpack to far more than a table needs, so it is not opened. Save the sheet anew as "
    "CSV and choose that file. Nothing was brought in.",
    "foreign_entities": "{file} declares XML entities, which no spreadsheet program writes, so it is not opened. "
    "Save the sheet anew as CSV and choose that file. Nothing was brought in.",
    "foreign_broken": "{file} is damaged, or not written as a workbook should be. Open it in the spreadsheet program, "
    "save it anew as .xlsx or CSV, and choose that file. Nothing was brought in.",
    "foreign_quotes": "{file}, row {row}: a quotation mark is opened and not closed, or text follows the closing one. "
    "Correct that row, or save the file anew in the spreadsheet program. Nothing was brought in.",
    "foreign_letters": "{file}, row {row}: the letters cannot be read in the chosen way. Choose another way to read "
    "letters. Nothing was brought in.",
    "no_backup": "There is no backup {place}. Choose another one.",
    "server_backups": "The backups of a server are made and restored on the server. Ask whoever looks after {place}.",
    "salvage_failed": "What is left of {place} could not be brought over: {fault}. Nothing was changed. Free some "
    "space or check the folder, then try again.",
    "nothing_read": "Nothing could be read in {place}, and no backup of it helps. Nothing was changed. Look for a copy "
    "of the file on another drive, or move it away to start afresh.",
    "backup_failed": "No backup of {place} could be made in {backups}: {fault}. Free some space or check the "
    "folder, then try again.",
    "table_disk_full": "The disk is full, so {place} was not written; what was there before still is. Free some "
    "space or choose another place.",
    "table_in_use": "{place} cannot be written: another program has it open, or you may not write there. Close it "
    "there, or choose another name or place.",
    "table_no_folder": "The folder {place} is not there any more. Choose another place.",
    "table_fault": "{place} cannot be written: {fault}. Choose another place.",
}
"""The English sentences by code."""


class RecordsError(Exception):
    """Something about the records that a person can act on; `str()` is the sentence."""

    def __init__(self, code: str, **params: str) -> None:
        super().__init__(SENTENCES[code].format(**params))
        self.code = code
        self.params = params


class RecordsLocked(RecordsError):
    """Another instance has the file, or holds it busy."""


class RecordsTooNew(RecordsError):
    """Written by a newer program; both layout versions are named in `params`."""


class RecordsDamaged(RecordsError):
    """The file is broken, emptied, or not a records file at all."""


class RecordsReadOnly(RecordsError):
    """Writing was tried where only looking is possible."""


class RecordsUnreachable(RecordsError):
    """The file or server is missing, moved, or cut off."""


class DiskFull(RecordsError):
    """No room to keep what was entered."""


class NotAllowed(RecordsError):
    """The records' own rules refuse it, and will whenever it is tried: frozen, unknown, unsound, no value for them."""


class Parted(NotAllowed):
    """A thing was changed in two places, each without the other. `here` is its newest telling in these records."""

    def __init__(self, kind: str, here: Any, there: Any) -> None:
        names = [getattr(one, "name", getattr(one, "lot_number", "")) for one in (here, there)]
        if not all(names):
            super().__init__("parted_nameless", kind=kind)
        elif names[0] == names[1]:
            super().__init__("parted_alike", kind=kind, here=names[0])
        else:
            super().__init__("parted", kind=kind, here=names[0], there=names[1])
        self.here = here


class ImportRefused(RecordsError):
    """A file to bring in has a fault; the entry and field are named."""


class ForeignRefused(RecordsError):
    """A file of another program that is no table, or would do harm; the file is named."""


class TableNotWritten(RecordsError):
    """A file for other programs could not be written; an older file of that name is as it was."""

    elsewhere = True  # another place may do


class EditedMeanwhile(RecordsError):
    """Someone else changed the same thing first. `newest` is what it is now."""

    def __init__(self, kind: str, newest: Any) -> None:
        super().__init__("edited_meanwhile", kind=kind)
        self.newest = newest


_BY_SQLITE_NAME: tuple[tuple[str, type[RecordsError], str], ...] = (
    ("SQLITE_BUSY", RecordsLocked, "busy"),
    ("SQLITE_LOCKED", RecordsLocked, "busy"),
    ("SQLITE_FULL", DiskFull, "disk_full"),
    ("SQLITE_READONLY", RecordsReadOnly, "read_only"),
    ("SQLITE_CANTOPEN", RecordsUnreachable, "unreachable"),
    ("SQLITE_PERM", RecordsReadOnly, "read_only"),
    ("SQLITE_IOERR", RecordsUnreachable, "unreachable"),
    ("SQLITE_CORRUPT", RecordsDamaged, "damaged"),
    ("SQLITE_NOTADB", RecordsDamaged, "not_records"),
    ("SQLITE_CONSTRAINT_TRIGGER", NotAllowed, "append_only"),
)
_BY_SQLSTATE: tuple[tuple[str, type[RecordsError], str], ...] = (
    ("53100", DiskFull, "disk_full"),
    ("25006", RecordsReadOnly, "read_only"),
    ("42501", RecordsReadOnly, "read_only"),
    ("25P03", RecordsUnreachable, "unreachable"),  # the server ended a session that was asleep
    ("55P03", RecordsLocked, "busy"),
    ("40", RecordsLocked, "busy"),
    ("57", RecordsUnreachable, "unreachable"),
    ("08", RecordsUnreachable, "unreachable"),
    ("28", RecordsUnreachable, "unreachable"),
    ("3D", RecordsUnreachable, "unreachable"),
    ("P0001", NotAllowed, "append_only"),
    ("54", NotAllowed, "refused"),
)
_NOT_REACHED = (
    ("password authentication failed", "password"),
    ("no password supplied", "password"),
    ('" does not exist', "no_database"),
    ("translate host name", "no_host"),
    ("resolve host", "no_host"),
    ("Name or service not known", "no_host"),
    ("onnection refused", "not_listening"),
    ("No such file or directory", "not_listening"),
)


_COLUMNS = ("calibrator.records.columns", "sqlalchemy.sql.sqltypes")


@contextmanager
def told(place: str, backups: str = "", kind: str = "record") -> Iterator[None]:
    """Turn what the database raises inside into a `RecordsError`."""
    try:
        yield
    except DBAPIError as error:
        raise translated(error, place, backups, kind) from error
    except (ValueError, TypeError, LookupError) as error:
        if not _of_a_stored_value(error):
            raise
        raise RecordsDamaged(
            "damaged", place=place, detail="a value in them cannot be read", backups=backups
        ) from error


def _of_a_stored_value(error: Exception) -> bool:
    """Whether the error comes from making sense of what is stored, and not from the program's own doing."""
    modules = [str(frame.f_globals.get("__name__", "")) for frame, _ in walk_tb(error.__traceback__)]
    reading = any(module in _COLUMNS for module in modules) or modules[-1].startswith("sqlalchemy.")
    return isinstance(error, UnicodeDecodeError) or reading


def translated(error: DBAPIError, place: str, backups: str = "", kind: str = "record") -> RecordsError:
    """The `RecordsError` for a database error. `place` must hold no password."""
    name = getattr(error.orig, "sqlite_errorname", None) or ""
    state = getattr(error.orig, "sqlstate", None) or ""
    table, key = (_BY_SQLITE_NAME, name) if name else (_BY_SQLSTATE, state)
    for prefix, error_class, code in table:
        if key.startswith(prefix):
            detail = _detail(error)
            return error_class(code, place=place, backups=backups, detail=detail)
    if name == "SQLITE_CONSTRAINT_FOREIGNKEY" or state == "23503":
        return NotAllowed("refers", kind=kind)
    if isinstance(error, IntegrityError | DataError):
        return NotAllowed("refused", place=place, detail=_detail(error))
    if isinstance(error, OperationalError | InterfaceError) and not name:
        return RecordsUnreachable(_why_not_reached(str(error.orig)), place=place)
    return RecordsError("refused", place=place, detail=_detail(error))


def _why_not_reached(told: str) -> str:
    """The sentence for a connection that did not come about; its library tells why only in words."""
    return next((code for words, code in _NOT_REACHED if words in told), "unreachable")


def _detail(error: DBAPIError) -> str:
    return str(error.orig).strip().splitlines()[0] if str(error.orig).strip() else "no reason was given"
