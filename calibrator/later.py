"""Modules that a library asks for as it is loaded, and that are loaded only when something in them is used.

SQLAlchemy loads asyncio, with sockets, TLS and the parser of e-mail, for ways of working that this program has none of:
a tenth of the time to the first page, and 5 MB.
"""

from __future__ import annotations

import sys
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from importlib import import_module
from types import ModuleType
from typing import Any


@contextmanager
def put_off(names: dict[str, tuple[str, ...]]) -> Iterator[None]:
    """What is imported in this block gets a stand-in for each of these modules, unless it is loaded already.

    Each module is named with those of its functions that are taken out of it while others load, which by itself is no
    use of it. Afterwards importing such a module gives the module, to everybody.
    """
    away = {name: _Later(name, functions) for name, functions in names.items() if name not in sys.modules}
    sys.modules.update(away)
    try:
        yield
    finally:
        for name, stand_in in away.items():
            if sys.modules.get(name) is stand_in:
                del sys.modules[name]


class _Later(ModuleType):
    """Stands for a module where it was imported: hands on whatever it is asked for."""

    def __init__(self, name: str, functions: tuple[str, ...]) -> None:
        super().__init__(name)
        for function in functions:
            setattr(self, function, _handed_on(name, function))
        parent, _, last = name.rpartition(".")
        if parent:
            setattr(sys.modules[parent], last, self)  # until the module itself takes this place

    def __getattr__(self, wanted: str) -> Any:
        if sys.modules.get(self.__name__) is self:  # used while others load: it is needed after all
            del sys.modules[self.__name__]
        return getattr(import_module(self.__name__), wanted)


def _handed_on(name: str, function: str) -> Callable[..., Any]:
    def hand_on(*given: Any, **named: Any) -> Any:
        return getattr(import_module(name), function)(*given, **named)

    return hand_on
