"""True to scale: lines measured in points in the PDF's own content, by an independent reader."""

import re

import numpy as np
import pytest
from pypdf import PdfReader

from gardencanvas.garden.pattern import Rows
from gardencanvas.paper.bedmap import Options, planting_strip, write_bedmap
from gardencanvas.paper.bedmap.strip import OVERLAP_MM as STRIP_OVERLAP_MM
from gardencanvas.paper.document import Setup, write_pdf
from gardencanvas.words.plain import Measure
from tests.garden.makers import bed, garden, row
from tests.paper.plans import plan_of

MM = 72 / 25.4
WITHIN_MM = 0.2


def _square(m):
    return np.array([[m[0], m[1], 0], [m[2], m[3], 0], [m[4], m[5], 1]])


def strokes(page):
    """Left, top, width and height in millimetres of every path on a page."""
    found, path, matrix, stack = [], [], [1, 0, 0, 1, 0, 0], []

    def visit(operator, arguments, _cm, _tm):
        nonlocal path, matrix
        name = operator.decode()
        numbers = [float(a) for a in arguments] if name in {"m", "l", "cm", "c"} else []
        if name == "q":
            stack.append(matrix)
        elif name == "Q":
            matrix = stack.pop()
        elif name == "cm":
            a, b, c, d, e, f = numbers
            u = np.array([[a, b, 0], [c, d, 0], [e, f, 1]]) @ _square(matrix)
            matrix = [*u[0, :2], *u[1, :2], *u[2, :2]]
        elif name in {"m", "l", "c"}:
            x, y = numbers[-2:]
            at = (x * matrix[0] + y * matrix[2] + matrix[4], x * matrix[1] + y * matrix[3] + matrix[5])
            path = [at] if name == "m" else [*path, at]
        elif name in {"S", "s", "B", "b", "f", "f*", "B*", "n"} and path:
            xy = np.array(path) / MM
            found.append((*xy.min(axis=0), *np.ptp(xy, axis=0)))
            path = []

    page.extract_text(visitor_operand_before=visit)
    return np.array(found)


def has(found, wide, high):
    return bool(((np.abs(found[:, 2] - wide) <= WITHIN_MM) & (np.abs(found[:, 3] - high) <= WITHIN_MM)).any())


def words_of(page):
    """The text of a page with plain spaces."""
    return re.sub(r"[^\S\n]+", " ", page.extract_text())


@pytest.mark.parametrize("scale", [20, 25, 50, 100, 200])
def test_outline_and_scale_bar_measure_what_the_scale_says(tmp_path, scale):
    """A bed of 3.6 × 1.2 m: at 1:20 it is 180 × 60 mm on paper."""
    write_bedmap(plan_of(garden(row())), tmp_path / "m.pdf", options=Options(scale, overview=False))
    page = PdfReader(tmp_path / "m.pdf").pages[0]
    found = strokes(page)
    assert has(found, 3600 / scale, 1200 / scale)
    bar = re.search(r"([\d.]+) (m|cm), 1:" + str(scale), words_of(page))
    assert bar is not None
    metres = float(bar[1]) * (1.0 if bar[2] == "m" else 0.01)
    assert has(found, metres * 1000 / scale, 0.0)


def test_the_largest_scale_that_fits_is_true_too(tmp_path):
    write_bedmap(plan_of(garden(row())), tmp_path / "m.pdf", options=Options(overview=False))
    page = PdfReader(tmp_path / "m.pdf").pages[0]
    scale = int(re.search(r"1:(\d+)", words_of(page))[1])
    assert has(strokes(page), 3600 / scale, 1200 / scale)


