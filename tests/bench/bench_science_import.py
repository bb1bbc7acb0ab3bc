"""How long the science room takes to import beside numpy alone.

`python tests/bench/bench_science_import.py` starts fresh interpreters in turn and prints the ratios of the
quickest of each: the package as a screen's first page loads it, and every module in it together.
"""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path
from time import perf_counter

SCIENCE = Path(__file__).parents[2] / "calibrator" / "science"
ROUNDS = 15


def seconds(statement: str) -> float:
    start = perf_counter()
    subprocess.run([sys.executable, "-c", statement], check=True, cwd=SCIENCE.parents[1])
    return perf_counter() - start


def main() -> None:
    modules = sorted(f"calibrator.science.{p.stem}" for p in SCIENCE.glob("*.py") if p.stem != "__init__")
    statements = {
        "numpy": "import numpy",
        "calibrator.science": "import calibrator.science",
        f"numpy and all {len(modules)} modules of calibrator.science": "import numpy, " + ", ".join(modules),
    }
    best = dict.fromkeys(statements, float("inf"))
    for _ in range(ROUNDS):
        for name, statement in statements.items():
            best[name] = min(best[name], seconds(statement))
    for name, took in best.items():
        print(f"import {name}: {took * 1e3:.0f} ms, {took / best['numpy']:.2f} x numpy")


if __name__ == "__main__":
    main()
