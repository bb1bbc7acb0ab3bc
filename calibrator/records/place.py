"""Which records are meant: a file on a disk, or a database on a server."""

from __future__ import annotations

from pathlib import Path

from sqlalchemy import URL, make_url
from sqlalchemy.exc import ArgumentError

from calibrator.records.errors import RecordsError
from calibrator.records.paths import backups_folder
from calibrator.values import dataclass

# What follows is a path as it stands: a general URL parser would cut it at a question mark.
_SQLITE = "sqlite:///"


@dataclass(frozen=True)
class Place:
    """Where records are kept. `file` is None for a server; `name` is what people are shown, no password."""

    url: URL
    file: Path | None
    name: str

    @property
    def backups(self) -> Path | None:
        return backups_folder(self.file) if self.file else None


def place_of(text: str) -> Place:
    """The place that a path or URL names. Raises `RecordsError` for anything else."""
    if text.startswith(_SQLITE) or "://" not in text:
        return _file(text.removeprefix(_SQLITE))
    try:
        url = make_url(text)
    except (ArgumentError, ValueError):
        raise RecordsError("not_a_url", place=text.partition("://")[0] + "://…") from None
    if url.get_backend_name() in ("postgresql", "postgres"):
        url = url.set(drivername="postgresql+psycopg")
        return Place(url, None, _shown(url))
    raise RecordsError("not_a_url", place=_without_password(url))


def is_file(text: str) -> bool:
    """Whether a path or URL names a file on a disk; what names nothing counts as one, and is refused on opening."""
    try:
        return place_of(text).file is not None
    except RecordsError:
        return True


def name_of(text: str) -> str:
    """What people are shown for a path or URL; no password. Raises `RecordsError` for what names no records."""
    return place_of(text).name


def _file(path: str) -> Place:
    if path in ("", ":memory:") or "\x00" in path:
        raise RecordsError("not_a_url", place=path.replace("\x00", "…"))
    # The file itself, not a link to it: its lock must be the same by whatever name it is opened.
    file = Path(path).expanduser().resolve()
    return Place(URL.create("sqlite", database=str(file)), file, str(file))


def _without_password(url: URL) -> str:
    return url.set(query={}).render_as_string(hide_password=True)


def _shown(url: URL) -> str:
    """A server's address as a person would write it: the same with and without a password, or by a socket."""
    plain = URL.create("postgresql", url.username, None, url.host, url.port, url.database)
    socket = url.query.get("host", "")
    return plain.render_as_string() + (f" ({socket})" if socket and not url.host else "")
