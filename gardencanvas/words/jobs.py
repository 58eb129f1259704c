"""Jobs in words: what to do, and the detail one wants in the hand."""

from collections.abc import Callable, Iterable, Mapping, Sequence
from datetime import date

from gardencanvas.crops.catalogue import Catalogue
from gardencanvas.crops.model import Crop
from gardencanvas.garden.garden import Garden, Layout
from gardencanvas.garden.ground import Cover, LineSupport, RingSupport
from gardencanvas.measures.calendar_writing import Entry
from gardencanvas.measures.csv_writing import Cell
from gardencanvas.measures.jobs import Job, JobKind
from gardencanvas.words.plain import Measure, counted, crop_name, day, span
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
        return item.name if isinstance(item, (Cover, RingSupport, LineSupport)) else job.item

    def many(self, job: Job) -> str:
        """Count and crop: ``32 × Leek``, ``8 clumps of 4 × Onion``."""
        plants, each = int(job.numbers.get("plants", 0)), int(job.numbers.get("per_station", 1))
        if each > 1:
            return f"{counted(int(job.numbers['stations']), 'clump', 'clumps')} of {each} × {self.what(job)}"
        return f"{plants:,} × {self.what(job)}"

    def _how(self, job: Job) -> list[str]:
        said = []
        if "spacing_m" in job.numbers:
            said.append(f"Every {self._measure.small(float(job.numbers['spacing_m']))}.")
        if "depth_m" in job.numbers:
            said.append(f"{self._measure.small(float(job.numbers['depth_m']))} deep.")
        if "part" in job.numbers:
            said.append(f"Part {job.numbers['part']} of {job.numbers['parts']} of a succession.")
        if job.kind is JobKind.LAST_PICKING:
            said.append("Its neighbour closes over it after that.")
        if job.kind is JobKind.SUPPORT and "height_m" in job.numbers:
            said.append(f"{self._measure.large(float(job.numbers['height_m']))} high.")
        return said

    def _cautions(self, job: Job) -> list[str]:
        if job.kind is JobKind.SUPPORT:
            return [CANES if self._has_canes(job) else FALLING]
        if job.crop is None or job.kind not in (JobKind.PICK, JobKind.LIFT, JobKind.LAST_PICKING):
            return []
        crop: Crop = self._known.crop(job.crop)
        return [f"Caution: {h.caution}" for h in crop.hazards if h.severity == "high"]

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
    JobKind.COVER: lambda w, j: f"Put on {w.what(j)}",
    JobKind.UNCOVER: lambda w, j: f"Take off {w.what(j)}",
    JobKind.NET: lambda w, j: f"Put on {w.what(j)}",
    JobKind.PICK: lambda w, j: f"Pick {w.what(j)}",
    JobKind.LAST_PICKING: lambda w, j: f"Last picking of {w.what(j)}",
    JobKind.LIFT: lambda w, j: f"Lift {w.what(j)}",
    JobKind.CLEAR: lambda w, j: f"Clear {w.what(j)}",
}


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
