"""Which lines a label can bear, and that full scoops before a line mean the same on every sheet."""

from __future__ import annotations

from dataclasses import replace

import pytest
from answers import Answers, at_noon
from herd import FIRST_DAY, OZ_G, QT_ML, Herd, group, printed
from PySide6.QtWidgets import QBoxLayout
from pytestqt.qtbot import QtBot

from calibrator.desk.change_over import FedFrom, change_over, keep_lots
from calibrator.desk.context import Desk
from calibrator.desk.guide import Guide
from calibrator.desk.label_cut import PROPOSED, Cut
from calibrator.desk.label_lines import LineOffer
from calibrator.desk.pages.paper_scoops import ScoopPick
from calibrator.desk.paper_facts import Options, lot_sheet_facts
from calibrator.desk.paper_jobs import LabelJob
from calibrator.desk.paper_making import Chosen, LotPaper, Want, lot_paper
from calibrator.desk.scoop_lines import ScoopState, lines_beside
from calibrator.desk.sheets import plan_sheet
from calibrator.desk.standing import standing
from calibrator.desk.table_words import fill_text
from calibrator.desk.words import beside_target_words, target_words
from calibrator.model import (
    Composition,
    FillWay,
    LabelledLine,
    Lot,
    MixingRate,
    Paper,
    Plan,
    PrintKind,
    RateBasis,
    SignOff,
    SpotFill,
    UnitSystem,
    WeighIn,
    new_id,
)
from calibrator.prints.label_facts import LineCount, LineUse
from calibrator.prints.page import Document, Text
from calibrator.prints.record_words import RULES, SHAPES, SOURCES
from calibrator.records import Records
from calibrator.science.budget import Distribution, Source
from calibrator.science.mark import MarkProblem
from calibrator.science.scoops import usual
from calibrator.science.spread import IntervalRule
from calibrator.science.weighing import bulk_density
from calibrator.units import Kind, show_estimate

LEVEL_G = 10.6 * OZ_G
DENSITY = LEVEL_G / 665.9
HEIGHT_MM, SETTLING = 92.0, 1.02  # of the herd's red scoop, a straight cylinder
pytestmark = pytest.mark.usefixtures("qapp")  # what is set in type needs the fonts
OPTIONS = Options(Paper.LETTER, ("en",))


@pytest.fixture
def herd(records: Records) -> Herd:
    return Herd(records)


def ounces(mass: float) -> MixingRate:
    return MixingRate(basis=RateBasis.ON_WATER, powder_mass_g=mass * OZ_G, volume_ml=2 * QT_ML)


def paper_of(herd: Herd) -> LotPaper:
    paper = lot_paper(herd.records, herd.farm, "", FIRST_DAY.date())
    assert paper is not None
    return paper


def offers(herd: Herd) -> list[LineOffer]:
    return list(paper_of(herd).offers(herd.red))


def texts(document: Document) -> set[str]:
    return {item.text for page in document.pages for item in page.items if isinstance(item, Text)}


def test_the_main_line_its_half_and_every_other_weight_in_use_are_offered_once(herd: Herd) -> None:
    herd.sign("A", DENSITY)
    herd.plan("Morning", group(10), group(4, rate=ounces(8)))
    herd.plan("Evening", group(10), group(4, rate=ounces(8)))
    told = [(round(offer.target_g / OZ_G, 2), offer.use, offer.plans) for offer in offers(herd)]
    assert told == [
        (10.0, LineUse.MAIN, ("Morning", "Evening")),
        (8.0, LineUse.OTHER, ("Morning", "Evening")),
        (5.0, LineUse.HALF, ()),
    ]


def test_a_reckoned_line_lies_where_the_cylinder_holds_its_weight(herd: Herd) -> None:
    """In a straight cylinder the height goes as the volume: plane geometry."""
    herd.sign("A", DENSITY)
    half = offers(herd)[-1]
    assert half.line.reckoned
    assert not offers(herd)[0].line.reckoned
    assert half.use is LineUse.HALF
    height = HEIGHT_MM * (5 * OZ_G / LEVEL_G) / SETTLING
    assert half.line.down_wall_mm == pytest.approx(HEIGHT_MM - height, abs=0.01)


