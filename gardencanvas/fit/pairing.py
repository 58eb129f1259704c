"""What two plantings have to do with each other: their stands' meetings and what follows from them."""

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from gardencanvas.fit.beside import Beside, Vault, beside
from gardencanvas.fit.crowding import crowding
from gardencanvas.fit.judged import Judged
from gardencanvas.fit.meeting import Meeting, meet
from gardencanvas.fit.roots import roots
from gardencanvas.fit.shading import overhung
from gardencanvas.fit.stands import Stand
from gardencanvas.fit.timing import timing

Ints = NDArray[np.intp]


@dataclass(frozen=True, slots=True, eq=False)
class Pairing:
    """Two plantings that meet or stand in each other's light; depends on nothing but the two and the sky."""

    meetings: tuple[Meeting, ...]
    besides: tuple[Beside, ...]
    judged: tuple[Judged, ...]
    sharing: tuple[tuple[str, Ints], ...]  # plantings, and their stations that lose nothing


def pairing(one: tuple[Stand, ...], two: tuple[Stand, ...], over: Vault) -> Pairing | None:
    """The pairing of two plantings' stands; None where they never share ground or light."""
    if one[0].key > two[0].key:
        one, two = two, one
    meetings = tuple(m for a in one for b in two if (m := meet(a, b)) is not None)
    besides = tuple(
        s for a in one for b in two for x, y in ((a, b), (b, a)) if (s := beside(x, y, over)) is not None
    )
    if not meetings and not besides:
        return None
    judged: list[Judged] = []
    sharing: list[tuple[str, Ints]] = []
    for meeting in meetings:
        troubled: list[bool] = []
        for stand, other in ((meeting.a, meeting.b), (meeting.b, meeting.a)):
            crowded, timed = crowding(meeting, stand), timing(meeting, stand)
            judged += [j for j in (crowded, timed) if j is not None]
            if timed is not None or overhung(stand, meeting, over):
                sharing.append((other.planting.id, other.index[meeting.side(other).stations]))
            troubled.append(crowded is not None or (timed is not None and timed.bad))
        # who is crowded or smothered is told that: roots would only say it twice
        for found in roots(meeting.a, meeting.b, (not troubled[0], not troubled[1])):
            judged.append(found)
            other = meeting.b if found.finding.plantings[0] == meeting.a.planting.id else meeting.a
            sharing.append((other.planting.id, other.index[meeting.side(other).stations]))
    return Pairing(meetings, besides, tuple(judged), tuple(sharing))
