"""The mix check driven by keys: verdict at once, kept as typed, correction, pails."""

from __future__ import annotations

import re
from dataclasses import replace
from datetime import timedelta

import pytest
from answers import Answers
from herd import GAL_ML, OZ_G, QT_ML, Herd, group
from mix_hands import NOW, labels, own_line, refractometer, type_in, zeroed
from PySide6.QtCore import QPoint, Qt
from PySide6.QtWidgets import QApplication, QLabel
from pytestqt.qtbot import QtBot

from calibrator.desk.context import Desk
from calibrator.desk.forms.bare_field import BareField
from calibrator.desk.how.of_check import of_solids
from calibrator.desk.how.view import HowDialog
from calibrator.desk.mix_batch import batch_of, planned
from calibrator.desk.mix_words import mass, odds_words, slip_words
from calibrator.desk.pages.mix_check import MixCheckPage
from calibrator.desk.widgets.saying import Saying
from calibrator.model import (
    Instrument,
    InstrumentCheck,
    InstrumentCheckKind,
    InstrumentKind,
    MixCheck,
    Pail,
    ReadingKind,
    UnitSystem,
    new_id,
)
from calibrator.records import Records
from calibrator.science.causes import Cause, Fits, Slip, mixes_after
from calibrator.science.check import Caution, Verdict
from calibrator.science.correction import Add
from calibrator.science.solids import SolidsFrom
from calibrator.units.bare import Bare


def test_a_batch_for_all_groups_together_is_offered_where_they_are_mixed_alike(
    page: MixCheckPage, herd: Herd, desk: Desk
) -> None:
    plan = herd.plan("Calf barn", group(24, "Younger"), replace(group(60, "Older"), volume_ml=3 * QT_ML))
    herd.plan("Two mixes", group(9, "A"), group(9, "B", rate=replace(group(1).rate, powder_mass_g=200.0)))
    desk.changed.emit()
    form = page.check.batch_form
    offered = [form.group.itemText(at) for at in range(form.group.count())]
    assert "Calf barn, all together" in offered
    assert "Two mixes, all together" not in offered
    form.group.setCurrentIndex(offered.index("Calf barn, all together"))
    form.group.activated.emit(form.group.currentIndex())
    batch = form.batch()
    assert batch is not None
    assert (batch.calves, batch.plan and batch.plan.id, batch.group) == (84, plan.id, None)
    each = [batch_of(batch.now, batch.plan, fed, fed.calves, None).mix for fed in batch.plan.groups]
    assert batch.mix.powder_g == pytest.approx(sum(mix.powder_g for mix in each), rel=0.01)
    form.calves.setText("42")  # half as many of each
    form.calves.counted.emit(42)
    assert form.batch().mix.powder_g == pytest.approx(batch.mix.powder_g / 2, rel=0.01)


def test_whose_batch_is_judged_is_said_where_groups_want_different_mixes(
    page: MixCheckPage, herd: Herd, desk: Desk
) -> None:
    panel = page.check
    assert panel.whose.isHidden()  # one group: nothing to choose, nothing to say
    assert panel.verdict.whose.isHidden()
    strong = replace(group(1).rate, powder_mass_g=400.0)
    herd.plan("Calf barn", group(9, "Younger"), group(9, "Older", rate=strong))
    desk.changed.emit()
    assert panel.whose.isVisible()
    top = panel.readings.first.mapTo(panel, QPoint(0, 0)).y()
    assert panel.whose.mapTo(panel, QPoint(0, 0)).y() < top  # whose it is decides what is right
    form = panel.batch_form
    assert panel.verdict.whose.text().startswith(f"Taken to be the batch for {form.group.currentText()}. ")
    at = form.group.findText("Calf barn, Older")
    form.group.setCurrentIndex(at)
    form.group.activated.emit(at)
    assert panel.verdict.whose.text() == "The batch for Calf barn, Older"


