"""Moving a planting, or some of its spots, a few centimetres."""

from collections.abc import Callable, Iterator
from functools import lru_cache
from math import cos, hypot, radians, sin

import numpy as np
import shapely

from gardencanvas.fit.aids import climbs
from gardencanvas.fit.ground import usual_spacing
from gardencanvas.fit.outside import in_beds
from gardencanvas.fit.report import Kind, Remedy
from gardencanvas.fit.thresholds import OUTSIDE_M, SUPPORT_REACH_M
from gardencanvas.garden.ground import Bed, LineSupport, RingSupport
from gardencanvas.garden.laying import frame_of
from gardencanvas.garden.pattern import Spots
from gardencanvas.garden.places import bed_ground
from gardencanvas.garden.planting import Planting
from gardencanvas.planner.case import Case, Floats, Ints
from gardencanvas.planner.codes import Change, Numbers
from gardencanvas.planner.ladder import Ladder, choices, coarsely, highest

STEP_M = 0.01
FARTHEST = 50  # steps
FIRST = 3
MOST_MOVED = 60  # plants of rows moved by themselves: more are a planting of their own
INTO_BED_M = 1.0
LEVEL = 0.01  # metres: neither of two signs of a direction leads away from what stands level


def shifts(case: Case) -> Iterator[Ladder]:
    """Ladders that move each planting along and across its bed, away from the other one."""
    for planting in case.changeable:
        bed = case.bed(planting)
        if case.finding.kind is Kind.OUTSIDE:
            yield from _into(case, planting, bed)
            continue
        fits = room(case, planting, bed)
        angle = radians(_angle(bed) if bed is not None else planting.pattern.angle_deg)
        own, there, other = case.facing(planting)
        axes = (("along", cos(angle), sin(angle)), ("across", -sin(angle), cos(angle)))
        for word, x, y in axes:
            apart = float((own - there) @ (x, y))
            for sign in (1.0, -1.0) if abs(apart) < LEVEL else (float(np.sign(apart)),):
                away = other is not None and abs(apart) >= LEVEL
                toward = ("away", other.id if other else "") if away else (word, "")
                some = _some(case, planting)
                if some is None or not isinstance(planting.pattern, Spots):
                    yield _ladder(case, planting, fits, (sign * x, sign * y), toward, None)
                if some is not None:
                    yield _ladder(case, planting, fits, (sign * x, sign * y), toward, some)


