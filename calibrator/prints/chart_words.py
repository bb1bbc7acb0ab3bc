"""The facts of a wall chart as the words and figures that stand in its cells."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from math import isclose

from calibrator.model import FillWay, RateBasis, VolumeMeans
from calibrator.prints import words
from calibrator.prints.chart_facts import ChartGroup, ChartRow, ScoopPart, WallChart
from calibrator.prints.fit import plain
from calibrator.prints.label_facts import LineCount
from calibrator.prints.languages import Tongue, Words
from calibrator.units import (
    show_dose,
    show_mass,
    show_percent,
    show_scoopfuls,
    show_temperature,
    show_typed_volume,
    show_volume,
)
from calibrator.values import dataclass

_WAYS = {FillWay.LEVEL: words.LEVEL, FillWay.TO_MARK: words.TO_THE_LINE, FillWay.TAPPED: words.TAPPED}
_RATES = {
    RateBasis.ON_WATER: words.RATE_ON_WATER,
    RateBasis.MADE_UP: words.RATE_MADE_UP,
    RateBasis.PER_FINISHED: words.RATE_PER_FINISHED,
    RateBasis.SOLIDS: words.RATE_SOLIDS,
    RateBasis.DRY_MATTER: words.RATE_DRY_MATTER,
}
_MOST_PICTURES = 3
_ALIKE = 1e-3


@dataclass(frozen=True)
class PartCell:
    """Scoopfuls of one kind: the count as text, how many pictures, and the words below."""

    count: str
    pictures: int
    way: FillWay
    filled: float
    ways: tuple[str, ...]
    name: str = ""
    otherwise: bool = False  # than most rows fill the same scoop
    line: str = ""  # which line, where two languages say how: twice the figure has no room

    @property
    def how(self) -> tuple[str, ...]:
        """How it is filled, which stands below the number and its picture, above the scoop's name."""
        return tuple(filter(None, (" / ".join(self.ways), self.line)))


@dataclass(frozen=True)
class RowCells:
    """The texts of one row. `notes` stand small below the water, `extra` too where there is room; `powder_notes` below
    the powder. `weighed` is a row without scoopfuls on a chart that has some."""

    calves: str
    batches: str
    water: str
    temperature: str
    powder: str
    parts: tuple[PartCell, ...]
    notes: tuple[str, ...]
    extra: tuple[str, ...]
    powder_notes: tuple[str, ...]
    weighed: bool
    warn: bool
    today: bool

    def below(self, extra: bool) -> tuple[str, ...]:
        """What stands below the water where rows tell all, or only what they must."""
        return (*self.notes, *self.extra) if extra else self.notes


def scoop_names(facts: WallChart) -> tuple[str, ...]:
    """Every scoop of the chart, each once."""
    rows = (row for group in facts.groups for row in group.rows)
    return tuple(dict.fromkeys(plain(part.scoop_name) for row in rows for part in row.scoopfuls))


def way_told(part: ScoopPart, facts: WallChart, tongue: Tongue) -> str:
    """How a scoop is filled, in one language: to which line where its label has several, in capitals where most rows
    fill it otherwise."""
    told = tongue(words.TO_NAMED_LINE if part.line_g else _WAYS[part.way])
    told = told.upper().replace("{MASS}", "{mass}") if part.otherwise else told
    return told.format(mass=_line(part, facts))


def _line(part: ScoopPart, facts: WallChart) -> str:
    """What stands beside a line on its label."""
    return _held(show_mass(part.line_g, facts.units, resolution_g=facts.label_step_g or facts.resolution_g))


def scoops_told(parts: Sequence[ScoopPart], facts: WallChart, tongue: Tongue, *, named: bool) -> str:
    """Scoopfuls in words: "1 1/2 to the line (Red scoop)"."""
    told = (
        (
            f"{show_scoopfuls(part.count)} {way_told(part, facts, tongue)}",
            f" ({plain(part.scoop_name)})" if named else "",
        )
        for part in parts
    )
    return " + ".join(map("".join, told))


def _part(part: ScoopPart, facts: WallChart, said: Words, alone: bool, several: bool) -> PartCell:
    whole = abs(part.count - round(part.count)) < 1e-9
    few = alone and whole and 1 <= part.count <= _MOST_PICTURES
    apart = part.line_g > 0 and len(said.tongues) > 1
    told = replace(part, line_g=0.0) if apart else part
    return PartCell(
        count=show_scoopfuls(part.count),
        pictures=round(part.count) if few else 1,
        way=part.way,
        filled=part.count if part.count < 1 else 1.0,
        ways=said.each(lambda t: way_told(told, facts, t)),
        name=plain(part.scoop_name) if several else "",
        otherwise=part.otherwise,
        line=_line(part, facts) if apart else "",
    )


