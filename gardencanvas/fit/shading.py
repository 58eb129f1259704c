"""Shading: the share of open-sky light that reaches each plant over its own time."""

from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache
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
Bools = NDArray[np.bool_]


@dataclass(frozen=True, slots=True, eq=False)
class Lit:
    """Light of one stand, and what is said of it."""

    light: Floats  # (stations,): share of open-sky light over its own time
    judged: tuple[Judged, ...]


class _Found(NamedTuple):
    """What other stands let through to some stations, in a span of the stand's own weeks.

    ``passed`` has shape (stations, columns): the logarithm of the share of light; ``column`` says which of
    them a week of the span has, ``after`` how many of its own weeks are over before the span.
    """

    others: tuple[Stand, ...]
    stations: Ints
    passed: Floats
    column: Ints
    after: int

    @property
    def span(self) -> slice:
        """Its weeks among the stand's own."""
        return slice(self.after, self.after + len(self.column))

    def weeks(self, some: Ints) -> Ints:
        """In which of the stand's own weeks it takes light from any of some of its stations."""
        takes = np.asarray((self.passed.take(some, axis=0) < 0.0).any(axis=0))
        return takes[self.column].nonzero()[0] + self.after


@dataclass(frozen=True, slots=True, eq=False)
class _Cause:
    """One planting that shades the stand, all its stands together."""

    found: _Found
    gain: Floats  # (stations,): light that would be gained without it


class _Under(NamedTuple):
    """Light of a stand under all that shades it."""

    stand: Stand
    weight: Floats  # (own weeks,)
    open_sky: Floats | None  # (stations, own weeks)
    total: Floats  # (stations, own weeks): logarithm of what canopies let through
    light: Floats  # (stations,)

    def caught(self, row: int) -> float:
        """Share of open-sky light that all canopies over a station and its own leaves take together."""
        stand = self.stand
        base = self.weight if self.open_sky is None else self.open_sky[row] * self.weight
        return float(base @ -np.expm1(self.total[row] - stand.sizes[LEAF, stand.begin : stand.end]))

    def dim(self, rows: Ints, span: slice) -> Bools:
        """In which weeks of a span some stations have less light than they need."""
        weekly = np.exp(self.total[:, span].take(rows, axis=0))
        if self.open_sky is not None:
            weekly *= self.open_sky[:, span].take(rows, axis=0)
        below: Bools = weekly < light_good(self.stand.crop)
        return below


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
    weight = _weight(stand.origin, over)
    open_sky = None if sky is None else sky[:, _months(stand)]
    unshaded = np.ones(count) if open_sky is None else np.round(open_sky @ weight, 9)
    found = [f for m in meetings if (f := _over(stand, m)) is not None]
    found += [_beside(stand, b) for b in besides]
    if not found:
        return Lit(unshaded, _by_fixtures(stand, unshaded, _marks(stand, unshaded)))
    total = np.zeros((count, weeks))
    for each in found:
        passed = each.passed.take(each.column, axis=1)
        if len(each.stations) == count:
            total[:, each.span] += passed
        else:
            total[each.stations, each.span] += passed
    left = (weight if open_sky is None else open_sky * weight) * np.exp(total)
    light = np.round(left.sum(axis=1), 9)
    causes = [_Cause(f, _gain(f, left)) for f in _by_planting(stand, found)]
    return Lit(light, _judge(_Under(stand, weight, open_sky, total, light), unshaded, causes))


def _gain(found: _Found, left: Floats) -> Floats:
    """Light that would be there without what shades, less what there is, shape (stations,).

    Parameters
    ----------
    left
        Light of each of the stand's stations and weeks, with all that shades, shape (stations, weeks).
    """
    more = np.expm1(-found.passed).take(found.column, axis=1)
    there = left[:, found.span]
    more *= there if len(more) == len(left) else there.take(found.stations, axis=0)
    gain: Floats = np.round(more.sum(axis=1), 9)
    return gain


@lru_cache(maxsize=512)
def _weight(stand: Stand, over: Vault) -> Floats:
    """How much each of the stand's weeks counts: its sunlight times footprint, as a share of all weeks."""
    weight = over.strength[_months(stand)] * stand.sizes[RADIUS, stand.begin : stand.end] ** 2
    total = float(weight.sum())
    return weight / total if total > 0.0 else np.full(len(weight), 1.0 / max(len(weight), 1))


def overhung(stand: Stand, meeting: Meeting, over: Vault) -> bool:
    """Whether the other stand grows over this one and takes light worth a word."""
    found = _over(stand, meeting) if meeting.side(stand).overhung else None
    if found is None:
        return False
    weight = np.bincount(found.column, _weight(stand.origin, over)[found.span], found.passed.shape[1])
    return float((-np.expm1(found.passed) @ weight).max()) >= TAKEN_SHOWN


def _months(stand: Stand) -> Ints:
    """Month, 0–11, of each of the stand's weeks."""
    return months_of(stand.weeks)[stand.begin : stand.end] % 12


