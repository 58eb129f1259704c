"""One job of the year."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import date
from enum import StrEnum

Number = float | int | str | date


class JobKind(StrEnum):
    """What is done; the words are those of the table of minutes."""

    RAISE = "raise"  # sow under glass
    PRICK_OUT = "prick out"
    HARDEN_OFF = "harden off"
    SUPPORT = "support"  # put it up
    SOW = "sow"  # in place
    PLANT_OUT = "plant out"
    SET = "set"
    THIN = "thin"
    WATER = "water"  # begin; from then on as the weather asks
    COVER = "cover"  # put it on
    UNCOVER = "uncover"
    NET = "net"  # mesh goes on
    PICK = "pick"
    LAST_PICKING = "last picking"  # before a neighbour closes over it
    LIFT = "lift"
    CLEAR = "clear"


@dataclass(frozen=True, slots=True)
class Job:
    """Something to do from a day on, to ``until`` at the latest where it has days to choose from.

    ``id`` stays the same when dates change, so that a calendar updates and done-marks hold. ``numbers``:
    ``plants``, ``stations``, ``per_station``, ``seeds`` (to sow), ``spacing_m``, ``depth_m`` (of sowing),
    ``part`` and ``parts`` of a succession, ``days`` of hardening off, ``closes`` (the first day on which the
    planting ``neighbour`` closes over it), ``height_m``, ``canes``, ``litres`` (a square metre and week of
    water, at most) in the week ``dry``; what is not known is absent.
    """

    id: str
    kind: JobKind
    on: date
    until: date
    item: str  # id of the planting, support or cover it is done to
    bed: str | None  # id; None on bare plan
    crop: str | None
    variety: str | None
    numbers: Mapping[str, Number] = field(default_factory=dict)

    def count(self, name: str) -> float | None:
        """A number of it; None where it has none of that name."""
        value = self.numbers.get(name)
        return value if isinstance(value, (int, float)) else None

    def day(self, name: str) -> date | None:
        """A day of it; None where it has none of that name."""
        value = self.numbers.get(name)
        return value if isinstance(value, date) else None

    def key(self) -> tuple[date, int, str]:
        """Sorts jobs by day, then in the order one does them, then by id."""
        return self.on, list(JobKind).index(self.kind), self.id
