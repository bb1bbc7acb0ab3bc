"""The trial in hand: which fills count, what they tell, what may be typed next. No window."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace
from datetime import datetime
from typing import Any

from calibrator.model import Farm, FeederTrial, FillWay, Lot, Mark, Scale, Scoop, TrialFill, new_id
from calibrator.records import Records
from calibrator.records.season import every_trial_fill
from calibrator.science.errors import CannotCompute
from calibrator.science.feeders import FILLS_EACH, TrialFindings, trial
from calibrator.science.line import fraction_at
from calibrator.science.plausible import Doubt, weight_doubt
from calibrator.science.repeat_trials import Habits, TrialRead, habits, who_count, who_fit
from calibrator.values import dataclass

TAKEN_BACK = "taken back"


@dataclass(frozen=True)
class Setting:
    """What a trial is made with."""

    lot: Lot
    scoop: Scoop
    scale: Scale
    way: FillWay
    mark: Mark | None = None  # the line filled to


@dataclass(frozen=True)
class OverTime:
    """Several trials of the same people, the first one first, and what they say together."""

    found: Habits
    trials: tuple[FeederTrial, ...]


class TrialWork:
    """Keeps each fill at once. The trial itself is kept with its first fill: opening the page leaves no trace."""

    def __init__(self, records: Records, farm: Farm, clock: Callable[[], datetime]) -> None:
        self.records, self.farm, self.clock = records, farm, clock
        self.trial: FeederTrial | None = None
        self.fills: list[TrialFill] = []
        kept = [one for one in self.trials() if one.counts and not one.closed]
        if kept:
            self.show(kept[-1])

    def trials(self) -> list[FeederTrial]:
        """The farm's trials, withdrawn ones included, the oldest first."""
        return self.records.every(FeederTrial, self.farm.id)

    def show(self, chosen: FeederTrial | None) -> None:
        """Take up a trial, or make ready for a new one."""
        self.trial = chosen
        self.read()

    def read(self) -> None:
        """Read the fills anew."""
        if self.trial is not None:
            self.trial = self.records.find(FeederTrial, self.trial.id)
        self.fills = self.records.trial_fills(self.trial.id) if self.trial else []

    @property
    def open(self) -> bool:
        return self.trial is None or (self.trial.counts and not self.trial.closed)

    def retired(self) -> bool:
        """Whether the scoop or the scale of the trial in hand is no longer used."""
        begun = self.trial
        if begun is None:
            return False
        scoop, scale = self.records.find(Scoop, begun.scoop_id), self.records.find(Scale, begun.scale_id)
        return scoop.retired_on is not None or scale.retired_on is not None

    def people(self) -> dict[str, list[float]]:
        """The weights that count, by person, in the order in which people came."""
        return by_person(self.fills)

    def findings(self) -> TrialFindings | None:
        """What the fills tell; None while they are too few, or where the trial is withdrawn."""
        if self.trial is not None and not self.trial.counts:
            return None
        step = self.records.find(Scale, self.trial.scale_id).resolution_g if self.trial else 0.0
        try:
            return trial(self.people(), step, self.farm.tolerance_share)
        except CannotCompute:
            return None

    def missing(self, person: str) -> int:
        """How many fills are still asked of a person."""
        return max(0, FILLS_EACH - len(self.people().get(person, ())))

    def add(self, setting: Setting, person: str, mass_g: float, typed: str, by: str) -> TrialFill:
        """Keep a fill, before it the trial where it is the first. Raises RecordsError."""
        if self.trial is None:
            self.trial = self.records.keep(self._begun(setting, by), by=by)
        fill = TrialFill(
            id=new_id(), trial_id=self.trial.id, person=person, number=len(self.fills) + 1, mass_g=mass_g, typed=typed,
            at=self.clock(), by=by,
        )  # fmt: skip
        kept = self.records.add_trial_fill(fill)
        self.read()
        return kept

    def strike(self, fill: TrialFill, reason: str, by: str) -> TrialFill:
        """Strike a fill out. Raises RecordsError."""
        told = self.records.strike_trial_fill(fill.id, reason, by)
        self.read()
        return told

    def restore(self, fill: TrialFill, by: str) -> TrialFill:
        """Let a struck-out fill count again. Raises RecordsError."""
        told = self.records.restore_trial_fill(fill.id, by)
        self.read()
        return told

    def newest(self) -> TrialFill | None:
        """The last fill that counts."""
        return next((fill for fill in reversed(self.fills) if fill.counts), None)

    def close(self, by: str) -> FeederTrial | None:
        """End the trial, so that the next fill begins a new one. Raises RecordsError."""
        return self._tell(by, closed=True)

    def go_on(self, by: str) -> FeederTrial | None:
        """Take a closed trial up again, so that it takes fills. Raises RecordsError."""
        return self._tell(by, closed=False)

    def withdraw(self, reason: str, by: str) -> FeederTrial | None:
        """The trial no longer counts, for a reason; a blank one lets it count again. Raises RecordsError."""
        return self._tell(by, why=reason, withdrawn_reason=reason)

    def note(self, text: str, by: str) -> FeederTrial | None:
        """Keep what was remarked about the trial. Raises RecordsError."""
        return self._tell(by, note=text)

    def over_time(self) -> OverTime | None:
        """What the trials say together that the same people took part in; None where there is nothing to compare."""
        if self.trial is None or not self.trial.counts:
            return None
        kept = [one for one in self.trials() if one.counts and one.way is self.trial.way]
        about = next(n for n, one in enumerate(kept) if one.id == self.trial.id)
        reads = self._reads(kept)
        people, places = who_fit([who_count(read) for read in reads], about)
        if not people:
            return None
        told = habits([reads[n] for n in places], people, self.farm.tolerance_share)
        return OverTime(told, tuple(kept[n] for n in places))

    def _reads(self, trials: Sequence[FeederTrial]) -> list[TrialRead]:
        own: dict[str, list[TrialFill]] = {one.id: [] for one in trials}
        for fill in every_trial_fill(self.records, self.farm.id):
            own.get(fill.trial_id, []).append(fill)
        steps = {one.id: one.resolution_g for one in self.records.every(Scale, self.farm.id)}
        return [TrialRead(by_person(own[one.id]), steps[one.scale_id]) for one in trials]

    def _tell(self, by: str, why: str = "", **told: Any) -> FeederTrial | None:
        if self.trial is not None:
            self.trial = self.records.keep(replace(self.trial, **told), by=by, why=why)
        return self.trial

    def _begun(self, setting: Setting, by: str) -> FeederTrial:
        mark = setting.mark if setting.way is FillWay.TO_MARK else None
        return FeederTrial(
            id=new_id(), farm_id=self.farm.id, lot_id=setting.lot.id, scoop_id=setting.scoop.id,
            scale_id=setting.scale.id, way=setting.way, started_at=self.clock(), by=by,
            line_mm=mark.down_wall_mm if mark else None,
        )  # fmt: skip


def by_person(fills: Sequence[TrialFill]) -> dict[str, list[float]]:
    """The weights that count, g, by person, in the order in which people came."""
    found: dict[str, list[float]] = {}
    for fill in fills:
        own = found.setdefault(fill.person, [])
        if fill.counts:
            own.append(fill.mass_g)
    return found


def doubt(setting: Setting, mass_g: float) -> Doubt | None:
    """Why a typed weight cannot be meant; None where it can."""
    volume = setting.scoop.volume_ml
    if setting.way is FillWay.TO_MARK and setting.mark is not None:
        volume *= fraction_at(setting.scoop.shape, setting.mark.down_wall_mm)
    return weight_doubt(mass_g, 1, volume, setting.scale.capacity_g)
