"""Which lines a label that is printed now has without a touch. No window needed."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from calibrator.desk.hung import labels_of
from calibrator.desk.label_lines import LineOffer, labelled, line_offers, weights_in_use
from calibrator.desk.label_news import first_label_g, label_news
from calibrator.desk.standing import LotStanding, Standing
from calibrator.model import LabelledLine, Printed
from calibrator.prints.label_facts import LineUse, same_weight
from calibrator.science.errors import CannotCompute
from calibrator.science.mixing import Powder, powder_from


def asked_offers(
    now: Standing, known: LotStanding, scoop_id: str, offers: Sequence[LineOffer], powder: Powder
) -> tuple[LineOffer, ...]:
    """The lines that the label of a scoop can bear, with why each may be wanted, and filled as on the label before."""
    fed = now.in_use is not None and now.in_use.lot.id == known.lot.id
    every = label_news(now) if fed else ()
    news = [offer.target_g for each in every if each.scoop.id == scoop_id for offer in each.offers]
    before = last_label(now, known, scoop_id)
    if before is None or before.lot_id != known.lot.id:
        then = () if before is None else now.labelled.get(before.id, now.plans)
        news += first_label_g(now, known, powder, scoop_id, then)
        by_hand = (told.lines for told in known.lot.scoops_marked or () if told.scoop_id == scoop_id and told.lines)
        lines = next(by_hand, before.lines if before else None)
    else:
        lines = before.lines
    return tuple(_asked(offer, news, lines or ()) for offer in offers)


def lines_unasked(now: Standing, known: LotStanding, scoop_id: str) -> tuple[LabelledLine, ...]:
    """The lines that the next label of a scoop has unless somebody chooses otherwise, its main one among them; none for
    a scoop of which there is no sign-off."""
    scoop = next((one for one in now.scoops if one.id == scoop_id), None)
    marks = [mark for mark in known.marks if mark.scoop_id == scoop_id]
    signed = next((one for one in now.sign_offs if marks and one.id == marks[-1].sign_off_id), None)
    if scoop is None or signed is None:
        return ()
    try:
        powder = powder_from(known.lot.composition)
    except CannotCompute:
        return ()
    main_g = max(mark.target_mass_g for mark in marks)
    weights = tuple(weights_in_use(now.plans, powder, now.today))
    offers = asked_offers(now, known, scoop_id, line_offers(scoop, signed, marks, main_g, weights), powder)
    asked = [offer for offer in offers if offer.unasked]
    halved = any(offer.counted and offer.counted.to_half for offer in asked)
    halves = [offer for offer in offers if halved and offer.use is LineUse.HALF and offer not in asked]
    return tuple(labelled(offer.line) for offer in (*asked, *halves) if offer.counted is None)


def last_label(now: Standing, known: LotStanding, scoop_id: str) -> Printed | None:
    """The label that one printed now for a lot follows: the newest of the lot for the scoop, else of any lot."""
    every = list(labels_of(now, scoop_id))
    return next((sheet for sheet in every if sheet.lot_id == known.lot.id), next(iter(every), None))


def _asked(offer: LineOffer, news: Sequence[float], told: Sequence[LabelledLine]) -> LineOffer:
    before = next((line for line in told if same_weight(line.target_mass_g, offer.target_g)), None)
    if before is not None:
        offer = offer.filled((before.full_scoops, before.to_line, before.down_wall_mm is None))
    since = any(same_weight(offer.target_g, mass_g) for mass_g in news)
    return replace(offer, planned_since=since, on_last_label=before is not None)
