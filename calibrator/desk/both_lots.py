"""A batch that needs two lots: the last of the one, the rest from the other. No window needed."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from PySide6.QtCore import QCoreApplication

from calibrator.desk.counted import counted
from calibrator.desk.scoop_lines import may_fill_to_line
from calibrator.desk.sheet_lines import GroupSheet, LotInUse
from calibrator.desk.standing import Standing
from calibrator.desk.table_words import Telling, powder_text, way_text
from calibrator.model import FillWay
from calibrator.science.scoop import same_line
from calibrator.science.scoops import ScoopCount, ScoopWay
from calibrator.units import show_scoopfuls
from calibrator.values import dataclass

translate = QCoreApplication.translate


@dataclass(frozen=True)
class FromBoth:
    """The powder of one batch of a table, and its scoopfuls where they can be counted, from each lot.

    It is one of so many equal `batches`, which together feed the `calves`.
    """

    sheet: GroupSheet
    old_g: float
    new_g: float
    old_scoops: ScoopCount | None
    new_scoops: ScoopCount | None
    calves: int
    batches: int
    rest_g: float = 0.0  # of the old lot, for this table's other batches
    beyond_g: float = 0.0  # of the old lot, beyond all of them
    off: tuple[str, ...] = ()  # the lots whose line is not on a scoop
    one_line: bool = False  # both are filled to lines that lie at one place

    @property
    def to_a_line(self) -> bool:
        """Whether any scoop is filled to a line."""
        counts = (count for count in (self.old_scoops, self.new_scoops) if count)
        return any(way.way is FillWay.TO_MARK for count in counts for way, _ in count.parts)


def group_by_group(
    sheets: Sequence[GroupSheet], old: LotInUse, new: LotInUse, left_g: float, now: Standing
) -> tuple[FromBoth, ...]:
    """Today's batches of every group that is fed, in the plan's order: what one leaves of another lot goes into the
    next one. Raises CannotCompute."""
    return tuple(_each(sheets, old, new, left_g, now))


def _each(
    sheets: Sequence[GroupSheet], old: LotInUse, new: LotInUse, left_g: float, now: Standing
) -> Iterator[FromBoth]:
    for sheet in sheets:
        found = from_both(sheet, old, new, left_g, now)
        if found is not None:
            left_g = found.beyond_g
            yield found


def from_both(sheet: GroupSheet, old: LotInUse, new: LotInUse, left_g: float, now: Standing) -> FromBoth | None:
    """Today's batch of a table with `left_g` of another lot used up first; None where nobody is fed.

    Both weigh alike into the mix: the rate is by weight. Scoopfuls are each lot's own, to its line only where the scoop
    bears that. Raises CannotCompute.
    """
    line = sheet.today_line
    if line is None:
        return None
    old_g = min(left_g, line.powder_g)
    new_g = line.powder_g - old_g
    there = [_there(now, lot) for lot in (old, new)]
    counts = [sheet.count_by(ways, mass_g) for ways, mass_g in zip(there, (old_g, new_g), strict=True)]
    of_old, of_new = (count if count and count.countable else None for count in counts)
    off = tuple(_number(lot) for lot, ways in zip((old, new), there, strict=True) if ways != lot.ways)
    one = _one_line(old, new, [*(of_old.parts if of_old else ()), *(of_new.parts if of_new else ())])
    all_g = min(left_g, line.batches * line.powder_g)
    return FromBoth(
        sheet, old_g, new_g, of_old, of_new, line.calves, line.batches, all_g - old_g, left_g - all_g, off, one
    )


def _there(now: Standing, lot: LotInUse) -> tuple[ScoopWay, ...]:
    """The fills that the scoops allow as they are: no line that is wiped off, or not drawn yet."""
    lot_id = lot.lot.id if lot.lot else ""
    return tuple(
        way for way in lot.ways if way.way is not FillWay.TO_MARK or may_fill_to_line(now, lot_id, way.scoop_id)
    )


def _one_line(old: LotInUse, new: LotInUse, parts: Sequence[tuple[ScoopWay, float]]) -> bool:
    """Whether every scoop that is filled to a line has it at one place for both lots."""
    used = {way.scoop_id for way, _ in parts if way.way is FillWay.TO_MARK}
    lines = [{way.scoop_id: way.down_wall_mm for way in lot.ways if way.way is FillWay.TO_MARK} for lot in (old, new)]
    of_old, of_new = lines
    return bool(used) and all(same_line(of_old.get(id), of_new.get(id)) for id in used)


def both_text(every: Sequence[FromBoth], old: LotInUse, new: LotInUse) -> str:
    """Which scoopfuls for which bag, group by group, the old lot first; blank where nobody is fed."""
    if not every:
        return ""
    told = [_batch_text(found, old, new) for found in every]
    if caution := _line_text(every, _number(old)):
        told.append(caution)
    told.append(translate("BothLots", "The next chart tells it too; empty the field to leave it out there."))
    last = every[-1]
    if last.beyond_g > 0:
        words = translate("BothLots", "{powder} of lot {lot} stay for the next feeding.")
        told.append(words.format(powder=powder_text(last.beyond_g, _telling(last, old)), lot=_number(old)))
    return " ".join(told)


def _batch_text(found: FromBoth, old: LotInUse, new: LotInUse) -> str:
    to, sheet = _telling(found, old), found.sheet
    parts = ((old, found.old_g, found.old_scoops), (new, found.new_g, found.new_scoops))
    words = translate("BothLots", "lot {lot}: {powder}, {scoops}")
    told = [
        words.format(
            lot=_number(lot),
            powder=powder_text(mass_g, to),
            scoops=_scoops(count, to, "" if found.one_line else _number(lot)),
        )
        for lot, mass_g, count in parts
        if mass_g > 0
    ]
    name = sheet.group.name if sheet.group else ""
    who = counted.calves(found.calves) + (f" ({name})" if name else "")
    text = translate("BothLots", "Into one batch for {calves}: {parts}.")
    if found.batches > 1:
        text = translate("BothLots", "Into one of the {batches} equal batches for {calves}: {parts}.")
    said = text.format(calves=who, batches=found.batches, parts="; ".join(told))
    if found.rest_g <= 0:
        return said
    rest = translate("BothLots", "{powder} of lot {lot} stay for the next batches.")
    return f"{said} {rest.format(powder=powder_text(found.rest_g, to), lot=_number(old))}"


def _line_text(every: Sequence[FromBoth], old: str) -> str:
    """What to mind about the lines; blank where no scoop is filled to one and none is missing."""
    off = next((found.off for found in every if found.off), ())
    if all(found.one_line for found in every if found.to_a_line) and any(found.to_a_line for found in every):
        return translate("BothLots", "The line of both lots is at one place: fill to the line from either.")
    if off:
        text = translate(
            "BothLots", "The scoop does not bear the line of lot {lot}: never fill that lot to the other lot's line."
        )
        return text.format(lot=", ".join(off))
    if not any(found.to_a_line for found in every):
        return ""
    text = translate("BothLots", "Each lot by its own line; weigh the powder of lot {lot} if its line is wiped out.")
    return text.format(lot=old)


def _telling(found: FromBoth, old: LotInUse) -> Telling:
    several = len({way.scoop_id for way in (*old.ways, *found.sheet.ways)}) > 1
    return Telling(found.sheet.farm, found.sheet.resolution_g, several)


def _number(lot: LotInUse) -> str:
    return lot.lot.lot_number if lot.lot else "–"


def _scoops(count: ScoopCount | None, to: Telling, lot: str) -> str:
    """The count; a line is told as that of its lot, where each has its own."""
    if count is None:
        return translate("BothLots", "weigh it")
    words = translate("BothLots", "{count} of lot {lot}")
    told = ((f"{show_scoopfuls(number)} {way_text(way, to)}", way.way) for way, number in count.parts)
    return " + ".join(
        words.format(count=text, lot=lot) if lot and way is FillWay.TO_MARK else text for text, way in told
    )
