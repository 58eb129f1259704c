"""Closed figures from SVG: areas in closed form, places as another reader finds them, bombs refused."""

from contextlib import suppress
from math import pi, sqrt

import numpy as np
import pytest
import svgelements
from hypothesis import given
from hypothesis import strategies as st
from shapely import Polygon

from gardencanvas.files.outlines.curves import Arc, Cubic
from gardencanvas.files.outlines.outline import bed_of_outline
from gardencanvas.files.outlines.reading import read_outlines
from gardencanvas.files.outlines.refusing import MAX_FILE_BYTES, OutlinesRefused, Why
from gardencanvas.files.outlines.svg import CURVE_M, drawing_of
from gardencanvas.files.outlines.svg_path import BadPath, arc_between, subpaths
from gardencanvas.files.outlines.svg_shapes import transform
from gardencanvas.words import outlines as words
from gardencanvas.words.plain import Measure


def svg(body, head='width="100mm" height="100mm" viewBox="0 0 100 100"', more=""):
    space = 'xmlns="http://www.w3.org/2000/svg" xmlns:inkscape="http://www.inkscape.org/namespaces/inkscape"'
    return f"<?xml version='1.0'?>{more}<svg {space} {head}>{body}</svg>".encode()


def only(body, width_m=10.0, **more):
    (one,) = drawing_of(svg(body, **more)).drawn(width_m).outlines
    return one


# areas in closed form; the outline is inscribed, so it lacks no more than the tolerance along its whole rim
AREAS = {
    "a rectangle": ('<rect x="5" y="7" width="40" height="20"/>', 10 * 5, 0.0),
    "a circle": ('<circle cx="50" cy="50" r="30"/>', pi * 25, 10 * pi),
    "an ellipse": ('<ellipse cx="50" cy="50" rx="40" ry="20"/>', pi * 5 * 2.5, 24.3),
    "rounded": ('<rect width="40" height="20" rx="4"/>', 50 - (4 - pi), 30),
    "a polygon": ('<polygon points="0,0 40,0 40,30"/>', 10 * 7.5 / 2, 0.0),
    "a closed polyline": ('<polyline points="0 0 40 0 40 30 0 0"/>', 10 * 7.5 / 2, 0.0),
    "a path": ('<path d="M0 0h40v20H0z"/>', 10 * 5, 0.0),
    "two half circles": ('<path d="M20 50 a30 30 0 0 1 60 0 a30 30 0 0 1 -60 0z"/>', pi * 25, 10 * pi),
    # under y = 4 x (1 - x), the parabola that a quadratic curve is: two thirds of the box round it
    "a parabola": ('<path d="M0 40 Q20 0 40 40 Z"/>', 10 * 5 * 2 / 3, 25),
    "turned": ('<rect width="30" height="30" transform="rotate(45 15 15)"/>', 50.0, 0.0),
    "skewed": ('<rect width="20" height="20" transform="skewX(45)"/>', 25.0, 0.0),
}


@pytest.mark.parametrize("name", AREAS)
def test_area(name):
    body, area, rim = AREAS[name]
    found = only(body)
    assert found.why is None
    assert 10.0 - 2 * CURVE_M <= found.sides_m[0] <= 10.0 + 1e-6
    assert found.area_m2 <= area + 1e-4
    assert found.area_m2 >= area - rim * CURVE_M - 1e-4


def test_no_chord_of_a_circle_is_farther_from_it_than_the_tolerance():
    """A chord of a circle of radius r is r - √(r² - (c/2)²) away from it at its middle."""
    ring = np.array(only('<circle cx="50" cy="50" r="30"/>').ring)
    chords = np.hypot(*(np.roll(ring, -1, axis=0) - ring).T)
    assert 5 - sqrt(25 - (chords.max() / 2) ** 2) <= CURVE_M * 1.001


curves = st.complex_numbers(max_magnitude=100, allow_nan=False, allow_infinity=False)


@given(curves, curves, curves, curves, st.sampled_from([0.01, 0.1, 1.0]))
def test_no_chord_of_a_bezier_curve_is_farther_from_it_than_the_tolerance(a, b, c, d, tolerance):
    curve = Cubic(a, b, c, d)
    corners = [a, *curve.corners(tolerance)]
    steps = len(corners) - 1
    for i in range(steps):
        for share in (0.25, 0.5, 0.75):
            away = curve.at((i + share) / steps) - (corners[i] * (1 - share) + corners[i + 1] * share)
            assert abs(away) <= tolerance * 1.001 + 1e-9


