"""New, open, save and close, with the questions they need. Refusals say why and change nothing."""

from datetime import UTC, datetime
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Qt
from PySide6.QtWidgets import QFileDialog, QMessageBox, QWidget

from gardencanvas.app import asking, settings
from gardencanvas.app.saving import beside, write_garden
from gardencanvas.app.session import Session
from gardencanvas.files import SUFFIX, CannotWrite, FileRefused, garden_to_bytes
from gardencanvas.files.keeping.sittings import Holder
from gardencanvas.files.keeping.versions import keep_version
from gardencanvas.files.stamps import Change, change_since
from gardencanvas.words.refusals import why_refused

if TYPE_CHECKING:
    from gardencanvas.app.window import MainWindow

FILTER = f"Garden Canvas (*{SUFFIX})"


def ask_unsaved(window: QWidget, name: str) -> QMessageBox.StandardButton:
    """Ask whether to save, not to save, or to stay."""
    box = QMessageBox(window)
    box.setTextFormat(Qt.TextFormat.PlainText)
    box.setIcon(QMessageBox.Icon.Question)
    box.setWindowTitle(window.tr("Save the garden?"))
    box.setText(window.tr("“{0}” has changes that are not saved.").format(name))
    box.setInformativeText(window.tr("If you do not save, they are lost."))
    buttons = QMessageBox.StandardButton
    box.setStandardButtons(buttons.Save | buttons.Discard | buttons.Cancel)
    box.setDefaultButton(buttons.Save)
    return QMessageBox.StandardButton(box.exec())


def tell(window: QWidget, title: str, sentence: str) -> None:
    """One plain sentence in a dialog."""
    box = QMessageBox(window)
    box.setTextFormat(Qt.TextFormat.PlainText)
    box.setIcon(QMessageBox.Icon.Information)
    box.setWindowTitle(title)
    box.setText(sentence)
    box.exec()


def ask_open(window: QWidget) -> Path | None:
    """Ask which file to open."""
    name, _ = QFileDialog.getOpenFileName(window, window.tr("Open a garden"), "", FILTER)
    return Path(name) if name else None


def ask_save(window: QWidget, suggested: str) -> Path | None:
    """Ask where to save."""
    name, _ = QFileDialog.getSaveFileName(window, window.tr("Save the garden"), suggested, FILTER)
    if not name:
        return None
    path = Path(name)
    return path if path.suffix == SUFFIX else path.with_name(path.name + SUFFIX)


class Filing(QObject):
    """Opens and saves for one window."""

    def __init__(self, window: "MainWindow") -> None:
        super().__init__(window)
        self._window = window

    def opened(self, path: Path) -> Session | None:
        """A session on the file; None, after telling why, if it is refused."""
        try:
            session = Session.opened(path)
        except FileRefused as error:
            tell(self._window, self.tr("This file cannot be opened"), why_refused(error))
            return None
        settings.remember_file(path)
        return session

    def save(self, session: Session) -> bool:
        """Save to the session's own file; asks for one where it has none."""
        path = session.path
        if path is None:
            return self.save_as(session)
        if not self._window.keeping.may_write():
            answer = asking.ask_read_only(self._window, path.name)
            if answer != "take":
                return answer == "other" and self.save_as(session)
            if not self.take_over():
                return False
        change = self._change(session, path)
        return self._written(session, path) if change is Change.NONE else self.settle(session, change)

    def save_as(self, session: Session) -> bool:
        """Ask for a file and save to it."""
        suggested = session.path or Path(_file_name(session.garden.name))
        path = ask_save(self._window, str(suggested))
        return path is not None and self._written(session, path)

    # other windows and other programs

    def ask_held(self, holder: Holder) -> None:
        """Another window has the file: look only, or take over."""
        path = self._window.session.path
        if path is not None and asking.ask_held(self._window, path.name, holder) == "take":
            self.take_over()

    def take_over(self) -> bool:
        """Let this window write the file from now on."""
        try:
            self._window.keeping.take_over()
        except CannotWrite as error:
            tell(self._window, self.tr("It stays read-only"), why_refused(error))
            return False
        return True

    def settle(self, session: Session, change: Change) -> bool:
        """Another program changed the file: keep mine, theirs or both. Whether mine is saved or given up."""
        path = session.path
        if path is None:
            return False
        answer = asking.ask_changed(self._window, path.name, change, unsaved=session.unsaved)
        if answer in {"mine", "again"}:
            return self._written(session, path)
        if answer == "other":
            return self.save_as(session)
        if answer == "both":
            return self._written(session, beside(path, self.tr("mine")))
        return answer == "theirs" and self._take_theirs(session, path)

    def _take_theirs(self, session: Session, path: Path) -> bool:
        if session.unsaved:
            try:
                keep_version(path, garden_to_bytes(session.garden), datetime.now(UTC))
            except CannotWrite as error:
                tell(self._window, self.tr("Yours could not be kept"), why_refused(error))
                return False
        theirs = self.opened(path)
        if theirs is not None:
            self._window.set_session(theirs)
        return theirs is not None

    def _change(self, session: Session, path: Path) -> Change:
        if session.stamp is None:
            return Change.NONE
        try:
            return change_since(path, session.stamp)
        except FileRefused:
            return Change.NONE  # writing will say what is wrong with it

    def may_leave(self, session: Session) -> bool:
        """Whether the session may go: saved, or given up by the grower."""
        if not session.unsaved:
            return True
        answer = ask_unsaved(self._window, session.garden.name)
        if answer == QMessageBox.StandardButton.Save:
            return self.save(session)
        return answer == QMessageBox.StandardButton.Discard

    def _written(self, session: Session, path: Path) -> bool:
        garden, keeping = session.garden, self._window.keeping
        keeping.writing = True
        try:
            saved = write_garden(self._window, garden, path)
        except CannotWrite as error:
            tell(
                self._window,
                self.tr("The garden is not saved"),
                self.tr(
                    "{0} Your changes are still here; save under another name or in another folder."
                ).format(why_refused(error)),
            )
            return False
        finally:
            keeping.writing = False
        session.was_saved(garden, path, saved.stamp)
        settings.remember_file(path)
        warning = self.tr("Saved, but without an earlier version: {0}").format(saved.warning)
        self._window.say(warning if saved.warning else self.tr("Saved."))
        return True


def _file_name(name: str) -> str:
    kept = "".join(c if c.isalnum() or c in " -_" else "-" for c in name).strip() or "garden"
    return kept[:80] + SUFFIX
