"""Pages read back with independent libraries: size, words, where they lie, fonts."""

import errno
import os
import re
from datetime import date

import pytest
from pypdf import PdfReader

from gardencanvas.files import CannotWrite
from gardencanvas.garden import edits
from gardencanvas.garden.errors import Refusal
from gardencanvas.paper.bedmap import Options, bed_map, planting_strip, write_bedmap
from gardencanvas.paper.document import MARGIN_MM, GivenUp, Setup, write_pdf
from gardencanvas.words.plain import Measure, planting_name
from tests.garden.makers import garden, row
from tests.paper.plans import LONG_NAME, demo, odd, plan_of, twenty
from tests.paper.read_back import lines, overlapping, pages

# ISO 216 and ANSI/ASME Y14.1 sizes in millimetres
SIZES = {"a4": (210.0, 297.0), "a3": (297.0, 420.0), "letter": (215.9, 279.4), "tabloid": (279.4, 431.8)}
SOME = tuple(b.id for b in demo().layout.beds[2:5])
STAGES = (date(2027, 5, 1), date(2027, 7, 15), date(2027, 9, 15))
SMALLEST_POINTS = 7.0
DOCUMENTS = {
    "the demo": lambda: bed_map(demo()),
    "upright, in stages": lambda: bed_map(demo(), Setup(landscape=False), Options(stages=STAGES, beds=SOME)),
    "whole, over sheets": lambda: bed_map(demo(), Setup(), Options(30, whole=True, overview=False)),
    "twenty plantings": lambda: bed_map(twenty(), Setup()),
    "twenty, in inches": lambda: bed_map(twenty("imperial"), Setup("letter", landscape=False)),
    "twenty, over sheets": lambda: bed_map(twenty(), Setup(), Options(10)),
    "odd beds": lambda: bed_map(odd(), Setup("tabloid")),
    "odd beds, over sheets": lambda: bed_map(odd(), Setup("a3"), Options(10)),
    "a strip": lambda: planting_strip("Planting strip: Leek", 0.2, 30, Measure()),
    "a strip in inches": lambda: planting_strip("Radish", 0.03, 40, Measure("imperial")),
}


@pytest.fixture(scope="module", params=DOCUMENTS)
def written(request, tmp_path_factory, qapp):
    path = tmp_path_factory.mktemp("pages") / "map.pdf"
    write_pdf(DOCUMENTS[request.param](), path)
    return path, pages(path)


def test_every_letter_lies_inside_the_margins(written):
    for wide, high, glyphs in written[1]:
        assert glyphs
        for glyph in glyphs:
            left, low, right, top = glyph.box
            assert left >= MARGIN_MM - 0.5, glyph
            assert low >= MARGIN_MM - 0.5, glyph
            assert right <= wide - MARGIN_MM + 0.5, glyph
            assert top <= high - MARGIN_MM + 0.5, glyph


def test_no_letter_lies_over_another(written):
    for _, _, glyphs in written[1]:
        assert overlapping(glyphs) == []


def test_no_letter_is_too_small_to_read(written):
    for _, _, glyphs in written[1]:
        assert min(g.points for g in glyphs if g.points) >= SMALLEST_POINTS - 0.06  # whole pixels at 1200 dpi


def test_fonts_are_embedded(written):
    fonts = [f.get_object() for p in PdfReader(written[0]).pages for f in p["/Resources"]["/Font"].values()]
    assert fonts
    for font in fonts:
        inner = font["/DescendantFonts"][0].get_object() if "/DescendantFonts" in font else font
        assert any(k.startswith("/FontFile") for k in inner["/FontDescriptor"].get_object())


@pytest.mark.parametrize("paper", SIZES)
@pytest.mark.parametrize("landscape", [True, False])
def test_the_page_has_the_size_of_its_paper(tmp_path, paper, landscape):
    one = Options(beds=(demo().layout.beds[0].id,), overview=False)
    write_bedmap(demo(), tmp_path / "m.pdf", paper, landscape=landscape, options=one)
    wide, high, _ = pages(tmp_path / "m.pdf")[0]
    short, long = SIZES[paper]
    assert (wide, high) == pytest.approx((long, short) if landscape else (short, long), abs=0.5)


