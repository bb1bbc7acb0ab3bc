"""Killed at random moments, the records hold all that was acknowledged and nothing by half."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

import pytest

CAN_FORK = pytest.mark.skipif(not hasattr(os, "fork"), reason="needs a system that can fork")


@CAN_FORK
def test_fifteen_kills_lose_nothing(file: Path) -> None:
    told = _run("killed.py", str(file), "--kills", "15", "--seed", "7").splitlines()[-1]
    assert told.startswith("15 kills, nothing lost:")
    assert all(f" {what}" in told for what in ("fill", "signed", "printed", "spot_struck", "mix_check", "tried"))


@CAN_FORK
@pytest.mark.slow
def test_files_on_the_move_are_there_whenever_it_is_cut_short(tmp_path: Path) -> None:
    some = ["--kills", "0", "--every", "4", "--only", "copy", "put back", "brought up"]
    told = _run("killed_moving.py", str(tmp_path / "files"), *some).splitlines()
    assert [line.split(":")[0] for line in told] == ["copy", "put back", "brought up"]


def _run(script: str, *arguments: str) -> str:
    ended = subprocess.run(
        [sys.executable, str(Path(__file__).with_name(script)), *arguments],
        capture_output=True,
        text=True,
        check=False,
        timeout=200,
        env=os.environ | {"PYTHONPATH": os.pathsep.join(sys.path)},
    )
    assert ended.returncode == 0, ended.stderr
    return ended.stdout
