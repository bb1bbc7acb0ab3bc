"""What the desk's own path puts on paper, from the sample season: measured as another program renders it, searched."""

from __future__ import annotations

import math
from collections.abc import Callable, Iterator
from dataclasses import replace
from pathlib import Path

import numpy as np
import pypdfium2
import pytest
from answers import Answers, at_noon
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from calibrator.desk.context import Desk
from calibrator.desk.label_cut import PROPOSED, Cut
from calibrator.desk.pages.paper import PaperPanel
from calibrator.desk.theme import Theme
from calibrator.desk.tongues import PAPER_LANGUAGES
from calibrator.model import Cylinder, Paper, Scoop, UnitSystem
from calibrator.records import Records
from tests.prints.geometry import troubles
from tests.prints.rendered import MM_PER_INCH, render, runs_mm, text_of

ALLOWED_MM = 0.2
MARGIN_MM = 10.0
FLAP_MM = 12.0  # by which a wrap's end overlaps the next
SETTINGS = [
    pytest.param(
        *(units, list(Paper)[(row + column) % 2], languages),
        marks=[pytest.mark.slow] if row != (column > 0) else [],
    )
    for row, units in enumerate(UnitSystem)
    for column, languages in enumerate(PAPER_LANGUAGES)
]
"""Units, paper and languages: any two of them meet, in the usual run each language and unit."""


@pytest.fixture
def records(tmp_path: Path, season_in: Callable[[Path], Records]) -> Iterator[Records]:
    with season_in(tmp_path) as opened:
        yield opened


@pytest.fixture
def panel(qapp: QApplication, qtbot: QtBot, records: Records, answers: Answers) -> PaperPanel:
    if qapp.property("tokens") is None:
        Theme(qapp)
    desk = Desk(records, answers, clock=at_noon)
    made = PaperPanel(desk)
    desk.changed.connect(made.reload)
    qtbot.addWidget(made)
    made.resize(780, 620)
    made.show()
    return made


def choose(
    panel: PaperPanel, *, paper: Paper | None = None, languages: tuple[str, ...] = (), cut: Cut | None = None
) -> None:
    """As a person does: by the boxes, so that what hangs on their signals happens."""
    asked = [(panel.choice.cut, panel.choice.cut.findData(cut))] if cut else []
    if paper:
        asked.append((panel.choice.paper, panel.choice.paper.findData(paper)))
    if languages:
        asked.append((panel.choice.language, PAPER_LANGUAGES.index(languages)))
    for box, row in asked:
        box.setCurrentIndex(row)
        box.activated.emit(row)


def saved(panel: PaperPanel, path: Path) -> bytes:
    panel.save_to(path)
    return path.read_bytes()


def set_units(panel: PaperPanel, units: UnitSystem) -> None:
    farm = panel.desk.farm
    assert farm is not None
    panel.desk.attempt(lambda: panel.desk.records.keep(replace(farm, units=units)))


def below_rim(content: bytes, dpi: float, x_mm: float, top_mm: float) -> list[float]:
    """Middles of the strokes down a column, from the upper border of the black edge."""
    column = render(content, 0, dpi)[:, round(x_mm * dpi / MM_PER_INCH)]
    runs = [run for run in runs_mm(column, dpi) if run[0] > top_mm - 1]
    return [(a + b) / 2 - runs[0][0] for a, b in runs[1:]]


@pytest.mark.parametrize(("units", "paper", "languages"), SETTINGS)
def test_a_label_s_lines_lie_where_they_were_signed_off_and_its_words_can_be_searched(
    panel: PaperPanel, tmp_path: Path, languages: tuple[str, ...], paper: Paper, units: UnitSystem
) -> None:
    set_units(panel, units)
    panel.show_lot("")
    choose(panel, paper=paper, languages=languages, cut=Cut.STRIP)
    for line in panel.choice.picks[0].lines:
        line.setChecked(line.isChecked() or line.isEnabled())
    drawn = [offer.line for offer in panel.choice.picks[0].chosen() if offer.counted is None]
    wanted = sorted(line.down_wall_mm for line in drawn)
    (mark,) = panel.desk.records.marks(scoop_id=panel.choice.picks[0].scoop.id)[-1:]
    assert mark.down_wall_mm in wanted
    assert len(wanted) > 1
    content = saved(panel, tmp_path / "labels.pdf")
    for dpi in (200, 300):
        found = below_rim(content, dpi, MARGIN_MM + 1.2, MARGIN_MM)
        assert found[: len(wanted)] == pytest.approx(wanted, abs=ALLOWED_MM)
    told = text_of(content)
    spoken = {"en": "ONLYFORTHISLOT", "es": "SÓLOPARAESTELOTE"}
    assert all(spoken[code].casefold().replace("ó", "o") in told.casefold().replace("ó", "o") for code in languages)
    assert panel.choice.picks[0].scoop.name.replace(" ", "") in told
    assert ("oz" in told) is (units is UnitSystem.FARM)
    assert panel.document is not None
    assert troubles(panel.document) == []


