"""The season on two pages at most: densities and what happened, what was fed; where the spread comes from, what to do,
the lots."""

from __future__ import annotations

from collections.abc import Iterator
from functools import partial

from calibrator.model import SeasonLot, UnitSystem
from calibrator.prints import words
from calibrator.prints.fit import fit_line, plain
from calibrator.prints.flow import Flow, TableColumn, TableRow
from calibrator.prints.languages import Tongue, Words
from calibrator.prints.page import Anchor, Box, Document, Weight
from calibrator.prints.season_chart import ROW_MM, SpreadBar, draw_densities, draw_spreads
from calibrator.prints.season_facts import MOST_CARRIED, BagsCounted, Carried, LastChange, SeasonReport, SpotFilled
from calibrator.prints.season_told import RULES, WANTING, checks_told, finding_told, percent, signed_percent, to_do
from calibrator.prints.sheet import Sheet, paper_mm
from calibrator.science.lot_chart import FEWEST_FOR_LIMITS, Charted
from calibrator.science.mark import OldLineVerdict
from calibrator.science.season_findings import FEWEST_TO_JUDGE
from calibrator.units import HUNDREDTH_OZ_G, density_unit, show_density, show_mass, show_percent, with_sign

PAGES = 2
MOST_FINDINGS = 6
MOST_ROWS = 40
_CHART_MM, _FEW_MM = 88.0, 46.0  # few lots have no limits and no running mean to be read
_FOOT_MM = 8.0
_END = Anchor.END
_HOLDS = {
    OldLineVerdict.KEEP: words.MARK_HOLDS,
    OldLineVerdict.MOVE: words.MARK_MOVES,
    OldLineVerdict.WEIGH_MORE: words.MARK_UNSURE,
}


def season_report(facts: SeasonReport) -> Document:
    """A page, or two, in the first of the languages asked for. Lots without room in the table are counted below it.

    Raises ValueError for a season without lots, or a language that is not there.
    """
    if not facts.season.lots:
        raise ValueError("A season report needs a lot.")
    tongue = Words.of(facts.languages).tongues[0]
    flow = _laid(facts, tongue, _rows_that_fit(facts, tongue))
    _feet(flow, facts, tongue)
    return Document(f"{tongue(words.SEASON_REPORT)} {plain(facts.farm_name)}", flow.pages())


def _rows_that_fit(facts: SeasonReport, tongue: Tongue) -> int:
    """The most rows of lots with which it is no more than two pages."""
    fits, too_many = 0, min(MOST_ROWS, len(facts.season.lots)) + 1
    while too_many - fits > 1:
        rows = (fits + too_many) // 2
        if len(_laid(facts, tongue, rows).sheets) <= PAGES:
            fits = rows
        else:
            too_many = rows
    return fits


def _laid(facts: SeasonReport, tongue: Tongue, rows: int) -> Flow:
    flow = Flow(paper_mm(facts.paper), lambda sheet, number: _frame(sheet, number, facts, tongue))
    _densities(flow, facts, tongue)
    _happened(flow, facts, tongue)
    _carried(flow, facts, tongue)
    _fed(flow, facts, tongue)
    _spread(flow, facts, tongue)
    flow.heading(tongue(words.WHAT_TO_DO))
    for told in to_do(facts, tongue):
        flow.paragraph(f"•\u00a0{told}")
    _lots(flow, facts, tongue, rows)
    return flow


def _densities(flow: Flow, facts: SeasonReport, tongue: Tongue) -> None:
    unit, _ = density_unit(facts.units)
    axis = tongue(words.DENSITY_AXIS).format(unit=unit)
    flow.heading(f"{tongue(words.DENSITY_BY_LOT)} ({axis})")
    season = facts.season

    def draw(sheet: Sheet, room: Box) -> None:
        draw_densities(sheet, room, season.lots, season.chart, facts.units, tongue)

    enough = len(season.lots) >= FEWEST_FOR_LIMITS
    flow.picture(_CHART_MM if enough else _FEW_MM, draw)
    drawn = [words.DOTS_READ]
    if enough:
        drawn.append(words.LIMITS_READ)
    if any(one.rules for one in season.chart.lots):
        drawn.append(words.RING_MARKS)
    flow.paragraph(" ".join(map(tongue, drawn)))


