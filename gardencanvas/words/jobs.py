"""Jobs in words: what to do, and the detail one wants in the hand."""

from collections.abc import Callable, Iterable, Mapping, Sequence
from datetime import date

from gardencanvas.crops.catalogue import Catalogue
from gardencanvas.crops.model import Hazard
from gardencanvas.garden.garden import Garden, Layout
from gardencanvas.garden.ground import Bed, Cover, LineSupport, RingSupport
from gardencanvas.garden.planting import Planting
from gardencanvas.measures.calendar_writing import Entry
from gardencanvas.measures.csv_writing import Cell
from gardencanvas.measures.jobs import Job, JobKind
from gardencanvas.words.language import figure, mark, say, say_many
from gardencanvas.words.named import shipped
from gardencanvas.words.plain import Measure, crop_name, day, planting_name, span

_KINDS = {
    JobKind.RAISE: mark("raise"),
    JobKind.PRICK_OUT: mark("prick out"),
    JobKind.HARDEN_OFF: mark("harden off"),
    JobKind.SUPPORT: mark("put up support"),
    JobKind.SOW: mark("sow"),
    JobKind.PLANT_OUT: mark("plant out"),
    JobKind.SET: mark("set"),
    JobKind.THIN: mark("thin"),
    JobKind.WATER: mark("begin watering"),
    JobKind.COVER: mark("put on cover"),
    JobKind.UNCOVER: mark("take off cover"),
    JobKind.NET: mark("put on net"),
    JobKind.PICK: mark("pick"),
    JobKind.LAST_PICKING: mark("last picking"),
    JobKind.LIFT: mark("lift"),
    JobKind.CLEAR: mark("clear away"),
}
_SUPPORTS = {
    "cane row": mark("Put up a row of canes ({what})"),
    "cane ring": mark("Put up a ring of canes ({what})"),
    "net": mark("Put up a net ({what})"),
    "trellis": mark("Put up a trellis ({what})"),
    "stake": mark("Put up a stake ({what})"),
}
_EATEN = (JobKind.PICK, JobKind.LIFT, JobKind.LAST_PICKING)
_HANDLED = (*_EATEN, JobKind.THIN, JobKind.CLEAR)


class JobWords:
    """Says the jobs of one layout."""

    def __init__(self, garden: Garden, layout: Layout, known: Catalogue, measure: Measure) -> None:
        self._layout, self._known, self._measure = layout, known, measure
        self._beds = {bed.id: bed.name for bed in layout.beds}
        self._year = layout.year
        self._garden = garden

    def title(self, job: Job) -> str:
        """What to do, to what and where: ``Plant out 32 × Leek, Middle bed``."""
        where = self.bed(job)
        return f"{_VERBS[job.kind](self, job)}, {where}" if where else _VERBS[job.kind](self, job)

    def bed(self, job: Job) -> str:
        """Name of the bed it is done in; empty on bare plan."""
        return self._beds.get(job.bed or "", "")

    def detail(self, job: Job) -> str:
        """How: spacing, depth, part of a succession, and the caution that goes with it."""
        return " ".join([*self._how(job), *self._cautions(job)])

    def what(self, job: Job) -> str:
        """The crop or structure a job is done to."""
        if job.crop is not None:
            return crop_name(self._known, job.crop, job.variety)
        item = self._layout.by_id.get(job.item)
        return item.name if isinstance(item, (Bed, Cover, RingSupport, LineSupport)) else job.item

    def many(self, job: Job) -> str:
        """Count and crop: ``32 × Leek``, ``8 clumps of 4 × Onion``."""
        plants, each = int(job.count("plants") or 0), int(job.count("per_station") or 1)
        if each > 1:
            return say_many(
                "{n} clump of {each} × {crop}",
                "{n} clumps of {each} × {crop}",
                int(job.count("stations") or 0),
                each=each,
                crop=self.what(job),
            )
        return f"{figure(plants, ',')} × {self.what(job)}"

    def _how(self, job: Job) -> list[str]:
        small, large = self._measure.small, self._measure.large
        spacing, depth, height = job.count("spacing_m"), job.count("depth_m"), job.count("height_m")
        part, parts = job.count("part"), job.count("parts")
        said = [self._seeds(job)]
        if spacing is not None:
            said.append(say("Every {spacing}.", spacing=small(spacing)))
        if depth is not None:
            said.append(say("{depth} deep.", depth=small(depth)))
        if part is not None:
            said.append(say("Part {part} of {parts} of a succession.", part=part, parts=parts))
        if job.kind is JobKind.SUPPORT and height is not None:
            said.append(say("{height} high.", height=large(height)))
        said += [self._neighbour(job), _watering(job)]
        return [sentence for sentence in said if sentence]

    def _seeds(self, job: Job) -> str:
        seeds = job.count("seeds")
        if seeds is None:
            return ""
        return say_many("{seeds} seed.", "{seeds} seeds.", int(seeds), seeds=figure(seeds, ","))

    def _neighbour(self, job: Job) -> str:
        """Which neighbour closes over it, and when; that it was too late for it is a finding."""
        closes, other = job.day("closes"), self._layout.by_id.get(str(job.numbers.get("neighbour")))
        if closes is None or not isinstance(other, Planting):
            return ""
        name = planting_name(self._known, other)
        return say("{neighbour} closes over it from {day}.", neighbour=name, day=day(closes))

    def _cautions(self, job: Job) -> list[str]:
        if job.kind is JobKind.SUPPORT:
            if self._has_canes(job):
                return [say("Cap the ends of canes: they stand at eye height.")]
            return [say("Anchor it well: wind takes hold of what is tall.")]
        if job.crop is None:
            return []
        hazards = self._known.crop(job.crop).hazards
        return [
            say("Caution: {caution}", caution=shipped(h.caution)) for h in hazards if _matters(h, job.kind)
        ]

    def _has_canes(self, job: Job) -> bool:
        item = self._layout.by_id.get(job.item)
        return isinstance(item, (RingSupport, LineSupport)) and item.kind in {
            "cane ring",
            "cane row",
            "stake",
        }

    def entry(self, job: Job, done: frozenset[str] = frozenset()) -> Entry:
        """The job as an entry of a calendar: on its first day, since its last is only a limit."""
        return Entry(
            uid=f"{job.id}.{self._layout.id}@gardencanvas",
            first=job.on,
            last=job.on,
            title=self.title(job),
            text=f"{when(job)}. {self.detail(job)}".strip(),
            done=job.id in done,
        )


