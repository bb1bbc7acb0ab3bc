"""The door: `calibrator` opens the desk."""

from __future__ import annotations

import argparse
import gc
import sys
from collections.abc import Sequence
from contextlib import suppress
from importlib import import_module
from types import ModuleType
from typing import NoReturn

from calibrator import __version__
from calibrator.later import put_off

UNUSED = {"asyncio": ("iscoroutine",), "importlib.metadata": ()}
"""What SQLAlchemy loads for ways of working that are not ours, with the functions that it takes out of it."""


def main(arguments: Sequence[str] | None = None) -> int:
    """Read the command line and open the desk. Returns the exit code."""
    options = _parser().parse_args(arguments)
    if options.install_desktop_entry or options.remove_desktop_entry:
        return _change_entry(options.install_desktop_entry)
    if options.demo and (options.file or options.records):
        print("--demo opens records of its own: leave the other records away.", file=sys.stderr)
        return 2
    if options.file and options.records:
        print("Name the records once: as a file, or after --records.", file=sys.stderr)
        return 2
    try:
        desk = load_desk()
    except ImportError as error:
        print(_missing_library(error), file=sys.stderr)
        return 2
    if options.demo:
        return _run_demo(desk)
    return int(desk.run(options.file or options.records or ""))


def load_desk() -> ModuleType:
    """Load what the first page needs, the quick way; the desk ends it by `desk.app.settle` once the page is up."""
    # Loading makes much and throws away little: collecting meanwhile is a tenth of the start.
    gc.disable()
    with put_off(UNUSED):
        import_module("sqlalchemy.dialects.sqlite")
    # PySide6 looks at every import that comes after it, so what needs no window goes first.
    for name in ("calibrator.records", "calibrator.science.mark", "calibrator.science.weighing", "calibrator.units"):
        import_module(name)
    _read_no_sources()
    return import_module("calibrator.desk.app")


def _read_no_sources() -> None:
    """PySide6 reads the source of every module for one line that asks it for other names; no module here has it.

    Reading takes a fiftieth of the start, and the texts would be held as long as the program runs: 15 MB.
    """
    with suppress(ImportError):  # a part of PySide6 that is not for others: without it the start is slower, no more
        import_module("PySide6.QtCore")
        vars(import_module("shibokensupport.feature"))["_mod_uses_pyside"] = _uses_no_feature


def _uses_no_feature(_module: ModuleType) -> bool:
    return False


def _run_demo(desk: ModuleType) -> int:
    import tempfile

    from calibrator.records import demo_records

    with tempfile.TemporaryDirectory(prefix="calibrator-demo-") as folder:
        records = demo_records(folder)
        return int(desk.run(records.url, records=records))


def _change_entry(install: bool) -> int:
    from calibrator.desktop_entry import install_entry, remove_entry

    if not sys.platform.startswith("linux"):
        print("Only desktops on Linux take such an entry; see DEVELOPERS.md for the others.", file=sys.stderr)
        return 2
    try:
        paths = install_entry() if install else remove_entry()
    except OSError as error:
        print(f"The desktop entry could not be changed: {error.strerror} ({error.filename}).", file=sys.stderr)
        return 1
    print(*paths, sep="\n") if paths else print("There was no desktop entry of this program.")
    return 0


class _Parser(argparse.ArgumentParser):
    """Says in a sentence what it does not know."""

    def error(self, message: str) -> NoReturn:
        told = message[:1].upper() + message[1:]
        self.exit(2, f"{told}. Nothing was opened. ‘calibrator --help’ names what it takes.\n")


def _parser() -> argparse.ArgumentParser:
    parser = _Parser(
        prog="calibrator",
        usage="calibrator [options] [FILE]",
        description="Weigh scoops of milk replacer, draw their lines, print their batch tables.",
        allow_abbrev=False,
    )
    parser.add_argument("file", metavar="FILE", nargs="?", help="use the records in this file")
    parser.add_argument("--demo", action="store_true", help="open a throw-away copy of an invented farm's season")
    parser.add_argument("--records", metavar="URL", help="use this store: a file's path, or a database URL")
    entry = parser.add_mutually_exclusive_group()
    entry.add_argument("--install-desktop-entry", action="store_true", help="put the program into the desktop's menu")
    entry.add_argument("--remove-desktop-entry", action="store_true", help="take it out of the menu again")
    parser.add_argument("--version", action="version", version=f"calibrator {__version__}")
    return parser


def _missing_library(error: ImportError) -> str:
    return (
        f"The window's libraries could not be loaded ({error}). On Linux, install the "
        "system packages named in the README under 'Packages that Linux may lack', then start again."
    )


if __name__ == "__main__":
    sys.exit(main())
