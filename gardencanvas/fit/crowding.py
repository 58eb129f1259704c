"""Crowding: plants of like height that want the same ground at the same time."""

import numpy as np
from numpy.typing import NDArray

from gardencanvas.fit.codes import Code
from gardencanvas.fit.judged import Judged, finding_of, worst_of
from gardencanvas.fit.meeting import Meeting
from gardencanvas.fit.report import Kind, Verdict
from gardencanvas.fit.stands import Stand
from gardencanvas.fit.thresholds import CHOKED, CHOKED_TIME, CROWDED, CROWDED_DAYS, CROWDED_TIME

Floats = NDArray[np.float64]
Ints = NDArray[np.intp]


def crowding(meeting: Meeting, sufferer: Stand) -> Judged | None:
    """What a stand loses of its ground to the other one.

    Each station's footprint overlapped by the other stand's, weighted by how alike the heights are, less
    what its own usual spacing leaves unused (``own.spare_of``).
    """
    other = meeting.b if sufferer is meeting.a else meeting.a
    side = meeting.side(sufferer)
    if not (side.peak >= CROWDED).any():
        return None
    rows = np.flatnonzero(side.peak >= CROWDED)
    spare = sufferer.spare
    size = spare.size_of_week[meeting.begin + meeting.starts]
    pressed = side.pressed[rows]
    excess = np.where(pressed > 0.0, pressed - spare.share[side.stations[rows]][:, size], 0.0)
    days = 7 * meeting.lengths
    crowded_days: Ints = (excess >= CROWDED) @ days
    marks = marks_of(sufferer, crowded_days, (excess >= CHOKED) @ days)
    bad = np.flatnonzero(marks)
    if len(bad) == 0:
        return None
    return _judged(meeting, sufferer, other, rows[bad], marks[bad], excess[bad], crowded_days[bad])


def marks_of(stand: Stand, crowded_days: Ints, choked_days: Ints) -> NDArray[np.uint8]:
    """Verdict of stations from the days in which they lack ground."""
    some = max(float(CROWDED_DAYS), CROWDED_TIME * stand.growing_days)
    marks = np.where(crowded_days >= some, Verdict.STRAINS, Verdict.CLEAR).astype(np.uint8)
    long = max(float(CROWDED_DAYS), CHOKED_TIME * stand.growing_days)
    marks[choked_days >= long] = Verdict.CLASHES
    return marks


def _judged(
    meeting: Meeting, sufferer: Stand, other: Stand, bad: NDArray[np.intp], marks: NDArray[np.uint8],
    excess: Floats, crowded_days: Ints,
) -> Judged:  # fmt: skip
    side = meeting.side(sufferer)
    peak = excess.max(axis=1)
    worst = worst_of(marks, peak)
    spells = np.flatnonzero((excess >= CROWDED).any(axis=0))
    first = meeting.begin + int(meeting.starts[spells[0]])
    last = meeting.begin + int(meeting.starts[spells[-1]] + meeting.lengths[spells[-1]]) - 1
    days = (
        max(sufferer.first_day(first), other.first_day(first)),
        min(sufferer.last_day(last), other.last_day(last)),
    )
    finding = finding_of(
        Kind.CROWDING, Code.CROWDED, sufferer, (other,), side.stations[bad], marks, days,
        {
            "share": round(min(float(peak[worst]), 1.0), 6),
            "days": int(crowded_days[worst]),
            "distance_m": round(float(side.nearest_m[bad[worst]]), 6),
            "usual_m": round((sufferer.ground.spacing_m + other.ground.spacing_m) / 2, 6),
            "stations": int((marks == marks.max()).sum()),
        },
        worst=worst,
    )  # fmt: skip
    return Judged(finding, marks)
