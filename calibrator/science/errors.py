"""What `science` answers to nonsense."""

from __future__ import annotations


class CannotCompute(ValueError):
    """The input cannot be meant; the message is a sentence that a farmer understands."""
