"""Where a planting lies in its bed, in words to pace off with a tape."""

import numpy as np

from gardencanvas.garden.ground import Bed
from gardencanvas.garden.pattern import Block, Edging, Floats, RingPattern, Rows, Spots, Strip
from gardencanvas.garden.planting import Planting
from gardencanvas.paper.bedmap.lengths import taped, taped_list
from gardencanvas.paper.bedmap.tape import ALONG_DEG, Tape, grouped, tape_of, turned_from
from gardencanvas.words.language import mark, say
from gardencanvas.words.plain import Measure

_LISTED = 4
_EVEN_M = 0.006


def placed(bed: Bed, planting: Planting, measure: Measure, bearing_deg: float) -> str:
    """One or two sentences: rows from the edge, the first plant from the end, and so on.

    Parameters
    ----------
    bearing_deg
        What the plan's top edge faces: edges are named by the sky, as one stands before them.
    """
    told = _Placing(tape_of(bed), planting, measure, bearing_deg)
    pattern = planting.pattern
    if isinstance(pattern, RingPattern):
        return told.ring(pattern)
    if isinstance(pattern, Edging):
        return told.line(pattern)
    if isinstance(pattern, (Rows, Strip, Block)):
        return told.rows(pattern)
    return told.spots()


class _Placing:
    """The words for one planting in one bed."""

    def __init__(self, tape: Tape, planting: Planting, measure: Measure, bearing_deg: float) -> None:
        self._tape, self._planting, self._measure = tape, planting, measure
        self._at = tape.distances(planting.stations)
        wind = tape.edge_word(bearing_deg)
        self._edge = say("the {wind} edge", wind=wind) if tape.straight else say("the {wind} side", wind=wind)
        self._end = say("the {wind} end", wind=tape.end_word(bearing_deg))

    def rows(self, pattern: Rows | Strip | Block) -> str:
        turned = turned_from(self._tape, self._planting)
        across = abs(abs(turned) - 90.0) <= ALONG_DEG
        if abs(turned) > ALONG_DEG and not across:
            point = self._point(self._at[0])
            return say(
                "Rows turned by {angle}°; the first plant {point}.", angle=round(abs(turned)), point=point
            )
        rows = grouped(self._at[:, ::-1] if across else self._at)
        edge, end = (self._end, self._edge) if across else (self._edge, self._end)
        first = self._say(float(rows[:, 1].min()))
        if len(self._at) == 1:
            at = self._say(rows[0, 0])
            return say("{at} from {edge}, {first} from {end}.", at=at, edge=edge, first=first, end=end)
        lie = self._several(rows[:, 0], edge, across=across)
        return say("{rows}; {plants}.", rows=lie, plants=self._plants(rows, first, end, pattern))

    def _plants(self, rows: Floats, first: str, end: str, pattern: Rows | Strip | Block) -> str:
        """Where the plants stand in the rows."""
        if np.ptp(rows[:, 1]) <= _EVEN_M:
            told = mark("first plant {first} from {end}, then every {every}")
        elif isinstance(pattern, Block) and pattern.staggered:
            told = mark(
                "first plant {first} from {end}, then every {every}; every second row half a spacing on"
            )
        else:
            told = mark("first plant {first} from {end}, then every {every}; rows begin as drawn")
        return say(told, first=first, end=end, every=self._every())

    def _every(self) -> str:
        pattern = self._planting.pattern
        return taped(self._measure, pattern.spacing_m * pattern.every)

    def _several(self, values: Floats, edge: str, *, across: bool) -> str:
        """Rows listed, or the first and their step where there are many at even steps."""
        steps = np.diff(values)
        if len(values) == 1:
            told = mark("Row across the bed {at} from {edge}") if across else mark("Row {at} from {edge}")
        elif len(values) <= _LISTED or np.ptp(steps) > _EVEN_M:
            told = mark("Rows across the bed {at} from {edge}") if across else mark("Rows {at} from {edge}")
        else:
            many = mark("{n} rows, {every} apart, the first {at} from {edge}")
            many_across = mark("{n} rows across the bed, {every} apart, the first {at} from {edge}")
            every = taped(self._measure, float(steps.mean()))
            at = self._say(values[0])
            return say(many_across if across else many, n=len(values), every=every, at=at, edge=edge)
        return say(told, at=taped_list(self._measure, values.tolist()), edge=edge)

    def ring(self, pattern: RingPattern) -> str:
        return say(
            "A ring {across} across round a point {point}; every {every} round it.",
            across=taped(self._measure, 2 * pattern.radius_m),
            point=self._point(self._tape.distances(np.array([pattern.origin]))[0]),
            every=self._every(),
        )

    def line(self, pattern: Edging) -> str:
        first, every = self._point(self._at[0]), self._every()
        if pattern.closed:
            return say("All round, every {every}; the first plant {point}.", every=every, point=first)
        return say(
            "Along a line of {length}, every {every}; the first plant {point}.",
            length=taped(self._measure, pattern.length_m),
            every=every,
            point=first,
        )

    def spots(self) -> str:
        if len(self._at) <= _LISTED:
            return f"{'; '.join(self._point(each) for each in self._at)}."
        low, high = self._at.min(axis=0), self._at.max(axis=0)
        few = mark("Single plants, see the drawing: {low} to {high} from {end}, {near} to {far} from {edge}.")
        many = mark("Scattered, see the drawing: {low} to {high} from {end}, {near} to {far} from {edge}.")
        return say(
            few if isinstance(self._planting.pattern, Spots) else many,
            low=self._say(low[0]),
            high=self._say(high[0]),
            end=self._end,
            near=self._say(low[1]),
            far=self._say(high[1]),
            edge=self._edge,
        )

    def _point(self, at: Floats) -> str:
        along, across = self._say(at[0]), self._say(at[1])
        return say(
            "{along} from {end}, {across} from {edge}",
            along=along,
            end=self._end,
            across=across,
            edge=self._edge,
        )

    def _say(self, metres: float) -> str:
        return taped(self._measure, float(metres))
