"""How fast the largest background picture is drawn, against stamping a picture as large as the window.

Run with ``pytest tests/bench/test_backdrop_bench.py --benchmark-enable -s`` to see the ratios to the floor.
"""

import statistics
from datetime import date
from time import perf_counter

import pytest
from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QColor, QImage, QPainter, QPixmap

from gardencanvas.app.background.reading import written
from gardencanvas.app.session import Session
from gardencanvas.canvas.view import PlanView
from gardencanvas.garden import laying_under
from gardencanvas.garden.backdrop import Backdrop
from gardencanvas.garden.picture import MAX_SIDE_PX
from tests.garden.makers import garden


@pytest.fixture(scope="module")
def survey(qapp):
    """A picture of the largest size with something everywhere on it."""
    sheet = QImage(MAX_SIDE_PX, MAX_SIDE_PX, QImage.Format.Format_RGB32)
    painter = QPainter(sheet)
    for n in range(0, MAX_SIDE_PX, 64):
        painter.fillRect(n, 0, 64, MAX_SIDE_PX, QColor.fromHsv(n * 359 // MAX_SIDE_PX, 90, 220))
    painter.end()
    return written(sheet)


@pytest.fixture(params=[0.0, 7.0], ids=["level", "turned"])
def view(request, qtbot, survey):
    under = Backdrop(
        name="survey", picture=survey, centre=(10.0, 10.0), metres_per_pixel=0.01, angle_deg=request.param
    )
    session = Session(garden(backdrop=under))
    session.show_date(date(2027, 7, 1))
    shown = PlanView(session)
    qtbot.addWidget(shown)
    shown.resize(1400, 900)
    shown.show()
    qtbot.waitExposed(shown)
    shown.show_box(QRectF(-500, -500, 3000, 3000))
    shown.viewport().grab()
    return shown


def _frame(view):
    begin = perf_counter()
    view.viewport().repaint()
    return perf_counter() - begin


def _floor(view):
    """A picture as large as the window, stamped as it is."""
    size = view.viewport().size()
    canvas, stamp = QPixmap(size), QPixmap(size)
    stamp.fill(QColor("red"))
    begin = perf_counter()
    painter = QPainter(canvas)
    painter.setOpacity(0.65)
    painter.drawPixmap(QPointF(0, 0), stamp)
    painter.end()
    return perf_counter() - begin


def test_a_frame_with_the_largest_picture(benchmark, view):
    benchmark.pedantic(lambda: _frame(view), rounds=30 if benchmark.enabled else 1)
    if benchmark.stats is None:
        return

    def zoomed():
        view.zoom_in()
        first = _frame(view)
        view.zoom_out()
        return max(first, _frame(view))

    def panned():
        view.pan_by(25, 10)
        return _frame(view)

    def dimmed(n=[0]):  # noqa: B006 - counts the calls
        n[0] += 1
        session = view.desk
        session.propose(laying_under.changed(session.garden, dimmed=n[0] % 9 / 10), "Dim")
        return _frame(view)

    floor = statistics.median(_floor(view) for _ in range(30))
    still = statistics.median(_frame(view) for _ in range(30))
    told = {"still": still}
    told |= {f.__name__: statistics.median(f() for _ in range(20)) for f in (zoomed, panned, dimmed)}
    benchmark.extra_info["ratios"] = {name: round(took / floor, 1) for name, took in told.items()}
    print(
        f"\nstamping a window {floor * 1e3:.2f} ms; "
        + ", ".join(f"{name} {took * 1e3:.1f} ms (×{took / floor:.1f})" for name, took in told.items())
    )
