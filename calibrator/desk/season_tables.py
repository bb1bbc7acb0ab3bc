"""Every figure of a farm as tables for other programs. No window.

Headings are English here and put into the screen's language by `table_headings`; words in the cells are in that
language at once (`cell_words`). Masses are g, lengths mm, densities g/mL, prices in the farm's currency; "as typed"
columns keep what was typed.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence

from calibrator.desk import cell_words
from calibrator.desk.cell_words import told
from calibrator.desk.lessons import Lessons
from calibrator.desk.mix_history import kept_checks, kept_counts, names
from calibrator.desk.mix_table import history_table
from calibrator.desk.paper_facts import Options, lot_sheet_facts
from calibrator.desk.table_headings import heading
from calibrator.model import Farm, FeederTrial, Fill, Lot, Mark, Scale, Scoop, SignOff, SpotFill, TrialFill, WeighIn
from calibrator.model.underway import Underway, one_by_one, part_of, unwatched
from calibrator.records import Records
from calibrator.records.season import every_fill, every_mark, every_spot_fill, every_trial_fill
from calibrator.records.table_file import Cell, Field, FlatTable, table_of
from calibrator.records.workbook import SheetOf
from calibrator.science.budget import BudgetRow

MOST_BUDGETS = 1_000
"""Each is drawn anew from all fills before it: more would take minutes. The sheet's name and the dialog tell it."""


class _Names:
    """What the farm's things are called, by id."""

    def __init__(self, records: Records, farm: Farm) -> None:
        self.lots = {one.id: one for one in records.every(Lot, farm.id)}
        self.scoops = {one.id: one.name for one in records.every(Scoop, farm.id)}
        self.scales = {one.id: one.name for one in records.every(Scale, farm.id)}
        self.weigh_ins = {one.id: one for one in records.every(WeighIn, farm.id)}
        self.trials = {one.id: one for one in records.every(FeederTrial, farm.id)}

    def lot(self, id: str) -> str:
        return self.lots[id].lot_number if id in self.lots else ""

    def scoop(self, id: str | None) -> str:
        return self.scoops.get(id or "", "")

    def lot_of(self, weigh_in_id: str) -> str:
        return self.lot(self.weigh_ins[weigh_in_id].lot_id) if weigh_in_id in self.weigh_ins else ""

    def scoop_of(self, weigh_in_id: str) -> str:
        return self.scoop(self.weigh_ins[weigh_in_id].scoop_id) if weigh_in_id in self.weigh_ins else ""


def season_sheets(records: Records, farm: Farm, underway: Underway = unwatched) -> tuple[SheetOf, ...]:
    """Lots, sign-offs, budgets, fills, spot fills, lines, checks of the mix with counts of bags, trials."""
    known = _Names(records, farm)
    signed = records.sign_offs(farm.id)
    budgets, read, told = (part_of(underway, *ends) for ends in ((0.0, 0.5), (0.5, 0.75), (0.75, 1.0)))
    checks = history_table(kept_checks(records, farm), kept_counts(records, farm), names(records, farm))
    return (
        SheetOf("lots", _lots(list(known.lots.values()), farm)),
        SheetOf("sign-offs", _sign_offs(signed, known)),
        SheetOf(_budgets_name(signed), _budgets(records, farm, one_by_one(signed[-MOST_BUDGETS:], budgets), known)),
        SheetOf("fills", _fills(every_fill(records, farm.id, read), known, told)),
        SheetOf("spot fills", _spot_fills(every_spot_fill(records, farm.id), known)),
        SheetOf("lines", _marks(every_mark(records, farm.id), known)),
        SheetOf("mix checks", checks),
        SheetOf("trials", _trial_fills(every_trial_fill(records, farm.id), known)),
    )


