"""Writes resources/demo/demo.gardencanvas: run it from the checkout's own Python after changing it.

The place, its people, names, measures, dates and climate are invented for the demonstration. The pairs of
crops are ones that published trials grew together (compiled by Paut et al. 2024, Sci Data 11:5): cauliflower
with radish or spinach, tomato with lettuce or basil, dwarf bean with lettuce, pepper with onion, strawberry
with broad bean, carrot with parsley, maize with climbing bean; leek with celery is the pair of Baumann,
Kropff & Bastiaans 2000. What strains or clashes here is meant to: it shows what the engine sees.
"""

import math
from datetime import date
from pathlib import Path

from gardencanvas.files import save_garden
from gardencanvas.garden.garden import Garden, Layout
from gardencanvas.garden.ground import Bed, Cover, Fixture, LineSupport, RingSupport
from gardencanvas.garden.ground import Path as GardenPath
from gardencanvas.garden.pattern import Block, Drift, Edging, RingPattern, Rows, Spots, Strip
from gardencanvas.garden.planting import Planting, Start
from gardencanvas.garden.site import Climate, DayOfYear, Frost, Site

YEAR = 2027
OUT = Path(__file__).resolve().parent.parent / "resources" / "demo" / "demo.gardencanvas"


def day(month: int, number: int, year: int = YEAR) -> date:
    """A day of the demo's year."""
    return date(year, month, number)


def rows(x: float, y: float, length: float, count: int, spacing: float, between: float) -> Rows:
    """Rows along a bed."""
    return Rows(origin=(x, y), length_m=length, rows=count, spacing_m=spacing, row_spacing_m=between)


def planting(name: str, crop: str, pattern: object, kind: str, on: date, **more: object) -> Planting:
    """One planting of the demo."""
    return Planting(id=name, crop=crop, pattern=pattern, start=Start(kind=kind, on=on), **more)


SITE = Site(
    place="Alder Ferry",
    latitude_deg=51.6,
    longitude_deg=4.4,
    elevation_m=12.0,
    bearing_deg=0.0,
    frost=Frost(last=DayOfYear(month=5, day=2), first=DayOfYear(month=10, day=18)),
    climate=Climate(
        mean_c=(3.4, 3.9, 6.4, 9.5, 13.2, 16.1, 18.2, 17.9, 15.0, 11.1, 6.9, 4.1),
        min_c=(0.8, 0.8, 2.6, 4.8, 8.3, 11.2, 13.3, 12.9, 10.4, 7.3, 3.9, 1.6),
        max_c=(6.0, 7.0, 10.4, 14.4, 18.2, 20.9, 23.1, 22.9, 19.6, 14.9, 9.9, 6.5),
        rain_mm=(66, 52, 58, 42, 58, 66, 74, 80, 70, 74, 76, 74),
        source="invented for the demonstration: a mild maritime climate",
    ),
)

FIXTURES = (
    Fixture(
        id="wall-1",
        name="Old brick wall",
        kind="wall",
        height_m=2.1,
        outline=((-0.3, 7.45), (6.2, 7.45), (6.2, 7.7), (-0.3, 7.7)),
    ),
    Fixture(
        id="tree-1",
        name="Damson",
        kind="tree",
        height_m=4.5,
        base_m=1.4,
        clear_share=0.25,
        outline=tuple(
            (round(11.9 + 1.35 * math.cos(a), 3), round(6.1 + 1.35 * math.sin(a), 3))
            for a in (2 * math.pi * k / 16 for k in range(16))
        ),
    ),
)


def beds() -> tuple[Bed, ...]:
    """Seven beds of different shapes."""
    box = "long side is reached from the grass path"
    round_bed = tuple(
        (round(8.3 + 1.05 * math.cos(a), 3), round(6.0 + 1.05 * math.sin(a), 3))
        for a in (2 * math.pi * k / 24 for k in range(24))
    )
    return (
        Bed(
            id="bed-1",
            name="Long bed",
            outline=((0, 0), (5.4, 0), (5.4, 1.2), (0, 1.2)),
            soil_depth_m=1.0,
            path_note=box,
            edge_note="oak boards",
        ),
        Bed(
            id="bed-2",
            name="Middle bed",
            outline=((0, 1.7), (5.4, 1.7), (5.4, 2.9), (0, 2.9)),
            soil_depth_m=1.0,
            path_note=box,
            edge_note="oak boards",
        ),
        Bed(
            id="bed-3",
            name="Warm bed",
            outline=((0, 3.4), (5.4, 3.4), (5.4, 4.9), (0, 4.9)),
            soil_depth_m=1.2,
            path_note=box,
        ),
        Bed(
            id="bed-4",
            name="Wall bed",
            outline=((0, 5.6), (5.9, 5.6), (5.9, 7.2), (0, 7.2)),
            soil_depth_m=1.2,
            path_note="reached from the north only",
        ),
        Bed(id="bed-5", name="Herb round", outline=round_bed, soil_depth_m=0.35, edge_note="field stones"),
        Bed(
            id="bed-6",
            name="Corner bed",
            outline=((6.4, 0), (10.4, 0), (10.4, 1.3), (8.0, 1.3), (8.0, 4.4), (6.4, 4.4)),
            soil_depth_m=1.0,
        ),
        Bed(
            id="bed-7",
            name="The wedge",
            outline=((8.7, 2.0), (13.0, 2.0), (13.0, 4.3), (9.7, 4.0)),
            soil_depth_m=0.9,
            edge_note="under the damson after noon",
        ),
    )


