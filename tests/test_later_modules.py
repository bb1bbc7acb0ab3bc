"""Modules that are put off come as soon as something in them is used, and nobody else notices.

Each in an interpreter of its own: where PySide6 is loaded, it looks into every module that comes after it.
"""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[1]
BEGIN = """
import sys
from importlib import import_module
from calibrator.later import put_off
"""


@pytest.fixture
def room(tmp_path: Path) -> Path:
    """A library that asks for two modules, and takes a function out of one."""
    (tmp_path / "rare_way.py").write_text("def told(a, b=0): return a + b\nclass Thing: pass\n")
    (tmp_path / "rare_room").mkdir()
    (tmp_path / "rare_room" / "__init__.py").write_text("")
    (tmp_path / "rare_room" / "corner.py").write_text("here = 'in the corner'\n")
    (tmp_path / "library.py").write_text(
        "import rare_way\nimport rare_room.corner\nfrom rare_room import corner\ntold = rare_way.told\n"
        "def late(): return rare_way.Thing\n"
    )
    return tmp_path


def run(program: str, room: Path | None = None) -> None:
    path = os.pathsep.join(str(folder) for folder in (ROOT, room) if folder)
    command = [sys.executable, "-c", BEGIN + program]
    done = subprocess.run(command, capture_output=True, text=True, check=False, env=os.environ | {"PYTHONPATH": path})
    assert (done.returncode, done.stderr) == (0, "")


def test_a_module_comes_when_something_in_it_is_used(room: Path) -> None:
    program = """
import rare_room
with put_off({"rare_way": ("told",), "rare_room.corner": ()}):
    import library
assert not {"rare_way", "rare_room.corner"} & set(sys.modules)
assert library.told(2, b=3) == 5
assert library.late() is import_module("rare_way").Thing
assert library.corner.here == "in the corner"
assert rare_room.corner is sys.modules["rare_room.corner"]
assert not hasattr(library.rare_way, "nothing_of_the_kind")
"""
    run(program, room)


def test_a_module_that_is_there_already_stays(room: Path) -> None:
    program = """
import rare_way
with put_off({"rare_way": ()}):
    import library
assert library.rare_way is rare_way is sys.modules["rare_way"]
"""
    run(program, room)


def test_what_is_used_while_others_load_comes_at_once(room: Path) -> None:
    program = """
with put_off({"rare_way": ()}):
    import library
    assert library.told(1) == 1
assert sys.modules["rare_way"].told is library.told
"""
    run(program, room)


def test_a_library_that_fails_leaves_nothing_behind(room: Path) -> None:
    program = """
try:
    with put_off({"rare_way": ()}):
        import library_that_is_not_there
except ModuleNotFoundError:
    assert "rare_way" not in sys.modules
else:
    sys.exit(1)
"""
    run(program, room)


def test_the_store_finds_what_was_put_off() -> None:
    """SQLAlchemy judges every error of a connection by asyncio's own errors."""
    program = """
from calibrator.__main__ import load_desk
load_desk()
assert "asyncio" not in sys.modules
from sqlalchemy.util import concurrency
assert concurrency.is_cancellation_exception(ValueError()) is False
import asyncio
assert concurrency.is_cancellation_exception(asyncio.CancelledError()) is True
"""
    run(program)
