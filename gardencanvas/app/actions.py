"""Every command with its menu and shortcut."""

from collections.abc import Callable
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QPoint, Qt
from PySide6.QtGui import QAction, QActionGroup, QKeySequence
from PySide6.QtWidgets import QApplication, QInputDialog, QMenu, QMessageBox

from gardencanvas import __version__
from gardencanvas.app import commands, filing, settings, theme
from gardencanvas.app.crop_commands import crop_commands
from gardencanvas.app.session import Session
from gardencanvas.canvas import keys
from gardencanvas.words.plain import Measure

if TYPE_CHECKING:
    from gardencanvas.app.window import MainWindow

_KEY = QKeySequence.StandardKey


class Actions(QObject):
    """Builds the menus of a window and does what they say."""

    def __init__(self, window: "MainWindow") -> None:
        super().__init__(window)
        self._window = window
        self.all: dict[str, QAction] = {}
        self.rebuild()

    @property
    def _session(self) -> Session:
        return self._window.session

    def rebuild(self) -> None:
        """Make the menus anew, for a new session."""
        self._window.menuBar().clear()
        self.all.clear()
        self._file()
        self._edit()
        self._view()
        self._plan()
        self._season()
        self._help()
        self._window.view.context_menu.connect(self.show_menu)
        self._session.selection_changed.connect(self._enable)
        self._session.changed.connect(self._enable)
        self._session.history.moved.connect(self._name_steps)
        self._enable()
        self._name_steps()

    def _add(
        self, menu: QMenu, name: str, text: str, do: Callable[[], object], shortcut: object = None
    ) -> QAction:
        action = QAction(text, self)
        if isinstance(shortcut, QKeySequence.StandardKey):
            action.setShortcuts(shortcut)
        elif shortcut is not None:
            several = shortcut if isinstance(shortcut, list) else [shortcut]
            action.setShortcuts([QKeySequence(k) for k in several])
        action.triggered.connect(do)
        menu.addAction(action)
        self.all[name] = action
        return action

    # menus

    def _file(self) -> None:
        menu = self._window.menuBar().addMenu(self.tr("&File"))
        self._add(menu, "new", self.tr("&New garden"), self.new, _KEY.New)
        self._add(menu, "open", self.tr("&Open…"), self.open, _KEY.Open)
        self._recent = menu.addMenu(self.tr("Open &recent"))
        self._recent.aboutToShow.connect(self._fill_recent)
        self._add(menu, "demo", self.tr("Open the &demo garden"), self.open_demo)
        menu.addSeparator()
        self._add(menu, "save", self.tr("&Save"), self.save, _KEY.Save)
        self._add(menu, "save as", self.tr("Save &as…"), self.save_as, "Ctrl+Shift+S")
        self._add(menu, "bed map", self.tr("Save the &bed map…"), self.bedmap, "Ctrl+P")
        self._add(menu, "picture", self.tr("Save a &picture…"), self.picture, "Ctrl+E")
        menu.addSeparator()
        self._add(menu, "close", self.tr("&Quit"), self.quit, "Ctrl+Q")

    def _edit(self) -> None:
        menu = self._window.menuBar().addMenu(self.tr("&Edit"))
        self._add(menu, "undo", self.tr("&Undo"), self.undo, _KEY.Undo)
        self._add(menu, "redo", self.tr("&Redo"), self.redo, _KEY.Redo)
        menu.addSeparator()
        self._add(menu, "duplicate", self.tr("&Duplicate"), self.duplicate, "Ctrl+D")
        self._add(menu, "delete", self.tr("De&lete"), self.delete, ["Del", "Backspace"])
        self._add(menu, "turn right", self.tr("&Turn right 15°"), self.turn_right, "R")
        self._add(menu, "turn left", self.tr("Turn &left 15°"), self.turn_left, "Shift+R")
        self._add(menu, "lock", self.tr("Loc&k"), self.lock, "Ctrl+L")
        self._add(menu, "unlock", self.tr("U&nlock"), self.unlock, "Ctrl+Shift+L")
        menu.addSeparator()
        self._add(menu, "select all", self.tr("Select &all"), self.select_all, _KEY.SelectAll)
        self._add(menu, "select succession", self.tr("Select the &whole succession"), self.select_succession)
        self._add(menu, "deselect", self.tr("D&eselect"), self.deselect, "Ctrl+Shift+A")

    def _view(self) -> None:
        menu = self._window.menuBar().addMenu(self.tr("&View"))
        view = self._window.view
        self._add(menu, "zoom in", self.tr("Zoom &in"), view.zoom_in, ["Ctrl++", "Ctrl+="])
        self._add(menu, "zoom out", self.tr("Zoom &out"), view.zoom_out, "Ctrl+-")
        self._add(menu, "fit", self.tr("&Fit the plan"), view.fit, "Ctrl+9")
        self._add(menu, "fit selection", self.tr("Fit the &selection"), self.fit_selection, "Ctrl+8")
        menu.addSeparator()
        self._check(
            menu,
            "grid",
            self.tr("&Grid"),
            view.set_grid,
            on=settings.flag("grid", default=True),
            shortcut="G",
        )
        self._check(
            menu,
            "snap",
            self.tr("S&nap"),
            view.set_snap,
            on=settings.flag("snap", default=True),
            shortcut="N",
        )
        menu.addSeparator()
        for name, text, widget, key in (
            ("left panel", self.tr("Seed &tin and outline"), self._window.across.widget(0), "F6"),
            ("inspector panel", self.tr("&Inspector"), self._window.across.widget(2), "F7"),
            ("season panel", self.tr("Season and &findings"), self._window.down.widget(1), "F9"),
        ):
            self._check(menu, name, text, widget.setVisible, on=True, shortcut=key)
        menu.addSeparator()
        look = menu.addMenu(self.tr("&Colours"))
        self._choice(look, "theme", "system", {
            "system": self.tr("As the &system"), "light": self.tr("&Light"), "dark": self.tr("&Dark"),
        }, self._theme)  # fmt: skip
        units = menu.addMenu(self.tr("&Units"))
        self._choice(units, "units", "metric", {
            "metric": self.tr("&Centimetres and metres"), "imperial": self.tr("&Inches and feet"),
        }, self._units)  # fmt: skip

    def _plan(self) -> None:
        menu = self._window.menuBar().addMenu(self.tr("&Plan"))
        for tool, text, key in (
            ("select", self.tr("&Select and move"), "V"),
            ("bed", self.tr("Draw a &bed"), "B"),
            ("polygon", self.tr("Draw a bed by &corners"), "Shift+B"),
            ("measure", self.tr("&Measure"), "M"),
            ("pan", self.tr("&Pan"), "H"),
        ):
            action = self._add(menu, f"tool {tool}", text, self._tool, key)
            action.setData(tool)
        menu.addSeparator()
        self._add(menu, "again", self.tr("&Again…"), self.again, "Ctrl+Shift+D")
        self._add(menu, "find crop", self.tr("&Find a crop in the seed tin"), self.find_crop, "Ctrl+F")
        for name, text, do, key in crop_commands(self._window):
            self._add(menu, name, text, do, key)
        menu.addSeparator()
        self._add(menu, "site", self.tr("S&ite, frost and climate…"), self.site)
        self._layouts = menu.addMenu(self.tr("Show &layout"))
        self._layouts.aboutToShow.connect(self._fill_layouts)
        self._add(menu, "duplicate layout", self.tr("&Duplicate this layout…"), self.duplicate_layout)

    def _season(self) -> None:
        menu = self._window.menuBar().addMenu(self.tr("&Season"))
        self._add(menu, "week back", self.tr("A week &earlier"), self.week_back, "Ctrl+Left")
        self._add(menu, "week on", self.tr("A week &later"), self.week_on, "Ctrl+Right")
        self._add(menu, "play", self.tr("&Play the season"), self._window.season.play.toggle, "P")
        self._add(menu, "today", self.tr("&Today"), self.today, "Ctrl+T")
        menu.addSeparator()
        self._add(menu, "next finding", self.tr("&Next finding"), self.next_finding, "F8")
        self._add(menu, "previous finding", self.tr("&Previous finding"), self.previous_finding, "Shift+F8")

    def _help(self) -> None:
        menu = self._window.menuBar().addMenu(self.tr("&Help"))
        self._add(menu, "marks", self.tr("The four &verdicts"), self.verdicts, "F1")
        self._add(menu, "about", self.tr("&About Garden Canvas"), self.about)

    def _check(
        self, menu: QMenu, name: str, text: str, do: Callable[[bool], None], *, on: bool, shortcut: str
    ) -> None:
        action = QAction(text, self)
        action.setCheckable(True)
        action.setChecked(on)
        action.setShortcut(QKeySequence(shortcut))
        action.toggled.connect(do)
        if name in {"grid", "snap"}:
            action.setData(name)
            action.toggled.connect(self._keep_flag)
            do(on)
        menu.addAction(action)
        self.all[name] = action

    def _choice(
        self, menu: QMenu, key: str, default: str, words: dict[str, str], do: Callable[[], None]
    ) -> None:
        group = QActionGroup(self)
        chosen = settings.text(key, default)
        for value, text in words.items():
            action = QAction(text, self)
            action.setCheckable(True)
            action.setChecked(value == chosen)
            action.setData(value)
            action.triggered.connect(do)
            group.addAction(action)
            menu.addAction(action)
            self.all[f"{key} {value}"] = action

    def _enable(self, *_: object) -> None:
        some = bool(self._session.selection)
        for name in (
            "duplicate",
            "delete",
            "turn right",
            "turn left",
            "lock",
            "unlock",
            "fit selection",
            "deselect",
        ):
            action = self.all[name]
            action.setEnabled(some)
            action.setToolTip("" if some else self.tr("Select something first."))
        self.all["again"].setEnabled(commands.repeatable(self._session) is not None)
        self.all["select succession"].setEnabled(bool(commands.successions(self._session)))

    def show_menu(self, place: QPoint, ids: frozenset[str]) -> None:
        """The menu of what was clicked on the plan."""
        if not ids <= self._session.selection:
            self._session.select(ids)
        menu = QMenu(self._window)
        names = ("duplicate", "delete", "turn right", "turn left", "lock", "unlock", "fit selection")
        for name in names if ids else ("select all", "tool bed", "fit"):
            menu.addAction(self.all[name])
        menu.addActions([a for a in (self.all["again"], self.all["select succession"]) if a.isEnabled()])
        menu.exec(place)
        menu.deleteLater()

    # File

    def new(self) -> None:
        """An empty garden."""
        from gardencanvas.app.start import new_garden

        if self._window.filing.may_leave(self._session):
            self._window.set_session(Session(new_garden()))

    def open(self) -> None:
        """Open a garden file."""
        path = filing.ask_open(self._window)
        if path is not None:
            self._window.open_path(path)

    def open_demo(self) -> None:
        """Open a fresh copy of the demo garden."""
        from gardencanvas.app.start import demo_garden

        if self._window.filing.may_leave(self._session):
            self._window.set_session(Session(demo_garden()))

    def _fill_recent(self) -> None:
        self._recent.clear()
        for path in settings.recent_files():
            action = self._recent.addAction(path.name)
            action.setData(str(path))
            action.setToolTip(str(path))
            action.triggered.connect(self._open_recent)
        if self._recent.isEmpty():
            self._recent.addAction(self.tr("none yet")).setEnabled(False)
        else:
            self._recent.addSeparator()
            self._recent.addAction(self.tr("Empty this list")).triggered.connect(settings.forget_files)

    def _open_recent(self) -> None:
        from pathlib import Path

        action = self.sender()
        if isinstance(action, QAction):
            self._window.open_path(Path(action.data()))

    def save(self) -> None:
        """Save the garden."""
        if self._window.filing.save(self._session):
            self._window.say(self.tr("Saved."))

    def save_as(self) -> None:
        """Save under another name."""
        if self._window.filing.save_as(self._session):
            self._window.say(self.tr("Saved."))

    def picture(self) -> None:
        """Save the plan on the date cursor as a picture."""
        self._window.filing.save_picture(self._session)

    def bedmap(self) -> None:
        """Save the bed map of the shown layout as PDF."""
        self._window.filing.save_bedmap(self._session, Measure(self._window.units))

    def quit(self) -> None:
        """Close the window, with the question about unsaved changes."""
        self._window.close()

    # Edit

    def undo(self) -> None:
        """Take back the last step."""
        self._session.history.undo()

    def redo(self) -> None:
        """Do again what was taken back."""
        self._session.history.redo()

    def _name_steps(self) -> None:
        history = self._session.history
        for name, text, step in (
            ("undo", self.tr("&Undo {0}"), history.undo_text),
            ("redo", self.tr("&Redo {0}"), history.redo_text),
        ):
            action = self.all[name]
            action.setEnabled(step is not None)
            action.setText(text.format((step or "").replace("&", "&&")).rstrip())

    def duplicate(self) -> None:
        """Copy what is selected."""
        keys.duplicate(self._window.view)

    def delete(self) -> None:
        """Remove what is selected."""
        keys.delete(self._window.view)

    def turn_right(self) -> None:
        """Turn what is selected clockwise."""
        keys.turn(self._window.view, 15.0)

    def turn_left(self) -> None:
        """Turn what is selected counterclockwise."""
        keys.turn(self._window.view, -15.0)

    def lock(self) -> None:
        """Lock what is selected."""
        commands.lock(self._session, locked=True)

    def unlock(self) -> None:
        """Unlock what is selected."""
        commands.lock(self._session, locked=False)

    def select_all(self) -> None:
        """Select all plantings."""
        keys.select_all(self._window.view)

    def select_succession(self) -> None:
        """Select all parts of the successions of which something is selected."""
        self._session.select(self._session.selection | commands.successions(self._session))

    def deselect(self) -> None:
        """Select nothing."""
        self._session.select(())

    # View

    def fit_selection(self) -> None:
        """Bring what is selected into view."""
        self._window.view.zoom_to(self._session.selection)

    def _keep_flag(self, on: bool) -> None:
        action = self.sender()
        if isinstance(action, QAction):
            settings.keep(action.data(), on)

    def _theme(self) -> None:
        action = self.sender()
        if isinstance(action, QAction):
            settings.keep("theme", action.data())
            self._window.dark = theme.wants_dark(action.data())
            self._window.apply_look()

    def _units(self) -> None:
        action = self.sender()
        if isinstance(action, QAction):
            settings.keep("units", action.data())
            self._window.units = action.data()
            self._window.apply_look()

    # Plan

    def site(self) -> None:
        """Change where the garden lies."""
        from gardencanvas.app.site_dialog import edit_site  # not needed to start

        edit_site(self._session, self._window, self._window.units)

    def _tool(self) -> None:
        action = self.sender()
        if isinstance(action, QAction):
            self._window.view.set_tool(action.data())

    def again(self) -> None:
        """Have the selected planting come again, or change its succession."""
        from gardencanvas.app.succession_dialog import ask

        planting = commands.repeatable(self._session)
        if planting is not None:
            ask(self._window, planting)

    def find_crop(self) -> None:
        """Go to the seed tin's search field."""
        self._window.left.setCurrentWidget(self._window.tin)
        self._window.tin.search.setFocus(Qt.FocusReason.ShortcutFocusReason)
        self._window.tin.search.selectAll()

    def _fill_layouts(self) -> None:
        self._layouts.clear()
        for layout in self._session.garden.layouts:
            action = self._layouts.addAction(f"{layout.name}, {layout.year}")
            action.setCheckable(True)
            action.setChecked(layout.id == self._session.layout_id)
            action.setData(layout.id)
            action.triggered.connect(self._show_layout)

    def _show_layout(self) -> None:
        action = self.sender()
        if isinstance(action, QAction):
            self._session.show_layout(action.data())

    def duplicate_layout(self) -> None:
        """Copy the shown layout under a new name."""
        suggested = self.tr("{0}, second try").format(self._session.layout.name)
        name, done = QInputDialog.getText(
            self._window, self.tr("Duplicate the layout"), self.tr("Name of the copy"), text=suggested
        )
        if done and name.strip():
            commands.duplicate_layout(self._session, name.strip()[:200])

    # Season

    def week_back(self) -> None:
        """Move the date cursor a week back."""
        self._window.ribbon.step(-7)

    def week_on(self) -> None:
        """Move the date cursor a week on."""
        self._window.ribbon.step(7)

    def today(self) -> None:
        """Move the date cursor to today, or to the middle of the layout's year."""
        from gardencanvas.app.session import default_date

        self._session.show_date(default_date(self._session.layout))

    def next_finding(self) -> None:
        """Walk to the next finding."""
        self._window.bottom.setCurrentWidget(self._window.findings)
        self._window.findings.go_next()

    def previous_finding(self) -> None:
        """Walk to the previous finding."""
        self._window.bottom.setCurrentWidget(self._window.findings)
        self._window.findings.go_next(-1)

    # Help

    def verdicts(self) -> None:
        """What the four words mean."""
        box = QMessageBox(self._window)
        box.setWindowTitle(self.tr("The four verdicts"))
        box.setTextFormat(Qt.TextFormat.PlainText)
        box.setText(
            self.tr(
                "clear – thin outline: nothing else uses this space while the plant stands.\n\n"
                "shares – double outline: it overlaps a neighbour and that works, since they differ in "
                "height, roots or time.\n\n"
                "strains – dashed outline: it works at a cost that is named: less light, a late harvest, "
                "thirst.\n\n"
                "clashes – thick, hatched outline: one of them fails."
            )
        )
        box.exec()

    def about(self) -> None:
        """Version, Qt and what it rests on."""
        app = QApplication.instance()
        box = QMessageBox(self._window)
        box.setWindowTitle(self.tr("About Garden Canvas"))
        box.setTextFormat(Qt.TextFormat.PlainText)
        box.setText(self.tr("Garden Canvas {0}").format(__version__))
        box.setInformativeText(
            self.tr(
                "Plans several crops in the same ground. Its figures are handbook values with their ranges "
                "and sources; your soil and weather are your own. Follow local rules and qualified advice "
                "where a plant can hurt someone."
            )
        )
        if app is not None:
            box.exec()
