"""The fourth layout: hot water, warmth, cold weather, rules for scoopfuls, cooling, change-over, powder left.

All of it may be unknown, so the rows that are there need nothing.
"""

from __future__ import annotations

from typing import Any

import sqlalchemy as sa
from alembic import op

revision = "0004"
down_revision = "0003"


def upgrade() -> None:
    """Add columns; nothing that was kept is touched."""
    for table, name in (
        ("farms", "hot_water"),
        ("vessels", "cooling"),
        ("plans", "scoopfuls"),
        ("plans", "warmth"),
        ("plans", "cold"),
        ("lots", "packages_left"),
    ):
        op.add_column(table, sa.Column(name, _json()))
    op.add_column("lots", sa.Column("fed_from", sa.Date()))


def _json() -> sa.types.TypeEngine[Any]:
    return sa.JSON(none_as_null=True)
