"""The invented season, opened in a window of its own, so that it never mixes with a farm's records."""

from __future__ import annotations

import sys
from pathlib import Path

from PySide6.QtCore import QProcess

import calibrator


def open_sample_season() -> bool:
    """Start the program once more on a throw-away copy of the season; tells whether it started."""
    bundled = bool(getattr(sys, "frozen", False))
    arguments = ["--demo"] if bundled else ["-m", "calibrator", "--demo"]
    home = Path(calibrator.__file__).parents[1]
    started = QProcess.startDetached(sys.executable, arguments, str(home))
    return bool(started[0] if isinstance(started, tuple) else started)
