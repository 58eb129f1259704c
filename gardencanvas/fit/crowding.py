"""Crowding: plants of like height that want the same ground at the same time."""

import numpy as np
from numpy.typing import NDArray

from gardencanvas.fit.capture import kept
from gardencanvas.fit.codes import Code
from gardencanvas.fit.judged import CLASHES, CLEAR, STRAINS, Judged, finding_of, worst_of
from gardencanvas.fit.meeting import Meeting
from gardencanvas.fit.report import Kind
from gardencanvas.fit.spacing import least_spacing_m
from gardencanvas.fit.stands import Stand
from gardencanvas.fit.thresholds import BLAMED, KEPT_CLASHES, KEPT_STRAINS, MOSTLY, PRESSES

Floats = NDArray[np.float64]
Ints = NDArray[np.intp]


def crowding(meeting: Meeting, sufferer: Stand) -> Judged | None:
    """What a stand loses to the other one of what it captures at its usual spacing (``capture``).

    Each station's own plants and the other stand's, as far as they overlap it and are alike in height, count
    by their leaves, and so does what those of like height have slightly above it; each week weighs by the
    ground the plant covers in it.
    """
    side, alone = meeting.side(sufferer), sufferer.alone
    # no more is lost than the mean crowd: a first look that needs no week
    pressed = side.pressed
    rows = ((pressed >= PRESSES) & (alone.kept[side.stations] - pressed < KEPT_STRAINS)).nonzero()[0]
    if len(rows) == 0:
        return None
    stations = side.stations[rows]
    growth = meeting.growth(sufferer)
    grows = growth.nonzero()[0]
    weeks = meeting.begin + meeting.starts[grows]
    crowd, over = (each.take(rows, axis=0).take(grows, axis=1) for each in (side.crowd, side.beside))
    lost = lost_to(sufferer, stations, weeks, crowd, over)
    loss: Floats = lost @ growth[grows]
    marks = marks_of(alone.kept[stations] - loss, loss)
    bad = marks.nonzero()[0]
    if len(bad) == 0:
        return None
    if _alike(meeting, sufferer, float(growth[meeting.together].sum())):
        marks[bad[side.nearest_m[rows[bad]] < least_spacing_m(sufferer) / 2]] = CLASHES
    return _judged(meeting, sufferer, rows[bad], marks[bad], lost[bad], loss[bad], grows)


def _alike(meeting: Meeting, sufferer: Stand, together: float) -> bool:
    """Whether two stands are of one crop, and together for most of the sufferer's growth.

    Then what spacing says of one planting is as true of two: closer than half the closest spacing that any
    source gives, one of two plants is in the other's place. Cabbages every 8 or 15 cm in the row, of which
    the closest source gives 30, made no head worth selling, from 23 cm on they did (Stoffella & Fleming
    1990), though the light and soil they caught was not halved.
    """
    return meeting.a.crop.id == meeting.b.crop.id and together >= MOSTLY


def lost_to(stand: Stand, stations: Ints, weeks: Ints, crowd: Floats, over: Floats) -> Floats:
    """Share of its usual capture that a stand loses to others, week by week.

    Parameters
    ----------
    stations
        Which stations, shape (n,).
    weeks
        Weeks of the grid, shape (w,).
    crowd
        Others' leaves over its own on the ground of each, shape (n, w).
    over
        Logarithm of the light that leaves of these others above its top let through, shape (n, w).
    """
    alone = stand.alone
    at = weeks - stand.begin
    own = alone.own.take(stations, axis=0).take(alone.size_of_week[weeks], axis=1)
    leaf, usual = alone.leaf[weeks], alone.usual[weeks]
    if len(at) and at.min() >= 0 and at.max() < alone.weekly.shape[1]:
        before = alone.weekly.take(stations, axis=0).take(at, axis=1)
    else:
        before = kept(leaf, own, usual)
        before = before if alone.heavier is None else before * alone.heavier[stations, None]
    after = kept(leaf, own + crowd, usual) * np.exp(over)
    lost: Floats = before - (after if alone.heavier is None else after * alone.heavier[stations, None])
    return lost


def marks_of(left: Floats, loss: Floats) -> NDArray[np.uint8]:
    """Verdict of stations from what is left of their usual capture, and what others took of it."""
    marks: NDArray[np.uint8] = np.where((left < KEPT_STRAINS) & (loss >= PRESSES), STRAINS, CLEAR)
    marks[(left < KEPT_CLASHES) & (loss >= BLAMED)] = CLASHES
    return marks


def _judged(
    meeting: Meeting, sufferer: Stand, bad: Ints, marks: NDArray[np.uint8], lost: Floats, loss: Floats,
    grows: Ints,
) -> Judged:  # fmt: skip
    other = meeting.b if sufferer is meeting.a else meeting.a
    side, alone = meeting.side(sufferer), sufferer.alone
    worst = worst_of(marks, loss)
    growing = lost >= PRESSES
    spells = grows[np.flatnonzero(growing.any(axis=0))]
    first = meeting.begin + int(meeting.starts[spells[0]])
    last = meeting.begin + int(meeting.starts[spells[-1]] + meeting.lengths[spells[-1]]) - 1
    days = (
        max(sufferer.first_day(first), other.first_day(first)),
        min(sufferer.last_day(last), other.last_day(last)),
    )
    finding = finding_of(
        Kind.CROWDING, Code.CROWDED, sufferer, (other,), side.stations[bad], marks, days,
        {
            "share": round(float(loss[worst]), 6),
            "left": round(float(alone.kept[side.stations[bad[worst]]] - loss[worst]), 6),
            "days": 7 * int(meeting.lengths[grows[growing[worst]]].sum()),
            "distance_m": round(float(side.nearest_m[bad[worst]]), 6),
            "usual_m": round((sufferer.ground.spacing_m + other.ground.spacing_m) / 2, 6),
            "stations": int((marks == marks.max()).sum()),
        },
        worst=worst,
    )  # fmt: skip
    return Judged(finding, marks)
