"""Beds of rows for tests of the fit, in a mild temperate climate."""

from datetime import date

from gardencanvas.fit import check
from gardencanvas.garden.pattern import Rows, Spots
from gardencanvas.garden.planting import Planting, Start
from tests.garden.makers import bed, garden

WIDE = (bed(x=-60.0, y=-60.0, length=120.0, width=120.0),)


def rows(planting_id, crop, length, count, spacing, row_spacing, on, kind="raised", x=0.0, y=0.0, **changes):
    pattern = Rows(origin=(x, y), length_m=length, rows=count, spacing_m=spacing, row_spacing_m=row_spacing)
    return Planting(id=planting_id, crop=crop, pattern=pattern, start=Start(kind=kind, on=on), **changes)


def spot(planting_id, crop, points, on=date(2027, 5, 1), kind="raised", **changes):
    return Planting(
        id=planting_id,
        crop=crop,
        pattern=Spots(points=tuple(points)),
        start=Start(kind=kind, on=on),
        **changes,
    )


def judged(*plantings, **changes):
    """Report of a garden whose one bed lies under everything."""
    return check(garden(*plantings, **{"beds": WIDE, **changes}))


def words(report):
    """Verdict of each planting, in words."""
    return {p.id: p.verdict.word for p in report.plantings.values()}


def codes(report, planting_id):
    """Codes of the findings in which a planting suffers or takes part."""
    return {f.code for f in report.of(planting_id)}