def long_bed() -> list[Planting]:
    """Cauliflower with radish between its rows, and spinach that is out before they close."""
    return [
        planting("p-cauliflower", "cauliflower", rows(0.15, 0.1, 3.0, 2, 0.5, 0.5), "raised", day(5, 4)),
        planting("p-radish", "radish", rows(0.15, 0.55, 3.0, 1, 0.05, 0.1), "sown", day(4, 12)),
        planting("p-spinach", "spinach", rows(3.4, 0.1, 1.8, 3, 0.12, 0.3), "sown", day(3, 28)),
        planting("p-beetroot", "beetroot", rows(3.4, 0.95, 1.8, 1, 0.1, 0.25), "sown", day(4, 20)),
    ]


def middle_bed() -> list[Planting]:
    """Leek with celery, carrot with parsley, and kohlrabi that was put in too late beside celeriac."""
    return [
        planting("p-leek", "leek", rows(0.1, 1.75, 2.4, 2, 0.15, 0.5), "raised", day(6, 5)),
        planting("p-celery", "celery", rows(0.1, 2.0, 2.4, 2, 0.3, 0.5), "raised", day(5, 24)),
        planting("p-carrot", "carrot", rows(2.75, 1.75, 1.2, 3, 0.04, 0.25), "sown", day(4, 15)),
        planting("p-parsley", "parsley", rows(2.75, 2.55, 1.2, 1, 0.15, 0.3), "raised", day(5, 10)),
        planting("p-celeriac", "celeriac", rows(4.1, 1.75, 1.2, 2, 0.38, 0.6), "raised", day(5, 22)),
        planting("p-kohlrabi", "kohlrabi", rows(4.1, 2.1, 1.2, 1, 0.25, 0.45), "raised", day(6, 14)),
    ]


def warm_bed() -> list[Planting]:
    """Cordon tomatoes with lettuce and basil under them; pepper with onion."""
    return [
        planting("p-tomato", "tomato", rows(0.2, 3.75, 3.0, 1, 0.5, 0.5), "raised", day(5, 22)),
        planting("p-lettuce", "lettuce", rows(0.2, 3.42, 3.0, 1, 0.25, 0.3), "raised", day(4, 24)),
        planting("p-basil", "basil", rows(0.2, 4.3, 3.0, 1, 0.3, 0.3), "raised", day(6, 4)),
        planting("p-pepper", "pepper", rows(3.5, 3.6, 1.7, 2, 0.42, 0.6), "raised", day(5, 28)),
        planting("p-onion", "onion", rows(3.5, 4.075, 1.7, 1, 0.1, 0.25), "set", day(3, 26)),
        planting("p-marigold", "french-marigold", rows(0.2, 4.62, 5.0, 1, 0.25, 0.25), "raised", day(5, 24)),
    ]


def wall_bed() -> list[Planting]:
    """What bears the wall's shade, and a courgette with lettuce too close under it."""
    return [
        planting(
            "p-courgette",
            "courgette",
            Spots(points=((1.0, 6.2), (2.2, 6.2)), spacing_m=0.95),
            "raised",
            day(5, 24),
        ),
        planting("p-lettuce-late", "lettuce", rows(0.5, 6.05, 2.2, 1, 0.22, 0.3), "raised", day(6, 20)),
        planting(
            "p-corn-salad",
            "corn-salad",
            Strip(origin=(3.2, 5.75), length_m=2.5, width_m=0.6, spacing_m=0.1, across_m=0.15),
            "sown",
            day(8, 25),
        ),
        planting("p-dwarf-bean", "dwarf-bean", rows(3.2, 5.62, 2.5, 2, 0.1, 0.4), "sown", day(5, 16)),
        planting(
            "p-rhubarb",
            "rhubarb",
            Spots(points=((3.75, 6.78), (4.95, 6.78)), spacing_m=0.9),
            "set",
            day(3, 10),
        ),
    ]