def test_more_than_the_scoop_holds_has_its_full_scoops_before_the_line(herd: Herd) -> None:
    herd.sign("A", DENSITY)
    herd.plan("Winter", group(10, rate=ounces(14)))
    (winter,) = (offer for offer in offers(herd) if offer.plans == ("Winter",))
    height = HEIGHT_MM * ((14 * OZ_G - LEVEL_G) / LEVEL_G) / SETTLING
    assert winter.line.full_scoops == 1
    assert winter.line.held_g == pytest.approx(14 * OZ_G - LEVEL_G)
    assert winter.counted is None
    assert winter.line.down_wall_mm == pytest.approx(HEIGHT_MM - height, abs=0.01)


def counted_for_fifteen(herd: Herd) -> LineOffer:
    herd.sign("A", DENSITY)
    herd.plan("Older", group(10, rate=ounces(15)))
    (older,) = (offer for offer in offers(herd) if offer.plans == ("Older",))
    return older


def test_a_feeding_of_a_line_and_its_half_gets_no_line(herd: Herd) -> None:
    """10 oz to the line and 5 oz to the half line are 15 oz: nothing new to fill to."""
    older = counted_for_fifteen(herd)
    assert older.counted == LineCount(target_mass_g=15 * OZ_G, to_main=1, to_half=1)
    assert older.problem is None
    main, _, half = offers(herd)
    paper = paper_of(herd)
    job = paper.job(Chosen(Want.LABELS, OPTIONS, "", {herd.red.id: (main, half, older)}, {}), at_noon(), "AB")
    assert isinstance(job, LabelJob)
    assert [line.target_mass_g for line in job.scoops[0].lines] == pytest.approx([10 * OZ_G, 5 * OZ_G])
    shown = " ".join(texts(job.document(job.sheets))).replace("\u00a0", " ")
    assert "15.0 oz = 1 to the line" in shown
    assert "+ 1 to ½" in shown
    assert "to here" not in shown


def test_a_feeding_of_a_line_and_its_half_brings_the_half_line(qtbot: QtBot, herd: Herd, answers: Answers) -> None:
    counted_for_fifteen(herd)
    pick = ScoopPick(Desk(herd.records, answers, clock=at_noon), herd.red)
    qtbot.addWidget(pick)
    pick.offer(offers(herd), 0.0)
    main, older, half = pick.lines
    assert older.text().replace("\u00a0", " ") == "15.0 oz: Older"
    assert pick.ways[1] is not None
    assert pick.ways[1].currentText().startswith("1 to the line + 1 to ½, ± ")
    assert (main.isChecked(), older.isChecked(), half.isChecked()) == (True, True, True)  # the plan has that group
    older.click()
    half.click()
    assert (older.isChecked(), half.isChecked()) == (False, False)
    older.click()
    assert half.isChecked()
    assert [offer.use for offer in pick.chosen()] == [LineUse.MAIN, LineUse.OTHER, LineUse.HALF]
    half.click()
    assert (older.isChecked(), half.isChecked()) == (False, False)


def choose(pick: ScoopPick, start: str) -> None:
    """Another way to fill the one feeding that can be filled in several."""
    (box,) = (way for way in pick.ways if way)
    box.setCurrentIndex(next(at for at in range(box.count()) if box.itemText(at).startswith(start)))
    box.activated.emit(box.currentIndex())


