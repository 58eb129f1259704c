"""Carrying a crop from the seed tin over the plan, and putting it down."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Literal

from PySide6.QtCore import QPoint, QPointF, Qt
from PySide6.QtGui import QKeyEvent

from gardencanvas.canvas.look import CM
from gardencanvas.canvas.naming import translate
from gardencanvas.canvas.tools.tool import Pointer, Tool
from gardencanvas.crops.model import Crop
from gardencanvas.garden import edits, laying
from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.garden import Garden
from gardencanvas.garden.ground import Bed
from gardencanvas.garden.pattern import Block, Rows, Spots
from gardencanvas.garden.places import bed_at
from gardencanvas.garden.planting import Planting, Start
from gardencanvas.garden.value import Point, new_id
from gardencanvas.season.usual_start import usual_start
from gardencanvas.words.plain import crop_name

if TYPE_CHECKING:
    from gardencanvas.canvas.view import PlanView

Mode = Literal["rows", "block", "single"]
_MODES: dict[int, Mode] = {Qt.Key.Key_1: "rows", Qt.Key.Key_2: "block", Qt.Key.Key_3: "single"}
_STEPS = {
    Qt.Key.Key_Left: (-1, 0),
    Qt.Key.Key_Right: (1, 0),
    Qt.Key.Key_Up: (0, -1),
    Qt.Key.Key_Down: (0, 1),
}
_STEP_CM, _STRIDE_CM = 5.0, 50.0
_UNKNOWN_SPACING_M = 0.3  # common practice: a middling garden spacing, where the crop's is not known


@dataclass(frozen=True, slots=True)
class Carried:
    """What is on the mouse."""

    crop: Crop
    crop_id: str
    variety: str | None
    start: Start
    planting_id: str

    @property
    def in_row_m(self) -> float:
        """Spacing within the row."""
        return self.crop.in_row_m.mid if self.crop.in_row_m else _UNKNOWN_SPACING_M

    @property
    def between_m(self) -> float:
        """Spacing between rows, at least that within them."""
        between = self.crop.between_rows_m.mid if self.crop.between_rows_m else self.in_row_m
        return max(between, self.in_row_m)

    @property
    def even_m(self) -> float:
        """Equal spacing each way that gives a plant the same ground as its rows: √(in the row × between)."""
        return float(round((self.in_row_m * self.between_m) ** 0.5, 3))


class PlaceTool(Tool):
    """A ghost of the crop follows the mouse, judged live; release or Enter puts it down."""

    name = "place"
    cursor = Qt.CursorShape.CrossCursor

    def __init__(self, view: PlanView) -> None:
        super().__init__(view)
        self.mode: Mode = "rows"
        self._carried: Carried | None = None
        self.at = QPointF()
        self._after: Garden | None = None
        self._where: Bed | None = None

    def hint(self) -> str:
        return translate(
            "Canvas",
            "Over a bed: 1 row, 2 block, 3 single plant. Arrows move it, Enter puts it down, Esc gives up.",
        )

    @property
    def carrying(self) -> bool:
        """Whether there is a crop on the mouse."""
        return self._carried is not None

    @property
    def ghost_id(self) -> str | None:
        """Id of the planting that a drop would make."""
        return self._carried.planting_id if self._carried is not None else None

    def pick_up(self, crop_id: str, variety_id: str | None, mode: Mode) -> None:
        """Take a crop on the mouse; raises ``UnknownCrop``."""
        desk = self.view.desk
        crop = desk.catalogue.resolve(crop_id, variety_id)
        layout = desk.layout
        start = usual_start(desk.garden.site, crop, layout.year, layout.first_month)
        self.mode = mode
        self._carried = Carried(crop, crop_id, variety_id, start, new_id("planting"))

    # what it would become

    def planting_at(self, point: Point) -> Planting | None:
        """The planting a drop at a plan point would make; None where it has no room at all."""
        carried = self._carried
        if carried is None:
            return None
        step = self.view.snap_step_m
        self._where = bed_at(self.view.desk.layout, point)
        pattern = self._pattern(carried, self._where, point, step)
        return edits.made(
            Planting,
            id=carried.planting_id,
            crop=carried.crop_id,
            varieties=(carried.variety,) if carried.variety else (),
            pattern=pattern,
            start=carried.start,
        )

    def _pattern(self, carried: Carried, bed: Bed | None, point: Point, step: float) -> Rows | Block | Spots:
        """Rows, block or one plant; one plant where a bed is too small for the rest."""
        if bed is None:
            if self.mode == "rows":
                return laying.row_outside(point, carried.in_row_m, carried.between_m)
            if self.mode == "block":
                return laying.block_outside(point, carried.even_m)
            return Spots(points=(point,), spacing_m=carried.in_row_m)
        made: Rows | Block | None = None
        if self.mode == "rows":
            made = laying.row_in(bed, point, carried.in_row_m, carried.between_m, step)
        elif self.mode == "block":
            made = laying.block_in(bed, point, carried.even_m, step)
        return made or laying.spot_in(bed, point, carried.in_row_m, step)

    def show_at(self, at: QPointF, pixel: QPoint) -> None:
        """Lay the ghost at a place and judge it."""
        self.at = at
        carried, desk = self._carried, self.view.desk
        if carried is None:
            return
        try:
            planting = self.planting_at((at.x() / CM, at.y() / CM))
            if planting is None:
                return
            after = edits.add(desk.garden, desk.layout_id, [planting])
        except Refusal as refusal:
            self.view.say(str(refusal))
            return
        self._after = after
        self.view.plan.ghosts = frozenset({carried.planting_id})
        self.view.try_out(after)
        self.view.speak_of([carried.planting_id], Pointer(at, pixel))

    def put_down(self) -> bool:
        """Commit the ghost where it is; False when there is none."""
        carried, after = self._carried, self._after
        self._forget()
        if carried is None or after is None:
            self.view.settle()
            return False
        name = crop_name(self.view.desk.catalogue, carried.crop_id, carried.variety)
        texts: dict[Mode, str] = {
            "rows": translate("Canvas", "Add row of {0}"),
            "block": translate("Canvas", "Add block of {0}"),
            "single": translate("Canvas", "Add one {0}"),
        }
        done = self.view.commit(after, texts[self.mode].format(name))
        if done:
            self.view.desk.select({carried.planting_id})
            if self._where is None:
                self.view.say(translate("Canvas", "{0} stands outside any bed.").format(name))
        return done

    def hide(self) -> None:
        """Take the ghost off the plan but keep carrying: the mouse has left the plan."""
        self._after = None
        self.view.hush()
        self.view.plan.ghosts = frozenset()
        self.view.settle()

    def _forget(self) -> None:
        self._carried = self._after = None
        self.view.hush()
        self.view.plan.ghosts = frozenset()

    # mouse and keys

    def hover(self, pointer: Pointer) -> None:
        self.show_at(pointer.at, pointer.pixel)

    def begin(self, pointer: Pointer) -> None:
        self.show_at(pointer.at, pointer.pixel)

    def move(self, pointer: Pointer) -> None:
        self.show_at(pointer.at, pointer.pixel)

    def end(self, pointer: Pointer) -> None:
        again = pointer.holds(Qt.KeyboardModifier.ShiftModifier)
        carried = self._carried
        self.show_at(pointer.at, pointer.pixel)
        self.put_down()
        if again and carried is not None:
            self.pick_up(carried.crop_id, carried.variety, self.mode)
        else:
            self.view.set_tool("select")

    def key(self, event: QKeyEvent) -> bool:
        key = Qt.Key(event.key())
        if key in _MODES:
            self.mode = _MODES[key]
        elif key in _STEPS:
            stride = event.modifiers() & Qt.KeyboardModifier.ShiftModifier
            step = _STRIDE_CM if stride else _STEP_CM
            self.at += QPointF(*_STEPS[key]) * step
            self.view.ensure_seen(self.at)
        elif key in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.put_down()
            self.view.set_tool("select")
            return True
        elif key == Qt.Key.Key_Escape:
            self.view.set_tool("select")
            return True
        else:
            return False
        self.show_at(self.at, self.view.mapFromScene(self.at))
        return True

    def cancel(self) -> None:
        if self._carried is not None:
            self._forget()
            self.view.settle()
