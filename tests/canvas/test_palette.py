"""Contrast by WCAG 2.2 (1.4.3, 1.4.11); colour vision simulated by Machado, Oliveira & Fernandes (2009)."""

from itertools import combinations

import numpy as np
import pytest
from PySide6.QtCore import QRectF
from PySide6.QtGui import QColor, QImage, QPainter, QPainterPath

from gardencanvas.canvas.items.mark import draw_mark
from gardencanvas.canvas.items.outline_shape import Shape
from gardencanvas.canvas.palette import DARK, LIGHT, family_leaf, known_families, palette, tint_of
from gardencanvas.fit.report import Verdict

# Severity 1.0, for linear RGB; doi 10.1109/TVCG.2009.113, table of the authors' supplement.
MACHADO = {
    "protanopia": [
        [0.152286, 1.052583, -0.204868],
        [0.114503, 0.786281, 0.099216],
        [-0.003882, -0.048116, 1.051998],
    ],
    "deuteranopia": [
        [0.367322, 0.860646, -0.227968],
        [0.280085, 0.672501, 0.047413],
        [-0.011820, 0.042940, 0.968881],
    ],
    "tritanopia": [
        [1.255528, -0.076749, -0.178779],
        [-0.078411, 0.930809, 0.147602],
        [0.004733, 0.691367, 0.303900],
    ],
}


def linear(colour):
    c = QColor(colour)
    rgb = np.array([c.redF(), c.greenF(), c.blueF()])
    return np.where(rgb <= 0.04045, rgb / 12.92, ((rgb + 0.055) / 1.055) ** 2.4)


def luminance(colour):
    return float(linear(colour) @ [0.2126, 0.7152, 0.0722])


def contrast(a, b):
    high, low = sorted((luminance(a), luminance(b)), reverse=True)
    return (high + 0.05) / (low + 0.05)


def lab(rgb):
    """CIE L*a*b* (D65) of linear RGB."""
    xyz = np.array([
        [0.4124564, 0.3575761, 0.1804375],
        [0.2126729, 0.7151522, 0.0721750],
        [0.0193339, 0.1191920, 0.9503041],
    ]) @ np.clip(rgb, 0, 1) / [0.95047, 1.0, 1.08883]  # fmt: skip
    f = np.where(xyz > 216 / 24389, np.cbrt(xyz), (24389 / 27 * xyz + 16) / 116)
    return np.array([116 * f[1] - 16, 500 * (f[0] - f[1]), 200 * (f[1] - f[2])])


def test_the_formula_gives_the_values_of_the_standard():
    # WCAG 2.2: black on white is 21:1; #767676 is the lightest grey that reaches 4.5:1 on white (WebAIM).
    assert contrast("#000000", "#ffffff") == pytest.approx(21.0)
    assert contrast("#767676", "#ffffff") >= 4.5 > contrast("#777777", "#ffffff")


@pytest.mark.parametrize("colours", [LIGHT, DARK], ids=["light", "dark"])
def test_text_reaches_four_and_a_half_to_one(colours):
    for ground in (colours.paper, colours.panel):
        assert contrast(colours.ink, ground) >= 4.5
        assert contrast(colours.quiet, ground) >= 4.5
    assert contrast(colours.note_ink, colours.note) >= 4.5
    assert contrast(colours.note_quiet, colours.note) >= 4.5


@pytest.mark.parametrize("colours", [LIGHT, DARK], ids=["light", "dark"])
def test_lines_that_carry_meaning_reach_three_to_one(colours):
    for ground in (colours.paper, colours.soil):
        for verdict in Verdict:
            assert contrast(colours.verdict(verdict), ground) >= 3.0
        assert contrast(colours.bed_edge, ground) >= 3.0
        assert contrast(colours.accent, ground) >= 3.0


@pytest.mark.parametrize("dark", [False, True], ids=["light", "dark"])
def test_dots_on_the_cursors_plate_reach_three_to_one(dark):
    """The plate is light in the dark theme and dark in the light one, so it borrows the other's colours."""
    for verdict in Verdict:
        assert contrast(palette(not dark).verdict(verdict), palette(dark).note) >= 3.0


@pytest.mark.parametrize("colours", [LIGHT, DARK], ids=["light", "dark"])
@pytest.mark.parametrize("sight", [None, *MACHADO])
def test_verdict_colours_stay_apart_for_every_sight(colours, sight):
    """A just noticeable difference is about 2.3 ΔE*ab (Mahy et al. 1994); asked is three times that."""
    matrix = np.eye(3) if sight is None else np.array(MACHADO[sight])
    seen = [lab(matrix @ linear(colours.verdict(v))) for v in Verdict]
    for a, b in combinations(seen, 2):
        assert np.linalg.norm(a - b) > 7.0


def grey_mark(verdict, qapp):
    """A mark drawn in grey: all colours taken out."""
    image = QImage(120, 60, QImage.Format.Format_RGB32)
    image.fill(QColor("#ffffff"))
    painter = QPainter(image)
    path = QPainterPath()
    path.addRoundedRect(QRectF(10, 10, 100, 40), 20, 20)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    draw_mark(painter, Shape(path), verdict, LIGHT)
    painter.end()
    grey = image.convertToFormat(QImage.Format.Format_Grayscale8)
    return np.frombuffer(grey.constBits(), np.uint8).reshape(60, grey.bytesPerLine())[:, :120] < 215


def test_marks_differ_without_any_colour(qapp):
    marks = {v: grey_mark(v, qapp) for v in Verdict}
    inside = {v: m[20:40, 30:90].mean() for v, m in marks.items()}
    across = {v: int(np.abs(np.diff(m[:30, 60].astype(int))).sum() // 2) for v, m in marks.items()}
    along = {v: m[9:12, 30:90].any(axis=0).mean() for v, m in marks.items()}
    assert inside[Verdict.CLEAR] == inside[Verdict.SHARES] == 0.0  # no hatch
    assert 0.02 < inside[Verdict.STRAINS] < inside[Verdict.CLASHES] / 2  # sparse against dense
    assert across[Verdict.CLEAR] == 1  # one line
    assert across[Verdict.SHARES] == 2  # two
    assert along[Verdict.STRAINS] < 0.9 < along[Verdict.CLASHES]  # dashed against whole
    assert marks[Verdict.CLASHES].sum() > 1.5 * marks[Verdict.CLEAR].sum()


def test_family_tints_differ_in_lightness_as_well_as_hue():
    light = [lab(linear(family_leaf(f)))[0] for f in known_families()]
    assert max(light) - min(light) > 30  # from L* about 42 to about 76
    big = ("Solanaceae", "Brassicaceae", "Amaryllidaceae", "Fabaceae", "Asteraceae", "Amaranthaceae")
    for a, b in combinations(big, 2):
        assert np.linalg.norm(lab(linear(family_leaf(a))) - lab(linear(family_leaf(b)))) > 12


def test_kin_can_be_told_apart_and_a_crop_keeps_its_tint():
    assert tint_of("Apiaceae", "carrot", False) == tint_of("Apiaceae", "carrot", False)
    assert tint_of("Apiaceae", "carrot", False) != tint_of("Apiaceae", "celeriac", False)
    assert tint_of("Unknownaceae", "x", False).leaf.startswith("#")
