"""Which plantings lie near enough that their plants might meet."""

from collections.abc import Iterable, Mapping, Sequence

import numpy as np
from numpy.typing import NDArray
from shapely import STRtree
from shapely import box as rectangle

from gardencanvas.fit.stands import Stand

Floats = NDArray[np.float64]

_PLAIN = 200_000  # comparisons up to which a tree does not pay


def nearby(stands: Mapping[str, tuple[Stand, ...]], changed: Sequence[str]) -> Iterable[tuple[str, str]]:
    """Pairs of plantings, one of them changed, whose boxes widened by their greatest radius overlap.

    Each pair comes once, in the order of ids.
    """
    if not changed or len(stands) < 2:
        return []
    ids = list(stands)
    boxes = np.array([_reach(stands[p]) for p in ids])
    place = {p: k for k, p in enumerate(ids)}
    rows = np.array([place[p] for p in changed])
    if len(rows) * len(ids) <= _PLAIN:
        some = boxes[rows][:, None, :]
        meet = (
            (some[..., 0] <= boxes[:, 2]) & (some[..., 2] >= boxes[:, 0])
            & (some[..., 1] <= boxes[:, 3]) & (some[..., 3] >= boxes[:, 1])
        )  # fmt: skip
        i, j = np.nonzero(meet)
    else:
        shapes = rectangle(*boxes.T)
        i, j = STRtree(shapes).query(shapes[rows])
    one, two = rows[i], j
    return sorted(
        {(min(ids[a], ids[b]), max(ids[a], ids[b])) for a, b in zip(one, two, strict=True) if a != b}
    )


def _reach(stands: tuple[Stand, ...]) -> Floats:
    parts = np.array([[*(s.box[:2] - s.peak_m), *(s.box[2:] + s.peak_m)] for s in stands])
    return np.concatenate([parts[:, :2].min(axis=0), parts[:, 2:].max(axis=0)])
