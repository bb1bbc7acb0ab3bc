"""Whose line a scoop bears: one state of a scoop, told alike on every page. No window needed.

A line counts once somebody said that it is drawn and the label is on. A lot of earlier versions, which asked nobody,
counts as marked with its sign-off, and where labels were printed, with its label.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import replace
from datetime import date
from enum import StrEnum

from calibrator.desk.hung import hanging, labels_of, never_up
from calibrator.desk.in_use import LotState
from calibrator.desk.label_asked import lines_unasked
from calibrator.desk.standing import LotStanding, Standing
from calibrator.model import LabelledLine, Lot, Mark, Printed, PrintKind, ScoopMarked, Step
from calibrator.science.scoop import same_line
from calibrator.values import dataclass

_LINE_MAY_MOVE = (Step.MARK, Step.FILLS_TO_MARK, Step.SIGN_OFF)


class ScoopState(StrEnum):
    """What a scoop is to a lot."""

    MARKED = "marked"
    TO_MARK = "to_mark"  # it was weighed in with the lot, and the line is not on it yet
    UNDER_WAY = "under_way"  # it is being weighed in anew: another line may be on it, which nobody signed off yet
    OTHER_LOT = "other_lot"  # it bears the line of another lot, and was not weighed in with this one
    NO_LINE = "no_line"


def scoop_state(now: Standing, known: LotStanding, scoop_id: str) -> ScoopState:
    """What a scoop is to a lot."""
    own, line = line_of(known, scoop_id), line_on(now, scoop_id)
    if own is not None:
        there = line is not None and line.sign_off_id == own.sign_off_id
        if there and line_under_way(known, scoop_id) is not None:
            return ScoopState.UNDER_WAY
        return ScoopState.MARKED if there else ScoopState.TO_MARK
    return ScoopState.NO_LINE if line is None else ScoopState.OTHER_LOT


@dataclass(frozen=True)
class LineUnderWay:
    """A weigh-in anew that has come to its line: where that is drawn, mm from the rim down the wall; None where nobody
    said yet that it is."""

    drawn_mm: float | None


def line_under_way(known: LotStanding, scoop_id: str) -> LineUnderWay | None:
    """The line of a weigh-in under way that takes the place of a signed-off one; None before it has come to that, and
    where it keeps the line."""
    begun, own = known.open_weigh_in, line_of(known, scoop_id)
    if begun is None or own is None or begun.scoop_id != scoop_id or begun.step not in _LINE_MAY_MOVE:
        return None
    drawn_mm = begun.drawn_line_mm
    return None if drawn_mm is not None and same_line(drawn_mm, own.down_wall_mm) else LineUnderWay(drawn_mm)


def line_of(known: LotStanding, scoop_id: str) -> Mark | None:
    """The line that a scoop is to bear for a lot."""
    return next((mark for mark in reversed(known.marks) if mark.scoop_id == scoop_id), None)


def line_on(now: Standing, scoop_id: str) -> Mark | None:
    """The line that a scoop bears; None where it bears none that counts."""
    if told := _told_of(now, scoop_id):
        newest = max(told, key=_day)
        return next((mark for mark in reversed(now.marks) if mark.sign_off_id == newest.sign_off_id), None)
    return _as_printed(now, scoop_id, _as_signed(now, scoop_id))


@dataclass(frozen=True)
class LineToCome:
    """A line drawn for a lot that is not fed yet, beside the one that is filled to today; mm from the rim down the
    wall."""

    lot: Lot
    down_wall_mm: float


def lines_to_come(now: Standing, scoop_id: str) -> tuple[LineToCome, ...]:
    """The lines that a scoop bears for lots to come, drawn in weigh-ins signed off and in those left open; none that
    is the line of today too."""
    fed = now.in_use
    own = line_of(fed, scoop_id) if fed else None
    drawn = [
        LineToCome(known.lot, down_wall_mm)
        for known in now.lots
        if known.state in (LotState.WAITING, LotState.UNDER_WAY) and (down_wall_mm := _drawn_mm(known, scoop_id))
    ]
    return tuple(line for line in drawn if own is None or not same_line(line.down_wall_mm, own.down_wall_mm))


def other_lines_mm(now: Standing, mark: Mark) -> tuple[float, ...]:
    """The lines that a hand may take for this one: that of the lot weighed in before with the scoop, those drawn for
    lots to come, and those of other feedings; mm down the wall."""
    order = [signed.id for signed in now.sign_offs]
    until = order.index(mark.sign_off_id) if mark.sign_off_id in order else 0
    earlier = [
        one
        for one in now.marks
        if one.scoop_id == mark.scoop_id and one.lot_id != mark.lot_id and one.sign_off_id in order[:until]
    ]
    before = [one.down_wall_mm for one in earlier[-1:] if not one.struck_level]
    beside = [line.down_wall_mm for line in lines_beside(now, mark)]
    found = [*before, *(line.down_wall_mm for line in lines_to_come(now, mark.scoop_id)), *beside]
    return tuple(mm for mm in found if not same_line(mm, mark.down_wall_mm))


def lines_to_wipe_out(now: Standing, known: LotStanding, scoop_id: str) -> tuple[float, ...]:
    """The lines that a scoop still bears of a lot that is fed no more, or of its weigh-in before, beside those of the
    lot in use, of which nobody said yet that they are on; mm down the wall. Those that stay for this lot are left out.
    """
    line, own = line_on(now, scoop_id), line_of(known, scoop_id)
    other = now.lot(line.lot_id) if line else None
    if line is None or own is None or line.sign_off_id == own.sign_off_id:
        return ()
    if other is not None and other.state in (LotState.WAITING, LotState.UNDER_WAY):
        return ()
    stay_mm = [own.down_wall_mm, *(each.down_wall_mm for each in lines_beside(now, own))]
    main_mm = [] if line.struck_level else [line.down_wall_mm]
    there_mm = (*main_mm, *(each.down_wall_mm for each in lines_beside(now, line)))
    return tuple(mm for mm in there_mm if not any(same_line(mm, stays) for stays in stay_mm))


def labelled_lines(
    now: Standing, scoop_id: str, sign_off_id: str, up_to: int | None = None
) -> tuple[LabelledLine, ...]:
    """The lines that a scoop has for a sign-off: those drawn on its newest label, of those `up_to` the print so
    numbered; where none was printed, those that were told when somebody said that it is marked, and before that those
    that its label is to have. None where nobody kept which."""
    told = (sheet for sheet in labels_of(now, scoop_id, sign_off_id) if up_to is None or sheet.number <= up_to)
    label = next(told, None)
    lines = label.lines if label else _without_label(now, scoop_id, sign_off_id)
    return tuple(line for line in lines or () if line.down_wall_mm)


def _without_label(now: Standing, scoop_id: str, sign_off_id: str) -> tuple[LabelledLine, ...] | None:
    said = next((told for told in _told_of(now, scoop_id) if told.sign_off_id == sign_off_id), None)
    if said is not None:
        return said.lines
    known = next((one for one in now.open_lots if any(mark.sign_off_id == sign_off_id for mark in one.marks)), None)
    if known is None or scoop_state(now, known, scoop_id) is not ScoopState.TO_MARK:
        return None
    return lines_unasked(now, known, scoop_id)


@dataclass(frozen=True)
class LineBeside:
    """A line that a scoop bears beside its main one, by its label: for one feeding of `target_g`, mm from the rim down
    the wall, with `full_scoops` level scoopfuls before it, or `to_line` equal ones of `held_g` to it."""

    target_g: float
    down_wall_mm: float
    full_scoops: int
    to_line: int
    held_g: float


def lines_beside(now: Standing, mark: Mark) -> tuple[LineBeside, ...]:
    """The lines of other feedings that a scoop has or is to have for a mark, as `labelled_lines`."""
    return tuple(
        LineBeside(line.target_mass_g, line.down_wall_mm, line.full_scoops, line.to_line, line.held_g)
        for line in labelled_lines(now, mark.scoop_id, mark.sign_off_id)
        if line.down_wall_mm and not same_line(line.down_wall_mm, mark.down_wall_mm)
    )


def is_drawn(now: Standing, known: LotStanding, scoop_id: str) -> bool:
    """Whether the line of a lot is on a scoop since its weigh-in, which fills to it as drawn: no other lot was weighed
    in with the scoop, nor said to have its line on it, after that."""
    own = line_of(known, scoop_id)
    if own is None or own.struck_level:
        return False
    newest = [signed for signed in now.sign_offs if signed.scoop_id == scoop_id][-1]
    since = newest.at.astimezone().date()
    return newest.id == own.sign_off_id and all(told.on <= since for told in _told_of(now, scoop_id))


def _drawn_mm(known: LotStanding, scoop_id: str) -> float | None:
    """Where the line of a lot is drawn on a scoop; None or 0 where there is none."""
    begun, own = known.open_weigh_in, line_of(known, scoop_id)
    if begun is not None and begun.scoop_id == scoop_id and begun.drawn_line_mm is not None:
        return begun.drawn_line_mm
    return own.down_wall_mm if own else None


def may_fill_to_line(now: Standing, lot_id: str, scoop_id: str) -> bool:
    """Whether a scoop can be filled to the line of a lot: it bears that one or one at the same place, it is drawn
    beside the line of today, or nobody was asked and it bears both."""
    line, known = line_on(now, scoop_id), now.lot(lot_id)
    own = line_of(known, scoop_id) if known else None
    drawn_mm = [come.down_wall_mm for come in lines_to_come(now, scoop_id) if come.lot.id == lot_id]
    lines_mm = [*drawn_mm, *([line.down_wall_mm] if line else [])]
    there = own is not None and any(same_line(mm, own.down_wall_mm) for mm in lines_mm)
    return not _told_of(now, scoop_id) or there or (line is not None and line.lot_id == lot_id)


def label_is_printed(now: Standing, mark: Mark) -> bool:
    """Whether the newest label of a scoop is that of a line; of a lot that waits, whether one was printed ahead."""
    known, spoiled = now.lot(mark.lot_id), never_up(now.endings)
    about: Iterable[Printed] = hanging(now, PrintKind.SCOOP_LABEL)
    if known is not None and known.state is LotState.WAITING:
        about = (one for one in now.prints if one.kind is PrintKind.SCOOP_LABEL and one.id not in spoiled)
    return any(one.scoop_id == mark.scoop_id and one.sign_off_id == mark.sign_off_id for one in about)


def words_so_far(now: Standing, lot: Lot) -> tuple[ScoopMarked, ...]:
    """The scoops that bear a lot's line; of a lot of earlier versions by its sign-offs and labels."""
    if lot.scoops_marked is not None:
        return lot.scoops_marked
    lines = [line for scoop in now.scoops if (line := line_on(now, scoop.id)) and line.lot_id == lot.id]
    on = {signed.id: signed.at.astimezone().date() for signed in now.sign_offs}
    return tuple(
        ScoopMarked(scoop_id=line.scoop_id, sign_off_id=line.sign_off_id, on=on[line.sign_off_id]) for line in lines
    )


