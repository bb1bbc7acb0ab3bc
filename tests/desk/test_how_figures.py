"""How the figures beyond the weigh-in came about: each result told follows from the figures told beside it."""

from __future__ import annotations

import math
import re
from collections.abc import Callable, Iterator
from dataclasses import replace
from datetime import date
from pathlib import Path

import pytest
from answers import Answers, at_noon
from herd import OZ_G, Herd, group
from PySide6.QtCore import QLocale, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot
from told import agree_with_what_is_told_again, figures, part

from calibrator.desk.at_hand import at_hand
from calibrator.desk.context import Desk
from calibrator.desk.how.of_batch import of_row
from calibrator.desk.how.of_paper import of_paper, of_signed
from calibrator.desk.how.of_season import of_inside, of_lot, of_meaning
from calibrator.desk.how.of_spot import of_spot
from calibrator.desk.how.of_spread import of_effect, of_spread
from calibrator.desk.how.of_stock import of_stock
from calibrator.desk.how.of_trial import of_trial
from calibrator.desk.how.view import HowDialog
from calibrator.desk.how.working import Working
from calibrator.desk.paper_facts import Options
from calibrator.desk.paper_making import Chosen, Want, lot_paper
from calibrator.desk.season.facts import SeasonFacts
from calibrator.desk.sheets import plan_sheet, powder_in_use
from calibrator.desk.spots import read_spots, spot_findings
from calibrator.desk.standing import standing
from calibrator.desk.theme import the_theme
from calibrator.desk.warmth import warm
from calibrator.desk.window import Window
from calibrator.model import (
    Farm,
    FillWay,
    HotWater,
    Lot,
    Paper,
    Plan,
    Scoop,
    Scoopfuls,
    ScoopRule,
    SpotFill,
    UnitSystem,
    Warmth,
    new_id,
)
from calibrator.records import Records
from calibrator.science.carried_over import carried_over
from calibrator.science.feeders import trial
from calibrator.science.season_spread import SpreadFindings
from calibrator.science.why import Told

TEN_OZ_LEVEL = 10 * OZ_G / 665.9
TODAY = at_noon().date()


FINE_G = {UnitSystem.METRIC: 0.06, UnitSystem.FARM: 0.15}
"""How far a weight may be off by being told to 0.1 g, or to 0.01 oz."""


@pytest.fixture(params=list(UnitSystem))
def herd(qapp: QApplication, records: Records, request: pytest.FixtureRequest) -> Herd:
    the_theme()
    made = Herd(records)
    made.farm = records.keep(replace(made.farm, units=request.param))
    made.sign("25-1103C", TEN_OZ_LEVEL)
    return made


@pytest.fixture(scope="module", params=list(UnitSystem))
def season(
    qapp: QApplication,
    tmp_path_factory: pytest.TempPathFactory,
    request: pytest.FixtureRequest,
    season_in: Callable[[Path], Records],
) -> Iterator[SeasonFacts]:
    records = season_in(tmp_path_factory.mktemp("how"))
    records.keep(replace(records.every(Farm)[0], units=request.param))
    yield SeasonFacts(records, records.every(Farm)[0])
    records.close()


def row_of(herd: Herd, plan: Plan) -> tuple[Working, ...]:
    farm = herd.records.find(Farm, herd.farm.id)
    sheet = plan_sheet(farm, plan, None, powder_in_use(herd.records, standing(herd.records, farm)))
    line = sheet.groups[0].today_line
    assert line is not None
    return of_row(sheet, sheet.groups[0], line, warm(sheet, sheet.groups[0]))


def test_water_and_powder_of_a_batch_follow_from_the_rate(herd: Herd) -> None:
    amounts, strength = row_of(herd, herd.plan())[0], row_of(herd, herd.plan())[-1]
    assert amounts.title == "Water and powder for 109 calves"
    rate = part(amounts, "Powder to water")
    powder, water = figures(rate.working)[-2:]
    assert figures(rate.result)[0] == pytest.approx(powder / water, abs=1e-4)
    one, every = (figures(part(amounts, what).result) for what in ("One calf", "All calves"))
    assert every == pytest.approx([109 * amount for amount in one], rel=1e-4)
    wanted = {UnitSystem.FARM: "68 lb 2.0 oz", UnitSystem.METRIC: "30.901 kg"}[herd.farm.units]
    assert part(amounts, "Powder in a batch").result == wanted
    share = figures(part(amounts, "Powder in a batch").working)[0]
    assert share == pytest.approx(109 * 10 * 28.349523125, abs=1)  # g, one batch without a vessel
    mixed = figures(part(strength, "Finished mix").working)[1:]  # behind the room of "1 g"
    assert figures(part(strength, "Finished mix").result)[0] == pytest.approx(mixed[0] + mixed[1] * mixed[2], rel=1e-4)
    powder, mix = figures(part(strength, "Solids, as mixed").working)
    assert figures(part(strength, "Solids, as mixed").result)[0] == pytest.approx(100 * powder / mix, abs=0.006)
    *_, ratio, osmoles = figures(part(strength, "Osmolality, an estimate").working)
    assert figures(part(strength, "Osmolality, an estimate").result)[0] == pytest.approx(1000 * ratio * osmoles, abs=1)


