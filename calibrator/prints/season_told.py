"""The season's findings and what follows from them, in the words of paper."""

from __future__ import annotations

from calibrator.prints import words
from calibrator.prints.fit import plain
from calibrator.prints.languages import Tongue
from calibrator.prints.season_facts import MixChecks, SeasonReport
from calibrator.science.carried_over import Wanting
from calibrator.science.lot_chart import Rule
from calibrator.science.lot_step import Step
from calibrator.science.season_findings import Finding, HumidSpell, NewPowder, NewScoop, OutOfLine
from calibrator.science.season_spread import Do
from calibrator.units import show_percent, with_sign

RULES = {
    Rule.BEYOND: words.RULE_BEYOND,
    Rule.STEP: words.RULE_STEP,
    Rule.RUN: words.RULE_RUN,
    Rule.DRIFT: words.RULE_DRIFT,
}
WANTING = {
    Wanting.PLAN: words.NO_PLAN,
    Wanting.PRICE: words.NO_PRICE,
    Wanting.PACKAGE: words.NO_PACKAGE,
}
_DO = {
    Do.MORE_BAGS: words.DO_MORE_BAGS,
    Do.MORE_FILLS: words.DO_MORE_FILLS,
    Do.AS_NOW: words.DO_AS_NOW,
    Do.PRACTISE: words.DO_PRACTISE,
    Do.PRACTISE_WITH: words.DO_PRACTISE_WITH,
    Do.CHECK_SCALE: words.DO_CHECK_SCALE,
}


def percent(share: float) -> str:
    """A share without its sign."""
    return show_percent(100 * abs(share), 1)


def signed_percent(share: float) -> str:
    """A share with its sign."""
    return with_sign(percent(share), share)


def finding_told(finding: Finding, tongue: Tongue) -> str:
    """One finding as a sentence, its day and lot first."""
    here = {"date": tongue.date(finding.at.weighed_on), "lot": plain(finding.at.lot_number)}
    match finding:
        case NewPowder():
            phrase = words.NEW_POWDER_AGGLOMERATED if finding.agglomerated else words.NEW_POWDER
            told = {"product": plain(finding.at.product) or "–", "step": _step(finding.step, tongue)}
        case NewScoop():
            phrase = words.NEW_SCOOP
            names = {"new": plain(finding.at.scoop_name), "old": plain(finding.last.scoop_name)}
            told = {**names, "step": _step(finding.step, tongue)}
        case HumidSpell():
            phrase = words.HUMID_SPELL
            air = {"humidity": show_percent(finding.humidity_pct, 0), "usual": show_percent(finding.usual_pct, 0)}
            told = {**air, "step": _step(finding.step, tongue)}
        case OutOfLine():
            phrase = words.OUT_OF_LINE
            rules = ", ".join(tongue(RULES[rule]) for rule in finding.rules)
            told = {"share": signed_percent(finding.off), "rules": rules}
    return tongue(phrase).format(**here, **told).strip()


def _step(step: Step | None, tongue: Tongue) -> str:
    if step is None or not step.seen:
        return tongue(words.STEP_NOT_SEEN)
    low, high = sorted((abs(step.low), abs(step.high)))
    phrase = words.STEP_UP if step.share > 0 else words.STEP_DOWN
    return tongue(phrase).format(share=percent(step.share), low=percent(low), high=percent(high))


def to_do(facts: SeasonReport, tongue: Tongue) -> list[str]:
    """What follows for the work, the weightiest first."""
    told = []
    if any(isinstance(finding, NewPowder) for finding in facts.season.findings):
        told.append(tongue(words.DO_NEW_KIND))
    if facts.spread is None:
        return told or [tongue(words.SPREAD_TOO_FEW)]
    told += [tongue(_DO[do]).format(who=plain(facts.spread.apart)) for do in facts.spread.do]
    if not facts.spread.lots_tell:
        told.append(tongue(words.DO_AS_WEIGH_IN))
    if (best := facts.spread.best) is not None:
        tolerance = show_percent(100 * facts.tolerance_share, 1)
        told.append(
            tongue(words.DO_BEST).format(
                tolerance=tolerance,
                bags=best.bags,
                fills=best.fills_each,
                usual_bags=round(facts.spread.usual[0]),
                usual_fills=round(facts.spread.usual[1]),
            )
        )
    return told


def checks_told(checks: MixChecks, tongue: Tongue) -> str:
    """How the checks of the mix came out."""
    if not checks.count:
        return tongue(words.CHECKS_NONE)
    told = [
        tongue(words.CHECKS_TOLD).format(
            count=checks.count, inside=checks.inside, likely=checks.likely, leaning=checks.leaning,
            outside=checks.outside,
        )
    ]  # fmt: skip
    if checks.read_again:
        told.append(tongue(words.CHECKS_AGAIN).format(count=checks.read_again, right=checks.right))
    if checks.off_share is not None:
        told.append(tongue(words.CHECKS_MEAN).format(off=signed_percent(checks.off_share)))
    return " ".join([*told, tongue(words.CHECKS_READ)])
