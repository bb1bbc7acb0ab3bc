"""All records as one text: what `export_file` writes, for tests to compare."""

from __future__ import annotations

from calibrator.records import Records
from calibrator.records.entries import pieces_of
from calibrator.records.exporting import every_entry


def export_text(records: Records) -> str:
    """The same text for the same records."""
    with records.reading() as connection:
        return "".join(pieces_of(every_entry(connection)))
