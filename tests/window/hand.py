"""A hand on the plan: mouse and keys sent to the viewport, places given in plan metres."""

from datetime import date

from PySide6.QtCore import QEvent, QPoint, QPointF, Qt
from PySide6.QtGui import QMouseEvent, QWheelEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from gardencanvas.app.session import Session
from gardencanvas.canvas.view import PlanView
from gardencanvas.garden.garden import Garden
from tests.garden.makers import bed, garden, row

LEFT, MIDDLE = Qt.MouseButton.LeftButton, Qt.MouseButton.MiddleButton
NONE, SHIFT = Qt.KeyboardModifier.NoModifier, Qt.KeyboardModifier.ShiftModifier
CTRL, ALT = Qt.KeyboardModifier.ControlModifier, Qt.KeyboardModifier.AltModifier


def two_rows() -> Garden:
    """Two beds; in the first a row of leeks and one of beetroot, 60 cm apart."""
    return garden(
        row("leeks", "leek", 0.1, 0.1, kind="raised", on=date(2027, 5, 20)),
        row("beets", "beetroot", 0.1, 0.7, on=date(2027, 5, 1)),
        beds=(bed("bed-1"), bed("bed-2", 0.0, 2.0)),
    )


class Hand:
    """Works one plan view."""

    def __init__(self, qtbot, value: Garden) -> None:
        self.session = Session(value)
        self.session.show_date(date(2027, 7, 1))
        self.view = PlanView(self.session)
        self.said: list[str] = []
        self.view.status.connect(self.said.append)
        qtbot.addWidget(self.view)
        self.view.resize(900, 640)
        self.view.show()
        qtbot.waitExposed(self.view)
        self.view.setFocus()

    @property
    def layout(self):
        return self.session.layout

    def planting(self, planting_id):
        return self.layout.by_id[planting_id]

    def pixel(self, place) -> QPoint:
        """The viewport pixel of a plan place in metres; a pixel stays as it is."""
        return place if isinstance(place, QPoint) else self.view.mapFromScene(QPointF(*place) * 100)

    def send(self, kind, place, button=LEFT, held=LEFT, keys=NONE) -> None:
        port = self.view.viewport()
        at = self.pixel(place)
        event = QMouseEvent(kind, QPointF(at), QPointF(port.mapToGlobal(at)), button, held, keys)
        QApplication.sendEvent(port, event)

    def press(self, place, button=LEFT, keys=NONE) -> None:
        self.send(QEvent.Type.MouseButtonPress, place, button, button, keys)

    def move(self, place, held=LEFT, keys=NONE) -> None:
        self.send(QEvent.Type.MouseMove, place, Qt.MouseButton.NoButton, held, keys)

    def release(self, place, button=LEFT, keys=NONE) -> None:
        self.send(QEvent.Type.MouseButtonRelease, place, button, Qt.MouseButton.NoButton, keys)

    def click(self, place, keys=NONE) -> None:
        self.press(place, keys=keys)
        self.release(place, keys=keys)

    def double_click(self, place) -> None:
        self.click(place)
        self.send(QEvent.Type.MouseButtonDblClick, place)
        self.release(place)

    def drag(self, begin, end, keys=NONE, *, let_go=True) -> None:
        """Press, move in some steps, release."""
        a, b = self.pixel(begin), self.pixel(end)
        self.press(a, keys=keys)
        for i in range(1, 6):
            self.move(a + (b - a) * i / 5, keys=keys)
        if let_go:
            self.release(b, keys=keys)

    def key(self, key, keys=NONE) -> None:
        QTest.keyClick(self.view, key, keys)

    def write(self, text: str) -> None:
        QTest.keyClicks(self.view, text)

    def wheel(self, place, notches, keys=NONE) -> None:
        port = self.view.viewport()
        at = self.pixel(place)
        event = QWheelEvent(
            QPointF(at), QPointF(port.mapToGlobal(at)), QPoint(), QPoint(0, 120 * notches),
            Qt.MouseButton.NoButton, keys, Qt.ScrollPhase.NoScrollPhase, False,
        )  # fmt: skip
        QApplication.sendEvent(port, event)
