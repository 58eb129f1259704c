"""The plan as a picture: the same items drawn as shapes, with title, legend, scale bar and north arrow."""

from datetime import date
from pathlib import Path

from PySide6.QtCore import QBuffer, QIODevice, QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFontMetricsF, QGuiApplication, QImage, QImageWriter, QPainter
from PySide6.QtWidgets import QApplication

from gardencanvas.canvas.furniture import draw_legend, draw_north, draw_scale_bar, legend_width
from gardencanvas.canvas.look import Look
from gardencanvas.canvas.scene import PlanScene
from gardencanvas.crops.catalogue import Catalogue, catalogue
from gardencanvas.files import write_whole
from gardencanvas.fit import check
from gardencanvas.fit.report import FitReport
from gardencanvas.garden.garden import Garden
from gardencanvas.words.plain import Measure, day_year

_NOMINAL_DPI = 96.0  # a picture is laid out in units of 1/96 inch, as screens and SVG count
_INCH_M = 0.0254
_LONGEST = 1400.0  # of the plan, in those units
_TITLE, _FOOT, _MARGIN = 58.0, 62.0, 26.0
_FINE_PLANTS = 1500
_ABOVE_CM = 26.0  # room for the names of beds along the upper edge


def render_plan(
    painter: QPainter,
    rect: QRectF,
    garden: Garden,
    layout_id: str,
    on: date,
    report: FitReport,
    *,
    crops: Catalogue | None = None,
    dark: bool = False,
    marks: bool = True,
    stamped: bool = False,
    pixel: float = 1.0,
    measure: Measure | None = None,
    backdrop: bool = False,
) -> None:
    """Draw a layout as it stands on a date into a rectangle of the painter's device.

    Parameters
    ----------
    painter
        Without a transform of its own; it is left as it was.
    rect
        In device units.
    stamped
        Stamp plants as pixels, which is far quicker where there are thousands; else draw them as shapes.
    pixel
        Device units in a nominal pixel (1/96 inch): lines and letters are sized by it.
    backdrop
        Draw the background picture, too, as far as it lies behind what is drawn.
    """
    look = _look(garden, layout_id, stamped=stamped, marks=marks, dark=dark, measure=measure)
    look.backdrop = backdrop
    painter.save()
    painter.setViewport(rect.toRect())
    room = QRectF(0, 0, rect.width() / pixel, rect.height() / pixel)
    painter.setWindow(room.toRect())
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.fillRect(room, QColor(look.colours.paper))
    plan = PlanScene(look)
    plan.show_date(on)
    plan.show_garden(garden, layout_id, crops or _crops_of(garden))
    plan.judge(report)
    _draw_plan(painter, plan, room.adjusted(_MARGIN, _TITLE, -_MARGIN, -_FOOT))
    _letter(painter, look, garden, layout_id, on, room)
    _furnish(painter, look, garden, room)
    painter.restore()


def _look(
    garden: Garden, layout_id: str, *, stamped: bool, marks: bool, dark: bool, measure: Measure | None
) -> Look:
    plants = sum(p.pattern.count for p in garden.layout(layout_id).plantings)
    look = Look(vector=True, stamped=stamped, finest=_finest(plants), marks=marks, backdrop=False)
    look.measure = measure or Measure()
    look.use(dark)
    return look


def _draw_plan(painter: QPainter, plan: PlanScene, inner: QRectF) -> None:
    """Draw the plan as large as it fits into a rectangle."""
    box = plan_box(plan)
    plan.trim_shadows(box)
    scale = min(inner.width() / box.width(), inner.height() / box.height())
    plan.rescale(scale)
    shown = QRectF(0, 0, box.width() * scale, box.height() * scale)
    shown.moveCenter(inner.center())
    plan.render(painter, shown, box)


def _furnish(painter: QPainter, look: Look, garden: Garden, room: QRectF) -> None:
    """Scale bar, north arrow and legend along the foot."""
    right = QPointF(room.right() - _MARGIN, room.bottom() - 18)
    width = draw_scale_bar(painter, look, right, look.scale)
    draw_north(painter, look, right - QPointF(width + 34, 4), garden.site.bearing_deg, 11)
    if look.marks and legend_width(look) + width + 140 < room.width():
        draw_legend(painter, look, QPointF(_MARGIN, room.bottom() - 22))


