"""Long numbers, long names, the smallest and the largest scoop, through the panel: nothing leaves, nothing overlaps."""

from __future__ import annotations

import pytest
from answers import Answers, at_noon
from herd import OZ_G, Herd
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from calibrator.desk.context import Desk
from calibrator.desk.label_cut import Cut
from calibrator.desk.pages.paper import PaperPanel
from calibrator.desk.theme import Theme
from calibrator.desk.tongues import PAPER_LANGUAGES
from calibrator.model import Box, Cylinder, Paper, SignOff
from calibrator.prints.page import Text
from calibrator.records import Records
from tests.prints.geometry import troubles
from tests.prints.samples import LONG_LOT, NASTY

TINY = Cylinder(diameter_mm=48, height_mm=28)  # 50 mL
HUGE = Box(length_mm=150, width_mm=140, height_mm=192)  # 4 L
DENSITY = 0.43
SETTINGS = [
    pytest.param(
        *(cut, languages, list(Paper)[(row + column) % 2]),
        marks=[pytest.mark.slow] if row != (column > 0) else [],
    )
    for row, cut in enumerate((Cut.STRIP, Cut.WRAP))
    for column, languages in enumerate(PAPER_LANGUAGES)
]
"""Cut, languages and paper: any two of them meet, in the usual run each cut and language."""


@pytest.fixture
def herd(records: Records) -> Herd:
    return Herd(records)


@pytest.fixture
def signed(herd: Herd) -> SignOff:
    """One lot with the longest number, signed off for a tiny, a usual and a huge scoop with the longest names."""
    first = herd.sign(LONG_LOT, DENSITY)
    for name, shape, volume_ml in (("Tiny " + NASTY[:50], TINY, 50.6), ("Huge " + NASTY[:50], HUGE, 4032.0)):
        herd.sign_shape(name, shape, volume_ml, DENSITY, herd.lot_of(first))
    return first


@pytest.fixture
def panel(qapp: QApplication, qtbot: QtBot, herd: Herd, signed: SignOff, answers: Answers) -> PaperPanel:
    if qapp.property("tokens") is None:
        Theme(qapp)
    made = PaperPanel(Desk(herd.records, answers, clock=at_noon))
    qtbot.addWidget(made)
    made.show_lot(signed.lot_id)
    return made


def turn(panel: PaperPanel, cut: Cut, languages: tuple[str, ...], paper: Paper) -> None:
    for box, row in (
        (panel.choice.cut, panel.choice.cut.findData(cut)),
        (panel.choice.language, PAPER_LANGUAGES.index(languages)),
        (panel.choice.paper, panel.choice.paper.findData(paper)),
    ):
        box.setCurrentIndex(row)
        box.activated.emit(row)


@pytest.mark.parametrize(("cut", "languages", "paper"), SETTINGS)
def test_labels_of_every_size_bear_the_end_of_the_lot_number(
    panel: PaperPanel, cut: Cut, languages: tuple[str, ...], paper: Paper
) -> None:
    turn(panel, cut, languages, paper)
    for pick in panel.choice.picks:
        for line in pick.lines:
            line.setChecked(line.isChecked() or line.isEnabled())
    assert panel.document is not None, panel.trouble.text()
    assert troubles(panel.document) == []
    tails = [item for page in panel.document.pages for item in page.items if isinstance(item, Text)]
    assert sum(item.text.endswith(LONG_LOT[-4:]) for item in tails) >= 3
    assert f"{OZ_G * 10 / 28.349523125:.1f} oz" in {item.text for item in tails}


def test_a_ready_cut_label_too_small_for_the_scoop_is_refused_in_words(panel: PaperPanel) -> None:
    turn(panel, Cut.READY_CUT, ("en",), Paper.LETTER)
    panel.choice.grid.height_mm.line.setText("20 mm")
    panel.choice.grid.height_mm.line.textEdited.emit("20 mm")
    assert panel.trouble.text()
    assert panel.trouble.isVisibleTo(panel)
    assert not panel.print_button.isEnabled()


@pytest.mark.parametrize("languages", PAPER_LANGUAGES)
def test_the_lot_sheets_of_all_scoops_keep_to_their_pages(panel: PaperPanel, languages: tuple[str, ...]) -> None:
    turn(panel, Cut.STRIP, languages, Paper.A4)
    panel.choice.sheet.click()
    assert panel.document is not None
    assert troubles(panel.document) == []
    assert panel.number.text().count("no. ") == 3
