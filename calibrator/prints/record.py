"""The lot sheet: the calibration record, enough for someone else to reckon it again."""

from __future__ import annotations

from collections.abc import Sequence
from math import isclose

from calibrator.model import Fill, SpotFill, UnitSystem, standing_numbers
from calibrator.prints import words
from calibrator.prints.fit import fit_line, plain
from calibrator.prints.flow import Flow, TableColumn, TableRow
from calibrator.prints.languages import Words
from calibrator.prints.lot_mark import draw_lot, lay_lot
from calibrator.prints.page import Anchor, Box, Document, Weight
from calibrator.prints.record_facts import LotSheet
from calibrator.prints.record_words import SHAPES, SOURCES, WAYS, Teller, decision, freedom
from calibrator.prints.sheet import Sheet, paper_mm
from calibrator.science.budget import BudgetRow
from calibrator.units import Kind, NotUnderstood, read, show_both, with_unit

_FOOT_MM = 8.0
_SIGNED_MM = 28.0  # who signed off, what it rests on, and the line to sign on
_SAME = 1e-3  # what was typed is what was kept, however a file that it came from had rounded it
_END = Anchor.END


def lot_sheet(facts: LotSheet) -> Document:
    """The record of one weigh-in, on as many pages as its fills ask."""
    said = Words.of(facts.languages)
    teller = Teller(facts, said)
    flow = Flow(paper_mm(facts.paper), lambda sheet, number: _frame(sheet, number, teller))
    _sections(flow, teller)
    _number_pages(flow, teller)
    title = f"{teller.say(words.LOT_SHEET)} {plain(facts.lot.lot_number)}"
    return Document(title, flow.pages())


def _sections(flow: Flow, teller: Teller) -> None:
    facts, say = teller.facts, teller.say
    flow.heading(say(words.THE_LOT))
    flow.pairs(teller.lot())
    flow.heading(say(words.SCOOP_AND_SCALE))
    flow.pairs(teller.scoop_and_scale())
    flow.heading(say(words.HOW_WEIGHED))
    flow.pairs(teller.how())
    for tongue in teller.said.tongues:
        flow.paragraph(tongue(words.METHOD))
    flow.heading(say(words.RESULTS))
    flow.pairs(teller.results())
    flow.heading(say(words.LINES))
    flow.table(_line_columns(teller), _line_rows(teller))
    flow.heading(say(words.VERDICTS))
    flow.pairs(teller.verdicts())
    _fills(flow, teller)
    if facts.level is not None:
        _budget(flow, teller, say(words.BUDGET), facts.level.budget)
    _budget(flow, teller, say(words.DENSITY_BUDGET), facts.density_budget)
    meant = [
        told
        for tongue in teller.said.tongues
        for told in (decision(tongue), tongue(words.COVERAGE), tongue(words.VALIDITY))
    ]
    # Nobody signs a page that tells of nothing.
    flow.heading(say(words.WHAT_IT_MEANS), sum(map(flow.height_of, meant)) + _SIGNED_MM)
    for told in meant:
        flow.paragraph(told)
    _signed(flow, teller)


def _signed(flow: Flow, teller: Teller) -> None:
    signed = teller.facts.sign_off
    who = plain(signed.by)
    flow.paragraph(teller.said.joined(lambda t: t(words.SIGNED).format(date=t.moment(signed.at), who=who), " / "))
    flow.paragraph(
        teller.said.tongues[0](words.VERSIONS).format(
            version=signed.program_version,
            scoop=signed.scoop_revision[:8],
            scale=signed.scale_revision[:8],
            lot=signed.lot_revision[:8],
            weigh_in=signed.weigh_in_id[:8],
        )
    )
    flow.signature(teller.say(words.SIGNATURE))


def _line_columns(teller: Teller) -> tuple[TableColumn, ...]:
    say = teller.say
    return (
        TableColumn(say(words.COLUMN_TARGET), 2.2),
        TableColumn(say(words.COLUMN_FULL), 1.7, _END),
        TableColumn(say(words.COLUMN_DOWN), 2.6, _END),
        TableColumn(say(words.COLUMN_HEIGHT), 2.6, _END),
        TableColumn(say(words.COLUMN_WEIGHS), 3.6, _END),  # without the level scoops before
    )


