"""The lot in use on the day's page, and for each scoop whether it bears its line."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtWidgets import QFrame, QHBoxLayout, QSizePolicy, QVBoxLayout

from calibrator.desk.context import Desk
from calibrator.desk.parts import clear, column, label, row, set_tone
from calibrator.desk.scoop_lines import (
    LineBeside,
    LineToCome,
    LineUnderWay,
    ScoopState,
    is_drawn,
    line_of,
    line_under_way,
    lines_beside,
    lines_to_come,
    lines_to_wipe_out,
    scoop_state,
)
from calibrator.desk.standing import LotStanding, Standing
from calibrator.desk.theme import SPACE
from calibrator.desk.widgets.scoop_drawing import FurtherLine, ScoopDrawing
from calibrator.desk.words import (
    beside_target_words,
    besides_words,
    line_words,
    lines_words,
    mark_words,
    medicated_caution,
    scoop_tone,
    scoop_words,
    target_words,
)
from calibrator.model import Mark, Scoop

DRAWN_PX = 224  # all of the card is in view beside what is waiting


class LotCard(QFrame):
    """The lot in use, and for each scoop whether it is marked for it."""

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self.desk = desk
        self.setProperty("kind", "card")
        self.heading = label("", "heading")
        self.caution = label(medicated_caution(), "caution")
        self.drawing = ScoopDrawing(desk.system)
        self.drawing.setMaximumHeight(DRAWN_PX)
        self._lines = QVBoxLayout()
        self._lines.setSpacing(SPACE)
        layout = column(label(self.tr("Lot in use"), "quiet"), self.heading, self.caution, self._lines, self.drawing)
        layout.setContentsMargins(2 * SPACE, 2 * SPACE, 2 * SPACE, 2 * SPACE)
        layout.setStretch(4, 1)
        self.setLayout(layout)

    def show_standing(self, now: Standing, no_longer: str = "") -> None:
        """Show the lot in use; says so where none is. `no_longer` is the scoop whose line holds no longer by spot
        fills, blank for none."""
        clear(self._lines)
        known = now.in_use
        self.caution.setVisible(bool(known and known.lot.medicated))
        if known is None:
            self.heading.setText(self.tr("None yet"))
            words = self.tr("A lot is in use once its weigh-in is signed off.")
            self._lines.addWidget(label(words, "quiet"))
        else:
            self.heading.setText(f"{known.lot.lot_number}  {known.lot.product}".strip())
            for scoop in now.scoops:
                self._lines.addLayout(self._line(now, known, scoop, holds=scoop.id != no_longer))
                if begun := self._begun(now, known, scoop):
                    self._lines.addWidget(label(self._under_way(scoop, begun), tone="warn"))
                if old := lines_to_wipe_out(now, known, scoop.id):
                    self._lines.addWidget(label(self._to_wipe_out(scoop, old), tone="warn"))
                for line in lines_to_come(now, scoop.id):
                    self._lines.addWidget(label(self._to_come(now, known, scoop, line), tone="warn"))
        self._draw(now)

    def _line(self, now: Standing, known: LotStanding, scoop: Scoop, *, holds: bool) -> QHBoxLayout:
        state = scoop_state(now, known, scoop.id)
        mark = line_of(known, scoop.id)
        drawn = is_drawn(now, known, scoop.id)
        level = bool(mark and mark.struck_level)
        tag = label(scoop_words(state, level=level, drawn=drawn), "tag", wrap=False)
        tag.setSizePolicy(QSizePolicy.Policy.Maximum, QSizePolicy.Policy.Maximum)
        set_tone(tag, scoop_tone(state))
        if state is ScoopState.MARKED and not holds:
            tag.setText(self.tr("level no longer does") if level else self.tr("no longer holds"))
            set_tone(tag, "bad")
        if mark is not None and mark.struck_level:
            told = self.tr("{scoop}: without a line, {target}").format(
                scoop=scoop.name, target=target_words(mark, self.desk.system)
            )
        elif mark is not None:
            told = self.tr("{scoop}: {line} down the wall for {target}").format(
                scoop=scoop.name,
                line=mark_words(mark, self.desk.system),
                target=target_words(mark, self.desk.system),
            )
            told = "; ".join((told, *besides_words(lines_beside(now, mark), self.desk.system)))
        elif state is ScoopState.NO_LINE:
            told = self.tr("{scoop}: no line yet").format(scoop=scoop.name)
        else:
            told = self.tr("{scoop}: do not use it for this lot").format(scoop=scoop.name)
        line = row(label(told), tag)
        line.setStretch(0, 1)
        return line

    def _begun(self, now: Standing, known: LotStanding, scoop: Scoop) -> LineUnderWay | None:
        under_way = scoop_state(now, known, scoop.id) is ScoopState.UNDER_WAY
        return line_under_way(known, scoop.id) if under_way else None

    def _under_way(self, scoop: Scoop, begun: LineUnderWay) -> str:
        """Of a scoop that is being weighed in anew: its line may be gone, and no table counts by the next one yet."""
        if begun.drawn_mm is None:
            return self.tr(
                "The weigh-in of {scoop} is under way: a new line may be drawn on it already. Until it is signed off "
                "weigh the powder."
            ).format(scoop=scoop.name)
        if begun.drawn_mm == 0:
            return self.tr(
                "The weigh-in of {scoop} is under way: it is to be struck level. Until it is signed off weigh the "
                "powder."
            ).format(scoop=scoop.name)
        return self.tr(
            "The weigh-in of {scoop} is under way: its new line is drawn, {line} down the wall. Until it is signed off "
            "weigh the powder."
        ).format(scoop=scoop.name, line=line_words(begun.drawn_mm, self.desk.system))

    def _to_wipe_out(self, scoop: Scoop, old_mm: Sequence[float]) -> str:
        text = self.tr("{scoop} still bears an old line, {line} down the wall: wipe it out, never fill to it.")
        if len(old_mm) > 1:
            text = self.tr("{scoop} still bears old lines, {line} down the wall: wipe them out, never fill to them.")
        return text.format(scoop=scoop.name, line=lines_words(old_mm, self.desk.system))

    def _to_come(self, now: Standing, known: LotStanding, scoop: Scoop, line: LineToCome) -> str:
        """Of a scoop that bears a line for a lot to come: which one is filled to today."""
        mark = line_of(known, scoop.id)
        bears_its_own = scoop_state(now, known, scoop.id) is ScoopState.MARKED
        if mark is None or mark.struck_level or not bears_its_own:
            text = self.tr("{scoop} bears the line of lot {next}, {line} down the wall. Do not fill to it yet.")
        elif besides := lines_beside(now, mark):
            return self._several_lines(known, scoop, mark, besides, line)
        else:
            text = self.tr(
                "{scoop} bears two lines. Today fill to that of lot {lot}, {own} down the wall; that of lot {next}, "
                "{line} down the wall, holds from its change-over on."
            )
        return text.format(
            scoop=scoop.name,
            lot=known.lot.lot_number,
            own=mark_words(mark, self.desk.system) if mark else "",
            next=line.lot.lot_number,
            line=line_words(line.down_wall_mm, self.desk.system),
        )

    def _several_lines(
        self, known: LotStanding, scoop: Scoop, mark: Mark, besides: Sequence[LineBeside], line: LineToCome
    ) -> str:
        system = self.desk.system
        text = self.tr(
            "{scoop} bears {count} lines. Today fill to those of lot {lot}, {own} down the wall; that of lot {next}, "
            "{line} down the wall, holds from its change-over on."
        )
        return text.format(
            scoop=scoop.name,
            count=2 + len(besides),
            lot=known.lot.lot_number,
            own=lines_words([mark.down_wall_mm, *(beside.down_wall_mm for beside in besides)], system),
            next=line.lot.lot_number,
            line=line_words(line.down_wall_mm, system),
        )

    def _draw(self, now: Standing) -> None:
        known = now.in_use
        scoops = {scoop.id: scoop for scoop in now.scoops}
        shown = [mark for mark in known.marks if mark.scoop_id in scoops] if known else []
        self.drawing.setVisible(bool(shown))
        if known is None or not shown:
            return
        mark = shown[-1]
        old_mm = lines_to_wipe_out(now, known, mark.scoop_id)
        follows = next(iter(lines_to_come(now, mark.scoop_id)), None)
        self.drawing.set_system(self.desk.system)
        self.drawing.set_shape(scoops[mark.scoop_id].shape)
        holds = scoop_state(now, known, mark.scoop_id) in (ScoopState.MARKED, ScoopState.TO_MARK)
        besides = lines_beside(now, mark) if holds else ()
        wiped = [FurtherLine(self.tr("Wipe out"), mm, wiped=True) for mm in old_mm[1:]]
        lines = [FurtherLine(beside_target_words(beside, self.desk.system), beside.down_wall_mm) for beside in besides]
        self.drawing.set_further([*lines, *wiped])
        own_mm = None if mark.struck_level else mark.down_wall_mm
        begun = self._begun(now, known, scoops[mark.scoop_id])
        if begun is not None and begun.drawn_mm is not None:
            self.drawing.set_names(self.tr("New line"), self.tr("Wipe out"))
            self.drawing.set_lines(begun.drawn_mm or None, own_mm, moves=False, wiped=True)
        elif old_mm:
            self.drawing.set_names(self.tr("The line"), self.tr("Wipe out"))
            self.drawing.set_lines(own_mm, old_mm[0], moves=False, wiped=True)
        else:
            today = self.tr("Today's line") if follows else self.tr("The line")
            self.drawing.set_names(today, self.tr("The next lot's"))
            self.drawing.set_lines(own_mm, follows.down_wall_mm if follows else None, moves=False)
