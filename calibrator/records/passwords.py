"""The password of a server, from where the computer keeps secrets; never from a file of this program.

An address without a password takes it from the system's keyring, entry `calibrator` under the address as `account_of`
tells it. Where that knows none, the server's own library looks into its password file (mode 600, `~/.pgpass` or
PGPASSFILE; PostgreSQL's manual, "The Password File").
"""

from __future__ import annotations

from sqlalchemy import URL

SERVICE = "calibrator"


def with_password(url: URL) -> URL:
    """The address with the password that the keyring knows for it; unchanged where there is one or none is known."""
    if url.password is not None:
        return url
    known = _from_keyring(account_of(url))
    return url.set(password=known) if known else url


def account_of(url: URL) -> str:
    """What the keyring calls it: `name@computer:port/database`, the port only where one is told."""
    port = f":{url.port}" if url.port else ""
    return f"{url.username or ''}@{url.host or 'localhost'}{port}/{url.database or ''}"


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
