"""Where things stand: which lot is in use, what each lot has come to, which sheets there are. No window needed."""

from __future__ import annotations

from collections.abc import Container, Iterable, Mapping, Sequence
from dataclasses import field, replace
from datetime import date, datetime
from enum import StrEnum
from operator import itemgetter
from weakref import WeakKeyDictionary

from calibrator.desk.in_use import LotState, lot_fed, next_lot, state_of
from calibrator.model import (
    BagCount,
    Ending,
    Farm,
    Instrument,
    Lot,
    Mark,
    MixCheck,
    Plan,
    Printed,
    PrintKind,
    Scale,
    Scoop,
    SheetEnding,
    SignOff,
    Vessel,
    WeighIn,
)
from calibrator.records import Change, Records, brought_in
from calibrator.science.as_fed import PlansFrom
from calibrator.values import dataclass


@dataclass(frozen=True)
class Interval:
    """A figure and half the width of its 95 % interval."""

    value: float
    half_width: float


@dataclass(frozen=True)
class LotStanding:
    """A lot with its newest sign-off, the marks that hold for it, and the weigh-in left open."""

    lot: Lot
    state: LotState
    sign_off: SignOff | None = None
    marks: tuple[Mark, ...] = ()
    open_weigh_in: WeighIn | None = None
    feedings_g: tuple[float, ...] = ()  # what its marks were weighed in for: one scoopful, or several

    @property
    def density(self) -> Interval | None:
        """Bulk density struck level as signed off, g/mL; None before sign-off."""
        signed = self.sign_off
        if signed is None:
            return None
        return Interval(signed.density_g_per_ml, signed.density_half_width_g_per_ml)


class FirstStep(StrEnum):
    """What a new farm needs before its first weigh-in, in the order it is asked."""

    FARM = "farm"
    SCALE = "scale"
    SCOOP = "scoop"
    LOT = "lot"


def first_step(records: Records, farm: Farm | None) -> FirstStep | None:
    """The first of these that is still missing; None once a first weigh-in can be begun."""
    if farm is None:
        return FirstStep.FARM
    steps = ((Scale, FirstStep.SCALE), (Scoop, FirstStep.SCOOP), (Lot, FirstStep.LOT))
    return next((step for kind, step in steps if not records.has_any(kind, farm.id)), None)


@dataclass(frozen=True)
class ChartBasis:
    """What the figures of a wall chart come from besides its lot and its scoops; None is as it is today."""

    plan: Plan
    farm: Farm | None = None
    vessel: Vessel | None = None
    scoops: frozenset[str] = frozenset()  # those weighed in for its lot that were in use when it was printed


@dataclass(frozen=True)
class Standing:
    """A farm's lots, marks and sheets, read at one moment."""

    farm_id: str
    lots: tuple[LotStanding, ...]
    scoops: tuple[Scoop, ...]  # those in use
    sign_offs: tuple[SignOff, ...]  # oldest first
    marks: tuple[Mark, ...]
    prints: tuple[Printed, ...]
    endings: tuple[SheetEnding, ...] = ()  # what became of printed sheets, oldest word first
    checks: tuple[MixCheck, ...] = ()  # of the mix, those that were not withdrawn
    bag_counts: tuple[BagCount, ...] = ()  # those that were not withdrawn
    has_instruments: bool = False
    plans: tuple[Plan, ...] = ()  # those in use
    plans_told: tuple[PlansFrom, ...] = ()  # those in use from each day on that one was told, oldest first
    charted: Mapping[str, ChartBasis] = field(default_factory=dict)  # what an open lot's newest charts show
    labelled: Mapping[str, tuple[Plan, ...]] = field(default_factory=dict)  # what an open lot's newest labels knew
    farm: Farm | None = None
    vessels: Mapping[str, Vessel] = field(default_factory=dict)
    today: date = date.max
    asks_for_charts: bool = True
    tolerance_share: float = 0.0  # of a feeding's powder

    def lot(self, lot_id: str) -> LotStanding | None:
        return next((known for known in self.lots if known.lot.id == lot_id), None)

    def first_weighed(self, lot_id: str) -> date | None:
        """The day, by this computer's clock, on which a lot was first signed off; None where it was not."""
        return next((signed.at.astimezone().date() for signed in self.sign_offs if signed.lot_id == lot_id), None)

    def weighed_in_with(self, lot_id: str) -> tuple[Scoop, ...]:
        """The scoops in use that a lot was weighed in with."""
        signed = {each.scoop_id for each in self.sign_offs if each.lot_id == lot_id}
        return tuple(scoop for scoop in self.scoops if scoop.id in signed)

    @property
    def in_use(self) -> LotStanding | None:
        """The lot that is fed; None while none is weighed in and not finished."""
        return next((known for known in self.lots if known.state is LotState.IN_USE), None)

    @property
    def open_lots(self) -> tuple[LotStanding, ...]:
        """The lots that are signed off and not finished, that of the newest sign-off last."""
        return _open(self.lots, self.sign_offs)

    @property
    def next_lot(self) -> LotStanding | None:
        """Of the lots that wait the one to change over to."""
        found = next_lot([known.lot for known in self.open_lots if known.state is LotState.WAITING])
        return self.lot(found.id) if found else None