def test_a_vessel_splits_the_batch_as_told(herd: Herd) -> None:
    tank = herd.vessel(gallons=30)
    plan = herd.plan(vessel_id=tank.id)
    sheet = plan_sheet(herd.farm, plan, tank, powder_in_use(herd.records, standing(herd.records, herd.farm)))
    line = sheet.groups[0].today_line
    assert line is not None
    batches = part(of_row(sheet, sheet.groups[0], line)[0], "Batches")
    mix, usable = figures(batches.working)
    assert batches.result == str(math.ceil(mix / usable))


def test_scoopfuls_weigh_what_they_are_told_to(herd: Herd) -> None:
    scoopfuls = row_of(herd, herd.plan("Pails", group(10)))[1]
    number, mass = figures(part(scoopfuls, "What they weigh").working)
    total = figures(part(scoopfuls, "What they weigh").result)[0]
    assert total == pytest.approx(number * mass, abs=0.1 * number)
    count, powder = figures(part(scoopfuls, "Off by").working)[1:]
    assert figures(part(scoopfuls, "Off by").result)[0] == pytest.approx(100 * (count / powder - 1), abs=0.06)


def test_water_that_is_drawn_to_whole_scoopfuls_says_so(herd: Herd) -> None:
    one_kind = Scoopfuls(rule=ScoopRule.ONE_KIND, scoop_id=herd.red.id)
    amounts, scoopfuls, _ = row_of(herd, herd.plan("Pails", group(7), scoopfuls=one_kind))
    assert "whole scoopfuls" in part(amounts, "Water in a batch").working
    assert "drawn to suit them" in scoopfuls.words


def test_hot_and_cold_water_meet_at_the_water_that_is_drawn(herd: Herd) -> None:
    """Hot part = water × (drawn − cold) ÷ (hot − cold): conservation of mass and heat, common practice, no source."""
    herd.records.keep(replace(herd.farm, hot_water=HotWater(tank_ml=400_000.0, hot_c=60.0, cold_c=10.0)))
    warmth = row_of(herd, herd.plan(warmth=Warmth(powder_c=5.0, mix_c=40.0)))[-1]
    hot, cold = part(warmth, "Hot water in a batch"), part(warmth, "Cold water in a batch")
    water, drawn, cold_c, hot_c, _ = figures(hot.working)
    share = (drawn - cold_c) / (hot_c - cold_c)
    assert figures(hot.result)[0] * 0.983 == pytest.approx(water * share, rel=2e-3)  # 0.983 g/mL at 60 °C
    assert figures(cold.result)[0] == pytest.approx(water * (1 - share), rel=2e-3)
    unit = {UnitSystem.FARM: "°F", UnitSystem.METRIC: "°C"}[herd.farm.units]
    assert unit in part(warmth, "Water to draw").result
    assert hot.working.count(unit) == 4


def test_days_at_hand_follow_from_bags_and_plans(herd: Herd) -> None:
    herd.plan("Milk", group(100))
    lot = herd.records.every(Lot, herd.farm.id)[0]
    herd.records.keep(replace(lot, package_count=130, package_mass_g=800 * OZ_G))
    found = at_hand(standing(herd.records, herd.farm), TODAY)
    assert found is not None
    told = of_stock(found, UnitSystem.METRIC)
    left = part(told, "Left")
    number, mass, fed = figures(left.working)[:3]
    assert figures(left.result)[0] == pytest.approx(number * mass - fed, rel=1e-2)
    days = part(told, "Days at hand")
    stock, daily = figures(days.working)
    assert int(days.result) == stock // daily
    # 30 days take 75 bags of 50 lb, 7.5 are left: 68 have to come.
    assert part(told, "To order").result == "68"
    assert part(told, "Milk").result == part(told, "All plans today").result
    pounds = [f"{one.working} {one.result}" for one in of_stock(found, UnitSystem.FARM).parts]
    assert sum(" lb" in one for one in pounds) >= 4
    assert not any(" kg" in one or re.search(r"\d g\b", one) for one in pounds)


