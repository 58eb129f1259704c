"""Which plantings lie near enough that their plants might meet."""

from collections.abc import Iterable, Mapping, Sequence

import numpy as np
from numpy.typing import NDArray
from shapely import STRtree
from shapely import box as rectangle

from gardencanvas.fit.stands import Stand

Floats = NDArray[np.float64]
Ints = NDArray[np.intp]

_PLAIN = 200_000  # comparisons up to which a tree does not pay


class Nearby:
    """The boxes of plantings, kept from one look to the next."""

    def __init__(self) -> None:
        self._ids: list[str] = []
        self._place: dict[str, int] = {}
        self._boxes: Floats = np.empty((0, 8))

    def pairs(
        self, stands: Mapping[str, tuple[Stand, ...]], changed: Sequence[str]
    ) -> Iterable[tuple[str, str]]:
        """Pairs of plantings, one of them changed since the last look, that may share ground or light.

        The box of the one, widened by its footprints or its shade, meets the box of the other, widened by
        its footprints. Each pair comes once, in the order of ids.
        """
        ids = list(stands)
        if ids == self._ids:
            for each in changed:
                self._boxes[self._place[each]] = _reach(stands[each])
        else:
            self._ids, self._place = ids, {p: k for k, p in enumerate(ids)}
            self._boxes = np.array([_reach(stands[p]) for p in ids]).reshape(-1, 8)
        if not changed or len(stands) < 2:
            return []
        rows = np.array([self._place[p] for p in changed])
        narrow, wide = self._boxes[:, :4], self._boxes[:, 4:]
        i, j = _meeting(wide[rows], narrow)
        k, m = _meeting(narrow[rows], wide)
        found = zip(rows[np.concatenate([i, k])].tolist(), np.concatenate([j, m]).tolist(), strict=True)
        return sorted({(min(ids[a], ids[b]), max(ids[a], ids[b])) for a, b in found if a != b})


def _meeting(some: Floats, boxes: Floats) -> tuple[Ints, Ints]:
    """Which of some boxes meet which of all boxes."""
    if len(some) * len(boxes) <= _PLAIN:
        one = some[:, None, :]
        meet = (
            (one[..., 0] <= boxes[:, 2])
            & (one[..., 2] >= boxes[:, 0])
            & (one[..., 1] <= boxes[:, 3])
            & (one[..., 3] >= boxes[:, 1])
        )
        i, j = np.nonzero(meet)
    else:
        i, j = STRtree(rectangle(*boxes.T)).query(rectangle(*some.T))
    return i, j


def _reach(stands: tuple[Stand, ...]) -> Floats:
    """Narrow and wide box of a planting, shape (8,)."""
    if len(stands) == 1:
        return stands[0].reach
    parts = np.array([s.reach for s in stands])
    low, high = parts.min(axis=0), parts.max(axis=0)
    return np.concatenate([low[:2], high[2:4], low[4:6], high[6:]])
