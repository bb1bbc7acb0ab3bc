"""Which workings stand behind the figures of each step of a weigh-in."""

from __future__ import annotations

from calibrator.desk.guide import Guide
from calibrator.desk.how.of_level import of_density, of_scoopful
from calibrator.desk.how.of_line import of_check, of_line, of_old_line
from calibrator.desk.how.working import Working
from calibrator.science.scoop import rim_volume_ml


def level_workings(guide: Guide) -> tuple[Working, ...]:
    """Behind the level fills: the scoopful, then the bulk density."""
    level, density, system = guide.findings.level, guide.findings.density, guide.farm.units
    if level is None:
        return ()
    if density is None or guide.scoop is None:
        return (of_scoopful(level, system),)
    return of_scoopful(level, system), of_density(level, density, guide.scoop.volume_ml, system)


def line_workings(guide: Guide) -> tuple[Working, ...]:
    """Behind the proposed line, and behind the verdict on the old one."""
    found, target, scoop = guide.findings, guide.weigh_in.target_mass_g, guide.scoop
    if found.line is None or found.level is None or found.settling is None or scoop is None or target is None:
        return ()
    system = guide.farm.units
    rim_ml, weighed = rim_volume_ml(scoop.shape), found.line_weighed
    line = of_line(found.line, found.level.mean_g, found.settling, found.line_reach, rim_ml, system, weighed=weighed)
    if found.old is None:
        return (line,)
    return line, of_old_line(found.old, target, guide.farm.tolerance_share, system)


def check_workings(guide: Guide) -> tuple[Working, ...]:
    """Behind the fills to the line: the verdict, then their mean and its interval."""
    check, target = guide.findings.check, guide.weigh_in.target_mass_g
    if check is None or target is None:
        return ()
    verdict = of_check(check, target, guide.farm.tolerance_share, guide.farm.units)
    return verdict, of_scoopful(check.result, guide.farm.units)