def test_a_feeding_of_more_than_a_scoopful_is_filled_the_way_that_is_chosen(
    qtbot: QtBot, herd: Herd, answers: Answers
) -> None:
    """15 oz with a scoop of 10.6 oz and a line of 10 oz: line and half line, level and a line of 4.4 oz, or twice to a
    line of 7.5 oz, which in a straight cylinder stands as high as its share of the volume (plane geometry)."""
    counted_for_fifteen(herd)
    pick = ScoopPick(Desk(herd.records, answers, clock=at_noon), herd.red)
    qtbot.addWidget(pick)
    pick.offer(offers(herd), 0.0)
    (box,) = (way for way in pick.ways if way)
    told = [box.itemText(at).replace("\u00a0", " ").partition(", ±")[0] for at in range(box.count())]
    assert told == ["1 to the line + 1 to ½", "1 level + 1 to 4.4 oz", "2 to 7.5 oz"]
    assert all("±" in box.itemText(at) for at in range(box.count()))
    choose(pick, "2 to")
    (equal,) = (offer for offer in pick.chosen() if offer.plans == ("Older",))
    assert equal.counted is None
    assert equal.line.held_g == pytest.approx(7.5 * OZ_G)
    height = HEIGHT_MM * (7.5 * OZ_G / LEVEL_G) / SETTLING
    assert equal.line.down_wall_mm == pytest.approx(HEIGHT_MM - height, abs=0.01)
    paper = paper_of(herd)
    job = paper.job(Chosen(Want.LABELS, OPTIONS, "", {herd.red.id: pick.chosen()}, {}), at_noon(), "AB")
    assert job is not None
    assert {"7.5 oz", "2 to here", "= 15.0 oz"} <= texts(job.document(job.sheets))
    pick.offer(offers(herd), 0.0)  # the page is read anew
    assert pick.chosen()[1].line.to_line == 2
    (plan,) = herd.records.every(Plan)
    chart = Chosen(Want.CHART, OPTIONS, plan.id, {herd.red.id: pick.chosen()}, {})

    def charted() -> set[str]:
        made = paper_of(herd).job(chart, at_noon(), "AB")
        assert made is not None
        return {text.replace("\u00a0", " ") for text in texts(made.document(made.sheets))}

    herd.records.record_print(job.sheets[0])
    assert any("7.5 oz" in text for text in charted())
    sheet = plan_sheet(herd.farm, plan, None, paper_of(herd).powder)
    line = sheet.groups[0].today_line
    assert line is not None
    assert line.scoops is not None
    assert [(round(way.mass_g / OZ_G, 2), n) for way, n in line.scoops.parts] == [(7.5, 20.0)]  # ten calves
    (mark,) = herd.records.marks(sign_off_id=paper.signed[herd.red.id].id)
    (beside,) = lines_beside(standing(herd.records, herd.farm, FIRST_DAY.date()), mark)
    assert beside_target_words(beside, UnitSystem.FARM) == "7.5 oz (2 for 15.0 oz)"
    herd.sign("B", 1.05 * DENSITY)  # the label that follows is filled the same way, though its line lies elsewhere
    later = ScoopPick(Desk(herd.records, answers, clock=at_noon), herd.red)
    qtbot.addWidget(later)
    later.offer(offers(herd), 0.0)
    (again,) = (offer for offer in later.chosen() if offer.plans == ("Older",))
    assert again.line.to_line == 2


def test_a_line_that_nobody_can_read_is_told_and_not_chosen(herd: Herd) -> None:
    herd.sign("A", DENSITY)
    herd.plan("Tiny", group(10, rate=ounces(0.4)))
    (tiny,) = (offer for offer in offers(herd) if offer.plans == ("Tiny",))
    assert tiny.problem is MarkProblem.TOO_NEAR_FLOOR


@pytest.mark.parametrize(
    ("mass_oz", "told"),
    [
        (0.4, "0.4 oz: too near the floor"),
        (11.0, "11.0 oz = 2 to 5.5 oz: Other (worked out)"),  # one level and a line on the floor is no way
    ],
)
def test_a_line_too_near_the_floor_is_told_and_equal_scoopfuls_take_its_place(
    qtbot: QtBot, herd: Herd, answers: Answers, mass_oz: float, told: str
) -> None:
    herd.sign("A", DENSITY)
    herd.plan("Other", group(10, rate=ounces(mass_oz)))
    pick = ScoopPick(Desk(herd.records, answers, clock=at_noon), herd.red)
    qtbot.addWidget(pick)
    pick.offer([offer for offer in offers(herd) if offer.plans == ("Other",)], 0.0)
    assert [line.text().replace("\u00a0", " ") for line in pick.lines] == [told]