def test_nobody_is_asked_whose_batch_it_is_where_all_want_the_same(page: MixCheckPage, herd: Herd, desk: Desk) -> None:
    herd.plan("Calf barn", group(9, "Younger"), group(9, "Older"))
    desk.changed.emit()
    assert page.check.verdict.whose.isHidden()


def test_the_batch_is_the_charts_and_the_verdict_comes_while_typing(qtbot: QtBot, page: MixCheckPage) -> None:
    panel = page.check
    batch = panel.batch_form.batch()
    assert batch is not None
    assert (batch.calves, batch.vessel and batch.vessel.name) == (80, "Cart tank")
    # 10 oz on 2 qt of water is 13.0 % solids (common practice, no source).
    assert batch.target_share == pytest.approx(0.13, abs=0.002)
    assert panel.verdict.verdict.text() == "No verdict yet"
    assert not panel.keep_button.isEnabled()
    type_in(qtbot, panel.readings.first.line, "11.2 11.4 11.2")
    found = panel.found
    assert [s.way for s in found.ways] == [SolidsFrom.WHOLE_MILK, SolidsFrom.TRADE_RULE]
    assert found.ways[1].share == pytest.approx(0.1327, abs=1e-4)
    assert panel.verdict.verdict.text() == "Probably too strong, not sure yet"
    assert "Feed it if water and powder were measured" in panel.verdict.today.text()  # calves are waiting
    assert "Before the next check read plain water" in panel.verdict.doubts.text()
    assert "Milk replacers differ" in panel.verdict.way.text()
    # The label tells no moisture, so 4 % is taken (common practice, no source): 0.96 of the powder is dry matter.
    assert "4.0 % assumed; type the moisture from the bag" in panel.verdict.basis.text()
    dry = 100 * found.ways[0].share * 0.96
    assert f"As dry matter that is {dry:.1f} %" in panel.verdict.basis.text()
    # 0.9984 · 11.267 + 2.077 is 13.3 % dry matter: whole milk's line, and what it tells.
    assert dry == pytest.approx(13.3, abs=0.05)
    assert "tells dry matter" in panel.verdict.basis.text()
    assert "Brix + 2 is taken for powder as fed" in panel.verdict.basis.text()
    assert panel.keep_button.isEnabled()


def test_what_the_refractometer_should_show_is_told_before_and_beside_the_reading(
    qtbot: QtBot, page: MixCheckPage
) -> None:
    panel = page.check
    batch = panel.batch_form.batch()
    assert batch is not None
    assert batch.target_share is not None
    # Whole milk's line (0.9984 Brix + 2.077, dry matter) the other way round, 4 % moisture as above.
    right = (96 * batch.target_share - 2.077) / 0.9984
    told = f"Right would be about {right:.1f} °Brix."
    assert told in panel.verdict.solids.text()
    assert panel.readings.first.line.placeholderText().startswith(f"{right:.1f} ")
    type_in(qtbot, panel.readings.first.line, f"{right:.1f} {right:.1f} {right:.1f}")
    assert panel.verdict.verdict.text() == "Looks right"
    assert panel.verdict.verdict_card.property("tone") == ""
    assert told in panel.verdict.solids.text()
    assert panel.verdict.today.text() == "It can be fed: nothing speaks against it."
    assert "Weighed mixes tell more" in panel.verdict.would_tell.text()


def test_a_volume_that_is_too_much_decides_where_the_drops_lean_its_way(qtbot: QtBot, page: MixCheckPage) -> None:
    panel = page.check
    batch = panel.batch_form.batch()
    assert batch is not None
    assert batch.mix is not None
    type_in(qtbot, panel.readings.first.line, "8.6 8.6 8.6")
    assert panel.verdict.verdict.text() == "Probably too thin, not sure yet"
    type_in(qtbot, panel.readings.volume.line, f"{1.15 * batch.mix.volume_ml / 1000:.1f} L")
    assert panel.verdict.verdict.text() == "Too thin"
    assert panel.found.best is not None
    assert panel.found.best.way is SolidsFrom.FINISHED_VOLUME
    assert panel.found.correction is not None
    assert panel.found.correction.add is Add.POWDER


