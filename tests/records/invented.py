"""Invented nouns and facts for the tests of the store, plain ones and any that hypothesis can think of."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, date, datetime, timezone
from typing import Any

from hypothesis import strategies as st

from calibrator.model import (
    Additive,
    BagCount,
    Box,
    ColdWeather,
    Composition,
    CoolingReadings,
    Cylinder,
    Ending,
    Farm,
    FeederTrial,
    Feeding,
    FeedingStep,
    Fill,
    FillWay,
    HotWater,
    Instrument,
    InstrumentCheck,
    InstrumentCheckKind,
    InstrumentKind,
    LabelledLine,
    Lot,
    Mark,
    MixCheck,
    MixingRate,
    PackagesLeft,
    Pail,
    Plan,
    PlanGroup,
    Poured,
    Printed,
    PrintKind,
    RateBasis,
    Reading,
    ReadingKind,
    ReferenceMix,
    Scale,
    Scoop,
    Scoopfuls,
    ScoopMarked,
    ScoopRule,
    SheetEnding,
    SignOff,
    SpotFill,
    TaperedCup,
    TrialFill,
    Vessel,
    VolumeMeans,
    Warmth,
    WeighIn,
    new_id,
)
from calibrator.records import Records

NOON = datetime(2024, 11, 7, 12, 0, tzinfo=UTC)
NOUNS = (
    Farm,
    Scale,
    Scoop,
    Lot,
    WeighIn,
    Vessel,
    Plan,
    Instrument,
    InstrumentCheck,
    ReferenceMix,
    MixCheck,
    BagCount,
    FeederTrial,
)
FACTS = (Fill, SpotFill, TrialFill, SignOff, Mark, Printed, SheetEnding)

TEXT = st.text(st.characters(exclude_categories=("Cs",), exclude_characters="\x00"), max_size=30)
_NUMBER = st.floats(allow_nan=False, allow_infinity=True)
_MOMENT = st.datetimes(
    min_value=datetime(1, 1, 3), max_value=datetime(9999, 12, 29), timezones=st.sampled_from([UTC])
) | st.datetimes(
    min_value=datetime(1, 1, 3),
    max_value=datetime(9999, 12, 29),
    timezones=st.sampled_from([timezone.max, timezone.min]),
)


def register() -> None:
    """Teach hypothesis which plain values every store must be able to keep."""
    st.register_type_strategy(str, TEXT)
    st.register_type_strategy(float, _NUMBER)
    st.register_type_strategy(int, st.integers(-(2**31) + 1, 2**31 - 1))
    st.register_type_strategy(datetime, _MOMENT)


def any_of(kind: type) -> st.SearchStrategy[Any]:
    """Any noun or fact of a kind, all fields filled at will."""
    from calibrator.records.plain import hints

    return st.builds(kind, **{name: st.from_type(hint) for name, hint in hints(kind).items()})


def farm(**more: Any) -> Farm:
    return Farm(**{"id": new_id(), "name": "Willow Bend"} | more)


def scale(farm_id: str, **more: Any) -> Scale:
    told = {
        "id": new_id(),
        "farm_id": farm_id,
        "name": "bench",
        "resolution_g": 2.8,
        "resolution_typed": "0.1 oz",
        "capacity_g": 5000.0,
        "capacity_typed": "11 lb",
    }
    return Scale(**told | more)


def scoop(farm_id: str, **more: Any) -> Scoop:
    shape = TaperedCup(rim_diameter_mm=105.0, floor_diameter_mm=85.0, height_mm=90.0)
    told = {"id": new_id(), "farm_id": farm_id, "name": "red", "shape": shape}
    return Scoop(**told | {"volume_ml": 640.0, "volume_u_ml": 1.5} | more)


def lot(farm_id: str, **more: Any) -> Lot:
    return Lot(**{"id": new_id(), "farm_id": farm_id, "lot_number": "24-1107B"} | more)


def vessel(farm_id: str, **more: Any) -> Vessel:
    told = {"id": new_id(), "farm_id": farm_id, "name": "pail", "rim_volume_ml": 18927.0}
    return Vessel(**told | more)


def weigh_in(lot: Lot, **more: Any) -> WeighIn:
    told = {"id": new_id(), "farm_id": lot.farm_id, "lot_id": lot.id, "started_at": NOON}
    return WeighIn(**told | more)


def fill(weigh_in: WeighIn, mass_g: float = 290.0, **more: Any) -> Fill:
    told = {
        "id": new_id(),
        "weigh_in_id": weigh_in.id,
        "way": FillWay.LEVEL,
        "bag": 1,
        "mass_g": mass_g,
        "typed": f"{mass_g} g",
        "by": "AB",
        "at": NOON,
    }
    return Fill(**told | more)


def spot(sign_off: SignOff, **more: Any) -> SpotFill:
    told = {
        "id": new_id(),
        "farm_id": sign_off.farm_id,
        "lot_id": sign_off.lot_id,
        "weigh_in_id": sign_off.weigh_in_id,
        "way": FillWay.LEVEL,
        "mass_g": 288.0,
        "typed": "288 g",
        "by": "AB",
        "at": NOON,
    }
    return SpotFill(**told | more)


def sign_off(weigh_in: WeighIn, scoop: Scoop, scale: Scale, lot: Lot, **more: Any) -> SignOff:
    told: dict[str, Any] = {
        "id": new_id(),
        "farm_id": lot.farm_id,
        "weigh_in_id": weigh_in.id,
        "lot_id": lot.id,
        "scoop_id": scoop.id,
        "scale_id": scale.id,
        "by": "AB",
        "at": NOON,
        "bags": 1,
        "fills": 2,
        "level_mean_g": 290.0,
        "level_u_g": 1.0,
        "level_low_g": 288.0,
        "level_high_g": 292.0,
        "degrees_of_freedom": float("inf"),
        "density_g_per_ml": 0.5,
        "density_u_g_per_ml": 0.002,
        "density_low_g_per_ml": 0.496,
        "density_high_g_per_ml": 0.504,
        "bag_sd_share": 0.01,
        "fill_sd_share": 0.02,
        "settling_factor": 1.02,
        "settling_u": 0.01,
        "verdict": "on_target",
        "old_line_verdict": "",
        "scoop_revision": scoop.revision,
        "scale_revision": scale.revision,
        "lot_revision": lot.revision,
        "program_version": "0.1.0",
    }
    return SignOff(**told | more)


def mark(sign_off: SignOff, **more: Any) -> Mark:
    told = {
        "id": new_id(),
        "farm_id": sign_off.farm_id,
        "sign_off_id": sign_off.id,
        "lot_id": sign_off.lot_id,
        "scoop_id": sign_off.scoop_id,
        "target_mass_g": 283.5,
        "full_scoops": 0,
        "height_mm": 86.0,
        "down_wall_mm": 4.0,
        "mass_g": 283.0,
        "mass_u_g": 1.2,
    }
    return Mark(**told | more)


def printed(sign_off: SignOff, **more: Any) -> Printed:
    told = {
        "id": new_id(),
        "farm_id": sign_off.farm_id,
        "number": 0,
        "kind": PrintKind.SCOOP_LABEL,
        "lot_id": sign_off.lot_id,
        "sign_off_id": sign_off.id,
        "at": NOON,
        "scoop_id": sign_off.scoop_id,
    }
    return Printed(**told | more)


LABELLED = (
    LabelledLine(target_mass_g=283.5, down_wall_mm=12.5, mass_g=283.0),
    LabelledLine(target_mass_g=425.25, down_wall_mm=None),
)


def ending(sheet: Printed, **more: Any) -> SheetEnding:
    told = {"id": new_id(), "farm_id": sheet.farm_id, "print_id": sheet.id, "ending": Ending.TAKEN_DOWN}
    return SheetEnding(**told | {"at": NOON, "by": "AB"} | more)


def instrument(farm_id: str, **more: Any) -> Instrument:
    told = {"id": new_id(), "farm_id": farm_id, "name": "glass", "kind": InstrumentKind.REFRACTOMETER}
    return Instrument(**told | {"division": 0.2, "division_typed": "0.2"} | more)


def instrument_check(of: Instrument, **more: Any) -> InstrumentCheck:
    told = {"id": new_id(), "farm_id": of.farm_id, "instrument_id": of.id, "kind": InstrumentCheckKind.WATER}
    return InstrumentCheck(**told | {"expected": 0.0, "reading": 0.1, "typed": "0.1", "at": NOON} | more)


def reference_mix(of: Instrument, lot: Lot, **more: Any) -> ReferenceMix:
    told = {"id": new_id(), "farm_id": of.farm_id, "lot_id": lot.id, "instrument_id": of.id, "at": NOON}
    weights = {"powder_g": 130.0, "powder_typed": "130 g", "water_g": 870.0, "water_typed": "870 g"}
    return ReferenceMix(**told | weights | {"readings_brix": (11.4, 11.6), "readings_typed": "11.4 11.6"} | more)


def mix_check(lot: Lot, **more: Any) -> MixCheck:
    told = {"id": new_id(), "farm_id": lot.farm_id, "lot_id": lot.id, "at": NOON, "by": "AB"}
    drops = Reading(kind=ReadingKind.BRIX, value=11.2, typed="11.2", pail=Pail.FIRST)
    aims = {"target_share": 0.13, "target_typed": "13 %", "tolerance_share": 0.005, "tolerance_typed": "0.5 %"}
    return MixCheck(**told | aims | {"readings": (drops,)} | more)


def bag_count(lot: Lot, **more: Any) -> BagCount:
    told = {"id": new_id(), "farm_id": lot.farm_id, "lot_id": lot.id, "since": NOON.date(), "at": NOON}
    bags = {"bags": 4.0, "bags_typed": "4", "bag_mass_g": 22679.6, "bag_mass_typed": "50 lb", "feedings": 320}
    return BagCount(**told | bags | {"target_mass_g": 283.5, "target_typed": "10 oz"} | more)


def checks_of_the_mix(records: Records, world: World) -> None:
    """One of each noun of a check in the records, a correction and a withdrawal among them."""
    of = records.keep(instrument(world.farm.id))
    records.keep(instrument_check(of))
    records.keep(reference_mix(of, world.lot))
    first = records.keep(mix_check(world.lot, verdict="inside", solids_share=0.13), by="AB")
    records.keep(replace(first, note="read again"), by="CD", why="a note")
    for same_batch_as in (first.id, ""):
        records.keep(mix_check(world.lot, same_batch_as=same_batch_as), by="AB")
    counted = records.keep(bag_count(world.lot))
    records.keep(replace(counted, withdrawn_reason="wrong lot"), by="AB")


def trial(lot: Lot, scoop: Scoop, scale: Scale, **more: Any) -> FeederTrial:
    told = {"id": new_id(), "farm_id": lot.farm_id, "lot_id": lot.id, "scoop_id": scoop.id, "scale_id": scale.id}
    return FeederTrial(**told | {"way": FillWay.TO_MARK, "line_mm": 12.0, "started_at": NOON} | more)


def trial_fill(of: FeederTrial, person: str = "AB", mass_g: float = 283.0, **more: Any) -> TrialFill:
    told = {"id": new_id(), "trial_id": of.id, "person": person, "number": 1, "mass_g": mass_g, "at": NOON}
    return TrialFill(**told | {"typed": f"{mass_g} g", "by": "AB"} | more)


def feeders_and_prices(records: Records, world: World) -> None:
    """A closed trial with a struck fill and one restored, a priced lot, and a scoop in another's place."""
    of = records.keep(trial(world.lot, world.scoop, world.scale))
    for person in ("AB", "CD"):
        kept = records.add_trial_fill(trial_fill(of, person))
        records.strike_trial_fill(kept.id, "spilled", "AB")
    records.restore_trial_fill(kept.id, "CD")
    records.keep(replace(of, closed=True))
    records.keep(lot(world.farm.id, supplier="The Mill", plant_code="P2", agglomerated=True, price_per_package=68.5))
    old = records.keep(scoop(world.farm.id, told_by="red tape", retired_on=NOON.date(), retired_why="worn"))
    records.keep(scoop(world.farm.id, told_by="blue tape", replaces_id=old.id))
    world.farm = records.keep(replace(world.farm, currency="€", asks_for_charts=False))