_read: WeakKeyDictionary[Records, tuple[object, Standing]] = WeakKeyDictionary()
"""The standing read last of each store: several pages ask for the same one after another."""


def standing(records: Records, farm: Farm, today: date = date.max) -> Standing:
    """Read where a farm stands; without a day as after all the change-overs that were told."""
    version = (records.version(), farm, today)
    kept = _read.get(records)
    if kept is None or kept[0] != version:
        kept = _read[records] = (version, _standing(records, farm, today))
    return kept[1]


def _standing(records: Records, farm: Farm, today: date) -> Standing:
    sign_offs = records.sign_offs(farm.id)
    marks = [mark for mark in records.marks() if mark.farm_id == farm.id]
    weigh_ins = records.every(WeighIn, farm.id)
    every_lot = records.every(Lot, farm.id)
    past = _past(every_lot, brought_in(records, Lot))
    lots = tuple(_lot_standing(lot, weigh_ins, sign_offs, marks, lot.id in past) for lot in every_lot)
    prints = tuple(records.prints(farm.id))
    open_lots = {known.lot.id for known in _open(lots, sign_offs)}
    of_open_lots = [sheet for sheet in prints if sheet.lot_id in open_lots]
    endings = records.sheet_endings(farm.id)
    plans = tuple(plan for plan in records.every(Plan, farm.id) if plan.retired_on is None)
    return Standing(
        farm.id,
        _with_uses(lots, sign_offs, today),
        tuple(scoop for scoop in records.every(Scoop, farm.id) if scoop.retired_on is None),
        tuple(sign_offs),
        tuple(marks),
        prints,
        endings=tuple(endings),
        checks=tuple(check for check in records.every(MixCheck, farm.id) if not check.withdrawn_reason),
        bag_counts=tuple(count for count in records.every(BagCount, farm.id) if count.counts),
        has_instruments=any(made.retired_on is None for made in records.every(Instrument, farm.id)),
        plans=plans,
        plans_told=_plans_told(records.histories(Plan, farm.id)),
        charted=_charted(records, of_open_lots, sign_offs),
        labelled=_labelled(records, of_open_lots, endings, plans),
        farm=farm,
        vessels={vessel.id: vessel for vessel in records.every(Vessel, farm.id)},
        today=today,
        asks_for_charts=farm.asks_for_charts,
        tolerance_share=farm.tolerance_share,
    )


def _plans_told(tellings: Sequence[Change[Plan]]) -> tuple[PlansFrom, ...]:
    """The plans of each day on which one was told, as they stood at its end: what was fed goes by them.

    `tellings` are in the order in which they were kept. None of a plan was told after the one that replaced it: where
    its time says so, the clock of its computer was wrong.
    """
    timed: list[tuple[datetime, Plan]] = []
    next_at: dict[str, datetime] = {}
    for change in reversed(tellings):
        plan = change.noun
        next_at[plan.id] = at = min(change.at, next_at.get(plan.id, change.at))
        timed.append((at, plan))
    timed.reverse()
    held: dict[str, Plan] = {}
    told: dict[date, tuple[Plan, ...]] = {}
    for at, plan in sorted(timed, key=itemgetter(0)):
        held[plan.id] = plan
        told[at.astimezone().date()] = tuple(plan for plan in held.values() if plan.retired_on is None)
    return tuple(PlansFrom(on, plans) for on, plans in told.items())


def _charted(records: Records, prints: Sequence[Printed], sign_offs: Sequence[SignOff]) -> dict[str, ChartBasis]:
    charts = [sheet for sheet in prints if sheet.kind is PrintKind.WALL_CHART and sheet.plan_id]
    newest = {(sheet.plan_id, sheet.lot_id): sheet for sheet in charts}
    told = ((sheet.id, _basis(records, sheet, sign_offs)) for sheet in newest.values())
    return {id: basis for id, basis in told if basis is not None}


