"""The jobs of one planting, from its course through the season."""

from collections.abc import Iterator, Mapping
from datetime import date, timedelta

from gardencanvas.crops.model import Crop, Group, Harvest
from gardencanvas.garden.planting import Planting
from gardencanvas.measures.jobs import leads
from gardencanvas.measures.jobs.job import Job, JobKind

Numbers = Mapping[str, float | int | str]
_DRILLED = (Group.ROOT, Group.LEAF, Group.BRASSICA, Group.ALLIUM, Group.HERB, Group.FLOWER)


class Days:
    """The dates of a planting that its jobs hang on."""

    def __init__(self, sown: date, in_bed: date, first: date, last: date, out: date) -> None:
        self.sown, self.in_bed, self.first, self.last, self.out = sown, in_bed, first, last, out


class PlantingJobs:
    """Makes the jobs of one planting; the order is that of the year."""

    def __init__(
        self, planting: Planting, crop: Crop, days: Days, bed: str | None, succession: tuple[int, int] | None
    ) -> None:
        self._planting, self._crop, self._days, self._bed = planting, crop, days, bed
        self._part: Numbers = {"part": succession[0], "parts": succession[1]} if succession else {}

    def all(self) -> Iterator[Job]:
        """Every job of the planting but those that its neighbours ask for."""
        kind = self._planting.start.kind
        if kind == "raised":
            yield from self._nursery()
        if kind != "volunteer":
            yield self._start()
        if kind == "sown" and self._is_thinned():
            on = self._days.in_bed + timedelta(days=leads.THIN_D)
            if on < self._days.first:
                yield self._job(JobKind.THIN, on, on + timedelta(days=leads.THIN_WINDOW_D), self._spacing())
        yield from self._harvest()

    def last_picking(self, closes: date) -> Job:
        """The last picking before a neighbour closes over it."""
        on = closes - timedelta(days=1)
        return self._job(JobKind.LAST_PICKING, on - timedelta(days=leads.WEEK_D), on)

    def _nursery(self) -> Iterator[Job]:
        sown, out = self._days.sown, self._days.in_bed
        if sown >= out:
            return
        yield self._job(JobKind.RAISE, sown, sown + timedelta(days=leads.WEEK_D), self._depth())
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
        more = {**self._spacing(), **(self._depth() if kind is JobKind.SOW else {}), **self._part}
        return self._job(kind, on, on + timedelta(days=leads.WEEK_D), more)

    def _harvest(self) -> Iterator[Job]:
        crop, days = self._crop, self._days
        if crop.harvest is not Harvest.NONE and days.first <= days.last:
            lifted = crop.harvest is Harvest.SINGLE and bool(crop.harvest_disturbs)
            yield self._job(JobKind.LIFT if lifted else JobKind.PICK, days.first, days.last)
        gone_with_it = crop.harvest is Harvest.SINGLE and crop.harvest_disturbs
        if crop.life != "perennial" and not gone_with_it:
            yield self._job(JobKind.CLEAR, days.out, days.out + timedelta(days=leads.CLEAR_WINDOW_D))

    def _spacing(self) -> Numbers:
        return {"spacing_m": self._planting.pattern.spacing_m}

    def _depth(self) -> Numbers:
        depth = self._crop.sowing_depth_m
        return {"depth_m": depth.mid} if depth is not None else {}

    def _job(self, kind: JobKind, on: date, until: date, more: Numbers | None = None) -> Job:
        planting = self._planting
        numbers: dict[str, float | int | str] = {
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
            bed=self._bed,
            crop=planting.crop,
            variety=planting.variety,
            numbers=numbers,
        )
