"""What a trial tells, and beneath it what the trials of the same people say together."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtWidgets import QVBoxLayout, QWidget

from calibrator.desk.parts import label, row
from calibrator.desk.plain_text import LONGEST_LINE, on_screen
from calibrator.desk.theme import SPACE
from calibrator.desk.trial.over_words import habit_words, over_finding_words, over_words
from calibrator.desk.trial.picture import Row, TrialPicture
from calibrator.desk.trial.words import figures_words, finding_words, person_words
from calibrator.desk.trial.work import TrialWork
from calibrator.desk.widgets.picture_key import Entry, PictureKey, Sign
from calibrator.model import FillWay
from calibrator.science.stats import mean_of


class TrialTold(QWidget):
    """The finding, the picture, a paragraph for each person, the figures; `mass` tells a weight as people read it,
    `how` opens the workings."""

    def __init__(self, mass: Callable[[float], str], how: QWidget) -> None:
        super().__init__()
        self._mass, self.how = mass, how
        self.finding, self.people, self.figures = label("", "heading"), label(""), label("", "quiet")
        self.picture, self.key = TrialPicture(), PictureKey()
        self.over_finding, self.over_people, self.over_figures = label("", "heading"), label(""), label("", "quiet")
        inside = QVBoxLayout(self)
        inside.setContentsMargins(0, 0, 0, 0)
        for widget in (self.finding, self.picture, self.key, self.people, self.figures):
            inside.addWidget(widget)
        inside.addLayout(row(how, None))
        inside.addSpacing(SPACE)
        for widget in (self.over_finding, self.over_people, self.over_figures):
            inside.addWidget(widget)
        inside.addStretch(1)

    def tell(self, work: TrialWork) -> None:
        """Say what the fills of the trial in hand tell."""
        found = work.findings()
        way = work.trial.way if work.trial else FillWay.LEVEL
        for widget in (self.figures, self.how):
            widget.setVisible(found is not None)
        if found is not None:
            self.finding.setText(finding_words(found))
            self.people.setText("\n\n".join(person_words(one, way) for one in found.people))
            self.figures.setText(figures_words(found))
        elif work.trial is not None and not work.trial.counts:
            self.finding.setText(self.tr("This trial does not count"))
            reason = on_screen(work.trial.withdrawn_reason)
            self.people.setText(self.tr("It was withdrawn: {reason}").format(reason=reason))
        else:
            self.finding.setText(self.tr("Five fills each, two people or more"))
            self.people.setText(
                self.tr(
                    "Everybody fills the same scoop from the same bag, one after another. It is no test of people: it "
                    "shows which move to practice."
                )
            )
        self._draw(work, found.mean_g if found else None)
        self._tell_over(work, way)

    def _tell_over(self, work: TrialWork, way: FillWay) -> None:
        over = work.over_time()
        for widget in (self.over_finding, self.over_people, self.over_figures):
            widget.setVisible(over is not None)
        if over is None:
            return
        self.over_finding.setText(over_finding_words(over))
        self.over_people.setText("\n\n".join(habit_words(one, over.trials, way) for one in over.found.people))
        self.over_figures.setText(over_words(over.found))

    def _draw(self, work: TrialWork, middle_g: float | None) -> None:
        told = {name: masses for name, masses in work.people().items() if masses}
        rows = tuple(Row(on_screen(name, LONGEST_LINE), tuple(own), mean_of(own)) for name, own in told.items())
        every = [mass for one in rows for mass in one.masses]
        ends = (self._mass(min(every)), self._mass(max(every))) if every else ("", "")
        self.picture.show_rows(rows, middle_g, ends)
        self._explain(bool(rows), middle_g is not None)
        self.picture.setAccessibleName(self.tr("Each person's fills"))
        self.picture.setAccessibleDescription("; ".join(f"{one.name}: {self._mass(one.mean_g)}" for one in rows))

    def _explain(self, drawn: bool, compared: bool) -> None:
        told = [Entry(Sign.RING, "text", self.tr("a fill")), Entry(Sign.BAR, "action", self.tr("mean of a person"))]
        if compared:
            told.append(Entry(Sign.DASHES, "quiet", self.tr("mean of all")))
        self.key.show_entries(told if drawn else ())
