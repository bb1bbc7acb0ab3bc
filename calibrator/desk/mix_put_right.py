"""What a kept check told to be done: worked out again from its readings, with what was known at its time. No window."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication

from calibrator.desk.mix_batch import batch_of, farm_now
from calibrator.desk.mix_checks import Aim, work_out
from calibrator.desk.mix_tools import Tools
from calibrator.desk.mix_words import correction_words
from calibrator.desk.standing import Standing
from calibrator.model import Farm, MixCheck
from calibrator.records import Records
from calibrator.science.check import Verdict
from calibrator.science.errors import CannotCompute

translate = QCoreApplication.translate


def put_right_words(records: Records, farm: Farm, now: Standing, tools: Tools, check: MixCheck) -> str:
    """The correction of a check that was too thin or too strong; blank for others, or where none can be reckoned."""
    if not check.verdict or not Verdict(check.verdict).outside:
        return ""
    try:
        then = farm_now(records, farm, now, check.at, check.lot_id)
    except CannotCompute:
        return ""
    plan = next((plan for plan in then.plans if plan.id == check.plan_id), None)
    group = next((group for group in plan.groups if group.name == check.group_name), None) if plan else None
    if group is None and check.group_name:
        plan = None  # its group is gone; without a name it was of all together
    batch = batch_of(then, plan, group, check.calves, then.vessel(check.vessel_id))
    aim = Aim(check.target_share, check.tolerance_share)
    found = work_out(batch, check.readings, aim, tools, check.at)
    if found.batch_doubted:
        return translate("MixWords", "First read it again, the volume too, and look whose batch it was.")
    if found.correction is None:
        return ""
    lines = correction_words(
        found.correction,
        found.correction_scoops,
        farm.units,
        then.powder.resolution_g,
        least_g=then.least_additive_g,
        looked=found.at_odds,
        names=batch.additives,
    )
    text = translate("MixWords", "To put it right: {fix}")
    if found.at_odds:
        text = translate("MixWords", "To put it right, but only once both ways agree: {fix}")
        if found.odds_of_volume:
            text = translate("MixWords", "To put it right, but only if both read the same once more: {fix}")
    return text.format(fix=" ".join(lines))
