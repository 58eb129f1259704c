"""Crowding by several neighbours that only together take too much of a plant's ground."""

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from gardencanvas.fit.codes import Code
from gardencanvas.fit.crowding import lost_to, marks_of
from gardencanvas.fit.judged import CLASHES, STRAINS, Judged, finding_of, worst_of
from gardencanvas.fit.meeting import Meeting
from gardencanvas.fit.report import Kind
from gardencanvas.fit.stands import Stand
from gardencanvas.fit.thresholds import KEPT_CLASHES, KEPT_STRAINS, PRESSES

Floats = NDArray[np.float64]
Ints = NDArray[np.intp]
Marks = NDArray[np.uint8]


@dataclass(frozen=True, slots=True, eq=False)
class _Pressed:
    """What several neighbours take of some stations, week by week of the stand."""

    rows: Ints  # stations
    parts: tuple[tuple[Stand, Floats], ...]  # what each may take over their growth, (rows,)
    lost: Floats  # (rows, weeks): share of the usual capture, to all together
    loss: Floats  # (rows,): of the whole growth


def crowding_together(stand: Stand, meetings: Sequence[Meeting], alone: Marks) -> Judged | None:
    """Stations that several neighbours crowd worse together than any of them does alone.

    Their leaves add up in ``capture``, under the limits of ``crowding``: three that take a little each may
    take too much, and what the own spacing leaves unused is left to them only once.

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
    marks = marks_of(stand.alone.kept[pressed.rows] - pressed.loss, pressed.loss)
    worse = np.flatnonzero(marks > alone[pressed.rows])
    if len(worse) == 0:
        return None
    return _judged(stand, meetings, pressed, worse, marks[worse])


def _pressed(stand: Stand, meetings: Sequence[Meeting], alone: Marks) -> _Pressed | None:
    """The stations that may be crowded; None where there are none."""
    most = np.zeros(len(stand.index))
    highest = np.zeros(len(stand.index))
    for meeting in meetings:
        side = meeting.side(stand)
        most[side.stations] += side.pressed
        highest[side.stations] = np.maximum(highest[side.stations], side.pressed)
    # no more is lost than the mean of all: a first look that needs no week
    enough = np.where(alone >= STRAINS, KEPT_CLASHES, KEPT_STRAINS)
    others = most - highest >= PRESSES / 2
    asked = others & (stand.alone.kept - most < enough) & (alone < CLASHES)
    rows = np.flatnonzero(asked)
    if len(rows) == 0:
        return None
    weeks = np.arange(stand.begin, stand.grows_until + 1)
    crowd, over = np.zeros((2, len(rows), len(weeks)))
    row = np.where(asked, np.cumsum(asked) - 1, -1)
    parts = []
    for meeting in meetings:
        part = _added(stand, meeting, row, crowd, over)
        if part is not None:
            parts.append((_other(meeting, stand), part))
    lost = lost_to(stand, rows, weeks, crowd, over)
    return _Pressed(rows, tuple(parts), lost, lost @ stand.alone.weight[weeks])


def _other(meeting: Meeting, stand: Stand) -> Stand:
    return meeting.b if stand is meeting.a else meeting.a


def _added(stand: Stand, meeting: Meeting, row: Ints, crowd: Floats, over: Floats) -> Floats | None:
    """Add what one neighbour takes of some stations, week by week of the stand.

    Parameters
    ----------
    row
        Row of each of the stand's stations, -1 where it is not asked about, shape (stations,).
    crowd, over
        As for ``lost_to``, shape (rows, weeks of growth); they are added to.

    Returns
    -------
    ndarray or None
        What it takes at most over the growth of each, shape (rows,); None where it takes nothing of them.
    """
    side = meeting.side(stand)
    until = min(meeting.end, stand.grows_until + 1)
    if until <= meeting.begin:
        return None
    at = row[side.stations]
    here = np.flatnonzero((at >= 0) & (side.pressed > 0.0))
    if len(here) == 0:
        return None
    touched, spell = at[here], meeting.spell[: until - meeting.begin]
    span = slice(meeting.begin - stand.begin, until - stand.begin)
    crowd[touched, span] += side.crowd.take(here, axis=0).take(spell, axis=1)
    if side.overhung:
        over[touched, span] += side.beside.take(here, axis=0).take(spell, axis=1)
    taken = np.zeros(len(crowd))
    taken[touched] = side.pressed[here]
    return taken


def _judged(stand: Stand, meetings: Sequence[Meeting], pressed: _Pressed, some: Ints, marks: Marks) -> Judged:
    loss = pressed.loss[some]
    worst = worst_of(marks, loss)
    row = some[worst]
    weight = stand.alone.weight[stand.begin : stand.grows_until + 1]
    takes: dict[str, float] = {}
    for other, part in pressed.parts:
        name = other.planting.id
        takes[name] = takes.get(name, 0.0) + float(part[row])
    named = sorted(takes, key=lambda n: (-takes[n], n))
    named = [n for n in named if takes[n] >= PRESSES / 2] or named[:1]
    others = tuple(next(o for o, _ in pressed.parts if o.planting.id == n) for n in named)
    growing = (pressed.lost[some] >= PRESSES) & (weight > 0.0)
    weeks = np.flatnonzero(growing.any(axis=0)) + stand.begin
    finding = finding_of(
        Kind.CROWDING, Code.CROWDED, stand, others, pressed.rows[some], marks,
        (stand.first_day(int(weeks[0])), stand.last_day(int(weeks[-1]))),
        {
            "share": round(float(loss[worst]), 6),
            "left": round(float(stand.alone.kept[pressed.rows[row]] - loss[worst]), 6),
            "days": 7 * int(np.count_nonzero(growing[worst])),
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
