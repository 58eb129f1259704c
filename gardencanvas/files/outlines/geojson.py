"""Polygons of a GeoJSON text (RFC 7946): longitude and latitude, or plain metres where it says so."""

from __future__ import annotations

import json
from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass
from math import isfinite
from typing import Any

from gardencanvas.files.outlines.naming import name_from
from gardencanvas.files.outlines.outline import Drawn, Outline, gathered, judged
from gardencanvas.files.outlines.projection import local_m, on_plan
from gardencanvas.files.outlines.refusing import MAX_DEPTH, MAX_ELEMENTS, MAX_POINTS, OutlinesRefused, Why
from gardencanvas.garden.value import Point

Rings = tuple[tuple[Point, ...], ...]
_NO_AREA = {"Point", "MultiPoint", "LineString", "MultiLineString"}
# of the older "crs" (GeoJSON 2008, section 3): names of longitude and latitude on WGS 84
_DEGREES = ("crs84", "epsg::4326", "epsg:4326", "wgs84", "wgs 84")
_NAMES = ("name", "Name", "NAME", "title", "label", "bed", "ref", "id")


@dataclass(frozen=True, slots=True)
class Polygons:
    """Polygons in the numbers of the file.

    ``may_be_degrees`` says whether all could be longitude and latitude; ``says_metres`` that the file names
    a coordinate reference system other than WGS 84.
    """

    found: tuple[tuple[str | None, Rings], ...]
    passed: Counter[Why]
    may_be_degrees: bool
    says_metres: bool

    def drawn(self, *, degrees: bool, bearing_deg: float = 0.0) -> Drawn:
        """Outlines on the plan; raises ``OutlinesRefused``.

        Parameters
        ----------
        degrees
            Longitude and latitude; else metres to the east and north.
        bearing_deg
            Compass direction that the plan's top edge faces.
        """
        centre = _centre(self.found)

        def place(p: Point) -> Point:
            east, north = local_m(p, centre) if degrees else (p[0] - centre[0], p[1] - centre[1])
            return on_plan(east, north, bearing_deg)

        outlines: list[Outline] = []
        for name, rings in self.found:
            if not rings:
                continue
            on_ground = [[place(p) for p in ring] for ring in rings]
            outlines.append(judged(name, on_ground[0], on_ground[1:]))
        return gathered(outlines, self.passed)


def _centre(found: tuple[tuple[str | None, Rings], ...]) -> Point:
    """Middle of the box round all, longitudes counted from the first: the date line does not split it."""
    points = [p for _name, rings in found for p in rings[0]]
    if not points:
        return 0.0, 0.0
    first = points[0][0]
    wraps = all(abs(p[0]) <= 180 for p in points)
    xs = [((p[0] - first + 180) % 360 - 180) if wraps else p[0] - first for p in points]
    ys = [p[1] for p in points]
    return first + (min(xs) + max(xs)) / 2, (min(ys) + max(ys)) / 2


def polygons_of(data: bytes) -> Polygons:
    """The polygons that a GeoJSON text holds; raises ``OutlinesRefused``."""
    try:
        document = json.loads(data.decode("utf-8-sig"), parse_constant=_no_number)
    except (UnicodeDecodeError, ValueError) as error:
        raise OutlinesRefused(Why.DAMAGED) from error
    except RecursionError as error:
        raise OutlinesRefused(Why.TOO_DEEP) from error
    if not isinstance(document, dict) or "type" not in document:
        raise OutlinesRefused(Why.NOT_THAT_KIND)
    passed: Counter[Why] = Counter()
    found: list[tuple[str | None, Rings]] = []
    points = 0
    for name, rings in _polygons(document, passed):
        points += sum(map(len, rings))
        if points > MAX_POINTS:
            raise OutlinesRefused(Why.TOO_MANY, count=points, most=MAX_POINTS)
        found.append((name, rings))
    if not found:
        raise OutlinesRefused(Why.NO_OUTLINE, passed=passed.total())
    fits = all(abs(x) <= 180 and abs(y) <= 90 for _n, rings in found for ring in rings for x, y in ring)
    return Polygons(tuple(found), passed, fits, _says_metres(document))


def _no_number(word: str) -> Any:
    raise ValueError(f"{word} is no number")


def _says_metres(document: dict[str, Any]) -> bool:
    crs = document.get("crs")
    named = crs.get("properties") if isinstance(crs, dict) else None
    name = named.get("name") if isinstance(named, dict) else None
    return isinstance(name, str) and not any(word in name.lower() for word in _DEGREES)


def _polygons(document: dict[str, Any], passed: Counter[Why]) -> Iterator[tuple[str | None, Rings]]:
    """Every polygon with the name of its feature; what has no area is counted."""
    waiting: list[tuple[Any, str | None, int]] = [(document, None, 0)]
    seen = 0
    while waiting:
        thing, name, depth = waiting.pop()
        seen += 1
        if seen > MAX_ELEMENTS:
            raise OutlinesRefused(Why.TOO_MANY, count=seen, most=MAX_ELEMENTS)
        if depth > MAX_DEPTH:
            raise OutlinesRefused(Why.TOO_DEEP)
        kind = thing.get("type") if isinstance(thing, dict) else None
        if kind == "FeatureCollection":
            waiting += [(f, None, depth + 1) for f in reversed(_list(thing, "features"))]
        elif kind == "Feature":
            waiting.append((thing.get("geometry"), _named(thing), depth + 1))
        elif kind == "GeometryCollection":
            waiting += [(g, name, depth + 1) for g in reversed(_list(thing, "geometries"))]
        elif kind in {"Polygon", "MultiPolygon"}:
            parts = [thing.get("coordinates")] if kind == "Polygon" else _list(thing, "coordinates")
            for number, part in enumerate(parts, 1):
                numbered = f"{name} {number}" if name is not None and len(parts) > 1 else name
                yield numbered, _rings(part)
        else:
            passed[Why.NO_AREA if kind in _NO_AREA else Why.NOT_READ] += 1


def _list(thing: dict[str, Any], field: str) -> list[Any]:
    value = thing.get(field)
    if not isinstance(value, list):
        raise OutlinesRefused(Why.DAMAGED)
    return value


def _named(feature: dict[str, Any]) -> str | None:
    properties = feature.get("properties")
    known = properties if isinstance(properties, dict) else {}
    for value in (*(known.get(key) for key in _NAMES), feature.get("id")):
        if (name := name_from(value)) is not None:
            return name
    return None


def _rings(polygon: Any) -> Rings:
    if not isinstance(polygon, list) or not polygon:
        raise OutlinesRefused(Why.DAMAGED)
    return tuple(_ring(ring) for ring in polygon)


def _ring(ring: Any) -> tuple[Point, ...]:
    if not isinstance(ring, list):
        raise OutlinesRefused(Why.DAMAGED)
    return tuple(_position(p) for p in ring)


def _position(position: Any) -> Point:
    """The first two numbers; a height may follow (RFC 7946, 3.1.1)."""
    if not isinstance(position, list) or len(position) < 2:
        raise OutlinesRefused(Why.DAMAGED)
    x, y = position[0], position[1]
    for number in (x, y):
        if isinstance(number, bool) or not isinstance(number, int | float):
            raise OutlinesRefused(Why.DAMAGED)
    try:
        x, y = float(x), float(y)
    except OverflowError as error:
        raise OutlinesRefused(Why.DAMAGED) from error
    if not (isfinite(x) and isfinite(y)):
        raise OutlinesRefused(Why.DAMAGED)
    return x, y
