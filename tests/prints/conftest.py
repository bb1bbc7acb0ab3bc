"""Prints need an application for their font and a country for their days; nothing else."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QLocale
from PySide6.QtWidgets import QApplication


@pytest.fixture(autouse=True)
def _american() -> None:
    """Whatever country the computer is in that tests, and whatever a test before spoke."""
    QLocale.setDefault(QLocale("en_US"))


@pytest.fixture(autouse=True)
def _application(qapp: QApplication) -> None:
    """The one application, made by the test plugin."""
