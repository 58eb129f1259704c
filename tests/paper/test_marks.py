"""What stays apart without colour: marks of plants and lines of verdicts, on the pixels of a home printer."""

from itertools import combinations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from PySide6.QtCore import Qt
from PySide6.QtGui import QImage, QPainter
from shapely import Polygon
from shapely import box as shapely_box

from gardencanvas.fit.report import Verdict
from gardencanvas.garden.pattern import Block, Rows
from gardencanvas.paper.bedmap import Options, bed_map
from gardencanvas.paper.bedmap.drawing import mark_size
from gardencanvas.paper.bedmap.ground import Window
from gardencanvas.paper.bedmap.labels import Label, Taken, put_label
from gardencanvas.paper.bedmap.marks import draw_mark
from gardencanvas.paper.bedmap.telling_apart import NEAR_M, told_apart
from gardencanvas.paper.bedmap.verdicts import draw_verdict, hatch
from gardencanvas.paper.document import Setup, paint_page
from gardencanvas.paper.sheet import Box, Sheet
from tests.garden.makers import row
from tests.paper.plans import demo

PRINTER = 300 / 25.4  # dots to a millimetre of a home printer


def grey(draw, wide_mm, high_mm, per_mm=PRINTER):
    """What is drawn, as darkness from 0 to 1, shape (rows, columns)."""
    image = QImage(round(wide_mm * per_mm), round(high_mm * per_mm), QImage.Format.Format_Grayscale8)
    image.fill(Qt.GlobalColor.white)
    painter = QPainter(image)
    draw(painter, per_mm)
    painter.end()
    pixels = np.frombuffer(image.constBits(), np.uint8).reshape(image.height(), image.bytesPerLine())
    return 1.0 - pixels[:, : image.width()] / 255.0


def mark(number, size=1.6):
    return grey(lambda painter, k: draw_mark(Sheet(painter, k, Box(0, 0, 4, 4)), number, 2, 2, size), 4, 4)


@pytest.mark.parametrize("size", [1.0, 1.6, 2.8])
def test_marks_of_ten_neighbouring_plantings_differ_in_grey_at_300_dots_to_an_inch(size):
    marks = [mark(n, size) for n in range(1, 11)]
    for a, b in combinations(range(10), 2):
        differing = np.abs(marks[a] - marks[b]) > 0.35
        ink = max((marks[a] > 0.5).sum(), (marks[b] > 0.5).sum())
        assert differing.sum() >= 0.15 * ink, (a + 1, b + 1)


def ground(verdict, wide, high):
    shape = Polygon([(1, 1), (1 + wide, 1), (1 + wide, 1 + high), (1, 1 + high)])
    return grey(lambda p, k: draw_verdict(Sheet(p, k, Box(0, 0, 60, 60)), verdict, shape), wide + 2, high + 2)


@pytest.mark.parametrize(("wide", "high"), [(40, 15), (30, 4), (8, 3.4)])
def test_any_two_verdicts_differ_in_grey(wide, high):
    """By more pixels than the thinner of the two takes, on large ground, a narrow row and the legend."""
    drawn = {v: ground(v, wide, high) for v in Verdict}
    for a, b in combinations(Verdict, 2):
        differing = (np.abs(drawn[a] - drawn[b]) > 0.35).sum()
        ink = min((drawn[a] > 0.5).sum(), (drawn[b] > 0.5).sum())
        assert differing >= 0.6 * ink, (a, b)


def test_what_is_worse_is_darker():
    """Worse strains the eye more: the share of ink on the same ground rises from shares to clashes."""
    inks = {v: ground(v, 40, 15).mean() for v in Verdict}
    assert inks[Verdict.CLEAR] < min(inks[v] for v in Verdict if v is not Verdict.CLEAR)
    assert inks[Verdict.CLASHES] == max(inks.values())


