"""Past weighings out of a file: in the season with their density, not signed off; past lots wait for nothing."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, date, datetime, timedelta

import pytest
from answers import Answers, at_noon
from herd import Herd
from PySide6.QtWidgets import QApplication, QPushButton
from pytestqt.qtbot import QtBot
from sqlalchemy import event

from calibrator.desk.context import Desk
from calibrator.desk.forms.history import why_words
from calibrator.desk.in_use import LotState
from calibrator.desk.needs import Need, waiting
from calibrator.desk.pages.lot_detail import LotDetail
from calibrator.desk.pages.season import SeasonPage
from calibrator.desk.season import facts as facts_module
from calibrator.desk.season.facts import SeasonFacts
from calibrator.desk.season.words import lot_words, weighed_words
from calibrator.desk.standing import standing
from calibrator.desk.theme import Theme
from calibrator.desk.weigh_in.chooser import LotChooser
from calibrator.model import Farm, Fill, FillWay, Lot, UnitSystem, WeighIn, new_id
from calibrator.records import Records
from calibrator.records.bringing import Past, bring_in

MARCH = datetime(2025, 3, 4, 12, tzinfo=UTC)


def past_of(herd: Herd, number: str, density: float, at: datetime = MARCH, *, scoop: bool = True) -> Past:
    """A past weigh-in of six level fills from three bags, and its lot."""
    lot = Lot(id=new_id(), farm_id=herd.farm.id, lot_number=number, arrived_on=at.date())
    begun = WeighIn(
        id=new_id(), farm_id=herd.farm.id, lot_id=lot.id, started_at=at, abandoned=True, by="AR",
        scoop_id=herd.red.id if scoop else None, scale_id=herd.scale.id,
    )  # fmt: skip
    masses = (density * herd.red.volume_ml * (1 + off) for off in (-0.01, 0.01, -0.004, 0.004, 0.006, -0.006))
    fills = tuple(
        Fill(
            id=new_id(), weigh_in_id=begun.id, way=FillWay.LEVEL, bag=n // 2 + 1, mass_g=mass, typed="", by="AR", at=at,
            struck_reason=None,
        )
        for n, mass in enumerate(masses)
    )  # fmt: skip
    return Past((lot,), (begun,), fills)


@pytest.fixture
def herd(records: Records) -> Herd:
    return Herd(records)


def test_a_past_weighing_stands_in_the_season_with_its_density(herd: Herd, records: Records) -> None:
    herd.sign("26-100A", 0.45)
    bring_in(records, past_of(herd, "25-001A", 0.5), file="old.xlsx", by="MK")
    facts = SeasonFacts(records, herd.farm)
    first, second = facts.lots  # in the order of their days, whenever they were entered
    assert (first.lot_number, first.signed_off) == ("25-001A", False)
    assert (second.lot_number, second.signed_off) == ("26-100A", True)
    assert first.density_g_per_ml == pytest.approx(0.5, rel=1e-9)
    assert first.density_low_g_per_ml < 0.5 < first.density_high_g_per_ml
    assert (first.bags, first.fills, first.target_mass_g) == (3, 6, None)
    assert {one.weigh_in_id for one in facts.sums} == {first.weigh_in_id, second.weigh_in_id}
    assert len(facts.bags_of(first)) == 3
    assert "not signed off" in lot_words(first, "red cup", first.arrived_on, UnitSystem.METRIC, ())
    assert "out of a file" in weighed_words(first)
    assert "out of a file" not in weighed_words(second)


def test_without_a_scoop_there_is_no_density_and_a_sign_off_counts_before_a_file(herd: Herd, records: Records) -> None:
    bring_in(records, past_of(herd, "25-001A", 0.5, scoop=False), file="old.xlsx", by="MK")
    assert SeasonFacts(records, herd.farm).lots == ()
    past = past_of(herd, "25-002A", 0.5)
    bring_in(records, past, file="old.xlsx", by="MK")
    lot = records.find(Lot, past.lots[0].id)
    herd.sign("", 0.47, lot=lot)
    (counted,) = SeasonFacts(records, herd.farm).lots
    assert (counted.signed_off, counted.density_g_per_ml) == (True, 0.47)


def test_many_past_lots_cost_no_more_questions_than_few(herd: Herd, records: Records) -> None:
    asked: list[str] = []
    event.listen(records._opened.engine, "before_cursor_execute", lambda *told: asked.append(told[2]))
    counts = []
    for first, last in ((0, 2), (2, 12)):
        for n in range(first, last):
            bring_in(records, past_of(herd, f"25-{n:03d}", 0.5 + n / 1000), file="old.xlsx", by="MK")
        asked.clear()
        facts = SeasonFacts(records, herd.farm)
        assert len(facts.season.lots) == last
        assert all(lot.fills == 6 for lot in facts.lots)
        counts.append(len(asked))
    assert counts[0] == counts[1]


@pytest.mark.parametrize("signed", [0, 2])
def test_many_past_lots_come_after_the_picture(
    herd: Herd, records: Records, answers: Answers, qapp: QApplication, qtbot: QtBot,
    monkeypatch: pytest.MonkeyPatch, signed: int,
) -> None:  # fmt: skip
    monkeypatch.setattr(facts_module, "READ_AT_ONCE_PAST", 2)
    if qapp.property("tokens") is None:
        Theme(qapp)
    for n in range(signed):
        herd.sign(f"26-{n}", 0.5)
    for n in range(3):
        bring_in(records, past_of(herd, f"25-{n:03d}", 0.5), file="old.xlsx", by="MK")
    page = SeasonPage(Desk(records, answers, clock=at_noon))
    qtbot.addWidget(page)
    page.reload()
    page.show()
    shown = page.happened.plot.shown
    assert (len(shown.keys) if shown else 0) == signed
    assert "out of files" in page.looking.words.text()
    qtbot.waitUntil(lambda: not page.looking.at_work)
    shown = page.happened.plot.shown
    assert shown is not None
    assert len(shown.keys) == signed + 3
    assert shown.hollow.sum() == 3
    assert "out of a file" in page.happened.key.text()


def test_a_struck_fill_comes_struck_and_it_says_where_it_came_from(herd: Herd, records: Records) -> None:
    past = past_of(herd, "25-001A", 0.5)
    struck = (replace(past.fills[0], struck_reason="spilled"), *past.fills[1:])
    bring_in(records, replace(past, fills=struck), file="old weights.xlsx", by="MK")
    kept = records.fills(past.weigh_ins[0].id)
    assert [fill.struck_reason for fill in kept] == ["spilled", None, None, None, None, None]
    (told,) = records.history(WeighIn, past.weigh_ins[0].id)
    assert (told.by, told.why) == ("MK", "brought in from old weights.xlsx")
    assert why_words(told.why) == told.why
    assert why_words("wrong number") == "wrong number"
    assert why_words("imported from all.json") == "came with everything in all.json"
    assert SeasonFacts(records, herd.farm).lots[0].fills == 5


def test_past_lots_wait_for_nothing_but_the_newest_does(desk: Desk, qtbot: QtBot) -> None:
    farm = desk.records.every(Farm)[0]
    days = [date(2025, 3, 4) + timedelta(days=30 * n) for n in range(3)]
    lots = tuple(Lot(id=new_id(), farm_id=farm.id, lot_number=f"25-{n}", arrived_on=day) for n, day in enumerate(days))
    bring_in(desk.records, Past(lots), file="old.csv", by="MK")
    now = standing(desk.records, farm)
    assert [known.state for known in now.lots] == [
        LotState.DELIVERED, LotState.BROUGHT_IN, LotState.BROUGHT_IN, LotState.DELIVERED,
    ]  # fmt: skip
    assert [one.lot.lot_number for one in waiting(now) if one.need is Need.WEIGH_IN and one.lot] == [
        "25-0302A", "25-2",
    ]  # fmt: skip
    chooser = LotChooser(desk)
    qtbot.addWidget(chooser)
    chooser.reload()  # all of them can be weighed in nevertheless


def test_the_list_of_the_weigh_in_leads_straight_to_the_form_of_a_new_lot(desk: Desk, qtbot: QtBot) -> None:
    """It is what one came for where no lot waits; beside one that waits, that lot is."""
    chooser = LotChooser(desk)
    qtbot.addWidget(chooser)
    chooser.reload()
    enter = next(one for one in chooser.findChildren(QPushButton) if "newly" in one.text())
    waits = any(known.state is LotState.DELIVERED for known in standing(desk.records, desk.records.every(Farm)[0]).lots)
    assert (enter.property("kind") == "main") is not waits
    with qtbot.waitSignal(desk.go_to) as went:
        enter.click()
    assert went.args == ["lots", "new"]


def test_the_page_of_the_lot_names_the_file(desk: Desk, qtbot: QtBot) -> None:
    herd = Herd(desk.records)
    bring_in(desk.records, past_of(herd, "25-001A", 0.5), file="old.csv", by="MK")
    detail = LotDetail(desk)
    qtbot.addWidget(detail)
    now = standing(desk.records, herd.farm)
    detail.show_lot(now, now.lots[0])
    assert "brought in from old.csv; not signed off" in detail.standing_words.text()
    assert detail.fills_model.rowCount() == 6
