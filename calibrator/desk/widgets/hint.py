"""The example that stands in an empty line: whole, or a shorter one."""

from __future__ import annotations

from PySide6.QtWidgets import QLineEdit, QStyle, QStyleOptionFrame

_AIR_PX = 2  # that Qt keeps at each side of the words in a line


def hint(line: QLineEdit, *examples: str) -> None:
    """Let the first of the examples that fits stand in the line while it is empty, else the last: the figure whole
    rather than the beginning of more. To be called whenever the line has another width.
    """
    room_px = _room_px(line)
    fitting = (words for words in examples if line.fontMetrics().horizontalAdvance(words) <= room_px)
    line.setPlaceholderText(next(fitting, examples[-1]))


def _room_px(line: QLineEdit) -> int:
    """For words in the line."""
    option = QStyleOptionFrame()
    line.initStyleOption(option)
    inside = line.style().subElementRect(QStyle.SubElement.SE_LineEditContents, option, line)
    return inside.width() - 2 * _AIR_PX
