"""Wrong inputs of every kind of reading are answered in words; decimals are read as people here write them."""

from __future__ import annotations

import re
from collections.abc import Iterator
from datetime import timedelta

import pytest
from herd import FIRST_DAY, GAL_ML, Herd, group
from mix_hands import type_in
from PySide6.QtCore import QLocale, Qt
from PySide6.QtWidgets import QApplication, QLabel, QLineEdit
from pytestqt.qtbot import QtBot

from calibrator.desk.mix.warm_words import off_words
from calibrator.desk.mix_checks import MixFindings
from calibrator.desk.pages.mix_check import MixCheckPage
from calibrator.model import (
    Cylinder,
    Instrument,
    InstrumentCheck,
    InstrumentKind,
    MixCheck,
    ReadingKind,
    ReferenceMix,
    UnitSystem,
    Vessel,
    new_id,
)
from calibrator.records import Records
from calibrator.science.check import Caution, Verdict
from calibrator.science.solids import SolidsFrom
from calibrator.science.thermometer import Warmth
from calibrator.units import show_temperature

NOW = FIRST_DAY + timedelta(days=30)


@pytest.fixture
def herd(records: Records) -> Herd:
    made = Herd(records)
    made.sign("25-0112A", 0.50)
    tank = records.keep(
        Vessel(
            id=new_id(), farm_id=made.farm.id, name="Round tank", rim_volume_ml=150_000.0,
            shape=Cylinder(diameter_mm=560.0, height_mm=620.0),
        )
    )  # fmt: skip
    made.plan("Morning milk", group(40, "hutches"), vessel_id=tank.id)
    for kind, more in (
        (InstrumentKind.REFRACTOMETER, {"division": 0.2}),
        (InstrumentKind.HYDROMETER, {"division": 0.001}),
        (InstrumentKind.JUG, {"volume_ml": 1000.0, "volume_u_ml": 1.0}),
        (InstrumentKind.THERMOMETER, {"division": 0.5}),
    ):
        records.keep(Instrument(id=new_id(), farm_id=made.farm.id, name=kind, kind=kind, **more))
    return made


def labels(widget: object) -> str:
    QApplication.processEvents()
    return "\n".join(one.text() for one in widget.findChildren(QLabel) if one.isVisibleTo(widget))  # type: ignore[attr-defined]


def empty(qtbot: QtBot, line: QLineEdit) -> None:
    """By the keys, so that the page hears of it."""
    line.setFocus()
    line.selectAll()
    qtbot.keyClick(line, Qt.Key.Key_Delete)


DEGREES = ("101 oz", "hot", "250 F", "-5 C", "1e2", "1,015", "10 1", "101 FF", "++1", "4.4.4", "101 C")
WRONG = {
    "first": ("11,200,1", "11.2.1", "40", "-3", "none", "1e1", "11.2 oz", "11*2", "1 2 3 4 5 6 7 8 9", "1/0", "1.045x"),
    "last": ("12,5,1", "33", "-2", "twelve", "12.5 %", "1e1", "12..5", "0x10", "9 9 9 9 9 9 9 9 9", "inf", "12:5"),
    "sugar": ("11.2", "0.9", "1.2", "1,245", "1045", "1.04.5", "none", "-1.045", "1.045 g", "1e0", "1.045 1.05x"),
    "floating": ("11.2", "0.9", "1.2", "1,230", "1030", "1.03.0", "none", "-1.03", "1.03 g/mL", "1 1 1 1 1", "1e0"),
    "jug_mass": ("1031 mL", "0 g", "-1031 g", "1,031 g", "1e3 g", "one kg", "1.0.3 kg", "31 gg", "1031 g 2", "9999 lb"),
    "water": DEGREES,
    "mix": DEGREES,
    "calf": DEGREES,
    "volume": ("5 lb", "0", "-1", "1e9 gal", "two", "1 cup", "10 oz", "1.2.3", "5 gal 5 gal", "1,500", "99999 gal"),
    "level": ("5 lb", "-1", "1e9 in", "high", "10 oz", "1.2.3", "5 in 5 in", "1,500", "9999999999 m", "5''x", "4 gal"),
}  # fmt: skip


