"""All tools of a plan view."""

from __future__ import annotations

from typing import TYPE_CHECKING

from gardencanvas.canvas.tools.ask_place import AskPlaceTool
from gardencanvas.canvas.tools.backdrop import BackdropTool
from gardencanvas.canvas.tools.backdrop_scale import ScaleBackdropTool
from gardencanvas.canvas.tools.draw_bed import DrawBedTool, DrawPolygonTool
from gardencanvas.canvas.tools.draw_structure import DrawStructureTool
from gardencanvas.canvas.tools.fill_place import FillPlaceTool
from gardencanvas.canvas.tools.measure import MeasureTool
from gardencanvas.canvas.tools.pan import PanTool
from gardencanvas.canvas.tools.select import SelectTool
from gardencanvas.canvas.tools.stations import StationsTool
from gardencanvas.canvas.tools.tool import Tool
from gardencanvas.garden.structures import KINDS

if TYPE_CHECKING:
    from gardencanvas.canvas.view import PlanView


def tools_of(view: PlanView) -> dict[str, Tool]:
    """One of each tool, by name, but for the crop on the mouse, which the view makes itself."""
    made = (
        SelectTool(view),
        DrawBedTool(view),
        DrawPolygonTool(view),
        StationsTool(view),
        PanTool(view),
        MeasureTool(view),
        AskPlaceTool(view),
        FillPlaceTool(view),
        BackdropTool(view),
        ScaleBackdropTool(view),
        *(DrawStructureTool(view, kind) for kind in KINDS),
    )
    return {tool.name: tool for tool in made}
