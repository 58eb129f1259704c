"""The row of tools above the plan."""

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QButtonGroup, QComboBox, QHBoxLayout, QToolButton, QWidget

from gardencanvas.app.name_box import NameBox
from gardencanvas.app.session import Session
from gardencanvas.canvas.view import PlanView


class ToolRow(QWidget):
    """Select, draw, measure; and what a crop is dropped as."""

    def __init__(self, view: PlanView, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._view, self._session = view, session
        row = QHBoxLayout(self)
        row.setContentsMargins(6, 2, 6, 0)
        row.setSpacing(4)
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
            button.setToolTip(f"{text} ({keys})")
            button.setProperty("tool", tool)
            button.clicked.connect(self._chosen)
            self._group.addButton(button)
            self.buttons[tool] = button
            row.addWidget(button)
        self.buttons["select"].setChecked(True)
        row.addSpacing(12)
        self.layouts = NameBox()
        self.layouts.setAccessibleName(self.tr("Layout shown"))
        self.layouts.setMaximumWidth(260)
        self.layouts.setMinimumContentsLength(10)
        self.layouts.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToContents)
        self.layouts.activated.connect(self._layout_chosen)
        row.addStretch(1)
        row.addWidget(self.layouts)
        fit = QToolButton()
        fit.setText(self.tr("Fit"))
        fit.setToolTip(self.tr("Fit the plan (Ctrl+9)"))
        fit.clicked.connect(view.fit)
        row.addWidget(fit)
        view.tool_changed.connect(self._follow)
        session.changed.connect(self._refill)
        session.layout_changed.connect(self._refill)
        self._refill()

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
        self.layouts.setToolTip(self.tr("Layout shown: {0}").format(self.layouts.currentText()))

    def _layout_chosen(self) -> None:
        self._session.show_layout(self.layouts.currentData())
