"""A bare number has the unit of the example that its field shows: every quantity field of the program is looked at."""

from __future__ import annotations

import ast
import sys
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path

import pytest
from answers import Answers
from PySide6.QtCore import QCoreApplication, QEvent
from PySide6.QtWidgets import QApplication
from shiboken6 import isValid
from speaking import speaking

import calibrator.desk
from calibrator.desk.context import Desk
from calibrator.desk.forms import amount
from calibrator.desk.forms.rows_editor import RowsEditor
from calibrator.desk.theme import Theme
from calibrator.desk.widgets import quantity_field
from calibrator.desk.widgets.quantity_field import QuantityField
from calibrator.desk.window import Window
from calibrator.model import UnitSystem
from calibrator.records import Records
from calibrator.units import Kind
from tests.tour import tour, weigh_a_new_lot

pytestmark = pytest.mark.qt_log_ignore("does not support propagateSizeHints")

DESK = Path(calibrator.desk.__file__).parent
INSIDE = {quantity_field.__file__, amount.__file__, __file__}
Place = tuple[str, int]


@pytest.fixture(scope="module")
def records(tmp_path_factory: pytest.TempPathFactory, season_in: Callable[[Path], Records]) -> Iterator[Records]:
    opened = season_in(tmp_path_factory.mktemp("examples"))
    yield opened
    opened.close()


@pytest.fixture
def made(monkeypatch: pytest.MonkeyPatch) -> dict[QuantityField, Place]:
    """Every field that is made from here on, and where in the code it was."""
    found: dict[QuantityField, Place] = {}
    usual = QuantityField.__init__

    def noted(self: QuantityField, *told: object, **more: object) -> None:
        frame = sys._getframe(1)
        while frame.f_code.co_filename in INSIDE and frame.f_back is not None:
            frame = frame.f_back
        usual(self, *told, **more)  # type: ignore[arg-type]
        found[self] = (frame.f_code.co_filename, frame.f_lineno)

    monkeypatch.setattr(QuantityField, "__init__", noted)
    return found


def written_down() -> dict[Place, range]:
    """Every place in the code that makes such a field, with its lines."""
    found = {}
    for file in DESK.rglob("*.py"):
        text = file.read_text(encoding="utf-8")
        if str(file) in INSIDE or not ("QuantityField(" in text or "Amount(" in text):
            continue
        for node in ast.walk(ast.parse(text)):
            if isinstance(node, ast.Call) and getattr(node.func, "id", "") in ("QuantityField", "Amount"):
                found[str(file), node.lineno] = range(node.lineno, (node.end_lineno or node.lineno) + 1)
    return found


def wrong(field: QuantityField) -> Iterator[str]:
    """What a bare number means otherwise than the example beside it, in either system."""
    kept, filled, system = field.text(), field._filled, field._system
    for other in (*UnitSystem, system):
        field.set_system(other)
        shown = field.example
        placeholder = field.line.placeholderText()
        if placeholder and not placeholder.endswith(shown):
            yield f"shows {placeholder}, not {shown}"
        field.set_typed(shown)
        meant = field.quantity()
        bare, _, unit = shown.rpartition(" ")
        field.set_typed(bare if unit and not unit[-1].isdigit() else shown)
        read = field.quantity()
        if meant is None:
            yield f"{shown} is refused: {field.problem()}"
        elif read is None and field._must_name is None:
            yield f"{bare} is refused: {field.problem()}"
        elif read is not None and read.value != meant.value:
            yield f"{bare} is {read}, the example {meant}"
        elif field._kind not in (Kind.COUNT, Kind.PERCENT):
            field.set_typed("ten")  # a refusal has the same example
            if shown not in field.problem():
                yield f"{field.problem()} has not {shown}"
    field.set_system(system)
    field._put(kept, filled)


@contextmanager
def one_more_row_each(window: Window, met: set[RowsEditor]) -> Iterator[None]:
    """Lists that begin empty, such as a plan's additives, with a row in them when they are met for the first time."""
    lists = [one for one in window.findChildren(RowsEditor) if one not in met and not one.add.isHidden()]
    met.update(lists)
    rows = [one.place() for one in lists]
    yield
    for row in rows:
        row.ask_remove()


@pytest.mark.parametrize("language", [pytest.param("en", marks=pytest.mark.slow), "es"])
def test_a_bare_number_has_the_unit_of_the_example_in_every_field(
    qapp: QApplication, records: Records, made: dict[QuantityField, Place], language: str
) -> None:
    if qapp.property("tokens") is None:
        Theme(qapp)
    with speaking(language):
        desk = Desk(records, Answers())
        weigh_a_new_lot(desk)
        window = Window(desk)
        window.resize(1024, 700)
        window.show()
        seen: set[QuantityField] = set()
        lists: set[RowsEditor] = set()
        found: set[str] = set()
        for screen in tour(window):
            with one_more_row_each(window, lists):
                for field in [one for one in made if one not in seen and isValid(one)]:
                    seen.add(field)
                    found |= {f"{screen}, {field.accessibleName()}: {told}" for told in wrong(field)}
        lines = [made[one] for one in seen]
        missed = [
            f"{Path(file).name}:{line}"
            for (file, line), of in written_down().items()
            if not any(file == where and at in of for where, at in lines)
        ]
        window.replace_by_another()
        QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)
    assert sorted(found) == [], "\n".join(sorted(found))
    assert missed == [], "\n".join(missed)
