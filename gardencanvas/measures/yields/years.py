"""A layout in an average year, and in a cold and a warm one, one in ten each."""

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from gardencanvas.crops.catalogue import Catalogue
from gardencanvas.fit.beside import vault
from gardencanvas.fit.standing import Standing
from gardencanvas.fit.stands import Stand
from gardencanvas.garden.edits import rebuilt
from gardencanvas.garden.garden import Layout
from gardencanvas.garden.site import Site
from gardencanvas.measures.yields.bedful import Bedful, bedfuls
from gardencanvas.measures.yields.mingling import local_density
from gardencanvas.measures.yields.relative import Shared, shared
from gardencanvas.season.departing import departure_c

Floats = NDArray[np.float64]
Stands = dict[str, tuple[Stand, ...]]

GROWING_D = 100  # days over which a year's weather is taken as a mean: a vegetable's time in the bed


@dataclass(frozen=True, eq=False)
class Year:
    """One year of a layout: its beds with their stands, and how these share the light."""

    stands: Stands
    beds: tuple[Bedful, ...]
    shared: tuple[Shared, ...]


@dataclass(frozen=True, eq=False)
class Years:
    """The same beds and stands, in the same order, in three years."""

    cold: Year
    usual: Year
    warm: Year

    @property
    def all(self) -> tuple[Year, Year, Year]:
        """Cold, usual, warm."""
        return self.cold, self.usual, self.warm


class Growing:
    """Grows layouts of one site; what did not change since the last one is kept."""

    def __init__(self, crops: Catalogue, site: Site, layout: Layout) -> None:
        by = departure_c(GROWING_D)
        self.crops, self.site = crops, site
        self._over = vault(site)
        self._standing = [Standing(crops, _departed(site, d), layout) for d in (-by, 0.0, by)]

    def serves(self, crops: Catalogue, site: Site, layout: Layout) -> bool:
        """Whether it may grow that layout."""
        return crops is self.crops and site is self.site and self._standing[1].serves(site, layout)

    def years(self, layout: Layout) -> Years:
        """A layout in all three years; who stands near whom is the same in each."""
        cold, usual, warm = (s.of(layout) for s in self._standing)
        beds = bedfuls(layout, usual)
        near = [local_density(b) for b in beds]
        return Years(
            self._year(cold, bedfuls(layout, cold), near),
            self._year(usual, beds, near),
            self._year(warm, bedfuls(layout, warm), near),
        )

    def _year(self, stands: Stands, beds: tuple[Bedful, ...], near: Sequence[Floats]) -> Year:
        light = (shared(b, self._over, n) for b, n in zip(beds, near, strict=True))
        return Year(stands, beds, tuple(light))


def _departed(site: Site, by: float) -> Site:
    """The site in a year that is some °C warmer all through; its frost dates stay."""
    if by == 0.0:
        return site
    old = site.climate
    climate = rebuilt(
        old,
        mean_c=_warmer(old.mean_c, by),
        min_c=None if old.min_c is None else _warmer(old.min_c, by),
        max_c=None if old.max_c is None else _warmer(old.max_c, by),
    )
    return rebuilt(site, climate=climate)


def _warmer(months: tuple[float, ...], by: float) -> tuple[float, ...]:
    return tuple(m + by for m in months)
