"""How a place is written in the list: its name, then state, country and position in quiet letters."""

from PySide6.QtCore import QModelIndex, QPersistentModelIndex, QRect, QSize, Qt
from PySide6.QtGui import QColor, QFont, QPainter
from PySide6.QtWidgets import QStyle, QStyledItemDelegate, QStyleOptionViewItem, QWidget

from gardencanvas.app.site.look import colours
from gardencanvas.season.coordinates import written
from gardencanvas.season.places import Place

PLACE = Qt.ItemDataRole.UserRole


class PlaceRows(QStyledItemDelegate):
    """One line a place; what does not fit ends in an ellipsis."""

    @staticmethod
    def height_of(widget: QWidget) -> int:
        """Height of one row."""
        return widget.fontMetrics().height() + 10

    def sizeHint(self, option: QStyleOptionViewItem, index: QModelIndex | QPersistentModelIndex) -> QSize:
        return QSize(120, self.height_of(option.widget))

    def paint(
        self, painter: QPainter, option: QStyleOptionViewItem, index: QModelIndex | QPersistentModelIndex
    ) -> None:
        place = index.data(PLACE)
        if not isinstance(place, Place):
            return
        c = colours()
        painter.save()
        if option.state & QStyle.StateFlag.State_Selected:
            painter.fillRect(option.rect, QColor(c.selected))
        left = option.rect.adjusted(8, 0, -8, 0)
        where = f"{written(place.latitude_deg, 'latitude', 1)} {written(place.longitude_deg, 'longitude', 1)}"
        quiet = QColor(c.quiet)
        left = self._write(painter, left, where, quiet, option.font, Qt.AlignmentFlag.AlignRight)
        bold = QFont(option.font)
        bold.setWeight(QFont.Weight.DemiBold)
        left = self._write(painter, left, place.name, QColor(c.ink), bold, Qt.AlignmentFlag.AlignLeft)
        region = ", ".join(filter(None, (place.region, place.country)))
        self._write(painter, left, region, quiet, option.font, Qt.AlignmentFlag.AlignLeft)
        painter.restore()

    @staticmethod
    def _write(
        painter: QPainter, room: QRect, text: str, colour: QColor, font: QFont, side: Qt.AlignmentFlag
    ) -> QRect:
        """Write into the room; returns what is left of it."""
        painter.setFont(font)
        painter.setPen(colour)
        metrics = painter.fontMetrics()
        shown = metrics.elidedText(text, Qt.TextElideMode.ElideRight, max(room.width(), 0))
        painter.drawText(room, side | Qt.AlignmentFlag.AlignVCenter, shown)
        used = metrics.horizontalAdvance(shown) + 8
        return (
            room.adjusted(used, 0, 0, 0)
            if side == Qt.AlignmentFlag.AlignLeft
            else room.adjusted(0, 0, -used, 0)
        )
