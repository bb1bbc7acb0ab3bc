"""Triggers by which the database itself refuses to change or remove what was kept."""

from __future__ import annotations

from collections.abc import Iterable

from sqlalchemy import Connection

_REFUSAL = "records are only ever added to"


def guard(connection: Connection, tables: Iterable[str]) -> None:
    """Refuse UPDATE and DELETE (and TRUNCATE, where there is one) on these tables from now on."""
    if connection.dialect.name == "postgresql":
        connection.exec_driver_sql(
            "CREATE OR REPLACE FUNCTION refuse_change() RETURNS trigger LANGUAGE plpgsql AS "
            f"$$ BEGIN RAISE EXCEPTION '{_REFUSAL}'; END $$"
        )
    for table in tables:
        for statement in _statements(connection.dialect.name, table):
            connection.exec_driver_sql(statement)


def _statements(dialect: str, table: str) -> list[str]:
    if dialect == "postgresql":
        return [
            f"CREATE TRIGGER {table}_only_added BEFORE UPDATE OR DELETE OR TRUNCATE ON {table} "
            "FOR EACH STATEMENT EXECUTE FUNCTION refuse_change()"
        ]
    return [
        f"CREATE TRIGGER {table}_never_{verb.lower()}d BEFORE {verb} ON {table} "
        f"BEGIN SELECT RAISE(ABORT, '{_REFUSAL}'); END"
        for verb in ("UPDATE", "DELETE")
    ]
