"""Work and seed of a layout: its jobs as the table of minutes counts them, its order at known prices."""

from collections.abc import Iterable, Mapping
from math import ceil

from gardencanvas.measures.estimates import UNKNOWN, Estimate
from gardencanvas.measures.jobs.job import Job, JobKind
from gardencanvas.measures.minutes import MINUTES, Minutes, Task, hours
from gardencanvas.measures.seed_order import SeedLine

# These come back every week of the days there are for them; every other job is done once.
_WEEKLY = frozenset({JobKind.PICK, JobKind.WATER})


def tasks(jobs: Iterable[Job]) -> tuple[Task, ...]:
    """What a list of jobs comes to: one task each time something is done."""
    found: list[Task] = []
    for job in jobs:
        plants = job.numbers.get("plants", 0)
        times = ceil(((job.until - job.on).days + 1) / 7) if job.kind in _WEEKLY else 1
        found += [Task(job.kind.value, plants if isinstance(plants, int) else 0)] * times
    return tuple(found)


def hours_of(jobs: Iterable[Job], minutes: Mapping[str, Minutes] = MINUTES) -> Estimate:
    """Hours that some jobs take together; not known where the minutes of one of them are not."""
    return hours(tasks(jobs), minutes)


def seed_cost(order: Iterable[SeedLine]) -> Estimate:
    """What the seed to order costs; not known where the price of some of it is not.

    Sets, tubers and plants that are bought are no seed and not counted.
    """
    costs = [line.cost for line in order if line.bought < line.plants]
    if not costs or any(cost is None for cost in costs):
        return UNKNOWN
    return Estimate(sum(cost for cost in costs if cost is not None))
