"""A plan's table on screen: the lot in use, today's calves, what a new lot changed, every count."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from datetime import date

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QBoxLayout, QFrame, QVBoxLayout, QWidget

from calibrator.desk import shown
from calibrator.desk.counted import counted
from calibrator.desk.how.view import how_button
from calibrator.desk.how.working import Working
from calibrator.desk.pages.batch_table import BatchTable
from calibrator.desk.pages.day_bar import DayBar
from calibrator.desk.pages.lot_bar import LotBar
from calibrator.desk.pages.today_card import TodayCard
from calibrator.desk.pages.volume_table import VolumeTable
from calibrator.desk.parts import button, card, clear, label, row, scrolled, set_style_property, show_if
from calibrator.desk.plain_text import on_screen
from calibrator.desk.rate_words import group_text, mass_text, osmolality_text, rate_text, strength_text
from calibrator.desk.sheets import Changed, GroupSheet, LotInUse, PlanSheet, SheetLine
from calibrator.desk.speech import day_text
from calibrator.desk.standing import Standing
from calibrator.desk.strength_words import at_risk, osmolality_caution, strength_cautions
from calibrator.desk.table_words import (
    Telling,
    goes_by_water_words,
    heavy_text,
    parts_words,
    scald_words,
    scale_off_text,
    scoops_words,
    telling,
    too_light_words,
)
from calibrator.desk.theme import SPACE
from calibrator.desk.warmth import Warm, hot_needed, served, warm
from calibrator.desk.warmth_words import hot_text, order_text
from calibrator.desk.widgets.calm_box import CalmTabs
from calibrator.desk.words import marks_words
from calibrator.model import Farm, Mark, Plan, Scoop, UnitSystem
from calibrator.science.errors import CannotCompute
from calibrator.science.heat import scalds
from calibrator.science.scoops import MOST_COUNTABLE
from calibrator.units import Kind, show_both

MOST_CHANGES = 6
LONGEST_NAME = 30
WIDE_NUMBER_PX = 300


class SheetView(QWidget):
    """Shows a `PlanSheet`; tells with every keystroke which count was typed."""

    calves_typed = Signal(int, int)
    calves_finished = Signal()
    weigh_in_wanted = Signal()
    changes_seen = Signal()

    def __init__(self, today: Callable[[], date]) -> None:
        super().__init__()
        self._sheet: PlanSheet | None = None
        self._shown: GroupSheet | None = None
        self._warms: tuple[Warm, ...] = ()
        self.lot_bar, self.day_bar = LotBar(today), DayBar()
        self.today = TodayCard()
        self.today.typed.connect(self.calves_typed)
        self.today.finished.connect(self.calves_finished)
        self.scald, self.hot_water = label("", "caution"), label("", "caution")
        self.scale_off = label("", "caution")
        self.order = label("", "quiet")
        self.trouble = label("", "caution")
        self.tabs = CalmTabs()
        self.tabs.setExpanding(False)
        self.tabs.setDrawBase(False)
        self.tabs.setAccessibleName(self.tr("Group of calves"))
        self.tabs.currentChanged.connect(self._show_tab)
        self.words, self.temperature = label("", "quiet"), label("", "quiet")
        self.strength, self.many = label("", "caution"), label("", "quiet")
        self.unweighed = label("")
        self.rows_by = CalmTabs()
        self.rows_by.setDrawBase(False)
        self.rows_by.setExpanding(False)
        self.rows_by.setAccessibleName(self.tr("Rows of the table"))
        for text in (self.tr("By calves"), self.tr("By volume of water")):
            self.rows_by.addTab(text)
        self.rows_by.currentChanged.connect(self._show_tab)
        self.how = how_button(self.workings)
        self.table = BatchTable(self.tr("Batch table"))
        self.volumes = VolumeTable()
        self.many.setText(
            self.tr("More than {most} scoopfuls are easily miscounted: better weigh the powder.").format(
                most=MOST_COUNTABLE
            )
        )
        inner = QWidget()
        body = QVBoxLayout(inner)
        body.setContentsMargins(0, 0, 0, 0)
        body.setSpacing(SPACE)
        self._lot_card, self._changes_card = self._make_lot_card(), self._make_changes_card()
        above = (
            self._lot_card,
            self.lot_bar,
            self._changes_card,
            self.trouble,
            self.day_bar,
            self.today,
            self.hot_water,
            self.scale_off,
            self.scald,
            self.order,
        )
        for widget in above:
            body.addWidget(widget)
        self._switches = QBoxLayout(QBoxLayout.Direction.LeftToRight)
        self._switches.setSpacing(SPACE)
        self._switches.addWidget(self.tabs)
        self._switches.addStretch(1)
        self._switches.addLayout(row(self.rows_by, None, self.how, spacing=2 * SPACE))
        body.addLayout(self._switches)
        body.addWidget(self.strength)
        body.addWidget(self.table, 1)
        body.addWidget(self.volumes, 1)
        body.addWidget(self.words)
        body.addWidget(self.unweighed)
        body.addWidget(self.many)
        body.addWidget(self.temperature)
        outer = QVBoxLayout(self)
        outer.setContentsMargins(0, 0, 0, 0)
        self._area = scrolled(inner)
        self._area.setFocusPolicy(Qt.FocusPolicy.NoFocus)  # what is in it scrolls into view when it gets the focus
        outer.addWidget(self._area)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._place_switches()

    def _place_switches(self) -> None:
        """Groups and kinds of rows beside each other where the names leave room: the table gets it."""
        wide = sum(one.sizeHint().width() for one in (self.tabs, self.rows_by, self.how)) + 6 * SPACE
        beside = self.tabs.isHidden() or wide <= self.width()
        ways = QBoxLayout.Direction
        self._switches.setDirection(ways.LeftToRight if beside else ways.TopToBottom)

    def to_top(self) -> None:
        self._area.verticalScrollBar().setValue(0)

    def show_sheet(self, sheet: PlanSheet) -> None:
        """Show a plan; called anew with every digit typed."""
        was, self._sheet = self._sheet, sheet
        self.show_trouble(sheet.trouble)
        alike = was is not None and sheet.kin_of(was)
        if not alike:
            self._warms = tuple(warm(sheet, group) for group in sheet.groups)
        typed = sheet.told.groups if sheet.told else sheet.plan.groups
        self.today.show_groups(typed, sheet.groups, self._warms, sheet.rests)
        if not alike:
            self._name_tabs(sheet)
            self._tell_water(sheet)
        self._tell_today(sheet)
        self._show_tab()

    def show_trouble(self, text: str) -> None:
        """Say why nothing can be computed, in place of figures that would be wrong."""
        self.trouble.setText(text)
        show_if(self.trouble, bool(text))
        show_if(self.today, not text)
        if text:
            for widget in (self.words, self.strength, self.tabs, self.rows_by, self.how, self.table, self.volumes):
                widget.hide()
            for widget in (self.scald, self.hot_water, self.scale_off, self.order):
                widget.hide()

    def show_lot(
        self,
        powder: LotInUse,
        marks: Sequence[Mark],
        scoops: Sequence[Scoop],
        system: UnitSystem,
        *,
        unmarked: Sequence[Scoop] = (),
        now: Standing | None = None,
    ) -> None:
        """Say for which lot the counts hold, and which scoops do not bear its line yet."""
        lot, signed = powder.lot, powder.sign_off
        known = lot is not None and signed is not None
        for widget in (self.lot_number, self.only_this, self.lot_words):
            widget.setVisible(known)
        self.no_lot.setVisible(not known)
        self.weigh.setVisible(not known)
        set_style_property(self._lot_card, "tone", "" if known and not unmarked else "warn")
        if lot is None or signed is None:
            return
        self.lot_number.setWordWrap(len(lot.lot_number) > LONGEST_NAME)  # and on one line it needs no more than its own
        self.lot_number.setMinimumWidth(WIDE_NUMBER_PX if self.lot_number.wordWrap() else 0)
        self.lot_number.setText(self.tr("Lot {number}").format(number=lot.lot_number))
        told = [lot.product, self.tr("weighed in {day}").format(day=day_text(signed.at.date()))]
        if marks:
            level = all(mark.struck_level for mark in marks)
            words = self.tr("without a line: {marks}") if level else self.tr("line down the wall: {marks}")
            told.append(words.format(marks=marks_words(marks, scoops, system, now=now)))
        words = ", ".join(text for text in told if text)
        if unmarked:
            names = on_screen(", ".join(scoop.name for scoop in unmarked), LONGEST_NAME)
            warned = self.tr("{scoop}: not marked for this lot yet. Weigh the powder until its line is on.")
            words = f"{words}. {warned.format(scoop=names)}"
        self.lot_words.setText(words)

    def show_changes(self, farm: Farm, title: str, found: Sequence[Changed], outdated: str) -> None:
        """What another lot changed; a blank title hides the card."""
        self._changes_card.setVisible(bool(title))
        clear(self._changes)
        if not title:
            return
        self._changes_title.setText(title)
        lines = [self._change_text(farm, change) for change in found[:MOST_CHANGES]]
        if len(found) > MOST_CHANGES:
            more = self.tr("and {count} more; see each plan")
            lines.append(more.format(count=len(found) - MOST_CHANGES))
        if outdated:
            lines.append(outdated)
        for text in lines:
            self._changes.addWidget(label(text))

    def today_line(self) -> SheetLine | None:
        """Today's row of the table shown."""
        sheet = self._chosen()
        return sheet.today_line if sheet else None

    def workings(self) -> tuple[Working, ...]:
        """How the chosen row came about; without one today's, or the first."""
        from calibrator.desk.how.of_batch import of_row  # nobody asks before the table is there

        plan, sheet = self._sheet, self._chosen()
        if plan is None or sheet is None:
            return ()
        line = self._chosen_line(sheet) or sheet.today_line or (sheet.line(0) if len(sheet) else None)
        number = max(self.tabs.currentIndex(), 0)
        return of_row(plan, sheet, line, self._warms[number] if number < len(self._warms) else None) if line else ()

    def _chosen_line(self, sheet: GroupSheet) -> SheetLine | None:
        if self.rows_by.currentIndex() == 1:
            return self.volumes.chosen_line()
        chosen = self.table.chosen_row()
        return None if chosen is None else sheet.line(chosen)

    def _change_text(self, farm: Farm, change: Changed) -> str:
        before, now = change.before, change.now
        parts = [part for line in (before, now) if line.scoops for part in line.scoops.parts]
        to = Telling(farm, 0.0, len({way.scoop_id for way, _ in parts}) > 1)
        name = change.plan.name if not change.group.name else f"{change.plan.name}, {change.group.name}"
        calves = counted.calves(now.calves)
        if not change.differs:
            text = self.tr("{name}, {calves}: {now}, as before")
            if change.to_line:
                text = self.tr("{name}, {calves}: {now}, as many as before, each to the new line")
                if change.line_stays:
                    text = self.tr("{name}, {calves}: {now}, as many as before, to the same line")
            return text.format(name=name, calves=calves, now=scoops_words(now, to))
        text = self.tr("{name}, {calves}: {before}  →  {now}")
        return text.format(name=name, calves=calves, before=scoops_words(before, to), now=scoops_words(now, to))

    def _want_weigh_in(self) -> None:
        self.weigh_in_wanted.emit()

    def _see_changes(self) -> None:
        self.changes_seen.emit()

    def _make_lot_card(self) -> QFrame:
        self.lot_number = label("", "heading", wrap=False)
        self.only_this = label(self.tr("only for this lot"), "tag", wrap=False)
        self.lot_words = label("", "quiet")
        self.no_lot = label(
            self.tr(
                "No lot is signed off, so this table is by weight only: weigh the powder for each batch. "
                "Weigh in the lot that is being fed, and the scoopfuls stand here at once."
            )
        )
        self.weigh = button(self.tr("Start a wei&gh-in"), self._want_weigh_in)
        line = row(spacing=2 * SPACE)
        for widget, stretch in (
            (self.lot_number, 0),
            (self.only_this, 0),
            (self.lot_words, 1),
            (self.no_lot, 1),
        ):
            line.addWidget(widget, stretch, Qt.AlignmentFlag.AlignVCenter)
        line.addWidget(self.weigh, 0, Qt.AlignmentFlag.AlignVCenter)
        made = card(line)
        made.setContentsMargins(0, -SPACE, 0, -SPACE)  # one line needs less air
        return made

    def _make_changes_card(self) -> QFrame:
        self._changes_title = label("", "heading")
        self._changes = QVBoxLayout()
        self._changes.setSpacing(SPACE // 2)
        self.seen = button(self.tr("&I have seen this"), self._see_changes)
        told = QVBoxLayout()
        told.setSpacing(SPACE // 2)
        told.addWidget(self._changes_title)
        told.addLayout(self._changes)
        line = row(told, spacing=2 * SPACE)
        line.setStretch(0, 1)
        line.addWidget(self.seen, 0, Qt.AlignmentFlag.AlignVCenter)
        made = card(line, tone="warn")
        made.hide()
        return made

    def _name_tabs(self, sheet: PlanSheet) -> None:
        names = [group.name or self.tr("Group {number}").format(number=number)
                 for number, group in enumerate(sheet.plan.groups, start=1)]  # fmt: skip
        if sheet.together:
            names.append(self.tr("All together"))
        shown = [self.tabs.tabText(index) for index in range(self.tabs.count())]
        wanted = [on_screen(name, LONGEST_NAME).replace("&", "&&") for name in names]
        if shown != wanted:
            self.tabs.blockSignals(True)
            while self.tabs.count():
                self.tabs.removeTab(0)
            for name in wanted:
                self.tabs.addTab(name)
            self.tabs.blockSignals(False)
        self.tabs.setVisible(len(names) > 1)
        self._place_switches()

    def _chosen(self) -> GroupSheet | None:
        if self._sheet is None:
            return None
        every = [*self._sheet.groups, *([self._sheet.together] if self._sheet.together else [])]
        at = max(self.tabs.currentIndex(), 0)
        return every[at] if at < len(every) else None

    def _show_tab(self) -> None:
        sheet, was = self._chosen(), self._shown
        self._shown = sheet
        by_volume = self.rows_by.currentIndex() == 1
        for widget in (self.rows_by, self.how):
            show_if(widget, sheet is not None)
        show_if(self.table, sheet is not None and len(sheet) > 0 and not by_volume)
        show_if(self.volumes, sheet is not None and by_volume)
        self.table.batches.show_sheet(sheet)
        if by_volume:
            self.volumes.show_sheet(sheet)
        if sheet is None or not sheet.kin_of(was):
            self._dress_for(sheet)
        if sheet is not None and sheet.today_row is not None:
            self.table.show_today(sheet.today_row)
        self.table.fit_soon()

    def _dress_for(self, sheet: GroupSheet | None) -> None:
        """All that follows from a sheet, whatever the count of calves."""
        self._tell_words(sheet)
        most = sheet.line(len(sheet) - 1).scoops if sheet and len(sheet) else None
        show_if(self.many, most is not None and most.told and not most.countable)
        heavy = heavy_text(sheet.capacity_g, telling(sheet)) if sheet and sheet.in_portions else ""
        told = tuple(filter(None, (heavy, too_light_words(sheet) if sheet else "")))
        self.unweighed.setText("\n".join(told))
        show_if(self.unweighed, bool(told))
        if sheet is None:
            return
        if self._sheet is not None:
            self._tell_foot(sheet, self._sheet.plan)
        self.table.dress_for(sheet)

    def _tell_words(self, sheet: GroupSheet | None) -> None:
        """What each calf gets, on which basis, and how strong that is."""
        self.words.setVisible(sheet is not None)
        cautions = strength_cautions(sheet.per_calf) if sheet else ""
        risky = sheet is not None and at_risk(sheet.per_calf)
        self.strength.setText(cautions if risky else "")
        self.strength.setVisible(risky)
        if sheet is None:
            return
        groups = [sheet.group] if sheet.group else list(self._sheet.plan.groups if self._sheet else ())
        told = [
            self.tr("{volume}; {powder} of powder per calf; {rate}").format(
                volume=group_text(group, sheet.per_calf, sheet.farm.units),
                powder=mass_text(sheet.each_g(group), sheet.farm.units),
                rate=rate_text(group.rate, sheet.farm.units),
            )
            for group in groups
        ]
        strength = [strength_text(sheet.per_calf, sheet.farm.units)]
        if not osmolality_caution(sheet.per_calf):  # which tells it too
            strength.append(osmolality_text(sheet.per_calf))
        below = [] if risky or not cautions else [cautions]  # what is no risk leaves the room above to the table
        self.words.setText("\n".join([*dict.fromkeys(told), "; ".join(strength), *below]))

    def _tell_today(self, sheet: PlanSheet) -> None:
        """Whether the hot water will do for today's calves, and whose turn it is when."""
        system = sheet.groups[0].farm.units if sheet.groups else UnitSystem.FARM
        hot_water = sheet.groups[0].farm.hot_water if sheet.groups else None
        try:
            missing = hot_text(hot_needed(sheet, self._warms), hot_water, system)
        except CannotCompute:
            missing = ""  # the row of the group says why
        lines = (
            (self.hot_water, missing),
            (self.scale_off, scale_off_text(sheet.powder.scale.off_share)),
            (self.order, order_text(served(sheet, self._warms), system)),
        )
        for widget, text in lines:
            if widget.text() != text:
                widget.setText(text)
            show_if(widget, bool(text))

    def _tell_water(self, sheet: PlanSheet) -> None:
        """How hot any water of the plan is."""
        system = sheet.groups[0].farm.units if sheet.groups else UnitSystem.FARM
        hot_water = sheet.groups[0].farm.hot_water if sheet.groups else None
        temperatures = [sheet.plan.water_temperature_c, *(known.draw_c for known in self._warms)]
        hottest = max([*temperatures, *([hot_water.hot_c] if hot_water else [])])
        self.scald.setVisible(scalds(hottest))
        self.scald.setText(scald_words(hottest, system))

    def _tell_foot(self, sheet: GroupSheet, plan: Plan) -> None:
        """What holds for every row of a table."""
        told: list[str] = []
        if plan.warmth is None:
            drawn = show_both(plan.water_temperature_c, Kind.TEMPERATURE, sheet.farm.units)
            told.append(self.tr("Water at {temperature}.").format(temperature=drawn))
        if plan.allowance_share:
            allowance = self.tr("{share} more than the calves drink, for hoses and pails.")
            share = shown.share(plan.allowance_share)
            told.append(allowance.format(share=share))
        if sheet.table.vessel and sheet.table.most_calves is not None:
            served = self.tr("One {vessel} serves at most {calves} a batch.")
            told.append(served.format(vessel=sheet.table.vessel.name, calves=counted.calves(sheet.table.most_calves)))
        told += [goes_by_water_words(sheet, telling(sheet)), parts_words(sheet)]
        self.temperature.setText(" ".join(filter(None, told)))
