"""The tables. Their columns follow the fields of the nouns; migrations/ holds the history of both.

Everything is only ever added, and triggers refuse anything else. Each write is one row of `changes` (who,
when, why); its number orders all that was ever kept, so that no order rests on a clock. `things` names what
exists; a table of a noun holds the tellings of it, each naming the one it replaces, at most once.
"""

from __future__ import annotations

from datetime import date, datetime
from enum import StrEnum
from types import NoneType, UnionType
from typing import Any, Union, get_args, get_origin

from sqlalchemy import (
    Boolean,
    Column,
    Date,
    Double,
    ForeignKey,
    Index,
    Integer,
    MetaData,
    Table,
    Text,
    UniqueConstraint,
)
from sqlalchemy.types import TypeEngine

from calibrator.model import (
    BagCount,
    Farm,
    FeederTrial,
    Fill,
    Instrument,
    InstrumentCheck,
    Lot,
    Mark,
    MixCheck,
    Plan,
    Printed,
    ReferenceMix,
    Scale,
    Scoop,
    SheetEnding,
    SignOff,
    SpotFill,
    TrialFill,
    Vessel,
    WeighIn,
)
from calibrator.records.columns import Moment, Nested, Word
from calibrator.records.plain import hints

SCHEMA = 8
"""The version of the tables that this program writes; the newest migration has the same number."""

metadata = MetaData(
    naming_convention={
        "ix": "ix_%(table_name)s_%(column_0_name)s",
        "uq": "uq_%(table_name)s_%(column_0_name)s",
        "fk": "fk_%(table_name)s_%(column_0_name)s",
        "pk": "pk_%(table_name)s",
    }
)

changes = Table(
    "changes",
    metadata,
    Column("number", Integer, primary_key=True, autoincrement=False),
    Column("at", Moment, nullable=False),
    Column("by", Text, nullable=False),
    Column("why", Text, nullable=False),
    Column("what", Text, nullable=False),
)

things = Table(
    "things",
    metadata,
    Column("id", Text, primary_key=True),
    Column("kind", Text, nullable=False),
    Column("change", ForeignKey("changes.number"), nullable=False),
)

_REFERS = {
    **dict.fromkeys(("farm_id", "lot_id", "scoop_id", "scale_id", "plan_id", "vessel_id"), "things.id"),
    "instrument_id": "things.id",
    "weigh_in_id": "things.id",
    "trial_id": "things.id",
    "replaces_id": "things.id",
    "sign_off_id": "sign_offs.id",
    "print_id": "prints.id",
    "scoop_revision": "scoops.revision",
    "scale_revision": "scales.revision",
    "lot_revision": "lots.revision",
}
_PLAIN: dict[Any, TypeEngine[Any]] = {
    str: Text(),
    float: Double(),
    int: Integer(),
    bool: Boolean(),
    date: Date(),
    datetime: Moment(),
}


def _type(hint: Any) -> tuple[TypeEngine[Any], bool]:
    """The column type for a field, and whether it may be unknown."""
    options = get_args(hint) if get_origin(hint) in (Union, UnionType) else (hint,)
    known = [option for option in options if option is not NoneType]
    optional = len(known) < len(options)
    if len(known) > 1:
        return Nested(hint), optional
    if known[0] in _PLAIN:
        return _PLAIN[known[0]], optional
    if isinstance(known[0], type) and issubclass(known[0], StrEnum):
        return Word(known[0]), optional
    return Nested(hint), optional


def _column(name: str, hint: Any) -> Column[Any]:
    kind, optional = _type(hint)
    if name in _REFERS:
        return Column(name, kind, ForeignKey(_REFERS[name]), nullable=optional)
    return Column(name, kind, nullable=optional)


def _noun(name: str, kind: type) -> Table:
    columns = [_column(field, hint) for field, hint in hints(kind).items() if field not in ("id", "revision")]
    return Table(
        name,
        metadata,
        Column("revision", Text, primary_key=True),
        Column("id", Text, ForeignKey("things.id"), nullable=False, index=True),
        Column("replaces", Text, ForeignKey(f"{name}.revision"), unique=True),
        Column("change", ForeignKey("changes.number"), nullable=False),
        *columns,
    )


def _fact(name: str, kind: type, *extra: Any) -> Table:
    columns = [_column(field, hint) for field, hint in hints(kind).items() if field not in ("id", "struck_reason")]
    return Table(
        name,
        metadata,
        Column("id", Text, primary_key=True),
        Column("change", ForeignKey("changes.number"), nullable=False),
        *columns,
        *extra,
    )


def _strikes(name: str, of: str) -> Table:
    return Table(
        name,
        metadata,
        Column("change", ForeignKey("changes.number"), primary_key=True, autoincrement=False),
        Column("of_id", Text, ForeignKey(f"{of}.id"), nullable=False, index=True),
        Column("reason", Text),
    )


NOUNS: dict[type, Table] = {
    Farm: _noun("farms", Farm),
    Scale: _noun("scales", Scale),
    Scoop: _noun("scoops", Scoop),
    Lot: _noun("lots", Lot),
    WeighIn: _noun("weigh_ins", WeighIn),
    Vessel: _noun("vessels", Vessel),
    Plan: _noun("plans", Plan),
    Instrument: _noun("instruments", Instrument),
    InstrumentCheck: _noun("instrument_checks", InstrumentCheck),
    ReferenceMix: _noun("reference_mixes", ReferenceMix),
    MixCheck: _noun("mix_checks", MixCheck),
    BagCount: _noun("bag_counts", BagCount),
    FeederTrial: _noun("feeder_trials", FeederTrial),
}
"""The table of each noun."""

fills = _fact("fills", Fill, Index(None, "weigh_in_id"))
spot_fills = _fact("spot_fills", SpotFill, Index(None, "lot_id"))
trial_fills = _fact("trial_fills", TrialFill, Index(None, "trial_id"))
fill_strikes = _strikes("fill_strikes", "fills")
spot_strikes = _strikes("spot_strikes", "spot_fills")
trial_strikes = _strikes("trial_strikes", "trial_fills")
sign_offs = _fact("sign_offs", SignOff, UniqueConstraint("weigh_in_id"))
marks = _fact("marks", Mark, Column("position", Integer, nullable=False), Index(None, "sign_off_id"))
prints = _fact("prints", Printed, UniqueConstraint("farm_id", "number"))
sheet_endings = _fact("sheet_endings", SheetEnding)

fingerprints = Table(
    "fingerprints",
    metadata,
    Column("sign_off_id", Text, ForeignKey("sign_offs.id"), primary_key=True),
    Column("farm_id", Text, ForeignKey("things.id"), nullable=False),
    Column("number", Integer, nullable=False),
    Column("previous", Text, nullable=False),
    Column("sha256", Text, nullable=False),
    Column("taken_later", Moment),
    UniqueConstraint("farm_id", "number"),
)
"""The chain over the sign-offs of each farm, see `fingerprints.py`."""

FACTS: dict[type, Table] = {
    Fill: fills,
    SpotFill: spot_fills,
    TrialFill: trial_fills,
    SignOff: sign_offs,
    Mark: marks,
    Printed: prints,
    SheetEnding: sheet_endings,
}
"""The table of each fact."""