def test_a_chart_names_the_line_where_the_label_bears_several(herd: Herd) -> None:
    plan = herd.plan("Milk", group(9, rate=ounces(10)), count_from=9, count_to=9)
    herd.plan("Late", group(9, rate=ounces(8)))
    herd.sign("25-1103C", DENSITY)
    paper = paper_of(herd)
    main, *others = paper.offers(herd.red)
    late = next(one for one in others if one.plans == ("Late",))

    def shown(*lines: LineOffer) -> set[str]:
        chart = paper.job(Chosen(Want.CHART, OPTIONS, plan.id, {herd.red.id: lines}, {}), at_noon(), "AB")
        assert chart is not None
        return {text.replace("\u00a0", " ") for text in texts(chart.document(chart.sheets))}

    assert "to the line" in shown(main)
    assert {"to the", "10.0 oz line"} <= shown(main, late)
    assert "to the line" not in shown(main, late)
    both = paper.job(
        Chosen(Want.CHART, Options(Paper.LETTER, ("en", "es")), plan.id, {herd.red.id: (main, late)}, {}), at_noon(), ""
    )
    assert both is not None
    said = {text.replace("\u00a0", " ") for text in texts(both.document(both.sheets))}
    assert "10.0 oz" in said  # the line's figure once, beneath the words of both languages
    assert not any(text.endswith("…") for text in said)


def test_a_scoop_that_is_struck_level_says_so_on_every_sheet(herd: Herd) -> None:
    """10.6 oz a level scoopful, 21.3 oz wanted: two of them are −0.5 %, within the 2 % of the farm."""
    _guide, signed = signed_to(herd, 21.3, None)
    (mark,) = herd.records.marks(sign_off_id=signed.id)
    assert (mark.struck_level, mark.level_scoopfuls, mark.full_scoops) == (True, 2, 1)
    assert mark.mass_g == pytest.approx(signed.level_mean_g)
    assert target_words(mark, UnitSystem.FARM) == "21.3 oz = 2 level"
    paper = paper_of(herd)
    assert [(way.way, way.full_scoops) for way in paper.powder.ways] == [(FillWay.LEVEL, 2)]
    count = usual(100 * 21.3 * OZ_G, paper.powder.ways, 0.02)
    assert count is not None
    assert [(way.way, n) for way, n in count.parts] == [(FillWay.LEVEL, 200.0)]  # two for each calf, not the fewest
    assert count.told
    main = paper.offers(herd.red)[0]
    pick = ScoopPick(Desk(herd.records, Answers(), clock=at_noon), herd.red)
    pick.offer([main], 0.0)
    pick.show_state(ScoopState.MARKED, wiped=False, drawn=False)
    assert pick.lines[0].text().endswith("used level, no line")
    assert pick.state.text() == "used level"
    chosen = Chosen(Want.LABELS, OPTIONS, "", {herd.red.id: (main,)}, {})
    label = paper.job(chosen, at_noon(), "AB")
    assert label is not None
    shown = texts(label.document(label.sheets))
    assert {"21.3 oz", "= 2 level"} <= shown
    assert any("Struck level: no line" in text for text in shown)


def test_a_line_that_is_drawn_already_is_told_above_the_button_and_not_squeezed_beside_it(herd: Herd) -> None:
    pick = ScoopPick(Desk(herd.records, Answers(), clock=at_noon), herd.red)
    for drawn in (True, False):
        pick.show_state(ScoopState.TO_MARK, wiped=False, drawn=drawn)
        stands = pick._state_line.direction()
        assert (stands is QBoxLayout.Direction.TopToBottom) is drawn


def signed_to(herd: Herd, target_oz: float, to_line_oz: float | None, typed: str = "x") -> tuple[Guide, SignOff]:
    """A lot weighed in through the guide, its line drawn where it was reckoned."""
    lot = herd.lot_of(herd.sign("earlier", DENSITY))
    made = herd.records.keep(replace(lot, id=new_id(), lot_number="now", revision=""))
    weigh_in = herd.records.keep(
        WeighIn(id=new_id(), farm_id=herd.farm.id, lot_id=made.id, started_at=at_noon(), by="AB")
    )
    guide = Guide(herd.records, weigh_in, at_noon)
    guide.set(scoop_id=herd.red.id, scale_id=herd.scale.id, target_mass_g=target_oz * OZ_G, target_typed=typed)
    guide.set(check_nominal_g=2000.0, check_reading_g=2000.0)
    for number, off in enumerate((-0.004, 0.004, 0.006, -0.006, 0.002, -0.002)):
        guide.add_fill(FillWay.LEVEL, number + 1, LEVEL_G * (1 + off), "")
    assert guide.findings.line is not None
    guide.set(drawn_line_mm=guide.findings.line.down_wall_mm)
    for number, off in enumerate((-0.004, 0.004, 0.002, -0.002) if to_line_oz else ()):
        guide.add_fill(FillWay.TO_MARK, number + 1, to_line_oz * OZ_G * (1 + off), "")
    guide.sign_off("AB")
    known = guide.standing.lot(made.id)
    assert known is not None
    keep_lots(herd.records, change_over(guide.standing, known, FedFrom(guide.clock().date())), "AB")
    (signed,) = herd.records.sign_offs(herd.farm.id, made.id)
    return guide, signed


