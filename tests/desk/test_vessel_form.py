"""A vessel's shape: by its dimensions, or by water poured in and weighed."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLineEdit
from pytestqt.qtbot import QtBot

from calibrator.desk.context import Desk
from calibrator.desk.forms.vessel_form import VesselForm
from calibrator.desk.widgets.shape_choice import ShapeKind
from calibrator.model import Cylinder, Poured, Vessel


@pytest.fixture
def form(qtbot: QtBot, desk: Desk) -> VesselForm:
    made = VesselForm(desk)
    qtbot.addWidget(made)
    made.load(None)
    made.show()
    return made


def put(qtbot: QtBot, line: QLineEdit, text: str) -> None:
    line.selectAll()
    qtbot.keyClick(line, Qt.Key.Key_Delete)
    qtbot.keyClicks(line, text)


def pail(form: VesselForm, qtbot: QtBot) -> None:
    put(qtbot, form.name.line, "Pail")
    put(qtbot, form.volume.line, "5 gal")


def test_nothing_about_the_shape_is_asked_unless_it_is_wanted(form: VesselForm, qtbot: QtBot) -> None:
    pail(form, qtbot)
    assert not form.fields.isVisible()
    made = form.made()
    assert made is not None
    assert made.shape is None
    form.has_levels.click()
    assert form.fields.isVisible()
    assert form.made() is None


def test_a_straight_vessel_whose_dimensions_give_its_volume(form: VesselForm, qtbot: QtBot, desk: Desk) -> None:
    """A pail 11 in wide and 12 in high holds π/4·11²·12 = 1140.4 in³, 4.94 gal of 231 in³."""
    pail(form, qtbot)
    form.has_levels.click()
    put(qtbot, form.fields.diameter.line, "11 in")
    put(qtbot, form.fields.inner_height.line, "12 in")
    assert "4 gal" in form._holds.text()
    assert not form._trouble.isVisible()
    kept = desk.records.keep(form.made())  # type: ignore[type-var]
    assert isinstance(kept, Vessel)
    assert isinstance(kept.shape, Cylinder)
    assert (kept.shape.diameter_mm, kept.shape.height_mm) == pytest.approx((279.4, 304.8))
    form.load(kept)
    assert form.has_levels.isChecked()
    assert form.fields.inner_height.text() == "12 in"
    assert not form.typed


def test_a_volume_that_the_shape_does_not_have_is_questioned(form: VesselForm, qtbot: QtBot) -> None:
    pail(form, qtbot)
    form.has_levels.click()
    put(qtbot, form.fields.diameter.line, "10 in")
    put(qtbot, form.fields.inner_height.line, "12 in")
    assert form._trouble.isVisible()
    assert "%" in form._trouble.text()
    form.take_volume.click()
    assert not form._trouble.isVisible()
    made = form.made()
    assert made is not None
    assert made.rim_volume_ml == pytest.approx(3.141592653589793 / 4 * 254**2 * 304.8 / 1000, rel=1e-3)


def test_a_vessel_is_calibrated_by_poured_and_weighed_water(form: VesselForm, qtbot: QtBot) -> None:
    """Water at 20 °C takes 1.0029 mL per gram weighed in air: ISO 8655-6:2022, table A.1, 101.3 kPa."""
    pail(form, qtbot)
    form.has_levels.click()
    form.fields.shapes.buttons[ShapeKind.POURED].click()
    for place, (mass, high) in enumerate((("5 kg", "80 mm"), ("10 kg", "155 mm"), ("19 kg", "280 mm"))):
        put(qtbot, form.fields.pourings.masses[place].line, mass)
        put(qtbot, form.fields.pourings.heights[place].line, high)
    made = form.made()
    assert made is not None
    assert isinstance(made.shape, Poured)
    assert made.shape.heights_mm == (80, 155, 280)
    assert made.shape.volumes_ml == pytest.approx((5014.5, 10029, 19055), rel=2e-4)


def test_steps_that_do_not_rise_are_answered_in_words(form: VesselForm, qtbot: QtBot) -> None:
    pail(form, qtbot)
    form.has_levels.click()
    form.fields.shapes.buttons[ShapeKind.POURED].click()
    for place, (mass, high) in enumerate((("5 kg", "80 mm"), ("4 kg", "155 mm"), ("19 kg", "280 mm"))):
        put(qtbot, form.fields.pourings.masses[place].line, mass)
        put(qtbot, form.fields.pourings.heights[place].line, high)
    assert form.made() is None
    assert form._trouble.isVisible()
    assert form._trouble.text()


def test_letting_the_shape_go_forgets_it(form: VesselForm, qtbot: QtBot, desk: Desk) -> None:
    pail(form, qtbot)
    form.has_levels.click()
    put(qtbot, form.fields.diameter.line, "11 in")
    put(qtbot, form.fields.inner_height.line, "12 in")
    kept = desk.records.keep(form.made())  # type: ignore[type-var]
    form.load(kept)  # type: ignore[arg-type]
    form.has_levels.click()
    assert form.typed
    made = form.made()
    assert made is not None
    assert made.shape is None
