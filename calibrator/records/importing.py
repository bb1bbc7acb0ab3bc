"""Records in from a text of our own, all of it or nothing."""

from __future__ import annotations

from collections import Counter
from collections.abc import Mapping
from dataclasses import field, replace
from datetime import datetime
from pathlib import Path
from typing import Any

from sqlalchemy import Connection, TableClause, select

from calibrator.model import Farm, Fill, Mark, Printed, SheetEnding, SignOff, SpotFill, TrialFill
from calibrator.model.underway import Underway, one_by_one, unwatched
from calibrator.records import facts, fingerprints, nouns, rows
from calibrator.records.entries import Added, Entry, Signed, Struck, Told, read_changes
from calibrator.records.errors import EditedMeanwhile, ImportRefused, NotAllowed, Parted, told
from calibrator.records.paths import sample_lots_folder
from calibrator.records.plain import NotPlain, from_plain, kind_word
from calibrator.records.repository import Records
from calibrator.records.rows import Writing, spoken
from calibrator.records.tables import STRIKES, changes
from calibrator.values import dataclass

IMPORTED = "imported from "
"""Before the file's name in the reason of what came with an export of everything."""


@dataclass(frozen=True)
class Imported:
    """What a file brought: changes added, changes that were there already, and new things by kind.

    `stayed` names farms whose settings were changed here and in the file; those of here stayed.
    """

    added: int
    there: int
    counts: Mapping[str, int] = field(default_factory=dict)
    stayed: tuple[str, ...] = ()


def import_season(records: Records, folder_or_file: str | Path, underway: Underway = unwatched) -> Imported:
    """Bring in a file of this format, or all such files of a folder by name; all of it or nothing.

    What is there already is left alone. A farm's settings that were changed here and in the file stay as they are
    here, as nothing rests on which telling of them is the newest; any other thing changed on both sides is refused.
    Where other records are there, what is new says in the reason of its first telling which file it came with;
    empty records become the same as those that the file was made of.
    Raises `ImportRefused`, which names file, entry and field.
    """
    added, there = 0, 0
    counts: Counter[str] = Counter()
    stayed: dict[str, None] = {}
    with records.writing("import") as writing:
        others = writing.last > 0
        for file in _files(Path(folder_or_file)):
            for number, plain in enumerate(one_by_one(read_changes(file, underway), underway), start=1):
                try:
                    entry = _bring(writing, plain, file.name, number, mark=others)
                except Parted as parted:
                    stayed[parted.here.name] = None
                    continue
                added, there = (added, there + 1) if entry is None else (added + 1, there)
                counts.update(_new(entry))
    return Imported(added, there, dict(counts), tuple(stayed))


def bring(records: Records, entry: Entry) -> None:
    """Bring in one change that was told elsewhere; one that is there already is left alone.

    Raises `NotAllowed` or `EditedMeanwhile` where the records' rules refuse it.
    """
    with records.writing(_spoken(entry)) as writing:
        apply(writing, entry)


def demo_records(folder: str | Path) -> Records:
    """Fresh records in a folder, filled with the invented season."""
    records = Records.open(str(Path(folder) / "demo.sqlite"))
    import_season(records, sample_lots_folder())
    return records


def _files(path: Path) -> list[Path]:
    files = sorted(path.glob("*.json")) if path.is_dir() else [path]
    if not files:
        raise ImportRefused("import_unreadable", file=path.name, fault="it holds no .json file")
    return files


def _bring(writing: Writing, plain: Any, file: str, number: int, *, mark: bool) -> Entry | None:
    """Keep one entry; None for one that is there. Raises Parted for a farm's settings, else ImportRefused."""
    try:
        entry: Entry = from_plain(Entry, plain)
        if mark and isinstance(entry, Told) and entry.replaces is None and not entry.why:
            entry = replace(entry, why=f"{IMPORTED}{file}")
        before = writing.last
        with told("these records", kind=_spoken(entry)):
            apply(writing, entry)
    except NotPlain as error:
        raise ImportRefused("import_fault", file=file, entry=str(number), fault=str(error)) from None
    except (NotAllowed, EditedMeanwhile) as error:
        if isinstance(error, Parted) and isinstance(error.here, Farm):
            raise
        code = "import_parted" if isinstance(error, Parted | EditedMeanwhile) else "import_refused"
        raise ImportRefused(code, file=file, entry=str(number), fault=str(error)) from error
    return entry if writing.last > before else None