@pytest.mark.parametrize("every", [3, pytest.param(1, marks=pytest.mark.slow)])
def test_ten_wrong_inputs_of_each_reading_are_answered_in_words(qtbot: QtBot, page: MixCheckPage, every: int) -> None:
    """In the usual run every third of them; for each reading another third."""
    readings = page.check.readings
    for number, (name, texts) in enumerate(WRONG.items()):
        if name == "sugar":
            continue  # on the other scale, below
        other = readings.last if name == "first" else readings.first
        type_in(qtbot, other.line, "11.2")
        field = getattr(readings, name)
        assert len(texts) >= 10
        for text in texts[number % every :: every]:
            type_in(qtbot, field.line, text)
            page.check.keep()
            assert field.message, (name, text)
            assert field.message[-1] in ".?…", (name, text)
            assert field.text() == text.strip()
            assert field.line.hasFocus()
            assert page.desk.records.every(MixCheck) == []
        for line in (field.line, other.line):
            empty(qtbot, line)


def test_ten_wrong_inputs_on_the_sugar_scale_are_answered_in_words(qtbot: QtBot, page: MixCheckPage) -> None:
    readings = page.check.readings
    readings.scale.setFocus()
    qtbot.keyClick(readings.scale, Qt.Key.Key_Down)
    for text in WRONG["sugar"]:
        type_in(qtbot, readings.first.line, text)
        page.check.keep()
        assert readings.first.message[-1:] in (".", "…", "?"), text
        assert readings.first.text() == text
        assert page.desk.records.every(MixCheck) == []
    # What is typed on one scale is judged anew on the other: 1.045 is no °Brix of a mix, 11.2 no specific gravity.
    type_in(qtbot, readings.first.line, "1.045")
    assert page.check.found.shown_brix == pytest.approx(11.2, abs=0.05)
    qtbot.keyClick(readings.scale, Qt.Key.Key_Up)
    assert page.check.found.shown_brix == pytest.approx(1.045)
    assert page.check.verdict.verdict.text() == "Too thin"


WRONG_CHECKS = {
    "refractometer": ("water", "keep_water", ("", "x", "0,2,1", "99", "-9", "0.2 0.4", "1e0", "0.2 oz", "0..2", "nan")),
    "solution": ("known", "keep_known", ("", "x", "12,2,0", "99", "-9", "12 12", "1e1", "12 g", "1..2", "inf")),
    "hydrometer": ("water", "keep_water", ("", "x", "1,400", "1000", "0.5", "1 1", "1e0", "1.0 g", "1..0", "-1")),
    "jug": ("jug", "keep_jug", ("", "x", "1 L", "0 g", "-5 g", "1,000 kg", "1e3 g", "1.0.0 kg", "full", "1000 gg")),
    "thermometer": ("ice", "keep_ice", ("", "x", "93,500", "90", "-9", "32 33", "1e1", "32 oz", "3..2", "cold")),
}


def test_ten_wrong_inputs_of_each_instruments_check(qtbot: QtBot, page: MixCheckPage, herd: Herd) -> None:
    page.bring_up("tool_checks")
    checks = page.tool_checks
    for kind, (name, keep, texts) in WRONG_CHECKS.items():
        tool = "refractometer" if kind == "solution" else kind
        checks.open(next(t.id for t in herd.records.every(Instrument) if t.name == tool))
        field = getattr(checks, name)
        for text in texts:
            type_in(qtbot, field.line, text)
            getattr(checks, keep)()
            assert field.message[-1] in ".?", (kind, text)
            assert field.text() == text
        empty(qtbot, field.line)
    assert herd.records.every(InstrumentCheck) == []


