"""The seventh layout: which lot waits, the feeding of a change-over, which scoops bear a lot's line by somebody's word.

Of the lots that are there nobody was asked, and they say so; their change-overs were from a day's first feeding.
"""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0007"
down_revision = "0006"


def upgrade() -> None:
    """Add columns; nothing that was kept is touched."""
    op.add_column("lots", sa.Column("fed_from_feeding", sa.Integer(), nullable=False, server_default="0"))
    op.add_column("lots", sa.Column("waits", sa.Boolean(), nullable=False, server_default=sa.false()))
    op.add_column("lots", sa.Column("scoops_marked", sa.JSON(none_as_null=True)))