def _happened(flow: Flow, facts: SeasonReport, tongue: Tongue) -> None:
    flow.heading(tongue(words.WHAT_HAPPENED))
    findings = facts.season.findings
    if (change := facts.change) is not None:
        told, share = {"lot": plain(change.lot_number), "before": plain(change.before)}, percent(change.share)
        sentence = words.LAST_CHANGE_LESS if change.share < 0 else words.LAST_CHANGE_MORE
        if share == percent(0.0):
            sentence = words.LAST_CHANGE_NONE
        flow.paragraph(" ".join((tongue(sentence).format(**told, share=share), *_lines(change, facts.units, tongue))))
        for of in _corrected(change, facts.units, tongue):
            flow.paragraph(of)
    for one in facts.moved:
        anew = tongue(words.WEIGHED_ANEW).format(lot=plain(one.lot_number), date=tongue.date(one.on))
        flow.paragraph(f"{anew} {_line_told(one.before_mm, one.line_mm, facts.units, tongue)}")
    for finding in findings[-MOST_FINDINGS:]:
        flow.paragraph(finding_told(finding, tongue))
    if not findings:
        few = len(facts.season.lots) < FEWEST_TO_JUDGE
        flow.paragraph(tongue(words.FEW_LOTS if few else words.NOTHING_HAPPENED))
    if len(findings) > MOST_FINDINGS:
        flow.paragraph(tongue(words.OLDER_FINDINGS).format(count=len(findings) - MOST_FINDINGS))


def _lines(change: LastChange, units: UnitSystem, tongue: Tongue) -> Iterator[str]:
    """From which line to which; nothing where one is not known."""
    if change.line_mm is not None and change.before_line_mm is not None:
        yield _line_told(change.before_line_mm, change.line_mm, units, tongue)


def _line_told(before_mm: float, line_mm: float, units: UnitSystem, tongue: Tongue) -> str:
    """From which line to which; 0 mm is no line but the rim."""
    old, new = (tongue.length(mm, units) for mm in (before_mm, line_mm))
    phrase = {
        (True, True): words.LINE_SAME if old == new else words.LINE_MOVED,
        (True, False): words.LINE_GONE,
        (False, True): words.LINE_FIRST,
        (False, False): words.LINE_NONE,
    }[before_mm > 0, line_mm > 0]
    return tongue(phrase).format(old=old, new=new)


def _corrected(change: LastChange, units: UnitSystem, tongue: Tongue) -> Iterator[str]:
    """What of the difference is no powder's but was worked out for the scale."""
    pairs = ((change.before, change.before_taken_off_g), (change.lot_number, change.taken_off_g))
    for lot, taken_off_g in pairs:
        if taken_off_g:
            phrase = words.SCALE_TAKEN_OFF if taken_off_g > 0 else words.SCALE_ADDED
            yield tongue(phrase).format(
                lot=plain(lot), mass=show_mass(abs(taken_off_g), units, resolution_g=HUNDREDTH_OZ_G)
            )


def _carried(flow: Flow, facts: SeasonReport, tongue: Tongue) -> None:
    flow.heading(tongue(words.WHAT_FEEDING))
    if not facts.carried:
        flow.paragraph(tongue(words.NOTHING_CARRIED))
        return
    columns = (
        TableColumn(tongue(words.THE_LOT), 2.4),
        TableColumn(tongue(words.COLUMN_LINE_OF), 2.4),
        TableColumn(tongue(words.COLUMN_FEEDING), 1.8, _END),
        TableColumn(tongue(words.INTERVAL_95), 2.4, _END),
        TableColumn(tongue(words.COLUMN_OFF_TARGET), 1.6, _END),
        TableColumn(tongue(words.COLUMN_SOLIDS), 1.3, _END),
        TableColumn(tongue(words.COLUMN_MONEY).format(currency=facts.currency), 1.8, _END),
    )
    newest = facts.carried[-MOST_CARRIED:]
    flow.table(columns, [_carried_row(one, facts.units, tongue) for one in reversed(newest)])
    not_entered = {what for one in newest for what in one.wanting}
    read = (words.MONEY_READ, *(told for what, told in WANTING.items() if what in not_entered))
    flow.paragraph(" ".join(map(tongue, read)))


