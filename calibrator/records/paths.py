"""Where the records, their backups and the sample season are."""

from __future__ import annotations

from pathlib import Path

import platformdirs

from calibrator.places import sample_lots

FILE_NAME = "records.sqlite"


def data_folder() -> Path:
    """The folder for this user's records (made when records are first opened)."""
    return Path(platformdirs.user_data_dir("calibrator", appauthor=False))


def default_url() -> str:
    """The records that are opened unless others are asked for: a file in the user's data folder."""
    return f"sqlite:///{data_folder() / FILE_NAME}"


def backups_folder(file: Path) -> Path:
    """The folder beside a records file that holds its dated copies."""
    return file.with_name(f"{file.stem}-backups")


def sample_lots_folder() -> Path:
    """The invented season, in a source checkout and in an installed program alike."""
    return sample_lots()
