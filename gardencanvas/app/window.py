"""The main window: seed tin and outline left, plan in the middle, inspector right, season below."""

from pathlib import Path

from PySide6.QtCore import QEvent, QSize, Qt, QTimer
from PySide6.QtGui import QCloseEvent, QDragEnterEvent, QDropEvent
from PySide6.QtWidgets import QApplication, QFrame, QMainWindow, QSplitter, QTabWidget, QVBoxLayout, QWidget

from gardencanvas.app import settings, theme
from gardencanvas.app.background.laying import Background
from gardencanvas.app.background.reading import SUFFIXES as PICTURES
from gardencanvas.app.filing import Filing
from gardencanvas.app.findings.panel import FindingsPanel
from gardencanvas.app.hidden_label import HiddenLabel
from gardencanvas.app.hints import Hints
from gardencanvas.app.inspector.backdrop_fields import BackdropFields
from gardencanvas.app.inspector.panel import Inspector
from gardencanvas.app.late_tab import LateTab
from gardencanvas.app.meanwhile import is_busy
from gardencanvas.app.menus import Menus
from gardencanvas.app.outline import Outline
from gardencanvas.app.ribbon.panel import SeasonPanel
from gardencanvas.app.safekeeping import Safekeeping
from gardencanvas.app.seed_tin import SeedTin
from gardencanvas.app.session import Session
from gardencanvas.app.standing import StandingLabel
from gardencanvas.app.tabs import tabs
from gardencanvas.app.tool_row import ToolRow
from gardencanvas.canvas.view import PlanView
from gardencanvas.files import SUFFIX
from gardencanvas.files.stamps import Change
from gardencanvas.words.plain import Measure, Units

OUTLINES = (".geojson", ".svg")  # of files that are dropped

_USUAL_LINE_PX = 16  # of text of 13 pixels


