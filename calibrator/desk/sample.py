"""The invented season, opened in a window of its own, so that it never mixes with a farm's records.

Its clock stands at the end of the season: on a later day all its powder would be long gone.
"""

from __future__ import annotations

import sys
from collections.abc import Callable
from datetime import datetime, timedelta
from pathlib import Path

from PySide6.QtCore import QProcess

import calibrator
from calibrator.model import Lot
from calibrator.records import Records


def open_sample_season() -> bool:
    """Start the program once more on a throw-away copy of the season; tells whether it started."""
    bundled = bool(getattr(sys, "frozen", False))
    arguments = ["--demo"] if bundled else ["-m", "calibrator", "--demo"]
    home = Path(calibrator.__file__).parents[1]
    started = QProcess.startDetached(sys.executable, arguments, str(home))
    return bool(started[0] if isinstance(started, tuple) else started)


def season_clock(records: Records, wall: Callable[[], datetime]) -> Callable[[], datetime]:
    """The time on the wall, moved by whole days so that today is the day after the newest lot came.

    The wall itself where no lot has a day.
    """
    arrived = [lot.arrived_on for lot in records.every(Lot) if lot.arrived_on is not None]
    if not arrived:
        return wall
    moved = max(arrived) + timedelta(days=1) - wall().date()

    def clock() -> datetime:
        return wall() + moved

    return clock
