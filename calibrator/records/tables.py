"""The tables as they are asked. Their columns follow the fields of the nouns; migrations/ holds the history of both,
and `layout` the keys and bonds that a file is made with.

Everything is only ever added, and triggers refuse anything else. Each write is one row of `changes` (who,
when, why); its number orders all that was ever kept, so that no order rests on a clock. `things` names what
exists; a table of a noun holds the tellings of it, each naming the one it replaces, at most once.
"""

from __future__ import annotations

from datetime import date, datetime
from enum import StrEnum
from types import NoneType, UnionType
from typing import Any, Union, get_args, get_origin

from sqlalchemy import Boolean, ColumnClause, Date, Double, Integer, TableClause, Text, column, table
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

SCHEMA = 11
"""The version of the tables that this program writes; the newest migration has the same number."""

changes = table(
    "changes",
    column("number", Integer),
    column("at", Moment),
    column("by", Text),
    column("why", Text),
    column("what", Text),
)

things = table("things", column("id", Text), column("kind", Text), column("change", Integer))

_PLAIN: dict[Any, TypeEngine[Any]] = {
    str: Text(),
    float: Double(),
    int: Integer(),
    bool: Boolean(),
    date: Date(),
    datetime: Moment(),
}


def _type(hint: Any) -> TypeEngine[Any]:
    """The column type for a field."""
    options = get_args(hint) if get_origin(hint) in (Union, UnionType) else (hint,)
    known = [option for option in options if option is not NoneType]
    if len(known) > 1:
        return Nested(hint)
    if known[0] in _PLAIN:
        return _PLAIN[known[0]]
    if isinstance(known[0], type) and issubclass(known[0], StrEnum):
        return Word(known[0])
    return Nested(hint)


def _fields(kind: type, *left_out: str) -> list[ColumnClause[Any]]:
    return [column(name, _type(hint)) for name, hint in hints(kind).items() if name not in left_out]


def _noun(name: str, kind: type) -> TableClause:
    telling = column("revision", Text), column("id", Text), column("replaces", Text), column("change", Integer)
    return table(name, *telling, *_fields(kind, "id", "revision"))


def _fact(name: str, kind: type, *extra: ColumnClause[Any]) -> TableClause:
    return table(name, column("id", Text), column("change", Integer), *_fields(kind, "id", "struck_reason"), *extra)


def _strikes(name: str) -> TableClause:
    return table(name, column("change", Integer), column("of_id", Text), column("reason", Text))


NOUNS: dict[type, TableClause] = {
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

fills = _fact("fills", Fill)
spot_fills = _fact("spot_fills", SpotFill)
trial_fills = _fact("trial_fills", TrialFill)
fill_strikes = _strikes("fill_strikes")
sign_offs = _fact("sign_offs", SignOff)
marks = _fact("marks", Mark, column("position", Integer))
prints = _fact("prints", Printed)
sheet_endings = _fact("sheet_endings", SheetEnding)

fingerprints = table(
    "fingerprints",
    column("sign_off_id", Text),
    column("farm_id", Text),
    column("number", Integer),
    column("previous", Text),
    column("sha256", Text),
    column("taken_later", Moment),
)
"""The chain over the sign-offs of each farm, see `fingerprints.py`."""

FACTS: dict[type, TableClause] = {
    Fill: fills,
    SpotFill: spot_fills,
    TrialFill: trial_fills,
    SignOff: sign_offs,
    Mark: marks,
    Printed: prints,
    SheetEnding: sheet_endings,
}
"""The table of each fact."""

STRIKES: dict[type, TableClause] = {
    Fill: fill_strikes,
    SpotFill: _strikes("spot_strikes"),
    TrialFill: _strikes("trial_strikes"),
}
"""Which fills were struck out, and taken back in."""
