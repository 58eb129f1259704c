"""The jobs of the shown layout, week by week, with marks of what is done."""

from datetime import UTC, date, datetime, timedelta
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QModelIndex, Qt
from PySide6.QtGui import QKeyEvent, QShowEvent, QStandardItem, QStandardItemModel
from PySide6.QtWidgets import (
    QAbstractItemView,
    QComboBox,
    QFileDialog,
    QHBoxLayout,
    QHeaderView,
    QLineEdit,
    QPushButton,
    QTreeView,
    QVBoxLayout,
    QWidget,
)

from gardencanvas.app.filing import tell
from gardencanvas.app.labels import PlainLabel
from gardencanvas.app.soon import Soon
from gardencanvas.canvas.palette import Palette
from gardencanvas.crops.spelling import folded
from gardencanvas.files import CannotWrite, write_whole
from gardencanvas.garden.doing import mark_done, unmark
from gardencanvas.measures.calendar_writing import calendar_text
from gardencanvas.measures.csv_writing import csv_text
from gardencanvas.measures.jobs import Job, JobKind, jobs
from gardencanvas.paper.document import Document, Setup
from gardencanvas.paper.listing import Column, Group, Line, listing
from gardencanvas.words.jobs import JobWords, jobs_table, kind_word, when
from gardencanvas.words.plain import Measure, counted, span
from gardencanvas.words.refusals import why_refused

if TYPE_CHECKING:
    from gardencanvas.app.window import MainWindow

_ID = Qt.ItemDataRole.UserRole


class _Tree(QTreeView):
    """Space marks a job as done."""

    def __init__(self, panel: "JobsPanel") -> None:
        super().__init__()
        self._panel = panel

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Space:
            self._panel.toggle(self.currentIndex())
            return
        super().keyPressEvent(event)