def _lots(lots: Sequence[Lot], farm: Farm) -> FlatTable:
    yes, packages = cell_words.answers(), cell_words.packages()
    fields: tuple[Field[Lot], ...] = (
        Field("lot", lambda o: o.lot_number),
        Field("product", lambda o: o.product),
        Field("supplier", lambda o: o.supplier),
        Field("plant code", lambda o: o.plant_code),
        Field("agglomerated", lambda o: yes[o.agglomerated]),
        Field("made on", lambda o: o.made_on),
        Field("arrived on", lambda o: o.arrived_on),
        Field("fed from", lambda o: o.fed_from),
        Field("finished on", lambda o: o.finished_on),
        Field("kind of package", lambda o: packages[o.package]),
        Field("packages", lambda o: o.package_count),
        Field("weight of a package", lambda o: o.package_mass_g, "g"),
        Field("price of a package", lambda o: o.price_per_package, farm.currency),
        Field("protein", lambda o: o.composition.protein_pct, "%"),
        Field("fat", lambda o: o.composition.fat_pct, "%"),
        Field("fibre", lambda o: o.composition.fibre_pct, "%"),
        Field("ash", lambda o: o.composition.ash_pct, "%"),
        Field("moisture", lambda o: o.composition.moisture_pct, "%"),
        Field("medicated", lambda o: yes[o.medicated]),
        Field("note", lambda o: o.note),
    )
    return table_of(fields, lots)


def _sign_offs(signed: Sequence[SignOff], known: _Names) -> FlatTable:
    def room(of: Callable[[WeighIn], Cell]) -> Callable[[SignOff], Cell]:
        return lambda o: of(known.weigh_ins[o.weigh_in_id]) if o.weigh_in_id in known.weigh_ins else None

    verdicts = cell_words.line_verdicts()
    fields: tuple[Field[SignOff], ...] = (
        Field("lot", lambda o: known.lot(o.lot_id)),
        Field("scoop", lambda o: known.scoop(o.scoop_id)),
        Field("scale", lambda o: known.scales.get(o.scale_id, "")),
        Field("at", lambda o: o.at),
        Field("by", lambda o: o.by),
        Field("bags", lambda o: o.bags),
        Field("fills", lambda o: o.fills),
        Field("level scoopful", lambda o: o.level_mean_g, "g"),
        Field("level standard uncertainty", lambda o: o.level_u_g, "g"),
        Field("level 95 % low", lambda o: o.level_low_g, "g"),
        Field("level 95 % high", lambda o: o.level_high_g, "g"),
        Field("degrees of freedom", lambda o: o.degrees_of_freedom),
        Field("bulk density", lambda o: o.density_g_per_ml, "g/mL"),
        Field("density standard uncertainty", lambda o: o.density_u_g_per_ml, "g/mL"),
        Field("density 95 % low", lambda o: o.density_low_g_per_ml, "g/mL"),
        Field("density 95 % high", lambda o: o.density_high_g_per_ml, "g/mL"),
        Field("spread between bags", lambda o: 100 * o.bag_sd_share, "%"),
        Field("spread between fills", lambda o: 100 * o.fill_sd_share, "%"),
        Field("settling factor", lambda o: o.settling_factor),
        Field("settling standard uncertainty", lambda o: o.settling_u),
        Field("target", room(lambda w: w.target_mass_g), "g"),
        Field("room humidity", room(lambda w: w.room_humidity_pct), "%"),
        Field("room temperature", room(lambda w: w.room_temperature_c), "°C"),
        Field("verdict of the new line", lambda o: told(verdicts, o.verdict)),
        Field("verdict of the old line", lambda o: told(verdicts, o.old_line_verdict)),
        Field("program version", lambda o: o.program_version),
    )
    return table_of(fields, signed)


def _budgets_name(signed: Sequence[SignOff]) -> str:
    return "budgets" if len(signed) <= MOST_BUDGETS else f"budgets (newest {MOST_BUDGETS})"


def _budgets(records: Records, farm: Farm, signed: Iterable[SignOff], known: _Names) -> FlatTable:
    """The parts of each sign-off's uncertainty, drawn anew from its fills as the lot sheet does."""
    rows: list[tuple[SignOff, str, BudgetRow]] = []
    lessons = Lessons(records, farm.id)
    level, density = heading("level scoopful"), heading("bulk density")
    for one in signed:
        found = lot_sheet_facts(records, farm, one, Options(farm.paper, ("en",)), one.at, lessons)
        rows += [(one, level, part) for part in (found.level.budget if found.level else ())]
        rows += [(one, density, part) for part in found.density_budget]
    yes, sources, distributions = cell_words.answers(), cell_words.sources(), cell_words.distributions()
    fields: tuple[Field[tuple[SignOff, str, BudgetRow]], ...] = (
        Field("lot", lambda o: known.lot(o[0].lot_id)),
        Field("scoop", lambda o: known.scoop(o[0].scoop_id)),
        Field("signed off at", lambda o: o[0].at),
        Field("of", lambda o: o[1]),
        Field("source", lambda o: sources[o[2].source]),
        Field("distribution", lambda o: distributions[o[2].distribution]),
        Field("standard uncertainty", lambda o: o[2].standard_uncertainty),
        Field("its unit", lambda o: o[2].unit),
        Field("sensitivity", lambda o: o[2].sensitivity),
        Field("contribution", lambda o: o[2].contribution, "unit of the result"),
        Field("share of variance", lambda o: 100 * o[2].share, "%"),
        Field("degrees of freedom", lambda o: o[2].degrees_of_freedom),
        Field("assumed", lambda o: yes[o[2].assumed]),
        Field("contained in another row", lambda o: yes[o[2].contained]),
    )
    return table_of(fields, rows)


