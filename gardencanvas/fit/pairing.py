"""What two plantings have to do with each other: their stands' meetings and what follows from them."""

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from gardencanvas.fit.adjoining import Adjoining, adjoining, touching_stations
from gardencanvas.fit.beside import Beside, Vault, beside
from gardencanvas.fit.family import Touching, family
from gardencanvas.fit.judged import Judged
from gardencanvas.fit.known import Known, known
from gardencanvas.fit.lifting import lifting
from gardencanvas.fit.meeting import Meeting, meet
from gardencanvas.fit.near import Pairs, near_pairs
from gardencanvas.fit.pressing import pressing
from gardencanvas.fit.roots import roots
from gardencanvas.fit.shading import overhung
from gardencanvas.fit.stands import Stand
from gardencanvas.fit.thresholds import ADJOIN_M
from gardencanvas.fit.water import water

Ints = NDArray[np.intp]


Sharing = tuple[str, Ints]


@dataclass(frozen=True, slots=True, eq=False)
class Pairing:
    """Two plantings that meet, adjoin or stand in each other's light.

    It depends on nothing but the two and the sky.
    """

    meetings: tuple[Meeting, ...]
    besides: tuple[Beside, ...]
    judged: tuple[Judged, ...]
    sharing: tuple[Sharing, ...]  # plantings, and their stations that lose nothing


def pairing(one: tuple[Stand, ...], two: tuple[Stand, ...], over: Vault) -> Pairing | None:
    """The pairing of two plantings' stands; None where they have nothing to do with each other."""
    if one[0].key > two[0].key:
        one, two = two, one
    meetings: list[Meeting] = []
    besides: list[Beside] = []
    judged: list[Judged] = []
    sharing: list[Sharing] = []
    for a in one:
        for b in two:
            besides += [s for x, y in ((a, b), (b, a)) if (s := beside(x, y, over)) is not None]
            reach = _reach(a, b)
            if a.gap2(b) > reach * reach:
                continue
            near = near_pairs(a.xy, b.xy, a.box, b.box, reach)
            if len(near.i) == 0:
                continue
            about = known(a.crop, b.crop)
            meeting = meet(a, b, near)
            if meeting is not None:
                meetings.append(meeting)
                _by_meeting(meeting, near, over, judged, sharing)
            judged += lifting(a, b, near)
            if about.matters or (meeting is not None and all(about.thirsty)):
                _by_neighbours(about, adjoining(a, b, near), meeting, judged, sharing)
    if not meetings and not besides and not judged:
        return None
    return Pairing(tuple(meetings), tuple(besides), tuple(judged), tuple(sharing))


def _reach(a: Stand, b: Stand) -> float:
    """How far apart two plants of these stands may be and have to do with each other on the ground."""
    leaves = a.peak_m + b.peak_m + ADJOIN_M
    return max(leaves, a.root_room.radius_m + b.root_room.radius_m)


def _by_meeting(
    meeting: Meeting, near: Pairs, over: Vault, judged: list[Judged], sharing: list[Sharing]
) -> None:
    """What follows from footprints that overlap."""
    troubled: list[bool] = []
    for stand, other in ((meeting.a, meeting.b), (meeting.b, meeting.a)):
        crowded, timed = pressing(meeting, stand)
        judged += [j for j in (crowded, timed) if j is not None]
        if timed is not None or overhung(stand, meeting, over):
            sharing.append((other.planting.id, other.index[meeting.side(other).stations]))
        troubled.append(crowded is not None or (timed is not None and timed.bad))
    # who is crowded or smothered is told that: roots would only say it twice
    for found in roots(meeting.a, meeting.b, near, (not troubled[0], not troubled[1])):
        judged.append(found)
        other = _other(meeting.a, meeting.b, found)
        sharing.append((other.planting.id, other.index[meeting.side(other).stations]))


def _by_neighbours(
    about: Known,
    side: Adjoining | None,
    meeting: Meeting | None,
    judged: list[Judged],
    sharing: list[Sharing],
) -> None:
    """What follows from standing side by side."""
    if side is None:
        return
    touching = (
        None
        if meeting is None
        else Touching(*(touching_stations(meeting, s) for s in (meeting.a, meeting.b)))
    )
    found = [*family(side, about, touching)]
    watered = water(side, about, touching.of_a if touching else None)
    found += [watered] if watered is not None else []
    for each in found:
        judged.append(each)
        other = _other(side.a, side.b, each)
        sharing.append((other.planting.id, other.index[side.of(other)]))


def _other(a: Stand, b: Stand, found: Judged) -> Stand:
    """The stand that a finding does not say suffers."""
    return b if found.finding.plantings[0] == a.planting.id else a
