"""Planting a proposal: a pure edit, one step."""

from typing import Protocol

from gardencanvas.garden.edits import add, rebuilt
from gardencanvas.garden.garden import Garden
from gardencanvas.garden.planting import Planting
from gardencanvas.garden.value import new_id


class Proposed(Protocol):
    """What holds a planting that can be made."""

    @property
    def planting(self) -> Planting:
        """The planting."""
        ...


def plant(garden: Garden, layout_id: str, proposal: Proposed) -> Garden:
    """The garden with the proposal's planting in it; the garden given stays as it is.

    Raises
    ------
    Refusal
        If the layout cannot hold it any more.
    """
    planting = proposal.planting
    if planting.id in garden.layout(layout_id).by_id:
        planting = rebuilt(planting, id=new_id("planting"))
    return add(garden, layout_id, [planting])
