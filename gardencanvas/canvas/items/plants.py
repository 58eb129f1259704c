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
from gardencanvas.canvas.symbols.stamps import Sheet

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


def stands_of(parts: Iterable[PlantingItem]) -> list[Stand]:
    """Plantings grouped by look, low ones first."""
    groups: dict[tuple[object, ...], list[PlantingItem]] = {}
    for part in parts:
        groups.setdefault(part.kind_key(), []).append(part)
    stands = []
    for group in sorted(groups.values(), key=lambda g: g[0].state.height_m):
        xy = np.concatenate([part.xy for part in group])
        fragments = np.zeros((len(xy), 10))
        fragments[:, _OPACITY] = 1.0
        stands.append(Stand(group[0], xy, np.concatenate([p.variants for p in group]), fragments))
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
        if self.look.vector:
            return
        if self._stands is None:
            self._stands = stands_of(self._parts)
        self.look.stamps.begin_frame()
        device = painter.deviceTransform()
        ratio = device.m11()
        shown = device.mapRect(option.exposedRect)
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
        rows = stand.fragments
        np.multiply(stand.xy, ratio, out=rows[:, :2])
        rows[:, _X] += device.dx()
        rows[:, _Y] += device.dy()
        np.multiply(stand.variants % sheet.count, sheet.side, out=rows[:, _LEFT], casting="unsafe")
        half = sheet.side * stretch / 2 + 1
        x, y = rows[:, _X], rows[:, _Y]
        inside = (x > shown.left() - half) & (x < shown.right() + half)
        inside &= (y > shown.top() - half) & (y < shown.bottom() + half)
        if not inside.all():
            rows = rows[inside]
            if len(rows) == 0:
                return
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
