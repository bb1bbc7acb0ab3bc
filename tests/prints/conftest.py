"""Prints need an application for their font; nothing else."""

from __future__ import annotations

import pytest
from PySide6.QtWidgets import QApplication


@pytest.fixture(autouse=True)
def _application(qapp: QApplication) -> None:
    """The one application, made by the test plugin."""