def marked(now: Standing, known: LotStanding, scoop_id: str, on: date) -> tuple[Lot, ...]:
    """The lots to keep once a scoop bears a lot's line: this lot, and those whose line it bore before."""
    own = line_of(known, scoop_id)
    if own is None:
        return ()
    by_hand = not any(labels_of(now, scoop_id, own.sign_off_id))
    lines = labelled_lines(now, scoop_id, own.sign_off_id) if by_hand else None
    told = ScoopMarked(scoop_id=scoop_id, sign_off_id=own.sign_off_id, on=on, lines=lines)
    others = [other.lot for other in now.lots if other.lot.id != known.lot.id]
    wiped = [
        replace(lot, scoops_marked=without)
        for lot in others
        if (without := _without(lot.scoops_marked or (), scoop_id)) != (lot.scoops_marked or ())
    ]
    kept = _without(words_so_far(now, known.lot), scoop_id)
    return (*wiped, replace(known.lot, scoops_marked=(*kept, told)))


def not_marked(now: Standing, known: LotStanding, scoop_id: str) -> Lot:
    """The lot to keep once it was said by mistake that a scoop bears its line: nobody says what it bears, then."""
    return replace(known.lot, scoops_marked=_without(words_so_far(now, known.lot), scoop_id))


def as_before(lot: Lot, kept: Lot, before: Lot, scoop_id: str) -> Lot:
    """A lot as it is now, with what it told of a scoop `before` it was `kept`; what was told of others since stays."""
    if lot.scoops_marked == kept.scoops_marked:
        return replace(lot, scoops_marked=before.scoops_marked)
    own = tuple(told for told in before.scoops_marked or () if told.scoop_id == scoop_id)
    return replace(lot, scoops_marked=(*_without(lot.scoops_marked or (), scoop_id), *own))


