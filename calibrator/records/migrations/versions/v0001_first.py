"""The first layout: changes, things, the tellings of the nouns, the facts; nothing can be changed or removed.

A copy of the tables as they were then, on purpose: the program's own may move on.
"""

from __future__ import annotations

from typing import Any

import sqlalchemy as sa
from alembic import op

from calibrator.records.migrations.append_only import guard

revision = "0001"
down_revision = None

_APPLICATION_ID = 0x63616C62


def upgrade() -> None:
    """Make all tables and their guards."""
    tables = _tables()
    tables.create_all(op.get_bind())
    guard(op.get_bind(), sorted(tables.tables))
    if op.get_bind().dialect.name == "sqlite":
        op.execute(f"PRAGMA application_id = {_APPLICATION_ID}")


def _moment() -> sa.types.TypeEngine[Any]:
    return sa.DateTime(timezone=True).with_variant(sa.Text(), "sqlite")


def _json() -> sa.types.TypeEngine[Any]:
    return sa.JSON(none_as_null=True)


def _tables() -> sa.MetaData:
    metadata = sa.MetaData(
        naming_convention={
            "ix": "ix_%(table_name)s_%(column_0_name)s",
            "uq": "uq_%(table_name)s_%(column_0_name)s",
            "fk": "fk_%(table_name)s_%(column_0_name)s",
            "pk": "pk_%(table_name)s",
        }
    )

    def table(name: str, *parts: sa.schema.SchemaItem) -> None:
        sa.Table(name, metadata, *parts)

    table(
        "changes",
        sa.Column("number", sa.Integer(), primary_key=True, autoincrement=False),
        sa.Column("at", _moment(), nullable=False),
        sa.Column("by", sa.Text(), nullable=False),
        sa.Column("why", sa.Text(), nullable=False),
        sa.Column("what", sa.Text(), nullable=False),
    )
    table(
        "things",
        sa.Column("id", sa.Text(), primary_key=True),
        sa.Column("kind", sa.Text(), nullable=False),
        sa.Column("change", sa.Integer(), sa.ForeignKey("changes.number"), nullable=False),
    )
    table(
        "farms",
        sa.Column("revision", sa.Text(), primary_key=True),
        sa.Column("id", sa.Text(), sa.ForeignKey("things.id"), nullable=False, index=True),
        sa.Column("replaces", sa.Text(), sa.ForeignKey("farms.revision"), unique=True),
        sa.Column("change", sa.Integer(), sa.ForeignKey("changes.number"), nullable=False),
        sa.Column("name", sa.Text(), nullable=False),
        sa.Column("units", sa.Text(), nullable=False),
        sa.Column("paper", sa.Text(), nullable=False),
        sa.Column("tolerance_share", sa.Double(), nullable=False),
        sa.Column("water_step_qt", sa.Double(), nullable=False),
        sa.Column("water_step_l", sa.Double(), nullable=False),
    )
    table(
        "fills",
        sa.Column("id", sa.Text(), primary_key=True),
        sa.Column("change", sa.Integer(), sa.ForeignKey("changes.number"), nullable=False),
        sa.Column("weigh_in_id", sa.Text(), sa.ForeignKey("things.id"), nullable=False),
        sa.Column("way", sa.Text(), nullable=False),
        sa.Column("bag", sa.Integer(), nullable=False),
        sa.Column("mass_g", sa.Double(), nullable=False),
        sa.Column("typed", sa.Text(), nullable=False),
        sa.Column("by", sa.Text(), nullable=False),
        sa.Column("at", _moment(), nullable=False),
        sa.Column("scoopfuls", sa.Integer(), nullable=False),
        sa.Column("line_mm", sa.Double()),
        sa.Index(None, "weigh_in_id"),
    )
    table(
        "lots",
        sa.Column("revision", sa.Text(), primary_key=True),
        sa.Column("id", sa.Text(), sa.ForeignKey("things.id"), nullable=False, index=True),
        sa.Column("replaces", sa.Text(), sa.ForeignKey("lots.revision"), unique=True),
        sa.Column("change", sa.Integer(), sa.ForeignKey("changes.number"), nullable=False),
        sa.Column("farm_id", sa.Text(), sa.ForeignKey("things.id"), nullable=False),
        sa.Column("lot_number", sa.Text(), nullable=False),
        sa.Column("product", sa.Text(), nullable=False),
        sa.Column("made_on", sa.Date()),
        sa.Column("arrived_on", sa.Date()),
        sa.Column("package", sa.Text(), nullable=False),
        sa.Column("package_count", sa.Integer()),
        sa.Column("package_mass_g", sa.Double()),
        sa.Column("package_mass_typed", sa.Text(), nullable=False),
        sa.Column("composition", _json(), nullable=False),
        sa.Column("medicated", sa.Boolean(), nullable=False),
        sa.Column("note", sa.Text(), nullable=False),
        sa.Column("finished_on", sa.Date()),
    )
    table(
        "plans",
        sa.Column("revision", sa.Text(), primary_key=True),
        sa.Column("id", sa.Text(), sa.ForeignKey("things.id"), nullable=False, index=True),
        sa.Column("replaces", sa.Text(), sa.ForeignKey("plans.revision"), unique=True),
        sa.Column("change", sa.Integer(), sa.ForeignKey("changes.number"), nullable=False),
        sa.Column("farm_id", sa.Text(), sa.ForeignKey("things.id"), nullable=False),
        sa.Column("name", sa.Text(), nullable=False),
        sa.Column("groups", _json(), nullable=False),
        sa.Column("allowance_share", sa.Double(), nullable=False),
        sa.Column("water_temperature_c", sa.Double(), nullable=False),
        sa.Column("vessel_id", sa.Text(), sa.ForeignKey("things.id")),
        sa.Column("count_from", sa.Integer(), nullable=False),
        sa.Column("count_to", sa.Integer(), nullable=False),
        sa.Column("count_step", sa.Integer(), nullable=False),
        sa.Column("counts", _json(), nullable=False),
        sa.Column("retired_on", sa.Date()),
    )
    table(
        "scales",
        sa.Column("revision", sa.Text(), primary_key=True),
        sa.Column("id", sa.Text(), sa.ForeignKey("things.id"), nullable=False, index=True),
        sa.Column("replaces", sa.Text(), sa.ForeignKey("scales.revision"), unique=True),
        sa.Column("change", sa.Integer(), sa.ForeignKey("changes.number"), nullable=False),
        sa.Column("farm_id", sa.Text(), sa.ForeignKey("things.id"), nullable=False),
        sa.Column("name", sa.Text(), nullable=False),
        sa.Column("resolution_g", sa.Double(), nullable=False),
        sa.Column("resolution_typed", sa.Text(), nullable=False),
        sa.Column("capacity_g", sa.Double(), nullable=False),
        sa.Column("capacity_typed", sa.Text(), nullable=False),
        sa.Column("retired_on", sa.Date()),
    )
    table(
        "scoops",
        sa.Column("revision", sa.Text(), primary_key=True),
        sa.Column("id", sa.Text(), sa.ForeignKey("things.id"), nullable=False, index=True),
        sa.Column("replaces", sa.Text(), sa.ForeignKey("scoops.revision"), unique=True),
        sa.Column("change", sa.Integer(), sa.ForeignKey("changes.number"), nullable=False),
        sa.Column("farm_id", sa.Text(), sa.ForeignKey("things.id"), nullable=False),
        sa.Column("name", sa.Text(), nullable=False),
        sa.Column("shape", _json(), nullable=False),
        sa.Column("volume_ml", sa.Double(), nullable=False),
        sa.Column("volume_u_ml", sa.Double(), nullable=False),
        sa.Column("volume_from_water", sa.Boolean(), nullable=False),
        sa.Column("retired_on", sa.Date()),
    )
    table(
        "spot_fills",
        sa.Column("id", sa.Text(), primary_key=True),
        sa.Column("change", sa.Integer(), sa.ForeignKey("changes.number"), nullable=False),
        sa.Column("farm_id", sa.Text(), sa.ForeignKey("things.id"), nullable=False),
        sa.Column("lot_id", sa.Text(), sa.ForeignKey("things.id"), nullable=False),
        sa.Column("weigh_in_id", sa.Text(), sa.ForeignKey("things.id"), nullable=False),
        sa.Column("way", sa.Text(), nullable=False),
        sa.Column("mass_g", sa.Double(), nullable=False),
        sa.Column("typed", sa.Text(), nullable=False),
        sa.Column("by", sa.Text(), nullable=False),
        sa.Column("at", _moment(), nullable=False),
        sa.Column("line_mm", sa.Double()),
        sa.Index(None, "lot_id"),
    )
    table(
        "vessels",
        sa.Column("revision", sa.Text(), primary_key=True),
        sa.Column("id", sa.Text(), sa.ForeignKey("things.id"), nullable=False, index=True),
        sa.Column("replaces", sa.Text(), sa.ForeignKey("vessels.revision"), unique=True),
        sa.Column("change", sa.Integer(), sa.ForeignKey("changes.number"), nullable=False),
        sa.Column("farm_id", sa.Text(), sa.ForeignKey("things.id"), nullable=False),
        sa.Column("name", sa.Text(), nullable=False),
        sa.Column("rim_volume_ml", sa.Double(), nullable=False),
        sa.Column("rim_volume_typed", sa.Text(), nullable=False),
        sa.Column("usable_share", sa.Double(), nullable=False),
        sa.Column("shape", _json()),
        sa.Column("retired_on", sa.Date()),
    )
    table(
        "weigh_ins",
        sa.Column("revision", sa.Text(), primary_key=True),
        sa.Column("id", sa.Text(), sa.ForeignKey("things.id"), nullable=False, index=True),
        sa.Column("replaces", sa.Text(), sa.ForeignKey("weigh_ins.revision"), unique=True),
        sa.Column("change", sa.Integer(), sa.ForeignKey("changes.number"), nullable=False),
        sa.Column("farm_id", sa.Text(), sa.ForeignKey("things.id"), nullable=False),
        sa.Column("lot_id", sa.Text(), sa.ForeignKey("things.id"), nullable=False),
        sa.Column("started_at", _moment(), nullable=False),
        sa.Column("step", sa.Text(), nullable=False),
        sa.Column("by", sa.Text(), nullable=False),
        sa.Column("scoop_id", sa.Text(), sa.ForeignKey("things.id")),
        sa.Column("scale_id", sa.Text(), sa.ForeignKey("things.id")),
        sa.Column("target_mass_g", sa.Double()),
        sa.Column("target_typed", sa.Text(), nullable=False),
        sa.Column("room_humidity_pct", sa.Double()),
        sa.Column("room_temperature_c", sa.Double()),
        sa.Column("scale_zeroed", sa.Boolean(), nullable=False),
        sa.Column("check_nominal_g", sa.Double()),
        sa.Column("check_nominal_typed", sa.Text(), nullable=False),
        sa.Column("check_reading_g", sa.Double()),
        sa.Column("check_reading_typed", sa.Text(), nullable=False),
        sa.Column("old_line_mm", sa.Double()),
        sa.Column("old_line_typed", sa.Text(), nullable=False),
        sa.Column("drawn_line_mm", sa.Double()),
        sa.Column("drawn_line_typed", sa.Text(), nullable=False),
        sa.Column("abandoned", sa.Boolean(), nullable=False),
    )
    table(
        "fill_strikes",
        sa.Column("change", sa.Integer(), sa.ForeignKey("changes.number"), primary_key=True, autoincrement=False),
        sa.Column("of_id", sa.Text(), sa.ForeignKey("fills.id"), nullable=False, index=True),
        sa.Column("reason", sa.Text()),
    )
    table(
        "sign_offs",
        sa.Column("id", sa.Text(), primary_key=True),
        sa.Column("change", sa.Integer(), sa.ForeignKey("changes.number"), nullable=False),
        sa.Column("farm_id", sa.Text(), sa.ForeignKey("things.id"), nullable=False),
        sa.Column("weigh_in_id", sa.Text(), sa.ForeignKey("things.id"), nullable=False),
        sa.Column("lot_id", sa.Text(), sa.ForeignKey("things.id"), nullable=False),
        sa.Column("scoop_id", sa.Text(), sa.ForeignKey("things.id"), nullable=False),
        sa.Column("scale_id", sa.Text(), sa.ForeignKey("things.id"), nullable=False),
        sa.Column("by", sa.Text(), nullable=False),
        sa.Column("at", _moment(), nullable=False),
        sa.Column("bags", sa.Integer(), nullable=False),
        sa.Column("fills", sa.Integer(), nullable=False),
        sa.Column("level_mean_g", sa.Double(), nullable=False),
        sa.Column("level_u_g", sa.Double(), nullable=False),
        sa.Column("level_low_g", sa.Double(), nullable=False),
        sa.Column("level_high_g", sa.Double(), nullable=False),
        sa.Column("degrees_of_freedom", sa.Double(), nullable=False),
        sa.Column("density_g_per_ml", sa.Double(), nullable=False),
        sa.Column("density_u_g_per_ml", sa.Double(), nullable=False),
        sa.Column("density_low_g_per_ml", sa.Double(), nullable=False),
        sa.Column("density_high_g_per_ml", sa.Double(), nullable=False),
        sa.Column("bag_sd_share", sa.Double(), nullable=False),
        sa.Column("fill_sd_share", sa.Double(), nullable=False),
        sa.Column("settling_factor", sa.Double(), nullable=False),
        sa.Column("settling_u", sa.Double(), nullable=False),
        sa.Column("verdict", sa.Text(), nullable=False),
        sa.Column("old_line_verdict", sa.Text(), nullable=False),
        sa.Column("scoop_revision", sa.Text(), sa.ForeignKey("scoops.revision"), nullable=False),
        sa.Column("scale_revision", sa.Text(), sa.ForeignKey("scales.revision"), nullable=False),
        sa.Column("lot_revision", sa.Text(), sa.ForeignKey("lots.revision"), nullable=False),
        sa.Column("program_version", sa.Text(), nullable=False),
        sa.UniqueConstraint("weigh_in_id"),
    )
    table(
        "spot_strikes",
        sa.Column("change", sa.Integer(), sa.ForeignKey("changes.number"), primary_key=True, autoincrement=False),
        sa.Column("of_id", sa.Text(), sa.ForeignKey("spot_fills.id"), nullable=False, index=True),
        sa.Column("reason", sa.Text()),
    )
    table(
        "marks",
        sa.Column("id", sa.Text(), primary_key=True),
        sa.Column("change", sa.Integer(), sa.ForeignKey("changes.number"), nullable=False),
        sa.Column("farm_id", sa.Text(), sa.ForeignKey("things.id"), nullable=False),
        sa.Column("sign_off_id", sa.Text(), sa.ForeignKey("sign_offs.id"), nullable=False),
        sa.Column("lot_id", sa.Text(), sa.ForeignKey("things.id"), nullable=False),
        sa.Column("scoop_id", sa.Text(), sa.ForeignKey("things.id"), nullable=False),
        sa.Column("target_mass_g", sa.Double(), nullable=False),
        sa.Column("full_scoops", sa.Integer(), nullable=False),
        sa.Column("height_mm", sa.Double(), nullable=False),
        sa.Column("down_wall_mm", sa.Double(), nullable=False),
        sa.Column("mass_g", sa.Double(), nullable=False),
        sa.Column("mass_u_g", sa.Double(), nullable=False),
        sa.Column("position", sa.Integer(), nullable=False),
        sa.Index(None, "sign_off_id"),
    )
    table(
        "prints",
        sa.Column("id", sa.Text(), primary_key=True),
        sa.Column("change", sa.Integer(), sa.ForeignKey("changes.number"), nullable=False),
        sa.Column("farm_id", sa.Text(), sa.ForeignKey("things.id"), nullable=False),
        sa.Column("number", sa.Integer(), nullable=False),
        sa.Column("kind", sa.Text(), nullable=False),
        sa.Column("lot_id", sa.Text(), sa.ForeignKey("things.id"), nullable=False),
        sa.Column("sign_off_id", sa.Text(), sa.ForeignKey("sign_offs.id"), nullable=False),
        sa.Column("at", _moment(), nullable=False),
        sa.Column("by", sa.Text(), nullable=False),
        sa.Column("scoop_id", sa.Text(), sa.ForeignKey("things.id")),
        sa.Column("plan_id", sa.Text(), sa.ForeignKey("things.id")),
        sa.Column("replaces", sa.Integer()),
        sa.UniqueConstraint("farm_id", "number"),
    )
    return metadata
