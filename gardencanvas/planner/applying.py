"""Remedies as edits: each code's pure function from a garden to a new one."""

from collections.abc import Callable
from datetime import date
from typing import Any

from gardencanvas.fit.report import Remedy
from gardencanvas.garden import edits
from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.garden import Garden
from gardencanvas.garden.planting import Planting
from gardencanvas.garden.stations import with_station_at, without_stations
from gardencanvas.planner.changes.leaving_out import cut
from gardencanvas.planner.changes.spacing import widened
from gardencanvas.planner.changes.supporting import put_up
from gardencanvas.planner.codes import Change

Numbers = dict[str, Any]


def apply(garden: Garden, layout_id: str, remedy: Remedy) -> Garden:
    """The garden with a remedy's change made; the garden given stays as it is.

    Raises
    ------
    Refusal
        If the garden has no such planting any more, it is locked, its date is pinned, or the change does not
        fit it.
    """
    numbers = dict(remedy.numbers)
    planting = garden.layout(layout_id).by_id.get(str(numbers["planting"]))
    if not isinstance(planting, Planting):
        raise Refusal("There is no planting with the id {id!r} in this layout.", id=numbers["planting"])
    if planting.locked:
        raise Refusal("This planting is locked.")
    after = _CHANGES[Change(remedy.code)](garden, layout_id, planting, numbers)
    return after if remedy.also is None else apply(after, layout_id, remedy.also)


def _shift(garden: Garden, layout_id: str, planting: Planting, n: Numbers) -> Garden:
    return edits.shift(garden, layout_id, [planting.id, *n["carried"].split()], n["dx_m"], n["dy_m"])


def _which(n: Numbers) -> set[int]:
    return {int(i) for i in n["stations"].split()}


def _shift_stations(garden: Garden, layout_id: str, planting: Planting, n: Numbers) -> Garden:
    for station in sorted(_which(n)):
        x, y = planting.stations[station]
        planting = with_station_at(planting, station, (float(x) + n["dx_m"], float(y) + n["dy_m"]))
    return edits.replace(garden, layout_id, [planting])


def _leave_out_stations(garden: Garden, layout_id: str, planting: Planting, n: Numbers) -> Garden:
    return edits.replace(garden, layout_id, [without_stations(planting, _which(n))])


def _start(garden: Garden, layout_id: str, planting: Planting, n: Numbers) -> Garden:
    start = planting.start
    if start.pinned:
        raise Refusal("The start of this planting is pinned.")
    on: date = n["on"]
    sown = None if start.sown_on is None else start.sown_on + (on - start.on)
    return edits.change(garden, layout_id, planting.id, start=edits.rebuilt(start, on=on, sown_on=sown))


def _end(garden: Garden, layout_id: str, planting: Planting, n: Numbers) -> Garden:
    return edits.change(garden, layout_id, planting.id, end=n["on"])


def _widen(garden: Garden, layout_id: str, planting: Planting, n: Numbers) -> Garden:
    return _with_pattern(garden, layout_id, planting, widened(planting.pattern, n["field"], n["spacing_m"]))


def _thin(garden: Garden, layout_id: str, planting: Planting, n: Numbers) -> Garden:
    return edits.change(garden, layout_id, planting.id, per_station=n["per_station"])


def _leave_out(garden: Garden, layout_id: str, planting: Planting, n: Numbers) -> Garden:
    return _with_pattern(garden, layout_id, planting, cut(planting.pattern, n["side"], n["lines"]))


def _variety(garden: Garden, layout_id: str, planting: Planting, n: Numbers) -> Garden:
    return edits.change(garden, layout_id, planting.id, varieties=(n["variety"],))


def _support(garden: Garden, layout_id: str, planting: Planting, n: Numbers) -> Garden:
    put = put_up(garden.layout(layout_id), planting, n["kind"], n["height_m"])
    return edits.add(garden, layout_id, put)


def _with_pattern(garden: Garden, layout_id: str, planting: Planting, pattern: Any) -> Garden:
    return edits.change(garden, layout_id, planting.id, pattern=pattern)


_CHANGES: dict[Change, Callable[[Garden, str, Planting, Numbers], Garden]] = {
    Change.SHIFT: _shift,
    Change.SHIFT_STATIONS: _shift_stations,
    Change.START: _start,
    Change.END: _end,
    Change.WIDEN: _widen,
    Change.THIN: _thin,
    Change.LEAVE_OUT: _leave_out,
    Change.LEAVE_OUT_STATIONS: _leave_out_stations,
    Change.VARIETY: _variety,
    Change.SUPPORT: _support,
}
