"""Exact numbers of a path, support, cover or fixture: each field commits one edit."""

from collections.abc import Callable
from math import hypot
from typing import Any

from PySide6.QtWidgets import QFormLayout, QLineEdit, QWidget

from gardencanvas.app.inspector.fields import CountField, LengthField
from gardencanvas.app.inspector.start_fields import MaybeDay
from gardencanvas.app.session import Session
from gardencanvas.garden.edits import change, replace
from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.garden import Garden, Item
from gardencanvas.garden.ground import Cover, Fixture, LineSupport, Path, RingSupport
from gardencanvas.garden.handles import with_measure
from gardencanvas.words.plain import Measure
from gardencanvas.words.refusals import why_refused


class ThingFields(QWidget):
    """Name, heights, widths, canes and days, as far as a thing has them."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self._id = ""
        self._made_for: object = None
        self.lengths: dict[str, LengthField] = {}
        self.counts: dict[str, CountField] = {}
        self.days: dict[str, MaybeDay] = {}
        self._form = QFormLayout(self)
        self._form.setContentsMargins(0, 0, 0, 0)

    @property
    def thing(self) -> Item | None:
        """The thing shown, as it is now."""
        return self._session.garden.find(self._session.layout_id, self._id)

    def show_thing(self, thing: Item, measure: Measure) -> None:
        """Show a thing; the fields are built anew only for another kind."""
        self._id = thing.id
        kind = (type(thing), getattr(thing, "kind", ""), measure.units)
        if self._made_for != kind:
            while self._form.rowCount():
                self._form.removeRow(0)
            self._build(thing, measure)
            self._made_for = kind
        self._fill(thing)

    def _build(self, thing: Item, measure: Measure) -> None:
        self.lengths, self.counts, self.days = {}, {}, {}
        self.name = QLineEdit()
        self.name.setAccessibleName(self.tr("Name"))
        self.name.setMaxLength(200)
        self.name.editingFinished.connect(self._renamed)
        self._form.addRow(self.tr("Name"), self.name)
        stake = isinstance(thing, RingSupport) and thing.kind == "stake"
        if isinstance(thing, Path):
            self._length(self.tr("Width"), "width_m", measure, 0.05, 50.0)
        if isinstance(thing, (Fixture, Cover, RingSupport, LineSupport)):
            self._length(self.tr("Height"), "height_m", measure, 0.01, 60.0)
        if isinstance(thing, RingSupport) and not stake:
            self._length(self.tr("Radius"), "radius_m", measure, 0.01, 5.0)
        if isinstance(thing, LineSupport):
            self._length(self.tr("Length"), "length", measure, 0.05, 1000.0)
        if isinstance(thing, (RingSupport, LineSupport)) and not stake:
            canes = self._count(self.tr("Canes or posts"), "canes", 0, 500)
            canes.setSpecialValueText(self.tr("as usual"))
            canes.setToolTip(self.tr("0: as many as usual for its length"))
        if isinstance(thing, Fixture):
            self._build_fixture(thing, measure)
        if isinstance(thing, Cover):
            for text, what in ((self.tr("On from"), "first"), (self.tr("Off on"), "last")):
                day = self.days[what] = MaybeDay(text)
                day.committed.connect(lambda on, what=what: self._commit(**{what: on}))
                self._form.addRow(text, day)

    def _build_fixture(self, thing: Fixture, measure: Measure) -> None:
        if thing.kind == "tree":
            self._length(self.tr("Crown from"), "base_m", measure, 0.0, 60.0)
        clear = self._count(self.tr("Light it lets through"), "clear_share", 0, 100)
        clear.setSuffix(" %")

    def _length(self, text: str, what: str, measure: Measure, low: float, high: float) -> None:
        field = self.lengths[what] = LengthField(text, measure.units, low, high)
        field.committed.connect(lambda m, what=what: self._measured(what, round(m, 4)))
        self._form.addRow(text, field)

    def _count(self, text: str, what: str, low: int, high: int) -> CountField:
        field = self.counts[what] = CountField(text, low, high)
        field.committed.connect(lambda n, what=what: self._counted(what, n))
        self._form.addRow(text, field)
        return field

    def _fill(self, thing: Item) -> None:
        self.name.setText(getattr(thing, "name", ""))
        for what, field in self.lengths.items():
            if what == "length" and isinstance(thing, LineSupport):
                (x0, y0), (x1, y1) = thing.begin, thing.end
                field.show_metres(hypot(x1 - x0, y1 - y0))
            else:
                field.show_metres(getattr(thing, what))
        for what, count in self.counts.items():
            value = getattr(thing, what) or 0
            count.show_count(round(100 * value) if what == "clear_share" else value)
        if isinstance(thing, Cover):
            first, last = self._session.layout.season
            self.days["first"].show_day(thing.first, first)
            self.days["last"].show_day(thing.last, last)

    def _renamed(self) -> None:
        thing, text = self.thing, self.name.text().strip()
        if thing is not None and text != getattr(thing, "name", text):
            self._commit(name=text)

    def _measured(self, what: str, metres: float) -> None:
        thing = self.thing
        if thing is not None and what == "length":
            session = self._session
            self._try(
                lambda: replace(session.garden, session.layout_id, [with_measure(thing, "end", metres)])
            )
            return
        self._commit(**{what: metres})

    def _counted(self, what: str, number: int) -> None:
        self._commit(**{what: number / 100 if what == "clear_share" else number or None})

    def _commit(self, **fields: Any) -> None:
        session = self._session
        self._try(lambda: change(session.garden, session.layout_id, self._id, **fields))

    def _try(self, edit: Callable[[], Garden]) -> None:
        thing = self.thing
        if thing is None:
            return
        try:
            after = edit()
        except Refusal as refusal:
            self._session.refused.emit(why_refused(refusal))
            self._fill(thing)
            return
        self._session.propose(after, self.tr("Change {0}").format(getattr(thing, "name", "")))
