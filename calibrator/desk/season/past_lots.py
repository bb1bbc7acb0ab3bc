"""Past weighings that came out of a file, as lots of the season: their density, worked out anew, not signed off."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from calibrator.model import Farm, Fill, FillWay, Lot, LotPoint, Scale, Scoop, SeasonLot, WeighIn
from calibrator.records import Records, brought_in
from calibrator.records.season import every_fill
from calibrator.science.errors import CannotCompute
from calibrator.science.scale import scale_facts
from calibrator.science.settling import settling_before
from calibrator.science.weighing import Weighed, bulk_density, level_result, weighed

LEAST_FILLS = 2


def past_lots(records: Records, farm: Farm, signed: Callable[[], Sequence[LotPoint]]) -> list[SeasonLot]:
    """The newest such weigh-in of every lot and scoop that is not signed off, oldest first.

    It needs its scoop, its scale and two level fills. Where a lot is signed off with the scoop, that counts.
    """
    brought = brought_in(records, WeighIn)
    if not brought:
        return []
    known = {(lot.lot_id, lot.scoop_id) for lot in signed()}
    past = [w for w in records.every(WeighIn, farm.id) if w.id in brought and (w.lot_id, w.scoop_id) not in known]
    newest = {(w.lot_id, w.scoop_id): w for w in sorted(past, key=lambda w: w.started_at)}
    things = _Things(records, farm)
    fills: dict[str, list[Fill]] = {}
    for fill in every_fill(records, farm.id):
        fills.setdefault(fill.weigh_in_id, []).append(fill)
    found = [things.as_lot(w, fills.get(w.id, [])) for w in newest.values()]
    return [lot for lot in found if lot is not None]


class _Things:
    """What the weigh-ins name."""

    def __init__(self, records: Records, farm: Farm) -> None:
        self.farm = farm
        self.lots = {one.id: one for one in records.every(Lot, farm.id)}
        self.scoops = {one.id: one for one in records.every(Scoop, farm.id)}
        self.scales = {one.id: one for one in records.every(Scale, farm.id)}

    def as_lot(self, weigh_in: WeighIn, fills: Sequence[Fill]) -> SeasonLot | None:
        """A weigh-in as the season tells it; None where its density cannot be told."""
        scoop, scale = self.scoops.get(weigh_in.scoop_id or ""), self.scales.get(weigh_in.scale_id or "")
        level = weighed(fills, FillWay.LEVEL)
        if scoop is None or scale is None or len(level) < LEAST_FILLS:
            return None
        try:
            return _season_lot(weigh_in, self.lots[weigh_in.lot_id], scoop, scale, level, self.farm.tolerance_share)
        except CannotCompute:
            return None


def _season_lot(
    weigh_in: WeighIn, lot: Lot, scoop: Scoop, scale: Scale, fills: Sequence[Weighed], tolerance_share: float
) -> SeasonLot:
    typical = fills[0].mass_g
    facts = scale_facts(scale.resolution_g, None, typical)
    level = level_result(fills, facts, tolerance_g=tolerance_share * typical)
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
