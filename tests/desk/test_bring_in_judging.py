"""What a farm's own table means: headings, units, days of three orders, decimal signs, faults by row and column."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, datetime, time
from typing import Any

import pytest

from calibrator.desk.bring_in.cells import NotTaken
from calibrator.desk.bring_in.choices import Ask, Bags, Choices, Question, begun, questions, with_settled
from calibrator.desk.bring_in.judging import Judged, There, judge
from calibrator.desk.bring_in.meanings import Meaning, column_name, heading_row, headings_of, meaning_of, unit_of
from calibrator.desk.bring_in.orders import (
    DayOrder,
    clock_in,
    commas,
    counts_days,
    day_in,
    day_orders,
    text_of,
    with_point,
)
from calibrator.desk.days import DayNotUnderstood
from calibrator.model import Cylinder, Farm, FillWay, Lot, PackageKind, Scale, Scoop
from calibrator.records.foreign.table import CellError, ForeignTable, Share, Value

FARM = Farm(id="f", name="Windy Hollow")
SCOOP = Scoop(
    id="s", farm_id="f", name="Red scoop", shape=Cylinder(diameter_mm=96, height_mm=92), volume_ml=666, volume_u_ml=3
)
SCALE = Scale(
    id="k", farm_id="f", name="Kitchen scale", resolution_g=1, resolution_typed="1 g", capacity_g=2000,
    capacity_typed="2 kg",
)  # fmt: skip
TODAY = date(2026, 3, 2)


def table(*rows: tuple[Value, ...], from_1904: bool | None = None, **more: Any) -> ForeignTable:
    return ForeignTable("weights", rows, from_1904=from_1904, **more)


def settled(rows: ForeignTable, **told: Any) -> Choices:
    """Choices with the file's own questions answered in the usual way."""
    asked = begun(rows, heading_row(rows), "AB")
    usual = {"way": FillWay.LEVEL, "bags": Bags.ONE, "scoops": {"": "s", "Red scoop": "s"}, "scale_id": "k"}
    return with_settled(rows, replace(asked, **(usual | told)))


def judged(rows: ForeignTable, lots: tuple[Lot, ...] = (), **told: Any) -> Judged:
    asked = settled(rows, **told)
    assert questions(rows, asked) == []
    return judge(rows, asked, There(FARM, lots, {"s": SCOOP}, {"k": SCALE}), TODAY)


def faults(found: Judged) -> list[tuple[int, str, str]]:
    return [(one.row, one.column, one.found) for one in found.faults]


@pytest.mark.parametrize(
    ("heading", "meaning", "unit"),
    [
        ("LOT no.", Meaning.LOT, ""),
        ("Número de lote", Meaning.LOT, ""),
        ("Net weight (oz)", Meaning.NET, "oz"),
        ("Weight, lbs", Meaning.NET, "lb"),
        ("Peso neto [kg]", Meaning.NET, "kg"),
        ("Peso del costal (kg)", Meaning.PACKAGE_MASS, "kg"),
        ("Fill 3 g", Meaning.NET, "g"),
        ("Date received", Meaning.ARRIVED, ""),
        ("Fecha", Meaning.WHEN, ""),
        ("Medida", Meaning.SCOOP, ""),
        ("Quién", Meaning.BY, ""),
        ("Brand", Meaning.PRODUCT, ""),
        ("Marca", Meaning.PRODUCT, ""),
        ("Date rec'd", Meaning.ARRIVED, ""),
        ("Peso en gramos", Meaning.NET, "g"),
        ("Peso (gramos)", Meaning.NET, "g"),
        ("Weight in grams", Meaning.NET, "g"),
        ("Gramos", Meaning.NET, "g"),
        ("Peso del costal en kg", Meaning.PACKAGE_MASS, "kg"),
        ("Date in", Meaning.ARRIVED, ""),
        ("# bags", Meaning.PACKAGES, ""),
        ("Bag wt (lb)", Meaning.PACKAGE_MASS, "lb"),
        ("Lb/bag", Meaning.PACKAGE_MASS, "lb"),
        ("Peso c/u (kg)", Meaning.PACKAGE_MASS, "kg"),
        ("N.º de lote", Meaning.LOT, ""),
        ("Costal n.º", Meaning.BAG, ""),
        ("Peso medida (g)", Meaning.NET, "g"),
        ("Proteína cruda (%)", Meaning.PROTEIN, ""),
        ("¿Cómo?", Meaning.WAY, ""),
        ("colour", Meaning.NOTHING, ""),
    ],
)
def test_headings_are_known_by_their_words_and_tell_units(heading: str, meaning: Meaning, unit: str) -> None:
    assert (meaning_of(heading), unit_of(heading)) == (meaning, unit)


