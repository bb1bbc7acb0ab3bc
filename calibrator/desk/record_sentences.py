"""The sentences of `calibrator.records.errors`, written out so that they are found for translation."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication

from calibrator.marked import QT_TRANSLATE_NOOP

CONTEXT = "Records"


SENTENCES = (
    QT_TRANSLATE_NOOP(
        "Records",
        "The records {place} are open in another window of this program. Close that window first, or "
        "open them here to look without writing.",
    ),
    QT_TRANSLATE_NOOP(
        "Records",
        "The records {place} are busy with other work. Wait a moment and do it again; nothing was changed.",
    ),
    QT_TRANSLATE_NOOP(
        "Records",
        "The drive that holds {place} cannot tell this program whether another computer has the records "
        "open. Move them to a drive of this computer.",
    ),
    QT_TRANSLATE_NOOP(
        "Records",
        "The records {place} were written by a newer version of this program (layout {found}; this "
        "program knows layouts up to {known}). Nothing was changed. Install the newer version to open "
        "them.",
    ),
    QT_TRANSLATE_NOOP(
        "Records",
        "The records {place} have the older layout {found} (this program uses {known}). Open them once "
        "for writing, so that they are brought up to date after a backup.",
    ),
    QT_TRANSLATE_NOOP(
        "Records",
        "The records {place} are damaged: {detail}. Nothing was changed. Set the file aside and restore "
        "the newest backup from {backups}.",
    ),
    QT_TRANSLATE_NOOP(
        "Records",
        "The records {place} are empty, but backups of them exist in {backups}. Nothing was changed. "
        "Restore the newest backup, or move the backups away to start afresh.",
    ),
    QT_TRANSLATE_NOOP(
        "Records",
        "The file {place} is not a records file of this program. Nothing was changed. Choose another file.",
    ),
    QT_TRANSLATE_NOOP(
        "Records",
        "The database {place} holds tables of another program. Nothing was changed. Choose another "
        "database, or have whoever looks after the server make an empty one.",
    ),
    QT_TRANSLATE_NOOP(
        "Records",
        "The user {user} may not set up records in {place}. Have whoever looks after the server let this "
        "user make tables there, or make a database that belongs to the user.",
    ),
    QT_TRANSLATE_NOOP("Records", "The records {place} hold something already, so nothing was brought over."),
    QT_TRANSLATE_NOOP(
        "Records",
        "Not everything of {place} came over to {target} as it was, so nothing was kept there. Save "
        "everything to a file and ask whoever looks after this program.",
    ),
    QT_TRANSLATE_NOOP(
        "Records",
        "The password can be kept neither in the system's keyring nor in {place}. Let this user write "
        "there, or leave the password blank and keep it in one of the two by hand.",
    ),
    QT_TRANSLATE_NOOP(
        "Records",
        "There are no records at {place}. Check the name, and that the drive is connected.",
    ),
    QT_TRANSLATE_NOOP(
        "Records",
        "The records {place} are no longer where they were opened: the file was moved, replaced or "
        "removed. Put it back, or close and open the records again; then enter this again.",
    ),
    QT_TRANSLATE_NOOP(
        "Records",
        "The records {place} cannot be reached. Check the drive or the network, then do it again; what "
        "was kept before is safe.",
    ),
    QT_TRANSLATE_NOOP(
        "Records",
        "The server of {place} did not take the name or the password. Check both; the password is looked"
        " for in the system's keyring and in the password file of PostgreSQL.",
    ),
    QT_TRANSLATE_NOOP(
        "Records",
        "The server of {place} is there, but it has no database of that name. Check the name, or have "
        "whoever looks after the server make it.",
    ),
    QT_TRANSLATE_NOOP(
        "Records",
        "There is no computer of the name in {place}. Check the address, and that the network is connected.",
    ),
    QT_TRANSLATE_NOOP(
        "Records",
        "The computer in {place} is there, but no server answers. Check that it is started, and the port.",
    ),
    QT_TRANSLATE_NOOP(
        "Records",
        "The records {place} are open to look only, or the file or its folder is write-protected. "
        "Nothing was changed. Open them for writing, or ask whoever looks after this computer.",
    ),
    QT_TRANSLATE_NOOP(
        "Records",
        "The disk that holds {place} is full, so this was not kept. Free some space, then enter it "
        "again; what was kept before is safe.",
    ),
    QT_TRANSLATE_NOOP(
        "Records",
        "‘{place}’ does not name records: give the path of a file, or an address that begins with "
        "sqlite:/// or postgresql://.",
    ),
    QT_TRANSLATE_NOOP(
        "Records",
        "Records on a server need an addition to this program: install it with its ‘server’ option.",
    ),
    QT_TRANSLATE_NOOP(
        "Records",
        "This {kind} was changed meanwhile on another page or computer. Look at the newer telling, then "
        "make your change again.",
    ),
    QT_TRANSLATE_NOOP("Records", "There is no {kind} with the name {id} in these records. Refresh the page."),
    QT_TRANSLATE_NOOP("Records", "This {kind} cannot be kept: {fault}. Correct it and try again."),
    QT_TRANSLATE_NOOP(
        "Records",
        "This {kind} names something that is not in these records. Refresh the page and try again.",
    ),
    QT_TRANSLATE_NOOP(
        "Records",
        "This {kind} belongs to another farm and cannot be moved. Enter a new one instead.",
    ),
    QT_TRANSLATE_NOOP(
        "Records",
        "This weigh-in is signed off and cannot be changed. Start a new weigh-in for the lot.",
    ),
    QT_TRANSLATE_NOOP(
        "Records",
        "This weigh-in was signed off already by {who}, on another page or computer. What was signed is "
        "shown now; if it is wrong, start a new weigh-in for the lot.",
    ),
    QT_TRANSLATE_NOOP(
        "Records",
        "A spot fill belongs to a lot that is signed off. Sign off its weigh-in first.",
    ),
    QT_TRANSLATE_NOOP(
        "Records",
        "This trial is closed and its fills cannot be changed. Take it up again first.",
    ),
    QT_TRANSLATE_NOOP("Records", "The records {place} are closed. Open them again."),
    QT_TRANSLATE_NOOP(
        "Records",
        "This weigh-in was given up and cannot be signed off. Take it up again first.",
    ),
    QT_TRANSLATE_NOOP(
        "Records",
        "A mark can only be kept with the sign-off it belongs to. Sign off the weigh-in again.",
    ),
    QT_TRANSLATE_NOOP(
        "Records",
        "A different {kind} is already kept under the same name. Refresh the page and enter it anew.",
    ),
    QT_TRANSLATE_NOOP(
        "Records",
        "This {kind} was changed on two computers, each without the other: ‘{here}’ stays, ‘{there}’ was not taken.",
    ),
    QT_TRANSLATE_NOOP(
        "Records",
        "This {kind} (‘{here}’) was changed on two computers, each without the other. What these records hold stays.",
    ),
    QT_TRANSLATE_NOOP(
        "Records", "This {kind} was changed on two computers, each without the other. What these records hold stays."
    ),
    QT_TRANSLATE_NOOP("Records", "{file}, entry {entry}: {fault} Nothing was brought in."),
    QT_TRANSLATE_NOOP(
        "Records",
        "{file}, entry {entry}: {fault} Records that went different ways cannot be put "
        "together. To see what the file holds, bring it into new, empty records. Nothing was brought in.",
    ),
    QT_TRANSLATE_NOOP(
        "Records",
        "A new {kind} cannot be struck out already. Keep it first, then strike it out.",
    ),
    QT_TRANSLATE_NOOP("Records", "Say why this {kind} is struck out."),
    QT_TRANSLATE_NOOP(
        "Records",
        "Records are only ever added to; what is kept cannot be changed or removed. Enter a correction instead.",
    ),
    QT_TRANSLATE_NOOP("Records", "The records {place} refused this: {detail}. Nothing was changed."),
    QT_TRANSLATE_NOOP("Records", "{file} cannot be read: {fault}. Nothing was brought in."),
    QT_TRANSLATE_NOOP(
        "Records",
        "{file} cannot be read: it has format version {found}, and this program reads {known}. Nothing was brought in.",
    ),
    QT_TRANSLATE_NOOP(
        "Records",
        "{file}, entry {entry}: {fault}. Correct the file and try again; nothing was brought in.",
    ),
    QT_TRANSLATE_NOOP(
        "Records",
        "{file} is locked with a password. Open it in the spreadsheet program, save it without one, and choose it"
        " again. Nothing was brought in.",
    ),
    QT_TRANSLATE_NOOP(
        "Records",
        "{file} is a file of another program or an older kind (.xls, .xlsb, .ods). Open it in the spreadsheet "
        "program, save it as .xlsx or CSV, and choose that file. Nothing was brought in.",
    ),
    QT_TRANSLATE_NOOP(
        "Records",
        "{file} is a web page or XML under the name of a table. Open it in the spreadsheet program, save it as "
        ".xlsx or CSV, and choose that file. Nothing was brought in.",
    ),
    QT_TRANSLATE_NOOP(
        "Records",
        "{file} is neither text in columns nor a workbook. Choose a .csv, .txt or .xlsx file. Nothing was brought in.",
    ),
    QT_TRANSLATE_NOOP(
        "Records",
        "{file} has nothing in it here. Choose another file or sheet. Nothing was brought in.",
    ),
    QT_TRANSLATE_NOOP(
        "Records",
        "{file} is larger than {most} MB. Save the rows that you need as a file of their own. Nothing was brought in.",
    ),
    QT_TRANSLATE_NOOP(
        "Records",
        "{file} has more than {most} rows, perhaps far below the table. Save the rows that you need as a file of "
        "their own. Nothing was brought in.",
    ),
    QT_TRANSLATE_NOOP(
        "Records",
        "{file} has more than {most} columns, or the sign between its cells is not the one chosen. Nothing was "
        "brought in.",
    ),
    QT_TRANSLATE_NOOP(
        "Records",
        "{file} has more than {most} cells. Save only the rows and columns that you need as a file of their own. "
        "Nothing was brought in.",
    ),
    QT_TRANSLATE_NOOP(
        "Records",
        "{file} would unpack to far more than a table needs, so it is not opened. Save the sheet anew as CSV and "
        "choose that file. Nothing was brought in.",
    ),
    QT_TRANSLATE_NOOP(
        "Records",
        "{file} declares XML entities, which no spreadsheet program writes, so it is not opened. Save the sheet "
        "anew as CSV and choose that file. Nothing was brought in.",
    ),
    QT_TRANSLATE_NOOP(
        "Records",
        "{file} is damaged, or not written as a workbook should be. Open it in the spreadsheet program, save it "
        "anew as .xlsx or CSV, and choose that file. Nothing was brought in.",
    ),
    QT_TRANSLATE_NOOP(
        "Records",
        "{file}, row {row}: a quotation mark is opened and not closed, or text follows the closing one. Correct that"
        " row, or save the file anew in the spreadsheet program. Nothing was brought in.",
    ),
    QT_TRANSLATE_NOOP(
        "Records",
        "{file}, row {row}: the letters cannot be read in the chosen way. Choose another way to read letters. "
        "Nothing was brought in.",
    ),
    QT_TRANSLATE_NOOP("Records", "There is no backup {place}. Choose another one."),
    QT_TRANSLATE_NOOP(
        "Records",
        "The backups of a server are made and restored on the server. Ask whoever looks after {place}.",
    ),
    QT_TRANSLATE_NOOP(
        "Records",
        "What is left of {place} could not be brought over: {fault}. Nothing was changed. Free some space or check "
        "the folder, then try again.",
    ),
    QT_TRANSLATE_NOOP(
        "Records",
        "Nothing could be read in {place}, and no backup of it helps. Nothing was changed. Look for a copy of the "
        "file on another drive, or move it away to start afresh.",
    ),
    QT_TRANSLATE_NOOP(
        "Records",
        "No backup of {place} could be made in {backups}: {fault}. Free some space or check the folder, "
        "then try again.",
    ),
    QT_TRANSLATE_NOOP(
        "Records",
        "The disk is full, so {place} was not written; what was there before still is. Free some space or "
        "choose another place.",
    ),
    QT_TRANSLATE_NOOP(
        "Records",
        "{place} cannot be written: another program has it open, or you may not write there. Close it there, "
        "or choose another name or place.",
    ),
    QT_TRANSLATE_NOOP("Records", "The folder {place} is not there any more. Choose another place."),
    QT_TRANSLATE_NOOP("Records", "{place} cannot be written: {fault}. Choose another place."),
)
"""Those of `calibrator.records.errors`; a test keeps the two alike."""


FAULTS = (
    QT_TRANSLATE_NOOP("Records", "it has no list of changes"),
    QT_TRANSLATE_NOOP("Records", "it holds no .json file"),
    QT_TRANSLATE_NOOP("Records", "it is not JSON text"),
    QT_TRANSLATE_NOOP("Records", "it is not a file"),
    QT_TRANSLATE_NOOP("Records", "it is not an export of this program"),
    QT_TRANSLATE_NOOP("Records", "it is too large for the memory of this computer"),
    QT_TRANSLATE_NOOP("Records", "no access"),
)
"""What stands in their {fault}, as far as it is not said by the system."""


def kind_words(kind: str) -> str:
    """What a thing of the records is called, from the word that an error says."""
    told = {
        "farm": QCoreApplication.translate("Records", "farm"),
        "scale": QCoreApplication.translate("Records", "scale"),
        "scoop": QCoreApplication.translate("Records", "scoop"),
        "lot": QCoreApplication.translate("Records", "lot"),
        "weigh-in": QCoreApplication.translate("Records", "weigh-in"),
        "plan": QCoreApplication.translate("Records", "plan"),
        "vessel": QCoreApplication.translate("Records", "vessel"),
        "fill": QCoreApplication.translate("Records", "fill"),
        "spot fill": QCoreApplication.translate("Records", "spot fill"),
        "sign off": QCoreApplication.translate("Records", "sign-off"),
        "mark": QCoreApplication.translate("Records", "mark"),
        "printed": QCoreApplication.translate("Records", "print"),
        "sheet ending": QCoreApplication.translate("Records", "note on a sheet"),
        "instrument": QCoreApplication.translate("Records", "instrument"),
        "instrument check": QCoreApplication.translate("Records", "check of an instrument"),
        "reference mix": QCoreApplication.translate("Records", "weighed mix"),
        "mix check": QCoreApplication.translate("Records", "check of the mix"),
        "feeder trial": QCoreApplication.translate("Records", "trial of feeders"),
        "trial fill": QCoreApplication.translate("Records", "fill of a trial"),
        "entry": QCoreApplication.translate("Records", "entry"),
        "bag count": QCoreApplication.translate("Records", "count of bags"),
    }
    return told.get(kind.replace("_", " ").replace("weigh in", "weigh-in"), kind)
