"""Pictures of the plan: every resolution and format shows the same drawing."""

from datetime import date

import numpy as np
import pytest
from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QImage, QPainter
from PySide6.QtSvg import QSvgRenderer

from gardencanvas.canvas.picture import write_picture
from gardencanvas.files import CannotWrite
from gardencanvas.garden.ground import Fixture
from tests.garden.makers import bed, garden, row

ON = date(2027, 7, 1)
WALL = Fixture(
    id="w", name="Wall", kind="wall", outline=((0, -1), (3, -1), (3, -0.8), (0, -0.8)), height_m=1.5
)


@pytest.fixture
def crowded(qapp):
    """Two rows that clash, so that hatches are drawn too."""
    return garden(
        row("leeks", "leek", 0.1, 0.1, kind="raised", on=date(2027, 5, 20)),
        row("kale", "kale", 0.1, 0.2, kind="raised", on=date(2027, 5, 1)),
        beds=(bed(),),
        fixtures=(WALL,),
    )


def pixels(image: QImage, size: QSize | None = None) -> np.ndarray:
    """Grey values, shape (high, wide)."""
    if size is not None:
        image = image.scaled(
            size, Qt.AspectRatioMode.IgnoreAspectRatio, Qt.TransformationMode.SmoothTransformation
        )
    grey = image.convertToFormat(QImage.Format.Format_Grayscale8)
    flat = np.frombuffer(grey.constBits(), np.uint8).reshape(grey.height(), grey.bytesPerLine())
    return flat[:, : grey.width()].astype(float)


@pytest.mark.parametrize("dpi", [150, 288])
def test_a_finer_picture_is_the_same_drawing_larger(crowded, tmp_path, dpi):
    for name, each in (("coarse.png", 96), ("fine.png", dpi)):
        write_picture(crowded, "l1", tmp_path / name, ON, dpi=each)
    coarse, fine = QImage(str(tmp_path / "coarse.png")), QImage(str(tmp_path / "fine.png"))
    assert fine.width() == pytest.approx(coarse.width() * dpi / 96, abs=1.5)
    assert fine.dotsPerMeterX() == round(dpi / 0.0254)
    off = np.abs(pixels(coarse) - pixels(fine, coarse.size()))
    assert off.mean() < 2.5  # of 255: letters and edges fall otherwise on the pixels
    assert (off > 60).mean() < 0.01


def test_svg_shows_what_png_shows(crowded, tmp_path):
    write_picture(crowded, "l1", tmp_path / "plan.svg", ON)
    write_picture(crowded, "l1", tmp_path / "plan.png", ON, dpi=96)
    png = QImage(str(tmp_path / "plan.png"))
    renderer = QSvgRenderer(str(tmp_path / "plan.svg"))
    assert renderer.viewBox().size() == png.size()
    svg = QImage(png.size(), QImage.Format.Format_RGB32)
    svg.fill(Qt.GlobalColor.white)
    painter = QPainter(svg)
    renderer.render(painter)
    painter.end()
    off = np.abs(pixels(svg) - pixels(png))
    assert off.mean() < 3.5  # of 255: hatches, letters and edges fall otherwise on the pixels
    assert (off > 80).mean() < 0.015


def test_markup_in_names_reaches_the_svg_as_characters(crowded, tmp_path):
    named = crowded.model_copy(update={"name": "<b>Yard</b> & co"})
    write_picture(named, "l1", tmp_path / "plan.svg", ON)
    text = (tmp_path / "plan.svg").read_text(encoding="utf-8")
    assert "&lt;b&gt;Yard" in text
    assert "<b>" not in text


@pytest.mark.parametrize("name", ["plan.png", "plan.svg"])
def test_a_folder_that_is_not_there_is_refused_in_words(crowded, tmp_path, name):
    with pytest.raises(CannotWrite, match="could not be written"):
        write_picture(crowded, "l1", tmp_path / "nowhere" / name, ON)


def test_an_empty_garden_has_a_picture_too(qapp, tmp_path):
    empty = garden()
    bare = empty.model_copy(update={"layouts": (empty.layouts[0].model_copy(update={"beds": ()}),)})
    write_picture(bare, "l1", tmp_path / "plan.png", ON)
    assert not QImage(str(tmp_path / "plan.png")).isNull()
