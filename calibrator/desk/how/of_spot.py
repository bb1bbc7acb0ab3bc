"""How the verdict of the spot fills came about."""

from __future__ import annotations

from calibrator.desk.how.of_level import of_density, of_scoopful
from calibrator.desk.how.of_line import of_check, of_old_line
from calibrator.desk.how.working import Working
from calibrator.desk.spots import SpotFindings
from calibrator.model import Farm, Mark
from calibrator.science.mark import LineCheck


def of_spot(found: SpotFindings, mark: Mark, farm: Farm) -> tuple[Working, ...]:
    """The verdict first, then what it rests on: each bag opened later counts as one more bag of the weigh-in."""
    judged, level = found.judged, found.level
    density = of_density(level, found.density, found.volume_ml, farm.units)
    if isinstance(judged, LineCheck):
        verdict = of_check(judged, mark.target_mass_g, farm.tolerance_share, farm.units)
        return verdict, of_scoopful(judged.result, farm.units), density
    verdict = of_old_line(judged, mark.target_mass_g, farm.tolerance_share, farm.units)
    return verdict, of_scoopful(level, farm.units), density
