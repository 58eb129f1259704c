"""Two layouts drawn side by side: what differs is marked, either can be worked on or give to the other."""

from typing import TYPE_CHECKING

from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QCheckBox, QComboBox, QDialog, QHBoxLayout, QPushButton, QVBoxLayout

from gardencanvas.app.comparing.beside import BesideDesk
from gardencanvas.app.comparing.two_plans import Marks, TwoPlans, other_verdicts
from gardencanvas.app.labels import PlainLabel
from gardencanvas.app.soon import Soon
from gardencanvas.canvas.view import PlanView
from gardencanvas.garden import edits
from gardencanvas.garden.differing import differences, taken_over
from gardencanvas.garden.errors import Refusal
from gardencanvas.words.differing import summed
from gardencanvas.words.refusals import why_refused

if TYPE_CHECKING:
    from gardencanvas.app.window import MainWindow


class PlansDialog(QDialog):
    """Pan, zoom, date and selection are linked; every edit is a step of the garden's own undo."""

    def __init__(self, window: "MainWindow") -> None:
        super().__init__(window)
        self._session = session = window.session
        self.setWindowTitle(self.tr("Two layouts side by side"))
        self.resize(1240, 700)
        others = [x.id for x in session.garden.layouts if x.id != session.layout_id]
        shown = (session.layout_id, others[0] if others else session.layout_id)
        self.desks = tuple(BesideDesk(session, layout_id, self) for layout_id in shown)
        self.views = tuple(PlanView(desk) for desk in self.desks)
        self.plans = TwoPlans(*self.views)
        self._marks = tuple(Marks(view) for view in self.views)
        self._mark_soon = Soon(self, self._mark)
        self._place_soon = Soon(self, self._mark, 150)  # zooming makes room for words, or takes it
        column = QVBoxLayout(self)
        column.addLayout(self._top())
        column.addWidget(self.plans, 1)
        self.said = PlainLabel("", "quiet")
        column.addWidget(self.said)
        self._linking = False
        for number, (desk, view) in enumerate(zip(self.desks, self.views, strict=True)):
            view.set_units(window.units)
            view.set_dark(window.dark)
            view.set_reduced_motion(True)
            desk.changed.connect(self._mark_soon.ask)
            desk.layout_changed.connect(self._mark_soon.ask)
            desk.refused.connect(self.said.setText)
            desk.selection_changed.connect(lambda ids, number=number: self._link_selection(number, ids))
        for keys, do in (
            (QKeySequence.StandardKey.Undo, session.history.undo),
            (QKeySequence.StandardKey.Redo, session.history.redo),
            (QKeySequence.StandardKey.Delete, self._delete),
        ):
            QShortcut(QKeySequence(keys), self).activated.connect(do)
        self.views[0].view_moved.connect(self._place_soon.ask)
        session.changed.connect(self._refill)
        self._refill()
        self._mark()

    def _top(self) -> QHBoxLayout:
        row = QHBoxLayout()
        self.boxes = (QComboBox(), QComboBox())
        self.over = QCheckBox(self.tr("&Swipe"))
        self.over.setToolTip(self.tr("Lay the second layout over the first and uncover it with the slider"))
        self.over.toggled.connect(self.plans.swipe)
        self.to_second = self._button(self.tr("Take over to the &right"), 0, 1)
        self.to_first = self._button(self.tr("Take over to the &left"), 1, 0)
        names = (self.tr("Left layout"), self.tr("Right layout"))
        for number, (box, name) in enumerate(zip(self.boxes, names, strict=True)):
            box.setAccessibleName(name)
            box.setMinimumContentsLength(16)
            box.activated.connect(lambda _at, number=number: self._choose(number))
        close = QPushButton(self.tr("&Close"))
        close.setAutoDefault(False)
        close.clicked.connect(self.reject)
        for part in (self.boxes[0], self.to_second):
            row.addWidget(part)
        row.addStretch(1)
        row.addWidget(self.over)
        row.addStretch(1)
        for part in (self.to_first, self.boxes[1], close):
            row.addWidget(part)
        return row

    def _button(self, text: str, source: int, target: int) -> QPushButton:
        button = QPushButton(text)
        button.setAutoDefault(False)
        button.setToolTip(
            self.tr("Puts what is selected into the other layout; a bed with all that lies in it")
        )
        button.clicked.connect(lambda _=False: self._take_over(source, target))
        return button

    def _refill(self, *_: object) -> None:
        for box, desk in zip(self.boxes, self.desks, strict=True):
            box.clear()
            for layout in self._session.garden.layouts:
                box.addItem(f"{layout.name}, {layout.year}", layout.id)
            box.setCurrentIndex(box.findData(desk.layout_id))

    def _choose(self, number: int) -> None:
        self.desks[number].show_layout(self.boxes[number].currentData())

    def _link_selection(self, number: int, ids: frozenset[str]) -> None:
        """Select the same in the other layout, as far as it has it."""
        if not self._linking:
            self._linking = True
            self.desks[1 - number].select(ids)
            self._linking = False

    # what is done

    def _take_over(self, source: int, target: int) -> None:
        here, there = self.desks[source], self.desks[target]
        try:
            after = taken_over(self._session.garden, here.layout_id, there.layout_id, here.selection)
        except Refusal as refusal:
            self.said.setText(why_refused(refusal))
            return
        if not self._session.propose(after, self.tr("Take over into {0}").format(there.layout.name)):
            self.said.setText(self.tr("It is there already, just so."))

    def _delete(self) -> None:
        for desk, view in zip(self.desks, self.views, strict=True):
            if view.hasFocus():
                desk.propose(edits.remove(desk.garden, desk.layout_id, desk.selection), self.tr("Delete"))

    def _mark(self) -> None:
        first, second = self.desks
        here, there = differences(first.layout, second.layout), differences(second.layout, first.layout)
        ours, theirs = (
            other_verdicts(first.report, second.report),
            other_verdicts(second.report, first.report),
        )
        self._marks[0].show(here, ours)
        self._marks[1].show(there, theirs)
        if first.layout_id == second.layout_id:
            self.said.setText(self.tr("Both sides show the same layout: choose another for one of them."))
            return
        self.said.setText(
            self.tr(
                "Left: {0}. Right: {1}. Another verdict: {2}. "
                "To copy plantings or a selected bed, drag them across."
            ).format(summed(here.values()), summed(there.values()), len(ours))
        )
