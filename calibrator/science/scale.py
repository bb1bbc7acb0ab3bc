"""The scale: what its display step and its error do to a weight, check weights, and how little is too little."""

from __future__ import annotations

import math
from collections.abc import Iterable
from enum import StrEnum

from calibrator.science.errors import CannotCompute
from calibrator.science.guard import finite, not_negative, positive
from calibrator.science.stats import rounding_u, two_roundings_u
from calibrator.values import dataclass

MOST_TOGETHER = 20
SLIP_SHARE = 0.1
"""An error beyond this share of the check weight is rather a slip of the hand, or a scale that is broken, than one to
correct weights for: a guess."""
ADDITIVE_SHARE = 0.05
"""How far a scale's step may move a dose: common practice, no source. An electrolyte of 2 oz is weighed on a scale of
0.1 oz everywhere."""
_ROUNDING = 1e-9  # a step in ounces, told in g, is not exact
LEAST_CAPACITY_G, USUAL_CAPACITY_G, MOST_USUAL_CAPACITY_G = 900.0, 5_000.0, 30_000.0
"""A scoop and the powder in it stand on the scale: 1 kg or 2 lb are the least. Common practice, no source."""
MOST_STEPS = 10_000
"""Verification steps of a scale of medium accuracy, class III: OIML R 76-1:2006, table 3."""


class Taring(StrEnum):
    """When the empty container was brought to zero: its rounding is fresh each time, or common to all fills."""

    EACH_FILL = "each_fill"
    ONCE = "once"


@dataclass(frozen=True)
class ScaleFacts:
    """What is known of the scale: its display step, g; how much of what it shows is too much, as a share, which is
    taken off; the standard uncertainty of that share with its degrees of freedom (inf: nobody checked it); and when it
    was tared. A share, because as many scoopfuls as stand on the scale together have the same. `sound`: nothing
    gainsays that it is as right as sound scales are, so it is not doubted more than those (`sound_u_g`)."""

    resolution_g: float
    error_share: float = 0.0
    error_u_share: float = 0.0
    error_df: float = math.inf
    taring: Taring = Taring.EACH_FILL
    sound: bool = False

    @property
    def step_u_g(self) -> float:
        """Standard uncertainty of one rounding to the display step: d/√12 (JCGM 100, F.2.2.1)."""
        return rounding_u(self.resolution_g)

    def corrected_g(self, shown_g: float) -> float:
        """What is on the scale where it shows `shown_g`, g."""
        return shown_g * (1 - self.error_share)

    def shown_g(self, mass_g: float) -> float:
        """What the scale shows of a weight, g."""
        return mass_g / (1 - self.error_share)

    @property
    def off_share(self) -> float:
        """How much too much the display tells of what is on the scale, as a share of that; 0 where it is not known."""
        return self.error_share / (1 - self.error_share)

    def error_u_g(self, load_g: float) -> float:
        """Standard uncertainty of the scale's error at a load, g."""
        told = self.error_u_share * load_g
        return min(told, sound_u_g(load_g, self.resolution_g)) if self.sound else told

    def error_assumed(self, load_g: float) -> bool:
        """Whether that is taken from what sound scales are, and not from a check weight."""
        return self.error_u_share * load_g > self.error_u_g(load_g)

    def checked(self) -> ScaleFacts:
        """Itself; raises CannotCompute for figures that no scale has."""
        not_negative(self.resolution_g, "The step of the scale's display")
        if finite(self.error_share, "The scale's error") >= 1:
            raise CannotCompute("The scale's error is larger than the weights: check the scale first.")
        if not (self.sound and self.error_u_share == math.inf):
            not_negative(self.error_u_share, "The doubt in the scale's error")
        if not self.error_df > 0:
            raise CannotCompute("The degrees of freedom of the scale's error must be above zero.")
        return self


NO_SCALE = ScaleFacts(0.0)
"""Where none is known: weights are taken as they are told."""


class ScaleVerdict(StrEnum):
    OK = "ok"
    OFF = "off"


@dataclass(frozen=True)
class ScaleCheck:
    """A check weight: error (display − nominal), its standard uncertainty, the display's step, g."""

    nominal_g: float
    error_g: float
    u_g: float
    resolution_g: float
    verdict: ScaleVerdict

    @property
    def taken_off(self) -> bool:
        """Whether weights are corrected for the error: one of no more than a display step is not told from none, for
        the displays of zero and of the check weight may each be half a step off (JCGM 100:2008, F.2.2.1); nor is one
        that is hardly meant."""
        return abs(self.error_g) > self.resolution_g * (1 + _ROUNDING) and not self.hardly_meant

    @property
    def ok(self) -> bool:
        return self.verdict == ScaleVerdict.OK

    @property
    def hardly_meant(self) -> bool:
        """Whether the error is too large to be corrected for, see `SLIP_SHARE`."""
        return not self.ok and abs(self.error_g) > SLIP_SHARE * self.nominal_g


def error_allowed_g(mass_g: float, step_g: float) -> float:
    """Largest error of a class III scale in service, g: OIML R 76-1:2006, table 6, doubled as 3.5.2 says.

    Kitchen scales are in no class; this is what a good one can do. 1 step up to 500 steps, 2 up to 2000, 3
    above (R 76 ends at 10 000 steps).
    """
    steps = not_negative(mass_g, "The check weight") / positive(step_g, "The step of the scale's display")
    return step_g * (1.0 if steps <= 500 else 2.0 if steps <= 2000 else 3.0)


