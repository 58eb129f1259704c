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
from gardencanvas.words.plain import Measure, counted, crop_name, day, planting_name, span
from gardencanvas.words.remedies import SUPPORTS

KINDS = {
    JobKind.RAISE: "raise",
    JobKind.PRICK_OUT: "prick out",
    JobKind.HARDEN_OFF: "harden off",
    JobKind.SUPPORT: "put up support",
    JobKind.SOW: "sow",
    JobKind.PLANT_OUT: "plant out",
    JobKind.SET: "set",
    JobKind.THIN: "thin",
    JobKind.WATER: "begin watering",
    JobKind.COVER: "cover",
    JobKind.UNCOVER: "take off cover",
    JobKind.NET: "net",
    JobKind.PICK: "pick",
    JobKind.LAST_PICKING: "last picking",
    JobKind.LIFT: "lift",
    JobKind.CLEAR: "clear",
}
CANES = "Cap the ends of canes: they stand at eye height."
FALLING = "Anchor it well: wind takes hold of what is tall."
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
            clumps = counted(int(job.count("stations") or 0), "clump", "clumps")
            return f"{clumps} of {each} × {self.what(job)}"
        return f"{plants:,} × {self.what(job)}"

    def _how(self, job: Job) -> list[str]:
        small, large = self._measure.small, self._measure.large
        spacing, depth, height = job.count("spacing_m"), job.count("depth_m"), job.count("height_m")
        part, parts = job.count("part"), job.count("parts")
        said = [
            f"{job.numbers['seeds']:,} seeds." if "seeds" in job.numbers else "",
            f"Every {small(spacing)}." if spacing is not None else "",
            f"{small(depth)} deep." if depth is not None else "",
            f"Part {part} of {parts} of a succession." if part is not None else "",
            f"{large(height)} high." if job.kind is JobKind.SUPPORT and height is not None else "",
            self._neighbour(job),
            _watering(job),
        ]  # fmt: skip
        return [sentence for sentence in said if sentence]

    def _neighbour(self, job: Job) -> str:
        """Which neighbour closes over it, and when; that it was too late for it is a finding."""
        closes, other = job.day("closes"), self._layout.by_id.get(str(job.numbers.get("neighbour")))
        if closes is None or not isinstance(other, Planting):
            return ""
        return f"{planting_name(self._known, other)} closes over it from {day(closes)}."

    def _cautions(self, job: Job) -> list[str]:
        if job.kind is JobKind.SUPPORT:
            return [CANES if self._has_canes(job) else FALLING]
        if job.crop is None:
            return []
        hazards = self._known.crop(job.crop).hazards
        return [f"Caution: {h.caution}" for h in hazards if _matters(h, job.kind)]

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
    return f"Put up {SUPPORTS[kind][0]} ({words.what(job)})"


_VERBS: dict[JobKind, Callable[[JobWords, Job], str]] = {
    JobKind.RAISE: lambda w, j: f"Raise {w.many(j)} under glass",
    JobKind.PRICK_OUT: lambda w, j: f"Prick out {w.many(j)}",
    JobKind.HARDEN_OFF: lambda w, j: f"Harden off {w.many(j)}",
    JobKind.SUPPORT: _support,
    JobKind.SOW: lambda w, j: f"Sow {w.many(j)}",
    JobKind.PLANT_OUT: lambda w, j: f"Plant out {w.many(j)}",
    JobKind.SET: lambda w, j: f"Set {w.many(j)}",
    JobKind.THIN: lambda w, j: f"Thin {w.what(j)}",
    JobKind.WATER: lambda _w, _j: "Begin watering",
    JobKind.COVER: lambda w, j: f"Put on {w.what(j)}",
    JobKind.UNCOVER: lambda w, j: f"Take off {w.what(j)}",
    JobKind.NET: lambda w, j: f"Put on {w.what(j)}",
    JobKind.PICK: lambda w, j: f"Pick {w.what(j)}",
    JobKind.LAST_PICKING: lambda w, j: f"Last picking of {w.what(j)}",
    JobKind.LIFT: lambda w, j: f"Lift {w.what(j)}",
    JobKind.CLEAR: lambda w, j: f"Clear {w.what(j)}",
}


def _matters(hazard: Hazard, kind: JobKind) -> bool:
    """What harms whoever eats it is told at the harvest, what harms the skin whenever it is handled."""
    if "glove" in hazard.caution.lower():
        return kind in _HANDLED
    return kind in _EATEN and hazard.severity != "low" and hazard.part != "canes"


def _watering(job: Job) -> str:
    litres, driest = job.count("litres"), job.day("dry")
    if litres is None or driest is None:
        return ""
    most = max(round(litres), 1)
    return (
        f"Rain falls short from here in an average year, most in the week of {day(driest)}: {most} l/m². "
        "Go by your own soil and sky."
    )


def when(job: Job) -> str:
    """The days of a job."""
    return span(job.on, job.until) if job.until > job.on else day(job.on)


HEADINGS = ("Week", "From", "To", "Job", "What", "Bed", "Crop", "Variety", "How", "Done")


def jobs_table(found: Iterable[Job], words: JobWords, done: Mapping[str, date]) -> list[Sequence[Cell]]:
    """The jobs as rows under headings; weeks and days as ISO 8601 writes them."""
    rows: list[Sequence[Cell]] = [HEADINGS]
    for job in found:
        year, week, _ = job.on.isocalendar()
        marked = done.get(job.id)
        rows.append((
            f"{year}-W{week:02d}", job.on.isoformat(), job.until.isoformat(), KINDS[job.kind],
            words.title(job), words.bed(job), job.crop, job.variety, words.detail(job),
            marked.isoformat() if marked is not None else None,
        ))  # fmt: skip
    return rows
