"""Eight simulated hours by a robot: `python -m tests.robot [--hours 8] [--seed 1]`. Writes RESULTS.md beside this."""

from __future__ import annotations

import argparse
import os
import sys
import tempfile
from collections.abc import Callable
from pathlib import Path

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

from calibrator.desk.app import make_application
from calibrator.desk.tongues import Tongue
from tests.robot.day import Count, Day, spend

RESULTS = Path(__file__).with_name("RESULTS.md")
MOST_GROWTH = 0.05


def main() -> int:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--hours", type=float, default=8.0)
    parser.add_argument("--seed", type=int, default=1)
    asked = parser.parse_args()
    Tongue(make_application(["robot"])).speak("en")
    with tempfile.TemporaryDirectory(prefix="calibrator-robot-") as folder:
        day = spend(asked.hours, asked.seed, Path(folder))
    text = report(day, asked.hours, asked.seed)
    print(text)
    if asked.hours == 8:
        RESULTS.write_text(text, "utf-8")
    sound = not day.errors and day.memory_growth < MOST_GROWTH and day.after.windows == 1
    return 0 if sound and day.after.timers <= day.before.timers else 1


def report(day: Day, hours: float, seed: int) -> str:
    """The day in a table."""
    rows: list[tuple[str, Callable[[Count], str]]] = [
        ("memory, MB", lambda told: f"{told.memory_mb:.1f}"),
        ("windows", lambda told: str(told.windows)),
        ("ticking timers", lambda told: str(told.timers)),
        ("widgets", lambda told: str(told.widgets)),
    ]
    lines = [f"| {name} | {of(day.before)} | {of(day.after)} |" for name, of in rows]
    kinds = ", ".join(f"{times} {name.strip('_').replace('_', ' ')}" for name, times in day.by_kind.items())
    head = f"# A robot's day of {hours:g} hours\n\n`python -m tests.robot --seed {seed}`: {day.actions} actions by "
    head += f"chance\n({kinds}).\n\n"
    table = "| | after a quarter | at the end |\n| --- | ---: | ---: |\n" + "\n".join(lines)
    end = f"\n\nAt most {day.most_memory_mb:.1f} MB were held in between ({100 * day.memory_growth:+.1f} %); "
    end += f"errors: {len(day.errors)}.\n"
    return head + table + end + "".join(f"- {error}\n" for error in dict.fromkeys(day.errors))


if __name__ == "__main__":
    sys.exit(main())
