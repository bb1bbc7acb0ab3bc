"""What `science` answers to nonsense."""

from __future__ import annotations


class CannotCompute(ValueError):
    """The input cannot be meant; `str()` is a sentence that a farmer understands.

    `sentence` is the same with its places open and `params` is what stands in them, so that it can be said in
    another language.
    """

    def __init__(self, sentence: str, **params: str) -> None:
        super().__init__(sentence.format(**params) if params else sentence)
        self.sentence = sentence
        self.params = params
