"""Measures layouts, and keeps what it measured by what it was made of."""

from collections import OrderedDict
from collections.abc import Mapping, Sequence
from typing import NamedTuple

from gardencanvas.crops.catalogue import Catalogue, catalogue
from gardencanvas.crops.tin import SeedLot
from gardencanvas.fit import check
from gardencanvas.fit.report import FitReport
from gardencanvas.fit.same import same_items
from gardencanvas.garden.garden import Garden, Layout
from gardencanvas.measures.measured import Measured
from gardencanvas.measures.minutes import MINUTES, Minutes
from gardencanvas.measures.reckoned.layout import Reckoning
from gardencanvas.measures.reckoned.work import seed_cost
from gardencanvas.measures.seed_order import seed_order
from gardencanvas.measures.yields.years import Growing

KEPT = 8  # layouts


class _Kept(NamedTuple):
    """What was measured, of what it was made, and the answer with work and cost by what was given."""

    made_of: tuple[object, ...]
    found: Measured
    given: tuple[object, ...] = ()
    answer: Measured | None = None


class Measuring:
    """Keeps what was measured of layouts: after an edit only what the edit touches is measured again."""

    def __init__(self, crops: Catalogue | None = None) -> None:
        self._crops = crops
        self._own: tuple[Sequence[object], Catalogue] | None = None
        self._growing: OrderedDict[str, Growing] = OrderedDict()
        self._kept: OrderedDict[str, _Kept] = OrderedDict()

    def measured(
        self,
        garden: Garden,
        layout_id: str,
        report: FitReport | None = None,
        minutes: Mapping[str, Minutes] = MINUTES,
        lots: Sequence[SeedLot] = (),
    ) -> Measured:
        """One layout in numbers.

        Parameters
        ----------
        report
            What the check says of the layout as it is now; made where it is not given.
        minutes
            What each kind of job takes.
        lots
            The grower's seed, with its prices.

        Raises
        ------
        KeyError
            If there is no such layout.
        UnknownCrop
            If a planting names a crop or variety that the catalogue does not hold.
        """
        layout = garden.layout(layout_id)
        crops = self._catalogue(garden)
        made_of = (layout, garden.site, garden.fixtures, crops)
        kept = self._kept.pop(layout.id, None)
        if kept is None or not same_items(kept.made_of, made_of):
            growing = self._grower(crops, garden, layout)
            told = report or check(garden, layout.id, crops)
            found = Reckoning(crops, garden, layout, growing.years(layout), told).measured()
            kept = _Kept(made_of, found)
        given = (minutes, *lots)
        if kept.answer is None or not same_items(kept.given, given):
            cost = seed_cost(seed_order(garden, layout.id, lots, crops))
            kept = kept._replace(given=given, answer=kept.found.with_work(minutes, cost))
        self._kept[layout.id] = kept
        while len(self._kept) > KEPT:
            self._kept.popitem(last=False)
        return kept.answer or kept.found

    def _grower(self, crops: Catalogue, garden: Garden, layout: Layout) -> Growing:
        growing = self._growing.pop(layout.id, None)
        if growing is None or not growing.serves(crops, garden.site, layout):
            growing = Growing(crops, garden.site, layout)
        self._growing[layout.id] = growing
        while len(self._growing) > KEPT:
            self._growing.popitem(last=False)
        return growing

    def _catalogue(self, garden: Garden) -> Catalogue:
        if self._crops is not None:
            return self._crops
        mine = (*garden.crops, *garden.varieties)
        if self._own is None or not same_items(self._own[0], mine):
            self._own = (mine, catalogue().with_own(garden.crops, garden.varieties))
        return self._own[1]
