"""The measures of layouts in words: what each is called, how its number is shown, what it means.

Estimates are shown rounded, with their range and a ``≈``; what is not known says so.
"""

from math import floor, log10

from gardencanvas.measures import estimates
from gardencanvas.measures.codes import Code, Through
from gardencanvas.measures.estimates import Estimate
from gardencanvas.words.amounts import between
from gardencanvas.words.comparing_why import WHY
from gardencanvas.words.language import figure, mark, say, say_many
from gardencanvas.words.plain import THIN, Measure

NOT_KNOWN = mark("not known")

_LABELS: dict[str, str] = {
    Code.GROUND_DAYS: mark("Ground in use"),
    Code.GROUND_SHARE: mark("Ground in use, share of the year"),
    Code.HARVEST: mark("Harvest"),
    Code.HARVEST_PIECES: mark("Plants harvested"),
    Code.ALONE: mark("Grown alone on the same ground"),
    Code.RELATIVE_YIELD: mark("Share of what it gives alone"),
    Code.HARVEST_WEEKS: mark("Weeks with a harvest"),
    Code.GAP_WEEKS: mark("Weeks without, between harvests"),
    Code.GLUT_WEEKS: mark("Weeks of glut"),
    Code.LER: mark("Land equivalent ratio (LER)"),
    Code.ATER: mark("Area-time equivalency ratio (ATER)"),
    Code.OVERLAP: mark("Time the crops stand together"),
    Code.LIGHT: mark("Light used"),
    Code.MIXING: mark("Mixing of kinds"),
    Code.KINDS: mark("Families, as if of equal share"),
    Code.SHADED: mark("Ground shaded"),
    Code.WATER: mark("Water to give, whole season"),
    Code.WATER_PEAK: mark("Water in the driest week"),
    Code.HUNGRY: mark("Ground under hungry crops"),
    Code.FIXING: mark("Ground under crops that fix nitrogen"),
    Code.SEED_COST: mark("Cost of seed"),
    Code.HOURS: mark("Hours of work"),
    Code.CLEAR: mark("Plantings clear"),
    Code.SHARES: mark("Plantings that share"),
    Code.STRAINS: mark("Plantings that strain"),
    Code.CLASHES: mark("Plantings that clash"),
    Code.SPARE: mark("Days to spare in nine years of ten"),
    Code.HAZARDS: mark("Cautions"),
    Through.HARVEST: mark("Harvest by week"),
    Through.COVER: mark("Ground under leaves by week"),
    Through.WATER: mark("Water to give by week"),
}
_UNITS = {
    "share": mark("%"),
    "points": mark("points"),  # of a hundred
    "kg": mark("kg"),
    "m2 days": mark("m² × days"),
    "litres": mark("l"),
    "litres a week": mark("l a week"),
    "hours": mark("h"),
}
_IMPERIAL = {
    "kg": mark("lb"),
    "m2 days": mark("sq ft × days"),
    "litres": mark("gal"),
    "litres a week": mark("gal a week"),
}
_HUNDREDTHS = ("share", "points")
_SQUARE_FEET, _POUNDS, _GALLONS = 0.09290304, 0.45359237, 3.785411784


def label(code: str) -> str:
    """What a measure is called."""
    return say(_LABELS[code])


def explained(code: str) -> str:
    """What a measure means, its equation and where it comes from: one paragraph."""
    return " ".join(map(say, WHY[code]))


def shown(estimate: Estimate, unit: str, measure: Measure) -> str:
    """A measure's number with its unit, and its range where it is estimated: ``≈ 12 kg (8–16)``."""
    if estimate.value is None:
        return say(NOT_KNOWN)
    if not estimate.ranged or estimate.low is None or estimate.high is None:
        return _with_unit(estimate.value, unit, measure, _plain(_own(estimate.value, unit, measure), unit))
    low, mid, high = (_own(x, unit, measure) for x in (estimate.low, estimate.value, estimate.high))
    step = _step(high - low, mid)
    told = _with_unit(estimate.value, unit, measure, _stepped(mid, step, unit))
    around = between(_stepped(low, step, unit), _stepped(high, step, unit))
    if estimate.doubtful:
        return say("≈ {number} ({range}, doubtful)", number=told, range=around)
    return f"≈ {told} ({around})"


def changed(estimate: Estimate, unit: str, measure: Measure) -> str:
    """A difference with its sign: ``+3 kg (−1 to 7)``; of shares in points."""
    text = shown(estimate, "points" if unit == "share" else unit, measure)  # no share of a share
    if estimate.value is None or estimate.value <= 0.0:
        return text
    return text.replace("≈ ", "≈ +", 1) if text.startswith("≈") else f"+{text}"


def outcome(row: estimates.Measure, first: str, second: str) -> str:
    """Which of two layouts is better in a measure, and whether that is more than its uncertainty.

    Parameters
    ----------
    first, second
        Names of the layouts.
    """
    change = row.difference.value
    if change is None:
        return say(NOT_KNOWN)
    if change == 0.0:
        return say("alike")
    if row.better == "neither":
        return say("more in {layout}", layout=second if change > 0.0 else first)
    better = second if (change > 0.0) == (row.better == "more") else first
    if row.exceeds_uncertainty:
        return say("better in {layout}", layout=better)
    return say("may be better in {layout}: within uncertainty", layout=better)


def _own(number: float, unit: str, measure: Measure) -> float:
    """The number in the grower's units; shares in per cent."""
    if unit in _HUNDREDTHS:
        return 100.0 * number
    if measure.units == "imperial":
        factor = {"kg": _POUNDS, "m2 days": _SQUARE_FEET, "litres": _GALLONS, "litres a week": _GALLONS}
        return number / factor.get(unit, 1.0)
    return number


def _with_unit(number: float, unit: str, measure: Measure, text: str) -> str:
    n = 1 if number == 1 else 2  # the number is told as it is rounded: only its form of the noun is wanted
    if unit == "pieces":
        return say_many("{number}\u2009plant", "{number}\u2009plants", n, number=text)
    if unit == "weeks":
        return say_many("{number}\u2009week", "{number}\u2009weeks", n, number=text)
    if unit == "days":
        return say_many("{number}\u2009day", "{number}\u2009days", n, number=text)
    names = {**_UNITS, **_IMPERIAL} if measure.units == "imperial" else _UNITS
    return f"{text}{THIN}{say(names[unit])}" if unit in names else text


def _plain(number: float, unit: str) -> str:
    """A number that is counted or exact."""
    if unit in _HUNDREDTHS:
        return _signed(figure(number, ".1g" if 0.0 < abs(number) < 1.0 else ".0f"))
    if unit == "price":
        return figure(number, ",.2f")
    if number == round(number) or abs(number) >= 100:
        return _signed(figure(number, ",.0f"))
    return _signed(figure(number, ".2g" if abs(number) < 10 else ".3g"))


def _step(width: float, mid: float) -> float:
    """So finely an estimate is told: in steps of a fortieth to a quarter of its range."""
    size = width if width > 0.0 else abs(mid) or 1.0
    step: float = 10.0 ** floor(log10(size / 4))
    return step


def _stepped(number: float, step: float, unit: str) -> str:
    if unit in ("pieces", "weeks", "days", "plantings", *_HUNDREDTHS):
        step = max(step, 1.0)
    if unit == "ratio":
        step = max(step, 0.1)  # no model of neighbours is finer
    rounded = round(number / step) * step
    digits = max(0, -floor(log10(step) + 1e-9))
    return _signed(figure(rounded + 0.0, f",.{digits}f"))


def _signed(text: str) -> str:
    return text.replace("-", "−")
