"""What the engine answers: verdicts, findings and the report, in codes and numbers, never sentences."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import date
from enum import IntEnum, StrEnum

import numpy as np
from numpy.typing import NDArray

from gardencanvas.crops.model import Layer


class Verdict(IntEnum):
    """How well a planting or a pair does, worst last."""

    CLEAR = 0
    SHARES = 1
    STRAINS = 2
    CLASHES = 3

    @property
    def word(self) -> str:
        """The word in files and command line: clear, shares, strains, clashes."""
        return self.name.lower()


class Kind(StrEnum):
    """What a finding is about."""

    CROWDING = "crowding"
    SHADING = "shading"
    ROOTS = "roots"
    FAMILY = "family"
    WATER = "water"
    TIMING = "timing"
    FROST = "frost"
    ROTATION = "rotation"
    SUPPORT = "support"
    COVER = "cover"
    OUTSIDE = "outside"


@dataclass(frozen=True, slots=True)
class Remedy:
    """A change that would remove a finding: a code and its numbers; ``words`` makes the sentence.

    ``also`` is a second change that goes with it, where one alone does not do.
    """

    code: str
    numbers: Mapping[str, float | int | str | date] = field(default_factory=dict)
    also: "Remedy | None" = None


@dataclass(frozen=True, slots=True, eq=False)
class Finding:
    """One reason for a verdict.

    ``plantings`` names the one that suffers first, then those that cause it. ``code`` and ``numbers`` say
    what was found (``words`` turns them into a sentence); ``source`` is the citation id of the equation or
    threshold. ``place`` is a plan point to show it at. ``stations`` are the suffering stations' indices.
    """

    id: str
    kind: Kind
    verdict: Verdict
    plantings: tuple[str, ...]
    first: date
    last: date
    code: str
    numbers: Mapping[str, float | int | str | date]
    source: str
    place: tuple[float, float]
    stations: NDArray[np.int32]
    remedies: tuple[Remedy, ...] = ()

    def key(self) -> tuple[object, ...]:
        """Everything that counts when two reports are compared."""
        return (
            self.id, self.kind, self.verdict, self.plantings, self.first, self.last, self.code,
            tuple(sorted((k, str(v)) for k, v in self.numbers.items())), self.source,
            self.place, tuple(self.stations.tolist()), self.remedies,
        )  # fmt: skip


@dataclass(frozen=True, slots=True, eq=False)
class PlantingFit:
    """What the engine says of one planting."""

    id: str
    crop: str
    variety: str | None
    plants: int
    verdict: Verdict
    layer: Layer
    root_depth_m: float
    harvest_first: date
    harvest_last: date
    light: float  # share of open-sky light over its own time, mean of its stations, 0-1
    days_to_spare: int | None
    estimated: tuple[str, ...]  # crop fields that rest on a fallback
    station_verdicts: NDArray[np.uint8]  # one a station

    def key(self) -> tuple[object, ...]:
        """Everything that counts when two reports are compared."""
        return (
            self.id, self.crop, self.variety, self.plants, self.verdict, self.layer, self.root_depth_m,
            self.harvest_first, self.harvest_last, round(self.light, 9), self.days_to_spare, self.estimated,
            tuple(self.station_verdicts.tolist()),
        )  # fmt: skip


@dataclass(frozen=True, slots=True, eq=False)
class FitReport:
    """The engine's answer for one layout. ``findings`` come worst first."""

    layout: str
    season: tuple[date, date]
    plantings: Mapping[str, PlantingFit]
    findings: tuple[Finding, ...]

    @property
    def worst(self) -> Verdict:
        """Worst verdict of any planting; clear for an empty layout."""
        return max((p.verdict for p in self.plantings.values()), default=Verdict.CLEAR)

    def of(self, planting_id: str) -> tuple[Finding, ...]:
        """Findings that name the planting, as sufferer or cause."""
        return tuple(f for f in self.findings if planting_id in f.plantings)

    def same_as(self, other: "FitReport") -> bool:
        """Whether two reports say the same."""
        return (
            self.layout == other.layout
            and self.season == other.season
            and {k: v.key() for k, v in self.plantings.items()}
            == {k: v.key() for k, v in other.plantings.items()}
            and [f.key() for f in self.findings] == [f.key() for f in other.findings]
        )
