"""Polygons from GeoJSON: areas and places against shapely and published geodesy, hostile texts refused."""

import json
from contextlib import suppress
from math import hypot

import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st

from gardencanvas.files.outlines.geojson import polygons_of
from gardencanvas.files.outlines.outline import bed_of_outline
from gardencanvas.files.outlines.projection import local_m, on_plan, radii_m
from gardencanvas.files.outlines.refusing import OutlinesRefused, Why
from gardencanvas.words import outlines as words
from gardencanvas.words.plain import Measure

RING = [[5.0, 52.0], [5.0004, 52.0001], [5.00035, 52.0003], [4.9999, 52.00025], [5.0, 52.0]]


def text(thing):
    return json.dumps(thing).encode()


def feature(rings, **properties):
    return {
        "type": "Feature",
        "properties": properties,
        "geometry": {"type": "Polygon", "coordinates": rings},
    }


def collection(*features, **more):
    return {"type": "FeatureCollection", "features": list(features), **more}


# Length of a thousandth of a degree of longitude and of latitude on WGS 84, metres: geodesics of Karney 2013
# (J. Geodesy 87:43) as pyproj 3.7.2 gives them; to the centimetre also in the table "length of a degree" of
# the American Practical Navigator.
DEGREES = [
    (0.0, 111.319491, 110.574276),
    (30.0, 96.486280, 110.852442),
    (45.0, 78.846835, 111.131777),
    (52.0, 68.678016, 111.267353),
    (60.0, 55.800002, 111.412287),
    (-41.5, 83.496169, 111.063585),
]


@pytest.mark.parametrize(("latitude", "east", "north"), DEGREES)
def test_a_thousandth_of_a_degree(latitude, east, north):
    x, _ = local_m((7.001, latitude), (7.0, latitude))
    _, y = local_m((7.0, latitude + 0.0005), (7.0, latitude))
    assert x == pytest.approx(east, abs=1e-4)
    assert 2 * y == pytest.approx(north, abs=1e-3)


def test_the_meridian_quadrant():
    """Summed up from the equator to the pole: 10 001 965.729 m on WGS 84 (NIMA TR8350.2)."""
    steps = 9000
    metres = sum(radii_m(90 * (i + 0.5) / steps)[0] for i in range(steps)) * (3.141592653589793 / 2) / steps
    assert metres == pytest.approx(10_001_965.729, abs=0.05)


# Azimuthal equidistant about 5° E, 52° N on WGS 84 (PROJ 9 through pyproj 3.7.2): metres east and north
NEAR = [((5.0004, 52.0003), (27.4710, 33.3803)), ((4.9993, 51.9996), (-48.0750, -44.5067))]
FAR = [((5.007, 52.004), (480.7033, 445.0927))]


@pytest.mark.parametrize(("position", "metres"), NEAR)
def test_within_a_garden_it_is_right_to_a_millimetre_or_so(position, metres):
    assert local_m(position, (5.0, 52.0)) == pytest.approx(metres, abs=1.5e-3)


@pytest.mark.parametrize(("position", "metres"), FAR)
def test_half_a_kilometre_away_it_is_right_to_decimetres(position, metres):
    assert local_m(position, (5.0, 52.0)) == pytest.approx(metres, abs=0.2)


def test_area_of_a_bed_on_the_ellipsoid():
    """773.7113 m²: the geodesic polygon of pyproj 3.7.2 (GeographicLib)."""
    (one,) = polygons_of(text(feature([RING]))).drawn(degrees=True).outlines
    assert one.area_m2 == pytest.approx(773.7113, rel=1e-5)
    assert one.why is None


def test_metres_and_holes_as_shapely_reads_them():
    rings = [[[0, 0], [6, 0], [6, 4], [0, 4], [0, 0]], [[1, 1], [2, 1], [2, 3], [1, 3], [1, 1]]]
    document = text({"type": "MultiPolygon", "coordinates": [rings, [[[8, 0], [9, 0], [9, 2], [8, 0]]]]})
    theirs = shapely.from_geojson(document.decode())
    ours = polygons_of(document).drawn(degrees=False)
    assert [o.area_m2 for o in ours.outlines] == pytest.approx([p.area for p in theirs.geoms])
    assert ours.sides_m == pytest.approx((9.0, 4.0))
    bed = bed_of_outline(ours.outlines[0], "Bed 1")
    assert len(bed.holes) == 1