def test_with_an_own_line_the_verdict_is_sure_and_kept_as_typed(qtbot: QtBot, sure: MixCheckPage, desk: Desk) -> None:
    panel = sure.check
    type_in(qtbot, panel.readings.first.line, "11.4 11.6 11.5")
    assert panel.found.best is not None
    assert panel.found.best.way is SolidsFrom.OWN_LINE
    assert panel.found.references == 6
    assert panel.found.judged is not None
    assert panel.found.judged.verdict is Verdict.INSIDE
    assert panel.verdict.verdict.text() == "As it should be"
    type_in(qtbot, panel.readings.mix.line, "101 F")
    type_in(qtbot, panel.batch_form.feeder.line, "Ana")
    qtbot.keyClick(panel.keep_button, Qt.Key.Key_Space)
    (kept,) = desk.records.every(MixCheck)
    assert [(r.kind, r.value, r.typed, r.pail) for r in kept.readings[:3]] == [
        (ReadingKind.BRIX, value, "11.4 11.6 11.5", Pail.FIRST) for value in (11.4, 11.6, 11.5)
    ]
    assert kept.readings[3].kind is ReadingKind.MIX_TEMPERATURE
    assert kept.readings[3].typed == "101 F"
    # 101 °F by its definition.
    assert kept.readings[3].value == pytest.approx((101 - 32) / 1.8)
    assert (kept.verdict, kept.way, kept.feeder, kept.by) == ("inside", "own_line", "Ana", "AB")
    assert (kept.group_name, kept.calves) == ("hutches", 80)
    (tool,) = desk.records.every(Instrument)
    assert kept.readings[0].instrument_id == tool.id
    assert panel.readings.first.text() == ""
    assert panel.readings.first.line.hasFocus()


def test_how_the_solids_came_about_is_told_on_demand(qtbot: QtBot, page: MixCheckPage, herd: Herd, desk: Desk) -> None:
    panel = page.check
    assert not panel.verdict.how.isVisibleTo(page)
    type_in(qtbot, panel.readings.first.line, "11.2 11.4 11.2")
    (rough,) = of_solids(panel.found)
    assert "0.9984 × reading + 2.077" in "".join(part.working for part in rough.parts)
    tool = refractometer(herd)
    zeroed(herd, tool, reading=0.2)
    own_line(herd, tool)
    desk.changed.emit()
    (told,) = of_solids(panel.found)
    by_what = {part.what: part for part in told.parts}
    assert by_what["Reading"].result == "11.07 °Brix"
    # The mixes were read the same day with the same zero: 1.7 below their solids, so 11.07 stands for 12.77 %.
    intercept, slope = (float(part) for part in re.findall(r"[+÷] ([0-9.]+)", by_what["Solids"].working))
    assert (11.07 + intercept) / slope == pytest.approx(12.77, abs=0.02)
    assert "from 6 weighed mixes" in by_what["Solids"].working
    assert by_what["Solids"].result == "12.77 %"
    assert by_what["Verdict"].result == panel.verdict.verdict.text()
    qtbot.keyClick(panel.verdict.how, Qt.Key.Key_Space)
    (dialog,) = [one for one in QApplication.topLevelWidgets() if isinstance(one, HowDialog) and one.isVisible()]
    assert "12.77 %" in labels(dialog)
    dialog.close()


@pytest.mark.parametrize(
    ("typed", "words"),
    [({"floating": "1.032", "mix": "100 F"}, "hydrometer: density"), ({"volume": "40 gal"}, "powder on the chart")],
)
def test_how_other_ways_came_about(
    qtbot: QtBot, page: MixCheckPage, herd: Herd, desk: Desk, typed: dict[str, str], words: str
) -> None:
    herd.records.keep(
        Instrument(id=new_id(), farm_id=herd.farm.id, name="float", kind=InstrumentKind.HYDROMETER, division=0.001)
    )
    desk.changed.emit()
    assert of_solids(page.check.found) == ()
    for name, text in typed.items():
        type_in(qtbot, getattr(page.check.readings, name).line, text)
    (told,) = of_solids(page.check.found)
    assert words in "".join(part.working for part in told.parts)


