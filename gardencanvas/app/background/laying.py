"""Commands of the background picture: choose a file, lay it under the plan, show, lock and remove it."""

from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Qt
from PySide6.QtWidgets import QFileDialog

from gardencanvas.app.asking import choose
from gardencanvas.app.background.reading import SUFFIXES, PictureRefused, picture_of
from gardencanvas.app.meanwhile import meanwhile
from gardencanvas.app.session import Session
from gardencanvas.canvas.look import CM
from gardencanvas.garden import laying_under
from gardencanvas.garden.backdrop import COARSEST_M, FINEST_M, Backdrop
from gardencanvas.garden.edits import made
from gardencanvas.garden.errors import Refusal, shortened
from gardencanvas.garden.garden import Garden
from gardencanvas.words.refusals import why_refused

if TYPE_CHECKING:
    from gardencanvas.app.window import MainWindow

_OF_WINDOW = 0.8  # of the window's width or height that a new picture takes, until it is scaled


class Background(QObject):
    """The commands, on one window."""

    def __init__(self, window: "MainWindow") -> None:
        super().__init__(window)
        self._window = window

    @property
    def session(self) -> Session:
        """The session of the window, which may change."""
        return self._window.session

    def choose(self) -> None:
        """Ask for an image file and lay it under the plan."""
        patterns = " ".join(f"*{suffix}" for suffix in SUFFIXES)
        name, _ = QFileDialog.getOpenFileName(
            self._window,
            self.tr("Choose a background picture"),
            "",
            self.tr("Pictures ({0})").format(patterns),
        )
        if name:
            self.lay(Path(name))

    def offer(self, path: Path) -> None:
        """Ask whether a file that was dropped on the window is to lie under the plan."""
        under = self.session.garden.backdrop
        answer = choose(
            self._window,
            self.tr("A picture for the background"),
            self.tr("Lay “{0}” under the plan, to draw over it?").format(shortened(path.name)),
            self.tr("It takes the place of the present background picture.")
            if under is not None
            else self.tr("It is kept inside the garden's file and can be scaled, moved, dimmed and removed."),
            {"lay": self.tr("Lay it under the plan")},
        )
        if answer == "lay":
            self.lay(path)

    def lay(self, path: Path) -> bool:
        """Lay the picture in a file under what the window shows, and begin to scale it."""
        window = self._window
        try:
            picture = meanwhile(window, self.tr("Reading the picture…"), lambda: picture_of(path))
        except PictureRefused as refused:
            window.session.refused.emit(str(refused))
            return False
        port = window.view.viewport().rect()
        middle = window.view.mapToScene(port.center()) / CM
        seen = window.view.look.scale * CM  # pixels in a metre
        scale = _OF_WINDOW * min(port.width() / picture.width_px, port.height() / picture.height_px) / seen
        backdrop = made(
            Backdrop,
            name=shortened(path.stem, 100) or "picture",
            picture=picture,
            centre=(round(middle.x(), 3), round(middle.y(), 3)),
            metres_per_pixel=min(max(scale, FINEST_M), COARSEST_M),
        )
        after = laying_under.with_backdrop(window.session.garden, backdrop)
        if window.session.propose(after, self.tr("Lay a picture under the plan")):
            self.work("backdrop scale")
        return True

    def work(self, tool: str) -> None:
        """Take one of the picture's tools; a hidden picture is shown first."""
        backdrop = self.session.garden.backdrop
        if backdrop is not None and not backdrop.shown:
            self.show(on=True)
        self._window.view.set_tool(tool)
        self._window.view.setFocus(Qt.FocusReason.OtherFocusReason)

    def show(self, *, on: bool) -> None:
        """Show or hide it."""
        text = self.tr("Show the background picture") if on else self.tr("Hide the background picture")
        self.change(text, shown=on)

    def lock(self, *, on: bool) -> None:
        """Lock or unlock it."""
        text = self.tr("Lock the background picture") if on else self.tr("Unlock the background picture")
        self.change(text, locked=on)

    def remove(self) -> None:
        """Take it away."""
        session = self.session
        after = laying_under.with_backdrop(session.garden, None)
        session.propose(after, self.tr("Remove the background picture"))

    def change(self, text: str, **fields: object) -> None:
        """One undo step with other fields that do not move it."""
        self._propose(text, lambda garden: laying_under.changed(garden, **fields))

    def place(self, text: str, **fields: object) -> None:
        """One undo step with another place, size or turn."""
        self._propose(text, lambda garden: laying_under.placed(garden, **fields))

    def _propose(self, text: str, edit: Callable[[Garden], Garden]) -> None:
        session = self.session
        try:
            session.propose(edit(session.garden), text)
        except Refusal as refusal:
            session.refused.emit(why_refused(refusal))

    def why_none(self) -> str:
        """Why nothing can be done to the picture; empty where there is one."""
        if self.session.garden.backdrop is not None:
            return ""
        return self.tr("There is no background picture yet.")

    def why_fixed(self) -> str:
        """Why it cannot be moved or scaled; empty where it can."""
        backdrop = self.session.garden.backdrop
        if backdrop is not None and backdrop.locked:
            return self.tr("It is locked; unlock it first.")
        return self.why_none()