def test_the_warmth_typed_for_one_instrument_is_not_anothers(qtbot: QtBot, page: MixCheckPage, herd: Herd) -> None:
    page.bring_up("tool_checks")
    checks = page.tool_checks
    tools = {tool.name: tool.id for tool in herd.records.every(Instrument)}
    checks.open(tools["hydrometer"])
    type_in(qtbot, checks.warmth.line, "104 F")
    checks.open(tools["jug"])
    type_in(qtbot, checks.jug.line, "1000 g")
    type_in(qtbot, checks.jug_warmth.line, "200 F")
    checks.keep_jug()
    assert checks.jug_warmth.message
    type_in(qtbot, checks.jug_warmth.line, "68 F")
    checks.keep_jug()
    (kept,) = herd.records.every(InstrumentCheck)
    # 1000 g of water at 20 °C is 1002.85 mL, Z of ISO 8655-6.
    assert kept.expected == pytest.approx(1002.9, abs=0.1)
    assert kept.temperature_c == pytest.approx(20.0)


@pytest.fixture
def comma() -> Iterator[None]:
    before = QLocale()
    QLocale.setDefault(QLocale(QLocale.Language.Spanish, QLocale.Country.Spain))
    yield
    QLocale.setDefault(before)


def test_decimal_commas_are_typed_and_shown(qtbot: QtBot, comma: None, page: MixCheckPage, herd: Herd) -> None:
    panel = page.check
    type_in(qtbot, panel.readings.first.line, "11,2 11,4; 11,3")
    assert panel.found.shown_brix == pytest.approx(11.3)
    assert "11,3" in panel.readings.first.message
    assert "13,9" in panel.verdict.solids.text()
    assert "0,9984 Brix + 2,08" in panel.verdict.way.text()
    assert re.search(r"\d\.\d", labels(panel.verdict)) is None
    assert panel.batch_form.target.text().startswith("13,")
    type_in(qtbot, panel.readings.floating.line, "1,032")
    type_in(qtbot, panel.readings.mix.line, "38,5 C")
    type_in(qtbot, panel.readings.volume.line, "40,5 L")
    assert [s.way for s in panel.found.ways][-2:] == [SolidsFrom.HYDROMETER, SolidsFrom.FINISHED_VOLUME]
    assert "±" in panel.verdict.warm.text()
    assert "." not in panel.verdict.warm.text().split("°F")[0]
    for text in ("11,2,1", "1.1,2", "11,2.1"):
        type_in(qtbot, panel.readings.first.line, text)
        panel.keep()
        assert panel.readings.first.message
        assert herd.records.every(MixCheck) == []
    # A point that can be a decimal sign only is one here too: never ten times the value.
    type_in(qtbot, panel.readings.first.line, "11.2")
    assert panel.found.shown_brix == pytest.approx(11.2)
    type_in(qtbot, panel.readings.first.line, "11,2")
    panel.keep()
    (kept,) = herd.records.every(MixCheck)
    values = {r.kind: r.value for r in kept.readings}
    told = {"brix": 11.2, "hydrometer_sg": 1.032, "mix_temperature": 38.5, "finished_volume": 40_500.0}
    assert values == pytest.approx(told)
    page.bring_up("history")
    assert "," in page.history.pointed.text()


def test_decimal_commas_on_the_own_line_and_the_bags(qtbot: QtBot, comma: None, page: MixCheckPage, herd: Herd) -> None:
    page.bring_up("line")
    line = page.line
    for powder, drops in (("100,0 g", "8,4 8,6"), ("160,0 g", "14,5 14,5")):
        type_in(qtbot, line.powder.line, powder)
        type_in(qtbot, line.water.line, "0,9 kg" if powder.startswith("100") else "0,84 kg")
        type_in(qtbot, line.drops.line, drops)
        line.add()
    assert [m.water_g for m in herd.records.every(ReferenceMix)] == pytest.approx([900.0, 840.0])
    assert "1,00 °Brix" in line.meaning.text()
    page.bring_up("bags")
    bags = page.bags
    for field, text in ((bags.bag, "22,7 kg"), (bags.target, "0,28 kg"), (bags.bags, "2,5"), (bags.feedings, "200")):
        type_in(qtbot, field.line, text)
    # 2.5 bags of 22.7 kg on 200 feedings: 283.75 g each, 1.3 % above 280 g.
    assert "1,3 %" in bags.told.text()