@given(
    curves, curves, st.floats(0.5, 50), st.floats(0.5, 50), st.floats(-180, 180), st.booleans(), st.booleans()
)
def test_arcs_as_an_independent_reader_computes_them(begin, end, rx, ry, turned, large, sweep):
    if abs(begin - end) < 0.1:
        return
    ours = arc_between(begin, rx, ry, turned, large=large, sweep=sweep, end=end)
    theirs = svgelements.Arc(begin, rx, ry, turned, large, sweep, end)
    assert isinstance(ours, Arc)
    size = max(abs(begin), abs(end), rx, ry)
    for t in (0.0, 0.3, 0.7, 1.0):
        p = theirs.point(t)
        assert ours.at(t) == pytest.approx(complex(p.x, p.y), abs=1e-3 * size)


PATHS = [
    "M10,20 30-40.5.5 60 1e1 5z",
    "m 5 5 10 0 0 10 -10 0 z m 20 0 l 5 0 0 5 z",
    "M0 0C10 0 20 10 20 20S30 40 40 40L0 40Z",
    "M0 0q10 0 10 10t10 10L0 20z",
    "M10 10A5 9 30 1 0 30 20a4 4 0 0110-3L10 10",
    "M0,0H10V10h-5v-5H0z",
]


@pytest.mark.parametrize("data", PATHS)
def test_path_data_as_an_independent_reader_understands_it(data):
    ours = [piece for loop in subpaths(data) for piece in loop.pieces]
    theirs = [s for s in svgelements.Path(data) if not isinstance(s, svgelements.Move)]
    theirs = [s for s in theirs if s.start != s.end]
    assert len(ours) == len(theirs)
    for mine, other in zip(ours, theirs, strict=True):
        assert mine.end == pytest.approx(complex(other.end.x, other.end.y))
        half = other.point(0.5)
        middle = mine.at(0.5) if isinstance(mine, Arc | Cubic) else (mine.begin + mine.end) / 2
        assert middle == pytest.approx(complex(half.x, half.y), abs=1e-6)


@pytest.mark.parametrize(
    "data", ["L0 0", "M0", "M0 0 L1 x", "M0 0 A1 1 0 2 0 3 3", "M0 0 Q1", "MM", "hello", "M1e99 0"]
)
def test_what_is_no_path_data_is_refused(data):
    with pytest.raises(BadPath):
        subpaths(data)


TRANSFORMS = [
    "translate(10,20)", "translate(5)", "scale(2 3)", "scale(-1)", "rotate(30)", "rotate(30, 5 6)",
    "skewX(20) skewY(-10)", "matrix(1 2 3 4 5 6)", "translate(5,5),rotate(45)  scale(.5)",
]  # fmt: skip


@pytest.mark.parametrize("text", TRANSFORMS)
def test_transforms_as_an_independent_reader_understands_them(text):
    ours, theirs = transform(text), svgelements.Matrix(text)
    for p in (0j, 1 + 0j, 3 - 7j):
        there = theirs.point_in_matrix_space((p.real, p.imag))
        assert ours.point(p) == pytest.approx(complex(there.x, there.y), abs=1e-6)


DRAWING = """
<g transform="translate(10 5) scale(1.5)"><rect id="Herbs" x="1" y="2" width="10" height="6"/>
<g transform="rotate(20)"><path id="Long-bed" d="M20 0h15v4h-15z"/></g></g>
<circle id="Round" cx="70" cy="60" r="8" transform="translate(2 3) rotate(10)"/>
<svg width="30" height="20" viewBox="0 0 60 60"><rect id="Inner" y="90" width="30" height="30"/></svg>
"""


def test_a_whole_drawing_lies_where_an_independent_reader_puts_it(tmp_path):
    path = tmp_path / "plot.svg"
    path.write_bytes(svg(DRAWING))
    ours = read_outlines(path)
    theirs = {}
    for e in svgelements.SVG.parse(str(path)).elements():
        if isinstance(e, svgelements.Shape):
            theirs[e.id] = svgelements.Path(e).bbox()
    x0 = min(b[0] for b in theirs.values())
    y0 = min(b[1] for b in theirs.values())
    wide = max(b[2] for b in theirs.values()) - x0
    drawn = ours.drawn(20.0)
    assert len(drawn.outlines) == len(theirs) == 4
    for one in drawn.outlines:
        box = [one.ring[0][i] for i in (0, 1)]
        xs, ys = zip(*one.ring, strict=True)
        box = (min(xs), min(ys), max(xs), max(ys))
        b = theirs[one.name]
        there = [(b[0] - x0), (b[1] - y0), (b[2] - x0), (b[3] - y0)]
        assert box == pytest.approx([v * 20 / wide for v in there], abs=2 * CURVE_M)