class MainWindow(QMainWindow):
    """One window on one garden."""

    def __init__(self, session: Session) -> None:
        super().__init__()
        self.filing = Filing(self)
        self.background = Background(self)
        self.setAcceptDrops(True)
        self.setMinimumSize(QSize(900, 600))
        self.resize(1440, 900)
        self.units: Units = "imperial" if settings.text("units", "metric") == "imperial" else "metric"
        self.dark = theme.wants_dark(settings.text("theme", "system"))
        self._said = QTimer(self)
        self._said.setSingleShot(True)
        self._said.timeout.connect(self._quiet)
        self.hidden = HiddenLabel()
        self.statusBar().addPermanentWidget(self.hidden)
        self.standing = StandingLabel()
        self.statusBar().addPermanentWidget(self.standing)
        self.session = session
        self._build(session)
        self.actions_ = Menus(self)
        self._restore()
        self.apply_look()
        app = QApplication.instance()
        if isinstance(app, QApplication):
            app.focusChanged.connect(self._focus_moved)

    def _focus_moved(self, _old: QWidget | None, now: QWidget | None) -> None:
        """Where the part that had the keyboard is gone, such as a remedy that was made, the plan has it."""
        if now is None and self.isActiveWindow():
            QTimer.singleShot(0, self, self._catch_focus)

    def _catch_focus(self) -> None:
        if QApplication.focusWidget() is None and self.isActiveWindow():
            self.view.setFocus(Qt.FocusReason.OtherFocusReason)

    # parts

    def _build(self, session: Session) -> None:
        self.session = session
        session.setParent(self)
        self.view = PlanView(session, self)
        self.hints = Hints(self, session)
        self.tin = SeedTin(session)
        self.outline = Outline(session)
        self.inspector = Inspector(session)
        self.inspector.garden.add_backdrop(BackdropFields(self.background))
        self.season = SeasonPanel(session)
        self.ribbon = self.season.ribbon
        self.season.put_above(self.hints.lines["season"])
        self.findings = FindingsPanel(session)
        self.tool_row = ToolRow(self.view, session)
        self.left = QTabWidget()
        self.left.addTab(self.tin, self.tr("Seed tin"))
        self.left.addTab(self.outline, self.tr("Outline"))
        self.bottom = QTabWidget()
        self.bottom.addTab(self.season, self.tr("Season"))
        self.bottom.setCornerWidget(self.season.controls, Qt.Corner.TopRightCorner)
        self.bottom.addTab(self.findings, self.tr("Findings"))
        self.late: dict[str, LateTab] = {}
        for tab in tabs(self):
            self.late[tab.name] = LateTab(tab.build)
            (self.left if tab.side == "left" else self.bottom).addTab(self.late[tab.name], tab.title)
        for group, name in (
            (self.left, self.tr("Crops and outline")),
            (self.bottom, self.tr("Season and findings")),
        ):
            group.setDocumentMode(True)
            group.setUsesScrollButtons(False)  # a tab out of sight is not found
            group.setElideMode(Qt.TextElideMode.ElideRight)
            for number in range(group.count()):
                group.setTabToolTip(number, group.tabText(number))
            group.setAccessibleName(name)
        self.across = QSplitter(Qt.Orientation.Horizontal)
        self.down = QSplitter(Qt.Orientation.Vertical)
        plan = QWidget()
        column = QVBoxLayout(plan)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(4)
        column.addWidget(self.tool_row)
        column.addWidget(self.hints.lines["plan"])
        column.addWidget(self.view, 1)
        tools_wide = self.tool_row.minimumSizeHint().width() + 20
        for part, least in ((self.left, 190), (plan, max(380, tools_wide)), (self.inspector, 280)):
            frame = _framed(part)
            frame.setMinimumWidth(least)
            self.across.addWidget(frame)
        self.across.setStretchFactor(1, 1)
        tabs_wide = self.left.tabBar().sizeHint().width() + 12  # words of another language may be longer
        larger = min(max(self.fontMetrics().height() / _USUAL_LINE_PX, 1.0), 1.5)  # than the usual font
        self.across.setSizes([min(max(232, tabs_wide), 300), 850, round(320 * larger)])
        self.down.addWidget(self.across)
        self.down.addWidget(_framed(self.bottom))
        self.down.setStretchFactor(0, 1)
        self.down.setSizes([640, 220])
        for splitter in (self.across, self.down):
            splitter.setHandleWidth(8)
        desk = QWidget()
        around = QVBoxLayout(desk)
        around.setContentsMargins(8, 8, 8, 0)
        around.addWidget(self.down)
        self.setCentralWidget(desk)
        self.statusBar().setSizeGripEnabled(False)  # there from the start: no jump when it first speaks
        self._connect(session)
        self._retitle()

    def _ask_where(self) -> None:
        """Ask where the seed tin's crop fits."""
        self.actions_.all["where fits"].trigger()

    def _ask_fill(self) -> None:
        """Fill ground with the seed tin's crop."""
        from gardencanvas.app.fill.asking import ask_fill  # not needed to start

        ask_fill(self, self.tin.current)

    def _connect(self, session: Session) -> None:
        session.unsaved_changed.connect(self.setWindowModified)
        session.path_changed.connect(self._retitle)
        session.changed.connect(self._retitle)
        session.layout_changed.connect(self._retitle)
        session.refused.connect(self.say)
        self.hidden.follow(session)
        session.pointed_at.connect(self._bring_into_view)
        self.view.status.connect(self.say)
        self._keep(session)
        self.tin.picked_up.connect(self.view.carry)
        self.tin.where_asked.connect(self._ask_where)
        self.tin.fill_asked.connect(self._ask_fill)
        self.tin.carried.connect(self.view.carry_move)
        self.tin.let_go.connect(self.view.carry_drop)
        self.tin.given_up.connect(self.view.carry_cancel)
        self.tin.desk.said.connect(self.say)

    def _keep(self, session: Session) -> None:
        """See to it that the session's work is kept, and that one window at a time writes its file."""
        self.keeping = Safekeeping(session, session)
        self.keeping.read_only_changed.connect(self._retitle)
        self.keeping.file_changed.connect(self._file_changed)
        self.standing.follow(self.keeping)
        holder = self.keeping.begin()
        if holder is not None:
            QTimer.singleShot(0, self, lambda: self.filing.ask_held(holder))

    def keep_now(self) -> str:
        """Write the unsaved work to the journal now; why it could not be, or nothing."""
        return self.keeping.keep_now()

    def _file_changed(self, change: Change) -> None:
        if change is Change.CHANGED:
            self.filing.settle(self.session, change)
        else:
            self.say(self.tr("The file is not where it was; save it again, or under another name."))

    def set_session(self, session: Session) -> None:
        """Show another garden in this window; what was shown before was saved or given up."""
        old = self.session
        self.keeping.finish()
        shapes = self.across.saveState(), self.down.saveState()
        self._build(session)
        self.across.restoreState(shapes[0])
        self.down.restoreState(shapes[1])
        self.actions_.rebuild()
        self.apply_look()
        old.deleteLater()
        self.view.fit()

    def _bring_into_view(self, _place: object) -> None:
        self.view.zoom_to(self.session.selection)

    def show_tab(self, name: str) -> QWidget:
        """Bring a late tab to the front, its frame with it, and give its panel."""
        late = self.late[name]
        group = self.left if self.left.indexOf(late) >= 0 else self.bottom
        frame = group.parentWidget()
        if frame is not None:
            frame.show()
        group.setCurrentWidget(late)
        return late.panel

    # words

    def say(self, sentence: str) -> None:
        """One line in the status bar, for some seconds."""
        self.statusBar().showMessage(sentence)
        self._said.start(8000)

    def _quiet(self) -> None:
        self.statusBar().clearMessage()

    def _retitle(self, *_: object) -> None:
        session = self.session
        layout = session.layout
        where = session.path.name if session.path else self.tr("not saved yet")
        if self.keeping.read_only:
            where = self.tr("{0}, read-only").format(where)
        self.setWindowTitle(f"{session.garden.name} — {layout.year}, {layout.name} ({where})[*]")
        self.setWindowModified(session.unsaved)
        self.setWindowFilePath(str(session.path) if session.path else "")

    # look

    def apply_look(self) -> None:
        """Use the present theme and units everywhere."""
        app = QApplication.instance()
        if isinstance(app, QApplication):
            colours = theme.apply(app, dark=self.dark)
            self.view.set_dark(self.dark)
            self.view.set_units(self.units)
            self.ribbon.set_colours(colours)
            self.inspector.set_look(Measure(self.units), colours)
            self.tin.set_look(Measure(self.units), colours)
            self.findings.set_look(Measure(self.units), colours)
            for late in self.late.values():
                late.set_look(Measure(self.units), colours)

    def _restore(self) -> None:
        for key, restore in (
            ("window", self.restoreGeometry),
            ("across", self.across.restoreState),
            ("down", self.down.restoreState),
        ):
            if (shape := settings.shape(key)) is not None:
                restore(shape)

    # coming and going

    def open_path(self, path: Path) -> bool:
        """Open a garden in this window, after the question about unsaved changes."""
        if not self.filing.may_leave(self.session):
            return False
        session = self.filing.opened(path)
        if session is None:
            return False
        self.set_session(session)
        return True

    def dragEnterEvent(self, event: QDragEnterEvent) -> None:
        if _dropped(event):
            event.acceptProposedAction()

    def dropEvent(self, event: QDropEvent) -> None:
        path = _dropped(event)
        if path is None:
            return
        event.acceptProposedAction()
        if path.suffix == SUFFIX:
            self.open_path(path)
        else:
            QTimer.singleShot(0, self, lambda: self._take_in(path))  # the drag ends first

    def _take_in(self, path: Path) -> None:
        """Offer a picture as background, and outlines of a map or drawing as beds."""
        if path.suffix.lower() in PICTURES:
            self.background.offer(path)
        else:
            from gardencanvas.app import beds_from_file  # not needed to start

            beds_from_file.show(self, path)

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.ActivationChange and self.isActiveWindow():
            self.keeping.look()

    def closeEvent(self, event: QCloseEvent) -> None:
        if is_busy(self) or not self.filing.may_leave(self.session):
            event.ignore()
            return
        self.keeping.finish()
        settings.keep_shape("window", self.saveGeometry())
        settings.keep_shape("across", self.across.saveState())
        settings.keep_shape("down", self.down.saveState())
        event.accept()


def _framed(inside: QWidget) -> QFrame:
    """A panel with round corners round a widget."""
    frame = QFrame()
    frame.setProperty("role", "panel")
    column = QVBoxLayout(frame)
    column.setContentsMargins(4, 4, 4, 4)
    column.addWidget(inside)
    return frame


def _dropped(event: QDropEvent) -> Path | None:
    """The first file of a drag that the window can use: a garden, a picture, a map or a drawing."""
    for url in event.mimeData().urls():
        path = Path(url.toLocalFile())
        if url.isLocalFile() and (path.suffix == SUFFIX or path.suffix.lower() in (*PICTURES, *OUTLINES)):
            return path
    return None
