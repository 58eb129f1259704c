"""All layouts of the garden: shown, copied, named, kept, taken away; each one undo step."""

from collections.abc import Callable
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QDialog,
    QDialogButtonBox,
    QFormLayout,
    QHBoxLayout,
    QLineEdit,
    QPlainTextEdit,
    QPushButton,
    QTreeWidget,
    QTreeWidgetItem,
    QVBoxLayout,
)

from gardencanvas.app.labels import PlainLabel
from gardencanvas.app.number_fields import WholeField
from gardencanvas.garden import layouts
from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.garden import Garden
from gardencanvas.words.plain import counted
from gardencanvas.words.refusals import why_refused

if TYPE_CHECKING:
    from gardencanvas.app.window import MainWindow

_ID = Qt.ItemDataRole.UserRole
Made = Garden | tuple[Garden, str]


class LayoutsDialog(QDialog):
    """A list of layouts with what each is for; everything done in it can be undone."""

    def __init__(self, window: "MainWindow") -> None:
        super().__init__(window)
        self._window, self._session = window, window.session
        self.setWindowTitle(self.tr("Layouts"))
        self.resize(640, 460)
        column = QVBoxLayout(self)
        self.list = QTreeWidget()
        self.list.setHeaderLabels([self.tr("Layout"), self.tr("Year"), self.tr("Plantings"), self.tr("Kept")])
        self.list.setRootIsDecorated(False)
        self.list.setAccessibleName(self.tr("Layouts"))
        self.list.currentItemChanged.connect(self._read)
        self.list.itemActivated.connect(self._show)
        column.addWidget(self.list, 1)
        form = QFormLayout()
        self.name = QLineEdit()
        self.name.setMaxLength(200)
        self.note = QPlainTextEdit()
        self.note.setMaximumHeight(64)
        self.note.setTabChangesFocus(True)
        self.year = WholeField()
        self.year.setRange(1900, 2200)
        form.addRow(self.tr("&Name"), self.name)
        form.addRow(self.tr("&Why it is there"), self.note)
        form.addRow(self.tr("&Year of a copy"), self.year)
        column.addLayout(form)
        column.addLayout(self._buttons())
        self.said = PlainLabel("", "quiet")
        column.addWidget(self.said)
        close = QDialogButtonBox(QDialogButtonBox.StandardButton.Close)
        close.rejected.connect(self.reject)
        column.addWidget(close)
        self._session.changed.connect(self._refill)
        self._session.layout_changed.connect(self._refill)
        self._refill()

    def _buttons(self) -> QHBoxLayout:
        row = QHBoxLayout()
        self.buttons: dict[str, QPushButton] = {}
        for name, text, tip, do in (
            ("show", self.tr("&Show"), self.tr("Show it on the plan"), self._show),
            ("name", self.tr("&Rename"), self.tr("Take over name and note"), self._rename),
            ("copy", self.tr("&Duplicate"), self.tr("A copy to try things in, named as above"), self._copy),
            (
                "year",
                self.tr("Copy for the y&ear"),
                self.tr("A copy with all dates in that year"),
                self._for_year,
            ),
            (
                "empty",
                self.tr("Beds &only"),
                self.tr("A new one for that year without plantings"),
                self._empty,
            ),
            ("keep", self.tr("&Keep"), self.tr("Mark as the one kept of its year, or no longer"), self._keep),
            ("delete", self.tr("De&lete"), self.tr("Take it away; undo brings it back"), self._delete),
        ):
            button = QPushButton(text)
            button.setToolTip(tip)
            button.setAutoDefault(False)
            button.clicked.connect(lambda _=False, do=do: do())
            self.buttons[name] = button
            row.addWidget(button)
        return row

    def _refill(self, *_: object) -> None:
        chosen = self._chosen() or self._session.layout_id
        self.list.blockSignals(True)
        self.list.clear()
        for layout in self._session.garden.layouts:
            shown = layout.id == self._session.layout_id
            name = self.tr("{0} (shown)").format(layout.name) if shown else layout.name
            kept = self.tr("kept") if layout.kept else ""
            line = QTreeWidgetItem([name, str(layout.year), str(len(layout.plantings)), kept])
            line.setData(0, _ID, layout.id)
            line.setToolTip(0, layout.note.replace("<", "‹"))
            self.list.addTopLevelItem(line)
            if layout.id == chosen:
                self.list.setCurrentItem(line)
        self.list.blockSignals(False)
        if self.list.currentItem() is None:
            self.list.setCurrentItem(self.list.topLevelItem(0))
        self.list.resizeColumnToContents(0)
        self._read()

    def _chosen(self) -> str | None:
        item = self.list.currentItem()
        return item.data(0, _ID) if item is not None else None

    def _read(self, *_: object) -> None:
        chosen = self._chosen()
        if chosen is None:
            return
        layout = self._session.garden.layout(chosen)
        self.name.setText(layout.name)
        self.note.setPlainText(layout.note)
        self.year.setValue(layout.year + 1)
        self.buttons["keep"].setText(self.tr("Keep no &longer") if layout.kept else self.tr("&Keep"))
        alone = len(self._session.garden.layouts) == 1
        self.buttons["delete"].setEnabled(not alone)
        why = (
            self.tr("A garden has at least one layout")
            if alone
            else self.tr("Take it away; undo brings it back")
        )
        self.buttons["delete"].setToolTip(why)

    # what is done

    def _do(self, text: str, edit: Callable[[], Made], *, show: bool = False) -> None:
        """One edit, or a refusal in words; ``edit`` gives a garden, or a garden and the id of what is new."""
        try:
            made = edit()
        except Refusal as refusal:
            self.said.setText(why_refused(refusal))
            return
        after: Garden = made[0] if isinstance(made, tuple) else made
        if self._session.propose(after, text) and show and isinstance(made, tuple):
            self._session.show_layout(made[1])
            self._go_to(made[1])
        self.said.setText(self.tr("{0}. Undo takes it back.").format(text))

    def _go_to(self, layout_id: str) -> None:
        for row in range(self.list.topLevelItemCount()):
            item = self.list.topLevelItem(row)
            if item.data(0, _ID) == layout_id:
                self.list.setCurrentItem(item)

    def _fresh_name(self) -> str:
        """What is typed, or a name that differs from all there are."""
        typed = self.name.text().strip()
        names = {x.name for x in self._session.garden.layouts}
        if typed and typed not in names:
            return typed
        base, number = typed or self.tr("Layout"), 2
        while f"{base} {number}" in names:
            number += 1
        return f"{base} {number}"

    def _show(self, *_: object) -> None:
        chosen = self._chosen()
        if chosen is not None:
            self._session.show_layout(chosen)

    def _rename(self) -> None:
        name, note = self.name.text().strip() or self.tr("Layout"), self.note.toPlainText().strip()
        garden, chosen = self._session.garden, self._chosen()
        if chosen is not None:
            self._do(self.tr("Rename layout"), lambda: layouts.renamed(garden, chosen, name, note))

    def _copy(self) -> None:
        garden, chosen, name = self._session.garden, self._chosen(), self._fresh_name()
        if chosen is not None:
            note = self.note.toPlainText().strip()
            text = self.tr("Duplicate layout")
            self._do(text, lambda: layouts.duplicated(garden, chosen, name, note), show=True)

    def _for_year(self) -> None:
        garden, chosen, name = self._session.garden, self._chosen(), self.name.text().strip()
        if chosen is not None:
            text = self.tr("Copy layout for {0}").format(self.year.value())
            self._do(
                text, lambda: layouts.for_year(garden, chosen, name or "Layout", self.year.value()), show=True
            )

    def _empty(self) -> None:
        garden, chosen, name = self._session.garden, self._chosen(), self._fresh_name()
        if chosen is not None:
            text = self.tr("New layout for {0}").format(self.year.value())
            self._do(text, lambda: layouts.with_empty(garden, name, self.year.value(), chosen), show=True)

    def _keep(self) -> None:
        garden, chosen = self._session.garden, self._chosen()
        if chosen is not None:
            on = not garden.layout(chosen).kept
            text = self.tr("Keep layout") if on else self.tr("Keep layout no longer")
            self._do(text, lambda: layouts.kept(garden, chosen, on=on))

    def _delete(self) -> None:
        garden, chosen = self._session.garden, self._chosen()
        if chosen is not None:
            layout = garden.layout(chosen)
            plantings = counted(len(layout.plantings), self.tr("planting"), self.tr("plantings"))
            text = self.tr("Delete layout {0} ({1})").format(layout.name, plantings)
            self._do(text, lambda: layouts.without(garden, chosen))