def test_hatching_stays_on_its_ground():
    shape = Polygon([(0, 0), (20, 0), (20, 5), (8, 5), (8, 12), (0, 12)])
    lines = list(hatch(shape, 1.4))
    assert len(lines) > 10
    for line in lines:
        for x, y in line:
            assert (
                shape.buffer(1e-6).covers(Polygon([(x, y), (x, y), (x, y)]).centroid)
                or shape.distance(Polygon([(x, y), (x + 1e-9, y), (x, y + 1e-9)])) < 1e-6
            )


@pytest.mark.parametrize("scale", [10, 25, 50, 100])
def test_marks_of_one_row_never_touch_where_that_can_be(scale):
    window = Window((0.0, 0.0), scale, Box(0, 0, 100, 100))
    for pattern in (
        Rows(length_m=3.0, rows=3, spacing_m=0.15, row_spacing_m=0.2),
        Block(length_m=1.0, width_m=1.0, spacing_m=0.2, staggered=True),
    ):
        planting = row(pattern=pattern)
        at = planting.stations * 1000 / scale
        nearest = min(np.hypot(*(at[1:] - at[0]).T))
        assert mark_size(planting, window) * 1.15 < max(nearest, 0.81)


def test_labels_of_twenty_plantings_in_a_small_place_are_all_apart():
    """Twenty grounds of 6 × 2 mm, too small for their labels: those go outside, none over another."""
    boxes = []

    def draw(painter, k):
        sheet = Sheet(painter, k, Box(0, 0, 100, 60))
        taken = Taken(np.empty((0, 2)), Box(0, 0, 100, 60))
        for i in range(20):
            x, y = 30 + (i % 4) * 7.0, 20 + (i // 4) * 2.2
            shape = Polygon([(x, y), (x + 6, y), (x + 6, y + 2), (x, y + 2)])
            put_label(sheet, Label(str(i + 1), "Lettuce"), shape, np.array([[x + 3, y + 1]]), taken)
        boxes.extend(taken.boxes)

    grey(draw, 100, 60)
    assert len(boxes) == 20
    for a, b in combinations(boxes, 2):
        assert not a.meets(b)


def test_the_preview_is_the_page_at_every_size():
    """A page drawn at 6 dots to a millimetre and one at 12, averaged by fours, are the same picture."""
    document = bed_map(demo(), Setup(), Options(overview=False))
    size = document.setup.size_mm

    def page(per_mm):
        return grey(lambda p, k: paint_page(document, 3, p, k), size.width(), size.height(), per_mm)

    small, large = page(6.0), page(12.0)
    rows, columns = min(small.shape[0], large.shape[0] // 2), min(small.shape[1], large.shape[1] // 2)
    halved = large[: 2 * rows, : 2 * columns].reshape(rows, 2, columns, 2).mean(axis=(1, 3))
    blurred = [_blurred(x) for x in (small[:rows, :columns], halved)]
    assert (np.abs(blurred[0] - blurred[1]) > 0.15).mean() < 0.002


def _blurred(x, reach=4):
    """The mean of squares of so many pixels."""
    rows, columns = (n - n % reach for n in x.shape)
    return x[:rows, :columns].reshape(rows // reach, reach, columns // reach, reach).mean(axis=(1, 3))


@given(
    st.lists(st.tuples(st.floats(0, 8), st.floats(0, 2), st.floats(0.1, 2), st.floats(0.1, 1)), max_size=25)
)
def test_neighbours_in_a_bed_never_bear_the_same_mark(boxes):
    """Any two within half a metre differ, but where ten others lie that near before them."""
    grounds = [shapely_box(x, y, x + w, y + h) for x, y, w, h in boxes]
    marks = told_apart(grounds)
    assert all(1 <= m <= 10 for m in marks)
    for i, ground in enumerate(grounds):
        near = [j for j in range(i) if grounds[j].distance(ground) <= NEAR_M - 1e-9]
        if len(near) < 10:
            assert marks[i] not in {marks[j] for j in near}


def test_numbers_far_apart_keep_the_mark_of_their_number():
    assert told_apart([shapely_box(3 * i, 0, 3 * i + 1, 1) for i in range(12)]) == [*range(1, 11), 1, 2]
