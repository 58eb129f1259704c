"""The bed map: what is taken outdoors on a clipboard, true to a stated scale."""

from gardencanvas.paper.bedmap.making import bed_map, write_bedmap
from gardencanvas.paper.bedmap.plan import Options, Plan
from gardencanvas.paper.bedmap.strip import planting_strip

__all__ = ["Options", "Plan", "bed_map", "planting_strip", "write_bedmap"]
