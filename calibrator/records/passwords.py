"""The password of a server, from where the computer keeps secrets; never in a file of this program.

An address without a password takes it from the system's keyring, entry `calibrator` under the address as `account_of`
tells it. Where that knows none, the server's own library looks into its password file (mode 600, `~/.pgpass` or
PGPASSFILE; PostgreSQL's manual, "The Password File"). A password typed on screen is kept in the first of the two that
takes it.
"""

from __future__ import annotations

import os
import sys
from contextlib import suppress
from pathlib import Path
from typing import Any

from sqlalchemy import URL, make_url

from calibrator.records.errors import RecordsReadOnly

SERVICE = "calibrator"
USUAL_PORT = 5432


def with_password(url: URL) -> URL:
    """The address with the password that the keyring knows for it; unchanged where there is one or none is known."""
    if url.password is not None:
        return url
    known = _from_keyring(account_of(url))
    return url.set(password=known) if known else url


def keep_password(address: str, password: str) -> str:
    """Keep a password where the computer keeps secrets; gives the password file, or "" for the system's keyring.

    Raises `RecordsReadOnly` where neither takes it.
    """
    url = make_url(address)
    if _into_keyring(account_of(url), password):
        return ""
    file = password_file()
    try:
        _into_file(file, url, password)
    except OSError:
        raise RecordsReadOnly("no_password_file", place=str(file)) from None
    return str(file)


def account_of(url: URL) -> str:
    """What the keyring calls it: `name@computer:port/database`, the port only where one is told."""
    port = f":{url.port}" if url.port else ""
    return f"{url.username or ''}@{url.host or 'localhost'}{port}/{url.database or ''}"


def password_file() -> Path:
    """Where PostgreSQL's library looks for passwords on this computer."""
    if named := os.environ.get("PGPASSFILE"):
        return Path(named)
    if sys.platform == "win32":
        return Path(os.environ.get("APPDATA", "")) / "postgresql" / "pgpass.conf"
    return Path.home() / ".pgpass"


def _from_keyring(account: str) -> str | None:
    try:
        import keyring
    except ImportError:  # it is never required
        return None
    try:
        found: str | None = keyring.get_password(SERVICE, account)
    except Exception:  # a locked or broken keyring is as none: the server then says that a password is missing
        return None
    return found


def _into_keyring(account: str, password: str) -> bool:
    """Whether the keyring holds it now: some take everything and give nothing back."""
    with suppress(Exception):  # none, a locked or a broken one
        import keyring

        keyring.set_password(SERVICE, account, password)
    if _from_keyring(account) == password:
        return True
    with suppress(Exception):
        keyring.delete_password(SERVICE, account)  # an older one there would come before the password file
    return False


def _into_file(file: Path, url: URL, password: str) -> None:
    """Put the line first, because the first that fits counts; whole or not at all, for its owner alone."""
    line = ":".join(_escaped(part) for part in (*_fits(url), password))
    old = file.read_text("utf-8").splitlines() if file.exists() else []
    ours = ":".join(map(_escaped, _fits(url))) + ":"
    kept = [line, *(one for one in old if not one.startswith(ours))]
    file.parent.mkdir(parents=True, exist_ok=True)
    fresh = file.with_name(f"{file.name}.new")
    fresh.unlink(missing_ok=True)
    with os.fdopen(os.open(fresh, os.O_WRONLY | os.O_CREAT | os.O_EXCL, 0o600), "w", encoding="utf-8") as written:
        written.write("\n".join(kept) + "\n")
        written.flush()
        os.fsync(written.fileno())
    os.replace(fresh, file)


def _fits(url: URL) -> tuple[str, ...]:
    """Computer, port, database and user, as the library compares them."""
    query: dict[str, Any] = dict(url.query)
    computer, port = url.host or query.get("host", "localhost"), url.port or query.get("port", USUAL_PORT)
    return str(computer), str(port), url.database or "", url.username or ""


def _escaped(part: str) -> str:
    return part.replace("\\", "\\\\").replace(":", "\\:")
