"""How one row of a batch table came about: water, powder, scoopfuls, strength."""

from __future__ import annotations

from calibrator.desk import shown
from calibrator.desk.counted import counted
from calibrator.desk.how import amounts
from calibrator.desk.how.of_warmth import of_warmth
from calibrator.desk.how.working import (
    GUM,
    Part,
    Working,
    figure,
    interval,
    translate,
)
from calibrator.desk.rate_words import group_text, rate_text
from calibrator.desk.sheets import GroupSheet, PlanSheet, SheetLine
from calibrator.desk.table_words import Telling, additive_text, powder_text, telling, water_text, way_text
from calibrator.desk.warmth import Warm
from calibrator.model import ScoopRule, UnitSystem
from calibrator.science.batch import BatchRow
from calibrator.science.delivered import delivered
from calibrator.science.mixing import Mix
from calibrator.science.scoops import MOST_COUNTABLE, ScoopCount
from calibrator.science.vessels import usable_ml
from calibrator.units import show_scoopfuls

WATER = "Tanaka et al. 2001, Metrologia 38:301; Kell 1975, J. Chem. Eng. Data 20:97"


def of_row(sheet: PlanSheet, group: GroupSheet, line: SheetLine, known: Warm | None = None) -> tuple[Working, ...]:
    """A row of the table: by calves, or by the volume of water where the table has no such count."""
    row = next((group.table[n] for n in range(len(group)) if group.line(n) is line), None)
    scoopfuls = (_scoopfuls(group, line, line.scoops),) if line.scoops and line.scoops.told else ()
    warmth = of_warmth(sheet, group, line, known) if known else ()
    return (
        _amounts(sheet, group, line, row),
        *scoopfuls,
        _strength(group, line, assumed=sheet.powder.moisture_assumed),
        *warmth,
    )


def _amounts(sheet: PlanSheet, group: GroupSheet, line: SheetLine, row: BatchRow | None) -> Working:
    to = telling(group)
    title = translate("How", "Water and powder for {calves}").format(calves=counted.calves(line.calves))
    words = translate(
        "How",
        "One calf's feeding times the calves, in as few equal batches as the vessel holds, then rounded to what can "
        "be measured out.",
    )
    parts = (
        _ratio(group),
        _one_calf(sheet, group),
        *(_herd(row, group.farm.units) if row else ()),
        *(_batches(group, row) if row else ()),
        _water(line, to, row),
        *_powder(group, line, to, row),
        Part(
            translate("How", "What rounding does"),
            translate("How", "powder to water as measured out ÷ as wanted − 1"),
            shown.signed_share(line.batch.ratio_error_share, 2),
        ),
    )
    return Working(title, parts, (WATER,), words)


def _ratio(group: GroupSheet) -> Part:
    told = group.group
    mix = group.per_calf
    by_weight = translate("How", "by weight: {powder} ÷ {water}").format(
        powder=amounts.mass(mix.powder_g, group.farm.units), water=amounts.mass(mix.water_g, group.farm.units)
    )
    rate = f"{rate_text(told.rate, group.farm.units)}; " if told else ""
    return Part(translate("How", "Powder to water"), f"{rate}{by_weight}", figure(mix.ratio, 4))


def _one_calf(sheet: PlanSheet, group: GroupSheet) -> Part:
    told = [group_text(group.group, group.per_calf, group.farm.units)] if group.group else []
    told.append(
        translate("How", "water at its temperature weighs {water}").format(
            water=amounts.mass(group.per_calf.water_g, group.farm.units)
        )
    )
    if sheet.plan.allowance_share:
        extra = translate("How", "{share} for hoses and pails is in it")
        told.append(extra.format(share=shown.share(sheet.plan.allowance_share)))
    return Part(translate("How", "One calf"), "; ".join(told), _both(group.per_calf, group.farm.units))


def _both(mix: Mix, system: UnitSystem) -> str:
    return f"{amounts.volume(mix.water_ml, system)} + {amounts.mass(mix.powder_g, system)}"


