"""The season's findings in words: what happened, and what to do."""

from __future__ import annotations

from datetime import date

from PySide6.QtCore import QCoreApplication, QDate, QLocale

from calibrator.desk import shown
from calibrator.desk.counted import counted
from calibrator.desk.in_use import LotState
from calibrator.desk.mix_history import Counted
from calibrator.desk.money import price_text
from calibrator.desk.season.facts import Meaning
from calibrator.desk.speech import day_text, decimal_comma
from calibrator.desk.words import state_words
from calibrator.model import Farm, LotPoint, SeasonLot, UnitSystem
from calibrator.science.carried_over import Wanting
from calibrator.science.lot_chart import Rule
from calibrator.science.season_findings import Finding, HumidSpell, NewPowder, NewScoop, OutOfLine
from calibrator.units import show_mass, show_percent, with_sign
from calibrator.values import dataclass

translate = QCoreApplication.translate

SHOWN_STATES = (LotState.IN_USE, LotState.WAITING)
"""What is said of a lot in the picture itself; the others are over."""


def named_with_state(lot: SeasonLot, state: LotState | None) -> str:
    """A lot by its number, and that it is fed or waits."""
    return f"{lot.lot_number}, {state_words(state)}" if state in SHOWN_STATES else lot.lot_number


@dataclass(frozen=True)
class Said:
    """One finding as it is read: the month, what happened, what to do."""

    when: str
    what: str
    do: str

    @property
    def text(self) -> str:
        return f"{self.when}: {self.what} {self.do}".strip()


def month_text(day: date) -> str:
    """A month with its year, in the language of the screen."""
    return QLocale().toString(QDate(day.year, day.month, day.day), "MMMM yyyy")


def density_text(lot: SeasonLot | LotPoint, system: UnitSystem) -> str:
    """A lot's density with its unit, to the place that its interval leaves it, as on every other page."""
    return shown.density(lot.density_g_per_ml, system, lot.density_half_width_g_per_ml, interval=False, brief=True)


def interval_text(lot: SeasonLot | LotPoint, system: UnitSystem) -> str:
    """Both ends of a lot's density to the same place, the unit left out."""
    ends, half = (lot.density_low_g_per_ml, lot.density_high_g_per_ml), lot.density_half_width_g_per_ml
    told = [shown.density(end, system, half, interval=False, unit=False) for end in ends]
    return translate("Season", "{low} – {high}").format(low=told[0], high=told[1])


def mass_text(mass_g: float, system: UnitSystem) -> str:
    """A weight with its unit."""
    return show_mass(mass_g, system, decimal_comma=decimal_comma())


def money_text(amount: float, farm: Farm) -> str:
    """An amount of money, its sign left out."""
    return price_text(abs(amount), farm.currency, decimal_comma=decimal_comma())


def signed_money_text(amount: float, farm: Farm) -> str:
    """An amount of money with its sign."""
    return with_sign(money_text(amount, farm), amount)


def said(finding: Finding) -> Said:
    """A finding in words."""
    match finding:
        case NewPowder():
            return _new_powder(finding)
        case NewScoop():
            return _new_scoop(finding)
        case HumidSpell():
            return _humid(finding)
        case OutOfLine():
            return _out_of_line(finding)


def between_text(low: float, high: float) -> str:
    """Both ends of a share that has one sign, the sign left out."""
    low, high = sorted((abs(low), abs(high)))
    return translate("Season", "between {low} and {high}").format(low=shown.share(low), high=shown.share(high))


def _new_powder(found: NewPowder) -> Said:
    number = found.at.lot_number
    if found.agglomerated:
        what = translate("Season", "agglomerated powder came for the first time, with lot {lot}.")
    elif found.before.agglomerated is True and found.after.agglomerated is False:
        what = translate("Season", "powder that is not agglomerated came, with lot {lot}.")
    else:
        what = translate("Season", "another product came, “{product}”, with lot {lot}.")
    what = what.format(lot=number, product=found.at.product or "–")
    if found.step is None:
        how = translate("Season", "One lot of each does not tell yet how far they differ.")
    elif not found.step.seen:
        how = translate("Season", "Its density cannot be told from that of the lots before.")
    else:
        lighter = translate("Season", "A level scoop of it weighs {share} less than before ({between}).")
        heavier = translate("Season", "A level scoop of it weighs {share} more than before ({between}).")
        how = (lighter if found.step.share < 0 else heavier).format(
            share=shown.unsigned_share(found.step.share), between=between_text(found.step.low, found.step.high)
        )
    do = translate("Season", "Old lines do not hold for it: weigh each lot in.")
    return Said(month_text(found.at.weighed_on), f"{what} {how}", do)


