"""The offline list of places: where they lie and their monthly climate.

Places, names, coordinates and populations are GeoNames' (CC BY 4.0), monthly means and rain come from the
ERA5 reanalysis of the Copernicus Climate Change Service, elevations from open terrain models; all credits
are in ``resources/places/LICENCE.md``. The list is loaded when a place is first looked for.
"""

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from functools import cache, cached_property
from itertools import islice
from pathlib import Path

import numpy as np
from numpy.typing import NDArray

from gardencanvas.garden.site import Climate
from gardencanvas.resources_folder import resources
from gardencanvas.season.frost import Estimate, estimate
from gardencanvas.season.placenames import Names, fold

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]
Mask = NDArray[np.bool_]

LONGEST_QUERY = 200  # characters: no name is nearly as long
LONGEST_REGION = 4  # words or parts between commas
EARTH_RADIUS_KM = 6371.0088  # mean radius, IUGG 1980
SOURCE = (
    "ERA5 2000–2025 near {0}, means and rain only. Contains modified Copernicus Climate Change Service "
    "information."
)


@dataclass(frozen=True, slots=True)
class Place:
    """A town of the list.

    ``region`` is the state within the United States and empty elsewhere; ``elevation_m`` comes from a terrain
    model of 28 m steps and may be 100 m out.
    """

    number: int
    name: str
    region: str
    country: str
    latitude_deg: float
    longitude_deg: float
    elevation_m: float
    population: int

    @property
    def label(self) -> str:
        """Name, state and country, as in ``Springfield, Missouri, United States``."""
        return ", ".join(filter(None, (self.name, self.region, self.country)))


