"""Killed at random moments, the records hold all that was acknowledged and nothing by half."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

import pytest


@pytest.mark.skipif(not hasattr(os, "fork"), reason="needs a system that can fork")
def test_twenty_kills_lose_nothing(file: Path) -> None:
    script = Path(__file__).with_name("killed.py")
    ended = subprocess.run(
        [sys.executable, str(script), str(file), "--kills", "20", "--seed", "7"],
        capture_output=True,
        text=True,
        check=False,
        env=os.environ | {"PYTHONPATH": os.pathsep.join(sys.path)},
    )
    assert ended.returncode == 0, ended.stderr
    told = ended.stdout
    assert told.startswith("20 kills, nothing lost:")
    assert all(f" {what}" in told for what in ("fill", "signed", "printed", "tried", "imported"))
