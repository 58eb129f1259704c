"""Choosing the ground to fill with a crop: click into a bed, or drag a box over it."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

from gardencanvas.canvas.naming import translate
from gardencanvas.canvas.tools.ask_place import AskPlaceTool
from gardencanvas.garden.value import Point

if TYPE_CHECKING:
    from gardencanvas.canvas.view import PlanView

Where = Point | tuple[Point, ...]


class FillPlaceTool(AskPlaceTool):
    """Tells ``chosen`` one plan point, or the four corners of a box."""

    name = "fill"

    def __init__(self, view: PlanView) -> None:
        super().__init__(view)
        self.chosen: Callable[[Where], None] | None = None

    def hint(self) -> str:
        return translate("Canvas", "Click into the bed to fill, or drag a box over a part of it.")

    def tell(self, where: Where) -> None:
        if self.chosen is not None:
            self.chosen(where)
