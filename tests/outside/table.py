"""All outside checks as one Markdown table: `python -m tests.outside.table` prints it and writes CHECKS.md."""

from __future__ import annotations

import json
import os
import subprocess
import sys
import tempfile
from pathlib import Path

from tests.outside.checks import ROWS_TO, TABLE

HERE = Path(__file__).parent


def collect() -> list[dict[str, str | float]]:
    """The rows of all checks, by running the check files of this folder in a run of their own."""
    with tempfile.TemporaryDirectory() as folder:
        rows = Path(folder) / "rows.jsonl"
        rows.touch()
        files = [str(path) for path in sorted(HERE.glob("test_*.py")) if path.name != "test_table.py"]
        run = subprocess.run(
            [sys.executable, "-m", "pytest", "-q", "-o", "addopts=", "-p", "no:cacheprovider", *files],
            env={**os.environ, ROWS_TO: str(rows)},
            cwd=HERE.parent.parent,
            capture_output=True,
            text=True,
            check=False,
        )
        if run.returncode:
            raise SystemExit(run.stdout + run.stderr)
        found = [json.loads(line) for line in rows.read_text(encoding="utf-8").splitlines()]
    return sorted(found, key=lambda row: (row["source"], row["quantity"], row["expected"]))


def _number(value: float) -> str:
    return f"{value:.7g}"


def markdown(rows: list[dict[str, str | float]]) -> str:
    """The table, with how many rows and sources it has."""
    sources = len({str(row["source"]).split(",")[0] for row in rows})
    lines = [
        "# Checks against published values and reference libraries",
        "",
        f"{len(rows)} checks from {sources} sources. Made by `python -m tests.outside.table` from the tests.",
        "",
        "| quantity | source | expected | computed | difference | allowed | note |",
        "| --- | --- | ---: | ---: | ---: | ---: | --- |",
    ]
    for row in rows:
        difference = float(row["computed"]) - float(row["expected"])
        # What lies below the seventh figure differs between machines.
        shown = 0.0 if abs(difference) <= 1e-7 * max(1e-3, abs(float(row["expected"]))) else difference
        lines.append(
            f"| {row['quantity']} | {row['source']} | {_number(float(row['expected']))} "
            f"| {_number(float(row['computed']))} | {shown:.2g} | {float(row['tolerance']):.2g} "
            f"| {row['note']} |"
        )
    return "\n".join(lines) + "\n"


def main() -> None:
    text = markdown(collect())
    TABLE.write_text(text, encoding="utf-8")
    sys.stdout.write(text)


if __name__ == "__main__":
    main()
