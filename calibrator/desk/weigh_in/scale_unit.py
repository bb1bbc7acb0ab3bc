"""The unit in which a scale shows its weights, and the one that was likelier meant."""

from __future__ import annotations

from collections.abc import Callable, Iterable

from PySide6.QtCore import QCoreApplication

from calibrator.desk import shown
from calibrator.desk.as_typed import system_of, understood
from calibrator.desk.speech import decimal_comma
from calibrator.model import Scale, UnitSystem
from calibrator.science.plausible import POINT_MOVED
from calibrator.units import Kind, Quantity, default_unit, edit_text, in_other_units


def unit_of(scale: Scale | None, system: UnitSystem) -> str | None:
    """The unit of the scale's display, as its step was typed; None where that does not tell it, or tells that a
    number alone has the unit it has everywhere."""
    step = understood(scale.resolution_typed, UnitSystem.METRIC) if scale else None
    told = step.unit if step is not None and not step.bare else None
    return None if told == default_unit(Kind.MASS, system) else told


def in_another_unit(quantity: Quantity) -> dict[float, str]:
    """The same number with each other unit that weights often have, g, and how it is told."""
    texts = in_other_units(quantity.typed, Kind.MASS, system_of(quantity.unit))
    read_so = ((understood(text, UnitSystem.METRIC), text) for text in texts)
    return {found.value: text for found, text in read_so if found is not None and found.unit != quantity.unit}


def _point_elsewhere(quantity: Quantity) -> dict[float, str]:
    """The same digits with the decimal point elsewhere, g, and how it is told."""
    own, comma = system_of(quantity.unit), decimal_comma()
    moved = (quantity.value * factor for factor in POINT_MOVED)
    return {mass_g: edit_text(mass_g, Kind.MASS, own, decimal_comma=comma) for mass_g in moved}


def doubted(quantity: Quantity, told: str, system: UnitSystem) -> str:
    """A weight that is doubted, as it was typed; behind it what it comes to where that was in other units than the
    farm's: 380 oz (10.8 kg). `told` has its unit.
    """
    return told if system_of(quantity.unit) is system else f"{told} ({shown.mass(quantity.value, system)})"


def meant_words(
    quantity: Quantity, likelier: Callable[[Iterable[float]], float | None], *, unit_first: bool = False
) -> str:
    """What was likelier meant than a weight that is doubted; blank where nothing else can be. `likelier` chooses.

    `unit_first`, where nothing is known yet that the weight should be near: of a unit that was written, another one is
    tried before another number, for who wrote 10 lb meant ten of something.
    """
    units = in_another_unit(quantity)
    others = units | _point_elsewhere(quantity)
    mass_g = likelier(units) if unit_first and not quantity.bare else None
    mass_g = likelier(others) if mass_g is None else mass_g
    if mass_g is None:
        return ""
    return QCoreApplication.translate("MeantInstead", "Was {mass} meant?").format(mass=others[mass_g])
