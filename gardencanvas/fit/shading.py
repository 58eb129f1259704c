"""Shading: the share of open-sky light that reaches each plant over its own time."""

from collections.abc import Sequence
from dataclasses import dataclass
from typing import NamedTuple

import numpy as np
from numpy.typing import NDArray

from gardencanvas.fit.beside import Beside, Vault
from gardencanvas.fit.codes import Code
from gardencanvas.fit.judged import CLASHES, CLEAR, SHARES, STRAINS, Judged, Number, finding_of, worst_of
from gardencanvas.fit.meeting import Meeting
from gardencanvas.fit.needs import light_good, light_least, light_source
from gardencanvas.fit.report import Kind
from gardencanvas.fit.stands import LEAF, RADIUS, Stand, months_of
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


class _Found(NamedTuple):
    """What one other stand lets through to some stations, in each of the stand's own weeks (logarithm)."""

    other: Stand
    stations: Ints
    passed: Floats


def lit(
    stand: Stand,
    meetings: Sequence[Meeting],
    besides: Sequence[Beside],
    over: Vault,
    sky: Floats | None,
) -> Lit:
    """Light that reaches a stand through all canopies over it.

    Light captured over light captured unshaded, by which its growth goes (Monteith 1977): each week counts by
    its sunlight and by the plant's footprint in it. In one week it is what fixtures leave times what each
    taller canopy lets through, its leaves above the plant spread over the overlapped part of the footprint
    (layered Beer–Lambert), times what taller stands beside leave.

    Parameters
    ----------
    meetings, besides
        Those in which the stand loses light, each ordered by the other stand's key.
    over
        The site's sky.
    sky
        What fixtures leave of the open sky, shape (stations, months); None without fixtures.
    """
    count, weeks = len(stand.index), stand.end - stand.begin
    if weeks == 0:
        return Lit(np.ones(count), ())
    weight = _weight(stand, over)
    open_sky = None if sky is None else sky[:, _months(stand)]
    unshaded = np.ones(count) if open_sky is None else np.round(open_sky @ weight, 9)
    found = [_over(stand, m) for m in meetings] + [_beside(stand, b) for b in besides]
    if not found:
        return Lit(unshaded, _by_fixtures(stand, unshaded, np.ones(count, dtype=bool)))
    total = np.zeros((count, weeks))
    for each in found:
        total[each.stations] += each.passed
    base = weight if open_sky is None else open_sky * weight
    light = np.round((base * np.exp(total)).sum(axis=1), 9)
    causes = _causes(found, base, total, light)
    return Lit(light, _judge(stand, over, unshaded, light, causes, total, open_sky))


def _causes(found: Sequence[_Found], base: Floats, total: Floats, light: Floats) -> list[_Cause]:
    """What each shading planting takes: the light that would be there without it, less what there is."""
    causes = []
    for others, stations, passed in _by_planting(found):
        own = base if base.ndim == 1 else base[stations]
        without = np.round((own * np.exp(total[stations] - passed)).sum(axis=1), 9)
        causes.append(_Cause(others, stations, passed, without - light[stations]))
    return causes


def _weight(stand: Stand, over: Vault) -> Floats:
    """How much each of the stand's weeks counts: its sunlight times footprint, as a share of all weeks."""
    weight = over.strength[_months(stand)] * stand.sizes[RADIUS, stand.begin : stand.end] ** 2
    total = float(weight.sum())
    return weight / total if total > 0.0 else np.full(len(weight), 1.0 / max(len(weight), 1))


def overhung(stand: Stand, meeting: Meeting, over: Vault) -> bool:
    """Whether the other stand grows over this one and takes light worth a word."""
    if not meeting.side(stand).overhung:
        return False
    passed = _over(stand, meeting).passed
    return float((-np.expm1(passed) @ _weight(stand, over)).max()) >= TAKEN_SHOWN


def _months(stand: Stand) -> Ints:
    """Month, 0–11, of each of the stand's weeks."""
    return months_of(stand.weeks)[stand.begin : stand.end] % 12


def _over(stand: Stand, meeting: Meeting) -> _Found:
    """What the canopies of another stand let through to the plants under them."""
    side = meeting.side(stand)
    passed = np.zeros((len(side.stations), stand.end - stand.begin))
    until = min(meeting.end, stand.end)
    if until > meeting.begin:
        spell = meeting.spell[: until - meeting.begin]
        passed[:, meeting.begin - stand.begin : until - stand.begin] = side.passed[:, spell]
    return _Found(meeting.b if stand is meeting.a else meeting.a, side.stations, passed)


def _beside(stand: Stand, found: Beside) -> _Found:
    """What a taller stand beside lets through."""
    passed = np.zeros((len(stand.index), stand.end - stand.begin))
    span = slice(found.begin - stand.begin, found.end - stand.begin)
    passed[:, span] = found.passed[stand.spots.of_station][:, found.month]
    return _Found(found.tall, np.arange(len(stand.index)), passed)


