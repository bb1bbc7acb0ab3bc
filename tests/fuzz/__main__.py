"""Over a million inputs, guided by coverage: `python -m tests.fuzz [--share 1.0] [--seed 1]`. Writes RESULTS.md here.

Needs the fuzzer: `pip install atheris` (Linux and macOS). It is no part of the test extra: the normal run feeds the
same targets from hypothesis (`tests/fuzz/test_fuzz_targets.py`). An input that a target does not stand is left in the
folder that is named, and its end is printed.
"""

from __future__ import annotations

import argparse
import re
import subprocess
import sys
import tempfile
import time
from pathlib import Path

from tests.fuzz.targets import TARGETS

RUNS = {
    "typed": 350_000,
    "day": 100_000,
    "scale_line": 300_000,
    "change": 200_000,
    "import_file": 45_000,
    "records_file": 5_000,
    "foreign_text": 160_000,
    "foreign_book": 40_000,
}
RESULTS = Path(__file__).with_name("RESULTS.md")


def main() -> int:
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--share", type=float, default=1.0, help="this part of the inputs")
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--only", choices=sorted(RUNS), help="this target alone; no results are written")
    asked = parser.parse_args()
    folder = tempfile.mkdtemp(prefix="calibrator-fuzz-")
    lines, failed = [], False
    for name, most in RUNS.items():
        if asked.only not in (None, name):
            continue
        runs = int(most * asked.share)
        began = time.monotonic()
        words = [sys.executable, "-m", "tests.fuzz.one", name, str(runs), str(asked.seed), folder]
        ended = subprocess.run(words, capture_output=True, text=True, check=False)
        told = re.search(r"runs (\d+) accepted (\d+)", ended.stdout)
        if ended.returncode or told is None:
            failed = True
            print(f"{name}: FAILED, the input is in {folder}\n{ended.stdout[-2000:]}{ended.stderr[-3000:]}")
            continue
        about = (TARGETS[name].__doc__ or "").splitlines()[0]
        lines.append(f"| {name} | {about} | {int(told[1]):,} | {int(told[2]):,} | 0 |")
        print(f"{name}: {told[1]} inputs, {told[2]} accepted, {time.monotonic() - began:.0f} s", flush=True)
    if not failed and asked.share == 1 and not asked.only:
        RESULTS.write_text(_report(lines, asked.seed), "utf-8")
    return int(failed)


def _report(lines: list[str], seed: int) -> str:
    total = sum(RUNS.values())
    head = f"# {total:,} inputs against every parser\n\n"
    head += f"`python -m tests.fuzz --seed {seed}`, guided by coverage. A finding is "
    head += "a traceback, a text taken\notherwise "
    head += "than the oracle in `targets.py` takes it, or one that takes longer than 20 s.\n\n"
    head += "| target | what is read | inputs | accepted | findings |\n| --- | --- | ---: | ---: | ---: |\n"
    return head + "\n".join(lines) + "\n"


if __name__ == "__main__":
    sys.exit(main())
