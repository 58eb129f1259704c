"""How fast the plan is drawn, against stamping as many ready pictures in a plain loop.

Goal on two slow cores: any frame under 16.7 ms with 20,000 plants, zoom steps and date steps included. Run
with ``pytest tests/bench/test_canvas_bench.py --benchmark-enable -s`` to see the ratios to the floor.
"""

from datetime import date, timedelta
from time import perf_counter

import numpy as np
import pytest
from PySide6.QtCore import QPoint, QPointF, Qt
from PySide6.QtGui import QColor, QImage, QPainter, QPixmap
from PySide6.QtWidgets import QApplication

from gardencanvas.canvas.desk import Desk
from gardencanvas.canvas.tools.move import MoveGesture
from gardencanvas.canvas.tools.tool import Pointer
from gardencanvas.canvas.view import PlanView
from gardencanvas.crops.catalogue import catalogue
from gardencanvas.crops.model import Layer
from gardencanvas.fit.report import FitReport, PlantingFit, Verdict
from gardencanvas.garden.garden import Garden
from gardencanvas.garden.planting import Planting
from tests.bench.large import IN_A_ROW, large_garden

FRAME_S = 0.0167


class StillDesk(Desk):
    """A desk whose report is given: every fourth planting has each verdict, so that all marks are drawn."""

    def __init__(self, garden: Garden) -> None:
        super().__init__()
        self.garden, self.layout_id = garden, "l1"
        self.selection: frozenset[str] = frozenset()
        self.on = date(2027, 6, 25)
        fits = {p.id: self._fit(p, Verdict(i % 4)) for i, p in enumerate(self.layout.plantings)}
        self._report = FitReport("l1", self.layout.season, fits, ())

    def _fit(self, planting: Planting, verdict: Verdict) -> PlantingFit:
        marks = np.full(planting.pattern.count, int(verdict), np.uint8)
        first, last = date(2027, 7, 1), date(2027, 8, 1)
        who = (planting.id, planting.crop, None, planting.plants)
        return PlantingFit(*who, verdict, Layer.LOW, 0.3, first, last, 1.0, None, (), marks)

    catalogue = property(lambda self: catalogue())
    report = property(lambda self: self._report)

    def preview(self, garden):
        return self._report if garden is not None else None

    def select(self, ids):
        self.selection = frozenset(ids)
        self.selection_changed.emit(self.selection)


@pytest.fixture(params=[5_000, 20_000])
def view(request, qtbot):
    shown = PlanView(StillDesk(large_garden(request.param)))
    qtbot.addWidget(shown)
    shown.resize(1242, 842)
    shown.show()
    qtbot.waitExposed(shown)
    shown.fit()
    settle(shown)
    return shown


def settle(view: PlanView) -> None:
    """Let all stamps of this zoom be drawn."""
    for _ in range(60):
        QApplication.processEvents()
        if not view.look.stamps.owed:
            return


def floor_s(view: PlanView) -> float:
    """Seconds to stamp as many pictures of the same size in a loop of drawPixmap."""
    shown = view.mapToScene(view.viewport().rect()).boundingRect()
    plants = [p for p in view.plan.parts.values() if hasattr(p, "xy")]
    xy = np.concatenate([p.xy for p in plants])
    inside = (xy[:, 0] > shown.left()) & (xy[:, 0] < shown.right())
    inside &= (xy[:, 1] > shown.top()) & (xy[:, 1] < shown.bottom())
    places = np.rint((xy[inside] - [shown.left(), shown.top()]) * view.look.scale).astype(int).tolist()
    side = max(2, round(np.mean([p.sheet(view.look.scale).side for p in plants])))
    stamp = QPixmap(side, side)
    stamp.fill(QColor(80, 140, 70, 200))
    image = QImage(view.viewport().size(), QImage.Format.Format_ARGB32_Premultiplied)
    best = 1.0
    for _ in range(5):
        painter = QPainter(image)
        begin = perf_counter()
        for x, y in places:
            painter.drawPixmap(x, y, stamp)
        best = min(best, perf_counter() - begin)
        painter.end()
    return best


def within(benchmark, view: PlanView, what: str, goal_s: float = FRAME_S) -> None:
    """Print the quickest run, its ratio to the floor and whether it keeps its goal."""
    if benchmark.stats is None:
        return
    took, floor = benchmark.stats.stats.min, floor_s(view)
    plants = len(view.plan.marks) * IN_A_ROW
    benchmark.extra_info.update(floor_ms=floor * 1e3, ratio=took / floor)
    goal = "kept" if took < goal_s else "missed"
    print(
        f"\n{what}, {plants:,} plants: {took * 1e3:.1f} ms, floor {floor * 1e3:.1f} ms, ×{took / floor:.2f}, "
        f"goal of {goal_s * 1e3:.1f} ms {goal}"
    )


def paint(view: PlanView) -> QImage:
    """One full repaint."""
    image = QImage(view.viewport().size(), QImage.Format.Format_ARGB32_Premultiplied)
    view.viewport().render(image)
    return image


def test_full_repaint(benchmark, view):
    image = benchmark(paint, view)
    assert image.pixelColor(image.width() // 2, image.height() // 2) != QColor(view.look.colours.paper)
    within(benchmark, view, "full repaint, the whole garden")


@pytest.mark.parametrize("closer", [2, 4, 8])
def test_full_repaint_closer(benchmark, view, closer):
    view.zoom_about(closer, QPointF(view.viewport().rect().center()))
    settle(view)
    benchmark(paint, view)
    within(benchmark, view, f"full repaint, {closer} times closer")


def test_zoom_step(benchmark, view):
    """One notch of the wheel and the frame after it, on sizes not drawn before."""
    view.zoom_about(1.2**-6, QPointF(600, 400))
    settle(view)

    def step():
        view.zoom_about(1.2, QPointF(600, 400))
        QApplication.processEvents()

    benchmark.pedantic(step, rounds=18)
    within(benchmark, view, "zoom step")


def test_date_step(benchmark, view):
    """The date cursor goes on by a day: every plant changes its size."""
    days = iter(range(10_000))

    def step():
        view.plan.show_date(date(2027, 5, 15) + timedelta(days=next(days) % 60))
        QApplication.processEvents()

    benchmark.pedantic(step, rounds=40)
    within(benchmark, view, "date step")


def test_drag_frame(benchmark, view):
    """Two rows of a hundred plants dragged: the edit, the items and the next frame, without the engine."""
    view.desk.select({"p-20", "p-21"})
    gesture = MoveGesture(view, copy=False)
    begin = view.plan.parts["p-20"].outline_box.center()
    gesture.begin(Pointer(begin, QPoint()))
    steps = iter(range(10_000))

    def step():
        by = QPointF(5.0 * (next(steps) % 40), 10.0)
        gesture.move(Pointer(begin + by, QPoint(), Qt.KeyboardModifier.NoModifier))
        QApplication.processEvents()

    benchmark.pedantic(step, rounds=60, warmup_rounds=3)
    within(benchmark, view, "drag frame")
    gesture.cancel()
