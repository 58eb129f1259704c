"""How plantings grow: sizes week by week, harvest dates and the end, all plantings at once."""

from collections.abc import Sequence

import numpy as np

from gardencanvas.garden.site import Site
from gardencanvas.season.batch import FAR, batch
from gardencanvas.season.course import Course, Days, Growing, Weeks
from gardencanvas.season.dayofyear import Ints, dates
from gardencanvas.season.ripening import Ripening, grid, ripening
from gardencanvas.season.sizes import sizes
from gardencanvas.season.span import span

__all__ = ["follow", "span"]


def follow(site: Site, plantings: Sequence[Growing], weeks: Weeks) -> Course:
    """The course of plantings through a grid of weeks.

    Growth is a beta function (Yin et al. 2003) of degree-days, a tenth of full cover at the end of the
    initial stage (FAO-56, chapter 6); the canopy radius goes with the square root of cover, height with
    cover, rooting depth linearly through the development stage (FAO-56 p. 279). The canopy is held in the
    late stage: senescence gives no ground back. Each planting's row depends on the site, the planting and the
    grid alone.

    Parameters
    ----------
    site
        Its climate and its frost dates.
    plantings
        With complete crops (``Catalogue.resolve``).
    weeks
        The grid asked for. Dates do not depend on it, but for perennials: they stand to its end.

    Raises
    ------
    ValueError
        If a crop lacks a number that growth cannot do without.
    """
    plants = batch(site, plantings)
    when = ripening(site, plants, weeks)
    # A start on 29 February reads as the 28th in the climate year: no date may fall before it.
    first, last, out = (np.maximum(dates(d), plants.in_bed) for d in (when.first, when.last, when.out))
    middle = grid(weeks)[0]
    present = (middle >= plants.in_bed[:, None]) & (middle <= out[:, None])
    size = sizes(site, plants, weeks, present, middle >= first[:, None])
    return Course(
        weeks=weeks,
        radius_m=size.radius,
        height_m=size.height,
        base_m=size.base,
        root_m=size.root,
        leaf_area=size.leaf,
        present=present,
        sown=plants.in_bed - np.rint(plants.traits.nursery_d).astype(np.int64),
        in_bed=plants.in_bed,
        harvest_first=first,
        harvest_last=last,
        out=out,
        frosted=when.frosted,
        ripe=when.ripe,
        exposed=dates(when.frosts.exposed),
        last_frost=_frost(when, when.frosts.last),
        killing_frost=_frost(when, when.frosts.killed),
        ready=dates(when.ready),
        warm_enough=when.met,
    )


def _frost(when: Ripening, day: Ints) -> Days:
    """Dates of frosts, NaT where none kills."""
    never = when.frosts.killed >= FAR
    return np.where(never, np.datetime64("NaT"), dates(np.where(never, 0, day)))
