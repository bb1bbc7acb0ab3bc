"""Where the files that come with the program are: one answer for a source checkout and an installed wheel."""

from __future__ import annotations

from pathlib import Path

_PACKAGE = Path(__file__).resolve().parent
_HOMES = (_PACKAGE, _PACKAGE.parent)


def resource(name: str) -> Path:
    """The path of a file or folder under resources/, e.g. ``resource("units.txt")``.

    The wheel carries resources/ inside the package; a source checkout has it beside the package.
    Raises FileNotFoundError where neither has it.
    """
    return _carried("resources", name)


def sample_lots(name: str = "") -> Path:
    """The path of a file under sample_lots/, or the folder itself. Raises FileNotFoundError."""
    return _carried("sample_lots", name)


def _carried(folder: str, name: str) -> Path:
    for home in _HOMES:
        path = home / folder / name
        if path.exists():
            return path
    raise FileNotFoundError(f"This copy of the program lacks {folder}/{name}; install it again.")
