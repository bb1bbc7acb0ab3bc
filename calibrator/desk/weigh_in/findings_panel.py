"""What the fills say so far: the mean and its interval large, then what to do."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFrame, QStackedLayout, QVBoxLayout, QWidget

from calibrator.desk import shown
from calibrator.desk.counted import counted
from calibrator.desk.guide import Guide
from calibrator.desk.how.view import how_button
from calibrator.desk.how.working import Working
from calibrator.desk.parts import Tone, add_all, button, label, row, set_style_property, set_tone
from calibrator.desk.theme import SPACE
from calibrator.desk.weigh_in import line_words, words
from calibrator.desk.weigh_in.fill_plot import Bands
from calibrator.desk.weigh_in.workings import check_workings, level_workings
from calibrator.model import FillWay, UnitSystem
from calibrator.science.weighing import LevelResult


class FindingsPanel(QFrame):
    """The common frame of both fill steps."""

    way: FillWay

    def __init__(self) -> None:
        super().__init__()
        self.setProperty("kind", "card")
        self._figure = label("", "figure", wrap=False)
        self._interval = label("", "quiet")
        self._named = label("", "heading")  # what the figure is, where only that is shown
        self._named.hide()
        self._verdict = label("", "heading")
        self._why = label("")
        self._next = label("")
        self._rule = label("", "quiet")
        self._coming = label("", "heading")
        self._coming_too = label("", "quiet")
        self._empty, self._from_afar = True, False
        # One lies behind the other: what will be told keeps its room while it is told what will stand there.
        self._pages = QStackedLayout(self)
        self._told, self._hint = QWidget(self), QWidget(self)
        self._pages.addWidget(self._told)
        self._pages.addWidget(self._hint)
        hint = QVBoxLayout(self._hint)
        hint.setContentsMargins(2 * SPACE, 2 * SPACE, 2 * SPACE, SPACE)
        add_all(hint, (None, self._coming, self._coming_too, None))
        layout = QVBoxLayout(self._told)
        layout.setContentsMargins(2 * SPACE, SPACE, 2 * SPACE, SPACE)
        layout.setSpacing(SPACE // 2)
        layout.addStretch(1)  # from across the room the figure stands in the middle; near by no room is to spare
        layout.addWidget(self._named)
        figure = row(self._figure, self._interval, spacing=2 * SPACE)
        figure.setStretch(1, 1)
        layout.addLayout(figure)
        layout.addWidget(self._verdict)
        self._unchecked = label("", "quiet")
        self._near = QWidget()  # for those who sit before the screen
        near = QVBoxLayout(self._near)
        near.setContentsMargins(0, 0, 0, 0)
        near.setSpacing(SPACE // 2)
        self.extra = QVBoxLayout()
        add_all(near, (self._why, self._next, self._unchecked, self.extra))
        self._how = how_button(self._workings)
        self._how.hide()
        foot = row(self._rule, self._how)
        foot.setStretch(0, 1)
        foot.setAlignment(self._how, Qt.AlignmentFlag.AlignBottom)
        near.addLayout(foot)
        layout.addWidget(self._near)
        self.acts = QVBoxLayout()  # what can be done, also from across the room
        layout.addLayout(self.acts)
        layout.addStretch(1)
        self._layouts = (near, layout)
        self._guide: Guide | None = None

    def show_findings(self, guide: Guide, system: UnitSystem) -> None:
        """Bring the words up to the facts. Where there are none, those of a first fill keep the room, unseen."""
        self._guide = guide
        self._empty = not self.has_result(guide)
        seen = guide.with_a_first_fill(self.way) if self._empty else guide
        if self.has_result(seen):
            self._how.setVisible(bool(self.workings(seen)))
            self.show_known(seen, system)
        if self._empty:
            self._say_what_comes(guide)
        self._arrange()

    def _say_what_comes(self, guide: Guide) -> None:
        for part in self._told.findChildren(QWidget):
            part.ensurePolished()  # what was never in view has no font of its own yet, and no height
        for layout in self._layouts:
            layout.activate()
        trouble, signed = guide.findings.trouble, guide.signed_off is not None
        self._named.setText(trouble or self.plan(guide))
        self._coming.setText(self.tr("Nothing was weighed here.") if signed else self.coming())
        self._coming_too.setText(trouble or ("" if signed else self.coming_too()))

    def has_result(self, guide: Guide) -> bool:
        """Whether the fills of this step say anything yet."""
        return False

    def show_known(self, guide: Guide, system: UnitSystem) -> None:
        """What the fills say."""

    def plan(self, guide: Guide) -> str:
        """What is to be weighed, before anything is."""
        return f"{words.fills_planned(guide)}."

    def coming(self) -> str:
        """What will stand here from the first weight on."""
        return ""

    def coming_too(self) -> str:
        """What else will."""
        return ""

    def show_across(self, on: bool) -> None:
        """Leave only the figure and what to do, large."""
        self._from_afar = on
        for large in (self._named, self._figure, self._verdict):
            set_style_property(large, "across", "yes" if on else "")
        self._interval.setVisible(not on)
        self._named.setVisible(on)
        self._near.setVisible(not on)
        self._arrange()

    def _arrange(self) -> None:
        """From afar only the plan stands there before the first weight, near by what is coming."""
        self._pages.setCurrentWidget(self._hint if self._empty and not self._from_afar else self._told)
        for part in (self._figure, self._verdict):
            part.setVisible(not (self._empty and self._from_afar))

    def workings(self, guide: Guide) -> tuple[Working, ...]:
        """How the figures came about; none where there are none."""
        return ()

    def _workings(self) -> tuple[Working, ...]:
        return self.workings(self._guide) if self._guide else ()

    def bands(self, guide: Guide) -> Bands | None:
        """What the plot draws behind the fills."""
        return None

    def _show_result(
        self, result: LevelResult, guide: Guide, system: UnitSystem, limits_g: Sequence[float] = ()
    ) -> None:
        mean, low, high = shown.mass_between(result.mean_g, result.low_g, result.high_g, system, limits_g=limits_g)
        self._figure.setText(mean)
        self._interval.setText(
            self.tr("{mean_of}\nbetween {low} and {high}\n(95 % interval)").format(
                mean_of=words.mean_of_words(result, system, self._to_earlier_line(guide)),
                low=low,
                high=high,
            )
        )
        self._named.setText(
            self.tr("Mean of {fills}, ± {mass} (95 %)").format(
                fills=words.weighed_words(result),
                mass=words.unbroken(shown.fine_mass(result.half_width_g, system)),
            )
        )
        resolution_g = guide.scale.resolution_g if guide.scale else None  # as it will stand on the display
        text = self.tr("One more scoopful may weigh {low} to {high}.")
        if not result.foretells:
            text = self.tr("The fills lie so far apart that one of them looks wrong.")
        self._next.setText(
            text.format(
                low=shown.mass(result.next_low_g, system, resolution_g=resolution_g),
                high=shown.mass(result.next_high_g, system, resolution_g=resolution_g),
            )
        )
        self._rule.setText(words.rule_words(result, planned=guide.plan_is_open(result)))
        self._unchecked.setText(words.unchecked_words(result, guide.findings.scale, system))
        waits = self.way is FillWay.TO_MARK and guide.plan_is_open(result)  # the level fills' panel told it already
        self._unchecked.setVisible(bool(self._unchecked.text()) and not waits)

    def _to_earlier_line(self, guide: Guide) -> str:
        """How many of the fills were to a line that was drawn before; blank where none was."""
        return ""

    def _show_verdict(self, text: str, tone: Tone, why: str) -> None:
        self._verdict.setText(text)
        self._why.setText(why)
        self._why.setVisible(bool(why))
        set_tone(self._verdict, tone)


class LevelPanel(FindingsPanel):
    """Level fills: bulk density and how many more."""

    way = FillWay.LEVEL

    def __init__(self) -> None:
        super().__init__()
        self._density = label("")
        self.extra.addWidget(self._density)

    def workings(self, guide: Guide) -> tuple[Working, ...]:
        return level_workings(guide)

    def has_result(self, guide: Guide) -> bool:
        return guide.findings.level is not None

    def coming(self) -> str:
        return self.tr("What a level scoopful weighs stands here from the first weight on.")

    def coming_too(self) -> str:
        return self.tr("With it: how sure that is, how many fills are still needed, and the bulk density.")

    def show_known(self, guide: Guide, system: UnitSystem) -> None:
        level, density = guide.findings.level, guide.findings.density
        self._density.setVisible(density is not None)
        if level is None:
            return
        self._show_result(level, guide, system)
        self._show_verdict(*words.advice_words(level, guide, system), words.level_reason(level, guide, system))
        if density is not None:
            self._density.setText(
                self.tr("Bulk density {density}").format(
                    density=shown.density(density.density_g_per_ml, system, density.expanded)
                )
            )

    def bands(self, guide: Guide) -> Bands | None:
        level = guide.findings.level
        if level is None:
            return None
        wanted_g = level.advice.wanted_half_width_g
        wanted = self.tr("wanted: ± {mass}").format(mass=shown.fine_mass(wanted_g, guide.farm.units))
        low_g, high_g = level.mean_g - wanted_g, level.mean_g + wanted_g
        from_g = max(0.0, level.low_g)
        return Bands(
            level.mean_g, from_g, level.high_g, low_g, high_g, self.tr("95 % interval"), wanted, level.taken_off_g
        )


class ToMarkPanel(FindingsPanel):
    """Fills to the line: on target or not, and where the line should be."""

    way = FillWay.TO_MARK

    def __init__(self, on_move: Callable[[], object]) -> None:
        super().__init__()
        self._settling = label("", "quiet")
        self._move = button("", on_move, "main")
        self.extra.addWidget(self._settling)
        self.acts.addLayout(row(self._move, None))

    def workings(self, guide: Guide) -> tuple[Working, ...]:
        return check_workings(guide)

    def has_result(self, guide: Guide) -> bool:
        return guide.findings.check is not None and guide.weigh_in.target_mass_g is not None

    def plan(self, guide: Guide) -> str:
        words_for = self.tr("Fill to the line, even it with one shake, weigh. {fills}.")
        few = self.tr("Two fills tell it, for those to the earlier line count")
        return words_for.format(fills=few if guide.line_tried else words.fills_planned(guide))

    def coming(self) -> str:
        return self.tr("Whether the line is right stands here from the first weight on.")

    def coming_too(self) -> str:
        return self.tr("With it: what a feeding weighs beside the tolerance, and how many fills are still needed.")

    def show_findings(self, guide: Guide, system: UnitSystem) -> None:
        self._move.setVisible(guide.line_should_move)
        line = guide.findings.line
        level = line is not None and line.struck_level
        self._move.setText(self.tr("See ho&w to use it level") if level else self.tr("See &where to draw it"))
        super().show_findings(guide, system)

    def show_known(self, guide: Guide, system: UnitSystem) -> None:
        check = guide.findings.check
        if check is None:
            return
        wanted = guide.wanted(guide.weigh_in.target_mass_g or check.mean_g)
        limits_g = [check.of_fill_g(limit_g) for limit_g in wanted]
        self._show_result(check.result, guide, system, limits_g)
        self._next.setVisible(not guide.line_should_move)  # of a line that is wrong no more scoopfuls are filled
        reason = line_words.check_reason(check, guide, system, while_filling=True)
        self._show_verdict(*line_words.check_words(check, guide, system), reason)
        earlier = self.tr("What was filled to the earlier line counts too, converted to this one.")
        settling = line_words.settling_words(check)
        self._settling.setText(f"{settling} {earlier}" if guide.to_earlier_line else settling)

    def _to_earlier_line(self, guide: Guide) -> str:
        """The line is named as in the drawing of the step before."""
        fills = guide.to_earlier_line
        if not fills:
            return ""
        return counted.to_the_first_try(fills) if guide.earlier_line_is_own else counted.to_the_line_before(fills)

    def bands(self, guide: Guide) -> Bands | None:
        check, target = guide.findings.check, guide.weigh_in.target_mass_g
        if check is None or target is None:
            return None
        low, high = guide.wanted(target)
        # The fills shown are of one scoopful to the line alone.
        below, above, from_g, to_g = (check.of_fill_g(each_g) for each_g in (check.low_g, check.high_g, low, high))
        reach_g = check.tolerance_g / check.next_line.to_line
        tolerance = self.tr("tolerance: ± {mass}").format(mass=shown.fine_mass(reach_g, guide.farm.units))
        # The feeding's, which is judged: the level scoopfuls before and what is not known of bags widen it.
        each = check.next_line.to_line > 1  # of the equal scoopfuls of a feeding
        interval = self.tr("a scoopful, 95 % interval") if each else self.tr("a feeding, 95 % interval")
        return Bands(check.result.mean_g, below, above, from_g, to_g, interval, tolerance, check.result.taken_off_g)
