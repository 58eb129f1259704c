"""Exact numbers of a pattern: its lengths, counts and arrangement, and where it lies."""

from typing import Any

from PySide6.QtCore import QObject
from PySide6.QtWidgets import QFormLayout

from gardencanvas.app.inspector.fields import AngleField, CountField, LengthField
from gardencanvas.app.inspector.part import FieldPart, Tick
from gardencanvas.app.session import Session
from gardencanvas.garden.edits import rebuilt
from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.pattern import Pattern
from gardencanvas.garden.planting import Planting
from gardencanvas.garden.stations import kept_stations
from gardencanvas.words.plain import Units
from gardencanvas.words.refusals import why_refused

_HAS_CORNER = {"rows", "strip", "block", "ring"}
_LIES = {"origin", "angle_deg", "every", "first"}  # what of it changes no place, or all alike


class PatternFields(FieldPart):
    """What a pattern's kind has; single plants that were left out or moved stay so."""

    def __init__(self, session: Session, parent: QObject) -> None:
        super().__init__(session, parent)
        self.lengths: dict[str, LengthField] = {}
        self.counts: dict[str, CountField] = {}
        self.ticks: dict[str, Tick] = {}
        self.places: tuple[LengthField, LengthField] | None = None

    def build(self, form: QFormLayout, planting: Planting, units: Units) -> None:
        kind = type(planting.pattern)
        self.lengths, self.counts, self.ticks = {}, {}, {}
        for field, label in self._length_labels().items():
            if field in kind.model_fields:
                most = 1000.0 if field in {"length_m", "width_m", "radius_m"} else 50.0
                length = self.lengths[field] = LengthField(label, units, 0.005, most)
                length.committed.connect(lambda m, f=field: self._reshape(**{f: round(m, 4)}))
                form.addRow(label, length)
        for field, (label, low, high, tip) in self._count_labels().items():
            if field in kind.model_fields:
                count = self.counts[field] = CountField(label, low, high)
                count.setToolTip(tip)
                count.committed.connect(lambda n, f=field: self._counted(f, n))
                form.addRow(label, count)
        for field, label in (("staggered", self.tr("staggered")), ("closed", self.tr("back to its begin"))):
            if field in kind.model_fields:
                tick = self.ticks[field] = Tick(label, lambda on, f=field: self._reshape(**{f: on}))
                form.addRow("", tick)
        self._build_place(form, planting, units)

    def _build_place(self, form: QFormLayout, planting: Planting, units: Units) -> None:
        self.places = None
        if planting.pattern.kind in _HAS_CORNER:
            ring = planting.pattern.kind == "ring"
            tip = self.tr("Of its middle on the plan") if ring else self.tr("Of its first corner on the plan")
            x = LengthField(self.tr("From the plan’s left"), units, -1000.0, 1000.0)
            y = LengthField(self.tr("From the plan’s top"), units, -1000.0, 1000.0)
            for field in (x, y):
                field.setToolTip(tip)
                field.committed.connect(self._placed)
            form.addRow(self.tr("From left"), x)
            form.addRow(self.tr("From top"), y)
            self.places = (x, y)
        self.angle = AngleField(self.tr("Angle"))
        self.angle.committed.connect(lambda degrees: self._reshape(angle_deg=degrees))
        form.addRow(self.tr("Angle"), self.angle)

    def _length_labels(self) -> dict[str, str]:
        return {
            "spacing_m": self.tr("Spacing"),
            "row_spacing_m": self.tr("Between rows"),
            "across_m": self.tr("Across"),
            "length_m": self.tr("Length"),
            "width_m": self.tr("Width"),
            "radius_m": self.tr("Radius"),
        }

    def _count_labels(self) -> dict[str, tuple[str, int, int, str]]:
        return {
            "rows": (self.tr("Rows"), 1, 1000, ""),
            "plants": (self.tr("Plants"), 1, 2000, self.tr("As many as find room at its spacing")),
            "seed": (
                self.tr("Arrangement"), 0, 2**31 - 1,
                self.tr("Each number scatters them in another way, always the same for the same number"),
            ),
            "every": (
                self.tr("One place in"), 1, 20,
                self.tr("Of so many places it takes one; others may stand on those between"),
            ),
            "first": (self.tr("From place"), 1, 20, self.tr("The first place that it takes")),
        }  # fmt: skip

    def fill(self, planting: Planting) -> None:
        pattern = planting.pattern
        for field, length in self.lengths.items():
            length.show_metres(getattr(pattern, field))
        for field, count in self.counts.items():
            count.show_count(getattr(pattern, field) + (1 if field == "first" else 0))
        first = self.counts["first"]
        first.setEnabled(pattern.every > 1)
        first.setToolTip(
            self.tr("The first place that it takes") if pattern.every > 1 else self.tr("It takes every place")
        )
        for field, tick in self.ticks.items():
            tick.setChecked(getattr(pattern, field))
        if self.places is not None:
            for field, metres in zip(self.places, pattern.origin, strict=True):
                field.show_metres(metres)
        self.angle.show_angle(pattern.angle_deg)

    def _counted(self, field: str, number: int) -> None:
        planting = self.planting
        if planting is None:
            return
        if field == "first":
            self._reshape(first=min(number, planting.pattern.every) - 1)
        elif field == "every":
            self._reshape(every=number, first=min(planting.pattern.first, number - 1))
        else:
            self._reshape(**{field: number})

    def _placed(self, _metres: float) -> None:
        planting = self.planting
        if planting is not None and self.places is not None:
            at = tuple(
                round(f.value() * f.per_unit, 4) if f is self.sender() else was
                for f, was in zip(self.places, planting.pattern.origin, strict=True)
            )
            self._reshape(origin=at)

    def _reshape(self, **fields: Any) -> None:
        if self.planting is None:
            return
        try:
            pattern = _reshaped(self.planting.pattern, fields)
        except Refusal as refusal:
            self.session.refused.emit(why_refused(refusal))
            self.fill(self.planting)
            return
        lies = set(fields) & {"origin", "angle_deg"}
        self.commit(self.tr("Move") if lies else self.tr("Change spacing"), pattern=pattern)


def _reshaped(pattern: Pattern, fields: dict[str, Any]) -> Pattern:
    """The pattern with some fields changed; raises ``Refusal``."""
    if set(fields) <= _LIES:
        return rebuilt(pattern, **fields)
    return kept_stations(pattern, rebuilt(pattern, **fields, left_out=(), moved=()))