def _fills(fills: Sequence[Fill], known: _Names, underway: Underway) -> FlatTable:
    ways = cell_words.ways()
    fields: tuple[Field[Fill], ...] = (
        Field("lot", lambda o: known.lot_of(o.weigh_in_id)),
        Field("scoop", lambda o: known.scoop_of(o.weigh_in_id)),
        Field("weigh-in", lambda o: o.weigh_in_id[:8]),
        Field("at", lambda o: o.at),
        Field("by", lambda o: o.by),
        Field("bag", lambda o: o.bag),
        Field("filled", lambda o: ways[o.way]),
        Field("scoopfuls", lambda o: o.scoopfuls),
        Field("weight", lambda o: o.mass_g, "g"),
        Field("as typed", lambda o: o.typed),
        Field("line below the rim", lambda o: o.line_mm, "mm"),
        Field("struck out because", lambda o: o.struck_reason or ""),
    )
    return table_of(fields, fills, underway)


def _spot_fills(spots: Sequence[SpotFill], known: _Names) -> FlatTable:
    ways = cell_words.ways()
    fields: tuple[Field[SpotFill], ...] = (
        Field("lot", lambda o: known.lot(o.lot_id)),
        Field("scoop", lambda o: known.scoop_of(o.weigh_in_id)),
        Field("at", lambda o: o.at),
        Field("by", lambda o: o.by),
        Field("filled", lambda o: ways[o.way]),
        Field("weight", lambda o: o.mass_g, "g"),
        Field("as typed", lambda o: o.typed),
        Field("line below the rim", lambda o: o.line_mm, "mm"),
        Field("struck out because", lambda o: o.struck_reason or ""),
    )
    return table_of(fields, spots)


def _marks(marks: Sequence[Mark], known: _Names) -> FlatTable:
    fields: tuple[Field[Mark], ...] = (
        Field("lot", lambda o: known.lot(o.lot_id)),
        Field("scoop", lambda o: known.scoop(o.scoop_id)),
        Field("target", lambda o: o.target_mass_g, "g"),
        Field("level scoops before", lambda o: o.full_scoops),
        Field("line above the floor", lambda o: o.height_mm, "mm"),
        Field("line below the rim", lambda o: o.down_wall_mm, "mm"),
        Field("to the line", lambda o: o.mass_g, "g"),
        Field("to the line, standard uncertainty", lambda o: o.mass_u_g, "g"),
    )
    return table_of(fields, marks)


def _trial_fills(fills: Sequence[TrialFill], known: _Names) -> FlatTable:
    def of(value: Callable[[FeederTrial], Cell]) -> Callable[[TrialFill], Cell]:
        return lambda o: value(known.trials[o.trial_id]) if o.trial_id in known.trials else None

    ways = cell_words.ways()
    fields: tuple[Field[TrialFill], ...] = (
        Field("trial begun", of(lambda t: t.started_at)),
        Field("lot", of(lambda t: known.lot(t.lot_id))),
        Field("scoop", of(lambda t: known.scoop(t.scoop_id))),
        Field("filled", of(lambda t: ways[t.way])),
        Field("line below the rim", of(lambda t: t.line_mm), "mm"),
        Field("number", lambda o: o.number),
        Field("person", lambda o: o.person),
        Field("weight", lambda o: o.mass_g, "g"),
        Field("as typed", lambda o: o.typed),
        Field("at", lambda o: o.at),
        Field("typed by", lambda o: o.by),
        Field("struck out because", lambda o: o.struck_reason or ""),
        Field("note of the trial", of(lambda t: t.note)),
        Field("trial withdrawn because", of(lambda t: t.withdrawn_reason)),
    )
    return table_of(fields, fills)
