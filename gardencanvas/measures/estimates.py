"""What a measure says: a number with its range, told apart from one that is not known."""

from dataclasses import dataclass
from datetime import date
from typing import Literal

Better = Literal["more", "less", "neither"]
Winner = Literal["a", "b"]


@dataclass(frozen=True, slots=True)
class Estimate:
    """A number, and the range in which it lies in eight cases of ten.

    ``value`` is None where it is not known, which is never the same as 0. ``low`` and ``high`` are None where
    the number has no range: it is counted, not estimated. ``doubtful`` marks a number beyond what field
    trials report.
    """

    value: float | None = None
    low: float | None = None
    high: float | None = None
    doubtful: bool = False

    @property
    def known(self) -> bool:
        """Whether there is a number at all."""
        return self.value is not None

    @property
    def ranged(self) -> bool:
        """Whether it has a range."""
        return self.low is not None and self.high is not None and self.low < self.high


UNKNOWN = Estimate()


@dataclass(frozen=True, slots=True)
class Measure:
    """One row of the table of a comparison.

    ``apart`` and ``apart_b`` are what the crops of the first and of the second layout would give grown apart
    on the same ground. ``difference`` is the second less the first; the years and yields drawn are the same
    in both, so that what both share cancels. ``exceeds_uncertainty`` says whether the difference keeps its
    sign in nine cases of ten; None where it is not known.
    """

    code: str
    unit: str
    better: Better
    a: Estimate
    b: Estimate
    apart: Estimate
    apart_b: Estimate
    difference: Estimate
    exceeds_uncertainty: bool | None
    crop: str | None = None  # of one crop; None for all

    @property
    def winner(self) -> Winner | None:
        """Which is better beyond its uncertainty; None where none is."""
        change = self.difference.value
        if self.better == "neither" or not self.exceeds_uncertainty or not change:
            return None
        return "b" if (change > 0.0) == (self.better == "more") else "a"


@dataclass(frozen=True, slots=True)
class Series:
    """A measure through the weeks of one layout's season.

    ``weeks`` are their first days; ``low`` and ``high`` hold eight years of ten, and are empty where the
    values are not estimated.
    """

    code: str
    unit: str
    crop: str | None
    weeks: tuple[date, ...]
    values: tuple[float, ...]
    low: tuple[float, ...] = ()
    high: tuple[float, ...] = ()
