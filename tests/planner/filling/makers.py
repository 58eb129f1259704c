"""Beds to fill, and what to fill them with."""

from datetime import date

from gardencanvas.crops.catalogue import catalogue
from gardencanvas.fit.checker import Checker
from gardencanvas.garden.laid import Spacings
from gardencanvas.garden.planting import Start
from gardencanvas.planner.filling.lattices import KINDS
from gardencanvas.planner.filling.searching import Filling, fill, finished
from gardencanvas.planner.gaps.survey import Surveyor
from gardencanvas.season.usual_start import usual_start


def even(spacing):
    """The same distance each way."""
    return Spacings(spacing, spacing, spacing)


def usual(crop):
    """A crop's usual spacing."""
    a = crop.in_row_m.mid
    b = max(crop.between_rows_m.mid, a)
    return Spacings(a, b, round((a * b) ** 0.5, 3))


def filled(value, crop_id, room=None, bed=None, area=None, kinds=KINDS, on=None, **changes):
    """What a search in the first layout answers."""
    known, layout = catalogue(), value.layouts[0]
    crop = known.resolve(crop_id, None)
    start = usual_start(value.site, crop, layout.year, layout.first_month)
    if on is not None:
        start = Start(kind=start.kind, on=date.fromisoformat(on))
    survey = Surveyor(known).survey(value, layout.id)
    what = Filling(bed or layout.beds[0], area, crop_id, None, room or usual(crop), start, kinds, **changes)
    return finished(fill(survey, Checker(known), what))
