"""How cells of the dialog's tables are drawn and edited: narrow, and with a mark where they are wrong."""

from PySide6.QtCore import QModelIndex, QPersistentModelIndex, QRect, Qt
from PySide6.QtGui import QColor, QPainter, QPen
from PySide6.QtWidgets import QLineEdit, QStyle, QStyledItemDelegate, QStyleOptionViewItem, QWidget

from gardencanvas.app.site.look import colours

WRONG = Qt.ItemDataRole.UserRole + 1  # True for a cell that cannot be taken
_TINT_ALPHA = 60
_NARROWEST_EDITOR = 9  # letters


class Cells(QStyledItemDelegate):
    """The whole width of a cell is for its text; a wrong one is tinted and underlined with dashes."""

    def paint(
        self, painter: QPainter, option: QStyleOptionViewItem, index: QModelIndex | QPersistentModelIndex
    ) -> None:
        c = colours()
        area = QRect(option.rect)
        painter.save()
        if option.state & QStyle.StateFlag.State_Selected:
            painter.fillRect(area, QColor(c.selected))
        if index.data(WRONG):
            clash = QColor(c.verdicts[3])
            tint = QColor(clash)
            tint.setAlpha(_TINT_ALPHA)
            painter.fillRect(area, tint)
            painter.setPen(QPen(clash, 2, Qt.PenStyle.DashLine))
            painter.drawLine(area.left() + 3, area.bottom() - 2, area.right() - 3, area.bottom() - 2)
        painter.setPen(QColor(c.ink))
        painter.setFont(option.font)
        side = index.data(Qt.ItemDataRole.TextAlignmentRole)
        middle = side is not None and bool(Qt.AlignmentFlag(side) & Qt.AlignmentFlag.AlignHCenter)
        room = area.adjusted(1, 0, -1, 0) if middle else area.adjusted(8, 0, -4, 0)
        text = painter.fontMetrics().elidedText(
            str(index.data() or ""), Qt.TextElideMode.ElideRight, room.width()
        )
        across = Qt.AlignmentFlag.AlignHCenter if middle else Qt.AlignmentFlag.AlignLeft
        painter.drawText(room, across | Qt.AlignmentFlag.AlignVCenter, text)
        if option.state & QStyle.StateFlag.State_HasFocus:
            painter.setPen(QPen(QColor(c.accent), 1))
            painter.drawRect(area.adjusted(0, 0, -1, -1))
        painter.restore()

    def createEditor(
        self, parent: QWidget, option: QStyleOptionViewItem, index: QModelIndex | QPersistentModelIndex
    ) -> QWidget:
        editor = QLineEdit(parent)
        editor.setMaxLength(40)
        editor.setStyleSheet("QLineEdit { padding: 0 2px; border-radius: 2px; min-height: 0; }")
        return editor

    def updateEditorGeometry(
        self, editor: QWidget, option: QStyleOptionViewItem, index: QModelIndex | QPersistentModelIndex
    ) -> None:
        area = QRect(option.rect)
        wide = max(area.width(), _NARROWEST_EDITOR * option.fontMetrics.averageCharWidth())
        parent = editor.parentWidget()
        most = parent.width() - wide if parent is not None else area.left()
        left = min(max(area.center().x() - wide // 2, 0), most)
        editor.setGeometry(left, area.top(), wide, area.height())
