"""Numbers of a crop in words, each with the unit of its field."""

from collections.abc import Callable
from functools import partial

from gardencanvas.crops.model import Quantity
from gardencanvas.words.language import figure, mark, say, say_many
from gardencanvas.words.plain import THIN, Measure, percent

_SHARES = {"germination_share", "light_good", "light_least", "depletion_fraction"}
_UNITS = {
    "per_gram": mark("per g"),
    "life_y": mark("years"),
    "rotation_y": mark("years"),
    "per_m2": mark("per m²"),
    "kg_m2": mark("kg/m²"),
    "kg_plant": mark("kg"),
    "_d": mark("days"),
    "_c": mark("°C"),
}


def shown(field: str, number: float, measure: Measure) -> str:
    """A number of a crop's field with its unit: ``height_m`` 0.35 as ``35 cm``."""
    if field.endswith("_m"):
        return measure.small(number)
    if field in _SHARES:
        return percent(number)
    told, n = (
        _plain(number),
        1 if number == 1 else 2,
    )  # the told number is rounded: only the noun's form counts
    if field.endswith("_y"):
        return say_many("{number}\u2009year", "{number}\u2009years", n, number=told)
    if field.endswith("_d"):
        return say_many("{number}\u2009day", "{number}\u2009days", n, number=told)
    return f"{told}{THIN}{unit}" if (unit := unit_of(field)) else told


def unit_of(field: str) -> str:
    """The unit of a field that is not a length or a share; empty where it has none."""
    return next((say(unit) for end, unit in _UNITS.items() if field.endswith(end)), "")


def in_words(field: str, measure: Measure) -> Callable[[float], str]:
    """``shown`` for one field."""
    return partial(_shown_of, field, measure)


def _shown_of(field: str, measure: Measure, number: float) -> str:
    return shown(field, number, measure)


def amount(field: str, value: Quantity, measure: Measure) -> str:
    """A quantity with its range: ``35 cm (25–45)``; the number alone where it has none."""
    mid, around = parts(field, value, measure)
    return f"{mid} ({around})" if around else mid


def parts(field: str, value: Quantity, measure: Measure) -> tuple[str, str]:
    """A quantity and its range: ``35 cm`` and ``25–45``, the unit where it is another; empty for none."""
    low, mid, high = (shown(field, n, measure) for n in (value.low, value.mid, value.high))
    if low == high:
        return mid, ""
    (low_number, low_unit), (_, mid_unit), (high_number, high_unit) = map(_parted, (low, mid, high))
    if not field.endswith("_m") or low_unit == mid_unit == high_unit:
        return mid, between(low_number, high_number)
    if low_unit == high_unit:
        return mid, between(low_number, high)
    return mid, f"{low} – {high}"


def between(low: str, high: str) -> str:
    """``25–45``, with a word where a dash would look like a minus sign."""
    return say("{low} to {high}", low=low, high=high) if low.startswith("−") else f"{low}–{high}"


def _parted(text: str) -> tuple[str, str]:
    number, _, unit = text.partition(THIN)
    return number, unit


def _plain(number: float) -> str:
    """Three digits that count, whole numbers in full, with a true minus sign."""
    whole = abs(number) >= 100 or number == round(number)
    return figure(number, ",.0f" if whole else ".3g").replace("-", "−")
