"""What comes of starting a planting later: its outlook, day by day for a year."""

from datetime import date, timedelta

from gardencanvas.crops.catalogue import Catalogue
from gardencanvas.crops.model import Harvest
from gardencanvas.fit.aids import growing_of
from gardencanvas.garden.edits import rebuilt
from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.garden import Layout
from gardencanvas.garden.planting import Planting
from gardencanvas.garden.site import Site
from gardencanvas.planner.succession.dates import Outlook, outlook
from gardencanvas.planner.succession.group import started
from gardencanvas.planner.succession.rhythm import Between, Rhythm

AHEAD_D = 365  # a succession is over within a year


def outlook_of(
    site: Site, layout: Layout, planting: Planting, catalogue: Catalogue, first: date | None = None
) -> Outlook:
    """Harvests of a planting started on ``first`` (its own day where absent) and on each day after it.

    Raises
    ------
    Refusal
        If it is none that is started again: a perennial, a volunteer.
    """
    crop = catalogue.resolve(planting.crop, planting.variety)
    if crop.life == "perennial" and crop.harvest is not Harvest.SINGLE:
        raise Refusal("A perennial is started once and bears for years: it needs no succession.")
    if planting.start.kind == "volunteer":
        raise Refusal("Nobody starts a volunteer: it cannot come again by plan.")
    first = first or planting.start.on
    bare = rebuilt(planting, end=None)
    plantings = (started(bare, first + timedelta(days=d), 0) for d in range(AHEAD_D))
    return outlook(site, [growing_of(layout, p, crop) for p in plantings])


def check_harvest(planting: Planting, found: Outlook, rhythm: Rhythm, catalogue: Catalogue) -> None:
    """Raise ``Refusal`` where a planting has no harvest to repeat."""
    crop = catalogue.resolve(planting.crop, planting.variety)
    if rhythm.between is Between.HARVESTS and crop.harvest is Harvest.NONE:
        raise Refusal("This crop is not harvested: give the days between its starts.")
    if len(found.harvest) == 0:
        raise Refusal("In an average year this planting is not ripe before frost or winter: move it first.")
    if planting.end is not None and planting.end < found.on(int(found.harvest[0])):
        raise Refusal("This planting is cleared before it is ripe: it has no harvest to repeat.")
