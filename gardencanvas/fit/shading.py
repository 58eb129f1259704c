"""Shading: the share of open-sky light that reaches each plant over its own time."""

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from gardencanvas.fit.judged import Judged, Number, finding_of, worst_of
from gardencanvas.fit.meeting import Meeting
from gardencanvas.fit.needs import light_good, light_least, light_source
from gardencanvas.fit.report import Kind, Verdict
from gardencanvas.fit.stands import RADIUS, Stand
from gardencanvas.fit.thresholds import TAKEN_BLAMED, TAKEN_SHOWN

Floats = NDArray[np.float64]
Ints = NDArray[np.intp]
Marks = NDArray[np.uint8]


@dataclass(frozen=True, slots=True, eq=False)
class Lit:
    """Light of one stand, and what is said of it."""

    light: Floats  # (stations,): share of open-sky light over its own time
    judged: tuple[Judged, ...]


@dataclass(frozen=True, slots=True, eq=False)
class _Cause:
    """One planting that shades the stand, all its stands together."""

    stands: tuple[Stand, ...]
    stations: Ints
    passed: Floats  # (stations, own weeks): logarithm
    gain: Floats  # (stations,): light that would be gained without it


def lit(stand: Stand, meetings: Sequence[Meeting], sky: Floats | None) -> Lit:
    """Light that reaches a stand through all canopies over it.

    Each week's light counts as much as the plant could take then, its footprint: captured over unshaded light
    is what its growth goes by (Monteith 1977). In one week it is what fixtures leave of the open sky times
    what each taller canopy lets through, its leaves above the plant spread over the overlapped part of the
    footprint (layered Beer–Lambert).

    Parameters
    ----------
    meetings
        Those of the stand, ordered by the other stand's key.
    sky
        What fixtures leave of the open sky, shape (stations, months); None without fixtures.
    """
    count, weeks = len(stand.index), stand.end - stand.begin
    if weeks == 0:
        return Lit(np.ones(count), ())
    weight = stand.sizes[RADIUS, stand.begin : stand.end] ** 2
    weight = weight / max(float(weight.sum()), 1e-12) if weight.any() else np.full(weeks, 1.0 / weeks)
    open_sky = None if sky is None else sky[:, _months(stand)]
    unshaded = np.ones(count) if open_sky is None else np.round(open_sky @ weight, 9)
    found = [(m, *_passed(stand, m)) for m in meetings]
    found = [f for f in found if f[2].size and float(f[2].min()) < 0.0]
    if not found:
        return Lit(unshaded, _by_fixtures(stand, unshaded, np.ones(count, dtype=bool)))
    total = np.zeros((count, weeks))
    for _, stations, passed in found:
        total[stations] += passed
    base = weight if open_sky is None else open_sky * weight
    light = np.round((base * np.exp(total)).sum(axis=1), 9)
    causes = []
    for others, stations, passed in _by_planting(stand, found):
        own = base if open_sky is None else base[stations]
        without = np.round((own * np.exp(total[stations] - passed)).sum(axis=1), 9)
        causes.append(_Cause(others, stations, passed, without - light[stations]))
    return Lit(light, _judge(stand, unshaded, light, causes, total, open_sky))


def _months(stand: Stand) -> Ints:
    """Month, 0–11, of each of the stand's weeks."""
    middle = stand.weeks.starts[stand.begin : stand.end] + 3
    return middle.astype("datetime64[M]").astype(np.int64) % 12


def _passed(stand: Stand, meeting: Meeting) -> tuple[Ints, Floats]:
    """Touched stations and the logarithm of light let through in each of the stand's own weeks."""
    side = meeting.side(stand)
    passed = np.zeros((len(side.stations), stand.end - stand.begin))
    until = min(meeting.end, stand.end)
    if until > meeting.begin:
        spell = meeting.spell[: until - meeting.begin]
        passed[:, meeting.begin - stand.begin : until - stand.begin] = side.passed[:, spell]
    return side.stations, passed


