"""Clearing a planting earlier."""

from collections.abc import Callable, Iterator
from dataclasses import replace
from datetime import date, timedelta
from functools import cache

from gardencanvas.crops.model import Group, Harvest
from gardencanvas.fit.aids import growing_of
from gardencanvas.fit.report import Kind, Remedy
from gardencanvas.garden.planting import Planting
from gardencanvas.planner.case import Case
from gardencanvas.planner.codes import Change, Numbers
from gardencanvas.planner.ladder import Ladder, highest
from gardencanvas.planner.outcome import harvest_days
from gardencanvas.season.growth import follow, span

# Leaf vegetables are eaten young: cut from three fifths of their time to full size on (common practice).
YOUNG = 0.6


def ends(case: Case) -> Iterator[Ladder]:
    """Ladders that clear each planting earlier and earlier, the last harvest first.

    Not before its first harvest; leaf vegetables from when they are worth eating. Perennials, crops that are
    not harvested, and dates the grower pinned stay as they are; so does a neighbour that closes over a late
    catch crop: it has closed long before it is cleared.
    """
    for planting in case.changeable:
        crop = case.crop(planting)
        if case.finding.kind is Kind.TIMING and planting is not case.named[0]:
            continue
        fixed = planting.start.pinned and planting.end is not None
        if fixed or crop.life == "perennial" or crop.harvest is Harvest.NONE:
            continue
        fit = case.report.plantings[planting.id]
        earliest = fit.harvest_first
        if crop.group is Group.LEAF:
            earliest = planting.start.on + (fit.harvest_first - planting.start.on) * YOUNG
        steps = (fit.harvest_last - earliest).days
        if steps > 0:
            yield _ladder(case, planting, steps)


def _ladder(case: Case, planting: Planting, steps: int) -> Ladder:
    fit = case.report.plantings[planting.id]
    single = case.crop(planting).harvest is Harvest.SINGLE
    grown = _grown(case, planting)

    def at(step: int) -> Remedy | None:
        on = fit.harvest_last - timedelta(days=step)
        if on <= planting.start.on:
            return None
        numbers: Numbers = {"planting": planting.id, "on": on}
        if on < fit.harvest_first:
            numbers["size"], numbers["early_d"] = grown(on), (fit.harvest_first - on).days
        elif not single:  # a single harvest only waits: nothing is lost by fetching it
            numbers["harvest_lost_d"], numbers["harvest_d"] = step, harvest_days(fit)
        return Remedy(Change.END, numbers)

    steps = highest(steps, at)
    coarse = sorted({-(-steps * part // 4) for part in (1, 2, 4)} - {0})
    return Ladder(Change.END, planting.id, steps, at, tuple(coarse))


def _grown(case: Case, planting: Planting) -> Callable[[date], float]:
    """Share of the canopy at first harvest that it has on a day."""

    @cache
    def areas() -> Callable[[date], float]:
        growing = replace(growing_of(case.layout, planting, case.crop(planting)), end=None)
        weeks = span(case.garden.site, [growing], case.layout.season)
        radius = follow(case.garden.site, [growing], weeks).radius_m[0]
        full = float(radius[weeks.index(case.report.plantings[planting.id].harvest_first)])
        return lambda on: (float(radius[weeks.index(on)]) / full) ** 2 if full > 0.0 else 1.0

    return lambda on: round(min(areas()(on), 1.0), 2)
