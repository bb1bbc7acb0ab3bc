"""The eleventh layout: of a scoop marked without a printed label a lot keeps which lines were told."""

from __future__ import annotations

revision = "0011"
down_revision = "0010"


def upgrade() -> None:
    """Change no table: an older program has only to know that it cannot read such a lot."""
