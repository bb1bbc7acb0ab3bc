"""Two computers on one server: one weighs a lot in while the other prints, and both are right."""

from __future__ import annotations

import os
import subprocess
import sys
from collections.abc import Callable, Iterator
from dataclasses import replace
from pathlib import Path

import pypdfium2
import pytest
from answers import Answers, at_noon
from herd import OZ_G, Herd
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from calibrator.desk.context import Desk
from calibrator.desk.pages.weigh_in import WeighInPage
from calibrator.desk.theme import Theme
from calibrator.desk.weigh_in.step_sign_off import StepSignOff
from calibrator.desk.widgets.quantity_field import QuantityField
from calibrator.desk.window import Window
from calibrator.model import FillWay, Lot, PrintKind, Scoop, Step, new_id
from calibrator.records import Records

CHARTS = 3
IN_TIME_S = 120
LEVEL = ("11.6", "11.7", "11.8", "11.6", "11.7", "11.6", "11.8", "11.7")
TO_MARK = ("10.0", "10.0", "10.1", "10.0", "9.9", "10.0", "10.0", "10.1")


@pytest.fixture
def herd(qapp: QApplication, server: Callable[[], str]) -> Iterator[Herd]:
    if qapp.property("tokens") is None:
        Theme(qapp)
    with Records.open(server()) as records:
        yield Herd(records)


def other_desk(url: str, folder: Path) -> subprocess.Popen[str]:
    script = Path(__file__).with_name("other_desk.py")
    return subprocess.Popen(
        [sys.executable, str(script), url, str(folder), str(CHARTS)],
        stdin=subprocess.PIPE, stdout=subprocess.PIPE, text=True,
        env=os.environ | {"PYTHONPATH": os.pathsep.join([str(script.parent), *sys.path])},
    )  # fmt: skip


def type_in(page: WeighInPage, weights: tuple[str, ...]) -> None:
    for text in weights:
        field = page._views[page.guide.step].first_field() if page.guide else None
        assert isinstance(field, QuantityField)
        QTest.keyClicks(field.line, text)
        QTest.keyClick(field.line, Qt.Key.Key_Return)


def test_one_weighs_while_the_other_prints(
    herd: Herd, server: Callable[[], str], qtbot: QtBot, answers: Answers, tmp_path: Path
) -> None:
    herd.sign("25-1103C", 10 * OZ_G / 665.9)
    plan = herd.plan()
    lot = herd.records.keep(Lot(id=new_id(), farm_id=herd.farm.id, lot_number="25-1204A"))
    url = herd.records._opened.engine.url.render_as_string(hide_password=False)
    other = other_desk(url, tmp_path)
    assert other.stdout is not None
    assert other.stdout.readline() == "ready\n"

    window = Window(Desk(herd.records, answers, clock=at_noon))
    qtbot.addWidget(window)
    window.desk.initials = "AB"
    window.show_page("weigh_in", lot.id)
    page = window.page("weigh_in")
    assert isinstance(page, WeighInPage)
    assert page.guide is not None
    page.guide.set(
        by="AB", scoop_id=herd.red.id, scale_id=herd.scale.id, target_mass_g=10 * OZ_G, target_typed="10 oz",
        scale_zeroed=True,
    )  # fmt: skip
    page.open_step(Step.LEVEL_FILLS)
    type_in(page, LEVEL)
    line = page.guide.findings.line
    assert line is not None
    page.guide.set(drawn_line_mm=line.down_wall_mm)
    page.open_step(Step.FILLS_TO_MARK)
    type_in(page, TO_MARK)
    signed = page.guide.sign_off("AB")
    told, _ = other.communicate("signed\n", timeout=IN_TIME_S)

    assert other.returncode == 0
    assert (told.split(), answers.told) == (["printed"], [])
    fills = herd.records.fills(page.guide.weigh_in.id)
    assert [fill.typed for fill in fills] == [*LEVEL, *TO_MARK]
    assert signed.fills == len(LEVEL)
    *charts, label = herd.records.prints(herd.farm.id)
    assert [(sheet.number, sheet.replaces) for sheet in charts] == [
        (number, number - 1 or None) for number in range(1, CHARTS + 1)
    ]
    assert {(sheet.kind, sheet.plan_id, sheet.by) for sheet in charts} == {(PrintKind.WALL_CHART, plan.id, "PR")}
    assert (label.kind, label.sign_off_id, label.lot_id) == (PrintKind.SCOOP_LABEL, signed.id, lot.id)
    assert "25-1204A" in words_of(tmp_path / "label.pdf")
    # Each chart is of the lot in use when it was printed: the old one until the sign-off, the new one after it.
    ours = ["25-1204A" in words_of(tmp_path / f"chart-{number}.pdf") for number in range(CHARTS)]
    assert ours == sorted(ours)
    assert not ours[0]
    for number, (sheet, new) in enumerate(zip(charts, ours, strict=True)):
        assert (sheet.lot_id == lot.id) is new
        assert new or "25-1103C" in words_of(tmp_path / f"chart-{number}.pdf")


