"""The jobs of one planting, from its course through the season."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from datetime import date, timedelta

from gardencanvas.crops.model import Crop, Group, Harvest
from gardencanvas.garden.planting import Planting
from gardencanvas.measures.jobs import leads
from gardencanvas.measures.jobs.job import Job, JobKind, Number

Numbers = Mapping[str, Number]
_DRILLED = (Group.ROOT, Group.LEAF, Group.BRASSICA, Group.ALLIUM, Group.HERB, Group.FLOWER)


@dataclass(frozen=True, slots=True)
class Days:
    """The dates of a planting that its jobs hang on; ``ripe``: it is ever harvested."""

    sown: date
    in_bed: date
    first: date
    last: date
    out: date
    ripe: bool = True


@dataclass(frozen=True, slots=True)
class Wants:
    """What the jobs of a planting need to know beside its dates.

    ``begun``: it stood before the season's work began, nobody starts it. ``seeds``: to sow for all its
    plants. ``part``: which part of how many of a succession. ``closes``: the first day on which a neighbour
    closes over it, and that planting's id.
    """

    bed: str | None = None
    begun: bool = False
    seeds: int | None = None
    part: tuple[int, int] | None = None
    closes: tuple[date, str] | None = None


class PlantingJobs:
    """Makes the jobs of one planting; the order is that of the year."""

    def __init__(self, planting: Planting, crop: Crop, days: Days, wants: Wants) -> None:
        self._planting, self._crop, self._days, self._wants = planting, crop, days, wants

    def all(self) -> Iterator[Job]:
        """Every job of the planting."""
        if not self._wants.begun:
            yield from self._starting()
        yield from self._harvest()
        yield from self._last_picking()

    def _starting(self) -> Iterator[Job]:
        kind = self._planting.start.kind
        if kind == "raised":
            yield from self._nursery()
        if kind != "volunteer":
            yield self._start()
        if kind == "sown" and self._is_thinned():
            on = self._days.in_bed + timedelta(days=leads.THIN_D)
            if on < self._days.first:
                yield self._job(JobKind.THIN, on, on + timedelta(days=leads.THIN_WINDOW_D), self._spacing())

    def _last_picking(self) -> Iterator[Job]:
        """Before a neighbour closes over it, where that is before its own harvest ends."""
        days, closes = self._days, self._wants.closes
        if days.ripe and closes is not None and days.first < closes[0] <= days.last:
            on = closes[0] - timedelta(days=1)
            begin = max(on - timedelta(days=leads.WEEK_D), days.first)
            yield self._job(JobKind.LAST_PICKING, begin, on, self._closing())

    def _closing(self) -> Numbers:
        closes = self._wants.closes
        return {"closes": closes[0], "neighbour": closes[1]} if closes is not None else {}

    def _nursery(self) -> Iterator[Job]:
        sown, out = self._days.sown, self._days.in_bed
        if sown >= out:
            return
        yield self._job(JobKind.RAISE, sown, sown + timedelta(days=leads.WEEK_D), self._sowing())
        prick = sown + timedelta(days=leads.PRICK_OUT_D)
        harden = max(out - timedelta(days=leads.HARDEN_OFF_D), sown)
        if self._is_pricked_out() and prick < harden:
            until = min(prick + timedelta(days=leads.PRICK_OUT_WINDOW_D), harden)
            yield self._job(JobKind.PRICK_OUT, prick, until)
        yield self._job(JobKind.HARDEN_OFF, harden, out - timedelta(days=1), {"days": (out - harden).days})

    def _is_pricked_out(self) -> bool:
        fine = self._crop.seeds_per_gram
        long = (self._days.in_bed - self._days.sown).days >= leads.LONG_NURSERY_D
        return (
            long
            and self._planting.per_station == 1
            and fine is not None
            and fine.mid >= leads.FINE_SEEDS_PER_GRAM
        )

    def _is_thinned(self) -> bool:
        fine = self._crop.seeds_per_gram
        return (
            self._crop.group in _DRILLED
            and self._planting.per_station == 1
            and fine is not None
            and fine.mid >= leads.FINE_SEEDS_PER_GRAM
        )

    def _start(self) -> Job:
        kinds = {"sown": JobKind.SOW, "raised": JobKind.PLANT_OUT, "set": JobKind.SET}
        kind = kinds[self._planting.start.kind]
        on = self._days.in_bed
        part = self._wants.part
        more = {
            **self._spacing(),
            **(self._sowing() if kind is JobKind.SOW else {}),
            **({"part": part[0], "parts": part[1]} if part is not None else {}),
        }
        return self._job(kind, on, on + timedelta(days=leads.WEEK_D), more)

    def _harvest(self) -> Iterator[Job]:
        crop, days = self._crop, self._days
        lifted = crop.harvest is Harvest.SINGLE and bool(crop.harvest_disturbs)
        harvested = crop.harvest is not Harvest.NONE and days.ripe and days.first <= days.last
        if harvested:
            kind = JobKind.LIFT if lifted else JobKind.PICK
            yield self._job(kind, days.first, days.last, self._closing())
        if crop.life != "perennial" and not (lifted and harvested):
            yield self._job(JobKind.CLEAR, days.out, days.out + timedelta(days=leads.CLEAR_WINDOW_D))

    def _spacing(self) -> Numbers:
        return {"spacing_m": self._planting.pattern.spacing_m}

    def _sowing(self) -> Numbers:
        depth, seeds = self._crop.sowing_depth_m, self._wants.seeds
        return {
            **({"depth_m": depth.mid} if depth is not None else {}),
            **({"seeds": seeds} if seeds is not None else {}),
        }

    def _job(self, kind: JobKind, on: date, until: date, more: Numbers | None = None) -> Job:
        planting = self._planting
        numbers: dict[str, Number] = {
            "plants": planting.plants,
            "stations": planting.pattern.count,
            "per_station": planting.per_station,
            **(more or {}),
        }
        return Job(
            id=f"{planting.id}:{kind}".replace(" ", "-"),
            kind=kind,
            on=on,
            until=max(on, until),
            item=planting.id,
            bed=self._wants.bed,
            crop=planting.crop,
            variety=planting.variety,
            numbers=numbers,
        )
