"""Two layouts side by side: the table, the crops and the weeks of both."""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from math import isclose

import numpy as np

from gardencanvas.crops.tin import SeedLot
from gardencanvas.fit.report import FitReport
from gardencanvas.garden.garden import Garden
from gardencanvas.measures.codes import KINDS, OF_A_CROP, OF_A_LAYOUT, Code, Through
from gardencanvas.measures.estimates import UNKNOWN, Better, Estimate, Measure, Series
from gardencanvas.measures.measured import Caution, Measured, Part
from gardencanvas.measures.minutes import MINUTES, Minutes
from gardencanvas.measures.reckoned.measuring import Measuring
from gardencanvas.measures.yields.draws import outer
from gardencanvas.measures.yields.same_days import over_same_days

__all__ = [
    "UNKNOWN", "Better", "Caution", "Code", "Comparison", "Estimate", "Measure", "Measured", "Part", "Series",
    "Through", "compare", "compared", "measured",
]  # fmt: skip

ROUNDING = 1e-9
NINE_OF_TEN = 0.1  # the difference has the other sign in at most one of ten draws
NOTHING = Part({})


@dataclass(frozen=True, slots=True)
class Comparison:
    """Two layouts in numbers.

    ``measures`` are of the whole, in the order of ``codes.OF_A_LAYOUT``; ``beds`` the same of each bed by id
    (one that only one layout has is not known in the other); ``crops`` the harvests of each crop by id.
    """

    a: Measured
    b: Measured
    measures: tuple[Measure, ...]
    beds: Mapping[str, tuple[Measure, ...]]
    crops: Mapping[str, tuple[Measure, ...]]

    def of(self, code: Code, bed: str | None = None) -> Measure:
        """One measure of the whole, or of a bed."""
        some = self.measures if bed is None else self.beds[bed]
        return next(m for m in some if m.code == code)


def compare(
    garden: Garden,
    a: str,
    b: str,
    *,
    reports: Mapping[str, FitReport] | None = None,
    minutes: Mapping[str, Minutes] = MINUTES,
    lots: Sequence[SeedLot] = (),
) -> Comparison:
    """Compare two layouts of a garden.

    Parameters
    ----------
    a, b
        Ids or names of the layouts; they may be the same.
    reports
        What the check says of them, by the layout's id; made where it is not given.
    minutes
        What each kind of job takes, for the hours of work.
    lots
        The grower's seed with its prices, for the cost of seed.

    Raises
    ------
    KeyError, UnknownCrop
        As ``Measuring.measured``.
    """
    made = reports or {}
    ids = [garden.layout(name).id for name in (a, b)]
    return compared(*(_measuring.measured(garden, i, made.get(i), minutes, lots) for i in ids))


def measured(
    garden: Garden,
    layout_id: str,
    report: FitReport | None = None,
    minutes: Mapping[str, Minutes] = MINUTES,
    lots: Sequence[SeedLot] = (),
) -> Measured:
    """One layout in numbers; what it is made of being the same, the same object. Raises as ``compare``."""
    return _measuring.measured(garden, layout_id, report, minutes, lots)


_measuring = Measuring()


def compared(a: Measured, b: Measured) -> Comparison:
    """The comparison of two layouts that are measured already.

    The area-time equivalency ratio of both is over the same days: from the first to the last crop of either.
    """
    a, b = over_same_days(a, b)
    beds = {k: (a.beds.get(k, NOTHING), b.beds.get(k, NOTHING)) for k in _keys(a.beds, b.beds)}
    crops = {k: (a.crops.get(k, NOTHING), b.crops.get(k, NOTHING)) for k in _keys(a.crops, b.crops)}
    return Comparison(
        a,
        b,
        _table(a.whole, b.whole, OF_A_LAYOUT),
        {k: _table(*both, OF_A_LAYOUT) for k, both in beds.items()},
        {k: _table(*both, OF_A_CROP, k) for k, both in crops.items()},
    )


def _keys(one: Iterable[str], two: Iterable[str]) -> list[str]:
    return list(dict.fromkeys((*one, *two)))


def _table(a: Part, b: Part, codes: Iterable[Code], crop: str | None = None) -> tuple[Measure, ...]:
    return tuple(_measure(code, a, b, crop) for code in codes)


def _measure(code: Code, a: Part, b: Part, crop: str | None) -> Measure:
    unit, better, _ = KINDS[code]
    difference, exceeds = _difference(code, a, b)
    apart = (a.of_apart(code), b.of_apart(code))
    return Measure(code, unit, better, a.of(code), b.of(code), *apart, difference, exceeds, crop)


def _difference(code: Code, a: Part, b: Part) -> tuple[Estimate, bool | None]:
    """The second less the first, and whether that is more than chance."""
    one, two = a.of(code).value, b.of(code).value
    if one is None or two is None:
        return UNKNOWN, None
    change = 0.0 if isclose(one, two, rel_tol=ROUNDING, abs_tol=ROUNDING) else two - one
    if code not in a.draws and code not in b.draws:
        return Estimate(change), abs(change) > KINDS[code].grain
    draws = np.asarray(b.draws.get(code, two) - a.draws.get(code, one))
    low, high = (float(q) for q in outer(draws))
    other = float(np.mean(draws <= 0.0 if change > 0.0 else draws >= 0.0))
    exceeds = change != 0.0 and other <= NINE_OF_TEN
    return Estimate(change, min(low, change), max(high, change)), exceeds