def test_north_is_up_unless_the_plan_is_turned():
    """A tower of a polygon, 4 m to the north and 1 m to the east, on plans whose tops face N, E, S and W."""
    tower = polygons_of(text({"type": "Polygon", "coordinates": [[[0, 0], [1, 0], [1, 4], [0, 0]]]}))
    for bearing, sides, top in ((0, (1, 4), (1, 0)), (90, (4, 1), None), (180, (1, 4), (0, 4))):
        drawn = tower.drawn(degrees=False, bearing_deg=bearing)
        assert drawn.sides_m == pytest.approx(sides, abs=1e-6)
        if top is not None:
            assert drawn.outlines[0].ring[2] == pytest.approx(top, abs=1e-6)
    assert on_plan(1.0, 0.0, 90.0) == pytest.approx((0.0, -1.0), abs=1e-12)  # east is up


def test_across_the_date_line():
    ring = [
        [179.9999, -17.0],
        [-179.9999, -17.0],
        [-179.9999, -16.9999],
        [179.9999, -16.9999],
        [179.9999, -17.0],
    ]
    drawn = polygons_of(text(feature([ring]))).drawn(degrees=True)
    # 0.0002° of longitude at 17° S: N cos φ in radians, with N from the ellipsoid
    assert drawn.sides_m[0] == pytest.approx(radii_m(-17.0)[1] * 0.9563048 * 0.0002 * 0.01745329, rel=1e-4)


@pytest.mark.parametrize(
    ("properties", "name"),
    [
        ({"name": "Rhubarb corner"}, "Rhubarb corner"),
        ({"title": "  two \n lines "}, "two lines"),
        ({"name": "", "label": "Herbs"}, "Herbs"),
        ({"name": "feature 12"}, None),
        ({"name": ["no", "name"]}, None),
        ({"other": "x"}, None),
        ({"name": "x" * 500}, "x" * 79 + "…"),
    ],
)
def test_names(properties, name):
    (found,) = polygons_of(text(feature([RING], **properties))).found
    assert found[0] == name


def test_a_crs_says_whether_numbers_are_metres():
    def crs(name):
        return {"crs": {"type": "name", "properties": {"name": name}}}

    utm = polygons_of(text(collection(feature([RING]), **crs("urn:ogc:def:crs:EPSG::25832"))))
    lonlat = polygons_of(text(collection(feature([RING]), **crs("urn:ogc:def:crs:OGC:1.3:CRS84"))))
    assert utm.says_metres
    assert not lonlat.says_metres
    far = polygons_of(text(feature([[[500_000, 5_700_000], [500_004, 5_700_000], [500_004, 5_700_003]]])))
    assert not far.may_be_degrees
    assert far.drawn(degrees=False).outlines[0].area_m2 == pytest.approx(6.0)


def test_what_has_no_area_is_counted():
    point = {"type": "Feature", "properties": None, "geometry": {"type": "Point", "coordinates": [5, 52]}}
    found = polygons_of(text(collection(feature([RING]), point, {"type": "Feature", "geometry": None})))
    assert found.passed == {Why.NO_AREA: 1, Why.NOT_READ: 1}
    assert "1 point or line was left out." in words.passed_over(found.passed)


def box(x, y, side):
    return [[x, y], [x + side, y], [x + side, y + side], [x, y + side], [x, y]]


@pytest.mark.parametrize(
    ("rings", "why"),
    [
        ([[[0, 0], [4, 4], [4, 0], [0, 4], [0, 0]]], Why.CROSSES),
        ([[[0, 0], [4, 4], [0, 0]]], Why.TOO_FEW_CORNERS),
        ([box(0, 0, 0.005)], Why.TOO_SMALL),
        ([box(0, 0, 2), box(1, 1, 3)], Why.HOLE_OUTSIDE),
        ([box(0, 0, 200), *[box(2 * i + 1, 1, 1) for i in range(51)]], Why.TOO_MANY_HOLES),
        (
            [[[i / 100, (i % 2) + (i > 0)] for i in range(2001)] + [[20, 9], [0, 9], [0, 0]]],
            Why.TOO_MANY_CORNERS,
        ),
    ],
)
def test_an_outline_that_is_no_bed_says_why_and_the_others_come_in(rings, why):
    drawn = polygons_of(text(collection(feature(rings), feature([box(300, 0, 2)])))).drawn(degrees=False)
    assert [o.why for o in drawn.outlines] == [why, None]
    assert words.fault(why) != words.fault(Why.NOT_READ)