def apply(writing: Writing, entry: Entry) -> None:
    """Keep one change that was told elsewhere, in a transaction that is under way. Raises as `bring` does."""
    match entry:
        case Told():
            _apply_told(writing, entry)
        case Added():
            _apply_added(writing, entry.fact, entry.at)
        case Signed():
            _apply_signed(writing, entry)
        case _:
            _apply_struck(writing, entry)


def _apply_told(writing: Writing, entry: Told) -> None:
    noun = entry.noun
    there = nouns.revision(writing.connection, type(noun), noun.revision)
    if there is not None:
        return _same(there, noun)
    current = nouns.newest(writing.connection, type(noun), noun.id)
    if current is None and entry.replaces is not None:
        raise NotAllowed("unknown", kind=kind_word(type(noun)), id=noun.id)
    if current is not None and entry.replaces is not None and current.revision != entry.replaces:
        raise Parted(kind_word(type(noun)), current, noun)
    if (current is not None and entry.replaces is None) or not noun.revision:
        raise NotAllowed("already_there", kind=kind_word(type(noun)))
    telling = nouns.Telling(noun, entry.replaces, entry.by, entry.why, entry.at)
    return nouns.add_telling(writing, telling, current)


def _apply_added(writing: Writing, fact: Fill | SpotFill | TrialFill | Printed | SheetEnding, at: datetime) -> None:
    match fact:
        case Printed():
            _apply_printed(writing, fact, at)
        case SheetEnding():
            facts.add_ending(writing, fact, at)
        case Fill():
            facts.add_weighed(writing, fact, at)
        case TrialFill():
            facts.add_weighed(writing, fact, at)
        case _:
            facts.add_weighed(writing, fact, at)


def _apply_printed(writing: Writing, printed: Printed, at: datetime) -> None:
    there = facts.one(writing.connection, Printed, printed.id)
    if there is not None:
        return _same(there, printed)
    return facts.add_numbered_print(writing, printed, at)


def _apply_struck(writing: Writing, struck: Struck) -> None:
    strike = facts.Strike(struck.of, struck.reason, struck.by, struck.at)
    if any(_strike_there(writing.connection, strikes, struck) for strikes in STRIKES.values()):
        return
    if facts.one(writing.connection, SpotFill, struck.of):
        facts.add_strike(writing, SpotFill, strike)
    elif facts.one(writing.connection, TrialFill, struck.of):
        facts.add_strike(writing, TrialFill, strike)
    else:
        facts.add_strike(writing, Fill, strike)


def _strike_there(connection: Connection, strikes: TableClause, struck: Struck) -> bool:
    query = (
        select(strikes.c.change)
        .join(changes, changes.c.number == strikes.c.change)
        .where(strikes.c.of_id == struck.of, strikes.c.reason == struck.reason)
        .where(changes.c.at == struck.at, changes.c.by == struck.by)
    )
    return connection.execute(query).first() is not None


def _apply_signed(writing: Writing, signed: Signed) -> None:
    there = facts.one(writing.connection, SignOff, signed.sign_off.id)
    if there is None:
        facts.add_sign_off(writing, signed.sign_off, signed.marks, at=signed.at)
        fingerprints.take(writing.connection, signed.sign_off, signed.fingerprint, rows.now())
        return None
    its = facts.many(writing.connection, Mark, {"sign_off_id": there.id})
    return _same((there, *its), (signed.sign_off, *signed.marks))


def _same(there: Any, brought: Any) -> None:
    if there != brought:
        kind = type(there[0] if isinstance(there, tuple) else there)
        raise NotAllowed("already_there", kind=kind_word(kind))


def _spoken(entry: Entry) -> str:
    return spoken(type(entry.noun)) if isinstance(entry, Told) else "entry"


def _new(entry: Entry | None) -> list[str]:
    match entry:
        case Told(noun=noun, replaces=None):
            return [kind_word(type(noun))]
        case Added(fact=fact):
            return [kind_word(type(fact))]
        case Signed(marks=its):
            return ["sign_off", *("mark" for _ in its)]
    return []
