"""The second layout: instruments with their checks, reference mixes, checks of the mix, counts of bags.

A copy of the tables as they were then, on purpose: the program's own may move on.
"""

from __future__ import annotations

from typing import Any

import sqlalchemy as sa
from alembic import op

from calibrator.records.migrations.append_only import guard

revision = "0002"
down_revision = "0001"


def upgrade() -> None:
    """Make the new tables and their guards; nothing that was kept is touched."""
    new = _tables()
    new[0].metadata.create_all(op.get_bind(), tables=new)
    guard(op.get_bind(), sorted(table.name for table in new))


def _moment() -> sa.types.TypeEngine[Any]:
    return sa.DateTime(timezone=True).with_variant(sa.Text(), "sqlite")


def _json() -> sa.types.TypeEngine[Any]:
    return sa.JSON(none_as_null=True)


def _tables() -> list[sa.Table]:
    metadata = sa.MetaData(
        naming_convention={
            "ix": "ix_%(table_name)s_%(column_0_name)s",
            "uq": "uq_%(table_name)s_%(column_0_name)s",
            "fk": "fk_%(table_name)s_%(column_0_name)s",
            "pk": "pk_%(table_name)s",
        }
    )
    # Named so that the new tables can refer to them; they are there already.
    sa.Table("changes", metadata, sa.Column("number", sa.Integer(), primary_key=True))
    sa.Table("things", metadata, sa.Column("id", sa.Text(), primary_key=True))

    def noun(name: str, *own: sa.schema.SchemaItem) -> sa.Table:
        return sa.Table(
            name,
            metadata,
            sa.Column("revision", sa.Text(), primary_key=True),
            sa.Column("id", sa.Text(), sa.ForeignKey("things.id"), nullable=False, index=True),
            sa.Column("replaces", sa.Text(), sa.ForeignKey(f"{name}.revision"), unique=True),
            sa.Column("change", sa.Integer(), sa.ForeignKey("changes.number"), nullable=False),
            sa.Column("farm_id", sa.Text(), sa.ForeignKey("things.id"), nullable=False),
            *own,
        )

    instruments = noun(
        "instruments",
        sa.Column("name", sa.Text(), nullable=False),
        sa.Column("kind", sa.Text(), nullable=False),
        sa.Column("division", sa.Double(), nullable=False),
        sa.Column("division_typed", sa.Text(), nullable=False),
        sa.Column("compensated", sa.Boolean(), nullable=False),
        sa.Column("reference_c", sa.Double(), nullable=False),
        sa.Column("reference_typed", sa.Text(), nullable=False),
        sa.Column("volume_ml", sa.Double()),
        sa.Column("volume_u_ml", sa.Double(), nullable=False),
        sa.Column("volume_typed", sa.Text(), nullable=False),
        sa.Column("retired_on", sa.Date()),
    )
    instrument_checks = noun(
        "instrument_checks",
        sa.Column("instrument_id", sa.Text(), sa.ForeignKey("things.id"), nullable=False),
        sa.Column("kind", sa.Text(), nullable=False),
        sa.Column("expected", sa.Double(), nullable=False),
        sa.Column("reading", sa.Double(), nullable=False),
        sa.Column("typed", sa.Text(), nullable=False),
        sa.Column("at", _moment(), nullable=False),
        sa.Column("by", sa.Text(), nullable=False),
        sa.Column("temperature_c", sa.Double()),
        sa.Column("temperature_typed", sa.Text(), nullable=False),
        sa.Column("withdrawn_reason", sa.Text(), nullable=False),
    )
    reference_mixes = noun(
        "reference_mixes",
        sa.Column("lot_id", sa.Text(), sa.ForeignKey("things.id"), nullable=False),
        sa.Column("instrument_id", sa.Text(), sa.ForeignKey("things.id"), nullable=False),
        sa.Column("powder_g", sa.Double(), nullable=False),
        sa.Column("powder_typed", sa.Text(), nullable=False),
        sa.Column("water_g", sa.Double(), nullable=False),
        sa.Column("water_typed", sa.Text(), nullable=False),
        sa.Column("readings_brix", _json(), nullable=False),
        sa.Column("readings_typed", sa.Text(), nullable=False),
        sa.Column("at", _moment(), nullable=False),
        sa.Column("by", sa.Text(), nullable=False),
        sa.Column("temperature_c", sa.Double()),
        sa.Column("temperature_typed", sa.Text(), nullable=False),
        sa.Column("withdrawn_reason", sa.Text(), nullable=False),
    )
    mix_checks = noun(
        "mix_checks",
        sa.Column("at", _moment(), nullable=False),
        sa.Column("lot_id", sa.Text(), sa.ForeignKey("things.id"), nullable=False),
        sa.Column("readings", _json(), nullable=False),
        sa.Column("target_share", sa.Double(), nullable=False),
        sa.Column("target_typed", sa.Text(), nullable=False),
        sa.Column("tolerance_share", sa.Double(), nullable=False),
        sa.Column("tolerance_typed", sa.Text(), nullable=False),
        sa.Column("by", sa.Text(), nullable=False),
        sa.Column("feeder", sa.Text(), nullable=False),
        sa.Column("plan_id", sa.Text(), sa.ForeignKey("things.id")),
        sa.Column("group_name", sa.Text(), nullable=False),
        sa.Column("calves", sa.Integer(), nullable=False),
        sa.Column("vessel_id", sa.Text(), sa.ForeignKey("things.id")),
        sa.Column("solids_share", sa.Double()),
        sa.Column("solids_low", sa.Double()),
        sa.Column("solids_high", sa.Double()),
        sa.Column("way", sa.Text(), nullable=False),
        sa.Column("verdict", sa.Text(), nullable=False),
        sa.Column("note", sa.Text(), nullable=False),
        sa.Column("program_version", sa.Text(), nullable=False),
        sa.Column("withdrawn_reason", sa.Text(), nullable=False),
    )
    bag_counts = noun(
        "bag_counts",
        sa.Column("lot_id", sa.Text(), sa.ForeignKey("things.id"), nullable=False),
        sa.Column("since", sa.Date(), nullable=False),
        sa.Column("at", _moment(), nullable=False),
        sa.Column("bags", sa.Double(), nullable=False),
        sa.Column("bags_typed", sa.Text(), nullable=False),
        sa.Column("bag_mass_g", sa.Double(), nullable=False),
        sa.Column("bag_mass_typed", sa.Text(), nullable=False),
        sa.Column("feedings", sa.Integer(), nullable=False),
        sa.Column("target_mass_g", sa.Double(), nullable=False),
        sa.Column("target_typed", sa.Text(), nullable=False),
        sa.Column("sharp", sa.Boolean(), nullable=False),
        sa.Column("feedings_per_day", sa.Integer(), nullable=False),
        sa.Column("by", sa.Text(), nullable=False),
        sa.Column("withdrawn_reason", sa.Text(), nullable=False),
    )
    return [instruments, instrument_checks, reference_mixes, mix_checks, bag_counts]
