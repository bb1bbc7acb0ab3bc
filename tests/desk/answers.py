"""Answers in place of dialogs, a clock that stands still, and one that goes on."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from datetime import UTC, datetime, timedelta
from pathlib import Path

from calibrator.desk.ask import Ask


class Answers(Ask):
    """Answers at once: yes, and the reason that was laid ready; keeps what was said."""

    def __init__(self) -> None:
        super().__init__()
        self.told: list[str] = []
        self.asked: list[str] = []
        self.offered: list[tuple[str, ...]] = []  # reasons, with each question for one
        self.yes = True
        self.other = False  # where a question has two answers, the second
        self.words = "spilled some"
        self.path: Path | None = None
        self.first_paths: list[Path] = []  # these are chosen before it, one after another
        self.proposed: list[Path] = []

    def tell(self, text: str) -> None:
        self.told.append(text)

    def confirm(
        self,
        question: str,
        yes: str,
        on_yes: Callable[[], None],
        other: tuple[str, Callable[[], None]] | None = None,
    ) -> None:
        self.asked.append(question)
        if self.yes:
            (other[1] if other and self.other else on_yes)()

    def reason(self, question: str, on_text: Callable[[str], None], usual: Sequence[str] = ()) -> None:
        self.asked.append(question)
        self.offered.append(tuple(usual))
        if self.words:
            on_text(self.words)

    def save_path(self, title: str, suggestion: str, kinds: str, on_path: Callable[[Path], None]) -> None:
        self.asked.append(title)
        self.proposed.append(Path(suggestion))
        path = self.first_paths.pop(0) if self.first_paths else self.path
        if path:
            on_path(path)

    def open_path(self, title: str, kinds: str, on_path: Callable[[Path], None]) -> None:
        self.save_path(title, "", kinds, on_path)


def at_noon() -> datetime:
    return datetime(2026, 3, 2, 12, 0, tzinfo=UTC)


class Onward:
    """A clock that is a second further with every look, so that what is kept later is later."""

    def __init__(self, at: datetime) -> None:
        self.at = at

    def __call__(self) -> datetime:
        self.at += timedelta(seconds=1)
        return self.at
