"""Plants as small ready pictures: drawn once for each size, stamped thousands of times.

A sheet holds the variants of one symbol side by side in a single pixmap, so that a planting of any size
is stamped with one call.
"""

from collections import OrderedDict
from dataclasses import dataclass
from math import ceil
from time import perf_counter
from zlib import crc32

import numpy as np
from numpy.typing import NDArray
from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import QColor, QImage, QPainter, QPen, QPixmap

from gardencanvas.canvas.palette import Tint
from gardencanvas.canvas.symbols.draw import detail_for, draw_plant
from gardencanvas.crops.model import Habit

LARGEST = 300  # device pixels of radius; beyond it the stamp is stretched
_BUDGET = 96_000_000  # bytes of pixmaps kept
FRAME_S = 0.003  # of a frame's 16.7 ms
_TURNED_PX, _OWN = 11.0, 2  # larger plants: two are drawn, the rest are these two turned
_SCALES = (1.0, 0.95, 1.0, 0.92, 0.98, 0.94)  # plants of one row differ a little in size


@dataclass(frozen=True, slots=True)
class Sheet:
    """Variants of a symbol at one size: ``count`` squares of ``side`` device pixels in a row."""

    pixmap: QPixmap
    side: int
    count: int
    radius_px: float


def bucket(radius_px: float) -> float:
    """The size a stamp is made at: whole half-pixels when small, then steps of about 6 %."""
    if radius_px <= 10:
        return max(1.0, round(radius_px * 2) / 2)
    step = 1.06
    power = round(np.log(radius_px / 10) / np.log(step))
    return float(min(10 * step**power, LARGEST))


def variants(radius_px: float) -> int:
    """How many different plants a sheet shows; fewer when each is large."""
    if radius_px < 1.5:
        return 1
    return 6 if radius_px < 40 else 4 if radius_px < 110 else 2


class Stamps:
    """The sheets made so far, least recently used dropped first.

    A frame has only so much time to draw new sheets; when it is used up, the sheet of another size stands in
    (to be stretched) and ``owed`` says that the frame should be painted again.
    """

    def __init__(self, budget: int = _BUDGET) -> None:
        self._sheets: OrderedDict[tuple[object, ...], Sheet] = OrderedDict()
        self._sizes: dict[tuple[object, ...], set[float]] = {}
        self._budget = budget
        self._bytes = 0
        self._until = float("inf")
        self.owed = False

    def begin_frame(self, seconds: float = FRAME_S) -> None:
        """Draw new sheets for so long at most, from now on."""
        self._until = perf_counter() + seconds
        self.owed = False

    def sheet(self, habit: Habit, tint: Tint, radius_px: float, *, ripe: bool = False) -> Sheet:
        """The sheet of the size bucket of ``radius_px`` (device pixels), or one that stands in for it."""
        size = bucket(radius_px)
        kind = (habit, tint, ripe)
        known = self._get((*kind, size))
        if known is not None:
            return known
        if perf_counter() > self._until:
            near = [s for s in self._sizes.get(kind, ()) if 0.5 <= s / size <= 2.5]
            if near:
                self.owed = True
                return self._sheets[(*kind, min(near, key=lambda s: abs(np.log(s / size))))]
        self._sizes.setdefault(kind, set()).add(size)
        return self._keep((*kind, size), _drawn(habit, tint, size, ripe))

    def dot(self, colour: str, radius_px: float) -> Sheet:
        """A disc: where a plant will stand."""
        size = bucket(radius_px)
        return self._get(("dot", colour, size)) or self._keep(("dot", colour, size), _dot(colour, size))

    def dash(self, colour: str, half_px: float) -> Sheet:
        """A short level line: where a plant has stood."""
        size = bucket(half_px)
        return self._get(("dash", colour, size)) or self._keep(("dash", colour, size), _dash(colour, size))

    def _get(self, key: tuple[object, ...]) -> Sheet | None:
        sheet = self._sheets.get(key)
        if sheet is not None:
            self._sheets.move_to_end(key)
        return sheet

    def _keep(self, key: tuple[object, ...], sheet: Sheet) -> Sheet:
        self._sheets[key] = sheet
        self._bytes += _weight(sheet)
        while self._bytes > self._budget and len(self._sheets) > 1:
            gone, dropped = self._sheets.popitem(last=False)
            self._bytes -= _weight(dropped)
            self._sizes.get(gone[:-1], set()).discard(gone[-1])
        return sheet

    def clear(self) -> None:
        """Forget all of them."""
        self._sheets.clear()
        self._sizes.clear()
        self._bytes = 0


