"""Beds from the file of another program: listed, and shown on the plan, before they come in."""

from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication, QRectF, Qt, QTimer
from PySide6.QtWidgets import (
    QComboBox,
    QDialog,
    QDialogButtonBox,
    QFileDialog,
    QHeaderView,
    QLineEdit,
    QTreeWidget,
    QTreeWidgetItem,
)

from gardencanvas.app.labels import PlainLabel
from gardencanvas.app.meanwhile import meanwhile
from gardencanvas.app.preview_dialog import PreviewDialog
from gardencanvas.canvas.look import CM
from gardencanvas.canvas.naming import next_bed_name
from gardencanvas.canvas.typed import length_m
from gardencanvas.files.outlines.geojson import Polygons
from gardencanvas.files.outlines.outline import Drawn, Outline, bed_of_outline, moved
from gardencanvas.files.outlines.reading import SUFFIXES, read_outlines
from gardencanvas.files.outlines.refusing import OutlinesRefused, Why
from gardencanvas.files.outlines.svg import Drawing
from gardencanvas.garden import edits
from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.garden import Garden
from gardencanvas.garden.ground import Bed
from gardencanvas.garden.places import bounds
from gardencanvas.words import outlines as words
from gardencanvas.words.plain import Measure

if TYPE_CHECKING:
    from gardencanvas.app.window import MainWindow

_WIDTH_M = 10.0  # shown until the grower types a width that was measured: a guess, and called one
_LEAST_PAPER_M = 1.0  # a drawing wider than this on paper is drawn at its true size
_GAP_M = 1.0  # beside what is drawn already
translate = QCoreApplication.translate


def ask(window: "MainWindow") -> None:
    """Ask for a file and show what would come in."""
    patterns = " ".join(f"*{suffix}" for suffix in SUFFIXES)
    name, _ = QFileDialog.getOpenFileName(
        window,
        translate("BedsFromFile", "Beds from a file"),
        "",
        translate("BedsFromFile", "Maps and drawings ({0})").format(patterns),
    )
    if name:
        show(window, Path(name))


def show(window: "MainWindow", path: Path) -> None:
    """Show what would come in of a file; a refusal is told in the status bar."""
    try:
        source = meanwhile(
            window, translate("BedsFromFile", "Reading the outlines…"), lambda: read_outlines(path)
        )
    except OutlinesRefused as refused:
        window.session.refused.emit(words.refused(refused, path.name, Measure(window.units)))
        return
    dialog = BedsDialog(window, path.name, source)
    dialog.exec()
    dialog.deleteLater()