def test_a_label_and_its_tick_box_tell_a_target_in_all_the_places_that_were_typed(herd: Herd, qtbot: QtBot) -> None:
    """282.5 g on a scale of whole grams."""
    herd.farm = herd.records.keep(replace(herd.farm, units=UnitSystem.METRIC))
    herd.scale = herd.records.keep(replace(herd.scale, resolution_g=1.0, resolution_typed="1 g"))
    signed_to(herd, 282.5 / OZ_G, None, typed="282.5")
    paper = paper_of(herd)
    pick = ScoopPick(Desk(herd.records, Answers(), clock=at_noon), herd.red)
    qtbot.addWidget(pick)
    pick.offer(paper.offers(herd.red), paper.label_step_g)
    assert any("282.5" in line.text() for line in pick.lines)
    chosen = Chosen(Want.LABELS, OPTIONS, "", {herd.red.id: (paper.offers(herd.red)[0],)}, {})
    label = paper.job(chosen, at_noon(), "AB")
    assert label is not None
    told = texts(label.document(label.sheets))
    assert any("282.5" in text for text in told)
    assert not any("283" in text for text in told)


@pytest.mark.parametrize("to_line_oz", [None, 4.4])
def test_a_mark_weighs_the_scoopful_to_its_line_without_the_full_ones(herd: Herd, to_line_oz: float | None) -> None:
    """15 oz with a scoop of 10.6 oz: one level scoopful, and 4.4 oz to the line, on every sheet alike.

    The sheet tells the half-width that the screen shows: Student's factor, not 2 (JCGM 100:2008, G.3).
    """
    guide, signed = signed_to(herd, 15.0, to_line_oz)
    (mark,) = herd.records.marks(sign_off_id=signed.id)
    assert mark.full_scoops == 1
    assert mark.mass_g == pytest.approx(4.4 * OZ_G, rel=0.002)
    paper = paper_of(herd)
    (way,) = (way for way in paper.powder.ways if way.way is FillWay.TO_MARK)
    assert way.mass_g == mark.mass_g
    main = paper.offers(herd.red)[0]
    assert (main.line.target_mass_g, main.line.full_scoops) == (15 * OZ_G, 1)
    chosen = Chosen(Want.LABELS, OPTIONS, "", {herd.red.id: (main,)}, {})
    label = paper.job(chosen, at_noon(), "AB")
    assert label is not None
    assert {"4.4 oz", "1 struck at the rim + 1 to here", "= 15.0 oz"} <= texts(label.document(label.sheets))
    sheet = paper.job(replace(chosen, want=Want.LOT_SHEET), at_noon(), "AB")
    assert sheet is not None
    found = guide.findings
    half_g = found.check.result.half_width_g if found.check else found.line_reach[0]
    assert half_g != pytest.approx(2 * mark.mass_u_g, rel=0.005)
    told = show_estimate(mark.mass_g, half_g, Kind.MASS, UnitSystem.FARM)
    grams = show_estimate(mark.mass_g, half_g, Kind.MASS, UnitSystem.METRIC)
    assert f"{told} ({grams})" in texts(sheet.document(sheet.sheets))