def test_a_thin_mix_is_told_with_its_correction_and_its_causes(qtbot: QtBot, sure: MixCheckPage) -> None:
    panel = sure.check
    type_in(qtbot, panel.batch_form.calves, "8")
    plan = planned(panel.batch_form.batch())  # type: ignore[arg-type]
    assert plan is not None
    missing = mixes_after(plan)[Slip.SCOOP_LESS].solids_share
    type_in(qtbot, panel.readings.first.line, " ".join([f"{100 * missing - 1.5:.1f}"] * 3))
    type_in(qtbot, panel.readings.volume.line, "40 gal")
    assert panel.verdict.verdict.text() == "Too thin"
    fix = panel.found.correction
    assert fix is not None
    assert fix.add is Add.POWDER
    assert fix.fits
    assert not panel.found.correction_planned
    assert "of powder, weighed" in panel.verdict.correction.text()
    scoops = panel.found.correction_scoops
    assert scoops is not None
    # So many scoopfuls weigh something else than what the scale is to show, and both are told.
    assert f"that is {mass(scoops.total_g, UnitSystem.FARM, 0.1 * OZ_G)}" in panel.verdict.correction.text()
    assert Slip.SCOOP_LESS in {cause.slip for cause in panel.found.causes}
    assert "One scoopful too few" in panel.verdict.causes.text()
    assert panel.verdict.causes_card.isVisibleTo(panel)
    type_in(qtbot, panel.readings.volume.line, "59 gal")
    fix = panel.found.correction
    assert fix is not None
    assert not fix.fits
    assert fix.volume_after_ml <= 0.9 * 66 * GAL_ML * (1 + 1e-9)
    assert "would run over" in panel.verdict.correction.text()


def test_a_thin_mix_is_not_called_a_strong_one_by_its_caution(
    qtbot: QtBot, page: MixCheckPage, herd: Herd, desk: Desk
) -> None:
    """Red stays where the osmolality, beside it, is a risk of itself."""
    zeroed(herd, tool := refractometer(herd))
    own_line(herd, tool)
    desk.changed.emit()
    panel = page.check
    type_in(qtbot, panel.batch_form.target.line, "18 %")
    type_in(qtbot, panel.readings.first.line, " ".join(["14.0"] * 6))
    assert panel.verdict.verdict.text() == "Too thin"
    assert Caution.YOUNG_CALVES in panel.found.cautions
    assert "a strong mix" not in labels(panel.verdict)
    told = [one for one in panel.verdict.findChildren(QLabel) if one.text().startswith("Thinner than you want it")]
    (calm,) = (one for one in told if not one.isHidden())
    assert Caution.OSMOLALITY_RISK in panel.found.cautions
    assert calm.property("tone") == "bad"
    type_in(qtbot, panel.batch_form.target.line, "11 %")
    assert panel.verdict.verdict.text() == "Too strong"
    assert "a strong mix" in labels(panel.verdict)


