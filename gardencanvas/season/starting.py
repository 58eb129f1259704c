"""From when and until when a crop can be sown, planted out or set, in an average year."""

from dataclasses import dataclass
from datetime import date, timedelta
from typing import Literal

import numpy as np
from numpy.typing import NDArray

from gardencanvas.crops.model import Crop, Quantity
from gardencanvas.garden.planting import Start
from gardencanvas.garden.site import DayOfYear, Site
from gardencanvas.season.batch import batch
from gardencanvas.season.course import Growing, Weeks
from gardencanvas.season.covers import WARMER_C
from gardencanvas.season.dayofyear import YEAR, climate_days, day_of_index
from gardencanvas.season.ripening import coldest, ripening
from gardencanvas.season.warmth import mean_curve

Bools = NDArray[np.bool_]

_YEAR = date(2001, 1, 1)  # any common year
# By day a seed bed in the sun is warmer than the day's mean air: common practice sows beans, whose seed wants
# 15 °C, where the mean is 12 to 13 °C.
SEEDBED_C = 3.0


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

    It is warm enough: for a seed to germinate, for a plant to grow. It shows after the typical last killing
    frost, and its first harvest comes before the typical first one, or, for crops no frost kills, before the
    coldest day of the year; very hardy ones that are set may stand over winter.
    """
    days = [_YEAR + timedelta(days=d) for d in range(YEAR)]
    plantings = [Growing(crop, Start(kind=kind, on=on), None, supported, warmed) for on in days]
    plants = batch(site, plantings)
    # A tender perennial lives but one summer where there is frost: it must ripen in its first year.
    tender = crop.frost is not None and crop.frost.value == "tender"
    when = ripening(site, plants, Weeks(_YEAR, 53 if tender else 157))
    good = _warm(site, crop, kind, plants.needs[0].warmer_c) & when.ripe & ~when.frosted
    over_winter = kind == "set" and crop.frost is not None and crop.frost.value == "very hardy"
    if not over_winter and crop.life != "perennial" and site.frost.first is not None:
        winter = plants.tau + (coldest(site) - plants.tau) % YEAR
        good &= when.first <= winter
    return _longest_run(good)


def least_warmth(crop: Crop, kind: str) -> Quantity:
    """The daily mean, °C, from which a seed germinates, or a plant that is set or planted out grows."""
    if kind == "sown" and crop.germination_min_c is not None:
        return crop.germination_min_c
    if crop.base_temperature_c is None:
        raise ValueError(f"crop {crop.id!r} has no base_temperature_c; complete it first")
    return crop.base_temperature_c


def _warm(site: Site, crop: Crop, kind: str, warmer_c: float) -> Bools:
    """On which days of an average year it is warm enough to start a crop, shape (365,)."""
    bed = SEEDBED_C if kind == "sown" and crop.germination_min_c is not None else 0.0
    warm: Bools = mean_curve(site.climate) + warmer_c + bed >= least_warmth(crop, kind).mid
    return warm


def cold_days(site: Site, growing: Growing) -> int:
    """Days after its start until an average year is warm enough for it; 0 where it is on the first day.

    A whole year where no day is.
    """
    warm = _warm(site, growing.crop, growing.start.kind, WARMER_C.mid if growing.warmed else 0.0)
    start = int(climate_days(np.array([growing.start.on], dtype="datetime64[D]"))[0]) % YEAR
    return int(np.roll(warm, -start).argmax()) if warm.any() else YEAR


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