def _new_scoop(found: NewScoop) -> Said:
    what = translate("Season", "scoop “{new}” took the place of “{old}”, from lot {lot} on.").format(
        new=found.at.scoop_name, old=found.last.scoop_name, lot=found.at.lot_number
    )
    sure = translate("Season", "Densities are known to ± {after} since, before to ± {before}.").format(
        after=shown.share(found.reach_after), before=shown.share(found.reach_before)
    )
    if found.step is not None and found.step.seen:
        do = translate(
            "Season",
            "Densities stepped by {share} with it: one of the two volumes may be wrong. Weigh water in the new "
            "scoop. The fill mark holds all the same, for the volume cancels in it.",
        ).format(share=shown.signed_share(found.step.share))
    else:
        do = translate("Season", "Density shows no step with it: both volumes agree.")
        if found.step is None:
            do = translate("Season", "Whether densities stepped with it cannot be told yet.")
    return Said(month_text(found.at.weighed_on), f"{what} {sure}", do)


def _humid(found: HumidSpell) -> Said:
    lots = ", ".join(lot.lot_number for lot in found.lots[:4]) + (" …" if len(found.lots) > 4 else "")
    what = translate("Season", "humid air at the weigh-in, {humidity} (usually {usual}), lots {lots}.").format(
        humidity=_points(found.humidity_pct), usual=_points(found.usual_pct), lots=lots
    )
    told = [what]
    if found.step is not None and found.step.seen:
        lighter = translate("Season", "They weigh {share} less than the other lots ({between}).")
        heavier = translate("Season", "They weigh {share} more than the other lots ({between}).")
        told.append(
            (lighter if found.step.share < 0 else heavier).format(
                share=shown.unsigned_share(found.step.share), between=between_text(found.step.low, found.step.high)
            )
        )
    else:
        told.append(translate("Season", "Their density cannot be told from that of the other lots."))
    if found.scatters_more:
        told.append(
            translate("Season", "Scoopfuls scattered by {now} in place of {usual}.").format(
                now=shown.share(found.scatter.sd_share),
                usual=shown.share(found.usual_scatter.sd_share),
            )
        )
    do = translate(
        "Season",
        "Keep bags closed, stir clinging powder up; weigh, never correct by humidity.",
    )
    return Said(month_text(found.at.weighed_on), " ".join(told), do)


def _points(percent: float) -> str:
    return show_percent(percent, 0, decimal_comma=decimal_comma())


def _out_of_line(found: OutOfLine) -> Said:
    what = translate("Season", "lot {lot} is {off} off the average of this powder.").format(
        lot=found.at.lot_number, off=shown.signed_share(found.off)
    )
    return Said(
        month_text(found.at.weighed_on),
        f"{what} {' '.join(rule_words(rule) for rule in found.rules)}",
        translate("Season", "Weigh a scoopful from two more of its bags before the line is trusted."),
    )


def rule_words(rule: Rule) -> str:
    """Why the chart marks a lot."""
    return {
        Rule.BEYOND: translate("Season", "It lies outside its limits."),
        Rule.STEP: translate("Season", "It is farther from the lot before than lots are from each other."),
        Rule.RUN: translate("Season", "With it eight lots in a row lie on one side of the middle."),
        Rule.DRIFT: translate("Season", "The running mean has left its limits: density has been creeping."),
    }[rule]


def change_words(before: SeasonLot, last: SeasonLot, share: float) -> str:
    """How a lot stands to the one before, by a level scoop."""
    if shown.unsigned_share(share) == shown.unsigned_share(0.0):
        text = translate("Season", "A level scoop of lot {last} weighs as much as one of lot {before}.")
    elif share > 0:
        text = translate("Season", "A level scoop of lot {last} weighs {share} more than one of lot {before}.")
    else:
        text = translate("Season", "A level scoop of lot {last} weighs {share} less than one of lot {before}.")
    return text.format(share=shown.unsigned_share(share), last=last.lot_number, before=before.lot_number)