def test_a_sheared_circle_is_the_ellipse_that_it_is():
    """Half the width of ``M`` on a unit circle is the length of the first row of ``M``; area π |det M|."""
    body = '<circle r="8" transform="matrix(1 0.2 -0.1 0.9 2 3)"/>'
    wide, high = 8 * sqrt(1 + 0.1**2), 8 * sqrt(0.2**2 + 0.9**2)
    found = only(body, width_m=2 * wide)
    assert found.sides_m == pytest.approx((2 * wide, 2 * high), abs=2 * CURVE_M)
    assert found.area_m2 == pytest.approx(pi * 64 * (0.9 + 0.02), rel=2e-3)


@pytest.mark.parametrize(
    ("how", "left", "top"),
    [
        ("", 5 + 5, 60),
        ("xMinYMin", 5, 60),
        ("xMaxYMid", 5 + 10, 60),
        ("none", 5, 60),
        ("xMidYMax slice", 5, 50),
    ],
)
def test_a_drawing_within_a_drawing(how, left, top):
    """SVG 1.1, 7.8: a box of 60 × 60 in a viewport of 30 × 20 shrinks to a third (sliced: a half)."""
    inner = f'<svg x="5" y="60" width="30" height="20" viewBox="0 0 60 60" preserveAspectRatio="{how}">'
    inner = inner.replace(' preserveAspectRatio=""', "")
    body = f'<rect width="100" height="9"/>{inner}<rect width="30" height="30"/></svg>'
    ring = drawing_of(svg(body)).drawn(100.0).outlines[1].ring
    wide, high = (15, 10) if how == "none" else (15, 15) if "slice" in how else (10, 10)
    xs, ys = zip(*ring, strict=True)
    assert (min(xs), min(ys)) == pytest.approx((left, top))
    assert (max(xs) - min(xs), max(ys) - min(ys)) == pytest.approx((wide, high))


def test_width_on_paper_and_units():
    """40 of 100 units on 100 mm are 40 mm; 4 of 8 on 4 inches are 2 inches; px give no width on paper."""
    assert drawing_of(svg('<rect width="40" height="9"/>')).paper_width_m == pytest.approx(0.040)
    inches = 'width="4in" height="4in" viewBox="0 0 8 8"'
    assert drawing_of(svg('<rect width="4" height="1"/>', inches)).paper_width_m == pytest.approx(0.0508)
    assert drawing_of(svg('<rect width="4cm" height="1cm"/>', "")).paper_width_m is None
    # wider than high by the viewport alone: the drawing keeps its proportions unless it says otherwise
    for how, sides in (("", (10, 10)), ('preserveAspectRatio="none"', (10, 5))):
        head = f'width="200" height="100" viewBox="0 0 10 10" {how}'
        assert only('<rect width="4" height="4"/>', head=head).sides_m == pytest.approx(sides)


def test_holes_by_the_fill_rule():
    inner_same = "M0 0h40v40h-40z M10 10h20v20h-20z"
    inner_back = "M0 0h40v40h-40z M10 10v20h20v-20z"
    for body, holes in (
        (f'<path d="{inner_same}" fill-rule="evenodd"/>', 1),
        (f'<path d="{inner_same}"/>', 0),
        (f'<path d="{inner_back}"/>', 1),
        (f'<g style="fill-rule:evenodd"><path d="{inner_same}"/></g>', 1),
    ):
        assert len(only(body).holes) == holes
    assert only(f'<path d="{inner_back}"/>').area_m2 == pytest.approx(100 - 25)


def test_an_island_in_a_hole_and_two_parts_are_beds_of_their_own():
    path = "M0 0h40v40h-40z M5 5h30v30h-30z M10 10h20v20h-20z M50 0h9v9h-9z"
    body = f'<path id="Spiral" fill-rule="evenodd" d="{path}"/>'
    outlines = drawing_of(svg(body)).drawn(59.0).outlines
    assert sorted(round(o.area_m2) for o in outlines) == [81, 400, 1600 - 900]
    assert {o.name for o in outlines} == {"Spiral 1", "Spiral 2", "Spiral 3"}


def test_names_and_what_is_hidden_or_passed_over():
    body = """
    <defs><rect width="9" height="9"/></defs>
    <rect id="rect1234" inkscape:label="Warm bed" width="9" height="9"/>
    <rect id="path12-3-4" x="20" width="9" height="9"><title>Wall &amp; bed</title></rect>
    <rect id="rect5" x="40" width="9" height="9"/>
    <g style="display:none"><rect x="60" width="9" height="9"/></g>
    <path d="M0 50 L50 50 L50 60"/><use href="#rect5"/><text>beds</text>"""
    found = drawing_of(svg(body))
    assert [f.name for f in found.figures] == ["Warm bed", "Wall & bed", None]
    assert found.passed == {Why.OPEN: 1, Why.NOT_READ: 2}
    assert "1 open line was left out." in words.passed_over(found.passed)


