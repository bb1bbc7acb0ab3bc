"""The standard library's `dataclass`, with what frozen ones share written once: how they compare, hash and print.

The library compiles these methods anew for each class; with more than a hundred classes on the way to the first page
that was a fifteenth of the start (tests/bench/bench_start.py). They do the same, and type checkers see the library's.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from dataclasses import dataclass
else:
    import dataclasses
    from operator import attrgetter

    def dataclass(cls=None, /, *, frozen=False, eq=True, repr=True, order=False, **options):
        """As `dataclasses.dataclass`, in every option."""

        def make(cls):
            shares = frozen and eq and repr and not order
            own = set(vars(cls))
            made = dataclasses.dataclass(
                cls, frozen=frozen, eq=eq and not shares, repr=repr and not shares, order=order, **options
            )
            if shares:
                _share(made, own)
            return made

        return make if cls is None else make(cls)

    def _share(made, own):
        """Give a class what it shares, but what it wrote itself."""
        fields = dataclasses.fields(made)
        made._compared = staticmethod(_read([field.name for field in fields if field.compare]))
        made._printed = tuple(field.name for field in fields if field.repr)
        for name, method in (("__eq__", _equal), ("__hash__", _hash), ("__repr__", _print)):
            if name not in own or (name == "__hash__" and "__eq__" in own and vars(made)[name] is None):
                setattr(made, name, method)

    def _read(names):
        if len(names) > 1:
            return attrgetter(*names)
        return lambda value: tuple(getattr(value, name) for name in names)

    def _equal(self, other):
        if other.__class__ is not self.__class__:
            return NotImplemented
        return self._compared(self) == self._compared(other)

    def _hash(self):
        return hash(self._compared(self))

    def _print(self):
        told = ", ".join(f"{name}={getattr(self, name)!r}" for name in self._printed)
        return f"{self.__class__.__qualname__}({told})"


__all__ = ["dataclass"]