@pytest.mark.parametrize("heading", ["Peso (gr)", "Peso grs.", "Weight [GR]"])
def test_gr_is_grams_on_a_metric_farm_and_asked_elsewhere(heading: str) -> None:
    assert meaning_of(heading) is Meaning.NET
    rows = table(("Lote", heading), ("A1", "331"))
    assert begun(rows, 0, "MK", gr_is_gram=True).units == {1: "g"}
    assert Question(Ask.UNIT, 1) in questions(rows, begun(rows, 0, "MK"))


def test_title_rows_above_the_headings_are_passed_over() -> None:
    rows = table(("Windy Hollow", None), (), ("Season 2024",), ("Lot", "Product"), ("A", "x"))
    assert heading_row(rows) == 3
    assert heading_row(table(("1", "2"))) is None
    assert headings_of(rows, None) == ("", "")
    assert column_name(27) == "AB"


def test_of_two_equal_headings_the_second_is_left_out_but_weights_may_stand_side_by_side() -> None:
    rows = table(("Lot", "Lot", "Day", "Fill 1 (g)", "Fill 2 (g)"), ("A", "B", date(2025, 3, 4), 330, 340))
    found = judged(rows, bags=Bags.OWN)
    assert [lot.lot_number for lot in found.past.lots] == ["A"]
    assert [(fill.bag, fill.mass_g) for fill in found.past.fills] == [(1, 330), (2, 340)]


def cells(*texts: Value) -> list[tuple[int, Value]]:
    return list(enumerate(texts))


@pytest.mark.parametrize(
    ("texts", "answer", "row"),
    [
        (("3/4/2025", "12/25/2025"), "mdy", 1),
        (("3/4/2025", "25/12/2025", "1/1/2025"), "dmy", 1),
        (("25/12/31", "12/25/31"), "", None),
        (("3/4/2025", "5/6/2025"), "", None),
        (("25/3/2025", "3/25/2025"), "", None),  # no one order reads both
    ],
)
def test_a_day_that_can_be_read_one_way_only_settles_its_column(
    texts: tuple[str, ...], answer: str, row: int | None
) -> None:
    found = day_orders(cells(*texts))
    assert (found.answer, found.row) == (answer, row)
    assert found.asks is (answer == "")


def test_days_that_need_no_order_are_not_asked_about() -> None:
    found = day_orders(cells("2025-03-04", "Mar 4 2025", "4 de marzo de 2025", None, date(2025, 3, 4), "soon"))
    assert not found.matters


@pytest.mark.parametrize(
    ("texts", "answer"),
    [
        (("1,234", "10.5"), "."),
        (("10,5 oz", "9"), ","),
        (("1.234,5",), ","),
        (("1'234.5",), "."),
        (("1,234",), ""),
        (("10.5", "10,5"), ""),
        (("$1.250", "$980,50"), ","),
        (("MX$ 1.250", "S/. 980,50 c/u"), ","),
        (("$1,250", "$980.50"), "."),
        (("$1.250", "$980"), ""),
    ],
)
def test_the_decimal_sign_is_settled_by_the_column_or_asked(texts: tuple[str, ...], answer: str) -> None:
    assert commas(cells(*texts)).answer == answer
    assert commas(cells(*texts)).asks is (answer == "")


