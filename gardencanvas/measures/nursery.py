"""Room in the nursery, week by week: trays of seedlings, and cells from pricking out to planting out."""

from collections import Counter
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from math import ceil

from gardencanvas.measures.jobs.job import Job, JobKind

CELLS_IN_TRAY = 40  # a full-size tray (about 38 × 24 cm) is sold with 24 to 84 cells (common practice)


@dataclass(frozen=True, slots=True)
class TrayWeek:
    """What stands in the nursery in one week.

    ``cells`` hold a seedling or a clump each; ``sowings`` are trays of seedlings that wait to be pricked out,
    one for each planting.
    """

    week: date  # its Monday
    cells: int
    sowings: int

    @property
    def trays(self) -> int:
        """Trays they stand on: of cells, and one for each sowing."""
        return ceil(self.cells / CELLS_IN_TRAY) + self.sowings


def nursery_weeks(jobs: Iterable[Job]) -> tuple[TrayWeek, ...]:
    """Cells and sowings from the first to the last week that has any, weeks with none left out.

    What is pricked out waits in one tray and then has a cell for each station. What is not pricked out is
    sown into cells at once: a cell for each seed that is sown, or for each clump.
    """
    of_item: dict[str, dict[JobKind, Job]] = {}
    for job in jobs:
        if job.kind in (JobKind.RAISE, JobKind.PRICK_OUT, JobKind.PLANT_OUT):
            of_item.setdefault(job.item, {})[job.kind] = job
    cells: Counter[date] = Counter()
    sowings: Counter[date] = Counter()
    for mine in of_item.values():
        raised, out = mine.get(JobKind.RAISE), mine.get(JobKind.PLANT_OUT)
        if raised is None or out is None:
            continue
        pricked = mine.get(JobKind.PRICK_OUT)
        from_cells = pricked.on if pricked is not None else raised.on
        sowings.update(w for w in _mondays(raised.on, from_cells) if w < _monday(from_cells))
        cells.update({w: _cells(raised, pricked) for w in _mondays(from_cells, out.on)})
    return tuple(TrayWeek(w, cells[w], sowings[w]) for w in sorted({*cells, *sowings}))


def most(weeks: Sequence[TrayWeek]) -> TrayWeek:
    """The week that takes most trays, the earliest of equals."""
    return max(weeks, key=lambda w: (w.trays, w.cells, -w.week.toordinal()))


def _cells(raised: Job, pricked: Job | None) -> int:
    stations, seeds = int(raised.count("stations") or 0), raised.count("seeds")
    if pricked is not None or raised.count("per_station") != 1 or seeds is None:
        return stations
    return int(seeds)


def _mondays(first: date, before: date) -> Iterator[date]:
    """The weeks of the days from one to the one before another."""
    week = _monday(first)
    while week < before:
        yield week
        week += timedelta(days=7)


def _monday(day: date) -> date:
    return day - timedelta(days=day.weekday())
