"""A farm that checks its mixes, the page in hand, and what hands do on it."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

from answers import Answers
from herd import FIRST_DAY, OZ_G, Herd, group
from PySide6.QtWidgets import QApplication, QLabel, QLineEdit
from pytestqt.qtbot import QtBot

from calibrator.desk.context import Desk
from calibrator.desk.pages.mix_check import MixCheckPage
from calibrator.desk.theme import Theme
from calibrator.model import (
    BagCount,
    Instrument,
    InstrumentCheck,
    InstrumentCheckKind,
    InstrumentKind,
    MixCheck,
    Pail,
    Reading,
    ReadingKind,
    ReferenceMix,
    new_id,
)
from calibrator.records import Records

NOW = FIRST_DAY + timedelta(days=30)


def mix_herd(records: Records) -> Herd:
    """Two lots signed off, a tank, a plan."""
    made = Herd(records)
    made.sign("25-0112A", 0.50)
    made.sign("25-0202B", 0.56)
    tank = made.vessel("Cart tank", 66.0)
    made.plan("Morning milk", group(80, "hutches"), vessel_id=tank.id)
    return made


def mix_desk(qapp: QApplication, records: Records, answers: Answers) -> Desk:
    if qapp.property("tokens") is None:
        Theme(qapp)
    made = Desk(records, answers, clock=lambda: NOW)
    made.initials = "AB"
    return made


def mix_page(qtbot: QtBot, desk: Desk) -> MixCheckPage:
    made = MixCheckPage(desk)
    qtbot.addWidget(made)
    desk.changed.connect(made.reload)
    made.resize(1024 - 196, 700)
    made.reload()
    made.show()
    return made


def refractometer(herd: Herd, **more: object) -> Instrument:
    told = {"kind": InstrumentKind.REFRACTOMETER, "division": 0.2, "division_typed": "0.2"} | more
    return herd.records.keep(Instrument(id=new_id(), farm_id=herd.farm.id, name="glass", **told))  # type: ignore[arg-type]


def zeroed(herd: Herd, tool: Instrument, days: float = 1.0, reading: float = 0.0) -> InstrumentCheck:
    return herd.records.keep(
        InstrumentCheck(
            id=new_id(), farm_id=herd.farm.id, instrument_id=tool.id, kind=InstrumentCheckKind.WATER, expected=0.0,
            reading=reading, typed=str(reading), at=NOW - timedelta(days=days),
        )
    )  # fmt: skip


def own_line(herd: Herd, tool: Instrument) -> None:
    """Six weighed mixes that read 1.5 below their solids."""
    lot = herd.lot_of(herd.records.sign_offs(herd.farm.id)[-1])
    for grams, off in ((100, 0.05), (115, -0.05), (130, 0.05), (130, -0.05), (145, 0.05), (160, -0.05)):
        read = grams / 10 - 1.5 + off
        herd.records.keep(
            ReferenceMix(
                id=new_id(), farm_id=herd.farm.id, lot_id=lot.id, instrument_id=tool.id, powder_g=grams,
                powder_typed=f"{grams} g", water_g=1000 - grams, water_typed=f"{1000 - grams} g",
                readings_brix=(read, read, read), readings_typed=f"{read}", at=NOW - timedelta(days=1),
            )
        )  # fmt: skip


def type_in(qtbot: QtBot, line: QLineEdit, text: str) -> None:
    line.setFocus()
    line.clear()
    qtbot.keyClicks(line, text)


def labels(widget: object) -> str:
    QApplication.processEvents()
    return "\n".join(one.text() for one in widget.findChildren(QLabel) if one.isVisibleTo(widget))  # type: ignore[attr-defined]


def kept_check(herd: Herd, day: int, share: float, feeder: str = "Ana", **more: object) -> MixCheck:
    lot = herd.lot_of(herd.records.sign_offs(herd.farm.id)[-1])
    drops = Reading(kind=ReadingKind.BRIX, value=11.2, typed="11.2 11.4", pail=Pail.FIRST)
    told = MixCheck(
        id=new_id(), farm_id=herd.farm.id, at=FIRST_DAY + timedelta(days=day), lot_id=lot.id, readings=(drops, drops),
        target_share=0.13, target_typed="13 %", tolerance_share=0.005, tolerance_typed="0.5 %", feeder=feeder,
        solids_share=share, solids_low=share - 0.003, solids_high=share + 0.003, way="own_line", verdict="inside",
    )  # fmt: skip
    return herd.records.keep(replace(told, **more))  # type: ignore[arg-type]


def bag_count_of(herd: Herd, day: int, feedings: int) -> BagCount:
    lot = herd.lot_of(herd.records.sign_offs(herd.farm.id)[-1])
    return herd.records.keep(
        BagCount(
            id=new_id(), farm_id=herd.farm.id, lot_id=lot.id, since=(FIRST_DAY + timedelta(days=day - 7)).date(),
            at=FIRST_DAY + timedelta(days=day), bags=20, bags_typed="20", bag_mass_g=50 * 16 * OZ_G,
            bag_mass_typed="50 lb", feedings=feedings, target_mass_g=10 * OZ_G, target_typed="10 oz",
        )
    )  # fmt: skip
