"""The check of a layout, whole or kept up with edits.

``Checker`` keeps what it found for parts of a garden that have not changed, by their identity; every part of
its answer depends on values alone, so that it equals a fresh ``check``.
"""

from collections import OrderedDict
from collections.abc import Sequence
from operator import itemgetter
from typing import NamedTuple

import numpy as np
from numpy.typing import NDArray

from gardencanvas.crops.catalogue import Catalogue, catalogue
from gardencanvas.fit.beside import vault
from gardencanvas.fit.frost import frost
from gardencanvas.fit.judged import Judged
from gardencanvas.fit.nearby import Nearby
from gardencanvas.fit.pairing import Pairing, pairing
from gardencanvas.fit.place import Laid, laid, near, placed
from gardencanvas.fit.planting_fit import Opinion, opinion
from gardencanvas.fit.pressing import Pressed, pressed_together
from gardencanvas.fit.reach import Ground, in_the_way, shut_off
from gardencanvas.fit.report import Finding, FitReport
from gardencanvas.fit.same import differing, same_items
from gardencanvas.fit.shading import Lit, lit
from gardencanvas.fit.spacing import spacing
from gardencanvas.fit.standing import Standing
from gardencanvas.fit.stands import Stand
from gardencanvas.fit.support import leans, support, wants_support
from gardencanvas.fit.timing import days_to_spare
from gardencanvas.garden.garden import Garden, Layout
from gardencanvas.garden.ground import Fixture, LineSupport, RingSupport
from gardencanvas.garden.site import Site
from gardencanvas.light.fixtures import open_sky

Floats = NDArray[np.float64]
Stands = tuple[Stand, ...]

KEPT_LAYOUTS = 4


def check(garden: Garden, layout_id: str | None = None, catalogue: Catalogue | None = None) -> FitReport:
    """Judge one layout of a garden, all season.

    Parameters
    ----------
    layout_id
        Id or name of the layout; the first where none is given.
    catalogue
        The crops to judge by; the shipped ones with the garden's own where none is given.

    Raises
    ------
    KeyError
        If there is no such layout.
    UnknownCrop
        If a planting names a crop or variety that the catalogue does not hold.
    """
    return Checker(catalogue).update(garden, garden.layout(layout_id).id)


class Checker:
    """Keeps a report up to date: ``update`` costs only what changed since the last time."""

    def __init__(self, catalogue: Catalogue | None = None) -> None:
        self._catalogue = catalogue
        self._own: tuple[Sequence[object], Catalogue] | None = None
        self._states: OrderedDict[str, _State] = OrderedDict()

    def update(self, garden: Garden, layout_id: str) -> FitReport:
        """The report of a garden's layout; the same as a fresh ``check`` gives. Raises as ``check`` does."""
        layout = garden.layout(layout_id)
        return self._state(garden, layout).report(garden, layout)

    def pressed(self, garden: Garden, layout_id: str, planting: str) -> tuple[Finding, ...]:
        """What the report would say of one planting for neighbours that stand in its ground.

        Far quicker than the report: nothing else is looked at. Raises as ``check`` does.
        """
        layout = garden.layout(layout_id)
        return self._state(garden, layout).pressed(layout, planting)

    def _state(self, garden: Garden, layout: Layout) -> "_State":
        crops = self._crops(garden)
        state = self._states.pop(layout.id, None)
        if state is None or state.crops is not crops or not state.standing.serves(garden.site, layout):
            state = _State(crops, garden, layout)
        self._states[layout.id] = state
        while len(self._states) > KEPT_LAYOUTS:
            self._states.popitem(last=False)
        return state

    def _crops(self, garden: Garden) -> Catalogue:
        if self._catalogue is not None:
            return self._catalogue
        own = self._own
        mine = (*garden.crops, *garden.varieties)
        if own is None or not same_items(own[0], mine):
            own = (mine, catalogue().with_own(garden.crops, garden.varieties))
            self._own = own
        return own[1]


_Ranked = tuple[tuple[int, str], str, Finding]  # what it is sorted by, who suffers


