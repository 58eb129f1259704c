"""What is asked and what is answered: wishes, weights, proposals, misses."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import date
from enum import StrEnum

from gardencanvas.fit.report import Finding, Verdict
from gardencanvas.garden.planting import Planting

QUICK_D = 60  # in the bed to the first harvest: common practice calls such crops catch crops
ROTATION_Y = 3  # common practice, where a crop names none


@dataclass(frozen=True, slots=True)
class Wishes:
    """What a proposal must satisfy; None and False ask for nothing."""

    tin: frozenset[str] | None = None  # crops in the grower's own seed tin
    wanted: frozenset[str] | None = None  # crops on the list of favourites
    new_family: bool = False  # its family was not grown on this ground lately
    quick: bool = False  # harvested within two months
    no_raising: bool = False  # sown in place or set, nothing raised under glass


@dataclass(frozen=True, slots=True)
class Weights:
    """What counts how much in the ranking; each part is between 0 and 1."""

    harvest_rate: float = 1.0  # harvest per m² and day on the ground, against the best asked about
    harvest: float = 0.0  # harvest in all, against the best
    soon: float = 0.0  # soon harvested
    spare: float = 0.0  # days to spare, up to four weeks
    unstrained: float = 0.5  # nothing strains


class Part(StrEnum):
    """Parts of the ranking."""

    HARVEST_RATE = "harvest rate"
    HARVEST = "harvest"
    SOON = "soon"
    SPARE = "spare"
    UNSTRAINED = "unstrained"


@dataclass(frozen=True, slots=True, eq=False)
class Effect:
    """What a proposal does to one planting that stands there."""

    planting: str
    before: Verdict
    after: Verdict
    light_before: float
    light_after: float
    findings: tuple[Finding, ...]  # that name both, as they would be


@dataclass(frozen=True, slots=True, eq=False)
class Proposal:
    """A planting that fits, as the engine has judged it in the whole garden.

    ``spare_d``: days from its last harvest until a neighbour closes over it or the next crop comes; None
    where nothing waits for its ground. ``spare_late_d``: the same in a late year, one in ten. ``harvest_kg``:
    low, central and high; None where it bears none this season, or none is on record. ``strains``: findings
    that say what it costs.
    """

    planting: Planting
    bed: str
    plants: int
    ground_m2: float
    sow_on: date  # in place or under glass; the start itself where it is set
    harvest_first: date
    harvest_last: date
    harvest_late: date | None  # in nine of ten years it has ended by then
    out: date
    days: int  # on the ground, in this season
    ripens: float | None  # share of years that bring a harvest; None: most do not
    light: float
    harvest_kg: tuple[float, float, float] | None
    spare_d: int | None
    spare_late_d: int | None
    family_last: int | None  # year in which its family last grew on this ground
    verdict: Verdict
    strains: tuple[Finding, ...]
    effects: tuple[Effect, ...]
    parts: Mapping[Part, float]
    score: float

    @property
    def crop(self) -> str:
        """Id of its crop."""
        return self.planting.crop

    @property
    def variety(self) -> str | None:
        """Id of its variety."""
        return self.planting.variety


class Why(StrEnum):
    """Why something does not fit, or nothing does."""

    OUTSIDE = "outside"  # no bed there
    NOTHING_LEFT = "nothing left"  # no crop satisfies the wishes
    SEASON = "season"  # no day to start it; ``next``: the first good day, where there is one
    ROOM = "room"  # ``short_m``: missing clearance; ``by``: the planting in the way; ``until``: its last day
    LIGHT = "light"  # ``light``, ``least``
    CLASH = "clash"  # the engine says so; ``code``, ``kind``, ``other``


@dataclass(frozen=True, slots=True)
class Miss:
    """What came nearest to fitting, and what is missing."""

    why: Why
    crop: str | None = None
    variety: str | None = None
    numbers: Mapping[str, float | int | str | date] = field(default_factory=dict)


@dataclass(frozen=True, slots=True)
class Answer:
    """Proposals, best first; where there are none, what came nearest."""

    proposals: tuple[Proposal, ...] = ()
    misses: tuple[Miss, ...] = ()
    looked_at: int = 0  # ways of starting that were asked about


@dataclass(frozen=True, slots=True)
class Progress:
    """How far a search has come."""

    done: int
    of: int
    proposals: tuple[Proposal, ...] = ()
