"""A farm's whole season in few queries: what the season's page and report are made of."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import chain
from typing import Any

from sqlalchemy import FromClause, Select, and_, column, func, select
from sqlalchemy import table as table_clause

from calibrator.model import (
    BagSum,
    FeederTrial,
    Fill,
    FillWay,
    LevelFill,
    Lot,
    LotPoint,
    LotPoints,
    Mark,
    Scoop,
    SeasonLot,
    SpotFill,
    Taught,
    TrialFill,
    WeighIn,
)
from calibrator.model.underway import Underway, unwatched
from calibrator.records import facts, nouns
from calibrator.records.in_columns import in_columns
from calibrator.records.past import past_ids
from calibrator.records.repository import Records
from calibrator.records.tables import NOUNS, fill_strikes, fills, marks, sign_offs

_SIGNED = (
    "by", "bags", "fills", "level_mean_g", "level_u_g", "degrees_of_freedom", "density_g_per_ml", "density_u_g_per_ml",
    "density_low_g_per_ml", "density_high_g_per_ml", "bag_sd_share", "fill_sd_share", "settling_factor", "settling_u",
)  # fmt: skip


def season_lots(records: Records, farm_id: str) -> list[SeasonLot]:
    """The newest sign-off of every lot and scoop of a farm, in the order they were kept."""
    with records.reading() as connection:
        return _newest_each([SeasonLot._make(row) for row in connection.execute(_season(farm_id))])


def bag_sums(records: Records, farm_id: str, *, past: bool = False) -> list[BagSum]:
    """The level fills of a farm's signed-off weigh-ins, summed by bag and person; of past ones too, if asked for."""
    with records.reading() as connection:
        found = [BagSum._make(row) for row in connection.execute(_sums(farm_id))]
        if past:
            found += [BagSum._make(row) for row in connection.execute(_sums_of(past_ids(farm_id)))]
    return found


def bag_sums_of(records: Records, weigh_in_ids: Sequence[str]) -> list[BagSum]:
    """The same of some weigh-ins alone, of no more than a few hundred."""
    with records.reading() as connection:
        return [BagSum._make(row) for row in connection.execute(_sums_of(weigh_in_ids))]


def lot_points(records: Records, farm_id: str) -> LotPoints:
    """The same sign-offs in the same order, of each only what a picture needs."""
    with records.reading() as connection:
        changes, *columns = in_columns(connection, _points(farm_id))
    places = sorted(range(len(changes)), key=changes.__getitem__)
    lot_ids, scoop_ids = columns[_LOT_ID], columns[_SCOOP_ID]
    newest: dict[str, dict[str, int]] = {scoop_id: {} for scoop_id in set(scoop_ids)}
    for place in places:
        newest[scoop_ids[place]][lot_ids[place]] = place
    kept = sorted(chain.from_iterable(each.values() for each in newest.values()), key=changes.__getitem__)
    return LotPoints((*columns, (True,) * len(changes))).at(kept)


def count_sign_offs(records: Records, farm_id: str) -> int:
    """How many sign-offs a farm has."""
    with records.reading() as connection:
        return int(connection.scalar(select(func.count()).where(sign_offs.c.farm_id == farm_id)) or 0)


def past_fills(records: Records, farm_id: str) -> list[LevelFill]:
    """The level fills that count of a farm's past weigh-ins, in the order they were kept."""
    with records.reading() as connection:
        return [LevelFill._make(row) for row in connection.execute(_level_fills(past_ids(farm_id)))]


def taught(records: Records, farm_id: str) -> list[Taught]:
    """What each sign-off of a farm teaches later weigh-ins, in the order they were kept."""
    s = sign_offs.c
    query = select(s.weigh_in_id, s.at, s.settling_factor, s.settling_u).where(s.farm_id == farm_id)
    with records.reading() as connection:
        return [Taught._make(row) for row in connection.execute(query.order_by(s.change))]


def every_spot_fill(records: Records, farm_id: str) -> list[SpotFill]:
    """The spot fills of a farm in their order, struck ones included."""
    with records.reading() as connection:
        return facts.many(connection, SpotFill, {"farm_id": farm_id})


def every_fill(records: Records, farm_id: str, underway: Underway = unwatched) -> list[Fill]:
    """The fills of all of a farm's weigh-ins in the order they were kept, struck ones included."""
    newest = _newest(WeighIn)
    own = select(newest.c.id).where(newest.c.farm_id == farm_id)
    with records.reading() as connection:
        return facts.of_any(connection, Fill, "weigh_in_id", own, underway)


def every_mark(records: Records, farm_id: str) -> list[Mark]:
    """The lines of a farm as signed off, oldest first."""
    with records.reading() as connection:
        return facts.many(connection, Mark, {"farm_id": farm_id})


