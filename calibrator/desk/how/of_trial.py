"""How the verdicts of a trial of feeders came about."""

from __future__ import annotations

from calibrator.desk import shown
from calibrator.desk.counted import counted
from calibrator.desk.how import amounts
from calibrator.desk.how.working import GUM, Part, Working, figure, interval, translate
from calibrator.model import UnitSystem
from calibrator.science.feeders import Person, Sd, TrialFindings

PEOPLE = "ISO 5725-2; Searle, Casella and McCulloch 1992, Variance Components, 3.6"


def of_trial(found: TrialFindings, system: UnitSystem) -> tuple[Working, ...]:
    """Everybody together, then each person."""
    people = tuple(part for one in found.people for part in _person(one, found.mean_g, system))
    words = translate(
        "How",
        "Each person's mean is held against the mean of all people, and each one's scatter against the others'. The "
        "intervals hold for all people at once.",
    )
    return _together(found, system), Working(translate("How", "Person by person"), people, (f"{GUM}, G.4",), words)


def _together(found: TrialFindings, system: UnitSystem) -> Working:
    means = " + ".join(amounts.bare_mass(one.mean_g, system) for one in found.people)
    parts = (
        Part(translate("How", "Mean of all"), f"({means}) ÷ {len(found.people)}", amounts.mass(found.mean_g, system)),
        Part(
            translate("How", "Repeatability"),
            translate("How", "how the fills of one person scatter, all people pooled"),
            _sd(found.repeatability),
        ),
        Part(
            translate("How", "Between people"),
            translate("How", "what the means differ by beyond what that scatter explains"),
            shown.share(found.between, 2),
        ),
        Part(
            translate("How", "Reproducibility"),
            translate("How", "√(between people² + repeatability²)"),
            shown.share(found.reproducibility.share, 2),
        ),
    )
    words = translate(
        "How", "A fill is the mean of all, plus what the person adds, plus what differs from fill to fill."
    )
    return Working(translate("How", "Fills by everybody"), parts, (PEOPLE,), words)


def _person(one: Person, mean_g: float, system: UnitSystem) -> tuple[Part, ...]:
    fills = counted.fills(one.fills)
    off = f"{amounts.mass(one.mean_g, system)} ÷ {amounts.mass(mean_g, system)} − 1; {fills}"
    scatter = translate("How", "standard deviation of that person's fills, 95 % interval by chi-square")
    return (
        Part(
            one.name,
            off,
            f"{shown.signed_share(one.share)} ({interval(shown.signed_share(one.low), shown.signed_share(one.high))})",
        ),
        Part(translate("How", "Scatter"), scatter, _sd(Sd(one.sd_share, one.sd_low, one.sd_high))),
    )


def _sd(sd: Sd) -> str:
    return f"{shown.share(sd.share, 2)} ({interval(figure(100 * sd.low, 2), figure(100 * sd.high, 2))})"
