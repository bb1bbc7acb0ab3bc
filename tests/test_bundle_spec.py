"""The bundle's recipe, read for each system with PyInstaller's own steps stood in for: what it carries is there.

The bundle itself is driven on a clean root by `tests/bundle_on_clean_root.py`, which takes minutes.
"""

from __future__ import annotations

import sys
import tomllib
from pathlib import Path
from types import ModuleType
from typing import Any
from unittest.mock import MagicMock

import pytest
from test_wheel import read_by_the_program

ROOT = Path(__file__).resolve().parent.parent
SPEC = ROOT / "resources" / "bundle" / "calibrator.spec"


@pytest.fixture(params=["linux", "win32", "darwin"])
def system(request: pytest.FixtureRequest, monkeypatch: pytest.MonkeyPatch) -> str:
    monkeypatch.setattr(sys, "platform", request.param)
    hooks = ModuleType("PyInstaller.utils.hooks")
    hooks.collect_submodules = lambda name: [f"{name}.all"]  # type: ignore[attr-defined]
    hooks.copy_metadata = lambda name: [(__file__, f"{name}.dist-info")]  # type: ignore[attr-defined]
    monkeypatch.setattr("importlib.util.find_spec", lambda name: name)  # the additions are installed
    monkeypatch.setitem(sys.modules, "PyInstaller.utils.hooks", hooks)
    for name in ("PyInstaller", "PyInstaller.utils"):
        monkeypatch.setitem(sys.modules, name, ModuleType(name))
    monkeypatch.setattr(sys, "path", list(sys.path))
    return str(request.param)


@pytest.fixture
def steps(system: str) -> dict[str, Any]:
    """The recipe's own steps, as they were called."""
    called: dict[str, Any] = {name: MagicMock() for name in ("Analysis", "PYZ", "EXE", "COLLECT", "BUNDLE")}
    exec(compile(SPEC.read_text("utf-8"), str(SPEC), "exec"), {**called, "SPECPATH": str(SPEC.parent)})
    return called


def test_every_resource_is_carried_to_where_it_is_looked_for(steps: dict[str, Any]) -> None:
    carried = {Path(source): Path(target) for source, target in steps["Analysis"].call_args.kwargs["datas"]}
    assert all(source.exists() for source in carried)
    wanted = {path: Path("calibrator", path.parent.relative_to(ROOT)) for path in read_by_the_program()}
    assert {source: target for source, target in carried.items() if "resources" in source.parts} == wanted
    assert carried[ROOT / "sample_lots"] == Path("calibrator", "sample_lots")
    assert carried[ROOT / "calibrator/records/migrations"] == Path("calibrator", "records", "migrations")


def test_what_is_loaded_by_name_is_named(steps: dict[str, Any]) -> None:
    told = steps["Analysis"].call_args.kwargs
    assert {"calibrator.all", "PySide6.QtOpenGL", "PySide6.QtOpenGLWidgets"} <= set(told["hiddenimports"])
    assert {"psycopg.all", "keyring.backends.all"} <= set(told["hiddenimports"])
    assert (__file__, "keyring.dist-info") in told["datas"]  # it finds its backends by what the package declares
    assert not set(told["hiddenimports"]) & set(told["excludes"])
    assert Path(steps["Analysis"].call_args.args[0][0]).is_file()


def test_the_bundle_is_made_with_every_addition_of_the_program() -> None:
    extras = tomllib.loads((ROOT / "pyproject.toml").read_text("utf-8"))["project"]["optional-dependencies"]
    for_people = ",".join(sorted(extras.keys() - {"bundle", "test"}))
    assert f"calibrator[{for_people}]" in extras["bundle"]


def test_each_system_gets_its_icon_and_no_black_window(steps: dict[str, Any], system: str) -> None:
    told = steps["EXE"].call_args.kwargs
    assert Path(told["icon"]).suffix == (".icns" if system == "darwin" else ".ico")
    assert Path(told["icon"]).is_file()
    assert told["console"] is (system == "linux")
    assert steps["BUNDLE"].called is (system == "darwin")
