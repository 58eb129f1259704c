"""How large a planting stands on a date, for the plan: computed once per planting value."""

from bisect import bisect_left
from dataclasses import dataclass
from datetime import date
from typing import Literal

import numpy as np

from gardencanvas.canvas.palette import Palette, Tint, shows_ripe, tint_of
from gardencanvas.crops.catalogue import Catalogue, UnknownCrop
from gardencanvas.crops.model import Crop, Habit
from gardencanvas.fit.aids import growing_of, stem_crops
from gardencanvas.fit.stands import grid
from gardencanvas.garden.garden import Garden, Layout
from gardencanvas.garden.planting import Planting
from gardencanvas.season.course import Course, Growing
from gardencanvas.season.growth import follow

_SEEDLING_M = 0.02  # drawn no smaller, so that it can be seen

Stage = Literal["coming", "standing", "gone"]


@dataclass(frozen=True, slots=True)
class OnDate:
    """One planting on one day."""

    stage: Stage
    radius_m: float
    height_m: float
    ripe: bool  # and looks it


class Growth:
    """One planting's form and its curve through the season.

    The curve is kept as plain lists: with hundreds of plantings asked one by one, that is quickest.
    """

    def __init__(self, planting: Planting, crop: Crop | None, course: Course | None, row: int = 0) -> None:
        self.planting = planting
        self.crop = crop
        spread = crop.spread_m.mid if crop is not None and crop.spread_m is not None else 0.3
        self.full_radius_m = spread / 2
        self._followed = course is not None
        if course is not None:
            there = course.present[row]
            self._in_bed, self._out, self._ripe = (
                day[row].astype(object).toordinal()
                for day in (course.in_bed, course.out, course.harvest_first)
            )
            first = course.weeks.first.toordinal() + 3  # sizes are those in the middle of a week
            self._days = [first + 7 * int(week) for week in np.flatnonzero(there)]
            self._radii = course.radius_m[row][there].tolist()
            self._heights = course.height_m[row][there].tolist()
            self.full_radius_m = max(float(course.radius_m[row].max()), _SEEDLING_M)

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
        if not self._followed:
            stage: Stage = "standing" if day >= self.planting.start.on else "coming"
            return OnDate(stage, self.full_radius_m, _SEEDLING_M, ripe=False)
        now = day.toordinal()
        if now < self._in_bed or now > self._out:
            return OnDate("coming" if now < self._in_bed else "gone", 0.0, 0.0, ripe=False)
        if not self._days:  # it stands for less than a week
            return OnDate("standing", _SEEDLING_M, _SEEDLING_M, ripe=False)
        radius, height = self._between(now)
        ripe = now >= self._ripe and self.crop is not None and shows_ripe(self.crop)
        return OnDate("standing", max(radius, _SEEDLING_M / 2), height, ripe)

    def _between(self, now: int) -> tuple[float, float]:
        """Radius and height on a day; before the first and after the last week as in these."""
        after = bisect_left(self._days, now)
        if after == 0 or after == len(self._days):
            at = min(after, len(self._days) - 1)
            return self._radii[at], self._heights[at]
        before = after - 1
        share = (now - self._days[before]) / (self._days[after] - self._days[before])
        return (
            self._radii[before] + share * (self._radii[after] - self._radii[before]),
            self._heights[before] + share * (self._heights[after] - self._heights[before]),
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
        stems = stem_crops()
        aids = (layout.supports, layout.covers, *(p for p in layout.plantings if p.crop in stems))
        aided = len(aids) == len(self._aids) and all(a is b for a, b in zip(aids, self._aids, strict=True))
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
    return growing_of(layout, planting, crop)