def test_another_lot_that_came_is_not_ordered_again(herd: Herd) -> None:
    herd.plan("Milk", group(100))
    lot = replace(herd.records.every(Lot, herd.farm.id)[0], package_count=130, package_mass_g=800 * OZ_G)
    herd.records.keep(lot)
    other = herd.records.keep(replace(lot, id=new_id(), lot_number="26-0102A", package_count=50, revision=""))
    found = at_hand(standing(herd.records, herd.farm), TODAY)
    assert found is not None
    assert found.to_order == 18
    assert part(of_stock(found, UnitSystem.FARM), "Days in lot 26-0102A").result == "20"  # 57.5 bags are 23 days
    herd.records.keep(replace(other, package_count=None))
    unknown = at_hand(standing(herd.records, herd.farm), TODAY)
    assert unknown is not None
    assert unknown.to_order is None
    assert "To order" not in [one.what for one in of_stock(unknown, UnitSystem.FARM).parts]


@pytest.mark.parametrize("way", [FillWay.TO_MARK, FillWay.LEVEL])
def test_a_spot_fill_tells_its_verdict_first_then_what_it_rests_on(season: SeasonFacts, way: FillWay) -> None:
    records, lot = season._records, season.lots[-1]
    signed = next(one for one in records.sign_offs(season.farm.id) if one.id == lot.sign_off_id)
    mark = next(one for one in records.marks(lot_id=lot.lot_id) if one.sign_off_id == signed.id)
    to_mark = way is FillWay.TO_MARK
    records.add_spot_fill(
        SpotFill(
            id=new_id(), farm_id=season.farm.id, lot_id=signed.lot_id, weigh_in_id=signed.weigh_in_id, way=way,
            mass_g=mark.mass_g if to_mark else signed.level_mean_g, typed="a weight", by="AB", at=at_noon(),
            line_mm=mark.down_wall_mm if to_mark else None,
        )
    )  # fmt: skip
    found = spot_findings(read_spots(records, signed), signed, mark)
    assert found is not None
    verdict, scoopful, density = of_spot(found, mark, season.farm)
    told = part(verdict, "A feeding to this line" if to_mark else "A feeding to the old line")
    assert figures(told.result)[0] == pytest.approx(found.delivers_g, abs=FINE_G[season.farm.units])
    assert scoopful.title == "The weight of a scoopful"
    mass, volume = figures(part(density, "Bulk density").working)
    assert figures(part(density, "Bulk density").result)[0] == pytest.approx(
        mass / volume, abs={UnitSystem.METRIC: 1e-4, UnitSystem.FARM: 3e-4}[season.farm.units]
    )


def test_limits_and_running_mean_of_a_lot_follow_from_what_is_told(season: SeasonFacts) -> None:
    """Three standard deviations; 0.3 of the newest in the end: Montgomery 6.4 and NIST/SEMATECH e-Handbook 6.3.2.4."""
    for place in range(1, len(season.lots)):
        density, chart = of_lot(season.lots, season.season.chart, place, season.farm.units)
        low, high = figures(part(density, "95 % interval").result)
        assert low < figures(part(density, "Bulk density").result)[0] < high
        above, below = figures(part(chart, "Off the middle").working)
        off = figures(part(chart, "Off the middle").result)[0]
        assert off == pytest.approx(100 * math.log(above / below), abs=0.03)
        between, own = figures(part(chart, "Limits").working)[-2:]
        assert figures(part(chart, "Limits").result)[0] == pytest.approx(3 * math.hypot(between, own), abs=0.05)
        running = part(chart, "Running mean")
        if "first of its kind" in running.working:
            assert figures(running.result) == [off]
            continue
        new, old, this, before = figures(running.working)
        assert figures(running.result)[0] == pytest.approx(new * this + old * before, abs=0.02)


def test_what_the_old_line_would_have_delivered_is_told_in_powder_solids_and_money(season: SeasonFacts) -> None:
    farm = replace(season.farm, currency="$")
    place = next(n for n in reversed(range(len(season.lots))) if season.meaning(n))
    meaning = season.meaning(place)
    assert meaning is not None
    told = of_meaning(season.lots[place], meaning, farm)
    mass, target, _ = figures(part(told, "Against the target").working)
    assert figures(part(told, "Against the target").result)[0] == pytest.approx(100 * (mass / target - 1), abs=0.06)
    planned, mass, target = figures(part(told, "Solids, as mixed").working)
    per_water = planned / (100 - planned) * mass / target
    solids = 100 * per_water / (1 + per_water)
    assert figures(part(told, "Solids, as mixed").result)[0] == pytest.approx(solids, abs=0.02)
    share, daily, price, package = figures(part(told, "Money a day").working)
    rounding = 0.05 / 100 * daily * price / package + 0.01  # the share is told to a tenth of a percent
    assert figures(part(told, "Money a day").result)[0] == pytest.approx(
        abs(share) / 100 * daily * price / package, abs=rounding
    )


