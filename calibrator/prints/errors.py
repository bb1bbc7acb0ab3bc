"""What a print may have to refuse."""

from __future__ import annotations


class DoesNotFit(ValueError):
    """A print cannot be made legible and at true scale; the message says why and what to do.

    `sentence` is the message with its places open and `params` is what stands in them, for other languages.
    """

    def __init__(self, sentence: str, **params: str) -> None:
        super().__init__(sentence.format(**params) if params else sentence)
        self.sentence = sentence
        self.params = params