def test_a_figure_that_crosses_itself_says_so_and_the_others_come_in():
    body = """<path d="M0 0L40 40L40 0L0 40z"/><path d="M0 50h20v20h-20z M10 60h20v20h-20z"/>
    <rect x="60" width="9" height="9"/>"""
    assert [o.why for o in drawing_of(svg(body)).drawn(10).outlines] == [Why.CROSSES, Why.CROSSES, None]


BOMB = "<!DOCTYPE svg [<!ENTITY a 'ha'>" + "".join(
    f"<!ENTITY {chr(98 + i)} '{f'&{chr(97 + i)};' * 10}'>" for i in range(9)
) + "]>"  # fmt: skip
HOSTILE = {
    "entities upon entities": (svg("<title>&j;</title>", more=BOMB), Why.ENTITIES),
    "a file named": (
        svg("<title>&x;</title>", more="<!DOCTYPE svg [<!ENTITY x SYSTEM 'file:///etc/passwd'>]>"),
        Why.ENTITIES,
    ),
    "a parameter entity": (
        svg("", more="<!DOCTYPE svg [<!ENTITY % x SYSTEM 'http://127.0.0.1/x'> %x;]>"),
        Why.ENTITIES,
    ),
    "empty": (b"", Why.DAMAGED),
    "cut short": (svg('<rect width="9" height="9"/>')[:-9], Why.DAMAGED),
    "an unknown encoding": (b"<?xml version='1.0' encoding='nonsense'?><svg/>", Why.DAMAGED),
    "a web page": (b"<html><body/></html>", Why.NOT_THAT_KIND),
    "nothing closed": (svg('<path d="M0 0L5 5"/>'), Why.NO_OUTLINE),
    "deep": (svg("<g>" * 200 + "</g>" * 200), Why.TOO_DEEP),
    "many elements": (svg("<a/>" * 100_001), Why.TOO_MANY),
    "many figures": (svg('<rect width="9" height="9"/>' * 501), Why.TOO_MANY),
    "many rings": (svg('<path d="' + "M0 0h1v1z" * 61 + '"/>'), Why.TOO_MANY),
    "no size": (svg('<path d="M0 0L0 0Z"/>'), Why.NO_OUTLINE),
    "transforms without end": (
        svg("<g transform='scale(1e9)'>" * 90 + '<rect width="9" height="9"/>' + "</g>" * 90),
        Why.NO_OUTLINE,
    ),
}


@pytest.mark.parametrize("name", HOSTILE)
def test_a_hostile_drawing_is_refused_with_a_sentence(name):
    data, why = HOSTILE[name]
    with pytest.raises(OutlinesRefused) as refused:
        drawing_of(data).drawn(10.0)
    assert refused.value.why is why
    said = words.refused(refused.value, "plot.svg", Measure())
    assert said.startswith("plot.svg")
    assert said.endswith(".")


def test_a_document_type_without_entities_is_read_and_nothing_is_fetched():
    more = (
        '<!DOCTYPE svg PUBLIC "-//W3C//DTD SVG 1.1//EN" "http://www.w3.org/Graphics/SVG/1.1/DTD/svg11.dtd">'
    )
    assert len(drawing_of(svg('<rect width="9" height="9"/>', more=more)).figures) == 1


def test_a_file_too_long_a_folder_and_none_are_refused(tmp_path):
    path = tmp_path / "plot.svg"
    with path.open("wb") as file:
        file.truncate(MAX_FILE_BYTES + 1)
    for found, why in (
        (path, Why.TOO_LONG),
        (tmp_path, Why.UNREADABLE),
        (tmp_path / "none.svg", Why.UNREADABLE),
    ):
        with pytest.raises(OutlinesRefused) as refused:
            read_outlines(found)
        assert refused.value.why is why


attributes = st.dictionaries(
    st.sampled_from(
        ["d", "points", "x", "width", "height", "r", "rx", "ry", "transform", "viewBox", "style"]
    ),
    st.text(alphabet="MLHVCSQTAZmz0123456789.,-+e ()%matrixscale;:dpyn", max_size=25),
    max_size=6,
)


@given(
    st.lists(
        st.tuples(st.sampled_from(["path", "polygon", "rect", "circle", "ellipse", "g", "svg"]), attributes)
    )
)
def test_any_drawing_is_read_or_refused(elements):
    body = "".join(
        f"<{kind} " + " ".join(f'{k}="{v}"' for k, v in some.items()) + "/>" for kind, some in elements
    )
    with suppress(OutlinesRefused):
        for one in drawing_of(svg(body + '<rect width="9" height="9"/>')).drawn(10.0).outlines:
            if one.why is None:
                assert Polygon(one.ring, one.holes).is_valid
                bed_of_outline(one, "Bed")


@given(st.binary(max_size=80))
def test_any_bytes_are_read_or_refused(data):
    with suppress(OutlinesRefused):
        drawing_of(svg("")[:150] + data)
