"""The font of all prints, and how much room a text takes in it.

Text is laid out at one large size and scaled, so that a page looks the same at every resolution.
"""

from __future__ import annotations

import re
from functools import lru_cache

from PySide6.QtGui import QFont, QFontDatabase, QFontMetricsF

from calibrator.places import resource
from calibrator.prints.page import Weight
from calibrator.values import dataclass

EM = 200  # pixels of the one size at which text is measured and painted
CAP_HEIGHT = 0.668  # of the em, as the font's own tables tell
LEADING = 1.2

_UNIT_SCALE = 0.62
_FRACTION_SCALE = 0.75  # a quarter is told from three quarters across a barn
_FRACTION_RISE = CAP_HEIGHT * (1 - _FRACTION_SCALE)
_PIECES = re.compile(r"(?P<top>\d+)/(?P<bottom>\d+)|(?P<unit>[^\W\d_°%½¼¾]+(?:/[^\W\d_]+)?|°[CF]|%)|\s+|[^\w°%\s]+|\w")


@dataclass(frozen=True)
class Run:
    """A piece of a text that is set in one size: shares of the text's own size."""

    text: str
    scale: float = 1.0
    rise: float = 0.0


@lru_cache(maxsize=1)
def family() -> str:
    """The font's family name, its files loaded. A QGuiApplication must exist."""
    names = [
        QFontDatabase.applicationFontFamilies(
            QFontDatabase.addApplicationFont(str(resource(f"fonts/hyperlegible_{weight}.ttf")))
        )
        for weight in ("Regular", "SemiBold", "Bold")
    ]
    return names[0][0]


@lru_cache(maxsize=8)
def font(weight: Weight) -> QFont:
    """The font at the size that everything is measured in."""
    made = QFont(family())
    made.setPixelSize(EM)
    made.setWeight(QFont.Weight(int(weight)))
    made.setHintingPreference(QFont.HintingPreference.PreferNoHinting)
    # Said outright, or the screen's font would lend its figures of equal width, which no PDF reader can search.
    made.setFeature(QFont.Tag("tnum"), 0)
    return made


@lru_cache(maxsize=8)
def _metrics(weight: Weight) -> QFontMetricsF:
    return QFontMetricsF(font(weight))


def _run(piece: re.Match[str]) -> tuple[Run, ...]:
    if piece["top"]:
        top, bottom = piece["top"], piece["bottom"]
        return Run(top, _FRACTION_SCALE, _FRACTION_RISE), Run("⁄"), Run(bottom, _FRACTION_SCALE)
    small = piece["unit"] or piece[0].isspace()
    return (Run(piece[0], _UNIT_SCALE if small else 1.0),)


@lru_cache(maxsize=4096)
def runs(text: str, figures: bool) -> tuple[Run, ...]:
    """The pieces in which a text is set."""
    if not figures:
        return (Run(text),)
    pieces = [run for match in _PIECES.finditer(text) for run in _run(match)]
    merged: list[Run] = []
    for run in pieces:
        if merged and (merged[-1].scale, merged[-1].rise) == (run.scale, run.rise) and not run.rise:
            merged[-1] = Run(merged[-1].text + run.text, run.scale)
        else:
            merged.append(run)
    return tuple(merged)


@lru_cache(maxsize=32768)
def advance(text: str, weight: Weight, figures: bool = False) -> float:
    """Width of a text in ems."""
    metrics = _metrics(weight)
    return sum(metrics.horizontalAdvance(run.text) * run.scale for run in runs(text, figures)) / EM


def width_mm(text: str, size_mm: float, weight: Weight = Weight.REGULAR, figures: bool = False) -> float:
    """Width of a text set in an em of `size_mm`."""
    return advance(text, weight, figures) * size_mm
