"""Does a crop fit the selected place? It is tried there as it would be dropped, and judged by the engine."""

from collections.abc import Generator, Iterator
from dataclasses import dataclass
from datetime import date, timedelta
from math import cos, radians, sin

from gardencanvas.crops.catalogue import Catalogue
from gardencanvas.crops.model import Crop
from gardencanvas.fit.checker import Checker
from gardencanvas.fit.report import FitReport, Verdict
from gardencanvas.garden import edits
from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.garden import Garden
from gardencanvas.garden.ground import Bed
from gardencanvas.garden.laying import frame_of, row_in, row_outside
from gardencanvas.garden.pattern import Rows
from gardencanvas.garden.places import bed_of
from gardencanvas.garden.planting import Planting, Start
from gardencanvas.garden.value import Point
from gardencanvas.season.crop_year import Task, tasks_on
from gardencanvas.season.usual_start import usual_start

_TRIED = "tried"  # the id under which a crop is tried
_ACROSS = (0.5, 0.25, 0.75, 0.1, 0.9)  # where across a bed a row is tried, in shares of its width
_UNKNOWN_SPACING_M = 0.3  # common practice: a middling garden spacing, where the crop's is not known
_KINDS = {Task.SOW: "sown", Task.PLANT_OUT: "raised", Task.SET: "set", Task.SOW_UNDER_GLASS: "raised"}


@dataclass(frozen=True)
class Place:
    """A bed to fill, or a planting to stand beside; ``points`` are tried in turn."""

    name: str
    bed: Bed | None
    points: tuple[Point, ...]
    planting: Planting | None = None


def place_of(garden: Garden, layout_id: str, selection: frozenset[str]) -> Place | None:
    """The place that a selection means; None unless it is one bed or one planting."""
    if len(selection) != 1:
        return None
    item = garden.layout(layout_id).by_id.get(next(iter(selection)))
    if isinstance(item, Bed):
        return Place(item.name, item, _across(item))
    if isinstance(item, Planting):
        return Place("", bed_of(garden.layout(layout_id), item), _beside(item), item)
    return None


def _across(bed: Bed) -> tuple[Point, ...]:
    """Places in the middle of a bed's length, spread over its width."""
    frame = frame_of(bed)
    u0, v0, u1, v1 = frame.ground.bounds
    return tuple(frame.plan((u0 + u1) / 2, v0 + share * (v1 - v0)) for share in _ACROSS)


def _beside(planting: Planting) -> tuple[Point, ...]:
    """Places between the plants of a planting, and on either side of its middle."""
    x, y = (float(n) for n in planting.stations.mean(axis=0))
    pattern = planting.pattern
    along = getattr(pattern, "spacing_m", _UNKNOWN_SPACING_M) / 2
    across = getattr(pattern, "row_spacing_m", 2 * along) / 2
    angle = radians(pattern.angle_deg)
    return (
        (x - across * sin(angle), y + across * cos(angle)),
        (x + across * sin(angle), y - across * cos(angle)),
        (x + along * cos(angle), y + along * sin(angle)),
    )


class Trial:
    """Tries crops at one place of one garden, one after the other."""

    def __init__(self, garden: Garden, layout_id: str, place: Place, known: Catalogue) -> None:
        self._garden, self._layout_id, self._place, self._known = garden, layout_id, place, known
        self._checker = Checker(known)
        self._before: FitReport = self._checker.update(garden, layout_id)

    def tries(self, crop: Crop, on: date | None = None) -> Generator[None, None, Verdict | None]:
        """Try a crop at the points of the place, pausing after each.

        Parameters
        ----------
        crop
            Complete (``Catalogue.resolve``).
        on
            The day to start it; None: its usual start.

        Returns
        -------
        Verdict | None
            The best over the points, its neighbours' included; None where it has no room. Points after a good
            one are not tried.
        """
        best: Verdict | None = None
        start = self._start(crop, on)
        for pattern in self._patterns(crop) if start is not None else ():
            verdict = self._judged(crop, pattern, start)
            if verdict is not None and (best is None or verdict < best):
                best = verdict
            if best is not None and best <= Verdict.SHARES:
                break
            yield
        return best

    def _start(self, crop: Crop, on: date | None) -> Start | None:
        layout, site = self._garden.layout(self._layout_id), self._garden.site
        if on is None:
            return usual_start(site, crop, layout.year, layout.first_month)
        for task in tasks_on(site, crop, on):
            late = round(crop.nursery_d.mid) if task is Task.SOW_UNDER_GLASS and crop.nursery_d else 0
            return edits.made(Start, kind=_KINDS[task], on=on + timedelta(days=late))
        return None

    def _patterns(self, crop: Crop) -> Iterator[Rows]:
        in_row = crop.in_row_m.mid if crop.in_row_m else _UNKNOWN_SPACING_M
        between = max(crop.between_rows_m.mid if crop.between_rows_m else in_row, in_row)
        for point in self._place.points:
            bed = self._place.bed
            row = row_outside(point, in_row, between) if bed is None else row_in(bed, point, in_row, between)
            if row is not None:
                yield row

    def _judged(self, crop: Crop, pattern: Rows, start: Start) -> Verdict | None:
        """The worse of its own verdict and that of any neighbour to which it makes a difference."""
        planting = edits.made(Planting, id=_TRIED, crop=crop.id, pattern=pattern, start=start)
        try:
            after = edits.add(self._garden, self._layout_id, [planting])
        except Refusal:  # the layout is full
            return None
        report = self._checker.update(after, self._layout_id)
        worse = [
            fit.verdict
            for i, fit in report.plantings.items()
            if i == _TRIED or fit.verdict > self._before.plantings[i].verdict
        ]
        return max(worse)
