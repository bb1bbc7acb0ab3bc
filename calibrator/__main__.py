"""The door: `calibrator` opens the desk."""

from __future__ import annotations

import argparse
import sys
import tempfile
from collections.abc import Sequence

from calibrator import __version__


def main(arguments: Sequence[str] | None = None) -> int:
    """Read the command line and open the desk. Returns the exit code."""
    options = _parser().parse_args(arguments)
    try:
        from calibrator.desk.app import run
    except ImportError as error:
        print(_missing_library(error), file=sys.stderr)
        return 2
    if options.demo:
        return _run_demo()
    from calibrator.records import default_url

    return run(options.records or default_url())


def _run_demo() -> int:
    from calibrator.desk.app import run
    from calibrator.records import demo_records

    with tempfile.TemporaryDirectory(prefix="calibrator-demo-") as folder:
        records = demo_records(folder)
        return run(records.url, records=records)


def _parser() -> argparse.ArgumentParser:
    parser = argparse.ArgumentParser(
        prog="calibrator",
        description="Weigh the scoop for a new lot of milk replacer, draw its line, print its batch table.",
    )
    parser.add_argument("--demo", action="store_true", help="open a throw-away copy of an invented farm's season")
    parser.add_argument("--records", metavar="URL", help="use this store: a file's path, or a database URL")
    parser.add_argument("--version", action="version", version=f"calibrator {__version__}")
    return parser


def _missing_library(error: ImportError) -> str:
    return (
        f"The window's libraries could not be loaded ({error}). On Linux without a desktop, install the "
        "system packages named in the README under 'Linux without a desktop', then start again."
    )


if __name__ == "__main__":
    sys.exit(main())
