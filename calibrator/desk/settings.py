"""What this computer remembers for its person: language, figures, window. Never a fact; those are in the records.

One small JSON file, written whole; a missing, damaged or older one gives the defaults for what it lacks.
"""

from __future__ import annotations

import json
import os
from dataclasses import asdict, field, fields, replace
from pathlib import Path
from typing import Any

from calibrator.values import dataclass

MOST = 100_000.0  # of anything that is kept as a number here


@dataclass(frozen=True)
class Preferences:
    """`screen_language` is blank to follow the system; `paper_languages` are those of one print, in order. `label_cut`,
    `label_grid` and `label_half` are how labels were printed last, `walls_mm` how thick the walls of scoops are, by
    their ids. `scale_port` is where a scale sends its weights (blank: nowhere), `scale_mask` how its lines look,
    `scale_enters` whether they are entered at once. `save_folder` is where a file was saved last. `server` is the
    address of the records where they are on a server (never with a password), blank for the file on this computer;
    `last_seen` is what the clock said when the program last looked.
    """

    screen_language: str = ""
    paper_languages: tuple[str, ...] = ()
    look: str = ""
    large_figures: bool = False
    initials: str = ""
    farm_id: str = ""
    findings_told: str = ""  # which findings in the records were told already
    window_width: int = 1280
    window_height: int = 800
    label_cut: str = ""
    label_half: bool = False
    label_grid: dict[str, float] = field(default_factory=dict)
    walls_mm: dict[str, float] = field(default_factory=dict)
    server: str = ""
    save_folder: str = ""
    last_seen: str = ""
    scale_port: str = ""
    scale_speed: str = "9600 8N1"
    scale_mask: str = ""
    scale_enters: bool = False


class Settings:
    """The preferences and the file they are kept in; without a file they last as long as the program runs."""

    def __init__(self, path: Path | None = None) -> None:
        self._path = path
        self.now = _read(path) if path else Preferences()

    def keep(self, **changed: Any) -> None:
        """Change some preferences. That the file cannot be written is no reason to stop anybody."""
        wanted = replace(self.now, **changed)
        if wanted == self.now:
            return
        self.now = wanted
        if self._path is not None:
            _write(self._path, wanted)


def _read(path: Path) -> Preferences:
    try:
        told = json.loads(path.read_text("utf-8"))
    except (OSError, ValueError):
        return Preferences()
    if not isinstance(told, dict):
        return Preferences()
    defaults = asdict(Preferences())
    known = {field.name: told[field.name] for field in fields(Preferences) if field.name in told}
    if isinstance(known.get("paper_languages"), list):
        known["paper_languages"] = tuple(str(code) for code in known["paper_languages"])
    for name in ("label_grid", "walls_mm"):
        known[name] = _sizes(known.get(name))
    return Preferences(**{name: value for name, value in known.items() if type(value) is type(defaults[name])})


def _sizes(told: Any) -> dict[str, float]:
    """Only what is a number; a file that was written by hand may hold anything."""
    pairs = told.items() if isinstance(told, dict) else ()
    return {name: float(size) for name, size in pairs if type(size) in (int, float) and 0 <= size < MOST}


def _write(path: Path, preferences: Preferences) -> None:
    fresh = path.with_suffix(".new")
    try:
        path.parent.mkdir(parents=True, exist_ok=True)
        fresh.write_text(json.dumps(asdict(preferences), indent=1), "utf-8")
        os.replace(fresh, path)
    except OSError:
        return
