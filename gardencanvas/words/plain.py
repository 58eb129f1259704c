"""Dates, measures and names in plain words."""

from dataclasses import dataclass
from datetime import date
from typing import Literal

from gardencanvas.crops.catalogue import Catalogue, UnknownCrop
from gardencanvas.crops.model import Crop, Variety
from gardencanvas.fit.report import PlantingFit
from gardencanvas.garden.planting import Planting
from gardencanvas.garden.site import DayOfYear
from gardencanvas.words.language import figure, mark, say, say_many, spoken

Units = Literal["metric", "imperial"]

MONTHS = (
    mark("January"), mark("February"), mark("March"), mark("April"), mark("May"), mark("June"),
    mark("July"), mark("August"), mark("September"), mark("October"), mark("November"), mark("December"),
)  # fmt: skip
_SHORT_MONTHS = (
    mark("Jan"), mark("Feb"), mark("Mar"), mark("Apr"), mark("May"), mark("Jun"),
    mark("Jul"), mark("Aug"), mark("Sep"), mark("Oct"), mark("Nov"), mark("Dec"),
)  # fmt: skip
THIN = "\u2009"  # thin space between number and unit


def month_name(month: int) -> str:
    """The name of a month from 1 to 12."""
    return say(MONTHS[month - 1])


def short_month(month: int) -> str:
    """The short name of a month from 1 to 12."""
    return say(_SHORT_MONTHS[month - 1])


def day(on: date) -> str:
    """A day as in ``12 July``."""
    return say("{day} {month}", day=on.day, month=month_name(on.month))


def yearly(on: DayOfYear) -> str:
    """A day that comes back each year, as in ``12 July``."""
    return say("{day} {month}", day=on.day, month=month_name(on.month))


def day_year(on: date) -> str:
    """A day as in ``12 July 2027``."""
    return say("{day} {month} {year}", day=on.day, month=month_name(on.month), year=on.year)


def short_day(on: date) -> str:
    """A day as in ``12 Jul``."""
    return say("{day} {month}", day=on.day, month=short_month(on.month))


def span(first: date, last: date) -> str:
    """Two days as in ``12 – 30 July``, ``12 June – 3 July`` or with years where they differ."""
    if first == last:
        return day(first)
    if first.year != last.year:
        return f"{day_year(first)} – {day_year(last)}"
    if first.month == last.month:
        month = month_name(first.month)
        return say("{first} – {last} {month}", first=first.day, last=last.day, month=month)
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
            return f"{figure(metres / 0.0254, '.3g')}{THIN}in"
        if metres < 1.0:
            return f"{figure(100 * metres, '.3g')}{THIN}cm"
        return f"{figure(metres, '.3g')}{THIN}m"

    def large(self, metres: float) -> str:
        """A bed's side: metres to the centimetre, or feet and inches."""
        if self.units == "imperial":
            inches = round(metres / 0.0254)
            return f"{inches // 12}′{THIN}{inches % 12}″"
        return f"{figure(metres, '.2f')}{THIN}m"

    def sides(self, length_m: float, width_m: float) -> str:
        """Length by width, the unit once."""
        if self.units == "imperial":
            return f"{self.large(length_m)} × {self.large(width_m)}"
        return f"{figure(length_m, '.2f')} × {figure(width_m, '.2f')}{THIN}m"

    def area(self, square_metres: float) -> str:
        """An area in square metres or square feet."""
        if self.units == "imperial":
            return f"{figure(square_metres / 0.09290304, '.0f')}{THIN}sq{THIN}ft"
        return f"{figure(square_metres, '.2f')}{THIN}m²"

    def range(self, low_m: float, high_m: float) -> str:
        """A range of small lengths, the unit once where both share it."""
        low, high = self.small(low_m), self.small(high_m)
        if low == high:
            return low
        (low_number, low_unit), (high_number, high_unit) = low.split(THIN), high.split(THIN)
        if low_unit == high_unit:
            return f"{low_number}–{high_number}{THIN}{high_unit}"
        return f"{low} – {high}"


def name_of(crop: Crop) -> str:
    """The common name of a crop in the language shown; the English one where it has no other."""
    return crop.names.get(spoken(), crop.name)


def variety_name(variety: Variety) -> str:
    """The name of a variety in the language shown; that of the grower's own as it was written."""
    return say(variety.name)


def crop_name(catalogue: Catalogue, crop_id: str, variety_id: str | None = None) -> str:
    """The common name, with the variety's in quotation marks; the bare id where it is not known."""
    try:
        name = name_of(catalogue.crop(crop_id))
    except UnknownCrop:
        return crop_id
    if variety_id is None:
        return name
    variety = next((v for v in catalogue.varieties_of(crop_id) if v.id == variety_id), None)
    return say("{crop} “{variety}”", crop=name, variety=variety_name(variety) if variety else variety_id)


def planting_name(catalogue: Catalogue, planting: Planting) -> str:
    """A planting's crop and variety in words."""
    if len(planting.varieties) > 1:
        crop = crop_name(catalogue, planting.crop)
        return say("{crop}, {n} varieties", crop=crop, n=len(planting.varieties))
    return crop_name(catalogue, planting.crop, planting.variety)


def counted(number: int, one: str, many: str) -> str:
    """A number and its noun: ``1 plant``, ``12 plants``."""
    return f"{figure(number, ',')} {one if number == 1 else many}"


def plants_counted(number: int) -> str:
    """So many plants: ``1 plant``, ``12 plants``."""
    return say_many("{number} plant", "{number} plants", number, number=figure(number, ","))


def beds_counted(number: int) -> str:
    """So many beds: ``1 bed``, ``12 beds``."""
    return say_many("{n} bed", "{n} beds", number)


def plants_of(fit: PlantingFit, catalogue: Catalogue) -> str:
    """Count and name of a planting: ``12 × Leek “winter blue”``."""
    return f"{fit.plants} × {crop_name(catalogue, fit.crop, fit.variety)}"
