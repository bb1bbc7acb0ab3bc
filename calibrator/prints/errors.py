"""What a print may have to refuse."""

from __future__ import annotations


class DoesNotFit(ValueError):
    """A print cannot be made legible and at true scale; the message says why and what to do."""
