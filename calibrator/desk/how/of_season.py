"""How a season's figures came about: a lot on the chart, what the old line would have delivered, its bags."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from calibrator.desk import shown
from calibrator.desk.counted import counted
from calibrator.desk.how import amounts
from calibrator.desk.how.working import (
    GUM,
    Part,
    Working,
    degrees,
    figure,
    interval,
    translate,
)
from calibrator.desk.season.facts import Meaning
from calibrator.desk.season.words import money_text, rule_words, signed_money_text, weighed_words
from calibrator.model import Farm, SeasonLot, UnitSystem
from calibrator.science.carried_over import settling_as_before
from calibrator.science.charts import LIMIT_SD, newest_weight
from calibrator.science.lot_chart import Charted, LotChart
from calibrator.science.lot_kinds import weighing_u_share
from calibrator.science.within_lot import Inside, InsideLot

MONTGOMERY = "Montgomery, Introduction to Statistical Quality Control, 6.4"
EWMA = "NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.4"


def of_lot(lots: tuple[SeasonLot, ...], chart: LotChart, place: int, system: UnitSystem) -> tuple[Working, ...]:
    """A lot's density with its interval, then its limits and the running mean."""
    lot, charted = lots[place], chart.lots[place]
    own = [one for one in chart.lots[: place + 1] if one.kind == charted.kind]
    return _density(lot, system), _on_chart(lot, own, chart.lot_sd, system)


def _density(lot: SeasonLot, system: UnitSystem) -> Working:
    parts = (
        Part(
            translate("How", "Level scoopful"),
            translate("How", "mean of the bags, from {weighed}; standard uncertainty {u}").format(
                weighed=weighed_words(lot), u=amounts.mass(lot.level_u_g, system, 2)
            ),
            amounts.mass(lot.level_mean_g, system),
        ),
        Part(
            translate("How", "Bulk density"),
            translate("How", "level scoopful ÷ volume of the scoop to its rim"),
            amounts.density(lot.density_g_per_ml, system),
        ),
        Part(
            translate("How", "95 % interval"),
            translate("How", "from the doubts in the scoopful ({degrees} degrees of freedom) and in the volume").format(
                degrees=degrees(lot.degrees_of_freedom)
            ),
            amounts.densities(lot.density_low_g_per_ml, lot.density_high_g_per_ml, system),
        ),
    )
    title = translate("How", "Density of lot {lot}").format(lot=lot.lot_number)
    words = translate("How", "As it was signed off. The bars of the picture are the intervals.")
    return Working(title, parts, (f"{GUM}, 5.1.2, G.4",), words)


def _on_chart(lot: SeasonLot, own: Sequence[Charted], lot_sd: float | None, system: UnitSystem) -> Working:
    """`own` are the lots of its kind up to it."""
    charted = own[-1]
    words = translate(
        "How",
        "Lots of one product are held against their own middle. A lot beyond its limits is farther off than lots "
        "and weighing explain; the running mean finds what creeps.",
    )
    parts = (
        Part(
            translate("How", "Middle of its kind"),
            translate("How", "mean of the logarithms of the densities of this product's lots"),
            amounts.density(charted.middle_g_per_ml, system),
        ),
        Part(
            translate("How", "Off the middle"),
            translate("How", "logarithm of density ÷ middle: {density} ÷ {middle}").format(
                density=amounts.bare_density(lot.density_g_per_ml, system),
                middle=amounts.bare_density(charted.middle_g_per_ml, system),
            ),
            shown.signed_share(charted.off, 2),
        ),
        *_limits(lot, charted, lot_sd),
        *_running(own),
        *(Part(translate("How", "Marked"), rule_words(rule), "◆") for rule in charted.rules),
    )
    return Working(translate("How", "Limits and running mean"), parts, (MONTGOMERY, EWMA), words)