def _over(stand: Stand, meeting: Meeting) -> _Found | None:
    """What the canopies of another stand let through to the plants under them; None after its time."""
    side, until = meeting.side(stand), min(meeting.end, stand.end)
    if until <= meeting.begin:
        return None
    other = meeting.b if stand is meeting.a else meeting.a
    column = meeting.spell[: until - meeting.begin]
    return _Found((other,), side.stations, side.passed, column, meeting.begin - stand.begin)


def _beside(stand: Stand, found: Beside) -> _Found:
    """What a taller stand beside lets through."""
    passed = found.passed.take(stand.spots.of_station, axis=0)
    return _Found((found.tall,), np.arange(len(stand.index)), passed, found.month, found.begin - stand.begin)


def _by_planting(stand: Stand, found: Sequence[_Found]) -> list[_Found]:
    """What shades the stand, planting by planting."""
    groups: dict[str, list[_Found]] = {}
    for each in found:
        groups.setdefault(each.others[0].planting.id, []).append(each)
    return [group[0] if len(group) == 1 else _together(stand, group) for _, group in sorted(groups.items())]


def _together(stand: Stand, group: Sequence[_Found]) -> _Found:
    """What one planting lets through, over the stand and beside it."""
    touched = np.zeros(len(stand.index), dtype=bool)
    for each in group:
        touched[each.stations] = True
    stations, place = touched.nonzero()[0], np.cumsum(touched) - 1
    begin, end = min(g.span.start for g in group), max(g.span.stop for g in group)
    passed = np.zeros((len(stations), end - begin))
    for each in group:
        span = slice(each.span.start - begin, each.span.stop - begin)
        passed[place[each.stations], span] += each.passed.take(each.column, axis=1)
    others = tuple(dict.fromkeys(o for g in group for o in g.others))
    return _Found(others, stations, passed, np.arange(end - begin), begin)


def _marks(stand: Stand, light: Floats) -> Marks:
    marks: Marks = np.where(light < light_good(stand.crop), STRAINS, CLEAR)
    marks[light < light_least(stand.crop)] = CLASHES
    return marks


def _by_fixtures(stand: Stand, unshaded: Floats, marks: Marks) -> tuple[Judged, ...]:
    """Stations that have too little light even without any neighbour."""
    bad = marks.nonzero()[0]
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


def _judge(under: _Under, unshaded: Floats, causes: Sequence[_Cause]) -> tuple[Judged, ...]:
    """Who is to blame for each station that has too little, and who merely takes some."""
    stand, marks, before = under.stand, _marks(under.stand, under.light), _marks(under.stand, unshaded)
    worsened = marks > before  # by neighbours, and not by fixtures alone
    most = np.zeros(len(marks))
    for cause in causes:
        some = cause.found.stations
        most[some] = np.maximum(most[some], cause.gain)
    judged = list(_by_fixtures(stand, unshaded, before))
    for cause in causes:
        some, gain = cause.found.stations, cause.gain
        chief = (gain >= most[some]) & (gain > 0.0) & worsened[some]
        own: Marks = np.where(gain >= TAKEN_SHOWN, SHARES, CLEAR)
        np.maximum(own, marks[some], out=own, where=(gain >= TAKEN_BLAMED) | chief)
        named = own.nonzero()[0]
        if len(named):
            judged.append(_by_neighbour(under, cause, named, own[named]))
    return tuple(judged)


def _by_neighbour(under: _Under, cause: _Cause, named: Ints, marks: Marks) -> Judged:
    stand, found = under.stand, cause.found
    stations = found.stations[named]
    light = under.light[stations]
    worst = worst_of(marks, -light)
    code = Code.SHADED if marks[worst] >= STRAINS else Code.LAYERED
    weeks = found.weeks(named) if code is Code.LAYERED else _dim_weeks(under, found, named[marks >= STRAINS])
    numbers = _numbers(stand, float(light[worst]), int(np.count_nonzero(marks == marks[worst])))
    numbers["taken"] = round(float(cause.gain[named[worst]]), 6)
    if code is Code.LAYERED:
        numbers["caught"] = round(under.caught(int(stations[worst])), 6)
        numbers["families"] = len({stand.crop.family, *(s.crop.family for s in found.others)})
    first, last = stand.begin + int(weeks[0]), stand.begin + int(weeks[-1])
    finding = finding_of(
        Kind.SHADING, code, stand, found.others, stations, marks,
        (stand.first_day(first), stand.last_day(last)), numbers,
        source=light_source(stand.crop) if code is Code.SHADED else "monsi-saeki", worst=worst,
    )  # fmt: skip
    return Judged(finding, marks)


def _dim_weeks(under: _Under, found: _Found, bad: Ints) -> Ints:
    """In which of its own weeks a stand has too little light and one neighbour takes some of it."""
    takes = (found.passed.take(bad, axis=0) < 0.0).take(found.column, axis=1)
    dim = under.dim(found.stations[bad], found.span) & takes
    weeks = np.flatnonzero(dim.any(axis=0))
    return weeks + found.after if len(weeks) else found.weeks(bad)
