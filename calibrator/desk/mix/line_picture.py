"""The own line as a picture with its words: weighed mixes, the band, the target, and the mix in hand."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from calibrator.desk import shown
from calibrator.desk.mix_checks import MixFindings
from calibrator.desk.mix_words import number
from calibrator.desk.parts import label
from calibrator.desk.theme import SPACE
from calibrator.desk.widgets.picture_key import Entry, PictureKey, Sign
from calibrator.science.own_line import Line, Reference
from calibrator.science.refractometer import Refractometer
from calibrator.science.solids import line_band
from calibrator.values import dataclass

if TYPE_CHECKING:
    from calibrator.desk.mix.line_plot import Along, LinePlot

PLOT_HEIGHT = 270
PLACES = 24
BEYOND_SHARE = 0.01  # so far beyond the weighed mixes the line is drawn


@dataclass(frozen=True)
class Weighed:
    """A weighed mix as a point of the picture."""

    key: str
    point: Reference
    words: str


class LinePicture(QWidget):
    """Hidden until there is a line. The list of weighed mixes beside it is the way by keyboard."""

    chosen = Signal(str)

    def __init__(self) -> None:
        super().__init__()
        self._plot: LinePlot | None = None
        self.words, self.key = label("", "quiet"), PictureKey()
        self._layout = QVBoxLayout(self)
        self._layout.setContentsMargins(0, 0, 0, 0)
        self._layout.setSpacing(SPACE)
        self._layout.addWidget(self.key)
        self._layout.addWidget(self.words)

    @property
    def plot(self) -> LinePlot:
        """Made when first needed, for pyqtgraph is slow to import."""
        if self._plot is None:
            from calibrator.desk.mix.line_plot import LinePlot

            self._plot = LinePlot(self.tr("solids as mixed, %"))
            self._plot.setFixedHeight(PLOT_HEIGHT)
            self._plot.setAccessibleName(self.tr("The Brix calibration; the list beneath has the weighed mixes"))
            self._plot.chosen.connect(self.chosen)
            self._layout.insertWidget(0, self._plot)
        return self._plot

    def show_line(
        self,
        weighed: Sequence[Weighed],
        line: Line,
        tool: Refractometer,
        target_share: float,
        found: MixFindings,
        about: str,
    ) -> None:
        """Draw a line with its weighed mixes; `found` is put on it where it was read by this very line."""
        from calibrator.desk.mix.line_plot import LinePoint

        points = [LinePoint(w.key, 100 * w.point.solids_share, w.point.brix, w.words) for w in weighed]
        hand = in_hand(line, found)
        caption = self.tr("°Brix, zero taken off")
        self.plot.show_line(points, along(line, tool), caption, 100 * target_share, hand)
        self.key.show_entries(
            (
                Entry(Sign.CIRCLE, "action", self.tr("weighed mix")),
                Entry(Sign.DOTS, "good", self.tr("the target")),
                Entry(Sign.DASHES, "mark", self.tr("what three drops leave open (95 %)")),
            )
        )
        self.words.setText(self._hand_words(hand))
        self.words.setVisible(hand is not None)
        self.plot.setAccessibleDescription(f"{about} {self.key.text()}. {self.words.text()}".strip())
        self.show()

    def point_at(self, key: str) -> None:
        """Stress a weighed mix."""
        if self._plot is not None:
            self._plot.point_at(key)

    def _hand_words(self, hand: Along | None) -> str:
        if hand is None:
            return ""
        text = self.tr("Diamond: the mix in hand, {brix} °Brix, {solids} solids ({low} to {high}).")
        return text.format(
            brix=number(hand.brix),
            solids=shown.share(hand.solids_pct / 100),
            low=shown.share(hand.low_pct / 100),
            high=shown.share(hand.high_pct / 100),
        )


def along(line: Line, tool: Refractometer) -> tuple[Along, ...]:
    """Places along the line, each with the ends of its band."""
    from calibrator.desk.mix.line_plot import Along

    first, last = max(0.0, line.low_x - BEYOND_SHARE), line.high_x + BEYOND_SHARE
    shares = [first + (last - first) * n / (PLACES - 1) for n in range(PLACES)]
    ends = zip(shares, line_band(line, shares, tool), strict=True)
    return tuple(Along(100 * x, line.y(x), 100 * low, 100 * high) for x, (low, high) in ends)


def in_hand(line: Line, found: MixFindings) -> Along | None:
    """The mix in hand on this line; None where it was not read by it."""
    from calibrator.desk.mix.line_plot import Along

    read, own = found.read, found.by_own_line
    if read is None or own is None or found.line != line:
        return None
    return Along(100 * own.share, read.value, 100 * own.low, 100 * own.high)
