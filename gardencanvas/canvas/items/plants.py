"""All plants of the plan in one layer: stamped kind by kind, so that twenty thousand take a few calls.

The items of the plantings keep place, outline and state; this layer draws their plants, low ones first.
"""

from collections.abc import Iterable
from dataclasses import dataclass
from typing import cast

import numpy as np
import shiboken6
from numpy.typing import NDArray
from PySide6.QtCore import QRectF, QTimer
from PySide6.QtGui import QPainter, QTransform
from PySide6.QtWidgets import QGraphicsItem, QStyleOptionGraphicsItem, QWidget

from gardencanvas.canvas.items import order
from gardencanvas.canvas.items.planting import PlantingItem
from gardencanvas.canvas.look import CM, Look
from gardencanvas.canvas.symbols.stamps import FRAME_S, Sheet

Floats = NDArray[np.float64]

_X, _Y, _LEFT, _OPACITY = 0, 1, 2, 9  # columns of a fragment; between them: top, size, scale, turn
# A stamp may be so much smaller or larger than asked without being stretched, which is slow: while zooming, a
# stamp of the step before stands in for some frames.
_NEAR = (0.72, 1.4)


@dataclass(frozen=True, slots=True)
class Stand:
    """Plants that look alike on the date: one call draws them all."""

    like: PlantingItem  # any of their plantings
    xy: Floats  # (n, 2) centimetres
    variants: NDArray[np.int64]
    fragments: Floats  # (n, 10), filled anew for each painting
    boxes: Floats  # (plantings, 4): left, top, right, bottom of each with its leaves, centimetres
    ends: NDArray[np.int64]  # (plantings + 1,): where each one's rows begin and end

    def within(self, box: QRectF, margin: float) -> NDArray[np.int64] | slice:
        """Rows of the plantings that may show in a box."""
        left, top, right, bottom = self.boxes.T
        near = (left - margin <= box.right()) & (right + margin >= box.left())
        near &= (top - margin <= box.bottom()) & (bottom + margin >= box.top())
        if near.all():
            return slice(None)
        rows = [np.arange(self.ends[i], self.ends[i + 1]) for i in np.flatnonzero(near)]
        return np.concatenate(rows) if rows else np.empty(0, dtype=np.int64)


def stands_of(parts: Iterable[PlantingItem]) -> list[Stand]:
    """Plantings grouped by look, low ones first."""
    groups: dict[tuple[object, ...], list[PlantingItem]] = {}
    for part in parts:
        groups.setdefault(part.kind_key(), []).append(part)
    stands = []
    for group in sorted(groups.values(), key=lambda g: g[0].state.height_m):
        drawn = [part.drawn() for part in group]
        xy = np.concatenate([places for places, _ in drawn])
        fragments = np.zeros((len(xy), 10))
        fragments[:, _OPACITY] = 1.0
        rests = [part.rest for part in group]
        stands.append(
            Stand(
                like=group[0],
                xy=xy,
                variants=np.concatenate([variants for _, variants in drawn]),
                fragments=fragments,
                boxes=np.array([[r.left(), r.top(), r.right(), r.bottom()] for r in rests]),
                ends=np.cumsum([0, *(len(places) for places, _ in drawn)]),
            )
        )
    return stands


class PlantsItem(QGraphicsItem):
    """The layer."""

    def __init__(self, look: Look, z: float = order.PLANTING) -> None:
        super().__init__()
        self.look = look
        self._stands: list[Stand] | None = []
        self._parts: list[PlantingItem] = []
        self._box = QRectF()
        self.setZValue(z)
        self.setFlag(QGraphicsItem.GraphicsItemFlag.ItemUsesExtendedStyleOption)

    def put(self, parts: list[PlantingItem], changed: QRectF) -> None:
        """Draw these plantings from now on; ``changed`` is where anything differs."""
        box = QRectF()
        for part in parts:
            box = box.united(part.rest)
        if box != self._box:
            self.prepareGeometryChange()
            self._box = box
        self._parts = parts
        self._stands = None
        self.update(changed.adjusted(-3, -3, 3, 3))

    def boundingRect(self) -> QRectF:
        return self._box.adjusted(-4, -4, 4, 4)

    def paint(
        self, painter: QPainter, option: QStyleOptionGraphicsItem, widget: QWidget | None = None
    ) -> None:
        if not self.look.stamped:
            return
        if self._stands is None:
            self._stands = stands_of(self._parts)
        self.look.stamps.begin_frame(float("inf") if self.look.vector else FRAME_S)
        device = painter.deviceTransform()
        ratio = device.m11()
        shown = option.exposedRect
        world = painter.worldTransform()
        painter.setWorldTransform(device_pixels(painter))
        for stand in self._stands:
            sheet = stand.like.sheet(ratio)
            radius = stand.like.state.radius_m * CM * ratio
            stretch = 1.0
            if stand.like.state.stage == "standing" and not _NEAR[0] < radius / sheet.radius_px < _NEAR[1]:
                stretch = radius / sheet.radius_px
            self._stamp(painter, stand, sheet, device, shown, stretch)
        painter.setWorldTransform(world)
        scene = self.scene()
        if self.look.stamps.owed and scene is not None:
            QTimer.singleShot(0, scene, self.update)

    def _stamp(
        self, painter: QPainter, stand: Stand, sheet: Sheet, device: QTransform, shown: QRectF, stretch: float
    ) -> None:
        """Stamp the plants of a stand that may show, in device pixels."""
        ratio = device.m11()
        half = (sheet.side * stretch / 2 + 1) / ratio
        some = stand.within(shown, half)
        xy, rows = stand.xy[some], stand.fragments[some]
        inside = (xy[:, 0] > shown.left() - half) & (xy[:, 0] < shown.right() + half)
        inside &= (xy[:, 1] > shown.top() - half) & (xy[:, 1] < shown.bottom() + half)
        variants = stand.variants[some]
        if not inside.all():
            xy, rows, variants = xy[inside], rows[inside], variants[inside]
        if len(rows) == 0:
            return
        np.multiply(xy, ratio, out=rows[:, :2])
        rows[:, _X] += device.dx()
        rows[:, _Y] += device.dy()
        rows[:, _LEFT] = variants % sheet.count * sheet.side
        if stretch == 1.0:
            np.rint(rows[:, :2], out=rows[:, :2])  # whole pixels: the quick way to copy
        rows[:, 4:6] = sheet.side
        rows[:, 6:8] = stretch
        painter.setRenderHint(QPainter.RenderHint.SmoothPixmapTransform, stretch != 1.0)
        first = cast(
            QPainter.PixmapFragment, shiboken6.wrapInstance(rows.ctypes.data, QPainter.PixmapFragment)
        )
        painter.drawPixmapFragments(first, len(rows), sheet.pixmap)


def device_pixels(painter: QPainter) -> QTransform:
    """The world transform under which the painter's units are the device's own pixels."""
    world, device = painter.worldTransform(), painter.deviceTransform()
    rest = world.inverted()[0] * device
    return rest.inverted()[0]
