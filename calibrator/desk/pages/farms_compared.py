"""One product on every farm of the records: mean densities beside each other, and lots that two farms share."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QDialog, QHeaderView, QTableWidget, QTableWidgetItem, QVBoxLayout, QWidget

from calibrator.desk import shown
from calibrator.desk.context import Desk
from calibrator.desk.counted import counted
from calibrator.desk.forms.fields import Captioned
from calibrator.desk.parts import button, clear, column, framed, label, row, scrolled
from calibrator.desk.plain_text import on_screen
from calibrator.desk.theme import SPACE, tokens
from calibrator.desk.widgets.fitting import fit
from calibrator.desk.widgets.name_choice import NameChoice
from calibrator.model import Farm, SeasonLot
from calibrator.records import season_lots
from calibrator.science.farms_compared import FarmDensity, FarmsCompared, SharedLot, between, compare_farms, products

WIDTH, HEIGHT, BARE_HEIGHT = 820, 600, 160
ROW_PX, NAME_PX, EDGE_PX, DOT_PX = 34, 230, 16, 4


class FarmsPicture(QWidget):
    """A line for each farm: its lots as dots, its mean with the 95 % interval as a bar."""

    def __init__(self) -> None:
        super().__init__()
        self._farms: tuple[FarmDensity, ...] = ()
        self._names: dict[str, str] = {}

    def show_farms(self, farms: tuple[FarmDensity, ...], names: dict[str, str], words: str) -> None:
        """Draw these; `words` tell the picture to those who do not see it."""
        self._farms, self._names = farms, names
        self.setAccessibleName(words)
        self.setFixedHeight(ROW_PX * len(farms) + EDGE_PX)
        self.update()

    def sizeHint(self) -> QSize:
        return QSize(WIDTH - 80, self.height())

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        for place, farm in enumerate(self._farms):
            self._paint_farm(painter, farm, EDGE_PX / 2 + ROW_PX * (place + 0.5))

    def _paint_farm(self, painter: QPainter, farm: FarmDensity, y: float) -> None:
        t = tokens()
        painter.setPen(QColor(t.text))
        room = QRectF(0, y - ROW_PX / 2, NAME_PX - SPACE, ROW_PX)
        name = painter.fontMetrics().elidedText(
            self._names.get(farm.farm_id, ""), Qt.TextElideMode.ElideRight, int(room.width())
        )
        painter.drawText(room, Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignRight, name)
        painter.setPen(QPen(QColor(t.edge), 1))
        painter.drawLine(QPointF(NAME_PX, y), QPointF(self.width() - EDGE_PX, y))
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QColor(t.quiet))
        for lot in farm.lots:
            painter.drawEllipse(QPointF(self._x(lot.density_g_per_ml), y), DOT_PX, DOT_PX)
        painter.setPen(QPen(QColor(t.mark), 4))
        if farm.low_g_per_ml is not None and farm.high_g_per_ml is not None:
            painter.drawLine(QPointF(self._x(farm.low_g_per_ml), y), QPointF(self._x(farm.high_g_per_ml), y))
        middle = self._x(farm.mean_g_per_ml)
        painter.drawLine(QPointF(middle, y - 3 * DOT_PX), QPointF(middle, y + 3 * DOT_PX))

    def _x(self, density_g_per_ml: float) -> float:
        values = [lot.density_g_per_ml for farm in self._farms for lot in farm.lots]
        values += [v for farm in self._farms for v in (farm.low_g_per_ml, farm.high_g_per_ml) if v is not None]
        low, span = min(values), max(max(values) - min(values), 0.01)
        room = self.width() - NAME_PX - 3 * EDGE_PX
        return NAME_PX + EDGE_PX + room * (density_g_per_ml - low) / span


class FarmsPanel(QWidget):
    """Choose a product that several farms weighed; picture, table, and what shared lots tell."""

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self.desk = desk
        self._lots: dict[str, list[SeasonLot]] = {}
        self._names: dict[str, str] = {}
        self.product = NameChoice()
        self.product.activated.connect(self._look)
        self._product = Captioned(self.tr("Product"), self.product)
        self.none = label(
            self.tr(
                "No product was weighed in on two farms yet. Products count as one where their names are the same."
            ),
            "quiet",
        )
        self.picture = FarmsPicture()
        self.table = QTableWidget(0, 5)
        self.table.setHorizontalHeaderLabels(
            [self.tr("Farm"), self.tr("Lots"), self.tr("Mean"), self.tr("95 %"), self.tr("Between lots")]
        )
        self.table.setAccessibleName(self.tr("The product on each farm"))
        self.table.verticalHeader().hide()
        self.table.setEditTriggers(QTableWidget.EditTrigger.NoEditTriggers)
        self.table.horizontalHeader().setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
        self.table.horizontalHeader().setSectionResizeMode(0, QHeaderView.ResizeMode.Stretch)
        self._told = QVBoxLayout()
        layout = column(self._product, self.none, self.picture, self.table, self._told, None)
        layout.setContentsMargins(0, 0, 0, 0)
        self.setLayout(layout)

    def reload(self) -> None:
        """Read every farm's season anew."""
        farms = self.desk.records.every(Farm)
        self._names = {farm.id: on_screen(farm.name) for farm in farms}
        self._lots = {farm.id: season_lots(self.desk.records, farm.id) for farm in farms}
        chosen = self.product.currentText()
        self.product.clear()
        self.product.addItems(list(products(self._lots)))
        self.product.setCurrentIndex(max(0, self.product.findText(chosen)))
        self._look()

    def _look(self) -> None:
        some = self.product.count() > 0
        for part in (self._product, self.picture, self.table):
            part.setVisible(some)
        self.none.setVisible(not some)
        clear(self._told)
        if some:
            self._show(compare_farms(self.product.currentText(), self._lots))

    def _show(self, found: FarmsCompared) -> None:
        self.table.setRowCount(len(found.farms))
        for place, farm in enumerate(found.farms):
            for at, text in enumerate(self._cells(farm)):
                item = QTableWidgetItem(text)
                right = Qt.AlignmentFlag.AlignRight if at else Qt.AlignmentFlag.AlignLeft
                item.setTextAlignment(right | Qt.AlignmentFlag.AlignVCenter)
                self.table.setItem(place, at, item)
        self.table.setFixedHeight(self.table.horizontalHeader().height() + 34 * len(found.farms) + 4)
        sentences = [self._sentence(one, other) for one, other in _pairs(found.farms)]
        shared = [self._shared(lot) for lot in found.shared]
        self.picture.show_farms(found.farms, self._names, " ".join(sentences))
        for text in (*sentences, *shared):
            self._told.addWidget(label(text))
        if not shared:
            self._told.addWidget(
                label(
                    self.tr(
                        "No lot was weighed on two of these farms. One that both weigh under its number would tell "
                        "whether powder or weighing differs."
                    ),
                    "quiet",
                )
            )

    def _cells(self, farm: FarmDensity) -> list[str]:
        spread = "–" if farm.sd_share is None else shown.share(farm.sd_share)
        low, high = farm.low_g_per_ml, farm.high_g_per_ml
        interval = (
            "–"
            if low is None or high is None
            else self.tr("{low} to {high}").format(low=self._bare(low), high=self._bare(high))
        )
        name = self._names.get(farm.farm_id, "")
        return [name, str(len(farm.lots)), self._density(farm.mean_g_per_ml), interval, spread]

    def _density(self, g_per_ml: float) -> str:
        return shown.density(g_per_ml, self.desk.system, brief=True)

    def _bare(self, g_per_ml: float) -> str:
        return shown.density(g_per_ml, self.desk.system, unit=False)

    def _sentence(self, one: FarmDensity, other: FarmDensity) -> str:
        names = {"first": self._names[one.farm_id], "second": self._names[other.farm_id]}
        found = between(one, other)
        if found is None:
            text = self.tr("{first} and {second}: a farm with one lot cannot be compared yet.")
            return text.format(**names)
        share = shown.unsigned_share(found.difference / one.mean_g_per_ml)
        told = {"share": share, "lots": counted.lots(len(one.lots) + len(other.lots))}
        if not found.differs:
            text = self.tr("{first} and {second}: no difference can be told from {lots}.")
        elif found.difference > 0:
            text = self.tr("At {second} it is {share} denser than at {first}, more than the lots' spread explains.")
        else:
            text = self.tr("At {second} it is {share} lighter than at {first}, more than the lots' spread explains.")
        return text.format(**names, **told)

    def _shared(self, lot: SharedLot) -> str:
        first, second = (self._names[farm] for farm in lot.farm_ids)
        told = {
            "lot": on_screen(lot.lot_number), "first": first, "second": second,
            "one": self._density(lot.first.density_g_per_ml), "other": self._density(lot.second.density_g_per_ml),
        }  # fmt: skip
        if lot.difference.differs:
            text = self.tr(
                "Lot {lot}, the same powder: {one} at {first}, {other} at {second}. They weigh it "
                "differently: compare scoops, scales and how level is struck."
            )
        else:
            text = self.tr("Lot {lot}, the same powder: {one} at {first}, {other} at {second}. They agree.")
        return text.format(**told)


class FarmsDialog(QDialog):
    """The panel over the window; Escape or the button closes it."""

    def __init__(self, desk: Desk, parent: QWidget | None) -> None:
        super().__init__(parent)
        self.setWindowTitle(self.tr("A product across farms"))
        self.panel = FarmsPanel(desk)
        self.panel.reload()
        self.close_button = button(self.tr("Close"), self.close, "main")
        layout = framed(self)
        layout.addWidget(scrolled(self.panel), 1)
        layout.addLayout(row(None, self.close_button))
        fit(self, WIDTH, HEIGHT if self.panel.product.count() else BARE_HEIGHT)


def _pairs(farms: tuple[FarmDensity, ...]) -> list[tuple[FarmDensity, FarmDensity]]:
    """The farm of most lots beside each other one."""
    most = max(farms, key=_lots)
    return [(most, other) for other in farms if other is not most]


def _lots(farm: FarmDensity) -> int:
    return len(farm.lots)
