"""The third layout: what became of printed sheets, where somebody says so without printing anew.

A copy of the table as it was then, on purpose: the program's own may move on.
"""

from __future__ import annotations

from typing import Any

import sqlalchemy as sa
from alembic import op

from calibrator.records.migrations.append_only import guard

revision = "0003"
down_revision = "0002"


def upgrade() -> None:
    """Make the new table and its guard; nothing that was kept is touched."""
    op.create_table(
        "sheet_endings",
        sa.Column("id", sa.Text(), nullable=False),
        sa.Column("change", sa.Integer(), nullable=False),
        sa.Column("farm_id", sa.Text(), nullable=False),
        sa.Column("print_id", sa.Text(), nullable=False),
        sa.Column("ending", sa.Text(), nullable=False),
        sa.Column("at", _moment(), nullable=False),
        sa.Column("by", sa.Text(), nullable=False),
        sa.PrimaryKeyConstraint("id", name="pk_sheet_endings"),
        sa.ForeignKeyConstraint(["change"], ["changes.number"], name="fk_sheet_endings_change"),
        sa.ForeignKeyConstraint(["farm_id"], ["things.id"], name="fk_sheet_endings_farm_id"),
        sa.ForeignKeyConstraint(["print_id"], ["prints.id"], name="fk_sheet_endings_print_id"),
    )
    guard(op.get_bind(), ["sheet_endings"])


def _moment() -> sa.types.TypeEngine[Any]:
    return sa.DateTime(timezone=True).with_variant(sa.Text(), "sqlite")
