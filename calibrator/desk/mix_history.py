"""Kept checks and counts of bags as a history: what of them is shown, their limits, who mixes how. No window."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import replace
from datetime import datetime, timedelta

from calibrator.desk.bags_told import bag_result
from calibrator.desk.needs import OFF, leans
from calibrator.model import BagCount, Farm, Lot, MixCheck, Plan, Vessel
from calibrator.records import Records
from calibrator.science.bag_count import BagResult
from calibrator.science.check_season import Mean, Point, Watched, means_by, off_share, watch
from calibrator.science.scoopfuls import normal_u
from calibrator.science.solids import SolidsFrom
from calibrator.values import dataclass

SAME_BATCH = timedelta(hours=2)
"""A batch that read off, surely or probably, and is read again within this is taken to be the same, not mixed anew: it
is fed by then, and the next feeding is farther away. Common practice, no source."""


ANOTHER = ""
"""Kept as what a check is the same batch as, where somebody said that it is another one."""


@dataclass(frozen=True)
class Kept:
    """A kept check with its lot; `watched` is None where it tells no solids.

    `told_by` is the check that tells how its batch was mixed, blank where this one does: how somebody mixes, and what a
    lot does, only that tells. Of several readings it is the last one before anything was added: who reads again what
    is not sure does it better, stirred or with more drops, and what the feeding went by is that. Not their mean: zero,
    scale and rule are as far off in each. After one that was surely off something was added, `put_right`: what is read
    then tells nothing of the mixing any more.

    `may_reread` is the check before it that it reads again or would, had it not been said to be another batch's; blank
    where there is none.
    """

    check: MixCheck
    lot: Lot
    watched: Watched | None
    told_by: str = ""
    put_right: bool = False
    may_reread: str = ""

    @property
    def again(self) -> bool:
        """Whether it reads a batch once more."""
        return _again(self.check, self.may_reread)

    @property
    def at(self) -> datetime:
        return self.check.at


@dataclass(frozen=True)
class Counted:
    """A kept count of bags with its lot and what it came to; None where today's rules refuse it."""

    count: BagCount
    lot: Lot
    result: BagResult | None

    @property
    def at(self) -> datetime:
        return self.count.at


@dataclass(frozen=True)
class Names:
    """Names of plans and vessels by their ids."""

    plans: dict[str, str]
    vessels: dict[str, str]


def kept_checks(records: Records, farm: Farm) -> list[Kept]:
    """The checks that count, oldest first, each with the limits that held then."""
    lots = {lot.id: lot for lot in records.every(Lot, farm.id)}
    checks = sorted((c for c in records.every(MixCheck, farm.id) if c.counts and c.lot_id in lots), key=_when)
    before = _before(checks)
    told_by, put_right = _told_by(checks, before)
    told = [c for c in checks if c.solids_share is not None]
    own = [c for c in told if c.id not in told_by]
    limits = dict(zip([c.id for c in own], watch([_point(c) for c in own]), strict=True))
    limits |= {c.id: _beside(c, limits[told_by[c.id]]) for c in told if c.id in told_by}
    return [
        Kept(c, lots[c.lot_id], limits.get(c.id), told_by.get(c.id, ""), c.id in put_right, before.get(c.id, ""))
        for c in checks
    ]


def taken_to_reread(checks: Iterable[MixCheck], check: MixCheck) -> MixCheck | None:
    """The one of `checks`, in any order, that a check is taken to read again where nobody says otherwise."""
    own = (c for c in checks if _batch(c) == _batch(check) and c.id != check.id and c.at <= check.at)
    before = max(own, key=_when, default=None)
    return before if before is not None and _likely_again(check, before) else None


def _told_by(checks: Sequence[MixCheck], before: Mapping[str, str]) -> tuple[dict[str, str], set[str]]:
    """Those whose batch another check tells of, with that one; and those read after something was added. Oldest
    first."""
    known = {check.id: check for check in checks}
    first, mixed = dict[str, str](), dict[str, str]()  # a batch goes by its first check
    put_right = set[str]()
    for check in checks:
        of = before.get(check.id, "")
        if not _again(check, of):
            first[check.id], mixed[check.id] = check.id, check.id
            continue
        first[check.id] = first[of]
        if of in put_right or known[of].verdict in OFF:
            put_right.add(check.id)
        elif check.solids_share is not None:
            mixed[first[of]] = check.id
    told_by = {check_id: mixed[batch] for check_id, batch in first.items()}
    return {check_id: by for check_id, by in told_by.items() if by != check_id}, put_right


def _again(check: MixCheck, before: str) -> bool:
    return bool(before) and check.same_batch_as != ANOTHER


def _before(checks: Sequence[MixCheck]) -> dict[str, str]:
    """Those that read a batch again, or were taken to had nobody said that it is another, with the check before.

    What was said of a check holds; the time between two decides only where nobody said anything. A check that told no
    solids begins no batch: there is nothing to set the others beside. Oldest first.
    """
    last: dict[tuple[object, ...], MixCheck] = {}
    found, begun = dict[str, str](), set[str]()
    for check in checks:
        before = last.get(_batch(check))
        taken = before.id if before is not None and _likely_again(check, before) else ""
        if (of := check.same_batch_as or taken) in begun:
            found[check.id] = of
        last[_batch(check)] = check
        if check.solids_share is not None or _again(check, found.get(check.id, "")):
            begun.add(check.id)
    return found


def _batch(check: MixCheck) -> tuple[object, ...]:
    return check.lot_id, check.plan_id, check.group_name, check.calves


def _likely_again(check: MixCheck, before: MixCheck) -> bool:
    return (before.verdict in OFF or bool(leans(before))) and check.at - before.at <= SAME_BATCH


def mixed(kept: Sequence[Kept]) -> list[Kept]:
    """Each batch once, as it was mixed."""
    return [one for one in kept if not one.told_by]


def kept_counts(records: Records, farm: Farm) -> list[Counted]:
    """The counts of bags that count, oldest first."""
    lots = {lot.id: lot for lot in records.every(Lot, farm.id)}
    counts = sorted((c for c in records.every(BagCount, farm.id) if c.counts and c.lot_id in lots), key=_when)
    return [Counted(count, lots[count.lot_id], bag_result(count, farm.tolerance_share)) for count in counts]


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


def chosen_counts(counted: Sequence[Counted], lot_id: str, feeder: str) -> list[Counted]:
    """Those of one lot; a count of bags is nobody's own, so one feeder has none."""
    return [c for c in counted if lot_id in ("", c.lot.id) and not feeder]


def feeders_apart(kept: Sequence[Kept]) -> dict[str, Mean]:
    """How far the solids were off target on average, for each feeder who mixed often enough; none where fewer than two
    did."""
    known = [(k.check.feeder, k.watched.point) for k in mixed(kept) if k.watched is not None and k.check.feeder]
    found = means_by([feeder for feeder, _ in known], [point for _, point in known])
    return found if len(found) > 1 else {}


def _when(fact: MixCheck | BagCount) -> float:
    return fact.at.timestamp()


def _beside(check: MixCheck, told_by: Watched) -> Watched:
    """A dot of its own beside what was known by the check that tells of its batch."""
    return replace(told_by, point=_point(check), found=False)


def _point(check: MixCheck) -> Point:
    off = off_share(check.solids_share or 0.0, check.target_share)
    if check.way == SolidsFrom.OWN_LINE or check.solids_low is None or check.solids_high is None:
        return Point(check.lot_id, off, check.way)
    u = normal_u((check.solids_high - check.solids_low) / 2)
    return Point(check.lot_id, off, check.way, u / check.target_share)
