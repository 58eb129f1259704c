"""A button in the status bar that says that something is hidden, and shows it again."""

from PySide6.QtWidgets import QToolButton, QWidget

from gardencanvas.app.session import Session
from gardencanvas.canvas.hidden import Hidden


class HiddenLabel(QToolButton):
    """Stands there while something of the plan is hidden, so that nobody looks for it in vain."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session: Session | None = None
        self.setText(self.tr("Something is hidden · show it"))
        self.setToolTip(self.tr("Show everything (Ctrl+Shift+H)"))
        self.setProperty("role", "small")
        self.clicked.connect(self._show_all)
        self.hide()

    def follow(self, session: Session) -> None:
        """Speak of this session from now on."""
        self._session = session
        session.hidden_changed.connect(self._hid)
        self.setVisible(bool(session.hidden))

    def _hid(self, hidden: Hidden) -> None:
        self.setVisible(bool(hidden))

    def _show_all(self) -> None:
        if self._session is not None:
            self._session.hide(Hidden())
