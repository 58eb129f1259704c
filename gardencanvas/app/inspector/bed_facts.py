"""What a bed does as a whole: families mixed, and soil under leaves through the year."""

from PySide6.QtCore import QRectF, QSize
from PySide6.QtGui import QColor, QPainter, QPaintEvent
from PySide6.QtWidgets import QVBoxLayout, QWidget

from gardencanvas.app.labels import PlainLabel, ValueTable
from gardencanvas.app.session import Session
from gardencanvas.app.soon import Soon
from gardencanvas.fit.cover_share import CoverShare
from gardencanvas.garden.ground import Bed
from gardencanvas.words.bed_facts import cover_why, cover_words, mixing_why, mixing_words

_WAIT_MS = 150  # a bed that is only passed over is not looked into


class BedFacts(QWidget):
    """Filled a moment after a bed is shown: looking into it takes longer than a frame."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self._bed: Bed | None = None
        self._soon = Soon(self, self.refresh, _WAIT_MS)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(6)
        self.values = ValueTable()
        self.strip = CoverStrip()
        for widget in (PlainLabel(self.tr("The bed as a whole"), "heading"), self.values, self.strip):
            column.addWidget(widget)

    def show_bed(self, bed: Bed) -> None:
        """Look into a bed soon."""
        self._bed = bed
        self._soon.ask()

    def refresh(self) -> None:
        """Look into the bed that was shown last, if it is still there."""
        session, bed = self._session, self._bed
        if bed is None or session.layout.by_id.get(bed.id) is not bed:
            return
        from gardencanvas.fit.cover_share import bed_cover  # not needed to start
        from gardencanvas.fit.mixing import bed_mixing

        mixing = bed_mixing(session.garden, session.layout, bed, session.catalogue)
        whole = bed_cover(session.garden, session.layout, bed, session.catalogue)
        cover = whole.within(*session.layout.season)
        self.values.show_rows([
            (self.tr("Families"), mixing_words(mixing), mixing_why()),
            (self.tr("Under leaves"), cover_words(cover), cover_why()),
        ])  # fmt: skip
        self.strip.show_cover(cover)


class CoverStrip(QWidget):
    """A bar for each week, as high as the share of soil under leaves."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._cover: CoverShare | None = None
        self.setAccessibleName(self.tr("Soil under leaves, week by week"))
        self.setToolTip(self.tr("Soil under leaves, week by week; the line marks half"))

    def show_cover(self, cover: CoverShare) -> None:
        """Show these weeks."""
        self._cover = cover
        self.setAccessibleDescription(cover_words(cover))
        self.update()

    def sizeHint(self) -> QSize:
        return QSize(200, 44)

    def minimumSizeHint(self) -> QSize:
        return QSize(80, 44)

    def paintEvent(self, event: QPaintEvent) -> None:
        if self._cover is None:
            return
        painter = QPainter(self)
        room = QRectF(self.rect()).adjusted(0, 2, 0, -1)
        share = self._cover.covered
        step = room.width() / max(len(share), 1)
        painter.fillRect(room, self.palette().alternateBase())
        bar = QColor(self.palette().highlight().color())
        for week, value in enumerate(share.tolist()):
            high = value * room.height()
            painter.fillRect(
                QRectF(room.left() + week * step, room.bottom() - high, max(step - 1, 1), high), bar
            )
        painter.setPen(self.palette().mid().color())
        half = room.center().y()
        painter.drawLine(int(room.left()), int(half), int(room.right()), int(half))
        painter.end()
