"""Above the preview: which page is in view, turning pages, true size."""

from __future__ import annotations

from PySide6.QtWidgets import QWidget

from calibrator.desk.parts import button, label, row
from calibrator.desk.widgets.page_preview import PagePreview


class PreviewBar(QWidget):
    """Its buttons have keys of their own, so that the preview need not have the focus."""

    def __init__(self, preview: PagePreview) -> None:
        super().__init__()
        self._preview = preview
        self.where = label("", "quiet", wrap=False)
        self.back = button(self.tr("Pre&vious"), preview.turn_back)
        self.back.setAccessibleName(self.tr("Previous page"))
        self.forward = button(self.tr("Ne&xt"), preview.turn_forward)
        self.forward.setAccessibleName(self.tr("Next page"))
        self.true_size = button(self.tr("True si&ze"), self._resize)
        self.true_size.setCheckable(True)
        self.true_size.setToolTip(self.tr("As large as on paper, or fitted to the window"))
        layout = row(self.back, self.forward, self.where, None, self.true_size)
        layout.setContentsMargins(0, 0, 0, 0)
        self.setLayout(layout)
        preview.turned.connect(self._show)
        self._show(preview.page, preview.pages)

    def _resize(self) -> None:
        self._preview.show_true_size(self.true_size.isChecked())

    def _show(self, page: int, pages: int) -> None:
        self.where.setText(self.tr("Page {page} of {pages}").format(page=page, pages=pages) if pages else "")
        self.back.setEnabled(page > 1)
        self.forward.setEnabled(page < pages)
        self.true_size.setEnabled(pages > 0)
