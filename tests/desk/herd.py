"""A farm in the records that feeds calves: two lots, two scoops, a vessel, plans."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, timedelta

from calibrator.model import (
    Box,
    Composition,
    Cylinder,
    Farm,
    Fill,
    FillWay,
    Lot,
    Mark,
    MixingRate,
    Plan,
    PlanGroup,
    Printed,
    PrintKind,
    RateBasis,
    Scale,
    Scoop,
    SignOff,
    Vessel,
    VolumeMeans,
    WeighIn,
    new_id,
)
from calibrator.records import Records

FIRST_DAY = datetime(2026, 1, 12, 9, tzinfo=UTC)
OZ_G, QT_ML, GAL_ML = 28.349523125, 946.352946, 3785.411784
TEN_ON_TWO = MixingRate(basis=RateBasis.ON_WATER, powder_mass_g=10 * OZ_G, volume_ml=2 * QT_ML)


def printed(kind: PrintKind, signed: SignOff, *, plan_id: str | None = None, scoop_id: str | None = None) -> Printed:
    """A sheet of what was signed off, printed at once."""
    return Printed(
        id=new_id(), farm_id=signed.farm_id, number=0, kind=kind, lot_id=signed.lot_id, sign_off_id=signed.id,
        at=signed.at, plan_id=plan_id, scoop_id=scoop_id,
    )  # fmt: skip


def delivered(records: Records) -> None:
    """A farm with a scale, a scoop and one lot that was delivered and not yet weighed in."""
    farm = records.keep(Farm(id=new_id(), name="Windy Hollow"))
    records.keep(
        Scale(
            id=new_id(),
            farm_id=farm.id,
            name="Kitchen scale",
            resolution_g=2.8349523125,
            resolution_typed="0.1 oz",
            capacity_g=4989.5,
            capacity_typed="11 lb",
        )
    )
    records.keep(
        Scoop(
            id=new_id(),
            farm_id=farm.id,
            name="Red scoop",
            shape=Cylinder(diameter_mm=96, height_mm=92),
            volume_ml=665.9,
            volume_u_ml=3.0,
        )
    )
    records.keep(Lot(id=new_id(), farm_id=farm.id, lot_number="25-0302A", product="20-20 replacer"))


class Herd:
    """A farm with a scale and scoops, and a hand for lots, sign-offs and plans."""

    def __init__(self, records: Records) -> None:
        self.records = records
        self.farm = records.keep(Farm(id=new_id(), name="Windy Hollow"))
        self.scale = records.keep(
            Scale(
                id=new_id(), farm_id=self.farm.id, name="Kitchen scale", resolution_g=0.1 * OZ_G,
                resolution_typed="0.1 oz", capacity_g=5000, capacity_typed="5 kg",
            )
        )  # fmt: skip
        cup = Cylinder(diameter_mm=96, height_mm=92)
        self.red = self.scoop("Red scoop", cup)
        self._days = 0

    @classmethod
    def again(cls, records: Records) -> Herd:
        """The hand for records that another one made."""
        made = cls.__new__(cls)
        made.records = records
        (made.farm,), (made.scale,), made.red = records.every(Farm), records.every(Scale), records.every(Scoop)[0]
        made._days = 21 * len(records.sign_offs(made.farm.id))
        return made

    def scoop(self, name: str, shape: Cylinder | Box) -> Scoop:
        made = Scoop(id=new_id(), farm_id=self.farm.id, name=name, shape=shape, volume_ml=665.9, volume_u_ml=3.0)
        return self.records.keep(made)

    def sign(
        self,
        number: str,
        density: float,
        scoop: Scoop | None = None,
        lot: Lot | None = None,
        target_typed: str = "",
        check_reading_g: float | None = None,
        humidity_pct: float | None = None,
    ) -> SignOff:
        """Weigh in and sign off a lot (a new one unless given), three weeks after the one before; the check weight is
        of 500 g, where there is one."""
        at = FIRST_DAY + timedelta(days=self._days)
        self._days += 21
        lot = lot or self.records.keep(
            Lot(
                id=new_id(), farm_id=self.farm.id, lot_number=number, product="20-20 replacer",
                made_on=at.date() - timedelta(days=30), arrived_on=at.date(),
                composition=Composition(protein_pct=20.0, fat_pct=20.0, fibre_pct=0.15, ash_pct=7.0),
            )
        )  # fmt: skip
        scoop = scoop or self.red
        weigh_in = self.records.keep(
            WeighIn(
                id=new_id(), farm_id=self.farm.id, lot_id=lot.id, started_at=at, scoop_id=scoop.id,
                scale_id=self.scale.id, target_mass_g=10 * OZ_G, target_typed=target_typed,
                check_nominal_g=check_reading_g and 500.0, check_reading_g=check_reading_g,
                room_humidity_pct=humidity_pct,
            )
        )  # fmt: skip
        for number, off in enumerate((-0.01, 0.004, 0.006, -0.004, 0.008, 0.002, -0.003, -0.003)):
            self._fill(weigh_in, number // 2 + 1, density * scoop.volume_ml * (1 + off), at)
        made = self._outcome(lot, scoop, weigh_in, density, at)
        self.records.sign_off(made, [self._mark(made)])
        return made

    def sign_shape(self, name: str, shape: Cylinder | Box, volume_ml: float, density: float, lot: Lot) -> SignOff:
        """Sign a lot off for a scoop of any size, its line at three quarters of the height."""
        scoop = self.records.keep(
            Scoop(id=new_id(), farm_id=self.farm.id, name=name, shape=shape, volume_ml=volume_ml, volume_u_ml=0.5)
        )
        at = FIRST_DAY + timedelta(days=self._days)
        weigh_in = self.records.keep(
            WeighIn(
                id=new_id(), farm_id=self.farm.id, lot_id=lot.id, started_at=at, scoop_id=scoop.id,
                scale_id=self.scale.id, target_mass_g=0.75 * density * volume_ml,
            )
        )  # fmt: skip
        self._fill(weigh_in, 1, density * volume_ml, at)
        made = self._outcome(lot, scoop, weigh_in, density, at)
        height = 0.75 * shape.height_mm
        mark = replace(
            self._mark(made), target_mass_g=0.75 * density * volume_ml, mass_g=0.75 * density * volume_ml,
            height_mm=height, down_wall_mm=shape.height_mm - height,
        )  # fmt: skip
        self.records.sign_off(made, [mark])
        return made

    def plan(self, name: str = "Morning milk", *groups: PlanGroup, **how: object) -> Plan:
        made = Plan(
            id=new_id(), farm_id=self.farm.id, name=name, groups=groups or (group(109),),
            count_from=105, count_to=115, counts=(120,), water_temperature_c=43.333,
        )  # fmt: skip
        return self.records.keep(replace(made, **how))  # type: ignore[arg-type]

    def vessel(self, name: str = "Cart tank", gallons: float = 66.0) -> Vessel:
        made = Vessel(id=new_id(), farm_id=self.farm.id, name=name, rim_volume_ml=gallons * GAL_ML, usable_share=0.9)
        return self.records.keep(made)

    def print(
        self, kind: PrintKind, signed: SignOff, *, plan_id: str | None = None, scoop_id: str | None = None
    ) -> Printed:
        return self.records.record_print(printed(kind, signed, plan_id=plan_id, scoop_id=scoop_id))

    def lot_of(self, signed: SignOff) -> Lot:
        return self.records.find(Lot, signed.lot_id)

    def _fill(self, weigh_in: WeighIn, bag: int, mass_g: float, at: datetime) -> None:
        self.records.add_fill(
            Fill(
                id=new_id(), weigh_in_id=weigh_in.id, way=FillWay.LEVEL, bag=bag, mass_g=mass_g,
                typed=f"{mass_g:.1f} g", by="AB", at=at,
            )
        )  # fmt: skip

    def _outcome(self, lot: Lot, scoop: Scoop, weigh_in: WeighIn, density: float, at: datetime) -> SignOff:
        mean = density * scoop.volume_ml
        return SignOff(
            id=new_id(), farm_id=self.farm.id, weigh_in_id=weigh_in.id, lot_id=lot.id, scoop_id=scoop.id,
            scale_id=self.scale.id, by="AB", at=at, bags=4, fills=8, level_mean_g=mean,
            level_u_g=0.006 * mean,
            level_low_g=0.981 * mean, level_high_g=1.019 * mean, degrees_of_freedom=3,
            density_g_per_ml=density, density_u_g_per_ml=0.006 * density,
            density_low_g_per_ml=0.98 * density,
            density_high_g_per_ml=1.02 * density, bag_sd_share=0.01, fill_sd_share=0.012,
            settling_factor=1.02,
            settling_u=0.004, verdict="on_target", old_line_verdict="", scoop_revision=scoop.revision,
            scale_revision=self.scale.revision, lot_revision=lot.revision, program_version="0",
        )  # fmt: skip

    def _mark(self, made: SignOff) -> Mark:
        height = 10 * OZ_G / (made.density_g_per_ml * made.settling_factor) / 7.2382
        return Mark(
            id=new_id(), farm_id=self.farm.id, sign_off_id=made.id, lot_id=made.lot_id,
            scoop_id=made.scoop_id,
            target_mass_g=10 * OZ_G, full_scoops=0, height_mm=height, down_wall_mm=92 - height,
            mass_g=10 * OZ_G, mass_u_g=1.0,
        )  # fmt: skip


def group(
    calves: int,
    name: str = "",
    rate: MixingRate = TEN_ON_TWO,
    means: VolumeMeans = VolumeMeans.WATER,
) -> PlanGroup:
    """Calves that get two quarts each."""
    return PlanGroup(name=name, calves=calves, volume_ml=2 * QT_ML, volume_means=means, rate=rate)
