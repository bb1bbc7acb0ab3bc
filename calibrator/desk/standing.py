"""Where things stand: which lot is in use, what each lot has come to, what is waiting. No window needed."""

from __future__ import annotations

from collections.abc import Container, Iterable, Sequence
from dataclasses import dataclass
from datetime import date, datetime
from enum import StrEnum

from calibrator.model import (
    Ending,
    Farm,
    Instrument,
    Lot,
    Mark,
    MixCheck,
    Printed,
    PrintKind,
    Scale,
    Scoop,
    SheetEnding,
    SignOff,
    WeighIn,
)
from calibrator.records import Records, brought_in

CHECK_EVERY_DAYS = 7
FIRST_CHECK_DAYS = 1
"""How long a mix goes unchecked before it is asked for, and that of a lot begun: common practice, no source."""

THIN, STRONG, RIGHT = "thin", "strong", "inside"
OFF = (THIN, STRONG)
"""Verdicts of `science.check` by their words: the first page does not load it for them."""


class LotState(StrEnum):
    """What a lot has come to."""

    DELIVERED = "delivered"
    BROUGHT_IN = "brought_in"  # from a file of another program, another lot came after it: it waits for nothing
    UNDER_WAY = "under_way"
    SIGNED_OFF = "signed_off"
    FINISHED = "finished"


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

    @property
    def density(self) -> Interval | None:
        """Bulk density struck level as signed off, g/mL; None before sign-off."""
        signed = self.sign_off
        if signed is None:
            return None
        half_width = (signed.density_high_g_per_ml - signed.density_low_g_per_ml) / 2
        return Interval(signed.density_g_per_ml, half_width)


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
    if not records.every(Scale, farm.id):
        return FirstStep.SCALE
    if not records.every(Scoop, farm.id):
        return FirstStep.SCOOP
    return None if records.every(Lot, farm.id) else FirstStep.LOT


class Need(StrEnum):
    """What can be waiting."""

    GO_ON = "go_on"  # a weigh-in was left open
    MARK_SCOOP = "mark_scoop"  # a scoop still bears the line of another lot
    WEIGH_IN = "weigh_in"  # a lot came and was not weighed in
    PRINT_LABELS = "print_labels"  # labels bear an old line
    PRINT_CHARTS = "print_charts"  # charts rest on an older sign-off
    PRINT_LOT_SHEETS = "print_lot_sheets"  # a lot was weighed anew since its record was printed
    MIX_OFF = "mix_off"  # the last check of the mix was too thin or too strong, and no right one followed
    CHECK_MIX = "check_mix"  # the mix of the lot in use was not checked for long


NEEDED = {
    Need.PRINT_LABELS: PrintKind.SCOOP_LABEL,
    Need.PRINT_CHARTS: PrintKind.WALL_CHART,
    Need.PRINT_LOT_SHEETS: PrintKind.LOT_SHEET,
}
"""The needs that end when a sheet of a kind is printed anew, or seen gone."""


@dataclass(frozen=True)
class Waiting:
    """One thing that is waiting, with what it concerns."""

    need: Need
    lot: Lot | None = None
    weigh_in: WeighIn | None = None
    scoop: Scoop | None = None
    old_lot: Lot | None = None
    sheets: tuple[Printed, ...] = ()
    day: date | None = None
    check: MixCheck | None = None


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
    has_instruments: bool = False

    def lot(self, lot_id: str) -> LotStanding | None:
        return next((known for known in self.lots if known.lot.id == lot_id), None)

    @property
    def in_use(self) -> LotStanding | None:
        """The lot that is fed: that of the newest change-over, before any that of the newest sign-off.

        Lots that are finished do not count.
        """
        changed = [known for known in self.open_lots if known.lot.fed_from is not None]
        if changed:
            return max(changed, key=lambda known: known.lot.fed_from or date.min)
        return self.open_lots[-1] if self.open_lots else None

    @property
    def open_lots(self) -> tuple[LotStanding, ...]:
        """The lots that are signed off and not finished, that of the newest sign-off last."""
        newest = {signed.lot_id: number for number, signed in enumerate(self.sign_offs)}
        known = [lot for lot in self.lots if lot.lot.id in newest and lot.lot.finished_on is None]
        return tuple(sorted(known, key=lambda lot: newest[lot.lot.id]))