def test_numbers_without_signs_are_not_asked_about() -> None:
    assert not commas(cells("12", "x", 10.5)).matters
    assert with_point("1.234,5 oz", ",") == "1234.5 oz"
    assert with_point("1,234.5", ".") == "1234.5"
    assert with_point("MX$ 1.250", ",") == "MX$ 1250"
    assert with_point("$980,50 MXN", ",") == "$980.50 MXN"
    assert with_point("10,5", ".") == "10,5"  # which can only be a decimal comma, and is read as one
    assert with_point("about ten", ".") == "about ten"


@pytest.mark.parametrize(
    ("cell", "from_1904", "told"),
    [
        (45355, False, date(2024, 3, 4)),  # ECMA-376 part 1, 18.17.4.1: 1 January 1900 is day 1, 1904 begins at 0
        ("45355", False, date(2024, 3, 4)),
        (43893.5, True, datetime(2024, 3, 4, 12)),
        ("4/3/2024", False, date(2024, 3, 4)),
        ("4/3/24 2:30 PM", False, datetime(2024, 3, 4, 14, 30)),
        ("2024-03-04T06:30", False, datetime(2024, 3, 4, 6, 30)),
        ("4 de marzo de 2024", False, date(2024, 3, 4)),
    ],
)
def test_days_of_every_kind(cell: Value, from_1904: bool, told: date) -> None:
    assert day_in(cell, DayOrder.DAY_MONTH, from_1904) == told


@pytest.mark.parametrize(
    ("cell", "code"),
    [
        ("3/4/2025", "two_ways"), ("31/31/2025", "no_such_day"), (12, "no_day"), ("soon", "no_day"),
        (CellError("#N/A"), "no_day"), ("2025-03-04 25:00", "no_day"), (True, "no_day"),
    ],
)  # fmt: skip
def test_what_is_no_day_is_refused(cell: Value, code: str) -> None:
    with pytest.raises(DayNotUnderstood) as refused:
        day_in(cell, None, False)
    assert refused.value.code == code
    assert not counts_days(cells("4/3/2024", 12, True, None))


@pytest.mark.parametrize(
    ("cell", "told"),
    [(time(6, 30), (6, 30)), (0.25, (6, 0)), ("6:30 pm", (18, 30)), ("half past", None), ("99:99", None), (7, None)],
)
def test_times_of_day(cell: Value, told: tuple[int, int] | None) -> None:
    assert clock_in(cell) == told


def test_a_row_of_everything() -> None:
    heads = (
        "Lot", "Product", "Supplier", "Plant code", "Arrived", "Made", "Bags", "Bag weight (lb)", "Price", "Protein",
        "Medicated", "Kind of package", "Remark",
    )  # fmt: skip
    row = ("A-1", "20-20", "Mill", "P7", date(2025, 3, 4), date(2025, 2, 1), 40, 50, "$68.50", "20 %", "no", "bag", "x")
    (lot,) = judged(table(heads, row)).past.lots
    assert (lot.lot_number, lot.product, lot.supplier, lot.plant_code, lot.note) == ("A-1", "20-20", "Mill", "P7", "x")
    assert (lot.arrived_on, lot.made_on, lot.package_count) == (date(2025, 3, 4), date(2025, 2, 1), 40)
    assert (lot.package_mass_g, lot.package_mass_typed) == (pytest.approx(50 * 453.59237), "50 lb")
    assert (lot.price_per_package, lot.composition.protein_pct) == (68.5, 20)
    assert (lot.medicated, lot.package) == (False, PackageKind.BAG)


def test_every_fault_is_told_by_row_and_column() -> None:
    heads = ("Lot", "Arrived", "Bags", "Bag weight", "Price", "Protein", "Medicated", "Kind of package", "Note")
    rows = table(
        heads,
        ("A", date(2027, 1, 1), 2.5, "heavy", "much", 0.2, "maybe", "sack", "n" * 301),
        (None, date(2025, 1, 1)),
        ("B", date(1999, 1, 1), -1, "50 oz oz", 0, 120, CellError("#N/A"), True, "\ud800"),
        ("C" * 81,),
    )
    found = judged(rows, units={3: "lb"})
    assert faults(found) == [
        (2, "Arrived", "2027-01-01"), (2, "Bags", "2.5"), (2, "Bag weight", "heavy"), (2, "Price", "much"),
        (2, "Protein", "0.2"), (2, "Medicated", "maybe"), (2, "Kind of package", "sack"), (2, "Note", "n" * 301),
        (3, "Lot", ""), (4, "Arrived", "1999-01-01"), (4, "Bags", "-1"), (4, "Bag weight", "50 oz oz"),
        (4, "Price", "0"), (4, "Protein", "120"), (4, "Medicated", "#N/A"), (4, "Kind of package", "True"),
        (4, "Note", "\ud800"), (5, "Lot", "C" * 81),
    ]  # fmt: skip
    assert not found.adds
    assert all(one.words for one in found.faults)


