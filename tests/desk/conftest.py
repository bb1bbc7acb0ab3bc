"""A desk on an empty or a small store, with answers in place of dialogs."""

from __future__ import annotations

import shutil
from collections.abc import Callable, Iterator
from datetime import UTC, datetime
from pathlib import Path

import pytest
from PySide6.QtWidgets import QApplication

from calibrator.desk.ask import Ask
from calibrator.desk.context import Desk
from calibrator.desk.theme import Theme
from calibrator.model import Cylinder, Farm, Lot, Scale, Scoop, new_id
from calibrator.records import Records


class Answers(Ask):
    """Answers at once: yes, and the reason that was laid ready; keeps what was said."""

    def __init__(self) -> None:
        super().__init__()
        self.told: list[str] = []
        self.asked: list[str] = []
        self.yes = True
        self.words = "spilled some"
        self.path: Path | None = None

    def tell(self, text: str) -> None:
        self.told.append(text)

    def confirm(self, question: str, yes: str, on_yes: Callable[[], None]) -> None:
        self.asked.append(question)
        if self.yes:
            on_yes()

    def reason(self, question: str, on_text: Callable[[str], None]) -> None:
        self.asked.append(question)
        if self.words:
            on_text(self.words)

    def save_path(self, title: str, suggestion: str, kinds: str, on_path: Callable[[Path], None]) -> None:
        self.asked.append(title)
        if self.path:
            on_path(self.path)

    def open_path(self, title: str, kinds: str, on_path: Callable[[Path], None]) -> None:
        self.save_path(title, "", kinds, on_path)


def at_noon() -> datetime:
    return datetime(2026, 3, 2, 12, 0, tzinfo=UTC)


@pytest.fixture
def answers() -> Answers:
    return Answers()


@pytest.fixture(scope="session")
def new_store(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Records made once, to be copied: making the tables anew for each test would take most of its time."""
    path = tmp_path_factory.mktemp("store") / "new.sqlite"
    Records.open(str(path)).close()
    return path


@pytest.fixture
def records(tmp_path: Path, new_store: Path) -> Iterator[Records]:
    path = tmp_path / "records.sqlite"
    shutil.copy(new_store, path)
    opened = Records.open(str(path))
    yield opened
    opened.close()


@pytest.fixture
def empty_desk(qapp: QApplication, records: Records, answers: Answers) -> Desk:
    if qapp.property("tokens") is None:
        Theme(qapp)
    return Desk(records, answers, clock=at_noon)


@pytest.fixture
def desk(qapp: QApplication, records: Records, answers: Answers) -> Desk:
    """A farm with a scale, a scoop and one lot that was delivered and not yet weighed in."""
    if qapp.property("tokens") is None:
        Theme(qapp)
    farm = records.keep(Farm(id=new_id(), name="Windy Hollow"))
    records.keep(
        Scale(
            id=new_id(),
            farm_id=farm.id,
            name="Kitchen scale",
            resolution_g=2.8349523125,
            resolution_typed="0.1 oz",
            capacity_g=4989.5,
            capacity_typed="11 lb",
        )
    )
    records.keep(
        Scoop(
            id=new_id(),
            farm_id=farm.id,
            name="Red scoop",
            shape=Cylinder(diameter_mm=96, height_mm=92),
            volume_ml=665.9,
            volume_u_ml=3.0,
        )
    )
    records.keep(Lot(id=new_id(), farm_id=farm.id, lot_number="25-0302A", product="20-20 replacer"))
    return Desk(records, answers, clock=at_noon)
