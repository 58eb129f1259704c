"""Small gardens for tests: an invented place with invented monthly means of a mild maritime climate."""

from datetime import date

from gardencanvas.garden.garden import Garden, Layout
from gardencanvas.garden.ground import Bed
from gardencanvas.garden.pattern import Rows
from gardencanvas.garden.planting import Planting, Start
from gardencanvas.garden.site import Climate, DayOfYear, Frost, Site

MEANS = (3.2, 3.5, 6.3, 9.5, 13.2, 15.9, 18.1, 17.8, 14.8, 11.0, 6.9, 4.0)


def site(**changes):
    fields = {
        "place": "Millbrook",
        "latitude_deg": 52.0,
        "longitude_deg": 5.0,
        "elevation_m": 10.0,
        "frost": Frost(last=DayOfYear(month=4, day=28), first=DayOfYear(month=10, day=20)),
        "climate": Climate(mean_c=MEANS),
    }
    return Site(**{**fields, **changes})


def bed(bed_id="bed-1", x=0.0, y=0.0, length=3.6, width=1.2, **changes):
    outline = ((x, y), (x + length, y), (x + length, y + width), (x, y + width))
    return Bed(**{"id": bed_id, "name": bed_id, "outline": outline, **changes})


def row(planting_id="p-1", crop="leek", x=0.0, y=0.0, on=date(2027, 5, 1), kind="sown", **changes):
    fields = {
        "id": planting_id,
        "crop": crop,
        "pattern": Rows(origin=(x, y), length_m=3.0, rows=1, spacing_m=0.15, row_spacing_m=0.3),
        "start": Start(kind=kind, on=on),
    }
    return Planting(**{**fields, **changes})


def garden(*plantings, beds=(), fixtures=(), **changes):
    layout = Layout(id="l1", name="First", year=2027, beds=tuple(beds) or (bed(),), plantings=plantings)
    return Garden(**{"name": "Test", "site": site(), "fixtures": fixtures, "layouts": (layout,), **changes})