def row_cells(row: ChartRow, basis: RateBasis, facts: WallChart, said: Words, several_scoops: bool) -> RowCells:
    """A row as text. Where powder is made up with water, the mark to fill up to is no extra."""
    up_to = _mix(row, basis, facts, said)
    celsius = facts.water_temperature_c if row.water_temperature_c is None else row.water_temperature_c
    alone = sum(part.count for part in row.scoopfuls) <= 2 * _MOST_PICTURES
    return RowCells(
        calves=str(row.calves),
        batches=f"{row.batches} ×",
        water=show_volume(row.water_ml, facts.units, step=facts.water_step),
        temperature=show_temperature(celsius, facts.units),
        powder=_mass(row.powder_g, facts),
        parts=tuple(_part(part, facts, said, alone, several_scoops) for part in row.scoopfuls),
        notes=(*_notes(row, facts, said), *(up_to if basis is RateBasis.MADE_UP else ())),
        extra=() if basis is RateBasis.MADE_UP else up_to,
        powder_notes=_powder_notes(row, facts, said),
        weighed=weighed(row, facts),
        warn=not row.fits,
        today=row.today,
    )


def _mix(row: ChartRow, basis: RateBasis, facts: WallChart, said: Words) -> tuple[str, ...]:
    if row.mix_ml is None:
        return ()
    volume = _held(show_volume(row.mix_ml, facts.units, step=facts.water_step))
    return (_figure_last(words.FILL_UP_TO if basis is RateBasis.MADE_UP else words.MAKES, said, volume=volume),)


def _figure_last(phrase: str, said: Words, **figure: str) -> str:
    """A phrase with its figure, in two languages once and after both: a line more in every row can cost a page."""
    ways = said.each(lambda t: t(phrase).format(**dict.fromkeys(figure, "")).strip())
    return " ".join((" / ".join(ways), *figure.values()))


def _notes(row: ChartRow, facts: WallChart, said: Words) -> list[str]:
    def length(phrase: str, mm: float) -> list[str]:
        return list(said.each(lambda t: t(phrase).format(length=t.length(mm, facts.units))))

    notes: list[str] = []
    if not row.fits:
        notes += said.each(lambda t: t(words.RUNS_OVER).format(vessel=_vessel(facts, t)))
    if row.water_level_mm is not None:
        notes += length(words.WATER_UP, row.water_level_mm)
    if row.mix_level_mm is not None:
        notes += length(words.MIX_UP, row.mix_level_mm)
    return notes


def _powder_notes(row: ChartRow, facts: WallChart, said: Words) -> tuple[str, ...]:
    with_it = tuple(f"+ {_dose(mass_g, facts)} {plain(name)}" for name, mass_g in row.additives)
    if row.portions > 1:
        phrase = words.BETTER_PORTIONS if row.scoopfuls and row.many else words.WEIGH_PORTIONS
        times = f"{row.portions} × {_mass(row.portion_g, facts)}"
        return (_figure_last(phrase, said, times=_held(times)), *with_it)
    if weighed(row, facts):
        return (*said.each(words.WEIGH_POWDER), *with_it)
    return (*said.each(words.BETTER_WEIGH), *with_it) if row.scoopfuls and row.many else with_it


def weighed(row: ChartRow, facts: WallChart) -> bool:
    """Whether a row has no scoopfuls on a chart that has some."""
    return not row.scoopfuls and any(each.scoopfuls for group in facts.groups for each in group.rows)


def _mass(mass_g: float, facts: WallChart) -> str:
    return show_mass(mass_g, facts.units, resolution_g=facts.resolution_g)


def _dose(mass_g: float, facts: WallChart) -> str:
    least_g = facts.least_additive_g
    return show_dose(mass_g, facts.units, least_g=least_g, resolution_g=facts.resolution_g)


def _held(figure: str) -> str:
    """A figure that no line ends in: what stands small below may take several."""
    return figure.replace(" ", "\u00a0")


def _vessel(facts: WallChart, tongue: Tongue) -> str:
    return plain(facts.vessel_name) or tongue(words.THE_VESSEL)


def cold_told(facts: WallChart, tongue: Tongue) -> str:
    """That this is the plan's variant for the cold; blank for the usual one."""
    if facts.cold_below_c is None:
        return ""
    return tongue(words.COLD_WEATHER).format(limit=show_temperature(facts.cold_below_c, facts.units))