def _blank(side: int, count: int) -> QImage:
    image = QImage(side * count, side, QImage.Format.Format_ARGB32_Premultiplied)
    image.fill(Qt.GlobalColor.transparent)
    return image


def _dot(colour: str, radius: float) -> Sheet:
    side = ceil(radius) * 2 + 4
    image = _blank(side, 1)
    painter = QPainter(image)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.setPen(Qt.PenStyle.NoPen)
    tone = QColor(colour)
    tone.setAlpha(170)
    painter.setBrush(tone)
    painter.drawEllipse(QPointF(side / 2, side / 2), radius, radius)
    painter.end()
    return Sheet(QPixmap.fromImage(image), side, 1, radius)


def _dash(colour: str, half: float) -> Sheet:
    side = ceil(half) * 2 + 4
    image = _blank(side, 1)
    painter = QPainter(image)
    tone = QColor(colour)
    tone.setAlpha(110)
    painter.setPen(QPen(tone, max(1.0, half * 0.4)))
    painter.drawLine(QPointF(side / 2 - half, side / 2), QPointF(side / 2 + half, side / 2))
    painter.end()
    return Sheet(QPixmap.fromImage(image), side, 1, half)


def _weight(sheet: Sheet) -> int:
    return 4 * sheet.side * sheet.side * sheet.count


def _drawn(habit: Habit, tint: Tint, radius: float, ripe: bool) -> Sheet:
    side = ceil(radius * 2 * 1.12) + 2
    side += side % 2
    count = variants(radius)
    image = _blank(side, count)
    painter = QPainter(image)
    try:
        painter.setRenderHint(QPainter.RenderHint.SmoothPixmapTransform)
        first: list[QImage] = []
        for i in range(count):
            if radius >= _TURNED_PX and i >= _OWN:
                _turn(painter, first[i % _OWN], side, i)
                continue
            one = _single(habit, tint, radius, ripe, side, i)
            first.append(one)
            painter.drawImage(side * i, 0, one)
    finally:
        painter.end()
    return Sheet(QPixmap.fromImage(_lifted(image, radius)), side, count, radius)


def _single(habit: Habit, tint: Tint, radius: float, ripe: bool, side: int, number: int) -> QImage:
    """One variant by itself."""
    image = _blank(side, 1)
    painter = QPainter(image)
    try:
        centre, size = QPointF(side / 2, side / 2), radius * _SCALES[number % len(_SCALES)]
        if radius < 1.5:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(QColor(tint.leaf))
            painter.drawEllipse(centre, size, size)
        else:
            seed = crc32(habit.encode()) + number
            draw_plant(painter, habit, tint, centre, size, seed=seed, detail=detail_for(radius), ripe=ripe)
    finally:
        painter.end()
    return image


def _turn(painter: QPainter, one: QImage, side: int, number: int) -> None:
    """Draw a variant as an earlier one, turned: far quicker than drawing another plant."""
    painter.save()
    painter.translate(side * (number + 0.5), side / 2)
    painter.rotate(67.0 * number)
    shrink = _SCALES[number % len(_SCALES)]
    painter.scale(shrink, shrink)
    painter.drawImage(QPointF(-side / 2, -side / 2), one)
    painter.restore()


def _lifted(image: QImage, radius: float) -> QImage:
    """The picture over its own soft shadow; light falls from the upper left."""
    if radius < 3:
        return image
    shade = image.copy()
    painter = QPainter(shade)
    painter.setCompositionMode(QPainter.CompositionMode.CompositionMode_SourceIn)
    painter.fillRect(shade.rect(), QColor(38, 32, 18, 255))
    painter.end()
    result = QImage(image.size(), QImage.Format.Format_ARGB32_Premultiplied)
    result.fill(Qt.GlobalColor.transparent)
    painter = QPainter(result)
    try:
        reach = max(1.0, radius * 0.05)
        for share, opacity in ((2.0, 0.09), (1.3, 0.12), (0.7, 0.14)):
            painter.setOpacity(opacity)
            painter.drawImage(QPointF(reach * share * 0.7, reach * share), shade)
        painter.setOpacity(1.0)
        painter.drawImage(0, 0, image)
    finally:
        painter.end()
    return result


def station_variants(count: int, seed: int) -> NDArray[np.int64]:
    """Which variant each station shows: the same for the same planting, no two neighbours alike in a row."""
    draw = np.random.default_rng(seed)
    steps = draw.integers(1, 6, size=count)
    return np.cumsum(steps) % 60
