"""What a new lot is offered, and what weighing a signed-off lot in again asks."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from datetime import timedelta
from pathlib import Path

import pytest
from answers import Answers
from PySide6.QtWidgets import QApplication, QLabel
from pytestqt.qtbot import QtBot

from calibrator.desk.context import Desk
from calibrator.desk.forms.lot_form import LotForm
from calibrator.desk.pages.lots import LotsPage
from calibrator.desk.standing import standing
from calibrator.model import Composition, Lot, UnitSystem, new_id
from calibrator.records import Records


def test_a_new_lot_begins_with_what_the_last_one_had(qtbot: QtBot, desk: Desk) -> None:
    (last,) = desk.records.every(Lot)
    told = replace(
        last, supplier="Elm Mill", package_mass_g=22679.6185, package_mass_typed="50 lb", note="wet",
        composition=Composition(protein_pct=20.0), medicated=True,
    )  # fmt: skip
    desk.records.keep(told)
    form = LotForm(desk)
    qtbot.addWidget(form)
    form.load(None)
    assert (form.number.text(), form.product.text(), form.supplier.text()) == ("", "20-20 replacer", "Elm Mill")
    assert form.mass.text() == "50 lb"
    # What the same product's label said is offered with the word to check it; what is this lot's own is not.
    assert form.parts["protein_pct"].text() == "20 %"
    assert any("Check each against the new bag" in words.text() for words in form.findChildren(QLabel))
    assert (form.note.text(), form.medicated.isChecked()) == ("", False)
    assert not form.typed
    with qtbot.waitActive(form):
        form.show()
        form.activateWindow()
    form.number.line.setFocus()
    qtbot.keyClicks(form.number.line, "26-0101A")
    form.number.entered.emit()
    qtbot.keyClicks(form.product.line, "22-20")
    assert form.product.text() == "22-20"


def of_product(desk: Desk, product: str, number: str, **label: float) -> None:
    (last, *_) = desk.records.every(Lot)
    told = replace(last, id=new_id(), lot_number=number, product=product, composition=Composition(**label), revision="")
    desk.records.keep(told)


def test_the_label_goes_with_the_product_until_somebody_types_it(qtbot: QtBot, desk: Desk) -> None:
    of_product(desk, "20-20 replacer", "26-0101A", protein_pct=20.0, moisture_pct=5.0)
    of_product(desk, "22-20", "26-0102A", fibre_pct=0.15)
    of_product(desk, "20-20 replacer", "26-0103A")  # its label was not told: that of the lot before counts
    form = LotForm(desk)
    qtbot.addWidget(form)
    form.load(None)
    parts = form.parts
    assert (parts["protein_pct"].text(), parts["moisture_pct"].text()) == ("20 %", "5 %")
    form.product.line.selectAll()
    qtbot.keyClicks(form.product.line, "22-")
    assert not any(part.text() for part in parts.values())
    assert not any("new bag" in words.text() for words in form.findChildren(QLabel))
    qtbot.keyClicks(form.product.line, "20")
    assert (parts["protein_pct"].text(), parts["fibre_pct"].text()) == ("", "0.15 %")
    qtbot.keyClicks(parts["ash_pct"].line, "7")
    form.product.line.selectAll()
    qtbot.keyClicks(form.product.line, "20-20 replacer")
    form.number.set_text("26-0104A")
    made = form.made()
    assert made is not None
    assert made.composition == Composition(fibre_pct=0.15, ash_pct=7.0)


def test_where_less_is_asked_nothing_unseen_is_filled_in(qtbot: QtBot, desk: Desk) -> None:
    form = LotForm(desk, brief=True)
    qtbot.addWidget(form)
    form.load(None)
    assert form.product.text() == ""
    assert form.mass.text() == ""


@pytest.mark.parametrize(
    ("system", "typed", "meant_g", "kept"),
    [
        (UnitSystem.FARM, "50", 22679.6185, "50 lb"),
        (UnitSystem.FARM, "25 kg", 25000.0, "25 kg"),
        (UnitSystem.METRIC, "25", 25000.0, "25 kg"),
    ],
)
def test_a_bare_number_is_pounds_or_kilograms_of_a_bag(
    qtbot: QtBot, desk: Desk, system: UnitSystem, typed: str, meant_g: float, kept: str
) -> None:
    farm = desk.farm
    assert farm is not None
    desk.records.keep(replace(farm, units=system))
    desk.changed.emit()
    form = LotForm(desk)
    qtbot.addWidget(form)
    form.load(None)
    form.number.set_text("26-0101A")
    qtbot.keyClicks(form.mass.line, typed)
    made = form.made()
    assert made is not None
    assert (made.package_mass_g, made.package_mass_typed) == (pytest.approx(meant_g), kept)


def test_a_signed_off_lot_is_weighed_in_again_only_on_purpose(qtbot: QtBot, desk: Desk, answers: Answers) -> None:
    page = LotsPage(desk)
    qtbot.addWidget(page)
    page.reload()
    went: list[tuple[str, str]] = []
    desk.go_to.connect(lambda name, thing: went.append((name, thing)))
    assert "again" not in page.weigh_button.text()
    page.weigh_button.click()
    assert [name for name, _ in went] == ["weigh_in"]


def test_the_question_tells_what_a_new_sign_off_does(
    qtbot: QtBot, tmp_path: Path, answers: Answers, season_in: Callable[[Path], Records]
) -> None:
    records = season_in(tmp_path)
    desk = Desk(records, answers)
    page = LotsPage(desk)
    qtbot.addWidget(page)
    page.reload()
    signed = next(known for known in standing(records, desk.farm).lots if known.sign_off)  # type: ignore[arg-type]
    page.open(signed.lot.id)
    went: list[str] = []
    desk.go_to.connect(lambda _, thing: went.append(thing))
    assert "again" in page.weigh_button.text()
    answers.yes = False
    page.weigh_button.click()
    assert went == []
    assert "labels and charts" in answers.asked[-1]
    answers.yes = True
    page.weigh_button.click()
    assert went == [signed.lot.id]
    records.close()


def test_tab_goes_from_the_weight_to_the_price(qtbot: QtBot, desk: Desk) -> None:
    form = LotForm(desk)
    qtbot.addWidget(form)
    form.load(None)
    with qtbot.waitActive(form):
        form.show()
        form.activateWindow()
    form.mass.line.setFocus()
    qtbot.keyClicks(form.mass.line, "50 lb\t")
    qtbot.keyClicks(QApplication.focusWidget(), "71")
    assert (form.mass.text(), form.price.text()) == ("50 lb", "71")


def test_tab_goes_from_field_to_field_as_they_stand(qtbot: QtBot, desk: Desk) -> None:
    """A number of bags came last, and 40 of them became bags of 40 lb."""
    form = LotForm(desk)
    qtbot.addWidget(form)
    form.load(None)
    form.show()
    form.package.setFocus()
    for field in (form.count, form.mass):
        form.focusNextChild()
        assert form.focusWidget() is field.line


def test_a_day_taken_for_one_of_last_year_is_told_as_a_caution(qtbot: QtBot, desk: Desk) -> None:
    form = LotForm(desk)
    qtbot.addWidget(form)
    form.load(None)
    later = desk.clock().date() + timedelta(days=2)
    for typed, state in ((f"{later:%d %b}", "care"), (f"{later.replace(year=later.year - 1):%d %b %Y}", "ok")):
        form.arrived_on.line.clear()
        qtbot.keyClicks(form.arrived_on.line, typed)
        assert form.arrived_on._message.property("state") == state
