"""The sixth layout: fingerprints of the signed-off weigh-ins, each resting on the one before.

A copy of the table as it was then, on purpose: the program's own may move on. The fingerprints themselves are
taken after the newest step, because they rest on all that is told.
"""

from __future__ import annotations

from typing import Any

import sqlalchemy as sa
from alembic import op

from calibrator.records.migrations.append_only import guard

revision = "0006"
down_revision = "0005"


def upgrade() -> None:
    """Make the new table and its guard; nothing that was kept is touched."""
    op.create_table(
        "fingerprints",
        sa.Column("sign_off_id", sa.Text(), nullable=False),
        sa.Column("farm_id", sa.Text(), nullable=False),
        sa.Column("number", sa.Integer(), nullable=False),
        sa.Column("previous", sa.Text(), nullable=False),
        sa.Column("sha256", sa.Text(), nullable=False),
        sa.Column("taken_later", _moment()),
        sa.PrimaryKeyConstraint("sign_off_id", name="pk_fingerprints"),
        sa.ForeignKeyConstraint(["sign_off_id"], ["sign_offs.id"], name="fk_fingerprints_sign_off_id"),
        sa.ForeignKeyConstraint(["farm_id"], ["things.id"], name="fk_fingerprints_farm_id"),
        sa.UniqueConstraint("farm_id", "number", name="uq_fingerprints_farm_id"),
    )
    guard(op.get_bind(), ["fingerprints"])


def _moment() -> sa.types.TypeEngine[Any]:
    return sa.DateTime(timezone=True).with_variant(sa.Text(), "sqlite")