@pytest.mark.parametrize("languages", [("en",), ("es",)])
def test_the_lot_sheet_tells_the_density_s_own_budget_in_words(herd: Herd, languages: tuple[str, ...]) -> None:
    guide, signed = signed_to(herd, 10.0, 10.0)
    options = replace(OPTIONS, languages=languages)
    facts = lot_sheet_facts(herd.records, herd.farm, signed, options, at_noon())
    assert guide.findings.level is not None
    wanted = bulk_density(guide.findings.level, herd.red.volume_ml, herd.red.volume_u_ml)
    assert facts.density_budget == wanted.budget
    assert {row.source for row in facts.density_budget} == {Source.LEVEL_MEAN, Source.SCOOP_VOLUME}
    assert signed.density_u_g_per_ml == pytest.approx(wanted.u_g_per_ml)
    job = paper_of(herd).job(Chosen(Want.LOT_SHEET, options, "", {herd.red.id: ()}, {}), at_noon(), "AB")
    assert job is not None
    shown = texts(job.document(job.sheets))
    named = {
        "en": {"weight of the level scoopful", "volume of the scoop", "display step, full", "error of the scale"},
        "es": {"volumen de la medida"},
    }
    assert named[languages[0]] <= shown
    assert not shown & {str(source) for source in Source if "_" in source}


def test_what_comes_after_the_sign_off_moves_no_figure_of_the_lot_sheet_or_of_the_lots(herd: Herd) -> None:
    """How many bags came is told late, and spot fills go on: what was signed stays, and they stand apart."""
    _, signed = signed_to(herd, 10.0, 10.0)
    before = lot_sheet_facts(herd.records, herd.farm, signed, OPTIONS, at_noon())
    lot = herd.records.find(Lot, signed.lot_id)
    herd.records.keep(replace(lot, package_count=6, composition=Composition(moisture_pct=5.0)))
    herd.records.add_spot_fill(
        SpotFill(
            id=new_id(), farm_id=herd.farm.id, lot_id=lot.id, weigh_in_id=signed.weigh_in_id, way=FillWay.TO_MARK,
            mass_g=1.05 * 10 * OZ_G, typed="10.5 oz", by="AB", at=at_noon(), line_mm=before.marks[0].down_wall_mm,
        )
    )  # fmt: skip
    after = lot_sheet_facts(herd.records, herd.farm, signed, OPTIONS, at_noon())
    assert [each.typed for each in after.spot_fills] == ["10.5 oz"]
    assert after.lot_now != before.lot
    assert replace(after, spot_fills=(), lot_now=None) == replace(before, lot_now=None)
    known = standing(herd.records, herd.farm).lot(lot.id)
    assert known is not None
    assert known.density is not None
    half = (signed.density_high_g_per_ml - signed.density_low_g_per_ml) / 2
    assert (known.density.value, known.density.half_width) == (signed.density_g_per_ml, half)


def test_everything_that_a_budget_can_hold_has_its_words() -> None:
    assert set(SOURCES) == set(Source)
    assert set(SHAPES) == set(Distribution)
    assert set(RULES) == set(IntervalRule)


def test_the_proposed_label_sheet_fits_both_papers(herd: Herd) -> None:
    herd.sign("A", DENSITY)
    paper = paper_of(herd)
    for size in Paper:
        options = replace(OPTIONS, paper=size, cut=Cut.READY_CUT, grid=PROPOSED)
        chosen = Chosen(Want.LABELS, options, "", {herd.red.id: paper.offers(herd.red)[:1]}, {})
        job = paper.job(chosen, at_noon(), "AB")
        assert job is not None
        assert len(job.document(job.sheets).pages) == 1


def test_a_table_names_a_line_as_the_label_does(herd: Herd) -> None:
    """282.5 g on a scale of whole grams, and a line for half as much beside it."""
    herd.farm = herd.records.keep(replace(herd.farm, units=UnitSystem.METRIC))
    herd.scale = herd.records.keep(replace(herd.scale, resolution_g=1.0, resolution_typed="1 g"))
    _, signed = signed_to(herd, 282.5 / OZ_G, None, typed="282.5")
    (mark,) = herd.records.marks(sign_off_id=signed.id)
    label = printed(PrintKind.SCOOP_LABEL, signed, scoop_id=herd.red.id)
    lines = (
        LabelledLine(target_mass_g=282.5, mass_g=282.5, down_wall_mm=mark.down_wall_mm),
        LabelledLine(target_mass_g=141.25, mass_g=141.25, down_wall_mm=mark.down_wall_mm + 20.0),
    )
    herd.records.record_print(replace(label, lines=lines))
    paper = paper_of(herd)
    way = next(way for way in paper.powder.ways if way.way is FillWay.TO_MARK)
    assert fill_text(way, UnitSystem.METRIC).replace("\u00a0", " ") == "to the 282.5 g line"