def _line_rows(teller: Teller) -> list[TableRow]:
    units = teller.facts.units
    return [
        TableRow(
            (
                show_both(mark.target_mass_g, Kind.MASS, units),
                str(mark.full_scoops),
                teller.say(words.STRUCK_LEVEL) if mark.struck_level else teller.length(mark.down_wall_mm),
                teller.length(mark.height_mm),
                teller.estimate(mark.mass_g, teller.facts.line_coverage * mark.mass_u_g),
            ),
            Weight.SEMIBOLD,
        )
        for mark in teller.facts.marks
    ]


def _fills(flow: Flow, teller: Teller) -> None:
    facts = teller.facts
    flow.heading(teller.say(words.FILLS))
    flow.table(_fill_columns(teller), _fill_rows(facts.fills, teller))
    if facts.spot_fills:
        flow.heading(teller.say(words.SPOT_FILLS), 24.0)
        flow.table(_fill_columns(teller), _fill_rows(facts.spot_fills, teller))


def _fill_columns(teller: Teller) -> tuple[TableColumn, ...]:
    say = teller.say
    return (
        TableColumn(say(words.COLUMN_NUMBER), 0.9, _END),
        TableColumn(say(words.COLUMN_BAG), 1.1, _END),
        TableColumn(say(words.COLUMN_WAY), 2.1),
        TableColumn(say(words.COLUMN_SCOOPFULS), 1.3, _END),
        TableColumn(say(words.COLUMN_TYPED), 1.9, _END),
        TableColumn(say(words.COLUMN_GRAMS), 1.7, _END),
        TableColumn(say(words.COLUMN_LINE), 1.7, _END),
        TableColumn(say(words.COLUMN_WHO), 1.3),
        TableColumn(say(words.COLUMN_WHEN), 3.6),  # day and time on one line
        TableColumn(say(words.NOTE), 2.5),
    )


def _fill_rows(fills: Sequence[Fill | SpotFill], teller: Teller) -> list[TableRow]:
    return [_fill_row(number, fill, teller) for number, fill in zip(standing_numbers(fills), fills, strict=True)]


def _fill_row(number: int | None, fill: Fill | SpotFill, teller: Teller) -> TableRow:
    """A struck-out fill stands in brackets and without a number, with its reason."""
    struck = fill.struck_reason is not None
    grams = f"{fill.mass_g:.2f}"
    reason = teller.say(words.STRUCK_OUT, reason=plain(fill.struck_reason or "–")) if struck else ""
    cells = (
        str(number or "–"),
        str(fill.bag) if isinstance(fill, Fill) else "",
        teller.say(WAYS[fill.way]),
        str(fill.scoopfuls) if isinstance(fill, Fill) else "1",
        plain(_as_read(fill, teller.facts.units)),
        f"({grams})" if struck else grams,
        "" if fill.line_mm is None else _line(fill.line_mm, teller),
        plain(fill.by),
        teller.said.tongues[0].moment(fill.at),
        reason,
    )
    return TableRow(cells)


def _line(mm: float, teller: Teller) -> str:
    farm = teller.facts.units is UnitSystem.FARM
    return teller.said.tongues[0].length(mm, UnitSystem.FARM) if farm else f"{mm:.1f} mm"


def _as_read(fill: Fill | SpotFill, units: UnitSystem) -> str:
    """As typed, with the unit that a bare number had: the farm may have weighed in the other ones then."""
    for system in sorted(UnitSystem, key=lambda other: other is not units):
        try:
            found = read(fill.typed, Kind.MASS, system)
        except NotUnderstood:
            continue
        if isclose(found.value, fill.mass_g, rel_tol=_SAME):
            return with_unit(fill.typed.strip(), Kind.MASS, system)
    return fill.typed


def _budget(flow: Flow, teller: Teller, title: str, rows: Sequence[BudgetRow]) -> None:
    if not rows:
        return
    say = teller.say
    columns = (
        TableColumn(say(words.COLUMN_SOURCE), 3.4),
        TableColumn(say(words.COLUMN_SHAPE), 2.2),
        TableColumn(say(words.COLUMN_U), 2.0, _END),
        TableColumn(say(words.COLUMN_SENSITIVITY), 2.0, _END),
        TableColumn(say(words.COLUMN_CONTRIBUTION), 2.2, _END),
        TableColumn(say(words.COLUMN_SHARE), 1.4, _END),
        TableColumn(say(words.COLUMN_FREEDOM), 1.2, _END),
        TableColumn(say(words.NOTE), 2.2),
    )
    flow.heading(title, 24.0)
    flow.table(columns, [_budget_row(row, teller) for row in rows])