def _herd(row: BatchRow, system: UnitSystem) -> tuple[Part, ...]:
    working = translate("How", "{calves} × one calf").format(calves=row.calves)
    return (Part(translate("How", "All calves"), working, _both(row.total, system)),)


def _batches(group: GroupSheet, row: BatchRow) -> tuple[Part, ...]:
    vessel = group.table.vessel
    if vessel is None:
        return ()
    working = translate("How", "finished mix ÷ usable room in the vessel ({vessel}), rounded up: {mix} ÷ {usable}")
    told = working.format(
        vessel=vessel.name,
        mix=amounts.volume(row.total.volume_ml, group.farm.units),
        usable=amounts.volume(usable_ml(vessel), group.farm.units),
    )
    return (Part(translate("How", "Batches"), told, str(row.batches)),)


def _water(line: SheetLine, to: Telling, row: BatchRow | None) -> Part:
    what, drawn = translate("How", "Water in a batch"), water_text(line.batch.drawn_ml, to)
    if line.trimmed_share is not None:
        working = translate("How", "drawn to suit whole scoopfuls: {share} of everything")
        return Part(what, working.format(share=shown.signed_share(line.trimmed_share)), drawn)
    if row is None:
        return Part(what, translate("How", "as asked for"), drawn)
    if line.batch.fill_to_ml is None:
        working = translate("How", "a batch's share is {exact}; to the step that this farm draws water in")
        return Part(what, working.format(exact=amounts.volume(row.per_batch.water_ml, to.system)), drawn)
    working = translate("How", "a batch's mix is {exact}, filled up to {volume}; less the powder's room, a step down")
    told = working.format(
        exact=amounts.volume(row.per_batch.volume_ml, to.system), volume=water_text(line.batch.fill_to_ml, to)
    )
    return Part(what, told, drawn)


def _powder(group: GroupSheet, line: SheetLine, to: Telling, row: BatchRow | None) -> tuple[Part, ...]:
    mix = line.batch.mix
    if line.trimmed_share is not None:
        working = translate("How", "what so many scoopfuls weigh")
    elif row is not None and not line.batch.for_water:
        text = translate("How", "a batch's share is {exact}; to the step of the scale")
        working = text.format(exact=amounts.mass(row.per_batch.powder_g, to.system))
    else:
        text = translate("How", "water × powder to water: {water} × {ratio}; to the step of the scale")
        working = text.format(water=amounts.mass(mix.water_g, to.system), ratio=figure(group.per_calf.ratio, 4))
    if len(line.shares) > 1:
        share = translate("How", "powder's share of all that is weighed in: {share}").format(
            share=shown.share(line.shares[0])
        )
        working = f"{working}; {share}"
    powder = Part(translate("How", "Powder in a batch"), working, powder_text(line.powder_g, to))
    others = (
        Part(
            name,
            translate("How", "its share of all that is weighed in: {share}").format(share=shown.share(share)),
            additive_text(mass_g, to),
        )
        for name, share, mass_g in zip(group.additives, line.shares[1:], line.additives_g, strict=False)
    )
    return (powder, *others)


def _scoopfuls(group: GroupSheet, line: SheetLine, count: ScoopCount) -> Working:
    to = telling(group)
    counts = " + ".join(
        f"{show_scoopfuls(number)} × {amounts.mass(way.mass_g, to.system)} ({way_text(way, to)})"
        for way, number in count.parts
    )
    together = Part(
        translate("How", "What they weigh"),
        translate("How", "{counts}, each as signed off for this lot").format(counts=counts),
        amounts.mass(count.total_g, to.system),
    )
    spread = Part(
        translate("How", "Spread"),
        translate(
            "How",
            "scoopfuls differ each for itself, the bag in hand differs from the others, and the lot's mean is known "
            "only so far: 95 %, as squares",
        ),
        f"± {amounts.mass(count.spread_95_g, to.system)}",
    )
    words = translate("How", "The count that people are told lies within the farm's tolerance of {tolerance}: {rule}")
    rule = (
        translate("How", "whole scoopfuls of one kind, and the water is drawn to suit them.")
        if group.rule.rule is ScoopRule.ONE_KIND
        else translate(
            "How",
            "filled in one manner over the whole table where that is within it, with no more than twice the fewest "
            "scoopfuls; else to the line of one scoop, else the fewest. More than {most} are better weighed.",
        ).format(most=MOST_COUNTABLE)
    )
    told = words.format(tolerance=shown.share(group.farm.tolerance_share), rule=rule)
    return Working(
        translate("How", "Scoopfuls"), (together, *_off(line, count, to.system), spread), (f"{GUM}, 5.1.2, 5.2",), told
    )


