"""Beds with the stands that grow in them, and how much of each bed its crops would fill."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from functools import cached_property
from math import pi

import numpy as np
from numpy.typing import NDArray

from gardencanvas.fit.stands import BASE, HEIGHT, LEAF, RADIUS, Stand
from gardencanvas.garden.garden import Layout
from gardencanvas.garden.ground import Bed
from gardencanvas.garden.places import bed_ground, bed_of

Floats = NDArray[np.float64]


@dataclass(frozen=True, eq=False)
class Bedful:
    """One bed and the stands rooted in it; arrays have shape (stands, weeks) of the stands' grid."""

    bed: Bed
    stands: tuple[Stand, ...]

    @cached_property
    def area_m2(self) -> float:
        """Ground of the bed."""
        return float(bed_ground(self.bed).area)

    @cached_property
    def present(self) -> NDArray[np.bool_]:
        """Which stand stands in the bed in which week."""
        week = np.arange(self.stands[0].weeks.count)
        return np.array([(week >= s.begin) & (week < s.end) for s in self.stands])

    @cached_property
    def need_m2(self) -> Floats:
        """Ground each stand's stations need at the usual spacing, shape (stands,)."""
        return np.array([s.ground.need_m2 * len(s.index) for s in self.stands])

    @property
    def density(self) -> Floats:
        """Plants for each one that the usual spacing would put on the whole bed, shape (stands,)."""
        return self.need_m2 / self.area_m2

    @cached_property
    def leaf(self) -> Floats:
        """Leaf area × k per m² of ground that a stand at its usual spacing would have."""
        return np.array([_field_leaf(s) for s in self.stands]) * self.present

    @cached_property
    def height_m(self) -> Floats:
        """Top of the canopy."""
        return np.array([s.sizes[HEIGHT] for s in self.stands]) * self.present

    @cached_property
    def base_m(self) -> Floats:
        """Underside of the canopy."""
        return np.array([s.sizes[BASE] for s in self.stands]) * self.present

    @cached_property
    def cover(self) -> Floats:
        """Ground under each stand's leaves as a share of the bed; neighbours' overlap is not taken off."""
        discs = np.array([pi * s.sizes[RADIUS] ** 2 * len(s.index) for s in self.stands])
        return np.minimum(discs * self.present / self.area_m2, 1.0)

    @cached_property
    def full_cover(self) -> Floats:
        """Share of ground under leaves of each stand on ground of its own, at its usual spacing."""
        shares = [pi * s.sizes[RADIUS] ** 2 / s.ground.need_m2 for s in self.stands]
        full: Floats = np.minimum(np.array(shares), 1.0) * self.present
        return full

    @cached_property
    def groups(self) -> tuple[tuple[int, ...], ...]:
        """Stands in groups that share the bed at some time, directly or through others: by first week."""
        order = sorted((k for k, s in enumerate(self.stands) if s.end > s.begin), key=self._begin)
        found: list[list[int]] = []
        until = -1
        for k in order:
            if not found or self.stands[k].begin >= until:
                found.append([])
            found[-1].append(k)
            until = max(until, self.stands[k].end)
        return tuple(tuple(g) for g in found)

    def _begin(self, stand: int) -> tuple[int, int]:
        return self.stands[stand].begin, stand


def bedfuls(layout: Layout, stands: Mapping[str, Sequence[Stand]]) -> tuple[Bedful, ...]:
    """Every bed of a layout that holds a planting, in the layout's order."""
    inside: dict[str, list[Stand]] = {b.id: [] for b in layout.beds}
    for planting in layout.plantings:
        bed = bed_of(layout, planting)
        if bed is not None:
            inside[bed.id] += stands[planting.id]
    return tuple(Bedful(bed, tuple(inside[bed.id])) for bed in layout.beds if inside[bed.id])


def _field_leaf(stand: Stand) -> Floats:
    """Leaf area × k, spread over the ground the usual spacing gives: footprint by footprint.

    The stand's own leaf area is that of its pattern, thinner where its plants stand closer than they spread;
    here it is that of plants with all their ground.
    """
    footprint = pi * stand.sizes[RADIUS] ** 2
    crowded = np.minimum(stand.ground.station_m2 / np.maximum(footprint, 1e-9), 1.0)
    covered = np.minimum(footprint / stand.ground.need_m2, 1.0)
    leaf: Floats = stand.sizes[LEAF] / np.maximum(crowded, 1e-9) * covered
    return leaf