CAUTIONS = {
    Caution.SCALD: ({"water": "125 F"}, "hot enough to scald"),
    Caution.TOO_HOT: ({"mix": "112 F"}, "Too hot to drink"),
    Caution.TOO_COOL: ({"calf": "80 F"}, "Too cool for calves"),
    Caution.SOLIDS_RISK: ({"first": "16 16 16"}, "Above 17 % solids"),
    Caution.SOLIDS_LOW: ({"first": "9.3 9.3 9.3"}, "Perhaps below 12 % solids"),
    Caution.OSMOLALITY_RISK: ({"first": "14.5 14.5 14.5"}, "osmolality"),
    Caution.YOUNG_CALVES: ({"first": "14.5 14.5 14.5"}, "veterinarian decide"),
}


def test_each_caution_stands_there_when_it_is_due_and_not_before(qtbot: QtBot, page: MixCheckPage) -> None:
    readings = page.check.readings
    usual = {"first": "10.4 10.4", "water": "108 F", "mix": "101 F", "calf": "100 F"}
    for name, text in usual.items():
        type_in(qtbot, getattr(readings, name).line, text)
    for caution, (typed, words) in CAUTIONS.items():
        assert page.check.found.cautions == (), caution
        assert words not in labels(page.check.verdict)
        for name, text in typed.items():
            type_in(qtbot, getattr(readings, name).line, text)
        assert caution in page.check.found.cautions
        told = [w for w in page.check.verdict.findChildren(QLabel) if words in w.text()]
        assert told, caution
        assert all(w.property("kind") == "caution" for w in told)
        for name in typed:
            type_in(qtbot, getattr(readings, name).line, usual[name])


def test_how_warm_it_is_for_the_calf_is_always_told(qtbot: QtBot, page: MixCheckPage) -> None:
    warm, calf_field = page.check.verdict.warm, page.check.readings.calf
    type_in(qtbot, page.check.readings.mix.line, "105 F")
    for calf, told in (
        ("88 F", "88\u00a0°F is cooler than the 100 to 105\u00a0°F that calves want"),
        ("35 C", "95\u00a0°F is cooler than the 100 to 105\u00a0°F that calves want"),
        ("103 F", "103\u00a0°F: as calves want it."),
        ("107 F", "107\u00a0°F is warmer than the 100 to 105\u00a0°F that calves want"),
    ):
        empty(qtbot, calf_field.line)
        assert "105\u00a0°F: as calves want it." in warm.text()
        type_in(qtbot, calf_field.line, calf)
        where = [w for w in page.check.verdict.findChildren(QLabel) if told in w.text()]
        # What is off stands among the cautions, and not in small print.
        assert (warm in where) == ("as calves" in told)
        assert all(w is warm or w.property("kind") == "caution" for w in where)
        assert where, calf
        assert page.check.found.cautions == ()
        type_in(qtbot, calf_field.line, "80 F")
        assert "calves want" not in warm.text()
        assert "Too cool for calves" in labels(page.check.verdict)


