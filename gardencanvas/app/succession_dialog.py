"""The dialog in which a planting is told to come again, while plan and ribbon show what would be."""

from collections.abc import Iterable
from datetime import date
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QCheckBox,
    QComboBox,
    QDialog,
    QDialogButtonBox,
    QFormLayout,
    QHBoxLayout,
    QHeaderView,
    QLabel,
    QLayout,
    QTreeWidget,
    QTreeWidgetItem,
    QVBoxLayout,
    QWidget,
)

from gardencanvas.app.harvest_bars import HarvestBars
from gardencanvas.app.inspector.fields import DayField
from gardencanvas.app.labels import ElidedLabel, PlainLabel
from gardencanvas.app.number_fields import WholeField
from gardencanvas.app.session import Session
from gardencanvas.app.soon import Soon
from gardencanvas.canvas.palette import Palette, palette, tint_of
from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.planting import Planting
from gardencanvas.planner.succession import (
    LONGEST_D,
    MOST_PARTS,
    Between,
    Rhythm,
    Succession,
    Way,
    interval_of,
    members,
    most_parts,
    respace,
    shift_group,
    stays,
    succeed,
)
from gardencanvas.words.language import figure
from gardencanvas.words.plain import day, planting_name
from gardencanvas.words.refusals import why_refused
from gardencanvas.words.succession import aside_words, evenness_words, harvest_words, how_even

if TYPE_CHECKING:
    from gardencanvas.app.window import MainWindow

_USUAL_D = 14  # every second week, the common practice for salads and roots that are pulled young
_SOON_MS = 30  # a held arrow key counts faster than plants can be followed


