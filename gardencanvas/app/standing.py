"""A word in the status bar on how safe the garden is: saved, edits kept, read-only, or not kept and why."""

from PySide6.QtCore import QObject, Qt
from PySide6.QtWidgets import QLabel, QWidget

from gardencanvas.app.labels import as_plain
from gardencanvas.app.safekeeping import Safekeeping
from gardencanvas.files.keeping.autosave import State


class StandingLabel(QLabel):
    """Follows the safekeeping of the window's session."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._keeping: Safekeeping | None = None
        self.setTextFormat(Qt.TextFormat.PlainText)
        self.setProperty("role", "quiet")
        self.setContentsMargins(8, 0, 12, 0)

    def follow(self, keeping: Safekeeping) -> None:
        """Show how this one's work stands from now on."""
        self._keeping = keeping
        keeping.stood.connect(self._show)
        keeping.read_only_changed.connect(self._show)
        keeping.session.unsaved_changed.connect(self._show)
        keeping.session.path_changed.connect(self._show)
        self._show()

    def _show(self, *_: object) -> None:
        keeping, sender = self._keeping, self.sender()
        if keeping is None or (isinstance(sender, QObject) and sender not in (keeping, keeping.session)):
            return
        text, why = self._words(keeping)
        failed = keeping.standing is not None and keeping.standing.state is State.FAILED
        role = "warning" if failed or keeping.read_only else "quiet"
        if self.property("role") != role:
            self.setProperty("role", role)
            self.style().polish(self)
        if keeping.read_only:
            text = self.tr("Read-only · {0}").format(text) if text else self.tr("Read-only")
        self.setText(text)
        self.setToolTip(as_plain(why))
        self.setAccessibleName(f"{text}. {why}" if why else text)

    def _words(self, keeping: Safekeeping) -> tuple[str, str]:
        standing = keeping.standing
        if standing is not None and standing.state is State.FAILED:
            return self.tr("Edits are not kept"), standing.why
        if not keeping.session.unsaved:
            return (self.tr("Saved"), "") if keeping.session.path else ("", "")
        if standing is None or standing.state in (State.WAITING, State.IDLE):
            return self.tr("Keeping edits…"), ""
        return (
            self.tr("Edits kept {0}").format(f"{standing.when:%H:%M:%S}"),
            self.tr("Not saved to the file yet; a copy on this computer is offered if the program ends."),
        )