def test_rows_that_contradict_each_other_are_told_and_remarks_are_joined() -> None:
    rows = table(
        ("Lot", "Product", "Arrived", "Made", "Note"),
        ("A", "x", date(2025, 3, 4), date(2025, 4, 4), "wet"),
        ("a", "y", date(2025, 3, 4), None, "torn"),
        ("A", "x", None, None, "wet"),
    )
    found = judged(rows)
    assert faults(found) == [(3, "Product", "y"), (2, "Made", "2025-04-04")]
    assert "Row 2 tells x" in found.faults[0].words
    assert found.past.lots[0].note == "wet; torn"


def test_composition_over_the_whole_is_told() -> None:
    rows = table(("Lot", "Protein", "Fat"), ("A", 60, 50))
    (found,) = judged(rows).faults
    assert found.row == 2
    assert "100 %" in found.words


WEIGHED = ("Lot", "Date", "Bag", "Net (g)")
DAY = date(2025, 3, 4)


def test_fills_become_weigh_ins_by_lot_scoop_and_day() -> None:
    rows = table(
        (*WEIGHED, "Time"), ("A", DAY, 1, 330, "6:30"), ("A", DAY, 2, 335, None), ("A", date(2025, 3, 5), 1, 330)
    )
    found = judged(rows)
    assert [one.started_at.date() for one in found.past.weigh_ins] == [DAY, date(2025, 3, 5)]
    first = found.past.weigh_ins[0]
    assert (first.abandoned, first.scoop_id, first.scale_id, first.by) == (True, "s", "k", "AB")
    assert [(fill.bag, fill.typed, fill.at.strftime("%H:%M")) for fill in found.past.fills] == [
        (1, "330 g", "06:30"), (2, "335 g", "12:00"), (1, "330 g", "12:00"),
    ]  # fmt: skip


def test_what_no_scoopful_can_weigh_is_a_fault() -> None:
    rows = table(WEIGHED, ("A", DAY, 1, 11.6), ("A", DAY, 1, 900), ("A", DAY, 1, 2500), ("A", None, 1, 330))
    assert faults(judged(rows)) == [
        (2, "Net (g)", "11.6"),
        (3, "Net (g)", "900"),
        (4, "Net (g)", "2500"),
        (5, "Date", ""),
    ]


def test_an_unknown_scoop_keeps_the_weights() -> None:
    rows = table((*WEIGHED, "Scoop"), ("A", DAY, 1, 11.6, "lost one"))
    found = judged(rows, scoops={"lost one": ""})
    assert found.adds
    assert found.past.weigh_ins[0].scoop_id is None


def test_the_empty_scoop_is_taken_off() -> None:
    rows = table(
        ("Lot", "Date", "Gross (g)", "Tare (g)"), ("A", DAY, 450, 120), ("A", DAY, 100, 120), ("A", DAY, 450, None)
    )
    found = judged(rows)
    assert [(fill.mass_g, fill.typed) for fill in found.past.fills] == [(330, "450 g − 120 g")]
    assert faults(found) == [(3, "Gross (g)", "100"), (4, "Tare (g)", "")]


def test_empty_cells_can_mean_the_one_above() -> None:
    rows = table(WEIGHED, ("A", DAY, 1, 330), (None, None, 2, 331), (), (None, None, 3, 332))
    assert faults(judged(rows)) == [(3, "Lot", ""), (5, "Lot", "")]
    assert len(judged(rows, fill_down=True).past.fills) == 3