@pytest.mark.parametrize(("units", "within"), [(UnitSystem.METRIC, range(38, 42)), (UnitSystem.FARM, range(100, 106))])
def test_a_warmth_is_judged_as_it_reads(units: UnitSystem, within: range) -> None:
    """Half a degree beside an end that reads as the end lies within, one that reads as the next does not."""
    unit = "°C" if units is UnitSystem.METRIC else "°F"
    for tenths in range(10 * within[0] - 20, 10 * within[-1] + 20):
        celsius = tenths / 10 if units is UnitSystem.METRIC else (tenths / 10 - 32) / 1.8
        found = MixFindings(warm=((ReadingKind.CALF_TEMPERATURE, Warmth(celsius, 1.0)),))
        reads = int(show_temperature(celsius, units).removesuffix(f" {unit}"))
        assert (off_words(found, units) == "") == (reads in within), reads


def test_the_water_is_told_beside_what_the_plan_has(qtbot: QtBot, page: MixCheckPage) -> None:
    for water, told in (("100 F", "cooler than the 110"), ("109 F", "as warm as"), ("114 F", "warmer than the 110")):
        type_in(qtbot, page.check.readings.water.line, water)
        assert f"The water was {told}" in page.check.verdict.warm.text()


def test_beside_an_open_verdict_nothing_is_told_as_sure(qtbot: QtBot, page: MixCheckPage) -> None:
    type_in(qtbot, page.check.readings.first.line, "9.2")
    judged = page.check.found.judged
    assert judged is not None
    assert judged.verdict is Verdict.CANNOT_TELL
    assert Caution.SOLIDS_LOW in page.check.found.cautions
    assert "Perhaps below 12 % solids" in labels(page.check.verdict)
    assert "Below 12 % solids" not in labels(page.check.verdict)


def test_every_caution_has_its_test() -> None:
    assert set(CAUTIONS) == set(Caution)


def test_a_decimal_comma_is_taken_for_drops_and_one_that_may_part_two_is_told(qtbot: QtBot, page: MixCheckPage) -> None:
    readings = page.check.readings
    type_in(qtbot, readings.first.line, "12,13")
    assert page.check.found.shown_brix == pytest.approx(12.13)
    assert readings.first.message == "= 12.13"
    type_in(qtbot, readings.first.line, "12, 13")
    assert page.check.found.shown_brix == pytest.approx(12.5)
    assert readings.first.message == "2 readings, mean 12.5"
    type_in(qtbot, readings.first.line, "12,4 12,6")
    assert page.check.found.shown_brix == pytest.approx(12.5)
    type_in(qtbot, readings.first.line, "12.1")
    assert "=" not in readings.first.message


def test_a_bare_number_in_the_vessel_is_of_the_unit_that_the_batch_is_told_in(qtbot: QtBot, page: MixCheckPage) -> None:
    """The example is the finished mix of the batch, not its water; typed bare as it stands it alarms no one."""
    panel = page.check
    batch = panel.batch_form.batch()
    assert batch is not None
    assert batch.mix is not None
    volume, box = panel.readings.volume, panel.readings.volume.box
    told = f"{batch.mix.volume_ml / GAL_ML:.0f}"
    assert volume.line.placeholderText() == f"like {told} gal"
    type_in(qtbot, volume.line, told)
    assert volume.value() == pytest.approx(float(told) * GAL_ML)
    assert f"{told} gal" in box.message
    assert volume.told() == f"{told} gal"
    assert "gal" not in volume.text()
    type_in(qtbot, panel.batch_form.calves, "1")  # a pail: told in quarts; what was typed stays gallons
    assert volume.value() == pytest.approx(float(told) * GAL_ML)
    assert volume.text() == f"{told} gal"
    volume.set_text("")
    assert volume.line.placeholderText().endswith(" qt")
    type_in(qtbot, volume.line, "2")
    assert volume.value() == pytest.approx(GAL_ML / 2)


def test_the_example_of_a_batch_is_written_as_people_here_write_it(page: MixCheckPage) -> None:
    before = QLocale()
    QLocale.setDefault(QLocale(QLocale.Language.German))
    try:
        page.check.readings.show_batch_volume(2200.0)
        shown = page.check.readings.volume.line.placeholderText()
    finally:
        QLocale.setDefault(before)
    assert "2,3 qt" in shown
