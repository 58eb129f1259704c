"""Beds of two crops, filled to the usual spacing, for tests of the measures."""

from datetime import date

from gardencanvas.crops.catalogue import catalogue
from gardencanvas.fit.ground import usual_spacing
from gardencanvas.garden.garden import Garden, Layout
from gardencanvas.garden.pattern import Rows
from gardencanvas.garden.planting import Planting, Start
from gardencanvas.garden.site import Climate
from tests.garden.makers import MEANS, bed, site

DAILY = Climate(
    mean_c=MEANS,
    min_c=tuple(m - 4.5 for m in MEANS),
    max_c=tuple(m + 4.5 for m in MEANS),
    rain_mm=(65, 50, 60, 45, 55, 60, 70, 70, 65, 75, 80, 75),
)  # of an invented mild maritime place


def filled(planting_id, crop, *, rows=4, columns=10, share=1.0, x=0.0, y=0.0, on=date(2027, 5, 10), **start):
    """A planting of rows at the usual spacing, or with a share of its plants in the row."""
    along, across = usual_spacing(catalogue().resolve(crop))
    pattern = Rows(
        origin=(x, y), length_m=columns * along, rows=rows, spacing_m=along / share, row_spacing_m=across
    )
    kind = start.pop("kind", catalogue().resolve(crop).starts[0].value)
    return Planting(id=planting_id, crop=crop, pattern=pattern, start=Start(kind=kind, on=on, **start))


def ground_of(planting, bed_id="bed-1", **changes):
    """A bed that is exactly the ground of a planting."""
    (x0, y0), (x1, y1) = planting.pattern.corners.min(axis=0), planting.pattern.corners.max(axis=0)
    return bed(bed_id, x=float(x0), y=float(y0), length=float(x1 - x0), width=float(y1 - y0), **changes)


def layout(layout_id, beds, *plantings, year=2027):
    return Layout(id=layout_id, name=layout_id, year=year, beds=tuple(beds), plantings=plantings)


def garden_of(*layouts, climate=DAILY):
    return Garden(name="Test", site=site(climate=climate), layouts=layouts)
