"""What the robot answers when the program asks: mostly yes, a reason or none, one of the files that lie ready."""

from __future__ import annotations

import random
import re
from collections.abc import Callable, Sequence
from pathlib import Path

from openpyxl import Workbook

from calibrator.desk.ask import Ask
from calibrator.records import Records
from calibrator.records.exporting import export_file

REASONS = ("", "spilled some", "misread", "<b>wet</b>", "x" * 200)
NAMES = 3  # files are written over, so that a day fills no disk
FILLS = "Lot,Date,Bag,Weight (oz)\nA-1,3/4/2025,1,11.6\nA-1,3/4/2025,2,11.8\nA-2,5/6/2025,1,12.1\n"
LOTS = "Lote;Producto;Llegó\n24-030A;20-20;1/3/2024\n24-031A;20-20;\n"
FAULTY = FILLS + "A-3,31/31/2025,1,twelve\n,,,\nA-3,x,0,-4\n"
BOOK = (("Lot", "Bag", "Weight g", "Note"), ("B-7", 1, 331.5, "dry"), ("B-7", 2, 329, None), ("B-8", 1, 1e9, "=1+1"))


class ByChance(Ask):
    """Answers at once, and keeps how often something was told."""

    def __init__(self, rng: random.Random, folder: Path) -> None:
        super().__init__()
        self._rng, self._folder = rng, folder
        self.told = 0
        self.files: list[Path] = []

    def lay_ready(self, records: Records) -> None:
        """Files to bring in: good ones, faulty ones, and some that are no such thing."""
        texts = {
            "fills.csv": FILLS, "lots.txt": LOTS, "faulty.csv": FAULTY, "empty.csv": "", "broken.json": '{"format": 1',
            "no book.xlsx": "PK\x03\x04 no package at all",
        }  # fmt: skip
        for name, text in texts.items():
            (self._folder / name).write_text(text, encoding="utf-8")
        book = Workbook()
        for cells in BOOK:
            book.active.append(cells)
        book.save(self._folder / "book.xlsx")
        export_file(records, self._folder / "everything.json")
        self.files = [self._folder / name for name in (*texts, "book.xlsx", "everything.json", "gone.csv")]

    def tell(self, text: str) -> None:
        assert text
        self.told += 1

    def confirm(
        self,
        question: str,
        yes: str,
        on_yes: Callable[[], None],
        other: tuple[str, Callable[[], None]] | None = None,
    ) -> None:
        assert question
        assert yes
        if self._rng.random() < 0.75:
            self._rng.choice([on_yes, *([other[1]] if other else [])])()

    def reason(self, question: str, on_text: Callable[[str], None], usual: Sequence[str] = ()) -> None:
        words = self._rng.choice((*REASONS, *usual))
        if words:
            on_text(words)

    def save_path(self, title: str, suggestion: str, kinds: str, on_path: Callable[[Path], None]) -> None:
        found = re.search(r"\*(\.\w+)", kinds)
        folder = self._folder if self._rng.random() < 0.9 else self._folder / "not there"
        on_path(folder / f"out {self._rng.randrange(NAMES)}{found.group(1) if found else ''}")

    def open_path(self, title: str, kinds: str, on_path: Callable[[Path], None]) -> None:
        on_path(self._rng.choice(self.files))
