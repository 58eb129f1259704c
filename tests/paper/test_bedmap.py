"""The bed map read back by an independent PDF library: page, scale, words, fonts; and on pixels in grey."""

import re
from datetime import date
from itertools import combinations

import numpy as np
import pytest
from pypdf import PdfReader
from PySide6.QtCore import Qt
from PySide6.QtGui import QImage, QPainter

from gardencanvas.crops.catalogue import catalogue
from gardencanvas.files import CannotWrite, open_garden
from gardencanvas.fit import check
from gardencanvas.garden import edits
from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.pattern import Rows
from gardencanvas.paper.bedmap import Options, Plan, planting_strip, write_bedmap
from gardencanvas.paper.bedmap.ground import OVERLAP_MM, sheets_across, tiles
from gardencanvas.paper.bedmap.marks import draw_mark
from gardencanvas.paper.bedmap.tape import row_marks
from gardencanvas.paper.document import GivenUp, fonts_ready, write_pdf
from gardencanvas.paper.sheet import Box, Sheet
from gardencanvas.resources_folder import resources
from gardencanvas.words.plain import Measure, planting_name
from tests.garden.makers import bed, garden, row

MM = 72 / 25.4
# ISO 216 and ANSI/ASME Y14.1 sizes in millimetres
SIZES = {"a4": (210.0, 297.0), "a3": (297.0, 420.0), "letter": (215.9, 279.4), "tabloid": (279.4, 431.8)}


def plan_of(value, on=date(2027, 7, 1)):
    layout = value.layouts[0]
    known = catalogue().with_own(value.crops, value.varieties)
    return Plan(value, layout, check(value, layout.id, known), known, Measure(), on)


@pytest.fixture(scope="module")
def demo():
    return plan_of(open_garden(resources() / "demo" / "demo.gardencanvas"))


