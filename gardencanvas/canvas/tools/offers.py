"""Free places of the bed under the mouse: found at once, judged one by one while nothing else is to do."""

from __future__ import annotations

from collections.abc import Iterator
from math import hypot
from typing import TYPE_CHECKING

import numpy as np
from PySide6.QtCore import QTimer

from gardencanvas.canvas.items.offers import Offered, OffersItem
from gardencanvas.canvas.shapes import from_shapely, hull
from gardencanvas.canvas.tools.carried import Carried
from gardencanvas.fit.report import Verdict
from gardencanvas.garden.ground import Bed
from gardencanvas.garden.value import Point
from gardencanvas.planner.between import Offer, Place, offers, places_between
from gardencanvas.words import named

if TYPE_CHECKING:
    from gardencanvas.canvas.view import PlanView


class BedOffers:
    """Keeps and shows the free places of one bed for one crop."""

    def __init__(self, view: PlanView) -> None:
        self._view = view
        self._item = OffersItem(view.look)
        view.plan.addItem(self._item)
        self._of: tuple[str, Carried] | None = None
        self.places: tuple[Place, ...] = ()
        self.verdicts: dict[Place, Verdict] = {}
        self._coming: Iterator[Offer] = iter(())
        self._timer = QTimer(view)
        self._timer.setInterval(0)
        self._timer.timeout.connect(self._judge_one)

    def show(self, bed: Bed, carried: Carried) -> None:
        """Find the places of a bed; nothing is done where they are found already."""
        if self._of == (bed.id, carried):
            return
        desk = self._view.desk
        self._of = (bed.id, carried)
        self.places = places_between(desk.layout, bed, carried.room)
        self.verdicts = {}
        self._coming = offers(desk.garden, desk.layout_id, self.places, carried.planting, desk.checker)
        self._draw()
        self._timer.start()

    def nearest(self, at: Point) -> Place | None:
        """The place whose nearest station is nearest to a plan point; a row wins over a rim as near."""

        def away(place: Place) -> float:
            xy = place.pattern.stations
            if len(xy) > 1 and place.where in {"between rows", "beside a row"}:
                return _off_line(xy[0], xy[-1], at)
            return float(np.hypot(*(xy - np.array(at)).T).min())

        return min(self.places, key=away, default=None)

    def clear(self) -> None:
        """Show nothing and judge no further."""
        self._timer.stop()
        self._of = None
        self.places = ()
        self._coming = iter(())
        self._item.put(())

    def _judge_one(self) -> None:
        offer = next(self._coming, None)
        if offer is None:
            self._timer.stop()
            return
        self.verdicts[offer.place] = offer.verdict
        self._draw()

    def _draw(self) -> None:
        if self._of is None:
            return
        carried = self._of[1]
        shown = []
        for place in self.places:
            verdict = self.verdicts.get(place)
            path = from_shapely(hull(carried.planting(place.pattern), place.pattern.spacing_m / 4))
            shown.append(Offered(path, verdict, named.verdict(verdict) if verdict is not None else ""))
        self._item.put(tuple(shown))


def _off_line(a: np.ndarray, b: np.ndarray, at: Point) -> float:
    """Distance of a point from a stretch of line."""
    along = b - a
    length2 = float(along @ along)
    share = min(max(float((np.array(at) - a) @ along) / length2, 0.0), 1.0) if length2 else 0.0
    x, y = np.array(at) - (a + share * along)
    return hypot(float(x), float(y))