def _by_planting(
    stand: Stand, found: Sequence[tuple[Meeting, Ints, Floats]]
) -> list[tuple[tuple[Stand, ...], Ints, Floats]]:
    """What shades the stand, planting by planting."""
    groups: dict[str, list[tuple[Stand, Ints, Floats]]] = {}
    for meeting, stations, passed in found:
        other = meeting.b if stand is meeting.a else meeting.a
        groups.setdefault(other.planting.id, []).append((other, stations, passed))
    result = []
    for group in groups.values():
        stations, passed = group[0][1], group[0][2]
        if len(group) > 1:
            stations = np.unique(np.concatenate([g[1] for g in group]))
            passed = np.zeros((len(stations), passed.shape[1]))
            for _, some, part in group:
                passed[np.searchsorted(stations, some)] += part
        result.append((tuple(g[0] for g in group), stations, passed))
    return result


def _marks(stand: Stand, light: Floats) -> Marks:
    marks = np.where(light < light_good(stand.crop), Verdict.STRAINS, Verdict.CLEAR).astype(np.uint8)
    marks[light < light_least(stand.crop)] = Verdict.CLASHES
    return marks


def _by_fixtures(stand: Stand, unshaded: Floats, asked: NDArray[np.bool_]) -> tuple[Judged, ...]:
    """Stations that have too little light even without any neighbour."""
    marks = _marks(stand, unshaded)
    bad = np.flatnonzero((marks > 0) & asked)
    if len(bad) == 0:
        return ()
    worst = worst_of(marks[bad], -unshaded[bad])
    finding = finding_of(
        Kind.SHADING, "fixtures", stand, (), bad, marks[bad], (stand.times.in_bed, stand.times.out),
        _numbers(stand, float(unshaded[bad[worst]]), len(bad)),
        source=light_source(stand.crop), worst=worst,
    )  # fmt: skip
    return (Judged(finding, marks[bad]),)


def _numbers(stand: Stand, light: float, stations: int) -> dict[str, Number]:
    return {
        "light_left": round(light, 6),
        "light_needed": light_good(stand.crop),
        "light_least": light_least(stand.crop),
        "stations": stations,
    }


def _judge(
    stand: Stand, unshaded: Floats, light: Floats, causes: Sequence[_Cause], total: Floats,
    open_sky: Floats | None,
) -> tuple[Judged, ...]:  # fmt: skip
    """Who is to blame for each station that has too little, and who merely takes some."""
    marks = _marks(stand, light)
    most = np.zeros(len(light))
    for cause in causes:
        most[cause.stations] = np.maximum(most[cause.stations], cause.gain)
    judged = list(_by_fixtures(stand, unshaded, np.ones(len(light), dtype=bool)))
    for cause in causes:
        gain = cause.gain
        blamed = (gain >= TAKEN_BLAMED) | ((gain >= most[cause.stations]) & (gain > 0.0))
        own = np.where(blamed, marks[cause.stations], Verdict.CLEAR)
        own = np.maximum(own, np.where(gain >= TAKEN_SHOWN, Verdict.SHARES, Verdict.CLEAR)).astype(np.uint8)
        named = np.flatnonzero(own)
        if len(named):
            judged.append(_by_neighbour(stand, cause, named, own[named], light, total, open_sky))
    return tuple(judged)


def _by_neighbour(
    stand: Stand, cause: _Cause, named: Ints, marks: Marks, light: Floats, total: Floats,
    open_sky: Floats | None,
) -> Judged:  # fmt: skip
    stations = cause.stations[named]
    worst = worst_of(marks, -light[stations])
    if marks.max() >= Verdict.STRAINS:
        bad = named[marks >= Verdict.STRAINS]
        rows = cause.stations[bad]
        weekly = np.exp(total[rows]) * (1.0 if open_sky is None else open_sky[rows])
        when = ((weekly < light_good(stand.crop)) & (cause.passed[bad] < 0.0)).any(axis=0)
        when = when if when.any() else (cause.passed[bad] < 0.0).any(axis=0)
        code = "shaded"
    else:
        when = (cause.passed[named] < 0.0).any(axis=0)
        code = "layered"
    weeks = np.flatnonzero(when) + stand.begin
    numbers = _numbers(stand, float(light[stations[worst]]), int((marks == marks.max()).sum()))
    numbers["taken"] = round(float(cause.gain[named[worst]]), 6)
    finding = finding_of(
        Kind.SHADING, code, stand, cause.stands, stations, marks,
        (stand.first_day(int(weeks[0])), stand.last_day(int(weeks[-1]))), numbers,
        source=light_source(stand.crop) if code == "shaded" else "monsi-saeki", worst=worst,
    )  # fmt: skip
    return Judged(finding, marks)
