"""How near plants of one crop may stand to those of another: the fit engine's limits as distances.

Each rule bounds a share of a footprint, week by week; for one neighbour that share falls with the distance.
The weeks' least distances, sorted, give the distance from which on so few weeks are bad that the rule holds.
Several neighbours add up, which is for the engine to judge: what is found here is tried there.
"""

from enum import Enum
from math import ceil

import numpy as np
from numpy.typing import NDArray

from gardencanvas.crops.model import Crop, Harvest
from gardencanvas.fit.meeting import likeness, taken_above
from gardencanvas.fit.needs import light_good
from gardencanvas.fit.stands import HEIGHT, IN_BED, RADIUS, Stand
from gardencanvas.fit.thresholds import CHOKED, CHOKED_TIME, CROWDED, CROWDED_DAYS, CROWDED_TIME
from gardencanvas.planner.gaps.lens import least_distance
from gardencanvas.planner.gaps.sprouts import Sprouts

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]

STEM_M = 0.10  # a hand's breadth from stem to stem, to plant with a trowel (common practice)
NO_SHARE = 1e9


class Room(Enum):
    """How much of each other's ground is allowed."""

    OWN = "own"  # half of what strains: two neighbours may take as much
    SHARED = "shared"  # all that one neighbour may take before it clashes


def distances(sprouts: Sprouts, stand: Stand, room: Room) -> Floats:
    """Least distance of each sprout to the plants of a stand, metres, shape (n,)."""
    begin, end = stand.begin, stand.end
    if begin >= end:
        return np.zeros(sprouts.count)
    here = np.flatnonzero(sprouts.sizes[IN_BED, :, begin:end].any(axis=0))
    if len(here) == 0:
        return np.zeros(sprouts.count)
    begin, end = begin + int(here[0]), begin + int(here[-1]) + 1
    one, two = sprouts.sizes[:, :, begin:end], stand.sizes[:, begin:end]
    together = one[IN_BED] > 0
    alike = likeness(one, two)
    weeks = np.arange(begin, end)
    ripe = together & (weeks[None, :] <= sprouts.ready_week[:, None])
    theirs = together & (weeks <= _ready_week(stand))
    r, s = one[RADIUS], np.broadcast_to(two[RADIUS], alike.shape)
    mine, other = _limits(sprouts, stand, room, begin, end)
    limit = CHOKED_TIME if room is Room.SHARED else CROWDED_TIME
    days = np.array([float(stand.growing_days)])
    found = np.maximum(
        _kept(least_distance(r, s, _part(mine, alike)), ripe, _bad_weeks(sprouts.growing_days, limit)),
        _kept(least_distance(s, r, _part(other, alike)), theirs, _bad_weeks(days, limit)),
    )
    if room is Room.OWN:
        found = np.maximum(found, _for_light(sprouts, stand, one, two, together))
    return np.where(together.any(axis=1), np.maximum(found, stems(sprouts, stand)), found)


def stems(sprouts: Sprouts, stand: Stand) -> Floats:
    """Least distance from stem to stem while both stand, whatever leaves and roots would bear, shape (n,).

    No hole is dug on top of what grows; and plants of one crop stand no closer in two plantings than the
    closest spacing in the row that a source gives for one.
    """
    return np.array([_stem(w.crop, stand) for w in sprouts.ways])


def _stem(crop: Crop, stand: Stand) -> float:
    if crop.id != stand.crop.id or crop.in_row_m is None:
        return STEM_M
    return max(STEM_M, crop.in_row_m.low)


def _limits(sprouts: Sprouts, stand: Stand, room: Room, begin: int, end: int) -> tuple[Floats, Floats]:
    """Shares of a footprint that are too much for the sprouts, (n, 1), and for the stand, (weeks,)."""
    if room is Room.OWN:
        return np.full((sprouts.count, 1), CROWDED / 2), np.full(end - begin, CROWDED / 2)
    spare = stand.spare
    loose = spare.share.max(axis=0)[spare.size_of_week[begin:end]]
    return (CHOKED + sprouts.load)[:, None], CHOKED + loose


def _ready_week(stand: Stand) -> int:
    if stand.crop.harvest is Harvest.SINGLE:
        return stand.weeks.index(stand.times.harvest_first)
    return stand.weeks.count


def _part(share: Floats, alike: Floats) -> Floats:
    part: Floats = np.where(alike > 1e-6, share / np.maximum(alike, 1e-6), NO_SHARE)
    return part


def _bad_weeks(growing_days: NDArray[np.generic], share: float) -> Ints:
    """How many weeks may be bad before the engine says so."""
    days = np.maximum(float(CROWDED_DAYS), share * growing_days.astype(np.float64))
    return np.ceil(days / 7.0).astype(np.int64) - 1


def _kept(distance: Floats, counts: NDArray[np.bool_], bad: Ints) -> Floats:
    """The distance from which on no more weeks than allowed are bad, shape (n,)."""
    falling = -np.sort(-np.where(counts, distance, 0.0), axis=1)
    at = np.broadcast_to(bad, (len(falling),))[:, None]
    found = np.take_along_axis(falling, np.minimum(at, falling.shape[1] - 1), axis=1)[:, 0]
    return np.where(at[:, 0] < falling.shape[1], found, 0.0)


def _for_light(
    sprouts: Sprouts, stand: Stand, one: Floats, two: Floats, together: NDArray[np.bool_]
) -> Floats:
    """Distance from which on the lower one has light for a full crop in two weeks of three."""
    low = one[HEIGHT] < two[HEIGHT]
    r, s = one[RADIUS], np.broadcast_to(two[RADIUS], low.shape)
    over = taken_above(one, two)
    mine = np.where(over > 1e-6, (1.0 - sprouts.light_good[:, None]) / np.maximum(over, 1e-6), NO_SHARE)
    under = taken_above(two, one)
    theirs = np.where(under > 1e-6, (1.0 - light_good(stand.crop)) / np.maximum(under, 1e-6), NO_SHARE)
    weeks = together.sum(axis=1) // 3
    own = max(ceil((stand.end - stand.begin) / 3) - 1, 0)
    return np.maximum(
        _kept(least_distance(r, s, mine), together & low, weeks),
        _kept(least_distance(s, r, theirs), together & ~low, np.array([own])),
    )
