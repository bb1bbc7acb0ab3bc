"""Past weighings that came out of another program's file: nothing else is read for them."""

from __future__ import annotations

from sqlalchemy import Select, func, select

from calibrator.model import Lot, WeighIn
from calibrator.records import nouns
from calibrator.records.bringing import BROUGHT_IN
from calibrator.records.repository import Records
from calibrator.records.rows import as_value
from calibrator.records.tables import NOUNS, changes, sign_offs, things


def count_past(records: Records, farm_id: str) -> int:
    """How many past weigh-ins a farm has that name a scoop and a scale."""
    with records.reading() as connection:
        return int(connection.scalar(select(func.count()).select_from(past_ids(farm_id).subquery())) or 0)


def past_weigh_ins(records: Records, farm_id: str) -> list[WeighIn]:
    """Those whose lot was never signed off with the scoop, the oldest first."""
    table, signed = NOUNS[WeighIn], sign_offs.c
    query = nouns.newest_of(WeighIn).where(table.c.id.in_(past_ids(farm_id))).order_by(table.c.started_at)
    with records.reading() as connection:
        told = [as_value(WeighIn, row) for row in connection.execute(query).mappings()]
        if not told:
            return []
        pairs = connection.execute(select(signed.lot_id, signed.scoop_id).where(signed.farm_id == farm_id))
        known = {(lot_id, scoop_id) for lot_id, scoop_id in pairs}
    return [one for one in told if (one.lot_id, one.scoop_id) not in known]


def lots_of_past(records: Records, farm_id: str) -> dict[str, Lot]:
    """The lots of past weigh-ins by their ids."""
    table, weigh_in = NOUNS[Lot], NOUNS[WeighIn].c
    own = select(weigh_in.lot_id).where(weigh_in.id.in_(past_ids(farm_id)))
    with records.reading() as connection:
        rows = connection.execute(nouns.newest_of(Lot).where(table.c.id.in_(own))).mappings()
        return {row["id"]: as_value(Lot, row) for row in rows}


def past_ids(farm_id: str) -> Select[tuple[str]]:
    """The weigh-ins themselves, as a question: given up, their first telling out of a file."""
    table = NOUNS[WeighIn].c
    came = (
        select(things.c.id)
        .join(changes, changes.c.number == things.c.change)
        .where(things.c.id == table.id, changes.c.why.startswith(BROUGHT_IN, autoescape=True))
    )
    return (
        nouns.newest_of(WeighIn)
        .with_only_columns(table.id)
        .where(table.farm_id == farm_id, table.abandoned.is_(True), came.exists())
        .where(table.scoop_id.is_not(None), table.scale_id.is_not(None))
    )