def _basis(records: Records, sheet: Printed, sign_offs: Sequence[SignOff]) -> ChartBasis | None:
    plan = records.as_of(Plan, sheet.plan_id or "", sheet)
    if plan is None:
        return None
    vessel = records.as_of(Vessel, plan.vessel_id, sheet) if plan.vessel_id else None
    signed = {each.scoop_id for each in sign_offs if each.lot_id == sheet.lot_id}
    then = (records.as_of(Scoop, scoop_id, sheet) for scoop_id in signed)
    scoops = frozenset(scoop.id for scoop in then if scoop is not None and scoop.retired_on is None)
    return ChartBasis(plan, records.as_of(Farm, sheet.farm_id, sheet), vessel, scoops)


def _labelled(
    records: Records, prints: Sequence[Printed], endings: Sequence[SheetEnding], plans: Sequence[Plan]
) -> dict[str, tuple[Plan, ...]]:
    """The plans as they were when each scoop's newest label of a lot was printed, or was said to stay as it is."""
    labels = {(sheet.scoop_id, sheet.lot_id): sheet for sheet in prints if sheet.kind is PrintKind.SCOOP_LABEL}
    stays = {told.print_id: told for told in endings if told.ending is Ending.STILL_UP}
    known = {}
    for sheet in labels.values():
        then = (records.as_of(Plan, plan.id, stays.get(sheet.id, sheet)) for plan in plans)
        known[sheet.id] = tuple(plan for plan in then if plan is not None and plan.retired_on is None)
    return known


def _open(lots: Sequence[LotStanding], sign_offs: Sequence[SignOff]) -> tuple[LotStanding, ...]:
    newest = {signed.lot_id: number for number, signed in enumerate(sign_offs)}
    known = [lot for lot in lots if lot.lot.id in newest and lot.lot.finished_on is None]
    return tuple(sorted(known, key=lambda lot: newest[lot.lot.id]))


def _with_uses(lots: tuple[LotStanding, ...], sign_offs: Sequence[SignOff], today: date) -> tuple[LotStanding, ...]:
    """The lots, those open told apart by which is in use."""
    open_lots = [known.lot for known in _open(lots, sign_offs)]
    fed = lot_fed(open_lots, today)
    if fed is None:
        return lots
    first = list(dict.fromkeys(signed.lot_id for signed in sign_offs))
    states = {
        lot.id: state_of(lot, fed, earlier=first.index(lot.id) < first.index(fed.id), today=today) for lot in open_lots
    }
    return tuple(replace(known, state=states.get(known.lot.id, known.state)) for known in lots)


def marks_in_force(marks: Iterable[Mark], sign_offs: Sequence[SignOff]) -> tuple[Mark, ...]:
    """Of each scoop the marks of its newest sign-off among those given (oldest first)."""
    newest = {sign_off.scoop_id: sign_off.id for sign_off in sign_offs}
    return tuple(mark for mark in marks if newest.get(mark.scoop_id) == mark.sign_off_id)


def _past(lots: Sequence[Lot], brought: Container[str]) -> frozenset[str]:
    """The lots from a file that others came after: nobody is to weigh them in now."""
    newest = max((lot.arrived_on for lot in lots if lot.arrived_on is not None), default=date.max)
    own = (lot for lot in lots if lot.id in brought)
    return frozenset(lot.id for lot in own if lot.arrived_on is None or lot.arrived_on < newest)


def _lot_standing(
    lot: Lot, weigh_ins: Sequence[WeighIn], sign_offs: Sequence[SignOff], marks: Sequence[Mark], past: bool
) -> LotStanding:
    own = [sign_off for sign_off in sign_offs if sign_off.lot_id == lot.id]
    signed = {sign_off.weigh_in_id for sign_off in own}
    weighed_in = (w.target_mass_g for w in weigh_ins if w.id in signed)
    left_open = [w for w in weigh_ins if w.lot_id == lot.id and not w.abandoned and w.id not in signed]
    return LotStanding(
        lot,
        _state(lot, own, left_open, past),
        own[-1] if own else None,
        marks_in_force([mark for mark in marks if mark.lot_id == lot.id], own),
        left_open[-1] if left_open else None,
        tuple(target_g for target_g in weighed_in if target_g is not None),
    )


def _state(lot: Lot, sign_offs: Sequence[SignOff], left_open: Sequence[WeighIn], past: bool) -> LotState:
    if lot.finished_on is not None:
        return LotState.FINISHED
    if sign_offs:
        return LotState.WAITING
    if left_open:
        return LotState.UNDER_WAY
    return LotState.BROUGHT_IN if past else LotState.DELIVERED
