"""``gardencanvas bedmap`` and ``picture``: what they write, and how they refuse."""

from xml.etree import ElementTree

import pytest
from pypdf import PdfReader
from PySide6.QtGui import QImage

from gardencanvas.cli import run
from gardencanvas.files import save_garden
from gardencanvas.garden.pattern import Rows
from tests.garden.makers import bed, garden, row

pytestmark = pytest.mark.usefixtures("qapp")
MM = 72 / 25.4


@pytest.fixture
def file(tmp_path):
    """Two beds; two rows of leek and one of radish (our own arrangement)."""
    rows = [
        row(name, crop, pattern=Rows(origin=(0.2, y), length_m=3.0, spacing_m=0.15, row_spacing_m=0.3))
        for name, crop, y in (("p-1", "leek", 0.1), ("p-2", "leek", 0.5), ("p-3", "radish", 3.3))
    ]
    path = tmp_path / "g.gardencanvas"
    save_garden(garden(*rows, beds=(bed("a", name="By the wall"), bed("b", y=3.0, name="Far bed"))), path)
    return path


def bedmap(file, *arguments):
    out = file.parent / "m.pdf"
    assert run(["bedmap", str(file), str(out), *arguments]) == 0
    return [" ".join(p.extract_text().split()) for p in PdfReader(out).pages], PdfReader(out).pages


def test_paper_and_the_way_it_lies(file):
    """ANSI/ASME Y14.1: Letter is 215.9 × 279.4 mm; ISO 216: A4 is 210 × 297 mm."""
    for arguments, size in (
        (("--paper", "letter", "--portrait"), (215.9, 279.4)),
        (("--landscape",), (297.0, 210.0)),
        ((), (297.0, 210.0)),
    ):
        _, pages = bedmap(file, *arguments)
        box = pages[0].mediabox
        assert (float(box.width) / MM, float(box.height) / MM) == pytest.approx(size, abs=0.5)


def test_scale_beds_stages_and_the_whole(file):
    texts, _ = bedmap(file, "--beds", "Far bed", "--scale", "20")
    assert len(texts) == 1
    assert "1:20" in texts[0]
    assert "Far bed" in texts[0]
    texts, _ = bedmap(file, "--scale", "fit", "--stages", "2027-07-01", "2027-05-15")
    assert "as on 15 May, 1 July" in texts[1]
    texts, _ = bedmap(file, "--whole", "--scale", "10")
    assert any("sheet B1" in text for text in texts)
    texts, _ = bedmap(file, "--units", "imperial")
    assert "11′ 10″" in texts[1]  # 3.6 m are 141.7 inches of 25.4 mm


def test_a_strip_of_one_planting(file, capsys):
    texts, _ = bedmap(file, "--strip", "radish")
    assert "Planting strip: Radish" in texts[0]
    out = str(file.parent / "s.pdf")
    assert run(["bedmap", str(file), out, "--strip", "leek"]) == 2
    assert "p-1, p-2" in capsys.readouterr().err
    assert run(["bedmap", str(file), out, "--strip", "kale"]) == 2
    assert not (file.parent / "s.pdf").exists()


def test_very_many_pages_are_refused_with_their_number_unless_wanted(tmp_path, capsys):
    path, out = tmp_path / "field.gardencanvas", tmp_path / "m.pdf"
    save_garden(garden(beds=(bed(length=45.0, width=45.0),)), path)
    assert run(["bedmap", str(path), str(out), "--scale", "10"]) == 2
    said = capsys.readouterr().err
    assert "--many-pages" in said
    assert "pages" in said
    assert not out.exists()


@pytest.mark.parametrize(
    "arguments", [["--landscape", "--portrait"], ["--scale", "0"], ["--beds", "no such"]]
)
def test_bad_arguments_write_nothing(file, arguments):
    out = file.parent / "m.pdf"
    try:
        code = run(["bedmap", str(file), str(out), *arguments])
    except SystemExit as end:
        code = end.code
    assert code == 2
    assert not out.exists()


def test_pictures_of_plan_ribbon_and_both(file):
    sizes = {}
    for shown in ("plan", "ribbon", "both"):
        out = file.parent / f"{shown}.png"
        assert (
            run(["picture", str(file), str(out), "--show", shown, "--dpi", "96", "--on", "2027-06-01"]) == 0
        )
        image = QImage(str(out))
        sizes[shown] = image.height()
        assert round(image.dotsPerMeterX() * 0.0254) == 96
    assert sizes["both"] > sizes["plan"] > sizes["ribbon"]


def test_a_picture_as_svg_is_its_size_in_millimetres(file):
    """SVG 2 and CSS: 96 units to an inch of 25.4 mm."""
    out = file.parent / "p.svg"
    assert run(["picture", str(file), str(out), "--show", "both"]) == 0
    root = ElementTree.fromstring(out.read_text("utf-8"))
    _, _, wide, high = (float(v) for v in root.get("viewBox").split())
    for side, name in ((wide, "width"), (high, "height")):
        assert root.get(name).endswith("mm")
        assert float(root.get(name)[:-2]) == pytest.approx(side * 25.4 / 96, abs=0.01)