def _support(words: JobWords, job: Job) -> str:
    item = words._layout.by_id.get(job.item)
    kind = item.kind if isinstance(item, (RingSupport, LineSupport)) else "stake"
    return say(_SUPPORTS[kind], what=words.what(job))


_VERBS: dict[JobKind, Callable[[JobWords, Job], str]] = {
    JobKind.RAISE: lambda w, j: say("Raise {plants} under glass", plants=w.many(j)),
    JobKind.PRICK_OUT: lambda w, j: say("Prick out {plants}", plants=w.many(j)),
    JobKind.HARDEN_OFF: lambda w, j: say("Harden off {plants}", plants=w.many(j)),
    JobKind.SUPPORT: _support,
    JobKind.SOW: lambda w, j: say("Sow {plants}", plants=w.many(j)),
    JobKind.PLANT_OUT: lambda w, j: say("Plant out {plants}", plants=w.many(j)),
    JobKind.SET: lambda w, j: say("Set {plants}", plants=w.many(j)),
    JobKind.THIN: lambda w, j: say("Thin {crop}", crop=w.what(j)),
    JobKind.WATER: lambda _w, _j: say("Begin watering"),
    JobKind.COVER: lambda w, j: say("Put on {cover}", cover=w.what(j)),
    JobKind.UNCOVER: lambda w, j: say("Take off {cover}", cover=w.what(j)),
    JobKind.NET: lambda w, j: say("Put on {cover}", cover=w.what(j)),
    JobKind.PICK: lambda w, j: say("Pick {crop}", crop=w.what(j)),
    JobKind.LAST_PICKING: lambda w, j: say("Last picking of {crop}", crop=w.what(j)),
    JobKind.LIFT: lambda w, j: say("Lift {crop}", crop=w.what(j)),
    JobKind.CLEAR: lambda w, j: say("Clear {crop}", crop=w.what(j)),
}


def kind_word(kind: JobKind) -> str:
    """A kind of job: ``plant out``."""
    return say(_KINDS[kind])


def _matters(hazard: Hazard, kind: JobKind) -> bool:
    """What harms whoever eats it is told at the harvest, what harms the skin whenever it is handled."""
    if "glove" in hazard.caution.lower():
        return kind in _HANDLED
    return kind in _EATEN and hazard.severity != "low" and hazard.part != "canes"


def _watering(job: Job) -> str:
    litres, driest = job.count("litres"), job.day("dry")
    if litres is None or driest is None:
        return ""
    return say(
        "Rain falls short from here in an average year, most in the week of {day}: {litres} l/m². "
        "Go by your own soil and sky.",
        day=day(driest),
        litres=max(round(litres), 1),
    )


def when(job: Job) -> str:
    """The days of a job."""
    return span(job.on, job.until) if job.until > job.on else day(job.on)


_HEADINGS = (
    mark("Week"),
    mark("From"),
    mark("To"),
    mark("Job"),
    mark("What"),
    mark("Bed"),
    mark("Crop"),
    mark("Variety"),
    mark("How"),
    mark("Done"),
)


def jobs_table(found: Iterable[Job], words: JobWords, done: Mapping[str, date]) -> list[Sequence[Cell]]:
    """The jobs as rows under headings; weeks and days as ISO 8601 writes them."""
    rows: list[Sequence[Cell]] = [[say(h) for h in _HEADINGS]]
    for job in found:
        year, week, _ = job.on.isocalendar()
        marked = done.get(job.id)
        rows.append((
            f"{year}-W{week:02d}", job.on.isoformat(), job.until.isoformat(), kind_word(job.kind),
            words.title(job), words.bed(job), job.crop, job.variety, words.detail(job),
            marked.isoformat() if marked is not None else None,
        ))  # fmt: skip
    return rows
