"""Several farms in one store: switching, adding, comparing; nothing of one shows on the other's pages."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

import pytest
from answers import Answers, at_noon
from pytestqt.qtbot import QtBot
from screens import texts

from calibrator.desk.context import Desk
from calibrator.desk.pages.farms_compared import FarmsDialog
from calibrator.desk.pages.setup import SetupPage
from calibrator.desk.window import PAGES, Window
from calibrator.model import Farm, Lot, Scale, Scoop, SignOff, UnitSystem, WeighIn, new_id
from calibrator.records import Records

AT = at_noon()
RAIL = [key for key in PAGES if key != "welcome"]
HERE, THERE = ("Windy Hollow", "Red scoop", "25-0302A", "Kitchen scale"), ("Far Side", "Tin dipper", "X-771", "Balance")


@pytest.fixture
def far(records: Records, desk: Desk) -> Farm:
    """A second farm with a scale, a scoop and a lot of its own."""
    made = records.keep(Farm(id=new_id(), name=THERE[0]))
    for kind, name in ((Scoop, THERE[1]), (Scale, THERE[3])):
        one = records.every(kind)[0]
        records.keep(replace(one, id=new_id(), farm_id=made.id, name=name, revision=""))
    records.keep(Lot(id=new_id(), farm_id=made.id, lot_number=THERE[2], product="20-20 replacer"))
    return made


@pytest.fixture
def window(qtbot: QtBot, desk: Desk, far: Farm) -> Iterator[Window]:
    shown = Window(desk)
    qtbot.addWidget(shown)
    shown.show()
    yield shown
    shown._closing = True
    shown.close()


def everything(window: Window) -> str:
    said = []
    for key in RAIL:
        window.show_page(key)
        said += list(texts(window))
        if isinstance(page := window.current_page, SetupPage):
            for place in range(page.tabs.count()):
                page.tabs.setCurrentIndex(place)
                said += list(texts(window))
    return "\n".join(said)


def test_all_pages_follow_the_farm_and_nothing_leaks(window: Window, far: Farm) -> None:
    here = window.desk.farm
    assert here is not None
    for farm, own, other in ((here, HERE, THERE), (far, THERE, HERE), (here, HERE, THERE)):
        window.show_farm(farm.id)
        window.show_page("weigh_in", window.desk.records.every(Lot, farm.id)[0].id)
        told = everything(window)
        assert [name for name in own if name not in told] == []
        assert [name for name in other if name in told] == []


def test_the_menu_marks_the_farm_in_view_and_brings_up_another(window: Window, far: Farm) -> None:
    window.rail.farms._fill()
    names = {action.text(): action for action in window.rail.farms.list.actions()}
    assert names["Windy Hollow"].isChecked()
    assert not names["Far Side"].isChecked()
    names["Far Side"].trigger()
    assert window.desk.farm is not None
    assert window.desk.farm.name == window.rail.farm_name == "Far Side"


def test_what_is_typed_keeps_one_on_the_farm(window: Window, far: Farm, answers: Answers, qtbot: QtBot) -> None:
    window.show_page("lots", "new")
    qtbot.keyClicks(window.current_page.form.number.line, "half a number")  # type: ignore[attr-defined]
    window.show_farm(far.id)
    assert window.desk.farm is not None
    assert window.desk.farm.id != far.id
    assert "Not kept yet: “" in answers.told[-1]


def test_a_further_farm_is_added_and_led_by_the_hand(window: Window, answers: Answers) -> None:
    desk = window.desk
    assert desk.farm is not None
    desk.records.keep(replace(desk.farm, units=UnitSystem.METRIC, currency="€"))
    desk.changed.emit()
    answers.words = "  Third   Place "
    window.rail.farms.ask_for_new()
    assert desk.farm is not None
    assert (desk.farm.name, desk.farm.units, desk.farm.currency) == ("Third Place", UnitSystem.METRIC, "€")
    assert window.current_page.key == "welcome"
    window.rail.farms.ask_for_new()
    assert "already" in answers.told[-1]
    assert len(desk.records.every(Farm)) == 3


def sign(records: Records, farm: Farm, density: float, number: str) -> None:
    """A lot weighed in and signed off at this density."""
    lot = records.keep(Lot(id=new_id(), farm_id=farm.id, lot_number=number, product="Shared 20-20"))
    scoop, scale = records.every(Scoop, farm.id)[0], records.every(Scale, farm.id)[0]
    started = WeighIn(id=new_id(), farm_id=farm.id, lot_id=lot.id, started_at=AT, scoop_id=scoop.id, scale_id=scale.id)
    weigh_in = records.keep(started)
    told = SignOff(
        id=new_id(), farm_id=farm.id, weigh_in_id=weigh_in.id, lot_id=lot.id, scoop_id=scoop.id, scale_id=scale.id,
        by="AB", at=AT, bags=4, fills=8, level_mean_g=600 * density, level_u_g=2.0, level_low_g=590 * density,
        level_high_g=610 * density, degrees_of_freedom=20.0, density_g_per_ml=density, density_u_g_per_ml=0.003,
        density_low_g_per_ml=density - 0.006, density_high_g_per_ml=density + 0.006, bag_sd_share=0.01,
        fill_sd_share=0.015, settling_factor=1.03, settling_u=0.01, verdict="", old_line_verdict="",
        scoop_revision=scoop.revision, scale_revision=scale.revision, lot_revision=lot.revision, program_version="",
    )  # fmt: skip
    records.sign_off(told, [])


def test_a_product_is_compared_across_farms(qtbot: QtBot, desk: Desk, far: Farm) -> None:
    here = desk.farm
    assert here is not None
    for n in range(4):
        sign(desk.records, here, 0.550 + 0.002 * n, f"A-{n}")
        sign(desk.records, far, 0.500 + 0.002 * n, "A-0" if n == 0 else f"B-{n}")
    dialog = FarmsDialog(desk, None)
    qtbot.addWidget(dialog)
    dialog.show()
    told = "\n".join(texts(dialog))
    assert "Far Side it is 9.0 % lighter than at Windy Hollow" in told
    assert "Lot A-0, the same powder" in told
    assert "They weigh it differently" in told
    assert [dialog.panel.table.item(row, 1).text() for row in range(2)] == ["4", "4"]


def test_without_a_common_product_that_is_said(qtbot: QtBot, desk: Desk, far: Farm) -> None:
    dialog = FarmsDialog(desk, None)
    qtbot.addWidget(dialog)
    dialog.show()
    assert dialog.panel.none.isVisible()
    assert not dialog.panel.table.isVisible()
