"""What a lot sheet must be told: the nouns as they stood at sign-off, and the results drawn from them."""

from __future__ import annotations

from datetime import datetime

from calibrator.model import Farm, Fill, Lot, Mark, Paper, Scale, Scoop, SignOff, SpotFill, UnitSystem, WeighIn
from calibrator.science.budget import BudgetRow
from calibrator.science.struck import COVERAGE_FACTOR
from calibrator.science.weighing import LevelResult
from calibrator.values import dataclass


@dataclass(frozen=True, kw_only=True)
class LotSheet:
    """Everything that the calibration record of one weigh-in tells. `fills` holds the struck-out ones too.

    `lot_now` is the lot as it is told today: what came with it is often entered after the sign-off.
    `line_coverage` is the half-width of the 95 % interval of a scoopful to the line ÷ its standard uncertainty.
    """

    farm: Farm
    lot: Lot
    scoop: Scoop
    scale: Scale
    weigh_in: WeighIn
    sign_off: SignOff
    fills: tuple[Fill, ...]
    marks: tuple[Mark, ...]
    lot_now: Lot | None = None
    spot_fills: tuple[SpotFill, ...] = ()
    level: LevelResult | None = None
    density_budget: tuple[BudgetRow, ...] = ()
    line_coverage: float = COVERAGE_FACTOR
    number: int | None = None
    replaces: int | None = None
    printed_at: datetime | None = None
    units: UnitSystem = UnitSystem.FARM
    paper: Paper = Paper.LETTER
    languages: tuple[str, ...] = ("en",)