def _limits(lot: SeasonLot, charted: Charted, lot_sd: float | None) -> Iterator[Part]:
    if charted.reach is None or lot_sd is None:
        return
    working = translate(
        "How", "{width} × √(spread between lots² + doubt of weighing²): {width} × √({between}² + {own}²)"
    )
    told = working.format(
        width=figure(LIMIT_SD, 0), between=shown.share(lot_sd, 2), own=shown.share(weighing_u_share(lot), 2)
    )
    yield Part(translate("How", "Limits"), told, f"± {shown.share(charted.reach, 2)}")


def _running(own: Sequence[Charted]) -> Iterator[Part]:
    charted, new = own[-1], newest_weight(len(own))
    told = translate("How", "the lot itself: it is the first of its kind")
    if len(own) > 1:
        working = translate("How", "{new} × this lot + {old} × the running mean before: {off}, {before}")
        told = working.format(
            new=figure(new, 3),
            old=figure(1 - new, 3),
            off=shown.signed_share(charted.off, 2),
            before=shown.signed_share(own[-2].running, 2),
        )
    yield Part(translate("How", "Running mean"), told, shown.signed_share(charted.running, 2))
    if charted.running_reach is not None:
        spread = translate("How", "from the same spreads, each weighted as it counts in it")
        yield Part(translate("How", "Limits of the running mean"), spread, f"± {shown.share(charted.running_reach, 2)}")


def of_meaning(lot: SeasonLot, meaning: Meaning, farm: Farm) -> Working:
    """What the line of the lot before would have delivered: powder, solids, money."""
    carried = meaning.carried
    parts = (
        _filled_as_before(lot, meaning, farm.units),
        Part(
            translate("How", "Against the target"),
            f"{amounts.mass(carried.mass_g, farm.units)} ÷ {amounts.mass(carried.target_g, farm.units)} − 1",
            shown.signed_share(carried.share),
        ),
        Part(
            translate("How", "95 % interval"),
            translate("How", "as at the weigh-in, by the spread of bags and fills")
            if carried.fills
            else translate("How", "from the doubts in the level scoopful and in the settling"),
            amounts.masses(carried.low_g, carried.high_g, farm.units),
        ),
        *_solids(meaning, farm.units),
        *_money(lot, meaning, farm),
    )
    title = translate("How", "With the line of lot {lot}")
    words = translate("How", "What a feeding would have weighed, had the scoop kept the line of the lot before.")
    if meaning.before.struck_level:
        title = translate("How", "Used level, as with lot {lot}")
        words = translate("How", "What a feeding would have weighed, had the scoop gone on being used level.")
    return Working(title.format(lot=meaning.before.lot_number), parts, (f"{GUM}, 5.1.2",), words)


def _filled_as_before(lot: SeasonLot, meaning: Meaning, system: UnitSystem) -> Part:
    before, told = meaning.before, amounts.mass(meaning.carried.mass_g, system)
    level, scoops = amounts.mass(lot.level_mean_g, system), before.full_scoops or 0
    if before.struck_level:
        return Part(translate("How", "A feeding, used level"), f"{scoops + 1} × {level}", told)
    title = translate("How", "A feeding to the old line")
    if meaning.carried.fills:
        return Part(title, _weighed_to_it(meaning, level), told)
    text = translate(
        "How", "level scoopful × share of the volume below the line × settling: {level}, {line}, {settling}"
    )
    working = text.format(
        level=level,
        line=amounts.length(before.down_wall_mm or 0.0, system),
        settling=figure(settling_as_before(lot, before).factor, 3),
    )
    if scoops:
        working = translate("How", "{scoops} × {level} struck level + {rest}").format(
            scoops=scoops, level=level, rest=working
        )
    return Part(title, working, told)


def _weighed_to_it(meaning: Meaning, level: str) -> str:
    """That it was filled to that line and weighed."""
    text = translate("How", "mean of the bags, from {fills} to a line; those to another line in proportion to volume")
    working = text.format(fills=counted.fills(meaning.carried.fills))
    if not (scoops := meaning.before.full_scoops or 0):
        return working
    return translate("How", "{scoops} × {level} struck level + {rest}").format(scoops=scoops, level=level, rest=working)