HOSTILE = {
    "empty": (b"", Why.DAMAGED),
    "no text": (b"\xff\xfe\x00", Why.DAMAGED),
    "a list": (b"[1, 2]", Why.NOT_THAT_KIND),
    "another JSON": (b'{"a": 1}', Why.NOT_THAT_KIND),
    "not a number": (b'{"type": "Polygon", "coordinates": [[[NaN, 0], [1, 0], [1, 1]]]}', Why.DAMAGED),
    "a huge number": (b'{"type": "Polygon", "coordinates": [[[' + b"9" * 400 + b", 0]]]}", Why.DAMAGED),
    "text for a number": (b'{"type": "Polygon", "coordinates": [[["a", 0]]]}', Why.DAMAGED),
    "yes for a number": (b'{"type": "Polygon", "coordinates": [[[true, 0]]]}', Why.DAMAGED),
    "no coordinates": (b'{"type": "Polygon"}', Why.DAMAGED),
    "no features": (b'{"type": "FeatureCollection"}', Why.DAMAGED),
    "only a point": (b'{"type": "Point", "coordinates": [1, 2]}', Why.NO_OUTLINE),
    "deep": (b'{"type":"GeometryCollection","geometries":[' * 300 + b"]}" * 300, Why.TOO_DEEP),
    "deeper": (b"[" * 200_000, Why.TOO_DEEP),
    "many points": (text({"type": "Polygon", "coordinates": [[[0, 0]] * 200_001]}), Why.TOO_MANY),
}


@pytest.mark.parametrize("name", HOSTILE)
def test_a_hostile_text_is_refused_with_a_sentence(name):
    data, why = HOSTILE[name]
    with pytest.raises(OutlinesRefused) as refused:
        polygons_of(data)
    assert refused.value.why is why
    said = words.refused(refused.value, "plot.geojson", Measure())
    assert said.startswith("plot.geojson")
    assert said.endswith(".")


def test_too_many_outlines_and_too_wide_ones_are_refused():
    many = polygons_of(
        text(collection(*[feature([box(3 * (i % 30), 3 * (i // 30), 1)]) for i in range(501)]))
    )
    with pytest.raises(OutlinesRefused, match="too many"):
        many.drawn(degrees=False)
    wide = polygons_of(text(collection(feature([box(0, 0, 1)]), feature([box(1500, 0, 1)]))))
    with pytest.raises(OutlinesRefused) as refused:
        wide.drawn(degrees=False)
    assert "1501.00" in words.refused(refused.value, "plot.geojson", Measure())


numbers = st.floats(-1e3, 1e3) | st.integers(-5, 5) | st.just(None) | st.just("x")
jsons = st.recursive(numbers, lambda inner: st.lists(inner, max_size=5), max_leaves=20)


@given(jsons, st.sampled_from(["Polygon", "MultiPolygon", "Feature", "GeometryCollection", "Point", 5]))
def test_any_json_is_read_or_refused(inner, kind):
    document = {"type": kind, "coordinates": inner, "geometry": inner, "geometries": inner}
    with suppress(OutlinesRefused):
        found = polygons_of(text(document))
        for degrees in (False, True):
            for one in found.drawn(degrees=degrees).outlines:
                if one.why is None:
                    bed_of_outline(one, "Bed")


@given(st.binary(max_size=60))
def test_any_bytes_are_read_or_refused(data):
    with pytest.raises(OutlinesRefused):
        polygons_of(b'{"type": "Polygon", ' + data)


def test_distances_are_kept_in_the_plan():
    a, b = RING[0], RING[2]
    (one,) = polygons_of(text(feature([RING]))).drawn(degrees=True, bearing_deg=37.0).outlines
    east, north = local_m(tuple(b), tuple(a))
    (x0, y0), (x1, y1) = one.ring[0], one.ring[2]
    assert hypot(x1 - x0, y1 - y0) == pytest.approx(hypot(east, north), rel=1e-5)
