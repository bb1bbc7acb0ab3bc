"""Records on a server, as a person names them, and what is found there before anything is changed."""

from __future__ import annotations

from sqlalchemy import URL, Connection, func, make_url, select, text
from sqlalchemy.exc import ArgumentError

from calibrator.model import Farm
from calibrator.records.engine import make_engine
from calibrator.records.errors import RecordsReadOnly, RecordsTooNew, told
from calibrator.records.opening import layout
from calibrator.records.place import Place, place_of
from calibrator.records.tables import NOUNS, SCHEMA
from calibrator.values import dataclass

USUAL_PORT = 5432
HIGHEST_PORT = 65535


@dataclass(frozen=True)
class ServerAddress:
    """Where a server's records are; never with a password.

    `computer` is its name or number, or the folder of a socket on this computer; `options` are PostgreSQL's own
    connection options, such as `sslmode`, that came with a whole address.
    """

    computer: str
    database: str
    user: str
    port: int = USUAL_PORT
    options: tuple[tuple[str, str], ...] = ()

    @property
    def url(self) -> str:
        """The address as `--records` takes it, without a password."""
        return _url(self, None).render_as_string(hide_password=False)

    @property
    def name(self) -> str:
        """As people are shown it."""
        return place_of(self.url).name

    def with_password(self, password: str) -> str:
        """The address with a password, for opening only: never keep or show it. Blank means the one kept."""
        return _url(self, password or None).render_as_string(hide_password=False)


def address_of(url: str) -> tuple[ServerAddress, str] | None:
    """The address in a URL and the password in it (or ""); None for what is no address of a server."""
    try:
        found = make_url(url.strip())
        port = found.port or USUAL_PORT
    except (ArgumentError, ValueError):
        return None
    if found.get_backend_name() not in ("postgresql", "postgres"):
        return None
    query = {name: value for name, value in found.query.items() if isinstance(value, str)}
    computer = found.host or query.pop("host", "")
    port = int(asked) if (asked := query.pop("port", "")).isdecimal() else port
    options = tuple(sorted(query.items()))
    address = ServerAddress(computer, found.database or "", found.username or "", port, options)
    return address, str(found.password or "")


@dataclass(frozen=True)
class FoundThere:
    """What a server's database holds: its layout (None: nothing yet), and how many farms."""

    layout: int | None
    farms: int

    @property
    def empty(self) -> bool:
        """Whether there is nothing that could be mixed up with other records."""
        return self.farms == 0

    @property
    def older(self) -> bool:
        """Whether the tables would be brought up to date by opening them."""
        return self.layout is not None and self.layout < SCHEMA


def look_there(address: ServerAddress, password: str = "") -> FoundThere:
    """See what a server's database holds; nothing is changed. May take seconds: not for the screen's own thread.

    Raises `RecordsUnreachable`, `RecordsTooNew`, `RecordsDamaged` for another program's tables, `RecordsReadOnly`
    where the user may not set records up, or `RecordsError` where the driver is not installed.
    """
    place = place_of(address.with_password(password))
    engine = make_engine(place, read_only=True)
    try:
        with told(place.name), engine.connect() as connection:
            return _found(connection, place, address)
    finally:
        engine.dispose()


def _found(connection: Connection, place: Place, address: ServerAddress) -> FoundThere:
    found = layout(connection)
    if found is None:
        if not connection.execute(text("SELECT has_schema_privilege(current_schema(), 'CREATE')")).scalar():
            raise RecordsReadOnly("no_create", place=place.name, user=address.user)
        return FoundThere(None, 0)
    if found > SCHEMA:
        raise RecordsTooNew("too_new", place=place.name, found=str(found), known=str(SCHEMA))
    farms = connection.execute(select(func.count(func.distinct(NOUNS[Farm].c.id)))).scalar()
    return FoundThere(found, int(farms or 0))


def _url(address: ServerAddress, password: str | None) -> URL:
    socket = address.computer.startswith("/")
    query = dict(address.options) | ({"host": address.computer} if socket else {})
    usual = address.port == USUAL_PORT
    if socket and not usual:
        query["port"] = str(address.port)
    return URL.create(
        "postgresql",
        address.user or None,
        password,
        None if socket else address.computer or None,
        None if socket or usual else address.port,
        address.database or None,
        query,
    )