def fed_told(group: ChartGroup, facts: WallChart, tongue: Tongue) -> str:
    """How much mix each calf is to drink; blank where only its water is known."""
    if group.volume_means is VolumeMeans.FINISHED_MIX:
        return tongue(words.PER_CALF_MIX).format(volume=show_typed_volume(group.volume_ml, facts.units))
    if group.fed_ml is None:
        return ""
    return tongue(words.FEED_EACH).format(volume=show_typed_volume(group.fed_ml, facts.units))


def group_told(group: ChartGroup, facts: WallChart, tongue: Tongue, *, fed: bool = True) -> str:
    """What a group gets and is mixed; where `fed`, with what each calf is to drink.

    The mix of all groups alike is told once, above them.
    """
    told = [fed_told(group, facts, tongue) if fed else "", _each(group, facts, tongue)]
    on_water = group.rate.basis is RateBasis.ON_WATER and isclose(group.rate.volume_ml, group.volume_ml)
    if group.volume_means is VolumeMeans.WATER and not (on_water and group.fed_ml is not None):
        water = tongue(words.PER_CALF_WATER).format(volume=show_typed_volume(group.volume_ml, facts.units))
        told.insert(0, water)
    mix = "" if len(facts.groups) > 1 and _mixed_alike(facts, tongue) else _mix_told(group, facts, tongue)
    return " · ".join(filter(None, (*told, mix)))


def common_mix_told(facts: WallChart, tongue: Tongue) -> str:
    """What several groups are mixed, where it is one and the same, and in which vessel; else blank.

    It says that it is for all of them: above the rows of a group that gets more it would be read as that one's rate.
    """
    if len(facts.groups) < 2:
        return ""
    if not _mixed_alike(facts, tongue):
        return _vessel_told(facts, tongue)
    told = [_mix_told(facts.groups[0], facts, tongue), _vessel_told(facts, tongue)]
    return tongue(words.ALL_GROUPS).format(mix=" · ".join(filter(None, told)))


def _mixed_alike(facts: WallChart, tongue: Tongue) -> bool:
    return len({_mix_told(group, facts, tongue) for group in facts.groups}) == 1


def _vessel_told(facts: WallChart, tongue: Tongue) -> str:
    return tongue(words.VESSEL).format(vessel=plain(facts.vessel_name)) if facts.vessel_name else ""


def _mix_told(group: ChartGroup, facts: WallChart, tongue: Tongue) -> str:
    """The mix of a group with the basis of its rate named; of a single group also its vessel, which all have alike."""
    told = [_rate(group, facts, tongue)]
    if group.solids_share is not None and group.rate.basis is not RateBasis.SOLIDS:
        told.append(tongue(words.RATE_SOLIDS).format(solids=show_percent(100 * group.solids_share)))
    if len(facts.groups) == 1:
        told.append(_vessel_told(facts, tongue))
    return " · ".join(filter(None, told))


def _each(group: ChartGroup, facts: WallChart, tongue: Tongue) -> str:
    """The powder of one calf, and how it is counted. A single group's rate often tells that already."""
    each_g = group.each_g
    if each_g is None or (len(facts.groups) == 1 and isclose(each_g, group.rate.powder_mass_g, rel_tol=_ALIKE)):
        return ""
    powder = tongue(words.PER_CALF_POWDER).format(powder=_mass(each_g, facts))
    if group.each_by_lines is not None:
        return _each_by_lines(group, group.each_by_lines, powder, tongue)
    count = scoops_told(group.each_scoopfuls, facts, tongue, named=len(scoop_names(facts)) > 1)
    return f"{powder} = {count}" if count else powder


def _each_by_lines(group: ChartGroup, count: LineCount, powder: str, tongue: Tongue) -> str:
    """As the label tells one calf's feeding, and why 23 of one and a half are told as 34 below it."""
    told = tongue(words.COUNT_TO_LINE_AND_HALF).format(mass=powder, count=count.to_main)
    halves = any(not part.count.is_integer() for row in group.rows for part in row.scoopfuls)
    if halves or not any(row.scoopfuls for row in group.rows):
        return told
    return f"{told} ({tongue(words.WHOLE_SCOOPFULS)})"


def _rate(group: ChartGroup, facts: WallChart, tongue: Tongue) -> str:
    return tongue(_RATES[group.rate.basis]).format(
        powder=show_mass(group.rate.powder_mass_g, facts.units),  # laid down, not read off the scale
        volume=show_typed_volume(group.rate.volume_ml, facts.units),
        solids=show_percent(100 * group.rate.solids_share),
    )
