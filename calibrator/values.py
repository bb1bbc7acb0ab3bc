"""The standard library's `dataclass`, with what frozen ones share written once: how they compare, hash, print, refuse
to be changed. Only how one is made is compiled for each class.

The library compiles all of this anew for each class; with more than a hundred classes on the way to the first page
that was a sixth of the start (tests/bench/bench_start.py). They do the same, and type checkers see the library's.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from dataclasses import dataclass
else:
    import dataclasses
    import sys
    from operator import attrgetter

    def dataclass(cls=None, /, *, frozen=False, eq=True, repr=True, order=False, **options):
        """As `dataclasses.dataclass`; a frozen one takes neither `InitVar` nor `field(init=False)`."""

        def make(cls):
            if not frozen or not eq or not repr or order:
                return dataclasses.dataclass(cls, frozen=frozen, eq=eq, repr=repr, order=order, **options)
            own = set(vars(cls))
            made = dataclasses.dataclass(cls, init=False, eq=False, repr=False, **options)
            _share(made, own)
            return made

        return make if cls is None else make(cls)

    def _share(made, own):
        """Give a class what it shares, but what it wrote itself."""
        fields = dataclasses.fields(made)
        made._compared = staticmethod(_read([field.name for field in fields if field.compare]))
        made._printed = tuple(field.name for field in fields if field.repr)
        shared = {"__eq__": _equal, "__hash__": _hash, "__repr__": _print}
        shared |= {"__init__": _made_by(made), "__setattr__": _set, "__delattr__": _delete}
        for name, method in shared.items():
            if name not in own or (name == "__hash__" and "__eq__" in own and vars(made)[name] is None):
                setattr(made, name, method)

    def _read(names):
        if len(names) > 1:
            return attrgetter(*names)
        return lambda value: tuple(getattr(value, name) for name in names)

    def _made_by(kind):
        """How one of this class is made: a function of its own, as one for all would take several times as long."""
        known = {"__set__": object.__setattr__, "__new__": object()}  # named as no field is
        taken, by_name, lines = ["self"], [], []
        for field in dataclasses.fields(kind):
            name = told = value = field.name
            if field.default is not dataclasses.MISSING:
                known[f"__{name}__"] = field.default
                told = f"{name}=__{name}__"
            elif field.default_factory is not dataclasses.MISSING:
                known[f"__{name}__"] = field.default_factory
                told = f"{name}=__new__"
                value = f"__{name}__() if {name} is __new__ else {name}"
            (by_name if field.kw_only else taken).append(told)
            lines.append(f"__set__(self, {name!r}, {value})")
        if hasattr(kind, "__post_init__"):
            lines.append("self.__post_init__()")
        if by_name:
            taken += ["*", *by_name]
        text = f"def within({', '.join(known)}):\n def __init__({', '.join(taken)}):\n  "
        text += "\n  ".join(lines or ["pass"]) + "\n return __init__"
        compiled = {}
        exec(text, vars(sys.modules[kind.__module__]), compiled)  # where the names of its hints are known
        made_by = compiled["within"](*known.values())
        made_by.__qualname__ = f"{kind.__qualname__}.__init__"
        made_by.__annotations__ = {field.name: field.type for field in dataclasses.fields(kind)} | {"return": None}
        return made_by

    def _set(self, name, value):
        if _frozen(self, name):
            raise dataclasses.FrozenInstanceError(f"cannot assign to field {name!r}")
        object.__setattr__(self, name, value)

    def _delete(self, name):
        if _frozen(self, name):
            raise dataclasses.FrozenInstanceError(f"cannot delete field {name!r}")
        object.__delattr__(self, name)

    def _frozen(value, name):
        """All that a value holds; of a plain child of its class, what it has from there."""
        return "__dataclass_fields__" in vars(type(value)) or name in value.__dataclass_fields__

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
