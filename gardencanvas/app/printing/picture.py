"""Pictures of the plan, the season ribbon or both on a date, as PNG or SVG."""

from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from datetime import date
from pathlib import Path
from typing import Literal

from PySide6.QtCore import QBuffer, QIODevice, QPoint, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QImage, QImageWriter, QPainter, QRegion
from PySide6.QtSvg import QSvgGenerator
from PySide6.QtWidgets import QApplication, QWidget

from gardencanvas.app.ribbon.view import RibbonView
from gardencanvas.app.session import Session
from gardencanvas.canvas.palette import palette
from gardencanvas.canvas.picture import picture_size, render_plan
from gardencanvas.files import CannotWrite, write_whole
from gardencanvas.garden.garden import Garden
from gardencanvas.words.language import say
from gardencanvas.words.plain import Measure

Shown = Literal["plan", "ribbon", "both"]
NOMINAL_DPI = 96.0
MOST_PIXELS = 400_000_000  # 1.6 GB as it is drawn: more is a mistake
_INCH_M = 0.0254
_GAP, _RIBBON_WIDE = 12, 1200


class TooLarge(CannotWrite):
    """A picture that would take more memory than a picture is worth."""


@dataclass(frozen=True, slots=True)
class Picture:
    """What is drawn, and how finely."""

    shown: Shown = "plan"
    dpi: int = 150
    dark: bool = False
    backdrop: bool = False  # with the background picture


@contextmanager
def session_for(garden: Garden, layout_id: str, on: date) -> Iterator[Session]:
    """A session of a garden on a day where there is no window, and the application that drawing needs."""
    app = QApplication.instance() or QApplication(["gardencanvas", "-platform", "offscreen"])
    session = Session(garden, parent=app)
    session.show_layout(layout_id)
    session.show_date(on)
    yield session
    session.deleteLater()


def save_picture(session: Session, path: Path, picture: Picture, measure: Measure) -> None:
    """Write a picture on the date cursor as PNG or, where the name ends so, as SVG.

    Raises
    ------
    CannotWrite
        If it cannot be written, or is too large; what was on disk before is still there.
    """
    plan = picture_size(session.garden, session.layout_id) if picture.shown != "ribbon" else QSize(0, 0)
    ribbon = _ribbon(session, picture, max(plan.width(), _RIBBON_WIDE)) if picture.shown != "plan" else None
    size = _whole(plan, ribbon)
    device = QBuffer()
    device.open(QIODevice.OpenModeFlag.WriteOnly)
    if path.suffix.lower() == ".svg":
        file = QSvgGenerator()
        file.setOutputDevice(device)
        file.setResolution(round(NOMINAL_DPI))  # else letters given in points come out too small
        file.setSize(size)
        file.setViewBox(QRectF(0, 0, size.width(), size.height()))
        file.setTitle(session.garden.name)
        painter = QPainter(file)
        try:
            _draw(painter, session, picture, plan, ribbon, measure, size, 1.0)
        finally:
            painter.end()
    else:
        _png(device, session, picture, plan, ribbon, measure, size)
    write_whole(path, bytes(device.data().data()))


def _whole(plan: QSize, ribbon: QWidget | None) -> QSize:
    below = ribbon.size() if ribbon is not None else QSize(0, 0)
    gap = _GAP if not plan.isEmpty() and ribbon is not None else 0
    return QSize(max(plan.width(), below.width()), plan.height() + gap + below.height())


def _ribbon(session: Session, picture: Picture, wide: int) -> RibbonView:
    """A ribbon of its own, as high as all its rows."""
    ribbon = RibbonView(session)
    ribbon.setAttribute(Qt.WidgetAttribute.WA_DontShowOnScreen)
    ribbon.set_colours(palette(picture.dark))
    ribbon.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
    ribbon.resize(wide, 400)
    ribbon.rebuild()
    ribbon.resize(wide, ribbon.whole_height())
    ribbon.rebuild()
    return ribbon


def _png(
    device: QBuffer, session: Session, picture: Picture, plan: QSize, ribbon: QWidget | None,
    measure: Measure, size: QSize,
) -> None:  # fmt: skip
    pixel = picture.dpi / NOMINAL_DPI
    if size.width() * size.height() * pixel**2 > MOST_PIXELS:
        raise TooLarge(say("At {dpi} dpi the picture would be too large; choose fewer.", dpi=picture.dpi))
    image = QImage(size * pixel, QImage.Format.Format_RGB32)
    image.setDotsPerMeterX(round(picture.dpi / _INCH_M))
    image.setDotsPerMeterY(round(picture.dpi / _INCH_M))
    painter = QPainter(image)
    try:
        _draw(painter, session, picture, plan, ribbon, measure, size, pixel)
    finally:
        painter.end()
    QImageWriter(device, b"png").write(image)


def _draw(
    painter: QPainter, session: Session, picture: Picture, plan: QSize, ribbon: QWidget | None,
    measure: Measure, size: QSize, pixel: float,
) -> None:  # fmt: skip
    top = 0.0
    painter.fillRect(
        QRectF(0, 0, size.width() * pixel, size.height() * pixel), QColor(palette(picture.dark).paper)
    )
    if picture.shown != "ribbon":
        rect = QRectF(0, 0, size.width() * pixel, plan.height() * pixel)
        render_plan(
            painter, rect, session.garden, session.layout_id, session.on, session.report,
            crops=session.catalogue, dark=picture.dark, stamped=pixel != 1.0, pixel=pixel, measure=measure,
            backdrop=picture.backdrop,
        )  # fmt: skip
        top = (plan.height() + _GAP) * pixel
    if isinstance(ribbon, RibbonView):
        painter.save()
        painter.translate(0.0, top)
        painter.scale(pixel, pixel)
        ribbon.viewport().render(painter, QPoint(), QRegion(), QWidget.RenderFlag.DrawChildren)
        painter.restore()