def _by_planting(found: Sequence[_Found]) -> list[tuple[tuple[Stand, ...], Ints, Floats]]:
    """What shades the stand, planting by planting."""
    groups: dict[str, list[_Found]] = {}
    for each in found:
        groups.setdefault(each.other.planting.id, []).append(each)
    result = []
    for _, group in sorted(groups.items()):
        stations, passed = group[0].stations, group[0].passed
        if len(group) > 1:
            stations = np.unique(np.concatenate([g.stations for g in group]))
            passed = np.zeros((len(stations), passed.shape[1]))
            for each in group:
                passed[np.searchsorted(stations, each.stations)] += each.passed
        others = tuple(dict.fromkeys(g.other for g in group))
        result.append((others, stations, passed))
    return result


def _marks(stand: Stand, light: Floats) -> Marks:
    marks: Marks = np.where(light < light_good(stand.crop), STRAINS, CLEAR)
    marks[light < light_least(stand.crop)] = CLASHES
    return marks


def _by_fixtures(stand: Stand, unshaded: Floats, asked: NDArray[np.bool_]) -> tuple[Judged, ...]:
    """Stations that have too little light even without any neighbour."""
    marks = _marks(stand, unshaded)
    bad = np.flatnonzero((marks > 0) & asked)
    if len(bad) == 0:
        return ()
    worst = worst_of(marks[bad], -unshaded[bad])
    finding = finding_of(
        Kind.SHADING, Code.FIXTURES, stand, (), bad, marks[bad], stand.span,
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
    stand: Stand, over: Vault, unshaded: Floats, light: Floats, causes: Sequence[_Cause], total: Floats,
    open_sky: Floats | None,
) -> tuple[Judged, ...]:  # fmt: skip
    """Who is to blame for each station that has too little, and who merely takes some."""
    marks = _marks(stand, light)
    worsened = marks > _marks(stand, unshaded)  # by neighbours, and not by fixtures alone
    most = np.zeros(len(light))
    for cause in causes:
        most[cause.stations] = np.maximum(most[cause.stations], cause.gain)
    judged = list(_by_fixtures(stand, unshaded, np.ones(len(light), dtype=bool)))
    for cause in causes:
        gain = cause.gain
        chief = (gain >= most[cause.stations]) & (gain > 0.0) & worsened[cause.stations]
        blamed = (gain >= TAKEN_BLAMED) | chief
        own = np.where(blamed, marks[cause.stations], CLEAR)
        own = np.maximum(own, np.where(gain >= TAKEN_SHOWN, SHARES, CLEAR))
        named = np.flatnonzero(own)
        if len(named):
            judged.append(_by_neighbour(stand, over, cause, named, own[named], light, total, open_sky))
    return tuple(judged)


def _caught(stand: Stand, over: Vault, total: Floats, open_sky: Floats | None, row: int) -> float:
    """Share of open-sky light that all canopies over a station and its own leaves take together."""
    base = _weight(stand, over) if open_sky is None else open_sky[row] * _weight(stand, over)
    leaf = stand.sizes[LEAF, stand.begin : stand.end]
    return float(base @ -np.expm1(total[row] - leaf))


def _by_neighbour(
    stand: Stand, over: Vault, cause: _Cause, named: Ints, marks: Marks, light: Floats, total: Floats,
    open_sky: Floats | None,
) -> Judged:  # fmt: skip
    stations = cause.stations[named]
    worst = worst_of(marks, -light[stations])
    if marks.max() >= STRAINS:
        bad = named[marks >= STRAINS]
        rows = cause.stations[bad]
        weekly = np.exp(total[rows]) * (1.0 if open_sky is None else open_sky[rows])
        when = ((weekly < light_good(stand.crop)) & (cause.passed[bad] < 0.0)).any(axis=0)
        when = when if when.any() else (cause.passed[bad] < 0.0).any(axis=0)
        code = Code.SHADED
    else:
        when = (cause.passed[named] < 0.0).any(axis=0)
        code = Code.LAYERED
    weeks = np.flatnonzero(when) + stand.begin
    numbers = _numbers(stand, float(light[stations[worst]]), int((marks == marks.max()).sum()))
    numbers["taken"] = round(float(cause.gain[named[worst]]), 6)
    if code is Code.LAYERED:
        numbers["caught"] = round(_caught(stand, over, total, open_sky, int(stations[worst])), 6)
        numbers["families"] = len({stand.crop.family, *(s.crop.family for s in cause.stands)})
    finding = finding_of(
        Kind.SHADING, code, stand, cause.stands, stations, marks,
        (stand.first_day(int(weeks[0])), stand.last_day(int(weeks[-1]))), numbers,
        source=light_source(stand.crop) if code is Code.SHADED else "monsi-saeki", worst=worst,
    )  # fmt: skip
    return Judged(finding, marks)
