"""What plans feed that a label knew nothing of when it was printed. No window needed."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from calibrator.desk.hung import hanging
from calibrator.desk.label_lines import LineOffer, line_offers, weights_in_use
from calibrator.desk.standing import LotStanding, Standing
from calibrator.model import Mark, Plan, Printed, PrintKind, Scoop, Scoopfuls, ScoopRule, SignOff
from calibrator.prints.label_facts import same_weight
from calibrator.science.errors import CannotCompute
from calibrator.science.feeding import target_missed_g
from calibrator.science.mixing import Powder, powder_from
from calibrator.values import dataclass


@dataclass(frozen=True)
class LabelNews:
    """A label that is on its scoop, and the lines that it may lack: those of feedings planned since."""

    sheet: Printed
    scoop: Scoop
    offers: tuple[LineOffer, ...]


def label_news(now: Standing) -> tuple[LabelNews, ...]:
    """The labels of the lot in use that were printed before a feeding was planned; none where no line for it can be
    read, nor where a scoop of the lot was weighed for it."""
    known = now.in_use
    if known is None:
        return ()
    try:
        powder = powder_from(known.lot.composition)
    except CannotCompute:
        return ()
    labels = [sheet for sheet in hanging(now, PrintKind.SCOOP_LABEL) if sheet.lot_id == known.lot.id]
    return tuple(news for sheet in labels if (news := _news_of(now, known, powder, sheet)))


def _news_of(now: Standing, known: LotStanding, powder: Powder, sheet: Printed) -> LabelNews | None:
    marks = [mark for mark in known.marks if mark.sign_off_id == sheet.sign_off_id]
    scoop = next((one for one in now.scoops if one.id == sheet.scoop_id), None)
    signed = next((one for one in now.sign_offs if one.id == sheet.sign_off_id), None)
    if scoop is None or signed is None or not marks or sheet.id not in now.labelled:
        return None
    planned = _planned_since(now, known, powder, now.plans, now.labelled[sheet.id])
    offers = tuple(_readable(scoop, signed, marks, planned))
    return LabelNews(sheet, scoop, offers) if offers else None


def first_label_g(
    now: Standing, known: LotStanding, powder: Powder, scoop_id: str, then: Sequence[Plan]
) -> tuple[float, ...]:
    """What the plans feed a calf, g, that the first label of a scoop for a lot has a line for unasked: nothing that a
    scoop of the lot was weighed for, that the plans of `then` fed, when its label before was printed, nor of a plan
    that is weighed or counts with another scoop."""
    plans = [plan for plan in now.plans if _counts_with(plan.scoopfuls or Scoopfuls(), scoop_id)]
    return tuple(mass_g for mass_g, _ in _planned_since(now, known, powder, plans, then))


def _counts_with(told: Scoopfuls, scoop_id: str) -> bool:
    other = told.rule is ScoopRule.ONE_KIND and told.scoop_id not in ("", scoop_id)
    return told.rule is not ScoopRule.WEIGH and not other


def _planned_since(
    now: Standing, known: LotStanding, powder: Powder, plans: Sequence[Plan], then: Sequence[Plan]
) -> tuple[tuple[float, str], ...]:
    """Weights in use that no line of the lot was signed off for, and that the plans of then did not feed either."""
    signed_g = [*(mark.target_mass_g for mark in known.marks), *known.feedings_g]
    before_g = [mass for mass, _ in weights_in_use(then, powder, now.today)]
    return tuple(
        (mass, name)
        for mass, name in weights_in_use(plans, powder, now.today)
        if target_missed_g(mass, signed_g, now.tolerance_share) and not any(same_weight(mass, g) for g in before_g)
    )


def _readable(
    scoop: Scoop, signed: SignOff, marks: Sequence[Mark], planned: Sequence[tuple[float, str]]
) -> Iterator[LineOffer]:
    if planned:
        main_g = max(mark.target_mass_g for mark in marks)
        offers = line_offers(scoop, signed, marks, main_g, planned)
        yield from (offer for offer in offers if offer.plans and offer.problem is None)
