"""Alembic runs this for each command; the connection and its transaction come from `run`."""

from alembic import context

from calibrator.records.layout import metadata

context.configure(
    connection=context.config.attributes["connection"],
    target_metadata=metadata,
    transactional_ddl=True,
)
with context.begin_transaction():
    context.run_migrations()