def _some(case: Case, planting: Planting) -> Ints | None:
    """Those of its plants that fare ill, where they are few enough to be moved by themselves."""
    stations = case.troubled(planting)
    spots = isinstance(planting.pattern, Spots)
    most = planting.pattern.count - 1 if spots else min(planting.pattern.count // 2, MOST_MOVED)
    return stations if 0 < len(stations) <= most else None


@lru_cache(maxsize=256)
def _angle(bed: Bed) -> float:
    return frame_of(bed).angle_deg


def _ladder(
    case: Case, planting: Planting, fits: Callable[[Floats], bool], unit: tuple[float, float],
    toward: tuple[str, str], some: Ints | None,
) -> Ladder:  # fmt: skip
    along = " ".join(carried(case, planting))
    moving = planting.stations if some is None else planting.stations[some]

    def at(step: int) -> Remedy | None:
        dx, dy = round(unit[0] * step * STEP_M, 6), round(unit[1] * step * STEP_M, 6)
        if not fits(moving + np.array((dx, dy))):
            return None
        numbers: Numbers = {
            "planting": planting.id, "dx_m": dx, "dy_m": dy, "distance_m": step * STEP_M,
            "toward": toward[0], "other": toward[1],
        }  # fmt: skip
        if some is not None:
            return Remedy(Change.SHIFT_STATIONS, {**numbers, **_which(some, planting)})
        return Remedy(Change.SHIFT, {**numbers, "carried": along})

    code = Change.SHIFT if some is None else Change.SHIFT_STATIONS
    steps = highest(FARTHEST, at)
    return Ladder(code, planting.id, steps, at, coarsely(FIRST, steps))


def _which(stations: Ints, planting: Planting) -> Numbers:
    return {
        "stations": " ".join(map(str, stations.tolist())),
        "count": len(stations) * planting.per_station,
        "plants": planting.plants,
    }


def room(case: Case, planting: Planting, bed: Bed | None) -> Callable[[Floats], bool]:
    """Whether points have room in the planting's bed.

    They keep half the usual spacing from its rim, or what the planting kept before where that is less. A
    planting that lies in no bed, or not wholly in one, may go anywhere: whether it is then worse off is for
    the engine to say.
    """
    if bed is None or not in_beds(planting.stations, [bed]).all():
        return lambda points: True
    ground = bed_ground(bed)
    usual = usual_spacing(case.crop(planting), planting.per_station)[0]
    kept = float(shapely.distance(ground.boundary, shapely.points(planting.stations)).min())
    keep = min(kept, usual / 2) - OUTSIDE_M

    def has_room(points: Floats) -> bool:
        if not shapely.dwithin(ground, shapely.points(points), OUTSIDE_M).all():
            return False
        return keep <= 0.0 or float(shapely.distance(ground.boundary, shapely.points(points)).min()) >= keep

    return has_room


def carried(case: Case, planting: Planting) -> list[str]:
    """Supports that serve this planting alone: they go where it goes."""
    if not case.supported(planting):
        return []
    others = [p for p in case.layout.plantings if p.id != planting.id and climbs(case.crop(p))]
    return [
        s.id
        for s in case.layout.supports
        if not s.locked and _reaches(s, planting) and not any(_reaches(s, p) for p in others)
    ]


def _reaches(support: LineSupport | RingSupport, planting: Planting) -> bool:
    if isinstance(support, RingSupport):
        shape = shapely.Point(support.centre)
        reach = support.radius_m + SUPPORT_REACH_M
    else:
        shape, reach = shapely.LineString([support.begin, support.end]), SUPPORT_REACH_M
    return bool(shapely.dwithin(shape, shapely.points(planting.stations), reach).any())


def _into(case: Case, planting: Planting, bed: Bed | None) -> Iterator[Ladder]:
    """The shortest move along its axes that brings a planting into a bed near it, where it fits in."""
    middle = planting.stations.mean(axis=0)
    beds = [bed] if bed is not None else list(case.layout.beds)
    beds.sort(key=lambda b: shapely.distance(bed_ground(b), shapely.Point(middle)))
    for near in beds[:2]:
        step = _step_into(near, planting, usual_spacing(case.crop(planting), planting.per_station)[0] / 2)
        if step is None:
            continue
        remedy = Remedy(
            Change.SHIFT,
            {
                "planting": planting.id, "dx_m": step[0], "dy_m": step[1],
                "distance_m": round(hypot(*step), 6), "toward": "into", "other": near.id,
                "carried": " ".join(carried(case, planting)),
            },
        )  # fmt: skip
        yield choices([remedy])


def _step_into(bed: Bed, planting: Planting, keep: float) -> tuple[float, float] | None:
    """How far it must go; None where the bed is too small or too far away."""
    frame = frame_of(bed)
    u0, v0, u1, v1 = frame.ground.bounds
    local = np.array([frame.local((float(x), float(y))) for x, y in planting.stations])
    move = []
    for low, high, some in ((u0, u1, local[:, 0]), (v0, v1, local[:, 1])):
        rim = min(keep, (high - low - float(np.ptp(some))) / 2)
        if rim < 0.0:
            return None
        short = max(low + rim - float(some.min()), 0.0) + min(high - rim - float(some.max()), 0.0)
        move.append(np.sign(short) * np.ceil(abs(short) / STEP_M - 1e-9) * STEP_M)
    angle = radians(frame.angle_deg)
    dx = float(move[0] * cos(angle) - move[1] * sin(angle))
    dy = float(move[0] * sin(angle) + move[1] * cos(angle))
    if not 0.0 < hypot(dx, dy) <= INTO_BED_M:
        return None
    return round(dx, 6), round(dy, 6)
