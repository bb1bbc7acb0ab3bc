"""The eighth layout: whether a farm wants to be told that no wall chart is up. Every farm that is there does."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0008"
down_revision = "0007"


def upgrade() -> None:
    """Add a column; nothing that was kept is touched."""
    op.add_column("farms", sa.Column("asks_for_charts", sa.Boolean(), nullable=False, server_default=sa.true()))
