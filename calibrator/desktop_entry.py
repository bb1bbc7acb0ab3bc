"""The program in the desktop's menu: an entry, icons, and what it is, where the XDG specifications keep a user's own.

Sources: freedesktop.org, Desktop Entry Specification 1.5; Icon Theme Specification 0.13; XDG Base Directory 0.8;
AppStream 1.0.
"""

from __future__ import annotations

import os
import shutil
import sys
from pathlib import Path

from calibrator.places import resource

NAME = "calibrator"
ICON_SIZES = (16, 24, 32, 48, 64, 128, 256, 512)


def install_entry() -> list[Path]:
    """Put entry, icons and description where the user's data are; gives what was written. Raises OSError."""
    written = []
    for source, target in _copies():
        target.parent.mkdir(parents=True, exist_ok=True)
        shutil.copyfile(source, target)
        written.append(target)
    entry = _entry()
    entry.parent.mkdir(parents=True, exist_ok=True)
    entry.write_text(entry_text(program()), "utf-8")
    return [*written, entry]


def remove_entry() -> list[Path]:
    """Take away what `install_entry` wrote; gives what was there. Raises OSError."""
    there = [path for path in (*(target for _, target in _copies()), _entry()) if path.exists()]
    for path in there:
        path.unlink()
    return there


def entry_text(command: str) -> str:
    """The entry, starting the program by its full path: menus do not search where a person's shell does."""
    lines = resource(f"desktop/{NAME}.desktop").read_text("utf-8").splitlines()
    known = {"Exec": f"{_quoted(command)} %f", "TryExec": command.replace("\\", "\\\\")}
    return "".join(f"{_told(line, known)}\n" for line in lines)


def program() -> str:
    """The program that was started, by its full path."""
    started = sys.executable if getattr(sys, "frozen", False) else sys.argv[0]
    if Path(started).name == "__main__.py":
        started = str(Path(sys.executable).with_name(NAME))
    return str(Path(shutil.which(started) or started).absolute())


def _told(line: str, known: dict[str, str]) -> str:
    key, equals, _ = line.partition("=")
    return f"{key}={known[key]}" if equals and key in known else line


def _quoted(command: str) -> str:
    """An argument of `Exec`: what the specification reserves is escaped, for the string and for the quotes."""
    for sign in ("\\", '"', "`", "$"):
        command = command.replace(sign, "\\" + sign)
    return f'"{command}"'.replace("\\", "\\\\").replace("%", "%%")


def _data_home() -> Path:
    told = os.environ.get("XDG_DATA_HOME", "")
    return Path(told) if Path(told).is_absolute() else Path.home() / ".local" / "share"


def _entry() -> Path:
    return _data_home() / "applications" / f"{NAME}.desktop"


def _copies() -> list[tuple[Path, Path]]:
    about = f"{NAME}.metainfo.xml"
    theme = _data_home() / "icons" / "hicolor"
    sized = [
        (resource(f"desktop/{NAME}_{size}.png"), theme / f"{size}x{size}" / "apps" / f"{NAME}.png")
        for size in ICON_SIZES
    ]
    drawn = resource(f"desktop/{NAME}.svg"), theme / "scalable" / "apps" / f"{NAME}.svg"
    return [*sized, drawn, (resource(f"desktop/{about}"), _data_home() / "metainfo" / about)]
