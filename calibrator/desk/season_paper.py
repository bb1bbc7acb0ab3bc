"""From the records to the season report. No window needed."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date
from itertools import islice

from calibrator.desk.mix_history import Kept, kept_checks, mixed
from calibrator.desk.needs import OFF, RIGHT, leans
from calibrator.desk.season.facts import Meaning, SeasonFacts
from calibrator.model import Farm, Mark, SeasonLot
from calibrator.prints.label_facts import same_weight
from calibrator.prints.season_facts import (
    MOST_CARRIED,
    MOST_COUNTED,
    BagsCounted,
    Carried,
    LastChange,
    LineMoved,
    MixChecks,
    SeasonReport,
    SpotFilled,
)
from calibrator.records import Records
from calibrator.records.season import every_mark
from calibrator.science.check_season import LEAST_BASELINE, off_share
from calibrator.science.lot_kinds import change_share, last_two
from calibrator.science.scoop import same_line
from calibrator.science.season_spread import SpreadFindings
from calibrator.science.stats import mean_of


def season_report_facts(records: Records, farm: Farm, on: date, languages: tuple[str, ...]) -> SeasonReport | None:
    """The farm's season; None where nothing is signed off yet."""
    facts = SeasonFacts(records, farm, on)
    if not facts.lots:
        return None
    spread = facts.spread
    return SeasonReport(
        farm_name=farm.name, season=facts.season, spread=spread if isinstance(spread, SpreadFindings) else None,
        checks=_checks(records, farm), tolerance_share=farm.tolerance_share, change=_change(facts),
        carried=_carried(facts), counted=_counted(facts), spot_fills=sum(map(len, facts.spots.values())),
        spotted=_spotted(facts), moved=_moved(records, facts), fed=facts.fed, currency=farm.currency, printed_on=on,
        units=farm.units, paper=farm.paper, languages=languages,
    )  # fmt: skip


def _change(facts: SeasonFacts) -> LastChange | None:
    pair = last_two(facts.lots)
    if pair is None:
        return None
    before, last = pair
    return LastChange(
        lot_number=last.lot_number, before=before.lot_number, share=change_share(before, last),
        taken_off_g=_taken_off_g(facts, last), before_taken_off_g=_taken_off_g(facts, before),
        line_mm=last.down_wall_mm, before_line_mm=before.down_wall_mm,
    )  # fmt: skip


def _taken_off_g(facts: SeasonFacts, lot: SeasonLot) -> float:
    level = facts.level_result(lot)
    return level.taken_off_g if level is not None else 0.0


def _counted(facts: SeasonFacts) -> tuple[BagsCounted, ...]:
    newest = sorted(facts.bags_counted.values(), key=lambda one: one.at)
    told = [
        BagsCounted(one.lot.lot_number, one.result.mean_g, one.result.share, one.count.feedings)
        for one in newest
        if one.result is not None
    ]
    return tuple(told[-MOST_COUNTED:])


def _spotted(facts: SeasonFacts) -> tuple[SpotFilled, ...]:
    judged = ((lot, facts.mark_now(lot)) for lot in reversed(facts.lots))
    told = (SpotFilled(lot.lot_number, now.spots, now.delivers_g, now.judged.share, now.verdict)
            for lot, now in judged if now is not None)  # fmt: skip
    return tuple(reversed(list(islice(told, MOST_COUNTED))))


def _moved(records: Records, facts: SeasonFacts) -> tuple[LineMoved, ...]:
    """The newest lots that were weighed in anew with the same scoop for the same feeding, and got another line."""
    marks: dict[tuple[str, str], list[Mark]] = {}
    for mark in every_mark(records, facts.farm.id):
        marks.setdefault((mark.lot_id, mark.scoop_id), []).append(mark)
    told = []
    for lot in facts.lots:
        if lot.down_wall_mm is None or lot.target_mass_g is None:
            continue
        before_mm = [
            mark.down_wall_mm
            for mark in marks.get((lot.lot_id, lot.scoop_id), ())
            if mark.sign_off_id != lot.sign_off_id and same_weight(mark.target_mass_g, lot.target_mass_g)
        ]
        if before_mm and not same_line(before_mm[-1], lot.down_wall_mm):
            told.append(LineMoved(lot.lot_number, lot.weighed_on, before_mm[-1], lot.down_wall_mm))
    return tuple(told[-MOST_COUNTED:])


def _carried(facts: SeasonFacts) -> tuple[Carried, ...]:
    newest_first = ((facts.lots[place], facts.meaning(place)) for place in reversed(range(len(facts.lots))))
    found = (_carried_by(lot, told) for lot, told in newest_first if told is not None)
    return tuple(reversed(list(islice(found, MOST_CARRIED))))


def _carried_by(lot: SeasonLot, told: Meaning) -> Carried:
    own, names = told.carried, (lot.lot_number, told.before.lot_number)
    figures = (own.mass_g, own.low_g, own.high_g, own.share)
    return Carried(*names, *figures, told.solids, told.money_a_day, told.before.struck_level, told.wanting)


def _checks(records: Records, farm: Farm) -> MixChecks:
    kept = [one for one in kept_checks(records, farm) if one.check.solids_share is not None and one.check.verdict]
    checks = [one.check for one in mixed(kept)]
    inside, outside = (sum(check.verdict in own for check in checks) for own in ((RIGHT,), OFF))
    leaning = sum(bool(leans(check)) for check in checks)
    told = [off_share(check.solids_share or 0.0, check.target_share) for check in checks]
    off = mean_of(told) if len(told) >= LEAST_BASELINE else None  # a handful is not how a season was mixed
    return MixChecks(inside, len(checks) - inside - leaning - outside, leaning, outside, off, *_put_right(kept))


def _put_right(kept: Sequence[Kept]) -> tuple[int, int]:
    """How many batches that were off were read again once they were put right, and how many read right then."""
    last = {one.told_by: one.check for one in kept if one.put_right}
    return len(last), sum(check.verdict not in OFF and not leans(check) for check in last.values())