class Other:
    """A second computer's desk at the weigh-in of a lot, with its own connection, window and answers."""

    def __init__(self, url: str, lot: Lot, qtbot: QtBot, by: str) -> None:
        self.records, self.answers = Records.open(url), Answers()
        self.desk = Desk(self.records, self.answers, clock=at_noon)
        self.window = Window(self.desk)
        qtbot.addWidget(self.window)
        self.window.show_page("weigh_in", lot.id)
        page = self.window.page("weigh_in")
        assert isinstance(page, WeighInPage)
        assert page.guide is not None
        self.page, self.guide, self.by = page, page.guide, by

    def look(self) -> None:
        """Go to the sign-off, which shows the facts as they are now."""
        self.desk.changed.emit()
        self.page.open_step(Step.SIGN_OFF)

    def sign(self) -> None:
        view = self.page._views[Step.SIGN_OFF]
        assert isinstance(view, StepSignOff)
        view._initials.setText(self.by)
        view._sign()

    def close(self) -> None:
        self.window.replace_by_another()
        self.records.close()


@pytest.fixture
def both(herd: Herd, qtbot: QtBot) -> Iterator[tuple[Other, Other]]:
    """Two desks at one weigh-in with its level fills and its line, ready to be signed off."""
    url = herd.records._opened.engine.url.render_as_string(hide_password=False)
    lot = herd.records.keep(Lot(id=new_id(), farm_id=herd.farm.id, lot_number="25-1204A"))
    first = Other(url, lot, qtbot, "AB")
    first.guide.set(
        by="AB", scoop_id=herd.red.id, scale_id=herd.scale.id, target_mass_g=10 * OZ_G, target_typed="10 oz",
        scale_zeroed=True,
    )  # fmt: skip
    first.page.open_step(Step.LEVEL_FILLS)
    type_in(first.page, LEVEL)
    assert first.guide.findings.line is not None
    first.guide.set(drawn_line_mm=first.guide.findings.line.down_wall_mm)
    second = Other(url, lot, qtbot, "CD")
    yield first, second
    first.close()
    second.close()


def test_both_sign_off_and_the_second_is_told_who_was_first(both: tuple[Other, Other], herd: Herd) -> None:
    first, second = both
    for desk in both:
        desk.look()
    first.sign()
    second.sign()
    assert (first.answers.told, len(second.answers.told)) == ([], 1)
    assert "was signed off already by AB" in second.answers.told[0]
    assert len(herd.records.sign_offs(herd.farm.id)) == 1
    assert second.guide.signed_off is not None  # and sees it at once
    assert second.guide.signed_off.by == "AB"


def test_a_fill_typed_after_the_other_signed_off_is_refused_in_words(both: tuple[Other, Other], herd: Herd) -> None:
    first, second = both
    second.page.open_step(Step.LEVEL_FILLS)
    first.look()
    second.desk.changed.emit()
    second.page.open_step(Step.LEVEL_FILLS)
    first.sign()
    type_in(second.page, ("11.9",))
    assert [("signed off and cannot be changed" in told) for told in second.answers.told] == [True]
    assert len(herd.records.fills(first.guide.weigh_in.id)) == len(LEVEL)
    assert second.guide.signed_off is not None


def test_the_scoop_is_retired_while_the_other_weighs_with_it(both: tuple[Other, Other], herd: Herd) -> None:
    first, second = both
    first.look()
    scoop = second.records.find(Scoop, herd.red.id)
    second.records.keep(replace(scoop, retired_on=at_noon().date()), by="CD", why="worn")
    first.answers.yes = True
    first.sign()
    assert [told.split(" meanwhile")[0] for told in first.answers.told] == ["Red scoop was retired"]
    assert first.guide.signed_off is None
    first.answers.yes = False
    first.sign()
    assert first.answers.asked[-1] == "Red scoop is retired. Sign off a line weighed with it all the same?"
    assert first.guide.signed_off is None
    first.answers.yes = True
    first.sign()
    assert first.guide.signed_off is not None
    assert len(first.answers.told) == 1


def test_fills_of_both_desks_count_and_neither_signs_what_it_has_not_seen(
    both: tuple[Other, Other], herd: Herd
) -> None:
    first, second = both
    second.page.open_step(Step.LEVEL_FILLS)
    first.look()
    second.guide.add_fill(FillWay.LEVEL, 5, 331.7, "331.7 g")
    first.sign()
    assert len(first.answers.told) == 1
    assert "changed meanwhile" in first.answers.told[0]
    assert first.guide.findings.level is not None
    assert first.guide.findings.level.fills == len(LEVEL) + 1
    first.sign()
    assert first.guide.signed_off is not None
    assert first.guide.signed_off.fills == len(LEVEL) + 1


def words_of(pdf: Path) -> str:
    with pypdfium2.PdfDocument(pdf) as document:
        return "".join(page.get_textpage().get_text_range() for page in document).replace(" ", "").replace("\r\n", "")