def _off(line: SheetLine, count: ScoopCount, system: UnitSystem) -> tuple[Part, ...]:
    if line.trimmed_share is not None:
        return ()
    wanted = translate("How", "count ÷ powder by weight − 1: {count} ÷ {powder}")
    told = wanted.format(count=amounts.mass(count.total_g, system), powder=amounts.mass(line.powder_g, system))
    return (Part(translate("How", "Off by"), told, shown.signed_share(count.error_share)),)


def _strength(group: GroupSheet, line: SheetLine, *, assumed: bool) -> Working:
    moisture = (
        translate(
            "How", "the same without the powder's own moisture, {share} (assumed: the label of the lot is silent)"
        )
        if assumed
        else translate("How", "the same without the powder's own moisture, {share}")
    )
    mix, powder, system = line.batch.mix, group.powder, group.farm.units
    parts = (
        Part(
            translate("How", "Finished mix"),
            translate("How", "water + powder × the room that 1 g takes in water: {water} + {powder} × {room}").format(
                water=amounts.volume_and_litres(mix.water_ml, system),
                powder=amounts.mass_and_grams(mix.powder_g, system),
                room=figure(powder.specific_volume_ml_per_g, 3, "mL/g"),
            ),
            amounts.volume_and_litres(mix.volume_ml, system),
        ),
        Part(
            translate("How", "Solids, as mixed"),
            f"{amounts.mass(mix.powder_g, system)} ÷ {amounts.mass(mix.mass_g, system)}",
            shown.share(mix.solids_share, 2),
        ),
        Part(
            translate("How", "Dry matter"),
            moisture.format(share=shown.share(powder.water_share)),
            shown.share(mix.dry_matter_share, 2),
        ),
        Part(
            translate("How", "Osmolality, an estimate"),
            translate("How", "1000 × powder to water × what 1 g brings: 1000 × {ratio} × {osmoles}").format(
                ratio=figure(mix.ratio, 4), osmoles=figure(powder.mosmol_per_g, 3, "mOsm/g")
            ),
            f"{figure(mix.osmolality_mosm_per_kg, 0)} ± {figure(2 * mix.osmolality_u, 0, 'mOsm/kg')}",
        ),
        *_as_counted(group, line),
    )
    words = translate(
        "How",
        "For powder by weight. The room that powder takes follows from fat, protein, lactose and ash on its label; "
        "osmolality from lactose and ash. An additive's laboratory value goes before its estimate.",
    )
    sources = translate("How", "additive volumes in solution, Walstra et al., Dairy Science and Technology")
    return Working(translate("How", "Strength and room"), parts, (sources,), words)


def _as_counted(group: GroupSheet, line: SheetLine) -> tuple[Part, ...]:
    if line.scoops is None or not line.scoops.countable:
        return ()
    made = delivered(
        line.scoops, line.batch.mix.water_ml, group.powder, group.water_temperature_c, sum(line.additives_g)
    )
    ends = interval(*(figure(100 * mix.solids_share) for mix in (made.low, made.high)))
    return (
        Part(
            translate("How", "Solids by scoopfuls"),
            translate("How", "the same with what the scoopfuls weigh, and with both ends of their spread"),
            f"{shown.share(made.mix.solids_share)} ({ends})",
        ),
    )
