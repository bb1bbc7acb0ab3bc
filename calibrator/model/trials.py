"""A trial of feeders: the same scoop and lot, filled by several people."""

from datetime import datetime

from calibrator.model.weighing import FillWay
from calibrator.values import dataclass


@dataclass(frozen=True, kw_only=True)
class FeederTrial:
    """Several people fill one scoop from one bag on one scale, to tell their habits apart.

    `line_mm` is the line filled to, distance down the wall, where `way` asks for one. A closed trial takes no
    more fills; one with a `withdrawn_reason` no longer counts.
    """

    id: str
    farm_id: str
    lot_id: str
    scoop_id: str
    scale_id: str
    way: FillWay
    started_at: datetime
    line_mm: float | None = None
    line_typed: str = ""
    by: str = ""
    note: str = ""
    closed: bool = False
    withdrawn_reason: str = ""
    revision: str = ""

    @property
    def counts(self) -> bool:
        return not self.withdrawn_reason


@dataclass(frozen=True, kw_only=True)
class TrialFill:
    """One scoopful that `person` filled in a trial; `number` is its place in the order of filling, from 1.

    `by` is who typed it. A struck-out fill stays, with the reason; it no longer counts.
    """

    id: str
    trial_id: str
    person: str
    number: int
    mass_g: float
    typed: str
    at: datetime
    by: str = ""
    struck_reason: str | None = None

    @property
    def counts(self) -> bool:
        return self.struck_reason is None
