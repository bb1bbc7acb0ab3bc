"""From the records to the season's points: one for each lot and scoop, as last signed off."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from enum import StrEnum

from calibrator.model import Lot, Mark, Scoop, SignOff
from calibrator.records import Records


class DayOf(StrEnum):
    """Which day a lot stands at."""

    ARRIVED = "arrived"
    MADE = "made"
    WEIGHED = "weighed"


@dataclass(frozen=True)
class SeasonPoint:
    """One lot as weighed with one scoop."""

    lot: Lot
    scoop: Scoop
    sign_off: SignOff
    marks: tuple[Mark, ...]

    def day(self, of: DayOf) -> date | None:
        """The day it stands at; None where the lot's record does not tell it."""
        if of is DayOf.ARRIVED:
            return self.lot.arrived_on
        return self.lot.made_on if of is DayOf.MADE else self.sign_off.at.date()


def season_points(records: Records, farm_id: str) -> list[SeasonPoint]:
    """The newest sign-off of every lot and scoop, in the order they were signed off."""
    lots = {lot.id: lot for lot in records.every(Lot, farm_id)}
    scoops = {scoop.id: scoop for scoop in records.every(Scoop, farm_id)}
    newest = {(s.lot_id, s.scoop_id): s for s in records.sign_offs(farm_id)}
    marks = _by_sign_off(records, lots)
    points = [
        SeasonPoint(lots[s.lot_id], scoops[s.scoop_id], s, tuple(marks.get(s.id, ())))
        for s in newest.values()
        if s.lot_id in lots and s.scoop_id in scoops
    ]
    return sorted(points, key=_when_signed)


def _by_sign_off(records: Records, lots: dict[str, Lot]) -> dict[str, list[Mark]]:
    found: dict[str, list[Mark]] = {}
    for lot_id in lots:
        for mark in records.marks(lot_id=lot_id):
            found.setdefault(mark.sign_off_id, []).append(mark)
    return found


def _when_signed(point: SeasonPoint) -> float:
    return point.sign_off.at.timestamp()


def placed(points: list[SeasonPoint], of: DayOf) -> list[SeasonPoint]:
    """Those that have such a day, earliest first."""
    having = [(day, number, point) for number, point in enumerate(points) if (day := point.day(of))]
    return [point for _, _, point in sorted(having, key=_by_day)]


def _by_day(item: tuple[date, int, SeasonPoint]) -> tuple[date, int]:
    return item[:2]


def last_two(points: list[SeasonPoint]) -> tuple[SeasonPoint, SeasonPoint] | None:
    """The last lot and the one before it with the same scoop; None where there are not two."""
    if not points:
        return None
    last = points[-1]
    before = [p for p in points if p.scoop.id == last.scoop.id and p.lot.id != last.lot.id]
    return (before[-1], last) if before else None
