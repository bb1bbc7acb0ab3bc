"""From the records to the season's points: one for each lot and scoop, as last signed off."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from enum import StrEnum

from calibrator.desk.findings import experience, read, work_out
from calibrator.model import Lot, Mark, Scoop, SignOff, UnitSystem, WeighIn
from calibrator.records import Records
from calibrator.science.errors import CannotCompute
from calibrator.science.mark import OldLine, old_line
from calibrator.units import Kind
from calibrator.units import read as read_typed


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
    """The last weighing that has an earlier lot with the same scoop, and that one; None where there is none."""
    for last in reversed(points):
        before = [p for p in _until(points, last) if p.scoop.id == last.scoop.id and p.lot.id != last.lot.id]
        if before:
            return before[-1], last
    return None


def _until(points: list[SeasonPoint], last: SeasonPoint) -> list[SeasonPoint]:
    return points[: points.index(last)]


def change_share(before: SeasonPoint, last: SeasonPoint) -> float:
    """How much denser the later lot is, as a share of the earlier."""
    return last.sign_off.density_g_per_ml / before.sign_off.density_g_per_ml - 1


def with_line_of(records: Records, before: SeasonPoint, last: SeasonPoint, tolerance_share: float) -> OldLine | None:
    """What a feeding of the last lot weighs with the line of the lot before; None where that cannot be told.

    It cannot where the lot before has no line, or the last lot's fills are not in the records.
    """
    if not before.marks:
        return None
    weigh_in = records.find(WeighIn, last.sign_off.weigh_in_id)
    level = work_out(read(records, weigh_in.id, experience(records, weigh_in))).level
    if level is None:
        return None
    mark, signed = before.marks[0], last.sign_off
    try:
        return old_line(
            records.revision(Scoop, signed.scoop_revision).shape,
            level,
            signed.settling_factor,
            signed.settling_u,
            mark.down_wall_mm,
            mark.target_mass_g,
            tolerance_share,
            full_scoops=mark.full_scoops,
        )
    except CannotCompute:
        return None


def in_unit(g_per_ml: float, system: UnitSystem) -> float:
    """A density for the picture: ounces in a quart, or grams in a millilitre."""
    if system is UnitSystem.METRIC:
        return g_per_ml
    quart, ounce = (read_typed(text, kind, system).value for text, kind in _FARM_UNITS)
    return g_per_ml * quart / ounce


_FARM_UNITS = (("1 qt", Kind.VOLUME), ("1 oz", Kind.MASS))