def test_sums_are_left_out_and_formulas_are_named() -> None:
    rows = table(WEIGHED, ("A", DAY, 1, 330), ("Total", None, None, 330), formulas=frozenset({(1, 3)}))
    found = judged(rows)
    assert (found.sums, found.formulas, len(found.past.fills)) == ((3,), ("Net (g)",), 1)


@pytest.mark.parametrize(
    "told", ["Total:", "TOTAL GENERAL", "Gran total", "Sub-total", "Subtotal", "Suma", "grand total:", "Promedio"]
)
def test_a_sum_is_no_lot_however_it_is_written(told: str) -> None:
    found = judged(table(("Lot", "Arrived", "Bags"), ("A", "2026-02-03", 40), ("---", "---", "—"), (told, None, 40)))
    assert ([lot.lot_number for lot in found.past.lots], found.sums, found.faults) == (["A"], (4,), ())


def test_a_sum_told_beside_an_empty_lot_is_no_fill_of_the_lot_above() -> None:
    rows = table(WEIGHED, ("A", DAY, 1, 330), (None, "Total:", None, 330), ("–", DAY, 1, 330))
    found = judged(rows, fill_down=True)
    assert (len(found.past.fills), found.sums, faults(found)) == (1, (3,), [(4, "Lot", "–")])


def test_days_and_bags_without_a_weight_are_asked_about() -> None:
    rows = table(("Lot", "Date", "Bag", "x"), ("A", "2026-02-03", 1, 330))
    assert [one.ask for one in questions(rows, begun(rows, 0, "AB"))] == [Ask.WEIGHT]


@pytest.mark.parametrize(
    ("told", "wrong"),
    [
        ((None, "2026-02-03", "2026-02-02", None), ["Fed from"]),
        (("2026-02-03", None, "2026-02-02", None), ["Fed from"]),
        ((None, None, "2026-02-03", "2026-02-02"), ["Finished"]),
        ((None, "2026-02-03", None, "2026-02-02"), ["Finished"]),
        (("2026-02-04", "2026-02-03", None, None), ["Made"]),
        (("2026-02-03", "2026-02-03", "2026-02-03", "2026-02-03"), []),
    ],
)
def test_the_days_of_a_lot_come_in_their_order(told: tuple[str | None, ...], wrong: list[str]) -> None:
    found = judged(table(("Lot", "Made", "Arrived", "Fed from", "Finished"), ("A", *told)))
    assert [one.column for one in found.faults] == wrong


def test_nothing_is_weighed_before_it_is_there() -> None:
    heads = ("Lot", "Day", "Bag", "Net (g)", "Arrived")
    rows = table(
        heads, ("A", "2026-02-03", 1, 330, None), ("A", "2026-02-02", 1, 330, "2026-02-03"),
        ("B", "2026-02-02", 1, 330, None),
    )  # fmt: skip
    assert faults(judged(rows)) == [(3, "Day", "2026-02-02")]
    kept = Lot(id="l", farm_id="f", lot_number="B", arrived_on=date(2026, 2, 4))
    assert faults(judged(rows, (kept,))) == [(3, "Day", "2026-02-02"), (4, "Day", "2026-02-02")]


def test_lots_of_the_records_stay_and_two_of_one_number_are_asked_about() -> None:
    kept = Lot(id="l", farm_id="f", lot_number="A 1")
    rows = table(("Lot", "Product"), ("a  1", "new"))
    found = judged(rows, (kept,))
    assert (found.lots_there, found.past.lots, found.adds) == (("A 1",), (), False)
    assert faults(judged(rows, (kept, replace(kept, id="m")))) == [(2, "Lot", "a  1")]


