"""The history of the tables, by Alembic: versions/ holds one step per layout version, numbered from 1."""
