"""Phrases with a count in them, so that every language has its own plural.

They stand in a QObject because the gatherer of words sees a count only in `self.tr("… %n …", "", n)`.
"""

from __future__ import annotations

from PySide6.QtCore import QObject


class _Counted(QObject):
    """Each phrase takes its count."""

    def fills(self, count: int) -> str:
        return self.tr("%n fill(s)", "", count)

    def bags(self, count: int) -> str:
        return self.tr("%n bag(s)", "", count)

    def more_from_other_bags(self, count: int) -> str:
        return self.tr("%n more fill(s) would do, each from a bag not yet dipped.", "", count)

    def more_would_do(self, count: int) -> str:
        return self.tr("%n more fill(s) would do.", "", count)

    def more_level(self, count: int) -> str:
        return self.tr("Cannot tell yet whether the old line will do: weigh %n more level fill(s).", "", count)

    def more_to_the_line(self, count: int) -> str:
        return self.tr("Cannot tell yet: weigh %n more fill(s) to the line.", "", count)

    def full_scoops_first(self, count: int) -> str:
        return self.tr("%n full scoop(s), then one to a line {down} down the wall from the rim.", "", count)

    def weigh_together(self, count: int) -> str:
        return self.tr(
            "This scale's step is coarse for one scoopful. Weigh %n scoopful(s) together each time, and say so "
            "beside the weight.",
            "",
            count,
        )


counted = _Counted()