def herb_round() -> list[Planting]:
    """Low herbs round a sage, a rim of thyme."""
    rim = tuple(
        (round(8.3 + 0.88 * math.cos(a), 3), round(6.0 + 0.88 * math.sin(a), 3))
        for a in (2 * math.pi * k / 24 for k in range(24))
    )
    return [
        planting("p-sage", "sage", Spots(points=((8.3, 6.0),), spacing_m=0.6), "set", day(4, 5)),
        planting("p-thyme", "thyme", Edging(line=rim, closed=True, spacing_m=0.3), "set", day(4, 5)),
        planting(
            "p-chives",
            "chives",
            RingPattern(origin=(8.3, 6.0), radius_m=0.52, spacing_m=0.27),
            "set",
            day(3, 30),
        ),
    ]


def corner_bed() -> list[Planting]:
    """Climbing beans on a ring of canes with maize and squash; strawberries with broad beans."""
    return [
        planting(
            "p-sweetcorn",
            "sweetcorn",
            Block(origin=(6.5, 2.0), length_m=1.4, width_m=1.05, spacing_m=0.35),
            "sown",
            day(5, 12),
        ),
        planting(
            "p-squash", "winter-squash", Spots(points=((7.2, 3.75),), spacing_m=1.4), "raised", day(5, 28)
        ),
        planting(
            "p-climbing-bean",
            "climbing-bean",
            RingPattern(origin=(7.2, 1.0), radius_m=0.5, spacing_m=0.3),
            "sown",
            day(5, 20),
        ),
        planting("p-strawberry", "strawberry", rows(8.1, 0.1, 2.2, 2, 0.35, 0.55), "set", day(3, 20)),
        planting("p-broad-bean", "broad-bean", rows(8.1, 0.5, 2.2, 1, 0.2, 0.3), "sown", day(2, 26)),
    ]


def wedge() -> list[Planting]:
    """Potatoes, and a drift of flowers under the damson."""
    drift = ((11.0, 3.2), (12.8, 3.2), (12.8, 4.15), (11.0, 4.0))
    return [
        planting(
            "p-potato",
            "potato",
            Rows(origin=(10.2, 2.15), length_m=2.4, rows=1, spacing_m=0.35, row_spacing_m=0.7),
            "set",
            day(4, 20),
        ),
        planting(
            "p-calendula",
            "calendula",
            Drift(outline=drift, spacing_m=0.3, plants=14, seed=11),
            "sown",
            day(4, 18),
        ),
    ]


def main() -> None:
    """Write the demo garden."""
    supports = (
        LineSupport(
            id="support-1",
            kind="cane row",
            name="Tomato canes",
            begin=(0.2, 4.0),
            end=(3.2, 4.0),
            height_m=1.8,
        ),
        RingSupport(
            id="support-2", kind="cane ring", name="Bean canes", centre=(7.2, 1.0), radius_m=0.5, height_m=2.2
        ),
    )
    covers = (
        Cover(
            id="cover-1",
            kind="mesh",
            name="Carrot mesh",
            height_m=0.5,
            first=day(4, 15),
            last=day(8, 31),
            outline=((2.7, 1.72), (4.0, 1.72), (4.0, 2.52), (2.7, 2.52)),
        ),
    )
    paths = (
        GardenPath(id="path-1", name="Grass path", line=((5.95, -0.4), (5.95, 5.2)), width_m=0.6),
        GardenPath(id="path-2", name="Grass path", line=((-0.3, 5.25), (7.1, 5.25)), width_m=0.5),
    )
    plantings = [*long_bed(), *middle_bed(), *warm_bed(), *wall_bed(), *herb_round(), *corner_bed(), *wedge()]
    layout = Layout(
        id="layout-1",
        name="Long rows",
        year=YEAR,
        beds=beds(),
        paths=paths,
        supports=supports,
        covers=covers,
        plantings=tuple(plantings),
        note="Runa's first sketch; Teo wants fewer courgettes.",
    )
    garden = Garden(
        name="Ferry Row",
        site=SITE,
        fixtures=FIXTURES,
        layouts=(layout,),
        note="An invented garden, to look around in.",
    )
    save_garden(garden, OUT)
    total = sum(p.plants for p in plantings)
    print(
        f"{OUT.name}: {len({p.crop for p in plantings})} crops, {total} plants in {len(plantings)} plantings"
    )


if __name__ == "__main__":
    main()
