"""Bring the tables of a store to the newest layout, all of it or none."""

from __future__ import annotations

from pathlib import Path

from alembic import command
from alembic.config import Config
from sqlalchemy import Connection, Engine

from calibrator.records import fingerprints
from calibrator.records.engine import WRITES


def upgrade(engine: Engine, to: str = "head", *, chained: bool = True) -> None:
    """Run the missing steps in one transaction. On a failure the store is as it was.

    `chained` also gives the sign-offs from before there were fingerprints theirs.
    """
    with engine.connect().execution_options(**{WRITES: True}) as connection, connection.begin():
        command.upgrade(configuration(connection), to)
        if chained:
            fingerprints.take_missing(connection)  # after the last step: it reads the tables as they are now


def configuration(connection: Connection | None = None) -> Config:
    """Alembic's settings: this package's steps, on a connection whose transaction is the caller's."""
    config = Config()
    config.set_main_option("script_location", str(Path(__file__).parent).replace("%", "%%"))
    config.attributes["connection"] = connection
    return config
