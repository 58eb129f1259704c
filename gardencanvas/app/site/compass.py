"""A small drawing of the plan and where north lies, to be turned with the mouse."""

from math import atan2, degrees

from PySide6.QtCore import QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QColor, QMouseEvent, QPainter, QPaintEvent, QPen, QPolygonF
from PySide6.QtWidgets import QSizePolicy, QWidget

from gardencanvas.app.site.look import colours
from gardencanvas.words.remedies import wind

_STEP_DEG = 5.0  # of the mouse; the field takes any angle


class Compass(QWidget):
    """The plan upright, its top edge bold, in a ring that carries the N; ``turned`` gives the new bearing."""

    turned = Signal(float)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._bearing = 0.0
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)
        self.setCursor(Qt.CursorShape.OpenHandCursor)
        self.setToolTip(self.tr("Drag to turn"))

    def sizeHint(self) -> QSize:
        side = 7 * self.fontMetrics().height()
        return QSize(side, side)

    def show_bearing(self, bearing_deg: float) -> None:
        """Show a bearing."""
        self._bearing = bearing_deg
        self.setAccessibleName(self.tr("The top of the plan looks {0}").format(wind(bearing_deg)))
        self.update()

    def mousePressEvent(self, event: QMouseEvent) -> None:
        self._turn(event)

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        self._turn(event)

    def _turn(self, event: QMouseEvent) -> None:
        if not event.buttons() & Qt.MouseButton.LeftButton:
            return
        way = event.position() - QRectF(self.rect()).center()
        if way.manhattanLength() < 4:
            return
        # The N follows the mouse: as far left of the top as the top looks to the right of north.
        north = degrees(atan2(way.x(), -way.y()))
        self.turned.emit(round(-north / _STEP_DEG) * _STEP_DEG % 360.0)

    def paintEvent(self, event: QPaintEvent) -> None:
        c = colours()
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        area = QRectF(self.rect())
        line = self.fontMetrics().height()
        ring = min(area.width(), area.height()) / 2 - 0.62 * line
        painter.translate(area.center())
        painter.setPen(QPen(QColor(c.line), 1.5))
        painter.drawEllipse(QPointF(0, 0), ring, ring)
        half_width, half_height = 0.50 * ring, 0.36 * ring
        plan = QRectF(-half_width, -half_height, 2 * half_width, 2 * half_height)
        painter.setPen(QPen(QColor(c.bed_edge), 1))
        painter.setBrush(QColor(c.soil))
        painter.drawRect(plan)
        painter.setPen(QPen(QColor(c.bed_edge), 3))
        painter.drawLine(plan.topLeft(), plan.topRight())
        self._needle(painter, c.accent, c.panel, ring)
        painter.end()

    def _needle(self, painter: QPainter, accent: str, panel: str, ring: float) -> None:
        """An arrow across the plan, and the N on the ring, upright however it is turned."""
        painter.save()
        painter.rotate(-self._bearing)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QColor(accent))
        tip, wide = -0.66 * ring, 0.09 * ring
        painter.drawPolygon(
            QPolygonF([QPointF(0, tip), QPointF(wide, tip + 3 * wide), QPointF(-wide, tip + 3 * wide)])
        )
        painter.setPen(QPen(QColor(accent), 2))
        painter.drawLine(QPointF(0, tip + 2 * wide), QPointF(0, 0.5 * ring))
        at = painter.transform().map(QPointF(0, -ring))
        painter.restore()
        origin = painter.transform().map(QPointF(0, 0))
        line = self.fontMetrics().height()
        disc = QRectF(0, 0, 1.15 * line, 1.15 * line)
        disc.moveCenter(at - origin)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QColor(accent))
        painter.drawEllipse(disc)
        painter.setPen(QColor(panel))
        font = self.font()
        font.setBold(True)
        painter.setFont(font)
        painter.drawText(disc, Qt.AlignmentFlag.AlignCenter, self.tr("N"))
