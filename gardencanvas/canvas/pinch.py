"""How far two fingers on a touch pad or screen have zoomed."""

from PySide6.QtCore import QEvent, QPointF, Qt
from PySide6.QtGui import QNativeGestureEvent
from PySide6.QtWidgets import QGestureEvent, QPinchGesture


def zoom_of(event: QEvent) -> tuple[float, QPointF] | None:
    """The factor of a pinch and the place it is about (global pixels); None for other events."""
    if isinstance(event, QNativeGestureEvent):
        if event.gestureType() == Qt.NativeGestureType.ZoomNativeGesture:
            return 1.0 + event.value(), event.globalPosition()
        return None
    if isinstance(event, QGestureEvent):
        pinch = event.gesture(Qt.GestureType.PinchGesture)
        if isinstance(pinch, QPinchGesture):
            return pinch.scaleFactor(), pinch.hotSpot()
    return None
