"""The tables as a file is made with them: keys, what refers to what, what may be unknown, by what they are looked up.

Migrations and the salvage of a damaged file go by it. What only asks the tables needs none of it, and making it takes
a twentieth of the start.
"""

from __future__ import annotations

from types import NoneType
from typing import Any, get_args

from sqlalchemy import Column, ForeignKey, Index, MetaData, Table, TableClause, UniqueConstraint

from calibrator.model import Fill, Mark, Printed, SignOff, SpotFill, TrialFill
from calibrator.records.plain import hints
from calibrator.records.tables import FACTS, NOUNS, STRIKES, changes, fingerprints, things

_REFERS = {
    **dict.fromkeys(("farm_id", "lot_id", "scoop_id", "scale_id", "plan_id", "vessel_id"), "things.id"),
    **dict.fromkeys(("instrument_id", "weigh_in_id", "trial_id", "replaces_id"), "things.id"),
    "change": "changes.number",
    "sign_off_id": "sign_offs.id",
    "print_id": "prints.id",
    "scoop_revision": "scoops.revision",
    "scale_revision": "scales.revision",
    "lot_revision": "lots.revision",
}
_MAY_LACK = {"replaces", "reason", "taken_later"}
"""What may be unknown beside the fields that may be None."""


_LOOKED_UP: dict[type, Any] = {
    Fill: Index(None, "weigh_in_id"),
    SpotFill: Index(None, "lot_id"),
    TrialFill: Index(None, "trial_id"),
    SignOff: UniqueConstraint("weigh_in_id"),
    Mark: Index(None, "sign_off_id"),
    Printed: UniqueConstraint("farm_id", "number"),
}
"""By what facts are looked up, or what there is only once."""


def _all_made() -> MetaData:
    made = MetaData(
        naming_convention={
            "ix": "ix_%(table_name)s_%(column_0_name)s",
            "uq": "uq_%(table_name)s_%(column_0_name)s",
            "fk": "fk_%(table_name)s_%(column_0_name)s",
            "pk": "pk_%(table_name)s",
        }
    )
    _make(made, changes, "number")
    _make(made, things, "id")
    for kind, asked in NOUNS.items():
        keys = UniqueConstraint("replaces"), Index(None, "id")
        _make(made, asked, "revision", *keys, kind=kind, id="things.id", replaces=f"{asked.name}.revision")
    for kind, asked in FACTS.items():
        _make(made, asked, "id", *[_LOOKED_UP[kind]] if kind in _LOOKED_UP else [], kind=kind)
    for kind, asked in STRIKES.items():
        _make(made, asked, "change", Index(None, "of_id"), of_id=f"{FACTS[kind].name}.id")
    _make(made, fingerprints, "sign_off_id", UniqueConstraint("farm_id", "number"))
    return made


def _make(made: MetaData, asked: TableClause, key: str, *extra: Any, kind: type | None = None, **refers: str) -> None:
    told = hints(kind) if kind else {}

    def whole(name: str, type_: Any) -> Column[Any]:
        there = refers.get(name, _REFERS.get(name))
        bond = [ForeignKey(there)] if there else []
        unknown = name in _MAY_LACK or NoneType in get_args(told.get(name))
        return Column(name, type_, *bond, primary_key=name == key, autoincrement=False, nullable=unknown)

    Table(asked.name, made, *(whole(column.name, column.type) for column in asked.columns), *extra)


metadata = _all_made()
