"""Past weighings that came out of a file, as lots of the season: their density, worked out anew, not signed off."""

from __future__ import annotations

from functools import lru_cache

from calibrator.model import Farm, Lot, Scale, Scoop, SeasonLot, WeighIn
from calibrator.model.underway import Underway, one_by_one, unwatched
from calibrator.records import Records
from calibrator.records.past import lots_of_past, past_weigh_ins
from calibrator.records.season import past_fills
from calibrator.science.errors import CannotCompute
from calibrator.science.nested import weighed_by_lot
from calibrator.science.scale import scale_facts
from calibrator.science.settling import settling_before
from calibrator.science.weighing import Weighed, bulk_density, level_result, tolerance_of_fills_g

LEAST_FILLS = 2
KEPT_IN_MIND = 4096  # of so many a page that comes back reckons none anew


def past_lots(records: Records, farm: Farm, underway: Underway = unwatched) -> list[SeasonLot]:
    """The newest such weigh-in of every lot and scoop that is not signed off, oldest first.

    It needs its scoop, its scale and two level fills. Where a lot is signed off with the scoop, that counts.
    """
    newest = {(one.lot_id, one.scoop_id): one for one in past_weigh_ins(records, farm.id)}
    if not newest:
        return []
    fills, lots = weighed_by_lot(past_fills(records, farm.id)), lots_of_past(records, farm.id)
    scoops = {one.id: one for one in records.every(Scoop, farm.id)}
    scales = {one.id: one for one in records.every(Scale, farm.id)}
    found = []
    for weigh_in in one_by_one(list(newest.values()), underway):
        level = tuple(fills.get(weigh_in.id, ()))
        scoop, scale = scoops.get(weigh_in.scoop_id or ""), scales.get(weigh_in.scale_id or "")
        if scoop is None or scale is None or len(level) < LEAST_FILLS:
            continue
        try:
            lot = lots[weigh_in.lot_id]
            found.append(_season_lot(weigh_in, lot, scoop, scale.resolution_g, level, farm.tolerance_share))
        except CannotCompute:
            continue
    return found


@lru_cache(maxsize=KEPT_IN_MIND)
def _season_lot(
    weigh_in: WeighIn, lot: Lot, scoop: Scoop, step_g: float, fills: tuple[Weighed, ...], tolerance_share: float
) -> SeasonLot:
    tolerance = tolerance_of_fills_g(fills, tolerance_share)
    level = level_result(fills, scale_facts(step_g, None), tolerance_g=tolerance)
    density = bulk_density(level, scoop.volume_ml, scoop.volume_u_ml)
    return SeasonLot(
        sign_off_id=weigh_in.id, weigh_in_id=weigh_in.id, lot_id=lot.id, lot_number=lot.lot_number,
        product=lot.product, made_on=lot.made_on, arrived_on=lot.arrived_on, note=lot.note, plant_code=lot.plant_code,
        agglomerated=lot.agglomerated, price_per_package=lot.price_per_package, package_mass_g=lot.package_mass_g,
        scoop_id=scoop.id, scoop_name=scoop.name, scoop_revision=scoop.revision, at=weigh_in.started_at,
        by=weigh_in.by, bags=level.bags, fills=level.fills, level_mean_g=level.mean_g, level_u_g=level.u_g,
        degrees_of_freedom=level.degrees_of_freedom, density_g_per_ml=density.density_g_per_ml,
        density_u_g_per_ml=density.u_g_per_ml, density_low_g_per_ml=density.low_g_per_ml,
        density_high_g_per_ml=density.high_g_per_ml, bag_sd_share=level.bag_sd_g / level.mean_g,
        fill_sd_share=level.fill_sd_g / level.mean_g, settling_factor=settling_before(()).factor, settling_u=0.0,
        humidity_pct=weigh_in.room_humidity_pct, temperature_c=weigh_in.room_temperature_c, target_mass_g=None,
        down_wall_mm=None, full_scoops=None, mark_mass_g=None,
    )  # fmt: skip
