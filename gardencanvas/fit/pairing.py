"""What two plantings have to do with each other: their stands' meetings and what follows from them."""

from dataclasses import dataclass

from gardencanvas.fit.crowding import crowding
from gardencanvas.fit.judged import Judged
from gardencanvas.fit.meeting import Meeting, meet
from gardencanvas.fit.stands import Stand
from gardencanvas.fit.timing import timing


@dataclass(frozen=True, slots=True, eq=False)
class Pairing:
    """Two plantings that meet; depends on nothing but the two."""

    meetings: tuple[Meeting, ...]
    judged: tuple[Judged, ...]


def pairing(one: tuple[Stand, ...], two: tuple[Stand, ...]) -> Pairing | None:
    """The pairing of two plantings' stands; None where they never share ground."""
    if one[0].key > two[0].key:
        one, two = two, one
    meetings = tuple(m for a in one for b in two if (m := meet(a, b)) is not None)
    if not meetings:
        return None
    judged = []
    for meeting in meetings:
        for stand in (meeting.a, meeting.b):
            judged += [j for j in (crowding(meeting, stand), timing(meeting, stand)) if j is not None]
    return Pairing(meetings, tuple(judged))
