"""How a row of the seed tin is painted, and where its marks lie."""

from PySide6.QtCore import QModelIndex, QPersistentModelIndex, QPoint, QPointF, QRect, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFont, QPainter, QPixmap
from PySide6.QtWidgets import QStyle, QStyledItemDelegate, QStyleOptionViewItem, QWidget

from gardencanvas.app.tin.looks import RowLook
from gardencanvas.app.tin.marks import paint_mark
from gardencanvas.app.tin.rows import CROP, LOOK, VARIETY
from gardencanvas.canvas.palette import Palette, palette, tint_of
from gardencanvas.canvas.symbols.draw import detail_for, draw_plant
from gardencanvas.crops.model import Crop

_SYMBOL, _SMALL = 34, 22
_INDENT = 18
_MARK = 18

Index = QModelIndex | QPersistentModelIndex


class RowDelegate(QStyledItemDelegate):
    """A symbol, the name and a quiet line; marks at the right end of that line."""

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self.colours: Palette = palette(False)
        self._symbols: dict[tuple[str, str, int, float, bool], QPixmap] = {}

    def sizeHint(self, option: QStyleOptionViewItem, index: Index) -> QSize:
        line = option.fontMetrics.height()
        if index.data(CROP) is None:
            return QSize(100, line + 12)
        symbol = _SYMBOL if index.data(VARIETY) is None else _SMALL
        return QSize(100, max(symbol + 8, 2 * line + 8))

    # marks

    def marks(self, area: QRect, index: Index, *, lively: bool) -> dict[str, QRect]:
        """Marks of a row and where they lie: on the current row and the one under the mouse, all of them."""
        look: RowLook | None = index.data(LOOK)
        if look is None:
            return {}
        crop_itself = index.data(VARIETY) is None
        shown = ["open" if look.open else "folded"] if look.varieties else []
        shown += ["star"] if crop_itself and (look.favourite or lively) else []
        shown += ["page"] if lively else []
        right, bottom = area.right() - 4, area.center().y()
        return {
            name: QRect(right - _MARK * (number + 1), bottom, _MARK, _MARK)
            for number, name in enumerate(shown)
        }

    def mark_at(self, area: QRect, index: Index, at: QPoint, *, lively: bool) -> str:
        """The mark under a point; empty for none."""
        places = self.marks(area, index, lively=lively)
        return next((name for name, place in places.items() if place.contains(at)), "")

    # painting

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        crop: Crop | None = index.data(CROP)
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        if crop is None:
            self._paint_heading(painter, option.rect, str(index.data()))
        else:
            self._paint_row(painter, option, index, crop)
        painter.restore()

    def _paint_heading(self, painter: QPainter, area: QRect, text: str) -> None:
        font = painter.font()
        font.setPointSizeF(font.pointSizeF() * 0.85)
        font.setBold(True)
        painter.setFont(font)
        painter.setPen(QColor(self.colours.quiet))
        painter.drawText(area.adjusted(6, 4, -6, 0), Qt.AlignmentFlag.AlignVCenter, text)

    def _paint_row(self, painter: QPainter, option: QStyleOptionViewItem, index: Index, crop: Crop) -> None:
        area: QRect = option.rect
        state = QStyle.StateFlag
        chosen, hovered = (
            bool(option.state & state.State_Selected),
            bool(option.state & state.State_MouseOver),
        )
        if chosen or hovered:
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(QColor(self.colours.selected))
            painter.setOpacity(1.0 if chosen else 0.5)
            painter.drawRoundedRect(area.adjusted(1, 1, -1, -1), 6, 6)
            painter.setOpacity(1.0)
        indent, side = (0, _SYMBOL) if index.data(VARIETY) is None else (_INDENT, _SMALL)
        symbol = self._symbol(crop, side, painter.device().devicePixelRatioF())
        painter.drawPixmap(area.left() + 5 + indent, area.top() + (area.height() - side) // 2, symbol)
        marks = self.marks(area, index, lively=chosen or hovered)
        self._paint_words(painter, area, area.left() + indent + side + 13, marks, index)
        for name, place in marks.items():
            filled = name == "star" and bool(index.data(LOOK).favourite)
            shade = self.colours.verdicts[2] if filled else self.colours.quiet
            paint_mark(painter, name, QRectF(place).adjusted(2, 2, -2, -2), QColor(shade), filled=filled)

    def _paint_words(
        self, painter: QPainter, area: QRect, left: int, marks: dict[str, QRect], index: Index
    ) -> None:
        look: RowLook = index.data(LOOK)
        line = painter.fontMetrics().height()
        top = area.top() + (area.height() - 2 * line) // 2
        bold = QFont(painter.font())
        bold.setBold(index.data(VARIETY) is None)
        small = QFont(painter.font())
        small.setPointSizeF(small.pointSizeF() * 0.88)
        about = f"⚠ {look.about}" if look.hazardous else look.about
        room = area.right() - left - 6
        free = min((place.left() for place in marks.values()), default=area.right() - 4) - left - 2
        self._line(painter, bold, self.colours.ink, QRect(left, top, room, line), str(index.data()))
        colour = self.colours.verdicts[2] if look.warned else self.colours.quiet
        self._line(painter, small, colour, QRect(left, top + line, free, line), about)

    def _line(self, painter: QPainter, font: QFont, colour: str, place: QRect, text: str) -> None:
        painter.setFont(font)
        painter.setPen(QColor(colour))
        shown = painter.fontMetrics().elidedText(text, Qt.TextElideMode.ElideRight, place.width())
        painter.drawText(place, Qt.AlignmentFlag.AlignVCenter, shown)

    def _symbol(self, crop: Crop, side: int, ratio: float) -> QPixmap:
        key = (crop.id, str(crop.habit), side, ratio, self.colours.dark)
        if key not in self._symbols:
            pixmap = QPixmap(int(side * ratio), int(side * ratio))
            pixmap.setDevicePixelRatio(ratio)
            pixmap.fill(Qt.GlobalColor.transparent)
            painter = QPainter(pixmap)
            radius = side / 2 - 1
            tint = tint_of(crop.family, crop.id, self.colours.dark)
            centre = QPointF(side / 2, side / 2)
            draw_plant(painter, crop.habit, tint, centre, radius, seed=3, detail=detail_for(radius * ratio))
            painter.end()
            self._symbols[key] = pixmap
        return self._symbols[key]
