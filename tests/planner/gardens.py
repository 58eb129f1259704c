"""Small gardens with one trouble each, for the tests of remedies."""

from datetime import date

from gardencanvas.crops.model import Quantity, Variety
from gardencanvas.fit.checker import Checker
from gardencanvas.fit.report import Verdict
from gardencanvas.garden.garden import Garden
from gardencanvas.garden.ground import Fixture
from gardencanvas.garden.pattern import RingPattern, Rows, Spots
from gardencanvas.garden.planting import Planting, Start
from tests.garden.makers import bed, garden

LAYOUT = "l1"


def day(month, number):
    return date(2027, month, number)


def rows(crop, planting_id, y, on, kind="raised", spacing=0.25, across=0.3, count=1, **more):
    pattern = Rows(origin=(0.3, y), length_m=3.0, rows=count, spacing_m=spacing, row_spacing_m=across)
    start = Start(kind=kind, on=on, **more.pop("start", {}))
    return Planting(id=planting_id, crop=crop, pattern=pattern, start=start, **more)


def spots(crop, planting_id, points, on, kind="raised", **more):
    return Planting(
        id=planting_id, crop=crop, pattern=Spots(points=points), start=Start(kind=kind, on=on), **more
    )


def two_brassicas(**more) -> Garden:
    """A row of cabbages and one of cauliflowers 12 cm apart in a bed of 1.2 m."""
    return garden(
        rows("cabbage", "cabbage", 0.3, day(5, 10), spacing=0.45, **more),
        rows("cauliflower", "cauliflower", 0.42, day(5, 10), spacing=0.5, **more),
    )


def late_lettuce() -> Garden:
    """Lettuces set between growing cabbages, three weeks after them."""
    return garden(
        rows("lettuce", "lettuce", 0.3, day(6, 1)),
        rows("cabbage", "cabbage", 0.35, day(5, 10), spacing=0.45, across=0.5),
    )


def sown_too_close() -> Garden:
    """Carrots at a fifth of the usual ground."""
    return garden(rows("carrot", "carrot", 0.1, day(4, 10), "sown", 0.02, 0.1, 5))


def off_the_bed() -> Garden:
    """A row of leeks 10 cm above the bed's edge."""
    return garden(rows("leek", "leek", -0.25, day(5, 1), spacing=0.15))


def under_maize() -> Garden:
    """Dwarf beans in the shade of two rows of sweetcorn."""
    return garden(
        rows("sweetcorn", "sweetcorn", 0.1, day(5, 15), "sown", 0.2, 0.4, 2),
        rows("dwarf-bean", "bean", 0.6, day(6, 1), "sown", 0.1),
    )


def loose_plants() -> Garden:
    """A cauliflower between three cabbages, too near to one."""
    return garden(
        spots("cabbage", "cabbage", ((0.5, 0.5), (1.2, 0.5), (2.4, 0.5)), day(5, 1)),
        spots("cauliflower", "cauliflower", ((0.7, 0.6),), day(5, 1)),
    )


def sprawling_beans() -> Garden:
    """Climbing beans without a support beside leeks."""
    return garden(
        rows("climbing-bean", "bean", 0.2, day(5, 20), "sown", 0.2, 0.5),
        rows("leek", "leek", 0.5, day(5, 20), spacing=0.15),
    )


def ring_of_beans() -> Garden:
    """A ring of beans without canes, a row of leeks beside it."""
    ring = RingPattern(origin=(1.0, 0.5), radius_m=0.35, spacing_m=0.2)
    beans = Planting(id="bean", crop="climbing-bean", pattern=ring, start=Start(kind="sown", on=day(5, 20)))
    return garden(beans, rows("leek", "leek", 0.9, day(5, 20), spacing=0.15))


def clumps() -> Garden:
    """Onions in clumps of six where the spacing is for four."""
    return garden(rows("onion", "onion", 0.2, day(4, 1), "sown", 0.25, 0.25, 3, per_station=6))


def walled_tomato():
    """A crop of full sun at the north foot of a high wall: north is up, and up is where y falls."""
    outline = ((-2.0, 1.3), (6.0, 1.3), (6.0, 1.5), (-2.0, 1.5))
    wall = Fixture(id="wall", name="Wall", kind="wall", outline=outline, height_m=4.0)
    return garden(rows("tomato", "tomato", 0.3, day(5, 20), spacing=0.5), fixtures=(wall,))


def quick_kind(days) -> Variety:
    """An invented lettuce that is ready sooner."""
    some = Quantity(low=days, mid=days, high=days, source="user", basis="user")
    return Variety(id="quick", crop="lettuce", name="quick", harvest_from_planting_d=some)


GARDENS = {
    "two brassicas": two_brassicas,
    "late lettuce": late_lettuce,
    "sown too close": sown_too_close,
    "off the bed": off_the_bed,
    "under maize": under_maize,
    "loose plants": loose_plants,
    "sprawling beans": sprawling_beans,
    "ring of beans": ring_of_beans,
    "clumps": clumps,
}


def troubles(garden_, layout_id=LAYOUT):
    """A checker, and the findings that want a remedy."""
    checker = Checker()
    report = checker.update(garden_, layout_id)
    return checker, [f for f in report.findings if f.verdict >= Verdict.STRAINS]


__all__ = ["GARDENS", "LAYOUT", "bed", "day", "rows", "spots", "troubles"]
