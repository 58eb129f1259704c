"""Typed numbers of a crop: units, decimal commas, ranges; what is wrong is said in one sentence."""

from typing import NamedTuple

from gardencanvas.crops.bounds import BOUNDS
from gardencanvas.crops.model import Basis, Quantity
from gardencanvas.words.amounts import shown, unit_of
from gardencanvas.words.language import figure, say
from gardencanvas.words.named import shipped
from gardencanvas.words.plain import Measure, Units

_INCH = 0.0254
_SHARES = {"germination_share", "light_good", "light_least"}


class Unit(NamedTuple):
    """What is typed is ``per`` times less than the program's own number."""

    word: str
    per: float


def unit_for(field: str, units: Units) -> Unit:
    """The unit in which a field is typed."""
    if field.endswith("_m"):
        return Unit("in", _INCH) if units == "imperial" else Unit("cm", 0.01)
    if field in _SHARES:
        return Unit("%", 0.01)
    return Unit(unit_of(field), 1.0)


class Typed(NamedTuple):
    """A range as typed, or what is wrong with it; both empty where nothing is typed."""

    value: Quantity | None
    fault: str


def typed(field: str, texts: tuple[str, str, str], measure: Measure) -> Typed:
    """The range that three texts mean: least, usual, most. The outer two may be left out."""
    low, mid, high = (text.strip() for text in texts)
    if not (low or mid or high):
        return Typed(None, "")
    if not mid:
        return Typed(None, say("the usual figure is missing"))
    per = unit_for(field, measure.units).per
    numbers = []
    for text in (low or mid, mid, high or mid):
        number = _number(text)
        if number is None:
            return Typed(None, say("“{text}” is no number", text=text[:20]))
        numbers.append(round(number * per, 6))
    if not numbers[0] <= numbers[1] <= numbers[2]:
        return Typed(None, say("least, usual and most must rise in that order"))
    bound = BOUNDS[field]
    if numbers[0] < bound.least or numbers[2] > bound.most:
        least, most = shown(field, bound.least, measure), shown(field, bound.most, measure)
        told = say(
            "it must lie between {least} and {most}: {why}", least=least, most=most, why=shipped(bound.why)
        )
        return Typed(None, told)
    least, usual, most = numbers
    return Typed(Quantity(low=least, mid=usual, high=most, source="user", basis=Basis.USER), "")


def _number(text: str) -> float | None:
    """A number as people type it: with a point or a comma, a hyphen or a true minus."""
    plain = text.replace("−", "-").replace(",", ".")
    if not plain or any(c not in "0123456789.-" for c in plain):
        return None
    try:
        return float(plain)
    except ValueError:
        return None


def written(field: str, value: Quantity | None, measure: Measure) -> tuple[str, str, str]:
    """The three texts of a range, as they would be typed; empty for none."""
    if value is None:
        return "", "", ""
    per = unit_for(field, measure.units).per
    low, mid, high = (figure(n / per, ".4g") for n in (value.low, value.mid, value.high))
    return low, mid, high
