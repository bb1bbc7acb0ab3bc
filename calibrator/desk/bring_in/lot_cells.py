"""What the cells of a foreign table's row tell of its lot: how each is read, and where it goes."""

from __future__ import annotations

from dataclasses import replace
from datetime import date
from typing import Any

from calibrator.desk.bring_in import cells
from calibrator.desk.bring_in.choices import Choices
from calibrator.desk.bring_in.meanings import PERCENTS, Meaning
from calibrator.model import Lot
from calibrator.records.foreign.table import Value
from calibrator.units import Quantity

_LEAST_SHARE_PCT = 1.0


def readers(today: date, currency: str) -> dict[Meaning, cells.Reader]:
    """A reader for each meaning that tells of a lot, its number apart."""

    def day(cell: Value, column: int, asked: Choices) -> date:
        return cells.day(cell, column, asked, today)

    def price(cell: Value, column: int, asked: Choices) -> float:
        return cells.price(cell, column, asked, currency)

    return {
        **dict.fromkeys((Meaning.PRODUCT, Meaning.SUPPLIER, Meaning.PLANT), _text),
        **dict.fromkeys((Meaning.ARRIVED, Meaning.MADE, Meaning.FED_FROM, Meaning.FINISHED), day),
        **dict.fromkeys(PERCENTS, cells.percent),
        **dict.fromkeys((Meaning.PROTEIN, Meaning.FAT), _large_share),
        **dict.fromkeys((Meaning.MEDICATED, Meaning.AGGLOMERATED), cells.yes),
        Meaning.PACKAGE: cells.package,
        Meaning.PACKAGES: cells.count,
        Meaning.PACKAGE_MASS: cells.mass,
        Meaning.PRICE: price,
        Meaning.NOTE: cells.note,
    }


def with_told(lot: Lot, meaning: Meaning, value: Any) -> Lot:
    """The lot with what a cell of this meaning told."""
    if meaning in PERCENTS:
        return replace(lot, composition=replace(lot.composition, **{meaning: value}))
    if meaning is Meaning.PACKAGE_MASS:
        return replace(lot, package_mass_g=value.value, package_mass_typed=as_typed(value))
    if meaning is Meaning.PRICE:
        return replace(lot, price_per_package=value, price_typed=f"{value:.12g}")
    return replace(lot, **{meaning: value})


def as_typed(quantity: Quantity) -> str:
    """As a person would have typed it: with the unit of its column where the cell told none."""
    return f"{quantity.typed} {quantity.unit}" if quantity.bare else quantity.typed


def _text(cell: Value, _column: int, _asked: Choices) -> str:
    return cells.words(cell)


def _large_share(cell: Value, column: int, asked: Choices) -> float:
    """Protein or fat: below one percent a fraction of 1 is meant."""
    return cells.percent(cell, column, asked, _LEAST_SHARE_PCT)
