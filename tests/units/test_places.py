"""Carried files are found in a source checkout and in an installed wheel alike."""

import importlib.util
import shutil
import subprocess
import sys
from pathlib import Path
from types import ModuleType

import pytest

from calibrator import places


def places_in(package: Path) -> ModuleType:
    package.mkdir(parents=True)
    copy = shutil.copy(places.__file__, package / "places.py")
    spec = importlib.util.spec_from_file_location("places_elsewhere", copy)
    assert spec is not None
    assert spec.loader is not None
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    return module


def test_a_checkout_has_the_unit_file() -> None:
    assert "ounce = pound / 16" in places.resource("units.txt").read_text(encoding="utf-8")
    assert places.sample_lots().is_dir()


@pytest.mark.parametrize("home", ["calibrator/resources", "resources"])
def test_beside_the_package_or_inside_it(tmp_path: Path, home: str) -> None:
    elsewhere = places_in(tmp_path / "calibrator")
    (tmp_path / home).mkdir(parents=True)
    (tmp_path / home / "units.txt").touch()
    assert elsewhere.resource("units.txt") == tmp_path / home / "units.txt"


def test_what_is_missing_is_said_by_name(tmp_path: Path) -> None:
    with pytest.raises(FileNotFoundError, match=r"lacks resources/units\.txt; install it again"):
        places_in(tmp_path / "calibrator").resource("units.txt")


def test_reading_a_text_loads_no_library() -> None:
    script = (
        "import sys, calibrator.units as u, calibrator.model as m\n"
        "u.read('10 oz', u.Kind.MASS, m.UnitSystem.FARM)\n"
        "assert 'pint' not in sys.modules\n"
    )
    done = subprocess.run([sys.executable, "-c", script], capture_output=True, text=True, check=False)
    assert (done.returncode, done.stderr) == (0, "")