def test_a_feeding_that_was_weighed_to_the_old_line_is_told_as_weighed(season: SeasonFacts) -> None:
    place = next(n for n in reversed(range(len(season.lots))) if season.meaning(n))
    meaning = season.meaning(place)
    assert meaning is not None
    weighed = replace(meaning, carried=replace(meaning.carried, fills=8))
    told = of_meaning(season.lots[place], weighed, season.farm)
    assert "8 fills" in part(told, "A feeding to the old line").working
    assert "as at the weigh-in" in part(told, "95 % interval").working


def test_a_lot_after_one_that_was_used_level_is_told_as_used_level(season: SeasonFacts) -> None:
    place = next(n for n in reversed(range(len(season.lots))) if season.meaning(n))
    lot, meaning = season.lots[place], season.meaning(place)
    assert meaning is not None
    before = meaning.before._replace(down_wall_mm=0.0, full_scoops=1)
    shape = season._records.revision(Scoop, lot.scoop_revision).shape
    carried = carried_over(lot, before, shape, season.farm.tolerance_share)
    assert carried is not None
    told = of_meaning(lot, replace(meaning, before=before, carried=carried), season.farm)
    assert told.title == f"Used level, as with lot {before.lot_number}"
    count, level = figures(part(told, "A feeding, used level").working)
    assert figures(part(told, "A feeding, used level").result)[0] == pytest.approx(count * level, abs=0.3)
    assert not [one for one in told.parts if "line" in f"{one.what} {one.working}"]


def test_spreads_follow_from_the_mean_squares_told(season: SeasonFacts) -> None:
    assert isinstance(season.spread, SpreadFindings)
    spread, plan = of_spread(season.spread)
    squares, df = figures(part(spread, "Between fills").working)
    assert figures(part(spread, "Between fills").result)[0] == pytest.approx(math.sqrt(squares / df), abs=0.01)
    bags, fills, each = figures(part(spread, "Between bags").working)
    assert figures(part(spread, "Between bags").result)[0] == pytest.approx(
        math.sqrt(max(0, bags - fills) / each), abs=0.01
    )
    # Cochran 1977, 10.6: √(cost of a bag ÷ cost of a fill) · spread of fills ÷ spread of bags.
    *_, fill_sd, bag_sd = figures(part(plan, "Fills from a bag").working)
    assert figures(part(plan, "Fills from a bag").result)[0] == pytest.approx(math.sqrt(2) * fill_sd / bag_sd, rel=0.01)


def test_every_cause_that_lots_tell_of_has_its_working_and_no_other(season: SeasonFacts) -> None:
    told = {effect.cause: of_effect(effect) for effect in season.effects}
    few = {effect.cause for effect in season.effects if effect.told is Told.TOO_FEW}
    assert few
    assert {cause for cause, workings in told.items() if not workings} == few
    for workings in (found for found in told.values() if found):
        low, high = figures(part(workings[0], "95 % interval").result)
        value = next(one for one in workings[0].parts if one.what in ("Slope", "Step", "Swing"))
        assert low <= figures(value.result)[0] <= high


def test_the_bags_of_a_lot_have_their_limits_told(season: SeasonFacts) -> None:
    lot = season.lots[-1]
    found = season.inside(lot)[1]
    assert found is not None
    told = of_inside(lot, found, season.farm.units)
    low, high = figures(part(told, "Limits of the first bag").result)
    assert low < figures(part(told, "Mean").result)[0] < high


def test_lines_of_a_label_and_a_lot_sheet_have_theirs(season: SeasonFacts) -> None:
    records, farm = season._records, season.farm
    paper = lot_paper(records, farm, season.lots[-1].lot_id, date(2026, 10, 20))
    assert paper is not None
    options = Options(paper=Paper.A4, languages=("en",))
    lines = {scoop.id: paper.offers(scoop) for scoop in paper.scoops}
    chosen = {want: Chosen(want, options, paper.plans[0].id, lines, {}) for want in Want}
    label = of_paper(paper, chosen[Want.LABELS], at_noon)
    drawn = [offer for offers in lines.values() for offer in offers if offer.counted is None]
    assert len(label) == len(drawn)
    for working in label:
        volume = part(working, "Volume to the line")
        rim, mass, level, settling = figures(volume.working)
        result = float(volume.result.split()[0])
        assert result == pytest.approx(rim * mass / (level * settling), rel=1.5e-3)
    sheet = of_paper(paper, chosen[Want.LOT_SHEET], at_noon)
    assert sheet == of_signed(records, next(iter(paper.signed.values())), at_noon)
    signed = next(iter(paper.signed.values()))
    assert figures(part(sheet[0], "Mean of the bags").result)[0] == pytest.approx(
        signed.level_mean_g, abs=FINE_G[farm.units]
    )
    assert of_paper(paper, chosen[Want.CHART], at_noon)[0].title.startswith("Water and powder for")


