"""What is done at a server away from the screen's own thread."""

from __future__ import annotations

from calibrator.model.underway import Underway
from calibrator.records import Records
from calibrator.records.moving import bring_over
from calibrator.records.passwords import keep_password
from calibrator.records.server import ServerAddress
from calibrator.values import dataclass


@dataclass(frozen=True)
class MadeReady:
    """Records that can be used: their address, and how many entries came over from the file (None: none asked)."""

    url: str
    brought: int | None


def make_ready(address: ServerAddress, password: str, source: Records | None, underway: Underway) -> MadeReady:
    """Keep the password, set the records up where there are none, bring a file's records over where asked.

    They are opened as they will be from now on, so that a password which was not kept is found out here.
    """
    if password:
        keep_password(address.url, password)
    with Records.open(address.url) as records:
        return MadeReady(address.url, bring_over(source, records, underway) if source else None)