def standing(records: Records, farm: Farm) -> Standing:
    """Read where a farm stands."""
    sign_offs = records.sign_offs(farm.id)
    marks = [mark for mark in records.marks() if mark.farm_id == farm.id]
    weigh_ins = records.every(WeighIn, farm.id)
    every_lot = records.every(Lot, farm.id)
    past = _past(every_lot, brought_in(records, Lot))
    lots = tuple(_lot_standing(lot, weigh_ins, sign_offs, marks, lot.id in past) for lot in every_lot)
    scoops = tuple(scoop for scoop in records.every(Scoop, farm.id) if scoop.retired_on is None)
    prints, endings = tuple(records.prints(farm.id)), tuple(records.sheet_endings(farm.id))
    checks = tuple(check for check in records.every(MixCheck, farm.id) if not check.withdrawn_reason)
    has_instruments = any(made.retired_on is None for made in records.every(Instrument, farm.id))
    return Standing(farm.id, lots, scoops, tuple(sign_offs), tuple(marks), prints, endings, checks, has_instruments)


def lot_in_use(records: Records, farm: Farm) -> LotStanding | None:
    """The lot that is being fed, see `Standing.in_use`."""
    return standing(records, farm).in_use


def marks_in_force(marks: Iterable[Mark], sign_offs: Sequence[SignOff]) -> tuple[Mark, ...]:
    """Of each scoop the marks of its newest sign-off among those given (oldest first)."""
    newest = {sign_off.scoop_id: sign_off.id for sign_off in sign_offs}
    return tuple(mark for mark in marks if newest.get(mark.scoop_id) == mark.sign_off_id)


def waiting(now: Standing, today: date) -> list[Waiting]:
    """What needs doing, what cannot wait first."""
    found = [
        Waiting(Need.GO_ON, lot=known.lot, weigh_in=known.open_weigh_in) for known in now.lots if known.open_weigh_in
    ]
    found += _mix_off(now)
    found += _scoops_with_old_lines(now)
    found += [Waiting(Need.WEIGH_IN, lot=known.lot) for known in now.lots if known.state is LotState.DELIVERED]
    for need, kind in NEEDED.items():
        if sheets := outdated_sheets(now, kind):
            found.append(Waiting(need, lot=_lot_in_force(now, sheets[0]), sheets=sheets))
    overdue = [] if any(each.need is Need.MIX_OFF for each in found) else _check_overdue(now, today)
    return [*found, *overdue]


def _mix_off(now: Standing) -> list[Waiting]:
    """The mix of the lot in use, where the last check that told anything said that it was not as wanted."""
    lot = now.in_use.lot if now.in_use else None
    told = [c for c in now.checks if lot and c.lot_id == lot.id and c.verdict in (*OFF, RIGHT)]
    last = max(told, key=_moment, default=None)
    if last is None or last.verdict == RIGHT:
        return []
    return [Waiting(Need.MIX_OFF, lot=lot, day=last.at.astimezone().date(), check=last)]


def _moment(check: MixCheck) -> datetime:
    return check.at


def _check_overdue(now: Standing, today: date) -> list[Waiting]:
    """The mix of the lot in use, on a farm that checks its mixes, once the last check is older than a week."""
    lot = now.in_use.lot if now.in_use else None
    if lot is None or not (now.checks or now.has_instruments):
        return []
    last = max((check.at.date() for check in now.checks if check.lot_id == lot.id), default=None)
    signed = now.in_use.sign_off.at.date() if now.in_use and now.in_use.sign_off else today
    since = last or max(signed, lot.fed_from or signed)
    allowed = CHECK_EVERY_DAYS if last else FIRST_CHECK_DAYS
    return [Waiting(Need.CHECK_MIX, lot=lot, day=last)] if (today - since).days > allowed else []


def outdated_sheets(now: Standing, kind: PrintKind) -> tuple[Printed, ...]:
    """The sheets that are about somewhere and rest on an older sign-off than the one in force.

    A label is outdated by a newer sign-off of its scoop, a chart by any newer one, a lot sheet by a newer one
    of its lot and scoop. A sheet that another has replaced, or that somebody saw gone, counts no more.
    """
    return tuple(sheet for sheet in hanging(now, kind) if sheet.sign_off_id != _in_force(now, sheet))


