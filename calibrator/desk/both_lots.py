"""A batch that needs two lots: the last of the one, the rest from the other. No window needed."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QCoreApplication

from calibrator.desk.counted import counted
from calibrator.desk.scoop_lines import may_fill_to_line
from calibrator.desk.sheet_lines import GroupSheet, LotInUse
from calibrator.desk.standing import Standing
from calibrator.desk.table_words import Telling, number_text, powder_text, way_text
from calibrator.model import FillWay
from calibrator.science.scoop import same_line
from calibrator.science.scoops import ScoopCount, ScoopWay
from calibrator.values import dataclass

translate = QCoreApplication.translate


@dataclass(frozen=True)
class FromBoth:
    """The powder of one batch, and its scoopfuls where they can be counted, from each lot.

    It is one of so many equal `batches`, which together feed the `calves`.
    """

    old_g: float
    new_g: float
    old_scoops: ScoopCount | None
    new_scoops: ScoopCount | None
    calves: int
    batches: int
    rest_g: float = 0.0  # of the old lot, beyond this batch
    a_line_is_off: bool = False  # a line of one of them is not on its scoop
    one_line: bool = False  # both are filled to lines that lie at one place


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
    off = there != [old.ways, new.ways]
    one = _one_line(old, new, [*(of_old.parts if of_old else ()), *(of_new.parts if of_new else ())])
    return FromBoth(old_g, new_g, of_old, of_new, line.calves, line.batches, left_g - old_g, off, one)


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


def both_text(found: FromBoth, sheet: GroupSheet, old: LotInUse, new: LotInUse) -> str:
    """Which scoopfuls for which bag, the old lot first."""
    to = Telling(sheet.farm, sheet.resolution_g, len({way.scoop_id for way in (*old.ways, *sheet.ways)}) > 1)
    parts = ((old, found.old_g, found.old_scoops), (new, found.new_g, found.new_scoops))
    words = translate("BothLots", "lot {lot}: {powder}, {scoops}")
    told = [
        words.format(
            lot=lot.lot.lot_number if lot.lot else "–", powder=powder_text(mass_g, to), scoops=_scoops(count, to)
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
    own = translate("BothLots", "Each lot by its own line; weigh the powder of lot {lot} if its line is wiped out.")
    if found.one_line:
        own = translate("BothLots", "The line of both lots is at one place: fill to the line from either.")
    elif found.a_line_is_off:
        own = translate("BothLots", "The scoop bears the line of one lot only: never fill the other lot to it.")
    printed = translate("BothLots", "The next chart tells it too; empty the field to leave it out there.")
    said = f"{said} {own.format(lot=old.lot.lot_number if old.lot else '–')} {printed}"
    if found.rest_g <= 0:
        return said
    rest = translate("BothLots", "{powder} of lot {lot} stay for the next batches.")
    return f"{said} {rest.format(powder=powder_text(found.rest_g, to), lot=old.lot.lot_number if old.lot else '–')}"


def _scoops(count: ScoopCount | None, to: Telling) -> str:
    if count is None:
        return translate("BothLots", "weigh it")
    return " + ".join(f"{number_text(number)} {way_text(way, to)}" for way, number in count.parts)
