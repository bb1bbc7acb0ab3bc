"""Kept checks as a history: what of them is shown, their limits, the table for other programs. No window."""

from __future__ import annotations

import csv
import io
from collections.abc import Sequence
from dataclasses import dataclass

from calibrator.model import Farm, Lot, MixCheck, Plan, Vessel
from calibrator.records import Records
from calibrator.science.check_season import Point, Watched, off_share, watch


@dataclass(frozen=True)
class Kept:
    """A kept check with its lot; `watched` is None where it tells no solids."""

    check: MixCheck
    lot: Lot
    watched: Watched | None


@dataclass(frozen=True)
class Names:
    """Names of plans and vessels by their ids."""

    plans: dict[str, str]
    vessels: dict[str, str]


def kept_checks(records: Records, farm: Farm) -> list[Kept]:
    """The checks that count, oldest first, each with the limits that held then."""
    lots = {lot.id: lot for lot in records.every(Lot, farm.id)}
    checks = sorted((c for c in records.every(MixCheck, farm.id) if c.counts and c.lot_id in lots), key=_when)
    told = [c for c in checks if c.solids_share is not None]
    limits = dict(zip([c.id for c in told], watch([_point(c) for c in told]), strict=True))
    return [Kept(check, lots[check.lot_id], limits.get(check.id)) for check in checks]


def names(records: Records, farm: Farm) -> Names:
    """What plans and vessels are called."""
    plans = {plan.id: plan.name for plan in records.every(Plan, farm.id)}
    return Names(plans, {vessel.id: vessel.name for vessel in records.every(Vessel, farm.id)})


def feeders(kept: Sequence[Kept]) -> list[str]:
    """Who mixed, each once, by the alphabet."""
    return sorted({k.check.feeder for k in kept if k.check.feeder}, key=str.casefold)


def chosen(kept: Sequence[Kept], lot_id: str, feeder: str) -> list[Kept]:
    """Those of one lot and one feeder; blank means all."""
    return [k for k in kept if lot_id in ("", k.lot.id) and feeder in ("", k.check.feeder)]


def _when(check: MixCheck) -> float:
    return check.at.timestamp()


def _point(check: MixCheck) -> Point:
    return Point(check.lot_id, off_share(check.solids_share or 0.0, check.target_share))


COLUMNS = (
    "at", "lot", "product", "plan", "group", "calves", "vessel", "mixed_by", "checked_by", "solids_wanted_pct",
    "tolerance_pct", "solids_pct", "solids_low_pct", "solids_high_pct", "way", "verdict", "readings", "note",
)  # fmt: skip


def csv_text(kept: Sequence[Kept], known: Names) -> str:
    """The checks as a table for other programs: a header, a line each, points as decimals, UTF-8.

    A text that begins like a formula gets an apostrophe, so that no spreadsheet runs it.
    """
    out = io.StringIO(newline="")
    writer = csv.writer(out)
    writer.writerow(COLUMNS)
    for one in kept:
        writer.writerow([_safe(cell) for cell in _cells(one, known)])
    return out.getvalue()


def _cells(one: Kept, known: Names) -> list[str]:
    c = one.check
    readings = "; ".join(dict.fromkeys(f"{r.kind} {r.pail}: {r.typed}" for r in c.readings))
    return [
        c.at.isoformat(timespec="minutes"), one.lot.lot_number, one.lot.product,
        known.plans.get(c.plan_id or "", ""), c.group_name, str(c.calves or ""),
        known.vessels.get(c.vessel_id or "", ""),
        c.feeder, c.by, _pct(c.target_share), _pct(c.tolerance_share), _pct(c.solids_share), _pct(c.solids_low),
        _pct(c.solids_high), c.way, c.verdict, readings, c.note,
    ]  # fmt: skip


def _pct(share: float | None) -> str:
    return "" if share is None else f"{100 * share:.2f}"


def _safe(cell: str) -> str:
    return f"'{cell}" if cell[:1] in ("=", "+", "-", "@", "\t", "\r") else cell
