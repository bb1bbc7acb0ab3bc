"""The look: one set of tokens, light and dark, turned into a palette and a style sheet.

Two accents: a deep blue-green for what can be done, a burnt orange for the fill mark. The pair stays apart
for colour-blind eyes, and nothing is told by colour alone.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache

from PySide6.QtCore import QObject, Qt, Signal
from PySide6.QtGui import QColor, QFont, QFontDatabase, QPalette
from PySide6.QtWidgets import QApplication, QStyleFactory

from calibrator.places import resource

SPACE = 8  # all gaps are multiples of this
BASE_PT = 11.0


@dataclass(frozen=True)
class Tokens:
    """Colours by what they are for."""

    ground: str
    surface: str
    raised: str
    edge: str
    text: str
    quiet: str
    action: str
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
    ground="#F4F1EA", surface="#FFFDF9", raised="#FFFFFF", edge="#D5CFC2", text="#1F2426", quiet="#5B6163",
    action="#0E5A6B", on_action="#FFFFFF", action_soft="#DCECEF", mark="#B8500A", mark_soft="#FBE6D4",
    good="#1F6B3A", good_soft="#E0F0E4", warn="#7A5200", warn_soft="#FBF0CF", bad="#A1262B", bad_soft="#FBE3E2",
)  # fmt: skip
DARK = Tokens(
    ground="#14191B", surface="#1C2326", raised="#242C30", edge="#3A454A", text="#ECEAE4", quiet="#A9B1B3",
    action="#7CCBDD", on_action="#0A2026", action_soft="#1E3A42", mark="#FFA45C", mark_soft="#44301F",
    good="#86D6A0", good_soft="#1D3A28", warn="#F0CB6B", warn_soft="#3B321A", bad="#FF9C97", bad_soft="#472524",
)  # fmt: skip


class Theme(QObject):
    """Follows the system between light and dark, and tells those who paint for themselves."""

    changed = Signal()

    def __init__(self, app: QApplication) -> None:
        super().__init__(app)
        self._app = app
        self._forced: bool | None = None
        app.setStyle(QStyleFactory.create("Fusion"))
        app.setFont(ui_font())
        app.styleHints().colorSchemeChanged.connect(self._apply)
        self._apply()

    @property
    def dark(self) -> bool:
        if self._forced is not None:
            return self._forced
        return self._app.styleHints().colorScheme() == Qt.ColorScheme.Dark

    def force(self, dark: bool | None) -> None:
        """Light or dark against the system's wish; None follows the system again."""
        self._forced = dark
        self._apply()

    def _apply(self) -> None:
        tokens = DARK if self.dark else LIGHT
        self._app.setPalette(_palette(tokens))
        self._app.setStyleSheet(style_sheet(tokens))
        self._app.setProperty("tokens", tokens)
        self.changed.emit()


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
    for which, colour in (
        (role.Window, t.ground), (role.WindowText, t.text), (role.Base, t.raised), (role.AlternateBase, t.surface),
        (role.Text, t.text), (role.Button, t.surface), (role.ButtonText, t.text), (role.ToolTipBase, t.raised),
        (role.ToolTipText, t.text), (role.Highlight, t.action), (role.HighlightedText, t.on_action),
        (role.PlaceholderText, t.quiet), (role.Link, t.action), (role.Accent, t.action), (role.Mid, t.edge),
    ):  # fmt: skip
        palette.setColor(which, QColor(colour))
    for which in (role.WindowText, role.Text, role.ButtonText):
        palette.setColor(QPalette.ColorGroup.Disabled, which, QColor(t.quiet))
    return palette


def style_sheet(t: Tokens) -> str:
    """The style sheet for a set of tokens. Widgets opt in by the dynamic properties `kind`, `tone`, `state`."""
    return _SHEET.format(**{name: getattr(t, name) for name in Tokens.__dataclass_fields__})


