"""The row of tools above the plan."""

from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QKeySequence, QResizeEvent
from PySide6.QtWidgets import QBoxLayout, QButtonGroup, QComboBox, QHBoxLayout, QToolButton, QWidget

from gardencanvas.app.labels import as_plain
from gardencanvas.app.name_box import NameBox
from gardencanvas.app.session import Session
from gardencanvas.canvas.view import PlanView

_ASIDE = 12
_NATIVE = QKeySequence.SequenceFormat.NativeText


class ToolRow(QWidget):
    """Select, draw, measure; and the layout shown, on a second line where one has no room."""

    def __init__(self, view: PlanView, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._view, self._session = view, session
        self._line = QBoxLayout(QBoxLayout.Direction.LeftToRight, self)
        self._line.setContentsMargins(6, 2, 6, 0)
        self._line.setSpacing(4)
        row, self._right = QHBoxLayout(), QHBoxLayout()
        self._line.addLayout(row)
        self._line.addLayout(self._right)
        self._tools = row
        self._group = QButtonGroup(self)
        self._group.setExclusive(True)
        self.buttons: dict[str, QToolButton] = {}
        for tool, text, keys in (
            ("select", self.tr("Select"), "V"),
            ("bed", self.tr("Bed"), "B"),
            ("polygon", self.tr("Corners"), "Shift+B"),
            ("measure", self.tr("Measure"), "M"),
        ):
            button = QToolButton()
            button.setText(text)
            button.setCheckable(True)
            button.setToolTip(f"{text} ({QKeySequence(keys).toString(_NATIVE)})")
            button.setProperty("tool", tool)
            button.clicked.connect(self._chosen)
            self._group.addButton(button)
            self.buttons[tool] = button
            row.addWidget(button)
        self.buttons["select"].setChecked(True)
        row.addStretch(1)
        self.layouts = NameBox()
        self.layouts.setAccessibleName(self.tr("Layout shown"))
        self.layouts.setMaximumWidth(260)
        self.layouts.setMinimumContentsLength(6)
        self.layouts.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToContents)
        self.layouts.activated.connect(self._layout_chosen)
        self._right.addStretch(1)
        self._right.addWidget(self.layouts)
        fit = QToolButton()
        fit.setText(self.tr("Fit"))
        fit.setToolTip(self.tr("Fit the plan (Ctrl+9)"))
        fit.clicked.connect(view.fit)
        self._right.addWidget(fit)
        view.tool_changed.connect(self._follow)
        session.changed.connect(self._refill)
        session.layout_changed.connect(self._refill)
        self._refill()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        wanted = self._tools.sizeHint().width() + self._right.minimumSize().width() + 2 * _ASIDE
        narrow = wanted > self.width()
        across, down = QBoxLayout.Direction.LeftToRight, QBoxLayout.Direction.TopToBottom
        self._line.setDirection(down if narrow else across)

    def minimumSizeHint(self) -> QSize:
        """As for two lines: words of another language may be long."""
        return QSize(self._tools.minimumSize().width() + _ASIDE, super().minimumSizeHint().height())

    def _chosen(self) -> None:
        button = self.sender()
        if isinstance(button, QToolButton):
            self._view.set_tool(button.property("tool"))
            self._view.setFocus(Qt.FocusReason.OtherFocusReason)

    def _follow(self, tool: str) -> None:
        if tool in self.buttons:
            self.buttons[tool].setChecked(True)

    def _refill(self, *_: object) -> None:
        names = [(f"{x.name}, {x.year}", x.id) for x in self._session.garden.layouts]
        shown = [(self.layouts.itemText(i), self.layouts.itemData(i)) for i in range(self.layouts.count())]
        if names != shown:
            self.layouts.clear()
            for name, layout_id in names:
                self.layouts.addItem(name, layout_id)
        self.layouts.setCurrentIndex(self.layouts.findData(self._session.layout_id))
        shown = self.tr("Layout shown: {0}").format(self.layouts.currentText())
        self.layouts.setToolTip(as_plain(shown))

    def _layout_chosen(self) -> None:
        self._session.show_layout(self.layouts.currentData())
