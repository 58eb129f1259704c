"""A finding with the verdict of each station it names."""

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date

import numpy as np
from numpy.typing import NDArray

from gardencanvas.fit.codes import Code
from gardencanvas.fit.report import Finding, Kind, Verdict
from gardencanvas.fit.stands import Stand
from gardencanvas.fit.thresholds import SOURCE

Marks = NDArray[np.uint8]
Number = float | int | str | date
Ints = NDArray[np.intp]

# The verdicts as marks of stations: looking a member up in an enumeration is slow, and done at every step.
CLEAR, SHARES, STRAINS, CLASHES = (np.uint8(verdict) for verdict in Verdict)


@dataclass(frozen=True, slots=True, eq=False)
class Judged:
    """A finding and the verdict of each of its stations."""

    finding: Finding
    marks: Marks  # as ``finding.stations``

    @property
    def bad(self) -> bool:
        """Whether it strains or clashes."""
        return self.finding.verdict >= Verdict.STRAINS


def finding_of(
    kind: Kind,
    code: Code,
    sufferer: Stand,
    others: tuple[Stand, ...],
    stations: Ints,
    marks: Marks,
    days: tuple[date, date],
    numbers: Mapping[str, Number],
    *,
    source: str = SOURCE,
    worst: int = 0,
    mark: str = "",
) -> Finding:
    """A finding on some stations (indices within the stand), shown at the worst one.

    ``mark`` sets its id apart from others of the same kind and plantings.
    """
    names = (sufferer.planting.id, *dict.fromkeys(o.planting.id for o in others))
    x, y = sufferer.xy[stations[worst]]
    return Finding(
        id=":".join((kind.value, *names, *([mark] if mark else []))),
        kind=kind,
        verdict=Verdict(int(marks.max())),
        plantings=names,
        first=days[0],
        last=max(days),
        code=code.value,
        numbers=numbers,
        source=source,
        place=(float(x), float(y)),
        stations=sufferer.index[stations].astype(np.int32),
    )


def worst_of(marks: Marks, measure: NDArray[np.float64]) -> int:
    """The station to show: the worst verdict, and among those the greatest measure; the first of equals."""
    some = (marks == marks.max()).nonzero()[0]
    return int(some[measure[some].argmax()])
