"""Labels that show the grower's words as they are: plain text, elided with the whole on hover."""

from html import escape
from textwrap import wrap

from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QPainter, QPaintEvent, QPalette, QResizeEvent
from PySide6.QtWidgets import QGridLayout, QLabel, QSizePolicy, QWidget

from gardencanvas.fit.report import Verdict
from gardencanvas.words import named


class PlainLabel(QLabel):
    """Wrapping text, never read as markup; ``role`` names its place in the style sheet."""

    def __init__(self, text: str = "", role: str = "body", parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setTextFormat(Qt.TextFormat.PlainText)
        self.setWordWrap(True)
        self.setProperty("role", role)
        self.setIndent(0)
        self.setMinimumWidth(1)  # it wraps or is cut rather than pushing its panel wide
        self.setText(text)


class ElidedLabel(QWidget):
    """One line that ends in an ellipsis where there is no room; the whole text on hover."""

    def __init__(self, text: str = "", role: str = "body", parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._text = text
        self.setProperty("role", role)
        self.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Fixed)
        self.setText(text)

    def setText(self, text: str) -> None:
        """Show another text."""
        self._text = text
        self.setAccessibleName(text)
        self._hint()
        self.update()

    def text(self) -> str:
        """The whole text."""
        return self._text

    def sizeHint(self) -> QSize:
        metrics = self.fontMetrics()
        return QSize(metrics.horizontalAdvance(self._text), metrics.height() + 2)

    def minimumSizeHint(self) -> QSize:
        return QSize(40, self.fontMetrics().height() + 2)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._hint()

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setPen(self.palette().color(QPalette.ColorRole.WindowText))
        shown = self.fontMetrics().elidedText(self._text, Qt.TextElideMode.ElideRight, self.width())
        painter.drawText(self.rect(), Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft, shown)
        painter.end()

    def _hint(self) -> None:
        cut = self.fontMetrics().horizontalAdvance(self._text) > self.width()
        self.setToolTip(as_plain(self._text) if cut else "")


def as_plain(text: str) -> str:
    """A tooltip that Qt will not take for markup; long lines are broken."""
    lines = [part for line in text.split("\n") for part in wrap(line, 80) or [""]]
    if "<" not in text:
        return "\n".join(lines)
    return f"<span>{'<br>'.join(escape(line, quote=False) for line in lines)}</span>"


class Pill(QLabel):
    """A verdict in a coloured capsule, its word in it."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setTextFormat(Qt.TextFormat.PlainText)
        self.setSizePolicy(QSizePolicy.Policy.Maximum, QSizePolicy.Policy.Fixed)
        self.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self.setProperty("role", "pill")

    def show_verdict(self, verdict: Verdict) -> None:
        """Show one of the four words."""
        self.setText(verdict_word(verdict))
        self.setProperty("verdict", verdict.word)
        self.style().unpolish(self)
        self.style().polish(self)


def verdict_word(verdict: Verdict) -> str:
    """The verdict as the grower reads it."""
    return named.verdict(verdict)


class ValueTable(QWidget):
    """Rows of a quiet label and a firm value; the value tells its source on hover."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(0, 0, 0, 0)
        self._grid.setHorizontalSpacing(12)
        self._grid.setVerticalSpacing(4)
        self._grid.setColumnStretch(1, 1)

    def show_rows(self, rows: list[tuple[str, str, str]]) -> None:
        """Rows of (label, value, source shown on hover)."""
        while self._grid.count():
            item = self._grid.takeAt(0)
            if item is not None and (widget := item.widget()) is not None:
                widget.hide()  # without a parent it would flash up as a window of its own
                widget.setParent(None)
                widget.deleteLater()
        for number, (name, value, source) in enumerate(rows):
            label = PlainLabel(name, "quiet")
            label.setWordWrap(False)
            label.setAlignment(Qt.AlignmentFlag.AlignTop)
            shown = PlainLabel(value, "value")
            shown.setToolTip(as_plain(source))
            shown.setAccessibleName(f"{name}: {value}")
            shown.setAccessibleDescription(source)
            self._grid.addWidget(label, number, 0)
            self._grid.addWidget(shown, number, 1)
