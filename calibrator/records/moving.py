"""All of one store into another, empty one: from the file of one computer to a server for several."""

from __future__ import annotations

from calibrator.model.underway import Underway, one_by_one
from calibrator.records.errors import NotAllowed
from calibrator.records.exporting import every_entry
from calibrator.records.importing import apply
from calibrator.records.repository import Records


def bring_over(source: Records, target: Records, underway: Underway) -> int:
    """Bring everything that was ever kept into empty records, all of it or nothing; gives how many entries.

    Ended, nothing was brought over. Before the end both are compared, entry by entry.
    Raises `NotAllowed` where the target holds something already or did not take everything as it was.
    """
    with source.reading() as connection:
        entries = list(every_entry(connection))
    with target.writing("import") as writing:
        if writing.last:
            raise NotAllowed("not_empty", place=target.url)
        for entry in one_by_one(entries, underway):
            apply(writing, entry)
        if list(every_entry(writing.connection)) != entries:
            raise NotAllowed("not_alike", place=source.url, target=target.url)
    return len(entries)
