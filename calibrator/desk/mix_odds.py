"""A finished volume that is not that of the batch chosen, in words: whose it may be, or what to read again."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication

from calibrator.desk import shown
from calibrator.desk.counted import counted
from calibrator.desk.mix_batch import Batch
from calibrator.desk.mix_checks import MixFindings
from calibrator.desk.mix_words import stir_words, verdict_words, volume, way_name
from calibrator.model import UnitSystem
from calibrator.science.check import Verdict
from calibrator.science.other_batch import instruments

translate = QCoreApplication.translate


def doubted_heading(found: MixFindings, batch: Batch) -> str:
    """What stands in place of a verdict, as the largest words on the page."""
    if found.other is None:
        return verdict_words(Verdict.CANNOT_TELL)
    if _same_group(found.other, batch):
        return translate("MixOdds", "For how many calves is this?")
    return translate("MixOdds", "Whose batch is this?")


def doubted_words(found: MixFindings, batch: Batch, other: str, system: UnitSystem) -> str:
    """The question, with what speaks for it; or that volume and instrument cannot both be true. `other` is the name of
    the other batch."""
    if found.other is None:
        return translate(
            "MixOdds", "The volume and the instrument cannot both be right. Add nothing before they were read again."
        )
    if found.other.mix is None or batch.mix is None:
        return ""
    if _same_group(found.other, batch):
        text = translate(
            "MixOdds",
            "The batch of {group} for {calves} is about {volume}, and so much was read; for {count} it is {planned}. "
            "Was it mixed for {calves}?",
        )
        return text.format(
            group=other,
            calves=counted.calves(found.other.calves),
            volume=volume(found.other.mix.volume_ml, system),
            count=batch.calves,
            planned=volume(batch.mix.volume_ml, system),
        )
    text = translate("MixOdds", "The volume is that of the batch for {other}, {volume}: is it theirs?")
    if instruments(found.ways):
        text = translate(
            "MixOdds", "The volume is that of the batch for {other}, {volume}, and the reading fits it: is it theirs?"
        )
    return text.format(other=other, volume=volume(found.other.mix.volume_ml, system))


def look_words(found: MixFindings) -> str:
    """What to read again where volume and instrument cannot both be true."""
    one, other = (f"{way_name(way.way)}: {shown.share(way.share)}" for way in found.at_odds_ways)
    text = translate(
        "MixOdds",
        "Two ways disagree too far for any slip ({one}; {other}): no amount is told to be added. Look at these first:",
    )
    look = [
        translate("MixOdds", "whether “Batch for” and “Calves” are those of this batch"),
        translate("MixWords", "read the volume again"),
        stir_words(found),
    ]
    if not found.at_odds_checked:
        look.insert(0, translate("MixWords", "check the instrument in plain water"))
    lines = [text.format(one=one, other=other), *(f"{n}. {what}" for n, what in enumerate(look, start=1))]
    return "\n".join(lines)


def _same_group(one: Batch, other: Batch) -> bool:
    return (one.plan, one.group) == (other.plan, other.group)