def test_a_right_volume_and_thin_drops_name_the_powder_and_how_many_scoopfuls(qtbot: QtBot, sure: MixCheckPage) -> None:
    """Too few scoopfuls leave the volume nearly right: it cannot see them, and holds nothing back."""
    panel = sure.check
    type_in(qtbot, panel.batch_form.calves, "16")
    batch = panel.batch_form.batch()
    assert batch is not None
    assert batch.scoops is not None
    plan = planned(batch)
    assert plan is not None
    assert batch.mix is not None
    brix = 100 * mixes_after(plan, 3)[Slip.SCOOP_LESS].solids_share - 1.5
    type_in(qtbot, panel.readings.first.line, " ".join([f"{brix:.1f}"] * 6))
    type_in(qtbot, panel.readings.volume.line, f"{batch.mix.volume_ml / 1000:.1f} L")
    assert not panel.found.at_odds
    assert panel.verdict.today.isHidden()
    assert panel.verdict.odds.isHidden()
    assert panel.verdict.correction.text().startswith("That is far off. First stir to the bottom")  # as without it
    assert "powder so far off hardly shows in it" in panel.verdict.way.text()
    causes = panel.verdict.causes.text()
    assert "3 scoopfuls too few" in causes
    adds = panel.found.correction_scoops
    assert adds is not None
    assert abs(adds.scoopfuls - 3) <= 1
    assert ("the two can differ" in causes) == (adds.scoopfuls != 3)
    assert "drawn as water" not in causes
    type_in(qtbot, panel.readings.volume.line, f"{1.04 * batch.mix.volume_ml / 1000:.1f} L")  # water is wrong too
    assert panel.found.odds_of_volume
    assert "the line of this lot and not of the one before" in panel.verdict.odds.text()
    first = odds_words(replace(panel.found, lot_before=False))  # of a farm's first lot
    assert "the one before" not in first
    assert "whether they were filled to the line\n" in f"{first}\n"
    assert panel.verdict.today.text().startswith("But the instrument does not agree with the volume.")
    assert "add" not in panel.verdict.odds.text().splitlines()[-1].lower()


@pytest.mark.parametrize(
    ("slip", "rare", "words"),
    [
        (Slip.SCOOP_LESS, True, "10 scoopfuls too few, more than people usually lose count of: that would give 9.4"),
        (Slip.SCOOP_MORE, False, "10 scoopfuls too many: that would give 9.4"),
    ],
)
def test_a_count_that_people_seldom_miss_by_says_so(slip: Slip, rare: bool, words: str) -> None:
    assert slip_words(Cause(slip, 0.094, 0.1, Fits.POSSIBLE, 10, rare), UnitSystem.METRIC).startswith(words)


def test_water_poured_in_excess_is_told_in_the_farms_units() -> None:
    cause = Cause(Slip.OTHER_WATER, 0.099, 0.1, Fits.WELL, water_ml=7000.0)
    assert slip_words(cause, UnitSystem.METRIC).startswith("7.0 L of water too much, as the volume")
    less = Cause(Slip.OTHER_WATER, 0.15, 0.1, Fits.WELL, water_ml=-7570.8)
    assert slip_words(less, UnitSystem.FARM).startswith("2 gal of water too little, as the volume")


def test_drops_tell_their_mean_where_there_is_room_for_no_more(qtbot: QtBot) -> None:
    field = BareField("Last", Bare("11.5 11.7 11.5", 0, 30, most=9), 1)
    qtbot.addWidget(field)
    field.resize(130, 80)
    field.show()
    type_in(qtbot, field.line, "8.3 8.4")
    assert field.message == "2 readings, mean 8.35"
    (said,) = field.findChildren(Saying)
    assert said.fits


def test_the_line_of_the_lot_before_is_named_as_a_cause(qtbot: QtBot, sure: MixCheckPage) -> None:
    """The new lot is 12 % denser: the old line brings 12 % too much powder."""
    panel = sure.check
    batch = panel.batch_form.batch()
    assert batch is not None
    assert batch.now.old_fill_g == pytest.approx(1.12 * 10 * OZ_G, rel=0.005)
    assert batch.target_share is not None
    ratio = batch.target_share / (1 - batch.target_share) * 1.12
    brix = 100 * ratio / (1 + ratio) - 1.5
    type_in(qtbot, panel.readings.first.line, " ".join([f"{brix:.1f}"] * 6))
    assert panel.verdict.verdict.text() == "Too strong"
    assert "line or the chart of the lot before" in panel.verdict.causes.text()


