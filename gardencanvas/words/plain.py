"""Dates, measures and names in plain words."""

from dataclasses import dataclass
from datetime import date
from typing import Literal

from gardencanvas.crops.catalogue import Catalogue, UnknownCrop
from gardencanvas.fit.report import PlantingFit
from gardencanvas.garden.planting import Planting
from gardencanvas.garden.site import DayOfYear

Units = Literal["metric", "imperial"]

MONTHS = (
    "January", "February", "March", "April", "May", "June",
    "July", "August", "September", "October", "November", "December",
)  # fmt: skip
THIN = "\u2009"  # thin space between number and unit


def day(on: date) -> str:
    """A day as in ``12 July``."""
    return f"{on.day} {MONTHS[on.month - 1]}"


def yearly(on: DayOfYear) -> str:
    """A day that comes back each year, as in ``12 July``."""
    return f"{on.day} {MONTHS[on.month - 1]}"


def day_year(on: date) -> str:
    """A day as in ``12 July 2027``."""
    return f"{day(on)} {on.year}"


def short_day(on: date) -> str:
    """A day as in ``12 Jul``."""
    return f"{on.day} {MONTHS[on.month - 1][:3]}"


def span(first: date, last: date) -> str:
    """Two days as in ``12 – 30 July``, ``12 June – 3 July`` or with years where they differ."""
    if first == last:
        return day(first)
    if first.year != last.year:
        return f"{day_year(first)} – {day_year(last)}"
    if first.month == last.month:
        return f"{first.day} – {day(last)}"
    return f"{day(first)} – {day(last)}"


def percent(share: float) -> str:
    """A share of 1 as in ``72 %``."""
    return f"{100 * share:.0f}{THIN}%"


@dataclass(frozen=True)
class Measure:
    """Lengths and areas in the grower's units."""

    units: Units = "metric"

    def small(self, metres: float) -> str:
        """A spacing or plant size: centimetres, or inches."""
        if self.units == "imperial":
            return f"{metres / 0.0254:.3g}{THIN}in"
        if metres < 1.0:
            return f"{100 * metres:.3g}{THIN}cm"
        return f"{metres:.3g}{THIN}m"

    def large(self, metres: float) -> str:
        """A bed's side: metres to the centimetre, or feet and inches."""
        if self.units == "imperial":
            inches = round(metres / 0.0254)
            return f"{inches // 12}′{THIN}{inches % 12}″"
        return f"{metres:.2f}{THIN}m"

    def sides(self, length_m: float, width_m: float) -> str:
        """Length by width, the unit once."""
        if self.units == "imperial":
            return f"{self.large(length_m)} × {self.large(width_m)}"
        return f"{length_m:.2f} × {width_m:.2f}{THIN}m"

    def area(self, square_metres: float) -> str:
        """An area in square metres or square feet."""
        if self.units == "imperial":
            return f"{square_metres / 0.09290304:.0f}{THIN}sq{THIN}ft"
        return f"{square_metres:.2f}{THIN}m²"

    def range(self, low_m: float, high_m: float) -> str:
        """A range of small lengths, the unit once where both share it."""
        low, high = self.small(low_m), self.small(high_m)
        if low == high:
            return low
        (low_number, low_unit), (high_number, high_unit) = low.split(THIN), high.split(THIN)
        if low_unit == high_unit:
            return f"{low_number}–{high_number}{THIN}{high_unit}"
        return f"{low} – {high}"


def crop_name(catalogue: Catalogue, crop_id: str, variety_id: str | None = None) -> str:
    """The common name, with the variety's in quotation marks; the bare id where it is not known."""
    try:
        name = catalogue.crop(crop_id).name
    except UnknownCrop:
        return crop_id
    if variety_id is None:
        return name
    variety = next((v for v in catalogue.varieties_of(crop_id) if v.id == variety_id), None)
    return f"{name} “{variety.name if variety else variety_id}”"


def planting_name(catalogue: Catalogue, planting: Planting) -> str:
    """A planting's crop and variety in words."""
    if len(planting.varieties) > 1:
        return f"{crop_name(catalogue, planting.crop)}, {len(planting.varieties)} varieties"
    return crop_name(catalogue, planting.crop, planting.variety)


def counted(number: int, one: str, many: str) -> str:
    """A number and its noun: ``1 plant``, ``12 plants``."""
    return f"{number:,} {one if number == 1 else many}"


def plants_of(fit: PlantingFit, catalogue: Catalogue) -> str:
    """Count and name of a planting: ``12 × Leek “winter blue”``."""
    return f"{fit.plants} × {crop_name(catalogue, fit.crop, fit.variety)}"