def _finest(plants: int) -> int:
    """How finely plants are drawn as shapes: with thousands of them a file would take minutes."""
    return 2 if plants <= _FINE_PLANTS else 1 if plants <= 3 * _FINE_PLANTS else 0


def plan_box(plan: PlanScene) -> QRectF:
    """The part of the plan that a picture shows, in centimetres."""
    box = plan.extent()
    if box.isEmpty():
        box = box.united(QRectF(0, 0, 400, 300))
    return box.adjusted(-12, -12 - _ABOVE_CM, 12, 12)


def _letter(painter: QPainter, look: Look, garden: Garden, layout_id: str, on: date, room: QRectF) -> None:
    """The title: garden, layout and date."""
    layout = garden.layout(layout_id)
    title, small = look.font(18, bold=True), look.font(12)
    painter.setFont(title)
    painter.setPen(QColor(look.colours.ink))
    wide = room.width() - 2 * _MARGIN
    painter.drawText(QPointF(_MARGIN, 30), look.elided(garden.name, title, wide))
    painter.setFont(small)
    painter.setPen(QColor(look.colours.quiet))
    below = look.elided(f"{layout.name}, {layout.year} · {day_year(on)}", small, wide)
    painter.drawText(QPointF(_MARGIN, 34 + QFontMetricsF(small).height()), below)


def _crops_of(garden: Garden) -> Catalogue:
    return catalogue().with_own(garden.crops, garden.varieties)


def picture_size(garden: Garden, layout_id: str) -> QSize:
    """Size of a picture in nominal pixels: the plan's proportions and what stands round it."""
    plan = PlanScene(Look(backdrop=False))
    plan.show_garden(garden, layout_id, _crops_of(garden))
    box = plan_box(plan)
    scale = min(_LONGEST / max(box.width(), box.height()), 4.0)
    wide = max(box.width() * scale + 2 * _MARGIN, 560.0)
    return QSize(round(wide), round(max(box.height() * scale, 160.0) + _TITLE + _FOOT))


def write_picture(garden: Garden, layout_id: str, path: Path, on: date, dpi: int = 150) -> None:
    """Write the plan on a date as PNG or, where the name ends so, as SVG.

    Raises
    ------
    CannotWrite
        If the file could not be written; what was on disk before is still there.
    """
    app = QGuiApplication.instance() or QApplication(["gardencanvas", "-platform", "offscreen"])
    report = check(garden, layout_id, _crops_of(garden))
    size = picture_size(garden, layout_id)
    device = QBuffer()
    device.open(QIODevice.OpenModeFlag.WriteOnly)
    if path.suffix.lower() == ".svg":
        _write_svg(garden, layout_id, device, on, report, size)
    else:
        _write_png(garden, layout_id, device, on, report, size, dpi)
    write_whole(path, bytes(device.data().data()))
    del app


def _write_png(
    garden: Garden, layout_id: str, device: QBuffer, on: date, report: FitReport, size: QSize, dpi: int
) -> None:
    pixel = dpi / _NOMINAL_DPI
    image = QImage(size * pixel, QImage.Format.Format_RGB32)
    image.fill(Qt.GlobalColor.white)
    image.setDotsPerMeterX(round(dpi / _INCH_M))
    image.setDotsPerMeterY(round(dpi / _INCH_M))
    painter = QPainter(image)
    try:
        render_plan(painter, QRectF(image.rect()), garden, layout_id, on, report, stamped=True, pixel=pixel)
    finally:
        painter.end()
    QImageWriter(device, b"png").write(image)


def _write_svg(
    garden: Garden, layout_id: str, device: QBuffer, on: date, report: FitReport, size: QSize
) -> None:
    from PySide6.QtSvg import QSvgGenerator  # only here: most runs of the program need it not

    file = QSvgGenerator()
    file.setOutputDevice(device)
    file.setSize(size)
    file.setViewBox(QRectF(0, 0, size.width(), size.height()))
    file.setResolution(round(_NOMINAL_DPI))
    file.setTitle(garden.name)
    painter = QPainter(file)
    try:
        render_plan(painter, QRectF(0, 0, size.width(), size.height()), garden, layout_id, on, report)
    finally:
        painter.end()