def _told_of(now: Standing, scoop_id: str) -> list[ScoopMarked]:
    """What was told of the lines on a scoop, of any lot."""
    return [told for known in now.lots for told in known.lot.scoops_marked or () if told.scoop_id == scoop_id]


def _without(told: Sequence[ScoopMarked], scoop_id: str) -> tuple[ScoopMarked, ...]:
    return tuple(each for each in told if each.scoop_id != scoop_id)


def _day(told: ScoopMarked) -> date:
    return told.on


def _as_signed(now: Standing, scoop_id: str) -> Mark | None:
    """The newest mark of lots of earlier versions.

    While its lot is open beside the lot in use, the scoop bears both lines, and that of the lot in use counts.
    """
    marks = [mark for mark in _unasked(now) if mark.scoop_id == scoop_id]
    if not marks or now.in_use is None:
        return marks[-1] if marks else None
    own = [mark for mark in now.in_use.marks if mark in marks]
    both_open = any(known.lot.id == marks[-1].lot_id for known in now.open_lots)
    return own[-1] if own and both_open else marks[-1]


def _as_printed(now: Standing, scoop_id: str, line: Mark | None) -> Mark | None:
    """The line of the label that is on the scoop, where one was ever printed for it."""
    label = next((sheet for sheet in hanging(now, PrintKind.SCOOP_LABEL) if sheet.scoop_id == scoop_id), None)
    if line is None or label is None:
        return line
    return next((mark for mark in _unasked(now) if mark.sign_off_id == label.sign_off_id), line)


def _unasked(now: Standing) -> list[Mark]:
    """The marks of lots of earlier versions, of which nobody was asked."""
    lots = {known.lot.id for known in now.lots if known.lot.scoops_marked is None}
    return [mark for mark in now.marks if mark.lot_id in lots]