def meaning_words(meaning: Meaning, farm: Farm) -> str:
    """What a lot does to a feeding by the line of the lot before: powder, solids, money."""
    carried, system = meaning.carried, farm.units
    target = mass_text(carried.target_g, system)
    as_wanted = mass_text(carried.mass_g, system) == target
    mass, low, high = shown.mass_between(carried.mass_g, carried.low_g, carried.high_g, system)
    other = translate(
        "Season",
        "With the line of lot {before} a feeding would weigh {mass} in place of {target} (between {low} and {high}).",
    )
    same = translate(
        "Season", "With the line of lot {before} a feeding would weigh {mass}, as wanted (between {low} and {high})."
    )
    if meaning.before.struck_level:
        other = translate(
            "Season",
            "Used level, as with lot {before}, a feeding would weigh {mass} in place of {target} (between {low} and "
            "{high}).",
        )
        same = translate(
            "Season",
            "Used level, as with lot {before}, a feeding would weigh {mass}, as wanted (between {low} and {high}).",
        )
    told = [
        (same if as_wanted else other).format(
            before=meaning.before.lot_number, mass=mass, target=target, low=low, high=high
        )
    ]
    if as_wanted:  # nor would anybody see it in solids or money
        return told[0]
    if meaning.solids is not None and meaning.target_solids is not None:
        text = translate("Season", "Solids would be {solids} in place of {target}.")
        told.append(text.format(solids=shown.share(meaning.solids), target=shown.share(meaning.target_solids)))
    if meaning.money_a_day is not None:
        more = translate("Season", "That is {money} more powder a day.")
        less = translate("Season", "That is {money} less powder a day, missing from the calves.")
        text = more if meaning.money_a_day >= 0 else less
        told.append(text.format(money=money_text(meaning.money_a_day, farm)))
    return " ".join([*told, wanting_words(meaning)]).strip()


def bags_off_words(found: Counted, farm: Farm) -> str:
    """What a feeding really got where the count of bags is surely off; blank where it came to nothing."""
    if found.result is None:
        return ""
    text = translate(
        "Season", "By its counted bags a feeding of lot {lot} got {mass}, {share} from the target ({since} to {until})."
    )
    return text.format(
        lot=found.lot.lot_number,
        mass=mass_text(found.result.mean_g, farm.units),
        share=shown.signed_share(found.result.share),
        since=day_text(found.count.since),
        until=day_text(found.at.astimezone().date()),
    )


def wanting_words(meaning: Meaning) -> str:
    """What has to be entered before solids and money are told; blank where all of it is."""
    texts = {
        Wanting.PLAN: translate("Season", "Solids and money are not told: no feeding plan is entered."),
        Wanting.PRICE: translate("Season", "Money is not told: the lot's price is not entered."),
        Wanting.PACKAGE: translate("Season", "Money is not told: the weight of the lot's bags is not entered."),
    }
    return " ".join(texts[what] for what in meaning.wanting)


def lot_words(
    lot: SeasonLot | LotPoint,
    scoop: str,
    day: date | None,
    system: UnitSystem,
    rules: tuple[Rule, ...],
    state: LotState | None = None,
) -> str:
    """A lot as the picture tells it."""
    text = translate("Season", "Lot {lot}, {scoop}, {day}: {density}, 95 % interval {interval}")
    told = text.format(
        lot=lot.lot_number,
        scoop=scoop,
        day=day_text(day),
        density=density_text(lot, system),
        interval=interval_text(lot, system),
    )
    parts = [f"{told}.", *(rule_words(rule) for rule in rules)]
    if not lot.signed_off:
        parts.insert(1, translate("Season", "Out of a file, not signed off."))
    elif state in SHOWN_STATES:
        fed, waits = translate("Season", "It is fed now."), translate("Season", "It waits and is not fed yet.")
        parts.insert(1, fed if state is LotState.IN_USE else waits)
    return " ".join(parts)


def weighed_words(lot: SeasonLot) -> str:
    """Of how many bags it is the mean, and of how many fills these are."""
    text = translate("Season", "{bags}, {fills}")
    if not lot.signed_off:
        text = translate("Season", "{bags}, {fills}, out of a file")
    return text.format(fills=counted.fills(lot.fills), bags=counted.bags(lot.bags))
