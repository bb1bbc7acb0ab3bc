"""Brings the translation files up to the code: `python -m tests.translate` (then translate, then run it again).

It gathers the words of the screens into `resources/translations/desk_*.ts`, keeps what is translated, and
compiles every .ts beside it. English holds plurals only.
"""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path

ROOT = Path(__file__).resolve().parents[1]
TRANSLATIONS = ROOT / "resources" / "translations"


def main() -> None:
    for language in ("en", "es"):
        gather(language, TRANSLATIONS / f"desk_{language}.ts")
    for source in sorted(TRANSLATIONS.glob("*.ts")):
        _run("lrelease", str(source), "-qm", str(source.with_suffix(".qm")), "-silent")


def gather(language: str, target: Path) -> None:
    """Bring one file up to what the screens say now; what is translated stays."""
    sources = sorted(str(path) for path in (ROOT / "calibrator" / "desk").rglob("*.py"))
    plurals = ["-pluralonly"] if language == "en" else []
    how = ["-target-language", language, "-no-obsolete", "-locations", "none", *plurals]
    _run("lupdate", *sources, "-ts", str(target), *how)


def _run(tool: str, *arguments: str) -> None:
    command = [str(Path(sys.executable).parent / f"pyside6-{tool}"), *arguments]
    done = subprocess.run(command, capture_output=True, text=True, check=False)
    if done.returncode != 0:
        sys.exit(done.stdout + done.stderr)


if __name__ == "__main__":
    main()
