"""What the batches of a farm's plans are called."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QCoreApplication

from calibrator.model import MixCheck, Plan

translate = QCoreApplication.translate


def batch_name(plan: Plan, group_name: str | None) -> str:
    """A group's batch, or without one that of all groups together."""
    if group_name is None:
        return translate("BatchForm", "{plan}, all together").format(plan=plan.name)
    return f"{plan.name}, {group_name}" if group_name else plan.name


def batch_checked(check: MixCheck, plans: Sequence[Plan]) -> tuple[Plan, str | None] | None:
    """The plan and the name of the group, None for all together, whose batch was checked; None where the plans do not
    have it any more."""
    plan = next((plan for plan in plans if plan.id == check.plan_id), None)
    if plan is None:
        return None
    if any(group.name == check.group_name for group in plan.groups):
        return plan, check.group_name
    return None if check.group_name else (plan, None)


def whose_batch(check: MixCheck, plans: Sequence[Plan]) -> str:
    """Whose batch was checked; blank where there is but one to check."""
    found = batch_checked(check, plans) if sum(len(plan.groups) for plan in plans) > 1 else None
    return batch_name(*found) if found else ""