def test_first_pail_and_last(qtbot: QtBot, page: MixCheckPage) -> None:
    panel = page.check
    type_in(qtbot, panel.readings.first.line, "11.0 11.1 11.0")
    assert not panel.verdict.pails_card.isVisibleTo(panel)
    type_in(qtbot, panel.readings.last.line, "12.4 12.6 12.5")
    assert "fat rises" in panel.verdict.pails.text()
    assert "agitate gently" in panel.verdict.pails.text().lower()


def test_cautions_stand_where_the_hand_is(qtbot: QtBot, page: MixCheckPage) -> None:
    panel = page.check
    type_in(qtbot, panel.readings.first.line, "16.5 16.5 16.5")
    type_in(qtbot, panel.readings.water.line, "140 F")
    type_in(qtbot, panel.readings.mix.line, "112 F")
    told = labels(panel.verdict)
    for words in ("scald", "Too hot to drink", "17 %", "osmolality", "does not measure", "two weeks", "veterinarian"):
        assert words in told


def test_the_two_sg_scales_are_never_confused(qtbot: QtBot, page: MixCheckPage, herd: Herd, desk: Desk) -> None:
    herd.records.keep(
        Instrument(
            id=new_id(), farm_id=herd.farm.id, name="float", kind=InstrumentKind.HYDROMETER, division=0.001,
            division_typed="0.001",
        )
    )  # fmt: skip
    desk.changed.emit()
    readings = page.check.readings
    readings.scale.setCurrentIndex(1)
    readings.scale.activated.emit(1)
    assert "sugar SG" in readings.first.caption.text()
    type_in(qtbot, readings.first.line, "1.045")
    # Sucrose of SG 1.045 is 11.2 °Brix (CRC Handbook, between its rows for 10 and 12 %).
    assert page.check.found.shown_brix == pytest.approx(11.2, abs=0.05)
    type_in(qtbot, readings.floating.line, "1.030")
    assert "temperature of the mix" in page.check.verdict.troubles.text()
    type_in(qtbot, readings.mix.line, "100 F")
    assert [s.way for s in page.check.found.ways][-1] is SolidsFrom.HYDROMETER
    assert page.check.verdict.troubles.text() == ""
    kinds = {r.kind for r in readings.readings()}
    assert {ReadingKind.REFRACTOMETER_SG, ReadingKind.HYDROMETER_SG} <= kinds


def test_a_jug_weighed_full_tells_the_solids(qtbot: QtBot, page: MixCheckPage, herd: Herd, desk: Desk) -> None:
    herd.records.keep(
        Instrument(
            id=new_id(), farm_id=herd.farm.id, name="jug", kind=InstrumentKind.JUG, volume_ml=1000.0, volume_u_ml=1.0
        )
    )
    desk.changed.emit()
    type_in(qtbot, page.check.readings.jug_mass.line, "1031 g")
    type_in(qtbot, page.check.readings.mix.line, "100 F")
    best = page.check.found.best
    assert best is not None
    assert best.way is SolidsFrom.JUG
    assert best.share == pytest.approx(0.13, abs=0.02)


def test_an_instrument_not_checked_for_long_says_so(qtbot: QtBot, page: MixCheckPage, herd: Herd, desk: Desk) -> None:
    tool = refractometer(herd, compensated=False)
    zeroed(herd, tool, days=9)
    desk.changed.emit()
    type_in(qtbot, page.check.readings.first.line, "11.2")
    assert "more than a week old" in page.check.verdict.doubts.text()
    assert "how warm" in page.check.verdict.doubts.text()
    assert page.check.readings.prism.isVisibleTo(page)
    type_in(qtbot, page.check.readings.prism.line, "68 F")
    assert "how warm" not in page.check.verdict.doubts.text()
    zeroed(herd, tool)  # by an older version, which did not ask for it
    desk.changed.emit()
    assert "nobody told how warm it was in plain water: check it again" in page.check.verdict.doubts.text()


