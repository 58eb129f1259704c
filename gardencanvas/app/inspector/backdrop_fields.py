"""The background picture in the inspector: dimmed how much, shown, locked, how wide and how turned."""

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, QTimer
from PySide6.QtWidgets import (
    QCheckBox,
    QFormLayout,
    QGridLayout,
    QPushButton,
    QSlider,
    QVBoxLayout,
    QWidget,
)

from gardencanvas.app.inspector.fields import AngleField, LengthField
from gardencanvas.app.labels import ElidedLabel, PlainLabel
from gardencanvas.garden import laying_under
from gardencanvas.garden.backdrop import COARSEST_M, FINEST_M, MOST_DIMMED, Backdrop
from gardencanvas.words.plain import Measure, percent

if TYPE_CHECKING:
    from gardencanvas.app.background.laying import Background

_PAUSE_MS = 500  # keys on the slider become one undo step when they pause


class BackdropFields(QWidget):
    """Shown on the garden's page while there is a picture under the plan."""

    def __init__(self, background: "Background", parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._do = background
        self._backdrop: Backdrop | None = None
        self._units = ""
        self._width: LengthField | None = None
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 8, 0, 0)
        column.addWidget(PlainLabel(self.tr("Background picture"), "heading"))
        self.name = ElidedLabel(role="quiet")
        column.addWidget(self.name)
        self._form = QFormLayout()
        column.addLayout(self._form)
        self.dimmed = QSlider(Qt.Orientation.Horizontal)
        self.dimmed.setRange(0, round(100 * MOST_DIMMED))
        self.dimmed.setPageStep(10)
        self.dimmed.setAccessibleName(self.tr("How much the background picture is dimmed, per cent"))
        self._form.addRow(self.tr("Dimmed"), self.dimmed)
        self.angle = AngleField(self.tr("Turn of the background picture"))
        self.angle.committed.connect(self._turned)
        self._form.addRow(self.tr("Turned"), self.angle)
        self.shown = QCheckBox(self.tr("Shown"))
        self.locked = QCheckBox(self.tr("Locked"))
        self.shown.clicked.connect(lambda on: self._do.show(on=on))
        self.locked.clicked.connect(lambda on: self._do.lock(on=on))
        self._buttons(column)
        self._pause = QTimer(self)
        self._pause.setSingleShot(True)
        self._pause.setInterval(_PAUSE_MS)
        self._pause.timeout.connect(self._dim)
        self.dimmed.valueChanged.connect(self._try_dim)
        self.dimmed.sliderReleased.connect(self._dim)

    def _buttons(self, column: QVBoxLayout) -> None:
        grid = QGridLayout()
        grid.setContentsMargins(0, 0, 0, 0)
        grid.addWidget(self.shown, 0, 0)
        grid.addWidget(self.locked, 0, 1)
        self.scale = QPushButton(self.tr("Scale by two points"))
        self.move_ = QPushButton(self.tr("Move and turn"))
        other = QPushButton(self.tr("Another picture…"))
        remove = QPushButton(self.tr("Remove"))
        self.scale.clicked.connect(lambda: self._do.work("backdrop scale"))
        self.move_.clicked.connect(lambda: self._do.work("backdrop"))
        other.clicked.connect(self._do.choose)
        remove.clicked.connect(self._do.remove)
        for row, button in enumerate((self.scale, self.move_, other, remove), 1):
            grid.addWidget(button, row, 0, 1, 2)  # German words are longer
        column.addLayout(grid)

    def show_backdrop(self, backdrop: Backdrop | None, measure: Measure) -> None:
        """Show this picture's fields; nothing where there is none."""
        self._backdrop = backdrop
        self.setVisible(backdrop is not None)
        if backdrop is None:
            return
        if self._units != measure.units:
            self._make_width(measure)
        wide, high = backdrop.size_m
        picture = backdrop.picture
        self.name.setText(
            self.tr("{0} · {1} × {2} pixels").format(backdrop.name, picture.width_px, picture.height_px)
        )
        self.dimmed.blockSignals(True)
        if not (self.dimmed.isSliderDown() or self._pause.isActive()):
            self.dimmed.setValue(round(100 * backdrop.dimmed))
        self.dimmed.blockSignals(False)
        self.dimmed.setToolTip(percent(backdrop.dimmed))
        self.angle.show_angle(backdrop.angle_deg if backdrop.angle_deg <= 180 else backdrop.angle_deg - 360)
        if self._width is not None:
            self._width.show_metres(wide)
            self._width.setToolTip(self.tr("The whole picture: {0}").format(measure.sides(wide, high)))
        self.shown.setChecked(backdrop.shown)
        self.locked.setChecked(backdrop.locked)
        why = self._do.why_fixed()
        for fixed in (self.angle, self._width, self.scale, self.move_):
            if fixed is not None:
                fixed.setEnabled(not why)
                if fixed is not self._width or why:
                    fixed.setToolTip(why)

    def _make_width(self, measure: Measure) -> None:
        if self._width is not None:
            self._form.removeRow(self._width)
        name = self.tr("Width of the background picture on the ground")
        self._width = LengthField(name, measure.units, 0.01, 2000.0)
        self._width.committed.connect(self._widened)
        self._form.insertRow(1, self.tr("Width"), self._width)
        self._units = measure.units

    def _widened(self, metres: float) -> None:
        if self._backdrop is not None:
            scale = min(max(metres / self._backdrop.picture.width_px, FINEST_M), COARSEST_M)
            self._do.place(self.tr("Scale the background picture"), metres_per_pixel=scale)

    def _turned(self, degrees: float) -> None:
        self._do.place(self.tr("Turn the background picture"), angle_deg=degrees % 360)

    def _try_dim(self) -> None:
        """Show it dimmed so while the slider moves; keys become a step when they pause."""
        session = self._do.session
        if session.garden.backdrop is None:
            return
        session.preview(laying_under.changed(session.garden, dimmed=self.dimmed.value() / 100))
        if not self.dimmed.isSliderDown():
            self._pause.start()

    def _dim(self) -> None:
        self._pause.stop()
        if self._do.session.garden.backdrop is not None:
            self._do.change(self.tr("Dim the background picture"), dimmed=self.dimmed.value() / 100)
