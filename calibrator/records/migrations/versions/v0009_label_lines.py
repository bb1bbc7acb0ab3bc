"""The ninth layout: which lines a printed label bears. Of those that are there nobody kept it, and they say so."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0009"
down_revision = "0008"


def upgrade() -> None:
    """Add a column; nothing that was kept is touched."""
    op.add_column("prints", sa.Column("lines", sa.JSON(none_as_null=True)))
