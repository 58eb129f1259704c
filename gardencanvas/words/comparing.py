"""The measures of layouts in words: what each is called, how its number is shown, what it means.

Estimates are shown rounded, with their range and a ``≈``; what is not known says so.
"""

from math import floor, log10

from gardencanvas.measures import estimates
from gardencanvas.measures.codes import Code, Through
from gardencanvas.measures.estimates import Estimate
from gardencanvas.words.comparing_why import WHY
from gardencanvas.words.plain import THIN, Measure

NOT_KNOWN = "not known"

_LABELS: dict[str, str] = {
    Code.GROUND_DAYS: "Ground in use",
    Code.GROUND_SHARE: "Ground in use, share of the year",
    Code.HARVEST: "Harvest",
    Code.HARVEST_PIECES: "Plants harvested",
    Code.ALONE: "Grown alone on the same ground",
    Code.RELATIVE_YIELD: "Share of what it gives alone",
    Code.HARVEST_WEEKS: "Weeks with a harvest",
    Code.GAP_WEEKS: "Weeks without, between harvests",
    Code.GLUT_WEEKS: "Weeks of glut",
    Code.LER: "Land equivalent ratio (LER)",
    Code.ATER: "Area-time equivalency ratio (ATER)",
    Code.OVERLAP: "Time the crops stand together",
    Code.LIGHT: "Light used",
    Code.MIXING: "Mixing of kinds",
    Code.KINDS: "Families, as if of equal share",
    Code.SHADED: "Ground shaded",
    Code.WATER: "Water to give, whole season",
    Code.WATER_PEAK: "Water in the driest week",
    Code.HUNGRY: "Ground under hungry crops",
    Code.FIXING: "Ground under crops that fix nitrogen",
    Code.SEED_COST: "Cost of seed",
    Code.HOURS: "Hours of work",
    Code.CLEAR: "Plantings clear",
    Code.SHARES: "Plantings that share",
    Code.STRAINS: "Plantings that strain",
    Code.CLASHES: "Plantings that clash",
    Code.SPARE: "Days to spare in nine years of ten",
    Code.HAZARDS: "Cautions",
    Through.HARVEST: "Harvest by week",
    Through.COVER: "Ground under leaves by week",
    Through.WATER: "Water to give by week",
}
_SQUARE_FEET, _POUNDS, _GALLONS = 0.09290304, 0.45359237, 3.785411784


def label(code: str) -> str:
    """What a measure is called."""
    return _LABELS[code]


def explained(code: str) -> str:
    """What a measure means, its equation and where it comes from: one paragraph."""
    return WHY[code]


def shown(estimate: Estimate, unit: str, measure: Measure) -> str:
    """A measure's number with its unit, and its range where it is estimated: ``≈ 12 kg (8–16)``."""
    if estimate.value is None:
        return NOT_KNOWN
    if not estimate.ranged or estimate.low is None or estimate.high is None:
        return _with_unit(estimate.value, unit, measure, _plain(_own(estimate.value, unit, measure), unit))
    low, mid, high = (_own(x, unit, measure) for x in (estimate.low, estimate.value, estimate.high))
    step = _step(high - low, mid)
    told = _with_unit(estimate.value, unit, measure, _stepped(mid, step, unit))
    between = f"{_stepped(low, step, unit)}{_dash(low)}{_stepped(high, step, unit)}"
    doubt = ", doubtful" if estimate.doubtful else ""
    return f"≈ {told} ({between}{doubt})"


def changed(estimate: Estimate, unit: str, measure: Measure) -> str:
    """A difference with its sign: ``+3 kg (−1 to 7)``; of shares in points."""
    text = shown(estimate, unit, measure)
    if unit == "share":
        text = text.replace(f"{THIN}%", f"{THIN}points")  # of a hundred: no share of a share
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
        return NOT_KNOWN
    if change == 0.0:
        return "alike"
    if row.better == "neither":
        return f"more in {second if change > 0.0 else first}"
    better = second if (change > 0.0) == (row.better == "more") else first
    return (
        f"better in {better}" if row.exceeds_uncertainty else f"may be better in {better}: within uncertainty"
    )


def _own(number: float, unit: str, measure: Measure) -> float:
    """The number in the grower's units; shares in per cent."""
    if unit == "share":
        return 100.0 * number
    if measure.units == "imperial":
        factor = {"kg": _POUNDS, "m2 days": _SQUARE_FEET, "litres": _GALLONS, "litres a week": _GALLONS}
        return number / factor.get(unit, 1.0)
    return number


def _with_unit(number: float, unit: str, measure: Measure, text: str) -> str:
    if unit == "share":
        return f"{text}{THIN}%"
    imperial = measure.units == "imperial"
    names = {
        "kg": "lb" if imperial else "kg",
        "m2 days": "sq ft × days" if imperial else "m² × days",
        "litres": "gal" if imperial else "l",
        "litres a week": "gal a week" if imperial else "l a week",
        "hours": "h",
        "pieces": "plant" if number == 1 else "plants",
        "weeks": "week" if number == 1 else "weeks",
        "days": "day" if number == 1 else "days",
    }
    name = names.get(unit, "")
    return f"{text}{THIN}{name}" if name else text


def _plain(number: float, unit: str) -> str:
    """A number that is counted or exact."""
    if unit == "share":
        return _signed(f"{number:.1g}" if 0.0 < abs(number) < 1.0 else f"{number:.0f}")
    if unit == "price":
        return f"{number:,.2f}"
    if number == round(number) or abs(number) >= 100:
        return _signed(f"{number:,.0f}")
    return _signed(f"{number:.2g}" if abs(number) < 10 else f"{number:.3g}")


def _step(width: float, mid: float) -> float:
    """So finely an estimate is told: in steps of a fortieth to a quarter of its range."""
    size = width if width > 0.0 else abs(mid) or 1.0
    step: float = 10.0 ** floor(log10(size / 4))
    return step


def _stepped(number: float, step: float, unit: str) -> str:
    if unit in ("pieces", "weeks", "days", "plantings", "share"):
        step = max(step, 1.0)
    if unit == "ratio":
        step = max(step, 0.1)  # no model of neighbours is finer
    rounded = round(number / step) * step
    digits = max(0, -floor(log10(step) + 1e-9))
    return _signed(f"{rounded + 0.0:,.{digits}f}")


def _signed(text: str) -> str:
    return text.replace("-", "−")


def _dash(low: float) -> str:
    return " to " if low < 0.0 else "–"
