"""Opening records beside the window."""

from __future__ import annotations

from calibrator.model.underway import Ended, Underway
from calibrator.records import Records


def open_records(url: str, underway: Underway) -> Records:
    """Open records for the desk; when nobody waits for them any more they are closed again."""
    records = Records.open(url)
    try:
        underway(1.0)
    except Ended:
        records.close()
        raise
    return records
