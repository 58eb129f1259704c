"""What all forms for a grower's own records share: sections, a line that says what is wrong, save."""

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtWidgets import (
    QComboBox,
    QDialog,
    QDialogButtonBox,
    QHBoxLayout,
    QLineEdit,
    QPushButton,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from gardencanvas.app.keeping import GARDEN, LIBRARY
from gardencanvas.app.labels import PlainLabel
from gardencanvas.app.own_form.fields import Captioned
from gardencanvas.crops.model import Record


class OwnForm(QDialog):
    """A form that can be saved only while it is sound; ``wanted`` brings the record and where to keep it.

    Whoever keeps it calls ``accept``, or ``refuse`` with a sentence.
    """

    wanted = Signal(object, str)  # record, GARDEN or LIBRARY

    def __init__(self, title: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWindowTitle(title)
        self.setMinimumSize(QSize(320, 300))
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(16, 14, 16, 12)
        self._column.setSpacing(8)
        self._scroll = QScrollArea()
        self._scroll.setWidgetResizable(True)
        self._scroll.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self._scroll.setProperty("role", "panel")
        inside = QWidget()
        self.body = QVBoxLayout(inside)
        self.body.setContentsMargins(14, 12, 14, 12)
        self.body.setSpacing(8)
        self._scroll.setWidget(inside)
        self._column.addWidget(self._scroll, 1)
        self.fault_line = PlainLabel(role="fault")
        self.fault_line.setAccessibleName(self.tr("What is missing or wrong"))
        self._column.addWidget(self.fault_line)
        self._column.addLayout(self._bottom())

    def _bottom(self) -> QHBoxLayout:
        row = QHBoxLayout()
        self.where = QComboBox()
        self.where.addItem(self.tr("in this garden"), GARDEN)
        self.where.addItem(self.tr("in my library, for all gardens"), LIBRARY)
        self._where = Captioned(self.tr("Keep it"), self.where)
        row.addWidget(self._where)
        row.addStretch(1)
        buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Cancel)
        self.save = QPushButton(self.tr("Save"))
        self.save.setDefault(True)
        buttons.addButton(self.save, QDialogButtonBox.ButtonRole.AcceptRole)
        buttons.accepted.connect(self._save)
        buttons.rejected.connect(self.reject)
        row.addWidget(buttons)
        return row

    def heading(self, text: str) -> None:
        """Begin a section."""
        self.body.addSpacing(4)
        self.body.addWidget(PlainLabel(text, "heading"))

    def keep_where(self, where: str | None) -> None:
        """Propose a place; None: there is no choice, the library holds it."""
        self.where.setCurrentIndex(self.where.findData(where or LIBRARY))
        self._where.setVisible(where is not None)

    # checking

    def drafted(self) -> tuple[Record | None, str]:
        """The record as it stands in the form, and what is wrong with it; for a form to say."""
        raise TypeError(f"{type(self).__name__} says nothing of its record")

    def check(self, *_: object) -> None:
        """Say what is wrong, and let it be saved where nothing is."""
        record, fault = self.drafted()
        self.fault_line.setText(fault[:1].upper() + fault[1:] + "." if fault else "")
        self.save.setEnabled(record is not None and not fault)
        self.save.setToolTip(self.fault_line.text())

    def refuse(self, sentence: str) -> None:
        """Say why it could not be kept; the form stays open."""
        self.fault_line.setText(sentence)

    def _save(self) -> None:
        record, fault = self.drafted()
        if record is not None and not fault:
            self.wanted.emit(record, self.where.currentData())

    def finish(self, first: QLineEdit) -> None:
        """Size the form to what it holds and put the cursor into its first field."""
        inside = self._scroll.widget()
        if inside is not None:
            width = max(inside.sizeHint().width() + 60, 420)
            self.resize(width, min(inside.sizeHint().height() + 165, 720))
        first.setFocus(Qt.FocusReason.OtherFocusReason)
        self.check()
