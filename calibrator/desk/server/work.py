"""What is done at a server away from the screen's own thread."""

from __future__ import annotations

from dataclasses import dataclass

from calibrator.desk.background import Heard
from calibrator.records import Records
from calibrator.records.moving import Stopped, bring_over
from calibrator.records.passwords import keep_password
from calibrator.records.server import ServerAddress


@dataclass(frozen=True)
class MadeReady:
    """Records that can be used: their address, and how many entries came over from the file (None: none asked)."""

    url: str
    brought: int | None


def make_ready(address: ServerAddress, password: str, source: Records | None, heard: Heard) -> MadeReady:
    """Keep the password, set the records up where there are none, bring a file's records over where asked.

    They are opened as they will be from now on, so that a password which was not kept is found out here.
    """
    if password:
        keep_password(address.url, password)
    with Records.open(address.url) as records:
        return MadeReady(address.url, bring_over(source, records, heard) if source else None)


def open_records(url: str, heard: Heard) -> Records:
    """Open records for the desk; when nobody waits for them any more they are closed again."""
    records = Records.open(url)
    try:
        heard(0, 0)
    except Stopped:
        records.close()
        raise
    return records