def _budget_row(row: BudgetRow, teller: Teller) -> TableRow:
    notes = [words.ASSUMED] if row.assumed else []
    notes += [words.CONTAINED] if row.contained else []
    return TableRow(
        (
            teller.say(SOURCES[row.source]),
            teller.say(SHAPES[row.distribution]),
            f"{row.standard_uncertainty:.4g} {row.unit}",
            f"{row.sensitivity:.4g}",
            f"{row.contribution:.3g}",
            f"{100 * row.share:.0f} %",
            freedom(row.degrees_of_freedom),
            ", ".join(teller.say(note) for note in notes),
        )
    )


def _frame(sheet: Sheet, number: int, teller: Teller) -> tuple[float, float]:
    """The head of a page: whole on the first, one line on the others."""
    body = sheet.body
    bottom = body.bottom_mm - _FOOT_MM
    if number == 1:
        return _first_head(sheet, teller), bottom
    told = f"{teller.say(words.LOT_SHEET)} · {plain(teller.facts.lot.lot_number)}"
    line = fit_line(told, body.width_mm * 0.66, 4.0, 2.6, Weight.BOLD)
    sheet.text(line.text, body.x_mm, body.y_mm + 3.4, line.size_mm, Weight.BOLD)
    farm = fit_line(plain(teller.facts.farm.name), body.width_mm * 0.3, 3.6, 2.4)
    sheet.text(farm.text, body.right_mm, body.y_mm + 3.4, farm.size_mm, anchor=_END)
    return body.y_mm + 7.0, bottom


def _first_head(sheet: Sheet, teller: Teller) -> float:
    body, facts = sheet.body, teller.facts
    half = body.width_mm * 0.5
    title = fit_line(teller.say(words.LOT_SHEET), half - 3, 7.0, 4.0, Weight.BOLD)
    sheet.text(title.text, body.x_mm, body.y_mm + 6.0, title.size_mm, Weight.BOLD)
    farm = fit_line(plain(facts.farm.name), half - 3, 4.6, 3.0, Weight.SEMIBOLD)
    sheet.text(farm.text, body.x_mm, body.y_mm + 13.0, farm.size_mm, Weight.SEMIBOLD)
    signed = facts.sign_off
    told = [teller.said.joined(lambda t: t(words.WEIGHED_IN).format(date=t.date(signed.at.astimezone().date())), " / ")]
    if facts.number is not None:
        phrase = words.SHEET_NUMBER if facts.replaces is None else words.SHEET_REPLACES
        told.insert(0, teller.say(phrase, number=facts.number, old=facts.replaces))
    for place, text in enumerate(told):
        weight = Weight.REGULAR if text is told[-1] else Weight.BOLD
        line = fit_line(text, half - 3, 3.8, 2.6, weight)
        sheet.text(line.text, body.x_mm, body.y_mm + 18.4 + 5.0 * place, line.size_mm, weight)
    box = Box(body.x_mm + half, body.y_mm, half, 24.0)
    sheet.frame(box, 0.8)
    sheet.text(teller.say(words.LOT), box.x_mm + 2.6, box.y_mm + 5.0, 3.2, Weight.BOLD)
    mark = lay_lot(facts.lot.lot_number, box.width_mm - 6, 13.0, 8.0, 3.4, 2)
    scale = min(1.0, (box.height_mm - 7.5) / mark.height_mm)
    mark = lay_lot(facts.lot.lot_number, box.width_mm - 6, 13.0 * scale, 8.0 * scale, 3.4 * scale, 2)
    draw_lot(sheet, mark, box.x_mm + 3, box.y_mm + 6.4)
    return box.bottom_mm + 2.0


def _number_pages(flow: Flow, teller: Teller) -> None:
    """Feet are drawn last, when the number of pages is known."""
    facts, pages = teller.facts, len(flow.sheets)
    printed = ""
    if facts.printed_at is not None:
        at = facts.printed_at
        printed = teller.said.joined(lambda t: t(words.PRINTED).format(date=t.moment(at)), " / ")
    for number, sheet in enumerate(flow.sheets, start=1):
        body = sheet.body
        sheet.text(printed, body.x_mm, body.bottom_mm - 0.8, 2.8)
        told = teller.say(words.PAGE_OF, page=number, pages=pages)
        sheet.text(told, body.right_mm, body.bottom_mm - 0.8, 2.8, anchor=_END)
