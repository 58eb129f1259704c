"""What neighbours do to one planting by standing in its ground: each alone, and several together."""

from collections.abc import Iterable, Mapping, Sequence

import numpy as np

from gardencanvas.fit.codes import Code
from gardencanvas.fit.crowding import crowding
from gardencanvas.fit.crowding_together import crowding_together
from gardencanvas.fit.judged import Judged
from gardencanvas.fit.meeting import Meeting, meet
from gardencanvas.fit.stands import Stand
from gardencanvas.fit.timing import timing

Stands = tuple[Stand, ...]


def pressing(meeting: Meeting, stand: Stand) -> tuple[Judged | None, Judged | None]:
    """How one neighbour crowds a stand, and whether it closes over it in time; not the same thing twice."""
    crowded, timed = crowding(meeting, stand), timing(meeting, stand)
    if crowded is not None and timed is not None and _says_it(timed, crowded):
        crowded = None
    return crowded, timed


def _says_it(one: Judged, other: Judged) -> bool:
    """Whether one finding marks every station of another, and none less badly: then one is enough."""
    size = int(max(one.finding.stations.max(), other.finding.stations.max())) + 1
    mark = np.zeros(size, dtype=np.uint8)
    mark[one.finding.stations] = one.marks
    return bool((mark[other.finding.stations] >= other.marks).all())


def pressed_together(
    stands: Stands, meetings: Sequence[Meeting], judged: Iterable[Judged]
) -> tuple[Judged, ...]:
    """What several neighbours do to a planting together.

    Parameters
    ----------
    meetings
        All of its stands.
    judged
        What is said of it beside each neighbour alone.
    """
    if len(meetings) < 2:
        return ()
    alone = np.zeros(stands[0].planting.pattern.count, dtype=np.uint8)
    for each in judged:
        if each.finding.code in (Code.CROWDED, Code.TOO_LATE):
            np.maximum.at(alone, each.finding.stations, each.marks)
    found = (
        crowding_together(s, [m for m in meetings if s is m.a or s is m.b], alone[s.index]) for s in stands
    )
    return tuple(j for j in found if j is not None)


class Pressed:
    """What is said of single plantings for their neighbours' standing in their ground, and nothing else.

    Meetings are kept as long as the same stands meet.
    """

    def __init__(self) -> None:
        self._met: dict[tuple[object, ...], tuple[Stand, Stand, Meeting | None]] = {}

    def of(self, stands: Mapping[str, Stands], planting: str) -> tuple[Judged, ...]:
        """What is said of one planting, as in the whole report."""
        judged: list[Judged] = []
        every: list[Meeting] = []
        for other in sorted(stands):
            if other != planting:
                meetings = self._meetings(stands[min(planting, other)], stands[max(planting, other)])
                every += meetings
                for m in meetings:
                    found = pressing(m, m.a if m.a.planting.id == planting else m.b)
                    judged += [j for j in found if j is not None]
        return (*judged, *pressed_together(stands[planting], every, judged))

    def _meetings(self, one: Stands, two: Stands) -> list[Meeting]:
        found = (self._meeting(a, b) for a in one for b in two)
        return [m for m in found if m is not None]

    def _meeting(self, a: Stand, b: Stand) -> Meeting | None:
        key = (a.key, b.key)
        kept = self._met.get(key)
        if kept is None or kept[0] is not a or kept[1] is not b:
            kept = self._met[key] = (a, b, meet(a, b))
        return kept[2]
