"""Crowding by several neighbours that only together take too much of a plant's ground."""

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from gardencanvas.fit.codes import Code
from gardencanvas.fit.crowding import marks_of
from gardencanvas.fit.judged import Judged, finding_of, worst_of
from gardencanvas.fit.meeting import Meeting
from gardencanvas.fit.report import Kind, Verdict
from gardencanvas.fit.stands import Stand
from gardencanvas.fit.thresholds import CHOKED, CROWDED, PRESSES

Floats = NDArray[np.float64]
Ints = NDArray[np.intp]
Marks = NDArray[np.uint8]


@dataclass(frozen=True, slots=True, eq=False)
class _Pressed:
    """What each of several neighbours takes of some stations' footprints, week by week of the stand."""

    rows: Ints  # stations
    parts: tuple[tuple[Stand, Floats], ...]  # (rows, weeks) each
    excess: Floats  # (rows, weeks): of all, less what the own spacing leaves unused


def crowding_together(stand: Stand, meetings: Sequence[Meeting], alone: Marks) -> Judged | None:
    """Stations that several neighbours crowd worse together than any of them does alone.

    Three that overlap a plant by a fifth each take more than half of it. The sum of what ``crowding`` weighs
    for each, under the same limits; what the own spacing leaves unused is left to them once.

    Parameters
    ----------
    meetings
        All in which the stand's ground is overlapped.
    alone
        Verdict of each of the stand's stations from its neighbours one by one.
    """
    if len(meetings) < 2 or stand.begin == stand.end:
        return None
    pressed = _pressed(stand, meetings, alone)
    if pressed is None:
        return None
    crowded_days = 7 * np.count_nonzero(pressed.excess >= CROWDED, axis=1)
    marks = marks_of(stand, crowded_days, 7 * np.count_nonzero(pressed.excess >= CHOKED, axis=1))
    worse = np.flatnonzero(marks > alone[pressed.rows])
    if len(worse) == 0:
        return None
    return _judged(stand, meetings, pressed, worse, marks[worse], crowded_days)


def _pressed(stand: Stand, meetings: Sequence[Meeting], alone: Marks) -> _Pressed | None:
    """The stations that may be crowded; None where there are none."""
    most = np.zeros(len(stand.index))
    highest = np.zeros(len(stand.index))
    for meeting in meetings:
        side = meeting.side(stand)
        most[side.stations] += side.peak
        highest[side.stations] = np.maximum(highest[side.stations], side.peak)
    rows = np.flatnonzero((most >= CROWDED) & (most > highest) & (alone < Verdict.CLASHES))
    if len(rows) == 0:
        return None
    parts = tuple((_other(m, stand), _weekly(stand, m, rows)) for m in meetings)
    total: Floats = np.sum([part for _, part in parts], axis=0)
    spare = stand.spare
    unused = spare.share[rows][:, spare.size_of_week[stand.begin : stand.end]]
    return _Pressed(rows, parts, np.where(total > 0.0, total - unused, 0.0))


def _other(meeting: Meeting, stand: Stand) -> Stand:
    return meeting.b if stand is meeting.a else meeting.a


def _weekly(stand: Stand, meeting: Meeting, rows: Ints) -> Floats:
    """What one neighbour takes of some stations in each of the stand's weeks, shape (rows, weeks)."""
    side = meeting.side(stand)
    place = np.full(len(stand.index), -1)
    place[side.stations] = np.arange(len(side.stations))
    until = min(meeting.end, stand.end)
    weekly = np.zeros((len(rows), stand.end - stand.begin))
    touched = np.flatnonzero(place[rows] >= 0)
    spell = meeting.spell[: max(until - meeting.begin, 0)]
    weekly[touched, meeting.begin - stand.begin : max(until, meeting.begin) - stand.begin] = side.pressed[
        place[rows[touched]]
    ][:, spell]
    return weekly


def _judged(
    stand: Stand, meetings: Sequence[Meeting], pressed: _Pressed, some: Ints, marks: Marks, days: Ints
) -> Judged:
    peak = pressed.excess[some].max(axis=1)
    worst = worst_of(marks, peak)
    row = some[worst]
    week = int(pressed.excess[row].argmax())
    takes: dict[str, float] = {}
    for other, part in pressed.parts:
        name = other.planting.id
        takes[name] = takes.get(name, 0.0) + float(part[row, week])
    named = sorted(takes, key=lambda n: (-takes[n], n))
    named = [n for n in named if takes[n] >= PRESSES] or named[:1]
    others = tuple(next(o for o, _ in pressed.parts if o.planting.id == n) for n in named)
    weeks = np.flatnonzero((pressed.excess[some] >= CROWDED).any(axis=0)) + stand.begin
    finding = finding_of(
        Kind.CROWDING, Code.CROWDED, stand, others, pressed.rows[some], marks,
        (stand.first_day(int(weeks[0])), stand.last_day(int(weeks[-1]))),
        {
            "share": round(min(float(peak[worst]), 1.0), 6),
            "days": int(days[row]),
            "distance_m": round(_nearest(stand, meetings, int(pressed.rows[row])), 6),
            "usual_m": round((stand.ground.spacing_m + others[0].ground.spacing_m) / 2, 6),
            "stations": int((marks == marks.max()).sum()),
        },
        worst=worst, mark="together",
    )  # fmt: skip
    return Judged(finding, marks)


def _nearest(stand: Stand, meetings: Sequence[Meeting], station: int) -> float:
    """Distance from a station to the nearest plant of all these neighbours."""
    found = []
    for meeting in meetings:
        side = meeting.side(stand)
        found += side.nearest_m[side.stations == station].tolist()
    return float(min(found))