class JobsPanel(QWidget):
    """A tree of weeks and jobs; a click goes to the planting and the day, a tick marks it as done."""

    def __init__(self, window: "MainWindow") -> None:
        super().__init__()
        self._window, self._session = window, window.session
        self._measure = Measure(window.units)
        self._jobs: tuple[Job, ...] = ()
        self._by_id: dict[str, Job] = {}
        self._stale = True
        self._soon = Soon(self, self.refresh)
        column = QVBoxLayout(self)
        column.setContentsMargins(8, 8, 8, 8)
        column.addLayout(self._top())
        self._model = QStandardItemModel(0, 3, self)
        self._model.setHorizontalHeaderLabels([self.tr("Job"), self.tr("When"), self.tr("How")])
        self._model.itemChanged.connect(self._ticked)
        self.tree = _Tree(self)
        self.tree.setModel(self._model)
        self.tree.setAccessibleName(self.tr("Jobs, week by week"))
        self.tree.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.tree.setUniformRowHeights(True)
        self.tree.setTextElideMode(Qt.TextElideMode.ElideRight)
        self.tree.setIndentation(14)
        header = self.tree.header()
        header.setSectionResizeMode(0, QHeaderView.ResizeMode.Interactive)
        header.setSectionResizeMode(1, QHeaderView.ResizeMode.ResizeToContents)
        header.setSectionResizeMode(2, QHeaderView.ResizeMode.Stretch)
        header.resizeSection(0, 380)
        self.tree.clicked.connect(self._go)
        self.tree.activated.connect(self._go)
        self.empty = PlainLabel("", "hint")
        column.addWidget(self.tree, 1)
        column.addWidget(self.empty)
        session = self._session
        session.changed.connect(self._changed)
        session.layout_changed.connect(self._changed)
        self._soon.ask()

    def _top(self) -> QHBoxLayout:
        top = QHBoxLayout()
        self.kind = QComboBox()
        self.kind.setAccessibleName(self.tr("Kind of job"))
        self.kind.addItem(self.tr("all jobs"), None)
        for kind in JobKind:
            self.kind.addItem(kind_word(kind), kind)
        self.state = QComboBox()
        self.state.setAccessibleName(self.tr("Done or to do"))
        for text, value in (
            (self.tr("to do and done"), None),
            (self.tr("to do"), False),
            (self.tr("done"), True),
        ):
            self.state.addItem(text, value)
        self.words = QLineEdit()
        self.words.setPlaceholderText(self.tr("crop, bed or word"))
        self.words.setAccessibleName(self.tr("Words a job must hold"))
        self.words.setClearButtonEnabled(True)
        self.words.setMaximumWidth(180)
        self.words.textChanged.connect(self._soon.ask)
        self.count = PlainLabel("", "quiet")
        self.count.setWordWrap(False)
        for box in (self.kind, self.state):
            box.activated.connect(self._soon.ask)
        for widget in (self.kind, self.state, self.words, self.count):
            top.addWidget(widget)
        top.addStretch(1)
        for text, tip, do in (
            (self.tr("Calendar…"), self.tr("Save as a calendar file (.ics)"), self.save_calendar),
            (self.tr("Table…"), self.tr("Save as a table (.csv)"), self.save_table),
            (self.tr("Print…"), self.tr("See, save or print the list"), self.print_list),
        ):
            button = QPushButton(text)
            button.setToolTip(tip)
            button.clicked.connect(do)
            top.addWidget(button)
        return top

    def set_look(self, measure: Measure, _colours: Palette) -> None:
        """Use these units."""
        self._measure = measure
        self._soon.ask()

    # the list

    def _changed(self, *_: object) -> None:
        self._stale = True
        if self.isVisible():
            self._soon.ask()

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        self._soon.ask()

    def _said(self) -> JobWords:
        session = self._session
        return JobWords(session.garden, session.layout, session.catalogue, self._measure)

    def refresh(self) -> None:
        """Show the jobs of the committed garden."""
        session = self._session
        if self._stale:
            self._jobs = jobs(session.garden, session.layout_id, session.report, session.catalogue)
            self._by_id = {j.id: j for j in self._jobs}
            self._stale = False
        words = self._said()
        done = {d.job: d.on for d in session.layout.done}
        shown = [j for j in self._jobs if self._wanted(j, words, done)]
        self._model.blockSignals(True)
        self._model.removeRows(0, self._model.rowCount())
        self._model.blockSignals(False)
        weeks: dict[date, QStandardItem] = {}
        for job in shown:
            monday = job.on - timedelta(days=job.on.weekday())
            if monday not in weeks:
                weeks[monday] = self._add_week(monday)
            weeks[monday].appendRow(self._row(job, words, done.get(job.id)))
        self.tree.expandAll()
        for row in range(self._model.rowCount()):
            self.tree.setFirstColumnSpanned(row, QModelIndex(), True)
        self._to_week(session.on)
        self.count.setText(counted(len(shown), self.tr("job"), self.tr("jobs")))
        self.tree.setVisible(bool(shown))
        self.empty.setVisible(not shown)
        self.empty.setText(
            self.tr("No job is called so.")
            if self._jobs
            else self.tr("Nothing is planted yet: no work to do.")
        )

    def _wanted(self, job: Job, words: JobWords, done: dict[str, date]) -> bool:
        if self.kind.currentData() not in (None, job.kind):
            return False
        if self.state.currentData() not in (None, job.id in done):
            return False
        text = folded(f"{words.title(job)} {words.detail(job)}")
        return all(word in text for word in folded(self.words.text()).split())

    def _add_week(self, monday: date) -> QStandardItem:
        number = monday.isocalendar()[1]
        text = self.tr("Week {0}, {1}").format(number, span(monday, monday + timedelta(days=6)))
        head = QStandardItem(text)
        head.setFlags(Qt.ItemFlag.ItemIsEnabled)
        head.setData(monday.toordinal(), _ID + 1)
        font = head.font()
        font.setBold(True)
        head.setFont(font)
        self._model.appendRow([head, QStandardItem(), QStandardItem()])
        return head

    def _row(self, job: Job, words: JobWords, done: date | None) -> list[QStandardItem]:
        row = [QStandardItem(t) for t in (words.title(job), when(job), words.detail(job))]
        row[0].setCheckable(True)
        row[0].setCheckState(Qt.CheckState.Checked if done is not None else Qt.CheckState.Unchecked)
        row[0].setData(job.id, _ID)
        row[2].setToolTip(words.detail(job).replace("<", "‹"))
        if done is not None:
            for item in row:
                item.setForeground(self.palette().placeholderText())
        return row

    def _to_week(self, on: date) -> None:
        """Bring the week of a day, or the next one with work, to the top."""
        for row in range(self._model.rowCount()):
            item = self._model.item(row)
            if item.data(_ID + 1) + 6 >= on.toordinal():
                self.tree.scrollTo(item.index(), QAbstractItemView.ScrollHint.PositionAtTop)
                return

    # what is done

    def _ticked(self, item: QStandardItem) -> None:
        job_id = item.data(_ID)
        if job_id is not None and item.column() == 0:
            self._mark(job_id, done=item.checkState() is Qt.CheckState.Checked)

    def toggle(self, index: QModelIndex) -> None:
        """Mark the job of a row as done, or as still to do."""
        item = self._model.itemFromIndex(index.siblingAtColumn(0)) if index.isValid() else None
        if item is not None and item.isCheckable():
            ticked = item.checkState() is Qt.CheckState.Checked
            item.setCheckState(Qt.CheckState.Unchecked if ticked else Qt.CheckState.Checked)

    def _mark(self, job_id: str, *, done: bool) -> None:
        session = self._session
        job = self._by_id.get(job_id)
        if job is None:
            return
        said = self._said().title(job)
        if done:
            after = mark_done(session.garden, session.layout_id, job_id, date.today())
            session.propose(after, self.tr("Done: {0}").format(said))
        else:
            session.propose(
                unmark(session.garden, session.layout_id, job_id), self.tr("Not done: {0}").format(said)
            )

    def _go(self, index: QModelIndex) -> None:
        job = self._by_id.get(index.siblingAtColumn(0).data(_ID) or "")
        if job is not None:
            self._session.show_date(job.on)
            self._session.select([job.item])
            part = self._window.view.plan.parts.get(job.item)
            if part is not None:
                self._window.view.bring_in(part.outline.boundingRect())

    # files and paper

    def save_calendar(self) -> None:
        """Write all jobs of the layout as a calendar file."""
        path = self._asked(self.tr("Save the jobs as a calendar"), "ics", self.tr("Calendar (*.ics)"))
        if path is None:
            return
        session, words = self._session, self._said()
        done = frozenset(d.job for d in session.layout.done)
        name = f"{session.garden.name}, {session.layout.name} {session.layout.year}"
        entries = [words.entry(job, done) for job in self._jobs]
        self._write(path, calendar_text(name, entries, datetime.now(UTC), alarm_h=None))

    def save_table(self) -> None:
        """Write all jobs of the layout as a table."""
        path = self._asked(self.tr("Save the jobs as a table"), "csv", self.tr("Table (*.csv)"))
        if path is not None:
            done = {d.job: d.on for d in self._session.layout.done}
            self._write(path, csv_text(jobs_table(self._jobs, self._said(), done)))

    def _asked(self, title: str, suffix: str, kinds: str) -> Path | None:
        self.refresh()
        name, _ = QFileDialog.getSaveFileName(
            self, title, f"jobs-{self._session.layout.year}.{suffix}", kinds
        )
        if not name:
            return None
        return Path(name if name.lower().endswith(f".{suffix}") else f"{name}.{suffix}")

    def _write(self, path: Path, text: str) -> None:
        try:
            write_whole(path, text.encode("utf-8"))
        except CannotWrite as error:
            tell(self, self.tr("Jobs"), why_refused(error))
            return
        self._window.say(self.tr("Saved as {0}.").format(path.name))

    def print_list(self) -> None:
        """Show the jobs that are listed as pages."""
        from gardencanvas.app.printing.dialog import PrintDialog  # not needed to start

        PrintDialog(self._window, self.tr("Jobs"), self.document).exec()

    def document(self, setup: Setup) -> Document:
        """The jobs that are listed, as pages with boxes to tick."""
        session, words = self._session, self._said()
        done = {d.job: d.on for d in session.layout.done}
        groups: dict[date, list[Line]] = {}
        for job in self._jobs:
            if self._wanted(job, words, done):
                monday = job.on - timedelta(days=job.on.weekday())
                cells = (when(job), words.title(job), words.detail(job))
                groups.setdefault(monday, []).append(Line(cells, tick=job.id in done))
        made = [
            Group(
                self.tr("Week {0}, {1}").format(m.isocalendar()[1], span(m, m + timedelta(days=6))),
                tuple(lines),
            )
            for m, lines in groups.items()
        ]
        columns = (
            Column(self.tr("When"), 20), Column(self.tr("What"), 42), Column(self.tr("How"), 38),
        )  # fmt: skip
        title = self.tr("Jobs of {0}").format(session.layout.year)
        return listing(title, f"{session.garden.name} · {session.layout.name}", columns, made, setup)
