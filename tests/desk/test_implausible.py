"""Sizes that no farm has, in every form: each is refused or questioned in a sentence, and stays for mending."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from datetime import date

import pytest
from answers import Answers, at_noon
from herd import Herd
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QWidget
from pytestqt.qtbot import QtBot

from calibrator.desk.context import Desk
from calibrator.desk.forms.additive_editor import AdditiveEditor
from calibrator.desk.forms.amount import Amount
from calibrator.desk.forms.cold_fields import ColdFields
from calibrator.desk.forms.day_rows import FeedingRow, StepRow
from calibrator.desk.forms.farm_form import FarmForm
from calibrator.desk.forms.fields import TextField
from calibrator.desk.forms.group_editor import GroupEditor
from calibrator.desk.forms.hot_water_form import HotWaterForm
from calibrator.desk.forms.lot_form import LotForm
from calibrator.desk.forms.plan_form import PlanForm
from calibrator.desk.forms.rate_editor import RateEditor
from calibrator.desk.forms.scale_form import ScaleForm
from calibrator.desk.forms.scoop_form import ScoopForm
from calibrator.desk.forms.vessel_form import VesselForm
from calibrator.desk.forms.warmth_fields import WarmthFields
from calibrator.desk.mix.bag_panel import BagPanel
from calibrator.desk.mix.batch_form import BatchForm
from calibrator.desk.mix.instrument_form import InstrumentForm
from calibrator.desk.mix.line_panel import LinePanel
from calibrator.desk.mix.readings_form import ReadingsForm
from calibrator.desk.mix.tool_checks import ToolChecks
from calibrator.desk.pages.powder_card import PowderCard
from calibrator.desk.standing import standing
from calibrator.desk.theme import Theme
from calibrator.desk.weigh_in.step_lot import StepLot
from calibrator.desk.widgets.count_field import CountField
from calibrator.desk.widgets.name_choice import NameChoice
from calibrator.desk.widgets.quantity_field import QuantityField
from calibrator.desk.widgets.saying import Bubble
from calibrator.model import Lot, PackageKind, UnitSystem
from calibrator.records import Records


@pytest.fixture
def herd(records: Records) -> Herd:
    return Herd(records)


@pytest.fixture
def desk(qapp: QApplication, herd: Herd, answers: Answers) -> Desk:
    if qapp.property("tokens") is None:
        Theme(qapp)
    return Desk(herd.records, answers, clock=at_noon)


MASS = ("5 gal", "-3 oz", "0", "1e9 lb", "abc", "999999999 lb")
VOLUME = ("5 lb", "-1 qt", "0", "999999999 gal")
LENGTH = ("3 oz", "-1 in", "0", "400 ft")
COLD_AND_HOT = ("300 °F", "-200 °F", "3 oz", "warm")
"""What is never right, whatever the field is for."""

FIELDS: list[tuple[Callable[[Desk], QWidget], str, tuple[str, ...], tuple[str, ...]]] = [
    (LotForm, "mass", ("1 oz", "10000 lb", *MASS), ("50 lb", "25 kg", "10 kg", "1 lb 8 oz")),
    (LotForm, "count", ("0", "-4", "1000000", "2.5"), ("40", "1")),
    (LotForm, "price", ("1e9", "1000000000", "-5", "0"), ("68.50", "$68.50", "1250")),
    (LotForm, "arrived_on", ("3 Mar 2026", "2 Mar 1920", "31 Feb 2026", "2/3/2026"), ("2 Mar 2026", "yesterday")),
    (LotForm, "made_on", ("1 Jan 2030", "5 May 1955"), ("14 Jan 2026",)),
    (ScaleForm, "step", ("2 lb 4 oz", *MASS), ("0.1 oz", "1 g", "0.01 lb")),
    (ScaleForm, "capacity", ("1 oz", "10000 lb", *MASS), ("11 lb", "5 kg", "150 kg")),
    (ScoopForm, "diameter", ("5 ft", *LENGTH), ("3 7/8 in", "98 mm")),
    (ScoopForm, "temperature", COLD_AND_HOT, ("68 °F", "20 °C")),
    (VesselForm, "volume", ("2 fl oz", *VOLUME), ("5 gal", "30 gal", "1000 L")),
    (VesselForm, "usable", ("0", "110", "-5", "3 oz"), ("90", "100 %")),
    (VesselForm, "air", COLD_AND_HOT, ("14 °F", "20 °C")),
    (InstrumentForm, "volume", ("50 gal", "0.1 fl oz", *VOLUME), ("1 qt", "1 L", "100 mL")),
    (InstrumentForm, "reference", COLD_AND_HOT, ("60 °F", "20 °C")),
    (FarmForm, "tolerance", ("0", "50", "-2", "2 oz"), ("2", "5 %")),
    (HotWaterForm, "tank", ("1 fl oz", *VOLUME), ("40 gal", "300 L")),
    (HotWaterForm, "hot", COLD_AND_HOT, ("140 °F", "60 °C")),
    (AdditiveEditor, "each", ("20 lb", *MASS), ("0.5 oz", "15 g")),
    (AdditiveEditor, "fat", ("-1", "101", "3 oz"), ("20",)),
    (GroupEditor, "volume", ("50 gal", "1 fl oz", *VOLUME), ("2 qt", "3 L", "1 gal")),
    (FeedingRow, "volume", ("50 gal", "1 fl oz", *VOLUME), ("2 qt",)),
    (StepRow, "volume", ("50 gal", "1 fl oz", *VOLUME), ("2 qt",)),
    (RateEditor, "share", ("0", "90", "-3", "3 oz"), ("12.5",)),
    (WarmthFields, "powder", COLD_AND_HOT, ("40 °F",)),
    (WarmthFields, "mix", COLD_AND_HOT, ("102 °F",)),
    (ColdFields, "below", COLD_AND_HOT, ("14 °F", "-5 °C")),
    (PlanForm, "temperature", COLD_AND_HOT, ("110 °F", "43 °C")),
    (PlanForm, "allowance", ("-1", "80", "3 oz"), ("3",)),
    (BagPanel, "bag", ("1 oz", "10000 lb", *MASS), ("50 lb", "25 kg")),
    (BagPanel, "target", ("0.001 oz", "20 lb", *MASS), ("10 oz", "283 g")),
    (BagPanel, "bags", ("0", "-1", "100000", "two"), ("6", "0.5")),
    (BagPanel, "feedings", ("0", "-1", "10000000"), ("480",)),
    (BagPanel, "since", ("3 Mar 2026", "1 Jan 1920"), ("1 Mar 2026",)),
    (lambda desk: BatchForm(desk, NameChoice()), "target", ("90", "0", "-1"), ("12.5",)),
    (LinePanel, "powder", ("2000 lb", *MASS), ("100 g", "3.5 oz")),
    (LinePanel, "water", ("2000 lb", *MASS), ("900 g", "2 lb")),
    (LinePanel, "prism", COLD_AND_HOT, ("68 °F",)),
    (ToolChecks, "jug", ("500 lb", "0.01 oz", *MASS), ("2.2 lb", "998 g")),
    (ReadingsForm, "mix", COLD_AND_HOT, ("105 °F",)),
]


def put(field: QWidget, text: str) -> None:
    line = field.line  # type: ignore[attr-defined]
    line.setText(text)
    line.textEdited.emit(text)


def refused(field: QWidget) -> str:
    """What stands beneath once it is to be kept; blank where it is taken."""
    if isinstance(field, QuantityField):
        return "" if field.tell() else field.message
    told = field.understood if isinstance(field, Amount) or not hasattr(field, "tell") else field.tell
    return "" if told() else str(field.message)  # type: ignore[attr-defined]


@pytest.mark.parametrize(("make", "name", "wrong", "right"), FIELDS)
def test_what_cannot_be_is_answered_and_what_can_is_taken(
    desk: Desk,
    qtbot: QtBot,
    make: Callable[[Desk], QWidget],
    name: str,
    wrong: tuple[str, ...],
    right: tuple[str, ...],
) -> None:
    made = make(desk)
    qtbot.addWidget(made)
    field = getattr(made, name)
    assert isinstance(field, Amount | TextField)
    for text in wrong:
        put(field, text)
        assert len(refused(field)) > 10, f"{text} was taken"
        assert field.line.text() == text
    for text in right:
        put(field, text)
        assert refused(field) == "", text


@pytest.mark.parametrize("text", COLD_AND_HOT)
def test_a_room_is_neither_an_oven_nor_the_pole(desk: Desk, qtbot: QtBot, text: str) -> None:
    made = StepLot(desk)
    qtbot.addWidget(made)
    put(made._temperature, text)
    assert refused(made._temperature)


def test_a_tote_weighs_what_no_bag_does(desk: Desk, qtbot: QtBot) -> None:
    form = LotForm(desk)
    qtbot.addWidget(form)
    form.load(None)
    form.number.set_text("26-1")
    put(form.mass, "2000 lb")
    assert "at most" in refused(form.mass)
    row = form.package.findData(PackageKind.TOTE)
    form.package.setCurrentIndex(row)
    form.package.activated.emit(row)
    assert refused(form.mass) == ""
    put(form.mass, "25 lb")
    assert "at least" in refused(form.mass)


@pytest.mark.parametrize(
    ("made_on", "arrived", "words"),
    [
        ("1 Mar 2026", "28 Feb 2026", "made after it arrived"),
        ("1 Mar 2016", "28 Feb 2026", "made years before"),
        ("1 Mar 2025", "28 Feb 2026", ""),
    ],
)
def test_days_of_a_lot_that_contradict_each_other(
    desk: Desk, qtbot: QtBot, made_on: str, arrived: str, words: str
) -> None:
    form = LotForm(desk)
    qtbot.addWidget(form)
    form.load(None)
    form.number.set_text("26-1")
    put(form.made_on, made_on)
    put(form.arrived_on, arrived)
    assert (form.made() is None) == bool(words)
    assert words in form._trouble.text()


def test_a_lot_that_is_fed_has_arrived(desk: Desk, qtbot: QtBot) -> None:
    lot = Lot(id="l", farm_id="f", lot_number="26-1", fed_from=date(2026, 1, 20))
    form = LotForm(desk)
    qtbot.addWidget(form)
    form.load(lot)
    put(form.arrived_on, "21 Jan 2026")
    assert form.made() is None
    assert "It is fed since Jan 20, 2026" in form._trouble.text()
    put(form.arrived_on, "20 Jan 2026")
    assert form.made() is not None
    form.load(replace(lot, arrived_on=date(2026, 1, 21)))
    assert form.made() is not None  # an older contradiction keeps nothing else back


@pytest.mark.parametrize(
    ("across", "high", "fits"), [("12 in", "10 in", False), ("2 mm", "3 mm", False), ("4 in", "4 in", True)]
)
def test_a_scoop_holds_what_a_hand_lifts(desk: Desk, qtbot: QtBot, across: str, high: str, fits: bool) -> None:
    """12 by 10 inches are close to five gallons."""
    form = ScoopForm(desk)
    qtbot.addWidget(form)
    form.load(None)
    form.name.set_text("Big")
    put(form.diameter, across)
    put(form.inner_height, high)
    assert (form.made() is not None) == fits
    assert ("No scoop does" in form._trouble.text()) != fits


@pytest.mark.parametrize(
    ("mass", "volume", "fits"), [("10 lb", "2 qt", False), ("10 oz", "2000 gal", False), ("10 oz", "2 qt", True)]
)
def test_a_rate_in_a_wrong_unit_is_questioned(desk: Desk, qtbot: QtBot, mass: str, volume: str, fits: bool) -> None:
    form = PlanForm(desk)
    qtbot.addWidget(form)
    form.edit(None)
    rate = form.groups[0].rate
    put(rate.mass, mass)
    put(rate.volume, volume)
    assert rate.understood() == fits
    assert ("units" in rate.mass.message) != fits


def test_more_bags_left_than_came_are_not_kept(desk: Desk, herd: Herd, qtbot: QtBot) -> None:
    signed = herd.sign("26-1", 0.45)
    herd.plan()
    lot = herd.records.keep(
        replace(herd.lot_of(signed), package_count=40, package_mass_g=22_680.0, package_mass_typed="50 lb")
    )
    card = PowderCard(desk)
    qtbot.addWidget(card)
    card.show_standing(standing(herd.records, herd.farm))
    put(card.count, "41")
    card.keep()
    assert "Only 40 came" in card.count.message
    card.resize(260, 500)  # as narrow as on the page
    card.show()
    QApplication.processEvents()
    assert card.count._message.fits
    assert herd.records.find(Lot, lot.id).packages_left is None
    put(card.count, "40")
    card.keep()
    assert herd.records.find(Lot, lot.id).packages_left is not None


@pytest.mark.parametrize(("typed", "left"), [("1000000", "10000"), ("-5", "5"), ("2.5", "25"), ("ten", "")])
def test_a_count_that_is_not_taken_as_typed_says_so(qtbot: QtBot, typed: str, left: str) -> None:
    page = QWidget()
    qtbot.addWidget(page)
    page.resize(400, 200)
    field = CountField(0)
    field.setParent(page)
    with qtbot.waitExposed(page):
        page.show()
    field.setFocus()
    QTest.keyClicks(field, "12")
    assert not page.findChildren(Bubble)
    field.clear()
    QTest.keyClicks(field, typed)
    (bubble,) = page.findChildren(Bubble)
    assert field.text() == left
    assert bubble.isVisible()
    assert bubble.text() == "Only whole numbers go in here, from 0 to 99999."
    if left:
        field.selectAll()
        QTest.keyClicks(field, "7")
        assert not bubble.isVisible()


def test_a_count_beyond_its_most_is_not_changed_in_silence(qtbot: QtBot) -> None:
    page = QWidget()
    qtbot.addWidget(page)
    field, other = CountField(1, 6), CountField(1, 6)
    for one in (field, other):
        one.setParent(page)
    with qtbot.waitExposed(page):
        page.show()
    field.setFocus()
    QTest.keyClicks(field, "9")
    (bubble,) = page.findChildren(Bubble)
    assert bubble.isVisible()
    other.setFocus()
    assert field.text() == "6"
    assert bubble.isVisible()
    assert "from 1 to 6" in bubble.text()


def test_limits_are_told_in_the_units_of_the_farm(desk: Desk, herd: Herd, qtbot: QtBot) -> None:
    form = LotForm(desk)
    qtbot.addWidget(form)
    put(form.mass, "10000 lb")
    assert "at most 220 lb" in refused(form.mass)
    herd.records.keep(replace(herd.farm, units=UnitSystem.METRIC))
    desk.changed.emit()
    put(form.mass, "5000 kg")
    assert "100 kg" in refused(form.mass)
