"""In what order measures are shown: by how much each matters to the grower, whose own choice it is.

Weights order the rows and nothing else: no sum is made of them, because what matters to one grower cannot be
set off against another's.
"""

from collections.abc import Iterable, Mapping

from gardencanvas.measures.codes import Code
from gardencanvas.measures.estimates import Measure

MOST, MUCH, SOME, NONE = 3, 2, 1, 0  # a measure of weight NONE is left out

# To begin with (common practice of kitchen gardens): first whether it works, then what it gives and costs.
WEIGHTS: Mapping[Code, int] = {
    Code.CLASHES: MOST,
    Code.STRAINS: MOST,
    Code.HARVEST: MOST,
    Code.LER: MOST,
    Code.SPARE: MOST,
    Code.ATER: MUCH,
    Code.GAP_WEEKS: MUCH,
    Code.GLUT_WEEKS: MUCH,
    Code.HARVEST_WEEKS: MUCH,
    Code.HOURS: MUCH,
    Code.WATER: MUCH,
    Code.SEED_COST: MUCH,
    Code.HAZARDS: MUCH,
}


def weight(code: Code | str, weights: Mapping[Code, int] = WEIGHTS) -> int:
    """How much a measure matters, 0–3; some where nothing is said of it."""
    return weights.get(Code(code), SOME)


def by_importance(measures: Iterable[Measure], weights: Mapping[Code, int] = WEIGHTS) -> tuple[Measure, ...]:
    """Measures that matter, the weightiest first; those of equal weight in the order they come in."""
    some = [m for m in measures if weight(m.code, weights) > NONE]
    return tuple(sorted(some, key=lambda m: -weight(m.code, weights)))