def sound_u_g(load_g: float, step_g: float) -> float:
    """Standard uncertainty of the error of a scale that nobody checked, at a load, g; both above 0 g.

    Taken as a sound one in service: its error is anywhere within what such a scale is allowed (`error_allowed_g`),
    rectangular (JCGM 100:2008, 4.3.7). That goes for net loads with any container tared, too (OIML R 76-1:2006,
    3.5.3.3, from memory). It is never less than what a class M2 weight as heavy as the load and read as it should be
    would leave.
    """
    checked_u = math.hypot(two_roundings_u(step_g), weight_tolerance_g(load_g) / math.sqrt(3.0))
    return max(error_allowed_g(load_g, step_g) / math.sqrt(3.0), checked_u)


def steps_usual(step_g: float, capacity_g: float) -> bool:
    """Whether a scale tells no more steps up to its capacity than ordinary ones do, `MOST_STEPS`.

    Raises CannotCompute for a step or a capacity that is not above zero.
    """
    return positive(capacity_g, "The capacity of the scale") <= MOST_STEPS * positive(
        step_g, "The step of the display"
    ) * (1 + 1e-9)


def carries_a_scoop(capacity_g: float) -> bool:
    """Whether a full scoop can stand on a scale of this capacity. Raises CannotCompute unless it is above zero."""
    return positive(capacity_g, "The capacity of the scale") >= LEAST_CAPACITY_G


def likeliest_capacity(capacities_g: Iterable[float]) -> float | None:
    """The most usual of the capacities that may have been meant, g; None where none is of a kitchen scale."""
    usual = (capacity_g for capacity_g in capacities_g if LEAST_CAPACITY_G <= capacity_g <= MOST_USUAL_CAPACITY_G)
    return min(usual, key=lambda capacity_g: abs(math.log(capacity_g / USUAL_CAPACITY_G)), default=None)


def weight_tolerance_g(nominal_g: float) -> float:
    """Maximum permissible error of a class M2 weight, g, about 1.6·10⁻⁴ of it and never below 3 mg.

    OIML R 111-1:2004, table 1, is a staircase; this line lies on or above it from 10 g up.
    """
    return max(0.003, 1.6e-4 * positive(nominal_g, "The check weight"))


def check_scale(
    nominal_g: float, reading_g: float, resolution_g: float, *, weight_u_g: float | None = None
) -> ScaleCheck:
    """Compare the display with a check weight.

    OFF when the error is beyond what a class III scale is allowed in service (see `error_allowed_g`). The
    doubt in the error: display step twice (zero and loaded) and the weight itself, by default as class M2.
    Raises CannotCompute for a weight or step that is not above zero, or a negative reading.
    """
    nominal = positive(nominal_g, "The check weight")
    error = not_negative(reading_g, "What the scale shows") - nominal
    allowed = error_allowed_g(nominal, resolution_g)
    weight_u = weight_tolerance_g(nominal) / math.sqrt(3.0) if weight_u_g is None else weight_u_g
    u = math.hypot(two_roundings_u(resolution_g), not_negative(weight_u, "The doubt in the check weight"))
    off = abs(error) > allowed * (1 + _ROUNDING)
    return ScaleCheck(nominal, error, u, resolution_g, ScaleVerdict.OFF if off else ScaleVerdict.OK)


def scale_facts(resolution_g: float, check: ScaleCheck | None, *, taring: Taring = Taring.EACH_FILL) -> ScaleFacts:
    """The scale as its last check weight tells it.

    The error is taken as proportional to the load and is taken off: what is there is what is shown × nominal ÷ what
    the check weight showed; its doubt is that of the check, by the derivative (JCGM 100:2008, 5.1.2). An error within
    what one display step can hide is not taken off but counted as doubt (rectangular), and so is one too large to be
    meant. Without a check nothing is taken off and the scale counts as a sound one (`sound_u_g`), which a check weight
    read as right never makes worse: a light one tells little of heavier loads.
    """
    if check is None:
        return ScaleFacts(resolution_g, error_u_share=math.inf, taring=taring, sound=True)
    if not check.taken_off:
        hidden = math.hypot(check.error_g / math.sqrt(3.0), check.u_g)
        return ScaleFacts(resolution_g, 0.0, hidden / check.nominal_g, taring=taring, sound=check.ok)
    shown_g = check.nominal_g + check.error_g
    u_share = check.u_g * check.nominal_g / shown_g**2
    return ScaleFacts(resolution_g, check.error_g / shown_g, u_share, taring=taring)


def smallest_net_weight_g(resolution_g: float, repeatability_g: float, tolerance_share: float) -> float:
    """The least net weight for which two standard deviations of a reading stay within the tolerance.

    The idea of USP <41>: 2 · s / tolerance, s never below 0.41 d (d/√6: a rounding each for empty and full).
    """
    floor = two_roundings_u(positive(resolution_g, "The step of the scale's display"))
    s = max(not_negative(repeatability_g, "The scale's repeatability"), floor)
    return 2 * s / positive(tolerance_share, "The tolerance")


def least_additive_g(resolution_g: float) -> float:
    """The least weight of an additive that rounding to the scale's step moves by no more than `ADDITIVE_SHARE`, g. A
    step of 0 rounds nothing, and then it is 0."""
    return not_negative(resolution_g, "The step of the scale's display") / 2 / ADDITIVE_SHARE


def scoopfuls_together(scoopful_g: float, smallest_g: float) -> int:
    """How many scoopfuls to weigh together so that they reach the smallest net weight; at most 20."""
    needed = positive(smallest_g, "The smallest net weight") / positive(scoopful_g, "The weight of a scoopful")
    return min(MOST_TOGETHER, max(1, math.ceil(needed - 1e-9)))
