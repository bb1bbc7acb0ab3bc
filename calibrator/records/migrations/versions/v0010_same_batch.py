"""The tenth layout: whether a check read a batch again. Of those that are there nobody was asked, and they say so."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0010"
down_revision = "0009"


def upgrade() -> None:
    """Add a column; nothing that was kept is touched."""
    op.add_column("mix_checks", sa.Column("same_batch_as", sa.Text()))