_SHEET = """
QToolTip {{ background: {raised}; color: {text}; border: 1px solid {edge}; padding: 4px; }}
QLabel {{ background: transparent; }}
QLabel[kind="title"] {{ font-size: 20pt; font-weight: 700; }}
QLabel[kind="heading"] {{ font-size: 13.5pt; font-weight: 600; }}
QLabel[kind="figure"] {{ font-size: 26pt; font-weight: 700; }}
QLabel[kind="quiet"] {{ color: {quiet}; }}
QLabel[kind="caution"] {{ background: {warn_soft}; color: {warn}; border-radius: 6px; padding: 8px 12px; }}
QLabel[kind="tag"] {{ border-radius: 9px; padding: 2px 10px; font-weight: 600; background: {action_soft}; color: {action}; }}
QLabel[tone="good"] {{ color: {good}; }}
QLabel[tone="warn"] {{ color: {warn}; }}
QLabel[tone="bad"] {{ color: {bad}; }}
QLabel[kind="tag"][tone="good"] {{ background: {good_soft}; }}
QLabel[kind="tag"][tone="warn"] {{ background: {warn_soft}; }}
QLabel[kind="tag"][tone="bad"] {{ background: {bad_soft}; }}
QLabel[state="wrong"] {{ color: {bad}; }}
QLabel[state="ok"] {{ color: {quiet}; }}
QFrame[kind="card"] {{ background: {surface}; border: 1px solid {edge}; border-radius: 10px; }}
QFrame[kind="card"][tone="good"] {{ background: {good_soft}; border-color: {good}; }}
QFrame[kind="card"][tone="warn"] {{ background: {warn_soft}; border-color: {warn}; }}
QFrame[kind="card"][tone="bad"] {{ background: {bad_soft}; border-color: {bad}; }}
QFrame[kind="rule"] {{ background: {edge}; max-height: 1px; min-height: 1px; border: none; }}
QPushButton {{ background: {surface}; color: {text}; border: 1px solid {edge}; border-radius: 7px;
  padding: 7px 16px; min-height: 22px; }}
QPushButton:hover {{ background: {action_soft}; }}
QPushButton:focus {{ border: 2px solid {action}; padding: 6px 15px; }}
QPushButton:disabled {{ color: {quiet}; background: {ground}; }}
QPushButton[kind="main"] {{ background: {action}; color: {on_action}; border: 1px solid {action}; font-weight: 600; }}
QPushButton[kind="main"]:focus {{ border: 2px solid {text}; padding: 6px 15px; }}
QPushButton[kind="main"]:disabled {{ background: {edge}; color: {quiet}; border-color: {edge}; }}
QPushButton[kind="link"] {{ background: transparent; border: 1px solid transparent; color: {action}; padding: 4px 6px;
  text-align: left; }}
QPushButton[kind="link"]:hover {{ text-decoration: underline; }}
QPushButton[kind="link"]:focus {{ border: 2px solid {action}; padding: 3px 5px; }}
QLineEdit, QComboBox, QDateEdit, QSpinBox, QPlainTextEdit {{ background: {raised}; color: {text}; border: 1px solid {edge};
  border-radius: 6px; padding: 6px 9px; min-height: 22px; selection-background-color: {action};
  selection-color: {on_action}; }}
QLineEdit:focus, QComboBox:focus, QDateEdit:focus, QSpinBox:focus, QPlainTextEdit:focus {{ border: 2px solid {action};
  padding: 5px 8px; }}
QLineEdit[state="wrong"] {{ border: 2px solid {bad}; padding: 5px 8px; }}
QComboBox::drop-down {{ border: none; width: 24px; }}
QComboBox QAbstractItemView {{ background: {raised}; border: 1px solid {edge}; selection-background-color: {action};
  selection-color: {on_action}; }}
QCheckBox, QRadioButton {{ spacing: 8px; padding: 3px; background: transparent; }}
QCheckBox:focus, QRadioButton:focus {{ border: 2px solid {action}; border-radius: 5px; padding: 1px; }}
QTableView, QTreeView, QListView {{ background: {raised}; alternate-background-color: {surface}; color: {text};
  border: 1px solid {edge}; border-radius: 8px; gridline-color: {edge}; selection-background-color: {action_soft};
  selection-color: {text}; }}
QTableView:focus, QTreeView:focus, QListView:focus {{ border: 2px solid {action}; }}
QTableView::item {{ padding: 5px 8px; }}
QHeaderView {{ background: transparent; }}
QHeaderView::section {{ background: {surface}; color: {quiet}; border: none; border-bottom: 1px solid {edge};
  padding: 6px 8px; font-weight: 600; }}
QTableCornerButton::section {{ background: {surface}; border: none; }}
QScrollArea {{ background: transparent; border: none; }}
QScrollArea > QWidget > QWidget {{ background: transparent; }}
QScrollBar:vertical {{ background: transparent; width: 12px; margin: 2px; }}
QScrollBar::handle:vertical {{ background: {edge}; border-radius: 4px; min-height: 32px; }}
QScrollBar:horizontal {{ background: transparent; height: 12px; margin: 2px; }}
QScrollBar::handle:horizontal {{ background: {edge}; border-radius: 4px; min-width: 32px; }}
QScrollBar::add-line, QScrollBar::sub-line {{ width: 0; height: 0; }}
QScrollBar::add-page, QScrollBar::sub-page {{ background: transparent; }}
QTabWidget::pane {{ border: none; border-top: 1px solid {edge}; top: -1px; }}
QTabBar {{ background: transparent; }}
QTabBar::tab {{ background: transparent; color: {quiet}; padding: 8px 16px; border: none; border-bottom: 3px solid transparent; }}
QTabBar::tab:selected {{ color: {text}; border-bottom: 3px solid {action}; font-weight: 600; }}
QTabBar::tab:focus {{ color: {action}; }}
QWidget#rail {{ background: {surface}; border-right: 1px solid {edge}; }}
QPushButton[kind="rail"] {{ background: transparent; border: none; border-radius: 8px; text-align: left; padding: 10px 14px;
  color: {text}; font-size: 11.5pt; }}
QPushButton[kind="rail"]:hover {{ background: {ground}; }}
QPushButton[kind="rail"]:checked {{ background: {action_soft}; color: {action}; font-weight: 700; }}
QPushButton[kind="rail"]:focus {{ border: 2px solid {action}; padding: 8px 12px; }}
QLabel#notice {{ background: {text}; color: {ground}; border-radius: 8px; padding: 10px 16px; }}
"""