class _Shade(NamedTuple):
    """Light of a stand, with all that it came from."""

    causes: tuple[object, ...]
    lit: Lit


class _State:
    """What is known of one layout since the last report."""

    def __init__(self, crops: Catalogue, garden: Garden, layout: Layout) -> None:
        self.crops = crops
        self._vault = vault(garden.site)
        self.standing = Standing(crops, garden.site, layout)
        self._stands: dict[str, Stands] = {}
        self._nearby = Nearby()
        self._pairings: dict[tuple[str, str], Pairing] = {}
        self._partners: dict[str, set[str]] = {}
        self._skies: dict[str, tuple[Floats, ...]] = {}
        self._opinions: dict[str, Opinion] = {}
        self._placed: dict[str, tuple[Judged, ...]] = {}
        self._shut: dict[tuple[str, int], tuple[tuple[object, ...], Judged | None]] = {}
        self._alone: dict[str, tuple[Judged, ...]] = {}  # what a planting does to itself
        self._lights: dict[str, tuple[_Shade, ...]] = {}
        self._ranked: list[_Ranked] = []
        self._laid: tuple[Laid, ...] = ()
        self._supports: tuple[LineSupport | RingSupport, ...] = ()
        self._ground = Ground((), (), ())
        self._fixtures: tuple[Fixture, ...] = ()
        self._site: Site | None = None
        self._pressed = Pressed()

    def pressed(self, layout: Layout, planting: str) -> tuple[Finding, ...]:
        """What is said of one planting for neighbours in its ground."""
        return tuple(j.finding for j in self._pressed.of(self.standing.of(layout), planting))

    def report(self, garden: Garden, layout: Layout) -> FitReport:
        """Bring everything up to date and answer."""
        before, self._stands = self._stands, self.standing.of(layout)
        changed = [p for p, stands in self._stands.items() if before.get(p) is not stands]
        gone = {p for p in before if self._stands.get(p) is not before[p]}
        touched = self._forget(gone)
        touched.update(changed, self._meet(changed))
        touched.update(self._surroundings(garden, layout, changed))
        for planting in touched:
            if planting in self._stands:
                self._opinions[planting] = self._judge(planting)
        plantings = {p: self._opinions[p].fit for p in self._stands}
        return FitReport(layout.id, layout.season, plantings, self._findings(touched | gone))

    def _forget(self, gone: set[str]) -> set[str]:
        """Drop what was known of plantings that changed or went; return those they met."""
        met: set[str] = set()
        for planting in gone:
            for partner in self._partners.pop(planting, set()):
                met.add(partner)
                self._pairings.pop(_pair(planting, partner), None)
                if partner in self._partners:
                    self._partners[partner].discard(planting)
            self._opinions.pop(planting, None)
            self._skies.pop(planting, None)
            self._placed.pop(planting, None)
            self._alone.pop(planting, None)
            self._lights.pop(planting, None)
        return met

    def _meet(self, changed: Sequence[str]) -> set[str]:
        """Pair changed plantings with those near them; return those that meet."""
        met: set[str] = set()
        for one, two in self._nearby.pairs(self._stands, changed):
            found = pairing(self._stands[one], self._stands[two], self._vault)
            if found is not None:
                self._pairings[_pair(one, two)] = found
                self._partners.setdefault(one, set()).add(two)
                self._partners.setdefault(two, set()).add(one)
                met.update((one, two))
        return met

    def _surroundings(self, garden: Garden, layout: Layout, changed: Sequence[str]) -> set[str]:
        """What stands and lies there means to plantings; return those for which it was asked anew."""
        every, new = list(self._stands), set(changed)
        same_sky = same_items(garden.fixtures, self._fixtures) and garden.site is self._site
        lit_anew = changed if same_sky else every
        now = laid(layout)
        moved = [] if same_items(now, self._laid) else differing(now, self._laid)
        laid_anew = [p for p in every if p in new or near(self._stands[p], moved)] if moved else changed
        laid_anew = laid_anew if same_sky else every  # fixtures shelter, and stand in the way
        if not self._ground.same(layout.beds, layout.paths, garden.fixtures):
            self._ground = Ground(layout.beds, layout.paths, garden.fixtures)
        self._fixtures, self._laid, self._site = garden.fixtures, now, garden.site
        self._supports = layout.supports
        if garden.fixtures:
            for planting in lit_anew:
                self._skies[planting] = tuple(
                    np.round(open_sky(garden.site, garden.fixtures, s.xy), 6) for s in self._stands[planting]
                )
        else:
            self._skies.clear()
        for planting in laid_anew:
            self._placed[planting] = placed(self._stands[planting], layout, self._ground)
        return {*lit_anew, *laid_anew}

    def _judge(self, planting: str) -> Opinion:
        stands = self._stands[planting]
        pairings = [
            self._pairings[_pair(planting, partner)] for partner in sorted(self._partners.get(planting, ()))
        ]
        if planting not in self._alone:
            self._alone[planting] = _by_itself(stands)
        own = [*self._placed[planting], *self._alone[planting]]
        near_by = [s for p in sorted(self._partners.get(planting, ())) for s in self._stands[p]]
        if any(wants_support(s.crop) or leans(s.crop) for s in stands):
            own += [j for s in stands for j in support(s, near_by, self._supports)]
        own += [j for s in stands if (j := self._shut_off(s, near_by)) is not None]
        light = np.ones(stands[0].planting.pattern.count)
        skies = self._skies.get(planting)
        kept = self._lights.get(planting, ())
        self._lights[planting] = ()
        for number, stand in enumerate(stands):
            old = kept[number] if kept else None
            shade = self._lit(stand, pairings, skies[number] if skies else None, old)
            self._lights[planting] += (shade,)
            light[stand.index] = shade.lit.light
            own += shade.lit.judged
        paired = [j for p in pairings for j in p.judged]
        mine = [j for j in paired if j.finding.plantings[0] == planting]
        own += pressed_together(stands, [m for p in pairings for m in p.meetings], mine)
        sharing = [some for p in pairings for name, some in p.sharing if name == planting]
        spare = [d for j in mine if (d := days_to_spare(j)) is not None]
        return opinion(stands, light, [*own, *mine], sharing, min(spare, default=None))

    def _shut_off(self, stand: Stand, near_by: Sequence[Stand]) -> Judged | None:
        """What closes the way to a stand, kept as long as the same stands do."""
        tall = in_the_way(stand, near_by)
        if not tall:
            self._shut.pop(stand.key, None)
            return None
        causes = (stand, self._ground, *tall)
        old = self._shut.get(stand.key)
        if old is None or not same_items(old[0], causes):
            old = causes, shut_off(stand, tall, self._ground)
            self._shut[stand.key] = old
        return old[1]

    def _lit(
        self, stand: Stand, pairings: Sequence[Pairing], sky: Floats | None, old: _Shade | None
    ) -> _Shade:
        """Light of a stand, kept as long as the same stands take it."""
        meetings = [
            m
            for p in pairings
            for m in p.meetings
            if (stand is m.a or stand is m.b) and m.side(stand).overhung
        ]
        besides = [b for p in pairings for b in p.besides if stand is b.low]
        causes = (stand, sky, *meetings, *besides)
        if old is not None and same_items(old.causes, causes):
            return old
        return _Shade(causes, lit(stand, meetings, besides, self._vault, sky))

    def _findings(self, touched: set[str]) -> tuple[Finding, ...]:
        """All findings, worst first; those of untouched plantings are in order already."""
        ranked = [r for r in self._ranked if r[1] not in touched]
        for planting in touched.intersection(self._stands):
            ranked += [((-f.verdict, f.id), planting, f) for f in self._opinions[planting].findings]
        ranked.sort(key=itemgetter(0))
        self._ranked = ranked
        return tuple([r[2] for r in ranked])


def _by_itself(stands: Stands) -> tuple[Judged, ...]:
    """What is said of a planting whatever lies and grows round it."""
    close = spacing(stands)
    return (*([close] if close is not None else []), *(j for s in stands for j in frost(s)))


def _pair(one: str, two: str) -> tuple[str, str]:
    return (one, two) if one < two else (two, one)
