"""Mixing and trying in the story of sample_lots/: checks of the mix with a refractometer, and feeders' trials."""

from __future__ import annotations

from datetime import datetime, timedelta
from typing import Any

from calibrator import __version__
from calibrator.desk.mix_batch import Batch, batch_of, farm_now
from calibrator.desk.mix_checks import Aim, work_out
from calibrator.desk.mix_tools import read_tools
from calibrator.desk.standing import standing
from calibrator.model import (
    FeederTrial,
    FillWay,
    Instrument,
    InstrumentCheck,
    InstrumentCheckKind,
    InstrumentKind,
    Lot,
    MixCheck,
    Pail,
    Reading,
    ReadingKind,
    ReferenceMix,
    SignOff,
    TrialFill,
    new_id,
)
from calibrator.science import scoop as shapes
from calibrator.science.check import TOLERANCE_SHARE
from calibrator.units import Kind, read, show_percent
from tests.sample_story import FEEDERS, HAND_SD, MARK_HABIT, Bags, ounces

BRIX_AT_NONE, BRIX_PER_SHARE = -1.5, 97.5
"""What the invented powder shows on the refractometer: 13 % solids read 11.2 °Brix."""

DIVISION_BRIX, ZERO_OFF_BRIX, DROP_SD_BRIX = 0.2, 0.1, 0.12
KNOWN_BRIX, KNOWN_DAYS = 12.0, 80
REFERENCES = ((100.0, 900.0), (115.0, 885.0), (130.0, 870.0), (145.0, 855.0), (160.0, 840.0))
"""Reference mixes of each product, g of powder and of water."""

FILLS_EACH = 5