def test_every_planting_is_named_and_hazardous_plants_have_their_caution(tmp_path):
    write_bedmap(demo(), tmp_path / "m.pdf")
    text = "\n".join(lines(tmp_path / "m.pdf"))
    for planting in demo().layout.plantings:
        assert planting_name(demo().catalogue, planting).split(" (")[0] in text
    assert "Rhubarb: Leaf blades – oxalic acid" in text
    assert "Follow local rules" in text


def test_no_name_is_cut_off(tmp_path):
    write_bedmap(twenty(), tmp_path / "m.pdf")
    found = lines(tmp_path / "m.pdf")
    assert not any("…" in line for line in found)
    assert any(LONG_NAME in line for line in found)


def test_a_name_without_a_space_breaks_and_is_whole(tmp_path):
    name = "Hollow" * 30
    planting = row(note="x" * 200)
    value = garden(planting)
    bed = value.layouts[0].beds[0].model_copy(update={"name": name})
    value = edits.replace(value, "l1", [bed])
    write_bedmap(plan_of(value), tmp_path / "m.pdf")
    text = "".join(g.text for _, _, glyphs in pages(tmp_path / "m.pdf") for g in glyphs)
    assert "x" * 200 in text
    assert name in text


def test_stages_show_only_what_stands_then(tmp_path):
    """Radish sown in April is eaten by August; leeks planted in July do not stand in April."""
    plan = plan_of(
        garden(
            row("early", "radish", on=date(2027, 4, 1)),
            row("late", "leek", y=0.6, kind="raised", on=date(2027, 7, 1)),
        )
    )
    stages = Options(stages=(date(2027, 4, 20), date(2027, 8, 1)), overview=False)
    write_bedmap(plan, tmp_path / "m.pdf", options=stages)
    text = " ".join(PdfReader(tmp_path / "m.pdf").pages[0].extract_text().split())  # as it was drawn
    heading, _, drawn = text.split("20 April", 2)
    assert heading.endswith("as on ")
    spring, rest = drawn.split("1 August", 1)
    summer, table = rest.split("crop, variety")
    assert re.search(r" m 1( Radish)? ?$", spring)
    assert re.search(r" m 2( Leek)? ?$", summer)
    assert "Radish" in table
    assert "Leek" in table


def test_no_bed_and_none_chosen_are_refused_and_nothing_is_written(tmp_path):
    value = edits.remove(garden(), "l1", ["bed-1"])
    with pytest.raises(Refusal, match="no bed"):
        write_bedmap(plan_of(value), tmp_path / "m.pdf")
    with pytest.raises(Refusal, match="choose one"):
        write_bedmap(plan_of(garden()), tmp_path / "m.pdf", options=Options(beds=()))
    assert list(tmp_path.iterdir()) == []


def test_an_unwritable_target_is_said_and_giving_up_writes_nothing(tmp_path):
    with pytest.raises(CannotWrite):
        write_bedmap(demo(), tmp_path / "no" / "m.pdf")
    with pytest.raises(GivenUp):
        write_bedmap(demo(), tmp_path / "m.pdf", told=lambda done, _all: done < 2)
    assert list(tmp_path.iterdir()) == []


def test_a_full_disk_leaves_the_map_that_was_there(tmp_path, monkeypatch):
    target = tmp_path / "m.pdf"
    target.write_bytes(b"last year's")

    def full(_handle):
        raise OSError(errno.ENOSPC, os.strerror(errno.ENOSPC))

    monkeypatch.setattr(os, "fsync", full)
    with pytest.raises(CannotWrite, match=r"space|full"):
        write_bedmap(plan_of(garden(row())), target)
    assert [p.name for p in tmp_path.iterdir()] == ["m.pdf"]
    assert target.read_bytes() == b"last year's"
