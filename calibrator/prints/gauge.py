"""The lines of a scoop label and what stands beside them, at true distance below the rim."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from calibrator.model import UnitSystem
from calibrator.prints import words
from calibrator.prints.emblems import arrow
from calibrator.prints.fonts import width_mm
from calibrator.prints.label_facts import LabelLine, LineUse
from calibrator.prints.languages import Words
from calibrator.prints.page import BLACK, WHITE, Box, Item, Weight
from calibrator.prints.place import spread
from calibrator.prints.sheet import Sheet, centre_baseline
from calibrator.units import show_mass
from calibrator.values import dataclass

MAIN_WIDTH_MM = 1.0
THIN_WIDTH_MM = 0.35
_MAIN_RUN, _THIN_RUN = 13.0, 9.0
_TEXT_FROM = 16.0
_MAIN_SIZE, _THIN_SIZE, _LEAST_SIZE = 5.4, 3.6, 2.0
LEVEL_TIMES = 1.8  # larger than a weight beside a line
_ALONE = 1.0  # the same where level scoopfuls are all there is to tell
_MORE_SIZE = 3.1  # of the words on full scoops: without them the weight is no feeding
_PAD = 1.0


@dataclass(frozen=True)
class Beside:
    """What stands beside a line: the weight it holds, and what a feeding is made of where that is not one scoopful to
    it, a line a language, then the feeding's weight."""

    line: LabelLine
    mass: str
    more: tuple[str, ...]
    times: float = 1.0  # larger than usual
    more_times: float = 1.0  # what it is made of smaller than usual

    @property
    def main(self) -> bool:
        return self.line.use is LineUse.MAIN

    @property
    def rows(self) -> tuple[str, ...]:
        """What the weight is made of, beside it: a row a language, with the feeding's weight behind the last."""
        if self.line.struck_level:
            return (" ".join(self.more),)
        return (*self.more[:-2], " ".join(self.more[-2:])) if self.more else ()

    @property
    def share(self) -> float:
        """Size of the words beneath the weight, share of the weight's."""
        return self.more_times * (_ALONE if self.line.struck_level else _MORE_SIZE / self.size)

    @property
    def weight(self) -> Weight:
        return Weight.BOLD if self.main else Weight.SEMIBOLD

    @property
    def size(self) -> float:
        return self.times * (_MAIN_SIZE if self.main else _THIN_SIZE)

    def height(self, scale: float) -> float:
        return scale * self.size * (1.3 + self.share * 1.2 * len(self.more)) + (0.8 if self.main else 0.0)

    def width(self, scale: float) -> float:
        size = scale * self.size
        mass = width_mm(self.mass, size, self.weight, True) + 2 * _PAD
        half = 1.4 * size if self.line.use is LineUse.HALF else 0.0
        more = (width_mm(text, size * self.share, Weight.SEMIBOLD) + 2 * _PAD for text in self.more)
        return max((mass + half, *more))


def beside(line: LabelLine, said: Words, units: UnitSystem, resolution_g: float | None) -> Beside:
    """The words of one line."""
    mass, feeding = (show_mass(g, units, resolution_g=resolution_g) for g in (line.held_g, line.target_mass_g))
    if line.struck_level:
        count = line.full_scoops + 1
        return Beside(line, mass, said.each(lambda t: "= " + t(words.LEVEL_ALONE).format(count=count)))
    if line.several:
        phrase, count = words.FULL_SCOOPS_MORE, line.full_scoops
        if not count:
            phrase, count = words.EQUAL_SCOOPS_TO_HERE, line.to_line
        made_of = said.each(lambda t: t(phrase).format(count=count))
        return Beside(line, mass, (*made_of, f"= {feeding}"))
    return Beside(line, mass, ())


def level_alone(notes: Sequence[Beside]) -> bool:
    """Whether no line is to be drawn: level scoopfuls are all there is to tell, and have the room of the lines."""
    return all(note.line.struck_level for note in notes)


def large(notes: Sequence[Beside]) -> list[Beside]:
    """The notes, those of a scoop used level as large as the room that lines would take allows."""
    if not level_alone(notes):
        return list(notes)
    width = max(note.width(1.0) for note in notes)
    return [replace(note, times=min(LEVEL_TIMES, (width + _TEXT_FROM - _PAD) / width)) for note in notes]


def gauge_width_mm(notes: Sequence[Beside]) -> float:
    """Room that the lines and their words take."""
    return _text_from(notes) + max(note.width(1.0) for note in notes) + _PAD


def _text_from(notes: Sequence[Beside]) -> float:
    return _PAD if level_alone(notes) else _TEXT_FROM


def gauge_items(notes: Sequence[Beside], top_mm: float, height_mm: float) -> tuple[Item, ...]:
    """Lines from the left edge, words to their right; the rim is at 0, words keep below `top_mm`."""
    notes = sorted(notes, key=lambda note: note.line.down_wall_mm)
    room = height_mm - top_mm - 1.0
    scale = min(1.0, room / sum(note.height(1.0) for note in notes))
    scale = max(scale, _LEAST_SIZE / _MAIN_SIZE)
    heights = [note.height(scale) for note in notes]
    lines = [n.line.down_wall_mm for n in notes]
    wanted = [(top_mm + height_mm) / 2] * len(notes) if level_alone(notes) else lines
    middles = spread(wanted, heights, top_mm, height_mm - 0.5)
    sheet = Sheet(0, height_mm)
    for note, middle in zip(notes, middles, strict=True):
        if not note.line.struck_level:
            _draw_line(sheet, note.line)
        _draw_words(sheet, note, middle, scale, _text_from(notes))
    return sheet.page().items


def _draw_line(sheet: Sheet, line: LabelLine) -> None:
    y, main = line.down_wall_mm, line.use is LineUse.MAIN
    sheet.rule(0, y, _MAIN_RUN if main else _THIN_RUN, y, MAIN_WIDTH_MM if main else THIN_WIDTH_MM)


def _draw_words(sheet: Sheet, note: Beside, middle_mm: float, scale: float, left_mm: float) -> None:
    size, y = scale * note.size, note.line.down_wall_mm
    if note.main:
        if not note.line.struck_level:
            sheet.put(arrow(_MAIN_RUN - 2.6, y, 3.0 * max(scale, 0.6), 180))
        box = Box(left_mm, middle_mm - note.height(scale) / 2, note.width(scale), note.height(scale))
        sheet.frame(box, 0.5)
    start = _MAIN_RUN if note.main else _THIN_RUN
    if not note.line.struck_level:
        sheet.rule(start, y, left_mm, middle_mm, 0.2)
    x = left_mm + _PAD
    lift = 0.6 * note.share * size * len(note.more)
    if note.line.use is LineUse.HALF:
        square = Box(x, middle_mm - lift - 0.6 * size, 1.2 * size, 1.2 * size)
        sheet.frame(square, None, BLACK)
        sheet.text("½", x + 0.16 * size, centre_baseline(middle_mm - lift, size), size, note.weight, ink=WHITE)
        x += 1.4 * size
    baseline = centre_baseline(middle_mm - lift, size)
    sheet.text(note.mass, x, baseline, size, note.weight, figures=True)
    for place, text in enumerate(note.more, start=1):
        beneath = baseline + 0.1 + 1.15 * note.share * size * place
        sheet.text(text, left_mm + _PAD, beneath, size * note.share, Weight.SEMIBOLD)
