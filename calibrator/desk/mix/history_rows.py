"""A kept check or count of bags as a row of the table, as a point of the chart, and as a sentence."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, datetime
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication

from calibrator.desk import shown
from calibrator.desk.batch_names import batch_checked
from calibrator.desk.counted import counted
from calibrator.desk.mix.history_model import HistoryRow
from calibrator.desk.mix_history import Counted, Kept
from calibrator.desk.mix_words import kept_words, mass, number, powder_verdict_words
from calibrator.desk.speech import day_text
from calibrator.desk.trust_words import moment
from calibrator.model import MixCheck, Plan, UnitSystem
from calibrator.science.check_season import Mean, off_share

if TYPE_CHECKING:
    from calibrator.desk.mix.check_plot import CheckPoint, CountPoint

translate = QCoreApplication.translate
_DAY_S = 86_400.0


def batch_words(check: MixCheck, plans: Sequence[Plan]) -> str:
    """Whose batch was checked, for how many calves: that it was of all groups only where the plan has several."""
    group = check.group_name
    if not group and (found := batch_checked(check, plans)) and found[1] is None and len(found[0].groups) > 1:
        group = translate("History", "all together")
    if not group:
        return counted.calves(check.calves) if check.calves else "–"
    return f"{group} {check.calves or ''}".strip()


def check_row(one: Kept, plans: Sequence[Plan]) -> HistoryRow:
    """A check in the table."""
    check = one.check
    return HistoryRow(
        check_id=check.id,
        day=moment(check.at),
        lot=one.lot.lot_number,
        batch=batch_words(check, plans),
        feeder=check.feeder or "–",
        solids="–" if check.solids_share is None else shown.share(check.solids_share),
        wanted=shown.share(check.target_share),
        verdict=kept_words(check),
    )


def count_row(one: Counted, system: UnitSystem) -> HistoryRow:
    """A count of bags in the table: the powder that a feeding got."""
    count, found = one.count, one.result
    batch = translate("History", "bags {bags}")
    return HistoryRow(
        check_id=count.id,
        day=day_text(count.at.astimezone().date()),
        lot=one.lot.lot_number,
        batch=batch.format(bags=count.bags_typed or number(count.bags)),
        feeder="–",
        solids=mass(found.mean_g, system) if found else "–",
        wanted=mass(count.target_mass_g, system),
        verdict=powder_verdict_words(found.verdict) if found else "–",
    )


def check_words(one: Kept) -> str:
    """A check in a sentence."""
    told, check = check_row(one, ()), one.check  # whose batch it was stands in the table alone
    which = translate("History", "{day}, lot {lot}").format(day=told.day, lot=told.lot)
    if check.feeder:
        which = translate("History", "{which}, {feeder}").format(which=which, feeder=check.feeder)
    if check.solids_share is None:
        return translate("History", "{which}: no solids read, wanted {wanted}.").format(which=which, wanted=told.wanted)
    text = translate("History", "{which}: {solids} solids, wanted {wanted}. {verdict}.")
    return text.format(which=which, solids=told.solids, wanted=told.wanted, verdict=told.verdict)


def count_words(one: Counted, system: UnitSystem) -> str:
    """A count of bags in a sentence."""
    told = count_row(one, system)
    text = translate(
        "History", "{since} to {day}, lot {lot}, {batch}, {feedings}: {powder} each, wanted {wanted}. {verdict}."
    )
    return text.format(
        since=day_text(one.count.since), day=told.day, lot=told.lot, batch=told.batch, powder=told.solids,
        feedings=counted.feedings(one.count.feedings), wanted=told.wanted, verdict=told.verdict,
    )  # fmt: skip


def check_point(one: Kept) -> CheckPoint | None:
    """A check on the chart; None where it tells no solids."""
    from calibrator.desk.mix.check_plot import CheckPoint

    check, watched = one.check, one.watched
    if watched is None:
        return None
    target = check.target_share
    return CheckPoint(
        key=check.id,
        lot_id=one.lot.id,
        on=day_number(check.at),
        off_pct=100 * watched.point.off_share,
        low_pct=100 * off_share(check.solids_low or 0.0, target),
        high_pct=100 * off_share(check.solids_high or 0.0, target),
        running_pct=100 * watched.running,
        limit_low_pct=100 * watched.low,
        limit_high_pct=100 * watched.high,
        verdict=check.verdict,
        words=check_words(one),
    )


def count_point(one: Counted, system: UnitSystem) -> CountPoint | None:
    """A count of bags on the chart; None where it came to nothing."""
    from calibrator.desk.mix.check_plot import CountPoint

    count, found = one.count, one.result
    if found is None:
        return None
    return CountPoint(
        key=count.id,
        since=float(count.since.toordinal()),
        on=day_number(count.at),
        off_pct=100 * found.share,
        low_pct=100 * off_share(found.low_g, count.target_mass_g),
        high_pct=100 * off_share(found.high_g, count.target_mass_g),
        verdict=found.verdict,
        words=count_words(one, system),
    )


def feeders_words(apart: dict[str, Mean]) -> str:
    """Who mixes how far off on average; blank where there are not two to compare."""
    if not apart:
        return ""
    one = translate("History", "{feeder} {share} (give or take {half}, {checks})")
    pieces = [
        one.format(
            feeder=name,
            share=signed(mean.share),
            half=shown.share(mean.half),
            checks=counted.checks(mean.count),
        )
        for name, mean in apart.items()
    ]
    told = [translate("History", "On average off target: {feeders}.").format(feeders="; ".join(pieces))]
    strong = ", ".join(name for name, mean in apart.items() if mean.sure and mean.share > 0)
    thin = ", ".join(name for name, mean in apart.items() if mean.sure and mean.share < 0)
    if strong:
        told.append(translate("History", "Mixed too strong by {who}: mix a batch together.").format(who=strong))
    if thin:
        told.append(translate("History", "Mixed too thin by {who}: mix a batch together.").format(who=thin))
    return " ".join(told)


def again_words(shown: Sequence[Kept]) -> str:
    """That checks which read a batch once more are no mixes of their own; blank where none is shown."""
    put_right = sum(one.put_right for one in shown)
    surer = sum(bool(one.told_by) for one in shown) - put_right
    told = []
    if surer:
        text = translate("History", "Read again with nothing added: {count}. Of such a batch the last reading counts.")
        told.append(text.format(count=surer))
    if put_right:
        text = translate(
            "History",
            "Read again after it was put right: {count}. Such a check counts neither in the running mean nor for "
            "who mixed.",
        )
        told.append(text.format(count=put_right))
    return " ".join(told)


def signed(share: float) -> str:
    """A share off the target with its sign."""
    return shown.signed_share(share)


def day_number(at: datetime) -> float:
    """A moment as a day's number with its fraction, on the clock of this computer."""
    here = at.astimezone()
    return date.toordinal(here) + (here.hour * 3600 + here.minute * 60) / _DAY_S
