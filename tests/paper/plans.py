"""Gardens to print: the demo, a bed with twenty plantings, beds that lie oddly (our own arrangements)."""

from datetime import date
from functools import cache
from math import cos, radians, sin, tau

from gardencanvas.crops.catalogue import catalogue
from gardencanvas.files import open_garden
from gardencanvas.fit import check
from gardencanvas.garden.ground import Bed, Cover, LineSupport, Path
from gardencanvas.garden.pattern import Block, RingPattern, Rows
from gardencanvas.paper.bedmap import Plan
from gardencanvas.resources_folder import resources
from gardencanvas.words.plain import Measure
from tests.garden.makers import bed, garden, row

LONG_NAME = "The long bed behind the old wash house, beside the gate to the lane"
CROPS = ("leek", "carrot", "lettuce", "beetroot", "radish", "rhubarb", "onion", "spinach")


def plan_of(value, on=date(2027, 7, 1), units="metric"):
    layout = value.layouts[0]
    known = catalogue().with_own(value.crops, value.varieties)
    return Plan(value, layout, check(value, layout.id, known), known, Measure(units), on)


@cache
def demo():
    return plan_of(open_garden(resources() / "demo" / "demo.gardencanvas"))


@cache
def twenty(units="metric"):
    """A bed of 6 × 1.2 m with twenty plantings, four to a row, and a long name."""
    rows = [
        row(f"p{i}", CROPS[i % len(CROPS)], on=date(2027, 4, 1 + i),
            pattern=Rows(origin=(0.1 + (i % 5) * 1.2, 0.05 + (i // 5) * 0.28), length_m=1.0, spacing_m=0.15,
                         row_spacing_m=0.25))
        for i in range(20)
    ]  # fmt: skip
    return plan_of(garden(*rows, beds=(bed(length=6.0, name=LONG_NAME),)), units=units)


def turned(points, degrees, origin):
    c, s = cos(radians(degrees)), sin(radians(degrees))
    return tuple((origin[0] + x * c - y * s, origin[1] + x * s + y * c) for x, y in points)


@cache
def odd():
    """An upright bed, one turned by 30°, a round one, and a path, a cover and canes."""
    upright = bed("upright", 0.0, 0.0, 1.2, 4.0)
    slanted = Bed(
        id="slanted", name="Slanted", outline=turned(((0, 0), (4, 0), (4, 1.2), (0, 1.2)), 30, (4, 0))
    )
    ring = tuple((10 + cos(i / 24 * tau), 1 + sin(i / 24 * tau)) for i in range(24))
    round_ = Bed(id="round", name="Round", outline=ring)
    (first,) = turned([(0.2, 0.1)], 30, (4, 0))
    plantings = (
        row("up", "carrot", pattern=Rows(origin=(1.1, 0.2), angle_deg=90, length_m=3.5, rows=3,
                                         spacing_m=0.05, row_spacing_m=0.3)),
        row("sl", "leek", pattern=Rows(origin=first, angle_deg=30, length_m=3.0, rows=3, spacing_m=0.15,
                                       row_spacing_m=0.3)),
        row("ri", "thyme", kind="set", pattern=RingPattern(origin=(10, 1), radius_m=0.6, spacing_m=0.2)),
        row("bl", "onion", kind="set", pattern=Block(origin=(9.7, 0.8), length_m=0.6, width_m=0.5,
                                                     spacing_m=0.1, staggered=True)),
    )  # fmt: skip
    value = garden(*plantings, beds=(upright, slanted, round_))
    layout = value.layouts[0].model_copy(update={
        "paths": (Path(id="way", name="Gravel", line=((-0.6, -0.5), (-0.6, 4.5)), width_m=0.5),),
        "covers": (Cover(id="net", kind="mesh", name="Mesh", height_m=0.4,
                         outline=((0.1, 0.1), (1.1, 0.1), (1.1, 2.0), (0.1, 2.0))),),
        "supports": (LineSupport(id="canes", kind="cane row", name="Canes", begin=(0.2, 2.4),
                                 end=(0.2, 3.8), height_m=1.8),),
    })  # fmt: skip
    return plan_of(value.model_copy(update={"layouts": (layout,)}))
