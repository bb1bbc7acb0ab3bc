"""The farm's own line: made from weighed mixes, drawn, refused in words."""

from __future__ import annotations

import pytest
from herd import Herd
from keys import focus
from mix_hands import NOW, own_line, refractometer, type_in, zeroed
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from calibrator.desk.context import Desk
from calibrator.desk.pages.mix_check import MixCheckPage
from calibrator.model import (
    ReferenceMix,
    new_id,
)


def test_the_walk_through_makes_an_own_line_by_keys(qtbot: QtBot, page: MixCheckPage, herd: Herd, desk: Desk) -> None:
    tool = refractometer(herd)
    desk.changed.emit()
    page.bring_up("line")
    panel = page.line
    assert panel.finding.text() == "No Brix calibration yet"
    assert len(panel.recipes.text().splitlines()) == 1 + 3
    assert " g)" in panel.recipes.text()
    for powder, water, drops in (("100 g", "900 g", "8.4 8.6 8.5"), ("160 g", "840 g", "14.4 14.6 14.5")):
        for line, text in ((panel.powder.line, powder), (panel.water.line, water), (panel.drops.line, drops)):
            type_in(qtbot, line, text)
        qtbot.keyClick(panel.add_button, Qt.Key.Key_Space)
    mixes = desk.records.every(ReferenceMix)
    assert [(m.powder_typed, m.readings_typed, m.instrument_id) for m in mixes] == [
        ("100 g", "8.4 8.6 8.5", tool.id), ("160 g", "14.4 14.6 14.5", tool.id),
    ]  # fmt: skip
    # 13.1 % on the line through (10 %, 8.5) and (16 %, 14.5).
    assert panel.finding.text() == "13.1 % solids: this refractometer shows 11.6 °Brix"
    assert "Right would be about 11.6 °Brix" in page.check.verdict.solids.text()
    assert "1.00 °Brix" in panel.meaning.text()
    assert "assumption" in panel.meaning.text()
    panel.list.setCurrentRow(0)
    qtbot.keyClick(panel.withdraw_button, Qt.Key.Key_Space)
    assert panel.finding.text() == "No Brix calibration yet"
    assert [m.withdrawn_reason for m in desk.records.every(ReferenceMix)] == ["", "spilled some"]


def test_enter_in_the_last_figure_adds_the_mix_and_begins_the_next(
    qtbot: QtBot, page: MixCheckPage, herd: Herd, desk: Desk
) -> None:
    refractometer(herd)
    desk.changed.emit()
    page.bring_up("line")
    qtbot.waitUntil(page.isActiveWindow)
    page.line.powder.line.setFocus()
    for text in ("100 g", "900 g", "8.4 8.6 8.5", "160 g", "840 g", "145", "14.4"):
        focus().selectAll()  # type: ignore[attr-defined]
        qtbot.keyClicks(focus(), text)
        qtbot.keyClick(focus(), Qt.Key.Key_Return)
    assert [m.readings_typed for m in desk.records.every(ReferenceMix)] == ["8.4 8.6 8.5", "14.4"]
    assert focus() is page.line.powder.line


WRONG_MIXES = [
    ("", "900 g", "8.5"),
    ("100 g", "", "8.5"),
    ("100 g", "900 g", ""),
    ("0", "900 g", "8.5"),
    ("-100 g", "900 g", "8.5"),
    ("100 qt", "900 g", "8.5"),
    ("900 g", "100 g", "8.5"),
    ("1 g", "900 g", "8.5"),
    ("100 g", "900 g", "85"),
    ("100 g", "900 g", "8,50,0"),
    ("100 g", "hundred", "8.5"),
    ("1.0.0 g", "900 g", "8.5"),
]


def test_wrong_weighed_mixes_are_answered_in_words(qtbot: QtBot, page: MixCheckPage, herd: Herd, desk: Desk) -> None:
    refractometer(herd)
    desk.changed.emit()
    page.bring_up("line")
    panel = page.line
    for texts in WRONG_MIXES:
        for line, text in zip((panel.powder.line, panel.water.line, panel.drops.line), texts, strict=True):
            type_in(qtbot, line, text)
        panel.add()
        assert desk.records.every(ReferenceMix) == []
        assert any((panel.powder.message, panel.water.message, panel.drops.message)), texts


def test_the_line_is_drawn_with_its_band_and_the_mix_in_hand(
    qtbot: QtBot, page: MixCheckPage, herd: Herd, desk: Desk
) -> None:
    tool = refractometer(herd)
    zeroed(herd, tool)
    desk.changed.emit()
    page.bring_up("line")
    assert not page.line.picture.isVisibleTo(page)
    own_line(herd, tool)
    desk.changed.emit()
    picture = page.line.picture
    assert picture.isVisibleTo(page)
    assert len(picture.plot.keys) == 6
    assert picture.plot.hand is None
    assert "Diamond" not in picture.words.text()
    page.tabs.setCurrentIndex(0)
    type_in(qtbot, page.check.readings.first.line, "11.4 11.6 11.5")
    page.bring_up("line")
    hand, best = picture.plot.hand, page.check.found.best
    assert hand is not None
    assert best is not None
    assert (hand.solids_pct, hand.low_pct, hand.high_pct) == pytest.approx(
        (100 * best.share, 100 * best.low, 100 * best.high)
    )
    # By eye: the six mixes read 1.5 below their solids, so 11.5 Brix is 13.0 %.
    assert hand.solids_pct == pytest.approx(13.0, abs=0.05)
    assert "Diamond: the mix in hand, 11.5 °Brix, 13.0" in picture.words.text()
    # The band at the reading in hand is what three such drops leave open.
    near = min(picture.plot.along, key=lambda place: abs(place.brix - hand.brix))
    assert near.high_pct - near.low_pct == pytest.approx(hand.high_pct - hand.low_pct, rel=0.1)
    page.line.list.setFocus()
    qtbot.keyClick(page.line.list, Qt.Key.Key_Down)
    assert picture.plot.stressed == picture.plot.keys[1]
    picture.plot.chosen.emit(picture.plot.keys[4])
    assert page.line.list.currentRow() == 4
    assert page.line.finding.text() in picture.plot.accessibleDescription()


def test_mixes_that_make_no_line_say_why(page: MixCheckPage, herd: Herd, desk: Desk) -> None:
    tool = refractometer(herd)
    lot = herd.lot_of(herd.records.sign_offs(herd.farm.id)[-1])
    for grams in (130.0, 132.0):
        herd.records.keep(
            ReferenceMix(
                id=new_id(), farm_id=herd.farm.id, lot_id=lot.id, instrument_id=tool.id, powder_g=grams,
                powder_typed="", water_g=870.0, water_typed="", readings_brix=(11.5,), readings_typed="11.5", at=NOW,
            )
        )  # fmt: skip
    desk.changed.emit()
    assert page.line.finding.text() == "These mixes make no calibration"
    assert "too alike" in page.line.meaning.text()


def test_without_a_refractometer_it_leads_to_entering_one(
    qtbot: QtBot, page: MixCheckPage, herd: Herd, desk: Desk
) -> None:
    page.bring_up("line")
    panel = page.line
    assert panel.trouble.isVisibleTo(page)
    assert not panel.to_weigh_in.isVisibleTo(page)
    qtbot.keyClick(panel.to_instruments, Qt.Key.Key_Space)
    assert page.instruments.isVisible()
    refractometer(herd)
    desk.changed.emit()
    assert not panel.to_instruments.isVisibleTo(page)
    assert not panel.trouble.isVisibleTo(page)
