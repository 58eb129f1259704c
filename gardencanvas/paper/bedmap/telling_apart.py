"""Which mark each planting has: its number's own, or another where a neighbour has that one already."""

from collections.abc import Sequence

import numpy as np
from shapely import STRtree
from shapely.geometry.base import BaseGeometry

MARKS = 10
NEAR_M = 0.5  # plantings so near each other are seen at one glance


def told_apart(grounds: Sequence[BaseGeometry], marks: int = MARKS, near_m: float = NEAR_M) -> list[int]:
    """The mark of each planting, from 1, in their order; neighbours differ.

    Where one has as many neighbours before it as there are marks, the mark whose bearers are fewest among
    them is taken.

    Parameters
    ----------
    grounds
        What each takes, metres.
    """
    if not len(grounds):
        return []
    tree = STRtree(list(grounds))
    first, second = tree.query(list(grounds), predicate="dwithin", distance=near_m)
    found: list[int] = []
    for i in range(len(grounds)):
        near = second[(first == i) & (second < i)]
        borne = np.bincount([found[j] for j in near.tolist()], minlength=marks + 1)[1 : marks + 1]
        own = i % marks
        found.append(1 + (own if borne[own] == 0 else int(np.argmin(borne))))
    return found