def _solids(meaning: Meaning, system: UnitSystem) -> Iterator[Part]:
    carried = meaning.carried
    if meaning.solids is None or meaning.target_solids is None:
        return
    working = translate("How", "so much powder on the same water: {target} as planned, powder × {mass} ÷ {wanted}")
    told = working.format(
        target=shown.share(meaning.target_solids, 2),
        mass=amounts.mass(carried.mass_g, system),
        wanted=amounts.mass(carried.target_g, system),
    )
    yield Part(translate("How", "Solids, as mixed"), told, shown.share(meaning.solids, 2))


def _money(lot: SeasonLot, meaning: Meaning, farm: Farm) -> Iterator[Part]:
    if meaning.money_a_day is None or meaning.daily_g is None:
        return
    working = translate("How", "{share} of {daily} of powder a day × price ÷ weight of a package: {price} ÷ {package}")
    told = working.format(
        share=shown.signed_share(meaning.carried.share),
        daily=amounts.mass(meaning.daily_g, farm.units),
        price=money_text(lot.price_per_package or 0.0, farm),
        package=amounts.mass(lot.package_mass_g or 0.0, farm.units),
    )
    yield Part(translate("How", "Money a day"), told, signed_money_text(meaning.money_a_day, farm))


def of_inside(lot: SeasonLot, found: InsideLot, system: UnitSystem) -> Working:
    """The bags of one lot: limits, running mean, and what is told of them."""
    new = newest_weight(len(found.running_g))
    parts = (
        Part(
            translate("How", "Mean"),
            translate("How", "the level scoopful as it was signed off"),
            amounts.mass(found.centre_g, system),
        ),
        Part(
            translate("How", "Limits of the first bag"),
            translate(
                "How",
                "Student's t for {degrees} degrees of freedom × √(spread between bags² + spread between fills² ÷ "
                "scoopfuls), spreads {bags} and {fills}",
            ).format(
                degrees=degrees(lot.degrees_of_freedom),
                bags=shown.share(lot.bag_sd_share, 2),
                fills=shown.share(lot.fill_sd_share, 2),
            ),
            amounts.masses(found.low_g[0], found.high_g[0], system),
        ),
        Part(
            translate("How", "Running mean now"),
            translate("How", "{new} × this bag + {old} × the running mean before").format(
                new=figure(new, 3), old=figure(1 - new, 3)
            ),
            amounts.mass(found.running_g[-1], system),
        ),
        *_told_inside(found),
    )
    words = translate(
        "How",
        "Each bag is held against the mean of the weigh-in, by how bags and fills differed there and in earlier lots "
        "where there are any. The limits are for one bag at 99.7 %, not the 95 % of the intervals: of bags as alike as "
        "those, 3 in 1,000 lie outside by chance. {bags} so far.",
    )
    title = translate("How", "Bags of lot {lot}").format(lot=lot.lot_number)
    return Working(title, parts, (EWMA, f"{GUM}, G.3"), words.format(bags=counted.bags(len(found.running_g))))


def _told_inside(found: InsideLot) -> Iterator[Part]:
    what = {
        Inside.JUMP: (
            translate("How", "Jump"),
            translate("How", "mean of the bags after ÷ mean before − 1; chance of it by chance alone: {p}"),
        ),
        Inside.DRIFT: (
            translate("How", "Drift"),
            translate("How", "slope by least squares × bags; chance of it by chance alone: {p}"),
        ),
        Inside.ONE_OFF: (translate("How", "One bag off"), translate("How", "that bag ÷ mean − 1")),
    }.get(found.told)
    if what is None:
        return
    caption, working = what
    ends = interval(shown.signed_share(found.low_share), shown.signed_share(found.high_share))
    yield Part(caption, working.format(p=shown.share(found.p)), f"{shown.signed_share(found.share)} ({ends})")
