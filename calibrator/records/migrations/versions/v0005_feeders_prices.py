"""The fifth layout: trials of feeders, where a lot came from and what it cost, how a scoop is told apart.

A copy of the new tables as they were then, on purpose: the program's own may move on. Of what is there already
the new columns know nothing, and say so.
"""

from __future__ import annotations

from typing import Any

import sqlalchemy as sa
from alembic import op

from calibrator.records.migrations.append_only import guard

revision = "0005"
down_revision = "0004"


def upgrade() -> None:
    """Add columns, then the new tables and their guards; nothing that was kept is touched."""
    for table, name in (
        ("lots", "supplier"),
        ("lots", "plant_code"),
        ("lots", "price_typed"),
        ("scoops", "told_by"),
        ("scoops", "retired_why"),
    ):
        op.add_column(table, sa.Column(name, sa.Text(), nullable=False, server_default=""))
    op.add_column("farms", sa.Column("currency", sa.Text(), nullable=False, server_default="$"))
    op.add_column("lots", sa.Column("agglomerated", sa.Boolean()))
    op.add_column("lots", sa.Column("price_per_package", sa.Double()))
    # SQLite knows no constraint added later, but one that comes with its column.
    op.execute("ALTER TABLE scoops ADD COLUMN replaces_id TEXT CONSTRAINT fk_scoops_replaces_id REFERENCES things (id)")
    _trials()
    _trial_fills()
    _trial_strikes()
    guard(op.get_bind(), ["feeder_trials", "trial_fills", "trial_strikes"])


def _moment() -> sa.types.TypeEngine[Any]:
    return sa.DateTime(timezone=True).with_variant(sa.Text(), "sqlite")


def _refers(table: str, column: str, to: str) -> sa.ForeignKeyConstraint:
    return sa.ForeignKeyConstraint([column], [to], name=f"fk_{table}_{column}")


def _trials() -> None:
    table = "feeder_trials"
    op.create_table(
        table,
        sa.Column("revision", sa.Text(), nullable=False),
        sa.Column("id", sa.Text(), nullable=False),
        sa.Column("replaces", sa.Text()),
        sa.Column("change", sa.Integer(), nullable=False),
        sa.Column("farm_id", sa.Text(), nullable=False),
        sa.Column("lot_id", sa.Text(), nullable=False),
        sa.Column("scoop_id", sa.Text(), nullable=False),
        sa.Column("scale_id", sa.Text(), nullable=False),
        sa.Column("way", sa.Text(), nullable=False),
        sa.Column("started_at", _moment(), nullable=False),
        sa.Column("line_mm", sa.Double()),
        sa.Column("line_typed", sa.Text(), nullable=False),
        sa.Column("by", sa.Text(), nullable=False),
        sa.Column("note", sa.Text(), nullable=False),
        sa.Column("closed", sa.Boolean(), nullable=False),
        sa.Column("withdrawn_reason", sa.Text(), nullable=False),
        sa.PrimaryKeyConstraint("revision", name=f"pk_{table}"),
        sa.UniqueConstraint("replaces", name=f"uq_{table}_replaces"),
        _refers(table, "replaces", f"{table}.revision"),
        _refers(table, "change", "changes.number"),
        *(_refers(table, name, "things.id") for name in ("id", "farm_id", "lot_id", "scoop_id", "scale_id")),
    )
    op.create_index(f"ix_{table}_id", table, ["id"])


def _trial_fills() -> None:
    table = "trial_fills"
    op.create_table(
        table,
        sa.Column("id", sa.Text(), nullable=False),
        sa.Column("change", sa.Integer(), nullable=False),
        sa.Column("trial_id", sa.Text(), nullable=False),
        sa.Column("person", sa.Text(), nullable=False),
        sa.Column("number", sa.Integer(), nullable=False),
        sa.Column("mass_g", sa.Double(), nullable=False),
        sa.Column("typed", sa.Text(), nullable=False),
        sa.Column("at", _moment(), nullable=False),
        sa.Column("by", sa.Text(), nullable=False),
        sa.PrimaryKeyConstraint("id", name=f"pk_{table}"),
        _refers(table, "change", "changes.number"),
        _refers(table, "trial_id", "things.id"),
    )
    op.create_index(f"ix_{table}_trial_id", table, ["trial_id"])


def _trial_strikes() -> None:
    table = "trial_strikes"
    op.create_table(
        table,
        sa.Column("change", sa.Integer(), autoincrement=False, nullable=False),
        sa.Column("of_id", sa.Text(), nullable=False),
        sa.Column("reason", sa.Text()),
        sa.PrimaryKeyConstraint("change", name=f"pk_{table}"),
        _refers(table, "change", "changes.number"),
        _refers(table, "of_id", "trial_fills.id"),
    )
    op.create_index(f"ix_{table}_of_id", table, ["of_id"])
