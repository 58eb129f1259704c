"""Crops and sites of these tests, their numbers from the sources named.

Stage days: FAO-56 table 11 (Mediterranean rows). Base and top temperatures: SWAT plant table and Knott's
Handbook. Sizes and nursery days: common practice. Climates: monthly means like those of a temperate maritime
place, others invented for the test and said so.
"""

from datetime import date, timedelta
from typing import Any

from gardencanvas.crops.model import Basis, Crop, Fact, Quantity
from gardencanvas.garden.planting import Start
from gardencanvas.garden.site import Climate, DayOfYear, Frost, Site
from gardencanvas.season.course import Growing, Weeks


def amount(mid: float, source: str = "common-practice") -> Quantity:
    """A number without a range."""
    return Quantity(low=mid, mid=mid, high=mid, source=source, basis=Basis.PRACTICE)


def make(crop_id: str, stages: tuple[float, ...] | None, **own: Any) -> Crop:
    """A crop of 17 °C (lettuce-like) days unless ``own`` says otherwise; numbers become quantities."""
    fields: dict[str, Any] = {
        "name": crop_id, "botanical": "Plantago testis", "family": "Plantaginaceae",
        "group": "leaf vegetable", "habit": "rosette", "layer": "low", "starts": ("sown",),
        "harvest": "single", "height_m": 0.3, "spread_m": 0.3, "root_depth_m": 0.4,
        "grown_at_c": 17.0, "base_temperature_c": 4.0, "top_temperature_c": 25.0,
        "harvest_length_d": 14.0, "frost": "hardy",
    }  # fmt: skip
    if stages is not None:
        names = ("stage_initial_d", "stage_development_d", "stage_middle_d", "stage_late_d")
        fields |= dict(zip(names, stages, strict=True))
    fields |= own
    for key, value in fields.items():
        if isinstance(value, float):
            fields[key] = amount(value)
    for key in ("frost", "support"):
        if isinstance(fields.get(key), str):
            fields[key] = Fact(value=fields[key], source="common-practice", basis=Basis.PRACTICE)
    return Crop.model_validate({"id": crop_id, **fields})


LETTUCE = make(
    "lettuce", (20.0, 30.0, 15.0, 10.0), starts=("raised", "sown"), nursery_d=28.0,
    harvest_from_planting_d=50.0, harvest_from_sowing_d=75.0, frost="half-hardy",
)  # fmt: skip
TOMATO = make(
    "tomato", (30.0, 40.0, 45.0, 30.0), starts=("raised",), harvest="repeated", nursery_d=45.0, height_m=1.8,
    spread_m=0.6, root_depth_m=1.0, grown_at_c=20.0, base_temperature_c=10.0, top_temperature_c=30.0,
    harvest_from_planting_d=72.0, harvest_length_d=60.0, frost="tender", habit="bush", layer="tall",
)  # fmt: skip
BEAN = make(
    "bean", (20.0, 30.0, 30.0, 10.0), harvest="repeated", grown_at_c=20.0, base_temperature_c=10.0,
    top_temperature_c=30.0, harvest_from_sowing_d=60.0, harvest_length_d=30.0, frost="tender", height_m=2.0,
    spread_m=0.4, habit="climber", layer="climbing", support="cane",
)  # fmt: skip
SQUASH = make(
    "squash", (25.0, 35.0, 35.0, 25.0), grown_at_c=21.0, base_temperature_c=9.0, top_temperature_c=30.0,
    harvest_from_sowing_d=100.0, frost="tender", height_m=0.5, spread_m=1.8, habit="sprawler",
    layer="ground cover",
)  # fmt: skip
GARLIC = make(
    "garlic", (40.0, 45.0, 22.0, 17.0), starts=("set",), harvest_from_planting_d=110.0,
    base_temperature_c=1.7, grown_at_c=18.3, frost="very hardy", sowing_depth_m=0.05, life="annual",
)  # fmt: skip
CHARD = make(
    "chard", (24.0, 28.0, 73.0, 33.0), harvest="cut and come again", harvest_from_sowing_d=58.0,
    harvest_length_d=100.0, life="biennial",
)  # fmt: skip
RHUBARB = make(
    "rhubarb", (12.0, 28.0, 34.0, 12.0), starts=("set",), harvest="repeated", life="perennial",
    grown_at_c=15.0, harvest_from_planting_d=16.0, harvest_length_d=70.0, frost="very hardy",
    spread_m=1.1, height_m=0.8,
)  # fmt: skip
THYME = make(
    "thyme", None, starts=("set",), harvest="repeated", life="perennial", harvest_from_planting_d=70.0,
    harvest_length_d=60.0, frost="very hardy", habit="carpet",
)  # fmt: skip
RADISH = make("radish", (5.0, 10.0, 15.0, 5.0), harvest_from_sowing_d=26.0, harvest_length_d=10.0)
ALL = (LETTUCE, TOMATO, BEAN, SQUASH, GARLIC, CHARD, RHUBARB, THYME, RADISH)

TEMPERATE = (3.2, 3.5, 6.3, 9.5, 13.2, 15.9, 18.1, 17.8, 14.8, 11.0, 6.9, 4.0)


def site(means: tuple[float, ...] = TEMPERATE, **own: Any) -> Site:
    """An invented site: temperate, frosts to 10 May and from 12 October."""
    fields: dict[str, Any] = {
        "place": "Testing Ground",
        "latitude_deg": 52.0,
        "longitude_deg": 5.0,
        "frost": Frost(last=DayOfYear(month=5, day=10), first=DayOfYear(month=10, day=12)),
        "climate": Climate(mean_c=means),
    }
    return Site(**(fields | own))


SITE = site()
# Means of the opposite month, frost dates half a year on.
SOUTH = site(
    TEMPERATE[6:] + TEMPERATE[:6],
    latitude_deg=-52.0,
    frost=Frost(last=DayOfYear(month=11, day=8), first=DayOfYear(month=4, day=12)),
)
TROPICS = site((26.0,) * 12, latitude_deg=2.0, frost=Frost(basis="none"))
# Invented polar place: two months above 5 °C, frost all year but July.
POLAR = site(
    (-15.0, -15.0, -14.0, -9.0, -2.0, 3.0, 6.5, 5.5, 1.0, -5.0, -10.0, -13.0),
    latitude_deg=78.0,
    frost=Frost(last=DayOfYear(month=7, day=1), first=DayOfYear(month=8, day=5)),
)
YEAR = Weeks(date(2026, 1, 1), 53)
TWO_YEARS = Weeks(date(2026, 1, 1), 105)


def planted(crop: Crop, on: date, kind: str | None = None, **own: Any) -> Growing:
    """A planting of a crop in its usual way."""
    sown_on = own.pop("sown_on", None)
    return Growing(crop, Start(kind=kind or crop.starts[0].value, on=on, sown_on=sown_on), **own)


def later(on: date, days: int) -> date:
    """That many days later."""
    return on + timedelta(days=days)
