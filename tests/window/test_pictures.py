"""Pictures of plan, ribbon and both: sizes, dots to an inch, well-formed SVG, refusals."""

from xml.etree import ElementTree

import numpy as np
import pytest
from PySide6.QtGui import QImage

from gardencanvas.app.printing.picture import Picture, TooLarge, save_picture
from gardencanvas.app.session import Session
from gardencanvas.files import CannotWrite
from gardencanvas.words.plain import Measure
from tests.window.hand import two_rows


@pytest.fixture
def session(qtbot):
    return Session(two_rows())


@pytest.mark.parametrize("shown", ["plan", "ribbon", "both"])
@pytest.mark.parametrize("dpi", [96, 192])
def test_a_png_has_its_dots_to_an_inch_and_something_on_it(session, tmp_path, shown, dpi):
    path = tmp_path / "p.png"
    save_picture(session, path, Picture(shown, dpi), Measure())
    image = QImage(str(path))
    assert round(image.dotsPerMeterX() * 0.0254) == dpi
    pixels = np.frombuffer(image.convertToFormat(QImage.Format.Format_Grayscale8).constBits(), np.uint8)
    assert len(np.unique(pixels)) > 8


def test_both_is_the_plan_above_the_ribbon(session, tmp_path):
    sizes = {}
    for shown in ("plan", "ribbon", "both"):
        save_picture(session, tmp_path / "p.png", Picture(shown, 96), Measure())
        image = QImage(str(tmp_path / "p.png"))
        sizes[shown] = image.width(), image.height()
    assert sizes["both"][0] == max(sizes["plan"][0], sizes["ribbon"][0])
    assert sizes["both"][1] == sizes["plan"][1] + sizes["ribbon"][1] + 12


@pytest.mark.parametrize("shown", ["plan", "ribbon", "both"])
def test_an_svg_is_well_formed_and_its_view_box_is_its_size(session, tmp_path, shown):
    path = tmp_path / "p.svg"
    save_picture(session, path, Picture(shown), Measure())
    root = ElementTree.fromstring(path.read_text("utf-8"))
    assert root.tag == "{http://www.w3.org/2000/svg}svg"
    x, y, wide, high = (float(v) for v in root.get("viewBox").split())
    assert (x, y) == (0, 0)
    assert wide > 300
    assert high > 60
    kinds = {element.tag.rpartition("}")[2] for element in root.iter()}
    assert "text" in kinds
    assert "image" not in kinds  # drawn as lines, not as a photograph of them


def test_too_large_and_unwritable_pictures_are_refused_and_nothing_is_left(session, tmp_path):
    with pytest.raises(TooLarge, match="fewer"):
        save_picture(session, tmp_path / "p.png", Picture("both", 20_000), Measure())
    with pytest.raises(CannotWrite):
        save_picture(session, tmp_path / "no" / "p.png", Picture(), Measure())
    assert list(tmp_path.iterdir()) == []