class SuccessionDialog(QDialog):
    """Interval, way and number of parts for a new succession; interval and first day for an existing one.

    What would be is previewed at each change. OK makes one undo step of it; Cancel leaves all as it was.
    """

    def __init__(
        self, session: Session, planting: Planting, colours: Palette, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._session, self._planting, self._colours = session, planting, colours
        own = members(session.layout, planting.succession) if planting.succession else ()
        self._own = own if len(own) > 1 else ()
        self.made: Succession | None = None
        self.setWindowTitle(self.tr("Change the succession") if self._own else self.tr("Again"))
        self._soon = Soon(self, self.refresh, _SOON_MS)
        self._build()
        self.refresh()

    # parts

    def _build(self) -> None:
        column = QVBoxLayout(self)
        column.setSpacing(10)
        column.addWidget(ElidedLabel(planting_name(self._session.catalogue, self._planting), "title"))
        self._form_lines = self._form()
        column.addLayout(self._form_lines)
        self.message = PlainLabel()
        column.addWidget(self.message)
        self.table = self._table()
        column.addWidget(self.table, 1)
        self.bars = HarvestBars()
        column.addWidget(self.bars)
        self.evenness = PlainLabel(role="quiet")
        self.evenness.setToolTip(how_even())
        column.addWidget(self.evenness)
        box = QDialogButtonBox.StandardButton
        self.buttons = QDialogButtonBox(box.Ok | box.Cancel)
        self.buttons.accepted.connect(self.accept)
        self.buttons.rejected.connect(self.reject)
        column.addWidget(self.buttons)
        # Its size is the grower's: a message that comes and goes must not make it jump.
        column.setSizeConstraint(QLayout.SizeConstraint.SetNoConstraint)
        wide = self._form_lines.minimumSize().width() + 2 * column.contentsMargins().left()
        self.setMinimumSize(max(400, wide), 440)
        self.resize(max(460, wide), 560)

    def _form(self) -> QFormLayout:
        form = QFormLayout()
        form.setFieldGrowthPolicy(QFormLayout.FieldGrowthPolicy.ExpandingFieldsGrow)
        self.days = self._number(self.tr("Days between"), 1, LONGEST_D)
        self.days.setValue(interval_of(self._own) if self._own else _USUAL_D)
        self.between = self._choice(self.tr("What the days lie between"), (
            (self.tr("days from harvest to harvest"), Between.HARVESTS),
            (self.tr("days from start to start"), Between.STARTS),
        ))  # fmt: skip
        if self._own:
            self.between.setCurrentIndex(1)
        _add_row(form, self.tr("Again &every"), self.days, self.between)
        if self._own:
            _add_row(form, self.tr("&First start"), self._first_start())
        else:
            self._add_ways(form)
        return form

    def _first_start(self) -> DayField:
        first = self._own[0]
        self.first = DayField(self.tr("First start"))
        self.first.show_day(first.start.on)
        self.first.dateChanged.connect(self._soon.ask)
        if stays(first):
            self.first.setEnabled(False)
            self.first.setToolTip(self.tr("The first part is pinned or locked."))
        return self.first

    def _add_ways(self, form: QFormLayout) -> None:
        pattern = self._planting.pattern
        words = {
            Way.ROWS: self.tr("row by row"),
            Way.PARTS: self.tr("part by part along its length"),
            Way.COPIES: self.tr("as new plantings beside it"),
        }
        possible = [w for w in words if w is Way.COPIES or self._cuts(w)]
        self.way = self._choice(self.tr("Where the parts lie"), [(words[w], w) for w in possible])
        _add_row(form, self.tr("&Laid out"), self.way)
        self.parts = self._number(self.tr("Number of parts"), 2, MOST_PARTS)
        self.parts.setValue(min(max(most_parts(pattern, Way.ROWS), 2), MOST_PARTS))
        self.as_many = QCheckBox(self.tr("as &many as ripen"))
        self.as_many.setChecked(True)
        self.parts.setEnabled(False)
        self.as_many.toggled.connect(self.parts.setDisabled)
        self.as_many.toggled.connect(self._soon.ask)
        _add_row(form, self.tr("&Parts"), self.parts, self.as_many)

    def _cuts(self, way: Way) -> bool:
        return most_parts(self._planting.pattern, way) > 1 and not self._planting.locked

    def _number(self, name: str, low: int, high: int) -> WholeField:
        field = WholeField()
        field.setRange(low, high)
        field.setAccessibleName(name)
        field.valueChanged.connect(self._soon.ask)
        return field

    def _choice(self, name: str, choices: Iterable[tuple[str, object]]) -> QComboBox:
        field = QComboBox()
        field.setAccessibleName(name)
        for text, value in choices:
            field.addItem(text, value)
        field.currentIndexChanged.connect(self._soon.ask)
        return field

    def _table(self) -> QTreeWidget:
        table = QTreeWidget()
        table.setColumnCount(3)
        table.setHeaderLabels([self.tr("Start"), self.tr("Harvest, 8 years in 10"), self.tr("Plants")])
        table.setRootIsDecorated(False)
        table.setUniformRowHeights(True)
        table.setAccessibleName(self.tr("Parts of the succession"))
        header = table.header()
        header.setStretchLastSection(False)
        header.setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
        header.setSectionResizeMode(1, QHeaderView.ResizeMode.Stretch)
        return table

    # what would be

    def refresh(self) -> None:
        """Make the succession anew and show it; or say why there is none."""
        self._soon.stop()
        try:
            self.made = self._make()
        except Refusal as refusal:
            self.made = None
            self._session.preview(None)
            self.message.setText(why_refused(refusal))
        else:
            self._session.preview(self.made.garden)
            self.message.setText(aside_words(len(self.made.stayed), len(self.made.crowded)))
        self.message.setVisible(bool(self.message.text()))
        self.buttons.button(QDialogButtonBox.StandardButton.Ok).setEnabled(self.made is not None)
        self._fill()

    def _make(self) -> Succession:
        session = self._session
        # Read by place: Qt hands enumeration members back as bare text.
        rhythm = Rhythm(self.days.value(), Between(self.between.currentData()))
        if not self._own:
            parts = None if self.as_many.isChecked() else self.parts.value()
            return succeed(
                session.garden, session.layout_id, self._planting.id, rhythm,
                Way(self.way.currentData()), session.catalogue, parts,
            )  # fmt: skip
        group = str(self._own[0].succession)
        chosen = self.first.date()
        by = date(chosen.year(), chosen.month(), chosen.day()) - self._own[0].start.on
        shifted = shift_group(session.garden, session.layout_id, group, by.days).garden
        return respace(shifted, session.layout_id, group, rhythm, session.catalogue)

    def _fill(self) -> None:
        parts = self.made.parts if self.made is not None else ()
        self.table.clear()
        for part in parts:
            item = QTreeWidgetItem([day(part.on), harvest_words(part), figure(part.plants, ",")])
            item.setTextAlignment(2, Qt.AlignmentFlag.AlignRight)
            self.table.addTopLevelItem(item)
        if parts and not self._own and self.as_many.isChecked():
            self.parts.blockSignals(True)
            self.parts.setValue(len(parts))
            self.parts.blockSignals(False)
        crop = self._session.catalogue.crop(self._planting.crop)
        self.bars.show_harvest(
            self.made, tint_of(crop.family, crop.id, self._colours.dark).leaf, self._colours
        )
        self.evenness.setText(evenness_words(self.made.evenness) if self.made is not None else "")

    # ending

    def accept(self) -> None:
        if self._soon.isActive():
            self.refresh()
        if self.made is None:
            return
        name = planting_name(self._session.catalogue, self._planting)
        self._session.propose(self.made.garden, self.tr("Succession of {0}").format(name))
        self._session.select(part.id for part in self.made.parts)
        super().accept()

    def reject(self) -> None:
        self._soon.stop()
        self._session.preview(None)
        super().reject()


def _add_row(form: QFormLayout, text: str, *fields: QWidget) -> None:
    """Fields beside each other; the label's key goes to the first."""
    label = QLabel(text)
    label.setBuddy(fields[0])
    row = QHBoxLayout()
    for field in fields:
        row.addWidget(field)
    row.setStretch(len(fields) - 1, 1)
    form.addRow(label, row)


def ask(window: "MainWindow", planting: Planting) -> SuccessionDialog:
    """Open the dialog beside the plan; it closes itself."""
    dialog = SuccessionDialog(window.session, planting, palette(window.dark), window)
    dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
    corner = window.frameGeometry().topRight()
    dialog.move(max(corner.x() - dialog.width() - 24, 0), corner.y() + 90)
    dialog.open()
    return dialog