def _fed(flow: Flow, facts: SeasonReport, tongue: Tongue) -> None:
    """Bags counted first: over days they are the surest."""
    flow.heading(tongue(words.WHAT_WAS_FED))
    if facts.counted:
        told = "; ".join(_got(one, facts.units, tongue) for one in facts.counted)
        flow.paragraph(tongue(words.BAGS_COUNTED).format(lots=told))
    if facts.spot_fills:
        told = "; ".join(_still(one, facts.units, tongue) for one in facts.spotted)
        phrase = words.SPOTS_TOLD if told else words.SPOTS_ONLY
        flow.paragraph(tongue(phrase).format(count=facts.spot_fills, lots=told))
    flow.paragraph(checks_told(facts.checks, tongue))


def _still(one: SpotFilled, units: UnitSystem, tongue: Tongue) -> str:
    return tongue(words.SPOTS_OF_LOT).format(
        lot=plain(one.lot_number),
        fills=one.fills,
        mass=show_mass(one.mass_g, units),
        share=signed_percent(one.share),
        verdict=tongue(_HOLDS[one.verdict]),
    )


def _got(one: BagsCounted, units: UnitSystem, tongue: Tongue) -> str:
    return tongue(words.BAGS_OF_LOT).format(
        lot=plain(one.lot_number),
        mass=show_mass(one.mass_g, units),
        share=signed_percent(one.share),
        count=f"{one.feedings:,}",
    )


def _carried_row(one: Carried, units: UnitSystem, tongue: Tongue) -> TableRow:
    low, high = show_mass(one.low_g, units), show_mass(one.high_g, units)
    money = one.money_a_day
    cells = (
        plain(one.lot_number),
        tongue(words.FILLED_LEVEL).format(lot=plain(one.before)) if one.level else plain(one.before),
        show_mass(one.mass_g, units),
        f"{low.rpartition(' ')[0]} – {high}",
        signed_percent(one.off_share),
        "–" if one.solids_share is None else show_percent(100 * one.solids_share, 1),
        "–" if money is None else with_sign(f"{abs(money):.2f}", money),
    )
    return TableRow(cells)


def _spread(flow: Flow, facts: SeasonReport, tongue: Tongue) -> None:
    flow.heading(tongue(words.WHERE_SPREAD), 3 * ROW_MM + 8.0)
    if facts.spread is None:
        flow.paragraph(tongue(words.SPREAD_TOO_FEW))
        return
    found, tells = facts.spread.components, facts.spread.lots_tell
    bars = (
        SpreadBar(tongue(words.BETWEEN_LOTS), *((found.lot_sd, found.lot_sd_interval) if tells else (None, None))),
        SpreadBar(tongue(words.BETWEEN_BAGS), found.bag_sd, found.bag_sd_interval),
        SpreadBar(tongue(words.BETWEEN_FILLS), found.fill_sd, found.fill_sd_interval),
    )
    flow.picture(ROW_MM * len(bars) + 1, lambda sheet, room: draw_spreads(sheet, room, bars, tongue(words.CANNOT_TELL)))
    flow.paragraph(tongue(words.SPREAD_READ) + ("" if tells else f" {tongue(words.SPREAD_FEW_LOTS)}"))


