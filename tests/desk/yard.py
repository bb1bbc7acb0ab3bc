"""A small farm in the records for tests, with a hand for signing off and printing."""

from __future__ import annotations

from datetime import UTC, date, datetime

from calibrator.desk.needs import Waiting, waiting
from calibrator.desk.standing import standing
from calibrator.model import (
    Cylinder,
    Farm,
    Lot,
    Mark,
    Printed,
    PrintKind,
    Scale,
    Scoop,
    SignOff,
    WeighIn,
    new_id,
)
from calibrator.records import Records

NOON = datetime(2026, 3, 2, 12, tzinfo=UTC)
DAY = NOON.date()


class Yard:
    """A small farm in the records, with a hand for signing off."""

    def __init__(self, records: Records) -> None:
        self.records = records
        self.farm = records.keep(Farm(id=new_id(), name="Windy Hollow"))
        self.scale = records.keep(
            Scale(
                id=new_id(),
                farm_id=self.farm.id,
                name="Kitchen scale",
                resolution_g=2.8,
                resolution_typed="0.1 oz",
                capacity_g=5000,
                capacity_typed="5 kg",
            )
        )
        self.red, self.blue = self.scoop("Red"), self.scoop("Blue")

    def scoop(self, name: str) -> Scoop:
        shape = Cylinder(diameter_mm=96, height_mm=92)
        return self.records.keep(
            Scoop(id=new_id(), farm_id=self.farm.id, name=name, shape=shape, volume_ml=666, volume_u_ml=3)
        )

    def lot(self, number: str) -> Lot:
        return self.records.keep(Lot(id=new_id(), farm_id=self.farm.id, lot_number=number))

    def start(self, lot: Lot) -> WeighIn:
        return self.records.keep(WeighIn(id=new_id(), farm_id=self.farm.id, lot_id=lot.id, started_at=NOON))

    def sign(
        self, lot: Lot, scoop: Scoop, weigh_in: WeighIn | None = None, down_wall_mm: float = 32.0, full_scoops: int = 0
    ) -> SignOff:
        weigh_in = weigh_in or self.start(lot)
        made = a_sign_off(self, lot, scoop, weigh_in)
        mark = Mark(
            id=new_id(),
            farm_id=self.farm.id,
            sign_off_id=made.id,
            lot_id=lot.id,
            scoop_id=scoop.id,
            target_mass_g=283.5 + full_scoops * made.level_mean_g,
            full_scoops=full_scoops,
            height_mm=92.0 - down_wall_mm,
            down_wall_mm=down_wall_mm,
            mass_g=283,
            mass_u_g=1,
        )
        self.records.sign_off(made, [mark])
        return made

    def print(self, kind: PrintKind, sign_off: SignOff, scoop: Scoop | None = None) -> Printed:
        return self.records.record_print(
            Printed(
                id=new_id(),
                farm_id=self.farm.id,
                number=0,
                kind=kind,
                lot_id=sign_off.lot_id,
                sign_off_id=sign_off.id,
                at=NOON,
                scoop_id=scoop.id if scoop else None,
            )
        )

    def waiting(self, today: date = DAY) -> list[Waiting]:
        return waiting(standing(self.records, self.farm, today))


def a_sign_off(yard: Yard, lot: Lot, scoop: Scoop, weigh_in: WeighIn) -> SignOff:
    return SignOff(
        id=new_id(),
        farm_id=yard.farm.id,
        weigh_in_id=weigh_in.id,
        lot_id=lot.id,
        scoop_id=scoop.id,
        scale_id=yard.scale.id,
        by="AB",
        at=NOON,
        bags=4,
        fills=8,
        level_mean_g=340,
        level_u_g=1.5,
        level_low_g=336,
        level_high_g=344,
        degrees_of_freedom=3,
        density_g_per_ml=0.511,
        density_u_g_per_ml=0.003,
        density_low_g_per_ml=0.505,
        density_high_g_per_ml=0.517,
        bag_sd_share=0.01,
        fill_sd_share=0.01,
        settling_factor=1.02,
        settling_u=0.004,
        verdict="on_target",
        old_line_verdict="",
        scoop_revision=scoop.revision,
        scale_revision=yard.scale.revision,
        lot_revision=lot.revision,
        program_version="0",
    )
