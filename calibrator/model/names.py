"""Names of things."""

from uuid import uuid4


def new_id() -> str:
    """A name for a new thing, unique across computers."""
    return uuid4().hex
