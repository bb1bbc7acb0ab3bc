"""Which language the screen speaks and which one is printed: this computer's, not the farm's."""

from __future__ import annotations

from PySide6.QtCore import QSignalBlocker, Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QVBoxLayout, QWidget

from calibrator.desk.context import Desk
from calibrator.desk.forms.fields import Captioned
from calibrator.desk.parts import card, column, label
from calibrator.desk.theme import SPACE, the_theme
from calibrator.desk.tongues import LANGUAGES, PAPER_LANGUAGES, on_paper, spoken
from calibrator.desk.widgets.calm_box import CalmBox
from calibrator.desk.widgets.side_by_side import SideBySide

# In their own words: who does not read the other one must find theirs.
NAMES = {"en": "English", "es": "Español"}
CALLED = ("Language", "Idioma")


class ScreenLanguage(Captioned):
    """Offers the languages of the screen; the choice counts at once."""

    about_to_change = Signal()

    def __init__(self, desk: Desk) -> None:
        self._desk = desk
        self.box = _Languages()
        # Blank is first: whoever never chose follows the system.
        self.box.addItem("", "")
        for code in LANGUAGES:
            self.box.addItem(NAMES[code], code)
        super().__init__("", self.box)
        caption = self.tr("Lan&guage of the screen")
        plain = caption.replace("&", "")
        self.caption.setText(" · ".join([caption, *(word for word in CALLED if word not in plain)]))
        self.box.setAccessibleName(self.caption.text().replace("&", ""))
        self.box.setItemText(0, self.tr("Like this computer: {language}").format(language=NAMES[spoken("")]))
        self.reload()
        self.box.activated.connect(self._chosen)

    def reload(self) -> None:
        """Show the choice as it is kept."""
        blocker = QSignalBlocker(self.box)
        self.box.setCurrentIndex(max(0, self.box.findData(self._desk.settings.now.screen_language)))
        blocker.unblock()

    def _chosen(self) -> None:
        wanted = str(self.box.currentData())
        if wanted != self._desk.settings.now.screen_language:
            self.about_to_change.emit()
            self._desk.speak(wanted)


class _Languages(CalmBox):
    """The arrow keys open the list: each language that they went past would make the whole window anew."""

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() in (Qt.Key.Key_Up, Qt.Key.Key_Down):
            self.showPopup()
        else:
            super().keyPressEvent(event)


class LanguageForm(QWidget):
    """Screen and paper apart: the office may read another language than the barn."""

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self._desk = desk
        self.screen_language = ScreenLanguage(desk)
        self.paper = CalmBox()
        for name in (self.tr("English"), self.tr("Spanish"), self.tr("English and Spanish")):
            self.paper.addItem(name)
        self.paper.activated.connect(self._keep_paper)
        paper = Captioned(self.tr("Language of the &paper"), self.paper)
        self.look = CalmBox()
        for name, kept in (
            (self.tr("Like this computer"), ""),
            (self.tr("Light"), "light"),
            (self.tr("Dark, for a dim barn"), "dark"),
        ):
            self.look.addItem(name, kept)
        self.look.activated.connect(self._wear)
        look = Captioned(self.tr("Light or &dark"), self.look)
        self.told = label("", "quiet")
        choices = SideBySide(self.screen_language, paper, look, gap=2 * SPACE)
        frame = card(column(choices, self.told, spacing=2 * SPACE))
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addWidget(frame)

    def reload(self) -> None:
        """Show both choices as they are kept."""
        self.screen_language.reload()
        self._tell_paper()
        self.look.setCurrentIndex(max(0, self.look.findData(self._desk.settings.now.look)))

    def _tell_paper(self) -> None:
        """The paper's language as it is proposed, and whether it goes with the screen's."""
        chosen = self._desk.settings.now.paper_languages
        self.paper.setCurrentIndex(PAPER_LANGUAGES.index(on_paper(chosen)))
        told = self.tr("The paper speaks the language of the screen until you choose one for it here.")
        if chosen in PAPER_LANGUAGES:
            told = self.tr("Screen and paper may speak different languages: the office one, the barn another.")
        self.told.setText(told)

    def _wear(self) -> None:
        self._desk.settings.keep(look=str(self.look.currentData()))
        the_theme().wear(self._desk.settings.now.look)

    def _keep_paper(self) -> None:
        self._desk.settings.keep(paper_languages=PAPER_LANGUAGES[self.paper.currentIndex()])
        self._tell_paper()
        self._desk.say(self.tr("Language of the paper kept: {language}").format(language=self.paper.currentText()))
