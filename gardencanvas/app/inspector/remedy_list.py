"""The remedies of one finding, as buttons: hovering tries one out, a click makes the change."""

from PySide6.QtCore import QEvent, QRect, QSize, Qt, Signal
from PySide6.QtGui import QEnterEvent, QFocusEvent, QPaintEvent, QPalette
from PySide6.QtWidgets import (
    QPushButton,
    QSizePolicy,
    QStyle,
    QStyleOptionButton,
    QStylePainter,
    QVBoxLayout,
    QWidget,
)

from gardencanvas.app.labels import PlainLabel
from gardencanvas.app.session import Session
from gardencanvas.fit.report import Finding, Remedy
from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.garden import Garden
from gardencanvas.words.plain import Measure
from gardencanvas.words.refusals import why_refused
from gardencanvas.words.remedies import remedy_text

_BESIDE, _ABOVE = 10, 6  # padding
_WRAPPED = Qt.TextFlag.TextWordWrap | Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter
_BY_KEY = (Qt.FocusReason.TabFocusReason, Qt.FocusReason.BacktabFocusReason)


class RemedyButton(QPushButton):
    """A button whose text wraps and is never read as markup or mnemonic."""

    tried = Signal(bool)  # the mouse or the keyboard came to it, or left

    def __init__(self, said: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.said = said
        self.setAccessibleName(said)
        self.setProperty("role", "remedy")
        policy = QSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Minimum)
        policy.setHeightForWidth(True)
        self.setSizePolicy(policy)

    def hasHeightForWidth(self) -> bool:
        return True

    def heightForWidth(self, width: int) -> int:
        room = QRect(0, 0, max(width - 2 * _BESIDE, 1), 10_000)
        return self.fontMetrics().boundingRect(room, int(_WRAPPED), self.said).height() + 2 * _ABOVE

    def sizeHint(self) -> QSize:
        width = self.fontMetrics().horizontalAdvance(self.said) + 2 * _BESIDE
        return QSize(width, self.heightForWidth(width))

    def minimumSizeHint(self) -> QSize:
        return QSize(40, self.fontMetrics().height() + 2 * _ABOVE)

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QStylePainter(self)
        option = QStyleOptionButton()
        self.initStyleOption(option)
        painter.drawControl(QStyle.ControlElement.CE_PushButton, option)
        painter.setPen(self.palette().color(QPalette.ColorRole.ButtonText))
        inside = self.rect().adjusted(_BESIDE, 0, -_BESIDE, 0)
        painter.drawText(inside, int(_WRAPPED), self.said)
        painter.end()

    def enterEvent(self, event: QEnterEvent) -> None:
        super().enterEvent(event)
        self.tried.emit(True)

    def leaveEvent(self, event: QEvent) -> None:
        super().leaveEvent(event)
        self.tried.emit(False)

    def focusInEvent(self, event: QFocusEvent) -> None:
        super().focusInEvent(event)
        if event.reason() in _BY_KEY:
            self.tried.emit(True)

    def focusOutEvent(self, event: QFocusEvent) -> None:
        super().focusOutEvent(event)
        self.tried.emit(False)


class RemedyList(QWidget):
    """Remedies of one finding of the committed garden."""

    trying = Signal(bool)  # a remedy is being tried out, or no longer

    def __init__(
        self, session: Session, finding: Finding, measure: Measure, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self.finding = finding
        self.buttons: list[RemedyButton] = []
        self._session, self._measure = session, measure
        self._garden, self._layout_id = session.garden, session.layout_id
        self._tried: RemedyButton | None = None
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(0, 3, 0, 2)
        self._column.setSpacing(4)
        self.line = PlainLabel(self.tr("Looking for a small change that mends this …"), "quiet")
        self._column.addWidget(self.line)

    def show_remedies(self, remedies: tuple[Remedy, ...]) -> None:
        """Show what was found."""
        self.line.setVisible(not remedies)
        if not remedies:
            self.line.setText(self.tr("No small change mends this."))
        for remedy in remedies:
            self._add(remedy)

    def _add(self, remedy: Remedy) -> None:
        known = self._session.catalogue
        said = remedy_text(remedy, self.finding, self._garden, self._layout_id, known, self._measure)
        button = RemedyButton(said)
        button.tried.connect(lambda on: self._try_out(button, remedy, on))
        button.clicked.connect(lambda: self._make(button, remedy))
        self._column.addWidget(button)
        self.buttons.append(button)

    def _try_out(self, button: RemedyButton, remedy: Remedy, on: bool) -> None:
        if on:
            after = self._after(remedy)
            if after is not None:
                self._tried = button
                self.trying.emit(True)
                self._session.preview(after)
        elif self._tried is button:
            self.stop()

    def stop(self) -> None:
        """End trying out, if a remedy is being tried out."""
        if self._tried is not None:
            self._tried = None
            self.trying.emit(False)
            self._session.preview(None)

    def _make(self, button: RemedyButton, remedy: Remedy) -> None:
        after = self._after(remedy)
        if after is not None:
            self.stop()
            self._session.propose(after, button.said)

    def _after(self, remedy: Remedy) -> Garden | None:
        """The garden with the remedy; None if it is another garden by now, or refuses it."""
        session = self._session
        if session.garden is not self._garden or session.layout_id != self._layout_id:
            return None
        from gardencanvas.planner.remedies import apply  # not needed to start

        try:
            return apply(session.garden, session.layout_id, remedy)
        except Refusal as error:
            session.refused.emit(why_refused(error))
            return None