class Feeding:
    """Instruments and feeders at work in the season; `season` tells farm, clock and chance."""

    def __init__(self, season: Any) -> None:
        self.season, self.rng = season, season.rng
        self.glass = self._instrument("refractometer", InstrumentKind.REFRACTOMETER, DIVISION_BRIX, "0.2")
        self.stick = self._instrument("dial thermometer", InstrumentKind.THERMOMETER, 5 / 9, "1")
        self._ice()
        self._known_at: datetime | None = None
        self._with_line: set[str] = set()

    def check(self, signed: SignOff, _bags: Bags, _opened: int) -> None:
        """One finished batch read and kept, with what the program makes of it."""
        lot = self.season.records.find(Lot, signed.lot_id)
        self._zero()
        if lot.product not in self._with_line:
            self._with_line.add(lot.product)
            self._references(lot.id)
        feeder = self.rng.choice(FEEDERS)
        batch = self._batch(self.rng.choice((0, 0, 1)))
        target = round(batch.target_share or 0.0, 3)
        share = target * MARK_HABIT[feeder] * self.rng.gauss(1, 0.006 + HAND_SD[feeder])
        readings = (*self._drops(share, Pail.FIRST), *self._drops(share, Pail.LAST), self._warm())
        self.season.keep(self._kept(batch, readings, Aim(target, TOLERANCE_SHARE), feeder), by=self._reader(feeder))

    def trial(self, signed: SignOff, bags: Bags, note: str) -> None:
        """All feeders fill the scoop to its line from one bag, five times each, in an order drawn by lot."""
        practised = note.startswith("after")
        season, (mark,) = self.season, self.season.records.marks(signed.id)
        trial = FeederTrial(
            id=new_id(),
            farm_id=season.farm.id,
            lot_id=signed.lot_id,
            scoop_id=season.scoop.id,
            scale_id=season.scale.id,
            way=FillWay.TO_MARK,
            started_at=season.now(),
            line_mm=mark.down_wall_mm,
            by="RO",
        )
        trial = season.keep(trial)
        shape = season.scoop.shape
        part = shapes.volume_ml(shape, mark.height_mm) / shapes.rim_volume_ml(shape)
        order = [who for who in FEEDERS for _ in range(FILLS_EACH)]
        self.rng.shuffle(order)
        for number, who in enumerate(order, start=1):
            hand = 1 - 0.75 * (MARK_HABIT[who] - 1) if practised and who == "JT" else 1.0
            typed = ounces(hand * bags.scoopful(300, part * season.scoop.volume_ml, who, settled=True))
            fill = TrialFill(
                id=new_id(),
                trial_id=trial.id,
                person=who,
                number=number,
                mass_g=read(typed, Kind.MASS, season.farm.units).value,
                typed=typed,
                at=season.now(),
                by="RO",
            )
            season.records.add_trial_fill(fill)
        season.close_trial(trial, note)

    def _instrument(self, name: str, kind: InstrumentKind, division: float, typed: str) -> Instrument:
        tool = Instrument(
            id=new_id(), farm_id=self.season.farm.id, name=name, kind=kind, division=division, division_typed=typed
        )
        return self.season.keep(tool)

    def _checked(
        self, tool: Instrument, kind: InstrumentCheckKind, expected: float, reading: float, typed: str
    ) -> None:
        check = InstrumentCheck(
            id=new_id(),
            farm_id=tool.farm_id,
            instrument_id=tool.id,
            kind=kind,
            expected=expected,
            reading=reading,
            typed=typed,
            at=self.season.now(),
            by="RO",
        )
        self.season.keep(check)

    def _ice(self) -> None:
        self._checked(self.stick, InstrumentCheckKind.KNOWN, 0.0, 5 / 9, "33 °F")

    def _zero(self) -> None:
        """In plain water before each check; in sugar water, and the thermometer in ice, every few months."""
        self._checked(self.glass, InstrumentCheckKind.WATER, 0.0, ZERO_OFF_BRIX, "0.1")
        if self._known_at is None or self.season.at - self._known_at > timedelta(days=KNOWN_DAYS):
            shown = KNOWN_BRIX + ZERO_OFF_BRIX
            self._checked(self.glass, InstrumentCheckKind.KNOWN, KNOWN_BRIX, shown, f"{shown:.1f}")
            if self._known_at is not None:
                self._ice()
            self._known_at = self.season.at

    def _references(self, lot_id: str) -> None:
        for powder_g, water_g in REFERENCES:
            drops = [self._brix(powder_g / (powder_g + water_g)) for _ in range(3)]
            mix = ReferenceMix(
                id=new_id(),
                farm_id=self.season.farm.id,
                lot_id=lot_id,
                instrument_id=self.glass.id,
                powder_g=powder_g,
                powder_typed=f"{powder_g:.0f} g",
                water_g=water_g,
                water_typed=f"{water_g:.0f} g",
                readings_brix=tuple(drops),
                readings_typed=" ".join(f"{drop:.1f}" for drop in drops),
                at=self.season.now(),
                by="RO",
            )
            self.season.keep(mix)

    def _brix(self, share: float) -> float:
        """One drop as the scale shows it, read to half a division."""
        true = BRIX_AT_NONE + BRIX_PER_SHARE * share + ZERO_OFF_BRIX + self.rng.gauss(0, DROP_SD_BRIX)
        return round(round(true / (DIVISION_BRIX / 2)) * (DIVISION_BRIX / 2), 1)

    def _drops(self, share: float, pail: Pail) -> list[Reading]:
        drops = [self._brix(share) for _ in range(3)]
        return [
            Reading(kind=ReadingKind.BRIX, value=drop, typed=f"{drop:.1f}", pail=pail, instrument_id=self.glass.id)
            for drop in drops
        ]

    def _warm(self) -> Reading:
        fahrenheit = self.rng.randrange(102, 109)
        celsius = read(f"{fahrenheit} F", Kind.TEMPERATURE, self.season.farm.units).value
        typed = f"{fahrenheit} °F"
        return Reading(kind=ReadingKind.MIX_TEMPERATURE, value=celsius, typed=typed, instrument_id=self.stick.id)

    def _batch(self, group: int) -> Batch:
        records, farm, plan = self.season.records, self.season.farm, self.season.plan
        now = farm_now(records, farm, standing(records, farm), self.season.at)
        return batch_of(now, plan, plan.groups[group], plan.groups[group].calves, now.vessel(plan.vessel_id))

    def _reader(self, feeder: str) -> str:
        return "MK" if feeder == "RO" else "RO"

    def _kept(self, batch: Batch, readings: tuple[Reading, ...], aim: Aim, feeder: str) -> MixCheck:
        at = self.season.now()
        found = work_out(batch, readings, aim, read_tools(self.season.records, self.season.farm), at)
        assert not found.troubles, found.troubles
        assert found.best is not None
        assert found.judged is not None
        assert batch.now.powder.lot is not None
        assert batch.plan is not None
        assert batch.group is not None
        return MixCheck(
            id=new_id(),
            farm_id=self.season.farm.id,
            at=at,
            lot_id=batch.now.powder.lot.id,
            readings=readings,
            target_share=aim.target_share,
            target_typed=show_percent(100 * aim.target_share),
            tolerance_share=aim.tolerance_share,
            tolerance_typed=show_percent(100 * aim.tolerance_share),
            by=self._reader(feeder),
            feeder=feeder,
            plan_id=batch.plan.id,
            group_name=batch.group.name,
            calves=batch.calves,
            vessel_id=batch.vessel.id if batch.vessel else None,
            solids_share=found.best.share,
            solids_low=found.best.low,
            solids_high=found.best.high,
            way=found.best.way,
            verdict=found.judged.verdict,
            program_version=__version__,
        )
