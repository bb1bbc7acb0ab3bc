"""What another lot, or its new weigh-in, changed in the scoopfuls of every plan."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from datetime import date
from operator import attrgetter

from PySide6.QtCore import QCoreApplication

from calibrator.desk.hung import outdated_sheets
from calibrator.desk.sheets import Changed, LotInUse, changes, powder_before
from calibrator.desk.speech import day_text
from calibrator.desk.standing import Standing
from calibrator.model import Farm, Lot, Plan, PrintKind, SignOff, Vessel
from calibrator.records import Records
from calibrator.values import dataclass

translate = QCoreApplication.translate


@dataclass(frozen=True)
class LotChanges:
    """With a title; what changed, plan by plan; and which charts on the wall are outdated by it, or blank."""

    title: str
    found: tuple[Changed, ...]
    outdated: str


def lot_changes(
    records: Records,
    farm: Farm,
    now: Standing,
    powder: LotInUse,
    plans: Mapping[str, Plan],
    vessels: Mapping[str, Vessel],
    today: date,
) -> LotChanges | None:
    """What the lot in use changed; None where nothing did, another lot is looked at, or every chart is anew."""
    before, lot, signed = powder_before(records, now), powder.lot, powder.sign_off
    if before is None or before.lot is None or signed is None or lot is None:
        return None
    fed_before = _fed_before(records, now, list(plans.values()), before.lot, signed)
    if not (now.in_use and now.in_use.lot.id == lot.id) or _charts_are_anew(now, fed_before):
        return None
    found = list(changes(farm, fed_before, dict(vessels), before, powder, today))
    if not found:
        return None
    if before.lot.id == lot.id:
        told, day = translate("LotChanges", "Lot {new} was weighed in anew on {day}. Scoopfuls before → now:"), None
    else:
        told = translate("LotChanges", "Lot {new} took the place of lot {old} on {day}. Scoopfuls before → now:")
        day = lot.fed_from
    title = told.format(
        new=lot.lot_number, old=before.lot.lot_number, day=day_text(day or signed.at.astimezone().date())
    )
    found.sort(key=attrgetter("weighed"))  # "weigh it" before and now is hardly news
    return LotChanges(title, tuple(found), _outdated(now))


def _fed_before(records: Records, now: Standing, plans: Sequence[Plan], old: Lot, signed: SignOff) -> list[Plan]:
    """The plans that were there before the sign-off, or have a chart of the lot before: no other has a "before"."""
    charted = {p.plan_id for p in now.prints if p.kind is PrintKind.WALL_CHART and p.lot_id == old.id}
    return [plan for plan in plans if plan.id in charted or records.as_of(Plan, plan.id, signed)]


def sign_off_in_use(now: Standing) -> str:
    """The id of the sign-off that counts; blank without one."""
    return now.in_use.sign_off.id if now.in_use and now.in_use.sign_off else ""


def _charts_are_anew(now: Standing, plans: Sequence[Plan]) -> bool:
    newest = sign_off_in_use(now)
    charts = {p.plan_id for p in now.prints if p.kind is PrintKind.WALL_CHART and p.sign_off_id == newest}
    return {plan.id for plan in plans} <= charts


def _outdated(now: Standing) -> str:
    sheets = outdated_sheets(now, PrintKind.WALL_CHART)
    if not sheets:
        return ""
    told = translate(
        "LotChanges", "Outdated on the wall: chart no. {numbers}. Print it anew and take the old one down."
    )
    return told.format(numbers=", ".join(str(sheet.number) for sheet in sheets))
