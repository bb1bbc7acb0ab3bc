"""How well powder flows, from its loose and its tapped bulk density.

Both are taken with the same scoop: struck level without tapping, then packed by taps until it sinks no more.
A scoop on a bench is not the cylinder and the tapping machine of ISO 8967 | IDF 134 or USP <616>: compare
lots of one farm by it, not with a laboratory's figures.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from calibrator.science.errors import CannotCompute
from calibrator.science.guard import not_negative, positive
from calibrator.science.weighing import LevelResult

NOISE_SHARE = 0.02


class FlowWord(StrEnum):
    """The words of the published scale of flowability."""

    EXCELLENT = "excellent"
    GOOD = "good"
    FAIR = "fair"
    PASSABLE = "passable"
    POOR = "poor"
    VERY_POOR = "very_poor"
    VERY_VERY_POOR = "very_very_poor"


class Scooping(StrEnum):
    """What flow means for the scoop."""

    STEADY = "steady"  # scoopfuls repeat well
    STIR_FIRST = "stir_first"  # it packs: stir up, never tap, strike off
    WEIGH = "weigh"  # it packs and bridges so much that scoopfuls differ: weigh each feeding


_CLASSES = (
    (1.11, FlowWord.EXCELLENT),
    (1.18, FlowWord.GOOD),
    (1.25, FlowWord.FAIR),
    (1.34, FlowWord.PASSABLE),
    (1.45, FlowWord.POOR),
    (1.59, FlowWord.VERY_POOR),
)
_MEANING = {
    FlowWord.EXCELLENT: Scooping.STEADY,
    FlowWord.GOOD: Scooping.STEADY,
    FlowWord.FAIR: Scooping.STIR_FIRST,
    FlowWord.PASSABLE: Scooping.STIR_FIRST,
}


@dataclass(frozen=True)
class Flow:
    """Hausner ratio (tapped ÷ loose), Carr index in % and the word for both.

    `hausner_u` is the standard uncertainty of the ratio. `packs_up_pct` is how much more a packed scoop
    weighs than a loose one: what stirring up is worth.
    """

    hausner: float
    hausner_u: float
    carr_pct: float
    word: FlowWord
    scooping: Scooping

    @property
    def packs_up_pct(self) -> float:
        return 100 * (self.hausner - 1)


def word_for(hausner: float) -> FlowWord:
    """The word of the published scale for a Hausner ratio of 1 or more.

    The printed classes leave gaps between two decimals (1.11 and 1.12): the ratio is rounded half up to two
    decimals first, as the table prints it. USP <1174>, table 2. Raises CannotCompute below 1.
    """
    if positive(hausner, "The Hausner ratio") < 1:
        raise CannotCompute("Tapped powder cannot be lighter than loose powder.")
    rounded = int(hausner * 100 + 0.5 + 1e-9) / 100
    return next((word for highest, word in _CLASSES if rounded <= highest), FlowWord.VERY_VERY_POOR)


def flow(loose_g_per_ml: float, tapped_g_per_ml: float, loose_u: float = 0.0, tapped_u: float = 0.0) -> Flow:
    """Hausner ratio and Carr index from loose and tapped density (or scoop weights), with their doubts.

    USP <1174>: Carr = 100·(tapped − loose)/tapped, Hausner = tapped/loose; uncertainty by JCGM 100:2008, 5.1.2.
    A tapped density below the loose one by less than 2 % is taken as equal: powder that packs nothing.
    Raises CannotCompute for densities not above zero, or a tapped one lower than that.
    """
    loose, tapped = positive(loose_g_per_ml, "The loose density"), positive(tapped_g_per_ml, "The tapped density")
    share = not_negative(loose_u, "The doubt in the loose density") / loose
    tapped_share = not_negative(tapped_u, "The doubt in the tapped density") / tapped
    ratio = tapped / loose
    if ratio < 1 - NOISE_SHARE:
        raise CannotCompute(
            "Tapped powder cannot be lighter than loose powder: weigh both again, loose without any tapping."
        )
    ratio = max(1.0, ratio)
    word = word_for(ratio)
    u = ratio * (share**2 + tapped_share**2) ** 0.5
    return Flow(ratio, u, 100 * (1 - 1 / ratio), word, _MEANING.get(word, Scooping.WEIGH))


def flow_of(level: LevelResult, tapped: LevelResult) -> Flow:
    """Flow from struck-level and tapped fills of the same scoop: the volume cancels."""
    return flow(level.mean_g, tapped.mean_g, level.u_g, tapped.u_g)
