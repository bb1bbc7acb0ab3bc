"""The wheel carries all that the program reads, and the door in it opens."""

from __future__ import annotations

import os
import subprocess
import sys
import zipfile
from configparser import ConfigParser
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parent.parent
READ = """
import sys
from pathlib import Path
import calibrator
from calibrator import places
home = Path(sys.argv[1])
assert Path(calibrator.__file__).is_relative_to(home), calibrator.__file__
for name in sys.argv[2:]:
    assert places.resource(name).is_relative_to(home), name
from calibrator.records import demo_records, sample_lots_folder
assert sample_lots_folder().is_relative_to(home)
from calibrator.model import Lot
with demo_records(home.parent) as records:
    assert records.every(Lot)
from calibrator.units import Kind, read
from calibrator.model import UnitSystem
assert read("1 lb", Kind.MASS, UnitSystem.FARM).value == 453.59237
"""


@pytest.fixture(scope="module")
def unpacked(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """What pip would put beside the other libraries."""
    folder = tmp_path_factory.mktemp("wheel")
    code = "import sys; from hatchling.build import build_wheel; print(build_wheel(sys.argv[1]))"
    built = subprocess.run(
        [sys.executable, "-c", code, str(folder)], cwd=ROOT, capture_output=True, text=True, check=True
    )
    with zipfile.ZipFile(folder / built.stdout.split()[-1]) as wheel:
        wheel.extractall(folder / "site")
    return folder / "site"


MAKERS = {".ts", ".icns", ".ico"}  # words to compile, icons for other systems' bundles
FOR_PEOPLE = {"units.txt", "scoop_label.png", "wall_chart.png"}  # read by pint, and by whoever reads the README


def read_by_the_program() -> list[Path]:
    """All files under resources/ that the program itself may open."""
    return [
        path
        for path in sorted((ROOT / "resources").rglob("*"))
        if path.is_file() and path.suffix not in MAKERS and path.name not in FOR_PEOPLE
        if not {"bundle", "__pycache__"} & set(path.parts)
    ]


def test_all_that_is_read_is_carried_and_nothing_else(unpacked: Path) -> None:
    names = sorted(path.relative_to(ROOT / "resources").as_posix() for path in read_by_the_program())
    assert len(names) > 30
    carried = unpacked / "calibrator" / "resources"
    assert sorted(path.relative_to(carried).as_posix() for path in carried.rglob("*") if path.is_file()) == names
    environment = {**os.environ, "PYTHONPATH": str(unpacked), "PYTHONSAFEPATH": "1"}
    done = subprocess.run(
        [sys.executable, "-c", READ, str(unpacked), *names],
        cwd=unpacked,
        env=environment,
        capture_output=True,
        text=True,
        check=False,
    )
    assert (done.returncode, done.stderr) == (0, "")


def test_the_door_is_named_for_the_shell(unpacked: Path) -> None:
    told = ConfigParser()
    told.read(next(unpacked.glob("calibrator-*.dist-info")) / "entry_points.txt")
    assert told["console_scripts"]["calibrator"] == "calibrator.__main__:main"
