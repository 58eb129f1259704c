"""The ribbon's widget: painting, the date cursor, and bars that are dragged in time."""

from datetime import date, timedelta

from PySide6.QtCore import QPoint, QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import (
    QColor,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPaintEvent,
    QPen,
    QPolygonF,
    QResizeEvent,
    QWheelEvent,
)
from PySide6.QtWidgets import QAbstractScrollArea, QFrame, QWidget

from gardencanvas.app.ribbon.bars import Bar, Group, frost_spans, groups, joined
from gardencanvas.app.session import Session
from gardencanvas.app.soon import Soon
from gardencanvas.canvas.palette import Palette, palette, tint_of
from gardencanvas.fit.report import Verdict
from gardencanvas.garden.edits import rebuilt, replace
from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.garden import Garden
from gardencanvas.garden.planting import Planting, Start
from gardencanvas.words.plain import day, short_month
from gardencanvas.words.refusals import why_refused

_LEAST_HEAD = 26  # pixels, for the usual font
_LEAST_BAR = 20
_DRAG = 4


class RibbonView(QAbstractScrollArea):
    """Bars of the shown layout's plantings; the date cursor over everything."""

    hint = Signal(str)
    zoomed = Signal(float)  # a factor asked for by the wheel

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self._colours: Palette = palette(False)
        self._groups: list[Group] = []
        self._frost: list[tuple[date, date]] = []
        self._first, self._last = session.layout.season
        self._zoom = 1.0
        self._pressed: tuple[QPoint, str | None] | None = None
        self._dragging = False
        self._draft: Garden | None = None
        self._drawn: list[tuple[str, Start, date | None]] = []
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setAccessibleName(self.tr("Season ribbon"))
        self.setAccessibleDescription(
            self.tr("Left and right move the date cursor by a day, Page keys by a month.")
        )
        self.viewport().setMouseTracking(True)
        self._soon = Soon(self, self.rebuild)
        session.changed.connect(self._soon.ask)
        session.layout_changed.connect(self._soon.ask)
        session.previewed.connect(self._previewed)
        session.selection_changed.connect(self._repaint)
        session.date_changed.connect(self._repaint)
        self.rebuild()

    # what is shown

    @property
    def first_day(self) -> date:
        """First day of the ribbon."""
        return self._first

    @property
    def last_day(self) -> date:
        """Last day of the ribbon."""
        return self._last

    def set_zoom(self, zoom: float) -> None:
        """Stretch the year about the date cursor: 1 shows it whole, 16 shows some weeks."""
        before = self.x_of(self._session.on)
        self._zoom = min(max(zoom, 1.0), 16.0)
        self._measure_out()
        bar = self.horizontalScrollBar()
        bar.setValue(bar.value() + round(self.x_of(self._session.on) - before))
        self._repaint()

    def set_colours(self, colours: Palette) -> None:
        """Use another palette."""
        self._colours = colours
        self._repaint()

    def sizeHint(self) -> QSize:
        return QSize(800, 190)

    def minimumSizeHint(self) -> QSize:
        return QSize(300, 90)

    def _repaint(self, *_: object) -> None:
        self.viewport().update()

    def _previewed(self, report: object) -> None:
        if report is None or self._times(self._session.shown_garden) != self._drawn:
            self._soon.ask()
        else:
            self._repaint()

    def _times(self, garden: Garden) -> list[tuple[str, Start, date | None]]:
        """What moves bars in time: quick to compare, since unchanged starts are the same objects."""
        return [(p.id, p.start, p.end) for p in garden.layout(self._session.layout_id).plantings]

    def rebuild(self) -> None:
        """Read the bars of the shown layout anew."""
        session = self._session
        layout = session.shown_garden.layout(session.layout_id)
        self._drawn = self._times(session.shown_garden)
        self._first, self._last = layout.season
        self._groups = groups(session, layout.plantings, self.tr("On bare plan"))
        bars = [b for g in self._groups for b in g.bars]
        if bars:
            self._first = min(self._first, *(b.sown for b in bars))
            self._last = max(self._last, *(min(b.out, self._last + timedelta(days=270)) for b in bars))
        self._frost = frost_spans(session)
        self._measure_out()
        self._repaint()

    @property
    def _head(self) -> int:
        """Height of the months, pixels."""
        return max(_LEAST_HEAD, self.fontMetrics().height() + 10)

    @property
    def _bar(self) -> int:
        """Height of a row, pixels."""
        return max(_LEAST_BAR, self.fontMetrics().height() + 4)

    def _rows(self) -> list[tuple[Group, Bar | None]]:
        rows: list[tuple[Group, Bar | None]] = []
        for group in self._groups:
            rows.append((group, None))
            rows += [(group, bar) for bar in group.bars]
        return rows

    def whole_height(self) -> int:
        """How high it is with all rows shown."""
        return self._head + self._bar * len(self._rows()) + 6

    def _measure_out(self) -> None:
        height = self.whole_height()
        view = self.viewport()
        self.verticalScrollBar().setRange(0, max(0, height - view.height()))
        self.verticalScrollBar().setPageStep(view.height())
        self.verticalScrollBar().setSingleStep(self._bar)
        wide = int(self._chart_width() * self._zoom)
        self.horizontalScrollBar().setRange(0, max(0, wide - self._chart_width()))
        self.horizontalScrollBar().setPageStep(self._chart_width())

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._measure_out()

    def step(self, days: int) -> None:
        """Move the date cursor, within the ribbon."""
        self._session.show_date(min(max(self._session.on + timedelta(days=days), self._first), self._last))

    # from dates to pixels and back

    def _names_width(self) -> int:
        return max(110, min(190, self.viewport().width() // 6))

    def _chart_width(self) -> int:
        return max(100, self.viewport().width() - self._names_width() - 8)

    def x_of(self, on: date) -> float:
        """Where a day begins, in viewport pixels."""
        days = max((self._last - self._first).days, 1)
        along = (on - self._first).days / days * self._chart_width() * self._zoom
        return self._names_width() + along - self.horizontalScrollBar().value()

    def date_at(self, x: float) -> date:
        """The day at a viewport pixel, within the ribbon."""
        days = max((self._last - self._first).days, 1)
        along = (x - self._names_width() + self.horizontalScrollBar().value()) / (
            self._chart_width() * self._zoom
        )
        return self._first + timedelta(days=round(min(max(along, 0.0), 1.0) * days))

    def bar_rect(self, bar_id: str) -> QRectF | None:
        """Where a planting's bar lies, in viewport pixels."""
        for number, (_, bar) in enumerate(self._rows()):
            if bar is not None and bar.id == bar_id:
                return self._rect(bar, number)
        return None

    def _rect(self, bar: Bar, number: int) -> QRectF:
        """Where the bar of a row lies."""
        top = self._head + number * self._bar - self.verticalScrollBar().value()
        return QRectF(self.x_of(bar.sown), top + 3, self.x_of(bar.out) - self.x_of(bar.sown), self._bar - 6)

    def _bar_at(self, at: QPointF) -> str | None:
        number = int((at.y() - self._head + self.verticalScrollBar().value()) // self._bar)
        rows = self._rows()
        if at.y() < self._head or not 0 <= number < len(rows):
            return None
        bar = rows[number][1]
        if bar is None:
            return None
        over_name = at.x() < self._names_width()
        return bar.id if over_name or self.x_of(bar.sown) - 3 <= at.x() <= self.x_of(bar.out) + 3 else None

    # painting

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self.viewport())
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        area = QRectF(self.viewport().rect())
        painter.fillRect(area, QColor(self._colours.panel))
        self._paint_frost(painter, area)
        self._paint_months(painter, area)
        painter.save()
        painter.setClipRect(QRectF(0, self._head, area.width(), area.height() - self._head))
        for number, (group, bar) in enumerate(self._rows()):
            top = self._head + number * self._bar - self.verticalScrollBar().value()
            if -self._bar < top < area.height():
                self._paint_row(painter, group, bar, top)
        self._paint_joins(painter, area)
        painter.restore()
        if not self._groups:
            painter.setPen(QColor(self._colours.quiet))
            empty = self.tr("The season shows here once something is planted.")
            painter.drawText(area.adjusted(0, self._head, 0, 0), Qt.AlignmentFlag.AlignCenter, empty)
        self._paint_today(painter, area)
        self._paint_cursor(painter, area)
        painter.end()

    def _paint_today(self, painter: QPainter, area: QRectF) -> None:
        today = date.today()
        if not self._first <= today <= self._last or self.x_of(today) < self._names_width():
            return
        x = self.x_of(today)
        painter.setPen(QPen(QColor(self._colours.accent), 1.0, Qt.PenStyle.DotLine))
        painter.drawLine(QPointF(x, self._head - 4), QPointF(x, area.height()))
        painter.setPen(QColor(self._colours.accent))
        painter.drawText(QPointF(x + 4, area.height() - 4), self.tr("today"))

    def _paint_frost(self, painter: QPainter, area: QRectF) -> None:
        clip = QRectF(self._names_width(), 0, area.width(), area.height())
        for first, last in self._frost:
            span = QRectF(self.x_of(first), self._head - 4, self.x_of(last) - self.x_of(first), area.height())
            painter.fillRect(span.intersected(clip), QColor(self._colours.frost))

    def _paint_months(self, painter: QPainter, area: QRectF) -> None:
        pen = QPen(QColor(self._colours.grid))
        on = date(self._first.year, self._first.month, 1)
        while on <= self._last:
            x = self.x_of(max(on, self._first))
            after = date(on.year + on.month // 12, on.month % 12 + 1, 1)
            if x >= self._names_width() - 1:
                painter.setPen(pen)
                painter.drawLine(QPointF(x, self._head - 4), QPointF(x, area.height()))
                painter.setPen(QColor(self._colours.quiet))
                room = QRectF(x + 4, 2, max(self.x_of(after) - x - 6, 0), self._head - 6)
                name = short_month(on.month)
                if on.month == 1 or on <= self._first:
                    name += f" {on.year}"
                shown = painter.fontMetrics().elidedText(name, Qt.TextElideMode.ElideNone, int(room.width()))
                if painter.fontMetrics().horizontalAdvance(shown) <= room.width():
                    painter.drawText(room, Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft, shown)
            on = after

    def _paint_row(self, painter: QPainter, group: Group, bar: Bar | None, top: float) -> None:
        names = self._names_width()
        font = painter.font()
        font.setBold(bar is None)
        painter.setFont(font)
        room = QRectF(12 if bar is None else 22, top, names - (20 if bar is None else 30), self._bar)
        if bar is not None and bar.id in self._session.selection:
            painter.fillRect(
                QRectF(0, top, self.viewport().width(), self._bar), QColor(self._colours.selected)
            )
        painter.setPen(QColor(self._colours.ink))
        text = group.name if bar is None else bar.name
        shown = painter.fontMetrics().elidedText(text, Qt.TextElideMode.ElideRight, int(room.width()))
        painter.drawText(room, Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft, shown)
        font.setBold(False)
        painter.setFont(font)
        if bar is not None:
            painter.save()
            painter.setClipRect(
                QRectF(names, self._head, self.viewport().width() - names, self.viewport().height())
            )
            self._paint_bar(painter, bar, top)
            painter.restore()

    def _paint_bar(self, painter: QPainter, bar: Bar, top: float) -> None:
        tint = QColor(tint_of(bar.family, bar.crop, self._colours.dark).leaf)
        parts = (
            (bar.sown, bar.in_bed, _mixed(tint, QColor(self._colours.panel), 0.35)),
            (bar.in_bed, min(bar.harvest_first, bar.out), tint),
            (bar.harvest_first, bar.out, _mixed(tint, QColor(self._colours.chrome), 0.6)),
        )
        painter.setPen(Qt.PenStyle.NoPen)
        for first, last, colour in parts:
            if last > first:
                painter.fillRect(
                    QRectF(self.x_of(first), top + 4, self.x_of(last) - self.x_of(first), self._bar - 8),
                    colour,
                )
        whole = QRectF(
            self.x_of(bar.sown), top + 3, max(self.x_of(bar.out) - self.x_of(bar.sown), 3), self._bar - 6
        )
        self._paint_mark(painter, bar.verdict, whole)
        if bar.days_to_spare is not None and bar.days_to_spare > 0:
            end = self.x_of(bar.out + timedelta(days=bar.days_to_spare))
            painter.setPen(QPen(QColor(self._colours.verdict(bar.verdict)), 1.5, Qt.PenStyle.DotLine))
            painter.drawLine(QPointF(whole.right(), whole.center().y()), QPointF(end, whole.center().y()))

    def _paint_joins(self, painter: QPainter, area: QRectF) -> None:
        """Thin lines that join the parts of a succession, from the start of one to the start of the next."""
        painter.setClipRect(area.adjusted(self._names_width(), self._head, 0, 0))
        painter.setPen(QPen(QColor(self._colours.quiet), 1.2))
        number = 0
        for group in self._groups:
            for i, j in joined(group.bars):
                above, below = (self._rect(group.bars[k], number + 1 + k) for k in (i, j))
                x = above.left() + 5
                if x < below.left():
                    line = [QPointF(x, below.center().y()), QPointF(below.left(), below.center().y())]
                else:
                    line = [QPointF(x, below.top())]
                painter.drawPolyline([QPointF(x, above.bottom()), *line])
            number += 1 + len(group.bars)

    def _paint_mark(self, painter: QPainter, verdict: Verdict, whole: QRectF) -> None:
        """The same marks as on the plan: thin, double, dashed, thick."""
        colour = QColor(self._colours.verdict(verdict))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        if verdict is Verdict.CLEAR:
            painter.setPen(QPen(colour, 1.0))
        elif verdict is Verdict.SHARES:
            painter.setPen(QPen(colour, 1.0))
            painter.drawRoundedRect(whole.adjusted(-2, -2, 2, 2), 4, 4)
        elif verdict is Verdict.STRAINS:
            painter.setPen(QPen(colour, 1.6, Qt.PenStyle.DashLine))
        else:
            painter.setPen(QPen(colour, 2.6))
        painter.drawRoundedRect(whole, 3, 3)

    def _paint_cursor(self, painter: QPainter, area: QRectF) -> None:
        x = self.x_of(self._session.on)
        if x < self._names_width():
            return
        painter.setPen(QPen(QColor(self._colours.ink), 1.5))
        painter.drawLine(QPointF(x, self._head - 8), QPointF(x, area.height()))
        label = day(self._session.on)
        wide = painter.fontMetrics().horizontalAdvance(label) + 14
        left = min(x - wide / 2, area.width() - wide - 2)
        painter.setBrush(QColor(self._colours.ink))
        painter.setPen(Qt.PenStyle.NoPen)
        flag = QRectF(left, 1, wide, self._head - 9)
        painter.drawRoundedRect(flag, 6, 6)
        painter.drawPolygon(
            QPolygonF(
                [QPointF(x - 4, self._head - 9), QPointF(x + 4, self._head - 9), QPointF(x, self._head - 4)]
            )
        )
        painter.setPen(QColor(self._colours.panel))
        painter.drawText(flag, Qt.AlignmentFlag.AlignCenter, label)

    # the hand

    def mousePressEvent(self, event: QMouseEvent) -> None:
        if event.button() != Qt.MouseButton.LeftButton:
            return
        at = event.position()
        bar = None if at.y() < self._head else self._bar_at(at)
        self._pressed = (at.toPoint(), bar)
        self._dragging = False
        if bar is None and at.x() >= self._names_width():
            self._session.show_date(self.date_at(at.x()))
        elif bar is not None:
            added = event.modifiers() & Qt.KeyboardModifier.ShiftModifier
            chosen = self._session.selection if added or bar in self._session.selection else frozenset()
            self._session.select(chosen | {bar})

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        if self._pressed is None:
            bar = self._bar_at(event.position())
            self.viewport().setCursor(Qt.CursorShape.SizeHorCursor if bar else Qt.CursorShape.ArrowCursor)
            return
        start, bar = self._pressed
        if bar is None:
            if start.x() >= self._names_width():
                self._session.show_date(self.date_at(event.position().x()))
            return
        if self._dragging or abs(event.position().x() - start.x()) > _DRAG:
            self._dragging = True
            self._drag_bar((self.date_at(event.position().x()) - self.date_at(start.x())).days)

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        draft, self._draft = self._draft, None
        if self._dragging and draft is not None:
            self._session.propose(draft, self.tr("Move in time"))
        self._pressed, self._dragging = None, False
        self._soon.ask()

    def _drag_bar(self, days: int) -> None:
        session = self._session
        try:
            self._draft = moved_in_time(session.garden, session.layout_id, session.selection, days)
        except Refusal as error:
            self.hint.emit(why_refused(error))
            return
        session.preview(self._draft)
        sign = "+" if days > 0 else ""
        self.hint.emit(self.tr("{0}{1} days").format(sign, days))

    def keyPressEvent(self, event: QKeyEvent) -> None:
        steps = {Qt.Key.Key_Left: -1, Qt.Key.Key_Right: 1, Qt.Key.Key_PageUp: -30, Qt.Key.Key_PageDown: 30}
        key = Qt.Key(event.key())
        if key == Qt.Key.Key_Escape and self._pressed is not None:
            self._draft, self._pressed, self._dragging = None, None, False
            self._session.preview(None)
            self._soon.ask()
        elif key in steps:
            step = steps[key] * (7 if event.modifiers() & Qt.KeyboardModifier.ShiftModifier else 1)
            self._session.show_date(
                min(max(self._session.on + timedelta(days=step), self._first), self._last)
            )
        elif key == Qt.Key.Key_Home:
            self._session.show_date(self._first)
        elif key == Qt.Key.Key_End:
            self._session.show_date(self._last)
        else:
            super().keyPressEvent(event)

    def wheelEvent(self, event: QWheelEvent) -> None:
        if event.modifiers() & Qt.KeyboardModifier.ControlModifier:
            self.zoomed.emit(1.15 ** (event.angleDelta().y() / 120))
        else:
            super().wheelEvent(event)


def moved_in_time(garden: Garden, layout_id: str, ids: frozenset[str], days: int) -> Garden:
    """The garden with some plantings started so many days later; locked ones stay."""
    if days == 0:
        return garden
    by = timedelta(days=days)
    moved = []
    for item_id in ids:
        item = garden.find(layout_id, item_id)
        if isinstance(item, Planting) and not item.locked:
            start = item.start
            sown = start.sown_on + by if start.sown_on else None
            end = item.end + by if item.end else None
            moved.append(
                rebuilt(item, start=rebuilt(start, on=start.on + by, sown_on=sown, pinned=True), end=end)
            )
    return replace(garden, layout_id, moved)


def _mixed(one: QColor, two: QColor, share: float) -> QColor:
    """One colour, mixed with another: ``share`` of the first."""
    rest = 1 - share
    return QColor.fromRgbF(
        one.redF() * share + two.redF() * rest,
        one.greenF() * share + two.greenF() * rest,
        one.blueF() * share + two.blueF() * rest,
    )
