"""Text that flows down pages: headings, pairs of name and value, paragraphs, tables with repeated heads."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from calibrator.prints.fit import Fitted, cut_end, wrap
from calibrator.prints.page import Anchor, Box, Page, Weight
from calibrator.prints.sheet import Sheet
from calibrator.values import dataclass

_LEADING = 1.22
_HEADING, _BODY, _CELL, _HEAD_CELL = 4.6, 3.3, 3.1, 2.8
_NAME_SHARE = 0.36
_BETWEEN = 5.0
_PAD = 1.1
_MOST_LINES = 6


@dataclass(frozen=True)
class TableColumn:
    """A column's heading, its share of the width and to which side its cells stand."""

    heading: str
    share: float
    anchor: Anchor = Anchor.START


@dataclass(frozen=True)
class TableRow:
    cells: tuple[str, ...]
    weight: Weight = Weight.REGULAR


class Flow:
    """Fills pages from the top; `frame` draws a page's head and foot and tells where the rest begins and ends."""

    def __init__(self, paper_mm: tuple[float, float], frame: Callable[[Sheet, int], tuple[float, float]]) -> None:
        self._paper = paper_mm
        self._frame = frame
        self._sheets: list[Sheet] = []
        self._y = self._bottom = 0.0
        self._new_page()

    @property
    def sheets(self) -> Sequence[Sheet]:
        return self._sheets

    def pages(self) -> tuple[Page, ...]:
        return tuple(sheet.page() for sheet in self._sheets)

    @property
    def _sheet(self) -> Sheet:
        return self._sheets[-1]

    def _new_page(self) -> None:
        self._sheets.append(Sheet(*self._paper))
        self._y, self._bottom = self._frame(self._sheet, len(self._sheets))

    def _take(self, height_mm: float) -> bool:
        """Go to a new page where the height is not left; tells whether it did."""
        if self._y + height_mm <= self._bottom:
            return False
        self._new_page()
        return True

    def heading(self, text: str, keep_mm: float = 16.0) -> None:
        """A section's heading, kept with at least so much of what follows."""
        self._take(_HEADING * 2.2 + keep_mm)
        body = self._sheet.body
        lines = _fitted(text, body.width_mm, _HEADING, Weight.BOLD)
        self._y += 2.4
        self._y = self._sheet.lines(lines, body.x_mm, self._y, Weight.BOLD)
        self._sheet.rule(body.x_mm, self._y + 0.4, body.right_mm, self._y + 0.4, 0.4)
        self._y += 1.6

    def paragraph(self, text: str) -> None:
        self._take(self.height_of(text))
        body = self._sheet.body
        fitted = Fitted(tuple(wrap(text, body.width_mm, _BODY)), _BODY)
        self._y = self._sheet.lines(fitted, body.x_mm, self._y + 0.6, leading=_LEADING) + 0.8

    def height_of(self, text: str) -> float:
        """What a paragraph takes, mm."""
        return len(wrap(text, self._sheet.body.width_mm, _BODY)) * _BODY * _LEADING + 1.4

    def picture(self, height_mm: float, draw: Callable[[Sheet, Box], None]) -> None:
        """A drawing over the whole width."""
        self._take(height_mm)
        body = self._sheet.body
        draw(self._sheet, Box(body.x_mm, self._y, body.width_mm, height_mm))
        self._y += height_mm

    def signature(self, told: str) -> None:
        """A line to sign on, and what stands below it."""
        self._take(16.0)
        body = self._sheet.body
        self._y += 11.0
        self._sheet.rule(body.x_mm, self._y, body.x_mm + 80.0, self._y, 0.25)
        self._y = self._sheet.lines(_fitted(told, 80.0, _HEAD_CELL, Weight.REGULAR), body.x_mm, self._y + 0.4)

    def pairs(self, told: Sequence[tuple[str, str]]) -> None:
        """Names and values in two columns, row by row; a pair without a value is left out."""
        kept = [(name, value) for name, value in told if value]
        for i in range(0, len(kept), 2):
            self._pair_row(kept[i : i + 2])

    def _pair_row(self, row: Sequence[tuple[str, str]]) -> None:
        body = self._sheet.body
        width = (body.width_mm - _BETWEEN) / 2
        name_mm = width * _NAME_SHARE - 2.0
        laid = [
            (
                _fitted(name, name_mm, _BODY, Weight.REGULAR),
                _fitted(value, width * (1 - _NAME_SHARE), _BODY, Weight.SEMIBOLD),
            )
            for name, value in row
        ]
        height = max(len(f.lines) for pair in laid for f in pair) * _BODY * _LEADING + 0.6
        self._take(height)
        for number, (name, value) in enumerate(laid):
            x = body.x_mm + number * (width + _BETWEEN)
            self._sheet.lines(name, x, self._y, leading=_LEADING)
            self._sheet.lines(value, x + width * _NAME_SHARE, self._y, Weight.SEMIBOLD, leading=_LEADING)
        self._y += height

    def table(self, columns: Sequence[TableColumn], rows: Sequence[TableRow]) -> None:
        """A table; its head comes again on every page it reaches."""
        head = TableRow(tuple(column.heading for column in columns), Weight.BOLD)
        edges = self._edges(columns)
        head_laid = self._laid(head, edges, _HEAD_CELL)
        first = True
        for row in rows:
            laid = self._laid(row, edges, _CELL)
            fresh = self._take(_height(laid) + (_height(head_laid) if first else 0.0))
            if first or fresh:
                self._draw(columns, edges, head_laid, Weight.BOLD, 0.4)
            self._draw(columns, edges, laid, row.weight, 0.12)
            first = False
        self._y += 1.0

    def _edges(self, columns: Sequence[TableColumn]) -> list[tuple[float, float]]:
        body, total = self._sheet.body, sum(column.share for column in columns)
        edges, x = [], body.x_mm
        for column in columns:
            width = body.width_mm * column.share / total
            edges.append((x, x + width - 2.0))
            x += width
        return edges

    def _laid(self, row: TableRow, edges: Sequence[tuple[float, float]], size: float) -> list[Fitted]:
        return [
            _fitted(cell, right - left, size, row.weight) for cell, (left, right) in zip(row.cells, edges, strict=True)
        ]

    def _draw(
        self,
        columns: Sequence[TableColumn],
        edges: Sequence[tuple[float, float]],
        laid: Sequence[Fitted],
        weight: Weight,
        rule_mm: float,
    ) -> None:
        for column, (left, right), cell in zip(columns, edges, laid, strict=True):
            x = right if column.anchor is Anchor.END else left
            self._sheet.lines(cell, x, self._y + _PAD / 2, weight, column.anchor, leading=_LEADING)
        self._y += _height(laid)
        body = self._sheet.body
        self._sheet.rule(body.x_mm, self._y, body.right_mm, self._y, rule_mm)


def _height(laid: Sequence[Fitted]) -> float:
    return max(len(cell.lines) * cell.size_mm * _LEADING for cell in laid) + _PAD


def _fitted(text: str, room_mm: float, size_mm: float, weight: Weight) -> Fitted:
    """Wrapped; a text of too many lines is cut short."""
    lines = wrap(text, room_mm, size_mm, weight) or [""]
    if len(lines) > _MOST_LINES:
        last = cut_end(lines[_MOST_LINES - 1] + "…", room_mm, size_mm, weight)
        lines = [*lines[: _MOST_LINES - 1], last]
    return Fitted(tuple(lines), size_mm)