class Places:
    """All places of one list.

    Parameters
    ----------
    path
        The packed list, as written by ``packaging/make_places.py``.
    """

    def __init__(self, path: Path) -> None:
        self._path = path
        with np.load(path, allow_pickle=False) as packed:
            names = packed["names"].tobytes()
            others = packed["others"].tobytes()
            self._shown = packed["shown"].tobytes().decode().split("\n")
            self._countries = _regions(packed["countries"].tobytes())
            self._states = _regions(packed["states"].tobytes())
            self._country, self._state = packed["country"], packed["state"]
            self._latitude = packed["latitude"] / 100.0
            self._longitude = packed["longitude"] / 100.0
            self._elevation, self._population = packed["elevation"], packed["population"]
        self._folded = names.decode().split("\n")
        self._names, self._others = Names(names), Names(others)
        self._rank = np.empty(len(self), dtype=np.int64)
        self._rank[np.argsort(-self._population, kind="stable")] = np.arange(len(self))

    def __len__(self) -> int:
        return len(self._folded)

    def place(self, number: int) -> Place:
        """The place with that number, from 0."""
        return Place(
            number,
            self._shown[number] or self._folded[number].title(),
            self._states[self._state[number]].name,
            self._countries[self._country[number]].name,
            float(self._latitude[number]),
            float(self._longitude[number]),
            float(self._elevation[number]),
            int(self._population[number]),
        )

    def search(self, text: str, limit: int = 20) -> list[Place]:
        """Places for what is typed so far, the likeliest first.

        A whole name comes before a word's beginning, that before letters within a word, that before one
        slip of the finger; its common name before names in other languages; then the larger town. What
        follows a comma, or the last words if nothing is called so, names the country or the state; after two
        commas both.
        """
        typed = text[:LONGEST_QUERY]
        name, *regions = (fold(part) for part in typed.split(","))
        allowed = np.ones(len(self), dtype=np.bool_)
        for region in filter(None, regions[:LONGEST_REGION]):
            allowed &= self._in(region)
        found = self._named(name, allowed, limit)
        words = fold(typed).split()
        for tail in range(1, min(LONGEST_REGION + 1, len(words))):
            if found:
                break
            found = self._named(" ".join(words[:-tail]), self._in(" ".join(words[-tail:])), limit)
        return [self.place(number) for number in found]

    def nearest(self, latitude_deg: float, longitude_deg: float) -> tuple[Place, float]:
        """The place nearest to a point, and its distance in kilometres (haversine on a sphere)."""
        lat, lon = np.radians(latitude_deg), np.radians(longitude_deg)
        lats, lons = np.radians(self._latitude), np.radians(self._longitude)
        half = np.sin((lats - lat) / 2) ** 2 + np.cos(lat) * np.cos(lats) * np.sin((lons - lon) / 2) ** 2
        number = int(np.argmin(half))
        return self.place(number), float(2 * EARTH_RADIUS_KM * np.arcsin(np.sqrt(half[number])))

    def climate_of(self, place: Place) -> Climate:
        """Monthly means and rain there; the list knows no daily range."""
        mean_c, rain_mm = self._months
        return Climate(
            mean_c=tuple((mean_c[place.number] / 10.0).tolist()),
            rain_mm=tuple(rain_mm[place.number].astype(np.float64).tolist()),
            source=SOURCE.format(place.name),
        )

    def frost_of(self, place: Place) -> Estimate:
        """Rough frost dates from the monthly means: simulated daily minima, a guessed daily range."""
        return estimate(self.climate_of(place))

    @cached_property
    def _months(self) -> tuple[Ints, Ints]:
        """Means in tenths of °C and rain in mm, shape (places, 12); unpacked when first asked for."""
        with np.load(self._path, allow_pickle=False) as packed:
            return unpacked(packed["mean_dc"]), unpacked(packed["rain_mm"])

    def _named(self, query: str, allowed: Mask, limit: int) -> list[int]:
        if not query or not allowed.any():
            return []
        return list(islice(self._ranked(query.encode(), allowed.copy()), limit))

    def _ranked(self, query: bytes, left: Mask) -> Iterator[int]:
        """Numbers of places, best tier first; a tier is only computed when the ones before ran out."""
        names, others = self._names, self._others
        slips = cache(lambda: (names.slipped(query), others.slipped(query)))
        tiers: tuple[Callable[[], Ints], ...] = (
            lambda: names.whole(query),
            lambda: np.union1d(names.beginning(query), others.whole(query)),
            lambda: others.beginning(query),
            lambda: names.within(query),
            lambda: others.within(query),
            lambda: slips()[0][0],
            lambda: slips()[1][0],
            lambda: np.union1d(slips()[0][1], slips()[1][1]),
        )
        for tier in tiers:
            found = tier()
            found = found[left[found]]
            left[found] = False
            yield from found[np.argsort(self._rank[found])].tolist()

    def _in(self, region: str) -> Mask:
        """Places whose country or state has that code, or a word that begins with the folded text."""
        countries = np.array([each.called(region) for each in self._countries])
        states = np.array([each.called(region) for each in self._states])
        return np.asarray(countries[self._country] | states[self._state])


@dataclass(frozen=True, slots=True)
class _Region:
    """A country or state: folded codes, name, folded name."""

    codes: tuple[str, ...]
    name: str
    folded: str

    def called(self, folded: str) -> bool:
        return folded in self.codes or f" {self.folded}".find(f" {folded}") >= 0


def _regions(text: bytes) -> list[_Region]:
    """Regions from lines of codes and a name, parted by tabs."""
    parts = [line.split("\t") for line in text.decode().split("\n")]
    return [_Region(tuple(fold(code) for code in codes), name, fold(name)) for *codes, name in parts]


def packed(months: Ints) -> NDArray[np.int16]:
    """Differences along places and months, which pack far tighter than the values; shape (places, 12)."""
    return np.diff(np.diff(months, axis=0, prepend=0), axis=1, prepend=0).astype(np.int16)


def unpacked(differences: NDArray[np.int16]) -> Ints:
    """The values of which ``packed`` took the differences."""
    return np.asarray(differences.astype(np.int64).cumsum(axis=1).cumsum(axis=0))


@cache
def places() -> Places:
    """The shipped list, loaded once."""
    return Places(resources() / "places" / "places.npz")
