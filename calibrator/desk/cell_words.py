"""What cells of a saved table tell by a word of ours (ways of filling, verdicts, kinds), in the language of the screen.

No window. Each table is asked for once and looked up row by row; *Bring in a spreadsheet* knows the words of lots and
fills in both languages.
"""

from __future__ import annotations

from collections.abc import Mapping

from PySide6.QtCore import QCoreApplication

from calibrator.desk.how.of_level import source_words
from calibrator.desk.words import way_words
from calibrator.model import FillWay, PackageKind, Pail, Reading, ReadingKind
from calibrator.science.budget import Distribution, Source
from calibrator.science.keep import OldLineVerdict
from calibrator.science.verify import LineVerdict

translate = QCoreApplication.translate


def answers() -> dict[bool | None, str]:
    """Yes, no, or nothing where it is not known."""
    return {None: "", True: translate("TableCells", "yes"), False: translate("TableCells", "no")}


def ways() -> dict[FillWay, str]:
    return {way: way_words(way) for way in FillWay}


def packages() -> dict[PackageKind, str]:
    return {PackageKind.BAG: translate("TableCells", "bag"), PackageKind.TOTE: translate("TableCells", "tote")}


def line_verdicts() -> dict[str, str]:
    """Of a new line and of an old one, by the words that are kept with a sign-off."""
    return {
        "": "",
        LineVerdict.ON_TARGET: translate("TableCells", "on target"),
        LineVerdict.MOVE: translate("TableCells", "move it"),
        LineVerdict.AS_NEAR_AS_RULED: translate("TableCells", "as near as the ruler allows"),
        LineVerdict.WEIGH_MORE: translate("TableCells", "weigh more"),
        OldLineVerdict.KEEP: translate("TableCells", "keep it"),
    }


def sources() -> dict[Source, str]:
    """Where doubt comes from."""
    return source_words()


def distributions() -> dict[Distribution, str]:
    return {
        Distribution.NORMAL: translate("TableCells", "normal"),
        Distribution.RECTANGULAR: translate("TableCells", "rectangular"),
    }


def reading_words(reading: Reading) -> str:
    """What was read, of which pail where it was told, as it was typed."""
    kind = {
        ReadingKind.BRIX: translate("TableCells", "refractometer"),
        ReadingKind.REFRACTOMETER_SG: translate("TableCells", "refractometer, SG (sugar scale)"),
        ReadingKind.HYDROMETER_SG: translate("TableCells", "hydrometer"),
        ReadingKind.JUG_MASS: translate("TableCells", "mix in the jug"),
        ReadingKind.PRISM_TEMPERATURE: translate("TableCells", "temperature of the refractometer"),
        ReadingKind.WATER_TEMPERATURE: translate("TableCells", "water"),
        ReadingKind.MIX_TEMPERATURE: translate("TableCells", "mix"),
        ReadingKind.CALF_TEMPERATURE: translate("TableCells", "at the calf"),
        ReadingKind.FINISHED_VOLUME: translate("TableCells", "finished volume"),
        ReadingKind.FINISHED_LEVEL: translate("TableCells", "finished level"),
    }[reading.kind]
    pail = {
        Pail.ANY: "",
        Pail.FIRST: translate("TableCells", "first pail"),
        Pail.LAST: translate("TableCells", "last pail"),
    }[reading.pail]
    return f"{', '.join(filter(None, (kind, pail)))}: {reading.typed}"


def told(words: Mapping[str, str], kept: str) -> str:
    """A word of the records; one that another version of the program kept stays as it is."""
    return words.get(kept, kept)