def feeding(records: Records, world: World) -> None:
    """A farm's plan with all that a plan can tell, its hot water, how a vessel cools, a lot's change-over."""
    hot = HotWater(tank_ml=189270.0, hot_c=60.0, cold_c=12.0, tank_typed="50 gal")
    world.farm = records.keep(replace(world.farm, hot_water=hot), by="AB")
    read = CoolingReadings(first_c=41.0, later_c=37.5, minutes=20, air_c=8.0, first_typed="41 C")
    tank = records.keep(vessel(world.farm.id, name="tank", cooling=read))
    rate = MixingRate(basis=RateBasis.MADE_UP, powder_mass_g=283.5, volume_ml=1893.0, typed="10 oz")
    salts = Additive(
        name="electrolyte",
        rate=MixingRate(basis=RateBasis.PER_FINISHED, powder_mass_g=20.0, volume_ml=1893.0),
        composition=Composition(ash_pct=40.0),
        mosmol_per_g=9.5,
        mosmol_typed="9.5",
    )
    group = PlanGroup(
        name="young",
        calves=9,
        volume_ml=1893.0,
        volume_means=VolumeMeans.FINISHED_MIX,
        rate=rate,
        additives=(salts,),
        feedings=(Feeding(name="morning", volume_ml=1893.0), Feeding(name="noon", volume_ml=950.0, rate=rate)),
        steps=(FeedingStep(from_day=8, volume_ml=2840.0), FeedingStep(from_day=49, volume_ml=0.0, feedings_per_day=0)),
        day_one=date(2024, 11, 1),
    )
    records.keep(
        Plan(
            id=new_id(),
            farm_id=world.farm.id,
            name="by day",
            groups=(group,),
            vessel_id=tank.id,
            scoopfuls=Scoopfuls(rule=ScoopRule.ONE_KIND, part_fills=(0.5, 0.25), scoop_id=world.scoop.id),
            warmth=Warmth(powder_c=5.0, mix_c=40.5, powder_typed="5 C", calves_in_ten_minutes=40),
            cold=ColdWeather(below_c=5.0, more_powder_share=0.1, further_feedings=1, on=True),
        )
    )
    told = PackagesLeft(packages=3.5, on=date(2024, 11, 20), typed="3 1/2")
    records.keep(replace(world.lot, fed_from=date(2024, 11, 9), packages_left=told), by="CD", why="counted")


