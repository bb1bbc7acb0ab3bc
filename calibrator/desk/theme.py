"""The look: one set of tokens, light and dark, turned into a palette and a style sheet.

Two accents: a deep blue-green for what can be done, a burnt orange for the fill mark. The pair stays apart
for colour-blind eyes, and nothing is told by colour alone.
"""

from __future__ import annotations

from dataclasses import fields
from functools import cache

from PySide6.QtCore import QObject, Qt, Signal
from PySide6.QtGui import QColor, QFont, QFontDatabase, QPalette
from PySide6.QtWidgets import QApplication, QStyleFactory, QWidget

from calibrator.places import resource
from calibrator.values import dataclass

SPACE = 8  # all gaps are multiples of this
ROWS = SPACE // 2  # between rows of fields: the room for what they say parts them already
BASE_PT = 11.0
_DRESSED = "dressed"


@dataclass(frozen=True)
class Tokens:
    """Colours by what they are for."""

    ground: str
    surface: str
    raised: str
    edge: str
    field_edge: str
    text: str
    quiet: str
    action: str
    action_deep: str
    on_action: str
    action_soft: str
    mark: str
    mark_soft: str
    good: str
    good_soft: str
    warn: str
    warn_soft: str
    bad: str
    bad_soft: str


LIGHT = Tokens(
    ground="#F4F1EA",
    surface="#FFFDF9",
    raised="#FFFFFF",
    edge="#D5CFC2",
    field_edge="#86806F",
    text="#1F2426",
    quiet="#5B6163",
    action="#0E5A6B",
    action_deep="#0A4451",
    on_action="#FFFFFF",
    action_soft="#DCECEF",
    mark="#A8480A",
    mark_soft="#FBE6D4",
    good="#1F6B3A",
    good_soft="#E0F0E4",
    warn="#7A5200",
    warn_soft="#FBF0CF",
    bad="#A1262B",
    bad_soft="#FBE3E2",
)
DARK = Tokens(
    ground="#14191B",
    surface="#1C2326",
    raised="#242C30",
    edge="#3A454A",
    field_edge="#78868D",
    text="#ECEAE4",
    quiet="#A9B1B3",
    action="#7CCBDD",
    action_deep="#A3DFEC",
    on_action="#0A2026",
    action_soft="#1E3A42",
    mark="#FFA45C",
    mark_soft="#44301F",
    good="#86D6A0",
    good_soft="#1D3A28",
    warn="#F0CB6B",
    warn_soft="#3B321A",
    bad="#FF9C97",
    bad_soft="#472524",
)


class Theme(QObject):
    """Follows the system between light and dark, and tells those who paint for themselves."""

    changed = Signal()

    def __init__(self, app: QApplication) -> None:
        super().__init__(app)
        self._app = app
        self._forced: bool | None = None
        self._sheet = ""
        app.setStyle(QStyleFactory.create("Fusion"))
        app.setFont(ui_font())
        app.styleHints().colorSchemeChanged.connect(self._apply)
        self._apply()

    @property
    def dark(self) -> bool:
        if self._forced is not None:
            return self._forced
        return self._app.styleHints().colorScheme() == Qt.ColorScheme.Dark

    def wear(self, look: str) -> None:
        """Light or dark as a person chose it ("light", "dark"); anything else follows the system."""
        self.force({"light": False, "dark": True}.get(look))

    def force(self, dark: bool | None) -> None:
        """Light or dark against the system's wish; None follows the system again."""
        self._forced = dark
        self._apply()

    def dress(self, top: QWidget) -> None:
        """Give the style sheet to a window, or to a dialog with no window beneath it, and to all that comes into it.

        Not to the whole application: whatever is put together outside of a window, row into card and card into page,
        would be dressed all anew at each place that it is put in.
        """
        top.setProperty(_DRESSED, True)
        top.setStyleSheet(self._sheet)

    def _apply(self) -> None:
        tokens = DARK if self.dark else LIGHT
        self._sheet = style_sheet(tokens)
        dressed = [top for top in self._app.topLevelWidgets() if top.property(_DRESSED)]
        # Off with the old sheet first: changing a sheet in place takes Qt five times as long.
        for top in dressed:
            top.setStyleSheet("")
        self._app.setPalette(_palette(tokens))
        for top in dressed:
            top.setStyleSheet(self._sheet)
        self._app.setProperty("tokens", tokens)
        self.changed.emit()


def the_theme() -> Theme:
    """The theme of the running application; made on first need."""
    app = QApplication.instance()
    if not isinstance(app, QApplication):
        raise RuntimeError("The look needs an application to dress.")
    return app.findChild(Theme) or Theme(app)


def tokens() -> Tokens:
    """The colours in force."""
    app = QApplication.instance()
    found = app.property("tokens") if app else None
    return found if isinstance(found, Tokens) else LIGHT


@cache
def _family() -> str:
    for weight in ("Regular", "SemiBold", "Bold"):
        number = QFontDatabase.addApplicationFont(str(resource(f"fonts/hyperlegible_{weight}.ttf")))
    return QFontDatabase.applicationFontFamilies(number)[0]


def ui_font(scale: float = 1.0, weight: QFont.Weight = QFont.Weight.Normal) -> QFont:
    """The program's one typeface, figures of equal width, `scale` times the base size."""
    font = QFont(_family())
    font.setPointSizeF(BASE_PT * scale)
    font.setWeight(weight)
    font.setFeature(QFont.Tag("tnum"), 1)
    return font


def _palette(t: Tokens) -> QPalette:
    palette = QPalette()
    role = QPalette.ColorRole
    colours = {
        t.ground: (role.Window,),
        t.text: (role.WindowText, role.Text, role.ButtonText, role.ToolTipText),
        t.raised: (role.Base, role.ToolTipBase),
        t.surface: (role.AlternateBase, role.Button),
        t.action: (role.Highlight, role.Link, role.Accent),
        t.on_action: (role.HighlightedText,),
        t.quiet: (role.PlaceholderText,),
        t.edge: (role.Mid,),
    }
    for colour, roles in colours.items():
        for which in roles:
            palette.setColor(which, QColor(colour))
    for which in (role.WindowText, role.Text, role.ButtonText):
        palette.setColor(QPalette.ColorGroup.Disabled, which, QColor(t.quiet))
    return palette


def style_sheet(t: Tokens) -> str:
    """The style sheet for a set of tokens. Widgets opt in by the properties `kind`, `tone` and `state`."""
    sheet = resource("style/desk.qss").read_text("utf-8")
    sheet = sheet.replace("@icons@", resource("icons").as_posix()).replace("@shade@", "dark" if t is DARK else "light")
    for field in fields(t):
        sheet = sheet.replace(f"@{field.name}@", getattr(t, field.name))
    return sheet
