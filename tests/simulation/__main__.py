"""`python -m tests.simulation [--lots N] [--seed N] [--out FILE]`: the long simulation, written as Markdown."""

from __future__ import annotations

import argparse
from pathlib import Path

from .report import report

HERE = Path(__file__).parent


def main() -> None:
    parser = argparse.ArgumentParser(prog="python -m tests.simulation", description=__doc__)
    parser.add_argument("--lots", type=int, default=20_000, help="weigh-ins per design (default 20000)")
    parser.add_argument("--seed", type=int, default=20_240, help="seed of the chance numbers")
    parser.add_argument("--out", type=Path, default=HERE / "RESULTS.md", help="where to write the tables")
    wanted = parser.parse_args()
    text = report(wanted.lots, wanted.seed)
    wanted.out.write_text(text, encoding="utf-8")
    print(text)


if __name__ == "__main__":
    main()
