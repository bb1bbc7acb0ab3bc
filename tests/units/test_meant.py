"""What is offered in place of a text that was refused can be taken there. No outside source: our own rule."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calibrator.model import UnitSystem
from calibrator.units import Kind, NotUnderstood, read

FARM, METRIC = UnitSystem.FARM, UnitSystem.METRIC
OFFERED = ("meant", "one", "other")


def refused(text: str, kind: Kind, **limits: float) -> NotUnderstood:
    with pytest.raises(NotUnderstood) as caught:
        read(text, kind, FARM, **limits)  # type: ignore[arg-type]
    return caught.value


def offers(problem: NotUnderstood) -> list[str]:
    return [problem.params[name] for name in OFFERED if name in problem.params]


@pytest.mark.parametrize(
    ("text", "offered"),
    [
        ("35/8", ["3 5/8 in"]),
        ("35/8 in", ["3 5/8 in"]),
        ("101/4", ["10 1/4 in"]),
        ("113/16", ["1 13/16 in", "11 3/16 in"]),
        ("4/4", []),
        ("10 15/4", []),
    ],
)
def test_a_space_forgotten_before_a_fraction_is_seen(text: str, offered: list[str]) -> None:
    problem = refused(text, Kind.LENGTH)
    assert offers(problem) == offered
    assert all(one in str(problem) for one in offered)


def test_what_would_be_too_much_itself_is_not_offered() -> None:
    assert offers(refused("113/16", Kind.LENGTH, highest=60.0)) == ["1 13/16 in"]
    assert offers(refused("35/8", Kind.LENGTH, highest=60.0)) == []


@pytest.mark.parametrize(
    ("text", "kind", "lowest", "highest", "offered"),
    [
        ("0.251 lb", Kind.MASS, 200.0, 5000.0, ["0.251 kg"]),
        ("25 g", Kind.MASS, 1000.0, 100_000.0, ["25 lb"]),
        ("35", Kind.LENGTH, 1.0, 100.0, ["35 mm"]),
        ("60", Kind.TEMPERATURE, 30.0, 95.0, ["60 °C"]),
        ("1 lb 3 oz", Kind.MASS, 5000.0, 9000.0, []),
        ("0.001 g", Kind.MASS, 500.0, 100_000.0, []),
    ],
)
def test_another_unit_is_offered_where_the_number_fits_with_it(
    text: str, kind: Kind, lowest: float, highest: float, offered: list[str]
) -> None:
    assert offers(refused(text, kind, lowest=lowest, highest=highest)) == offered


def test_the_units_of_the_farm_come_first() -> None:
    with pytest.raises(NotUnderstood) as caught:
        read("25 g", Kind.MASS, METRIC, lowest=1000.0, highest=100_000.0)
    assert offers(caught.value) == ["25 kg"]


def test_without_a_limit_of_its_own_a_field_offers_no_unit() -> None:
    assert offers(refused("200000000", Kind.MASS)) == []


@given(
    number=st.one_of(
        st.decimals(0, 99999, places=3).map(str),
        st.tuples(st.integers(1, 999), st.sampled_from((2, 4, 8, 16, 32, 64))).map("{0[0]}/{0[1]}".format),
    ),
    unit=st.sampled_from(("", "oz", "lb", "g", "kg")),
    system=st.sampled_from(UnitSystem),
    lowest=st.floats(0.1, 1000.0),
    times=st.floats(2.0, 1000.0),
)
def test_what_is_offered_is_accepted(number: str, unit: str, system: UnitSystem, lowest: float, times: float) -> None:
    limits = {"lowest": lowest, "highest": lowest * times}
    try:
        read(f"{number} {unit}", Kind.MASS, system, **limits)  # type: ignore[arg-type]
    except NotUnderstood as problem:
        for text in offers(problem):
            assert lowest <= read(text, Kind.MASS, system, **limits).value <= lowest * times  # type: ignore[arg-type]