def every_trial_fill(records: Records, farm_id: str) -> list[TrialFill]:
    """The fills of all of a farm's trials in the order they were kept, struck ones included."""
    newest = _newest(FeederTrial)
    own = select(newest.c.id).where(newest.c.farm_id == farm_id)
    with records.reading() as connection:
        return facts.of_any(connection, TrialFill, "trial_id", own)


def _newest_each(lots: Sequence[SeasonLot]) -> list[SeasonLot]:
    """The last of each lot and scoop, where it stands."""
    newest = {(lot.lot_id, lot.scoop_id): place for place, lot in enumerate(lots)}
    return [lots[place] for place in sorted(newest.values())]


_LOT_ID, _SCOOP_ID = (LotPoint._fields.index(name) for name in ("lot_id", "scoop_id"))


def _points(farm_id: str) -> Select[Any]:
    """With the number of the change first. The store sorts nothing and looks up no telling: that took twice as long."""
    s, lot = sign_offs.c, NOUNS[Lot]
    replaced = table_clause(lot.name, column("replaces"))
    own = (
        s.lot_id, lot.c.lot_number, s.scoop_id, lot.c.product, lot.c.made_on, lot.c.arrived_on, lot.c.agglomerated,
        s.at, s.level_mean_g, s.level_u_g, s.density_g_per_ml, s.density_low_g_per_ml, s.density_high_g_per_ml,
    )  # fmt: skip
    return (
        select(s.change, *own)
        .select_from(sign_offs.join(lot, lot.c.id == s.lot_id))
        .where(s.farm_id == farm_id)
        .where(lot.c.revision.not_in(select(replaced.c.replaces).where(replaced.c.replaces.is_not(None))))
    )


def _season(farm_id: str) -> Select[Any]:
    s, lot, scoop, w = sign_offs.c, _newest(Lot), _newest(Scoop), _newest(WeighIn)
    first_mark = and_(marks.c.sign_off_id == s.id, marks.c.position == 0)
    joined = (
        sign_offs.join(lot, lot.c.id == s.lot_id)
        .join(scoop, scoop.c.id == s.scoop_id)
        .join(w, w.c.id == s.weigh_in_id)
        .outerjoin(marks, first_mark)
    )
    return (
        select(
            s.id.label("sign_off_id"), s.weigh_in_id, s.lot_id, lot.c.lot_number, lot.c.product, lot.c.made_on,
            lot.c.arrived_on, lot.c.note, lot.c.plant_code, lot.c.agglomerated, lot.c.price_per_package,
            lot.c.package_mass_g, s.scoop_id, scoop.c.name, s.scoop_revision, s.at,
            *(s[name] for name in _SIGNED), w.c.room_humidity_pct, w.c.room_temperature_c,
            marks.c.target_mass_g, marks.c.down_wall_mm, marks.c.full_scoops, marks.c.mass_g,
        )
        .select_from(joined)
        .where(s.farm_id == farm_id)
        .order_by(s.change)
    )  # fmt: skip


def _newest(kind: type) -> FromClause:
    return nouns.newest_of(kind).subquery()


def _struck() -> Select[Any]:
    newest = select(func.max(fill_strikes.c.change)).group_by(fill_strikes.c.of_id)
    return select(fill_strikes.c.of_id).where(fill_strikes.c.change.in_(newest), fill_strikes.c.reason.is_not(None))


def _level_fills(weigh_in_ids: Select[tuple[str]]) -> Select[Any]:
    f = fills.c
    return (
        select(f.weigh_in_id, f.bag, f.mass_g, f.scoopfuls)
        .where(f.weigh_in_id.in_(weigh_in_ids), f.way == FillWay.LEVEL, f.id.not_in(_struck()))
        .order_by(f.change)
    )


def _sums(farm_id: str) -> Select[Any]:
    signed = fills.join(sign_offs, sign_offs.c.weigh_in_id == fills.c.weigh_in_id)
    return _summed().select_from(signed).where(sign_offs.c.farm_id == farm_id)


def _sums_of(weigh_in_ids: Sequence[str] | Select[tuple[str]]) -> Select[Any]:
    return _summed().where(fills.c.weigh_in_id.in_(weigh_in_ids))


def _summed() -> Select[Any]:
    f = fills.c
    return (
        select(
            f.weigh_in_id, f.bag, f.by, func.count(), func.sum(f.scoopfuls), func.sum(f.mass_g),
            func.sum(f.mass_g * f.mass_g / f.scoopfuls),
        )
        .where(f.way == FillWay.LEVEL, f.id.not_in(_struck()))
        .group_by(f.weigh_in_id, f.bag, f.by)
        .order_by(func.min(f.change))
    )  # fmt: skip