def _lots(flow: Flow, facts: SeasonReport, tongue: Tongue, rows: int) -> None:
    flow.heading(tongue(words.ALL_LOTS))
    columns: tuple[TableColumn, ...] = (
        TableColumn(tongue(words.THE_LOT), 2.6),
        TableColumn(tongue(words.COLUMN_ARRIVED), 2),
        TableColumn(tongue(words.COLUMN_WEIGHED), 2),
        TableColumn(tongue(words.SCOOP), 2.2),
        TableColumn(density_unit(facts.units)[0], 1.2, _END),
        TableColumn(tongue(words.INTERVAL_95), 2.2, _END),
        TableColumn(tongue(words.COLUMN_OFF), 1.6, _END),
        TableColumn(tongue(words.COLUMN_LINE_DOWN), 1.6, _END),
    )
    pairs = list(zip(facts.season.lots, facts.season.chart.lots, strict=True))[::-1]
    if marked := any(one.rules for _, one in pairs[:rows]):
        columns += (TableColumn(tongue(words.COLUMN_RULES), 3.4),)
    made = [_row(lot, one, facts.units, tongue) for lot, one in pairs[:rows]]
    flow.table(columns, made if marked else [TableRow(row.cells[:-1], row.weight) for row in made])
    if len(pairs) > rows:
        flow.paragraph(tongue(words.OLDER_LOTS).format(count=len(pairs) - rows))


def _row(lot: SeasonLot, one: Charted, units: UnitSystem, tongue: Tongue) -> TableRow:
    half = lot.density_half_width_g_per_ml
    density = partial(show_density, system=units, half_width=half, interval=False, unit=False)
    cells = (
        plain(lot.lot_number),
        tongue.date(lot.arrived_on) if lot.arrived_on else "–",
        tongue.date(lot.weighed_on),
        plain(lot.scoop_name),
        density(lot.density_g_per_ml),
        " – ".join(density(end) for end in (lot.density_low_g_per_ml, lot.density_high_g_per_ml)),
        signed_percent(one.off),
        "–" if lot.down_wall_mm is None else tongue.length(lot.down_wall_mm, units),
        ", ".join(tongue(RULES[rule]) for rule in one.rules),
    )
    return TableRow(cells, Weight.SEMIBOLD if one.rules else Weight.REGULAR)


def _frame(sheet: Sheet, number: int, facts: SeasonReport, tongue: Tongue) -> tuple[float, float]:
    body, lots = sheet.body, facts.season.lots
    bottom = body.bottom_mm - _FOOT_MM
    size = 7.0 if number == 1 else 4.0
    title = fit_line(tongue(words.SEASON_REPORT), body.width_mm * 0.5, size, 3.0, Weight.BOLD)
    sheet.text(title.text, body.x_mm, body.y_mm + size * 0.85, title.size_mm, Weight.BOLD)
    farm = fit_line(plain(facts.farm_name), body.width_mm * 0.46, size * 0.7, 2.6, Weight.SEMIBOLD)
    sheet.text(farm.text, body.right_mm, body.y_mm + size * 0.85, farm.size_mm, Weight.SEMIBOLD, _END)
    if number > 1:
        return body.y_mm + 6.0, bottom
    first, last = (tongue.date(lots[place].weighed_on) for place in (0, -1))
    told = tongue(words.LOTS_FROM_TO if first != last else words.LOTS_OF_A_DAY)
    told = told.format(count=len(lots), first=first, last=last)
    if facts.fed:
        told = f"{told} · {tongue(words.LOT_FED).format(lot=plain(facts.fed))}"
    line = fit_line(told, body.width_mm, 3.6, 2.6)
    sheet.text(line.text, body.x_mm, body.y_mm + 12.0, line.size_mm)
    return body.y_mm + 14.0, bottom


def _feet(flow: Flow, facts: SeasonReport, tongue: Tongue) -> None:
    for number, sheet in enumerate(flow.sheets, start=1):
        body = sheet.body
        line = fit_line(tongue(words.REPORT_CAUTION), body.width_mm - 60, 2.6, 2.0)
        sheet.text(line.text, body.x_mm, body.bottom_mm - 0.8, line.size_mm)
        printed = tongue(words.PRINTED).format(date=tongue.date(facts.printed_on))
        page = tongue(words.PAGE_OF).format(page=number, pages=len(flow.sheets))
        sheet.text(f"{printed} · {page}", body.right_mm, body.bottom_mm - 0.8, 2.6, anchor=_END)
