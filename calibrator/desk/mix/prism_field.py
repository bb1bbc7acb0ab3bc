"""How warm a refractometer is: asked with a reading, a weighed mix and a check alike."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication

from calibrator.desk.context import Desk
from calibrator.desk.forms.amount import Amount
from calibrator.desk.forms.examples import PLAIN_WATER
from calibrator.units import Kind

translate = QCoreApplication.translate


def prism_field(desk: Desk, *, example: bool = True) -> Amount:
    """A temperature that may stay blank where the instrument allows for it by itself."""
    return Amount(
        desk,
        translate("Prism", "Refractometer at"),
        Kind.TEMPERATURE,
        optional=True,
        lowest=5,
        highest=40,
        example=example,
        examples=PLAIN_WATER,
    )