def test_a_thermometer_never_checked_says_so(qtbot: QtBot, page: MixCheckPage, herd: Herd, desk: Desk) -> None:
    dial = Instrument(id=new_id(), farm_id=herd.farm.id, name="Dial", kind=InstrumentKind.THERMOMETER, division=1.0)
    herd.records.keep(dial)
    desk.changed.emit()
    type_in(qtbot, page.check.readings.first.line, "11.2")
    assert "Dial" not in page.check.verdict.doubts.text()
    type_in(qtbot, page.check.readings.mix.line, "101 F")
    assert "Dial: never checked." in page.check.verdict.doubts.text()
    herd.records.keep(
        InstrumentCheck(
            id=new_id(), farm_id=herd.farm.id, instrument_id=dial.id, kind=InstrumentCheckKind.KNOWN,
            expected=32.0, reading=32.0, typed="32", at=NOW - timedelta(days=5),
        )
    )  # fmt: skip
    desk.changed.emit()
    assert "Dial" not in page.check.verdict.doubts.text()
    assert "ice water" not in page.check.verdict.warm.text()


def test_what_a_thermometer_shows_too_much_is_taken_off_and_said(
    qtbot: QtBot, page: MixCheckPage, herd: Herd, desk: Desk
) -> None:
    dial, other = (
        herd.records.keep(
            Instrument(id=new_id(), farm_id=herd.farm.id, name=name, kind=InstrumentKind.THERMOMETER, division=0.1)
        )
        for name in ("Dial", "Probe")
    )
    herd.records.keep(
        InstrumentCheck(
            id=new_id(), farm_id=herd.farm.id, instrument_id=dial.id, kind=InstrumentCheckKind.KNOWN,
            expected=32.0, reading=35.0, typed="35", at=NOW - timedelta(days=5),
        )
    )  # fmt: skip
    desk.changed.emit()
    panel = page.check
    choice = panel.readings.thermometer
    assert choice.isVisibleTo(page)
    choice.setFocus()
    qtbot.keyClick(choice, Qt.Key.Key_Up)
    assert choice.currentText() == "Dial"
    type_in(qtbot, panel.readings.mix.line, "110 F")
    # It shows 3 °F too much: 107 °F, which calves can drink; 110 °F is too hot.
    assert "Mix 107.0\u00a0±" in panel.verdict.warm.text()
    assert "3.0 °F too much in ice water; that is taken off" in panel.verdict.warm.text()
    assert "Too hot" not in labels(panel.verdict)
    qtbot.keyClick(choice, Qt.Key.Key_Down)
    assert choice.currentText() == "Probe"
    assert "Mix 110.0\u00a0±\u00a03.5\u00a0°F" in panel.verdict.warm.text()
    assert "Check the thermometer in ice water" in panel.verdict.warm.text()
    assert "Probe: never checked." in panel.verdict.doubts.text()
    assert "Too hot" in labels(panel.verdict)
    panel.keep()
    (kept,) = desk.records.every(MixCheck)
    # What was shown is kept, with what it was read with; the error is taken off anew whenever it is looked at.
    assert kept.readings[0].value == pytest.approx((110 - 32) / 1.8)
    assert kept.readings[0].instrument_id == other.id


def test_a_thermometers_division_is_in_the_degrees_that_are_read(qtbot: QtBot, page: MixCheckPage, desk: Desk) -> None:
    page.bring_up("instruments")
    tab = page.instruments
    tab.start_new()
    form = tab.form
    type_in(qtbot, form.name.line, "Dial")  # type: ignore[attr-defined]
    form.what.setFocus()  # type: ignore[attr-defined]
    form.what.setCurrentIndex(form.what.findData(InstrumentKind.THERMOMETER))  # type: ignore[attr-defined]
    form.what.activated.emit(0)  # type: ignore[attr-defined]
    assert form.division.caption.text() == "Division of its scale, °F"  # type: ignore[attr-defined]
    type_in(qtbot, form.division.line, "2")  # type: ignore[attr-defined]
    tab.keep()
    (dial,) = desk.records.every(Instrument)
    assert dial.division == pytest.approx(2 / 1.8)
    assert dial.division_typed == "2 °F"
    tab.open(dial.id)
    assert form.division.text() == "2"  # type: ignore[attr-defined]


