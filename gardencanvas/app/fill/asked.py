"""Which ground is to be filled with which crop, as the grower pointed at it."""

from dataclasses import dataclass

import shapely
from shapely import Polygon

from gardencanvas.app.session import Session
from gardencanvas.canvas.tools.carried import Carried
from gardencanvas.canvas.tools.fill_place import Where
from gardencanvas.garden.ground import Bed
from gardencanvas.garden.laid import Spacings
from gardencanvas.garden.places import bed_at, bed_ground, bed_of
from gardencanvas.garden.planting import Planting, Start
from gardencanvas.garden.value import Point
from gardencanvas.planner.filling.ground import FreeStrip, free_strips
from gardencanvas.season.usual_start import usual_start


@dataclass(frozen=True, slots=True)
class Asked:
    """A bed with its free strips, a crop with its usual spacing and start.

    The choices are the whole bed, each free strip, and the box that was drawn where one was; ``meant`` is the
    one that was pointed at.
    """

    bed: Bed
    strips: tuple[FreeStrip, ...]
    box: tuple[Point, ...] | None
    meant: int
    crop: str
    variety: str | None
    room: Spacings
    start: Start

    def area(self, choice: int) -> tuple[Point, ...] | None:
        """The corners of one of the choices; None for the whole bed."""
        if choice == 0:
            return None
        return self.strips[choice - 1].outline if choice <= len(self.strips) else self.box


def asked(session: Session, crop_id: str, variety: str | None, bed: Bed, where: Where | None = None) -> Asked:
    """What is asked where a bed was chosen, and maybe a point or a box in it; raises ``UnknownCrop``."""
    layout = session.layout
    crop = session.catalogue.resolve(crop_id, variety)
    start = usual_start(session.garden.site, crop, layout.year, layout.first_month)
    room = Carried(crop, crop_id, variety, start, "-").room
    strips = free_strips(layout, bed)
    box = where if where is not None and isinstance(where[0], tuple) else None
    meant = 0
    if box is not None:
        meant = len(strips) + 1
    elif where is not None:
        spot = shapely.Point(where)
        inside = (n for n, s in enumerate(strips, 1) if Polygon(s.outline).covers(spot))
        meant = next(inside, 0)
    return Asked(bed, strips, box, meant, crop_id, variety, room, start)


def meant_bed(session: Session) -> Bed | None:
    """The one bed that is selected, or the bed of the one planting that is."""
    if len(session.selection) != 1:
        return None
    item = session.layout.by_id.get(next(iter(session.selection)))
    if isinstance(item, Planting):
        return bed_of(session.layout, item)
    return item if isinstance(item, Bed) else None


def bed_under(session: Session, where: Where) -> Bed | None:
    """The bed at a point, or that of which a box covers most."""
    if not isinstance(where[0], tuple):
        return bed_at(session.layout, (float(where[0]), float(where[1])))  # type: ignore[arg-type]
    box = Polygon(where)
    shares = {b.id: float(bed_ground(b).intersection(box).area) for b in session.layout.beds}
    best = max(session.layout.beds, key=lambda b: shares[b.id], default=None)
    return best if best is not None and shares[best.id] > 0.0 else None
