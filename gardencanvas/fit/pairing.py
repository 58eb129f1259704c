"""What two plantings have to do with each other: their stands' meetings and what follows from them."""

from dataclasses import dataclass

from gardencanvas.fit.beside import Beside, Vault, beside
from gardencanvas.fit.crowding import crowding
from gardencanvas.fit.judged import Judged
from gardencanvas.fit.meeting import Meeting, meet
from gardencanvas.fit.stands import Stand
from gardencanvas.fit.timing import timing


@dataclass(frozen=True, slots=True, eq=False)
class Pairing:
    """Two plantings that meet or stand in each other's light; depends on nothing but the two and the sky."""

    meetings: tuple[Meeting, ...]
    besides: tuple[Beside, ...]
    judged: tuple[Judged, ...]


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
    judged = []
    for meeting in meetings:
        for stand in (meeting.a, meeting.b):
            judged += [j for j in (crowding(meeting, stand), timing(meeting, stand)) if j is not None]
    return Pairing(meetings, besides, tuple(judged))