def hanging(now: Standing, kind: PrintKind) -> tuple[Printed, ...]:
    """The newest sheet of each place that got up there and that nobody saw gone."""
    spoiled, gone = never_up(now.endings), _gone(now.endings)
    newest = {place_of(sheet): sheet for sheet in now.prints if sheet.kind is kind and sheet.id not in spoiled}
    return tuple(sheet for sheet in newest.values() if sheet.id not in gone)


def place_of(sheet: Printed) -> tuple[PrintKind, str | None, str | None, str | None]:
    """What a sheet is up for: of two sheets for one place the newer replaces the older."""
    lot_id = sheet.lot_id if sheet.kind is PrintKind.LOT_SHEET else None
    return sheet.kind, sheet.scoop_id, sheet.plan_id, lot_id


def never_up(endings: Iterable[SheetEnding]) -> frozenset[str]:
    """The sheets that were thrown away unused."""
    return frozenset(id for id, ending in _newest_words(endings).items() if ending is Ending.SPOILED)


def _gone(endings: Iterable[SheetEnding]) -> frozenset[str]:
    return frozenset(id for id, ending in _newest_words(endings).items() if ending is not Ending.STILL_UP)


def _newest_words(endings: Iterable[SheetEnding]) -> dict[str, Ending]:
    return {told.print_id: told.ending for told in endings}


def line_on(now: Standing, scoop_id: str) -> Mark | None:
    """The line that counts on a scoop: its newest mark, for whatever lot.

    While the newest one's lot is open beside the lot in use, a scoop bears both lines, and that of the lot in
    use counts.
    """
    marks = [mark for mark in now.marks if mark.scoop_id == scoop_id]
    if not marks or now.in_use is None:
        return marks[-1] if marks else None
    own = [mark for mark in now.in_use.marks if mark.scoop_id == scoop_id]
    both_open = any(known.lot.id == marks[-1].lot_id for known in now.open_lots)
    return own[-1] if own and both_open else marks[-1]


def _in_force(now: Standing, sheet: Printed) -> str:
    """The newest sign-off that a sheet of its kind has to rest on."""
    of_scoop = sheet.kind in (PrintKind.SCOOP_LABEL, PrintKind.LOT_SHEET)
    # While two lots are open, the newest sign-off is not always that of the lot that is fed.
    lot_id = sheet.lot_id if sheet.kind is PrintKind.LOT_SHEET else now.in_use.lot.id if now.in_use else ""
    ids = [
        s.id
        for s in now.sign_offs
        if (not of_scoop or s.scoop_id == sheet.scoop_id) and (not lot_id or s.lot_id == lot_id)
    ]
    return ids[-1] if ids else sheet.sign_off_id


def _lot_in_force(now: Standing, sheet: Printed) -> Lot | None:
    """The lot whose sign-off outdated a sheet."""
    lot_id = next((s.lot_id for s in now.sign_offs if s.id == _in_force(now, sheet)), "")
    known = now.lot(lot_id)
    return known.lot if known else None


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
    left_open = [w for w in weigh_ins if w.lot_id == lot.id and not w.abandoned and w.id not in signed]
    return LotStanding(
        lot,
        _state(lot, own, left_open, past),
        own[-1] if own else None,
        marks_in_force([mark for mark in marks if mark.lot_id == lot.id], own),
        left_open[-1] if left_open else None,
    )


def _state(lot: Lot, sign_offs: Sequence[SignOff], left_open: Sequence[WeighIn], past: bool) -> LotState:
    if lot.finished_on is not None:
        return LotState.FINISHED
    if left_open:
        return LotState.UNDER_WAY
    if sign_offs:
        return LotState.SIGNED_OFF
    return LotState.BROUGHT_IN if past else LotState.DELIVERED


def _scoops_with_old_lines(now: Standing) -> list[Waiting]:
    if now.in_use is None:
        return []
    lot = now.in_use.lot
    lines = [(scoop, line_on(now, scoop.id)) for scoop in now.scoops]
    return [
        Waiting(Need.MARK_SCOOP, lot=lot, scoop=scoop, old_lot=_lot_of(now, line))
        for scoop, line in lines
        if line and line.lot_id != lot.id
    ]


def _lot_of(now: Standing, mark: Mark) -> Lot | None:
    known = now.lot(mark.lot_id)
    return known.lot if known else None