def marked_scoop(records: Records, signed: SignOff) -> None:
    """A lot fed from a day's second feeding on, its line on the scoop."""
    lot = records.find(Lot, signed.lot_id)
    marked = ScoopMarked(scoop_id=signed.scoop_id, sign_off_id=signed.id, on=date(2024, 11, 10), lines=LABELLED)
    records.keep(replace(lot, fed_from_feeding=1, waits=True, scoops_marked=(marked,)), by="CD", why="change-over")


class World:
    """A farm with a scale, a scoop, a lot and an open weigh-in of two fills, kept in `records`."""

    def __init__(self, records: Records, name: str = "Willow Bend") -> None:
        self.records = records
        self.farm = records.keep(farm(name=name))
        self.scale = records.keep(scale(self.farm.id))
        self.scoop = records.keep(scoop(self.farm.id))
        self.lot = records.keep(lot(self.farm.id))
        self.weigh_in = records.keep(weigh_in(self.lot, scoop_id=self.scoop.id, scale_id=self.scale.id), by="AB")
        self.fills = [records.add_fill(fill(self.weigh_in, mass)) for mass in (289.0, 291.0)]

    def sign_off(self, **more: Any) -> SignOff:
        return sign_off(self.weigh_in, self.scoop, self.scale, self.lot, **more)

    def signed(self) -> SignOff:
        told = self.sign_off()
        self.records.sign_off(told, [mark(told), mark(told, target_mass_g=567.0, full_scoops=1)])
        return told

    def scoop_again(self, **more: Any) -> Scoop:
        self.scoop = self.records.keep(replace(self.scoop, **more))
        return self.scoop


SHAPES = (
    Cylinder(diameter_mm=90.0, height_mm=100.0),
    TaperedCup(rim_diameter_mm=105.0, floor_diameter_mm=85.0, height_mm=90.0),
    Box(length_mm=100.0, width_mm=80.0, height_mm=70.0),
    Poured(heights_mm=(10.0, 40.0, 80.0), volumes_ml=(50.0, 260.0, 610.0)),
)
