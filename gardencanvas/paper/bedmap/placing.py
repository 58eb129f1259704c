"""Where a planting lies in its bed, in words to pace off with a tape."""

import numpy as np

from gardencanvas.garden.ground import Bed
from gardencanvas.garden.pattern import Block, Edging, Floats, RingPattern, Rows, Spots, Strip
from gardencanvas.garden.planting import Planting
from gardencanvas.paper.bedmap.lengths import taped, taped_list
from gardencanvas.paper.bedmap.tape import ALONG_DEG, Tape, grouped, tape_of, turned_from
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
        self._edge = f"the {tape.edge_word(bearing_deg)} {'edge' if tape.straight else 'side'}"
        self._end = f"the {tape.end_word(bearing_deg)} end"

    def rows(self, pattern: Rows | Strip | Block) -> str:
        turned = turned_from(self._tape, self._planting)
        if abs(turned) <= ALONG_DEG:
            rows, edge, end = grouped(self._at), self._edge, self._end
            name = "row"
        elif abs(abs(turned) - 90.0) <= ALONG_DEG:
            rows, edge, end = grouped(self._at[:, ::-1]), self._end, self._edge
            name = "row across the bed"
        else:
            return f"Rows turned by {abs(turned):.0f}°; the first plant {self._point(self._at[0])}."
        single = len(self._at) == 1
        first = float(rows[:, 1].min())
        if single:
            return f"{self._say(rows[0, 0])} from {edge}, {self._say(first)} from {end}."
        said = (
            f"{_capital(self._several(rows[:, 0], name))} from {edge}; first plant {self._say(first)} from "
        )
        shifted = ""
        if np.ptp(rows[:, 1]) > _EVEN_M:
            staggered = isinstance(pattern, Block) and pattern.staggered
            shifted = "; every second row half a spacing on" if staggered else "; rows begin as drawn"
        return f"{said}{end}, then every {self._every()}{shifted}."

    def _every(self) -> str:
        pattern = self._planting.pattern
        return taped(self._measure, pattern.spacing_m * pattern.every)

    def _several(self, values: Floats, name: str) -> str:
        """Rows listed, or the first and their step where there are many at even steps."""
        head, _, tail = name.partition(" ")
        tail = f" {tail}" if tail else ""
        if len(values) == 1:
            return f"{name} {self._say(values[0])}"
        steps = np.diff(values)
        if len(values) <= _LISTED or np.ptp(steps) > _EVEN_M:
            return f"{head}s{tail} {taped_list(self._measure, values.tolist())}"
        every = taped(self._measure, float(steps.mean()))
        return f"{len(values)} {head}s{tail}, {every} apart, the first {self._say(values[0])}"

    def ring(self, pattern: RingPattern) -> str:
        centre = self._tape.distances(np.array([pattern.origin]))[0]
        across = taped(self._measure, 2 * pattern.radius_m)
        return f"A ring {across} across round a point {self._point(centre)}; every {self._every()} round it."

    def line(self, pattern: Edging) -> str:
        whole = "all round" if pattern.closed else f"along a line of {taped(self._measure, pattern.length_m)}"
        return f"{_capital(whole)}, every {self._every()}; the first plant {self._point(self._at[0])}."

    def spots(self) -> str:
        if len(self._at) <= _LISTED:
            return f"{_capital('; '.join(self._point(each) for each in self._at))}."
        low, high = self._at.min(axis=0), self._at.max(axis=0)
        kind = "Single plants" if isinstance(self._planting.pattern, Spots) else "Scattered"
        return (
            f"{kind}, see the drawing: {self._say(low[0])} to {self._say(high[0])} from {self._end}, "
            f"{self._say(low[1])} to {self._say(high[1])} from {self._edge}."
        )

    def _point(self, at: Floats) -> str:
        return f"{self._say(at[0])} from {self._end}, {self._say(at[1])} from {self._edge}"

    def _say(self, metres: float) -> str:
        return taped(self._measure, float(metres))


def _capital(text: str) -> str:
    return text[:1].upper() + text[1:]
