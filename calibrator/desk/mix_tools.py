"""What the records say of the instruments: their newest checks, and the farm's own line. No window."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime

from calibrator.model import (
    Farm,
    Instrument,
    InstrumentCheck,
    InstrumentCheckKind,
    InstrumentKind,
    Lot,
    ReferenceMix,
)
from calibrator.records import Records
from calibrator.science.mix_density import Hydrometer, water_shows_sg
from calibrator.science.own_line import Line, Reference, farm_line, reference_solids
from calibrator.science.refractometer import KNOWN_DAYS, ZERO_DAYS, Checked, Refractometer, brix
from calibrator.science.thermometer import UNKNOWN_DIVISION_C, Thermometer, ice_offset_c
from calibrator.values import dataclass

UNKNOWN_DIVISION = 0.2  # of a refractometer that is not entered yet
_DAY_S = 86_400.0


@dataclass(frozen=True)
class Tools:
    """The farm's instruments in use, their checks and reference mixes that count, oldest first."""

    instruments: tuple[Instrument, ...]
    checks: tuple[InstrumentCheck, ...]
    references: tuple[ReferenceMix, ...]
    products: dict[str, str]  # lot → product

    def of(self, kind: InstrumentKind) -> list[Instrument]:
        return [tool for tool in self.instruments if tool.kind is kind]

    def find(self, instrument_id: str) -> Instrument | None:
        return next((tool for tool in self.instruments if tool.id == instrument_id), None)

    def newest(self, instrument_id: str, kind: InstrumentCheckKind, at: datetime) -> InstrumentCheck | None:
        """The last check of a kind that was made by then."""
        found = [c for c in self.checks if (c.instrument_id, c.kind) == (instrument_id, kind) and c.at <= at]
        return max(found, key=_when) if found else None


def _when(check: InstrumentCheck) -> float:
    return check.at.timestamp()


def read_tools(records: Records, farm: Farm) -> Tools:
    """Read all that the records hold of instruments."""
    lots = records.every(Lot, farm.id)
    return Tools(
        tuple(tool for tool in records.every(Instrument, farm.id) if tool.retired_on is None),
        tuple(check for check in records.every(InstrumentCheck, farm.id) if check.counts),
        tuple(mix for mix in records.every(ReferenceMix, farm.id) if mix.counts),
        {lot.id: lot.product.strip().casefold() for lot in lots},
    )


def _checked(check: InstrumentCheck | None, at: datetime) -> Checked | None:
    if check is None:
        return None
    days = max(0.0, (at - check.at).total_seconds() / _DAY_S)
    return Checked(check.expected, check.reading, days, check.temperature_c)


def refractometer(tools: Tools, instrument_id: str, at: datetime) -> Refractometer:
    """A refractometer as it was known by then; one that is not entered is taken for unchecked."""
    tool = tools.find(instrument_id)
    if tool is None:
        return Refractometer(UNKNOWN_DIVISION)
    water = tools.newest(instrument_id, InstrumentCheckKind.WATER, at)
    known = tools.newest(instrument_id, InstrumentCheckKind.KNOWN, at)
    division = tool.division or UNKNOWN_DIVISION
    return Refractometer(division, tool.compensated, _checked(water, at), _checked(known, at))


def hydrometer(tools: Tools, instrument_id: str, at: datetime) -> Hydrometer:
    """A hydrometer as it was known by then."""
    tool = tools.find(instrument_id)
    if tool is None:
        return Hydrometer()
    found = tools.newest(instrument_id, InstrumentCheckKind.WATER, at)
    water = _checked(found, at)
    offset = found.reading - should_show(tool, found) if found else None
    overdue = bool(water and water.days_ago > ZERO_DAYS)
    return Hydrometer(tool.reference_c, tool.division or Hydrometer.division, offset, overdue)


def should_show(tool: Instrument, check: InstrumentCheck) -> float:
    """What a sound instrument would have shown at a check: a hydrometer in plain water by the reference temperature
    that it is known to have now, which may have been corrected since."""
    if tool.kind is not InstrumentKind.HYDROMETER or check.temperature_c is None:
        return check.expected
    return water_shows_sg(Hydrometer(tool.reference_c), check.temperature_c)


def thermometer(tools: Tools, instrument_id: str, at: datetime) -> Thermometer:
    """A thermometer as it was known by then; one that is not entered is taken for unchecked."""
    tool = tools.find(instrument_id)
    if tool is None:
        return Thermometer()
    ice = _checked(tools.newest(instrument_id, InstrumentCheckKind.KNOWN, at), at)
    offset = ice_offset_c(ice.expected, ice.reading) if ice else None
    return Thermometer(tool.division or UNKNOWN_DIVISION_C, offset, bool(ice and ice.days_ago > KNOWN_DAYS))


def references_for(tools: Tools, lot_id: str, instrument_id: str) -> list[ReferenceMix]:
    """The reference mixes of this product read with this instrument; without a product those of the lot."""
    product = tools.products.get(lot_id, "")

    def same(mix: ReferenceMix) -> bool:
        return mix.lot_id == lot_id or (bool(product) and tools.products.get(mix.lot_id, "") == product)

    return [mix for mix in tools.references if mix.instrument_id == instrument_id and same(mix)]


def own_line(tools: Tools, mixes: Sequence[ReferenceMix]) -> Line:
    """The farm's own line through these. Raises CannotCompute where they make none."""
    return farm_line([reference(tools, mix) for mix in mixes])


def reference(tools: Tools, mix: ReferenceMix) -> Reference:
    """A reference mix as a point of the line, with the zero as it was known then."""
    read = brix(mix.readings_brix, refractometer(tools, mix.instrument_id, mix.at), mix.temperature_c)
    return Reference(reference_solids(mix.powder_g, mix.water_g), read.value)
