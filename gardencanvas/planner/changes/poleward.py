"""Putting a tall crop, with its support, on the side of the bed where its shade falls outside."""

from collections.abc import Iterator
from math import hypot

import numpy as np

from gardencanvas.fit.report import Kind, Remedy
from gardencanvas.garden.places import bed_ground
from gardencanvas.garden.planting import Planting
from gardencanvas.light.compass import to_plan
from gardencanvas.planner.case import Case
from gardencanvas.planner.changes.shifting import STEP_M, carried, room
from gardencanvas.planner.codes import Change
from gardencanvas.planner.ladder import Ladder, choices

TROPIC_DEG = 23.44  # between the tropics the noon sun stands on either side: no side is the shaded one


def poleward(case: Case) -> Iterator[Ladder]:
    """For a shading finding: each neighbour that takes the light moved to the poleward rim of its bed.

    North in the northern hemisphere, south in the southern.
    """
    latitude = case.garden.site.latitude_deg
    if case.finding.kind is not Kind.SHADING or abs(latitude) < TROPIC_DEG:
        return
    ((x, y),) = to_plan([[0.0, float(np.sign(latitude))]], case.garden.site.bearing_deg)
    for planting in case.changeable:
        if planting is not case.named[0] and (remedy := _to_the_rim(case, planting, float(x), float(y))):
            yield choices([remedy])


def _to_the_rim(case: Case, planting: Planting, x: float, y: float) -> Remedy | None:
    """The move as far that way as the bed has room."""
    bed = case.bed(planting)
    if bed is None:
        return None
    x0, y0, x1, y1 = bed_ground(bed).bounds
    fits = room(case, planting, bed)
    low, high = 0, int(hypot(x1 - x0, y1 - y0) / STEP_M) + 1
    while high - low > 1:
        middle = (low + high) // 2
        step = np.array((x, y)) * middle * STEP_M
        low, high = (middle, high) if fits(planting.stations + step) else (low, middle)
    if low == 0:
        return None
    return Remedy(
        Change.SHIFT,
        {
            "planting": planting.id, "dx_m": round(x * low * STEP_M, 6), "dy_m": round(y * low * STEP_M, 6),
            "distance_m": round(low * STEP_M, 6), "toward": "poleward", "other": bed.id,
            "carried": " ".join(carried(case, planting)),
        },
    )  # fmt: skip