@pytest.mark.parametrize("system", list(UnitSystem))
def test_a_trial_is_told_person_by_person(system: UnitSystem) -> None:
    found = trial({"AR": [295, 298, 295, 297, 296], "LM": [283, 286, 281, 285, 284]}, 1.0, 0.02)
    everybody, people = of_trial(found, system)
    one, other, count = figures(part(everybody, "Mean of all").working)
    mean = float(part(everybody, "Mean of all").result.split()[0])
    assert mean == pytest.approx((one + other) / count, abs=0.06 if system is UnitSystem.METRIC else 0.006)
    repeat, between, whole = (
        figures(part(everybody, what).result)[0] for what in ("Repeatability", "Between people", "Reproducibility")
    )
    assert whole == pytest.approx(math.hypot(repeat, between), abs=0.02)
    mean, of_all, *_ = figures(part(people, "AR").working)
    assert figures(part(people, "AR").result)[0] == pytest.approx(100 * (mean / of_all - 1), abs=0.06)


def in_the_units_of(system: UnitSystem, told: tuple[Working, ...], least_twice: int) -> None:
    """Grams alone are of use to nobody who weighs in ounces; what is told in both is the same."""
    texts = [text.replace(" 1 g ", " ") for each in told for one in each.parts for text in (one.working, one.result)]
    other = r"\d (?:oz|lb|qt|gal|in)\b" if system is UnitSystem.METRIC else r"\d (?:g|kg|mL|L|mm)\b(?!/)"
    assert not [text for text in texts if re.search(other, re.sub(r" \([^()]*\)", "", text))]
    assert agree_with_what_is_told_again(told) >= (least_twice if system is UnitSystem.FARM else 0)


def test_a_batch_is_told_in_the_farms_units(herd: Herd) -> None:
    in_the_units_of(herd.farm.units, row_of(herd, herd.plan(vessel_id=herd.vessel(gallons=30).id)), 10)


def test_lots_and_lines_are_told_in_the_farms_units(season: SeasonFacts) -> None:
    records, farm = season._records, season.farm
    signed = next(one for one in records.sign_offs(farm.id) if one.id == season.lots[-1].sign_off_id)
    place = next(n for n in reversed(range(len(season.lots))) if season.meaning(n))
    meaning = season.meaning(place)
    assert meaning is not None
    told = (
        *of_signed(records, signed, at_noon),
        *of_lot(season.lots, season.season.chart, place, farm.units),
        of_meaning(season.lots[place], meaning, replace(farm, currency="$")),
    )
    in_the_units_of(farm.units, told, 10)


def test_decimals_are_told_as_the_language_of_the_screen_writes_them(herd: Herd) -> None:
    before = QLocale()
    QLocale.setDefault(QLocale(QLocale.Language.German))
    try:
        told = row_of(herd, herd.plan())
    finally:
        QLocale.setDefault(before)
    assert "0,15" in part(told[0], "Powder to water").result


def test_it_opens_from_the_table_for_the_row_that_is_chosen(herd: Herd, qtbot: QtBot) -> None:
    herd.plan("Pails", group(10), count_from=8, count_to=12)
    window = Window(Desk(herd.records, Answers(), clock=at_noon))
    qtbot.addWidget(window)
    window.show()
    window.show_page("tables")
    view = window.page("tables").view  # type: ignore[attr-defined]
    assert view.workings()[0].title == "Water and powder for 10 calves"
    view.table.selectRow(0)
    view.how.setFocus()
    QTest.keyClick(view.how, Qt.Key.Key_Space)
    dialog = window.findChild(HowDialog)
    assert dialog is not None
    assert view.workings()[0].title == "Water and powder for 8 calves"
    QTest.keyClick(dialog, Qt.Key.Key_Escape)
    qtbot.waitUntil(lambda: window.findChild(HowDialog) is None)
    view.rows_by.setCurrentIndex(1)
    view.volumes.table.selectRow(0)
    assert part(view.workings()[0], "Water in a batch").working == "as asked for"
    window._closing = True
    window.close()
