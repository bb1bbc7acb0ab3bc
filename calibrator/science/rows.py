"""Rows that are worked out when they are looked at: a table of thousands costs what is seen of it."""

from __future__ import annotations

from abc import abstractmethod
from collections.abc import Iterator, Sequence
from typing import TypeVar, overload

Row = TypeVar("Row", covariant=True)


class Rows(Sequence[Row]):
    """Subclasses tell how many there are and work one out."""

    @abstractmethod
    def _row(self, index: int) -> Row: ...

    @overload
    def __getitem__(self, index: int) -> Row: ...
    @overload
    def __getitem__(self, index: slice) -> list[Row]: ...
    def __getitem__(self, index: int | slice) -> Row | list[Row]:
        if isinstance(index, slice):
            return [self._row(at) for at in range(*index.indices(len(self)))]
        return self._row(range(len(self))[index])

    def __iter__(self) -> Iterator[Row]:
        return (self._row(at) for at in range(len(self)))
