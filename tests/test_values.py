"""`calibrator.values.dataclass` against the standard library's: the same classes made by both behave alike."""

from __future__ import annotations

import ast
import copy
import dataclasses
import inspect
import pickle
from collections.abc import Callable
from functools import partial
from itertools import product
from pathlib import Path
from typing import Any, get_type_hints

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calibrator import values
from calibrator.model import Farm

ROOT = Path(__file__).parents[1]
MAKERS = (dataclasses.dataclass, values.dataclass)


def several(maker: Any) -> tuple[type, ...]:
    """Classes of every shape, made by one of the two."""

    @maker(frozen=True)
    class Empty:
        pass

    @maker(frozen=True)
    class One:
        a: Any

    @maker(frozen=True)
    class Two:
        a: Any
        b: Any = 0

    @maker(frozen=True, kw_only=True)
    class Hidden(Two):
        c: Any = dataclasses.field(default=1, compare=False)
        d: Any = dataclasses.field(default=2, repr=False)

    @maker(frozen=True)
    class Own:
        a: Any
        b: Any = 0

        def __eq__(self, other: object) -> bool:
            return isinstance(other, Own) and self.a == other.a

        def __repr__(self) -> str:
            return f"own {self.a}"

    @maker(frozen=True)
    class OwnHash(Two):
        def __hash__(self) -> int:
            return 7

    @maker(frozen=True, order=True)
    class Ordered:
        a: Any
        b: Any = 0

    @maker(frozen=True, eq=False)
    class Itself:
        a: Any
        b: Any = 0

    @maker(frozen=True)
    class Listed:
        a: Any
        b: Any = dataclasses.field(default_factory=dict)

        def __post_init__(self) -> None:
            vars(self)["twice"] = (self.a, self.a)

    @maker
    class Open:
        a: Any
        b: Any = 0

    return Empty, One, Two, Hidden, Own, OwnHash, Ordered, Itself, Listed, Open


PAIRS = list(zip(several(dataclasses.dataclass), several(values.dataclass), strict=True))
SOME = st.one_of(st.none(), st.integers(-2, 2), st.text(max_size=2), st.floats(), st.tuples(st.integers(0, 1)))


def _made(kind: type, drawn: dict[str, Any]) -> Any:
    return kind(**{field.name: drawn[field.name] for field in dataclasses.fields(kind)})


def _hash_or_fault(value: Any) -> Any:
    try:
        return hash(value)
    except TypeError:
        return "no hash"


@pytest.mark.parametrize(("theirs", "ours"), PAIRS, ids=lambda kind: kind.__name__)
@given(st.lists(st.fixed_dictionaries(dict.fromkeys("abcd", SOME)), min_size=2, max_size=2))
def test_both_compare_hash_and_print_alike(theirs: type, ours: type, drawn: list[dict[str, Any]]) -> None:
    one, other = (_made(theirs, each) for each in drawn)
    our_one, our_other = (_made(ours, each) for each in drawn)
    assert (our_one == our_other) == (one == other)
    assert (our_one != our_other) == (one != other)
    assert repr(our_one) == repr(one)
    if "Itself" not in ours.__name__:  # its hash is its place in memory
        assert _hash_or_fault(our_one) == _hash_or_fault(one)
        copied = dataclasses.replace(our_one)
        assert (our_one == copied) == (one == dataclasses.replace(one))
        assert (copy.deepcopy(our_one) == our_one) == (copy.deepcopy(one) == one)


def test_a_child_is_not_its_parent_and_another_class_is_not_equal() -> None:
    _, _, two, hidden, *_ = several(values.dataclass)
    assert two(1, 2) != hidden(a=1, b=2)
    assert two(1, 2) != (1, 2)


def test_a_value_stays_as_it_is_and_goes_through_a_pickle() -> None:
    farm = Farm(id="f", name="Hollow Creek")
    with pytest.raises(dataclasses.FrozenInstanceError):
        farm.name = "other"  # type: ignore[misc]
    assert pickle.loads(pickle.dumps(farm)) == farm


def _came_of(do: Callable[[], Any]) -> Any:
    try:
        made = do()
    except (TypeError, AttributeError) as error:
        return type(error), str(error)
    return vars(made) if made is not None else None


@pytest.mark.parametrize(("theirs", "ours"), PAIRS, ids=lambda kind: kind.__name__)
def test_both_are_made_alike(theirs: type, ours: type) -> None:
    """By place and by name; too few, too many, an unknown one."""
    by_place = ((), (1,), (1, 2), (1, 2, 3))
    by_name: tuple[dict[str, Any], ...] = ({}, {"a": 1}, {"b": 1}, {"c": 2, "d": 3}, {"e": 4})
    for placed, named in product(by_place, by_name):
        assert _came_of(partial(ours, *placed, **named)) == _came_of(partial(theirs, *placed, **named))


def test_what_makes_one_tells_what_it_takes() -> None:
    """Tests draw nouns by it, and editors of code show it."""
    told = inspect.signature(Farm)
    assert list(told.parameters) == [field.name for field in dataclasses.fields(Farm)]
    assert {one.kind for one in told.parameters.values()} == {inspect.Parameter.KEYWORD_ONLY}
    assert get_type_hints(Farm.__init__) == get_type_hints(Farm) | {"return": type(None)}


@pytest.mark.parametrize(("theirs", "ours"), PAIRS, ids=lambda kind: kind.__name__)
def test_both_stay_as_they_are_alike(theirs: type, ours: type) -> None:
    """So does a plain child of theirs, but for what it adds."""

    def tried(kind: type) -> list[Any]:
        value = _made(kind, dict.fromkeys("abcd", 1))
        changes = [partial(setattr, value, name, 2) for name in "az"] + [partial(delattr, value, name) for name in "az"]
        return [_came_of(change) for change in changes]

    for kinds in ((theirs, ours), [type("Child", (kind,), {}) for kind in (theirs, ours)]):
        told, found = map(tried, kinds)
        assert found == told


def test_a_value_that_cannot_be_hashed_says_so() -> None:
    _, one, *_ = several(values.dataclass)
    with pytest.raises(TypeError, match="unhashable"):
        hash(one([]))


def test_every_frozen_class_of_the_program_is_made_by_it() -> None:
    """Otherwise the start grows again unseen."""
    strays = []
    for file in (ROOT / "calibrator").rglob("*.py"):
        if file.name == "values.py":
            continue
        for node in ast.walk(ast.parse(file.read_text("utf-8"))):
            if isinstance(node, ast.ImportFrom) and node.module == "dataclasses":
                strays += [file for name in node.names if name.name == "dataclass"]
    assert strays == []
