"""How the spread between lots, bags and fills came about, and why density moved."""

from __future__ import annotations

from collections.abc import Iterator

from calibrator.desk import shown
from calibrator.desk.counted import counted
from calibrator.desk.how.working import Part, Working, figure, interval, translate
from calibrator.desk.season.why_words import cause_words, interval_words, per_words, told_words
from calibrator.science.components import Components
from calibrator.science.season_spread import SpreadFindings
from calibrator.science.why import STEP, Cause, Effect, Told

NESTED = "Searle, Casella and McCulloch 1992, Variance Components, 5.2"
COCHRAN = "Cochran 1977, Sampling Techniques, 10.6"
LEAST_SQUARES = "NIST/SEMATECH e-Handbook of Statistical Methods, 4.1.4.1"


def of_spread(found: SpreadFindings) -> tuple[Working, ...]:
    """The three spreads, then the plan that follows from them."""
    c = found.components
    words = translate(
        "How",
        "Fills of one bag differ, bags differ by more than that, lots by more again. What is more tells the spread "
        "between them; a standard deviation each, as a share of a scoopful.",
    )
    parts = (*_fills(c), *_bags(c), *_lots(c), *_shares(c))
    spread = Working(translate("How", "Where spread comes from"), parts, (NESTED,), words)
    return (spread, *_plan(found))


def _squares(share2: float) -> str:
    """A mean square of shares, in percent squared."""
    return figure(1e4 * share2, 2, "%²")


def _fills(c: Components) -> Iterator[Part]:
    if c.fill_sd is not None:
        working = translate("How", "√(sum of squares within bags ÷ degrees of freedom): √({squares} ÷ {df})")
        told = working.format(squares=_squares(c.fills.sum_squares), df=c.fills.df)
        yield Part(translate("How", "Between fills"), told, _sd(c.fill_sd, c.fill_sd_interval))


def _bags(c: Components) -> Iterator[Part]:
    if c.bag_sd is not None:
        working = translate(
            "How", "√((mean square of bags − that of fills) ÷ fills a bag): √(({bags} − {fills}) ÷ {each})"
        )
        told = working.format(
            bags=_squares(c.bags.mean_square), fills=_squares(c.fills.mean_square), each=figure(c.fills_a_bag, 2)
        )
        yield Part(translate("How", "Between bags"), told, _sd(c.bag_sd, c.bag_sd_interval))


def _lots(c: Components) -> Iterator[Part]:
    if c.lot_sd is not None:
        working = translate(
            "How", "√((mean square of lots − what bags and fills bring) ÷ fills a lot): {lots}, {each} fills a lot"
        )
        told = working.format(lots=_squares(c.lots.mean_square), each=figure(c.fills_a_lot, 2))
        yield Part(translate("How", "Between lots"), told, _sd(c.lot_sd, c.lot_sd_interval))


def _sd(sd: float, ends: tuple[float, float] | None) -> str:
    if ends is None:
        return shown.share(sd, 2)
    return f"{shown.share(sd, 2)} ({interval(figure(100 * ends[0], 2), figure(100 * ends[1], 2))})"


def _shares(c: Components) -> Iterator[Part]:
    lots, bags, fills = (shown.share(share, 0) for share in c.shares)
    told = translate("How", "{lots} lots, {bags} bags, {fills} fills").format(lots=lots, bags=bags, fills=fills)
    yield Part(translate("How", "Of the whole"), translate("How", "each one squared ÷ all squared together"), told)


def _plan(found: SpreadFindings) -> Iterator[Working]:
    best, c = found.best, found.components
    if best is None or found.best_fills_each is None or c.bag_sd is None or c.fill_sd is None:
        return
    text = translate(
        "How", "√(work of a bag ÷ work of a fill) × spread of fills ÷ spread of bags: √2 × {fills} ÷ {bags}"
    )
    each = text.format(fills=shown.share(c.fill_sd, 2), bags=shown.share(c.bag_sd, 2))
    text = translate("How", "the whole numbers beside it with the least work, for a mean known within {share}")
    result = translate("How", "{bags}, {fills} each").format(
        bags=counted.bags(best.bags), fills=counted.fills(best.fills_each)
    )
    yield Working(
        translate("How", "The least work"),
        (
            Part(translate("How", "Fills from a bag"), each, figure(found.best_fills_each, 2)),
            Part(translate("How", "Plan"), text.format(share=shown.share(found.wanted_share)), result),
            Part(
                translate("How", "What it leaves in doubt"),
                translate("How", "√((spread of bags² + spread of fills² ÷ fills a bag) ÷ bags)"),
                f"± {shown.share(best.u, 2)}",
            ),
        ),
        (COCHRAN,),
        translate("How", "Opening one more bag is counted as twice the work of one more fill."),
    )


def of_effect(effect: Effect) -> tuple[Working, ...]:
    """Why density moved: one cause. Nothing where too few lots tell it."""
    if effect.told is Told.TOO_FEW:
        return ()
    words = translate(
        "How",
        "A line, or a step, is laid through the lots so that the squares of what is left are least; lots of one "
        "product each about their own middle. What goes together need not be the cause.",
    )
    parts = (
        Part(translate("How", "Lots that tell it"), translate("How", "those where it is entered"), str(effect.lots)),
        Part(_effect_caption(effect), _effect_working(effect), shown.signed_share(effect.share, 2)),
        Part(translate("How", "95 % interval"), _interval_working(effect), interval_words(effect)),
        Part(
            translate("How", "By chance alone"),
            translate("How", "how often so large an effect comes where there is none"),
            shown.share(effect.p),
        ),
        Part(
            translate("How", "Answer"),
            translate("How", "seen where the interval leaves nought out; none where it stays near nought"),
            told_words(effect),
        ),
    )
    return (Working(cause_words(effect.cause), parts, (LEAST_SQUARES,), words),)


def _effect_caption(effect: Effect) -> str:
    if effect.cause in STEP:
        return translate("How", "Slope")
    return translate("How", "Swing") if effect.cause is Cause.TIME_OF_YEAR else translate("How", "Step")


def _effect_working(effect: Effect) -> str:
    if effect.cause in STEP:
        return translate("How", "logarithm of density, {per}").format(per=per_words(effect.cause))
    if effect.cause is Cause.TIME_OF_YEAR:
        return translate("How", "half the height of a yearly wave, a straight drift beside it taken out")
    return translate("How", "logarithm of density, the two that differ most")


def _interval_working(effect: Effect) -> str:
    if effect.cause is Cause.TIME_OF_YEAR or len(effect.levels) > 2:
        return translate("How", "Scheffé's, which holds for the widest of all differences")
    return translate("How", "standard uncertainty × Student's t")
