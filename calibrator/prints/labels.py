"""Sheets of scoop labels, at true scale."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from calibrator.model import UnitSystem
from calibrator.prints import words
from calibrator.prints.errors import DoesNotFit
from calibrator.prints.fit import plain
from calibrator.prints.label_facts import LabelForm, LabelSheet
from calibrator.prints.label_pages import check_grid, grid_pages, shelf_pages, shelf_room
from calibrator.prints.label_strip import Piece, strip
from calibrator.prints.label_wrap import wraps
from calibrator.prints.languages import Words
from calibrator.prints.page import Document, Page
from calibrator.prints.sheet import paper_mm
from calibrator.science.errors import CannotCompute


def scoop_labels(facts: LabelSheet) -> Document:
    """Labels at true scale, several to a page. Raises DoesNotFit."""
    if not facts.labels or not all(label.lines for label in facts.labels):
        raise DoesNotFit("There is no line to print yet. Sign off a weigh-in first.")
    if any(line.down_wall_mm < 0 for label in facts.labels for line in label.lines):
        raise DoesNotFit("A line must lie below the rim. Choose another scoop or weight.")
    said = Words.of(facts.languages)
    facts = replace(facts, labels=tuple(replace(one, copies=max(1, one.copies)) for one in facts.labels))
    title = f"{said.joined(words.LABEL_SHEET, ' / ')} {plain(facts.labels[0].lot_number)}"
    try:
        return Document(title, tuple(_grid(facts, said) if facts.grid else _plain(facts, said)))
    except CannotCompute as error:
        raise DoesNotFit(error.sentence, **error.params) from error


def _grid(facts: LabelSheet, said: Words) -> Iterator[Page]:
    """Strips only: a wrap has its own outline."""
    grid, paper = facts.grid, paper_mm(facts.paper)
    assert grid is not None
    check_grid(grid, paper)
    size = (grid.width_mm, grid.height_mm)
    pieces = [piece for one in facts.labels for piece in [strip(one, facts, said, size)] * one.copies]
    return grid_pages(pieces, grid, paper, facts.units)


def _plain(facts: LabelSheet, said: Words) -> list[Page]:
    """The paper upright, or lying where that saves pages."""
    measure = words.CHECK_BAR if facts.units is UnitSystem.FARM else words.CHECK_BAR_METRIC
    told = (*said.each(measure), *said.each(_how(facts)))
    found: list[list[Page]] = []
    refusal: DoesNotFit | None = None
    for landscape in (False, True):
        paper = paper_mm(facts.paper, landscape=landscape)
        try:
            found.append(list(shelf_pages(_pieces(facts, said, shelf_room(paper)), paper, told, facts.units)))
        except DoesNotFit as error:
            refusal = refusal or error
    if refusal and not found:
        raise refusal
    return min(found, key=len)


def _pieces(facts: LabelSheet, said: Words, room: tuple[float, float]) -> list[Piece]:
    if facts.form is LabelForm.WRAP:
        return [p for one in facts.labels for p in wraps(one, facts, said, room) * one.copies]
    return [p for one in facts.labels for p in [strip(one, facts, said)] * one.copies]


def _how(facts: LabelSheet) -> str:
    if all(line.struck_level for label in facts.labels for line in label.lines):
        return words.LEVEL_HOW
    return words.WRAP_HOW if facts.form is LabelForm.WRAP else words.LABEL_HOW