WRONG_DROPS = ("11,20,0", "11.2.1", "40", "-3", "none", "1e1", "11.2 oz", "11.", "11*2", "1 2 3 4 5 6 7 8 9", "1/0")
WRONG_TEMPERATURES = ("101 oz", "hot", "250 F", "-5 C", "1e2", "1,015", "10 1", "101 FF", "++1", "4.4.4")
WRONG_VOLUMES = ("5 lb", "0", "-1", "1e9 gal", "two", "1 cup", "10 oz", "1.2.3", "5 gal 5 gal", "1,500", "9999999999 L")
WRONG_TARGETS = ("", "0", "1", "90", "13 oz", "x", "-13", "13.0.0", "1e1", "13,000 %")


def test_wrong_drops_are_answered_in_words(qtbot: QtBot, page: MixCheckPage) -> None:
    field = page.check.readings.first
    type_in(qtbot, page.check.readings.last.line, "11.2")
    for text in WRONG_DROPS:
        type_in(qtbot, field.line, text)
        page.check.keep()
        assert field.message, text
        assert field.message[-1] in ".?…", text
        assert field.line.text() == text
        assert page.desk.records.every(MixCheck) == []
        assert field.line.hasFocus()


@pytest.mark.parametrize(
    ("name", "texts"), [("mix", WRONG_TEMPERATURES), ("volume", WRONG_VOLUMES)], ids=["temperature", "volume"]
)
def test_wrong_quantities_are_answered_in_words(
    qtbot: QtBot, page: MixCheckPage, name: str, texts: tuple[str, ...]
) -> None:
    type_in(qtbot, page.check.readings.first.line, "11.2")
    for text in texts:
        field = getattr(page.check.readings, name)
        type_in(qtbot, field.line, text)
        page.check.keep()
        assert field.message, text
        assert field.text() == text
        assert page.desk.records.every(MixCheck) == []


def test_wrong_targets_are_answered_in_words(qtbot: QtBot, page: MixCheckPage) -> None:
    type_in(qtbot, page.check.readings.first.line, "11.2")
    for text in WRONG_TARGETS:
        field = page.check.batch_form.target
        field.line.clear()
        type_in(qtbot, field.line, text)
        page.check.keep()
        assert field.message, text
        assert page.check.found.judged is None
        assert page.desk.records.every(MixCheck) == []


def test_what_is_typed_outlives_a_change_elsewhere(qtbot: QtBot, page: MixCheckPage, herd: Herd, desk: Desk) -> None:
    type_in(qtbot, page.check.readings.first.line, "11.2 11")
    type_in(qtbot, page.check.batch_form.target.line, "12.5 %")
    herd.plan("Evening milk", group(50, "weaned"))
    desk.changed.emit()
    assert page.check.readings.first.text() == "11.2 11"
    assert page.check.batch_form.target.text() == "12.5 %"
    assert page.pending() == "11.2 11"
    qtbot.keyClick(page.check.clear_button, Qt.Key.Key_Space)
    assert page.pending() == ""


def test_without_a_lot_a_check_is_read_but_not_kept(
    qtbot: QtBot, empty_desk: Desk, records: Records, answers: Answers
) -> None:
    Herd(records)
    desk = Desk(records, answers, clock=lambda: NOW)
    made = MixCheckPage(desk)
    qtbot.addWidget(made)
    made.reload()
    made.show()
    type_in(qtbot, made.check.readings.first.line, "11.2")
    assert made.check.found.ways
    assert not made.check.keep_button.isEnabled()
    assert made.check.no_lot.isVisibleTo(made)
    assert made.check.verdict.solids.text() == "Say what solids are wanted."
    made.bring_up("line")
    assert made.line.trouble.text().startswith("No lot is in use")
