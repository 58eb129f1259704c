"""Ground over several sheets: how many, what they cover, what they are called; too many are told."""

import math

import pytest
from pypdf import PdfReader

from gardencanvas.paper.bedmap import Options, bed_map, planting_strip, write_bedmap
from gardencanvas.paper.bedmap.ground import OVERLAP_MM, sheets_across, tile_name, tiles
from gardencanvas.paper.document import Setup
from gardencanvas.paper.sheet import Box
from gardencanvas.words.plain import Measure
from tests.garden.makers import bed, garden, row
from tests.paper.plans import demo, plan_of


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


def test_sheets_are_named_as_a_spreadsheet_names_its_cells():
    assert [tile_name(c, r) for c, r in ((0, 0), (1, 1), (25, 0), (26, 0), (27, 9))] == [
        "A1", "B2", "Z1", "AA1", "AB10",
    ]  # fmt: skip


def test_a_large_bed_comes_on_sheets_with_a_plan_of_them(tmp_path):
    plan = plan_of(garden(row(), beds=(bed(length=12.0, width=1.2),)))
    count = write_bedmap(plan, tmp_path / "m.pdf", options=Options(10, overview=False))
    texts = [" ".join(p.extract_text().split()) for p in PdfReader(tmp_path / "m.pdf").pages]
    assert count > 3
    assert "how the sheets lie" in texts[0]
    assert "sheet A1" in texts[1]
    assert "sheet B1" in texts[1]  # its neighbour is named on it
    assert "Leek" in texts[1]


def test_the_whole_garden_in_one_shows_every_bed_and_names_each_planting(tmp_path):
    write_bedmap(demo(), tmp_path / "m.pdf", options=Options(25, overview=False, whole=True))
    text = " ".join(" ".join(p.extract_text().split()) for p in PdfReader(tmp_path / "m.pdf").pages)
    for each in demo().layout.beds:
        assert each.name in text


def test_a_field_at_one_to_ten_is_thousands_of_pages_and_known_before_any_is_drawn():
    """200 × 200 m is 20 m of paper each way: sheets of A4 less margins, heading and overlap."""
    plan = plan_of(garden(beds=(bed(length=200.0, width=200.0),)))
    count = len(bed_map(plan, Setup(), Options(10, overview=False)).pages)
    box = Setup().box
    least = math.ceil(20_000 / box.width) * math.ceil(20_000 / box.height)
    assert least < count < 2.5 * least


@pytest.mark.parametrize(("plants", "strips"), [(1, 1), (13, 1), (14, 2), (26, 2), (27, 3)])
def test_strips_are_as_many_as_the_row_takes(plants, strips):
    """On A4 lying there are 273 mm: 13 × 20 mm fit; two strips less 10 mm of overlap hold 536 mm."""
    document = planting_strip("Leek", 0.02, plants, Measure())
    assert Setup().box.width == pytest.approx(273.0, abs=0.3)
    from gardencanvas.paper.bedmap.strip import strips_for

    assert strips_for(plants * 20.0, document.setup.box.width) == strips
