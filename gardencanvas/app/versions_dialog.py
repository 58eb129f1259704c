"""Earlier versions of the file: date, picture and differences; restored as a layout or as a file."""

from typing import TYPE_CHECKING

from PySide6.QtCore import QRectF, QSize, Qt
from PySide6.QtGui import QImage, QPainter, QPixmap
from PySide6.QtWidgets import QDialog, QHBoxLayout, QLabel, QListWidget, QPushButton, QVBoxLayout

from gardencanvas.app import filing
from gardencanvas.app.asking import moment
from gardencanvas.app.labels import PlainLabel
from gardencanvas.app.saving import beside
from gardencanvas.app.soon import Soon
from gardencanvas.files import CannotWrite, FileRefused, open_garden, save_garden
from gardencanvas.files.differences import differences
from gardencanvas.files.keeping.versions import Version, versions
from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.garden import Garden
from gardencanvas.garden.restoring import with_restored_layout
from gardencanvas.words.differences import in_words
from gardencanvas.words.plain import day_year
from gardencanvas.words.refusals import why_refused

if TYPE_CHECKING:
    from gardencanvas.app.window import MainWindow

_PICTURE = QSize(560, 380)
_SOON_MS = 120  # a held arrow key passes versions faster than they can be drawn


class VersionsDialog(QDialog):
    """The kept versions of the file in the window."""

    def __init__(self, window: "MainWindow") -> None:
        super().__init__(window)
        self._window = window
        path = window.session.path
        self._versions = versions(path) if path else []
        self._garden: Garden | None = None
        self.setWindowTitle(self.tr("Earlier versions"))
        self.resize(880, 560)
        self.list = QListWidget()
        self.list.setAccessibleName(self.tr("Versions, newest first"))
        self.list.setFixedWidth(230)
        self.list.setSpacing(3)
        for version in self._versions:
            self.list.addItem(self._line(version))
        self.picture = QLabel()
        self.picture.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self.picture.setMinimumSize(320, 220)
        self.what = PlainLabel("", "body")
        self.what.setMinimumHeight(60)
        self.what.setAlignment(Qt.AlignmentFlag.AlignTop)
        self.as_layout = QPushButton(self.tr("Add as a new &layout"))
        self.as_layout.setToolTip(self.tr("It comes beside yours; Edit, Undo takes it away again"))
        self.as_file = QPushButton(self.tr("Save as a new &file"))
        self.close_ = QPushButton(self.tr("&Close"))
        self.as_layout.clicked.connect(self._restore_layout)
        self.as_file.clicked.connect(self._restore_file)
        self.close_.clicked.connect(self.reject)
        self._lay_out()
        self._soon = Soon(self, self._show, _SOON_MS)
        self.list.currentRowChanged.connect(self._soon.ask)
        self.list.setCurrentRow(0)
        self._show()

    def _lay_out(self) -> None:
        right = QVBoxLayout()
        right.setSpacing(10)
        right.addWidget(self.picture, 1)
        right.addWidget(self.what)
        row = QHBoxLayout()
        row.addWidget(self.as_layout)
        row.addWidget(self.as_file)
        row.addStretch(1)
        row.addWidget(self.close_)
        right.addLayout(row)
        across = QHBoxLayout(self)
        across.setSpacing(12)
        across.addWidget(self.list)
        across.addLayout(right, 1)

    def _line(self, version: Version) -> str:
        size = max(round(version.size / 1000), 1)
        when = version.when.astimezone()
        return f"{day_year(when.date())}, {when:%H:%M}\n{size} kB"

    @property
    def _version(self) -> Version | None:
        row = self.list.currentRow()
        return self._versions[row] if 0 <= row < len(self._versions) else None

    def _show(self) -> None:
        version = self._version
        self._garden = None
        self.picture.clear()
        if version is None:
            self.what.setText(self.tr("No earlier versions are kept yet: each save keeps one."))
        else:
            try:
                self._garden = open_garden(version.file)
                told = in_words(differences(self._garden, self._window.session.garden))
                self.what.setText(self.tr("From then until now: {0}").format(told))
                self.picture.setPixmap(self._drawn(self._garden))
                self.picture.setAccessibleName(self.tr("Plan of {0}").format(moment(version.when)))
            except FileRefused as error:
                self.what.setText(why_refused(error))
        for button in (self.as_layout, self.as_file):
            button.setEnabled(self._garden is not None)

    def _layout_id(self, garden: Garden) -> str:
        """The layout that is shown in the window, or the version's first."""
        shown = self._window.session.layout_id
        return shown if any(x.id == shown for x in garden.layouts) else garden.layouts[0].id

    def _drawn(self, garden: Garden) -> QPixmap:
        from gardencanvas.canvas.picture import render_plan  # not needed to start
        from gardencanvas.crops.catalogue import catalogue
        from gardencanvas.fit import check

        layout_id = self._layout_id(garden)
        session = self._window.session
        crops = session.library.over(catalogue()).with_own(garden.crops, garden.varieties)
        first, last = garden.layout(layout_id).season
        on = session.on if first <= session.on <= last else garden.layout(layout_id).middle
        pixel = self.devicePixelRatioF()
        image = QImage(_PICTURE * pixel, QImage.Format.Format_RGB32)
        painter = QPainter(image)
        try:
            report = check(garden, layout_id, crops)
            render_plan(
                painter, QRectF(image.rect()), garden, layout_id, on, report, crops=crops,
                dark=self._window.dark, stamped=True, pixel=pixel,
            )  # fmt: skip
        finally:
            painter.end()
        image.setDevicePixelRatio(pixel)
        return QPixmap.fromImage(image)

    # answers

    def _restore_layout(self) -> None:
        version, garden, session = self._version, self._garden, self._window.session
        if version is None or garden is None:
            return
        try:
            after, layout_id = with_restored_layout(
                session.garden, garden, self._layout_id(garden), moment(version.when)
            )
        except Refusal as error:
            filing.tell(self, self.tr("It cannot be added"), why_refused(error))
            return
        if session.propose(after, self.tr("Restore a layout")):
            session.show_layout(layout_id)
        self.accept()

    def _restore_file(self) -> None:
        version, garden, path = self._version, self._garden, self._window.session.path
        if version is None or garden is None or path is None:
            return
        chosen = filing.ask_save(self, str(beside(path, self.tr("of"), version.when)))
        if chosen is None:
            return
        try:
            save_garden(garden, chosen)
        except CannotWrite as error:
            filing.tell(self, self.tr("It could not be saved"), why_refused(error))
            return
        self._window.say(self.tr("Saved as {0}.").format(chosen.name))
        self.accept()
