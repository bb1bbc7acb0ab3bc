"""A PostgreSQL server of one's own: made in a folder, reached by a socket there, stopped and thrown away.

    python3 tests/records/cluster.py start FOLDER    # prints the URL for CALIBRATOR_TEST_POSTGRES
    python3 tests/records/cluster.py stop FOLDER

It needs the server's programs and nothing else; run by root it hands itself to another user, because the server
refuses root. Passwords are asked for, as on a farm's server. Writes are not synced: the data lives an hour.
"""

from __future__ import annotations

import os
import pwd
import secrets
import shutil
import subprocess
import sys
import tempfile
from pathlib import Path
from typing import Any
from urllib.parse import quote

USER = "barn"
_LONGEST_SOCKET = 90  # of the 107 characters that a socket's path may have, its own name set aside
_LONGEST_S = 120  # pg_ctl itself gives up after 60
_SETTINGS = """
listen_addresses = ''
unix_socket_directories = '{folder}'
max_connections = 200
fsync = off
full_page_writes = off
"""


class NoServer(Exception):
    """The programs of the server are not installed here."""


def programs() -> Path:
    """The folder of `initdb` and `pg_ctl`, the newest version first. Raises `NoServer` where there is none."""
    on_path = shutil.which("initdb")
    if on_path:
        return Path(on_path).resolve().parent
    versions = sorted(Path("/usr/lib/postgresql").glob("*/bin/initdb"), key=lambda path: int(path.parts[-3]))
    if not versions:
        raise NoServer("PostgreSQL's server is not installed (on Debian: apt-get install postgresql).")
    return versions[-1].parent


class Cluster:
    """A server in a folder; it can be stopped, started and dropped dead."""

    def __init__(self, folder: Path) -> None:
        self.folder = folder.resolve()
        self.data = self.folder / "data"
        self._programs = programs()

    @classmethod
    def make(cls, folder: Path | None = None) -> Cluster:
        """A new server, running. Without a folder it gets a short one of its own: sockets bear no long paths."""
        made = cls(folder or Path(tempfile.mkdtemp(prefix="pg-")))
        assert len(str(made.folder)) < _LONGEST_SOCKET, "the path of the folder is too long for a socket"
        made.folder.mkdir(parents=True, exist_ok=True)
        secret = made.folder / "password"
        secret.touch(0o600)
        secret.write_text(secrets.token_hex(12))
        if os.geteuid() == 0:
            owner = pwd.getpwnam(_other_user())
            for path in (made.folder, secret):
                os.chown(path, owner.pw_uid, owner.pw_gid)
        made._do("initdb", "-A", "scram-sha-256", "--pwfile", secret, "-U", USER, "-E", "UTF8", "--locale=C", "-N")
        with (made.data / "postgresql.conf").open("a", encoding="utf-8") as settings:
            settings.write(_SETTINGS.format(folder=made.folder))
        made.start()
        return made

    @property
    def password(self) -> str:
        return (self.folder / "password").read_text()

    @property
    def url(self) -> str:
        """Of the database that every server has."""
        return f"postgresql://{USER}:{self.password}@/postgres?host={quote(str(self.folder), safe='')}"

    def start(self) -> None:
        self._do("pg_ctl", "start", "-w", "-s", "-l", self.folder / "log")

    def stop(self, how: str = "fast") -> None:
        """`fast` ends the sessions; `immediate` is a power cut as the sessions see it."""
        self._do("pg_ctl", "stop", "-w", "-s", "-m", how)

    def remove(self) -> None:
        """Stop it if it runs, and take its folder away."""
        if (self.data / "postmaster.pid").exists():
            self.stop("immediate")
        shutil.rmtree(self.folder)

    def _do(self, program: str, *words: str | Path) -> None:
        other: dict[str, Any] = {}
        if os.geteuid() == 0:
            name = _other_user()
            other = {"user": name, "group": pwd.getpwnam(name).pw_gid, "extra_groups": []}
        command = [self._programs / program, "-D", self.data, *words]
        ended = subprocess.run(command, stdin=subprocess.DEVNULL, stdout=subprocess.DEVNULL, stderr=subprocess.PIPE,
                               text=True, cwd=self.folder, check=False, timeout=_LONGEST_S, **other)  # fmt: skip
        if ended.returncode:
            raise RuntimeError(f"{program} failed: {ended.stderr.strip()}")


def _other_user() -> str:
    """Whom root hands the server to: its own user where the package made one."""
    for name in ("postgres", "nobody"):
        try:
            return pwd.getpwnam(name).pw_name
        except KeyError:
            continue
    raise NoServer("There is no user but root to run the server.")


def main(words: list[str]) -> int:
    try:
        match words:
            case ["start", folder]:
                print(Cluster.make(Path(folder)).url)
            case ["stop", folder]:
                Cluster(Path(folder)).remove()
            case _:
                print(__doc__, file=sys.stderr)
                return 2
    except (NoServer, RuntimeError) as error:
        print(error, file=sys.stderr)
        return 1
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