def test_what_is_not_clear_is_asked() -> None:
    rows = table(("x", "Arrived", "Gross", "Scoop"), ("A", "3/4/2025", "1,234", "Red"), ("A", "45355", "450", "Red"))
    asked = begun(rows, 0, "")
    assert [(one.ask, one.column, one.name) for one in questions(rows, asked)] == [
        (Ask.LOT, -1, ""), (Ask.ORDER, 1, ""), (Ask.UNIT, 2, ""), (Ask.DECIMAL, 2, ""), (Ask.EPOCH, -1, ""),
        (Ask.WHEN, -1, ""), (Ask.WAY, -1, ""), (Ask.BAGS, -1, ""), (Ask.TARE, -1, ""), (Ask.SCOOP, -1, "Red"),
        (Ask.SCALE, -1, ""), (Ask.BY, -1, ""),
    ]  # fmt: skip
    assert [one.ask for one in questions(rows, replace(asked, from_1904=False))].count(Ask.EPOCH) == 0


def test_units_in_the_cells_need_no_unit_of_the_column() -> None:
    rows = table(("Lot", "Date", "Bag", "Net"), ("A", DAY, 1, "11.6 oz"), ("A", DAY, 2, "1 lb 1 oz"))
    (first, second) = judged(rows, bags=None).past.fills
    assert (first.mass_g, first.typed) == (pytest.approx(11.6 * 28.349523125), "11.6 oz")
    assert second.mass_g == pytest.approx(17 * 28.349523125)


def test_judging_can_be_ended() -> None:
    rows = table(("Lot",), *[("A",)] * 1200)
    shares: list[float] = []
    judge(rows, settled(rows), There(FARM), TODAY, shares.append)
    assert shares == sorted(shares)

    def ended(share: float) -> None:
        raise NotTaken

    with pytest.raises(NotTaken):
        judge(rows, settled(rows), There(FARM), TODAY, ended)


@pytest.mark.parametrize(
    ("heading", "field"),
    [
        ("Protein", "protein_pct"), ("Fat", "fat_pct"), ("Fibre", "fibre_pct"), ("Ash", "ash_pct"),
        ("Moisture", "moisture_pct"),
    ],
)  # fmt: skip
def test_a_share_that_the_spreadsheet_shows_in_percent_is_read_so(heading: str, field: str) -> None:
    """0.26 formatted as 26 % is 26 %, beside a text; 0.125 % stays what it is whatever sign the texts have."""
    rows = table(("Lot", heading), ("A", Share(0.26)), ("B", "26,5 %"), ("C", Share(0.0725)), ("D", Share(0.00125)))
    asked = settled(rows)
    assert asked.decimals == {1: ","}
    found = judge(rows, asked, There(FARM), TODAY)
    told = [getattr(lot.composition, field) for lot in found.past.lots]
    least = field in ("protein_pct", "fat_pct")
    assert told[:3] == pytest.approx([26.0, 26.5, 7.25])
    assert faults(found) == ([(5, heading, "0.125 %")] if least else [])
    assert least or told[3] == pytest.approx(0.125)


def test_a_share_is_no_weight_and_no_count() -> None:
    rows = table(("Lot", "Bags", "Bag weight (kg)"), ("A", Share(0.4), Share(0.25)))
    assert faults(judged(rows)) == [(2, "Bags", "40 %"), (2, "Bag weight (kg)", "25 %")]


def test_a_number_is_never_read_by_the_sign_of_the_texts_beside_it() -> None:
    rows = table(("Lot", "Fibre"), ("A", "0,5"), ("B", 0.125))
    assert [lot.composition.fibre_pct for lot in judged(rows).past.lots] == [0.5, 0.125]


@pytest.mark.parametrize(("unit", "example"), [("(oz)", "10.2 oz"), ("(lb)", "10.2 oz"), ("(g)", "280 g")])
def test_what_is_no_weight_is_answered_in_the_units_of_its_column(unit: str, example: str) -> None:
    heading = f"Weight {unit}"
    found = judged(table(("Lot", "Day", "Bag", heading), ("A", date(2025, 3, 4), 1, "twelve")))
    assert [one.words for one in found.faults] == [f"There is no number in it. Type it like {example}."]


def test_a_day_of_a_spreadsheet_is_shown_without_its_midnight() -> None:
    assert text_of(datetime(2025, 3, 4)) == "2025-03-04"
    assert text_of(datetime(2025, 3, 4, 6, 30)) == "2025-03-04 06:30"