class BedsDialog(PreviewDialog):
    """Their size or meaning in a field, the outlines in a list with boxes to tick."""

    def __init__(self, window: "MainWindow", name: str, source: Polygons | Drawing) -> None:
        super().__init__(window, window.tr("Beds from a file"))
        self._name, self._source = name, source
        self._measure = Measure(window.units)
        self._drawn: Drawn | None = None
        self._beds: tuple[Bed, ...] = ()
        self._corner = self._beside()
        self._first = True
        self.width_: QLineEdit | None = None
        self.numbers: QComboBox | None = None
        if isinstance(source, Drawing):
            self._ask_width(source)
        else:
            self._ask_numbers(source)
        self.list = QTreeWidget()
        self.list.setColumnCount(3)
        self.list.setHeaderLabels([self.tr("Bed"), self.tr("Size"), self.tr("Area")])
        self.list.setRootIsDecorated(False)
        self.list.setUniformRowHeights(True)
        self.list.setMinimumSize(440, 180)
        self.list.setAccessibleName(self.tr("Outlines that can become beds"))
        header = self.list.header()
        header.setStretchLastSection(False)
        header.setSectionResizeMode(0, QHeaderView.ResizeMode.Stretch)
        for column in (1, 2):
            header.setSectionResizeMode(column, QHeaderView.ResizeMode.ResizeToContents)
        self.list.itemChanged.connect(self._soon.ask)
        self.passed = PlainLabel(role="quiet")
        column = self.layout()
        column.insertWidget(column.count() - 2, self.list, 1)
        column.insertWidget(column.count() - 2, self.passed)

    def _ask_width(self, source: Drawing) -> None:
        """A drawing does not say how large it is on the ground."""
        paper = source.paper_width_m
        usual = paper if paper is not None and _LEAST_PAPER_M <= paper <= 1000 else _WIDTH_M
        self.width_ = QLineEdit(self._measure.large(usual))
        self.width_.setAccessibleName(self.tr("Width of all outlines together on the ground"))
        self.add(self.tr("All together are wide"), self.width_, self.width_.textChanged)
        told = self.tr("Type the width that was measured: the drawing does not give it.")
        if usual == paper:
            told = self.tr("As drawn, at its true size.")
        elif paper is not None:
            told = self.tr("On its sheet the drawing is {0} wide. Type the width on the ground.").format(
                self._measure.small(paper)
            )
        self.layout().insertWidget(1, PlainLabel(told, "hint"))

    def _ask_numbers(self, source: Polygons) -> None:
        """What the numbers of a map mean, as far as they can be read either way."""
        self.numbers = QComboBox()
        if source.may_be_degrees:
            self.numbers.addItem(self.tr("longitude and latitude"), "degrees")
        self.numbers.addItem(self.tr("metres to the east and north"), "metres")
        metres = source.says_metres or not source.may_be_degrees or self._too_wide(source)
        self.numbers.setCurrentIndex(self.numbers.findData("metres" if metres else "degrees"))
        self.numbers.setAccessibleName(self.tr("What the numbers of the map mean"))
        self.add(self.tr("Its numbers are"), self.numbers, self.numbers.currentIndexChanged)

    def _too_wide(self, source: Polygons) -> bool:
        """Whether as degrees they would reach farther than a garden: then they are metres."""
        try:
            source.drawn(degrees=True)
        except OutlinesRefused as refused:
            return refused.why is Why.TOO_WIDE
        return False

    def _beside(self) -> tuple[float, float]:
        """Where the upper left corner of the box round all comes to lie: right of what is drawn already."""
        items = [*self.session.layout.items(), *self.session.garden.fixtures]
        if not items:
            return 0.0, 0.0
        _x0, y0, x1, _y1 = bounds(items)
        return round(x1 + _GAP_M, 1), round(y0, 1)

    # what would be

    def _read(self) -> Drawn:
        """The outlines as the fields have them; raises ``Refusal`` with a sentence."""
        try:
            if isinstance(self._source, Drawing):
                text = self.width_.text() if self.width_ is not None else ""
                width = length_m(text.replace("\u2009", " "), self._measure.units)
                if width is None:
                    raise Refusal(
                        self.tr("“{0}” is no length. Write 12.4 m, 1240 cm or 40′ 8″.").format(text[:40])
                    )
                return self._source.drawn(width)
            degrees = self.numbers is not None and self.numbers.currentData() == "degrees"
            bearing = self.session.garden.site.bearing_deg
            return self._source.drawn(degrees=degrees, bearing_deg=bearing)
        except OutlinesRefused as refused:
            raise Refusal(words.refused(refused, self._name, self._measure)) from refused

    def after(self) -> Garden:
        drawn = self._read()
        if drawn != self._drawn:
            self._list(drawn)
        chosen = [
            one for row, one in enumerate(drawn.outlines)
            if self.list.topLevelItem(row).checkState(0) is Qt.CheckState.Checked
        ]  # fmt: skip
        if not chosen:
            raise Refusal(self.tr("Nothing is ticked that could become a bed."))
        garden, layout_id = self.session.garden, self.session.layout_id
        beds: list[Bed] = []
        for one in chosen:
            name = next_bed_name(garden.layout(layout_id), [bed.name for bed in beds])
            beds.append(bed_of_outline(moved(one, *self._corner), name))
        self._beds = tuple(beds)
        return edits.add(garden, layout_id, beds)

    def _list(self, drawn: Drawn) -> None:
        """List the outlines; what was unticked before stays so."""
        off = {
            row for row in range(self.list.topLevelItemCount())
            if self.list.topLevelItem(row).checkState(0) is Qt.CheckState.Unchecked
        }  # fmt: skip
        self.list.blockSignals(True)
        self.list.clear()
        for row, one in enumerate(drawn.outlines):
            self.list.addTopLevelItem(self._row(one, off=row in off and self._drawn is not None))
        self.list.blockSignals(False)
        self._drawn = drawn
        self.passed.setText(words.passed_over(drawn.passed))
        self.passed.setVisible(bool(drawn.passed))

    def _row(self, one: Outline, *, off: bool) -> QTreeWidgetItem:
        name = one.name or self.tr("without a name")
        size = self._measure.sides(*one.sides_m)
        item = QTreeWidgetItem([name, size, self._measure.area(one.area_m2)])
        if one.why is not None:
            item.setText(1, words.fault(one.why))
            item.setText(2, "")
            item.setFlags(Qt.ItemFlag.ItemIsEnabled)
            item.setCheckState(0, Qt.CheckState.Unchecked)
            return item
        item.setFlags(
            Qt.ItemFlag.ItemIsEnabled | Qt.ItemFlag.ItemIsSelectable | Qt.ItemFlag.ItemIsUserCheckable
        )
        item.setCheckState(0, Qt.CheckState.Unchecked if off else Qt.CheckState.Checked)
        return item

    def told(self) -> str:
        if self._drawn is None:
            return ""
        area = self._measure.area(sum(Outline("", b.outline, b.holes).area_m2 for b in self._beds))
        return words.would_come(len(self._beds), area)

    def refresh(self) -> None:
        super().refresh()
        button = self.buttons.button(QDialogButtonBox.StandardButton.Ok)
        button.setText(self.tr("Draw the beds"))
        if self._first and self._drawn is not None:
            self._first = False
            QTimer.singleShot(0, self, self._bring_in)

    def _bring_in(self) -> None:
        """Show on the plan what would come in, beside what is there."""
        plan = self._window.view.plan
        if self._drawn is not None:
            x, y = self._corner
            wide, high = self._drawn.sides_m
            box = QRectF(x * CM, y * CM, wide * CM, high * CM)
            self._window.view.show_box(box.united(plan.extent()))

    def accept(self) -> None:
        super().accept()
        if self.result() == QDialog.DialogCode.Accepted:
            self.session.select(bed.id for bed in self._beds)