def test_plants_stand_on_paper_where_they_stand_in_the_bed(tmp_path):
    """Twenty plants every 15 cm, so 7.5 mm apart at 1:20, in a row 15 cm from the edge: 7.5 mm."""
    pattern = Rows(origin=(0.3, 0.0), length_m=3.0, spacing_m=0.15, row_spacing_m=0.3)
    write_bedmap(
        plan_of(garden(row(pattern=pattern))), tmp_path / "m.pdf", options=Options(20, overview=False)
    )
    found = strokes(PdfReader(tmp_path / "m.pdf").pages[0])
    outline = found[(np.abs(found[:, 2] - 180) < WITHIN_MM) & (np.abs(found[:, 3] - 60) < WITHIN_MM)][0]
    rings = found[(np.abs(found[:, 2] - found[:, 3]) < 0.02) & (np.abs(found[:, 2] - 1.65) < 0.1)]
    middles = rings[:, :2] + rings[:, 2:] / 2 - outline[:2]
    in_row = middles[np.abs(60.0 - middles[:, 1] - 7.5) < WITHIN_MM]  # a PDF counts upwards
    expected = 15.0 + 7.5 / 2 + 7.5 * np.arange(20)
    assert len(in_row) == 20
    assert np.sort(in_row[:, 0]) == pytest.approx(expected, abs=WITHIN_MM)


def test_sheets_laid_with_their_overlap_continue_each_other(tmp_path):
    """The plants of a row lie 10 mm apart at 1:10 also across the joint of two sheets."""
    pattern = Rows(origin=(0.0, 0.3), length_m=6.0, spacing_m=0.1, row_spacing_m=0.3)
    plan = plan_of(garden(row(pattern=pattern), beds=(bed(length=6.0),)))
    write_bedmap(plan, tmp_path / "m.pdf", options=Options(10, overview=False))
    places = []
    for number, page in enumerate(PdfReader(tmp_path / "m.pdf").pages[1:4]):
        found = strokes(page)
        frame = found[found[:, 2] > 200][np.argmax(found[found[:, 2] > 200][:, 3])]
        rings = found[(np.abs(found[:, 2] - found[:, 3]) < 0.02) & (found[:, 2] > 1.4) & (found[:, 2] < 3.1)]
        level, often = np.unique(np.round(rings[:, 1], 1), return_counts=True)
        rings = rings[np.abs(rings[:, 1] - level[often.argmax()]) < 0.15]
        x = rings[:, 0] + rings[:, 2] / 2 - frame[0]
        places += [(number * (frame[2] - 10.0) + each) for each in x if 0 <= each <= frame[2]]
    xs = np.unique(np.round(np.sort(places), 1))
    xs = xs[np.insert(np.diff(xs) > 0.3, 0, True)]
    assert len(xs) >= 58  # some lie under a number
    steps = np.diff(xs) / 10.0
    assert steps == pytest.approx(np.round(steps), abs=0.04)


def test_a_strip_is_true_to_size(tmp_path):
    """Twelve plants every 20 cm: lines 200 mm apart along the strips, and a ruler of 100 mm."""
    write_pdf(planting_strip("Leek", 0.2, 12, Measure()), tmp_path / "s.pdf")
    pages = PdfReader(tmp_path / "s.pdf").pages
    found = [strokes(page) for page in pages]
    assert all(has(each, 100.0, 0.0) for each in found)
    wide = Setup().box.width
    along, number = [], 0
    for each in found:
        frames = each[(np.abs(each[:, 3] - 26) < 0.1) & (each[:, 2] > 20)]
        marks = each[(each[:, 2] < 0.02) & (np.abs(each[:, 3] - 8.0) < 0.1)]
        for left, low, _, high in sorted(frames.tolist(), key=lambda f: -f[1]):
            here = marks[np.abs(marks[:, 1] + marks[:, 3] - low - high) < 0.1]
            along += (here[:, 0] - left + number * (wide - STRIP_OVERLAP_MM)).tolist()
            number += 1
    expected = 100.0 + 200.0 * np.arange(12)
    for each in expected:
        assert np.min(np.abs(np.array(along) - each)) <= WITHIN_MM
    text = "".join(words_of(page) for page in pages)
    assert all(re.search(rf"\b{n}\b", text) for n in range(1, 13))
    assert "100 %" in text
