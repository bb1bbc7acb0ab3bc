"""Reads the copies of NIST StRD data sets kept in data/ (a work of the US Government, in the public domain)."""

from __future__ import annotations

import re
from pathlib import Path

DATA = Path(__file__).parent / "data"


def _lines(name: str) -> list[str]:
    return (DATA / f"{name}.dat").read_text(encoding="ascii").splitlines()


def pairs(name: str) -> list[tuple[float, float]]:
    """The data rows: (treatment, response) of an analysis of variance, (y, x) of a regression."""
    lines = _lines(name)
    span = next(re.search(r"lines (\d+) to (\d+)", line) for line in lines if re.match(r"\s*Data\s.*lines", line))
    assert span is not None
    rows = lines[int(span[1]) - 1 : int(span[2])]
    return [(float(a), float(b)) for a, b in (row.split() for row in rows if row.strip())]


def groups(name: str) -> list[list[float]]:
    """The responses by treatment."""
    found: dict[float, list[float]] = {}
    for treatment, response in pairs(name):
        found.setdefault(treatment, []).append(response)
    return list(found.values())


def certified(name: str) -> tuple[list[float], list[float]]:
    """(df, sum of squares, mean square, F) between and (df, sum of squares, mean square) within."""
    lines = _lines(name)
    rows = [line for line in lines if re.match(r"(Between|Within) ", line)]
    between, within = ([float(x) for x in re.findall(r"\d[\d.]*(?:E[+-]\d+)?", row)] for row in rows[:2])
    return between, within