@pytest.fixture
def full():
    """A bed of 6 × 1.2 m with twenty plantings (our own arrangement)."""
    crops = ("leek", "carrot", "lettuce", "beetroot", "radish")
    rows = [
        row(f"p{i}", crops[i % 5], on=date(2027, 4, 1 + i),
            pattern=Rows(origin=(0.1 + (i % 5) * 1.2, 0.05 + (i // 5) * 0.28), length_m=1.0, spacing_m=0.15,
                         row_spacing_m=0.25))
        for i in range(20)
    ]  # fmt: skip
    return plan_of(garden(*rows, beds=(bed(length=6.0),)))


def _square(m):
    return np.array([[m[0], m[1], 0], [m[2], m[3], 0], [m[4], m[5], 1]])


def rectangles(page):
    """Width and height in points of closed paths of four straight sides on a page, and of all lines."""
    found, path, matrix, stack = [], [], [1, 0, 0, 1, 0, 0], []

    def visit(operator, arguments, _cm, _tm):
        nonlocal path, matrix
        name = operator.decode()
        numbers = [float(a) for a in arguments] if name in {"m", "l", "cm"} else []
        if name == "q":
            stack.append(matrix)
        elif name == "Q":
            matrix = stack.pop()
        elif name == "cm":
            a, b, c, d, e, f = numbers
            u = np.array([[a, b, 0], [c, d, 0], [e, f, 1]]) @ _square(matrix)
            matrix = [*u[0, :2], *u[1, :2], *u[2, :2]]
        elif name in {"m", "l"}:
            x, y = numbers
            at = (x * matrix[0] + y * matrix[2] + matrix[4], x * matrix[1] + y * matrix[3] + matrix[5])
            path = [at] if name == "m" else [*path, at]
        elif name in {"S", "s", "B", "b", "f", "h", "n"} and path:
            xy = np.array(path)
            found.append(tuple(np.ptp(xy, axis=0)))

    page.extract_text(visitor_operand_before=visit)
    return found


def words_of(page):
    """The text of a page with plain spaces."""
    return re.sub(r"[^\S\n]+", " ", page.extract_text())


def near(found, wide, high, tolerance_mm=0.2):
    return any(abs(w - wide) <= tolerance_mm * MM and abs(h - high) <= tolerance_mm * MM for w, h in found)


@pytest.mark.parametrize("paper", SIZES)
@pytest.mark.parametrize("landscape", [True, False])
def test_the_page_has_the_size_of_its_paper(demo, tmp_path, paper, landscape):
    one = Options(beds=(demo.layout.beds[0].id,), overview=False)
    write_bedmap(demo, tmp_path / "m.pdf", paper, landscape=landscape, options=one)
    box = PdfReader(tmp_path / "m.pdf").pages[0].mediabox
    short, long = SIZES[paper]
    expected = (long, short) if landscape else (short, long)
    assert (float(box.width) / MM, float(box.height) / MM) == pytest.approx(expected, abs=0.5)


@pytest.mark.parametrize("scale", [20, 25, 50])
def test_outline_and_scale_bar_measure_what_the_scale_says(tmp_path, scale):
    """A bed of 3.6 × 1.2 m: at 1:20 it is 180 × 60 mm on paper, within 0.2 mm."""
    write_bedmap(
        plan_of(garden(row())), tmp_path / "m.pdf", scale=scale, options=Options(scale, overview=False)
    )
    page = PdfReader(tmp_path / "m.pdf").pages[0]
    found = rectangles(page)
    assert near(found, 3600 / scale * MM, 1200 / scale * MM)
    text = words_of(page)
    bar = re.search(r"([\d.]+)\s*(m|cm), 1:" + str(scale), text)
    assert bar is not None
    metres = float(bar[1]) * (1.0 if bar[2] == "m" else 0.01)
    assert near(found, metres * 1000 / scale * MM, 0.0)


def test_every_planting_is_named_with_its_number_and_no_word_lies_outside_the_page(demo, tmp_path):
    write_bedmap(demo, tmp_path / "m.pdf")
    pages = PdfReader(tmp_path / "m.pdf").pages
    text = "\n".join(words_of(p) for p in pages)
    for planting in demo.layout.plantings:
        assert planting_name(demo.catalogue, planting).split(" (")[0] in text
    assert "Caution." in text
    for page in pages:
        places = []

        def seen(text, cm, tm, *_, places=places):
            if text.strip():
                places.append((text, tm[4], tm[5], cm))

        page.extract_text(visitor_text=seen)
        assert places
        wide, high = float(page.mediabox.width), float(page.mediabox.height)
        for _, x, y, cm in places:
            at = (x * cm[0] + y * cm[2] + cm[4], x * cm[1] + y * cm[3] + cm[5])
            assert 0 <= at[0] <= wide
            assert 0 <= at[1] <= high


def test_fonts_are_embedded(demo, tmp_path):
    write_bedmap(demo, tmp_path / "m.pdf")
    pages = PdfReader(tmp_path / "m.pdf").pages
    fonts = [f.get_object() for p in pages for f in p["/Resources"]["/Font"].values()]
    assert fonts
    for font in fonts:
        inner = font["/DescendantFonts"][0].get_object() if "/DescendantFonts" in font else font
        assert any(k.startswith("/FontFile") for k in inner["/FontDescriptor"].get_object())


def paint(document, number, per_mm=300 / 25.4):
    size = document.setup.size_mm
    image = QImage(
        round(size.width() * per_mm), round(size.height() * per_mm), QImage.Format.Format_Grayscale8
    )
    image.fill(Qt.GlobalColor.white)
    painter = QPainter(image)
    painter.translate(12 * per_mm, 12 * per_mm)
    document.pages[number](Sheet(painter, per_mm, document.setup.box))
    painter.end()
    return image


def mark_pixels(number, per_mm=300 / 25.4):
    """A mark as a home printer of 300 dots to an inch puts it down, in grey."""
    image = QImage(48, 48, QImage.Format.Format_Grayscale8)
    image.fill(Qt.GlobalColor.white)
    painter = QPainter(image)
    draw_mark(Sheet(painter, per_mm, Box(0, 0, 4, 4)), number, 2.0, 2.0, 1.6)
    painter.end()
    return np.frombuffer(image.constBits(), np.uint8).reshape(48, image.bytesPerLine())[:, :48].astype(float)


def test_marks_of_ten_neighbouring_plantings_differ_in_grey_at_300_dots_to_an_inch():
    fonts_ready()
    marks = [mark_pixels(n) for n in range(1, 11)]
    for a, b in combinations(range(10), 2):
        differing = np.abs(marks[a] - marks[b]) > 90
        ink = max((marks[a] < 128).sum(), (marks[b] < 128).sum())
        assert differing.sum() >= 0.15 * ink, (a + 1, b + 1)


def test_distances_are_from_the_bed_s_edge_to_each_row():
    """Rows at 0.25 and 0.55 m from the upper edge, by the pattern's own definition."""
    planting = row(pattern=Rows(origin=(0.2, 0.1), length_m=3.0, rows=2, spacing_m=0.15, row_spacing_m=0.3))
    marks = row_marks(bed(), [(1, planting)])
    assert [m.from_edge_m for m in marks] == pytest.approx([0.25, 0.55])


@pytest.mark.parametrize(
    ("length", "room", "sheets"),
    [(100, 200, 1), (200, 200, 1), (201, 200, 2), (390, 200, 2), (391, 200, 3)],
)
def test_sheets_overlap_by_a_centimetre(length, room, sheets):
    assert sheets_across(length, room) == sheets
    assert OVERLAP_MM == 10.0


def test_sheets_cover_the_ground_without_gaps():
    every = list(tiles((0.0, 0.0), (6.0, 3.0), 10, Box(0, 0, 250, 160)))
    for column in range(every[0].columns - 1):
        a, b = (t.window.corner[0] for t in every if t.row == 0 and t.column in (column, column + 1))
        assert b - a == pytest.approx((250 - OVERLAP_MM) * 10 / 1000)
    last = every[-1].window
    assert last.corner[0] + 250 * 10 / 1000 >= 6.0 - 1e-9
    assert last.corner[1] + 160 * 10 / 1000 >= 3.0 - 1e-9


def test_a_large_bed_comes_on_sheets_with_a_plan_of_them(tmp_path):
    plan = plan_of(garden(row(), beds=(bed(length=12.0, width=1.2),)))
    count = write_bedmap(plan, tmp_path / "m.pdf", scale=10, options=Options(10, overview=False))
    texts = [words_of(p) for p in PdfReader(tmp_path / "m.pdf").pages]
    assert count > 3
    assert "how the sheets lie" in texts[0]
    assert "sheet A1" in texts[1]


def test_stages_show_only_what_stands_then(tmp_path):
    value = garden(
        row("early", "radish", on=date(2027, 4, 1)),
        row("late", "leek", y=0.6, kind="raised", on=date(2027, 7, 1)),
    )
    plan = plan_of(value)
    assert plan.stands(value.layouts[0].plantings[0], date(2027, 4, 20))
    assert not plan.stands(value.layouts[0].plantings[1], date(2027, 4, 20))
    stages = Options(stages=(date(2027, 4, 20), date(2027, 8, 1)), overview=False)
    write_bedmap(plan, tmp_path / "m.pdf", options=stages)
    text = words_of(PdfReader(tmp_path / "m.pdf").pages[0])
    assert "20 April" in text
    assert "1 August" in text


def test_a_strip_is_true_to_size(tmp_path):
    """Twelve plants every 20 cm: 2.4 m of strip; the check ruler is 100 mm; marks 200 mm apart."""
    write_pdf(planting_strip("Leek", 0.2, 12, Measure()), tmp_path / "s.pdf")
    found = [f for p in PdfReader(tmp_path / "s.pdf").pages for f in rectangles(p)]
    assert near(found, 100 * MM, 0.0)
    text = "".join(words_of(p) for p in PdfReader(tmp_path / "s.pdf").pages)
    assert "100 %" in text
    assert all(re.search(rf"\b{n}\b", text) for n in range(1, 13))


def test_no_bed_is_refused_in_words_and_nothing_is_written(tmp_path):
    value = edits.remove(garden(), "l1", ["bed-1"])
    with pytest.raises(Refusal, match="no bed"):
        write_bedmap(plan_of(value), tmp_path / "m.pdf")
    assert list(tmp_path.iterdir()) == []


def test_an_unwritable_target_is_said_and_giving_up_writes_nothing(demo, tmp_path):
    with pytest.raises(CannotWrite):
        write_bedmap(demo, tmp_path / "no" / "m.pdf")
    with pytest.raises(GivenUp):
        write_bedmap(demo, tmp_path / "m.pdf", told=lambda done, _all: done < 2)
    assert list(tmp_path.iterdir()) == []