@pytest.mark.parametrize(("units", "paper", "languages"), SETTINGS)
def test_chart_and_lot_sheet_keep_to_the_page_and_can_be_searched(
    panel: PaperPanel, tmp_path: Path, languages: tuple[str, ...], paper: Paper, units: UnitSystem
) -> None:
    set_units(panel, units)
    panel.show_lot("")
    choose(panel, paper=paper, languages=languages)
    number = panel.heading.text().split()[-1]
    spoken = {"chart": {"en": "scalds", "es": "quema"}, "sheet": {"en": "Uncertaintybudget", "es": "incertidumbre"}}
    for kind, button in (("chart", panel.choice.chart), ("sheet", panel.choice.sheet)):
        button.click()
        content = saved(panel, tmp_path / f"{kind}.pdf")
        told = text_of(content)
        assert number.split("-")[-1][-4:] in told
        assert all(spoken[kind][code] in told for code in languages), kind
        with pypdfium2.PdfDocument(content) as pdf:
            width, height = pdf[0].get_size()
        size = sorted((width / 72 * MM_PER_INCH, height / 72 * MM_PER_INCH))
        assert size == pytest.approx([215.9, 279.4] if paper is Paper.LETTER else [210.0, 297.0], abs=0.5)
        assert panel.document is not None
        assert troubles(panel.document) == []


@pytest.mark.parametrize("typed", ["", "2 mm"])
def test_a_wrap_is_as_long_as_the_way_around_the_outside(
    panel: PaperPanel, qtbot: QtBot, tmp_path: Path, typed: str
) -> None:
    panel.show_lot("")
    choose(panel, cut=Cut.WRAP)
    pick = panel.choice.picks[0]
    qtbot.keyClicks(pick.wall.line, typed)
    shape = panel.desk.records.find(Scoop, pick.scoop.id).shape
    assert isinstance(shape, Cylinder)
    content = saved(panel, tmp_path / "wrap.pdf")
    image = render(content, 0, 300)
    first, last = runs_mm(image[round((MARGIN_MM + 0.3) * 300 / MM_PER_INCH)], 300)[0]
    around = math.pi * (shape.diameter_mm + (4.0 if typed else 0.0))
    pieces = round(around / (last - first - FLAP_MM))
    assert (last - first - FLAP_MM) * pieces == pytest.approx(around, abs=pieces * ALLOWED_MM)
    assert panel.desk.settings.now.walls_mm == ({pick.scoop.id: 2.0} if typed else {})


@pytest.mark.parametrize("paper", list(Paper))
def test_ready_cut_labels_lie_on_the_sheet_as_it_was_described(
    panel: PaperPanel, qtbot: QtBot, tmp_path: Path, paper: Paper
) -> None:
    panel.show_lot("")
    choose(panel, paper=paper, cut=Cut.READY_CUT)
    for field, text in ((panel.choice.grid.left_mm, "7 mm"), (panel.choice.grid.top_mm, "11 mm")):
        field.line.selectAll()
        qtbot.keyClicks(field.line, text)
    panel.choice.grid.used.selectAll()
    qtbot.keyClicks(panel.choice.grid.used, "3")  # the fourth place: second row, right column
    content = saved(panel, tmp_path / "grid.pdf")
    image = render(content, 0, 300)
    dark = image < 100
    left = np.flatnonzero(dark[round((11 + PROPOSED.pitch_y_mm + 1) * 300 / MM_PER_INCH)])[0] * MM_PER_INCH / 300
    assert left == pytest.approx(7 + PROPOSED.pitch_x_mm, abs=ALLOWED_MM)
    drawn = [offer.line for offer in panel.choice.picks[0].chosen() if offer.counted is None]
    wanted = sorted(line.down_wall_mm for line in drawn)
    found = below_rim(content, 300, 7 + PROPOSED.pitch_x_mm + 1.2, 11 + PROPOSED.pitch_y_mm)
    assert found[: len(wanted)] == pytest.approx(wanted, abs=ALLOWED_MM)
    top = np.flatnonzero(dark[:, round((7 + PROPOSED.pitch_x_mm + 1.2) * 300 / MM_PER_INCH)])[0] * MM_PER_INCH / 300
    assert top == pytest.approx(11 + PROPOSED.pitch_y_mm, abs=ALLOWED_MM)
