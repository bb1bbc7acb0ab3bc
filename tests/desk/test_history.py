"""What was kept, told from what to what, as it was typed and in the units of the farm."""

from __future__ import annotations

from dataclasses import fields, replace
from datetime import date

import pytest
from answers import at_noon
from PySide6.QtWidgets import QLabel, QPushButton
from pytestqt.qtbot import QtBot

from calibrator.desk.context import Desk
from calibrator.desk.forms.history import HistoryList, _captions, changed_words
from calibrator.model import (
    Composition,
    Cylinder,
    Farm,
    FeederTrial,
    FillWay,
    Instrument,
    Lot,
    Plan,
    Scale,
    Scoop,
    UnitSystem,
    Vessel,
    WeighIn,
    new_id,
)

LOT = Lot(id="a", farm_id="f", lot_number="25-0302A", package_count=40)
SCALE = Scale(
    id="s", farm_id="f", name="bench", resolution_g=1.0, resolution_typed="1 g", capacity_g=5e3, capacity_typed="5 kg"
)
SCOOP = Scoop(
    id="c", farm_id="f", name="red", shape=Cylinder(diameter_mm=96, height_mm=92), volume_ml=640.0, volume_u_ml=1.5
)
FARM = Farm(id="f", name="Windy Hollow")
WEIGH_IN = WeighIn(id="w", farm_id="f", lot_id="a", started_at=at_noon())
TRIAL = FeederTrial(
    id="t", farm_id="f", lot_id="a", scoop_id="c", scale_id="s", way=FillWay.LEVEL, started_at=at_noon()
)


@pytest.mark.parametrize(
    ("before", "after", "words"),
    [
        (LOT, replace(LOT, product="20-20"), "product – → “20-20”"),
        (LOT, replace(LOT, package_count=38), "bags and their weight 40 → 38"),
        (LOT, replace(LOT, arrived_on=date(2026, 3, 2)), "arrived on – → Mar 2, 2026"),
        (LOT, replace(LOT, waits=True), "waits for its change-over"),
        (replace(LOT, waits=True), LOT, "waits no longer for its change-over"),
        (
            replace(LOT, waits=True),
            replace(LOT, fed_from=date(2026, 3, 2), fed_from_feeding=1),
            "fed from Mar 2, 2026 on",
        ),
        (replace(LOT, fed_from=date(2026, 3, 2)), LOT, "its change-over was taken back"),
        (LOT, replace(LOT, fed_from_feeding=1), "fed from another feeding of that day on"),
        (LOT, replace(LOT, medicated=True), "medicated or not no → yes"),
        (LOT, replace(LOT, composition=Composition(fat_pct=20.0)), "fat – → 20 %"),
        (SCALE, replace(SCALE, capacity_g=1e4, capacity_typed="10 kg"), "capacity “5 kg” → “10 kg”"),
        (SCALE, replace(SCALE, capacity_g=1e4), "capacity 11 lb 0.4 oz → 22 lb 0.7 oz"),
        (SCOOP, replace(SCOOP, volume_ml=650.0, volume_u_ml=2.0), "volume 21.6 fl oz → 22.0 fl oz"),
        (SCOOP, replace(SCOOP, shape=Cylinder(diameter_mm=96, height_mm=93)), "changed shape and dimensions"),
        (FARM, replace(FARM, units=UnitSystem.METRIC), "units farm units → metric"),
        (FARM, replace(FARM, tolerance_share=0.03, name="W"), "name “Windy Hollow” → “W”; tolerance 2.0 % → 3.0 %"),
        (FARM, replace(FARM, water_step_qt=0.5), "step of the water, qt 0.25 → 0.5"),
        (LOT, replace(LOT, revision="x"), "–"),
        (TRIAL, replace(TRIAL, withdrawn_reason="wrong bag"), "counts no more, because: wrong bag"),
        (replace(TRIAL, withdrawn_reason="wrong bag"), TRIAL, "counts again"),
        (TRIAL, replace(TRIAL, closed=True), "closed"),
        (replace(TRIAL, closed=True), TRIAL, "opened again"),
        (WEIGH_IN, replace(WEIGH_IN, abandoned=True), "given up"),
        (replace(WEIGH_IN, abandoned=True), WEIGH_IN, "taken up again"),
        (None, LOT, "entered"),
    ],
)
def test_a_change_is_told_from_what_to_what(qtbot: QtBot, before: object, after: object, words: str) -> None:
    assert changed_words(before, after, UnitSystem.FARM) == words


def test_things_are_told_by_their_names_and_never_by_their_ids(qtbot: QtBot, desk: Desk) -> None:
    """A plan that names a vessel told of "c9b39ceb…" in its history."""
    assert desk.farm is not None
    tub = desk.records.keep(Vessel(id=new_id(), farm_id=desk.farm.id, name="Mixing tub", rim_volume_ml=60_000.0))
    plan = desk.records.keep(Plan(id=new_id(), farm_id=desk.farm.id, name="Milk", groups=()))
    plan = desk.records.keep(replace(plan, vessel_id=tub.id))
    shown = HistoryList(desk)
    qtbot.addWidget(shown)
    shown.show_of(Plan, plan.id)
    assert _lines(shown)[0].endswith("vessel – → “Mixing tub”")
    assert changed_words(plan, replace(plan, vessel_id="c9b39ceb"), UnitSystem.FARM) == "changed vessel"


def test_all_of_a_long_history_can_be_shown(qtbot: QtBot, desk: Desk) -> None:
    (lot,) = desk.records.every(Lot)
    for count in range(10):
        lot = desk.records.keep(replace(lot, package_count=count), by="AB", why="counted")
    shown = HistoryList(desk)
    qtbot.addWidget(shown)
    shown.show_of(Lot, lot.id)
    assert len(_lines(shown)) == 6
    assert _lines(shown)[0].endswith("AB: bags and their weight 8 → 9 (counted)")
    more = shown._lines.itemAt(shown._lines.count() - 1).widget()  # type: ignore[union-attr]
    assert isinstance(more, QPushButton)
    more.click()
    assert len(_lines(shown)) == 11
    assert _lines(shown)[-1].endswith("entered")


def _lines(shown: HistoryList) -> list[str]:
    labels = [shown._lines.itemAt(place).widget() for place in range(shown._lines.count())]  # type: ignore[union-attr]
    return [one.text() for one in labels if isinstance(one, QLabel)][1:]


@pytest.mark.parametrize("kind", [Farm, Lot, Scoop, Scale, Plan, Vessel, Instrument])
def test_every_entry_that_can_be_changed_has_its_own_name(kind: type) -> None:
    """Nothing of what set-up and lots keep is told as "other entries", which name nothing."""
    told_otherwise = {"id", "farm_id", "revision", "scoops_marked", "fed_from", "fed_from_feeding", "waits"}
    assert {field.name for field in fields(kind)} - set(_captions()) <= told_otherwise
