"""The science room stays quick to import: nothing heavy comes with it."""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path

ROOM = Path(__file__).parents[2] / "calibrator" / "science"


def test_no_heavy_library_comes_with_the_room() -> None:
    modules = sorted(f"calibrator.science.{path.stem}" for path in ROOM.glob("[a-z]*.py"))
    assert len(modules) > 10
    heavy = "{'scipy', 'pint', 'PySide6', 'sqlalchemy', 'pyqtgraph'}"
    code = f"import sys, {', '.join(modules)}; print(*({heavy} & set(sys.modules)))"
    run = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True, cwd=ROOM.parents[1])
    assert run.stdout.split() == []
