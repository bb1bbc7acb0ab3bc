"""What a density goes with, and when nothing can be told."""

from __future__ import annotations

import math
import random

import pytest

from calibrator.science.why import Cause, Effect, Told, why
from tests.season_rows import FIRST, lot


def of(effects: tuple[Effect, ...], cause: Cause) -> Effect:
    return next(effect for effect in effects if effect.cause is cause)


def test_humidity_is_told_for_ten_points_more() -> None:
    chance = random.Random(4)
    lots = [
        lot(n, 0.55 * math.exp(-0.01 * (h - 50) / 10 + chance.gauss(0, 0.002)), humidity_pct=h)
        for n, h in enumerate([40.0, 45, 50, 55, 60, 65, 70, 75, 80])
    ]
    found = of(why(lots), Cause.HUMIDITY)
    assert found.told is Told.SEEN
    assert found.low < -0.01 < found.high
    assert found.share == pytest.approx(-0.01, abs=0.002)
    assert len(found.points) == 9
    assert found.line[1][1] - found.line[0][1] == pytest.approx(4 * found.share)


def test_kinds_do_not_pass_for_humidity() -> None:
    """The agglomerated lots came in dry months: without kinds apart humidity would look strong."""
    chance = random.Random(3)
    heavy = [lot(n, 0.56 + chance.gauss(0, 0.005), humidity_pct=70.0 + n) for n in range(6)]
    light = [lot(6 + n, 0.47 + chance.gauss(0, 0.005), humidity_pct=40.0 + n, agglomerated=True) for n in range(6)]
    found = of(why([*heavy, *light]), Cause.HUMIDITY)
    assert found.told is Told.CANNOT_TELL


def test_narrow_about_zero_is_none_and_wide_cannot_tell() -> None:
    steady = [lot(n, 0.55 * (1 + 0.0005 * (-1) ** n), humidity_pct=40.0 + 3 * n) for n in range(12)]
    assert of(why(steady), Cause.HUMIDITY).told is Told.NONE_SEEN
    rough = [lot(n, v, humidity_pct=40.0 + 3 * n) for n, v in enumerate([0.53, 0.58, 0.55, 0.52, 0.57, 0.55])]
    assert of(why(rough), Cause.HUMIDITY).told is Told.CANNOT_TELL


def test_too_few_or_all_alike() -> None:
    few = why([lot(n, 0.55 + 0.01 * n) for n in range(4)])
    assert {effect.told for effect in few} == {Told.TOO_FEW}
    alike = why([lot(n, 0.55 + 0.001 * n, made_on=None) for n in range(8)])
    assert of(alike, Cause.HUMIDITY).told is Told.TOO_FEW
    assert (of(alike, Cause.AGE).told, of(alike, Cause.AGE).lots) == (Told.TOO_FEW, 0)
    assert of(why([]), Cause.TIME_OF_YEAR).told is Told.TOO_FEW


def test_age_counts_from_the_day_it_was_made() -> None:
    lots = [
        lot(n, 0.55 * math.exp(0.02 * age / 30), made_on=None if age is None else FIRST.date().fromordinal(
            FIRST.date().toordinal() + 20 * n - age))
        for n, age in enumerate([10, 40, 25, 60, 15, 90, 33])
    ]  # fmt: skip
    found = of(why(lots), Cause.AGE)
    assert found.share == pytest.approx(0.02)
    assert found.points[0][0] == 10.0


def test_two_plants_differ_and_three_are_judged_more_carefully() -> None:
    chance = random.Random(5)

    def made(plants: str, shift: float) -> list[object]:
        return [
            lot(n, 0.55 * math.exp(shift * (p == "B") + chance.gauss(0, 0.004)), plant_code=p)
            for n, p in enumerate(plants)
        ]

    two = of(why(made("ABABABAB", -0.03)), Cause.PLANT)  # type: ignore[arg-type]
    assert (two.told, two.pair) == (Told.SEEN, ("B", "A"))
    assert two.low < 0.03 < two.high
    three = of(why(made("ABCABCABC", 0.0)), Cause.PLANT)  # type: ignore[arg-type]
    assert three.told is not Told.SEEN
    assert set(three.levels) == {"A", "B", "C"}


def test_agglomeration_is_compared_between_all_lots() -> None:
    chance = random.Random(7)
    lots = [
        lot(n, (0.47 if n > 5 else 0.56) + chance.gauss(0, 0.004), agglomerated=n > 5, product="x" if n > 5 else "y")
        for n in range(10)
    ]
    found = of(why(lots), Cause.AGGLOMERATED)
    assert (found.told, found.pair) == (Told.SEEN, ("yes", "no"))
    assert found.share == pytest.approx(math.log(0.56 / 0.47), abs=0.02)


def test_the_time_of_year_needs_a_year_and_finds_the_crest() -> None:
    chance = random.Random(9)

    def season(lots: int) -> list[object]:
        found = []
        for n in range(lots):
            day = lot(n, 0.55).at.timetuple().tm_yday
            wave = 0.02 * math.cos(2 * math.pi * (day - 30) / 365.25)
            found.append(lot(n, 0.55 * math.exp(wave + chance.gauss(0, 0.003))))
        return found

    found = of(why(season(30)), Cause.TIME_OF_YEAR)  # type: ignore[arg-type]
    assert found.told is Told.SEEN
    assert found.peak_day == pytest.approx(30, abs=12)
    assert found.low < 0.02 < found.high
    assert of(why(season(12)), Cause.TIME_OF_YEAR).told is Told.TOO_FEW  # type: ignore[arg-type]


def test_chance_alone_is_called_an_effect_once_in_twenty() -> None:
    chance = random.Random(13)
    seen = 0
    for _ in range(200):
        lots = [lot(n, 0.55 * math.exp(chance.gauss(0, 0.015)), humidity_pct=chance.uniform(35, 80)) for n in range(12)]
        seen += of(why(lots), Cause.HUMIDITY).told is Told.SEEN
    assert seen <= 20
