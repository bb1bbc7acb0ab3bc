"""What was kept by mistake counts no more, for a reason; it stays in the records."""

from __future__ import annotations

from dataclasses import replace

from calibrator.desk.context import Desk
from calibrator.model import BagCount, InstrumentCheck, MixCheck, ReferenceMix


def ask_withdraw(desk: Desk, fact: BagCount | InstrumentCheck | MixCheck | ReferenceMix, question: str) -> None:
    """Ask why, then let it count no more."""

    def withdraw(reason: str) -> None:
        desk.keep(replace(fact, withdrawn_reason=reason), reason)

    desk.ask.reason(question, withdraw)
