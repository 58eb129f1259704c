"""The season panel: the ribbon, and the controls that stand beside its tab. Play shows the garden growing."""

from datetime import date, timedelta
from math import log

from PySide6.QtCore import Qt, QTimer
from PySide6.QtWidgets import QHBoxLayout, QSlider, QToolButton, QVBoxLayout, QWidget

from gardencanvas.app.inspector.fields import DayField
from gardencanvas.app.labels import PlainLabel
from gardencanvas.app.ribbon.view import RibbonView
from gardencanvas.app.session import Session

_FRAME_MS = 16
_DAYS_A_SECOND = 30


class SeasonPanel(QWidget):
    """The ribbon; ``controls`` holds play, date and zoom, for a corner of the window."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self.ribbon = RibbonView(session)
        column = QVBoxLayout(self)
        column.setContentsMargins(4, 0, 4, 0)
        column.addWidget(self.ribbon, 1)
        self.controls = self._controls()
        self._clock = QTimer(self)
        self._clock.setInterval(_FRAME_MS)
        self._clock.timeout.connect(self._tick)
        self._due = 0.0
        session.date_changed.connect(self._follow)
        session.layout_changed.connect(self._stop)
        self.ribbon.hint.connect(self._hint)
        self.ribbon.zoomed.connect(self._wheeled)
        self._follow(session.on)

    def put_above(self, line: QWidget) -> None:
        """Put a line of words over the ribbon."""
        column = self.layout()
        if isinstance(column, QVBoxLayout):
            column.insertWidget(0, line)

    def _controls(self) -> QWidget:
        bar = QWidget()
        row = QHBoxLayout(bar)
        row.setContentsMargins(0, 0, 8, 2)
        row.setSpacing(6)
        self.play = QToolButton()
        self.play.setText(self.tr("▶ Play"))
        self.play.setCheckable(True)
        self.play.setToolTip(self.tr("Show the garden growing (P)"))
        self.play.toggled.connect(self._toggle)
        self.date = DayField(self.tr("Date shown on the plan"))
        self.date.setProperty("role", "corner")  # no higher than the tabs beside it
        self.date.committed.connect(self._session.show_date)
        self.words = PlainLabel("", "quiet")
        self.words.setWordWrap(False)
        self.zoom = QSlider(Qt.Orientation.Horizontal)
        self.zoom.setRange(0, 100)
        self.zoom.setFixedWidth(120)
        self.zoom.setAccessibleName(self.tr("Zoom from years to weeks"))
        self.zoom.setToolTip(self.tr("Zoom from years to weeks (Ctrl and wheel)"))
        self.zoom.valueChanged.connect(self._zoomed)
        for widget in (self.words, self.play, self.date, self.zoom):
            row.addWidget(widget)
        return bar

    def _follow(self, on: date) -> None:
        self.date.show_day(on)

    def _hint(self, words: str) -> None:
        self.words.setText(words)

    def _wheeled(self, factor: float) -> None:
        self.zoom.setValue(round(self.zoom.value() + 100 * log(factor, 16)))

    def _zoomed(self, step: int) -> None:
        self.ribbon.set_zoom(16.0 ** (step / 100))

    def _toggle(self, on: bool) -> None:
        if not on:
            self._clock.stop()
            self.play.setText(self.tr("▶ Play"))
            return
        if self._session.on >= self.ribbon.last_day:
            self._session.show_date(self.ribbon.first_day)
        self._due = 0.0
        self.play.setText(self.tr("❚❚ Pause"))
        self._clock.start()

    def _stop(self, *_: object) -> None:
        self.play.setChecked(False)

    def _tick(self) -> None:
        self._due += _DAYS_A_SECOND * _FRAME_MS / 1000
        days = int(self._due)
        if days == 0:
            return
        self._due -= days
        on = self._session.on + timedelta(days=days)
        if on >= self.ribbon.last_day:
            self._stop()
            on = self.ribbon.last_day
        self._session.show_date(on)
