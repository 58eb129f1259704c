"""How large a planting stands on a date, for the plan: computed once per planting value."""

from dataclasses import dataclass
from datetime import date
from typing import Literal

import numpy as np

from gardencanvas.canvas.palette import Palette, Tint, tint_of
from gardencanvas.crops.catalogue import Catalogue, UnknownCrop
from gardencanvas.crops.model import Crop, Habit
from gardencanvas.fit.aids import supported, warmed
from gardencanvas.fit.stands import grid
from gardencanvas.garden.garden import Garden, Layout
from gardencanvas.garden.planting import Planting
from gardencanvas.season.course import Course, Growing
from gardencanvas.season.growth import follow

Stage = Literal["coming", "standing", "gone"]


@dataclass(frozen=True, slots=True)
class OnDate:
    """One planting on one day."""

    stage: Stage
    radius_m: float
    height_m: float
    ripe: bool


class Growth:
    """One planting's form and its curve through the season."""

    def __init__(self, planting: Planting, crop: Crop | None, course: Course | None, row: int = 0) -> None:
        self.planting = planting
        self.crop = crop
        self._course = course
        self._row = row
        spread = crop.spread_m.mid if crop is not None and crop.spread_m is not None else 0.3
        self.full_radius_m = spread / 2
        if course is not None:
            self._middle = (course.weeks.starts + 3).astype(np.int64)
            self.full_radius_m = max(float(course.radius_m[row].max()), 0.02)

    @property
    def habit(self) -> Habit:
        """How its plants are drawn."""
        return self.crop.habit if self.crop is not None else Habit.ROSETTE

    def tint(self, colours: Palette) -> Tint:
        """Its colours."""
        family, crop_id = (self.crop.family, self.crop.id) if self.crop else ("", self.planting.crop)
        return tint_of(family, crop_id, colours.dark)

    def on(self, day: date) -> OnDate:
        """Stage and size on a day, interpolated between the middles of weeks."""
        course = self._course
        if course is None:
            standing = day >= self.planting.start.on
            return OnDate("standing" if standing else "coming", self.full_radius_m, 0.2, ripe=False)
        now, row = np.datetime64(day, "D"), self._row
        if now < course.in_bed[row]:
            return OnDate("coming", 0.0, 0.0, ripe=False)
        if now > course.out[row]:
            return OnDate("gone", 0.0, 0.0, ripe=False)
        there = course.present[row]
        at = now.astype(np.int64)
        if not there.any():
            return OnDate("standing", self.full_radius_m * 0.2, 0.02, ripe=False)
        radius = np.interp(at, self._middle[there], course.radius_m[row][there])
        height = np.interp(at, self._middle[there], course.height_m[row][there])
        return OnDate(
            "standing", max(float(radius), 0.01), float(height), bool(now >= course.harvest_first[row])
        )


class Sizes:
    """Growth of plantings, kept as long as nothing that it depends on differs."""

    def __init__(self) -> None:
        self._known: dict[str, Growth] = {}
        self._growing: dict[str, Growing] = {}
        self._for: tuple[object, ...] = ()
        self._crops: Catalogue | None = None
        self._aids: tuple[object, ...] = ()

    def prepare(self, garden: Garden, layout: Layout, crops: Catalogue) -> None:
        """Follow all plantings that are new or grow otherwise than before, in one go."""
        surroundings = (garden.site, layout.season)
        if surroundings != self._for or crops is not self._crops:
            self._known.clear()
            self._growing.clear()
            self._for, self._crops = surroundings, crops
        aids = (layout.supports, layout.covers)
        aided = all(a is b for a, b in zip(aids, self._aids, strict=False)) and bool(self._aids)
        self._aids = aids
        fresh: list[tuple[Planting, Growing]] = []
        for planting in layout.plantings:
            known = self._known.get(planting.id)
            if known is not None and known.planting is planting and aided:
                continue
            growing = _growing(planting, layout, crops)
            if growing is None:
                self._known[planting.id] = Growth(planting, None, None)
            elif known is not None and growing == self._growing.get(planting.id):
                known.planting = planting  # moved or reshaped: it grows as before
            else:
                fresh.append((planting, growing))
        if fresh:
            self._follow(garden, layout, fresh)

    def of(self, planting: Planting) -> Growth:
        """The growth of a planting that was prepared."""
        return self._known[planting.id]

    def _follow(self, garden: Garden, layout: Layout, fresh: list[tuple[Planting, Growing]]) -> None:
        course = follow(garden.site, [growing for _, growing in fresh], grid(layout.season))
        for row, (planting, growing) in enumerate(fresh):
            self._known[planting.id] = Growth(planting, growing.crop, course, row)
            self._growing[planting.id] = growing


def _growing(planting: Planting, layout: Layout, crops: Catalogue) -> Growing | None:
    """The planting as the season sees it; None where its crop is not known."""
    try:
        crop = crops.resolve(planting.crop, planting.variety)
    except UnknownCrop:
        return None
    held = supported(planting, crop, layout.supports)
    return Growing(crop, planting.start, planting.end, held, warmed(planting, layout.covers))
