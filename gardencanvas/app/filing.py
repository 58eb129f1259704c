"""New, open, save and close, with the questions they need. Refusals say why and change nothing."""

from pathlib import Path

from PySide6.QtCore import QObject, Qt
from PySide6.QtWidgets import QFileDialog, QMessageBox, QWidget

from gardencanvas.app import settings
from gardencanvas.app.session import Session
from gardencanvas.files import SUFFIX, CannotWrite, FileRefused, open_garden
from gardencanvas.words.plain import Measure

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

    def __init__(self, window: QWidget) -> None:
        super().__init__(window)
        self._window = window

    def opened(self, path: Path) -> Session | None:
        """A session on the file; None, after telling why, if it is refused."""
        try:
            session = Session(open_garden(path), path)
        except FileRefused as error:
            tell(self._window, self.tr("This file cannot be opened"), str(error))
            return None
        settings.remember_file(path)
        return session

    def save(self, session: Session) -> bool:
        """Save to the session's own file; asks for one where it has none."""
        return self._written(session, session.path) if session.path else self.save_as(session)

    def save_as(self, session: Session) -> bool:
        """Ask for a file and save to it."""
        suggested = session.path or Path(_file_name(session.garden.name))
        path = ask_save(self._window, str(suggested))
        return path is not None and self._written(session, path)

    def save_picture(self, session: Session) -> None:
        """Ask for a file and write the plan on the date cursor to it, as PNG or SVG."""
        kinds = self.tr("Picture (*.png);;Drawing (*.svg)")
        suggested = f"{Path(_file_name(session.garden.name)).stem}.png"
        name, _ = QFileDialog.getSaveFileName(self._window, self.tr("Save a picture"), suggested, kinds)
        if not name:
            return
        from gardencanvas.canvas.picture import write_picture  # not needed to start

        path = Path(name) if Path(name).suffix.lower() in {".png", ".svg"} else Path(name + ".png")
        try:
            write_picture(session.garden, session.layout_id, path, session.on)
        except CannotWrite as error:
            tell(self._window, self.tr("The picture is not saved"), str(error))

    def save_bedmap(self, session: Session, measure: Measure) -> None:
        """Ask for a file and write the bed map of the shown layout to it."""
        suggested = f"{Path(_file_name(session.garden.name)).stem}.pdf"
        name, _ = QFileDialog.getSaveFileName(
            self._window, self.tr("Save the bed map"), suggested, self.tr("Bed map (*.pdf)")
        )
        if not name:
            return
        from gardencanvas.paper.bedmap import Plan, write_bedmap  # not needed to start

        path = Path(name) if Path(name).suffix.lower() == ".pdf" else Path(name + ".pdf")
        plan = Plan(session.garden, session.layout, session.report, session.catalogue, measure, session.on)
        try:
            write_bedmap(plan, path)
        except CannotWrite as error:
            tell(self._window, self.tr("The bed map is not saved"), str(error))

    def may_leave(self, session: Session) -> bool:
        """Whether the session may go: saved, or given up by the grower."""
        if not session.unsaved:
            return True
        answer = ask_unsaved(self._window, session.garden.name)
        if answer == QMessageBox.StandardButton.Save:
            return self.save(session)
        return answer == QMessageBox.StandardButton.Discard

    def _written(self, session: Session, path: Path) -> bool:
        try:
            session.save(path)
        except CannotWrite as error:
            tell(
                self._window,
                self.tr("The garden is not saved"),
                self.tr(
                    "{0} Your changes are still here; save under another name or in another folder."
                ).format(error),
            )
            return False
        settings.remember_file(path)
        return True


def _file_name(name: str) -> str:
    kept = "".join(c if c.isalnum() or c in " -_" else "-" for c in name).strip() or "garden"
    return kept[:80] + SUFFIX
