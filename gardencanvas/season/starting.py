"""From when and until when a crop can be sown, planted out or set, in an average year."""

from dataclasses import dataclass
from datetime import date, timedelta
from typing import Literal

import numpy as np
from numpy.typing import NDArray

from gardencanvas.crops.model import Crop
from gardencanvas.garden.planting import Start
from gardencanvas.garden.site import DayOfYear, Site
from gardencanvas.season.batch import batch
from gardencanvas.season.course import Growing, Weeks
from gardencanvas.season.dayofyear import YEAR, day_of_index
from gardencanvas.season.ripening import coldest, ripening
from gardencanvas.season.traits import base_top
from gardencanvas.season.warmth import mean_curve

Bools = NDArray[np.bool_]

_YEAR = date(2001, 1, 1)  # any common year


@dataclass(frozen=True, slots=True)
class StartWindow:
    """Days of the year between which a crop can be started; both None where never, ``always`` where ever."""

    first: DayOfYear | None
    last: DayOfYear | None
    always: bool = False


def start_window(
    site: Site,
    crop: Crop,
    kind: Literal["sown", "raised", "set"],
    *,
    supported: bool = False,
    warmed: bool = False,
) -> StartWindow:
    """The longest run of days on which a crop can go into the bed.

    It is warm enough: for a seed to germinate (the soil taken as warm as the day's mean air, common
    practice), for a plant to grow. It shows after the typical last killing frost, and its first harvest comes
    before the typical first one, or, for crops no frost kills, before the coldest day of the year; very hardy
    ones that are set may stand over winter.
    """
    days = [_YEAR + timedelta(days=d) for d in range(YEAR)]
    plantings = [Growing(crop, Start(kind=kind, on=on), None, supported, warmed) for on in days]
    plants = batch(site, plantings)
    when = ripening(site, plants, Weeks(_YEAR, 157))
    least = base_top(crop)[0]
    if kind == "sown" and crop.germination_min_c is not None:
        least = crop.germination_min_c.mid
    good = (mean_curve(site.climate) + plants.needs[0].warmer_c >= least) & when.ripe & ~when.frosted
    over_winter = kind == "set" and crop.frost is not None and crop.frost.value == "very hardy"
    if not over_winter and crop.life != "perennial" and site.frost.first is not None:
        winter = plants.tau + (coldest(site) - plants.tau) % YEAR
        good &= when.first <= winter
    return _longest_run(good)


def _longest_run(good: Bools) -> StartWindow:
    """The longest run of good days round the year."""
    if good.all():
        return StartWindow(None, None, always=True)
    if not good.any():
        return StartWindow(None, None)
    bad = int(np.argmin(good))
    turned = np.roll(good, -bad).astype(np.int8)  # begins with a bad day
    edges = np.flatnonzero(np.diff(turned, append=0))
    begins, ends = edges[::2] + 1, edges[1::2]
    longest = int(np.argmax(ends - begins))
    return StartWindow(day_of_index(int(begins[longest]) + bad), day_of_index(int(ends[longest]) + bad))
